package main

import (
	"bytes"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// TestPlotSheetAndSummaryOfAHouse goes from what a tech writes to the files.
func TestPlotSheetAndSummaryOfAHouse(t *testing.T) {
	dir := t.TempDir()
	db := filepath.Join(dir, "shop.db")
	do := func(in string, args ...string) string {
		t.Helper()
		var out, errOut bytes.Buffer
		if err := run(t.Context(), append([]string{"--db", db}, args...), strings.NewReader(in), &out, &errOut); err != nil {
			t.Fatalf("%v: %v (%s)", args, err, errOut.String())
		}
		return out.String()
	}
	do("84 laundry, heater idle, nothing running, 12 Alder St. PRV dated 2009\n")
	for _, tt := range []struct {
		args []string
		file string
		head string
		says string
	}{
		{[]string{"plot", "12 Alder St"}, "house.png", "\x89PNG", "84"},
		{[]string{"sheet", "12 Alder St", "--language", "es"}, "house.pdf", "%PDF-", "La presión del agua en su casa: 12 Alder St"},
		{[]string{"summary"}, "week.png", "\x89PNG", "12 Alder St 84"},
	} {
		file := filepath.Join(dir, tt.file)
		out := do("", append(tt.args, "--out", file)...)
		data, err := os.ReadFile(file)
		if err != nil || !bytes.HasPrefix(data, []byte(tt.head)) {
			t.Errorf("%v: the file begins with %.8q (%v)", tt.args, data, err)
		}
		if !strings.Contains(out, tt.says) {
			t.Errorf("%v: %q is not in: %s", tt.args, tt.says, out)
		}
	}
}

package main

import (
	"compress/gzip"
	"io"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// TestCommandsOnARecordOfTheFirstVersion: `check` tells that it is older and
// leaves it as it is; a command that reads brings it up to date first.
func TestCommandsOnARecordOfTheFirstVersion(t *testing.T) {
	file := filepath.Join(home(t), "old.db")
	packed, err := os.Open(filepath.Join("..", "testdata", "store", "record_0001.db.gz"))
	if err != nil {
		t.Fatal(err)
	}
	defer packed.Close()
	z, err := gzip.NewReader(packed)
	if err != nil {
		t.Fatal(err)
	}
	body, err := io.ReadAll(z)
	if err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(file, body, 0o600); err != nil {
		t.Fatal(err)
	}
	out, errOut, _ := lazyhand(t, "", "check", "--db", file)
	if !strings.Contains(out, "older version") || strings.Contains(out, "damaged") {
		t.Errorf("check: %s%s", out, errOut)
	}
	if now, err := os.ReadFile(file); err != nil || string(now) != string(body) {
		t.Errorf("check has changed the record: %v", err)
	}
	out, errOut, code := lazyhand(t, "", "export", "--db", file)
	if code != 0 || !strings.Contains(out, "18 Birch Ln") || strings.Count(out, "\n") != 15 {
		t.Errorf("export: code %d: %s%s", code, out, errOut)
	}
	out, errOut, _ = lazyhand(t, "", "check", "--db", file)
	if !strings.Contains(out, ", version ") || strings.Contains(out, "damaged") {
		t.Errorf("check afterwards: %s%s", out, errOut)
	}
}

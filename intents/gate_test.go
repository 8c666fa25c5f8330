package intents

import (
	"bufio"
	"os"
	"path/filepath"
	"reflect"
	"slices"
	"testing"

	"encoding/json"
)

// Gates only spare work: with all of them open every labelled message is read as it is
// with them.
func TestGatesChangeNothing(t *testing.T) {
	gated, err := New()
	if err != nil {
		t.Fatal(err)
	}
	open, err := New()
	if err != nil {
		t.Fatal(err)
	}
	open.ungated = true
	files, _ := filepath.Glob("../testdata/intents/*.jsonl")
	more, _ := filepath.Glob("../testdata/intents/*/*.jsonl")
	tempting, _ := filepath.Glob("../testdata/tempting/*.jsonl")
	n := 0
	for _, name := range slices.Concat(files, more, tempting) {
		f, err := os.Open(name)
		if err != nil {
			t.Fatal(err)
		}
		defer f.Close()
		sc := bufio.NewScanner(f)
		sc.Buffer(nil, 1<<20)
		for line := 1; sc.Scan(); line++ {
			var l struct {
				Text    string
				Context Context
			}
			if err := json.Unmarshal(sc.Bytes(), &l); err != nil {
				t.Fatalf("%s:%d: %v", name, line, err)
			}
			n++
			if a, b := gated.Parse(l.Text, l.Context), open.Parse(l.Text, l.Context); !reflect.DeepEqual(a, b) {
				t.Errorf("%s:%d is read in another way with all gates open", name, line)
			}
		}
	}
	if n < 1000 {
		t.Errorf("only %d labelled messages were found", n)
	}
}

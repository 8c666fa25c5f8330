package intents

import (
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
)

// TestMap keeps the map of the files in doc.go whole, so that a rule can be found by its
// subject.
func TestMap(t *testing.T) {
	doc, err := os.ReadFile("doc.go")
	if err != nil {
		t.Fatal(err)
	}
	var named []string
	for line := range strings.Lines(string(doc)) {
		if line, ok := strings.CutPrefix(line, "//\t"); ok {
			files, _, _ := strings.Cut(line, "  ")
			named = append(named, strings.Fields(files)...)
		}
	}
	files, err := filepath.Glob("*.go")
	if err != nil {
		t.Fatal(err)
	}
	for _, file := range files {
		name := strings.TrimSuffix(file, ".go")
		if name == "doc" || strings.HasSuffix(name, "_test") {
			continue
		}
		k := slices.Index(named, name)
		if k < 0 {
			t.Errorf("doc.go: the map does not name %s: put it to its subject", file)
			continue
		}
		named = slices.Delete(named, k, k+1)
	}
	for _, name := range named {
		t.Errorf("doc.go: the map names %s.go, which is not there or named twice", name)
	}
}

package intents

import (
	"bufio"
	"encoding/json"
	"os"
	"path/filepath"
	"slices"
	"testing"

	"lazyhand/assess"
)

// tempting is a message full of numbers that tempt a reader to take them for pressures, with those
// that were measured.
type tempting struct {
	Text    string    `json:"text"`
	Context Context   `json:"context"`
	PSI     []float64 `json:"psi"`
}

func readTempting(t *testing.T, file string) (list []tempting) {
	t.Helper()
	f, err := os.Open(file)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	for sc := bufio.NewScanner(f); sc.Scan(); {
		var m tempting
		if err := json.Unmarshal(sc.Bytes(), &m); err != nil {
			t.Fatalf("%s: %s: %v", file, sc.Text(), err)
		}
		list = append(list, m)
	}
	return list
}

// floorTempting is the share of messages of testdata/tempting whose pressures are all found.
const floorTempting = 0.97

// Ages, clock times, counts, ratings, wishes, what was measured before or next door: none of it is
// stored as a pressure, be a gauge in hand or not, and what was measured is still found.
func TestNoTemptingNumberIsStored(t *testing.T) {
	p, err := New()
	if err != nil {
		t.Fatal(err)
	}
	files, err := filepath.Glob("../testdata/tempting/*.jsonl")
	if err != nil || len(files) == 0 {
		t.Fatalf("no messages found: %v", err)
	}
	found, all := 0, 0
	for _, file := range files {
		for _, m := range readTempting(t, file) {
			left := slices.Clone(m.PSI)
			for _, s := range p.Parse(m.Text, m.Context).Statements {
				r, ok := s.(assess.Reading)
				if !ok {
					continue
				}
				if k := slices.Index(left, r.PSI); k >= 0 {
					left = slices.Delete(left, k, k+1)
				} else {
					t.Errorf("%q stores %v; measured were %v", m.Text, r.PSI, m.PSI)
				}
			}
			all++
			if len(left) == 0 {
				found++
			}
		}
	}
	if share := float64(found) / float64(all); share < floorTempting {
		t.Errorf("all pressures found in %.3f of the messages, want at least %.3f", share, floorTempting)
	}
}

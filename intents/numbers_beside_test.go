package intents

import (
	"os"
	"slices"
	"strconv"
	"strings"
	"testing"

	"lazyhand/assess"
)

// Messages hold many numbers that are no pressures. Each line of
// testdata/intents/numbers_beside.txt says which of a message's are; none of the
// others may be stored as one.
func TestNumbersBesideAPressure(t *testing.T) {
	b, err := os.ReadFile("../testdata/intents/numbers_beside.txt")
	if err != nil {
		t.Fatal(err)
	}
	p, err := New()
	if err != nil {
		t.Fatal(err)
	}
	for n, l := range strings.Split(string(b), "\n") {
		text, psi, ok := strings.Cut(l, " =>")
		if !ok || strings.HasPrefix(l, "#") {
			continue
		}
		var want, got []float64
		for f := range strings.SplitSeq(psi, ",") {
			if v, err := strconv.ParseFloat(strings.TrimSpace(f), 64); err == nil {
				want = append(want, v)
			}
		}
		for _, s := range p.Parse(text, Context{}).Statements {
			if r, ok := s.(assess.Reading); ok {
				got = append(got, r.PSI)
			}
		}
		slices.Sort(want)
		slices.Sort(got)
		if !slices.Equal(want, got) {
			t.Errorf("line %d: %s\n got %v\nwant %v", n+1, text, got, want)
		}
	}
}

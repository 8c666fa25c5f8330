package assess

import (
	"bufio"
	"bytes"
	"encoding/json"
	"fmt"
	"math"
	"os"
	"path/filepath"
	"testing"
)

// check is a numeric case with the published, computed or customary source of
// its expected values (testdata/assess/checks.jsonl).
type check struct {
	ID           string             `json:"id"`
	Topic        string             `json:"topic"`
	Inputs       given              `json:"inputs"`
	Expected     map[string]any     `json:"expected"`
	Tolerance    map[string]float64 `json:"tolerance"`
	MustNotEqual map[string]float64 `json:"must_not_equal"`
	Source       string             `json:"source"`
	Basis        string             `json:"basis"`
}

// given are the inputs of a check. A value that is asked for and is not there
// fails the test.
type given map[string]any

func (g given) has(key string) bool { _, ok := g[key]; return ok }

func (g given) num(key string) float64 {
	v, ok := g[key].(float64)
	if !ok {
		panic(fmt.Sprintf("input %q is no number: %v", key, g[key]))
	}
	return v
}

func (g given) text(key string) string {
	v, ok := g[key].(string)
	if !ok {
		panic(fmt.Sprintf("input %q is no text: %v", key, g[key]))
	}
	return v
}

func (g given) list(key string) []float64 {
	var out []float64
	for _, v := range g[key].([]any) {
		out = append(out, v.(float64))
	}
	return out
}

// answers are what the product's functions say, under the keys of the checks.
type answers map[string]any

// TestPublishedFigures runs every case through the function that the product
// uses. `go test -run PublishedFigures -v ./assess` prints each source beside
// its check.
func TestPublishedFigures(t *testing.T) {
	raw, err := os.ReadFile(filepath.Join("..", "testdata", "assess", "checks.jsonl"))
	if err != nil {
		t.Fatal(err)
	}
	seen := 0
	lines := bufio.NewScanner(bytes.NewReader(raw))
	lines.Buffer(nil, 1<<20)
	for lines.Scan() {
		var c check
		if err := json.Unmarshal(lines.Bytes(), &c); err != nil {
			t.Fatalf("case %d: %v", seen+1, err)
		}
		seen++
		t.Run(c.ID, func(t *testing.T) {
			t.Logf("%s — source: %s (%s)", c.Topic, c.Source, c.Basis)
			answer, ok := topics[c.Topic]
			if !ok {
				t.Fatalf("nothing answers the topic %q", c.Topic)
			}
			got := answer(t, c.Inputs)
			for key, want := range c.Expected {
				tolerance := c.Tolerance[key]
				if !within(got[key], want, tolerance) {
					t.Errorf("%s = %v, want %v within %v", key, got[key], want, tolerance)
				}
			}
			for key, wrong := range c.MustNotEqual {
				if within(got[key], wrong, c.Tolerance[key]) {
					t.Errorf("%s = %v, the wrong figure in circulation", key, got[key])
				}
			}
		})
	}
	if err := lines.Err(); err != nil {
		t.Fatal(err)
	}
	if seen != 274 {
		t.Errorf("%d cases were read, want all 274", seen)
	}
}

// within compares numbers and lists of numbers within a tolerance, element by
// element, and anything else exactly.
func within(got, want any, tolerance float64) bool {
	switch w := want.(type) {
	case float64:
		var g float64
		switch v := got.(type) {
		case float64:
			g = v
		case int:
			g = float64(v)
		default:
			return false
		}
		// A hair for the last bit of sums written in decimal.
		return math.Abs(g-w) <= tolerance+1e-15*math.Abs(w)
	case []any:
		var list []float64
		switch v := got.(type) {
		case []float64:
			list = v
		case []int:
			for _, x := range v {
				list = append(list, float64(x))
			}
		default:
			return false
		}
		if len(list) != len(w) {
			return false
		}
		for i := range w {
			if !within(list[i], w[i], tolerance) {
				return false
			}
		}
		return true
	case bool:
		g, ok := got.(bool)
		return ok && g == w
	}
	return false
}

// TestTheComparisonCanFail keeps the comparison above honest.
func TestTheComparisonCanFail(t *testing.T) {
	for _, c := range []struct {
		got, want any
		tolerance float64
		same      bool
	}{
		{1.0, 1.0, 0, true}, {1.01, 1.0, 0.005, false}, {math.NaN(), 1.0, 9, false}, {nil, 1.0, 9, false},
		{true, true, 0, true}, {false, true, 0, false}, {nil, false, 0, false},
		{[]float64{1, 2}, []any{1.0, 2.0}, 0, true}, {[]float64{1}, []any{1.0, 2.0}, 9, false},
		{[]int{29, 31}, []any{29.0, 30.0}, 0, false}, {"80", 80.0, 9, false},
	} {
		if within(c.got, c.want, c.tolerance) != c.same {
			t.Errorf("within(%v, %v, %v) = %v", c.got, c.want, c.tolerance, !c.same)
		}
	}
}

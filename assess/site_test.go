package assess_test

import (
	"os"
	"slices"
	"strings"
	"testing"

	"lazyhand/assess"
)

func TestOneHouseHoweverItIsSpelled(t *testing.T) {
	for _, c := range []struct {
		a, b string
		one  bool
	}{
		{"123 Elm", "123 Elm St", true},
		{"123 N Elm St", "123 Elm St", true},
		{"123 N Elm St", "123 S Elm St", false},
		{"123 Elm St", "123 Elm Ave", false},
		{"123 Elm St Apt 2", "123 Elm St", false},
		// The end of a name that could be the suffix too.
		{"418 Quail Holw", "418 Quail Hollow Dr", true},
		{"418 Quail Holw", "418 Quail Hollow Rd Apt 2", false},
		{"418 Quail Holw", "418 Quail Dr", false},
		{"418 Quail Holw", "418 Quail", true},
		{"418 Quail", "418 Quail Hollow Dr", false},
		{"77 Mill Crk", "77 W Mill Creek Ln", true},
		{"77 Mill Crk", "79 Mill Creek Ln", false},
		{"5 Cedar Rdg", "5 Cedar Ridge Ct", true},
		{"5 Park St", "5 Park Street Ln", false}, // nobody leaves that Lane out
	} {
		a, b := assess.Site{Line: c.a}, assess.Site{Line: c.b}
		if a.Fits(b) != c.one || b.Fits(a) != c.one {
			t.Errorf("%q and %q: one house is %v, want %v", c.a, c.b, a.Fits(b), c.one)
		}
	}
	if a, b := (assess.Site{Line: "5 Cedar Rdg", Town: "Weir"}), (assess.Site{Line: "5 Cedar Ridge Ct", Town: "Alder"}); a.Fits(b) {
		t.Error("houses in two towns are one")
	}
}

func TestABuildingHoldsItsUnits(t *testing.T) {
	for _, c := range []struct {
		building, unit string
		holds          bool
	}{
		{"40 Cedar Ln", "40 Cedar Ln Apt B", true},
		{"40 Cedar", "40 Cedar Ln Apt B", true},
		{"40 Cedar Ave", "40 Cedar Ln Apt B", false},
		{"40 Cedar Ln", "40 Cedar Ln", false},
		{"40 Cedar Ln Apt C", "40 Cedar Ln Apt B", false},
		{"41 Cedar Ln", "40 Cedar Ln Apt B", false},
		{"40 Cedar", "40 Cedar Hill Rd Apt B", false},
	} {
		if got := (assess.Site{Line: c.building}).Holds(assess.Site{Line: c.unit}); got != c.holds {
			t.Errorf("%q holds %q: %v", c.building, c.unit, got)
		}
	}
}

// TestHousesThatFitAreFound: what Fits takes for one house is found under a form
// that the other has.
func TestHousesThatFitAreFound(t *testing.T) {
	for _, c := range [][2]string{{"418 Quail Holw", "418 Quail Hollow Dr"}, {"77 Mill Crk", "77 W Mill Creek Ln"}, {"123 Elm", "123 Elm St"}, {"9 Oak Hl Apt 3", "9 Oak Hill Rd Apt 3"}} {
		for _, c := range [][2]string{c, {c[1], c[0]}} {
			forms := assess.Site{Line: c[0]}.LooseForms()
			if want := (assess.Site{Line: c[1]}).Loose(); !slices.Contains(forms, want) {
				t.Errorf("%q is looked for as %q; %q is on record as %q", c[0], forms, c[1], want)
			}
		}
	}
}

// TestSuffixesAreThoseOfThePostOffice: every suffix of USPS Publication 28,
// appendix C1, is told from the street's name.
func TestSuffixesAreThoseOfThePostOffice(t *testing.T) {
	table, err := os.ReadFile("../testdata/intents/usps_suffixes.tsv")
	if err != nil {
		t.Fatal(err)
	}
	n := 0
	for line := range strings.Lines(string(table)) {
		f := strings.Split(line, "\t")
		if len(f) < 4 || f[3] != "suffix" {
			continue
		}
		n++
		if s := (assess.Site{Line: "12 Larch " + f[2]}); s.Street() != "larch" {
			t.Errorf("the street of %q is %q", s.Line, s.Street())
		}
		if strings.Contains(" KEY TRAILER PARKS SPURS WALKS ", " "+f[0]+" ") {
			continue // the first two name units too, the others are short for the same as one of them
		}
		bare, longer := assess.Site{Line: "12 Larch " + f[2]}, assess.Site{Line: "12 Larch " + f[0] + " Ln"}
		common := strings.Contains(" ST AVE RD DR LN CT BLVD CIR HWY PKWY WAY ", " "+f[2]+" ")
		if bare.Fits(longer) == common {
			t.Errorf("%q and %q: one house is %v", bare.Line, longer.Line, !common)
		}
	}
	if n != 206 {
		t.Errorf("the table has %d suffixes, want 206", n)
	}
}

package intents

import (
	"testing"

	"lazyhand/assess"
)

// The month and year on a tag, and a thing counted as none.
func TestDateCodesAndNone(t *testing.T) {
	p, err := New()
	if err != nil {
		t.Fatal(err)
	}
	for _, c := range []struct {
		text, item string
		year       int
	}{
		{"prv dated 3/14", "prv", 2014},
		{"prv stamped 03/2014", "prv", 2014},
		{"heater mfg 0314", "heater", 2014},
		{"mfg 0314 on the heater", "heater", 2014},
		{"heater dated 11/09", "heater", 2009},
		{"tank dated 0617", "expansion_tank", 2017},
		{"zero expansion tank", "expansion_tank", 0},
		{"zero exp tank", "expansion_tank", 0},
		{"zero softener", "softener", 0},
	} {
		ok := false
		for _, s := range p.Parse(c.text, Context{}).Statements {
			e, is := s.(assess.Equipment)
			if !is || string(e.Item) != c.item {
				continue
			}
			if c.year == 0 {
				ok = e.Present != nil && !*e.Present
			} else {
				ok = e.InstalledYear != nil && *e.InstalledYear == c.year
			}
		}
		if !ok {
			t.Errorf("%q: %v", c.text, p.Parse(c.text, Context{}).Statements)
		}
	}
}

package intents_test

import (
	"testing"

	"lazyhand/assess"
	"lazyhand/intents"
)

// A digit hit in place of a letter makes no number of its own.
func TestDigitsInsideWords(t *testing.T) {
	p := newParser(t)
	for text, want := range map[string]assess.Reading{
		"fr0nt 84":             {PSI: 84, Point: assess.FrontBibb},
		"K1tchen 70":           {PSI: 70, Point: assess.Kitchen},
		"r3ar bib 66":          {PSI: 66, Point: assess.RearBibb},
		"84psi kitchen":        {PSI: 84, Point: assess.Kitchen},
		"kitchen 70 b4 I left": {PSI: 70, Point: assess.Kitchen},
	} {
		got := p.Parse(text, intents.Context{}).Visit(assess.Date{}).Readings
		if len(got) != 1 || got[0].PSI != want.PSI || got[0].Point != want.Point {
			t.Errorf("%q: read %+v, want %+v", text, got, want)
		}
	}
}

package intents_test

import (
	"testing"

	"lazyhand/assess"
	"lazyhand/intents"
)

// A house is told of in passing, before and after any word: what follows its name tells
// something of it, and is no part of it.
func TestHousesToldOfInPassing(t *testing.T) {
	p := newParser(t)
	for _, c := range []struct{ text, site string }{
		{"stall the recheck on 2020 Barlow a fortnight", "2020 Barlow"},
		{"heater in 2012, 40 gal", ""},
		{"prv from 2012 bad", ""},
		{"replaced in 2019 supposedly", ""},
		{"88 Pine, Marlow", "88 Pine"},
		{"88 pine marlow kitchen 66", "88 Pine Marlow"},
		{"88 pine st marlow tx kitchen 66", "88 Pine St"},
		{"88 pine st, marlow tx 75001 kitchen 66", "88 Pine St"},
		{"88 pine st in marlow, kitchen 66", "88 Pine St"},
		{"88 pine st upstairs unit, kitchen 66", "88 Pine St"},
		{"88 pine st downstairs, kitchen 66", "88 Pine St"},
		{"88 pine st unit 2 upstairs bath 66", "88 Pine St Unit 2"},
		{"88 pine st # 2 upstairs bath 66", "88 Pine St # 2"},
		{"88 pine st #2b bath 66", "88 Pine St # 2B"},
		{"88 pine st apt. 2 bath 66", "88 Pine St Apt 2"},
		{"88 pine st apartment 2 bath 66", "88 Pine St Apt 2"},
		{"88 pine st, 2nd unit, bath 66", "88 Pine St"},
		{"88 pine st bldg c apt 2 bath 66", "88 Pine St Bldg C Apt 2"},
		{"88 pine st suite 200 bath 66", "88 Pine St Ste 200"},
		{"88 pine st trlr 4 bath 66", "88 Pine St Trlr 4"},
		{"88 pine st lot 4 bath 66", "88 Pine St Lot 4"},
		{"88 pine st space 4 bath 66", "88 Pine St Spc 4"},
		{"lot 4, 88 pine st, bath 66", "88 Pine St Lot 4"},
		{"#4 88 pine st bath 66", "88 Pine St # 4"},
		{"apt 4 88 pine st bath 66", "88 Pine St Apt 4"},
		{"apt 4 at 88 pine, bath 66", "88 Pine Apt 4"},
		{"88 pine st 4 bath house, bath 66", "88 Pine St"},
		{"the house at 88 pine st", "88 Pine St"},
		{"the duplex at 88 pine", "88 Pine"},
		{"rental on 88 pine", "88 Pine"},
		{"88 pine the rental, bath 66", "88 Pine"},
		{"88 pine again", "88 Pine"},
		{"88 pine still 66", "88 Pine"},
		{"88 pine has 66", "88 Pine"},
		{"88 pine reads 66", "88 Pine"},
		{"88 pine came in at 66", "88 Pine"},
		{"88 pine is good", "88 Pine"},
		{"88 pine needs a prv", "88 Pine"},
		{"88 pine wants a tank", "88 Pine"},
		{"88 pine called back", "88 Pine"},
		{"88 pine customer says no water", "88 Pine"},
		{"88 pine no water", "88 Pine"},
		{"88 pine leak under sink", "88 Pine"},
		{"88 pine prv shot", "88 Pine"},
		{"88 pine heater 2012", "88 Pine"},
		{"88 pine replaced prv set 60", "88 Pine"},
		{"88 pine swapped tank", "88 Pine"},
		{"88 pine flushed the heater", "88 Pine"},
		{"88 pine recheck 1 mo", "88 Pine"},
		{"88 pine snooze a week", "88 Pine"},
		{"88 pine history", "88 Pine"},
		{"88 pine report", "88 Pine"},
		{"88 pine trend", "88 Pine"},
		{"88 pine graph", "88 Pine"},
		{"88 pine done", "88 Pine"},
		{"88 pine?", "88 Pine"},
		{"88 pine due?", "88 Pine"},
		{"history 88 pine", "88 Pine"},
		{"history on 88 pine please", "88 Pine"},
		{"whats up with 88 pine", "88 Pine"},
		{"what happened at 88 pine", "88 Pine"},
		{"when were we last at 88 pine", "88 Pine"},
		{"did anybody hit 88 pine yet", "88 Pine"},
		{"who went to 88 pine", "88 Pine"},
		{"how old is the heater at 88 pine", "88 Pine"},
		{"does 88 pine have a tank", "88 Pine"},
		{"is 88 pine still low", "88 Pine"},
		{"can i get the sheet for 88 pine", "88 Pine"},
		{"send 88 pine the sheet", "88 Pine"},
		{"email the 88 pine report", "88 Pine"},
		{"the 88 pine job", "88 Pine"},
		{"the 88 pine lady called", "88 Pine"},
		{"that 88 pine reading was wrong", "88 Pine"},
		{"scratch 88 pine", "88 Pine"},
		{"delete 88 pine", "88 Pine"},
		{"undo 88 pine", "88 Pine"},
		{"not 88 pine", "88 Pine"},
		{"mark 88 pine done", "88 Pine"},
		{"close out 88 pine", "88 Pine"},
		{"kick 88 pine to next month", "88 Pine"},
		{"move 88 pine to friday", "88 Pine"},
		{"put 88 pine on for friday", "88 Pine"},
		{"schedule 88 pine for friday", "88 Pine"},
		{"book 88 pine friday", "88 Pine"},
		{"going back to 88 pine friday", "88 Pine"},
		{"swing by 88 pine friday", "88 Pine"},
		{"swinging by 88 pine in 2 weeks", "88 Pine"},
		{"need a prv at 88 pine", "88 Pine"},
		{"ordered a tank for 88 pine", "88 Pine"},
		{"tank goes in at 88 pine friday", "88 Pine"},
		{"gas smell 88 pine", "88 Pine"},
		{"no water 88 pine", "88 Pine"},
		{"no water at 88 pine", "88 Pine"},
		{"low flow 88 pine", "88 Pine"},
		{"hammer at 88 pine when the washer stops", "88 Pine"},
	} {
		if got := p.Parse(c.text, intents.Context{}).Site; got != c.site {
			t.Errorf("%q: site %q, want %q", c.text, got, c.site)
		}
	}
}

// Messages dictated without any mark: a comma is heard before a pressure told with its
// place, a full stop before a new teller.
func TestPausesThatNobodyWrote(t *testing.T) {
	p := newParser(t)
	for _, c := range []struct {
		text  string
		psi   float64
		point string
	}{
		{"was 70 when they bought the place 97 at the hose bib today", 97, "bibb"},
		{"told him 80 is the limit told him twice 79 kitchen", 79, "kitchen"},
		{"he swears its 80 in there my gauge says 112 at the side bib", 112, "side_bibb"},
		{"hydrant tag says 74 from 2018 I get 126 at the meter today", 126, "street"},
		{"prv was put in 2022 going by the tag 74 past it", 74, "after_prv"},
		{"kitchen sixty six twenty seven hemlock", 66, "kitchen"},
	} {
		var got []assess.Reading
		for _, s := range p.Parse(c.text, intents.Context{}).Statements {
			if r, ok := s.(assess.Reading); ok {
				got = append(got, r)
			}
		}
		if len(got) != 1 || got[0].PSI != c.psi || string(got[0].Point) != c.point {
			t.Errorf("%q: %v, want %g at %s alone", c.text, got, c.psi, c.point)
		}
	}
}

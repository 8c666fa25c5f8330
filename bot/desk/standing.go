package desk

import (
	"math"

	"lazyhand/assess"
	"lazyhand/intents"
	"lazyhand/store"
)

// yearAhead is how far ahead of the day on which a trend leaves the band
// somebody is to look, in days: the assessment calls it "soon" from then on.
const yearAhead = 365

// standing is what an assessment says of a house for the lists of worst houses
// and of those to look at again.
func (d *Desk) standing(a assess.Assessment, today assess.Date) store.Standing {
	s := store.Standing{PSI: a.HousePSI, Outside: d.outside(a.HousePSI)}
	prv := 0
	if a.Valve.AgeYears != nil {
		prv = today.Year - int(*a.Valve.AgeYears)
	}
	s.Look = d.lookAgain(prv, a.Drift, today)
	return s
}

// outside is how far a pressure lies outside the shop's band, psi.
func (d *Desk) outside(psi *float64) float64 {
	if psi == nil {
		return 0
	}
	band := d.band()
	return max(0, *psi-band[1], band[0]-*psi)
}

func (d *Desk) band() [2]float64 {
	if b := d.opt.Shop.BandPSI; b[1] > b[0] && b[0] > 0 {
		return b
	}
	return assess.DefaultShop().BandPSI
}

func (d *Desk) serviceYears() [2]float64 {
	if y := d.opt.Shop.ServiceYears; y[0] > 0 && y[1] >= y[0] {
		return y
	}
	return assess.DefaultShop().ServiceYears
}

// lookAgain is the first day after today from which the calendar alone changes
// what follows for a house: its regulator (installed in the year prv, 0 for not
// known) nears or passes its service life, its trend comes within a year of
// leaving the band or leaves it. The zero Date: never.
func (d *Desk) lookAgain(prv int, drift assess.Drift, today assess.Date) assess.Date {
	var first assess.Date
	take := func(day assess.Date) {
		if today.Before(day) && (first.IsZero() || day.Before(first)) {
			first = day
		}
	}
	if prv > 0 {
		for _, years := range d.serviceYears() {
			take(assess.Date{Year: prv + int(math.Ceil(years)), Month: 1, Day: 1})
		}
	}
	if c := drift.Crosses; c != nil {
		take(c.Date.AddDays(-yearAhead))
		take(c.Date)
	}
	return first
}

// judge keeps what the assessment of the house makes of a report, how the house
// now stands and what it has. A report of an earlier day is judged by what was
// known up to that day.
func (t *turn) judge(report int64, f intents.Frame, site store.SiteRecord, in assess.Input, a assess.Assessment) error {
	visit, at := f.Visit(t.day), t.filed[report]
	then := a
	if at.visit < len(in.Visits)-1 {
		earlier := in
		earlier.Visits, earlier.Today = in.Visits[:at.visit+1], visit.Date
		then = assess.Assess(earlier)
	}
	judged := then.Readings[min(at.reading, len(then.Readings)):]
	v := store.Verdict{HousePSI: then.HousePSI, StreetPSI: then.StreetPSI, Band: then.Band,
		ValveWork: valveWork(visit), Unfinished: unfinished(visit, judged)}
	if err := t.tx.Judge(report, v, visit.Readings, judged); err != nil {
		return err
	}
	if tellsOfEquipment(f) {
		if err := t.tx.KeepEquipment(site.ID, livesOf(in.Visits)); err != nil {
			return err
		}
	}
	return t.tx.Stand(site.ID, t.standing(a, in.Today))
}

// valveWork tells whether a visit changed what the regulator holds: a new
// series of readings begins.
func valveWork(v assess.Visit) bool {
	for _, w := range v.Work {
		switch w.Action {
		case assess.SetPRV, assess.ReplacedPRV, assess.InstalledPRV, assess.RebuiltPRV:
			return true
		}
	}
	return false
}

// place is where a report stands among a house's visits: which visit, and which
// of its readings is the report's first.
type place struct{ visit, reading int }

// restand works out anew how a house stands after something was taken back or
// put right.
func (t *turn) restand(id int64) error {
	site, err := t.tx.Site(id)
	if err != nil {
		return err
	}
	in, err := t.input(site)
	if err != nil {
		return err
	}
	if err := t.tx.KeepEquipment(site.ID, livesOf(in.Visits)); err != nil {
		return err
	}
	if len(in.Visits) == 0 {
		return t.tx.Stand(site.ID, store.Standing{})
	}
	return t.tx.Stand(site.ID, t.standing(assess.Assess(in), in.Today))
}

// tellsOfEquipment tells whether a frame changes what is known to be installed.
func tellsOfEquipment(f intents.Frame) bool {
	for _, s := range f.Statements {
		switch s.(type) {
		case assess.Equipment, assess.Work:
			return true
		}
	}
	return false
}

// unfinished tells whether a visit did work on the regulator or the tank and
// left without a fair reading of the house after it.
func unfinished(v assess.Visit, judged []assess.JudgedReading) bool {
	worked := false
	for _, w := range v.Work {
		switch w.Action {
		case assess.SetPRV, assess.ReplacedPRV, assess.InstalledPRV, assess.RebuiltPRV, assess.InstalledTank, assess.ReplacedTank, assess.ChargedTank, assess.ShutOff:
			worked = true
		}
	}
	if !worked {
		return false
	}
	for i, j := range judged {
		if j.Side == assess.HouseSide && j.Fair == assess.FairYes && i < len(v.Readings) && v.Readings[i].When != assess.Before {
			return false
		}
	}
	return true
}

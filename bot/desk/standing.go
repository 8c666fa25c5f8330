package desk

import (
	"math"
	"slices"

	"lazyhand/assess"
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

// valveWork tells whether work changed what the regulator holds: a new series
// of readings begins.
func valveWork(done []assess.Work) bool {
	for _, w := range done {
		switch w.Action {
		case assess.SetPRV, assess.ReplacedPRV, assess.InstalledPRV, assess.RebuiltPRV:
			return true
		}
	}
	return false
}

// tankWork tells whether work changed what the expansion tank can take.
func tankWork(done []assess.Work) bool {
	return slices.ContainsFunc(done, func(w assess.Work) bool {
		return w.Action == assess.InstalledTank || w.Action == assess.ReplacedTank || w.Action == assess.ChargedTank
	})
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
		if j.Side == assess.HouseSide && j.Fair == assess.FairYes && i < len(v.Readings) && v.Readings[i].When != assess.Before && !foundSo(v, v.Readings[i]) {
			return false
		}
	}
	return true
}

// apart is how far from a new setting a reading cannot be what the work left, psi.
const apart = 15

// foundSo tells whether a reading that does not say so shows what was found
// before the regulator was set: "91 rear bib, put in a new prv set at 60".
func foundSo(v assess.Visit, r assess.Reading) bool {
	return r.When == "" && slices.ContainsFunc(v.Work, func(w assess.Work) bool {
		return w.ToPSI != nil && w.Action != assess.ChargedTank && math.Abs(*w.ToPSI-r.PSI) > apart
	})
}

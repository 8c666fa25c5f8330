package paper

import (
	"time"

	"lazyhand/assess"
	"lazyhand/bot/desk"
	"lazyhand/store"
)

// The houses of these tests are invented.

func day(y int, m time.Month, d int) assess.Date { return assess.Date{Year: y, Month: m, Day: d} }

func ptr[T any](v T) *T { return &v }

// houseOf makes what the desk would know of a house with these visits, as of
// the day of the last.
func houseOf(lang assess.Lang, visits ...assess.Visit) desk.House {
	h := desk.House{Site: assess.Site{Line: "12 Alder St", Town: "Larkfield", Postcode: "00012"}, Lang: lang, Band: [2]float64{40, 80}, Visits: visits}
	for i, v := range visits {
		a := assess.Assess(assess.Input{Today: v.Date, Visits: visits[:i+1], Lang: lang})
		for j, r := range v.Readings {
			h.Readings = append(h.Readings, store.SiteReading{Day: v.Date, Reading: r, Side: a.Readings[j].Side, Fair: a.Readings[j].Fair})
		}
		h.Today, h.Assessment = v.Date, a
		for _, e := range v.Equipment {
			switch e.Item {
			case assess.PRV:
				h.Valve = e
			case assess.Heater:
				h.Heater = e
			case assess.ExpansionTank:
				h.Tank = e
			}
		}
	}
	return h
}

// laundry is a fair reading.
func laundry(psi float64) assess.Reading {
	return assess.Reading{PSI: psi, Point: assess.Laundry, Heater: assess.Idle, Flow: assess.Static}
}

// drifting is a house whose regulator was replaced and whose pressure has been
// rising since, with readings of every kind.
func drifting(lang assess.Lang) desk.House {
	visits := []assess.Visit{
		{Date: day(2023, 2, 10), Readings: []assess.Reading{laundry(92), {PSI: 96, Point: assess.Street, Flow: assess.Static}},
			Equipment: []assess.Equipment{
				{Item: assess.PRV, InstalledYear: ptr(2006)},
				{Item: assess.Heater, InstalledYear: ptr(2014), SizeGal: ptr(50.0), Fuel: assess.Gas},
			}},
		{Date: day(2023, 3, 2), Readings: []assess.Reading{{PSI: 93, Point: assess.Laundry, Heater: assess.Idle, Flow: assess.Static, When: assess.Before}, {PSI: 60, Point: assess.Laundry, Heater: assess.Idle, Flow: assess.Static, When: assess.After}},
			Work: []assess.Work{{Action: assess.ReplacedPRV, ToPSI: ptr(60.0)}}, Equipment: []assess.Equipment{{Item: assess.PRV, InstalledYear: ptr(2023)}}},
	}
	for i, psi := range []float64{61, 63, 62.5, 66, 68, 70, 71, 74, 76} {
		v := assess.Visit{Date: day(2023, 6, 5).AddDays(i * 120), Readings: []assess.Reading{laundry(psi)}}
		switch i {
		case 2:
			v.Readings = append(v.Readings, assess.Reading{PSI: 88, Point: assess.FrontBibb})
		case 4:
			v.Readings = append(v.Readings, assess.Reading{PSI: 48, Point: assess.Laundry, Heater: assess.Idle, Flow: assess.Flowing})
		case 6:
			v.Readings = append(v.Readings, assess.Reading{PSI: 98, Point: assess.Street, Flow: assess.Static}, assess.Reading{PSI: 104, Point: assess.Laundry, Heater: assess.Firing, Peak: true})
		}
		visits = append(visits, v)
	}
	last := &visits[len(visits)-1]
	last.Readings = append(last.Readings, assess.Reading{PSI: 97, Point: assess.FrontBibb}, assess.Reading{PSI: 79, Point: assess.HeaterDrain})
	last.Equipment = []assess.Equipment{{Item: assess.ExpansionTank, Present: ptr(false)}, {Item: assess.PRV, InstalledYear: ptr(2023), SettingPSI: ptr(60.0)}, {Item: assess.Heater, InstalledYear: ptr(2014), SizeGal: ptr(50.0), Fuel: assess.Gas}}
	return houseOf(lang, visits...)
}

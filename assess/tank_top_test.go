package assess_test

import (
	"testing"

	"lazyhand/assess"
)

func TestTheShopMayHoldTheHouseToALowerTopThanTheBand(t *testing.T) {
	size := 50.0
	visit := assess.Visit{Date: assess.Date{Year: 2026, Month: 6, Day: 15},
		Readings:  []assess.Reading{{PSI: 60, Point: assess.Laundry, Heater: assess.Idle, Flow: assess.Static}},
		Equipment: []assess.Equipment{{Item: assess.PRV}, {Item: assess.Heater, SizeGal: &size, Fuel: assess.Gas}}}
	tank := func(top float64) float64 {
		a := assess.Assess(assess.Input{Today: visit.Date, Visits: []assess.Visit{visit}, Shop: assess.Shop{TankTopPSI: top}})
		if a.Expansion.MinTankGal == nil {
			t.Fatalf("no size at a top of %v psi: %+v", top, a.Expansion)
		}
		return *a.Expansion.MinTankGal
	}
	if band, same, lower := tank(0), tank(80), tank(70); band != same || lower <= band {
		t.Errorf("%v gal for the band's top, %v for 80 psi, %v for 70 psi", band, same, lower)
	}
}

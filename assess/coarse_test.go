package assess

import (
	"fmt"
	"math"
	"math/rand/v2"
	"testing"
)

// coarseVisit is a visit to a house by rougher rules than those of
// simulate_test.go: no clock, no pipes, every quantity drawn flat from a range,
// tanks that fail whatever the fault, and earlier visits under the same fault.
// What an engine has learned of the one town's physics is of no use here.
func coarseVisit(r *rand.Rand, c Cause, nPast int) scene {
	u := func(a, b float64) float64 { return a + (b-a)*r.Float64() }
	main := u(70, 140)
	set := u(45, 75)
	prv := true
	tank := 0 // ok
	if yes(r, 0.25) {
		tank = 1 + r.IntN(2)
	}
	bias, slip := r.NormFloat64()*1.5, 0.0
	switch c {
	case CauseSetHigh:
		set = u(82, 110)
		main = math.Max(main, set+u(8, 40))
	case CauseSetLow:
		set = u(20, 38)
	case CausePassing, CauseSeatCreep:
		main = math.Max(main, u(88, 140))
	case CauseNoPRV:
		prv = false
		main = math.Max(main, u(84, 140))
	case CauseExpansion:
		tank = 1 + r.IntN(2)
	case CauseStreetLow:
		main = u(22, 39)
	case CauseGauge:
		bias = u(10, 30) * float64(1-2*r.IntN(2)) // too high or too low
		if yes(r, .3) {
			slip = 12
		}
	}
	if c == CauseSound {
		tank = 0
	}
	set = math.Min(set, main-3)
	age := r.IntN(12)
	if c == CausePassing || c == CauseSeatCreep || c == CauseElastomer || c == CauseRestricted {
		age = 6 + r.IntN(16)
	}
	var in Input
	in.Today = today
	creepPos := u(0, 1)
	ahead := yes(r, .6)
	static := func(swing float64) float64 {
		s := main + swing
		switch {
		case !prv:
			return s
		case c == CausePassing:
			return s - u(0, 5)
		case c == CauseSeatCreep:
			return set + creepPos*creepPos*(s-set)
		}
		return math.Min(set, s)
	}
	var last Visit
	for k := nPast; k >= 0; k-- {
		v := Visit{Date: today.AddDays(-k * 120)}
		swing := r.NormFloat64() * 5
		g := func(x float64) float64 {
			b := bias
			if k > 0 && c == CauseGauge {
				b = 0
			}
			return math.Max(0, math.Round(x+b+r.NormFloat64()*(1.5+slip)))
		}
		pt := []TestPoint{RearBibb, Laundry, Kitchen, SideBibb, HeaterDrain}[r.IntN(5)]
		var h HeaterState
		if yes(r, .65) {
			h = Idle
		}
		if yes(r, .85) {
			v.Add(Reading{PSI: g(static(swing)), Point: pt, Heater: h})
		}
		if yes(r, .55) {
			v.Add(Reading{PSI: g(main + swing), Point: Street})
		} else if yes(r, .4) {
			x := static(swing)
			if ahead {
				x = main + swing
			}
			v.Add(Reading{PSI: g(x), Point: FrontBibb})
		}
		if yes(r, .35) || c == CauseRestricted && yes(r, .5) {
			f := static(swing)
			if c == CauseSeatCreep {
				f = set
			}
			if c == CauseRestricted {
				f *= u(.3, .62)
			} else {
				f -= u(2, 14)
			}
			v.Add(Reading{PSI: g(math.Max(f, 0)), Point: pt, Flow: Flowing})
		}
		if yes(r, .3) || c == CauseExpansion && yes(r, .5) {
			f := static(swing)
			if prv && c != CausePassing {
				switch {
				case tank == 0:
					f += u(0, 6)
				case c == CauseExpansion:
					f = math.Max(f+u(15, 60), 84)
				default:
					f += u(4, 50)
				}
			}
			v.Add(Reading{PSI: g(math.Min(f, 150)), Point: pt, Heater: Firing})
		}
		if yes(r, .25) || c == CauseSeatCreep && yes(r, .35) {
			f := static(swing + 8)
			if c == CauseSeatCreep {
				f = main + 8 - u(0, 8)
			}
			v.Add(Reading{PSI: g(f), Point: pt, Heater: Idle, Peak: true})
		}
		tell := func(s SymptomName, p float64) {
			if yes(r, p) {
				v.Add(Symptom{Symptom: s})
			} else if yes(r, .03) {
				v.Add(Symptom{Symptom: s, Absent: true})
			}
		}
		rate := map[SymptomName]float64{DarkWater: .02, RustyWater: .03, Leak: .06, ReliefDischarge: .02, Hammer: .05, Noise: .05, LowFlow: .05, Swings: .03, Creep: .02}
		switch c {
		case CauseElastomer:
			rate[DarkWater] = .7
		case CauseSeatCreep:
			rate[Creep] = .5
			rate[Leak] = .2
		case CauseRestricted:
			rate[LowFlow] = .6
		case CauseSetLow, CauseStreetLow:
			rate[LowFlow] = .5
		case CauseExpansion:
			rate[ReliefDischarge] = .45
		case CausePassing, CauseNoPRV, CauseSetHigh:
			rate[Leak] = .3
			rate[Hammer] = .25
			rate[Noise] = .2
		}
		for _, s := range anySymptom {
			tell(s, rate[s])
		}
		if !prv {
			if yes(r, .7) {
				v.Add(Equipment{Item: PRV, Present: ptr(false)})
			}
		} else if yes(r, .6) {
			e := Equipment{Item: PRV}
			if yes(r, .6) {
				e.InstalledYear = ptr(2026 - age)
			} else {
				e.AgeUnknown = true
			}
			v.Add(e)
		}
		if yes(r, .5) {
			switch tank {
			case 0:
				v.Add(Equipment{Item: ExpansionTank})
			case 1:
				v.Add(Equipment{Item: ExpansionTank, Present: ptr(false)})
			case 2:
				v.Add(Equipment{Item: ExpansionTank, Condition: Failed})
			}
		}
		if c == CauseGauge && yes(r, .5) {
			v.Add(Equipment{Item: Gauge, Condition: Suspect})
		}
		if yes(r, .04) {
			misreport(r, &v)
		}
		in.Visits = append(in.Visits, v)
		last = v
	}
	p := plumbing{fault: c}
	return scene{in: in, truth: c, enough: enough(&p, &last)}
}

// The same figures again on houses by rougher rules, with and without earlier
// visits.
func TestCausesOfCoarseHouses(t *testing.T) {
	n := 11000
	if testing.Short() {
		n = 3300
	}
	for _, past := range []int{0, 2} {
		t.Run(fmt.Sprintf("%d earlier visits", past), func(t *testing.T) {
			r := rand.New(rand.NewPCG(5, 5))
			all := newTally()
			for i := range n {
				c := causeNames[i%nCauses]
				if i%3 == 0 {
					c = CauseSound
				}
				sc := coarseVisit(r, c, past)
				all.take(sc, Assess(sc.in))
			}
			all.report(t, 0.01)
		})
	}
}

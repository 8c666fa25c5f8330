package assess

import "math"

// Checks that a tech can do on the visit; their words stand in words_en.go and
// words_es.go.
const (
	checkStreet    = "street_static"
	checkHouse     = "house_static"
	checkFlow      = "flow_test"
	checkCreep     = "creep_watch"
	checkHeat      = "heat_watch"
	checkGauge     = "second_gauge"
	checkRegulator = "find_regulator"
	checkTank      = "tank_charge"
	checkScrew     = "turn_screw"
	checkStrainer  = "strainer"
)

// When a test is worth naming, and its minutes where no table holds them.
// Judgement.
const (
	leastGain      = 0.015 // nats; a test that promises less tells nothing
	leastUncertain = 0.25  // nats; below this nothing is left to tell apart
	streetMinutes  = 5
	houseMinutes   = 5
	streetBinPSI   = 8 // readings of the main are told apart by this much
	nOutcomes      = 3
)

// fieldTest is one test: its minutes of work, when it applies, and how likely each
// of its outcomes is under each cause. Outcomes are judgement in the light of
// the causes' definitions; minutes are judgement.
type fieldTest struct {
	code     string
	minutes  float64
	applies  func(f *facts) bool
	outcomes [nOutcomes]perCause
}

// rest completes a table whose last outcome is what remains to 1.
func rest(a, b perCause) [nOutcomes]perCause {
	out := [nOutcomes]perCause{a, b}
	for i := range a {
		out[2][i] = math.Max(0, 1-a[i]-b[i])
	}
	return out
}

var tableChecks = [...]fieldTest{
	{checkFlow, 6, func(f *facts) bool { return !f.anyReading(bitFlowing) }, rest(
		// falls less than 10 psi; 10 to 20; the rest more
		//       sound setHi setLo pass  creep restr elast noprv expan strlo gauge
		perCause{0.70, 0.70, 0.60, 0.65, 0.70, 0.03, 0.66, 0.65, 0.70, 0.40, 0.60},
		perCause{0.27, 0.27, 0.32, 0.31, 0.27, 0.12, 0.30, 0.31, 0.27, 0.40, 0.28})},
	{checkCreep, 15, func(f *facts) bool { return !f.visit.told(Creep) }, rest(
		// climbs; holds; the rest moves both ways
		perCause{0.04, 0.05, 0.05, 0.06, 0.88, 0.06, 0.07, 0.04, 0.08, 0.03, 0.10},
		perCause{0.93, 0.92, 0.92, 0.74, 0.10, 0.90, 0.90, 0.78, 0.88, 0.85, 0.70})},
	{checkHeat, 25, func(f *facts) bool { return !f.anyReading(bitFiring) && f.found.fuel != Tankless && f.heaterMayFire() }, rest(
		// rises over the band; holds; the rest rises within it
		perCause{0.05, 0.30, 0.02, 0.20, 0.25, 0.06, 0.06, 0.20, 0.90, 0.02, 0.12},
		perCause{0.72, 0.50, 0.78, 0.72, 0.55, 0.72, 0.72, 0.74, 0.04, 0.90, 0.65})},
	{checkGauge, 8, func(f *facts) bool { return len(f.readings) > 0 }, rest(
		// differs by more than both gauges' errors; agrees
		perCause{0.04, 0.04, 0.04, 0.04, 0.04, 0.04, 0.04, 0.04, 0.04, 0.04, 0.85},
		perCause{0.96, 0.96, 0.96, 0.96, 0.96, 0.96, 0.96, 0.96, 0.96, 0.96, 0.15})},
	{checkRegulator, 10, func(f *facts) bool { return f.found.prv == untold && !f.found.prvProved }, rest(
		// found; none to be found
		perCause{0.85, 0.97, 0.97, 0.97, 0.97, 0.97, 0.97, 0.05, 0.92, 0.70, 0.85},
		perCause{0.15, 0.03, 0.03, 0.03, 0.03, 0.03, 0.03, 0.95, 0.08, 0.30, 0.15})},
	{checkTank, 10, func(f *facts) bool { return f.now.tank == untold }, rest(
		// works; missing or failed
		perCause{0.55, 0.55, 0.55, 0.52, 0.52, 0.55, 0.55, 0.40, 0.06, 0.50, 0.55},
		perCause{0.45, 0.45, 0.45, 0.48, 0.48, 0.45, 0.45, 0.60, 0.94, 0.50, 0.45})},
	{checkScrew, 10, func(f *facts) bool {
		return f.found.regulated() && !f.unsound() && !f.visit.valveWork() && f.street.psi != nil && !f.notRegulating()
	}, rest(
		screwFollowed, screwIdle)},
	{checkStrainer, 30, func(f *facts) bool { return f.found.regulated() && !f.visit.did(RebuiltPRV, ReplacedPRV) }, rest(
		// clogged; rubber in it; the rest clean
		perCause{0.08, 0.08, 0.10, 0.12, 0.15, 0.80, 0.12, 0.00, 0.08, 0.10, 0.08},
		perCause{0.03, 0.03, 0.03, 0.08, 0.08, 0.06, 0.75, 0.00, 0.03, 0.03, 0.03})},
}

// told tells whether the visit says anything of a symptom, there or not.
func (v *Visit) told(name SymptomName) bool {
	for _, s := range v.Symptoms {
		if s.Symptom == name {
			return true
		}
	}
	return false
}

func (f *facts) anyReading(why reasonSet) bool {
	for i := range f.readings {
		if f.readings[i].why&why != 0 {
			return true
		}
	}
	return false
}

// nextCheck picks the test whose outcome is expected to lower the entropy of
// the causes most for its minutes of work.
func (f *facts) nextCheck(bs *beliefs) *NextCheck {
	if f.mustStop() || f.settledByWork() {
		return nil
	}
	p := &f.causes
	h := 0.0
	for _, x := range p {
		h += entropyTerm(x)
	}
	if h < leastUncertain {
		return nil
	}
	best, code := 0.0, ""
	consider := func(c string, gain, minutes float64) {
		if gain >= leastGain && gain/minutes > best {
			best, code = gain/minutes, c
		}
	}
	for i := range tableChecks {
		if c := &tableChecks[i]; c.applies(f) {
			consider(c.code, gainOf(p, c.outcomes[:]), c.minutes)
		}
	}
	if f.street.psi == nil {
		var bins [nStreet * streetStep / streetBinPSI]perCause
		for i := range bs {
			if total := bs[i].likelihood; total > 0 && p[i] > 1e-4 {
				sum := 0.0
				for _, w := range bs[i].street {
					sum += w
				}
				for s, w := range bs[i].street {
					bins[s*streetStep/streetBinPSI][i] += w / sum
				}
			}
		}
		consider(checkStreet, gainOf(p, bins[:]), streetMinutes)
	}
	if f.house.psi == nil && !f.anyReading(bitGaugeDoubted) {
		var bins [nHouse/houseBin/2 + 1]perCause
		for i := range bs {
			if bs[i].likelihood > 0 && p[i] > 1e-4 {
				sum := 0.0
				for _, w := range bs[i].house {
					sum += w
				}
				for s, w := range bs[i].house {
					bins[s/2][i] += w / sum
				}
			}
		}
		consider(checkHouse, gainOf(p, bins[:]), houseMinutes)
	}
	if code == "" {
		return nil
	}
	w := f.lang.table().checks[code]
	return &NextCheck{Check: w.do, Why: w.why, Finds: finds[code]}
}

// finds are the things that a check looks for and that may be missing.
var finds = map[string]Item{checkRegulator: PRV, checkTank: ExpansionTank}

// mustStop tells whether nobody should be testing anything in the house.
func (f *facts) mustStop() bool { return f.visit.has(GasSmell) || f.overRelief() > 0 }

// heaterMayFire tells whether nothing speaks against letting the heater heat.
func (f *facts) heaterMayFire() bool {
	return !f.visit.has(ReliefDischarge) && !f.visit.has(ReliefBlocked)
}

// settledByWork tells whether the visit's work on the valve left the house in
// the band: what was wrong before needs no more telling apart.
func (f *facts) settledByWork() bool {
	return f.visit.valveWork() && f.house.isLeft && f.band == BandIn
}

func entropyTerm(p float64) float64 {
	if p <= 0 {
		return 0
	}
	return -p * math.Log(p)
}

// gainOf is the mutual information of the causes and a test's outcomes, nats.
func gainOf(p *perCause, outcomes []perCause) float64 {
	gain := 0.0
	for k := range outcomes {
		o := &outcomes[k]
		q := 0.0
		for i := range p {
			q += p[i] * o[i]
		}
		if q <= 0 {
			continue
		}
		for i := range p {
			if w := p[i] * o[i]; w > 1e-9 {
				gain += w * math.Log(o[i]/q)
			}
		}
	}
	return gain
}

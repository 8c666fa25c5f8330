package assess

import (
	"math"
	"sort"
)

// history is what earlier visits measured, newest last.
type history struct {
	street []DatedPSI // main readings
	house  []DatedPSI // fair house readings since the last work on the valve
}

// situation is everything that the engine weighs about the house as found.
type situation struct {
	visit    *Visit
	readings []judged
	found    *record
	past     *history
	level    *Level // the street's level by the neighbours
	house    pressures
	left     pressures
	rates    map[Cause]float64
	today    Date
	// tankTooSmall: smaller than even the size that keeps the house under the
	// relief valve, or flat.
	tankTooSmall bool
}

// soundRegulated is the share of houses in order that have a regulator; the
// others stand on a main that needs none. Judgement.
const soundRegulated = 0.88

// boldness sharpens what the wide tails of the curves and the strays leave a
// little timid; set on simulated houses of several kinds (accuracy_test.go).
const boldness = 1.06

// diagnose applies Bayes' rule: base rates, pressures as a continuous model,
// what was told as tables.
func diagnose(c *situation, band [2]float64, bs *beliefs) perCause {
	var s seen
	like := supposing(band)
	s.remember(c, like.regulated)
	s.look(c.readings)

	there, none := c.presence()
	s.regulated(&bs[cElastomer], like.regulated, &s.faulty, &s.kept, inOrder, there)
	if s.heated {
		s.regulated(&bs[cSound], like.regulated, &s.plain, &s.kept, inOrder, there)
	} else {
		bs[cSound] = bs[cElastomer] // the pressures are those of a sound house
	}
	bs[cSound].scale(soundRegulated)
	s.follow(&bs[cSound], like.openSound, []float64{0}, neverRegulated, (1-soundRegulated)*none)
	s.regulated(&bs[cRestricted], like.regulated, &s.restricted, &s.kept, inOrder, there)
	s.regulated(&bs[cExpansion], like.regulated, &s.expansion, &s.kept, heatsUp, c.closedShare(there))
	s.regulated(&bs[cSetHigh], like.setHigh, &s.faulty, &s.turned, inOrder, there)
	s.regulated(&bs[cSetLow], like.setLow, &s.faulty, &s.turned, inOrder, there)
	s.creeping(&bs[cSeatCreep], like.creep)
	bs[cSeatCreep].scale(there)
	s.follow(&bs[cPassing], like.passing, []float64{0, 2, 5}, onceRegulated, there)
	s.follow(&bs[cNoPRV], like.passing, []float64{0, 1}, neverRegulated, none)
	s.follow(&bs[cStreetLow], like.streetLow, []float64{0, 2}, onceRegulated, 0.6*there+0.4*none)
	s.gaugeAtFault(&bs[cGauge], like.regulated)
	bs[cGauge].scale(0.8*there + 0.2*none)

	told := c.told()
	var p perCause
	for i := range p {
		rate := baseRates[i]
		if r, ok := c.rates[causeNames[i]]; ok && r >= 0 && !math.IsInf(r, 0) {
			rate = r
		}
		p[i] = boldness * (math.Log(max(rate, 1e-6)) + math.Log(max(bs[i].likelihood, 1e-300)) + told[i])
	}
	p.normalise()
	c.guard(&p, band)
	return p
}

// normalise turns logarithms into probabilities.
func (p *perCause) normalise() {
	top := math.Inf(-1)
	for _, x := range p {
		top = math.Max(top, x)
	}
	sum := 0.0
	for i := range p {
		p[i] = math.Exp(p[i] - top)
		sum += p[i]
	}
	for i := range p {
		p[i] /= sum
	}
}

// presence returns how well what was told fits a house with a regulator, and
// one without.
func (c *situation) presence() (there, none float64) {
	switch {
	case c.found.prv == absent:
		return prvToldAbsent, noneToldAbsent
	case c.found.prv == present:
		return prvToldHere, noneToldHere
	}
	return 1 - prvToldHere - prvToldAbsent, 1 - noneToldAbsent - noneToldHere
}

// closedShare is presence for a house that thermal expansion troubles: it is
// closed by a regulator or by a check valve.
func (c *situation) closedShare(there float64) float64 {
	switch {
	case c.found.check == present:
		return math.Max(there, 0.3)
	case c.found.prv == absent:
		return openHouseExpansion
	}
	return there
}

// told weighs symptoms, age, conditions, tank, gauge and work, as sums of
// logarithms.
func (c *situation) told() perCause {
	var out perCause
	times := func(rate *perCause, power float64) {
		for i := range out {
			out[i] += power * math.Log(rate[i])
		}
	}
	for k, name := range symptomOrder {
		here, denied := false, false
		for _, s := range c.visit.Symptoms {
			if s.Symptom == name {
				here, denied = here || !s.Absent, denied || s.Absent
			}
		}
		rates := &symptomRates[k]
		switch {
		case here && denied:
		case here:
			times(rates, 1)
		case denied:
			for i := range out {
				out[i] += math.Log((1-rates[i])*absentRate + rates[i]*absentWrong)
			}
		default:
			for i := range out {
				out[i] += silence * math.Log(1-rates[i])
			}
		}
	}
	if age, ok := ageOf(c.found, c.today); ok {
		k := 0
		for k < len(ageClasses) && age >= ageClasses[k] {
			k++
		}
		times(&ageRates[k], 1)
	}
	switch c.found.prvCondition {
	case Good:
		times(&conditionRates[0], 1)
	case Suspect:
		times(&conditionRates[1], 1)
	case Failed:
		times(&conditionRates[2], 1)
	}
	switch {
	case c.found.tank == absent:
		times(&tankRates[0], 1)
	case c.found.tank == present && (c.found.tankCondition == Failed || c.tankTooSmall):
		times(&tankRates[1], 1)
	case c.found.tank == present:
		times(&tankRates[2], 1)
	}
	for i := range c.visit.Equipment {
		if e := &c.visit.Equipment[i]; e.Item == Gauge && (e.Condition == Suspect || e.Condition == Failed) {
			times(&gaugeRates, 1)
			break
		}
	}
	for i := range workRates {
		if c.visit.did(workRates[i].actions...) {
			times(&workRates[i].rate, 1)
		}
	}
	if c.visit.did(SetPRV) && !c.visit.did(ReplacedPRV, RebuiltPRV, InstalledPRV) && c.left.psi != nil && c.house.psi != nil {
		if math.Abs(*c.left.psi-*c.house.psi) > sameSidePSI {
			times(&screwFollowed, 1)
		} else if to, ok := newSetting(c.visit); ok && math.Abs(to-*c.house.psi) > 2*sameSidePSI {
			times(&screwIdle, 1)
		}
	}
	return out
}

// newSetting returns what the visit set the regulator to.
func newSetting(v *Visit) (float64, bool) {
	for i := len(v.Work) - 1; i >= 0; i-- {
		switch w := &v.Work[i]; w.Action {
		case SetPRV, ReplacedPRV, InstalledPRV, RebuiltPRV:
			if w.ToPSI != nil {
				return *w.ToPSI, true
			}
		}
	}
	return 0, false
}

// ageOf returns the regulator's age in whole years.
func ageOf(r *record, today Date) (float64, bool) {
	if r.prvYear == 0 || r.prv == absent || today.Year < r.prvYear {
		return 0, false
	}
	return float64(today.Year - r.prvYear), true
}

// guard keeps two promises. No unfair reading condemns a valve: without a fair
// house-side reading, no cause that condemns it stands first. And no complaint
// alone does: each such cause needs the measurement that belongs to it.
func (c *situation) guard(p *perCause, band [2]float64) {
	best, sum := 0.0, 0.0
	for i := range p {
		if !condemns(i) {
			best = math.Max(best, p[i])
		}
	}
	for i := range p {
		if condemns(i) && !c.shown(i, band) {
			p[i] = math.Min(p[i], unshown*best)
		}
		sum += p[i]
	}
	for i := range p {
		p[i] /= sum
	}
}

// unshown is how near to the best other cause one may come that condemns the
// valve without having been measured. Judgement.
const unshown = 0.9

// gaugePlay is how far two readings of one gauge scatter, psi. Judgement.
const gaugePlay = 2

// shown tells whether the visit holds the measurement that may condemn the
// valve for a cause: what a plumber would ask to see first (common practice).
func (c *situation) shown(cause int, band [2]float64) bool {
	fair, high, low, peak, off, fired := false, false, false, false, false, false
	static, flowing := math.Inf(-1), math.Inf(1)
	for i := range c.readings {
		j := &c.readings[i]
		off = off || j.Heater == Idle
		fired = fired || j.Heater == Firing
		if j.side != HouseSide || j.left {
			continue
		}
		if j.fair == FairYes {
			fair = true
			static = math.Max(static, j.PSI)
			high = high || j.PSI > band[1]
			low = low || j.PSI < band[0]
		}
		if j.why&bitFlowing != 0 {
			flowing = math.Min(flowing, j.PSI)
		}
		peak = peak || j.why&bitPeak != 0
	}
	worn := c.found.prvCondition == Failed || c.found.prvCondition == Suspect
	opened := c.visit.did(ReplacedPRV, RebuiltPRV)
	if len(c.readings) == 0 {
		return cause == cElastomer && c.visit.has(DarkWater) && c.found.regulated()
	}
	if !fair {
		return false
	}
	switch cause {
	case cPassing:
		return high || opened
	case cSeatCreep:
		return high || peak || opened || c.visit.has(Creep) && off && !fired // the heater is ruled out
	case cRestricted:
		return static-flowing > restrictedPSI-gaugePlay || low || opened || worn
	case cElastomer:
		return c.visit.has(DarkWater) && c.found.regulated() // specks may come from heater, hose or main
	}
	return true
}

// ranked lists the causes, best first; equals keep the table's order.
func (p *perCause) ranked() []Likelihood {
	out := make([]Likelihood, nCauses)
	for i := range p {
		out[i] = Likelihood{causeNames[i], p[i]}
	}
	sort.SliceStable(out, func(a, b int) bool { return out[a].P > out[b].P })
	return out
}

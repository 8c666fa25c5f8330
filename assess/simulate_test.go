package assess

import (
	"math"
	"math/rand/v2"
)

// This file is a small town of simulated houses. Each has pipes, a regulator,
// a heater and perhaps a tank that behave by simple physics of their own, not
// by the engine's curves, and one known fault. A tech visits, reads what he
// happens to read, forgets things, and now and then writes down the wrong
// thing. A world is one town: how its mains, gauges and techs are.

// plumbing is one simulated house.
type plumbing struct {
	fault      Cause
	street     float64 // level of the main at noon
	regulator  bool
	set        float64
	lockUp     float64
	creepHours float64 // time constant of a leaking seat, 0 when tight
	choke      float64 // psi lost per (3 gpm)^2 in strainer or seat
	drop       float64 // fall-off per 3 gpm
	pipeLoss   float64
	heaterGal  float64
	heatRise   float64 // psi over a heating cycle, closed
	tankWorks  bool
	tankThere  bool
	prvYear    int
	frontAhead bool
	gaugeOff   float64
	gaugeSlip  float64 // scatter of a gauge at fault
}

func clampTo(x, lo, hi float64) float64 { return math.Min(math.Max(x, lo), hi) }

// build makes a house of the town with the fault.
func build(w *world, r *rand.Rand, fault Cause) plumbing {
	norm := func(m, sd float64) float64 { return m + sd*r.NormFloat64() }
	p := plumbing{
		fault: fault, street: clampTo(norm(w.streetMean, w.streetSD), 58, 170), regulator: true,
		set: clampTo(norm(w.setMean, w.setSD), 43, 74), lockUp: math.Abs(norm(1.5, 1)),
		drop: w.fallOff * (0.5 + r.Float64()), pipeLoss: 1 + 3*r.Float64(), heaterGal: []float64{40, 50, 75}[r.IntN(3)],
		prvYear: 2026 - int(clampTo(r.ExpFloat64()*8, 0, 26)), frontAhead: r.Float64() < w.frontAhead,
		gaugeOff: norm(0, w.gaugeBias),
	}
	p.tankThere = r.Float64() < 0.5+w.tank/2
	p.tankWorks = p.tankThere && r.Float64() < 0.95
	p.heatRise = 2 + 4*r.Float64()
	switch {
	case p.tankWorks:
	case fault == CauseSound || yes(r, 0.5):
		p.heatRise = 3 + 7*r.Float64() // the pipes give, a fill valve seeps, or the main takes it back
	default:
		p.heatRise = 10 + 45*r.Float64() // a second fault beside the first
	}
	worn := func() { p.prvYear = 2026 - int(clampTo(norm(14, 5), 3, 30)) }
	strong := func(above float64) { p.street = math.Max(p.street, above+r.Float64()*25) }
	if p.street < p.set+12 {
		p.street = p.set + 12 + 20*r.Float64()
	}
	switch fault {
	case CauseSound:
		if r.Float64() < 0.08 { // no regulator, and none needed
			p.regulator, p.street = false, 48+28*r.Float64()
		}
	case CauseSetHigh:
		p.set = 84 + r.ExpFloat64()*9
		p.set = math.Min(p.set, 118)
		strong(p.set + 14)
	case CauseSetLow:
		p.set = 22 + 14*r.Float64()
	case CausePassing:
		strong(90)
		worn()
	case CauseSeatCreep:
		strong(88)
		strong(p.set + 28)
		p.creepHours = 0.4 + r.ExpFloat64()*2
		worn()
	case CauseRestricted:
		p.choke = 26 + 30*r.Float64()
		worn()
	case CauseElastomer:
		worn()
	case CauseNoPRV:
		p.regulator = false
		strong(86)
	case CauseExpansion:
		p.tankThere = r.Float64() < 0.4
		p.tankWorks = false
		p.heatRise = math.Max(18+35*r.Float64()+8*r.NormFloat64(), 86-p.set)
	case CauseStreetLow:
		p.street = 24 + 14*r.Float64()
		p.regulator = r.Float64() < 0.6
	case CauseGauge:
		if r.Float64() < 0.7 {
			p.gaugeOff = (w.leastShift + 22*r.Float64()) * float64(1-2*r.IntN(2))
			p.gaugeOff = math.Max(p.gaugeOff, -38)
		} else {
			p.gaugeSlip = 14 + 10*r.Float64()
		}
	}
	return p
}

// main is the street's pressure at an hour of the day: lowest in the evening,
// highest before dawn.
func (p *plumbing) main(w *world, hour float64) float64 {
	return p.street + w.daySwing*math.Cos((hour-3)/12*math.Pi) + 0
}

// static is the house's pressure some minutes after water last ran.
func (p *plumbing) static(w *world, hour, minutes float64) float64 {
	s := p.main(w, hour)
	if !p.regulator {
		return s
	}
	if p.fault == CausePassing {
		return s - w.passGap
	}
	held := math.Min(p.set+p.lockUp, s)
	if p.creepHours > 0 {
		return s - (s-held)*math.Exp(-minutes/60/p.creepHours)
	}
	return held
}

// flowing is the pressure with about 3 gpm times q running.
func (p *plumbing) flowing(w *world, hour, q float64) float64 {
	s := p.main(w, hour) - p.pipeLoss*q*q
	out := s
	if p.regulator && p.fault != CausePassing {
		out = math.Min(p.set-math.Min(p.drop*q, 17), s-2) // sized for at most 15 to 20 psi
	} else {
		out -= p.drop * 0.6 * q
	}
	return math.Max(out-p.choke*q*q, 0)
}

// firing is the house's pressure late in a heating cycle.
func (p *plumbing) firing(w *world, hour, minutes float64, r *rand.Rand) float64 {
	h := p.static(w, hour, minutes)
	if !p.regulator || p.fault == CausePassing {
		return h + 1
	}
	return math.Min(h+p.heatRise*(0.75+0.25*r.Float64()), 152)
}

// scene is a visit with its truth.
type scene struct {
	in     Input
	truth  Cause
	enough bool // an expert could tell
	fair   bool // it holds a fair house-side reading
}

func yes(r *rand.Rand, p float64) bool { return r.Float64() < p }

func ptr[T any](x T) *T { return &x }

var housePoints = []TestPoint{RearBibb, RearBibb, RearBibb, SideBibb, Laundry, Laundry, Kitchen, Bath, AfterPRV, HeaterDrain}

// symptomsOf says which symptoms a fault really shows, with how often.
var symptomsOf = map[Cause]map[SymptomName]float64{
	CauseSetHigh:    {Leak: 0.4, Hammer: 0.35, Noise: 0.25},
	CauseSetLow:     {LowFlow: 0.8},
	CausePassing:    {Leak: 0.45, Hammer: 0.35, Noise: 0.3, ReliefDischarge: 0.15, Swings: 0.25},
	CauseSeatCreep:  {Creep: 0.85, Leak: 0.3, ReliefDischarge: 0.2, Swings: 0.3},
	CauseRestricted: {LowFlow: 0.95, Noise: 0.2},
	CauseElastomer:  {DarkWater: 1, LowFlow: 0.1},
	CauseNoPRV:      {Leak: 0.45, Hammer: 0.4, Noise: 0.2},
	CauseExpansion:  {ReliefDischarge: 0.6, Leak: 0.2, Swings: 0.3},
	CauseStreetLow:  {LowFlow: 0.9, NoWater: 0.05},
	CauseGauge:      {},
	CauseSound:      {},
}

// heardFalsely is how often a symptom is told of with another reason than the
// fault, against a drip: black specks and a climbing gauge are rarer.
var heardFalsely = map[SymptomName]float64{
	DarkWater: 0.2, RustyWater: 1, Leak: 1.6, ReliefDischarge: 0.4, Hammer: 1.2, Noise: 1.2, LowFlow: 1.2, Swings: 0.8, Creep: 0.25,
}

var anySymptom = []SymptomName{DarkWater, RustyWater, Leak, ReliefDischarge, Hammer, Noise, LowFlow, Swings, Creep}

// visitHouse lets a tech of the town visit a house.
func visitHouse(w *world, r *rand.Rand) scene {
	fault := pick(w, r)
	p := build(w, r, fault)
	sc := scene{truth: fault}
	today := Date{2026, 6, 1 + r.IntN(28)}
	sc.in.Today = today

	// Earlier visits found the house before the fault, or as it has been for long.
	if w.earlier > 0 {
		old := p
		if yes(r, 0.6) && fault != CauseNoPRV && fault != CauseStreetLow {
			old = build(w, r, CauseSound)
			old.street, old.regulator, old.prvYear, old.frontAhead = p.street, true, p.prvYear, p.frontAhead
			old.set = math.Min(old.set, p.street-8)
			if fault != CauseSetHigh && fault != CauseSetLow {
				old.set = p.set
			}
		}
		if fault == CauseGauge {
			old.gaugeOff, old.gaugeSlip = r.NormFloat64()*w.gaugeBias, 0
		}
		n := min(int(r.ExpFloat64()*w.earlier), 6)
		for i := n; i > 0; i-- {
			v := Visit{Date: today.AddDays(-i*250 - r.IntN(100))}
			old.read(w, r, &v, 9+8*r.Float64(), false)
			sc.in.Visits = append(sc.in.Visits, v)
		}
	}
	v := Visit{Date: today}
	p.read(w, r, &v, 9+8*r.Float64(), true)
	p.tell(w, r, &v)
	sc.enough = enough(&p, &v)
	if yes(r, w.work) {
		p.fix(w, r, &v)
	}
	if yes(r, w.wrong) {
		misreport(r, &v)
	}
	sc.in.Visits = append(sc.in.Visits, v)
	return sc
}

func pick(w *world, r *rand.Rand) Cause {
	total := 0.0
	for _, c := range causeNames {
		total += w.rates[c]
	}
	x := r.Float64() * total
	for _, c := range causeNames {
		if x -= w.rates[c]; x <= 0 {
			return c
		}
	}
	return CauseSound
}

// read puts the gauge on the house.
func (p *plumbing) read(w *world, r *rand.Rand, v *Visit, hour float64, full bool) {
	gauge := func(psi float64) float64 {
		x := psi + p.gaugeOff + w.gaugeSD*r.NormFloat64() + p.gaugeSlip*r.NormFloat64()
		return math.Max(math.Round(x), 0)
	}
	heater := HeaterState("")
	if yes(r, w.sayIdle) {
		heater = Idle
	}
	point := housePoints[r.IntN(len(housePoints))]
	rest := 2 + r.ExpFloat64()*w.rest
	if yes(r, 0.9) {
		psi := p.static(w, hour, rest)
		if heater == "" && yes(r, 0.15) || yes(r, w.wrong) {
			psi = p.firing(w, hour, rest, r) // nobody looked at the heater
		}
		v.Add(Reading{PSI: gauge(psi), Point: point, Heater: heater, Flow: []Flow{"", Static}[r.IntN(2)]})
	}
	if yes(r, w.twoHouse) {
		v.Add(Reading{PSI: gauge(p.static(w, hour, rest*2)), Point: housePoints[r.IntN(len(housePoints)-1)], Heater: heater})
	}
	if yes(r, w.readStreet) {
		v.Add(Reading{PSI: gauge(p.main(w, hour)), Point: Street, Heater: heater})
	}
	if yes(r, w.readFront) {
		psi := p.static(w, hour, rest)
		if p.frontAhead {
			psi = p.main(w, hour)
		}
		v.Add(Reading{PSI: gauge(psi), Point: []TestPoint{FrontBibb, FrontBibb, FrontBibb, Bibb, Irrigation}[r.IntN(5)], Heater: heater})
	}
	if !full {
		return
	}
	suspicious := p.fault == CauseRestricted || p.fault == CauseSetLow || p.fault == CauseStreetLow
	if yes(r, w.readFlow) || suspicious && yes(r, 0.5) {
		v.Add(Reading{PSI: gauge(p.flowing(w, hour, 0.7+0.7*r.Float64())), Point: point, Heater: heater, Flow: Flowing})
	}
	if yes(r, w.readFiring) || p.fault == CauseExpansion && yes(r, 0.5) {
		v.Add(Reading{PSI: gauge(p.firing(w, hour, rest, r)), Point: housePoints[r.IntN(len(housePoints))], Heater: Firing})
	}
	if yes(r, w.readPeak) || (p.fault == CauseSeatCreep || p.fault == CauseExpansion) && yes(r, 0.3) {
		idle := yes(r, 0.5)
		peak := p.static(w, 3, 420)
		h := Idle
		if !idle {
			peak = math.Max(peak, p.firing(w, 6, 60, r))
			h = []HeaterState{"", Firing}[r.IntN(2)]
		}
		v.Add(Reading{PSI: gauge(peak), Point: point, Heater: h, Peak: true})
	}
}

// tell adds what the tech says besides the pressures.
func (p *plumbing) tell(w *world, r *rand.Rand, v *Visit) {
	shown := symptomsOf[p.fault]
	for _, s := range anySymptom {
		switch here := yes(r, shown[s]); {
		case here && yes(r, w.hit), !here && yes(r, w.falseAlarm*heardFalsely[s]):
			v.Add(Symptom{Symptom: s})
		case !here && yes(r, w.deny/3):
			v.Add(Symptom{Symptom: s, Absent: true})
		}
	}
	switch {
	case !p.regulator && yes(r, 0.75):
		v.Add(Equipment{Item: PRV, Present: ptr(false)})
	case p.regulator && yes(r, w.tellPRV):
		e := Equipment{Item: PRV}
		if yes(r, w.tellAge) {
			e.InstalledYear = ptr(p.prvYear)
		} else {
			e.AgeUnknown = true
		}
		if yes(r, 0.2) {
			e.SettingPSI = ptr(math.Round(p.set))
		}
		if (p.fault == CausePassing || p.fault == CauseSeatCreep || p.fault == CauseElastomer || p.fault == CauseRestricted) && yes(r, 0.3) {
			e.Condition = []Condition{Suspect, Failed}[r.IntN(2)]
		}
		v.Add(e)
	}
	if yes(r, w.tellTank) {
		switch {
		case !p.tankThere:
			v.Add(Equipment{Item: ExpansionTank, Present: ptr(false)})
		case !p.tankWorks && yes(r, 0.7):
			v.Add(Equipment{Item: ExpansionTank, Condition: Failed})
		default:
			v.Add(Equipment{Item: ExpansionTank, SizeGal: ptr(4.4)})
		}
	}
	if yes(r, 0.4) {
		v.Add(Equipment{Item: Heater, SizeGal: &p.heaterGal, InstalledYear: ptr(2026 - r.IntN(9)), Fuel: Gas})
	}
	if p.fault == CauseGauge && yes(r, 0.6) || yes(r, 0.02) {
		v.Add(Equipment{Item: Gauge, Condition: Suspect})
	}
}

// fix does what a tech would do about the fault, and reads again.
func (p *plumbing) fix(w *world, r *rand.Rand, v *Visit) {
	for i := range v.Readings {
		v.Readings[i].When = Before
	}
	to := math.Round(50 + 15*r.Float64())
	after := func() {
		v.Add(Reading{PSI: math.Round(to + 2*r.NormFloat64()), Point: RearBibb, Heater: Idle, When: After})
	}
	switch p.fault {
	case CauseSetHigh, CauseSetLow:
		v.Add(Work{Action: SetPRV, ToPSI: &to})
		after()
	case CausePassing, CauseSeatCreep, CauseElastomer:
		v.Add(Work{Action: []Action{ReplacedPRV, ReplacedPRV, RebuiltPRV}[r.IntN(3)], ToPSI: &to})
		after()
	case CauseRestricted:
		v.Add(Work{Action: []Action{ReplacedPRV, RebuiltPRV}[r.IntN(2)]})
		after()
	case CauseNoPRV:
		v.Add(Work{Action: InstalledPRV, ToPSI: &to})
		after()
	case CauseExpansion:
		if p.tankThere {
			v.Add(Work{Action: ReplacedTank})
		} else {
			v.Add(Work{Action: InstalledTank})
		}
	default:
		if yes(r, 0.3) {
			v.Add(Work{Action: FlushedHeater})
		}
	}
}

// misreport spoils one fact of the visit.
func misreport(r *rand.Rand, v *Visit) {
	switch k := r.IntN(4); {
	case k == 0 && len(v.Readings) > 0:
		i := r.IntN(len(v.Readings))
		v.Readings[i].PSI = math.Max(0, v.Readings[i].PSI+float64(r.IntN(41)-20))
	case k == 1 && len(v.Readings) > 0:
		i := r.IntN(len(v.Readings))
		if v.Readings[i].Heater == Firing {
			v.Readings[i].Heater = Idle
		} else {
			v.Readings[i].Heater = Firing
		}
	case k == 2 && len(v.Readings) > 0:
		i := r.IntN(len(v.Readings))
		v.Readings[i].Point = []TestPoint{RearBibb, FrontBibb, "", Street}[r.IntN(4)]
	default:
		v.Add(Symptom{Symptom: anySymptom[r.IntN(len(anySymptom))]})
	}
}

// enough tells whether an expert with this visit in hand could name the fault:
// by what the trade calls the proof of each.
func enough(p *plumbing, v *Visit) bool {
	var house, street, flow, fire, idlePeak, heatPeak []float64
	for _, x := range v.Readings {
		houseSide := x.Point != Street && x.Point != FrontBibb && x.Point != Bibb && x.Point != Irrigation
		switch {
		case x.Point == Street && x.Flow != Flowing:
			street = append(street, x.PSI)
		case !houseSide:
		case x.Flow == Flowing:
			flow = append(flow, x.PSI)
		case x.Peak && x.Heater == Idle:
			idlePeak = append(idlePeak, x.PSI)
		case x.Peak:
			heatPeak = append(heatPeak, x.PSI)
		case x.Heater == Firing:
			fire = append(fire, x.PSI)
		case x.Point != HeaterDrain || x.Heater == Idle:
			house = append(house, x.PSI)
		}
	}
	if len(house) == 0 {
		return false
	}
	h := house[0]
	toldPRV, noPRV, gauge := false, false, false
	for _, e := range v.Equipment {
		toldPRV = toldPRV || e.Item == PRV && !e.Absent()
		noPRV = noPRV || e.Item == PRV && e.Absent()
		gauge = gauge || e.Item == Gauge
	}
	switch p.fault {
	case CauseSound:
		return h >= 43 && h <= 77 && (len(flow) > 0 || len(street) > 0)
	case CauseSetHigh:
		return h > 82 && len(street) > 0 && street[0]-h >= 12 && (len(flow) > 0 || len(idlePeak) > 0)
	case CauseSetLow:
		return h < 38 && len(street) > 0 && street[0] > 55
	case CausePassing:
		return h > 82 && len(street) > 0 && math.Abs(street[0]-h) <= 5 && toldPRV
	case CauseSeatCreep:
		return v.has(Creep) || len(idlePeak) > 0 && idlePeak[0]-h >= 15
	case CauseRestricted:
		return len(flow) > 0 && h-flow[0] > 22
	case CauseElastomer:
		return v.has(DarkWater) && h >= 43 && h <= 77
	case CauseNoPRV:
		return noPRV && h > 82
	case CauseExpansion:
		return len(fire) > 0 && fire[0] > 82 && h <= 80 || len(heatPeak) > 0 && heatPeak[0] > 85 && h <= 80
	case CauseStreetLow:
		return h < 40 && len(street) > 0 && street[0] < 42
	case CauseGauge:
		return gauge || len(house) > 1 && math.Abs(house[0]-house[1]) > 15 || len(street) > 0 && h-street[0] > 12
	}
	return false
}

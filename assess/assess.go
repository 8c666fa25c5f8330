package assess

import "math"

// DefaultShop is the shop that configures nothing: 40 to 80 psi, a grade B
// gauge of 0-160 psi, a service life of 10 to 15 years (common practice).
func DefaultShop() Shop {
	return Shop{
		BandPSI:      [2]float64{BandLowPSI, BandHighPSI},
		Gauge:        GaugeSpec{Grade: DefaultGaugeGrade, SpanPSI: DefaultGaugeSpanPSI},
		ServiceYears: [2]float64{ServiceNearEndYears, ServicePastYears},
	}
}

// withDefaults fills what the configuration leaves empty or cannot mean.
func (s Shop) withDefaults() Shop {
	d := DefaultShop()
	if !(s.BandPSI[0] > 0 && s.BandPSI[0] < s.BandPSI[1] && s.BandPSI[1] <= HeaterReliefPSI) {
		s.BandPSI = d.BandPSI
	}
	if s.Gauge.Grade == "" {
		s.Gauge.Grade = d.Gauge.Grade
	}
	if s.Gauge.SpanPSI == 0 {
		s.Gauge.SpanPSI = d.Gauge.SpanPSI
	}
	if !(s.ServiceYears[0] > 0 && s.ServiceYears[0] <= s.ServiceYears[1]) {
		s.ServiceYears = d.ServiceYears
	}
	return s
}

// facts is everything known when the findings are written: the visit, what it
// was judged to show, and what the house's record adds.
type facts struct {
	visit      *Visit
	readings   []judged
	found, now record // the equipment as the visit found and left it
	house      pressures
	street     pressures
	houseFound pressures // of the readings before the visit's work
	band       Band
	drift      Drift
	jump       Jump // of a house that has jumped
	valve      ValveLife
	expansion  Expansion
	causes     perCause
	level      *Level
	shop       Shop
	today      Date
	lang       Lang
}

// Assess judges the last visit of in, in the light of those before it. It
// needs no visit at all: then it says what can be said without one.
func Assess(in Input) Assessment {
	f := facts{shop: in.Shop.withDefaults(), today: in.Today, lang: in.Lang, visit: &Visit{}}
	if f.today.IsZero() && len(in.Visits) > 0 {
		f.today = in.Visits[len(in.Visits)-1].Date
	}
	past := history{street: make([]DatedPSI, 0, len(in.Visits)), house: make([]DatedPSI, 0, len(in.Visits))}
	var rec record
	var buf [8]judged
	for i := range in.Visits {
		v := &in.Visits[i]
		found := rec.found(v)
		now := found.left(v)
		now.settled = rec.settled
		if v.did(InstalledPRV) {
			now.settled = [3]Side{}
		}
		js := judge(buf[:0], v, &found, &now, &f.shop)
		house, street := sidePressure(js, HouseSide, nil), sidePressure(js, StreetSide, nil)
		prove(&found, &now, js)
		if i == len(in.Visits)-1 {
			f.visit, f.readings, f.found, f.now, f.house, f.street = v, js, found, now, house, street
		} else {
			past.add(v, js, house, street)
		}
		rec = now
	}
	before, after := false, true
	f.houseFound = sidePressure(f.readings, HouseSide, &before)
	f.band = bandOf(f.house.psi, f.shop.BandPSI)
	f.valve = f.valveLife(in.Lives)
	f.expansion = expansionOf(&f.now, f.house.psi, f.shop)
	if l, ok := StreetLevel(in.Neighbours, f.today); ok {
		f.level = &l
	}

	var bs beliefs
	c := situation{
		visit: f.visit, readings: f.readings, found: &f.found, past: &past, level: f.level,
		house: f.houseFound, left: sidePressure(f.readings, HouseSide, &after),
		rates: f.shop.BaseRates, today: f.today, tankTooSmall: tooSmall(&f.found, f.houseFound.psi, f.shop),
	}
	f.causes = diagnose(&c, f.shop.BandPSI, &bs)
	past.add(f.visit, f.readings, f.house, f.street)
	f.drift, f.jump = driftAndJump(past.house, f.shop.BandPSI, f.today)

	a := Assessment{
		Readings: make([]JudgedReading, 0, len(f.readings)), HousePSI: f.house.psi, StreetPSI: f.street.psi,
		Band: f.band, Causes: f.causes.ranked(), Drift: f.drift, Valve: f.valve, Expansion: f.expansion,
	}
	for i := range f.readings {
		j := &f.readings[i]
		a.Readings = append(a.Readings, JudgedReading{j.PSI, j.Point, j.side, j.fair, j.why.list(), j.plusMinus})
	}
	a.Findings = f.findings()
	a.NextCheck = f.nextCheck(&bs)
	a.Cautions = f.cautions(a.Findings)
	a.FollowUps = f.followUps(a.Findings)
	return a
}

// add keeps what a visit measured for the visits after it: one fair house
// reading a visit since the last work on the valve, and the main readings.
func (h *history) add(v *Visit, js []judged, house, street pressures) {
	if street.psi != nil {
		h.street = append(h.street, DatedPSI{v.Date, *street.psi})
	}
	after := true
	if !v.valveWork() {
		if house.psi != nil {
			h.house = append(h.house, DatedPSI{v.Date, *house.psi})
		}
		return
	}
	h.house = h.house[:0]
	if p := sidePressure(js, HouseSide, &after); p.psi != nil {
		h.house = append(h.house, DatedPSI{v.Date, *p.psi})
	}
}

// prove notes a regulator that the readings prove: a fair house reading 15 psi
// or more below a fair main reading, both as found or both as left.
func prove(found, now *record, js []judged) {
	for i := range js {
		for k := range js {
			h, s := &js[i], &js[k]
			if h.side != HouseSide || s.side != StreetSide || h.fair != FairYes || s.fair != FairYes || h.left != s.left {
				continue
			}
			if s.PSI-h.PSI >= belowMainPSI {
				now.prvProved = true
				if !h.left {
					found.prvProved = true
				}
			}
		}
	}
}

// valveLife places the regulator's age as it is now.
func (f *facts) valveLife(lives []Life) ValveLife {
	age, ok := ageOf(&f.now, f.today)
	if !ok {
		return LifeOf(nil, f.shop.ServiceYears, lives)
	}
	return LifeOf(&age, f.shop.ServiceYears, lives)
}

// has tells whether the visit tells of a symptom that is there.
func (v *Visit) has(name SymptomName) bool {
	for _, s := range v.Symptoms {
		if s.Symptom == name && !s.Absent {
			return true
		}
	}
	return false
}

// round keeps as many digits of a pressure as the gauge deserves: whole psi,
// tenths only when the gauge is good to less than half a psi.
func round(psi, plusMinus float64) float64 {
	if plusMinus > 0 && plusMinus < 0.5 {
		return math.Round(psi*10) / 10
	}
	return math.Round(psi)
}

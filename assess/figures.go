package assess

import (
	"math"
)

// Figure is a number worked out for a house that explains a finding or answers
// a question about it. Text is one plain sentence in Input.Lang; Basis the
// equation or table behind it.
type Figure struct {
	Code  string `json:"code"`
	Text  string `json:"text"`
	Basis string `json:"basis"`
}

// What figures are worked out for where nobody told better; common practice.
const (
	floorFeet       = 10.0 // from one floor to the next
	figureFloors    = 2.0
	comfortPSI      = 60.0 // the most that DOE's and EPA's guides advise
	figurePipeFeet  = 50.0
	figureCloseIn   = 1.0 // seconds, a tap closed by a calm hand
	figureNominalIn = 0.75
	weakFlowPSI     = 30.0 // a flowing pressure below this is worth comparing with what outlets need
	savingWorthPSI  = 5.0  // below this above comfort a saving is not worth a word
)

// Figures works out what explains the assessment a of in: what the tank and the
// heater do to the pressure, what a lower pressure saves, what is left on the
// top floor, what a hammering valve adds, what the regulator is asked to do,
// where the street stands, and what the shop's own record says of the valve's
// age. Only figures whose facts are known come; the list is never nil.
func Figures(in Input, a Assessment) []Figure {
	w := in.Lang.figureWords()
	out := []Figure{}
	say := func(code string, values ...string) {
		t := w[code]
		code, _, _ = cutCode(code)
		out = append(out, Figure{code, fill(t.text, values), fill(t.basis, values)})
	}
	shop := in.Shop.withDefaults()
	var rec record
	var last *Visit
	for i := range in.Visits {
		last = &in.Visits[i]
		found := rec.found(last)
		rec = found.left(last)
	}
	whole := func(x float64) string { return number(math.Round(x)) }

	if a.HousePSI != nil {
		house := *a.HousePSI
		top := shop.tankTop()
		values := []string{"house", whole(house), "top", number(top), "comfort", number(comfortPSI)}
		if grade, limit, ok := finerGauge(shop.Gauge, house, shop.BandPSI); ok {
			finer := GaugeSpec{grade, shop.Gauge.SpanPSI}
			say("gauge", append(values, "limit", number(limit), "pm", number(math.Round(10*shop.Gauge.PlusMinus(house))/10),
				"grade", grade, "span", number(shop.Gauge.SpanPSI), "finer", number(math.Round(10*finer.PlusMinus(house))/10))...)
		}
		heating(&rec, a, house, func(code string, more ...string) { say(code, append(more, values...)...) })
		if low, high, ok := Saving(house, comfortPSI); ok && house >= comfortPSI+savingWorthPSI {
			say("saving", append(values, "low", whole(low), "high", whole(high))...)
		}
		if left := OutletPSI(house, floorFeet*figureFloors); left < shop.BandPSI[0] {
			say("top_floor", append(values, "feet", number(floorFeet*figureFloors), "less", whole(-HeadPSI(floorFeet*figureFloors)), "left", whole(left))...)
		}
		if ratio, two := Reduction(deref(a.StreetPSI), house, 0); a.StreetPSI != nil && rec.regulated() && ratio > IdealReductionRatio {
			code := "reduction"
			if two {
				code = "reduction.two"
			}
			say(code, append(values, "street", whole(*a.StreetPSI), "ratio", number(math.Round(ratio*10)/10))...)
		}
		if house > shop.BandPSI[1] {
			_, toilet, _ := WorkingPressure("toilet fill valve")
			_, faucet, _ := WorkingPressure("faucet")
			say("ratings", append(values, "fill", number(toilet), "faucet", number(faucet))...)
		}
	}
	if flowing, ok := lowestFlowing(last, a); ok && (a.Band == BandLow || flowing < weakFlowPSI) {
		shower, _ := NeedOf("shower balanced-pressure/thermostatic")
		plain, _ := NeedOf("shower")
		say("need", "flowing", whole(flowing), "plain", number(plain.PSI), "mixing", number(shower.PSI), "gpm", number(shower.GPM))
	}
	if last != nil && last.has(Hammer) {
		copper, _ := PipeOf(Copper, figureNominalIn)
		pex, _ := PipeOf(PEX, figureNominalIn)
		tens := func(x float64) string { return number(math.Round(x/10) * 10) }
		say("surge", "copper", tens(SurgePSI(copper, UsualFeetPerSecond)), "pex", tens(SurgePSI(pex, UsualFeetPerSecond)),
			"slow", whole(ClosingSurgePSI(copper, UsualFeetPerSecond, figurePipeFeet, figureCloseIn)), "feet", number(figurePipeFeet))
	}
	if rec.setpointF != nil && *rec.setpointF > AssumedSetpointF {
		if p := ScaldPhrase(*rec.setpointF, in.Lang); p != "" {
			say("scald", "phrase", p)
		}
	}
	if l, ok := StreetLevel(in.Neighbours, in.Today); ok {
		code := "street"
		if l.Shifted {
			code = "street.shifted"
		}
		say(code, "level", whole(l.PSI), "low", whole(l.Low), "high", whole(l.High), "n", number(float64(l.N)), "from", whole(l.FromPSI))
	}
	if a.Valve.AgeYears != nil {
		if c, err := FitLives(in.Lives); err == nil {
			half, _ := c.YearsTo(pastFailed)
			p := c.FailsWithin(*a.Valve.AgeYears, 1)
			say("life", "half", whole(half.Value), "from", whole(half.Low), "to", whole(half.High), "age", whole(*a.Valve.AgeYears),
				"p", percent(p.Value), "low", percent(p.Low), "high", percent(p.High), "failed", number(float64(c.Failures)))
		}
	}
	return out
}

// finerGauge names the first finer grade, on the same scale, with which a
// reading would lie on one side of a limit that the shop's gauge reaches across.
func finerGauge(g GaugeSpec, psi float64, band [2]float64) (grade string, limit float64, ok bool) {
	for _, limit := range band {
		if g.AgainstLimit(psi, limit) != Straddles || psi == limit {
			continue
		}
		for _, grade := range []string{"A", "1A", "2A", "3A", "4A"} {
			if (GaugeSpec{grade, g.SpanPSI}).AgainstLimit(psi, limit) != Straddles {
				return grade, limit, true
			}
		}
	}
	return "", 0, false
}

// lowestFlowing returns the lowest pressure read on the house side while water
// ran.
func lowestFlowing(v *Visit, a Assessment) (float64, bool) {
	low, ok := 0.0, false
	if v == nil || len(a.Readings) != len(v.Readings) {
		return 0, false
	}
	for i, r := range v.Readings {
		if r.Flow == Flowing && a.Readings[i].Side == HouseSide && (!ok || r.PSI < low) {
			low, ok = r.PSI, true
		}
	}
	return low, ok
}

// LifeSummary says what the shop's own record tells of its regulators' lives,
// for a monthly summary: how many, by which age a tenth and half of them have
// failed, and whether replacing them early makes sense. With too few failures
// it says how many are wanted.
func LifeSummary(lives []Life, lang Lang) []Figure {
	w := lang.figureWords()
	say := func(code string, values ...string) Figure {
		t := w[code]
		code, _, _ = cutCode(code)
		return Figure{code, fill(t.text, values), fill(t.basis, values)}
	}
	c, err := FitLives(lives)
	counts := []string{"n", number(float64(c.N)), "failed", number(float64(c.Failures)), "least", number(leastFailures)}
	if err != nil {
		return []Figure{say("curve.none", counts...)}
	}
	years := func(b Between) []string {
		return []string{"value", number(math.Round(b.Value*10) / 10), "low", number(math.Round(b.Low*10) / 10), "high", number(math.Round(b.High*10) / 10)}
	}
	tenth, _ := c.YearsTo(0.1)
	half, _ := c.YearsTo(pastFailed)
	quarter, _ := c.YearsTo(nearEndFailed)
	aging := c.Aging()
	verdict := "aging.unsure"
	switch {
	case aging.Low > 1:
		verdict = "aging.wear"
	case aging.High < 1:
		verdict = "aging.young"
	}
	return []Figure{
		say("curve", append(counts, years(half)...)...),
		say("tenth", append(counts, years(tenth)...)...),
		say(verdict, append(counts, years(quarter)...)...),
	}
}

// heating says what heating does to a closed house, with its tank or with none.
func heating(rec *record, a Assessment, house float64, say func(code string, values ...string)) {
	if a.Expansion.Closed != ClosedYes || rec.fuel == Tankless || rec.heaterGal == nil || *rec.heaterGal <= 0 {
		return
	}
	hot := setpointOf(rec)
	if hot <= AssumedInletF {
		return
	}
	values := []string{"heater", number(*rec.heaterGal), "inlet", number(AssumedInletF), "hot", number(hot)}
	switch a.Expansion.Tank {
	case TankMissing, TankFailed:
		rise := a.Expansion.RisePSIPerF
		if rise == nil || *rise < 1 || house >= HeaterReliefPSI {
			return
		}
		say("heating.no_tank", append(values, "rise", number(math.Round(*rise)), "degrees", number(math.Max(1, math.Round((HeaterReliefPSI-house) / *rise))))...)
	case TankOK, TankSmall:
		if rec.tankGal == nil {
			return
		}
		charge := house
		if rec.tankCharge != nil {
			charge = *rec.tankCharge
		}
		values = append(values, "tank", number(*rec.tankGal), "charge", number(math.Round(charge)))
		more := ExpandedGal(*rec.heaterGal, AssumedInletF, hot)
		final, ok := FinalPSI(*rec.tankGal, charge, house, more)
		if !ok || final >= HeaterReliefPSI {
			say("heating.full", values...)
			return
		}
		say("heating", append(values, "final", number(math.Round(final)))...)
	}
}

// cutCode takes a wording's name apart: "heating.full" is a wording of the
// figure "heating".
func cutCode(wording string) (code, variant string, cut bool) {
	for i := range wording {
		if wording[i] == '.' {
			return wording[:i], wording[i+1:], true
		}
	}
	return wording, "", false
}

func deref(p *float64) float64 {
	if p == nil {
		return 0
	}
	return *p
}

// percent writes a probability in percent, with a place below 10.
func percent(p float64) string {
	if p < 0.0995 {
		return number(math.Round(p*1000) / 10)
	}
	return number(math.Round(p * 100))
}

package assess

import (
	"math"
	"sort"
	"strconv"
	"strings"
)

// Thresholds of the findings, psi; the contract's, common practice.
const (
	sameLevelPSI  = 5  // house and main this close read alike
	peakOverPSI   = 15 // an idle peak this far above static is a climb
	fallOffPSI    = 10 // static to flowing: watch from here
	restrictedPSI = 20 // more than this is a restriction
	// heatRisePSI is how far readings must rise with the heater to count.
	// Judgement: three times what two grade B readings usually differ.
	heatRisePSI = 10
	// storeyFeet is one floor up, and usualPSI what a high house is brought down
	// to; common practice.
	storeyFeet = 10
	usualPSI   = 60
)

// rule is one thing that may follow from the facts. It returns the finding's
// urgency, empty when it does not apply, the wording, and the values for it.
type rule struct {
	code string
	when func(f *facts) (u Urgency, wording string, values []string)
}

var urgencyRank = map[Urgency]int{Now: 0, Soon: 1, Watch: 2, Note: 3}

// findings applies every rule; gravest first, within an urgency in the order
// of the table.
func (f *facts) findings() []Finding {
	out := make([]Finding, 0, 6)
	t := f.lang.table()
	for i := range rules {
		r := &rules[i]
		u, wording, values := r.when(f)
		if u == "" {
			continue
		}
		if wording == "" {
			wording = r.code
		}
		s := t.findings[wording]
		out = append(out, Finding{r.code, u, fill(s.text, values), fill(s.basis, values)})
	}
	sort.SliceStable(out, func(a, b int) bool { return urgencyRank[out[a].Urgency] < urgencyRank[out[b].Urgency] })
	return out
}

// fill puts values into a text: {name} stands for the value after name.
func fill(text string, values []string) string {
	open := strings.IndexByte(text, '{')
	if open < 0 {
		return text
	}
	var b strings.Builder
	b.Grow(len(text) + 16)
	for open >= 0 {
		end := strings.IndexByte(text[open:], '}')
		if end < 0 {
			break
		}
		b.WriteString(text[:open])
		name := text[open+1 : open+end]
		for i := 0; i+1 < len(values); i += 2 {
			if values[i] == name {
				b.WriteString(values[i+1])
				break
			}
		}
		text = text[open+end+1:]
		open = strings.IndexByte(text, '{')
	}
	b.WriteString(text)
	return b.String()
}

func number(x float64) string { return strconv.FormatFloat(x, 'f', -1, 64) }

// psi writes a pressure with the digits that its gauge deserves.
func (f *facts) psi(x float64) string { return number(round(x, f.shop.Gauge.PlusMinus(x))) }

// plusMinusText writes a gauge's error: whole psi, or tenths where it is small.
func plusMinusText(e float64) string {
	if e < 0.5 {
		return number(math.Ceil(e*10-limitSlack) / 10)
	}
	return number(math.Round(e))
}

// houseValues are the values that most wordings use.
func (f *facts) houseValues(more ...string) []string {
	v := append(make([]string, 0, 16), more...)
	v = append(v, "bottom", number(f.shop.BandPSI[0]), "top", number(f.shop.BandPSI[1]))
	if f.house.psi != nil {
		v = append(v, "house", f.psi(*f.house.psi), "pm", plusMinusText(f.house.plusMinus))
	}
	if f.street.psi != nil {
		v = append(v, "street", f.psi(*f.street.psi))
	}
	return v
}

// borderline tells which limits the house pressure's error reaches across.
func (f *facts) borderline() (low, high bool) {
	if f.house.psi == nil {
		return false, false
	}
	none := math.Inf(1)
	return nearLimit(*f.house.psi, f.house.plusMinus, [2]float64{f.shop.BandPSI[0], none}),
		nearLimit(*f.house.psi, f.house.plusMinus, [2]float64{math.Inf(-1), f.shop.BandPSI[1]})
}

func softer(u Urgency, soft bool) Urgency {
	if soft {
		return Watch
	}
	return u
}

var rules = [...]rule{
	{"gas_smell", func(f *facts) (Urgency, string, []string) {
		return f.on(f.visit.has(GasSmell), Now)
	}},
	{"relief_blocked", func(f *facts) (Urgency, string, []string) {
		return f.on(f.visit.has(ReliefBlocked), Now)
	}},
	{"over_relief", func(f *facts) (Urgency, string, []string) {
		if psi := f.overRelief(); psi > 0 {
			return Now, "", []string{"psi", f.psi(psi)}
		}
		if f.visit.has(ReliefDischarge) {
			return Now, "over_relief.discharge", nil
		}
		return "", "", nil
	}},
	{"high", func(f *facts) (Urgency, string, []string) {
		if f.band != BandHigh && f.band != OverRelief {
			return "", "", nil
		}
		_, soft := f.borderline()
		w := "high"
		switch {
		case soft:
			w = "high.borderline"
		case f.band == OverRelief:
			w = "high.over_relief"
		case f.now.prv == absent:
			w = "high.no_prv"
		case f.notRegulating():
			w = "high.follows"
		case f.unsound():
			w = "high." + string(f.now.prvCondition)
		case f.street.psi != nil && *f.street.psi-*f.house.psi >= belowMainPSI && f.likely(CauseSetHigh):
			w = "high.set"
		}
		return softer(Soon, soft), w, f.houseValues("saved", f.savedAt60())
	}},
	{"low", func(f *facts) (Urgency, string, []string) {
		if f.band != BandLow {
			return "", "", nil
		}
		soft, _ := f.borderline()
		w := "low"
		switch {
		case soft:
			w = "low.borderline"
		case f.street.psi != nil && *f.street.psi < BandLowPSI:
			w = "low.street"
		case f.unsound():
			w = "low.unsound"
		}
		upstairs := number(math.Round(OutletPSI(*f.house.psi, storeyFeet)))
		return softer(Soon, soft), w, f.houseValues("upstairs", upstairs)
	}},
	{"not_regulating", func(f *facts) (Urgency, string, []string) {
		return f.on(f.notRegulating(), Soon)
	}},
	{"seat_creep", func(f *facts) (Urgency, string, []string) {
		if peak, ok := f.idlePeak(); ok && f.now.prv != absent {
			return Soon, "seat_creep.peak", f.houseValues("peak", f.psi(peak))
		}
		return f.on(f.visit.has(Creep) && f.heaterOff(), Soon)
	}},
	{"restricted", func(f *facts) (Urgency, string, []string) {
		fall, ok := f.fall()
		if !ok || fall <= restrictedPSI || !f.streetSound() {
			return "", "", nil
		}
		w := ""
		if f.now.prv == absent {
			w = "restricted.no_prv"
		}
		return Soon, w, []string{"fall", number(math.Round(fall))}
	}},
	{"expansion_uncontrolled", func(f *facts) (Urgency, string, []string) {
		if rise, ok := f.heatRise(); ok {
			return Soon, "expansion_uncontrolled.rise", f.expansionValues("rise", number(math.Round(rise)))
		}
		if peak, ok := f.heatedPeak(); ok {
			return Soon, "expansion_uncontrolled.peak", f.expansionValues("peak", f.psi(peak))
		}
		if f.expansion.Closed != ClosedYes || f.now.fuel == Tankless {
			return "", "", nil
		}
		switch f.expansion.Tank {
		case TankMissing:
			return Soon, f.sized("expansion_uncontrolled.missing"), f.expansionValues()
		case TankFailed:
			return Soon, f.sized("expansion_uncontrolled.failed"), f.expansionValues()
		}
		return "", "", nil
	}},
	{"peak_high", func(f *facts) (Urgency, string, []string) {
		peak, ok := f.unexplainedPeak()
		if !ok {
			return "", "", nil
		}
		w := ""
		if f.now.prv == absent {
			w = "peak_high.no_prv"
		}
		return softer(Soon, peak < f.shop.BandPSI[1]+peakOverPSI), w, f.houseValues("peak", f.psi(peak))
	}},
	{"set_high", func(f *facts) (Urgency, string, []string) {
		to, ok := f.freshSetting()
		if !ok || to <= f.shop.BandPSI[1] {
			return "", "", nil
		}
		return Soon, f.unsoundSetting("set_high"), f.houseValues("to", f.psi(to))
	}},
	{"set_low", func(f *facts) (Urgency, string, []string) {
		to, ok := f.freshSetting()
		if !ok || to >= f.shop.BandPSI[0] {
			return "", "", nil
		}
		return Soon, f.unsoundSetting("set_low"), f.houseValues("to", f.psi(to))
	}},
	{"street_low", func(f *facts) (Urgency, string, []string) {
		return f.on(f.street.psi != nil && *f.street.psi < BandLowPSI, Soon)
	}},
	{"street_strong", func(f *facts) (Urgency, string, []string) {
		strong := f.street.psi != nil && *f.street.psi > f.shop.BandPSI[1] && !f.now.regulated()
		if strong && f.now.prv == absent {
			return Soon, "street_strong.no_prv", f.houseValues()
		}
		return f.on(strong, Soon)
	}},
	{"dark_water", func(f *facts) (Urgency, string, []string) {
		if !f.visit.has(DarkWater) || !f.found.regulated() {
			return "", "", nil
		}
		if f.valve.Life == LifeNearEnd || f.valve.Life == LifePast {
			return Soon, "dark_water.old", []string{"age", number(*f.valve.AgeYears)}
		}
		return Soon, "", nil
	}},
	{"prv_past_age", func(f *facts) (Urgency, string, []string) {
		if f.valve.Life != LifePast {
			return "", "", nil
		}
		return Soon, "", f.ageValues()
	}},
	{"contradiction", func(f *facts) (Urgency, string, []string) {
		if f.house.apart {
			return Watch, "contradiction.apart", nil
		}
		if what := f.cannotBe(); what != "" {
			return Watch, "contradiction." + what, f.houseValues()
		}
		return "", "", nil
	}},
	{"retake", func(f *facts) (Urgency, string, []string) {
		if len(f.readings) == 0 || f.house.any || f.allMain() {
			return "", "", nil
		}
		w := "retake"
		switch {
		case f.anyReading(bitPlasticDrain):
			w = "retake.plastic_drain"
		case f.anyReading(bitGaugeDoubted):
			w = "retake.gauge"
		case f.anyReading(bitFiring):
			w = "retake.heater"
		case f.anyReading(bitFrontBibb):
			w = "retake.front_bibb"
		}
		return Watch, w, nil
	}},
	{"borderline", func(f *facts) (Urgency, string, []string) {
		low, high := f.borderline()
		switch {
		case high:
			return Watch, "", f.houseValues("limit", number(f.shop.BandPSI[1]))
		case low:
			return Watch, "", f.houseValues("limit", number(f.shop.BandPSI[0]))
		}
		return "", "", nil
	}},
	{"fall_off", func(f *facts) (Urgency, string, []string) {
		fall, ok := f.fall()
		if !ok || fall < fallOffPSI || fall > restrictedPSI {
			return "", "", nil
		}
		return Watch, "", []string{"fall", number(math.Round(fall))}
	}},
	{"tank_charge_off", func(f *facts) (Urgency, string, []string) {
		if f.now.tank != present || f.now.tankCharge == nil || f.house.psi == nil ||
			math.Abs(*f.now.tankCharge-*f.house.psi) <= chargeOffPSI {
			return "", "", nil
		}
		return Watch, "", f.houseValues("charge", f.psi(*f.now.tankCharge))
	}},
	{"tank_small", func(f *facts) (Urgency, string, []string) {
		if f.expansion.Tank != TankSmall {
			return "", "", nil
		}
		w := ""
		if f.lowerFirst() {
			w = "tank_small.lower"
		}
		return Watch, w, f.expansionValues("size", number(*f.now.tankGal))
	}},
	{"prv_near_age", func(f *facts) (Urgency, string, []string) {
		if f.valve.Life != LifeNearEnd {
			return "", "", nil
		}
		return Watch, "", f.ageValues()
	}},
	{"high_pressure_signs", func(f *facts) (Urgency, string, []string) {
		v := f.visit
		switch sign := v.has(Leak) || v.has(Hammer) || v.has(Noise); {
		case !sign:
			return "", "", nil
		case f.band == BandHigh || f.band == OverRelief:
			return Watch, "high_pressure_signs.high", f.houseValues()
		}
		return f.on(f.band == BandNone, Watch)
	}},
	{"hammer", func(f *facts) (Urgency, string, []string) {
		if !f.visit.has(Hammer) {
			return "", "", nil
		}
		copper, _ := PipeOf(Copper, 0.75)
		return Watch, "", []string{"surge", number(math.Round(SurgePSI(copper, UsualFeetPerSecond)/10) * 10)}
	}},
	{"street_shift", func(f *facts) (Urgency, string, []string) {
		moved := f.drift.State == Rising || f.drift.State == Falling || f.drift.State == Jumped
		if f.level == nil || !f.level.Shifted || f.band == BandIn && !moved || f.band == BandNone {
			return "", "", nil
		}
		return Watch, "", []string{"level", f.psi(f.level.PSI), "before", f.psi(f.level.FromPSI), "n", number(float64(f.level.N))}
	}},
	{"drift_up", func(f *facts) (Urgency, string, []string) { return f.trend(Rising) }},
	{"drift_down", func(f *facts) (Urgency, string, []string) { return f.trend(Falling) }},
	{"jump", func(f *facts) (Urgency, string, []string) { return f.trend(Jumped) }},
	{"in_band", func(f *facts) (Urgency, string, []string) {
		if low, high := f.borderline(); f.band == BandIn && (low || high || f.wantsTank() && f.lowerFirst()) {
			return Note, "in_band.plain", f.houseValues() // the setting may have to change
		}
		return f.on(f.band == BandIn, Note)
	}},
	{"not_house_side", func(f *facts) (Urgency, string, []string) {
		return f.on(len(f.readings) > 0 && !f.house.any && f.allMain(), Note)
	}},
	{"prv_age_unknown", func(f *facts) (Urgency, string, []string) {
		_, known := ageOf(&f.now, f.today)
		return f.on(f.now.prv == present && !known, Note)
	}},
}

// on is a rule's answer when the wording is the code's own.
func (f *facts) on(yes bool, u Urgency) (Urgency, string, []string) {
	if !yes {
		return "", "", nil
	}
	return u, "", f.houseValues()
}

func (f *facts) ageValues() []string {
	return []string{"age", number(*f.valve.AgeYears), "near", number(f.shop.ServiceYears[0]), "past", number(f.shop.ServiceYears[1])}
}

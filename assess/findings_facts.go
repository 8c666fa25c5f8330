package assess

import "math"

// overRelief returns the highest house-side reading of 150 psi or more, 0 when
// there is none, or when the visit's work brought the house below it.
func (f *facts) overRelief() float64 {
	if f.house.isLeft && *f.house.psi < HeaterReliefPSI {
		for i := range f.readings {
			if j := &f.readings[i]; j.left && j.side == HouseSide && j.PSI >= HeaterReliefPSI {
				return j.PSI
			}
		}
		return 0
	}
	top := 0.0
	for i := range f.readings {
		if j := &f.readings[i]; j.side == HouseSide && j.PSI >= HeaterReliefPSI {
			top = math.Max(top, j.PSI)
		}
	}
	return top
}

// notRegulating tells whether house and main read alike, both above the band,
// where a regulator is not known to be absent.
func (f *facts) notRegulating() bool {
	h, s, top := f.house.psi, f.street.psi, f.shop.BandPSI[1]
	return h != nil && s != nil && math.Abs(*h-*s) <= sameLevelPSI && *h > top && *s > top && f.now.prv != absent
}

// savedAt60 is how much less open taps and steady leaks would run at 60 psi,
// in percent.
func (f *facts) savedAt60() string {
	ratio, ok := FlowRatio(*f.house.psi, usualPSI, LeakExponentFixed)
	if !ok {
		return "0"
	}
	return number(math.Max(0, math.Round(100*(1-ratio))))
}

// freshSetting returns what the visit left the regulator set to: the setting
// told, else what the house read after the screw was turned, as long as the
// house does not just follow the main.
func (f *facts) freshSetting() (float64, bool) {
	if to, ok := newSetting(f.visit); ok {
		return to, true
	}
	if f.visit.did(SetPRV) && f.house.isLeft && f.house.psi != nil && f.street.psi != nil && *f.street.psi-*f.house.psi >= belowMainPSI {
		return *f.house.psi, true
	}
	return 0, false
}

// unsound tells whether the house has a regulator that was told to have failed, or to be worn. Nobody
// is told to turn its screw: one that is frozen, stripped or weeping breaks, with the water on
// (common practice).
func (f *facts) unsound() bool {
	return f.now.regulated() && (f.now.prvCondition == Failed || f.now.prvCondition == Suspect)
}

// unsoundSetting is the wording for a setting outside the band that cannot be put right by the screw,
// empty where it can.
func (f *facts) unsoundSetting(code string) string {
	if !f.unsound() {
		return ""
	}
	return code + ".unsound"
}

// counts tells whether a reading shows the house as the visit left it: every
// reading does, until there are readings after work.
func (f *facts) counts(j *judged) bool {
	if j.left {
		return true
	}
	for i := range f.readings {
		if f.readings[i].left {
			return false
		}
	}
	return true
}

// idlePeak returns a house-side peak with the heater idle that lies 15 psi or
// more above static.
func (f *facts) idlePeak() (float64, bool) {
	return f.peak(func(j *judged) bool { return j.Heater == Idle })
}

// heatedPeak returns a peak over the band that a tank which does no work lets the heater
// make, in a house that is not known to be open to the main.
func (f *facts) heatedPeak() (float64, bool) {
	if t := f.expansion.Tank; t != TankMissing && t != TankFailed || f.expansion.Closed != ClosedUnsure || f.now.fuel == Tankless {
		return 0, false
	}
	top, ok := f.peak(func(j *judged) bool { return j.Heater != Idle })
	return top, ok && top > f.shop.BandPSI[1]
}

// unexplainedPeak returns a peak over the band that no other finding explains: neither the
// seat, nor the heater.
func (f *facts) unexplainedPeak() (float64, bool) {
	_, rises := f.heatRise()
	_, heated := f.heatedPeak()
	if t := f.expansion.Tank; f.expansion.Closed == ClosedYes && (t == TankMissing || t == TankFailed) {
		heated = true
	}
	if _, idle := f.idlePeak(); rises || heated || idle && f.now.prv != absent {
		return 0, false
	}
	top, ok := f.peak(func(*judged) bool { return true })
	return top, ok && top > f.shop.BandPSI[1] && top < HeaterReliefPSI
}

// peak returns the highest house-side peak of those that fit, where it lies 15 psi or more
// above static.
func (f *facts) peak(fits func(*judged) bool) (float64, bool) {
	if f.house.psi == nil {
		return 0, false
	}
	top, ok := 0.0, false
	for i := range f.readings {
		j := &f.readings[i]
		if j.Peak && j.Flow != Flowing && fits(j) && j.side == HouseSide && f.counts(j) && j.PSI-*f.house.psi >= peakOverPSI {
			top, ok = math.Max(top, j.PSI), true
		}
	}
	return top, ok
}

// heaterOff tells whether the visit ruled the heater out: idle at a reading,
// firing at none.
func (f *facts) heaterOff() bool {
	off := false
	for i := range f.readings {
		switch f.readings[i].Heater {
		case Firing:
			return false
		case Idle:
			off = true
		}
	}
	return off
}

// fall returns how far the house falls from static to flowing, at the same tap
// where both were read there, else from the house's static; the largest fall.
func (f *facts) fall() (float64, bool) {
	most, ok := 0.0, false
	for i := range f.readings {
		j := &f.readings[i]
		if j.why&bitFlowing == 0 || j.Peak || j.side != HouseSide || !f.counts(j) {
			continue
		}
		static := f.house.psi
		for k := range f.readings {
			s := &f.readings[k]
			if s.Point == j.Point && s.side == HouseSide && s.fair == FairYes && f.counts(s) {
				if static == f.house.psi || s.PSI > *static {
					static = &s.PSI
				}
			}
		}
		if static != nil && (!ok || *static-j.PSI > most) {
			most, ok = *static-j.PSI, true
		}
	}
	return most, ok
}

// streetSound tells whether nothing speaks against the main: it is not low,
// and does not fall away under flow itself.
func (f *facts) streetSound() bool {
	if f.street.psi == nil {
		return true
	}
	if *f.street.psi < BandLowPSI {
		return false
	}
	for i := range f.readings {
		j := &f.readings[i]
		if j.side == StreetSide && j.why&bitFlowing != 0 && *f.street.psi-j.PSI > restrictedPSI {
			return false
		}
	}
	return true
}

// heatRise returns how far the house rises with the heater: a reading with it
// firing above one with it idle, not one from before work on the tank. With a tank
// in order only a rise over the band counts.
func (f *facts) heatRise() (float64, bool) {
	if f.house.psi == nil {
		return 0, false
	}
	most := 0.0
	for i := range f.readings {
		j := &f.readings[i]
		if j.Heater != Firing || j.side != HouseSide || j.why&bitFlowing != 0 || !f.counts(j) || j.When == Before && f.visit.did(InstalledTank, ReplacedTank, ChargedTank) {
			continue
		}
		if j.PSI <= f.shop.BandPSI[1] && (f.expansion.Tank == TankOK || f.expansion.Tank == TankSmall) {
			continue
		}
		most = math.Max(most, j.PSI-*f.house.psi)
	}
	return most, most >= heatRisePSI
}

// allMain tells whether every reading is of the main.
func (f *facts) allMain() bool {
	for i := range f.readings {
		if f.readings[i].side != StreetSide {
			return false
		}
	}
	return true
}

// cannotBe names what of the things told cannot all be true, by the wording
// that says so; empty when nothing.
func (f *facts) cannotBe() string {
	v := f.visit
	for i, s := range v.Symptoms {
		for _, o := range v.Symptoms[:i] {
			if s.Symptom == o.Symptom && s.Absent != o.Absent {
				return "symptom"
			}
		}
	}
	year := f.today.Year
	for i := range v.Equipment {
		e := &v.Equipment[i]
		if e.InstalledYear != nil && *e.InstalledYear > year && year > 0 {
			return "year"
		}
		if e.Absent() && e.Item == PRV && v.did(SetPRV, ReplacedPRV, RebuiltPRV) {
			return "no_prv_work"
		}
		if e.Absent() && e.Item == ExpansionTank && v.did(ReplacedTank, ChargedTank) && !v.did(InstalledTank) {
			return "no_tank_work"
		}
	}
	h, s := f.house.psi, f.street.psi
	if h != nil && s != nil && f.house.isLeft == f.street.isLeft {
		switch {
		case f.now.prv == absent && *s-*h >= belowMainPSI:
			return "no_prv_gap"
		case *h-*s >= apartPSI:
			return "above_main"
		}
	}
	return ""
}

// expansionValues are the values of the wordings about expansion.
func (f *facts) expansionValues(more ...string) []string {
	v := f.houseValues(append(more, "tanktop", number(f.shop.tankTop()), "comfort", number(comfortPSI))...)
	v = append(v, "inlet", number(AssumedInletF), "setpoint", number(math.Round(setpointOf(&f.now))))
	if gal := f.tankToBuy(); gal != nil {
		v = append(v, "tank", number(math.Ceil(*gal*10)/10))
	}
	return v
}

// wantsTank tells whether the house is closed and has no tank that does its work.
func (f *facts) wantsTank() bool {
	t := f.expansion.Tank
	return f.expansion.Closed == ClosedYes && (t == TankMissing || t == TankFailed || t == TankSmall)
}

// lowerFirst tells whether the house is brought down before a tank is bought.
func (f *facts) lowerFirst() bool {
	return f.house.psi != nil && LowerFirst(*f.house.psi, f.shop.tankTop())
}

// tankToBuy is the least size in gallons of a tank for the pressure that the house is to
// have, nil where that or the heater's size is unknown.
func (f *facts) tankToBuy() *float64 {
	if comfort := comfortPSI; f.lowerFirst() {
		return expansionOf(&f.now, &comfort, f.shop).MinTankGal
	}
	return f.expansion.MinTankGal
}

// sized picks the wording that names a tank's size, where one is known, and that of a house
// whose pressure comes first.
func (f *facts) sized(wording string) string {
	if f.lowerFirst() {
		wording += ".lower"
	}
	if f.tankToBuy() != nil {
		wording += ".sized"
	}
	return wording
}

// trend writes a drift's finding: soon when it leaves the band within a year.
func (f *facts) trend(state DriftState) (Urgency, string, []string) {
	d := &f.drift
	if d.State != state {
		return "", "", nil
	}
	u, w := Watch, ""
	values := []string{"slope", ""}
	if d.PSIPerYear != nil {
		values[1] = number(math.Abs(math.Round(*d.PSIPerYear*10) / 10))
	}
	if d.Crosses != nil {
		values = append(values, "date", d.Crosses.Date.String()[:len("2006-01")])
		w = "drift.crosses"
		if days := d.Crosses.Date.Sub(f.today); days <= 365 {
			u = Soon
		}
	}
	switch {
	case state == Jumped:
		w = ""
		values = append(values, "from", f.psi(f.jump.From), "to", f.psi(f.jump.To), "after", f.jump.After.String(), "by", f.jump.By.String())
	case w != "":
		w = map[DriftState]string{Rising: "drift_up.crosses", Falling: "drift_down.crosses"}[state]
	}
	return u, w, values
}

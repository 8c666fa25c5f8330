package assess

// presence says whether a thing is installed, as far as anybody told.
type presence uint8

const (
	untold presence = iota
	present
	absent
)

// record is what the visits so far tell about a house's equipment. Years are
// calendar years, 0 when not told; pressures and sizes nil when not told.
type record struct {
	prv           presence
	prvProved     bool // a house reading well below the main proved a regulator
	prvYear       int
	prvSetting    *float64
	prvCondition  Condition
	check         presence
	tank          presence
	tankCondition Condition
	tankGal       *float64
	tankCharge    *float64
	heaterYear    int
	flushYear     int
	heaterGal     *float64
	setpointF     *float64
	fuel          Fuel
	drain         Material
	settled       [3]Side // what was settled about the front bibb, the unnamed bibb, the irrigation
}

// regulated tells whether a regulator is known to be there.
func (r *record) regulated() bool { return r.prv == present || r.prv == untold && r.prvProved }

// replaces tells whether the work puts a new item in, so that its facts are
// those of the new one.
func (v *Visit) replaces(item Item) bool {
	for _, w := range v.Work {
		switch w.Action {
		case ReplacedPRV, InstalledPRV:
			if item == PRV {
				return true
			}
		case ReplacedTank, InstalledTank:
			if item == ExpansionTank {
				return true
			}
		case ReplacedHeater:
			if item == Heater || item == DrainValve {
				return true
			}
		case ReplacedDrainValve:
			if item == DrainValve {
				return true
			}
		}
	}
	return false
}

// did tells whether the visit holds one of the actions.
func (v *Visit) did(actions ...Action) bool {
	for _, w := range v.Work {
		for _, a := range actions {
			if w.Action == a {
				return true
			}
		}
	}
	return false
}

// valveWork tells whether the visit changed what the regulator holds.
func (v *Visit) valveWork() bool { return v.did(SetPRV, ReplacedPRV, InstalledPRV, RebuiltPRV) }

// found returns the record as the visit found the house: the record so far
// with what the visit tells about things that it did not put in itself.
func (r record) found(v *Visit) record {
	told := false // the visit told the regulator's condition before
	for i := range v.Equipment {
		e := &v.Equipment[i]
		if v.replaces(e.Item) {
			r.learnOld(e, v.Date.Year)
			continue
		}
		failed := e.Item == PRV && r.prvCondition == Failed && told
		r.learn(e)
		told = told || e.Item == PRV && e.Condition != ""
		if failed && r.prvCondition == Suspect {
			r.prvCondition = Failed // "screw is frozen", then "weeps at the bonnet": one does not soften the other
		}
	}
	for _, w := range v.Work {
		switch w.Action {
		case SetPRV, ReplacedPRV, RebuiltPRV:
			r.prv = present
			if w.FromPSI != nil {
				r.prvSetting = w.FromPSI
			}
		case InstalledPRV:
			r.prv, r.prvProved = absent, false
		case InstalledTank:
			r.tank = absent
		case ReplacedTank, ChargedTank:
			r.tank = present
			if w.FromPSI != nil {
				r.tankCharge = w.FromPSI
			}
		}
	}
	return r
}

// left returns the record as the visit left the house, from the record as it
// found it.
func (r record) left(v *Visit) record {
	for _, w := range v.Work {
		switch w.Action {
		case InstalledPRV:
			// The new valve may stand ahead of a bibb that was house side before.
			r.settled = [3]Side{}
			fallthrough
		case ReplacedPRV:
			r.prv, r.prvYear, r.prvCondition, r.prvSetting = present, v.Date.Year, "", w.ToPSI
		case RebuiltPRV:
			r.prvCondition = ""
			if w.ToPSI != nil {
				r.prvSetting = w.ToPSI
			}
		case SetPRV:
			r.prvSetting = w.ToPSI
		case InstalledTank, ReplacedTank:
			r.tank, r.tankCondition, r.tankGal, r.tankCharge = present, Good, nil, w.ToPSI
		case ChargedTank:
			r.tankCharge = w.ToPSI
		case FlushedHeater:
			r.flushYear = v.Date.Year
		case ReplacedHeater:
			r.heaterYear, r.flushYear, r.heaterGal, r.setpointF, r.fuel, r.drain = v.Date.Year, 0, nil, nil, "", ""
		case ReplacedDrainValve:
			r.drain = ""
		}
	}
	for i := range v.Equipment {
		e := &v.Equipment[i]
		if v.replaces(e.Item) && !e.Absent() && e.Condition != Failed && e.Condition != Suspect {
			year := r.prvYear
			r.learn(e)
			if e.Item == PRV {
				r.prvYear = year // the day of the work is the new valve's year
			}
		}
	}
	return r
}

// learn takes a fact about something that stays in the house.
func (r *record) learn(e *Equipment) {
	here := present
	if e.Absent() {
		here = absent
	}
	switch e.Item {
	case PRV:
		r.prv = here
		if e.InstalledYear != nil {
			r.prvYear = *e.InstalledYear
		}
		if e.AgeUnknown {
			r.prvYear = 0
		}
		if e.SettingPSI != nil {
			r.prvSetting = e.SettingPSI
		}
		if e.Condition != "" {
			r.prvCondition = e.Condition
		}
	case CheckValve:
		r.check = here
	case ExpansionTank:
		r.tank = here
		if e.Condition != "" {
			r.tankCondition = e.Condition
		}
		if e.SizeGal != nil {
			r.tankGal = e.SizeGal
		}
		if e.SettingPSI != nil {
			r.tankCharge = e.SettingPSI
		}
	case Heater:
		if e.InstalledYear != nil {
			r.heaterYear = *e.InstalledYear
		}
		if e.MaintainedYear != nil {
			r.flushYear = *e.MaintainedYear
		}
		if e.SizeGal != nil {
			r.heaterGal = e.SizeGal
		}
		if e.SetpointF != nil {
			r.setpointF = e.SetpointF
		}
		if e.Fuel != "" {
			r.fuel = e.Fuel
		}
	case DrainValve:
		if e.Material != "" {
			r.drain = e.Material
		}
	}
}

// learnOld takes the facts that can only be about the part that the visit took
// out: its bad condition, its absence, a year before the visit's.
func (r *record) learnOld(e *Equipment, year int) {
	if e.Absent() || e.Condition == Failed || e.Condition == Suspect {
		r.learn(&Equipment{Item: e.Item, Present: e.Present, Condition: e.Condition})
	}
	if e.InstalledYear != nil && *e.InstalledYear < year {
		r.learn(&Equipment{Item: e.Item, InstalledYear: e.InstalledYear})
	}
}

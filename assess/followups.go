package assess

import "sort"

// Days until a follow-up falls due. Judgement, but for the day after work on a
// regulator: static again after 24 hours (common practice).
const (
	daysAfterWork  = 1
	daysUrgent     = 1
	daysSoon       = 7
	daysRetake     = 7
	daysWatch      = 30
	daysTank       = 14
	daysOldValve   = 60
	daysYearly     = 365
	mostFollowUps  = 3
	daysUntoldPlan = 30
)

// followUps lists what to come back for: what a person asked for, then what
// the findings ask for. Each action stands once, at its earliest day.
func (f *facts) followUps(findings []Finding) []FollowUp {
	out := make([]FollowUp, 0, mostFollowUps)
	t := f.lang.table()
	planned := 0 // what a person asked for keeps its day
	add := func(a Action, days int, why string) {
		for i := range out {
			if out[i].Action == a {
				if i >= planned && days < out[i].InDays {
					out[i].InDays, out[i].Why = days, t.followUps[why]
				}
				return
			}
		}
		out = append(out, FollowUp{a, days, t.followUps[why]})
	}
	for _, p := range f.visit.Plans {
		days := daysUntoldPlan
		if p.InDays != nil && *p.InDays >= 0 {
			days = *p.InDays
		} else if p.Action == Recheck {
			days = daysRetake
		}
		add(p.Action, days, "asked")
	}
	planned = len(out)
	if f.visit.valveWork() {
		add(Recheck, daysAfterWork, "after_work")
	}
	for i := range findings {
		switch findings[i].Code {
		case "over_relief", "relief_blocked", "gas_smell":
			add(Recheck, daysUrgent, findings[i].Code)
		case "not_regulating", "seat_creep":
			switch {
			case f.visit.did(ReplacedPRV, RebuiltPRV):
			case f.sure(CausePassing, CauseSeatCreep):
				add(ReplacePRV, daysSoon, findings[i].Code)
			default:
				add(Recheck, daysSoon, findings[i].Code)
			}
		case "set_high", "set_low":
			add(f.setOrReplace(), daysSoon, findings[i].Code)
		case "high", "low":
			switch {
			case findings[i].Urgency == Watch:
				add(Recheck, daysWatch, "borderline")
			case f.visit.valveWork(), f.notRegulating(), f.now.prv == absent && findings[i].Code == "high":
				// another finding says what to come back for
			case f.unsound(), f.likely(CauseSetHigh, CauseSetLow):
				add(f.setOrReplace(), daysSoon, findings[i].Code)
			default:
				add(Recheck, daysSoon, findings[i].Code)
			}
		case "restricted", "dark_water", "street_strong":
			add(OtherAction, daysSoon, findings[i].Code)
		case "expansion_uncontrolled":
			switch f.expansion.Tank {
			case TankMissing, TankUnsure:
				add(InstallTank, daysTank, findings[i].Code)
			default:
				add(ReplaceTank, daysTank, findings[i].Code)
			}
		case "tank_small":
			add(ReplaceTank, daysWatch, findings[i].Code)
		case "retake", "not_house_side", "contradiction":
			add(Recheck, daysRetake, findings[i].Code)
		case "borderline", "fall_off", "tank_charge_off", "street_low", "hammer":
			add(Recheck, daysWatch, findings[i].Code)
		case "prv_past_age":
			add(Recheck, daysOldValve, findings[i].Code)
		case "drift_up", "drift_down", "jump":
			if findings[i].Urgency == Soon {
				add(Recheck, daysWatch, findings[i].Code)
			} else {
				add(Recheck, 2*daysWatch, findings[i].Code)
			}
		}
	}
	if len(out) == 0 && f.house.psi != nil {
		add(Recheck, daysYearly, "yearly")
	}
	rest := out[planned:]
	sort.SliceStable(rest, func(a, b int) bool { return rest[a].InDays < rest[b].InDays })
	return out[:min(len(out), max(mostFollowUps, planned))]
}

// setOrReplace is what brings the pressure right: the screw, or a new valve where this one is not to be
// turned.
func (f *facts) setOrReplace() Action {
	if f.unsound() {
		return ReplacePRV
	}
	return SetPRV
}

// sureEnough is how likely a cause must be before a valve is put on the list
// for replacement. Judgement.
const sureEnough = 0.8

// sure tells whether one of these causes is likely enough to act on.
func (f *facts) sure(causes ...Cause) bool {
	for i, p := range f.causes {
		for _, c := range causes {
			if causeNames[i] == c && p >= sureEnough {
				return true
			}
		}
	}
	return false
}

// likely tells whether the likeliest cause is one of these.
func (f *facts) likely(causes ...Cause) bool {
	best := 0
	for i := range f.causes {
		if f.causes[i] > f.causes[best] {
			best = i
		}
	}
	for _, c := range causes {
		if causeNames[best] == c {
			return true
		}
	}
	return false
}

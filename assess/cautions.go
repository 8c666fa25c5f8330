package assess

// mostCautions is how many cautions a report carries: two or three that matter
// are read, ten are not.
const mostCautions = 3

// cautions picks what goes with what was read, asked or done, gravest first.
func (f *facts) cautions(findings []Finding) []Caution {
	v, out := f.visit, make([]Caution, 0, mostCautions)
	say := func(when bool, cs ...Caution) {
		for _, c := range cs {
			if !when || len(out) == mostCautions {
				return
			}
			seen := false
			for _, o := range out {
				seen = seen || o == c
			}
			if !seen {
				out = append(out, c)
			}
		}
	}
	found := func(codes ...string) bool {
		for i := range findings {
			for _, c := range codes {
				if findings[i].Code == c {
					return true
				}
			}
		}
		return false
	}
	planned := func(actions ...Action) bool {
		for _, p := range v.Plans {
			for _, a := range actions {
				if p.Action == a {
					return true
				}
			}
		}
		return false
	}
	drain := false
	for i := range v.Readings {
		drain = drain || v.Readings[i].Point == HeaterDrain
	}
	say(found("gas_smell"), CautionGasSmell)
	say(found("over_relief", "relief_blocked"), CautionRelief)
	say(f.band == OverRelief, CautionShutoff)
	say(f.anyReading(bitPlasticDrain), CautionPlastic)
	say(v.has(DarkWater) || v.has(RustyWater), CautionDiscoloured)
	say(v.did(FlushedHeater, ReplacedHeater, ReplacedDrainValve), CautionGasOff, CautionHotDrain)
	say(drain, CautionHotDrain)
	say(f.now.setpointF != nil && *f.now.setpointF > AssumedSetpointF, CautionScald)
	say(v.did(ReplacedPRV, InstalledPRV) || planned(ReplacePRV), CautionBonding, CautionLocalCode)
	say(v.did(SetPRV, RebuiltPRV) || planned(SetPRV) || !f.unsound() && found("set_high", "set_low"), CautionSetting)
	say(v.did(InstalledTank, ReplacedTank) || planned(InstallTank, ReplaceTank), CautionSupportTank, CautionTank)
	say(v.did(ChargedTank) || found("tank_charge_off"), CautionTank)
	say(v.did(ShutOff), CautionSlowOpen)
	say(drain, CautionBackflow)
	say(found("expansion_uncontrolled", "peak_high"), CautionRelief, CautionLocalCode)
	say(found("not_regulating", "seat_creep", "street_strong"), CautionLocalCode)
	say(found("restricted"), CautionShutoff)
	say(f.now.regulated() && !f.unsound() && found("high", "low"), CautionSetting)
	say(f.unsound() && found("high", "low", "set_high", "set_low"), CautionLocalCode)
	say(v.did(RebuiltPRV, ReplacedPRV), CautionSlowOpen)
	return out
}

package intents

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"lazyhand/assess"
)

// What is installed, in all the ways a crew says it. The messages are our own; the
// day is 15 June 2026.
func TestWhatIsInstalled(t *testing.T) {
	says(t, [][2]string{
		// there is none
		{"ET N", "expansion_tank none"},
		{"softener Y / recirc N", "softener; recirc none"},
		{"no exp tank", "expansion_tank none"},
		{"exp tank - none", "expansion_tank none"},
		{"exp tank? nope", "expansion_tank none"},
		{"there wasn't an expansion tank", "expansion_tank none"},
		{"expansion tank: there isn't one", "expansion_tank none"},
		{"expansion tank, there wasn't one", "expansion_tank none"},
		{"looked for an expansion tank, wasn't one", "expansion_tank none"},
		{"house never had an expansion tank", "expansion_tank none"},
		{"expansion tank, never had one", "expansion_tank none"},
		{"they don't have a softener", "softener none"},
		{"house doesn't have a recirc pump", "recirc none"},
		{"there's no check valve at the meter", "check_valve none"},
		{"no sign of an expansion tank", "expansion_tank none"},
		{"couldn't find an expansion tank anywhere", "expansion_tank none"},
		{"not seeing an expansion tank", "expansion_tank none"},
		{"exp tank is missing", "expansion_tank none"},
		{"missing an expansion tank", "expansion_tank none"},
		{"this house lacks an expansion tank", "expansion_tank none"},
		{"no expansion tank, softener, or recirc", "expansion_tank none; softener none; recirc none"},
		{"no tank no softener no recirc", "expansion_tank none; softener none; recirc none"},
		{"there is no PRV", "prv none"},
		{"no regulator on this house", "prv none"},
		{"house has no prv at all", "prv none"},
		{"prv: none", "prv none"},
		{"no prv that I could find", "prv none"},
		{"zero expansion control, no tank", "expansion_tank none"},
		{"exp tank none, check valve yes", "expansion_tank none; check_valve"},
		{"exp tank yes", "expansion_tank"},
		{"exp tank present", "expansion_tank"},
		{"check valve at meter: Y", "check_valve"},
		{"check valve: y, exp tank: n", "check_valve; expansion_tank none"},
		{"there's a softener and a recirc pump", "softener; recirc"},
		{"has a check valve but no exp tank", "check_valve; expansion_tank none"},
		{"exp tank but no check valve", "expansion_tank; check_valve none"},
		{"she's got no expansion tank", "expansion_tank none"},
		{"without an expansion tank", "expansion_tank none"},
		{"expansion tank nowhere to be found", "expansion_tank none"},
		{"nobody ever put in an expansion tank", "expansion_tank none"},
		// years and ages
		{"prv 2012", "prv year 2012"},
		{"prv is a 2012", "prv year 2012"},
		{"prv from '12", "prv year 2012"},
		{"prv tag says 2012", "prv year 2012"},
		{"tag on the prv says 2012", "prv year 2012"},
		{"prv dated 2012", "prv year 2012"},
		{"prv date code 2012", "prv year 2012"},
		{"prv stamped 2012", "prv year 2012"},
		{"2012 prv", "prv year 2012"},
		{"prv put in back in 2012", "prv year 2012"},
		{"prv installed 2012", "prv year 2012"},
		{"prv was installed in 2012", "prv year 2012"},
		{"regulator is 14 years old", "prv year 2012"},
		{"14 year old regulator", "prv year 2012"},
		{"14yo prv", "prv year 2012"},
		{"prv about 14 yrs", "prv year 2012"},
		{"prv went in 14 years ago", "prv year 2012"},
		{"prv went in around 2012", "prv year 2012"},
		{"prv is maybe 14 years old", "prv year 2012"},
		{"heater made in 2012", "heater year 2012"},
		{"heater mfg 2012", "heater year 2012"},
		{"heater serial says 2012", "heater year 2012"},
		{"heater was put in in 2012", "heater year 2012"},
		{"heater is brand new, 2026", "heater year 2026"},
		{"prv 2010, no wait 2012", "prv year 2012"},
		{"prv 2010, sorry, 2012", "prv year 2012"},
		{"prv is a 2010, scratch that, 2012", "prv year 2012"},
		{"prv 2010. I mean 2012", "prv year 2012"},
		{"heater is 40 gal, no wait, 50 gal", "heater 50 gal"},
		{"tag says 2003 on the regulator", "prv year 2003"},
		{"regulator's from 2003, so 23 years old", "prv year 2003"},
		{"house built 1998, prv original", "prv year 1998"},
		{"house is a 1998 and the prv is original", "prv year 1998"},
		{"prv original to the house, 1998", "prv year 1998"},
		{"original prv from 1998", "prv year 1998"},
		{"exp tank 2019, heater 2011", "expansion_tank year 2019; heater year 2011"},
		{"prv was replaced in 2019", "prv year 2019"},
		{"prv replaced 2019", "prv year 2019"},
		{"customer says the prv was replaced 2 yrs ago", "prv year 2024"},
		{"customer says prv got changed out about 5 years ago", "prv year 2021"},
		{"landlord put a new heater in last year", "heater year 2025"},
		{"heater was replaced last year", "heater year 2025"},
		// age not known
		{"prv age unknown", "prv age unknown"},
		{"prv unknown age", "prv age unknown"},
		{"prv no date on it", "prv age unknown"},
		{"prv has no tag, nobody knows how old", "prv age unknown"},
		{"can't read the date on the prv", "prv age unknown"},
		{"prv age ?", "prv age unknown"},
		{"prv, who knows how old", "prv age unknown"},
		{"unknown age on the heater", "heater age unknown"},
		{"prv year unknown", "prv age unknown"},
		// heaters
		{"50 gal gas heater", "heater 50 gal gas"},
		{"50g gas wh 2018", "heater year 2018 50 gal gas"},
		{"heater 40 gallon electric set at 120", "heater 40 gal electric 120 F"},
		{"WH 75g LP '16 sp 130F", "heater year 2016 75 gal propane 130 F"},
		{"tankless on propane", "heater tankless"},
		{"heat pump water heater, 65 gal", "heater 65 gal heat_pump"},
		{"65 gal hybrid set to 125", "heater 65 gal heat_pump 125 F"},
		{"heater stat at 120", "heater 120 F"},
		{"thermostat's on 130", "heater 130 F"},
		{"tstat 140", "heater 140 F"},
		{"heater temp is 120", "heater 120 F"},
		{"water heater dialed to 135", "heater 135 F"},
		{"heater's set for 125", "heater 125 F"},
		{"189 liter heater", "heater 49.9 gal"},
		{"40-gal elec, 2015", "heater year 2015 40 gal electric"},
		{"30 gal lowboy electric", "heater 30 gal electric"},
		{"heater never flushed", "heater never maintained"},
		{"heater's never been flushed", "heater never maintained"},
		{"they've never flushed it, heater's a 2015", "heater year 2015 never maintained"},
		{"heater hasn't ever been drained", "heater never maintained"},
		{"owner never had the heater serviced", "heater never maintained"},
		{"never once flushed the heater", "heater never maintained"},
		{"heater flushed in 2022", "heater maintained 2022"},
		{"heater last flushed 2022", "heater maintained 2022"},
		{"last flush 2022, heater 2015", "heater year 2015 maintained 2022"},
		{"heater was flushed last year", "heater maintained 2025"},
		{"heater was flushed two years ago", "heater maintained 2024"},
		{"heater serviced 2023", "heater maintained 2023"},
		{"she had the heater flushed back in 2020", "heater maintained 2020"},
		// settings and air
		{"prv set at 60", "prv set 60"},
		{"prv is set for 60", "prv set 60"},
		{"prv setting is 60", "prv set 60"},
		{"exp tank precharge 40", "expansion_tank set 40"},
		{"exp tank air at 40", "expansion_tank set 40"},
		{"exp tank has 40 lbs in it", "expansion_tank set 40"},
		{"tank's air is at 40", "expansion_tank set 40"},
		{"only 12 psi of air in the exp tank", "expansion_tank set 12"},
		{"exp tank holding 58", "expansion_tank set 58"},
		{"air in tank 58", "expansion_tank set 58"},
		// material
		{"drain valve is plastic", "drain_valve plastic"},
		{"plastic drain valve", "drain_valve plastic"},
		{"DV brass", "drain_valve brass"},
		{"drain valve brass and sticking", "drain_valve brass suspect"},
		// conditions
		{"prv shot", "prv failed"},
		{"prv's toast", "prv failed"},
		{"prv has had it", "prv failed"},
		{"prv gave out", "prv failed"},
		{"prv died", "prv failed"},
		{"prv stuck wide open", "prv failed"},
		{"prv is stuck closed", "prv failed"},
		{"prv isn't doing its job", "prv failed"},
		{"prv not holding", "prv failed"},
		{"prv won't hold a setting", "prv failed"},
		{"prv won't adjust", "prv failed"},
		{"prv is letting street pressure through", "prv failed"},
		{"prv failing", "prv suspect"},
		{"prv is on its way out", "prv suspect"},
		{"prv looks tired", "prv suspect"},
		{"prv body is corroded", "prv suspect"},
		{"prv corroded up pretty bad", "prv suspect"},
		{"prv looks iffy", "prv suspect"},
		{"prv is getting lazy", "prv suspect"},
		{"prv starting to stick", "prv suspect"},
		{"prv seems fine", "prv good"},
		{"prv good to go", "prv good"},
		{"prv in good shape", "prv good"},
		{"prv looks alright", "prv good"},
		{"prv is healthy", "prv good"},
		{"prv is working great", "prv good"},
		{"prv's not bad", "prv good"},
		{"nothing wrong with the prv", "prv good"},
		{"exp tank waterlogged", "expansion_tank failed"},
		{"tank's full of water", "expansion_tank failed"},
		{"no air in the exp tank", "expansion_tank failed"},
		{"exp tank has no air", "expansion_tank failed"},
		{"exp tank flat", "expansion_tank failed"},
		{"exp tank bladder blown", "expansion_tank failed"},
		{"water came out of the schrader on the exp tank", "expansion_tank failed"},
		{"exp tank is heavy as a rock, waterlogged", "expansion_tank failed"},
		{"heater scaled up", "heater suspect"},
		{"heater is rusting at the bottom", "heater suspect"},
		{"heater corroded around the bottom", "heater suspect"},
		{"check valve stuck", "check_valve failed"},
		{"softener's broke", "softener failed"},
		{"softener out of salt", "softener"},
		{"recirc pump is dead", "recirc failed"},
		{"recirc pump seized", "recirc failed"},
		{"gauge is bent", "gauge suspect"},
		{"my gauge got dropped and acts up", "gauge suspect"},
		{"prv whistles bad", "noise"},
		{"elevator's dead", "ask none"},
		{"exp tank yes, 2016, seems good", "expansion_tank year 2016 good"},
		{"exp tank 2019, air 60, good", "expansion_tank year 2019 set 60 good"},
		{"new 75 gal gas heater, stat at 120", "heater 75 gal gas 120 F"},
		{"heater mfd 03/2012", "heater year 2012"},
		{"don't know how old the prv is", "prv age unknown"},
		{"no idea how old the reg is, tag's gone", "prv age unknown"},
		{"no idea on the age of the prv", "prv age unknown"},
		{"can't tell how old the prv is", "prv age unknown"},
		{"owner has no clue when the prv went in", "prv age unknown"},
		{"2 gal tank on a 75 gal heater, no air in it", "expansion_tank 2 gal failed; heater 75 gal"},
		{"recirc pump in the boiler room, nobody knows how old", "recirc age unknown"},
		{"R/R'd PRV, set 65#", "replaced_prv to 65"},
		{"R&R'd the PRV", "replaced_prv"},
		{"exp tank was at 31, pumped to 55", "charged_tank to 55 from 31"},
		{"flushed htr 40 gal gas 2018", "flushed_heater; heater year 2018 40 gal gas"},
		{"hung a new 75 gal gas heater in place of the old one, stat at 120", "replaced_heater; heater 75 gal gas 120 F"},
		{"set a new 50 gal electric", "replaced_heater; heater 50 gal electric"},
	})
}

// What was done on the visit.
func TestWhatWasDone(t *testing.T) {
	says(t, [][2]string{
		{"r&r prv set 60", "replaced_prv to 60"},
		{"chgd out prv", "replaced_prv"},
		{"chngd the prv out", "replaced_prv"},
		{"swapped the reg out, left it at 58", "replaced_prv to 58"},
		{"swapped out the reg, left at 58", "replaced_prv to 58"},
		{"put a new prv in, set it to 58", "replaced_prv to 58"},
		{"put in a new regulator and dialed it to 58", "replaced_prv to 58"},
		{"new PRV in, set 58", "replaced_prv to 58"},
		{"new prv, set to 58", "replaced_prv to 58"},
		{"new reg in, old one was shot, set her to 62", "replaced_prv to 62"},
		{"old prv was stuck so I put in a new one and set it at 60", "replaced_prv to 60"},
		{"put in a new regulator because the old one was stuck and set it to 60", "replaced_prv to 60"},
		{"prv was shot, put a new one in, set 60", "replaced_prv to 60"},
		{"prv shot. replaced it", "replaced_prv"},
		{"prv out, new one in, set to 60", "replaced_prv to 60"},
		{"had to change the prv", "replaced_prv"},
		{"ended up replacing the prv", "replaced_prv"},
		{"went ahead and replaced the prv", "replaced_prv"},
		{"just finished swapping the prv", "replaced_prv"},
		{"got the prv swapped", "replaced_prv"},
		{"got a new prv installed, set 60", "replaced_prv to 60"},
		{"prv has been replaced, set at 60", "replaced_prv to 60"},
		{"threw a new prv on it, set 60", "replaced_prv to 60"},
		{"slapped a new prv in", "replaced_prv"},
		{"cut out the old prv and sweated in a new one", "replaced_prv"},
		{"cut in a prv, there was none, set 60", "installed_prv to 60"},
		{"there was no regulator so I put one in and set it to 65", "installed_prv to 65"},
		{"no prv, installed one at 60", "installed_prv to 60"},
		{"added a prv, set 60", "installed_prv to 60"},
		{"installed prv, house had none, set 60", "installed_prv to 60"},
		{"put in a prv where there wasn't one", "installed_prv"},
		{"set prv to 60", "set_prv to 60"},
		{"set prv down to 60", "set_prv to 60"},
		{"set prv from 85 to 60", "set_prv to 60 from 85"},
		{"turned the prv down to 60", "set_prv to 60"},
		{"dialed the prv back to 60", "set_prv to 60"},
		{"dialed back the prv from 80 to 60", "set_prv to 60 from 80"},
		{"brought the prv down from 80 to 60", "set_prv to 60 from 80"},
		{"brought the prv from 80 down to 60", "set_prv to 60 from 80"},
		{"brought the prv up 45 to 55", "set_prv to 55 from 45"},
		{"backed the reg off", "set_prv"},
		{"backed the reg off to 60", "set_prv to 60"},
		{"backed the prv down to 60", "set_prv to 60"},
		{"cranked the prv down some", "set_prv"},
		{"gave the prv half a turn", "set_prv"},
		{"adjusted prv 85 -> 60", "set_prv to 60 from 85"},
		{"adj prv 85>60", "set_prv to 60 from 85"},
		{"prv 85 -> 60", "set_prv to 60 from 85"},
		{"prv was set at 40, turned it up to 55", "set_prv to 55 from 40"},
		{"prv was at 40, bumped it to 55", "set_prv to 55 from 40"},
		{"took the prv from 90 to 62", "set_prv to 62 from 90"},
		{"knocked the prv down to 55", "set_prv to 55"},
		{"tweaked prv to 62", "set_prv to 62"},
		{"screwed the prv down to 60", "set_prv to 60"},
		{"lowered regulator to sixty", "set_prv to 60"},
		{"prv reset to 60", "set_prv to 60"},
		{"prv adjusted to 60", "set_prv to 60"},
		{"prv turned down to 60", "set_prv to 60"},
		{"readjusted the prv, now set at 60", "set_prv to 60"},
		{"kit in the prv", "rebuilt_prv"},
		{"put a kit in the prv, set 60", "rebuilt_prv to 60"},
		{"prv rebuilt w/ kit", "rebuilt_prv"},
		{"rebuilt the prv and set it to 58", "rebuilt_prv to 58"},
		{"prv - kit in it", "rebuilt_prv"},
		{"threw a rebuild kit in the regulator", "rebuilt_prv"},
		{"cleaned the prv strainer", "rebuilt_prv"},
		{"cleaned out the strainer on the regulator", "rebuilt_prv"},
		{"strainer in the prv was plugged so I cleaned it", "rebuilt_prv"},
		{"pulled the prv apart and cleaned the seat", "rebuilt_prv"},
		{"installed exp tank, charged to 60", "installed_tank to 60"},
		{"added a 2 gal expansion tank at 60", "installed_tank to 60; expansion_tank 2 gal"},
		{"ET 2g installed, chg 60#", "installed_tank to 60; expansion_tank 2 gal"},
		{"put in a 2 gallon expansion tank where there never was one, charged to 65", "installed_tank to 65; expansion_tank 2 gal"},
		{"hung an exp tank, pumped to 60", "installed_tank to 60"},
		{"swapped the waterlogged exp tank, new one is 2 gal, charged it to 58", "replaced_tank to 58; expansion_tank 2 gal"},
		{"exp tank was waterlogged, replaced it, charged to 58", "replaced_tank to 58"},
		{"replaced exp tank", "replaced_tank"},
		{"new exp tank, charged 58", "replaced_tank to 58"},
		{"changed the expansion tank out, aired to 60", "replaced_tank to 60"},
		{"charged exp tank to 60", "charged_tank to 60"},
		{"charged the tank 40 to 60", "charged_tank to 60 from 40"},
		{"pumped it up from 20 to 65. exp tank was low", "charged_tank to 65 from 20"},
		{"exp tank only had 20, pumped it up to 65", "charged_tank to 65 from 20"},
		{"charged the exp tank to 55, it had been at 31", "charged_tank to 55 from 31"},
		{"gave the exp tank 55 lbs, had 30 in it", "charged_tank to 55 from 30"},
		{"topped the exp tank off to 60", "charged_tank to 60"},
		{"aired up the tank to 58", "charged_tank to 58"},
		{"put 60 psi in the exp tank", "charged_tank to 60"},
		{"exp tank 30 -> 60", "charged_tank to 60 from 30"},
		{"exp tank recharged, 60", "charged_tank to 60"},
		{"bumped exp tank air up to 62", "charged_tank to 62"},
		{"flushed heater", "flushed_heater"},
		{"flushed the wh", "flushed_heater"},
		{"I flushed it today, heater's a 2015", "flushed_heater; heater year 2015"},
		{"drained and flushed the water heater", "flushed_heater"},
		{"did a heater flush", "flushed_heater"},
		{"descaled the tankless", "flushed_heater; heater tankless"},
		{"flshd th htr, 50g gs frm 2018", "flushed_heater; heater year 2018 50 gal gas"},
		{"water heater is a fifty gallon gas put in two thousand fifteen and I flushed it today", "flushed_heater; heater year 2015 50 gal gas"},
		{"replaced the water heater, 50 gal gas", "replaced_heater; heater 50 gal gas"},
		{"new water heater in, 40 gal elec", "replaced_heater; heater 40 gal electric"},
		{"WH replaced, 50g gas", "replaced_heater; heater 50 gal gas"},
		{"put a new drain valve on the heater, brass", "replaced_drain_valve; drain_valve brass"},
		{"replaced plastic drain valve with brass", "replaced_drain_valve; drain_valve brass"},
		{"swapped drain valve", "replaced_drain_valve"},
		{"fixed the leak under the sink", "repaired_leak"},
		{"fixed a drip at the lav", "repaired_leak"},
		{"fixed dripping kitchen faucet", "repaired_leak"},
		{"stopped the leak", "repaired_leak"},
		{"supply line burst, replaced it", "repaired_leak"},
		{"replaced the leaking supply line", "repaired_leak"},
		{"repaired a pinhole leak in the copper", "repaired_leak"},
		{"split in the tub supply line, I repaired that", "repaired_leak"},
		{"supply line split in the hall bath, spliced the line", "repaired_leak"},
		{"supply line was spraying. fixed that", "repaired_leak"},
		{"tightened the packing nut, drip stopped", "repaired_leak"},
		{"shut off water at the curb", "shut_off"},
		{"shut her down at the curb", "shut_off"},
		{"S/O at curb", "shut_off"},
		{"water's off at the meter", "shut_off"},
		{"killed the water at the street", "shut_off"},
		{"turned the water off at the main", "shut_off"},
		{"closed the main", "shut_off"},
		{"left the water off", "shut_off"},
		{"had to shut the house down", "shut_off"},
		{"main is shut", "shut_off"},
		{"shut it down at the meter", "shut_off"},
	})
}

// What is no work of the visit, and what is no fact.
func TestWhatWasNotDone(t *testing.T) {
	says(t, [][2]string{
		{"need to replace the prv", "plan replace_prv"},
		{"prv needs replacing", "plan replace_prv"},
		{"the regulator needs to be replaced", "plan replace_prv"},
		{"quoted a new prv", "plan replace_prv"},
		{"recommended an exp tank", "plan install_tank"},
		{"told her she needs an expansion tank", "plan install_tank"},
		{"did not touch the prv, 66 front", "66 front_bibb"},
		{"didn't replace the prv, 66 front", "66 front_bibb"},
		{"couldn't get the prv to adjust, 66 front", "66 front_bibb"},
		{"customer replaced the faucet last year, 66 front", "66 front_bibb"},
		{"turned the water back on, 66 front", "66 front_bibb"},
		{"swapped my gauge, 66 front", "66 front_bibb"},
		{"new washer hoses, 66 front", "66 front_bibb"},
		{"replaced the toilet, 66 front", "66 front_bibb"},
		{"heater's in the garage, 66 front", "66 front_bibb"},
		{"prv is behind the hose bib, 66 front", "66 front_bibb"},
		{"was quoted $480 to put in an expansion tank", "plan install_tank"},
		{"prv should be replaced", "plan replace_prv"},
		{"main ball valve was half shut so I opened it up", "ask none"},
		{"charged her 110, 66 front", "66 front_bibb"},
	})
}

// says checks what short messages are read as, in the compact form of inWords.
func says(t *testing.T, table [][2]string) {
	t.Helper()
	p, err := New()
	if err != nil {
		t.Fatal(err)
	}
	for _, c := range table {
		want := strings.Split(c[1], "; ")
		slices.Sort(want)
		if got := inWords(p.Parse(c[0], Context{})); got != strings.Join(want, "; ") {
			t.Errorf("%q\n got %s\nwant %s", c[0], got, c[1])
		}
	}
}

// inWords writes the statements of a frame in short words, in the order of the alphabet.
func inWords(f Frame) string {
	var all []string
	for _, s := range f.Statements {
		var w []string
		add := func(format string, args ...any) { w = append(w, fmt.Sprintf(format, args...)) }
		word := func(v any) {
			if s := fmt.Sprint(v); s != "" {
				w = append(w, s)
			}
		}
		switch s := s.(type) {
		case assess.Reading:
			add("%v", s.PSI)
			word(s.Point)
			word(s.Heater)
			word(s.Flow)
			if s.Peak {
				add("peak")
			}
			word(s.When)
		case assess.Symptom:
			if s.Absent {
				add("no")
			}
			word(s.Symptom)
		case assess.Equipment:
			word(s.Item)
			if s.Absent() {
				add("none")
			}
			if s.InstalledYear != nil {
				add("year %d", *s.InstalledYear)
			}
			if s.AgeUnknown {
				add("age unknown")
			}
			if s.SizeGal != nil {
				add("%v gal", *s.SizeGal)
			}
			word(s.Fuel)
			if s.SettingPSI != nil {
				add("set %v", *s.SettingPSI)
			}
			if s.SetpointF != nil {
				add("%v F", *s.SetpointF)
			}
			word(s.Material)
			word(s.Condition)
			if s.MaintainedYear != nil {
				if *s.MaintainedYear == 0 {
					add("never maintained")
				} else {
					add("maintained %d", *s.MaintainedYear)
				}
			}
		case assess.Work:
			word(s.Action)
			if s.ToPSI != nil {
				add("to %v", *s.ToPSI)
			}
			if s.FromPSI != nil {
				add("from %v", *s.FromPSI)
			}
		case assess.Plan:
			add("plan %s", s.Action)
			if s.InDays != nil {
				add("in %d", *s.InDays)
			}
		case Ask:
			add("ask %s", s.About)
		}
		all = append(all, strings.Join(w, " "))
	}
	slices.Sort(all)
	return strings.Join(all, "; ")
}

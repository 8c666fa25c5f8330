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
		{"no tank, no check", "expansion_tank none; check_valve none"},
		{"no check needed on the tank", "ask none"},
		{"tank ok. gone.", "expansion_tank good"},
		{"prv new last year", "prv year 2025"},
		{"swapped the water heater, left it at 125", "heater 125 F; replaced_heater"},
		{"heater is a 2023, no flush yet ever", "heater year 2023 never maintained"},
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
		{"exp tank air      30 psi\nheater flushed    never", "expansion_tank set 30; heater never maintained"},
		{"Heater flushed - never\nkitchen 66", "heater never maintained; 66 kitchen"},
		{"The heater is electric, from 2014, and never was flushed.", "heater year 2014 electric never maintained"},
		{"the heater never was flushed, kitchen 66", "heater never maintained; 66 kitchen"},
		{"the tank never was replaced", "ask none"},
		{"never was a check valve. heater flushed today", "check_valve none; flushed_heater"},
		{"flushed the heater. Never any leaks.", "flushed_heater; no leak"},
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
		{"prv and heater both 2015", "prv year 2015; heater year 2015"},
		{"prv and heater are from 2015", "prv year 2015; heater year 2015"},
		{"heater flush done", "flushed_heater"},
		{"swapped heater, new 1 is 50 elec", "replaced_heater; heater 50 gal electric"},
		{"ET n/a; no ET on site", "expansion_tank none"},
		{"exp tank: no", "expansion_tank none"},
		{"did not find an expansion tank", "expansion_tank none"},
		{"they've never had a softener", "softener none"},
		{"ain't no exp tank", "expansion_tank none"},
		{"there isn't a check valve or an exp tank", "check_valve none; expansion_tank none"},
		{"neither an expansion tank nor a recirc", "expansion_tank none; recirc none"},
		{"exp tank was never installed", "expansion_tank none"},
		{"no thermal expansion tank at the heater", "expansion_tank none"},
		{"still no exp tank at this house", "expansion_tank none"},
		{"no PRV found", "prv none"},
		{"couldn't find a prv", "prv none"},
		{"softener in garage, recirc pump at heater", "softener; recirc"},
		{"has a softener", "softener"},
		{"backflow preventer at the meter", "check_valve"},
		{"prv 2009 exp tank 2015", "prv year 2009; expansion_tank year 2015"},
		{"prv - 2009", "prv year 2009"},
		{"prv (2009)", "prv year 2009"},
		{"prv, 2009, shot", "prv year 2009 failed"},
		{"2009 prv, looks rough", "prv year 2009 suspect"},
		{"prv has a 2009 tag", "prv year 2009"},
		{"prv is an '09", "prv year 2009"},
		{"prv vintage 2009", "prv year 2009"},
		{"prv looks to be from 2009", "prv year 2009"},
		{"guessing the prv is from 2009", "prv year 2009"},
		{"prv is from around 2009", "prv year 2009"},
		{"prv's been in there since 2009", "prv year 2009"},
		{"prv's prob 17 yrs old", "prv year 2009"},
		{"exp tank is 6 yrs old and holding air", "expansion_tank year 2020 good"},
		{"tank installed 2020, 2 gal, air 60", "expansion_tank year 2020 2 gal set 60"},
		{"4.4 gal exp tank", "expansion_tank 4.4 gal"},
		{"exp tank is a 2 gallon", "expansion_tank 2 gal"},
		{"two gallon expansion tank from 2018", "expansion_tank year 2018 2 gal"},
		{"heater: 50 gal, nat gas, 2017, 120F", "heater year 2017 50 gal gas 120 F"},
		{"50 gal AO electric wh, 2017", "heater year 2017 50 gal electric"},
		{"electric 40 gal water heater made 2017, set 125 deg", "heater year 2017 40 gal electric 125 F"},
		{"wh is a 40 gas from 2017", "heater year 2017 40 gal gas"},
		{"heater 9 years old, elec, 40 gallons", "heater year 2017 40 gal electric"},
		{"it's a tankless, 2019", "heater year 2019 tankless"},
		{"gas tankless from 2019, scaled up", "heater year 2019 tankless suspect"},
		{"setpoint 125 on the heater", "heater 125 F"},
		{"wh stat 125", "heater 125 F"},
		{"heater turned up to 140", "heater 140 F"},
		{"heater set at 49 C", "heater 120 F"},
		{"heater is on 130 deg", "heater 130 F"},
		{"turned the heater down to 120", "heater 120 F"},
		{"turned heater thermostat from 150 to 125", "heater 125 F"},
		{"heater flushed last month", "heater maintained 2026"},
		{"heater hasn't been flushed since 2019", "heater maintained 2019"},
		{"last service on the heater was 2021", "heater maintained 2021"},
		{"heater maintenance: never", "heater never maintained"},
		{"heater never been touched", "heater never maintained"},
		{"the prv there is a 2009, never been touched", "prv year 2009 never maintained"},
		{"regulator has never been touched", "prv never maintained"},
		{"prv setting 55", "prv set 55"},
		{"prv currently set 55", "prv set 55"},
		{"the regulator's set for 55 psi per the sticker", "prv set 55"},
		{"exp tank air charge is 38", "expansion_tank set 38"},
		{"exp tank sitting at 38 lbs of air", "expansion_tank set 38"},
		{"exp tank reads 38 on the tire gauge", "expansion_tank set 38"},
		{"checked the air in the exp tank, 38", "expansion_tank set 38"},
		{"air charge on the tank was 38", "expansion_tank set 38"},
		{"exp tank down to 12 psi", "expansion_tank set 12"},
		{"drain valve's a cheap plastic one", "drain_valve plastic"},
		{"plastic drain valve on the heater, crusty", "drain_valve plastic suspect"},
		{"drain valve is seized", "drain_valve failed"},
		{"drain valve is plastic and weeping", "drain_valve plastic; leak"},
		{"prv is bad", "prv failed"},
		{"prv bad", "prv failed"},
		{"prv is a goner", "prv failed"},
		{"prv definitely failed", "prv failed"},
		{"the reg has failed", "prv failed"},
		{"reg isn't regulating", "prv failed"},
		{"reg doesn't hold", "prv failed"},
		{"prv is not holding pressure", "prv failed"},
		{"prv failed wide open", "prv failed"},
		{"prv frozen, can't turn the screw", "prv failed"},
		{"prv is leaking by", "prv suspect"},
		{"prv body weeping", "prv suspect"},
		{"prv rusted up", "prv suspect"},
		{"prv a little crusty", "prv suspect"},
		{"prv prob on its last legs", "prv suspect"},
		{"prv might be going bad", "prv suspect"},
		{"prv sticks a bit", "prv suspect"},
		{"prv seems ok", "prv good"},
		{"prv ok", "prv good"},
		{"prv checks out", "prv good"},
		{"prv holding steady", "prv good"},
		{"prv tests good", "prv good"},
		{"all good with the prv", "prv good"},
		{"exp tank has water in it", "expansion_tank failed"},
		{"exp tank is dead", "expansion_tank failed"},
		{"exp tank lost its bladder", "expansion_tank failed"},
		{"exp tank losing air", "expansion_tank suspect"},
		{"exp tank rusty at the nipple", "expansion_tank suspect"},
		{"exp tank good", "expansion_tank good"},
		{"exp tank is holding air", "expansion_tank good"},
		{"heater on its last legs", "heater suspect"},
		{"recirc pump doesn't run", "recirc failed"},
		{"softener bypassed", "softener"},
		{"check valve is good", "check_valve good"},
		{"check valve failed", "check_valve failed"},
		{"my gauge is off by 5", "gauge suspect"},
		{"gauge sticks", "gauge suspect"},
		{"don't trust that gauge, needle's bent", "gauge suspect"},
		{"prv 2004, 60 front", "prv year 2004; 60 front_bibb"},
		{"new gauge, 60 front", "60 front_bibb"},
		{"heater in attic, 60 front", "60 front_bibb"},
		{"no tank to take it up, 83 laundry", "83 laundry; expansion_tank none"},
		{"there's no tank to take the expansion", "expansion_tank none"},
		{"kitchen 58, WH ht pump 65g", "58 kitchen; heater 65 gal heat_pump"},
		{"heater is electric, and I couldn't find out how old", "heater age unknown electric"},
		{"prv 8 yrs old, sticking. new prv quoted, no date", "prv year 2018 suspect; plan replace_prv"},
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

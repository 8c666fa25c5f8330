package intents

import "testing"

func TestWhatAPartIsBuiltForIsNoPressure(t *testing.T) {
	says(t, [][2]string{
		{"exp tank: 150 max, factory precharge 40 printed on the label, bladder burst", "expansion_tank failed"},
		{"body of the reg says max inlet 300, adj 10 to 70. thing's seized, won't move", "prv failed"},
		{"the prv is 300 max inlet, seized", "prv failed"},
		{"prv 300 max, adj 25-75", "ask none"},
		{"heater 150 max working, 2011", "heater year 2011"},
		{"rear bib 150 max, now 80", "150 rear_bibb peak; 80 rear_bibb"},
	})
}

func TestAHandShowsItsPeakWhateverTimeIsToldWithIt(t *testing.T) {
	says(t, [][2]string{
		{"max pointer was sitting at 143 this morning on the laundry gauge, live needle 72", "143 laundry peak; 72 laundry"},
		{"max needle is sitting at 128 right now on the front bib, pressure itself 66", "128 front_bibb peak; 66 front_bibb"},
		{"peak hand at the moment 144, live 68, rear bib", "144 rear_bibb peak; 68 rear_bibb"},
		{"left a gauge on the side bib since friday, high mark 127, at the moment it reads 64", "127 side_bibb peak; 64 side_bibb"},
	})
}

func TestAPartThatIsThereWasNotPutInToday(t *testing.T) {
	says(t, [][2]string{
		{"An expansion tank is fitted, its age is not known.", "expansion_tank age unknown"},
		{"there is an expansion tank fitted, 2 gallon", "expansion_tank 2 gal"},
		{"the prv is fitted in the crawlspace, 2011", "prv year 2011"},
		{"expansion tank was fitted today, charged to 60", "installed_tank to 60"},
		{"the expansion tank is waterlogged; it was fitted in 2009", "expansion_tank year 2009 failed"},
		{"The regulator creeps. It was fitted in 1999.", "creep; prv year 1999"},
		{"heater is rusted; it was new in 2006", "heater year 2006 suspect"},
	})
}

func TestNewPeopleAreNoNewPart(t *testing.T) {
	says(t, [][2]string{
		{"there is an expansion tank, he wants a recheck in 8 weeks, before the new tenants come", "expansion_tank; plan recheck in 56"},
		{"PRV ok, new tenants next month", "prv good"},
		{"no exp tank. new tenants move in friday, recheck then", "expansion_tank none; plan recheck in 4"},
		{"move the recheck to friday", "ask snooze"},
	})
}

func TestATankWithAirInItIsReplaced(t *testing.T) {
	says(t, [][2]string{
		{"only 12 lbs of air left in the exp tank, spec is 70. needs a new one", "expansion_tank set 12; plan replace_tank"},
		{"exp tank has 20 psi left in it, supposed to be 60, needs a new one", "expansion_tank set 20; plan replace_tank"},
		{"no exp tank, needs one", "expansion_tank none; plan install_tank"},
	})
}

func TestTheHouseIsClosed(t *testing.T) {
	says(t, [][2]string{
		{"house closed and elements off for each one: 71 side bib, 70 tub, 69 kitchen.", "69 kitchen idle static; 70 bath idle static; 71 side_bibb idle static"},
		{"after PRV, house shut: 60. after PRV, tub wide open: 44. shut again: 61", "44 after_prv flowing; 60 after_prv static; 61 after_prv static"},
		{"meter 119. after the PRV 64. all with the house shut and the burner off. then burner on, rear bib, 86", "119 street idle static; 64 after_prv idle static; 86 rear_bibb firing"},
		{"61 closed house, 50 w/ both showers goin", "50 flowing; 61 static"},
		{"57 nothin on. 31 when the washer fills", "31 flowing; 57 static"},
		{"70 dead still no taps, 66 one tap on, 59 two on", "59 flowing; 66 flowing; 70 static"},
		{"I did not ask about water use. 91 at the test port.", "91 after_prv"},
		{"smell of gas by the heater, got them all out and rang the gas company. kitchen 70", "70 kitchen; gas_smell"},
	})
}

func TestAHeaterForAnother(t *testing.T) {
	says(t, [][2]string{
		{"Swapped the old electric heater for a 50 gal heat pump unit.", "heater 50 gal heat_pump; replaced_heater"},
		{"Swapped the old electric water heater for a gas one, 50 gal", "heater 50 gal gas; replaced_heater"},
		{"Out: a gas 50 that rusted through. In: propane, 75 gal, set at 130, brass drain valve.", "drain_valve brass; heater 75 gal propane 130 F; replaced_heater"},
		{"Out: electric 40 from 2003. In: gas 50.", "heater 50 gal gas; replaced_heater"},
		{"Out: 2004 prv. In: new prv set at 60", "replaced_prv to 60"},
		{"swapped the heater, drained the old one, refilled", "replaced_heater"},
		{"New heater in, not powered up yet: rear bib 77, lav 76", "76 bath idle; 77 rear_bibb idle; replaced_heater"},
		{"hp htr 65 gl nw lst yr", "heater year 2025 65 gal heat_pump"},
		{"electric unit set to 125, laundry takes 90 seconds to get hot", "heater electric 125 F"},
	})
}

func TestDegreesToldLaterAndABurnerThatIsNotEvenLit(t *testing.T) {
	says(t, [][2]string{
		{"tankless is set to 60 on the display, that's celsius", "heater tankless 140 F"},
		{"heater set at 55 on the dial, celsius", "heater 131 F"},
		{"heater set to 125, tub 77 psi and it's not even firing", "77 bath idle; heater 125 F"},
		{"kitchen 66, boiler puesto en 120 y ni está prendido", "66 kitchen idle; heater 120 F"},
	})
}

func TestWhatTheRegulatorWasPutTo(t *testing.T) {
	says(t, [][2]string{
		{"regulator was set at 75, I put it at 58 going by the scale on the cap. no port here to read it with", "set_prv to 58 from 75"},
		{"I have changed the regulator for a new one and put it to 3.8 bar.", "replaced_prv to 55.1"},
		{"I turned down the regulator, now it is set to 40 metres.", "set_prv to 56.9"},
		{"reg was set to 90, I moved it to 62, no gauge port", "set_prv to 62 from 90"},
	})
}

func TestWhenItWasReadLast(t *testing.T) {
	says(t, [][2]string{
		{"cleaned the strainer. Measured before leaving, filter back in: laundry 60", "60 laundry after; rebuilt_prv"},
		{"set the prv to 60. last reading before going: kitchen 61", "61 kitchen after; set_prv to 60"},
		{"kitchen 88 on arrival. changed the reg. Then kitchen 60 and tub 59", "59 bath after; 60 kitchen after; 88 kitchen before; replaced_prv"},
	})
}

func TestAVisitCalledByItsSpanIsNoPlan(t *testing.T) {
	says(t, [][2]string{
		{"Six month visit to 1005 Sparling Ct. rear bib 77", "77 rear_bibb"},
		{"30 day visit at 12 Elm done, close it", "ask done"},
		{"30 day visit at 12 Elm please", "plan other in 30"},
		{"lazy hand reset, 70 now rear bib", "70 rear_bibb"},
	})
}

func TestWhatIsSentIsPutRightInOtherWords(t *testing.T) {
	says(t, [][2]string{
		{"sorry ese 58 de la cocina was wrong, it's 85", "85 kitchen; ask correct"},
		{"el 58 de la cocina estaba mal, son 85", "85 kitchen; ask correct"},
		{"I told you rear earlier but it was the side spigot, 88", "88 side_bibb; ask correct"},
		{"puse rear, era front, 71", "71 front_bibb; ask correct"},
		{"I said the front was weak, the back was 71", "71 rear_bibb; low_flow"},
		{"71 on the side bib, make that the front", "71 front_bibb"},
		{"88 kitchen, make it the tub", "88 bath"},
		{"75 psi at the tub, not a typo", "75 bath"},
		{"99 rear and that's no mistake", "99 rear_bibb"},
		{"my typo, 85 front", "85 front_bibb; ask correct"},
		{"ignore the one I just sent, kid got hold of my phone", "ask undo"},
		{"take that last one back, I was looking at the wrong work order", "ask undo"},
		{"set the prv ot 58", "set_prv to 58"},
	})
}

func TestNumbersOfDoorsRisesAndLimits(t *testing.T) {
	says(t, [][2]string{
		{"buzz 112 and ask for the desk, tub 71", "71 bath"},
		{"buzz the manager first, tub 71", "71 bath"},
		{"the reg buzzes at 60", "noise"},
		{"prv setting 65 on the dial", "prv set 65"},
		{"picks up 12 psi every time the burner lights, laundry 59 idle", "59 laundry idle"},
		{"the heater drain reached 140 psi at most and stands at 72 psi", "140 heater_drain peak; 72 heater_drain"},
		{"laundry hit 118 at most, sits at 64 now", "118 laundry peak; 64 laundry"},
		{"should be 80 at most, 92 kitchen", "92 kitchen"},
		{"expansion tank holds 150 at most. kitchen 61", "expansion_tank; 61 kitchen"},
		{"barely a trickle anywhere. kitchen 11, shower 9, rear bib 12", "11 kitchen; 12 rear_bibb; 9 bath; low_flow"},
		{"weak shower 5 min after start", "low_flow"},
		{"kitchen 8. tub 61", "61 bath"},
		{"59 psi, 118 f, kitchen hot tap", "59 kitchen"},
		{"dial set at 60 celsius, kitchen gets 55 c", "heater 140 F"},
		{"max needle at the kitchen tap stopped at 127 last night", "127 kitchen peak"},
		{"kitchen tap stopped last night", "no_water"},
		{"if 1 bar is 14.5 then 3.7 bar is what in psi", "ask convert"},
	})
}

func TestPlansAndAgesThatAClauseAdds(t *testing.T) {
	says(t, [][2]string{
		{"back tomorrow to change the PRV, and remind me in 2 months to call her", "plan other in 60; plan replace_prv in 1"},
		{"change the prv tomorrow and recheck in 2 months", "plan recheck in 60; plan replace_prv in 1"},
		{"PRV is sticking, I want it replaced, no date yet", "prv suspect; plan replace_prv"},
		{"put the replacement of the regulator at 9 Pewter Ln on my list for 22 June", "plan replace_prv in 7"},
		{"what's on my list for friday", "ask due"},
		{"heater was off start to finish, it's a 40 gal gas and nobody knows the year", "heater age unknown 40 gal gas"},
		{"el heater ya está scaled up, nobody sabe qué año es", "heater age unknown suspect"},
		{"flushed the heater. Still a little rusty on the hot side", "flushed_heater; rusty_water"},
		{"exp tank a little rusty on top", "expansion_tank suspect"},
		{"before swap: tub 72 heater idle\nreplaced the tank\nafter swap: tub 71 heater idle\nheater is 75 gal gas, 2018", "replaced_tank; 71 bath idle after; 72 bath idle before; heater year 2018 75 gal gas"},
		{"never got to the flush. 82 laundry", "82 laundry"},
		{"bck bb 122 sd bb 121 no prv n ths hs", "122 rear_bibb; 121 side_bibb; prv none"},
		{"truck is down to a quarter tank, filling up", "ask none"},
	})
}

func TestTheTwoSidesOfARegulatorInOtherWords(t *testing.T) {
	says(t, [][2]string{
		{"110 coming in and 105 going out of the PRV", "105 after_prv; 110 street"},
		{"110 into the reg and 62 out of it", "110 street; 62 after_prv"},
		{"110 into the reg and 62 out", "110 street; 62 after_prv"},
		{"110 entering, 62 leaving", "110 street; 62 after_prv"},
		{"110 goes in and 62 comes out", "110 street; 62 after_prv"},
		{"took a reading off the PRV's own gauge port: 58", "58 after_prv"},
		{"the built in gauge at the reg reads 60, mine on the tub says 74", "60 after_prv; 74 bath"},
		{"irrigation valve box 121, house 65", "121 irrigation; 65 after_prv"},
		{"86 when the heater was going and 61 after it settled, laundry", "61 laundry idle; 86 laundry firing"},
		{"58 after it, 120 before it", "120 street; 58 after_prv"},
	})
}

func TestTheTapThatTheGaugeWasPutOn(t *testing.T) {
	says(t, [][2]string{
		{"had to use the heater drain, plastic one, reads 55, take it with a grain of salt", "55 heater_drain; drain_valve plastic"},
		{"boiler drain, brass, 66", "66 heater_drain; drain_valve brass"},
		{"heater drain plastic, 72 kitchen", "72 kitchen; drain_valve plastic"},
		{"heater drain plastic 2015", "drain_valve year 2015 plastic"},
		{"rear bib, frost-free, 88", "88 rear_bibb"},
		{"frost free at the rear 88", "88 rear_bibb"},
		{"kitchen instead of laundry, 61", "61 kitchen"},
		{"used the kitchen since the laundry is boxed in: 61", "61 kitchen"},
		{"kitchen 61, laundry is boxed in", "61 kitchen"},
	})
}

func TestWhatSwingsClimbsAndRests(t *testing.T) {
	says(t, [][2]string{
		{"the pressure at the corner house swings 20 psi all day", "swings"},
		{"varies 10 lbs, 60 at the tub", "60 bath; swings"},
		{"overnight: high 128 low 61, side bib", "128 side_bibb peak; 61 side_bibb"},
		{"it went 61, 64, 68 in ten minutes with everything shut. side bib", "61 side_bibb static; 64 side_bibb static; 68 side_bibb static"},
		{"98 at the laundry while the heater runs", "98 laundry firing"},
		{"tank is cooking, 91 laundry", "91 laundry firing"},
		{"nobody's had water since six", "no_water"},
		{"haven't had water since this morning", "no_water"},
		{"closed the ball valve to the house, pinhole in the slab", "shut_off; leak"},
		{"capped off the leaking irrigation line", "repaired_leak"},
	})
}

func TestWordsThatSoundLikeAFault(t *testing.T) {
	says(t, [][2]string{
		{"reg holds 60 dead even for 20 min", "ask none"},
		{"prv is dead on 60", "ask none"},
		{"prv is dead", "prv failed"},
		{"gauge leaked at the threads, 66 laundry", "66 laundry"},
		{"hose bib leaks, gauge says 66 there", "66 bibb; leak"},
		{"relief valve on the heater replaced", "ask none"},
		{"replaced the heater's relief valve", "ask none"},
		{"prv and relief valve replaced", "replaced_prv"},
		{"heater replaced, T&P dry", "replaced_heater; no relief_discharge"},
		{"found the PRV backwards, turned it round, 62 now at the tub", "62 bath"},
		{"turned it down to 60 at the prv", "set_prv to 60"},
		{"damp spot by the foundation", "leak"},
	})
}

func TestNumbersThatTellAWhileOrAStuckHand(t *testing.T) {
	says(t, [][2]string{
		{"held 70 for 15, rear bib", "70 rear_bibb"},
		{"held at 70 for 20 at the rear", "70 rear_bibb"},
		{"replaced gauge, old one stuck at 20", "gauge failed"},
		{"needle froze at 35, new gauge says 66 kitchen", "66 kitchen"},
		{"65 with max of 112 at the kitchen", "112 kitchen peak; 65 kitchen"},
		{"62 with a peak of 118 tub", "118 bath peak; 62 bath"},
		{"code is max of 80, she has 92 at the tub", "92 bath"},
		{"60 to 84 on the lazy hand during a full heat cycle, laundry", "60 laundry firing; 84 laundry firing peak"},
		{"60-64 at the tub", "62 bath"},
		{"heater recovering: 88 tub. recovered: 63 tub", "63 bath idle; 88 bath firing"},
	})
}

func TestReadAfterWorkThatIsNotTold(t *testing.T) {
	says(t, [][2]string{
		{"lndry 64 tub 63 aftr i fnshd th wrk", "63 bath after; 64 laundry after"},
		{"kitchen 60 after I was done", "60 kitchen after"},
		{"once I finished, 61 at the tub", "61 bath after"},
		{"after we finished lunch kitchen 61", "61 kitchen"},
		{"61 at the tub when I got done with the customer", "61 bath"},
		{"before: rear 95, after: rear 58", "58 rear_bibb after; 95 rear_bibb before"},
		{"rear before 95, rear after 58", "58 rear_bibb after; 95 rear_bibb before"},
		{"88-rear 61-kit 60-tub", "60 bath; 61 kitchen; 88 rear_bibb"},
		{"went by, no one home, will retry friday", "plan other in 4"},
		{"swapped the the regulator, 61 kitchen", "61 kitchen; replaced_prv"},
	})
}

func TestWhatIsSaidOfTwoThingsOrOfNone(t *testing.T) {
	says(t, [][2]string{
		{"Regulator is a 2019 and looks good, so does the expansion tank", "expansion_tank good; prv year 2019 good"},
		{"prv is a 2019 and so is the tank", "expansion_tank year 2019; prv year 2019"},
		{"the heater is a 40 gal gas from 2022 and is fine. customer calls it weak.", "heater year 2022 40 gal gas good; low_flow"},
		{"toilets don't run. rear is 58", "58 rear_bibb; no leak"},
		{"toilet won't stop running", "leak"},
		{"el check valve del meter no sirve", "check_valve failed"},
		{"Exp tank size: 4.5 gal\nExp tank air: 52\nExp tank age: unknown", "expansion_tank age unknown 4.5 gal set 52"},
		{"tank size for a 50 gal heater", "ask tank_size"},
		{"66 on the gauge, tub shut", "66"},
		{"laundry tap\ntub open: 52\ntub shut, nothing on: 60", "52 laundry flowing; 60 laundry static"},
		{"¿cuándo le cambiaron la reguladora a 53 Brookside?", "ask history"},
		{"pps hm al nght whn nghbr flls pool", "noise"},
	})
}

func TestHousesOfOneDigitAndWorkOfOthers(t *testing.T) {
	says(t, [][2]string{
		{"9 Bay Ln: pressure fine, 62 kitchen", "62 kitchen"},
		{"city raised pressure, now 120 at the meter", "120 street"},
		{"the city raised the pressure to 120", "ask none"},
		{"gas regulator replaced", "ask none"},
		{"gas company replaced the regulator", "ask none"},
		{"landlord replaced the tank in 2019", "expansion_tank year 2019"},
		{"maintenance set it at 75, I set it to 60", "set_prv to 60"},
		{"I shut the water off, city is on the way", "shut_off"},
	})
	p, err := New()
	if err != nil {
		t.Fatal(err)
	}
	for text, site := range map[string]string{
		"9 Bay Ln: 62 kitchen":           "9 Bay Ln",
		"62 kitchen, 4 Bath Ave":         "4 Bath Ave",
		"kitchen 62 at 8 Star Dr":        "8 Star Dr",
		"3 bed 2 bath ranch, 62 kitchen": "",
		"JOB# 4411 / 19 W Pepper Ln":     "19 W Pepper Ln",
		"# 30, 811 Garland Blvd: bib 58": "811 Garland Blvd # 30",
		"4 story place, top bath has 31": "",
	} {
		if got := p.Parse(text, Context{}).Site; got != site {
			t.Errorf("%q is at the house %q, want %q", text, got, site)
		}
	}
}

func TestWhatBracketsKeep(t *testing.T) {
	says(t, [][2]string{
		{"64 kitchen (58 when dishwasher ran)", "58 kitchen flowing; 64 kitchen"},
		{"rear 77 (51 tub open)", "51 rear_bibb flowing; 77 rear_bibb"},
		{"51 flowing (64 static) kitchen", "51 kitchen flowing; 64 kitchen static"},
		{"kitchen 64, tub 62 (all off)", "62 bath static; 64 kitchen static"},
		{"kitchen 88 (63 burner off)", "63 kitchen idle; 88 kitchen"},
		{"front 88, rear 87 (heater off)", "87 rear_bibb idle; 88 front_bibb idle"},
		{"7 psi climb overnight", "ask none"},
	})
}

func TestSizesAndAirAskedWithoutTheTank(t *testing.T) {
	says(t, [][2]string{
		{"what charge for a house at 58", "ask tank_charge"},
		{"what air for a 62 psi house", "ask tank_charge"},
		{"what's the size for a 40 gal at 65 psi, 120 degrees", "ask tank_size"},
		{"whats the size for the prv", "ask history"},
		{"examples", "ask help"},
		{"the boiler plate on this thing says 6 bar. what do I call that in psi?", "ask convert"},
		{"i know 100 psi is about 690 kpa but whats 72 psi in kpa", "ask convert"},
		{"front 71, tub 69, water off everywhere and burner off", "69 bath idle static; 71 front_bibb idle static"},
		{"water off at every fixture: rear bib 80, kitchen 79", "79 kitchen static; 80 rear_bibb static"},
		{"water off at the meter", "shut_off"},
		{"72 mby 74 sd bb", "73 side_bibb"},
	})
}

func TestYearsOfPartsThatWereBuiltAndThingsThatAreNot(t *testing.T) {
	says(t, [][2]string{
		{"The regulator, built in 1997, is dead.", "prv year 1997 failed"},
		{"heater was built in 2011", "heater year 2011"},
		{"house built in 1997, prv is original", "prv year 1997"},
		{"heater in a house built in 1997", "ask none"},
		{"HEATER | tankless, 2024\nRECIRC | none", "heater year 2024 tankless; recirc none"},
		{"A softener is there, a check valve is not.", "check_valve none; softener"},
	})
}

func TestItIsTheReliefValveThatTheSentenceBeforeNames(t *testing.T) {
	says(t, [][2]string{
		{"T&P tag reads 150. it drips", "relief_discharge"},
		{"the T&P looks new. it drips though", "relief_discharge"},
		{"T&P looks fine. water heater is a 2012. it leaks", "heater year 2012; leak"},
		{"T&P is new. it leaks at the lav", "leak"},
	})
}

func TestThenSaysThatWhatWasReadCameAfterTheWork(t *testing.T) {
	says(t, [][2]string{
		{"turned the reg down to 60. then the kitchen had 61", "61 kitchen; set_prv to 60"},
		{"turned the reg down to 60. the kitchen had 91", "91 kitchen before; set_prv to 60"},
		{"9 Elm Cir, drip irrigation header, 34 psi", "34 irrigation"},
	})
}

func TestWhatWasWrittenByMistakeIsNotStored(t *testing.T) {
	says(t, [][2]string{
		{"lo último que puse está mal, eran 58 en la cocina y escribí 85", "58 kitchen; ask correct"},
		{"lo último que puse está mal, son 58 en la cocina, escribí 85", "58 kitchen; ask correct"},
		{"my last one is wrong, it was 58 in the kitchen and I typed 85", "58 kitchen; ask correct"},
	})
}

func TestSoManyOfThemAreCounted(t *testing.T) {
	says(t, [][2]string{
		{"photos from the kitchen, 45 of them. kitchen 70", "70 kitchen"},
		{"about 60 of em in the box by the meter. meter 95", "95 street"},
		{"contaron los escalones hasta el medidor, 80 de ellos. medidor 95", "95 street"},
		{"lazy hd 144# / live 81#, front HB", "144 front_bibb peak; 81 front_bibb"},
		{"max hnd 140 live 66 rear bib", "140 rear_bibb peak; 66 rear_bibb"},
	})
}

func TestALackIsOfTheThingNamedBefore(t *testing.T) {
	says(t, [][2]string{
		{"mañana le pongo tanque de expansión a 12 Elm St, no tiene", "expansion_tank none; plan install_tank in 1"},
		{"going to install an expansion tank, house lacks one", "expansion_tank none; plan install_tank"},
		{"ocupa tanque de expansion, no le pusieron", "expansion_tank none; plan install_tank"},
		{"customer asks about a softener, house lacks one", "softener none"},
		{"la edad del tanque de expansion, no tiene", "expansion_tank"},
		{"busque fecha en la reguladora, no tiene. 80 atras", "80 rear_bibb"},
	})
}

func TestBeforeAndAfterTheJobAreTimesThoughNoWorkIsTold(t *testing.T) {
	says(t, [][2]string{
		{"aftr th jb kitchen 60", "60 kitchen after"},
		{"kitchen 60 after the swap", "60 kitchen after"},
		{"rear 100 before the job, after the job 60", "100 rear_bibb before; 60 rear_bibb after"},
		{"antes del cambio 100 atras, despues del cambio 60", "100 rear_bibb before; 60 rear_bibb after"},
		{"rear 70, lunch after the job", "70 rear_bibb"},
		{"job 60 is at the corner, rear 70", "70 rear_bibb"},
	})
}

func TestATapThatWasWatchedForATimeIsWhereTheGaugeSits(t *testing.T) {
	says(t, [][2]string{
		{"Half an hour on the kitchen tap. Nothing running. At the start 60, at the end 71.", "60 kitchen static; 71 kitchen static"},
		{"Twenty minutes on the back spigot at 12 Elm St. At the start 62, at the end 63.", "62 rear_bibb; 63 rear_bibb"},
		{"an hour on the front at 12 Elm St. nothing open. started 60, ended 72", "60 front_bibb static; 72 front_bibb static"},
		{"Una hora en la llave de atrás. Nadie usó agua. Al principio 60, al final 66.", "60 rear_bibb static; 66 rear_bibb static"},
		{"spent an hour in the kitchen. 60 dollars", "ask none"},
		{"spent 20 min at the kitchen sink fixing the drip. they have 60 people in there", "leak"},
	})
}

func TestTheMaterialOfADrainIsThatOfTheNewOne(t *testing.T) {
	says(t, [][2]string{
		{"put a brass drain on the heater, the plastic one was stuck", "drain_valve brass; replaced_drain_valve"},
		{"new brass drain valve, plastic one snapped off", "drain_valve brass"},
		{"changed the heater drain, brass now instead of plastic", "drain_valve brass; replaced_drain_valve"},
		{"cambié el dren del boiler por uno de bronce, el de plástico estaba pegado", "drain_valve brass; replaced_drain_valve"},
		{"el dren era de plástico, le puse de bronce", "drain_valve brass; replaced_drain_valve"},
		{"swapped plastic drain valve for brass", "drain_valve brass; replaced_drain_valve"},
	})
}

func TestWhatIsReadOnItIsReadAtTheTapThatWasMended(t *testing.T) {
	says(t, [][2]string{
		{"fixed the rear hose bib, was dripping. 66 on it now", "66 rear_bibb after; repaired_leak"},
		{"repacked the side spigot, it was dripping. 80 off it after", "80 side_bibb after; repaired_leak"},
		{"replaced the prv. 66 on it after", "66 after; replaced_prv"},
	})
}

func TestRestingWaterGoesOnToWhatTheGaugeShowedLater(t *testing.T) {
	says(t, [][2]string{
		{"gauge on the laundry, with all shut it read 60 and then 74", "60 laundry static; 74 laundry static"},
		{"con todas las llaves cerradas 60 y luego 74 atras", "60 rear_bibb static; 74 rear_bibb static"},
		{"with nothing running 60 and then 45 with the tub on, rear bib", "60 rear_bibb static; 45 rear_bibb flowing"},
		{"no hay agua corriendo, 66 atras", "66 rear_bibb static"},
		{"no hay agua. cocina 0", "no_water; 0 kitchen"},
		{"black spex in the watr, tub 60", "dark_water; 60 bath"},
	})
}

func TestTheTapMayBeToldBetweenRestingWaterAndItsRow(t *testing.T) {
	says(t, [][2]string{
		{"no water in use and the gauge climbs\nit's on the kitchen faucet\n9:10 58\n9:20 67", "creep; 58 kitchen static; 67 kitchen static"},
		{"everything off and the needle climbs\ntub spout\n60 then 74", "creep; 60 bath static; 74 bath static"},
		{"laundry says 122. 12 Elm St, ring the bell", "122 laundry"},
		{"does 12 Elm St ring a bell", "ask history"},
	})
}

func TestPressuresAtBareHoursAreASeries(t *testing.T) {
	says(t, [][2]string{
		{"gauge on the rear bib. 60 at 9, 66 at 10", "60 rear_bibb; 66 rear_bibb"},
		{"gauge on the tub. 60 a las 9, 66 a las 10", "60 bath; 66 bath"},
		{"rear bib, 60 at nine and 66 at ten", "60 rear_bibb; 66 rear_bibb"},
		{"rear bib 60 at 9, back tomorrow at 10", "60 rear_bibb; plan other in 1"},
	})
}

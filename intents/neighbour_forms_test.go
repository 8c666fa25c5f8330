package intents

import "testing"

func TestARowOfNumbersAndARowOfTheirTaps(t *testing.T) {
	says(t, [][2]string{
		{"3 taps: 63, 63, 64. (kitchen, tub, laundry in that order)", "63 kitchen; 63 bath; 64 laundry"},
		{"61, 62, 60. kitchen, tub, laundry in order", "61 kitchen; 62 bath; 60 laundry"},
		{"got 58 and 60. Kitchen and tub, in that order", "58 kitchen; 60 bath"},
		{"kitchen, tub and laundry were 63, 63 and 64 respectively", "63 kitchen; 63 bath; 64 laundry"},
		{"61/62/60 kit/tub/laundry resp.", "61 kitchen; 62 bath; 60 laundry"},
	})
}

func TestASettingThatWasFoundAndNotChanged(t *testing.T) {
	says(t, [][2]string{
		{"prv was already at 60", "prv set 60"},
		{"regulator already set to 58, left it alone", "prv set 58"},
		{"prv was at 60 when I got here, left it", "prv set 60"},
		{"prv was at 60, didn't touch it", "prv set 60"},
		{"tank already at 60", "expansion_tank set 60"},
		{"I already set the prv to 60", "set_prv to 60"},
		{"prv already turned down to 60", "set_prv to 60"},
	})
}

func TestRunningHotOrColdWater(t *testing.T) {
	says(t, [][2]string{
		{"kitchen 55 hot running / kitchen 71 all closed", "55 kitchen flowing; 71 kitchen static"},
		{"tub 48 cold running", "48 bath flowing"},
		{"lav 50 cold side open", "50 bath flowing"},
		{"hums every time they run a bath, 92 on the washer box", "noise; 92 laundry"},
		{"whistles each time the hose is on. 77 rear", "noise; 77 rear_bibb"},
	})
}

func TestWhatTheGaugeShowsWhileOneWrites(t *testing.T) {
	says(t, [][2]string{
		{"lazy hand left on back tap over the weekend: 127 max. Reads 74 as I stand here.", "127 rear_bibb peak; 74 rear_bibb"},
		{"max 131 overnight at the rear tap. 72 as we speak", "131 rear_bibb peak; 72 rear_bibb"},
		{"peak 118 rear bibb. sits at 70 while I'm here", "118 rear_bibb peak; 70 rear_bibb"},
		{"0 on the gauge, front bib. zero at the kitchen too", "0 front_bibb; 0 kitchen"},
	})
}

func TestWhatTheHeatersDrainIsMadeOf(t *testing.T) {
	says(t, [][2]string{
		{"heater drain 59 psi, brass valve", "59 heater_drain; drain_valve brass"},
		{"drain 61, its plastic", "61 heater_drain; drain_valve plastic"},
		{"heater drain (plastic) 61", "drain_valve plastic; 61 heater_drain"},
		{"read 74 at the plastic drain", "74 heater_drain; drain_valve plastic"},
		{"74 off the brass drain", "74 heater_drain; drain_valve brass"},
		{"heater drain 62, brass ball valve on the main", "62 heater_drain"},
	})
}

func TestANewPartThatIsToldByWhatItChanged(t *testing.T) {
	says(t, [][2]string{
		{"new prv, was 92 now 58 at the laundry", "replaced_prv; 92 laundry before; 58 laundry after"},
		{"New PRV. 92 before, 58 after, laundry", "replaced_prv; 92 laundry before; 58 laundry after"},
		{"new prv next week, was 92 now 95 at the laundry", "plan replace_prv in 7; 92 laundry; 95 laundry"},
		{"prv seat cleaned, was 84 now 60 at back tap", "rebuilt_prv; 84 rear_bibb before; 60 rear_bibb after"},
	})
}

func TestAThingThatOnlySaysWhereAnotherIs(t *testing.T) {
	says(t, [][2]string{
		{"regulator beside the heater, tag says 2009", "prv year 2009"},
		{"the prv is by the heater. tag says 2009", "prv year 2009"},
		{"regulator is next to the softener, it's from 2009", "softener; prv year 2009"},
		{"prv by the heater. heater's a 2012", "heater year 2012"},
		{"fitted the expansion tank above the heater", "installed_tank"},
	})
}

func TestWhatIsReadWhileSeveralTapsRun(t *testing.T) {
	says(t, [][2]string{
		{"Test port past the PRV: 62 with nothing on, 51 with the tub and a hose going", "62 after_prv static; 51 after_prv flowing"},
		{"after PRV: 60 static, 44 tub open, 37 tub and hose open", "60 after_prv static; 44 after_prv flowing; 37 after_prv flowing"},
		{"61 with the tub and the kitchen both wide open, side bib", "61 side_bibb flowing"},
	})
}

func TestRestThatLeadsToAList(t *testing.T) {
	says(t, [][2]string{
		{"With nothing running and the burner off I got side bib 72, kitchen 71 and washer box 72",
			"72 side_bibb idle static; 71 kitchen idle static; 72 laundry idle static"},
		{"Numbers with everything shut were kitchen 84, hall lav 83, front spigot 84",
			"84 kitchen static; 83 bath static; 84 front_bibb static"},
		{"with all taps shut I had 70 rear, 68 at the front, then 52 with the tub on",
			"70 rear_bibb static; 68 front_bibb static; 52 front_bibb flowing"},
		{"static 62 kitchen, 51 tub", "62 kitchen static; 51 bath"},
	})
}

func TestWhatSomebodyHadTheRegulatorAt(t *testing.T) {
	says(t, [][2]string{
		{"backed the prv off to 62, somebody had it cranked to 90", "set_prv to 62 from 90"},
		{"set the prv to 60, last guy had it at 85", "set_prv to 60 from 85"},
		{"set the prv to 60, kitchen had it at 61", "set_prv to 60; 61 kitchen"},
		{"kitchen was ninety four then I rebuilt the regulator and now it's sixty two", "94 kitchen before; rebuilt_prv; 62 kitchen after"},
	})
}

func TestWhatWasPromised(t *testing.T) {
	says(t, [][2]string{
		{"I promised him an expansion tank a week from today", "plan install_tank in 7"},
		{"promised her the prv swap for Monday", "plan replace_prv in 7"},
		{"le prometí el tanque para el viernes", "plan install_tank in 4"},
		{"I promised her 60 psi at the kitchen", "ask none"},
	})
}

func TestNumbersOfThermometersKeysAndPumps(t *testing.T) {
	says(t, [][2]string{
		{"my thermometer in the tub says 101", "ask none"},
		{"thermometer says 55 at the tub, gauge says 62", "62 bath"},
		{"kitchen key on hook 80", "ask none"},
		{"bike pump goes to 90", "ask none"},
		{"lockbox opens with 7062#", "ask none"},
		{"spare on the trailer is down to 18 psi, air it up before friday", "ask none"},
	})
}

func TestAgesBesideAges(t *testing.T) {
	says(t, [][2]string{
		{"heater's 14 years old and scaled up, softener is only 2", "heater year 2012 suspect; softener year 2024"},
		{"prv is 12 yrs old, tank is only 3", "prv year 2014; expansion_tank year 2023"},
		{"prv 12 yrs old, tank only 2 gal", "prv year 2014; expansion_tank 2 gal"},
	})
}

func TestCheckupsAndPartsInPlaceOfOthers(t *testing.T) {
	says(t, [][2]string{
		{"annual checkup at 12 Elm, 62 kitchen", "62 kitchen"},
		{"due for a checkup in a year", "plan recheck in 365"},
		{"ET prechg 62#, good. rr HB 63#", "expansion_tank set 62 good; 63 rear_bibb"},
		{"new prv in place of the old one, dialed it to 52", "replaced_prv to 52"},
		{"put a new expansion tank in place of the dead one, charged it to 55", "replaced_tank to 55"},
	})
}

func TestAsksOfTheCrewInOtherWords(t *testing.T) {
	says(t, [][2]string{
		{"what did the crew finish since monday", "ask summary"},
		{"whats the gang been up to today", "ask summary"},
		{"swamped this week, bring that one back up in 5 days", "ask snooze"},
	})
	p, err := New()
	if err != nil {
		t.Fatal(err)
	}
	for _, c := range []struct {
		text, to string
		value    float64
	}{
		{"the engineer wants kpa, what do i write down for 62 psi", "kpa", 62},
		{"they want kPa on the form. 62 psi is?", "kpa", 62},
		{"45 metros de columna de agua, cuántas libras son?", "psi", 45},
		{"engineer says design for 140 feet of head. psi?", "psi", 140},
	} {
		f := p.Parse(c.text, Context{})
		if len(f.Statements) != 1 {
			t.Errorf("%q: %v", c.text, f.Statements)
			continue
		}
		if a, ok := f.Statements[0].(Ask); !ok || a.About != AskConvert || a.To != c.to || a.Value == nil || *a.Value != c.value {
			t.Errorf("%q: %v", c.text, f.Statements[0])
		}
	}
	f := p.Parse("what size exp tank: 50 gal heater, cold in at 55, hot set at 125, system at 64 psi", Context{})
	if a, ok := f.Statements[0].(Ask); !ok || a.InletF == nil || *a.InletF != 55 || a.PSI == nil || *a.PSI != 64 {
		t.Errorf("a tank's size asked for with its numbers: %v", f.Statements)
	}
}

func TestWhatAGaugeWentThroughInAWhile(t *testing.T) {
	says(t, [][2]string{
		{"watched it 10 minutes with everything off, 62 to 71, laundry", "62 laundry static; 71 laundry static"},
		{"58 to 74 in half an hour at the kitchen all shut", "58 kitchen static; 74 kitchen static"},
		{"60 to 62 in an hour kitchen", "61 kitchen"},
		{"laundry 60 to 66", "63 laundry"},
	})
}

func TestHotAndColdSides(t *testing.T) {
	says(t, [][2]string{
		{"hot side at laundry 70, cold side 68", "70 laundry; 68 laundry"},
		{"laundry hot 70 cold 68", "70 laundry; 68 laundry"},
		{"laundry 70, cold side 68 degrees", "70 laundry"},
	})
}

func TestWhatWasChangedForAnother(t *testing.T) {
	says(t, [][2]string{
		{"swapped the drain for a brass one", "replaced_drain_valve; drain_valve brass"},
		{"replaced relief valve, it was weeping", "relief_discharge"},
	})
}

func TestWhatALetterBehindANumberIs(t *testing.T) {
	says(t, [][2]string{
		{"laundry only gets to 99 f after a minute", "ask none"},
		{"rear 80 f 84", "80 rear_bibb; 84 rear_bibb"},
	})
}

func TestADigitThatWasFlippedAndATapThatWasDried(t *testing.T) {
	says(t, [][2]string{
		{"I put rear bib and it was the side bib. Number stays, 77", "77 side_bibb; ask correct"},
		{"kitchen faucet wept at the base, put 2 o rings in, dry as can be", "repaired_leak"},
		{"tub spout dripped, new washer in it, dry now", "repaired_leak"},
		{"5 Cannery Row, water's gone", "no_water"},
	})
}

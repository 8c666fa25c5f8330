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
	})
}

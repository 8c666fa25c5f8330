package intents

import "testing"

func TestASettingToldBeforeItsRegulator(t *testing.T) {
	says(t, [][2]string{
		{"soft copper, so we only went up to 58 on the regulator, tub 59 after", "set_prv to 58; 59 bath after"},
		{"took it to 57 on the regulator, laundry 58", "set_prv to 57; 58 laundry"},
		{"settled on 62 at the prv, front bib 62", "set_prv to 62; 62 front_bibb"},
		{"came down to 60 on the prv, hose bib 61", "set_prv to 60; 61 bibb"},
		{"went no higher than 55 on the prv, kitchen 56", "set_prv to 55; 56 kitchen"},
		{"went from 92 to 61 on the prv, kitchen 62", "set_prv to 61 from 92; 62 kitchen"},
		{"went with 60 on the prv", "set_prv to 60"},
		{"have it at 60 on the prv, kitchen 61", "prv set 60; 61 kitchen"},
		{"left it at 63 on the regulator, kitchen 64", "prv set 63; 64 kitchen"},
		{"60 on the prv, kitchen 61", "61 kitchen"},
		{"didn't go to 60 on the prv, kitchen 75", "75 kitchen"},
		{"kitchen went to 62 with the new prv", "62 kitchen"},
		{"got 72 on the prv", "ask none"},
		{"didn't want to push it so I went up to 65 on the regulator", "set_prv to 65"},
		{"wouldn't push it, pipes are old. tub 66", "66 bath"},
	})
}

func TestASettingToldLast(t *testing.T) {
	says(t, [][2]string{
		{"I set the regulator lower, to 400 kPa", "set_prv to 58"},
		{"I have set the reducing valve lower, at 4.0 bar", "set_prv to 58"},
		{"set the prv down, to 58", "set_prv to 58"},
		{"adjusted the prv lower, to 55", "set_prv to 55"},
		{"turned the prv lower to 60", "set_prv to 60"},
		{"put the regulator lower to 55", "set_prv to 55"},
		{"pumped up the tank, to 60", "charged_tank to 60"},
		{"le bajé a la reguladora, a 58", "set_prv to 58"},
		{"I will set the regulator lower, to 58", "plan set_prv"},
		{"did not set the regulator lower, to 58", "ask none"},
		{"set the prv lower, front bib to 58", "set_prv; 58 front_bibb"},
		{"set the regulator lower, the laundry dropped, to 58", "set_prv; 58 laundry"},
		{"kitchen went lower, to 58", "58 kitchen"},
	})
}

// Without a comma a tap behind what a setting was may be the next number's.
func TestWhatASettingWasAndATapBehindIt(t *testing.T) {
	says(t, [][2]string{
		{"chrgd tnk to 60 was 38 lndry 61", "charged_tank to 60 from 38; 61 laundry"},
		{"swapped prv, 77 Pine Rd, set it at 60, was 110 laundry now 61", "replaced_prv to 60; 110 laundry before; 61 laundry after"},
		{"charged tank to 60 was 38 laundry now 61", "charged_tank to 60 from 38; 61 laundry after"},
		{"charged tank to 60 was 38 laundry 61 no leaks", "charged_tank to 60 from 38; 61 laundry; no leak"},
		{"pumped tank up to 60 psi was 38 psi kitchen 61 psi", "charged_tank to 60 from 38; 61 kitchen"},
		{"set prv to 60 was 85 kitchen 61", "set_prv to 60 from 85; 61 kitchen"},
		{"set prv to 60 it was 85 static kitchen 61", "set_prv to 60 from 85; 61 kitchen static"},
		{"tank to 60 was 38, kitchen 61", "charged_tank to 60 from 38; 61 kitchen"},
		{"bajé la reguladora a 60 estaba en 85 cocina 61", "set_prv to 60 from 85; 61 kitchen"},
		{"set prv to 60 was 85 kitchen", "set_prv to 60; 85 kitchen before"},
		{"set prv to 60 was 85 at the kitchen", "set_prv to 60; 85 kitchen before"},
		{"set prv to 60 kitchen was 85 laundry 61", "set_prv to 60; 85 kitchen before; 61 laundry before"},
		{"charged tank to 60, kitchen was 58 now 61", "charged_tank to 60; 58 kitchen before; 61 kitchen after"},
	})
}

func TestANumberWhoseTakingIsToldBetweenItAndItsTap(t *testing.T) {
	says(t, [][2]string{
		{"washer manual says max 100 so the 112 I just got at the laundry is too much", "112 laundry"},
		{"the 88 I took at the tub is out of range", "88 bath"},
		{"the 91 we read on the rear bib is high", "91 rear_bibb"},
		{"supply lines say 125 psi max on the tag.. left the gauge on the back spigot all weekend n it peaked at 142", "142 rear_bibb peak"},
		{"supply line tag says 125 max. kitchen 88", "88 kitchen"},
		{"faucet supply says 125 max.. laundry 88", "88 laundry"},
		{"supply lines 125 max, kitchen 88", "88 kitchen"},
		{"label on the dishwasher says 120 max. kitchen 88", "88 kitchen"},
		{"hose bib hit 125 max overnight", "125 bibb peak"},
		{"fill valve is rated 125 so the 131 we got at the hose bib explains it", "131 bibb"},
	})
}

func TestASpokenYearIsNotCutInTwo(t *testing.T) {
	says(t, [][2]string{
		{"regulator was installed twenty nineteen customer says the kitchen is weak", "prv year 2019; low_flow"},
		{"they put the tank in twenty fifteen she says the shower goes up and down", "expansion_tank year 2015; swings"},
		{"check valve put in twenty twenty two and the shower whistles", "check_valve year 2022; noise"},
	})
}

func TestWhatTheRegulatorWasDialledToBefore(t *testing.T) {
	says(t, [][2]string{
		{"backed the regulator off, it was dialed at 90, dialed at 65 when I left", "set_prv to 65 from 90"},
		{"eased the prv down, it was cranked to 100, sits at 62 now by the dial", "set_prv to 62 from 100"},
		{"lowered the reg, had been dialed at 88, it's dialed at 60 now", "set_prv to 60 from 88"},
		{"cranked the prv back, found it dialed at 110, left it dialed at 70", "set_prv to 70 from 110"},
		{"reg turned down, somebody had it dialed up to 95, kitchen 61 now", "set_prv from 95; 61 kitchen after"},
	})
}

func TestWaterShutOffPartsNoPressures(t *testing.T) {
	says(t, [][2]string{
		{"Shut the water off at the main. The tub gauge had 118", "shut_off; 118 bath"},
		{"shut it off at the curb, kitchen was 126", "shut_off; 126 kitchen"},
		{"kitchen had 126 before I shut the water off", "126 kitchen before; shut_off"},
		{"replaced the prv. The kitchen had 126", "replaced_prv; 126 kitchen before"},
	})
}

func TestAPartSetFromOneNumberToAnother(t *testing.T) {
	says(t, [][2]string{
		{"reg set 92 to 60, rr bib 61 after", "set_prv to 60 from 92; 61 rear_bibb after"},
		{"prv set 45 to 60, kitchen 61", "set_prv to 60 from 45; 61 kitchen"},
		{"prv brought 105 to 60, tub 62", "set_prv to 60 from 105; 62 bath"},
		{"exp tank set 40 to 60, laundry 62", "charged_tank to 60 from 40; 62 laundry"},
		{"reg set at 60 to match the tank, kitchen 61", "prv set 60; 61 kitchen"},
		{"want the reg set 92 to 60", "plan set_prv"},
		{"heater set 140 to 120, kitchen 61", "heater 120 F; 61 kitchen"},
	})
}

func TestYearsThatThingsAreSpokenToBeFrom(t *testing.T) {
	says(t, [][2]string{
		{"prv is from ninety eight heater is from oh four side bib seventy seven", "prv year 1998; heater year 2004; 77 side_bibb"},
		{"prv is from ninety eight side bib seventy seven", "prv year 1998; 77 side_bibb"},
		{"heater is from oh nine kitchen sixty one", "heater year 2009; 61 kitchen"},
		{"prv is from sixty to sixty five", "set_prv to 65 from 60"},
	})
}

package intents

import "testing"

// What one crew says in place of another's words: states, times, doubts and facts put in
// the places of phrases that are known, and look-alikes that say nothing of the kind. The
// messages are our own.
func TestPhrasesThatStandForOneAnother(t *testing.T) {
	reads(t, [][2]string{
		{"laundry 70, heater not cycling", "laundry 70 idle"},
		{"laundry 70 with just the pilot lit", "laundry 70 idle"},
		{"laundry 70, no elements on", "laundry 70 idle"},
		{"laundry 70, heater finished its cycle", "laundry 70 idle"},
		{"laundry 70, heater turned down to pilot", "laundry 70 idle"},
		{"laundry 70 before the burner lit", "laundry 70 idle"},
		{"laundry 72 before the burner lit, 96 once it was heating", "laundry 72 idle; laundry 96 firing"},
		{"laundry 96, heater drawing power", "laundry 96 firing"},
		{"laundry 96 during a burn", "laundry 96 firing"},
		{"laundry 96, main burner going", "laundry 96 firing"},
		{"kitchen 63, 0 flow", "kitchen 63 static"},
		{"kitchen 48 under demand", "kitchen 48 flowing"},
		{"kitchen 48 with a faucet cracked open", "kitchen 48 flowing"},
		{"24 hour high 144 at the laundry, 70 now", "laundry 144 peak; laundry 70"},
		{"the gauge at the laundry never went above 122 overnight", "laundry 122 peak"},
		{"spigot on the front wall 65", "front_bibb 65"},
		{"98 at an outside hb", "bibb 98"},
		{"91 at the faucet by the back porch", "rear_bibb 91"},
		{"70 in the main kitchen sink", "kitchen 70"},
		{"80 more or less out front", "front_bibb 80"},
		{"a shade under 75 at the back", "rear_bibb 75"},
		// near misses
		{"laundry 70, heater down in the basement", "laundry 70"},
		{"laundry 70, heater is on order", "laundry 70"},
		{"laundry 70, 40 gal heater on natural gas", "laundry 70"},
		{"laundry 70, nothing on file", "laundry 70"},
		{"laundry 70, running behind today", "laundry 70"},
		{"relief drips when the heater fires, laundry 96", "laundry 96"},
		{"gauge won't return to zero, 70 kitchen", "kitchen 70"},
		{"tank is at 38, line pressure 72 at the washer", "laundry 72"},
	})
}

func TestFactsThatStandForOneAnother(t *testing.T) {
	says(t, [][2]string{
		{"prv can't be saved", "prv failed"},
		{"reg is wiped out", "prv failed"},
		{"prv near the end of its life", "prv suspect"},
		{"prv losing its grip", "prv suspect"},
		{"regulator responds well to adjustment", "prv good"},
		{"zero air in the tank", "expansion_tank failed"},
		{"exp tank won't take air", "expansion_tank failed"},
		{"no expansion tank installed", "expansion_tank none"},
		{"no expansion tank was ever put in", "expansion_tank none"},
		{"no expansion tank to speak of", "expansion_tank none"},
		{"no check in the meter box", "check_valve none"},
		{"prv, no date code", "prv age unknown"},
		{"heater in service 9 years", "heater year 2017"},
		{"prv since 1994", "prv year 1994"},
		{"heater is 15 this year", "heater year 2011"},
		{"the gauge may be a little off", "gauge suspect"},
		{"my gauge isn't reliable", "gauge suspect"},
		{"gauge won't go back to zero", "gauge suspect"},
		{"tank is at 38", "expansion_tank set 38"},
		{"prv set somewhere around 60", "prv set 60"},
		{"prv was left set at 65", "prv set 65"},
		{"heater temperature setting 125", "heater 125 F"},
		{"thermostat reads 130", "heater 130 F"},
		// near misses
		{"heater never been drained or flushed", "heater never maintained"},
	})
}

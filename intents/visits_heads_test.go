package intents

import "testing"

// Visit notes in lines: what a head, a list and a closing word reach over.
func TestHeadsOfVisitNotes(t *testing.T) {
	readSpanish(t, []struct{ text, want string }{
		{"Measured, heater idle, nothing open:\nkitchen 66\nMeasured, heater firing:\nkitchen 85", "66 kitchen idle static; 85 kitchen firing"},
		{"meter 108\ntub 63\nall static, burner off\nthen burner on, tub 97\nno exp tank", "108 street idle static; 63 bath idle static; 97 bath firing; expansion_tank: none"},
		{"street 114, after PRV 66\ntub 65, all of it with nothing running", "114 street static; 65 bath static; 66 after_prv static"},
		{"front was 90, set the prv to 60. Now kitchen 60, front 61.", "60 kitchen after; 61 front_bibb after; 90 front_bibb before; set_prv >60"},
		{"starting: front 110\ndid: prv down to 60\nending: front 60", "110 front_bibb before; 60 front_bibb after; set_prv >60"},
		{"INSTALLED PRV AND EXP TANK, BOTH AT 60\nFRONT BIB AFTER 61", "61 front_bibb after; installed_prv >60; installed_tank >60"},
		{"The regulator, tank and heater are all from 2025.", "expansion_tank: 2025; heater: 2025; prv: 2025"},
		{"the prv and the tank both went in in 2019 and both look good", "expansion_tank: 2019 good; prv: 2019 good"},
		{"ST 74\nHB SIDE 73\nK 71", "71 kitchen; 73 side_bibb; 74 street"},
		{"laundry 71, heater recovering. At the same box it was 63 an hour earlier with the heater idle.", "63 laundry idle; 71 laundry firing"},
		{"Couldn't see the heater or the regulator. Front 72.", "72 front_bibb"},
		{"the relief valve is capped, I pointed it out to the owner. laundry 91", "91 laundry; relief_blocked"},
		{"tank dead\nswapping the tank tomorrow at 8", "expansion_tank: failed; plan replace_tank 1"},
		{"wh 50g elec 14 sp 130", "heater: 2014 50gal electric 130F"},
		{"front ~88~ 78 (typo)\nrear 77", "77 rear_bibb; 78 front_bibb"},
		{"customer is thinking about it, call her back in 5 days", "plan other 5"},
		{"laundry 94 with elements on; cold, 70", "70 laundry idle; 94 laundry firing"},
	})
}

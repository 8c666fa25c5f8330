package intents

import "testing"

// Rest told once, before a row of pressures or behind it, holds of the whole row; what is told beside running
// water, or of one tap, does not.
func TestRestToldOnceReachesItsRow(t *testing.T) {
	reads(t, [][2]string{
		{"12 Elm St. Kitchen 60, powder room 60, rear bib 61. The heater was not firing and I had nothing open.", "kitchen 60 idle static; bath 60 idle static; rear_bibb 61 idle static"},
		{"12 Elm St. Front 71, laundry 70, tub 70. Burner off and nothing running.", "front_bibb 71 idle static; laundry 70 idle static; bath 70 idle static"},
		{"front 71, laundry 70, tub 70. Nothing running, burner off.", "front_bibb 71 idle static; laundry 70 idle static; bath 70 idle static"},
		{"I got 71 on the front bib, 70 at the laundry and 70 in the tub. Every tap was shut and the heater idle.", "front_bibb 71 idle static; laundry 70 idle static; bath 70 idle static"},
		{"I measured: shower 57, kitchen 58, side hose tap 59. That's with no flow and the tankless not heating.", "bath 57 idle static; kitchen 58 idle static; side_bibb 59 idle static"},
		{"Measured shower 57, kitchen 58, side bib 59. That was with nothing running.", "bath 57 static; kitchen 58 static; side_bibb 59 static"},
		{"in number 9 I got the tub at 64, kitchen at 65 and the washer at 65 with every faucet shut and the water heater not firing", "bath 64 idle static; kitchen 65 idle static; laundry 65 idle static"},
		{"tub at 64, kitchen at 65 and the washer at 65 with all taps closed and the burner off", "bath 64 idle static; kitchen 65 idle static; laundry 65 idle static"},
		{"64 tub, 65 kitchen, 65 washer with the water heater off and every tap shut", "bath 64 idle static; kitchen 65 idle static; laundry 65 idle static"},
		{"front faucet was sixty two back faucet was sixty one and the laundry was sixty two, water heater was idle and there wasn't any water running", "front_bibb 62 idle static; rear_bibb 61 idle static; laundry 62 idle static"},
		{"kitchen sixty two tub sixty one laundry sixty two heater off and nobody using any water", "kitchen 62 idle static; bath 61 idle static; laundry 62 idle static"},
		{"so I had seventy at the kitchen and seventy one out back and there was nothing running and the heater was off", "kitchen 70 idle static; rear_bibb 71 idle static"},
		{"kitchen 62 tub 61 laundry 62, no water running and heater idle", "kitchen 62 idle static; bath 61 idle static; laundry 62 idle static"},
		{"kitch 61 / rear bib 62 / tub 60, htr off, nothing on", "kitchen 61 idle static; rear_bibb 62 idle static; bath 60 idle static"},
		{"kitch 61 / rear bib 62, elements off, all closed", "kitchen 61 idle static; rear_bibb 62 idle static"},
		{"kitchen 61\nrear bib 62\nnothing running, heater off", "kitchen 61 idle static; rear_bibb 62 idle static"},
		{"- kitchen 61\n- rear bib 62\n- tub 60\n- all taps closed, heater idle", "kitchen 61 idle static; rear_bibb 62 idle static; bath 60 idle static"},
		{"Readings:\nkitchen 61\nrear bib 62\nConditions: nothing running, burner off", "kitchen 61 idle static; rear_bibb 62 idle static"},
		{"Nothing running, burner off. Kitchen 61. Rear bib 62. Tub 60.", "kitchen 61 idle static; rear_bibb 62 idle static; bath 60 idle static"},
		{"Cocina 61, llave de atrás 62, lavadora 61. Boiler apagado y nada abierto.", "kitchen 61 idle static; rear_bibb 62 idle static; laundry 61 idle static"},
		{"tomé 61 en la cocina y 62 en la lavadora, con el boiler apagado y todo cerrado", "kitchen 61 idle static; laundry 62 idle static"},
		{"kitchen 62, tub 61. Nothing running.", "kitchen 62 static; bath 61 static"},
		{"kitchen 62 and the tub 61. No water moving anywhere.", "kitchen 62 static; bath 61 static"},
		{"kitchen 62, tub 61 with nothing running", "kitchen 62; bath 61 static"},
		{"street 118, kitchen 62 static", "street 118; kitchen 62 static"},
		{"meter 118, kitchen 62 with everything shut and 48 with the tub running", "street 118; kitchen 62 static; kitchen 48 flowing"},
		{"kitchen 48 with the tub running, 62 with it all off and the heater idle", "kitchen 48 idle flowing; kitchen 62 idle static"},
		{"kitchen 48 with the tub running. 62 with nothing running, heater idle.", "kitchen 48 idle flowing; kitchen 62 idle static"},
		{"city side was 118, with a hose running out back the kitchen faucet dropped to 52 and with everything shut it came up to 64 and it just sits there no creep", "street 118; kitchen 52 flowing; kitchen 64 static"},
		{"lock up test and the burner was off for every bit of it, city side was one eighteen, with a hose running out back the kitchen faucet dropped to fifty two and with everything shut it came up to sixty four and it just sits there no creep", "street 118 idle; kitchen 52 idle flowing; kitchen 64 idle static"},
	})
}

// Readings of a note before and after its work, and what is told of the water between them.
func TestTimesAndRestOfANotesReadings(t *testing.T) {
	reads(t, [][2]string{
		{"12 Elm St. Changed the drain valve. Before I opened anything the front spigot was 74, afterwards, all buttoned up and no water moving, it's 74 again out front.", "front_bibb 74 before; front_bibb 74 static after"},
		{"Swapped the heater. Before I touched a thing the kitchen was 70, afterwards, with everything shut, it was 71.", "kitchen 70 before; kitchen 71 static after"},
		{"Replaced the prv. before I started the laundry was 96, after, nothing running, it's 60", "laundry 96 before; laundry 60 static after"},
		{"New heater in. before I drained the old one the tub read ninety and the kitchen ninety one and after with nothing running the tub is eighty nine and the kitchen is ninety", "bath 90 before; kitchen 91 before; bath 89 static after; kitchen 90 static after"},
		{"I swapped the regulator, before the swap the tub was 95 and the kitchen 96, and after with everything off the tub is 60 and the kitchen is 61", "bath 95 before; kitchen 96 before; bath 60 static after; kitchen 61 static after"},
		{"replaced the prv, with all taps closed the tub is 60 and the kitchen is 61", "bath 60 static; kitchen 61 static"},
		{"Put a regulator in at 3118 Tumbleweed Dr, house never had one. Kitchen was 124 before and the lav 122. Set the new one at 60. With it in and all faucets closed kitchen is 61 and the lav 60.", "kitchen 124 before; bath 122 before; kitchen 61 static after; bath 60 static after"},
		{"Replaced the prv, kitchen was 104. With the new one in and nothing running the kitchen is 60 and the tub 59.", "kitchen 104 before; kitchen 60 static after; bath 59 static after"},
		{"Installed a prv. Street 120, kitchen 119 before. With it in and everything shut the kitchen is 61.", "street 120 before; kitchen 119 before; kitchen 61 static after"},
		{"Tankless went in where the old tank heater used to be, 52 Pepperwood Gln. Tub before: 59. Tub after, nothing drawing: 58. Shower after with the tub filling: 44.", "bath 59 before; bath 58 static after; bath 44 flowing after"},
		{"New prv went in where the old Y used to be. Kitchen before: 101. Kitchen after, all closed: 60. Kitchen after with the shower going: 51.", "kitchen 101 before; kitchen 60 static after; kitchen 51 flowing after"},
		{"Put a new tank where the old one was. Laundry before: 92. Laundry after, nothing running: 64.", "laundry 92 before; laundry 64 static after"},
		{"Job of this morning: 2240 Thornapple Bend.\n* 640 kPa side tap when I came, heater off\n* no reducer was there, I mounted one and set it to 400 kPa\n* 405 kPa side tap when I went, heater off", "side_bibb 92.8 idle before; side_bibb 58.7 idle after"},
		{"swapped the prv. 96 kitchen when I got there, 60 kitchen when I left", "kitchen 96 before; kitchen 60 after"},
		{"swapped the prv. kitchen 96 when I came, kitchen 60 when I went", "kitchen 96 before; kitchen 60 after"},
		{"adjusted the reg. 96 tub when we came in, 60 tub when we headed out", "bath 96 before; bath 60 after"},
		{"adjusted the reg. 96 tub when I walked in, 60 tub as I packed up", "bath 96 before; bath 60 after"},
		{"kitchen was 96. replaced the prv, now 60", "kitchen 96 before; kitchen 60 after"},
		{"the tub was 96 and the kitchen was 95. Replaced the prv and set it to 60.", "bath 96 before; kitchen 95 before"},
		{"kitchen 96 before and 60 after, replaced the prv, with it in no more banging", "kitchen 96 before; kitchen 60 after"},
		{"kitchen was 104 with nothing running. swapped the prv. kitchen is 60 now", "kitchen 104 static before; kitchen 60 after"},
		{"Reg adjusted. Both before and after with all the taps shut: kitchen 90 before, 60 after.", "kitchen 90 static before; kitchen 60 static after"},
	})
}

// A part that went in where the old one stood is a replacement, and what is told of the old one is not its.
func TestPartsPutWhereTheOldOneStood(t *testing.T) {
	says(t, [][2]string{
		{"Tankless went in where the old tank heater used to be, 52 Pepperwood Gln.", "replaced_heater; heater tankless"},
		{"New prv went in where the old one used to be, set to 60.", "replaced_prv to 60"},
		{"New regulator went in where the old one was.", "replaced_prv"},
		{"Heat pump heater went in where the old gas one was.", "replaced_heater; heater heat_pump"},
		{"a 50 gal electric went in where the old gas heater stood", "replaced_heater; heater 50 gal electric"},
		{"new exp tank hung where the old one had been, charged to 58", "replaced_tank to 58"},
		{"put a new prv where the old one was", "replaced_prv"},
		{"Put a new tank where the old one was.", "replaced_tank"},
		{"new tank where the old one hung, pumped to 60", "replaced_tank to 60"},
		{"PRV went in where the old one was in 2019", "prv year 2019"},
		{"a new heater goes in Tuesday where the old one is", "plan other in 1"},
	})
}

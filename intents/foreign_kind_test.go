package intents

import "testing"

// Numbers that are measured, paid or counted and are no pressure of the house, and
// pressures that stand beside them.
func TestNumbersOfAnotherKind(t *testing.T) {
	reads(t, [][2]string{
		{"hardness 18 at the kitchen", ""},
		{"hardness test at the kitchen tap said 22", ""},
		{"checked hardness, front bib 71", "front_bibb 71"},
		{"battery at 80 on the gauge, kitchen 66", "kitchen 66"},
		{"elevation 410, street 88", "street 88"},
		{"scald check: lav 121, tub 119", ""},
		{"gauge maxes at 200, street 130", "street 130"},
		{"gauge tops out at 200, rear 90", "rear_bibb 90"},
		{"pressure switch 40/60, kitchen 48", "kitchen 48"},
		{"pump comes on at 40 and off at 60", ""},
		{"switch cuts in at 40 and out at 60, tub 50", "bath 50"},
		{"pump cuts out at 62, kitchen 60", "kitchen 60"},
		{"tank weighs 40 lbs, front 66", "front_bibb 66"},
		{"it's a 25 series reg, front 70", "front_bibb 70"},
		{"rear in 20", ""},
		{"sale at the outlet, 2 for 120", ""},
		{"invoice 88 front 64", "front_bibb 64"},
		{"ninety fo at the front", ""},
		{"front ninety ate", ""},
		{"rear ninety for", ""},
		{"meter box is 18 deep, 105 at the meter", "street 105"},
		{"ran 60 of pex to the kitchen", ""},
		{"rear deck is 12 by 14, rear bib 60", "rear_bibb 60"},
		{"walked 200 yards to the meter", ""},
		{"20 under at the kitchen", ""},
		{"front 12 above setpoint", ""},
		{"rear up 14", ""},
		{"rear is ninety five", "rear_bibb 95"},
		{"front ninety for the third time", "front_bibb 90"},
		{"gauge is in meters of water and goes up to 60", ""},
		{"gauge in hand goes up to 10 bar. kitchen 4.2 bar", "kitchen 60.9"},
		{"este manometro marca hasta 100. lavadora 70", "laundry 70"},
		{"crawlspace smells like forty ashtrays, side spigot's a healthy 62", "side_bibb 62"},
		{"house looks like sixty owls moved in", ""},
	})
}

// Two pressures that before and after are told of in one breath.
func TestBeforeAndAfterInARow(t *testing.T) {
	reads(t, [][2]string{
		{"turned the reg down. before/after at the rear 118/61", "rear_bibb 118 before; rear_bibb 61 after"},
		{"dropped the prv, before at the rear 118 after 61", "rear_bibb 118 before; rear_bibb 61 after"},
		{"rear before 118 after 61, new prv in", "rear_bibb 118 before; rear_bibb 61 after"},
		{"cranked the prv down, rear 118 before 61 after", "rear_bibb 118 before; rear_bibb 61 after"},
		{"cambie la reguladora, antes y despues atras 118 y 61", "rear_bibb 118 before; rear_bibb 61 after"},
	})
}

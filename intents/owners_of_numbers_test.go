package intents

import "testing"

// A thing that is named only at the end is the one that all was told of.
func TestThingsNamedLast(t *testing.T) {
	says(t, [][2]string{
		{"put it at 58, the prv i mean", "set_prv to 58"},
		{"put it at 55, the regulator. rear 56 after", "56 rear_bibb after; set_prv to 55"},
		{"set it to 62. the regulator that is", "set_prv to 62"},
		{"bumped it up to 65 (the prv)", "set_prv to 65"},
		{"pumped it to 60, the tank i mean", "charged_tank to 60"},
		{"set it at 120, the heater not the prv", "heater 120 F"},
		{"brought it from 90 to 60, the prv", "set_prv to 60 from 90"},
		{"it's set at 60, the prv", "prv set 60"},
		{"its a 2011, the prv", "prv year 2011"},
		{"it's 12 years old, the heater that is", "heater year 2014"},
		{"it's from 2008. the prv i mean", "prv year 2008"},
		{"it's shot, the tank i mean", "expansion_tank failed"},
		{"lo puse en 58, el tanque digo", "charged_tank to 58"},
		{"la deje en 60, la reguladora digo", "set_prv to 60"},
		{"left the prv at 60, rear 61", "61 rear_bibb; prv set 60"},
		{"rebuilt the prv. left the reg at 58", "rebuilt_prv to 58"},
	})
}

// A house may have two of a thing: what differs is left out.
func TestTwoOfAThing(t *testing.T) {
	says(t, [][2]string{
		{"two regs here. upper set 60, lower set 75", ""},
		{"upper reg set 60, lower reg set 75", ""},
		{"first prv set 60, second prv set 75", ""},
		{"2 regulators, domestic set at 55, yard set at 80", ""},
		{"two heaters, one set 120 other set 140", ""},
		{"upstairs heater 2010, downstairs heater 2016", ""},
		{"heater 1 40 gal gas 2010, heater 2 50 gal gas 2016", "heater gas"},
		{"2 water heaters, both 2015, both 50 gal", "heater year 2015 50 gal"},
		{"prv was set 75, set it to 60", "set_prv to 60 from 75"},
	})
}

// What a house lacks has no age, and what everything has in common everything has.
func TestYearsOfAllAndOfNothing(t *testing.T) {
	says(t, [][2]string{
		{"no prv. copper from 1962", "prv none"},
		{"no exp tank. old galvanized. from 1962", "expansion_tank none"},
		{"no prv. 12 yrs old", "prv none"},
		{"no tank. 2012 heater", "expansion_tank none; heater year 2012"},
		{"no hay reguladora. tubería de 1962", "prv none"},
		{"everything in the closet is 2019", "ask none"},
		{"all 2019: prv, tank, heater", "expansion_tank year 2019; heater year 2019; prv year 2019"},
		{"everything down there is from 2019: heater, tank, softener", "expansion_tank year 2019; heater year 2019; softener year 2019"},
		{"heater/tank/prv all same year 2019", "expansion_tank year 2019; heater year 2019; prv year 2019"},
		{"PRV 2009, check none, tank none", "check_valve none; expansion_tank none; prv year 2009"},
		{"Heater: 40 gal\ncheck: none", "check_valve none; heater 40 gal"},
		{"check? none", "check_valve none"},
	})
}

// What was offered and refused is neither done nor there.
func TestOffersRefused(t *testing.T) {
	says(t, [][2]string{
		{"he turned down the new prv", "ask none"},
		{"they turned the new prv down", "ask none"},
		{"owner turned down the new tank", "ask none"},
		{"turned down the new prv to 60", "set_prv to 60"},
		{"quoted a heater flush", "plan other"},
		{"quoted her a heater flush", "plan other"},
		{"quoted a flush on the heater", "plan other"},
		{"needs a heater flush", "plan other"},
		{"le coticé lavado del boiler", "plan other"},
		{"wanted to flush the heater, drain valve is stuck", "drain_valve failed"},
		{"heater dialed at 125 then prv 2008", "heater 125 F; prv year 2008"},
	})
}

// The warmth of a tap, the size of a heater and the lie of a house are no pressures.
func TestNumbersOfOtherThings(t *testing.T) {
	says(t, [][2]string{
		{"tub came out 121", ""},
		{"shower is 118 hot", ""},
		{"kitchen hot 128, pressure 62", "62 kitchen"},
		{"got 140 out of the tub, way too hot", ""},
		{"boiler de 50 en la cochera", "heater 50 gal"},
		{"calentador de 40 en la cocina", "heater 40 gal"},
		{"tanque de 80 puesto a 140", "heater 80 gal 140 F"},
		{"30 arriba de la calle", "ask none"},
		{"running two taps 58, 12 Elm", "58 flowing"},
		{"rear 70, running two taps 58, 12 Elm", "58 rear_bibb flowing; 70 rear_bibb"},
		{"12 Elm St, lazy hand says 141 at the washer, settles 76", "141 laundry peak; 76 laundry"},
		{"12 Elm St, laundry 76 w lazy hand at 141", "141 laundry peak; 76 laundry"},
		{"12 Elm St, lazy hand 141 laundry, main needle 76", "141 laundry peak; 76 laundry"},
	})
}

// What a regulator is set to, told beside or without what it was before.
func TestWhatARegulatorIsSetTo(t *testing.T) {
	says(t, [][2]string{
		{"reg cranked down from 95, kitchen now 61", "61 kitchen after; set_prv from 95"},
		{"reset to 60 from 90. kitchen 61", "61 kitchen; set_prv to 60 from 90"},
		{"prv is rated 150 and set for 60 and getting weak", "prv set 60 suspect"},
		{"prv was a 2003, new one is in and set at 58", "replaced_prv to 58"},
		{"pulled the prv, new one is in at 58", "replaced_prv to 58"},
		{"they have a booster set at 70, laundry 71", "71 laundry"},
		{"1st prv 128->85, 2nd prv 85->60. tub 60", "60 bath; set_prv"},
		{"prv1 set 62 prv2 set 50", ""},
		{"reg reads 70 on its own gauge, kitchen 71", "71 kitchen"},
		{"tank at 65, reg at 65", "expansion_tank set 65"},
		{"installed tank to 4", "installed_tank"},
		{"turned it from 150 to 120, too hot for the kids", "heater 120 F"},
		{"turned her up to 140, not enough hot water", "heater 140 F"},
		{"21st of june, prv 60", ""},
	})
}

// The size of an expansion tank told without its unit is not its air.
func TestSizesOfTanks(t *testing.T) {
	says(t, [][2]string{
		{"replaced the 2 gal tank w a 4.4, air 64", "expansion_tank 4.4 gal; replaced_tank to 64"},
		{"swapped the tank for a 4.4, charged 64", "expansion_tank 4.4 gal; replaced_tank to 64"},
		{"put in a 4.4 tank at 62", "expansion_tank 4.4 gal; installed_tank to 62"},
		{"hung a 4.4 and charged it 60", "expansion_tank 4.4 gal; installed_tank to 60"},
		{"replaced tank, 4.4, 62 psi", "expansion_tank 4.4 gal; replaced_tank to 62"},
		{"installed exp tank 2.1 gal at 55", "expansion_tank 2.1 gal; installed_tank to 55"},
		{"swapped tank with 2 gal at 60", "expansion_tank 2 gal; replaced_tank to 60"},
		{"XT 2G 58 PSI", "expansion_tank 2 gal set 58"},
	})
}

// What other instruments show, and hands that show the highest.
func TestGaugesAndOtherInstruments(t *testing.T) {
	says(t, [][2]string{
		{"anemometer on their roof says 38, gauge on the side bibb says 66", "66 side_bibb"},
		{"Laundry 74 w/ lazy hand 133 since tues 4pm", "133 laundry peak; 74 laundry"},
		{"needle went to 145 last night (rear, red max hand), sitting at 72 this morning", "145 rear_bibb peak; 72 rear_bibb"},
		{"well pump 40/60, house 52 at the kitchen", "52 kitchen"},
		{"hot 118 cold 58 pressure 62 kitchen", "62 kitchen"},
		{"the gentleman, who is 88, complains of poor pressure in the kitchen", "low_flow"},
		{"gauge port on prv 61", "61 after_prv"},
		{"12 Elm, PRV out 71", "71 after_prv"},
		{"Main prv 62, fire line none", "ask none"},
		{"Bibs: F 81 R 80 S 81. K 62.", "62 kitchen; 80 rear_bibb; 81 front_bibb; 81 side_bibb"},
		{"76 all shut, 41 w/ 2 hoses going, 77 Windmill Pass", "41 flowing; 76 static"},
		{"how many psi is 3 bar, the sailor at 5 Bowsprit Ct wants to know", "ask convert"},
		{"bajó 12 libras con la regadera abierta, 54 en el lavabo", "54 bath flowing"},
		{"Recheck at 88 Tamarack Ln. rear bib 72", "72 rear_bibb"},
	})
}

// Short remarks beside a reading whose numbers are years, weights, prices or other people's.
func TestTalkBesideReadings(t *testing.T) {
	says(t, [][2]string{
		{"rear 71, 12 Elm. Casa del 91", "71 rear_bibb"},
		{"rear 71, 12 Elm. House went up in 58", "71 rear_bibb"},
		{"rear 71, 12 Elm. Construida en el 82", "71 rear_bibb"},
		{"rear 71, 12 Elm. Here since 88", "71 rear_bibb"},
		{"rear 71, 12 Elm. Repiped in 96", "71 rear_bibb"},
		{"rear 71, 12 Elm. 180 lb guy let me in", "71 rear_bibb"},
		{"rear 71, 12 Elm. A 60 lb bag of salt", "71 rear_bibb"},
		{"rear 71, 12 Elm. 40 lb propane", "71 rear_bibb"},
		{"kitchen 66, 30 lbs of salt, 12 Elm", "66 kitchen"},
		{"kitchen 66, 30 lbs of pressure at the tub, 12 Elm", "30 bath; 66 kitchen"},
		{"rear 71, 12 Elm. Photo 62 and 63", "71 rear_bibb"},
		{"rear 71, 12 Elm. Type 70", "71 rear_bibb"},
		{"rear 71, 12 Elm. Batch 60", "71 rear_bibb"},
		{"rear 71, 12 Elm. Took 45 for the part", "71 rear_bibb"},
		{"rear 71, 12 Elm. A dollar 40", "71 rear_bibb"},
		{"rear 71, 12 Elm. 120 to come out", "71 rear_bibb"},
		{"rear 71, 12 Elm. Torqued to 65", "71 rear_bibb"},
		{"rear 71, 12 Elm. Pump set 40/60", "71 rear_bibb"},
		{"rear 71, 12 Elm. Her sister's house has 120", "71 rear_bibb"},
		{"rear 71, 12 Elm. Guy before us had it at 85", "71 rear_bibb"},
		{"rear 71, 12 Elm. They had it at 90", "71 rear_bibb"},
		{"rear 71, 12 Elm. Meter is 90 back", "71 rear_bibb"},
		{"rear 71, 12 Elm. Gasté 45", "71 rear_bibb"},
		{"rear 71, 12 Elm. El reloj de gas 38", "71 rear_bibb"},
		{"rear 71, 12 Elm. Preset 50", "71 rear_bibb"},
		{"rear 71, 12 Elm. 65 in the house on the thermostat", "71 rear_bibb"},
		{"rear 71, 12 Elm. 104 at the spa", "71 rear_bibb"},
		{"rear 71, 12 Elm. Attic is 130", "71 rear_bibb"},
		{"rear 71, 12 Elm. High of 96 today", "71 rear_bibb"},
		{"rear 71, 12 Elm. 24 7", "71 rear_bibb"},
		{"kitchen 66, 16 screws, 12 Elm", "66 kitchen"},
		{"laundry 61, 14 gauge wire, 12 Elm", "61 laundry"},
		{"street 58, air compressor at 90, 12 Elm", "58 street"},
		{"3 psi creep over 10 min at 62, rear", "62 rear_bibb; creep"},
		{"rear: 72 psi (5.0 bar)", "72 rear_bibb"},
		{"kitchen 420 kpa, that's 61", "60.9 kitchen"},
		{"boiler pressure 12 psi cold 20 hot, domestic 65 at the lav", "65 bath"},
		{"hydronic side at 15, dom water 72 kitchen", "72 kitchen"},
		{"reg shot, 0 adj. 131 rear, 131 kit", "131 kitchen; 131 rear_bibb; prv failed"},
		{"need 1 more psi to hit 60, rear 59", "59 rear_bibb"},
		{"no flow 66, w/ flow 50, kitchen", "50 kitchen flowing; 66 kitchen static"},
	})
}

// What stood before and behind a filter, a range of a gauge, and a pressure that is only called so.
func TestNumbersAcrossParts(t *testing.T) {
	says(t, [][2]string{
		{"filter clogged: 71 before it, 33 after it. lav 68", "68 bath"},
		{"softener resin shot, 58 in 41 out, kitchen 40", "40 kitchen; softener failed"},
		{"my 160 maxed out so swapped to the 300, street 171", "171 street"},
		{"dual feed: well side 55, city side 92, kitchen 55", "55 kitchen; 92 street"},
		{"rear 81 and 83. Calling it 82", "81 rear_bibb; 83 rear_bibb"},
		{"PRV 3/4 2014 50psi preset, adj to 62 today, kit 62", "62 kitchen; prv year 2014; set_prv to 62 from 50"},
		{"prv 90/60, kitchen 60", "60 kitchen"},
		{"le cobré 1200 por reguladora y tanque, quedó en 60, cocina 61", "61 kitchen; expansion_tank"},
		{"K=74, tub 73", "73 bath; 74 kitchen"},
	})
}

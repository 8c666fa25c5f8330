package intents

import "testing"

// Messages of few words in which a word stands beside another that takes it for its own. The day is
// 15 June 2026; the messages are our own.

// A town is named by a word that tells elsewhere what a gauge does.
func TestATownNamedLikeAFallIsNone(t *testing.T) {
	says(t, [][2]string{
		{"The pressure at 1412 Ashgrove Circle in Linden Falls is 91 psi. I measured it at the garden hose tap, and the heater was not firing.", "91 bibb idle"},
		{"The pressure at 12 Elm St in Mill Springs is 74 psi.", "74"},
		{"I measured 91 psi at 12 Elm St in Linden Falls, kitchen tap.", "91 kitchen"},
		{"12 Elm St in Cedar Falls: laundry 55, rear 60", "55 laundry; 60 rear_bibb"},
		{"the kitchen at 12 Elm St in Linden drops to 40", "40 kitchen"},
	})
}

// What befalls the house and its water is no trouble of the thing that it lacks.
func TestATroubleOfTheHouseBesideALackedThing(t *testing.T) {
	says(t, [][2]string{
		{"no exp tank hammer when washer shuts off", "expansion_tank none; hammer"},
		{"no tank banging when the washer stops", "expansion_tank none; hammer"},
		{"no exp tank rusty water", "expansion_tank none; rusty_water"},
		{"no softener brown water at the tub", "rusty_water; softener none"},
		{"no exp tank low flow upstairs", "expansion_tank none; low_flow"},
		{"no prv hammer when washer stops", "hammer; prv none"},
		{"no exp tank leak at the kitchen faucet", "expansion_tank none; leak"},
		{"no tank leak", "expansion_tank; no leak"},
		{"no prv leak", "no leak"},
		{"no prv noise", "no noise"},
		{"no tank no hammer", "expansion_tank none; no hammer"},
		{"tank full of water thunks like a log", "expansion_tank failed"},
	})
}

// Feet are a head of water where the head is told at a tap, however high.
func TestHeadOfWaterInFeet(t *testing.T) {
	says(t, [][2]string{
		{"head at the meter 180 ft, nothing running", "78 street static"},
		{"head at kitchen 161 ft burner off", "69.8 kitchen idle"},
		{"pressure head at the back spigot was 170 feet", "73.7 rear_bibb"},
		{"head at the curb 33 m", "46.9 street"},
		{"gauge is in feet of head, 175 ft on the rear bib. put 55 of air in the exp tank, was 31", "75.9 rear_bibb; charged_tank to 55 from 31"},
		{"head of the driveway, meter is 180 ft away", "ask none"},
		{"shower head is 80 ft from the meter", "ask none"},
	})
}

// "I make it" tells what somebody reads; "make it" alone puts the last report right.
func TestWhatSomebodyMakesOfAGauge(t *testing.T) {
	says(t, [][2]string{
		{"I make it 57 psi in the kitchen", "57 kitchen"},
		{"I make it 57 or 58 psi in the kitchen", "57.5 kitchen"},
		{"we make it 62 at the laundry", "62 laundry"},
		{"make it 57", "57; ask correct"},
		{"make that 57 at the kitchen", "57 kitchen; ask correct"},
		{"I make it two weeks", "ask none"},
	})
}

// Taps that are counted and run tell how the number before them was shown; people do not.
func TestPressureWhileCountedTapsRun(t *testing.T) {
	says(t, [][2]string{
		{"49 with 2 hoses running. 66 everything shut", "49 flowing; 66 static"},
		{"49 with two showers going", "49 flowing"},
		{"49 with three heads running", "49 flowing"},
		{"49 w/ 2 zones on", "49 flowing"},
		{"49 2 hoses running", "49 flowing"},
		{"49 with 2 guys here", "ask none"},
	})
}

// What there was none of denies no deed told behind it.
func TestPutInWhereThereWasNone(t *testing.T) {
	says(t, [][2]string{
		{"hung a 2 gal exp tank where there wasn't any n pumped it up to 52", "expansion_tank 2 gal; installed_tank to 52"},
		{"hung a 2 gal exp tank where there weren't none and pumped it up to 52", "expansion_tank 2 gal; installed_tank to 52"},
		{"put a prv in where there wasnt any n set it to 58", "installed_prv to 58"},
		{"didnt swap it n set it to 58", "ask none"},
	})
}

// The highest of a time and what the gauge shows as this is written.
func TestTopsAndAsILookAtIt(t *testing.T) {
	says(t, [][2]string{
		{"gauge on the heater drain, 121 was tops over the weekend. 64 as i look at it", "121 heater_drain peak; 64 heater_drain"},
		{"121 was the top over the weekend at the laundry, 64 at the moment", "121 laundry peak; 64 laundry"},
		{"rear 118 tops overnight, 66 as i'm looking at it", "118 rear_bibb peak; 66 rear_bibb"},
		{"ldry box: lz hnd 126 since Thu, cur 81", "126 laundry peak; 81 laundry"},
		{"ktchn 118 lz hnd", "118 kitchen peak"},
		{"now 81 max 126 laundry", "126 laundry peak; 81 laundry"},
		{"laundry: max 126 cur 81", "126 laundry peak; 81 laundry"},
	})
}

// The side of the house may be told behind the pressure of a bibb that was named before it.
func TestTheSideOfABibbBehindItsPressure(t *testing.T) {
	says(t, [][2]string{
		{"garden tap 102 back of house", "102 rear_bibb"},
		{"grdn tp 102 bck of hse", "102 rear_bibb"},
		{"spigot 77 around back", "77 rear_bibb"},
		{"bibb 77 (rear)", "77 rear_bibb"},
		{"hose bib 77, front yard", "77 front_bibb"},
		{"hose bib 88 front of house 92 back of house", "88 front_bibb; 92 rear_bibb"},
		{"bibb 66 front 68", "66 bibb; 68 front_bibb"},
		{"hose bib 77 back tomorrow", "77 bibb; plan other in 1"},
		{"spigot 77, back flow preventer", "77 bibb; check_valve"},
	})
}

// "passed" is texted for "past", and "ct" for the city.
func TestSidesOfTheRegulatorMisspelt(t *testing.T) {
	says(t, [][2]string{
		{"at the meter 122 and passed the prv 65", "122 street; 65 after_prv"},
		{"65 passed the reg", "65 after_prv"},
		{"118 before the prv, 65 after it. has a softener", "118 street; 65 after_prv; softener"},
		{"inspector passed the prv, kitchen 65", "65 kitchen"},
		{"prv passed inspection, kitchen 65", "65 kitchen"},
		{"ct sd 128 hs sd 77", "128 street; 77 after_prv"},
		{"12 elm ct sd 60", "60 side_bibb"},
	})
}

// A point that only says where a check valve is leaves the number behind it to the tap that has no other.
func TestANumberBetweenACheckValvesPlaceAndATap(t *testing.T) {
	says(t, [][2]string{
		{"no sftnr bfp at mtr 74 sd bb", "74 side_bibb; check_valve; softener none"},
		{"bfp at meter 74 rear", "74 rear_bibb; check_valve"},
		{"no check valve at meter 74 laundry", "74 laundry; check_valve none"},
		{"bfp at meter 110 rear 60", "110 street; 60 rear_bibb; check_valve"},
		{"at meter 74 rear bib 60", "60 rear_bibb; 74 street"},
	})
}

// What opens a door is no pressure, and trucks are the crew where somebody asks how they did.
func TestBuzzersAndTrucks(t *testing.T) {
	says(t, [][2]string{
		{"2nd floor buzzer at 255 Wabash is 76", "ask none"},
		{"intercom is 76 at 255 Wabash", "ask none"},
		{"buzzer 76, kitchen 64", "64 kitchen"},
		{"how did all 4 trucks do since monday", "ask summary"},
		{"how are the 3 vans doing this week", "ask summary"},
		{"how did the truck do on the highway", "ask none"},
		{"the trucks are in the lot", "ask none"},
	})
}

// A sum that is asked for in other words, of a number that another sheet holds.
func TestAskedToTurnAPressureIntoPsi(t *testing.T) {
	says(t, [][2]string{
		{"the builder's paperwork says 620 kPa, can you turn that into psi", "ask convert"},
		{"spec says 620 kPa, turn that to psi for me", "ask convert"},
		{"if 1 bar is 14.5 psi what does 5.5 bar come to", "ask convert"},
		{"what would 620 kpa be", "ask convert"},
		{"what does 35 m make", "ask convert"},
		{"what does the prv come to", "ask none"},
		{"can you turn the prv into 60 psi", "ask none"},
		{"turned that into a mess, 60 psi kitchen", "60 kitchen; set_prv"},
	})
}

// Spanish that is said with respect, and a swing told of times gone by.
func TestSpanishSaidWithRespect(t *testing.T) {
	says(t, [][2]string{
		{"Elimine el último reporte que subí, fue un error. Gracias", "ask undo"},
		{"borre mi último reporte", "ask undo"},
		{"elimine lo que mandé", "ask undo"},
		{"elimine la fuga de la cocina", "repaired_leak"},
		{"decía el señor que la presión subía y bajaba, cambié la reguladora y la dejé en 58", "replaced_prv to 58; swings"},
		{"se quejaba de que la presión bajaba y subía", "swings"},
	})
}

// Resting water told behind the time of a list is that of the list, and a word of time belongs to what it
// stands behind.
func TestWhatLeadsToAListAndWhatEndsOne(t *testing.T) {
	says(t, [][2]string{
		{"before i touched it kitchen was 69. after the swap w/ no water running kitchen 70 shower 69", "69 bath static after; 69 kitchen before; 70 kitchen static after"},
		{"after the swap with the tub running kitchen 50 shower 49", "49 bath flowing after; 50 kitchen flowing after"},
		{"kitchen 62 with the tub running shower 50", "50 bath; 62 kitchen flowing"},
		{"installed tank charged 55 front bibb 57 t&p dry now", "57 front_bibb; installed_tank to 55; no relief_discharge"},
		{"swapped prv front 57 now", "57 front_bibb after; replaced_prv"},
	})
}

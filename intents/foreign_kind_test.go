package intents

import "testing"

// By how much a pressure falls is no pressure, and no complaint; a town may have the name of a fall.
func TestFallsThatAreNoReadings(t *testing.T) {
	says(t, [][2]string{
		{"it falls off 25 psi when somebody showers. front spigot 73 w nothing running", "73 front_bibb static"},
		{"pressure drops off by 25 psi when the tub runs. kitchen 66", "66 kitchen"},
		{"dies down 20 when somebody showers, 70 front", "70 front_bibb"},
		{"pressure falls off when somebody showers. front 73", "low_flow; 73 front_bibb"},
		{"pressure falls off to 30 when the tub runs. kitchen 66", "low_flow; 66 kitchen"},
		{"At 904 Windlass Avenue in Corbin Falls I measured 77 psi on the kitchen faucet.", "77 kitchen"},
		{"at 904 Windlass Ave in Corbin Falls we got 77 at the kitchen", "77 kitchen"},
	})
}

// The corners of a car are told as the sides of a house are.
func TestTyresToldByTheirCorner(t *testing.T) {
	says(t, [][2]string{
		{"left front on van 2 was down to 18 psi this morning, theres a nail in it", "ask none"},
		{"right rear on the truck is at 22", "ask none"},
		{"front left on van 2 is low, 18 psi", "ask none"},
		{"van 2: left front 18, right rear 32", "ask none"},
		{"truck 3: LF 20, RF 32", "ask none"},
		{"van 2 RR at 18 psi nail in it", "ask none"},
		{"passenger rear was 19, put it back to 35", "ask none"},
		{"drivers side front at 28, needs air", "ask none"},
		{"18 psi in the left front of van 2", "ask none"},
		{"aired up the right rear on truck 2 from 18 to 40", "ask none"},
		{"van 2 right rear is at 20, rear spigot 66", "66 rear_bibb"},
		{"left front spigot was down to 18 psi this morning", "18 front_bibb"},
		{"left front spigot 66, truck is in the drive", "66 front_bibb"},
		{"right front 66 and right rear 68, van is acting up", "66 front_bibb; 68 rear_bibb"},
		{"left the van out front, front was 66 psi", "66 front_bibb"},
		{"rr bb 77, van 2 is down", "77 rear_bibb"},
	})
}

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

func TestHowFarAPressureGoesDownIsNoReading(t *testing.T) {
	says(t, [][2]string{
		{"down 30 psi as soon as the irrigation kicks in, side bib 78 all closed", "78 side_bibb static"},
		{"down 20 when the sprinklers start, front 74 static", "74 front_bibb static"},
		{"off 25 lbs whenever the tub runs, kitchen 70", "70 kitchen"},
		{"down by 22 psi the moment the toilet flushes, rear bib 70", "70 rear_bibb"},
		{"side bib 76, down 18 once the irrigation is on", "76 side_bibb"},
		{"side bib down 18 psi from 76", "76 side_bibb"},
		{"20 psi down once the neighbors water, front 64", "64 front_bibb"},
		{"front 74 down 20 psi once the washer fills", "74 front_bibb"},
		{"kitchen loses 15 psi whenever the hose runs, 61 with it shut", "61 kitchen static"},
		{"front bib down to 30 as soon as the irrigation kicks in", "30 front_bibb"},
		{"kitchen down 38 as of this morning", "38 kitchen"},
		{"heater off 38 rear", "38 rear_bibb idle"},
		{"front 38 as soon as the tub opens", "38 front_bibb flowing"},
		{"dropped 12 when I opened the tub, 58", "ask none"},
	})
}

func TestARangeOfNamesIsNoPressure(t *testing.T) {
	says(t, [][2]string{
		{"supply house changed their parking, rows 60 to 75 now, not by the street side", "ask none"},
		{"bays 61 to 70 are ours, the ones on the street side", "ask none"},
		{"shelf 60 to 75 is where the meter parts are", "ask none"},
		{"between rows 60 and 75 by the street", "ask none"},
		{"rooms 60 to 64 are on the street side, front bib 66", "66 front_bibb"},
		{"kitchen hovers 60 to 62", "61 kitchen"},
		{"laundry reading 60 to 62", "61 laundry"},
	})
}

func TestWhatIsNotInTheUnitOfTheMessage(t *testing.T) {
	reads(t, [][2]string{
		{"4.6 bar back yard spigot. replaced a 3/8 supply line on the powder room toilet", "rear_bibb 66.7"},
		{"schedule the tank swap for June 24, between 1 and 3. turned it down to 4 bar on the regulator dial", ""},
		{"gauge in bar: rear 4 to 5, kitchen between 4 and 5", "rear_bibb 58; kitchen 65.3"},
		{"rear 4.2 bar, kitchen 4", "rear_bibb 60.9; kitchen 58"},
	})
}

func TestTheWarmthOfATapIsAskedAbout(t *testing.T) {
	says(t, [][2]string{
		{"hot at the lav maxes at 104, laundry box 66", "66 laundry"},
		{"kitchen hot runs 121, cold 58, pressure 64", "64 kitchen"},
		{"they get 105 at the shower then it goes cold, kitchen 60", "60 kitchen"},
		{"heater display 122, actual at the shower 116", "heater 122 F"},
		{"heater set at 130, tub only gets 118", "heater 130 F"},
		{"heater set at 130, tub 118", "heater 130 F; 118 bath"},
		{"heater dial 140, peak 131 at the kitchen", "heater 140 F; 131 kitchen peak"},
		{"hot side 66 cold side 68 at the kitchen", "66 kitchen; 68 kitchen"},
		{"stat in the hall 72, kitchen 64", "64 kitchen"},
		{"stat 72 kitchen, res 50", "72 kitchen static; 50 kitchen flowing"},
	})
}

func TestNumbersThatArePastOrCounted(t *testing.T) {
	says(t, [][2]string{
		{"two years ago it read 88, kitchen 62 now", "62 kitchen"},
		{"years ago it was 88, kitchen 62", "62 kitchen"},
		{"it was 88 before christmas, kitchen 62", "62 kitchen"},
		{"la cocina marcaba 88 hace dos años, hoy 62", "62 kitchen"},
		{"prv put in 2 years ago, kitchen 62", "prv year 2024; 62 kitchen"},
		{"installed in '14 at 60, kitchen 72 now", "72 kitchen"},
		{"customer counted my steps to the meter box, 140", "ask none"},
		{"counted 3 taps open, kitchen 58", "58 kitchen flowing"},
		{"meter box lid says 88, street side 104", "104 street"},
		{"after 15 it was 71, kitchen", "71 kitchen"},
		{"62 at the kitchen, after 20 it was up to 70", "62 kitchen; 70 kitchen"},
		{"kitchen 58 before, after 60", "58 kitchen before; 60 kitchen after"},
		{"fire riser gauge 110, kitchen 64", "64 kitchen"},
		{"the app says 71, gauge says 66 kitchen", "66 kitchen"},
		{"logged on the app kitchen 66", "66 kitchen"},
		{"booster 80 in 110 out, kitchen 64", "64 kitchen"},
		{"city gauge 88 mine 91 at the meter", "91 street"},
		{"swings 50 to 80 at the kitchen", "swings"},
		{"kitchen surges 48-75", "swings"},
		{"washer is 12, kitchen 68", "68 kitchen"},
	})
}

func TestWhatTheAirOfATankShouldBe(t *testing.T) {
	says(t, [][2]string{
		{"air charge came up 18, should have been 62", "expansion_tank set 18"},
		{"air in the tank is 18, should've been 60", "expansion_tank set 18"},
		{"18 air in the tank, should have been 60, kitchen 62", "expansion_tank set 18; 62 kitchen"},
		{"laundry should have been 62 not 26", "ask correct; 62 laundry"},
	})
}

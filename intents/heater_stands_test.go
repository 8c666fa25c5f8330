package intents

import "testing"

func TestWhatAHeaterStandsAt(t *testing.T) {
	says(t, [][2]string{
		{"gas heater down there is at 130", "heater gas 130 F"},
		{"the heater in the attic is on 125, gas", "heater gas 125 F"},
		{"wh 50 gal elec at 120", "heater 50 gal electric 120 F"},
		{"water heater's up at 140", "heater 140 F"},
		{"heater in the garage, 120 at the rear bib", "120 rear_bibb"},
		{"heater drain at 120", "120 heater_drain"},
		{"gas water heater on 115", "heater gas 115 F"},
		{"gas water heater on, 115 in the kitchen", "115 kitchen firing"},
		{"gas heater on 92 front", "92 front_bibb firing"},
		{"gas heater at 120 and the kitchen reads 61", "heater gas 120 F; 61 kitchen"},
		{"heater on 120, kitchen 62", "heater 120 F; 62 kitchen"},
	})
}

// The warmth of a tap is no heater's setting, and no pressure.
func TestAHeaterSetHotterThanATapRuns(t *testing.T) {
	says(t, [][2]string{
		{"electric heater set at 140, tub runs 118 degrees at best", "heater electric 140 F"},
		{"tub runs 118 degrees at best, electric heater set at 140", "heater electric 140 F"},
		{"gas water heater on 115, the kitchen tap only gets to 101 degrees", "heater gas 115 F"},
		{"electric heater at 125 and the tub gets to 108 degrees tops", "heater electric 125 F"},
		{"shower running hits 118 degrees, heater is set to 120 degrees", "heater 120 F"},
		{"heater at 120 degrees, measured 118 degrees at the tub, kitchen 62 psi", "heater 120 F; 62 kitchen"},
		{"with the tub running heater is set at 125 degrees", "heater 125 F"},
	})
}

func TestAHeaterThatWasOffAllTheTime(t *testing.T) {
	says(t, [][2]string{
		{"The heater is gas, 150 litres, from 2017, and was off during the whole visit. laundry 60", "heater year 2017 39.6 gal gas; 60 laundry idle"},
		{"heater is a 50 gal electric and stayed off throughout. tub 80", "heater 50 gal electric; 80 bath idle"},
		{"The heater is a 2017 gas, set at 120, and was running the whole time. kitchen 90", "heater year 2017 gas 120 F; 90 kitchen firing"},
		{"heater set at 140, way too hot. kitchen 59", "heater 140 F; 59 kitchen"},
	})
}

func TestADialBesideTheWarmthOfTheWater(t *testing.T) {
	says(t, [][2]string{
		{"electric 50 gal, dial says 125 but only 99 degrees gets to the lav", "heater 50 gal electric 125 F"},
		{"dial says 140 but only 110 degrees at the tub", "heater 140 F"},
		{"dial at 125, only 99 deg gets to the tub", "heater 125 F"},
		{"heater set at 125 but only 99 F reaches the lav, laundry 64", "heater 125 F; 64 laundry"},
		{"99 degrees is all the lav gets with the dial on 125", "heater 125 F"},
		{"only 101 degrees makes it to the tub, kitchen 62", "62 kitchen"},
		{"dial says 125 on the front bib", "125 front_bibb"},
		{"dial on 125 at the side bib, gas heater idle", "125 side_bibb idle; heater gas"},
		{"gas 40 gal dial says 78 at the front bib", "heater 40 gal gas; 78 front_bibb"},
	})
}

func TestTheGasCompanyIsNoBurner(t *testing.T) {
	says(t, [][2]string{
		{"gas heater 48 gal, gas co was out at 9. no gas smell. 62 kit", "heater 48 gal gas; no gas_smell; 62 kitchen"},
		{"gas heater, gas man was out this morning, kitchen 62", "heater gas; 62 kitchen"},
		{"gas heater 48 gal was out when I got here, kitchen 62", "heater 48 gal gas; 62 kitchen idle"},
	})
}

func TestABurnerThatIsLitBesideANumberOfATank(t *testing.T) {
	says(t, [][2]string{
		{"81 on the side faucet, burner lit. tank called for 55", "81 side_bibb firing; expansion_tank"},
		{"81 on the side faucet, burner's lit. air in the xp tank 12, plan called for 55", "81 side_bibb firing; expansion_tank set 12"},
		{"laundry 70, heater kicked on, went to 91", "70 laundry idle; 91 laundry firing"},
		{"80 on the rear bib, 80 gal electric heater. new fill valve in the hall toilet, it quit running", "80 rear_bibb; heater 80 gal electric; repaired_leak"},
	})
}

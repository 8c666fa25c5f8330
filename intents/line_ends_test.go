package intents

import "testing"

func TestALineThatEndsWithAFullStopIsOneSentence(t *testing.T) {
	says(t, [][2]string{
		{"When I came the kitchen had 95.\nI turned the regulator down to 60.\nThen the kitchen had 61, nothing open.", "95 kitchen before; set_prv to 60; 61 kitchen static after"},
		{"64 psi.\nFront.", "64 front_bibb"},
		{"The relief valve is dripping.\nIt's capped too.", "relief_discharge; relief_blocked"},
		{"Came back to finish it.\nBefore: kitchen 98, kitchen 121\nReplaced PRV\nAfter: kitchen 60", "98 kitchen before; 121 kitchen before; replaced_prv; 60 kitchen after"},
		{"Went back to finish it\nBefore: kitchen 98, kitchen 121\nReplaced PRV\nAfter: kitchen 60", "98 kitchen before; 121 kitchen before; replaced_prv; 60 kitchen after"},
	})
}

func TestThePartInItsPlaceIsAfterTheWork(t *testing.T) {
	says(t, [][2]string{
		{"Put in a new regulator. Found the kitchen at 104. Regulator in, kitchen 62", "replaced_prv; 104 kitchen before; 62 kitchen after"},
		{"changed the prv. got there and laundry was 99. with the prv changed, laundry 60", "replaced_prv; 99 laundry before; 60 laundry after"},
		{"hung the tank. 88 on arrival at the tub. Tank charged and tied in: tub 80", "installed_tank; 88 bath before; 80 bath after"},
		{"rebuilt the prv. kitchen 100 when I got there. Back together, kitchen 64", "rebuilt_prv; 100 kitchen before; 64 kitchen after"},
	})
}

func TestATapWithOthersThatRun(t *testing.T) {
	says(t, [][2]string{
		{"kitchen w/ the hose plus two showers: 38", "38 kitchen flowing"},
		{"tub with the washer and the hose: 44", "44 bath flowing"},
		{"kitchen w/ 2 showers: 38", "38 kitchen flowing"},
		{"laundry w/ dishwasher 51", "51 laundry flowing"},
		{"kitchen with sprayer: 60", "60 kitchen"},
	})
}

func TestAReasonIsNoTimeGoneBy(t *testing.T) {
	says(t, [][2]string{
		{"installing a tank Monday since there isn't one, kitchen 79", "plan install_tank in 7; expansion_tank none; 79 kitchen"},
		{"replacing the prv tomorrow since it's shot", "plan replace_prv in 1; prv failed"},
	})
}

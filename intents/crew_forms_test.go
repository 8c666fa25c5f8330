package intents

import "testing"

// What crews wrote in words of their own: readings that waver or were the lowest to be had, taps that are
// counted, wishes that only want a number kept, parts put in. The messages are our own.
func TestFormsOfCrews(t *testing.T) {
	says(t, [][2]string{
		{"exp tank dead, hung a 2 gal charged to 60", "expansion_tank 2 gal; replaced_tank to 60"},
		{"tanque muerto, puse uno de 2 galones", "expansion_tank 2 gal; replaced_tank"},
		{"no exp tank, hung a 2 gal charged to 60", "expansion_tank 2 gal; installed_tank to 60"},
		{"rear bib one oh four, heater between burns", "104 rear_bibb idle"},
		{"88 atrás, boiler entre ciclos", "88 rear_bibb idle"},
		{"gauge reads 61 62 at the kitchen", "61.5 kitchen"},
		{"kitchen says 61 62", "61.5 kitchen"},
		{"front rear read 80 82", "80 front_bibb; 82 rear_bibb"},
		{"the rear shop got 61", "ask none"},
		{"rear yard 61", "61 rear_bibb"},
		{"what did the 5 of us get done since monday", "ask summary"},
		{"what did the 5 techs get done this week", "ask summary"},
		{"whoever borrowed my nail gun, it wants 100 psi not 60", "ask none"},
		{"60 not 100 at the kitchen", "60 kitchen; ask correct"},
		{"tub and hose: 37", "37 bath; 37 bibb"},
		{"I would like 104 psi entered for 9 Elm Ct front", "104 front_bibb"},
		{"I'd like to log 88 rear at 9 Elm Ct", "88 rear_bibb"},
		{"quiero registrar 88 atrás en 9 Elm Ct", "88 rear_bibb"},
		{"owner would like 60 psi at the front", "ask none"},
		{"toilet ran, put a flapper in, quiet now", "repaired_leak"},
		{"toilet ran so I put a flapper in", "repaired_leak"},
		{"nudge me in 4 days, get basement key", "plan other in 4"},
		{"prv would only come down to 68 at the kitchen", "68 kitchen"},
		{"couldn't get it under 75 at the kitchen, adjusted all the way out", "75 kitchen"},
		{"won't go below 75 at the kitchen", "75 kitchen"},
		{"no tank leaks", "expansion_tank; no leak"},
		{"no heater leaks", "no leak"},
		{"street 140 before reg 63 after", "140 street; 63 after_prv"},
		{"once I backed the prv off kitchen was 62", "62 kitchen after; set_prv"},
		{"after backing it off, 62", "62 after; set_prv"},
		{"62 at the kitchen after backing it off", "62 kitchen after; set_prv"},
		{"before I adjusted: 94 kit. after: 60 kit", "60 kitchen after; 94 kitchen before"},
		{"94 kitchen before I adjusted, 60 after", "60 kitchen after; 94 kitchen before"},
		{"new check goes in Tuesday", "plan other in 1"},
		{"send tank to 14 Sorrel", "ask none"},
		{"bring a new tank to 14 Sorrel", "ask none"},
		{"alarm at 23 w carob is 4488", "ask none"},
		{"install a tank in 2 weeks and replace the prv", "plan install_tank in 14; plan replace_prv in 14"},
		{"install a tank friday and replace the prv in 2 weeks", "plan install_tank in 4; plan replace_prv in 14"},
	})
}

package intents

import "testing"

// The house's supply that was found on is no running tap, water that was off for a job is no house left
// without it, and what is read after the taps are shut is at rest.
func TestWaterOnOffAndShutAgain(t *testing.T) {
	says(t, [][2]string{
		{"60 laundry, water was on when I got there", "60 laundry"},
		{"water was on when I got there. 60 laundry", "60 laundry"},
		{"found the water on, 60 laundry", "60 laundry"},
		{"60 laundry, agua abierta cuando llegué", "60 laundry"},
		{"water was running when i got there, 60 laundry", "60 laundry flowing"},
		{"had the water off to put in a tank", "installed_tank"},
		{"had the water off to swap the prv, 61 laundry", "61 laundry; replaced_prv"},
		{"turned the water off to hang the tank, back on now", "installed_tank"},
		{"cut the water to change the prv", "shut_off"},
		{"shut the water off at the curb", "shut_off"},
		{"50 laundry with the tub running. close em up and that same tap's at 73", "50 laundry flowing; 73 laundry static"},
		{"kitchen 44 with the shower going, closed em up and that same tap's at 73", "44 kitchen flowing; 73 kitchen static"},
		{"52 at the tub with two bibs open, shut em and it's 70", "52 bath flowing; 70 bath static"},
		{"had to shut em off at the curb, hose behind the washer is leaking bad", "leak; shut_off"},
	})
}

// What somebody only thinks is not on record, an age nobody knows is told in any spelling, and of two
// years the one settled for holds.
func TestHearsayAndSecondThoughts(t *testing.T) {
	says(t, [][2]string{
		{"he thinks there's a softener", "ask none"},
		{"she thinks there is an expansion tank somewhere", "ask none"},
		{"supposedly there's a check valve at the meter", "ask none"},
		{"creo que hay tanque de expansión", "ask none"},
		{"customer says there's a softener", "softener"},
		{"he said there's no tank", "expansion_tank none"},
		{"heater 2009, ok 2012", "heater year 2012"},
		{"prv 2010... ok 2012", "prv year 2012"},
		{"heater's a 2009 ok maybe 2012", "heater year 2012"},
		{"heater 2009, ok", "heater year 2009 good"},
		{"prv yr unkown", "prv age unknown"},
		{"heater, 50 gal gas, yr unkown", "heater age unknown 50 gal gas"},
	})
}

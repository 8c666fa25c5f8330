package intents

import "testing"

// A sentence passes on to its neighbours what holds of them, and nothing else.

func TestTheStopOfAStreetsSuffixEndsItsSentence(t *testing.T) {
	says(t, [][2]string{
		{"side bib 88 at 14 Thimble Rd. watched the needle climb, all shut", "88 side_bibb; creep"},
		{"tub 64, heater off, 930 N Dover Ave. commode runs all night", "64 bath idle; leak"},
		{"coming back friday to swap the prv, 17 Wheat Ave. heater's a 2011", "plan replace_prv in 4; heater year 2011"},
		{"laundry at 40 Oak Ln. is 91", "91 laundry"},
		{"rear 92, 12 Elm St., heater firing", "92 rear_bibb firing"},
	})
}

func TestADeedThatNamesItsOwnPartIsNoRebuild(t *testing.T) {
	says(t, [][2]string{
		{"flushed the heater and cleaned the prv strainer", "flushed_heater; rebuilt_prv"},
		{"flushed the heater n rebuilt the regulator", "flushed_heater; rebuilt_prv"},
		{"cleaned the prv and its strainer", "rebuilt_prv"},
	})
}

func TestAWatchedRiseTellsOfItsOwnPressuresOnly(t *testing.T) {
	says(t, [][2]string{
		{"laundry 72. gauge gains a pound a minute with nothing open", "72 laundry; creep"},
		{"everything shut and the needle keeps climbing. front 102, rear 58", "creep; 102 front_bibb; 58 rear_bibb"},
		{"watched the needle 15 min with the house shut, no creep. kitchen 61", "61 kitchen; no creep"},
		{"everything shut and the needle keeps climbing. 62 at first, 75 now, laundry box", "creep; 62 laundry static; 75 laundry static"},
		{"side bib, all taps shut, needle climbs by itself\n9:10 58\n9:20 67\n9:30 78", "creep; 58 side_bibb static; 67 side_bibb static; 78 side_bibb static"},
		{"every valve shut and the gauge still creeps. 90 at the tub now", "90 bath static; creep"},
	})
}

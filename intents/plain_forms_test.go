package intents

import "testing"

// A state told with the second of two pressures of one gauge, which it has moved, is that one's alone.
func TestAStateToldWithTheSecondPressure(t *testing.T) {
	says(t, [][2]string{
		{"88 rear, went to 96 with the heater going", "88 rear_bibb; 96 rear_bibb firing"},
		{"static 88 rear, 96 with the heater on", "88 rear_bibb static; 96 rear_bibb firing"},
		{"rear 96, 88 with the heater off", "96 rear_bibb; 88 rear_bibb idle"},
		{"rear 88 and 96 with the heater on", "88 rear_bibb firing; 96 rear_bibb firing"},
		{"rear 88, laundry 96 with the heater on", "88 rear_bibb firing; 96 laundry firing"},
		{"static 55 dyn 31", "55 static; 31 flowing"},
	})
}

// A tap that nobody put a gauge on is no place of a number.
func TestATapThatWasNotGauged(t *testing.T) {
	says(t, [][2]string{
		{"63 psi at the house, didnt check the street", "63"},
		{"63 house side, skipped the street", "63 after_prv"},
		{"couldn't get to the kitchen, rear bib 63", "63 rear_bibb"},
		{"63 rear, need to check the kitchen", "63 rear_bibb"},
		{"someone cracked the curb stop, opened it all the way, now 64 kitchen", "64 kitchen"},
		{"shop compressor only builds to 90 psi before it trips", "ask none"},
	})
}

// A wish to be reminded asks nothing else, wherever it stands; a day in figures behind "back on" is a day.
func TestAReminderIsAPlanAndAsksNothing(t *testing.T) {
	says(t, [][2]string{
		{"Could you remind me in a month to recheck 45 Elm Road?", "plan recheck in 30"},
		{"remind me thursday to drop parts off at 217 Plover Rd", "plan other in 3"},
		{"dont let me forget to pull the permit for 12 Elm friday", "plan other in 4"},
		{"fri pull permit 1902 E Curlew, dont lemme forget", "plan other in 4"},
		{"remind me what we got at 12 Elm", "ask history"},
		{"the reminder for this house can go, it's been handled", "ask done"},
		{"back on 7/9 to swap the prv", "plan replace_prv in 24"},
		{"guy wants his 63 psi in bar. what is it", "ask convert"},
		{"skip 12 Elm till friday", "ask snooze"},
	})
}

// What is told of the old part ends with its clause; what is told of the new one is kept.
func TestFactsBehindTheOldPart(t *testing.T) {
	says(t, [][2]string{
		{"new heater in (old one split a seam), 50 gal gas", "replaced_heater; heater 50 gal gas"},
		{"new heater in, old one was shot, 50 gal electric", "replaced_heater; heater 50 gal electric"},
		{"new heater in, old one was a 2004, 40 gal", "replaced_heater"},
		{"took out the dead exp tank, hung a new 4.5 gal, charged to 60", "replaced_tank to 60; expansion_tank 4.5 gal"},
		{"PRV from 2014, 55 on the dial", "prv year 2014 set 55"},
		{"heater 50 gal electric, temperature 130", "heater 50 gal electric 130 F"},
	})
}

// A house beside numbers that nothing says of asks about them.
func TestANumberBesideAHouseIsAskedAbout(t *testing.T) {
	p, err := oneParser()
	if err != nil {
		t.Fatal(err)
	}
	for text, want := range map[string]int{
		"12 Elm St, fridge line 60": 1, "Upstairs 58, downstairs 63. 12 Elm St": 2, "ice maker tee 60. 12 Elm St": 1,
		"key for 1900 Sedge Ln hangs on nail 65 in the shop": 0, "75 and sunny, heading over to 88 Regatta Dr": 0,
	} {
		if f := p.Parse(text, Context{}); len(f.Unclear) != want {
			t.Errorf("%q asks %v", text, f.Unclear)
		}
	}
}

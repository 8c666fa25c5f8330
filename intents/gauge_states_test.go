package intents

import "testing"

// States of the heater and the water, and times of a reading, in other words.
func TestStatesAndTimesInOtherWords(t *testing.T) {
	reads(t, [][2]string{
		{"laundry 96 with flames showing", "laundry 96 firing"},
		{"laundry 96, water heater fully lit", "laundry 96 firing"},
		{"laundry 96 mid-cycle on the heater", "laundry 96 firing"},
		{"laundry 70, heater's been off all day", "laundry 70 idle"},
		{"laundry 70, they turned the heater off last night", "laundry 70 idle"},
		{"laundry 70 heater kill switch off", "laundry 70 idle"},
		{"laundry 70, heater tripped", "laundry 70 idle"},
		{"laundry 70, burner out cold", "laundry 70 idle"},
		{"laundry 70, heater wasn't running", "laundry 70 idle"},
		{"laundry 70 w/ heater not lit", "laundry 70 idle"},
		{"laundry 70, heater hasn't kicked on yet", "laundry 70 idle"},
		{"laundry 70, no heat on", "laundry 70 idle"},
		{"kitchen 58 with one shower going", "kitchen 58 flowing"},
		{"kitchen 58, somebody had the shower on", "kitchen 58 flowing"},
		{"kitchen 58, tub filling up", "kitchen 58 flowing"},
		{"kitchen 58 with hose bibs wide open", "kitchen 58 flowing"},
		{"kitchen 58 when the irrigation is on", "kitchen 58 flowing"},
		{"kitchen 58 with two fixtures open", "kitchen 58 flowing"},
		{"kitchen 85 with the water off in the house", "kitchen 85"},
		{"kitchen 85, not using any water", "kitchen 85 static"},
		{"kitchen 85, house is empty, nothing on", "kitchen 85 static"},
		{"kitchen 85 everything tight", "kitchen 85 static"},
		{"kitchen 85, fixtures all off", "kitchen 85 static"},
		{"kitchen 85, shut every tap first", "kitchen 85 static"},
		{"kitchen 85, made them shut off every faucet", "kitchen 85 static"},
		{"rear 118, replaced prv, rear 61", "rear_bibb 118; rear_bibb 61"},
		{"118 before / 61 after, rear, new prv installed", "rear_bibb 118 before; rear_bibb 61 after"},
		{"b4 118 aftr 61 rear, swpd prv", "rear_bibb 118 before; rear_bibb 61 after"},
		{"replaced prv and rear dropped from 118 to 61", "rear_bibb 118 before; rear_bibb 61 after"},
		{"replaced prv, brought rear from 118 down to 61", "rear_bibb 118 before; rear_bibb 61 after"},
	})
}

package intents

import "testing"

// What a tech writes with one thumb: jobs and their day without a verb, a house by its year, a
// part that is in now, no water of either kind.
func TestFieldTalk(t *testing.T) {
	says(t, [][2]string{
		{"PRV swap - 3 wks", "plan replace_prv in 21"},
		{"PRV swap - monday", "plan replace_prv in 7"},
		{"prv swap - 62 laundry", "replaced_prv; 62 laundry"},
		{"prv swap - 3 weeks ago", "replaced_prv"},
		{"tank install 22nd", "plan install_tank in 7"},
		{"tank install - 22nd", "plan install_tank in 7"},
		{"recheck 22nd", "plan recheck in 7"},
		{"replace the 2nd tank", "expansion_tank"},
		{"reg looks original, house is a 98", "prv year 1998"},
		{"built 98, prv original", "prv year 1998"},
		{"98 build, reg looks original", "prv year 1998"},
		{"house is a solid 62", "62"},
		{"exp tank in too, none before", "installed_tank"},
		{"tank in the attic, none before", "expansion_tank none"},
		{"put a 2 gal tank, 70 air", "installed_tank to 70; expansion_tank 2 gal"},
		{"gonna put a tank, 2 gal", "plan install_tank; expansion_tank 2 gal"},
		{"heater's dead, 74 laundry", "heater failed; 74 laundry"},
		{"burner's dead, 74 laundry", "74 laundry idle"},
		{"no hot, no cold", "no_water"},
		{"no hot or cold", "no_water"},
		{"no hot water, no cold water", "no_water"},
		{"no hot, cold is fine", "ask none"},
		{"closed her down to 58", "set_prv to 58"},
		{"shut the water down", "shut_off"},
		{"ran hot for a while, climbed to 79, rear bib", "79 rear_bibb"},
		{"tell her to swap the prv this fall", "plan replace_prv"},
		{"told her to call if it drips", "ask none"},
	})
}

// A street's name holds no thing of the trade: nothing is asked of the record.
func TestAThingIsNoStreet(t *testing.T) {
	p, err := New()
	if err != nil {
		t.Fatal(err)
	}
	for _, n := range p.Names("tank thumps hollow, 12 lbs in it") {
		if n.Suffix != "" {
			t.Errorf("a street of %q %q", n.Street, n.Suffix)
		}
	}
	if len(p.Names("62 rear on Tank Hollow")) == 0 {
		t.Error("no street of that name")
	}
}

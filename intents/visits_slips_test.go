package intents

import "testing"

// Slips of the thumb, faces of gauges, ratings of parts, numbers sent before. The messages
// are our own.
func TestSlipsRatingsAndParts(t *testing.T) {
	p, err := New()
	if err != nil {
		t.Fatal(err)
	}
	for _, c := range []struct{ text, known, site, readings string }{
		{"4408 Dry Creek Mesa Dr, kitchen 60", "", "4408 Dry Creek Mesa Dr", "kitchen 60"},
		{"ignore the 95 I sent, kitchen is 59", "123 Elm St", "", "kitchen 59"},
		{"Street was 94 at the meter and the front bib 93", "123 Elm St", "", "street 94; front_bibb 93"},
		{"new gauge, 0-160 face, reads 74 on the rear bib", "123 Elm St", "", "rear_bibb 74"},
		{"prv nameplate says 300 max inlet, installed 2017, 63 at the test port right after it", "123 Elm St", "", "after_prv 63"},
		{"prv is set at 50 supposedly but the front bib says 81", "123 Elm St", "", "front_bibb 81"},
		{"sprinkler guy only needs 40 psi, he's got 67 at the sprinkler valves", "123 Elm St", "", "irrigation 67"},
		{"PRV rebuilt w/ kit. aft PRV 64# now, was 91#.", "123 Elm St", "", "after_prv 64 after; after_prv 91 before"},
		{"front bib: sixty-eight (68)", "123 Elm St", "", "front_bibb 68"},
		{"swpd ET, chgd 60#, 61# lndry after", "123 Elm St", "", "laundry 61 after"},
		{"lndry 70 r 71 htr rcvrng", "123 Elm St", "", "laundry 70.5 firing"},
		{"70ish kitchen, tub and laundry, all of em", "123 Elm St", "", "kitchen 70; bath 70; laundry 70"},
		{"who left 60 psi in the test rig overnight, bleed it down next time", "123 Elm St", "", ""},
		{"need 2 sticks of 3/4 copper and four 90s dropped off", "123 Elm St", "", ""},
		{"Kitchen\n61\nLaundry\n60\nHeater\noff", "123 Elm St", "", "kitchen 61 idle; laundry 60 idle"},
		{"gauge on the drain cock of the heater: 90", "123 Elm St", "", "heater_drain 90"},
		{"fr0nt 84, raer 83, heatr idel", "123 Elm St", "", "front_bibb 84 idle; rear_bibb 83 idle"},
	} {
		f := p.Parse(c.text, Context{Site: c.known})
		if got := told(f); f.Site != c.site || got != c.readings {
			t.Errorf("%q\n got %q: %s\nwant %q: %s", c.text, f.Site, got, c.site, c.readings)
		}
	}
}

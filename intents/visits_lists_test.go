package intents

import "testing"

// Readings in lists, drops, several gauges, numbers too vague to store, tests of pipes. The
// messages are our own.
func TestListsDropsAndVagueNumbers(t *testing.T) {
	p, err := New()
	if err != nil {
		t.Fatal(err)
	}
	for _, c := range []struct{ text, known, site, readings string }{
		{"Walk-through with the buyer's agent at 618 Harrow Bend. Kitchen first, 83 with nothing on. Then the master shower, 82. Meter box out front gave me 121. Heater was satisfied the whole time, never lit.", "", "618 Harrow Bnd", "kitchen 83 idle static; bath 82 idle; street 121 idle"},
		{"2nd call today: 4410 Dry Creek Cir\nfront bib 88 (static)\nfront bib 61 (lawn on)\nhtr firing", "", "4410 Dry Creek Cir", "front_bibb 88 firing static; front_bibb 61 firing flowing"},
		{"77 Gantry Ln. Before: 126 rear. Turned the prv in... out... anyway after: 63 rear.", "", "77 Gantry Ln", "rear_bibb 126 before; rear_bibb 63 after"},
		{"Went back to 77 Gantry Ln, still 63 in the rear, 64 in the front. All good.", "", "77 Gantry Ln", "rear_bibb 63; front_bibb 64"},
		{"pressure test on new pex held 100 for an hour no drop. house pressure at the tub 58", "123 Elm St", "", "bath 58"},
		{"gas line holds 15 psi. laundry water 66", "123 Elm St", "", "laundry 66"},
		{"Customer's cheap gauge said 90, mine said 72, both on the front spigot", "123 Elm St", "", "front_bibb 72"},
		{"digital gauge 71.8 kitchen", "123 Elm St", "", "kitchen 71.8"},
		{"71.8psi kitchen/ 71.6psi bath/ 118.2psi street", "123 Elm St", "", "kitchen 71.8; bath 71.6; street 118.2"},
		{"kit:71 ba:70 ldry:70 str:118", "123 Elm St", "", "kitchen 71; bath 70; laundry 70; street 118"},
		{"front bib one hundred flat", "123 Elm St", "", "front_bibb 100"},
		{"front bib 1oo", "123 Elm St", "", ""},
		{"front bib: 9O", "123 Elm St", "", "front_bibb 90"},
		{"rear tap 8 5 psi", "123 Elm St", "", ""},
		{"front 72.5-73", "123 Elm St", "", "front_bibb 72.8"},
		{"front 60 something", "123 Elm St", "", ""},
		{"mid 60s at the kitchen", "123 Elm St", "", ""},
		{"low 70s on the front bib", "123 Elm St", "", ""},
		{"upper 80s at the meter", "123 Elm St", "", ""},
		{"in the 90s at the front", "123 Elm St", "", ""},
		{"triple digits at the meter, 112", "123 Elm St", "", "street 112"},
		{"about a hundred at the street", "123 Elm St", "", "street 100"},
		{"just shy of 100 at the street", "123 Elm St", "", "street 100"},
		{"over 100 at the street", "123 Elm St", "", ""},
		{"way over 100 at the street, pegged my 100 psi gauge", "123 Elm St", "", ""},
		{"the gauge tops out at 100 and it was pegged, front", "123 Elm St", "", ""},
		{"kitchen dropped 12 psi when I opened the tub, 58", "123 Elm St", "", "kitchen 58 flowing"},
		{"kitchen lost 12, from 70 to 58, with the tub open", "123 Elm St", "", "kitchen 70; kitchen 58 flowing"},
		{"12 pound drop at the kitchen, 70 static 58 flowing", "123 Elm St", "", "kitchen 70 static; kitchen 58 flowing"},
		{"5 psi higher at the front than the rear, front 75", "123 Elm St", "", "front_bibb 75"},
		{"front 75, 5 over what the prv is set at", "123 Elm St", "", "front_bibb 75"},
		{"rear and front within 2 of each other, 75 and 77", "123 Elm St", "", "rear_bibb 75; front_bibb 77"},
		{"front and back both 75", "123 Elm St", "", "front_bibb 75; rear_bibb 75"},
		{"every hose bib is 75", "123 Elm St", "", "bibb 75"},
		{"front 75 and the others the same", "123 Elm St", "", "front_bibb 75"},
		{"75 at both front bibs", "123 Elm St", "", "front_bibb 75"},
		{"75 in the kitchen and in the tub", "123 Elm St", "", "kitchen 75; bath 75"},
		{"75 at kitchen, tub and laundry", "123 Elm St", "", "kitchen 75; bath 75; laundry 75"},
		{"kitchen/tub/laundry: 75", "123 Elm St", "", "kitchen 75; bath 75; laundry 75"},
		{"kitchen, tub & laundry all read 75 with heater idle", "123 Elm St", "", "kitchen 75 idle; bath 75 idle; laundry 75 idle"},
		{"between the kitchen and the tub, 75 and 74", "123 Elm St", "", "kitchen 75; bath 74"},
		{"respectively 75, 74 and 73 at kitchen tub and laundry", "123 Elm St", "", "kitchen 75; bath 74; laundry 73"},
		{"kitchen tub and laundry are 75, 74, 73", "123 Elm St", "", "kitchen 75; bath 74; laundry 73"},
	} {
		f := p.Parse(c.text, Context{Site: c.known})
		if got := told(f); f.Site != c.site || got != c.readings {
			t.Errorf("%q\n got %q: %s\nwant %q: %s", c.text, f.Site, got, c.site, c.readings)
		}
	}
}

package intents

import (
	"testing"

	"lazyhand/assess"
)

// A pressure that names no tap was read where the last one of the visit was; where that was
// at several taps, or at the main, it is asked about.
func TestAFurtherReadingIsOfTheTapInHand(t *testing.T) {
	p, err := New()
	if err != nil {
		t.Fatal(err)
	}
	for _, c := range []struct{ text, tap, want string }{
		{"it went to 96", "rear_bibb", "rear_bibb 96"},
		{"reads 56 now", "laundry", "laundry 56"},
		{"now 64", "rear_bibb", "rear_bibb 64"},
		{"dropped to 58", "rear_bibb", "rear_bibb 58"},
		{"opened the tub, dropped to 48", "laundry", "laundry 48 flowing"},
		{"backed it off, 64 on the same bib", "rear_bibb", "rear_bibb 64"},
		{"same tap, 64", "kitchen", "kitchen 64"},
		{"same spot 58", "street", "street 58"},
		{"checked it again, 64", "rear_bibb", "rear_bibb 64"},
		{"70 w heater on", "rear_bibb", "rear_bibb 70 firing"},
		{"bajo a 58", "rear_bibb", "rear_bibb 58"},
		{"ahora 61", "kitchen", "kitchen 61"},
		{"61 laundry", "rear_bibb", "laundry 61"},
		{"64 on the same bib", "laundry", "bibb 64"},
		{"lowered to 60", "rear_bibb", ""},
		{"back up to 63", "rear_bibb", "rear_bibb 63"},
		{"no wait 74 in it", "rear_bibb", ""},
		{"60 air", "rear_bibb", ""},
		{"thermostat went to 120", "rear_bibb", ""},
		{"back in 64 minutes", "rear_bibb", ""},
		{"need 40 more fittings", "rear_bibb", ""},
		{"sube como 20 libras en la noche", "rear_bibb", ""},
		{"went up 20 psi overnight", "rear_bibb", ""},
		{"gana 3 libras cada 10 minutos", "rear_bibb", ""},
		{"it moves 2 psi every minute", "rear_bibb", ""},
		{"its 38 outside", "rear_bibb", "asked"},
		{"it goes for 60", "rear_bibb", ""},
		{"got 20 of them", "rear_bibb", "asked"},
		{"it says 80 max", "rear_bibb", "asked"},
		{"label says 75 max", "rear_bibb", ""},
		{"lazy hand says 96 max", "rear_bibb", "rear_bibb 96 peak"},
		{"got 30 left", "rear_bibb", ""},
		{"max is 80", "rear_bibb", "asked"},
		{"still need a 90", "rear_bibb", ""},
		{"it needs a 90 and a 45", "rear_bibb", ""},
		{"then off to 88", "rear_bibb", ""},
		{"later 72 and sunny", "rear_bibb", ""},
		{"outside its 28", "rear_bibb", "asked"},
		{"mañana 20", "rear_bibb", "asked"},
		{"50/50", "rear_bibb", ""},
		{"pumping it to 62", "rear_bibb", ""},
		{"gonna leave it at 60", "rear_bibb", ""},
		{"need it at 60", "rear_bibb", ""},
		{"getting it to 60", "rear_bibb", "asked"},
		{"came right back to 71", "rear_bibb", "rear_bibb 71"},
		{"gauge is 100 max", "rear_bibb", "asked"},
		{"heater is at 140", "rear_bibb", ""},
		{"boiler a 120", "rear_bibb", ""},
		{"i said 90", "rear_bibb", "asked"},
		{"60?", "rear_bibb", "asked"},
		{"still got 20 to go", "rear_bibb", ""},
		{"it went to 96", "", "asked"},
		{"reads 62 now", "street", "asked"},
		{"now 64", "", "asked"},
	} {
		tap := assess.TestPoint(c.tap)
		f := p.Parse(c.text, Context{Site: "12 Alder St", Tap: tap, TapUnsure: tap == "" || tap == assess.Street})
		got := told(f)
		if len(f.Unclear) > 0 {
			got += "asked"
		}
		if got != c.want {
			t.Errorf("%q after %q: got %s, want %s", c.text, c.tap, got, c.want)
		}
		if same := c.want != "" && c.want != "asked" && c.want != "laundry 61" && c.want != "bibb 64"; f.SameTap != same {
			t.Errorf("%q after %q: the same tap %v, want %v", c.text, c.tap, f.SameTap, same)
		}
	}
}

// Without a reading before it, nothing says where a gauge went.
func TestWhereAGaugeWentWithinAMessage(t *testing.T) {
	reads(t, [][2]string{
		{"rear 98. it went to 104", "rear_bibb 98; rear_bibb 104"},
		{"it went to 104", ""},
		{"thermostat went to 120", ""},
	})
}

// What is turned before a pressure is read is the regulator's screw, unless a heater was
// spoken of.
func TestWorkOnAScrewThatIsNotNamed(t *testing.T) {
	says(t, [][2]string{
		{"backed it off, 64 rear", "set_prv; 64 rear_bibb"},
		{"ya le bajé, marca 58 en la de atrás", "set_prv; 58 rear_bibb"},
		{"le subí poquito, 62 lavadora", "set_prv; 62 laundry"},
		{"le bajé al boiler, 58 atrás", "58 rear_bibb"},
		{"le bajé a la radio, 58 atrás", "58 rear_bibb"},
		{"98 rear, cranked it down, 60 now", "98 rear_bibb; set_prv; 60 rear_bibb after"},
		{"gave it half a turn, 62 laundry", "set_prv; 62 laundry"},
		{"backed the screw off, 62 laundry", "set_prv; 62 laundry"},
		{"62 laundry, backed it off", "62 laundry"},
		{"heater was firing, turned it down, 62 laundry", "62 laundry firing"},
	})
}

// Who says nothing but where they are is there; talk of a house is none.
func TestWhoIsAtAHouse(t *testing.T) {
	p, err := New()
	if err != nil {
		t.Fatal(err)
	}
	for text, want := range map[string][2]bool{
		"at 412 Tanager Ln":                    {true, false},
		"here, 412 Tanager Ln":                 {true, false},
		"rolled up on 205 Juniper Way":         {true, false},
		"412 Tanager Ln":                       {true, true},
		"8:40 at 18 Birch Ln":                  {true, false},
		"1st stop 412 Tanager Ln":              {true, false},
		"house 2: 18 Birch Ln":                 {true, false},
		"412 Tanager Ln i mean":                {true, true},
		"62 at 18 Birch Ln":                    {false, false},
		"stop by 18 Birch Ln at some point":    {false, false},
		"next: 77 Plover Ct":                   {true, false},
		"no, that was 77 Plover Ct":            {false, true},
		"gate code for 9 Oak Ct is on the box": {false, false},
		"customer at 9 Oak Ct called":          {false, false},
		"is anyone at 9 Oak Ct?":               {false, false},
		"at the shop":                          {false, false},
	} {
		if got := [2]bool{p.Arrives(text, Context{}), p.RightHouse(text, Context{})}; got != want {
			t.Errorf("%q: there, the right house: %v, want %v", text, got, want)
		}
	}
}

// A number that is that of the house in hand, beside another bare one, may put the house's number
// right: neither is taken for a pressure without being asked about.
func TestNumbersThatMayBeTheHouses(t *testing.T) {
	p, err := New()
	if err != nil {
		t.Fatal(err)
	}
	for _, c := range []struct{ text, want string }{
		{"sorry 18 was 16", "asked"},
		{"its 16 not 18", "asked"},
		{"that was 16 not 18", "asked"},
		{"18 laundry, 16 now", "laundry 18; laundry 16"},
		{"18 psi, 61 psi now", "kitchen 18; kitchen 61"},
		{"now 61", "kitchen 61"},
	} {
		f := p.Parse(c.text, Context{Site: "18 Wexler St", Tap: assess.Kitchen})
		got := told(f)
		if len(f.Unclear) > 0 {
			got += "asked"
		}
		if got != c.want {
			t.Errorf("%q at 18 Wexler St: got %s, want %s", c.text, got, c.want)
		}
	}
}

// Who says only where the gauge sits reads there next.
func TestWhereTheGaugeIsSaidToBe(t *testing.T) {
	p, err := New()
	if err != nil {
		t.Fatal(err)
	}
	for text, want := range map[string]assess.TestPoint{
		"gauge on the laundry":              assess.Laundry,
		"moving to the rear bib":            assess.RearBibb,
		"ok kitchen next":                   assess.Kitchen,
		"puse el manómetro en la cocina":    assess.Kitchen,
		"laundry is a mess":                 "",
		"laundry faucet drips":              "",
		"gauge on the laundry 62":           "",
		"front and rear next":               "",
		"is the gauge on the laundry?":      "",
		"gauge fell off at the laundry":     "",
		"customer is in the kitchen":        "",
		"left my gauge on the rear bib lol": "",
	} {
		if got := p.GaugeAt(text, Context{}); got != want {
			t.Errorf("%q: the gauge is at %q, want %q", text, got, want)
		}
	}
}

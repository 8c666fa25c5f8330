package intents

import "testing"

// A valve found half shut is no regulator and no place of a gauge; what was read around its opening
// is before and after.
func TestAValveThatIsOpenedChangesThePressure(t *testing.T) {
	readSpanish(t, []struct{ text, want string }{
		{"30 laundry, main valve was half shut, opened it, 62 now", "30 laundry before; 62 laundry after"},
		{"laundry 30 before i opened the main, 62 after", "30 laundry before; 62 laundry after"},
		{"28 laundry, curb stop was half closed, opened it up, laundry 64", "28 laundry before; 64 laundry after"},
		{"28 laundry, curb stop was half closed, opened it up, 64", "28 laundry before; 64 laundry after"},
		{"60 at the meter, valve half shut there", "60 street"},
		{"opened the prv up a half turn", "set_prv"},
	})
}

func TestTalkOfAValveThatWasOpened(t *testing.T) {
	for _, c := range []struct {
		before, text string
		want         bool
	}{
		{"", "opened the main shutoff all the way", true},
		{"", "curb stop was half shut, opened it", true},
		{"found the gate valve half closed", "opened it", true},
		{"", "abrí la llave principal", true},
		{"", "opened it", false},
		{"kitchen tap is closed", "opened it", false},
		{"", "opened the kitchen tap", false},
		{"", "relief valve opened at 150", false},
		{"", "couldn't get the main opened", false},
		{"", "main is half shut", false},
	} {
		if got := ValveOpened(c.before, c.text); got != c.want {
			t.Errorf("%q behind %q: %v", c.text, c.before, got)
		}
	}
}

// A tap told with the house alone is where the gauge sits.
func TestATapToldWithTheHouseHoldsTheGauge(t *testing.T) {
	p, err := New()
	if err != nil {
		t.Fatal(err)
	}
	for text, want := range map[string]string{
		"rear bib, 14 Pine St":          "rear_bibb",
		"14 Pine St, laundry":           "laundry",
		"lavadora, 16 Pine St":          "laundry",
		"gauge on the laundry":          "laundry",
		"laundry":                       "",
		"laundry 64, 14 Pine St":        "",
		"rear bib and tub, 14 Pine St":  "",
		"rear bib at 14 Pine St leaks":  "",
		"which bib, rear? 14 Pine St":   "",
		"what did the rear bib do last": "",
	} {
		if got := p.GaugeAt(text, Context{}); string(got) != want {
			t.Errorf("%q: gauge at %q, want %q", text, got, want)
		}
	}
}

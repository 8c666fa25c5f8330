package intents

import (
	"testing"

	"lazyhand/assess"
)

// With a gauge in hand a bare number is a pressure where its words say so, and is asked about where
// a word beside it may make it something else's.
func TestABareNumberIsAPressureOnlyWhereItsWordsSaySo(t *testing.T) {
	p, err := New()
	if err != nil {
		t.Fatal(err)
	}
	const read, asked, none = "laundry 62", "asked", ""
	for text, want := range map[string]string{
		"62":                               read,
		"ok 62":                            read,
		"62 again":                         read,
		"settled at 62":                    read,
		"leveled off at 62":                read,
		"sigue en 62":                      read,
		"se quedó en 62":                   read,
		"62 both times":                    read,
		"62 vs 95 last visit":              read,
		"62 y sube":                        read,
		"got 62 this time":                 read,
		"62 even tho he wanted more":       read,
		"no change, 62":                    read,
		"gave it a minute, 62":             read,
		"one more turn, 62":                read,
		"when he flushed it dropped to 62": read + " flowing",
		"honestly it still reads 62":       read,
		"62 on it for what its worth":      read,
		"62 on the new gauge":              read,

		"drained 62":                             asked,
		"faltan 62":                              asked,
		"lunch till 12 62":                       asked,
		"leaving it at 62":                       asked,
		"bet it hits 62 tonight":                 asked,
		"say it climbs to 62, would you cap it?": asked,
		"could see it going to 62 when the heater fires": asked,
		"it does not hold 62":                            asked,
		"in 2019 it was 62":                              asked,
		"phone's down to 62":                             asked,
		"press 62 at the gate":                           asked,
		"62 out and windy":                               asked,
		"will end up near 62":                            asked,
		"you told me 62 was ok":                          asked,
		"sharpie on the reg says 62":                     asked,
		"62 for the part":                                none,
		"hand pumping it, 62 so far":                     none,
		"gonna be there in 62":                           none,
	} {
		if got := toldOrAsked(p, text, Context{Site: "12 Alder St", Tap: assess.Laundry}); got != want {
			t.Errorf("%q: got %q, want %q", text, got, want)
		}
	}
}

// toldOrAsked is what a message is read as, with "asked" behind it when it is asked about.
func toldOrAsked(p *Parser, text string, ctx Context) string {
	f := p.Parse(text, ctx)
	if len(f.Unclear) > 0 {
		return told(f) + "asked"
	}
	return told(f)
}

// Where no gauge is in hand, one strange word beside a number is enough to ask.
func TestAStrangeWordBesideTheOnlyNumberAsks(t *testing.T) {
	p, err := New()
	if err != nil {
		t.Fatal(err)
	}
	for text, want := range map[string]string{"62 psi": "62", "steady 62": "62", "drained 62": "asked", "faltan 62": "asked"} {
		if got := toldOrAsked(p, text, Context{Site: "12 Alder St"}); got != want {
			t.Errorf("%q: got %q, want %q", text, got, want)
		}
	}
}

// What somebody guesses, supposes or says to be another number is asked about or left out, be a tap
// named or not.
func TestAGuessIsNoReading(t *testing.T) {
	p, err := New()
	if err != nil {
		t.Fatal(err)
	}
	for text, want := range map[string]string{
		"I bet it's 100 at the street":                         "asked",
		"guessing 100 at the street":                           "asked",
		"could be 100 out at the meter":                        "asked",
		"calculo unos 100 en la calle":                         "asked",
		"rear would have been 66 with the old reg":             "",
		"my kitchen 83 is a 63":                                "asked",
		"gauge reads 61 62":                                    "asked",
		"meter serial 4471 84":                                 "asked",
		"atrás 81, al lado 83":                                 "rear_bibb 81asked",
		"tub hits 128 quick":                                   "asked",
		"if the rear holds 66 overnight we're good":            "",
		"told by city 88; measured 84 at the meter":            "street 84",
		"lazy hand maxed its 160 scale":                        "",
		"zone valve 24 V, boiler 18 psi, kitchen 58":           "kitchen 58",
		"tap | psi | temp\nkitchen | 61 | 118\ntub | 60 | 116": "kitchen 61; bath 60",
		"item | qty | price\ngauge | 2 | 38\nhose | 1 | 24":    "",
		"could be 78 could be 80 on the laundry box":           "laundry 79",
	} {
		if got := toldOrAsked(p, text, Context{Site: "12 Alder St"}); got != want {
			t.Errorf("%q: got %q, want %q", text, got, want)
		}
	}
}

func TestAHouseThatShowsAPressure(t *testing.T) {
	says(t, [][2]string{
		{"630 canela ct trae ciento doce, piloto apagado, la señora anda enojada", "112 idle"},
		{"12 elm ct shows 112, pilot out", "112 idle"},
		{"12 Elm Ct is at 62, prv good", "62; prv good"},
		{"en 12 elm ct hay noventa, boiler apagado", "90 idle"},
		{"12 elm ct should be 60, heater off", "ask none"},
	})
}

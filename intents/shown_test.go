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
		f := p.Parse(text, Context{Site: "12 Alder St", Tap: assess.Laundry})
		got := told(f)
		if len(f.Unclear) > 0 {
			got += asked
		}
		if got != want {
			t.Errorf("%q: got %q, want %q", text, got, want)
		}
	}
}

// Where no gauge is in hand, one strange word beside a number is enough to ask.
func TestAStrangeWordBesideTheOnlyNumberAsks(t *testing.T) {
	p, err := New()
	if err != nil {
		t.Fatal(err)
	}
	for text, want := range map[string]string{"62 psi": "62", "steady 62": "62", "drained 62": "asked", "faltan 62": "asked"} {
		f := p.Parse(text, Context{Site: "12 Alder St"})
		got := told(f)
		if len(f.Unclear) > 0 {
			got += "asked"
		}
		if got != want {
			t.Errorf("%q: got %q, want %q", text, got, want)
		}
	}
}

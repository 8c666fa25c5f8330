package intents

import "testing"

// A word with two of its letters in the other order is still the word that it is, and no other.
func TestSwappedLetters(t *testing.T) {
	says(t, [][2]string{
		// words that rules know by their letters: days, spans, units, numbers
		{"recheck Wednseday", "plan recheck in 2"},
		{"new prv goes in on saturady", "plan replace_prv in 5"},
		{"vuelvo el vienres a medir", "plan recheck in 4"},
		{"recheck en 2 semnaas", "plan recheck in 14"},
		{"back in two weesk for a recheck", "plan recheck in 14"},
		{"40 galoln gas heater, 66 tub", "66 bath; heater 40 gal gas"},
		{"heater is at 130 dergees, 66 tub", "66 bath; heater 130 F"},
		{"one hudnred twelve at the meter", "112 street"},
		{"two hunrded kPa at the tub", "29 bath"},
		{"prv is from nienteen ninety six", "prv year 1996"},
		{"tank age unnkown", "expansion_tank age unknown"},
		{"heater is a 2012, went by the sitcker, 66 tub", "66 bath; heater year 2012"},
		// what is done, and the parts
		{"celaned the screen on the regulator", "rebuilt_prv"},
		{"truned the regulator down, 58 tub", "58 bath; set_prv"},
		{"91 at the haeter's drain", "91 heater_drain"},
		// an everyday word that only sounds like a trouble
		{"66 tub, fix it plaese", "66 bath"},
		{"66 tub, need new golves", "66 bath"},
		// a letter left out stays what it was
		{"66 tub, heatr off", "66 bath idle"},
		{"trned the prv down, 58 tub", "58 bath; set_prv"},
	})
	p, _ := New()
	for text, want := range map[string]string{
		"66 tub, 14 Lakrspur Ct":       "14 Lakrspur Ct", // a street's name stays as it was typed
		"kitchen 71 at 9 Kitcehn Ln":   "9 Kitcehn Ln",
		"50 galoln heater, 66 tub":     "",
		"bring it down to 60 tomrorow": "",
		"45 dergee water coming in, 130 on the dial, 50 gal, 62 psi, what size tank": "",
	} {
		if got := p.Parse(text, Context{}).Site; got != want {
			t.Errorf("%q: house %q, want %q", text, got, want)
		}
	}
}

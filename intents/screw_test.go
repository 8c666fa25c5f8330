package intents

import (
	"testing"

	"lazyhand/assess"
)

// A regulator that cannot be adjusted has failed, one that weeps to the outside or is cracked is in
// doubt: its screw must not be turned.
func TestARegulatorThatCannotBeAdjusted(t *testing.T) {
	says(t, [][2]string{
		{"reg is an 08, screw is frozen, weeps at the bonnet", "prv year 2008 failed"},
		{"weeps at the bonnet, screw is frozen, reg is an 08", "prv year 2008 failed"},
		{"screw's froze. 88 laundry", "prv failed; 88 laundry"},
		{"88 laundry, heater off, meter 120, prv screw wont turn", "prv failed; 120 street idle; 88 laundry idle"},
		{"screw won't budge", "prv failed"},
		{"cant get the prv screw to budge", "prv failed"},
		{"couldn't turn the reg screw", "prv failed"},
		{"couldn't adjust the reg", "prv failed"},
		{"tried turning it down, screw's seized", "prv failed"},
		{"the adjusting screw is rounded off", "prv failed"},
		{"slot on the reg screw is chewed up", "prv failed"},
		{"screw snapped off the prv", "prv failed"},
		{"adjuster is locked up tight", "prv failed"},
		{"locknut on the prv rounded off", "prv failed"},
		{"prv adjustment bolt is rusted solid", "prv failed"},
		{"heater 2012, screw is frozen", "heater year 2012; prv failed"},
		{"weeps at the bonnet", "prv suspect"},
		{"reg seeping round the bonnet", "prv suspect"},
		{"prv is leaking from the bonnet", "leak; prv suspect"},
		{"prv leaks around the adjusting screw", "leak; prv suspect"},
		{"hairline crack in the prv body", "prv suspect"},
		{"el tornillo del regulador está pegado", "prv failed"},
		{"el tornillo no gira", "prv failed"},
		{"tornillo de ajuste oxidado, no da vuelta", "prv failed"},
		{"no se puede ajustar la válvula", "prv failed"},
		{"el regulador no se deja ajustar", "prv failed"},
		{"la reguladora gotea por el bonete", "leak; prv suspect"},
	})
}

// What is no regulator's, what is denied, asked, feared or over says nothing of it.
func TestScrewsThatTurn(t *testing.T) {
	says(t, [][2]string{
		{"screw's not frozen", "ask none"},
		{"is the reg screw frozen?", "ask none"},
		{"if the screw is frozen swap it", "ask none"},
		{"handle screw is stripped on the kitchen faucet", "ask none"},
		{"prv screw was frozen, worked it loose, 60 laundry now", "60 laundry"},
		{"crack in the tub", "ask none"},
	})
}

// Which tap stands ahead of the regulator is a fact of its own; a question or a reading is none.
func TestAheadOfPRV(t *testing.T) {
	for text, want := range map[string]assess.TestPoint{
		"so front's ahead of the reg": assess.FrontBibb, "front bib is not regulated": assess.FrontBibb, "the front one's before the prv": assess.FrontBibb,
		"front spigot comes off ahead of the prv": assess.FrontBibb, "rear bibb is teed ahead of the regulator": assess.RearBibb,
		"la de enfrente está antes de la reguladora": assess.FrontBibb,
		"is the front ahead of the reg?":             "", "front 110 ahead of the reg": "", "front of the house is not insulated": "", "laundry is after the prv": "",
	} {
		if got := AheadOfPRV(text); got != want {
			t.Errorf("%q: %q, want %q", text, got, want)
		}
	}
}

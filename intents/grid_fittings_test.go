package intents

import (
	"strings"
	"testing"
)

// TestGridOfFittingsBesideThings reads nothing of a thing whose shutoff or valve is bad: "shutoff valve to the heater
// is frozen".
func TestGridOfFittingsBesideThings(t *testing.T) {
	var all []said
	fittings := []string{"shutoff", "shutoff valve", "ball valve", "gate valve", "shut off valve", "stop", "isolation valve"}
	places := []string{"to the", "to", "for the", "at the", "before the", "above the", "feeding the"}
	for _, phrase := range product(fittings, places, []string{"heater", "prv", "water heater"}, []string{"is frozen", "is stuck", "is bad", "won't close", "is corroded"}) {
		all = append(all, said{phrase, ""})
	}
	readPhrases(t, all, framedParts[2:3])
}

// TestGridOfSignsExceptAtAPlace reads a symptom that is denied but for one place, where it is.
func TestGridOfSignsExceptAtAPlace(t *testing.T) {
	var all []said
	for _, s := range [][2]string{{"hammer", "hammer"}, {"leaks", "leak"}, {"drips", "leak"}, {"noise", "noise"}} {
		for _, where := range product([]string{"except", "but"}, []string{"at the washer", "at the kitchen", "in the shower", "at the prv"}) {
			all = append(all, said{"no " + s[0] + " " + where, s[1]})
		}
	}
	readPhrases(t, all, []framed{{"{}", "", ""}, {"{}. heater 2015", "heater year 2015", ""}})
}

// TestGridOfWhatIsGoneNow reads a symptom that a deed of the visit ended: no thing near it has failed by its going.
func TestGridOfWhatIsGoneNow(t *testing.T) {
	var all []said
	for _, form := range []string{"smelled a little gas by the {n}, tightened the union, gone now", "smelled gas at the {n}, gone now"} {
		for _, name := range []string{"heater", "water heater"} {
			all = append(all, said{strings.Replace(form, "{n}", name, 1), "gas_smell"})
		}
	}
	readPhrases(t, all, framedParts[:3])
}

package intents

import (
	"strings"
	"testing"
)

// goneSign is a symptom in the forms in which an earlier day tells it.
type goneSign struct{ symptom, name, past, usedTo string }

// goneSigns are the symptoms of the grid.
var goneSigns = []goneSign{
	{"hammer", "the banging", "pipes banged", "pipes used to bang"},
	{"hammer", "the knocking", "pipes knocked", "the pipes used to knock"},
	{"noise", "the hum", "pipes hummed", "reg used to hum"},
	{"noise", "the whistling", "pipes whistled", "prv used to whistle"},
	{"dark_water", "the black specks", "had black specks", "used to have black specks"},
	{"dark_water", "the dark water", "water was black", "water used to be black"},
	{"rusty_water", "the brown water", "water was brown", "water used to be brown"},
	{"relief_discharge", "the t&p drip", "t&p dripped", "t&p used to drip"},
	{"swings", "the surging", "pressure surged", "pressure used to surge"},
	{"low_flow", "the low flow", "shower was weak", "shower used to be weak"},
	{"low_flow", "the low pressure", "had low pressure", "used to have low pressure"},
	{"creep", "the creep", "pressure crept up", "gauge used to creep"},
	{"leak", "the drip", "kitchen faucet dripped", "kitchen faucet used to drip"},
}

// TestGridOfSymptomsGone reads symptoms that were there on an earlier day and are not now: "the banging is gone",
// "pipes banged last week, not any more", "used to bang but doesn't now".
func TestGridOfSymptomsGone(t *testing.T) {
	named := []string{"{} is gone", "{} is gone now", "{} went away", "{} is all gone", "{} quit", "{} no longer there", "{} hasn't come back", "{} is no more"}
	past := []string{
		"{} last week, not any more", "{} last week but not now", "{} before, not now", "{} last month, none now", "{} last year, clear now",
		"{} before but doesn't now", "{} a year ago, hasn't since", "{} a while back, hasn't since",
	}
	usedTo := []string{"{}, not any more", "{} but doesn't any more", "{}, doesn't now", "{} but not now", "{}. not any more", "she says {}, but not lately"}
	var all []said
	for _, s := range goneSigns {
		for _, forms := range []struct {
			forms []string
			word  string
		}{{named, s.name}, {past, s.past}, {usedTo, s.usedTo}} {
			for _, form := range forms.forms {
				phrase := strings.Replace(form, "{}", forms.word, 1)
				if s.symptom == "noise" && strings.HasSuffix(phrase, "clear now") || s.supplyOrRepair(phrase) {
					continue
				}
				for _, frame := range []framed{{"{}", "", ""}, {"64 kitchen, {}", "64 kitchen", ""}, {"{}. 64 kitchen", "64 kitchen", ""}, {"prv 2015. {}", "prv year 2015", ""}} {
					all = append(all, said{strings.Replace(frame.text, "{}", phrase, 1), strings.TrimPrefix(frame.beside+"; no "+s.symptom, "; ")})
				}
			}
		}
	}
	readPhrases(t, all, framedParts[:1])
}

// supplyOrRepair tells whether a phrase says of coloured water or of a drip that it is gone, which tells of the supply or of a repair.
func (s goneSign) supplyOrRepair(phrase string) bool {
	ended := strings.Contains(phrase, " is ") || strings.Contains(phrase, " quit")
	return ended && (strings.HasSuffix(s.name, "water") || s.symptom == "leak")
}

// TestGridOfSymptomsStillThere reads symptoms of an earlier day that are there still, and those that only ran out by themselves.
func TestGridOfSymptomsStillThere(t *testing.T) {
	var all []said
	for _, s := range goneSigns {
		for _, form := range []string{"{} last week, still does", "{} last week and again today", "{} yesterday", "{} last night", "{} this morning"} {
			all = append(all, said{strings.Replace(form, "{}", s.past, 1), s.symptom})
		}
	}
	all = append(all, said{"ran black for ten seconds then cleared", "dark_water"}, said{"water ran brown for a minute, clear now", "rusty_water"})
	readPhrases(t, all, framedParts)
}

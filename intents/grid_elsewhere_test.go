package intents

import (
	"strings"
	"testing"
)

// TestGridOfThingsElsewhere reads what is told of a thing of this house beside the same of another house, of which
// nothing is kept: "neighbor's reg is shot, ours is fine", "the tank at the last job was dead. the one here is good".
func TestGridOfThingsElsewhere(t *testing.T) {
	elsewhere := []string{
		"neighbor's {n}", "the neighbor's {n}", "neighbors {n}", "next door's {n}", "the {n} next door", "the {n} at the last house", "the last house's {n}",
		"the {n} at the last place", "the {n} at the last job", "the {n} across the street", "his brother's {n}", "the {n} at her mom's house",
	}
	here := []string{"ours {g}", "this one {g}", "the one here {g}", "hers {g}", "the {n} here {g}", "this {n} {g}", "the one in this house {g}", "the {n} at this house {g}"}
	forms := []string{"{o} {b}, {u}", "{o} {b} but {u}", "{o} {b}. {u}"}
	theirs := []string{"is shot", "is bad", "was dead", "is from 2009", "is 12 years old"}
	ours := [][2]string{{"is good", "good"}, {"works fine", "good"}, {"looks good", "good"}, {"is a 2018", "year 2018"}}
	names := map[string][]string{"prv": {"reg", "prv", "regulator"}, "expansion_tank": {"exp tank", "expansion tank"}, "heater": {"heater", "water heater"}}
	var all []said
	n := 0
	for _, item := range []string{"prv", "expansion_tank", "heater"} {
		for _, other := range elsewhere {
			for _, own := range here {
				for _, form := range forms {
					n++
					good, name := ours[n%len(ours)], names[item][n%len(names[item])]
					phrase := strings.NewReplacer("{o}", other, "{u}", own).Replace(form)
					phrase = strings.NewReplacer("{n}", name, "{b}", theirs[n%len(theirs)], "{g}", good[0]).Replace(phrase)
					all = append(all, said{phrase, item + " " + good[1]})
				}
			}
			all = append(all, said{strings.Replace(other, "{n}", names[item][0], 1) + " is shot", "ask none"})
		}
	}
	readPhrases(t, all, framedParts[:1])
}

// TestGridOfThingsElsewhereBesideReadings reads the readings of this house beside what is told of another's things.
func TestGridOfThingsElsewhereBesideReadings(t *testing.T) {
	var all []said
	for _, phrase := range []string{
		"neighbor's reg is shot", "the tank next door is flat", "the neighbor has a bad reg", "next door has no prv", "his brother's heater is from 2003",
		"the reg at the last house was stuck",
	} {
		all = append(all, said{phrase, ""})
	}
	readPhrases(t, all, framedParts[2:3])
}

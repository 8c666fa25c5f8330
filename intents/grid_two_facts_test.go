package intents

import (
	"slices"
	"strings"
	"testing"
)

// fact2 is a fact of a thing: told by a verb, by itself, and before the thing's name ("" where it is not); and
// what it is read as.
type fact2 struct{ verb, bare, before, want string }

// The facts of the grid, by what they tell; the order of the lists is that in which they are read out.
var (
	factsOfYear = []fact2{
		{"is six years old", "6 yrs old", "six year old", "year 2020"}, {"is from 2014", "2014", "2014", "year 2014"},
		{"went in in 2014", "installed 2014", "2014", "year 2014"}, {"is dated 2014", "tag says 2014", "2014", "year 2014"},
		{"has been in since 2014", "in since 2014", "", "year 2014"}, {"was put in six years ago", "put in 6 years ago", "", "year 2020"},
	}
	factsOfCondition = []fact2{
		{"is shot", "shot", "bad", "failed"}, {"doesn't work", "not working", "dead", "failed"}, {"looks rough", "rough looking", "rough looking", "suspect"},
		{"is corroded", "corroded", "corroded", "suspect"}, {"works fine", "works fine", "good", "good"}, {"is in good shape", "in good shape", "good", "good"},
	}
	factsOfThings = map[string][][]fact2{
		"prv": {factsOfYear, {{"is set at 60", "set at 60", "", "set 60"}}, factsOfCondition},
		"expansion_tank": {factsOfYear, {{"holds two gallons", "2 gal", "2 gallon", "2 gal"}}, {{"is charged to 40", "air at 40", "", "set 40"}, {"has 40 psi of air in it", "40 psi of air", "", "set 40"}},
			factsOfCondition},
		"heater": {factsOfYear, {{"holds 50 gallons", "50 gal", "50 gallon", "50 gal"}}, {{"is gas", "gas", "gas", "gas"}, {"runs on propane", "propane", "propane", "propane"}},
			{{"is set to 120", "set at 120", "", "120 F"}}, factsOfCondition, {{"has never been flushed", "never flushed", "", "never maintained"}}},
		"softener":    {factsOfYear, factsOfCondition},
		"check_valve": {factsOfYear, factsOfCondition},
		"recirc":      {factsOfYear, factsOfCondition},
	}
	namesOfTwo = map[string][]string{
		"prv": {"reg", "the prv"}, "expansion_tank": {"exp tank", "the tank"}, "heater": {"heater", "the water heater"}, "softener": {"softener"},
		"check_valve": {"check valve"}, "recirc": {"recirc pump"},
	}
)

// twoFactForms are the ways to tell two facts of one thing: v and b are told by a verb and by themselves, x before the name.
var twoFactForms = []string{
	"{n} {v1} and {v2}", "{n} {v1} and it {v2}", "{n} {v1}, {b2}", "{n} {v1}, it {v2}", "{n} {v1}. it {v2}", "{n} {v1} but {v2}", "{n} {v1} but it {v2}",
	"{n} {v1} though it {v2}", "{n}: {b1}, {b2}", "{n}, {b1}, {v2}", "{x1} {n} {v2}", "{x1} {n}, {b2}",
	"there's a {x1} {n}, {b2}", "there's a {x1} {n} that {v2}", "got a {x1} {n} and it {v2}", "they have a {x1} {n}. it {v2}", "{n} in the garage {v1}, {v2}",
	"{n} {v1}, also {v2}", "{n} {v1}, and {v2}", "{n} {v1}. that one {v2}", "{n} {v1}. {v2}", "{n} {v2} even tho it {v1}",
}

// TestGridOfTwoFactsOfOneThing reads two facts of one thing in every order, with a verb or none, in one sentence or
// two: "six year old tank, shot", "the tank is shot. it has been in since 2014".
func TestGridOfTwoFactsOfOneThing(t *testing.T) {
	var all []said
	n := 0
	for _, item := range []string{"prv", "expansion_tank", "heater", "softener", "check_valve", "recirc"} {
		for i, ones := range factsOfThings[item] {
			for j, others := range factsOfThings[item] {
				if i == j {
					continue
				}
				for _, one := range ones {
					for _, other := range others {
						for _, form := range twoFactForms {
							name := namesOfTwo[item][n%len(namesOfTwo[item])]
							n++
							if n%5 > 0 || strings.Contains(form, "{x1}") && (one.before == "" || strings.HasPrefix(name, "the ")) {
								continue
							}
							all = append(all, said{one.with(other, form, name), item + " " + inTurn(i, j, one.want, other.want)})
						}
					}
				}
			}
		}
	}
	readPhrases(t, all, framedParts[:3])
}

// with writes a fact and another one into a form.
func (f fact2) with(other fact2, form, name string) string {
	return strings.NewReplacer("{n}", name, "{v1}", f.verb, "{v2}", other.verb, "{b1}", f.bare, "{b2}", other.bare, "{x1}", f.before).Replace(form)
}

// inTurn returns two facts in the order in which they are read out.
func inTurn(i, j int, one, other string) string {
	both := []string{one, other}
	if j < i {
		slices.Reverse(both)
	}
	return strings.Join(both, " ")
}

package intents

import (
	"slices"
	"strings"
	"testing"
)

// pairedThings are the things of which two are told side by side, with their names.
var pairedThings = []struct {
	item  string
	names []string
}{
	{"prv", []string{"prv", "reg", "the regulator"}}, {"expansion_tank", []string{"tank", "exp tank", "the expansion tank"}},
	{"heater", []string{"heater", "htr", "the water heater"}}, {"softener", []string{"softener"}}, {"check_valve", []string{"check valve"}},
	{"recirc", []string{"recirc"}},
}

// pairedFacts are what is told of each of them: with a verb, by itself, and what it is read as.
var pairedFacts = [][3]string{
	{"is from 2011", "2011", "year 2011"}, {"is 12 years old", "12 yrs", "year 2014"}, {"went in in 2018", "in since 2018", "year 2018"}, {"is a 2016", "2016", "year 2016"},
	{"has no date", "no date", "age unknown"}, {"is shot", "shot", "failed"}, {"is no good", "no good", "failed"}, {"is fine", "fine", "good"},
	{"looks ok", "ok", "good"}, {"is corroded", "corroded", "suspect"}, {"is getting weak", "weak", "suspect"},
}

// TestGridOfTwoThingsSideBySide reads a fact of each of two things, told in one line with any mark or none between.
func TestGridOfTwoThingsSideBySide(t *testing.T) {
	forms := []string{"{a}, {b}", "{a} and {b}", "{a} but {b}", "{a}. {b}", "{a} / {b}", "{a}\n{b}", "{a} {b}", "{a}, and {b}", "{a}, {b} though", "{a} while {b}", "{a} - {b}"}
	var all []said
	n := 0
	for _, one := range pairedThings {
		for _, other := range pairedThings {
			for _, form := range forms {
				for v := range 2 {
					n += 7
					f, g := pairedFacts[n%len(pairedFacts)], pairedFacts[(n/3+v)%len(pairedFacts)]
					if one.item == other.item || form == "{a} {b}" && v > 0 {
						continue
					}
					a, b := one.names[n%len(one.names)]+" "+f[v], other.names[n%len(other.names)]+" "+g[v]
					all = append(all, said{strings.NewReplacer("{a}", a, "{b}", b).Replace(form), inOrder(one.item+" "+f[2], other.item+" "+g[2])})
				}
			}
		}
	}
	readPhrases(t, all, framedParts[:1])
}

// TestGridOfOneFactOfTwoThings reads a fact told once of two things: "both prv and tank from 2011", "prv and tank
// shot", "prv corroded, tank as well".
func TestGridOfOneFactOfTwoThings(t *testing.T) {
	forms := []string{
		"both {a} and {b} {v}", "{a} and {b} both {v}", "{a} and {b} {v}", "the {a} and the {b} {v}", "{a}/{b} {v}", "{a} & {b} {v}", "{a} plus {b} {v}",
		"{a}, {b} both {v}", "{a} and {b}: {w}", "{a} and {b} {w}", "{a} and {b} are both {w}", "{a} {w}, same for the {b}", "{a} {w}, {b} too",
		"{a} {w} and so is the {b}", "{a} {w}, {b} same", "{a} {w}, ditto {b}", "{a} {w}, {b} as well",
	}
	facts := [][3]string{
		{"are from 2011", "2011", "year 2011"}, {"went in in 2018", "2018", "year 2018"}, {"are 12 years old", "12 yrs old", "year 2014"}, {"are shot", "shot", "failed"},
		{"are good", "good", "good"}, {"look fine", "fine", "good"}, {"are corroded", "corroded", "suspect"},
	}
	var all []said
	n := 0
	for _, one := range pairedThings[:4] {
		for _, other := range pairedThings[:4] {
			for _, form := range forms {
				for _, f := range facts {
					if n++; one.item != other.item && n%2 > 0 {
						phrase := strings.NewReplacer("{a}", one.names[0], "{b}", other.names[0], "{v}", f[0], "{w}", f[1]).Replace(form)
						all = append(all, said{phrase, inOrder(one.item+" "+f[2], other.item+" "+f[2])})
					}
				}
			}
		}
	}
	readPhrases(t, all, framedParts[:1])
}

// inOrder joins facts in the order of the alphabet.
func inOrder(facts ...string) string {
	slices.Sort(facts)
	return strings.Join(facts, "; ")
}

package intents

import (
	"strings"
	"testing"
)

// TestGridOfThingsNotInstalled reads what a house lacks, told as not put in.
func TestGridOfThingsNotInstalled(t *testing.T) {
	names := map[string][]string{"expansion_tank": {"exp tank", "expansion tank"}, "check_valve": {"check valve"}, "softener": {"softener"}, "recirc": {"recirc pump"}, "prv": {"prv", "regulator"}}
	forms := []string{"no {n} installed", "no {n} installed here", "no {n} on this house", "there is no {n}", "no {n} was ever installed", "never had a {n}", "no {n} present"}
	var all []said
	for _, item := range []string{"expansion_tank", "check_valve", "softener", "recirc", "prv"} {
		all = append(all, filled(forms, names[item], [][2]string{{"", "none"}}, item)...)
	}
	readPhrases(t, all, framedParts)
}

// TestGridOfQuietRegulators reads that a regulator makes no noise.
func TestGridOfQuietRegulators(t *testing.T) {
	var all []said
	for _, phrase := range product([]string{"prv", "the reg", "regulator"}, []string{"is quiet", "runs quiet", "is quiet now"}) {
		all = append(all, said{phrase, "no noise"})
	}
	all = append(all, said{"put foam on the pipe to keep the noise down", ""}, said{"wrapped the line to cut the noise down", ""})
	readPhrases(t, all, framedParts[1:3])
}

// TestGridOfRegulatorsThatDoNothing reads regulators that do not regulate, and one that could not be got at, of which
// nothing is known.
func TestGridOfRegulatorsThatDoNothing(t *testing.T) {
	var all []said
	for _, name := range []string{"prv", "the reg", "regulator"} {
		for _, word := range []string{"isn't doing anything", "isnt doing anything", "ain't doing squat", "not doing anything", "couldn't be adjusted, screw is frozen"} {
			all = append(all, said{name + " " + word, "prv failed"})
		}
		for _, why := range []string{"no key for the box", "box is locked", "customer wouldn't let me", "ran out of time", "no ladder", "needed a bigger wrench"} {
			all = append(all, said{"couldn't adjust the " + strings.TrimPrefix(name, "the ") + ", " + why, ""})
		}
	}
	readPhrases(t, all, framedParts[1:])
}

// TestGridOfMendedDrainValves reads a drain valve that dripped and was replaced: the drip is no leak any more.
func TestGridOfMendedDrainValves(t *testing.T) {
	dripped := []string{"drain valve dripped", "drain valve was dripping", "the drain valve leaked", "heater drain valve was leaking"}
	replaced := []string{"so I put a brass one in", "so I put a brass one on", "put a brass one in"}
	var all []said
	for _, phrase := range product(dripped, replaced) {
		all = append(all, said{phrase, "drain_valve brass; replaced_drain_valve"})
	}
	for _, was := range dripped {
		all = append(all, said{was + ", replaced it", "replaced_drain_valve"})
	}
	readPhrases(t, all, framedParts[:3])
}

// TestGridOfGasOfAnotherYear reads talk of gas: that of another year is none, unless it is there again.
func TestGridOfGasOfAnotherYear(t *testing.T) {
	var all []said
	for _, had := range []string{"had a gas leak", "they had a gas leak", "there was a gas leak", "she had a gas leak"} {
		for _, then := range []string{"last year", "last winter", "two years ago", "in 2019"} {
			all = append(all, said{had + " " + then, ""})
			for _, again := range []string{" and smells it again", ", still smells gas", ", smells like gas now", " and it's back"} {
				all = append(all, said{had + " " + then + again, "gas_smell"})
			}
		}
		all = append(all, said{had + " last night", "gas_smell"}, said{had + " this morning", "gas_smell"})
	}
	readPhrases(t, all, framedParts[2:3])
}

// TestGridOfNeedlesStuckAtAPeak reads the highest value at which a needle stopped, which is not the gauge's fault.
func TestGridOfNeedlesStuckAtAPeak(t *testing.T) {
	var all []said
	for _, phrase := range []string{"laundry gauge: max needle stuck at {v}", "laundry gauge, lazy hand stuck at {v}", "max needle on the laundry gauge stuck at {v}", "laundry gauge max needle stuck at {v}"} {
		for _, v := range []string{"128", "96"} {
			all = append(all, said{strings.Replace(phrase, "{v}", v, 1), v + " laundry peak"})
		}
	}
	readPhrases(t, all, framedParts[:1])
}

// TestGridOfWorkOfOthers reads what somebody else put in and set, in two verbs.
func TestGridOfWorkOfOthers(t *testing.T) {
	var all []said
	for _, who := range []string{"somebody", "someone", "last plumber", "the last guy", "the owner"} {
		for _, set := range []string{"and set it at 55", "and set it to 55"} {
			all = append(all, said{who + " replaced the prv in 2020 " + set, "prv year 2020 set 55"})
		}
	}
	readPhrases(t, all, framedParts)
}

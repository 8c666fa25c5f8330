package intents

import (
	"strings"
	"testing"
)

// TestGridOfThenAndNow reads a condition told of an earlier day and then of today: today's is kept, and the earlier
// day is no year of the thing. "prv was bad last year, fine now", "tank used to be dead, good now".
func TestGridOfThenAndNow(t *testing.T) {
	forms := []string{
		"{n} was {x} {t}, {y} now", "{n} was {x} {t} but it's {y} now", "{n} was {x} {t}. {y} now", "{n} was {x} {t}, now it's {y}", "{n} was {x} {t} but is {y} now",
	}
	times := []string{"last year", "last spring", "a year ago", "last visit", "last time", "before", "in 2020", "two years ago", "a while back"}
	good := [][2]string{{"good", "good"}, {"fine", "good"}, {"ok", "good"}}
	bad := [][2]string{{"bad", "failed"}, {"shot", "failed"}, {"dead", "failed"}, {"no good", "failed"}, {"failing", "suspect"}}
	var all []said
	n := 0
	add := func(name, item, form, then string, now [2]string) {
		n++
		phrase := strings.NewReplacer("{n}", name, "{x}", then, "{y}", now[0], "{t}", times[n%len(times)]).Replace(form)
		all = append(all, said{phrase, item + " " + now[1]})
	}
	for _, thing := range pairedThings {
		for _, name := range thing.names {
			for _, form := range append(forms, "{n} used to be {x}, {y} now") {
				for k, b := range bad {
					add(name, thing.item, form, b[0], good[k%len(good)])
					add(name, thing.item, form, good[k%len(good)][0], b)
				}
			}
		}
	}
	readPhrases(t, all, framedParts[:1])
}

// TestGridOfReplacedSince reads a bad part of an earlier day that was replaced since: nothing is bad any more.
func TestGridOfReplacedSince(t *testing.T) {
	var all []said
	for _, form := range []string{"{n} was {x} {t}, been replaced since", "{n} was {x} {t} but been replaced since", "{n} was {x} {t}, since replaced", "{n} was {x} {t}, replaced since"} {
		for _, name := range []string{"prv", "the reg", "heater"} {
			for _, bad := range []string{"bad", "shot", "dead", "failing"} {
				for _, then := range []string{"last year", "last spring", "last visit"} {
					all = append(all, said{strings.NewReplacer("{n}", name, "{x}", bad, "{t}", then).Replace(form), "ask none"})
				}
			}
		}
	}
	readPhrases(t, all, framedParts[:1])
}

package intents

import "testing"

// How techs say that a pressure was read before the work or after it: words behind the pressure, words
// before it, the job named by a verb or by a noun, and the pressure that the job brought about.

func TestEveryWayToSayBeforeAndAfterTheWork(t *testing.T) {
	found := []string{"on arrival", "when i got here", "coming in", "as found", "before", "to start", "at the start", "on the way in",
		"beforehand", "with the old one", "before i started", "when we pulled up"}
	left := []string{"on leaving", "when i left", "going out", "as left", "after", "at the end", "when i packed up", "on the way out",
		"afterward", "to finish", "once i was done", "as i leave"}
	both := "60 kitchen after; 95 kitchen before; replaced_prv"
	inFrames(t, [][2]string{{"{}", both}},
		product([]string{"kitchen 95", "kitchen was 95"}, found, []string{", swapped the prv, kitchen 60", ", new prv in, kitchen 60"}, left))
	inFrames(t, [][2]string{{"{}", both}},
		product([]string{"as found", "on arrival", "arrived", "initial", "before", "found", "when i got there", "first thing", "pre", "arrival:"},
			[]string{"kitchen 95, swapped the prv,", "kitchen 95. swapped the prv."},
			[]string{"as left", "on leaving", "departed", "final", "after", "left", "when i left", "last thing", "post", "departure:"},
			[]string{"kitchen 60", "kitchen 60."}))
	inFrames(t, [][2]string{{"{}", both}, {"9 Elm St. {}", both}},
		product([]string{"started out at 95 on the kitchen", "got there and the kitchen had 95", "with the old reg the kitchen had 95"},
			[]string{", swapped the prv,"}, []string{"ended up at 60", "when i packed up it had 60", "leaving it had 60"}),
		product([]string{"pre: 95. post: 60.", "before 95. after 60.", "as found 95. as left 60."},
			[]string{"kitchen.", "kitchen tap."}, []string{"swapped the prv.", "put in a new prv."}),
		product([]string{"kitchen showed 95 so i swapped the prv", "kitchen had 95, swapped the prv"},
			[]string{"and that", "which"}, []string{"brought it", "took it", "dropped it", "got it"}, []string{"to", "down to"}, []string{"60", "60."}))
}

func TestEveryWayToNameTheJobThatAPressureIsToldBy(t *testing.T) {
	replaced := product([]string{"swapping", "replacing", "changing out"}, []string{"the prv", "the reg", "that regulator"})
	set := product([]string{"turning", "dialing"}, []string{"the prv down", "the reg back", "the regulator down"})
	swap := product([]string{"the", "my"}, []string{"prv", "reg", "regulator"}, []string{"swap", "replacement", "changeout"})
	adjusted := product([]string{"the"}, []string{"prv", "reg"}, []string{"adjustment", "adj", "tweak"})
	frames := func(work string) [][2]string {
		both := "60 kitchen after; 95 kitchen before; " + work
		return [][2]string{
			{"kitchen 95 before {}, 60 after", both},
			{"kitchen was 95 before {} and 60 after it", both},
			{"kitchen 95 prior to {}, kitchen 60 after that", both},
			{"after {} the kitchen was 60", "60 kitchen after; " + work},
			{"kitchen 60 after {}", "60 kitchen after; " + work},
		}
	}
	inFrames(t, frames("replaced_prv"), replaced, swap)
	inFrames(t, frames("set_prv"), set, adjusted)
	deeds := product([]string{"i", "we"}, []string{"changed out the prv", "put in a new prv", "swapped the reg", "put a new reg in"})
	inFrames(t, [][2]string{
		{"kitchen 95 before {}", "95 kitchen before; replaced_prv"},
		{"kitchen 95 before {} and 60 once i was done", "60 kitchen after; 95 kitchen before; replaced_prv"},
		{"kitchen 60 after {}", "60 kitchen after; replaced_prv"},
		{"once {} the kitchen came to 60", "60 kitchen after; replaced_prv"},
	}, deeds)
	inFrames(t, [][2]string{
		{"kitchen 60, 2 weeks after {}", "60 kitchen"},
		{"kitchen 60, will recheck after {}", "60 kitchen; plan recheck; plan replace_prv"},
	}, swap)
}

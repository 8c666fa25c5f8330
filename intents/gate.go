package intents

import (
	"reflect"
	"slices"
)

// A gate spares a rule the messages that it cannot read. Most rules hang on a word or
// two that few messages hold, yet they look at every item of every message; a gate asks
// once whether the message holds any of those words at all. It is declared beside its
// rule, by what the rule cannot do without, and may change no reading:
// TestGatesChangeNothing reads with all of them open.
type gate uint8

// alwaysOpen is the gate of a rule that asks itself.
const alwaysOpen gate = 0

// gates are what opens each gate.
var gates = []opener{alwaysOpen: {}}

// gateOf returns the gate that an opener opens: rules that cannot do without the same share one.
func gateOf(o opener) gate {
	if g := slices.IndexFunc(gates, func(x opener) bool { return reflect.DeepEqual(x, o) }); g > 0 {
		return gate(g)
	}
	if len(gates) == mostGates {
		panic("there is no room for another gate: raise mostGates")
	}
	gates = append(gates, o)
	return gate(len(gates) - 1)
}

// onlyWith is the gate of a rule that needs one of some values of a class.
func onlyWith(c class, values ...string) gate {
	return gateOf(opener{values: map[class][]string{c: values}})
}

// onlyWithClass is the gate of a rule that needs an item of one of some classes.
func onlyWithClass(cs ...class) gate { return gateOf(opener{classes: setOf(cs...)}) }

// onlyWithWords is the gate of a rule that needs an item that reads as one of some words that are
// its own grammar; such as may grow stand in a list.
func onlyWithWords(words ...string) gate { return gateOf(opener{words: words}) }

// onlyWithList is the gate of a rule that needs an item of one of some lists.
func onlyWithList(lists ...list) gate { return gateOf(opener{lists: lists}) }

// mostGates is how many gates there is room for.
const mostGates = 256

// gateSet is a set of gates, one bit each.
type gateSet [mostGates / 64]uint64

func (s *gateSet) has(g gate) bool { return s[g>>6%(mostGates/64)]>>(g&63)&1 != 0 }

func (s *gateSet) add(g gate) { s[g>>6%(mostGates/64)] |= 1 << (g & 63) }

// join adds the gates of another set.
func (s *gateSet) join(t *gateSet) {
	for i := range s {
		s[i] |= t[i]
	}
}

// shut tells whether the message holds nothing that opens the gate.
func (m *message) shut(g gate) bool { return !m.open.has(g) }

// openAll opens all gates, and makes every rule try every item.
func (m *message) openAll() {
	m.allKeys, m.cues, m.held = ^key(0), ^cueSet(0), askSet{^uint64(0), ^uint64(0)}
	for i := range m.open {
		m.open[i] = ^uint64(0)
	}
}

package intents

import "slices"

// A gate spares a rule the messages that it cannot read. Most rules hang on a word or
// two that few messages hold, yet they look at every item of every message; a gate asks
// once whether the message holds any of those words at all. It is declared beside its
// rule, names meanings that the rule cannot do without, and may change no reading:
// TestGatesChangeNothing reads with all of them open.
type gate []meaning

// meaning is the place of a class and value in a table of what a message holds; a word or a
// phrase stands there too, by its letters. Two may fall on one place: then a gate is open that
// could be shut.
type meaning uint16

// meanings is the size of that table.
const meanings = 4096

// meaningSet is a set of meanings, one bit each.
type meaningSet [meanings / 64]uint64

func (s *meaningSet) has(x meaning) bool { return s[x>>6%(meanings/64)]>>(x&63)&1 != 0 }

func (s *meaningSet) add(x meaning) { s[x>>6%(meanings/64)] |= 1 << (x & 63) }

// onlyWith is the gate of a rule that needs one of some values of a class.
func onlyWith(c class, values ...string) gate {
	var g gate
	for _, v := range values {
		g = append(g, meaningOf(c, v))
	}
	return g
}

// onlyWithWords is the gate of a rule that needs an item that reads as one of some words.
func onlyWithWords(words ...string) gate { return onlyWith(cNone, words...) }

// either is the gate of a rule that needs what one of some gates asks for.
func either(gates ...gate) gate { return slices.Concat(gates...) }

// wordMeaning returns the place of a word or a phrase in the table of meanings.
func wordMeaning(s string) meaning { return meaningOf(cNone, s) }

// meaningOf returns the place of a class and a value in the table of meanings.
func meaningOf(c class, value string) meaning {
	h := uint32(c) + 17
	for i := range len(value) {
		h = h*31 + uint32(value[i])
	}
	return meaning(h % meanings)
}

// shut tells whether the message holds nothing that the gate asks for.
func (m *message) shut(g gate) bool {
	for _, x := range g {
		if m.holds.has(x) {
			return false
		}
	}
	return true
}

// openAll opens all gates, and makes every rule try every item.
func (m *message) openAll() {
	m.allKeys = ^key(0)
	for i := range m.holds {
		m.holds[i] = ^uint64(0)
	}
}

// hold notes that the message holds what item i reads as and means.
func (m *message) hold(i int) {
	it := &m.items[i]
	m.holds.add(it.reads)
	for _, t := range it.tags {
		m.holds.add(t.meaning)
	}
}

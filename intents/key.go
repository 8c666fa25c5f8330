package intents

import (
	"maps"
	"slices"
)

// A key spares a rule the items that it cannot begin at. Many rules try each item of a
// message and begin at few: a day begins at the name of a day, never at "the". What a
// rule may begin at, its opener, is declared beside it; every phrase of the lexicon, and
// every word, carries the keys of all rules that it opens, so that a rule asks for one
// bit. Like a gate a key may change no reading: TestGatesChangeNothing opens all.
type key uint8

const (
	keyDay    key = iota // a day or a span of time to come
	keyAgo               // a day gone by
	keyPlace             // a test point
	keyDeed              // something done
	keyAction            // something to do
	keyFlow              // water that runs or rests
	keyState             // the heater's state
	keyTime              // before or after the work
	keyFact              // a fact of equipment
	keySymptom
	keyTank // talk of a tank
)

// openers are what each rule may begin at, by its key.
var openers = [...]opener{
	keyDay: dayOpener, keyAgo: agoOpener, keyPlace: placeOpener, keyDeed: deedOpener, keyAction: actionOpener,
	keyFlow: flowOpener, keyState: stateOpener, keyTime: timeOpener, keyFact: factOpener, keySymptom: symptomOpener, keyTank: tankTalkOpener,
}

// opener is what a rule may begin at: items of some classes, with some hints, or of some
// words, as they are typed or as the lexicon spells them.
type opener struct {
	classes classSet
	hints   []string // values of the class hint
	items   []string // values of the class item
	words   []string
}

// keySet is a set of keys, one bit each.
type keySet uint64

// keyring tells the keys of phrases and words.
type keyring struct {
	classes [64]keySet
	hints   map[string]keySet
	items   map[string]keySet
	words   map[string]keySet
}

// newKeyring sorts openers by what opens them.
func newKeyring() *keyring {
	r := &keyring{hints: map[string]keySet{}, items: map[string]keySet{}, words: map[string]keySet{}}
	for k, o := range openers {
		bit := keySet(1) << k
		for c := range r.classes {
			if o.classes.has(class(c)) {
				r.classes[c] |= bit
			}
		}
		for _, h := range o.hints {
			r.hints[h] |= bit
		}
		for _, v := range o.items {
			r.items[v] |= bit
		}
		for _, w := range o.words {
			r.words[w] |= bit
		}
	}
	return r
}

// of returns the keys of a phrase with its tags.
func (r *keyring) of(phrase string, tags []tag) keySet {
	s := r.words[phrase]
	for _, t := range tags {
		s |= r.classes[t.class]
		switch t.class {
		case cHint:
			s |= r.hints[t.value]
		case cItem:
			s |= r.items[t.value]
		}
	}
	return s
}

// begins tells whether a rule may begin at item i.
func (m *message) begins(k key, i int) bool { return (m.items[i].keys|m.allKeys)>>k&1 != 0 }

// holdsKey tells whether a rule may begin anywhere in the message.
func (m *message) holdsKey(k key) bool { return (m.keys|m.allKeys)>>k&1 != 0 }

// wordsOf returns the words of a table.
func wordsOf[V any](table map[string]V) []string { return slices.Collect(maps.Keys(table)) }

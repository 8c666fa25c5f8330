package intents

import (
	"maps"
	"slices"
)

// A key spares a rule the items that it cannot begin at. Many rules try each item of a
// message and begin at few: a day begins at the name of a day, never at "the". What a
// rule may begin at, its opener, is declared beside it; every phrase of the lexicon, and
// every word, carries the keys of all rules that it opens, so that a rule asks for one
// bit. Like a gate such a key may change no reading: TestGatesChangeNothing opens all.
//
// A key whose opener is a list of words is at the same time that list: said tells
// whether an item is one of them.
type key uint64

const (
	keyDay      key = 1 << iota // a day or a span of time to come
	keyAgo                      // a day gone by
	keyPlace                    // a test point
	keyDid                      // a verb of work: something done
	keyBase                     // one in its base form
	keyPuts                     // puts or gives something
	keyGoesIn                   // "in", "went in": of a new part
	keyNew                      // something new
	keyMoves                    // moves a setting
	keyLeaks                    // what may have been mended
	keyJob                      // names or heads a job
	keyInner                    // of what is inside a regulator or a heater
	keyWorked                   // a word that may tell work by its form
	keyFirstOne                 // any, where the first part of a house is told
	keyAction                   // something to do
	keyFlow                     // water that runs or rests
	keyState                    // the heater's state
	keyTime                     // before or after the work
	keyFact                     // a fact of equipment
	keySymptom                  // a symptom
	keyTank                     // talk of a tank
	keyTyre
	keyLimit
	keyWarm

	// Lists of words.
	keyWants
	keyFalls
	keySays
	keyWas
	keyAirs
	keySets
	keyPutNew
	keyShutsOff
	keyTurns
	keyRefills
	keyUnread

	keyAsks     // begins a question or an order
	keyHow      // asks for the way to do something
	keyJoins    // a word that a clause may begin behind
	keyAnew     // a word that begins another clause
	keyNoun     // a noun whose number is a name
	keyMoney    // a sum of money
	keyDial     // what a thermostat is set by
	keyHigh     // the higher of two
	keyUpstairs // a point told by the floor, or "back at"
	keyUndoes   // what undoes a phrase that swallowed it
	keyBoth     // two of a kind
)

// openers are what each rule may begin at.
var openers = [...]struct {
	key key
	opener
}{
	{keyDay, dayOpener}, {keyAgo, agoOpener}, {keyPlace, placeOpener}, {keyAction, actionOpener},
	{keyFlow, flowOpener}, {keyState, stateOpener}, {keyTime, timeOpener}, {keyFact, factOpener}, {keySymptom, symptomOpener},
	{keyDid, didOpener}, {keyBase, baseOpener}, {keyPuts, putsOpener}, {keyGoesIn, goesInWords}, {keyNew, newOpener},
	{keyMoves, moveOpener}, {keyLeaks, leakOpener}, {keyJob, jobOpener}, {keyInner, innerOpener},
	{keyTank, tankTalkOpener}, {keyTyre, tyreOpener}, {keyLimit, limitOpener}, {keyWarm, warmOpener},
	{keyWants, wantWords}, {keyFalls, fallWords}, {keySays, sayWords}, {keyWas, wasWords}, {keyAirs, airWords}, {keySets, setWords},
	{keyPutNew, putNewWords}, {keyShutsOff, shutOffWords}, {keyTurns, turnWords}, {keyRefills, refillWords}, {keyUnread, unreadWords},
	{keyAsks, asksOpener}, {keyHow, howOpener}, {keyJoins, opener{words: []string{"and", "y", "pero", "but", "so"}}}, {keyAnew, anewWords},
	{keyNoun, nounWords}, {keyMoney, moneyOpener}, {keyDial, dialOpener}, {keyHigh, opener{words: []string{"high", "hi"}}},
	{keyUpstairs, upstairsOpener}, {keyUndoes, undoesOpener}, {keyBoth, opener{words: []string{"both", "dos", "ambos", "ambas"}}},
}

// opener is what a rule may begin at: items of some classes, with some hints, or of some
// words.
type opener struct {
	classes classSet
	hints   []string // values of the class hint
	items   []string // values of the class item
	words   []string // as the item has them
	lists   []list   // of such words
	typed   []string // as they were typed, whatever the lexicon makes of them
}

// keyring tells the keys of phrases and words.
type keyring struct {
	classes [64]key
	hints   map[string]key
	items   map[string]key
	words   map[string]key
	typed   map[string]key
	lists   map[string]*listSet // by word or phrase: the lists that it stands in
}

// newKeyring sorts openers by what opens them; the lexicon knows its lists already.
func newKeyring(l *lexicon) *keyring {
	r := &keyring{hints: map[string]key{}, items: map[string]key{}, words: map[string]key{}, typed: map[string]key{},
		lists: listsOf(l.lists)}
	for _, o := range openers {
		for c := range r.classes {
			if o.classes.has(class(c)) {
				r.classes[c] |= o.key
			}
		}
		add := func(keys map[string]key, words []string) {
			for _, w := range words {
				keys[w] |= o.key
			}
		}
		add(r.hints, o.hints)
		add(r.items, o.items)
		add(r.words, o.words)
		for _, x := range o.lists {
			add(r.words, wordsOf(l.lists[x]))
		}
		add(r.typed, o.typed)
	}
	return r
}

// of returns the keys of meanings.
func (r *keyring) of(tags []tag) (k key) {
	for _, t := range tags {
		k |= r.classes[t.class]
		switch t.class {
		case cHint:
			k |= r.hints[t.value]
		case cItem:
			k |= r.items[t.value]
		}
	}
	return k
}

// enter gives the words of the lexicon their keys.
func (r *keyring) enter(l *lexicon) {
	for w, k := range r.words {
		l.entry(w).keys = k
	}
	for w, k := range r.typed {
		l.entry(w).typed = k
	}
	for w, set := range r.lists {
		l.entry(w).lists = set
	}
}

// begins tells whether a rule, or any of some, may begin at item i.
func (m *message) begins(i int, k key) bool { return (m.items[i].keys|m.allKeys)&k != 0 }

// holdsKey tells whether a rule may begin anywhere in the message.
func (m *message) holdsKey(k key) bool { return (m.keys|m.allKeys)&k != 0 }

// said tells whether item i is one of a list of words.
func (m *message) said(i int, k key) bool {
	return i >= 0 && i < len(m.items) && m.items[i].keys&k != 0
}

// wordsOf returns the words of a table.
func wordsOf[V any](table map[string]V) []string { return slices.Collect(maps.Keys(table)) }

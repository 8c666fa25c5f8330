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
	keyAgain                    // to be done once more
	keyOneGoes                  // puts a new one in
	keySide                     // a side of the regulator
	keyBack                     // no place by itself
	keyBackTo                   // the place told last
	keyAge                      // an age that nobody knows
	keyShort                    // a point written by a letter or two, or a part of that name
	keyInOut                    // the house's side of a regulator, "in" and "out"
	keyFlow                     // water that runs or rests
	keyState                    // the heater's state
	keyTime                     // before or after the work
	keyFact                     // a fact of equipment
	keySymptom                  // a symptom
	keyTank                     // talk of a tank
	keyTyre
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

	keyJoins    // a word that a clause may begin behind
	keyAnew     // a word that begins another clause
	keyNoun     // a noun whose number is a name
	keyMoney    // a sum of money
	keyDial     // what a thermostat is set by
	keyHigh     // the higher of two
	keyUpstairs // a point told by the floor, or "back at"
	keyUndoes   // what undoes a phrase that swallowed it
	keyBoth     // two of a kind
	keyBrings   // brings a tap to a pressure
)

// openers are what each rule may begin at.
var openers = [...]struct {
	key key
	opener
}{
	{keyDay, dayOpener}, {keyAgo, agoOpener}, {keyPlace, placeOpener}, {keyAction, actionOpener}, {keyAgain, againOpener}, {keyOneGoes, oneGoesWords},
	{keySide, sideOpener}, {keyBack, backOpener}, {keyBackTo, backToOpener}, {keyAge, ageOpener}, {keyShort, shortOpener}, {keyInOut, inOutOpener},
	{keyFlow, flowOpener}, {keyState, stateOpener}, {keyTime, timeOpener}, {keyFact, factOpener}, {keySymptom, symptomOpener},
	{keyDid, didOpener}, {keyBase, baseOpener}, {keyPuts, putsOpener}, {keyGoesIn, goesInWords}, {keyNew, newOpener},
	{keyMoves, moveOpener}, {keyLeaks, leakOpener}, {keyJob, jobOpener}, {keyInner, innerOpener},
	{keyTank, tankTalkOpener}, {keyTyre, tyreOpener}, {keyWarm, warmOpener},
	{keyWants, wantWords}, {keyFalls, fallWords}, {keySays, sayWords}, {keyWas, wasWords}, {keyAirs, airWords}, {keySets, setWords},
	{keyPutNew, putNewWords}, {keyShutsOff, shutOffWords}, {keyTurns, turnWords}, {keyRefills, refillWords}, {keyUnread, unreadWords},
	{keyJoins, opener{words: []string{"and", "y", "pero", "but", "so"}}}, {keyAnew, anewWords},
	{keyNoun, nounWords}, {keyMoney, moneyOpener}, {keyDial, dialOpener}, {keyHigh, opener{words: []string{"high", "hi"}}},
	{keyUpstairs, upstairsOpener}, {keyUndoes, undoesOpener}, {keyBrings, bringsOpener}, {keyBoth, opener{words: []string{"both", "dos", "ambos", "ambas"}}},
}

// opener is what a rule may begin at or cannot do without: items of some classes, with some
// values, or of some words.
type opener struct {
	classes classSet
	hints   []string // values of the class hint
	items   []string // values of the class item
	values  map[class][]string
	words   []string // as the item has them
	lists   []list   // of such words
	typed   []string // as they were typed, whatever the lexicon makes of them; of a key alone
}

// opens is what a word, a phrase or a meaning opens: the rules that may begin at it, and the
// gates of rules that cannot do without it.
type opens struct {
	keys  key
	gates gateSet
}

// and returns what two open together.
func (a opens) and(b opens) opens {
	a.keys |= b.keys
	a.gates.join(&b.gates)
	return a
}

// valued is a meaning: a class and a value.
type valued struct {
	class class
	value string
}

// keyring tells what phrases and words open.
type keyring struct {
	classes [64]opens
	values  map[valued]opens
	words   map[string]opens
	typed   map[string]key
	lists   map[string]*listSet // by word or phrase: the lists that it stands in
}

// newKeyring sorts openers by what opens them; the lexicon knows its lists already.
func newKeyring(l *lexicon) *keyring {
	r := &keyring{values: map[valued]opens{}, words: map[string]opens{}, typed: map[string]key{}, lists: listsOf(l.lists)}
	for _, o := range openers {
		r.add(l, o.opener, opens{keys: o.key})
	}
	for g, o := range gates {
		var all opens
		all.gates.add(gate(g))
		r.add(l, o, all)
	}
	return r
}

// add hangs up what an opener opens.
func (r *keyring) add(l *lexicon, o opener, to opens) {
	for c := range r.classes {
		if o.classes.has(class(c)) {
			r.classes[c] = r.classes[c].and(to)
		}
	}
	byValue := func(c class, values []string) {
		for _, v := range values {
			r.values[valued{c, v}] = r.values[valued{c, v}].and(to)
		}
	}
	byValue(cHint, o.hints)
	byValue(cItem, o.items)
	for c, values := range o.values {
		byValue(c, values)
	}
	words := slices.Clone(o.words)
	for _, x := range o.lists {
		words = append(words, wordsOf(l.lists[x])...)
	}
	for _, w := range words {
		r.words[w] = r.words[w].and(to)
	}
	for _, w := range o.typed {
		r.typed[w] |= to.keys
	}
}

// of returns what meanings open.
func (r *keyring) of(tags []tag) (o opens) {
	for _, t := range tags {
		o = o.and(r.classes[t.class]).and(r.values[valued(t)])
	}
	return o
}

// enter gives the words of the lexicon what they open.
func (r *keyring) enter(l *lexicon) {
	for w, o := range r.words {
		l.entry(w).opens = o
	}
	for w, k := range r.typed {
		l.entry(w).typed = k
	}
	for w, set := range r.lists {
		l.entry(w).lists = set
	}
	l.enterLeads()
	l.enterAsks()
	for b := range l.letters {
		if e := l.entries.find(string([]byte{byte(b)})); e != nil {
			l.letters[b] = e
		}
	}
}

// begins tells whether a rule, or any of some, may begin at item i.
func (m *message) begins(i int, k key) bool { return (m.items[i].keys|m.allKeys)&k != 0 }

// holdsKey tells whether a rule may begin anywhere in the message.
func (m *message) holdsKey(k key) bool { return (m.keys|m.allKeys)&k != 0 }

// said tells whether item i is one of a list of words.
func (m *message) said(i int, k key) bool {
	return uint(i) < uint(len(m.items)) && m.items[i].keys&k != 0
}

// wordsOf returns the words of a table.
func wordsOf[V any](table map[string]V) []string { return slices.Collect(maps.Keys(table)) }

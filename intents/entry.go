package intents

// entry is all that the lexicon knows of one word. A token looks for its entry once;
// what any rule wants to know of the word is then at hand. What is asked of every word
// of a message stands first, so that two lines of the processor's cache hold it, and an
// entry takes a whole number of such lines.
type entry struct {
	word   string
	id     int32  // in the vocabulary, where it is a word of some phrase; else -1
	sees   glance // the steps that look for it
	tells  tongue // the language that it tells, as a small word
	column head   // what it says as the head of a table's column
	flags
	cues  cueSet // all that it may lend, alone or with others
	asks  askSet // the lists of formulas and opinions that cannot be taken without it
	lists *listSet
	opens
	typed key    // the rules that may begin where it was typed for another word
	one   *entry // of a plural: the thing in the singular

	cue    lends[cueSet]
	sign   lends[signSet]
	parted []parted // particles that part from this verb

	suffix, unit, directional string // of the postal tables: what it is written as

	leads  *listSet      // the lists that hold a phrase of more words which begins with it
	starts []*formula    // the formulas that may begin with it
	whole  string        // the word that it is without its vowels
	beside []wroteBeside // the words that it is beside some others

	_ [48]byte
}

// flags are what is so of a word or not.
type flags struct {
	plain    bool // an everyday word that is no term and no street
	right    bool // stands as it is, never for a term misspelt
	never    bool // never inside a street's name
	heads    bool // begins a street's name of two words
	calle    bool // begins a street's name in Spanish
	toStreet bool // may lead to a street's name
	number   bool // stands in a number told in words
	bare     bool // it has no vowel
	thanks   bool // a word of thanks that may end a message
	denies   bool // a word of a phrase that denies what follows
	mayStart bool // it may begin a formula, or stand before one
	opines   bool // a question for an opinion may begin with it
	follows  bool // a phrase of a list goes on with it
	signs    bool // it lends signs of a symptom
	flat     bool // it names a flat, a floor and the like
}

// stranger is the entry of every word that the lexicon does not know.
var stranger = &entry{id: -1}

// lends is what a word lends to its clause, alone and together with the word after it.
type lends[S ~uint64] struct {
	alone S
	pairs []lentWith[S]
}

type lentWith[S ~uint64] struct {
	next *entry
	set  S
}

// with returns what the word lends together with the one after it.
func (l *lends[S]) with(next *entry) S {
	for i := range l.pairs {
		if l.pairs[i].next == next {
			return l.pairs[i].set
		}
	}
	return 0
}

// pair adds to what the word lends together with the one after it.
func (l *lends[S]) pair(next *entry, set S) {
	for i := range l.pairs {
		if l.pairs[i].next == next {
			l.pairs[i].set |= set
			return
		}
	}
	l.pairs = append(l.pairs, lentWith[S]{next, set})
}

// any returns all that the word may lend.
func (l *lends[S]) any() S {
	set := l.alone
	for i := range l.pairs {
		set |= l.pairs[i].set
	}
	return set
}

// none tells whether the word lends nothing, alone or before any other.
func (l *lends[S]) none() bool { return l.alone == 0 && len(l.pairs) == 0 }

// entry returns the entry of a word, a new one for a new word.
func (l *lexicon) entry(w string) *entry {
	e := l.entries.find(w)
	if e == nil {
		e = &entry{word: w, id: -1}
		l.entries.add(e)
		l.bags.add(w)
	}
	return e
}

// look finds the entry of a word.
func (l *lexicon) look(w string) *entry {
	if len(w) == 1 {
		return l.letters[w[0]]
	}
	if e := l.entries.find(w); e != nil {
		return e
	}
	return stranger
}

// inSmall returns the entry of a word that stands in the lexicon with small letters, as "PRV" and "At" do; nil
// for none. What most words with capitals are need not be made anew.
func (l *lexicon) inSmall(w string) *entry {
	var room [24]byte
	if len(w) < 2 || len(w) > len(room) {
		return nil
	}
	for i := range len(w) {
		small := w[i] | ('a' - 'A') // a letter's small one
		if small < 'a' || small > 'z' {
			return nil
		}
		room[i] = small
	}
	return l.entries.find(string(room[:len(w)]))
}

// of returns the entry of a token, which keeps it.
func (l *lexicon) of(t *token) *entry {
	if t.entry == nil {
		l.lookUp(t)
	}
	return t.entry
}

// lookUp gives a token its entry. It is out of line, as of is asked at hundreds of places.
//
//go:noinline
func (l *lexicon) lookUp(t *token) {
	if t.entry = stranger; t.kind != number || len(t.text) == 1 {
		t.entry = l.look(t.text)
	}
}

// enter completes the entries when all words are read.
func (l *lexicon) enter() {
	l.formulaStarts()
	l.opinionStarts()
	for w := range numberWords {
		l.entry(w).number = true
	}
	for lang, words := range smallWords {
		for _, w := range words {
			l.entry(w).tells = lang
		}
	}
	l.entry("?").cue.alone |= cueMark
	l.enterGlances()
	for w := range l.lists[listSpanishStreets] {
		l.entry(w).calle = true
	}
	for w := range l.lists[listBeforeStreet] {
		l.entry(w).toStreet = true
	}
	for e := range l.entries.all() {
		w := e.word
		e.bare, e.signs, e.flat = vowelless(w), !e.sign.none(), e.unit != ""
		e.cues = e.cue.any()
		for _, p := range e.parted {
			e.cues |= p.cues
		}
		if e.lists.has(listAskingVerbs) {
			e.cues |= cueAux
		}
		if n := len(w) - 1; n > 2 && w[n] == 's' {
			e.one = l.entries.find(w[:n])
		}
	}
	for b := range l.letters {
		if l.letters[b] = l.entries.find(string([]byte{byte(b)})); l.letters[b] == nil {
			l.letters[b] = stranger
		}
	}
	l.byID = make([]*entry, len(l.words))
	for id, w := range l.words {
		l.byID[id] = l.entries.find(w)
	}
}

package intents

// Quick thumbs type two letters in the other order: "Wednseday", "40 galoln", "two hudnred". A rule
// that knows its words by their letters would miss them, and a term that is only alike would be
// taken instead: "plaese" is no pulse. unswap gives such a word the spelling of the one word that it is, and tells
// whether there were any.
func (p *Parser) unswap(toks []token) (some bool) {
	for i := range toks {
		t := &toks[i]
		if t.kind != word || len(t.text) < shortestSwapped || t.quoted || p.lex.of(t) != stranger {
			continue
		}
		if w := p.lex.swappedFrom(t.text); w != "" {
			t.becomes(word, w)
			some = true
		}
	}
	return some
}

// shortestSwapped is how many letters a word must have to be known by when two of them are swapped.
const shortestSwapped = 5

// swappedFrom returns the one known word that w is with two of its letters in the other order, the
// first in its place; "" for none. Words that rules know come before everyday ones.
func (l *lexicon) swappedFrom(w string) string {
	var b [24]byte
	if len(w) > len(b) || !l.bags.has(w) {
		return ""
	}
	letters := b[:copy(b[:], w)]
	var found *entry
	at, others := 0, 0
	for i := 1; i+1 < len(letters); i++ {
		letters[i], letters[i+1] = letters[i+1], letters[i]
		if e := l.entries.find(string(letters)); e != nil && letters[i] != letters[i+1] {
			switch {
			case found == nil || e.known() && !found.known():
				found, at, others = e, i, 0
			case e.known() || !found.known():
				others++
			}
		}
		letters[i], letters[i+1] = letters[i+1], letters[i]
	}
	if found == nil || others > 0 || !l.term(found.id) && (l.everyday(w) || l.lacksLetter(w)) {
		return ""
	}
	letters[at], letters[at+1] = letters[at+1], letters[at]
	return string(letters)
}

// known tells whether rules ask for a word, so that it is more than an everyday one.
func (e *entry) known() bool {
	return e.id >= 0 || e.lists != nil || e.number || e.unit != "" || e.suffix != ""
}

// term tells whether a word of the vocabulary is a term of the trade.
func (l *lexicon) term(id int32) bool { return id >= 0 && l.spelt[id] }

// lacksLetter tells whether w is a term of the trade with one letter left out: "heatr" is no heart.
func (l *lexicon) lacksLetter(w string) bool {
	lacks := false
	l.lessOne(hashOf(w), func(id int32) {
		t := l.words[id]
		lacks = lacks || l.spelt[id] && t[0] == w[0] && len(t) == len(w)+1 && within(w, t)
	})
	return lacks
}

// bagSet tells of most words that no known word has the same letters in another order: one bit for each sum
// of letters. To look each order up took longer than all else that is asked of a street's name.
type bagSet [1 << 16 / 64]uint64

// bagOf returns the bit of a word: whatever the order of its letters, it is one.
func bagOf(w string) (sum uint16) {
	for _, b := range []byte(w) {
		n := uint16(b)
		sum += n * n * n
	}
	return sum
}

func (s *bagSet) add(w string) { s[bagOf(w)>>6] |= 1 << (bagOf(w) & 63) }

func (s *bagSet) has(w string) bool { return s[bagOf(w)>>6]>>(bagOf(w)&63)&1 != 0 }

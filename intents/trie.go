package intents

import (
	"slices"
	"strings"
)

// trie holds the phrases of the lexicon by their words. There are many: what they mean is
// kept once for all that mean the same, and their letters stand in one string.
type trie struct {
	nodes    []node
	branches []branch
	spelling string
	senses   []sense
	opened   []opened

	sprouts  []sprout         // while it grows
	spells   strings.Builder  // likewise: the spelling
	meanings []tag            // likewise
	numbers  map[tag]uint16   // likewise: where each stands among them
	joined   map[joint]uint16 // likewise: a sense with one meaning more
	last     joint            // likewise: the one asked for last, and its sense
	lastTo   uint16
}

// node is a place in the trie. Its phrase has a sense, or it only leads on to others.
type node struct {
	at     uint32 // where its phrase stands in spelling
	n      uint16 // how long it is
	sense  uint16 // 0 for none
	opened uint16 // what its letters say, an index; 0 for nothing
	leads  uint16 // the words that it leads on by, a bit each by their last digits
	kids   int32  // where its branches begin
}

// mayLead tells whether a word may lead on from a node; where it does not, surely none does.
func (n *node) mayLead(word int32) bool { return n.leads>>(word&15)&1 != 0 }

// branch leads from a node of the trie by a word to the next node.
type branch struct{ word, node int32 }

// sense is what a phrase means.
type sense struct {
	tags   []tag
	kinds  classSet
	values valueSet
	opens  // by its meanings
}

// opened is what rules and lists know of a phrase by its letters.
type opened struct {
	opens
	lists *listSet
}

// joint is a sense and one meaning more, by their numbers, the meaning's from 1 on: hundreds of thousands of
// phrases ask for one.
type joint struct{ sense, meaning uint16 }

// sprout is a node of the growing trie: its own word, its first branch and the next one beside it.
type sprout struct{ word, first, next int32 }

// newTrie returns an empty trie with room for all phrases.
func newTrie() trie {
	return trie{
		nodes: make([]node, 1, nodes), sprouts: make([]sprout, 1, nodes),
		senses: make([]sense, 1), opened: make([]opened, 1), meanings: make([]tag, 1), numbers: map[tag]uint16{}, joined: map[joint]uint16{},
	}
}

// grow gives a meaning, by its number, to the phrases of some choices of words, from a node on.
func (l *lexicon) grow(choices [][][]int32, meaning uint16, from int32) {
	if len(choices) == 0 {
		if from != 0 {
			l.nodes[from].sense = l.with(l.nodes[from].sense, meaning)
		}
		return
	}
	for _, words := range choices[0] {
		n := from
		for _, w := range words {
			n = l.step(n, w)
		}
		l.grow(choices[1:], meaning, n)
	}
}

// number returns the number of a meaning, a new one for a new meaning.
func (l *trie) number(t tag) uint16 {
	n, ok := l.numbers[t]
	if !ok {
		n = uint16(len(l.meanings))
		l.meanings, l.numbers[t] = append(l.meanings, t), n
	}
	return n
}

// with returns a sense with one meaning more.
func (l *trie) with(s, meaning uint16) uint16 {
	j := joint{s, meaning}
	if j == l.last {
		return l.lastTo // the phrases of a line mostly ask for the same
	}
	to, ok := l.joined[j]
	if !ok {
		to = l.join(s, meaning)
		l.joined[j] = to
	}
	l.last, l.lastTo = j, to
	return to
}

// join adds a sense that has one meaning more, unless the meaning is in it already.
func (l *trie) join(s, meaning uint16) uint16 {
	to := s
	if t, tags := l.meanings[meaning], l.senses[s].tags; !slices.Contains(tags, t) {
		to = uint16(len(l.senses))
		tags = append(slices.Clone(tags), t)
		l.senses = append(l.senses, sense{tags: tags, kinds: classesOf(tags), values: valuesOf(tags)})
	}
	return to
}

// step returns the node that a word leads to, a new one if there is none.
func (l *lexicon) step(from, word int32) int32 {
	if from == 0 {
		if l.first[word] == 0 {
			l.first[word] = l.sprout(0, word)
		}
		return l.first[word]
	}
	for n := l.sprouts[from].first; n != 0; n = l.sprouts[n].next {
		if l.sprouts[n].word == word {
			return n
		}
	}
	return l.sprout(from, word)
}

// sprout adds a node that a word leads to, and spells its phrase.
func (l *lexicon) sprout(from, word int32) int32 {
	n := int32(len(l.nodes))
	at := l.spells.Len()
	if from != 0 {
		// right behind the phrase of the node that it grows from, that need only go on
		if before := l.nodes[from]; at == int(before.at)+int(before.n) {
			at = int(before.at)
		} else {
			l.spells.WriteString(l.spells.String()[before.at:][:before.n])
		}
		l.spells.WriteByte(' ')
	}
	l.spells.WriteString(l.words[word])
	l.nodes = append(l.nodes, node{at: uint32(at), n: uint16(l.spells.Len() - at)})
	l.sprouts = append(l.sprouts, sprout{word: word, next: l.sprouts[from].first})
	l.sprouts[from].first = n
	return n
}

// grown lays the trie out for looking: the branches of a node stand side by side, in
// the order of their words. Most nodes have none or one.
func (l *trie) grown() {
	l.branches = make([]branch, 0, len(l.nodes))
	for n := range l.nodes {
		from := len(l.branches)
		l.nodes[n].kids = int32(from)
		if n == 0 {
			continue // the words that phrases begin with have a table of their own
		}
		for k := l.sprouts[n].first; k != 0; k = l.sprouts[k].next {
			l.branches = append(l.branches, branch{l.sprouts[k].word, k})
			l.nodes[n].leads |= 1 << (l.sprouts[k].word & 15)
		}
		if some := l.branches[from:]; len(some) > 1 {
			slices.Reverse(some) // the oldest first: most are in order then
			slices.SortFunc(some, func(a, b branch) int { return int(a.word - b.word) })
		}
	}
	l.nodes = append(l.nodes, node{kids: int32(len(l.branches))})
	l.spelling = l.spells.String()
	l.sprouts, l.meanings, l.numbers, l.joined = nil, nil, nil, nil
}

// tags returns the meanings of the phrase of a node.
func (l *trie) tags(n int32) []tag { return l.senses[l.nodes[n].sense].tags }

// kinds returns their classes.
func (l *trie) kinds(n int32) classSet { return l.senses[l.nodes[n].sense].kinds }

// phrase returns the words that lead to a node.
func (l *trie) phrase(n int32) string {
	k := &l.nodes[n]
	return l.spelling[k.at:][:k.n]
}

// open gives the phrases that rules and lists know by their letters what they say.
func (l *lexicon) open(r *keyring) {
	for i := range l.senses {
		l.senses[i].opens = r.of(l.senses[i].tags)
	}
	letters := map[string]opened{}
	for w, o := range r.words {
		letters[w] = opened{opens: o}
	}
	for w, s := range r.lists {
		o := letters[w]
		o.lists = s
		letters[w] = o
	}
	for w, o := range letters {
		if n := l.spelled(w); n != 0 {
			l.nodes[n].opened = uint16(len(l.opened))
			l.opened = append(l.opened, o)
		}
	}
}

// spelled returns the node of a phrase by its letters, 0 for none.
func (l *lexicon) spelled(phrase string) (n int32) {
	for w := range strings.SplitSeq(phrase, " ") {
		id, ok := l.id(w)
		if !ok {
			return 0
		}
		if n, ok = l.after(n, id); !ok {
			return 0
		}
	}
	return n
}

// match finds the longest phrase at toks[i]: its tags and how many tokens it
// takes. Hyphens inside a phrase do not count as words.
func (l *lexicon) match(toks []token, i, end int) (tags []tag, n int) {
	node, n := l.find(toks, i, end)
	return l.tags(node), n
}

// find is match, with the node of the trie in place of its tags. Most words begin no phrase, or
// one that is a word long.
func (l *lexicon) find(toks []token, i, end int) (node int32, n int) {
	if i >= end || toks[i].kind == mark {
		return 0, 0
	}
	for _, id := range toks[i].cand {
		switch first := l.first[id]; {
		case first == 0:
		case i+1 == end || l.nodes[first].leads == 0:
			if n == 0 && l.nodes[first].sense != 0 {
				node, n = first, 1
			}
		default:
			if b, m := l.walk(toks, i, i+1, end, first); m > n {
				node, n = b, m
			}
		}
	}
	return node, n
}

// after returns the node that a word leads to from a node.
func (l *lexicon) after(node, word int32) (int32, bool) {
	if node == 0 {
		n := l.first[word]
		return n, n != 0
	}
	kids := l.branches[l.nodes[node].kids:l.nodes[node+1].kids]
	for len(kids) > 8 {
		if half := len(kids) / 2; kids[half].word > word {
			kids = kids[:half]
		} else {
			kids = kids[half:]
		}
	}
	for _, b := range kids {
		if b.word == word {
			return b.node, true
		}
	}
	return 0, false
}

// walk goes on with the phrase that began at start and has come to a node: the longest one found, its node and how many
// tokens it takes.
func (l *lexicon) walk(toks []token, start, i, end int, node int32) (best int32, n int) {
	at := &l.nodes[node]
	if at.sense != 0 {
		best, n = node, i-start
	}
	if i >= end || at.leads == 0 {
		return best, n
	}
	t := &toks[i]
	if t.kind == mark {
		if t.text == "-" && i+1 < end {
			if b, m := l.walk(toks, start, i+1, end, node); m > n+1 {
				return b, m
			}
		}
		return best, n
	}
	for _, id := range t.cand {
		if !at.mayLead(id) {
			continue
		}
		if nx, ok := l.after(node, id); ok {
			if b, m := l.walk(toks, start, i+1, end, nx); m > n {
				best, n = b, m
			}
		}
	}
	return best, n
}

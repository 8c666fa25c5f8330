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

	sprouts []sprout         // while it grows
	joined  map[joint]uint16 // likewise: a sense with one meaning more
}

// node is a place in the trie. Its phrase has a sense, or it only leads on to others.
type node struct {
	at     uint32 // where its phrase stands in spelling
	n      uint16 // how long it is
	sense  uint16 // 0 for none
	opened uint16 // what its letters say, an index; 0 for nothing
	kids   int32  // where its branches begin
}

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

// joint is a sense and one meaning more.
type joint struct {
	sense uint16
	tag   tag
}

// sprout is a node of the growing trie: its own word, where it grows, its first branch and
// the next one beside it.
type sprout struct{ word, from, first, next int32 }

// newTrie returns an empty trie with room for all phrases.
func newTrie() trie {
	return trie{
		nodes: make([]node, 1, nodes), sprouts: make([]sprout, 1, nodes),
		senses: make([]sense, 1), opened: make([]opened, 1), joined: map[joint]uint16{},
	}
}

// grow gives a meaning to the phrases of some choices of words, from a node on.
func (l *lexicon) grow(choices [][][]int32, t tag, from int32) {
	if len(choices) == 0 {
		if from != 0 {
			l.nodes[from].sense = l.with(l.nodes[from].sense, t)
		}
		return
	}
	for _, words := range choices[0] {
		n := from
		for _, w := range words {
			n = l.step(n, w)
		}
		l.grow(choices[1:], t, n)
	}
}

// with returns a sense with one meaning more.
func (l *trie) with(s uint16, t tag) uint16 {
	j := joint{s, t}
	if to, ok := l.joined[j]; ok {
		return to
	}
	to := s
	if tags := l.senses[s].tags; !slices.Contains(tags, t) {
		to = uint16(len(l.senses))
		tags = append(slices.Clone(tags), t)
		l.senses = append(l.senses, sense{tags: tags, kinds: classesOf(tags), values: valuesOf(tags)})
	}
	l.joined[j] = to
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

// sprout adds a node that a word leads to.
func (l *trie) sprout(from, word int32) int32 {
	n := int32(len(l.nodes))
	l.nodes = append(l.nodes, node{})
	l.sprouts = append(l.sprouts, sprout{word: word, from: from, next: l.sprouts[from].first})
	l.sprouts[from].first = n
	return n
}

// grown lays the trie out for looking: the branches of a node stand side by side, in
// the order of their words, and every phrase is spelt. Most nodes have none or one.
func (l *trie) grown(words []string) {
	l.branches = make([]branch, 0, len(l.nodes))
	for n := range l.nodes {
		from := len(l.branches)
		l.nodes[n].kids = int32(from)
		if n == 0 {
			continue // the words that phrases begin with have a table of their own
		}
		for k := l.sprouts[n].first; k != 0; k = l.sprouts[k].next {
			l.branches = append(l.branches, branch{l.sprouts[k].word, k})
		}
		slices.SortFunc(l.branches[from:], func(a, b branch) int { return int(a.word - b.word) })
	}
	l.nodes = append(l.nodes, node{kids: int32(len(l.branches))})
	var b strings.Builder
	b.Grow(17 * len(l.nodes))
	for n := 1; n < len(l.nodes)-1; n++ {
		// the node that it grows from is spelt already; right before, it need only go on
		s, before := l.sprouts[n], l.nodes[l.sprouts[n].from]
		at := b.Len()
		if s.from != 0 {
			if at == int(before.at)+int(before.n) {
				at = int(before.at)
			} else {
				b.WriteString(b.String()[before.at:][:before.n])
			}
			b.WriteByte(' ')
		}
		b.WriteString(words[s.word])
		l.nodes[n].at, l.nodes[n].n = uint32(at), uint16(b.Len()-at)
	}
	l.spelling = b.String()
	l.nodes = slices.Clip(l.nodes)
	l.sprouts, l.joined = nil, nil
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

// find is match, with the node of the trie in place of its tags.
func (l *lexicon) find(toks []token, i, end int) (node int32, n int) {
	return l.walk(toks, i, i, end, 0)
}

// after returns the node that a word leads to from a node. Most words begin no
// phrase, so the first step is a look into a table.
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

// walk goes on with the phrase that began at start: the longest one found, its node and how many tokens it takes.
func (l *lexicon) walk(toks []token, start, i, end int, node int32) (best int32, n int) {
	if node != 0 && l.nodes[node].sense != 0 {
		best, n = node, i-start
	}
	if i >= end {
		return best, n
	}
	t := &toks[i]
	if t.kind == mark {
		if node != 0 && t.text == "-" && i+1 < end {
			if b, m := l.walk(toks, start, i+1, end, node); m > n+1 {
				return b, m
			}
		}
		return best, n
	}
	for _, id := range t.cand {
		if nx, ok := l.after(node, id); ok {
			if b, m := l.walk(toks, start, i+1, end, nx); m > n {
				best, n = b, m
			}
		}
	}
	return best, n
}

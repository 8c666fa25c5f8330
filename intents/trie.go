package intents

import (
	"cmp"
	"slices"
)

// branch leads from a node of the trie by a word to the next node.
type branch struct{ word, node int32 }

// grown lays the trie out for looking: the branches of a node stand side by side, in
// the order of their words. Most nodes have none or one.
func (l *lexicon) grown() {
	l.first = make([]int32, len(l.words))
	l.kids = make([]int32, len(l.tags)+1)
	for key := range l.next {
		l.kids[key>>32+1]++
	}
	for n := range l.tags {
		l.kids[n+1] += l.kids[n]
	}
	l.branches = make([]branch, len(l.next))
	at := slices.Clone(l.kids)
	for key, node := range l.next {
		from, word := int32(key>>32), int32(uint32(key))
		if from == 0 {
			l.first[word] = node
		}
		l.branches[at[from]] = branch{word, node}
		at[from]++
	}
	for n := range l.tags {
		slices.SortFunc(l.branches[l.kids[n]:l.kids[n+1]], func(a, b branch) int { return cmp.Compare(a.word, b.word) })
	}
	l.next = nil
}

// match finds the longest phrase at toks[i]: its tags and how many tokens it
// takes. Hyphens inside a phrase do not count as words.
func (l *lexicon) match(toks []token, i, end int) (tags []tag, n int) {
	node, n := l.find(toks, i, end)
	return l.meant(node), n
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
	kids := l.branches[l.kids[node]:l.kids[node+1]]
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

func (l *lexicon) walk(toks []token, start, i, end int, node int32) (best int32, n int) {
	if l.sense[node] != 0 {
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

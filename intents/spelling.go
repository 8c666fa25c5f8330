package intents

import (
	"slices"

	"github.com/agnivade/levenshtein"
)

// consonants returns a word without its vowels and without doubled letters.
func consonants(w string) string {
	var b [24]byte
	n := 0
	for i := range len(w) {
		c := w[i]
		if c == 'a' || c == 'e' || c == 'i' || c == 'o' || c == 'u' {
			continue
		}
		if n > 0 && b[n-1] == c {
			continue
		}
		if n == len(b) {
			return ""
		}
		b[n] = c
		n++
	}
	return string(b[:n])
}

// vowelless tells whether a word of small letters has no vowel: "htr".
func vowelless(w string) bool {
	for i := range len(w) {
		switch w[i] {
		case 'a', 'e', 'i', 'o', 'u':
			return false
		}
		if w[i] < 'a' || w[i] > 'z' {
			return false
		}
	}
	return len(w) >= 2
}

// candidates appends the words of the lexicon that w may stand for.
func (l *lexicon) candidates(w string, into []int32) []int32 {
	at := len(into)
	if id, ok := l.id(w); ok {
		into = append(into, id)
		if !vowelless(w) {
			return append(into, l.alias[w]...)
		}
	}
	if ids := l.alias[w]; len(ids) > 0 {
		return append(into, ids...)
	}
	if vowelless(w) && !l.common(w) {
		key := consonants(w)
		for _, id := range l.skeleton[key] {
			// a first vowel is dropped too, but not from a short word: "nythng"
			if l.words[id][0] == w[0] || len(key) >= 4 || w == "ll" {
				into = append(into, id)
			}
		}
		into = l.allConsonants(w, into, at)
		if n := len(w) - 1; len(into) == at && n >= 2 && w[n] == 's' {
			return l.candidates(w[:n], into) // "lks"
		}
		if len(into) > at || len(w) < 4 {
			return into
		}
	}
	if len(w) >= 3 && len(w) <= 20 && !l.everyday(w) {
		if into = l.clipped(w, into); len(into) > at {
			return into
		}
	}
	if base := enclitic(w); base != "" {
		if id, ok := l.id(base); ok {
			return append(into, id)
		}
	}
	if len(w) > 4 && w[len(w)-1] == 's' {
		if id, ok := l.id(w[:len(w)-1]); ok {
			return append(into, id)
		}
	}
	if len(w) < 4 || len(w) > 20 || l.everyday(w) {
		return into
	}
	return l.misspelt(w, into, at)
}

// allConsonants keeps of the words from at on those that w has every consonant of, also the second
// of two, where there is one: "crrdd" is corroded and no card.
func (l *lexicon) allConsonants(w string, into []int32, at int) []int32 {
	if len(w) < 4 || len(w) == len(consonants(w)) {
		return into
	}
	all := func(id int32) bool {
		k := 0
		for _, c := range []byte(l.words[id]) {
			switch c {
			case 'a', 'e', 'i', 'o', 'u':
				continue
			}
			if k >= len(w) || w[k] != c {
				return false
			}
			k++
		}
		return k == len(w)
	}
	if !slices.ContainsFunc(into[at:], all) {
		return into
	}
	return into[:at+len(slices.DeleteFunc(into[at:], func(id int32) bool { return !all(id) }))]
}

// clipped finds the terms that w is when some of their vowels are left out:
// "idl", "runing", "kichen" is none. A word of three letters keeps only the
// vowel it begins with, as "hat" is no heat.
func (l *lexicon) clipped(w string, into []int32) []int32 {
	key := consonants(w)
	if len(w) == 3 && (len(key) != 2 || key[0] == w[0]) {
		return into
	}
	for _, id := range l.skeleton[key] {
		if t := l.words[id]; l.spelt[id] && t[0] == w[0] && len(t) > len(w) && within(w, t) {
			into = append(into, id)
		}
	}
	return into
}

// within tells whether the letters of a occur in b in their order.
func within(a, b string) bool {
	i := 0
	for k := 0; k < len(b) && i < len(a); k++ {
		if a[i] == b[k] {
			i++
		}
	}
	return i == len(a)
}

// enclitic takes the pronoun off a Spanish infinitive: "llamarle", "revisarla".
func enclitic(w string) string {
	for _, e := range [...]string{"le", "la", "lo", "les", "las", "los", "me", "nos", "selo", "sela"} {
		if n := len(w) - len(e); n >= 5 && w[n:] == e {
			if w[n-1] == 'r' && (w[n-2] == 'a' || w[n-2] == 'e' || w[n-2] == 'i') {
				return w[:n]
			}
		}
	}
	return ""
}

// common tells whether a word is an everyday one.
func (l *lexicon) common(w string) bool {
	e := l.look(w)
	return e.plain || e.right
}

// everyday tells whether a word, or what it is a form of, is a common word.
func (l *lexicon) everyday(w string) bool {
	if l.common(w) {
		return true
	}
	for _, e := range [...]string{"s", "ed", "ing", "er", "es", "d"} {
		if n := len(w) - len(e); n >= 4 && w[n:] == e && l.common(w[:n]) {
			return true
		}
	}
	return false
}

// misspelt finds words one slip away: a letter missing, extra, wrong, or two
// swapped. The first letter must be right.
func (l *lexicon) misspelt(w string, into []int32, at int) []int32 {
	try := func(id int32) {
		t := l.words[id]
		if t[0] != w[0] || vowelless(t) || !l.spelt[id] || slices.Contains(into[at:], id) {
			return
		}
		if d := levenshtein.ComputeDistance(w, t); d == 1 || d == 2 && len(w) == len(t) && swapped(w, t) {
			into = append(into, id)
		}
	}
	l.lessOne(hashOf(w), try) // a letter is missing
	if len(w) == 4 {
		for k := 1; k < 3; k++ {
			if id, ok := l.id(w[:k] + w[k+1:k+2] + w[k:k+1] + w[k+2:]); ok {
				try(id) // two letters swapped
			}
		}
		return into
	}
	for k := range w {
		d := w[:k] + w[k+1:]
		if id, ok := l.id(d); ok && len(d) >= 5 {
			try(id)
		}
		l.lessOne(hashOf(d), try)
	}
	if len(into) == at {
		for _, id := range l.skeleton[consonants(w)] {
			if t := l.words[id]; t[0] == w[0] && l.spelt[id] && len(t) <= len(w)+1 && len(t) >= len(w)-1 && levenshtein.ComputeDistance(w, t) <= 3 {
				into = append(into, id)
			}
		}
	}
	return into
}

// deletion is a word that a word of the vocabulary is with one letter left out: its hash, and in the lower
// half the other's number, so that they sort by both. Words that share a hash are told apart by their distance.
type deletion uint64

// hashOf returns the hash of a word: FNV-1a.
func hashOf(w string) uint32 {
	h := uint32(2166136261)
	for i := range len(w) {
		h = (h ^ uint32(w[i])) * 16777619
	}
	return h
}

// lessOne returns the hash of a word without its letter k.
func lessOne(w string, k int) uint32 { return hashOf(w[:k] + w[k+1:]) }

// lessOne tries the words that are one of a hash with one letter left out.
func (l *lexicon) lessOne(hash uint32, try func(id int32)) {
	k, _ := slices.BinarySearch(l.deletes, deletion(hash)<<32)
	for ; k < len(l.deletes) && uint32(l.deletes[k]>>32) == hash; k++ {
		try(int32(l.deletes[k]))
	}
}

// swapped tells whether two words differ by two neighbouring letters in the other order.
func swapped(a, b string) bool {
	for i := 0; i+1 < len(a); i++ {
		if a[i] != b[i] {
			return a[i] == b[i+1] && a[i+1] == b[i] && a[i+2:] == b[i+2:]
		}
	}
	return false
}

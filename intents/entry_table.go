package intents

import (
	"iter"
	"math/bits"
)

// entryTable finds the entry of a word. It is asked for every word of every message: half of the places are left
// empty, and the key of a short word, which most are, is the word itself, so that its letters need not be compared.
type entryTable struct {
	places []entryPlace // a power of two
	n      int          // how many are taken
}

// entryPlace is an entry with the key of its word.
type entryPlace struct {
	key   uint64
	entry *entry
}

// longKey marks the key of a word that is longer than the key.
const longKey = 0xff << 56

// keyOf returns the key of a word: its letters and its length where there is room for them, else a hash of its first
// and last letters.
func keyOf(w string) uint64 {
	n := len(w)
	switch {
	case n >= 8:
		return longKey | (eightLetters(w)^bits.RotateLeft64(eightLetters(w[n-8:]), 28)^uint64(n))*spreads>>8
	case n >= 4: // letters that are taken twice fall on the same place
		return fourLetters(w) | fourLetters(w[n-4:])<<(8*(n-4)) | uint64(n)<<56
	case n > 0:
		return uint64(w[0]) | uint64(w[n/2])<<(8*(n/2)) | uint64(w[n-1])<<(8*(n-1)) | uint64(n)<<56
	}
	return 0
}

func fourLetters(w string) uint64 {
	return uint64(w[0]) | uint64(w[1])<<8 | uint64(w[2])<<16 | uint64(w[3])<<24
}

func eightLetters(w string) uint64 { return fourLetters(w) | fourLetters(w[4:])<<32 }

// spreads is what a key is multiplied by to spread it over the places: each of its bits then tells in the upper ones.
const spreads = 0x9e3779b97f4a7c15

// place returns the place where the search for a key begins.
func (t *entryTable) place(key uint64) uint64 { return key * spreads >> 32 & uint64(len(t.places)-1) }

// newEntryTable returns a table with room for n entries.
func newEntryTable(n int) entryTable {
	size := 4
	for size < 2*n {
		size *= 2
	}
	return entryTable{places: make([]entryPlace, size)}
}

// find returns the entry of a word, nil for none.
func (t *entryTable) find(w string) *entry {
	key, last := keyOf(w), uint64(len(t.places)-1)
	for i := t.place(key); ; i = (i + 1) & last {
		p := &t.places[i]
		if p.entry == nil || p.key == key && (key < longKey || p.entry.word == w) {
			return p.entry
		}
	}
}

// add adds the entry of a word that has none yet.
func (t *entryTable) add(e *entry) {
	if 2*t.n >= len(t.places) {
		wider := newEntryTable(len(t.places))
		for o := range t.all() {
			wider.add(o)
		}
		*t = wider
	}
	key, last := keyOf(e.word), uint64(len(t.places)-1)
	i := t.place(key)
	for t.places[i].entry != nil {
		i = (i + 1) & last
	}
	t.places[i] = entryPlace{key, e}
	t.n++
}

// all goes over all entries.
func (t *entryTable) all() iter.Seq[*entry] {
	return func(yield func(*entry) bool) {
		for i := range t.places {
			if e := t.places[i].entry; e != nil && !yield(e) {
				return
			}
		}
	}
}

package intents

import "iter"

// entryTable finds the entry of a word. It is asked for every word of every message, which a hash of few steps
// and half of the places left empty make twice as quick as with a map.
type entryTable struct {
	places []entryPlace // a power of two
	n      int          // how many are taken
}

// entryPlace is an entry with the hash of its word.
type entryPlace struct {
	hash  uint32
	entry *entry
}

// newEntryTable returns a table with room for n entries.
func newEntryTable(n int) entryTable {
	size := 4
	for size < 2*n {
		size *= 2
	}
	return entryTable{places: make([]entryPlace, size)}
}

// hashOf returns the hash of a word: FNV-1a.
func hashOf(w string) uint32 {
	h := uint32(2166136261)
	for i := range len(w) {
		h = (h ^ uint32(w[i])) * 16777619
	}
	return h
}

// find returns the entry of a word, nil for none.
func (t *entryTable) find(w string) *entry {
	h, last := hashOf(w), uint32(len(t.places)-1)
	for i := h & last; ; i = (i + 1) & last {
		p := &t.places[i]
		if p.entry == nil || p.hash == h && p.entry.word == w {
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
	h, last := hashOf(e.word), uint32(len(t.places)-1)
	i := h & last
	for t.places[i].entry != nil {
		i = (i + 1) & last
	}
	t.places[i] = entryPlace{h, e}
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

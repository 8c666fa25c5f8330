package intents

import (
	"bufio"
	"cmp"
	"embed"
	"fmt"
	"io/fs"
	"slices"
	"strings"

	"github.com/agnivade/levenshtein"
)

// The lexicons are data: a line "class value: phrase | phrase". See
// lexicon/README.md for the notation.
//
//go:embed lexicon
var lexiconFiles embed.FS

// tag is one meaning of a phrase: a class ("point", "item", "verb" …) and a
// value within it.
type tag struct {
	class   class
	meaning meaning
	value   string
}

// lexicon holds phrases in a trie over words. Read-only once built.
type lexicon struct {
	vocab    map[string]int32
	words    []string
	skeleton map[string][]int32 // consonants of a word -> words
	deletes  map[string][]int32 // a word less one letter -> words
	plain    map[string]bool    // everyday words that are neither a term nor the whole name of a street
	right    map[string]bool    // words that stand as they are, never for a term misspelt
	never    map[string]bool    // words that never stand inside a street's name
	heads    map[string]bool    // words that begin a street's name of two words: "Rio Seco"
	thanks   map[string]bool    // words of thanks that may end a message
	toward   map[string]bool    // words that a house is told after: "leaving", "visited"
	next     map[uint64]int32   // node<<32 | word -> node
	first    []int32            // by word: the node it leads to from the root; 0 for none
	tags     [][]tag            // by node
	phrases  []string           // by node: the words that lead to it
	spelt    map[int32]bool     // words that may be misspelt: terms of the trade
	alias    map[string][]int32 // what is written for a word and is not it with letters left out: "blk"
	sounds   map[string]string  // the sound of a word in Spanish -> the word
	short    map[string]string  // what is texted short in Spanish -> the whole word
	entries  map[string]*entry  // by word: all that is known of it
	byID     []*entry           // the same, by word of the vocabulary
	kids     []int32            // by node: where its branches begin
	branches []branch
}

// nodes is about how many nodes the phrases grow into. To make room as they
// come would take a third of the time that the program takes to start.
const nodes = 180_000

func newLexicon() *lexicon {
	return &lexicon{
		vocab: map[string]int32{}, skeleton: map[string][]int32{}, deletes: map[string][]int32{},
		plain: map[string]bool{}, right: map[string]bool{}, never: map[string]bool{},
		heads: map[string]bool{}, toward: map[string]bool{}, thanks: map[string]bool{},
		next: make(map[uint64]int32, nodes), tags: make([][]tag, 1, nodes), phrases: make([]string, 1, nodes),
		spelt: map[int32]bool{}, alias: map[string][]int32{}, sounds: map[string]string{}, short: map[string]string{},
		entries: map[string]*entry{},
	}
}

// load reads every data file of the lexicon folder.
func (l *lexicon) load() error {
	files, err := fs.Glob(lexiconFiles, "lexicon/*.txt")
	if err != nil {
		return err
	}
	slices.Sort(files)
	defs := map[string][]string{}
	for _, name := range files {
		f, err := lexiconFiles.Open(name)
		if err != nil {
			return err
		}
		sc := bufio.NewScanner(f)
		sc.Buffer(make([]byte, 1<<16), 1<<20)
		for n := 1; sc.Scan(); n++ {
			if err := l.line(sc.Text(), defs); err != nil {
				return fmt.Errorf("%s:%d: %w", name, n, err)
			}
		}
		f.Close()
	}
	l.index()
	return nil
}

func (l *lexicon) line(s string, defs map[string][]string) error {
	s = strings.TrimSpace(s)
	if s == "" || s[0] == '#' {
		return nil
	}
	head, body, ok := strings.Cut(s, ":")
	if !ok {
		return fmt.Errorf("%q lacks a colon", s)
	}
	fields := strings.Fields(head)
	if len(fields) == 2 && fields[0] == "def" {
		defs["$"+fields[1]] = strings.Fields(body)
		return nil
	}
	if fields[0] == "alias" && len(fields) == 2 {
		id := l.word(fold(fields[1]))
		for _, w := range strings.Fields(body) {
			l.alias[fold(w)] = append(l.alias[fold(w)], id)
		}
		return nil
	}
	if fields[0] == "short" && len(fields) == 2 {
		for _, w := range strings.Fields(body) {
			l.short[fold(w)] = fold(fields[1])
		}
		return nil
	}
	if set := map[string]map[string]bool{"plain": l.plain, "right": l.right, "never": l.never, "heads": l.heads, "toward": l.toward, "thanks": l.thanks}[fields[0]]; set != nil {
		for _, w := range strings.Fields(body) {
			set[fold(w)] = true
		}
		return nil
	}
	if fields[0] == "cue" && len(fields) == 2 {
		return l.addCue(fields[1], body)
	}
	if fields[0] == "sign" && len(fields) == 2 {
		return l.addSigns(fields[1], body)
	}
	c, ok := classNames[fields[0]]
	if !ok {
		return fmt.Errorf("there is no class %q", fields[0])
	}
	t := tag{class: c}
	if len(fields) > 1 {
		t.value = fields[1]
	}
	for _, phrase := range strings.Split(body, "|") {
		alts, err := alternatives(phrase, defs)
		if err != nil {
			return err
		}
		l.add(alts, t, 0, 0)
	}
	return nil
}

// alternatives splits "[a b _] word $def" into the words possible at each place;
// "_" is none, "a+b" two words.
func alternatives(phrase string, defs map[string][]string) ([][]string, error) {
	var out [][]string
	for rest := strings.TrimSpace(phrase); rest != ""; rest = strings.TrimSpace(rest) {
		if rest[0] == '[' {
			end := strings.IndexByte(rest, ']')
			if end < 0 {
				return nil, fmt.Errorf("%q lacks a closing bracket", phrase)
			}
			var words []string
			for _, w := range strings.Fields(rest[1:end]) {
				if w[0] == '$' {
					d, ok := defs[w]
					if !ok {
						return nil, fmt.Errorf("%s is not defined", w)
					}
					words = append(words, d...)
				} else {
					words = append(words, w)
				}
			}
			out = append(out, words)
			rest = rest[end+1:]
			continue
		}
		w, after, _ := strings.Cut(rest, " ")
		if i := strings.IndexByte(w, '['); i > 0 {
			w, after = rest[:i], rest[i:]
		}
		if w[0] == '$' {
			d, ok := defs[w]
			if !ok {
				return nil, fmt.Errorf("%s is not defined", w)
			}
			out = append(out, d)
		} else {
			out = append(out, []string{w})
		}
		rest = after
	}
	return out, nil
}

func (l *lexicon) add(alts [][]string, t tag, at int, node int32) {
	if at == len(alts) {
		if node != 0 && !slices.Contains(l.tags[node], t) {
			l.tags[node] = append(l.tags[node], t)
		}
		return
	}
	for _, w := range alts[at] {
		if w == "_" {
			l.add(alts, t, at+1, node)
			continue
		}
		n := node
		for _, one := range strings.Split(w, "+") {
			id := l.word(fold(one))
			if c := t.class; c != cAsk && c != cQuestion && c != cSkip && c != cTarget && c != cMemory && c != cWill && c != cWord && c != cUnit && c < cWhose {
				l.spelt[id] = true
			}
			n = l.step(n, id)
		}
		l.add(alts, t, at+1, n)
	}
}

func (l *lexicon) word(w string) int32 {
	id, ok := l.vocab[w]
	if !ok {
		id = int32(len(l.words))
		l.words = append(l.words, w)
		l.vocab[w] = id
	}
	return id
}

func (l *lexicon) step(node, word int32) int32 {
	key := uint64(node)<<32 | uint64(uint32(word))
	n, ok := l.next[key]
	if !ok {
		n = int32(len(l.tags))
		l.tags = append(l.tags, nil)
		phrase := l.words[word]
		if node != 0 {
			phrase = l.phrases[node] + " " + phrase
		}
		l.phrases = append(l.phrases, phrase)
		l.next[key] = n
	}
	return n
}

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

// index prepares the look-up of words written short or wrong.
func (l *lexicon) index() {
	l.grown()
	l.enter()
	for id, w := range l.words {
		if s := consonants(w); len(s) >= 2 && s != w {
			l.skeleton[s] = append(l.skeleton[s], int32(id))
		}
		if len(w) >= 5 {
			for k := range w {
				d := w[:k] + w[k+1:]
				if !slices.Contains(l.deletes[d], int32(id)) {
					l.deletes[d] = append(l.deletes[d], int32(id))
				}
			}
		}
	}
	for w := range numberWords {
		l.sounds[sound(w)] = w
	}
	for _, term := range [...]bool{true, false} {
		for id, w := range l.words {
			if s := sound(w); len(w) >= 3 && l.spelt[int32(id)] == term && l.sounds[s] == "" {
				l.sounds[s] = w
			}
		}
	}
	// of words written the same way a term comes first: "lks" is leaks rather than
	// looks, but "cld" could rather than cold
	term := func(id int32) int {
		if l.spelt[id] && !l.plain[l.words[id]] {
			return 0
		}
		return 1
	}
	for key, ids := range l.skeleton {
		if len(key) < 3 {
			continue
		}
		slices.SortStableFunc(ids, func(a, b int32) int { return cmp.Compare(term(a), term(b)) })
	}
}

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
	if id, ok := l.vocab[w]; ok {
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
		if id, ok := l.vocab[base]; ok {
			return append(into, id)
		}
	}
	if len(w) > 4 && w[len(w)-1] == 's' {
		if id, ok := l.vocab[w[:len(w)-1]]; ok {
			return append(into, id)
		}
	}
	if len(w) < 4 || len(w) > 20 || l.everyday(w) {
		return into
	}
	return l.misspelt(w, into, at)
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
func (l *lexicon) common(w string) bool { return l.plain[w] || l.right[w] }

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
	for _, id := range l.deletes[w] {
		try(id) // a letter is missing
	}
	if len(w) == 4 {
		for k := 1; k < 3; k++ {
			if id, ok := l.vocab[w[:k]+w[k+1:k+2]+w[k:k+1]+w[k+2:]]; ok {
				try(id) // two letters swapped
			}
		}
		return into
	}
	for k := range w {
		d := w[:k] + w[k+1:]
		if id, ok := l.vocab[d]; ok && len(d) >= 5 {
			try(id)
		}
		for _, id := range l.deletes[d] {
			try(id)
		}
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

// swapped tells whether two words differ by two neighbouring letters in the other order.
func swapped(a, b string) bool {
	for i := 0; i+1 < len(a); i++ {
		if a[i] != b[i] {
			return a[i] == b[i+1] && a[i+1] == b[i] && a[i+2:] == b[i+2:]
		}
	}
	return false
}

// match finds the longest phrase at toks[i]: its tags and how many tokens it
// takes. Hyphens inside a phrase do not count as words.
func (l *lexicon) match(toks []token, i, end int) (tags []tag, n int) {
	node, n := l.find(toks, i, end)
	return l.tags[node], n
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
	if node != 0 && l.tags[node] != nil {
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

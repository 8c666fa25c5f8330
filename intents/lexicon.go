package intents

import (
	"bufio"
	"cmp"
	"embed"
	"fmt"
	"io/fs"
	"slices"
	"strings"
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
	tags     [][]tag            // by node, while the phrases are being read
	sense    []int32            // by node: which of the senses it has
	senses   []sense            // the first is that of a node that is no phrase
	phrases  []string           // by node: the words that lead to it
	spelt    map[int32]bool     // words that may be misspelt: terms of the trade
	alias    map[string][]int32 // what is written for a word and is not it with letters left out: "blk"
	sounds   map[string]string  // the sound of a word in Spanish -> the word
	short    map[string]string  // what is texted short in Spanish -> the whole word
	entries  map[string]*entry  // by word: all that is known of it
	letters  [256]*entry        // the same, of letters, figures and marks alone
	lists    [lists]phraseSet   // words that a rule knows by their letters
	byID     []*entry           // the same, by word of the vocabulary
	kids     []int32            // by node: where its branches begin
	branches []branch
}

// nodes is about how many nodes the phrases grow into. To make room as they
// come would take a third of the time that the program takes to start.
const nodes = 200_000

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
		if name == listFile {
			continue // read before all others
		}
		if err := l.read(name, defs); err != nil {
			return err
		}
	}
	l.index()
	return nil
}

// listFile holds the lists, which rules and their openers share.
const listFile = "lexicon/lists.txt"

// read reads one data file.
func (l *lexicon) read(name string, defs map[string][]string) error {
	f, err := lexiconFiles.Open(name)
	if err != nil {
		return err
	}
	defer f.Close()
	sc := bufio.NewScanner(f)
	sc.Buffer(make([]byte, 1<<16), 1<<20)
	for n := 1; sc.Scan(); n++ {
		if err := l.line(sc.Text(), defs); err != nil {
			return fmt.Errorf("%s:%d: %w", name, n, err)
		}
	}
	return sc.Err()
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
	if fields[0] == "list" && len(fields) == 2 {
		return l.addList(fields[1], body)
	}
	if fields[0] == "verbo" && len(fields) == 2 {
		l.addVerbo(fields[1], body)
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

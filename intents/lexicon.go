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
	class class
	value string
}

// lexicon holds phrases in a trie over words. Read-only once built.
type lexicon struct {
	words    []string           // the vocabulary: the words of phrases
	spelt    []bool             // by word: it may be misspelt, a term of the trade
	first    []int32            // by word: the node it leads to from the root; 0 for none
	skeleton map[string][]int32 // consonants of a word -> words
	deletes  []deletion         // a word less one letter -> words
	toward   map[string]bool    // words that a house is told after: "leaving", "visited"
	alias    map[string][]int32 // what is written for a word and is not it with letters left out: "blk"
	suffixes map[string]string  // what is written for a street's suffix beside the tables: "blv"
	sounds   map[string]string  // the sound of a word in Spanish -> the word
	short    map[string]string  // what is texted short in Spanish -> the whole word
	whole    []string           // words that are written out where their vowels were left out
	entries  entryTable         // by word: all that is known of it
	letters  [256]*entry        // the same, of letters, figures and marks alone
	bags     bagSet             // of those words
	byID     []*entry           // the same, by word of the vocabulary
	lists    []phraseSet        // words that a rule knows by their letters
	house    []*formula         // the formulas that may begin with a street line
	gaz      *gazetteer         // the postal tables
	trie
}

// About how many nodes the phrases grow into, how many letters each adds, and how many words there
// are. To make room as they come would take half of the time that the program takes to start.
const (
	nodes   = 600_000
	spelt   = 20
	entries = 24_000
)

// newLexicon returns an empty lexicon.
func newLexicon() *lexicon {
	l := &lexicon{
		skeleton: map[string][]int32{}, toward: map[string]bool{},
		alias: map[string][]int32{}, suffixes: map[string]string{}, sounds: map[string]string{}, short: map[string]string{},
		entries: newEntryTable(entries),
		trie:    newTrie(), lists: make([]phraseSet, len(listNames)),
	}
	l.spells.Grow(spelt * nodes)
	return l
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
		if strings.HasPrefix(name, listFiles) {
			continue // read before all others
		}
		if err := l.read(name, defs); err != nil {
			return err
		}
	}
	l.index()
	return nil
}

// listFiles begins the names of the files that hold lists, which rules and their openers share.
const listFiles = "lexicon/lists_"

// loadLists reads the lists.
func (l *lexicon) loadLists() error {
	files, err := fs.Glob(lexiconFiles, listFiles+"*.txt")
	if err != nil {
		return err
	}
	for _, name := range files {
		if err := l.read(name, nil); err != nil {
			return err
		}
	}
	return nil
}

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

// line reads one line of a data file: "head: body". What its head's first word asks for is done;
// else that is a class, the second its value, and the body holds phrases.
func (l *lexicon) line(s string, defs map[string][]string) error {
	s = strings.TrimSpace(s)
	if s == "" || s[0] == '#' {
		return nil
	}
	head, body, ok := strings.Cut(s, ":")
	if !ok {
		return fmt.Errorf("%q lacks a colon", s)
	}
	first, second, _ := strings.Cut(strings.TrimSpace(head), " ")
	second = strings.TrimSpace(second)
	if first == "def" {
		defs["$"+second] = strings.Fields(body)
		return nil
	}
	if set := wordKinds[first]; set != nil {
		for _, w := range strings.Fields(body) {
			set(l, fold(w), second)
		}
		return nil
	}
	if read := phraseKinds[first]; read != nil {
		return read(l, second, body)
	}
	c, ok := classNames[first]
	if !ok {
		return fmt.Errorf("there is no class %q", first)
	}
	for phrase := range strings.SplitSeq(body, "|") {
		alts, err := alternatives(phrase, defs)
		if err != nil {
			return err
		}
		l.add(alts, tag{class: c, value: second})
	}
	return nil
}

// wordKinds are the lines that say something of words by themselves, with what stands second in
// their heads.
var wordKinds = map[string]func(l *lexicon, w, of string){
	"plain":  func(l *lexicon, w, _ string) { l.entry(w).plain = true },
	"right":  func(l *lexicon, w, _ string) { l.entry(w).right = true },
	"never":  func(l *lexicon, w, _ string) { l.entry(w).never = true },
	"heads":  func(l *lexicon, w, _ string) { l.entry(w).heads = true },
	"thanks": func(l *lexicon, w, _ string) { l.entry(w).thanks = true },
	"toward": func(l *lexicon, w, _ string) { l.toward[w] = true },
	"column": func(l *lexicon, w, of string) { l.entry(w).column = headNames[of] },
	"short":  func(l *lexicon, w, of string) { l.short[w] = fold(of) },
	"whole":  func(l *lexicon, w, _ string) { l.whole = append(l.whole, w) },
	"alias":  func(l *lexicon, w, of string) { l.alias[w] = append(l.alias[w], l.word(fold(of))) },
	"suffix": func(l *lexicon, w, of string) { l.suffixes[w] = of },
}

// phraseKinds are the lines whose phrases grow or are kept by other rules than those of a class.
var phraseKinds = map[string]func(l *lexicon, name, body string) error{
	"list":  (*lexicon).addList,
	"verbo": (*lexicon).addVerbo,
	"verb":  (*lexicon).addVerb,
	"cue":   (*lexicon).addCue,
	"sign":  (*lexicon).addSigns,
	"wrote": (*lexicon).addWrote,
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

// add gives a meaning to every phrase that alternatives spell.
func (l *lexicon) add(alts [][]string, t tag) {
	c := t.class
	term := c != cAsk && c != cQuestion && c != cSkip && c != cTarget && c != cMemory && c != cWill && c != cWord && c != cUnit && c < cWhose
	choices := make([][][]int32, len(alts))
	for i := range alts {
		choices[i] = make([][]int32, 0, len(alts[i]))
	}
	l.choices(alts, term, choices)
	l.grow(choices, l.number(t), 0)
	if c == cHint && oneOf(t.value, "denies", "insteadof") {
		for _, ids := range slices.Concat(choices...) {
			for _, id := range ids {
				l.entry(l.words[id]).denies = true
			}
		}
	}
}

// choices turns alternatives into words of the vocabulary, in the order in which the phrases
// come to them. A choice of no word is "_".
func (l *lexicon) choices(alts [][]string, term bool, into [][][]int32) {
	if len(alts) == 0 {
		return
	}
	at := len(into) - len(alts)
	for k, w := range alts[0] {
		var ids []int32
		if w != "_" {
			for one := range strings.SplitSeq(w, "+") {
				id := l.word(fold(one))
				l.spelt[id] = l.spelt[id] || term
				ids = append(ids, id)
			}
		}
		into[at] = append(into[at], ids)
		if k == 0 {
			l.choices(alts[1:], term, into)
		}
	}
}

// word returns a word of the vocabulary, a new one for a new word.
func (l *lexicon) word(w string) int32 {
	e := l.entry(w)
	if e.id < 0 {
		e.id = int32(len(l.words))
		l.words, l.spelt, l.first = append(l.words, w), append(l.spelt, false), append(l.first, 0)
	}
	return e.id
}

// id returns a word of the vocabulary.
func (l *lexicon) id(w string) (int32, bool) {
	id := l.look(w).id
	return id, id >= 0
}

// index prepares the look-up of words written short or wrong.
func (l *lexicon) index() {
	l.grown()
	l.enterVowelless()
	l.enter()
	for id, w := range l.words {
		if s := consonants(w); len(s) >= 2 && s != w {
			l.skeleton[s] = append(l.skeleton[s], int32(id))
		}
		if len(w) >= 5 {
			for k := range w {
				if k == 0 || w[k] != w[k-1] {
					l.deletes = append(l.deletes, deletion(lessOne(w, k))<<32|deletion(id))
				}
			}
		}
	}
	slices.Sort(l.deletes)
	l.deletes = slices.Clip(l.deletes)
	for w := range numberWords {
		l.sounds[sound(w)] = w
	}
	for _, term := range [...]bool{true, false} {
		for id, w := range l.words {
			if s := sound(w); len(w) >= 3 && l.spelt[id] == term && l.sounds[s] == "" {
				l.sounds[s] = w
			}
		}
	}
	// of words written the same way a term comes first: "lks" is leaks rather than
	// looks, but "cld" could rather than cold
	term := func(id int32) int {
		if l.spelt[id] && !l.byID[id].plain {
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

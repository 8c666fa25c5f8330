package intents

import (
	"fmt"
	"slices"
	"sort"
	"strings"
	"sync"

	"lazyhand/assess"
)

// Parser reads messages. It is safe for use by many goroutines at once.
type Parser struct {
	lex       *lexicon
	gaz       *gazetteer
	scratches sync.Pool // of *scratch: room to work on
	ungated   bool      // every gate is open
}

// Word is a word of the shop's own, from its configuration: Says is what people
// type, Means the code it stands for ("rear_bibb", "heater", "firing" …).
type Word struct {
	Says  string
	Means string
}

// New returns a parser that knows the built-in words and the shop's own. It
// fails on a word whose meaning is not a code it knows.
func New(words ...Word) (*Parser, error) {
	learn := builtIn
	if len(words) > 0 {
		learn = func() (*lexicon, error) { return readLexicon(words) }
	}
	lex, err := learn()
	if err != nil {
		return nil, err
	}
	p := &Parser{lex: lex, gaz: lex.gaz}
	p.scratches.New = func() any { return new(scratch) }
	return p, nil
}

// builtIn is what every parser knows that was given no word of a shop's: the files that it is read from are
// part of the program and nothing changes it once it is read, so that all of them share one.
var builtIn = sync.OnceValues(func() (*lexicon, error) { return readLexicon(nil) })

// readLexicon reads all files of the lexicon, behind a shop's own words.
func readLexicon(words []Word) (*lexicon, error) {
	gaz, err := newGazetteer()
	if err != nil {
		return nil, err
	}
	l := newLexicon()
	l.gaz = gaz
	for _, w := range words {
		if err := l.addShopWord(w); err != nil {
			return nil, err
		}
	}
	if err := l.loadLists(); err != nil {
		return nil, err
	}
	gaz.enter(l)
	ring := newKeyring(l)
	ring.enter(l)
	if err := l.load(); err != nil {
		return nil, err
	}
	gaz.enterWritten(l)
	l.open(ring)
	return l, nil
}

// shopClasses are the classes whose codes a shop may give words of its own.
var shopClasses = map[string][]string{
	"point": {"front_bibb", "rear_bibb", "side_bibb", "bibb", "laundry", "heater_drain", "kitchen", "bath", "street", "after_prv",
		"irrigation"},
	"state":    {"idle", "firing"},
	"item":     {"prv", "heater", "expansion_tank", "check_valve", "drain_valve", "gauge", "softener", "recirc"},
	"cond":     {"failed", "suspect", "good"},
	"fuel":     {"gas", "electric", "propane", "heat_pump", "tankless"},
	"material": {"plastic", "brass"},
	"sym":      {"dark_water", "rusty_water", "leak", "hammer", "noise", "low_flow", "swings", "creep", "no_water", "gas_smell"},
	"static":   {"static"},
	"flowing":  {"flowing"},
	"peak":     {"peak"},
}

// Check tells what keeps a parser from knowing the word, nil if nothing does.
func (w Word) Check() error {
	_, _, err := w.meaning()
	return err
}

// addShopWord checks a word of the shop's and adds it.
func (l *lexicon) addShopWord(w Word) error {
	alts, t, err := w.meaning()
	if err == nil {
		l.add(alts, t)
	}
	return err
}

// meaning returns the words that people type and what they mean.
func (w Word) meaning() (alts [][]string, t tag, err error) {
	for says := range strings.FieldsSeq(fold(w.Says)) {
		for _, r := range says {
			if r >= '0' && r <= '9' {
				return nil, tag{}, fmt.Errorf("the word %q holds a digit: numbers cannot be words", w.Says)
			}
		}
		alts = append(alts, []string{contraction(says)})
	}
	if len(alts) == 0 {
		return nil, tag{}, fmt.Errorf("a word for %q is empty: write what people type", w.Means)
	}
	var all []string
	for cls, codes := range shopClasses {
		if slices.Contains(codes, w.Means) {
			value := w.Means
			if cls == "static" || cls == "flowing" || cls == "peak" {
				value = "-"
			}
			return alts, tag{class: classNames[cls], value: value}, nil
		}
		all = append(all, codes...)
	}
	sort.Strings(all)
	return nil, tag{}, fmt.Errorf("the word %q is to mean %q, which is no code: choose one of %s", w.Says, w.Means, strings.Join(all, ", "))
}

// longest is the longest message that is read, in bytes. No visit note comes near
// it; what does is no report, and reading it is left to a person.
const longest = 8000

// Parse reads one message. It never fails: what it cannot decide is in
// Frame.Unclear.
func (p *Parser) Parse(text string, ctx Context) Frame {
	d := p.scratches.Get().(*scratch)
	f := p.read(text, ctx, d, false).frame
	d.clear()
	p.scratches.Put(d)
	return f
}

// read does all the work of Parse in an empty scratch; with explain it keeps its decisions.
func (p *Parser) read(text string, ctx Context, d *scratch, explain bool) *message {
	if ctx.Today.IsZero() {
		ctx.Today = assess.Date{Year: 2026, Month: 6, Day: 15}
	}
	tooLong := len(text) > longest
	if tooLong {
		text = text[:longest]
	} else {
		if len(ctx.Sites) > 0 {
			text = p.spellOut(text, ctx.Sites, d)
		}
		if ctx.Again != "" {
			text = nameTap(text, ctx.Again)
		}
	}
	m := &d.msg
	m.p, m.scratch, m.ctx, m.raw, m.explain = p, d, ctx, text, explain
	m.clean = undo(text, d)
	m.toks = p.lex.tokenize(m.clean, d)
	if tooLong {
		m.tooLong()
		return m
	}
	m.toks = m.putRight(m.toks)
	m.build()
	m.understand()
	return m
}

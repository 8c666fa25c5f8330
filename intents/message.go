package intents

import (
	"slices"
	"strings"

	"lazyhand/assess"
)

// message is one message on its way to a frame.
type message struct {
	p       *Parser
	scratch *scratch
	ctx     Context
	raw     string
	clean   clean
	toks    []token
	items   []item
	kinds   classSet // the classes of all items
	keys    key      // the keys of all items
	allKeys key      // of every item, besides its own
	holds   [meanings]bool
	sents   []sentence
	sites   []address
	site    *address
	frame   Frame
	notes   []note
	explain bool

	moments   []moment
	verbs     []verb
	readings  []reading
	equipment equipmentSet
	work      []workDone
	plans     []planned
	asks      []asked
	reports   int8 // whether any pressure is reported: 0 not looked yet, 1 no, 2 yes
	symptoms  []symptomSeen
	sections  []section
	foundLeft bool // the note has heads of how things were found and left
}

// item is a phrase, a number, a mark or the street line: what rules look at.
type item struct {
	tok, n    int // tokens
	text      string
	tags      []tag
	kinds     classSet // the classes among tags
	keys      key      // the rules that may begin here
	num       *numeral
	unit      string // of a number
	mark      bool
	site      bool
	sent      int
	seg       int
	role      role
	why       string // of a number: what made its role
	point     string // the test point that the phrase names
	weak      bool   // a point only beside a number: "back"
	muted     bool   // of a clause that speaks of no house
	used      bool   // an attribute that found its owner
	value     float64
	ranged    bool // the middle of two
	owner     int  // 1+index of the word of work that a number belongs to
	inherits  int  // the number that this one corrects
	takesOver bool
}

// sentence is a range of items; line tells lines apart.
type sentence struct {
	from, to    int
	line        int
	question    bool
	asking      bool // holds a question or an instruction to the bot
	asksConvert bool
	asksDue     bool // wants the follow-ups that are due
	asksSize    bool // wants the size of a tank
	remembers   bool // told from memory as a whole
	askAt       int  // 1+item of a question about the cause: numbers after it in its clause are its own
	tells       bool // reports something beside its question
	closes      bool // says that a follow-up is done
	snoozes     bool // puts a follow-up off
	aside       bool // speaks of no house
	header      int  // item index of a colon after a first word, -1 if none
	numbers     int  // how many numbers it has
	cued        bool
	cues        cueSet // of all its words, once cued
}

// build finds the street lines, looks the words up and cuts sentences.
func (m *message) build() {
	p := m.p
	ids := slices.Grow(m.scratch.words[:0], len(m.toks)*2)
	for i := range m.toks {
		t := &m.toks[i]
		if t.kind != word {
			continue
		}
		at := len(ids)
		if id := p.possessive(m.toks, i); id > 0 {
			ids = append(ids, id)
		}
		if e := p.lex.of(t); e.id >= 0 {
			ids = append(ids, e.id)
		} else if vowelless(t.text) && len(t.text) > 2 && p.gaz.suffix[t.text] == "" {
			ids = append(ids, m.scratch.candidates(p.lex, t.text)...) // "htr": no part of a street's name
		}
		if t.short {
			if id, ok := p.lex.vocab[fold(t.raw)]; ok {
				ids = append(ids, id)
			}
		}
		t.cand = ids[at:len(ids):len(ids)]
	}
	m.toks = p.paused(m.toks)
	m.sites = p.addresses(m.toks, m.scratch.sites[:0])
	m.scratch.sites = m.sites
	m.chooseSite()
	inSite := slices.Grow(m.scratch.inSite[:0], len(m.toks))[:len(m.toks)] // 1+index of the street line
	clear(inSite)
	for k, a := range m.sites {
		if a.score < 0 {
			continue
		}
		for i := a.from; i < a.to; i++ {
			inSite[i] = k + 1
		}
	}
	for i := range m.toks {
		t := &m.toks[i]
		if t.kind != word || inSite[i] > 0 || t.quoted {
			continue
		}
		if s := m.yesNo(i); s != "" {
			t.text, t.entry = s, p.lex.look(s)
			at := len(ids)
			ids = append(ids, t.entry.id)
			t.cand = ids[at:len(ids):len(ids)]
			continue
		}
		if len(t.cand) == 0 || vowelless(t.text) {
			t.cand = m.scratch.candidates(p.lex, t.text)
		}
	}
	m.items = slices.Grow(m.scratch.items[:0], len(m.toks))
	for i := 0; i < len(m.toks); {
		t := &m.toks[i]
		if t.quoted && inSite[i] == 0 {
			i++
			continue
		}
		if k := inSite[i]; k > 0 {
			a := m.sites[k-1]
			it := m.add(i, a.to-i)
			it.text, it.site = "«site»", true
			i = a.to
			continue
		}
		switch t.kind {
		case mark:
			m.add(i, 1).mark = true
			i++
		case number:
			it := m.add(i, 1)
			it.num, it.value = t.num, t.num.value
			i++
		default:
			end := i + 1
			for end < len(m.toks) && inSite[end] == 0 && end < i+9 {
				end++
			}
			node, n := p.lex.find(m.toks, i, end)
			if n == 0 {
				if a, b := p.joined(t.text); a != 0 {
					m.means(m.add(i, 1), a)
					if b != 0 {
						m.means(m.add(i, 1), b)
					}
				} else {
					m.add(i, 1)
				}
				i++
				continue
			}
			if n >= 2 && i+n < len(m.toks) && inSite[i+n] > 0 && p.kinds[node].has(cTarget) {
				// "prv's shot for 12 Elm": nothing is aimed at
				if nd, k := p.lex.find(m.toks, i, i+n-1); k > 0 {
					node, n = nd, k
				}
			}
			if n >= 2 && p.has(p.lex.tags[node], cPoint, "") && p.timeOfJob(m.toks, i, i+n) {
				node, n = p.lex.find(m.toks, i, i+1) // "after the reg swap" is a time
			}
			if n >= 2 {
				// "no pressure regulator": the longer name begins inside the phrase
				if nd, k := p.lex.find(m.toks, i+n-1, min(end+2, len(m.toks))); k >= 2 && inSite[min(i+n+k-2, len(m.toks)-1)] == 0 && (p.has(p.lex.tags[nd], cItem, "") || p.has(p.lex.tags[nd], cRelief, "") || p.has(p.lex.tags[nd], cDid, "") && p.has(p.lex.tags[node], cAsk, "") || p.has(p.lex.tags[nd], cCond, "") && (k >= 3 && p.has(p.lex.tags[node], cState, "") || !p.has(p.lex.tags[node], cCond, "") && p.lex.phrases[node] == "is done") || p.has(p.lex.tags[nd], cBefore, "") && n == 2 || p.has(p.lex.tags[nd], cSym, "") && (k > n || denies(p.lex.phrases[node]))) && !p.has(p.lex.tags[node], cItem, "") && !p.has(p.lex.tags[node], cPoint, "") {
					node, n = p.lex.find(m.toks, i, i+n-1)
					if n == 0 {
						m.add(i, 1)
						i++
						continue
					}
				}
			}
			m.means(m.add(i, n), node)
			i += n
		}
	}
	m.scratch.words, m.scratch.inSite, m.scratch.items = ids, inSite, m.items
	for i := range m.items {
		m.kinds |= m.items[i].kinds
		m.keys |= m.items[i].keys
		m.hold(m.items[i].tags)
	}
	if p.ungated {
		m.openAll()
	}
	m.units()
	m.joinRows()
	m.cut()
}

// add appends an item of n tokens, a word as it is typed.
func (m *message) add(tok, n int) *item {
	t := &m.toks[tok]
	m.items = append(m.items, item{tok: tok, n: n, text: t.text})
	it := &m.items[len(m.items)-1]
	if n == 1 && t.kind == word {
		e := m.p.lex.of(t)
		it.keys = e.keys | e.typed
	}
	return it
}

// means makes an item the phrase of a node of the lexicon.
func (m *message) means(it *item, node int32) {
	it.text, it.tags, it.kinds = m.p.lex.phrases[node], m.p.lex.tags[node], m.p.kinds[node]
	it.keys = m.p.keys[node]
	if t := &m.toks[it.tok]; it.n == 1 && t.kind == word {
		it.keys |= m.p.lex.of(t).typed
	}
}

// timeOfJob tells whether the phrase of tokens i..end, "after the reg", is followed by
// the noun of a job, so that it tells a time and no place.
func (p *Parser) timeOfJob(toks []token, i, end int) bool {
	switch toks[i].text {
	case "after", "before", "post", "pre", "since", "aftr", "bfr":
	default:
		return false
	}
	if end >= len(toks) || toks[end].kind != word {
		return false
	}
	id, ok := p.lex.vocab[toks[end].text]
	return ok && p.has(p.lex.tags[p.lex.first[id]], cHint, "job")
}

// yesNo reads the "Y" and "N" of a check list: "ET N, softener: y".
func (m *message) yesNo(i int) string {
	t := &m.toks[i]
	if len(t.raw) != 1 || i == 0 || i+1 < len(m.toks) && m.toks[i+1].kind != mark {
		return ""
	}
	prev := &m.toks[i-1]
	if !(prev.text == ":" || prev.text == "=" || prev.kind == word && t.caps && m.p.lexItem(m.toks, i-1)) {
		return ""
	}
	switch t.text {
	case "y":
		return "yes"
	case "n":
		return "none"
	}
	return ""
}

// longestSentence is how many items a sentence may have. Nobody dictates one as
// long; rules compare what stands in one sentence with each other, and their time
// must grow with the message, not with its square.
const longestSentence = 120

// cut finds sentences and segments.
func (m *message) cut() {
	m.sents = m.scratch.sents[:0]
	line, seg := 0, 0
	start := 0
	close := func(end int, q bool) {
		if end > start {
			m.sents = append(m.sents, sentence{from: start, to: end, line: line, question: q, header: -1})
		}
	}
	for i := range m.items {
		it := &m.items[i]
		if i-start >= longestSentence {
			close(i, false)
			start = i
			seg++
		}
		it.sent, it.seg = len(m.sents), seg
		if !it.mark {
			if it.tags == nil {
				switch it.text {
				case "but", "then", "while", "because", "pero", "porque", "mientras", "although", "though", "so":
					seg++
					it.seg = seg
				}
			}
			continue
		}
		switch it.text {
		case "\n", ".", "!", "?", ";", "...":
			if it.text == "?" && m.text(i-1) == "=" {
				continue // "3.5 bar = ? psi"
			}
			close(i+1, it.text == "?")
			start = i + 1
			seg++
			if it.text == "\n" {
				line++
			}
		case ",", "/", "(", ")", "|":
			seg++
		case "-":
			if t := m.toks[it.tok]; !t.glued || it.tok+1 < len(m.toks) && !m.toks[it.tok+1].glued {
				seg++
			}
		case ":":
			// a short head: "HEATER:", "Before:"
			s := len(m.sents)
			_ = s
		}
	}
	close(len(m.items), false)
	m.scratch.sents = m.sents
	m.splitQuestions()
	for k := range m.sents {
		s := &m.sents[k]
		words := 0
		for i := s.from; i < s.to; i++ {
			m.items[i].sent = k
			if m.items[i].mark && m.items[i].text == ":" && s.header < 0 && words > 0 && words <= 6 {
				s.header = i
			}
			if !m.items[i].mark {
				words++
			}
			if m.items[i].num != nil {
				s.numbers++
			}
		}
	}
}

func (m *message) is(i int, c class, value string) bool {
	return i >= 0 && i < len(m.items) && m.items[i].kinds.has(c) && (value == "" || m.p.has(m.items[i].tags, c, value))
}

func (m *message) val(i int, c class) (string, bool) {
	if i < 0 || i >= len(m.items) || !m.items[i].kinds.has(c) {
		return "", false
	}
	return m.p.value(m.items[i].tags, c)
}

func (m *message) text(i int) string {
	if i < 0 || i >= len(m.items) {
		return ""
	}
	return m.items[i].text
}

func (m *message) isNum(i int) bool { return i >= 0 && i < len(m.items) && m.items[i].num != nil }

// span returns the message's own words of items from..to.
func (m *message) span(from, to int) string {
	if from < 0 || to > len(m.items) || from >= to {
		return ""
	}
	a, b := m.items[from], m.items[to-1]
	return m.clean.source(m.raw, span{m.toks[a.tok].span.from, m.toks[b.tok+b.n-1].span.to})
}

// understand runs the rules, room by room.
func (m *message) understand() {
	if m.site != nil {
		m.frame.Site, m.frame.Town, m.frame.Postcode = m.site.line, m.site.town, m.site.postcode
	}
	if m.twoHouses() {
		m.frame.Site, m.frame.Town, m.frame.Postcode = "", "", ""
		m.frame.Statements = nil
		return
	}
	if m.corner() {
		return
	}
	m.fromRecord()
	m.houseAgain()
	m.places()
	m.pointedBack()
	m.dates()
	m.ask()
	m.asides()
	m.terse()
	m.findSections()
	m.findVerbs()
	m.numbers()
	m.findReadings()
	m.findWork()
	m.findPlans()
	m.findEquipment()
	m.findSymptoms()
	m.settle()
	m.earlierDay()
	m.collect()
	m.frame.Answer = m.answer()
	m.amend()
}

// spanish guesses the message's language from its small words.
func (m *message) spanish() bool { return m.language() == assess.Spanish }

// denies tells whether a phrase begins with a word of denial.
func denies(s string) bool {
	return strings.HasPrefix(s, "no ") || strings.HasPrefix(s, "sin ") || strings.HasPrefix(s, "zero ")
}

// call makes item i the word w, which means nothing.
func (m *message) call(i int, w string) {
	m.unsay(i)
	m.items[i].text, m.items[i].keys = w, m.p.lex.look(w).keys
	m.keys |= m.items[i].keys
}

// say makes item i the word w of the lexicon.
func (m *message) say(i int, w string) {
	node := m.p.lex.first[m.p.lex.vocab[w]]
	m.means(&m.items[i], node)
	m.kinds |= m.items[i].kinds
	m.keys |= m.items[i].keys
	m.hold(m.items[i].tags)
}

// unsay takes its meaning from item i: it is only a word here.
func (m *message) unsay(i int) { m.items[i].tags, m.items[i].kinds = nil, 0 }

package intents

import (
	"slices"
	"strings"
)

// build finds the street lines, looks the words up and cuts sentences.
func (m *message) build() {
	m.lookUp()
	m.toks = m.p.paused(m.toks)
	m.sites = m.p.addresses(m.toks, m.scratch.sites[:0])
	m.scratch.sites = m.sites
	m.chooseSite()
	inSite := m.siteOfTokens()
	m.lookUpRest(inSite)
	m.layItems(inSite)
	for i := range m.items {
		m.kinds |= m.items[i].kinds
		m.keys |= m.items[i].keys
	}
	if m.p.ungated {
		m.openAll()
	}
	m.units()
	m.tickedChecks()
	m.softenerTicked()
	m.heatPumps()
	m.tankTicked()
	m.namedLast()
	m.joinRows()
	m.cut()
}

// lookUp finds the words of the lexicon that each word surely stands for, before the street
// lines are known.
func (m *message) lookUp() {
	p := m.p
	ids := slices.Grow(m.scratch.words[:0], len(m.toks)*2)
	for i := range m.toks {
		t := &m.toks[i]
		e := p.lex.of(t)
		m.cues |= e.cues
		m.held.join(&e.asks)
		m.flats = m.flats || e.flat
		if t.kind != word || m.endsOrdinal(i) {
			continue
		}
		at := len(ids)
		if t.text[len(t.text)-1] == 's' {
			if id := p.possessive(m.toks, i); id > 0 {
				ids = append(ids, id)
			}
		}
		if e.id >= 0 {
			ids = append(ids, e.id)
		} else if len(t.text) > 2 && e.suffix == "" && vowelless(t.text) {
			ids = append(ids, m.scratch.candidates(p.lex, t.text)...) // "htr": no part of a street's name
		}
		if t.short {
			if w := fold(t.raw); p.lex.look(w).sees.has(seesVowelless) && !e.plain {
				ids = append(ids, m.scratch.candidates(p.lex, w)...)
			} else if id, ok := p.lex.id(w); ok {
				ids = append(ids, id)
			}
		}
		t.cand = ids[at:len(ids):len(ids)]
	}
	m.scratch.words = ids
}

// endsOrdinal tells whether token i is the end of "1st", and no "set" or "need" written short.
func (m *message) endsOrdinal(i int) bool {
	return m.toks[i].glued && m.ordinalEnding(i)
}

// ordinalEnding tells whether token i is an ending that makes the number before it an ordinal one.
func (m *message) ordinalEnding(i int) bool {
	return i > 0 && m.toks[i-1].kind == number && oneOf(m.toks[i].text, "st", "nd", "rd", "th")
}

// siteOfTokens returns, for each token, one more than the number of the street line that it
// is part of, or 0.
func (m *message) siteOfTokens() []int {
	inSite := slices.Grow(m.scratch.inSite[:0], len(m.toks))[:len(m.toks)]
	m.scratch.inSite = inSite
	clear(inSite)
	for k, a := range m.sites {
		if a.score < 0 {
			continue
		}
		for i := a.from; i < a.to; i++ {
			inSite[i] = k + 1
		}
	}
	return inSite
}

// lookUpRest finds what the words outside the street lines may stand for that are written
// short or wrong.
func (m *message) lookUpRest(inSite []int) {
	p, ids := m.p, m.scratch.words
	for i := range m.toks {
		t := &m.toks[i]
		if t.kind != word || inSite[i] > 0 || t.quoted || m.endsOrdinal(i) {
			continue
		}
		if len(t.raw) == 1 {
			if s := m.yesNo(i); s != "" {
				t.becomes(word, s)
				at := len(ids)
				e := p.lex.of(t)
				ids = append(ids, e.id)
				m.cues |= e.cues
				m.held.join(&e.asks)
				t.cand = ids[at:len(ids):len(ids)]
				continue
			}
		}
		if len(t.cand) == 0 || p.lex.of(t).bare || p.lex.of(t) == stranger && vowelless(t.text) {
			t.cand = m.scratch.candidates(p.lex, t.text)
		}
	}
	m.scratch.words = ids
}

// layItems makes items of the tokens: street lines, marks, numbers, and the longest phrases
// of the lexicon.
func (m *message) layItems(inSite []int) {
	m.items = slices.Grow(m.scratch.items[:0], len(m.toks))
	m.open.add(alwaysOpen)
	stop := 0 // where the words from i on end, at a street line or with the message
	for i := 0; i < len(m.toks); {
		for stop = max(stop, i); stop < len(m.toks) && inSite[stop] == 0; {
			stop++
		}
		t := &m.toks[i]
		switch k := inSite[i]; {
		case k > 0:
			a := &m.sites[k-1]
			it := m.add(i, a.to-i)
			it.text, it.site = "«site»", true
			i = a.to
		case t.quoted:
			i++
		case t.kind == mark:
			m.add(i, 1).mark = true
			i++
		case t.kind == number:
			it := m.add(i, 1)
			it.num, it.value = t.num, t.num.value
			i++
		default:
			i += m.addWords(i, stop)
		}
	}
	m.scratch.items = m.items
}

// addWords makes an item of the phrase that begins at token i, or two of a word that was
// written for two; it returns how many tokens they take. The words end at stop.
func (m *message) addWords(i, stop int) int {
	node, n := m.phraseAt(i, stop)
	if n > 0 {
		if it := m.add(i, n); node != 0 {
			m.means(it, node)
		}
		return n
	}
	a, b := m.p.joined(m.toks[i].text)
	it := m.add(i, 1)
	if a != 0 {
		m.means(it, a)
	}
	if b != 0 {
		m.means(m.add(i, 1), b)
	}
	return 1
}

// longestPhrase is how many words a phrase has at most.
const longestPhrase = 9

// phraseAt finds the longest phrase that begins at token i, its node and how many tokens it
// takes; a node of 0 is a word by itself. What follows may claim the end of a phrase. The
// words end at stop.
func (m *message) phraseAt(i, stop int) (node int32, n int) {
	p, end := m.p, min(i+longestPhrase, stop)
	if node, n = p.lex.find(m.toks, i, end); n < 2 {
		return node, n
	}
	if i+n == stop && stop < len(m.toks) && p.lex.kinds(node).has(cTarget) {
		// "prv's shot for 12 Elm": nothing is aimed at
		if nd, k := p.lex.find(m.toks, i, i+n-1); k > 0 {
			node, n = nd, k
		}
	}
	if n >= 2 && p.lex.kinds(node).has(cPoint) && p.timeOfJob(m.toks, i, i+n) {
		node, n = p.lex.find(m.toks, i, i+1) // "after the reg swap" is a time
	}
	if n == 2 && p.lex.kinds(node).has(cFlowing) && m.readHere(i) {
		if nd, _ := p.lex.find(m.toks, i, i+1); p.lex.kinds(nd).has(cPoint) {
			return nd, 1 // "31 psi at the lav running": the gauge sits there
		}
	}
	if n < 2 {
		return node, n
	}
	last := i + n - 1
	if m.toks[last].text == "no" && p.lex.kinds(node).has(cSkip) && !m.numbered(last) {
		return p.lex.find(m.toks, i, last) // "chk vlv n mtr no tank"
	}
	next, k := p.lex.find(m.toks, last, min(end+2, len(m.toks)))
	if k < 2 || last+k > stop || !p.givesWay(node, n, next, k) {
		return node, n
	}
	if node, n = p.lex.find(m.toks, i, last); n == 0 {
		return 0, 1
	}
	return node, n
}

// numbered tells whether the "no" at token i is that of a number: "mtr no 4471", "meter no. K-12".
func (m *message) numbered(i int) bool {
	if i+1 == len(m.toks) {
		return true
	}
	next := &m.toks[i+1]
	return next.kind != word || next.caps || len(next.raw) == 1
}

// readHere tells whether a number is said to be read at what token i begins: "31 psi at the".
func (m *message) readHere(i int) bool {
	k := i - 1
	if k > 0 && oneOf(m.toks[k].text, "the", "her", "his", "their", "la", "el") {
		k--
	}
	if k < 1 || !m.p.lex.of(&m.toks[k]).lists.has(listReadAt) {
		return false
	}
	return m.toks[k-1].kind == number || k > 1 && m.toks[k-2].kind == number && oneOf(m.toks[k-1].text, "psi", "lbs", "pounds", "#", "libras")
}

// givesWay tells whether a phrase of n words leaves its last one to a phrase of k words that
// begins with it: "no pressure regulator" is no "no pressure".
func (p *Parser) givesWay(node int32, n int, next int32, k int) bool {
	first, then := p.lex.kinds(node), p.lex.kinds(next)
	switch {
	case first.has(cItem) || first.has(cPoint):
		return false
	case then.has(cItem), then.has(cRelief), then.has(cDid) && first.has(cAsk):
		return true
	case then.has(cBefore) && n == 2, first.has(cState) && p.lex.phrase(next) == "down to":
		return true // "knocked the heater down to 120"
	case then.has(cSym) && (k > n || denies(p.lex.phrase(node))):
		return true // "no" before "pressure drops"
	case then.has(cCond):
		return k >= 3 && first.has(cState) || !first.has(cCond) && p.lex.phrase(node) == "is done"
	}
	return false
}

// add appends an item of n tokens, a word as it is typed.
func (m *message) add(tok, n int) *item {
	t := &m.toks[tok]
	e := m.p.lex.of(t)
	m.items = slices.Grow(m.items, 1)[:len(m.items)+1]
	it := &m.items[len(m.items)-1]
	*it = item{} // in its place: an item is large
	it.tok, it.n, it.text, it.lists = tok, n, t.text, e.lists
	m.open.join(&e.gates)
	if n == 1 && t.kind == word {
		it.keys = e.keys | e.typed
	}
	return it
}

// means makes an item the phrase of a node of the lexicon.
func (m *message) means(it *item, node int32) {
	l := m.p.lex
	n := &l.nodes[node]
	it.text = l.spelling[n.at:][:n.n]
	s, o := &l.senses[n.sense], &l.opened[n.opened]
	it.tags, it.kinds, it.values, it.keys, it.lists = s.tags, s.kinds, s.values, s.keys|o.keys, o.lists
	m.open.join(&s.gates)
	m.open.join(&o.gates)
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
	id, ok := p.lex.id(toks[end].text)
	return ok && p.has(p.lex.tags(p.lex.first[id]), cHint, "job")
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

// denies tells whether a phrase begins with a word of denial.
func denies(s string) bool {
	return strings.HasPrefix(s, "no ") || strings.HasPrefix(s, "sin ") || strings.HasPrefix(s, "zero ")
}

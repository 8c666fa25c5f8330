package intents

import (
	"slices"
	"strings"

	"lazyhand/assess"
)

// Named is a part of a message that may name a house on record without its
// whole street line: a street ("at elm"), or a house number ("at 1187").
type Named struct {
	Street string // bare name in lower case, empty when only a number is given
	Suffix string // "St", when the street is named with one
	Number string
	from   int // tokens
	to     int
}

// Names returns what in a message may name a house on record. It is empty when
// the message gives a street line, and in most messages that give none: only
// then is the record worth asking. The record decides; a name that it does not
// hold is no house.
func (p *Parser) Names(text string) []Named {
	if len(text) > longest {
		return nil
	}
	d := p.scratches.Get().(*scratch)
	defer func() { d.clear(); p.scratches.Put(d) }()
	toks := p.lex.tokenize(undo(text, d), d)
	for _, a := range p.addresses(toks, nil) {
		if a.score >= 0 && !a.quoted {
			return nil
		}
	}
	return p.names(toks)
}

// mostNames bounds what is asked of the record for one message.
const mostNames = 12

// names returns what may name a house, a longer name before its parts.
func (p *Parser) names(toks []token) []Named {
	var out []Named
	for i := range toks {
		if toks[i].quoted || len(out) >= mostNames {
			continue
		}
		if toks[i].kind == number {
			if p.numberAsHouse(toks, i) {
				out = append(out, Named{Number: toks[i].num.digits, from: i, to: i + 1})
			}
			continue
		}
		// the longer name first: "oak grove" before "oak"
		for n := min(3, len(toks)-i); n > 0; n-- {
			if c, ok := p.streetAt(toks, i, n); ok {
				out = append(out, c)
			}
		}
	}
	return out
}

// streetAt reads the n words at token i as a street's bare name, told as a
// place.
func (p *Parser) streetAt(toks []token, i, n int) (Named, bool) {
	for k := i; k < i+n; k++ {
		t := &toks[k]
		if t.kind != word || t.quoted != toks[i].quoted || k > i && t.glued || !t.caps && len(t.text) < 3 {
			return Named{}, false
		}
	}
	c := Named{from: i, to: i + n}
	if c.to < len(toks) && toks[c.to].kind == word {
		if std, ok := p.gaz.suffix[toks[c.to].text]; ok && (!p.lex.inList(toks[c.to].text, listAmbiguousSuffixes) || toks[i].caps) && !p.lex.inList(toks[c.to].text, listNoSuffixes) {
			c.Suffix = std
			c.to++
		}
	}
	words := make([]string, n)
	owner := owned(&toks[i+n-1]) && c.to == i+n
	for k := range words {
		t := &toks[i+k]
		words[k] = t.text
		if k == n-1 && owner {
			words[k] = strings.TrimSuffix(t.text, "s")
			if p.lex.known(words[k]) && !t.caps {
				return Named{}, false // "the customer's"
			}
		}
		if k == 0 && n > 1 && oldOrNew(t.text) {
			continue
		}
		if p.stop(toks, i+k) && !(k > 0 && p.lex.of(t).lists.has(listLinking)) {
			return Named{}, false
		}
		if _, ok := p.gaz.directional[t.text]; ok && k == 0 {
			return Named{}, false
		}
		if c.Suffix == "" && (p.term(toks, i+k) || p.lex.known(t.text) && !t.caps) {
			return Named{}, false
		}
	}
	c.Street = strings.Join(words, " ")
	return c, c.Suffix != "" || owner || i > 0 && toks[i-1].kind == number || p.toldAsPlace(toks, i, c.to)
}

// owned tells whether a word says whose something is: "22 sable's tank".
func owned(t *token) bool { return strings.HasSuffix(t.raw, "'s") && strings.HasSuffix(t.text, "s") }

// oldOrNew tells whether an everyday word often begins a street's name: "Old Quarry Rd".
func oldOrNew(t string) bool {
	return oneOf(t, "old", "new", "big", "little", "great", "upper", "lower", "high", "long", "deep", "dry", "red", "blue", "green",
		"white", "black", "cold", "hot", "first", "second", "third")
}

// Longest leaves out the names that are part of a longer one which some of the street
// lines on record fit: "quarry" in "old quarry".
func Longest(names []Named, lines []string) []Named {
	held := func(n Named) bool {
		return slices.ContainsFunc(names, func(l Named) bool {
			return l.from <= n.from && n.to <= l.to && l.to-l.from > n.to-n.from && l.Street != "" && slices.ContainsFunc(lines, l.Names)
		})
	}
	return slices.DeleteFunc(slices.Clone(names), held)
}

// toldAsPlace tells whether the words from..to stand where a place is told: at
// either end of a message or a line, after "at", before "house".
func (p *Parser) toldAsPlace(toks []token, from, to int) bool {
	if from == 0 || to == len(toks) || toks[from].caps {
		return true
	}
	switch toks[to].text {
	case "house", "place", "job", ":", ".", "\n", ",", "?", "!":
		return true
	}
	prev := from - 1
	switch toks[prev].text {
	case "the", "la", "el":
		if prev--; prev < 0 {
			return true
		}
	}
	switch toks[prev].text {
	case "at", "on", "for", "from", "de", "en", "del", "of", ",", "\n", "to", "about", "a", "casa", "back", ":", "para", "-",
		// "snooze drover a week"
		"snooze", "push", "bump", "move", "postpone", "reschedule", "close", "mark", "done", "show", "pospon", "pospone", "recorre",
		"cierra", "marca":
		return true
	}
	return false
}

// highestPressure is the highest number that may be a pressure at a house, psi: a bare one up
// to it is taken for a house number only where nothing else makes sense.
const highestPressure = 300

// numberAsHouse tells whether the number at token i may be a house's, told
// without its street: "at 1187: 92 rear", "house 92, 66 rear".
func (p *Parser) numberAsHouse(toks []token, i int) bool {
	t := &toks[i]
	if !houseNumber(t) || t.num.words || i+1 < len(toks) && (toks[i+1].glued && toks[i+1].kind == word || p.measure(toks, i+1)) {
		return false
	}
	prev := ""
	if i > 0 {
		prev = toks[i-1].text
	}
	begins := i == 0
	switch prev {
	case "at", "house", "casa", "en":
		begins = i == 1
	case "number", "numero", "el", "the", "#", "no":
		begins = i == 1 || i == 2 && (toks[0].text == "at" || toks[0].text == "en" || toks[0].text == "house" || toks[0].text == "casa")
	}
	if begins && i+1 < len(toks) && laterNumber(toks, i+1) {
		switch toks[i+1].text {
		case ":", "\n":
			return true
		case ",", "-", "(":
			return i > 0 || t.num.value > highestPressure
		}
	}
	switch prev {
	case "house", "casa":
		return true
	case "at", "en", "number", "numero", "el":
		return t.num.value > highestPressure
	}
	return false
}

// measure tells whether the token at k is a unit or another trade word that
// the number before it counts.
func (p *Parser) measure(toks []token, k int) bool {
	return toks[k].kind == word && p.term(toks, k)
}

// laterNumber tells whether a number stands at token from or behind.
func laterNumber(toks []token, from int) bool {
	for k := from; k < len(toks); k++ {
		if toks[k].kind == number {
			return true
		}
	}
	return false
}

// Names tells whether a street line on record can be what was named.
func (c Named) Names(line string) bool {
	s := assess.Site{Line: line}
	number, rest, _ := strings.Cut(s.Key(), " ")
	if c.Number != "" {
		return number == strings.ToLower(c.Number)
	}
	if street := fold(s.Street()); street != c.Street && !strings.HasPrefix(street, c.Street+" ") {
		return false
	}
	if c.Suffix == "" {
		return true
	}
	// a suffix that the record lacks speaks against nothing
	f := strings.Fields(rest)
	last := strings.ToLower(c.Suffix)
	for _, w := range f {
		if w == last {
			return true
		}
	}
	return fold(s.Street()) == strings.Join(f, " ")
}

// knownSites finds the street lines on record that fit the part of the message
// that fits fewest of them, and that part.
func (p *Parser) knownSites(toks []token, lines []string) (found []string, c Named) {
	for _, n := range p.names(toks) {
		var fit, whole []string
		for _, line := range lines {
			if n.Names(line) {
				fit = append(fit, line)
				if fold(assess.Site{Line: line}.Street()) == n.Street {
					whole = append(whole, line)
				}
			}
		}
		if len(whole) > 0 {
			fit = whole // "oak" is Oak St before it is Oak Grove Rd
		}
		fit, n = p.bySuffix(toks, fit, n)
		fit, n = p.byNumber(toks, fit, n)
		if len(fit) > 0 && (len(found) == 0 || len(fit) < len(found)) {
			found, c = fit, n
		}
	}
	return found, c
}

// byNumber keeps the line whose house number stands right before the street's name, and takes that
// number into the name: "who's got 31 osprey". Another number there is a pressure: "66 osprey".
func (p *Parser) byNumber(toks []token, fit []string, n Named) ([]string, Named) {
	if n.Street == "" || n.from == 0 || toks[n.from-1].kind != number || !houseNumber(&toks[n.from-1]) {
		return fit, n
	}
	for _, line := range fit {
		if number, _, _ := strings.Cut(line, " "); number == toks[n.from-1].num.digits {
			n.from--
			return []string{line}, n
		}
	}
	return fit, n
}

// bySuffix keeps the lines that end in the suffix which follows the name, also
// one that is a word besides: "elm court".
func (p *Parser) bySuffix(toks []token, fit []string, n Named) ([]string, Named) {
	if n.Suffix != "" || n.Street == "" || n.to >= len(toks) {
		return fit, n
	}
	std, ok := p.gaz.suffix[toks[n.to].text]
	if !ok {
		return fit, n
	}
	var with []string
	for _, line := range fit {
		if f := strings.Fields(line); strings.EqualFold(f[len(f)-1], std) {
			with = append(with, line)
		}
	}
	if len(with) == 0 {
		return fit, n
	}
	n.to++
	return with, n
}

// spellOut writes the one street line on record that a message means into it,
// in place of the words that name it: "66 rear at elm" becomes "66 rear at 123
// Elm St", and its numbers can be nothing else.
func (p *Parser) spellOut(text string, lines []string, d *scratch) string {
	defer d.clear()
	m := &message{p: p, raw: text, clean: undo(text, d)}
	m.toks = p.lex.tokenize(m.clean, d)
	for _, a := range p.addresses(m.toks, nil) {
		if a.score >= 0 && !a.quoted {
			return text
		}
	}
	found, c := p.knownSites(m.toks, lines)
	if len(found) != 1 {
		return text
	}
	return m.put(found[0], c.from, c.to)
}

// put writes words into the message's text in place of some tokens, set off by
// a comma from a number that follows.
func (m *message) put(words string, from, to int) string {
	a, ok := m.clean.at(m.toks[from].span.from)
	b := len(m.raw)
	if to < len(m.toks) {
		b, _ = m.clean.at(m.toks[to].span.from)
	}
	if !ok || b < a {
		return m.raw
	}
	rest := strings.TrimLeft(m.raw[a:b], " ")
	blanks := len(rest) - len(strings.TrimRight(rest, " "))
	after := strings.Repeat(" ", blanks)
	if to < len(m.toks) && m.toks[to].kind == number && m.toks[to-1].kind != mark {
		after = ", "
	}
	return m.raw[:a] + words + after + m.raw[b:]
}

// at returns the byte of the message that a byte of the clean text stems from.
func (c clean) at(i int) (int, bool) {
	if i < 0 || i >= len(c.text) {
		return 0, false
	}
	if c.from == nil {
		return i, true
	}
	return int(c.from[i]), true
}

// knownSite finds a site on record that the message names without its whole
// street line ("the elm house"); two that fit are returned both.
func (m *message) knownSite() (found []string, at, n int) {
	found, c := m.p.knownSites(m.toks, m.ctx.Sites)
	return found, c.from, c.to - c.from
}

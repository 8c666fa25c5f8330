package intents

// A glance is what a message as it is typed has for the steps that put its words right
// before they are looked up, one bit for each. It is gathered in one look at the tokens; a
// step that finds its bit missing has nothing to do. Like a gate it may change no reading.
type glance uint16

const (
	seesGlued     glance = 1 << iota // a number right behind or before a word: "k1tchen", "b4", "2morrow"
	seesArrow                        // ">", "->"
	seesDictated                     // "comma", "ish"; the point of an abbreviation, a hyphen right behind a word
	seesOh                           // "oh"
	seesTens                         // "sixty", or the letter o
	seesForTo                        // "2" or "t" for to, "0" or "n" for no, "bt" for but
	seesCount                        // "dozen", "decade"; "...", a lone point or a question mark
	seesSpoken                       // a number told in words, or a fraction
	seesList                         // "1)", "1.", "a)"
	seesLines                        // several lines
	seesHalting                      // "um", "whats the word", a pause behind "the"
	seesVowelless                    // "nthng": a word without its vowels
	seesSpanish                      // a small word of Spanish
	seesStranger                     // a word that nobody knows
)

// seesAll has every step try.
const seesAll = ^glance(0)

func (g glance) has(x glance) bool { return g&x != 0 }

// glanceWords are the words that one step or another looks for.
var glanceWords = map[glance][]string{
	seesDictated: {"comma", "coma", "period", "newline", "ish"},
	seesOh:       {"oh"},
	seesTens:     {"o"},
	seesForTo:    {"t", "n", "dn", "dwn", "ot", "zero", "cero", "bt"},
	seesCount:    {"dozen", "couple", "decade", "decades", "old"},
	seesHalting:  {"um", "umm", "uh", "uhh", "uhm", "ehh", "hmm", "word", "call", "called", "dice", "llama"},
	seesSpoken:   {"buck", "half", "medio", "media", "point", "punto"},
}

// glanceMark returns the bits of the mark at i.
func (p *Parser) glanceMark(toks []token, i int) glance {
	t, last := &toks[i], i+1 == len(toks)
	switch t.text {
	case ">", "->":
		return seesArrow
	case "...":
		if i > 0 && wantsNoun(toks[i-1].text) {
			return seesCount | seesHalting
		}
		return seesCount
	case "\n":
		return seesLines
	case ",":
		if i > 0 && wantsNoun(toks[i-1].text) || i > 1 && !last && toks[i-1].text == "it" {
			return seesHalting
		}
	case ")":
		if i > 0 && listPlace(&toks[i-1]) == 1 {
			return seesList
		}
	case ".":
		switch {
		case last:
		case i > 0 && t.glued && toks[i-1].kind == number && toks[i-1].num.value == 1:
			return seesList | seesDictated
		case !t.glued:
			return seesCount
		case i > 0 && (p.lex.of(&toks[i-1]).lists.has(listDotted) || p.lex.of(&toks[i-1]).lists.has(listPlaceInitials)), i > 1 && toks[i-2].kind == number:
			return seesDictated
		}
	case "-":
		if t.glued && !last {
			return seesDictated
		}
	case "?":
		if !last {
			return seesCount
		}
	case "/":
		if !last && i > 0 {
			return seesCount | seesSpoken
		}
	}
	return 0
}

// enterGlances gives the words of the steps their bits.
func (l *lexicon) enterGlances() {
	for g, words := range glanceWords {
		for _, w := range words {
			l.entry(w).sees |= g
		}
	}
	for _, w := range smallWords[tellsSpanish] {
		l.entry(w).sees |= seesSpanish
	}
	for w, n := range numberWords {
		e := l.entry(w)
		e.sees |= seesSpoken
		if n.class == 'x' {
			e.sees |= seesTens
		}
	}
}

// glance looks at the tokens of a message, and looks their words up.
func (p *Parser) glance(toks []token) glance {
	if p.ungated {
		return seesAll
	}
	var g glance
	counted := false // a number stands before
	for i := range toks {
		switch t := &toks[i]; t.kind {
		case word:
			e := p.lex.of(t)
			if g |= e.sees; e == stranger {
				g |= seesStranger
			}
			if i > 0 && t.text == toks[i-1].text && wantsNoun(t.text) {
				g |= seesHalting // "the the regulator"
			}
			if counted && (t.text == "and" || t.text == "y") {
				g |= seesSpoken // "58 and a half"
			}
		case mark:
			g |= p.glanceMark(toks, i)
		case number:
			counted = true
			if t.glued && i > 0 && toks[i-1].kind == word {
				g |= seesGlued
			}
			if figureBefore(toks, i) {
				g |= seesGlued // "2morrow"
			}
			if d := t.num.digits; d == "0" || d == "2" {
				g |= seesForTo
			}
		}
	}
	if g.has(seesOh | seesTens | seesGlued) {
		g |= seesDictated // a mark may come to stand behind another word
	}
	return g
}

// putRight undoes how a message was dictated, slipped and texted, and gathers its numbers.
func (m *message) putRight(toks []token) []token {
	p := m.p
	g := p.glance(toks)
	if g.has(seesStranger) && p.unswap(toks) {
		g = p.glance(toks)
	}
	if g.has(seesVowelless) && p.writeOut(toks) {
		g = p.glance(toks)
	}
	if g.has(seesHalting) {
		toks = halted(toks)
	}
	if g.has(seesList) {
		toks = numbered(toks)
	}
	if g.has(seesLines) {
		toks = p.planHeads(p.clocked(p.tabled(countedLines(spaced(toks)))))
	}
	if g.has(seesOh) {
		toks = ohDigits(toks)
	}
	if g.has(seesTens) {
		toks = slippedDigits(toks)
	}
	if g.has(seesGlued) {
		n := len(toks)
		if toks = joinSlips(joinBefore(p.joinFigures(toks))); len(toks) < n {
			g = seesAll // a word has become another
		}
	}
	if g.has(seesArrow | seesDictated) {
		toks = m.punctuate(toks)
	}
	toks = p.thanked(p.opened(toks))
	if g.has(seesForTo) {
		p.figuresForWords(toks)
	}
	if g.has(seesSpanish) && p.texted(toks) {
		g = seesAll
	}
	if g.has(seesCount | seesDictated) {
		toks = p.parted(spelled(daysDecided(toks)))
		g |= seesSpoken
	}
	if g.has(seesSpoken) {
		toks = p.spoken(toks)
	}
	return toks
}

package intents

import (
	"slices"
	"strings"
	"unicode"
)

// address is one street line found in a message.
type address struct {
	from, to int // tokens, the unit and the town among them
	house    int // token of the house number
	line     string
	town     string
	postcode string
	score    float64
	suffixed bool
	quoted   bool
	void     bool // taken back: "at 1208 X Rd, sorry 1280 X Rd"
	denies   bool // a house number told wrong stands beside it: "22 Pine not 24"
	unitFrom int  // a unit typed before the house number; -1 if none
	unitTo   int
}

// title writes a word in title case when it was typed all in one case.
func title(w string) string {
	upper, lower := false, false
	for _, r := range w {
		upper = upper || unicode.IsUpper(r)
		lower = lower || unicode.IsLower(r)
	}
	if upper && lower {
		return w
	}
	var b strings.Builder
	b.Grow(len(w))
	up := true
	for _, r := range w {
		if up {
			b.WriteRune(unicode.ToUpper(r))
		} else {
			b.WriteRune(unicode.ToLower(r))
		}
		up = r == '-'
	}
	return b.String()
}

// houseNumber tells whether a number token can be a house number.
func houseNumber(t *token) bool {
	n := t.num
	if n == nil || n.time || n.phone || n.money || n.percent || n.negative || n.apos || n.ordinal {
		return false
	}
	if !n.integer {
		return strings.Contains(n.digits, " ") // 318 1/2
	}
	return n.value >= 1 && len(n.digits) <= 6 && n.digits[0] != '0'
}

// addresses appends the street lines in toks.
func (p *Parser) addresses(toks []token, out []address) []address {
	for i := 0; i < len(toks); i++ {
		t := &toks[i]
		switch {
		case t.kind == number && houseNumber(t):
			if a, ok := p.addressAt(toks, i); ok {
				out = append(out, a)
				i = max(i, a.to-1)
			}
		case t.kind == word && p.lex.of(t).calle:
			if a, ok := p.spanishAddress(toks, i); ok {
				out = append(out, a)
				i = a.to - 1
			}
		case t.kind == word && (t.caps || p.lex.of(t).heads || i > 0 && leadsToStreet(toks[i-1].text)):
			a, ok := p.numberLast(toks, i)
			if !ok && i > 0 && leadsToStreet(toks[i-1].text) {
				a, ok = p.streetFirst(toks, i)
			}
			if ok {
				out = append(out, a)
				i = a.to - 1
			}
		}
	}
	return out
}

// term tells whether a token alone is a term of the trade.
func (p *Parser) term(toks []token, k int) bool {
	node, n := p.lex.find(toks, k, k+1)
	return n > 0 && p.kinds[node].meets(terms)
}

// terms are the classes of the trade's terms.
var terms = setOf(
	cPoint, cPlace, cBibb, cItem, cState, cCond, cUnit, cSym, cFuel, cMaterial, cDid, cNeg, cPeak, cBefore, cAfter,
	cNow, cStatic, cFlowing, cOff, cOn, cRelief, cFixture, cPart, cBurner,
)

func (p *Parser) addressAt(toks []token, i int) (address, bool) {
	a := address{from: i, house: i, unitFrom: -1}
	num := toks[i].num.digits
	j := i + 1
	if i > 0 && toks[i-1].text == "#" && toks[i-1].kind == mark && toks[i].glued {
		return a, false
	}
	if i > 1 && toks[i-1].text == "-" && toks[i-1].glued && toks[i].glued && toks[i-2].kind == number {
		return a, false // "0-160 face"
	}
	if i > 1 && toks[i-1].text == "/" && toks[i].glued && toks[i-2].kind == number {
		return a, false // "7/16 wrench"
	}
	// 123B Elm, 45-12 31st Ave
	if j < len(toks) && toks[j].glued && toks[j].kind == word && len(toks[j].raw) == 1 && (toks[j].raw[0] < 'f' || toks[j].caps) && isLetter(toks[j].raw[0]) {
		num += strings.ToUpper(toks[j].raw)
		j++
	} else if j+2 < len(toks) && toks[j].text == "-" && toks[j].glued && toks[j+1].glued && toks[j+1].kind == word && len(toks[j+1].raw) == 1 && !toks[j+2].glued {
		num += strings.ToUpper(toks[j+1].raw) // 12-B Elm
		j += 2
	} else if j+1 < len(toks) && toks[j].text == "-" && toks[j].glued && toks[j+1].glued && toks[j+1].kind == number && toks[j+1].num.integer {
		s, ok := p.street(toks, j+2, false)
		if !ok || !s.suffixed || s.score < 4 {
			return a, false
		}
		num += "-" + toks[j+1].num.digits
		j += 2
	}
	if j+1 < len(toks) && len(num) >= 3 && toks[i].num.words && toks[j].kind == word && len(toks[j].text) == 1 && toks[j].text >= "a" && toks[j].text <= "d" {
		// "nine oh two b cedar court"
		if s, ok := p.street(toks, j+1, true); ok && s.suffixed {
			num += strings.ToUpper(toks[j].text)
			j++
		}
	}
	if j >= len(toks) || toks[j].quoted != toks[i].quoted {
		return a, false
	}
	if toks[j].text == "-" && !toks[j].glued && j+1 < len(toks) && toks[j+1].kind == number {
		if _, ok := ordinalAt(toks, j+1); ok {
			j++ // "2210 - 5th Ave N"
		}
	}
	if toks[i].num.value <= 9 && toks[j].kind == word && roomly(toks[j].text) {
		return a, false // "3 bed 2 bath ranch"
	}
	if toks[j].glued && j == i+1 {
		return a, false // 62psi, 9080#
	}
	s, ok := p.street(toks, j, toks[i].num.words)
	if k := p.ofStreet(toks, j); k > j {
		// "en el 390 de Lomita Trace"
		// "diecinueve treinta de poplar", no count
		long := (len(num) >= 4 || len(num) == 3 && toks[i].num.words) && !year(toks[i].num.value)
		long = long || i > 1 && (toks[i-1].text == "el" || toks[i-1].text == "la") && toks[i-2].text == "en" && !p.lex.known(toks[k].text) && !p.lex.common(toks[k].text)
		if t, found := p.street(toks, k, toks[i].num.words); found && (t.suffixed || long && (t.to >= len(toks) || toks[t.to].kind == mark || p.stop(toks, t.to) || p.term(toks, t.to))) {
			s, ok = t, true
		}
	}
	if !ok {
		return a, false
	}
	a.line, a.to, a.suffixed = num+" "+s.line, s.to, s.suffixed
	a.quoted = toks[i].quoted
	a.score = s.score
	if n := len(toks[i].num.digits); n == 4 && year(toks[i].num.value) && toks[i].num.value < 2035 && !s.suffixed {
		a.score -= 0.5
		if i > 0 {
			switch toks[i-1].text {
			case "a", "an", "from", "in", "since", "del", "de", "dated", "tag", "installed", "is", "new", "old",
				"year", "ano", "the", "late", "early", "htr", "heater", "wh", "prv", "boiler":
				a.score -= 3
			}
			if p.term(toks, i-1) && !p.lex.never[toks[i-1].text] {
				a.score -= 2
			}
		}
	} else if n >= 4 {
		a.score += 2
	} else if n == 3 {
		a.score++
	}
	if i == 0 || toks[i-1].kind == mark && toks[i-1].text == "\n" {
		a.score++
	}
	if i > 0 {
		switch prev := toks[i-1].text; prev {
		case "job":
			if !s.suffixed && len(num) >= 4 {
				return a, false // "job 66120, cell …"
			}
			a.score += 2
		case "at", "for", "of", "site", "addr", "address", "en", "de", "from", "domicilio", "direccion", "location", "loc", "about", "casa", "over", "on", "del", "para", "sitio":
			a.score += 2
		case "la", "el":
			if i > 1 && (toks[i-2].text == "en" || toks[i-2].text == "de") {
				a.score += 2 // "en la 880 sagebrush"
			}
		case "the", "that":
			a.score += 0.5
		case "to", "a":
			if i > 1 && toks[i-2].kind == number {
				a.score-- // "9 to 11"
				break
			}
			a.score++
		case "off", "back", "by", "past", "pa":
			a.score++
		case ":":
			if i > 1 {
				switch toks[i-2].text {
				case "site", "addr", "address", "location", "loc", "domicilio", "direccion", "job", "casa", "sitio", "where", "house", "property", "service", "customer":
					a.score += 4
				default:
					a.score--
				}
			}
		case "is", "reads", "reading", "shows", "=", "got", "psi", "around", "was", "set", "marca", "lectura", "show":
			if i == 1 && prev == "is" {
				a.score++ // "is 88 larkspur still low"
				break
			}
			if i > 1 && prev == "psi" && toks[i-2].kind == number {
				break // "66psi 27 hemlock"
			}
			if end := a.to; end+2 < len(toks) && (toks[end].text == "not" && toks[end+1].kind == number || toks[end].text == "," && toks[end+1].text == "not" && toks[end+2].kind == number) {
				break // "that was 22 Pine not 24 Pine"
			}
			a.score--
			if i > 1 && (toks[i-2].text == "this" || toks[i-2].text == "address" || toks[i-2].text == "house") {
				a.score += 3
			}
		case ",", ".", "\n", "-", ";", "(":
			a.score += 0.5
		default:
			if p.asksAt(toks, i-1) || p.lex.toward[prev] {
				a.score += 1.5 // "snooze 19 aldine"
			}
		case "unit", "apt", "lot", "code", "truck", "ticket", "job#", "invoice", "route", "highway", "hwy", "road", "phone", "year", "since", "or":
			a.score -= 4
		}
	}
	if a.to >= len(toks) || toks[a.to].kind == mark || toks[a.to].text == "f/u" {
		a.score++
	}
	a.unit(p, toks)
	a.townAfter(p, toks)
	return a, a.score >= 3
}

// asksAt tells whether the word at k asks for something of a house, or plans it.
func (p *Parser) asksAt(toks []token, k int) bool {
	node, n := p.lex.find(toks, k, k+1)
	return n > 0 && p.kinds[node].meets(setOf(cAsk, cDo))
}

// roomly tells whether a word counts what a house has: "3 Bed 2 Bath ranch".
func roomly(s string) bool {
	switch s {
	case "bed", "bath", "br", "ba", "bedroom", "story", "car", "way", "stage", "zone", "bay", "inch", "ton", "star", "man":
		return true
	}
	return false
}

// stop tells whether a token is a word that is no name.
func (p *Parser) stop(toks []token, k int) bool { return p.lex.of(&toks[k]).plain }

// known tells whether the lexicon has the word.
func (l *lexicon) known(w string) bool { _, ok := l.vocab[w]; return ok }

// allCaps tells whether the message shouts: capitals then say nothing.
func allCaps(toks []token) bool {
	up, low, least := 0, 0, 4
	if len(toks) < 12 && !slices.ContainsFunc(toks, func(t token) bool { return t.kind == word && len(t.raw) > 3 }) {
		least = 2 // "HT PMP HTR 65 GL"
	}
	for i := range toks {
		if t := &toks[i]; t.kind == word && len(t.raw) >= least {
			if strings.ContainsFunc(t.raw, unicode.IsLower) {
				low++
			} else {
				up++
			}
			if up+low > 8 {
				break
			}
		}
	}
	return up > low
}

// nameOf writes toks[from:to] as a street's name.
func (p *Parser) nameOf(toks []token, from, to int) string {
	var b strings.Builder
	for k := from; k < to; k++ {
		t := toks[k]
		if t.kind == mark {
			if t.text == "-" {
				b.WriteString("-")
			}
			continue
		}
		if b.Len() > 0 && !(t.glued && (toks[k-1].kind == number || toks[k-1].text == "-")) {
			b.WriteByte(' ')
		}
		switch {
		case t.kind == number && t.num.words:
			b.WriteString(title(t.raw))
		case t.kind == word && t.glued && k > from && toks[k-1].kind == number:
			b.WriteString(strings.ToLower(t.raw))
		case t.kind == number:
			b.WriteString(t.raw)
		default:
			b.WriteString(title(t.raw))
		}
	}
	return b.String()
}

// ordinalAt measures "5th", "42nd" at i.
func ordinalAt(toks []token, i int) (int, bool) {
	if toks[i].kind == number && toks[i].num.integer && i+1 < len(toks) && toks[i+1].glued {
		switch toks[i+1].text {
		case "st", "nd", "rd", "th":
			return 2, true
		}
	}
	return 0, false
}

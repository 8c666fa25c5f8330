package intents

import (
	"strings"
	"unicode"
)

// Lists of the lexicon that these rules know.
var (
	listRated        = listOf("rated")
	listBeforeStreet = listOf("before street")
	listRooms        = listOf("rooms")
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
			if a, ok := p.addressAt(toks, i); ok && !(len(out) > 0 && p.townAt(toks, i, &a)) {
				out = append(out, a)
				i = max(i, a.to-1)
			}
		case t.kind == word && p.lex.of(t).calle:
			if a, ok := p.spanishAddress(toks, i); ok {
				out = append(out, a)
				i = a.to - 1
			}
		case t.kind == word && (t.caps || p.lex.of(t).heads || i > 0 && p.lex.of(&toks[i-1]).toStreet):
			a, ok := p.numberLast(toks, i)
			if led := i > 0 && p.lex.of(&toks[i-1]).toStreet; !ok && (led || t.caps) {
				a, ok = p.streetFirst(toks, i, led)
			}
			if ok {
				out = append(out, a)
				i = a.to - 1
			}
		}
	}
	return out
}

// townAt tells whether what reads as a street line behind another one is a town whose name
// begins with a number: "1730 Cordgrass Blvd, Dos Canales".
func (p *Parser) townAt(toks []token, i int, a *address) bool {
	return toks[i].num.words && toks[i].caps && !a.suffixed && toks[i-1].text == "," && i+1 < len(toks) && toks[i+1].caps
}

// term tells whether a token alone is a term of the trade.
func (p *Parser) term(toks []token, k int) bool {
	node, n := p.lex.find(toks, k, k+1)
	return n > 0 && p.lex.kinds(node).meets(terms)
}

// terms are the classes of the trade's terms.
var terms = setOf(
	cPoint, cPlace, cBibb, cItem, cState, cCond, cUnit, cSym, cFuel, cMaterial, cDid, cNeg, cPeak, cBefore, cAfter,
	cNow, cStatic, cFlowing, cOff, cOn, cRelief, cFixture, cPart, cBurner,
)

// regulatorSet tells whether a regulator stands at token j, and what looks like a street's
// suffix says that it is set or what it stands: "meter 118 prv st at 65".
func (p *Parser) regulatorSet(toks []token, j int) bool {
	switch {
	case j+1 >= len(toks):
		return false
	case toks[j+1].text == "inlet":
		return p.lex.of(&toks[j]).lists.has(listRated) // "tag says 400 maximum inlet"
	case toks[j+1].text != "st":
		return false
	}
	node, n := p.lex.find(toks, j, j+1)
	item, _ := p.value(p.lex.tags(node), cItem)
	return n > 0 && item == "prv"
}

// addressAt reads a street line whose house number is token i: "123B Elm St, unit 4".
func (p *Parser) addressAt(toks []token, i int) (address, bool) {
	a := address{from: i, house: i, unitFrom: -1}
	told := p.houseTold(toks, i)
	if pieceOfNumber(toks, i) && !told {
		return a, false
	}
	num, j, ok := p.houseDigits(toks, i)
	if !ok || j >= len(toks) || toks[j].quoted != toks[i].quoted {
		return a, false
	}
	if toks[j].text == "-" && !toks[j].glued && j+1 < len(toks) && toks[j+1].kind == number {
		if _, ok := ordinalAt(toks, j+1); ok {
			j++ // "2210 - 5th Ave N"
		}
	}
	if n := p.houseToldBehind(toks, j); n > 0 {
		told, j = true, j+n
	}
	if told {
		j = toStreet(toks, j)
	}
	if j >= len(toks) {
		return a, false
	}
	if toks[i].num.value <= 9 && toks[j].kind == word && p.lex.of(&toks[j]).lists.has(listRooms) &&
		!(j+1 < len(toks) && toks[j+1].kind == word && toks[j+1].text != "place" && p.strongSuffix(toks[j+1].text)) {
		return a, false // "3 bed 2 bath ranch", but "9 Bay Ln"
	}
	glued := toks[j].glued && j == i+1
	if glued && (toks[j].kind != word || len(num) < 3 || len(toks[j].text) < 3 || p.lex.of(&toks[j]).unit != "" || p.term(toks, j)) {
		return a, false // 62psi, 9080#
	}
	s, ok := p.streetAfter(toks, i, j, len(num))
	if !ok || p.regulatorSet(toks, j) || glued && !s.suffixed { // "2316elm st"
		return a, false
	}
	if i > 0 && toks[i-1].text == "job" && !s.suffixed && len(num) >= 4 {
		return a, false // "job 66120, cell …"
	}
	a.line, a.to, a.suffixed, a.quoted = num+" "+s.line, s.to, s.suffixed, toks[i].quoted
	a.score = s.score + p.numberWeight(toks, i, s.suffixed)
	if told && s.suffixed {
		a.score += 3
	}
	if i == 0 || toks[i-1].kind == mark && toks[i-1].text == "\n" {
		a.score++
	}
	if i > 0 {
		a.score += p.leadWeight(toks, i, a.to)
	}
	if a.to >= len(toks) || toks[a.to].kind == mark || toks[a.to].text == "f/u" {
		a.score++
	}
	a.unit(p, toks)
	a.townAfter(p, toks)
	return a, a.score >= 3
}

// pieceOfNumber tells whether number i is a code or a part of another number: "#12",
// "0-160 face", "7/16 wrench".
func pieceOfNumber(toks []token, i int) bool {
	if i == 0 || !toks[i].glued {
		return false
	}
	before := &toks[i-1]
	switch before.text {
	case "#":
		return before.kind == mark
	case "-":
		return i > 1 && before.glued && toks[i-2].kind == number
	case "/":
		return i > 1 && toks[i-2].kind == number
	}
	return false
}

// houseDigits reads a house number with what belongs to it, and returns the token after
// it: "123B Elm", "12-B Elm", "45-12 31st Ave".
func (p *Parser) houseDigits(toks []token, i int) (num string, j int, ok bool) {
	num, j = toks[i].num.digits, i+1
	letter := func(k int) bool { return toks[k].kind == word && len(toks[k].raw) == 1 }
	switch {
	case j < len(toks) && toks[j].glued && letter(j) && (toks[j].raw[0] < 'f' || toks[j].caps) && isLetter(toks[j].raw[0]):
		num += strings.ToUpper(toks[j].raw)
		j++
	case j+1 >= len(toks) || toks[j].text != "-" || !toks[j].glued || !toks[j+1].glued:
	case j+2 < len(toks) && letter(j+1) && !toks[j+2].glued:
		num += strings.ToUpper(toks[j+1].raw)
		j += 2
	case toks[j+1].kind == number && toks[j+1].num.integer:
		s, ok := p.street(toks, j+2, false)
		if !ok || !s.suffixed || s.score < 4 {
			return num, j, false
		}
		num += "-" + toks[j+1].num.digits
		j += 2
	}
	if j+1 < len(toks) && len(num) >= 3 && toks[i].num.words && toks[j].kind == word && len(toks[j].text) == 1 &&
		toks[j].text >= "a" && toks[j].text <= "d" {
		if s, ok := p.street(toks, j+1, true); ok && s.suffixed {
			num += strings.ToUpper(toks[j].text) // "nine oh two b cedar court"
			j++
		}
	}
	return num, j, true
}

// streetAfter reads the street at token j for the house number at i, which has so many
// digits, also where "de" or "of" leads to it: "en el 390 de Lomita Trace".
func (p *Parser) streetAfter(toks []token, i, j, digits int) (street, bool) {
	spoken := toks[i].num.words
	s, ok := p.street(toks, j, spoken)
	k := p.ofStreet(toks, j)
	if k <= j {
		return s, ok
	}
	// "diecinueve treinta de poplar", no count
	house := (digits >= 4 || digits == 3 && spoken) && !year(toks[i].num.value)
	if i > 1 && (toks[i-1].text == "el" || toks[i-1].text == "la") && toks[i-2].text == "en" {
		house = house || !p.lex.known(toks[k].text) && !p.lex.common(toks[k].text)
	}
	t, found := p.street(toks, k, spoken)
	if !found {
		return s, ok
	}
	if t.suffixed || house && (t.to >= len(toks) || toks[t.to].kind == mark || p.stop(toks, t.to) || p.term(toks, t.to)) {
		return t, true
	}
	return s, ok
}

// stop tells whether a token is a word that is no name.
func (p *Parser) stop(toks []token, k int) bool { return p.lex.of(&toks[k]).plain }

// known tells whether the lexicon has the word.
func (l *lexicon) known(w string) bool { _, ok := l.id(w); return ok }

// holdsLong tells whether a word of four letters or more is among tokens.
func holdsLong(toks []token) bool {
	for i := range toks {
		if t := &toks[i]; t.kind == word && len(t.raw) > 3 {
			return true
		}
	}
	return false
}

// allCaps tells whether the message shouts: capitals then say nothing.
func allCaps(toks []token) bool {
	up, low, least := 0, 0, 4
	if len(toks) < 12 && !holdsLong(toks) {
		least = 2 // "HT PMP HTR 65 GL"
	}
	for i := range toks {
		if t := &toks[i]; t.kind == word && len(t.raw) >= least {
			if b := t.raw[len(t.raw)-1]; b >= 'a' && b <= 'z' || strings.ContainsFunc(t.raw, unicode.IsLower) {
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
	if to == from+1 && toks[from].kind == word {
		return title(toks[from].raw)
	}
	var b strings.Builder
	for k := from; k < to; k++ {
		t := &toks[k]
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

package intents

import (
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
	unitFrom int // a unit typed before the house number; -1 if none
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

// street is how a street's name was read after its house number.
type street struct {
	line     string
	to       int // token after it
	score    float64
	suffixed bool
}

// addresses finds the street lines in toks.
func (p *Parser) addresses(toks []token) []address {
	var out []address
	for i := 0; i < len(toks); i++ {
		t := &toks[i]
		switch {
		case t.kind == number && houseNumber(t):
			if a, ok := p.addressAt(toks, i); ok {
				out = append(out, a)
				i = max(i, a.to-1)
			}
		case t.kind == word && spanishStreet[t.text]:
			if a, ok := p.spanishAddress(toks, i); ok {
				out = append(out, a)
				i = a.to - 1
			}
		case t.kind == word && t.caps:
			if a, ok := p.numberLast(toks, i); ok {
				out = append(out, a)
				i = a.to - 1
			}
		}
	}
	return out
}

// term tells whether a token alone is a term of the trade.
func (p *Parser) term(toks []token, k int) bool {
	tags, n := p.lex.match(toks, k, k+1)
	if n == 0 {
		return false
	}
	for _, t := range tags {
		switch p.classes[t.class] {
		case cPoint, cPlace, cBibb, cItem, cState, cCond, cUnit, cSym, cFuel, cMaterial, cDid, cNeg, cPeak, cBefore, cAfter, cNow, cStatic, cFlowing, cOff, cOn, cRelief, cFixture, cPart, cBurner:
			return true
		}
	}
	return false
}

func (p *Parser) addressAt(toks []token, i int) (address, bool) {
	a := address{from: i, house: i, unitFrom: -1}
	num := toks[i].num.digits
	j := i + 1
	if i > 0 && toks[i-1].text == "#" && toks[i-1].kind == mark && toks[i].glued {
		return a, false
	}
	// 123B Elm, 45-12 31st Ave
	if j < len(toks) && toks[j].glued && toks[j].kind == word && len(toks[j].raw) == 1 && (toks[j].raw[0] < 'f' || toks[j].caps) && isLetter(toks[j].raw[0]) {
		num += strings.ToUpper(toks[j].raw)
		j++
	} else if j+1 < len(toks) && toks[j].text == "-" && toks[j].glued && toks[j+1].glued && toks[j+1].kind == number && toks[j+1].num.integer {
		s, ok := p.street(toks, j+2, false)
		if !ok || !s.suffixed || s.score < 4 {
			return a, false
		}
		num += "-" + toks[j+1].num.digits
		j += 2
	}
	if j >= len(toks) || toks[j].quoted != toks[i].quoted {
		return a, false
	}
	if toks[j].glued && j == i+1 {
		return a, false // 62psi, 9080#
	}
	s, ok := p.street(toks, j, toks[i].num.words)
	if k := p.ofStreet(toks, j); k > j {
		// "en el 390 de Lomita Trace"
		if t, found := p.street(toks, k, toks[i].num.words); found && t.suffixed {
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
			case "a", "an", "from", "in", "since", "del", "de", "dated", "tag", "installed", "is", "new", "old", "year", "ano", "the", "late", "early", "htr", "heater", "wh", "prv", "boiler":
				a.score -= 3
			}
			if p.term(toks, i-1) {
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
		case "at", "for", "of", "site", "addr", "address", "en", "de", "from", "domicilio", "direccion", "location", "loc", "about", "casa", "job", "over", "on", "del", "para", "sitio":
			a.score += 2
		case "to", "a":
			a.score += 0.5
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
			a.score--
			if i > 1 && (toks[i-2].text == "this" || toks[i-2].text == "address") {
				a.score += 3
			}
		case ",", ".", "\n", "-", ";", "(":
			a.score += 0.5
		case "unit", "apt", "lot", "code", "truck", "ticket", "job#", "invoice", "route", "highway", "hwy", "road", "phone", "year", "since", "or":
			a.score -= 4
		}
	}
	if a.to >= len(toks) || toks[a.to].kind == mark {
		a.score++
	}
	a.unit(p, toks)
	a.townAfter(p, toks)
	return a, a.score >= 3
}

// street reads a street's name at toks[j].
func (p *Parser) street(toks []token, j int, spoken bool) (street, bool) {
	g := p.gaz
	if j >= len(toks) {
		return street{}, false
	}
	if s, ok := p.highway(toks, j); ok {
		return s, true
	}
	start := j
	var parts []string
	dir := ""
	if t := toks[j]; t.kind == word && j+1 < len(toks) {
		if d, ok := g.directional[t.text]; ok {
			k := j + 1
			if toks[k].text == "." {
				k++
			}
			if k < len(toks) && toks[k].text != "side" {
				if s, ok := p.highway(toks, k); ok {
					s.line = d + " " + s.line
					return s, true
				}
				if toks[k].kind == word || toks[k].kind == number {
					dir = d
					j = k
				}
			}
		}
	}
	if t := toks[j]; t.kind == word && spanishStreet[t.text] && !p.suffixAhead(toks, j) && t.text != "ave" && t.text != "via" && t.text != "boulevard" || toks[j].text == "via" && j+1 < len(toks) && toks[j+1].kind == word && !p.stop(toks, j+1) {
		return p.spanishName(toks, j, dir)
	}
	// the run of words that may be a name
	end := j
	caps, terms, plain, stops := 0, 0, 0, 0
	best := street{score: -99}
	words := 0
	lastSuffix := -1
	for end < len(toks) && end-j < 6 {
		t := &toks[end]
		if t.quoted != toks[start].quoted {
			break
		}
		if t.kind == mark {
			if t.text == "." && t.glued && end > j && len(toks[end-1].text) <= 4 && end+1 < len(toks) && toks[end+1].kind == word && abbreviated(toks[end-1].text) && lastSuffix != end-1 {
				end++
				continue
			}
			if t.text == "-" && t.glued && end+1 < len(toks) && toks[end+1].glued && toks[end+1].kind == word && end > j {
				end++
				continue
			}
			break
		}
		if t.kind == number {
			if t.num.words && t.caps && !spoken || t.num.ordinal {
				words++
				end++
				continue
			}
			if n, ok := ordinalAt(toks, end); ok {
				words++
				end += n
				continue
			}
			break
		}
		std, isSuffix := g.suffix[t.text]
		if noSuffix[t.text] || t.text == "plz" && lastSuffix == end-1 && words > 0 {
			isSuffix = false
		}
		if _, unit := g.unit[t.text]; unit && isSuffix && end+1 < len(toks) && toks[end+1].kind == number {
			isSuffix = false // "trailer 4"
		}
		if t.text == "st" && words == 0 && dir == "" {
			isSuffix = false // Saint
		}
		if isSuffix && (words > 0 || dir != "") {
			weak := ambiguousSuffix[t.text]
			sc := 5.0
			if weak {
				sc = 3
			}
			if t.caps && !allCaps(toks) {
				sc++
			}
			sc -= 2*float64(terms) + float64(plain) + 4*float64(stops)
			if terms > 0 && caps == words && !weak {
				sc += 1.5 * float64(terms)
			} else if terms > 0 && !weak && words <= 2 {
				sc += 0.5
			}
			if caps == words && caps > 0 {
				sc++
			}
			// "8 way", "66 front st": a direction or a side is not much of a name
			if sc > best.score-0.5 || lastSuffix == end-1 {
				best = street{to: end + 1, score: max(sc, best.score), suffixed: true}
				best.line = std
				lastSuffix = end
			}
		}
		if p.stop(toks, end) && !(isSuffix && words > 0) {
			stops++
			if !linking(t.text) || words > 0 && !(t.text == "of" || t.text == "de" || t.text == "del" || t.text == "la" || t.text == "the" || t.text == "and") {
				if end+1 < len(toks) && toks[end+1].kind == word && (strongSuffix(g, toks[end+1].text) || toks[end+1].text == "street" || toks[end+1].text == "court" || toks[end+1].text == "circle") && !smallVerb(t.text) {
					stops--
					plain++
				} else if words == 0 && end+2 < len(toks) && t.caps && !allCaps(toks) {
					// "22 Long Hollow Rd": a capital makes it a name
					stops--
					plain++
				} else {
					break
				}
			} else {
				stops--
			}
		}
		if !isSuffix && p.term(toks, end) {
			terms++
			if terms > 2 {
				break
			}
		}
		if t.caps {
			caps++
		}
		words++
		end++
		if lastSuffix >= 0 && lastSuffix < end-1 {
			// words after a suffix count only when another suffix follows at once
			if end < len(toks) && toks[end].kind == word {
				if _, ok := g.suffix[toks[end].text]; ok && !noSuffix[toks[end].text] && !ambiguousSuffix[toks[end].text] && !p.term(toks, end-1) && !p.lex.plain[toks[end-1].text] {
					continue
				}
			}
			break
		}
	}
	if best.score > -99 {
		name := p.nameOf(toks, j, lastSuffix)
		if name == "" && dir != "" {
			name, dir = title(toks[start].raw), ""
			if len(name) <= 2 {
				name = strings.ToUpper(name)
			}
		}
		if dir != "" {
			parts = append(parts, dir)
		}
		parts = append(parts, name, best.line)
		// Main St NW
		if best.to < len(toks) && toks[best.to].kind == word {
			if d, ok := g.directional[toks[best.to].text]; ok && (toks[best.to].caps || best.to+1 >= len(toks) || toks[best.to+1].kind == mark) && !(best.to+1 < len(toks) && (toks[best.to+1].text == "side" || toks[best.to+1].text == "bib")) {
				parts = append(parts, d)
				best.to++
			}
		}
		if best.to < len(toks) && toks[best.to].text == "." && toks[best.to].glued && len(toks[best.to-1].raw) <= 4 && best.to+1 < len(toks) && (toks[best.to+1].kind == word && !toks[best.to+1].caps || toks[best.to+1].kind == mark && toks[best.to+1].text != "\n") {
			best.to++ // the point of "Ave." ends no sentence
		}
		best.line = strings.Join(parts, " ")
		return best, true
	}
	// no suffix
	end = j
	words, caps = 0, 0
	for end < len(toks) && words < 3 {
		t := &toks[end]
		if t.kind == number {
			if n, ok := ordinalAt(toks, end); ok && words == 0 {
				end += n
				words++
				continue
			}
			break
		}
		if _, unit := g.unit[t.text]; unit && words > 0 && !g.plainUnit(toks, end) {
			break // "605 Coral apto 9"
		}
		if t.kind != word || p.stop(toks, end) || p.term(toks, end) || vowelless(t.text) && len(t.text) > 2 && !t.caps && !strings.Contains(t.text, "y") || len(t.text) == 1 && words == 0 && dir == "" && !t.caps || t.quoted != toks[start].quoted {
			break
		}
		if p.lex.known(t.text) && !t.caps {
			break
		}
		if t.caps {
			caps++
		}
		words++
		end++
	}
	if words == 0 {
		return street{}, false
	}
	sc := 1.5
	if dir != "" {
		sc += 2
	}
	if caps == words && !allCaps(toks) {
		sc += 1.5
	}
	if end < len(toks) && toks[end].kind == word && !p.term(toks, end) && !p.stop(toks, end) {
		sc -= 2
	}
	if words > 2 {
		sc--
	}
	name := p.nameOf(toks, j, end)
	if dir != "" {
		name = dir + " " + name
	}
	return street{line: name, to: end, score: sc}, true
}

// stop tells whether a token is a word that is no name.
func (p *Parser) stop(toks []token, k int) bool { return p.lex.plain[toks[k].text] }

// known tells whether the lexicon has the word.
func (l *lexicon) known(w string) bool { _, ok := l.vocab[w]; return ok }

// allCaps tells whether the message shouts: capitals then say nothing.
func allCaps(toks []token) bool {
	up, low := 0, 0
	for i := range toks {
		if t := &toks[i]; t.kind == word && len(t.raw) > 3 {
			if t.raw == strings.ToUpper(t.raw) {
				up++
			} else {
				low++
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

package intents

import "strings"

// Lists of the lexicon that these rules know.
var (
	listSpanishStreets = listOf("spanish streets")
	listNoStreets      = listOf("no streets")
)

// spanishName reads "Calle Luna", "Avenida del Sol" after a house number: no
// suffix follows.
func (p *Parser) spanishName(toks []token, j int, dir string) (street, bool) {
	end := j + 1
	words := 0
	for end < len(toks) && words < 3 {
		t := &toks[end]
		if words == 0 && t.kind == number && t.num.integer && t.num.value < 40 &&
			!(end+1 < len(toks) && p.measure(toks, end+1) && !p.placedAt(toks, end+1)) {
			words, end = 1, end+1 // "27 calle 8"
			break
		}
		if t.kind != word || t.quoted != toks[j].quoted {
			break
		}
		if p.lex.of(t).lists.has(listLinking) && end+1 < len(toks) && toks[end+1].kind == word {
			end++
			continue
		}
		if words > 0 && p.lex.of(t).unit != "" && !p.gaz.plainUnit(toks, end) {
			break // "66 Camino Alto apto 5"
		}
		alone := words == 0 && (t.caps || end+1 >= len(toks) || toks[end+1].kind == mark) // "5120 Carretera Vieja"
		if (p.stop(toks, end) || p.term(toks, end) && !t.caps) && !alone || words > 0 && p.lex.known(t.text) {
			break
		}
		words++
		end++
	}
	if words == 0 {
		return street{}, false
	}
	line := p.nameOf(toks, j, end)
	if dir != "" {
		line = dir + " " + line
	}
	return street{line: line, to: end, score: 5, suffixed: true}, true
}

// spanishAddress reads a Spanish street line, its number last: "Calle 8 #1420".
func (p *Parser) spanishAddress(toks []token, i int) (address, bool) {
	a := address{from: i, unitFrom: -1, score: 5, suffixed: true, quoted: toks[i].quoted}
	k, words := i+1, 0
	if k < len(toks) && toks[k].text == "." && len(toks[i].text) <= 5 { // "Blvd."
		k++
	}
	name := k
	for k < len(toks) && words < 4 {
		t := &toks[k]
		if t.kind == number && words == 0 && t.num.integer && len(t.num.digits) <= 3 && numberAhead(toks, k+1) {
			words++
			k++
			break
		}
		if day := k + 2; words == 0 && t.kind == number && t.num.value <= 31 && day < len(toks) && toks[k+1].text == "de" &&
			months[toks[day].text] > 0 {
			words, k = 3, day+1 // "Calle 5 de Mayo 120"
			break
		}
		if t.kind != word {
			break
		}
		if words == 0 && !t.caps && oneOf(t.text, "y", "e", "o", "pero") {
			return a, false // "105 en la calle y 60 en la cocina"
		}
		if words > 0 && (t.text == "numero" || t.text == "num" || t.text == "no" || t.text == "nro") {
			break
		}
		// "camino viejo 12"
		whole := words == 0 && toks[i].text != "calle" && toks[i].text != "via" && !p.lex.of(t).never && k+1 < len(toks) &&
			toks[k+1].kind == number
		if !p.lex.of(t).lists.has(listLinking) && !whole && !(t.caps && !allCaps(toks)) && (p.stop(toks, k) || p.term(toks, k)) {
			return a, false
		}
		words++
		k++
	}
	if words == 0 || k >= len(toks) {
		return a, false
	}
	nameEnd := k
	sep := " "
	if toks[k].kind == mark && toks[k].text == "," && k+1 < len(toks) && toks[k+1].text == "#" {
		k++
	}
	switch {
	case toks[k].kind == mark && toks[k].text == "#":
		sep = " #"
		k++
	case toks[k].kind == word && (toks[k].text == "numero" || toks[k].text == "num" || toks[k].text == "no" || toks[k].text == "nro"):
		k++
		if k < len(toks) && toks[k].text == "." {
			k++
		}
	}
	if k >= len(toks) || toks[k].kind != number || !houseNumber(&toks[k]) {
		return a, false
	}
	if k+1 < len(toks) && toks[k+1].kind == word {
		if tags, n := p.lex.match(toks, k+1, k+2); n > 0 && p.has(tags, cUnit, "psi") {
			return a, false
		}
	}
	a.house = k
	a.line = title(toks[i].raw) + " " + p.nameOf(toks, name, nameEnd) + sep + toks[k].num.digits
	a.to = k + 1
	if dash := a.to; dash+1 < len(toks) && toks[dash].text == "-" && toks[dash].glued && toks[dash+1].glued &&
		toks[dash+1].kind == word && len(toks[dash+1].raw) == 1 {
		a.line += "-" // "Calle Fresnos #415-B"
		a.to++
	}
	if a.to < len(toks) && toks[a.to].glued && toks[a.to].kind == word && len(toks[a.to].raw) == 1 {
		a.line += strings.ToUpper(toks[a.to].raw)
		a.to++
	}
	a.unit(p, toks)
	a.townAfter(p, toks)
	return a, true
}

// numberAhead tells whether the house's number is told at k: "calle 8 #45", "calle 8 numero 45".
func numberAhead(toks []token, k int) bool {
	return k < len(toks) && (toks[k].kind == number || oneOf(toks[k].text, "#", "numero", "num", "no"))
}

// ofStreet returns where a street's name begins after "de": "el 4 de Heron Bayou
// Ln"; j when there is no such word.
func (p *Parser) ofStreet(toks []token, j int) int {
	if t := &toks[j]; t.kind != word || t.text != "de" && t.text != "d" || t.caps && !allCaps(toks) || j+1 >= len(toks) ||
		toks[j+1].kind != word {
		return j
	}
	switch toks[j+1].text {
	case "la", "las", "los", "el":
		return j // "14 de la Rosa St" is its name
	}
	return j + 1
}

// placedAt tells whether the word at k is a test point's.
func (p *Parser) placedAt(toks []token, k int) bool {
	node, n := p.lex.find(toks, k, k+1)
	return n > 0 && p.lex.kinds(node).meets(setOf(cPoint, cPlace, cBibb))
}

// plainUnit tells whether a word for a unit is part of a name here: no number or
// letter of a unit follows it.
func (g *gazetteer) plainUnit(toks []token, k int) bool {
	id := k + 1
	if id < len(toks) && (toks[id].text == "#" || toks[id].text == "." && oneOf(toks[k].text, "apt", "apto", "depto", "dpto", "ste", "bldg")) {
		id++ // "apto. 5"
	}
	_, n := unitID(toks, id)
	return n == 0
}

// numberLast reads a street line of a name and its number alone, as Spanish
// speakers write it: "Vista Grande 1105". Only capital letters and a number that can
// be neither a pressure nor a year make it one.
func (p *Parser) numberLast(toks []token, i int) (address, bool) {
	if n := i + 1; n >= len(toks) || toks[n].kind == word && !toks[n].caps && !p.lex.of(&toks[i]).heads && !p.lex.of(&toks[n]).lists.has(listLinking) {
		return address{}, false
	}
	k, caps := i, 0
	for k < len(toks) && k < i+5 && toks[k].kind == word {
		t := &toks[k]
		switch {
		case p.lex.of(t).lists.has(listLinking) && k > i:
		case !t.caps && !p.lex.of(&toks[i]).heads || p.term(toks, k) || p.lex.of(t).keys&keyNoun != 0 || p.lex.of(t).lists.has(listNoStreets) ||
			t.raw == strings.ToUpper(t.raw) && !allCaps(toks) || len(t.text) < 3:
			return address{}, false
		default:
			caps++
		}
		k++
	}
	if k == i+1 && !toks[i].caps {
		return address{}, false
	}
	if k >= len(toks) || caps < 2 &&
		!(caps == 1 && i > 0 && (toks[i-1].text == "en" || toks[i-1].text == "domicilio" || toks[i-1].text == "direccion")) {
		return address{}, false
	}
	nameEnd, sep := k, " "
	if toks[k].text == "#" && k+1 < len(toks) {
		sep = " #"
		k++
	}
	t := &toks[k]
	if !p.lex.speaksSpanish(toks) {
		return address{}, false
	}
	if t.kind != number || !houseNumber(t) || t.num.words || t.glued && sep == " " || t.num.value <= 300 && sep == " " ||
		year(t.num.value) && sep == " " {
		return address{}, false
	}
	if k+1 < len(toks) && !(toks[k+1].kind == mark) &&
		!(toks[k+1].kind == word && (p.term(toks, k+1) || p.lex.of(&toks[k+1]).unit != "" || p.stop(toks, k+1))) {
		return address{}, false
	}
	a := address{from: i, to: k + 1, house: k, unitFrom: -1, score: 5, suffixed: true, quoted: toks[i].quoted}
	a.line = p.nameOf(toks, i, nameEnd) + sep + t.num.digits
	a.unit(p, toks)
	return a, true
}

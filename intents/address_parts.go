package intents

// Street lines whose parts were told apart: the house number behind the street, the
// unit at the other end of the message.

// Lists of the lexicon that these rules know.
var (
	listNamesHouse  = listOf("names house number")
	listBeforeHouse = listOf("before house")
)

// streetFirst reads a street told before its house number: "last house on Bell Buoy
// Rd, 1288", "the juniper st job, number 40". A suffix makes the street one, and the
// word "number", or a number that is no pressure's, the house. Where no word leads to the street it
// takes the word.
func (p *Parser) streetFirst(toks []token, i int, led bool) (address, bool) {
	if !p.suffixSoon(toks, i) {
		return address{}, false
	}
	k, std := i, ""
	for k < len(toks) && k < i+5 && p.mayName(toks, k) {
		if s := p.lex.of(&toks[k]).suffix; k > i && core(s) {
			std = s
			break
		}
		k++
	}
	if std == "" || k+1 >= len(toks) {
		return address{}, false
	}
	name, plain := p.nameOf(toks, i, k), toks[k].caps || !p.lex.inList(toks[k].text, listAmbiguousSuffixes)
	if k++; placeWord(toks[k].text) {
		k++
	}
	if k < len(toks) && toks[k].text == "," {
		k++
	}
	from := k
	for k < len(toks) && houseNumberWord(toks[k].text) {
		k++
	}
	told := k > from
	if !told && !led {
		return address{}, false
	}
	if k >= len(toks) || toks[k].kind != number || !houseNumber(&toks[k]) ||
		!told && (!plain || toks[k].num.value <= highestPressure || year(toks[k].num.value)) {
		return address{}, false
	}
	if k+1 < len(toks) && toks[k+1].kind != mark || k+1 < len(toks) && toks[k+1].glued && toks[k+1].text == "#" {
		return address{}, false
	}
	line := toks[k].num.digits + " " + name + " " + std
	return address{from: i, to: k + 1, house: k, line: line, unitFrom: -1, score: 5, suffixed: true, quoted: toks[i].quoted}, true
}

// suffixSoon tells whether the suffix of a street stands among the words right behind token i.
func (p *Parser) suffixSoon(toks []token, i int) bool {
	for k := i + 1; k < len(toks) && k < i+5 && toks[k].kind == word; k++ {
		if core(p.lex.of(&toks[k]).suffix) {
			return true
		}
	}
	return false
}

// mayName tells whether the word at k may stand in a street's name that comes before its
// number: "Alder St 12".
func (p *Parser) mayName(toks []token, k int) bool {
	t := &toks[k]
	if t.kind != word || !t.caps && (p.lex.of(t).plain || p.lex.of(t).never) {
		return false
	}
	return !p.term(toks, k) || core(p.lex.of(t).suffix)
}

// placeWord tells whether a word may stand between a street and its house number:
// "the Juniper St job, number 40".
func placeWord(s string) bool {
	return s == "job" || s == "house" || s == "place" || s == "call" || s == "one"
}

// houseNumberWord tells whether a word or mark leads to a house number.
func houseNumberWord(s string) bool {
	return s == "number" || s == "no" || s == "house" || s == "#" || s == "." || s == "num"
}

// houseTold tells whether the number at i is said to be the house's: "house number also 71", "the
// address is 88".
func (p *Parser) houseTold(toks []token, i int) bool {
	k, sign, link := i-1, false, false
	for k >= 0 && (p.lex.of(&toks[k]).lists.has(listBeforeHouse) || toks[k].kind == mark && oneOf(toks[k].text, ":", "#", ".", "=")) {
		sign = sign || toks[k].text == "#"
		link = link || toks[k].kind == mark || oneOf(toks[k].text, "is", "s", "was", "also")
		k--
	}
	switch {
	case k < 0 || !p.lex.of(&toks[k]).lists.has(listNamesHouse):
		return false
	case toks[k].text == "house":
		return sign
	case oneOf(toks[k].text, "number", "num", "no", "nr"):
		return k > 0 && oneOf(toks[k-1].text, "house", "street")
	}
	return oneOf(toks[k].text, "address", "addr") && link && (k == 0 || !oneOf(toks[k-1].text, "this", "same", "that"))
}

// houseToldBehind measures the words behind a number that make it the house's: "71 is the house
// number too".
func (p *Parser) houseToldBehind(toks []token, j int) int {
	k := j
	for k < len(toks) && p.lex.of(&toks[k]).lists.has(listBeforeHouse) {
		k++
	}
	switch {
	case k == j || k >= len(toks) || !oneOf(toks[j].text, "is", "s", "was"): // "59 the address is 4207 Sandpiper"
		return 0
	case oneOf(toks[k].text, "address", "addr"):
		k++
	case toks[k].text == "house" && k+1 < len(toks) && oneOf(toks[k+1].text, "number", "num", "no"):
		k += 2
	default:
		return 0
	}
	for k < len(toks) && oneOf(toks[k].text, "too", "also") {
		k++
	}
	return k - j
}

// toStreet skips what stands between a house number that is told to be one and its street: "house
// number 71. Garnet St", "the address is 88 on Elm St".
func toStreet(toks []token, j int) int {
	k := j
	for k < len(toks) && k < j+2 && (toks[k].kind == mark && oneOf(toks[k].text, ",", ".", "\n", "-") || oneOf(toks[k].text, "on", "of", "at")) {
		k++
	}
	return k
}

// unitApart gives the street line the one unit that is told apart from it: "Unit 204,
// 59 psi kitchen, 1800 Campus Blvd". A second one leaves it open which is meant.
func (m *message) unitApart() {
	a := m.site
	if a.unitFrom >= 0 || !m.flats {
		return
	}
	found := ""
	for k := 0; k+1 < len(m.toks); k++ {
		if k >= a.from && k < a.to || m.toks[k].kind != word || m.toks[k].quoted != a.quoted {
			continue
		}
		if m.p.lex.of(&m.toks[k]).unit == "" {
			continue
		}
		switch m.toks[k].text {
		case "unit", "apt", "apartment", "apto", "suite", "ste":
		default:
			continue
		}
		if k > 0 && oneOf(m.toks[k-1].text, "ac", "hvac", "condenser", "outdoor", "window") {
			continue // "bib by the AC unit 62"
		}
		j := k + 1
		if m.toks[j].text == "#" && j+1 < len(m.toks) {
			j++
		}
		id, n := unitID(m.toks, j)
		if n == 0 || m.toks[j].kind == word && !m.toks[j].caps || m.toks[j].kind == number && m.toks[j].num.words && m.toks[j].num.value < 2 {
			continue
		}
		if j+n < len(m.toks) && (m.toks[j+n].kind == number || m.toks[j+n].kind == word && m.p.measure(m.toks, j+n) && m.toks[j].kind == number) {
			continue // "unit 60 psi"
		}
		line := " " + m.p.lex.of(&m.toks[k]).unit + " " + id
		if found != "" && found != line {
			return
		}
		found = line
	}
	if found == "" {
		return
	}
	for k := a.house + 1; k < a.to; k++ {
		if m.p.lex.of(&m.toks[k]).unit != "" && !m.p.gaz.plainUnit(m.toks, k) || m.toks[k].text == "#" {
			return // it has one of its own
		}
	}
	a.line += found
}

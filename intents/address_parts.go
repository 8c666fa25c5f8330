package intents

// Street lines whose parts were told apart: the house number behind the street, the
// unit at the other end of the message.

// streetFirst reads a street told before its house number: "last house on Bell Buoy
// Rd, 1288", "on Juniper St, number 40". Only capitals and a suffix make the street one.
func (p *Parser) streetFirst(toks []token, i int) (address, bool) {
	a := address{from: i, unitFrom: -1, score: 5, suffixed: true, quoted: toks[i].quoted}
	if i == 0 || toks[i-1].text != "on" && toks[i-1].text != "at" && toks[i-1].text != "off" {
		return a, false
	}
	k, std := i, ""
	for k < len(toks) && k < i+5 && toks[k].kind == word && toks[k].caps && !p.term(toks, k) {
		if s := p.gaz.suffix[toks[k].text]; s != "" && core(s) && k > i {
			std = s
			break
		}
		k++
	}
	if std == "" || k+2 >= len(toks) {
		return a, false
	}
	name, told := p.nameOf(toks, i, k), false
	if k++; toks[k].text == "," {
		k++
	}
	switch toks[k].text {
	case "number", "no", "house", "#":
		told = true
		if k++; k < len(toks) && (toks[k].text == "number" || toks[k].text == "." || toks[k].text == "#") {
			k++
		}
	}
	if k >= len(toks) || toks[k].kind != number || !houseNumber(&toks[k]) || !told && (toks[k].num.value <= highestPressure || year(toks[k].num.value)) {
		return a, false
	}
	if k+1 < len(toks) && toks[k+1].kind != mark || k+1 < len(toks) && toks[k+1].glued && toks[k+1].text == "#" {
		return a, false
	}
	a.house, a.line, a.to = k, toks[k].num.digits+" "+name+" "+std, k+1
	return a, true
}

// unitApart gives the street line the one unit that is told apart from it: "Unit 204,
// 59 psi kitchen, 1800 Campus Blvd". A second one leaves it open which is meant.
func (m *message) unitApart() {
	a := m.site
	if a.unitFrom >= 0 {
		return
	}
	found := ""
	for k := 0; k+1 < len(m.toks); k++ {
		if k >= a.from && k < a.to || m.toks[k].kind != word || m.toks[k].quoted != a.quoted {
			continue
		}
		switch m.toks[k].text {
		case "unit", "apt", "apartment", "apto", "suite", "ste":
		default:
			continue
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
		line := " " + m.p.gaz.unit[m.toks[k].text] + " " + id
		if found != "" && found != line {
			return
		}
		found = line
	}
	for k := a.house + 1; k < a.to; k++ {
		if _, unit := m.p.gaz.unit[m.toks[k].text]; unit && !m.p.gaz.plainUnit(m.toks, k) || m.toks[k].text == "#" {
			return // it has one of its own
		}
	}
	a.line += found
}

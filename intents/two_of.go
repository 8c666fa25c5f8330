package intents

import "strings"

// A house may have two regulators, heaters or tanks: "two prvs, upper set 60, lower set 75". Its
// record holds one of each, so what is told of both and differs is left out and asked about.

// twoSettings takes back what two regulators of a house are set to where the settings differ.
func (m *message) twoSettings() {
	if !m.gave(roleTo) && !m.gave(roleSetting) {
		return
	}
	var of []int
	for i := range m.items {
		if r := m.items[i].role; (r == roleTo || r == roleSetting) && m.settingLike(i) && m.ofRegulator(i) {
			of = append(of, i)
		}
	}
	if len(of) == 0 || len(of) == 1 && m.shut(whichGate) {
		return
	}
	two, parted := m.countsTwo("prv"), m.partedByName("prv")
	if parted && len(of) == 1 {
		of = append(of, of[0])
	}
	for k := 1; k < len(of); k++ {
		a, b := of[k-1], of[k]
		first, second := m.whichOf(a), m.whichOf(b)
		apart := first != "" && second != "" && first != second
		same := m.items[a].value == m.items[b].value || m.items[a].owner != 0 && m.items[a].owner == m.items[b].owner && !apart
		if a != b && same || !two && !apart && !parted {
			continue
		}
		for i := range m.items {
			if m.numIs(i, roleTo, roleSetting, roleFrom) && m.ofRegulator(i) {
				m.items[i].owner = 0
				m.setRole(i, roleIgnored, "one of two regulators")
			}
		}
		m.askWhich(a, b)
		return
	}
}

// partedByName tells whether two mentions of a thing have words before them that tell one from the
// other: "upper reg … lower reg", "heater 1 … heater 2".
func (m *message) partedByName(item string) bool {
	first := ""
	for k := range m.items {
		if !m.items[k].kinds.has(cItem) || !m.is(k, cItem, item) {
			continue
		}
		name := ""
		switch {
		case m.is(k-1, cHint, "whichone"):
			name = m.text(k - 1)
		case oneOf(m.text(k-1), "st", "nd") && m.isNum(k-2):
			name = m.items[k-2].num.digits // "1st prv … 2nd prv"
		case m.isNum(k+1) && m.items[k+1].unit == "" && m.items[k+1].value <= 2:
			name = m.items[k+1].num.digits // "heater 1 … heater 2"
		default:
			continue
		}
		if first != "" && first != name {
			return true
		}
		first = name
	}
	return false
}

// ofRegulator tells whether the setting at i is not known to be a tank's air.
func (m *message) ofRegulator(i int) bool {
	v := m.numbersDeed(i)
	return v == nil || v.object == "" || v.object == "prv"
}

var whichGate = onlyWith(cHint, "whichone")

// whichOf returns the word that tells one of two things from the other in the clause of item i:
// "upper", "the second one"; "" for none.
func (m *message) whichOf(i int) string {
	for k := m.clauseStart(i); k < m.clauseEnd(i); k++ {
		if m.is(k, cHint, "whichone") {
			return m.text(k)
		}
	}
	return ""
}

// countsTwo tells whether the message speaks of two things of a kind: "2 regs", "both heaters".
func (m *message) countsTwo(item string) bool {
	for i := range m.items {
		it := &m.items[i]
		two := it.num != nil && it.value == 2 && (it.unit == "" || it.unit == "other")
		if !two && !m.begins(i, keyBoth) {
			continue
		}
		switch {
		case two && it.unit == "other" && it.tok+1 < len(m.toks) && m.p.isItem(m.toks[it.tok+1].text, item):
			return true
		case (two || m.says(i, "both", "dos", "ambos", "ambas")) && m.is(i+1, cItem, item) &&
			strings.HasSuffix(m.toks[m.items[i+1].tok].text, "s"):
			return true
		}
	}
	return false
}

// isItem tells whether a word, or what it is the plural of, names a piece of equipment.
func (p *Parser) isItem(word, item string) bool {
	for _, w := range [...]string{word, strings.TrimSuffix(word, "s"), strings.TrimSuffix(word, "es")} {
		if id, ok := p.lex.id(w); ok && p.has(p.lex.tags(p.lex.first[id]), cItem, item) {
			return true
		}
	}
	return false
}

// otherOfTwo tells whether a fact at item at of a thing that has such a fact already is one of a
// second such thing, and drops it of both.
func (m *message) otherOfTwo(at int, item string, f *fact, what string) bool {
	same := false
	switch what {
	case "year":
		same = f.InstalledYear != nil && *f.InstalledYear == m.fullYear(m.items[at].value)
	case "size":
		same = f.SizeGal != nil && *f.SizeGal == m.items[at].value
	case "temp":
		same = f.SetpointF != nil && *f.SetpointF == m.items[at].value
	}
	if !f.counted { // once for all that is told of it
		f.counted, f.two = true, m.countsTwo(item) || m.partedByName(item)
	}
	if same || !f.two {
		return false
	}
	first := -1
	for k := range at {
		if m.isNum(k) && m.items[k].role == m.items[at].role {
			first = k
		}
	}
	if first < 0 {
		return false
	}
	switch what {
	case "year":
		f.InstalledYear = nil
	case "size":
		f.SizeGal = nil
	case "temp":
		f.SetpointF = nil
	}
	m.askWhich(first, at)
	return true
}

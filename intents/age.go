package intents

import (
	"slices"
	"strings"
)

// likewise copies a year: "the regulator was installed in 2021 and so was the heater".
func (m *message) likewise(items []mentionOf) {
	m.sameAge(items)
	for k := 1; k < len(items); k++ {
		x := items[k]
		same := m.left(x.at, 4, false, func(k int) bool {
			t := m.text(k)
			return t == "so" || t == "likewise" || t == "same with" || t == "igual" || t == "tambien"
		}) >= 0 && m.left(x.at, 3, false, func(k int) bool { return be(m.text(k)) || strings.HasPrefix(m.text(k), "did") || m.text(k) == "igual" }) >= 0
		if m.left(x.at, 4, false, func(k int) bool {
			return m.text(k) == "same" && (m.text(k+1) == "for" || m.text(k+1) == "with" || m.text(k+1) == "goes") || m.text(k) == "same for"
		}) >= 0 {
			same = true // "no idea how old the prv is, same for the heater"
		}
		if m.says(x.at+1, "too", "also", "as well", "likewise", "tambien") && m.closes(x.at+1) && m.items[max(x.at-1, 0)].mark &&
			m.items[items[k-1].at].sent == m.items[x.at].sent {
			same = true // "heater's a 2014, tank too"
		}
		if !same {
			continue
		}
		f := m.equipment.facts[items[k-1].item]
		if f == nil {
			continue
		}
		g := m.equipment.get(x.item, x.at)
		g.AgeUnknown = g.AgeUnknown || f.AgeUnknown && f.InstalledYear == nil
		if g.InstalledYear == nil && f.InstalledYear != nil {
			y := *f.InstalledYear
			g.InstalledYear = &y
		}
		if g.Condition == "" && f.InstalledYear == nil {
			g.Condition = f.Condition
		}
		g.said = true
	}
}

// sameAge copies the year of another thing: "exp tank is the same age as the prv",
// "prv is from 2012, exp tank same age".
func (m *message) sameAge(items []mentionOf) {
	for k, x := range items {
		end := len(m.items)
		if k+1 < len(items) {
			end = items[k+1].at
		}
		at := -1
		for j := x.at + 1; j < end && j <= x.at+8 && m.items[j].sent == m.items[x.at].sent; j++ {
			if m.is(j, cHint, "sameage") || m.closes(j) && (m.text(j) == "same" || m.text(j) == "the same" || m.text(j) == "igual") {
				at = j
				break
			}
		}
		if at < 0 {
			continue
		}
		from := k - 1
		if t := m.text(at + 1); (t == "as" || t == "que") && k+1 < len(items) && items[k+1].at <= at+4 {
			from = k + 1
		}
		if from < 0 {
			continue
		}
		f, g := m.equipment.facts[items[from].item], m.equipment.get(x.item, x.at)
		if f == nil || g.InstalledYear != nil {
			continue
		}
		g.said = true
		if f.InstalledYear != nil {
			y := *f.InstalledYear
			g.InstalledYear = &y
		}
	}
}

// calledAge tells whether the word age leads to a bare number: "heater age 14", "PRV age:
// 9". The number may be any part's, of the house's, never a person's.
func (m *message) calledAge(i int) bool {
	k := i - 1
	for k > 0 && k > i-3 && (m.isMark(k, ":", "=", "-") || m.says(k, "is", "about", "aprox", "approx")) {
		k--
	}
	return m.says(k, "age", "edad") && m.items[i].num.integer && m.items[i].value < 60 &&
		!m.items[i].num.words && m.itemIn(m.items[i].sent) != "" && m.left(k, 3, false, func(j int) bool { return person(m.text(j)) || m.is(j, cWhose, "person") }) < 0
}

// bareAge tells whether a bare number is the years of a thing: "prv is 14 and
// sticking", "heater's 11".
func (m *message) bareAge(i int) bool {
	it := &m.items[i]
	if !it.num.integer || it.num.decimals > 0 || it.value < 3 || it.value > 35 || it.unit != "" {
		return false
	}
	if m.text(i-1) == "age" && m.is(i-2, cItem, "") {
		return true // "heater age 15"
	}
	last := i - 1
	if t := m.text(last); t == "only" || t == "about" || t == "just" || t == "maybe" {
		last-- // "heater's only 3"
	}
	glued := last >= 0 && m.is(last, cItem, "") && strings.Contains(m.toks[m.items[last].tok+m.items[last].n-1].raw, "'") // "heater's 11"
	if t := m.text(i - 1); !glued && t != "is" && t != "s" && t != "about" && t != "only" && t != "maybe" && t != "already" && t != "like" {
		return false
	}
	k := i - 1
	for k > 0 && !m.is(k, cItem, "") {
		if m.items[k].mark || m.items[k].num != nil || i-k > 3 {
			return false
		}
		k--
	}
	glued = glued || m.is(k, cItem, "") && strings.HasSuffix(m.toks[m.items[k].tok+m.items[k].n-1].raw, "'s") // "heater's only 3"
	if !glued && m.text(k+1) != "is" && m.text(k+1) != "s" {
		return false
	}
	switch v, _ := m.val(k, cItem); v {
	case "prv", "softener", "recirc":
	case "heater":
		if it.value >= 20 {
			return false // gallons
		}
	default:
		return false
	}
	switch n := m.text(i + 1); n {
	case "and", "but", "or", "by", "now", "already", "so", "old":
		return true
	default:
		return m.closes(i) && n != "-" && n != "/" || m.is(i+1, cCond, "")
	}
}

// turnsAge tells whether a bare number is the years that a thing turns: "reg turns 15
// this year", "heater's going on 20".
func (m *message) turnsAge(i int) bool {
	it := &m.items[i]
	if t := m.text(i - 1); t != "turns" && t != "turned" && t != "turning" && t != "pushing" && !strings.HasSuffix(t, "going on") &&
		!(t == "is" && m.says(i+1, "this year", "this fall", "this spring", "this summer", "this month")) {
		return false
	}
	if it.value < 3 || it.value > 50 || !it.num.integer || m.items[i].point != "" {
		return false
	}
	k := m.left(i, 4, false, func(k int) bool { return m.is(k, cItem, "") })
	return k >= 0 && m.items[k].point == "" &&
		(m.closes(i) || m.says(i+1, "this year", "last", "next", "now", "and", "years") || m.text(i+1) == "in" && !m.isNum(i+2))
}

// unknownToo gives an unknown age told before two things to the second one: "no idea on
// the age of the reg or the heater".
func (m *message) unknownToo(at int, owner string, items []mentionOf) {
	for k := 1; k < len(items); k++ {
		x, y := items[k-1], items[k]
		if x.item != owner || x.at < at || y.at > x.at+3 || m.items[y.at].sent != m.items[at].sent {
			continue
		}
		switch m.text(x.at + 1) {
		case "or", "and", "nor", "n", "o", "ni", "y", "/":
			f := m.equipment.get(y.item, y.at)
			f.AgeUnknown, f.said = true, true
		}
		return
	}
}

// stampedYear tells whether two digits are a year: "PRV has 98 stamped on it", "reg 06,
// wh 15" beside one that begins with a zero, "put in twenty two".
func (m *message) stampedYear(i int) bool {
	it := &m.items[i]
	if now := m.ctx.Today.Year % 100; int(it.value) > now && it.value < 70 || it.point != "" || m.points(i) {
		return false
	}
	if m.is(i-1, cHint, "setting") {
		return false // "setting 70 on the tag"
	}
	if t := m.text(i + 1); (strings.HasPrefix(t, "stamped") || t == "on" && m.text(i+2) == "the" && m.text(i+3) == "tag" || t == "on the tag") && m.itemIn(it.sent) != "" {
		return true
	}
	if m.says(i-1, "a", "an") && be(m.text(i-2)) && it.value >= 70 && m.closes(i) && m.isAny(i-3, cItem, "prv", "softener", "recirc") {
		return true // "prv is a 98"
	}
	if it.num.words && m.putInAt(i) && m.thingIn(it.sent) && m.closes(i) {
		return true
	}
	if !m.is(i-1, cItem, "") || m.items[i-1].point != "" {
		return false
	}
	s := &m.sents[it.sent]
	for k := s.from; k < s.to; k++ {
		if n := m.items[k].num; n != nil && k != i && len(n.digits) == 2 && n.digits[0] == '0' && n.integer && !n.words && m.is(k-1, cItem, "") {
			return true
		}
	}
	return false
}

// putInAt tells whether the number at i follows what tells an installation: "put in ninety
// eight", "went in in oh nine".
func (m *message) putInAt(i int) bool {
	if m.says(i-1, "put in", "installed", "went in") {
		return true
	}
	return m.says(i-1, "in", "back in") && m.left(i, 4, false, func(k int) bool {
		return m.is(k, cHint, "wentin") || m.is(k, cDid, "installed") || m.text(k) == "put"
	}) >= 0
}

// houseYear tells whether two digits are the year of the house, told for a thing that is
// original to it: "la casa es del 98 y la reguladora es la original".
func (m *message) houseYear(i int) bool {
	if m.points(i) || m.items[i].unit != "" {
		return false
	}
	if m.builtIn(i) {
		return true
	}
	if t := m.text(i - 1); t != "del" && t != "from" && t != "in" || !m.has(cHint, "original") {
		return false
	}
	return m.left(i, 4, false, func(k int) bool { return m.is(k, cHint, "dated") || m.is(k, cHint, "wholehouse") }) >= 0
}

// builtIn tells whether the number at i, which ends its clause, is the year of the house: "casa del
// 91", "house went up in 58", "construida en 68", "here since 88".
func (m *message) builtIn(i int) bool {
	if !m.closes(i) || m.items[i].value < 30 || m.pointInClause(i) {
		return false
	}
	k, since := i-1, m.text(i-1) == "since"
	for m.is(k, cDeterminer, "") {
		k--
	}
	if !m.says(k, "del", "from", "in", "en", "desde") && !since {
		return false
	}
	house, built := false, since || m.text(k) == "desde"
	for j := m.clauseStart(i); j < k; j++ {
		if m.is(j, cItem, "") || m.is(j, cHint, "ofpressure") || m.isNum(j) {
			return false
		}
		house = house || m.is(j, cHint, "building")
		built = built || m.is(j, cHint, "raised")
	}
	return built || house && m.says(k, "del", "from")
}

// monthOfDate tells whether the number at i is the month of a date that a thing bears, its
// year behind a stroke: "prv dated 3/14".
func (m *message) monthOfDate(i int) bool {
	if i < 0 || !m.isNum(i) || !m.isMark(i+1, "/") || !m.isNum(i+2) || m.isMark(i+3, "/") || m.isMark(i-1, "/") {
		return false
	}
	mo, yr := &m.items[i], &m.items[i+2]
	if !mo.num.integer || mo.value < 1 || mo.value > 12 || !yr.num.integer || len(yr.num.digits) != 2 {
		return false
	}
	if yr.value > 70 && yr.value < 80 || yr.value < 70 && int(yr.value) > m.ctx.Today.Year%100 {
		return false
	}
	return m.thingIn(mo.sent) && m.left(i, 4, false, func(k int) bool { return m.is(k, cHint, "dated") || m.is(k, cHint, "stamp") }) >= 0
}

// monthYear returns the two digits of the year of a date code, "heater mfg 0314"; "" for none.
func (m *message) monthYear(i int) string {
	n := m.items[i].num
	if len(n.digits) != 4 || !n.integer || n.words || n.digits[:2] < "01" || n.digits[:2] > "12" || !m.thingIn(m.items[i].sent) {
		return ""
	}
	if y := int(n.value) % 100; y > m.ctx.Today.Year%100 && y < 80 {
		return ""
	}
	if m.left(i, 4, false, func(k int) bool { return m.is(k, cHint, "stamp") }) < 0 {
		return ""
	}
	return n.digits[2:]
}

// spokenYear tells whether "oh nine" is a year: beside a thing or a house that was built,
// where no pressure is told.
func (m *message) spokenYear(i int) bool {
	if m.points(i) || m.items[i].point != "" || m.items[i].unit != "" {
		return false
	}
	return m.thingIn(m.items[i].sent) || m.itemIn(m.items[i].sent) != "" || m.yearCue(i)
}

// ageUnknown reads "nobody knows how old", "age unknown", "no se sabe de qué año es".
func (m *message) ageUnknown(i int) bool {
	if m.is(i, cHint, "undated") {
		return true // "PRV: no date code"
	}
	t := m.text(i)
	if m.is(i, cAge, "") || t == "when" || t == "cuando" {
		near := 7
		if t == "when" || t == "cuando" {
			near = 2
		}
		unknown := func(k int) bool { return m.is(k, cUnknown, "") }
		if m.left(i, near, true, unknown) >= 0 || near > 2 && m.right(i, 8, true, func(k int) bool { return unknown(k) && m.items[k].seg == m.items[i].seg }) >= 0 {
			return !m.sents[m.items[i].sent].question && (near > 2 || !m.closes(i))
		}
	}
	if m.is(i, cUnknown, "") && (i+1 >= len(m.items) || m.items[i+1].mark) && strings.HasSuffix(t, "knows") {
		return true // "no tag, nobody knows"
	}
	switch t {
	case "nobody", "nadie", "who":
		return (m.text(i+1) == "knows" || m.text(i+1) == "sabe") && (i+2 >= len(m.items) || m.items[i+2].mark)
	case "cuando":
		return m.left(i, 4, false, func(k int) bool { t := m.text(k); return t == "sabe" || t == "sabemos" || t == "saben" }) >= 0
	case "old":
		// how old
		if m.text(i-1) == "how" || m.text(i-1) == "whats" {
			return m.left(i, 7, true, func(k int) bool {
				switch m.text(k) {
				case "know", "knows", "no", "nobody", "idea", "clue", "cant", "dont", "unsure", "unknown", "not", "couldnt", "tell", "say", "knew":
					return true
				}
				return false
			}) >= 0 || m.right(i, 5, true, func(k int) bool {
				switch m.text(k) {
				case "unknown", "nobody", "no", "dont", "unk", "idea":
					return true
				}
				return false
			}) >= 0
		}
	case "etiqueta", "placa", "fecha de", "label":
		return m.unreadable(i)
	case "age", "edad", "date", "year", "fecha", "vintage", "ano", "tag", "anos":
		if m.unreadable(i) {
			return true
		}
		if r := m.right(i, 3, true, func(k int) bool {
			switch m.text(k) {
			case "not":
				return m.text(k+1) == "known" || m.text(k+1) == "legible" || m.text(k+1) == "readable"
			case "unknown", "unk", "unreadable", "illegible", "desconocida", "unknwn", "?", "unclear", "gone", "missing", "not known", "worn off":
				return true
			}
			return false
		}); r >= 0 && (t == "age" || t == "edad" || m.text(r) != "gone") {
			return !(m.text(r) == "?" && m.sents[m.items[i].sent].asking)
		}
		if m.left(i, 6, true, func(k int) bool {
			switch m.text(k) {
			case "no", "no se", "unk", "unknown", "cant", "couldnt", "nobody", "dont", "not", "sabe", "nadie", "se", "idea", "sin", "no trae", "no tiene":
				return true
			}
			return false
		}) >= 0 {
			switch t {
			case "age", "edad":
				return true
			case "date", "tag", "fecha":
				return m.text(i+1) != "yet" && m.text(i+1) != "set" && m.left(i, 4, true, func(k int) bool {
					t := m.text(k)
					return oneOf(t, "no", "no trae", "no tiene") && k >= i-2 && m.text(k+1) != "wait" || oneOf(t, "read", "cant", "couldnt") || t == "find" && m.is(k-1, cNeg, "")
				}) >= 0
			case "ano", "anos", "year", "vintage":
				return m.left(i, 6, true, func(k int) bool {
					t := m.text(k)
					return t == "no se" || t == "se" && m.text(k-1) == "no" || oneOf(t, "sabe", "sabemos", "know", "knows", "idea", "saben", "sabia")
				}) >= 0
			}
		}
	}
	return false
}

// yearCue tells whether a year is told as one of an installation.
func (m *message) yearCue(i int) bool {
	return m.left(i, 4, false, func(k int) bool {
		switch m.text(k) {
		case "installed", "from", "dated", "tag", "date", "stamped", "since", "year", "made", "mfg", "built",
			"put in", "del", "de", "ano", "etiqueta", "label", "sticker", "its", "vintage", "instalado",
			"instalada", "desde", "original", "age", "inst", "install", "says", "mfd", "manufactured", "born",
			"new in", "circa":
			return true
		}
		return false
	}) >= 0
}

func (m *message) installedLastYear(a attribute, items []mentionOf) {
	a2 := attribute{a.at, "year"}
	owner, old, ok := m.ownerOf(a2, items)
	if !ok || old {
		return
	}
	y := m.ctx.Today.Year - 1
	if t := m.text(a.at); t == "last month" || t == "last week" || t == "this year" || t == "este ano" {
		y = m.ctx.Today.Year
	}
	f := m.equipment.get(owner, a.at)
	f.InstalledYear, f.said = &y, true
}

// original reads "the PRV is original" beside the year that the house was built.
func (m *message) original(items []mentionOf) {
	built := -1
	for i := range m.items {
		if m.items[i].num == nil || m.items[i].role != roleYear {
			continue
		}
		b := m.left(i, 5, false, func(k int) bool {
			switch m.text(k) {
			case "built", "went up", "house", "casa", "construida", "home", "construyo", "construction":
				return !m.partFor(k) // "prv for the house 2020"
			}
			return m.is(k, cHint, "original")
		})
		if b >= 0 && m.left(i, i-b, false, func(k int) bool { return m.is(k, cItem, "") }) < 0 {
			built = i
		}
	}
	if built < 0 {
		return
	}
	y := m.fullYear(m.items[built].value)
	for i := range m.items {
		if !m.is(i, cHint, "original") {
			continue
		}
		ours := func(x mentionOf) bool { return m.items[x.at].seg == m.items[i].seg }
		named := slices.ContainsFunc(items, func(x mentionOf) bool { return m.items[x.at].sent == m.items[i].sent && ours(x) })
		for _, x := range items {
			if m.items[x.at].sent == m.items[i].sent && abs(x.at-i) <= 6 && x.item != "drain_valve" && (!named || ours(x)) {
				f := m.equipment.get(x.item, x.at)
				if f.InstalledYear == nil {
					f.InstalledYear, f.said = &y, true
				}
			}
		}
	}
	m.setRole(built, roleIgnored, "the house's year")
}

// partFor tells whether a part is said to be for the house at item k: "PRV for the pool house 2013".
func (m *message) partFor(k int) bool {
	for j := k - 1; j > 0 && j >= k-3 && !m.items[j].mark; j-- {
		if m.text(j) == "for" {
			return m.is(j-1, cItem, "")
		}
	}
	return false
}

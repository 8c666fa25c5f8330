package intents

import "slices"

// Lists of the lexicon that these rules know.
var (
	listBuiltIn    = listOf("built in")
	listHouseBuilt = listOf("house built")
)

// The year of the house, and of what is original to it.

// houseYear tells whether two digits are the year of the house, told for a thing that is
// original to it: "la casa es del 98 y la reguladora es la original".
func (m *message) houseYear(i int) bool {
	if m.points(i) || m.items[i].unit != "" {
		return false
	}
	if m.builtIn(i) || m.ofThatYear(i) {
		return true
	}
	if t := m.text(i - 1); t != "del" && t != "from" && t != "in" || !m.has(cHint, "original") {
		return false
	}
	return m.left(i, 4, false, func(k int) bool { return m.is(k, cHint, "dated") || m.is(k, cHint, "wholehouse") }) >= 0
}

// ofThatYear tells whether the number at i, which ends its clause, is the house's year told
// without "in": "house is a 98", "built 98", "98 build".
func (m *message) ofThatYear(i int) bool {
	if it := &m.items[i]; it.value < 30 && int(it.value) > m.ctx.Today.Year%100 || it.value < 70 && !m.has(cHint, "original") {
		return false
	}
	switch {
	case m.says(i-1, "a", "an") && m.inList(i-2, listLinks):
		return m.closes(i) && m.is(i-3, cHint, "building")
	case m.text(i-1) == "built":
		return m.closes(i)
	}
	return m.says(i+1, "build", "built") && m.closes(i+1)
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
	if !m.inList(k, listBuiltIn) && !since {
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

var originalGate = gateOf(opener{hints: []string{"original"}, lists: []list{listHouseBuilt}, words: []string{"build"}})

// original reads "the PRV is original" beside the year that the house was built.
func (m *message) original(items []mentionOf) {
	if m.shut(originalGate) {
		return
	}
	built := -1
	for i := range m.items {
		if m.items[i].num == nil || m.items[i].role != roleYear {
			continue
		}
		b := m.left(i, 5, false, func(k int) bool {
			if m.inList(k, listHouseBuilt) {
				return !m.partFor(k) && !m.oneHere(k) && !(m.text(k) == "built" && m.partBuilt(k)) // "prv for the house 2020"
			}
			return m.is(k, cHint, "original")
		})
		if m.says(i+1, "build", "built") && b < 0 {
			built = i // "98 build, reg looks original"
		}
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
			if m.items[x.at].sent == m.items[i].sent && (abs(x.at-i) <= 6 || x.at == m.firstOf(m.items[i].sent) &&
				!named && x.at < i) && x.item != "drain_valve" && (!named || ours(x)) {
				f := m.equipment.get(x.item, x.at)
				if f.InstalledYear == nil {
					f.InstalledYear, f.said = &y, true
				}
			}
		}
	}
	m.setRole(built, roleIgnored, "the house's year")
}

// partBuilt tells whether it is a part that is said to have been built at item k: "the regulator, built in
// 1997, is dead".
func (m *message) partBuilt(k int) bool {
	j := k - 1
	for m.isMark(j, ",", "(") || m.inList(j, listLinks) {
		j--
	}
	return m.is(j, cItem, "")
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

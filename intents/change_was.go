package intents

// Lists of the lexicon that these rules know.
var (
	listHadItSet = listOf("had it set")
	listUpAtN    = listOf("up at a setting")
	listWasIs    = listOf("was and is")
)

// wasDialledGate is that of what something had been set to.
var wasDialledGate = onlyWithList(listWasSet, listHadItSet)

// wasDialled reads the number at i as what the regulator was set to before the deed told first:
// "backed the prv off, it was dialed at 90", "eased it down, last guy had it cranked to 100".
func (m *message) wasDialled(i int) (role, string, bool) {
	if m.inList(i-1, listWasIs) {
		if r, v := m.itWasAndIs(i); v != nil {
			return m.ofDeed(v, i, r, "the regulator was, and is")
		}
	}
	if m.shut(wasDialledGate) || !m.settingLike(i) || m.pointInClause(i) {
		return 0, "", false
	}
	k := i - 1
	for m.inList(k, listUpAtN) {
		k--
	}
	at := k
	if k == i-1 || !m.is(k, cDid, "set") && !m.is(k, cHint, "shift") || m.says(k, "set") {
		return 0, "", false
	}
	for m.is(k, cDid, "set") || m.is(k, cHint, "shift") || m.is(k, cHint, "particle") {
		k--
	}
	if !m.inList(k, listWasSet) && !m.inList(k, listHadItSet) {
		return 0, "", false
	}
	v := m.deedBefore(k, "prv")
	if v == nil || v.what != "set" || m.items[v.at].sent < m.items[i].sent-1 || m.numsBetween(v.at, i) > 0 {
		return 0, "", false
	}
	for n := range m.verbs {
		if m.verbs[n].at == at {
			m.verbs[n].done, m.verbs[n].state = false, true
		}
	}
	return m.ofDeed(v, i, roleFrom, "was, before it was turned")
}

// itWasAndIs reads what a regulator that was turned was at, told right behind it, and what it is at: "I lowered the
// regulator, it was 95 and is 62".
func (m *message) itWasAndIs(i int) (role, *verb) {
	p := m.prevNum(i)
	if p > 0 && m.numIs(p, roleFrom) && m.items[p].owner > 0 && i-p <= 4 && m.is(p-1, cBefore, "") && !m.pointBetween(p, i) && !m.points(i) &&
		m.says(m.pastUnit(p), "and", ",", "now") && !m.is(i-1, cBefore, "") {
		return roleTo, m.numbersDeed(p)
	}
	if !m.is(i-1, cBefore, "") || !m.isMark(i-2, ",") || !m.is(i-3, cItem, "prv") || m.points(i) {
		return roleNone, nil
	}
	v := m.verbLeft(i, 8, "set")
	if v == nil || !v.done || v.object != "prv" {
		return roleNone, nil
	}
	if n := m.nextNum(i); n < 0 || n > i+5 || !m.inList(n-1, listWasIs) || m.points(n) || m.pointBetween(i, n) {
		return roleNone, nil
	}
	return roleFrom, v
}

// pastUnit returns the item behind the number at i and its unit.
func (m *message) pastUnit(i int) int {
	if i++; m.is(i, cUnit, "") {
		i++
	}
	return i
}

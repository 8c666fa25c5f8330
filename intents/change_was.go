package intents

// Lists of the lexicon that these rules know.
var (
	listHadItSet = listOf("had it set")
	listUpAtN    = listOf("up at a setting")
)

// wasDialledGate is that of what something had been set to.
var wasDialledGate = onlyWithList(listWasSet, listHadItSet)

// wasDialled reads the number at i as what the regulator was set to before the deed told first:
// "backed the prv off, it was dialed at 90", "eased it down, last guy had it cranked to 100".
func (m *message) wasDialled(i int) (role, string, bool) {
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

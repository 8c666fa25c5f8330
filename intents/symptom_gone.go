package intents

// Lists of the lexicon that these rules know.
var (
	listAnyMore  = listOf("any more")
	listDoesNot  = listOf("does not")
	listDoingIt  = listOf("doing it")
	listWellNow  = listOf("well now")
	listBackThen = listOf("back then")
	listNotNow   = listOf("not now")

	listYearsPast = listOf("years past")
)

// Symptoms of an earlier day that are denied of today: "used to bang, not any more".

var goneGate = onlyWithList(listAnyMore, listNotNow)

// goneSince tells whether what follows denies of today the symptom at item i, which was told of an
// earlier day: "pipes banged last week, not any more", "dripped before but hasn't since".
func (m *message) goneSince(i int) bool {
	if m.shut(goneGate) || m.endedHere(i) {
		return false // what ended by the work of the visit was there
	}
	s := m.items[i].sent
	to := m.sents[s].to
	if s+1 < len(m.sents) && m.deniesNow(m.sents[s+1].from, i) {
		return true // "pipes used to bang. not any more"
	}
	for k := i + 1; k < to && k <= i+14; k++ {
		switch {
		case m.deniesNow(k, i):
			return true
		case m.is(k, cSym, ""), m.numIs(k, roleReading):
			return false
		}
	}
	return false
}

// yearsBack tells whether the clause of the symptom at item i tells it of another year, and nothing says that it is
// there again: "had a gas leak last year".
func (m *message) yearsBack(i int) bool {
	had := m.left(i, 4, true, func(k int) bool { return m.says(k, "had", "was", "there was", "they had", "fixed") })
	if had < 0 || m.items[had].seg != m.items[i].seg {
		return false
	}
	then := m.right(i, 4, true, func(k int) bool { return m.inList(k, listYearsPast) || m.numIs(k, roleAgo) || m.numIs(k, roleYear) })
	if then < 0 || m.items[then].seg != m.items[i].seg {
		return false
	}
	now := func(k int) bool {
		return m.is(k, cNow, "") || m.says(k, "still", "again", "back", "since", "smells", "smell")
	}
	return m.right(i, longestSentence, true, now) < 0
}

// deniesNow tells whether the words at item k end a clause with a denial of what the symptom at
// item i was: "not any more", "but doesn't now", "hasn't since", "fine now".
func (m *message) deniesNow(k, i int) bool {
	for m.inList(k, listBut) || m.is(k, cDeterminer, "") || m.says(k, "it", "they", "and", "its") {
		k++
	}
	if m.inList(k, listNotNow) {
		return m.closes(k)
	}
	well := m.inList(k, listWellNow)
	if !well && !m.inList(k, listDoesNot) {
		return false
	}
	if well && m.left(k, k-i, true, func(j int) bool { return j > i && m.inList(j, listBackThen) }) < 0 &&
		m.left(i, 8, true, func(j int) bool { return m.inList(j, listUsedTo) || m.inList(j, listBackThen) }) < 0 {
		return false // "ran black for ten seconds, clear now"
	}
	for k++; m.inList(k, listDoingIt); k++ {
	}
	return m.inList(k, listAnyMore) && m.closes(k)
}

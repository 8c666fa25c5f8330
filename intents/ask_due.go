package intents

import "strings"

// Lists of the lexicon that these rules know.
var (
	listOneVisit = listOf("one visit")
	listAsksIf   = listOf("asks if any")
	listGoesBack = listOf("goes back")
)

// What asks nothing of what is due, though it has the words of such a question.

// tellsNeed tells whether the words from item i begin with what must be done: "tenemos que".
func (m *message) tellsNeed(i int) bool {
	for i < len(m.items)-1 && (m.items[i].site || m.items[i].mark) {
		i++
	}
	return m.is(i, cWill, "") && strings.HasSuffix(m.text(i), " que")
}

// settlesTime tells whether the writer asks himself in sentence s when to do something, and settles
// it: "come back when, Tuesday? no, Wednesday, to change the prv".
func (m *message) settlesTime(s int) bool {
	time := func(k int) bool { return m.timeSpan(k) || m.timeWordAt(k) }
	to := m.sents[min(s+1, len(m.sents)-1)].to
	asked, settled := false, false
	for k := m.sents[s].from; k < to; k++ {
		switch {
		case asked && settled && time(k):
			return m.anyDo(k, to)
		case asked && (m.is(k, cRetract, "") || m.inList(k, listSettles) || m.is(k, cHint, "rightly")):
			settled = true
		case time(k):
			asked = true
		}
	}
	return false
}

// anyDo tells whether a job to be done stands among items from..to.
func (m *message) anyDo(from, to int) bool {
	for k := from; k < to; k++ {
		if m.is(k, cDo, "") {
			return true
		}
	}
	return false
}

// bringsVisit tells whether sentence s orders a visit of its own for a day, where a question would be after those
// that stand: "get a recheck of 12 Elm on the calendar for Friday", "send Ben to recheck 12 Elm tomorrow", "look at
// it again in a month, recheck".
func (m *message) bringsVisit(s int) bool {
	se := &m.sents[s]
	if se.question || m.cuesIn(s)&(cueWh|cueMark) != 0 || !m.momentIn(s) {
		return false
	}
	visit := false
	for i := se.from; i < se.to; i++ {
		if m.inList(i, listAsksIf) {
			return false // "see if 12 Elm has a recheck Friday"
		}
		visit = visit || m.looksAgain(i) || m.is(i, cDo, "recheck") && strings.HasSuffix(m.text(i), " again") ||
			m.namesFollowUp(i) && i > se.from && m.p.lex.inList(lastWord(m.text(i-1)), listOneVisit) ||
			m.is(i, cWill, "") && m.inList(i+1, listGoesBack)
	}
	return visit
}

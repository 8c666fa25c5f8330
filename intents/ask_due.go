package intents

import "strings"

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

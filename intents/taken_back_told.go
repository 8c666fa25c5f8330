package intents

import (
	"slices"
	"strings"
)

// Pressures that were reported and are called wrong, or told anew.

var disownedGate = onlyWith(cHint, "wrong")

// disowned voids the numbers of an earlier report that a message calls wrong: "I
// told you kitchen 61 and that's wrong, it's 51", "that 79 is wrong, it's 97".
func (m *message) disowned() {
	if m.shut(disownedGate) {
		return
	}
	for w := range m.items {
		if !m.is(w, cHint, "wrong") {
			continue
		}
		later := false
		for k := w + 1; k < len(m.items); k++ {
			later = later || m.items[k].num != nil && m.items[k].role == roleReading
		}
		if !later {
			return
		}
		se := &m.sents[m.items[w].sent]
		told := false
		for k := se.from; k < w; k++ {
			told = told || m.reported(k)
		}
		that := false
		for k := w - 1; k >= se.from; k-- {
			it := &m.items[k]
			if it.num == nil || it.role != roleReading {
				continue
			}
			that = m.inList(k-1, listThatNumber)
			if !told && !(that && m.hasAsk(AskCorrect)) && !m.saidOfNumber(k, w) {
				break
			}
			m.setRole(k, roleIgnored, "called wrong")
		}
	}
}

// saidOfNumber tells whether the word of wrong at item w is said of the number at k: "58 at 12 Elm
// was wrong".
func (m *message) saidOfNumber(k, w int) bool {
	for j := k + 1; j < w; j++ {
		it := &m.items[j]
		if !it.site && it.point == "" && !it.lists.has(listLinks) && !m.is(j, cDeterminer, "") && !m.is(j, cPlace, "") && !m.says(j, "at", "on", "in", "for") {
			return false
		}
	}
	return true
}

var reportedGate = onlyWith(cHint, "reported")

// reported tells whether item k is the writer's own earlier report: "I told you", "I put in".
func (m *message) reported(k int) bool {
	if !m.is(k, cHint, "reported") {
		return false
	}
	if n := k + 1; m.is(n, cItem, "gauge") || m.is(n, cDeterminer, "") && m.is(n+1, cItem, "") {
		return false // "I put the gauge on the side spigot"
	}
	if m.text(k-1) == "i" || m.text(k-1) == "we" || m.text(k) == "mande" || m.text(k) == "dije" || m.text(k) == "puse" {
		return true
	}
	return strings.HasPrefix(m.text(k), "my ") || m.text(k)[0] == 'i' && len(m.text(k)) > 2 || m.is(k-1, cHint, "reported") ||
		m.slippedAndSent(k)
}

// slippedAndSent tells whether the word of reporting at item k goes on from a slip that the writer
// owns up to, of whom it is told too: "I misheard him and put 141".
func (m *message) slippedAndSent(k int) bool {
	if !m.says(k-1, "and", "y", "so") || !m.is(k, cHint, "reported") {
		return false
	}
	return m.left(k, 7, false, func(j int) bool {
		return !m.items[j].mark && m.items[j].num == nil && (m.wordCues(m.items[j].tok).has(cueMistake) || m.is(j, cHint, "wrong"))
	}) >= 0
}

// sentInstead tells whether the number at i, the last of its clause, is told to have been sent in the
// place of the one before it, which is right: "rear bib is 114, I misheard him and put 141".
func (m *message) sentInstead(i int) bool {
	p := m.prevNum(i)
	return p >= 0 && m.hasAsk(AskCorrect) && m.closes(i) && !m.pointInClause(i) && m.numIs(p, roleReading) && m.pointInClause(p) &&
		m.items[p].sent >= m.items[i].sent-1 && m.reported(i-1)
}

// sentWasOff tells whether sentence s says that what was sent last was off, and it or the next one what is right:
// "the one I just sent is off. side spigot is 84", "my last is off by ten, tub is 62".
func (m *message) sentWasOff(s int) bool {
	if !m.kinds.meets(setOf(cOff, cCond)) || m.readingBefore(m.sents[s].from) || !m.readingLike(s) && (s+1 >= len(m.sents) || !m.readingLike(s+1)) {
		return false
	}
	for i := m.sents[s].from + 1; i < m.sents[s].to; i++ {
		if !m.says(i, "off", "off by", "was off") {
			continue
		}
		k := i - 1
		if m.inList(k, listLinks) || m.says(k, "was", "is") {
			k--
		}
		if m.reported(k) || m.is(k, cHint, "reported") && m.is(k-1, cHint, "told") {
			return true
		}
		if m.inList(k, listReports) && k > 0 && m.text(k) != "last" {
			k--
		}
		if m.text(k) == "last" && (m.is(k-1, cDeterminer, "") || m.is(k-1, cOwn, "")) {
			return true
		}
	}
	return false
}

// retold drops the readings that a message takes back by telling all of their places anew: "70 in
// 120 out, sorry 120 in 70 out".
func (m *message) retold() {
	for j := 1; j+1 < len(m.readings); j++ {
		first := m.readings[j].at
		cue := m.left(first, 3, true, func(k int) bool { return m.takesBack(k, k+1) })
		if cue < 0 || cue <= m.readings[j-1].at || m.readings[j].sent != m.readings[len(m.readings)-1].sent {
			continue
		}
		anew := func(r reading) bool {
			return len(r.points) == 1 && slices.ContainsFunc(m.readings[j:], func(o reading) bool { return slices.Equal(o.points, r.points) })
		}
		if slices.ContainsFunc(m.readings[:j], func(r reading) bool { return !anew(r) }) {
			return
		}
		for _, r := range m.readings[:j] {
			m.setRole(r.at, roleIgnored, "told anew")
		}
		m.readings = append(m.readings[:0], m.readings[j:]...)
		return
	}
}

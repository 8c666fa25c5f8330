package intents

import (
	"strings"

	"lazyhand/assess"
)

// Lists of the lexicon that these rules know.
var (
	listSetsRunning = listOf("sets running")
	listWhenever    = listOf("whenever")
)

// How far the talk of running or resting water reaches over the readings of a sentence.

// thenRan tells whether water was set running, by what an item tells, after a pressure was read
// and before another was: "68, then I ran the tub, 40".
func (m *message) thenRan(a mention) bool {
	if a.flow != assess.Flowing {
		return false
	}
	from := m.clauseStart(a.at)
	if !m.says(from-1, "and", "then", "y") && !m.says(from, "then", "luego") && !m.setsRunning(from) {
		return false
	}
	for k := from; k <= a.at; k++ {
		if m.setsRunning(k) {
			return m.left(from, 14, true, m.pressed) >= 0 && m.right(a.at, 14, true, m.pressed) >= 0
		}
	}
	return false
}

// timeAnew tells whether the flow at an item stands behind the word of time that leads to the next pressure, so
// that it is not told of the one before: "before I began 74, afterwards, no water moving, 75".
func (m *message) timeAnew(a mention) bool {
	if !m.kinds.meets(setOf(cAfter, cNow)) || m.right(a.at, 14, true, m.pressed) < 0 {
		return false
	}
	last := m.left(a.at, 14, true, m.pressed)
	return last >= 0 && m.anyItem(last+1, a.at, func(k int) bool {
		return m.meets(k, setOf(cAfter, cNow)) && (m.items[k-1].mark || m.says(k-1, "and", "y", "then"))
	})
}

// setsRunning tells whether by the word at item k somebody set water running.
func (m *message) setsRunning(k int) bool {
	if m.inList(k, listSetsRunning) {
		return true
	}
	verb, _, more := strings.Cut(m.text(k), " ")
	return more && oneOf(verb, "ran", "opened", "cracked", "abri", "abrimos")
}

// pressed tells whether item k is a pressure that was measured.
func (m *message) pressed(k int) bool { return m.numIs(k, roleReading) }

// saysElse tells whether the clause of the running water at item i tells of its colour, so that
// it says nothing of what follows: "only the tub runs rusty, 66 at the tub".
func (m *message) saysElse(i int) bool {
	seg := m.items[i].seg
	ours := func(k int) bool { return m.items[k].seg == seg }
	if m.kinds.has(cColor) && m.anyIn(m.items[i].sent, ours, setOf(cColor)) {
		return true
	}
	coloured := func(k int) bool { return ours(k) && m.isAny(k, cSym, "dark_water", "rusty_water") }
	return m.kinds.has(cSym) && m.anyIn(m.items[i].sent, coloured, setOf(cSym))
}

// bracketed returns the bracket that opens the clause of item i, -1 for none.
func (m *message) bracketed(i int) int {
	k := i - 1
	for k >= 0 && m.items[k].seg == m.items[i].seg {
		k--
	}
	if m.isMark(k, "(") {
		return k
	}
	return -1
}

// allOfIt tells whether the words before item i say that what follows holds of all that
// was told: "all of it with nothing running".
func (m *message) allOfIt(i int) bool {
	return m.left(i, 4, false, func(k int) bool { return m.is(k, cHint, "allofit") && m.items[k].seg == m.items[i].seg }) >= 0
}

// allSo tells whether the rest at item i is said of all readings: "all static", "all with
// nothing running", but not "all closed", which is said of the taps.
func (m *message) allSo(i int) bool {
	return m.text(i) == "all static" || m.text(i) == "static" && m.text(i-1) == "all" || m.says(i-1, "with", "w/", "w") && m.text(i-2) == "all"
}

// quantifiedLine tells whether sentence s, which holds no reading and heads none, speaks
// of all that was told before it: "all static, burner off".
func (m *message) quantifiedLine(s int) bool {
	if m.endsColon(s) {
		return false
	}
	for k := m.sents[s].from; k < m.sents[s].to; k++ {
		if m.is(k, cHint, "both") || strings.HasPrefix(m.text(k), "all ") {
			return true
		}
	}
	return false
}

// flowRow reads flows in a row for numbers in a row: "static/residual 70/50".
func (m *message) flowRow(all []mention) bool {
	if len(all) != len(m.readings) || len(all) < 2 || all[0].flow == all[1].flow {
		return false
	}
	for k := 1; k < len(all); k++ {
		if !m.onlyMarks(all[k-1].at, all[k].at) || !m.onlyMarks(m.readings[k-1].at, m.readings[k].at) {
			return false
		}
	}
	for k := range all {
		m.readings[k].Flow = all[k].flow
	}
	return true
}

// leads tells whether item i is the first word of its sentence.
func (m *message) leads(i int) bool {
	for k := m.sents[m.items[i].sent].from; k < i; k++ {
		if !m.items[k].mark && m.text(k) != "with" && m.text(k) != "w/" && !m.is(k, cFixture, "") && !(m.isNum(k) && m.items[k].value <= 6) {
			return false
		}
	}
	return true
}

// occasional tells whether the flow at i is only the occasion of a trouble: "surges
// whenever the sprinklers come on".
func (m *message) occasional(i int, f assess.Flow) bool {
	when := m.left(i, 6, false, func(k int) bool {
		if m.inList(k, listWhenever) {
			return true
		}
		return false
	})
	if when < 0 {
		return false
	}
	trouble := m.left(when, 9, false, func(k int) bool { return m.meets(k, troubles) || m.is(k, cFitting, "burst") })
	if trouble < 0 {
		return false
	}
	from, to := trouble, m.clauseEnd(i)
	if f == assess.Static { // a gauge that climbs with all shut was read so
		from, to = m.sents[m.items[i].sent].from, m.sents[m.items[i].sent].to
	}
	for k := from; k < to; k++ {
		if m.items[k].num != nil && m.items[k].role == roleReading {
			return false
		}
	}
	return true
}

// troubles are the classes of words that tell a symptom.
var troubles = setOf(cSym, cDischarge)

// howMany returns over how many readings a quantifier by item i reaches: "for the
// two inside" over two.
func (m *message) howMany(i int) int {
	if m.left(i, 7, true, m.isTwo) >= 0 || m.right(i, 7, true, m.isTwo) >= 0 {
		return 2
	}
	return 99
}

// saysWhere tells whether sentence s names the point of the readings that follow it:
// "creep test on the laundry tap, all fixtures closed".
func (m *message) saysWhere(s int) bool {
	lo, hi := m.readingsOf(s + 1)
	if lo >= hi || !m.readings[lo].inherit {
		return false
	}
	for k := m.sents[s].from; k < m.sents[s].to; k++ {
		if m.items[k].point != "" && m.items[k].point == m.readings[lo].points[0] {
			return true
		}
	}
	return false
}

// newHead tells whether a head line stands between a head line s and sentence to: what
// the first one said holds no longer. "Measured, nothing open: … Measured, heater on: …"
func (m *message) newHead(s, to int) bool {
	if !m.endsColon(s) {
		return false
	}
	for j := s + 1; j < to; j++ {
		if m.endsColon(j) {
			return true
		}
	}
	return false
}

// isTwo tells whether item k is the word two.
func (m *message) isTwo(k int) bool {
	return m.text(k) == "two" || m.text(k) == "dos" || m.items[k].num != nil && m.items[k].value == 2 && m.items[k].num.words
}

// heading tells whether sentence s stands over the lines that follow it: "AS FOUND,
// two taps open" after a blank line, or with a word of when.
func (m *message) heading(s int) bool {
	se := &m.sents[s]
	if m.text(se.to-1) != "\n" || m.isMark(se.to-2, ".") || s+1 >= len(m.sents) {
		return false
	}
	if lo, hi := m.readingsOf(s + 1); lo >= hi {
		return false
	}
	if se.from >= 2 && m.text(se.from-1) == "\n" && m.text(se.from-2) == "\n" {
		return true
	}
	return m.is(se.from, cBefore, "") || m.is(se.from, cAfter, "")
}

// headed tells whether a colon stands between two items.
func (m *message) headed(a, b int) bool {
	for k := a + 1; k < b; k++ {
		if m.items[k].mark && (m.text(k) == ":" || m.text(k) == "-") {
			return true
		}
	}
	return false
}

// restedWith returns the word that joins the resting water at item i, told together with the heater's state,
// to a list of taps, -1 for none: "rear 78 and side 79 with the heater off and everything shut".
func (m *message) restedWith(i int) int {
	state := func(k int) bool { return m.is(k, cState, "") || m.is(k, cOff, "") }
	first := m.left(i, 5, true, state)
	if first < 0 || !m.says(first+1, "and", "y", ",") {
		first = i
		if last := m.right(i, 6, true, state); last < 0 || m.left(last, last-i, true, func(k int) bool { return m.says(k, "and", "y", ",") }) < 0 {
			return -1 // "with every tap shut and the burner off"
		}
	}
	return m.left(first, 4, true, func(k int) bool { return m.is(k, cHint, "whiles") || m.says(k, "with", "w/", "w", "con") })
}

// flowSame gives a reading with a bare "same" behind it the flow of the one before: "lav
// 43, nothing running. Kitchen 48, same."
func (m *message) flowSame() {
	for k := 1; k < len(m.readings); k++ {
		r := &m.readings[k]
		if r.Flow == "" && m.isMark(r.at+1, ",") && m.text(r.at+2) == "same" && m.closes(r.at+2) {
			r.Flow = m.readings[k-1].Flow
		}
		if a := &m.readings[k-1]; a.Flow == assess.Static && r.Flow == "" && r.PSI >= a.PSI && m.thenTo(a.at, r.at) {
			r.Flow = a.Flow // "all shut 60 then 68 then 77"
		}
	}
	for k := len(m.readings) - 1; k > 0; k-- {
		if a, r := &m.readings[k-1], &m.readings[k]; r.Flow == assess.Static && a.Flow == "" && r.PSI >= a.PSI && m.thenTo(a.at, r.at) {
			a.Flow = r.Flow // "60 then 68 then 77 with everything shut"
		}
	}
}

// thenTo tells whether the number at item b is what a gauge showed next: "60, then 68".
func (m *message) thenTo(a, b int) bool {
	return (b == a+2 || b == a+3 && m.text(a+1) == ",") && m.says(b-1, "then", "luego")
}

// tellsDrop tells whether sentence s tells by how much the pressure falls: "loses about 15
// psi with the lawn going".
func (m *message) tellsDrop(s int) bool {
	for k := m.sents[s].from; k < m.sents[s].to; k++ {
		if m.items[k].num != nil && m.items[k].role == roleIgnored && m.items[k].why == "a difference" {
			return true
		}
	}
	return false
}

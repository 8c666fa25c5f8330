package intents

import "slices"

// Times, years, sizes and settings that the writer takes back within a message.

// correctSpan puts right a time to come that is taken back: "recheck in 2 weeks, no make it
// 3", "in a week, sorry 10 days".
func (m *message) correctSpan(i int) {
	j := m.nextNum(i)
	better := func(k int) bool { return m.says(k, "mejor", "better") }
	if j < 0 || j > i+6 || m.points(j) || !m.takesBack(i+1, j) && m.left(j, 3, false, better) < 0 {
		return
	}
	a, b := &m.items[i], &m.items[j]
	if b.unit == "" && m.closes(j) && b.value <= 90 && b.num.integer {
		b.unit = a.unit
	}
	if b.unit == "day" || b.unit == "week" || b.unit == "month" || b.unit == "year" {
		m.setRole(j, roleDuration, "put right")
		m.setRole(i, roleIgnored, "corrected")
	}
}

// correctFact voids a year, a size or a setting that is taken back: "prv 2010, no
// wait, tag says 2012". The right number takes over whatever it was said of.
func (m *message) correctFact(i int) {
	if p := m.prevNum(i); p >= 0 && m.items[p].role == m.items[i].role && i-p <= 4 &&
		(m.text(i-1) == "not" || m.text(i-2) == "not" && m.text(i-1) == "a") {
		m.setRole(i, roleIgnored, "denied") // "a 40, not a 50"
		return
	}
	for k := i + 1; k < len(m.items) && k <= i+8; k++ {
		if m.items[k].num == nil {
			continue
		}
		a, b := &m.items[i], &m.items[k]
		bare := b.role == roleIgnored && (b.unit == a.unit || b.unit == "" && a.role == roleAge) || b.role == roleReading && (b.unit == "" && a.role != roleYear || pressureUnit(b.unit) && setInPressure(a.role))
		if (a.role == b.role || bare) && !m.points(k) && (m.takesBack(i+1, k) || a.role == roleYear && (m.asksItself(i+1, k) || m.thenOK(i+1, k))) {
			b.role, b.inherits, b.takesOver = a.role, i, true
			b.owner = a.owner // "set the prv to 60, sorry 62"
			m.typoWithin(i, k)
			m.setRole(i, roleIgnored, "corrected")
		}
		return
	}
}

// thenOK tells whether the words between two years settle for the second: "heater 2009, ok so 2012".
func (m *message) thenOK(from, to int) bool {
	ok := false
	for k := from; k < to; k++ {
		ok = ok || m.says(k, "ok", "okay", "well", "actually", "bueno")
		if !m.items[k].mark && !m.says(k, "ok", "okay", "well", "actually", "bueno", "so", "then", "maybe", "its", "it is", "a", "no", "it", "it's", "entonces") {
			return false
		}
	}
	return ok
}

// typoWithin takes back the question about the last report when "typo" only puts item i right by
// item k: "front 57. typo, I meant 75".
func (m *message) typoWithin(i, k int) {
	m.asks = slices.DeleteFunc(m.asks, func(a asked) bool {
		return a.About == AskCorrect && i < a.at && a.at < k && m.text(a.at) == "typo" && !m.says(a.at+1, "in", "on")
	})
}

// setInPressure tells whether numbers of a role are pressures that are set, not measured.
func setInPressure(r role) bool {
	return r == roleSetting || r == roleCharge || r == roleTo || r == roleFrom
}

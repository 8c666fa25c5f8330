package intents

import "lazyhand/assess"

// Rows of pressures before the work and after it whose taps are told once: "as found fr/rr/kit 98/97/96, as
// left 62/61/60", "kitchen 119/59, tub 93/58 (before/after)".

// rowAgain gives a row of pressures without taps the taps of the row before it, in order, where a word of
// time sets the two off.
func (m *message) rowAgain() {
	if !m.kinds.has(cBefore) || !m.kinds.has(cAfter) {
		return
	}
	for first := 2; first < len(m.readings); {
		end := first + 1
		for end < len(m.readings) && m.inRow(end-1, end) {
			end++
		}
		if n := end - first; n > 1 && first >= n && m.timeLeads(first, end-1) && m.ownTaps(first-n, first) && m.noTaps(first, end) {
			for k := first; k < end; k++ {
				m.readings[k].points, m.readings[k].inherit = m.readings[k-n].points, true
			}
		}
		first = end
	}
}

// inRow tells whether nothing but a mark or "and" stands between two readings of one sentence.
func (m *message) inRow(a, b int) bool {
	x, y := &m.readings[a], &m.readings[b]
	return x.sent == y.sent && y.at == x.at+2 && (m.isMark(x.at+1, "/", ",", "-", "&") || m.says(x.at+1, "and", "y", "n"))
}

// timeLeads tells whether a word of time stands right before reading a, or right behind reading b.
func (m *message) timeLeads(a, b int) bool {
	k := m.readings[a].at - 1
	if m.isMark(k, ":", ",", "-", "=") {
		k--
	}
	return m.placesTime(k) && !m.pastTense(k) || m.placesTime(m.readings[b].at+1)
}

// ownTaps tells whether each of the readings from..to is told at a tap of its own.
func (m *message) ownTaps(from, to int) bool {
	for k := from; k < to; k++ {
		r := &m.readings[k]
		if len(r.points) != 1 || r.inherit || k > from && m.readings[k-1].points[0] == r.points[0] {
			return false
		}
	}
	return true
}

// noTaps tells whether none of the readings from..to has a tap of its own, and no tap stands between them.
func (m *message) noTaps(from, to int) bool {
	for k := from; k < to; k++ {
		if r := &m.readings[k]; len(r.points) > 0 && !r.inherit {
			return false
		}
	}
	last := m.readings[to-1].at + 1
	return last >= len(m.items) || m.items[last].point == ""
}

// goesOnRow tells whether the number at i goes on a row that a word of time opens, all numbers: "as left
// 62/61/60".
func (m *message) goesOnRow(i int) bool {
	if !m.kinds.has(cBefore) || !m.kinds.has(cAfter) || m.items[i].unit != "" {
		return false
	}
	k := i
	for k >= 2 && m.isMark(k-1, "/", ",") && m.numIs(k-2, roleReading) && !m.points(k-2) {
		k -= 2
	}
	if k == i {
		return false
	}
	if k--; m.isMark(k, ":", "-", "=") {
		k--
	}
	return m.placesTime(k) && !m.pastTense(k) && k == m.firstOf(m.items[i].sent)
}

// whenInRow gives the time of the first pressure of a row, which the word of time leads to, to those behind
// it at taps of their own: "before kitchen/tub 102/115".
func (m *message) whenInRow() {
	for k := 1; k < len(m.readings); k++ {
		a, b := &m.readings[k-1], &m.readings[k]
		if a.When != "" && b.When == "" && m.isMark(a.at+1, "/") && m.inRow(k-1, k) && !samePlace(a, b) {
			b.When = a.When
		}
	}
}

// pairsInTurn reads pairs of pressures, each at one tap, that "before/after" is told of once: "kitchen
// 119/59, tub 93/58 (before/after)".
func (m *message) pairsInTurn(worked bool) {
	if !worked || !m.kinds.has(cBefore) || !m.kinds.has(cAfter) {
		return
	}
	for i := 0; i+2 < len(m.items); i++ {
		if !m.is(i, cBefore, "") || !m.isMark(i+1, "/", "-", "&") && !m.says(i+1, "and", "y") || !m.is(i+2, cAfter, "") {
			continue
		}
		lo, hi := m.readingsOf(m.items[i].sent)
		if hi-lo < 4 || (hi-lo)%2 != 0 || !m.pairsAt(lo, hi) {
			continue
		}
		for k := lo; k < hi; k += 2 {
			m.readings[k].When, m.readings[k+1].When = assess.Before, assess.After
		}
	}
}

// pairsAt tells whether the readings lo..hi are pairs of one tap each, with a mark between the two.
func (m *message) pairsAt(lo, hi int) bool {
	for k := lo; k < hi; k += 2 {
		a, b := &m.readings[k], &m.readings[k+1]
		if b.at != a.at+2 || !m.isMark(a.at+1, "/", "-", ">") || !samePlace(a, b) {
			return false
		}
	}
	return true
}

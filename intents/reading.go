package intents

import "lazyhand/assess"

// Lists of the lexicon that these rules know.
var (
	listMovesTo         = listOf("moves to")
	listPartsReadings   = listOf("parts readings")
	listBeginsOwnClause = listOf("begins own clause")
)

// reading is a pressure on its way to a statement.
type reading struct {
	at       int // item of the number
	sent     int
	from, to int // the items that speak of it
	points   []string
	inherit  bool // the point was another reading's
	inHand   bool // the point is that of the reading before this message
	assess.Reading
}

// findReadings pairs the numbers that are readings with test points and finds
// which words speak of each.
func (m *message) findReadings() {
	m.pointSlips()
	for s := range m.sents {
		m.pair(s)
	}
	m.pointsAcross()
	m.rowAgain()
	m.retold()
	m.zones()
	m.peaks()
	m.reachedThen()
}

// statesOfReadings tells how the house stood at each reading; what is wrong with it is known by now.
func (m *message) statesOfReadings() {
	m.flows()
	m.heaters()
	m.sameGaugeThen()
}

// sameGaugeThen gives the point of the reading before it to one that names none and tells what runs or fires
// then, or is its peak: "rear bib 66, 48 with the sink wide open", "kitchen 58 heater off, 71 the burner is on".
func (m *message) sameGaugeThen() {
	for k := 1; k < len(m.readings); k++ {
		a, b := &m.readings[k-1], &m.readings[k]
		if len(b.points) > 0 || a.sent != b.sent || len(a.points) != 1 || a.points[0] == string(assess.Street) {
			continue
		}
		if b.Peak && !a.Peak && b.PSI > a.PSI || b.Flow == assess.Flowing && b.PSI < a.PSI || b.Flow == assess.Static && a.Flow == assess.Flowing && b.PSI > a.PSI || b.Heater != "" && a.Heater != "" && a.Heater != b.Heater {
			b.points, b.inherit = a.points, true
		}
	}
}

// zones cuts each sentence into the stretches that speak of each reading.
func (m *message) zones() {
	for k := range m.readings {
		r := &m.readings[k]
		s := &m.sents[r.sent]
		from, to := s.from, s.to
		if k > 0 && m.readings[k-1].sent == r.sent {
			from = m.split(m.readings[k-1].at, m.readings[k-1].to, r.from, r.at)
		}
		if k+1 < len(m.readings) && m.readings[k+1].sent == r.sent {
			n := &m.readings[k+1]
			to = m.split(r.at, r.to, n.from, n.at)
		}
		r.from, r.to = from, to
	}
}

// split finds where the talk of the reading at a ends and that of b begins.
func (m *message) split(a, aEnd, bFrom, b int) int {
	lo, hi := max(a+1, aEnd), min(bFrom, b)
	if hi < lo {
		lo = a + 1
		hi = max(hi, lo)
	}
	// "from 70 to 44 when I opened the tub": each number has its own side
	if b-a == 2 {
		if m.inList(a+1, listMovesTo) {
			return a + 1
		}
	}
	// "was 101 now 63": the word of time goes with what follows it
	if m.is(b-2, cHint, "needle") && m.is(b-2, cPeak, "") && m.is(b-1, cNow, "") {
		return b - 2 // "72, lazy hand sitting at 128"
	}
	if m.is(b-1, cNow, "") && !m.is(b+1, cNow, "") && !m.is(b+1, cBefore, "") && !m.is(b+1, cAfter, "") {
		return b - 1
	}
	// "stat 66 res 48 kitchen": each number has its word before it
	if k := m.leadWord(b); k > a && m.leadWord(a) >= 0 {
		return k
	}
	// "94 pk ovrnght 121 lzy hnd": the words of a peak lead to its number
	if k := m.leadingPeak(a, b); k > 0 {
		return k
	}
	// "static=70 residual=52": the word of a value goes with it
	if m.isMark(b-1, "=", ":") && b-2 > a && (m.flowTag(b-2) != "" || m.is(b-2, cPeak, "") || m.is(b-2, cNow, "")) {
		return b - 2
	}
	// the last separator whose clause has no word of its own before b
	for k := hi - 1; k >= lo; k-- {
		if m.isMark(k, ")") && !m.isMark(m.sents[m.items[a].sent].from, "(") {
			return k + 1 // "front bib: 55 (no flow) rear bib: 90 (hose running)"
		}
		if m.separates(k) {
			return m.clauseBefore(k, lo)
		}
	}
	// no separator: words between belong to the left number when its point
	// stands before it, to the right one otherwise
	if k := m.leadingTime(a, lo, hi); k >= 0 {
		return k
	}
	if bFrom < b && bFrom >= lo {
		return bFrom
	}
	if aEnd > a+1 {
		return max(lo, hi)
	}
	return b
}

// separates tells whether item k is a mark or a word between the talk of two readings. "60 with the
// tub open 52" has none.
func (m *message) separates(k int) bool {
	if !m.items[k].mark {
		return m.inList(k, listPartsReadings)
	}
	t := m.text(k)
	return oneOf(t, ",", "/", "(", "|") || t == "-" && (k == 0 || m.items[k].seg != m.items[k-1].seg) // not "post-flush 69"
}

// clauseBefore returns where the talk of the reading behind the separator at k begins: there, or
// with the clause before it where that leads on, "62, then with the tub open, 55".
func (m *message) clauseBefore(k, lo int) int {
	for j := k - 1; j >= lo && m.kinds.has(cAfter); j-- {
		if m.is(j, cAfter, "") && m.items[j-1].mark && m.inList(j, listPlainAfter) && (m.isMark(j+1, ",", ":") || m.says(j+1, "with", "w/")) {
			return j // "74 before I began, afterwards, no water moving, it's 74"
		}
	}
	for j := k - 1; m.items[k].mark && j > lo && !m.items[j].mark; j-- {
		if m.inList(j, listBeginsOwnClause) &&
			(m.items[j-1].mark || m.says(j-1, "and", "y")) {
			return j
		}
	}
	for j := k - 1; m.says(k, "and", "y") && j > lo && j >= k-5 && !m.items[j].mark; j-- {
		if m.is(j, cFlowing, "") && m.text(j-1) == "then" {
			return j - 1 // "got 66, then ran the tub and the same gauge fell to 39"
		}
	}
	return k
}

// leadWord returns the word of a state or a flow that leads to the number at i, with at
// most "pressure" or the like between; -1 for none.
func (m *message) leadWord(i int) int {
	k := i - 1
	for k >= 0 && k >= i-2 && (m.text(k) == "pressure" || m.text(k) == "psi" || m.text(k) == "reading" || m.isMark(k, ":", "=")) {
		k--
	}
	if k >= 0 && (m.is(k, cState, "") || m.flowTag(k) != "") {
		return k
	}
	return -1
}

// leadingPeak returns where words of a peak begin that stand right before the number at
// b and after that at a, which has its point; 0 for none.
func (m *message) leadingPeak(a, b int) int {
	k := b - 1
	for k > a && (m.is(k, cPeak, "") || m.highOfTwo(k) || m.text(k) == "at" || m.text(k) == "of" || m.text(k) == "was" || m.isMark(k, ":")) {
		k--
	}
	if k == a && b-a >= 2 && m.is(a+1, cPeak, "") && m.items[a+1].muted {
		return a + 1 // "black needle at 72 red at 128"
	}
	if k == a && b-a >= 2 && m.says(a-1, "low", "lo") {
		return a + 1 // "low 66 high 118"
	}
	if k != a || b-a < 2 || m.is(b+1, cNow, "") || m.items[max(a-1, 0)].role != roleTaken && m.items[max(a-1, 0)].point == "" {
		return 0
	}
	return a + 1
}

// abs returns a number without its sign.
func abs(n int) int {
	if n < 0 {
		return -n
	}
	return n
}

// leadingTime finds the word that puts the reading at hi after or before work where
// such words lead: "antes 95 después 60", "before rear 95 now rear 62". It returns
// -1 where they follow the numbers.
func (m *message) leadingTime(a, lo, hi int) int {
	time := func(k int) bool { return k >= 0 && (m.placesTime(k) || m.is(k, cNow, "")) }
	if !time(a-1) && !(time(a-2) && m.items[a-1].point != "") {
		return -1
	}
	for k := hi - 1; k >= lo && k >= hi-2; k-- {
		if time(k) && (k == hi-1 || m.items[hi-1].point != "") {
			return k
		}
	}
	return -1
}

// placesTime tells whether item i is a word that puts a reading before or after work.
func (m *message) placesTime(i int) bool { return m.is(i, cBefore, "") || m.is(i, cAfter, "") }

package intents

import "lazyhand/assess"

// Lists of the lexicon that these rules know.
var (
	listRelates      = listOf("relates")
	listJoinsTwo     = listOf("joins two")
	listBeforeSecond = listOf("before second")
	listPlaceJoins   = listOf("place joins")
	listTapReads     = listOf("tap reads")
	listBeforeTap    = listOf("before tap")
	listBeforeNumber = listOf("before number")
	listSaysOfTap    = listOf("says of tap")
)

// relates tells whether a place by the regulator at b describes the point at a:
// "the front bib, which is ahead of the prv".
func (m *message) relates(a, b int) bool {
	if p := m.items[b].point; p != string(assess.Street) && p != string(assess.AfterPRV) {
		return false
	}
	which := false
	for k := a + 1; k < b; k++ {
		switch {
		case m.inList(k, listRelates):
			which = true
		case m.says(k, ",", "is", "(", "one", "the"):
		default:
			return false
		}
	}
	return which
}

// joined tells whether only "and", "&" or "/" lies between two items.
func (m *message) joined(a, b int) bool {
	if b-a > 3 && !(b-a == 4 && m.is(a+1, cItem, "gauge")) || b-a < 2 {
		return false
	}
	found := false
	for k := a + 1; k < b; k++ {
		switch {
		case m.inList(k, listJoinsTwo):
			found = true
		case m.inList(k, listBeforeSecond):
		default:
			if m.items[k].role == roleTaken || m.is(k, cItem, "gauge") && k == a+1 && m.is(b+1, cItem, "gauge") {
				continue // "the kitchen gauge and the laundry gauge"
			}
			return false
		}
	}
	return found
}

// qualifies tells whether a point at b is joined to one at a by a preposition.
func (m *message) qualifies(a, b int) bool {
	for k := a + 1; k < b; k++ {
		switch {
		case m.inList(k, listPlaceJoins):
		default:
			return false
		}
	}
	return true
}

// pair matches points and numbers of a sentence at the least cost; only
// neighbours in the order told can go together.
func (m *message) pair(s int) {
	evs := m.sidesLast(m.events(s))
	if len(evs) == 0 {
		return
	}
	m.match(evs)
	first := len(m.readings)
	for k := range evs {
		if evs[k].num {
			m.readEvent(s, evs, k)
		}
	}
	for first > 0 && m.readings[first-1].sent == s {
		first--
	}
	m.sharePoints(evs, m.readings[first:])
}

// match gives events their neighbours, so that all together cost the least.
func (m *message) match(evs []event) {
	const alone, spare = 3.0, 1.5
	n := len(evs)
	best := make([]float64, n+1)
	take := make([]bool, n+1) // evs[i-2] and evs[i-1] go together
	for i := 1; i <= n; i++ {
		c := spare
		if evs[i-1].num {
			c = alone
		}
		best[i] = best[i-1] + c
		if i >= 2 && evs[i-1].num != evs[i-2].num {
			if c := best[i-2] + m.cost(&evs[i-2], &evs[i-1]); c < best[i] {
				best[i], take[i] = c, true
			}
		}
	}
	if m.pairedInOrder(evs, best[n]) {
		return
	}
	for i := n; i > 0; {
		if take[i] {
			evs[i-1].pair, evs[i-2].pair = i-2, i-1
			i -= 2
		} else {
			i--
		}
	}
}

// pairedInOrder gives each point the number behind it where a list of three or more alternates from first to
// last and hardly costs more so than at the least: "lav - 123 front bib - 62 rear - 132".
func (m *message) pairedInOrder(evs []event, least float64) bool {
	const margin = 2
	n := len(evs)
	if n < 6 || n%2 != 0 || evs[0].num {
		return false
	}
	c := 0.0
	for i := 0; i < n; i += 2 {
		if evs[i].num || !evs[i+1].num {
			return false
		}
		c += m.cost(&evs[i], &evs[i+1])
	}
	if c > least+margin {
		return false
	}
	for i := 0; i < n; i += 2 {
		evs[i].pair, evs[i+1].pair = i+1, i
	}
	return true
}

// readEvent writes a reading for each number of event k, at the points of its neighbour:
// "58 kitchen", "kitchen and tub 58 and 57".
func (m *message) readEvent(s int, evs []event, k int) {
	e := &evs[k]
	var points []string
	from, to := e.at, e.end
	if e.pair >= 0 {
		p := &evs[e.pair]
		points = p.points
		from, to = min(from, p.at), max(to, p.end)
	}
	for j, i := range e.nums {
		if m.repeats(i, points) {
			continue
		}
		r := reading{at: i, sent: s, from: from, to: to + 1, points: points}
		r.PSI = toPSI(m.items[i].value, m.items[i].unit)
		if len(points) > 1 && len(e.nums) == len(points) {
			r.points = points[j : j+1]
		}
		m.readings = append(m.readings, r)
	}
}

// sharePoints gives the readings of a sentence that have no point that of a neighbour:
// "kitchen 62, then 58".
func (m *message) sharePoints(evs []event, rs []reading) {
	spare, spares := -1, 0 // a point told with no number
	for k, e := range evs {
		if !e.num && e.pair < 0 && !m.items[e.at].weak {
			spare, spares = k, spares+1
		}
	}
	for k := range rs {
		r := &rs[k]
		if k == len(rs)-1 && len(r.points) > 0 && !r.inherit {
			m.bothThere(evs, rs)
		}
		if len(r.points) > 0 || !m.sharesPoint(r.at) && !m.laterBy(r.at) && !m.storeyOf(r.at) && !m.otherSide(r.at) {
			continue
		}
		switch {
		case k == 0 && spares == 1 && evs[spare].at < r.at && !m.items[evs[spare].at].site:
			r.points, r.inherit = evs[spare].points[:1], true
		case k > 0 && len(rs[k-1].points) > 0 && (m.sameGauge(rs[k-1].at, r.at) || m.laterBy(r.at)):
			last := rs[k-1].points
			r.points, r.inherit = last[len(last)-1:], true
		}
	}
	for k := len(rs) - 2; k >= 0; k-- {
		shares := m.sharesPoint(rs[k].at) && m.sameGauge(rs[k].at, rs[k+1].at) || m.oneSide(rs[k].at)
		if len(rs[k].points) == 0 && len(rs[k+1].points) == 1 && shares {
			rs[k].points, rs[k].inherit = rs[k+1].points, true
		}
	}
}

// sharesPoint tells whether the number at i may have its neighbour's point: a unit or a
// word says that it is a reading of its own, as water that runs or rests does: "rear bib 66, 48 hose running".
func (m *message) sharesPoint(i int) bool {
	return m.items[i].unit != "" || m.ledTo(i) || m.is(i+1, cFlowing, "") || m.is(i-1, cFlowing, "") ||
		m.is(i+1, cAfter, "") && m.closes(i+1) && m.leftOver(i, longestSentence, cBefore) // "122 before I turned the regulator down 65 after"
}

// laterBy tells whether the number at i opens its clause and is said to be shown an hour or so later: "58 at first, 71
// half an hour later".
func (m *message) laterBy(i int) bool {
	if i == 0 || !m.items[i-1].mark && !m.says(i-1, "then", "and", "but") {
		return false
	}
	k := i + 1
	for m.text(k) == "half" || m.is(k, cDeterminer, "") {
		k++
	}
	return m.is(k, cUnit, "hour") && m.is(k+1, cHint, "earlier") && m.closes(k+1)
}

// bothThere gives the point of the last reading to those before it that have none: "118 at
// six and 74 at two, both at the laundry".
func (m *message) bothThere(evs []event, rs []reading) {
	p := m.bothAt(evs, rs[len(rs)-1].at)
	for j := 0; p != "" && j < len(rs)-1; j++ {
		if len(rs[j].points) == 0 {
			rs[j].points, rs[j].inherit = []string{p}, true
		}
	}
}

// cost says how badly two neighbouring events go together.
func (m *message) cost(a, b *event) float64 {
	c := 0.1
	if b.num {
		c = 0
	}
	facts := m.onlyFacts(a.end, b.at)
	for k := a.end + 1; k < b.at; k++ {
		it := &m.items[k]
		t := m.text(k)
		switch {
		case it.mark && facts:
			c += 0.5
		case it.mark:
			switch t {
			case ",":
				c += 1.2
			case "-":
				if c += 1.4; m.toks[it.tok].glued && m.toks[m.items[k+1].tok].glued {
					c -= 1.6 // "88-rear 61-kit 60-tub"
				}
			case "/", "(", ")", "|":
				c += 1.4
			case ":", "=":
				if b.num {
					c -= 0.4
				} else {
					c += 1.5
				}
			}
		case t == "and" || t == "y" || t == "but" || t == "then" || t == "pero" || t == "while":
			c += 2
		case m.inList(k, listBeforeTap):
			if !b.num {
				c -= 0.4
			}
		case m.inList(k, listBeforeNumber):
			if b.num {
				c -= 0.4
			} else {
				c += 0.4
			}
		case m.is(k, cNow, "") || m.is(k, cAfter, "") || m.is(k, cBefore, ""):
			c += 0.2
		default:
			c += 0.15
		}
	}
	if c > 1 && m.kinds.meets(troubles) && m.separators(a.end, b.at) > 0 &&
		(!a.num && m.inTrouble(a.at) && !m.there(b) || a.num && m.inTrouble(b.at)) {
		c += 3.6 // "agua gris en la regadera, la aguja llegó a 139, ahorita 72, lavadora"
	} else if !a.num && c > 1 && (m.predicate(a.end+1) || m.inList(a.end+1, listLinks) && !m.isNum(a.end+2)) {
		c += 1.5 // "angle stop under the lav is damp, red needle climbed to 150, back hose bib"
	}
	if a.num && c > 1 {
		// "69, street is 124": the point leads to a number of its own
		if m.predicate(b.end + 1) {
			c += 1.5 // "86, shower won't shut all the way off"
		}
		if m.inList(b.end+1, listTapReads) {
			c += 1.5
		}
	}
	if !a.num && m.items[a.at].weak || !b.num && m.items[b.at].weak {
		if b.at-a.end > 4 {
			c += 2
		}
	}
	return c
}

// onlyFacts tells whether nothing but marks and several states and flows, each a word of its own, stands
// between two items: "78/static/idle/back spigot".
func (m *message) onlyFacts(a, b int) bool {
	facts := 0
	for k := a + 1; k < b; k++ {
		switch {
		case m.items[k].mark && m.text(k) != "\n":
		case m.meets(k, setOf(cState, cStatic, cFlowing)):
			facts++
		default:
			return false
		}
	}
	return facts > 1
}

// there tells whether a number is said to be of the place told before: "ahí leí 44".
func (m *message) there(e *event) bool {
	back := func(k int) bool { return m.says(k, "there", "ahi", "alli") }
	return m.left(e.at, 3, false, back) >= 0 || m.right(e.end, 2, false, back) >= 0
}

// inTrouble tells whether the clause of the test point at item i tells of a trouble there, and no
// pressure: "water's brown at the tub".
func (m *message) inTrouble(i int) bool {
	told := false
	for k := m.clauseStart(i); k < m.clauseEnd(i); k++ {
		it := &m.items[k]
		if it.num != nil && it.role == roleReading {
			return false
		}
		told = told || it.kinds.meets(troubles)
	}
	return told
}

// predicate tells whether the word at item k says something of the tap before it that is no
// pressure: "won't", "drips".
func (m *message) predicate(k int) bool {
	return m.inList(k, listSaysOfTap) || m.is(k, cDischarge, "") && m.is(k, cSym, "leak")
}

// measuring are the classes that tell one measuring from another.
var measuring = setOf(cNow, cAfter, cBefore, cStatic, cFlowing, cState, cPeak, cOn, cOff)

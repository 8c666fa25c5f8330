package intents

import (
	"strings"

	"lazyhand/assess"
)

// event is a test point or a reading's number within a sentence.
type event struct {
	at, end int
	num     bool
	points  []string
	nums    []int
	pair    int // index of the event it goes with, -1
}

// events lists the points and readings of a sentence in order; neighbours that
// are one thing are joined.
func (m *message) events(s int) []event {
	evs := m.scratch.events[:0]
	se := m.sents[s]
	for i := se.from; i < se.to; i++ {
		it := &m.items[i]
		if it.num != nil && it.role == roleReading {
			// "front and rear 80 and 82"
			if n := len(evs); n > 0 && evs[n-1].num && m.joined(evs[n-1].end, i) && n > 1 && len(evs[n-2].points) == len(evs[n-1].nums)+1 && len(evs[n-2].points) > 1 {
				evs[n-1].nums = append(evs[n-1].nums, i)
				evs[n-1].end = i
				continue
			}
			evs = append(evs, event{at: i, end: i, num: true, nums: m.scratch.number(i), pair: -1})
			continue
		}
		if i > 0 && it.num == nil && m.pointsBack(i) {
			if p := m.lastPoint(evs); p == "" && it.text == "there" {
				if q := m.placeNamed(i); q != "" {
					evs = append(evs, event{at: i, end: i, points: m.scratch.point(q), pair: -1})
					continue
				}
			}
			p := m.lastPoint(evs)
			if p == "" && it.text == "same" {
				p = m.earlierPoint(i)
			}
			if p != "" {
				evs = append(evs, event{at: i, end: i, points: m.scratch.point(p), pair: -1})
				continue
			}
		}
		if it.point == "" || it.role == roleTaken {
			continue
		}
		if n := len(evs); n > 0 && !evs[n-1].num {
			last := &evs[n-1]
			if m.joined(last.end, i) && !m.is(i+1, cSym, "") && !m.is(i+2, cSym, "") && !(n > 1 && evs[n-2].num && m.ownNumber(i) && (m.prepared(evs[n-2].end) || where(m.text(last.at)))) {
				if last.points[len(last.points)-1] != it.point {
					last.points = append(last.points, twoPoints(it.point)...)
				}
				last.end = i
				continue
			}
			if last.points[len(last.points)-1] == it.point && i-last.end <= 4 {
				last.end = i
				continue
			}
			if before := last.points[len(last.points)-1]; i == last.end+1 && before != it.point && (indoors(it.point) && indoors(before) || sided(it.point) && sided(before)) {
				last.points, last.end = append(last.points, it.point), i // "kitchen tub and laundry", "front rear and side"
				continue
			}
			// "front bib by the street": the later point only describes the first
			if i-last.end <= 3 && m.qualifies(last.end, i) || i-last.end <= 5 && m.relates(last.end, i) {
				if last.points[0] == string(assess.Bibb) {
					last.points[0] = it.point
				}
				last.end = i
				continue
			}
		}
		points := m.scratch.point(it.point)
		if strings.Contains(it.point, "+") {
			points = twoPoints(it.point)
		}
		evs = append(evs, event{at: i, end: i, points: points, pair: -1})
	}
	m.scratch.events = evs
	return m.inRows(evs)
}

// pointsBack tells whether item i stands for the place told last: "same with a tap open",
// "88 there".
func (m *message) pointsBack(i int) bool {
	switch m.text(i) {
	case "same", "misma", "mismo":
		return true
	case "there":
		return (m.isNum(i-1) || m.isNum(i-2) && m.items[i-1].unit == "") && m.text(i+1) != "is"
	}
	return false
}

// twoPoints parts a phrase that names two test points: "both sides of the prv".
func twoPoints(s string) []string { return strings.Split(s, "+") }

// where tells whether a place is told with its preposition: "108 out front".
func where(s string) bool {
	return strings.HasPrefix(s, "at ") || strings.HasPrefix(s, "out ") || strings.HasPrefix(s, "up ")
}

// ownNumber tells whether a number stands right behind the point at i: "94 at the meter
// and the front bib 93", "108 out front and the back is 59".
func (m *message) ownNumber(i int) bool {
	k := i + 1
	for k < len(m.items) && (m.items[k].role == roleTaken || k == i+1 && be(m.text(k))) {
		k++
	}
	return m.isNum(k)
}

// indoors tells whether a point is a tap of its own that describes no other.
func indoors(p string) bool {
	switch assess.TestPoint(p) {
	case assess.Kitchen, assess.Bath, assess.Laundry, assess.HeaterDrain:
		return true
	}
	return false
}

// sided tells whether a point is a bibb of a side of the house.
func sided(p string) bool { return strings.HasSuffix(p, "_bibb") }

// relates tells whether a place by the regulator at b describes the point at a:
// "the front bib, which is ahead of the prv".
func (m *message) relates(a, b int) bool {
	if p := m.items[b].point; p != string(assess.Street) && p != string(assess.AfterPRV) {
		return false
	}
	which := false
	for k := a + 1; k < b; k++ {
		switch m.text(k) {
		case "which", "thats", "that", "esta", "va", "queda":
			which = true
		case ",", "is", "(", "one", "the":
		default:
			return false
		}
	}
	return which
}

// joined tells whether only "and", "&" or "/" lies between two items.
func (m *message) joined(a, b int) bool {
	if b-a > 3 || b-a < 2 {
		return false
	}
	found := false
	for k := a + 1; k < b; k++ {
		switch m.text(k) {
		case "and", "y", "/", "n", "e", "plus", "=":
			found = true
		case "the", "la", "el", "both", "at", "en", "a", "an", "un", "una":
		default:
			if m.items[k].role == roleTaken {
				continue
			}
			return false
		}
	}
	return found
}

// qualifies tells whether a point at b is joined to one at a by a preposition.
func (m *message) qualifies(a, b int) bool {
	for k := a + 1; k < b; k++ {
		switch m.text(k) {
		case "of", "in", "on", "at", "by", "near", "the", "de", "del", "en", "la", "el", "off", "upstairs", "downstairs":
		default:
			return false
		}
	}
	return true
}

// pair matches points and numbers of a sentence at the least cost; only
// neighbours in the order told can go together.
func (m *message) pair(s int) {
	evs := m.events(s)
	if len(evs) == 0 {
		return
	}
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
	for i := n; i > 0; {
		if take[i] {
			evs[i-1].pair, evs[i-2].pair = i-2, i-1
			i -= 2
		} else {
			i--
		}
	}
	for k := range evs {
		e := &evs[k]
		if !e.num {
			continue
		}
		var pts []string
		ptFrom, ptTo := e.at, e.end
		if e.pair >= 0 {
			p := &evs[e.pair]
			pts = p.points
			ptFrom, ptTo = min(ptFrom, p.at), max(ptTo, p.end)
		}
		for j, i := range e.nums {
			if m.repeats(i, pts) {
				continue
			}
			r := reading{at: i, sent: s, from: ptFrom, to: ptTo + 1}
			r.PSI = toPSI(m.items[i].value, m.items[i].unit)
			switch {
			case len(pts) > 1 && len(e.nums) == len(pts):
				r.points = pts[j : j+1]
			default:
				r.points = pts
			}
			m.readings = append(m.readings, r)
		}
	}
	// numbers left without a point share that of a neighbour in the sentence
	first := len(m.readings)
	for first > 0 && m.readings[first-1].sent == s {
		first--
	}
	rs := m.readings[first:]
	var spares []event
	for _, e := range evs {
		if !e.num && e.pair < 0 && !m.items[e.at].weak {
			spares = append(spares, e)
		}
	}
	for k := range rs {
		if len(rs[k].points) > 0 && !rs[k].inherit {
			// "118 at six and 74 at two, both at the laundry"
			if p := m.bothAt(evs, rs[k].at); p != "" && k == len(rs)-1 {
				for j := range k {
					if len(rs[j].points) == 0 {
						rs[j].points, rs[j].inherit = []string{p}, true
					}
				}
			}
		}
		if len(rs[k].points) > 0 {
			continue
		}
		switch {
		case len(spares) == 1 && spares[0].at < rs[k].at && k == 0 && !m.items[spares[0].at].site:
			rs[k].points, rs[k].inherit = spares[0].points[:1], true
		case k > 0 && len(rs[k-1].points) > 0 && m.sameGauge(rs[k-1].at, rs[k].at):
			rs[k].points, rs[k].inherit = rs[k-1].points[len(rs[k-1].points)-1:], true
		}
	}
	for k := len(rs) - 2; k >= 0; k-- {
		if len(rs[k].points) == 0 && len(rs[k+1].points) == 1 && m.sameGauge(rs[k].at, rs[k+1].at) {
			rs[k].points, rs[k].inherit = rs[k+1].points, true
		}
	}
}

// cost says how badly two neighbouring events go together.
func (m *message) cost(a, b *event) float64 {
	c := 0.1
	if b.num {
		c = 0
	}
	for k := a.end + 1; k < b.at; k++ {
		it := &m.items[k]
		t := m.text(k)
		switch {
		case it.mark:
			switch t {
			case ",":
				c += 1.2
			case "/", "-", "(", ")":
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
		case oneOf(t, "at", "on", "en", "in", "from", "off", "n", "out of", "@", "del", "de", "for"):
			if !b.num {
				c -= 0.4
			}
		case oneOf(t, "is", "was", "reads", "read", "shows", "marca", "showed", "has", "es", "got", "gave", "had", "at", "reading", "rds", "registers", "da"):
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
	if a.num && c > 1 {
		// "69, street is 124": the point leads to a number of its own
		switch m.text(b.end + 1) {
		case "is", "was", "reads", "at", ":", "has", "shows", "=", "es", "marca", "a":
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

// lastPoint returns the test point told last: "the same gauge".
func (m *message) lastPoint(evs []event) string {
	for k := len(evs) - 1; k >= 0; k-- {
		if !evs[k].num {
			return evs[k].points[len(evs[k].points)-1]
		}
	}
	for k := len(m.readings) - 1; k >= 0; k-- {
		if n := len(m.readings[k].points); n > 0 {
			return m.readings[k].points[n-1]
		}
	}
	return ""
}

// repeats tells whether the number at i only says again what was said: "63, and
// it stays at 63", "80 is right".
func (m *message) repeats(i int, pts []string) bool {
	if len(pts) > 0 {
		return false
	}
	stays := m.left(i, 4, false, func(k int) bool {
		switch m.text(k) {
		case "twice", "again", "stays", "stayed", "stay", "stays at", "still", "holds", "held", "holding", "same", "se queda", "sigue", "remains", "queda":
			return true
		}
		return false
	}) >= 0
	right := m.right(i, 3, false, func(k int) bool {
		switch m.text(k) {
		case "right", "correct", "confirmed", "good number", "correcto":
			return true
		}
		return false
	}) >= 0
	if !stays && !right && !m.onlyAgain(i) || m.kinds.has(cBefore) && m.left(i, 8, true, func(k int) bool { return m.is(k, cAfter, "") && !m.is(k, cBefore, "") }) >= 0 {
		return false // "before I started 79 and when I was finished it still gave 79"
	}
	for _, r := range m.readings {
		if (r.sent == m.items[i].sent || r.sent == m.items[i].sent-1) && r.PSI == toPSI(m.items[i].value, m.items[i].unit) {
			return true
		}
	}
	return false
}

// onlyAgain tells whether the sentence of the number at i tells nothing but a number:
// "front 58. dyslexic today, 58".
func (m *message) onlyAgain(i int) bool {
	s := m.sents[m.items[i].sent]
	if s.to-s.from > 6 || m.items[i].unit != "" {
		return false
	}
	for k := s.from; k < s.to; k++ {
		it := &m.items[k]
		if k != i && (it.num != nil || it.point != "" || it.kinds.meets(measuring)) {
			return false
		}
	}
	return true
}

// measuring are the classes that tell one measuring from another.
var measuring = setOf(cNow, cAfter, cBefore, cStatic, cFlowing, cState, cPeak, cOn, cOff)

// bothAt returns the point after number item i that is told for all: "both at the laundry".
func (m *message) bothAt(evs []event, i int) string {
	for _, e := range evs {
		if e.num || e.at < i || len(e.points) != 1 {
			continue
		}
		for k := e.at - 1; k > i && k >= e.at-4; k-- {
			switch m.text(k) {
			case "both", "all", "ambas", "ambos", "todas", "todos", "las dos", "every", "dos", "either", "tres":
				return e.points[0]
			}
		}
	}
	return ""
}

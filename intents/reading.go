package intents

import (
	"strings"

	"lazyhand/assess"
)

// reading is a pressure on its way to a statement.
type reading struct {
	at       int // item of the number
	sent     int
	from, to int // the items that speak of it
	points   []string
	inherit  bool // the point was another reading's
	assess.Reading
}

// event is a test point or a reading's number within a sentence.
type event struct {
	at, end int
	num     bool
	points  []string
	nums    []int
	pair    int // index of the event it goes with, -1
}

// findReadings pairs the numbers that are readings with test points and finds
// what else is said of each.
func (m *message) findReadings() {
	for s := range m.sents {
		m.pair(s)
	}
	m.pointsAcross()
	m.zones()
	m.flows()
	m.heaters()
	m.peaks()
}

// events lists the points and readings of a sentence in order; neighbours that
// are one thing are joined.
func (m *message) events(s int) []event {
	var evs []event
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
			evs = append(evs, event{at: i, end: i, num: true, nums: []int{i}, pair: -1})
			continue
		}
		if (it.text == "same" || it.text == "there" && (m.isNum(i-1) || m.isNum(i-2) && m.items[i-1].unit == "") && m.text(i+1) != "is") && i > 0 {
			if p := m.lastPoint(evs); p == "" && it.text == "there" {
				if q := m.earlierPoint(i); q != "" {
					evs = append(evs, event{at: i, end: i, points: []string{q}, pair: -1})
					continue
				}
			}
			if p := m.lastPoint(evs); p != "" {
				evs = append(evs, event{at: i, end: i, points: []string{p}, pair: -1})
				continue
			}
		}
		if it.point == "" || it.role == roleTaken {
			continue
		}
		if n := len(evs); n > 0 && !evs[n-1].num {
			last := &evs[n-1]
			if m.joined(last.end, i) {
				if last.points[len(last.points)-1] != it.point {
					last.points = append(last.points, it.point)
				}
				last.end = i
				continue
			}
			if last.points[len(last.points)-1] == it.point && i-last.end <= 4 {
				last.end = i
				continue
			}
			// "front bib by the street": the later point only describes the first
			if i-last.end <= 3 && m.qualifies(last.end, i) {
				if last.points[0] == string(assess.Bibb) {
					last.points[0] = it.point
				}
				last.end = i
				continue
			}
		}
		evs = append(evs, event{at: i, end: i, points: []string{it.point}, pair: -1})
	}
	return evs
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
		case "the", "la", "el", "both", "at", "en":
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
		case t == "at" || t == "on" || t == "en" || t == "in" || t == "from" || t == "off" || t == "n" || t == "out of" || t == "@" || t == "del" || t == "de" || t == "for":
			if !b.num {
				c -= 0.4
			}
		case t == "is" || t == "was" || t == "reads" || t == "read" || t == "shows" || t == "marca" || t == "showed" || t == "has" || t == "es" || t == "got" || t == "gave" || t == "had" || t == "at" || t == "reading" || t == "rds" || t == "registers" || t == "da":
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

// pointsAcross gives readings that have no point one told in a sentence beside.
func (m *message) pointsAcross() {
	for k := range m.readings {
		r := &m.readings[k]
		if len(r.points) > 0 {
			continue
		}
		if it := &m.items[r.at]; it.takesOver {
			p := m.items[min(it.inherits+1, len(m.items)-1)].point
			if p == "" {
				p = m.earlierPoint(it.inherits)
			}
			if p != "" {
				r.points, r.inherit = []string{p}, true
				continue
			}
		}
		// a line before that only says where the gauge is
		if p := m.headPoint(r.sent); p != "" {
			r.points, r.inherit = []string{p}, true
			continue
		}
		if r.sent+1 < len(m.sents) {
			if p := m.lonePoint(r.sent + 1); p != "" {
				r.points, r.inherit = []string{p}, true
				continue
			}
		}
		if k > 0 && r.sent > 0 && m.continues(r.sent) && !m.houseNear(r.at) {
			pts := map[string]bool{}
			for _, q := range m.readings[:k] {
				if len(q.points) == 0 {
					pts["?"], pts["??"] = true, true
				}
				for _, p := range q.points {
					pts[p] = true
				}
			}
			if len(pts) == 1 {
				for p := range pts {
					r.points, r.inherit = []string{p}, true
				}
			}
		}
	}
}

// headPoint finds a point in the nearest sentences before s that hold no
// reading of their own.
func (m *message) headPoint(s int) string {
	for j := s - 1; j >= 0 && j >= s-6; j-- {
		has := false
		for _, r := range m.readings {
			if r.sent == j {
				has = true
			}
		}
		if has {
			// a line that took its point from the same head goes on with it
			p, all := "", true
			for _, r := range m.readings {
				if r.sent == j {
					if !r.inherit || len(r.points) != 1 {
						all = false
						break
					}
					p = r.points[0]
				}
			}
			if all && p != "" {
				return p
			}
			return ""
		}
		var pts []string
		for i := m.sents[j].from; i < m.sents[j].to; i++ {
			if p := m.items[i].point; p != "" && !m.items[i].weak && m.items[i].role != roleTaken {
				pts = append(pts, p)
			}
		}
		if len(pts) >= 1 && m.gaugeTalk(j) {
			return pts[0]
		}
		if len(pts) == 1 && m.sents[j].to-m.sents[j].from <= 4 {
			return pts[0]
		}
	}
	return ""
}

// gaugeTalk tells whether a sentence says where a gauge sits.
func (m *message) gaugeTalk(s int) bool {
	for i := m.sents[s].from; i < m.sents[s].to; i++ {
		switch m.text(i) {
		case "gauge", "gage", "guage", "my gauge", "test gauge", "readings", "reading", "lectura", "lecturas", "manometro", "test", "hooked", "hooked up", "static", "lockup", "creep test", "tested", "checked", "flow", "flow test", "prueba", "all", "puse", "left":
			return true
		}
	}
	return m.sents[s].header >= 0
}

// lonePoint finds the point of a sentence that is nothing else.
func (m *message) lonePoint(s int) string {
	p := ""
	words := 0
	for i := m.sents[s].from; i < m.sents[s].to; i++ {
		if m.items[i].mark && m.text(i) == "," && p != "" && words <= 6 {
			return p
		}
		if m.items[i].num != nil {
			return ""
		}
		if q := m.items[i].point; q != "" && m.items[i].role != roleTaken {
			if p != "" && p != q {
				return ""
			}
			p = q
			continue
		}
		if !m.items[i].mark && !m.items[i].site {
			words++
		}
	}
	if words <= 5 {
		return p
	}
	return ""
}

// continues tells whether a sentence goes on about the same gauge.
func (m *message) continues(s int) bool {
	for i := m.sents[s].from; i < m.sents[s].to; i++ {
		for _, c := range []class{cNow, cAfter, cBefore, cPeak, cState, cStatic, cFlowing} {
			if m.is(i, c, "") {
				return true
			}
		}
		switch m.text(i) {
		case "same", "it", "then", "misma", "mismo", "again", "luego", "still", "later":
			return true
		}
		if m.items[i].num != nil && (m.items[i].num.time || m.items[i].unit == "hour") {
			return true
		}
	}
	return false
}

// zones cuts each sentence into the stretches that speak of each reading.
func (m *message) zones() {
	for k := range m.readings {
		r := &m.readings[k]
		s := m.sents[r.sent]
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
	// the last separator whose clause has no word of its own before b
	for k := hi - 1; k >= lo; k-- {
		t := m.text(k)
		if m.items[k].mark && (t == "," || t == "/" || t == "(" || t == "-" || t == "|") || t == "and" || t == "then" || t == "but" || t == "y" || t == "so" || t == "pero" || t == "while" || t == "luego" {
			// "62, then with the tub open, 55": the clause before belongs to 55
			if m.items[k].mark && k > lo {
				for j := k - 1; j >= lo; j-- {
					u := m.text(j)
					if u == "then" || u == "with" || u == "w/" || u == "con" || u == "when" || u == "luego" || u == "after" || u == "cuando" {
						if j > lo && (m.items[j-1].mark || m.text(j-1) == "and" || m.text(j-1) == "y") {
							return j
						}
					}
					if m.items[j].mark {
						break
					}
				}
			}
			return k
		}
		if u := t; u == "with" || u == "w/" || u == "con" {
			// "60 with the tub open 52": belongs to what stands before unless at the end
			continue
		}
	}
	// no separator: words between belong to the left number when its point
	// stands before it, to the right one otherwise
	if bFrom < b && bFrom >= lo {
		return bFrom
	}
	if aEnd > a+1 {
		return max(lo, hi)
	}
	return b
}

// flowTag reads the running or resting of water at item i.
func (m *message) flowTag(i int) assess.Flow {
	switch {
	case m.is(i, cStatic, ""):
		return assess.Static
	case m.is(i, cFlowing, ""):
		if m.toilet(i) {
			return ""
		}
		if m.text(i) == "corriendo" || m.text(i) == "flowing" || m.text(i) == "running water" {
			if m.negLeft(i, 3) {
				return assess.Static
			}
		}
		if m.negLeft(i, 2) {
			return assess.Static
		}
		if m.text(i) == "gpm" {
			return ""
		}
		return assess.Flowing
	}
	// "nothing … running", "kitchen faucet wide open"
	it := &m.items[i]
	if m.toilet(i) {
		return ""
	}
	switch it.text {
	case "running", "open", "wide open", "abiertas", "abiertos", "prendidas", "on", "flowing", "drawing", "going", "opened", "cracked", "filling", "abierto", "abierta", "corriendo", "prendido", "prendida":
		if m.is(i-1, cItem, "heater") || m.is(i-2, cItem, "heater") || m.is(i-1, cBurner, "") || m.is(i-1, cItem, "recirc") || m.is(i-1, cItem, "prv") || m.is(i-2, cItem, "prv") {
			return ""
		}
		for k := i - 1; k >= 0 && k >= i-5 && m.items[k].sent == it.sent; k-- {
			t := m.text(k)
			if m.items[k].num != nil && m.items[k].value > 4 || m.items[k].mark && t != "(" {
				break
			}
			switch t {
			case "nothing", "no", "nada", "none", "without", "ninguna", "not", "isnt", "sin", "nobody", "no one", "nadie":
				if it.text == "on" && (i-k > 2 || t == "no" || m.text(i+1) == "it" || m.text(i+1) == "the" || m.text(i+1) == "that") && m.text(i-1) != "water" {
					return ""
				}
				return assess.Static
			}
			if m.is(k, cItem, "") || m.is(k, cNeg, "") {
				break
			}
			if (m.is(k, cFixture, "") || m.is(k, cPoint, "") || m.is(k, cBibb, "")) && it.text != "on" {
				return assess.Flowing
			}
			if it.text == "on" && i-k <= 2 && m.text(i+1) != "the" && (m.is(k, cFixture, "") || m.is(k, cPoint, "") || m.is(k, cBibb, "")) && m.items[k].point == "" {
				return assess.Flowing
			}
		}
		for k := i + 1; k < len(m.items) && k <= i+3 && (it.text == "opened" || it.text == "running"); k++ {
			if m.is(k, cFixture, "") || m.is(k, cPoint, "") || m.is(k, cBibb, "") {
				return assess.Flowing
			}
			if m.items[k].mark || m.items[k].num != nil && m.items[k].value > 4 {
				break
			}
		}
	case "off", "closed", "shut", "cerrado", "cerradas", "apagado", "cerrada", "out", "clsd", "turned off", "closed off", "apagados":
		for k := i - 1; k >= 0 && k >= i-5 && m.items[k].sent == it.sent; k-- {
			t := m.text(k)
			if m.items[k].num != nil || m.items[k].mark || m.is(k, cItem, "heater") || m.is(k, cBurner, "") {
				break
			}
			switch t {
			case "everything", "all", "every", "todo", "todas", "ll", "each", "todos":
				return assess.Static
			}
		}
	}
	return ""
}

func (m *message) negLeft(i, n int) bool {
	return m.left(i, n, false, func(k int) bool {
		switch m.text(k) {
		case "no", "not", "nothing", "nada", "sin", "without", "w/o", "isnt", "none", "zero", "ninguna", "never", "aint":
			return m.items[k].seg == m.items[i].seg
		}
		return false
	}) >= 0
}

// mention is a state told at an item.
type mention struct {
	at    int
	flow  assess.Flow
	state assess.HeaterState
}

// flows gives each reading the flow that its clause tells.
func (m *message) flows() {
	var all []mention
	for i := range m.items {
		if f := m.flowTag(i); f != "" {
			all = append(all, mention{at: i, flow: f})
		}
	}
	if len(all) == 0 || len(m.readings) == 0 {
		return
	}
	for k := range m.readings {
		r := &m.readings[k]
		best := -1
		for j, a := range all {
			if a.at >= r.from && a.at < r.to && (best < 0 || abs(a.at-r.at) < abs(all[best].at-r.at)) {
				best = j
			}
		}
		if best >= 0 {
			r.Flow = all[best].flow
		}
	}
	for _, a := range all {
		s := m.items[a.at].sent
		lo, hi := m.readingsOf(s)
		if lo < hi {
			m.flowWithin(a, lo, hi)
			continue
		}
		m.flowAcross(a, s)
	}
}

func abs(n int) int {
	if n < 0 {
		return -n
	}
	return n
}

// readingsOf returns the range of readings in a sentence.
func (m *message) readingsOf(s int) (lo, hi int) {
	lo = len(m.readings)
	for k := range m.readings {
		if m.readings[k].sent == s {
			if lo == len(m.readings) {
				lo = k
			}
			hi = k + 1
		}
	}
	return lo, hi
}

// quantified tells whether "all", "both" or the like stands by item i.
func (m *message) quantified(i int) bool {
	seg := m.items[i].seg
	for k := max(0, i-6); k < min(len(m.items), i+7); k++ {
		if m.items[k].sent != m.items[i].sent || m.items[k].seg != seg {
			continue
		}
		switch m.text(k) {
		case "both", "all", "each", "every", "either", "any", "todas", "todos", "ambas", "ambos", "throughout", "them", "las dos", "los dos", "three", "everywhere", "whole", "toda", "todo", "entire", "times", "dos", "tres", "two":
			return true
		}
		if m.items[k].num != nil && m.items[k].num.words && m.items[k].value <= 4 {
			return true
		}
	}
	return false
}

// flowWithin spreads a flow over the readings lo..hi of its own sentence.
func (m *message) flowWithin(a mention, lo, hi int) {
	quantified := m.quantified(a.at)
	first, last := &m.readings[lo], &m.readings[hi-1]
	seg := m.items[a.at].seg
	switch {
	case a.at < first.at && (m.items[first.at].seg != seg || m.headed(a.at, first.at)):
		// said first, once: it covers what follows, up to another
		for k := lo; k < hi; k++ {
			if m.readings[k].Flow == "" {
				m.readings[k].Flow = a.flow
			} else if m.readings[k].Flow != a.flow {
				break
			}
		}
	case a.at > last.at && m.items[first.at].seg == seg && m.onlyFlow(a.at):
		// said last of a list without pauses
		for k := lo; k < hi; k++ {
			m.readings[k].Flow = a.flow
		}
	case a.at > last.at && (quantified || m.items[last.at].seg != seg || hi-lo == 1):
		for k := hi - 1; k >= lo; k-- {
			if m.readings[k].Flow == "" || k == hi-1 {
				if m.items[m.readings[k].at].seg != seg || quantified || k == hi-1 {
					m.readings[k].Flow = a.flow
				}
			} else {
				break
			}
		}
	case quantified:
		for k := lo; k < hi; k++ {
			if m.readings[k].Flow == "" {
				m.readings[k].Flow = a.flow
			}
		}
	}
	// two points and one number are one clause
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

// flowAcross spreads a flow told in a sentence without readings.
func (m *message) flowAcross(a mention, s int) {
	forward := m.actionForm(a.at)
	// readings before and after
	before := -1
	for k := range m.readings {
		if m.readings[k].sent < s {
			before = k
		}
	}
	if before >= 0 && !forward {
		// both of a pair, or the last one
		n := 1
		if m.quantified(a.at) || m.closing(a.at) {
			n = 99
		}
		last := m.readings[before].sent
		for k := before; k >= 0 && n > 0; k-- {
			r := &m.readings[k]
			if r.Flow != "" {
				break
			}
			if n == 1 && r.sent != last {
				break
			}
			r.Flow = a.flow
		}
		return
	}
	for k := before + 1; k < len(m.readings); k++ {
		r := &m.readings[k]
		if r.Flow != "" && r.Flow != a.flow || m.flowBetween(a.at, r.at) {
			break
		}
		r.Flow = a.flow
	}
}

func (m *message) flowBetween(a, b int) bool {
	for k := a + 1; k < b; k++ {
		if f := m.flowTag(k); f != "" && f != m.flowTag(a) {
			return true
		}
	}
	return false
}

// actionForm tells whether the flow is told as a deed, which leads on to what follows.
func (m *message) actionForm(i int) bool {
	t := m.text(i)
	for _, p := range []string{"opened", "closed everything", "shut everything", "running the", "abri", "cerre", "cerramos", "shut it all", "run water", "closed it all"} {
		if len(t) >= len(p) && t[:len(p)] == p {
			return true
		}
	}
	s := m.sents[m.items[i].sent]
	for k := s.from; k < i; k++ {
		switch m.text(k) {
		case "then", "opened", "turned", "ran", "luego", "abri", "with", "now", "next", "open":
			return true
		}
	}
	if s.to-1 > i && m.text(s.to-1) == ":" {
		return true
	}
	return false
}

// closing tells whether the flow stands in a closing remark: "nothing open".
func (m *message) closing(i int) bool {
	s := m.items[i].sent
	for k := range m.readings {
		if m.readings[k].sent > s {
			return false
		}
	}
	return m.sents[s].to-m.sents[s].from <= 7
}

// heaterTag reads the heater's state at item i.
func (m *message) heaterTag(i int) assess.HeaterState {
	if m.items[i].tags == nil && m.text(i) != "fired" && m.text(i) != "hot" && m.text(i) != "heats" && m.text(i) != "fire" && m.text(i) != "fires" && m.text(i) != "quiet" && m.text(i) != "asleep" && m.text(i) != "tripped" && m.text(i) != "unplugged" && m.text(i) != "trabajando" && m.text(i) != "andando" {
		return ""
	}
	if strings.HasSuffix(m.text(i), "out") && m.left(i, 9, true, func(k int) bool {
		switch m.text(k) {
		case "took", "took the old", "pulled", "ripped", "hauled", "tore", "pull", "took out", "swapped", "saque":
			return true
		}
		return false
	}) >= 0 {
		return ""
	}
	if v, ok := m.val(i, cState); ok {
		switch m.text(i) {
		case "heating", "burning", "calentando", "prendido", "prendida", "encendido", "encendida", "firing", "lit", "recovering", "recovery", "quemando":
			if m.notNear(i) {
				return assess.Idle
			}
			if (m.text(i) == "prendido" || m.text(i) == "prendida" || m.text(i) == "encendido" || m.text(i) == "encendida" || m.text(i) == "lit") && !m.heaterNear(i) {
				return ""
			}
		case "satisfied", "calling", "standby", "stand by", "at rest", "not on", "gas is off", "between cycles", "on vacation", "heat on", "kicked on", "idle":
			if m.text(i) != "idle" && !m.heaterNear(i) {
				return ""
			}
		}
		return assess.HeaterState(v)
	}
	if m.isNum(i + 1) {
		if t := m.text(i); t == "on" || t == "open" || t == "running" {
			return "" // "the dial is on one fifty"
		}
	}
	if m.text(i) == "cold" && m.coldSpell(i) {
		return assess.Idle
	}
	if t := m.text(i); (t == "apagado" || t == "off") && m.isNum(i-1) && m.has(cState, "firing") {
		return assess.Idle
	}
	off, on := m.is(i, cOff, ""), m.is(i, cOn, "")
	switch m.text(i) {
	case "fired", "running", "hot", "heats", "fire", "fires", "kicks on", "kicked in", "jalando", "trabajando", "andando":
		on = on || true
	case "quiet", "dead cold", "unlit", "asleep", "tripped", "unplugged":
		off = true
	}
	if !off && !on {
		return ""
	}
	if !m.burnerNear(i) {
		return ""
	}
	if off || m.notNear(i) {
		return assess.Idle
	}
	return assess.Firing
}

// notNear tells whether the state at i is denied: "not heating", "wasn't heating at any moment".
func (m *message) notNear(i int) bool {
	return m.left(i, 4, false, func(k int) bool {
		switch m.text(k) {
		case "not", "no", "wasnt", "isnt", "never", "hasnt", "hadnt", "sin", "didnt", "doesnt", "without", "nunca", "arent", "werent", "aint", "tampoco", "nothing":
			return m.items[k].seg == m.items[i].seg || i-k <= 2
		}
		return false
	}) >= 0
}

func (m *message) heaterNear(i int) bool {
	ok := func(k int) bool {
		return m.is(k, cItem, "heater") || m.is(k, cBurner, "") || m.is(k, cFuel, "")
	}
	return m.left(i, 5, false, ok) >= 0 || m.right(i, 3, false, ok) >= 0
}

// burnerNear tells whether a heater or its burner stands close before the word at i.
func (m *message) burnerNear(i int) bool {
	for k := i - 1; k >= 0 && k >= i-8 && m.items[k].sent == m.items[i].sent; k-- {
		if m.is(k, cItem, "heater") || m.is(k, cBurner, "") {
			return true
		}
		// "heater 30 gal electric 2009, off": its facts lie between
		if m.is(k, cFuel, "") || m.text(k) == "," && m.factsBefore(k) || m.items[k].num != nil && (m.items[k].role == roleYear || m.items[k].role == roleSize || m.items[k].role == roleAge || m.items[k].role == roleTemp) {
			continue
		}
		if i-k > 5 {
			return false
		}
		if m.items[k].num != nil || m.items[k].mark && m.text(k) != ":" {
			return false
		}
		if m.is(k, cItem, "") || m.items[k].point != "" || m.is(k, cFixture, "") || m.is(k, cDid, "") {
			return false
		}
	}
	for k := i + 1; k < len(m.items) && k <= i+2; k++ {
		if m.is(k, cBurner, "") || m.is(k, cItem, "heater") {
			return m.is(i, cOff, "") && m.text(i) != "out"
		}
	}
	return false
}

// heaters gives each reading the heater's state: one told once goes on all.
func (m *message) heaters() {
	var all []mention
	for i := range m.items {
		st := m.heaterTag(i)
		if st == "" || m.stateDenied(i) {
			continue
		}
		// a correction leaves the last one
		if n := len(all); n > 0 && m.takesBack(all[n-1].at+1, i) {
			all = all[:n-1]
		}
		all = append(all, mention{at: i, state: st})
	}
	if len(all) == 0 {
		return
	}
	one := true
	for _, a := range all {
		if a.state != all[0].state {
			one = false
		}
	}
	if one {
		for k := range m.readings {
			m.readings[k].Heater = all[0].state
		}
		return
	}
	for k := range m.readings {
		r := &m.readings[k]
		best := -1
		for j, a := range all {
			if a.at >= r.from && a.at < r.to && (best < 0 || abs(a.at-r.at) < abs(all[best].at-r.at)) {
				best = j
			}
		}
		if best >= 0 {
			r.Heater = all[best].state
		}
	}
	for _, a := range all {
		s := m.items[a.at].sent
		lo, hi := m.readingsOf(s)
		if lo < hi {
			q := m.quantified(a.at)
			for k := hi - 1; k >= lo; k-- {
				r := &m.readings[k]
				if r.Heater != "" {
					continue
				}
				if q || a.at > r.at && m.items[a.at].seg != m.items[r.at].seg && m.noStateBetween(all, r.at, a.at) || a.at < r.at && m.noStateBetween(all, a.at, r.at) {
					r.Heater = a.state
				}
			}
			continue
		}
		// a line of its own: "both with the elements off"
		if m.quantified(a.at) && !m.actionForm(a.at) {
			for k := range m.readings {
				if r := &m.readings[k]; r.sent < s && r.Heater == "" {
					r.Heater = a.state
				}
			}
		}
	}
	// carry on from what was told last
	for k := range m.readings {
		r := &m.readings[k]
		if r.Heater != "" {
			continue
		}
		for _, a := range all {
			if a.at < r.at {
				r.Heater = a.state
			}
		}
		if r.Heater == "" {
			r.Heater = all[0].state
		}
	}
}

func (m *message) noStateBetween(all []mention, a, b int) bool {
	for _, x := range all {
		if x.at > a && x.at < b {
			return false
		}
	}
	return true
}

// stateDenied tells whether the heater was not looked at: "did not check the heater".
func (m *message) stateDenied(i int) bool { return m.items[i].role == roleTaken }

// peaks marks the highest value of a time.
func (m *message) peaks() {
	for i := range m.items {
		if !m.is(i, cPeak, "") {
			continue
		}
		t := m.text(i)
		if t == "max" || t == "maximum" || t == "maximo" || t == "maxima" {
			if m.is(i-1, cTarget, "") || m.text(i-1) == "code" || m.text(i+1) == "allowed" {
				continue
			}
		}
		if (t == "max" || t == "maximum" || t == "maximo" || t == "maxima") && (m.isNum(i-1) && m.items[i-1].role != roleReading || m.isNum(i+1) && m.items[i+1].role != roleReading) {
			continue
		}
		if p := m.text(i - 1); m.negLeft(i, 2) || p == "called" || p == "named" || p == "name" {
			continue
		}
		best := -1
		for k := range m.readings {
			r := &m.readings[k]
			if r.sent != m.items[i].sent {
				continue
			}
			if i >= r.from && i < r.to && (best < 0 || abs(i-r.at) < abs(i-m.readings[best].at)) {
				best = k
			}
		}
		if best >= 0 {
			if m.nowNear(best) && !(t == "lazy hand" || t == "peak" || t == "max") {
				continue
			}
			m.readings[best].Peak = true
			continue
		}
		lo, hi := m.readingsOf(m.items[i].sent)
		if lo < hi {
			continue
		}
		// "Lazy hand: next line"
		if lo, hi := m.readingsOf(m.items[i].sent + 1); hi-lo == 1 && lo < hi && m.sents[m.items[i].sent].to-m.sents[m.items[i].sent].from <= 4 {
			m.readings[lo].Peak = true
		}
	}
}

// nowNear tells whether a reading is told as the present one.
func (m *message) nowNear(k int) bool {
	r := &m.readings[k]
	for i := r.from; i < r.to; i++ {
		if m.is(i, cNow, "") {
			return true
		}
	}
	return false
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
		case "stays", "stayed", "stay", "stays at", "still", "holds", "held", "holding", "same", "se queda", "sigue", "remains", "queda":
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
	if !stays && !right {
		return false
	}
	for _, r := range m.readings {
		if (r.sent == m.items[i].sent || r.sent == m.items[i].sent-1) && r.PSI == toPSI(m.items[i].value, m.items[i].unit) {
			return true
		}
	}
	return false
}

// coldSpell tells whether "cold" is the heater's: "ninety cold, hundred and thirty lit".
func (m *message) coldSpell(i int) bool {
	switch m.text(i + 1) {
	case "water", "tap", "side", "line", "supply", "tub", "laundry", "faucet", "weather", "valve", "inlet":
		return false
	}
	if !m.has(cState, "firing") {
		return false
	}
	return m.isNum(i-1) || m.isNum(i-2) || m.left(i, 3, false, func(k int) bool { return false }) >= 0 || m.right(i, 4, false, func(k int) bool { return m.items[k].num != nil }) >= 0
}

// earlierPoint returns the last point named before item i: "43 there".
func (m *message) earlierPoint(i int) string {
	for k := i - 1; k >= 0; k-- {
		if p := m.items[k].point; p != "" && !m.items[k].weak && m.items[k].role != roleTaken {
			return p
		}
	}
	return ""
}

// sameGauge tells whether two numbers of a sentence are of one gauge: a state or
// a time differs between them, or nothing at all is said of the second.
func (m *message) sameGauge(a, b int) bool {
	se := m.sents[m.items[a].sent]
	for k := b - 4; k <= b+4 && k < se.to; k++ {
		if k <= a {
			continue
		}
		switch m.text(k) {
		case "house", "in the house", "casa", "inside", "adentro", "indoors", "system", "sys":
			return false
		}
	}
	for k := max(se.from, a-6); k < min(se.to, b+7); k++ {
		for _, c := range []class{cNow, cAfter, cBefore, cPeak, cState, cStatic, cFlowing, cOn, cOff, cBurner} {
			if m.is(k, c, "") {
				return true
			}
		}
		if m.items[k].num != nil && (m.items[k].num.time || m.items[k].unit == "hour") {
			return true
		}
		switch m.text(k) {
		case "then", "later", "again", "same", "luego", "once", "when", "with", "while", "cuando", "con", "today", "still", "down to", "up to":
			return true
		}
	}
	return b-a <= 2
}

// onlyFlow tells whether the flow at item i is the only one of its sentence.
func (m *message) onlyFlow(i int) bool {
	se := m.sents[m.items[i].sent]
	for k := se.from; k < se.to; k++ {
		if k != i && m.flowTag(k) != "" {
			return false
		}
	}
	return true
}

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

// factsBefore tells whether a heater, or a fact of one, stands right before item k.
func (m *message) factsBefore(k int) bool {
	if k == 0 {
		return false
	}
	j := k - 1
	return m.is(j, cItem, "heater") || m.is(j, cFuel, "") || m.items[j].num != nil && (m.items[j].role == roleYear || m.items[j].role == roleSize || m.items[j].role == roleAge || m.items[j].role == roleTemp)
}

// houseNear tells whether a number is told as the house's, at no point of its own.
func (m *message) houseNear(i int) bool {
	for k := i - 3; k <= i+3; k++ {
		if k < 0 || k >= len(m.items) || m.items[k].sent != m.items[i].sent {
			continue
		}
		switch m.text(k) {
		case "house", "in the house", "casa", "inside", "adentro", "indoors":
			return true
		}
	}
	return false
}

package intents

import "lazyhand/assess"

// Lists of the lexicon that these rules know.
var (
	listSameGauge = listOf("same gauge")
	listInHouse   = listOf("in house")
	listThenAgain = listOf("then again")
	listHotOrCold = listOf("hot or cold")
)

// pointsAcross gives readings that have no point one told in a sentence beside.
func (m *message) pointsAcross() {
	for k := range m.readings {
		r := &m.readings[k]
		if len(r.points) > 0 {
			continue
		}
		if it := &m.items[r.at]; it.takesOver {
			p := m.items[min(it.inherits+1, len(m.items)-1)].point
			if p == "" && it.inherits > 0 {
				p = m.items[it.inherits-1].point
			}
			for k := it.inherits + 2; p == "" && k <= it.inherits+4 && k < r.at && m.items[k].seg == m.items[it.inherits].seg; k++ {
				p = m.items[k].point // "78 at the tub. wait no. 87."
			}
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
		if p := m.pointOfPair(k); p != "" {
			r.points, r.inherit = []string{p}, true
			continue
		}
		if p := m.quotedPoint(); p != "" {
			r.points, r.inherit = []string{p}, true
			continue
		}
		if p := m.toldLater(k); p != "" {
			r.points, r.inherit = []string{p}, true
			continue
		}
		if k > 0 && r.sent > 0 && (m.continues(r.sent) || m.gaugeWent(r.at) || m.turnedThen(r.at)) && !m.houseNear(r.at) {
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

// pointOfPair finds the point of reading k behind the next one, where two sentences tell the two states of
// one gauge and only the second says where: "firing: 108; idle: 57, kitchen".
func (m *message) pointOfPair(k int) string {
	if k+1 >= len(m.readings) {
		return ""
	}
	a, b := &m.readings[k], &m.readings[k+1]
	if b.sent != a.sent+1 || len(b.points) != 1 || k > 0 && m.readings[k-1].sent == a.sent || k+2 < len(m.readings) && m.readings[k+2].sent == b.sent {
		return ""
	}
	for i := m.sents[a.sent].from; i < b.at; i++ {
		if m.items[i].point != "" && m.items[i].role != roleTaken {
			return ""
		}
	}
	if m.statesDiffer(a.sent, b.sent) {
		return b.points[0]
	}
	return ""
}

// statesDiffer tells whether sentences a and b tell the two states of the heater or of the water.
func (m *message) statesDiffer(a, b int) bool {
	state := func(s int) (flow assess.Flow, heater assess.HeaterState) {
		for i := m.sents[s].from; i < m.sents[s].to; i++ {
			if f := m.flowTag(i); f != "" {
				flow = f
			}
			if h := m.heaterTag(i); h != "" {
				heater = h
			}
		}
		return flow, heater
	}
	af, ah := state(a)
	bf, bh := state(b)
	if m.sentenceIs(a, cPeak, "") && (m.sentenceIs(b, cNow, "") || m.sentenceIs(b, cHint, "daytime")) {
		return true // "overnight high 105. this morning 49, meter"
	}
	return af != "" && bf != "" && af != bf || ah != "" && bh != "" && ah != bh
}

// toldLater finds the point of reading k behind it: one that a later sentence tells for
// all, "static 66. flowing 50. both at the front bib", or that of the present value
// which follows the highest one, "max needle 156. current needle 81, on the drain cock".
func (m *message) toldLater(k int) string {
	s := m.readings[k].sent
	if k+1 < len(m.readings) {
		n := &m.readings[k+1]
		if n.sent <= s+2 && (m.sentenceIs(s, cPeak, "") && m.sentenceIs(n.sent, cNow, "") || n.sent == s+1 && m.setOff(s, n.sent)) {
			if len(n.points) == 1 {
				return n.points[0]
			}
			if len(n.points) == 0 && n.sent+1 < len(m.sents) {
				return m.lonePoint(n.sent + 1) // "max 133 / now 74 / gauge on front bib"
			}
		}
	}
	series := m.inSeries(m.readings[k].at)
	for j := s + 2; j < len(m.sents) && j <= s+6; j++ {
		if p := m.lonePoint(j); p != "" {
			if series {
				return p // "0 min - 60 / 5 min - 66 / kitchen, all off"
			}
			for i := m.sents[j].from; i < m.sents[j].to; i++ {
				if m.is(i, cHint, "all") {
					return p
				}
			}
			return ""
		}
	}
	return ""
}

// setOff tells whether two sentences tell of one gauge before and after the work, or of water at rest and
// running: "pre: 102. post: 60. rear bib."
func (m *message) setOff(a, b int) bool {
	if m.sents[a].numbers != 1 || m.sents[b].numbers != 1 {
		return false
	}
	return m.sentenceIs(a, cBefore, "") && m.sentenceIs(b, cAfter, "") || m.sentenceIs(a, cStatic, "") && m.sentenceIs(b, cFlowing, "") ||
		m.sentenceIs(a, cFlowing, "") && m.sentenceIs(b, cStatic, "")
}

// timeSpent tells whether sentence s only says how long somebody was on a thing, and the next has one number, which may
// be what that costs: "45 min on the kitchen faucet. 115".
func (m *message) timeSpent(s int) bool {
	first := m.sents[s].from
	return m.isNum(first) && m.items[first].unit == "hour" && m.text(first+1) == "on" && s+1 < len(m.sents) && m.sents[s+1].numbers == 1
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
		if m.timeSpent(j) {
			return ""
		}
		var pts []string
		for i := m.sents[j].from; i < m.sents[j].to; i++ {
			if p := m.items[i].point; p != "" && m.items[i].role != roleTaken && (!m.changedPart(i) && !(p == string(assess.HeaterDrain) && m.sentenceIs(j, cMaterial, "")) || m.sentenceSays(s, "it", "there", "ahi")) && (!m.items[i].weak || m.weakPointCounts(j, i)) {
				if n := len(pts); n == 0 || pts[n-1] != p || m.items[i-1].point != p { // "test port right after the prv" is one
					pts = append(pts, p)
				}
			}
		}
		if len(pts) >= 1 && m.gaugeTalk(j) {
			return m.pointOfGauge(j, pts)
		}
		if len(pts) == 1 && j == s-1 && m.readAtIt(s) && !m.sentenceIs(j, cItem, "") {
			return pts[0]
		}
		if len(pts) == 1 && (!m.tellsTrouble(j) || j == s-1 && m.text(m.sents[s].from) == "there") &&
			(m.sents[j].to-m.sents[j].from <= 4 || m.headWords(j) <= 3 || m.sentenceIs(j, cRetract, "") || m.sentenceIs(j, cHint, "reported") || m.text(m.sents[s].from) == "there" ||
				j == s-1 && m.onlyNumber(s)) {
			return pts[0]
		}
	}
	return ""
}

// readAtIt tells whether sentence s tells a pressure at the tap that was spoken of: "80 on it after", "62 at it".
func (m *message) readAtIt(s int) bool {
	for i := m.sents[s].from; i+2 < m.sents[s].to; i++ {
		if m.pressed(i) && m.says(i+1, "on", "at", "off", "from", "out of", "en") && m.says(i+2, "it", "that", "that one", "there", "esa", "ella") {
			return true
		}
	}
	return false
}

// headWords counts the words of sentence j besides its house and the state of heater and water:
// "640 Cantle Ct test port past the PRV, elements off, nothing running".
func (m *message) headWords(j int) int {
	n := 0
	for i := m.sents[j].from; i < m.sents[j].to; i++ {
		if it := &m.items[i]; !it.mark && !it.site && !it.kinds.meets(setOf(cState, cStatic, cFlowing)) && it.role != roleTaken && !m.says(i, "for", "any", "of", "these", "all", "each", "them", "those") {
			n++
		}
	}
	return n
}

// tellsTrouble tells whether sentence j tells of a trouble and of no pressure, so that its test
// point is that of the trouble: "The kitchen faucet shrieks." One that climbs is read there.
func (m *message) tellsTrouble(j int) bool {
	for i := m.sents[j].from; i < m.sents[j].to; i++ {
		if m.is(i, cSym, "") && !m.is(i, cSym, "creep") || m.is(i, cCond, "") {
			return true
		}
	}
	return false
}

// pointOfGauge returns which of the points of sentence j the gauge is on: the first that is told
// behind it, as in "barely any water in the kitchen, left the gauge on the side hb".
func (m *message) pointOfGauge(j int, pts []string) string {
	gauged := false
	for i := m.sents[j].from; i < m.sents[j].to; i++ {
		if it := &m.items[i]; gauged && it.point != "" && it.role != roleTaken && !it.weak {
			return it.point
		}
		gauged = gauged || m.is(i, cGauged, "") || m.is(i, cItem, "gauge")
	}
	return pts[0]
}

// weakPointCounts tells whether a word like "back" at item i of sentence j names its test
// point with no number beside it: "gauge is on the back", "points: front and back", "Back.".
func (m *message) weakPointCounts(j, i int) bool {
	s := &m.sents[j]
	return m.sentenceIs(j, cGauged, "") || m.watchedAt(i) || s.header >= 0 && s.header < i || s.to-s.from <= 2 || m.text(i+1) == "one" && s.to-s.from <= 4
}

// onlyNumber tells whether sentence s is a number and no more: "… found the back bib, it
// was under a bush. 85."
func (m *message) onlyNumber(s int) bool {
	for i := m.sents[s].from; i < m.sents[s].to; i++ {
		it := &m.items[i]
		if m.isMark(i, ",") && m.isNum(i-1) {
			other := func(k int) bool { return m.items[k].point != "" || m.items[k].num != nil }
			return m.right(i, 30, true, other) < 0 // "85, no recirc"
		}
		if !it.mark && it.num == nil && !it.site {
			return false
		}
	}
	return true
}

// gaugeTalk tells whether a sentence says where a gauge sits.
func (m *message) gaugeTalk(s int) bool {
	for i := m.sents[s].from; i < m.sents[s].to; i++ {
		if m.is(i, cGauged, "") || m.is(i, cItem, "gauge") || m.text(i) == "lazy hand" || m.watchedAt(i) {
			return true
		}
	}
	return m.sents[s].header >= 0
}

// watchedAt tells whether a gauge was watched for a time at the test point of item i: "half an hour on the
// kitchen tap".
func (m *message) watchedAt(i int) bool {
	if m.items[i].point == "" || m.items[i].role == roleTaken {
		return false
	}
	k := i - 1
	if m.is(k, cDeterminer, "") {
		k--
	}
	switch {
	case beginsWith(m.text(i), "on ", "at ", "en "):
		k++ // "on the back" is one item
	case !m.says(k, "on", "at", "en", "off"):
		return false
	}
	return m.isNum(k-1) && m.items[k-1].unit == "hour" || m.is(k-1, cUnit, "hour")
}

// troubled are classes of words whose place is no test point of a pressure told before them.
var troubled = setOf(cSym, cItem, cDischarge, cColor)

// lonePoint finds the point of a sentence that is nothing else: neither the place of a trouble nor that
// of a thing, "there's a drip under the lav", "tiene check en el medidor".
func (m *message) lonePoint(s int) string {
	p := ""
	words := 0
	for i := m.sents[s].from; i < m.sents[s].to; i++ {
		if m.items[i].mark && m.text(i) == "," && p != "" && words <= 6 {
			return p
		}
		if p != "" && m.is(i, cHint, "whiles") && m.sentenceIs(s, cGauged, "") {
			break // "It was taken at the side spigot while the heater was recovering"
		}
		if m.items[i].point == "" && m.meets(i, troubled) && !m.is(i, cSym, "creep") && !m.is(i, cItem, "gauge") {
			return ""
		}
		if n := m.items[i].num; n != nil {
			if n.time || m.items[i].unit == "hour" || m.items[i].role == roleDate {
				continue // "Gauge was on the rear bib since 5 pm"
			}
			return ""
		}
		if q := m.items[i].point; q != "" && m.items[i].role != roleTaken && !m.changedPart(i) {
			if p != "" && p != q || m.tellsOfPoint(i) {
				return ""
			}
			p = q
			continue
		}
		if p != "" && (m.saysWhen(i) || m.says(i, "with", "w")) && m.left(i, 9, true, func(k int) bool { return m.is(k, cGauged, "") || m.inList(k, listShows) }) >= 0 {
			break // "read at the kitchen sink while the heater was heating"
		}
		if !m.items[i].mark && !m.items[i].site {
			words++
		}
	}
	if words <= 5 || words <= 9 && m.sentenceIs(s, cGauged, "") {
		return p
	}
	return ""
}

// tellsOfPoint tells whether the clause of the test point at item i tells of a trouble or a thing there,
// not of where a gauge sat: "the lavatory tap whistles", "no check valve at the meter".
func (m *message) tellsOfPoint(i int) bool {
	seg := m.items[i].seg
	other := func(k int) bool {
		return m.items[k].seg == seg && (m.is(k, cSym, "") || m.is(k, cItem, "") && !m.is(k, cItem, "gauge") && k != i)
	}
	return m.anyIn(m.items[i].sent, other, setOf(cSym, cItem))
}

// continues tells whether a sentence goes on about the same gauge.
func (m *message) continues(s int) bool {
	for i := m.sents[s].from; i < m.sents[s].to; i++ {
		for _, c := range []class{cNow, cAfter, cBefore, cPeak, cState, cStatic, cFlowing} {
			if m.is(i, c, "") {
				return true
			}
		}
		if m.is(i, cHint, "daytime") || m.says(i, "noon", "midnight", "mediodia") {
			return true // "8am: 74. Noon: 76."
		}
		if m.is(i, cOff, "") && m.heaterTag(i) != "" {
			return true // "82, heater on. off: 66"
		}
		if m.is(i, cHint, "cold") && m.coldSpell(i) {
			return true // "laundry 94 with the elements on; cold, 70"
		}
		if m.inList(i, listSameGauge) {
			return true
		}
		if m.items[i].num != nil && (m.items[i].num.time || m.items[i].unit == "hour") {
			return true
		}
	}
	return false
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

// placeNamed returns the last test point named before item i, also one that was
// named for its trouble: "kitchen faucet drips, 65 there".
func (m *message) placeNamed(i int) string {
	if p := m.earlierPoint(i); p != "" {
		return p
	}
	for k := i - 1; k >= 0; k-- {
		if v, ok := m.val(k, cPoint); ok && m.items[k].role != roleTaken {
			return v
		}
	}
	return ""
}

// ofSameGauge are the classes of words that tell two readings of one gauge apart.
var ofSameGauge = setOf(cNow, cAfter, cBefore, cPeak, cState, cStatic, cFlowing, cOn, cOff, cBurner)

// sameGauge tells whether two numbers of a sentence are of one gauge: a state or
// a time differs between them, or nothing at all is said of the second.
func (m *message) sameGauge(a, b int) bool {
	if m.highOfTwo(a-1) || m.highOfTwo(b-1) || m.turnedThen(b) {
		return true // "washer box low 66, high 118"
	}
	se := &m.sents[m.items[a].sent]
	for k := b - 4; k <= b+4 && k < se.to; k++ {
		if k <= a || m.items[k].seg != m.items[b].seg && k > b {
			continue
		}
		if m.inList(k, listInHouse) {
			return false
		}
	}
	for k := a + 1; k < b; k++ {
		if m.text(k) == "it" {
			return true // "sits at 72 all day, at night it creeps to 105"
		}
	}
	for k := max(se.from, a-6); k < min(se.to, b+7); k++ {
		if m.items[k].kinds.meets(ofSameGauge) {
			return true
		}
		if m.typed(k) == "res" || m.typed(k) == "fl" {
			return true // "kitchen stat 70 res 52"
		}
		if m.items[k].num != nil && (m.items[k].num.time || m.items[k].unit == "hour") {
			return true
		}
		if m.is(k, cHint, "daytime") {
			return true
		}
		switch {
		case m.text(k) == "had":
			if m.isNum(k + 1) {
				return true // "front 60, had 118"
			}
		case m.inList(k, listThenAgain):
			return true
		}
	}
	return b-a <= 2 || m.leadsTo(a, b) || m.inSeries(b) || m.storeyOf(a) && m.storeyOf(b) || m.otherSide(b)
}

// otherSide tells whether the hot or the cold side stands right before the number at i, the other
// one having been told before at the same tap: "hot side at laundry 70, cold side 68".
func (m *message) otherSide(i int) bool {
	hot := func(k int) bool { return m.inList(k, listHotOrCold) }
	return hot(i-1) && m.left(i-1, longestSentence, true, hot) >= 0
}

// oneSide tells whether the hot or the cold side stands right before the number at i, and the other right
// before the next: "hot 66 cold 68 at the laundry box".
func (m *message) oneSide(i int) bool {
	n := m.nextNum(i)
	if n < 0 {
		return false
	}
	before := n - 1
	if m.items[before].mark {
		before--
	}
	return m.inList(i-1, listHotOrCold) && m.inList(before, listHotOrCold) && m.text(i-1) != m.text(before) && before > i
}

// storeyOf tells whether the storey stands right before the number at i, so that its tap is told
// once for all: "kitchens: first floor 71, second floor 66", "tubs: upstairs 58, downstairs 66".
func (m *message) storeyOf(i int) bool {
	return m.inList(i-1, listStorey) && m.ordered(i-1) || m.inList(i-1, listStories)
}

// houseNear tells whether a number is told as the house's, at no point of its own.
func (m *message) houseNear(i int) bool {
	for k := i - 3; k <= i+3; k++ {
		if k < 0 || k >= len(m.items) || m.items[k].sent != m.items[i].sent {
			continue
		}
		if m.inList(k, listInHouse) {
			return true
		}
	}
	return false
}

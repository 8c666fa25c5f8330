package intents

import (
	"slices"
	"strings"

	"lazyhand/assess"
)

// Lists of the lexicon that these rules know.
var (
	listCameThere  = listOf("came there")
	listEachOfThem = listOf("each of them")
	listThenOpened = listOf("then opened")
	listCountsBack = listOf("counts back")
	listItsNow     = listOf("its now")
	listRowHeads   = listOf("row heads")
)

// mention is a state told at an item.
type mention struct {
	at    int
	flow  assess.Flow
	state assess.HeaterState
}

// flows gives each reading the flow that its clause tells.
func (m *message) flows() {
	if !m.holdsKey(keyFlow) {
		return
	}
	var room [8]mention
	all := room[:0]
	for i := range m.items {
		if !m.begins(i, keyFlow) {
			continue
		}
		if f := m.flowTag(i); f != "" && !m.occasional(i, f) && !m.flowDoubted(i) && !(f == assess.Flowing && m.foundOn(i)) {
			all = append(all, mention{at: i, flow: f})
		}
	}
	if len(all) == 0 || len(m.readings) == 0 {
		return
	}
	all = m.flowsPutRight(all)
	if m.flowRow(all) {
		return
	}
	if m.inTurns(all) {
		for k := range all {
			m.readings[k].Flow = all[k].flow
		}
		return
	}
	for k := range m.readings {
		r := &m.readings[k]
		at := func(j int) int {
			if a := &all[j]; a.at > r.at && (m.thenRan(*a) || m.timeAnew(*a)) {
				return -1
			}
			if a := &all[j]; a.flow != assess.Flowing || m.items[a.at].seg == m.items[r.at].seg || !m.saysElse(a.at) {
				return a.at
			}
			return -1
		}
		if best := r.nearest(len(all), at); best >= 0 {
			r.Flow = all[best].flow
		}
	}
	m.flowSame()
	for _, a := range all {
		s := m.items[a.at].sent
		lo, hi := m.readingsOf(s)
		if lo < hi {
			m.flowWithin(a, lo, hi)
			continue
		}
		m.flowAcross(a, s)
	}
	m.closedThem(all)
	m.ranAndFell(all)
}

// flowsPutRight drops what was told of the water where the opposite is told behind it with a word that takes
// it back, and no reading between: "laundry 70 nothing running.. sorry the tub WAS running".
func (m *message) flowsPutRight(all []mention) []mention {
	if !m.kinds.has(cRetract) {
		return all
	}
	for k := 1; k < len(all); k++ {
		a, b := &all[k-1], &all[k]
		back := func(j int) bool { return m.is(j, cRetract, "") }
		numbers := m.pressed
		if a.flow == b.flow || m.items[b.at].sent > m.items[a.at].sent+1 || !m.anyItem(a.at, b.at, back) || m.anyItem(a.at, b.at, numbers) {
			continue
		}
		a.flow = b.flow
		return slices.Delete(all, k, k+1)
	}
	return all
}

// anyItem tells whether one of the items between a and b is as asked.
func (m *message) anyItem(a, b int, ok func(k int) bool) bool {
	for k := a + 1; k < b; k++ {
		if ok(k) {
			return true
		}
	}
	return false
}

// ranAndFell gives running water told between two pressures of a gauge to the second, where words of falling
// lead from it to that: "laundry 59 with two taps going it drops to 47".
func (m *message) ranAndFell(all []mention) {
	for k := 1; k < len(m.readings); k++ {
		a, b := &m.readings[k-1], &m.readings[k]
		before := func(f mention) bool { return f.flow == assess.Flowing && f.at < a.at && m.items[f.at].sent == a.sent }
		if b.Flow == assess.Static || a.sent != b.sent || !fellTo(a, b) {
			continue
		}
		if led := slices.ContainsFunc(all, before); a.Flow == assess.Flowing && led {
			if m.fellFrom(a, b) {
				a.Flow, b.Flow = "", assess.Flowing // "opened the tub and the kitchen dropped from 68 to 51"
			}
			continue
		}
		if a.Flow != assess.Flowing && b.Flow != "" {
			continue
		}
		between := func(f mention) bool {
			return f.flow == assess.Flowing && f.at > a.at && f.at < b.at && m.items[f.at].seg == m.items[b.at].seg &&
				m.right(f.at, b.at-f.at-1, false, func(j int) bool { return m.is(j, cHint, "moves") || m.inList(j, listWentTo) || m.inList(j, listItsNow) }) >= 0
		}
		if slices.ContainsFunc(all, between) {
			if b.Flow = assess.Flowing; a.Flow == assess.Flowing {
				a.Flow = ""
			}
		}
	}
}

// inTurns tells whether each reading has a mention of its own, all before theirs or all behind them in
// turn, and those differ: "static: curb 105 flowing: curb 80", "curb 105 / static - curb 80 / hose running".
func (m *message) inTurns(all []mention) bool {
	n := len(all)
	if n < 2 || n != len(m.readings) {
		return false
	}
	leads, trails := m.items[all[0].at].sent == m.readings[0].sent, true
	for k, a := range all {
		r := &m.readings[k]
		if k > 0 && (a.flow == all[k-1].flow && a.state == all[k-1].state || r.sent > m.readings[k-1].sent+1) {
			return false
		}
		leads = leads && a.at < r.at && (k == 0 || a.at > m.readings[k-1].at)
		trails = trails && a.at > r.at && (k == 0 || r.at > all[k-1].at) && m.items[a.at].sent == r.sent && !m.leadsOnward(a)
	}
	return leads || trails
}

// leadsOnward tells whether what a mention tells came to be behind the reading before it, so that it is told
// of the next: "68, then I ran the tub, 40", "72 kitchen, fired the heater, 96".
func (m *message) leadsOnward(a mention) bool {
	from := m.clauseStart(a.at)
	begins := func(k int) bool { return m.inList(k, listBeginsOwnClause) && !m.says(k, "with", "w/", "con") }
	return m.is(a.at, cTurns, "") || m.thenRan(a) || m.actionForm(a.at) || begins(from) || begins(from-1)
}

// foundOn tells whether water that is "on" at item i is the house's supply, found so: "water was on when I
// got there".
func (m *message) foundOn(i int) bool {
	if t := m.text(i); !strings.HasSuffix(t, " on") && !strings.HasSuffix(t, "abierta") && t != "on" && !m.is(i+1, cOn, "") {
		return false
	}
	seg := m.items[i].seg
	found := m.left(i, 3, false, func(k int) bool { return (m.is(k, cHint, "found") || m.text(k) == "found") && m.items[k].seg == seg })
	came := m.right(i, 5, false, func(k int) bool { return m.inList(k, listCameThere) })
	return found >= 0 || came >= 0
}

var closedThemGate = onlyWith(cHint, "closesthem")

// closedThem gives rest to what is read after the taps that ran were shut: "kitchen 44 with the shower
// going, closed em up and that same tap's at 73".
func (m *message) closedThem(all []mention) {
	if m.shut(closedThemGate) {
		return
	}
	for i := range m.items {
		ran := func(a mention) bool { return a.flow == assess.Flowing && a.at < i }
		if !m.is(i, cHint, "closesthem") || !slices.ContainsFunc(all, ran) {
			continue
		}
		for k := range m.readings {
			if r := &m.readings[k]; r.at > i && r.at <= i+14 && !slices.ContainsFunc(all, func(a mention) bool { return a.flow == assess.Flowing && a.at > i && a.at < r.to }) {
				r.Flow = assess.Static
			}
		}
	}
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
		if m.is(k+1, cFixture, "") || m.is(k+1, cBibb, "") || m.is(k+1, cFlowing, "") && k+1 == i {
			continue // "opened two taps", "with three faucets open" count no readings
		}
		if m.inList(k, listEachOfThem) {
			return true
		}
		if n := m.items[k].num; n != nil && n.words && m.items[k].value <= 4 && m.items[k].unit != "other" {
			return true
		}
	}
	return false
}

// tapWithList tells whether the "with" at item i stands behind a tap whose pressure follows the taps that
// run: "kitchen w/ the hose plus two showers: 38".
func (m *message) tapWithList(i int) bool {
	if !m.pointAt(i-1) || !m.says(i, "with", "w/", "w", "con") {
		return false
	}
	k, open := i+1, 0
	for ; m.meets(k, taps) || m.smallCount(k) || m.inList(k, listAmongTaps) || m.is(k, cDeterminer, "") || m.is(k, cPlace, ""); k++ {
		if m.meets(k, taps) || m.isNum(k) && m.items[k].unit == "other" {
			open++ // "2 showers"
		}
	}
	if m.isMark(k, ":", "=", ",", "-") {
		k++
	}
	return open > 0 && m.isNum(k) && m.items[k].value >= leastPSI && m.items[k].role != roleIgnored
}

// smallCount tells whether item k counts taps.
func (m *message) smallCount(k int) bool {
	return m.isNum(k) && m.items[k].unit == "other" && m.items[k].value <= 6
}

// withList tells whether only taps follow the "with" at item i, which stands behind a
// number: "44 with hose and tub".
func (m *message) withList(i int) bool {
	if m.tapWithList(i) {
		return true
	}
	n := i - 1
	if m.is(n, cPoint, "") && !m.is(n, cBibb, "") {
		n-- // "48 kitchen w/ shower"
	}
	if t := m.text(i); t != "with" && t != "w/" && t != "w" && t != "con" || !m.isNum(n) || m.items[n].role == roleIgnored {
		return false // "lost 15 psi with the tub"
	}
	open, run := 0, false
	for k := i + 1; k < len(m.items) && !m.items[k].mark; k++ {
		switch {
		case open > 0 && (m.is(k, cFlowing, "") || m.inList(k, listOpen)):
			run = true // "61 with the tub and kitchen wide open"
		case m.meets(k, taps), m.smallCount(k):
			open++ // "48 w 2 showers"
		case m.text(k) == "and" || m.text(k) == "y" || m.is(k, cDeterminer, "") || m.text(k) == "both" || m.is(k, cPlace, ""):
		default:
			return false
		}
	}
	return run && open > 1 || open > 0 && n < i-1 || open > 0 && m.left(i, 12, true, func(k int) bool { return m.items[k].point != "" }) >= 0
}

// flowAcross spreads a flow told in a sentence without readings.
func (m *message) flowAcross(a mention, s int) {
	if m.toldOfSign(a) && !m.rowFollows(s) {
		return // "kitchen 69 / shut everything 20 min, no creep": another test
	}
	if a.flow == assess.Flowing && (m.sentenceIs(s, cColor, "") || m.saysElse(a.at)) {
		return // "Ran the tub, yes gray." tells of the water, not of the gauge
	}
	if a.flow == assess.Flowing && m.tellsDrop(s) || m.sentenceSays(s, "spinning", "spins", "turning") {
		return // "Meter was spinning with the house shut." tells of a leak
	}
	forward := m.actionForm(a.at) || m.heading(s) || m.saysWhere(s)
	all := m.sentenceSays(s, "readings", "numbers", "lecturas") && !m.endsColon(s) // "Readings one by one with all else closed."
	forward = forward && !all && !m.countsBack(s)
	// readings before and after
	before := -1
	for k := range m.readings {
		if m.readings[k].sent < s {
			before = k
		}
	}
	if before >= 0 && (!forward || before+1 == len(m.readings)) {
		m.flowOver(a, before, all)
		return
	}
	for k := before + 1; k < len(m.readings); k++ {
		r := &m.readings[k]
		if r.Flow != "" && r.Flow != a.flow || m.flowBetween(a.at, r.at) || m.newHead(s, r.sent) {
			break
		}
		r.Flow = a.flow
	}
}

// flowOver gives a flow told in a sentence of its own to the readings before it, of which the last is number
// last: running water to that one alone, unless it counts them; rest, which is the whole house's, to all that
// were read since the work.
func (m *message) flowOver(a mention, last int, all bool) {
	n, counted := 1, all || m.quantified(a.at) || m.closing(a.at)
	if counted || a.flow == assess.Static {
		n = m.howMany(a.at)
	}
	for k := last; k >= 0 && n > 0 && m.readings[k].Flow == ""; k-- {
		if !counted && m.workedBetween(m.readings[k].at, m.readings[last].at) {
			return
		}
		m.readings[k].Flow = a.flow
		n--
	}
}

// toldOfSign tells whether the flow of a sentence without readings is told of a trouble that was
// looked for or complained of, so that it says nothing of the gauge elsewhere: "needle climbs with
// every tap shut", "no surging with two taps on", "it knocks when the washer fills".
func (m *message) toldOfSign(a mention) bool {
	of := &m.items[a.at]
	for k := range m.symptoms {
		switch x := &m.symptoms[k]; {
		case m.items[x.at].sent != of.sent:
		case m.items[x.at].seg == of.seg, showsInFlow(x.Symptom.Symptom):
			return true
		}
	}
	se := &m.sents[of.sent]
	for k := se.from; k < se.to; k++ {
		if m.isAny(k, cSym, "creep", "hammer", "no_water") {
			return true
		}
		if m.items[k].seg == of.seg && (m.is(k, cSym, "") || a.flow == assess.Flowing && k < a.at && m.inList(k, listWhenever)) {
			return true
		}
	}
	return false
}

// showsInFlow tells whether a trouble is looked for by running water or by shutting it off.
func showsInFlow(name assess.SymptomName) bool {
	switch name {
	case assess.Creep, assess.Hammer, assess.NoWater, assess.Swings, assess.DarkWater, assess.RustyWater:
		return true
	}
	return false
}

// rowFollows tells whether what one gauge showed in turn follows sentence s at once, rising: "everything
// shut and it climbs. 62 at first, then 75".
func (m *message) rowFollows(s int) bool {
	first := slices.IndexFunc(m.readings, func(r reading) bool { return r.sent > s })
	if first < 0 || first+1 == len(m.readings) {
		return false
	}
	if next := m.readings[first].sent; next > s+2 || next == s+2 && m.lonePoint(s+1) == "" && !m.headsRow(s+1) {
		return false // but "everything shut and it climbs. it's on the kitchen tap. 58, then 67"
	}
	a, b := &m.readings[first], &m.readings[first+1]
	return a.PSI <= b.PSI && (b.inherit || len(a.points) == 0 || len(b.points) == 0 || a.points[0] == b.points[0])
}

// headsRow tells whether sentence s holds no more than the heads of a row: "time   psi".
func (m *message) headsRow(s int) bool {
	for k := m.sents[s].from; k < m.sents[s].to; k++ {
		if !m.items[k].mark && !m.is(k, cUnit, "") && !m.inList(k, listRowHeads) {
			return false
		}
	}
	return true
}

// countsBack tells whether sentence s begins by counting the readings told before it: "all three with
// the house shut".
func (m *message) countsBack(s int) bool {
	first := m.firstOf(s)
	return m.inList(first, listCountsBack) && !m.endsColon(s)
}

// flowBetween tells whether another flow than that at item a is told before item b.
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
	if beginsWith(m.text(i), "opened", "closed everything", "shut everything", "running the", "abri", "cerre", "cerramos",
		"shut it all", "run water", "closed it all") {
		return true
	}
	s := &m.sents[m.items[i].sent]
	for k := s.from; k < i; k++ {
		if m.inList(k, listThenOpened) {
			return true
		}
	}
	return s.to-1 > i && m.text(s.to-1) == ":"
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

// onlyFlow tells whether the flow at item i is the only one of its sentence.
func (m *message) onlyFlow(i int) bool {
	se := &m.sents[m.items[i].sent]
	for k := se.from; k < se.to; k++ {
		if k != i && m.flowTag(k) != "" {
			return false
		}
	}
	return true
}

// nearest returns which of n mentions inside the reading's own words stands
// closest to its number, -1 for none; at tells the item of each.
func (r *reading) nearest(n int, at func(int) int) int {
	best := -1
	for j := range n {
		if i := at(j); i >= r.from && i < r.to && (best < 0 || abs(i-r.at) < abs(at(best)-r.at)) {
			best = j
		}
	}
	return best
}

// typed returns the word at item i as it was typed, before shorthand was spelt out.
func (m *message) typed(i int) string {
	if i < 0 || m.items[i].n != 1 {
		return ""
	}
	return m.toks[m.items[i].tok].text
}

// readingsEnd tells whether no reading follows sentence s.
func (m *message) readingsEnd(s int) bool {
	return len(m.readings) == 0 || m.readings[len(m.readings)-1].sent < s
}

// taps are the classes of what water runs at.
var taps = setOf(cFixture, cPoint, cBibb)

package intents

import "strings"

// Lists of the lexicon that these rules know.
var (
	listDialledAt   = listOf("dialled at")
	listMovesDial   = listOf("moves dial")
	listWhereHeater = listOf("where a heater is")
	listDialNow     = listOf("dial now")
	listCelsius     = listOf("celsius")
	listHotTaps     = listOf("hot taps")
	listKeepsAt     = listOf("keeps at")
)

const oldDial = "old setting of the heater"

// dialGate is that of a heater and its dial.
var dialGate = gateOf(opener{
	classes: setOf(cState, cFuel), items: []string{"heater", "tank"}, words: []string{"hot water"}, values: map[class][]string{cPart: {"thermostat"}},
})

// dialled reads the thermostat of a heater where no degrees are said: "heater on
// 120", "turned the heater down from 140 to 120". The old setting is left out.
func (m *message) dialled(i int) (role, string, bool) {
	it := &m.items[i]
	if m.kinds.has(cPart) && it.unit == "" && it.within(20, 100) && m.says(i+1, "on", "en") && m.rightTag(i, 4, cPart, "thermostat") >= 0 &&
		m.sentenceIs(it.sent, cItem, "prv") && !m.heaterIn(it.sent) && !m.pointInClause(i) && m.verbLeft(i, 9, "set") == nil {
		return roleSetting, "on the regulator's dial", true // "PRV from 2014, 55 on the dial"
	}
	if it.unit != "" || !it.within(85, 180) || !it.num.integer || m.shut(dialGate) && len(m.verbs) == 0 && !m.gave(roleTemp) {
		return 0, "", false
	}
	prev, round := m.text(i-1), int(it.value)%5 == 0
	switch {
	case m.is(i-1, cState, "firing") && strings.HasSuffix(prev, " on") || prev == "on" && m.is(i-2, cItem, "heater"):
		if !round || !it.within(105, 160) || m.pointInClause(i) {
			return 0, "", false
		}
		m.unsay(i - 1)
		m.say(i-1, "heater") // "gas water heater on 115": the fuel is told of it
		return roleTemp, "heater on", true
	case i-1 == m.sents[it.sent].from && strings.HasPrefix(prev, "left ") && m.carried(it.sent) == "heater" && it.within(105, 150):
		return roleTemp, "the heater left at", true // "Replaced heater. Left it at 120."
	case m.dialOnHeater(i):
		return roleTemp, "the heater's thermostat", true
	case m.dialWas(i) || m.dialHadBeen(i):
		return roleIgnored, oldDial, true
	case m.prevNum(i) >= 0 && m.dialWas(m.prevNum(i)):
		return roleTemp, "thermostat put to", true
	case m.says(i+1, "on", "en", "per") && m.rightTag(i, 4, cPart, "thermostat") >= 0 && it.within(100, 160) &&
		m.heaterIn(it.sent) && !m.pointInClause(i):
		return roleTemp, "on the dial", true // "heater flush went fine, 120 on the dial"
	}
	if round && it.within(110, 160) && m.closesWell(i) && !m.pointInClause(i) {
		switch {
		case m.heaterStandsAt(i):
			return roleTemp, "the heater is at", true
		case it.value <= 150 && m.lastOfHeater(i):
			return roleTemp, "the last of the heater's facts", true
		case m.keptAt(i):
			return roleTemp, "what the heater is kept at", true
		}
	}
	topic, at := m.dialTopic(i)
	if topic == "" {
		return m.dialTurned(i)
	}
	if topic != "heater" {
		return 0, "", false
	}
	if m.inList(i-1, listDialledAt) && round && m.closes(i) {
		switch {
		case (at == i-2 || at == i-3 && m.inList(i-2, listLinks)) && m.is(at, cItem, "heater") && it.value >= 115 && !m.pointInClause(i):
			return roleTemp, "heater at", true // "boiler at 180"
		case it.within(100, 160) && m.heaterFacts(at, i-1):
			return roleTemp, "heater's facts, at", true // "heater 40 gas 2019 at 125"
		}
	}
	switch {
	case m.items[at].seg != it.seg || m.pointBetween(at, i) || !m.dialMoved(i):
	case oneOf(prev, "from", "de") && m.toNext(i):
		return roleIgnored, oldDial, true
	case leadsDial(prev):
		return roleTemp, "heater turned to", true
	}
	return 0, "", false
}

// dialOnHeater tells whether the number at i is what a thermostat is at whose heater is named by its facts:
// "thermostat on the 52 gal electric is at 140".
func (m *message) dialOnHeater(i int) bool {
	if !m.inList(i-1, listDialledAt) || !m.items[i].within(100, 180) || !m.closes(i) {
		return false
	}
	on := m.left(i, 9, true, func(k int) bool { return m.says(k, "on", "of", "for", "del", "de") && m.is(k-1, cPart, "thermostat") })
	if on < 0 {
		return false
	}
	if m.is(on+1, cDeterminer, "") {
		on++
	}
	to := i - 1
	if m.is(to-1, cItem, "heater") {
		to--
	}
	return m.heaterFacts(on, to)
}

// heaterStandsAt tells whether the number at i is where a heater named before it stands, with no more
// between than its facts and where it is: "gas heater down there is at 130", "wh 50 gal elec at 120".
func (m *message) heaterStandsAt(i int) bool {
	k := i - 1
	if !m.inList(k, listDialledAt) && !m.says(k, "on", "@") {
		return false
	}
	for k--; k >= m.sents[m.items[i].sent].from; k-- {
		switch {
		case m.is(k, cItem, "heater"):
			return true
		case m.heaterAnd(k, "on", "down", "up") && m.says(k+1, "there", "there is", "in", "here"):
			m.say(k, "heater")
			return true
		case m.heaterFact(k), m.isMark(k, ",", "-", "("), m.inList(k, listLinks), m.is(k, cDeterminer, ""), m.inList(k, listWhereHeater):
		default:
			return false
		}
	}
	return false
}

// lastOfHeater tells whether the number at i stands in a list of a heater's facts, two of them before it: "gas, 40
// gal, 2019, 120". What is only one fact, or stands without a mark, may be a pressure.
func (m *message) lastOfHeater(i int) bool {
	if !m.isMark(i-1, ",", "/") || i+1 < len(m.items) && !m.isMark(i+1, ",", ".", "/", "\n", "-", "(") {
		return false
	}
	facts := 0
	for k := i - 1; k >= m.sents[m.items[i].sent].from; k-- {
		switch {
		case m.is(k, cItem, "heater"):
			return facts > 1
		case m.is(k, cFuel, "") && !m.gasTalk(k), m.numIs(k, roleSize, roleYear, roleAge):
			facts++
		case m.isMark(k, ",", "/", "-", ":"), m.is(k, cUnit, ""), m.is(k, cDeterminer, ""), m.inList(k, listLinks), m.says(k, "from", "of"):
		default:
			return false
		}
	}
	return false
}

// keptAt tells whether the number at i is what somebody keeps a heater at that is named before it: "she has it at
// 120", "kept at 120".
func (m *message) keptAt(i int) bool {
	first, last, _ := strings.Cut(m.text(i-1), " ")
	k := i - 1
	if last == "" && m.says(k, "at", "on", "a", "en", "to") {
		if k--; m.says(k, "it", "that", "them", "her") {
			k--
		}
		first, _, _ = strings.Cut(m.text(k), " ")
	}
	if !m.p.lex.inList(first, listKeepsAt) {
		return false
	}
	topic, at := m.topicBefore(k)
	return topic == "heater" && !m.pointBetween(at, i)
}

// dialTopic finds what the words before the number at i are about, and where: also a heater that
// is turned down or up, and one that a verb before an old setting had as its object.
func (m *message) dialTopic(i int) (topic string, at int) {
	topic, at = m.topicBefore(i)
	v := m.verbLeft(i, 9, "set")
	if v == nil {
		return topic, at
	}
	k := m.left(i, 5, true, func(k int) bool { return m.is(k, cState, "") })
	if k > at && (strings.HasSuffix(m.text(k), " down") || strings.HasSuffix(m.text(k), " up")) {
		if prev := m.text(i - 1); prev == "from" || leadsDial(prev) {
			m.unsay(k) // "turned the heater down from 140": no heater is down here
			v.object = "heater"
		}
		return "heater", k
	}
	if p := m.prevNum(i); topic == "" && v.object == "heater" && p >= 0 && m.items[p].why == oldDial {
		return "heater", v.at
	}
	return topic, at
}

// dialTurned reads a thermostat that is turned and not named where it is: "moved the thermostat to
// 150. Turned it back to 120.", "turned it from 150 to 120, too hot for the kids".
func (m *message) dialTurned(i int) (role, string, bool) {
	it, prev := &m.items[i], m.text(i-1)
	to := leadsDial(prev) || prev == "back to"
	if v := m.verbLeft(i, 6, "set"); v != nil && to && it.within(105, 160) && m.dialBefore(it.sent) {
		v.object = "heater"
		return roleTemp, "the dial turned back", true
	}
	v := m.verbLeft(i, 9, "set")
	switch {
	case v == nil || v.object != "" || !it.within(100, 160) || !m.hotTalk(it.sent):
	case prev == "from" && m.toNext(i):
		return roleIgnored, oldDial, true
	case to:
		v.object = "heater"
		return roleTemp, "turned to, of hot water", true
	}
	return 0, "", false
}

// leadsDial tells whether a word leads to what a dial is turned to.
func leadsDial(s string) bool { return oneOf(s, "to", "a", "down to", "up to", "hasta") }

// toNext tells whether the number at i is followed by one that a dial is turned to.
func (m *message) toNext(i int) bool {
	n := m.nextNum(i)
	return n > 0 && leadsDial(m.text(n-1))
}

// dialMoved tells whether a word of turning, or an old setting, stands before the number at i.
func (m *message) dialMoved(i int) bool {
	return m.left(i, 8, true, func(k int) bool {
		return m.inList(k, listMovesDial) || m.is(k, cDid, "set") || m.items[k].why == oldDial
	}) >= 0
}

// hotTalk tells whether sentence s speaks of hot water, and of no regulator or tap.
func (m *message) hotTalk(s int) bool {
	hot := false
	for k := m.sents[s].from; k < m.sents[s].to; k++ {
		if m.is(k, cItem, "") || m.items[k].point != "" || m.is(k, cHint, "ofpressure") {
			return false
		}
		hot = hot || hotWord(m.text(k))
	}
	return hot
}

// dialHadBeen tells whether the number at i is what a dial was at before it was put to the number
// before it: "knocked the heater down to 120, it was at 150", "heater down to 120 from 140".
func (m *message) dialHadBeen(i int) bool {
	p := m.prevNum(i)
	return p >= 0 && i-p <= 4 && m.numIs(p, roleTemp) && m.items[i].within(85, 180) && m.items[i].unit == "" && !m.pointInClause(i) &&
		(m.says(i-1, "it was at", "it was", "was", "was at", "from", "had been") || m.text(i-1) == "at" && m.says(i-2, "was", "had been"))
}

// dialWas tells whether the number at i is what a thermostat was at before it was put to
// the next one: "tstat was 150 now 120", "thermostat was at 150, i set her 120".
func (m *message) dialWas(i int) bool {
	it := &m.items[i]
	if it.unit != "" || it.value < 85 || it.value > 180 || !m.says(i-1, "was", "was at", "at", "from", "estaba en") ||
		m.leftTag(i, 3, cPart, "thermostat") < 0 {
		return false
	}
	j := m.nextNum(i)
	return j > 0 && j-i <= 5 && m.items[j].unit == "" && m.items[j].value >= 85 && m.items[j].value <= 180 && !m.pointBetween(i, j) &&
		m.inList(j-1, listDialNow)
}

// pointInClause tells whether a test point stands in the clause of item i.
func (m *message) pointInClause(i int) bool {
	s := &m.sents[m.items[i].sent]
	for k := s.from; k < s.to; k++ {
		if m.items[k].seg == m.items[i].seg && m.items[k].point != "" {
			return true
		}
	}
	return false
}

// degrees tells whether the small "f" or "c" at item at, after a number, is a
// temperature's: "50 gal gas, 2012, 130 f", "thermostat at 60 c". Hardly a word follows it in
// its clause, and the clause speaks of a heater's make, of water or of warmth; "heater idle, 71 f"
// is the front.
func (m *message) degrees(before []item, it *item, at int) bool {
	celsius, next := m.text(at) == "c", m.text(at+1)
	low, high := 80.0, 185.0
	switch {
	case celsius:
		low, high = 35, 95
	case strings.HasPrefix(next, "coming"):
		low = 35 // "water 60 f coming in"
	}
	if it.value < low || it.value > high {
		return false
	}
	if celsius && (strings.HasPrefix(next, "out") || next == "of") {
		return true // no test point begins so: "48 c out of the kitchen tap"
	}
	if m.warmNear(before, at, celsius) {
		return true
	}
	if at+1 < len(m.items) && m.p.has(m.items[at+1].tags, cPart, "thermostat") {
		return true
	}
	if at+1 < len(m.items) && !m.items[at+1].mark && !oneOf(next, "and", "y", "after") && !strings.HasPrefix(next, "out") &&
		!strings.HasPrefix(next, "coming") {
		return false
	}
	for k := len(before) - 1; k >= 0 && !before[k].mark; k-- {
		if before[k].kinds.meets(setOf(cWater)) || strings.HasPrefix(before[k].text, "water") {
			return true // "water out of the tub is 131 f"
		}
		if before[k].num != nil {
			break
		}
		if !celsius && it.value >= 95 && before[k].kinds.meets(setOf(cPoint, cPlace, cBibb)) {
			return true // the number has its test point: "kitchen tap runs 118 f"
		}
	}
	for k := len(before) - 1; k >= max(0, len(before)-9) && before[k].text != "\n" && before[k].text != "."; k-- {
		switch kinds := before[k].kinds; {
		case kinds.meets(setOf(cState, cOn, cOff, cPoint, cPlace, cBibb)):
			return false
		case kinds.meets(setOf(cFuel, cWater)) || m.p.has(before[k].tags, cPart, "thermostat") || m.p.has(before[k].tags, cItem, "heater"):
			return true
		}
	}
	return false
}

// warmNear tells whether words behind the letter at item at, or the scale named before it, make it that
// of a temperature: "59 psi, 118 f, kitchen hot tap", "set at 60 celsius, kitchen gets 55 c". A
// small "f" is as often the front, unless pressures have their unit.
func (m *message) warmNear(before []item, at int, celsius bool) bool {
	named, psi, warm := false, false, false
	for k := range before {
		named = named || before[k].unit == "degc"
		psi = psi || before[k].unit == "psi"
	}
	for k := range m.items {
		switch {
		case k == at:
		case m.inList(k, listCelsius):
			named = true
		case k > at && k <= at+5 && (m.inList(k, listHotTaps) || strings.Contains(" "+m.text(k)+" ", " hot ")):
			warm = true
		}
	}
	return celsius && named || (celsius || psi) && warm
}

// heaterFacts tells whether only facts of a heater stand between it and item i, and at
// least one does: "heater 40 gas 2019", "Gas heater, 40, 2010,".
func (m *message) heaterFacts(at, i int) bool {
	facts := 0
	for k := at + 1; k < i; k++ {
		it := &m.items[k]
		switch {
		case it.mark && it.text != "\n", m.is(k, cUnit, ""):
		case m.is(k, cFuel, ""), it.num != nil && (it.role == roleSize || it.role == roleYear || it.role == roleAge):
			facts++
		default:
			return false
		}
	}
	return facts > 0
}

// dialBefore tells whether the sentence before s speaks of a thermostat and of no regulator.
func (m *message) dialBefore(s int) bool {
	if s == 0 {
		return false
	}
	dial := false
	for k := m.sents[s-1].from; k < m.sents[s-1].to; k++ {
		if m.is(k, cItem, "prv") || m.is(k, cItem, "expansion_tank") {
			return false
		}
		dial = dial || m.is(k, cPart, "thermostat")
	}
	return dial
}

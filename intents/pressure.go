package intents

import (
	"slices"
	"strings"

	"lazyhand/assess"
)

// Lists of the lexicon that these rules know.
var (
	listCountedTaps      = listOf("counted taps")
	listWantsPressure    = listOf("wants pressure")
	listTyreTalk         = listOf("tyre talk")
	listBehindItsTap     = listOf("behind its tap")
	listHousePressure    = listOf("house pressure")
	listBringsPressure   = listOf("brings pressure")
	listAnnouncesReading = listOf("announces reading")
)

var (
	wantWords  = opener{lists: []list{listWantsPressure}}
	tyreOpener = opener{lists: []list{listTyreTalk}}
)

// settingGate is that of numbers which something was set to.
var settingGate = gateOf(opener{items: []string{"prv", "expansion_tank", "tank"}, values: map[class][]string{cPart: {"air", "thermostat"}}})

// pressureRole decides a number that can be a pressure.
func (m *message) pressureRole(i int) (role, string) {
	it := &m.items[i]
	s := &m.sents[it.sent]
	psi := pressureUnit(it.unit)
	// questions keep their numbers
	if s.asking && m.askTakes(i) || s.question && m.right(i, 5, true, func(k int) bool { return m.text(k) == "enough" }) >= 0 {
		return roleAsked, "question" // "is 35 m of head enough for a shower?"
	}
	if m.holdsKey(keyWants) && !m.wantsEntered(i) {
		t := m.left(i, 3, false, func(k int) bool {
			return m.said(k, keyWants) && (k >= i-2 || m.text(k) == "wanted" || m.text(k) == "asked for")
		})
		if t < 0 && m.says(i-1, "to", "at", "a", "en") {
			t = m.left(i, 7, false, func(k int) bool { return m.said(k, keyWants) }) // "wanted me to crank it to 90"
		}
		if t >= 0 && m.items[t].seg == it.seg && !m.pointBetween(t, i) {
			return roleIgnored, "what was wanted"
		}
	}
	if m.numberAgain(i) {
		return roleIgnored, "said again"
	}
	if m.ofTyres(i) {
		return roleIgnored, "tyres"
	}
	if why := m.anotherKind(i); why != "" {
		return roleIgnored, why
	}
	if m.holdsKey(keyBrings) && m.tapWentTo(i) >= 0 {
		return roleReading, "what a tap came to"
	}
	if r, why, ok := m.ofPartRole(i); ok {
		return r, why
	}
	if why := m.dropOrTarget(i); why != "" {
		return roleIgnored, why
	}
	if m.toCome(i) {
		return roleIgnored, "to be reached yet"
	}
	if why, ok := m.foreign(i); ok {
		return roleIgnored, why
	}
	if m.bounded(i) {
		return roleIgnored, "a bound"
	}
	if why := m.notMeasured(i); why != "" {
		return roleIgnored, why
	}
	if m.untouchedAt(i) {
		return roleSetting, "found so and left so"
	}
	if m.ofRegulatorAlone(i) {
		if m.leftSo(i) {
			return roleSetting, "found so and left so"
		}
		m.askPlace(i)
		return roleIgnored, regulatorsOwn
	}
	if it.num.negative || !psi && it.value > 300 || psi && toPSI(it.value, it.unit) > 300 {
		code := len(it.num.digits) >= 4 && m.left(i, 4, false, func(k int) bool { return m.codeWord(k) || m.text(k) == "opens" }) >= 0 // "lockbox opens with 7062#"
		if !code && (psi || m.points(i) || it.num.negative) {
			m.askImpossible(i)
		}
		return roleIgnored, "no pressure of a house"
	}
	if psi {
		return roleReading, "unit of pressure"
	}
	// counts: "two hose bibs open", "3 taps"
	if it.value > 0 && it.value <= 6 && it.num.integer &&
		(m.meets(i+1, counted) || m.is(i+1, cBibb, "") && strings.HasSuffix(m.text(i+1), "s")) {
		return roleIgnored, "count"
	}
	if m.afterTime(i) {
		return roleIgnored, "a time after another"
	}
	if it.unit == "" && it.num.integer && it.value <= 30 && m.unknownNoun(i+1) && !m.pointInClause(i) {
		return roleIgnored, "counts " + m.text(i+1) // "kitchen 58, 16 screws"
	}
	if m.pointNear(i) || m.text(i+1) == "same" && it.value >= leastPSI && m.has(cPoint, "") {
		return roleReading, "test point beside it"
	}
	if m.goesOnAt(i) {
		return roleReading, "what the gauge shows next"
	}
	return m.pointlessRole(i)
}

// ofPartRole decides a number that tells of a part: what it is set to, or was set from and
// to, and the air of a tank.
func (m *message) ofPartRole(i int) (role, string, bool) {
	settings := len(m.verbs) > 0 || !m.shut(settingGate) // something may be set
	if r, why, ok := m.dialled(i); ok {
		return r, why, true
	}
	if r, why, ok := m.onPart(i); ok {
		return r, why, true
	}
	if settings {
		if r, why, ok := m.fromTo(i); ok {
			return r, why, true
		}
		if r, why, ok := m.changedTo(i); ok {
			return r, why, true
		}
	}
	if settings && (i == 0 || m.items[i-1].point == "") && !m.ownTap(i) &&
		!(i+1 < len(m.items) && m.items[i+1].point != "" && !m.items[i+1].weak && m.isMark(i-1, ",")) {
		if r, why, ok := m.chargeRole(i); ok {
			return r, why, true
		}
	}
	if settings || m.holdsKey(keyDial) || !m.shut(settingWordGate) {
		return m.settingRole(i)
	}
	return roleNone, "", false
}

// unsaidNumber is why a number that may be a pressure is none.
const unsaidNumber = "nothing says that it is a pressure"

// pointlessRole decides a number without a unit and a test point.
func (m *message) pointlessRole(i int) (role, string) {
	it := &m.items[i]
	switch {
	case i+1 < len(m.items) && m.is(i+1, cFlowing, "") && it.value <= 4:
		return roleIgnored, "count"
	case m.says(i-1, "a", "an", "una", "un") && m.inList(i-2, listLinks) && it.unit == "":
		return roleIgnored, "names a thing" // "the old one was a 40"
	case m.countsStrange(i):
		return roleIgnored, "counts " + m.text(i+1)
	case it.value <= 200 && m.readingCue(i):
		return roleReading, "word of measuring"
	case it.value > 200:
		return roleIgnored, "too large without a unit or a point"
	case it.value >= 15 && m.hasAsk(AskCorrect):
		return roleReading, "the right value"
	case it.value == 0 && m.onGauge(i):
		return roleReading, "nothing on the gauge"
	case it.value < 15, it.value <= 19 && !it.num.words && !it.decimal():
		return roleIgnored, "too small without a unit or a point"
	case m.unknownNoun(i + 1): // it counts something else
		return roleIgnored, "counts " + m.text(i+1)
	case m.wentFrom(i):
		return roleReading, "what the gauge went to"
	case m.says(i-1, "a", "an", "una") && m.left(i, 5, true, func(k int) bool { return m.is(k, cHint, "moves") }) < 0:
		return roleIgnored, "names a thing" // "a 40 not a 50"
	case m.otherInBrackets(i):
		return roleReading, "told against another in brackets"
	case m.nowFrom(i) > 0 && m.adjusts():
		return roleReading, "came from another"
	case m.is(i+1, cHint, "daytime") && m.isMark(i-1, ",") && m.numIs(i-2, roleReading) && m.closes(i+1):
		return roleReading, "what the gauge shows then" // "high 120, 79 this morning"
	case m.inSeries(i), m.goesOnRow(i):
		return roleReading, "one of a series"
	case m.rightsBefore(i):
		return roleReading, "puts the one before right"
	case m.readAtTap(i):
		return roleReading, "read at a tap that has no name"
	case m.afterItsTap(i):
		return roleReading, "of the tap named right before"
	case m.tradeNear(i):
		return roleReading, "among terms of the trade"
	}
	return roleIgnored, unsaidNumber
}

// otherInBrackets tells whether the number at i stands before another in brackets that is told with its
// state or its flow, so that both are pressures of one gauge: "88 (64 burner off)".
func (m *message) otherInBrackets(i int) bool {
	if !m.isMark(i+1, "(") || !m.isNum(i+2) || m.items[i+2].unit != m.items[i].unit || m.items[i].value < leastPSI || m.items[i+2].value < leastPSI {
		return false
	}
	for k := i + 3; k < len(m.items) && !m.items[k].mark; k++ {
		if m.meets(k, setOf(cState, cStatic, cFlowing, cNow, cPeak)) {
			return true
		}
	}
	return false
}

// wentFrom tells whether the number at i is what the pressure right before it went to: "cocina de 95 a 60".
func (m *message) wentFrom(i int) bool {
	p := m.prevNum(i)
	return p >= 0 && m.pressed(p) && m.says(i-1, "a", "to", "down to", "up to", "hasta", "->") && m.leadsTo(p, i)
}

// adjusts tells whether the message tells of work on a regulator.
func (m *message) adjusts() bool {
	return slices.ContainsFunc(m.verbs, func(v verb) bool { return v.done && v.object == "prv" })
}

// readAtTap tells whether the number at i is said to be read at something that water comes out
// of and that is no test point by itself: "72 at the sink". Which one is then asked.
func (m *message) readAtTap(i int) bool {
	if !m.inList(i+1, listReadAt) {
		return false
	}
	k := i + 2
	if m.is(k, cDeterminer, "") {
		k++
	}
	return m.is(k, cFixture, "") && (m.closes(k) || m.is(k+1, cState, ""))
}

// rightsBefore tells whether the number at i stands alone behind a pressure of its sentence where
// a halt between them takes that back: "67 at the sink, hang on, let me wipe my glasses, 57".
func (m *message) rightsBefore(i int) bool {
	k := m.prevNum(i)
	return k >= 0 && i-k <= 12 && m.items[k].role == roleReading && m.items[k].sent == m.items[i].sent && m.isMark(i-1, ",", "...", "-") &&
		m.closes(i) && m.right(k, i-k-1, true, func(j int) bool { return m.says(j, "hang on", "hold on") }) >= 0
}

// afterItsTap tells whether the number at i is one of those that the sentence begins with, where
// the sentence before names a tap and no number: "laundry keeps climbing. 58 then 64".
func (m *message) afterItsTap(i int) bool {
	s := m.items[i].sent
	if s == 0 || m.items[i].unit != "" && !pressureUnit(m.items[i].unit) || m.sents[s-1].question || m.sents[s-1].asking {
		return false
	}
	taps, gauged, others := 0, false, 0
	for k := m.sents[s-1].from; k < m.sents[s-1].to; k++ {
		switch it := &m.items[k]; {
		case it.num != nil && it.unit == "hour" && m.sents[s].numbers > 1:
			gauged = true // "10 mins on the tub. 60, 62, 66"
		case it.num != nil:
			return false
		case it.point != "":
			taps++
		case m.is(k, cItem, "gauge"), m.is(k, cSym, "creep"), m.is(k, cGauged, ""):
			gauged = true
		case m.meets(k, setOf(cDid, cItem, cSym, cCond, cWill)):
			return false // "kitchen faucet swapped. 115": a price
		case !it.mark && !m.is(k, cDeterminer, "") && !m.says(k, "at", "on", "en"):
			others++
		}
	}
	if taps != 1 || !gauged && others > 0 {
		return false
	}
	series := func(k int) bool {
		return m.isNum(k) || m.items[k].mark || m.inList(k, listBehindItsTap)
	}
	for k := m.sents[s].from; k < i; k++ {
		if !series(k) {
			return false
		}
	}
	next := i + 1
	for next < m.sents[s].to && series(next) {
		next++
	}
	return next == m.sents[s].to || m.meets(next, setOf(cSym, cStatic, cFlowing, cState)) || m.is(next, cItem, "heater") || m.flowTag(next) != ""
}

// toComeGate is that of what leads to a pressure still to come.
var toComeGate = onlyWithWords("to", "up to", "down to", "back to")

// toCome tells whether the number at i is what something is to be brought to: "will pump
// the tank up to 60 Thursday".
func (m *message) toCome(i int) bool {
	if m.shut(toComeGate) {
		return false
	}
	if m.text(i-2) == "to" && m.says(i-1, "hit", "reach", "make") {
		need := func(k int) bool { return m.is(k, cWill, "") || m.says(k, "need", "needs", "short") }
		return m.left(i, 8, true, need) >= 0 // "need 1 more to hit 60"
	}
	if !m.says(i-1, "to", "up to", "down to", "back to") || m.left(i, 6, true, func(k int) bool { return m.is(k, cAsk, "correct") }) >= 0 {
		return false // "please change my last to 61"
	}
	for k := i - 2; k >= m.clauseStart(i); k-- {
		if m.is(k, cWill, "") && !m.turnedBack(k) {
			return true
		}
	}
	return (m.ordersPressure(m.items[i].sent) || m.bringIt(i)) && m.items[i].seg == m.items[m.firstOf(m.items[i].sent)].seg
}

// bringIt tells whether the sentence of the number at i orders it to be brought there: "bump it to 60 at the kitchen".
func (m *message) bringIt(i int) bool {
	first := m.firstOf(m.items[i].sent)
	verb, it, _ := strings.Cut(m.text(first), " ")
	return m.p.lex.inList(verb, listBringsPressure) && (it == "it" && first+2 == i || m.text(first+1) == "it" && first+3 == i)
}

// ordersPressure tells whether sentence s orders the pressure to be brought somewhere: "drop
// the pressure at 12 Elm to 60", "baja la presión a 60".
func (m *message) ordersPressure(s int) bool {
	first := m.firstOf(s)
	if first >= m.sents[s].to {
		return false
	}
	verb, rest, _ := strings.Cut(m.text(first), " ")
	if !m.p.lex.inList(verb, listBringsPressure) {
		return false
	}
	return strings.Contains(rest, "pres") || m.right(first, 4, true, func(k int) bool {
		return m.inList(k, listHousePressure)
	}) >= 0
}

// ownTap tells whether the number at i stands in a later clause that names a test point and
// nothing installed and no deed, so that it is no tank's charge: "tank 55# air and 79 on the
// spigot", "front spigot gave me 71 then tank charge 44".
func (m *message) ownTap(i int) bool {
	from, to := m.clauseStart(i), m.clauseEnd(i)
	tap := false
	for k := from; k < to; k++ {
		if m.items[k].kinds.meets(ofDeeds) || k != i && m.items[k].num != nil {
			return false
		}
		tap = tap || m.items[k].point != ""
	}
	return tap
}

// ofDeeds are the classes of what is installed and of what is done to it.
var ofDeeds = setOf(cItem, cPart, cDid, cDo, cMove, cWill)

func (it *item) decimal() bool { return it.num != nil && it.num.decimals > 0 }

// pointNear tells whether a test point stands in the number's reach.
func (m *message) pointNear(i int) bool {
	it := &m.items[i]
	ok := func(k int) bool { return m.items[k].point != "" }
	l := m.left(i, 7, false, ok)
	if l >= 0 && (m.items[l].seg == it.seg || i-l <= 3) && !(m.items[l].weak && i-l > 3) {
		if !(it.value < 12 && it.num.integer && it.value > 0) || i-l == 1 {
			return true
		}
	}
	r := m.right(i, 7, false, ok)
	if r >= 0 && (m.items[r].seg == it.seg || r-i <= 2) && !(m.items[r].weak && r-i > 3) {
		if it.value < 12 && it.value > 0 && it.num.integer {
			return false
		}
		// the point may belong to another number
		return !(r+1 < len(m.items) && m.isNum(r+1) && l < 0 && (r-i > 3 || m.items[r].seg != it.seg))
	}
	return false
}

// onGauge tells whether a gauge is said to stand at the number at i: "0 on the gauge, front bib".
func (m *message) onGauge(i int) bool {
	gauge := func(k int) bool { return m.is(k, cItem, "gauge") }
	return m.left(i, 3, false, gauge) >= 0 || m.right(i, 3, false, gauge) >= 0
}

// readingCue finds words that announce a measured value.
func (m *message) readingCue(i int) bool {
	it := &m.items[i]
	if it.value < 15 && !(it.value == 0) {
		return false
	}
	l := m.left(i, 5, false, func(k int) bool { return m.showsNumber(k) || k == i-1 && m.highOfTwo(k) })
	if l >= 0 {
		return true
	}
	if m.highBehind(i+1) == i {
		return true
	}
	if m.tapsRunBehind(i) || m.reckons(i-1) {
		return true
	}
	r := m.right(i, 3, false, func(k int) bool {
		return m.meets(k, measured) || m.is(k, cState, "") || k == i+1 && m.is(k, cHint, "all")
	})
	return r >= 0
}

// tapsRunBehind tells whether so many taps are said to run right behind the number at i: "49 with 2 hoses
// running".
func (m *message) tapsRunBehind(i int) bool {
	k := i + 1
	if m.says(k, "with", "w/", "w", "con", "while", "when") {
		k++
	}
	if k+1 >= len(m.items) || !m.smallCount(k) {
		return false
	}
	return m.p.lex.of(&m.toks[m.items[k].tok+1]).lists.has(listCountedTaps) && m.flowTag(k+1) == assess.Flowing
}

// showsNumber tells whether item k announces what a gauge shows.
func (m *message) showsNumber(k int) bool {
	if m.inList(k, listAnnouncesReading) {
		return true
	}
	return m.meets(k, measured) || m.is(k, cHint, "cue")
}

// measured are the classes of when and how a pressure was measured, and counted those of
// what a small number counts.
var (
	measured = setOf(cStatic, cFlowing, cPeak, cNow, cBefore, cAfter)
	counted  = setOf(cFlowing, cFixture)
)

// tradeNear tells whether the sentence, or a message of little else, speaks of the trade.
func (m *message) tradeNear(i int) bool {
	s := &m.sents[m.items[i].sent]
	words, strange := 0, false
	for k := s.from; k < s.to; k++ {
		if m.items[k].site && abs(k-i) <= 2 && m.text(i-1) != "behind" || m.items[k].point != "" {
			return true
		}
		for _, c := range []class{cState, cStatic, cFlowing, cPeak, cNow, cItem, cSym} {
			if m.is(k, c, "") {
				return true
			}
		}
		if !m.items[k].mark {
			words++
		}
		strange = strange || k == i-1 && m.items[k].tags == nil && len(m.text(k)) > 3 && m.unknownNoun(k)
	}
	return words <= 2 && !strange // "Batch 60" is none
}

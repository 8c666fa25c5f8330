package intents

import "strings"

// Lists of the lexicon that these rules know.
var (
	listComesSet  = listOf("comes set")
	listBeforeSet = listOf("before set")
	listKeeps     = listOf("keeps")
	listSomebody  = listOf("somebody")

	listGot    = listOf("got set")
	listWeJust = listOf("we just")

	listThereSitsOne = listOf("there sits one")
)

// Verbs that tell how a part is, not what was done to it: "PRV set to 60".

// judgeState tells whether a verb only says how a part is set, and of which part.
func (m *message) judgeState(v *verb, byOther bool) {
	if m.keptSet(v) {
		v.negated, v.planned, v.state = false, false, true
		m.ofTopic(v)
	}
	if v.what == "set" && m.saysHowSet(v.at) && !v.negated && !v.planned {
		m.setState(v)
	}
	if v.what == "installed" && !v.negated && !v.planned && m.isThere(v) {
		v.state = true
	}
	if v.what == "set" && m.inList(v.at-1, listLinks) && m.text(v.at-2) == "which" {
		v.state, v.planned, v.negated = true, false, false // "a regulator which is set at 60"
		m.ofTopic(v)
	}
	if v.what == "charged" && m.isCharged(v.at) {
		m.chargedState(v)
	}
	if byOther && v.what == "set" && v.object == "prv" {
		v.state, v.planned, v.negated = true, false, false // "prv dialed at 70 by the last guy"
	}
	if v.what == "set" && m.hasItSet(v.at) {
		v.state, v.planned, v.negated = true, false, false // "somebody's got it set at 75"
		if v.object == "" {
			v.object, v.objAt = m.topicBefore(v.at)
		}
	}
	if at, ok := m.listsCharge(v); ok {
		v.what, v.state, v.object, v.objAt = "set", true, "expansion_tank", at
	}
	if v.state && pastForm(m.text(v.at)) && m.is(v.at-1, cItem, "") && m.right(v.at, 4, true, m.isNum) < 0 {
		v.state = false // "reguladora ajustada", which tells no setting
	}
	if v.state && v.what == "set" && m.gotSet(v) {
		v.state = false // "got the prv set"
	}
	if v.state && (m.endsDeed(v) || m.text(v.at-1) == ticked || m.text(m.sents[m.items[v.at].sent].from) == ticked) {
		v.state = false // "new PRV in, set 58"
	}
}

// chargedState makes a verb the state of the tank told before it: "tank is charged to 55 already",
// "tank is from 2014 but is charged to 40".
func (m *message) chargedState(v *verb) {
	if v.object == "" {
		m.ofTopic(v)
	}
	if v.object == "expansion_tank" {
		v.what, v.state, v.planned, v.negated = "set", true, false, false
	}
}

// gotSet tells whether the writer says that he got the part set: "finally got the prv set at 60".
func (m *message) gotSet(v *verb) bool {
	k := v.objAt - 1
	if v.objAt != v.at-1 {
		return false
	}
	for m.is(k, cDeterminer, "") || m.is(k, cHint, "possessive") {
		k--
	}
	return m.inList(k, listGot) && (m.inList(k-1, listWeJust) || k == m.sents[m.items[v.at].sent].from || m.items[k-1].mark || m.says(k-1, "and", "then"))
}

// isThere tells whether a word of installing says that a part is there, and since when, not that it
// was put in today: "an expansion tank is fitted, its age is not known", "there is a tank mounted".
func (m *message) isThere(v *verb) bool {
	if v.objAt < 0 || v.objAt >= v.at || !pastForm(lastWord(m.text(v.at))) || m.is(v.objAt-1, cPart, "new") {
		return false
	}
	clause := m.clauseStart(v.objAt)
	if v.objAt == v.at-1 && m.inList(clause, listThereSitsOne) {
		return true
	}
	if !strings.HasPrefix(m.text(v.at), "is ") && (!m.says(v.at-1, "is", "its", "are", "esta") || v.objAt != v.at-2) {
		return false
	}
	se := &m.sents[m.items[v.at].sent]
	for k := v.at + 1; k < se.to; k++ {
		switch {
		case m.is(k, cNow, ""), m.is(k, cDid, ""), m.is(k, cAfter, ""):
			return false
		case m.is(k, cUnknown, ""), m.isNum(k) && m.items[k].fullYear(), m.isNum(k) && m.items[k].unit == "year":
			return true
		}
	}
	return false
}

// saysHowSet tells whether the word at item i may say how something is set: "set at".
func (m *message) saysHowSet(i int) bool {
	return m.is(i, cHint, "stands") || m.is(i, cHint, "isset") && m.is(i-1, cHint, "present")
}

// ofTopic makes a verb one of the part told before it, else, if it has none, of one told in an
// earlier sentence.
func (m *message) ofTopic(v *verb) {
	if o, at := m.topicBefore(v.at); o != "" {
		v.object, v.objAt = o, at
	} else if v.object == "" {
		v.object = m.carried(m.items[v.at].sent)
	}
}

// setState tells by what stands before "set" whether it is the state of a part.
func (m *message) setState(v *verb) {
	from := m.sents[m.items[v.at].sent].from
	k, last := v.at-1, m.text(v.at-1)
	for k >= from && m.beforeSet(k) {
		k--
	}
	topic, at := m.topicBefore(v.at)
	sound := v.at // "PRV 2016 OK set 62"
	for sound > from && m.is(sound-1, cCond, "good") {
		sound--
	}
	within, adjoins := k >= from, k >= from && k == sound-1
	switch {
	case within && (m.is(k, cItem, "") || m.is(k, cPart, "")):
		v.state = (!m.verbBefore(k, v.at) || m.ofOtherDeed(v, topic)) && !m.changeAfter(v.at)
		v.object, v.objAt = topic, at
	case adjoins && m.items[k].mark || v.at == from:
		m.setInLine(v, topic, at)
	case adjoins && m.items[k].num != nil:
		if at >= 0 && !m.verbBefore(at, v.at) && !m.objectRight(v.at) {
			v.state, v.object, v.objAt = true, topic, at
		}
	case m.p.lex.inList(last, listLinks), m.p.lex.inList(last, listComesSet), strings.HasPrefix(last, "it "):
		v.state, v.object = true, ""
		m.ofTopic(v)
	case oneOf(last, "which is", "thats", "that is"), last == "and" && (m.fuelSize(v.at-2) || m.itemIs(at, v.at) || m.datedBefore(at, v.at)):
		v.state, v.object, v.objAt = true, topic, at
	}
	if m.is(v.at-1, cFuel, "") && !m.verbBefore(v.at-1, v.at) {
		v.state, v.object, v.objAt = true, "heater", v.at-1
	}
}

// itemIs tells whether the clause of the verb at item i began by telling how the part at item at
// is: "prv is rated 150 and set for 60".
func (m *message) itemIs(at, i int) bool {
	return at >= 0 && m.items[at].seg == m.items[i].seg && m.inList(at+1, listLinks) && !m.verbBefore(at, i)
}

// datedBefore tells whether the year right before the "and" at item i is that of the part at item at: "reg
// in since 2014 and set at 60".
func (m *message) datedBefore(at, i int) bool {
	return at >= 0 && m.isNum(i-2) && m.items[i-2].fullYear() && !m.verbBefore(at, i) && !m.verbBefore(i-2, i)
}

// setInLine reads ", set at 60" behind a part: a fact of it, unless the line tells work.
func (m *message) setInLine(v *verb, topic string, at int) {
	if m.objectRight(v.at) {
		return
	}
	if at >= 0 && !m.verbBefore(at, v.at) && !m.adjustedSince(at, v.at) {
		v.state, v.object, v.objAt = true, topic, at
		return
	}
	if v.at != m.sents[m.items[v.at].sent].from || m.text(v.at+1) == "it" || m.anyDone(v.at) {
		return
	}
	if s := m.items[v.at].sent; m.itemIn(s) == "" { // not "PRV shot. Set 130 on the heater"
		if c := m.carriedSettable(s); c != "" {
			v.state, v.object = true, c
		}
	}
}

// carriedSettable returns the equipment last named before sentence s; of a drain valve, the heater, which
// can be set: "new 50 gal gas with a brass drain. Set 120".
func (m *message) carriedSettable(s int) string {
	if c := m.carried(s); c != "drain_valve" {
		return c
	}
	return "heater"
}

// listsCharge finds the tank whose air a list of its facts tells: "Expansion tank 8 litres,
// charged at 4.0 bar, good".
func (m *message) listsCharge(v *verb) (tank int, ok bool) {
	if v.what != "charged" || v.object != "" && v.object != "expansion_tank" || m.text(v.at) != "charged" || !m.says(v.at+1, "at", "to") {
		return -1, false
	}
	topic, at := m.topicBefore(v.at)
	if at >= 0 && topic == "expansion_tank" && m.foundBad(v.at) && m.factualRun(at, v.at) && !m.verbBefore(at, v.at) && !m.anyDone(v.at) {
		return at, true
	}
	if !m.isMark(v.at-1, ",") {
		return -1, false
	}
	if at < 0 || m.text(v.at+1) == "to" && m.leftTag(at, 3, cPresent, "") < 0 {
		return -1, false // "there is a tank, 5 years old, charged to 55"
	}
	return at, topic == "expansion_tank" && m.factualRun(at, v.at) && !m.verbBefore(at, v.at) && !m.anyDone(v.at)
}

// foundBad tells whether what is told behind the charge at item i, in the same list, is that the tank is bad:
// "2 gal tank charged to 60, flat". Nobody leaves one so.
func (m *message) foundBad(i int) bool {
	k := m.right(i, 6, true, func(k int) bool { return m.isAny(k, cCond, "failed", "suspect") })
	other := func(k int) bool { return m.is(k, cItem, "") || m.meets(k, leakyThings) }
	return k > 0 && m.left(k, k-i-1, true, other) < 0
}

// itemBetween returns the equipment named between two items, -1 for none.
func (m *message) itemBetween(a, b int) int {
	for k := a + 1; k < b; k++ {
		if m.is(k, cItem, "") {
			return k
		}
	}
	return -1
}

// beforeSet tells whether item k may stand between a part and what it is set to: "prv is
// still at factory pressure, set 55".
func (m *message) beforeSet(k int) bool {
	return m.inList(k, listLinks) || m.inList(k, listBeforeSet) || m.is(k, cAge, "") || m.is(k, cCond, "good") || m.is(k, cUnknown, "") || m.is(k, cWhose, "label")
}

// isCharged tells whether "charged" at item i says how a tank is, not what was done to it:
// "tank is charged to 55 already", "tanque precargado".
func (m *message) isCharged(i int) bool {
	if m.says(i, "charged", "precharged") {
		k := i - 1
		if m.text(k) == "already" {
			k--
		}
		return m.says(k, "is", "its", "it is", "thats", "which is", "that is", "still")
	}
	return strings.HasPrefix(m.text(i), "precargad") && (m.is(i-1, cItem, "") || m.isNum(i-1))
}

// hasItSet tells whether "set" at item i says how somebody keeps a part: "somebody's got it
// set at 75".
func (m *message) hasItSet(i int) bool {
	if !m.says(i-1, "it", "got") {
		return false
	}
	return m.left(i, 4, true, func(k int) bool { return m.is(k, cHint, "someone") }) >= 0 &&
		m.left(i, 3, true, func(k int) bool { return m.says(k, "got", "has") }) >= 0
}

// keptSet tells whether somebody else is only said to have it set: "somebody's got it set
// at 75", "they have their prv set to 80".
func (m *message) keptSet(v *verb) bool {
	if v.what != "set" || !m.is(v.at, cHint, "stands") {
		return false
	}
	k := v.at - 1
	for k > 0 && k >= v.at-3 && (m.is(k, cItem, "") || m.is(k, cDeterminer, "") || m.text(k) == "it") {
		k--
	}
	if !m.inList(k, listKeeps) {
		return false
	}
	if m.inList(k-1, listSomebody) {
		return true
	}
	return m.is(k-1, cWhose, "other") || m.inList(k-1, listPeople) && m.text(k-1) != "im"
}

// fuelSize tells whether item k is a fuel or a size in gallons.
func (m *message) fuelSize(k int) bool {
	return m.is(k, cFuel, "") || k >= 0 && m.items[k].num != nil && (m.items[k].unit == "gal" || m.items[k].unit == "litre")
}

// verbBefore tells whether a deed stands before item at, within the clause: then
// a "set" after it is part of the deed.
func (m *message) verbBefore(at, upTo int) bool {
	s := &m.sents[m.items[at].sent]
	for k := at; k >= s.from && k >= at-8; k-- {
		if m.is(k, cDid, "") && k != upTo && !m.stateAt(k) {
			return true
		}
		if m.text(k) == "i" || m.text(k) == "we" || m.text(k) == "ive" {
			return true
		}
	}
	return false
}

// ofOtherDeed tells whether a part that is said to be set is another one than the deed before was done
// to: "installed a tank, regulator is set to 60".
func (m *message) ofOtherDeed(v *verb, part string) bool {
	n := len(m.verbs)
	if n == 0 || !m.inList(v.at-1, listLinks) {
		return false
	}
	d := &m.verbs[n-1]
	return d.at >= m.sents[m.items[v.at].sent].from && oneOf(d.object, "prv", "expansion_tank", "heater") && d.object != part
}

// stateAt tells whether the word at item k, told before, is a state and no deed: "heater set
// to 120, prv set to 60".
func (m *message) stateAt(k int) bool {
	for j := range m.verbs {
		if m.verbs[j].at == k {
			return m.verbs[j].state
		}
	}
	return false
}

// adjustedSince tells whether a word of setting stands between an item and a "set":
// "PRV adjusted, set 60".
func (m *message) adjustedSince(item, at int) bool {
	for k := item + 1; k < at; k++ {
		if m.is(k, cDid, "set") && pastForm(m.text(k)) {
			return true
		}
	}
	return false
}

// anyDone tells whether work on a part was done before an item.
func (m *message) anyDone(before int) bool {
	for _, v := range m.verbs {
		if v.at < before && v.done && oneOf(v.what, "replaced", "installed", "rebuilt", "set", "charged") {
			return true
		}
	}
	return false
}

// changeAfter tells whether "set" goes on with a change: "set down from 85 to 60".
func (m *message) changeAfter(at int) bool {
	for k := at + 1; k < len(m.items) && k <= at+3; k++ {
		switch {
		case m.text(k) == "from":
			return m.isNum(k+1) && !year(m.items[k+1].value) // "set at 55 from what the dial says", "set to 60 from 2016"
		case m.inList(k, listTurnedWhichWay):
			return true
		}
	}
	return m.right(at, 8, true, func(k int) bool { return m.text(k) == "by" && (m.text(k+1) == "me" || m.text(k+1) == "us") }) >= 0
}

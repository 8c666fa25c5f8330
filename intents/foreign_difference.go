package intents

import "strings"

// Lists of the lexicon that these rules know.
var (
	listOffByThat = listOf("off by that much")
	listThanThat  = listOf("off by that much with its unit")
	listWishes    = listOf("wishes")
	listCallsIt   = listOf("calls it")
	listAverages  = listOf("averages")
	listByAnother = listOf("by another")
	listOnceItRan = listOf("once it ran")
	listCounts    = listOf("counts")
)

// wayGate is that of rules of how far a pressure went up or down.
var wayGate = onlyWith(cHint, "shift", "way")

// Numbers that say by how much a pressure differs, what it should be or is no more.

// differences tell that a number is a difference, a limit or a value from memory.
var differences = numberRulesOf([]numberRule{
	{(*message).differenceBehind, "a difference", gateOf(opener{words: []string{"off"}, lists: []list{listOffByThat, listThanThat}})},
	{(*message).relative, "a difference", onlyWithList(listRelativeTo)},
	{(*message).worthSoMuch, "a difference", onlyWithWords("worth")},
	{(*message).wished, "what somebody wants", onlyWithWords("what")},
	{(*message).isGone, "no more there", onlyWithList(listEnded)},
	{(*message).gaugeEnd, "a gauge's range", gaugeGate},
	{(*message).fallOf, "a difference", onlyWithList(listSwingsBy)},
	{(*message).whereStuck, "where the gauge sticks", gateOf(opener{hints: []string{"sticks"}, values: map[class][]string{cCond: {"failed"}}})},
	{(*message).ofInterstate, "a highway", onlyWithWords("i")},
	{(*message).called, "what it is called", onlyWithList(listCallsIt)},
	{(*message).countedOut, "a count", onlyWithList(listCounts)},
	{(*message).averaged, "an average", onlyWithList(listAverages)},
	{(*message).byAnother, "a difference", onlyWithList(listByAnother)},
	{(*message).shifted, "a difference", wayGate},
	{(*message).downOnce, "a difference", wayGate},
	{(*message).afterFall, "a difference", onlyWithList(listFalls)},
	{(*message).gainsEachTime, "a rise", onlyWithList(listGains)},
	{(*message).swingsBy, "a difference", onlyWith(cSym, "swings")},
	{(*message).crept, "a rise", onlyWith(cSym, "creep")},
	{(*message).roseBy, "a rise", onlyWithList(listRisesBy)},
	{(*message).targeted, "a target or a limit", limitGate},
	{(*message).limitBehind, "a limit", onlyWithList(listLimitBehind, listAtMost)},
	{(*message).remembered, "from memory", alwaysOpen},
})

// dropOrTarget tells a difference, a limit or a value from memory from a reading.
func (m *message) dropOrTarget(i int) string { return m.reason(differences, i) }

// mostOfDrop is how many psi a pressure is told to have gone down by at most, so that what stands behind
// "down" is not where it went.
const mostOfDrop = 40

// downOnce tells whether the number at i is by how much a pressure goes down on an occasion, or from
// another one: "down 30 psi as soon as the irrigation kicks in", "side bib down 18 psi from 76", "20 psi
// down once the neighbors water".
func (m *message) downOnce(i int) bool {
	it := &m.items[i]
	if it.unit != "" && !pressureUnit(it.unit) || it.value == 0 || toPSI(it.value, it.unit) > mostOfDrop {
		return false
	}
	if m.text(i+1) == "down" {
		return it.unit != "" && m.occasionAt(i+2)
	}
	k := i - 1
	for m.is(k, cHint, "hedge") || m.text(k) == "by" || m.isMark(k, ",") {
		k--
	}
	if !m.says(k, "down", "off") {
		return false
	}
	for j := k - 1; j >= m.clauseStart(k) && m.items[j].num == nil; j-- {
		if !m.pointAt(j) && !m.is(j, cBibb, "") && !m.taken(j) && !m.inList(j, listRefersBack) && !m.is(j, cHint, "moves") && !m.inList(j, listLinks) && !m.says(j, "goes") {
			return false
		}
	}
	return m.occasionAt(i+1) && !m.says(i+2, "of") || m.text(i+1) == "from" && m.isNum(i+2) && m.items[i+2].value > it.value
}

// occasionAt tells whether item k begins to say on what occasion a pressure changes: "whenever the tub
// runs", "the moment a zone opens".
func (m *message) occasionAt(k int) bool {
	return m.is(k, cHint, "whenever") || m.inList(k, listOnceItRan) || m.is(k, cFlowing, "") && m.saysWhen(k) || m.is(k, cDeterminer, "") && m.inList(k+1, listOnceItRan)
}

// worthSoMuch reads what a turn does: "a turn is worth about 6 psi".
func (m *message) worthSoMuch(i int) bool {
	return m.text(i-1) == "worth" || m.text(i-2) == "worth" && !m.items[i-1].mark
}

// fallOf reads "a drop in pressure of 20".
func (m *message) fallOf(i int) bool { return m.text(i-1) == "of" && m.dropBefore(i) }

// ofInterstate reads "I-35".
func (m *message) ofInterstate(i int) bool { return m.text(i-1) == "-" && m.text(i-2) == "i" }

// called reads what a pressure between two is called: "81 and 83 at the rear. Calling it 82".
func (m *message) called(i int) bool {
	return m.text(i-1) == "it" && m.inList(i-2, listCallsIt) && (!m.pointInClause(i) || m.says(i-3, "lets", "well", "ill")) && m.items[i].unit == ""
}

// countedOut tells whether the number at i is what somebody counted: "he counted my steps to the meter box, 140".
func (m *message) countedOut(i int) bool {
	if m.items[i].unit != "" || m.points(i) {
		return false
	}
	k := m.left(i, 12, true, func(k int) bool { return m.inList(k, listCounts) })
	return k >= 0 && m.numsBetween(k, i) == 0
}

// averaged tells whether the number at i is said to be an average.
func (m *message) averaged(i int) bool { return m.inList(i-1, listAverages) }

// byAnother tells whether the word before the number at i says that it comes to another.
func (m *message) byAnother(i int) bool { return m.inList(i-1, listByAnother) }

// wished tells whether the words behind the number at i make it a wish: "72 psi is what she wants".
func (m *message) wished(i int) bool {
	k := i + 1
	if m.isAny(k, cUnit, "") {
		k++
	}
	return m.says(k, "is", "was") && m.text(k+1) == "what" &&
		m.right(k+1, 4, false, func(j int) bool {
			return m.inList(j, listWishes) || m.is(j, cWill, "")
		}) >= 0
}

// isGone tells whether the words behind the number at i say that the gauge shows it no more:
// "91 is gone, 64 after a burn".
func (m *message) isGone(i int) bool {
	k := i + 1
	if m.isAny(k, cUnit, "") {
		k++
	}
	if m.says(k, "is", "has", "now", "ya") {
		k++
	}
	return m.inList(k, listEnded) && m.closes(k)
}

// differenceBehind tells whether the word behind the number at i makes it a difference: "12 psi
// less", "a 20 lb drop".
func (m *message) differenceBehind(i int) bool {
	if m.says(i+1, "mas") && m.says(i+2, "o") && m.says(i+3, "menos") {
		return false // "unas 72 libras más o menos"
	}
	switch {
	case m.text(i+1) == "off":
		return pressureUnit(m.items[i].unit) &&
			!strings.HasPrefix(m.text(i+2), "the") && !m.points(i+2) && !m.is(i+2, cPlace, "")
	case m.inList(i+1, listThanThat):
		return pressureUnit(m.items[i].unit)
	}
	return m.inList(i+1, listOffByThat)
}

// gaugeEnd tells whether the number at i is the highest that a gauge shows: "gauge only goes up
// to 200".
func (m *message) gaugeEnd(i int) bool {
	if m.items[i].value < 100 {
		return false
	}
	switch m.text(i - 1) {
	case "to":
		if !m.says(i-2, "goes", "scale") && m.text(i-3) != "goes" {
			return false
		}
	case "up to":
		if !m.says(i-2, "goes", "reads", "read") {
			return false
		}
	case "at":
		if !m.says(i-2, "tops out", "maxes out", "stops") {
			return false
		}
	case "goes to":
	default:
		return false
	}
	k := m.left(i, 6, false, func(k int) bool { return m.is(k, cItem, "gauge") })
	return k >= 0 && !m.pointBetween(k, i)
}

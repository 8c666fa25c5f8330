package intents

// What a part is built for, as it stands on its body: the range in which a regulator can be
// set, the most that a tank or a heater bears. None of it was measured.

// Lists of the lexicon that these rules know.
var (
	listAdjustsFrom = listOf("adjusts from")
	listMostBorne   = listOf("most borne")
	listOfStrength  = listOf("of a given strength")
	listTapParts    = listOf("parts at a tap")
)

var (
	adjustsGate = onlyWithList(listAdjustsFrom)
	mostGate    = onlyWithList(listMostBorne)
)

// adjustsOver tells whether the number at i is an end of the range that a regulator can be set in:
// "adj 10 to 70", "the prv adjusts 25-75". What was set from the one to the other has a "from".
func (m *message) adjustsOver(i int) bool {
	if !m.has(cItem, "prv") || !m.settingRange(i) {
		return false
	}
	low := i
	if m.isNum(i-2) && !m.isMark(i-1, ",") && m.items[i-2].value < m.items[i].value {
		low = i - 2
	}
	k := low - 1
	for m.is(k, cDeterminer, "") || m.inList(k, listLinks) {
		k--
	}
	return m.items[low].value <= 30 && m.inList(k, listAdjustsFrom)
}

// adjustsFrom tells whether the word at i says in what range a regulator can be set, so that it
// tells no work: "adj 10 to 70".
func (m *message) adjustsFrom(i int) bool {
	return m.inList(i, listAdjustsFrom) && m.isNum(i+1) && m.isNum(i+3) && m.adjustsOver(i+1)
}

// mostBorne tells whether the number at i is the most that a part bears, which heads the clause:
// "exp tank: 150 max", "the prv is 300 max inlet". Of a tap it would be a peak.
func (m *message) mostBorne(i int) bool {
	v := toPSI(m.items[i].value, m.items[i].unit)
	if v < 100 || m.items[i].unit == "" && int(v)%25 != 0 {
		return false
	}
	if in := m.items[i].sent; m.sentenceIs(in, cNow, "") || m.sentenceIs(in, cHint, "needle") || !m.inList(i+1, listMostBorne) && !m.inList(i-1, listMostBorne) {
		return false
	}
	if m.tapPartSays(i) {
		return true
	}
	s := &m.sents[m.items[i].sent]
	part := m.left(i, i-s.from, false, func(k int) bool {
		return m.isAny(k, cItem, "expansion_tank", "tank", "prv", "heater", "softener") || m.inList(k, listOfStrength)
	})
	return part >= 0 && !m.pointIn(m.items[i].seg, i) && m.left(i, i-part, false, m.pointAt) < 0
}

// tapPartSays tells whether a part that is named after its tap says the number at i of itself: "new sprinkler box
// says max 690 kPa". Only a gauge shows a pressure.
func (m *message) tapPartSays(i int) bool {
	k := i - 1
	for m.inList(k, listMostBorne) {
		k--
	}
	return (m.is(k, cClaim, "says") || m.says(k, "is")) && !m.sentenceIs(m.items[i].sent, cItem, "gauge") &&
		m.p.lex.inList(lastWord(m.text(k-1)), listTapParts)
}

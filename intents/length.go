package intents

import "strings"

// Lists of the lexicon that these rules know.
var (
	listAway       = listOf("away")
	listAboveBelow = listOf("above below")
)

// Lengths, and heads of water told in a unit of length.

// lengthOf reads inches and feet told without their unit: "box is 18 deep", "60 of pex",
// "12 by 14", "60 from the house".
func (m *message) lengthOf(i int) bool {
	switch {
	case m.text(i+1) == "back" && m.closes(i+1) && m.inList(i-1, listLinks) && m.is(i-2, cPoint, "street"):
		return true // "meter is 90 back"
	case m.is(i+1, cHint, "lengthways"):
		return true
	case m.text(i+1) == "of" && (m.is(i+2, cHint, "pipestuff") || m.items[i].tok+2 < len(m.toks) && m.toks[m.items[i].tok+2].text == "hose"):
		return true
	case m.says(i+1, "by", "x") && m.isNum(i+2), m.says(i-1, "by", "x") && m.isNum(i-2):
		return true
	case m.text(i+1) == "from" && m.says(i+2, "the shop", "shop"),
		m.says(i+1, "from", "de") && m.says(i+2, "the", "la") && m.is(i+3, cHint, "wholehouse"):
		return true
	case m.text(i+1) == "de" && m.items[i].tok+2 < len(m.toks) && m.toks[m.items[i].tok+2].text == "manguera":
		return true // "40 de manguera en la de atrás"
	}
	return false
}

// farFrom tells whether the number at i says how far something lies from something else that
// is no tap: "house sits 30 above the main", "40 off the road".
func (m *message) farFrom(i int) bool {
	if m.text(i+2) == "from" && m.is(i+3, cDeterminer, "") {
		return m.says(i+1, "up", "down", "back", "over") // "45 up from the road"
	}
	if m.says(i+1, "arriba de", "abajo de") && m.is(i+2, cPoint, "street") && !strings.Contains(m.text(i+2), "regul") {
		return true // "30 arriba de la calle"
	}
	if !m.is(i+2, cDeterminer, "") && !(m.text(i+2) == "de" && m.is(i+3, cDeterminer, "")) {
		return false
	}
	switch {
	case m.inList(i+1, listAboveBelow):
		return true
	case m.says(i+1, "off", "past"):
		return !m.pointAt(i-1) && !m.pointAt(i+3) && !m.is(i+3, cMaterial, "") && !m.is(i+3, cItem, "") && !m.is(i+3, cPlace, "") && !m.is(i+3, cBibb, "")
	}
	return false
}

// headTalk tells whether metres are a head of water here: others of the message
// are, or the sentence names a test point or a regulator.
func (m *message) headTalk(i int) bool {
	se := &m.sents[m.items[i].sent]
	for k := se.from; k < se.to; k++ {
		if m.items[k].point != "" && !m.items[k].weak || m.is(k, cItem, "prv") {
			return true
		}
	}
	for k := range m.items {
		if m.items[k].unit == "m" {
			return true
		}
	}
	return false
}

// mostHead is the highest head of water at a tap, in metres.
const mostHead = 150

// headOfWater tells whether a length is a head of water at a test point: "35 m at the tub", "head at the
// meter 180 ft".
func (m *message) headOfWater(i int) bool {
	v := m.items[i].value
	if m.items[i].unit == "feet" {
		v *= psiPer["ft"] / psiPer["m"]
	}
	return v >= 10 && v <= mostHead && (m.pointNear(i) || m.headTalk(i)) && !m.inList(i+1, listAway)
}

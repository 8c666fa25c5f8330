package intents

import "strings"

// Numbers of another kind: the hardness of the water, the settings of a pump's switch,
// the end of a gauge's scale, minutes, the warmth of a tap, a number half heard.

// anotherKind tells what item i counts when its clause says that it measures something
// other than the pressure of a house. It is asked before any setting is looked for.
func (m *message) anotherKind(i int) (string, bool) {
	it := &m.items[i]
	switch {
	case m.ofPumpSwitch(i):
		return pumpsNumber, true
	case m.reliefSet(i):
		return "what a relief valve opens at", true
	case m.scaleEnd(i):
		return "a gauge's range", true
	case m.weighed(i):
		return "a weight", true
	case it.unit != "":
		return "", false
	case m.otherMeasure(i):
		return "measured, but no pressure", true
	case m.scaldCheck(i):
		return "a temperature", true
	case m.hotAndCold(i):
		return "a temperature", true
	case m.hotTap(i):
		if !m.warmth(i) {
			m.askWarm(i)
		}
		return "a pressure or a temperature", true
	case m.minutesIn(i):
		return "minutes to come", true
	case m.soManyFor(i), m.askedFor(i):
		return "a price", true
	case m.aThing(i):
		return "names a thing", true
	case m.lengthOf(i):
		return "a length", true
	case m.beside(i):
		return "a difference", true
	}
	return "", false
}

// hintBefore returns a word of a hint in the clause of item i, before it; -1 for none.
func (m *message) hintBefore(i, n int, over bool, hint string) int {
	if !m.kinds.has(cHint) {
		return -1
	}
	k := m.left(i, n, over, func(k int) bool { return m.is(k, cHint, hint) })
	if k >= 0 && m.items[k].seg != m.items[i].seg {
		return -1
	}
	return k
}

const pumpsNumber = "where a pump's switch cuts in or out"

var pumpSwitchGate = onlyWith(cHint, "pumpswitch")

// ofPumpSwitch reads what a well's pump starts and stops at: "pressure switch 40/60",
// "pump kicks on at 40 and off at 60".
func (m *message) ofPumpSwitch(i int) bool {
	if m.shut(pumpSwitchGate) {
		return false
	}
	if m.isMark(i-1, "/", "-") && m.numIs(i-2, roleIgnored) && m.items[i-2].why == pumpsNumber {
		return true
	}
	k := m.hintBefore(i, 7, true, "pumpswitch")
	return k >= 0 && !m.pointBetween(k, i)
}

// scaleEnd reads the last number of a gauge's face: "gauge maxes out at 200".
func (m *message) scaleEnd(i int) bool {
	switch m.items[i].value {
	case 60, 100, 150, 160, 200, 300:
	default:
		return false
	}
	k := m.hintBefore(i, 2, false, "scaleend")
	if k < 0 || k < i-1 && !m.says(i-1, "at", "to", "en") || m.left(k, 4, false, func(j int) bool { return m.is(j, cItem, "gauge") }) < 0 {
		return false
	}
	if m.is(k, cPeak, "") {
		m.unsay(k)
	}
	return true
}

// weighed reads a weight: "the tank weighs 40 lbs", "says the heater weighs 140".
func (m *message) weighed(i int) bool {
	return m.is(i-1, cHint, "weighs") || m.items[i].unit == "psi" && m.hintBefore(i, 3, false, "weighs") >= 0
}

var otherMeasureGate = onlyWith(cHint, "otherkind")

// otherMeasure reads "hardness 18 at the kitchen", "battery at 80". A test point between
// has the number, unless it only says where: "hardness at the kitchen 22".
func (m *message) otherMeasure(i int) bool {
	if m.shut(otherMeasureGate) {
		return false
	}
	k := m.hintBefore(i, 6, false, "otherkind")
	if k < 0 {
		return false
	}
	if m.pointBetween(k, i) {
		switch m.text(k + 1) {
		case "at", "of", "from", "in", "test", "on", "en", "de":
		default:
			return false
		}
	}
	return m.left(i, i-k, false, func(j int) bool { return j > k && m.is(j, cHint, "ofpressure") }) < 0
}

var scaldCheckGate = onlyWith(cHint, "scaldcheck")

// scaldCheck reads the warmth of taps told in a row: "scald check: lav 121, tub 119".
func (m *message) scaldCheck(i int) bool {
	if v := m.items[i].value; v < 85 || v > 160 || m.shut(scaldCheckGate) {
		return false
	}
	k := m.left(i, 14, true, func(k int) bool { return m.is(k, cHint, "scaldcheck") })
	return k >= 0 && m.left(i, i-k, true, func(j int) bool { return j > k && m.is(j, cHint, "ofpressure") }) < 0
}

// minutesIn reads "rear in 20": nobody is told a pressure so.
func (m *message) minutesIn(i int) bool {
	if m.text(i-1) == "en" && strings.HasPrefix(m.text(i+1), "llego") && (i < 2 || m.items[i-2].mark) {
		return true // "en 15 llego a la otra"
	}
	return m.text(i-1) == "in" && i > 1 && m.items[i].value <= 60 && m.items[i].num.integer && m.items[i-2].point != "" && (i+1 == len(m.items) || m.items[i+1].mark)
}

// soManyFor reads "2 for 120".
func (m *message) soManyFor(i int) bool {
	return m.text(i-1) == "for" && m.isNum(i-2) && m.items[i-2].unit == "" && m.items[i-2].value < 10 && !m.points(i)
}

// halfHeard tells whether a spoken ten ends in a word that may be its digit, written as
// it sounds: "ninety fo", "front sixty ate", and "rear at seventy for" at an end.
func (m *message) halfHeard(i int) bool {
	n := m.items[i].num
	if !n.words || m.items[i].unit != "" || int(n.value)%10 != 0 || n.value < 20 || i+1 >= len(m.items) {
		return false
	}
	if m.isMark(i+1, "-") && m.is(i+2, cHint, "digitsound") && m.toks[m.items[i+1].tok].glued {
		return true // "ninety-ate"
	}
	return m.is(i+1, cHint, "digitsound") || m.is(i+1, cHint, "digitword") && (i+2 == len(m.items) || m.items[i+2].mark)
}

// lengthOf reads inches and feet told without their unit: "box is 18 deep", "60 of pex",
// "12 by 14", "60 from the house".
func (m *message) lengthOf(i int) bool {
	switch {
	case m.is(i+1, cHint, "lengthways"), m.farFrom(i):
		return true
	case m.text(i+1) == "of" && (m.is(i+2, cHint, "pipestuff") || m.items[i].tok+2 < len(m.toks) && m.toks[m.items[i].tok+2].text == "hose"):
		return true
	case m.text(i+1) == "by" && m.isNum(i+2), m.text(i-1) == "by" && m.isNum(i-2):
		return true
	case m.says(i+1, "from", "de") && m.says(i+2, "the", "la") && m.is(i+3, cHint, "wholehouse"):
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
	switch m.text(i + 1) {
	case "above", "below", "up", "down", "beneath", "arriba", "abajo", "arriba de", "abajo de":
		return true
	case "off", "past":
		return !m.pointAt(i-1) && !m.pointAt(i+3) && !m.is(i+3, cItem, "") && !m.is(i+3, cPlace, "") && !m.is(i+3, cBibb, "")
	}
	return false
}

// askedFor tells whether the number at i is what a thing costs somewhere: "it was 18 at the
// counter", "31 online".
func (m *message) askedFor(i int) bool {
	k := i + 1
	if m.says(k, "at", "from", "in", "on") {
		k++
	}
	if m.is(k, cDeterminer, "") {
		k++
	}
	return m.is(k, cHint, "shopplace")
}

// aThing tells whether the number at i is part of a thing's name: "on a 48 cycle", "a 36
// cabinet". What a gauge shows is "a 66" alone, or at a tap.
func (m *message) aThing(i int) bool {
	return m.says(i-1, "a", "an", "the") && m.unknownNoun(i+1)
}

// beside reads by how much a pressure lies off another: "20 under at the kitchen", "front
// 12 above setpoint", "rear up 14", which a number of its own may follow: "up 14 to 88".
func (m *message) beside(i int) bool {
	switch m.text(i + 1) {
	case "over", "under", "above", "below", "short":
		return m.items[i].value <= 40 && (m.stopAt(i+2) || m.says(i+2, "at", "on") || m.is(i+2, cTarget, "") || m.is(i+2, cHint, "limitname"))
	}
	return m.says(i-1, "up", "down") && m.items[i].value < 40 && m.pointAt(i-2) && (m.stopAt(i+1) || m.says(i+1, "to", "from"))
}

// reliefSet reads what a relief valve is set or rated to open at: "relief is set at 150 and
// 210 degrees".
func (m *message) reliefSet(i int) bool {
	if !m.kinds.has(cRelief) || m.items[i].value < 75 || int(m.items[i].value)%5 != 0 {
		return false
	}
	k := m.left(i, 7, true, func(k int) bool { return m.is(k, cRelief, "") })
	return k >= 0 && m.items[k].seg == m.items[i].seg && !m.pointBetween(k, i) && m.left(i, i-k, true, func(j int) bool {
		return m.text(j) == "set" || m.text(j) == "rated" || m.text(j) == "opens" || m.text(j) == "pops"
	}) >= 0
}

package intents

import "strings"

// Lists of the lexicon that these rules know.
var (
	listOffBy    = listOf("off by")
	listAtPlace  = listOf("at place")
	listPreset   = listOf("preset")
	listColdSide = listOf("cold side")
	listBackIn   = listOf("back in")
	listFaces    = listOf("faces")
)

// Numbers of another kind: the hardness of the water, the settings of a pump's switch,
// the end of a gauge's scale, minutes, the warmth of a tap, a number half heard.

// otherKinds tell that a number measures something else, whatever its unit, and barely so that
// one without a unit does.
var (
	otherKinds = numberRulesOf([]numberRule{
		{(*message).ofPumpSwitch, pumpsNumber, gateOf(opener{hints: []string{"pumpswitch"}, words: []string{"pump"}})},
		{(*message).reliefSet, "what a relief valve opens at", onlyWithClass(cRelief)},
		{(*message).scaleEnd, "a gauge's range", gateOf(opener{items: []string{"gauge"}, hints: []string{"pegged", "scaleend"}, words: []string{"-"}})},
		{(*message).adjustsOver, "a regulator's range", adjustsGate},
		{(*message).mostBorne, "the most that a part bears", mostGate},
		{(*message).onScale, "a gauge's range", onlyWithList(listFaces)},
		{(*message).weighed, "a weight", gateOf(opener{hints: []string{"weighs"}, words: []string{"lb", "lbs", "pound", "pounds"}})},
		{(*message).saidInUnits, "said again in another unit", alwaysOpen},
		{(*message).acrossFilter, "before or behind a filter", gateOf(opener{items: []string{"softener"}, hints: []string{"filter"}})},
		{(*message).byScrew, "a mark of a regulator's screw", onlyWithList(listScrews)},
		{(*message).needsPressure, "what something needs", onlyWithList(listTakes, listCallFor)},
		{(*message).liked, "what somebody wants", onlyWithWords("like")},
		{(*message).usual, "what houses usually have", onlyWithList(listUsual, listMostOf)},
		{(*message).nextTime, "to be reached yet", gateOf(opener{words: []string{"next", "be", "will be", "wont be", "would be", "next month", "next week", "next year"}})},
		{(*message).wouldItBe, "asked about", onlyWithList(listWould)},
		{(*message).shouldSee, "what a gauge should show", gateOf(opener{words: []string{"should", "ought to", "supposed to"}, lists: []list{listShouldSee}})},
		{(*message).inSeason, "from memory", onlyWithList(listSeasons)},
		{(*message).saidTheirs, othersNumber, onlyWithList(listTheirs)},
		{(*message).ofHeating, "of a heating system", gateOf(opener{hints: []string{"heating"}, words: []string{"boiler"}})},
	})
	otherKindsBare = numberRulesOf([]numberRule{
		{(*message).otherMeasure, "measured, but no pressure", onlyWith(cHint, "otherkind")},
		{(*message).strangersDial, "measured, but no pressure", onlyWithWords("set")},
		{(*message).roomWarmth, "a temperature", onlyWith(cPart, "thermostat")},
		{(*message).presetSomewhere, "a factory setting", onlyWithList(listPreset)},
		{(*message).scaldCheck, "a temperature", onlyWith(cHint, "scaldcheck")},
		{(*message).hotAndCold, "a temperature", gateOf(opener{hints: []string{"cold"}, lists: []list{listColdSide}})},
		{(*message).hotTap, "a pressure or a temperature", alwaysOpen},
		{(*message).volts, "volts", onlyWithWords("v", "w")},
		{(*message).plusMinutes, "minutes", onlyWithWords("t")},
		{(*message).minutesIn, "minutes to come", gateOf(opener{words: []string{"in", "en"}, lists: []list{listBackIn}})},
		{(*message).soManyFor, "a price", gateOf(opener{words: []string{"for", "to", "cash", "/"}, lists: []list{listOneOfMoney}})},
		{(*message).askedFor, "a price", onlyWith(cHint, "shopplace")},
		{(*message).houseNumberTold, "a house number", onlyWithWords("house", "address", "addr")},
		{(*message).aThing, "names a thing", gateOf(opener{classes: setOf(cFitting), items: []string{"gauge"}, words: []string{"a", "an", "the"}})},
		{(*message).countsThings, "a count", alwaysOpen},
		{(*message).ofThingAtTap, "of another thing", onlyWithList(listLinks)},
		{(*message).ofOtherThing, "of another thing", gateOf(opener{classes: setOf(cClaim), lists: []list{listLinks, listShows}})},
		{(*message).farToStreet, "a length", onlyWithList(listStreetLine)},
		{(*message).yearTold, "a year", onlyWithWords("from", "in")},
		{(*message).personsToo, "a person's age", onlyWithList(listPeople)},
		{(*message).clockToo, "time of day", onlyWithWords("at")},
		{(*message).dug, "a length", onlyWithList(listDigs)},
		{(*message).lasts, "a time", onlyWithList(listLasts)},
		{(*message).coolsTo, "a temperature", onlyWithList(listCools)},
		{(*message).upSince, "a difference", onlyWithWords("up", "down")},
		{(*message).usedA, "names a thing", onlyWithList(listUses)},
		{(*message).leftToDo, "what is left", onlyWithWords("left", "left at", "left in", "left on")},
		{(*message).downDrain, "a length", onlyWithList(listInDrains)},
		{(*message).outsideWarmth, "weather or minutes", onlyWithWords("out")},
		{(*message).inchesOf, "a length", onlyWithWords("in")},
		{(*message).paidFor, "a price", onlyWithList(listLaborParts, listSells)},
		{(*message).warmHouse, "a temperature", onlyWithList(listHeatsRooms)},
		{(*message).incomingWarmth, "a temperature", onlyWithList(listIncoming)},
		{(*message).lengthOf, "a length", gateOf(opener{hints: []string{"lengthways"}, words: []string{"back", "of", "by", "x", "from", "de"}})},
		{(*message).farFrom, "a length", gateOf(opener{classes: setOf(cDeterminer), lists: []list{listAboveBelow}})},
		{(*message).beside, "a difference", gateOf(opener{words: []string{"up", "down"}, lists: []list{listOffBy}})},
	})
)

// anotherKind tells what item i counts when its clause says that it measures something
// other than the pressure of a house, "" when it says no such thing. It is asked before any setting
// is looked for.
func (m *message) anotherKind(i int) string {
	if why := m.reason(otherKinds, i); why != "" || m.items[i].unit != "" {
		return why
	}
	return m.reason(otherKindsBare, i)
}

// houseNumberTold reads what is said to be a house number: "house no. 88, street is Elm", "71 is the
// house number too".
func (m *message) houseNumberTold(i int) bool {
	at := m.items[i].tok
	return m.p.houseTold(m.toks, at) || m.p.houseToldBehind(m.toks, at+m.items[i].n) > 0 || m.numberOfSite(i)
}

// numberOfSite tells whether the number at i is said to be the house's, and is: "yes the house is 90 too, 90
// Elder Ct".
func (m *message) numberOfSite(i int) bool {
	k := i - 1
	for m.inList(k, listLinks) || m.says(k, "also", "too", "no", "number", "the", "at") {
		k--
	}
	too := m.says(i+1, "too", "also", "as", "as well", "tambien") || m.says(i-1, "also", "too")
	return m.site != nil && too && m.says(k, "house", "casa", "address", "place") && strings.HasPrefix(m.site.line, m.items[i].num.digits+" ")
}

// presetSomewhere reads what a thing that is no regulator of the house came set to.
func (m *message) presetSomewhere(i int) bool {
	return m.inList(i-1, listPreset) && !m.has(cItem, "prv")
}

// plusMinutes reads how long after the first reading another was taken: "T+15 laundry 57".
func (m *message) plusMinutes(i int) bool {
	return m.text(i-1) == "and" && m.text(i-2) == "t" && strings.Contains(m.raw, "+")
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

// ofPumpSwitch reads what a well's pump starts and stops at: "pressure switch 40/60",
// "pump kicks on at 40 and off at 60".
func (m *message) ofPumpSwitch(i int) bool {
	if m.isMark(i-1, "/", "-") && m.numIs(i-2, roleIgnored) && m.items[i-2].why == pumpsNumber {
		return true
	}
	if m.text(i-1) == "pump" && m.isMark(i+1, "/", "-") && m.isNum(i+2) && m.items[i+2].value-m.items[i].value == 20 {
		return true // "pump 40/60"
	}
	k := m.hintBefore(i, 7, true, "pumpswitch")
	return k >= 0 && !m.pointBetween(k, i)
}

// scaleEnd reads the last number of a gauge's face: "gauge maxes out at 200".
func (m *message) scaleEnd(i int) bool {
	if m.ofScale(i) {
		return true
	}
	if !wholeFace(&m.items[i]) || m.items[i].unit == "" && m.items[i].value < 60 {
		return false
	}
	if m.is(i-1, cDeterminer, "") && m.is(i+1, cHint, "pegged") {
		return true // "my 160 maxed out"
	}
	k := m.hintBefore(i, 2, false, "scaleend")
	if k < 0 || k < i-1 && !m.says(i-1, "at", "to", "en") || !m.faceOf(k) {
		return false
	}
	m.unsay(k)
	m.items[k].muted = true // what "goes up to" 200 does not climb
	return true
}

// faceOf tells whether the words of a scale's end at item k are said of a gauge: "gauge goes up to", "this
// gauge is in meters of water, goes up to".
func (m *message) faceOf(k int) bool {
	j := k - 1
	for m.isMark(j, ",") || m.says(j, "and", "y", "it", "in", "en", "of", "de", "that", "which", "que", "water", "agua") || m.is(j, cUnit, "") || m.inList(j, listLinks) {
		j--
	}
	return m.left(j+1, 4, false, func(j int) bool { return m.is(j, cItem, "gauge") || m.inList(j, listFaces) }) >= 0
}

// onScale reads the end of a gauge's face before its name: "maxed its 160 scale".
func (m *message) onScale(i int) bool {
	return m.inList(i+1, listFaces) && wholeFace(&m.items[i]) && (m.is(i-1, cDeterminer, "") || m.says(i-1, "its"))
}

// volts reads what a valve or an element runs on: "zone valve 24 V".
func (m *message) volts(i int) bool {
	if m.text(i+1) == "w" && m.glued(i+1) && m.says(i+2, "bulb", "bulbs", "light", "lights", "lamp", "led") {
		return true // "60w bulb"
	}
	if m.text(i+1) != "v" || m.isNum(i+2) {
		return false
	}
	v := m.items[i].value
	return v == 12 || 22 <= v && v <= 28 || 105 <= v && v <= 130 || 200 <= v && v <= 250
}

// ofScale tells whether the number at i is an end of a gauge's whole face: "gauge is 0-160 psi",
// "manómetro de 0 a 10 bar". What a gauge went through from 0 is none.
func (m *message) ofScale(i int) bool {
	low := i
	if m.items[i].value != 0 {
		low = i - 2
	}
	if !m.isNum(low) || m.items[low].value != 0 || !m.isNum(low+2) || !wholeFace(&m.items[low+2]) {
		return false
	}
	switch {
	case m.isMark(low+1, "-"):
		if m.toks[m.items[low+1].tok].glued {
			return true
		}
	case !m.says(low+1, "to", "a", "thru", "through", "hasta"):
		return false
	}
	if m.is(low+3, cItem, "gauge") {
		return true
	}
	k := low - 1
	for m.inList(k, listLinks) || m.is(k, cHint, "scalehead") || m.is(k, cDeterminer, "") || m.says(k, "from", "de") {
		k--
	}
	return m.is(k, cItem, "gauge")
}

// wholeFace tells whether a number may end the face of a gauge.
func wholeFace(it *item) bool {
	switch it.unit {
	case "bar", "kgcm":
		return it.value >= 4 && it.num.integer
	case "kpa":
		return it.value >= 400 && int(it.value)%100 == 0
	case "", "psi":
		switch it.value {
		case 4, 6, 7, 10, 11, 14, 16, 30, 60, 100, 150, 160, 200, 230, 300, 400, 600, 1000, 1600:
			return true
		}
	}
	return false
}

// otherMeasure reads "hardness 18 at the kitchen", "battery at 80". A test point between
// has the number, unless it only says where: "hardness at the kitchen 22".
func (m *message) otherMeasure(i int) bool {
	k := m.hintBefore(i, 6, false, "otherkind")
	if k < 0 {
		n := i + 1
		for m.says(n, "at", "in", "en") || m.is(n, cDeterminer, "") {
			n++
		}
		return n > i+1 && m.is(n, cHint, "otherkind") // "104 at the spa"
	}
	if m.pointBetween(k, i) {
		switch {
		case m.inList(k+1, listAtPlace):
		default:
			return false
		}
	}
	return m.left(i, i-k, false, func(j int) bool { return j > k && m.is(j, cHint, "ofpressure") }) < 0
}

// strangersDial reads what a thing is set to that is no equipment and opens its clause: "fridge
// set at 37", "the oven is set to 62".
func (m *message) strangersDial(i int) bool {
	set := i - 1
	if m.says(set, "at", "to", "on", "for") {
		set--
	}
	if m.text(set) != "set" {
		return false
	}
	k := set - 1
	for k >= 0 && m.inList(k, listLinks) {
		k--
	}
	return m.noEquipment(k) && (k == 0 || m.items[k-1].mark || m.is(k-1, cDeterminer, "") && (k == 1 || m.items[k-2].mark))
}

// scaldCheck reads the warmth of taps told in a row: "scald check: lav 121, tub 119".
func (m *message) scaldCheck(i int) bool {
	if v := m.items[i].value; v < 85 || v > 160 {
		return false
	}
	k := m.left(i, 14, true, func(k int) bool { return m.is(k, cHint, "scaldcheck") })
	return k >= 0 && m.left(i, i-k, true, func(j int) bool { return j > k && m.is(j, cHint, "ofpressure") }) < 0
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

// beside reads by how much a pressure lies off another: "20 under at the kitchen", "front
// 12 above setpoint", "rear up 14", which a number of its own may follow: "up 14 to 88".
func (m *message) beside(i int) bool {
	if m.inList(i+1, listOffBy) {
		return m.items[i].value <= 40 && (m.stopAt(i+2) || m.says(i+2, "at", "on") || m.is(i+2, cTarget, "") || m.is(i+2, cHint, "limitname"))
	}
	if !m.says(i-1, "up", "down") || m.items[i].value >= 40 || !m.stopAt(i+1) && !m.says(i+1, "to", "from") {
		return false
	}
	k := i - 2
	for m.is(k, cHint, "moves") || m.inList(k, listLinks) {
		k--
	}
	return k >= 0 && (m.items[k].point != "" || m.taken(k))
}

// reliefSet reads what a relief valve is set or rated to open at: "relief is set at 150 and
// 210 degrees".
func (m *message) reliefSet(i int) bool {
	if m.items[i].value < 75 || int(m.items[i].value)%5 != 0 {
		return false
	}
	k := m.left(i, 7, true, func(k int) bool { return m.is(k, cRelief, "") })
	return k >= 0 && m.items[k].seg == m.items[i].seg && !m.pointBetween(k, i) && m.left(i, i-k, true, func(j int) bool {
		return m.text(j) == "set" || m.text(j) == "rated" || m.text(j) == "opens" || m.text(j) == "pops"
	}) >= 0
}

// eyesight reads "20/20".
func (m *message) eyesight(i int) bool {
	twenty := func(k int) bool { return m.isNum(k) && m.items[k].value == 20 }
	return twenty(i) && (m.isMark(i+1, "/") && twenty(i+2) || m.isMark(i-1, "/") && twenty(i-2))
}

package intents

import (
	"strings"

	"lazyhand/assess"
)

// Lists of the lexicon that these rules know.
var (
	listTagNone       = listOf("tag none")
	listRunningLate   = listOf("running late")
	listOnSomething   = listOf("on something")
	listParticles     = listOf("particles")
	listOpenedValves  = listOf("opened valves")
	listEverything    = listOf("everything")
	listOnFile        = listOf("on file")
	listDeniesRunning = listOf("denies running")
	listAmongTaps     = listOf("among taps")
	listOpen          = listOf("open")
	listShut          = listOf("shut")
	listStatIsPut     = listOf("stat is put")
)

var flowOpener = opener{
	classes: setOf(cStatic, cFlowing),
	hints:   []string{"flows", "rests", "quiet", "uses"},
	words:   []string{"flow", "with", "w/", "w", "con"},
	lists:   []list{listOpen, listShut},
	typed:   []string{"st", "fl", "res"},
}

// flowTag reads the running or resting of water at item i.
func (m *message) flowTag(i int) assess.Flow {
	if !m.begins(i, keyFlow) || m.flowOn(i) {
		return ""
	}
	if m.text(i+1) == ":" && m.inList(i+2, listTagNone) &&
		(m.is(i, cFlowing, "") || m.inList(i, listOpen) || m.says(i, "running", "open")) {
		return assess.Static // "Anything running: no"
	}
	switch {
	case m.is(i, cStatic, ""):
		if m.noRest(i) {
			return ""
		}
		return assess.Static
	case m.is(i, cFlowing, ""):
		return m.flowNamed(i)
	}
	if f := m.flowShort(i); f != "" {
		return f
	}
	if m.text(i) == "on" && m.isNum(i-1) && m.is(i-2, cHint, "zone") {
		return assess.Flowing // "zone 3 on"
	}
	if m.moreOpen(i) {
		return assess.Flowing
	}
	if m.noFlow(i) || m.troubleWhen(i) || m.inList(i, listOpen) && m.ofDrop(i) {
		return ""
	}
	switch {
	case m.inList(i, listOpen):
		if m.ofEquipment(i) {
			return ""
		}
		if m.says(i, "running", "corriendo") && m.besideReading(i) && m.pressed(i-1) {
			return assess.Flowing // "lav 55 running, 61 shut"
		}
		if f, told := m.openTold(i); told {
			return f
		}
		if f, told := m.openNext(i); told {
			return f
		}
	case m.inList(i, listShut):
		if m.allShut(i) {
			return assess.Static
		}
	}
	if f := m.againstRest(i); f != "" {
		return f
	}
	return m.flowTalk(i)
}

// moreOpen tells whether so many taps are open as the number before item i counts, which are named
// with the number before: "66 one tap on, 59 two on".
func (m *message) moreOpen(i int) bool {
	if !m.inList(i, listOpen) || !m.isNum(i-1) || !m.closes(i) {
		return false
	}
	n := m.items[i-1].value
	if m.says(i-2, "with", "w/", "w", "con") && m.isNum(i-3) {
		return n >= 1 && n <= 4 // "61 with two running"
	}
	if !m.isNum(i - 2) {
		return false
	}
	return n >= 2 && n <= 4 && m.items[i-2].value >= leastPSI && m.left(i-2, 8, true, func(k int) bool { return m.is(k, cFlowing, "") }) >= 0
}

// noRest tells whether words of rest tell no rest of the water.
func (m *message) noRest(i int) bool {
	t := m.text(i)
	// "slammed every faucet shut, no bang", "customer has no running water"
	return m.is(i-1, cHint, "puts") && strings.HasSuffix(t, " shut") ||
		m.is(i, cSym, "no_water") && m.says(i-1, "has", "have", "had", "got") ||
		// "stat on the heater says 140"
		t == "stat" && (m.is(i-1, cItem, "heater") || m.inList(i+1, listStatIsPut)) ||
		t == "stat" && m.right(i, 4, true, func(k int) bool { return m.numIs(k, roleTemp) }) >= 0 ||
		t == "closed up" && m.left(i, 12, true, func(k int) bool { return m.is(k, cItem, "") && !m.is(k, cItem, "gauge") }) >= 0 || // "flushed the heater, closed up"
		t == "stat" && m.right(i, 3, false, func(k int) bool { return m.is(k, cItem, "heater") }) >= 0 && !m.isNum(i-1) && !m.isNum(i+1) ||
		// "whole house is quiet, no hammer"
		strings.Contains(t, "quiet") && m.right(i, 4, false, func(k int) bool { return m.is(k, cSym, "") }) >= 0 ||
		strings.HasSuffix(t, " still") && m.text(i+1) == "on" // "closed the stop, house still on"
}

// flowNamed reads a word of running water, which may be denied.
func (m *message) flowNamed(i int) assess.Flow {
	if strings.HasSuffix(m.text(i), " on") && m.onStreet(i) && !m.says(i, "zone on", "sprinkler on") {
		return "" // "at the tap on 14 Elm"
	}
	if m.toilet(i) || m.is(i, cHint, "fully") &&
		m.left(i, 4, false, func(k int) bool { return m.is(k, cItem, "heater") || m.is(k, cBurner, "") }) >= 0 {
		return "" // "the water heater going full blast"
	}
	if strings.HasSuffix(m.text(i), " runs") && m.isNum(i+1) {
		return "" // "shower runs 118 on the thermometer"
	}
	near := 2
	if m.says(i, "corriendo", "flowing", "running water") {
		near = 3
	}
	if m.negLeft(i, near) || m.inNeither(i) {
		return assess.Static
	}
	if m.saysWhen(i) && m.troubled(i) || m.troubleWhen(i) || m.text(i) == "gpm" || m.ofDrop(i) {
		return ""
	}
	return assess.Flowing
}

// flowShort reads the short words of a list of readings: "kitchen st 70 fl 52", "flow: 48".
func (m *message) flowShort(i int) assess.Flow {
	pressed := func(k int) bool { return m.isNum(k) && m.items[k].role == roleReading } // "fl 2022" tells of a flush
	if m.text(i) == "flow" && (pressed(i+1) || m.isMark(i+1, ":") && pressed(i+2)) {
		return assess.Flowing
	}
	if m.withList(i) || m.says(i, "with", "w/", "w", "con") && (m.opensAgainst(i+1) || m.is(i+1, cDeterminer, "") && m.opensAgainst(i+2)) || m.text(i) == "flow" && (m.isMark(i-1, "/") && m.is(i-2, cStatic, "") || m.isMark(i+1, "/") && m.is(i+2, cStatic, "")) {
		return assess.Flowing
	}
	flowing := func(k int) bool { return m.typed(k) == "fl" || m.typed(k) == "res" }
	if m.typed(i) == "st" && pressed(i+1) && (m.right(i, 5, true, flowing) >= 0 || (m.pointAt(i-1) || m.is(i-1, cBibb, "")) && !m.shortSet(i)) {
		return assess.Static
	}
	if flowing(i) && pressed(i+1) {
		return assess.Flowing
	}
	return ""
}

// noFlow tells whether a word that may tell running water tells something else.
func (m *message) noFlow(i int) bool {
	if m.toilet(i) || m.is(i-1, cHint, "stops") && m.is(i-2, cFixture, "") {
		return true // "commode quit running", "when the washer stops filling"
	}
	switch m.text(i) {
	case "running":
		// "the main is running 118", "running behind today"
		return m.says(i-1, "quit", "stopped") && m.left(i, 4, false, func(k int) bool { return namesToilet(m.text(k)) }) >= 0 ||
			m.runsAt(i) || m.inList(i+1, listRunningLate)
	case "going":
		return m.inList(i+1, listParticles) // "main is going up"
	case "prendido", "prendida":
		return m.heaterTag(i) != ""
	case "on":
		return m.onElsewhere(i)
	}
	return false
}

// onElsewhere tells whether the "on" at item i is no open tap.
func (m *message) onElsewhere(i int) bool {
	if m.text(i+1) == "it" && m.onOccasion(i) {
		return false // "with the hose on it drops to 48"
	}
	if m.inList(i+1, listOnSomething) || m.inList(i+1, listOnFile) || m.left(i, 6, false, func(k int) bool { return m.is(k, cItem, "heater") || m.is(k, cBurner, "") }) >= 0 {
		return true // "77 side bib on it", "the heater had not come on"
	}
	if m.is(i+1, cItem, "") {
		return true // "gauge port on prv 61"
	}
	if m.is(i+1, cDeterminer, "") && m.text(i+2) != "whole" && m.text(i+2) != "entire" || m.is(i+1, cHint, "possessive") || m.thePlace(i+1) {
		return true // "PRV: none on this house"
	}
	if m.is(i-1, cWater, "") && m.left(i, 4, false, func(k int) bool { return m.is(k, cHint, "lights") }) >= 0 {
		return true // "Turned the water on and fixed a drip"
	}
	return m.text(i-1) == "going" || m.supplyOn(i)
}

// onOccasion tells whether the "on" at item i is of a tap that tells on what occasion a gauge was read: "while
// the washer is on".
func (m *message) onOccasion(i int) bool {
	k := i - 1
	for m.inList(k, listLinks) {
		k--
	}
	return m.tap(k) && m.occasionFor(k)
}

// supplyOn tells whether the "on" at item i only says that the house has water: "water's on",
// "the water has been on for a week". "With the water on in the tub" it runs.
func (m *message) supplyOn(i int) bool {
	k := i - 1
	for m.inList(k, listLinks) || m.says(k, "been", "has", "has been", "had been", "still", "back") {
		k--
	}
	if !m.is(k, cWater, "") || k == i-1 && !strings.HasSuffix(strings.ToLower(m.toks[m.items[k].tok].raw), "s") {
		return false
	}
	first := m.clauseStart(i)
	for first < k && (m.items[first].mark || m.is(first, cDeterminer, "") || m.says(first, "and", "but")) {
		first++
	}
	return first == k && (m.closes(i) || m.says(i+1, "when", "for", "since", "all", "again", "here", "at"))
}

// ofEquipment tells whether what runs or is open at item i is a piece of equipment.
func (m *message) ofEquipment(i int) bool {
	return m.is(i-1, cItem, "heater") || m.is(i-2, cItem, "heater") || m.is(i-1, cBurner, "") || m.is(i-1, cItem, "recirc") ||
		m.is(i-1, cItem, "prv") || m.is(i-2, cItem, "prv") || m.is(m.pastLinks(i-1), cFuel, "tankless")
}

// openTold reads what stands before a word of running: "nothing … running", "kitchen faucet
// wide open". It is told when that decides, be it that no water is meant.
func (m *message) openTold(i int) (f assess.Flow, told bool) {
	on := m.text(i) == "on"
	for k := i - 1; k >= 0 && k >= i-5 && m.items[k].sent == m.items[i].sent; k-- {
		t := m.text(k)
		if m.items[k].num != nil && m.items[k].unit == "other" && m.items[k].value <= 6 {
			return assess.Flowing, true // "2 zones on", "3 showers going"
		}
		if m.items[k].num != nil && m.items[k].value > 4 || m.items[k].mark && t != "(" {
			return "", false
		}
		switch t {
		case "nothing", "no", "nada", "none", "without", "ninguna", "not", "isnt", "sin", "nobody", "no one", "nadie":
			if t == "not" && m.says(k-1, "would", "will", "could", "does", "did") {
				return "", true // "the drain valve would not open"
			}
			if on && (i-k > 2 && !m.closes(i) || t == "no" || m.says(i+1, "it", "the", "that")) && m.text(i-1) != "water" {
				return "", true
			}
			return assess.Static, true
		}
		if m.is(k, cItem, "") || m.is(k, cNeg, "") || t == "valve" || t == "stop" {
			return "", true // "found the meter valve half shut and opened it"
		}
		if m.is(k, cHint, "nobody") && (!on || m.closes(i)) {
			return assess.Static, true
		}
		if !m.meets(k, taps) {
			continue
		}
		switch {
		case !on && m.nobodys(k):
			return assess.Static, true
		case !on:
			return assess.Flowing, true
		case m.items[k].point == "" && i-k <= 2 && m.text(i+1) != "the" && !m.unknownNoun(i+1) && !(i+1 < len(m.items) && m.items[i+1].site):
			return assess.Flowing, true
		}
	}
	return "", false
}

// openNext reads what stands behind "opened" and "running": "opened the tub", "opened the
// main all the way".
func (m *message) openNext(i int) (f assess.Flow, told bool) {
	if !m.says(i, "opened", "running", "turned on", "turn on", "cracked") {
		return "", false
	}
	if m.is(i-2, cBefore, "") && m.is(i-1, cOwn, "") || m.says(i+1, "anything", "it up") {
		return "", true // "before I opened anything the front was 74"
	}
	for k := i + 1; k < len(m.items) && k <= i+3; k++ {
		switch {
		case m.is(k, cPoint, "street"), m.is(k, cItem, ""), m.inList(k, listOpenedValves):
			return "", true
		case m.is(k, cFixture, "") || m.is(k, cPoint, "") ||
			m.is(k, cBibb, ""), m.isNum(k) && m.items[k].unit == "other" && m.items[k].value <= 6:
			return assess.Flowing, true // "opened two taps"
		case m.items[k].mark || m.items[k].num != nil && m.items[k].value > 4:
			return "", false
		}
	}
	return "", false
}

// allShut tells whether all is shut by the word at item i: "everything in the house off",
// "108 there with all of it closed".
func (m *message) allShut(i int) bool {
	heats := func(k int) bool { return m.is(k, cItem, "heater") || m.is(k, cBurner, "") }
	for k := i - 1; k >= 0 && k >= i-5 && m.items[k].sent == m.items[i].sent; k-- {
		if m.items[k].num != nil || m.items[k].mark || heats(k) || m.text(k) == "so" && k < i-1 {
			return false // "held no air at all so I took it off"
		}
		switch {
		case m.text(k) == "every":
			if m.text(k+1) != "time" {
				return true
			}
		case m.text(k) == "all":
			return m.text(k+1) != "the" || m.text(k+2) != "way" // "won't shut all the way off"
		case m.inList(k, listEverything):
			return true
		}
		if m.is(k, cHint, "allofit") && m.left(i, 6, true, heats) < 0 && m.text(i) != "off" {
			return true
		}
	}
	return false
}

// flowOn tells whether item i only says what water is on or where it is off: "no water on
// the block", "running on their own line".
func (m *message) flowOn(i int) bool {
	if strings.HasSuffix(m.text(i), " on") && m.inList(i+1, listOnFile) {
		return true // "nothing on file"
	}
	if strings.HasSuffix(m.text(i), "hose on") && m.inList(i+1, listOnSomething) {
		return true // "put a new hose on it"
	}
	if m.text(i) == "on" && m.is(i-1, cBibb, "") && m.is(i+1, cPlace, "") {
		return true // "spigot on side of house 88"
	}
	if !strings.HasSuffix(m.text(i), " on") || !m.is(i+1, cDeterminer, "") && !(m.is(i+1, cHint, "possessive") && !m.isNum(i+2)) && !m.thePlace(i+1) {
		return false
	}
	return m.is(i, cStatic, "") || m.is(i, cFlowing, "") && !m.says(i+2, "whole", "entire")
}

// thePlace tells whether item i is a side of the house with its article: "spigot on the
// front wall".
func (m *message) thePlace(i int) bool {
	return m.is(i, cPlace, "") && strings.HasPrefix(m.text(i), "the ")
}

// runsAt tells whether "running" at item i only leads from a place to its pressure: "the
// main is running 118".
func (m *message) runsAt(i int) bool {
	if !m.inList(i-1, listLinks) && !m.pointAt(i-1) || !m.isNum(i+1) && !(m.text(i+1) == "at" && m.isNum(i+2)) {
		return false
	}
	fixture := m.left(i, 4, false, func(k int) bool { return m.is(k, cFixture, "") || m.isNum(k) }) >= 0
	while := m.left(i, 4, false, func(k int) bool { return m.is(k, cHint, "whiles") }) >= 0
	return !while && (!fixture || m.inList(i-1, listLinks)) // "backyard faucet is running 91"
}

// inNeither reads "en ninguna de las dos hay agua corriendo".
func (m *message) inNeither(i int) bool {
	k := m.left(i, 6, true, func(k int) bool { return m.text(k) == "ninguna" || m.text(k) == "ninguno" || m.text(k) == "neither" })
	return k >= 0 && m.items[k].seg == m.items[i].seg
}

// negLeft tells whether a word of denial stands within n items before i, in its clause.
func (m *message) negLeft(i, n int) bool {
	return m.left(i, n, false, func(k int) bool {
		if m.inList(k, listDeniesRunning) {
			return m.items[k].seg == m.items[i].seg
		}
		return false
	}) >= 0
}

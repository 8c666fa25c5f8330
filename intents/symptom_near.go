package intents

import "strings"

// Lists of the lexicon that these rules know.
var (
	listItHasBeen  = listOf("it has been")
	listReliefWas  = listOf("it was relief")
	listHowOften   = listOf("how often")
	listUsedTo     = listOf("used to")
	listNextDoor   = listOf("next door")
	listKeepsOn    = listOf("keeps on")
	listItOfRelief = listOf("it of relief")
	listToRelief   = listOf("to relief")
	listVessel     = listOf("vessel")
	listOfPressure = listOf("of pressure")
	listWrittenOn  = listOf("written on")
)

// What stands near a symptom and says whose it is.

// reliefNear tells whether the relief valve is what the clause of item i is about.
func (m *message) reliefNear(i int) bool {
	return m.kinds.has(cRelief) && (m.pronounOfRelief(i) || m.reliefBefore(i) || m.blocksRelief(i) || m.reliefBehind(i))
}

// pronounOfRelief tells whether "it" before item i stands for the relief named in the
// sentence: "relief on the heater, it's been dripping".
func (m *message) pronounOfRelief(i int) bool {
	it := i - 1
	for m.inList(it, listItHasBeen) {
		it--
	}
	if m.oldOneAt(it) {
		last := m.left(it, 8, true, func(k int) bool {
			return m.is(k, cRelief, "") || m.is(k, cItem, "") || m.is(k, cFitting, "") || m.is(k, cBibb, "")
		})
		return m.is(last, cRelief, "") // "relief valve replaced, old one dripped"
	}
	if !m.inList(it, listReliefWas) {
		return false
	}
	from := m.sents[m.items[i].sent].from
	for k := it - 1; k >= from; k-- {
		if m.is(k, cRelief, "") {
			return true
		}
	}
	if it > from || m.right(i, 4, false, m.tap) >= 0 { // "it leaks at the lav"
		return false
	}
	for k := it - 1; k >= 0 && m.items[k].sent >= m.items[i].sent-1; k-- {
		if m.is(k, cItem, "") || m.meets(k, leakyThings) {
			return m.is(k, cRelief, "") // "T&P tag reads 150. it drips"
		}
	}
	return false
}

// leakyThings are the classes of what may drip.
var leakyThings = setOf(cRelief, cFitting, cBibb, cPoint, cFixture)

// oldOneAt tells whether item k stands for a part that was taken out: "the old one".
func (m *message) oldOneAt(k int) bool {
	return m.is(k, cPart, "old") && !m.is(k+1, cItem, "") || m.text(k) == "one" && m.is(k-1, cPart, "old") || m.says(k, "old one", "the old one", "vieja", "viejo")
}

// pastWhoFound returns the item before i, or i, that does not say who found what follows: "T&P dry and I found no leaks".
func (m *message) pastWhoFound(i int) int {
	for m.is(i, cOwn, "") || m.isAny(i, cHint, "found", "shows") || m.says(i, "saw", "heard", "see", "had", "have") {
		i--
	}
	return i
}

// reliefBefore tells whether the relief stands before item i with nothing between that would
// take it over: "T&P on the 50 gal electric (2013) was dripping".
func (m *message) reliefBefore(i int) bool {
	for k := i - 1; k >= m.sents[m.items[i].sent].from && k >= i-12; k-- {
		switch {
		case m.is(k, cRelief, ""):
			return true
		case m.is(k, cNeg, "") && k < i && m.meets(m.pastAnd(m.pastWhoFound(k-1)), setOf(cDischarge, cDry, cBlocked)):
			return false // "no relief discharge no leaks", "T&P dry and no leaks"
		case m.is(k, cPresent, "") && m.is(k+1, cNeg, "") && m.says(k-1, "and", "but", "y", "pero"):
			return false // "the relief is dry and there are no leaks"
		case m.isMark(k, "(", ")", ":", "=", "-"), m.items[k].num != nil && m.factual(k):
		case m.isMark(k, ",") && (m.is(i, cDry, "") && k == i-1 || m.text(i-1) == "not" && k == i-2):
			// "watched the relief for an hour, dry", "relief rated 150, not dripping"
		case m.isMark(k, ",") && m.goesOn(k+1, i):
		case m.items[k].mark, m.items[k].point != "", m.measureAt(k), m.is(k, cItem, "") && !m.is(k, cItem, "heater"):
			return false // "la válvula de alivio es de 150 psi y gotea" tells a rating
		}
	}
	return false
}

// pastAnd returns the item before the "and" at item k, or k where none stands there.
func (m *message) pastAnd(k int) int {
	if m.says(k, "and", "y", "&") {
		return k - 1
	}
	return k
}

// goesOn tells whether a clause that begins at item k tells on about the last one with the verb
// at item i, and names no place of its own: "T&P won't reseat, keeps dripping".
func (m *message) goesOn(k, i int) bool {
	for ; k < i; k++ {
		if !m.inList(k, listKeepsOn) {
			return false
		}
	}
	place := func(k int) bool { return m.meets(k, pointClasses) || m.is(k, cItem, "") || m.is(k, cPipe, "") }
	return m.text(i) != "leak" && m.text(i) != "leaks" && m.is(i, cDischarge, "") && m.right(i, 4, false, place) < 0
}

// blocksRelief reads a sentence that goes on about the relief of the one before: "the relief
// valve dumps at night. It's not capped".
func (m *message) blocksRelief(i int) bool {
	s := m.items[i].sent
	if !m.is(i, cBlocked, "") || s == 0 || !m.lastIsRelief(s-1) {
		return false
	}
	from := m.sents[s].from
	if other := m.left(i, i-from, true, func(k int) bool { return m.is(k, cItem, "") || m.is(k, cBibb, "") }); other >= 0 {
		return false // "T&P good. tank has a cap on it"
	}
	if i <= from+5 && m.says(from, "its", "it", "it is") || strings.HasSuffix(m.text(i), " it") || strings.HasPrefix(m.text(i), "le ") {
		return true // "there is a cap on it"
	}
	k := m.right(i, 5, false, func(k int) bool {
		return m.inList(k, listItOfRelief) || m.is(k, cItem, "") || m.pointAt(k) || m.is(k, cFitting, "")
	})
	return m.inList(k, listItOfRelief) && m.text(k+1) != "in" // "somebody screwed a cap on the end of its pipe"
}

// lastIsRelief tells whether the relief is what sentence s names last, but for the heater that it is on.
func (m *message) lastIsRelief(s int) bool {
	for k := m.sents[s].to - 1; k >= m.sents[s].from; k-- {
		switch {
		case m.is(k, cRelief, ""):
			return true
		case m.is(k, cItem, "") && !m.is(k, cItem, "heater"), m.is(k, cBibb, ""), m.pointAt(k) && !m.items[k].weak:
			return false
		}
	}
	return false
}

// reliefBehind tells whether the relief follows item i: "dripping out of the relief".
func (m *message) reliefBehind(i int) bool {
	for k := i + 1; k < m.sents[m.items[i].sent].to && k <= i+6; k++ {
		switch {
		case m.is(k, cRelief, ""):
			return k > i+1 || !m.is(k+1, cDry, "") // "no leaks t&p dry" tells two things
		case m.items[k].mark, m.items[k].num != nil:
			return false
		case m.is(i, cBlocked, "") && m.is(k, cDischarge, ""): // "con una llave cerrada la descarga de la T&P"
		case !m.inList(k, listToRelief):
			return false
		}
	}
	return false
}

// measureAt tells whether item k is a number that may be a measure, not a time.
func (m *message) measureAt(k int) bool {
	it := &m.items[k]
	timed := it.role == roleDuration || unitDays(it.unit) > 0 || it.unit == "hour" || it.unit == "min"
	return it.num != nil && it.role != roleIgnored && !timed
}

// inVessel tells whether the words at i name a place where water is not wanted:
// "no water in the pan".
func (m *message) inVessel(i int) bool {
	switch m.text(i) {
	case "the", "her", "his", "their", "that":
		i++
	}
	return m.inList(i, listVessel) || m.is(i, cItem, "")
}

// heatingUp tells whether a heater that fires is told behind item i, and no resting water before it.
func (m *message) heatingUp(i int) bool {
	heats := func(k int) bool { return m.is(k, cState, "firing") || m.text(k) == "heats" }
	return m.right(i, 6, true, heats) >= 0 && m.left(i, 8, true, func(k int) bool { return m.is(k, cStatic, "") }) < 0
}

// pressureNear tells whether words of pressure stand near item i.
func (m *message) pressureNear(i int) bool {
	for k := max(0, i-8); k < min(len(m.items), i+5); k++ {
		if m.inList(k, listOfPressure) {
			return true
		}
	}
	return false
}

// isItemNear tells whether a piece of equipment stands in the clause of item i.
func (m *message) isItemNear(i int) bool {
	s := &m.sents[m.items[i].sent]
	for k := max(s.from, i-6); k < min(s.to, i+3); k++ {
		if k != i && m.is(k, cItem, "") && m.separators(min(k, i), max(k, i)) == 0 && !(m.items[k].point != "" && m.pointUsed(k)) {
			return true
		}
	}
	return false
}

// fixtureNear tells whether a tap or a fixture stands near item i.
func (m *message) fixtureNear(i int) bool {
	s := &m.sents[m.items[i].sent]
	for k := max(s.from, i-4); k < min(s.to, i+3); k++ {
		if k != i && (m.is(k, cPoint, "bath") || m.is(k, cPoint, "kitchen") || m.is(k, cFixture, "")) && m.text(k) != "valve" {
			return true
		}
	}
	return false
}

// waterNear tells whether water is what the colour at item i is of.
func (m *message) waterNear(i int) bool {
	s := &m.sents[m.items[i].sent]
	for k := i + 1; k < s.to && k <= i+2; k++ {
		if m.is(k, cWater, "") {
			return true
		}
	}
	for k := i - 1; k >= s.from && k >= i-7; k-- {
		if m.is(k, cWater, "") {
			return true
		}
		if m.items[k].mark && m.text(k) != "," && m.text(k) != ":" {
			break
		}
		if m.items[k].num != nil {
			break
		}
	}
	return false
}

// lookedFor tells whether a symptom is only what is to be looked for: "check for creep
// again in two weeks".
func (m *message) lookedFor(i int) bool {
	k := i - 1
	for m.meets(k, symptomTalk) || m.says(k, "any", "pressure") {
		k-- // "checked for relief discharge"
	}
	if m.text(k) == "for" || m.text(k) == "por" {
		return m.is(k-1, cHint, "looksfor") || m.text(k-1) == "out" && m.text(k-2) == "eye"
	}
	return m.is(i+1, cHint, "lookout") // "leak check: dry"
}

// cleared tells whether what was looked for at item i was not there.
func (m *message) cleared(i int) bool {
	clear := func(k int) bool { return m.isAny(k, cHint, "cleared", "denies") || m.is(k, cDry, "") }
	return m.right(i, 7, true, clear) >= 0
}

// usedTo tells whether the symptom at item i is told of a time gone by, and no more: "used to hammer
// before the new prv", "antes goteaba".
func (m *message) usedTo(i int) bool {
	k := i - 1
	for m.inList(k, listHowOften) {
		k--
	}
	if !m.inList(k, listUsedTo) {
		return false
	}
	return m.right(i, 8, true, func(j int) bool { return m.says(j, "still", "again", "todavia", "sigue", "otra vez", "too") }) < 0
}

// ofNeighbours tells whether the symptom at item i is that of a thing in another house, which opens
// its clause: "the neighbors toilet runs".
func (m *message) ofNeighbours(i int) bool {
	k := m.clauseStart(i)
	for m.is(k, cDeterminer, "") {
		k++
	}
	if !m.inList(k, listNextDoor) || m.is(k+1, cClaim, "") {
		return false
	}
	if k+1 == i {
		return true // "the neighbors' toilet runs", one phrase
	}
	thing := func(j int) bool {
		return j < i && (m.is(j, cFixture, "") || m.is(j, cFitting, "") || m.is(j, cItem, "") || m.items[j].point != "" || m.inList(j, listToilets))
	}
	return m.right(k, 2, false, thing) >= 0
}

// ofHouseThings are the classes of what can drip or hum in a house.
var ofHouseThings = setOf(cPoint, cItem, cPipe, cStatic)

// ofSomethingElse tells whether what drips or hums at item i is no part of a
// house: "the truck is leaking oil".
func (m *message) ofSomethingElse(i int) bool {
	s := &m.sents[m.items[i].sent]
	for k := i - 1; k >= s.from && k >= i-6; k-- {
		it := &m.items[k]
		if m.isMark(k, ":") && m.left(k, 5, true, func(j int) bool { return m.inList(j, listWrittenOn) }) >= 0 {
			break // "note on the door: toilet won't shut up"
		}
		if it.point != "" || it.kinds.meets(ofHouseThings) || it.num != nil && it.role == roleReading {
			return false
		}
		for j := it.tok; j < it.tok+it.n && !it.mark && !it.site; j++ {
			if m.wordCues(j).has(cueForeign) {
				return true
			}
		}
	}
	if i+1 >= s.to {
		return false
	}
	reach := i + 5
	switch m.toks[m.items[i+1].tok].text {
	case "on", "along", "at", "down":
	case "in":
		reach = i + 3 // "no leaks in my roof"
	default:
		reach = i + 1 // "leaky pen"
	}
	for k := i + 1; k < s.to && k <= reach && !m.items[k].mark; k++ {
		it := &m.items[k]
		if it.num != nil || it.site || it.kinds.has(cItem) || it.kinds.has(cPipe) {
			break
		}
		for j := it.tok; j < it.tok+it.n; j++ {
			if m.wordCues(j).has(cueForeign) {
				return true // "bang on the door", "creeping along the interstate"
			}
		}
	}
	return false
}

// negRight tells whether item k denies what follows it.
func (m *message) negRight(k int) bool {
	return m.inList(k, listTurnsRound)
}

// deniedAlone tells whether "no" stands right before item i in a list of symptoms.
func (m *message) deniedAlone(i int) bool {
	return m.says(i-1, "no", "sin", "zero", "or") && (m.stopAt(i+1) || m.says(i+1, "no", "or", "and"))
}

// pipeNear tells whether pipes are named near item i.
func (m *message) pipeNear(i int) bool {
	for k := max(0, i-5); k < min(len(m.items), i+6); k++ {
		if m.is(k, cPipe, "") && m.items[k].sent == m.items[i].sent {
			return true
		}
	}
	return false
}

package intents

import (
	"strings"

	"lazyhand/assess"
)

// Lists of the lexicon that these rules know.
var (
	listRustyParts    = listOf("rusty parts")
	listRungAt        = listOf("rung at")
	listOfGauge       = listOf("of gauge")
	listHasLeak       = listOf("has leak")
	listRises         = listOf("rises")
	listShutsTaps     = listOf("shuts taps")
	listWhoShuts      = listOf("who shuts")
	listNoWaterOf     = listOf("no water of")
	listButFor        = listOf("but for")
	listSlight        = listOf("slight")
	listPressureTaken = listOf("pressure taken")
	listRustMarks     = listOf("rust marks")
	listGasPartOf     = listOf("gas part of")
	listClimbDenied   = listOf("climb denied")
	listSeenOn        = listOf("seen on")
)

// symptomWord reads a word or phrase of the lexicon that tells a symptom by itself, unless
// what stands beside it says otherwise.
func (m *message) symptomWord(i int) (assess.SymptomName, bool) {
	code, ok := m.val(i, cSym)
	if !ok {
		return noSymptom, true
	}
	name, other := assess.SymptomName(code), false
	switch name {
	case assess.Leak:
		if m.gasLeaks(i) {
			return assess.GasSmell, true
		}
		other = m.noLeak(i)
	case assess.LowFlow:
		return m.lowFlow(i), true
	case assess.DarkWater:
		if strings.Contains(m.text(i), "discolo") && m.signIn(i, signRust) && !m.signIn(i, signDark) {
			return assess.RustyWater, true
		}
	case assess.RustyWater:
		other = m.rustOfPart(i)
	case assess.Creep:
		floors := m.isNum(i+1) && m.items[i+1].unit == "other"                                                   // "walked up 9 floors"
		few := m.text(i+1) == "over" && m.isNum(i+2) && m.items[i+2].unit == "" && m.items[i+2].value < leastPSI // "climbed over three boxes"
		other = floors || few || m.climbsByHeat(i) || m.deniedShort(i)
	case assess.Noise:
		other = m.inList(i, listRings) && (m.isNum(i+1) || m.inList(i+1, listRungAt)) // "buzz 112 and ask for Lee"
	case assess.Hammer:
		other = m.otherBang(i)
	case assess.NoWater:
		return m.noWater(i), true
	case assess.GasSmell:
		other = strings.Contains(m.text(i), "rotten") && m.waterNear(i) // "hot water smells like rotten eggs": the anode's
	case assess.Swings:
		if m.text(i) == "pressure all over" && m.inList(i-1, listWeak) {
			return assess.LowFlow, true
		}
		other = m.otherSwing(i)
	}
	if other {
		return noSymptom, true
	}
	return name, true
}

// gasLeaks reads a leak of gas: "gas is leaking somewhere", "no gas leaks", "gas line leaks at the
// flex", "leak on the gas valve", "la conexión del gas tiene fuga".
func (m *message) gasLeaks(i int) bool {
	gas := func(k int) bool {
		part := m.text(k) == "gas" && m.is(k+1, cHint, "gaspart")
		return part || strings.HasPrefix(m.text(k), "gas ") && !m.is(k, cItem, "") && !m.is(k, cSym, "")
	}
	if gas(i+1) || m.right(i, 3, false, gas) >= 0 && m.says(i+1, "on", "at", "in", "from") {
		return true
	}
	if k := m.right(i, 5, false, func(k int) bool { return m.text(k) == "gas" }); k >= 0 {
		part := m.says(k-1, "de", "del") && m.is(k-2, cHint, "gaspart") // "fuga en la línea de gas"
		if part || k == i+2 && m.text(k-1) == "el" {
			return true
		}
	}
	k := i - 1
	if gas(k) || m.is(k, cHint, "gaspart") && gas(k-1) {
		return true
	}
	for k > 0 && (m.inList(k, listGasPartOf) || m.inList(k, listLinks) || m.is(k, cDeterminer, "") || m.is(k, cItem, "heater")) {
		k-- // "gas valve on the heater leaks"
	}
	if m.is(k, cHint, "gaspart") && gas(k-1) || m.is(k, cHint, "ofheater") && gas(k) {
		return true
	}
	k = i - 1
	for m.inList(k, listLinks) || m.inList(k, listHasLeak) {
		k--
	}
	return m.says(k, "gas", "propane")
}

// gaugeLeaks tells whether what leaks at item i is the gauge: "gauge leaked at the threads".
func (m *message) gaugeLeaks(i int) bool {
	k := i - 1
	for m.inList(k, listOfGauge) || m.inList(k, listLinks) {
		k--
	}
	return m.is(k, cItem, "gauge") && m.items[k].seg == m.items[i].seg
}

// deniedShort tells whether the denial of a climb at item i is no clause of its own, as in "66 rear,
// doesn't climb": what does not climb there is told for another time or thing.
func (m *message) deniedShort(i int) bool {
	if !m.inList(i, listClimbDenied) {
		return false
	}
	ofGauge := m.is(i-1, cItem, "gauge") || m.is(i-1, cHint, "needle") // "gauge doesn't climb"
	first := i
	for m.says(first-1, "it", "she", "just", "still") {
		first-- // "watched it ten minutes, it did not climb"
	}
	timed := m.says(i+1, "in", "over", "for", "after") && (m.isNum(i+2) || m.isNum(i+3)) // "did not rise in ten minutes"
	return !m.closes(i) && !timed || !ofGauge && !(m.clauseStart(first) == first && m.left(first, 4, true, m.isNum) >= 0)
}

// noLeak tells whether a word of leaking at item i tells none that is there.
func (m *message) noLeak(i int) bool {
	t := m.text(i)
	switch {
	case namesToilet(t) && m.atTimes(i): // "a foghorn whenever a toilet refills"
		return true
	case m.repaired(i):
		return true
	case m.is(i, cCond, "") && m.isItemNear(i) && oneOf(t, "weeping", "seeping"):
		return true
	// "el tanque se reventó por dentro"
	case strings.Contains(t, "revento") && m.is(i, cCond, "") && m.itemIn(m.items[i].sent) == "expansion_tank":
		return true
	case m.gaugeLeaks(i):
		return true
	case m.looksSo(i): // "wtr lks inky"
		return true
	}
	dropsShort := t == "drips" && m.toks[m.items[i].tok].text != t
	return dropsShort && (m.says(i+1, "to", "from") || m.isNum(i+1)) // "prssr drps to 40"
}

// lowFlow returns what a word of little water at item i tells.
func (m *message) lowFlow(i int) assess.SymptomName {
	t := m.text(i)
	ofItem := m.is(i, cCond, "") && (m.isItemNear(i) || m.itemIn(m.items[i].sent) != "" && !m.pressureNear(i))
	if m.is(i-1, cClaim, "says") && m.closes(i) || m.weakAsTold(i) {
		ofItem = false // "no expansion tank, she said weak"
	}
	switch {
	case ofItem && !m.waterNear(i) && !m.fixtureNear(i), m.ofThing(i):
		return noSymptom
	// "won't shut all the way, a bit of a dribble left"
	case m.signIn(i, signEndless) && (m.signInClause(i, signEndless) || !m.signInClause(i, signTap)):
		return assess.Leak
	case m.signIn(i, signFirm): // "from firehose to drizzle and back"
		return assess.Swings
	case t == "no pressure" && m.says(i-1, "with", "at", "under") && m.left(i, 5, true, m.isNum) >= 0 && m.itemIn(m.items[i].sent) == "gauge":
		return noSymptom // "gauge is off, reads 5 with no pressure"
	case t == "low flow" && m.says(i+1, "toilet", "shower head", "head"):
		return noSymptom
	case oneOf(t, "no pressure", "sin presion") && (m.inList(i+1, listPressureTaken) || m.text(i+1) == "to" && m.inList(i+2, listPressureTaken)),
		oneOf(t, "no pressure", "sin presion", "bad pressure") && (m.isNum(i+1) || m.isAny(i+1, cSym, "swings", "creep")):
		return noSymptom // "no pressure creep"
	}
	return assess.LowFlow
}

// weakAsTold tells whether what is weak at item i is the water of which somebody spoke in a clause that names
// no part: "set the prv to 65, she said upstairs was weak".
func (m *message) weakAsTold(i int) bool {
	seg, told, it := m.items[i].seg, false, false
	for k := m.sents[m.items[i].sent].from; k < m.sents[m.items[i].sent].to; k++ {
		if m.items[k].seg != seg || m.items[k].mark {
			continue
		}
		if m.is(k, cItem, "") || m.items[k].num != nil {
			return false
		}
		told = told || k < i && (m.is(k, cClaim, "says") || m.is(k, cHint, "runsout"))
		it = it || k < i && m.says(k, "it", "its")
	}
	return told && (!it || m.inList(i+1, listWhereWeak))
}

// rustOn tells whether the rust at item i is seen on a thing, not in its water: "rust down the seam",
// "rust streaks on the tank", "rusty pan under the heater".
func (m *message) rustOn(i int) bool {
	k := i + 1
	for m.inList(k, listRustMarks) {
		k++
	}
	if !m.inList(k, listSeenOn) {
		return false
	}
	for k++; m.is(k, cDeterminer, ""); k++ {
	}
	return m.is(k, cHint, "heaterpart") || m.is(k, cItem, "") && m.items[k].point == "" ||
		m.says(k, "side", "sides", "shell", "casing", "top") && m.itemIn(m.items[i].sent) != ""
}

// rustOfPart tells whether the rust at item i is that of a part, not of the water.
func (m *message) rustOfPart(i int) bool {
	if m.ofThing(i) || m.is(i, cCond, "") && m.isItemNear(i) && !m.waterNear(i) {
		return true
	}
	tap := m.is(i+1, cHint, "tapword") || m.is(i+1, cFitting, "part") // "rusty hose bib"
	return strings.HasPrefix(m.text(i), "rust") && (m.text(i-1) == "needle" || tap && !m.is(i+2, cWater, "") ||
		m.inList(i+1, listRustyParts) || m.rustOn(i))
}

// climbsByHeat tells whether what climbs at item i does so for the burner, or is no pressure.
func (m *message) climbsByHeat(i int) bool {
	climbed := m.text(i) == "climbed"
	if climbed && m.isNum(i+1) && m.items[i+1].unit == "other" {
		return true // "climbed four floors"
	}
	hot := func(k int) bool {
		return m.is(k, cPeak, "") || climbed &&
			(m.is(k, cState, "firing") || m.text(k) == "hot" &&
				m.left(k, 2, true, func(j int) bool { return m.says(j, "ran", "run", "running") }) >= 0)
	}
	if m.climbsToPeak(i) || m.comesBack(i) || m.text(i+1) == "to" && m.left(i, 6, true, hot) >= 0 {
		return true // "red needle climbed to 150", "with the burner going it climbed to 112"
	}
	return m.inList(i, listRises) && m.heatingUp(i)
}

// climbsToPeak tells whether what climbs at item i does so to the highest of a time, which the
// reading tells by itself: "left the lazy hand on the back spigot all night and she went up to
// 133".
func (m *message) climbsToPeak(i int) bool {
	to := i + 1
	if !m.says(i+1, "to") {
		to = i
	}
	if !m.isNum(to+1) || !strings.HasSuffix(m.text(to), "to") {
		return false
	}
	peak := func(k int) bool { return m.is(k, cPeak, "") }
	shut := func(k int) bool { return m.is(k, cStatic, "") }
	return m.left(i, 16, true, peak) >= 0 && m.left(i, 16, true, shut) < 0
}

// comesBack tells whether what climbs at item i only does so as what ran was shut: "closed everything and it
// went up to 108". What takes its time creeps, and so does what climbs while all is shut.
func (m *message) comesBack(i int) bool {
	to := i + 1
	if !m.isNum(to) && !m.isNum(to+1) || m.tellsSpan(i) || beginsWith(m.text(i), "cre", "slow") {
		return false
	}
	k := m.left(i, 8, false, func(k int) bool { return m.inList(k, listShutsTaps) || m.is(k, cHint, "closesthem") })
	return k >= 0 && (m.clauseStart(k) == k || m.inList(k-1, listWhoShuts)) && m.left(i, i-k, true, func(j int) bool { return m.says(j, "and", "y", "then") }) >= 0
}

// otherBang tells whether what bangs at item i is no pipe.
func (m *message) otherBang(i int) bool {
	if m.itemIn(m.items[i].sent) == "expansion_tank" {
		// "tank's full of water, thunks like a log"
		likened := m.text(i+1) == "like" || m.text(i+1) == "when" && m.is(i, cCond, "")
		if likened || m.text(i-1) == "it" || m.is(i-1, cItem, "") && !m.plainNo(i-1) {
			return true
		}
	}
	return m.says(i, "knocks", "bang", "hammer") && (m.text(i+1) == "on" && m.text(i+2) == "door" || m.text(i+1) == "loud")
}

// noWater returns what a lack of water at item i tells.
func (m *message) noWater(i int) assess.SymptomName {
	switch {
	case m.is(i, cHint, "drop") && m.dryBeside(i): // "under the sink it's all dry, not a drop"
		return noSymptom
	case m.kinds.has(cRelief) && m.reliefTold(i) && !m.ofSupply(i): // "felt the relief pipe, not a drop"
		return assess.ReliefDischarge
	case m.noWaterOf(i), m.butTrickle(i):
		return noSymptom
	}
	return assess.NoWater
}

// butTrickle tells whether what follows takes a little out of the lack of water at item i: "nothing
// comes out upstairs but a dribble". Then the flow is low.
func (m *message) butTrickle(i int) bool {
	k := m.right(i, 3, true, func(k int) bool { return m.inList(k, listButFor) })
	if k < 0 {
		return false
	}
	for k++; m.is(k, cDeterminer, "") && !m.is(k, cSym, "") || m.inList(k, listSlight); k++ {
	}
	return k < m.sents[m.items[i].sent].to && m.is(k, cSym, "low_flow")
}

// reliefTold tells whether the sentence of item i tells of the relief valve before it, or in the
// same clause.
func (m *message) reliefTold(i int) bool {
	relief := func(k int) bool { return m.is(k, cRelief, "") }
	k := m.right(i, 8, true, relief)
	left := m.left(i, 20, true, relief)
	if left >= 0 && !m.is(i, cHint, "drop") && m.right(left, i-left-1, true, func(k int) bool { return m.is(k, cDischarge, "") && m.items[k].seg != m.items[i].seg }) >= 0 {
		return false // "relief valve drips at night, no water in the whole house"
	}
	return left >= 0 || k >= 0 && m.items[k].seg == m.items[i].seg
}

// ofSupply tells whether the lack of water at item i is told of a tap, a house or who lives in
// it, in a clause of its own that names no relief: "T&P dry, not a drop at the sink".
func (m *message) ofSupply(i int) bool {
	supply := m.text(i) == "no water" || m.text(i) == "without water"
	for k := m.clauseStart(i); k < m.clauseEnd(i); k++ {
		if m.is(k, cRelief, "") {
			return false
		}
		supply = supply || k != i && (m.signsOf(k)&(signTap|signSupply) != 0 || m.is(k, cWhose, "person"))
	}
	return supply
}

// dryBeside tells whether the sentence of item i says dry in other words too.
func (m *message) dryBeside(i int) bool {
	dry := func(k int) bool { return k != i && (m.is(k, cHint, "denies") || m.is(k, cDry, "")) }
	return m.anyIn(m.items[i].sent, dry, setOf(cSym, cDry))
}

// noWaterOf tells whether "no water" at item i is said of something else than the supply.
func (m *message) noWaterOf(i int) bool {
	t, next := m.text(i), m.text(i+1)
	switch {
	case t == "nada de agua" && m.is(i+1, cColor, ""): // "nada de agua negra"
	case m.is(i-1, cColor, "") && strings.HasPrefix(t, "water"): // "black water is gone"
	case t == "no water" && next == "on" && m.right(i, 4, true, func(k int) bool { return m.is(k, cHint, "everywhere") }) < 0:
	case (t == "no water" || strings.HasPrefix(t, "without ")) && m.inList(i+1, listNoWaterOf): // "no water damage"
	case next == "in" && m.inVessel(i+2): // "no water in the pan"
	case next == "of" && oneOf(t, "water out", "water is out"): // "let the water out of the tank"
	case next == "caliente" && m.text(i+2) != "ni", next == "hot":
	default:
		return false
	}
	return true
}

// otherSwing tells whether what swings at item i is no pressure: "the white house with the
// swing", "up and down stairs".
func (m *message) otherSwing(i int) bool {
	return m.text(i) == "swing" && m.says(i-1, "the", "a", "porch") || m.text(i) == "up and down" && m.text(i+1) == "stairs"
}

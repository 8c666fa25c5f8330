package intents

import (
	"strings"

	"lazyhand/assess"
)

// Lists of the lexicon that these rules know.
var (
	listPipeRuns     = listOf("pipe runs")
	listWaterSForce  = listOf("water's force")
	listOpensSymptom = listOf("opens symptom")
	listWhereWeak    = listOf("where weak")
	listHowWeak      = listOf("how weak")
	listSeemsWeak    = listOf("seems weak")
	listLiftsByHand  = listOf("lifts by hand")
	listReseats      = listOf("reseats")
	listShutsRelief  = listOf("shuts relief")
)

var symptomOpener = opener{
	classes: setOf(cSym, cColor, cBlocked, cDischarge, cDry, cFitting),
	hints:   []string{"stops"},
	lists:   []list{listOpensSymptom, listWeak, listShutsRelief},
}

// noSymptom says that what reads like a symptom is none.
const noSymptom assess.SymptomName = ""

// symptomRules read a symptom at an item, the first that decides for all: what it returns
// stands, also when that is no symptom.
var symptomRules = [...]func(m *message, i int) (name assess.SymptomName, decided bool){
	(*message).symptomOfRelief,
	(*message).valveOnRelief,
	(*message).quietRegulator,
	(*message).symptomOfToilet,
	(*message).slowFill,
	(*message).weakWater,
	(*message).knockOrBlack,
	(*message).burstPipe,
	(*message).neitherHotNorCold,
	(*message).colouredWater,
	(*message).symptomWord,
}

// neitherHotNorCold reads a lack of both kinds of water that is told in two clauses: "no hot, no
// cold".
func (m *message) neitherHotNorCold(i int) (assess.SymptomName, bool) {
	other := ""
	switch strings.TrimSuffix(m.text(i), " water") {
	case "hot":
		other = "cold"
	case "cold":
		other = "hot"
	default:
		return noSymptom, false
	}
	if m.text(i-1) != "no" || !m.closes(i) && m.text(i+1) != "at" {
		return noSymptom, false
	}
	k := m.left(i, 5, false, func(k int) bool { return m.says(k, other, other+" water") && m.text(k-1) == "no" })
	return assess.NoWater, k >= 0
}

// symptomAt reads a symptom at item i.
func (m *message) symptomAt(i int) (assess.SymptomName, bool) {
	if !m.begins(i, keySymptom|keyRefills) || m.headsCreepCheck(i) {
		return noSymptom, false
	}
	if m.is(i, cRelief, "") && m.items[i].role != roleTaken || m.is(i, cSym, "low_flow") && m.bySoMuch(i) {
		return noSymptom, false
	}
	for _, read := range symptomRules {
		if name, decided := read(m, i); decided {
			return name, name != noSymptom
		}
	}
	return noSymptom, false
}

// headsCreepCheck tells whether item i names a check for creep whose outcome follows: "Creep
// check, ten minutes with everything shut: no creep".
func (m *message) headsCreepCheck(i int) bool {
	if !m.is(i, cSym, "creep") || !m.is(i+1, cHint, "lookout") || !m.closes(i+1) {
		return false
	}
	for k := i + 1; k < m.sents[m.items[i].sent].to; k++ {
		if m.is(k, cSym, "creep") {
			return true
		}
	}
	return false
}

// symptomOfRelief reads what is said of the relief valve: "T&P line is capped", "relief drips".
func (m *message) symptomOfRelief(i int) (assess.SymptomName, bool) {
	if namesToilet(m.text(i)) || !m.reliefNear(i) {
		return noSymptom, false
	}
	switch {
	case m.is(i, cBlocked, ""):
		if m.shutsOther(i) {
			return noSymptom, true
		}
		return assess.ReliefBlocked, true
	case m.saysOfReliefPipe(i), m.reliefTried(i):
		return noSymptom, true
	case m.is(i, cDischarge, ""), m.is(i, cDry, ""), m.is(i, cSym, "leak"), m.reliefStops(i):
		return assess.ReliefDischarge, true
	}
	return noSymptom, false
}

// shutsOther tells whether what is blocked at item i is another part than the relief: "T&P
// dumping, somebody had valved off the exp tank".
func (m *message) shutsOther(i int) bool {
	k := m.right(i, 3, false, func(k int) bool { return m.is(k, cItem, "") && !m.is(k, cItem, "heater") })
	return k >= 0 && m.items[k].seg == m.items[i].seg && !m.inList(k-1, listItOfRelief) // not "a plug into its drain"
}

// saysOfReliefPipe tells whether item i tells of the relief's pipe or its rating, no discharge.
func (m *message) saysOfReliefPipe(i int) bool {
	blocked := func(k int) bool { return abs(k-i) <= 8 }
	return m.is(i, cHint, "spout") && m.anyIn(m.items[i].sent, blocked, setOf(cBlocked)) || // "T&P discharge is capped"
		m.is(i, cTarget, "") && m.isNum(i+1) || // "la T&P abre a 150"
		m.says(i, "runs", "run") && m.inList(i+1, listPipeRuns) // "T&P line runs uphill"
}

// reliefTried tells whether the relief valve was lifted by hand at item i, and works: "relief lifts fine
// and reseats".
func (m *message) reliefTried(i int) bool {
	if !m.inList(i, listLiftsByHand) {
		return false
	}
	return m.right(i, 6, true, func(k int) bool { return m.is(k, cCond, "good") || m.inList(k, listReseats) }) >= 0
}

// valveOnRelief reads a valve that stands in the relief's pipe, where none may: "there's a valve on
// the T&P discharge line", "shutoff on the relief".
func (m *message) valveOnRelief(i int) (assess.SymptomName, bool) {
	if !m.kinds.has(cRelief) || !m.inList(i, listShutsRelief) || !m.says(i+1, "on", "in", "en") {
		return noSymptom, false
	}
	k := i + 2
	for m.is(k, cDeterminer, "") {
		k++
	}
	named := m.text(i) != "valve" && m.text(i) != "stop" && m.text(i) != "llave"
	return assess.ReliefBlocked, m.is(k, cRelief, "") && (named || m.reliefPipe(k))
}

// reliefPipe tells whether the relief named at item k is its pipe: "T&P discharge line".
func (m *message) reliefPipe(k int) bool {
	name := m.text(k)
	for _, part := range []string{"line", "pipe", "tube", "discharge", "drain", "outlet", "tubo", "descarga"} {
		if strings.Contains(name, part) {
			return true
		}
	}
	return m.is(k+1, cPipe, "") || m.is(k+1, cHint, "spout")
}

// reliefReseats tells whether what reseats at item i is a relief valve that shut by itself again:
// "lifted the relief, it reseated".
func (m *message) reliefReseats(i int) bool {
	thing := func(k int) bool { return m.is(k, cItem, "") || m.is(k, cFitting, "") }
	return m.inList(i, listReseats) && m.left(i, 8, true, func(k int) bool { return m.is(k, cRelief, "") }) >= 0 && m.right(i, 3, true, thing) < 0
}

// symptomOfToilet reads a toilet that runs: "the toilet keeps filling".
func (m *message) symptomOfToilet(i int) (assess.SymptomName, bool) {
	switch {
	case !m.toilet(i):
		return noSymptom, false
	case m.repaired(i):
		return noSymptom, true
	}
	return assess.Leak, true
}

// quietRegulator reads that a regulator makes no noise: "prv is quiet".
func (m *message) quietRegulator(i int) (assess.SymptomName, bool) {
	if m.text(i) != "quiet" || !m.closes(i) && !m.is(i+1, cNow, "") {
		return noSymptom, false
	}
	k := i - 1
	for m.inList(k, listLinks) || m.inList(k, listLeadsToFact) || m.inList(k, listHowWeak) || m.says(k, "runs", "running", "stays") {
		k--
	}
	return assess.Noise, m.is(k, cItem, "prv")
}

// slowFill reads how long water takes: "takes 20 min to fill the tub".
func (m *message) slowFill(i int) (assess.SymptomName, bool) {
	took := m.says(i, "takes", "took", "tarda") && m.isNum(i+1) && oneOf(m.items[i+1].unit, "min", "hour", "other")
	return assess.LowFlow, took && m.text(i+2) == "to" && m.says(i+3, "fill", "fills")
}

// weakWater reads "low pressure", "pressure is weak", "cstmr sz shwr s wk".
func (m *message) weakWater(i int) (assess.SymptomName, bool) {
	if !m.inList(i, listWeak) {
		return noSymptom, false
	}
	if m.says(i, "week", "wek", "weke") {
		return assess.LowFlow, m.meantWeak(i)
	}
	if m.text(i) == "wk" && m.closes(i) { // short for week as well
		water := func(k int) bool { return m.meets(k, setOf(cFixture, cWater)) || m.items[k].point != "" }
		if m.is(i-1, cClaim, "says") || m.left(i, 4, false, water) >= 0 {
			return assess.LowFlow, true
		}
	}
	if m.isNum(i-1) || m.isNum(i+1) {
		return noSymptom, false
	}
	pressure := func(k int) bool { return m.inList(k, listWaterSForce) }
	return assess.LowFlow, m.left(i, 3, false, pressure) >= 0
}

// meantWeak tells whether "week" at item i is "weak", said of the water: "customer says its week
// upstairs", "shower is real week".
func (m *message) meantWeak(i int) bool {
	if !m.closes(i) && !m.inList(i+1, listWhereWeak) && m.items[i+1].point == "" && !m.is(i+1, cFixture, "") {
		return false
	}
	k := i - 1
	for m.inList(k, listHowWeak) || m.is(k, cHint, "hedge") {
		k--
	}
	if m.inList(k, listSeemsWeak) {
		return true
	}
	if m.inList(k, listLinks) {
		k--
	} else if k == i-1 {
		return m.inList(k, listWaterSForce)
	}
	return m.inList(k, listWaterSForce) || m.meets(k, setOf(cFixture, cWater)) || m.is(k, cPoint, "")
}

// knockOrBlack reads two words that are symptoms only beside what they are said of: "no
// knock", "pipes knock", "water comes out black".
func (m *message) knockOrBlack(i int) (assess.SymptomName, bool) {
	plain := m.deniedAlone(i) || m.notColor(i) || m.askedColour(i)
	switch m.text(i) {
	case "knock":
		return noSymptom, !plain && !m.pipeNear(i) && !m.signIn(i, signShuts)
	case "black":
		if m.waterNear(i) {
			return noSymptom, false
		} else if plain {
			return assess.DarkWater, true
		}
		return noSymptom, true
	}
	return noSymptom, false
}

// burstPipe reads what burst: "washer hose let go".
func (m *message) burstPipe(i int) (assess.SymptomName, bool) {
	return assess.Leak, m.bursts(i) && !m.repaired(i)
}

// colouredWater reads a colour that is the water's: "water … brown", "brown for a minute".
func (m *message) colouredWater(i int) (assess.SymptomName, bool) {
	if m.is(i, cSym, "") {
		return noSymptom, false
	}
	colour, ok := m.val(i, cColor)
	switch {
	case !ok || !m.notColor(i) && !m.waterNear(i) && !m.askedColour(i):
		return noSymptom, true
	case colour == "dark":
		return assess.DarkWater, true
	}
	return assess.RustyWater, true
}

package intents

import (
	"slices"
	"strings"

	"lazyhand/assess"
)

// Lists of the lexicon that these rules know.
var (
	listFoundIt  = listOf("found it")
	listItsA     = listOf("its a")
	listHoldsAir = listOf("holds air")

	listLeadsToFact = listOf("leads to a fact")
)

// unnamedOwner returns the item that an attribute is said of without naming it, or with the
// name in another sentence: "it's a 2013, 50 gallon, gas".
func (m *message) unnamedOwner(a attribute, items []mentionOf) (item string, old bool) {
	switch a.what {
	case "fuel":
		if !m.fuelAlone(a.at) {
			return "", false
		}
		return "heater", false
	case "temp":
		return "heater", false
	case "setting":
		return "prv", false
	case "charge":
		return "expansion_tank", false
	case "material":
		return m.ownerOfMaterial(a), false
	case "size":
		if m.items[a.at].value >= 20 {
			return "heater", false
		}
		if (m.text(a.at+1) == "one" || m.tankBySize(a.at)) && slices.ContainsFunc(m.work,
			func(w workDone) bool { return w.Action == assess.InstalledTank || w.Action == assess.ReplacedTank }) {
			return "expansion_tank", false // "put in a 4.4 gal one"
		}
		return m.toldLast(a, items)
	case "cond":
		if item := m.ownerOfCondition(a); item != "" {
			return item, false
		}
		if m.attributive(a.at) || m.is(a.at, cSym, "low_flow") && !m.saidOfIt(a.at) {
			return "", false // "prv 2004. Weak upstairs"
		}
	case "year", "age":
		if m.fuelNear(a.at) && m.pronounClause(a.at) {
			return "heater", false // "it's a 2013, 50 gallon, gas"
		}
	}
	if item := m.factLine(a); item != "" {
		return item, false
	}
	if refers, other := m.refersToLast(a); other {
		return "", false
	} else if refers {
		if item, old := m.toldLast(a, items); item != "" {
			return item, old
		}
	}
	unserviced := func(k int) bool { return m.neverServiced(k) && !m.serviceWord(k) }
	if a.what == "year" && (m.fuelNear(a.at) || m.left(a.at, 4, false, unserviced) >= 0) {
		return "heater", false // "never flushed, 2011"
	}
	return "", false
}

// listedYear tells whether the year at item i is one of the facts that a sentence lists of "it":
// "its in the crawl, 1994, corroded".
func (m *message) listedYear(i int) bool {
	s := &m.sents[m.items[i].sent]
	from := s.from
	for from < i && (m.items[from].mark || m.inList(from, listFoundIt)) {
		from++
	}
	return m.clauseStart(i) == i && m.closes(i) && from < i && m.says(from, "its", "it is", "it")
}

// yearAlone tells whether the year at item i is a sentence of its own behind one of facts: "tank
// waterlogged. 4.5 gal. 2011."
func (m *message) yearAlone(i int) bool {
	s := &m.sents[m.items[i].sent]
	label := func(k int) bool { return m.is(k, cWhose, "label") }
	onLabel := m.says(i+1, "on", "per", "off") && m.right(i+1, 2, false, label) >= 0 // "prv is toast. 2006 on the sticker"
	if s.from != i || !m.closes(i) && m.text(i+1) != "vintage" && !onLabel {
		return false
	}
	told := false
	for k := i - 1; k >= 0 && m.items[k].sent == m.items[i].sent-1; k-- {
		if m.numIs(k, roleReading) && !told || m.is(k, cDid, "") && !(m.text(k) == "set" && m.numIs(k+1, roleSetting)) {
			return false
		}
		told = told || m.is(k, cItem, "") || m.factual(k)
	}
	return told
}

// toldLast returns the item told last that an attribute fits.
func (m *message) toldLast(a attribute, items []mentionOf) (item string, old bool) {
	if item = m.carriedEquipment(a.at, a.what); item == "" {
		return "", false
	}
	return item, m.carriedOld(a.at, items)
}

// refersToLast tells whether an attribute refers to the item told last, "it's a 2005", or to
// something else that is no item: "the needle's bent so who knows".
func (m *message) refersToLast(a attribute) (refers, other bool) {
	dated := a.what == "year" && (m.yearCue(a.at) || m.listedYear(a.at) || m.yearAlone(a.at))
	if !m.pronounClause(a.at) && a.what != "age" && a.what != "unknown" && !dated {
		return false, false
	}
	switch {
	case a.what == "year" && !dated && !m.itsA(a.at),
		a.what == "unknown" && m.sentenceIs(m.items[a.at].sent, cPart, ""),
		m.ofAnotherNoun(a):
		return false, true
	}
	return true, false
}

// ownerOfMaterial returns what a material with no name beside it is said of, the drain valve
// at most.
func (m *message) ownerOfMaterial(a attribute) string {
	drain := func(k int) bool { return m.items[k].point == string(assess.HeaterDrain) }
	one := func(k int) bool { return strings.HasSuffix(m.text(k), "one") }
	switch {
	case m.sentenceIs(m.items[a.at].sent, cRelief, ""):
		return "" // "somebody screwed a brass plug into the T&P outlet"
	case m.left(a.at, 6, true, drain) >= 0 && m.valveOf(a.at):
		return "drain_valve" // "drain cock on the heater 70, plastic one"
	case a.at+1 < len(m.items) && drain(a.at+1):
		return "drain_valve" // "61 at the plastic heater drain"
	case slices.ContainsFunc(m.work, func(w workDone) bool { return w.Action == assess.ReplacedDrainValve }):
		return "drain_valve" // "screwed a brass one in"
	case m.itemIn(m.items[a.at].sent) == "" && (m.pronounClause(a.at) || m.left(a.at, 4, false, one) >= 0):
		return m.carriedEquipment(a.at, a.what) // "found the drain. It is brass"
	}
	return ""
}

// valveOf tells whether the material at item i is told of the valve that a reading was just taken
// at: "heater drain 59, brass valve", "drain 61 (plastic)".
func (m *message) valveOf(i int) bool {
	return strings.HasSuffix(m.text(i), " one") || m.text(i+1) == "valve" || m.isMark(i-1, "(") && m.isMark(i+1, ")") ||
		m.inList(i-1, listLinks) && m.says(i-2, "valve", "it", "its") || m.text(i-1) == "its"
}

// ownerOfCondition returns what a condition with no name beside it must be said of: "bladder's
// busted", "body is corroded".
func (m *message) ownerOfCondition(a attribute) string {
	switch {
	case strings.HasSuffix(m.text(a.at), " air") && m.holdsOtherAir(m.items[a.at].sent):
		return ""
	case m.itemIn(m.items[a.at].sent) == "" && (tankCond(m.text(a.at)) || m.saidOfBladder(a.at)):
		return "expansion_tank"
	case m.left(a.at, 4, false, func(k int) bool { return m.is(k, cHint, "prvpart") && strings.HasPrefix(m.text(k), "adjust") }) >= 0:
		return "prv" // "adjusting screw is frozen"
	case strings.HasSuffix(m.text(a.at), " bonnet") && m.itemIn(m.items[a.at].sent) == "":
		return "prv" // "weeps at the bonnet"
	case m.has(cItem, "prv") && m.left(a.at, 4, false, func(k int) bool { return m.is(k, cHint, "prvpart") }) >= 0:
		return "prv"
	}
	return ""
}

// holdsOtherAir tells whether sentence s speaks of a thing that holds air as a tank does: "van tires at
// 35, front left keeps losing air".
func (m *message) holdsOtherAir(s int) bool {
	for k := m.sents[s].from; k < m.sents[s].to; k++ {
		if m.inList(k, listHoldsAir) {
			return true
		}
	}
	return false
}

// fuelAlone tells whether a fuel at item i is that of a heater though none is named.
func (m *message) fuelAlone(i int) bool {
	if m.isNum(i-1) && m.items[i-1].role == roleYear && m.says(i-2, "a", "an") {
		return true // "element burnt, it's a 2015 electric"
	}
	return m.says(i, "tankless", "heat pump", "hybrid") || m.fuelNear(i) || m.has(cItem, "heater") ||
		m.text(i+1) == "unit" && m.right(i, 5, false, func(k int) bool { return m.numIs(k, roleTemp) }) > 0 // "electric unit set to 125"
}

// fuelNear tells whether a fuel or the size of a heater stands beside item i.
func (m *message) fuelNear(i int) bool {
	for k := max(0, i-4); k < min(len(m.items), i+5); k++ {
		heaterSize := m.numIs(k, roleSize) && m.items[k].value >= 20
		if k != i && m.items[k].sent == m.items[i].sent && (heaterSize || m.is(k, cFuel, "")) {
			return true
		}
	}
	return false
}

// pronounClause tells whether the clause of item i speaks of "it".
func (m *message) pronounClause(i int) bool {
	s := &m.sents[m.items[i].sent]
	for k := i - 1; k >= s.from && k >= i-8; k-- {
		if m.text(k) == "from" && m.foreignNoun(k-1) {
			return false // "old sheet from 2022"
		}
		if m.inList(k, listRefersBack) {
			return true
		}
	}
	// or begins the line
	if i == s.from || i == s.from+1 && (m.items[s.from].mark || m.inList(s.from, listLeadsToFact)) {
		return true
	}
	k := s.from
	for k < i && (m.inList(k, listLinks) || m.inList(k, listLeadsToFact) || m.is(k, cHint, "wentin") || m.is(k, cDid, "installed")) {
		k++
	}
	return k == i // "was put in six years ago"
}

// itsA tells whether "it's a" or the like leads to item i: "it's a 2005".
func (m *message) itsA(i int) bool {
	return m.left(i, 3, false, func(k int) bool { return m.inList(k, listItsA) }) >= 0
}

// carriedEquipment finds the item told last before item at that an attribute fits.
func (m *message) carriedEquipment(at int, what string) string {
	value := 40.0
	if m.isNum(at) {
		value = m.items[at].value
	}
	for k := at - 1; k >= 0; k-- {
		if v, ok := m.val(k, cItem); ok && !m.taken(k) && !m.onlyPlaces(k) {
			c := m.itemCode(k, v)
			if c != "gauge" && compatible(what, c, m.text(at), value) {
				if what == "cond" && m.talkMoved(k, at) {
					return ""
				}
				if own := m.items[at].sent; what == "year" && m.items[k].sent != own && m.itemIn(own) != "" {
					return "" // "gas odor near the heater. Gauge came with the house, 1999"
				}
				if m.equipment.absent(c) {
					return "" // "no prv. copper from 1962"
				}
				return c
			}
		}
		if m.byPRV(k) && compatible(what, "prv", m.text(at), value) {
			return "prv"
		}
		if (m.is(k, cFuel, "tankless") || m.is(k, cFuel, "heat_pump")) && compatible(what, "heater", m.text(at), value) {
			return "heater" // "Tankless check at …. It's a 2018"
		}
	}
	return ""
}

// talkMoved tells whether the talk has left the thing at item k before the condition at item at: water,
// a tap or the relief valve was spoken of in another sentence. "heater 2009. Water's brown, then it's ok"
func (m *message) talkMoved(k, at int) bool {
	for j := at - 1; j > k && m.items[j].sent != m.items[k].sent; j-- {
		if lo, hi := m.readingsOf(m.items[j].sent); m.meets(j, notEquipment) && lo >= hi {
			return true
		}
	}
	return false
}

// notEquipment are the classes of what a house has beside equipment.
var notEquipment = setOf(cRelief, cWater, cColor, cFixture, cBibb)

// saidOfBladder tells whether the condition at item i is said of a bladder: "bladder's busted".
func (m *message) saidOfBladder(i int) bool {
	return strings.HasPrefix(m.text(i-1), "bladder") || m.inList(i-1, listLinks) && strings.HasPrefix(m.text(i-2), "bladder")
}

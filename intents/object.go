package intents

import (
	"slices"
	"strings"

	"lazyhand/assess"
)

// Lists of the lexicon that these rules know.
var (
	listMends        = listOf("mends")
	listCleans       = listOf("cleans")
	listFlushedOther = listOf("flushed other")
	listShutHere     = listOf("shut here")
)

// deed is a verb of work with the object that it is told of.
type deed struct {
	*verb
	obj     string
	carried bool // not named with the verb, but told before
	bySize  bool // a tank told by its size alone
}

// workOf names the deed that a verb and its object make, and the object.
func (m *message) workOf(v *verb) (action assess.Action, object string, ok bool) {
	w := m.deedOf(v)
	switch v.what {
	case "replaced":
		action, object = m.replacing(w)
	case "installed":
		action, object = m.installing(w)
	case "set":
		action, object = m.setting(w)
	case "rebuilt":
		action, object = m.rebuilding(w)
	case "charged":
		if w.obj == "expansion_tank" || m.ownsNumber(v.at) {
			action, object = assess.ChargedTank, "expansion_tank"
		}
	case "flushed":
		if m.right(v.at, 4, false, func(k int) bool { return m.byPRV(k) && m.items[k].seg == m.items[v.at].seg }) > 0 {
			action, object = assess.RebuiltPRV, "prv" // "flushed grit out of the regulator"
		} else if m.flushesHeater(w) {
			action, object = assess.FlushedHeater, "heater"
		}
	case "fixed":
		action, object = m.fixing(w)
	case "mended":
		if !m.reliefReseats(v.at) {
			action = assess.RepairedLeak
		}
	case "shut":
		switch {
		case m.shutByCity(v.at):
			m.addSymptom(v.at, assess.NoWater, false) // "water's off, city is working on the main"
		case m.shutsSupply(v.at):
			action = assess.ShutOff
		}
	}
	return action, object, action != ""
}

// deedOf finds what a verb is told of where it names nothing itself.
func (m *message) deedOf(v *verb) deed {
	w := deed{verb: v, obj: v.object}
	if w.obj == "" && oneOf(v.what, "set", "charged") {
		w.obj = m.partOfDeed(v)
	}
	if w.obj == "" {
		w.obj = m.headedBy(v)
	}
	if o, _ := m.feminine(v.at); o == herOther {
		return w
	}
	if w.obj != "" || !oneOf(v.what, "replaced", "installed", "rebuilt", "set", "charged") {
		return w
	}
	if v.what == "set" && m.is(v.at+1, cDeterminer, "") && m.noEquipment(v.at+2) && !m.ownsNumber(v.at) {
		return w // "le dejé la tarjeta en la mesa"
	}
	material := func(k int) bool { return m.is(k, cMaterial, "") }
	drain := func(k int) bool { return m.is(k, cItem, "drain_valve") }
	if m.kinds.has(cMaterial) && m.right(v.at, 4, false, material) >= 0 && m.left(v.at, 12, true, drain) >= 0 {
		w.obj = "drain_valve" // "le cambié el drain valve al heater, puse uno de brass"
		return w
	}
	if m.smallTankAfter(v.at) && oneOf(v.what, "replaced", "installed") {
		w.obj, w.bySize = "expansion_tank", true
	} else if o, at := m.topicBefore(v.at); o != "" && (m.pronoun(v.at) || m.partAfter(v.at, "old") || m.wasBadSo(v, at)) {
		if w.obj = o; oneOf(v.what, "replaced", "installed") && m.ownsPart(at, v.at) {
			w.obj = smallPart
		}
	} else {
		w.obj, w.carried = m.carried(m.items[v.at].sent), true
		if v.what == "set" && o == "prv" && w.obj != "" {
			w.obj = o // "the tank goes in Friday. Turned the prv, it stayed set at 62"
		}
	}
	return w
}

// smallTankAfter tells whether the number behind a verb is the size of an expansion tank:
// "pulled the old tank, hung a 2 gal".
func (m *message) smallTankAfter(at int) bool {
	n := m.right(at, 3, true, m.isNum)
	return n >= 0 && m.items[n].unit == "gal" && m.items[n].value < 15
}

// surely tells whether a verb is told of its object: it names it, or refers back to it.
func (m *message) surely(w deed) bool { return !w.carried || m.pronoun(w.at) }

// aloneSaid tells whether a verb stands alone behind a sentence that names one thing and what is
// wrong with it: "Tank waterlogged. Replaced, charged 60."
func (m *message) aloneSaid(w deed) bool {
	s := m.items[w.at].sent
	return w.carried && s > 0 && w.at == m.sents[s].from && m.standsAlone(w.at) && m.itemIn(s-1) == w.obj && m.sentenceMeets(s-1, setOf(cCond, cSym))
}

// standsAlone tells whether the verb at item i has no object: its clause ends, or only what the new part was set to
// follows, "replaced and charged to 60".
func (m *message) standsAlone(i int) bool {
	return m.closes(i) || m.says(i+1, "and", "n", "y", "&", "then") && (m.is(i+2, cDid, "set") || m.is(i+2, cDid, "charged")) &&
		(m.isNum(i+3) || m.says(i+3, "to", "at", "a", "en") && m.isNum(i+4))
}

// wasBadSo tells whether a verb of replacing stands alone behind what was wrong with the part at item at:
// "prv was shot, replaced", "drain valve dripped so swapped".
func (m *message) wasBadSo(v *verb, at int) bool {
	first := m.clauseStart(v.at)
	for first < v.at && (m.items[first].mark || m.says(first, "so", "and", "just", "i", "we")) {
		first++
	}
	if v.what != "replaced" || first != v.at || !m.standsAlone(v.at) || !pastForm(m.text(v.at)) && !spanishVerb(m.text(v.at)) || m.items[at].seg == m.items[v.at].seg {
		return false
	}
	wrong := func(k int) bool { return m.isAny(k, cCond, "failed", "suspect") || m.is(k, cSym, "leak") }
	return m.right(at, v.at-at-1, true, wrong) > 0 || m.left(at, 3, true, wrong) >= 0
}

// replacing names what a word of replacing does: "swapped the PRV", "changed the washer".
func (m *message) replacing(w deed) (assess.Action, string) {
	sure := m.surely(w) || m.partAfter(w.at, "old") || m.aloneSaid(w)
	switch {
	case w.carried && m.leakPart(w.at):
		return assess.RepairedLeak, "leak"
	case w.obj == "prv" && m.changesValue(w.at):
		return assess.SetPRV, w.obj
	case w.obj == "expansion_tank" && m.changesValue(w.at) && !m.aloneSaid(w):
		return assess.ChargedTank, w.obj
	case w.obj == "prv" && (m.is(w.objAt, cPart, "strainer") || m.partAfter(w.at, "strainer")):
		return assess.RebuiltPRV, "prv"
	case w.obj == "prv" && sure:
		return assess.ReplacedPRV, w.obj
	case w.obj == "expansion_tank" && sure:
		return assess.ReplacedTank, w.obj
	case w.obj == "heater" && !w.carried:
		return assess.ReplacedHeater, w.obj
	case w.obj == "drain_valve":
		return assess.ReplacedDrainValve, w.obj
	case w.obj == "leak" || m.leakPart(w.at):
		return assess.RepairedLeak, "leak"
	}
	return "", ""
}

// addedTo tells whether something else was added to the object of a deed.
func (m *message) addedTo(w deed) bool {
	k := w.objAt - 1
	for m.is(k, cDeterminer, "") {
		k--
	}
	return k > w.at+1 && m.says(k, "to", "al", "on to", "onto")
}

// changesValue tells whether a word of changing leads to two numbers, from which and to which it
// changed what stands between: "changed the prv from 90 to 60".
func (m *message) changesValue(at int) bool {
	if t := m.text(at); !beginsWith(t, "chang", "chg", "chng", "cambi", "le cambi") {
		return false
	}
	from := m.right(at, 5, false, m.isNum)
	return from > 0 && m.items[from].role == roleFrom && m.right(from, 3, false, func(k int) bool { return m.numIs(k, roleTo) }) > 0
}

// installing names what a word of putting in does: "hung an exp tank", "put a brass one in".
func (m *message) installing(w deed) (assess.Action, string) {
	brassOne := func(k int) bool { return m.is(k, cMaterial, "") && m.text(k+1) == "one" }
	switch {
	case m.gaugePutAt(w):
		return "", ""
	case w.carried && m.right(w.at, 3, false, brassOne) >= 0:
		return assess.ReplacedDrainValve, "drain_valve" // "put a brass one in"
	case m.inList(w.at, listAdds) && m.addedTo(w):
		return "", "" // "added 2 shutoffs to the tank"
	case (w.obj == "" || w.carried) && m.partRight(w.at):
		return assess.RepairedLeak, "leak" // "toilet ran, put in a flapper"
	}
	switch w.obj {
	case "prv":
		switch {
		case m.putAt(w.verb):
			return assess.SetPRV, w.obj
		case m.inPlaceOf(w.at), m.newNear(w.at) && !m.noneBefore("prv") && !(w.objAt >= 0 && m.noneYet(w.objAt)):
			return assess.ReplacedPRV, w.obj
		case m.surely(w):
			return assess.InstalledPRV, w.obj
		}
	case "expansion_tank":
		switch {
		case w.bySize && m.left(w.at, 6, true, func(k int) bool { return m.is(k, cPart, "old") }) >= 0:
			return assess.ReplacedTank, w.obj // "pulled the old tank, hung a 2 gal"
		case w.bySize && m.itemBefore(w.at, w.obj) && m.failedTank():
			return assess.ReplacedTank, w.obj // "tank is dead, hung a 2 gal"
		case m.putAt(w.verb):
			return assess.ChargedTank, w.obj
		case m.inPlaceOf(w.at):
			return assess.ReplacedTank, w.obj // "put a new tank in place of the dead one"
		case m.surely(w) && (m.anotherOf(w.at) || m.right(w.at, 8, true, func(k int) bool { return m.is(k, cPart, "old") }) >= 0) &&
			!m.noneBefore(w.obj):
			return assess.ReplacedTank, w.obj // "le puse otro tanque, el viejo no servía"
		case m.surely(w):
			return assess.InstalledTank, w.obj
		}
	case "heater":
		if !w.carried {
			return assess.ReplacedHeater, w.obj
		}
	case "drain_valve":
		if !w.carried {
			return assess.ReplacedDrainValve, w.obj
		}
	}
	return "", ""
}

// gaugePutAt tells whether the object of a word of putting on is only where a gauge was put: "hooked up at
// the heater drain", "put it on the heater drain", but not "put on a new drain valve".
func (m *message) gaugePutAt(w deed) bool {
	if w.carried || w.objAt <= w.at || m.newNear(w.at) {
		return false
	}
	k := w.at + 1
	if m.says(k, "it", "one", "mine", "my", "gauge", "the gauge", "a gauge") {
		k++
	}
	if strings.HasSuffix(m.text(w.at), " it on") && w.obj == "drain_valve" {
		k-- // "put it on" is a word of its own
	}
	at := k == w.at || m.says(k, "at", "to", "onto", "off", "off of")
	if !at && !(w.obj == "drain_valve" && m.says(k, "on", "in", "en", "a")) {
		return false
	}
	if k++; m.is(k, cDeterminer, "") && !m.says(k, "a", "an", "una", "un") {
		k++
	}
	return k == w.objAt
}

// inPlaceOf tells whether what went in by the word at item i went in for another one.
func (m *message) inPlaceOf(i int) bool {
	return m.right(i, 8, true, func(k int) bool { return strings.HasPrefix(m.text(k), "in place of") }) >= 0
}

// setting names what a word of setting does: "dialed the PRV to 60", "cranked it to 58".
func (m *message) setting(w deed) (assess.Action, string) {
	switch {
	case m.text(w.at) == "reduced" && m.reliefNear(w.at): // "T&P line reduced to 1/2"
	case m.text(w.at) == "turned" && (m.text(w.at+1) == "off" || m.text(w.at+1) == "it" && m.text(w.at+2) == "off"): // the water, or the heater
	case w.obj == "prv":
		if !w.carried || m.setsSomething(w.verb) {
			return assess.SetPRV, w.obj
		}
	case w.carried && w.obj == "expansion_tank" &&
		m.setsHouse(w.at):
		if m.ownsNumber(w.at) {
			return assess.SetPRV, "prv" // "exp tank is good. Lowered house pressure to 60"
		}
	case w.obj == "expansion_tank":
		if m.ownsNumber(w.at) || m.right(w.at, 3, false, func(k int) bool { return m.is(k, cPart, "air") }) >= 0 {
			return assess.ChargedTank, w.obj // "adjusted the precharge on the tank"
		}
	case w.obj == "":
		if m.ownsNumber(w.at) || m.turnedAndRead(w.verb) {
			return assess.SetPRV, "prv"
		}
	case w.obj != "leak" && w.carried && m.ownsNumber(w.at):
		return assess.SetPRV, "prv" // no other part is set to a pressure
	}
	return "", ""
}

// setsHouse tells whether the word of setting at item i can only be told of a regulator.
func (m *message) setsHouse(i int) bool {
	return strings.HasPrefix(m.text(i), "regul") || strings.HasPrefix(m.text(i), "se regul") || m.right(i, 3, false, m.ofHouse) >= 0
}

// ofHouse tells whether item k names what only a regulator sets: "house pressure", "la válvula".
func (m *message) ofHouse(k int) bool {
	return strings.HasSuffix(m.text(k), "pressure") || m.says(k, "presion", "la presion", "valvula")
}

// rebuilding names what a word of rebuilding does: "prv from 2001, rebuilt w kit".
func (m *message) rebuilding(w deed) (assess.Action, string) {
	named := w.obj == "prv" && !w.carried
	switch {
	case w.obj != "prv" && strings.HasSuffix(m.text(w.at), "cartridge") && m.leakOver(w.at):
		return assess.RepairedLeak, "leak" // "New cartridge, drip is gone"
	case w.obj == "heater" && !w.carried && m.rinses(w.at):
		return assess.FlushedHeater, w.obj
	case !named && (m.inList(w.at, listCleans) || m.tapBefore(w.at)):
		return "", "" // "prv 2004. Stopped the drip at the kitchen faucet with a new cartridge"
	}
	topic := ""
	if w.obj == "" || w.carried {
		topic, _ = m.topicBefore(w.at)
	}
	if w.obj == "prv" || topic == "prv" {
		return assess.RebuiltPRV, "prv"
	}
	return "", ""
}

// itemBefore tells whether a piece of equipment is named before item i.
func (m *message) itemBefore(i int, code string) bool {
	for k := range i {
		if v, ok := m.val(k, cItem); ok && !m.taken(k) && m.itemCode(k, v) == code {
			return true
		}
	}
	return false
}

// fixing names what a word of mending does: "fixed the drip", "repaired the reg".
func (m *message) fixing(w deed) (assess.Action, string) {
	leaks := func(k int) bool { return m.is(k, cSym, "leak") }
	named := w.obj == "prv" && w.objAt > w.at && w.objAt <= w.at+3 && m.right(w.at, 6, true, leaks) < 0
	switch {
	case named && m.inList(w.at, listMends):
		return assess.RebuiltPRV, "prv" // "toilet runs, fixed the prv"
	case w.obj == "leak" || m.leakPart(w.at):
		return assess.RepairedLeak, "leak"
	case w.obj == "prv" && m.inList(w.at, listMends):
		return assess.RebuiltPRV, "prv"
	}
	return "", ""
}

// flushesHeater tells whether a word of flushing is told of the heater: "flushed it", "did a
// flush".
func (m *message) flushesHeater(w deed) bool {
	if m.flushesOther(w.at) {
		return false
	}
	if w.obj != "" {
		return oneOf(w.obj, "heater", "drain_valve")
	}
	t := m.text(w.at)
	wholly := strings.HasPrefix(t, "flushed") || t == "descaled" || strings.Contains(t, "flush") && strings.Contains(t, " ")
	return wholly || m.underJob(w.at) || m.has(cItem, "heater") || m.carried(m.items[w.at].sent) == "heater"
}

// flushesOther tells whether something else than the heater is flushed: "when the toilet
// flushed", "flushed the coolant on truck 2", "flushed the mains".
func (m *message) flushesOther(at int) bool {
	if m.says(at-1, "toilet", "toilets", "commode") || m.says(at-1, "after", "every", "each", "el") && m.troubleIn(m.items[at].sent) {
		return true // "line groans after flush", "el desagüe de la relief está tapado"
	}
	for k := at + 1; k <= at+2 && !m.stopAt(k) && m.items[k].num == nil; k++ {
		if m.wordCues(m.items[k].tok).has(cueForeign) && !m.is(k, cItem, "") {
			return true
		}
	}
	if m.says(at+1, "the", "a", "out") {
		at++
	}
	return m.inList(at+1, listFlushedOther)
}

// troubleIn tells whether sentence s tells of water that bangs, hums or leaves by the relief valve.
func (m *message) troubleIn(s int) bool {
	return m.sentenceIs(s, cRelief, "") || m.sentenceIs(s, cSym, "noise") || m.sentenceIs(s, cSym, "hammer")
}

// shutsSupply tells whether a word of shutting is told of the water of the house.
func (m *message) shutsSupply(at int) bool {
	if m.text(at-1) == "found" {
		return false // "curb stop found closed"
	}
	heater := m.right(at, 3, false, func(k int) bool { return m.is(k, cItem, "heater") })
	if heater >= 0 && m.says(heater-1, "al", "del") {
		return false // "le cerré la llave al boiler"
	}
	if !m.is(at, cDid, "shut") || !m.says(at, "shut off", "shut it off", "shut it down") {
		return true
	}
	for k := at + 1; k <= at+3; k++ {
		if m.is(k, cItem, "heater") || m.text(k) == "gas" {
			return false
		}
	}
	for k := at - 5; k <= at+4; k++ {
		if m.is(k, cWater, "") || m.is(k, cFixture, "") && m.text(k) == "water" || m.inList(k, listShutHere) {
			return true // "water shut off", not "when the washer shut off"
		}
	}
	return false
}

// setsSomething tells whether a verb of setting says what it turned, or to what.
func (m *message) setsSomething(v *verb) bool {
	if m.ownsNumber(v.at) {
		return true
	}
	screw := m.right(v.at, 3, true, func(k int) bool { return m.is(k, cHint, "turned") })
	if screw >= 0 && m.closes(screw) && !m.says(screw, "house", "setpoint") {
		return true // "All I did was turn the screw."
	}
	return m.pronoun(v.at) && m.verbTurn(v.at)
}

// turnedAndRead tells whether something was turned and a pressure read after it, in a sentence
// that names no part: "found 98 at the back, cranked it, left 62", "backed it off, 64 rear".
// What is turned between readings is the regulator, unless a heater was spoken of.
func (m *message) turnedAndRead(v *verb) bool {
	t := m.text(v.at)
	if !m.verbTurn(v.at) || !m.pronoun(v.at) && !strings.Contains(t, " it ") && !strings.HasSuffix(t, " turn") && !m.turnsHer(v.at) && !m.turnsLe(v.at) {
		return false
	}
	s := m.items[v.at].sent
	if part := m.itemIn(s); part != "" && part != "prv" || m.left(v.at, v.at-m.sents[s].from, true, m.tellsHeater) >= 0 {
		return false
	}
	for k := range m.readings {
		if r := &m.readings[k]; r.sent == s && r.at > v.at && m.left(r.at, r.at-v.at-1, true, m.nextClause) >= 0 {
			return true
		}
	}
	return m.readSince(v.at)
}

// readSince tells whether the turning at item i is what the pressure told before it was read after:
// "kitchen 68 after I backed it off".
func (m *message) readSince(i int) bool {
	k := i - 1
	for m.says(k, "i", "we", "just") {
		k--
	}
	if !m.says(k, "after", "once", "since") || strings.HasPrefix(m.text(i), "open") {
		return false
	}
	return slices.ContainsFunc(m.readings, func(r reading) bool { return r.sent == m.items[i].sent })
}

// turnsHer tells whether a verb of turning names the screw, its turns, or "her": "backed the
// screw off", "backed off 2 turns", "turned her down a hair".
func (m *message) turnsHer(at int) bool {
	return m.says(at+1, "her", "him") || m.right(at, 3, true, func(k int) bool { return m.is(k, cHint, "turned") || m.turnsAt(k) }) >= 0
}

// turnsLe tells whether a Spanish verb of turning says that it was done to the thing in hand and
// names no other one: "ya le bajé, marca 58".
func (m *message) turnsLe(at int) bool {
	return (beginsWith(m.text(at), "le ") || m.text(at-1) == "le") && !m.says(at+1, "a", "al")
}

// tellsHeater tells whether item k is the state of a heater.
func (m *message) tellsHeater(k int) bool { return m.meets(k, setOf(cState, cBurner)) }

// nextClause tells whether item k ends a clause or begins the next one.
func (m *message) nextClause(k int) bool {
	return m.items[k].mark || m.says(k, "and", "then", "y", "luego") || m.is(k, cNow, "") || m.is(k, cAfter, "")
}

// ownsNumber tells whether a number belongs to the verb at item at: "set to 60".
func (m *message) ownsNumber(at int) bool {
	for i := range m.items {
		if m.items[i].owner == at+1 {
			return true
		}
	}
	return false
}

// partAfter tells whether a word such as "old" or "strainer" follows a verb in its clause.
func (m *message) partAfter(at int, part string) bool {
	for k := at + 1; k < len(m.items) && k <= at+5; k++ {
		if m.items[k].mark {
			return false
		}
		if m.is(k, cPart, part) {
			return true
		}
	}
	return false
}

// putAt tells whether "puse" puts a part that is there to a pressure rather than a
// part in: "puse la reguladora en 58", where "puse reguladora a 58" puts one in.
func (m *message) putAt(v *verb) bool {
	if !strings.Contains(m.text(v.at), "pus") || v.objAt < v.at {
		return false
	}
	definite := m.says(v.objAt-1, "la", "el") || strings.HasSuffix(m.text(v.at), " la") || strings.HasSuffix(m.text(v.at), " el")
	return definite && m.says(v.objAt+1, "en", "a") && m.isNum(v.objAt+2)
}

package intents

import (
	"strings"

	"lazyhand/assess"
)

// Lists of the lexicon that these rules know.
var (
	listShutsItOff  = listOf("shuts it off")
	listOpensState  = listOf("opens state")
	listPeopleGet   = listOf("people get")
	listPullsOut    = listOf("pulls out")
	listBurns       = listOf("burns")
	listRests       = listOf("rests")
	listLit         = listOf("lit")
	listNotBurning  = listOf("not burning")
	listNeverDid    = listOf("never did")
	listStandsWhere = listOf("stands where")
	listColdThings  = listOf("cold things")
	listPilots      = listOf("pilots")
	listGasPeople   = listOf("gas people")
)

// What tells that a heater rests or fires.

var stateOpener = opener{
	classes: setOf(cState, cOn, cOff),
	hints:   []string{"cold", "heateridle", "heaterfires"},
	lists:   []list{listOpensState, listShutsItOff},
}

// heaterTag reads the heater's state at item i.
func (m *message) heaterTag(i int) assess.HeaterState {
	if !m.begins(i, keyState) || m.items[i].tags == nil && m.text(i) != "hot" && !m.misspeltOff(i) || m.noState(i) {
		return ""
	}
	if m.says(i, "w/o", "without", "wo") && m.isNum(i-1) && (i+1 >= len(m.items) || m.items[i+1].mark || m.text(i+1) == "it") &&
		m.has(cState, "firing") {
		return assess.Idle // "90 with the heater going and 66 w/o"
	}
	if v, ok := m.val(i, cState); ok {
		return m.stateNamed(i, assess.HeaterState(v))
	}
	switch {
	case m.inList(i, listShutsItOff):
		if m.heaterTold(i) && m.carried(m.items[i].sent) != "prv" {
			return assess.Idle // "heater firing, 121. Shut it off and it came back to 90"
		}
		return ""
	case m.isNum(i+1) && m.says(i, "on", "open", "running"):
		return "" // "the dial is on one fifty"
	case m.is(i, cHint, "cold") && m.coldSpell(i):
		return assess.Idle
	case m.text(i) == "apagado" && m.isNum(i-1) && m.closes(i):
		return assess.Idle // "front 72 apagado"
	case m.says(i, "apagado", "off") && (m.isNum(i-1) || m.besideNum(i) && (m.isMark(i+1, "/", ")", ":", "=") || m.text(i) == "apagado")) && m.has(cState, "firing") &&
		!m.is(i+1, cDeterminer, "") && !m.is(i+1, cPlace, ""):
		return assess.Idle
	}
	return m.stateSwitched(i)
}

// noState tells whether what may be the heater's state is something else.
func (m *message) noState(i int) bool {
	if strings.Contains(m.text(i), "element") && strings.HasSuffix(m.text(i), " on") && m.right(i, 2, false, func(k int) bool { return m.is(k, cItem, "heater") }) > 0 {
		return true // "replaced both elements on the heater"
	}
	if strings.HasSuffix(m.text(i), "out") {
		if m.is(i-1, cPart, "old") || m.left(i, 9, true, m.takesOut) >= 0 {
			return true // "old heater out, new one in"
		}
		if m.text(i+1) == "of" || m.inList(i-1, listPeopleGet) {
			return true // "told em get out", "everybody out of the house"
		}
		if m.text(i) == "out" && m.text(i-1) == "it" && !m.is(i-2, cDid, "") && !m.says(i-2, "with", "w", "w/", "when") {
			return true // "pointed it out"
		}
	}
	if m.pilotOnly(i) {
		return true
	}
	if m.text(i) == "hot" && (m.says(i-1, "at", "on", "to") || m.says(i+1, "at", "in", "from") && m.right(i, 4, true, m.pointAt) > 0) {
		return true // "thermostat at hot", "hot at the tub is 127"
	}
	return m.leadsOn(i) || m.standsThere(i) || m.reliefsOff(i)
}

// reliefsOff tells whether what is off at item i is the heater's relief: "relief on this heater is
// valved off".
func (m *message) reliefsOff(i int) bool {
	relief := func(k int) bool { return m.is(k, cRelief, "") && m.items[k].seg == m.items[i].seg }
	return strings.HasSuffix(m.text(i), " off") && m.is(i-1, cDeterminer, "") && m.says(i-2, "on", "of", "at") && m.left(i, 4, false, relief) >= 0
}

// pilotOnly tells whether the state at item i is the pilot's, and the burner's is told behind it:
// "pilot's lit but the burner's off".
func (m *message) pilotOnly(i int) bool {
	k := i - 1
	for m.inList(k, listLinks) {
		k--
	}
	if !m.inList(k, listPilots) {
		return false
	}
	if m.text(i) == "lit" && m.is(i+1, cCond, "good") {
		return true // "pilot lit fine"
	}
	burner := func(k int) bool {
		return !m.inList(k, listPilots) && (m.is(k, cBurner, "") || m.is(k, cState, "idle"))
	}
	return m.right(i, 6, true, burner) >= 0
}

// takesOut tells whether item k takes something out: "pulled the heater out".
func (m *message) takesOut(k int) bool {
	return m.inList(k, listPullsOut)
}

// stateNamed reads a word that names the heater's state, which may be denied, or be that of
// something else.
func (m *message) stateNamed(i int, v assess.HeaterState) assess.HeaterState {
	if (strings.HasPrefix(m.text(i), "it ") || strings.Contains(m.text(i), " it ran")) && !m.heaterTold(i) {
		return "" // "it shut off": the washer's
	}
	if strings.HasSuffix(m.text(i), " settled") && !m.has(cState, "firing") || m.text(i) == "recovered" && (m.clauseStart(i) != i || m.says(i+1, "to", "from")) {
		return ""
	}
	if strings.HasPrefix(m.text(i), "se ") &&
		m.right(i, 2, false, func(k int) bool { return m.is(k, cPoint, "") || m.is(k, cFixture, "") }) >= 0 {
		return "" // "cuando se apaga la lavadora"
	}
	switch {
	case m.inList(i, listBurns):
		if m.notNear(i) {
			return assess.Idle
		}
		beside := (m.has(cState, "idle") || m.offBeside()) && m.besideNum(i)
		if m.inList(i, listLit) && !m.heaterNear(i) && !m.burnerNear(i) && !beside {
			return ""
		}
	case m.text(i) == "idle":
		if v == assess.Idle && m.text(i-1) == "not" {
			return assess.Firing // "heater was firing not idle"
		}
	case m.inList(i, listRests):
		if !m.heaterNear(i) {
			return ""
		}
		if m.text(i) == "calling" && m.notNear(i) {
			return assess.Idle
		}
	}
	if v == assess.Firing && m.neverDid(i) {
		return assess.Idle
	}
	return v
}

// stateSwitched reads a plain "on" or "off" of the burner: "heater off", "Breaker: off",
// "71 cold 104 hot".
func (m *message) stateSwitched(i int) assess.HeaterState {
	off := m.is(i, cOff, "") || m.is(i, cHint, "heateridle") || m.text(i) == "of"
	on := m.is(i, cOn, "") && !m.is(i, cOpened, "") || m.is(i, cHint, "heaterfires")
	if m.text(i) == "hot" {
		if m.hotAfterCold(i) {
			return assess.Firing
		}
		on = true
	}
	switch {
	case !off && !on:
		return ""
	case off && m.isMark(i-1, ":") && m.is(i-2, cHint, "breaker"):
		return assess.Idle
	case !m.burnerNear(i):
		return ""
	case off || m.notNear(i):
		return assess.Idle
	}
	return assess.Firing
}

// notNear tells whether the state at i is denied: "not heating", "wasn't heating at any moment".
func (m *message) notNear(i int) bool {
	return m.left(i, 4, false, func(k int) bool {
		if m.inList(k, listNotBurning) {
			if m.text(k) == "no" && (m.is(k-1, cRetract, "") || m.is(k+1, cRetract, "") || m.says(k+1, "its", "it", ",", "wait")) {
				return false // "wait no it's firing"
			}
			return m.items[k].seg == m.items[i].seg || i-k <= 2
		}
		return false
	}) >= 0
}

// neverDid tells whether the firing at item i is denied right before it: "the heater
// never kicked on", "burner hadn't lit".
func (m *message) neverDid(i int) bool {
	k := m.left(i, 3, false, func(k int) bool {
		if m.inList(k, listNeverDid) {
			return true
		}
		return false
	})
	return k >= 0 && m.items[k].seg == m.items[i].seg
}

// leadsOn tells whether "on" or "off" is a preposition: "heater on a 30 amp
// breaker", "94 off the back spigot".
func (m *message) leadsOn(i int) bool {
	t := m.text(i)
	if t != "on" && t != "off" && !strings.HasSuffix(t, " on") {
		return false
	}
	if t == "on" && m.is(i-1, cPart, "thermostat") && !m.closes(i) {
		return true // "heater thermostat on hot"
	}
	if t == "on" && (months[m.text(i+1)] > 0 || m.numIs(i+1, roleDate)) {
		return true // "I will flush it on July 1"
	}
	if t == "on" && (m.is(i-1, cState, "") || m.is(i-1, cOff, "") || m.is(i-1, cStatic, "") || m.is(i+1, cRelief, "")) {
		return true // "heater idle on all of these", "heater idle and all taps shut on every one"
	}
	if m.says(i+1, "order", "its", "backorder", "hand") || t == "on" && m.is(i+1, cFuel, "") ||
		strings.HasSuffix(t, " on") && m.is(i+1, cFuel, "") {
		return true // "new heater on order", "heater on natural gas"
	}
	if n := m.text(i + 1); t == "on" && (n == "it" || n == "them" || n == "file" || n == "there" || n == "so" || n == "top" || n == "tp" || n == "bottom") {
		return true // "couldn't find a date on it"
	}
	if !m.is(i+1, cDeterminer, "") {
		return false
	}
	if t == "on" && m.is(i+2, cItem, "heater") && m.signsOf(i-1).has(signThing) {
		return true // "tag on the heater says 150"
	}
	return m.text(i+2) != "whole" && m.text(i+2) != "entire" && m.text(i+2) != "time" && !m.is(i+2, cItem, "heater") && !m.is(i+2, cBurner, "")
}

// standsThere tells whether the word at i only begins to say where a heater is or what it
// lacks: "heater down in the basement", "heater up on blocks", "heater running out of room".
func (m *message) standsThere(i int) bool {
	t := m.text(i)
	switch {
	case strings.HasSuffix(t, " running"):
		return m.says(i+1, "out", "low")
	case t == "up", t == "down", strings.HasSuffix(t, " down"), strings.HasSuffix(t, " up"):
		return m.inList(i+1, listStandsWhere) && !m.isNum(i+2)
	}
	return false
}

// heaterStands tells whether the heater's name and the word behind it at i only begin to say where
// it is: "heater down there is shot", "the heater on this house".
func (m *message) heaterStands(i int) bool {
	return m.heaterAnd(i, "on", "down") && (m.leadsOn(i) || m.standsThere(i))
}

// heaterAnd tells whether item i is a heater's name and one of some particles, read as its state.
func (m *message) heaterAnd(i int, particles ...string) bool {
	if i < 0 || i >= len(m.items) || !m.items[i].kinds.has(cState) {
		return false
	}
	name, particle, ok := cutLast(m.text(i))
	return ok && oneOf(particle, particles...) && (strings.HasSuffix(name, "heater") || oneOf(name, "htr", "wh", "hwh", "boiler"))
}

// cutLast parts the last word of a text from those before it.
func cutLast(t string) (before, last string, ok bool) {
	k := strings.LastIndexByte(t, ' ')
	if k < 0 {
		return "", t, false
	}
	return t[:k], t[k+1:], true
}

// heaterTold tells whether a heater or its burner was the talk before item i: "it".
func (m *message) heaterTold(i int) bool {
	for k := i - 1; k >= 0 && k >= i-16; k-- {
		if m.is(k, cItem, "heater") || m.is(k, cBurner, "") || m.is(k, cState, "") {
			return true
		}
		if m.is(k, cItem, "") && !m.is(k, cItem, "gauge") || m.is(k, cFlowing, "") || m.is(k, cRelief, "") || namesToilet(m.text(k)) {
			return false
		}
	}
	return false
}

// heaterNear tells whether a heater, its burner or its fuel is named beside item i.
func (m *message) heaterNear(i int) bool {
	ok := func(k int) bool {
		return m.is(k, cItem, "heater") || m.is(k, cBurner, "") || m.is(k, cFuel, "")
	}
	return m.left(i, 5, false, ok) >= 0 || m.right(i, 3, false, ok) >= 0
}

// burnerNear tells whether a heater or its burner stands close before the word at i.
func (m *message) burnerNear(i int) bool {
	by := i - 1
	if m.is(by, cHint, "hedge") && m.text(by-1) == "it" {
		by-- // "no wait, it just lit"
	}
	if p := m.text(by); p == "it" || p == "its" || p == "it was" || p == "it is" || (m.inList(by, listLinks) && m.text(by-1) == "it") {
		return m.heaterTold(i) // "80 with the burner off and 95 with it on"
	}
	if m.isMark(i-1, "\n") && m.is(i-2, cItem, "heater") {
		return true
	}
	if by := m.pastLinks(i - 1); m.is(by, cFuel, "tankless") && m.says(i, "running", "going") ||
		m.isAny(by, cFuel, "tankless", "heat_pump") && m.says(i, "off") && m.closes(i) {
		return true // "tankless running", "heat pump off"
	}
	other := 0 // words that are no facts of a heater
	for k := i - 1; k >= 0 && k >= i-14 && m.items[k].sent == m.items[i].sent; k-- {
		if m.is(k, cItem, "heater") || m.is(k, cBurner, "") {
			return true
		}
		if m.is(k, cFuel, "gas") && m.inList(k+1, listGasPeople) {
			return false // "gas co was out at 9"
		}
		// "heater 30 gal electric 2009, off": its facts lie between
		if m.heaterFact(k) || m.says(k, ",", "-", ")") && m.factsBefore(k) || m.text(k) == "(" && m.is(k-1, cItem, "heater") {
			continue
		}
		if t := m.text(k); t == "of" || t == "from" || t == "de" || t == "del" || t == "one" || m.is(k, cDeterminer, "") || m.is(k, cUnit, "") {
			continue // "a gas one of 40 gallons from 2006, cold"
		}
		if m.text(i) != "hot" && m.is(k, cDid, "set") && (m.numIs(k+1, roleTemp) || m.numIs(k+2, roleTemp)) {
			continue // "set at 120, and running"
		}
		if other++; other > 5 || other > 3 && m.text(i) == "out" {
			return false
		}
		if m.items[k].num != nil || m.items[k].mark && !m.isMark(k, ":", "=") {
			return false
		}
		if m.is(k, cItem, "") || m.items[k].point != "" || m.is(k, cFixture, "") || m.is(k, cFitting, "part") || m.is(k, cDid, "") && !m.is(k, cDid, "flushed") {
			return false
		}
	}
	for k := i + 1; k < len(m.items) && k <= i+2 && !m.items[k].mark && m.items[k].point == "" && !m.is(k, cPlace, ""); k++ {
		if m.is(k, cBurner, "") || m.is(k, cItem, "heater") {
			return m.is(i, cOff, "") && m.text(i) != "out"
		}
	}
	return false
}

// pastLinks returns the item before i, or i, that is no "is" or the like.
func (m *message) pastLinks(i int) int {
	for m.inList(i, listLinks) {
		i--
	}
	return i
}

// besideNum tells whether a number stands beside the state at i, or beside the
// other one that a slash joins to it: "72 apagado", "64/94 apagado/prendido".
func (m *message) besideNum(i int) bool {
	lo, hi := i-1, i+1
	if m.isMark(lo, "(") && m.isMark(hi, ")") {
		return m.isNum(lo - 1) // "94 (prendido)"
	}
	if m.isMark(lo, ",") && m.isNum(lo-1) && m.closes(i) {
		return true // "119, prendido, 113, calentador frío"
	}
	if m.isMark(hi, ":", "=") {
		hi++ // "apagado: 66"
	}
	if m.isMark(lo, "/") && (m.is(lo-1, cOff, "") || m.is(lo-1, cOn, "")) {
		lo -= 2
	}
	if m.isMark(hi, "/") && (m.is(hi+1, cOff, "") || m.is(hi+1, cOn, "")) {
		hi += 2
	}
	for hi < len(m.items) && (m.inList(hi, listClitics) || m.is(hi, cClaim, "") || m.is(hi, cHint, "shows")) {
		hi++ // "y prendido me dio 99"
	}
	return m.isNum(lo) || m.isNum(hi)
}

// offBeside tells whether a plain "apagado" stands beside a number anywhere: the
// "prendido" told against it is the heater's too.
func (m *message) offBeside() bool {
	for k := range m.items {
		if t := m.text(k); (t == "apagado" || t == "off") && m.besideNum(k) {
			return true
		}
	}
	return false
}

// stateDenied tells whether the heater was not looked at, or whether its state is in doubt: "did
// not check the heater", "couldn't tell if the heater was firing".
func (m *message) stateDenied(i int) bool {
	return m.items[i].role == roleTaken ||
		m.left(i, 6, false, func(k int) bool { return m.is(k, cHint, "unsure") && m.items[k].seg == m.items[i].seg }) >= 0 ||
		m.whenTroubled(i)
}

// whenTroubled tells whether the state at item i is only when a trouble comes: "relief
// drips when the heater fires, laundry 96".
func (m *message) whenTroubled(i int) bool {
	when := m.left(i, 4, false, func(k int) bool { return m.is(k, cHint, "whenever") || m.says(k, "while", "mientras") })
	if when < 0 {
		return false
	}
	sign := m.left(when, 5, false, func(k int) bool { return m.is(k, cSym, "") || m.is(k, cDischarge, "") })
	return sign >= 0 && m.items[when].seg == m.items[i].seg
}

// coldSpell tells whether "cold" is the heater's: "ninety cold, hundred and thirty lit".
func (m *message) coldSpell(i int) bool {
	if it := &m.items[i]; m.is(i-1, cWater, "") || m.toks[it.tok].text != it.text {
		return false // "agua fría 60"; "frs" is no "frías"
	}
	if m.inList(i+1, listColdThings) {
		return false
	}
	if m.isNum(i-1) && m.closes(i) && m.left(i, 6, true, func(k int) bool { return m.items[k].point == string(assess.HeaterDrain) }) >= 0 {
		return true // "drain cock of the heater: ninety cold"
	}
	if !m.has(cState, "firing") {
		return false
	}
	return m.isNum(i-1) || m.isNum(i-2) || m.right(i, 4, false, func(k int) bool { return m.items[k].num != nil }) >= 0
}

// factsBefore tells whether a heater, or a fact of one, stands right before item k.
func (m *message) factsBefore(k int) bool {
	if k == 0 {
		return false
	}
	j := k - 1
	return m.is(j, cItem, "heater") || m.heaterFact(j)
}

// heaterFact tells whether item k is a fact that a heater has: its fuel, size, year, age or
// setting.
func (m *message) heaterFact(k int) bool {
	return m.is(k, cFuel, "") || m.numIs(k, roleYear, roleSize, roleAge, roleTemp)
}

// misspeltOff tells whether "of" at item i is "off": "heeter is of, 11 Gangway Ln".
func (m *message) misspeltOff(i int) bool {
	return m.text(i) == "of" && m.closes(i) && (m.inList(i-1, listLinks) || m.is(i-1, cItem, "heater"))
}

// hotAfterCold tells whether "hot" behind a number is the heater's, as "cold" behind the one
// before is: "cycle test: 62 cold, 66 hot", beside talk of the burner.
func (m *message) hotAfterCold(i int) bool {
	return m.isNum(i-1) && m.closes(i) && m.has(cState, "firing") &&
		m.left(i, 5, true, func(k int) bool { return m.is(k, cHint, "cold") && m.coldSpell(k) }) >= 0
}

package intents

import (
	"strings"

	"lazyhand/assess"
)

// Lists of the lexicon that these rules know.
var (
	listJots        = listOf("jots")
	listNewOneGoes  = listOf("new one goes")
	listWhereWanted = listOf("where wanted")
	listTurns       = listOf("turns")

	listBringsRecheck = listOf("brings recheck")
	listOrderOf       = listOf("order of")
	listComesIn       = listOf("comes in")
)

// What the rules of actions begin at.
var (
	actionOpener = opener{classes: setOf(cDo, cItem)}
	againOpener  = opener{hints: []string{"again", "measured", "seeyou"}}
	oneGoesWords = opener{lists: []list{listNewOneGoes}}
)

const keysAction = keyAction | keyAgain | keyOneGoes | keyTurns | keyBase

// actionRules read something to do at an item, in turn, before the word itself is asked. Each is
// asked only where one of its keys opens it; 0 is anywhere.
var actionRules = [...]struct {
	opens key
	reads func(m *message, i, s int) (action, bool)
}{
	{keyOneGoes, (*message).putIn},
	{keyOneGoes, (*message).goesUp},
	{keyTurns, (*message).turnDown},
	{0, (*message).bringsDown},
	{keyOneGoes, (*message).oneNeeded},
	{keyOneGoes, (*message).newOneIn},
	{keyAgain, (*message).lookAgain},
	{0, (*message).plannedDeed},
	{keyBase, (*message).serviceComes},
}

var actionIndex = byKey(len(actionRules), func(k int) key { return actionRules[k].opens })

// mayAct tells whether item i may be a word of something to do.
func (m *message) mayAct(i int) bool {
	return m.begins(i, keysAction) || len(m.verbs) > 0 && m.deedKeys(i) != 0
}

// actionAt reads a word of something to do at item i.
func (m *message) actionAt(i, s int) (action, bool) {
	it := &m.items[i]
	for open := actionIndex.open(uint64(it.keys | m.allKeys)); open != 0; {
		if a, ok := actionRules[open.next()].reads(m, i, s); ok {
			return a, true
		}
	}
	if it.role == roleTaken || !it.kinds.has(cDo) && !it.kinds.has(cItem) {
		return action{}, false
	}
	d, negated := m.doingAt(i)
	if negated {
		return action{}, false
	}
	for _, t := range it.tags {
		if t.class != cDo {
			continue
		}
		a, came := action{}, passed
		switch t.value {
		case "recheck":
			a, came = m.recheckAt(i, s, d)
		case "check":
			a, came = m.checkAt(i, s, d)
		case "replace", "install", "set":
			a, came = m.jobAt(i, s, t.value, d)
		case "other":
			a, came = m.otherAt(i, s, d)
		}
		if came != passed {
			return a, came == found
		}
	}
	return m.itemWanted(i, s)
}

// putIn reads "putting a tank in Wednesday", "back Monday to put a tank in".
func (m *message) putIn(i, s int) (action, bool) {
	switch m.text(i) {
	case "put", "hang", "stick":
	case "putting":
		if !m.momentSeg(i) {
			return action{}, false
		}
	default:
		return action{}, false
	}
	if m.right(i, 4, true, func(k int) bool { return m.is(k, cDo, "recheck") }) > 0 {
		return action{}, false // "please put in a recheck in one year"
	}
	for _, v := range m.verbs {
		if v.at == i && v.planned && !v.negated {
			if code, ok := m.planCode("install", i, s); ok {
				return action{at: i, code: code, needed: true}, true
			}
		}
	}
	return action{}, false
}

// goesUp reads "expansion tank goes up Saturday".
func (m *message) goesUp(i, s int) (action, bool) {
	if !m.says(i, "goes", "going") || m.text(i+1) != "up" || !m.is(i-1, cItem, "") || !m.momentSeg(i) {
		return action{}, false
	}
	code, ok := m.planCode("install", i, s)
	return action{at: i, code: code, needed: true}, ok
}

// turnDown reads "turn the prv down Monday".
func (m *message) turnDown(i, s int) (action, bool) {
	ok := (m.turnsDown(i) || m.turnsPressure(i)) && !pastForm(m.text(i)) && !m.denied(i) && (m.willNear(i) || m.momentIn(s) || m.sentenceIs(s, cHint, "remind"))
	return action{at: i, code: assess.SetPRV, needed: true}, ok
}

// turnsPressure tells whether what is to be turned at item i is the pressure itself: "need to drop the
// pressure to 60", "hay que bajarle la presión".
func (m *message) turnsPressure(i int) bool {
	k := i + 1
	for m.is(k, cDeterminer, "") || m.says(k, "house", "static") {
		k++
	}
	if !m.inList(i, listTurns) || !m.says(k, "pressure", "presion") || m.is(k+1, cSym, "") {
		return false
	}
	// "need to take the pressure at the street"
	return !m.says(i, "take", "get", "put", "move") || m.inList(k+1, listTurnedWhichWay)
}

// bringsDown reads "drop the pressure at 12 Elm to 60".
func (m *message) bringsDown(i, s int) (action, bool) {
	ok := i == m.firstOf(s) && !m.shut(wentToGate) && m.ordersPressure(s) && m.anyNumberTo(s)
	return action{at: i, code: assess.SetPRV, needed: true}, ok
}

// wentToGate is that of a pressure to be reached.
var wentToGate = onlyWithList(listWentTo)

// anyNumberTo tells whether sentence s names a pressure to be reached: "to 60".
func (m *message) anyNumberTo(s int) bool {
	for i := m.sents[s].from + 1; i < m.sents[s].to; i++ {
		if m.isNum(i) && m.inList(i-1, listWentTo) && m.items[i].value >= 20 && m.items[i].role != roleDate {
			return true
		}
	}
	return false
}

// newOneIn reads "tank shot, new one in 2 weeks".
func (m *message) newOneIn(i, s int) (action, bool) {
	if !m.newOneLater(i) {
		return action{}, false
	}
	code, ok := m.planCode("replace", i, s)
	return action{at: i, code: code, needed: true}, ok && (code != assess.OtherAction || m.momentIn(s))
}

// lookAgain reads a return told without a word of rechecking: "look at it again in May",
// "see you Tuesday".
func (m *message) lookAgain(i, s int) (action, bool) {
	again := action{at: i, code: assess.Recheck}
	if m.looksAgain(i) && !m.denied(i) && !m.doneWords(s) && (m.willNear(i) || m.momentIn(s) || m.sentenceIs(s, cHint, "remind")) {
		again.needed = m.willNear(i)
		return again, true
	}
	if !m.items[i].kinds.has(cHint) {
		return action{}, false
	}
	if m.seesAgain(i) && !m.refused(i) {
		again.needed = true
		return again, true
	}
	if m.looksAhead(i, s) {
		again.needed = m.willNear(i)
		return again, true
	}
	return action{}, false
}

// outcome is what came of reading a word as something to do.
type outcome int

const (
	passed  outcome = iota // no, but another meaning of it may be, or the thing that it names
	refuted                // no
	found                  // yes
)

// doing is how a word of doing stands.
type doing struct {
	done bool // it tells what was done
	deed bool // the same, or what has the form of that
	will bool // something is to be done
}

// doingAt tells how the word of doing at item i stands; negated: it was not done.
func (m *message) doingAt(i int) (d doing, negated bool) {
	for _, v := range m.verbs {
		if v.at != i {
			continue
		}
		d.deed = d.deed || v.done
		d.done = d.done || v.done && (!m.ambiguousForm(i) || m.toldDone(i))
		negated = negated || v.negated
	}
	d.will = m.items[i].kinds.has(cDo) && m.willNear(i)
	return d, negated
}

// recheckAt reads a word of coming again to look: "recheck", "follow up", "check".
func (m *message) recheckAt(i, s int, d doing) (action, outcome) {
	if d.done || m.doneWords(s) && !m.nextAfterDone(s, i) || m.headsVisit(i, s) || m.isMark(i+1, ":") && m.readingLike(s) && !m.momentIn(s) || m.leftOut(i) || m.cameTo(i) || m.showedThen(i) ||
		m.lookDenied(i) || m.visitByItsSpan(i, s) {
		return action{}, refuted
	}
	told, needed := true, false
	switch {
	case m.text(i) == "check" && m.is(i-1, cPart, "new") && m.left(i, 4, true, func(k int) bool { return m.says(k, "with", "w/", "w", "con", "bringing") }) >= 0:
		told = false // "back tomorrow w/ a new check" brings a valve
	case m.inList(i, listBareChecks):
		told = !m.is(i, cItem, "") && (d.will || m.momentIn(s))
	case m.is(i, cHint, "followup"):
		told = !m.namesJob(i+1) && m.momentIn(s) && !m.betterAction(s, i)
	default:
		needed = true
	}
	if !told {
		return action{}, refuted
	}
	if m.is(i, cHint, "followup") && m.errandBehind(i) {
		return action{at: i, code: assess.OtherAction, needed: true}, found // "f/u Fri: order unions"
	}
	return action{at: i, code: assess.Recheck, needed: needed}, found
}

// lookDenied tells whether what would bring about the look at item i is denied: "not gonna bother with
// a recheck", "don't schedule a recheck".
func (m *message) lookDenied(i int) bool {
	k := i - 1
	for k > m.clauseStart(i) && (m.is(k, cDeterminer, "") || m.inList(k, listBringsRecheck)) {
		k--
	}
	return k < i-1 && m.is(k, cNeg, "")
}

// showedThen tells whether what the gauge showed stands behind the word at i, so that the
// look was taken: "put it on pilot and read again, 84".
func (m *message) showedThen(i int) bool {
	k := i + 1
	for m.isMark(k, ",", ":", "-") || m.says(k, "and", "got", "and got", "its", "at") {
		k++
	}
	s := m.items[i].sent
	if m.text(i-1) == "to" || m.willNear(i) || m.momentIn(s) {
		return false
	}
	if (strings.HasSuffix(m.text(i), " reading") || strings.HasSuffix(m.text(i), " readings")) && m.readingLike(s) && !m.planish(s) {
		return true // "new reading for 12 Elm, 58 at the tub"
	}
	return m.isNum(k) && unitDays(m.items[k].unit) == 0 && (m.pressed(k) || m.items[k].value >= leastPSI && m.closes(k)) &&
		!m.items[k].num.time
}

// checkAt reads a word of checking that is a follow-up only where a time or a wish says
// so; "see you in an hour" is none.
func (m *message) checkAt(i, s int, d doing) (action, outcome) {
	if strings.HasPrefix(m.text(i), "see ") && (!m.momentSeg(i) || !m.anyReadingLike()) {
		return action{}, passed
	}
	if d.done || m.doneWords(s) || m.denied(i) || !d.will && !m.momentSeg(i) {
		return action{}, passed
	}
	return action{at: i, code: assess.Recheck, needed: d.will}, found
}

// jobAt reads a job to do, of the kind that the word's value names: "replace the prv
// Monday".
func (m *message) jobAt(i, s int, value string, d doing) (action, outcome) {
	if m.noJob(i, value) {
		return action{}, passed
	}
	if d.done && (!m.ambiguousForm(i) || m.toldDone(i)) || d.deed && m.is(i, cBase, "") && !d.will && !m.momentNext(i) {
		return action{}, passed
	}
	if m.denied(i) || (pastForm(m.text(i)) || m.is(i, cDid, "") || m.is(i, cPart, "new")) && m.needless(i) {
		return action{}, refuted // "he doesn't want the prv replaced", "no hay que poner reguladora nueva"
	}
	if d.done && !d.will && !m.momentSeg(i) || d.deed && !d.will && pastForm(m.text(i)) {
		return action{}, passed // "prv replaced Monday" is told, not planned
	}
	toCome := m.momentSeg(i) || m.happensTo(i) && m.momentIn(s) // "Thursday I go back, the prv gets replaced and a tank goes in"
	if !d.will && !toCome && !m.headerPlan(s) && !m.orders(i, s) && !(m.is(i-1, cItem, "") && m.momentNext(i)) {
		return action{}, passed
	}
	code, ok := m.planCode(value, i, s)
	if strings.HasPrefix(m.text(i), "doing ") && !m.is(i+1, cItem, "") {
		if c, told := m.meantAction(i); told {
			code, ok = c, true
		} else if !ok && m.momentSeg(i) && m.has(cSym, "leak") {
			return action{at: i, code: assess.OtherAction, needed: true}, found // "toilet runs, doing it tomorrow"
		}
	}
	if !ok && value != "set" {
		code, ok = m.pronounAction(i, s)
	}
	if !ok {
		return action{}, passed
	}
	return action{at: i, code: code, needed: true, other: code == assess.OtherAction && !m.gearNear(i)}, found
}

// noJob tells whether the word at i has another meaning than its value's: "prv swap set
// for Friday", "someone needs to go turn it down".
func (m *message) noJob(i int, value string) bool {
	switch value {
	case "install":
		return m.text(i) == "put in" && m.right(i, 3, true, func(k int) bool { return m.is(k, cDo, "recheck") }) > 0
	case "set":
		return m.booked(i) || m.dropsNewIn(i) || m.setsReminder(i)
	case "replace":
		if m.is(i, cPart, "new") && (m.is(i+1, cItem, "gauge") ||
			m.is(i-1, cItem, "gauge") && m.left(i, 3, true, func(k int) bool { return m.says(k, "con", "with") }) >= 0) {
			return true // "prv looks good, back tomorrow with a new gauge"
		}
		if m.says(i, "nuevo", "nueva") {
			day := m.timeWordAt(i+1) || m.text(i+1) == "el" && m.timeWordAt(i+2) // "regreso con la nueva el lunes"
			// "tomar lectura de nuevo", "nueva medición en 3 meses"
			return m.text(i-1) == "de" || !m.stopAt(i+1) && !m.is(i+1, cItem, "") && !day && !m.isNum(i+1)
		}
		return strings.HasSuffix(m.text(i), " go") && (m.is(i+1, cDo, "") || m.is(i+1, cHint, "moveword"))
	}
	return false
}

// otherAt reads any other thing to do: "to do: flush heater".
func (m *message) otherAt(i, s int, d doing) (action, outcome) {
	if d.done || m.refused(i) || m.visitByItsSpan(i, s) || m.orderComes(i) {
		return action{}, passed
	}
	if m.headerPlan(s) && i == m.sents[s].header+1 && m.gearNear(i) || m.serviceNeeded(i) {
		return action{at: i, code: assess.OtherAction, needed: true}, found
	}
	if m.text(i) == "back" && m.items[i].point != "" && m.numNear(i) && !m.momentSeg(i) {
		return action{}, passed
	}
	return action{at: i, code: assess.OtherAction, other: true, needed: true}, found
}

// orderComes tells whether the "order" at item i is one that was placed: "parts order lands Tuesday".
func (m *message) orderComes(i int) bool {
	return m.text(i) == "order" && (m.is(i-1, cDeterminer, "") || m.inList(i-1, listOrderOf)) &&
		m.right(i, 4, true, func(k int) bool { return m.inList(k, listComesIn) }) >= 0
}

// itemWanted reads "needs a prv", "quoted a tank".
func (m *message) itemWanted(i, s int) (action, bool) {
	v, ok := m.val(i, cItem)
	if !ok || !m.wantedItem(s, i) || m.needless(i) || m.onlyServed(i) {
		return action{}, false
	}
	code, ok := m.neededCode(m.itemCode(i, v))
	switch {
	case !ok:
		return action{}, false
	case code == assess.ReplacePRV && !m.is(i-1, cPart, "new") && m.inList(i+1, listWhereWanted) &&
		m.isNum(i+2) && m.settingLike(i+2):
		code = assess.SetPRV // "customer wants the prv at 50"
	case code == assess.InstallTank && (m.is(i+1, cDo, "replace") || m.is(i-1, cPart, "new") || m.is(i-1, cHint, "another")) && !m.noTank():
		code = assess.ReplaceTank // "she wants the expansion tank replaced", "needs another tank"
	}
	return action{at: i, code: code, needed: true}, true
}

// wantedItem tells whether the item at i is wanted: "a new prv would be a good idea", "needs
// a tank", "Next: prv".
func (m *message) wantedItem(s, i int) bool {
	if m.shut(neededGate) && m.sents[s].header < 0 {
		return false
	}
	if m.goodIdea(i) {
		return true
	}
	return m.needs(i) && m.willNear(i) && !m.byCode(i) || m.headerPlan(s) && (m.needs(i) || m.listedUnder(m.sents[s].header, i))
}

// listedUnder tells whether item i stands in a list of things right after a head:
// "needs: exp tank, prv".
func (m *message) listedUnder(header, i int) bool {
	for k := header + 1; k < i; k++ {
		if !m.is(k, cItem, "") && m.text(k) != "," && m.text(k) != "and" && m.text(k) != "new" && m.text(k) != "/" {
			return false
		}
	}
	return true
}

// betterAction tells whether a sentence names something more definite to do.
func (m *message) betterAction(s, not int) bool {
	for i := m.sents[s].from; i < m.sents[s].to; i++ {
		if i != not && (m.is(i, cDo, "replace") || m.is(i, cDo, "install") || m.is(i, cDo, "recheck") && m.text(i) != "check" ||
			m.is(i, cDo, "set")) {
			return true
		}
	}
	return false
}

var turnWords = opener{lists: []list{listTurns}}

// turnsDown tells whether the word at i sets the regulator with the particle
// parted from it: "turn the prv down", "put the prv at 60".
func (m *message) turnsDown(i int) bool {
	if !m.said(i, keyTurns) {
		return false
	}
	prv := false
	for k := i + 1; k < len(m.items) && k <= i+5 && !m.items[k].mark && m.items[k].num == nil; k++ {
		if m.is(k, cItem, "prv") {
			prv = true
			continue
		}
		switch {
		case m.inList(k, listTurnedWhichWay):
			return prv
		case m.says(k, "at", "to"):
			if prv && m.isNum(k+1) && m.settingLike(k+1) {
				return true
			}
		}
	}
	return false
}

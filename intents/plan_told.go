package intents

import (
	"slices"
	"strings"

	"lazyhand/assess"
)

// Lists of the lexicon that these rules know.
var (
	listWhereStat = listOf("where stat")
	listMayBe     = listOf("may be")
)

// Plans told by other words than a verb of doing and its object.

var undoesOpener = opener{words: []string{"high", "low", "off", "had", "next one", "left it"}}

// heatersDial tells whether "stat" at item i is a thermostat and not short for static: "turned
// down the stat", "stat at 120".
func (m *message) heatersDial(i int) bool {
	at := i + 1
	for m.inList(at, listWhereStat) {
		at++
	}
	warm := m.isNum(at) && m.items[at].within(100, 160) && !pressureUnit(m.items[at].unit)
	if m.is(i-1, cItem, "heater") || m.is(i-1, cDeterminer, "") {
		return warm || m.left(i, 4, false, func(k int) bool { return m.is(k, cDid, "set") || m.is(k, cHint, "shifts") }) >= 0
	}
	return warm && at > i+1
}

// unswallow undoes phrases that swallow a verb's particle or a stress: "swap that heater out
// next month", "needs a tank bad".
func (m *message) unswallow() {
	if m.kinds.has(cState) && m.kinds.has(cDo) {
		for i := range m.items {
			if m.is(i, cState, "idle") && strings.HasSuffix(m.text(i), " out") && m.left(i, 3, true, func(k int) bool {
				return (m.is(k, cDo, "replace") || m.is(k, cBase, "replaced")) && !m.is(k, cPart, "") && m.items[k].seg == m.items[i].seg
			}) >= 0 {
				m.say(i, "heater")
			} else if m.is(i, cState, "firing") && strings.HasSuffix(m.text(i), " on") && m.timeWordAt(i+1) &&
				m.left(i, 3, true, func(k int) bool { return m.meets(k, jobWords) }) >= 0 {
				m.say(i, "heater") // "swap the water heater on Friday"
			}
		}
	}
	if m.kinds.has(cStatic) {
		for i := range m.items {
			if m.text(i) == "stat" && m.heatersDial(i) {
				m.say(i, "thermostat")
			}
		}
	}
	for i := range m.items {
		if m.items[i].num != nil && m.items[i].value == 0 && m.restsOff(i) {
			m.items[i].num = nil // "gauge won't return to zero"
			m.say(i, "inaccurate")
		}
		if !m.begins(i, keyUndoes) {
			continue
		}
		if m.text(i) == "next one" && m.right(i, 5, true, func(k int) bool { return m.timeSpan(k) || m.timeWordAt(k) }) < 0 {
			m.unsay(i) // "okay next one is 1165 Maple St": a house
		}
		if n := i + 1; m.text(i) == "left it" && m.isNum(n) && m.items[n].value >= leastPSI && !m.items[n].num.time && (m.items[n].unit == "" || m.items[n].unit == "psi") {
			m.say(i, "left") // "left it 57"
		}
		if m.says(i, "high", "low", "off") && m.gaugeOff(i) {
			m.say(i, "inaccurate")
		}
		// "exp tank's had it"
		if m.text(i) == "had" && m.text(i+1) == "it" && m.closes(i+1) && m.is(i-1, cItem, "") && !m.is(i-1, cItem, "gauge") {
			m.say(i, "shot")
		}
	}
	if !m.kinds.has(cCond) || !m.kinds.has(cWill) {
		return
	}
	for i := range m.items {
		if m.text(i) == "bad" && m.is(i-1, cItem, "") &&
			m.left(i, 4, true, func(k int) bool { return m.is(k, cWill, "") && strings.HasPrefix(m.text(k), "need") }) >= 0 {
			m.unsay(i)
		}
	}
}

// jobWords are the classes of words that name a job.
var jobWords = setOf(cDo, cBase)

// gaugeOff tells whether the word at i says that a gauge reads wrongly: "gauge reads 5 high",
// "my gauge is off".
func (m *message) gaugeOff(i int) bool {
	k := i - 1
	if m.text(i) == "off" && (m.closes(i) || m.is(i+1, cHint, "bit") || m.says(i+1, "but", "so", "and")) {
		for m.inList(k, listLinks) || m.is(k, cHint, "bit") || m.is(k, cHint, "perhaps") ||
			m.inList(k, listMayBe) {
			k--
		}
		return k < i-1 && m.is(k, cItem, "gauge") // "the gauge may be a little off"
	}
	if !m.isNum(k) || m.items[k].value > 20 || m.text(i) == "off" {
		return false
	}
	return m.left(k, 4, true, func(j int) bool { return m.is(j, cItem, "gauge") }) >= 0 &&
		m.right(i, 1, true, func(j int) bool { return m.isNum(j) }) < 0
}

// plannedDeed names the follow-up of a verb at item i that is told as to come: "coming
// back Wednesday to put the new regulator in", "will pump the exp tank up Thursday",
// "quieren que la cambie mañana".
func (m *message) plannedDeed(i, s int) (action, bool) {
	if len(m.verbs) == 0 || m.is(i, cDo, "") || m.sents[s].question {
		return action{}, false
	}
	for _, v := range m.verbs {
		if v.at != i || !v.planned || v.negated || m.needless(i) || !m.willNear(i) && !m.momentIn(s) || m.left(i, 6, true, func(k int) bool {
			return m.is(k, cHint, "meant") && m.wasWill(k) || m.text(k) == "if" || m.text(k) == "whether"
		}) >= 0 {
			continue
		}
		if strings.HasPrefix(m.text(i), "put in") && m.right(i, 4, true, func(k int) bool { return m.is(k, cDo, "recheck") }) > 0 {
			continue // "please put in a recheck in one year"
		}
		switch v.what {
		case "replaced", "installed":
			what, _ := planOf(v.what)
			if code, ok := m.planCode(what, i, s); ok && (code != assess.OtherAction || m.momentIn(s)) {
				return action{at: i, code: code, needed: true}, true
			}
		case "set":
			if v.object == "prv" || v.object == "" && m.carriedTo(i) == "prv" {
				return action{at: i, code: assess.SetPRV, needed: true}, true
			}
		case "charged", "flushed", "rebuilt", "fixed", "mended":
			needed := m.is(i-1, cTarget, "") && strings.HasSuffix(m.text(i-1), " be") // "heater needs to be flushed"
			if needed || m.momentIn(s) || m.laterIn(i) || m.offered(i) {
				return action{at: i, code: assess.OtherAction, needed: true}, true
			}
		}
	}
	return action{}, false
}

// looksAhead tells whether the word at i is a pressure that is to be looked at on a day to
// come: "test the pressure the day after tomorrow", "another pressure test next year",
// "nueva medición de presión en 3 meses".
func (m *message) looksAhead(i, s int) bool {
	if !m.is(i, cHint, "measured") || !m.momentIn(s) || m.doneWords(s) || m.denied(i) {
		return false
	}
	seg := m.items[i].seg
	for k := m.sents[s].from; k < m.sents[s].to; k++ {
		if m.items[k].seg == seg && (m.pressureLike(k) && m.items[k].role == roleReading || m.is(k, cSym, "")) {
			return false
		}
	}
	looks := func(k int) bool { return m.is(k, cHint, "measures") && m.items[k].seg == seg }
	dated := slices.ContainsFunc(m.moments, func(w moment) bool {
		return m.items[w.at].sent == s && m.items[w.at].seg == seg && !m.past(w)
	})
	verb := m.is(i, cHint, "measures") && (m.text(i-1) == "to" || m.text(i-1) == "and") && m.is(i+1, cHint, "goes") // "to gauge it"
	return dated && (verb || m.left(i, 4, true, looks) >= 0 || m.right(i, 2, true, looks) >= 0)
}

// seesAgain tells whether the words at i promise no more than to be back in some months,
// which is to look at the house again: "see you in 12 months", "PRV is healthy, back in a
// year". What is done in days has its reason.
func (m *message) seesAgain(i int) bool {
	if !m.is(i, cHint, "seeyou") {
		return false
	}
	for _, w := range m.moments {
		if w.at > i && w.at <= i+3 && w.span && w.days >= 28 && m.closes(w.end-1) && m.items[w.at].sent == m.items[i].sent {
			return !m.past(w)
		}
	}
	return false
}

// pronounAction names what "swap it" at item i speaks of where no part was named as such:
// one named as a place ("past the PRV I'm at 84, gonna swap it Friday"), else anything.
func (m *message) pronounAction(i, s int) (assess.Action, bool) {
	t := m.text(i)
	it := strings.HasSuffix(t, " it") || strings.HasSuffix(t, " that") || m.text(i+1) == "it" ||
		// "en tres semanas la cambiamos"
		m.says(i-1, "la", "lo") || beginsWith(t, "la ", "lo ") || strings.HasSuffix(t, "rla") || strings.HasSuffix(t, "rlo")
	if !it || !m.momentIn(s) && !m.willNear(i) {
		return "", false
	}
	for k := i - 1; k >= 0; k-- {
		if m.items[k].sent == m.items[i].sent && m.strangeThing(k) {
			return "", false // "nitrogen bottle's down, swap it before Thursday"
		}
		if p := m.items[k].point; p == "after_prv" || p == "street" {
			if t := m.text(k); strings.HasSuffix(t, "prv") || strings.HasSuffix(t, "reg") || strings.HasSuffix(t, "regulator") {
				return assess.ReplacePRV, true
			}
		}
	}
	return assess.OtherAction, m.momentIn(s)
}

// itemsAndDays gives each item of a line that tells nothing but items and days its own
// follow-up: "prv friday and tank the week after", "tanque el miércoles".
func (m *message) itemsAndDays(se *sentence, whens []moment) []planned {
	if len(whens) == 0 || se.question {
		return nil
	}
	var out []planned
	item, next := -1, 0
	for k := se.from; k < se.to; k++ {
		switch {
		case next < len(whens) && k == whens[next].at:
			if whens[next].span || item < 0 {
				return nil
			}
			v, _ := m.val(item, cItem)
			code, ok := m.neededCode(m.itemCode(item, v))
			if !ok || code == assess.OtherAction {
				return nil
			}
			d := whens[next].days
			out = append(out, planned{item, assess.Plan{Action: code, InDays: &d}})
			k, item, next = whens[next].end-1, -1, next+1
		case m.items[k].mark, m.text(k) == "and", m.text(k) == "y", m.text(k) == "on", m.is(k, cDeterminer, ""), m.is(k, cPart, "new"):
		case m.is(k, cItem, "") && item < 0:
			item = k
		default:
			return nil
		}
	}
	if item >= 0 {
		return nil
	}
	return out
}

// bookedItems gives the item that a clause says to be booked for a day its follow-up: "118
// kitchen, prv booked for Wednesday", "tank is on the schedule for the 20th".
func (m *message) bookedItems(whens []moment) []planned {
	var out []planned
	for _, w := range whens {
		item, booked := -1, false
		for k := w.at - 1; k >= 0 && k >= w.at-9 && m.items[k].seg == m.items[w.at].seg && m.items[k].sent == m.items[w.at].sent; k-- {
			booked = booked || m.is(k, cHint, "booked")
			if m.is(k, cItem, "") {
				item = k
			}
			if m.is(k, cNeg, "") || m.is(k, cDid, "") && !m.is(k, cHint, "booked") {
				booked, item = false, -1
				break
			}
		}
		if item < 0 || !booked {
			continue
		}
		v, _ := m.val(item, cItem)
		if code, ok := m.neededCode(m.itemCode(item, v)); ok {
			d := w.days
			out = append(out, planned{item, assess.Plan{Action: code, InDays: &d}})
		}
	}
	return out
}

// itemToo gives the item right before a second day of its sentence the follow-up that the
// first one has: "replacing the tank tomorrow and the prv in a week".
func (m *message) itemToo(se *sentence, w moment) []planned {
	k := w.at - 1
	for k > se.from && m.says(k, "in", "on", "en", "el", "a", "for") {
		k--
	}
	v, ok := m.val(k, cItem)
	if !ok {
		return nil
	}
	first := k - 1
	for m.is(first, cDeterminer, "") {
		first--
	}
	if t := m.text(first); t != "and" && t != "," && t != "y" && t != "then" && t != "&" {
		return nil
	}
	code, ok := m.neededCode(m.itemCode(k, v))
	if !ok || code == assess.OtherAction || len(m.plans) == 0 {
		return nil
	}
	if code == assess.InstallTank && m.plans[len(m.plans)-1].Action == assess.ReplacePRV && !m.noTank() {
		code = assess.ReplaceTank
	}
	d := w.days
	return []planned{{k, assess.Plan{Action: code, InDays: &d}}}
}

// seenAgain tells whether coming back at item i, at the end of its clause, can only mean to
// look at the house again: months ahead, with no other purpose told: "back in a year".
func (m *message) seenAgain(i int, w moment) bool {
	if !strings.HasSuffix(m.text(i), "back") || !w.span || w.days < 90 || !m.closes(w.end-1) || w.at-i > 2 {
		return false
	}
	return m.anyReadingLike() && len(m.work) == 0 && m.lastFailed(i) == ""
}

// serviceComes reads a tank to be charged or the inside of a regulator to be cleaned on a day to come, told without
// a word of what is to come: "we clean the seat Thursday", "charge the tank Monday".
func (m *message) serviceComes(i, s int) (action, bool) {
	if m.is(i, cDo, "") || !m.isAny(i, cBase, "charged", "rebuilt") || m.sents[s].question || m.denied(i) || !m.momentSeg(i) ||
		slices.ContainsFunc(m.verbs, func(v verb) bool { return v.at == i }) {
		return action{}, false
	}
	k := i + 1
	for m.is(k, cDeterminer, "") {
		k++
	}
	inner := m.is(i, cBase, "rebuilt") && (strings.Contains(m.text(i), "strainer") ||
		strings.Contains(m.text(i), "screen") || m.is(k, cHint, "inside") || m.is(k, cItem, "prv"))
	tank := m.is(i, cBase, "charged") && (m.partAt(k) == "expansion_tank" || m.is(k, cItem, "tank"))
	return action{at: i, code: assess.OtherAction, needed: true}, inner || tank
}

// namesJob tells whether what stands from item i on is what a follow-up is for: "F/U call owner in 3 days", "F/U:
// flush it, 2 weeks".
func (m *message) namesJob(i int) bool {
	k := i
	for m.isMark(k, ":", "-", ",") || m.says(k, "to", "is", "for", "a") {
		k++
	}
	return m.is(i, cDo, "other") || m.isAny(k, cBase, "flushed", "charged", "rebuilt")
}

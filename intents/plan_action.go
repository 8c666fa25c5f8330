package intents

import (
	"strings"

	"lazyhand/assess"
)

var actionOpener = opener{
	classes: setOf(cDo, cItem),
	hints:   []string{"again", "measured", "seeyou"},
	words:   []string{"putting", "put", "hang", "stick", "goes", "going", "one", "new one", "uno", "una"},
}

// actionAt reads a word of something to do at item i.
func (m *message) actionAt(i, s int) (action, bool) {
	it := &m.items[i]
	if !m.begins(i, keyAction|keyTurns) && (len(m.verbs) == 0 || !m.begins(i, keyDeed|keyAirs|keySets|keyPutNew|keyShutsOff) && !m.workedWord(i)) {
		return action{}, false
	}
	if (it.text == "putting" || it.text == "put" || it.text == "hang" || it.text == "stick") && (it.text != "putting" || m.momentSeg(i)) {
		// "putting a tank in Wednesday", "back Monday to put a tank in"
		for _, v := range m.verbs {
			if v.at == i && v.planned && !v.negated {
				if code, ok := m.planCode("install", i, s); ok {
					return action{at: i, code: code, needed: true}, true
				}
			}
		}
	}
	if (it.text == "goes" || it.text == "going") && m.text(i+1) == "up" && m.is(i-1, cItem, "") && m.momentSeg(i) {
		if code, ok := m.planCode("install", i, s); ok {
			return action{at: i, code: code, needed: true}, true // "expansion tank goes up Saturday"
		}
	}
	if m.turnsDown(i) && !m.denied(i) && (m.willNear(i) || m.momentIn(s) || m.reminds(s)) {
		return action{at: i, code: assess.SetPRV, needed: true}, true
	}
	// "no tank, quoted her one", "no exp tank, told him he needs one"
	if one := m.text(i); (one == "one" || one == "new one" || one == "uno" || one == "una") && (m.needs(i) || m.goodIdea(i)) {
		obj, _ := m.topicBefore(i)
		if obj == "" {
			obj = m.carried(s)
		}
		if code, ok := m.neededCode(obj); ok && (code != assess.OtherAction || obj == "drain_valve") {
			return action{at: i, code: code, needed: true}, true
		}
	}
	if m.looksAgain(i) && !m.denied(i) && !m.doneWords(s) && (m.willNear(i) || m.momentIn(s) || m.reminds(s)) {
		return action{at: i, code: assess.Recheck, needed: m.willNear(i)}, true
	}
	if it.kinds.has(cHint) && m.seesAgain(i) && !m.refused(i) {
		return action{at: i, code: assess.Recheck, needed: true}, true
	}
	if it.kinds.has(cHint) && m.looksAhead(i, s) {
		return action{at: i, code: assess.Recheck, needed: m.willNear(i)}, true
	}
	if a, ok := m.plannedDeed(i, s); ok {
		return a, true
	}
	if it.role == roleTaken || !it.kinds.has(cDo) && !it.kinds.has(cItem) {
		return action{}, false
	}
	done, deed := false, false
	for _, v := range m.verbs {
		deed = deed || v.at == i && v.done
		if v.at == i && v.done && (!m.ambiguousForm(i) || m.toldDone(i)) {
			done = true
		}
		if v.at == i && v.negated {
			return action{}, false
		}
	}
	will := it.kinds.has(cDo) && m.willNear(i)
	for _, t := range it.tags {
		if t.class != cDo {
			continue
		}
		switch t.value {
		case "recheck":
			if done || m.doneWords(s) && !m.nextAfterDone(s, i) {
				return action{}, false
			}
			if m.headsVisit(i, s) || m.leftOut(i) || m.cameTo(i) {
				return action{}, false
			}
			if bareCheck(m.text(i)) {
				if m.is(i, cItem, "") {
					return action{}, false
				}
				return action{at: i, code: assess.Recheck}, will || m.momentIn(s)
			}
			if m.is(i, cHint, "followup") {
				if m.is(i+1, cDo, "other") {
					return action{}, false // "F/U call owner in 3 days"
				}
				return action{at: i, code: assess.Recheck}, m.momentIn(s) && !m.betterAction(s, i)
			}
			return action{at: i, code: assess.Recheck, needed: true}, true
		case "check":
			// a word of checking that is a follow-up only where a time or a wish says so
			if strings.HasPrefix(m.text(i), "see ") && (!m.momentSeg(i) || !m.anyReadingLike()) {
				continue // "see you in an hour"
			}
			if !done && !m.doneWords(s) && !m.denied(i) && (will || m.momentSeg(i)) {
				return action{at: i, code: assess.Recheck, needed: will}, true
			}
		case "replace", "install", "set":
			if t.value == "set" && m.booked(i) || t.value == "replace" && strings.HasSuffix(it.text, " go") && (m.is(i+1, cDo, "") || m.is(i+1, cHint, "moveword")) {
				continue // "prv swap set for Friday", "someone needs to go turn it down"
			}
			if done && (!m.ambiguousForm(i) || m.toldDone(i)) || deed && m.is(i, cBase, "") && !will && !m.momentNext(i) {
				continue
			}
			if m.denied(i) || pastForm(m.text(i)) && m.needless(i) {
				return action{}, false // "he doesn't want the prv replaced"
			}
			if done && !will && !m.momentSeg(i) || deed && !will && pastForm(m.text(i)) {
				continue // "prv replaced Monday" is told, not planned
			}
			if !will && !m.momentSeg(i) && !m.headerPlan(s) && !m.orders(i, s) && !(m.is(i-1, cItem, "") && m.momentNext(i)) {
				continue
			}
			code, ok := m.planCode(t.value, i, s)
			if strings.HasPrefix(it.text, "doing ") && !m.is(i+1, cItem, "") {
				if c, told := m.meantAction(i); told {
					code, ok = c, true
				} else if !ok && m.momentSeg(i) && m.has(cSym, "leak") {
					return action{at: i, code: assess.OtherAction, needed: true}, true // "toilet runs, doing it tomorrow"
				}
			}
			if !ok && t.value != "set" {
				code, ok = m.pronounAction(i, s)
			}
			if !ok {
				continue
			}
			return action{at: i, code: code, needed: true, other: code == assess.OtherAction && !m.gearNear(i)}, true
		case "other":
			if done || m.refused(i) {
				continue
			}
			if m.headerPlan(s) && i == m.sents[s].header+1 && m.gearNear(i) {
				return action{at: i, code: assess.OtherAction, needed: true}, true // "to do: flush heater"
			}
			if m.serviceNeeded(i) {
				return action{at: i, code: assess.OtherAction, needed: true}, true
			}
			if m.text(i) == "back" && m.items[i].point != "" && m.numNear(i) && !m.momentSeg(i) {
				continue
			}
			return action{at: i, code: assess.OtherAction, other: true, needed: true}, true
		}
	}
	// "needs a prv", "quoted a tank"
	if v, ok := m.val(i, cItem); ok && !m.needless(i) && !m.onlyServed(i) && m.wantedItem(s, i) {
		if code, ok := m.neededCode(m.itemCode(i, v)); ok {
			if t := m.text(i + 1); code == assess.ReplacePRV && !m.is(i-1, cPart, "new") && oneOf(t, "at", "to", "on", "around", "under", "down to") && m.isNum(i+2) && m.settingLike(i+2) {
				code = assess.SetPRV // "customer wants the prv at 50"
			}
			if code == assess.InstallTank && m.is(i+1, cDo, "replace") && !m.noTank() {
				code = assess.ReplaceTank // "she wants the expansion tank replaced"
			}
			return action{at: i, code: code, needed: true}, true
		}
	}
	return action{}, false
}

// wantedItem tells whether the item at i is wanted: "a new prv would be a good idea", "needs
// a tank", "Next: prv".
func (m *message) wantedItem(s, i int) bool {
	if m.goodIdea(i) {
		return true
	}
	return m.needs(i) && m.willNear(i) || m.headerPlan(s) && (m.needs(i) || m.listedUnder(m.sents[s].header, i))
}

// orders tells whether the word at i begins its sentence as an order, with a day named in
// it: "Replace it within the month, put it down for 30 days".
func (m *message) orders(i, s int) bool {
	return i == m.sents[s].from && orderForm(m.text(i)) && m.momentIn(s)
}

// orderForm tells whether a word of doing has the form of an order.
func orderForm(t string) bool {
	return !pastForm(t) && !strings.HasSuffix(strings.SplitN(t, " ", 2)[0], "ing")
}

// momentNext tells whether a day follows the word at i, past no more than the house:
// "exp tank install at 31 Tugboat Ln, Wednesday 9 am".
func (m *message) momentNext(i int) bool {
	k := i + 1
	for k < len(m.items) && k <= i+4 && (m.items[k].site || m.text(k) == "," || m.text(k) == "at" || m.text(k) == "on" || m.text(k) == ":") {
		k++
	}
	return m.timeWordAt(k)
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
		if i != not && (m.is(i, cDo, "replace") || m.is(i, cDo, "install") || m.is(i, cDo, "recheck") && m.text(i) != "check" || m.is(i, cDo, "set")) {
			return true
		}
	}
	return false
}

func (m *message) doneWords(s int) bool { return m.sents[s].closes }

// ambiguousForm tells whether a word may stand for a deed to come as well:
// "set", "install", "change".
func (m *message) ambiguousForm(i int) bool { return m.is(i, cDo, "") && m.is(i, cDid, "") }

// willNear finds a word of planning before item i in its sentence, or a day in its clause.
func (m *message) willNear(i int) bool {
	s := &m.sents[m.items[i].sent]
	if m.is(i, cWill, "") && m.is(i, cDo, "replace") {
		return true // "has to go"
	}
	for k := i; k >= s.from && k >= i-10; k-- {
		if k < i && m.items[k].mark && (m.text(k) == "," || m.text(k) == "/") {
			if k < i-4 {
				break
			}
		}
		if k < i && m.is(k, cDid, "") && !m.is(k, cDo, "") && !m.is(k, cWill, "") {
			break
		}
		if m.is(k, cWill, "") && k < i && !m.wasWill(k) {
			return true
		}
	}
	if m.kinds.has(cHint) && m.right(i, 8, true, func(k int) bool { return m.is(k, cHint, "later") && m.items[k].seg == m.items[i].seg }) >= 0 {
		return true // "hang an exp tank next trip"
	}
	if m.is(i-1, cHint, "meant") && m.text(i-1) == "id" || m.right(i, 2, true, func(k int) bool { return m.is(k, cHint, "advised") && m.items[k].seg == m.items[i].seg }) >= 0 {
		return true // "no tank, I'd put one in", "heater replacement quoted"
	}
	// "prv needs replaced", "por cambiar"
	for k := i - 1; k >= s.from && k >= i-3; k-- {
		switch m.text(k) {
		case "por":
			return k == i-1 // "por cambiar"; not "por una nueva"
		case "needs", "need", "to be", "needs to be", "hay que", "toca":
			return true
		}
	}
	return false
}

// wasWill tells whether a word of planning is something else here: "well" the
// source of water, "back", a place.
func (m *message) wasWill(k int) bool {
	if m.is(k, cHint, "meant") && (m.text(k-1) == "was" || m.text(k-1) == "were") && m.left(k, 4, false, func(j int) bool { return m.is(j, cItem, "") }) < 0 {
		return true // "I was gonna turn it down but didn't"
	}
	switch m.text(k) {
	case "back":
		return m.items[k].point != "" && m.numNear(k)
	case "next", "im", "well", "approved", "schedule", "set a", "set up", "ordered", "came back", "falta", "quote",
		"estimate", "debe", "wants", "please", "pls", "favor", "porfa", "por favor", "lets", "recuerda", "due":
		return m.text(k) == "im" && !m.says(k+1, "back", "replacing", "going") || m.says(k, "well", "came back", "please", "pls", "favor", "porfa", "por favor")
	}
	return false
}

// refused tells whether a promise is taken back: "won't be back".
func (m *message) refused(i int) bool {
	for k := i - 1; k >= i-2; k-- {
		switch m.text(k) {
		case "wont", "not", "dont", "didnt", "cant", "never", "need to", "no need to":
			if m.text(k) != "need to" || m.text(k-1) == "no" {
				return true
			}
		}
	}
	return false
}

// cameTo tells whether the follow-up at item i is what the visit was for: "came by to
// recheck 44 Juniper".
func (m *message) cameTo(i int) bool {
	return m.text(i-1) == "to" && m.left(i-1, 3, true, func(k int) bool { return m.is(k, cHint, "camehere") }) >= 0
}

// leftOut tells whether the follow-up named at item i is not to be: "no need to recheck",
// "skip the recheck".
func (m *message) leftOut(i int) bool {
	k := i - 1
	if m.is(k, cDeterminer, "") {
		k--
	}
	if m.is(k, cNeg, "") && m.text(k) == "no" && m.right(i, 2, true, func(j int) bool { return m.text(j) == "needed" || m.text(j) == "necessary" || m.text(j) == "required" }) >= 0 {
		return true // "no recheck needed"
	}
	return m.text(k) == "skip" || m.text(k) == "need to" && m.text(k-1) == "no" || m.refused(i)
}

// denied tells whether what is to be done is denied: "will replace nothing".
func (m *message) denied(i int) bool {
	if t := m.text(i + 1); t == "nothing" || t == "nada" || t == "anything" {
		return true
	}
	return m.left(i, 3, false, func(k int) bool {
		switch m.text(k) {
		case "not", "wont", "dont", "doesnt", "didnt", "no", "never", "without", "declined", "nothing", "isnt", "refused", "cant":
			return m.items[k].seg == m.items[i].seg && !m.deniesThing(k, i)
		}
		return false
	}) >= 0
}

// deniesThing tells whether the denial at k is only of a thing that stands before
// item i: "no exp tank and needs one".
func (m *message) deniesThing(k, i int) bool {
	if !m.is(k+1, cItem, "") {
		return false
	}
	for j := k + 2; j < i; j++ {
		switch m.text(j) {
		case "and", "y", "so", "but", "it", "house":
			return true
		}
	}
	return false
}

// nextAfterDone tells whether a follow-up in a sentence that closes one is the
// next one: "done, set the next one for 6 months out".
func (m *message) nextAfterDone(s, i int) bool {
	for k := i - 1; k >= m.sents[s].from; k-- {
		if m.is(k, cAsk, "done") {
			for j := k + 1; j < i; j++ {
				if m.items[j].seg != m.items[k].seg || m.text(j) == "and" || m.text(j) == "y" {
					return m.momentSeg(i)
				}
			}
			return false
		}
	}
	return false
}

package intents

import (
	"strings"

	"lazyhand/assess"
)

// Lists of the lexicon that these rules know.
var (
	listTurnIt    = listOf("turn it")
	listGoesIn    = listOf("goes in")
	listToMeasure = listOf("to measure")
	listBrings    = listOf("brings")
)

// secondPlan gives a plan to change two things to the second one too: "back Thursday
// to replace the regulator and the tank both".
func (m *message) secondPlan(se *sentence) {
	for k := range m.plans {
		p := m.plans[k]
		if p.at < se.from || p.at >= se.to || p.Action != assess.ReplacePRV && p.Action != assess.ReplaceTank && p.Action != assess.InstallTank {
			continue
		}
		if m.left(p.at, 3, true, func(j int) bool { return m.text(j) == "both" }) >= 0 || m.bothBehind(p.at) || strings.HasPrefix(m.text(p.at), "both ") {
			// "both get replaced Thursday"
			if o := map[bool]string{true: "prv", false: "expansion_tank"}[p.Action != assess.ReplacePRV]; m.namesItem(o) {
				code, _ := m.neededCode(o)
				if code == assess.InstallTank && !m.noTank() {
					code = assess.ReplaceTank
				}
				m.plans = append(m.plans, planned{p.at, assess.Plan{Action: code, InDays: p.InDays}})
				continue
			}
		}
		first := p.at
		for first < se.to && first < p.at+7 && !m.is(first, cItem, "prv") && !m.is(first, cItem, "tank") &&
			!m.is(first, cItem, "expansion_tank") {
			first++
		}
		for j := first + 1; j < se.to && j <= first+6; j++ {
			if c, ok := m.val(j, cItem); ok && m.joined(first, j) && !m.inList(j+1, listLinks) && !m.is(j+1, cCond, "") {
				code, ok := m.neededCode(m.itemCode(j, c))
				if code == assess.InstallTank && m.is(p.at, cDo, "replace") && !m.noTank() {
					code = assess.ReplaceTank
				}
				if ok && code != assess.OtherAction && code != p.Action {
					m.plans = append(m.plans, planned{j, assess.Plan{Action: code, InDays: p.InDays}})
				}
				break
			}
		}
	}
}

// bothBehind tells whether the word of doing at item i is to be done to two things: "replacing the both of
// them", "swapping them both", "change the two of them".
func (m *message) bothBehind(i int) bool {
	k := i + 1
	for m.is(k, cDeterminer, "") || m.says(k, "out", "them", "em", "for") {
		k++
	}
	return m.text(k) == "both" || k > i+1 && m.text(k) == "pair" || m.isNum(k) && m.items[k].value == 2 && m.text(k+1) == "of them"
}

// joinedJobs gives the day of plan p, made of action a, to the job that "and" joins to it: "to install
// a tank and to replace the regulator in three weeks".
func (m *message) joinedJobs(p planned, a *action, acts []action, only bool) {
	if p.InDays == nil || a.other || a.code == assess.Recheck {
		return
	}
	for k := range acts {
		b := &acts[k]
		if b.used || b.other || b.code == a.code || b.code == assess.Recheck || !m.joinsJobs(min(a.at, b.at), max(a.at, b.at), only) {
			continue
		}
		b.used = true
		m.plans = append(m.plans, planned{b.at, assess.Plan{Action: b.code, InDays: p.InDays}})
	}
}

// joinsJobs tells whether "and" joins the jobs at items a and b, with no more between than what the
// first is to be done to, and the day where it is the only one: "install a tank in 2 weeks and replace
// the prv", "the prv gets replaced friday and a tank goes in".
func (m *message) joinsJobs(a, b int, only bool) bool {
	behind := m.happensTo(b)
	if b > a+9 || !behind && !m.is(b, cBase, "") {
		return false
	}
	k := b - 1
	if m.says(k, "to", "also", "then") {
		k--
	}
	for behind && k > a && (m.is(k, cItem, "") || m.is(k, cDeterminer, "") || m.is(k, cPart, "new") || m.says(k, "gets", "get")) {
		k--
	}
	if !m.says(k, "and", "n", "&", "y", "and to", "and then", "and also") {
		return false
	}
	for j := a + 1; j < k; j++ {
		if m.items[j].mark || !only && (m.timeSpan(j) || m.timeWordAt(j)) || m.is(j, cWill, "") {
			return false
		}
	}
	return true
}

// namesItem tells whether the message names a piece of equipment.
func (m *message) namesItem(code string) bool {
	for k := range m.items {
		if v, ok := m.val(k, cItem); ok && m.itemCode(k, v) == code {
			return true
		}
	}
	return false
}

// planCode names the follow-up that a word of doing and what stands near it make.
func (m *message) planCode(what string, i, s int) (assess.Action, bool) {
	obj, ok := m.objectToDo(what, i, s)
	if !ok {
		return "", false
	}
	switch {
	case what == "set":
		named := obj == "prv" || obj == "" && (m.sentenceIs(s, cItem, "prv") || m.carried(s) == "prv") ||
			obj == "" && m.inList(i, listTurnIt)
		return assess.SetPRV, named
	case obj == "prv":
		return assess.ReplacePRV, true
	case obj != "expansion_tank":
		return assess.OtherAction, true
	case what == "install" && m.is(m.right(i, 2, false, func(k int) bool { return m.is(k, cItem, "") })-1, cHint, "another") && !m.noTank():
		return assess.ReplaceTank, true // "el viernes le ponemos otro tanque"
	case what == "replace" && (m.noTank() || m.goesIn(i) && !m.failedTank()), what == "install" && !m.failedTank():
		return assess.InstallTank, true
	}
	return assess.ReplaceTank, true
}

// objectToDo finds what is to be replaced, installed or set by the word at item i; only what is to
// be set may go without a name.
func (m *message) objectToDo(what string, i, s int) (obj string, ok bool) {
	from := m.sents[s].from
	if strings.HasSuffix(m.text(i), " it in") || m.text(i+1) == "it" && m.text(i+2) == "in" {
		obj, _ = m.topicBefore(i) // "she needs a tank and I'll put it in Thursday the regulator's fine"
	}
	if obj == "" {
		obj = m.objectAhead(i, s)
	}
	if her, at := m.feminine(i); obj == "" && at >= 0 {
		obj = her
	}
	if obj == "" && (m.inList(i, listGoesIn) && i > from && m.noEquipment(i-1) ||
		m.says(i, "new", "nuevo", "nueva") && (m.noEquipment(i+1) || m.is(i+1, cWhose, "person") || m.inList(i+1, listPeople))) {
		return "", false // "prv stuck open, new fridge going in tomorrow"
	}
	for k := i - 1; k >= from && obj == ""; k-- {
		if m.text(m.prepOf(k)) == "on" && m.is(m.prepOf(k)-1, cItem, "") {
			continue // "tank on the heater needs replacing"
		}
		if v, ok := m.val(k, cItem); ok && !m.taken(k) && v != "gauge" {
			if obj = m.itemCode(k, v); m.clauseStart(k) != m.clauseStart(i) {
				obj = m.orOtherFailed(obj, what, k)
			}
		}
	}
	if relief := func(k int) bool { return m.is(k, cRelief, "") }; obj == "" && m.kinds.has(cRelief) && m.left(i, i-from, true, relief) >= 0 {
		return "relief", true // "prv failed. wants the relief valve swapped, I'm coming back Wednesday for it"
	}
	switch {
	case obj != "":
		return obj, true
	case pastForm(m.text(i)) && m.strangeThing(i-1):
		return "", false // "she wants the meter box lid replaced"
	case what == "install" && m.noTank() && !strings.HasPrefix(m.text(i+1), "la nueva") && !(m.text(i+1) == "la" && m.text(i+2) == "nueva"):
		return "expansion_tank", true // "no tank on this heater, I recommend adding one"
	case what != "set" && m.sentenceIs(s, cRelief, ""):
		return "relief", true // "prv is at 60. Wants the relief valve swapped, I'm back Wednesday for it"
	}
	if obj = m.lastFailed(from); obj == "" {
		obj = m.carried(s)
	}
	obj = m.orOtherFailed(obj, what, from)
	return obj, obj != "" || what == "set"
}

// orOtherFailed returns what a new one before item at is for where the thing named last is a tank that the house
// lacks, or that is good: "check valve failed. no exp tank. back in 2 days w/ a new one".
func (m *message) orOtherFailed(obj, what string, at int) string {
	if obj == "expansion_tank" && what == "replace" && (m.noTank() || m.soundTank()) {
		if c := m.otherFailed(at); c != "" {
			return c
		}
	}
	return obj
}

// otherFailed returns the last thing before item at, no tank, and no regulator unless a tank is told to be good, that is
// said to have failed or to leak in the clause that names it; "" for none.
func (m *message) otherFailed(at int) string {
	for k := at - 1; k >= 0; k-- {
		v, ok := m.val(k, cItem)
		if !ok || m.taken(k) || oneOf(m.itemCode(k, v), "", "expansion_tank", "gauge") || v == "prv" && !m.soundTank() {
			continue
		}
		for j := m.clauseStart(k); j < m.clauseEnd(k); j++ {
			if (m.isAny(j, cCond, "failed", "suspect") || m.is(j, cSym, "leak")) && !m.is(j-1, cNeg, "") {
				return m.itemCode(k, v)
			}
		}
	}
	return ""
}

// objectAhead finds the thing named behind the word of doing at item i. Behind a pronoun, and where the thing stands
// before, "and" tells of something else: "I'm changing it tomorrow and there's no tank", "the prv gets swapped and a
// tank goes in".
func (m *message) objectAhead(i, s int) (obj string) {
	t := m.text(i)
	pronoun := m.text(i+1) == "it" || strings.HasSuffix(t, " it") || m.says(i-1, "la", "lo", "las", "los") || beginsWith(t, "la ", "lo ")
	pronoun = pronoun || m.happensTo(i)
	for k := i + 1; k < m.sents[s].to && k <= i+7 && obj == ""; k++ {
		if v, ok := m.val(k, cItem); ok && !m.taken(k) {
			if v == "gauge" {
				continue
			}
			obj = m.itemCode(k, v)
		}
		switch {
		case m.items[k].mark && m.text(k) != "(" && m.text(k) != ":",
			m.is(k, cDo, "") && k > i+1 && !m.is(k, cItem, "") && !m.is(k, cPart, "new"), m.said(k, keyJoins) && pronoun:
			return obj
		}
	}
	return obj
}

// happensTo tells whether the word of doing at item i stands behind the thing that it is done to: "the prv gets
// swapped", "a tank goes in".
func (m *message) happensTo(i int) bool {
	return (m.inList(i, listGoesIn) || pastForm(m.text(i)) && m.says(i-1, "gets", "get", "getting", "be", "being")) &&
		m.left(i, 4, false, func(k int) bool { return m.is(k, cItem, "") && m.items[k].seg == m.items[i].seg }) >= 0
}

// brings names the follow-up of coming back with a part, or to fit one: "back
// Saturday to put a tank on", "coming back tomorrow with an expansion tank".
func (m *message) brings(s, at int) (assess.Action, bool) {
	if m.toMeasure(s, at) {
		return assess.Recheck, true
	}
	if code, ok := m.backForThat(s, at); ok {
		return code, true
	}
	for k := at + 1; k < m.sents[s].to && k <= at+10; k++ {
		v, ok := m.val(k, cItem)
		if !ok {
			continue
		}
		for j := k - 1; j >= at && j >= k-4; j-- {
			if m.inList(j, listBrings) {
				switch m.itemCode(k, v) {
				case "expansion_tank":
					if m.text(j) == "for" && !m.noTank() {
						return "", false
					}
					if m.failedTank() {
						return assess.ReplaceTank, true
					}
					return assess.InstallTank, true
				case "prv":
					if m.text(j) == "for" {
						return "", false
					}
					return assess.ReplacePRV, true
				}
			}
		}
	}
	return m.bringsNew(s, at)
}

// backForThat names the follow-up of coming back for what was said to be changed or to have failed: "PRV's corroded, I'd
// say change it, going back in a week for that".
func (m *message) backForThat(s, at int) (assess.Action, bool) {
	k := m.right(at, 12, true, func(k int) bool { return m.says(k, "for", "do") && m.says(k+1, "that", "it", "this") && m.closes(k+1) })
	if k < 0 {
		return "", false
	}
	if j := m.left(at, at-m.sents[s].from, true, func(k int) bool { return m.is(k, cDo, "replace") }); j >= 0 {
		return m.planCode("replace", j, s)
	}
	obj := m.lastFailed(at)
	for j := max(s-1, 0); j <= s && obj != ""; j++ {
		if (m.sentenceIs(j, cDo, "replace") || m.sentenceIs(j, cCond, "failed")) && !m.sentenceIs(s, cRelief, "") {
			return m.neededCode(obj)
		}
	}
	return "", false
}

// bringsNew names the follow-up of coming back with a new one of what was told before: "vuelvo
// mañana con la nueva", "back tomorrow with the new one".
func (m *message) bringsNew(s, at int) (assess.Action, bool) {
	for k := at + 1; k < m.sents[s].to && k <= at+6; k++ {
		whole := m.says(k, "con la nueva", "con el nuevo") // a phrase that may also tell of what is done
		if !whole && !m.inList(k, listBrings) {
			continue
		}
		if whole {
			k--
		} else if m.is(k+1, cDeterminer, "") || m.says(k+1, "la", "el", "una", "uno", "un") {
			k++
		}
		day := m.timeWordAt(k+2) || m.says(k+2, "el", "on") && m.timeWordAt(k+3)
		if !whole && !m.is(k+1, cPart, "new") && !m.is(k+1, cHint, "newone") || !m.closes(k+1) && !m.is(k+2, cHint, "newone") && !day {
			return "", false
		}
		if m.sentenceIs(s, cRelief, "") {
			return assess.OtherAction, true // "T&P capped off, back tomorrow with a new one"
		}
		switch obj := m.carriedTo(at); {
		case obj == "prv":
			return assess.ReplacePRV, true
		case obj == "expansion_tank" && !m.noTank() && !strings.HasSuffix(m.text(k+1), "nueva"):
			return assess.ReplaceTank, true
		}
		return "", false
	}
	return "", false
}

// goesIn tells whether the word at i puts a thing in without saying that one was
// there before: "exp tank goes in Thursday".
func (m *message) goesIn(i int) bool {
	if m.inList(i, listGoesIn) {
		return m.text(i-1) != "new one" && m.text(i-2) != "new"
	}
	return false
}

// gearNear tells whether the clause of item i names a piece of equipment that
// something is to be done to.
func (m *message) gearNear(i int) bool {
	s := &m.sents[m.items[i].sent]
	for k := max(s.from, i-8); k < s.to && k <= i+7; k++ {
		switch v, _ := m.val(k, cItem); v {
		case "heater", "softener", "recirc", "check_valve", "drain_valve":
			return true
		}
	}
	return false
}

// toMeasure tells whether the coming back at i is for a new reading: "vuelvo en 15
// días a medir".
func (m *message) toMeasure(s, i int) bool {
	for k := i + 1; k < m.sents[s].to && k <= i+8; k++ {
		if t := m.text(k); (t == "a" || t == "para") && (m.is(k+1, cDo, "recheck") || m.inList(k+1, listToMeasure)) {
			return true
		}
		if m.items[k].mark || m.is(k, cItem, "") {
			return false
		}
	}
	return false
}

// changesOn tells whether the words at i promise to change or put in something on
// the day at w: "el sábado voy y la cambio".
func (m *message) changesOn(i, w int) bool {
	return (m.is(i, cDo, "replace") || m.is(i, cDo, "install")) && !m.is(i, cPart, "") && !m.is(i, cDid, "") &&
		m.items[i].seg == m.items[w].seg
}

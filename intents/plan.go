package intents

import "lazyhand/assess"

// planned is a follow-up on its way to a statement.
type planned struct {
	at int
	assess.Plan
}

// action is a word of something to do.
type action struct {
	at     int
	code   assess.Action
	other  bool
	needed bool // needs no date: the sentence says that it is to be done
}

// findPlans reads what is to be done later.
func (m *message) findPlans() {
	m.spans()
	for s := range m.sents {
		m.planSentence(s)
	}
}

func (m *message) planSentence(s int) {
	se := m.sents[s]
	if se.question && !m.planish(s) && !m.has2(s, "could", "can", "would", "puedes", "pueden", "podrias", "puede", "podemos") {
		return
	}
	if se.snoozes {
		return
	}
	var acts []action
	for i := se.from; i < se.to; i++ {
		if a, ok := m.actionAt(i, s); ok {
			acts = append(acts, a)
		}
	}
	var whens []moment
	for _, w := range m.moments {
		if w.at >= se.from && w.at < se.to && !m.past(w) {
			whens = append(whens, w)
		}
	}
	used := make([]bool, len(acts))
	for _, w := range whens {
		best, cost := -1, 1e9
		for k, a := range acts {
			if used[k] && !(len(whens) == 1) {
				continue
			}
			c := float64(abs(a.at - w.at))
			if a.at > w.at {
				c += 1
			}
			if m.items[a.at].seg != m.items[w.at].seg {
				c += 4
			}
			if a.other {
				c += 8
			}
			if !a.needed && !a.other {
				c += 2
			}
			if c < cost {
				best, cost = k, c
			}
		}
		if best < 0 {
			continue
		}
		a := acts[best]
		if a.other && !m.promised(s, a) {
			continue
		}
		used[best] = true
		if a.other {
			if c, ok := m.brings(s, a.at); ok {
				a.code, a.other = c, false
			}
		}
		d := w.days
		m.plans = append(m.plans, planned{a.at, assess.Plan{Action: a.code, InDays: &d}})
		// the same clause's other words speak of the same thing
		for k, b := range acts {
			if !used[k] && (b.other || b.code == a.code) {
				used[k] = true
			}
		}
		if len(whens) == 1 {
			for k, b := range acts {
				if b.code == a.code {
					used[k] = true
				}
			}
		}
	}
	for k, a := range acts {
		if used[k] || a.other && !m.reminds(s) || !a.needed {
			continue
		}
		dup := false
		for j := range k {
			if used[j] && acts[j].code == a.code {
				dup = true
			}
		}
		if a.other && len(whens) == 0 && anyUsed(used) {
			continue
		}
		if dup {
			continue
		}
		used[k] = true
		m.plans = append(m.plans, planned{a.at, assess.Plan{Action: a.code}})
	}
}

func anyUsed(used []bool) bool {
	for _, u := range used {
		if u {
			return true
		}
	}
	return false
}

// past tells whether a moment lies behind: "last flushed", "2 weeks ago", "for 3 days".
func (m *message) past(w moment) bool {
	switch m.text(w.end) {
	case "ago", "back", "old", "later", "straight", "warranty":
		return true
	}
	switch m.text(w.at - 1) {
	case "last", "past", "for", "hace", "since", "every", "over", "twice", "these", "cada", "por", "within the last", "lasted":
		return m.text(w.at-1) != "for" || w.span && !m.setsDate(w.at-1)
	}
	return false
}

func (m *message) setsDate(k int) bool {
	switch m.text(k - 1) {
	case "down", "set", "booked", "scheduled", "one", "recheck", "check", "me down", "up", "put me down", "book", "schedule", "set up", "reminder", "out", "install", "visit":
		return true
	}
	return m.is(k-1, cDo, "") || m.is(k-2, cDo, "") || m.is(k-1, cWill, "")
}

// promised tells whether a plain "back", "call" or the like is a follow-up.
func (m *message) promised(s int, a action) bool {
	if a.at <= m.sents[s].from+1 && m.text(a.at) != "back" {
		return true // "Flush again in a year"
	}
	for i := m.sents[s].from; i < m.sents[s].to; i++ {
		switch m.text(i) {
		case "remind", "remind me", "reminder", "ill", "will", "im back", "be back", "back", "back in", "coming back", "come back", "going back", "ill be back", "return", "return trip", "return visit", "need to", "gonna", "voy a", "regreso", "vuelvo", "recuerdame", "regresamos", "volvemos", "going to", "schedule", "booked", "book", "scheduled", "acuerdame", "set a", "hay que", "tengo que", "need", "sched", "plan", "planned", "paso", "im", "order", "agenda", "to do", "todo", "next", "f/u", "follow up", "llamo", "im gonna", "recordatorio", "vamos a", "go back", "needs", "avisame", "visit", "recuerda", "wants", "well", "want", "should", "ping me", "let me know", "apuntame", "we will", "lets", "set up", "quedamos", "llamar", "pasar":
			return true
		}
	}
	return false
}

// reminds tells whether the sentence asks for a reminder.
func (m *message) reminds(s int) bool {
	for i := m.sents[s].from; i < m.sents[s].to; i++ {
		switch m.text(i) {
		case "remind", "remind me", "reminder", "recuerdame", "acuerdame", "recordatorio", "recuerdenme":
			return true
		}
	}
	return false
}

// actionAt reads a word of something to do at item i.
func (m *message) actionAt(i, s int) (action, bool) {
	it := &m.items[i]
	if it.role == roleTaken || it.tags == nil {
		return action{}, false
	}
	done := false
	for _, v := range m.verbs {
		if v.at == i && v.done && !m.ambiguousForm(i) {
			done = true
		}
		if v.at == i && v.negated {
			return action{}, false
		}
	}
	will := m.willNear(i)
	for _, t := range it.tags {
		if m.p.classes[t.class] != cDo {
			continue
		}
		switch t.value {
		case "recheck":
			if done || m.doneWords(s) && !m.nextAfterDone(s, i) {
				return action{}, false
			}
			if m.text(i) == "check" || m.text(i) == "checar" || m.text(i) == "revisar" || m.text(i) == "check pressure" || m.text(i) == "revision" || m.text(i) == "check the pressure" || m.text(i) == "check back" || m.text(i) == "check pressures" {
				if m.is(i, cItem, "") {
					return action{}, false
				}
				return action{at: i, code: assess.Recheck}, will || m.momentIn(s)
			}
			if m.text(i) == "f/u" || m.text(i) == "fu" || m.text(i) == "follow up" || m.text(i) == "followup" || m.text(i) == "next check" || m.text(i) == "seguimiento" {
				return action{at: i, code: assess.Recheck}, m.momentIn(s) && !m.betterAction(s, i)
			}
			return action{at: i, code: assess.Recheck, needed: true}, true
		case "replace", "install", "set":
			if done && !m.ambiguousForm(i) {
				continue
			}
			if m.denied(i) {
				return action{}, false
			}
			if done && !will && !m.momentSeg(i) {
				continue
			}
			if !will && !m.momentSeg(i) && !m.headerPlan(s) {
				continue
			}
			code, ok := m.planCode(t.value, i, s)
			if !ok {
				continue
			}
			return action{at: i, code: code, needed: true, other: code == assess.OtherAction}, true
		case "other":
			if done {
				continue
			}
			if m.text(i) == "back" && m.items[i].point != "" && m.numNear(i) && !m.momentSeg(i) {
				continue
			}
			return action{at: i, code: assess.OtherAction, other: true, needed: true}, true
		}
	}
	// "no tank, quoted her one"
	if m.quotes(m.text(i)) {
		for k := i + 1; k <= i+3 && k < len(m.items); k++ {
			if t := m.text(k); t == "one" || t == "uno" || t == "una" {
				obj, _ := m.topicBefore(i)
				if obj == "" {
					obj = m.carried(s)
				}
				switch obj {
				case "expansion_tank":
					return action{at: i, code: assess.InstallTank, needed: true}, true
				case "prv":
					return action{at: i, code: assess.ReplacePRV, needed: true}, true
				}
			}
		}
	}
	// "needs a prv", "quoted a tank"
	if v, ok := m.val(i, cItem); ok && (will || m.headerPlan(s)) {
		if m.needs(i) {
			switch m.itemCode(i, v) {
			case "prv":
				return action{at: i, code: assess.ReplacePRV, needed: true}, true
			case "expansion_tank":
				return action{at: i, code: assess.InstallTank, needed: true}, true
			}
		}
	}
	return action{}, false
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

// needs tells whether the item at i is what is needed or quoted: "needs a new prv".
func (m *message) needs(i int) bool {
	for k := i - 1; k >= 0 && k >= i-3 && m.items[k].sent == m.items[i].sent; k-- {
		switch m.text(k) {
		case "needs", "need", "needs a", "quoted", "quote", "recommend", "recommended", "necesita", "ocupa", "wants", "falta", "qtd", "priced", "bid", "estimate", "cotice", "recommends", "hace falta", "le falta", "le urge", "sold", "estimated", "cotizado", "le cotice", "recomiendo":
			return m.text(k) != "falta" || true
		case "and", "y", "plus":
			if !m.is(k-1, cItem, "") {
				return false
			}
			return m.needs(k - 1)
		case "a", "an", "new", "un", "una", "nueva", "nuevo", "her", "him", "them", "the", "for":
			if m.text(k) == "for" && m.isNum(k-1) {
				for j := m.sents[m.items[i].sent].from; j < k; j++ {
					if m.quotes(m.text(j)) {
						return true
					}
				}
			}
		default:
			return false
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
	s := m.sents[m.items[i].sent]
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
	// "prv needs replaced", "por cambiar"
	for k := i - 1; k >= s.from && k >= i-3; k-- {
		switch m.text(k) {
		case "needs", "need", "por", "to be", "needs to be", "hay que", "toca":
			return true
		}
	}
	return false
}

// wasWill tells whether a word of planning is something else here: "well" the
// source of water, "back", a place.
func (m *message) wasWill(k int) bool {
	switch m.text(k) {
	case "back":
		return m.items[k].point != "" && m.numNear(k)
	case "next", "im", "well", "approved", "schedule", "set a", "set up", "ordered", "came back", "falta", "quote", "estimate", "debe", "wants", "please", "pls", "favor", "porfa", "por favor", "lets", "recuerda", "due":
		return m.text(k) == "im" && m.text(k+1) != "back" && m.text(k+1) != "replacing" && m.text(k+1) != "going" || m.text(k) == "well" || m.text(k) == "came back" || m.text(k) == "please" || m.text(k) == "pls" || m.text(k) == "favor" || m.text(k) == "porfa" || m.text(k) == "por favor"
	}
	return false
}

func (m *message) momentIn(s int) bool {
	for _, w := range m.moments {
		if w.at >= m.sents[s].from && w.at < m.sents[s].to && !m.past(w) {
			return true
		}
	}
	return false
}

func (m *message) momentSeg(i int) bool {
	for _, w := range m.moments {
		if m.items[w.at].sent == m.items[i].sent && abs(m.items[w.at].seg-m.items[i].seg) <= 0 && abs(w.at-i) <= 9 && !m.past(w) {
			return true
		}
	}
	return false
}

// headerPlan tells whether the line is headed as a plan: "NEXT:", "F/U".
func (m *message) headerPlan(s int) bool {
	if m.sents[s].header < 0 {
		return false
	}
	for k := m.sents[s].from; k < m.sents[s].header; k++ {
		switch m.text(k) {
		case "next", "plan", "todo", "to do", "f/u", "follow up", "followup", "next step", "next visit", "recommend", "recommended", "pendiente", "recs", "rec", "quoted", "quote", "recomendado", "siguiente", "next steps", "recommendation", "recommendations", "proximo", "needs", "needed", "pending", "seguimiento", "falta", "sched", "scheduled", "plan de accion":
			return true
		}
	}
	return false
}

// denied tells whether what is to be done is denied: "will replace nothing".
func (m *message) denied(i int) bool {
	if t := m.text(i + 1); t == "nothing" || t == "nada" || t == "anything" {
		return true
	}
	return m.left(i, 3, false, func(k int) bool {
		switch m.text(k) {
		case "not", "wont", "dont", "doesnt", "didnt", "no", "never", "without", "declined", "nothing", "isnt", "refused", "cant":
			return m.items[k].seg == m.items[i].seg
		}
		return false
	}) >= 0
}

// planCode names the follow-up that a word of doing and what stands near it make.
func (m *message) planCode(what string, i, s int) (assess.Action, bool) {
	obj := ""
	se := m.sents[s]
	for k := i + 1; k < se.to && k <= i+7 && obj == ""; k++ {
		if v, ok := m.val(k, cItem); ok && !m.taken(k) {
			if v == "gauge" {
				continue
			}
			obj = m.itemCode(k, v)
			if m.text(k-1) == "of" || m.text(k-1) == "on" {
				continue
			}
		}
		if m.items[k].mark && m.text(k) != "(" && m.text(k) != ":" {
			break
		}
		if m.is(k, cDo, "") && k > i+1 && !m.is(k, cItem, "") {
			break
		}
	}
	if obj == "" {
		for k := i - 1; k >= se.from; k-- {
			if v, ok := m.val(k, cItem); ok && !m.taken(k) && v != "gauge" {
				obj = m.itemCode(k, v)
				break
			}
		}
	}
	if obj == "" {
		obj = m.lastFailed(se.from)
		if obj == "" {
			obj = m.carried(s)
		}
		if obj == "" && what != "set" {
			return "", false
		}
	}
	switch what {
	case "replace":
		switch obj {
		case "prv":
			return assess.ReplacePRV, true
		case "expansion_tank":
			if m.noTank() {
				return assess.InstallTank, true
			}
			return assess.ReplaceTank, true
		}
		return assess.OtherAction, true
	case "install":
		switch obj {
		case "prv":
			return assess.ReplacePRV, true
		case "expansion_tank":
			if m.failedTank() {
				return assess.ReplaceTank, true
			}
			return assess.InstallTank, true
		}
		return assess.OtherAction, true
	default:
		switch obj {
		case "prv", "":
			if t := m.text(i); obj == "" && !m.has(cItem, "prv") && t != "turn it down" && t != "turn it up" && t != "crank it down" && t != "bring it down" {
				return "", false
			}
			return assess.SetPRV, true
		}
		return "", false
	}
}

// lastFailed finds the regulator or tank said to have failed before item at.
func (m *message) lastFailed(at int) string {
	for k := at - 1; k >= 0; k-- {
		if v, ok := m.val(k, cItem); ok && !m.taken(k) {
			c := m.itemCode(k, v)
			if c == "prv" || c == "expansion_tank" {
				for j := max(0, k-6); j < min(len(m.items), k+12); j++ {
					if m.is(j, cCond, "failed") || m.is(j, cCond, "suspect") {
						return c
					}
				}
			}
		}
	}
	return ""
}

// noTank tells whether the message says that there is no expansion tank.
func (m *message) noTank() bool {
	for k := range m.items {
		if v, ok := m.val(k, cItem); ok && m.itemCode(k, v) == "expansion_tank" {
			if m.itemAbsent(k) {
				return true
			}
		}
	}
	return false
}

// nextAfterDone tells whether a follow-up in a sentence that closes one is the
// next one: "done, set the next one for 6 months out".
func (m *message) nextAfterDone(s, i int) bool {
	for k := i - 1; k >= m.sents[s].from; k-- {
		if m.is(k, cAsk, "done") && m.items[k].seg != m.items[i].seg {
			return m.momentSeg(i)
		}
	}
	return false
}

// brings names the follow-up of coming back with a part, or to fit one: "back
// Saturday to put a tank on", "coming back tomorrow with an expansion tank".
func (m *message) brings(s, at int) (assess.Action, bool) {
	for k := at + 1; k < m.sents[s].to && k <= at+10; k++ {
		v, ok := m.val(k, cItem)
		if !ok {
			continue
		}
		for j := k - 1; j > at && j >= k-4; j-- {
			switch m.text(j) {
			case "with", "w/", "con", "w", "put", "bring", "bringing", "for", "fit", "hang", "install":
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
	return "", false
}

func (m *message) failedTank() bool {
	return !m.noTank() && m.lastFailed(len(m.items)) == "expansion_tank"
}

// quotes tells whether a word offers something for a price.
func (m *message) quotes(t string) bool {
	switch t {
	case "cotice", "le cotice", "quoted", "quote", "qtd", "priced", "recommended", "recommend", "recomende", "sold", "bid", "estimate", "cotizado", "le cotice uno", "offered", "estimated":
		return true
	}
	return false
}

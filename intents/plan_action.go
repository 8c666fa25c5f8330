package intents

import "lazyhand/assess"

// actionAt reads a word of something to do at item i.
func (m *message) actionAt(i, s int) (action, bool) {
	it := &m.items[i]
	if it.text == "putting" && m.momentSeg(i) {
		// "putting a tank in Wednesday"
		for _, v := range m.verbs {
			if v.at == i && v.planned && !v.negated {
				if code, ok := m.planCode("install", i, s); ok {
					return action{at: i, code: code, needed: true, other: code == assess.OtherAction}, true
				}
			}
		}
	}
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
			if bareCheck(m.text(i)) {
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
		if m.needs(i) && !m.needless(i) {
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
	switch m.text(k) {
	case "back":
		return m.items[k].point != "" && m.numNear(k)
	case "next", "im", "well", "approved", "schedule", "set a", "set up", "ordered", "came back", "falta", "quote", "estimate", "debe", "wants", "please", "pls", "favor", "porfa", "por favor", "lets", "recuerda", "due":
		return m.text(k) == "im" && m.text(k+1) != "back" && m.text(k+1) != "replacing" && m.text(k+1) != "going" || m.text(k) == "well" || m.text(k) == "came back" || m.text(k) == "please" || m.text(k) == "pls" || m.text(k) == "favor" || m.text(k) == "porfa" || m.text(k) == "por favor"
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
	if m.toMeasure(s, at) {
		return assess.Recheck, true
	}
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

// quotes tells whether a word offers something for a price.
func (m *message) quotes(t string) bool {
	switch t {
	case "cotice", "le cotice", "quoted", "quote", "qtd", "priced", "recommended", "recommend", "recomende", "sold", "bid", "estimate", "cotizado", "le cotice uno", "offered", "estimated":
		return true
	}
	return false
}

package intents

import (
	"strings"

	"lazyhand/assess"
)

// needs tells whether the item at i is what is needed or quoted: "needs a new prv".
func (m *message) needs(i int) bool {
	for k := i - 1; k >= 0 && k >= i-3 && m.items[k].sent == m.items[i].sent; k-- {
		if m.is(k, cHint, "needs") {
			return !m.denied(k)
		}
		if m.items[k].site {
			continue // "I owe 88 Parsons Green Rd an expansion tank"
		}
		switch m.text(k) {
		case "needs", "need", "needs a", "time for", "due for", "gonna need", "asking for", "needed", "quoted",
			"quote", "recommend", "recommended", "necesita", "ocupa", "wants", "falta", "qtd", "priced", "bid",
			"estimate", "cotice", "recommends", "hace falta", "le falta", "le urge", "sold", "estimated",
			"cotizado", "le cotice", "recomiendo", "cotizamos", "le cotizamos", "se le cotizo", "ocupamos",
			"necesitamos", "requiere", "recomende", "le recomende", "les recomende", "recomendamos",
			"se recomienda", "le recomendamos":
			return !m.denied(k) && m.text(k-1) != "wont" && m.text(k-1) != "no"
		case "and", "y", "plus":
			if !m.is(k-1, cItem, "") {
				return false
			}
			return m.needs(k - 1)
		case "a", "an", "new", "un", "una", "nueva", "nuevo", "her", "him", "them", "the", "for", "on", "our", "bigger", "another", "that", "otra", "otro":
			if (m.text(k) == "for" || m.text(k) == "on") && m.is(k-1, cHint, "pricing") {
				return true // "gave a price for a heater"
			}
			if m.text(k) == "on" && !m.isNum(k-1) {
				return false
			}
			if (m.text(k) == "for" || m.text(k) == "on") && m.isNum(k-1) {
				for j := m.sents[m.items[i].sent].from; j < k; j++ {
					if m.quotes(m.text(j)) || m.is(j, cHint, "pricing") {
						return true
					}
				}
			}
		default:
			if m.is(k, cDeterminer, "") || m.items[k].num != nil && m.items[k].unit == "gal" || m.is(k, cFuel, "") || m.is(k, cMaterial, "") {
				continue // "quoted a 50 gal gas heater"
			}
			return false
		}
	}
	return false
}

// onlyServed tells whether what is needed of the item at i is told after it and is no
// new one: "wants the reg lowered", "needs the heater flushed".
func (m *message) onlyServed(i int) bool {
	k := i + 1
	for m.is(k, cHint, "bit") || m.is(k, cDeterminer, "") {
		k++
	}
	return (m.is(k, cDid, "") || m.is(k, cDo, "set") || m.is(k, cDo, "other")) && !m.is(k, cDo, "replace") && !m.is(k, cDo, "install") && !m.items[k].mark
}

// goodIdea tells whether the item at i is called a good idea: "expansion tank would help".
func (m *message) goodIdea(i int) bool {
	return m.is(i+1, cHint, "advised") || m.items[min(i+1, len(m.items)-1)].site && m.is(i+2, cHint, "advised")
}

// secondPlan gives a plan to change two things to the second one too: "back Thursday
// to replace the regulator and the tank both".
func (m *message) secondPlan(se *sentence) {
	for k := range m.plans {
		p := m.plans[k]
		if p.at < se.from || p.at >= se.to || p.Action != assess.ReplacePRV && p.Action != assess.ReplaceTank && p.Action != assess.InstallTank {
			continue
		}
		if m.left(p.at, 3, true, func(j int) bool { return m.text(j) == "both" }) >= 0 || strings.HasPrefix(m.text(p.at), "both ") {
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
		for first < se.to && first < p.at+7 && !m.is(first, cItem, "prv") && !m.is(first, cItem, "tank") && !m.is(first, cItem, "expansion_tank") {
			first++
		}
		for j := first + 1; j < se.to && j <= first+6; j++ {
			if c, ok := m.val(j, cItem); ok && m.joined(first, j) && !be(m.text(j+1)) && !m.is(j+1, cCond, "") {
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

// strangeThing tells whether item k is a noun that names no equipment.
func (m *message) strangeThing(k int) bool {
	return k >= 0 && m.items[k].tags == nil && !m.items[k].mark && m.items[k].num == nil && !m.items[k].site && !m.p.lex.common(m.text(k)) && !smallWord(m.text(k)) && !be(m.text(k))
}

// noEquipment tells whether item k is a thing that is no equipment: one that the lexicon lists
// ("fridge"), or a noun it does not know.
func (m *message) noEquipment(k int) bool {
	if k < 0 || k >= len(m.items) || m.items[k].mark || m.items[k].kinds.meets(setOf(cItem, cPart)) {
		return false
	}
	t := m.text(k)
	return m.signsOf(k).has(signThing) || m.strangeThing(k) && len(t) > 3 && !strings.HasSuffix(t, "one") && !strings.HasSuffix(t, "ones")
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

// neededCode names the follow-up that fits the need of an item.
func (m *message) neededCode(item string) (assess.Action, bool) {
	switch item {
	case "prv":
		return assess.ReplacePRV, true
	case "expansion_tank":
		if m.failedTank() {
			return assess.ReplaceTank, true
		}
		return assess.InstallTank, true
	case "heater", "softener", "recirc", "check_valve", "drain_valve":
		return assess.OtherAction, true
	}
	return "", false
}

// planCode names the follow-up that a word of doing and what stands near it make.
func (m *message) planCode(what string, i, s int) (assess.Action, bool) {
	obj := ""
	se := &m.sents[s]
	// "I'm changing it tomorrow and there's no tank"
	pronoun := m.text(i+1) == "it" || strings.HasSuffix(m.text(i), " it") || m.says(i-1, "la", "lo", "las", "los") || strings.HasPrefix(m.text(i), "la ") || strings.HasPrefix(m.text(i), "lo ")
	if strings.HasSuffix(m.text(i), " it in") || m.text(i+1) == "it" && m.text(i+2) == "in" {
		obj, _ = m.topicBefore(i) // "she needs a tank and I'll put it in Thursday the regulator's fine"
	}
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
		if m.is(k, cDo, "") && k > i+1 && !m.is(k, cItem, "") || m.said(k, keyJoins) && pronoun {
			break
		}
	}
	if obj == "" && (m.says(i, "goes in", "going in", "go in", "goes on") && i > se.from && m.noEquipment(i-1) || m.says(i, "new", "nuevo", "nueva") && m.noEquipment(i+1)) {
		return "", false // "prv stuck open, new fridge going in tomorrow"
	}
	if obj == "" {
		for k := i - 1; k >= se.from; k-- {
			if m.text(m.prepOf(k)) == "on" && m.is(m.prepOf(k)-1, cItem, "") {
				continue // "tank on the heater needs replacing"
			}
			if v, ok := m.val(k, cItem); ok && !m.taken(k) && v != "gauge" {
				obj = m.itemCode(k, v)
				break
			}
		}
	}
	if obj == "" && pastForm(m.text(i)) && m.strangeThing(i-1) {
		return "", false // "she wants the meter box lid replaced"
	}
	if obj == "" && what == "install" && m.noTank() {
		obj = "expansion_tank" // "no tank on this heater, I recommend adding one"
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
			if m.noTank() || m.goesIn(i) && !m.failedTank() {
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
			if t := m.text(i); obj == "" && !m.has(cItem, "prv") && !oneOf(t, "turn it down", "turn it up", "crank it down", "bring it down") {
				return "", false
			}
			return assess.SetPRV, true
		}
		return "", false
	}
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
		for j := k - 1; j >= at && j >= k-4; j-- {
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
	return m.bringsNew(s, at)
}

// bringsNew names the follow-up of coming back with a new one of what was told before: "vuelvo
// mañana con la nueva", "back tomorrow with the new one".
func (m *message) bringsNew(s, at int) (assess.Action, bool) {
	for k := at + 1; k < m.sents[s].to && k <= at+6; k++ {
		whole := m.says(k, "con la nueva", "con el nuevo") // a phrase that may also tell of what is done
		if !whole && !m.says(k, "with", "w/", "w", "con", "traigo", "bring", "bringing") {
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
	switch m.text(i) {
	case "goes in", "going in", "go in", "goes on":
		return m.text(i-1) != "new one" && m.text(i-2) != "new"
	}
	return false
}

var turnWords = opener{words: []string{
	"turn", "turning", "crank", "cranking", "dial", "dialing", "bring", "bring her", "bringing", "knock", "take",
	"taking", "ease", "back", "put", "get", "move",
}}

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
		switch m.text(k) {
		case "down", "up", "back", "off", "down to", "up to":
			return prv
		case "at", "to":
			if prv && m.isNum(k+1) && m.settingLike(k+1) {
				return true
			}
		}
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

// serviceNeeded tells whether the word at i is a service that is said to be
// needed: "heater needs a flush", "needs flushed", "hay que lavar el boiler".
func (m *message) serviceNeeded(i int) bool {
	switch m.text(i) {
	case "flush", "flushing", "flushed", "fix", "repair", "drain", "lavar", "drenar", "reparar", "arreglar", "rebuild", "clean", "limpiar", "service":
	default:
		return false
	}
	later := func(k int) bool { return m.is(k, cHint, "later") && m.items[k].seg == m.items[i].seg }
	if orderForm(m.text(i)) && (m.laterIn(i) || m.left(i, 4, true, later) >= 0) && !m.denied(i) {
		return true // "flush the heater next visit"
	}
	if m.offered(i) {
		return true
	}
	for k := i - 1; k >= 0 && k >= i-3 && m.items[k].seg == m.items[i].seg; k-- {
		switch m.text(k) {
		case "needs", "need", "needs a", "needs to be", "hay que", "should be", "due for", "overdue for", "necesita", "recommend", "recommended", "quoted", "ocupa", "has to be":
			return !m.denied(k)
		case "a", "an", "good", "un", "una", "to", "be":
		default:
			return false
		}
	}
	return false
}

// offered tells whether the service at item i is what was needed or quoted, told with its heater
// or the customer between: "quoted her a heater flush", "needs a heater flush".
func (m *message) offered(i int) bool {
	k := i - 1
	for m.is(k, cDeterminer, "") || m.is(k, cItem, "heater") || m.says(k, "her", "him", "them", "to") {
		k--
	}
	if k < 0 || m.items[k].seg != m.items[i].seg || m.denied(k) {
		return false
	}
	t := m.text(k)
	needed := m.is(k, cWill, "") && (m.is(k, cHint, "advised") || strings.HasPrefix(t, "need"))
	return needed || m.quotes(t) || m.isAny(k, cHint, "needs", "quoted") && t != "wanted"
}

// headsVisit tells whether a follow-up named at the head of a report is the visit
// reported: "Two week follow up, 9 Gila Ct".
func (m *message) headsVisit(i, s int) bool {
	if s != 0 || m.planish(s) && !m.is(i, cWill, "") || !m.anyReadingLike() {
		return false
	}
	if m.is(i, cHint, "visitname") && i == m.sents[s].from && !m.momentNext(i) {
		return true // "recheck visit, 2 wks after reg swap"
	}
	if m.text(i) == "recheck" && i == m.sents[s].from && !m.momentIn(s) && m.onlyHeads(i, s) {
		return true // "Recheck at 88 Tamarack Ln. Rear bib 72"
	}
	switch m.text(i) {
	case "follow up", "followup", "f/u", "fu", "recheck", "check", "check up", "revision", "seguimiento":
	default:
		return false
	}
	for _, w := range m.moments {
		if w.end == i && w.at == m.sents[s].from {
			return true
		}
	}
	return false
}

// onlyHeads tells whether sentence s holds no more behind the word at item i than the house and what
// came before, and pressures are told in those that follow.
func (m *message) onlyHeads(i, s int) bool {
	for k := i + 1; k < m.sents[s].to; k++ {
		if m.items[k].site && m.text(i+1) == "at" {
			return m.anyReadingLike()
		}
		worked := m.is(k, cItem, "") && m.says(k+1, "job", "swap", "work", "change")
		if m.items[k].point != "" || m.meets(k, setOf(cCond, cWill, cItem)) && !worked {
			return false
		}
	}
	lo, hi := m.readingsOf(s)
	return lo >= hi && len(m.readings) > 0 && m.readings[0].sent > s
}

// pastForm tells whether a word is a form of the past only, so that a day beside
// it lies behind.
func pastForm(t string) bool {
	switch t {
	case "cambiamos", "instalamos":
		return true
	}
	first, _, _ := strings.Cut(t, " ")
	return strings.HasSuffix(first, "ed") || strings.HasSuffix(first, "ada") || strings.HasSuffix(first, "ado")
}

// quotes tells whether a word offers something for a price.
func (m *message) quotes(t string) bool {
	switch t {
	case "cotice", "le cotice", "quoted", "quote", "qtd", "priced", "recommended", "recommend", "recomende",
		"sold", "bid", "estimate", "cotizado", "le cotice uno", "offered", "estimated":
		return true
	}
	return false
}

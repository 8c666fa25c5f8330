package intents

import "strings"

// topicBefore returns the equipment that the words before item i are about: the
// nearest item named before it in the sentence, else the last one of the
// sentences before.
func (m *message) topicBefore(i int) (string, int) {
	s := m.sents[m.items[i].sent]
	for k := i - 1; k >= s.from; k-- {
		if v, ok := m.val(k, cItem); ok && !m.taken(k) {
			return m.itemCode(k, v), k
		}
		if m.is(k, cPart, "air") {
			return "expansion_tank", k
		}
		if m.is(k, cFuel, "") && !m.gasTalk(k) {
			return "heater", k
		}
		if m.is(k, cPart, "thermostat") && m.text(k) != "dial" {
			return "heater", k
		}
	}
	return "", -1
}

// carried returns the equipment last named before sentence s.
func (m *message) carried(s int) string {
	if s >= len(m.sents) {
		return ""
	}
	for k := m.sents[s].from - 1; k >= 0; k-- {
		if v, ok := m.val(k, cItem); ok && !m.taken(k) {
			return m.itemCode(k, v)
		}
	}
	return ""
}

func (m *message) taken(k int) bool { return m.items[k].role == roleTaken }

// itemCode returns the code of an item; "tank" alone is the expansion tank
// unless a heater's size or fuel is said of it.
func (m *message) itemCode(k int, v string) string {
	if v != "tank" {
		return v
	}
	for j := max(0, k-3); j < min(len(m.items), k+3); j++ {
		if m.is(j, cFuel, "") || m.items[j].num != nil && (m.items[j].unit == "gal" || m.items[j].unit == "litre") && m.items[j].value >= 20 {
			return "heater"
		}
	}
	return "expansion_tank"
}

// verb is a word of work in the message.
type verb struct {
	at      int
	what    string
	done    bool
	negated bool
	planned bool
	state   bool // "PRV set to 60": a fact, no deed
	object  string
	objAt   int
}

// verbs finds the words of work and says whether the work was done.
func (m *message) findVerbs() {
	for i := range m.items {
		it := &m.items[i]
		if it.text == "put" || it.text == "putting" || it.text == "stick" || it.text == "hang" {
			if m.putsIn(i) {
				v := verb{at: i, what: "installed", objAt: -1}
				m.judge(&v)
				if it.text != "put" {
					v.done, v.planned = false, true
				}
				m.verbs = append(m.verbs, v)
			}
			continue
		}
		if it.mark {
			continue
		}
		if it.num != nil && it.unit == "turn" {
			for k := max(0, i-8); k < min(len(m.items), i+9); k++ {
				if m.items[k].sent == it.sent && (m.is(k, cItem, "prv") || m.text(k) == "screw" || m.text(k) == "tornillo") {
					m.verbs = append(m.verbs, verb{at: i, what: "set", done: true, object: "prv", objAt: -1})
					break
				}
			}
			continue
		}
		if w := m.shutsWater(i); w {
			v := verb{at: i, what: "shut", objAt: -1}
			m.judge(&v)
			m.verbs = append(m.verbs, v)
			continue
		}
		for _, t := range it.tags {
			if m.p.classes[t.class] != cDid {
				continue
			}
			if t.value == "charged" && it.text == "charged" {
				if m.isNum(i+1) && (m.text(i+2) == "for" || m.text(i+2) == "to" && m.text(i+3) == "come") {
					continue // a fee
				}
				switch m.text(i + 1) {
				case "her", "him", "them", "the customer", "me", "customer", "us":
					continue
				}
				if m.isNum(i+1) && m.items[i+1].num.money || m.isNum(i+2) && m.items[i+2].num.money {
					continue
				}
			}
			v := verb{at: i, what: t.value, objAt: -1}
			m.judge(&v)
			m.verbs = append(m.verbs, v)
		}
	}
}

func (m *message) judge(v *verb) {
	s := m.sents[m.items[v.at].sent]
	from := max(s.from, v.at-7)
	for k := v.at - 1; k >= from; k-- {
		if m.items[k].mark && (m.text(k) == "," || m.text(k) == "(" || m.text(k) == "/" || m.text(k) == "-") || m.items[k].seg != m.items[v.at].seg {
			break
		}
		if m.items[k].num != nil {
			break
		}
		if m.is(k, cDid, "") && m.text(k) != "set" && k < v.at-1 {
			break
		}
		switch m.text(k) {
		case "and", "y":
			// "didn't touch the prv and set …": another clause
			if k < v.at-1 {
				k = from
			}
			continue
		}
		if m.is(k, cNeg, "") && v.at-k <= 4 && m.text(k) != "no" && m.text(k) != "none" && m.text(k) != "cero" && m.text(k) != "zero" && m.text(k) != "free of" && m.text(k) != "nothing" {
			v.negated = true
			break
		}
		if m.is(k, cWill, "") && !m.wasWill(k) {
			v.planned = true
			break
		}
		if m.text(k) == "to" && k == v.at-1 || m.text(k) == "lets" || m.text(k) == "someone" {
			v.planned = true
			break
		}
		if m.is(k, cQuestion, "") && v.at-k <= 4 && s.question {
			v.planned = true
			break
		}
	}
	if s.question && s.asking {
		v.planned = true
	}
	v.object, v.objAt = m.objectOf(v)
	// "PRV set to 60": nobody set it
	if v.what == "set" && (m.text(v.at) == "set" || m.text(v.at) == "ajustada" || m.text(v.at) == "ajustado" || m.text(v.at) == "puesta" || m.text(v.at) == "puesto") && !v.negated && !v.planned {
		k := v.at - 1
		for k >= s.from && (be(m.text(k)) || m.text(k) == "pressure" || m.text(k) == "screw" || m.text(k) == "still" || m.text(k) == "factory" || m.text(k) == "says" || m.text(k) == "sticker says" || m.text(k) == "label says" || m.text(k) == "sticker" || m.text(k) == "dice" || m.text(k) == ":" || m.text(k) == "temp" || m.text(k) == "was") {
			k--
		}
		prior := k
		if prior >= s.from && (m.is(prior, cItem, "") || m.is(prior, cYear(m, prior), "") || m.is(prior, cPart, "")) {
			v.state = !m.verbBefore(prior, v.at) && !m.changeAfter(v.at)
			v.object, v.objAt = m.topicBefore(v.at)
		} else if prior >= s.from && m.items[prior].mark && prior == v.at-1 || v.at == s.from {
			// ", set at 60": a fact of the line's equipment, unless the line tells work
			if _, at := m.topicBefore(v.at); at >= 0 && !m.objectRight(v.at) && !m.verbBefore(at, v.at) {
				v.state = true
				v.object, v.objAt = m.topicBefore(v.at)
			} else if v.at == s.from && !m.objectRight(v.at) && m.text(v.at+1) != "it" {
				if c := m.carried(m.items[v.at].sent); c != "" && !m.anyDone(v.at) {
					v.state = true
					v.object = c
				}
			}
		} else if prior >= s.from && m.items[prior].num != nil && prior == v.at-1 {
			if _, at := m.topicBefore(v.at); at >= 0 && !m.verbBefore(at, v.at) && !m.objectRight(v.at) {
				v.state = true
				v.object, v.objAt = m.topicBefore(v.at)
			}
		} else if be(m.text(v.at-1)) || m.text(v.at-1) == "its" || m.text(v.at-1) == "is" {
			v.state = true
			if o, at := m.topicBefore(v.at); o != "" {
				v.object, v.objAt = o, at
			} else {
				v.object = m.carried(m.items[v.at].sent)
			}
		} else if m.text(v.at-1) == "which is" || m.text(v.at-1) == "thats" || m.text(v.at-1) == "and" && m.fuelSize(v.at-2) {
			v.state = true
			v.object, v.objAt = m.topicBefore(v.at)
		}
		if f, ok := m.val(v.at-1, cFuel); ok && f != "" && !m.verbBefore(v.at-1, v.at) {
			v.state = true
			v.object, v.objAt = "heater", v.at-1
		}
	}
	if t := m.text(v.at); (t == "dropped" || t == "moved" || t == "dropped it") && v.object != "prv" && !(t == "dropped it" && m.has(cItem, "prv")) {
		v.negated = true // the pressure dropped, nobody dropped it
	}
	v.done = !v.negated && !v.planned && !v.state
}

func (m *message) fuelSize(k int) bool {
	return m.is(k, cFuel, "") || k >= 0 && m.items[k].num != nil && (m.items[k].unit == "gal" || m.items[k].unit == "litre")
}

// cYear is a trick of reading: a number that is a year counts as the item's fact.
func cYear(m *message, k int) class { return cItem }

func be(s string) bool {
	switch s {
	case "is", "was", "are", "were", "be", "been", "esta", "estaba", "es", "currently", "s", "its", "has been", "came":
		return true
	}
	return false
}

// verbBefore tells whether a deed stands before item at, within the clause: then
// a "set" after it is part of the deed.
func (m *message) verbBefore(at, upTo int) bool {
	s := m.sents[m.items[at].sent]
	for k := at; k >= s.from && k >= at-8; k-- {
		if m.is(k, cDid, "") && k != upTo {
			return true
		}
		if m.text(k) == "i" || m.text(k) == "we" || m.text(k) == "ive" {
			return true
		}
	}
	return false
}

func (m *message) anyDone(before int) bool {
	for _, v := range m.verbs {
		if v.at < before && v.done && (v.what == "replaced" || v.what == "installed" || v.what == "rebuilt" || v.what == "set" || v.what == "charged") {
			return true
		}
	}
	return false
}

// changeAfter tells whether "set" goes on with a change: "set down from 85 to 60".
func (m *message) changeAfter(at int) bool {
	for k := at + 1; k < len(m.items) && k <= at+3; k++ {
		switch m.text(k) {
		case "down", "up", "back", "from", "down to", "up to":
			return true
		}
	}
	return false
}

func (m *message) objectRight(at int) bool {
	for k := at + 1; k < len(m.items) && k <= at+4; k++ {
		if m.is(k, cItem, "") || m.is(k, cPart, "air") {
			return true
		}
		if m.items[k].num != nil || m.items[k].mark {
			return false
		}
	}
	return false
}

// objectOf finds what a deed was done to.
func (m *message) objectOf(v *verb) (string, int) {
	s := m.sents[m.items[v.at].sent]
	for k := v.at + 1; k < s.to && k <= v.at+8; k++ {
		if o, ok := m.val(k, cItem); ok && !m.taken(k) {
			if o == "gauge" || m.text(k-1) == "on" && m.text(k-2) != "kit" || o == "drain_valve" && m.text(k) == "drain" {
				continue
			}
			return m.itemCode(k, o), k
		}
		if m.is(k, cFuel, "tankless") && (v.what == "installed" || v.what == "replaced") {
			return "heater", k
		}
		if m.is(k, cPart, "strainer") {
			return "prv", k
		}
		if m.is(k, cPart, "air") {
			return "expansion_tank", k
		}
		if m.is(k, cDid, "") && k > v.at+1 || m.items[k].mark && m.text(k) != "(" && m.text(k) != ")" && m.text(k) != ":" && m.text(k) != "/" && m.text(k) != "\"" {
			break
		}
		if m.is(k, cSym, "leak") && (v.what == "fixed" || v.what == "replaced") {
			return "leak", k
		}
	}
	// "prv replaced", "tank was charged", "flushed" after "heater:"
	for k := v.at - 1; k >= s.from && k >= v.at-5; k-- {
		if o, ok := m.val(k, cItem); ok && !m.taken(k) && o != "gauge" {
			return m.itemCode(k, o), k
		}
		if m.is(k, cPart, "strainer") {
			return "prv", k
		}
		if m.is(k, cSym, "leak") && v.what == "fixed" {
			return "leak", k
		}
		if m.items[k].mark && m.text(k) != ":" {
			break
		}
	}
	return "", -1
}

// doneVerb finds the nearest verb left of item i in its sentence, of the kinds given.
func (m *message) verbLeft(i, n int, kinds ...string) *verb {
	s := m.sents[m.items[i].sent]
	for j := len(m.verbs) - 1; j >= 0; j-- {
		v := &m.verbs[j]
		if v.at >= i || v.at < s.from {
			continue
		}
		if v.at < i-n {
			break
		}
		for _, k := range kinds {
			if v.what == k {
				return v
			}
		}
	}
	return nil
}

// fromTo reads "from 85 to 60" beside a word of setting or charging.
func (m *message) fromTo(i int) (role, string, bool) {
	prev := m.text(i - 1)
	// Y of X to Y
	if (prev == "to" || prev == "a" || prev == "down to" || prev == "up to" || prev == "hasta") && (m.isNum(i-2) || m.isNum(i-3)) {
		x := i - 2
		if !m.isNum(x) {
			x = i - 3
		}
		if m.items[x].role == roleFrom {
			m.items[i].owner = m.items[x].owner
			return roleTo, "from … to", true
		}
		if m.items[x].role == roleReading && m.items[x].why == "from, of work" {
			return roleReading, "to, of work", true
		}
	}
	// "set the PRV to 60, was 95"
	if prev == "was" || prev == "was at" || prev == "it was" || prev == "estaba en" || prev == "was set at" || (prev == "at" || prev == "en" || prev == "set" || prev == "set at") && (m.text(i-2) == "was" || m.text(i-2) == "estaba" || m.text(i-2) == "it was") {
		if p := m.prevNum(i); p >= 0 && m.items[p].role == roleTo && i-p <= 5 && !m.pointBetween(p, i) && !(i+1 < len(m.items) && m.items[i+1].point != "") && !m.pointIn(m.items[i].seg, i) {
			m.items[i].owner = m.items[p].owner
			return roleFrom, "was, of a setting", true
		}
	}
	// "set PRV, 80 to 62"
	if j := m.nextNum(i); j > 0 && j-i <= 2 && (m.text(j-1) == "to" || m.text(j-1) == "a" || m.text(j-1) == "down to" || m.text(j-1) == "up to") && prev != "to" && prev != "at" {
		if v := m.verbLeft(i, 7, "set", "charged"); v != nil && v.done && m.numsBetween(v.at, i) == 0 && !m.pointBetween(v.at, i) && !m.points(i) {
			m.items[i].owner = v.at + 1
			return roleFrom, "… to …", true
		}
	}
	if prev == "from" || prev == "de" || prev == "desde" {
		v := m.verbLeft(i, 9, "set", "charged")
		if v == nil {
			// "from 85 to 60, turned the prv down": a verb after it
			return 0, "", false
		}
		if v.done || v.state {
			if j := m.nextNum(i); j > 0 && (m.text(j-1) == "to" || m.text(j-1) == "a" || m.text(j-1) == "down to" || m.text(j-1) == "up to" || m.text(j-1) == "hasta") && j-i <= 3 {
				m.items[i].owner = v.at + 1
				v.state, v.done = false, true
				return roleFrom, "from … to", true
			}
			if m.items[v.at+1].num == nil && m.prevNum(i) >= 0 && m.items[m.prevNum(i)].role == roleTo {
				m.items[i].owner = v.at + 1
				return roleFrom, "to … from", true
			}
		}
		if v.planned || v.negated {
			return roleIgnored, "planned", true
		}
	}
	return 0, "", false
}

func (m *message) nextNum(i int) int {
	s := m.sents[m.items[i].sent]
	for k := i + 1; k < s.to; k++ {
		if m.items[k].num != nil {
			return k
		}
	}
	return -1
}

func (m *message) prevNum(i int) int {
	s := m.sents[m.items[i].sent]
	for k := i - 1; k >= s.from; k-- {
		if m.items[k].num != nil {
			return k
		}
	}
	return -1
}

// chargeRole tells whether a number is the air of the expansion tank.
func (m *message) chargeRole(i int) (role, string, bool) {
	it := &m.items[i]
	if v := m.verbLeft(i, 8, "charged"); v != nil && !m.pointBetween(v.at, i) && m.numsBetween(v.at, i) == 0 && m.directly(v.at, i) {
		if v.planned || v.negated {
			return roleIgnored, "planned charge", true
		}
		it.owner = v.at + 1
		return roleTo, "charged to", true
	}
	// "set prv 60 and tank 60"
	if p := m.prevNum(i); p >= 0 && m.items[p].role == roleTo && m.is(i-1, cItem, "") && (m.text(i-2) == "and" || m.text(i-2) == "y" || m.text(i-2) == ",") {
		if c, _ := m.val(i-1, cItem); m.itemCode(i-1, c) == "expansion_tank" {
			m.verbs = append(m.verbs, verb{at: i - 1, what: "charged", done: true, object: "expansion_tank", objAt: i - 1})
			it.owner = i
			return roleTo, "and the tank", true
		}
	}
	air := m.left(i, 5, false, func(k int) bool { return m.is(k, cPart, "air") })
	if air < 0 {
		if r := m.right(i, 3, false, func(k int) bool { return m.is(k, cPart, "air") }); r >= 0 && m.items[r].seg == it.seg {
			air = r
		}
	}
	tank, at := m.topicBefore(i)
	if air >= 0 {
		if m.pointBetween(min(air, i), max(air, i)) {
			return 0, "", false
		}
		if m.targeted(i) {
			return roleIgnored, "what the air should be", true
		}
		// "set the air to 60", "air now 60" after pumping
		if v := m.verbLeft(i, 8, "set", "charged"); v != nil && v.done && m.prepBefore(i) {
			it.owner = v.at + 1
			v.what = "charged"
			v.object = "expansion_tank"
			return roleTo, "air set to", true
		}
		return roleCharge, "air", true
	}
	if tank == "expansion_tank" && at >= 0 && !m.points(i) && m.chargedIn(it.sent) && i-at <= 8 && !m.pointBetween(at, i) {
		switch m.text(i - 1) {
		case "en", "at", "was", "had", "tenia", "estaba", "de", "traia", "only", "found", "con":
			return roleCharge, "air found", true
		}
	}
	if tank == "expansion_tank" && at >= 0 && m.items[at].seg == it.seg && i-at <= 4 && !m.pointBetween(at, i) && m.items[i].point == "" && !(i+1 < len(m.items) && m.items[i+1].point != "") {
		if v := m.verbLeft(i, 6, "replaced", "installed", "set"); v != nil && v.at > at-6 {
			if v.what == "set" && v.done && m.prepBefore(i) {
				it.owner = v.at + 1
				v.what, v.object = "charged", "expansion_tank"
				return roleTo, "tank set to", true
			}
			if v.what == "set" && v.state {
				return roleCharge, "tank set at", true
			}
			return 0, "", false
		}
		switch m.text(i - 1) {
		case "at", "is", "was", "has", "reads", "read", "only", "a", "en", "con", "tiene", "trae", "holding", "showing", "had", "shows", "just", "tenia", "traia":
			if !m.targeted(i) {
				return roleCharge, "tank at", true
			}
		}
		if at == i-1 && pressureUnit(it.unit) {
			return roleCharge, "tank", true
		}
	}
	return 0, "", false
}

func (m *message) pointBetween(a, b int) bool {
	for k := a + 1; k < b; k++ {
		if m.items[k].point != "" && !m.items[k].weak {
			return true
		}
	}
	return false
}

func (m *message) numsBetween(a, b int) int {
	n := 0
	for k := a + 1; k < b; k++ {
		if m.items[k].num != nil && m.items[k].role != roleFrom && m.items[k].role != roleTaken && m.items[k].role != roleSize {
			n++
		}
	}
	return n
}

// directly tells whether a number follows a verb without a clause between.
func (m *message) directly(v, i int) bool {
	for k := v + 1; k < i; k++ {
		t := m.text(k)
		if m.items[k].mark && t != ":" && t != "=" && t != "\"" && t != "(" {
			return false
		}
		switch t {
		case "sys", "system", "house", "now", "reads", "reading", "but", "then", "static", "front", "rear", "got", "shows", "showing":
			return false
		}
	}
	return true
}

// prepBefore tells whether "to", "at" or the like leads to the number.
func (m *message) prepBefore(i int) bool {
	for k := i - 1; k >= 0 && k >= i-3; k-- {
		switch m.text(k) {
		case "to", "at", "a", "en", "down to", "up to", "@", ":", "=", "dejando", "hasta", "al", "on", "for", "back to":
			return true
		case "about", "around", "like", "right", "exactly", "it", "roughly", "como", "a nice", "nice", "an", "even", "the", "unos":
			continue
		}
		return false
	}
	return false
}

// targeted tells whether a number is said to be a target or a limit.
func (m *message) targeted(i int) bool {
	if m.hasAsk(AskCorrect) {
		return false
	}
	seg := m.items[i].seg
	return m.left(i, 4, false, func(k int) bool {
		if m.items[k].seg != seg {
			return false
		}
		switch m.text(k) {
		case "over", "under", "above", "below", "at least", "more than", "less than", "than":
			switch m.text(k - 1) {
			case "anything", "keep", "stay", "be", "get", "nothing", "never", "code", "limit", "if", "goes", "go", "stays", "kept", "not", "it", "needs", "is anything", "less", "more":
				return m.text(k-1) != "be" && m.text(k-1) != "it" || m.text(k-2) == "should" || m.text(k-2) == "must" || m.text(k-2) == "needs" || m.text(k-2) == "to" || m.text(k-2) == "keep" || m.text(k-2) == "want" || m.text(k-2) == "get"
			}
			return false
		case "label", "sticker", "tag", "placa", "etiqueta", "plate", "nameplate":
			return !m.pointBetween(k, i)
		}
		return m.is(k, cTarget, "")
	}) >= 0
}

// settingRole tells whether a number is what a regulator or a thermostat is set to.
func (m *message) settingRole(i int) (role, string, bool) {
	it := &m.items[i]
	topic, at := m.topicBefore(i)
	if v := m.verbLeft(i, 9, "set", "replaced", "installed", "rebuilt"); v != nil && m.numsBetween(v.at, i) == 0 && m.clear(v.at, i) {
		if v.what == "set" {
			obj := v.object
			if at > v.at || obj == "" {
				obj = topic
			}
			if obj == "" {
				obj = m.carried(it.sent)
			}
			adjacent := v.at == i-1 || m.is(i-1, cItem, "prv") && i-1 <= v.at+2 || m.prepBefore(i) || m.text(v.at+1) == "it" && v.at+2 == i
			if adjacent && !(m.verbTurn(v.at) && !m.prepBefore(i)) {
				if obj == "heater" && it.value >= 85 && it.value <= 190 && !pressureUnit(it.unit) {
					return roleTemp, "heater set to", true
				}
				if v.planned || v.negated {
					return roleIgnored, "planned setting", true
				}
				if obj == "expansion_tank" {
					if v.state {
						return roleCharge, "tank set at", true
					}
					v.what, v.object = "charged", obj
					it.owner = v.at + 1
					return roleTo, "tank set to", true
				}
				if obj == "heater" {
					obj = "prv"
				}
				if v.state {
					return roleSetting, "is set to", true
				}
				it.owner = v.at + 1
				return roleTo, "set to", true
			}
		} else if v.done && m.prepBefore(i) && (v.object == "prv" || v.object == "expansion_tank") && m.text(i-1) != "at" && m.text(i-1) != ":" {
			it.owner = v.at + 1
			return roleTo, v.what + " to", true
		}
	}
	if at >= 0 && topic == "heater" && it.unit == "" && it.value >= 90 && it.value <= 180 && m.items[at].seg == it.seg {
		if m.left(i, 4, false, func(k int) bool {
			switch m.text(k) {
			case "sp", "thermostat", "temp", "stat", "tstat", "setpoint", "set point", "dialed", "dial", "set", "termostato", "temperatura", "turned":
				return true
			}
			return false
		}) >= 0 {
			return roleTemp, "thermostat", true
		}
	}
	if it.unit == "" && it.value >= 90 && it.value <= 180 && m.right(i, 4, false, func(k int) bool {
		t := m.text(k)
		return t == "thermostat" || t == "termostato" || t == "tstat" || t == "setpoint" || t == "set point"
	}) >= 0 {
		return roleTemp, "thermostat", true
	}
	if m.left(i, 3, false, func(k int) bool {
		t := m.text(k)
		return t == "setpoint" || t == "set point" || t == "thermostat" || t == "termostato"
	}) >= 0 && it.unit == "" && it.value >= 90 && it.value <= 180 {
		return roleTemp, "thermostat", true
	}
	// "prv setting 60", "reguladora a 60"
	if topic == "prv" && at >= 0 && m.items[at].seg == it.seg && i-at <= 4 {
		if m.left(i, 3, false, func(k int) bool {
			t := m.text(k)
			return t == "setting" || t == "set pressure" || t == "setpoint" || t == "set point" || t == "dial" || t == "calibrada" || t == "ajustada" || t == "calibrado" || t == "sp"
		}) >= 0 || at == i-2 && m.text(i-1) == "a" {
			return roleSetting, "setting", true
		}
	}
	return 0, "", false
}

// verbTurn are verbs of setting that need "to" before the number they lead to.
func (m *message) verbTurn(k int) bool {
	if t := m.text(k); strings.HasSuffix(t, " en") || strings.HasSuffix(t, " a") || strings.HasSuffix(t, " at") || strings.HasSuffix(t, " to") {
		return false
	}
	switch m.text(k) {
	case "set", "reset", "re set", "set it", "left it set", "calibre", "deje", "la deje en", "lo deje en", "adj", "dejamos", "ajuste":
		return false
	}
	return true
}

// clear tells whether no other clause or point lies between a verb and a number.
func (m *message) clear(v, i int) bool {
	for k := v + 1; k < i; k++ {
		t := m.text(k)
		if m.items[k].mark && (t == "," || t == "/" || t == "-" || t == "(") {
			// "installed a PRV, set to 60" has its own verb; "adjusted, 60" has none
			return false
		}
		if m.items[k].point != "" && !m.items[k].weak && !m.is(k, cItem, "") {
			return false
		}
		switch t {
		case "and", "then", "now", "but", "reads", "shows", "got", "reading", "y", "so", "because", "porque", "estaban", "estaba", "was", "it was", "were", "since", "for the":
			return false
		}
	}
	return true
}

// dropOrTarget tells a difference, a limit or a value from memory from a reading.
func (m *message) dropOrTarget(i int) (string, bool) {
	it := &m.items[i]
	prev := m.text(i - 1)
	// differences
	switch m.text(i + 1) {
	case "drop", "loss", "higher", "lower", "less", "difference", "apart", "short", "swing", "jump", "increase", "decrease", "rise", "menos", "increments", "low", "high", "off", "shy", "difference between", "point drop":
		if t := m.text(i + 1); (t == "low" || t == "high" || t == "off" || t == "short") && !pressureUnit(it.unit) {
			break
		}
		if m.text(i+1) == "off" && m.text(i+2) == "the" {
			break
		}
		return "a difference", true
	}
	if prev == "by" || (prev == "another" || prev == "extra") {
		return "a difference", true
	}
	if k := m.left(i, 3, false, func(k int) bool {
		switch m.text(k) {
		case "lose", "loses", "lost", "losing", "drops", "drop", "dropped", "falls", "fell", "dips", "droops", "sags", "pierde", "perdio", "cae", "baja", "gains", "gained", "gain", "drops it":
			return true
		}
		return false
	}); k >= 0 && m.items[k].seg == it.seg {
		if !(prev == "to" || prev == "at" || prev == "from" || prev == "a" || prev == "down to" || prev == "into" || prev == "hasta") {
			return "a difference", true
		}
	}
	if m.targeted(i) {
		return "a target or a limit", true
	}
	if r := m.right(i, 3, false, func(k int) bool { return m.is(k, cTarget, "") }); r >= 0 && m.items[r].seg == it.seg {
		switch m.text(r) {
		case "max allowed", "rating", "limit", "target", "range", "rated", "de fabrica", "factory", "code max", "maximo permitido", "factory setting", "from the factory", "spec":
			return "a limit", true
		}
	}
	if m.remembered(i) {
		return "from memory", true
	}
	return "", false
}

// remembered tells whether a number is quoted from an earlier time.
func (m *message) remembered(i int) bool {
	// "customer says it's 60"
	if k := m.left(i, 4, false, func(k int) bool {
		switch m.text(k) {
		case "says", "said", "thinks", "claims", "swears", "dice", "dijo", "cree", "told me", "tells me", "figures", "insists":
			return true
		}
		return false
	}); k >= 0 && (person(m.text(k-1)) || person(m.text(k-2))) && m.items[k].seg == m.items[i].seg && !m.points(i) {
		return true
	}
	seg := m.items[i].seg
	if m.sents[m.items[i].sent].remembers && m.left(i, 9, true, func(k int) bool { return m.is(k, cNow, "") }) < 0 {
		return true
	}
	if m.text(i+1) == "then" && m.pastVerb(i) {
		return true
	}
	if k := m.right(i, 4, true, func(k int) bool { return m.items[k].num != nil && m.items[k].unit == "year" && m.text(k+1) == "ago" }); k >= 0 && m.pastVerb(i) {
		return true
	}
	if k := m.left(i, 7, true, func(k int) bool { return m.is(k, cMemory, "") }); k >= 0 {
		for j := k + 1; j < i; j++ {
			if m.is(j, cNow, "") || m.items[j].mark && (m.text(j) == "." || m.text(j) == ";") || m.text(j) == "but" || m.text(j) == "pero" {
				return false
			}
			if m.items[j].seg != m.items[k].seg && !timely(m.text(k)) {
				// "the customer says it was fine, 66 now"
				return m.pastVerb(i)
			}
		}
		if timely(m.text(k)) && m.items[k].seg != seg {
			return m.pastVerb(i)
		}
		if timely(m.text(k)) && m.is(k-1, cDid, "") {
			return false // "flushed last year"
		}
		return true
	}
	if k := m.right(i, 5, false, func(k int) bool { return m.is(k, cMemory, "") }); k >= 0 && m.items[k].seg == seg {
		if m.pastVerb(i) || m.text(k) == "back in" {
			return true
		}
		if timely(m.text(k)) && !m.is(k-1, cDid, "") && k-i <= 2 {
			return true
		}
	}
	return false
}

// pastVerb tells whether the number is told as past: "was 70".
func (m *message) pastVerb(i int) bool {
	return m.left(i, 3, false, func(k int) bool {
		switch m.text(k) {
		case "was", "were", "had", "it was", "era", "eran", "tenia", "estaba", "traia", "marcaba", "used to", "been", "had been", "marco", "got":
			return true
		}
		return false
	}) >= 0
}

func timely(s string) bool {
	switch s {
	case "last time", "last visit", "last year", "last month", "last summer", "last spring", "last winter", "last fall", "last week", "years ago", "yrs ago", "year ago", "months ago", "a while back", "a while ago", "previously", "el ano pasado", "la vez pasada", "la ultima vez", "hace un ano", "hace anos", "back in", "el mes pasado", "hace tiempo", "historically", "on file":
		return true
	}
	return false
}

// chargedIn tells whether air was put into a tank in sentence s.
func (m *message) chargedIn(s int) bool {
	for _, v := range m.verbs {
		if v.what == "charged" && v.done && m.items[v.at].sent == s {
			return true
		}
	}
	return false
}

// putsIn tells whether "put" at i goes with "in" or "on": "put a tank in".
func (m *message) putsIn(i int) bool {
	item := false
	for k := i + 1; k < len(m.items) && k <= i+6 && !m.items[k].mark; k++ {
		if m.is(k, cItem, "") {
			item = true
			continue
		}
		switch m.text(k) {
		case "in", "on", "back in", "in there", "in for":
			if item {
				return true
			}
		}
		if m.items[k].num != nil && m.items[k].unit != "gal" {
			return false
		}
	}
	return false
}

// shutsWater tells whether the word at i closes the house's water: "el agua la
// cerré yo en la calle".
func (m *message) shutsWater(i int) bool {
	switch m.text(i) {
	case "cerre", "cerramos", "shut", "closed", "killed", "corte", "cerro":
	default:
		return false
	}
	if m.is(i, cDid, "") {
		return false
	}
	seg := m.items[i].seg
	for k := max(0, i-6); k < min(len(m.items), i+6); k++ {
		if m.items[k].seg != seg || k == i {
			continue
		}
		switch m.text(k) {
		case "water", "agua", "main", "curb", "curb stop", "llave principal", "principal", "at the main":
			if k < i && (be(m.text(k+1)) || m.is(k-1, cNeg, "")) && m.text(i) != "cerre" {
				continue
			}
			return true
		case "everything", "all", "every", "todo", "todas", "fixtures", "taps", "faucets":
			return false
		}
	}
	return false
}

// pointIn tells whether a test point stands in a clause after item i.
func (m *message) pointIn(seg, i int) bool {
	for k := i + 1; k < len(m.items) && m.items[k].seg == seg && m.items[k].sent == m.items[i].sent; k++ {
		if m.items[k].point != "" {
			return true
		}
	}
	return false
}

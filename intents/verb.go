package intents

import "strings"

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
	renews  bool // puts in a part after its like was taken out
}

var deedOpener = opener{
	classes: setOf(cDid, cBase, cMove, cSym, cPart),
	hints: []string{
		"puts", "inplace", "newone", "wentin", "putsair", "places", "given", "givesflush", "kits", "inside",
		"innerdeed", "clears", "jobhead", "moveword", "job", "shift", "movesby",
	},
	words: []string{"in", "on", "in place", "up", "one", "i gave", "we gave"},
}

// verbs finds the words of work and says whether the work was done.
func (m *message) findVerbs() {
	m.falls()
	m.unswallow()
	for i := range m.items {
		it := &m.items[i]
		if !m.begins(i, keyDeed|keyAirs|keySets|keyPutNew|keyShutsOff) && !m.workedWord(i) && (it.num == nil || it.unit != "turn") && m.shut(firstOneGate) {
			continue
		}
		if m.airs(i) {
			v := verb{at: i, what: "charged", objAt: -1}
			m.judge(&v)
			m.verbs = append(m.verbs, v)
			continue
		}
		if v, ok := m.exchanged(i); ok {
			m.verbs = append(m.verbs, v)
			continue
		}
		if m.is(i, cHint, "puts") && m.putsIn(i) {
			v := verb{at: i, what: "installed", objAt: -1}
			m.judge(&v)
			if m.is(i, cHint, "putlater") {
				v.done, v.planned = false, true
			}
			m.verbs = append(m.verbs, v)
			continue
		}
		if it.mark {
			continue
		}
		if k := m.changeout(i); k > 0 {
			m.verbs = append(m.verbs, verb{at: i, what: "replaced", done: true, object: "heater", objAt: k})
			continue
		}
		if v, ok := m.deedAt(i); ok {
			m.verbs = append(m.verbs, v)
			continue
		}
		if it.num != nil && it.unit == "turn" {
			for k := max(0, i-8); k < min(len(m.items), i+12); k++ {
				if m.items[k].sent == it.sent && (k == i-2 && m.text(k) == "gave" && m.has(cItem, "prv") || m.is(k, cItem, "prv") || m.text(k) == "screw" || m.text(k) == "tornillo") {
					m.verbs = append(m.verbs, verb{at: i, what: "set", done: true, object: "prv", objAt: -1})
					break
				}
			}
			continue
		}
		if m.nameNew(i) {
			v := verb{at: i, what: "replaced", objAt: -1}
			m.judge(&v)
			m.verbs = append(m.verbs, v)
			continue
		}
		if w := m.shutsWater(i); w && !m.opensIt(i) {
			v := verb{at: i, what: "shut", objAt: -1}
			m.judge(&v)
			m.verbs = append(m.verbs, v)
			continue
		}
		for _, t := range it.tags {
			if t.class != cDid {
				continue
			}
			if strings.HasSuffix(it.text, "new one in") && (m.timeWordAt(i+1) || m.isNum(i+1) && unitDays[m.items[i+1].unit] > 0) {
				continue // "for a new one in 20 days"
			}
			if t.value == "replaced" && m.switchesPower(i) {
				continue
			}
			if t.value == "set" && m.booked(i) {
				continue // "prv swap set for june 24"
			}
			if t.value == "shut" && m.opensIt(i) {
				continue // "somebody closed the main so I opened it"
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
			if it.text == "chg" && m.chargeOfTank(i) {
				m.say(i, "precharge") // "ET 2g chg 60 ok"
				break
			}
			v := verb{at: i, what: t.value, objAt: -1}
			m.judge(&v)
			tank := len(m.verbs) > 0 && m.verbs[len(m.verbs)-1].object == "expansion_tank"
			if strings.HasPrefix(it.text, "ch") && v.what == "replaced" && m.chargesTank(&v, tank) {
				v.what = "charged" // "ET chgd 38 -> 62"
			}
			m.verbs = append(m.verbs, v)
		}
	}
}

// chargeOfTank tells whether "chg" at item i is short for the air of a tank, whose name, size
// or year stands before it: "ET 2g chg 60 ok". With "to" behind its number it is a deed.
func (m *message) chargeOfTank(i int) bool {
	if !m.isNum(i+1) || m.says(i+2, "->", "to") {
		return false
	}
	if m.is(i-1, cItem, "expansion_tank") || m.isMark(i-1, ",") && m.isNum(i-2) && m.items[i-2].unit == "gal" {
		return true
	}
	return m.isNum(i-1) && (m.items[i-1].unit == "gal" || len(m.items[i-1].num.digits) == 4)
}

// chargesTank tells whether "chgd", which may be changed, is charged: "ET chgd 38 -> 62". The
// deed before it may have been one on a tank.
func (m *message) chargesTank(v *verb, tankBefore bool) bool {
	if !m.isNum(v.at+1) || len(m.items[v.at+1].num.digits) >= 4 {
		return false
	}
	return v.object == "" && tankBefore || v.object == "expansion_tank" && (tankBefore || m.says(v.at+2, "->", "to"))
}

func (m *message) judge(v *verb) {
	s := &m.sents[m.items[v.at].sent]
	from := max(s.from, v.at-7)
	for k := v.at - 1; k >= from; k-- {
		if m.items[k].mark && m.says(k, ",", "(", "/", "-") || m.items[k].seg != m.items[v.at].seg {
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
		if m.text(k) == "no" && v.at-k <= 2 && spanishVerb(m.text(v.at)) && (k == v.at-1 || clitic(m.text(v.at-1))) {
			v.negated = true // "no le moví a la reguladora"
			break
		}
		if m.is(k, cNeg, "") && v.at-k <= 4 && !m.says(k, "no", "none", "cero", "zero", "free of", "nothing") {
			v.negated = true
			break
		}
		if m.is(k, cWill, "") && !m.wasWill(k) || m.is(k, cTarget, "") && strings.HasSuffix(m.text(k), " be") {
			v.planned = true
			break
		}
		if t := m.text(k); (t == "if" || t == "whether") && v.at-k <= 5 && m.says(k-1, "asked", "asking", "asks", "wondering") {
			v.planned = true
			break
		}
		if m.text(k) == "day" && m.says(k+1, "i", "we") {
			v.negated = true // "same as the day I put it in"
			break
		}
		if m.text(k) == "found" && m.is(v.at-1, cItem, "prv") && v.what == "set" {
			v.negated = true // "found the prv cranked all the way in"
			break
		}
		if m.text(k) == "when" && m.is(k-1, cUnknown, "") {
			v.negated = true // "nobody remembers when the tank was hung"
			break
		}
		if m.text(k) == "to be" && k == v.at-1 {
			v.planned = true // "the heater is to be replaced on Thursday"
			break
		}
		if t := m.text(k); t == "nobody" || t == "no one" || t == "noone" || t == "nadie" {
			v.negated = true
			break
		}
		if m.is(k, cHint, "meant") {
			v.planned = true
			break
		}
		if t := m.text(k); k == v.at-1 && (t == "gets" || t == "get" || t == "getting") {
			v.planned = true // "prv gets replaced Friday"
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
	if s.question && s.asking && !(s.tells && v.at < s.askAt-1) || m.weWill(v.at) {
		v.planned = true
	}
	if m.is(v.at, cBase, "") && v.what != "shut" && !m.toldDone(v.at) && (m.dayAhead(v.at) || m.laterIn(v.at)) {
		v.planned = true // "rebuild that prv Thursday"
	}
	if strings.HasPrefix(m.text(v.at), "a ") && m.left(v.at, 4, true, func(k int) bool { return m.says(k, "give", "giving", "get", "do") }) >= 0 {
		v.planned = true // "give the heater a flush next time"
	}
	if m.text(v.at+1) == ":" && (m.text(v.at+2) == "no" || m.text(v.at+2) == "n" || m.text(v.at+2) == "not") {
		v.negated = true
	}
	if n := m.nextNum(v.at); m.text(v.at+1) == "sometime" || m.text(v.at+1) == "originally" || n > 0 && n <= v.at+4 && m.text(n+1) == "s" {
		v.negated = true // "installed sometime in the 90s"
	}
	told := m.text(v.at-1) == "said" && m.text(v.at-2) != "i" && (m.is(v.at, cBase, "") || m.text(v.at) == "set it")
	if told || m.text(s.from) == "when" && m.says(s.from+1, "was", "did") {
		v.planned = true // "boss said set it to 60", "when was the tank put in at 50 Thrush Ln"
	}
	if m.byOthers(v.at) || m.whichWas(v.at) {
		v.negated = true
	}
	by := m.doneBy(v.at)
	v.negated = v.negated || by
	v.object, v.objAt = m.objectOf(v)
	v.negated = v.negated || m.deniedDeed(v)
	if v.what == "fixed" && v.object == "prv" && m.is(v.at, cHint, "screws") {
		v.what = "set" // "tightened the reg to 4 bar"
	}
	if m.keptSet(v) {
		v.negated, v.planned, v.state = false, false, true
		if o, at := m.topicBefore(v.at); o != "" {
			v.object, v.objAt = o, at
		} else if v.object == "" {
			v.object = m.carried(m.items[v.at].sent)
		}
	}
	// "PRV set to 60": nobody set it
	if v.what == "set" && (m.is(v.at, cHint, "stands") || m.is(v.at, cHint, "isset") && m.is(v.at-1, cHint, "present")) && !v.negated && !v.planned {
		k := v.at - 1
		for k >= s.from && m.beforeSet(k) {
			k--
		}
		prior := k
		if prior >= s.from && (m.is(prior, cItem, "") || m.is(prior, cPart, "")) {
			v.state = !m.verbBefore(prior, v.at) && !m.changeAfter(v.at)
			v.object, v.objAt = m.topicBefore(v.at)
		} else if prior >= s.from && m.items[prior].mark && prior == v.at-1 || v.at == s.from {
			// ", set at 60": a fact of the line's equipment, unless the line tells work
			if _, at := m.topicBefore(v.at); at >= 0 && !m.objectRight(v.at) && !m.verbBefore(at, v.at) && !m.adjustedSince(at, v.at) {
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
		} else if t := m.text(v.at - 1); be(t) || strings.HasPrefix(t, "it ") {
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
	if v.what == "charged" && v.object == "expansion_tank" && !v.negated && !v.planned && m.isCharged(v.at) {
		v.what, v.state = "set", true // "tank is charged to 55 already"
	}
	if by && v.what == "set" && v.object == "prv" {
		v.state, v.planned, v.negated = true, false, false // "prv dialed at 70 by the last guy"
	}
	if v.what == "set" && m.hasItSet(v.at) {
		v.state, v.planned, v.negated = true, false, false // "somebody's got it set at 75"
		if v.object == "" {
			v.object, v.objAt = m.topicBefore(v.at)
		}
	}
	if v.what == "charged" && v.object == "" && m.text(v.at) == "charged" && m.text(v.at+1) == "at" && m.isMark(v.at-1, ",") {
		if topic, at := m.topicBefore(v.at); topic == "expansion_tank" && m.factualRun(at, v.at) && !m.verbBefore(at, v.at) && !m.anyDone(v.at) {
			v.what, v.state, v.object, v.objAt = "set", true, topic, at // "Expansion tank 8 litres, charged at 4.0 bar, good"
		}
	}
	if v.state && (m.endsDeed(v) || m.text(v.at-1) == ticked || m.text(m.sents[m.items[v.at].sent].from) == ticked) {
		v.state = false // "new PRV in, set 58"
	}
	if t := m.text(v.at); oneOf(t, "dropped", "moved", "dropped it") && v.object != "prv" && !(t == "dropped it" && m.has(cItem, "prv")) {
		v.negated = true // the pressure dropped, nobody dropped it
	}
	v.done = !v.negated && !v.planned && !v.state
}

// beforeSet tells whether item k may stand between a part and what it is set to: "prv is
// still at factory pressure, set 55".
func (m *message) beforeSet(k int) bool {
	return be(m.text(k)) || wordsBeforeSet[m.text(k)] || m.is(k, cAge, "") || m.is(k, cUnknown, "") || m.is(k, cWhose, "label")
}

var wordsBeforeSet = phrases(`pressure | screw | still | factory | says | sticker says | label says | sticker | dice | : | temp
	| was | looks | to | seems | appears | currently`)

// isCharged tells whether "charged" at item i says how a tank is, not what was done to it:
// "tank is charged to 55 already", "tanque precargado".
func (m *message) isCharged(i int) bool {
	if m.says(i, "charged", "precharged") {
		return m.says(i-1, "is", "its")
	}
	return strings.HasPrefix(m.text(i), "precargad") && (m.is(i-1, cItem, "") || m.isNum(i-1))
}

// hasItSet tells whether "set" at item i says how somebody keeps a part: "somebody's got it
// set at 75".
func (m *message) hasItSet(i int) bool {
	if !m.says(i-1, "it", "got") {
		return false
	}
	return m.left(i, 4, true, func(k int) bool { return m.is(k, cHint, "someone") }) >= 0 &&
		m.left(i, 3, true, func(k int) bool { return m.says(k, "got", "has") }) >= 0
}

// keptSet tells whether somebody else is only said to have it set: "somebody's got it set
// at 75", "they have their prv set to 80".
func (m *message) keptSet(v *verb) bool {
	if v.what != "set" || !m.is(v.at, cHint, "stands") {
		return false
	}
	k := v.at - 1
	for k > 0 && k >= v.at-3 && (m.is(k, cItem, "") || m.is(k, cDeterminer, "") || m.text(k) == "it") {
		k--
	}
	switch m.text(k) {
	case "have", "has", "had", "got", "keeps", "keep", "kept", "has had", "have had":
	default:
		return false
	}
	switch m.text(k - 1) {
	case "they", "theyve", "somebody", "someone", "he", "she", "hes", "shes", "who", "whoever":
		return true
	}
	return m.is(k-1, cWhose, "other") || person(m.text(k-1)) && m.text(k-1) != "im"
}

// whichWas tells whether the deed at i only says which part is meant, one of an
// earlier visit: "el tanque que puse la semana pasada sigue en 60".
func (m *message) whichWas(i int) bool {
	return m.text(i-1) == "que" && m.is(i-2, cItem, "") && m.right(i, 4, false, func(k int) bool {
		return m.text(k) == "pasada" || m.text(k) == "pasado" || m.text(k) == "ayer" || m.text(k) == "hace" || m.is(k, cMemory, "")
	}) >= 0
}

func (m *message) fuelSize(k int) bool {
	return m.is(k, cFuel, "") || k >= 0 && m.items[k].num != nil && (m.items[k].unit == "gal" || m.items[k].unit == "litre")
}

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
	s := &m.sents[m.items[at].sent]
	for k := at; k >= s.from && k >= at-8; k-- {
		if m.is(k, cDid, "") && k != upTo && !m.stateAt(k) {
			return true
		}
		if m.text(k) == "i" || m.text(k) == "we" || m.text(k) == "ive" {
			return true
		}
	}
	return false
}

// stateAt tells whether the word at item k, told before, is a state and no deed: "heater set
// to 120, prv set to 60".
func (m *message) stateAt(k int) bool {
	for j := range m.verbs {
		if m.verbs[j].at == k {
			return m.verbs[j].state
		}
	}
	return false
}

// adjustedSince tells whether a word of setting stands between an item and a "set":
// "PRV adjusted, set 60".
func (m *message) adjustedSince(item, at int) bool {
	for k := item + 1; k < at; k++ {
		if m.is(k, cDid, "set") && pastForm(m.text(k)) {
			return true
		}
	}
	return false
}

func (m *message) anyDone(before int) bool {
	for _, v := range m.verbs {
		if v.at < before && v.done && oneOf(v.what, "replaced", "installed", "rebuilt", "set", "charged") {
			return true
		}
	}
	return false
}

// changeAfter tells whether "set" goes on with a change: "set down from 85 to 60".
func (m *message) changeAfter(at int) bool {
	for k := at + 1; k < len(m.items) && k <= at+3; k++ {
		switch m.text(k) {
		case "from":
			return m.isNum(k+1) && !year(m.items[k+1].value) // "set at 55 from what the dial says", "set to 60 from 2016"
		case "down", "up", "back", "down to", "up to":
			return true
		}
	}
	return m.right(at, 8, true, func(k int) bool { return m.text(k) == "by" && (m.text(k+1) == "me" || m.text(k+1) == "us") }) >= 0
}

// doneVerb finds the nearest verb left of item i in its sentence, of the kinds given.
func (m *message) verbLeft(i, n int, kinds ...string) *verb {
	if len(m.verbs) == 0 {
		return nil
	}
	s := &m.sents[m.items[i].sent]
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

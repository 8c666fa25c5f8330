package intents

import "strings"

// Lists of the lexicon that these rules know.
var (
	listMovedIt       = listOf("moved it")
	listJustHad       = listOf("just had")
	listMovedWhichWay = listOf("moved which way")
	listPutTogether   = listOf("put together")
	listThirdPersons  = listOf("third persons")
	listUtility       = listOf("utility")
	listCompanies     = listOf("companies")
)

// What the rules of deeds begin at.
var (
	didOpener   = opener{classes: setOf(cDid)}
	baseOpener  = opener{classes: setOf(cBase)}
	putsOpener  = opener{hints: []string{"puts", "putsair", "places", "given", "givesflush"}, words: []string{"i gave", "we gave", "gave it"}}
	goesInWords = opener{hints: []string{"inplace", "wentin", "threads"}, lists: []list{listParticleIn}}
	newOpener   = opener{classes: setOf(cPart), hints: []string{"newone", "kits"}}
	moveOpener  = opener{classes: setOf(cMove), hints: []string{"moveword", "shift", "movesby"}}
	leakOpener  = opener{classes: setOf(cSym)}
	jobOpener   = opener{hints: []string{"job", "jobhead", "jobnoun"}}
	innerOpener = opener{hints: []string{"inside", "innerdeed", "clears"}}
)

// keysDeed are the keys of all rules of deeds.
const keysDeed = keyDid | keyBase | keyPuts | keyGoesIn | keyNew | keyMoves | keyLeaks | keyJob | keyInner | keyAirs | keySets |
	keyPutNew | keyShutsOff | keyWorked | keyFirstOne

// deedRules read what was done at an item, in turn: wordings of several words first, last a word of
// the lexicon that tells work by itself. Each is asked only where one of its keys opens it, adds the
// verb that it reads, and tells whether it did.
var deedRules = [...]struct {
	opens key
	reads func(m *message, i int) bool
}{
	{keyAirs | keyPuts, (*message).airsTank},
	{keyDid | keyGoesIn | keyPuts | keyNew, (*message).exchanged},
	{keyPuts, (*message).putsPart},
	{keySets, (*message).changesOut},
	{keyFirstOne, (*message).firstOne},
	{keyJob | keyBase, (*message).jobAsTime},
	{keyMoves | keyDid, (*message).movesBy},
	{keyNew | keyPuts | keyWorked, (*message).placesFirst},
	{keyPuts, (*message).putsDrain},
	{keyPuts, (*message).givesAir},
	{keyPuts, (*message).givesPart},
	{keyPuts, (*message).givesFlush},
	{keyBase, (*message).nounDone},
	{keyLeaks, (*message).stopsLeak},
	{keyNew, (*message).freshInside},
	{keyInner | keyDid, (*message).rebuilds},
	{keyInner, (*message).clearsHeater},
	{keyBase, (*message).baseDone},
	{keyJob, (*message).jobLine},
	{keyMoves, (*message).movesSetting},
	{keyGoesIn, (*message).outAndIn},
	{keyGoesIn | keyNew, (*message).newPartIn},
	{keyGoesIn, (*message).wentIn},
	{keyPutNew, (*message).nameNew},
	{keyShutsOff, (*message).shutsWater},
	{keyDid, (*message).didAt},
}

var deedIndex = byKey(len(deedRules), func(k int) key { return deedRules[k].opens })

// deedKeys returns the keys of the rules that may read a deed at item i.
func (m *message) deedKeys(i int) key {
	k := (m.items[i].keys | m.allKeys) & keysDeed
	if m.workedWord(i) {
		k |= keyWorked
	}
	return k
}

// newPartIn reads a new part that is in: "new PRV in", "new prv, set to 58".
func (m *message) newPartIn(i int) bool {
	k := m.newPart(i)
	if k < 0 {
		return false
	}
	o := m.partAt(k)
	what := "replaced"
	if m.right(k, 9, true, func(j int) bool {
		return m.text(j) == "none before" || m.text(j) == "had none" || m.text(j) == "there was none" || m.text(j) == "was none"
	}) >= 0 || (o == "prv" || o == "expansion_tank") && m.noneYet(k) || o == "expansion_tank" && !m.oldTank() && !m.says(i-1, "also", "too") {
		what = "installed"
	}
	m.verbs = append(m.verbs, verb{at: i, what: what, done: true, object: o, objAt: k})
	return true
}

// oldTank tells whether the message speaks of a tank that was there before: of an old one, one
// that failed, or of changing it. A house may as well have had none.
func (m *message) oldTank() bool {
	old := func(k int) bool { return m.is(k, cPart, "old") && !m.is(k, cHint, "original") } // "the prv is original"
	return m.failedTank() || m.kinds.has(cPart) && m.anyItem(-1, len(m.items), old) || m.has(cDid, "replaced") || m.has(cBase, "replaced") || m.has(cHint, "jobnoun")
}

// baseDone reads a verb in its base form at item i with words that say it was done.
func (m *message) baseDone(i int) bool {
	what, ok := m.baseDeed(i)
	if ok {
		m.addVerb(i, what)
	}
	return ok
}

// baseDeed reads "had to change the prv", "ended up replacing it", "did a heater flush".
func (m *message) baseDeed(i int) (string, bool) {
	what, ok := m.val(i, cBase)
	if !ok {
		return "", false
	}
	if m.underJob(i) && !m.willNear(i) && !m.is(i-1, cNeg, "") {
		return what, true // "Did: adjust PRV"
	}
	if (m.text(i+1) == ticked || m.text(i+2) == ticked) && (m.is(i-1, cItem, "") || m.is(i+1, cItem, "")) {
		return what, true // "heater flush ✅"
	}
	if m.is(i+1, cHint, "finished") && (m.is(i-1, cItem, "") || what == "fixed" && m.is(i-1, cSym, "leak")) &&
		(len(m.asks) == 0 || m.anyReadingLike()) || m.headsReport(i) || m.is(i+1, cItem, "") && m.is(i+2, cHint, "finished") {
		return what, true // "prv swap done", "cambio de reguladora hecho"
	}
	for k := i - 1; k >= m.sents[m.items[i].sent].from && k >= i-4; k-- {
		if m.is(k, cHad, "") && m.is(k-1, cNeg, "") {
			return "", false // "no pude drenar el boiler"
		}
		if m.is(k, cHad, "") {
			if m.is(k, cAfter, "") && m.is(i, cHint, "turned") {
				return "", false // "shower, after adjustment: 42 m"
			}
			// only what is done stands between: "did a heater flush"
			return what, k == i-1 || m.is(k, cHint, "didjob")
		}
		if m.items[k].mark || m.items[k].num != nil || m.is(k, cNeg, "") {
			return "", false
		}
	}
	return "", false
}

// spanAhead tells whether a time to come follows the noun of a deed at i: "prv swap, two days from
// now", but not "prv swap - 3 weeks ago".
func (m *message) spanAhead(i int) bool {
	k := m.right(i, 6, false, m.isNum)
	return k > 0 && unitDays(m.items[k].unit) > 0 && m.says(k+1, "from", "out")
}

// headsReport tells whether the noun of a deed at i is the head of a report of it:
// "heater changeout at 210 Wetherby Ct, 40 gal electric went in". A job only named or
// planned reports nothing.
func (m *message) headsReport(i int) bool {
	k := i - 1
	if !m.is(k, cItem, "") || !m.is(i, cHint, "jobnoun") || m.planish(m.items[i].sent) || len(m.asks) > 0 || len(m.moments) > 0 || m.spanAhead(i) ||
		m.spanUntil(i) || m.sents[m.items[i].sent].question {
		return false
	}
	for k--; k >= m.sents[m.items[i].sent].from && !m.isMark(k, "\n"); k-- {
		if !m.items[k].mark && !m.items[k].site && !m.factual(k) && !m.is(k, cDeterminer, "") && m.text(k) != "to" && !m.is(k, cBefore, "") {
			return false
		}
	}
	if !m.closes(i) && m.text(i+1) != "at" && m.text(i+1) != "today" {
		return false
	}
	for k = i + 1; k < len(m.items); k++ {
		if it := &m.items[k]; it.num != nil && it.role == roleNone && it.unit != "other" || m.is(k, cHint, "wentin") || m.text(k) == "today" {
			return true
		}
	}
	return false
}

// spanUntil tells whether what follows the noun of a deed at i is how long it is until then:
// "PRV swap - 3 wks".
func (m *message) spanUntil(i int) bool {
	for k := i + 1; k < len(m.items) && k <= i+4; k++ {
		switch it := &m.items[k]; {
		case it.num != nil:
			return oneOf(it.unit, "day", "week", "month") && m.stopAt(k+1)
		case it.mark && it.text == "." || !it.mark && !m.says(k, "about", "in", "like", "maybe"):
			return false
		}
	}
	return false
}

// movesSetting reads a change of a setting told by a plain verb of moving.
func (m *message) movesSetting(i int) bool {
	if !m.moves(i) {
		return false
	}
	m.addVerb(i, "set")
	return true
}

var movesGate = onlyWith(cHint, "moveword")

// moves tells whether a plain verb changes a setting: "brought the prv from 80 down
// to 60", "backed the reg off", "took it down to 58".
func (m *message) moves(i int) bool {
	if m.shut(movesGate) && !m.kinds.has(cMove) {
		return false
	}
	had := m.is(i, cHint, "moveword") && (m.is(i-1, cHad, "") || m.is(i-2, cHad, ""))
	if !m.is(i, cMove, "") && !had {
		return false
	}
	obj, way := m.movedThing(i)
	if obj < 0 {
		return false
	}
	if had && m.closes(obj) && (m.is(obj, cItem, "prv") || m.is(obj, cHint, "turned") && m.has(cItem, "prv")) {
		return true // "all I did was turn the reg", "… turn the screw"
	}
	if way && m.is(obj, cItem, "prv") && (m.closes(obj) || m.movedSoFar(obj+1)) {
		return true // "walked down the prv to 60"
	}
	for k := obj + 1; k <= obj+3 && k < len(m.items) && !m.items[k].mark; k++ {
		switch {
		case m.inList(k, listMovedWhichWay):
			if t := m.text(k + 1); t == "the" || t == "my" || t == "a" {
				return false // "took the prv off the shelf"
			}
			if m.text(k) == "off" && m.is(obj, cItem, "") && m.is(i, cHint, "takesout") && !m.is(k+1, cHint, "bit") && !m.isNum(k+1) {
				return false // "took the bad reg off"
			}
			if m.text(k) == "back" && m.inList(k+1, listPutTogether) {
				return false // "screwed the prv back together"
			}
			return m.text(k+1) != "and" && !m.is(k+1, cItem, "")
		case m.says(k, "in", "out"):
			// "screwed the regulator in a little", "ran the prv screw in"
			return m.movedSoFar(k+1) || m.is(obj, cHint, "turned") && m.is(obj-1, cItem, "prv")
		case m.says(k, "from", "to", "de", "a", "->"):
			return m.isNum(k+1) || m.isNum(k+2)
		case k == obj+1 && m.is(k, cHint, "bit") && m.is(obj, cItem, "prv"):
			return m.closes(k) || m.inList(k+1, listMovedWhichWay) // "eased the prv a hair"
		}
		if m.items[k].num != nil {
			return m.isNum(k+2) && (m.text(k+1) == "to" || m.text(k+1) == "->" || m.text(k+1) == "down to" || m.text(k+1) == "up to")
		}
	}
	return false
}

// movedThing returns what the verb of moving at item i moves, -1 for nothing that has a setting, and
// whether the way it went stands before it.
func (m *message) movedThing(i int) (obj int, way bool) {
	obj = -1
	if way = strings.HasPrefix(m.text(i), "le "); m.says(i-1, "la", "lo", "le") && m.carriedTo(i) == "prv" {
		obj = i // "la reguladora estaba en 85, la abrí a 60"
	}
	for k := i + 1; k <= i+4 && k < len(m.items) && !m.items[k].mark; k++ {
		if v, ok := m.val(k, cItem); ok {
			if c := m.itemCode(k, v); c != "prv" && c != "expansion_tank" {
				return -1, false
			}
			if m.is(k+1, cHint, "turned") && !m.is(k+1, cHint, "inside") {
				k++ // "ran the prv screw in"
			}
			return k, way
		}
		if m.inList(k, listMovedWhichWay) || m.is(k, cHint, "bit") {
			way = way || k == i+1
		}
		if m.inList(k, listMovedIt) {
			if c := m.carriedTo(i); m.text(k) != "the" && (c == "prv" || c == "expansion_tank" || c == "" && m.itemIn(m.items[i].sent) == "prv") {
				obj = k
			}
		}
		if m.is(k, cHint, "turned") {
			obj = k
		}
		if obj >= 0 && m.text(k+1) != "pressure" && m.text(k+1) != "setting" {
			break
		}
	}
	return obj, way
}

// movedSoFar tells whether item k begins how far a setting was moved: "a little", "2 turns", "until …".
func (m *message) movedSoFar(k int) bool {
	return m.is(k, cHint, "bit") || m.turnsAt(k) || m.says(k, "til", "till", "until") || m.says(k, "to", "down to", "up to") && m.isNum(k+1)
}

// endsDeed tells whether "set" at v only ends a deed of the sentence: "prv has been
// replaced, set at 60". A year between the two tells of an earlier one.
func (m *message) endsDeed(v *verb) bool {
	n := len(m.verbs)
	if n == 0 || v.what != "set" {
		return false
	}
	d := &m.verbs[n-1]
	if !d.done || !oneOf(d.what, "replaced", "installed", "rebuilt") {
		return false
	}
	ofIt := strings.HasPrefix(m.text(v.at-1), "it") && m.items[d.at].sent == m.items[v.at].sent-1
	if d.at < m.sents[m.items[v.at].sent].from && !ofIt {
		return false // but "… this morning. It is set to 55"
	}
	if v.object != "" && d.object != "" && v.object != d.object {
		return false
	}
	for k := d.at + 1; k < v.at; k++ {
		if n := m.items[k].num; n != nil && (n.apos || len(n.digits) == 4 && year(n.value)) || m.text(k) == "ago" ||
			m.is(k, cItem, "") && k != d.objAt {
			return false
		}
	}
	return true
}

// heaterAlone tells whether a fuel at item k stands for the heater itself: no other
// noun follows, and a size or "tankless" says so.
func (m *message) heaterAlone(k int) bool {
	if n := k + 1; n < len(m.items) && !m.items[n].mark && (m.is(n, cItem, "") || m.items[n].num == nil && m.unknownNoun(n)) {
		return false
	}
	return m.is(k, cFuel, "tankless") || m.is(k, cFuel, "heat_pump") || m.isNum(k-1) && m.items[k-1].unit == "gal"
}

var jobLineGate = onlyWith(cHint, "jobhead")

// jobLine reads what a line headed as the job tells without a verb: "trabajo: reguladora
// nueva a 60", "did: prv down to 60".
func (m *message) jobLine(i int) bool {
	if m.shut(jobLineGate) {
		return false
	}
	s := &m.sents[m.items[i].sent]
	if !m.is(i, cHint, "jobhead") || m.text(i+1) != ":" || i != s.from {
		return false
	}
	item := -1
	for k := i + 2; k < s.to; k++ {
		switch {
		case m.is(k, cDid, "") || m.is(k, cBase, "") || m.is(k, cNeg, "") || m.is(k, cWill, ""):
			return false // it has a verb of its own
		case item < 0 && m.is(k, cItem, "") && k <= i+5:
			item = k
		}
	}
	if item < 0 {
		return false
	}
	o, _ := m.val(item, cItem)
	v := verb{at: i, done: true, object: m.itemCode(item, o), objAt: item}
	switch {
	case m.is(item-1, cPart, "new") || m.is(item+1, cPart, "new"):
		v.what = "replaced"
	case v.object == "prv" && m.right(item, 4, false, func(k int) bool { return m.items[k].num != nil }) >= 0:
		v.what = "set"
	default:
		return false
	}
	m.verbs = append(m.verbs, v)
	return true
}

// switchesPower tells whether "switched" at item i turns something on or off: "after I
// switched the elements off".
func (m *message) switchesPower(i int) bool {
	if !strings.HasPrefix(m.text(i), "switched") {
		return false
	}
	return m.right(i, 4, true, func(k int) bool {
		return m.items[k].seg == m.items[i].seg && (m.is(k, cState, "") || m.is(k, cOff, "") && m.text(k) != "out" || m.text(k) == "on")
	}) >= 0
}

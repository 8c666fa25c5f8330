package intents

import "strings"

// Lists of the lexicon that these rules know.
var (
	listHasOne   = listOf("has one")
	listForOld   = listOf("in the old ones place")
	listOldStood = listOf("where the old one stood")
)

var wentInGate = onlyWith(cHint, "wentin", "newone")

// saidNew returns the item of a line that calls it new and tells what it was set to when
// it went in: "Exp tank: also new, charged 68"; else -1.
func (m *message) saidNew(i int) int {
	if !m.isMark(i+1, ",") || !m.is(i+2, cDid, "set") && !m.is(i+2, cDid, "charged") {
		return -1
	}
	k := i - 1
	for k > 0 && (m.text(k) == "also" || m.isMark(k, ":", "-") || m.inList(k, listLinks)) {
		k--
	}
	if k == i-1 || !m.is(k, cItem, "") || m.is(k, cItem, "gauge") || m.sents[m.items[i].sent].from != k {
		return -1
	}
	return k
}

// wentIn reads a part that "went in" on this visit, by its name, its size or as the new
// one: "Tank went in too, 2 gallon, charged to 60", "so a new one went up with 60 in it",
// "40 gal electric went in".
func (m *message) wentIn(i int) bool {
	if m.shut(wentInGate) {
		return false
	}
	one := i - 1
	if m.inList(one, listLinks) {
		one-- // "new one is in at 58"
	}
	placed := m.text(i) == "in" && m.is(one, cHint, "newone") && (m.endsIn(i) || m.text(i+1) == "and" && m.endsIn(i+1)) // "new brass one in"
	if !m.is(i, cHint, "wentin") && !placed || m.planish(m.items[i].sent) && placed || m.sents[m.items[i].sent].question {
		return false
	}
	v := verb{at: i, what: "installed", done: true, objAt: i - 1}
	fresh := m.left(i, 4, true, func(k int) bool { return m.is(k, cPart, "new") }) >= 0
	switch t := m.text(one); {
	case m.is(one, cHint, "newone") || t == "new":
		other := t == "one" && m.meets(one-1, setOf(cMaterial, cFuel)) // "so a brass one went in"
		fresh = fresh || t != "one" || other
		if v.object = m.carriedTo(i); v.object == "" || !fresh {
			return false
		}
		if v.what = "replaced"; other {
			v.renews, v.objAt = true, one-1 // what is told from there on is of the new one
		}
	default:
		// "first PRV this place has ever had went in today", "tankless went in where the old heater was"
		if m.text(i+1) == "renewed" {
			v.what, v.renews, v.objAt = "replaced", true, m.clauseStart(i)
			for k := v.objAt; k < i && v.object == ""; k++ {
				if v.object = m.partAt(k); v.object == "" && m.is(k, cFuel, "") {
					v.object = "heater"
				}
			}
			if v.object == "" {
				return false
			}
			m.unsay(i + 1)
			m.verbs = append(m.verbs, v)
			return true
		}
		for k := i - 1; k >= m.sents[m.items[i].sent].from && k >= i-6 && !m.items[k].mark && v.object == ""; k-- {
			v.object, v.objAt = m.partAt(k), k
		}
		if v.object == "" {
			return false
		}
		fresh = v.objAt == i-1 && (fresh || m.items[i-1].num != nil || m.is(i-1, cFuel, ""))
	}
	if !m.wentInNow(i, fresh || (v.object == "prv" || v.object == "expansion_tank") && m.noneYet(v.objAt)) {
		return false
	}
	m.verbs = append(m.verbs, v)
	return true
}

var forOldGate = onlyWith(cPart, "old")

// oldTakenOut passes over what is told of an old part by which it is said where the new one went: "tankless
// went in where the old 40 gal gas one used to be", "in place of the old one"; those words tell a replacement.
func (m *message) oldTakenOut() {
	if m.shut(forOldGate) {
		return
	}
	for i := range m.items {
		if !m.inList(i, listForOld) {
			continue
		}
		old := i + 1
		for m.is(old, cDeterminer, "") && !m.is(old, cPart, "old") {
			old++
		}
		if !m.is(old, cPart, "old") {
			continue
		}
		end := m.clauseEnd(old)
		if m.says(i, "where") {
			if end = m.right(old-1, 6, true, func(k int) bool { return m.inList(k, listOldStood) }); end < 0 || !m.stopAt(end+1) {
				continue // "where the old one is leaking"
			}
			end++
		}
		for k := i + 1; k < end; k++ {
			if m.unsay(k); m.isNum(k) {
				m.setRole(k, roleIgnored, "of the part taken out")
			}
		}
		m.say(i, "renewed")
	}
}

var firstOneGate = onlyWith(cHint, "given", "firstone")

// hasOneGate is that of what a house has by now.
var hasOneGate = onlyWithList(listHasOne)

// firstKey returns the key of that rule where the message holds a word for it: it may begin
// anywhere then.
func (m *message) firstKey() key {
	lacked := m.kinds.has(cNow) && !m.shut(hasOneGate) && m.kinds.has(cItem) && m.kinds.meets(setOf(cNeg, cLacks, cAbsent))
	if m.shut(firstOneGate) && !lacked {
		return 0
	}
	return keyFirstOne
}

// hasNow returns the regulator or the tank that a house lacked and has now, told at item i: "house never
// had a regulator, does now", "no tenía tanque y ahora sí"; "" for none.
func (m *message) hasNow(i int) string {
	if !m.is(i, cNow, "") {
		return ""
	}
	said := m.inList(i-1, listHasOne) && m.closes(i)
	for k := i + 1; k <= i+2 && !said; k++ {
		said = m.inList(k, listHasOne) && m.closes(k)
	}
	if !said {
		return ""
	}
	return m.lackedBefore(i)
}

// firstOne reads the first regulator or tank of a house at item i: "gave 5214 Winslow a
// tank, first one", "house got its very first regulator", "they never had a tank, they've
// got one now".
func (m *message) firstOne(i int) bool {
	s := &m.sents[m.items[i].sent]
	if now := m.hasNow(i); now != "" && !s.question {
		m.verbs = append(m.verbs, verb{at: i, what: "installed", done: true, object: now, objAt: i})
		return true
	}
	if m.shut(firstOneGate) || s.question {
		return false
	}
	object := m.partAt(i)
	if m.text(i) != "one" && object != "prv" && object != "expansion_tank" || m.planish(m.items[i].sent) || m.momentSeg(i) {
		return false
	}
	given := m.left(i, 6, true, func(k int) bool { return m.is(k, cHint, "given") }) >= 0
	switch first := func(k int) bool { return m.text(k) == "first" || m.text(k) == "1st" }; {
	case m.text(i) == "one":
		if object = ""; given && (m.text(i+1) == "now" || m.text(i-1) == "now") {
			object = m.lackedBefore(i)
		}
	case m.firstEver(i): // "first regulator this house ever saw is now in, set at 60"
	case !given || m.left(i, 2, true, first) < 0 && !(m.isMark(i+1, ",") && first(i+2)):
		return false
	}
	if object == "" {
		return false
	}
	m.verbs = append(m.verbs, verb{at: i, what: "installed", done: true, object: object, objAt: i})
	return true
}

// lackedBefore returns the regulator or the tank named last before item i where the house is
// said to have had none; "" for another thing.
func (m *message) lackedBefore(i int) string {
	for k := i - 1; k >= 0 && k >= i-16; k-- {
		if v, ok := m.val(k, cItem); ok {
			if o := m.itemCode(k, v); (o == "prv" || o == "expansion_tank") && m.itemAbsent(k) {
				return o
			}
			return ""
		}
	}
	return ""
}

// firstEver tells whether the part at item i is the first that a house ever had, and is in
// now: "first regulator this house ever saw is now in".
func (m *message) firstEver(i int) bool {
	in := func(k int) bool {
		return m.is(k, cHint, "wentin") || m.says(k, "in", "on", "up") && m.closes(k) || m.isAny(k, cDid, "set", "charged")
	}
	return m.left(i, 2, true, func(k int) bool { return m.is(k, cHint, "firstone") }) >= 0 &&
		m.right(i, 6, true, func(k int) bool { return m.text(k) == "ever" }) >= 0 && m.right(i, 9, true, in) >= 0
}

// wentInNow tells whether what "went in" did so on this visit.
func (m *message) wentInNow(i int, fresh bool) bool {
	for k := i + 1; k < m.sents[m.items[i].sent].to; k++ {
		if m.pastAt(k) {
			return false
		}
		fresh = fresh || m.is(k, cDid, "charged") || m.is(k, cDid, "set") || m.text(k) == "today"
	}
	return fresh
}

// pastAt tells whether item k tells that something was done before the visit: "in 2019",
// "six years ago".
func (m *message) pastAt(k int) bool {
	if n := m.items[k].num; n != nil {
		return n.apos || len(n.digits) == 4 && year(n.value)
	}
	return m.is(k, cMemory, "") || m.inList(k, listThisSeason) || m.says(k, "ago", "last year")
}

// outAndIn reads what came out and what went in under two heads: "Out: a gas 40 that rusted through.
// In: propane, 75 gal". What is told of the part that came out is passed over.
func (m *message) outAndIn(i int) bool {
	if m.text(i) != "in" || !m.isMark(i+1, ":") {
		return false
	}
	out := i - 1
	for out >= 0 && !(m.text(out) == "out" && m.isMark(out+1, ":")) {
		out--
	}
	if out < 0 || m.items[out].sent < m.items[i].sent-1 {
		return false
	}
	object, at := m.partUnder(i + 2)
	if old, _ := m.partUnder(out + 2); object == "" {
		object = old
	}
	if object == "" {
		return false
	}
	for k := out + 1; k < i; k++ {
		if m.isNum(k) && m.items[k].role == roleNone {
			m.setRole(k, roleIgnored, "of the part taken out")
		}
		m.unsay(k)
	}
	m.verbs = append(m.verbs, verb{at: i, what: "replaced", done: true, object: object, objAt: at})
	return true
}

// partUnder returns the part that is told in the sentence of item i from there on, by its name or as
// a heater by its fuel, and where; no pressure may be told beside it.
func (m *message) partUnder(i int) (string, int) {
	if i >= len(m.items) {
		return "", -1
	}
	for k := i; k < m.sents[m.items[i].sent].to; k++ {
		switch {
		case m.pointAt(k):
			return "", -1
		case m.partAt(k) != "":
			return m.partAt(k), k
		case m.is(k, cFuel, ""):
			return "heater", k
		}
	}
	return "", -1
}

// partThenDry tells whether behind the leak at item i, be it in one of the next two sentences, a small part went in and
// the tap is dry or good again: "tub spout dripped, new washer in it, dry now", "valve leaked. new stem, no more drip".
func (m *message) partThenDry(i int) bool {
	to := i
	for s := m.items[i].sent; s < min(m.items[i].sent+3, len(m.sents)) && !m.sents[s].question && !m.planish(s); s++ {
		to = m.sents[s].to
	}
	part := -1
	for k := i + 1; k < min(i+9, to) && part < 0; k++ {
		if m.smallPartIn(k) && m.clauseStart(k) > i {
			part = k
		}
	}
	for k := part + 1; part > 0 && k < min(part+10, to); k++ {
		if m.dryAgain(k) {
			return true
		}
	}
	return false
}

// smallPartIn tells whether item k is a small part of a tap that is new or was put in: "new washer".
func (m *message) smallPartIn(k int) bool {
	if t := m.text(k); strings.HasPrefix(t, "new ") && m.p.lex.inList(lastWord(t), listSmallParts) {
		return true // "new cartridge"
	}
	return (m.is(k, cFitting, "") || m.is(k, cHint, "inside") || m.inList(k, listSmallParts)) && m.left(k, 3, true, func(j int) bool {
		return m.is(j, cPart, "new") || m.is(j, cHint, "puts") || m.is(j, cHint, "places") || m.is(j, cDid, "") || m.workedWord(j)
	}) >= 0
}

// dryAgain tells whether item k says that what leaked is dry now, or good, and its clause names nothing else: "dry",
// "no more drip", "good now", but "prv is good now".
func (m *message) dryAgain(k int) bool {
	dry := m.isAny(k, cHint, "cleared") || m.is(k, cDry, "")
	if denied := m.is(k-1, cNeg, ""); denied == dry || !dry && !m.is(k, cSym, "leak") {
		return false
	}
	for j := m.clauseStart(k); j < m.clauseEnd(k); j++ {
		if m.items[j].kinds.meets(setOf(cItem, cRelief)) || dry && (m.items[j].num != nil || m.items[j].point != "") {
			return false
		}
	}
	return true
}

package intents

import (
	"strings"

	"lazyhand/assess"
)

// Lists of the lexicon that these rules know.
var (
	listLeftItAt  = listOf("left it at")
	listLeftThing = listOf("left thing")
	listToValue   = listOf("to value")
	listSetAt     = listOf("set at")
	listUsedToBe  = listOf("used to be")
	listAboutIt   = listOf("about it")
	listPutsAir   = listOf("puts air")
)

// A change of a setting is told as two numbers, "85 -> 60", "was at 40, bumped it to
// 55", or as one at the end of a deed, "swapped the reg out, left it at 58".

// towards tells whether item k stands between the two numbers of a change.
func (m *message) towards(k int) bool {
	return m.inList(k, listToValue)
}

// turned tells whether the number at i and the next are a change that a deed made, so
// that they are no range: "charged the tank 40 to 60", "brought the prv up 45 to 55".
func (m *message) turned(i int) bool {
	v := m.verbLeft(i, 7, "set", "charged")
	if v == nil || v.object != "prv" && v.object != "expansion_tank" || m.pointBetween(v.at, i) || m.numsBetween(v.at, i) > 0 {
		return false
	}
	if behind := m.isMark(i-1, ",") && (i == v.at+2 || i == v.objAt+2); !behind && !m.directly(v.at, i) {
		return false
	}
	return m.says(i-1, "up", "down") || !m.towards(i-1) && m.text(i-1) != "at"
}

// alteredGate is that of words of a change that lead to one of its numbers.
var alteredGate = gateOf(opener{words: []string{"->", "to", "down to"}, lists: []list{listSetAt}})

// altered reads the numbers of a change; ok when item i is one of them.
func (m *message) altered(i int) (role, string, bool) {
	if m.shut(alteredGate) && !m.gave(roleTo) {
		return 0, "", false
	}
	it := &m.items[i]
	if it.unit != "" && !pressureUnit(it.unit) || it.num.decimals == 0 && it.value < 10 && it.unit == "" {
		return 0, "", false
	}
	// "prv 85 -> 60", "exp tank: 30 -> 60"
	if j := i + 2; m.isNum(j) && (m.text(i+1) == "->" || m.text(i+1) == "to") && !m.points(j) &&
		(it.unit == "" || m.items[j].unit == it.unit || it.unit == "psi" && m.items[j].unit == "" && m.text(i+1) == "->") {
		at := i - 1
		for at > 0 && (m.items[at].mark && m.text(at) == ":" || m.says(at, "from", "set", "setting", "air") ||
			m.numIs(at, roleSize) || m.is(at, cPresent, "") || m.is(at, cMove, "")) { // "Exp: yes 2 gal 40 -> 60"
			at--
		}
		v := m.verbLeft(i, 7, "set", "charged")
		if m.text(i+1) == "to" && at != i-1 && m.text(at+1) != ":" && !m.partMoved(at, i) {
			v, at = nil, -1 // "set the prv from 85 to 60" has rules of its own
		}
		if v != nil && (m.pointBetween(v.at, i) || m.pointInClause(i) || m.numsBetween(v.at, i) > 0) {
			v = nil // "bumped the prv, front went 58 to 63"
		}
		if c, ok := m.val(at, cItem); v == nil && ok {
			switch c = m.itemCode(at, c); c {
			case "prv":
				m.verbs = append(m.verbs, verb{at: at, what: "set", done: true, object: c, objAt: at})
				v = &m.verbs[len(m.verbs)-1]
			case "expansion_tank":
				m.verbs = append(m.verbs, verb{at: at, what: "charged", done: true, object: c, objAt: at})
				v = &m.verbs[len(m.verbs)-1]
			}
		}
		if v != nil && !v.planned && !v.negated {
			v.done, v.state = true, false
			return m.ofDeed(v, i, roleFrom, "… -> …")
		}
	}
	// "prv down to 60", "down to 60 with the prv"
	if k := i - 1; m.text(k) == "down to" && m.left(i, 9, true, func(j int) bool {
		return m.is(j, cDid, "set") || m.is(j, cDo, "set") || m.is(j, cBase, "set") || m.is(j, cWill, "")
	}) < 0 {
		at := k - 1
		if w := m.text(i + 1); (w == "with" || w == "w" || w == "on" || w == "at" || w == "w/") && k == m.sents[it.sent].from {
			at = m.right(i, 3, false, func(j int) bool { return m.is(j, cItem, "prv") })
		}
		if at >= 0 && m.is(at, cItem, "prv") && m.items[at].sent == it.sent {
			m.verbs = append(m.verbs, verb{at: min(at, k), what: "set", done: true, object: "prv", objAt: at})
			it.owner = min(at, k) + 1
			return roleTo, "down to", true
		}
	}
	// "prv was at 40, bumped it to 55"
	if k := i - 1; m.inList(k, listSetAt) {
		for k >= 0 && k > i-5 && !m.items[k].mark && !m.is(k, cItem, "") {
			k--
		}
		if m.is(k, cItem, "prv") && m.items[k].sent == it.sent && m.was(k+1, i) && !m.pointBetween(k, i) {
			if v := m.deedAfter(i, "set"); v != nil && (v.object == "prv" || v.object == "") && !m.points(i) {
				return m.ofDeed(v, i, roleFrom, "was, before it was set")
			}
		}
	}
	// "charged it to 55; it had been at 31"
	if p := m.lastTo(i); p >= 0 && m.was(p+1, i) && (!m.points(i) && !m.pointInClause(i) || m.tapsBehindHaveTheirs(p, i)) {
		it.owner = m.items[p].owner
		return roleFrom, "had been", true
	}
	return 0, "", false
}

// partMoved tells whether the part at item at was put from the number at i to the next, by a word of
// setting that stands between them: "reg set 92 to 60", "prv brought 105 to 60". Two near numbers are a range.
func (m *message) partMoved(at, i int) bool {
	return at == i-2 && (m.text(i-1) == "set" || m.is(i-1, cMove, "")) && abs(int(m.items[i+2].value-m.items[i].value)) > farApart &&
		!m.sentenceMeets(m.items[i].sent, setOf(cWhose, cWill))
}

// shifted tells whether a number is by how much a deed moved a setting: "turned the prv
// down about 20 psi", "dropped it 15 lbs". What it was set to is told with a "to".
func (m *message) shifted(i int) bool {
	it := &m.items[i]
	if it.value > 30 || it.unit != "" && !pressureUnit(it.unit) {
		return false
	}
	k := i - 1
	for k > 0 && m.is(k, cHint, "hedge") {
		k--
	}
	if k < 0 || m.items[k].mark || m.items[k].seg != it.seg {
		return false
	}
	if m.is(k, cHint, "shift") {
		return true
	}
	way := m.is(k, cHint, "way")
	if way && m.is(k-1, cHint, "moves") {
		return true // "went down 25 when I opened the tub"
	}
	return (way || m.is(k, cItem, "prv") || m.text(k) == "it") && m.left(i, 6, false, func(j int) bool {
		return m.is(j, cHint, "shift") || way && (m.is(j, cDid, "set") || m.is(j, cMove, "") || m.is(j, cBase, "set")) && m.items[j].seg == it.seg
	}) >= 0
}

// was tells whether a word of the past stands between two items.
func (m *message) was(a, b int) bool {
	for k := a; k < b; k++ {
		if m.inList(k, listUsedToBe) {
			return true
		}
	}
	return false
}

// lastTo returns the number just before item i that something was set to, when only
// words about "it" lie between, else -1.
func (m *message) lastTo(i int) int {
	for k := i - 1; k >= 0 && k >= i-6; k-- {
		if m.items[k].num != nil {
			if m.items[k].role == roleTo {
				return k
			}
			return -1
		}
		if m.items[k].point != "" || m.is(k, cItem, "") || m.is(k, cDid, "") {
			return -1
		}
		switch {
		case m.inList(k, listAboutIt):
		default:
			return -1
		}
	}
	return -1
}

// tapsBehindHaveTheirs tells whether the number at i is told with what the part was set to at item p, no tap between
// them, and each tap told behind it goes before a number of its own: "charged tank to 60 was 38 laundry 61".
func (m *message) tapsBehindHaveTheirs(p, i int) bool {
	if m.pointBetween(m.clauseStart(p), i) {
		return false
	}
	for k := i + 1; k < m.clauseEnd(i); k++ {
		if m.items[k].point == "" {
			continue
		}
		if m.says(k-1, "at", "in", "on", "en") || m.is(k-1, cDeterminer, "") {
			return false
		}
		if k == i+1 && m.text(k+1) == "now" && m.ofRegulator(p) {
			return false // "set it at 60, was 110 laundry now 61"
		}
		for k++; m.pointAt(k) || m.says(k, "now", "at", "is", "reads"); k++ {
		}
		if !m.isNum(k) {
			return false
		}
	}
	return true
}

// numbersDeed returns the deed that the number at i was given to, nil for none.
func (m *message) numbersDeed(i int) *verb {
	for k := range m.verbs {
		if m.verbs[k].at == m.items[i].owner-1 {
			return &m.verbs[k]
		}
	}
	return nil
}

// deedAfter finds the next deed after item i within its sentence, when it has a
// number of its own.
func (m *message) deedAfter(i int, what string) *verb {
	for k := range m.verbs {
		v := &m.verbs[k]
		if v.at <= i || v.at > i+5 || m.items[v.at].sent != m.items[i].sent {
			continue
		}
		if v.what == what && v.done && m.nextNum(v.at) > 0 && m.nextNum(i) > v.at {
			return v
		}
		return nil
	}
	return nil
}

// leftWith reads what a part was left at when the work was over: "swapped the reg
// out, left it at 58", "installed one at 60".
func (m *message) leftWith(i int) (role, string, bool) {
	if v := m.putInto(i); v != nil {
		return m.ofDeed(v, i, roleTo, "put to")
	}
	v := m.verbLeft(i, 10, "installed", "replaced", "rebuilt", "charged", "set")
	if v == nil || !v.done || m.numsBetween(v.at, i) > 0 || m.points(i) {
		return 0, "", false
	}
	if m.placeOfDeed(v, i) {
		return m.ofDeed(v, i, roleTo, v.what+" there, at")
	}
	if m.pointBetween(v.at, i) || m.pointInClause(i) {
		return 0, "", false
	}
	obj := v.object
	if obj == "" {
		obj = m.carriedTo(v.at)
	}
	if obj == "heater" && v.what == "replaced" && m.is(i-1, cAfter, "") && m.items[i].value >= 105 && m.items[i].value <= 150 &&
		m.items[i].unit == "" {
		return roleTemp, "the heater left at", true
	}
	if obj != "prv" && obj != "expansion_tank" {
		return 0, "", false
	}
	_, at := m.topicBefore(i)
	if at > v.at && at != v.objAt && !m.is(at, cPart, "air") {
		return 0, "", false
	}
	k := i - 1
	if m.isMark(k, ",") {
		k--
	}
	if m.isMark(i-1, "(") && i-2 == v.objAt && m.isMark(i+1, ")") && m.settingLike(i) {
		return m.ofDeed(v, i, roleTo, "in brackets behind it") // "replaced prv (60)"
	}
	mayBeAir := m.ofTank(v) || v.object == "prv" && v.what != "set" && m.settingLike(i)
	if mayBeAir && pressureUnit(m.items[i].unit) && m.closes(i) && (i-1 == v.objAt || m.numIs(k, roleSize)) {
		return m.ofDeed(v, i, roleTo, "the new tank's air") // "rplcd xp tnk 2g 65#"
	}
	if t := m.text(i + 1); v.what != "set" && (t == "on" || t == "in") &&
		m.right(i, 4, false, func(k int) bool { return m.is(k, cHint, "newone") }) >= 0 {
		return m.ofDeed(v, i, roleTo, "of the new one") // "swapped it, 60 on the new one"
	}
	switch {
	case m.text(i-1) == "on":
		if t := m.text(i - 2); (t == "its" || t == "it is" || t == "it" || t == "sits") && v.object == "prv" {
			return m.ofDeed(v, i, roleTo, "it is on")
		}
	case m.inList(i-1, listLeftItAt):
		return m.ofDeed(v, i, roleTo, "left at")
	case m.says(i-1, "at", "@"):
		if v.what != "set" && !v.planned && m.closes(i) && m.items[i].value >= 30 && m.items[i].value <= 100 &&
			(i-2 == v.at || m.is(i-2, cItem, "") || m.numIs(i-2, roleSize) || m.inList(i-2, listLeftThing)) {
			return m.ofDeed(v, i, roleTo, v.what+" at")
		}
	case m.text(i-1) == ",":
		ofTank := i-2 == v.at || m.is(i-2, cHint, "wholehouse") || m.is(i-2, cPart, "air") || m.isAny(i-2, cItem, "tank", "expansion_tank")
		if ofTank && v.what == "charged" && m.closes(i) {
			return m.ofDeed(v, i, roleTo, "charged to")
		}
	}
	return 0, "", false
}

// putInto returns the deed whose part the number at i was given in Spanish: "cambié el tanque, le puse
// 58", "swapped el prv y le puse 60".
func (m *message) putInto(i int) *verb {
	if !m.is(i-1, cHint, "putsair") || !strings.HasPrefix(m.text(i-1), "le ") || !m.closes(i) || !m.settingLike(i) {
		return nil
	}
	for k := len(m.verbs) - 1; k >= 0; k-- {
		v := &m.verbs[k]
		if v.at < i-1 && v.at >= i-9 && v.done && oneOf(v.what, "installed", "replaced", "rebuilt") && oneOf(v.object, "prv", "expansion_tank") {
			return v
		}
	}
	return nil
}

// placeOfDeed tells whether the one test point between the deed and the number at i only
// says where the part was put in: "cut one in on the main at 60".
func (m *message) placeOfDeed(v *verb, i int) bool {
	if v.what != "installed" && v.what != "replaced" || m.text(i-1) != "at" && m.text(i-1) != "@" || m.items[i-2].point == "" ||
		!m.settingLike(i) || m.items[i].value > 100 {
		return false
	}
	k := i - 3
	for m.is(k, cDeterminer, "") {
		k--
	}
	if t := m.text(k); t != "on" && t != "in" && t != "by" && t != "at" && t != "near" {
		return false
	}
	for j := v.at; j < i; j++ {
		if m.items[j].mark {
			return false
		}
	}
	obj := v.object
	if obj == "" {
		obj = m.carriedTo(v.at)
	}
	return obj == "prv" || obj == "expansion_tank"
}

// ofTank tells whether a deed put in an expansion tank.
func (m *message) ofTank(v *verb) bool {
	return v.object == "expansion_tank" && (v.what == "installed" || v.what == "replaced")
}

var airWords = opener{lists: []list{listPutsAir}}

// airsTank reads air put into a tank at item i.
func (m *message) airsTank(i int) bool {
	if !m.airs(i) {
		return false
	}
	m.addVerb(i, "charged")
	return true
}

// airs tells whether the word at i puts air into a tank: "put 60 psi in the tank",
// "gave the exp tank 55 lbs".
func (m *message) airs(i int) bool {
	if !m.said(i, keyAirs) {
		return m.airFirst(i)
	}
	num, tank := false, false
	for k := i + 1; k <= i+8 && k < len(m.items) && !m.items[k].mark; k++ {
		if m.items[k].num != nil {
			if num || m.items[k].unit != "" && !pressureUnit(m.items[k].unit) {
				return false
			}
			num = true
		}
		if v, ok := m.val(k, cItem); ok {
			if m.itemCode(k, v) != "expansion_tank" {
				return false
			}
			tank = true
		}
		if m.is(k, cDid, "") || m.items[k].point != "" {
			return false
		}
		if num && (m.is(k, cHint, "newone") || m.text(k) == "old one") && m.carriedTo(i) == "expansion_tank" {
			tank = true // "put 62 psi of air in the old one"
		}
		if num && tank {
			return true
		}
	}
	return false
}

var airFirstGate = onlyWith(cHint, "putsair")

// airFirst tells whether a Spanish word of putting at i puts a number of air into a
// tank: "le puse 55 de aire al tanque", "le eché 60 libras de aire".
func (m *message) airFirst(i int) bool {
	if m.shut(airFirstGate) {
		return false
	}
	if !m.is(i, cHint, "putsair") || !m.isNum(i+1) || m.items[i+1].unit != "" && !pressureUnit(m.items[i+1].unit) {
		return false
	}
	n := i + 2
	for m.is(n, cUnit, "") || m.says(n, "al", "a", "en", "el") {
		n++
	}
	if n > i+2 && m.isAny(n, cItem, "tank", "expansion_tank") && strings.HasPrefix(m.text(i), "le ") && m.settingLike(i+1) {
		return true // "le metí 60 libras al tanque"
	}
	return m.right(i+1, 5, false, func(k int) bool { return m.is(k, cPart, "air") && m.items[k].seg == m.items[i].seg }) >= 0
}

// foundSetting: what a regulator was found set at belongs to the deed that set it anew.
func (m *message) foundSetting() {
	f := m.equipment.find("prv")
	if f == nil || f.SettingPSI == nil {
		return
	}
	for k := range m.work {
		w := &m.work[k]
		if w.Action == assess.SetPRV && w.ToPSI != nil && f.settingAt < w.at {
			if w.FromPSI == nil && *w.ToPSI != *f.SettingPSI {
				w.FromPSI = f.SettingPSI
			}
			f.SettingPSI = nil
			break
		}
		if w.Action == assess.SetPRV && w.ToPSI == nil && w.at < f.settingAt && m.setNow(w.at, f.settingAt) {
			w.ToPSI, f.SettingPSI = f.SettingPSI, nil
			break
		}
	}
}

// setNow tells whether the number at item i is what the deed at item at left the regulator at, said as
// how it stands then: "turned the reg down, now it's set at 60".
func (m *message) setNow(at, i int) bool {
	if m.items[i].sent > m.items[at].sent+1 || m.numsBetween(at, i) > 0 {
		return false
	}
	start := m.clauseStart(i)
	for k := start; k < i; k++ {
		if m.is(k, cItem, "") || m.is(k, cWhose, "") {
			return false
		}
	}
	return m.is(i+1, cNow, "") || m.left(i, i-start, true, func(k int) bool { return m.is(k, cNow, "") }) >= 0
}

// othersSetting: what somebody else had set a regulator to belongs to the deed that set it
// anew: "whoever set it at 90 was wrong, dialed it to 65", "last guy left the prv at 95, set
// it to 60".
func (m *message) othersSetting() {
	for k := range m.work {
		w := &m.work[k]
		if w.Action != assess.SetPRV || w.ToPSI == nil || w.FromPSI != nil {
			continue
		}
		i := w.at - 1
		for i >= 0 && i > w.at-14 && m.items[i].num == nil {
			i--
		}
		if i < 0 || !m.numIs(i, roleIgnored) || m.items[i].why == "what was wanted" || !m.settingLike(i) || !m.setByOthers(i) {
			continue
		}
		if p := toPSI(m.items[i].value, m.items[i].unit); p != *w.ToPSI {
			w.FromPSI = &p
		}
	}
}

// setByOthers tells whether the clause of the number at i says that somebody had set or
// left a regulator at it.
func (m *message) setByOthers(i int) bool {
	who, part := false, false
	for k := i - 1; k >= m.sents[m.items[i].sent].from && k >= i-9 && m.items[k].seg == m.items[i].seg; k-- {
		who = who || m.is(k, cWhose, "other") || m.is(k, cHint, "someone") || m.inList(k, listPeople)
		part = part || m.is(k, cItem, "prv") || m.text(k) == "it" || m.is(k, cDid, "set")
		if m.items[k].point != "" || m.is(k, cTarget, "") || m.is(k, cWill, "") || m.is(k, cHint, "wants") ||
			strings.HasPrefix(m.text(k), "want") {
			return false
		}
	}
	return who && part && (m.prepBefore(i) || m.is(i-1, cDid, "set"))
}

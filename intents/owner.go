package intents

import "strings"

// Lists of the lexicon that these rules know.
var (
	listItIs     = listOf("it is")
	listHolds    = listOf("holds")
	listWeakCond = listOf("weak condition")
	listSaidOf   = listOf("said of")
	listThisOne  = listOf("this one")
)

// compatible tells whether an attribute can be said of an item, and how well.
func compatible(what, item, text string, value float64) bool {
	switch what {
	case "fuel", "temp":
		return item == "heater"
	case "size":
		return item == "heater" && value >= 6 || item == "expansion_tank" && value < 20
	case "material":
		return item == "drain_valve"
	case "setting":
		return item == "prv"
	case "charge":
		return item == "expansion_tank"
	case "year", "age", "ago":
		return item != "drain_valve" && item != "gauge" || what == "age" && item == "gauge" || what == "year"
	case "unknown":
		return oneOf(item, "prv", "heater", "expansion_tank", "softener", "recirc", "check_valve")
	case "cond":
		if strings.Contains(text, "diaphragm") {
			return item == "prv" || item == "expansion_tank"
		}
		full := strings.HasSuffix(text, "de agua") || strings.HasSuffix(text, "full of water")
		return item == "expansion_tank" || !full && !tankCond(text)
	}
	return false
}

// tankCond tells whether a condition can only be an expansion tank's: "no air in it".
func tankCond(text string) bool {
	if strings.Contains(text, " air") || strings.Contains(text, "bladder") || strings.Contains(text, "schrader") || strings.HasSuffix(text, " valve stem") || strings.HasPrefix(text, "nothing ") && strings.HasSuffix(text, " water") {
		return true
	}
	return strings.HasPrefix(text, "waterlog") || strings.HasSuffix(text, "aire")
}

// ownerOf finds the item that an attribute is said of: the nearest that it fits, if it is near
// enough, else one that needs no name.
func (m *message) ownerOf(a attribute, items []mentionOf) (item string, old, ok bool) {
	if a.what == "cond" && m.leadsToNumber(a.at) {
		return "", false, false
	}
	if a.what == "cond" && m.saidOfBladder(a.at) {
		return "expansion_tank", false, true // "regulator gave up, 127 on the kitchen, bladder's holding"
	}
	if a.what == "cond" && !m.shut(screwGate) && m.left(a.at, 3, false, m.isStuckScrew) >= 0 {
		return "prv", false, true // "heater 2012, screw is frozen"
	}
	if a.what == "year" && m.text(a.at+1) == "install" && m.left(a.at, 4, false, m.neverServiced) >= 0 {
		return "heater", false, true // "drain valve brass. Never flushed since 2012 install"
	}
	if x := m.ownBeside(a, items); x != nil {
		return x.item, false, true
	}
	if x := m.looksAt(a, items); x != nil {
		return x.item, false, true
	}
	if x, other := m.subjectBehind(a, items); x != nil || other {
		if other {
			return "", false, false
		}
		return x.item, false, true
	}
	if x, distance := m.nearestOwner(a, items); x != nil && distance <= m.reach(a, items) {
		if x.other {
			return "", false, false
		}
		return x.item, x.item != "gauge" && (x.old && !m.ofNewOne(a.at) || m.oldFact(a.at)), true
	}
	if m.oldFact(a.at) {
		return "", true, false
	}
	item, old = m.unnamedOwner(a, items)
	if x := m.oldOneOf(a, items); item == "" && x != nil {
		return x.item, false, true
	}
	return item, old, item != ""
}

// subjectBehind returns the thing that a condition in Spanish is told before, in a clause that names none
// ahead of it: "cambiar el tanque el viernes, ya se ve gastado el regulador". Other tells that it is
// nothing that is installed: "se inundó el cuarto".
func (m *message) subjectBehind(a attribute, items []mentionOf) (behind *mentionOf, other bool) {
	if a.what != "cond" || !m.says(a.at+1, "el", "la") {
		return nil, false
	}
	other = m.noEquipment(a.at+2) && !m.inList(a.at+2, listFeminine)
	for k := range items {
		x := &items[k]
		switch {
		case x.at == a.at+2:
			behind = x
		case x.at < a.at && x.at >= m.clauseStart(a.at):
			return nil, false
		}
	}
	return behind, other && behind == nil
}

// looksAt returns the thing before a condition like "looks good" that something else follows with
// no mark between: "prv is a 2015 and looks good the tank is good too".
func (m *message) looksAt(a attribute, items []mentionOf) *mentionOf {
	if a.what != "cond" || !strings.HasPrefix(m.text(a.at), "looks ") || m.text(a.at-1) != "and" || !m.is(a.at+1, cDeterminer, "") || !m.is(a.at+2, cItem, "") {
		return nil
	}
	for k := len(items) - 1; k >= 0; k-- {
		if x := &items[k]; x.at < a.at && m.items[x.at].sent == m.items[a.at].sent && x.item != "gauge" && !x.old {
			return x
		}
	}
	return nil
}

// dated tells whether an attribute says how old a thing is.
func (a attribute) dated() bool { return a.what == "year" || a.what == "age" }

// reach returns how far an attribute may stand from its item, as nearestOwner measures.
func (m *message) reach(a attribute, items []mentionOf) float64 {
	subject := func() bool { return m.saidOfSubject(a.at) }
	original := func(k int) bool { return m.says(k, "original", "original to the house", "casting") }
	switch {
	case a.what == "cond":
		return m.condReach(a, items)
	case (a.dated() || a.what == "ago") && subject():
		return 24 // "it is electric, and it was installed nine years ago"
	case a.dated() && m.left(a.at, 12, true, original) >= 0:
		return 22
	case a.dated():
		return 12
	case a.what == "unknown" && m.left(a.at, 8, true, func(k int) bool { return m.factual(k) && m.items[k].seg == m.items[a.at].seg }) >= 0:
		return 24 // "heater was off the whole time, it's a 40 gal gas and nobody knows the year"
	case a.what == "unknown" && m.says(a.at+1, "it is", "its", "it", "it was", "they are"):
		return 24 // "… electric, elements weren't on for any of it, and she has no idea how old it is"
	}
	return 14
}

// condReach is reach for a condition: a plain one reaches farther than "good" or "off".
func (m *message) condReach(a attribute, items []mentionOf) float64 {
	if m.saidOfIt(a.at) || m.saidOfSubject(a.at) || m.is(a.at-1, cHint, "both") || m.is(a.at-2, cHint, "both") ||
		(m.is(a.at+1, cNow, "") || m.says(a.at+1, "now", "today")) && m.closes(a.at+1) && m.onlyOneBefore(a.at, items) {
		return 24 // "…, built in 1997, and it is stuck", "… and both look good"
	}
	reach, strong := 6.0, m.strongCond(a.at)
	if strong {
		reach = 15
	}
	header := m.sents[m.items[a.at].sent].header
	if header >= 0 && header < a.at || strong && m.onlyOneBefore(a.at, items) {
		reach += 6
	}
	if reach < 12 && m.saidLast(a.at, items) {
		reach = 12
	}
	return reach
}

// onlyOneBefore tells whether the sentence of item i names one thing, before it, and no more.
func (m *message) onlyOneBefore(i int, items []mentionOf) bool {
	n := 0
	for _, x := range items {
		if m.items[x.at].sent != m.items[i].sent {
			continue
		}
		if n++; x.at > i {
			return false
		}
	}
	return n == 1
}

// lackedHere tells whether sentence s says that the house has no such thing, so that no
// fact after it is the thing's: "no check valve, tank good".
func (m *message) lackedHere(x mentionOf, s int) bool {
	return m.items[x.at].sent == s && m.is(x.at, cItem, "") && m.itemAbsent(x.at) && !m.installs(x.item)
}

// leadsToNumber tells whether a word of condition at item i only leads to the number behind
// it: "holds 62".
func (m *message) leadsToNumber(i int) bool {
	if !m.isNum(i+1) && !(m.says(i+1, "at", "around", "about") && m.isNum(i+2)) {
		return false
	}
	return m.inList(i, listHolds) ||
		m.text(i) == "off by" && m.itemIn(m.items[i].sent) != "gauge"
}

// strongCond tells whether a condition is plain even at some distance from its item.
func (m *message) strongCond(i int) bool { return !m.inList(i, listWeakCond) }

// separators counts the marks between two items.
func (m *message) separators(a, b int) int {
	n := 0
	for k := a + 1; k < b; k++ {
		if m.separator(k) {
			n++
		}
	}
	return n
}

// separator tells whether item k is a mark that parts what is told.
func (m *message) separator(k int) bool { return m.isMark(k, ",", "/", "-", "(") }

// saidOfIt tells whether "it is" or the like stands right before item i.
func (m *message) saidOfIt(i int) bool {
	switch {
	case m.inList(i-1, listItIs):
		return true
	case m.is(i, cHint, "nothere"):
		return true // "ours is fine", in one
	case m.text(i-1) == "esta" && m.says(i-2, "y", "ya"):
		return true
	}
	// "new prv goes in next week, this one is stuck", "neighbor's regulator blew, not ours. ours is fine"
	return m.inList(i-1, listLinks) && m.inList(i-2, listThisOne)
}

// saidOfSubject tells whether a fact at item i is the predicate of a clause that names
// nothing: "…, was installed in 2012", "… and appears to be in good condition", "and it
// was put in nine years ago".
func (m *message) saidOfSubject(i int) bool {
	s, k, verbs := m.sents[m.items[i].sent], i-1, 0
	for ; k > s.from && k >= i-7; k-- {
		switch t := m.text(k); {
		case m.is(k, cHint, "wentin"), m.is(k, cHint, "appears"), m.inList(k, listLinks), m.is(k, cDid, "installed"):
			verbs++
		case t == "it", t == "it is", t == "it was", t == "its":
			return k > s.from && (m.items[k-1].mark || m.text(k-1) == "and")
		case t == "in", t == "to", t == "around", t == "about":
		default:
			return verbs > 0 && (m.items[k].mark || t == "and")
		}
	}
	return false
}

// copulaBefore tells whether "is", "es de" or the like leads to item i: then it is
// said of what stands before.
func (m *message) copulaBefore(i int) bool {
	return m.left(i, 3, false, func(k int) bool {
		return m.inList(k, listSaidOf) && m.items[k].seg == m.items[i].seg
	}) >= 0
}

// factual tells whether item j is a fact of some equipment.
func (m *message) factual(j int) bool {
	if j >= len(m.items) {
		return false
	}
	if m.items[j].num != nil {
		switch m.items[j].role {
		case roleYear, roleAge, roleSize, roleTemp, roleSetting, roleCharge, roleAgo:
			return true
		}
		return false
	}
	return m.is(j, cFuel, "") || m.is(j, cMaterial, "") || m.is(j, cCond, "")
}

// factualRun tells whether only facts, marks and small words lie between two items.
func (m *message) factualRun(a, b int) bool {
	for j := a + 1; j < b; j++ {
		small := m.items[j].tags == nil && len(m.text(j)) <= 5 || m.meets(j, betweenFacts) || m.inList(j, listLinks) || m.text(j) == "never"
		if small || m.items[j].mark || m.factual(j) || m.is(j, cDid, "flushed") || m.isAny(j, cPart, "air", "thermostat") {
			continue
		}
		return false
	}
	return true
}

// betweenFacts are the classes of what may stand between two facts of one thing.
var betweenFacts = setOf(cWord, cDeterminer, cPresent)

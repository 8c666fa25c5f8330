package intents

import "strings"

// Lists of the lexicon that these rules know.
var (
	listToo     = listOf("too")
	listInFor   = listOf("in for")
	listIsIn    = listOf("is in")
	listHadNone = listOf("had none")
	listAfterIn = listOf("after in")
)

// newPart returns the item of "new PRV in", "new 50 gal heater in at 12 Elm", "new reg
// is in", "new prv, set to 58" when the word at i says that it was put in on this
// visit, else -1.
func (m *message) newPart(i int) int {
	part, first := -1, i
	switch {
	case m.inList(i, listParticleIn) || m.is(i, cHint, "wentin"):
		part, first = m.newBefore(i)
	case m.is(i, cHint, "threads") && m.says(i+1, "in", "on") && m.closes(i+1):
		part, first = m.newBefore(i) // "new prv threaded on"
	case m.is(i, cPart, "new"):
		if k := m.saidNew(i); k >= 0 {
			return k // "Exp tank: also new, charged 68"
		}
		if m.is(i-1, cItem, "") && m.isMark(i+1, ",") && (m.is(i+2, cPart, "old") || m.is(i+2, cHint, "another")) {
			return i - 1 // "regulador nuevo, el otro ya no servía"
		}
		if m.inList(i-1, listLinks) && m.is(i-2, cItem, "") && (m.text(i+1) == "today" || m.text(i+1) == "as" && m.text(i+3) == "today") {
			return i - 2 // "prv is new as of today"
		}
		part = m.newBehind(i)
		if part < 0 && m.is(i+1, cItem, "") && (m.text(i-1) == "after" || m.is(i-1, cDeterminer, "") && m.text(i-2) == "after") {
			return m.newAfter(i) // "front down to 58 after new prv, was 119"
		}
	}
	if part < 0 || m.is(part, cItem, "gauge") || m.sents[m.items[i].sent].question || m.onlyWanted(first) {
		return -1
	}
	return part
}

// newAfter returns the part that is new at item i where a pressure is told to be after it, -1 for none.
func (m *message) newAfter(i int) int {
	if !m.isAny(i+1, cItem, "prv", "expansion_tank") || m.planish(m.items[i].sent) || m.sents[m.items[i].sent].question {
		return -1
	}
	if m.left(i, 9, true, m.isNum) < 0 {
		return -1
	}
	return i + 1
}

// newBefore returns the part named before the "in" at item i and where "new" stands: "new 50
// gal heater is in"; -1 for none.
func (m *message) newBefore(i int) (part, first int) {
	part = i - 1
	if m.text(part) == "now" || m.inList(part, listLinks) && m.text(part) != "came" {
		part--
	}
	if !m.endsIn(i) || !m.is(part, cItem, "") && m.partAt(part) == "" {
		return -1, -1
	}
	if o := m.partAt(part); (o == "prv" || o == "expansion_tank") && m.noneYet(part) {
		return part, part // "exp tank in too, none before"
	}
	first = part - 1
	for first >= 0 && first >= part-3 && m.sizeOrFact(first) {
		first--
	}
	if !m.is(first, cPart, "new") && m.text(first) != "nw" {
		return -1, -1
	}
	return part, first
}

// sizeOrFact tells whether item k is a fact that may stand between "new" and the part: "new 50
// gal gas heater".
func (m *message) sizeOrFact(k int) bool {
	return m.factual(k) || m.isNum(k) && (m.items[k].unit == "gal" || m.items[k].value < 2) // "new 3/4 prv"
}

// endsIn tells whether what follows the "in" at item i leaves it a particle of its own: "in
// today", "in at 12 Elm", not "in the garage".
func (m *message) endsIn(i int) bool {
	n := i + 1
	if m.inList(n, listToo) {
		return m.closes(n)
	}
	switch {
	case m.closes(i), m.items[n].unit == "gal", m.is(n, cFuel, ""), m.is(n, cDid, "set"), m.is(n, cDid, "charged"):
		return true
	case m.text(n) == "at":
		return n+1 < len(m.items) && (m.items[n+1].site || m.isNum(n+1))
	}
	return m.inList(n, listAfterIn)
}

// newBehind returns the part named behind the "new" at item i when what follows tells that it
// was put in: "new prv, set to 58"; -1 if not.
func (m *message) newBehind(i int) int {
	if m.text(i) == "replacement" || i != m.sents[m.items[i].sent].from && !m.items[i-1].mark && !m.items[i-1].site && !m.jobHeadAt(i-1) {
		return -1
	}
	part := i + 1
	for part < len(m.items) && part <= i+4 && !m.is(part, cItem, "") {
		if !m.sizeOrFact(part) {
			return -1
		}
		part++
	}
	if m.is(part, cItem, "") && m.toldNew(i, part) {
		return part
	}
	return -1
}

// jobHeadAt tells whether item k heads a line of what was done: "DONE new PRV, set 60".
func (m *message) jobHeadAt(k int) bool {
	return m.is(k, cHint, "jobhead") && (k == m.sents[m.items[k].sent].from || m.items[k-1].mark)
}

// toldNew tells whether a new part, named at item part behind the "new" at i, was put in.
func (m *message) toldNew(i, part int) bool {
	switch {
	case m.noneYet(part) && !m.planish(m.items[i].sent):
		return true // "new prv at 90 Pulley St, wasn't one there ever"
	case m.text(part+1) == ticked, m.underJob(i) && m.closes(part):
		return true // "new prv ✅", "done: new prv, flush"
	}
	n := part + 1
	if m.inList(n, listToo) {
		n++ // "New tank too, charged to 76"
	}
	if m.partAt(part) == "drain_valve" && m.is(part-1, cMaterial, "") && m.closes(part) && m.items[part].point != "" && !m.planish(m.items[i].sent) {
		return true // "new brass drain valve on the heater"
	}
	if m.closes(part) && !m.planish(m.items[i].sent) && (m.toldBeforeAndAfter() && i > 0 || m.nowBeside(i, part)) {
		return true // "before: rear 95, after: rear 61. new reg", "new prv, 62 now"
	}
	if m.says(n, "on", "under", "in") {
		for n++; n <= part+6 && !m.stopAt(n); n++ {
		}
		return m.isMark(n, ",") && m.is(n+1, cPart, "old") // "new boiler drain on the heater, old one wouldn't open"
	}
	if m.text(n) == "(" && m.text(n+2) == ")" {
		n += 3 // "new exp tank (none before), charged 60"
	}
	if m.says(n, ",", "and") {
		n++
	}
	switch {
	case m.oldOneBehind(part):
		return !m.planish(m.items[i].sent)
	case strings.HasPrefix(m.text(n), "in place of"):
		return !m.planish(m.items[i].sent) // "new prv in place of the old one, dialed it to 52"
	case m.is(n, cPart, "old") && m.oldOfItsKind(n, part), m.newAt(n):
		return true // "new drain cock on the heater, old one snapped", "new prv @ 60"
	case m.isMark(part+1, ",") && m.is(n, cPart, "new"):
		return m.newPart(n) >= 0 // "new heater, new exp tank at 60"
	case m.isMark(part+1, ",", ".", ":", "-", "\n") && m.wasThenNow(part+2):
		return true // "new prv, was 92 now 58 at the laundry"
	}
	return m.isAny(n, cDid, "set", "charged", "installed")
}

// oldOneBehind tells whether behind the new part at item part, and what is told of it, stands what became of the
// old one: "new drain valve brass, old plastic one crumbled", "new brass drain valve, the plastic one snapped".
func (m *message) oldOneBehind(part int) bool {
	n := part + 1
	fact := func(k int) bool { return (m.sizeOrFact(k) || m.is(k, cMaterial, "")) && !m.is(k, cPart, "old") }
	for fact(n) || m.isMark(n, ",") && fact(n+1) {
		n++
	}
	if !m.isMark(n, ",", ".", ";", "-", "(") {
		return false
	}
	if n++; m.is(n, cDeterminer, "") && !m.is(n, cPart, "old") {
		n++
	}
	return m.is(n, cPart, "old") && m.oldOfItsKind(n, part) ||
		m.is(n, cMaterial, "") && m.is(n-1, cDeterminer, "") && strings.HasSuffix(m.text(n), " one")
}

// oldOfItsKind tells whether the "old" at item n is not said of another thing than the new one at item part: "new
// tank, old prv is fine".
func (m *message) oldOfItsKind(n, part int) bool {
	next := m.right(n, 3, true, func(k int) bool { return m.items[k].mark || m.partAt(k) != "" })
	return next < 0 || m.items[next].mark || m.partAt(next) == m.partAt(part)
}

// toldBeforeAndAfter tells whether the message tells pressures of before and of after the work.
func (m *message) toldBeforeAndAfter() bool {
	before, after := false, false
	for k := range m.items {
		number := m.right(k, 3, false, m.isNum) > 0
		before = before || number && m.is(k, cBefore, "")
		after = after || number && m.is(k, cAfter, "") && !m.is(k, cNow, "")
	}
	return before && after
}

// nowBeside tells whether the clause before item i or behind item part tells a pressure of now:
// "kitchen 62 now, new prv".
func (m *message) nowBeside(i, part int) bool {
	number := func(k int) bool {
		return m.isNum(k) && (m.is(k-1, cNow, "") || m.is(k+1, cNow, "") || m.is(k+1, cAfter, "") || strings.HasPrefix(m.text(k+1), "now "))
	}
	return m.items[max(i-1, 0)].mark && m.left(i-1, 5, true, number) >= 0 || m.items[min(part+1, len(m.items)-1)].mark && m.right(part+1, 5, true, number) >= 0
}

// wasThenNow tells whether the clauses from item k on tell a number of before and one of after.
func (m *message) wasThenNow(k int) bool {
	before, after := false, false
	for end := min(k+14, len(m.items)); k < end && !m.isMark(k, ".", "\n", "?"); k++ {
		beside := m.isNum(k-1) || m.isNum(k+1)
		before = before || beside && m.is(k, cBefore, "")
		after = after || before && beside && (m.is(k, cNow, "") || m.is(k, cAfter, ""))
	}
	return before && after
}

// onlyWanted tells whether what stands before the "new" at item first in its sentence plans or
// denies the part, or tells of another deed: "going to put a new prv in".
func (m *message) onlyWanted(first int) bool {
	for k := first - 1; k >= 0 && m.items[k].sent == m.items[first].sent; k-- {
		if m.is(k, cWill, "") || m.is(k, cNeg, "") || m.is(k, cDid, "") && k > first-4 || m.says(k, "put", "putting", "get", "back") {
			return true
		}
	}
	return false
}

// newAt tells whether nothing follows but what a new part is set to: "@ 60", "60 psi".
func (m *message) newAt(n int) bool {
	if t := m.text(n); t == "at" || t == "@" {
		n++
	} else if !m.isNum(n) || !pressureUnit(m.items[n].unit) {
		return false
	}
	return m.isNum(n) && m.settingLike(n) && m.items[n].value <= 100 && m.closes(n) && m.text(n+1) != "/"
}

// putsPart reads a part put in at item i, now or later.
func (m *message) putsPart(i int) bool {
	if !m.is(i, cHint, "puts") || !m.putsIn(i) {
		return false
	}
	if v := m.addVerb(i, "installed"); m.is(i, cHint, "putlater") && !m.is(i-1, cHad, "") {
		v.done, v.planned = false, true
	}
	return true
}

// putsIn tells whether the word at i puts a part in, with a particle after it: "put a
// tank in", "screwed a brass one in", "threaded a new brass in there".
func (m *message) putsIn(i int) bool {
	part, fitting := false, false
	for k := i + 1; k < len(m.items) && k <= i+6 && !m.items[k].mark; k++ {
		if fitting && m.text(k) == "in" && (m.closes(k) || m.says(k+1, "it", "there")) {
			return true // "toilet ran, put a flapper in"
		}
		fitting = fitting || m.is(k, cFitting, "sure") || m.is(k, cFitting, "part")
		if m.is(k+1, cHint, "turned") && !m.is(k+1, cHint, "inside") {
			return false // "ran the prv screw in"
		}
		if m.is(k, cHint, "remind") || m.isNum(k) && unitDays(m.items[k].unit) > 0 && m.text(k+1) != "ago" {
			return false // "set a reminder to replace the prv in 10 days"
		}
		if m.is(k, cItem, "") && !m.is(k, cItem, "gauge") || m.newOneAt(k) || m.tankBySize(k) {
			if m.putsOne(i, k) {
				return true
			}
			part = true
			continue
		}
		switch {
		case m.says(k, "into", "onto"):
			if part {
				return true // "threaded a brass drain into the heater"
			}
		case m.says(k, "up", "to"):
			if part && m.is(k-1, cItem, "expansion_tank") && m.says(k-2, "a", "an") && m.text(i) != "got" {
				return true // "strapped an expansion tank to the wall"
			}
		case m.inList(k, listInFor):
			if m.is(k+1, cHint, "bit") || m.isNum(k+1) && (m.items[k+1].unit == "turn" || m.settingLike(k+1)) {
				return false // "screwed the regulator in a little", "put the prv on 62"
			}
			if m.text(i) == "got" && m.text(i-1) != "i" && m.text(i-1) != "we" && (m.is(k+1, cDeterminer, "") || m.is(k+1, cHint, "room")) {
				return false // "they got a softener in the garage"
			}
			if part && (m.text(k) != "on" || !m.timeWordAt(k+1) && !m.timeWordAt(k+2)) {
				return true
			}
		}
		if m.items[k].num != nil && m.items[k].unit != "gal" && !m.ordinal(k) {
			return false
		}
	}
	return false
}

// tankBySize tells whether item k is an expansion tank told by its size alone: "put a 2 gal in".
func (m *message) tankBySize(k int) bool {
	it := &m.items[k]
	return it.num != nil && it.unit == "gal" && it.value < 15 && m.partAt(k) == "expansion_tank" &&
		(m.says(k-1, "a", "an", "new", "una", "un") || strings.HasSuffix(m.text(k-1), " a new"))
}

// putsOne tells whether "put" at item i is told of a tank with nothing behind it: "put a 2 gal
// tank, 70 air".
func (m *message) putsOne(i, k int) bool {
	return m.says(i, "put", "i put", "hung") && !m.says(i-1, "they", "he", "she") && m.says(i+1, "a", "an") &&
		m.partAt(k) == "expansion_tank" && m.closes(k)
}

// newOneAt tells whether item k stands for a new part without its name: "the new one", "a
// brass one", "a new brass".
func (m *message) newOneAt(k int) bool {
	fresh := m.is(k-1, cPart, "new")
	if m.is(k, cHint, "newone") && (m.text(k) != "one" || fresh || m.is(k-1, cMaterial, "") || k > 0 && m.items[k-1].unit == "gal") {
		return true
	}
	return fresh && m.is(k, cMaterial, "")
}

var putNewWords = opener{lists: []list{listIsIn}}

// nameNew reads "ya quedó la reguladora nueva": it was put in on this visit.
func (m *message) nameNew(i int) bool {
	if !m.said(i, keyPutNew) {
		return false
	}
	for k := i + 1; k <= i+3 && k < len(m.items); k++ {
		if m.is(k, cItem, "prv") || m.is(k, cItem, "expansion_tank") {
			if !m.is(k+1, cPart, "new") {
				return false
			}
			m.addVerb(i, "replaced")
			return true
		}
	}
	return false
}

// newNear tells whether "new" stands beside a verb: "put a new reg in".
func (m *message) newNear(at int) bool {
	for k := at + 1; k < len(m.items) && k <= at+4; k++ {
		if m.is(k, cPart, "new") || m.is(k, cHint, "another") {
			return true
		}
		if m.items[k].mark {
			break
		}
	}
	return m.is(at-1, cPart, "new") || m.is(at-2, cPart, "new")
}

// anotherOf tells whether a verb puts in another thing of a kind, after the bad one was told of:
// "le pusimos otro tanque", "threw the bad tank out and screwed on another".
func (m *message) anotherOf(at int) bool {
	k := m.right(at, 3, false, func(k int) bool { return m.is(k, cHint, "another") })
	return k >= 0 && (m.text(k) != "another" ||
		m.left(at, 9, true, func(k int) bool { return m.isAny(k, cCond, "failed", "suspect") || m.is(k, cPart, "old") }) >= 0)
}

// noneBefore tells whether the message says that the house had no such thing: "there
// was none", of the thing named last, or "no tank before".
func (m *message) noneBefore(item string) bool {
	last := ""
	for k := range m.items {
		named, ok := m.val(k, cItem)
		beside := named == "heater" && m.is(k-1, cDeterminer, "") && m.says(k-2, "over", "above", "by", "near", "at", "beside", "on", "off")
		if ok && named != "gauge" && !m.taken(k) && !beside {
			last = m.itemCode(k, named)
		}
		switch {
		case m.inList(k, listHadNone):
			if last == item || last == "" {
				return true
			}
		case m.says(k, "no", "without", "sin"):
			if m.says(k+1, "hay", "tiene", "habia", "trae") {
				k++ // "no hay reguladora"
			}
			if v, ok := m.val(k+1, cItem); ok && m.itemCode(k+1, v) == item {
				return true
			}
		case last == item && (m.is(k, cAbsent, "") || m.firstHere(k)):
			return true
		}
	}
	return false
}

// firstHere tells whether the words from item k on say that a thing is the first of its kind in the house:
// "first one this house ever had", "first one here".
func (m *message) firstHere(k int) bool {
	return m.is(k, cHint, "firstone") && m.right(k, 6, true, func(j int) bool { return m.says(j, "ever", "here", "has had", "in this", "aqui") }) > 0
}

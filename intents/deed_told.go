package intents

import "strings"

// Lists of the lexicon that these rules know.
var (
	listSmallParts = listOf("small parts")
	listInto       = listOf("into")
	listOnceFirst  = listOf("once first")
	// nouns of a job that sets a regulator
	listAdjustments = listOf("adjustments")
)

// Deeds told by other words than a verb of work and its object: "gave the heater a good
// rinse", "flush on the heater's done", "hose bib quit dripping", "tee'd a tank into the
// cold line, first one they've had".

// tellsDeed adds the deed at item i, done unless it is denied or planned. It is true.
func (m *message) tellsDeed(i int, what, object string, objAt int) bool {
	v := m.addVerb(i, what)
	v.what, v.object, v.objAt = what, object, objAt
	v.done = !v.negated && !v.planned
	return true
}

// placesFirst reads a regulator or a tank that was put in where there was none: "strapped
// up an exp tank where there was just bare pipe", "gave the house the tank it never had",
// "new prv at 12 Elm, wasn't one there ever".
func (m *message) placesFirst(i int) bool {
	fresh := m.is(i, cPart, "new") && (i == m.sents[m.items[i].sent].from || m.items[i-1].mark || m.items[i-1].site)
	if !fresh && !m.is(i, cHint, "puts") && !m.is(i, cHint, "places") && !m.is(i, cHint, "given") && !m.workedWord(i) || m.is(i+1, cNeg, "") {
		return false
	}
	if fresh && (m.sents[m.items[i].sent].question ||
		m.right(i, 9, true, func(k int) bool { return m.is(k, cWill, "") || m.is(k, cHint, "needs") }) >= 0) {
		return false // "new prv needed, there isn't one"
	}
	k := m.right(i, 6, true, func(k int) bool { return m.items[k].mark || m.is(k, cItem, "") || m.is(k, cDid, "") })
	if k < 0 || m.is(k, cDid, "") || m.items[k].seg != m.items[i].seg {
		return false
	}
	o := m.partAt(k)
	return (o == "prv" || o == "expansion_tank") && m.noneYet(k) && m.tellsDeed(i, "installed", o, k)
}

// putsDrain reads a drain valve put on a heater, told with what it is made of: "put a
// brass drain valve on the heater, old one was plastic".
func (m *message) putsDrain(i int) bool {
	if !m.is(i, cHint, "puts") || !m.kinds.has(cMaterial) {
		return false
	}
	k := m.right(i, 4, false, func(k int) bool { return m.items[k].mark || m.is(k, cItem, "drain_valve") })
	return k >= 0 && m.is(k, cItem, "drain_valve") &&
		m.right(i, k-i, false, func(k int) bool { return m.is(k, cMaterial, "") }) >= 0 && m.tellsDeed(i, "replaced", "drain_valve", k)
}

// noneYet tells whether the sentence says that the house had no such thing as the part
// at item k before.
func (m *message) noneYet(k int) bool {
	first := func(j int) bool {
		t := m.text(j)
		return (t == "first" || t == "1st" || t == "primer" || t == "primera") && !m.is(j+1, cItem, "") && !m.inList(j+1, listOnceFirst)
	}
	if m.left(k, 3, true, func(j int) bool { return m.text(j) == "first" || m.text(j) == "primer" }) >= 0 {
		return true
	}
	for j := k + 1; j < m.sents[m.items[k].sent].to && j <= k+9; j++ {
		switch {
		case m.is(j, cItem, "heater"): // "went on the cold side of the heater, first one"
		case m.is(j, cItem, ""):
			return false
		case m.is(j, cAbsent, ""), m.is(j, cLacks, "") && m.closes(j), first(j):
			return true
		case m.text(j) == "never" && m.right(j, 2, true, func(n int) bool { return m.text(n) == "had" || m.text(n) == "one" }) >= 0:
			return true
		case m.text(j) == "where" && m.right(j, 5, true, func(n int) bool { return m.is(n, cHint, "nobody") || m.is(n, cHint, "barepipe") }) >= 0:
			return true
		}
	}
	return false
}

var givesAirGate = onlyWith(cPart, "air")

// givesAir reads air that was put into a tank, without a number or before it: "gave the
// exp tank some air", "le puse air al exp tank hasta 55".
func (m *message) givesAir(i int) bool {
	if m.shut(givesAirGate) {
		return false
	}
	if !m.is(i, cHint, "putsair") && !m.is(i, cHint, "given") && !m.is(i, cHint, "puts") || m.is(i, cDid, "charged") {
		return false
	}
	ours := func(k int) bool { return m.items[k].seg == m.items[i].seg }
	air := m.right(i, 5, false, func(k int) bool { return ours(k) && m.is(k, cPart, "air") && !m.is(k-1, cPart, "new") })
	tank := m.right(i, 8, false, func(k int) bool { return ours(k) && (m.is(k, cItem, "expansion_tank") || m.is(k, cItem, "tank")) })
	if air < 0 || tank < 0 || m.text(air) == "bladder" ||
		tank < air && air != tank+1 && !m.is(air-1, cHint, "bit") && m.text(air-1) != "more" {
		return false
	}
	return m.tellsDeed(i, "charged", "expansion_tank", tank)
}

// givesPart reads a new part that was given to a house: "gave them a brand new reg in place
// of the old one", "toilet quit running, I gave it a flapper".
func (m *message) givesPart(i int) bool {
	// "heater got a new drain valve"
	got := m.text(i) == "got" && (m.is(i-1, cItem, "heater") ||
		m.says(i-1, "house", "place", "home") && (i-1 == m.sents[m.items[i].sent].from || m.says(i-2, "the", "this", ",")))
	if t := m.text(i); t != "gave" && t != "gave it" && !strings.HasSuffix(t, " gave") && t != "le di" && !got {
		return false
	}
	if k := m.oneOfThem(i + 1); k > 0 && !got {
		if o := m.lackedBefore(k); o != "" {
			return m.tellsDeed(i, "installed", o, k) // "they had no tank so I gave em one, 2 gal"
		}
	}
	fresh := false
	for k := i + 1; k <= i+6 && k < len(m.items) && !m.items[k].mark; k++ {
		if fresh = fresh || m.is(k, cPart, "new"); m.is(k, cFitting, "sure") {
			return m.tellsDeed(i, "mended", "leak", k)
		}
		if m.items[k].point == "heater_drain" && fresh {
			return m.tellsDeed(i, "replaced", "drain_valve", k) // "gave it a new drain valve"
		}
		if m.partAt(k) == "expansion_tank" && m.says(k-1, "a", "an") && !got {
			return m.tellsDeed(i, "installed", "expansion_tank", k) // "gave the heater an expansion tank"
		}
		if o := m.partAt(k); o != "" && fresh && !m.is(k+1, cHint, "turned") && m.text(k+1) != "setting" {
			return m.tellsDeed(i, "replaced", o, k)
		}
	}
	return false
}

// oneOfThem returns the item at which "one" or a size stands for the thing given to somebody from item k on:
// "em one", "them a 4.4"; -1 for none.
func (m *message) oneOfThem(k int) int {
	for m.says(k, "em", "them", "him", "her", "it", "the", "house") || m.inList(k, listPeople) {
		k++
	}
	if m.text(k) == "one" {
		return k
	}
	if m.is(k, cDeterminer, "") && m.isNum(k+1) && (m.items[k+1].unit == "gal" || m.items[k+1].decimal()) {
		return k + 1
	}
	return -1
}

var givesFlushGate = onlyWith(cHint, "flushnoun")

// givesFlush reads a flush that was given to the heater: "gave the hot water tank a good
// rinse out", "le di flush al boiler", "se le dio su lavada al calentador".
func (m *message) givesFlush(i int) bool {
	if m.shut(givesFlushGate) {
		return false
	}
	if !m.is(i, cHint, "given") && !m.is(i, cHint, "givesflush") {
		return false
	}
	ours := func(k int) bool { return m.items[k].seg == m.items[i].seg }
	flush := m.right(i, 9, true, func(k int) bool { return ours(k) && m.is(k, cHint, "flushnoun") })
	heater := m.right(i, 9, true, func(k int) bool { return ours(k) && m.is(k, cItem, "heater") })
	if flush < 0 || m.text(i+1) == "out" && m.text(flush-1) == "to" || heater < 0 && !(m.is(i+1, cHint, "goes") && m.carriedTo(i) == "heater") ||
		m.right(i, 9, true, func(k int) bool { return ours(k) && m.is(k, cNeg, "") }) >= 0 {
		return false
	}
	return m.tellsDeed(i, "flushed", "heater", heater)
}

// nounDone reads a job told by its noun and a word that it is done: "flush job on the
// heater's done", "the annual flush of the water heater was carried out", "recharge of
// the tank complete".
func (m *message) nounDone(i int) bool {
	what, ok := m.val(i, cBase)
	if !ok || m.sents[m.items[i].sent].question || m.is(i, cDid, "") && m.is(i-1, cHad, "") {
		return false
	}
	item := -1
	for k := i + 1; k < m.sents[m.items[i].sent].to && k <= i+9 && !m.items[k].mark; k++ {
		switch {
		case m.is(k, cNeg, ""), m.is(k, cWill, ""):
			return false
		case item < 0 && m.is(k, cItem, ""):
			if item = k; m.text(k-1) == "on" || m.text(k-1) == "of" || m.is(k-1, cDeterminer, "") && m.says(k-2, "on", "of", "for") {
				continue
			}
			return false
		case m.is(k, cHint, "finished"), m.is(k, cHint, "carriedout"):
			o := m.partAt(item)
			return item >= 0 && m.left(i, 5, true,
				func(j int) bool { return m.is(j, cNeg, "") || m.is(j, cWill, "") || m.is(j, cHint, "needs") }) < 0 && m.tellsDeed(i, what, o, item)
		}
	}
	return false
}

var stopsLeakGate = onlyWith(cSym, "leak")

// stopsLeak reads a leak that was made to stop: "hose bib quit dripping" beside a part
// that was worked on, "got the shower to stop dripping", "the leak under the sink has been
// taken care of".
func (m *message) stopsLeak(i int) bool {
	if m.shut(stopsLeakGate) {
		return false
	}
	if !m.is(i, cSym, "leak") || m.is(i, cNeg, "") {
		return false
	}
	over := m.right(i, 7, true, func(k int) bool { return m.items[k].seg == m.items[i].seg && m.is(k, cHint, "over") })
	denied := func(k int) bool { return m.is(k, cNeg, "") || m.is(k, cWill, "") && k < over }
	if over >= 0 && m.right(i, over-i, true, denied) < 0 && m.left(i, 4, true, func(k int) bool { return m.is(k, cNeg, "") }) < 0 {
		return m.tellsDeed(i, "mended", "leak", i) // "the leak at the union is taken care of"
	}
	if m.newFitting(i) || m.putOn(i) || m.partThenDry(i) {
		return m.tellsDeed(i, "mended", "leak", i)
	}
	if m.underJob(i) && m.isMark(i-1, ":", ",", "-", "\n", "/") && !m.sents[m.items[i].sent].question {
		return m.tellsDeed(i, "mended", "leak", i) // "Done: leak at tub spout, heater flush"
	}
	stop := m.left(i, 3, true, func(k int) bool { return m.is(k, cHint, "stops") && m.items[k].seg == m.items[i].seg })
	if stop < 0 {
		return false
	}
	if m.left(stop, 5, true, func(k int) bool { return m.text(k) == "got" }) >= 0 {
		return m.tellsDeed(i, "mended", "leak", i)
	}
	for k := m.sents[m.items[i].sent].from; k < i; k++ {
		if m.items[k].seg == m.items[i].seg || !m.workedWord(k) && !m.is(k, cDid, "") {
			continue
		}
		fitting := func(j int) bool { return m.is(j, cFitting, "") && m.items[j].seg == m.items[k].seg }
		if m.right(k, 4, true, fitting) >= 0 {
			return m.tellsDeed(i, "mended", "leak", i)
		}
	}
	return false
}

// freshInside reads new inner parts of a regulator told without a verb: "fresh spring and
// seat in the pressure reducer, reused the body", "repair kit into the PRV".
func (m *message) freshInside(i int) bool {
	if !m.is(i, cPart, "new") && !m.is(i, cHint, "kits") ||
		i > m.sents[m.items[i].sent].from && !m.items[i-1].mark && !m.items[i-1].site && m.text(i-1) != "and" {
		return false
	}
	in := m.is(i, cHint, "kits")
	for k := i + 1; k < m.sents[m.items[i].sent].to && k <= i+8; k++ {
		switch {
		case m.is(k, cHint, "inside") && m.items[k].point == "" && !m.is(k, cItem, ""):
			in = true
		case in && (m.is(k, cItem, "prv") || strings.HasPrefix(m.text(k), "into the ")):
			return m.right(k, 4, true, func(j int) bool { return m.is(j, cHint, "ordered") }) < 0 && m.tellsDeed(i, "rebuilt", "prv", k)
		case in && m.text(k) == "it" && m.carriedTo(i) == "prv":
			return m.tellsDeed(i, "rebuilt", "prv", k) // "pulled the prv bonnet, new spring and disc in it"
		case m.text(k) == "and" || m.text(k) == "," || m.text(k) == "&" || m.is(k, cDeterminer, ""):
		case in && m.inList(k, listInto):
		default:
			return false
		}
	}
	return false
}

// putOn tells whether something was put on the leak at item i: "put a clamp on the leak",
// "le puse una abrazadera a la fuga".
func (m *message) putOn(i int) bool {
	on := m.left(i, 3, true, func(k int) bool {
		return m.says(k, "on", "over", "around", "a", "en") && m.items[k].seg == m.items[i].seg
	})
	if on < 0 || m.sents[m.items[i].sent].question || m.planish(m.items[i].sent) {
		return false
	}
	put := m.left(on, 5, true, func(k int) bool {
		return (m.is(k, cHint, "puts") || m.is(k, cHint, "places") || m.is(k, cDid, "installed")) && m.items[k].seg == m.items[i].seg
	})
	return put >= 0 && on > put+1 && m.left(on, on-put, true, func(k int) bool { return m.is(k, cItem, "") }) < 0
}

// newFitting tells whether the leak at item i is that of a fitting which a new one took the
// place of: "new hose bib out front, old one leaked", "new supply line, was dripping".
func (m *message) newFitting(i int) bool {
	old := func(k int) bool { return m.is(k, cPart, "old") || m.is(k, cBefore, "") }
	still := func(k int) bool { return m.is(k, cNeg, "") || m.text(k) == "still" }
	if m.left(i, 3, true, old) < 0 || m.left(i, 3, true, still) >= 0 {
		return false
	}
	first := m.sents[m.items[i].sent].from
	for first < i && m.items[first].mark {
		first++
	}
	if !m.is(first, cPart, "new") || m.items[first].seg == m.items[i].seg || m.moment(first, m.sents[m.items[i].sent].to) {
		return false
	}
	return m.right(first, 3, true, func(k int) bool { return m.is(k, cFitting, "") || m.is(k, cBibb, "") }) >= 0
}

// jobAsTime reads a job that only times of readings tell, one before and one after it:
// "prior to the prv swap 108 front, post swap 62 front".
func (m *message) jobAsTime(i int) bool {
	toCome := func(k int) bool { return m.is(k, cWill, "") && !m.turnedBack(k) }
	if s := m.items[i].sent; m.sents[s].question || m.anyIn(s, toCome, setOf(cWill)) {
		return false
	}
	what, item, time := m.jobNoun(i)
	if item < 0 {
		what, item, time = m.jobOfVerb(i)
	}
	switch {
	case item < 0 || m.isNum(time-1) && unitDays(m.items[time-1].unit) > 0 || m.is(time-1, cUnit, ""):
		return false // "2 weeks after the reg swap"
	case m.is(time, cAfter, "") && m.numberIn(m.items[i].sent):
	case !m.is(time, cBefore, "") || !m.afterToo(i):
		return false
	}
	return m.tellsDeed(i, what, m.partAt(item), item)
}

// jobNoun reads a job named by its part and a noun behind a word of time, "after the prv swap", and
// returns the verb of the job, the part and the word of time; part -1 for none.
func (m *message) jobNoun(i int) (what string, item, time int) {
	if item = i - 1; !m.is(i, cHint, "job") && !m.is(i, cHint, "jobnoun") || !m.is(item, cItem, "") {
		return "", -1, -1
	}
	for time = item - 1; m.is(time, cDeterminer, "") || m.is(time, cPart, "") || m.is(time, cHint, "possessive"); {
		time--
	}
	if !m.placesTime(time) {
		return "", -1, -1
	}
	if m.inList(i, listAdjustments) {
		return "set", item, time
	}
	if what, _ = m.val(i, cBase); what == "" || what == "fixed" {
		what = "replaced"
	}
	return what, item, time
}

// jobOfVerb reads a job told by a verb without tense behind "before", "kitchen 90 before turning the prv
// down", and returns what jobNoun does.
func (m *message) jobOfVerb(i int) (what string, item, time int) {
	what, ok := m.val(i, cBase)
	if first, _, _ := strings.Cut(m.text(i), " "); !ok || what == "charged" || !strings.HasSuffix(first, "ing") || !m.is(i-1, cBefore, "") {
		return "", -1, -1
	}
	item = m.right(i, 4, false, func(k int) bool { return m.items[k].mark || m.is(k, cItem, "") })
	if item < 0 || m.items[item].mark {
		return "", -1, -1
	}
	return what, item, i - 1
}

// numberIn tells whether sentence s holds a number that may be a pressure.
func (m *message) numberIn(s int) bool {
	for k := m.sents[s].from; k < m.sents[s].to; k++ {
		if it := &m.items[k]; it.num != nil && (it.unit == "" || it.unit == "psi" || it.unit == "bar") && !it.num.time {
			return true
		}
	}
	return false
}

// afterToo tells whether the time after the job at item i is told with a number, and no other work between.
func (m *message) afterToo(i int) bool {
	for k := i + 1; k < len(m.items); k++ {
		if m.is(k, cDid, "") && !m.is(k, cAfter, "") {
			return false // told in words of its own
		}
		number := func(j int) bool { return m.items[j].num != nil }
		if m.is(k, cAfter, "") && !m.is(k, cNow, "") && (m.right(k, 8, true, number) >= 0 || m.left(k, 2, true, number) >= 0) {
			return true
		}
	}
	return false
}

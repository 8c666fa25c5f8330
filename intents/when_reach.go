package intents

import (
	"slices"

	"lazyhand/assess"
)

// Lists of the lexicon that these rules know.
var (
	listOfAll       = listOf("of all")
	listWeakTimes   = listOf("weak times")
	listListTimes   = listOf("list times")
	listTimeApplies = listOf("time applies")
	listToldToo     = listOf("told too")
	listPlainBefore = listOf("plain before")
	listPlainAfter  = listOf("plain after")
	listShowsStill  = listOf("shows still")
)

// toldWhen is a word that places readings before or after work.
type toldWhen struct {
	at   int
	when assess.When
}

// whens places readings before and after the work of the message.
func (m *message) whens() {
	worked := len(m.work) > 0 || m.foundLeft || m.changed() || m.kinds.has(cBefore) && m.kinds.has(cAfter) && m.toldAround()
	var all []toldWhen
	for i := range m.items {
		if !m.begins(i, keyTime) {
			continue
		}
		if w := m.timeWord(i, worked); w != "" && m.whenApplies(i) {
			all = append(all, toldWhen{i, w})
		}
	}
	m.inTurn(worked)
	m.pairsInTurn(worked)
	defer m.aroundTheOpening()
	defer m.whenInRow()
	if worked {
		m.wentTo()
		defer m.wentByDeed()
		defer m.sinceTheDeed()
		defer m.wasAndIs()
	}
	all = slices.DeleteFunc(all, m.whenInBrackets)
	if len(all) == 0 {
		return
	}
	for k := range m.readings {
		m.nearestWhen(k, all)
	}
	// said first, it covers the sentence; said of a whole line, the sentence too
	for _, a := range all {
		s := m.items[a.at].sent
		switch lo, hi := m.readingsOf(s); {
		case lo >= hi:
			if m.headOfTime(a.at, s) {
				m.whenBelow(a, s, all)
			}
		case (m.says(a.at, "as left", "as found") || m.leadsTimes(a, all)) && a.at > m.readings[lo].at && a.at < m.readings[hi-1].at:
			m.whenOnward(a, lo, hi)
		case m.weakTime(a.at) && !m.closesList(a.at, lo, hi) && !m.headed(a.at, m.readings[lo].at) &&
			!(a.at == m.sents[s].from && m.is(a.at, cNow, "")):
			m.whenJoined(a, lo, hi)
		case a.at < m.readings[lo].at || m.closesList(a.at, lo, hi):
			m.whenOfSentence(a, lo, hi, all)
		default:
			m.whenJoined(a, lo, hi)
		}
	}
}

// toldAround tells whether a pressure is told to be that before and another that after, so that work
// lies between them though none is told: "before: rear 95, after: rear 58".
func (m *message) toldAround() bool {
	before, after := false, false
	for i := range m.items {
		told := m.items[i].n == 1 && m.numberBeside(i)
		before = before || told && m.inList(i, listPlainBefore)
		after = after || told && m.inList(i, listPlainAfter)
	}
	return before && after
}

// numberBeside tells whether a pressure stands right before item i, or behind it with no more than a
// mark and a test point between.
func (m *message) numberBeside(i int) bool {
	if m.numIs(i-1, roleReading) && m.closes(i) {
		return true
	}
	k := i + 1
	for m.isMark(k, ",") && m.meets(k+1, stateClasses) {
		k += 2 // "after, nothing running: 58"
	}
	if m.isMark(k, ":", "=", "-") {
		k++
	}
	for k < len(m.items) && (m.items[k].point != "" || m.items[k].role == roleTaken) {
		k++
	}
	return m.numIs(k, roleReading)
}

// whenInBrackets gives the time that stands alone in brackets to the reading right before them, and to
// no other: "rear bib 60 (before) -> 75 (after)".
func (m *message) whenInBrackets(a toldWhen) bool {
	if !m.isMark(a.at-1, "(", "[") || !m.isMark(a.at+1, ")", "]") {
		return false
	}
	told := a.at - 2
	if m.isAny(told, cUnit, "") {
		told-- // "60 psi (before)"
	}
	for k := range m.readings {
		if m.readings[k].at == told {
			m.readings[k].When = a.when
			return true
		}
	}
	return false
}

// nearestWhen gives a reading the time of the word of time that is nearest to it.
func (m *message) nearestWhen(k int, all []toldWhen) {
	r := &m.readings[k]
	best := r.nearest(len(all), func(j int) int {
		if all[j].at > r.at && m.leadsTimes(all[j], all) {
			return -1
		}
		return all[j].at
	})
	if best < 0 || r.When != "" || r.Peak && m.pastTense(all[best].at) {
		return
	}
	if m.pastTense(all[best].at) {
		// "as left the shower was at 57": a plain "was" gives way
		for j := range all {
			if m.coversAsWell(all[j].at, r) {
				best = j
			}
		}
	}
	r.When = all[best].when
	m.chainBack(k, all[best].at)
}

// leadsTimes tells whether a word of time goes with what follows it and not with the reading before it: a
// colon says so, or the other time, which its sentence began with: "before front 95 rear 94 after front 60".
func (m *message) leadsTimes(a toldWhen, all []toldWhen) bool {
	if m.isMark(a.at+1, ":", "=") {
		return true
	}
	first := m.firstOf(m.items[a.at].sent)
	return m.items[a.at].n == 1 && m.items[min(a.at+1, len(m.items)-1)].point != "" && slices.ContainsFunc(all, func(b toldWhen) bool {
		return b.at == first && b.when != a.when && m.items[min(b.at+1, len(m.items)-1)].point != "" && !m.pastTense(b.at) && !m.is(b.at, cNow, "")
	})
}

// whenJoined gives a time to what is joined to a reading of that time as well: "now 60 in
// the kitchen and 58 at the tub".
func (m *message) whenJoined(a toldWhen, lo, hi int) {
	for k := lo + 1; k < hi; k++ {
		last, r := &m.readings[k-1], &m.readings[k]
		if last.When != a.when || r.When != "" {
			continue
		}
		if a.at < last.at && m.sameTime(a.at, last.at, r.at) || otherState(last, r) && !m.workedBetween(last.at, r.at) {
			r.When = a.when
		}
	}
}

// otherState tells whether two readings of one tap are set off only by what the heater or the water did:
// "60 afterwards with the heater firing and 58 with it idle".
func otherState(a, b *reading) bool {
	return samePlace(a, b) && (a.Heater != "" && b.Heater != "" && a.Heater != b.Heater || a.Flow != "" && b.Flow != "" && a.Flow != b.Flow)
}

// whenOnward gives a time to the readings behind it, up to the next: "as found: kit 96,
// tub 95 / swapped reg / as left: kit 58, tub 58".
func (m *message) whenOnward(a toldWhen, lo, hi int) {
	for k := lo; k < hi; k++ {
		switch r := &m.readings[k]; {
		case r.at < a.at:
		case r.When == "":
			r.When = a.when
		case r.When != a.when:
			return
		}
	}
}

// whenOfSentence gives a time to the readings of its sentence that no other stands before.
func (m *message) whenOfSentence(a toldWhen, lo, hi int, all []toldWhen) {
	for k := lo; k < hi; k++ {
		r := &m.readings[k]
		if r.When != "" || a.when == assess.Before && m.workedBetween(a.at, r.at) {
			continue
		}
		if !slices.ContainsFunc(all, func(b toldWhen) bool {
			return b.when != a.when && b.at > a.at && b.at < r.at && !m.pastTense(b.at)
		}) {
			r.When = a.when
		}
	}
}

// headOfTime tells whether the word of time at an item heads what follows: "AS FOUND",
// "Before:", "al llegar".
func (m *message) headOfTime(at, s int) bool {
	se := &m.sents[s]
	short := se.to-se.from <= 5
	for k := se.from; k < se.to; k++ {
		if m.numIs(k, roleYear, roleAge, roleSize, roleTemp, roleSetting, roleCharge, roleTo) && !m.endsColon(s) {
			return false // "thermostat found at 130"
		}
	}
	if m.weakTime(at) && !short || at-se.from > 6 {
		return false
	}
	return short || m.endsColon(s) || m.heading(s)
}

// whenBelow gives a time to the readings under its head, up to the next word of time or
// work.
func (m *message) whenBelow(a toldWhen, s int, all []toldWhen) {
	for k := range m.readings {
		r := &m.readings[k]
		if r.sent <= s || r.When != "" {
			continue
		}
		if m.workedBetween(a.at, r.at) || slices.ContainsFunc(all, func(b toldWhen) bool { return b.at > a.at && b.at < r.at }) {
			return
		}
		r.When = a.when
	}
}

// coversAsWell tells whether a word of time at item i says when a reading was taken that a
// plain "was" stands nearer to.
func (m *message) coversAsWell(i int, r *reading) bool {
	if m.pastTense(i) || m.is(i, cNow, "") || i >= r.to {
		return false
	}
	if i < r.from {
		other := func(k int) bool { return m.placesTime(k) && !m.pastTense(k) }
		return i == m.firstOf(r.sent) && !m.workedBetween(i, r.at) && m.right(i, r.at-i-1, true, other) < 0 // "after that the tub was 59 and the front was 53"
	}
	return m.items[i].seg == m.items[r.at].seg || i == m.sents[r.sent].from || i < r.at && m.inList(i, listPlainAfter)
}

// sameTime tells whether the time told at item at goes on from one reading to the next: both
// are joined, or stand in a list that it opens.
func (m *message) sameTime(at, from, to int) bool {
	return !(m.is(at, cBefore, "") && m.showsStill(to)) && !m.workedBetween(from, to) && (m.chained(from, to) || m.opens(at) && m.plainList(from, to))
}

// showsStill tells whether the number at i is said to be there as this is written: "was 104 and is 61".
func (m *message) showsStill(i int) bool { return m.inList(i-1, listShowsStill) }

// wasAndIs gives a pressure that is there still, behind one of its tap that was there before the work, the
// time after it: "rear was 104 and is 61".
func (m *message) wasAndIs() {
	for k := 1; k < len(m.readings); k++ {
		if a, b := &m.readings[k-1], &m.readings[k]; a.When == assess.Before && b.When == "" && a.sent == b.sent && samePlace(a, b) && m.showsStill(b.at) {
			b.When = assess.After
		}
	}
}

var alsoThenGate = gateOf(opener{lists: []list{listToldToo}, words: []string{"then"}})

// alsoThen gives a reading with "too" behind it the time of the one before: "laundry 60
// afterwards, 60 kitchen too".
func (m *message) alsoThen() {
	if m.shut(alsoThenGate) {
		return
	}
	for k := range m.readings {
		if r := &m.readings[k]; r.When == "" && m.thenShowed(k) {
			r.When = assess.After // "replaced the prv, then the kitchen showed 61"
		}
	}
	for k := 1; k < len(m.readings); k++ {
		a, b := &m.readings[k-1], &m.readings[k]
		if b.When != "" || a.When == "" || a.sent != b.sent {
			continue
		}
		if too := m.right(b.at, 4, false,
			func(j int) bool { return m.inList(j, listToldToo) }); too > 0 &&
			m.separators(b.at, too) == 0 {
			b.When = a.When
		}
	}
}

// anyFoundBefore tells whether a reading is told of before the work.
func (m *message) anyFoundBefore() bool {
	return slices.ContainsFunc(m.readings, func(r reading) bool { return r.When == assess.Before })
}

// thenShowed tells whether reading k is told with "then" right behind the work of its sentence,
// or joined to one that is: "replaced the prv, then the kitchen showed 61 and the tub 60".
func (m *message) thenShowed(k int) bool {
	r := &m.readings[k]
	if k > 0 && m.readings[k-1].sent == r.sent && m.readings[k-1].When == assess.After && m.thenShowed(k-1) {
		return m.separators(m.readings[k-1].at, r.at) == 0
	}
	then := m.left(r.at, 6, false, func(j int) bool { return m.text(j) == "then" })
	if then < 0 {
		return false
	}
	for _, w := range m.work {
		near := m.items[w.at].sent == r.sent ||
			m.items[w.at].sent == r.sent-1 && (m.isMark(m.sents[r.sent].from-1, ";") || then == m.firstOf(r.sent) && m.anyFoundBefore())
		if w.at < then && near && w.Action != assess.ShutOff && w.Action != assess.RepairedLeak &&
			(k == 0 || m.readings[k-1].at < w.at) {
			return true
		}
	}
	return false
}

// workedBetween tells whether work stands between two items.
func (m *message) workedBetween(a, b int) bool {
	for _, w := range m.work {
		if w.at > a && w.at < b {
			return true
		}
	}
	return false
}

// endsColon tells whether sentence s ends with a colon, as a head does.
func (m *message) endsColon(s int) bool {
	se := &m.sents[s]
	for k := se.to - 1; k >= se.from; k-- {
		if m.text(k) == "\n" {
			continue
		}
		return m.text(k) == ":"
	}
	return false
}

// weakTime are words that place only the number beside them.
func (m *message) weakTime(i int) bool {
	if m.inList(i, listWeakTimes) {
		return true
	}
	return m.is(i, cNow, "")
}

// closesList tells whether a time word after a list speaks of all of it: "5.8
// front and 5.7 in the kitchen when I came", "142 front, 95 rear before".
func (m *message) closesList(at, lo, hi int) bool {
	if at < m.readings[hi-1].at {
		return false
	}
	if k := m.left(at, 3, false, func(k int) bool {
		return m.inList(k, listOfAll)
	}); k >= 0 && m.items[k].seg == m.items[at].seg {
		return true // "meter 116, kitchen 57, all of that after it went in"
	}
	switch {
	case m.inList(at, listListTimes):
		return true
	case m.says(at, "before", "after", "antes", "despues", "since", "since then", "ever since") || m.is(at, cAfter, "") && m.afterWork(at):
		// "shower 58, kit 58 after", "ktchn 60 rr bb 61 aftr i ws dn"
		for k := lo + 1; k < hi; k++ {
			if m.readings[k-1].When != "" || !m.plainList(m.readings[k-1].at, m.readings[k].at) {
				return false
			}
		}
		return m.isMark(at+1, "\n", ".") || at+1 == len(m.items) || m.touched(at)
	}
	return m.touched(at)
}

// stateNow are the classes of what a clause may say that something is now, which is no pressure.
var stateNow = setOf(cDry, cSym, cCond, cDischarge)

// whenApplies tells whether a time word at i speaks of readings at all: "now" of
// "no hammer now", "was" of "pilot was out" do not.
func (m *message) whenApplies(i int) bool {
	t := m.text(i)
	lo, hi := m.readingsOf(m.items[i].sent)
	if m.symptomInClause(i) && !m.readIn(m.items[i].sent, m.items[i].seg) {
		return false // "the T&P was weeping when I walked in, 96 with the burner lit"
	}
	if m.is(i, cNow, "") && m.closes(i) && m.meets(i-1, stateNow) && !m.isNum(i-1) {
		return false // "front bibb 57 t&p dry now"
	}
	if !m.weakTime(i) || t == "left" && m.isMark(i-1, "(") && m.isMark(i+1, ")") && m.isNum(i-2) {
		// "after I cranked the prv down", "before i closed anything"
		return true
	}
	if m.pastTense(i) && m.storyTold(i) {
		return false
	}
	if t == "was" || t == "was at" || t == "were" || t == "estaba" || t == "it was" || t == "tenia" || t == "traia" || t == "had been" || t == "estaban" {
		// beside a number
		for k := i + 1; k <= i+4 && k < len(m.items); k++ {
			if m.items[k].num != nil && m.items[k].role == roleReading {
				return true
			}
			if m.inList(k, listTimeApplies) {
				continue
			}
			if m.is(k, cStatic, "") || m.items[k].point != "" {
				continue
			}
			return false
		}
		return false
	}
	if m.is(i, cNow, "") && (m.afterPeak(i, lo, hi) || m.beforePlan(i)) {
		return false // "lazy hand 142 overnight, now 62" sets the needle off against its maximum
	}
	if m.is(i, cNow, "") || t == "left" || t == "found" || t == "now" {
		near := false
		for k := lo; k < hi; k++ {
			if abs(m.readings[k].at-i) <= 5 && m.seps(i, m.readings[k].at) == 0 {
				near = true
			}
		}
		if !near {
			return false
		}
		// "no hammer now"
		for k := i - 1; k >= 0 && k >= i-3; k-- {
			if m.is(k, cSym, "") && m.items[k].sent == m.items[i].sent && !m.isNum(i+1) {
				return false
			}
			if m.items[k].num != nil || m.items[k].mark {
				break
			}
		}
	}
	return true
}

// readIn tells whether clause seg of sentence s tells a reading.
func (m *message) readIn(s, seg int) bool {
	lo, hi := m.readingsOf(s)
	return slices.ContainsFunc(m.readings[min(lo, hi):hi], func(r reading) bool { return m.items[r.at].seg == seg })
}

// storyTold tells whether a plain "was" at item i goes on with a story that has told of the time
// before the work and of the work already: "before I touched it the kitchen was 99. Swapped the
// reg. After that the kitchen was 60 and the tub was 61".
func (m *message) storyTold(i int) bool {
	for k := range m.readings {
		r := &m.readings[k]
		if r.at > i {
			break
		}
		if m.workedBetween(r.at, i) {
			return m.left(r.at, 12, true, func(j int) bool { return m.is(j, cBefore, "") && !m.pastTense(j) }) >= 0
		}
	}
	// "replaced the prv. Laundry's 60 now. Street was 120": the street's has not changed
	street := func(k int) bool { return m.items[k].point == string(assess.Street) }
	return m.workedBetween(-1, i) && m.left(i, 3, false, street) >= 0 &&
		m.left(i, 24, true, func(j int) bool { return m.is(j, cNow, "") || m.is(j, cAfter, "") }) >= 0
}

// afterPeak tells whether the reading of lo..hi last told before item i is the highest value of
// the gauge, with no work between.
func (m *message) afterPeak(i, lo, hi int) bool {
	for k := hi - 1; k >= lo; k-- {
		if r := &m.readings[k]; r.at < i && r.Peak {
			return i-r.at <= 8 && !m.workedBetween(r.at, i)
		}
	}
	return false
}

// beforePlan tells whether the "now" at item i is set off against what is to be done later, and no work
// is told before it in its sentence: "mañana le cambio el regulador, hoy trae 101".
func (m *message) beforePlan(i int) bool {
	s := &m.sents[m.items[i].sent]
	planned := slices.ContainsFunc(m.plans, func(p planned) bool { return p.at >= s.from && p.at < i })
	return planned && !m.workedBetween(s.from-1, i)
}

// seps counts the marks between two items, whichever stands first.
func (m *message) seps(a, b int) int {
	if a > b {
		a, b = b, a
	}
	return m.separators(a, b)
}

// chained tells whether two readings are joined by "and", or stand in a row: "kitchen
// 61 shower 60".
func (m *message) chained(a, b int) bool {
	row := b > a+1
	for k := a + 1; k < b; k++ {
		switch m.text(k) {
		case "and", "y":
			return true
		}
		row = row && m.items[k].point != ""
	}
	return row
}

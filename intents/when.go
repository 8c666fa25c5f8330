package intents

import (
	"strings"

	"lazyhand/assess"
)

// Lists of the lexicon that these rules know.
var (
	listPastBe      = listOf("past be")
	listBeforeShort = listOf("before short")
	listLeadsTo     = listOf("leads to")
	listInPlace     = listOf("in place now")
	listComesFrom   = listOf("comes from")
)

// pastTense tells whether item i is a plain "was", which tells a story as often as
// a state before work.
func (m *message) pastTense(i int) bool {
	return m.inList(i, listPastBe)
}

// chainBack gives readings joined by "and" to the one that a time word behind them
// is told of: "kitchen 66 and tub 65 before I started".
func (m *message) chainBack(k, at int) {
	if at < m.readings[k].at || m.pastTense(at) {
		return
	}
	for ; k > 0 && m.readings[k-1].sent == m.readings[k].sent && m.readings[k-1].When == "" &&
		m.chained(m.readings[k-1].at, m.readings[k].at) &&
		m.items[m.readings[k-1].at].seg == m.items[m.readings[k].at].seg; k-- {
		m.readings[k-1].When = m.readings[k].When
	}
}

// wentTo reads two pressures of one point around the work of the message: "new prv
// in, front 101 to 60".
func (m *message) wentTo() {
	for k := 1; k < len(m.readings); k++ {
		a, b := &m.readings[k-1], &m.readings[k]
		if a.sent != b.sent || !samePlace(a, b) || a.When != "" || b.When != "" {
			continue
		}
		if m.text(b.at-1) == "from" && b.at == a.at+2 && b.PSI > a.PSI && a.Flow == "" && b.Flow == "" &&
			(m.is(a.at-1, cHint, "moves") || m.is(a.at-1, cAfter, "")) || m.nowFrom(a.at) == b.at && a.Flow == b.Flow && a.Heater == b.Heater {
			a.When, b.When = assess.After, assess.Before // "laundry came down to sixty from ninety seven"
			continue
		}
		if !m.leadsTo(a.at, b.at) {
			continue
		}
		moves := func(k int) bool { return m.is(k, cHint, "moves") }
		if a.Flow == "" && b.Flow == "" && a.Heater == b.Heater && (a.PSI > b.PSI || m.left(a.at, 3, false, moves) >= 0) {
			a.When, b.When = assess.Before, assess.After
		}
	}
}

// nowFrom returns the number that the one at i is said to have come from, with no more between than where
// and when it is: "66 at the tub now, down from 95"; -1 for none.
func (m *message) nowFrom(i int) int {
	from := m.right(i, 8, false, func(k int) bool { return m.inList(k, listComesFrom) })
	if from < 0 || !m.isNum(from+1) {
		return -1
	}
	for k := i + 1; k < from; k++ {
		if it := &m.items[k]; it.mark && it.text != "," || it.num != nil || !it.mark && it.point == "" && it.role != roleTaken &&
			!m.meets(k, setOf(cNow, cDeterminer, cUnit)) && !m.inList(k, listReadAt) && !m.says(k, "down", "up", "all", "way") {
			return -1
		}
	}
	return from + 1
}

// samePlace tells whether two readings were taken at one test point, or both at none told.
func samePlace(a, b *reading) bool {
	return len(a.points) == len(b.points) && (len(a.points) == 0 || a.points[0] == b.points[0])
}

// listAffirms are words that lead to a number told before.
var listAffirms = listOf("affirms")

// saidTwice drops a reading that is only said again: "six seven, that's sixty seven",
// "sorry, heater NOT firing, 92", "no wait, 80. 80 front".
func (m *message) saidTwice() {
	kept := m.readings[:0]
	for k := range m.readings {
		r := m.readings[k]
		if n := len(kept); n > 0 && m.sameAgain(&kept[n-1], &r) {
			kept[n-1].inherit = false
			continue
		}
		kept = append(kept, r)
	}
	m.readings = kept
}

// sameAgain tells whether reading b only says again what reading a said.
func (m *message) sameAgain(a, b *reading) bool {
	if b.at == a.at+1 && a.PSI == b.PSI && m.items[a.at].num.words && m.items[b.at].num.words {
		return true // "tub is only nineteen one nine"
	}
	if a.PSI == b.PSI && m.spelledAgain(a.at, b.at) && (len(a.points) == 0 || len(b.points) == 0 || samePlace(a, b)) {
		if len(a.points) == 0 {
			a.points = b.points
		}
		return true
	}
	if m.hasAsk(AskCorrect) && a.Reading == b.Reading && samePlace(a, b) && b.sent <= a.sent+1 {
		return true // "I typed 68 for the kitchen, the paper says 86. Kitchen is 86."
	}
	if a.Reading != b.Reading || !samePlace(a, b) || b.sent > a.sent+1 || !a.inherit && !b.inherit && !m.items[a.at].takesOver {
		return false
	}
	marks := true
	for k := a.at + 1; k < b.at; k++ {
		if t := m.text(k); m.is(k, cRetract, "") || t == "thats" || t == "that is" || t == "es decir" || t == "o sea" {
			return true
		}
		marks = marks && m.items[k].mark
	}
	return marks && m.items[a.at].takesOver
}

// numberAgain tells whether the number at i, told of no place of its own, only affirms the reading
// before it: "side bibb 99 no wait 79, it's 79", "66 in the kitchen, yes 66".
func (m *message) numberAgain(i int) bool {
	if !m.inList(i-1, listAffirms) {
		return false
	}
	k := i - 1
	for k > 0 && (m.inList(k, listAffirms) || m.items[k].mark && m.items[k].text != "\n") {
		k--
	}
	if m.items[k].point != "" {
		k-- // "79 side bibb, it's 79"
	}
	return m.numIs(k, roleReading) && m.items[k].value == m.items[i].value && sameUnit(m.items[k].unit, m.items[i].unit) &&
		(m.closes(i) || m.says(i+1, "and", "y")) && !m.points(i)
}

// sameUnit tells whether two numbers are of one unit, which is psi where none is told.
func sameUnit(a, b string) bool {
	return a == b || (a == "" || a == "psi") && (b == "" || b == "psi")
}

// spelledAgain tells whether the number at b spells out the digits of the one at a, with no more than a
// pause or "that's" between: "ninety, nine zero, out front", "85, that's eight five".
func (m *message) spelledAgain(a, b int) bool {
	if !m.items[b].num.words {
		return false
	}
	for k := a + 1; k < b; k++ {
		if !m.items[k].mark && !m.inList(k, listSaysAgain) {
			return false
		}
	}
	digits := 0
	for w := range strings.FieldsSeq(strings.ToLower(m.span(b, b+1))) {
		if c := numberWords[w].class; c != 'd' && c != 'z' && c != 'o' {
			return false
		}
		digits++
	}
	return digits >= 2 && m.span(a, a+1) != m.span(b, b+1)
}

// sinceTheDeed places a pressure that is told after the work at a point whose pressure
// before it was told: "88 before I did anything at the front, turned the prv down and got 62".
func (m *message) sinceTheDeed() {
	found := m.anyFoundBefore()
	for k := range m.readings {
		r := &m.readings[k]
		if found && r.When == "" && !r.Peak && m.partInPlace(r) {
			r.When = assess.After
			continue
		}
		gave := func(k int) bool { return m.is(k, cClaim, "has") && m.text(k) != "at" && m.text(k) != "had" }
		if r.When == "" && !r.Peak && m.wentThere(r) {
			continue
		}
		if r.When != "" || r.Peak || len(r.points) != 1 || m.left(r.at, 2, false, gave) < 0 {
			continue // the order of telling alone says nothing
		}
		for j := k - 1; j >= 0; j-- {
			if b := &m.readings[j]; b.When == assess.Before && len(b.points) == 1 && b.points[0] == r.points[0] && m.workedBetween(b.at, r.at) {
				r.When = assess.After
				break
			}
		}
	}
}

// partInPlace tells whether the sentence of a reading opens with the part that was worked on being in its place:
// "heat pump hooked up, every tap closed: laundry 77", "heat pump in and everything shut: laundry 77".
func (m *message) partInPlace(r *reading) bool {
	first := m.firstOf(r.sent)
	k := first
	for k < r.at && !m.items[k].mark && !m.pointAt(k) {
		k++
	}
	if k == first || !m.items[k].mark || !m.workedBetween(-1, first) {
		return false
	}
	ofWater := func(j int) bool { return m.meets(j, setOf(cStatic, cState)) || m.is(j, cHint, "nobody") }
	if and := m.left(k, 6, true, func(j int) bool { return m.text(j) == "and" }); and > first && m.left(k, k-and, true, ofWater) > and {
		k = and
	}
	for k--; m.says(k, "and", "again", "now", "up"); k-- {
	}
	part := func(j int) bool {
		return m.meets(j, setOf(cItem, cFuel)) || m.is(j, cHint, "newone") || m.is(j, cPart, "new") || m.says(j, "it", "all", "everything")
	}
	return m.inList(k, listInPlace) && (k == first || m.left(k, k-first, true, part) >= 0)
}

// wentThere places a pressure that a tap went to by a setting told just before it: "I set
// it to 65 and the rear bib went to 65".
func (m *message) wentThere(r *reading) bool {
	if m.text(r.at-1) != "to" || !m.is(r.at-2, cHint, "moves") {
		return false
	}
	for _, w := range m.work {
		if w.Action == assess.SetPRV && w.at < r.at && m.items[w.at].sent == r.sent && r.at-w.at < 14 {
			r.When = assess.After
			return true
		}
	}
	return false
}

// aroundTheOpening places two pressures of one tap before and after a valve that was opened between
// them: "28 laundry, curb stop was half closed, opened it, laundry 64".
func (m *message) aroundTheOpening() {
	for k := 1; k < len(m.readings); k++ {
		a, b := &m.readings[k-1], &m.readings[k]
		if !samePlace(a, b) || a.Peak || b.Peak || a.When == assess.After || b.When == assess.Before || !m.openedBetween(a.at, b.at) {
			continue
		}
		a.When, b.When = assess.Before, assess.After
	}
}

// openedBetween tells whether a valve was opened between two items: "opened it", "before I opened
// the main".
func (m *message) openedBetween(a, b int) bool {
	for k := a + 1; k < b; k++ {
		if opens := strings.HasPrefix(m.text(k), "opened"); opens && m.is(k, cHint, "changed") || opens && m.valveAt(k+1) ||
			strings.HasSuffix(m.text(k), " opened") && m.valveAt(k+1) {
			return true
		}
	}
	return false
}

// valveAt tells whether the words from item i name the house's valve: "the main", "curb stop".
func (m *message) valveAt(i int) bool {
	if m.is(i, cDeterminer, "") {
		i++
	}
	return m.inList(i, listMainWater) || m.says(i, "curb stop", "main", "valve", "shutoff", "stop")
}

// leadsTo tells whether only "to" or an arrow lies between two numbers.
func (m *message) leadsTo(a, b int) bool {
	if b-a < 2 || b-a > 4 {
		return false
	}
	for k := a + 1; k < b; k++ {
		switch {
		case m.inList(k, listLeadsTo):
		default:
			return false
		}
	}
	return true
}

// changed tells whether the message says what changed before its last reading though
// it is no work of ours: "found the meter valve half shut and opened it".
func (m *message) changed() bool {
	if len(m.readings) < 2 {
		return false
	}
	for i := range m.readings[len(m.readings)-1].at {
		if m.is(i, cHint, "changed") && !(m.isNum(i-1) && unitDays(m.items[i-1].unit) > 0) {
			return true
		}
	}
	return false
}

// fallsAlone tells whether the fall at item i is a gauge's though nothing is named
// before it: "dropped to 31 from 64 static when I opened the tub".
func (m *message) fallsAlone(i int) bool {
	s := &m.sents[m.items[i].sent]
	if m.has(cItem, "prv") {
		return false
	}
	if m.gaugeInHand() && m.says(i, "dropped", "drops", "bajo") && m.clauseStart(i) == i {
		return true // "opened the tub, dropped to 48"
	}
	return i == s.from && (m.sentenceIs(m.items[i].sent, cStatic, "") || m.sentenceIs(m.items[i].sent, cFlowing, ""))
}

var fallsGate = onlyWith(cHint, "falls")

// falls takes the work out of words that say what a pressure did by itself: "it
// dropped to 78", "flow at the tub dropped to 31".
func (m *message) falls() {
	if m.shut(fallsGate) {
		return
	}
	for i := range m.items {
		if !m.is(i, cHint, "falls") || m.text(i+1) != "to" && m.text(i+1) != "from" && m.text(i+1) != "down" && m.text(i+1) != "back" {
			continue
		}
		k := i - 1
		for k > 0 && m.items[k].role == roleTaken {
			k--
		}
		if m.is(i-1, cHint, "goes") || k >= 0 && m.items[k].point != "" && m.items[k].sent == m.items[i].sent || m.fallsAlone(i) {
			m.unsay(i)
		}
	}
}

// opens tells whether item i is the first word of its sentence.
func (m *message) opens(i int) bool {
	first := m.sents[m.items[i].sent].from
	if h := m.sents[m.items[i].sent].header; h >= 0 && h < i {
		first = h // "All of it makes sense: before 128 front, 129 meter"
	}
	if m.says(i-1, "and", "y") && m.workedBetween(first-1, i) && m.left(i, 12, false, m.pressed) < 0 {
		return true // "I turned the reg down and now laundry 62, kitchen 61"
	}
	for k := first; k < i; k++ {
		if !m.items[k].mark && m.text(k) != "and" && m.text(k) != "y" {
			return false
		}
	}
	return true
}

// stateClasses are those of words for what the heater and the water did.
var stateClasses = setOf(cState, cBurner, cStatic, cFlowing)

// plainList tells whether only commas, the names of test points and what heater and water did lie between two
// numbers: "Now kitchen 60, front bib 61", "60 idle, front bib 61 idle".
func (m *message) plainList(a, b int) bool {
	return m.listedWith(a, b, func(int) bool { return false })
}

// listedWith tells whether only what may stand in a plain list, or is as asked, lies between two numbers.
func (m *message) listedWith(a, b int, also func(k int) bool) bool {
	for k := a + 1; k < b; k++ {
		if it := &m.items[k]; it.point == "" && !also(k) && it.role != roleTaken && !m.isMark(k, ",", "/") && !m.is(k, cDeterminer, "") &&
			!m.says(k, "and", "y", "en", "at") && !m.meets(k, stateClasses) {
			return false
		}
	}
	return true
}

// headLine tells whether a word of a hint heads a line, with a colon behind it.
func (m *message) headLine(hint string) bool {
	for i := range m.items {
		if m.is(i, cHint, hint) && m.text(i+1) == ":" && i == m.sents[m.items[i].sent].from {
			return true
		}
	}
	return false
}

// inTurn reads two pressures that "before" and "after" are told of in their
// order: "before/after at the rear 118/61", "before at the rear 118 after 61". The point
// must be the same, and the sentence hold no third pressure. Where no work is told, only a word
// behind each number of a point is meant so.
func (m *message) inTurn(worked bool) {
	if !m.kinds.has(cBefore) || !m.kinds.has(cAfter) {
		return
	}
	for k := 1; k < len(m.readings); k++ {
		a, b := &m.readings[k-1], &m.readings[k]
		if lo, hi := m.readingsOf(a.sent); hi-lo != 2 || lo != k-1 || len(a.points) != len(b.points) ||
			len(a.points) > 0 && a.points[0] != b.points[0] {
			continue
		}
		first, second := m.timesOf(a.sent)
		trailing := first == a.at+1 && second == b.at+1 && len(a.points) > 0 && m.behindEach(first, b.at, second) &&
			(worked || m.inList(first, listBeforeShort)) // "kitchen 81 before 61 after"
		if first < 0 || second < 0 || a.When != "" || b.When != "" || !trailing && (first > a.at || !worked) {
			continue
		}
		inRow := m.onlyMarks(first, second) && second < a.at && m.onlyMarks(a.at, b.at)
		if trailing || inRow || second > a.at && second < b.at && b.at-second <= 2 {
			a.When, b.When = assess.Before, assess.After
			if m.is(first, cAfter, "") {
				a.When, b.When = assess.After, assess.Before
			}
		}
	}
}

// behindEach tells whether two words of time stand alone behind their numbers, the second of which
// is at item num: "tub 81 before, tub 61 after", but "74 before, 75 after it".
func (m *message) behindEach(first, num, second int) bool {
	for k := first + 1; k < num; k++ {
		if !m.items[k].mark && m.items[k].point == "" && m.items[k].role != roleTaken && !m.says(k, "and", "y", "then") {
			return false
		}
	}
	return m.items[second].n == 1 && (m.stopAt(second+1) || m.items[second+1].site || m.isNum(second+1))
}

// timesOf returns the word of before and that of after in sentence s, in the order told,
// -1 where there is none or more than one.
func (m *message) timesOf(s int) (first, second int) {
	first, second = -1, -1
	for k := m.sents[s].from; k < m.sents[s].to; k++ {
		if w := m.timeWord(k, true); w == "" || m.is(k, cNow, "") || m.pastTense(k) {
			continue
		}
		switch {
		case first < 0:
			first = k
		case second < 0 && m.is(first, cBefore, "") != m.is(k, cBefore, ""):
			second = k
		default:
			return -1, -1
		}
	}
	return first, second
}

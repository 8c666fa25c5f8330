package intents

import "strings"

// Lists of the lexicon that these rules know.
var (
	listNotThat   = listOf("not that")
	listItWas     = listOf("it was")
	listSetsRight = listOf("sets right")
	listTakesBack = listOf("takes back")
	listSettles   = listOf("settles")
	listRewrites  = listOf("rewrites")
	listOught     = listOf("ought")
	listHalts     = listOf("halts")
)

// corrections voids what the writer takes back: "92, no wait 82", "not 67, 76".
func (m *message) corrections() {
	m.disowned()
	m.misread()
	for i := range m.items {
		if m.items[i].num == nil {
			continue
		}
		if m.numIs(i, roleDuration) {
			m.correctSpan(i)
			continue
		}
		if m.factual(i) || m.items[i].role == roleTo || m.items[i].role == roleFrom {
			m.correctFact(i)
			continue
		}
		if m.items[i].role != roleReading {
			continue
		}
		if why, decided := m.takenBack(i); why != "" {
			m.setRole(i, roleIgnored, why)
		} else if !decided {
			m.replacedByNext(i)
		}
	}
}

// numberAt tells whether item i is a number, or a place that is told right behind one: "58 en la
// cocina".
func (m *message) numberAt(i int) bool {
	for k := i; k >= 0 && k >= i-4; k-- {
		if m.isNum(k) {
			return true
		}
		if m.items[k].point == "" && m.items[k].role != roleTaken && !m.is(k, cDeterminer, "") && !m.says(k, "en", "at", "in", "de", "del") {
			return false
		}
	}
	return false
}

var notThatGate = gateOf(opener{hints: []string{"insteadof"}, lists: []list{listNotThat}})

// takenBack tells why the reading at i does not hold. It is not decided where the next number may
// still replace it.
func (m *message) takenBack(i int) (why string, decided bool) {
	deniedAt := func(k int) bool { return m.inList(k, listNotThat) || m.is(k, cHint, "insteadof") }
	correct := m.hasAsk(AskCorrect)
	switch {
	case m.items[i].why == putRightAlone:
		return "", true
	case correct && m.text(i-1) == "no" && m.numberAt(i-2) &&
		(i+1 >= len(m.items) || m.items[i+1].mark || m.items[i+1].point != "" || m.says(i+1, "en", "at", "in")):
		return "taken back", true // "era 68 no 86": the first is right
	case !m.shut(notThatGate) && m.adjacentNot(m.left(i, 4, false, deniedAt), i):
		if b := m.butNumber(i); b > 0 {
			m.items[b].inherits, m.items[b].takesOver = i, true // "not 67 but 76"
		}
		return "taken back", true
	case m.notInSpanish(i):
		return "taken back", true
	case m.text(i+1) == "no" && m.isNum(i+2) && (m.says(i-1, "era", "eran") || correct && (m.is(i-1, cHint, "rightly") || m.closes(i+2))):
		return "", true // the next one is taken back
	case m.eitherOr(i):
		return "", true
	case m.otherThing(i):
		return "taken back", true
	case m.rewritten(i):
		if !correct && !m.ofNoHouse(i) {
			m.addAsk(i, AskCorrect)
		}
		return "to be another", true
	case m.sentBefore(i):
		return "sent before", true
	case m.fatFingered(i), !m.shut(reportedGate) && m.sentInstead(i):
		return slipTold, true
	case correct && m.heldNumber(m.items[i].sent) == i:
		return "on record", true
	}
	return "", false
}

// rewriteGate is that of numbers that are to be made others.
var rewriteGate = gateOf(opener{words: []string{"make that", "change that", "my", "mi"}, lists: []list{listRewrites}})

// rewritten tells whether the number at i, sent before, is told to be made the next one: "make my 83 a
// 63, kitchen", "change the 83 to a 63".
func (m *message) rewritten(i int) bool {
	if m.shut(rewriteGate) && !m.hasAsk(AskCorrect) {
		return false
	}
	k := i + 1
	switch {
	case m.says(i-1, "make that", "change that"):
	case m.says(i-1, "my", "mi") && m.says(i+1, "should be", "should have been", "should of been", "shoulda been"):
		k++ // "my 83 should be a 63"
	case m.hasAsk(AskCorrect) && m.oughtBehind(i) > 0:
		k = m.oughtBehind(i)
	case !m.inList(i-2, listRewrites), !m.is(i-1, cDeterminer, "") && !m.says(i-1, "my", "that", "the", "mi", "el"):
		return false
	}
	for m.says(k, "a", "an", "to", "into", "to a", "por", "por un", "en", ",") {
		k++
	}
	return k > i+1 && m.numIs(k, roleReading)
}

// oughtBehind returns the item behind "should be" that the number at i, with its place or house, leads
// to: "the 84 at 19 Tamarind should be 48"; 0 for none.
func (m *message) oughtBehind(i int) int {
	k := i + 1
	for k < len(m.items) && k <= i+5 && (m.items[k].site || m.items[k].point != "" || m.meets(k, setOf(cBibb, cFixture, cDeterminer)) || m.says(k, "at", "in", "on", "for")) {
		k++
	}
	if !m.inList(k, listOught) {
		return 0
	}
	return k + 1
}

var haltGate = onlyWithList(listHalts)

// replacedByNext gives the place of the reading at i to the next number where that corrects it:
// "92, no wait 82".
func (m *message) replacedByNext(i int) {
	reach := i + 9
	if m.isMark(i+1, ",") && m.text(i+2) == "no" && m.isMark(i+3, ",") || !m.shut(haltGate) && m.right(i, 12, false, func(k int) bool { return m.inList(k, listHalts) }) >= 0 {
		reach = i + 12 // "58, no, had the gauge upside down, 85", "67, hang on, let me wipe my glasses, 57"
	}
	for k := i + 1; k < len(m.items) && k <= reach; k++ {
		it := &m.items[k]
		if it.num == nil || it.role == roleIgnored || it.role == roleTaken {
			continue
		}
		if it.role == roleReading && !m.shut(reportedGate) && m.sentInstead(k) {
			return
		}
		if it.role == roleReading && !m.notInSpanish(k) && (m.takesBack(i+1, k) && !m.placeSlip(i+1, k) || m.setsRight(k)) {
			wrong := m.samePlaceBefore(i, k)
			it.inherits, it.takesOver = wrong, true
			m.setRole(wrong, roleIgnored, "corrected")
			m.typoWithin(i, k)
		}
		return
	}
}

// samePlaceBefore returns which pressure the one at k puts right: that at i right before it, or an
// earlier one where that is of another place and the earlier one of k's: "rear 62 laundry 58, sorry
// rear 58".
func (m *message) samePlaceBefore(i, k int) int {
	first, side := m.sents[m.items[i].sent].from, 1
	if m.items[first].num == nil {
		first = m.nextNum(first)
	}
	if first > 0 && m.items[first-1].point != "" {
		side = -1
	}
	place := func(n int) string {
		if n+side < 0 || n+side >= len(m.items) {
			return ""
		}
		return m.items[n+side].point
	}
	if place(k) == "" || place(i) == "" || place(k) == place(i) {
		return i
	}
	for n := i - 1; n >= 0; n-- {
		if m.numIs(n, roleReading) && place(n) == place(k) {
			m.items[n+side].role = roleTaken // it is no other number's
			return n
		}
	}
	return i
}

// notInSpanish tells whether "no" before number i denies it, as it does in Spanish behind a
// reading whose place is told: "71 en la cocina, no 17". In English it takes back the other.
func (m *message) notInSpanish(i int) bool {
	if m.text(i-1) != "no" || !m.closes(i) || !m.spanish() {
		return false
	}
	k := m.left(i, 7, true, m.isNum)
	if k < 0 || m.items[k].role != roleReading {
		return false
	}
	if m.pointInClause(k) && (k == i-2 || k == i-3 && m.isMark(i-2, ",")) {
		return true // "corrige lo que puse: tina 67, no 76"
	}
	for j := k + 1; m.isMark(i-2, ",") && j < i-1; j++ {
		if m.items[j].point != "" {
			return true
		}
	}
	return false
}

// asksItself tells whether the writer doubts what stands before item from and settles it with the
// number at item to: "2011? 2013", "2009? no, 2012".
func (m *message) asksItself(from, to int) bool {
	if !m.isMark(from, "?") {
		return false
	}
	for k := from + 1; k < to; k++ {
		if !m.items[k].mark && !m.inList(k, listSettles) {
			return false
		}
	}
	return true
}

// adjacentNot tells whether "no" at k denies the number at i: "no eran 67", "not 67".
func (m *message) adjacentNot(k, i int) bool {
	if k < 0 || m.items[k].seg != m.items[i].seg {
		return false
	}
	for j := k + 1; j < i; j++ {
		switch {
		case m.inList(j, listItWas):
		default:
			if !m.is(j, cAsk, "correct") {
				return false
			}
		}
	}
	if m.text(k) == "no" && k+1 == i && (m.text(k-1) == "y" || m.text(k-1) == "and") && m.hasAsk(AskCorrect) {
		return true // "son 64 y no 46"
	}
	// "no, 82" has a comma between; "no 82" alone corrects what came before
	return m.text(k) != "no" || k+1 < i || m.text(k-1) == "y"
}

// otherThing tells whether the writer says that the number was none of pressure:
// "kitchen 71 no wait that's the temp".
func (m *message) otherThing(i int) bool {
	if !m.kinds.has(cRetract) {
		return false
	}
	r := m.right(i, 4, false, func(k int) bool { return m.is(k, cRetract, "") })
	return r >= 0 && m.right(r, 4, false, func(k int) bool { return m.is(k, cHint, "warm") || m.is(k, cWhose, "label") }) >= 0
}

// sentBefore tells whether the number at i is one sent before, and another follows that
// is right: "ignore the 95 I sent, kitchen is 59".
func (m *message) sentBefore(i int) bool {
	if !(m.text(i-1) == "the" || m.text(i-1) == "that") ||
		!(m.text(i+1) == "i" && m.is(i+2, cHint, "reported")) && !strings.HasPrefix(m.text(i+1), "i ") {
		return false
	}
	for k := i + 3; k < len(m.items); k++ {
		if m.items[k].num != nil && m.items[k].role == roleReading {
			return true
		}
	}
	return false
}

// placeSlip tells whether only the test point is taken back between two numbers, and
// the second has one of its own: "front 105 no wait that's the rear, front is 62".
func (m *message) placeSlip(from, to int) bool {
	points := 0
	for k := from; k < to; k++ {
		if m.is(k, cRetract, "") {
			points = 0
		}
		if m.items[k].point != "" && (points == 0 || m.separators(from, k) > 0) {
			points++
		}
	}
	return points >= 2
}

// slipTold is why the number of an earlier report is left out; the next one is right.
const slipTold = "slip told"

// fatFingered tells whether the number at i is told as the slip of an earlier
// report that this message puts right.
func (m *message) fatFingered(i int) bool {
	if !m.hasAsk(AskCorrect) || m.items[i].why == putRightAlone || !m.fatFingeredAt(i) {
		return false
	}
	p := m.prevNum(i)
	return p < 0 || !m.sentBefore(p) && m.items[p].why != slipTold
}

// fatFingeredAt tells whether words beside the number at i tell it as a slip.
func (m *message) fatFingeredAt(i int) bool {
	if len(m.clean.quoted) > 0 && m.left(i, 4, true,
		func(k int) bool { return m.isMark(k, ",", "-", ":") && m.is(k-1, cHint, "thatone") }) >= 0 {
		return false // "> kitchen 58" "fat fingered that, it's 85"
	}
	if !m.shut(reportedGate) && m.slippedAndSent(i-1) {
		return true // "I heard him wrong and put 85"
	}
	led := i - 1
	for led > 0 && (m.items[led].point != "" || m.is(led, cDeterminer, "")) {
		led-- // "cambia lo que puse: tina 67"
	}
	if m.prevNum(i) < 0 && m.nextNum(i) < 0 && (m.items[max(led, 0)].mark || m.says(i-1, "its", "it was", "it is", "to type", "to say", "to put")) {
		return false // "misread, 67"
	}
	if t := m.text(i - 1); t == "should be" || t == "should have been" || t == "supposed to be" || t == "should read" {
		return false // "that was a mistake, should be 85"
	}
	if m.is(i-1, cHint, "rightly") && !m.is(i-1, cHint, "slip") {
		return false // "lo que puse está mal, eran 58 y escribí 85"
	}
	if m.againstNext(i) && m.left(i, 4, false, func(k int) bool { return m.isMark(k, ":", ",", "-", "\n") }) >= 0 {
		return false // "fix what I entered last: tub 67, not 76"
	}
	return m.toldBehind(i) || m.left(i, 4, false, func(k int) bool {
		if m.items[k].seg != m.items[i].seg && m.is(k, cHint, "slip") && m.inList(m.nextNum(i)-1, listNotWhatWasSent) {
			return false // "I transposed it, 68 front not 86"
		}
		if m.says(i-1, ",", ":", "-") && m.says(i-2, "wrong", "mal", "backwards") && m.prevNum(i) < 0 {
			return false // "I wrote it wrong, 57 laundry"
		}
		return (m.is(k, cHint, "slip") || m.is(k, cHint, "insteadof")) && !(m.isNum(k-1) && m.toldBehind(k-1))
	}) >= 0
}

// againstNext tells whether the number at i is told against the next one: "67, not 76", "67 y no 76".
func (m *message) againstNext(i int) bool {
	k := i + 1
	for m.isMark(k, ",") || m.says(k, "and", "y") {
		k++
	}
	return m.inList(k, listNotThat) && m.isNum(k+1)
}

// toldBehind tells whether the number at i is one that the words behind it tell to
// have been reported: "ignore the 95 I sent".
func (m *message) toldBehind(i int) bool {
	return m.is(i+1, cHint, "reported") && m.text(i + 1)[0] == 'i' &&
		m.left(i, 3, false, func(k int) bool { return m.is(k, cHint, "ignore") }) >= 0
}

// setsRight tells whether a word behind the number at k says that it replaces the
// one before: "front 71... 81 actually".
func (m *message) setsRight(k int) bool {
	return m.inList(k+1, listSetsRight) && m.items[k-1].mark && (k+2 >= len(m.items) || m.items[k+2].mark)
}

// lacked are the classes of what a "no" may deny with a word between: "no visible leaks".
var lacked = setOf(cItem, cSym, cColor, cDischarge)

// takesBack tells whether the words between two numbers take the first back.
func (m *message) takesBack(from, to int) bool {
	parted := false // a separator stands between from and the word before k
	for k := from; k < to; k++ {
		parted = parted || k-2 > from && m.separator(k-2)
		if t := m.text(k); (t == "looked" || t == "checked" || t == "tapped") && (m.text(k+1) == "again" || m.text(k+2) == "again") {
			return true
		}
		if m.text(k) == "nope" && m.is(k-1, cItem, "") {
			continue // "reg 06, wh 15, tank nope"
		}
		if m.text(k) == "sorry" && m.says(k+1, "about", "for", "the") {
			continue // "kitchen 66, sorry about the delay"
		}
		if m.is(k, cRetract, "") {
			return true
		}
		switch {
		case m.inList(k, listTakesBack):
			return true
		case m.text(k) == "no":
			if m.is(k-1, cSym, "") && parted {
				continue // "88 front, leaks no, 71 rear"
			}
			if m.is(k+1, cItem, "") || m.is(k+1, cSym, "") || m.inList(k+1, listDenialGoes) || m.meets(k+2, lacked) && !m.isNum(k+1) {
				continue // "10 años, no check valve, 73 atrás", "60, no hay fugas, 64"
			}
			if m.is(k+1, cDid, "") || m.inList(k+1, listClitics) {
				continue // "puesta en 60, no le moví. 72"
			}
			if m.text(k-1) == "," || m.text(k+1) == "," || k == from && k+1 == to || m.text(k-1) == "..." || m.text(k-1) == "-" {
				return true
			}
		case m.text(k) == "not":
			return false
		}
	}
	return false
}

// eitherOr asks which of two numbers far apart was meant: "front 92 or 29".
func (m *message) eitherOr(i int) bool {
	j := i + 2
	if t := m.text(i + 1); t != "or" && t != "o" {
		return false
	}
	if m.text(j) == "maybe" || m.text(j) == "was" {
		j++
	}
	if !m.isNum(j) || m.items[j].role != roleReading {
		return false
	}
	span := m.span(i, j+1)
	a, b := m.span(i, i+1), m.span(j, j+1)
	m.unclear(span, []string{a, b}, "Which is right, "+a+" or "+b+"?", "¿Cuál es, "+a+" o "+b+"?")
	m.setRole(i, roleIgnored, "one of two")
	m.setRole(j, roleIgnored, "one of two")
	return true
}

var misreadGate = onlyWith(cHint, "misreadas")

// misread takes back a pressure that the words behind it call wrong, where a word of what
// is right leads to the next one: "kitchen 81, off by ten, ought to be 91".
func (m *message) misread() {
	if m.shut(misreadGate) {
		return
	}
	for w := range m.items {
		if !m.is(w, cHint, "misreadas") {
			continue
		}
		a, b := m.prevNum(w), w+1
		for b < len(m.items) && b <= w+7 && (m.items[b].num == nil || m.is(b-1, cHint, "misreadas")) {
			b++
		}
		if a < 0 || !m.isNum(b) {
			continue
		}
		right := m.left(b, 3, true, func(k int) bool { return k > w && m.is(k, cHint, "shouldbe") })
		if m.items[a].role != roleReading || right < 0 || w-a > 5 || m.points(b) && !m.points(a) {
			continue
		}
		m.setRole(b, roleReading, "put right")
		m.items[b].inherits, m.items[b].takesOver = a, true
		m.setRole(a, roleIgnored, "called wrong")
	}
}

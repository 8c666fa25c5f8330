package intents

import "strings"

// Lists of the lexicon that these rules know.
var (
	listEnters      = listOf("enters")
	listWishesFor   = listOf("wishes for")
	listBeforeValue = listOf("before value")
	listTimesGoneBy = listOf("times gone by")
	listBackInTime  = listOf("back in time")
	listFalls       = listOf("falls")
	listGains       = listOf("gains")
	listEachTime    = listOf("each time")
	listWas         = listOf("was")
	listMoreThan    = listOf("more than")
	listBeforeLimit = listOf("before limit")
	listShouldStay  = listOf("should stay")
	listSwingsBy    = listOf("swings by")
	listLimitBehind = listOf("limit behind")
	listRoughly     = listOf("roughly")
	listHeldAt      = listOf("held at")
	listBuiltTo     = listOf("built to")
	listRisesBy     = listOf("rises by")
	listRelativeTo  = listOf("relative to")
)

var (
	fallWords = opener{lists: []list{listFalls}}
	sayWords  = opener{lists: []list{listSays}}
	wasWords  = opener{lists: []list{listWas}}
)

var limitGate = gateOf(opener{classes: setOf(cTarget), lists: []list{listMoreThan, listLabels}})

// targeted tells whether a number is said to be a target or a limit.
func (m *message) targeted(i int) bool {
	if m.shut(limitGate) || m.hasAsk(AskCorrect) {
		return false
	}
	seg := m.items[i].seg
	if m.items[i].ranged && m.isNum(i-2) {
		i -= 2 // "spec is 50 to 75"
	}
	return m.left(i, 4, false, func(k int) bool {
		if m.items[k].seg != seg {
			return false
		}
		switch {
		case m.inList(k, listMoreThan):
			if m.inList(k-1, listBeforeLimit) {
				return m.text(k-1) != "be" && m.text(k-1) != "it" || m.inList(k-2, listShouldStay)
			}
			return false
		case m.inList(k, listLabels):
			return !m.pointBetween(k, i) && !m.besideLabel(k, i)
		}
		return m.is(k, cTarget, "") && !m.is(k+1, cOwn, "") && !(m.inList(k, listWishesFor) && m.wantsEntered(i)) && !m.otherNumber(k, i) && !(m.tapGoodFor(k) && toPSI(m.items[i].value, m.items[i].unit) < leastRating) // "10 over limit here at 90"
	}) >= 0
}

// tapClasses are the classes of words that name a tap.
var tapClasses = setOf(cPoint, cPlace, cBibb)

// besideLabel tells whether the number at item i has its tap behind it, and the label at item k before
// it is not there or cannot be read: "prv no tag 62 kitchen".
func (m *message) besideLabel(k, i int) bool {
	if !m.meets(i+1, tapClasses) {
		return false
	}
	gone := func(j int) bool {
		return j < i && (m.inList(j, listWornOff) || m.is(j, cCond, "failed") || m.is(j, cUnknown, ""))
	}
	return m.left(k, 4, true, func(j int) bool { return m.is(j, cNeg, "") }) >= 0 || m.right(k, 3, true, gone) >= 0
}

// wantsEntered tells whether the sentence of item i only wants its numbers entered: "I would like 104 psi
// entered for 9 Elm Ct", "I'd like to log 88 rear".
func (m *message) wantsEntered(i int) bool {
	for k := m.sents[m.items[i].sent].from; k < m.sents[m.items[i].sent].to; k++ {
		if m.inList(k, listEnters) {
			return true
		}
	}
	return false
}

// leastRating is the lowest pressure that the valves and hoses of a house are rated for.
const leastRating = 125

// tapGoodFor tells whether "good for" at item k says what a tap gives, no rating: "kitchen tap good
// for 62".
func (m *message) tapGoodFor(k int) bool {
	if m.text(k) != "good for" {
		return false
	}
	for k--; m.inList(k, listLinks) || m.is(k, cHint, "hedge"); k-- {
	}
	return m.is(k, cPoint, "") && !m.says(k, "main", "street") || m.meets(k, setOf(cPlace, cBibb))
}

// otherNumber tells whether what stands at k leads to a number before i: "should be
// 60 and it is 60".
func (m *message) otherNumber(k, i int) bool {
	for j := k + 1; j < i; j++ {
		if m.items[j].num != nil {
			if m.inList(i-1, listBetweenNumbers) {
				return false
			}
			return true
		}
	}
	return false
}

// dropBefore tells whether a word of falling or rising stands before item i in its clause.
func (m *message) dropBefore(i int) bool {
	return m.left(i, 5, false, func(k int) bool {
		return m.items[k].seg == m.items[i].seg && m.inList(k, listSwingsBy)
	}) >= 0
}

// whereStuck tells whether the number at i is where a gauge's needle stays: "gauge sticks at 40
// when you bleed it".
func (m *message) whereStuck(i int) bool {
	var stuck bool
	switch m.text(i - 1) {
	case "at":
		another := m.is(i-3, cPart, "old") || m.says(i-3, "was", "got") // "old one stuck at 20"
		stuck = m.is(i-2, cHint, "sticks") || m.is(i-2, cCond, "failed") && another
	case "en":
		stuck = m.is(i-2, cHint, "sticks") || m.is(i-2, cCond, "failed")
	default:
		stuck = m.is(i-1, cHint, "sticks")
	}
	return stuck && m.left(i, 9, false, func(k int) bool { return m.is(k, cItem, "gauge") || m.text(k) == "needle" }) >= 0
}

// heldFor tells whether the number at i is for how many minutes a pressure was watched: "held 70 for
// 15", "sat at 62 for 30".
func (m *message) heldFor(i int) bool {
	it := &m.items[i]
	if m.text(i-1) != "for" || it.unit != "" || !it.num.integer || it.value > 60 {
		return false
	}
	return m.isNum(i-2) && m.left(i, 6, true, func(k int) bool { return m.inList(k, listHeldAt) }) >= 0
}

// swingsBy tells whether the number at i is how far a pressure swings: "swings 20 psi all day".
func (m *message) swingsBy(i int) bool {
	k := i - 1
	for m.inList(k, listRoughly) || m.says(k, "by") {
		k--
	}
	return m.is(k, cSym, "swings") && pressureUnit(m.items[i].unit) && !m.items[i].ranged
}

// crept tells whether the number at i is how far pressure crept: "3 psi creep over 10 min",
// "crept 10 psi in half an hour".
func (m *message) crept(i int) bool {
	it := &m.items[i]
	return m.is(i+1, cSym, "creep") && it.value <= 20 && !m.pointAt(i-1) ||
		m.is(i-1, cSym, "creep") && pressureUnit(it.unit) && !m.says(i+1, "to", "->", "-")
}

// limitBehind tells whether the number at i, or the range that it begins, is said to be a limit:
// "25-75 en la placa", "80 max allowed".
func (m *message) limitBehind(i int) bool {
	last := i
	if m.text(i+1) == "-" && m.isNum(i+2) {
		last = i + 2
	}
	if m.inList(last+1, listAtMost) && !m.reachedAtMost(last+1) && m.left(i, 3, true, func(k int) bool { return m.inList(k, listBuiltTo) }) >= 0 {
		return true // "the tank holds 150 at most"
	}
	r := m.rightTag(last, 3, cTarget, "")
	if r < 0 && m.is(last+1, cPeak, "") {
		r = m.rightTag(last, 6, cTarget, "") // "80 max at the kitchen per code"
	}
	return r >= 0 && m.items[r].seg == m.items[i].seg && m.inList(r, listLimitBehind)
}

// roseBy tells whether the number at i, which no "to" leads to, is by how much a pressure
// rose: "went up 20 psi", "sube como 20 libras en la noche".
func (m *message) roseBy(i int) bool {
	it := &m.items[i]
	k := i - 1
	for m.inList(k, listRoughly) {
		k--
	}
	if !m.inList(k, listRisesBy) || pressureUnit(it.unit) {
		return m.inList(k, listRisesBy)
	}
	// no gauge rises to less than it showed: "72 kitchen, climbs 20 overnight"
	before := m.prevNum(i)
	return before >= 0 && it.unit == "" && m.text(k) != "up" && m.pressed(before) && m.items[before].sent == it.sent &&
		toPSI(m.items[before].value, m.items[before].unit) > it.value && m.left(i, i-before, true, func(j int) bool { return m.items[j].point != "" && j > before+1 }) < 0
}

// gainsEachTime tells whether the number at i is by how much a pressure rises on some occasion: "picks
// up 12 psi every time the burner lights".
func (m *message) gainsEachTime(i int) bool {
	return m.inList(i-1, listGains) && m.right(i, 3, false, func(k int) bool { return m.inList(k, listEachTime) }) >= 0
}

// afterFall tells whether a word of falling or rising stands before the number at i.
func (m *message) afterFall(i int) bool {
	if m.inList(i-1, listBeforeValue) || m.says(i-1, "de", "desde") && m.says(i+1, "a", "hasta") && m.isNum(i+2) {
		return false // "bajó de 90 a 64"
	}
	k := m.left(i, 3, false, func(k int) bool { return m.said(k, keyFalls) })
	return k >= 0 && m.items[k].seg == m.items[i].seg
}

// wentOn tells whether the "then" at item i goes on to what was done: "kitchen was 94 then I turned
// the prv down and now it's 62".
func (m *message) wentOn(i int) bool {
	return m.right(i, 4, false, func(k int) bool { return m.meets(k, setOf(cDid, cMove)) }) >= 0
}

// remembered tells whether a number is quoted from an earlier time.
func (m *message) remembered(i int) bool {
	if m.inYearGone(i) {
		return true
	}
	if !m.holdsKey(keySays|keyWas) && !m.kinds.has(cMemory) && !m.sents[m.items[i].sent].remembers &&
		strings.IndexByte(m.clean.text, '"') < 0 {
		return false
	}
	if m.isNum(i+2) && m.thenTo(i, i+2) || m.isNum(i-2) && m.thenTo(i-2, i) {
		return false // "it was 60 then 68 then 77"
	}
	if m.hasAsk(AskCorrect) && m.left(i, 3, false, func(k int) bool { return m.is(k, cHint, "rightly") }) >= 0 {
		return false // "the office typed 47, tech says it was 74, fix it"
	}
	if m.saidBy(i) || m.othersWords(i) || m.longAgo(i) {
		return true
	}
	if t := m.text(i + 1); (t == "today" || t == "hoy") ||
		m.items[min(i+1, len(m.items)-1)].point != "" && (m.text(i+2) == "today" || m.text(i+2) == "hoy") {
		return false // "what was it last time, I've got 78 front today"
	}
	seg := m.items[i].seg
	if m.sents[m.items[i].sent].remembers && m.left(i, 9, true, func(k int) bool { return m.is(k, cNow, "") }) < 0 {
		return true
	}
	if m.text(i+1) == "then" && m.pastVerb(i) && !m.wentOn(i+1) {
		return true
	}
	if m.pastVerb(i) && m.right(i, 4, true,
		func(k int) bool { return m.items[k].num != nil && m.items[k].unit == "year" && m.text(k+1) == "ago" }) >= 0 {
		return true
	}
	if !m.kinds.has(cMemory) {
		return false
	}
	if m.pastVerb(i) && m.right(i, 4, true, func(k int) bool { return m.is(k, cMemory, "") && strings.HasSuffix(m.text(k), " ago") }) >= 0 {
		return true // "was 82 two summers ago"
	}
	if k := m.sents[m.items[i].sent].from; oneOf(m.text(k), "last time", "last visit") && m.left(i, i-k, true, func(k int) bool {
		return m.is(k, cNow, "") || m.own(k) && m.text(k) != "i" && m.text(k) != "we" || m.text(k) == "but" || m.text(k) == "then"
	}) < 0 {
		return true // "Last time I left the reg at 60 and the kitchen at 61."
	}
	if k := m.left(i, 7, true, func(k int) bool { return m.is(k, cMemory, "") && !m.putBackIn(k) }); k >= 0 {
		if m.text(k) == "used to" && m.isMark(i-1, ",") && m.pointAt(i+1) {
			return false // "half the pressure they used to have, 40 front"
		}
		for j := k + 1; j < i; j++ {
			if m.is(j, cNow, "") || m.is(j, cHint, "found") || m.items[j].mark && (m.text(j) == "." || m.text(j) == ";") ||
				m.text(j) == "but" || m.text(j) == "pero" {
				return false
			}
			if m.items[j].seg != m.items[k].seg && !m.inList(k, listTimesGoneBy) {
				// "the customer says it was fine, 66 now"
				return m.pastVerb(i)
			}
		}
		if m.items[k].seg != seg {
			return m.pastVerb(i)
		}
		if m.inList(k, listTimesGoneBy) && (m.is(k-1, cDid, "") || m.serviceWord(k-1)) {
			return false // "flushed last year"
		}
		return true
	}
	if k := m.right(i, 5, false, func(k int) bool { return m.is(k, cMemory, "") && !m.putBackIn(k) }); k >= 0 && m.items[k].seg == seg {
		if m.pastVerb(i) || m.text(k) == "back in" || k == i+1 && strings.HasPrefix(m.text(k), "when ") {
			return true
		}
		if m.inList(k, listTimesGoneBy) && !m.is(k-1, cDid, "") && k-i <= 2 {
			return true
		}
	}
	return false
}

// putBackIn tells whether no year, month or time gone by follows "back in" at item k, so that a part or a
// person is in again: "filter back in: laundry 60", "kitchen 58, back in the van now".
func (m *message) putBackIn(k int) bool {
	if m.text(k) != "back in" {
		return false
	}
	if m.is(k+1, cDeterminer, "") {
		k++
	}
	_, month := months[m.text(k+1)]
	return !month && !m.isNum(k+1) && !m.inList(k+1, listBackInTime)
}

// saidBy tells whether the number at i is what somebody said: "customer says it's 60".
func (m *message) saidBy(i int) bool {
	if !m.holdsKey(keySays) {
		return false
	}
	k := m.left(i, 4, false, func(k int) bool { return m.said(k, keySays) })
	if p := m.prevNum(i); (m.text(i-1) == "i said" || k >= 0 && m.text(k-1) == "i") && p >= 0 && m.items[p].sent == m.items[i].sent && m.numIs(p, roleTemp, roleSetting, roleTo) {
		return !m.points(i) // "thermostat is at 140, she did that, I said 120"
	}
	return k >= 0 && (m.inList(k-1, listPeople) || m.inList(k-2, listPeople)) && m.items[k].seg == m.items[i].seg && !m.points(i)
}

// pastVerb tells whether the number is told as past: "was 70".
func (m *message) pastVerb(i int) bool {
	return m.holdsKey(keyWas) && m.left(i, 3, false, func(k int) bool { return m.said(k, keyWas) }) >= 0
}

// othersWords tells whether a number stands between quotation marks after
// somebody else's name and a word of saying.
func (m *message) othersWords(i int) bool {
	if strings.IndexByte(m.clean.text, '"') < 0 {
		return false
	}
	s := &m.sents[m.items[i].sent]
	open, closed := -1, false
	for k := s.from; k < s.to; k++ {
		if !m.items[k].mark || m.text(k) != "\"" {
			continue
		}
		if k > i {
			closed = true
			break
		}
		if open < 0 {
			open = k
		} else {
			open = -1
		}
	}
	if open < 0 || !closed {
		return false
	}
	for k := open - 1; k >= s.from && k >= open-4; k-- {
		if m.inList(k, listSays) {
			return m.text(k-1) != "i"
		}
	}
	return false
}

// longAgo tells whether a clause places its number years back: "three years ago it
// was 80", "was 85 in 2019".
func (m *message) longAgo(i int) bool {
	if !m.pastVerb(i) {
		return false
	}
	it := &m.items[i]
	if p := m.text(i + 1); oneOf(p, "in", "back in", "en") && m.isNum(i+2) && len(m.items[i+2].num.digits) == 4 && year(m.items[i+2].value) {
		return int(m.items[i+2].value) < m.ctx.Today.Year
	}
	if m.yearBehind(i) {
		return true
	}
	for k := i - 1; k >= 0 && k >= i-8 && m.items[k].sent == it.sent; k-- {
		if m.is(k, cNow, "") || m.items[k].seg < it.seg-1 {
			return false
		}
		if m.isNum(k) && (m.items[k].unit == "year" || m.items[k].unit == "month") {
			return m.text(k+1) == "ago" || m.text(k+1) == "back" || m.text(k-1) == "hace"
		}
	}
	return false
}

// inYearGone tells whether a year gone by is all that is told of the number at i: "80 in 2021, 84 in
// 2023, today 99".
func (m *message) inYearGone(i int) bool {
	if !m.isNum(i+2) && !m.isNum(i+3) {
		return false
	}
	k := i + 1
	if u, ok := m.val(k, cUnit); ok && pressureUnit(u) {
		k++
	}
	if !m.isNum(k+1) || !m.items[k+1].fullYear() || !m.says(k, "in", "back in", "en") {
		return false
	}
	behind := k + 2
	return int(m.items[k+1].value) < m.ctx.Today.Year &&
		(m.closes(k+1) || m.is(behind, cClaim, "") || m.is(behind, cMemory, "") || m.says(behind, "and", "y", "on", "per", "but", "pero"))
}

// yearBehind tells whether the clause of the number at i goes on to a year gone by, with nothing
// installed or done between: "was 74 when we were here in 2022 per the binder".
func (m *message) yearBehind(i int) bool {
	for k := i + 1; k+1 < len(m.items) && k < i+9 && m.items[k].seg == m.items[i].seg && !m.items[k].mark; k++ {
		switch {
		case m.items[k].kinds.meets(ofDeeds) || m.items[k].num != nil:
			return false
		case m.says(k, "in", "en") && m.isNum(k+1) && m.items[k+1].fullYear():
			return int(m.items[k+1].value) < m.ctx.Today.Year
		}
	}
	return false
}

// relative tells whether the number at i is so much above or below something: "2 psi under
// the house".
func (m *message) relative(i int) bool {
	if !pressureUnit(m.items[i].unit) || toPSI(m.items[i].value, m.items[i].unit) > 30 {
		return false
	}
	switch {
	case m.inList(i+1, listRelativeTo):
	default:
		return false
	}
	k := i + 2
	for m.is(k, cDeterminer, "") {
		k++
	}
	return m.is(k, cHint, "wholehouse") || m.is(k, cStatic, "") || m.is(k, cItem, "prv") || m.is(k, cHint, "setting") ||
		m.items[min(k, len(m.items)-1)].point != ""
}

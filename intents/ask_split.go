package intents

import (
	"slices"
	"strings"
)

// Lists of the lexicon that these rules know.
var (
	listComplainers = listOf("complainers")
	listAskingVerbs = listOf("asking verbs")
	listAskedWhom   = listOf("asked whom")
	listJoinsAsk    = listOf("joins ask")
)

// splitQuestions parts a sentence that asks for two things, so that each is read
// by itself: "what's due, and what's the story on 9 Elm", "plot 9 Elm and print
// the sheet".
func (m *message) splitQuestions() {
	for s := 0; s < len(m.sents); s++ {
		if i := m.prefaced(m.sents[s]); i > 0 {
			rest := m.sents[s]
			rest.from = i + 1
			m.sents[s].to, m.sents[s].question = i+1, false
			m.sents = slices.Insert(m.sents, s+1, rest)
			continue
		}
		se := m.sents[s]
		wh, asks := m.asksFirst(se)
		if !asks {
			i := m.toldThenAsked(se)
			if i == 0 {
				i = m.doneThenNext(se)
			}
			if i > 0 {
				told, asked := se, se
				told.to, asked.from, told.question = i+1, i+1, false
				asked.question = asked.question || m.text(i+1) == "is"
				m.sents[s] = told
				m.sents = slices.Insert(m.sents, s+1, asked)
			}
			continue
		}
		for i := se.from + 1; i+1 < se.to; i++ {
			told := m.tellsAfter(i, se.to) || m.measuredAfter(se.from, i, se.to)
			if !told && !m.asksAgain(i) {
				continue
			}
			first, second := se, se
			second.question = se.question && !told
			first.to, second.from = i+1, i+1
			first.question = se.question || wh
			m.sents[s] = first
			m.sents = slices.Insert(m.sents, s+1, second)
			break // what follows is looked at in its turn
		}
	}
}

// prefaced returns the mark behind a few words that open a sentence before it asks or orders:
// "not today, remind me again tmrw", "morning bot / what falls on the 18th"; and that behind a
// lone order to take back: "unsend, gauge wasn't even on the tap". It returns 0 for none.
func (m *message) prefaced(se sentence) int {
	if !m.kinds.has(cAsk) && m.cues&(cueWh|cueRemove) == 0 {
		return 0
	}
	removes := false
	for i := se.from; i < se.from+5 && i+1 < se.to; i++ {
		it := &m.items[i]
		switch {
		case it.num != nil || it.site || it.kinds.meets(factual):
			return 0
		case !it.mark:
			removes = removes || i == se.from && m.wordCues(it.tok).has(cueRemove)
			continue
		case i == se.from || !m.says(i, ",", "/", "|", "-"):
			return 0
		}
		if m.opensFormula(se.from, se.to) {
			return 0 // "what I just posted, pull it back"
		}
		next := &m.items[i+1]
		if removes && i == se.from+1 && se.from == 0 || next.kinds.has(cAsk) || !next.mark && m.wordCues(next.tok).has(cueWh) {
			return i
		}
		return 0
	}
	return 0
}

// factual are classes of what a report tells.
var factual = setOf(cItem, cSym, cColor, cDid, cDo, cState, cStatic, cFlowing, cAsk)

// ordering are the cues of words that ask or order.
var ordering = cueWh | cueShow | cueMake | cueTrend

// asksFirst tells whether the first word of a sentence that adds something asks
// or orders, and whether it is a question word.
func (m *message) asksFirst(se sentence) (wh, asks bool) {
	if !m.kinds.has(cAsk) && m.cues&ordering == 0 {
		return false, false
	}
	for i := se.from; i < se.to; i++ {
		it := &m.items[i]
		if it.mark || it.site || it.num != nil {
			return false, false
		}
		set := m.wordCues(it.tok)
		if set&ordering != 0 || it.kinds.has(cAsk) && !set.has(cueSmall) {
			return set.has(cueWh), true
		}
		if !set.has(cueSmall) {
			return false, false
		}
	}
	return false, false
}

// toldThenAsked returns the end of what a sentence tells before it goes on to ask or to order:
// "82 at the back tap, did we get the same last visit?", "58 front / now the sheet for the
// homeowner please", "61 at the tub and what did we get there before". It returns 0 for none.
func (m *message) toldThenAsked(se sentence) int {
	m.hear()
	turns := m.kinds.has(cAsk) || m.cues&(cueWh|cueAux) != 0 || m.cues.has(cueShow) && m.cues&(cuePast|cueRecord) != 0
	wishes := m.mayAsk && m.cues&(cueShow|cueWant|cueMake|cuePaper) != 0 // by a formula
	if !turns && !wishes && !m.opensOpinion(se) {
		return 0
	}
	opinions := m.mayOpine && !m.opinionAt(se.from, se.to, true)
	tells, measured, at, tap, part, sized, some, tapped, degrees, inUnit := false, false, false, false, false, false, false, false, false, false
	for i := se.from; i+1 < se.to; i++ {
		it := &m.items[i]
		switch {
		case it.num != nil && it.unit == "gal":
			sized = true
		case it.num != nil && (it.unit == "degf" || it.unit == "degc" || it.unit == "deg"):
			degrees = true
		case it.kinds.has(cItem) && !m.is(i, cItem, "heater"):
			part = true
		case it.num != nil && it.value >= 20 && !it.num.money && !it.num.time:
			measured = true
			at = at || pressureUnit(it.unit)
		case it.kinds.meets(pointClasses):
			at, tap = true, true
			tapped = tapped || (m.isNum(i-1) || m.isNum(i+1)) && (it.kinds.meets(setOf(cFixture, cBibb)) || m.isAny(i, cPoint, "laundry", "kitchen", "bath"))
		case it.kinds.has(cSym), it.kinds.has(cColor):
			tells = true
		}
		inUnit = inUnit || pressureUnit(it.unit)
		some = some || it.kinds.has(cItem) || it.num != nil
		if inUnit && (tap || part) && m.asksItConverted(i+1) {
			return i // "88 psi at the side spigot whats that in bar"
		}
		if opinions && (tells || measured) && (it.mark || it.num != nil || m.said(i, keyJoins) || it.kinds.meets(pointClasses) || it.kinds.has(cState)) && m.opinionAt(i+1, se.to, true) {
			return i // "95 laundry is that too high"
		}
		if (tells || measured) && m.partsClauses(i) && m.opensFormula(i+1, se.to) {
			return i // "68 laundry, was it this low last year"
		}
		if !it.mark && !m.said(i, keyJoins) || !(some || tells) || !m.partsClauses(i) {
			continue
		}
		k := i + 1
		for k+1 < se.to && (m.said(k, keyJoins) || m.says(k, "also", "now", "then", "luego")) {
			k++
		}
		asks := m.ordersSheet(k, se.to) ||
			// not "40 gal, 60 psi, what tank"
			(tells || measured && at) && (m.turnsToAsk(k) || m.wordCues(m.items[k].tok).has(cueShow) && m.asksPast(k, se.to)) &&
				(!sized && (!part || tap) || sized && tapped && !degrees && m.asksTank(k, se.to) || m.asksPast(k, se.to))
		if !asks || m.right(k-1, se.to, true, m.isNum) >= 0 {
			continue
		}
		return i
	}
	return 0
}

// opensOpinion tells whether a word of a sentence may begin a question for an opinion.
func (m *message) opensOpinion(se sentence) bool {
	if !m.mayOpine {
		return false
	}
	for i := se.from + 1; i < se.to; i++ {
		if !m.items[i].mark && m.entryOf(i).opines {
			return true
		}
	}
	return false
}

// doneThenNext returns the end of a clause that says a follow-up is done where the next one
// follows: "recheck done at 12 Elm, next one in 6 months". It returns 0 for none.
func (m *message) doneThenNext(se sentence) int {
	if !m.kinds.has(cAsk) {
		return 0
	}
	done := false
	for i := se.from; i+2 < se.to; i++ {
		done = done || m.is(i, cAsk, "done")
		if done && m.partsClauses(i) && (m.says(i+1, "next", "next one", "see", "again") || m.is(i+1, cDo, "recheck")) &&
			m.right(i, se.to, true, m.timeSpan) >= 0 {
			return i
		}
		if next := &m.items[i+1]; done && m.isMark(i, ",", "/", "-") && !next.mark && m.wordCues(next.tok).has(cueWh) || done && m.asksAgain(i) {
			return i // "mark the one at 12 Elm done, what else is due"
		}
	}
	return 0
}

// timeSpan tells whether item k is a number of days or longer spans, or such a span's name.
func (m *message) timeSpan(k int) bool {
	u, ok := m.val(k, cUnit)
	return m.isNum(k) && unitDays(m.items[k].unit) > 0 || ok && unitDays(u) > 0
}

// partsClauses tells whether item i may end a clause: a comma, "and".
func (m *message) partsClauses(i int) bool {
	return m.isMark(i, ",", "/", "|", "-") || m.said(i, keyJoins)
}

// ordersSheet tells whether a clause that begins at item i orders the customer's sheet: "send
// me the customer sheet", "the sheet for the homeowner please".
func (m *message) ordersSheet(i, to int) bool {
	for k := i; k < to && k < i+5 && !m.items[k].mark; k++ {
		if m.is(k, cAsk, "report") {
			return k == i || m.is(i, cDeterminer, "") || m.wordCues(m.items[i].tok)&(cueShow|cueMake) != 0
		}
	}
	return false
}

// asksPast tells whether the question in items i..to is about what is on record: "what did we
// get there before", not "what size".
func (m *message) asksPast(i, to int) bool {
	for k := i; k < to; k++ {
		if m.wordCues(m.items[k].tok)&(cuePast|cueRecord) != 0 || m.is(k, cAsk, "history") || m.is(k, cAsk, "next_check") {
			return true
		}
	}
	return false
}

// asksTank tells whether the question in items i..to names a tank and no number: "what tank do i grab".
func (m *message) asksTank(i, to int) bool {
	return m.right(i, to-i, true, func(k int) bool {
		return m.is(k, cItem, "tank") || m.is(k, cItem, "expansion_tank") || m.is(k, cAsk, "tank_size")
	}) >= 0 ||
		m.is(i, cAsk, "tank_size")
}

// tellsAfter tells whether item i ends a question or an order and somebody's complaint
// follows: "plot all we have on 44 Oak, she says the pressure surges all day".
func (m *message) tellsAfter(i, to int) bool {
	if !m.partsClauses(i) {
		return false
	}
	if m.said(i+1, keyJoins) {
		i++
	}
	who, _, _ := strings.Cut(m.text(i+1), " ")
	switch {
	case m.p.lex.inList(who, listComplainers):
	default:
		if who == "im" || !m.p.lex.inList(who, listPeople) && !m.is(i+1, cWhose, "person") {
			return false
		}
	}
	for k := i + 2; k < to; k++ {
		if m.items[k].kinds.meets(complaints) {
			return true
		}
	}
	return false
}

// measuredAfter tells whether a question or an order ends at item i and what was measured
// follows: "push my recheck a week please, 84 front today", "what's due this week and also
// log 69 at the side bib".
func (m *message) measuredAfter(from, i, to int) bool {
	also := m.text(i) == "also" || m.text(i) == "and" && m.text(i+1) == "also"
	asked := m.is(from, cAsk, "snooze") || m.is(from, cAsk, "due") && m.text(from) != "due" || m.is(from, cAsk, "summary") ||
		m.is(from, cAsk, "worst") || m.is(from, cAsk, "alerts")
	if !also && (!m.partsClauses(i) || !asked) {
		return false
	}
	number, at := false, false
	for k := i + 1; k < to; k++ {
		it := &m.items[k]
		switch {
		case m.wordCues(it.tok).has(cueWh):
			return false
		case it.num != nil && it.unit == "gal":
			return false
		case m.pressureLike(k):
			number = true
		case it.kinds.meets(pointClasses):
			at = true
		}
	}
	return number && at
}

// complaints are the classes of words that tell of a symptom.
var complaints = setOf(cSym, cColor, cRelief)

// pointClasses are the classes of words that say where a gauge was.
var pointClasses = setOf(cPoint, cPlace, cBibb, cFixture)

// turnsToAsk tells whether a clause that begins at item i asks.
func (m *message) turnsToAsk(i int) bool {
	it := &m.items[i]
	if it.mark || it.site || it.num != nil {
		return false
	}
	if m.wordCues(it.tok).has(cueWh) || m.is(i, cAsk, "next_check") && (m.closes(i) || strings.HasPrefix(m.text(i), "why ")) {
		return true // "what else should I check", "thoughts"
	}
	if m.text(i) == "is" && m.is(i+1, cDeterminer, "") && m.is(i+2, cItem, "") {
		return true // "is the prv shot"
	}
	verb, rest, _ := strings.Cut(m.text(i)+" "+m.text(i+1), " ")
	who, _, _ := strings.Cut(rest, " ")
	if m.p.lex.inList(verb, listAskingVerbs) {
		if m.p.lex.inList(who, listAskedWhom) {
			return true
		}
	}
	return false
}

// asksAgain tells whether item i joins another question or order to what stands
// before it: "and show me what's due", "then print the sheet", "plus what to test next".
func (m *message) asksAgain(i int) bool {
	next := &m.items[i+1]
	if next.mark || next.site || next.num != nil {
		return false
	}
	set := m.wordCues(next.tok)
	switch {
	case m.isMark(i, ","):
		return set.has(cueWh)
	case m.inList(i, listJoinsAsk):
		return set&(cueWh|cueShow|cueMake|cueFinish) != 0 || next.kinds.has(cAsk) && !m.says(i, "and", "y", "&") || m.text(i+1) == "mark" || m.asksForThing(i+1)
	}
	return false
}

// asksForThing tells whether what the bot is asked for is named from item i on: "the team summary", "the list of
// what is due".
func (m *message) asksForThing(i int) bool {
	k := i
	for k < i+4 && k < len(m.items) && (m.is(k, cDeterminer, "") || m.says(k, "the list", "list of", "list", "of", "la lista", "lista de", "lista", "de")) {
		k++
	}
	return k > i && (m.isAny(k, cAsk, string(AskSummary), string(AskReport), string(AskDue)) || k > i+1 && !m.stopAt(k) && m.wordCues(m.items[k].tok).has(cueWh))
}

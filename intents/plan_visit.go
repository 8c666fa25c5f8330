package intents

import "strings"

// Lists of the lexicon that these rules know.
var (
	listHeadsVisit  = listOf("heads visit")
	listUntilThen   = listOf("until then")
	listEndsVisit   = listOf("ends visit")
	listVisits      = listOf("visits")
	listVisitPapers = listOf("visit papers")
)

// Follow-ups that name the visit itself, or none: what was checked, what the visit was for.

// headsVisit tells whether a follow-up named at the head of a report is the visit
// reported: "Two week follow up, 9 Gila Ct".
func (m *message) headsVisit(i, s int) bool {
	if s != 0 || m.planish(s) && !m.is(i, cWill, "") || !m.anyReadingLike() {
		return false
	}
	if m.is(i, cHint, "visitname") && i == m.sents[s].from && !m.momentNext(i) {
		return true // "recheck visit, 2 wks after reg swap"
	}
	if m.text(i) == "recheck" && i == m.sents[s].from && !m.momentIn(s) && m.onlyHeads(i, s) {
		return true // "Recheck at 88 Tamarack Ln. Rear bib 72"
	}
	if strings.HasPrefix(m.text(i), "check") && strings.HasSuffix(m.text(i), "up") && !m.momentIn(s) {
		return true // "annual checkup at 12 Elm, 62 kitchen"
	}
	if !m.inList(i, listHeadsVisit) {
		return false
	}
	for _, w := range m.moments {
		if w.end == i && w.at == m.sents[s].from {
			return true
		}
	}
	return false
}

// visitByItsSpan tells whether the visit at item i is called by the span after which it was due, at the
// head of the message, so that no other is planned: "Six month visit to 12 Elm. Rear bib 77".
func (m *message) visitByItsSpan(i, s int) bool {
	toCome := func(k int) bool { return k != i && m.is(k, cWill, "") }
	if m.inList(i, listVisits) && (m.inList(i+1, listVisitPapers) ||
		m.left(i, 5, true, func(k int) bool { return m.inList(k, listVisitPapers) && m.says(k+1, "from", "of", "on", "for") }) >= 0) {
		return m.anyReadingLike() // "Sunday visit notes", "notes from Sunday's visit"
	}
	if s != 0 || !m.inList(i, listVisits) || m.anyIn(s, toCome, setOf(cWill)) {
		return false
	}
	first := m.firstOf(s)
	if m.is(first, cDeterminer, "") {
		first++
	}
	for _, w := range m.moments {
		if w.at == first && (w.end == i && w.span || (w.end == i || w.end == i-1) && !w.span && m.onlyOfHouse(i+1, s)) {
			return m.anyReadingLike() || m.hasAsk(AskDone)
		}
	}
	return m.isNum(first) && unitDays(m.items[first].unit) > 0 && i == first+1 && (m.anyReadingLike() || m.hasAsk(AskDone))
}

// onlyOfHouse tells whether a line or a clause holds no more from item k on than the house: "Sunday
// visit, 12 Elm".
func (m *message) onlyOfHouse(k, s int) bool {
	if m.says(k, "at", "to", "@") {
		k++
	}
	for k < m.sents[s].to && m.items[k].site {
		k++
	}
	return m.stopAt(k) && !m.isMark(k, "?")
}

// onlyHeads tells whether sentence s holds no more behind the word at item i than the house and what
// came before, and pressures are told in those that follow.
func (m *message) onlyHeads(i, s int) bool {
	for k := i + 1; k < m.sents[s].to; k++ {
		if m.items[k].site && m.text(i+1) == "at" {
			return m.anyReadingLike()
		}
		worked := m.is(k, cItem, "") && m.says(k+1, "job", "swap", "work", "change")
		if m.items[k].point != "" || m.meets(k, setOf(cCond, cWill, cItem)) && !worked {
			return false
		}
	}
	lo, hi := m.readingsOf(s)
	return lo >= hi && len(m.readings) > 0 && m.readings[0].sent > s
}

// cameTo tells whether the follow-up at item i is what the visit was for: "came by to
// recheck 44 Juniper".
func (m *message) cameTo(i int) bool {
	came := func(k int) bool { return m.is(k, cHint, "camehere") }
	if k := i - 2; m.is(i-1, cDeterminer, "") && m.text(k) == "for" && m.is(k-1, cHint, "camehere") && !m.willNear(k-1) && !m.momentSeg(i) {
		return true // "went back for the recheck"
	}
	return m.text(i-1) == "to" && m.left(i-1, 3, true, came) >= 0
}

// leftOut tells whether the follow-up named at item i is not to be: "no need to recheck",
// "skip the recheck".
func (m *message) leftOut(i int) bool {
	k := i - 1
	if m.is(k, cDeterminer, "") {
		k--
	}
	if m.is(k, cNeg, "") && m.text(k) == "no" &&
		m.right(i, 2, true, func(j int) bool { return m.text(j) == "needed" || m.text(j) == "necessary" || m.text(j) == "required" }) >= 0 {
		return true // "no recheck needed"
	}
	return m.text(k) == "skip" || m.text(k) == "need to" && m.text(k-1) == "no" || m.refused(i)
}

// nextAfterDone tells whether a follow-up in a sentence that closes one is the
// next one: "done, set the next one for 6 months out".
func (m *message) nextAfterDone(s, i int) bool {
	for k := i - 1; k >= m.sents[s].from; k-- {
		if m.is(k, cAsk, "done") {
			for j := k + 1; j < i; j++ {
				if m.items[j].seg != m.items[k].seg || m.text(j) == "and" || m.text(j) == "y" {
					return m.momentSeg(i)
				}
			}
			return false
		}
	}
	return false
}

// againAtEnd tells whether a day told as so many weeks, months or a year from now is all that its
// clause says behind one that ends the visit: "all good, next yr", "done. see you next year", "todo
// bien, en un año". That is when the house is looked at again.
func (m *message) againAtEnd(w moment) bool {
	if w.days < 28 || !m.closes(w.end-1) {
		return false
	}
	k := w.at - 1
	for k >= 0 && (m.is(k, cHint, "seeyou") || m.inList(k, listUntilThen)) {
		k--
	}
	if k < 1 || !m.items[k].mark || m.isMark(k, "?") {
		return false
	}
	last := m.text(k - 1)
	return m.p.lex.inList(lastWord(last), listEndsVisit) && !beginsWith(last, "no ", "not ") && !m.denied(k-1)
}

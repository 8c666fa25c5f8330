package intents

import (
	"slices"
	"strings"
)

// Lists of the lexicon that these rules know.
var (
	listLastSent = listOf("last sent")
	listNewsOf   = listOf("news of")
	listReports  = listOf("reports")
)

// lastTalk tells whether sentence s speaks of what was sent last.
func (m *message) lastTalk(s int) bool {
	for i := m.sents[s].from; i < m.sents[s].to; i++ {
		if m.inList(i, listLastSent) {
			return true
		}
		if m.is(i, cAsk, "undo") && strings.Contains(m.text(i), "last") {
			return true
		}
	}
	return false
}

// midNumbers tells whether the words at i correct one number by another within the message.
func (m *message) midNumbers(i int) bool {
	a, b := false, false
	for k := max(0, i-6); k < i; k++ {
		a = a || m.items[k].num != nil || m.is(k, cState, "")
	}
	for k := i + 1; k < len(m.items) && k <= i+6; k++ {
		b = b || m.items[k].num != nil || m.is(k, cState, "")
	}
	return a && (b || m.rightsPlace(i))
}

// rightsPlace tells whether the words of taking back at item i put right where the pressure told
// before them was read, and tell no more: "front 77. scratch that, it was the rear".
func (m *message) rightsPlace(i int) bool {
	k := i + 1
	for m.isMark(k, ",", ".", "-", ":") || m.inList(k, listItWas) || m.inList(k, listLinks) || m.is(k, cDeterminer, "") || m.says(k, "it was", "that was", "at", "en", "that", "thats") {
		k++
	}
	if k >= len(m.items) || m.items[k].point == "" {
		return false
	}
	if m.meets(k+1, setOf(cBibb, cFixture, cPipe)) || m.says(k+1, "one", "side") {
		k++
	}
	return m.closes(k)
}

// numberToKeep tells whether the sentence gives the right value after taking one back.
func (m *message) numberToKeep(s, i int) bool {
	for k := i + 1; k < m.sents[s].to; k++ {
		it := &m.items[k]
		if it.num != nil && it.unit == "" && it.num.integer && it.value >= 20 && it.value <= 200 && it.role == roleNone {
			if m.is(k-1, cHint, "was") {
				return true // "borra eso, era 68"
			}
			for j := max(i, k-4); j < min(len(m.items), k+4); j++ {
				if m.items[j].point != "" {
					return true
				}
			}
		}
	}
	return false
}

// numberAfter tells whether a number follows item i anywhere.
func (m *message) numberAfter(i int) bool {
	return slices.ContainsFunc(m.items[i+1:], func(it item) bool { return it.num != nil })
}

// numbersAfter tells whether sentence s has at least n numbers after item i.
func (m *message) numbersAfter(s, i, n int) bool {
	for k := i + 1; k < m.sents[s].to; k++ {
		if m.items[k].num != nil {
			n--
		}
	}
	return n <= 0
}

// reportTalk tells whether a sentence speaks of a report made.
func (m *message) reportTalk(s int) bool {
	for i := m.sents[s].from; i < m.sents[s].to; i++ {
		if m.inList(i, listReports) {
			return true
		}
		if m.is(i, cHint, "misreadas") {
			return true // "I wrote 94, but that was wrong"
		}
		if m.is(i, cAsk, "history") && strings.Contains(m.text(i), "last") {
			return true
		}
	}
	return false
}

// amends are the cues of words that put a report right.
var amends = cueFalse | cueMistake | cueAmend

// airInTank tells whether sentence s speaks of the air in an expansion tank, and of no test point: "air charge in the
// tank came up 18, should have been 62".
func (m *message) airInTank(s int) bool {
	return m.sentenceIs(s, cPart, "air") && m.sentenceIs(s, cItem, "") && !m.sentenceMeets(s, pointClasses)
}

// correctsByCues tells whether a sentence puts an earlier report right in words
// that no phrase foresees: "I had the rear bib wrong, it's 66", "change the
// laundry to 71". A number before the words would be this message's own.
func (m *message) correctsByCues(s int) bool {
	se := &m.sents[s]
	if m.sentenceIs(s, cAside, "all") || m.airInTank(s) {
		return false // "whoever borrowed my nail gun, it wants 100 psi not 60"
	}
	if !se.question && (m.rightsQuoted(s) || m.sentWasOff(s)) {
		return true
	}
	if !se.question && se.numbers > 1 && !m.readingBefore(se.from) && (m.contradicts(s) || m.retells(s) || m.retellsAfter(s)) ||
		!se.question && se.numbers == 1 && (m.deniesTap(s) || m.retellsTap(s) || m.movesTap(s)) {
		return true
	}
	if se.question || m.cues&amends == 0 || m.cuesIn(s)&amends == 0 ||
		!m.readingLike(s) && !(s+1 < len(m.sents) && m.readingLike(s+1)) {
		return false
	}
	set := m.cuesOf(s, se.from, se.to)
	if set.has(cueFalse) && set&(cueSent|cueEntry|cueLast) != 0 {
		return s == 0 || !m.readingBefore(se.from)
	}
	opener, amending := true, false
	// "correct the last one. it was 68 at the kitchen"
	bare := se.numbers == 0 && set&(cueSent|cueLast) != 0 && set&(cueItem|cueFollow|cueSite) == 0
	for i := se.from; i < se.to; i++ {
		it := &m.items[i]
		switch {
		case it.num != nil && it.role != roleDate && it.unit == "" && !m.fatFingeredAt(i) && !amending:
			return false
		case it.mark || it.num != nil || it.site:
			continue
		}
		for k := it.tok; k < it.tok+it.n; k++ {
			c := m.wordCues(k)
			if m.announces(i) {
				return false
			}
			if c.has(cueMistake) && !m.noSlip(i) || opener && c.has(cueAmend) && bare ||
				opener && c.has(cueAmend) && m.readingLike(s) && (!it.kinds.has(cDid) || set.has(cueSent)) && m.amends(i, se.to) {
				return s == 0 || !m.readingBefore(se.from)
			}
			amending = amending || opener && (c.has(cueAmend) || m.jotsDown(k)) // "put down 77 for the tub, I had it wrong"
			opener = opener && c.has(cueSmall)
		}
	}
	return false
}

// announces tells whether item i heads a report as the latest of its house, and changes none: "update on
// 12 Elm, kitchen 66".
func (m *message) announces(i int) bool {
	return m.says(i, "update", "updates") && m.inList(i+1, listNewsOf) && m.right(i+1, 2, true, m.siteAt) >= 0
}

// jotsDown tells whether the token at k and the next write a number down, which puts one
// right only where a mistake is owned up to.
func (m *message) jotsDown(k int) bool {
	return k+1 < len(m.toks) && m.toks[k].text == "put" && m.toks[k+1].text == "down"
}

// retells tells whether a sentence says what was reported and what is right: "I
// told you kitchen 61, it's 51", "puse 76 en la cocina pero son 67".
func (m *message) retells(s int) bool {
	se := &m.sents[s]
	told, num, first := m.opensReported(s), false, -1
	if !told && m.shut(reportedGate) {
		return false
	}
	for i := se.from; i < se.to; i++ {
		it := &m.items[i]
		switch {
		case it.kinds.has(cItem) && !m.is(i, cItem, "gauge"):
			return false
		case it.num == nil:
			told = told || m.reported(i)
		case it.value < 15 || it.unit != "" && !pressureUnit(it.unit) || it.num.time:
			return false
		case !num && m.toldBehind(i):
			told, num, first = true, true, i // "ignore the 95 I sent, kitchen is 59"
		case !told:
			return false
		case !num:
			num, first = true, i
		default:
			return m.ledRightly(i) && m.putRightLast(first, i)
		}
	}
	return false
}

// retellsAfter tells whether a sentence says what is right and then, at its end,
// what was reported: "83 kitchen, my last said 38".
func (m *message) retellsAfter(s int) bool {
	if m.shut(reportedGate) {
		return false
	}
	se := &m.sents[s]
	nums, point := 0, false
	for i := se.from; i < se.to; i++ {
		it := &m.items[i]
		switch {
		case it.kinds.has(cItem) && !m.is(i, cItem, "gauge"):
			return false
		case it.point != "":
			point = true
		case it.num == nil:
		case it.value < 15 || it.unit != "" && !pressureUnit(it.unit) || it.num.time:
			return false
		case nums == 1:
			return point && m.closes(i) && m.reported(i-1)
		default:
			nums++
		}
	}
	return false
}

// opensReported tells whether a sentence begins with what was reported, or has it
// put right: "told you 110 …", "dispatch typed 47 …, fix it".
func (m *message) opensReported(s int) bool {
	if !m.cuesIn(s).has(cueSent) {
		return false
	}
	set := m.cuesOf(s, m.sents[s].from, m.sents[s].to)
	if !set.has(cueSent) || set.has(cueWh) {
		return false
	}
	if set.has(cueAmend) {
		return true
	}
	for i := m.sents[s].from; i < m.sents[s].to; i++ {
		if it := &m.items[i]; !it.mark && !it.site {
			c := cueSet(0)
			if it.num == nil {
				c = m.wordCues(it.tok)
			}
			if c.has(cueSent) || !c.has(cueSmall) {
				return c.has(cueSent)
			}
		}
	}
	return false
}

// amends tells whether what is to be changed at item i is a reading: a test point,
// no part, and a number follows it.
func (m *message) amends(i, to int) bool {
	point, num := false, false
	for k := i + 1; k < to; k++ {
		it := &m.items[k]
		if it.point != "" {
			point = true
		} else if it.kinds.has(cItem) {
			return false
		}
		num = num || it.num != nil
	}
	return point && num
}

// readingBefore tells whether a number that may be a pressure stands before item at.
func (m *message) readingBefore(at int) bool {
	for s := range m.sents {
		if m.sents[s].from >= at {
			return false
		}
		if m.readingLike(s) {
			return true
		}
	}
	return false
}

// undoneFor makes an undoing a correction where the number to be disregarded is told and the
// right one follows: "disregard the 58, that was with the dishwasher going. Static is 66."
func (m *message) undoneFor() {
	for k := range m.asks {
		a := &m.asks[k]
		if a.About != AskUndo || len(m.readings) == 0 {
			continue
		}
		n := m.right(a.at, 3, true, func(j int) bool {
			return m.items[j].num != nil && m.items[j].unit == "" && m.items[j].role != roleReading
		})
		if n > 0 && m.readings[len(m.readings)-1].at > n && m.items[n].value >= leastPSI {
			a.About = AskCorrect
		}
	}
}

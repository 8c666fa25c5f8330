package intents

import (
	"slices"
	"strings"
)

// splitQuestions parts a sentence that asks for two things, so that each is read
// by itself: "what's due, and what's the story on 9 Elm", "plot 9 Elm and print
// the sheet".
func (m *message) splitQuestions() {
	for s := 0; s < len(m.sents); s++ {
		se := m.sents[s]
		wh, asks := m.asksFirst(se)
		if !asks {
			if i := m.toldThenAsked(se); i > 0 {
				told, asked := se, se
				told.to, asked.from, told.question = i+1, i+1, false
				m.sents[s] = told
				m.sents = slices.Insert(m.sents, s+1, asked)
			}
			continue
		}
		for i := se.from + 2; i+1 < se.to; i++ {
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

// asksFirst tells whether the first word of a sentence that adds something asks
// or orders, and whether it is a question word.
func (m *message) asksFirst(se sentence) (wh, asks bool) {
	for i := se.from; i < se.to; i++ {
		it := &m.items[i]
		if it.mark || it.site || it.num != nil {
			return false, false
		}
		set := m.wordCues(it.tok)
		if set&cues(cueWh, cueShow, cueMake, cueTrend) != 0 || it.kinds.has(cAsk) && !set.has(cueSmall) {
			return set.has(cueWh), true
		}
		if !set.has(cueSmall) {
			return false, false
		}
	}
	return false, false
}

// toldThenAsked returns the comma after which a sentence that first tells what was
// measured or seen goes on to ask: "82 at the back tap, did we get the same last visit?",
// "water's orange on the hot side, what have we seen there before". It returns 0 for none.
func (m *message) toldThenAsked(se sentence) int {
	tells, measured, at := false, false, false
	for i := se.from; i+1 < se.to; i++ {
		it := &m.items[i]
		switch {
		case it.kinds.has(cItem) && !m.is(i, cItem, "heater") || it.num != nil && it.unit == "gal":
			return 0 // what is told goes with the question: "40 gal, 60 psi, what tank"
		case it.num != nil && it.value >= 20 && !it.num.money && !it.num.time:
			measured = true
			at = at || pressureUnit(it.unit)
		case it.kinds.meets(pointClasses):
			at = true
		case it.kinds.has(cSym), it.kinds.has(cColor):
			tells = true
		}
		if m.text(i) != "," || !(tells || measured && at) {
			continue
		}
		if m.turnsToAsk(i+1) && m.right(i, se.to, true, m.isNum) < 0 {
			return i
		}
	}
	return 0
}

// tellsAfter tells whether the comma at item i ends a question or an order and somebody's
// complaint follows: "plot all we have on 44 Oak, she says the pressure surges all day".
func (m *message) tellsAfter(i, to int) bool {
	if m.text(i) != "," {
		return false
	}
	who, _, _ := strings.Cut(m.text(i+1), " ")
	switch who {
	case "somebody", "someone", "they", "she", "he", "caller", "shes", "hes", "theyre":
	default:
		if who == "im" || !person(who) && !m.is(i+1, cWhose, "person") {
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
	if !also && (m.text(i) != "," || !m.is(from, cAsk, "snooze")) {
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
	if m.wordCues(it.tok).has(cueWh) {
		return true
	}
	verb, rest, _ := strings.Cut(m.text(i)+" "+m.text(i+1), " ")
	who, _, _ := strings.Cut(rest, " ")
	switch verb {
	case "did", "have", "has", "was", "is", "are", "do", "does", "should", "can":
		switch who {
		case "i", "we", "you", "they", "anybody", "anyone", "that", "it", "this", "there":
			return true
		}
	}
	return false
}

// asksAgain tells whether item i joins another question or order to what stands
// before it.
func (m *message) asksAgain(i int) bool {
	next := &m.items[i+1]
	if next.mark || next.site || next.num != nil {
		return false
	}
	set := m.wordCues(next.tok)
	switch m.text(i) {
	case "and", "y", "&":
		return set&cues(cueWh, cueShow, cueMake, cueFinish) != 0 || m.text(i+1) == "mark"
	case ",":
		return set.has(cueWh)
	}
	return false
}

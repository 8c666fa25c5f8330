package intents

import "strings"

// Lists of the lexicon that these rules know.
var (
	listBeginsClause = listOf("begins clause")
	listInOrder      = listOf("in order")
	listClauseVerbs  = listOf("clause verbs")
)

// sentence is a range of items; line tells lines apart.
type sentence struct {
	from, to    int
	line        int
	question    bool
	asking      bool // holds a question or an instruction to the bot
	asksConvert bool
	asksDue     bool // wants the follow-ups that are due
	asksSize    bool // wants the size of a tank
	remembers   bool // told from memory as a whole
	askAt       int  // 1+item of a question about the cause: numbers after it in its clause are its own
	tells       bool // reports something beside its question
	closes      bool // says that a follow-up is done
	snoozes     bool // puts a follow-up off
	aside       bool // speaks of no house
	header      int  // item index of a colon after a first word, -1 if none
	numbers     int  // how many numbers it has
	cued        bool
	cues        cueSet // of all its words, once cued
}

// longestSentence is how many items a sentence may have. Nobody dictates one as
// long; rules compare what stands in one sentence with each other, and their time
// must grow with the message, not with its square.
const longestSentence = 120

// anewWords begin another clause.
var anewWords = opener{lists: []list{listBeginsClause}}

// cut finds sentences and segments.
func (m *message) cut() {
	m.sents = m.scratch.sents[:0]
	line, seg := 0, 0
	start := 0
	close := func(end int, q bool) {
		if end > start+1 || end > start && !m.isMark(start, "\n") {
			m.sents = append(m.sents, sentence{from: start, to: end, line: line, question: q, header: -1})
		}
	}
	for i := range m.items {
		it := &m.items[i]
		if i-start >= longestSentence {
			close(i, false)
			start = i
			seg++
		}
		it.sent, it.seg = len(m.sents), seg
		if !it.mark {
			if m.said(i, keyAnew) || m.said(i, keyJoins) && (m.joinsReading(i) || m.joinsClause(i)) {
				seg++
				it.seg = seg
			}
			continue
		}
		switch it.text {
		case "\n", ".", "!", "?", ";", "...":
			if it.text == "?" && m.text(i-1) == "=" {
				continue // "3.5 bar = ? psi"
			}
			if it.text != "?" && m.tapsInOrder(i) {
				seg++
				continue
			}
			if i == start && len(m.sents) > 0 && (it.text == "\n" || m.isMark(i, "!", "?", ".") && m.isMark(i-1, "!", "?")) {
				last := len(m.sents) - 1 // "hit 140!! laundry", the end of a line: a second mark ends no sentence of its own
				m.sents[last].to, m.sents[last].question = i+1, m.sents[last].question || it.text == "?"
				it.sent, start = last, i+1
				if it.text == "\n" {
					seg++
					line++
				}
				continue
			}
			close(i+1, it.text == "?" && !m.ordersOK(start, i))
			start = i + 1
			seg++
			if it.text == "\n" {
				line++
			}
		case ",", "/", "(", ")", "|":
			seg++
		case "-":
			if t := m.toks[it.tok]; !t.glued || it.tok+1 < len(m.toks) && !m.toks[it.tok+1].glued {
				seg++
			}
		}
	}
	close(len(m.items), false)
	m.scratch.sents = m.sents
	m.splitQuestions()
	for k := range m.sents {
		s := &m.sents[k]
		words := 0
		for i := s.from; i < s.to; i++ {
			it := &m.items[i]
			if it.sent = k; !it.mark {
				if words++; it.num != nil {
					s.numbers++
				}
			} else if s.header < 0 && words > 0 && words <= 6 && it.text == ":" {
				s.header = i
			}
		}
	}
}

// ordersOK tells whether the sentence from item start to the mark at i is an order that only ends in "ok?": "recheck
// 12 Elm this Wednesday ok? …".
func (m *message) ordersOK(start, i int) bool {
	if !m.says(i-1, "ok", "okay", "k") {
		return false
	}
	for m.items[start].mark && start < i {
		start++
	}
	if !m.is(start, cDo, "") || m.is(start, cDo, "set") || !orderForm(m.text(start)) || m.items[start].kinds.has(cItem) {
		return false
	}
	m.unsay(i - 1) // it is no condition
	return true
}

// tapsInOrder tells whether the mark at item i only parts a row of numbers from their taps, as many
// as the numbers: "63, 63, 64. (kitchen, tub, laundry in that order)".
func (m *message) tapsInOrder(i int) bool {
	numbers, taps := 0, 0
	for k := i - 1; k >= 0 && (m.isNum(k) || numbers > 0 && m.partsRow(k)); k-- {
		if m.isNum(k) && m.items[k].value >= leastPSI {
			numbers++
		}
	}
	if numbers < 2 {
		return false
	}
	k := i + 1
	for m.isMark(k, "(", "\n") {
		k++
	}
	for ; k < len(m.items) && (m.meets(k, pointClasses) || taps > 0 && m.partsRow(k)); k++ {
		if m.meets(k, pointClasses) {
			taps++
		}
	}
	return taps == numbers && (k >= len(m.items) || m.inList(k, listInOrder) || m.isMark(k, ")", ".", "\n"))
}

// partsRow tells whether item k stands between two members of a row.
func (m *message) partsRow(k int) bool { return m.says(k, ",", "/", "and", "&", "y") }

// joinsClause tells whether the "and" at item i joins a clause with a subject and a verb of its own
// to one that denies something: "the relief valve can't open and its outlet is soldered shut".
func (m *message) joinsClause(i int) bool {
	if i == 0 {
		return false
	}
	seg, denied := m.items[i-1].seg, false
	for k := i - 1; k >= 0 && m.items[k].seg == seg && !denied; k-- {
		denied = m.is(k, cNeg, "") && m.text(k) != "no" || strings.Contains(m.text(k), "nt ")
	}
	if !denied {
		return false
	}
	for k := i + 1; k < len(m.items) && k <= i+4 && !m.items[k].mark; k++ {
		if m.isNum(k) || m.is(k, cNeg, "") {
			return false
		}
		if t := m.text(k); m.inList(k, listClauseVerbs) && k > i+1 || oneOf(t, "there is", "theres", "water out") || m.is(k, cSym, "") && strings.Contains(t, " is ") {
			return true
		}
	}
	return false
}

// joinsReading tells whether the "and" at item i begins a clause that tells a pressure at its
// test point, where the clause before it tells none: "neighbor had 140 last month and 82 at
// the front". What it only adds to a list stays in one clause: "front 80 and rear 82", "tub
// and kitchen 60", "80 and 82 at the front".
func (m *message) joinsReading(i int) bool {
	if i == 0 || i+2 >= len(m.items) || m.items[i-1].mark || !m.pairBetween(i+1, min(len(m.items), i+8)) {
		return false
	}
	before := &m.items[i-1]
	if m.isNum(i+1) && before.num != nil && !before.fullYear() || !m.isNum(i+1) && before.kinds.meets(pointClasses) {
		return false
	}
	for k := i - 1; k >= 0 && m.items[k].seg == before.seg && m.items[k].sent == before.sent; k-- {
		if (m.items[k].num != nil || m.items[k].kinds.meets(pointClasses)) && m.pairBetween(k, min(i, k+4)) {
			return false
		}
	}
	return true
}

// pairBetween tells whether a number and a test point stand at the beginning of items from..to,
// in either order and only words of measuring before: "82 at the front", "gauge says 61 at
// the tub".
func (m *message) pairBetween(from, to int) bool {
	num, point := false, false
	for k := from; k < to; k++ {
		it := &m.items[k]
		switch {
		case it.num != nil:
			if num || it.value < leastPSI || it.num.money || it.num.time {
				return false
			}
			num = true
		case it.kinds.meets(pointClasses):
			point = true
		case it.mark && it.text != ":" && it.text != "=" && it.text != "#", m.said(k, keyJoins):
			return false
		case !num && !point && !it.kinds.meets(leadsReading) && !m.is(k, cItem, "gauge") && !m.says(k, "the", "i", "it", "its", "reads"):
			return false
		}
		if num && point {
			return true
		}
	}
	return false
}

// leadsReading are classes of what may stand before a number and its test point.
var leadsReading = setOf(cDeterminer, cNow, cOwn, cClaim, cGauged)

package intents

import (
	"strings"

	"lazyhand/assess"
)

// Lists of the lexicon that these rules know.
var (
	listOntoList      = listOf("onto list")
	listOfList        = listOf("of list")
	listCustomersDays = listOf("customers days")
)

// booked tells whether "set" at item i books a day for what stands before it: "prv swap
// set for June 24".
func (m *message) booked(i int) bool {
	return m.says(i+1, "for", "up for", "on") && (m.timeWordAt(i+2) || m.timeWordAt(i+3)) && i > 0 &&
		(m.is(i-1, cBase, "") || m.is(i-1, cDo, "") || m.inList(i-1, listLinks))
}

// looksAgain tells whether "again" at item i ends a promise to measure once more: "peek
// at it again in 2 wks", "put the gauge on it again", "eyes on that number again".
func (m *message) looksAgain(i int) bool {
	if !m.is(i, cHint, "again") {
		return false
	}
	return m.left(i, 9, true, func(k int) bool { return m.is(k, cHint, "looks") && m.items[k].seg == m.items[i].seg }) >= 0
}

// meantAction names what "doing it" at item i speaks of: the last thing to do that was
// told before it, "prv wants lowering, 98 at the washer, doing it Wednesday".
func (m *message) meantAction(i int) (assess.Action, bool) {
	first := max(m.items[i].sent-1, 0)
	for k := i - 1; k >= m.sents[first].from; k-- {
		it := &m.items[k]
		for _, t := range it.tags {
			c := t.class
			if c != cDo && c != cBase || m.is(k, cItem, "") || m.is(k, cPart, "") || strings.HasPrefix(it.text, "doing ") {
				continue
			}
			switch t.value {
			case "replace", "replaced":
				return m.planCode("replace", k, it.sent)
			case "install", "installed":
				return m.planCode("install", k, it.sent)
			case "set":
				return m.planCode("set", k, it.sent)
			case "recheck":
				return assess.Recheck, !it.lists.has(listBareChecks)
			}
			if m.serviceNeeded(k) {
				return assess.OtherAction, true
			}
		}
	}
	return "", false
}

// arrival tells whether a day is only when a part comes, while the sentence names
// another for the job: "ordered the prv, lands wed, I'll be there thurs to swap it".
func (m *message) arrival(w moment, days int) bool {
	return days > 1 && m.left(w.at, 3, true, func(k int) bool { return m.is(k, cHint, "arrives") }) >= 0
}

// dayOfEvent tells whether a day is that of something of the customer's, in a clause that tells no more:
// "just a check for the sale, closing is on the 30th".
func (m *message) dayOfEvent(w moment) bool {
	from := m.clauseStart(w.at)
	if from == m.sents[m.items[w.at].sent].from {
		return false
	}
	event := false
	for k := from; k < w.at; k++ {
		named := m.inList(k, listCustomersDays)
		if !named && !m.items[k].mark && !m.is(k, cDeterminer, "") && !m.is(k, cHint, "possessive") && !m.is(k, cHint, "building") &&
			!m.inList(k, listLinks) && !m.says(k, "on", "for", "set", "el", "para", "and", "at") {
			return false
		}
		event = event || named
	}
	return event
}

// toldDone tells whether the word at i, which may be a thing to do as well, is told as
// done: "reg was just set", "I set", "got it set".
func (m *message) toldDone(i int) bool {
	for k := i - 1; k >= m.sents[m.items[i].sent].from && k >= i-4 && m.items[k].seg == m.items[i].seg; k-- {
		if m.is(k, cWill, "") {
			return false
		}
		if m.is(k, cHint, "told") || m.is(k, cHad, "") {
			return true
		}
	}
	return false
}

// laterIn tells whether a later visit is named after the word at i in its clause: "adj reg
// next trip".
func (m *message) laterIn(i int) bool {
	return m.right(i, 6, true, func(k int) bool { return m.is(k, cHint, "later") && m.items[k].seg == m.items[i].seg }) >= 0
}

// spanOfPlan tells whether the number at i is the time of something to do, without its unit,
// and asks for it: "swap tank in 4".
func (m *message) spanOfPlan(i int) bool {
	if prev := m.text(i - 1); prev != "in" && prev != "en" || m.items[i].value > 90 || m.text(i-1) == "en" && m.items[i].value > 12 ||
		!m.items[i].num.integer || m.items[i].num.words || !m.closes(i) {
		return false
	}
	do := m.left(i, 6, false, func(k int) bool {
		return m.isAny(k, cDo, "replace", "install", "recheck") && (!m.is(k, cDid, "") || m.is(k, cBase, "")) && m.items[k].seg == m.items[i].seg
	})
	if do < 0 || m.items[do].point != "" || m.left(i, i-do-1, false, func(k int) bool { return m.is(k, cDid, "") }) >= 0 {
		return false
	}
	if p := m.prevNum(i); p >= 0 && m.items[p].role == roleDuration && m.says(p-1, "in", "en") {
		m.items[i].unit = m.items[p].unit // "recheck in 2 weeks, swap tank in 4"
		return true
	}
	n := m.span(i, i+1)
	spans := []string{n + " days", n + " weeks", n + " months"}
	if m.spanish() {
		spans = []string{n + " dias", n + " semanas", n + " meses"}
	}
	m.unclear(n, spans, "In "+n+" what: days, weeks or months?", "¿En "+n+" qué: días, semanas o meses?")
	return true
}

// dayAhead tells whether a day or a span to come follows the word at i in its clause,
// with no other thing to do between.
func (m *message) dayAhead(i int) bool {
	for k := i + 1; k < len(m.items) && k <= i+8 && m.items[k].seg == m.items[i].seg && m.items[k].sent == m.items[i].sent; k++ {
		if t := m.text(k); t == "till" || t == "til" || t == "until" || m.is(k, cDo, "") && !m.is(k, cPart, "") || m.is(k, cDid, "") {
			return false
		}
		if m.timeWordAt(k) || m.isNum(k) && unitDays(m.items[k].unit) > 0 && m.text(k-1) == "in" {
			return true
		}
	}
	return false
}

// putsOn tells whether a sentence orders nothing but a house onto the list of a day: "put
// 123 Elm on for the 22nd", "pencil in 9 Oak Ct Thursday morning", "apunta 12 Elm para el 22".
func (m *message) putsOn(s int) bool {
	return m.listOrderEnd(s) == m.sents[s].to
}

// listOrderEnd returns where the words end that order a house onto the list of a day, -1 if the
// sentence does not begin so: before "cambiar" in "pon 18 Plover para el viernes, cambiar tanque".
func (m *message) listOrderEnd(s int) int {
	first := m.firstOf(s)
	se := &m.sents[s]
	if first >= se.to || !m.inList(first, listOntoList) || !m.tellsTime(s) {
		return -1
	}
	house := false
	for i := first + 1; i < se.to; i++ {
		switch it := &m.items[i]; {
		case it.site:
			house = true
		case it.mark && !m.isMark(i, "?"), m.inList(i, listOfList), m.timeWordAt(i), it.num != nil &&
			(it.num.time || it.unit == "hour" || unitDays(it.unit) > 0 || it.role == roleDate):
		case house:
			return i
		default:
			return -1
		}
	}
	if !house {
		return -1
	}
	return se.to
}

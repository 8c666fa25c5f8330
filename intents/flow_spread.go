package intents

import (
	"slices"
	"strings"

	"lazyhand/assess"
)

// Lists of the lexicon that these rules know.
var (
	listReadOff = listOf("read off")
	listLaterOn = listOf("later on")
)

// flowWithin spreads a flow over the readings lo..hi of its own sentence.
func (m *message) flowWithin(a mention, lo, hi int) {
	here := m.readings[lo:hi]
	first, last := &here[0], &here[len(here)-1]
	quantified := m.quantified(a.at)
	apart := m.items[first.at].seg != m.items[a.at].seg
	behind := m.items[last.at].seg != m.items[a.at].seg
	ahead, after := a.at < first.at, a.at > last.at
	if m.flowInBrackets(a, here) || !quantified && m.flowAloneInBrackets(a, here) {
		return
	}
	switch {
	case m.allOfItBefore(a.at):
		flowOfRest(m.readings[:hi], a.flow)
		return
	case a.flow == assess.Flowing && ahead && apart && m.saysElse(a.at):
		return
	case a.flow == assess.Flowing && !quantified && m.bracketed(a.at) >= 0:
		flowBeforeBracket(here, a.flow, m.bracketed(a.at))
		return
	case m.thenRan(a):
		flowOfNext(here, a)
		return
	case m.timeAnew(a):
		for k := range here {
			if here[k].at > a.at {
				m.flowOfList(here[k:], a.flow)
				break
			}
		}
		return
	case ahead && (apart || m.headed(a.at, first.at) || m.leads(a.at) && !behind || m.leadsToList(a, here)):
		flowOnward(here, a.flow)
	case a.flow == assess.Static && m.onlyFlow(a.at) && m.sentenceIs(first.sent, cSym, "creep"):
		flowOfRest(here, a.flow)
	case ahead && m.opensWith(a.at):
		m.flowOfList(here, a.flow)
	case a.flow == assess.Static && after && !behind && m.rowOfNumbers(first.at, last.at):
		flowOfRest(here, a.flow)
	case after && !apart && m.onlyFlow(a.at) && !(m.leadsTo(first.at, last.at) && m.text(first.at-1) == "from"):
		for k := range here { // said last of a list without pauses
			here[k].Flow = a.flow
		}
	case after && (quantified || behind || len(here) == 1):
		m.flowBack(here, a, quantified)
	case a.flow == assess.Flowing && beginsWith(m.text(a.at), "open", "abr") && !ahead && a.at < last.at && !quantified:
		flowOfNext(here, a) // "68 with all off, opened the shower and it dropped to 51"
	case quantified:
		n := len(here)
		for n > 1 && !ahead && here[n-1].at > a.at {
			n-- // "nothing was running for either, then I lit it and the laundry went to 91"
		}
		flowOfRest(here[:n], a.flow)
	}
	if a.flow == assess.Static {
		m.flowRestedWith(here, a)
		m.restsOn(here)
	}
	// "street 114, after PRV 66 / tub 65, all of it with nothing running", "66 / lav 65, all static"
	if after && (m.allOfIt(a.at) || len(here) == 1 && m.allSo(a.at)) {
		for k := lo - 1; k >= 0 && m.readings[k].Flow == ""; k-- {
			m.readings[k].Flow = a.flow
		}
	}
}

// opensWith tells whether the sentence of the flow at item i begins with it: "with the tub running kitchen 57".
func (m *message) opensWith(i int) bool {
	from := m.sents[m.items[i].sent].from
	with := func(k int) bool {
		return m.says(k, "with", "w/", "w", "while", "con") || strings.HasPrefix(m.text(k), "with ")
	}
	if k := m.left(i, 5, false, with); k > from && m.timeBefore(from, k) {
		from = k // "after the swap w/ no water running kitchen 70 shower 69"
	}
	if !with(from) && with(i) {
		from = i
	} else if !with(from) {
		from = m.left(i, 8, false, with) // "replaced the prv, with the new one in and nothing running kitchen is 60"
	}
	if from < 0 {
		return false
	}
	if m.is(i, cStatic, "") && m.right(from, i-from-1, true, m.isNum) < 0 {
		return true
	}
	for k := from + 1; k < i; k++ {
		if !m.is(k, cDeterminer, "") && !m.is(k, cFixture, "") && m.items[k].point == "" && !(m.isNum(k) && m.items[k].value <= 6) {
			return false
		}
	}
	return true
}

// timeBefore tells whether items from..to tell only when it was, by what was done: "after the swap".
func (m *message) timeBefore(from, to int) bool {
	told := false
	for k := from; k < to; k++ {
		if m.isNum(k) || m.items[k].point != "" {
			return false
		}
		told = told || m.is(k, cAfter, "") || m.is(k, cBefore, "")
	}
	return told
}

// flowOfList gives a flow to the first reading and to those that go on from it with taps of their own.
func (m *message) flowOfList(here []reading, flow assess.Flow) {
	for k := range here {
		if r := &here[k]; r.Flow != "" && r.Flow != flow || k > 0 && (len(r.points) == 0 || !m.linkedList(here[k-1].at, r.at)) {
			return
		}
		here[k].Flow = flow
	}
}

// linkedList tells whether two numbers stand in a list of taps, which may say "is" of each: "the tub is 89 and
// the kitchen is 90".
func (m *message) linkedList(a, b int) bool {
	return m.listedWith(a, b, func(k int) bool { return m.inList(k, listLinks) || m.inList(k, listReadAt) })
}

// restsOn lets resting water go on to what the same gauge showed later: "with all shut it read 60 and then 74".
func (m *message) restsOn(here []reading) {
	for k := 1; k < len(here); k++ {
		a, b := &here[k-1], &here[k]
		told := func(k int) bool { return m.flowTag(k) != "" && m.items[k].seg == m.items[b.at].seg }
		if a.Flow == assess.Static && b.Flow == "" && m.laterOnIt(a.at, b.at) && m.right(b.at, 9, true, told) < 0 {
			b.Flow = assess.Static
		}
	}
}

// laterOnIt tells whether only words of time stand between two pressures, so that the gauge stayed where it was
// and the water as it was: "60 and then 74", "60 y luego 74".
func (m *message) laterOnIt(a, b int) bool {
	then := false
	for k := a + 1; k < b; k++ {
		switch {
		case m.inList(k, listLaterOn):
			then = true
		case !m.isMark(k, ",") && !m.says(k, "and", "y", "it", "to", "a", "at", "it was", "was"):
			return false
		}
	}
	return then
}

// fellFrom tells whether two readings are what a pressure fell from and what it fell to.
func (m *message) fellFrom(first, last *reading) bool {
	return m.text(first.at-1) == "from" && m.leadsTo(first.at, last.at) && first.PSI > last.PSI
}

// flowInBrackets keeps a flow told in brackets to the readings that stand in them: "64 kitchen (51
// flowing)". False where none does.
func (m *message) flowInBrackets(a mention, here []reading) bool {
	inside := false
	for k := range here {
		if r := &here[k]; m.inSameBrackets(a.at, r.at) {
			inside = true
			if r.Flow == "" {
				r.Flow = a.flow
			}
		}
	}
	return inside
}

// flowAloneInBrackets keeps a flow that stands alone in brackets to the reading right before them: "lav 98,
// kitchen 91 (static)". False where none stands there.
func (m *message) flowAloneInBrackets(a mention, here []reading) bool {
	if !m.isMark(a.at-1, "(", "[") || !m.isMark(a.at+1, ")", "]") || m.items[a.at].n > 1 {
		return false // "(all off)" is the house
	}
	for k := len(here) - 1; k >= 0; k-- {
		r := &here[k]
		if r.at > a.at {
			continue
		}
		for j := r.at + 1; j < a.at-1; j++ {
			if m.items[j].mark {
				return false
			}
		}
		if r.Flow == "" {
			r.Flow = a.flow
		}
		return true
	}
	return false
}

// inSameBrackets tells whether the items a and b stand in one pair of brackets.
func (m *message) inSameBrackets(a, b int) bool {
	open := m.bracketed(a)
	return open >= 0 && b > open && m.right(open, b-open, true, func(j int) bool { return m.isMark(j, ")") }) < 0
}

// rowOfNumbers tells whether nothing but marks and "then" stands between the readings from..to: "61, 64,
// 68 in ten minutes with everything shut".
func (m *message) rowOfNumbers(from, to int) bool {
	for k := from + 1; k < to; k++ {
		if !m.isMark(k, ",", "-") && !m.numIs(k, roleReading) && !m.says(k, "then", "and", "to", "luego", "y") {
			return false
		}
	}
	return to > from
}

// leadsToList tells whether a flow belongs to a clause that goes on, by a word of reading,
// to a plain list of readings, up to one with a flow of its own: "with nothing running I got side bib 72, kitchen 71 and washer box 72".
func (m *message) leadsToList(a mention, here []reading) bool {
	if m.left(here[0].at, here[0].at-a.at, true, func(k int) bool { return m.inList(k, listReadOff) }) < 0 {
		return false
	}
	for k := 1; k < len(here) && (here[k].Flow == "" || here[k].Flow == a.flow); k++ {
		for j := here[k-1].at + 1; j < here[k].at; j++ {
			it := &m.items[j]
			if it.point == "" && it.role != roleTaken && !m.is(j, cDeterminer, "") && !m.is(j, cUnit, "") && !m.says(j, ",", "and", "&", "y", "at", "on", "en") {
				return false
			}
		}
	}
	return true
}

// allOfItBefore tells whether "all of it" leads to the flow at item i, which ends its sentence:
// "street 114, after PRV 66 / tub 65, all of it with nothing running".
func (m *message) allOfItBefore(i int) bool {
	k := m.left(i, 4, false, func(k int) bool { return m.is(k, cHint, "allofit") })
	return k >= 0 && m.closes(i) && !m.inList(k-1, listTellsWhen) // "58 once all of it was closed" is that one's
}

// flowOfRest gives a flow to all readings that have none.
func flowOfRest(here []reading, flow assess.Flow) {
	for k := range here {
		if here[k].Flow == "" {
			here[k].Flow = flow
		}
	}
}

// flowBeforeBracket gives a flow in brackets to the reading before them: "meter 104, tub 57 (sink
// running)".
func flowBeforeBracket(here []reading, flow assess.Flow, bracket int) {
	for k := range slices.Backward(here) {
		if r := &here[k]; r.at < bracket && r.at >= bracket-3 {
			r.Flow = flow
			return
		}
	}
}

// flowOfNext gives a flow that was set going on the way to the reading after it: "kitchen 68, then
// I ran the tub and it went to 40".
func flowOfNext(here []reading, a mention) {
	for k := range here {
		if r := &here[k]; r.at > a.at {
			if r.Flow == "" {
				r.Flow = a.flow
			}
			return
		}
	}
}

// flowOnward gives a flow said first, once, to what follows, up to another flow.
func flowOnward(here []reading, flow assess.Flow) {
	for k := range here {
		switch r := &here[k]; r.Flow {
		case "", flow:
			r.Flow = flow
		default:
			return
		}
	}
}

// flowBack gives a flow said after readings to the last of them, and to those before it that the
// words about it reach.
func (m *message) flowBack(here []reading, a mention, quantified bool) {
	last := len(here) - 1
	for k := range slices.Backward(here) {
		r := &here[k]
		switch {
		case k == last-1 && a.flow == assess.Flowing && m.leadsTo(r.at, here[last].at):
			return // "from 70 to 58, with the tub open"
		case k == last-1 && a.flow == assess.Flowing && fellTo(r, &here[last]):
			return // "rear bib 66, 48 while the tub fills"
		case r.Flow != "" && (k < last || r.Flow != a.flow):
			return
		case k == last || quantified || m.items[r.at].seg != m.items[a.at].seg:
			r.Flow = a.flow
		}
	}
}

// fellTo tells whether reading b is a lower pressure of the gauge that showed reading a.
func fellTo(a, b *reading) bool {
	return b.PSI < a.PSI && (len(b.points) == 0 || samePlace(a, b))
}

// flowRestedWith gives a rest that a word joins to readings before it to those readings.
func (m *message) flowRestedWith(here []reading, a mention) {
	w := m.restedWith(a.at)
	for k := len(here) - 1; k >= 0 && w >= 0; k-- {
		r := &here[k]
		if r.at < w && r.Flow == "" && (k+1 == len(here) || here[k+1].at > w || m.chained(r.at, here[k+1].at) || m.plainList(r.at, here[k+1].at)) {
			r.Flow = a.flow
		}
	}
}

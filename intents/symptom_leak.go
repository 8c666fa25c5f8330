package intents

import (
	"slices"
	"strings"

	"lazyhand/assess"
)

// Lists of the lexicon that these rules know.
var (
	listLeaksStill   = listOf("leaks still")
	listRunsOn       = listOf("runs on")
	listFinishes     = listOf("finishes")
	listToilets      = listOf("toilets")
	listLeakedBefore = listOf("leaked before")
	listBursts       = listOf("bursts")
)

var refillWords = opener{lists: []list{listRunsOn}}

// toilet tells whether what runs at item i is a toilet that will not stop.
func (m *message) toilet(i int) bool {
	if !m.said(i, keyRefills) || m.text(i) == "runs at" && m.isNum(i+1) || m.text(i) == "keeps" && m.text(i+1) != "cycling" {
		return false
	}
	if m.inList(i-1, listFinishes) {
		return m.is(i-2, cNeg, "") // "a thud when the toilet stops filling"
	}
	for k := i - 1; k >= 0 && k >= i-7 && m.items[k].sent == m.items[i].sent; k-- {
		if m.inList(k, listToilets) || m.countsToilets(k) {
			for j := k + 1; j < i; j++ {
				if m.signsOf(j).has(signWhen) {
					return false // "toilet whistles when it fills"
				}
				if m.items[j].mark || m.items[j].num != nil && m.text(j-1) != "on" { // "the toilet on two keeps running"
					return false
				}
			}
			if m.atTimes(k) {
				return false // "a foghorn whenever the toilet refills"
			}
			return !(m.text(k-1) == "with" || m.text(k-2) == "with" || m.text(k-1) == "w/" || m.text(k-1) == "con")
		}
	}
	return false
}

// countsToilets tells whether item k is a number of toilets: "two toilets".
func (m *message) countsToilets(k int) bool {
	it := &m.items[k]
	next := it.tok + it.n // the token of what is counted belongs to the number and is no item of its own
	return it.num != nil && it.unit == "other" && next < len(m.toks) && m.p.lex.inList(m.toks[next].text, listToilets)
}

// atTimes tells whether what stands at item i only says when something else is heard:
// "a foghorn whenever the toilet refills", "three knocks right after the toilet fills".
func (m *message) atTimes(i int) bool {
	return m.left(i, 3, false, func(k int) bool { return m.signsOf(k).has(signWhen) }) >= 0
}

// looksSo tells whether "lks" at item i is "looks": a colour or a likeness follows.
func (m *message) looksSo(i int) bool {
	if m.toks[m.items[i].tok].text != "lks" || m.is(i-1, cNeg, "") {
		return false
	}
	const coloured = signDark | signRust | signDarkly | signRustly | signLike
	return m.is(i+1, cColor, "") || m.signsOf(i+1)&coloured != 0 || m.text(i+1) == "lk" || m.is(i+1, cCond, "")
}

// brokeAndMended tells whether what burst before the deed at item at was mended by it:
// "split on the line to the rear bib - repaired".
func (m *message) brokeAndMended(at int) bool {
	if !m.is(at, cDid, "fixed") || !pastForm(m.text(at)) || !m.closes(at) || !m.isMark(at-1, ",", "-", ":", "(") {
		return false
	}
	return m.left(at, 9, true, func(k int) bool { return m.is(k, cFitting, "burst") }) >= 0
}

// repaired tells whether the leak at item i was mended on the visit.
func (m *message) repaired(i int) bool {
	for k := range m.verbs {
		if v := &m.verbs[k]; v.what == "fixed" && m.items[v.at].sent == m.items[i].sent && m.byCustomer(v.at) {
			return true // "kitchen faucet dripped, customer fixed it last week"
		}
	}
	if m.drippedBefore(i) {
		return true
	}
	for _, w := range m.work {
		if w.Action == assess.RepairedLeak && (m.anotherLeak(w.at, i) || m.leaksElsewhere(w.at, i)) {
			continue
		}
		if w.Action == assess.RepairedLeak && m.items[w.at].sent == m.items[i].sent {
			return m.text(i) != "leaks" || i < w.at || !m.says(i-1, "further", "other", "more") // "fixed the drip, no further leaks"
		}
		if w.Action == assess.RepairedLeak && (m.text(i) != "leaks" || i < w.at) {
			return !m.absent(i, assess.Leak)
		}
	}
	return false
}

// drippedBefore tells whether the leak at item i is that of a drain valve that was replaced after it: "drain valve
// dripped so I put a brass one in".
func (m *message) drippedBefore(i int) bool {
	replaced := func(w workDone) bool {
		return w.Action == assess.ReplacedDrainValve && w.at > i && m.items[w.at].sent <= m.items[i].sent+1
	}
	if !slices.ContainsFunc(m.work, replaced) || m.is(i-1, cNeg, "") {
		return false
	}
	drain := func(k int) bool { return m.is(k, cItem, "drain_valve") || strings.HasSuffix(m.text(k), "drain valve") }
	return m.left(i, 4, true, drain) >= 0
}

// anotherLeak tells whether the leak at item i is another one than what was mended
// at deed: it is told after it, of another place, and not as what was: "fixed the
// shower leak, kitchen faucet still drips".
func (m *message) anotherLeak(deed, i int) bool {
	if i <= deed || m.items[deed].sent != m.items[i].sent {
		return false
	}
	stops := func(k int) bool { return m.is(k, cHint, "stops") || m.is(k, cNeg, "") && !m.is(k-1, cNeg, "") }
	if m.left(i, 3, true, stops) >= 0 {
		return false // "snugged the packing nut, hose bib quit dripping"
	}
	parted, place := false, false
	for k := deed + 1; k < i; k++ {
		switch {
		case m.inList(k, listBeforeClause):
			parted, place = true, false
		case m.inList(k, listLeakedBefore):
			return false
		case m.inList(k, listLeaksStill):
			if parted {
				return true
			}
		}
		place = place || m.items[k].point != "" || m.is(k, cFixture, "") || m.is(k, cPoint, "") || m.is(k, cItem, "") || m.is(k, cFitting, "part")
	}
	return parted && place
}

// leaksElsewhere tells whether the leak at item i, told in a sentence behind that of a deed, is
// another one than what was mended: it goes on, or is of another place. "hose bib drip is
// fixed. toilet still runs".
func (m *message) leaksElsewhere(deed, i int) bool {
	mended := &m.sents[m.items[deed].sent]
	if i < mended.to {
		return false
	}
	from, still, places := m.clauseStart(i), false, 0
	for k := from; k < m.clauseEnd(i); k++ {
		switch {
		case m.inList(k, listLeakedBefore) || m.is(k, cHint, "stops") || m.is(k, cNeg, ""):
			return false
		case m.says(k, "still", "also", "sigue"):
			still = true
		case m.is(k, cFixture, "") || m.items[k].point != "" || m.is(k, cPoint, ""):
			places++
			for j := mended.from; j < mended.to; j++ {
				if m.text(j) == m.text(k) || m.items[k].point != "" && m.items[j].point == m.items[k].point {
					return false
				}
			}
		}
	}
	return places > 0 && (still || m.text(i) != "leak" && strings.HasSuffix(m.text(i), "s") && m.placeTold(mended))
}

// placeTold tells whether a sentence names a toilet or a tap.
func (m *message) placeTold(s *sentence) bool {
	for k := s.from; k < s.to; k++ {
		if namesToilet(m.text(k)) || m.is(k, cFixture, "") || m.items[k].point != "" {
			return true
		}
	}
	return false
}

// bursts tells whether item i says that a pipe, a hose or a line burst: "washer hose
// burst", "pipe froze and split in the attic". A tank's bladder that burst has failed.
func (m *message) bursts(i int) bool {
	if !m.is(i, cFitting, "burst") {
		return false
	}
	switch {
	case m.says(i, "burst", "bursted"):
		if m.text(i+1) == "of" || m.text(i+1) == "pressure" || m.text(i+1) == "rating" {
			return false // "rated 200 with a burst of 1200"
		}
	case m.inList(i, listBursts):
		return false
	}
	s := &m.sents[m.items[i].sent]
	for k := max(s.from, i-6); k < min(s.to, i+4); k++ {
		if m.items[k].mark && k < i {
			if m.isItemNear(i) {
				return false
			}
			continue
		}
		if k > i && m.clauseStart(k) != m.clauseStart(i) {
			break // "hose burst and tank air 38"
		}
		if m.is(k, cItem, "") && m.items[k].point == "" || m.text(k) == "bladder" || m.is(k, cNeg, "") {
			return false
		}
	}
	opens := m.clauseStart(i) == i // "washer hose let loose, sprays all over"
	for k := max(s.from, i-6); k < min(s.to, i+4); k++ {
		if k != i && (m.is(k, cFitting, "part") || m.is(k, cPipe, "")) && (m.items[k].seg == m.items[i].seg || opens && k < i) {
			return true
		}
	}
	return false
}

// notColor tells whether a colour is denied without its water: "no it isn't black,
// it's rusty", "not brown, more grey".
func (m *message) notColor(i int) bool {
	t := m.text(i - 1)
	if t == "more" && m.items[max(i-2, 0)].mark && m.left(i, 5, false, func(k int) bool { return m.is(k, cColor, "") }) >= 0 {
		return true
	}
	if n := m.text(i + 1); i == m.sents[m.items[i].sent].from && oneOf(n, "for", "at", "at first", "when", "until", "till") {
		return true // "brown for a minute then clear"
	}
	return (t == "not" || t == "isnt" || t == "wasnt" || t == "never") && m.clauseEnd(i) == i+1 && !m.isItemNear(i)
}

// leakOver tells whether the sentence of item i says that a leak is over: "drip is gone".
func (m *message) leakOver(i int) bool {
	for k := i + 1; k < m.sents[m.items[i].sent].to; k++ {
		if m.is(k, cSym, "leak") && m.ended(k+1) {
			return true
		}
	}
	return false
}

// dryNow tells whether what is dry at item i is a part that was put in or mended in its sentence, so that it
// leaks no more: "put on a new supply line and it's dry".
func (m *message) dryNow(i int) bool {
	return m.left(i, 12, false, func(k int) bool {
		return m.is(k, cDid, "") || m.is(k, cPart, "new") || m.isAny(k, cHint, "puts", "wentin", "newone")
	}) >= 0
}

// leakPart tells whether a deed at item at is the mending of a leak: a washer, a
// flapper, a fitting or a line that leaked or burst, told here or, of "it", before.
func (m *message) leakPart(at int) bool {
	s := &m.sents[m.items[at].sent]
	from := max(s.from, at-8)
	if k := m.items[at].sent - 1; k >= 0 && m.sents[k].to == s.from && (m.pronoun(at) || at == s.from) {
		from = max(m.sents[k].from, at-16)
	}
	if m.brokeAndMended(at) {
		return true
	}
	leak, part, sure := false, false, m.is(at, cFitting, "sure")
	for k := from; k < min(s.to, at+15); k++ {
		leak = leak || m.is(k, cSym, "leak") || m.is(k, cFitting, "burst") || m.toilet(k) || k > at && k < at+9 && m.is(k, cDry, "")
		if k < at+9 && (m.is(k, cFitting, "part") || m.is(k, cFitting, "sure")) {
			part = true
			leak = leak || k > at && m.leakedBefore(from)
			if k > at && k <= at+2 || k < at && (k >= at-2 || k >= at-5 && m.pronoun(at)) {
				sure = sure || m.is(k, cFitting, "sure")
			}
		}
	}
	if m.is(at, cDid, "fixed") && (leak || sure) {
		return true
	}
	return sure || leak && part
}

// leakedBefore tells whether a line before item at tells of a fitting that leaked or
// burst: "se reventó la manguera de la lavadora … cambié las dos mangueras".
func (m *message) leakedBefore(at int) bool {
	leak, part := -1, -1
	for k := at - 1; k >= 0; k-- {
		if m.is(k, cSym, "leak") || m.is(k, cFitting, "burst") {
			leak = m.items[k].sent
		}
		if m.is(k, cFitting, "part") || m.is(k, cFitting, "sure") {
			part = m.items[k].sent
		}
		if leak >= 0 && leak == part {
			return true
		}
	}
	return false
}

// partRight tells whether what a deed at item at puts in is a part that is changed for
// a leak alone: a flapper, a fill valve.
func (m *message) partRight(at int) bool {
	for k := at + 1; k <= at+3 && k < len(m.items) && !m.items[k].mark; k++ {
		if m.is(k, cFitting, "sure") {
			return true
		}
	}
	return false
}

// namesToilet tells whether a phrase of leaking names the toilet itself: then the
// relief valve before it has no part in it.
func namesToilet(t string) bool {
	return strings.Contains(t, "taza") || strings.Contains(t, "excusado") || strings.Contains(t, "inodoro") || strings.Contains(t, "toilet")
}

var listBeginsToWeep = listOf("begins to weep")

var reliefWeepsGate = gateOf(opener{classes: setOf(cRelief)})

// reliefWeeps reads water out of a relief where a word calls it the beginning of a fault: "relief started to
// weep" is a discharge, whatever part was named before.
func (m *message) reliefWeeps() {
	if m.shut(reliefWeepsGate) {
		return
	}
	for i := range m.items {
		if m.is(i, cCond, "suspect") && m.inList(i, listBeginsToWeep) && m.left(i, 4, false, func(k int) bool { return m.is(k, cRelief, "") }) >= 0 {
			m.say(i, "weeping")
		}
	}
}

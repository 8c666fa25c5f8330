package intents

import (
	"slices"
	"strings"

	"lazyhand/assess"
)

// Lists of the lexicon that these rules know.
var (
	listHereToday   = listOf("here today")
	listAsksSymptom = listOf("asks symptom")
	listDripsNot    = listOf("drips not")
)

// symptomSeen is a symptom on its way to a statement.
type symptomSeen struct {
	at int
	assess.Symptom
}

// findSymptoms reads what was seen, heard and smelled, and what was not.
func (m *message) findSymptoms() {
	for i := range m.items {
		it := &m.items[i]
		if it.mark || it.num != nil || it.site || !m.begins(i, keySymptom|keyRefills) {
			continue
		}
		if m.sents[it.sent].asking && !m.sents[it.sent].tells {
			continue
		}
		name, ok := m.symptomAt(i)
		gone := ok && m.goneSince(i)
		if !ok || name != assess.GasSmell && (m.ofSomethingElse(i) || m.onlyAsked(i) || m.usedTo(i) && !gone || m.ofNeighbours(i)) || m.supposed(i) ||
			name == assess.GasSmell && !gone && m.yearsBack(i) {
			continue
		}
		if name == assess.ReliefDischarge && m.sentenceIs(it.sent, cBlocked, "") && m.saysOfBlocked(i) {
			continue
		}
		if m.isMark(i+1, ":") && m.right(i, 8, true, func(k int) bool { return m.is(k, cSym, "") }) >= 0 {
			continue // "Ruido: no hay golpes": the head of its line
		}
		absent := gone || m.absent(i, name)
		if m.lookedFor(i) {
			if !m.cleared(i) {
				continue
			}
			absent = true // "opened it to check for rust, clear as a bell"
		}
		if absent && m.is(i, cHint, "denies") && m.toldOtherwise(name) {
			continue
		}
		m.addSymptom(i, name, absent)
	}
	m.readSigns()
	m.blockedOnly()
	m.reliefDryAgain()
}

// reliefDryAgain drops the leak that is denied in the clause behind a dry relief valve, which only says so
// again: "válvula de alivio seca, no gotea". "No leaks" is of the house.
func (m *message) reliefDryAgain() {
	for _, r := range m.symptoms {
		if r.Symptom.Symptom != assess.ReliefDischarge || !r.Absent {
			continue
		}
		m.symptoms = slices.DeleteFunc(m.symptoms, func(d symptomSeen) bool {
			return d.Symptom.Symptom == assess.Leak && d.Absent && d.at > r.at && d.at <= r.at+4 && m.items[d.at].sent == m.items[r.at].sent &&
				m.inList(d.at, listDripsNot) && m.clauseEnd(d.at)-m.clauseStart(d.at) <= 2
		})
		return
	}
}

// onlyAsked tells whether the symptom at item i is all that a question holds which nobody answers
// in the message: "creeping?", "is it leaking?".
func (m *message) onlyAsked(i int) bool {
	s := m.items[i].sent
	se := &m.sents[s]
	if !se.question && !m.asksOpenly(se.from) || m.text(se.to-1) != "?" && !m.asksOpenly(se.from) || s+1 < len(m.sents) || s > 0 && m.readingLike(s-1) {
		return false
	}
	for k := se.from; k < se.to; k++ {
		if k != i && !m.items[k].mark && !m.items[k].site && !m.is(k, cDeterminer, "") && !m.inList(k, listLinks) &&
			!m.inList(k, listAsksSymptom) {
			return false
		}
	}
	if !m.sents[s].asking {
		m.addAsk(se.from, AskNextCheck)
		se.asking = true
	}
	return true
}

// blockedOnly drops a discharge that is only told of a relief valve that is blocked:
// "no way for it to dump, outlet's plugged", "not capped, runs to the floor drain".
func (m *message) blockedOnly() {
	for _, b := range m.symptoms {
		if b.Symptom.Symptom != assess.ReliefBlocked {
			continue
		}
		m.symptoms = slices.DeleteFunc(m.symptoms, func(d symptomSeen) bool {
			if d.Symptom.Symptom != assess.ReliefDischarge || m.items[d.at].sent != m.items[b.at].sent {
				return false
			}
			return m.saysOfBlocked(d.at)
		})
		return
	}
}

// saysOfBlocked tells whether the word of discharge at item i only tells of a pipe that is blocked or
// not: "no way for it to dump", "not capped, runs to the floor drain".
func (m *message) saysOfBlocked(i int) bool {
	return m.text(i) == "runs" || m.says(i-1, "to", "cant") || m.is(i, cBlocked, "") || strings.HasPrefix(m.text(i), "descarga")
}

// toldOtherwise tells whether a phrase like "water's clear" or "everything's dry" only
// ends what the message tells of the same matter: its colour, a leak mended.
func (m *message) toldOtherwise(name assess.SymptomName) bool {
	if name == assess.Leak {
		for _, w := range m.work {
			if w.Action == assess.RepairedLeak {
				return true
			}
		}
	}
	for i := range m.items {
		if m.is(i, cHint, "denies") || m.is(i, cHint, "drop") {
			continue
		}
		switch {
		case name == assess.DarkWater && !m.items[i].site && (m.is(i, cColor, "") || m.isAny(i, cSym, "dark_water", "rusty_water")) &&
			!m.rustOfPart(i):
			return true
		case name == assess.Leak && m.isAny(i, cSym, "leak", "no_water") && !m.sentenceIs(m.items[i].sent, cRelief, ""):
			return true
		}
	}
	return false
}

// addSymptom adds a symptom, each once: one that is there goes before its denial.
func (m *message) addSymptom(i int, name assess.SymptomName, absent bool) {
	for k := range m.symptoms {
		s := &m.symptoms[k]
		taken := func() bool { return k == len(m.symptoms)-1 && i > s.at && m.takesBack(s.at+1, i) }
		if s.Absent && s.Symptom.Symptom == assess.ReliefDischarge && name == assess.Leak && m.says(i-1, "its", "it", "is") && taken() {
			s.Absent = false
			return // "T&P is dry, scratch that, it's dripping"
		}
		if s.Symptom.Symptom == name {
			if taken() {
				s.Absent = absent // "no leaks. correction, the tub drips"
			} else if s.Absent && !absent {
				s.Absent = false
			} else if absent && name != assess.Leak && m.hereNow(i) {
				s.Absent = true
			}
			return
		}
	}
	m.symptoms = append(m.symptoms, symptomSeen{i, assess.Symptom{Symptom: name, Absent: absent}})
	m.note(i, string(name), "symptom")
}

// hereNow tells whether the symptom at item i is told of today or of this very house: "smelled
// gas last week, no gas smell today".
func (m *message) hereNow(i int) bool {
	return m.right(i, 5, true, func(k int) bool {
		return m.items[k].seg == m.items[i].seg && (m.is(k, cNow, "") || m.inList(k, listHereToday))
	}) >= 0
}

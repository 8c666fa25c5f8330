package intents

import (
	"slices"
	"strings"

	"lazyhand/assess"
)

// Visit notes in sections: what stands under "FOUND", "Did:" or "As left" is told of
// that part of the visit, and columns named in a line of their own are told of the
// numbers below.

// section is what stands under a head, items from to to.
type section struct {
	head     int
	from, to int
	when     assess.When // of a head that tells the state before or after work
	job      bool        // the head of what was done
}

var sectionGate = gateOf(opener{classes: setOf(cBefore, cAfter), hints: []string{"jobhead", "foundhead", "lefthead"}})

// findSections finds the heads of the message, each first in its line.
func (m *message) findSections() {
	if m.shut(sectionGate) {
		return
	}
	for s := range m.sents {
		i := m.sents[s].from
		for i < m.sents[s].to && m.items[i].mark && m.text(i) != "\n" {
			i++
		}
		if m.cameHead(i) {
			i++
		}
		sec, ok := m.sectionAt(i)
		if !ok {
			if n := len(m.sections); n > 0 && (m.sents[s].header >= 0 || m.text(i) == "\n") && m.sections[n-1].to == i && m.sections[n-1].job {
				continue // "Heater: …" ends a list of work
			}
			if n := len(m.sections); n > 0 && m.sections[n-1].to >= m.sents[s].from {
				if x := &m.sections[n-1]; m.text(x.head+1) == "\n" || m.isMark(x.head+1, ":", "-") && m.text(x.head+2) == "\n" || m.sents[s].line == m.sents[m.items[x.head].sent].line {
					x.to = m.sents[s].to
				}
			}
			continue
		}
		m.sections = append(m.sections, sec)
	}
	m.pairHeads()
}

// cameHead tells whether the head at item i says how things came in: "came in: front 98".
func (m *message) cameHead(i int) bool {
	return m.text(i) == "came" && m.text(i+1) == "in" && m.isMark(i+2, ":", "-", "=", "\n")
}

// sectionAt reads the head at item i.
func (m *message) sectionAt(i int) (section, bool) {
	if i+1 >= len(m.items) || m.items[i].mark || m.items[i].point != "" {
		return section{}, false
	}
	sec := section{head: i, from: i + 1, to: m.sents[m.items[i].sent].to}
	switch {
	case m.is(i, cHint, "jobhead"):
		sec.job = true
	case m.is(i, cBefore, "") || m.is(i, cHint, "foundhead"):
		sec.when = assess.Before
	case m.is(i, cAfter, "") || m.is(i, cHint, "lefthead"):
		sec.when = assess.After
	default:
		return section{}, false
	}
	// "AL front 60": as left
	return sec, m.isMark(i+1, ":", "\n", "-", "=", ">", "|") || m.text(i) == "al" && m.toks[m.items[i].tok].caps || m.capitalHead(i)
}

// pairHeads tells whether the note has a head of how things were found and one of how
// they were left: then work was done between the two, however it is told. Heads that
// count only as a pair ("In:" and "Out:") are no heads alone.
func (m *message) pairHeads() {
	found, left := false, false
	for _, x := range m.sections {
		found = found || x.when == assess.Before && m.is(x.head, cHint, "foundhead")
		left = left || found && x.when == assess.After && m.is(x.head, cHint, "lefthead") // "out: … in: …" tells of parts
	}
	if m.foundLeft = found && left; m.foundLeft {
		return
	}
	kept := m.sections[:0]
	for _, x := range m.sections {
		if x.job || m.is(x.head, cBefore, "") || m.is(x.head, cAfter, "") || m.cameHead(x.head-1) {
			kept = append(kept, x)
		}
	}
	m.sections = kept
}

// underHeads gives readings that nothing else places in time that of their section.
func (m *message) underHeads() {
	if len(m.work) == 0 && !m.foundLeft {
		return
	}
	for _, x := range m.sections {
		for k := range m.readings {
			if r := &m.readings[k]; x.when != "" && r.When == "" && r.at >= x.from && r.at < x.to && !m.jobBetween(x.from, r.at) {
				r.When = x.when
			}
		}
	}
}

// jobBetween tells whether work is told between two items.
func (m *message) jobBetween(a, b int) bool {
	for _, w := range m.work {
		if w.at >= a && w.at < b {
			return true
		}
	}
	return false
}

// underJob tells whether item i stands under a head of what was done.
func (m *message) underJob(i int) bool {
	for _, x := range m.sections {
		if x.job && i >= x.from && i < x.to {
			return true
		}
	}
	return false
}

// beforeAndAfter tells a reading twice that stayed the same over the work: "kitchen 63
// both before and after".
func (m *message) beforeAndAfter() {
	if len(m.work) == 0 || !m.kinds.has(cBefore) {
		return
	}
	for k := range m.readings {
		for i := m.readings[k].at + 1; i <= m.readings[k].at+4 && i+2 < m.sents[m.readings[k].sent].to; i++ {
			if !m.is(i, cBefore, "") || m.text(i+1) != "and" && m.text(i+1) != "y" && m.text(i+1) != "&" || !m.is(i+2, cAfter, "") || m.isNum(i+3) {
				continue
			}
			m.readings[k].When = assess.Before
			after := m.readings[k]
			after.When = assess.After
			m.readings = slices.Insert(m.readings, k+1, after)
			return
		}
	}
}

// underFound tells whether item i stands under a head of how things were found: "found:
// water off at the meter" is no work.
func (m *message) underFound(i int) bool {
	for _, x := range m.sections {
		if x.when == assess.Before && i >= x.from && i < x.to {
			return true
		}
	}
	return false
}

// column is one of the columns that a line of heads names.
type column struct {
	when   assess.When
	heater assess.HeaterState
	flow   assess.Flow
}

// columns gives the numbers of a table what the heads of its columns say: "before
// after" over "kitchen 96 58".
func (m *message) columns() {
	for s := 0; s+1 < len(m.sents) && len(m.readings) > 1; s++ {
		cols := m.columnHeads(s)
		if len(cols) < 2 {
			continue
		}
		for lo := 0; lo < len(m.readings); {
			hi := lo + 1
			for hi < len(m.readings) && m.readings[hi].sent == m.readings[lo].sent {
				hi++
			}
			if m.readings[lo].sent > s {
				if hi-lo != len(cols) || !m.samePoint(lo, hi) {
					break
				}
				for k, c := range cols {
					m.readings[lo+k].inColumn(c)
				}
			}
			lo = hi
		}
	}
}

// inColumn gives a reading what its column says.
func (r *reading) inColumn(c column) {
	if c.when != "" {
		r.When = c.when
	}
	if c.heater != "" {
		r.Heater = c.heater
	}
	if c.flow != "" {
		r.Flow = c.flow
	}
}

// samePoint tells whether the readings lo to hi are all of one test point.
func (m *message) samePoint(lo, hi int) bool {
	for k := lo + 1; k < hi; k++ {
		a, b := &m.readings[lo], &m.readings[k]
		if len(a.points) != len(b.points) || len(a.points) > 0 && a.points[0] != b.points[0] {
			return false
		}
	}
	return true
}

// columnHeads reads a line that names columns and nothing else but what the rows are.
func (m *message) columnHeads(s int) []column {
	se := &m.sents[s]
	if m.text(se.to-1) != "\n" || m.isMark(se.to-2, ".") || se.to-se.from > 12 {
		return nil
	}
	var cols []column
	others := 0
	for k := se.from; k < se.to; k++ {
		it := &m.items[k]
		switch {
		case it.num != nil || it.site || it.point != "":
			return nil
		case it.mark:
			if t := m.text(k); t == ":" && k+2 < se.to {
				return nil
			}
		case m.pastTense(k):
			return nil // "T&P was dripping when I walked in" tells a story
		case m.is(k, cBefore, "") || m.is(k, cHint, "foundhead"):
			cols = append(cols, column{when: assess.Before})
		case m.is(k, cAfter, "") || m.is(k, cHint, "lefthead") || m.is(k, cNow, ""):
			cols = append(cols, column{when: assess.After})
		case m.is(k, cState, "idle"):
			cols = append(cols, column{heater: assess.Idle})
		case m.is(k, cState, "firing"):
			cols = append(cols, column{heater: assess.Firing})
		case m.is(k, cStatic, ""):
			cols = append(cols, column{flow: assess.Static})
		case m.is(k, cFlowing, ""):
			cols = append(cols, column{flow: assess.Flowing})
		case m.is(k, cPeak, ""):
			return nil
		default:
			if others++; others > 2 {
				return nil
			}
		}
	}
	if len(cols) == 2 && cols[0] == cols[1] {
		return nil // "went back to finish it"
	}
	return cols
}

// capitalHead tells whether item i is a head in capitals without a mark, one of several in
// its note: "SITE 5006 S Bisbee Rd", "FOUND shower 31 / kitchen 35".
func (m *message) capitalHead(i int) bool {
	capital := func(k int) bool {
		long := 0
		for _, t := range m.toks[m.items[k].tok : m.items[k].tok+m.items[k].n] {
			if t.kind != word || strings.ToUpper(t.raw) != t.raw {
				return false
			}
			long += len(t.raw)
		}
		return long > 2 // "AS FOUND"
	}
	if !capital(i) || m.items[i].n > 2 || capital(i+1) && !m.items[i+1].site {
		return false
	}
	heads := 0
	for k := range m.items {
		if (k == 0 || m.isMark(k-1, "\n")) && capital(k) && k+1 < len(m.items) && (m.items[k+1].site || !capital(k+1)) {
			heads++
		}
	}
	return heads >= 3
}

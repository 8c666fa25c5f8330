package intents

import (
	"slices"
	"strings"
)

// A formula is an order of words in which something is asked for, each place of it a list of the
// lexicon: "had | we | swapped … 12 Elm". Where a cue says only that a word stands somewhere in a
// clause, a formula says where, so that "what did Ben find at 12 Elm" and "did Ben find it at 12 Elm"
// are two things.
type formula struct {
	about About
	steps []step
	first bool // surer than the phrases of the lexicon
	time  tense

	bars list // words that make it something else
	at   int  // its place among the formulas
}

// tense is whether a time to come is told beside a formula.
type tense uint8

const (
	timeless tense = iota // none is
	timed                 // one is
	anyTime
)

// step is one place of a formula.
type step struct {
	kind stepKind
	list list
	n    int // of a gap
}

type stepKind uint8

const (
	stepOne   stepKind = iota // a word of the list
	stepSome                  // any number of them
	stepGap                   // up to n other words
	stepHouse                 // a street line
	stepMark                  // marks, or none
	stepEnd                   // the end of the clause
)

func one(l list) step  { return step{kind: stepOne, list: l} }
func some(l list) step { return step{kind: stepSome, list: l} }
func gap(n int) step   { return step{kind: stepGap, n: n} }

var (
	house   = step{kind: stepHouse}
	anyMark = step{kind: stepMark}
	theEnd  = step{kind: stepEnd}
)

// inTheirPlaces gives each formula its place.
func inTheirPlaces(all []formula) []formula {
	for k := range all {
		all[k].at = k
	}
	return all
}

// follows tells whether the words from here on stand in the order of some steps.
func (p phraseAt) follows(steps []step) bool {
	for k, s := range steps {
		switch s.kind {
		case stepOne:
			if !p.take(s.list) {
				return false
			}
		case stepSome:
			p.pass(s.list)
		case stepHouse:
			if !p.house() {
				return false
			}
		case stepMark:
			for p.at < p.end && p.m.toks[p.at].kind == mark {
				p.at++
			}
		case stepEnd:
			return p.closed()
		case stepGap:
			for n := 0; ; n++ {
				if p.follows(steps[k+1:]) {
					return true
				}
				if n == s.n || p.closed() {
					return false
				}
				if !p.house() {
					p.at++
				}
			}
		}
	}
	return true
}

// house passes over the street line.
func (p *phraseAt) house() bool {
	if p.m.site == nil || p.at >= p.end {
		return false
	}
	for k := range p.m.sites {
		if a := &p.m.sites[k]; a.from == p.at && a.score >= 0 {
			p.at = a.to
			return true
		}
	}
	return false
}

// formulaStarts gives the words that formulas may begin with those formulas, and the lexicon those that may begin with
// a street line.
func (l *lexicon) formulaStarts() {
	for w := range l.firstWords(listBeforeOpinion) {
		l.entry(w).mayStart = true
	}
	for k := range formulas {
		f := &formulas[k]
		for _, s := range f.steps {
			if s.kind == stepHouse {
				l.house = append(l.house, f)
			}
			for w := range l.firstWords(s.list) {
				if e := l.entry(w); s.list != 0 && !slices.Contains(e.starts, f) {
					e.starts, e.mayStart = append(e.starts, f), true
				}
			}
			if s.kind != stepSome {
				break
			}
		}
	}
}

// firstWords returns the words that the phrases of some lists begin with.
func (l *lexicon) firstWords(lists ...list) map[string]bool {
	words := map[string]bool{}
	for _, x := range lists {
		for phrase := range l.lists[x] {
			w, _, _ := strings.Cut(phrase, " ")
			words[w] = true
		}
	}
	return words
}

// formulasFrom returns the formulas that may begin at item i, in a clause that ends before item to, and the words from there on.
func (m *message) formulasFrom(i, to int) ([]*formula, phraseAt) {
	if m.items[i].mark {
		return nil, phraseAt{}
	}
	if m.items[i].site {
		return m.p.lex.house, m.phraseFrom(i, to)
	}
	if !m.entryOf(i).mayStart {
		return nil, phraseAt{}
	}
	p := m.phraseFrom(i, to)
	if p.word() == "" {
		return nil, p
	}
	return m.p.lex.of(&m.toks[p.at]).starts, p
}

// fits tells whether the words from here on fill the places of a formula.
func (p phraseAt) fits(f *formula) bool {
	return p.follows(f.steps) && (f.bars == 0 || !p.holds(f.bars))
}

// holds tells whether a word of a list stands anywhere from here on.
func (p phraseAt) holds(l list) bool {
	for ; p.at < p.end; p.at++ {
		if q := p; q.take(l) {
			return true
		}
	}
	return false
}

// formulaAt returns the formula by which something is asked from item i of sentence s on: one of those that are
// surer than phrases, or one of the rest.
func (m *message) formulaAt(i, s int, first bool) *formula {
	may, p := m.formulasFrom(i, m.sents[s].to)
	for _, f := range may {
		if f.first == first && m.held.holds(&formulaNeeds[f.at]) && p.fits(f) && (f.time == anyTime || m.tellsTime(s) == (f.time == timed)) {
			return f
		}
	}
	return nil
}

// opensFormula tells whether a question or a wish begins at item i, behind what is told.
func (m *message) opensFormula(i, to int) bool {
	if m.hear(); !m.mayAsk {
		return false
	}
	may, p := m.formulasFrom(i, to)
	return slices.ContainsFunc(may, func(f *formula) bool {
		return f.about != AskSnooze && f.about != AskCancel && m.held.holds(&formulaNeeds[f.at]) && p.fits(f)
	})
}

// asksFormula reads what sentence s asks by a formula: one of those that are surer than phrases, or one of the rest.
func (m *message) asksFormula(s int, first bool) bool {
	if m.hear(); !m.mayAsk || first && !m.mayAskFirst {
		return false
	}
	se := &m.sents[s]
	for i := se.from; i < se.to; i++ {
		if i > se.from && !m.items[i-1].mark && !m.said(i-1, keyJoins) {
			continue
		}
		f := m.formulaAt(i, s, first)
		if f == nil || i > se.from && m.readingAmong(s, se.from, i) || f.about == AskHistory && m.opensReport(s) ||
			f.about == AskSnooze && m.noPuttingOff(i, se.to, m.reporting()) {
			continue
		}
		m.addAsk(i, f.about)
		se.asking, se.question = true, se.question || f.about == AskHistory || f.about == AskDue || f.about == AskTrend
		se.asksDue = se.asksDue || f.about != AskHistory
		se.tells = f.about == AskCorrect || m.readingLike(s)
		se.aside = !se.tells
		if se.snoozes = f.about == AskSnooze; se.snoozes {
			m.snoozeDays(s)
			m.snoozeForA(s)
		}
		return true
	}
	return false
}

// opensReport tells whether sentence s is the line that a report begins with: "What they have at 12 Elm, for the quote".
func (m *message) opensReport(s int) bool {
	return s == 0 && !m.sents[s].question && (m.isMark(m.sents[s].to-1, "\n") || m.whatIFound(s)) && m.reporting()
}

// snoozeForA reads how long a follow-up is put off where only "a week", "another month" or "this week" tells it.
func (m *message) snoozeForA(s int) {
	a := m.addAsk(m.sents[s].from, AskSnooze)
	for i := m.sents[s].from + 1; i < m.sents[s].to && a.InDays == nil; i++ {
		if d := m.unitAt(i); d > 0 && m.says(i-1, "a", "another", "one", "this", "one more") {
			a.InDays = &d
		} else if m.says(i, "this week", "this wk") {
			week := periodDays["week"]
			a.InDays = &week
		}
	}
}

// whatIFound tells whether sentence s begins by saying that what was found is told: "what I found tonight at 12 Elm: …".
func (m *message) whatIFound(s int) bool {
	first := m.firstOf(s)
	own := m.text(first) == "what" && m.is(first+1, cOwn, "") && m.isAny(first+2, cHint, "found", "foundat") ||
		m.is(first, cHint, "foundhead") && beginsWith(m.text(first), "what i ", "what we ")
	return own && m.text(m.sents[s].to-1) != "?"
}

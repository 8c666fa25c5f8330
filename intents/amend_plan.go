package intents

import (
	"slices"

	"lazyhand/assess"
)

// amendPlan reads a short message as another day for the one thing that its writer's last
// report plans: "sorry wednesday", "no, make it 3 weeks", "mejor el viernes". It tells
// whether it is one.
func (m *message) amendPlan() bool {
	of := -1
	for i, s := range m.ctx.Told.Statements {
		if _, plan := s.(assess.Plan); plan {
			if of >= 0 {
				return false
			}
			of = i
		}
	}
	if of < 0 {
		return false
	}
	from, cue := 0, starred(m.raw) || apologises(m.raw)
	for ; from < len(m.items); from++ {
		switch {
		case m.inList(from, listSlipSorry), m.inList(from, listSlipShould), m.says(from, "no", "nope", "nah"):
			cue = true
			continue
		case m.text(from) == "about":
			return false // "sorry about Wednesday"
		case m.items[from].mark, (m.fillsAnswer(from) || m.inList(from, listSlipFillers)) && !m.is(from+1, cUnit, ""):
			continue // "make that a year" keeps its one
		}
		break
	}
	denied := slices.ContainsFunc(m.moments, m.deniedDay)
	more := func(k int) bool {
		return m.isMark(k, "?") || m.isMark(k, ",") && !denied || m.items[k].point != "" || m.is(k, cPoint, "") || m.is(k, cPlace, "") || m.items[k].site ||
			m.is(k, cItem, "")
	}
	if !cue && !denied || from == len(m.items) || len(m.items)-from > 7 || more(from) || m.right(from, 7, true, more) >= 0 {
		return false
	}
	if days, ok := m.sameSpan(from, of); ok {
		m.frame.Amends, m.frame.Unclear = []Amendment{{Of: of, InDays: &days}}, nil
		m.frame.Statements = []assess.Statement{Ask{About: AskCorrect}}
		return true
	}
	// Read as the day of a recheck, nothing else may be said.
	said := m.clean.source(m.raw, spanOf(m.toks[m.items[from].tok], m.toks[len(m.toks)-1]))
	f := m.p.Parse("recheck "+said, Context{Today: m.ctx.Today})
	if len(f.Statements) != 1 || len(f.Unclear) > 0 || f.Site != "" {
		return false
	}
	p, ok := f.Statements[0].(assess.Plan)
	if !ok || p.Action != assess.Recheck || p.InDays == nil {
		return false
	}
	m.frame.Amends, m.frame.Unclear = []Amendment{{Of: of, InDays: p.InDays}}, nil
	m.frame.Statements = []assess.Statement{Ask{About: AskCorrect}}
	return true
}

// mostSpans is how many days, weeks or months a number alone can stand for: a greater one
// may be meant as a pressure.
const mostSpans = 18

// sameSpan reads a number that ends the message and has no unit as so many of the spans that
// the told plan counts: "make that 4" after "recheck in 3 months".
func (m *message) sameSpan(from, of int) (days int, ok bool) {
	p, _ := m.ctx.Told.Statements[of].(assess.Plan)
	n := from
	if n != len(m.items)-1 || p.InDays == nil || *p.InDays <= 0 {
		return 0, false
	}
	it := &m.items[n]
	if it.num == nil || !it.num.integer || it.unit != "" || it.value < 1 || it.value > mostSpans {
		return 0, false
	}
	span := 1
	for _, s := range []int{365, 30, 7} {
		if *p.InDays%s == 0 && *p.InDays/s <= mostSpans {
			span = s
			break
		}
	}
	return span * int(it.value), true
}

package intents

import (
	"fmt"
	"slices"
)

// Why says which words of a message gave one slot of its frame, and by which
// rule; Lost marks a reading of the words that was considered and dropped.
type Why struct {
	Words   string // as the writer wrote them
	Gave    string // the slot or the meaning: "site", "reading", "year", "prv" …
	Because string // the rule that decided
	Lost    bool
}

// String writes the reason on one line.
func (w Why) String() string {
	verb := "gave"
	if w.Lost {
		verb = "lost as"
	}
	return fmt.Sprintf("%q %s %s: %s", w.Words, verb, w.Gave, w.Because)
}

// Explain reads a message as Parse does and tells, in the order decided, which
// words gave what and what lost.
func (p *Parser) Explain(text string, ctx Context) (Frame, []Why) {
	m := p.read(text, ctx, new(scratch), true)
	var out []Why
	for k := range m.sites {
		a := &m.sites[k]
		w := Why{Words: m.words(a.from, a.to), Gave: "site " + a.line, Because: fmt.Sprintf("street line, score %.1f", a.score)}
		if m.site != a {
			w.Lost = true
			w.Because = "another street line is likelier"
		}
		out = append(out, w)
	}
	for _, n := range m.notes {
		w := Why{Words: m.span(n.at, n.at+1), Gave: n.what, Because: n.why}
		switch {
		case n.lost:
			w.Lost = true
		case n.what == roleNames[roleIgnored]:
			w.Gave, w.Lost = "a pressure", true
		}
		out = append(out, w)
	}
	for _, r := range m.readings {
		w := Why{Words: m.span(r.at, r.at+1), Gave: fmt.Sprintf("%.1f psi", r.PSI), Because: "said of it: " + m.span(r.from, r.to)}
		if r.inherit {
			w.Because = "the test point is another reading's; " + w.Because
		}
		out = append(out, w)
	}
	return m.frame, out
}

// words returns the message's own words of some tokens.
func (m *message) words(from, to int) string {
	if from >= to || to > len(m.toks) {
		return ""
	}
	return m.clean.source(m.raw, span{m.toks[from].span.from, m.toks[to-1].span.to})
}

// note is one decision on the way.
type note struct {
	at   int
	what string
	why  string
	lost bool // it is what came second
}

// note keeps a decision for Explain.
func (m *message) note(at int, what, why string) {
	if m.explain {
		m.notes = append(m.notes, note{at: at, what: what, why: why})
	}
}

// noteSecond keeps for Explain what the number at item i would have been without the rule
// that decided: its rule is the first behind it that says something else.
func (m *message) noteSecond(i int, won role) {
	if !m.explain {
		return
	}
	items, sents, notes := slices.Clone(m.items), slices.Clone(m.sents), len(m.notes)
	verbs, unclear := slices.Clone(m.verbs), slices.Clone(m.frame.Unclear)
	decided := false
	for _, rule := range append(roleRules[:], (*message).pressureRole) {
		r, why := rule(m, i)
		if decided && r != roleNone && r != roleIgnored && r != won {
			notes++
			m.notes = append(m.notes[:notes-1], note{i, roleNames[r], why, true})
			break
		}
		decided = decided || r != roleNone
	}
	m.notes = m.notes[:notes]
	copy(m.items, items)
	copy(m.sents, sents)
	m.verbs = append(m.verbs[:0], verbs...)
	m.frame.Unclear = unclear
}

package intents

import (
	"strings"

	"lazyhand/assess"
)

// quotedPoint returns the test point of the quoted line that the message puts right, ""
// where the line tells none or several: "> laundry 55" over "that's my typo, it was 65".
func (m *message) quotedPoint() string {
	if len(m.clean.quoted) == 0 || len(m.readings) != 1 || !m.hasAsk(AskCorrect) {
		return ""
	}
	point := ""
	for _, q := range m.clean.quoted {
		for _, s := range m.p.Parse(m.clean.text[q.from:q.to], Context{Today: m.ctx.Today}).Statements {
			r, ok := s.(assess.Reading)
			if !ok {
				continue
			}
			if point != "" && point != string(r.Point) {
				return ""
			}
			point = string(r.Point)
		}
	}
	return point
}

// rightsQuoted tells whether sentence s begins with a word of a slip under a line that is quoted, and tells a
// pressure behind it: "> kitchen 28" over "no no, 82 at the kitchen".
func (m *message) rightsQuoted(s int) bool {
	if len(m.clean.quoted) == 0 || !m.readingLike(s) {
		return false
	}
	from := m.sents[s].from
	for k := 0; k < from; k++ {
		if !m.items[k].mark && !m.items[k].site {
			return false // no more than the quoted house stands before
		}
	}
	for i := from; i < min(from+3, m.sents[s].to) && m.items[i].num == nil && m.items[i].point == ""; i++ {
		if m.inList(i, listSlipSorry) || m.inList(i, listOwnsUp) || m.says(i, "no") && m.says(i+1, "no") {
			return true
		}
	}
	return false
}

// ownQuote tells whether quoted lines are the writer's own note, set off from its head or
// without any word beside them: a line that answers somebody comes after what it quotes.
func ownQuote(text string, quoted []span) bool {
	if len(quoted) < 2 {
		return false
	}
	if quoted[0].from > 0 {
		head := strings.ToLower(text[:quoted[0].from])
		for _, w := range [...]string{"wrong", "fix", "correct", "should", "not ", "mine", "report", "this one", "sent", "?"} {
			if strings.Contains(head, w) {
				return false
			}
		}
		return strings.Contains(head, "\n")
	}
	end := 0
	for _, q := range quoted {
		if strings.TrimSpace(text[end:q.from]) != "" {
			return false
		}
		end = q.to
	}
	return strings.TrimSpace(text[end:]) == ""
}

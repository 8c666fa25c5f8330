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

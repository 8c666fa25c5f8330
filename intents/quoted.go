package intents

import "lazyhand/assess"

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

package intents

// dayOfVisit tells whether the number at i is the month or the day of a date in digits that
// begins a line or ends it, or stands behind the house: "6/12 kitchen 62", "12 Oak St
// 6/12". Neither number can be a pressure that anybody reports in such company.
func (m *message) dayOfVisit(i int) bool {
	if m.isMark(i-1, "/") && m.isNum(i-2) {
		i -= 2
	}
	if !m.isMark(i+1, "/") || !m.isNum(i+2) || m.isMark(i+3, "/") || m.isMark(i-1, "/") || !m.toks[m.items[i+1].tok].glued ||
		!m.toks[m.items[i+2].tok].glued {
		return false
	}
	a, b := &m.items[i], &m.items[i+2]
	if !a.num.integer || !b.num.integer || a.value < 1 || a.value > 12 || b.value < 1 || b.value > 31 || a.unit != "" || b.unit != "" {
		return false
	}
	return i == m.sents[a.sent].from || m.items[i-1].mark || m.items[i-1].site || m.text(i-1) == "on" || m.closes(i+2) ||
		m.is(i-1, cHint, "visitday")
}

package intents

// bounded tells whether the words before the number at i make it only a bound of what the
// gauge showed, "over 100 at the rear bib", "reads under 40", and asks what it was. "Just
// under 70" is 70.
func (m *message) bounded(i int) bool {
	b := i - 1
	if !m.is(b, cHint, "bound") || m.isNum(b-1) {
		return false
	}
	if m.isAny(b-1, cHint, "barely", "bit") {
		return false
	}
	if m.pointNear(i) || m.readingCue(i) {
		m.askExact(b, i)
	}
	return true
}

// askExact asks for the pressure of which items from..i tell only a bound.
func (m *message) askExact(from, i int) {
	span := m.span(from, i+1)
	ask := "What exactly did the gauge show? You wrote " + span + "."
	if m.spanish() {
		ask = "¿Cuánto marcó exactamente? Pusiste " + span + "."
	}
	m.frame.Unclear = append(m.frame.Unclear, Unclear{Span: span, MightBe: []string{AnyNumber}, Ask: ask})
}

// impossible asks about a number that no gauge of a house can show.
func (m *message) impossible(i int) {
	span := m.span(i, i+1)
	if m.items[i].unit != "" && m.items[i].unit != "psi" {
		span += " " + m.items[i].unit
	}
	ask := "What is the pressure? " + span + " cannot be right."
	if m.spanish() {
		ask = "¿Cuánto marcó? " + span + " no puede ser."
	}
	m.frame.Unclear = append(m.frame.Unclear, Unclear{Span: span, MightBe: []string{"slip"}, Ask: ask})
}

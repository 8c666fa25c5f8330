package intents

// What could not be decided, and the one short question about it.

// unclear keeps what some words of the message might be, and asks which in the writer's language.
func (m *message) unclear(words string, mightBe []string, english, spanish string) {
	ask := english
	if m.spanish() {
		ask = spanish
	}
	m.frame.Unclear = append(m.frame.Unclear, Unclear{Span: words, MightBe: mightBe, Ask: ask})
}

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
	m.unclear(span, []string{AnyNumber},
		"What exactly did the gauge show? You wrote "+span+".",
		"¿Cuánto marcó exactamente? Usted puso "+span+".")
}

// askImpossible asks about a number that no gauge of a house can show.
func (m *message) askImpossible(i int) {
	span := m.span(i, i+1)
	if m.items[i].unit != "" && m.items[i].unit != "psi" {
		span += " " + m.items[i].unit
	}
	m.unclear(span, []string{AnyNumber},
		"What is the pressure? "+span+" cannot be right.",
		"¿Cuánto marcó? "+span+" no puede ser.")
}

// askWarm asks whether a number is a pressure or a temperature.
func (m *message) askWarm(i int) {
	span := m.span(i, i+1)
	m.unclear(span, []string{itIsPressure, "temperature"},
		"Is "+span+" the pressure or the temperature of the water?",
		"¿"+span+" es la presión o la temperatura del agua?")
}

// askPlace asks whether number item i is a pressure, and where it was taken.
func (m *message) askPlace(i int) {
	span := m.span(i, i+1)
	m.unclear(span, []string{itIsPressure, otherNumber},
		"Is "+span+" a pressure you measured, and at which tap?",
		"¿"+span+" es una presión que midió, y en qué llave?")
}

// askWhich asks which of two numbers holds of the thing that the record holds.
func (m *message) askWhich(a, b int) {
	one, other := m.span(a, a+1), m.span(b, b+1)
	if a == b {
		m.askPlace(a)
		return
	}
	m.unclear(one+", "+other, []string{one, other},
		"You tell of two of them, "+one+" and "+other+". Which one goes on record?",
		"Habla de dos, "+one+" y "+other+". ¿Cuál anoto?")
}

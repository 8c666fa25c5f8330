package intents

// note says which words gave something.
type note struct {
	at   int
	what string
	why  string
}

func (m *message) note(at int, what, why string) {
	if m.explain {
		m.notes = append(m.notes, note{at, what, why})
	}
}

package intents

// asksAfter reads a question after a house that names nothing of it: "how is 402 Larkhill
// doing?", "what about 12 Elm", "¿cómo va 12 Elm?". What is known of it answers that.
func (m *message) asksAfter(s int) bool {
	se := &m.sents[s]
	if !m.siteIn(s, func(int) bool { return true }) || !m.shortSentence(s, 6) {
		return false
	}
	opened := false
	for i := se.from; i < se.to; i++ {
		it := &m.items[i]
		switch {
		case it.site || it.mark || m.inList(i, listAfterHouse):
		case !opened && m.inList(i, listHowIs):
			opened = true
		default:
			return false
		}
	}
	return opened
}

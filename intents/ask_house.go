package intents

// asksAfter reads a question after a house that names nothing of it: "how is 402 Larkhill
// doing?", "what about 12 Elm", "¿cómo va 12 Elm?". What is known of it answers that.
func (m *message) asksAfter(s int) bool {
	se := &m.sents[s]
	if !m.sentenceNamesSite(s) || !m.shortSentence(s, 6) {
		return false
	}
	opened := false
	for i := se.from; i < se.to; i++ {
		it := &m.items[i]
		switch {
		case !opened && (m.inList(i, listHowIs) ||
			m.says(i, "is", "esta") && i == se.from && m.items[min(i+1, len(m.items)-1)].site && se.to > i+2):
			opened = true // "is 12 Elm ok now"
		case it.site || it.mark || m.inList(i, listAfterHouse):
		default:
			return false
		}
	}
	return opened
}

// namesRecord tells whether a message names what is on record of a house and says nothing
// else: "pressure at 14 Maple", "presión en 14 Maple".
func (m *message) namesRecord(s int) bool {
	if m.site == nil || len(m.sents) > 1 || !m.shortSentence(s, 5) {
		return false
	}
	named := false
	for i := range m.items {
		switch it := &m.items[i]; {
		case it.site, it.mark && !m.isMark(i, ":"), recordOf[m.text(i)] && named:
		case onRecord[m.text(i)] && !named:
			named = true
		default:
			return false
		}
	}
	return named
}

var (
	onRecord = phrases("notes | records | record | pressure | pressures | static pressure | latest pressure | readings | latest reading | numbers | presion | presiones | lecturas")
	recordOf = phrases("at | on | for | of | over at | down at | en | de | la | el | at the | please | pls | por favor")
)

package intents

// misspeltOff tells whether "of" at item i is "off": "heeter is of, 11 Gangway Ln".
func (m *message) misspeltOff(i int) bool {
	return m.text(i) == "of" && m.closes(i) && (be(m.text(i-1)) || m.is(i-1, cItem, "heater"))
}

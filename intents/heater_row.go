package intents

// misspeltOff tells whether "of" at item i is "off": "heeter is of, 11 Gangway Ln".
func (m *message) misspeltOff(i int) bool {
	return m.text(i) == "of" && m.closes(i) && (be(m.text(i-1)) || m.is(i-1, cItem, "heater"))
}

// heaterFacts tells whether only facts of a heater stand between it and item i, and at
// least one does: "heater 40 gas 2019", "Gas heater, 40, 2010,".
func (m *message) heaterFacts(at, i int) bool {
	facts := 0
	for k := at + 1; k < i; k++ {
		it := &m.items[k]
		switch {
		case it.mark && it.text != "\n", m.is(k, cUnit, ""):
		case m.is(k, cFuel, ""), it.num != nil && (it.role == roleSize || it.role == roleYear || it.role == roleAge):
			facts++
		default:
			return false
		}
	}
	return facts > 0
}

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

// dialBefore tells whether the sentence before s speaks of a thermostat and of no regulator.
func (m *message) dialBefore(s int) bool {
	if s == 0 {
		return false
	}
	dial := false
	for k := m.sents[s-1].from; k < m.sents[s-1].to; k++ {
		if m.is(k, cItem, "prv") || m.is(k, cItem, "expansion_tank") {
			return false
		}
		dial = dial || m.is(k, cPart, "thermostat")
	}
	return dial
}

// hotAfterCold tells whether "hot" behind a number is the heater's, as "cold" behind the one
// before is: "cycle test: 62 cold, 66 hot", beside talk of the burner.
func (m *message) hotAfterCold(i int) bool {
	return m.isNum(i-1) && m.closes(i) && m.has(cState, "firing") &&
		m.left(i, 5, true, func(k int) bool { return m.is(k, cHint, "cold") && m.coldSpell(k) }) >= 0
}

package intents

// What rules ask of one item, named so that a rule reads as what it looks for.

// isAny tells whether item i has one of some values of a class.
func (m *message) isAny(i int, c class, values ...string) bool {
	for _, v := range values {
		if m.is(i, c, v) {
			return true
		}
	}
	return false
}

// meets tells whether item i has one of some classes.
func (m *message) meets(i int, classes classSet) bool {
	return i >= 0 && i < len(m.items) && m.items[i].kinds.meets(classes)
}

// pointAt tells whether item i names a test point.
func (m *message) pointAt(i int) bool { return i >= 0 && i < len(m.items) && m.items[i].point != "" }

// stopAt tells whether a mark stands at i, or nothing more.
func (m *message) stopAt(i int) bool { return i >= len(m.items) || i >= 0 && m.items[i].mark }

// numIs tells whether item i is a number of one of some roles.
func (m *message) numIs(i int, roles ...role) bool {
	if !m.isNum(i) {
		return false
	}
	for _, r := range roles {
		if m.items[i].role == r {
			return true
		}
	}
	return false
}

// within tells whether a number was told without a unit and lies from low to high: what
// a thermostat is set to, or the air of a tank.
func (it *item) within(low, high float64) bool {
	return it.unit == "" && it.value >= low && it.value <= high
}

package intents

// What rules ask of one sentence, as look does of one item.

// sentenceIs tells whether an item of sentence s has a class with a value; an empty value is any.
func (m *message) sentenceIs(s int, c class, value string) bool {
	if !m.kinds.has(c) {
		return false
	}
	for i := m.sents[s].from; i < m.sents[s].to; i++ {
		if m.is(i, c, value) {
			return true
		}
	}
	return false
}

// sentenceMeets tells whether an item of sentence s has one of some classes.
func (m *message) sentenceMeets(s int, classes classSet) bool {
	for i := m.sents[s].from; i < m.sents[s].to; i++ {
		if m.items[i].kinds.meets(classes) {
			return true
		}
	}
	return false
}

// sentenceSays tells whether sentence s holds one of some words.
func (m *message) sentenceSays(s int, words ...string) bool {
	for i := m.sents[s].from; i < m.sents[s].to; i++ {
		if oneOf(m.text(i), words...) {
			return true
		}
	}
	return false
}

// sentenceNamesSite tells whether sentence s holds a street line.
func (m *message) sentenceNamesSite(s int) bool {
	return m.siteIn(s, func(int) bool { return true })
}

// anyIn tells whether an item of sentence s that of picks is of one of some classes.
func (m *message) anyIn(s int, of func(k int) bool, classes classSet) bool {
	for k := m.sents[s].from; k < m.sents[s].to; k++ {
		if m.items[k].kinds.meets(classes) && of(k) {
			return true
		}
	}
	return false
}

// siteIn tells whether the street line is among the items of sentence s that of picks.
func (m *message) siteIn(s int, of func(k int) bool) bool {
	for k := m.sents[s].from; k < m.sents[s].to; k++ {
		if m.items[k].site && of(k) {
			return true
		}
	}
	return false
}

// planish tells whether sentence s holds a word of planning.
func (m *message) planish(s int) bool { return m.sentenceIs(s, cWill, "") }

// heaterIn tells whether sentence s names a heater.
func (m *message) heaterIn(s int) bool { return m.sentenceIs(s, cItem, "heater") }

package intents

// What rules ask of one item, named so that a rule reads as what it looks for.
//
// Rules ask at thousands of places, and the code of all rules must pass through a cache that
// holds a fraction of it: what is asked most is kept out of line, which reads a message a
// tenth quicker.

// is tells whether item i has a class with a value; an empty value is any.
//
//go:noinline
func (m *message) is(i int, c class, value string) bool {
	if uint(i) >= uint(len(m.items)) {
		return false
	}
	it := &m.items[i]
	return it.kinds.has(c) && (value == "" || it.values.mayHave(value) && m.p.has(it.tags, c, value))
}

// val returns the value that item i has of a class.
//
//go:noinline
func (m *message) val(i int, c class) (string, bool) {
	if uint(i) >= uint(len(m.items)) || !m.items[i].kinds.has(c) {
		return "", false
	}
	return m.p.value(m.items[i].tags, c)
}

// text returns the words of item i as the lexicon spells them; "" beyond the message.
func (m *message) text(i int) string {
	if uint(i) >= uint(len(m.items)) {
		return ""
	}
	return m.items[i].text
}

// entryOf returns the entry of the first word of item i, as it was typed.
func (m *message) entryOf(i int) *entry { return m.p.lex.of(&m.toks[m.items[i].tok]) }

// isNum tells whether item i is a number.
func (m *message) isNum(i int) bool { return uint(i) < uint(len(m.items)) && m.items[i].num != nil }

// span returns the message's own words of items from..to.
func (m *message) span(from, to int) string {
	if from < 0 || to > len(m.items) || from >= to {
		return ""
	}
	a, b := m.items[from], m.items[to-1]
	return m.clean.source(m.raw, span{m.toks[a.tok].span.from, m.toks[b.tok+b.n-1].span.to})
}

// says tells whether item i reads as one of some words.
//
//go:noinline
func (m *message) says(i int, words ...string) bool {
	return uint(i) < uint(len(m.items)) && among(m.items[i].text, words)
}

// isAny tells whether item i has one of some values of a class.
//
//go:noinline
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
	return uint(i) < uint(len(m.items)) && m.items[i].kinds.meets(classes)
}

// pointAt tells whether item i names a test point.
func (m *message) pointAt(i int) bool { return uint(i) < uint(len(m.items)) && m.items[i].point != "" }

// stopAt tells whether a mark stands at i, or nothing more.
func (m *message) stopAt(i int) bool { return i >= len(m.items) || i >= 0 && m.items[i].mark }

// numIs tells whether item i is a number of one of some roles.
//
//go:noinline
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

// left returns the nearest item left of i in its sentence that ok accepts,
// looking at most n items back and not past another number unless over; -1 for none, as
// where there is no item i.
//
//go:noinline
func (m *message) left(i, n int, over bool, ok func(k int) bool) int {
	if uint(i) >= uint(len(m.items)) {
		return -1
	}
	s := &m.sents[m.items[i].sent]
	for k := i - 1; k >= s.from && k >= i-n; k-- {
		if ok(k) {
			return k
		}
		if !over && m.items[k].num != nil && m.items[k].role != roleIgnored {
			return -1
		}
	}
	return -1
}

// right is left for the items right of i; a number of any role ends it.
//
//go:noinline
func (m *message) right(i, n int, over bool, ok func(k int) bool) int {
	if uint(i) >= uint(len(m.items)) {
		return -1
	}
	s := &m.sents[m.items[i].sent]
	for k := i + 1; k < s.to && k <= i+n; k++ {
		if ok(k) {
			return k
		}
		if !over && m.items[k].num != nil {
			return -1
		}
	}
	return -1
}

// leftTag is left for items with a class and value.
func (m *message) leftTag(i, n int, c class, value string) int {
	if !m.kinds.has(c) {
		return -1
	}
	return m.left(i, n, false, func(k int) bool { return m.is(k, c, value) })
}

// rightTag is right for items with a class and value.
func (m *message) rightTag(i, n int, c class, value string) int {
	if !m.kinds.has(c) {
		return -1
	}
	return m.right(i, n, false, func(k int) bool { return m.is(k, c, value) })
}

// clauseStart returns where the clause of item i begins: behind a mark, "and" or "then".
func (m *message) clauseStart(i int) int {
	from := m.sents[m.items[i].sent].from
	k := i
	for k > from && !m.items[k-1].mark && m.items[k-1].seg == m.items[i].seg && m.text(k-1) != "and" && m.text(k-1) != "y" {
		k--
	}
	return k
}

// clauseEnd returns where the clause of item i ends: at a mark, "and" or "then".
func (m *message) clauseEnd(i int) int {
	to := m.sents[m.items[i].sent].to
	k := i + 1
	for k < to && !m.items[k].mark && m.items[k].seg == m.items[i].seg && m.text(k) != "and" && m.text(k) != "y" {
		k++
	}
	return k
}

// isMark tells whether item i is one of some marks.
//
//go:noinline
func (m *message) isMark(i int, marks ...string) bool {
	return uint(i) < uint(len(m.items)) && m.items[i].mark && among(m.items[i].text, marks)
}

func (m *message) taken(k int) bool { return m.items[k].role == roleTaken }

package intents

import "strings"

// Lists of the lexicon that these rules know.
var (
	listWishes = listOf("wishes")
)

// Numbers that say by how much a pressure differs, what it should be or is no more.

// dropOrTarget tells a difference, a limit or a value from memory from a reading.
func (m *message) dropOrTarget(i int) (string, bool) {
	prev := m.text(i - 1)
	switch {
	case m.differenceBehind(i) || m.relative(i):
		return "a difference", true
	case prev == "worth" || m.text(i-2) == "worth" && !m.items[i-1].mark:
		return "a difference", true // "a turn is worth about 6 psi"
	case m.wished(i):
		return "what somebody wants", true
	case m.isGone(i):
		return "no more there", true
	case m.gaugeEnd(i):
		return "a gauge's range", true
	case prev == "of" && m.dropBefore(i):
		return "a difference", true // "a drop in pressure of 20"
	case m.whereStuck(i):
		return "where the gauge sticks", true
	case prev == "-" && m.text(i-2) == "i":
		return "a highway", true
	case prev == "it" && m.says(i-2, "calling", "call") && !m.pointInClause(i) && m.items[i].unit == "":
		return "what it is called", true // "81 and 83 at the rear. Calling it 82"
	case oneOf(prev, "avg", "average", "mean", "promedio"):
		return "an average", true
	case oneOf(prev, "by", "another", "extra") || m.shifted(i):
		return "a difference", true
	case !oneOf(prev, "to", "at", "from", "a", "down to", "into", "hasta") && m.afterFall(i):
		return "a difference", true
	case m.crept(i) || pressureUnit(m.items[i].unit) && m.roseBy(i):
		return "a rise", true
	case m.targeted(i):
		return "a target or a limit", true
	case m.limitBehind(i):
		return "a limit", true
	case m.remembered(i):
		return "from memory", true
	}
	return "", false
}

// wished tells whether the words behind the number at i make it a wish: "72 psi is what she wants".
func (m *message) wished(i int) bool {
	k := i + 1
	if m.isAny(k, cUnit, "") {
		k++
	}
	return m.says(k, "is", "was") && m.text(k+1) == "what" &&
		m.right(k+1, 4, false, func(j int) bool {
			return m.inList(j, listWishes) || m.is(j, cWill, "")
		}) >= 0
}

// isGone tells whether the words behind the number at i say that the gauge shows it no more:
// "91 is gone, 64 after a burn".
func (m *message) isGone(i int) bool {
	k := i + 1
	if m.isAny(k, cUnit, "") {
		k++
	}
	if m.says(k, "is", "has", "now", "ya") {
		k++
	}
	return m.inList(k, listEnded) && m.closes(k)
}

// differenceBehind tells whether the word behind the number at i makes it a difference: "12 psi
// less", "a 20 lb drop".
func (m *message) differenceBehind(i int) bool {
	switch strings.TrimSuffix(m.text(i+1), " than") {
	case "off":
		return pressureUnit(m.items[i].unit) &&
			!strings.HasPrefix(m.text(i+2), "the") && !m.points(i+2) && !m.is(i+2, cPlace, "")
	case "low", "high", "short", "more", "mas", "too":
		return pressureUnit(m.items[i].unit)
	case "drop", "loss", "higher", "lower", "less", "difference", "apart", "swing", "jump", "increase", "decrease", "rise",
		"menos", "increments", "shy", "difference between", "point drop":
		return true
	}
	return false
}

// gaugeEnd tells whether the number at i is the highest that a gauge shows: "gauge only goes up
// to 200".
func (m *message) gaugeEnd(i int) bool {
	if m.items[i].value < 100 {
		return false
	}
	switch m.text(i - 1) {
	case "to":
		if !m.says(i-2, "goes", "scale") && m.text(i-3) != "goes" {
			return false
		}
	case "up to":
		if !m.says(i-2, "goes", "reads", "read") {
			return false
		}
	case "at":
		if !m.says(i-2, "tops out", "maxes out", "stops") {
			return false
		}
	case "goes to":
	default:
		return false
	}
	k := m.left(i, 6, false, func(k int) bool { return m.is(k, cItem, "gauge") })
	return k >= 0 && !m.pointBetween(k, i)
}

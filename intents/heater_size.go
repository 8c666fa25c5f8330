package intents

// heaterSize tells whether a bare number is a heater's gallons: "wh is a 40 gas", "new
// 1 is 50 elec", "water heater's a 40 not a 50". Only sizes that heaters come in.
func (m *message) heaterSize(i int) bool {
	it := &m.items[i]
	switch it.value {
	case 20, 28, 30, 36, 38, 40, 47, 48, 50, 55, 65, 66, 75, 80, 98, 100, 119, 120:
	default:
		return false
	}
	if !it.num.integer || m.pointInClause(i) {
		return false
	}
	prev := m.text(i - 1)
	fuel := m.is(i+1, cFuel, "") && !m.gasTalk(i+1)
	if fuel && (prev == "a" || prev == "is" || prev == "new" || m.is(i-1, cItem, "heater") || i == 0 || m.items[i-1].mark || m.is(i-1, cDid, "")) {
		return !m.is(i-1, cItem, "prv")
	}
	if m.is(i-1, cFuel, "") && !m.gasTalk(i-1) && (m.is(i-2, cDeterminer, "") || m.text(i-2) == "is" || m.isNum(i-2) && len(m.items[i-2].num.digits) == 4) && !m.points(i) {
		return true // "it's a 2016 gas 40"
	}
	if prev != "a" && prev != "an" {
		return false
	}
	topic, at := m.topicBefore(i)
	return topic == "heater" && at >= i-3 && m.items[at].seg == it.seg || m.text(i-2) == "not" && m.prevNum(i) >= 0 && m.items[m.prevNum(i)].role == roleSize
}

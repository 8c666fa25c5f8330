package intents

// inSeries tells whether the number at i is one of a series told by the clock: "at
// 1:00 it said 62", "min 10: 70", "0 min 62", with another such beside it.
func (m *message) inSeries(i int) bool {
	if !m.timeBeside(i) {
		return false
	}
	s := m.items[i].sent
	for k := m.sents[max(s-1, 0)].from; k < m.sents[min(s+1, len(m.sents)-1)].to; k++ {
		if it := &m.items[k]; k != i && it.num != nil && !it.num.time && !m.clock(k) && it.value >= 15 && m.timeBeside(k) {
			return true
		}
	}
	return false
}

// timeBeside tells whether a time stands right before the number at i, in its clause.
func (m *message) timeBeside(i int) bool {
	if m.items[i].num.time || m.clock(i) {
		return false
	}
	if _, day := weekdays[m.text(i-1)]; day {
		_, next := weekdays[m.text(i+1)]
		return next || m.closes(i) // "mon 62, tue 69, wed 78"
	}
	if m.text(i+1) == "a" && m.text(i+2) == "las" && i+3 < len(m.items) && m.clock(i+3) {
		return true
	}
	return m.left(i, 5, true, m.clock) >= 0 || m.says(i+1, "at", "@", "a las") && i+2 < len(m.items) && m.clock(i+2)
}

// beforeClock returns the item before the words that lead to the time at item k: "67 at 9", "67 a las 9".
func (m *message) beforeClock(k int) int {
	if m.text(k-1) == "las" && m.text(k-2) == "a" {
		return k - 3
	}
	return k - 2
}

// clock tells whether item k is a time of day or a number of minutes.
func (m *message) clock(k int) bool {
	it := &m.items[k]
	if it.num != nil && m.says(k-1, "at", "las", "a las") && it.unit == "" && it.num.integer && it.within(1, 12) && (m.isNum(k+1) || m.isNum(m.beforeClock(k))) {
		return true // "at 9 67, at 10 74", "67 at 9, 74 at 10"
	}
	return it.num != nil && (it.num.time || it.unit == "hour" || m.text(k-1) == "min" && !m.sentenceIs(it.sent, cPeak, "") ||
		m.text(k-1) == "minute" || m.text(k-1) == "minuto")
}

// afterTime tells whether the number at i is a time like one before it: "70 after
// 10 min, 83 after 20".
func (m *message) afterTime(i int) bool {
	t := m.text(i - 1)
	if m.items[i].unit != "" || t != "after" && t != "in" && t != "at" && t != "tras" || m.points(i) {
		return false
	}
	k := m.left(i, 9, true, func(k int) bool { return m.clock(k) && m.text(k-1) == t })
	return m.isNum(i-2) && k >= 0 || (i < 2 || m.isNum(i-2) || m.items[i-2].mark) && m.minutesAfter(i)
}

// minutesAfter tells whether the number at i is the minutes that a gauge was watched, their unit not
// told: "62 rear, still 62 after 20".
func (m *message) minutesAfter(i int) bool {
	const hour, step = 60, 5
	v := m.items[i].value
	if !m.says(i-1, "after", "tras") || v > hour || int(v)%step != 0 || m.kinds.has(cDid) {
		return false
	}
	if m.says(i+1, "it", "its", "it was", "it is", "it read", "i", "the") && m.clauseStart(i) == i-1 {
		return m.nextNum(i) > 0 // "after 15 it was 71"
	}
	return m.closes(i) && !m.kinds.has(cBefore) && m.left(i-2, 8, true, m.isNum) >= 0
}

// afterDay tells whether the number at i is the time of a day to come: "tomorrow at 8".
func (m *message) afterDay(i int) bool {
	switch m.text(i - 1) {
	case "at", "around", "by", "las":
	default:
		return false
	}
	for _, w := range m.moments {
		if it := &m.items[i]; w.end <= i-1 && w.end >= i-3 && it.num.integer && it.value <= 12 {
			return true
		}
	}
	return false
}

package intents

import "strings"

// Lists of the lexicon that these rules know.
var (
	listFollowUpNear = listOf("follow-up near")
)

// followUpBefore tells whether a word for a follow-up stands close before item i.
func (m *message) followUpBefore(i int) bool {
	for k := i - 1; k >= 0 && k >= i-4 && m.items[k].sent == m.items[i].sent; k-- {
		if m.inList(k, listFollowUpNear) {
			return true
		}
	}
	return false
}

// noPuttingOff tells whether the words from..to ask for no follow-up to be put off: they are denied, "don't wait a
// year", or beside a report somebody else's, "the builder says leave it till closing".
func (m *message) noPuttingOff(from, to int, amid bool) bool {
	for k := from; k < to; k++ {
		if m.says(k-1, "dont", "cant", "shouldnt") && (m.says(k, "wait") || m.says(k, "let") && m.says(k+1, "it", "this", "that")) {
			return true
		}
	}
	return amid && m.left(from, 4, false, func(k int) bool { return m.is(k, cHint, "hearsay") && m.is(k-1, cWhose, "") }) >= 0
}

// snoozeDays reads how long a follow-up is put off.
func (m *message) snoozeDays(s int) {
	var a *Ask
	for k := range m.asks {
		if m.asks[k].About == AskSnooze {
			a = &m.asks[k].Ask
		}
	}
	if a == nil {
		return
	}
	near := []int{s, s + 1}
	if s > 0 && m.saysThen(s) {
		near = []int{s, s - 1} // "tied up until friday, ask me then"
	}
	for _, sn := range near {
		if sn >= len(m.sents) || a.InDays != nil {
			break
		}
		for i := m.sents[sn].from; i < m.sents[sn].to; i++ {
			it := &m.items[i]
			if it.num != nil && unitDays(it.unit) > 0 {
				if k := m.nextNum(i); k > i && k <= i+5 && unitDays(m.items[k].unit) > 0 && m.takesBack(i+1, k) {
					it.role = roleAsked
					continue // "push it one week, no, two weeks"
				}
				if m.is(i+1, cDo, "recheck") && m.momentAfter(i, sn) {
					continue // "the 30 day recheck"
				}
				d := int(it.value*float64(unitDays(it.unit)) + 0.5)
				a.InDays = &d
				it.role = roleAsked
				m.sents[sn].snoozes = true
				break
			}
			if d := 3 * m.unitAt(i+1); d > 0 && m.text(i) == "few" {
				a.InDays = &d // "bump it a few days"
				m.sents[sn].snoozes = true
				break
			}
			if d := m.unitAt(i); d > 0 && strings.HasSuffix(m.text(i-1), " another") {
				a.InDays = &d // "give me another week"
				m.sents[sn].snoozes = true
				break
			}
			if it.num != nil && it.unit == "hour" && it.value >= 24 {
				d := int(it.value+12) / 24
				a.InDays = &d
				it.role = roleAsked
				m.sents[sn].snoozes = true
				break
			}
			for _, w := range m.moments {
				if w.at == i && (!w.span && m.spanAfter(i, sn) || m.deniedDay(w) && m.momentAfter(i, sn)) {
					continue // "push the Friday one off a week", "not tmrw, mv to +3 wks"
				}
				if w.at == i {
					d := w.days
					a.InDays = &d
					m.sents[sn].snoozes = true
				}
			}
			if a.InDays != nil {
				break
			}
		}
	}
}

// saysThen tells whether sentence s points back to a time told before: "ask me then".
func (m *message) saysThen(s int) bool {
	for k := m.sents[s].from; k < m.sents[s].to; k++ {
		if strings.HasSuffix(m.text(k), "then") || m.text(k) == "entonces" {
			return true
		}
	}
	return false
}

// spanAfter tells whether a span of time follows item i in sentence s.
func (m *message) spanAfter(i, s int) bool {
	for _, w := range m.moments {
		if w.span && w.at > i && w.at < m.sents[s].to {
			return true
		}
	}
	return false
}

// momentAfter tells whether another time to come follows item i in sentence s.
func (m *message) momentAfter(i, s int) bool {
	for k := i + 1; k < m.sents[s].to; k++ {
		if m.items[k].num != nil && unitDays(m.items[k].unit) > 0 {
			return true
		}
		for _, w := range m.moments {
			if w.at == k {
				return true
			}
		}
	}
	return false
}

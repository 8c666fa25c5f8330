package intents

import (
	"time"

	"lazyhand/assess"
)

// Lists of the lexicon that these rules know.
var (
	listDaysGoneBy = listOf("days gone by")
	listLate       = listOf("late")
)

// longestAgo is how many days back a tech's own reading may still be told late;
// what is older is somebody's memory.
const longestAgo = 60

// earlierDay finds the day on which the readings of the message were taken, when
// it is told that it was not today: "forgot to log this yesterday", "from last
// friday". The day must speak of all of them, and of nothing else.
func (m *message) earlierDay() {
	if len(m.readings) == 0 {
		return
	}
	at, ago := -1, 0
	for i := range m.items {
		if m.items[i].num == nil && !m.begins(i, keyAgo) {
			continue
		}
		n, ok := m.agoAt(i)
		if !ok {
			continue
		}
		if at >= 0 || n > longestAgo || m.since(i) {
			return
		}
		at, ago = i, n
	}
	if at < 0 {
		return
	}
	for i := range m.items {
		if m.inList(i, listPeople) || m.is(i, cNow, "") || m.text(i) == "today" || m.text(i) == "hoy" {
			return
		}
	}
	for _, r := range m.readings {
		if r.sent != m.items[at].sent {
			return
		}
	}
	s := &m.sents[m.items[at].sent]
	for k := s.from; k < s.to; k++ {
		if m.items[k].seg == m.items[at].seg && (m.is(k, cSym, "") || m.is(k, cDid, "")) {
			return // "leaked yesterday", "set it yesterday"
		}
	}
	m.frame.Date = m.ctx.Today.AddDays(-ago)
}

// since tells whether a span that still lasts begins at item i: "since yesterday".
func (m *message) since(i int) bool {
	for k := i - 1; k >= i-2; k-- {
		if t := m.text(k); t == "since" || t == "desde" || t == "until" || t == "till" || t == "hasta" {
			return true
		}
	}
	return false
}

var agoOpener = opener{words: append(wordsOf(weekdays), "yesterday", "ayer", "antier", "anteayer", "antes de ayer", "day before yesterday")}

// agoAt reads a day gone by at item i, in days before today.
func (m *message) agoAt(i int) (days int, ok bool) {
	if m.isNum(i) {
		return m.numberedAgo(i)
	}
	switch {
	case m.says(i, "yesterday", "ayer"):
		if p := m.text(i - 1); p == "before" || p == "antes de" || p == "day before" || p == "de" && m.text(i-2) == "antes" {
			return 2, true
		}
		return 1, true
	case m.inList(i, listDaysGoneBy):
		return 2, true
	}
	if wd, named := weekdays[m.text(i)]; named {
		if p, n := m.text(i-1), m.text(i+1); p != "last" && p != "past" && p != "this past" && p != "from" && n != "pasado" && !m.late(i) {
			return 0, false
		}
		days = (int(m.ctx.Today.In(time.UTC).Weekday()) - int(wd) + 7) % 7
		if days == 0 {
			days = 7
		}
		return days, true
	}
	return 0, false
}

// numberedAgo reads a day gone by that is told by the number at i: "3 days ago", "from 6/12".
func (m *message) numberedAgo(i int) (days int, ok bool) {
	if !m.items[i].num.integer {
		return 0, false
	}
	n := int(m.items[i].value)
	if u := unitDays(m.items[i].unit); u == 1 || u == 7 {
		if t := m.text(i + 1); t == "ago" || t == "back" || t == "atras" || m.text(i-1) == "hace" {
			return n * u, true
		}
		return 0, false
	}
	// "from 6/12", "on 6/12": the month and the day
	if p := m.text(i - 1); p != "from" && p != "on" && p != "del" && p != "el" || m.text(i+1) != "/" || !m.isNum(i+2) || n < 1 || n > 12 {
		return 0, false
	}
	day := assess.Date{Year: m.ctx.Today.Year, Month: time.Month(n), Day: int(m.items[i+2].value)}
	if day.Day < 1 || day.Day > 31 {
		return 0, false
	}
	days = m.ctx.Today.Sub(day)
	return days, days > 0 && days <= longestAgo
}

// late tells whether the sentence of item i says that the report comes late:
// "forgot to send this friday".
func (m *message) late(i int) bool {
	s := &m.sents[m.items[i].sent]
	for k := s.from; k < i; k++ {
		if m.inList(k, listLate) {
			return true
		}
	}
	return false
}

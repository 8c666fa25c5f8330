package intents

import (
	"slices"
	"strings"
	"time"

	"lazyhand/assess"
)

// moment is a time told for something to come: an item and the days from today.
type moment struct {
	at, end int
	days    int
	span    bool // a length ("6 months"), not a day
	unsure  bool // how long is not said: "swap tank in 4"
}

// unitDays are the days of a unit of time, as the desk counts them.
var unitDays = map[string]int{"day": 1, "week": 7, "month": 30, "year": 365}

var dayOpener = opener{
	hints: []string{"today", "daytime"},
	words: slices.Concat(
		[]string{"tomorrow", "tmrw", "tmw", "tmrrw", "tomorow", "tommorow", "tommorrow", "tmro", "tomrrow",
			"mnn", "2moro", "tomo", "2morrow", "manana", "pasado", "day", "hoy"},
		[]string{"next", "nxt", "proxima", "proximo", "siguiente", "semana", "week", "mes", "ano", "half",
			"medio", "few", "couple", "par", "a", "an", "one", "un", "una", "another", "otra", "otro"},
		[]string{"fortnight", "quincena", "annually", "yearly"},
		wordsOf(weekdays), wordsOf(months), wordsOf(ordinals)),
}

// dates finds the days and spans of time told.
func (m *message) dates() {
	for i := 0; i < len(m.items); i++ {
		if m.items[i].mark || m.items[i].site || m.items[i].num == nil && !m.begins(i, keyDay) {
			continue
		}
		if d, n, ok := m.dateAt(i); ok {
			if d > 0 || m.is(i, cHint, "today") || m.is(i, cHint, "daytime") {
				m.moments = append(m.moments, moment{at: i, end: i + n, days: d})
			}
			for k := i; k < i+n; k++ {
				if m.items[k].num != nil {
					m.setRole(k, roleDate, "date")
				}
			}
			i += n - 1
		}
	}
}

// dateAt reads a day at item i: days from today, and how many items it takes.
func (m *message) dateAt(i int) (days, n int, ok bool) {
	t := m.text(i)
	switch t {
	case "tomorrow", "tmrw", "tmw", "tmrrw", "tomorow", "tommorow", "tommorrow", "tmro", "tomrrow", "mnn", "2moro", "tomo", "2morrow":
		return 1, 1, true
	case "manana":
		if m.text(i-1) == "la" || m.text(i-1) == "esta" || m.text(i-1) == "por la" {
			return 0, 0, false // the morning
		}
		return 1, 1, true
	case "pasado":
		if m.text(i+1) == "manana" {
			return 2, 2, true
		}
	case "day":
		if m.text(i+1) == "after" && m.text(i+2) == "that" && len(m.moments) > 0 {
			return m.moments[len(m.moments)-1].days + 1, 3, true
		}
		if m.text(i+1) == "after" && m.text(i+2) == "tomorrow" {
			return 2, 3, true
		}
		if m.text(i+1) == "after tomorrow" {
			return 2, 2, true
		}
	case "next", "nxt", "proxima", "proximo":
		switch m.text(i + 1) {
		case "week", "wk", "semana":
			return 7, 2, true
		case "month", "mes", "mo":
			return 30, 2, true
		case "year", "ano", "yr":
			return 365, 2, true
		}
	case "siguiente":
		switch m.text(i + 1) {
		case "semana":
			return 7, 2, true
		case "mes":
			return 30, 2, true
		}
	case "hoy":
		// "de hoy en ocho" is a week from today
		if m.text(i-1) == "de" && m.text(i+1) == "en" && m.isNum(i+2) {
			switch m.items[i+2].value {
			case 8:
				return 7, 3, true
			case 15:
				return 14, 3, true
			}
		}
	case "semana", "mes", "ano":
		if m.text(i+1) == "que" && (m.text(i+2) == "viene" || m.text(i+2) == "entra") || m.says(i+1, "entrante", "proxima", "proximo") {
			d := map[string]int{"semana": 7, "mes": 30, "ano": 365}[t]
			if m.text(i+1) == "que" {
				return d, 3, true
			}
			return d, 2, true
		}
	case "half":
		if m.text(i+1) == "a" && m.text(i+2) == "year" {
			return 180, 3, true
		}
		if m.text(i+1) == "year" || m.text(i+1) == "yr" {
			return 180, 2, true
		}
	case "medio":
		if m.text(i+1) == "ano" {
			return 180, 2, true
		}
	case "few":
		if u, ok := m.val(i+1, cUnit); ok && unitDays[u] > 0 && m.text(i-1) == "a" && (m.text(i-2) == "in" || m.text(i-2) == "for") {
			return 3 * unitDays[u], 2, true
		}
	case "couple", "par":
		k := i + 1
		if m.text(k) == "of" || m.text(k) == "de" {
			k++
		}
		if u, ok := m.val(k, cUnit); ok && unitDays[u] > 0 {
			return 2 * unitDays[u], k + 1 - i, true
		}
	case "a", "an", "one", "un", "una", "another", "otra", "otro", "1":
		n := 2
		if m.text(i+1) == "more" || m.text(i+1) == "mas" {
			n = 3 // "one more month"
		}
		if u, ok := m.val(i+n-1, cUnit); ok && unitDays[u] > 0 && m.text(i+n-1) != "d" && (t != "1" || n == 3) {
			switch m.text(i - 1) {
			case "once", "twice", "hace", "half", "times":
				return 0, 0, false
			case "for":
				if !m.sentenceIs(m.items[i].sent, cAsk, "snooze") && !m.setsDate(i-1) && !m.fromToday(i+n) {
					return 0, 0, false
				}
			}
			if m.text(i+n) == "and" && m.text(i+n+1) == "a" && m.text(i+n+2) == "half" || m.text(i+n) == "y" && strings.HasPrefix(m.text(i+n+1), "medi") {
				if m.text(i+n) == "y" {
					n--
				}
				return unitDays[u] * 3 / 2, n + 3, true // "a month and a half", "mes y medio"
			}
			if x := m.text(i + n); x == "ago" || x == "old" || x == "and" || x == "back" {
				return 0, 0, false
			}
			if wd, ok := weekdays[m.text(i+n+1)]; ok && m.text(i+n) == "from" {
				return unitDays[u] + m.daysTo(wd), n + 2, true // "a week from Friday"
			}
			return unitDays[u], n, true
		}
	case "fortnight":
		return 14, 1, true
	case "quincena":
		return 15, 1, true
	case "annually", "yearly":
		switch m.text(i + 1) {
		case "visit", "check", "checkup", "service", "call", "inspection", "maintenance", "job", "test":
			return 0, 0, false // the visit itself
		}
		return 365, 1, true
	}
	if m.is(i, cHint, "today") || m.is(i, cHint, "daytime") && m.is(i-1, cWill, "") && m.is(i-1, cDo, "") {
		return 0, 1, true // "coming back this afternoon"
	}
	if m.isNum(i) && m.items[i].unit == "hour" && m.items[i].value >= 24 && int(m.items[i].value)%24 == 0 && m.says(i-1, "in", "within", "en") {
		return int(m.items[i].value) / 24, 1, true
	}
	if (t == "week" || t == "semana") && m.text(i+1) == "after" && len(m.moments) > 0 && m.closes(i+1) {
		return m.moments[len(m.moments)-1].days + 7, 2, true // "prv friday and tank the week after"
	}
	if wd, ok := weekdays[t]; ok {
		if t == "wed" && strings.ContainsAny(m.toks[m.items[i].tok].raw, "'’") {
			return 0, 0, false // "we'd put it in on Thursday"
		}
		if oneOf(t, "sun", "sat", "mon", "martes") && (m.text(i-1) == "the" || m.text(i-1) == "in the" || m.text(i-1) == "el" && t == "sun") {
			return 0, 0, false
		}
		if p := m.text(i - 1); p == "last" || p == "since" || p == "this past" || p == "pasado" || m.text(i+1) == "pasado" {
			return 0, 0, false
		}
		if t := m.text(i + 1); i == 0 && (t == "call" || t == "job" || t == "emergency" || t == "emergency call") {
			return 0, 0, false // "Sunday call, 66 Bellows Creek Rd"
		}
		if m.isNum(i+1) && m.text(i+2) == "/" && m.isNum(i+3) && m.items[i+1].value <= 12 && m.items[i+3].value <= 31 {
			day := assess.Date{Year: m.ctx.Today.Year, Month: time.Month(m.items[i+1].value), Day: int(m.items[i+3].value)}
			if past := m.ctx.Today.Sub(day); past >= 0 && past < 90 {
				return 0, 4, true // "Visit Tues 6/9, typing it up late"
			}
		}
		if n := m.dayGone(i+1, wd); n > 0 {
			return 0, n + 1, true // "tues 10th visit", written on the 11th
		}
		d, n := m.daysTo(wd), 1
		if w := m.weekAfter(i + 1); w > 0 {
			return m.nextWeek(wd), 1 + w, true
		}
		// "Thursday the 18th", "Thursday June 18"
		k := i + 1
		if m.text(k) == "," || m.text(k) == "the" && m.isNum(k+1) {
			k++
		}
		if day, w, ok := m.dayAt(k); ok {
			n = k + w - i
			if days := day.Sub(m.ctx.Today); days > 0 && (days-d)%7 == 0 {
				d = days // the day of the month knows which week
			}
		}
		return d, n, true
	}
	if d, n, ok := m.dayAt(i); ok {
		if days := d.Sub(m.ctx.Today); days > 0 {
			return days, n, true
		}
		return 0, 0, false
	}
	return 0, 0, false
}

// planBefore tells whether what stands close before item i is something to do:
// "swap 7/1", "install tank 6/20", "NEXT: tank 6/24".
func (m *message) planBefore(i int) bool {
	s := m.items[i].sent
	for k := i - 1; k >= m.sents[s].from && k >= i-4 && m.items[k].num == nil; k-- {
		if m.is(k, cDo, "") && m.text(k) != "back" || m.is(k, cWill, "") && m.text(k) != "back" && m.text(k) != "im" && m.text(k) != "well" {
			return true
		}
		if m.items[k].mark && m.text(k) != ":" {
			return false
		}
	}
	return false
}

// pipeSize tells whether a/b is the size of a pipe rather than a day.
func pipeSize(a, b int) bool {
	return a < b && (b == 2 || b == 4 || b == 8)
}

// sentenceIs tells whether a phrase of sentence s has a meaning.
func (m *message) sentenceIs(s int, c class, value string) bool {
	for i := m.sents[s].from; i < m.sents[s].to; i++ {
		if m.is(i, c, value) {
			return true
		}
	}
	return false
}

// planish tells whether a sentence holds a word of planning.
func (m *message) planish(s int) bool {
	for i := m.sents[s].from; i < m.sents[s].to; i++ {
		if m.is(i, cWill, "") {
			return true
		}
	}
	return false
}

// spans adds the lengths of time found among the numbers: "in 6 months".
func (m *message) spans() {
	for i := range m.items {
		it := &m.items[i]
		if it.num == nil || it.role != roleDuration {
			continue
		}
		d := int(it.value*float64(unitDays[it.unit]) + 0.5)
		if it.unit == "month" && it.value == 12 {
			d = unitDays["year"] // twelve months are a year
		}
		mo := moment{at: i, end: i + 1, days: d, span: true, unsure: it.unit == ""}
		k := len(m.moments)
		m.moments = append(m.moments, mo)
		for k > 0 && m.moments[k-1].at > i {
			m.moments[k] = m.moments[k-1]
			k--
		}
		m.moments[k] = mo
	}
}

// countsThing tells whether the word at i makes an ordinal before it a place in a
// row, not a day: "under the 3rd pot".
func (m *message) countsThing(i int) bool {
	if i >= len(m.items) || m.items[i].mark || m.items[i].num != nil || m.items[i].site || m.planish(m.items[i].sent) {
		return false
	}
	if m.is(i, cFixture, "") || m.is(i, cUnit, "other") {
		return true
	}
	return m.items[i].tags == nil && len(m.text(i)) > 2 && !m.p.lex.common(m.text(i)) && !smallWord(m.text(i))
}

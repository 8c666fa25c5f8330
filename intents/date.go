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
}

var weekdays = map[string]time.Weekday{
	"sunday": 0, "monday": 1, "tuesday": 2, "wednesday": 3, "thursday": 4, "friday": 5, "saturday": 6,
	"sun": 0, "mon": 1, "tue": 2, "tues": 2, "wed": 3, "weds": 3, "thu": 4, "thur": 4, "thurs": 4, "fri": 5, "sat": 6,
	"domingo": 0, "lunes": 1, "martes": 2, "miercoles": 3, "jueves": 4, "viernes": 5, "sabado": 6,
	"mondays": 1, "fridays": 5, "thrsdy": 4, "thrs": 4, "wednsday": 3, "wensday": 3, "wednesdy": 3, "frdy": 5, "mndy": 1, "tsdy": 2, "wdnsdy": 3,
}

var months = map[string]time.Month{
	"january": 1, "february": 2, "march": 3, "april": 4, "may": 5, "june": 6, "july": 7, "august": 8, "september": 9, "october": 10, "november": 11, "december": 12,
	"jan": 1, "feb": 2, "mar": 3, "apr": 4, "jun": 6, "jul": 7, "aug": 8, "sep": 9, "sept": 9, "oct": 10, "nov": 11, "dec": 12,
	"enero": 1, "febrero": 2, "marzo": 3, "abril": 4, "mayo": 5, "junio": 6, "julio": 7, "agosto": 8, "septiembre": 9, "octubre": 10, "noviembre": 11, "diciembre": 12,
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

// fromToday tells whether a span that ends before item i is counted from today:
// "a month from today", "ten days from now".
func (m *message) fromToday(i int) bool {
	if m.text(i) == "out" {
		return true
	}
	if m.text(i) != "from" {
		return false
	}
	t := m.text(i + 1)
	_, day := weekdays[t]
	return day || t == "now" || t == "today" || t == "here"
}

// daysTo counts the days to the next such weekday.
func (m *message) daysTo(wd time.Weekday) int {
	d := (int(wd) - int(m.ctx.Today.In(time.UTC).Weekday()) + 7) % 7
	if d == 0 {
		d = 7
	}
	return d
}

// weekAfter returns how many items say that a weekday before item i is one of next week:
// "Friday of next week", "el viernes de la semana que viene"; 0 if they do not.
func (m *message) weekAfter(i int) int {
	k := i
	for m.text(k) == "of" || m.text(k) == "de" || m.is(k, cDeterminer, "") && k > i {
		k++
	}
	switch {
	case k == i && m.text(k) != "next" && m.text(k) != "nxt":
		return 0
	case m.says(k, "next", "nxt", "proxima") && m.says(k+1, "week", "wk", "semana"):
		return k + 2 - i
	case m.text(k) == "semana" && m.text(k+1) == "que" && (m.text(k+2) == "viene" || m.text(k+2) == "entra"):
		return k + 3 - i
	}
	return 0
}

// nextWeek counts the days to a weekday of the week that begins next Monday.
func (m *message) nextWeek(wd time.Weekday) int {
	monday := func(d time.Weekday) int { return (int(d) + 6) % 7 }
	return 7 - monday(m.ctx.Today.In(time.UTC).Weekday()) + monday(wd)
}

// ordinals are the ends of spoken days: "the twenty second".
var ordinals = map[string]int{
	"first": 1, "second": 2, "third": 3, "fourth": 4, "fifth": 5, "sixth": 6, "seventh": 7,
	"eighth": 8, "ninth": 9, "tenth": 10, "eleventh": 11, "twelfth": 12, "thirteenth": 13, "fourteenth": 14,
	"fifteenth": 15, "sixteenth": 16, "seventeenth": 17, "eighteenth": 18, "nineteenth": 19, "twentieth": 20, "thirtieth": 30,
}

// dayGone returns how many items a day of this month takes at i that was such a
// weekday and is over, else 0: the "10th" of "tues 10th".
func (m *message) dayGone(i int, wd time.Weekday) int {
	if !m.isNum(i) || !m.items[i].num.integer || m.items[i].value < 1 || m.items[i].value > 31 || i+1 >= len(m.items) {
		return 0
	}
	n := 1
	switch t := &m.toks[m.items[i+1].tok]; {
	case m.items[i].num.ordinal:
	case t.glued && (t.text == "th" || t.text == "st" || t.text == "nd" || t.text == "rd"):
		n = 2
	default:
		return 0
	}
	day := assess.Date{Year: m.ctx.Today.Year, Month: m.ctx.Today.Month, Day: int(m.items[i].value)}
	if !day.Before(m.ctx.Today) || day.In(time.UTC).Weekday() != wd {
		return 0
	}
	return n
}

// dayAt reads "June 18", "18 de junio", "the 19th", "6/18".
func (m *message) dayAt(i int) (assess.Date, int, bool) {
	next := func(mon time.Month, day int) assess.Date {
		d := assess.Date{Year: m.ctx.Today.Year, Month: mon, Day: day}
		if d.Before(m.ctx.Today) {
			d.Year++
		}
		return d
	}
	numAt := func(k int) (int, bool) {
		if !m.isNum(k) || !m.items[k].num.integer || m.items[k].value < 1 || m.items[k].value > 31 || m.items[k].unit != "" || m.items[k].num.apos || m.items[k].num.money {
			return 0, false
		}
		return int(m.items[k].value), true
	}
	th := func(k int) bool {
		if k >= len(m.items) {
			return false
		}
		t := &m.toks[m.items[k].tok]
		switch t.text {
		case "th", "st", "nd", "rd":
			return t.glued
		}
		return false
	}
	// "june twenty second": the ordinal's end stands apart
	ordinal := func(k int) int {
		if m.isNum(k) && m.items[k].num.words && (m.items[k].value == 20 || m.items[k].value == 30) {
			if o := ordinals[m.text(k+1)]; o < 10 {
				return o
			}
		}
		return 0
	}
	if mon, ok := months[m.text(i)]; ok && m.text(i) != "may" || m.text(i) == "may" && m.toks[m.items[i].tok].caps {
		if mon == 0 {
			mon = 5
		}
		k := i + 1
		if m.text(k) == "the" {
			k++
		}
		if m.text(k) == "." {
			k++
		}
		if d, ok := numAt(k); ok {
			n := k + 1 - i
			if o := ordinal(k); o > 0 {
				d, n = d+o, n+1
			}
			if th(k + 1) {
				n++
			}
			if m.isNum(i+n) && year(m.items[i+n].value) {
				return assess.Date{Year: int(m.items[i+n].value), Month: mon, Day: d}, n + 1, true
			}
			return next(mon, d), n, true
		}
		return assess.Date{}, 0, false
	}
	if d := ordinals[m.text(i)]; d > 0 && m.text(i-1) == "the" {
		// "the first of July", "on the fifth"
		if mon, ok := months[m.text(i+2)]; ok && m.text(i+1) == "of" && (d != 4 || mon != time.July) { // the Fourth is a feast
			return next(mon, d), 3, true
		}
		switch m.text(i - 2) {
		case "on", "by", "for", "until", "till", "due":
			if !m.countsThing(i+1) && m.text(i+1) != "one" && m.text(i+1) != "of" && !m.is(i+1, cItem, "") && m.items[min(i+1, len(m.items)-1)].point == "" {
				return m.dayOfMonth(d), 1, true
			}
		}
	}
	if d, ok := numAt(i); ok {
		if m.text(i+1) == "de" || m.text(i+1) == "of" || th(i+1) && m.text(i+2) == "of" {
			k := i + 2
			if th(i + 1) {
				k++
			}
			if mon, ok := months[m.text(k)]; ok {
				return next(mon, d), k + 1 - i, true
			}
		}
		if mon, ok := months[m.text(i+1)]; ok && m.text(i+1) != "may" && m.text(i+1) != "mar" {
			return next(mon, d), 2, true
		}
		// 6/18 after "on" or beside a word of planning
		if m.text(i+1) == "/" && d <= 12 && m.toks[m.items[i+1].tok].glued {
			if day, ok := numAt(i + 2); ok && m.toks[m.items[i+2].tok].glued {
				n := 3
				if m.text(i+3) == "/" && m.isNum(i+4) {
					n = 5
				}
				p := m.text(i - 1)
				if oneOf(p, "on", "el", "for", "by", "para", "due", "dated") || n == 5 || m.planBefore(i) && !pipeSize(d, day) {
					return next(time.Month(d), day), n, true
				}
			}
		}
		if p := m.text(i - 1); th(i+1) && !m.countsThing(i+2) && (oneOf(p, "the", "on", "by", "for", "due", "until", "till", "el") || i > 0 && weekdays[p] > 0) {
			return m.dayOfMonth(d), 2, true
		}
		if p := m.text(i - 1); p == "el" && (m.text(i-2) == "para" || m.planish(m.items[i].sent)) && m.items[i].num.integer && !(i+1 < len(m.items) && m.items[i+1].point != "") {
			return m.dayOfMonth(d), 1, true
		}
	}
	return assess.Date{}, 0, false
}

// dayOfMonth is the next day of that number, of this month or the one after.
func (m *message) dayOfMonth(d int) assess.Date {
	day := assess.Date{Year: m.ctx.Today.Year, Month: m.ctx.Today.Month, Day: d}
	if !m.ctx.Today.Before(day) {
		day.Month++
		if day.Month > 12 {
			day.Month, day.Year = 1, day.Year+1
		}
	}
	return day
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
		mo := moment{at: i, end: i + 1, days: d, span: true}
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

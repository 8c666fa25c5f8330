package intents

import (
	"strings"
	"time"

	"lazyhand/assess"
)

// Lists of the lexicon that these rules know.
var (
	listPastWeekday  = listOf("past weekday")
	listJobOfWeekday = listOf("job of weekday")
)

// weekdayAt reads "Friday", "Friday of next week", "Thursday the 18th".
func (m *message) weekdayAt(i int) (days, n int) {
	wd, ok := weekdays[m.text(i)]
	if !ok || m.noWeekday(i) {
		return 0, 0
	}
	if m.slashGone(i + 1) {
		return 0, 4 // "Visit Tues 6/9, typing it up late"
	}
	if n := m.dayGone(i+1, wd); n > 0 {
		return 0, n + 1 // "tues 10th visit", written on the 11th
	}
	if w := m.weekAfter(i + 1); w > 0 {
		return m.nextWeek(wd), 1 + w
	}
	days, n = m.daysTo(wd), 1
	k := i + 1
	if m.text(k) == "," || m.text(k) == "the" && m.isNum(k+1) {
		k++
	}
	if day, w := m.dayAt(k); w > 0 {
		n = k + w - i
		if ahead := day.Sub(m.ctx.Today); ahead > 0 && (ahead-days)%7 == 0 {
			days = ahead // the day of the month knows which week
		}
	}
	return days, n
}

// noWeekday tells whether the name of a weekday at item i is no day to come.
func (m *message) noWeekday(i int) bool {
	switch t := m.text(i); {
	case t == "wed" && m.contracted(i): // "we'd put it in on Thursday"
	case oneOf(t, "sun", "sat", "mon", "martes") && m.says(i-1, "the", "in the"): // "sat in the sun"
	case t == "sun" && m.text(i-1) == "el":
	case m.inList(i-1, listPastWeekday), m.text(i+1) == "pasado":
	case m.says(i+1, "was", "were") && !m.contracted(i+1) || m.pastBefore(i): // "fish were biting Sunday"
	case i == 0 && m.inList(i+1, listJobOfWeekday): // "Sunday call, 66 Bellows Creek Rd"
	default:
		return false
	}
	return true
}

// contracted tells whether the word at item i was typed with an apostrophe: "we're", not "were".
func (m *message) contracted(i int) bool {
	return i >= 0 && i < len(m.items) && strings.ContainsAny(m.toks[m.items[i].tok].raw, "'’")
}

// pastBefore tells whether the clause of the weekday at item i tells what was, with nothing that
// is to be done.
func (m *message) pastBefore(i int) bool {
	past := false
	for k := m.clauseStart(i); k < i; k++ {
		if m.items[k].kinds.meets(toBeDone) || m.items[k].num != nil {
			return false
		}
		past = past || m.says(k, "was", "were")
	}
	return past
}

// toBeDone are classes of what a day is told for.
var toBeDone = setOf(cDo, cDid, cWill, cItem, cPart)

// slashGone tells whether the words at i are a day of the last three months: "6/9".
func (m *message) slashGone(i int) bool {
	if !m.isNum(i) || m.text(i+1) != "/" || !m.isNum(i+2) || m.items[i].value > 12 || m.items[i+2].value > 31 {
		return false
	}
	day := assess.Date{Year: m.ctx.Today.Year, Month: time.Month(m.items[i].value), Day: int(m.items[i+2].value)}
	past := m.ctx.Today.Sub(day)
	return past >= 0 && past < 90
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

package intents

import (
	"time"

	"lazyhand/assess"
)

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

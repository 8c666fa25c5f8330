package intents

import (
	"time"

	"lazyhand/assess"
)

// Lists of the lexicon that these rules know.
var (
	listBeforeDay  = listOf("before day")
	listBeforeDate = listOf("before date")
)

var weekdays = map[string]time.Weekday{
	"sunday": 0, "monday": 1, "tuesday": 2, "wednesday": 3, "thursday": 4, "friday": 5, "saturday": 6,
	"sun": 0, "mon": 1, "tue": 2, "tues": 2, "wed": 3, "weds": 3, "thu": 4, "thur": 4, "thurs": 4, "fri": 5, "sat": 6,
	"domingo": 0, "lunes": 1, "martes": 2, "miercoles": 3, "jueves": 4, "viernes": 5, "sabado": 6,
	"mondays": 1, "fridays": 5,
	"thrsdy": 4, "thrs": 4, "wednsday": 3, "wensday": 3, "wednesdy": 3, "frdy": 5, "mndy": 1, "tsdy": 2, "wdnsdy": 3,
}

var months = map[string]time.Month{
	"january": 1, "february": 2, "march": 3, "april": 4, "may": 5, "june": 6,
	"july": 7, "august": 8, "september": 9, "october": 10, "november": 11, "december": 12,
	"jan": 1, "feb": 2, "mar": 3, "apr": 4, "jun": 6, "jul": 7, "aug": 8, "sep": 9, "sept": 9, "oct": 10, "nov": 11, "dec": 12,
	"enero": 1, "febrero": 2, "marzo": 3, "abril": 4, "mayo": 5, "junio": 6,
	"julio": 7, "agosto": 8, "septiembre": 9, "octubre": 10, "noviembre": 11, "diciembre": 12,
}

// ordinals are the ends of spoken days: "the twenty second".
var ordinals = map[string]int{
	"first": 1, "second": 2, "third": 3, "fourth": 4, "fifth": 5, "sixth": 6, "seventh": 7,
	"eighth": 8, "ninth": 9, "tenth": 10, "eleventh": 11, "twelfth": 12, "thirteenth": 13, "fourteenth": 14,
	"fifteenth": 15, "sixteenth": 16, "seventeenth": 17, "eighteenth": 18, "nineteenth": 19, "twentieth": 20, "thirtieth": 30,
}

// calendarDay reads a day of the calendar that is still to come: the days to it.
func (m *message) calendarDay(i int) (days, n int) {
	day, n := m.dayAt(i)
	if n == 0 || day.Sub(m.ctx.Today) <= 0 {
		return 0, 0
	}
	return day.Sub(m.ctx.Today), n
}

// dayAt reads "June 18", "18 de junio", "the 19th", "6/18": the day, and how many items it
// takes, 0 for none.
func (m *message) dayAt(i int) (assess.Date, int) {
	if m.inFigures(i) {
		return m.numberedDay(i)
	}
	if mon := m.monthAt(i); mon > 0 {
		return m.dayBehindMonth(i, mon)
	}
	if day, n := m.spokenDay(i); n > 0 {
		return day, n
	}
	return m.numberedDay(i)
}

// monthAt returns the month that item i names, 0 for none; "may" is one only in capitals.
func (m *message) monthAt(i int) time.Month {
	if m.text(i) == "may" && !m.toks[m.items[i].tok].caps {
		return 0
	}
	return months[m.text(i)]
}

// nextDate is the next day of that month and number.
func (m *message) nextDate(mon time.Month, day int) assess.Date {
	d := assess.Date{Year: m.ctx.Today.Year, Month: mon, Day: day}
	if d.Before(m.ctx.Today) {
		d.Year++
	}
	return d
}

// dayNumber returns the number at item k if it may be a day's, else 0.
func (m *message) dayNumber(k int) int {
	if !m.isNum(k) || m.items[k].unit != "" {
		return 0
	}
	it := &m.items[k]
	if !it.num.integer || it.num.apos || it.num.money || it.value < 1 || it.value > 31 {
		return 0
	}
	return int(it.value)
}

// glued tells whether item k is written close to the one before it.
func (m *message) glued(k int) bool { return k < len(m.items) && m.toks[m.items[k].tok].glued }

// ordinalEnd tells whether item k is the end of a day written in figures: the "th" of "18th".
func (m *message) ordinalEnd(k int) bool {
	return m.glued(k) && oneOf(m.toks[m.items[k].tok].text, "th", "st", "nd", "rd")
}

// dayBehindMonth reads the day behind the month at item i: "June 18th", "june twenty second",
// "June 18 2027".
func (m *message) dayBehindMonth(i int, mon time.Month) (assess.Date, int) {
	k := i + 1
	if m.text(k) == "the" {
		k++
	}
	if m.text(k) == "." {
		k++
	}
	day := m.dayNumber(k)
	if day == 0 {
		return assess.Date{}, 0
	}
	k++
	if one := ordinals[m.text(k)]; m.items[k-1].num.words && (day == 20 || day == 30) && one > 0 && one < 10 {
		day += one // the end of the ordinal stands apart
		k++
	}
	if m.ordinalEnd(k) {
		k++
	}
	if m.isNum(k) && year(m.items[k].value) {
		return assess.Date{Year: int(m.items[k].value), Month: mon, Day: day}, k + 1 - i
	}
	return m.nextDate(mon, day), k - i
}

// spokenDay reads "the first of July", "on the fifth".
func (m *message) spokenDay(i int) (assess.Date, int) {
	day := ordinals[m.text(i)]
	if day == 0 || m.text(i-1) != "the" {
		return assess.Date{}, 0
	}
	if mon, ok := months[m.text(i+2)]; ok && m.text(i+1) == "of" && (day != 4 || mon != time.July) { // the Fourth is a feast
		return m.nextDate(mon, day), 3
	}
	if !m.inList(i-2, listBeforeDay) || m.countsThing(i+1) || m.says(i+1, "one", "of") {
		return assess.Date{}, 0
	}
	if m.is(i+1, cItem, "") || m.is(i+1, cUnit, "") || m.pointAt(i+1) || m.unknownNoun(i+1) {
		return assess.Date{}, 0 // "on the second tank", "on the first draw", "for the first minute"
	}
	return m.dayOfMonth(day), 1
}

// numberedDay reads a day that begins with its number: "18 de junio", "6/18", "the 19th".
func (m *message) numberedDay(i int) (assess.Date, int) {
	day := m.dayNumber(i)
	if day == 0 {
		return assess.Date{}, 0
	}
	end := i + 1
	th := m.ordinalEnd(end)
	if th {
		end++
	}
	if mon, ok := months[m.text(end+1)]; ok && (m.text(end) == "of" || m.text(end) == "de" && !th) {
		return m.nextDate(mon, day), end + 2 - i
	}
	if mon, ok := months[m.text(i+1)]; ok && !m.says(i+1, "may", "mar") {
		return m.nextDate(mon, day), 2
	}
	if date, n := m.slashDay(i, day); n > 0 {
		return date, n
	}
	// "replace the 2nd tank"
	counted := m.is(end, cItem, "") && m.text(i-1) == "the" && !m.inList(i-2, listBeforeDay)
	if th && !counted && !m.countsThing(end) && (m.inList(i-1, listBeforeDay) || weekdays[m.text(i-1)] > 0) {
		return m.dayOfMonth(day), 2
	}
	if th && m.stopAt(end) && m.planBefore(i) {
		return m.dayOfMonth(day), 2 // "tank install 22nd"
	}
	if m.text(i-1) == "el" && (m.text(i-2) == "para" || m.planish(m.items[i].sent) || m.planBefore(i-1)) && !m.pointAt(i+1) {
		return m.dayOfMonth(day), 1
	}
	return assess.Date{}, 0
}

// slashDay reads "6/18" after "on" or beside a word of planning, and "6/18/26".
func (m *message) slashDay(i, month int) (assess.Date, int) {
	day := m.dayNumber(i + 2)
	if m.text(i+1) != "/" || month > 12 || day == 0 || !m.glued(i+1) || !m.glued(i+2) {
		return assess.Date{}, 0
	}
	n := 3
	if m.text(i+3) == "/" && m.isNum(i+4) {
		n = 5
	}
	if n == 5 || m.inList(i-1, listBeforeDate) || (m.planBefore(i) || m.planAround(i, n)) && !pipeSize(month, day) {
		return m.nextDate(time.Month(month), day), n
	}
	return assess.Date{}, 0
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

// isWeekday tells whether a word names a day of the week.
func isWeekday(w string) bool { _, ok := weekdays[w]; return ok }

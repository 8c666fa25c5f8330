package intents

import "strings"

// Lists of the lexicon that these rules know.
var (
	listMorning   = listOf("morning")
	listNext      = listOf("next")
	listYearlyJob = listOf("yearly job")
)

// Days told as so many from today: "tomorrow", "next week", "a month and a half".

// periodDays are the days of a period by its name.
var periodDays = map[string]int{
	"week": 7, "wk": 7, "semana": 7, "month": 30, "mes": 30, "mo": 30, "year": 365, "ano": 365, "yr": 365,
}

// namedPeriods are the days of periods told in one word.
var namedPeriods = map[string]int{"fortnight": 14, "quincena": 15, "annually": 365, "yearly": 365}

// dayAfter reads "tomorrow", "pasado mañana", "day after tomorrow", "day after that".
func (m *message) dayAfter(i int) (days, n int) {
	switch {
	case m.inList(i, listTomorrow):
		return 1, 1
	case m.text(i) == "manana" && !m.says(i-1, "la", "esta", "por la"): // those are the morning
		return 1, 1
	case m.text(i) == "pasado" && m.text(i+1) == "manana":
		return 2, 2
	case m.nextMorning(i):
		return 1, 1
	case m.text(i) != "day":
		return 0, 0
	case m.text(i+1) == "after tomorrow":
		return 2, 2
	case m.text(i+1) == "after" && m.text(i+2) == "tomorrow":
		return 2, 3
	case m.text(i+1) == "after" && m.text(i+2) == "that" && len(m.moments) > 0:
		return m.moments[len(m.moments)-1].days + 1, 3
	}
	return 0, 0
}

// nextMorning tells whether the morning at item i is the next one, since somebody is to come
// in it: "be back in the morning", "I'll return first thing in the am".
func (m *message) nextMorning(i int) bool {
	if !m.inList(i, listMorning) || m.isNum(i-1) ||
		m.says(i, "morn", "am") && m.text(i-1) != "the" {
		return false
	}
	comes := func(k int) bool {
		back := m.says(k, "return", "returning", "back in") || m.text(k) == "back" || strings.HasSuffix(m.text(k), " back") && m.is(k, cWill, "")
		return back && !m.isNum(k-1) && m.text(k-1) != "out" && !m.meets(k+1, backOf)
	}
	return m.left(i, 6, true, comes) >= 0
}

// nextPeriod reads "next week", "proximo mes", "semana que viene", "mes entrante".
func (m *message) nextPeriod(i int) (days, n int) {
	if m.inList(i, listNext) {
		if days = periodDays[m.text(i+1)]; days > 0 {
			return days, 2
		}
		return 0, 0
	}
	days = periodDays[m.text(i)]
	switch {
	case days == 0:
		return 0, 0
	case m.says(i+1, "entrante", "proxima", "proximo"):
		return days, 2
	case m.text(i+1) == "que" && m.says(i+2, "viene", "entra"):
		return days, 3
	}
	return 0, 0
}

// weeksFromToday reads "de hoy en ocho", a week from today as Spanish counts, and "de hoy en
// quince".
func (m *message) weeksFromToday(i int) (days, n int) {
	if m.text(i) != "hoy" || m.text(i-1) != "de" || m.text(i+1) != "en" || !m.isNum(i+2) {
		return 0, 0
	}
	switch m.items[i+2].value {
	case 8:
		return 7, 3
	case 15:
		return 14, 3
	}
	return 0, 0
}

// halfYear reads "half a year", "medio año".
func (m *message) halfYear(i int) (days, n int) {
	switch {
	case m.text(i) == "half" && m.text(i+1) == "a" && m.text(i+2) == "year":
		return 180, 3
	case m.text(i) == "half" && m.says(i+1, "year", "yr"), m.text(i) == "medio" && m.text(i+1) == "ano":
		return 180, 2
	}
	return 0, 0
}

// unitAt returns the days of the unit of time at item i, 0 for none.
func (m *message) unitAt(i int) int {
	u, _ := m.val(i, cUnit)
	return unitDays(u)
}

// fewUnits reads "in a few weeks", "couple of weeks", "par de meses".
func (m *message) fewUnits(i int) (days, n int) {
	switch m.text(i) {
	case "few":
		if u := m.unitAt(i + 1); u > 0 && m.text(i-1) == "a" && m.says(i-2, "in", "for") {
			return 3 * u, 2
		}
	case "couple", "par":
		k := i + 1
		if m.says(k, "of", "de") {
			k++
		}
		if u := m.unitAt(k); u > 0 {
			return 2 * u, k + 1 - i
		}
	}
	return 0, 0
}

// oneUnit reads "a month", "one more week", "a month and a half", "a week from Friday".
func (m *message) oneUnit(i int) (days, n int) {
	if !m.inList(i, listOne) {
		return 0, 0
	}
	k := i + 1
	if m.says(k, "more", "mas") {
		k++
	}
	days = m.unitAt(k)
	end := k + 1
	switch {
	case days == 0, m.text(k) == "d", m.text(i) == "1" && k == i+1:
		return 0, 0
	case m.says(i-1, "once", "twice", "hace", "half", "times"):
		return 0, 0 // "twice a year"
	case m.text(i-1) == "for" && !m.sentenceIs(m.items[i].sent, cAsk, "snooze") && !m.setsDate(i-1) && !m.fromToday(end):
		return 0, 0 // "ran it for a week"
	case m.text(end) == "and" && m.text(end+1) == "a" && m.text(end+2) == "half":
		return days * 3 / 2, end + 3 - i
	case m.text(end) == "y" && strings.HasPrefix(m.text(end+1), "medi"):
		return days * 3 / 2, end + 2 - i // "mes y medio"
	case m.says(end, "ago", "old", "back"), m.text(end) == "and" && (m.isNum(end+1) || m.says(end+1, "change", "some")):
		return 0, 0 // "a month and two days"
	}
	if wd, ok := weekdays[m.text(end+1)]; ok && m.text(end) == "from" {
		return days + m.daysTo(wd), end + 2 - i
	}
	return days, end - i
}

// namedPeriod reads "fortnight", "annually", not "annual visit".
func (m *message) namedPeriod(i int) (days, n int) {
	days, ok := namedPeriods[m.text(i)]
	if !ok || days == 365 && m.inList(i+1, listYearlyJob) {
		return 0, 0
	}
	return days, 1
}

// laterToday reads "today", "coming back this afternoon".
func (m *message) laterToday(i int) (days, n int) {
	if m.is(i, cHint, "today") || m.is(i, cHint, "daytime") && m.is(i-1, cWill, "") && m.is(i-1, cDo, "") {
		return 0, 1
	}
	return 0, 0
}

// daysInHours reads "in 48 hours".
func (m *message) daysInHours(i int) (days, n int) {
	if !m.isNum(i) || m.items[i].unit != "hour" || !m.says(i-1, "in", "within", "en") {
		return 0, 0
	}
	hours := int(m.items[i].value)
	if hours < 24 || hours%24 != 0 {
		return 0, 0
	}
	return hours / 24, 1
}

// weekAfterThat reads "prv friday and tank the week after".
func (m *message) weekAfterThat(i int) (days, n int) {
	if !m.says(i, "week", "semana") || m.text(i+1) != "after" || len(m.moments) == 0 || !m.closes(i+1) {
		return 0, 0
	}
	return m.moments[len(m.moments)-1].days + 7, 2
}

package intents

import "slices"

// Lists of the lexicon that these rules know.
var (
	listOpensDay = listOf("opens day")
)

// moment is a time told for something to come: an item and the days from today.
type moment struct {
	at, end int
	days    int
	span    bool // a length ("6 months"), not a day
	unsure  bool // how long is not said: "swap tank in 4"
}

// unitDays are the days of a unit of time, as the desk counts them.
func unitDays(unit string) int {
	switch unit {
	case "day":
		return 1
	case "week":
		return 7
	case "month":
		return 30
	case "year":
		return 365
	}
	return 0
}

var dayOpener = opener{
	hints: []string{"today", "daytime"},
	words: slices.Concat(wordsOf(periodDays), wordsOf(namedPeriods), wordsOf(weekdays), wordsOf(months), wordsOf(ordinals)),
	lists: []list{listTomorrow, listOpensDay, listOne},
}

// noDay tells whether nothing says that the number at i may be a day or a span: no word of
// days in the message, no unit of time, no stroke or ending right behind it, and no "el 22".
func (m *message) noDay(i int) bool {
	it := &m.items[i]
	return !m.holdsKey(keyDay) && m.text(i-1) != "el" && unitDays(it.unit) == 0 && it.unit != "hour" && !m.glued(i+1) && m.text(i+1) != "/"
}

// dates finds the days and spans of time told.
func (m *message) dates() {
	for i := 0; i < len(m.items); i++ {
		if m.items[i].mark || m.items[i].site || m.items[i].num == nil && !m.begins(i, keyDay) || m.items[i].num != nil && m.noDay(i) {
			continue
		}
		if m.monthOfDate(i) {
			i += 2 // "prv dated 3/14"
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
			for k, parted := i+n-1, m.items[i+n-1].seg; k < len(m.items) && m.items[k].seg == parted; k++ {
				m.items[k].seg = m.items[i].seg // the stroke of "back on 7/9 to swap the prv" parts no clauses
			}
			i += n - 1
		}
	}
}

// dayRules read a day or a span of time at an item: the days from today and how many items
// it takes, none where it takes none.
var dayRules = [...]func(m *message, i int) (days, n int){
	(*message).dayAfter,
	(*message).nextPeriod,
	(*message).weeksFromToday,
	(*message).halfYear,
	(*message).fewUnits,
	(*message).oneUnit,
	(*message).namedPeriod,
	(*message).laterToday,
	(*message).daysInHours,
	(*message).weekAfterThat,
	(*message).weekdayAt,
	(*message).calendarDay,
}

// figureDayRules are those of dayRules that read a number in figures.
var figureDayRules = [...]func(m *message, i int) (days, n int){
	(*message).oneUnit,
	(*message).daysInHours,
	(*message).calendarDay,
}

// inFigures tells whether item i is a number written in figures.
func (m *message) inFigures(i int) bool { return m.isNum(i) && !m.items[i].num.words }

// dateAt reads a day at item i: days from today, and how many items it takes.
func (m *message) dateAt(i int) (days, n int, ok bool) {
	rules := dayRules[:]
	if m.inFigures(i) {
		rules = figureDayRules[:]
	}
	for _, read := range rules {
		if days, n := read(m, i); n > 0 {
			return days, n, true
		}
	}
	return 0, 0, false
}

// planBefore tells whether what stands close before item i is something to do:
// "swap 7/1", "install tank 6/20", "NEXT: tank 6/24".
func (m *message) planBefore(i int) bool {
	s := m.items[i].sent
	for k := i - 1; k >= m.sents[s].from && k >= i-4 && m.items[k].num == nil; k-- {
		if m.is(k, cDo, "") && m.text(k) != "back" || m.is(k, cWill, "") && !m.says(k, "back", "im", "well") {
			return true
		}
		if m.items[k].mark && !m.isMark(k, ":", "-") && !(k == i-1 && m.text(k) == ",") {
			return false
		}
	}
	return false
}

// planAround tells whether a day in figures opens or closes a sentence that plans: "6/22 I need to
// retest", "gotta swap the tank at 12 Elm 6/22".
func (m *message) planAround(i, n int) bool {
	s := &m.sents[m.items[i].sent]
	return m.planish(m.items[i].sent) && (i == s.from || m.stopAt(i+n)) && !m.isNum(i-1)
}

// pipeSize tells whether a/b is the size of a pipe rather than a day.
func pipeSize(a, b int) bool {
	return a < b && (b == 2 || b == 4 || b == 8)
}

// spans adds the lengths of time found among the numbers: "in 6 months".
func (m *message) spans() {
	for i := range m.items {
		it := &m.items[i]
		if it.num == nil || it.role != roleDuration {
			continue
		}
		d := int(it.value*float64(unitDays(it.unit)) + 0.5)
		if it.unit == "month" && it.value == 12 {
			d = unitDays("year") // twelve months are a year
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
	return m.items[i].tags == nil && len(m.text(i)) > 2 && !m.p.lex.common(m.text(i)) && !m.inList(i, listSmallWords)
}

// tellsTime tells whether sentence s tells a time to come; spans may not be known as such yet.
func (m *message) tellsTime(s int) bool {
	if m.momentIn(s) {
		return true
	}
	for i := m.sents[s].from; i < m.sents[s].to; i++ {
		if m.items[i].num != nil && unitDays(m.items[i].unit) > 0 {
			return true
		}
	}
	return false
}

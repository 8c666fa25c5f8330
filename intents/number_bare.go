package intents

import "strings"

// Lists of the lexicon that these rules know.
var (
	listDoorCodes      = listOf("door codes")
	listRings          = listOf("rings")
	listNumberedThings = listOf("numbered things")
	listPieceOfPoint   = listOf("piece of point")
	listStorey         = listOf("storey")
	listWhichStorey    = listOf("which storey")
	listStories        = listOf("stories")
	listLandmarksLead  = listOf("landmarks lead")
)

// Roles of a number without a unit.

// oldestWasher is how old a washing machine is at most that is told of.
const oldestWasher = 30

var (
	turnsGate  = onlyWithWords("turns", "turned", "turning") // who turns so old
	washerGate = onlyWithWords("washer", "dryer")
	ageGate    = onlyWithWords("age", "edad", "age of")
)

// bareAgeRole reads a span of time, an age or a size told without its unit: "tank is 12",
// "gas 40".
func (m *message) bareAgeRole(i int) (role, string) {
	someone := func(k int) bool { return m.inList(k, listPeople) || m.is(k, cWhose, "person") }
	switch {
	case m.spanOfPlan(i):
		return roleDuration, "time of a plan, its unit not told"
	case m.afterDay(i):
		return roleIgnored, "time of day"
	case m.yearOfHeater(i):
		return roleYear, "a heater's year in two digits"
	case !m.shut(turnsGate) && m.says(i-1, "turns", "turned", "turning") && m.left(i, 4, false, someone) >= 0:
		return roleIgnored, "a person's age"
	case !m.shut(washerGate) && m.afterWasher(i) && m.items[i].within(0, oldestWasher) && m.closes(i):
		return roleIgnored, "a washer's age"
	case m.bareAge(i), m.turnsAge(i), m.calledAge(i):
		return roleAge, "years of a thing"
	case m.heaterSize(i):
		m.items[i].unit = "gal"
		return roleSize, "size of a heater"
	case m.tankSize(i):
		m.items[i].unit = "gal"
		return roleSize, "size of an expansion tank"
	}
	return roleNone, ""
}

// afterWasher tells whether a washing machine is said to be the number at i: "the washer is 12", "washer's 20".
func (m *message) afterWasher(i int) bool {
	return m.says(i-1, "is", "was") && m.says(i-2, "washer", "dryer") || m.contracted(i-1) && m.says(i-1, "washer", "dryer")
}

// dateRole reads the parts of a date, and a fraction that is a pipe's: "6/2011", "3/4".
func (m *message) dateRole(i int) (role, string) {
	it := &m.items[i]
	switch {
	case !it.num.integer && it.value < 12 && strings.Contains(it.num.digits, "/"):
		return roleIgnored, "size of a pipe"
	case it.value >= 1 && it.value <= 12 && m.text(i+1) == "/" && m.isNum(i+2) && m.items[i+2].fullYear(), m.monthOfDate(i):
		return roleIgnored, "month of a date"
	case m.monthYear(i) != "":
		it.value = decimal(m.monthYear(i))
		return roleYear, "year of a date code"
	case m.isMark(i-1, "/") && m.monthOfDate(i-2):
		return roleYear, "year of a date"
	case m.dayOfVisit(i):
		return roleIgnored, "a day"
	}
	return roleNone, ""
}

// fullYear tells whether a number is written as a year with its century: "2011".
func (it *item) fullYear() bool { return len(it.num.digits) == 4 && year(it.value) }

// bareYearRole reads a year of two or four digits: "08", "prv del 15", "2011".
func (m *message) bareYearRole(i int) (role, string) {
	it := &m.items[i]
	n := it.num
	if !n.integer {
		return roleNone, ""
	}
	if len(n.digits) == 2 {
		switch {
		case n.digits[0] == '0' && (!n.words || m.spokenYear(i)):
			return roleYear, "leading zero"
		case m.text(i-1) == "del" && m.is(i-2, cItem, "") && (it.value >= 80 || int(it.value) <= m.ctx.Today.Year%100):
			return roleYear, "del: a year of two digits"
		case m.houseYear(i):
			return roleYear, "the house's year"
		case m.stampedYear(i):
			return roleYear, "a year of two digits"
		}
		return roleNone, ""
	}
	switch {
	case it.fullYear() && int(it.value) > m.ctx.Today.Year+1:
		return roleIgnored, "no year yet"
	case it.fullYear():
		return roleYear, "year"
	case len(n.digits) >= 4 && !n.words:
		return roleIgnored, "too long for a pressure"
	}
	return roleNone, ""
}

// nameRole passes over a number that names something or is somebody's: "gate code 4412",
// "owner is 82".
func (m *message) nameRole(i int) (role, string) {
	if m.items[i].ranged && m.isNum(i-2) {
		i -= 2 // "rows 60 to 75"
	}
	prev := m.text(i - 1)
	switch {
	case m.holdsKey(keyNoun|keySays) && m.namedNumber(i) && !oneOf(prev, "reading", "readings", "test") && !m.landmark(i-1) &&
		!m.pieceOfPoint(i-1):
		return roleIgnored, "name after " + prev
	case m.inList(i-1, listRings) && m.clauseStart(i) == i-1 && !m.points(i) && !pressureUnit(m.items[i].unit):
		return roleIgnored, "opens a door"
	case m.heldFor(i):
		return roleIgnored, "a time"
	case m.ofSomebody(i):
		return roleIgnored, "age or name"
	case m.holdsKey(keyNoun) && !m.points(i) && m.left(i, 4, false, m.codeWord) >= 0:
		return roleIgnored, "code"
	}
	return roleNone, ""
}

// codeWord tells whether item k opens a door: "combo".
func (m *message) codeWord(k int) bool {
	return m.inList(k, listDoorCodes)
}

// nounWords are words whose number is a name: codes, rooms, vehicles.
var nounWords = opener{lists: []list{listNumberedThings}}

// nounBefore tells whether item k is such a word.
func (m *message) nounBefore(k int) bool { return m.said(k, keyNoun) }

// namedNumber tells whether a noun whose number is a name leads to the number at i: "gate
// code 4412", "unit: 12".
func (m *message) namedNumber(i int) bool {
	prev, noun := m.text(i-1), m.text(i-2)
	if prev == "." && noun == "no" && m.nounBefore(i-3) || m.is(i-1, cHint, "numbered") && m.nounBefore(i-2) {
		return true // "call no. 63", "work order ending 58"
	}
	if m.says(i+1, "said", "says") && m.items[i].num.integer && m.is(i-1, cWhose, "") && m.nextNum(i) > 0 {
		return true // "city guy 14 said"
	}
	if m.nounBefore(i-1) && (prev != "no" || m.nounBefore(i-2)) && !m.is(i-1, cPoint, "") && (i < 3 || m.jobOfTime(i-3) != i-1) {
		return !m.ordered(i - 1)
	}
	if prev != ":" || !m.nounBefore(i-2) || m.is(i-2, cPoint, "") || oneOf(noun, "reading", "readings", "test", "unit") {
		return false
	}
	if m.says(i+1, "at", "on", "off") && m.pointNear(i) {
		return false // "from the van: 102 at the front bib"
	}
	return noun != "number" || !m.pointAt(i+1)
}

// ordered tells whether the storey at item i has its own number already: "second floor 66",
// "2nd floor 66", "top floor 58".
func (m *message) ordered(i int) bool {
	return i > 0 && m.inList(i, listStorey) && (m.inList(i-1, listWhichStorey) || m.glued(i-1))
}

// ofSomebody tells whether the number at i is said to be somebody's or a noun's: "owner is
// 82", "the gate is 1234".
func (m *message) ofSomebody(i int) bool {
	if m.contracted(i-1) && m.p.lex.inList(strings.TrimSuffix(m.text(i-1), "s"), listPeople) && !m.pointInClause(i) {
		return true // "dad's 41"
	}
	if !m.says(i-1, "is", "'s", "was", "turned") {
		return false
	}
	noun := m.text(i - 2)
	if noun == "who" {
		return true // "the gentleman, who is 88"
	}
	if !m.says(i-1, "is", "'s") || oneOf(noun, "reading", "la", "point", "unit", "test") || noun == "number" && m.pointNear(i) {
		return false
	}
	return m.p.lex.inList(noun, listPeople) || m.nounBefore(i-2) && !m.landmark(i-2) && !m.pieceOfPoint(i-2)
}

// pieceOfPoint tells whether a noun is a piece of the test point named right before it:
// "the lav stop", "the washer box", "the kitchen test".
func (m *message) pieceOfPoint(i int) bool {
	if m.inList(i, listPieceOfPoint) {
		return i > 0 && (m.items[i-1].point != "" || m.items[i-1].role == roleTaken && !m.items[i-1].mark)
	}
	return false
}

// landmark tells whether a noun only says where a test point is: "bibb by the gate".
func (m *message) landmark(i int) bool {
	if m.text(i-1) != "the" {
		return false
	}
	if m.inList(i-2, listLandmarksLead) {
		return m.left(i, 6, false, func(k int) bool { return m.items[k].point != "" }) >= 0
	}
	return false
}

// points tells whether a test point stands right beside the number at i.
func (m *message) points(i int) bool {
	return m.items[max(i-1, 0)].point != "" || i+1 < len(m.items) && m.items[i+1].point != ""
}

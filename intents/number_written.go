package intents

// Lists of the lexicon that these rules know.
var (
	listCountedDays = listOf("counted days")
	listHaveNone    = listOf("have none")
	listBeforeClock = listOf("before clock")
)

// Roles that a number has by the way it is written and by its unit.

// noQuantityRole passes over what counts nothing here: times, telephones, other houses.
func (m *message) noQuantityRole(i int) (role, string) {
	n := m.items[i].num
	switch {
	case (m.text(i+1) == "birthday" || m.text(i+2) == "birthday") && m.itemIn(m.items[i].sent) != "":
		return roleAge, "birthday"
	case n.time, n.phone, n.money, n.percent, m.ordinal(i):
		return roleIgnored, "time, telephone, money or share"
	case m.onSameStreet(i), m.houseTakenBack(i):
		return roleIgnored, "another house of the street"
	case n.digits == "24" && (m.roundTheClock(i, i+1) || m.text(i+1) == "/" && m.roundTheClock(i, i+2)), // "recirc pump, runs 24/7"
		n.digits == "7" && m.roundTheClock(i-1, i):
		return roleIgnored, "round the clock"
	}
	return roleNone, ""
}

// roundTheClock tells whether the numbers at a and b are "24 7".
func (m *message) roundTheClock(a, b int) bool {
	return m.isNum(a) && m.isNum(b) && m.items[a].num.digits == "24" && m.items[b].num.digits == "7"
}

// bracketRole passes over a number in brackets that says no more: "sixty-eight (68)".
func (m *message) bracketRole(i int) (role, string) {
	it := &m.items[i]
	if m.text(i+1) != ")" {
		return roleNone, ""
	}
	switch prev := m.text(i - 1); {
	case prev == "(" && m.isNum(i-2) && m.items[i-2].value == it.value:
		return roleIgnored, "said again"
	case prev == "," && it.unit == "" && it.num.integer && !it.fullYear() && m.inAside(i):
		return roleIgnored, "aside"
	}
	return roleNone, ""
}

// inAside tells whether a bracket was opened close before item i, and nothing in it is of
// a house: "(owner, dog, 2)".
func (m *message) inAside(i int) bool {
	for k := i - 2; k >= max(0, i-6); k-- {
		if m.text(k) == "(" {
			return true
		}
		if m.items[k].point != "" || m.is(k, cItem, "") {
			return false
		}
	}
	return false
}

// listedRole passes over the number of a line in a list: "1) kitchen 62".
func (m *message) listedRole(i int) (role, string) {
	it := &m.items[i]
	if !it.num.integer || it.unit != "" {
		return roleNone, ""
	}
	if m.dayCounted(i) {
		return roleIgnored, "number of a day"
	}
	next := m.text(i + 1)
	bracketed := next == ")" && it.value < 20 && (i == 0 || m.items[i-1].mark)
	dotted := next == "." && it.value < 10 && (i == 0 || m.text(i-1) == "\n")
	if bracketed || dotted {
		return roleIgnored, "number of a list"
	}
	return roleNone, ""
}

// dayCounted tells whether the number at item i counts days of something: "day 30 of my probation".
func (m *message) dayCounted(i int) bool {
	return m.text(i+1) == "of" && m.inList(i-1, listCountedDays)
}

// putInBefore tells whether the time gone by at item i is since something was put in: "regulator
// put in 6 months ago".
func (m *message) putInBefore(i int) bool {
	return m.thingIn(m.items[i].sent) && m.left(i, 3, false, func(k int) bool {
		return m.isAny(k, cDid, "installed", "replaced") || m.is(k, cHint, "wentin")
	}) >= 0
}

// unitRole reads a number whose unit says what it is: "40 gal", "120 degrees".
func (m *message) unitRole(i int) (role, string) {
	it := &m.items[i]
	if m.sents[it.sent].asksConvert && !m.measuredBesides(i) {
		return roleAsked, "conversion"
	}
	switch it.unit {
	case "year":
		return m.yearsRole(i)
	case "month", "week", "day":
		if m.says(i+1, "ago", "back", "bck") && m.putInBefore(i) {
			return roleAgo, "ago"
		}
		if m.says(i+1, "old", "de uso", "de vieja", "de viejo") && m.thingIn(m.items[i].sent) {
			return roleAge, "months of a thing" // "prv is 6 months old"
		}
		return roleDuration, "unit of time"
	case "feet":
		if m.left(i, 7, false, func(k int) bool { return m.says(k, "head", "static head") && m.items[k].seg == it.seg }) >= 0 &&
			m.headOfWater(i) {
			it.unit = "ft" // "the head at the meter is 140 ft"
			return roleNone, ""
		}
		return roleIgnored, "a length"
	case "metre":
		if m.headOfWater(i) {
			it.unit = "m"
			return roleNone, ""
		}
		return roleIgnored, "a length"
	case "hour", "money", "other", "inch", "turn":
		return roleIgnored, "unit " + it.unit
	case "gal", "litre":
		return m.volumeRole(i)
	case "degf", "degc", "deg":
		return m.tempRole(i)
	}
	return roleNone, ""
}

// measuredBesides tells whether a number in a question for a conversion is a reading all
// the same: "what is 4 bar in psi, kitchen 58".
func (m *message) measuredBesides(i int) bool {
	p := m.prevNum(i)
	return m.items[i].unit == "" && p >= 0 && m.items[p].seg != m.items[i].seg && m.pointInClause(i)
}

// volumeRole reads a volume as the size of a heater or tank: "151 litros" is 40 gallons.
func (m *message) volumeRole(i int) (role, string) {
	it := &m.items[i]
	if it.unit == "litre" {
		it.value = round1(it.value * 0.264172)
	}
	// "2 galones de cloro"
	ofOther := m.text(i+1) == "of" && m.text(i+2) != "year" && !m.is(i+2, cFuel, "") || m.text(i+1) == "de" && m.unknownNoun(i+2)
	// "80 gal rain barrel"
	if it.value > 200 || ofOther || m.volumeUsed(i) || m.is(i+1, cHint, "counted") {
		return roleIgnored, "no equipment's size"
	}
	return roleSize, "unit of volume"
}

// clockOrCountRole passes over a number that a small word makes a name, an hour or a count:
// "truck #4", "a las 3", "the 2 bibs".
func (m *message) clockOrCountRole(i int) (role, string) {
	it := &m.items[i]
	prev := m.text(i - 1)
	switch {
	case prev == "#" && m.toks[it.tok].glued:
		return roleIgnored, "after #"
	case (prev == "las" || prev == "la" && it.value == 1) && it.within(0, 12) && m.text(i-2) == "a":
		return roleIgnored, "time of day"
	case it.within(0, 59) && len(it.num.digits) == 2 && m.isNum(i-1) && m.items[i-1].within(1, 12) && m.inList(i-2, listBeforeClock):
		return roleIgnored, "time of day" // "arrived 7 50"
	case it.within(2, 6) && it.num.integer && oneOf(prev, "las", "los", "all", "both", "the") && (m.isNum(i+1) || m.is(i+1, cFixture, "")):
		return roleIgnored, "count"
	}
	return roleNone, ""
}

// vagueRole passes over a number that was not told exactly, and asks for it beside a test
// point: "mid 60s at the kitchen", "sixty-some at the tub".
func (m *message) vagueRole(i int) (role, string) {
	if m.vague(i) {
		if m.pointNear(i) {
			m.askPlace(i)
		}
		return roleIgnored, "vague"
	}
	andSome := m.text(i+1) == "y" && m.says(i+2, "tantos", "pico")
	if andSome || m.text(i+1) == "something" {
		return roleIgnored, "vague"
	}
	return roleNone, ""
}

// vague tells whether a number is tens, or half heard: "60s", "8 5 psi", "ninety ate".
func (m *message) vague(i int) bool {
	tens := i+1 < len(m.items) && m.toks[m.items[i+1].tok].glued && m.says(i+1, "s", "o")
	return tens || m.items[i].num.integer && (m.digitsApart(i) || m.oddCount(i)) || m.halfHeard(i)
}

// noneRole passes over a piece of a number, a limit, and nought of something: "0-160",
// "<80", "0 leaks".
func (m *message) noneRole(i int) (role, string) {
	it := &m.items[i]
	prev := m.text(i - 1)
	limit := prev == "<" || prev == ">" && !m.says(i-2, "-", "=")
	switch {
	case prev == "-" && it.unit == "" && m.toks[it.tok].glued && m.numIs(i-2, roleIgnored):
		return roleIgnored, "part of a number"
	case it.value == 50 && it.unit == "" && !m.kinds.meets(pointClasses) && m.halfAndHalf(i):
		return roleIgnored, "half and half" // "50/50"
	case limit && !m.toks[it.tok].quoted:
		return roleIgnored, "a limit"
	case it.value == 0 && m.text(i+1) == "charge":
		return roleIgnored, "no charge"
	case it.value == 0 && m.is(i+1, cSym, "") && !m.dryAtPoint(i), it.value == 0 && it.num.integer && m.is(i+1, cItem, ""):
		return roleIgnored, "none of it" // "zero expansion tank"
	case m.text(i+1) == "to" && m.text(i+2) == "go" && m.closes(i+2), m.text(i+1) == "to go" && m.closes(i+1):
		return roleIgnored, "what is left" // "no gauge yet, 20 to go"
	case (m.text(i+1) == "left" && m.closes(i+1) || m.text(i+1) == "to" && m.text(i+2) == "go") && m.inList(i-1, listHaveNone):
		return roleIgnored, "what is left" // "got 30 left"
	}
	return roleNone, ""
}

// halfAndHalf tells whether the number at i is one of two that are the same, with a stroke between.
func (m *message) halfAndHalf(i int) bool {
	same := func(k, mark int) bool {
		return m.isMark(mark, "/") && m.isNum(k) && m.items[k].value == m.items[i].value && m.glued(max(k, i))
	}
	return same(i+2, i+1) || same(i-2, i-1)
}

// dryAtPoint tells whether a nought is measured where no water comes: "kitchen 0 no water".
func (m *message) dryAtPoint(i int) bool {
	return m.is(i+1, cSym, "no_water") && i > 0 && (m.items[i-1].point != "" || m.taken(i-1))
}

// digitsApart tells whether the number at i is one of two single digits with a blank
// between, a slip for one number.
func (m *message) digitsApart(i int) bool {
	digit := func(k int) bool {
		return m.isNum(k) && len(m.items[k].num.digits) == 1 && !m.items[k].num.words && !m.items[k].num.time
	}
	plain := m.items[i].unit == "" || m.items[i].unit == "psi"
	return digit(i) && plain && (digit(i+1) || digit(i-1))
}

// oddCount tells whether tens are told with more that is not counted: "sixty-some",
// "60 odd".
func (m *message) oddCount(i int) bool {
	k := i + 1
	if m.isMark(k, "-") {
		k++
	}
	return int(m.items[i].value)%10 == 0 && (m.text(k) == "some" || m.text(k) == "odd") && !m.is(k+1, cItem, "") &&
		m.items[i].seg == m.items[min(k, len(m.items)-1)].seg
}

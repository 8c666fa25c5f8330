package intents

import "strings"

// role is what a number means.
type role uint8

const (
	roleNone    role = iota
	roleTaken        // belongs to a neighbour
	roleReading      // a pressure measured
	roleYear
	roleAge      // years since it was installed
	roleAgo      // years ago
	roleSize     // gallons
	roleTemp     // a thermostat's setting
	roleSetting  // what a regulator is set to
	roleCharge   // what a tank's air is
	roleTo       // of a work: set to
	roleFrom     // of a work: set before
	roleDuration // of a plan or a snooze
	roleDate
	roleAsked // belongs to a question
	roleIgnored
)

var roleNames = map[role]string{
	roleReading: "reading", roleYear: "year", roleAge: "age", roleAgo: "years ago", roleSize: "size", roleTemp: "setpoint", roleSetting: "setting",
	roleCharge: "air charge", roleTo: "set to", roleFrom: "set from", roleDuration: "time", roleDate: "date", roleAsked: "question", roleIgnored: "no report",
}

func (m *message) setRole(i int, r role, why string) {
	m.items[i].role, m.items[i].why = r, why
	m.note(i, roleNames[r], why)
}

// numbers decides what each number means.
func (m *message) numbers() {
	m.shareUnits()
	m.ranges()
	m.declare()
	for i := range m.items {
		m.same(i)
		it := &m.items[i]
		if it.num == nil || it.role != roleNone {
			continue
		}
		r, why := m.roleOf(i)
		m.setRole(i, r, why)
	}
	m.fromBefore()
	m.corrections()
}

// ordinal tells whether number item i is one in a row: "80th".
func (m *message) ordinal(i int) bool {
	_, ok := ordinalAt(m.toks, m.items[i].tok)
	return ok
}

func year(v float64) bool { return v >= 1950 && v <= 2049 && v == float64(int(v)) }

// nounBefore are words whose number is a name: codes, rooms, vehicles.
func nounBefore(s string) bool {
	switch s {
	case "code", "codes", "gate", "job", "jobs", "ticket", "tickets", "invoice", "wo", "po", "truck", "van",
		"unit", "apt", "lot", "ext", "extension", "serial", "model", "page", "step", "number", "no", "num",
		"route", "rev", "station", "channel", "version", "exit", "room", "aged", "lockbox", "pin", "combo",
		"combination", "keypad", "password", "order", "estimate", "permit", "phone", "cell", "zip", "bay",
		"building", "bldg", "suite", "ste", "est", "sku", "part", "acct", "account", "id", "call", "text", "point",
		"test", "stop", "tech", "crew", "reading", "readings", "codigo", "porton", "orden", "trabajo", "factura",
		"camioneta", "troca", "telefono", "cel", "numero", "edad", "apto", "depto", "cuarto", "garage", "alarm",
		"box", "key", "floor", "visit", "wo#", "piso", "badge", "locker", "hwy", "highway", "i", "loop", "exit#",
		"mile", "la":
		return true
	}
	return false
}

// roleOf decides one number by its unit, by what stands before and after it,
// and by what the sentence is about.
func (m *message) roleOf(i int) (role, string) {
	it := &m.items[i]
	n := it.num
	switch {
	case (m.text(i+1) == "birthday" || m.text(i+2) == "birthday") && m.itemIn(it.sent) != "":
		return roleAge, "birthday"
	case n.time, n.phone, n.money, n.percent, m.ordinal(i):
		return roleIgnored, "time, telephone, money or share"
	case m.onSameStreet(i), m.houseTakenBack(i):
		return roleIgnored, "another house of the street"
	}
	prev, next := m.text(i-1), m.text(i+1)
	if next == "/" && n.digits == "24" && m.isNum(i+2) && m.items[i+2].num.digits == "7" {
		return roleIgnored, "round the clock" // "recirc pump, runs 24/7"
	}
	if prev == "(" && next == ")" && m.isNum(i-2) && m.items[i-2].value == it.value {
		return roleIgnored, "said again" // "sixty-eight (68)"
	}
	if next == ")" && prev == "," && it.unit == "" && n.integer && !(len(n.digits) == 4 && year(it.value)) {
		for k := i - 2; k >= 0 && k >= i-6; k-- {
			if m.text(k) == "(" {
				return roleIgnored, "aside"
			}
			if m.items[k].point != "" || m.is(k, cItem, "") {
				break
			}
		}
	}
	if next == ")" && (i == 0 || m.items[i-1].mark) && n.integer && it.value < 20 && it.unit == "" {
		return roleIgnored, "number of a list"
	}
	if next == "." && it.value < 10 && n.integer && (i == 0 || prev == "\n") && it.unit == "" {
		return roleIgnored, "number of a list"
	}
	if m.sents[it.sent].asksConvert && !(it.unit == "" && m.pointInClause(i) && m.prevNum(i) >= 0 && m.items[m.prevNum(i)].seg != it.seg) {
		return roleAsked, "conversion"
	}
	switch it.unit {
	case "year":
		return m.yearsRole(i)
	case "month", "week", "day":
		return roleDuration, "unit of time"
	case "feet", "metre":
		if it.unit == "metre" && it.value >= 10 && it.value <= 150 && (m.pointNear(i) || m.headTalk(i)) && !m.awayWord(m.text(i+1)) {
			it.unit = "m" // a head of water at a test point
			break
		}
		return roleIgnored, "a length"
	case "hour", "money", "other", "inch", "turn":
		return roleIgnored, "unit " + it.unit
	case "gal", "litre":
		if it.unit == "litre" {
			it.value = round1(it.value * 0.264172)
		}
		if it.value > 200 || m.text(i+1) == "of" || m.volumeUsed(i) {
			return roleIgnored, "no equipment's size"
		}
		return roleSize, "unit of volume"
	case "degf", "degc", "deg":
		return m.tempRole(i)
	}
	if prev == "#" && m.toks[it.tok].glued {
		return roleIgnored, "after #"
	}
	if (prev == "las" || prev == "la" && it.value == 1) && it.value <= 12 && it.unit == "" && m.text(i-2) == "a" {
		return roleIgnored, "time of day"
	}
	if oneOf(prev, "las", "los", "all", "both", "the") && it.value <= 6 && it.value >= 2 && it.unit == "" && n.integer && (m.isNum(i+1) || m.is(i+1, cFixture, "")) {
		return roleIgnored, "count"
	}
	if t := m.text(i + 1); (t == "s" || t == "o") && m.toks[m.items[i+1].tok].glued || n.integer && m.digitsApart(i) || m.halfHeard(i) {
		if m.pointNear(i) {
			m.askPlace(i)
		}
		return roleIgnored, "vague" // "mid 60s at the kitchen", "rear tap 8 5 psi", "front ninety ate"
	}
	if n.integer && m.oddCount(i) {
		if m.pointNear(i) {
			m.askPlace(i)
		}
		return roleIgnored, "vague" // "sixty-some at the tub"
	}
	if m.text(i+1) == "y" && (m.text(i+2) == "tantos" || m.text(i+2) == "pico") || m.text(i+1) == "something" {
		return roleIgnored, "vague"
	}
	if prev == "-" && m.toks[it.tok].glued && m.isNum(i-2) && m.items[i-2].role == roleIgnored && it.unit == "" {
		return roleIgnored, "part of a number"
	}
	if (prev == "<" || prev == ">" && m.text(i-2) != "-" && m.text(i-2) != "=") && !m.toks[it.tok].quoted {
		return roleIgnored, "a limit"
	}
	if it.value == 0 && m.text(i+1) == "charge" {
		return roleIgnored, "no charge"
	}
	if it.value == 0 && m.is(i+1, cSym, "") && !(m.is(i+1, cSym, "no_water") && i > 0 && (m.items[i-1].point != "" || m.items[i-1].role == roleTaken)) {
		return roleIgnored, "none of it"
	}
	if it.unit == "" && m.moneyTalk(i) {
		return roleIgnored, "money"
	}
	if n.apos {
		return roleYear, "apostrophe"
	}
	if it.unit == "" && m.spanOfPlan(i) {
		return roleDuration, "time of a plan, its unit not told"
	}
	if it.unit == "" && m.afterDay(i) {
		return roleIgnored, "time of day"
	}
	if it.unit == "" && m.yearOfHeater(i) {
		return roleYear, "a heater's year in two digits"
	}
	someone := func(k int) bool { return person(m.text(k)) || m.is(k, cWhose, "person") }
	if it.unit == "" && m.says(i-1, "turns", "turned", "turning") && m.left(i, 4, false, someone) >= 0 {
		return roleIgnored, "a person's age"
	}
	if it.unit == "" && (m.bareAge(i) || m.turnsAge(i) || m.calledAge(i)) {
		return roleAge, "years of a thing"
	}
	if it.unit == "" && m.heaterSize(i) {
		it.unit = "gal"
		return roleSize, "size of a heater"
	}
	if it.unit == "" {
		if !n.integer && it.value < 12 && strings.Contains(n.digits, "/") {
			return roleIgnored, "size of a pipe"
		}
		if m.text(i+1) == "/" && m.isNum(i+2) && it.value >= 1 && it.value <= 12 && len(m.items[i+2].num.digits) == 4 && year(m.items[i+2].value) {
			return roleIgnored, "month of a date"
		}
		if m.monthOfDate(i) {
			return roleIgnored, "month of a date"
		}
		if m.isMark(i-1, "/") && m.monthOfDate(i-2) {
			return roleYear, "year of a date"
		}
		if m.dayOfVisit(i) {
			return roleIgnored, "a day"
		}
		if len(n.digits) == 2 && n.digits[0] == '0' && n.integer && (!n.words || m.spokenYear(i)) {
			return roleYear, "leading zero"
		}
		if len(n.digits) == 2 && n.integer && prev == "del" && m.is(i-2, cItem, "") && (it.value >= 80 || int(it.value) <= m.ctx.Today.Year%100) {
			return roleYear, "del: a year of two digits"
		}
		if len(n.digits) == 2 && n.integer && m.houseYear(i) {
			return roleYear, "the house's year"
		}
		if len(n.digits) == 2 && n.integer && m.stampedYear(i) {
			return roleYear, "a year of two digits"
		}
		if len(n.digits) == 4 && n.integer && year(it.value) {
			if int(it.value) > m.ctx.Today.Year+1 {
				return roleIgnored, "no year yet"
			}
			return roleYear, "year"
		}
		if len(n.digits) >= 4 && n.integer && !n.words {
			return roleIgnored, "too long for a pressure"
		}
		if m.namedNumber(i) && !oneOf(prev, "reading", "readings", "test") && !m.landmark(i-1) && !m.pieceOfPoint(i-1) {
			return roleIgnored, "name after " + prev
		}
		if m.ofSomebody(i) {
			return roleIgnored, "age or name"
		}
		if m.left(i, 4, false, func(k int) bool {
			t := m.text(k)
			return t == "code" || t == "combo" || t == "lockbox" || t == "codigo" || t == "keypad"
		}) >= 0 && !m.points(i) {
			return roleIgnored, "code"
		}
	}
	return m.pressureRole(i)
}

// namedNumber tells whether a noun whose number is a name leads to the number at i: "gate
// code 4412", "unit: 12".
func (m *message) namedNumber(i int) bool {
	prev, noun := m.text(i-1), m.text(i-2)
	if prev == "." && noun == "no" && nounBefore(m.text(i-3)) || m.is(i-1, cHint, "numbered") && nounBefore(noun) {
		return true // "call no. 63", "work order ending 58"
	}
	if m.says(i+1, "said", "says") && m.items[i].num.integer && m.is(i-1, cWhose, "") && m.nextNum(i) > 0 {
		return true // "city guy 14 said"
	}
	if nounBefore(prev) && (prev != "no" || nounBefore(noun)) && !m.is(i-1, cPoint, "") {
		return true
	}
	if prev != ":" || !nounBefore(noun) || m.is(i-2, cPoint, "") || oneOf(noun, "reading", "readings", "test", "unit") {
		return false
	}
	if m.says(i+1, "at", "on", "off") && m.pointNear(i) {
		return false // "from the van: 102 at the front bib"
	}
	return noun != "number" || !m.pointAt(i+1)
}

// ofSomebody tells whether the number at i is said to be somebody's or a noun's: "owner is
// 82", "the gate is 1234".
func (m *message) ofSomebody(i int) bool {
	noun := m.text(i - 2)
	if !m.says(i-1, "is", "'s") || oneOf(noun, "reading", "la", "point", "unit", "test") || noun == "number" && m.pointNear(i) {
		return false
	}
	return person(noun) || nounBefore(noun) && !m.landmark(i-2) && !m.pieceOfPoint(i-2)
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
	return int(m.items[i].value)%10 == 0 && (m.text(k) == "some" || m.text(k) == "odd") && !m.is(k+1, cItem, "") && m.items[i].seg == m.items[min(k, len(m.items)-1)].seg
}

// pieceOfPoint tells whether a noun is a piece of the test point named right before it:
// "the lav stop", "the washer box", "the kitchen test".
func (m *message) pieceOfPoint(i int) bool {
	switch m.text(i) {
	case "box", "stop", "test", "station", "page", "bay", "key", "room":
		return i > 0 && (m.items[i-1].point != "" || m.items[i-1].role == roleTaken && !m.items[i-1].mark)
	}
	return false
}

// landmark tells whether a noun only says where a test point is: "bibb by the gate".
func (m *message) landmark(i int) bool {
	if m.text(i-1) != "the" {
		return false
	}
	switch m.text(i - 2) {
	case "by", "near", "behind", "past", "beside", "next to", "to", "off", "in", "at":
		return m.left(i, 6, false, func(k int) bool { return m.items[k].point != "" }) >= 0
	}
	return false
}

func (m *message) points(i int) bool {
	return m.items[max(i-1, 0)].point != "" || i+1 < len(m.items) && m.items[i+1].point != ""
}

func person(s string) bool {
	switch s {
	case "owner", "lady", "he", "she", "hes", "shes", "customer", "tenant", "husband", "wife", "mom", "dad", "son",
		"daughter", "grandma", "grandpa", "dog", "cat", "kid", "baby", "senora", "senor", "dueno", "duena",
		"homeowner", "client", "guy", "landlord", "clienta", "cliente", "widow", "mother", "father", "resident",
		"man", "woman", "lady's", "im", "gentleman":
		return true
	}
	return false
}

// yearsRole tells an age from a time to come and from a time ago.
func (m *message) yearsRole(i int) (role, string) {
	switch m.text(i + 1) {
	case "house", "home", "place", "building", "neighborhood", "pipes", "plumbing":
		return roleIgnored, "years of the house"
	case "on":
		if t := m.text(i + 2); (t == "it" || t == "him" || t == "her" || t == "them") && m.thingIn(m.items[i].sent) {
			return roleAge, "years on it"
		}
		return roleIgnored, "years of something else"
	case "in":
		if m.closes(i+1) && m.thingIn(m.items[i].sent) {
			return roleAge, "years in" // "heat pump, two years in"
		}
		return roleIgnored, "years of something else"
	case "doing", "experience", "of", "warranty", "working", "married", "left", "here", "each":
		if m.text(i+1) != "of" || m.text(i+2) != "age" && m.text(i+2) != "service" {
			return roleIgnored, "years of something else"
		}
	}
	if m.right(i, 2, false, func(k int) bool { t := m.text(k); return t == "ago" || t == "back" || t == "atras" }) >= 0 {
		return roleAgo, "ago"
	}
	if m.left(i, 2, false, func(k int) bool { return m.text(k) == "hace" }) >= 0 {
		return roleAgo, "hace"
	}
	if m.is(i-1, cHint, "inuse") && m.thingIn(m.items[i].sent) {
		return roleAge, "years in use" // "heater in service 9 years"
	}
	if m.left(i, 2, false, func(k int) bool {
		t := m.text(k)
		return t == "in" || t == "en" || t == "dentro" || t == "every" || t == "cada" || t == "for" || t == "within" || t == "next"
	}) >= 0 {
		if t := m.text(i - 1); t == "every" || t == "cada" || t == "for" {
			return roleIgnored, t
		}
		return roleDuration, "time to come"
	}
	if m.left(i, 2, false, func(k int) bool { return m.is(k, cDo, "recheck") }) >= 0 && m.text(i+1) != "old" && !m.is(i+1, cItem, "") {
		return roleDuration, "time of a recheck"
	}
	if m.is(i+1, cHint, "followup") || m.is(i+1, cDo, "recheck") {
		return roleDuration, "time of a recheck" // "1 yr recheck"
	}
	if m.left(i, 4, false, func(k int) bool { return person(m.text(k)) }) >= 0 && m.left(i, 4, false, func(k int) bool { return m.is(k, cItem, "") }) < 0 {
		return roleIgnored, "a person's age"
	}
	return roleAge, "years"
}

// thingIn tells whether sentence s speaks of something installed, by its name or as a
// heater by its fuel: "gas-fired forty, nine years on it".
func (m *message) thingIn(s int) bool {
	if m.itemIn(s) != "" {
		return true
	}
	for k := m.sents[s].from; k < m.sents[s].to; k++ {
		if m.is(k, cFuel, "") {
			return true
		}
	}
	return false
}

// tempRole tells a thermostat's setting from the temperature of water.
func (m *message) tempRole(i int) (role, string) {
	it := &m.items[i]
	f := it.value
	if it.unit == "degc" || it.unit == "deg" && f <= 90 {
		f = f*9/5 + 32
	}
	f = float64(int(f + 0.5))
	if m.is(i-1, cState, "firing") && strings.HasSuffix(m.text(i-1), " on") && f >= 100 && f <= 180 {
		m.unsay(i - 1) // "heater is on 130 deg"
		it.value = f
		return roleTemp, "heater on"
	}
	if m.reliefSet(i) {
		return roleIgnored, "what a relief valve opens at"
	}
	// what stands nearest says what is warm: the heater, or water and weather
	heater, water := -1, -1
	se := &m.sents[it.sent]
	for k := i - 1; k >= se.from; k-- {
		ofHeater := m.is(k, cItem, "heater") || m.is(k, cPart, "thermostat") || m.is(k, cFuel, "") || m.is(k, cDid, "set")
		if heater < 0 && (ofHeater || m.items[k].role == roleSize || m.isNum(k) && m.items[k].unit == "gal") {
			heater = i - k
		}
		switch m.text(k) {
		case "water", "comes", "out", "coming", "comes out", "outside", "weather", "sale", "inlet", "rise", "attic", "outdoor", "agua", "hot water", "cold water", "entrada":
			if water < 0 {
				water = i - k
			}
		}
		if water < 0 && m.items[k].point != "" {
			water = i - k
		}
	}
	for k := i + 1; k < se.to && k <= i+4; k++ {
		switch m.text(k) {
		case "out", "outside", "coming", "inlet", "water", "coming in", "here", "in", "weather", "today", "at", "out here", "afuera":
			if water < 0 && !(m.text(k) == "in" && m.text(k+1) != "the") && !(m.text(k) == "at" && m.noTapAt(k+1) && m.noTapAt(k+2)) {
				water = k - i
			}
		case "thermostat", "tstat", "stat", "termostato", "thermostats":
			heater = 0
		}
		if m.items[k].mark || m.items[k].num != nil {
			break
		}
	}
	if heater < 0 && se.header >= 0 {
		for k := se.from; k < se.header; k++ {
			if m.is(k, cItem, "heater") || m.is(k, cPart, "thermostat") {
				heater = 0
			}
		}
	}
	if water >= 0 && (heater < 0 || water < heater) && !se.asking {
		return roleIgnored, "temperature of water or air"
	}
	if heater < 0 && m.carried(it.sent) != "heater" && !se.asking && !(m.is(i+1, cHint, "setting") && m.heaterIn(it.sent)) {
		return roleIgnored, "temperature of something"
	}
	if m.items[i].sent < len(m.sents) && m.sents[it.sent].asking {
		return roleAsked, "temperature asked about"
	}
	it.value = f
	return roleTemp, "degrees"
}

// noTapAt tells whether item k names no tap: the water is warm at one, a heater is not.
func (m *message) noTapAt(k int) bool {
	return !m.pointAt(min(k, len(m.items)-1)) && !m.is(k, cHint, "tapword")
}

// has tells whether any item of the message has a tag.
func (m *message) has(c class, value string) bool {
	if !m.kinds.has(c) {
		return false
	}
	for k := range m.items {
		if m.is(k, c, value) {
			return true
		}
	}
	return false
}

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

// psiPer holds the factors to psi. NIST SP 811 (2008), appendix B.8: psi 6.894757
// kPa, bar 100 kPa, conventional foot of water 2.989067 kPa, conventional metre of water 9.80665 kPa,
// kgf/cm2 98.0665 kPa.
var psiPer = map[string]float64{
	"psi": 1, "bar": 100 / 6.894757, "kpa": 1 / 6.894757, "ft": 2.989067 / 6.894757, "m": 9.80665 / 6.894757, "mpa": 1000 / 6.894757, "kgcm": 98.0665 / 6.894757,
}

// toPSI converts a number with its unit to psi, rounded to 0.1.
func toPSI(v float64, unit string) float64 {
	f, ok := psiPer[unit]
	if !ok {
		f = 1
	}
	return round1(v * f)
}

func round1(v float64) float64 {
	if v < 0 {
		return float64(int64(v*10-0.5)) / 10
	}
	return float64(int64(v*10+0.5+1e-9)) / 10
}

// pressureUnit tells whether a number's unit is one of pressure.
func pressureUnit(u string) bool { _, ok := psiPer[u]; return ok }

// left returns the nearest item left of i in its sentence that ok accepts,
// looking at most n items back and not past another number unless over; -1 for none.
func (m *message) left(i, n int, over bool, ok func(k int) bool) int {
	s := m.sents[m.items[i].sent]
	for k := i - 1; k >= s.from && k >= i-n; k-- {
		if ok(k) {
			return k
		}
		if !over && m.items[k].num != nil && m.items[k].role != roleIgnored {
			return -1
		}
	}
	return -1
}

func (m *message) right(i, n int, over bool, ok func(k int) bool) int {
	s := m.sents[m.items[i].sent]
	for k := i + 1; k < s.to && k <= i+n; k++ {
		if ok(k) {
			return k
		}
		if !over && m.items[k].num != nil {
			return -1
		}
	}
	return -1
}

func (m *message) leftTag(i, n int, c class, value string) int {
	return m.left(i, n, false, func(k int) bool { return m.is(k, c, value) })
}

func (m *message) rightTag(i, n int, c class, value string) int {
	return m.right(i, n, false, func(k int) bool { return m.is(k, c, value) })
}

func (m *message) setRole(i int, r role, why string) {
	m.items[i].role, m.items[i].why = r, why
	m.note(i, roleNames[r], why)
}

// numbers decides what each number means.
func (m *message) numbers() {
	m.shareUnits()
	m.ranges()
	for i := range m.items {
		it := &m.items[i]
		if it.num == nil || it.role != roleNone {
			continue
		}
		r, why := m.roleOf(i)
		m.setRole(i, r, why)
	}
	m.corrections()
}

// shareUnits gives "95 and 97 psi" one unit, and "60/62 psi".
func (m *message) shareUnits() {
	for i := len(m.items) - 1; i > 0; i-- {
		if m.items[i].num == nil || m.items[i].unit == "" {
			continue
		}
		for k := i - 1; k >= 0 && k >= i-4; k-- {
			if m.items[k].num != nil {
				if m.items[k].unit == "" && m.items[k].role == roleNone && !m.items[k].num.time && !m.items[k].num.money && !m.items[k].num.apos {
					if u := m.items[i].unit; pressureUnit(u) && m.items[k].value < 300 || (u == "week" || u == "month" || u == "day" || u == "year") && k >= i-2 {
						m.items[k].unit = u
					}
				}
				break
			}
			switch m.text(k) {
			case "and", "or", "to", "-", "/", "y", "o", "a", "n":
				continue
			}
			break
		}
	}
}

// ranges joins "67-68", "67 or 68", "between 95 and 97", "could be 58 could be
// 59" into their middle.
func (m *message) ranges() {
	for i := 0; i+2 < len(m.items); i++ {
		a := &m.items[i]
		if a.num == nil || a.role != roleNone || a.num.time || a.num.phone {
			continue
		}
		join := 0
		k := i + 2
		if m.isNum(k) {
			switch m.text(i + 1) {
			case "-", "or", "o", "u":
				join = k
			case "to", "a":
				if m.text(i-1) != "from" && m.text(i-1) != "de" && !m.fromLeft(i) {
					join = k
				}
			case "and", "y":
				if m.text(i-1) == "between" || m.text(i-1) == "entre" {
					join = k
				}
			}
		}
		if join == 0 && i+3 < len(m.items) && m.isNum(i+3) {
			x, y := m.text(i+1), m.text(i+2)
			if x == "or" && (y == "maybe" || y == "so" || y == "like") || x == "maybe" && y == "or" || x == "could" && y == "be" || x == "," && (y == "or" || y == "maybe" || y == "o") {
				join = i + 3
			}
		}
		if join == 0 && i+3 < len(m.items) && m.isNum(i+3) && (m.text(i+1) == "could" || m.text(i+1) == "might" || m.text(i+1) == "maybe" || m.text(i+1) == "may") && (m.text(i+2) == "be" || m.text(i+2) == "b") {
			join = i + 3
		}
		if join == 0 && i+3 < len(m.items) && m.isNum(i+3) && (m.text(i+1) == "could" || m.text(i+1) == "might") && m.text(i+2) == "be" {
			join = i + 3
		}
		if join == 0 && i+4 < len(m.items) && m.isNum(i+4) && m.text(i+1) == "," && m.text(i+2) == "maybe" {
			join = i + 4
		}
		if join == 0 {
			continue
		}
		b := &m.items[join]
		if b.num.time || b.num.phone || b.num.negative || a.unit != "" && b.unit != "" && a.unit != b.unit {
			continue
		}
		lo, hi := a.value, b.value
		if !(hi > lo && (hi-lo <= 0.34*hi || hi-lo <= 6) || lo > hi && lo-hi <= 6) {
			continue
		}
		if a.num.integer && b.num.integer && len(a.num.digits) == 4 && year(lo) {
			continue
		}
		if b.unit == "" {
			b.unit = a.unit
		}
		if m.text(i+1) == "to" && b.unit == "" && !m.rangeCue(i, join) {
			continue
		}
		b.value = (lo + hi) / 2
		b.ranged = true
		a.role = roleTaken
		m.note(join, "range", "middle of "+a.num.digits+" and "+b.num.digits)
	}
}

func (m *message) rangeCue(i, join int) bool { return m.items[join].value >= 20 }

func (m *message) fromLeft(i int) bool {
	return m.left(i, 3, false, func(k int) bool { t := m.text(k); return t == "from" || t == "de" || t == "went from" }) >= 0
}

func year(v float64) bool { return v >= 1950 && v <= 2049 && v == float64(int(v)) }

// nounBefore are words whose number is a name: codes, rooms, vehicles.
func nounBefore(s string) bool {
	switch s {
	case "code", "codes", "gate", "job", "jobs", "ticket", "tickets", "invoice", "wo", "po", "truck", "van", "unit", "apt", "lot", "ext", "extension", "serial", "model", "page", "step", "number", "no", "num", "route", "rev", "station", "channel", "version", "exit", "room", "aged", "lockbox", "pin", "combo", "combination", "keypad", "password", "order", "estimate", "permit", "phone", "cell", "zip", "bay", "building", "bldg", "suite", "ste", "est", "sku", "part", "acct", "account", "id", "call", "text", "point", "test", "stop", "tech", "crew", "reading", "readings", "codigo", "porton", "orden", "trabajo", "factura", "camioneta", "troca", "telefono", "cel", "numero", "edad", "apto", "depto", "cuarto", "garage", "alarm", "box", "key", "floor", "visit", "wo#", "piso", "badge", "locker", "hwy", "highway", "i", "loop", "exit#", "mile", "la":
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
	case n.time, n.phone, n.money, n.percent, n.ordinal:
		return roleIgnored, "time, telephone, money or share"
	}
	prev, next := m.text(i-1), m.text(i+1)
	if next == ")" && prev == "," && it.unit == "" && n.integer {
		for k := i - 2; k >= 0 && k >= i-6; k-- {
			if m.text(k) == "(" {
				return roleIgnored, "aside"
			}
			if m.items[k].point != "" || m.is(k, cItem, "") {
				break
			}
		}
	}
	if next == ")" && (i == 0 || m.items[i-1].mark) && n.integer && it.value < 20 {
		return roleIgnored, "number of a list"
	}
	if next == "." && it.value < 10 && n.integer && (i == 0 || prev == "\n") && it.unit == "" {
		return roleIgnored, "number of a list"
	}
	if m.sents[it.sent].asksConvert {
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
		if it.value > 200 || m.text(i+1) == "of" {
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
	if (prev == "las" || prev == "los" || prev == "all" || prev == "both" || prev == "the") && it.value <= 6 && it.value >= 2 && it.unit == "" && n.integer && (m.isNum(i+1) || m.is(i+1, cFixture, "")) {
		return roleIgnored, "count"
	}
	if m.text(i+1) == "y" && (m.text(i+2) == "tantos" || m.text(i+2) == "pico") || m.text(i+1) == "something" {
		return roleIgnored, "vague"
	}
	if prev == "-" && m.toks[it.tok].glued && m.isNum(i-2) && m.items[i-2].role == roleIgnored && it.unit == "" {
		return roleIgnored, "part of a number"
	}
	if (prev == "<" || prev == ">") && !m.toks[it.tok].quoted {
		return roleIgnored, "a limit"
	}
	if it.value == 0 && m.is(i+1, cSym, "") {
		return roleIgnored, "none of it"
	}
	if it.unit == "" && m.moneyTalk(i) {
		return roleIgnored, "money"
	}
	if n.apos {
		return roleYear, "apostrophe"
	}
	if it.unit == "" {
		if len(n.digits) == 2 && n.digits[0] == '0' && n.integer && !n.words {
			return roleYear, "leading zero"
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
		if nounBefore(prev) && (prev != "no" || nounBefore(m.text(i-2))) && !m.is(i-1, cPoint, "") || prev == ":" && nounBefore(m.text(i-2)) && !m.is(i-2, cPoint, "") && m.text(i-2) != "reading" && m.text(i-2) != "readings" && m.text(i-2) != "test" && m.text(i-2) != "unit" {
			if !(prev == "reading" || prev == "readings" || prev == "test" || prev == "la" && m.spanishPoint(i)) {
				return roleIgnored, "name after " + prev
			}
		}
		if (prev == "is" || prev == "'s") && (nounBefore(m.text(i-2)) || person(m.text(i-2))) && m.text(i-2) != "reading" && m.text(i-2) != "la" && m.text(i-2) != "point" && m.text(i-2) != "unit" && m.text(i-2) != "test" {
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

func (m *message) spanishPoint(i int) bool { return false }

func (m *message) points(i int) bool {
	return m.items[max(i-1, 0)].point != "" || i+1 < len(m.items) && m.items[i+1].point != ""
}

func person(s string) bool {
	switch s {
	case "owner", "lady", "he", "she", "hes", "shes", "customer", "tenant", "husband", "wife", "mom", "dad", "son", "daughter", "grandma", "grandpa", "dog", "cat", "kid", "baby", "senora", "senor", "dueno", "duena", "homeowner", "client", "guy", "landlord", "clienta", "cliente", "widow", "mother", "father", "resident", "man", "woman", "lady's", "im", "gentleman":
		return true
	}
	return false
}

// yearsRole tells an age from a time to come and from a time ago.
func (m *message) yearsRole(i int) (role, string) {
	switch m.text(i + 1) {
	case "in", "doing", "experience", "of", "warranty", "on", "working", "married", "left", "here", "from", "each":
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
	if m.left(i, 2, false, func(k int) bool {
		t := m.text(k)
		return t == "in" || t == "en" || t == "every" || t == "cada" || t == "for" || t == "within" || t == "next"
	}) >= 0 {
		if t := m.text(i - 1); t == "every" || t == "cada" || t == "for" {
			return roleIgnored, t
		}
		return roleDuration, "time to come"
	}
	if m.left(i, 4, false, func(k int) bool { return person(m.text(k)) }) >= 0 && m.left(i, 4, false, func(k int) bool { return m.is(k, cItem, "") }) < 0 {
		return roleIgnored, "a person's age"
	}
	return roleAge, "years"
}

// tempRole tells a thermostat's setting from the temperature of water.
func (m *message) tempRole(i int) (role, string) {
	it := &m.items[i]
	f := it.value
	if it.unit == "degc" || it.unit == "deg" && f <= 90 {
		f = f*9/5 + 32
	}
	f = float64(int(f + 0.5))
	// what stands nearest says what is warm: the heater, or water and weather
	heater, water := -1, -1
	se := m.sents[it.sent]
	for k := i - 1; k >= se.from; k-- {
		if heater < 0 && (m.is(k, cItem, "heater") || m.is(k, cPart, "thermostat") || m.is(k, cFuel, "") || m.is(k, cDid, "set") || m.items[k].role == roleSize || m.items[k].num != nil && m.items[k].unit == "gal") {
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
			if water < 0 && !(m.text(k) == "in" && m.text(k+1) != "the") && !(m.text(k) == "at" && m.items[min(k+1, len(m.items)-1)].point == "" && m.items[min(k+2, len(m.items)-1)].point == "") {
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
	if heater < 0 && m.carried(it.sent) != "heater" && !se.asking {
		return roleIgnored, "temperature of something"
	}
	if m.items[i].sent < len(m.sents) && m.sents[it.sent].asking {
		return roleAsked, "temperature asked about"
	}
	it.value = f
	return roleTemp, "degrees"
}

// pressureRole decides a number that can be a pressure.
func (m *message) pressureRole(i int) (role, string) {
	it := &m.items[i]
	s := m.sents[it.sent]
	psi := pressureUnit(it.unit)
	prev := m.text(i - 1)
	// questions keep their numbers
	if s.asking && m.askTakes(i) {
		return roleAsked, "question"
	}
	// fuel pressure, tyres
	if t := m.left(i, 3, false, func(k int) bool {
		return m.text(k) == "wanted" || m.text(k) == "asked for" || (m.text(k) == "wants" || m.text(k) == "quiere" || m.text(k) == "queria" || m.text(k) == "want" || m.text(k) == "pide") && k >= i-2
	}); t >= 0 && m.items[t].seg == it.seg && !m.pointBetween(t, i) {
		return roleIgnored, "what was wanted"
	}
	if m.right(i, 5, false, func(k int) bool {
		switch m.text(k) {
		case "tires", "tire", "tyres", "llantas", "llanta", "air compressor", "compressor":
			return true
		}
		return false
	}) >= 0 || m.left(i, 6, false, func(k int) bool {
		switch m.text(k) {
		case "tires", "tire", "llantas", "compressor", "nitrogen", "bottle", "cylinder", "nitrogeno", "washer pressure", "truck", "spare":
			return true
		}
		return false
	}) >= 0 {
		return roleIgnored, "tyres"
	}
	// from X to Y
	if r, why, ok := m.fromTo(i); ok {
		return r, why
	}
	// air of a tank
	if r, why, ok := m.chargeRole(i); ok {
		return r, why
	}
	if r, why, ok := m.settingRole(i); ok {
		return r, why
	}
	if why, ok := m.dropOrTarget(i); ok {
		return roleIgnored, why
	}
	if it.num.negative || !psi && it.value > 300 || psi && toPSI(it.value, it.unit) > 300 {
		if psi || m.points(i) || it.num.negative {
			m.impossible(i)
		}
		return roleIgnored, "no pressure of a house"
	}
	if psi {
		return roleReading, "unit of pressure"
	}
	// counts: "two hose bibs open", "3 taps"
	if it.value > 0 && it.value <= 6 && it.num.integer && i+1 < len(m.items) && (m.is(i+1, cFlowing, "") || m.is(i+1, cFixture, "") || m.is(i+1, cBibb, "") && strings.HasSuffix(m.text(i+1), "s")) {
		return roleIgnored, "count"
	}
	if m.pointNear(i) {
		return roleReading, "test point beside it"
	}
	// counts
	if i+1 < len(m.items) && m.is(i+1, cFlowing, "") && it.value <= 4 {
		return roleIgnored, "count"
	}
	if it.value <= 200 && m.readingCue(i) {
		return roleReading, "word of measuring"
	}
	if it.value <= 19 && !it.num.words && !it.decimal() {
		if !(it.value == 0) {
			return roleIgnored, "too small without a unit or a point"
		}
	}
	_ = prev
	if it.value > 200 {
		return roleIgnored, "too large without a unit or a point"
	}
	if it.value < 15 {
		return roleIgnored, "too small without a unit or a point"
	}
	if m.hasAsk(AskCorrect) && it.value <= 200 {
		return roleReading, "the right value"
	}
	// an unknown noun right after it counts something else
	if i+1 < len(m.items) && m.items[i+1].tags == nil && !m.items[i+1].mark && m.items[i+1].num == nil && !m.items[i+1].site && !m.p.lex.plain[m.text(i+1)] && !smallWord(m.text(i+1)) {
		return roleIgnored, "counts " + m.text(i+1)
	}
	if m.tradeNear(i) {
		return roleReading, "among terms of the trade"
	}
	return roleIgnored, "nothing says that it is a pressure"
}

func smallWord(s string) bool {
	switch s {
	case "w", "w/", "with", "con", "and", "y", "hr", "nomas", "rn", "tho", "lol", "n", "@":
		return true
	}
	return false
}

func (it *item) decimal() bool { return it.num != nil && it.num.decimals > 0 }

// pointNear tells whether a test point stands in the number's reach.
func (m *message) pointNear(i int) bool {
	it := &m.items[i]
	ok := func(k int) bool { return m.items[k].point != "" }
	l := m.left(i, 7, false, ok)
	if l >= 0 && (m.items[l].seg == it.seg || i-l <= 3) && !(m.items[l].weak && i-l > 3) {
		if !(it.value < 12 && it.num.integer && !it.num.words && it.value > 0) || i-l == 1 {
			return true
		}
	}
	r := m.right(i, 7, false, ok)
	if r >= 0 && (m.items[r].seg == it.seg || r-i <= 2) && !(m.items[r].weak && r-i > 3) {
		if it.value < 12 && it.value > 0 && it.num.integer {
			return false
		}
		// the point may belong to another number
		if r+1 < len(m.items) && m.isNum(r+1) && l < 0 && r-i > 3 {
			return false
		}
		return true
	}
	return false
}

// readingCue finds words that announce a measured value.
func (m *message) readingCue(i int) bool {
	it := &m.items[i]
	if it.value < 15 && !(it.value == 0) {
		return false
	}
	l := m.left(i, 5, false, func(k int) bool {
		switch m.text(k) {
		case "reading", "readings", "reads", "read", "rdg", "rdgs", "gauge", "gage", "pressure", "prssr", "psi", "static", "got", "getting", "showing", "shows", "show", "showed", "sys", "system", "lectura", "lecturas", "marca", "marco", "trae", "presion", "sitting", "sits", "holding", "holds", "pulling", "registers", "measured", "measures", "medi", "registra", "libras", "stat", "lecture", "tengo", "da", "dio", "sale", "rds", "needle", "live", "hits", "hit", "press", "pres", "house", "casa", "says", "lee", "quedo", "andan", "anda", "its", "thats", "esta en", "subio", "hay":
			return true
		}
		return m.is(k, cPeak, "") || m.is(k, cNow, "") || m.is(k, cStatic, "") || m.is(k, cFlowing, "") || m.is(k, cAfter, "") || m.is(k, cBefore, "")
	})
	if l >= 0 {
		return true
	}
	r := m.right(i, 3, false, func(k int) bool {
		return m.is(k, cStatic, "") || m.is(k, cFlowing, "") || m.is(k, cPeak, "") || m.is(k, cState, "") || m.is(k, cAfter, "") || m.is(k, cBefore, "") || m.is(k, cNow, "")
	})
	return r >= 0
}

// tradeNear tells whether the sentence, or a message of little else, speaks of the trade.
func (m *message) tradeNear(i int) bool {
	s := m.sents[m.items[i].sent]
	words := 0
	for k := s.from; k < s.to; k++ {
		if m.items[k].site && abs(k-i) <= 2 && m.text(i-1) != "behind" || m.items[k].point != "" {
			return true
		}
		for _, c := range []class{cState, cStatic, cFlowing, cPeak, cNow, cItem, cSym} {
			if m.is(k, c, "") {
				return true
			}
		}
		if !m.items[k].mark {
			words++
		}
	}
	return words <= 2
}

// impossible asks about a number that no gauge of a house can show.
func (m *message) impossible(i int) {
	span := m.span(i, i+1)
	if m.items[i].unit != "" && m.items[i].unit != "psi" {
		span += " " + m.items[i].unit
	}
	ask := "What is the pressure? " + span + " cannot be right."
	if m.spanish() {
		ask = "¿Cuánto marcó? " + span + " no puede ser."
	}
	m.frame.Unclear = append(m.frame.Unclear, Unclear{Span: span, MightBe: []string{"slip"}, Ask: ask})
}

// corrections voids what the writer takes back: "92, no wait 82", "not 67, 76".
func (m *message) corrections() {
	for i := range m.items {
		if m.items[i].num == nil || m.items[i].role != roleReading {
			continue
		}
		// "not 67 but 76", "no eran 67"
		if k := m.left(i, 4, false, func(k int) bool {
			switch m.text(k) {
			case "not", "no", "instead of", "wasnt", "isnt", "no eran", "no era", "no es", "not the", "no fueron":
				return true
			}
			return false
		}); k >= 0 && m.adjacentNot(k, i) {
			m.setRole(i, roleIgnored, "taken back")
			continue
		}
		if m.fatFingered(i) {
			m.setRole(i, roleIgnored, "slip told")
			continue
		}
		// the next number replaces this one
		for k := i + 1; k < len(m.items) && k <= i+9; k++ {
			if m.isNum(k) && m.items[k].role != roleIgnored && m.items[k].role != roleTaken {
				if m.items[k].role == roleReading && m.takesBack(i+1, k) {
					m.items[k].inherits = i
					m.items[k].takesOver = true
					m.setRole(i, roleIgnored, "corrected")
				}
				break
			}
		}
	}
}

// adjacentNot tells whether "no" at k denies the number at i: "no eran 67", "not 67".
func (m *message) adjacentNot(k, i int) bool {
	if m.items[k].seg != m.items[i].seg {
		return false
	}
	for j := k + 1; j < i; j++ {
		switch m.text(j) {
		case "eran", "era", "a", "the", "it", "was", "es", "fueron", "is", "psi", "fue", "at":
		default:
			if !m.is(j, cAsk, "correct") {
				return false
			}
		}
	}
	// "no, 82" has a comma between; "no 82" alone corrects what came before
	return m.text(k) != "no" || k+1 < i
}

func (m *message) fatFingered(i int) bool {
	return m.left(i, 4, false, func(k int) bool {
		switch m.text(k) {
		case "fat fingered", "typed", "i typed", "i put", "i wrote", "i entered", "entered", "wrote", "mistyped", "instead of", "puse", "le puse", "en vez de", "en lugar de", "escribi", "i said", "said", "dije", "misread", "anote", "transposed", "rather than", "keyed", "keyed in", "logged", "i logged", "had put", "had typed", "i sent", "sent", "i gave", "gave you", "i reported", "i told you", "mande", "te mande", "di", "i had":
			return true
		}
		return false
	}) >= 0 && m.has(cAsk, "correct")
}

// has tells whether any item of the message has a tag.
func (m *message) has(c class, value string) bool {
	for k := range m.items {
		if m.is(k, c, value) {
			return true
		}
	}
	return false
}

// takesBack tells whether the words between two numbers take the first back.
func (m *message) takesBack(from, to int) bool {
	for k := from; k < to; k++ {
		if t := m.text(k); (t == "looked" || t == "checked" || t == "tapped") && (m.text(k+1) == "again" || m.text(k+2) == "again") {
			return true
		}
		switch m.text(k) {
		case "wait", "no wait", "sorry", "oops", "scratch that", "i mean", "mean", "correction", "make that", "rather", "actually", "digo", "perdon", "perdona", "correccion", "whoops", "strike that", "meant", "i meant", "my bad", "espera", "mejor dicho", "make it", "scratch", "quise decir", "oop", "nope", "sry", "er", "looked again", "checked again", "second look", "on second look", "no perdon", "re read", "let me correct", "correct that":
			return true
		case "no":
			if m.text(k-1) == "," || m.text(k+1) == "," || k == from && k+1 == to || m.text(k-1) == "..." || m.text(k-1) == "-" {
				return true
			}
		case "not":
			return false
		}
	}
	return false
}

// moneyTalk tells whether the number at i is a sum of money by the words before it.
func (m *message) moneyTalk(i int) bool {
	s := m.sents[m.items[i].sent]
	// "Labor 2.5 h @ 118 = 295", "Part: PRV 3/4, 142"
	first := s.from
	for first < s.to && m.items[first].mark {
		first++
	}
	switch m.text(first) {
	case "labor", "labour", "part", "parts", "total", "material", "materials", "subtotal", "deposit", "tax", "mano", "materiales", "refacciones", "cobro":
		return true
	}
	for k := i - 1; k >= s.from && k >= i-4; k-- {
		switch m.text(k) {
		case "cost", "costs", "costo", "cobre", "cobro", "paid", "pague", "pago", "billed", "bill", "invoice", "price", "total", "deposit", "owes", "owed", "tip", "propina", "labor", "parts", "subtotal", "tax", "cash", "check", "cheque", "fee", "charge", "charged", "quoted", "estimate", "costaron", "cobrar", "payd", "debe", "cobramos", "collected", "invoiced", "pagaron", "deposito", "payment", "cotice", "billing":
			t := m.text(k)
			if (t == "charge" || t == "charged" || t == "check" || t == "debe" || t == "total" || t == "quoted" || t == "pago") && (m.is(k, cDid, "charged") || m.is(k, cPart, "") || k < i-2 || m.tankTalk(m.items[i].sent)) {
				break
			}
			for j := k + 1; j < i; j++ {
				if m.items[j].point != "" || m.items[j].mark && m.text(j) != ":" || m.is(j, cItem, "") {
					return false
				}
			}
			return true
		}
		if m.items[k].mark && m.text(k) != ":" && m.text(k) != "=" || m.items[k].num != nil {
			return false
		}
	}
	return false
}

// awayWord tells whether a length is a distance: "20 m of pipe", "30 m away".
func (m *message) awayWord(t string) bool {
	switch t {
	case "of", "away", "from", "pipe", "long", "down", "up", "to", "de", "deep", "lejos":
		return true
	}
	return false
}

// headTalk tells whether metres are a head of water here: others of the message
// are, or the sentence names a test point or a regulator.
func (m *message) headTalk(i int) bool {
	se := m.sents[m.items[i].sent]
	for k := se.from; k < se.to; k++ {
		if m.items[k].point != "" && !m.items[k].weak || m.is(k, cItem, "prv") {
			return true
		}
	}
	for k := range m.items {
		if m.items[k].unit == "m" {
			return true
		}
	}
	return false
}

package intents

import "strings"

// Lists of the lexicon that these rules know.
var (
	listGallonsPer = listOf("gallons per")
	listUsesWater  = listOf("uses water")
)

// volumeUsed tells whether gallons at item i ran out of something: "used 40 gallons in
// 10 min", "loses 30 gal a day".
func (m *message) volumeUsed(i int) bool {
	if m.inList(i+1, listGallonsPer) {
		if k := i + 2; m.isNum(k) && (m.items[k].unit == "hour" || unitDays(m.items[k].unit) > 0) {
			return true
		}
		if u, ok := m.val(i+2, cUnit); ok && (u == "hour" || unitDays(u) > 0) {
			return true
		}
	}
	if m.text(i+1) == "and" && m.isNum(i+2) && m.items[i+2].unit == "hour" {
		return true // "flushed the heater, 30 gallons and 45 minutes"
	}
	if m.is(i+1, cHint, "container") {
		return true // "60 gal drum of salt"
	}
	return m.inList(i-1, listUsesWater)
}

// heaterSize tells whether a bare number is a heater's gallons: "wh is a 40 gas", "new
// 1 is 50 elec", "water heater's a 40 not a 50". Only sizes that heaters come in.
func (m *message) heaterSize(i int) bool {
	it := &m.items[i]
	switch it.value {
	case 20, 28, 30, 36, 38, 40, 47, 48, 50, 55, 65, 66, 75, 80, 98, 100, 119, 120:
	default:
		return false
	}
	if !it.num.integer || it.unit != "" {
		return false
	}
	if m.says(i-1, "de", "of") && !(m.says(i+1, "a", "hasta") && m.isNum(i+2)) && (m.is(i-2, cItem, "heater") || m.is(i-2, cItem, "tank") && m.itemCode(i-2, "tank") == "heater") {
		return true // "boiler de 50 en la cochera", not "el tanque de 30 a 60"
	}
	if m.pointInClause(i) {
		return false
	}
	if m.inHeaterRow(i) {
		return true
	}
	if m.isMark(i-1, ",") && m.is(i-2, cItem, "heater") && m.is(i-3, cFuel, "") && m.closes(i) {
		return true // "Gas heater, 40, 2010"
	}
	prev := m.text(i - 1)
	fuel := m.is(i+1, cFuel, "") && !m.gasTalk(i+1)
	if fuel && (oneOf(prev, "a", "is", "new", "old") || m.is(i-1, cDeterminer, "") || m.is(i-1, cItem, "heater") || i == 0 ||
		m.items[i-1].mark || m.is(i-1, cDid, "")) {
		return !m.is(i-1, cItem, "prv")
	}
	if prev == "de" && m.is(i-2, cFuel, "") && m.heaterIs(i-3) {
		return true // "el boiler es de gas de 40"
	}
	if p := m.text(i - 3); prev == "de" && m.is(i-2, cFuel, "") && (strings.HasSuffix(p, "uno") || p == "otro") {
		return true // "adentro uno eléctrico de 50"
	}
	if m.is(i-1, cFuel, "") && !m.gasTalk(i-1) && !m.points(i) && (i == 1 || m.says(i-2, "a", "is", "its") || m.items[i-2].mark ||
		m.is(i-2, cItem, "heater") || m.items[i-2].role == roleYear || m.is(i-2, cDeterminer, "")) {
		return true // "it's a 2016 gas 40"
	}
	if prev == "de" && (m.is(i-2, cItem, "heater") || m.is(i-2, cFuel, "") && m.is(i-3, cItem, "heater")) && !m.is(i+1, cUnit, "") {
		return true // "bóiler eléctrico de 50"
	}
	if prev != "a" && prev != "an" || prev == "a" && m.is(i-2, cItem, "heater") && it.value >= 100 { // "boiler a 120" is its dial
		return false
	}
	if p := m.prevNum(i); m.text(i-2) == "not" && p >= 0 && m.items[p].role == roleSize {
		return true // "it's a 40 gas, not a 50"
	}
	topic, at := m.topicBefore(i)
	if it.value < 100 && m.closes(i) && (m.inList(i-2, listLinks) || m.inList(i-2, listItIs) || m.says(i-2, "which is", "thats", "that is")) {
		if topic == "" {
			topic = m.carried(it.sent)
		}
		return topic == "heater" // "heater hasn't got a date on it, it is a 40"
	}
	return topic == "heater" && at >= i-3 && m.items[at].seg == it.seg && !m.is(at, cPart, "thermostat")
}

// heaterIs tells whether the words up to item k say what a heater is: "el boiler es de", "el boiler es".
func (m *message) heaterIs(k int) bool {
	if m.says(k, "de") {
		k--
	}
	return m.is(m.pastLinks(k), cItem, "heater")
}

// tankSize tells whether a bare number is an expansion tank's gallons: "swapped the tank for a
// 4.4", "put in a 4.4 tank", "tank, 2.1, charged 60". Only sizes that such tanks come in.
func (m *message) tankSize(i int) bool {
	it := &m.items[i]
	if !tankGallons(it.value) || it.unit != "" || m.pointInClause(i) || m.has(cUnit, "bar") {
		return false
	}
	tank := func(k int) bool {
		v, ok := m.val(k, cItem)
		return ok && m.itemCode(k, v) == "expansion_tank"
	}
	sized := it.num.decimals > 0
	switch topic, at := m.topicBefore(i); {
	case m.says(i-1, "a", "an") && tank(i+1):
		return true
	case topic == "expansion_tank" && at >= i-7:
		return m.says(i-1, "a", "an") && (sized || m.closes(i) || m.text(i+1) == "and") || sized && m.items[i-1].mark && m.closes(i)
	}
	return sized && m.says(i-1, "a", "an") && m.right(i, 3, false, func(k int) bool { return m.is(k, cDid, "charged") }) >= 0
}

var bareTankGate = gateOf(opener{values: map[class][]string{cPart: {"new"}, cDid: {"charged"}, cItem: {"tank", "expansion_tank"}}})

// bareTanks gives their unit to the sizes of expansion tanks that stand for the tank itself and are told
// without it: "tank out, new 4.4 in charged to 59".
func (m *message) bareTanks() {
	if m.shut(bareTankGate) || m.has(cUnit, "bar") {
		return
	}
	for i := range m.items {
		it := &m.items[i]
		if it.num == nil || it.unit != "" || it.num.decimals == 0 || !tankGallons(it.value) || m.pointInClause(i) {
			continue
		}
		putIn := m.is(i-1, cPart, "new") || strings.HasSuffix(m.text(i-1), " a new") || m.says(i-1, "a", "an", "una", "un") && m.says(i+1, "in", "on", "up")
		tank := func(k int) bool { return m.partAt(k) == "expansion_tank" || m.is(k, cDid, "charged") }
		if putIn && (m.left(i, 8, true, tank) >= 0 || m.right(i, 6, true, tank) >= 0) {
			it.unit = "gal"
		}
	}
}

// tankGallons tells whether expansion tanks are made in a size.
func tankGallons(gal float64) bool {
	switch gal {
	case 2, 2.1, 3.2, 4.4, 4.5, 4.8, 5, 5.3, 8:
		return true
	}
	return false
}

// yearOfHeater tells whether a bare number of two digits in a row of a heater's facts is
// its year: "wh 50g elec 14 sp 130".
func (m *message) yearOfHeater(i int) bool {
	it := &m.items[i]
	if len(it.num.digits) != 2 || it.value < 3 || int(it.value) > m.ctx.Today.Year%100 || it.num.words {
		return false
	}
	if m.isNum(i+1) || m.is(i+1, cUnit, "") || i+1 < len(m.items) && m.items[i+1].point != "" {
		return false
	}
	return m.is(i-1, cFuel, "") && !m.gasTalk(i-1) && m.isNum(i-2) && m.items[i-2].role == roleSize
}

// inHeaterRow tells whether the number at i stands beside a fuel in a row of facts that
// a heater's name begins: "heater 1998, gas, 40", "htr 8 yrs old elec 40".
func (m *message) inHeaterRow(i int) bool {
	step := func(k, by int) int {
		if k += by; m.isMark(k, ",", "/", "-") {
			k += by
		}
		return k
	}
	if a, b := step(i, -1), step(i, 1); !(m.is(a, cFuel, "") && !m.gasTalk(a)) && !(m.is(b, cFuel, "") && !m.gasTalk(b)) ||
		m.items[i].unit != "" {
		return false
	}
	for k := i - 1; k >= m.sents[m.items[i].sent].from && k >= i-12; k-- {
		switch {
		case m.is(k, cItem, "heater"):
			return true
		case m.is(k, cItem, ""), m.items[k].point != "":
			return false
		case m.items[k].mark, m.items[k].num != nil &&
			m.items[k].role != roleReading, m.is(k, cFuel, ""), m.is(k, cUnit, ""), m.is(k, cCond, ""), m.text(k) == "old":
		default:
			return false
		}
	}
	return false
}

var heatPumpGate = onlyWithWords("hp")

// heatPumps makes "hp" a heat pump where it stands beside the heater's name in a list of its facts: "WH hp 50 gal",
// "heater: hp, 65 gal".
func (m *message) heatPumps() {
	if m.shut(heatPumpGate) {
		return
	}
	for i := range m.items {
		if m.text(i) != "hp" || m.isNum(i-1) && m.items[i-1].unit == "" {
			continue // "a 1/2 hp pump"
		}
		k := i - 1
		for m.isMark(k, ":", ",", "-", "=", "(") || m.isNum(k) || m.is(k, cUnit, "") {
			k--
		}
		if m.is(k, cItem, "heater") || m.is(i+1, cItem, "heater") {
			m.say(i, "hpwh")
		}
	}
}

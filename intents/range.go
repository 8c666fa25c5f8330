package intents

import "strings"

// Lists of the lexicon that these rules know.
var (
	listSetSo      = listOf("set so")
	listJoinsRange = listOf("joins range")
	listHaveUnit   = listOf("have unit")
	listMarkedIn   = listOf("marked in")
)

// shareUnits gives "95 and 97 psi" one unit, and "60/62 psi".
func (m *message) shareUnits() {
	for i := len(m.items) - 1; i > 0; i-- {
		if m.items[i].num == nil || m.items[i].unit == "" {
			continue
		}
		if k := m.butNumber(i); k > 0 {
			m.items[k].unit = m.items[i].unit
		}
		for k := i - 1; k >= 0 && k >= i-4; k-- {
			if m.items[k].num != nil {
				a, u := &m.items[k], m.items[i].unit
				// "65 - 3 yrs old": who tells a span tells the shorter time first
				spans := oneOf(u, "week", "month", "day", "year") && k >= i-2 && !m.setTo(k) && a.value <= m.items[i].value
				if m.ownPlaces(k, i) {
					break // "front 84 and 52 m head at the meter"
				}
				if m.meets(i-1, pointClasses) && a.value > 16 {
					break
				}
				if a.unit == "" && a.role == roleNone && !a.num.time && !a.num.money && !a.num.apos &&
					(spans || pressureUnit(u) && toPSI(a.value, u) <= highestPressure) {
					a.unit = u
				}
				break
			}
			if m.inList(k, listBetweenNumbers) {
				continue
			}
			if m.items[i].unit == "bar" && m.meets(k, pointClasses) {
				continue // "front 5.1, rear 5.2 bar"
			}
			break
		}
	}
}

// ownPlaces tells whether each of two numbers has its test point beside it, the first before
// it, so that the unit of the second is its own.
func (m *message) ownPlaces(a, b int) bool {
	if !m.pairBetween(b, min(b+7, m.sents[m.items[b].sent].to)) {
		return false
	}
	if m.items[a].value >= leastPSI && m.items[b].unit != "psi" && m.meets(a-1, pointClasses) {
		return true
	}
	// "thermostat at 120 and 64 psi at the tub", "beers at 5 and 77# off the drain"
	return m.items[a].value < leastPSI && m.items[b].unit == "psi" || m.left(a, 3, false, func(k int) bool { return m.meets(k, ofDeeds) }) >= 0
}

// setTo tells whether the number at i stands behind a word of setting: "set at 65 and 14 yrs old".
func (m *message) setTo(i int) bool {
	k := i - 1
	if m.says(k, "at", "to", "a", "en") {
		k--
	}
	return strings.HasPrefix(m.text(k), "set") || m.text(k) == "sat at" || m.typed(k) == "st" ||
		m.inList(k, listSetSo)
}

// butNumber finds the right number behind one that is denied: "not 5 bar at the meter
// but 5.5"; 0 for none.
func (m *message) butNumber(i int) int {
	if t := m.text(i - 1); t != "not" && t != "no" {
		return 0
	}
	k := m.right(i, 7, false, func(k int) bool { t := m.text(k); return t == "but" || t == "sino" })
	if k < 0 || !m.isNum(k+1) || m.items[k+1].unit != "" {
		return 0
	}
	return k + 1
}

// ranges joins "67-68", "67 or 68", "between 95 and 97", "could be 58 could be
// 59" into their middle.
func (m *message) ranges() {
	for i := 0; i+1 < len(m.items); i++ {
		a := &m.items[i]
		if a.num == nil || a.role != roleNone || a.num.time || a.num.phone {
			continue
		}
		if m.serialRun(i) {
			i += 4
			continue
		}
		join := m.otherEnd(i)
		if join == 0 || m.goesOver(i) {
			continue
		}
		b := &m.items[join]
		lo, hi := a.value, b.value
		switch near := hi-lo <= 0.34*hi || hi-lo <= 6; {
		case b.num.time || b.num.phone || b.num.negative || a.unit != "" && b.unit != "" && a.unit != b.unit:
		case (m.is(i-1, cBetween, "") || m.swingsOver(i, join)) && !near:
			m.setRole(i, roleIgnored, "one end of a swing") // "sube y baja entre 50 y 80"
			m.setRole(join, roleIgnored, "one end of a swing")
		case lo == hi || lo < hi && !near || lo > hi+6:
		case a.num.integer && b.num.integer && len(a.num.digits) == 4 && year(lo):
		default:
			m.middle(i, join)
		}
	}
}

// swingsOver tells whether the pressure is said to swing between the numbers at i and join: "swings 50 to 80 at
// the kitchen", "kitchen surges 48-75".
func (m *message) swingsOver(i, join int) bool {
	k := i - 1
	for m.says(k, "from", "de", "anywhere from") {
		k--
	}
	return m.is(k, cSym, "swings") && m.items[join].value > m.items[i].value
}

// middle makes the numbers at i and join one, in their middle.
func (m *message) middle(i, join int) {
	a, b := &m.items[i], &m.items[join]
	if b.unit == "" {
		b.unit = a.unit
	}
	if m.text(i+1) == "to" && b.unit == "" && b.value < 20 {
		return
	}
	b.value = (a.value + b.value) / 2
	b.ranged = true
	a.role = roleTaken
	m.note(join, "range", "middle of "+a.num.digits+" and "+b.num.digits)
}

// otherEnd finds the number that may be the other end of a range from the one at i; 0 for none.
func (m *message) otherEnd(i int) int {
	if m.wavers(i) {
		return i + 1
	}
	if k := i + 2; m.isNum(k) && m.joinsRange(i, k) {
		return k
	}
	return m.orElse(i)
}

// wavers tells whether the number at i, which a gauge is said to show, goes over into the next one, close
// above it, of the same tap: "gauge reads 61 62 at the kitchen".
func (m *message) wavers(i int) bool {
	a, k := &m.items[i], i+1
	if !m.isNum(k) || m.isNum(k+1) || m.isNum(i-1) || !m.is(i-1, cClaim, "") && m.text(i-1) != "reading" || a.unit != "" || a.value < leastPSI {
		return false
	}
	point := ""
	for j := m.sents[a.sent].from; j < m.sents[a.sent].to; j++ {
		if p := m.items[j].point; p != "" && m.items[j].role != roleTaken {
			if point != "" && p != point {
				return false // "front rear read 80 82"
			}
			point = p
		}
	}
	b := &m.items[k]
	return b.value > a.value && b.value <= a.value+3 && a.num.integer && b.num.integer && !b.num.words &&
		(m.closes(k) || pressureUnit(b.unit) || m.says(k+1, "at", "on", "in", "en", "psi") || m.meets(k+1, pointClasses))
}

// joinsRange tells whether what stands between the numbers at i and k makes them the ends of one
// range.
func (m *message) joinsRange(i, k int) bool {
	switch {
	case m.text(i+1) == "-": // not "back 76 - 101# K sink"
		return !m.clauseDash(i) && !(m.meets(i-1, pointClasses) && m.items[k].unit == "gal") && // "kitchen 64 - 75 gal heater"
			!(m.meets(i-1, pointClasses) && !m.toks[m.items[k].tok].glued && m.pairBetween(k, min(len(m.items), k+6)))
	case m.says(i+1, "or", "o", "u"):
		return true
	case m.text(i+1) == "/":
		return m.unsureSlash(i, k)
	case m.text(i+1) == "r": // "70 r 71"
		return !m.toks[m.items[i+1].tok].caps && !m.is(i-1, cInitial, "") && m.items[k].value-m.items[i].value == 1
	case m.says(i+1, "to", "a", "thru", "through"):
		return !m.says(i-1, "from", "de") && !m.fromLeft(i) && !m.is(i-1, cSym, "creep") &&
			!m.sentenceIs(m.items[i].sent, cSym, "creep")
	case m.text(i+1) == ",":
		return m.secondThought(i, k)
	case m.inList(i+1, listJoinsRange):
		return m.is(i-1, cBetween, "")
	}
	return false
}

// farApart is how far the ends of what a gauge was read to stand between may lie apart, in psi, where the
// sentence tells what moved it.
const farApart = 8

// climbsWhileTold tells whether the sentence of the number at i tells what made the gauge climb, or the
// hand that stays at the top: "60 to 84 on the lazy hand during a full heat cycle".
func (m *message) climbsWhileTold(i int) bool {
	s := &m.sents[m.items[i].sent]
	for k := s.from; k < s.to; k++ {
		if m.is(k, cHint, "needle") && m.is(k, cPeak, "") || m.is(k, cState, "firing") {
			return true
		}
	}
	return false
}

// goesOver tells whether something went from the number at i to the next one: "went 58 to 63".
func (m *message) goesOver(i int) bool {
	if m.says(i+1, "to", "-", "a") && m.turned(i) {
		return true
	}
	if m.says(i+1, "to", "a") && m.isNum(i+2) && m.items[i+2].value-m.items[i].value > 3 && m.tellsSpan(i) {
		return true // "watched it 10 minutes with everything off, 62 to 71"
	}
	if m.says(i+1, "to", "a") && m.isNum(i+2) && m.items[i+2].value-m.items[i].value > farApart && m.climbsWhileTold(i) {
		return true
	}
	moves := func(k int) bool { return m.is(k, cHint, "moves") && m.items[k].seg == m.items[i].seg }
	return !m.says(i+1, "or", "o") && m.left(i, 3, false, moves) >= 0
}

var orElseGate = onlyWith(cHint, "orelse")

// tellsSpan tells whether the sentence of the number at i says for how many minutes or hours a gauge
// was looked at.
func (m *message) tellsSpan(i int) bool {
	s := &m.sents[m.items[i].sent]
	for k := s.from; k < s.to; k++ {
		if m.items[k].num != nil && m.items[k].unit == "hour" || m.is(k, cUnit, "hour") {
			return true
		}
	}
	return false
}

// orElse finds the number that may stand for the one at i as well: "68 maybe 69", "68, could
// be 69", "68 or so maybe 69"; 0 for none.
func (m *message) orElse(i int) int {
	if m.shut(orElseGate) {
		return 0
	}
	unsure := false
	for k := i + 1; k < len(m.items) && k <= i+5; k++ {
		switch {
		case m.isNum(k):
			d := m.items[k].value - m.items[i].value
			if unsure && (m.says(i+1, "or", "o") || m.isMark(i+1, ",") || d >= -3 && d <= 3) {
				return k
			}
			return 0
		case m.is(k, cHint, "orelse"):
			unsure = true
		case !m.says(k, ",", "or", "o", "so", "be", "b", "like", "even", "ser"):
			return 0
		}
	}
	return 0
}

// unsureSlash tells whether a slash parts two numbers between which a needle stood, "rear
// 68/69", and not the numbers of two taps or of two states.
func (m *message) unsureSlash(i, k int) bool {
	a, b := &m.items[i], &m.items[k]
	if d := b.value - a.value; d < 1 || d > 2 || a.value < 20 || !a.num.integer || !b.num.integer || m.isMark(k+1, "/") || m.isMark(i-1, "/") {
		return false
	}
	points, pairs := 0, 0
	for j := m.sents[a.sent].from; j < m.sents[a.sent].to; j++ {
		switch {
		case m.items[j].point != "":
			points++
		case m.isMark(j, "/") && (m.isNum(j-1) || m.items[j-1].role == roleTaken) && m.isNum(j+1):
			pairs++
		}
	}
	return points == pairs
}

// clauseDash tells whether the dash behind the number at i parts two clauses, each number
// with a unit of its own: "washer box 66 psi - 87# on the patio".
func (m *message) clauseDash(i int) bool {
	dash := m.items[i+1].tok
	return i+3 < len(m.items) && !m.toks[dash].glued && dash > m.items[i].tok+1 && m.items[i+2].unit != "" &&
		m.items[i+3].tok > m.items[i+2].tok+1
}

// secondThought tells whether the number at j only says more nearly what the one at i
// said: "eighty-two, eighty-three at the front", with one point behind and none before.
func (m *message) secondThought(i, j int) bool {
	a, b := &m.items[i], &m.items[j]
	if d := b.value - a.value; d != 1 && d != -1 || a.unit != "" || a.value < 20 || i > 0 && !m.items[i-1].mark || !a.num.integer ||
		!b.num.integer {
		return false
	}
	points := 0
	s := &m.sents[a.sent]
	for k := s.from; k < s.to; k++ {
		if m.isNum(k) && k != i && k != j {
			return false
		}
		if m.items[k].point != "" {
			points++
			if k < i {
				return false
			}
		}
	}
	return points == 1
}

// fromLeft tells whether "from" leads to the number at i.
func (m *message) fromLeft(i int) bool {
	return m.left(i, 3, false, func(k int) bool { t := m.text(k); return t == "from" || t == "de" || t == "went from" }) >= 0
}

// serialRun takes the parts of a number like "90-88-14" out of the pressures.
func (m *message) serialRun(i int) bool {
	glued := func(k int) bool {
		return m.isMark(k, "-") && m.toks[m.items[k].tok].glued && m.isNum(k+1) && m.toks[m.items[k+1].tok].glued
	}
	if !glued(i+1) || !glued(i+3) {
		return false
	}
	for _, k := range [...]int{i, i + 2, i + 4} {
		m.setRole(k, roleIgnored, "part of a number")
	}
	return true
}

// declaredUnit finds a unit told for all readings: "Readings in bar".
func (m *message) declaredUnit() string {
	if m.shut(convertGate) {
		return ""
	}
	for i := 0; i < len(m.items); i++ {
		if i > 0 && m.items[i-1].num != nil && m.items[i-1].unit == "bar" {
			return "bar" // "4.9 bar rear, 4.8 kitchen"
		}
		if m.items[i].unit == "kpa" && m.ofScale(i) {
			return "kpa" // "gauge is 0 to 1000 kPa, rear 620"
		}
		u, ok := m.val(i, cUnit)
		if !ok || m.items[i].num != nil || m.isNum(i-1) {
			continue
		}
		switch u {
		case "bar", "kpa":
			if m.says(i-1, "in", "en", "all") || m.isMark(i-1, "(") && m.isMark(i+1, ")") || m.gaugedIn(i) {
				return u
			}
		case "feet", "ft":
			if m.gaugedIn(i) {
				return "ft"
			}
		case "metre", "m":
			if m.text(i) != "meter" && m.gaugedIn(i) { // no gauge on the meter
				return "m"
			}
		}
	}
	return ""
}

// gaugedIn tells whether the unit at item i is what the gauge reads in: "gauge only does kPa",
// "only had the kPa gauge", "numbers are kPa".
func (m *message) gaugedIn(i int) bool {
	if m.sents[m.items[i].sent].asksConvert {
		return false
	}
	if m.is(i+1, cItem, "gauge") || m.says(i+1, "on", "of", "en") && m.is(i+2, cDeterminer, "") && m.is(i+3, cItem, "gauge") {
		return true
	}
	if m.inList(i-2, listMarkedIn) && m.says(i-1, "in", "en") {
		return true
	}
	k := m.left(i, 8, true, func(k int) bool { return m.is(k, cItem, "gauge") || m.inList(k, listHaveUnit) })
	if k < 0 || !m.inUnit(i-1) {
		return false
	}
	for k = m.gaugePlace(k + 1); k < i; k++ {
		if m.items[k].num != nil || m.items[k].point != "" {
			return false
		}
	}
	return true
}

// gaugePlace returns where the words from item k on go on that tell at which tap a gauge is: "gauge on the
// rear spigot is in feet".
func (m *message) gaugePlace(k int) int {
	from := k
	if !m.says(k, "on", "at", "in", "en") {
		return from
	}
	for k++; m.is(k, cDeterminer, ""); k++ {
	}
	if !m.pointAt(k) {
		return from
	}
	for k < len(m.items) && (m.pointAt(k) || m.taken(k)) {
		k++
	}
	return k
}

// inUnit tells whether item k leads from a gauge to its unit.
func (m *message) inUnit(k int) bool {
	return m.inList(k, listLinks) || m.is(k, cItem, "gauge") || m.isMark(k, ",", "(", ":") ||
		m.says(k, "in", "en", "does", "do", "reads", "read", "shows", "only", "marca", "just", "a")
}

// declare gives numbers beside a test point the unit told for all.
func (m *message) declare() {
	u := m.declaredUnit()
	if u == "" {
		return
	}
	for i := range m.items {
		it := &m.items[i]
		if it.num != nil && it.role == roleNone && it.unit == "" && !it.num.time && !it.num.money && m.atTap(i, u) &&
			!(it.value < 1 && strings.Contains(it.num.digits, "/")) && // "4 bar at the kitchen. put in a ball valve, 3/4"
			!(it.num.integer && it.value <= 6 && m.is(i+1, cFixture, "") && strings.HasSuffix(m.text(i+1), "s")) &&
			(u == "bar" && it.value < 15 || u == "kpa" && it.value >= 100 || u == "ft" && it.value >= 20 || u == "m" && it.value >= 7) {
			it.unit = u
		}
	}
}

// atTap tells whether the number at i, of unit u, was read at a test point: right beside it, "4.2
// kitchen", or as one that counts nothing in the clause of one, "480 at the tub", or is what the gauge is
// said to show: "gauge is in ft of water, reads 165".
func (m *message) atTap(i int, u string) bool {
	if n := m.items[i].num; strings.Contains(n.digits, "/") && n.value < 1 || n.integer && m.sentenceIs(m.items[i].sent, cBetween, "") && !m.pointInClause(i) {
		return false // "a 3/8 supply line", "between 1 and 3"
	}
	if m.airInTank(m.items[i].sent) && !m.points(i) {
		return false // "put 55 of air in the tank, was 31"
	}
	if m.closes(i) && (m.ledByShowing(i) || m.showsNumber(i-1) || m.clauseStart(i) == i) {
		return true
	}
	return m.points(i) || m.pointInClause(i) && (u != "bar" || m.items[i].num.decimals > 0)
}

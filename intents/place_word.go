package intents

import (
	"strings"

	"lazyhand/assess"
)

// Lists of the lexicon that these rules know.
var (
	listOfPlace     = listOf("of place")
	listBeforePlace = listOf("before place")
	listSpareParts  = listOf("spare parts")
	listNewPart     = listOf("new part")
	listPointIs     = listOf("point is")
)

// Words that are a test point only in some company: initials, a drain, a hose, a kit.

// initial reads a single letter beside a number as a test point: "K 57#", "F 84 R 66".
// Letters that can be much else count only in capitals and in company.
func (m *message) initial(i int) string {
	v, ok := m.val(i, cInitial)
	if !ok {
		return ""
	}
	if m.initialRow(i) {
		return v
	}
	if v == "bath" && i > 0 && m.items[i-1].point != "" && !m.isNum(i-1) {
		return "" // "kitchen A 62, kitchen B 64"
	}
	if m.toks[m.items[i].tok].glued && m.isNum(i-1) {
		return ""
	}
	fits := func(k int) bool {
		return m.isNum(k) && (m.items[k].unit == "" && m.items[k].value >= 15 && m.items[k].value <= 250 &&
			(len(m.items[k].num.digits) <= 3 || !m.items[k].num.integer) || pressureUnit(m.items[k].unit))
	}
	before := i - 1
	if t := m.text(before); t == "at" || t == "@" {
		before-- // "3.6 bar @ K", "127 @ k"
	}
	next := i + 1
	if m.isMark(next, "=") {
		next++ // "K=74"
	}
	for m.isMark(next, "/") && (m.is(next+1, cInitial, "") || v == "kitchen" && m.meets(next+1, pointClasses)) {
		next += 2 // "F/R 84/66", "k/lav/tub 62, 63, 62"
	}
	if !fits(next) && !(fits(before) && (pressureUnit(m.items[before].unit) || v == "kitchen" && (before < i-1 || m.isMark(i+1, "/", ",")))) {
		return ""
	}
	if v == "kitchen" {
		return v
	}
	if !m.toks[m.items[i].tok].caps && !(len(m.text(i)) == 2 && fits(next) && pressureUnit(m.items[next].unit)) { // "us 119#"
		return ""
	}
	other := func(k int) bool { return m.is(k, cInitial, "") || m.is(k, cPoint, "") || m.is(k, cPlace, "") }
	if m.left(i, 4, true, other) >= 0 || m.right(i, 4, true, other) >= 0 {
		return v
	}
	return ""
}

// initialRow tells whether the letter at item i and another stand for two taps, each with a number of its
// own, and nothing but those, marks and taps named in full stands among them: "84 f, 82 r", "f84 r82 k80", "72 front,
// 71 back, 70 k".
func (m *message) initialRow(i int) bool {
	letter := func(k int) bool {
		return m.is(k, cInitial, "") && m.items[k].n == 1 && len(m.items[k].text) == 1 || k != i && m.meets(k, setOf(cPoint, cPlace)) && m.isNum(k-1)
	}
	number := func(k int) bool {
		it := &m.items[k]
		return it.num != nil && it.num.integer && it.unit == "" && it.within(20, 200)
	}
	if !letter(i) {
		return false
	}
	from, to := i, i+1
	for ; from > 0 && (m.items[from-1].mark || letter(from-1) || number(from-1)); from-- {
	}
	for ; to < len(m.items) && (m.items[to].mark || letter(to) || number(to)); to++ {
	}
	if to < len(m.items) && !m.items[to-1].mark && !m.items[to].site || from > 0 && !m.items[from].mark && !m.items[from-1].site {
		return false
	}
	letters, nums := 0, 0
	for k := from; k < to; k++ {
		switch {
		case letter(k):
			letters++
		case number(k):
			nums++
		}
	}
	return letters >= 2 && letters == nums
}

// upstairsIn reads the test point of a fixture whose "on" leads to a place: "59 in the
// shower on the second floor", "at the tap on 14 Elm".
func (m *message) upstairsIn(i int) string {
	it := &m.items[i]
	if p, ok := strings.CutSuffix(it.text, " flowing"); ok && oneOf(p, "kitchen", "laundry") && m.onlyFlowsThere(i) {
		return p
	}
	if !it.kinds.has(cFlowing) || !strings.HasSuffix(it.text, " on") || !m.is(i+1, cDeterminer, "") && !m.onStreet(i) || m.flowTag(i) != "" {
		return ""
	}
	id, ok := m.p.lex.id(m.toks[it.tok].text)
	if !ok {
		return ""
	}
	v, _ := m.p.value(m.p.lex.tags(m.p.lex.first[id]), cPoint)
	return v
}

// onStreet tells whether the "on" at item i leads to a house or a street, and opens no
// tap: "rear bib on 14 Elm".
func (m *message) onStreet(i int) bool {
	return strings.HasSuffix(m.text(i), "on") && i+1 < len(m.items) && (m.items[i+1].site || m.unknownNoun(i+1) && m.text(i+1) != "top")
}

// houseGets tells whether "house" at i has the number of a clause that names no tap:
// "house is getting 60", but not "house shows 83 at the washer".
func (m *message) houseGets(i int) bool {
	k := i + 1
	for k <= i+2 && (m.inList(k, listLinks) || m.is(k, cClaim, "has")) {
		k++
	}
	return k > i+1 && m.isNum(k) && m.right(k, 4, false, func(j int) bool { return m.is(j, cPoint, "") || m.is(j, cPlace, "") }) < 0
}

// backAt tells whether "back at" before a number is the rear bibb's: "front spigot at 89,
// back at 90".
func (m *message) backAt(i int) bool {
	if m.text(i) != "back at" || !m.isNum(i+1) || !m.isMark(i-1, ",", "/", ";") && !m.says(i-1, "and", "n") {
		return false
	}
	n := &m.items[i+1]
	return n.value >= leastPSI && !n.num.time && (n.unit == "" || pressureUnit(n.unit)) && m.isNum(m.prevNum(i))
}

// backThere tells whether "back there" behind a number is the rear bibb that was named before it:
// "lazy hand on the back spigot 139, it's 137 back there".
func (m *message) backThere(i int) bool {
	if !m.says(i, "back there", "back here") || !m.isNum(i-1) {
		return false
	}
	if n := &m.items[i-1]; n.value < leastPSI || n.num.time || n.num.money || n.unit != "" && !pressureUnit(n.unit) {
		return false
	}
	for k := i - 2; k >= 0; k-- {
		if m.items[k].point == string(assess.RearBibb) {
			return true
		}
	}
	return false
}

// drainOfTank reads the drain of a heater that is named by its size: "the drain of
// the 50 gal".
func (m *message) drainOfTank(i int) bool {
	if m.text(i) != "drain" {
		return false
	}
	if k := m.right(i, 7, false, func(k int) bool { return m.is(k, cItem, "heater") }); k > 0 && m.belongsTo(i, k) {
		return true // "the drain at the foot of the big heater"
	}
	if (m.text(i+1) == "says" || m.text(i+1) == "reads" || m.text(i+1) == "read" || m.text(i+1) == "shows") && m.isNum(i+2) &&
		m.has(cItem, "heater") {
		return true // "relief valve on the heater is dripping drain says one twelve"
	}
	if m.isNum(i+1) && m.has(cItem, "heater") && (i == 0 || m.items[i-1].mark) {
		return true // "heater label 150 psi WP; drain 72"
	}
	if p := m.text(i - 1); p == "the" && m.text(i-2) == "at" && (m.isNum(i+1) || m.isNum(i-3)) {
		return true // "71 at the drain"
	} else if (p == "its" || p == "the") && (m.isNum(i+1) || m.isNum(i+2) && !m.items[i+1].mark || m.isNum(i-2) || m.isNum(i-3)) {
		if m.left(i, 20, true, func(k int) bool { return m.is(k, cItem, "heater") || m.is(k, cFuel, "") }) >= 0 ||
			p == "its" && m.heaterBefore(i) {
			return true // "120 gal electric heater, 62 at its drain"
		}
	}
	k := m.right(i, 3, false, func(k int) bool { return m.isNum(k) && (m.items[k].unit == "gal" || m.items[k].unit == "litre") })
	return k >= 0 && m.right(i, 1, false, func(k int) bool { return m.text(k) == "of" || m.text(k) == "on" || m.text(k) == "off" }) >= 0
}

// hoseInList tells whether "hose" is a bibb among other test points: "tub 70, hose 71".
func (m *message) hoseInList(i int) bool {
	if m.text(i) == "hose" && m.says(i-1, "and", "y", "&", "/") && m.is(i-2, cPoint, "") && (m.isMark(i+1, ":", "=") && m.isNum(i+2) || m.isNum(i+1) && m.closes(i+1)) {
		return true // "tub and hose: 37"
	}
	if m.text(i) == "hose" && m.gaugedAtHose(i) {
		return true
	}
	if m.text(i) != "hose" && m.text(i) != "wash" || !m.isNum(i+1) || m.items[i+1].unit != "" && m.items[i+1].unit != "psi" ||
		i+2 < len(m.items) && !m.items[i+2].mark {
		return false
	}
	if m.isMark(i-1, ",", "/", "\n") && m.isNum(i-2) {
		return true
	}
	return m.isMark(i+2, ",", "/") && m.right(i+1, 3, false, func(k int) bool { return m.is(k, cPoint, "") || m.is(k, cPlace, "") }) >= 0
}

// gaugedAtHose tells whether the hose at item i is where a pressure was read: "62 at the hose", "off the
// hose: 70, 72, 71".
func (m *message) gaugedAtHose(i int) bool {
	k := i - 1
	if m.is(k, cDeterminer, "") {
		k--
	}
	if !m.inList(k, listReadAt) {
		return false
	}
	if m.isMark(i+1, ":", "=") {
		return m.isNum(i + 2)
	}
	return m.isNum(k-1) && m.items[k-1].value >= leastPSI && (m.items[k-1].unit == "" || pressureUnit(m.items[k-1].unit)) && m.closes(i)
}

// gaugedAt tells whether a number was read at the thing of item i: "82 off the drain of
// the tank", "the drain at its foot showed 81".
func (m *message) gaugedAt(i int) bool {
	fits := func(k int) bool {
		return m.isNum(k) && (m.items[k].unit == "" || pressureUnit(m.items[k].unit)) && !m.items[k].num.apos &&
			m.items[k].value >= 20 && m.items[k].value <= 200
	}
	next := m.pastMaterial(i)
	for m.is(next, cClaim, "has") || m.isMark(next, ":", "=") || m.inList(next, listLinks) {
		next++
	}
	if fits(next) {
		return true
	}
	k := i - 1
	for k > 0 && (m.is(k, cDeterminer, "") || m.is(k, cMaterial, "")) {
		k--
	}
	if m.inList(k, listReadAt) {
		return fits(k - 1)
	}
	return false
}

// pastMaterial returns the item behind the thing at item i and what it is made of in brackets:
// "heater drain (plastic) 61".
func (m *message) pastMaterial(i int) int {
	if m.isMark(i+1, "(") && m.is(i+2, cMaterial, "") && m.isMark(i+3, ")") {
		return i + 4
	}
	return i + 1
}

// shownPastMaterial tells whether the tap at item i, no mere valve, shows a pressure behind what it is
// made of: "used the heater drain, plastic one, reads 55", but not "heater drain plastic, 72 kitchen".
func (m *message) shownPastMaterial(i int) bool {
	if !m.is(i, cPoint, "") || strings.Contains(m.text(i), "valve") {
		return false
	}
	k, made, said := i+1, false, false
	for m.isMark(k, ",", "(", ")", "-") || m.is(k, cMaterial, "") || m.says(k, "one", "the") {
		made = made || m.is(k, cMaterial, "")
		k++
	}
	for m.is(k, cClaim, "has") || m.isMark(k, ":", "=") {
		k, said = k+1, true
	}
	if !made || !m.isNum(k) || m.items[k].unit != "" && !pressureUnit(m.items[k].unit) || m.items[k].num.apos {
		return false
	}
	return m.items[k].value >= leastPSI && m.items[k].value <= 200 && (said || m.closes(k)) && !m.points(k)
}

// belongsTo tells whether the thing at item a is said to be on, at or of that at b, with
// at most a few words of where and which between.
func (m *message) belongsTo(a, b int) bool {
	led := false
	for k := a + 1; k < b; k++ {
		switch {
		case m.inList(k, listOfPlace):
			led = true
		case m.inList(k, listBeforePlace):
		default:
			if !led || m.items[k].kinds != 0 || m.items[k].mark || m.items[k].num != nil {
				return false
			}
		}
	}
	return led
}

// readThere tells whether a number before it was read at the drain at item i, whose clause
// ends there: "68 at the heater drain, valve brass".
func (m *message) readThere(i int) bool {
	return m.closes(i) && m.left(i, 3, true, func(k int) bool { return m.inList(k, listReadAt) && m.isNum(k-1) }) >= 0
}

// sparePart tells whether a fixture's name is a part here: "fixed it w a new washer".
func (m *message) sparePart(i int) bool {
	if m.text(i) == "kit" && !m.isNum(i+1) {
		if m.text(i-1) == "the" && (m.text(i-2) == "at" || m.inList(i-2, listReadAt) && m.isNum(i-3)) {
			return false // "62 on the kit"
		}
		if m.inList(i-1, listSpareParts) {
			return !m.isNum(i - 2) // "PRV rebuilt w/ kit"
		}
		if m.inList(i+1, listLinks) && m.isNum(i+2) && (m.items[i+2].num.money || m.items[i+2].unit == "money") {
			return true // "rebuilt it, kit was 38 bucks"
		}
	}
	if m.is(i, cItem, "drain_valve") && !m.isNum(m.pastMaterial(i)) && !m.isNum(i-1) && !m.readThere(i) && !m.shownPastMaterial(i) &&
		m.right(i, 3, true, func(k int) bool { return m.is(k, cMaterial, "") }) >= 0 {
		return true // "drain valve is plastic"
	}
	if m.text(i) != "washer" {
		return false
	}
	if m.inList(i-1, listNewPart) {
		return !m.isNum(i + 1)
	}
	return false
}

// possessive reads a point and the "is" that dictation writes as a plural: "the tubs at
// fifty five", "the kitchens reading sixty".
func (m *message) possessive(i int) string {
	it, l := &m.items[i], m.p.lex
	n := len(it.text) - 1
	if it.n != 1 || n < 2 || it.text[n] != 's' || it.kinds.has(cPoint) || !m.isNum(i+2) {
		return ""
	}
	switch {
	case m.inList(i+1, listPointIs):
	default:
		return ""
	}
	id, ok := l.id(it.text[:n])
	if !ok {
		return ""
	}
	v, _ := m.p.value(l.tags(l.first[id]), cPoint)
	return v
}

// shortBoth tells whether "bth" is "both" and no bath: "55 and 57 bth w nothing running".
func (m *message) shortBoth(i int) bool {
	if m.toks[m.items[i].tok].text != "bth" {
		return false
	}
	if k := m.left(i, 5, false, func(k int) bool { return m.text(k) == "n" || m.text(k) == "and" || m.text(k) == "&" }); k > 0 &&
		m.isNum(i+1) {
		side := func(k int) bool { return m.is(k, cBibb, "") || m.is(k, cPlace, "") }
		return side(i-1) && side(k-1) // "rr bb n sd bb bth 88"
	}
	switch m.text(i + 1) {
	case "w", "with", "w/", "at", "static":
		return m.isNum(i - 1)
	}
	return false
}

var thatOneGate = onlyWith(cHint, "thatone")

// pointedBack gives "that bib", "esa llave" the test point that was named before it:
// "fixed the leak at the back bib, now 72 at that bib".
func (m *message) pointedBack() {
	if m.shut(thatOneGate) {
		return
	}
	for i := 1; i < len(m.items); i++ {
		it := &m.items[i]
		if it.mark || it.num != nil || !m.is(i-1, cHint, "thatone") || it.point != "bibb" && !(it.point == "" && m.is(i, cHint, "tapword")) {
			continue
		}
		for k := i - 2; k >= 0; k-- {
			if p := m.items[k].point; p != "" && p != "bibb" {
				it.point, it.weak = p, false
				break
			}
		}
	}
}

// valved tells whether the main or a valve in the street at item i was only closed or
// opened, so that no number is one of it: "before I closed the main the front was at 126".
func (m *message) valved(i int) bool {
	k := i + 1
	if m.text(i) == "main" && m.is(k, cItem, "") {
		return true // "main prv 62"
	}
	for m.inList(k, listLinks) || m.is(k, cHint, "barely") {
		k++
	}
	if k > i+1 && (m.is(k, cHint, "changed") || m.is(k, cHint, "valves")) {
		return true // "main was half shut"
	}
	k = i - 1
	for m.is(k, cDeterminer, "") {
		k--
	}
	return m.is(k, cHint, "valves") && m.text(k) != "off" && m.text(k) != "open" && m.items[k].sent == m.items[i].sent
}

// heaterBefore tells whether the sentences before that of item i speak of a heater: "its
// drain".
func (m *message) heaterBefore(i int) bool {
	for k := m.sents[m.items[i].sent].from - 1; k >= 0; k-- {
		if m.is(k, cItem, "heater") || m.is(k, cFuel, "") {
			return true
		}
	}
	return false
}

package intents

import "slices"

// Lists of the lexicon that these rules know.
var (
	listOdd       = listOf("odd")
	listGallonsOf = listOf("gallons of")
)

// psiPer holds the factors to psi. NIST SP 811 (2008), appendix B.8: psi 6.894757
// kPa, bar 100 kPa, conventional foot of water 2.989067 kPa, conventional metre of water 9.80665 kPa,
// kgf/cm2 98.0665 kPa.
var psiPer = map[string]float64{
	"psi": 1, "bar": 100 / 6.894757, "kpa": 1 / 6.894757, "ft": 2.989067 / 6.894757, "m": 9.80665 / 6.894757, "mpa": 1000 / 6.894757,
	"kgcm": 98.0665 / 6.894757,
}

// toPSI converts a number with its unit to psi, rounded to 0.1.
func toPSI(v float64, unit string) float64 {
	if unit != "psi" && pressureUnit(unit) {
		v *= psiPer[unit]
	}
	return round1(v)
}

// round1 rounds to a tenth.
func round1(v float64) float64 {
	if v < 0 {
		return float64(int64(v*10-0.5)) / 10
	}
	return float64(int64(v*10+0.5+1e-9)) / 10
}

// pressureUnit tells whether a number's unit is one of pressure.
func pressureUnit(u string) bool {
	switch u {
	case "psi", "bar", "kpa", "ft", "m", "mpa", "kgcm":
		return true
	}
	return false
}

// units gives each number the unit that follows it.
func (m *message) units() {
	out := m.items[:0]
	for i := 0; i < len(m.items); i++ {
		if m.items[i].text == "s" && m.shortPair(i) {
			m.say(i, "static")
			m.say(i+3, "flowing")
		}
		it := &m.items[i]
		if it.num != nil {
			i += m.unitBehind(it, i+1, out)
			if pressureUnit(it.unit) && it.num.integer && m.text(i+1) == "y" && m.says(i+2, "medio", "media") {
				it.value += 0.5 // "tres bares y medio"
				i += 2
			}
			if n := len(out) - 1; it.unit == "other" && it.value <= 6 && n >= 0 && m.says(n, "running", "corriendo") {
				m.say(n, "flowing") // "running two taps 58"
			}
		}
		if out = out[:len(out)+1]; it != &out[len(out)-1] {
			out[len(out)-1] = *it
		}
	}
	m.items = out
	m.headUnits()
	m.laterDegrees()
}

// unitBehind gives a number the unit that begins at item next, and returns how many items
// that takes; out are the items before the number.
func (m *message) unitBehind(it *item, next int, out []item) (taken int) {
	if next >= len(m.items) {
		return 0
	}
	n := &m.items[next]
	glued := m.toks[n.tok].glued
	if n.text == "day" && it.value != 1 && m.text(next+1) == "after" {
		return 0 // "set the prv to 60 day after tomorrow"
	}
	switch {
	case glued && it.num.integer && (it.num.time || it.within(1, 12)) && oneOf(n.text, "a", "p"):
		it.unit = "hour" // "7a 68, 5p 74"
		return 1
	case n.mark && n.text == "#" && glued && !(next+1 < len(m.items) && m.items[next+1].num != nil && m.toks[m.items[next+1].tok].glued):
		it.unit = "psi"
		return 1
	case n.mark && n.text == "\"":
		// 3/4" pipe; a closing quotation mark when one stands before
		if glued && (it.value < 3 || !it.num.integer) {
			it.unit = "inch"
			return 1
		}
		return 0
	case n.mark && n.text == "'" && glued:
		it.unit = "feet"
		m.open.add(convertGate)
		k := m.headAfter(next + 1)
		if k > 0 {
			it.unit = "ft" // 140' of head
		}
		return 1 + k
	case n.mark && n.text == "-" && glued && next+1 < len(m.items) && m.toks[m.items[next+1].tok].glued:
		// "5-gallon", "50-gal"
		if u, ok := m.p.value(m.items[next+1].tags, cUnit); ok && m.items[next+1].num == nil {
			it.unit = u
			return 2
		}
		return 0
	}
	if m.inList(next, listOdd) && next+1 < len(m.items) {
		// "three more days"
		if u, ok := m.p.value(m.items[next+1].tags, cUnit); ok && unitDays(u) > 0 {
			it.unit = u
			return 2
		}
	}
	u, ok := m.p.value(n.tags, cUnit)
	if !ok && m.gallonsToSize(next) {
		u, ok = "gal", true
	}
	if !ok || !m.unitFits(out, it, n, next, glued) {
		return 0
	}
	it.unit = u
	switch {
	case m.p.has(n.tags, cItem, "heater") || m.p.has(n.tags, cItem, "prv"):
		return 0 // "two heaters, one set 120": they are spoken of
	case u != "deg" || next+1 >= len(m.items) || m.items[next+1].n != 1:
	case m.text(next+1) == "f":
		it.unit = "degf"
		return 2
	case m.text(next+1) == "c":
		it.unit = "degc"
		return 2
	}
	return 1 // "12 yrs old": words beyond the unit stay
}

// gallonsToSize tells whether item i counts the gallons of water that a tank is to be sized for: "tank size
// for 75 gallons of water".
func (m *message) gallonsToSize(i int) bool {
	if m.cues&(cueSizing|cueWh) == 0 || !m.inList(i, listGallonsOf) || !m.is(i+1, cWater, "") {
		return false
	}
	return slices.ContainsFunc(m.items, func(it item) bool {
		return m.p.has(it.tags, cAsk, "tank_size") || m.p.has(it.tags, cItem, "tank") || m.p.has(it.tags, cItem, "expansion_tank") || it.text == "expansion"
	})
}

// headUnits takes metres and feet for heads of water where one of them is, or is what the gauge
// reads: "62 m of head, house side 61 m", "gauge reads feet of water: 115 ft at the rear".
func (m *message) headUnits() {
	if m.shut(convertGate) {
		return
	}
	for i := range m.items {
		u := m.items[i].unit
		if m.items[i].num == nil && m.is(i, cUnit, "ft") {
			u = "ft"
		}
		if u == "m" || u == "ft" {
			for k := range m.items {
				if v := m.items[k].unit; v == "metre" && u == "m" || v == "feet" && u == "ft" {
					m.items[k].unit = u
				}
			}
		}
	}
}

var degreesGate = onlyWith(cUnit, "degc", "degf")

// laterDegrees gives a number without a unit the degrees that are named behind it: "set to 60 on the
// display, that's celsius".
func (m *message) laterDegrees() {
	if m.shut(degreesGate) {
		return
	}
	for i := range m.items {
		u, ok := m.val(i, cUnit)
		if !ok || m.items[i].num != nil || len(m.items[i].text) == 1 || u != "degc" && u != "degf" {
			continue
		}
		k := i - 1
		for k >= 0 && k > i-9 && m.items[k].num == nil {
			k--
		}
		if it := &m.items[max(k, 0)]; it.num != nil && (u == "degc" && it.within(30, 95) || u == "degf" && it.within(85, 185)) {
			it.unit = u
		}
	}
}

// rearBehind tells whether the next number from item i, with nothing but a mark before it, is that of the
// rear, so that the letter before is the front's.
func (m *message) rearBehind(i int) bool {
	if i < len(m.items) && m.items[i].mark {
		i++
	}
	return i+1 < len(m.items) && m.items[i].num != nil && m.text(i+1) == "r"
}

// headAfter measures "of head", "head", "of water" at item i.
func (m *message) headAfter(i int) int {
	of := 0
	if m.text(i) == "of" {
		of = 1
	}
	switch m.text(i + of) {
	case "head", "hd", "wc":
		return of + 1
	case "water":
		return of * 2
	}
	return 0
}

// unitFits tells whether a word after a number is its unit here; short words
// are units only where nothing else makes sense. Before are the items before the number.
func (m *message) unitFits(before []item, it, n *item, at int, glued bool) bool {
	switch n.text {
	case "f", "c":
		if n.text == "f" && m.rearBehind(at+1) {
			return false // "84F, 82R"
		}
		return glued || m.toks[n.tok].caps || m.degrees(before, it, at)
	case "m":
		return true
	case "zone":
		return at+1 == len(m.items) || m.items[at+1].num == nil // but "manifold 39 zone 2 running"
	case "d":
		return glued || at+1 == len(m.items) || m.items[at+1].mark || m.says(at+1, "pls", "please", "porfa") // "snooze 10 d"
	case "g", "l":
		return glued || it.value < 130 || n.text == "l" && it.value < 600
	case "in":
		return glued
	case "min":
		p := ""
		if k := len(before) - 1; k >= 0 {
			p = before[k].text
		}
		if (p == "max" || p == "hi" || p == "high" || p == "maximum" || p == "peak") && m.isNum(at+1) {
			return false // "max 131 min 66"
		}
		return true
	case "x", "mins", "second", "seconds", "sec", "ng":
		return n.text != "second" || glued
	case "bath":
		return it.value < 8 // a house of "3 bath"; "80 bath" is a pressure
	case "mas", "more", "pair", "others":
		return n.text != "mas" || glued
	case "hr":
		return glued || it.value <= 12 || it.value == 24 || it.value == 48
	case "h":
		return it.value <= 96
	case "am", "pm":
		return it.value <= 12
	case "meter":
		return m.headAfter(at+1) > 0 || m.text(at+1) == "pipe" // "118 meter" is a pressure at the meter
	case "noon":
		return it.value == 12
	case "kg", "kilos", "kgs", "kilo":
		return it.value < 15
	case "valves", "taps", "bibs", "bibbs", "faucets", "baths", "fixtures", "llaves", "gauges", "heaters", "tanks", "regulators":
		return it.value < 15
	}
	return true
}

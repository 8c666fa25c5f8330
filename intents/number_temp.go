package intents

import "strings"

// Lists of the lexicon that these rules know.
var (
	listDial       = listOf("dial")
	listWarmBehind = listOf("warm behind")
	listWarmBefore = listOf("warm before")
	listComesTo    = listOf("comes to")
)

// tempRole tells a thermostat's setting from the temperature of water.
func (m *message) tempRole(i int) (role, string) {
	it := &m.items[i]
	f := it.fahrenheit()
	if m.is(i-1, cState, "firing") && strings.HasSuffix(m.text(i-1), " on") && f >= 100 && f <= 180 {
		m.unsay(i - 1) // "heater is on 130 deg"
		it.value = f
		return roleTemp, "heater on"
	}
	if m.reliefSet(i) || m.sentenceIs(it.sent, cRelief, "") && !m.heaterIn(it.sent) {
		return roleIgnored, "what a relief valve opens at"
	}
	asking := m.sents[it.sent].asking
	heater, water := m.warmAround(i)
	switch {
	case !asking && m.atTapBehind(i) && (!m.heaterIn(it.sent) || !m.says(i+1, "at", "en")):
		return roleIgnored, "temperature of water" // "water temp 118F at the lav"
	case water >= 0 && (heater < 0 || water < heater) && !asking:
		return roleIgnored, "temperature of water or air"
	case heater < 0 && !asking && m.carried(it.sent) != "heater" && !(m.is(i+1, cHint, "setting") && m.heaterIn(it.sent)):
		return roleIgnored, "temperature of something"
	case heater < 0 && !asking && m.ownSubject(it.sent):
		return roleIgnored, "temperature of something" // "Lake is 48 degrees"
	case asking:
		return roleAsked, "temperature asked about"
	}
	it.value = f
	return roleTemp, "degrees"
}

// atTapBehind tells whether the degrees at item i are said to be measured at a tap or to come to it: "118
// F at the lav", "only 99 degrees gets to the tub".
func (m *message) atTapBehind(i int) bool {
	k := i + 1
	for m.inList(k, listComesTo) {
		k++
	}
	led := k > i+1
	if m.is(k, cDeterminer, "") {
		k++
	}
	return led && k < len(m.items) && m.items[k].point != ""
}

// ownSubject tells whether a sentence begins with a noun of its own that is no equipment.
func (m *message) ownSubject(s int) bool {
	k := m.sents[s].from
	it := &m.items[k]
	return it.tags == nil && !it.mark && it.num == nil && !it.site && !it.lists.has(listSmallWords) && !m.inList(k, listRefersBack) && m.inList(k+1, listLinks)
}

// fahrenheit returns degrees in Fahrenheit, rounded; plain degrees up to 90 are Celsius.
func (it *item) fahrenheit() float64 {
	f := it.value
	if it.unit == "degc" || it.unit == "deg" && f <= 90 {
		f = f*9/5 + 32
	}
	return float64(int(f + 0.5))
}

// warmAround tells how far from item i a heater stands, and how far water or weather:
// what stands nearest is what is warm. -1 is nowhere.
func (m *message) warmAround(i int) (heater, water int) {
	heater, water = -1, -1
	se := &m.sents[m.items[i].sent]
	for k := i - 1; k >= se.from; k-- {
		if heater < 0 && m.ofHeater(k) {
			heater = i - k
		}
		if water < 0 && (m.inList(k, listWarmBefore) || m.items[k].point != "" || m.items[k].kinds.meets(setOf(cFixture, cFlowing))) { // "tub runs 118 degrees"
			water = i - k
		}
	}
	for k := i + 1; k < se.to && k <= i+4; k++ {
		if water < 0 && m.inList(k, listWarmBehind) && !m.leadsToHeater(k) {
			water = k - i
		}
		if m.inList(k, listDial) {
			heater = 0
		}
		if m.items[k].mark || m.items[k].num != nil {
			break
		}
	}
	for k := se.from; heater < 0 && k < se.header; k++ {
		if m.is(k, cItem, "heater") || m.is(k, cPart, "thermostat") {
			heater = 0
		}
	}
	return heater, water
}

// ofHeater tells whether item k speaks of a heater: its name, fuel, size or thermostat.
func (m *message) ofHeater(k int) bool {
	return m.is(k, cItem, "heater") || m.is(k, cPart, "thermostat") || m.is(k, cFuel, "") || m.is(k, cDid, "set") ||
		m.items[k].role == roleSize || m.isNum(k) && m.items[k].unit == "gal"
}

// leadsToHeater tells whether "in" or "at" at k leads to no place and no tap: "120 at arrival".
func (m *message) leadsToHeater(k int) bool {
	switch m.text(k) {
	case "in":
		return m.text(k+1) != "the"
	case "at":
		return m.noTapAt(k+1) && m.noTapAt(k+2)
	}
	return false
}

// noTapAt tells whether item k names no tap: the water is warm at one, a heater is not.
func (m *message) noTapAt(k int) bool {
	return !m.pointAt(min(k, len(m.items)-1)) && !m.is(k, cHint, "tapword")
}

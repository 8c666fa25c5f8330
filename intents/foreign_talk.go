package intents

import "strings"

// Lists of the lexicon that these rules know.
var (
	listScrews    = listOf("screws")
	listSaysAgain = listOf("says again")
	listTyres     = listOf("tyres")
	listVehicles  = listOf("vehicles")
	listWheelSide = listOf("wheel side")
	listSeats     = listOf("seats")
	listWheelEnd  = listOf("wheel end")
	listCorners   = listOf("wheel corners")
)

// Numbers of everyday talk beside a report: weights, lengths, waits, prices, rooms and what is
// told twice.

// roomWarmth reads what the thermostat of a house shows: "65 in the house on the thermostat".
func (m *message) roomWarmth(i int) bool {
	if !m.items[i].within(50, 90) || m.pointInClause(i) {
		return false
	}
	k := m.right(i, 6, false, m.plainThermostat)
	if k < 0 || m.items[k].seg != m.items[i].seg || m.has(cItem, "prv") || m.heaterIn(m.items[i].sent) {
		return false
	}
	return m.right(i, k-i, true, func(j int) bool { return m.text(j) == "on" }) >= 0
}

// acrossFilter reads what stood before and behind a softener or a filter: "softener 58 in 41 out".
func (m *message) acrossFilter(i int) bool {
	beside := m.says(i+1, "in", "out") && (m.stopAt(i+2) || m.isNum(i+2))
	if !beside || m.has(cItem, "prv") || !m.has(cItem, "softener") && !m.has(cHint, "filter") {
		return false
	}
	m.askPlace(i)
	return true
}

// byScrew reads what a mark of a regulator's screw says: "between 60 and 65 on the set screw mark".
func (m *message) byScrew(i int) bool {
	k := i + 2
	for m.is(k, cDeterminer, "") {
		k++
	}
	screw := m.inList(k, listScrews)
	return screw && m.text(i+1) == "on" && !m.has(cItem, "prv") && !m.pointInClause(i)
}

// ofHeating reads the pressures of water that heats rooms: "boiler gauge 18", "hydronic side at 15".
func (m *message) ofHeating(i int) bool {
	if m.text(i-1) == "boiler" && m.items[i].unit == "psi" && m.items[i].value <= 30 {
		return true
	}
	k := m.hintBefore(i, 7, true, "heating")
	return k >= 0 && m.items[i].value <= 30 && !m.pointBetween(k, i)
}

// saidInUnits tells whether the number at i says the one before it again in another unit: "72 psi
// (5 bar)", "420 kPa, that's 61".
func (m *message) saidInUnits(i int) bool {
	if !m.gave(roleReading) {
		return false
	}
	p := m.prevNum(i)
	if p < 0 || p < i-4 || !m.numIs(p, roleReading) || m.pointAt(i+1) {
		return false
	}
	a, b := &m.items[p], &m.items[i]
	may := func(u string) bool { return u == "" || pressureUnit(u) }
	if a.unit == b.unit || !may(a.unit) || !may(b.unit) {
		return false
	}
	for k := p + 1; k < i; k++ {
		if !m.items[k].mark && !m.inList(k, listSaysAgain) {
			return false
		}
	}
	first, again := toPSI(a.value, a.unit), toPSI(b.value, b.unit)
	return first-again < 0.03*first && again-first < 0.03*first
}

// weighsGate is that of what is said to weigh so much.
var weighsGate = onlyWith(cHint, "weighs")

// weighed reads a weight: "the tank weighs 40 lbs", "says the heater weighs 140", "a 60 lb bag".
func (m *message) weighed(i int) bool {
	if it := &m.items[i]; it.unit == "psi" && it.tok+1 < len(m.toks) {
		t := m.toks[it.tok+1].text
		of := m.text(i+1) == "of" && !m.is(i+2, cHint, "ofpressure") && !m.is(i+2, cPart, "air") && m.noTap(i+2) // "30 lbs of salt"
		if oneOf(t, "lb", "pound") && m.noTap(i+1) || oneOf(t, "lb", "lbs", "pound", "pounds") && of {
			return true
		}
	}
	return !m.shut(weighsGate) && (m.is(i-1, cHint, "weighs") || m.items[i].unit == "psi" && m.hintBefore(i, 3, false, "weighs") >= 0)
}

// minutesIn reads "rear in 20": nobody is told a pressure so.
func (m *message) minutesIn(i int) bool {
	back := m.inList(i-1, listBackIn) || m.text(i-1) == "in" && m.is(i-2, cHint, "seeyou")
	if back && m.closes(i) && m.items[i].value <= 60 {
		return true // "be back in 45"
	}
	if m.text(i-1) == "en" && strings.HasPrefix(m.text(i+1), "llego") && (i < 2 || m.items[i-2].mark) {
		return true // "en 15 llego a la otra"
	}
	return m.text(i-1) == "in" && i > 1 && m.items[i].value <= 60 && m.items[i].num.integer && m.items[i-2].point != "" &&
		(i+1 == len(m.items) || m.items[i+1].mark)
}

// leastWire and mostWire bound how thick wire and the steel of a sink are, in gauge.
const (
	leastWire = 8
	mostWire  = 24
)

// aThing tells whether the number at i is part of a thing's name: "on a 48 cycle", "a 36
// cabinet". What a gauge shows is "a 66" alone, or at a tap.
func (m *message) aThing(i int) bool {
	if v := m.items[i].value; (v == 90 || v == 45) && m.is(i+1, cFitting, "part") && !m.pointInClause(i) {
		return true // "90 elbow"
	}
	wire := m.is(i+1, cItem, "gauge") && (m.noTap(i+2) || m.items[i].within(leastWire, mostWire) &&
		m.items[i].num.integer && m.text(i+1) == "gauge") // "14 gauge wire"
	taken := m.is(i+1, cHint, "told") || beginsWith(m.text(i+1), "i ", "we ") // "the 134 I just got at the kitchen"
	moved := m.hasAsk(AskCorrect) && m.inList(i+1, listMovesTap)              // "wrong tap on my last, the 72 belongs to the laundry"
	return wire || m.says(i-1, "a", "an", "the") && m.unknownNoun(i+1) && !taken && !moved
}

// wheelGate is that of rules about a wheel told by its corner: with a seat beside it, or with what the crew drives.
var wheelGate = gateOf(opener{values: map[class][]string{cAside: {"ours"}}, lists: []list{listSeats, listVehicles}})

// ofTyres tells whether the number at i is the pressure of a tyre or of a bottle of gas.
func (m *message) ofTyres(i int) bool {
	if m.shut(wheelGate) && !m.holdsKey(keyTyre) {
		return false
	}
	if m.ofWheel(i) || m.secondTyre(i) {
		return true
	}
	if !m.holdsKey(keyTyre) {
		return false
	}
	topic, _ := m.topicBefore(i)
	return topic != "expansion_tank" && m.right(i, 5, false, func(k int) bool {
		return m.items[k].seg == m.items[i].seg &&
			m.inList(k, listTyres)
	}) >= 0 || m.left(i, 6, false, func(k int) bool {
		if m.text(k) == "truck" && m.right(i, 5, false, func(k int) bool { return m.items[k].point != "" && !m.items[k].weak }) >= 0 {
			return false // "truck 3 just phoned in 98 at the rear bib"
		}
		return m.said(k, keyTyre) && !m.pointBetween(k, i) && !(m.text(k) == "tire" && m.is(k+1, cItem, "gauge"))
	}) >= 0 && !m.points(i)
}

// ofWheel tells whether the number at i is told of a wheel by its corner, as no tap is: "left front on van 2
// was down to 18 psi", "passenger rear at 22".
func (m *message) ofWheel(i int) bool {
	if !m.holdsKey(keyPlace) {
		return false
	}
	k := m.left(i, 9, true, m.wheelAt)
	if k < 0 {
		k = m.right(i, 4, false, m.wheelAt)
	}
	if k < 0 {
		return false
	}
	for j := min(k, i) + 1; j < max(k, i); j++ {
		if m.items[j].point != "" && !m.items[j].weak || m.items[j].num != nil && !m.vehicleAt(j-1) {
			return false // "left front spigot at 66"
		}
	}
	for j := range m.verbs {
		if v := &m.verbs[j]; v.what == "charged" && v.object == "" && m.items[v.at].sent == m.items[i].sent {
			v.done, v.negated = false, true // "aired up the right rear on truck 2"
		}
	}
	return true
}

// wheelAt tells whether item k is the end of a car that a wheel is at, told with its side and with whom it
// sits under or what it drives: "rear passenger side", "truck 3: left rear", "front right on the trailer".
func (m *message) wheelAt(k int) bool {
	corner := m.inList(k, listCorners)
	if !corner && !m.inList(k, listWheelEnd) || m.is(k+1, cHint, "tapword") {
		return false
	}
	from, to := k, k
	switch {
	case corner:
	case m.inList(k-1, listSeats) || m.inList(k+1, listSeats) || m.text(k-1) == "side" && m.inList(k-2, listSeats):
		return true
	case m.inList(k-1, listWheelSide):
		from--
	case m.inList(k+1, listWheelSide):
		to++
	default:
		return false
	}
	if m.is(to+1, cHint, "tapword") {
		return false
	}
	on := to + 1
	for m.says(on, "on", "of", "in", "tire") || m.is(on, cDeterminer, "") || m.is(on, cHint, "possessive") {
		on++
	}
	if on > to+1 && m.vehicleAt(on) || m.vehicleAt(to+1) {
		return true
	}
	for from--; m.isNum(from) || m.isMark(from, ":", ",", "-"); from-- {
	}
	return m.vehicleAt(from)
}

// wheelNext tells whether a corner is named right before the number at i, as of wheels told in a row: "left
// front 20, right rear 32".
func (m *message) wheelNext(i int) bool {
	return m.inList(i-1, listCorners) || m.inList(i-1, listWheelEnd) && m.inList(i-2, listWheelSide)
}

// vehicleAt tells whether item k is what the crew drives.
func (m *message) vehicleAt(k int) bool { return m.inList(k, listVehicles) || m.is(k, cAside, "ours") }

// secondTyre tells whether a number follows another one of tyres: "truck 2 front left is
// at 22 psi, rear right 30".
func (m *message) secondTyre(i int) bool {
	p := m.prevNum(i)
	return p >= 0 && m.items[p].sent == m.items[i].sent && m.items[p].why == "tyres" && (m.text(i-1) == "left" || m.text(i-1) == "right" || m.towards(i-1) || m.wheelNext(i))
}

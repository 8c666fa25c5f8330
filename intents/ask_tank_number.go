package intents

import "strings"

// psiOfNext tells whether the unit behind number i is that of the next one: "hot 125 psi 60".
func (m *message) psiOfNext(i int) bool {
	if !m.isNum(i+1) || m.items[i+1].unit != "" || m.items[i].unit != "psi" {
		return false
	}
	label, _ := m.labelOf(i, -1)
	return label&(cueDial|cueInlet|cueRise) != 0 || m.items[i].value >= 100 && m.nearWord(i, 2, "hot", "set", "out", "to")
}

// heaterByNumber tells whether number i names a heater by its gallons alone: "on a 50".
func (m *message) heaterByNumber(i int) bool {
	v := m.items[i].value
	if v < leastHeater || v > 120 {
		return false
	}
	if t := m.text(i - 1); strings.HasSuffix(t, " for a") || strings.HasSuffix(t, " on a") {
		return true // "what tank for a"
	}
	if m.says(i-1, "holds", "is", "hold") && (m.is(i-2, cItem, "heater") || m.says(i-2, "that", "which") && m.is(i-3, cItem, "heater")) {
		return true // "the heater holds 80"
	}
	return m.says(i-1, "a", "an", "the") && (m.says(i-2, "on", "for", "with", "got", "have", "its", "is") || m.isAny(i-2, cItem, "heater"))
}

// comparesTank tells whether a sentence asks if a tank of so many gallons will do on a heater of so many:
// "does a 2 gal cover a 40 gal".
func (m *message) comparesTank(s int) bool {
	if m.shut(volumeGate) || !m.cuesIn(s).has(cueEnough) {
		return false
	}
	tank, heater, asks := false, false, m.sents[s].question
	for i := m.sents[s].from; i < m.sents[s].to; i++ {
		switch it := &m.items[i]; {
		case it.num == nil:
			asks = asks || m.inList(i, listSizeDoes) || m.says(i, "big enough", "enough")
		case it.unit == "gal" && it.value >= leastHeater:
			heater = true
		case it.value < leastHeater && (it.unit == "gal" || it.unit == "" && m.says(i-1, "a", "the")):
			tank = tank || !heater
		}
	}
	return tank && heater && asks
}

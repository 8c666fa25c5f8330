package intents

import "strings"

// Lists of the lexicon that these rules know.
var (
	listFeminine = listOf("feminine")
)

// What the words before an item are about.

// topics are the classes of words that what follows is about.
var topics = setOf(cItem, cPart, cState, cFuel)

// topicBefore returns the equipment that the words before item i are about: the
// nearest item named before it in the sentence, else the last one of the
// sentences before.
func (m *message) topicBefore(i int) (string, int) {
	s := &m.sents[m.items[i].sent]
	for k := i - 1; k >= s.from; k-- {
		if !m.items[k].kinds.meets(topics) && m.items[k].text != "hot water" {
			continue
		}
		if v, ok := m.val(k, cItem); ok && !m.taken(k) {
			return m.itemCode(k, v), k
		}
		if m.is(k, cPart, "air") {
			return "expansion_tank", k
		}
		if m.heaterState(k) || m.text(k) == "hot water" && (m.is(k+1, cDid, "set") || m.inList(k+1, listLinks) && m.is(k+2, cDid, "set")) {
			return "heater", k
		}
		if m.is(k, cFuel, "") && !m.gasTalk(k) {
			return "heater", k
		}
		if m.is(k, cPart, "thermostat") && m.text(k) != "dial" &&
			!(strings.HasPrefix(m.text(k), "temp") && (m.says(k-1, "water", "hot", "hot water") || m.pointInClause(i))) {
			return "heater", k
		}
	}
	return "", -1
}

// heaterState tells whether item k names the heater with its state: "old htr out".
func (m *message) heaterState(k int) bool {
	return m.is(k, cState, "") && (m.is(k-1, cPart, "old") || m.is(k+1, cDid, "replaced") ||
		m.is(k-2, cHint, "takesout") && strings.HasPrefix(m.text(k), "dead"))
}

// carried returns the equipment last named before sentence s.
func (m *message) carried(s int) string {
	if s >= len(m.sents) {
		return ""
	}
	for k := m.sents[s].from - 1; k >= 0; k-- {
		if v, ok := m.val(k, cItem); ok && !m.taken(k) && !m.onlyPlaces(k) {
			return m.itemCode(k, v)
		}
		if m.is(k, cFuel, "tankless") || m.is(k, cFuel, "heat_pump") {
			return "heater" // "New tankless at 350 Sedge Ln … set 120"
		}
	}
	return ""
}

// itemCode returns the code of an item; "tank" alone is the expansion tank
// unless a heater's size or fuel is said of it.
func (m *message) itemCode(k int, v string) string {
	if v != "tank" {
		return v
	}
	for j := max(0, k-3); j < min(len(m.items), k+3); j++ {
		it := &m.items[j]
		large := it.num != nil && (it.unit == "gal" || it.unit == "litre") && it.value >= 20
		if it.sent == m.items[k].sent && (large || it.kinds.has(cFuel)) && !m.apartFromTank(j, k) {
			return "heater"
		}
	}
	if m.text(k+1) == "de" && m.isNum(k+2) && m.items[k+2].unit == "" && m.items[k+2].value >= 30 {
		return "heater" // "tanque de 80 puesto a 140"
	}
	if m.text(k+1) == "up to" && m.text(k+2) == "temp" || m.text(k+2) == "up to" && m.text(k+3) == "temp" {
		return "heater" // "tank's up to temp"
	}
	return "expansion_tank"
}

// apartFromTank tells whether item j says nothing of the tank at item k: a tank that is denied is no heater
// of what stands before its comma or behind it, and a clause that names a heater tells of that.
func (m *message) apartFromTank(j, k int) bool {
	small := func(n int) bool {
		return n >= 0 && m.items[n].seg == m.items[k].seg && m.items[n].num != nil && m.items[n].unit == "gal" && m.items[n].value < 20
	}
	if small(k-1) || m.right(k, 4, true, small) >= 0 {
		return true // "2 gal tank, 40 gal gas"
	}
	if m.says(k-1, "no", "without") && (j > k || m.isMark(k-2, ",") && j < k-2) {
		return true // "instantaneous water heater, no tank", "no tank, 50 gal gas"
	}
	if m.items[j].seg == m.items[k].seg {
		return false
	}
	if j < k && m.text(k-1) != "sin" {
		return true // "40 gal gas, tank 2019"
	}
	for h := j; h < len(m.items) && m.items[h].seg == m.items[j].seg; h++ {
		if m.is(h, cItem, "heater") {
			return true // "tank is flat, 50 gal electric heater"
		}
	}
	return false
}

// feminine returns the equipment that Spanish words of that gender at item i point back to, the last
// one named with such a name: "la reguladora … el tanque …, mañana pongo la nueva", "se la dejé en 60".
func (m *message) feminine(i int) (string, int) {
	if !m.pointsToHer(i) {
		return "", -1
	}
	for k := i - 1; k >= 0; k-- {
		v, ok := m.val(k, cItem)
		name, _, _ := strings.Cut(m.text(k), " ")
		if !ok {
			name = lastWord(m.text(k)) // "cerré la llave"
		}
		if !m.p.lex.inList(name, listFeminine) || m.taken(k) || m.onlyPlaces(k) {
			continue
		}
		if !ok {
			return herOther, -1 // "cerré la llave de paso y así la dejé"
		}
		return m.itemCode(k, v), k
	}
	return "", -1
}

// herOther is what a feminine word points back to that is no equipment.
const herOther = "other"

// pointsToHer tells whether the word of work at item i has "la", "la nueva" or "la vieja" for its object.
func (m *message) pointsToHer(i int) bool {
	t := m.text(i)
	if beginsWith(t, "la ", "se la ", "ya la ") || strings.HasSuffix(t, " la nueva") || strings.HasSuffix(t, " una nueva") || m.text(i-1) == "la" && m.is(i, cDid, "") {
		return true
	}
	if m.text(i) == "nueva" && m.says(i-1, "la", "una") {
		return true
	}
	return m.says(i+1, "la", "una") && (m.is(i+2, cPart, "new") || m.is(i+2, cPart, "old")) && !m.noEquipment(i+3) && !m.is(i+3, cItem, "")
}

// carriedTo returns the equipment told last before item i.
func (m *message) carriedTo(i int) string {
	if o, _ := m.topicBefore(i); o != "" {
		return o
	}
	return m.carried(m.items[i].sent)
}

package intents

import (
	"strings"

	"lazyhand/assess"
)

// Lists of the lexicon that these rules know.
var (
	listUnread  = listOf("unread")
	listLately  = listOf("lately")
	listNotFuel = listOf("not fuel")
	listOfGas   = listOf("of gas")
)

// equipmentSet gathers what the message says of each thing installed, in the
// order first named.
type equipmentSet []*fact

// fact is what is said of one thing.
type fact struct {
	at int // where it is first named
	assess.Equipment
	settingAt int  // where its setting is told
	named     bool // merely named
	said      bool // something is said of it
	two       bool // the message speaks of two such things
	counted   bool // whether it does is known
}

// find returns what is told of an item, nil where nothing is.
func (e equipmentSet) find(item string) *fact {
	for _, f := range e {
		if string(f.Item) == item {
			return f
		}
	}
	return nil
}

// get returns what is told of an item, named first at item at.
func (e *equipmentSet) get(item string, at int) *fact {
	if f := e.find(item); f != nil {
		return f
	}
	f := &fact{at: at, Equipment: assess.Equipment{Item: assess.Item(item)}}
	*e = append(*e, f)
	return f
}

// lack says that the house has no such thing.
func (f *fact) lack() {
	no := false
	f.Present, f.said = &no, true
}

// absent tells whether the house has no such thing, as far as is known.
func (e equipmentSet) absent(item string) bool {
	f := e.find(item)
	return f != nil && f.Absent()
}

// itemIn returns the first item that a sentence names.
func (m *message) itemIn(s int) string {
	for k := m.sents[s].from; k < m.sents[s].to; k++ {
		if v, ok := m.val(k, cItem); ok {
			return m.itemCode(k, v)
		}
	}
	return ""
}

// attribute is something said of a piece of equipment.
type attribute struct {
	at   int
	what string // year, age, ago, size, fuel, temp, setting, charge, material, cond, maintained, unknown, never
}

// mentionOf is an item named in the message.
type mentionOf struct {
	at   int
	item string
	old  bool // of a part taken out

	other bool // of another house
}

// findEquipment gives each attribute to the item that it is said of.
func (m *message) findEquipment() {
	items := m.mentions(m.scratch.named[:0])
	for s := range m.sents {
		m.named(s, items)
	}
	m.lackedLater(items)
	m.foundAfterAll(items)
	items = m.heatersByFacts(items)
	for _, v := range m.verbs {
		if v.done && v.objAt >= 0 && m.partAt(v.objAt) == v.object && !m.is(v.objAt, cItem, "") ||
			v.object == "drain_valve" && v.done && v.objAt >= 0 && m.items[v.objAt].point != "" {
			items = append(items, mentionOf{at: v.objAt, item: v.object}) // "hung a 2 gallon"
		}
	}
	m.original(items)
	attrs := m.scratch.attrs[:0]
	for i := range m.items {
		if m.items[i].num == nil && !m.begins(i, keyFact|keyAge|keyUnread) ||
			m.sents[m.items[i].sent].asking && m.sents[m.items[i].sent].question && !m.beforeAsk(i) {
			continue
		}
		n := len(attrs)
		if attrs = m.attributeAt(i, attrs); len(attrs) > n && m.onTruck(i) {
			attrs = attrs[:n]
		}
	}
	for _, a := range m.ofToday(attrs) {
		m.give(a, items)
	}
	m.stuckScrew()
	m.wornBody()
	m.likewise(items)
	m.scratch.named, m.scratch.attrs = items, attrs
}

// mentions appends what names a piece of equipment.
func (m *message) mentions(items []mentionOf) []mentionOf {
	for i := range m.items {
		it := &m.items[i]
		if it.role == roleTaken {
			continue
		}
		if !it.kinds.has(cItem) && m.kinds.has(cCond) && m.heaterStands(i) {
			items = append(items, mentionOf{at: i, item: "heater"}) // "the heater on this house is shot"
			continue
		}
		if !it.kinds.has(cItem) && it.point != "heater_drain" {
			continue
		}
		v, ok := m.val(i, cItem)
		if !ok && m.inList(i+1, listLinks) && strings.HasSuffix(it.text, "heater") && !m.pointUsed(i) {
			v, ok = "heater", true // "bottom of the heater is flaking"
		}
		if !ok && strings.Contains(it.text, "drain") && (m.is(i+1, cCond, "") || m.inList(i+1, listLinks) && m.is(i+2, cCond, "")) && !m.pointUsed(i) {
			v, ok = "drain_valve", true // "heater drain is plugged up"
		}
		if !ok || it.point != "" && m.pointUsed(i) && !(m.inList(i+1, listLinks) && m.factual(i+2)) && !m.shownPastMaterial(i) {
			continue
		}
		other := m.elsewhere(i)
		items = append(items, mentionOf{at: i, item: m.itemCode(i, v), old: other || m.takenOut(i), other: other})
	}
	return items
}

// heatersByFacts appends the heaters that are told without their name.
func (m *message) heatersByFacts(items []mentionOf) []mentionOf {
	// "40 gal, propane, from 2003, scaled up": by its facts
	for i := 0; i < len(m.items) && m.gave(roleSize); i++ {
		if m.items[i].role == roleSize && m.items[i].value >= 20 && !m.onTruck(i) && !m.heaterIn(m.items[i].sent) {
			items = append(items, mentionOf{at: i, item: "heater"})
		}
	}
	if m.kinds.has(cState) && m.kinds.has(cCond) {
		for i := range m.items {
			if m.is(i, cState, "idle") && m.is(i, cCond, "") && m.closes(i) && i == m.sents[m.items[i].sent].from && !m.reporting() {
				items = append(items, mentionOf{at: i, item: "heater"}) // "HEATER DEAD."
			}
		}
	}
	if m.kinds.has(cFuel) {
		// a tankless or a hybrid is a heater by its name
		for i := range m.items {
			if v, ok := m.val(i, cFuel); ok && (v == "tankless" || v == "heat_pump") && !m.heaterIn(m.items[i].sent) {
				items = append(items, mentionOf{at: i, item: "heater"})
			}
		}
	}
	return items
}

// beforeAsk tells whether item i stands in a clause told before the question of its
// sentence: "reg went in around 2013, what have we got on this house".
func (m *message) beforeAsk(i int) bool {
	asked := false
	for k := range m.asks {
		at := m.asks[k].at
		asked = asked || at > i && m.items[at].sent == m.items[i].sent && m.items[at].seg != m.items[i].seg
	}
	if !asked {
		return false
	}
	for k := m.sents[m.items[i].sent].from; k < i; k++ {
		if m.items[k].seg == m.items[i].seg && m.is(k, cItem, "") {
			return true
		}
	}
	return false
}

// pointUsed tells whether the test point at item i is that of a reading whose words hold it.
func (m *message) pointUsed(i int) bool {
	for k := range m.readings {
		r := &m.readings[k]
		if r.sent == m.items[i].sent && i >= r.from && i < r.to {
			for _, p := range r.points {
				if p == m.items[i].point {
					return true
				}
			}
		}
	}
	return false
}

var factOpener = opener{
	classes: setOf(cFuel, cMaterial, cCond, cDid),
	hints:   []string{"served", "serviced"},
	words:   wordsOf(months),
	lists:   []list{listLately},
}

var unreadWords = opener{lists: []list{listUnread}}

// attributeAt appends what item i says of some equipment.
func (m *message) attributeAt(i int, out []attribute) []attribute {
	it := &m.items[i]
	add := func(what string) { out = append(out, attribute{i, what}) }
	if it.num != nil {
		switch it.role {
		case roleYear:
			add("year")
		case roleAge:
			add("age")
		case roleAgo:
			add("ago")
		case roleSize:
			add("size")
		case roleTemp:
			add("temp")
		case roleSetting:
			add("setting")
		case roleCharge:
			add("charge")
		}
		return out
	}
	if it.tags == nil && m.said(i, keyUnread) {
		add("unknown")
	}
	if m.is(i, cFuel, "") && !m.gasTalk(i) && !m.deniedFact(i, cFuel) {
		add("fuel")
	}
	if m.is(i, cMaterial, "") && !m.deniedFact(i, cMaterial) && !m.needs(i) && !m.wantedFor(i) && !m.bookedIn(i) {
		add("material")
	}
	if m.is(i, cCond, "") && !m.stuckIn(i) && !(m.text(i) == "ng" && (i > 0 && m.items[i-1].role == roleSize || m.is(i+1, cItem, "heater") || m.isNum(i+1))) {
		add("cond")
	}
	toCome := func(k int) bool { return m.is(k, cWill, "") && m.items[k].seg == m.items[i].seg }
	if m.inList(i, listLately) && m.left(i, 7, true, toCome) < 0 || m.servicedInMonth(i) {
		add("lastyear")
	}
	if m.begins(i, keyAge) && m.ageUnknown(i) {
		add("unknown")
	}
	if m.neverServiced(i) {
		add("never")
	}
	return out
}

// deniedFact tells whether the message denies the fuel or the material at item i: "electric not
// gas".
func (m *message) deniedFact(i int, c class) bool {
	if !m.kinds.has(cNeg) {
		return false
	}
	v, _ := m.val(i, c)
	for k := range m.items {
		if m.text(k-1) == "not" && m.is(k, c, v) {
			return true
		}
	}
	return false
}

// bookedIn tells whether what is named at item i is to be put in: "brass one goes in Friday".
func (m *message) bookedIn(i int) bool {
	return m.right(i, 3, true, func(k int) bool { return m.is(k, cDo, "replace") && strings.HasPrefix(m.text(k), "go") }) >= 0 &&
		m.momentSeg(i)
}

// gasTalk tells whether "gas" at i is no fuel of a heater: "gas off", "gas line".
func (m *message) gasTalk(i int) bool {
	if smell := func(k int) bool {
		return k >= 0 && k < len(m.items) && m.items[k].sent == m.items[i].sent && m.signsOf(k).has(signSmell)
	}; smell(i-1) || smell(i-2) || smell(i-3) || smell(i+1) {
		return true // "a rotten egg smell of gas", "smell of propane", "gas stink"
	}
	if m.text(i) != "gas" && m.text(i) != "ng" && m.text(i) != "gs" {
		return false
	}
	if m.closes(i) && m.signIn(i, signSmell) && m.itemIn(m.items[i].sent) == "" {
		return true // "thought it was gas, only a dead skunk"
	}
	if m.inList(i+1, listOfGas) && !m.numIs(i-1, roleSize) || m.typed(i) == "gs" && (m.is(i+1, cSym, "swings") || m.is(i+1, cHint, "way")) {
		return true
	}
	switch {
	case m.inList(i-1, listNotFuel), m.says(i-1, "like", "of") && m.sentenceIs(m.items[i].sent, cSym, "gas_smell"):
		return true // "rotten eggs by the heater, like gas"
	case m.text(i-1) == "the":
		return m.text(i+1) == ""
	}
	return false
}

// fullYear is a year with its century: of two digits, the last such year.
func (m *message) fullYear(v float64) int {
	y := int(v)
	if y < 100 {
		c := m.ctx.Today.Year
		y += c / 100 * 100
		if y > c+1 {
			y -= 100
		}
	}
	return y
}

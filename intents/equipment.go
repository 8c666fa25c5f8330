package intents

import (
	"slices"
	"strings"

	"lazyhand/assess"
)

// equipmentSet gathers what the message says of each thing installed, in the
// order first named.
type equipmentSet struct {
	order []string
	facts map[string]*fact
}

type fact struct {
	at int
	assess.Equipment
	settingAt int  // where its setting is told
	named     bool // merely named
	said      bool // something is said of it
}

func (e *equipmentSet) get(item string, at int) *fact {
	if e.facts == nil {
		e.facts = map[string]*fact{}
	}
	f := e.facts[item]
	if f == nil {
		f = &fact{at: at, Equipment: assess.Equipment{Item: assess.Item(item)}}
		e.facts[item] = f
		e.order = append(e.order, item)
	}
	return f
}

// absent tells whether the house has no such thing, as far as is known.
func (e *equipmentSet) absent(item string) bool {
	f := e.facts[item]
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
}

// findEquipment gives each attribute to the item that it is said of.
func (m *message) findEquipment() {
	items := m.mentions(m.scratch.named[:0])
	for s := range m.sents {
		m.named(s, items)
	}
	m.lackedLater(items)
	items = m.heatersByFacts(items)
	for _, v := range m.verbs {
		if v.done && v.objAt >= 0 && m.partAt(v.objAt) == v.object && !m.is(v.objAt, cItem, "") || v.object == "drain_valve" && v.done && v.objAt >= 0 && m.items[v.objAt].point != "" {
			items = append(items, mentionOf{at: v.objAt, item: v.object}) // "hung a 2 gallon"
		}
	}
	m.original(items)
	attrs := m.scratch.attrs[:0]
	for i := range m.items {
		if m.items[i].num == nil && !m.begins(i, keyFact|keyUnread) || m.sents[m.items[i].sent].asking && m.sents[m.items[i].sent].question && !m.beforeAsk(i) {
			continue
		}
		if found := m.attributeAt(i); len(found) > 0 && !m.onTruck(i) {
			attrs = append(attrs, found...)
		}
	}
	for _, a := range attrs {
		m.give(a, items)
	}
	m.likewise(items)
	m.scratch.named, m.scratch.attrs = items, attrs
}

// mentions appends what names a piece of equipment.
func (m *message) mentions(items []mentionOf) []mentionOf {
	for i := range m.items {
		it := &m.items[i]
		if !it.kinds.has(cItem) && it.point != "heater_drain" || it.role == roleTaken {
			continue
		}
		v, ok := m.val(i, cItem)
		if !ok && be(m.text(i+1)) && strings.HasSuffix(it.text, "heater") && !m.pointUsed(i) {
			v, ok = "heater", true // "bottom of the heater is flaking"
		}
		if !ok && strings.Contains(it.text, "drain") && (m.is(i+1, cCond, "") || be(m.text(i+1)) && m.is(i+2, cCond, "")) && !m.pointUsed(i) {
			v, ok = "drain_valve", true // "heater drain is plugged up"
		}
		if !ok || it.point != "" && m.pointUsed(i) && !(be(m.text(i+1)) && m.factual(i+2)) {
			continue
		}
		items = append(items, mentionOf{at: i, item: m.itemCode(i, v), old: m.takenOut(i)})
	}
	return items
}

// heatersByFacts appends the heaters that are told without their name.
func (m *message) heatersByFacts(items []mentionOf) []mentionOf {
	// "40 gal, propane, from 2003, scaled up": by its facts
	for i := range m.items {
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

// lately are spans of this year and the last two in which something may have been done.
var lately = phrases(`this year | this spring | this month | this week | this winter | este ano | last year | el ano pasado
	| last month | last summer | last spring | last fall | last winter | last week | el mes pasado | year before last
	| the year before last`)

var factOpener = opener{
	classes: setOf(cFuel, cMaterial, cCond, cAge, cUnknown, cDid),
	hints:   []string{"served", "serviced", "undated"},
	words: slices.Concat(
		wordsOf(months),
		wordsOf(lately),
		// ageUnknown
		[]string{"when", "cuando", "nobody", "nadie", "who", "old", "etiqueta", "placa", "fecha de", "label"},
		[]string{"age", "edad", "date", "year", "fecha", "vintage", "ano", "tag", "anos"}),
}

var unreadWords = opener{words: []string{"unk", "unknown", "desconocida", "desconocido", "unknwn"}}

// attributeAt reads what item i says of some equipment.
func (m *message) attributeAt(i int) []attribute {
	it := &m.items[i]
	var out []attribute
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
	if m.is(i, cFuel, "") && !m.gasTalk(i) {
		add("fuel")
	}
	if m.is(i, cMaterial, "") && !m.needs(i) && !m.wantedFor(i) && !m.bookedIn(i) {
		add("material")
	}
	if m.is(i, cCond, "") && !(m.text(i) == "ng" && (i > 0 && m.items[i-1].role == roleSize || m.is(i+1, cItem, "heater") || m.isNum(i+1))) {
		add("cond")
	}
	if lately[it.text] || m.servicedInMonth(i) {
		add("lastyear")
	}
	if m.ageUnknown(i) {
		add("unknown")
	}
	if m.neverServiced(i) {
		add("never")
	}
	return out
}

// bookedIn tells whether what is named at item i is to be put in: "brass one goes in Friday".
func (m *message) bookedIn(i int) bool {
	return m.right(i, 3, true, func(k int) bool { return m.is(k, cDo, "replace") && strings.HasPrefix(m.text(k), "go") }) >= 0 && m.momentSeg(i)
}

// gasTalk tells whether "gas" at i is no fuel of a heater: "gas off", "gas line".
func (m *message) gasTalk(i int) bool {
	if smell := func(k int) bool {
		return k >= 0 && m.items[k].sent == m.items[i].sent && m.signsOf(k).has(signSmell)
	}; smell(i-1) || smell(i-2) {
		return true // "a rotten egg smell of gas", "smell of propane"
	}
	if m.text(i) != "gas" && m.text(i) != "ng" && m.text(i) != "gs" {
		return false
	}
	switch m.text(i + 1) {
	case "line", "off", "leak", "smell", "meter", "company", "cock", "station", "is", "valve", "bill", "pressure", "money", "co", "up", "card", "pipe", "tank", "utility", "to", "feed", "supply",
		"sniffer", "odor", "odour", "leaks", "leaking", "detector", "union", "flex", "fumes":
		return m.text(i+1) != "tank"
	}
	switch m.text(i - 1) {
	case "got", "smell", "for", "more", "some", "get", "buy", "the":
		return m.text(i-1) != "the" || m.text(i+1) == ""
	}
	return false
}

// give finds the owner of an attribute and writes it down.
func (m *message) give(a attribute, items []mentionOf) {
	if a.what == "year" && m.maintainedYear(a.at) || a.what == "ago" && m.maintainedYear(a.at) || a.what == "lastyear" || a.what == "never" {
		m.maintained(a, items)
		return
	}
	said := a
	if it := &m.items[a.at]; it.takesOver {
		said.at = it.inherits // "prv 2010, no wait 2012"
	}
	if m.bothOf(a, items) || m.listBehind(a, items) {
		return
	}
	owner, old, ok := m.ownerOf(said, items)
	if !ok || old && !m.ofNewPart(a) || m.ofOldPart(a, owner) {
		return
	}
	if at := m.replacedAt(owner); at >= 0 && a.at < at && !m.newWords(a.at, at) {
		return // a fact of the part taken out
	}
	if t := m.text(a.at); a.what == "cond" && oneOf(t, "stuck", "holding", "working") && m.says(a.at+1, "the", "my", "a") {
		return // "stuck the gauge on …"
	}
	if a.what == "cond" && owner == "gauge" && m.inList(a.at, listGaugeShows) {
		return
	}
	if a.what == "cond" && (m.equipment.absent(owner) || m.sents[m.items[a.at].sent].question && owner != m.itemIn(m.items[a.at].sent)) {
		return
	}
	if k := m.left(a.at, 7, true, func(k int) bool { return m.text(k) == "if" || m.text(k) == "whether" }); a.what == "cond" && k >= 0 && m.items[k].seg == m.items[a.at].seg {
		return // "wants to know if her regulator is bad"
	}
	if a.what == "cond" && (m.adverb(a.at) || m.otherNoun(a.at)) {
		return
	}
	if a.what == "cond" && m.left(a.at, 4, true, func(k int) bool { return m.text(k) == "if" && m.items[k].seg == m.items[a.at].seg }) >= 0 {
		return // "she'll call if it's still bad in a week"
	}
	if t := m.text(a.at + 1); a.what == "cond" && strings.Contains(m.text(a.at), "scale") && oneOf(t, "came", "out", "came out", "comes out") {
		return // "flushed the heater, lots of scale came out"
	}
	if a.what == "cond" && m.is(a.at, cSym, "low_flow") && slices.ContainsFunc(m.symptoms, func(s symptomSeen) bool { return s.at == a.at }) {
		return // "forty eight at the shower, she calls it weak"
	}
	if a.what == "cond" && m.is(a.at, cDischarge, "") && m.reliefNear(a.at) {
		return
	}
	if a.what == "cond" && m.is(a.at, cSym, "rusty_water") && m.waterNear(a.at) && !m.is(a.at-1, cItem, "") {
		return // "el agua sale cafecita, como con óxido"
	}
	if t := m.text(a.at - 1); a.what == "cond" && (t == "as" || m.text(a.at) == "going" && m.says(a.at+1, "to", "in", "on")) {
		return
	}
	if a.what == "year" && m.left(a.at, 3, false, func(k int) bool {
		if t := m.text(a.at + 1); t == "told" || t == "said" || t == "quoted" {
			return true // "a fellow in 2015 told her"
		}
		switch m.text(k) {
		case "bypassed", "disconnected", "unplugged", "hoses", "hose", "house", "home", "built", "casa", "roof", "since", "mangueras", "construida", "remodel", "washer", "been", "here":
			if t := m.text(a.at + 1); m.text(k) == "since" && (t == "install" || t == "installed") {
				return false // "never flushed since 2012 install"
			}
			told := m.says(k, "since", "been", "here") && owner != "" && owner == m.itemIn(m.items[a.at].sent)
			if told && (m.is(a.at-2, cItem, "") || m.left(a.at, 4, false, func(j int) bool { return m.says(j, "there", "in") || m.is(j, cHint, "inuse") }) >= 0) {
				return false // "prv's been in there since 2009", "prv since 1994"
			}
			return m.items[k].seg == m.items[a.at].seg && !m.partFor(k)
		}
		return false
	}) >= 0 {
		return
	}
	if t := m.text(a.at); a.what == "cond" && owner == "drain_valve" && (strings.HasPrefix(t, "weep") || strings.HasPrefix(t, "seep")) {
		m.addSymptom(a.at, assess.Leak, false) // "Drain valve is plastic and weeping."
		return
	}
	oldOne := a.what == "material" && m.says(a.at-1, "old", "viejo", "vieja") && strings.HasSuffix(m.text(a.at), " one")
	if oldOne && m.left(a.at, 8, true, func(k int) bool { return m.is(k, cMaterial, "") }) >= 0 {
		return // "Brass drain valve installed, old plastic one broke"
	}
	if a.what == "year" && m.text(a.at+1) == "model" && m.right(a.at, 9, true, func(k int) bool { return m.items[k].role == roleYear && m.is(k-1, cDid, "installed") }) > 0 {
		return // "a 2019 model but it was installed 2021"
	}
	f := m.equipment.get(owner, a.at)
	it := &m.items[a.at]
	if m.otherOfTwo(a.at, owner, f, a.what) {
		return
	}
	switch a.what {
	case "year":
		y := m.fullYear(it.value)
		if f.InstalledYear != nil {
			return
		}
		f.InstalledYear = &y
	case "age", "ago":
		y := m.ctx.Today.Year - int(it.value+0.5)
		if f.InstalledYear == nil {
			f.InstalledYear = &y
		}
	case "size":
		v := it.value
		f.SizeGal = &v
	case "fuel":
		v, _ := m.val(a.at, cFuel)
		if f.Fuel == assess.Tankless || f.Fuel == assess.HeatPump {
			return
		}
		f.Fuel = assess.Fuel(v)
	case "temp":
		v := it.value
		f.SetpointF = &v
	case "setting", "charge":
		v := toPSI(it.value, it.unit)
		f.SettingPSI, f.settingAt = &v, a.at
	case "material":
		v, _ := m.val(a.at, cMaterial)
		f.Material = assess.Material(v)
	case "cond":
		v, _ := m.val(a.at, cCond)
		if t := m.text(a.at); (t == "stuck" || t == "holding" || t == "working") && m.text(a.at+1) == "the" {
			return // "stuck the gauge on …"
		}
		v = m.condValue(a.at, v)
		if v == "" {
			return
		}
		if f.Condition == assess.Failed || f.Condition == assess.Suspect && v != "failed" {
			f.said = true
			return
		}
		f.Condition = assess.Condition(v)
	case "unknown":
		f.AgeUnknown = true
	}
	f.said = true
	m.note(a.at, owner, a.what)
	if a.what == "unknown" {
		m.unknownToo(a.at, owner, items)
	}
	if a.what == "year" || a.what == "cond" || a.what == "age" {
		m.shared(a, owner, items)
	}
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

func (m *message) heaterIn(s int) bool {
	for i := m.sents[s].from; i < m.sents[s].to; i++ {
		if m.is(i, cItem, "heater") {
			return true
		}
	}
	return false
}

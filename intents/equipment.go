package intents

import "lazyhand/assess"

// equipmentSet gathers what the message says of each thing installed, in the
// order first named.
type equipmentSet struct {
	order []string
	facts map[string]*fact
}

type fact struct {
	at int
	assess.Equipment
	named bool // merely named
	said  bool // something is said of it
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
	var items []mentionOf
	for i := range m.items {
		v, ok := m.val(i, cItem)
		if !ok || m.items[i].role == roleTaken || m.items[i].mark {
			continue
		}
		if m.items[i].point != "" && m.pointUsed(i) {
			continue
		}
		items = append(items, mentionOf{at: i, item: m.itemCode(i, v), old: m.takenOut(i)})
	}
	for s := range m.sents {
		if m.sents[s].asking && !m.sents[s].closes {
			continue
		}
		m.named(s, items)
	}
	// "40 gal, propane, from 2003, scaled up": a heater by its facts
	for i := range m.items {
		if m.items[i].role == roleSize && m.items[i].value >= 20 && !m.heaterIn(m.items[i].sent) {
			items = append(items, mentionOf{at: i, item: "heater"})
		}
	}
	// a tankless or a hybrid is a heater by its name
	for i := range m.items {
		if v, ok := m.val(i, cFuel); ok && (v == "tankless" || v == "heat_pump") && !m.heaterIn(m.items[i].sent) {
			items = append(items, mentionOf{at: i, item: "heater"})
		}
	}
	m.original(items)
	var attrs []attribute
	for i := range m.items {
		if m.items[i].mark || m.sents[m.items[i].sent].asking && m.sents[m.items[i].sent].question {
			continue
		}
		attrs = append(attrs, m.attributeAt(i)...)
	}
	for _, a := range attrs {
		m.give(a, items)
	}
	m.likewise(items)
}

// likewise copies a year: "the regulator was installed in 2021 and so was the heater".
func (m *message) likewise(items []mentionOf) {
	for k := 1; k < len(items); k++ {
		x := items[k]
		same := m.left(x.at, 4, false, func(k int) bool {
			t := m.text(k)
			return t == "so" || t == "likewise" || t == "same with" || t == "igual" || t == "tambien"
		}) >= 0 && m.left(x.at, 3, false, func(k int) bool { return be(m.text(k)) || m.text(k) == "igual" }) >= 0
		if !same {
			continue
		}
		f := m.equipment.facts[items[k-1].item]
		if f == nil {
			continue
		}
		g := m.equipment.get(x.item, x.at)
		if g.InstalledYear == nil && f.InstalledYear != nil {
			y := *f.InstalledYear
			g.InstalledYear = &y
		}
		if g.Condition == "" && f.InstalledYear == nil {
			g.Condition = f.Condition
		}
		g.said = true
	}
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

// takenOut tells whether the item at i is the old part: "took the old heater
// out", "old one was a 2004".
func (m *message) takenOut(i int) bool {
	for k := i - 1; k >= 0 && k >= i-4 && m.items[k].sent == m.items[i].sent; k-- {
		switch m.text(k) {
		case "took the old", "ripped out", "pulled", "removed", "took out", "took out the old", "tore out", "tiramos el viejo", "quite", "saque", "took the old one out", "pull":
			return true
		case "old":
			return m.hasDeed(m.items[i].sent, i)
		}
		if m.items[k].mark || m.is(k, cItem, "") {
			break
		}
	}
	return false
}

// hasDeed tells whether the message replaces the item.
func (m *message) hasDeed(s, i int) bool {
	for _, v := range m.verbs {
		if v.done && v.what == "replaced" {
			return true
		}
	}
	return false
}

// named records items that the house may lack, and those said to be absent.
func (m *message) named(s int, items []mentionOf) {
	for _, it := range items {
		if m.items[it.at].sent != s {
			continue
		}
		if m.itemAbsent(it.at) || m.askedAbsent(it.at) {
			if m.installs(it.item) || it.item == "gauge" || it.item == "heater" && !m.plainNo(it.at) || it.item == "drain_valve" && !m.plainNo(it.at) || m.symptomOf(it.at) || m.workOn(it.at) {
				continue
			}
			f := m.equipment.get(it.item, it.at)
			no := false
			f.Present, f.said = &no, true
			continue
		}
		switch it.item {
		case "expansion_tank", "check_valve", "softener", "recirc":
			if it.item == "expansion_tank" && (m.tankWork() || m.tankPlan()) || m.workOn(it.at) || m.planOn(it.at) || m.sents[s].asking || it.old || m.text(it.at) == "tank" && m.items[it.at].tags != nil && m.weakTank(it.at) {
				continue
			}
			m.equipment.get(it.item, it.at).named = true
		}
	}
}

// weakTank tells whether "tank" alone is hardly a mention: "tank day".
func (m *message) weakTank(i int) bool {
	switch m.text(i + 1) {
	case "day", "job", "follow up", "size", "install", "call", "recheck", "top", "swap", "plan", "change":
		return true
	}
	return m.text(i-1) == "the" || m.text(i-1) == "that" || m.text(i-1) == "el"
}

func (m *message) plainNo(i int) bool {
	t := m.text(i - 1)
	return t == "no" || t == "sin" || t == "without" || t == "w/o" || t == "no hay"
}

func (m *message) symptomOf(i int) bool { return m.is(i+1, cSym, "") }

// itemAbsent tells whether the message says that there is no such thing: "no exp
// tank", "exp tank: none", "no expansion vessel is there".
func (m *message) itemAbsent(i int) bool {
	s := m.sents[m.items[i].sent]
	// before
	for k := i - 1; k >= s.from && k >= i-6; k-- {
		t := m.text(k)
		switch t {
		case "no", "without", "w/o", "sin", "ningun", "not a", "never had", "no hay", "nor", "ni", "lacks", "missing", "zero", "neither", "falta", "no tiene", "doesnt have", "hasnt got", "dont have", "didnt have":
			if (t == "no" || t == "sin") && m.is(i, cItem, "") && k == i-1 && m.is(i+1, cSym, "") {
				return false // "no tank leak"
			}
			if t == "falta" {
				return false
			}
			return true
		case "not", "dont", "doesnt", "isnt", "didnt", "cant", "couldnt", "nunca", "never", "hasnt", "wasnt", "havent", "arent":
			// "doesn't have a tank", "there isn't an expansion tank", "don't see a tank"
			for j := k + 1; j < i; j++ {
				switch m.text(j) {
				case "have", "see", "find", "a", "an", "got", "any", "no", "had", "tiene", "hay", "veo", "tuvo", "un", "una", "ha", "tenia", "tienen":
				default:
					return false
				}
			}
			return k+1 < i
		case "or", "and", "a", "an", "any", "new", "working", "hay", "tiene", "thermal", "the", "real", "o", "y", "un", "una", "tienen", "veo", "lleva", "tenia", "cuenta", "con", "in line", "proper", "have", "see", "n":
			continue
		case ",":
			// "no check valve, softener or recirc"
			if m.is(k-1, cItem, "") && m.listed(k, i) {
				continue
			}
			return m.afterAbsent(i)
		}
		if v, ok := m.val(k, cItem); ok && v != "" && m.listed(k, i) {
			continue
		}
		break
	}
	return m.afterAbsent(i)
}

// listed tells whether only list words stand between two items and an "or" follows.
func (m *message) listed(k, i int) bool {
	for j := k; j <= i+3 && j < len(m.items) && m.items[j].sent == m.items[i].sent; j++ {
		switch m.text(j) {
		case "or", "nor", "ni", "o":
			return true
		}
	}
	return false
}

func (m *message) afterAbsent(i int) bool {
	k := i + 1
	for k < len(m.items) && k <= i+5 && m.items[k].sent == m.items[i].sent {
		switch m.text(k) {
		case "«site»", ":", "=", "-", "at", "meter", "present", "is", "was", "at the meter", "on", "heater", "the", "esta", "en el medidor", "?", "en":
			k++
			continue
		case ",":
			switch m.text(k + 1) {
			case "none", "no hay", "ninguno", "ninguna", "no tiene":
				return true
			case "no":
				return m.text(k+2) == "hay" || m.text(k+2) == "tiene"
			}
			return false
		case "none", "no", "missing", "absent", "ninguno", "ninguna", "not present", "nope", "n/a", "nada", "not there", "not installed", "no tiene", "no hay":
			if m.text(k) == "no" && k+1 < len(m.items) && !m.items[k+1].mark {
				switch m.text(k + 1) {
				case "hay", "tiene", "lleva", "existe":
					return true
				}
				return false
			}
			return true
		case "not":
			return m.text(k+1) == "present" || m.text(k+1) == "there" || m.text(k+1) == "installed"
		}
		break
	}
	return false
}

// workOn tells whether the item at i is the object of a deed.
func (m *message) workOn(i int) bool {
	for _, v := range m.verbs {
		if v.objAt == i && (v.done || v.planned && !v.state) {
			return true
		}
		if v.done && v.object == "expansion_tank" && (v.what == "installed" || v.what == "replaced") {
			if c, ok := m.val(i, cItem); ok && m.itemCode(i, c) == "expansion_tank" {
				return true
			}
		}
	}
	return false
}

// planOn tells whether the item at i is the object of a plan.
func (m *message) planOn(i int) bool {
	for _, p := range m.plans {
		if m.items[p.at].sent != m.items[i].sent {
			continue
		}
		switch p.Action {
		case assess.InstallTank, assess.ReplaceTank:
			if c, ok := m.val(i, cItem); ok && m.itemCode(i, c) == "expansion_tank" {
				return true
			}
		case assess.OtherAction:
			if abs(p.at-i) <= 6 {
				return true
			}
		}
	}
	return false
}

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
	if it.tags == nil {
		switch it.text {
		case "unk", "unknown", "desconocida", "desconocido", "unknwn":
			add("unknown")
		}
	}
	if m.is(i, cFuel, "") && !m.gasTalk(i) {
		add("fuel")
	}
	if m.is(i, cMaterial, "") {
		add("material")
	}
	if m.is(i, cCond, "") {
		add("cond")
	}
	switch it.text {
	case "last year", "el ano pasado", "last month", "last summer", "last spring", "last fall", "last winter", "last week", "el mes pasado":
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

// gasTalk tells whether "gas" at i is no fuel of a heater: "gas off", "gas line".
func (m *message) gasTalk(i int) bool {
	if m.text(i) != "gas" && m.text(i) != "ng" {
		return false
	}
	switch m.text(i + 1) {
	case "line", "off", "leak", "smell", "meter", "company", "cock", "station", "is", "valve", "bill", "pressure", "money", "co", "up", "card", "pipe", "tank", "utility":
		return m.text(i+1) != "tank"
	}
	switch m.text(i - 1) {
	case "got", "smell", "for", "more", "some", "get", "buy", "the":
		return m.text(i-1) != "the" || m.text(i+1) == ""
	}
	return false
}

// ageUnknown reads "nobody knows how old", "age unknown", "no se sabe de qué año es".
func (m *message) ageUnknown(i int) bool {
	t := m.text(i)
	switch t {
	case "nobody", "nadie", "who":
		return (m.text(i+1) == "knows" || m.text(i+1) == "sabe") && (i+2 >= len(m.items) || m.items[i+2].mark || m.text(i+2) == "how" && m.text(i+3) != "old" && false)
	case "cuando":
		return m.left(i, 4, false, func(k int) bool { t := m.text(k); return t == "sabe" || t == "sabemos" || t == "saben" }) >= 0
	case "old":
		// how old
		if m.text(i-1) == "how" || m.text(i-1) == "whats" {
			return m.left(i, 7, true, func(k int) bool {
				switch m.text(k) {
				case "know", "knows", "no", "nobody", "idea", "clue", "cant", "dont", "unsure", "unknown", "not", "couldnt", "tell", "say", "knew":
					return true
				}
				return false
			}) >= 0 || m.right(i, 5, true, func(k int) bool {
				switch m.text(k) {
				case "unknown", "nobody", "no", "dont", "unk", "idea":
					return true
				}
				return false
			}) >= 0
		}
	case "age", "edad", "date", "year", "fecha", "vintage", "ano", "tag", "anos":
		if r := m.right(i, 3, true, func(k int) bool {
			switch m.text(k) {
			case "not":
				return m.text(k+1) == "known" || m.text(k+1) == "legible" || m.text(k+1) == "readable"
			case "unknown", "unk", "unreadable", "illegible", "desconocida", "unknwn", "?", "unclear", "gone", "missing", "not known", "worn off":
				return true
			}
			return false
		}); r >= 0 && (t == "age" || t == "edad" || m.text(r) != "gone") {
			return !(m.text(r) == "?" && m.sents[m.items[i].sent].asking)
		}
		if m.left(i, 6, true, func(k int) bool {
			switch m.text(k) {
			case "no", "unk", "unknown", "cant", "couldnt", "nobody", "dont", "not", "sabe", "nadie", "se", "idea":
				return m.text(k) != "no" || t != "ano" || true
			}
			return false
		}) >= 0 {
			switch t {
			case "age", "edad":
				return true
			case "date", "tag", "fecha":
				return m.left(i, 4, true, func(k int) bool { t := m.text(k); return t == "no" || t == "read" || t == "cant" || t == "couldnt" }) >= 0
			case "ano", "anos", "year", "vintage":
				return m.left(i, 6, true, func(k int) bool {
					t := m.text(k)
					return t == "se" && m.text(k-1) == "no" || t == "sabe" || t == "sabemos" || t == "know" || t == "knows" || t == "idea" || t == "saben" || t == "sabia"
				}) >= 0
			}
		}
	}
	return false
}

// neverServiced reads "never flushed", "flushed: never", "nunca lavado".
func (m *message) neverServiced(i int) bool {
	if !m.is(i, cDid, "flushed") && !m.flushWord(m.text(i)) {
		return false
	}
	ok := func(k int) bool { t := m.text(k); return t == "never" || t == "nunca" || t == "jamas" || t == "nvr" }
	return m.left(i, 5, true, ok) >= 0 || m.right(i, 3, true, ok) >= 0 || m.left(i, 4, true, func(k int) bool { t := m.text(k); return t == "hasnt" || t == "not" || t == "havent" }) >= 0 && m.right(i, 2, true, func(k int) bool { return m.text(k) == "ever" }) >= 0 || m.left(i, 4, true, func(k int) bool { return m.text(k) == "ever" }) >= 0 && m.left(i, 6, true, func(k int) bool {
		t := m.text(k)
		return t == "not" || t == "hasnt" || t == "no" || t == "dont" || t == "doubt"
	}) >= 0
}

func (m *message) flushWord(t string) bool {
	switch t {
	case "flush", "flushed", "serviced", "service", "servicio", "maintained", "maintenance", "lavado", "lavaron", "lavo", "lavada", "srvcd", "cleaned", "drained", "drenado", "mantenimiento", "lavarlo", "touched", "flushing", "svc", "srvc", "svcd", "lava", "lavan", "drenan", "drenaron", "han lavado", "purgado", "limpiado", "descaled", "last flush", "last service", "last serviced", "last flushed", "last drained", "lavando", "purga", "dado", "hecho", "serviced last", "drain", "enjuagado", "enjuagaron":
		return t != "drain"
	}
	return false
}

// give finds the owner of an attribute and writes it down.
func (m *message) give(a attribute, items []mentionOf) {
	if a.what == "year" && m.maintainedYear(a.at) || a.what == "ago" && m.maintainedYear(a.at) || a.what == "lastyear" || a.what == "never" {
		m.maintained(a, items)
		return
	}
	owner, old, ok := m.ownerOf(a, items)
	if !ok || old {
		return
	}
	if at := m.replacedAt(owner); at >= 0 && a.at < at && !m.newWords(a.at, at) {
		return // a fact of the part taken out
	}
	if t := m.text(a.at); a.what == "cond" && (t == "stuck" || t == "holding" || t == "working") && (m.text(a.at+1) == "the" || m.text(a.at+1) == "my" || m.text(a.at+1) == "a") {
		return // "stuck the gauge on …"
	}
	if a.what == "cond" && owner == "gauge" && !m.gaugeDoubt(m.text(a.at)) {
		return
	}
	if a.what == "cond" && m.is(a.at, cDischarge, "") && m.reliefNear(a.at) {
		return
	}
	if t := m.text(a.at - 1); a.what == "cond" && (t == "as" || m.text(a.at) == "going" && (m.text(a.at+1) == "to" || m.text(a.at+1) == "in" || m.text(a.at+1) == "on")) {
		return
	}
	if a.what == "year" && m.left(a.at, 3, false, func(k int) bool {
		switch m.text(k) {
		case "hoses", "hose", "house", "home", "built", "casa", "roof", "since", "mangueras", "construida", "remodel", "washer", "been", "here":
			return m.items[k].seg == m.items[a.at].seg
		}
		return false
	}) >= 0 {
		return
	}
	f := m.equipment.get(owner, a.at)
	it := &m.items[a.at]
	switch a.what {
	case "year":
		y := int(it.value)
		if y < 100 {
			c := m.ctx.Today.Year
			y += c / 100 * 100
			if y > c+1 {
				y -= 100
			}
		}
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
		f.SettingPSI = &v
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
}

// condValue turns a condition round when it is denied: "not good", "not bad".
func (m *message) condValue(i int, v string) string {
	if m.left(i, 2, false, func(k int) bool {
		switch m.text(k) {
		case "not", "isnt", "no", "wasnt", "never", "doesnt", "aint", "tampoco":
			return true
		}
		return false
	}) >= 0 {
		if v == "good" {
			return "failed"
		}
		return "good"
	}
	return v
}

// compatible tells whether an attribute can be said of an item, and how well.
func compatible(what, item, text string, value float64) bool {
	switch what {
	case "fuel", "temp":
		return item == "heater"
	case "size":
		return item == "heater" && value >= 6 || item == "expansion_tank" && value < 20
	case "material":
		return item == "drain_valve"
	case "setting":
		return item == "prv"
	case "charge":
		return item == "expansion_tank"
	case "year", "age", "ago":
		return item != "drain_valve" && item != "gauge" || what == "age" && item == "gauge" || what == "year"
	case "unknown":
		return item == "prv" || item == "heater" || item == "expansion_tank" || item == "softener" || item == "recirc" || item == "check_valve"
	case "cond":
		return true
	}
	return false
}

// ownerOf finds the item that an attribute is said of.
func (m *message) ownerOf(a attribute, items []mentionOf) (item string, old, ok bool) {
	it := &m.items[a.at]
	best, cost := -1, 1e9
	for k, x := range items {
		if !compatible(a.what, x.item, it.text, it.value) || m.items[x.at].sent == it.sent && x.at < a.at && a.what != "unknown" && m.is(x.at, cItem, "") && m.itemAbsent(x.at) {
			continue
		}
		xs := m.items[x.at].sent
		if xs != it.sent {
			continue
		}
		c := float64(abs(x.at - a.at))
		// facts in a row are one thing's: "tank 2 gal, also 2013, good"
		for j := min(x.at, a.at) + 1; j < max(x.at, a.at); j++ {
			if m.factual(j) {
				c -= 0.8
			}
		}
		commas := m.separators(min(x.at, a.at), max(x.at, a.at))
		if x.at > a.at && (a.what == "year" || a.what == "age" || a.what == "cond") && m.copulaBefore(a.at) {
			c += 5 // "the regulator … is from 2021, the tank …"
		}
		if x.at > a.at {
			// before the noun: "2 yr old PRV", "50 gal electric heater"
			if commas > 0 {
				c += 6 * float64(commas)
			}
			if a.what == "cond" {
				c += 2
				if m.text(a.at) == "working" || m.text(a.at) == "good" || m.text(a.at) == "bad" {
					c--
				}
			}
			c += 0.5
		} else {
			c += 1.5 * float64(commas)
			if m.factualRun(x.at, a.at) {
				c -= float64(commas)
			}
		}
		for j := min(x.at, a.at) + 1; j < max(x.at, a.at); j++ {
			if m.is(j, cItem, "") && !m.taken(j) && !(m.items[j].point != "" && m.pointUsed(j)) {
				c += 6
			}
			if m.items[j].num != nil && m.items[j].role == roleReading {
				c += 3
			}
			if m.items[j].point != "" && a.what == "cond" {
				c += 3
			}
			if m.is(j, cDid, "") && a.what != "temp" && a.what != "setting" {
				c += 1
			}
			if t := m.text(j); t == "and" || t == "y" || t == "but" || t == "with" {
				c += 0.5
			}
			if x.at > a.at && m.text(j) == "no" {
				c += 6
			}
		}
		if c < cost {
			best, cost = k, c
		}
	}
	limit := 14.0
	if a.what == "cond" {
		limit = 15
		if !m.strongCond(a.at) {
			limit = 6
		}
		if h := m.sents[it.sent].header; h >= 0 && h < a.at {
			limit += 6
		}
		// a condition right after a number is not a condition: "holds 62"
		if m.isNum(a.at+1) && (m.text(a.at) == "holds" || m.text(a.at) == "holding" || m.text(a.at) == "works" || m.text(a.at) == "working" || m.text(a.at) == "slow" || m.text(a.at) == "off by" || m.text(a.at) == "reads high" || m.text(a.at) == "normal") {
			return "", false, false
		}
	}
	if a.what == "year" || a.what == "age" {
		limit = 12
		if m.left(a.at, 12, true, func(k int) bool {
			t := m.text(k)
			return t == "original" || t == "original to the house" || t == "casting"
		}) >= 0 {
			limit = 22
		}
	}
	if best >= 0 && cost <= limit {
		return items[best].item, items[best].old || m.oldFact(a.at, items[best].at), true
	}
	if m.oldFact(a.at, a.at) {
		return "", true, false
	}
	switch a.what {
	case "fuel", "temp":
		if a.what == "fuel" && !m.fuelAlone(a.at) {
			return "", false, false
		}
		return "heater", false, true
	case "size":
		if it.value >= 20 {
			return "heater", false, true
		}
		if c := m.carriedEquipment(a.at, a.what); c != "" {
			return c, m.carriedOld(a.at, items), true
		}
		return "", false, false
	case "setting":
		return "prv", false, true
	case "charge":
		return "expansion_tank", false, true
	case "material":
		return "", false, false
	}
	// "it's a 2005": the item told last
	if m.pronounClause(a.at) || a.what == "age" || a.what == "unknown" || a.what == "year" && m.yearCue(a.at) {
		if a.what == "year" && !m.yearCue(a.at) && !m.itsA(a.at) {
			return "", false, false
		}
		if c := m.carriedEquipment(a.at, a.what); c != "" {
			return c, m.carriedOld(a.at, items), true
		}
	}
	if a.what == "year" && (m.fuelNear(a.at)) {
		return "heater", false, true
	}
	return "", false, false
}

// oldFact tells whether a fact is of the part taken out: "old one was a 2004".
func (m *message) oldFact(at, item int) bool {
	s := m.sents[m.items[at].sent]
	for k := at - 1; k >= s.from && k >= at-6; k-- {
		switch m.text(k) {
		case "took out", "tore out", "pulled", "ripped out", "took the old", "hauled off":
			if m.is(k, cDid, "installed") {
				return false
			}
			for j := k + 1; j < at; j++ {
				if m.is(j, cDid, "installed") || m.items[j].mark {
					return false
				}
			}
			return m.hasDeed(m.items[at].sent, at)
		case "old one", "old", "the old one", "viejo", "vieja", "original one", "existing one", "el viejo", "la vieja":
			if (m.text(k) == "old" || m.text(k) == "viejo" || m.text(k) == "vieja") && (m.items[max(k-1, 0)].num != nil || m.text(k-1) == "years") {
				return false
			}
			for _, v := range m.verbs {
				if v.done && v.what == "replaced" {
					return true
				}
			}
		}
	}
	return false
}

func (m *message) carriedOld(at int, items []mentionOf) bool {
	old := false
	for _, x := range items {
		if x.at < at {
			old = x.old
		}
	}
	return old
}

// strongCond tells whether a condition is plain even at some distance from its item.
func (m *message) strongCond(i int) bool {
	switch m.text(i) {
	case "good", "fine", "ok", "okay", "gone", "bad", "off", "slow", "weak", "clean", "normal", "great", "quit", "going", "perfect", "broken", "broke", "rough", "lazy", "passing", "flat", "junk", "bueno", "bien", "buena", "malo", "mala", "sirve", "solid", "working", "works", "holds", "holding", "sound", "happy", "fail", "sketchy", "gd", "no good", "no problem", "no problems", "no issues", "stuck", "frozen", "cracked", "rusty", "rusted", "bronce", "roto", "rota", "weeping", "seeping", "rusting", "rough ", "going out", "cooked", "fried", "debil", "falla", "fading", "drifting", "still good", "still holding", "accurate", "spot on", "se fue", "reads high", "reads low", "off by", "ng":
		return false
	}
	return true
}

// separators counts the marks between two items.
func (m *message) separators(a, b int) int {
	n := 0
	for k := a + 1; k < b; k++ {
		if m.items[k].mark {
			switch m.text(k) {
			case ",", "/", "-", "(":
				n++
			}
		}
	}
	return n
}

func (m *message) fuelAlone(i int) bool {
	t := m.text(i)
	if t == "tankless" || t == "heat pump" || t == "hybrid" {
		return true
	}
	return m.fuelNear(i) || m.has(cItem, "heater")
}

func (m *message) fuelNear(i int) bool {
	for k := max(0, i-4); k < min(len(m.items), i+5); k++ {
		if k != i && m.items[k].sent == m.items[i].sent && (m.is(k, cFuel, "") || m.items[k].num != nil && m.items[k].role == roleSize && m.items[k].value >= 20) {
			return true
		}
	}
	return false
}

// pronounClause tells whether the clause of item i speaks of "it".
func (m *message) pronounClause(i int) bool {
	s := m.sents[m.items[i].sent]
	for k := i - 1; k >= s.from && k >= i-6; k-- {
		switch m.text(k) {
		case "it", "its", "that", "thats", "this", "one", "es", "esta", "tag", "label", "sticker", "dated", "date", "stamped", "age", "from", "etiqueta", "placa", "year", "ano", "del", "de", "says", "hes", "shes":
			return true
		}
	}
	// or begins the line
	return i == s.from || i == s.from+1
}

func (m *message) itsA(i int) bool {
	return m.left(i, 3, false, func(k int) bool {
		t := m.text(k)
		return t == "its" || t == "it" || t == "thats" || t == "es" || t == "age" || t == "year" || t == "ano"
	}) >= 0
}

// yearCue tells whether a year is told as one of an installation.
func (m *message) yearCue(i int) bool {
	return m.left(i, 4, false, func(k int) bool {
		switch m.text(k) {
		case "installed", "from", "dated", "tag", "date", "stamped", "since", "year", "made", "mfg", "built", "put in", "del", "de", "ano", "etiqueta", "label", "sticker", "its", "vintage", "instalado", "instalada", "desde", "original", "age", "inst", "install", "says", "mfd", "manufactured", "born", "new in", "circa":
			return true
		}
		return false
	}) >= 0
}

// carriedEquipment finds the item told last before item at that an attribute fits.
func (m *message) carriedEquipment(at int, what string) string {
	for k := at - 1; k >= 0; k-- {
		if v, ok := m.val(k, cItem); ok && !m.taken(k) {
			c := m.itemCode(k, v)
			if c != "gauge" && compatible(what, c, "", 40) {
				return c
			}
		}
	}
	return ""
}

// maintainedYear tells whether a year is that of the last service: "flushed in 2019".
func (m *message) maintainedYear(i int) bool {
	s := m.sents[m.items[i].sent]
	for k := i - 1; k >= s.from && k >= i-7; k-- {
		if m.is(k, cDid, "flushed") || m.flushWord(m.text(k)) {
			// "flushed it, heater is a 2016"
			for j := k + 1; j < i; j++ {
				if m.items[j].mark && m.text(j) == "," || m.is(j, cItem, "") && !m.is(j, cItem, "heater") {
					return false
				}
				if m.text(j) == "installed" || m.text(j) == "from" && false {
					return false
				}
			}
			return true
		}
		if m.items[k].mark && m.text(k) != ":" {
			break
		}
		if m.is(k, cItem, "") && !m.is(k, cItem, "heater") {
			break
		}
	}
	for k := i + 1; k < s.to && k <= i+3; k++ {
		if m.items[k].mark && m.text(k) != ")" {
			break
		}
		if m.is(k, cDid, "flushed") || m.flushWord(m.text(k)) {
			return m.text(i-1) == "in" || m.text(i-1) == "en" || m.text(k) == "flush" || m.text(i-1) == "last" || m.items[i].role == roleAgo
		}
	}
	return false
}

// maintained writes the year of the last service down.
func (m *message) maintained(a attribute, items []mentionOf) {
	y := 0
	switch a.what {
	case "year":
		y = int(m.items[a.at].value)
		if y < 100 {
			y += 2000
		}
	case "ago":
		y = m.ctx.Today.Year - int(m.items[a.at].value)
	case "lastyear":
		ok := false
		s := m.sents[m.items[a.at].sent]
		for k := max(s.from, a.at-7); k < min(s.to, a.at+4); k++ {
			if m.is(k, cDid, "flushed") || m.flushWord(m.text(k)) {
				ok = true
			}
		}
		if !ok {
			// "installed last year"
			for k := max(s.from, a.at-6); k < a.at; k++ {
				if t := m.text(k); t == "instalaron" || t == "pusieron" || t == "cambiaron" {
					m.installedLastYear(a, items)
					return
				}
				if m.is(k, cDid, "installed") || m.is(k, cDid, "replaced") {
					m.installedLastYear(a, items)
					return
				}
			}
			return
		}
		y = m.ctx.Today.Year - 1
		switch m.text(a.at) {
		case "last week", "last month", "el mes pasado":
			y = m.ctx.Today.Year
		case "last spring":
			y = m.seasonYear(3)
		case "last summer":
			y = m.seasonYear(6)
		case "last fall":
			y = m.seasonYear(9)
		case "last winter":
			y = m.seasonYear(12)
		}
	}
	f := m.equipment.get("heater", a.at)
	if f.MaintainedYear == nil {
		f.MaintainedYear = &y
	}
	f.said = true
}

func (m *message) seasonYear(month int) int {
	y := m.ctx.Today.Year
	if int(m.ctx.Today.Month) <= month+2 {
		// the season of this year is not over: the one before is meant
		if int(m.ctx.Today.Month) < month+2 {
			y--
		}
	}
	return y
}

func (m *message) installedLastYear(a attribute, items []mentionOf) {
	a2 := attribute{a.at, "year"}
	owner, old, ok := m.ownerOf(a2, items)
	if !ok || old {
		return
	}
	y := m.ctx.Today.Year - 1
	if m.text(a.at) == "last month" || m.text(a.at) == "last week" {
		y = m.ctx.Today.Year
	}
	f := m.equipment.get(owner, a.at)
	f.InstalledYear, f.said = &y, true
}

// tankWork tells whether the expansion tank was worked on: merely naming it then says nothing more.
func (m *message) tankWork() bool {
	for _, w := range m.work {
		switch w.Action {
		case assess.InstalledTank, assess.ReplacedTank, assess.ChargedTank:
			return true
		}
	}
	return false
}

// installs tells whether an item was put in on the visit: that there was none
// before is no fact of the house any more.
func (m *message) installs(item string) bool {
	for _, w := range m.work {
		if w.Action == assess.InstalledPRV && item == "prv" || w.Action == assess.InstalledTank && item == "expansion_tank" {
			return true
		}
	}
	return false
}

// replacedAt returns where the deed that replaced an item is told, -1 if none.
func (m *message) replacedAt(item string) int {
	for _, w := range m.work {
		switch {
		case w.Action == assess.ReplacedPRV && item == "prv", w.Action == assess.ReplacedTank && item == "expansion_tank",
			w.Action == assess.ReplacedHeater && item == "heater", w.Action == assess.ReplacedDrainValve && item == "drain_valve":
			return w.at
		}
	}
	return -1
}

// newWords tells whether a fact told before the deed is of the new part: "new
// 50 gal electric heater put in".
func (m *message) newWords(a, deed int) bool {
	if m.items[a].sent != m.items[deed].sent {
		return false
	}
	for k := a - 1; k >= m.sents[m.items[a].sent].from && k >= a-4; k-- {
		if m.is(k, cPart, "new") {
			return true
		}
	}
	return false
}

// copulaBefore tells whether "is", "es de" or the like leads to item i: then it is
// said of what stands before.
func (m *message) copulaBefore(i int) bool {
	return m.left(i, 3, false, func(k int) bool {
		switch m.text(k) {
		case "is", "its", "es", "from", "del", "was", "are", "dated", "esta", "tag", "looks", "se ve", "ve":
			return true
		}
		return false
	}) >= 0
}

func (m *message) heaterIn(s int) bool {
	for i := m.sents[s].from; i < m.sents[s].to; i++ {
		if m.is(i, cItem, "heater") {
			return true
		}
	}
	return false
}

// original reads "the PRV is original" beside the year that the house was built.
func (m *message) original(items []mentionOf) {
	built := -1
	for i := range m.items {
		if m.items[i].num == nil || m.items[i].role != roleYear {
			continue
		}
		if m.left(i, 5, false, func(k int) bool {
			switch m.text(k) {
			case "built", "went up", "house", "casa", "construida", "home", "construyo", "construction":
				return true
			}
			return false
		}) >= 0 && m.left(i, 4, false, func(k int) bool { return m.is(k, cItem, "") }) < 0 {
			built = i
		}
	}
	if built < 0 {
		return
	}
	y := int(m.items[built].value)
	for i := range m.items {
		if m.text(i) != "original" && m.text(i) != "original to the house" && m.text(i) != "originales" {
			continue
		}
		for _, x := range items {
			if m.items[x.at].sent == m.items[i].sent && abs(x.at-i) <= 6 && (x.item == "prv" || x.item == "heater" || x.item == "expansion_tank" || x.item == "softener" || x.item == "recirc") {
				f := m.equipment.get(x.item, x.at)
				if f.InstalledYear == nil {
					f.InstalledYear, f.said = &y, true
				}
			}
		}
	}
	m.setRole(built, roleIgnored, "the house's year")
}

// gaugeDoubt are the conditions that doubt a gauge itself.
func (m *message) gaugeDoubt(t string) bool {
	switch t {
	case "slow", "weak", "going", "lazy", "holding", "holds", "stuck", "flat", "drifting", "rough", "good", "fine", "ok", "clean", "quit", "gone", "off":
		return t == "good" || t == "fine" || t == "stuck"
	}
	return true
}

// factual tells whether item j is a fact of some equipment.
func (m *message) factual(j int) bool {
	if m.items[j].num != nil {
		switch m.items[j].role {
		case roleYear, roleAge, roleSize, roleTemp, roleSetting, roleCharge, roleAgo:
			return true
		}
		return false
	}
	return m.is(j, cFuel, "") || m.is(j, cMaterial, "") || m.is(j, cCond, "")
}

// factualRun tells whether only facts, marks and small words lie between two items.
func (m *message) factualRun(a, b int) bool {
	for j := a + 1; j < b; j++ {
		if m.items[j].mark || m.factual(j) || m.is(j, cWord, "") || m.items[j].tags == nil && len(m.text(j)) <= 5 {
			continue
		}
		return false
	}
	return true
}

// askedAbsent reads "prv? never had one".
func (m *message) askedAbsent(i int) bool {
	if m.text(i+1) != "?" {
		return false
	}
	switch m.text(i + 2) {
	case "never had one", "none", "nope", "no", "never had", "nada", "ninguno", "ninguna":
		return m.text(i+2) != "no" || i+3 >= len(m.items) || m.items[i+3].mark
	case "never":
		return m.text(i+3) == "had"
	}
	return false
}

// tankPlan tells whether an expansion tank is to be put in or changed.
func (m *message) tankPlan() bool {
	for _, p := range m.plans {
		if p.Action == assess.InstallTank || p.Action == assess.ReplaceTank {
			return true
		}
	}
	return false
}

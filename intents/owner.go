package intents

import (
	"slices"
	"strings"

	"lazyhand/assess"
)

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
		return item == "expansion_tank" || !tankCond(text)
	}
	return false
}

// tankCond tells whether a condition can only be an expansion tank's: "no air in it".
func tankCond(text string) bool {
	for _, w := range [...]string{" air", "bladder", "schrader"} {
		if strings.Contains(text, w) {
			return true
		}
	}
	return strings.HasPrefix(text, "waterlog") || strings.HasSuffix(text, "aire")
}

// ownerOf finds the item that an attribute is said of.
func (m *message) ownerOf(a attribute, items []mentionOf) (item string, old, ok bool) {
	it := &m.items[a.at]
	best, cost := -1, 1e9
	for k, x := range items {
		if !compatible(a.what, x.item, it.text, it.value) || a.what != "unknown" && x.at < a.at && m.lackedHere(x, it.sent) {
			continue
		}
		xs := m.items[x.at].sent
		if xs != it.sent {
			continue
		}
		if (a.what == "cond" || (a.what == "year" || a.what == "age") && !m.fuelNear(a.at)) && x.at < a.at && m.landmarkItem(x.at, items) {
			continue // "house gauge by the reg bit the dust", "tank above the heater, installed 2020"
		}
		if x.item == "drain_valve" && x.at < a.at && (a.what == "year" || a.what == "age" || a.what == "cond") && m.heaterWith(x.at, a.at) {
			continue // "a 40 gallon gas with a brass drain, 2004, scaled up"
		}
		if a.what == "cond" && x.at > a.at && m.besideOf(x.at) {
			continue // "pinhole above the heater"
		}
		c := float64(abs(x.at - a.at))
		// facts in a row are one thing's: "tank 2 gal, also 2013, good"
		for j := min(x.at, a.at) + 1; j < max(x.at, a.at); j++ {
			if m.factual(j) || m.is(j, cPresent, "") || m.is(j, cPart, "air") || m.is(j, cPart, "thermostat") {
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
				if m.items[x.at].seg != it.seg {
					c += 6
				}
				if m.text(a.at) == "working" || m.text(a.at) == "good" || m.text(a.at) == "bad" {
					c--
				}
			}
			c += 0.5
		} else {
			c += 1.5 * float64(commas)
			if m.factualRun(x.at, a.at) {
				c -= 1.5 * float64(commas)
			}
		}
		for j := min(x.at, a.at) + 1; j < max(x.at, a.at); j++ {
			if m.is(j, cItem, "") && !m.taken(j) && !(m.items[j].point != "" && m.pointUsed(j)) && !(a.what == "cond" && m.landmarkItem(j, items)) && !(m.is(j, cItem, "drain_valve") && m.heaterWith(j, a.at)) {
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
		if h := m.sents[it.sent].header; h >= 0 && h < a.at || limit == 15 && len(items) == 1 {
			limit += 6
		}
		// a condition right after a number is not a condition: "holds 62"
		if m.leadsToNumber(a.at) {
			return "", false, false
		}
	}
	if a.what == "cond" && limit < 12 && m.saidLast(a.at, items) {
		limit = 12
	}
	if a.what == "cond" && (m.saidOfIt(a.at) || m.saidOfSubject(a.at) || m.is(a.at-1, cHint, "both") || m.is(a.at-2, cHint, "both")) {
		limit = 24 // "…, built in 1997, and it is stuck", "… and both look good"
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
	if (a.what == "ago" || a.what == "year" || a.what == "age") && m.saidOfSubject(a.at) {
		limit = 24 // "it is electric, and it was installed nine years ago"
	}
	if a.what == "year" && m.text(a.at+1) == "install" && m.left(a.at, 4, false, m.neverServiced) >= 0 {
		return "heater", false, true // "drain valve brass. Never flushed since 2012 install"
	}
	if best >= 0 && cost <= limit {
		old := items[best].item != "gauge" && (items[best].old || m.oldFact(a.at, items[best].at))
		return items[best].item, old, true
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
		if m.left(a.at, 6, true, func(k int) bool { return m.items[k].point == string(assess.HeaterDrain) }) >= 0 && strings.HasSuffix(it.text, " one") {
			return "drain_valve", false, true // "drain cock on the heater 70, plastic one"
		}
		if slices.ContainsFunc(m.work, func(w workDone) bool { return w.Action == assess.ReplacedDrainValve }) {
			return "drain_valve", false, true // "screwed a brass one in"
		}
		if m.itemIn(it.sent) == "" && (m.pronounClause(a.at) || m.left(a.at, 4, false, func(k int) bool { return strings.HasSuffix(m.text(k), "one") }) >= 0) {
			c := m.carriedEquipment(a.at, a.what)
			return c, false, c != "" // "found the drain. It is brass"
		}
		return "", false, false
	}
	if a.what == "cond" && m.itemIn(it.sent) == "" && (tankCond(it.text) || m.saidOfBladder(a.at)) {
		return "expansion_tank", false, true // "bladder's busted"
	}
	if a.what == "cond" && m.has(cItem, "prv") && m.left(a.at, 4, false, func(k int) bool { return m.is(k, cHint, "prvpart") }) >= 0 {
		return "prv", false, true // "body is corroded"
	}
	if (a.what == "year" || a.what == "age") && m.fuelNear(a.at) && m.pronounClause(a.at) {
		return "heater", false, true // "it's a 2013, 50 gallon, gas"
	}
	if c := m.factLine(a); c != "" {
		return c, false, true
	}
	// "it's a 2005": the item told last
	if m.pronounClause(a.at) || a.what == "age" || a.what == "unknown" || a.what == "year" && m.yearCue(a.at) {
		if a.what == "year" && !m.yearCue(a.at) && !m.itsA(a.at) {
			return "", false, false
		}
		if a.what == "unknown" && m.sentHas(a.at, cPart) {
			return "", false, false // "the needle's bent so who knows"
		}
		if m.ofAnotherNoun(a) {
			return "", false, false
		}
		if c := m.carriedEquipment(a.at, a.what); c != "" {
			return c, m.carriedOld(a.at, items), true
		}
	}
	if a.what == "year" && (m.fuelNear(a.at) || m.left(a.at, 4, false, func(k int) bool { return m.neverServiced(k) && !m.serviceWord(k) }) >= 0) {
		return "heater", false, true // "never flushed, 2011"
	}
	return "", false, false
}

// lackedHere tells whether sentence s says that the house has no such thing, so that no
// fact after it is the thing's: "no check valve, tank good".
func (m *message) lackedHere(x mentionOf, s int) bool {
	return m.items[x.at].sent == s && m.is(x.at, cItem, "") && m.itemAbsent(x.at) && !m.installs(x.item)
}

// leadsToNumber tells whether a word of condition at item i only leads to the number behind
// it: "holds 62".
func (m *message) leadsToNumber(i int) bool {
	if !m.isNum(i + 1) {
		return false
	}
	return m.says(i, "holds", "holding", "works", "working", "passing", "slow", "reads high", "normal") ||
		m.text(i) == "off by" && m.itemIn(m.items[i].sent) != "gauge"
}

// strongCond tells whether a condition is plain even at some distance from its item.
func (m *message) strongCond(i int) bool {
	switch m.text(i) {
	case "good", "fine", "ok", "okay", "gone", "bad", "off", "slow", "weak", "clean", "normal", "great", "quit",
		"going", "perfect", "broken", "broke", "rough", "lazy", "passing", "flat", "junk", "bueno", "bien",
		"buena", "malo", "mala", "sirve", "solid", "working", "works", "holds", "holding", "sound", "happy",
		"fail", "sketchy", "gd", "no good", "no problem", "no problems", "no issues", "stuck", "frozen", "cracked",
		"rusty", "rusted", "bronce", "roto", "rota", "weeping", "seeping", "rusting", "rough ", "going out",
		"cooked", "fried", "debil", "falla", "fading", "drifting", "still good", "still holding", "accurate",
		"spot on", "se fue", "reads high", "reads low", "off by", "ng":
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
	s := &m.sents[m.items[i].sent]
	for k := i - 1; k >= s.from && k >= i-6; k-- {
		if m.text(k) == "from" && m.foreignNoun(k-1) {
			return false // "old sheet from 2022"
		}
		switch m.text(k) {
		case "it", "its", "that", "thats", "this", "one", "es", "esta", "condition", "tag", "label", "sticker",
			"dated", "date", "stamped", "age", "from", "etiqueta", "placa", "year", "ano", "del", "de", "says",
			"hes", "shes":
			return true
		}
	}
	// or begins the line
	return i == s.from || i == s.from+1
}

// sentHas tells whether the sentence of item i has a word of a class.
func (m *message) sentHas(i int, c class) bool {
	s := &m.sents[m.items[i].sent]
	for k := s.from; k < s.to; k++ {
		if m.is(k, c, "") {
			return true
		}
	}
	return false
}

// foreignNoun tells whether the word at item i is a thing that the house's record does
// not hold: "sheet", "arrestor".
func (m *message) foreignNoun(i int) bool {
	if i < 0 || m.items[i].mark || m.items[i].num != nil || len(m.text(i)) < 4 || m.p.lex.never[m.text(i)] {
		return false
	}
	return m.items[i].tags == nil && !m.p.lex.plain[m.text(i)] && !strings.HasPrefix(m.text(i), "dat") || m.is(i, cSkip, "")
}

func (m *message) itsA(i int) bool {
	return m.left(i, 3, false, func(k int) bool {
		t := m.text(k)
		return t == "its" || t == "it" || t == "thats" || t == "es" || t == "age" || t == "year" || t == "ano"
	}) >= 0
}

// carriedEquipment finds the item told last before item at that an attribute fits.
func (m *message) carriedEquipment(at int, what string) string {
	value := 40.0
	if m.isNum(at) {
		value = m.items[at].value
	}
	for k := at - 1; k >= 0; k-- {
		if v, ok := m.val(k, cItem); ok && !m.taken(k) {
			c := m.itemCode(k, v)
			if c != "gauge" && compatible(what, c, "", value) {
				return c
			}
		}
		if m.byPRV(k) && compatible(what, "prv", "", value) {
			return "prv"
		}
		if (m.is(k, cFuel, "tankless") || m.is(k, cFuel, "heat_pump")) && compatible(what, "heater", "", value) {
			return "heater" // "Tankless check at …. It's a 2018"
		}
	}
	return ""
}

// saidOfIt tells whether "it is" or the like stands right before item i.
func (m *message) saidOfIt(i int) bool {
	switch m.text(i - 1) {
	case "its", "it", "it is", "this one":
		return true
	}
	if be(m.text(i-1)) && m.text(i-2) == "this one" {
		return true // "new prv goes in next week, this one is stuck"
	}
	if m.is(i, cHint, "nothere") {
		return true // "ours is fine", in one
	}
	switch m.text(i - 2) {
	case "ours", "hers", "his", "mine", "theirs":
		return be(m.text(i - 1)) // "neighbor's regulator blew, not ours. ours is fine"
	}
	return be(m.text(i-1)) && m.text(i-2) == "it" || m.text(i-1) == "esta" && (m.text(i-2) == "y" || m.text(i-2) == "ya")
}

// saidOfSubject tells whether a fact at item i is the predicate of a clause that names
// nothing: "…, was installed in 2012", "… and appears to be in good condition", "and it
// was put in nine years ago".
func (m *message) saidOfSubject(i int) bool {
	s, k, verbs := m.sents[m.items[i].sent], i-1, 0
	for ; k > s.from && k >= i-7; k-- {
		switch t := m.text(k); {
		case m.is(k, cHint, "wentin"), m.is(k, cHint, "appears"), be(t), m.is(k, cDid, "installed"):
			verbs++
		case t == "it", t == "it is", t == "it was", t == "its":
			return k > s.from && (m.items[k-1].mark || m.text(k-1) == "and")
		case t == "in", t == "to", t == "around", t == "about":
		default:
			return verbs > 0 && (m.items[k].mark || t == "and")
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
			return m.items[k].seg == m.items[i].seg
		}
		return false
	}) >= 0
}

// gaugeDoubt are the conditions that doubt a gauge itself.
func (m *message) gaugeDoubt(t string) bool {
	switch t {
	case "wide open", "stuck open", "stuck wide open":
		return false
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
		small := m.items[j].tags == nil && len(m.text(j)) <= 5 || m.meets(j, betweenFacts) || be(m.text(j)) || m.text(j) == "never"
		if small || m.items[j].mark || m.factual(j) || m.is(j, cDid, "flushed") || m.isAny(j, cPart, "air", "thermostat") {
			continue
		}
		return false
	}
	return true
}

// betweenFacts are the classes of what may stand between two facts of one thing.
var betweenFacts = setOf(cWord, cDeterminer, cPresent)

// saidOfBladder tells whether the condition at item i is said of a bladder: "bladder's busted".
func (m *message) saidOfBladder(i int) bool {
	return strings.HasPrefix(m.text(i-1), "bladder") || be(m.text(i-1)) && strings.HasPrefix(m.text(i-2), "bladder")
}

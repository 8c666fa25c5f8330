package intents

import "lazyhand/assess"

// symptomSeen is a symptom on its way to a statement.
type symptomSeen struct {
	at int
	assess.Symptom
}

// findSymptoms reads what was seen, heard and smelled, and what was not.
func (m *message) findSymptoms() {
	for i := range m.items {
		it := &m.items[i]
		if it.mark || it.num != nil || it.site {
			continue
		}
		if m.sents[it.sent].asking && !m.sents[it.sent].tells {
			continue
		}
		name, ok := m.symptomAt(i)
		if !ok || m.ofSomethingElse(i) || m.lookedFor(i) {
			continue
		}
		absent := m.absent(i, name)
		if absent && m.is(i, cHint, "denies") && m.toldOtherwise(name) {
			continue
		}
		m.addSymptom(i, name, absent)
	}
}

// toldOtherwise tells whether a phrase like "water's clear" or "everything's dry" only
// ends what the message tells of the same matter: its colour, a leak mended.
func (m *message) toldOtherwise(name assess.SymptomName) bool {
	if name == assess.Leak {
		for _, w := range m.work {
			if w.Action == assess.RepairedLeak {
				return true
			}
		}
	}
	for i := range m.items {
		if m.is(i, cHint, "denies") {
			continue
		}
		if name == assess.DarkWater && (m.is(i, cColor, "") || m.is(i, cSym, "dark_water") || m.is(i, cSym, "rusty_water")) && !m.items[i].site || name == assess.Leak && (m.is(i, cSym, "leak") || m.is(i, cSym, "no_water")) {
			return true
		}
	}
	return false
}

func (m *message) addSymptom(i int, name assess.SymptomName, absent bool) {
	for k := range m.symptoms {
		s := &m.symptoms[k]
		if s.Symptom.Symptom == name {
			if s.Absent && !absent {
				s.Absent = false
			}
			return
		}
	}
	m.symptoms = append(m.symptoms, symptomSeen{i, assess.Symptom{Symptom: name, Absent: absent}})
	m.note(i, string(name), "symptom")
}

// reliefNear tells whether the relief valve is what the clause of item i is about.
func (m *message) reliefNear(i int) bool {
	if !m.kinds.has(cRelief) {
		return false
	}
	s := m.sents[m.items[i].sent]
	it := i - 1
	for t := m.text(it); t == "been" || t == "has" || t == "still" || t == "always" || t == "just" || t == "constantly" || t == "is" || t == "was"; t = m.text(it) {
		it--
	}
	if t := m.text(it); t == "its" || t == "it" || t == "it is" || t == "theyre" {
		for k := it - 1; k >= s.from; k-- {
			if m.is(k, cRelief, "") {
				return true
			}
		}
	}
	for k := i - 1; k >= s.from && k >= i-9; k-- {
		if m.is(k, cRelief, "") {
			return true
		}
		if m.items[k].mark && m.text(k) != ":" && m.text(k) != "=" && m.text(k) != "-" {
			break
		}
		if m.is(k, cItem, "") && !m.is(k, cItem, "heater") || m.items[k].point != "" || m.items[k].num != nil && m.items[k].role != roleIgnored {
			break // "la válvula de alivio es de 150 psi y gotea" tells a rating
		}
	}
	for k := i + 1; k < s.to && k <= i+5; k++ {
		if m.is(k, cRelief, "") {
			return true
		}
		if m.items[k].mark || m.items[k].num != nil {
			break
		}
		if m.is(i, cBlocked, "") && m.is(k, cDischarge, "") {
			continue // "con una llave cerrada la descarga de la T&P"
		}
		switch m.text(k) {
		case "at", "from", "on", "the", "out of", "de", "la", "out", "of", "en", "by", "coming", "her", "his", "por", "del", "off", "into", "in", "to", "a", "el", "al":
		default:
			return false
		}
	}
	return false
}

// symptomAt reads a symptom at item i.
func (m *message) symptomAt(i int) (assess.SymptomName, bool) {
	t := m.text(i)
	if m.is(i, cRelief, "") && m.items[i].role != roleTaken {
		return "", false
	}
	if !namesToilet(t) && m.reliefNear(i) {
		if m.is(i, cBlocked, "") {
			return assess.ReliefBlocked, true
		}
		if m.is(i, cHint, "spout") && m.anyIn(m.items[i].sent, func(k int) bool { return abs(k-i) <= 8 }, setOf(cBlocked)) {
			return "", false // "T&P discharge is capped": the pipe
		}
		if m.is(i, cTarget, "") && m.isNum(i+1) {
			return "", false // "la T&P abre a 150"
		}
		if m.is(i, cDischarge, "") || m.is(i, cDry, "") || m.is(i, cSym, "leak") {
			return assess.ReliefDischarge, true
		}
	}
	if m.toilet(i) {
		if m.repaired(i) {
			return "", false
		}
		return assess.Leak, true
	}
	switch t {
	case "low", "baja", "bajita", "weak", "poor", "lousy", "wk":
		if t == "wk" && m.is(i-1, cClaim, "says") && m.closes(i) {
			return assess.LowFlow, true
		}
		if !m.isNum(i-1) && !m.isNum(i+1) && m.left(i, 3, false, func(k int) bool {
			switch m.text(k) {
			case "pressure", "presion", "flow", "flujo", "prssr":
				return true
			}
			return false
		}) >= 0 {
			return assess.LowFlow, true
		}
	case "knock", "black":
		if !m.denied2(i) && !m.notColor(i) && !(t == "black" && m.waterNear(i)) && !(t == "knock" && m.pipeNear(i)) {
			return "", false
		}
		if t == "black" && !m.waterNear(i) {
			return assess.DarkWater, true
		}
	}
	if m.bursts(i) && !m.repaired(i) {
		return assess.Leak, true
	}
	v, ok := m.val(i, cSym)
	if !ok {
		if c, ok := m.val(i, cColor); ok && m.notColor(i) {
			if c == "dark" {
				return assess.DarkWater, true
			}
			return assess.RustyWater, true
		}
		// black … water, water … black
		if c, ok := m.val(i, cColor); ok && m.waterNear(i) {
			if c == "dark" {
				return assess.DarkWater, true
			}
			return assess.RustyWater, true
		}
		return "", false
	}
	switch assess.SymptomName(v) {
	case assess.Leak:
		if m.repaired(i) || m.is(i, cCond, "") && m.isItemNear(i) && (t == "weeping" || t == "seeping") {
			return "", false
		}
		if n := m.text(i + 1); t == "drips" && m.toks[m.items[i].tok].text != t && (n == "to" || m.isNum(i+1) || n == "from") {
			return "", false // "prssr drps to 40"
		}
	case assess.LowFlow:
		if m.is(i, cCond, "") && m.isItemNear(i) && !m.waterNear(i) && !m.fixtureNear(i) {
			return "", false
		}
		if t == "low flow" && (m.text(i+1) == "toilet" || m.text(i+1) == "shower head" || m.text(i+1) == "head") {
			return "", false
		}
		if (t == "no pressure" || t == "sin presion") && m.isNum(i+1) {
			return "", false
		}
		if t == "slow fill" {
			return assess.LowFlow, true
		}
	case assess.RustyWater:
		if m.is(i, cCond, "") && m.isItemNear(i) && !m.waterNear(i) {
			return "", false
		}
		if t == "rusty" || t == "rust" {
			if m.text(i-1) == "needle" || m.text(i+1) == "pipe" || m.text(i+1) == "nipple" || m.text(i+1) == "nipples" || m.text(i+1) == "fitting" {
				return "", false
			}
		}
	case assess.Creep:
		if t == "climbed" && (m.isNum(i+1) && m.items[i+1].unit == "other" || m.text(i+1) == "to" && m.left(i, 6, true, func(k int) bool { return m.is(k, cState, "firing") }) >= 0) {
			return "", false // "climbed four floors", "with the burner going it climbed to 112"
		}
		if (t == "rises" || t == "rising" || t == "climbs" || t == "climbed" || t == "climbing") && m.heatingUp(i) {
			return "", false
		}
	case assess.Hammer:
		if t == "hammers" || t == "golpe" {
			break
		}
		if (t == "knocks" || t == "bang" || t == "hammer") && (m.text(i+1) == "on" && m.text(i+2) == "door" || m.text(i+1) == "loud") {
			return "", false
		}
	case assess.NoWater:
		if m.is(i, cHint, "drop") && m.anyIn(m.items[i].sent, func(k int) bool { return k != i && (m.is(k, cHint, "denies") || m.is(k, cDry, "")) }, setOf(cSym, cDry)) {
			return "", false // "under the sink it's all dry, not a drop"
		}
		if m.text(i) == "no water" {
			switch m.text(i + 1) {
			case "on":
				if m.right(i, 4, true, func(k int) bool { return m.is(k, cHint, "everywhere") }) < 0 {
					return "", false
				}
			case "hammer", "running", "leaks", "leak", "damage", "pressure", "heater", "used", "use":
				return "", false
			}
		}
		if m.text(i+1) == "in" && m.inVessel(i+2) || (t == "water out" || t == "water is out") && m.text(i+1) == "of" {
			return "", false
		}
		if m.text(i) == "sin agua" && m.text(i+1) == "caliente" || m.text(i+1) == "hot" {
			return "", false
		}
	case assess.Swings:
		if d := m.text(i - 1); t == "swing" && (d == "the" || d == "a" || d == "porch") {
			return "", false // "the white house with the swing"
		}
		if t == "up and down" && m.text(i+1) == "stairs" || t == "varies" && !m.pressureNear(i) && false {
			return "", false
		}
	}
	return assess.SymptomName(v), true
}

// inVessel tells whether the words at i name a place where water is not wanted:
// "no water in the pan".
func (m *message) inVessel(i int) bool {
	switch m.text(i) {
	case "the", "her", "his", "their", "that":
		i++
	}
	switch m.text(i) {
	case "pan", "drain pan", "tank", "bucket", "crawl", "crawlspace", "basement", "garage", "yard", "floor", "ceiling", "attic", "expansion tank", "bladder":
		return true
	}
	return m.is(i, cItem, "")
}

func (m *message) heatingUp(i int) bool {
	return m.right(i, 6, true, func(k int) bool { return m.is(k, cState, "firing") || m.text(k) == "heats" }) >= 0 && m.left(i, 8, true, func(k int) bool { return m.is(k, cStatic, "") }) < 0
}

func (m *message) pressureNear(i int) bool {
	for k := max(0, i-8); k < min(len(m.items), i+5); k++ {
		switch m.text(k) {
		case "pressure", "prssr", "presion", "gauge", "needle", "shower", "water", "agua":
			return true
		}
	}
	return false
}

// isItemNear tells whether a piece of equipment stands in the clause of item i.
func (m *message) isItemNear(i int) bool {
	s := m.sents[m.items[i].sent]
	for k := max(s.from, i-6); k < min(s.to, i+3); k++ {
		if k != i && m.is(k, cItem, "") && m.separators(min(k, i), max(k, i)) == 0 && !(m.items[k].point != "" && m.pointUsed(k)) {
			return true
		}
	}
	return false
}

func (m *message) fixtureNear(i int) bool {
	s := m.sents[m.items[i].sent]
	for k := max(s.from, i-4); k < min(s.to, i+3); k++ {
		if k != i && (m.is(k, cPoint, "bath") || m.is(k, cPoint, "kitchen") || m.is(k, cFixture, "")) && m.text(k) != "valve" {
			return true
		}
	}
	return false
}

// waterNear tells whether water is what the colour at item i is of.
func (m *message) waterNear(i int) bool {
	s := m.sents[m.items[i].sent]
	for k := i + 1; k < s.to && k <= i+2; k++ {
		if m.is(k, cWater, "") {
			return true
		}
	}
	for k := i - 1; k >= s.from && k >= i-7; k-- {
		if m.is(k, cWater, "") {
			return true
		}
		if m.items[k].mark && m.text(k) != "," && m.text(k) != ":" {
			break
		}
		if m.items[k].num != nil {
			break
		}
	}
	return false
}

// lookedFor tells whether a symptom is only what is to be looked for: "check for creep
// again in two weeks".
func (m *message) lookedFor(i int) bool {
	if m.text(i-1) != "for" {
		return false
	}
	switch m.text(i - 2) {
	case "check", "watch", "look", "listen", "test", "checking", "watching", "looking", "listening", "testing", "eye out":
		return true
	}
	return m.text(i-2) == "out" && m.text(i-3) == "eye"
}

// ofSomethingElse tells whether what drips or hums at item i is no part of a
// house: "the truck is leaking oil".
func (m *message) ofSomethingElse(i int) bool {
	s := m.sents[m.items[i].sent]
	for k := i - 1; k >= s.from && k >= i-6; k-- {
		it := &m.items[k]
		if it.point != "" || it.kinds.has(cItem) || it.kinds.has(cPipe) || it.num != nil {
			return false
		}
		for j := it.tok; j < it.tok+it.n && !it.mark && !it.site; j++ {
			if m.wordCues(j).has(cueForeign) {
				return true
			}
		}
	}
	return false
}

func (m *message) negRight(k int) bool {
	switch m.text(k) {
	case "not", "isnt", "no", "wasnt":
		return true
	}
	return false
}

// denied2 tells whether "no" stands right before item i in a list of symptoms.
func (m *message) denied2(i int) bool {
	t := m.text(i - 1)
	if t != "no" && t != "sin" && t != "zero" && t != "or" {
		return false
	}
	if next := i + 1; next < len(m.items) && !m.items[next].mark && m.text(next) != "no" && m.text(next) != "or" && m.text(next) != "and" {
		return false
	}
	return true
}

func (m *message) pipeNear(i int) bool {
	for k := max(0, i-5); k < min(len(m.items), i+6); k++ {
		if m.is(k, cPipe, "") && m.items[k].sent == m.items[i].sent {
			return true
		}
	}
	return false
}

package intents

import (
	"slices"
	"strings"

	"lazyhand/assess"
)

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
		if !ok || name != assess.GasSmell && m.ofSomethingElse(i) || m.supposed(i) {
			continue
		}
		if m.isMark(i+1, ":") && m.right(i, 8, true, func(k int) bool { return m.is(k, cSym, "") }) >= 0 {
			continue // "Ruido: no hay golpes": the head of its line
		}
		absent := m.absent(i, name)
		if m.lookedFor(i) {
			if !m.cleared(i) {
				continue
			}
			absent = true // "opened it to check for rust, clear as a bell"
		}
		if absent && m.is(i, cHint, "denies") && m.toldOtherwise(name) {
			continue
		}
		m.addSymptom(i, name, absent)
	}
	m.readSigns()
	m.blockedOnly()
}

// blockedOnly drops a discharge that is only told of a relief valve that is blocked:
// "no way for it to dump, outlet's plugged", "not capped, runs to the floor drain".
func (m *message) blockedOnly() {
	for _, b := range m.symptoms {
		if b.Symptom.Symptom != assess.ReliefBlocked {
			continue
		}
		m.symptoms = slices.DeleteFunc(m.symptoms, func(d symptomSeen) bool {
			if d.Symptom.Symptom != assess.ReliefDischarge || m.items[d.at].sent != m.items[b.at].sent {
				return false
			}
			t := m.text(d.at - 1)
			return m.text(d.at) == "runs" || t == "to" || t == "cant" || m.is(d.at, cBlocked, "") || strings.HasPrefix(m.text(d.at), "descarga")
		})
		return
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
		if m.is(i, cHint, "denies") || m.is(i, cHint, "drop") {
			continue
		}
		switch {
		case name == assess.DarkWater && !m.items[i].site && (m.is(i, cColor, "") || m.isAny(i, cSym, "dark_water", "rusty_water")):
			return true
		case name == assess.Leak && m.isAny(i, cSym, "leak", "no_water"):
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
			} else if absent && name != assess.Leak && m.hereNow(i) {
				s.Absent = true
			}
			return
		}
	}
	m.symptoms = append(m.symptoms, symptomSeen{i, assess.Symptom{Symptom: name, Absent: absent}})
	m.note(i, string(name), "symptom")
}

// hereNow tells whether the symptom at item i is told of today or of this very house: "smelled
// gas last week, no gas smell today".
func (m *message) hereNow(i int) bool {
	return m.right(i, 5, true, func(k int) bool {
		return m.items[k].seg == m.items[i].seg && (m.is(k, cNow, "") || m.says(k, "today", "here", "this one", "hoy", "aqui"))
	}) >= 0
}

var symptomOpener = opener{
	classes: setOf(cSym, cColor, cBlocked, cDischarge, cDry, cFitting),
	words:   []string{"takes", "took", "tarda", "low", "baja", "bajita", "weak", "poor", "lousy", "wk", "knock", "black"},
}

// symptomAt reads a symptom at item i.
func (m *message) symptomAt(i int) (assess.SymptomName, bool) {
	if !m.begins(i, keySymptom|keyRefills) {
		return "", false
	}
	t := m.text(i)
	if m.is(i, cSym, "creep") && m.is(i+1, cHint, "lookout") && m.closes(i+1) && m.laterSym(i, "creep") {
		return "", false // "Creep check, ten minutes with everything shut: no creep"
	}
	if m.is(i, cRelief, "") && m.items[i].role != roleTaken {
		return "", false
	}
	if !namesToilet(t) && m.reliefNear(i) {
		if m.is(i, cBlocked, "") {
			if k := m.right(i, 3, false, func(k int) bool { return m.is(k, cItem, "") && !m.is(k, cItem, "heater") }); k >= 0 && m.items[k].seg == m.items[i].seg {
				return "", false // "T&P dumping, somebody had valved off the exp tank"
			}
			return assess.ReliefBlocked, true
		}
		if m.is(i, cHint, "spout") && m.anyIn(m.items[i].sent, func(k int) bool { return abs(k-i) <= 8 }, setOf(cBlocked)) {
			return "", false // "T&P discharge is capped": the pipe
		}
		if m.is(i, cTarget, "") && m.isNum(i+1) {
			return "", false // "la T&P abre a 150"
		}
		if m.says(i, "runs", "run") && m.says(i+1, "uphill", "up", "outside", "through", "along") {
			return "", false // "T&P line runs uphill": where the pipe goes
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
	if oneOf(t, "takes", "took", "tarda") && m.isNum(i+1) && oneOf(m.items[i+1].unit, "min", "hour", "other") && m.text(i+2) == "to" && m.says(i+3, "fill", "fills") {
		return assess.LowFlow, true // "takes 20 min to fill the tub"
	}
	switch t {
	case "low", "baja", "bajita", "weak", "poor", "lousy", "wk":
		water := func(k int) bool { return m.is(k, cFixture, "") || m.items[k].point != "" || m.is(k, cWater, "") }
		if t == "wk" && m.closes(i) && (m.is(i-1, cClaim, "says") || m.left(i, 4, false, water) >= 0) {
			return assess.LowFlow, true // "cstmr sz shwr s wk"
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
		if !m.denied2(i) && !m.notColor(i) && !(t == "black" && m.waterNear(i)) && !(t == "knock" && (m.pipeNear(i) || m.signIn(i, signShuts))) {
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
		if namesToilet(t) && m.atTimes(i) {
			return "", false // "a foghorn whenever a toilet refills"
		}
		if m.repaired(i) || m.is(i, cCond, "") && m.isItemNear(i) && (t == "weeping" || t == "seeping") {
			return "", false
		}
		if strings.Contains(t, "revento") && m.is(i, cCond, "") && m.itemIn(m.items[i].sent) == "expansion_tank" {
			return "", false // "el tanque se reventó por dentro"
		}
		if m.looksSo(i) {
			return "", false // "wtr lks inky"
		}
		if n := m.text(i + 1); t == "drips" && m.toks[m.items[i].tok].text != t && (n == "to" || m.isNum(i+1) || n == "from") {
			return "", false // "prssr drps to 40"
		}
	case assess.LowFlow:
		if m.is(i, cCond, "") && (m.isItemNear(i) || m.itemIn(m.items[i].sent) != "" && !m.pressureNear(i)) && !m.waterNear(i) && !m.fixtureNear(i) {
			return "", false
		}
		if m.signIn(i, signEndless) {
			return assess.Leak, true // "won't shut all the way, a bit of a dribble left"
		}
		if m.signIn(i, signFirm) {
			return assess.Swings, true // "from firehose to drizzle and back"
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
	case assess.DarkWater:
		if strings.Contains(t, "discolo") && m.signIn(i, signRust) && !m.signIn(i, signDark) {
			return assess.RustyWater, true
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
		if t == "climbed" && m.isNum(i+1) && m.items[i+1].unit == "other" {
			return "", false // "climbed four floors"
		}
		if m.text(i+1) == "to" && m.left(i, 6, true, func(k int) bool { return m.is(k, cPeak, "") || t == "climbed" && m.is(k, cState, "firing") }) >= 0 {
			return "", false // "red needle climbed to 150", "with the burner going it climbed to 112"
		}
		if (t == "rises" || t == "rising" || t == "climbs" || t == "climbed" || t == "climbing") && m.heatingUp(i) {
			return "", false
		}
	case assess.Hammer:
		if it := m.itemIn(m.items[i].sent); it == "expansion_tank" && (m.text(i+1) == "like" || m.text(i+1) == "when" && m.is(i, cCond, "") || m.text(i-1) == "it" || m.is(i-1, cItem, "")) {
			return "", false // "tank's full of water, thunks like a log"
		}
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
		if m.kinds.has(cRelief) && m.reliefIn(m.items[i].sent) {
			return assess.ReliefDischarge, true // "felt the relief pipe, not a drop"
		}
		if t == "nada de agua" && m.is(i+1, cColor, "") {
			return "", false // "nada de agua negra"
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
	case assess.GasSmell:
		if strings.Contains(t, "rotten") && m.waterNear(i) {
			return "", false // "hot water smells like rotten eggs": the anode's
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

// laterSym tells whether a symptom is told again behind item i in its sentence.
func (m *message) laterSym(i int, sym string) bool {
	for k := i + 1; k < m.sents[m.items[i].sent].to; k++ {
		if m.is(k, cSym, sym) {
			return true
		}
	}
	return false
}

package intents

import (
	"slices"
	"strings"

	"lazyhand/assess"
)

// Lists of the lexicon that these rules know.
var (
	listGaugeShows = listOf("gauge shows")
	listSinceThen  = listOf("since then")
	listCallsSo    = listOf("calls so")
	listReadBy     = listOf("read by")
	listInsteadOf  = listOf("instead of")
	listWasFailing = listOf("was failing")
)

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
	switch a.what {
	case "cond":
		if m.noCondition(a.at, owner) {
			return
		}
		if t := m.text(a.at); owner == "drain_valve" && (strings.HasPrefix(t, "weep") || strings.HasPrefix(t, "seep")) {
			m.addSymptom(a.at, assess.Leak, false) // "Drain valve is plastic and weeping."
			return
		}
	case "year":
		if m.noInstalledYear(a.at, owner) {
			return
		}
	case "material":
		if m.materialOfOld(a.at, owner) {
			return
		}
	}
	f := m.equipment.get(owner, a.at)
	if m.otherOfTwo(a.at, owner, f, a.what) || !m.write(a, f) {
		return
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

// materialOfOld tells whether the material at item i, told behind another, is that of the part that came out:
// "Brass drain valve installed, old plastic one broke", "a brass one, as the plastic one had seized".
func (m *message) materialOfOld(i int, owner string) bool {
	v, _ := m.val(i, cMaterial)
	f := m.equipment.find(owner)
	if f == nil || f.Material == "" || string(f.Material) == v {
		return false
	}
	if m.says(i-1, "de") {
		return m.says(i-2, "el", "la", "viejo", "vieja") // but "por uno de bronce"
	}
	if strings.HasSuffix(m.text(i), " one") {
		failed := m.meets(i+1, setOf(cCond, cSym)) || m.inList(i+1, listWasFailing)
		return m.says(i-1, "the", "that", "old", "their", "his", "her") || m.text(i-1) != "a" && failed
	}
	return m.inList(i-1, listInsteadOf)
}

// write writes an attribute down, unless something better is known; it tells whether what
// was said of the item so far lets more be said of it.
func (m *message) write(a attribute, f *fact) bool {
	it := &m.items[a.at]
	switch a.what {
	case "year":
		if f.InstalledYear != nil {
			return false
		}
		y := m.fullYear(it.value)
		f.InstalledYear = &y
	case "age", "ago":
		if f.InstalledYear == nil {
			y := m.yearBack(it)
			f.InstalledYear = &y
		}
	case "size":
		v := it.value
		f.SizeGal = &v
	case "fuel":
		if f.Fuel == assess.Tankless || f.Fuel == assess.HeatPump {
			return false
		}
		v, _ := m.val(a.at, cFuel)
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
		if v = m.condValue(a.at, v); v == "" {
			return false
		}
		if f.Condition == assess.Failed || f.Condition == assess.Suspect && v != "failed" {
			f.said = true
			return false
		}
		f.Condition = assess.Condition(v)
	case "unknown":
		f.AgeUnknown = true
	}
	return true
}

// noCondition tells whether what may be the condition of an item is something else.
func (m *message) noCondition(i int, owner string) bool {
	t := m.text(i)
	sent := m.items[i].sent
	switch {
	case oneOf(t, "stuck", "holding", "working") && (m.says(i+1, "the", "my", "a") || beginsWith(m.text(i+1), "my ")): // "stuck my gauge on …"
	case m.says(i+1, "my", "your", "our") || m.says(i, "works", "working") && m.inList(i-1, listPeople): // "wore out my knees", "owner works nights"
	case m.says(i-1, "it", "this", "that") && m.inList(i-2, listCallsSo): // "customer calls it weak": the water
	case owner != "gauge" && strings.HasSuffix(t, "grain of salt"): // said of the number
	case m.strangersOwn(i):
	case t == "stuck" && m.says(i+1, "at", "on") && m.left(i, 6, true, func(k int) bool { return m.is(k, cPeak, "") && m.items[k].seg == m.items[i].seg }) >= 0: // "max needle stuck at 128"
	case strings.HasSuffix(t, "doing anything") && !m.isAny(i-1, cItem, "prv", "expansion_tank", "tank"): // "heater isn't doing anything"
	case owner == "gauge" && m.inList(i, listGaugeShows):
	case m.equipment.absent(owner):
	case m.sents[sent].question && owner != m.itemIn(sent):
	case m.sents[sent].question && m.says(m.sents[sent].from, "is", "are", "was", "esta"): // "is the reg screw frozen?"
	case owner == "prv" && m.is(i, cCond, "failed") && m.freedLater(i): // "screw was frozen, worked it loose"
	case m.onlyIf(i): // "wants to know if her regulator is bad"
	case m.adverb(i) || m.otherNoun(i):
	// "flushed the heater, lots of scale came out"
	case strings.Contains(t, "scale") && (m.says(i+1, "came", "out", "came out", "comes out") || m.marksOf(i)):
	// "forty eight at the shower, she calls it weak"
	case m.is(i, cSym, "low_flow") && slices.ContainsFunc(m.symptoms, func(s symptomSeen) bool { return s.at == i }):
	case (m.is(i, cDischarge, "") || m.is(i, cBlocked, "")) && m.reliefNear(i): // "tpr line frozen solid"
	// "rusty at the tub"
	case strings.HasPrefix(t, "rust") && m.says(i+1, "at", "in", "from") && m.itemIn(sent) == "" &&
		m.right(i, 3, false, func(k int) bool { return m.meets(k, taps) }) >= 0:
	// "it isn't black, it's rusty"
	case strings.HasPrefix(t, "rust") && m.left(i, 6, true, func(k int) bool { return m.is(k, cColor, "") }) >= 0:
	case strings.HasPrefix(t, "rust") && m.negRight(i-1) && m.clauseStart(i) == i-1: // "not rusty, not black"
	case m.is(i, cSym, "rusty_water") && m.waterNear(i) && !m.is(i-1, cItem, ""): // "el agua sale cafecita, como con óxido"
	case t == "no complaints" && i == m.sents[sent].from: // "PRV 11 years old. No complaints": of nobody
	case m.says(i, "ok", "okay") && m.right(i, 4, true, func(k int) bool { return m.items[k].takesOver }) >= 0: // "heater 2009, ok 2012"
	case m.text(i-1) == "as":
	// "all good at 16 Gable Ct, pumped the tank up"
	case m.text(i-1) == "all" && m.is(i, cCond, "good") && (m.says(i+1, "here", "at", "on", "over") || m.items[min(i+1, len(m.items)-1)].site) && !m.is(i-2, cItem, ""):
	case t == "going" && m.says(i+1, "to", "in", "on"):
	// "they are gone south till fall"
	case strings.HasSuffix(t, " south") &&
		m.left(i, 3, false, func(k int) bool { return m.says(k, "they", "theyre", "theyve") || m.inList(k, listPeople) }) >= 0:
	case owner != "gauge" && strings.HasSuffix(t, "dropped"): // "prv was dropped to 60"
	default:
		return false
	}
	return true
}

// marksOf tells whether the scale at item i is the marks that a setting is read by, no lime: "from 42 to 55 by
// the scale on it", "has a scale on it that says 55".
func (m *message) marksOf(i int) bool {
	return m.is(i-1, cDeterminer, "") && (m.inList(i-2, listReadBy) ||
		m.right(i, 2, false, func(k int) bool { return m.is(k, cHint, "stamp") || m.is(k, cClaim, "says") }) >= 0)
}

// strangersOwn tells whether the clause of the condition at item i is about a thing that is no
// equipment, which opens it: "pool is green", "phone died twice".
func (m *message) strangersOwn(i int) bool {
	k := i - 1
	for k >= 0 && (m.inList(k, listLinks) || m.says(k, "all", "just", "already", "still")) {
		k--
	}
	if !m.noEquipment(k) || m.oneHere(k) {
		return false
	}
	first := k - 1
	for first >= 0 && (m.is(first, cDeterminer, "") || m.is(first, cHint, "possessive")) {
		first--
	}
	return first < m.clauseStart(i)
}

// onlyIf tells whether the condition at item i is what is asked or feared: "she'll call if
// it's still bad in a week".
func (m *message) onlyIf(i int) bool {
	k := m.left(i, 7, true, func(k int) bool { return m.says(k, "if", "whether") })
	return k >= 0 && m.items[k].seg == m.items[i].seg
}

// noInstalledYear tells whether a year is not that in which the owner was installed.
func (m *message) noInstalledYear(i int, owner string) bool {
	if m.text(i+1) == "model" && m.right(i, 9, true,
		func(k int) bool { return m.items[k].role == roleYear && m.is(k-1, cDid, "installed") }) > 0 {
		return true // "a 2019 model but it was installed 2021"
	}
	if m.says(i+1, "house", "home", "build", "casa") && !m.is(i-1, cItem, "") {
		return true // "1995 house, heater holds 50 gallons"
	}
	return m.left(i, 3, false, func(k int) bool {
		if m.says(i+1, "told", "said", "quoted") {
			return true // "a fellow in 2015 told her"
		}
		return m.inList(k, listSinceThen) && !m.oneHere(k) && m.items[k].seg == m.items[i].seg && !m.sinceInstalled(i, k, owner) && !m.partFor(k) &&
			!(m.text(k) == "built" && m.partBuilt(k))
	}) >= 0
}

// sinceInstalled tells whether the word at item k, "since" or the like, leads to the year at
// item i in which the owner was installed: "prv's been in there since 2009", "never flushed
// since 2012 install".
func (m *message) sinceInstalled(i, k int, owner string) bool {
	if m.text(k) == "since" && m.says(i+1, "install", "installed") {
		return true
	}
	named := func(j int) bool {
		v, ok := m.val(j, cItem)
		return ok && m.itemCode(j, v) == owner
	}
	if !m.says(k, "since", "been", "here") || owner == "" || !oneOf(m.itemIn(m.items[i].sent), owner, "") && m.left(i, 5, false, named) < 0 {
		return false
	}
	return m.is(i-2, cItem, "") || m.left(i, 4, false, func(j int) bool { return m.says(j, "there", "in") || m.is(j, cHint, "inuse") }) >= 0
}

// yearBack returns the year that lies an age, or a time gone by, behind today.
func (m *message) yearBack(it *item) int {
	if days := unitDays(it.unit); days > 0 && it.unit != "year" {
		return m.ctx.Today.AddDays(-int(it.value * float64(days))).Year
	}
	return m.ctx.Today.Year - int(it.value+0.5)
}

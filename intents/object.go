package intents

import (
	"strings"

	"lazyhand/assess"
)

// workOf names the deed that a verb and its object make.
func (m *message) workOf(v *verb) (assess.Action, string, bool) {
	obj := v.object
	s := m.items[v.at].sent
	carried := false
	if obj == "" && (v.what == "set" || v.what == "charged") {
		obj = m.partOfDeed(v)
	}
	if obj == "" {
		obj = m.headedBy(v)
	}
	if obj == "" && (v.what == "replaced" || v.what == "installed" || v.what == "rebuilt" || v.what == "set" || v.what == "charged") {
		n := m.right(v.at, 3, true, m.isNum)
		if n >= 0 && m.items[n].unit == "gal" && m.items[n].value < 15 && (v.what == "installed" || v.what == "replaced") {
			obj = "expansion_tank" // "pulled the old tank, hung a 2 gal"
			if m.left(v.at, 6, true, func(k int) bool { return m.is(k, cPart, "old") }) >= 0 {
				return assess.ReplacedTank, obj, true
			}
		} else if o, _ := m.topicBefore(v.at); o != "" && (m.pronoun(v.at) || m.partAfter(v.at, "old")) {
			obj = o
		} else {
			obj, carried = m.carried(s), true
		}
	}
	switch v.what {
	case "replaced":
		if carried && m.leakPart(v.at) {
			return assess.RepairedLeak, "leak", true
		}
		switch obj {
		case "prv":
			if v.objAt >= 0 && m.is(v.objAt, cPart, "strainer") || m.partAfter(v.at, "strainer") {
				return assess.RebuiltPRV, "prv", true
			}
			return assess.ReplacedPRV, obj, !carried || m.pronoun(v.at) || m.partAfter(v.at, "old")
		case "expansion_tank":
			return assess.ReplacedTank, obj, !carried || m.pronoun(v.at) || m.partAfter(v.at, "old")
		case "heater":
			if carried {
				return "", "", false
			}
			return assess.ReplacedHeater, obj, true
		case "drain_valve":
			return assess.ReplacedDrainValve, obj, true
		case "leak":
			return assess.RepairedLeak, obj, true
		}
		if m.leakPart(v.at) {
			return assess.RepairedLeak, "leak", true
		}
	case "installed":
		if carried && m.right(v.at, 3, false, func(k int) bool { return m.is(k, cMaterial, "") && m.text(k+1) == "one" }) >= 0 {
			return assess.ReplacedDrainValve, "drain_valve", true // "put a brass one in"
		}
		if (obj == "" || carried) && m.partRight(v.at) {
			return assess.RepairedLeak, "leak", true // "toilet ran, put in a flapper"
		}
		switch obj {
		case "prv":
			if m.putAt(v) {
				return assess.SetPRV, obj, true
			}
			if m.newNear(v.at) && !m.noneBefore("prv") && !(v.objAt >= 0 && m.noneYet(v.objAt)) {
				return assess.ReplacedPRV, obj, true
			}
			return assess.InstalledPRV, obj, !carried || m.pronoun(v.at)
		case "expansion_tank":
			if m.putAt(v) {
				return assess.ChargedTank, obj, true
			}
			return assess.InstalledTank, obj, !carried || m.pronoun(v.at)
		case "heater":
			return assess.ReplacedHeater, obj, !carried
		case "drain_valve":
			return assess.ReplacedDrainValve, obj, !carried
		}
	case "set":
		if m.text(v.at) == "reduced" && m.reliefNear(v.at) {
			return "", "", false // "T&P line reduced to 1/2"
		}
		if v.what == "set" && m.text(v.at) == "turned" && m.text(v.at+1) == "off" {
			return "", "", false
		}
		switch obj {
		case "prv":
			if carried && !m.setsSomething(v) {
				return "", "", false
			}
			return assess.SetPRV, obj, true
		case "expansion_tank":
			if m.ownsNumber(v.at) {
				return assess.ChargedTank, obj, true
			}
		case "heater", "softener", "recirc", "check_valve", "drain_valve", "gauge":
			if carried && m.ownsNumber(v.at) {
				return assess.SetPRV, "prv", true // none of them is set to a pressure
			}
		case "":
			if m.ownsNumber(v.at) || m.turnedBetween(v) {
				return assess.SetPRV, "prv", true
			}
		}
	case "rebuilt":
		if obj != "prv" && strings.HasSuffix(m.text(v.at), "cartridge") && m.leakOver(v.at) {
			return assess.RepairedLeak, "leak", true // "New cartridge, drip is gone"
		}
		if (m.says(v.at, "cleaned", "limpie", "cleaned out", "limpiamos", "se limpio", "le limpie", "cleared", "rinsed", "cleaned up", "repare")) && (obj != "prv" || carried) {
			return "", "", false
		}
		if obj == "" || carried {
			if o, _ := m.topicBefore(v.at); o == "prv" {
				obj = o // "prv from 2001, rebuilt w kit"
			}
		}
		if obj == "prv" {
			return assess.RebuiltPRV, obj, true
		}
	case "charged":
		if obj == "expansion_tank" || obj == "" && m.ownsNumber(v.at) && m.tankNear(v.at) {
			return assess.ChargedTank, "expansion_tank", true
		}
		if m.ownsNumber(v.at) {
			return assess.ChargedTank, "expansion_tank", true
		}
	case "flushed":
		if t := m.text(v.at - 1); t == "toilet" || t == "toilets" || t == "commode" {
			return "", "", false // "when the toilet flushed"
		}
		for k := v.at + 1; k <= v.at+2 && k < len(m.items) && !m.items[k].mark && m.items[k].num == nil; k++ {
			if m.wordCues(m.items[k].tok).has(cueForeign) && !m.is(k, cItem, "") {
				return "", "", false // "flushed the coolant on truck 2"
			}
		}
		next := m.text(v.at + 1)
		if next == "the" || next == "a" || next == "out" {
			next = m.text(v.at + 2)
		}
		switch next {
		case "hydrants", "hydrant", "mains", "main", "lines", "line", "toilet", "pipes", "the mains", "its":
			return "", "", false
		}
		if obj == "heater" || obj == "drain_valve" || obj == "" && (m.carried(s) == "heater" || m.has(cItem, "heater")) {
			return assess.FlushedHeater, "heater", true
		}
		told := m.text(v.at)
		wholly := strings.HasPrefix(told, "flushed") || told == "descaled" || strings.Contains(told, "flush") && strings.Contains(told, " ")
		if obj == "" && (wholly || m.underJob(v.at)) { // "flushed it", "did a flush"
			return assess.FlushedHeater, "heater", true
		}
	case "fixed":
		if obj == "leak" || m.leakPart(v.at) {
			return assess.RepairedLeak, "leak", true
		}
		if obj == "prv" && (m.text(v.at) == "repaired" || m.text(v.at) == "fixed" || m.text(v.at) == "rebuilt" || m.text(v.at) == "repare") {
			return assess.RebuiltPRV, "prv", true
		}
	case "mended":
		return assess.RepairedLeak, "leak", true
	case "shut":
		if m.text(v.at-1) == "found" {
			return "", "", false // "curb stop found closed"
		}
		if k := m.right(v.at, 3, false, func(k int) bool { return m.is(k, cItem, "heater") }); k >= 0 && (m.text(k-1) == "al" || m.text(k-1) == "del") {
			return "", "", false // "le cerré la llave al boiler"
		}
		if m.is(v.at, cDid, "shut") && (m.text(v.at) == "shut off" || m.text(v.at) == "shut it off" || m.text(v.at) == "shut it down") {
			// "water shut off", not "when the washer shut off"
			ok := false
			for j := v.at - 5; j <= v.at+4; j++ {
				if m.is(j, cWater, "") || m.says(j, "main", "i", "house", "at the curb", "curb", "meter", "at the meter") || m.is(j, cFixture, "") && m.text(j) == "water" {
					ok = true
				}
			}
			if !ok {
				return "", "", false
			}
			for j := v.at + 1; j <= v.at+3; j++ {
				if m.is(j, cItem, "heater") || m.text(j) == "gas" {
					return "", "", false
				}
			}
		}
		return assess.ShutOff, "", true
	}
	return "", "", false
}

// headedBy returns the part that heads the line of a deed, or that a rebuild is told right
// behind: "exp tank: new one too, swapped", "prv from 2001, rebuilt w kit".
func (m *message) headedBy(v *verb) string {
	s := &m.sents[m.items[v.at].sent]
	topic, at := m.topicBefore(v.at)
	switch {
	case v.what == "replaced" && s.header > at && at >= s.from && (topic == "prv" || topic == "expansion_tank"):
		return topic
	case v.what == "rebuilt" && topic == "prv" && m.rebuiltLast(v) && m.factualRun(at, v.at):
		return topic
	}
	return ""
}

// rebuiltLast tells whether a word of rebuilding stands behind a comma, as what was done to
// the part told before: "prv 2012 brass, rebuilt".
func (m *message) rebuiltLast(v *verb) bool {
	t := m.text(v.at)
	return m.isMark(v.at-1, ",") && t != "cleaned" && (t == "rebuilt" || pastForm(t)) && !m.isNum(v.at+1) && m.text(v.at+1) != "in"
}

// partOfDeed returns the part that a deed before v in its sentence put in, when
// nothing else is named since: "replaced PRV, set to 60".
func (m *message) partOfDeed(v *verb) string {
	from := m.sents[m.items[v.at].sent].from
	for j := len(m.verbs) - 1; j >= 0; j-- {
		d := &m.verbs[j]
		if d.at >= v.at {
			continue
		}
		if d.at < from || !d.done || d.object != "prv" && d.object != "expansion_tank" || !oneOf(d.what, "replaced", "installed", "rebuilt") {
			return ""
		}
		for k := max(d.at, d.objAt) + 1; k < v.at; k++ {
			if m.is(k, cItem, "") {
				return ""
			}
		}
		return d.object
	}
	return ""
}

func (m *message) setsSomething(v *verb) bool {
	if m.ownsNumber(v.at) {
		return true
	}
	if k := m.right(v.at, 3, true, func(k int) bool { return m.is(k, cHint, "turned") }); k >= 0 && m.closes(k) && m.text(k) != "house" && m.text(k) != "setpoint" {
		return true // "All I did was turn the screw."
	}
	return m.pronoun(v.at) && m.verbTurn(v.at)
}

// turnedBetween tells whether something was turned between a pressure found and one
// left, in a sentence that names no part: "found 98 at the back, cranked it, left 62".
func (m *message) turnedBetween(v *verb) bool {
	if !m.kinds.has(cBefore) || !m.verbTurn(v.at) || !m.pronoun(v.at) && !strings.Contains(m.text(v.at), " it ") {
		return false
	}
	s := m.items[v.at].sent
	found, left := false, false
	for k := range m.readings {
		if r := &m.readings[k]; r.sent == s {
			found = found || r.at < v.at && m.left(r.at, 2, false, func(k int) bool { return m.is(k, cBefore, "") }) >= 0
			left = left || r.at > v.at && m.left(r.at, 2, false, func(k int) bool { return m.is(k, cAfter, "") || m.is(k, cNow, "") }) >= 0
		}
	}
	return found && left && m.itemIn(s) == "" && !m.anyIn(s, func(int) bool { return true }, setOf(cState, cBurner))
}

func (m *message) pronoun(at int) bool {
	if t := m.text(at); strings.HasSuffix(t, " it") || strings.Contains(t, " one") || strings.HasSuffix(t, " it in") {
		return true
	}
	for k := at + 1; k <= at+2; k++ {
		switch m.text(k) {
		case "it", "that", "one", "this":
			return true
		}
	}
	switch m.text(at - 1) {
	case "it", "one", "la", "lo", "le", "la deje":
		return true
	}
	return m.onePut(at)
}

func (m *message) ownsNumber(at int) bool {
	for i := range m.items {
		if m.items[i].owner == at+1 {
			return true
		}
	}
	return false
}

func (m *message) tankNear(at int) bool {
	for k := max(0, at-12); k < min(len(m.items), at+8); k++ {
		if v, ok := m.val(k, cItem); ok && m.itemCode(k, v) == "expansion_tank" || m.is(k, cPart, "air") {
			return true
		}
	}
	return false
}

func (m *message) partAfter(at int, part string) bool {
	for k := at + 1; k < len(m.items) && k <= at+5; k++ {
		if m.items[k].mark {
			return false
		}
		if m.is(k, cPart, part) {
			return true
		}
	}
	return false
}

// leakPart tells whether a deed at item at is the mending of a leak: a washer, a
// flapper, a fitting or a line that leaked or burst, told here or, of "it", before.
func (m *message) leakPart(at int) bool {
	s := &m.sents[m.items[at].sent]
	from := max(s.from, at-8)
	if k := m.items[at].sent - 1; k >= 0 && m.sents[k].to == s.from && (m.pronoun(at) || at == s.from) {
		from = max(m.sents[k].from, at-16)
	}
	if m.brokeAndMended(at) {
		return true
	}
	leak, part, sure := false, false, m.is(at, cFitting, "sure")
	for k := from; k < min(s.to, at+9); k++ {
		leak = leak || m.is(k, cSym, "leak") || m.is(k, cFitting, "burst") || m.toilet(k)
		if m.is(k, cFitting, "part") || m.is(k, cFitting, "sure") {
			part = true
			leak = leak || k > at && m.leakedBefore(from)
			if k > at && k <= at+2 || k < at && (k >= at-2 || k >= at-5 && m.pronoun(at)) {
				sure = sure || m.is(k, cFitting, "sure")
			}
		}
	}
	if m.is(at, cDid, "fixed") && (leak || sure) {
		return true
	}
	return sure || leak && part
}

// leakedBefore tells whether a line before item at tells of a fitting that leaked or
// burst: "se reventó la manguera de la lavadora … cambié las dos mangueras".
func (m *message) leakedBefore(at int) bool {
	leak, part := -1, -1
	for k := at - 1; k >= 0; k-- {
		if m.is(k, cSym, "leak") || m.is(k, cFitting, "burst") {
			leak = m.items[k].sent
		}
		if m.is(k, cFitting, "part") || m.is(k, cFitting, "sure") {
			part = m.items[k].sent
		}
		if leak >= 0 && leak == part {
			return true
		}
	}
	return false
}

// partRight tells whether what a deed at item at puts in is a part that is changed for
// a leak alone: a flapper, a fill valve.
func (m *message) partRight(at int) bool {
	for k := at + 1; k <= at+3 && k < len(m.items) && !m.items[k].mark; k++ {
		if m.is(k, cFitting, "sure") {
			return true
		}
	}
	return false
}

// putAt tells whether "puse" puts a part that is there to a pressure rather than a
// part in: "puse la reguladora en 58", where "puse reguladora a 58" puts one in.
func (m *message) putAt(v *verb) bool {
	if !strings.Contains(m.text(v.at), "pus") || v.objAt < v.at {
		return false
	}
	definite := m.says(v.objAt-1, "la", "el") || strings.HasSuffix(m.text(v.at), " la") || strings.HasSuffix(m.text(v.at), " el")
	return definite && m.says(v.objAt+1, "en", "a") && m.isNum(v.objAt+2)
}

func (m *message) newNear(at int) bool {
	for k := at + 1; k < len(m.items) && k <= at+4; k++ {
		if m.is(k, cPart, "new") {
			return true
		}
		if m.items[k].mark {
			break
		}
	}
	return m.is(at-1, cPart, "new") || m.is(at-2, cPart, "new")
}

// noneBefore tells whether the message says that the house had no such thing: "there
// was none", of the thing named last, or "no tank before".
func (m *message) noneBefore(item string) bool {
	last := ""
	for k := range m.items {
		if v, ok := m.val(k, cItem); ok && v != "gauge" && !m.taken(k) {
			last = m.itemCode(k, v)
		}
		switch m.text(k) {
		case "none before", "never had one", "none", "never had", "there was none", "had none", "wasnt one",
			"no tenia", "nunca tuvo", "no habia":
			if last == item || last == "" {
				return true
			}
		case "no", "without", "sin":
			if t := m.text(k + 1); t == "hay" || t == "tiene" || t == "habia" || t == "trae" {
				k++ // "no hay reguladora"
			}
			if v, ok := m.val(k+1, cItem); ok && m.itemCode(k+1, v) == item {
				return true
			}
		default:
			if last == item && m.is(k, cAbsent, "") {
				return true
			}
		}
	}
	return false
}

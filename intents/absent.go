package intents

import (
	"strings"

	"lazyhand/assess"
)

// named records items that the house may lack, and those said to be absent.
func (m *message) named(s int, items []mentionOf) {
	for _, it := range items {
		if m.items[it.at].sent != s {
			continue
		}
		if se := &m.sents[s]; se.asking && !se.closes && !m.toldFirst(it.at) {
			continue
		}
		if it.item == "heater" && m.is(it.at, cItem, "tank") {
			continue // "instantáneo, sin tanque"
		}
		if m.itemAbsent(it.at) || m.askedAbsent(it.at) {
			if m.lackCounts(it) {
				f := m.equipment.get(it.item, it.at)
				no := false
				f.Present, f.said = &no, true
			}
			continue
		}
		if m.unwanted(it.at) || m.onTruck(it.at) {
			continue
		}
		switch it.item {
		case "expansion_tank", "check_valve", "softener", "recirc":
			if m.onlyNamed(it) {
				m.equipment.get(it.item, it.at).named = true
			}
		}
	}
}

// lackCounts tells whether the denial of an item says that the house has none: "no gauge"
// is the tech's own, "no tank leak" denies the leak, and what was put in is there now.
func (m *message) lackCounts(it mentionOf) bool {
	switch {
	case m.installs(it.item) || m.workDoneOn(it.at) || m.symptomOf(it.at):
		return false
	case it.item == "gauge":
		return m.houseGauge(it.at)
	case it.item == "heater", it.item == "drain_valve":
		return m.plainNo(it.at)
	}
	return true
}

// onlyNamed tells whether an item is named as one of the house, and neither work nor a
// plan nor a question speaks of it.
func (m *message) onlyNamed(it mentionOf) bool {
	switch {
	case it.item == "expansion_tank" && (m.tankWork() || m.tankPlan()):
		return false
	case it.old || m.workOn(it.at) || m.planOn(it.at) || m.sents[m.items[it.at].sent].asking:
		return false
	}
	return m.text(it.at) != "tank" || m.items[it.at].tags == nil || !m.weakTank(it.at)
}

// lackedLater reads what is told to be wanting in a clause or a sentence of its own:
// "looked for a tank and there isn't one", "tank goes in Friday. none there now",
// "next door has a regulator. this place don't".
func (m *message) lackedLater(items []mentionOf) {
	if !m.kinds.has(cAbsent) && !m.kinds.has(cNeg) {
		return
	}
	for i := range m.items {
		if !(m.is(i, cAbsent, "") && refersBack(m.text(i)) || m.bareDont(i)) || m.sents[m.items[i].sent].asking {
			continue
		}
		for k := len(items) - 1; k >= 0; k-- {
			x := items[k]
			if x.at > i || x.item == "gauge" || x.item == "drain_valve" || x.item == "heater" {
				continue
			}
			if m.items[x.at].sent >= m.items[i].sent-1 && i-x.at <= 24 && !m.installs(x.item) && !m.workDoneOn(x.at) && !m.aboutThing(x.at-4, i) {
				if f := m.equipment.get(x.item, x.at); !f.said {
					no := false
					f.Present, f.said = &no, true
				}
			}
			break
		}
	}
}

// bareDont tells whether item i ends a clause about this house with a bare denial:
// "this place don't".
func (m *message) bareDont(i int) bool {
	if t := m.text(i); t != "dont" && t != "doesnt" || !m.closes(i) {
		return false
	}
	switch m.text(i - 1) {
	case "place", "house", "one", "this place", "this house", "this one":
		return true
	}
	return false
}

// refersBack tells whether a phrase of absence stands for what was named before it.
func refersBack(s string) bool {
	for _, w := range [...]string{" one", "none", " any", "does not have"} {
		if strings.Contains(s, w) {
			return true
		}
	}
	return false
}

// aboutThing tells whether a part of something or a symptom is named among items from..to:
// "looked for a date on the prv, couldn't find one".
func (m *message) aboutThing(from, to int) bool {
	for k := max(from, 0); k < to; k++ {
		if m.is(k, cSym, "") {
			return true
		}
		switch m.text(k + 1) {
		case "on", "of", "for", "from":
			if m.signsOf(k).has(signThing) {
				return true
			}
		}
	}
	return false
}

// houseGauge tells whether a gauge that is wanting is one of the house: "no gauge on
// this house".
func (m *message) houseGauge(i int) bool {
	return (m.text(i+1) == "on" || m.text(i+1) == "at" || m.text(i+1) == "in") && m.right(i, 4, false, func(k int) bool {
		switch m.text(k) {
		case "house", "place", "this house", "system", "the house", "line", "job":
			return true
		}
		return m.items[k].site
	}) >= 0
}

// workDoneOn tells whether the item at i is the object of a deed done.
func (m *message) workDoneOn(i int) bool {
	for _, v := range m.verbs {
		if v.objAt == i && v.done {
			return true
		}
	}
	return false
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
	s := &m.sents[m.items[i].sent]
	if t := m.text(i); strings.HasPrefix(t, "ni ") || denies(t) {
		return true // "no tiene tanque ni check", "no check"
	}
	if m.tickedOff(i) {
		return true
	}
	switch m.text(i + 1) {
	case "setting", "settings", "tag", "label", "date", "sticker", "problem", "problems", "issue", "issues",
		"trouble", "adjustment", "screw", "info", "work", "noise", "access", "room", "pressure":
		return false // "no regulator setting marked"
	case "to":
		if !m.says(i+2, "speak", "be") {
			return false // "no tank to spare", but "no tank to speak of"
		}
	}
	if m.is(i+1, cHint, "jobnoun") {
		return false // "no reg swap for us here"
	}
	if m.is(i+1, cState, "") || m.text(i+1) == "firing" || m.text(i+1) == "fired" {
		return false // "no htr firing"
	}
	// before
	for k := i - 1; k >= s.from && k >= i-6; k-- {
		t := m.text(k)
		if m.is(k, cLacks, "") {
			return true
		}
		if (t == "neither" || t == "nor") && m.anyIn(m.items[i].sent, func(j int) bool { return j > i && m.is(j, cHint, "stamp") }, setOf(cHint)) {
			return false // "neither the tank nor the prv has a date"
		}
		if (t == "neither" || t == "nor") && m.anyIn(m.items[i].sent, func(j int) bool { return j > i }, setOf(cCond)) {
			return false // "neither the prv nor the tank is any good"
		}
		switch t {
		case "no", "without", "w/o", "sin", "ningun", "not a", "never had", "no hay", "nor", "ni", "lacks",
			"missing", "zero", "neither", "falta", "no tiene", "doesnt have", "hasnt got", "dont have",
			"didnt have":
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
				if m.is(j, cItem, "") {
					continue // "isn't a check valve or an exp tank"
				}
				switch m.text(j) {
				case "the":
					if j == k+1 && (k == s.from || m.is(k-1, cRetract, "")) {
						return false // "not the regulator, it's fine"
					}
				case "put", "putting", "install", "installed", "hung", "hooked up":
					if t != "never" {
						return false
					}
				case "or", "nor", "have", "see", "find", "a", "an", "got", "any", "no", "had", "trae", "tiene",
					"hay", "veo", "tuvo", "un", "una", "ha", "tenia", "tienen", "been", "ever", "own", "even",
					"really", "actually", "seeing", "with", "here":
				default:
					return false
				}
			}
			if (t == "couldnt" || t == "cant" || t == "didnt") && m.is(i-1, cDeterminer, "") && m.text(i-1) != "a" && m.text(i-1) != "an" {
				return false // "couldn't see the regulator"
			}
			return k+1 < i
		case "put", "putting", "install", "installed", "hung", "hooked up":
			if m.text(k-1) == "never" {
				continue
			}
		case "or", "and", "is", "are", "there", "a", "an", "any", "new", "working", "trae", "le", "se", "encontre",
			"encontramos", "encuentro", "vi", "vimos", "ve", "hallo", "traia", "existe", "cuentan", "hay", "tiene",
			"thermal", "the", "real", "o", "y", "un", "una", "tienen", "veo", "lleva", "tenia", "cuenta", "con",
			"in line", "proper", "have", "see", "n", "find", "had", "ever", "been", "seeing", "got":
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
	soNone := m.right(i, 14, true, func(k int) bool { return m.is(k, cAbsent, "") && strings.HasPrefix(m.text(k), "so n") })
	if soNone >= 0 && m.right(i, soNone-i, true, func(k int) bool { return m.is(k, cItem, "") && k < soNone }) < 0 {
		return true // "where the tank ought to be there's a plug, so none"
	}
	k := i + 1
	for k < len(m.items) && k <= i+5 && m.items[k].sent == m.items[i].sent {
		if m.is(k, cAbsent, "") {
			return true
		}
		switch m.text(k) {
		case "«site»", ":", "=", "-", "at", "meter", "present", "is", "was", "at the meter", "on", "heater", "the",
			"esta", "en el medidor", "?", "en", "porque", "because", "they", "she", "he", "pues":
			k++
			continue
		case "n":
			return m.closes(k) // "ET N"
		case ",":
			if m.is(k+1, cAbsent, "") || m.is(k+2, cAbsent, "") && !m.is(k+1, cItem, "") && (person(m.text(k+1)) || m.says(k+1, "they", "house", "there", "it")) {
				return true
			}
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
				case "there", "there is none", "there isnt", "there is", "none":
					return m.right(k, 3, true, func(j int) bool {
						return strings.HasSuffix(m.text(j), "none") || strings.HasSuffix(m.text(j), "isnt") || m.is(j, cAbsent, "")
					}) >= 0
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

// deniedDeed tells whether a deed is told of a thing that there is none of: "no expansion
// tank was ever installed".
func (m *message) deniedDeed(v *verb) bool {
	if v.objAt < 0 || v.objAt >= v.at || !m.says(v.objAt-1, "no", "without", "w/o") && !m.is(v.objAt-1, cLacks, "") && !denies(m.text(v.objAt)) {
		return false
	}
	for k := v.objAt + 1; k < v.at; k++ {
		if !be(m.text(k)) && !m.says(k, "ever", "was ever", "had been", "has been", "been", "there", "here") {
			return false
		}
	}
	return m.closes(v.at) || !m.is(v.at+1, cDeterminer, "") && m.text(v.at+1) != "one"
}

// closes tells whether a clause ends after item k.
func (m *message) closes(k int) bool {
	return k+1 >= len(m.items) || m.items[k+1].mark || m.items[k+1].site
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

// tickedOff tells whether a bare "no" behind a comma says that there is none, as in a list:
// "Check valve at meter, yes. Expansion tank, no."
func (m *message) tickedOff(i int) bool {
	if !m.isMark(i+1, ",") || !m.says(i+2, "no", "none", "nope") || i+3 < len(m.items) && !m.isMark(i+3, ".", "\n") {
		return false
	}
	return i == m.sents[m.items[i].sent].from || m.items[i-1].mark
}

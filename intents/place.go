package intents

import (
	"strings"

	"lazyhand/assess"
)

// places joins a side of the house and a hose bibb into one test point, and
// takes fixtures that merely run, or that a phrase is about, out of the points.
func (m *message) places() {
	its := m.items
	for i := 0; i < len(its); i++ {
		if its[i].mark || its[i].num != nil || m.is(i, cSkip, "") {
			continue
		}
		if p := m.besidePRV(i); p != "" {
			its[i].point = p
			continue
		}
		if its[i].text == "fr" && m.isNum(i+1) && its[i+1].unit != "" && !pressureUnit(its[i+1].unit) {
			continue // "exp tank fr 50 gal"
		}
		if its[i].text == "st" && m.flowTag(i) != "" {
			m.unsay(i)
			continue
		}
		if p := m.possessive(i); p != "" {
			its[i].point = p
			continue
		}
		if m.turnedBack(i) {
			continue
		}
		if m.is(i+1, cBibb, "") && its[i].n == 1 && len(its[i].text) == 1 {
			if v, ok := m.val(i, cInitial); ok && strings.HasSuffix(v, "_bibb") {
				its[i].point, its[i+1].role = v, roleTaken // "f HB 61#"
				i++
				continue
			}
		}
		if m.streetSide(i) {
			its[i].point = string(assess.Street)
			m.unsay(i)
			continue
		}
		if p := m.initial(i); p != "" {
			its[i].point = p
			continue
		}
		if m.sparePart(i) {
			continue
		}
		if m.shortBoth(i) {
			m.unsay(i)
			its[i].text = "both"
			continue
		}
		if m.drainOfTank(i) {
			its[i].point = string(assess.HeaterDrain)
			continue
		}
		if (its[i].text == "house" || its[i].text == "casa" && m.text(i-1) != "la" && m.text(i-1) != "en") && (m.isNum(i+1) || m.isNum(i-1) || m.text(i+1) == ":" && m.isNum(i+2)) && m.has(cPoint, "street") && m.text(i-1) != "the" && m.text(i-1) != "in" {
			its[i].point = "after_prv" // "street 130, house 62"
			continue
		}
		if m.hoseInList(i) {
			its[i].point = string(assess.Bibb)
			continue
		}
		if p := m.inOrOut(i); p != "" {
			its[i].point = p
			continue
		}
		if v, ok := m.val(i, cPoint); ok && !(v == "bibb" && m.is(i, cBibb, "")) {
			if m.runsInList(i) {
				continue
			}
			if m.runs(i) || m.occasion(i) || m.hoseAfter(i) || m.withTaps(i) || m.leadsOver(i) {
				continue
			}
			its[i].point = v
			if v != string(assess.Bibb) {
				continue
			}
			// "la llave de la manguera del costado"
			if k := m.ahead(i, cPlace, 4, bibbToPlace); k > 0 && !m.bibbFollows(k) {
				w, _ := m.val(k, cPlace)
				its[i].point = w + "_bibb"
				its[k].role = roleTaken
			}
			continue
		}
		if m.is(i, cBibb, "") {
			if m.runs(i) && !m.numNear(i) {
				if m.is(i+1, cPlace, "") {
					its[i+1].role = roleTaken // "w/ HB rr open"
				}
				continue
			}
			its[i].point = string(assess.Bibb)
			if k := m.ahead(i, cPlace, 5, bibbToPlace); k > 0 && !m.bibbFollows(k) {
				v, _ := m.val(k, cPlace)
				its[i].point = v + "_bibb"
				its[k].role = roleTaken
			}
			continue
		}
		if v, ok := m.val(i, cPlace); ok && its[i].role != roleTaken {
			if k := m.ahead(i, cBibb, 4, placeToBibb); k > 0 {
				if m.runs(k) && !m.numNear(i) {
					i = k
					continue
				}
				its[i].point = v + "_bibb"
				its[k].role = roleTaken
				for j := i + 1; j <= k; j++ {
					its[j].role = roleTaken
				}
				i = k
				continue
			}
			if t := m.text(i + 1); t == "tap" || t == "faucet" || t == "taps" || t == "llave" || t == "grifo" {
				its[i].point = v + "_bibb"
				its[i+1].role = roleTaken
				i++
				continue
			}
			if k := m.ahead(i, cPoint, 3, placeToBibb); k > 0 {
				if pv, _ := m.val(k, cPoint); pv == "bibb" {
					its[i].point = v + "_bibb"
					its[k].role = roleTaken
					i = k
				}
				continue // "rear bath": the bath is the point
			}
			its[i].point = v + "_bibb"
			its[i].weak = true
		}
	}
}

func placeToBibb(s string) bool {
	switch s {
	case "yard", "yd", "hose", "house", "outdoor", "outside", "exterior", "garden", "wall", "patio", "hs", "yrd", "cold", "hall", "water", "-", "door", "downstairs", "upstairs", "side", "porch":
		return true
	}
	return false
}

func bibbToPlace(s string) bool {
	switch s {
	case "at", "on", "in", "the", "out", "of", "house", "by", "around", "a", "la", "de", "el", "en", "del", "n", "-", "(", "to", "@", "is":
		return true
	}
	return false
}

// ahead finds an item of a class within n items after i, with only fillers between.
func (m *message) ahead(i int, c class, n int, filler func(string) bool) int {
	for k := i + 1; k < len(m.items) && k <= i+n; k++ {
		if m.is(k, c, "") && !m.is(k, cSkip, "") {
			return k
		}
		if m.items[k].num != nil || m.items[k].site || !filler(m.items[k].text) {
			return 0
		}
	}
	return 0
}

// bibbFollows tells whether a place at k belongs to a bibb of its own.
func (m *message) bibbFollows(k int) bool { return m.ahead(k, cBibb, 2, placeToBibb) > 0 }

// runs tells whether the fixture at i is said to be running: then it is no test point.
func (m *message) runs(i int) bool {
	k := i + 1
	for k < len(m.items) && k <= i+3 {
		switch m.text(k) {
		case "is", "was", "are", "were", "rr", "rear", "frt", "front", "side", "back", "faucet", "tap", "sink", "valve", "head", "wide", "full", "esta", "upstairs", "downstairs":
			k++
			continue
		}
		break
	}
	switch m.text(k) {
	case "running", "run", "going":
		if m.isNum(k+1) || (m.text(k+1) == "at" || m.text(k+1) == "about" || m.text(k+1) == "around") && m.isNum(k+2) {
			return false // "the main is running 118"
		}
		return true
	case "open", "wide open", "flowing", "filling", "on", "cracked", "corriendo", "abierta", "abierto", "prendida", "llenando", "turned on", "cracked open", "full open", "full blast", "abiertas", "fills", "filled":
		if m.text(k) == "on" {
			switch m.text(k + 1) {
			case "the", "a", "this", "that", "her", "his", "my", "cold", "hot", "gauge", "it":
				return false
			}
			return !m.isNum(k + 1)
		}
		return true
	}
	switch m.text(i - 1) {
	case "running", "run", "opened", "open", "opening", "ran", "abriendo", "abri", "corriendo":
		return true
	}
	if m.text(i-1) == "the" || m.text(i-1) == "a" || m.text(i-1) == "la" {
		switch m.text(i - 2) {
		case "running", "run", "opened", "open", "opening", "ran", "abriendo", "abri":
			return true
		}
	}
	return false
}

// withTaps tells whether item i is one of the taps of "44 with hose and tub".
func (m *message) withTaps(i int) bool {
	for k := i - 1; k > 0 && k >= i-6 && !m.items[k].mark && m.items[k].num == nil; k-- {
		if m.withList(k) {
			return true
		}
	}
	return false
}

// leadsOver tells whether "before it" leads to a deed and is no place: "71 before it lit".
func (m *message) leadsOver(i int) bool {
	if t := m.text(i); !strings.HasSuffix(t, " it") || i+1 >= len(m.items) {
		return false
	}
	return m.is(i+1, cState, "") || m.is(i+1, cOff, "") || m.is(i+1, cDid, "") || m.is(i+1, cHint, "lights")
}

// occasion tells whether the fixture at i is named as an occasion: "when the
// washer shuts off".
func (m *message) occasion(i int) bool {
	for k := i - 1; k >= 0 && k >= i-3; k-- {
		switch m.text(k) {
		case "when", "whn", "whenever", "cuando", "after", "every", "everytime":
			return !m.isNum(i+1) && m.verbAfter(i)
		case "the", "a", "her", "their", "my", "la", "el", "that", "this":
		default:
			return false
		}
	}
	return false
}

func (m *message) verbAfter(i int) bool {
	switch m.text(i + 1) {
	case "shuts", "stops", "closes", "kicks", "runs", "starts", "turns", "shut", "stop", "cuts", "se", "cycles", "fills", "off", "cierra", "clicks", "quits", "changes", "finishes", "flushes", "shut off", "valve", "shts", "para", "goes", "opens", "comes", "cycle", "is", "gets":
		return true
	}
	return false
}

// hoseAfter tells whether the fixture only names a part: "washer hoses".
func (m *message) hoseAfter(i int) bool {
	switch m.text(i + 1) {
	case "hose", "hoses", "cartridge", "handle", "drain", "light", "remodel", "table", "door", "floor", "ceiling", "wall", "cabinet", "window", "st", "leak", "leaks", "drip", "drips", "curtain", "fan", "rug", "mat":
		return !m.isNum(i+2) && !m.isNum(i-1)
	}
	return false
}

// numNear tells whether a number stands beside item i, with at most a small word between.
func (m *message) numNear(i int) bool {
	for _, k := range []int{i - 1, i + 1, i - 2, i + 2} {
		if m.isNum(k) && m.items[k].seg == m.items[i].seg {
			if t := m.text(i - 1); k == i-2 && (t == "with" || t == "w/" || t == "w" || t == "con") {
				continue // "66 w/ rear bib open"
			}
			return true
		}
	}
	return false
}

// runsInList tells whether the fixture at i is joined to others that run: "tub +
// laundry open".
func (m *message) runsInList(i int) bool {
	k := i + 1
	for k < len(m.items) && k <= i+6 && (m.text(k) == "and" || m.text(k) == "y" || m.text(k) == "," || m.items[k].tags != nil && (m.is(k, cPoint, "") || m.is(k, cFixture, ""))) {
		k++
		if m.is(k, cFlowing, "") && m.text(k-1) == "and" {
			return true
		}
	}
	return false
}

// besidePRV reads "after" and "before" that stand for the two sides of the
// regulator: "128 antes del regulador y 127 después".
func (m *message) besidePRV(i int) string {
	switch m.text(i) {
	case "after", "despues", "aftr", "aft", "past", "behind":
		if m.aheadBeside(i) {
			return "after_prv" // "119# aft, 122# ahead"
		}
		if !(m.isNum(i-1) || m.isNum(i+1) && (m.items[i].seg == m.items[i+1].seg)) || m.is(i+1, cItem, "") {
			return ""
		}
		if m.isNum(i-1) && m.has(cItem, "prv") && m.right(i, 5, true, func(k int) bool { return m.is(k, cPoint, "street") && (m.isNum(k-1) || m.isNum(k+1)) }) >= 0 {
			return "after_prv" // "119 after it, 121 street"
		}
		if k := m.left(i, 9, true, func(k int) bool { return m.is(k, cPoint, "street") }); k >= 0 {
			t := m.text(k)
			for _, p := range []string{"before", "b4", "bfr", "bef", "antes", "ahead", "in front", "upstream", "pre"} {
				if len(t) > len(p) && t[:len(p)] == p {
					return "after_prv"
				}
			}
		}
	case "out":
		if m.is(i-1, cItem, "prv") && m.isMark(i+1, "=", ":") && m.isNum(i+2) {
			return "after_prv" // "prv out=64"
		}
		if k := m.left(i, 4, true, func(k int) bool { return m.text(k) == "in" && m.items[k].point == "street" }); k >= 0 {
			return "after_prv"
		}
	case "in":
		// "131 in, 66 out"
		if k := m.right(i, 4, true, func(k int) bool { return m.text(k) == "out" }); m.isNum(i-1) && k > 0 && m.isNum(k-1) || m.isNum(i+1) && k > 0 && m.isNum(k+1) {
			return "street"
		}
	case "down":
		if m.isNum(i-1) && (i+1 == len(m.items) || m.items[i+1].mark) && m.left(i, 6, true, func(k int) bool { return m.text(k) == "upstream" }) >= 0 {
			return "after_prv"
		}
	case "ahead":
		if m.isNum(i-1) && (i+1 == len(m.items) || m.items[i+1].mark) || m.isNum(i+1) {
			return "street"
		}
		fallthrough
	case "before", "antes":
		if (m.text(i+1) == "and" || m.text(i+1) == "y" || m.text(i+1) == "/") && m.is(i+2, cPoint, "after_prv") {
			return "street"
		}
	}
	return ""
}

// aheadBeside tells whether "ahead" stands by a number of the sentence of item i, which
// stands by one itself.
func (m *message) aheadBeside(i int) bool {
	if !m.isNum(i-1) && !m.isNum(i+1) {
		return false
	}
	ahead := func(k int) bool { return m.text(k) == "ahead" && (m.isNum(k-1) || m.isNum(k+1)) }
	return m.left(i, 5, true, ahead) >= 0 || m.right(i, 5, true, ahead) >= 0
}

// possessive reads a point and the "is" that dictation writes as a plural: "the tubs at
// fifty five", "the kitchens reading sixty".
func (m *message) possessive(i int) string {
	it, l := &m.items[i], m.p.lex
	n := len(it.text) - 1
	if it.n != 1 || n < 2 || it.text[n] != 's' || it.kinds.has(cPoint) || !m.isNum(i+2) {
		return ""
	}
	switch m.text(i + 1) {
	case "at", "reading", "showing", "holding", "sitting", "on", "about", "steady":
	default:
		return ""
	}
	id, ok := l.vocab[it.text[:n]]
	if !ok {
		return ""
	}
	v, _ := m.p.value(l.tags[l.next[uint64(uint32(id))]], cPoint)
	return v
}

// turnedBack tells whether "back" belongs to a verb: "dialed the reg back".
func (m *message) turnedBack(i int) bool {
	if t := m.text(i); t != "back" && t != "bck" || m.is(i+1, cBibb, "") || m.isNum(i+1) || m.isMark(i+1, ":", "=") {
		return false
	}
	return m.left(i, 3, false, func(k int) bool { return m.is(k, cDid, "set") || m.is(k, cHint, "shifts") }) >= 0 && (m.is(i-1, cItem, "") || m.text(i-1) == "it" || m.text(i-1) == "her")
}

// streetSide reads "st" at the head of a row of points: "st 92, aftr prv 58".
func (m *message) streetSide(i int) bool {
	if m.text(i) != "st" || !m.isNum(i+1) || i > 0 && !m.items[i-1].mark {
		return false
	}
	return m.right(i, 8, true, func(k int) bool { return m.is(k, cPoint, "") || m.is(k, cPlace, "") }) >= 0
}

// initial reads a single letter beside a number as a test point: "K 57#", "F 84 R 66".
// Letters that can be much else count only in capitals and in company.
func (m *message) initial(i int) string {
	v, ok := m.val(i, cInitial)
	if !ok || m.toks[m.items[i].tok].glued && m.isNum(i-1) {
		return ""
	}
	fits := func(k int) bool {
		return m.isNum(k) && (m.items[k].unit == "" && m.items[k].value >= 15 && m.items[k].value <= 250 && len(m.items[k].num.digits) <= 3 || m.items[k].unit == "psi")
	}
	next := i + 1
	if m.isMark(next, "/") && m.is(next+1, cInitial, "") {
		next += 2 // "F/R 84/66"
	}
	if !fits(next) && !(fits(i-1) && (m.items[i-1].unit == "psi" || v == "kitchen" && m.isMark(i+1, "/", ","))) {
		return ""
	}
	if v == "kitchen" {
		return v
	}
	if !m.toks[m.items[i].tok].caps {
		return ""
	}
	other := func(k int) bool { return m.is(k, cInitial, "") || m.is(k, cPoint, "") || m.is(k, cPlace, "") }
	if m.left(i, 4, true, other) >= 0 || m.right(i, 4, true, other) >= 0 {
		return v
	}
	return ""
}

// drainOfTank reads the drain of a heater that is named by its size: "the drain of
// the 50 gal".
func (m *message) drainOfTank(i int) bool {
	if m.text(i) != "drain" {
		return false
	}
	if m.isNum(i+1) && m.has(cItem, "heater") && (i == 0 || m.items[i-1].mark) {
		return true // "heater label 150 psi WP; drain 72"
	}
	if p := m.text(i - 1); p == "the" && m.text(i-2) == "at" && (m.isNum(i+1) || m.isNum(i-3)) {
		return true // "71 at the drain"
	} else if (p == "its" || p == "the") && (m.isNum(i+1) || m.isNum(i+2) && !m.items[i+1].mark || m.isNum(i-2) || m.isNum(i-3)) && m.left(i, 20, true, func(k int) bool { return m.is(k, cItem, "heater") || m.is(k, cFuel, "") }) >= 0 {
		return true // "120 gal electric heater, 62 at its drain"
	}
	k := m.right(i, 3, false, func(k int) bool { return m.isNum(k) && (m.items[k].unit == "gal" || m.items[k].unit == "litre") })
	return k >= 0 && m.right(i, 1, false, func(k int) bool { return m.text(k) == "of" || m.text(k) == "on" || m.text(k) == "off" }) >= 0
}

// hoseInList tells whether "hose" is a bibb among other test points: "tub 70, hose 71".
func (m *message) hoseInList(i int) bool {
	if m.text(i) != "hose" || !m.isNum(i+1) || m.items[i+1].unit != "" && m.items[i+1].unit != "psi" || i+2 < len(m.items) && !m.items[i+2].mark {
		return false
	}
	return m.isMark(i-1, ",", "/", "\n") && m.isNum(i-2) || m.isMark(i+2, ",", "/") && m.right(i+1, 3, false, func(k int) bool { return m.is(k, cPoint, "") || m.is(k, cPlace, "") }) >= 0
}

// shortBoth tells whether "bth" is "both" and no bath: "55 and 57 bth w nothing running".
func (m *message) shortBoth(i int) bool {
	if m.toks[m.items[i].tok].text != "bth" {
		return false
	}
	switch m.text(i + 1) {
	case "w", "with", "w/", "at", "static":
		return m.isNum(i - 1)
	}
	return false
}

// sparePart tells whether a fixture's name is a part here: "fixed it w a new washer".
func (m *message) sparePart(i int) bool {
	if m.text(i) == "kit" && !m.isNum(i+1) {
		switch m.text(i - 1) {
		case "w/", "with", "w", "a", "rebuild", "repair", "new", "the":
			return !m.isNum(i - 2) // "PRV rebuilt w/ kit"
		}
	}
	if m.text(i) != "washer" {
		return false
	}
	switch m.text(i - 1) {
	case "new", "rubber", "hose", "faucet", "tap", "bib", "bad", "worn", "fresh":
		return !m.isNum(i + 1)
	}
	return false
}

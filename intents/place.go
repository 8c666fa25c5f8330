package intents

import (
	"strings"

	"lazyhand/assess"
)

var placeOpener = opener{
	classes: setOf(cPoint, cPlace, cBibb, cInitial),
	items:   []string{"drain_valve"},
	hints:   []string{"bothsides", "enters", "leaves"},
	words: []string{
		"after", "despues", "aftr", "aft", "past", "behind", "out", "in", "down", "ahead", "before", "antes",
		"drain", "house", "casa", "hose", "wash", "abajo",
	},
	typed: []string{"st", "bth"},
}

// places joins a side of the house and a hose bibb into one test point, and
// takes fixtures that merely run, or that a phrase is about, out of the points.
func (m *message) places() {
	its := m.items
	for i := 0; i < len(its); i++ {
		if p := m.upstairsIn(i); p != "" {
			its[i].point = p
			continue
		}
		if m.backAt(i) {
			its[i].point = string(assess.RearBibb)
			continue
		}
		if its[i].mark || its[i].num != nil || m.is(i, cSkip, "") {
			continue
		}
		if its[i].text == "after it" && m.text(i+1) == "was" && m.text(i-1) == "and" && m.left(i, 20, true, func(k int) bool { return m.is(k, cBefore, "") }) >= 0 {
			m.say(i, "after") // "before I did that it was 91 and after it was 61"
			continue
		}
		if m.isMark(i+1, ":") && m.is(i, cHint, "enters") && m.headLine("leaving") {
			continue // "Entrada: atrás 112 … Salida: atrás 61"
		}
		if m.isMark(i-1, "(") && m.isMark(i+1, ")") && strings.Contains(m.raw, "~") {
			m.call(i, "aside") // "~88~ 78 (typo)": the slip is struck out already
			continue
		}
		if !m.begins(i, keyPlace) && !(m.isNum(i+2) && strings.HasSuffix(its[i].text, "s")) {
			continue
		}
		if p := m.besidePRV(i); p != "" {
			its[i].point = p
			continue
		}
		if its[i].text == "fr" && m.isNum(i+1) && its[i+1].unit != "" && !pressureUnit(its[i+1].unit) {
			continue // "exp tank fr 50 gal"
		}
		if m.typed(i) == "st" && m.flowTag(i) != "" {
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
			m.call(i, "both")
			continue
		}
		if m.drainOfTank(i) || m.is(i, cItem, "drain_valve") && !m.is(i, cPoint, "") && m.gaugedAt(i) {
			its[i].point = string(assess.HeaterDrain)
			continue
		}
		if m.houseSide(i) {
			its[i].point = "after_prv" // "street 130, house 62"
			continue
		}
		if m.hoseInList(i) {
			its[i].point = string(assess.Bibb)
			if its[i].text == "wash" {
				its[i].point = string(assess.Laundry) // "kit 58, lav 57, wash 58"
			}
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
			if v == string(assess.Street) && m.valved(i) || m.runs(i) || m.occasion(i) || m.hoseAfter(i) || m.withTaps(i) || m.leadsOver(i) {
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
			if k := i + 2; m.isMark(i+1, ",") && m.is(k, cPlace, "") && (m.closes(k) || m.text(k+1) == "one" && m.closes(k+1)) && m.isNum(i-2) != m.isNum(i-3) {
				v, _ := m.val(k, cPlace)
				its[i].point, its[k].role = v+"_bibb", roleTaken // "109 at the bib, side one"
				continue
			}
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
			if _, day := weekdays[m.text(i+1)]; its[i].text == "back" && (day || m.says(i+1, "tomorrow", "next")) {
				continue // "no tank back friday to put one in"
			}
			its[i].point = v + "_bibb"
			its[i].weak = true
		}
	}
}

// houseSide tells whether "house" at item i is the house's side of a regulator, as opposed
// to the street's: "street 130, house 62".
func (m *message) houseSide(i int) bool {
	t, before := m.text(i), m.text(i-1)
	if t != "house" && (t != "casa" || before == "la" || before == "en") || before == "the" || before == "in" {
		return false
	}
	return (m.isNum(i+1) || m.isNum(i-1) || m.text(i+1) == ":" && m.isNum(i+2) || m.houseGets(i)) && m.has(cPoint, "street")
}

func placeToBibb(s string) bool {
	switch s {
	case "yard", "yd", "hose", "house", "outdoor", "outside", "exterior", "garden", "wall", "patio", "hs", "yrd",
		"cold", "hall", "water", "-", "door", "downstairs", "upstairs", "side", "porch":
		return true
	}
	return false
}

func bibbToPlace(s string) bool {
	switch s {
	case "at", "on", "in", "the", "out", "of", "house", "by", "around", "round", "a", "la", "de", "el", "en",
		"del", "n", "-", "(", "to", "@", "is", "off", "near", "under", "next", "next to", "facing", "beside",
		"outside":
		return true
	}
	return false
}

// ahead finds an item of a class within n items after i, with only fillers between.
func (m *message) ahead(i int, c class, n int, filler func(string) bool) int {
	for k := i + 1; k < len(m.items) && k <= i+n; k++ {
		if m.is(k, c, "") && (!m.is(k, cSkip, "") || c == cPlace) {
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
		case "next door", "is", "was", "are", "were", "rr", "rear", "frt", "front", "side", "back", "faucet",
			"tap", "sink", "valve", "head", "wide", "full", "esta", "upstairs", "downstairs":
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
	case "open", "wide open", "flowing", "filling", "on", "cracked", "corriendo", "abierta", "abierto", "prendida",
		"llenando", "turned on", "cracked open", "full open", "full blast", "abiertas", "fills", "filled", "opened":
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
	case "shuts", "stops", "closes", "kicks", "runs", "starts", "turns", "shut", "stop", "cuts", "se", "cycles",
		"fills", "off", "cierra", "clicks", "quits", "changes", "finishes", "flushes", "shut off", "valve", "shts",
		"para", "goes", "opens", "comes", "cycle", "is", "gets":
		return true
	}
	return false
}

// hoseAfter tells whether the fixture only names a part: "washer hoses".
func (m *message) hoseAfter(i int) bool {
	switch m.text(i + 1) {
	case "hose", "hoses", "cartridge", "handle", "drain", "light", "remodel", "table", "door", "floor", "ceiling",
		"wall", "cabinet", "window", "st", "leak", "leaks", "drip", "drips", "curtain", "fan", "rug", "mat":
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
	for k < len(m.items) && k <= i+6 && (m.says(k, "and", "y", ",") || m.items[k].tags != nil && (m.is(k, cPoint, "") || m.is(k, cFixture, ""))) {
		k++
		if m.is(k, cFlowing, "") && m.text(k-1) == "and" {
			return true
		}
	}
	return false
}

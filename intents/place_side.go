package intents

import "strings"

// Lists of the lexicon that these rules know.
var (
	listBehindPrv   = listOf("behind prv")
	listMovesBack   = listOf("moves back")
	listSideShows   = listOf("side shows")
	listSettledDown = listOf("settled down")
)

// The two sides of the regulator, told by words that can be a time or a verb as well.

// besidePRV reads "after" and "before" that stand for the two sides of the
// regulator: "128 antes del regulador y 127 después".
func (m *message) besidePRV(i int) string {
	if m.is(i, cHint, "bothsides") && (m.numNear(i) || m.isMark(i-1, ",", ":")) &&
		(m.has(cItem, "prv") || m.has(cItem, "check_valve") && m.text(i) != "in and out") {
		return "street+after_prv" // "reg is junk: 119 both sides of it"
	}
	if m.says(i, "in", "out") && !m.has(cItem, "prv") && (m.has(cItem, "softener") || m.has(cHint, "filter")) {
		return "" // "softener 58 in 41 out"
	}
	switch {
	case m.inList(i, listBehindPrv):
		if m.aheadBeside(i) {
			return "after_prv" // "119# aft, 122# ahead"
		}
		afterNum := m.isNum(i-1) || m.isNum(i-2) && m.says(i-1, "right", "just")
		if !(afterNum || m.isNum(i+1) && (m.items[i].seg == m.items[i+1].seg)) || m.is(i+1, cItem, "") {
			return ""
		}
		if m.isNum(i-1) && m.has(cItem, "prv") &&
			m.right(i, 5, true, func(k int) bool { return m.is(k, cPoint, "street") && (m.isNum(k-1) || m.isNum(k+1)) }) >= 0 {
			return "after_prv" // "119 after it, 121 street"
		}
		if k := m.left(i, 9, true, func(k int) bool { return m.is(k, cPoint, "street") }); k >= 0 {
			t := m.text(k)
			if m.isNum(i+1) && (m.isNum(k+1) || m.isNum(k-1)) && !m.kinds.has(cBefore) && !m.kinds.has(cDid) {
				return "after_prv" // "street 119, after 117"
			}
			for _, p := range []string{"before", "b4", "bfr", "bef", "antes", "ahead", "in front", "upstream", "pre"} {
				if len(t) > len(p) && t[:len(p)] == p {
					return "after_prv"
				}
			}
		}
	case m.text(i) == "out":
		if m.is(i-1, cItem, "prv") && (m.isMark(i+1, "=", ":") && m.isNum(i+2) || m.isNum(i+1) && m.stopAt(i-2) && m.settingLike(i+1)) {
			return "after_prv" // "prv out=64", "PRV out 71"
		}
		enters := func(k int) bool {
			return m.items[k].point == "street" && (m.text(k) == "in" || m.is(k, cHint, "enters") && m.isNum(i-1))
		}
		if m.left(i, 4, true, enters) >= 0 {
			return "after_prv" // "110 into the reg and 62 out"
		}
	case m.text(i) == "in":
		// "131 in, 66 out"
		if k := m.right(i, 4, true, func(k int) bool { return m.text(k) == "out" || strings.HasPrefix(m.text(k), "out of ") }); m.isNum(i-1) && k > 0 && m.isNum(k-1) ||
			m.isNum(i+1) && k > 0 && m.isNum(k+1) {
			return "street"
		}
	case m.text(i) == "down":
		if m.isNum(i-1) && (i+1 == len(m.items) || m.items[i+1].mark) &&
			m.left(i, 6, true, func(k int) bool { return m.text(k) == "upstream" }) >= 0 {
			return "after_prv"
		}
	case m.text(i) == "ahead":
		if m.isNum(i-1) && (i+1 == len(m.items) || m.items[i+1].mark) || m.isNum(i+1) {
			return "street"
		}
		fallthrough
	case m.says(i, "before", "antes"):
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

// streetSide reads "st" at the head of a row of points: "st 92, aftr prv 58".
func (m *message) streetSide(i int) bool {
	if m.items[i].n != 1 || m.toks[m.items[i].tok].text != "st" || !m.isNum(i+1) || i > 0 && !m.items[i-1].mark || m.newlySet(i+1) {
		return false
	}
	if s := m.items[i].sent; i == m.sents[s].from && m.closes(i+1) && m.carried(s) != "prv" &&
		(m.has(cPoint, "") || m.has(cBibb, "") || m.has(cInitial, "")) {
		return true // a line of a list: "ST 74"
	}
	return m.right(i, 8, true, func(k int) bool { return m.is(k, cPoint, "") || m.is(k, cPlace, "") }) >= 0
}

// newlySet tells whether the number at i follows the deed on a regulator and the house shows as much
// behind it, as it would not if that were the street's: "prv replaced, st 60, tub now 61".
func (m *message) newlySet(i int) bool {
	const near = 5
	next := m.nextNum(i)
	if next < 0 || m.items[next].value < m.items[i].value-near || m.items[next].value > m.items[i].value+near {
		return false
	}
	deed := m.left(i, 6, false, func(k int) bool { return m.is(k, cDid, "") })
	return deed >= 0 && m.items[deed].sent == m.items[i].sent && m.has(cItem, "prv")
}

// leadsOver tells whether "before it" leads to a deed and is no place: "71 before it lit".
func (m *message) leadsOver(i int) bool {
	if !strings.HasSuffix(m.text(i), " it") {
		return false
	}
	if m.filterBefore(i) && !m.has(cItem, "prv") {
		return true // "filter clogged: 71 before it, 33 after it"
	}
	if i+1 >= len(m.items) {
		return false
	}
	if m.kinds.has(cDid) && strings.HasPrefix(m.text(i), "after") && m.is(i+1, cPoint, "") && m.isNum(i+2) && i == m.clauseStart(i) {
		return true // "lowered the prv to 60. after it kitchen 61"
	}
	return m.is(i+1, cState, "") || m.is(i+1, cOff, "") || m.is(i+1, cDid, "") || m.is(i+1, cHint, "lights") || m.inList(i+1, listSettledDown)
}

// filterBefore tells whether a filter or a softener was the talk before item i, and no regulator since.
func (m *message) filterBefore(i int) bool {
	if !m.has(cHint, "filter") && !m.has(cItem, "softener") {
		return false
	}
	for k := i - 1; k >= 0; k-- {
		switch t := m.text(k); {
		case m.is(k, cHint, "filter"), m.is(k, cItem, "softener"):
			return true
		case m.is(k, cPoint, "") && (strings.Contains(t, "prv") || strings.Contains(t, "reg")):
			return false // "118 before the prv, 65 after it"
		}
	}
	return false
}

// turnedBack tells whether "back" belongs to a verb: "dialed the reg back".
func (m *message) turnedBack(i int) bool {
	if m.text(i) == "back" && m.text(i-1) == "and" && m.isNum(i-2) && m.says(i-3, "to", "down to", "up to") && !m.isNum(i+1) {
		return true // "swings from 50 to 80 and back"
	}
	if t := m.text(i); t != "back" && t != "bck" || m.is(i+1, cBibb, "") || m.isNum(i+1) || m.isMark(i+1, ":", "=") {
		return false
	}
	if m.inList(i-1, listMovesBack) && m.closes(i) {
		return true // "dropped to 49, came right back"
	}
	if !m.is(i-1, cItem, "") && !m.says(i-1, "it", "her") {
		return false
	}
	return m.left(i, 3, false, func(k int) bool { return m.is(k, cDid, "set") || m.is(k, cBase, "set") || m.is(k, cHint, "shifts") }) >= 0
}

// inOrOut reads the two sides of the regulator told as a pair: "entrando 110
// saliendo 62", "entra con 118 y sale con 74", "arriba de la reguladora 120 y abajo 65".
func (m *message) inOrOut(i int) string {
	if t := m.text(i); t == "abajo" && m.numberOf(i) && m.left(i, 6, true, func(k int) bool {
		return m.items[k].point == "street" && strings.HasPrefix(m.text(k), "arriba")
	}) >= 0 {
		return "after_prv"
	}
	in, out := m.is(i, cHint, "enters"), m.is(i, cHint, "leaves")
	if !in && !out || !m.numberOf(i) && !m.isNum(i-1) && !(m.isNum(i-2) && m.is(i-1, cUnit, "")) {
		return ""
	}
	if out && m.is(i, cAfter, "") && m.tapOfNumber(i-1) {
		return "" // "kitchen 62 going out": when, not where
	}
	near := func(what string) bool {
		is := func(k int) bool { return m.is(k, cHint, what) }
		return m.left(i, 8, true, is) >= 0 || m.right(i, 8, true, is) >= 0
	}
	switch {
	case in && near("leaves"):
		return "street"
	case out && near("enters"):
		m.unsay(i) // "going out" is no time here
		return "after_prv"
	}
	return ""
}

// numberOf tells whether a number is told of the word at i: "entrando 110", "sale con 60".
func (m *message) numberOf(i int) bool {
	if m.isNum(i + 1) {
		return true
	}
	if m.inList(i+1, listSideShows) {
		return m.isNum(i + 2)
	}
	return false
}

package intents

import (
	"strings"

	"lazyhand/assess"
)

// Lists of the lexicon that these rules know.
var (
	listShutsOff  = listOf("shuts off")
	listMainWater = listOf("main water")
	listAllTaps   = listOf("all taps")
	listCityCrew  = listOf("city crew")
)

var shutOffWords = opener{lists: []list{listShutsOff}}

// shutsWater reads the house's water shut at item i, and not opened.
func (m *message) shutsWater(i int) bool {
	if !m.closesWater(i) || m.opensIt(i) || m.utilityBefore(i) {
		return false
	}
	m.addVerb(i, m.shutOrSet(i))
	return true
}

// closesWater tells whether the word at i closes the house's water: "el agua la
// cerré yo en la calle".
func (m *message) closesWater(i int) bool {
	if !m.said(i, keyShutsOff) {
		return false
	}
	if m.is(i, cDid, "") {
		return false
	}
	seg := m.items[i].seg
	for k := max(0, i-6); k < min(len(m.items), i+6); k++ {
		if m.items[k].seg != seg || k == i {
			continue
		}
		switch {
		case m.is(k, cFitting, "part") && m.text(k+1) == "to" && m.right(k+1, 2, false, func(j int) bool { return m.text(j) == "house" }) >= 0:
			return true // "closed the ball valve to the house"
		case m.inList(k, listMainWater):
			next := k + 1
			if m.is(next, cFitting, "part") {
				next++ // "the main valve was shut" is how it was found
			}
			if k < i && (m.inList(next, listLinks) || m.is(k-1, cNeg, "")) && m.text(i) != "cerre" {
				continue
			}
			return true
		case m.inList(k, listAllTaps):
			return false
		}
	}
	return false
}

// shutByCity tells whether the water that item i says is off, without who shut it, is off for work in
// the street: "water's off at the street, city working".
func (m *message) shutByCity(i int) bool {
	water := strings.TrimPrefix(m.text(i), "water is ")
	if !strings.HasPrefix(water, "water off") && !strings.HasPrefix(water, "waters off") && !strings.HasPrefix(water, "off") {
		return false
	}
	called := func(k int) bool {
		return m.signsOf(k).has(signHeeds) || strings.HasPrefix(m.text(k), "waiting") || m.says(k, "called", "calling")
	}
	city := func(k int) bool { return m.inList(k, listCityCrew) && m.left(k, 4, true, called) < 0 }
	return m.right(i, 8, true, city) >= 0 || m.left(i, 8, true, city) >= 0
}

// shutForWork returns what was done while the water was off, where a verb tells of water that was shut for
// no more than that: "had the water off to put in a tank", "turned the water off to hang the tank, back on
// now"; "" where it stays shut.
func (m *message) shutForWork(v *verb) string {
	if v.what != "shut" || v.objAt < 0 || len(m.moments) > 0 {
		return ""
	}
	over := m.left(v.at, 2, false, func(k int) bool { return m.says(k, "had", "tenia", "tuve") }) >= 0 ||
		m.right(v.objAt, 8, true, func(k int) bool { return m.says(k, "back on", "on now", "on again") }) >= 0
	if !over {
		return ""
	}
	for k := v.at + 1; k < v.objAt; k++ {
		switch what, ok := m.val(k, cDo); {
		case ok && what == "install":
			return "installed"
		case ok && what == "replace":
			return "replaced"
		}
		if !m.says(k, "to", "para", "while", "i", "so") {
			return ""
		}
	}
	return ""
}

// opensIt tells whether a valve that is called closed was only found so: "curb stop
// closed, I opened it", "curb stop found closed. Opened." Opening one is no work.
func (m *message) opensIt(i int) bool {
	if m.text(i-1) == "found" && m.text(i+1) == "." && strings.HasPrefix(m.text(i+2), "opened") {
		return true
	}
	if m.left(i, 5, false, func(k int) bool { return m.says(k, "somebody", "someone", "alguien") && m.says(k+1, "had", "tenia") }) >= 0 {
		return true // "somebody had the main closed"
	}
	return m.right(i, 8, true, func(k int) bool {
		return strings.HasPrefix(m.text(k), "opened") || m.text(k) == "turned it on" || m.text(k) == "turned it back on"
	}) >= 0
}

// foundShut tells whether what is opened at item i is a valve that was found half closed.
func (m *message) foundShut(i int) bool {
	return strings.HasPrefix(m.text(i), "opened") && m.left(i, 8, false, func(k int) bool { return m.is(k, cHint, "changed") }) >= 0
}

// valveMoved tells whether the main named at item i is a valve that was found shut or was opened,
// and no place of a gauge: "main valve was half shut, opened it, 62 now", "before I opened the main".
func (m *message) valveMoved(i int) bool {
	t := m.text(i)
	if m.items[i].point != string(assess.Street) || strings.HasPrefix(t, "at ") || m.says(i-1, "at", "@", "en", "of", "from") {
		return false
	}
	if k := i - 1; strings.HasSuffix(m.text(k), "opened") || m.is(k, cDeterminer, "") && strings.HasSuffix(m.text(k-1), "opened") {
		return true
	}
	valve := strings.HasSuffix(t, "stop") || strings.HasSuffix(t, "valve") || m.says(i, "main", "the main", "house main") || m.is(i+1, cPart, "")
	return valve && !m.isNum(i-1) && m.right(i, 4, false, func(k int) bool { return m.is(k, cHint, "changed") }) >= 0
}

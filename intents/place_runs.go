package intents

import "slices"

// Lists of the lexicon that these rules know.
var (
	listBeforeRunning   = listOf("before running")
	listRunningFixture  = listOf("running fixture")
	listBeforeNounInRun = listOf("before noun in run")
	listOpening         = listOf("opening")
	listOnOccasion      = listOf("on occasion")
	listBeforeOccasion  = listOf("before occasion")
	listFixtureDoes     = listOf("fixture does")
	listFixtureParts    = listOf("fixture parts")
)

// Fixtures that are named because water runs there, not because a gauge sits there.

// runGate is that of taps that only run, or ran for what is told against a pressure at rest.
var runGate = gateOf(opener{classes: setOf(cStatic), words: []string{"running", "run", "going"}, lists: []list{listRunningFixture, listOpening}})

// runs tells whether the fixture at i is said to be running: then it is no test point.
func (m *message) runs(i int) bool {
	if m.shut(runGate) {
		return false
	}
	k := i + 1
	for k < len(m.items) && k <= i+3 {
		if m.inList(k, listBeforeRunning) {
			k++
			continue
		}
		break
	}
	if k == i+1 && (m.readAt(i) || m.isNum(i-1) && m.text(k) == "flowing" && m.isAny(i, cPoint, "street", "after_prv")) || m.onlyRunsThere(i, k) {
		return false
	}
	occasion := m.occasionFor(i)
	switch {
	case m.says(k, "running", "run", "going"):
		if occasion {
			return true // "66 rear bib and while the shower is running 48"
		}
		if m.isNum(k+1) || (m.text(k+1) == "at" || m.text(k+1) == "about" || m.text(k+1) == "around") && m.isNum(k+2) {
			return false // "the main is running 118"
		}
		return true
	case m.inList(k, listRunningFixture):
		if m.text(k) == "on" {
			if m.inList(k+1, listBeforeNounInRun) && !(m.text(k+1) == "it" && occasion) {
				return false
			}
			return (occasion || !m.isNum(k+1)) && !m.onStreet(k)
		}
		return true
	}
	if m.inList(i-1, listOpening) || m.opensAgainst(i) {
		return true
	}
	if m.text(i-1) == "the" || m.text(i-1) == "a" || m.text(i-1) == "la" {
		if m.inList(i-2, listOpening) {
			return true
		}
	}
	return false
}

// opensAgainst tells whether the fixture at item i is what ran for the pressure behind it, told against
// a higher one: "cocina 64 sin nada abierto, con la regadera 50".
func (m *message) opensAgainst(i int) bool {
	k := i - 1
	for m.is(k, cDeterminer, "") {
		k--
	}
	if k <= 0 || !m.isNum(i+1) || m.items[i+1].value < leastPSI || !m.says(k, "with", "w/", "w", "con") || !m.has(cStatic, "") {
		return false
	}
	p := m.prevNum(k)
	return p >= 0 && m.items[p].value > m.items[i+1].value
}

// occasionFor tells whether a word that tells on what occasion a gauge was read leads to the fixture at
// i: "while the upstairs tub".
func (m *message) occasionFor(i int) bool {
	k := i - 1
	for k >= i-3 && (m.is(k, cDeterminer, "") || m.says(k, "upstairs", "downstairs", "hall", "master", "guest", "main", "other", "both") || m.is(k, cPlace, "")) {
		k--
	}
	return m.is(k, cHint, "whiles")
}

// readAt tells whether a pressure is said to be read at the fixture at i: "31 psi at the
// lav running". There the gauge sits, whatever runs.
func (m *message) readAt(i int) bool {
	k := i - 1
	if m.is(k, cDeterminer, "") {
		k--
	}
	return m.inList(k, listReadAt) && m.isNum(k-1) && m.items[k-1].value >= leastPSI
}

// onlyRunsThere tells whether the indoor tap at item i, of which the word at k says that it runs, stands
// right behind a pressure and is the only tap of a message whose gauge is in no hand: "48 kitchen wide
// open" was read there.
func (m *message) onlyRunsThere(i, k int) bool {
	if !m.isNum(i-1) || m.items[i-1].value < leastPSI || !m.says(k, "flowing", "wide open", "full open") || !m.closes(k) || m.gaugeInHand() {
		return false
	}
	for j := range m.items {
		if j != i && (m.meets(j, taps) || m.is(j, cPlace, "")) {
			return false
		}
	}
	return m.is(i, cPoint, "kitchen") || m.is(i, cPoint, "laundry")
}

// onlyFlowsThere is the same of the phrase at item i: "48 kitchen flowing".
func (m *message) onlyFlowsThere(i int) bool {
	return m.isNum(i-1) && m.items[i-1].value >= leastPSI && m.closes(i) && !m.gaugeInHand() &&
		!slices.ContainsFunc(m.items, func(it item) bool { return it.kinds.meets(taps) || it.kinds.has(cPlace) })
}

// withTaps tells whether item i is one of the taps of "44 with hose and tub".
func (m *message) withTaps(i int) bool {
	for k := i - 1; k > 0 && k >= i-6 && !m.items[k].mark && (m.items[k].num == nil || m.smallCount(k)); k-- {
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
		switch {
		case m.inList(k, listOnOccasion):
			return !m.isNum(i+1) && m.verbAfter(i)
		case m.inList(k, listBeforeOccasion):
		default:
			return false
		}
	}
	return false
}

// verbAfter tells whether what follows the fixture at item i says what it does: "shuts off".
func (m *message) verbAfter(i int) bool {
	return m.inList(i+1, listFixtureDoes)
}

// hoseAfter tells whether the fixture only names a part: "washer hoses".
func (m *message) hoseAfter(i int) bool {
	if m.inList(i+1, listFixtureParts) {
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
	if !m.kinds.has(cFlowing) {
		return false
	}
	k := i + 1
	for k < len(m.items) && k <= i+6 &&
		(m.says(k, "and", "y", ",", "both", "all") || m.is(k, cDeterminer, "") || m.items[k].tags != nil && (m.is(k, cPoint, "") || m.is(k, cFixture, ""))) {
		k++
		if m.is(k, cFlowing, "") && (m.text(k-1) == "and" || m.is(k-1, cDeterminer, "") && m.text(k-2) == "and") {
			return true
		}
	}
	return false
}

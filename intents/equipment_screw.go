package intents

import (
	"strings"

	"lazyhand/assess"
)

// A regulator whose screw cannot be turned has failed, however it is told: whoever is told to turn
// such a screw breaks it.

// Lists of the lexicon that these rules know.
var listReasons = listOf("reasons")

// screwReach is how many items may lie between the screw and what is said of it.
const screwReach = 5

var (
	screwGate = onlyWith(cHint, "regscrew", "cantturn")
	bodyGate  = onlyWith(cHint, "regscrew", "regbody", "crack")
)

// stuckScrew gives the regulator the condition that its screw is told in: "screw is frozen",
// "couldn't get the adjuster to budge", "no se puede ajustar la válvula".
func (m *message) stuckScrew() {
	if m.shut(screwGate) {
		return
	}
	for i := range m.items {
		if !m.isStuckScrew(i) && !m.cannotBeSet(i) {
			continue
		}
		if f := m.equipment.get("prv", i); !f.Absent() {
			f.Condition, f.said = assess.Failed, true
			m.note(i, "prv", "cond")
		}
	}
}

// isStuckScrew tells whether item i is the regulator's screw and cannot be turned.
func (m *message) isStuckScrew(i int) bool {
	if !m.is(i, cHint, "regscrew") || m.screwOfOther(i) || m.screwInDoubt(i) {
		return false
	}
	said := func(k int) bool {
		here := m.items[k].seg == m.items[i].seg
		return (m.is(k, cHint, "wontturn") && (here || m.onlyAMark(i, k)) || m.is(k, cCond, "failed") && here) && !m.turnedRound(k)
	}
	cannot := func(k int) bool { return m.is(k, cHint, "cantturn") }
	return m.right(i, screwReach, true, said) >= 0 || m.left(i, 3, true, said) >= 0 || m.left(i, screwReach, true, cannot) >= 0
}

// onlyAMark tells whether nothing that something could be said of stands between the items a and b:
// "tornillo oxidado, no da vuelta".
func (m *message) onlyAMark(a, b int) bool {
	for k := a + 1; k < b; k++ {
		if m.isNum(k) || m.meets(k, nounsOfThings) || m.is(k, cItem, "") {
			return false
		}
	}
	return a < b
}

var nounsOfThings = setOf(cFitting, cFixture, cPoint, cBibb)

// cannotBeSet tells whether item i says that a regulator named beside it cannot be adjusted, and gives
// no other reason for it: "couldn't adjust the reg".
func (m *message) cannotBeSet(i int) bool {
	if !m.is(i, cHint, "cantturn") || m.screwInDoubt(i) {
		return false
	}
	turn := m.right(i, 3, true, func(k int) bool { return m.is(k, cHint, "turnsscrew") })
	if turn < 0 {
		return false
	}
	prv := func(k int) bool { return m.is(k, cItem, "prv") && m.items[k].seg == m.items[i].seg }
	valve := func(k int) bool { return prv(k) || m.says(k, "valvula", "la valvula") && !m.has(cItem, "") }
	at := m.right(turn, 3, true, valve)
	if at < 0 {
		at = m.left(i, 4, true, prv)
	} else if !m.closes(at) || m.items[min(at+1, len(m.items)-1)].mark && m.inList(at+2, listReasons) {
		return false // "couldn't adjust the reg without a ladder", "couldn't adjust it, no key for the box"
	}
	return at >= 0
}

// wornBody gives the regulator the condition that its outside is told in: "leaking at the bonnet",
// "hairline crack in the reg body".
func (m *message) wornBody() {
	if m.shut(bodyGate) {
		return
	}
	for i := range m.items {
		if !m.weepsOutside(i) && !m.bodyCracked(i) {
			continue
		}
		if f := m.equipment.get("prv", i); f.Condition != assess.Failed {
			f.Condition, f.said = assess.Suspect, true
			m.note(i, "prv", "cond")
		}
	}
}

// weepsOutside tells whether item i is where a regulator leaks to the outside: its bonnet, or its
// screw.
func (m *message) weepsOutside(i int) bool {
	body := m.is(i, cHint, "regbody") && (m.says(i, "bonnet", "spring cage", "bell housing", "bonete") || m.has(cItem, "prv")) || m.is(i, cHint, "regscrew")
	if !body || m.screwInDoubt(i) || m.has(cItem, "") && !m.has(cItem, "prv") {
		return false
	}
	leaks := func(k int) bool {
		return (m.is(k, cSym, "leak") || m.is(k, cCond, "suspect") && leaksOut(m.text(k))) && m.items[k].seg == m.items[i].seg && !m.turnedRound(k)
	}
	return m.left(i, 4, true, leaks) >= 0 || m.right(i, 2, true, leaks) >= 0
}

// leaksOut tells whether a word of condition is one of water that comes out.
func leaksOut(word string) bool {
	return strings.HasPrefix(word, "weep") || strings.HasPrefix(word, "seep")
}

// bodyCracked tells whether item i is a crack in the regulator.
func (m *message) bodyCracked(i int) bool {
	if !m.is(i, cHint, "crack") || m.screwInDoubt(i) || m.turnedRound(i) {
		return false
	}
	ofPRV := func(k int) bool { return m.is(k, cItem, "prv") && m.items[k].seg == m.items[i].seg }
	return m.right(i, 4, true, ofPRV) >= 0 || m.left(i, 3, true, ofPRV) >= 0
}

// screwOfOther tells whether the screw at item i belongs to something else than a regulator: "handle
// screw is stripped", "the screw on the drain".
func (m *message) screwOfOther(i int) bool {
	if m.is(i-1, cFitting, "") || m.is(i-1, cItem, "") && !m.is(i-1, cItem, "prv") || m.items[max(i-1, 0)].point != "" {
		return true
	}
	prv := func(k int) bool { return m.is(k, cItem, "prv") && m.items[k].seg == m.items[i].seg }
	if tap := func(k int) bool {
		return m.meets(k, taps) && m.items[k].seg == m.items[i].seg && !m.isNum(k+1) && !m.isNum(k-1)
	}; m.left(i, 4, true, prv) < 0 && m.right(i, 6, true, tap) >= 0 {
		return true // "handle screw is stripped on the kitchen faucet"
	}
	if !m.says(i+1, "on", "of", "in", "del", "de", "en") {
		return false
	}
	other := func(k int) bool {
		return m.is(k, cFitting, "") || m.is(k, cItem, "") && !m.is(k, cItem, "prv") || m.items[k].point != "" || m.signsOf(k).has(signThing)
	}
	return m.right(i, 3, true, other) >= 0
}

// screwInDoubt tells whether what is said of the screw at item i is asked, feared or over: it was
// got loose in the end.
func (m *message) screwInDoubt(i int) bool {
	if s := m.items[i].sent; m.sents[s].question || m.onlyIf(i) || m.says(m.sents[s].from, "is", "was", "if") {
		return true
	}
	return m.freedLater(i)
}

// freedLater tells whether what is stuck at item i is told later to have come loose.
func (m *message) freedLater(i int) bool {
	for k := i; k < len(m.items); k++ {
		if m.is(k, cHint, "freed") {
			return true
		}
	}
	return false
}

// turnedRound tells whether a word right before item k turns it round: "not frozen".
func (m *message) turnedRound(k int) bool {
	return m.left(k, 2, false, func(j int) bool { return m.inList(j, listTurnsRound) || m.text(j) == "isnt" || m.text(j) == "no" }) >= 0
}

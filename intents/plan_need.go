package intents

import (
	"strings"

	"lazyhand/assess"
)

// Lists of the lexicon that these rules know.
var (
	listOffers         = listOf("offers")
	listOneNeeded      = listOf("one needed")
	listYaNo           = listOf("ya no")
	listWhom           = listOf("whom")
	listNeeds          = listOf("needs")
	listBeforeNeeded   = listOf("before needed")
	listNeededServices = listOf("needed services")
	listNeedsService   = listOf("needs service")
	listBeforeService  = listOf("before service")
)

// What is needed, quoted or advised.

// needless tells whether what the item at i is needed for is denied: "no necesita
// reguladora", "doesn't need a tank".
func (m *message) needless(i int) bool {
	return m.left(i, 4, false, func(k int) bool {
		return m.is(k, cWill, "") && (m.inList(k-1, listYaNo) || m.inList(k-1, listClitics) && m.text(k-2) == "no")
	}) >= 0
}

// byCode tells whether the clause of item i says what a code asks for: "code says over 80 needs a prv".
func (m *message) byCode(i int) bool {
	return m.left(i, 8, true, func(k int) bool {
		return strings.HasPrefix(m.text(k), "code") || m.text(k) == "codigo" || m.text(k) == "over" && m.isNum(k+1) && m.says(k+2, "needs", "requires", "calls for")
	}) >= 0
}

// neededGate is that of what is needed, quoted or called a good idea.
var neededGate = gateOf(opener{hints: []string{"needs", "advised", "pricing"}, lists: []list{listNeeds, listOffers}})

// needs tells whether the item at i is what is needed or quoted: "needs a new prv".
func (m *message) needs(i int) bool {
	for k := i - 1; k >= 0 && k >= i-3 && m.items[k].sent == m.items[i].sent; k-- {
		if m.is(k, cHint, "needs") {
			return !m.denied(k)
		}
		if m.items[k].site {
			continue // "I owe 88 Parsons Green Rd an expansion tank"
		}
		switch {
		case m.inList(k, listNeeds) && m.otherNeeds(k):
			return false
		case m.inList(k, listNeeds):
			return !m.denied(k) && m.text(k-1) != "wont" && m.text(k-1) != "no"
		case m.says(k, "and", "y", "plus"):
			for k > 1 && (m.taken(k-1) || m.numIs(k-1, roleIgnored) && m.items[k-1].why != "a difference" || m.says(k-1, "at", "for", "$")) {
				k-- // "quoted the regulator at $480 and the tank at $260"
			}
			if !m.is(k-1, cItem, "") {
				return false
			}
			return m.needs(k - 1)
		case m.inList(k, listBeforeNeeded):
			if (m.text(k) == "for" || m.text(k) == "on") && m.is(k-1, cHint, "pricing") {
				return true // "gave a price for a heater"
			}
			if m.text(k) == "on" && !m.isNum(k-1) {
				return false
			}
			if (m.text(k) == "for" || m.text(k) == "on") && m.isNum(k-1) {
				for j := m.sents[m.items[i].sent].from; j < k; j++ {
					if m.inList(j, listOffers) || m.is(j, cHint, "pricing") {
						return true
					}
				}
			}
		default:
			if m.is(k, cDeterminer, "") || m.items[k].num != nil && m.items[k].unit == "gal" || m.is(k, cFuel, "") || m.is(k, cMaterial, "") {
				continue // "quoted a 50 gal gas heater"
			}
			return false
		}
	}
	return false
}

// otherNeeds tells whether the need at item k is another house's: "neighbor at 14 needs a prv too".
func (m *message) otherNeeds(k int) bool {
	for k--; k >= 0 && (m.items[k].num != nil || m.items[k].site || m.is(k, cDeterminer, "") || m.says(k, "at", "in", "on", "en")); k-- {
	}
	return m.is(k, cWhose, "other")
}

// onlyServed tells whether what is needed of the item at i is told after it and is no
// new one: "wants the reg lowered", "needs the heater flushed".
func (m *message) onlyServed(i int) bool {
	k := i + 1
	for m.is(k, cHint, "bit") || m.is(k, cDeterminer, "") {
		k++
	}
	return (m.is(k, cDid, "") || m.is(k, cDo, "set") || m.is(k, cDo, "other")) && !m.is(k, cDo, "replace") &&
		!m.is(k, cDo, "install") && !m.items[k].mark
}

// goodIdea tells whether the item at i is called a good idea: "expansion tank would help".
func (m *message) goodIdea(i int) bool {
	return m.is(i+1, cHint, "advised") || m.items[min(i+1, len(m.items)-1)].site && m.is(i+2, cHint, "advised")
}

// neededCode names the follow-up that fits the need of an item.
func (m *message) neededCode(item string) (assess.Action, bool) {
	switch item {
	case "prv":
		return assess.ReplacePRV, true
	case "expansion_tank":
		if m.failedTank() {
			return assess.ReplaceTank, true
		}
		return assess.InstallTank, true
	case "heater", "softener", "recirc", "check_valve", "drain_valve":
		return assess.OtherAction, true
	}
	return "", false
}

// serviceNeeded tells whether the word at i is a service that is said to be
// needed: "heater needs a flush", "needs flushed", "hay que lavar el boiler".
func (m *message) serviceNeeded(i int) bool {
	switch {
	case m.inList(i, listNeededServices):
	default:
		return false
	}
	later := func(k int) bool { return m.is(k, cHint, "later") && m.items[k].seg == m.items[i].seg }
	if orderForm(m.text(i)) && (m.laterIn(i) || m.left(i, 4, true, later) >= 0) && !m.denied(i) {
		return true // "flush the heater next visit"
	}
	if m.offered(i) {
		return true
	}
	for k := i - 1; k >= 0 && k >= i-3 && m.items[k].seg == m.items[i].seg; k-- {
		switch {
		case m.inList(k, listNeedsService):
			return !m.denied(k)
		case m.inList(k, listBeforeService):
		default:
			return false
		}
	}
	return false
}

// offered tells whether the service at item i is what was needed or quoted, told with its heater
// or the customer between: "quoted her a heater flush", "needs a heater flush".
func (m *message) offered(i int) bool {
	k := i - 1
	for m.is(k, cDeterminer, "") || m.is(k, cItem, "heater") || m.inList(k, listWhom) {
		k--
	}
	if k < 0 || m.items[k].seg != m.items[i].seg || m.denied(k) {
		return false
	}
	t := m.text(k)
	needed := m.is(k, cWill, "") && (m.is(k, cHint, "advised") || strings.HasPrefix(t, "need"))
	return needed || m.inList(k, listOffers) || m.isAny(k, cHint, "needs", "quoted") && t != "wanted"
}

// oneNeeded reads "no tank, quoted her one", "no exp tank, told him he needs one".
func (m *message) oneNeeded(i, s int) (action, bool) {
	if !m.inList(i, listOneNeeded) || !m.needs(i) && !m.goodIdea(i) && !m.neededThen(i) {
		return action{}, false
	}
	obj, _ := m.topicBefore(i)
	if m.text(i) == "both" {
		if !m.closes(i) && !m.says(i+1, "for") || !m.failedTank() || !m.prvFails() {
			return action{}, false
		}
		obj = "prv" // the tank follows it: "prv worn, tank shot. Quoted both"
	}
	if obj == "" {
		obj = m.carried(s)
	}
	code, ok := m.neededCode(obj)
	return action{at: i, code: code, needed: true}, ok && (code != assess.OtherAction || obj == "drain_valve")
}

// neededThen tells whether the new one at item i is said to be needed right behind it: "shot, new one needed".
func (m *message) neededThen(i int) bool {
	return m.text(i) == "new one" && (m.inList(i+1, listNeeds) || m.says(i+1, "wanted")) && m.closes(i+1) && !m.is(i-1, cNeg, "")
}

// prvFails tells whether a regulator is said to be failing in the clause that names it or in one that goes on from it.
func (m *message) prvFails() bool {
	for k := range m.items {
		if !m.is(k, cItem, "prv") || m.taken(k) {
			continue
		}
		for j := k + 1; j < m.sents[m.items[k].sent].to && j < k+10 && !m.is(j, cItem, ""); j++ {
			if m.isAny(j, cCond, "failed", "suspect") {
				return true
			}
		}
	}
	return false
}

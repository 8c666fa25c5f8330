package intents

import (
	"slices"

	"lazyhand/assess"
)

// Parts put in, taken out and still to come.

// takenOut tells whether the item at i is the old part: "took the old heater
// out", "old one was a 2004".
func (m *message) takenOut(i int) bool {
	for k := i - 1; k >= 0 && k >= i-4 && m.items[k].sent == m.items[i].sent; k-- {
		if m.is(k, cHint, "takesout") && (!m.is(k, cHint, "takesoff") || m.off(k)) {
			return true
		}
		if m.text(k) == "old" {
			return m.replaces()
		}
		if m.items[k].mark || m.is(k, cItem, "") {
			break
		}
	}
	return false
}

// replaces tells whether the message tells that something was replaced.
func (m *message) replaces() bool {
	return slices.ContainsFunc(m.verbs, func(v verb) bool { return v.done && v.what == "replaced" })
}

// workOn tells whether the item at i is the object of a deed.
func (m *message) workOn(i int) bool {
	for _, v := range m.verbs {
		if v.objAt == i && (v.done || v.planned && !v.state) {
			return true
		}
		if v.done && v.object == "expansion_tank" && (v.what == "installed" || v.what == "replaced") {
			if c, ok := m.val(i, cItem); ok && m.itemCode(i, c) == "expansion_tank" {
				return true
			}
		}
	}
	return false
}

// planOn tells whether the item at i is the object of a plan.
func (m *message) planOn(i int) bool {
	for _, p := range m.plans {
		if m.items[p.at].sent != m.items[i].sent {
			continue
		}
		switch p.Action {
		case assess.InstallTank, assess.ReplaceTank:
			if c, ok := m.val(i, cItem); ok && m.itemCode(i, c) == "expansion_tank" {
				return true
			}
		case assess.OtherAction:
			if abs(p.at-i) <= 6 && m.items[p.at].seg == m.items[i].seg {
				return true
			}
		}
	}
	return false
}

// replacedAt returns where the deed that replaced an item is told, -1 if none.
func (m *message) replacedAt(item string) int {
	for _, w := range m.work {
		switch {
		case w.Action == assess.ReplacedPRV && item == "prv", w.Action == assess.ReplacedTank && item == "expansion_tank",
			w.Action == assess.ReplacedHeater && item == "heater", w.Action == assess.ReplacedDrainValve && item == "drain_valve":
			return w.at
		}
	}
	return -1
}

// newWords tells whether a fact told before the deed is of the new part: "new
// 50 gal electric heater put in".
func (m *message) newWords(a, deed int) bool {
	if m.items[a].sent != m.items[deed].sent {
		return false
	}
	for _, v := range m.verbs {
		if (v.renews || v.what == "installed") && v.at == deed && v.objAt >= 0 && v.objAt <= a {
			return true // "50 gallon propane in its place"
		}
	}
	for k := a - 1; k >= m.sents[m.items[a].sent].from && k >= a-4; k-- {
		if m.is(k, cPart, "new") || m.text(k) == "now" {
			return true // "heater now a 65 gal heat pump"
		}
	}
	return false
}

var truckGate = onlyWith(cHint, "truck")

// onTruck tells whether the thing at item i is one of the shop's, not of a house: "the
// 50 gal electric is still on my truck".
func (m *message) onTruck(i int) bool {
	if m.shut(truckGate) {
		return false
	}
	k := m.right(i, 7, true, func(k int) bool { return m.is(k, cHint, "truck") })
	if k < 0 || m.items[k].seg != m.items[i].seg {
		return false
	}
	for j := k - 1; j > i && j >= k-2; j-- {
		switch m.text(j) {
		case "on", "in", "at", "off":
			return true
		}
	}
	return false
}

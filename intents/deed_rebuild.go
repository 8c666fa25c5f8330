package intents

import (
	"strings"

	"lazyhand/assess"
)

var rebuildsGate = onlyWith(cHint, "inside", "innerdeed")

// rebuilds reads what was done to the inside of a regulator at item i: "swapped spring
// and diaphragm", "scrubbed the screen", "the reg got a new cartridge".
func (m *message) rebuilds(i int) bool {
	if m.shut(rebuildsGate) {
		return false
	}
	if m.cleanedStrainer(i) {
		v := m.addVerb(i, "rebuilt")
		v.object, v.objAt = "prv", i
		return true
	}
	if m.is(i, cHint, "inside") && m.underJob(i) && !m.planish(m.items[i].sent) &&
		(m.insideOf(i, i) == "prv" || m.insideOf(i, i) == "" && m.is(i, cDid, "rebuilt")) {
		// "Did: kit in regulator, new seat"
		m.verbs = append(m.verbs, verb{at: i, what: "rebuilt", done: !m.is(i-1, cNeg, ""), object: "prv", objAt: i})
		return true
	}
	if !m.is(i, cHint, "innerdeed") || m.is(i, cDid, "rebuilt") && !m.is(i, cHint, "cleans") {
		return false
	}
	inside := func(k int) bool {
		return (m.is(k, cHint, "inside") || m.is(k, cDid, "rebuilt") && k > i) && m.items[k].point == "" && m.items[k].seg == m.items[i].seg
	}
	in := m.right(i, 6, true, inside)
	if in > 0 && m.right(i, in-i, true, func(k int) bool { return m.is(k, cItem, "") && !m.is(k, cItem, "prv") }) >= 0 {
		in = -1 // "flushed the heater and cleaned the prv strainer"
	}
	if in < 0 {
		in = m.left(i, 4, true, inside)
	}
	if in < 0 && m.is(i, cHint, "cleans") {
		// "reg sieve was full of pebbles, cleaned and reassembled"
		in = m.left(i, 12, true, func(k int) bool {
			return m.is(k, cHint, "inside") && m.items[k].point == "" && m.insideOf(k, k) == "prv"
		})
	}
	if s := m.items[i].sent; in < 0 && m.is(i, cHint, "cleans") && s > 0 && m.text(i+1) == "it" && m.closes(i+1) {
		// "… but the strainer was packed with sand. Cleaned it."
		for k := i - 1; k >= m.sents[s-1].from && in < 0; k-- {
			if m.is(k, cHint, "inside") && m.items[k].point == "" && !m.is(k, cItem, "") {
				in = k
			}
		}
	}
	if in < 0 || m.insideOf(in, i) != "prv" {
		return false
	}
	v := m.addVerb(i, "rebuilt")
	v.object, v.objAt = "prv", in
	return true
}

// cleanedStrainer tells whether the word at i cleaned a strainer that the sentence before names, of
// nothing else than a regulator: "strainer's plugged solid. Cleaned it", "el filtro está tapado. Lo
// limpié".
func (m *message) cleanedStrainer(i int) bool {
	s := m.items[i].sent
	if !m.is(i, cDid, "rebuilt") || s == 0 || m.text(i+1) != "it" && !m.says(i-1, "lo", "la", "le") {
		return false
	}
	strainer := false
	for k := m.sents[s-1].from; k < m.sents[s-1].to; k++ {
		switch {
		case m.is(k, cPart, "strainer") && m.inList(k, listStrainers) && !m.says(k+1, "de", "del") && m.text(k-1) != "water":
			strainer = true
		case m.items[k].point != "" && !m.items[k].weak, m.is(k, cFixture, ""), m.is(k, cBibb, ""), m.is(k, cItem, "") && !m.is(k, cItem, "prv"):
			return false
		}
	}
	return strainer
}

// insideOf returns the equipment that the inner part at item in is of: what its clause
// names, a faucet too, else what was told last.
func (m *message) insideOf(in, deed int) string {
	of := ""
	for k := m.sents[m.items[in].sent].from; k < m.sents[m.items[in].sent].to; k++ {
		if m.items[k].seg != m.items[in].seg && m.items[k].seg != m.items[deed].seg {
			continue
		}
		if v, ok := m.val(k, cItem); ok && v != "gauge" {
			of = m.itemCode(k, v)
		} else if m.byPRV(k) || m.is(k, cPart, "strainer") && strings.Contains(m.text(k), "prv") {
			of = "prv" // "out of the regulator strainer"
		} else if (m.items[k].point != "" && !m.items[k].weak || m.is(k, cFitting, "part") || m.is(k, cFitting, "sure") ||
			m.is(k, cBibb, "")) && !m.is(k, cHint, "inside") {
			return "fixture"
		}
	}
	if of == "" && m.tapBefore(min(in, deed)) {
		return "fixture" // "kitchen faucet was dripping, put a new cartridge in"
	}
	if of == "" {
		of = m.carriedTo(min(in, deed))
	}
	for k := in; of == "" && k >= 0; k-- {
		if m.byPRV(k) {
			of = "prv" // "after PRV 96. Put in a rebuild kit"
		}
	}
	return of
}

// tapBefore tells whether the sentence of item i names a tap, with no pressure there, and no equipment
// before it.
func (m *message) tapBefore(i int) bool {
	pressure := func(k int) bool { return m.isNum(k) && m.items[k].value >= leastPSI && !m.items[k].num.money }
	if m.left(i, 12, true, pressure) >= 0 {
		return false
	}
	tap := func(k int) bool { return m.meets(k, taps) && !m.byPRV(k) && !m.is(k, cPoint, string(assess.Street)) }
	return m.left(i, 12, true, tap) >= 0 && m.left(i, 12, true, func(k int) bool { return m.is(k, cItem, "") || m.byPRV(k) }) < 0
}

var clearsHeaterGate = onlyWith(cHint, "clears")

// clearsHeater reads a word at item i that brings sediment out of a heater: "blew the
// crud out of her hot water tank", "ran vinegar through the heater".
func (m *message) clearsHeater(i int) bool {
	if m.shut(clearsHeaterGate) || !m.is(i, cHint, "clears") || m.is(i, cDid, "flushed") && m.is(i+1, cItem, "heater") {
		return false
	}
	ours := func(k int) bool { return m.items[k].seg == m.items[i].seg }
	if m.right(i, 6, true, func(k int) bool { return m.is(k, cHint, "sediment") && ours(k) }) < 0 ||
		m.right(i, 12, true, func(k int) bool { return m.is(k, cItem, "heater") && ours(k) }) < 0 {
		return false
	}
	m.addVerb(i, "flushed").object = "heater"
	return true
}

// rinses tells whether the word at i cleans a vessel from within: "rinsed the heater",
// "cleaned out the heater". Nothing of the vessel may be named as what is cleaned.
func (m *message) rinses(i int) bool {
	t := m.text(i)
	if !strings.HasPrefix(t, "rinsed") && !strings.HasPrefix(t, "washed") && !strings.HasSuffix(t, " out") {
		return false
	}
	k := m.right(i, 3, false, func(k int) bool { return m.is(k, cItem, "heater") })
	return k >= 0 && (m.closes(k) || m.items[k+1].tags != nil)
}

package intents

import (
	"slices"
	"strings"

	"lazyhand/assess"
)

var flowOpener = opener{
	classes: setOf(cStatic, cFlowing),
	hints:   []string{"flows", "rests", "quiet", "uses"},
	words: slices.Concat(
		[]string{"flow", "with", "w/", "w", "con"},
		[]string{
			"running", "open", "wide open", "abiertas", "abiertos", "prendidas", "on", "flowing", "drawing",
			"going", "opened", "cracked", "filling", "abierto", "abierta", "corriendo", "prendido", "prendida",
		},
		[]string{
			"off", "closed", "shut", "cerrado", "cerradas", "apagado", "cerrada", "out", "clsd", "turned off",
			"closed off", "apagados", "shut down",
		}),
	typed: []string{"st", "fl", "res"},
}

// flowTag reads the running or resting of water at item i.
func (m *message) flowTag(i int) assess.Flow {
	if !m.begins(i, keyFlow) {
		return ""
	}
	switch {
	case m.text(i) == "stat" && m.right(i, 3, false, func(k int) bool { return m.is(k, cItem, "heater") }) >= 0 && !m.isNum(i-1) && !m.isNum(i+1):
		return "" // "stat on the heater says 140"
	case m.flowOn(i):
		return "" // "no water on the whole block", "sprinklers are on their own line"
	case m.is(i, cStatic, "") && strings.Contains(m.text(i), "quiet") && m.right(i, 4, false, func(k int) bool { return m.is(k, cSym, "") }) >= 0:
		return "" // "whole house is quiet, no hammer"
	case m.is(i, cStatic, "") && strings.HasSuffix(m.text(i), " still") && m.text(i+1) == "on":
		return "" // "closed the stop, house still on"
	case m.is(i, cStatic, ""):
		return assess.Static
	case m.is(i, cFlowing, ""):
		if m.toilet(i) || m.is(i, cHint, "fully") && m.left(i, 4, false, func(k int) bool { return m.is(k, cItem, "heater") || m.is(k, cBurner, "") }) >= 0 {
			return "" // "the water heater going full blast"
		}
		if m.text(i) == "corriendo" || m.text(i) == "flowing" || m.text(i) == "running water" {
			if m.negLeft(i, 3) {
				return assess.Static
			}
		}
		if m.negLeft(i, 2) || m.inNeither(i) {
			return assess.Static
		}
		if m.saysWhen(i) && m.troubled(i) {
			return ""
		}
		if m.text(i) == "gpm" {
			return ""
		}
		return assess.Flowing
	}
	// "nothing … running", "kitchen faucet wide open"
	if m.text(i) == "flow" && (m.isNum(i+1) || m.isMark(i+1, ":") && m.isNum(i+2)) {
		return assess.Flowing
	}
	it := &m.items[i]
	if m.withList(i) || it.text == "flow" && (m.isMark(i-1, "/") && m.is(i-2, cStatic, "") || m.isMark(i+1, "/") && m.is(i+2, cStatic, "")) {
		return assess.Flowing
	}
	if m.typed(i) == "st" && m.isNum(i+1) && m.right(i, 5, true, func(k int) bool { return m.typed(k) == "fl" || m.typed(k) == "res" }) >= 0 {
		return assess.Static // "kitchen st 70 fl 52"
	}
	if t := m.typed(i); (t == "fl" || t == "res") && m.isNum(i+1) {
		return assess.Flowing
	}
	if it.text == "running" && (m.runsAt(i) || m.says(i+1, "behind", "late", "errands", "early")) {
		return "" // "the main is running 118", "running behind today"
	}
	if it.text == "on" && (m.text(i+1) == "it" || m.left(i, 6, false, func(k int) bool { return m.is(k, cItem, "heater") || m.is(k, cBurner, "") }) >= 0) {
		return "" // "77 side bib on it", "the heater had not come on"
	}
	if it.text == "on" && (m.is(i+1, cDeterminer, "") && m.text(i+2) != "whole" && m.text(i+2) != "entire" || m.is(i+1, cHint, "possessive") || m.thePlace(i+1)) {
		return "" // "PRV: none on this house"
	}
	if it.text == "on" && m.isNum(i-1) && m.is(i-2, cHint, "zone") {
		return assess.Flowing // "zone 3 on"
	}
	if it.text == "on" && m.is(i-1, cWater, "") && m.left(i, 4, false, func(k int) bool { return m.is(k, cHint, "lights") }) >= 0 {
		return "" // "Turned the water on and fixed a drip"
	}
	if m.toilet(i) || it.text == "going" && m.text(i+1) == "on" || it.text == "on" && m.text(i-1) == "going" {
		return ""
	}
	if (it.text == "prendido" || it.text == "prendida") && m.heaterTag(i) != "" {
		return ""
	}
	switch it.text {
	case "running", "open", "wide open", "abiertas", "abiertos", "prendidas", "on", "flowing", "drawing", "going",
		"opened", "cracked", "filling", "abierto", "abierta", "corriendo", "prendido", "prendida":
		if m.is(i-1, cItem, "heater") || m.is(i-2, cItem, "heater") || m.is(i-1, cBurner, "") || m.is(i-1, cItem, "recirc") || m.is(i-1, cItem, "prv") || m.is(i-2, cItem, "prv") {
			return ""
		}
		for k := i - 1; k >= 0 && k >= i-5 && m.items[k].sent == it.sent; k-- {
			t := m.text(k)
			if m.items[k].num != nil && m.items[k].unit == "other" && m.items[k].value <= 6 {
				return assess.Flowing // "2 zones on", "3 showers going"
			}
			if m.items[k].num != nil && m.items[k].value > 4 || m.items[k].mark && t != "(" {
				break
			}
			switch t {
			case "nothing", "no", "nada", "none", "without", "ninguna", "not", "isnt", "sin", "nobody", "no one", "nadie":
				if it.text == "on" && (i-k > 2 && !m.closes(i) || t == "no" || m.says(i+1, "it", "the", "that")) && m.text(i-1) != "water" {
					return ""
				}
				return assess.Static
			}
			if m.is(k, cItem, "") || m.is(k, cNeg, "") || t == "valve" || t == "stop" {
				return "" // "found the meter valve half shut and opened it"
			}
			if m.is(k, cHint, "nobody") && (it.text != "on" || m.closes(i)) {
				return assess.Static
			}
			if m.meets(k, taps) && it.text != "on" {
				if m.nobodys(k) {
					return assess.Static
				}
				return assess.Flowing
			}
			tap := m.meets(k, taps) && m.items[k].point == ""
			if tap && it.text == "on" && i-k <= 2 && m.text(i+1) != "the" && !m.unknownNoun(i+1) && !(i+1 < len(m.items) && m.items[i+1].site) {
				return assess.Flowing
			}
		}
		for k := i + 1; k < len(m.items) && k <= i+3 && (it.text == "opened" || it.text == "running"); k++ {
			if m.is(k, cPoint, "street") || m.is(k, cItem, "") {
				return "" // "opened the main all the way", "opened the tank valve"
			}
			if m.is(k, cFixture, "") || m.is(k, cPoint, "") || m.is(k, cBibb, "") {
				return assess.Flowing
			}
			if m.items[k].mark || m.items[k].num != nil && m.items[k].value > 4 {
				break
			}
		}
	case "off", "closed", "shut", "cerrado", "cerradas", "apagado", "cerrada", "out", "clsd", "turned off", "closed off", "apagados", "shut down":
		for k := i - 1; k >= 0 && k >= i-5 && m.items[k].sent == it.sent; k-- {
			t := m.text(k)
			if m.items[k].num != nil || m.items[k].mark || m.is(k, cItem, "heater") || m.is(k, cBurner, "") {
				break
			}
			switch t {
			case "every":
				if m.text(k+1) != "time" {
					return assess.Static
				}
			case "everything", "all", "todo", "todas", "ll", "each", "todos":
				return assess.Static
			}
			if m.is(k, cHint, "allofit") && m.left(i, 6, true, func(j int) bool { return m.is(j, cItem, "heater") || m.is(j, cBurner, "") }) < 0 && m.text(i) != "off" {
				return assess.Static // "108 there with all of it closed"
			}
		}
	}
	if f := m.againstRest(i); f != "" {
		return f
	}
	return m.flowTalk(i)
}

// flowOn tells whether item i only says what water is on or where it is off: "no water on
// the block", "running on their own line".
func (m *message) flowOn(i int) bool {
	if strings.HasSuffix(m.text(i), " on") && m.says(i+1, "file", "order", "record", "site", "paper", "call", "hand") {
		return true // "nothing on file"
	}
	if !strings.HasSuffix(m.text(i), " on") || !m.is(i+1, cDeterminer, "") && !m.is(i+1, cHint, "possessive") && !m.thePlace(i+1) {
		return false
	}
	return m.is(i, cStatic, "") || m.is(i, cFlowing, "") && !m.says(i+2, "whole", "entire")
}

// thePlace tells whether item i is a side of the house with its article: "spigot on the
// front wall".
func (m *message) thePlace(i int) bool {
	return m.is(i, cPlace, "") && strings.HasPrefix(m.text(i), "the ")
}

// runsAt tells whether "running" at item i only leads from a place to its pressure: "the
// main is running 118".
func (m *message) runsAt(i int) bool {
	if !be(m.text(i-1)) && !m.pointAt(i-1) || !m.isNum(i+1) && !(m.text(i+1) == "at" && m.isNum(i+2)) {
		return false
	}
	return m.left(i, 4, false, func(k int) bool { return m.is(k, cFixture, "") || m.isNum(k) }) < 0
}

// inNeither reads "en ninguna de las dos hay agua corriendo".
func (m *message) inNeither(i int) bool {
	k := m.left(i, 6, true, func(k int) bool { return m.text(k) == "ninguna" || m.text(k) == "ninguno" || m.text(k) == "neither" })
	return k >= 0 && m.items[k].seg == m.items[i].seg
}

func (m *message) negLeft(i, n int) bool {
	return m.left(i, n, false, func(k int) bool {
		switch m.text(k) {
		case "no", "not", "nothing", "nada", "sin", "without", "w/o", "isnt", "none", "zero", "ninguna", "never", "aint":
			return m.items[k].seg == m.items[i].seg
		}
		return false
	}) >= 0
}

// mention is a state told at an item.
type mention struct {
	at    int
	flow  assess.Flow
	state assess.HeaterState
}

// flows gives each reading the flow that its clause tells.
func (m *message) flows() {
	var all []mention
	for i := range m.items {
		if f := m.flowTag(i); f != "" && !m.occasional(i) {
			all = append(all, mention{at: i, flow: f})
		}
	}
	if len(all) == 0 || len(m.readings) == 0 {
		return
	}
	if m.flowRow(all) {
		return
	}
	for k := range m.readings {
		r := &m.readings[k]
		if best := r.nearest(len(all), func(j int) int { return all[j].at }); best >= 0 {
			r.Flow = all[best].flow
		}
	}
	m.flowSame()
	for _, a := range all {
		s := m.items[a.at].sent
		lo, hi := m.readingsOf(s)
		if lo < hi {
			m.flowWithin(a, lo, hi)
			continue
		}
		m.flowAcross(a, s)
	}
}

// readingsOf returns the range of readings in a sentence.
func (m *message) readingsOf(s int) (lo, hi int) {
	lo = len(m.readings)
	for k := range m.readings {
		if m.readings[k].sent == s {
			if lo == len(m.readings) {
				lo = k
			}
			hi = k + 1
		}
	}
	return lo, hi
}

// quantified tells whether "all", "both" or the like stands by item i.
func (m *message) quantified(i int) bool {
	seg := m.items[i].seg
	for k := max(0, i-6); k < min(len(m.items), i+7); k++ {
		if m.items[k].sent != m.items[i].sent || m.items[k].seg != seg {
			continue
		}
		switch m.text(k) {
		case "both", "all", "each", "every", "either", "any", "todas", "todos", "ambas", "ambos", "throughout",
			"them", "las dos", "los dos", "three", "everywhere", "whole", "toda", "todo", "entire", "times", "dos",
			"tres", "two":
			return true
		}
		if n := m.items[k].num; n != nil && n.words && m.items[k].value <= 4 && m.items[k].unit != "other" {
			return true
		}
	}
	return false
}

// hasSym tells whether sentence s tells a symptom: what a gauge does by itself with all
// shut, it does all the while.
func (m *message) hasSym(s int, sym string) bool {
	for i := m.sents[s].from; i < m.sents[s].to; i++ {
		if m.is(i, cSym, sym) {
			return true
		}
	}
	return false
}

// withList tells whether only taps follow the "with" at item i, which stands behind a
// number: "44 with hose and tub".
func (m *message) withList(i int) bool {
	if t := m.text(i); t != "with" && t != "w/" && t != "w" && t != "con" || !m.isNum(i-1) {
		return false
	}
	taps := 0
	for k := i + 1; k < len(m.items) && !m.items[k].mark; k++ {
		switch {
		case m.is(k, cPoint, "") || m.is(k, cFixture, "") || m.is(k, cBibb, ""):
			taps++
		case m.text(k) == "and" || m.text(k) == "y" || m.is(k, cDeterminer, "") || m.text(k) == "both" || m.is(k, cPlace, ""):
		default:
			return false
		}
	}
	return taps > 0 && m.left(i, 12, true, func(k int) bool { return m.items[k].point != "" }) >= 0
}

// flowAcross spreads a flow told in a sentence without readings.
func (m *message) flowAcross(a mention, s int) {
	if a.flow == assess.Static && m.hasSym(s, "creep") && m.readingsEnd(s) {
		return // "kitchen 69 / shut everything 20 min, no creep": another test
	}
	if a.flow == assess.Flowing && m.saysOf(s, cColor) {
		return // "Ran the tub, yes gray." tells of the water, not of the gauge
	}
	if a.flow == assess.Flowing && m.tellsDrop(s) || m.anyText(s, "spinning", "spins", "turning") {
		return // "Meter was spinning with the house shut." tells of a leak
	}
	forward := m.actionForm(a.at) || m.heading(s) || m.saysWhere(s)
	all := m.anyText(s, "readings", "numbers", "lecturas") && !m.endsColon(s) // "Readings one by one with all else closed."
	forward = forward && !all
	// readings before and after
	before := -1
	for k := range m.readings {
		if m.readings[k].sent < s {
			before = k
		}
	}
	if before >= 0 && (!forward || before+1 == len(m.readings)) {
		// both of a pair, or the last one
		n := 1
		if m.quantified(a.at) || m.closing(a.at) || all || m.flowAlone(a, s) {
			n = m.howMany(a.at)
		}
		last, many := m.readings[before].sent, n > 1
		for k := before; k >= 0 && n > 0; k-- {
			r := &m.readings[k]
			if r.Flow != "" {
				break
			}
			if !many && r.sent != last {
				break
			}
			r.Flow = a.flow
			n--
		}
		return
	}
	for k := before + 1; k < len(m.readings); k++ {
		r := &m.readings[k]
		if r.Flow != "" && r.Flow != a.flow || m.flowBetween(a.at, r.at) || m.newHead(s, r.sent) {
			break
		}
		r.Flow = a.flow
	}
}

func (m *message) flowBetween(a, b int) bool {
	for k := a + 1; k < b; k++ {
		if f := m.flowTag(k); f != "" && f != m.flowTag(a) {
			return true
		}
	}
	return false
}

// actionForm tells whether the flow is told as a deed, which leads on to what follows.
func (m *message) actionForm(i int) bool {
	t := m.text(i)
	for _, p := range []string{"opened", "closed everything", "shut everything", "running the", "abri", "cerre", "cerramos", "shut it all", "run water", "closed it all"} {
		if len(t) >= len(p) && t[:len(p)] == p {
			return true
		}
	}
	s := &m.sents[m.items[i].sent]
	for k := s.from; k < i; k++ {
		switch m.text(k) {
		case "then", "opened", "turned", "ran", "luego", "abri", "with", "now", "next", "open":
			return true
		}
	}
	if s.to-1 > i && m.text(s.to-1) == ":" {
		return true
	}
	return false
}

// closing tells whether the flow stands in a closing remark: "nothing open".
func (m *message) closing(i int) bool {
	s := m.items[i].sent
	for k := range m.readings {
		if m.readings[k].sent > s {
			return false
		}
	}
	return m.sents[s].to-m.sents[s].from <= 7
}

// onlyFlow tells whether the flow at item i is the only one of its sentence.
func (m *message) onlyFlow(i int) bool {
	se := &m.sents[m.items[i].sent]
	for k := se.from; k < se.to; k++ {
		if k != i && m.flowTag(k) != "" {
			return false
		}
	}
	return true
}

// nearest returns which of n mentions inside the reading's own words stands
// closest to its number, -1 for none; at tells the item of each.
func (r *reading) nearest(n int, at func(int) int) int {
	best := -1
	for j := range n {
		if i := at(j); i >= r.from && i < r.to && (best < 0 || abs(i-r.at) < abs(at(best)-r.at)) {
			best = j
		}
	}
	return best
}

// typed returns the word at item i as it was typed, before shorthand was spelt out.
func (m *message) typed(i int) string {
	if m.items[i].n != 1 {
		return ""
	}
	return m.toks[m.items[i].tok].text
}

// readingsEnd tells whether no reading follows sentence s.
func (m *message) readingsEnd(s int) bool {
	return len(m.readings) == 0 || m.readings[len(m.readings)-1].sent < s
}

// taps are the classes of what water runs at.
var taps = setOf(cFixture, cPoint, cBibb)

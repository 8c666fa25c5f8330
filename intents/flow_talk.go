package intents

import (
	"strings"

	"lazyhand/assess"
)

// Lists of the lexicon that these rules know.
var (
	listAndNow = listOf("and now")
	listWithIt = listOf("with it")

	listNotLooked  = listOf("not looked")
	listRestsAlone = listOf("rests alone")
)

// Running and resting water told in words that no phrase of the lexicon foresees: a
// word of using water ("hint uses") with who or what uses it. Who is nobody, says
// that all rests: "not a soul using water", "none of the taps drawing".

var flowTalkGate = onlyWith(cHint, "quiet", "uses")

// flowTalk reads the word of using water, or of a quiet house, at item i.
func (m *message) flowTalk(i int) assess.Flow {
	if m.shut(flowTalkGate) {
		return ""
	}
	switch {
	case m.is(i, cHint, "quiet") && !(m.text(i) == "still" && m.is(i+1, cOn, "")):
		if m.left(i, 4, false, func(k int) bool { return m.is(k, cHint, "wholehouse") && m.items[k].seg == m.items[i].seg }) >= 0 {
			return assess.Static // "whole house hushed"
		}
	case m.is(i, cHint, "uses") && strings.HasPrefix(m.text(i), "flush") && m.serviceTold(i):
	case m.is(i, cHint, "uses"):
		f := m.usedBy(i)
		if f == assess.Flowing && m.troubled(i) {
			return "" // "hums when the toilet fills", "drops 15 psi when the tub fills"
		}
		return f
	}
	return ""
}

// serviceTold tells whether the flush at item i is the heater's: "nobody ever flushed the
// heater", "nadie le ha hecho flush".
func (m *message) serviceTold(i int) bool {
	return m.itemIn(m.items[i].sent) == "heater" || m.says(i-1, "hecho", "ever", "never") || m.says(i+1, "nunca", "ever")
}

// usedBy tells whether the water that the word at i speaks of is used by somebody, by
// nobody, or is no water at all: "the main runs 118".
func (m *message) usedBy(i int) assess.Flow {
	seg := m.items[i].seg
	if m.isNum(i+1) && m.items[i+1].value > 6 {
		return ""
	}
	led, tap := false, false
	for k := i - 1; k >= 0 && k >= i-6 && m.items[k].seg == seg && m.items[k].sent == m.items[i].sent; k-- {
		switch {
		case m.is(k, cHint, "nobody") && m.text(k-1) == "to": // "dies to nothing when someone flushes"
		case m.is(k, cHint, "nobody"):
			if led && tap {
				return assess.Flowing // "neither one moved when the tub ran"
			}
			return assess.Static
		case m.is(k, cItem, "") || m.is(k, cBurner, "") || m.is(k, cState, "") || m.is(k, cPoint, "street"):
			return ""
		case m.is(k, cNeg, ""):
			if m.inList(k+1, listNotLooked) {
				return "" // "did not ask about water use"
			}
			if led && tap {
				return assess.Flowing // "didn't move when the tub ran"
			}
			if tap || m.tapBehind(i) {
				return assess.Static // "no taps cracked"
			}
			return ""
		case m.is(k, cHint, "whiles"):
			if m.says(k, "once", "after") && m.says(i, "filled", "refilled", "flushed") {
				return "" // "66 at the laundry once it filled"
			}
			led = true
		case m.tap(k):
			tap = true
		}
		if m.items[k].num != nil && m.items[k].value > 6 {
			break
		}
	}
	if tap && led || m.tapBehind(i) && (led || m.is(i, cHint, "opens")) {
		return assess.Flowing
	}
	return ""
}

// nobodys tells whether nobody is said right before the tap at item k: "none of the taps open".
func (m *message) nobodys(k int) bool {
	seg := m.items[k].seg
	return m.left(k, 4, false, func(j int) bool {
		return m.items[j].seg == seg && (m.is(j, cHint, "nobody") || j >= k-2 && m.is(j, cNeg, "") && !m.is(j, cRetract, ""))
	}) >= 0
}

// saysWhen tells whether the phrase at item i says when water is used: "when they
// flush".
func (m *message) saysWhen(i int) bool {
	first, _, _ := strings.Cut(m.text(i), " ")
	switch first {
	case "when", "while", "once", "if", "whenever", "as", "mientras", "cuando":
		return true
	}
	return false
}

// troubleWhen tells whether running water at item i is only when a trouble of its clause shows: "hums
// every time they run a bath, 92 on the washer box".
func (m *message) troubleWhen(i int) bool {
	seg := m.items[i].seg
	when := m.left(i, 4, false, func(k int) bool { return m.is(k, cHint, "whenever") && m.items[k].seg == seg })
	if when < 0 {
		return false
	}
	trouble := func(k int) bool { return m.is(k, cSym, "") && m.items[k].seg == seg }
	return m.left(when, 8, false, trouble) >= 0 || m.right(i, 8, false, trouble) >= 0
}

// troubled tells whether the clause of item i tells a trouble or a drop, of which the
// running water is only the occasion.
func (m *message) troubled(i int) bool {
	s := &m.sents[m.items[i].sent]
	for k := s.from; k < s.to; k++ {
		if m.is(k, cSym, "") || m.is(k, cColor, "") || m.signsOf(k)&troubleSigns != 0 ||
			m.items[k].num != nil && m.items[k].role == roleIgnored && m.items[k].seg == m.items[i].seg && m.items[k].why == "a difference" {
			return true
		}
	}
	seg := m.items[i].seg
	moves := func(k int) bool { return m.is(k, cHint, "moves") && m.items[k].seg == seg }
	number := func(k int) bool { return m.items[k].num != nil && m.items[k].seg == seg }
	return (m.left(i, 8, false, moves) >= 0 || m.right(i, 6, false, moves) >= 0) && m.left(i, 8, true, number) < 0 &&
		m.right(i, 8, true, number) < 0
}

// troubleSigns are the signs of water that comes weak: "second bath dies to
// nothing when someone flushes".
var troubleSigns = signFaint | signPoor | signBarely

// ofDrop tells whether the clause of item i tells by how much a pressure fell and none that was
// read then, so that running water is only the occasion: "meter 108, dropped 15 when somebody ran the tub".
func (m *message) ofDrop(i int) bool {
	s, seg, fell := &m.sents[m.items[i].sent], m.items[i].seg, false
	for k := s.from; k < s.to; k++ {
		switch it := &m.items[k]; {
		case it.num == nil:
		case it.role == roleReading && it.seg != seg && (k < i || m.eachTime(i)):
		case it.role == roleReading:
			return false // "dropped 12 when I opened the tub, 58" was read with it open
		case it.seg != seg:
		case it.role == roleIgnored && it.why == "a difference":
			fell = true
		}
	}
	return fell
}

// eachTime tells whether water that runs at item i is told as what always happens: "whenever the hose runs".
func (m *message) eachTime(i int) bool {
	return m.left(i, 4, true, func(k int) bool { return m.is(k, cHint, "whenever") && !m.says(k, "when", "whn") }) >= 0
}

// tap tells whether item k is what water comes out of.
func (m *message) tap(k int) bool {
	return m.is(k, cFixture, "") || m.is(k, cPoint, "") || m.is(k, cBibb, "") || m.is(k, cHint, "watered")
}

// tapBehind tells whether the word at i leads to a tap or to what is watered: "washing
// the car", "flush a toilet", "using water".
func (m *message) tapBehind(i int) bool {
	for k := i + 1; k <= i+3 && k < len(m.items) && m.items[k].seg == m.items[i].seg; k++ {
		if m.tap(k) {
			return true
		}
		if !m.is(k, cDeterminer, "") && m.text(k) != "any" && m.text(k) != "some" && m.text(k) != "up" && m.text(k) != "of" {
			return false
		}
	}
	return false
}

var againstRestGate = onlyWith(cHint, "flows", "rests")

// againstRest reads "open" and "shut" that tell two numbers of one gauge apart: "kitchen
// 72 shut, 51 running", "72 dead / 51 flow".
func (m *message) againstRest(i int) assess.Flow {
	if m.shut(againstRestGate) {
		return ""
	}
	flows := m.is(i, cHint, "flows")
	if m.inList(i, listRestsAlone) && (m.restsAlone(i) || m.restsAhead(i)) {
		return assess.Static
	}
	leads := m.leadsReading(i)
	if !flows && !m.is(i, cHint, "rests") || !leads && !m.besideReading(i) {
		return ""
	}
	other := "flows"
	if flows {
		other = "rests"
	}
	against := func(k int) bool {
		return m.is(k, cHint, other) && (m.besideReading(k) || m.pointAt(k-1) || leads && m.leadsReading(k)) ||
			!flows && m.is(k, cFlowing, "") // "con la regadera abierta 50, cerrada 64"
	}
	if m.left(i, 8, true, against) < 0 && m.right(i, 8, true, against) < 0 {
		return ""
	}
	state := func(k int) bool { return k != i && m.is(k, cState, "") }
	if s := m.items[i].sent; m.anyIn(s, state, setOf(cState)) || m.sentenceIs(s, cBurner, "") || m.anyIn(s, m.noGauge, setOf(cItem)) {
		return ""
	}
	if flows {
		return assess.Flowing
	}
	return assess.Static
}

// flowDoubted tells whether nobody looked whether water ran: "no sé si había agua corriendo".
func (m *message) flowDoubted(i int) bool {
	unsure := func(k int) bool {
		return m.is(k, cHint, "unsure") && !m.says(k, "if", "whether", "si") && m.items[k].seg == m.items[i].seg
	}
	return m.left(i, 5, false, unsure) >= 0
}

// leadsReading tells whether the word at item i begins its clause, or stands behind its tap, and a
// pressure follows: "cocina cerrado 64, abierto 50".
func (m *message) leadsReading(i int) bool {
	return i > 0 && m.isNum(i+1) && m.items[i+1].value >= leastPSI && (m.items[i-1].mark || m.pointAt(i-1))
}

// restsAhead tells whether the word of rest at item i leads to a pressure that one of running water is set
// off against: "at rest 68, under flow 51", "kitchen at rest 73. kitchen under flow 56".
func (m *message) restsAhead(i int) bool {
	k := i + 1
	for m.is(k, cDeterminer, "") || k < len(m.items) && m.items[k].point != "" || m.inList(k, listLinks) || m.isMark(k, ":") {
		k++
	}
	if !m.isNum(k) || m.items[k].value < leastPSI {
		return false
	}
	flows := func(j int) bool { return m.is(j, cFlowing, "") }
	heater := func(j int) bool { return j != i && m.is(j, cState, "") || m.is(j, cItem, "heater") }
	next := m.items[i].sent + 1
	ran := m.right(k, 8, true, flows) >= 0 || next < len(m.sents) && m.sentenceIs(next, cFlowing, "")
	return ran && m.right(i, 10, true, heater) < 0 && m.left(i, 6, true, heater) < 0
}

// noGauge tells whether item k names a thing that is no gauge.
func (m *message) noGauge(k int) bool { return m.is(k, cItem, "") && !m.is(k, cItem, "gauge") }

// restsAlone tells whether the word of rest at item i, which closes its clause, is said of the pressure
// right before it: "70 kitchen standing", "kitchen 70, at rest".
func (m *message) restsAlone(i int) bool {
	s := m.items[i].sent
	if !m.closes(i) || m.sentenceIs(s, cState, "firing") || m.sentenceIs(s, cBurner, "") || m.sentenceIs(s, cItem, "heater") {
		return false
	}
	k := i - 1
	if m.isMark(k, ",", "-", "(") {
		k--
	}
	for k > 0 && m.items[k].role == roleTaken {
		k--
	}
	if m.pointAt(k) && !m.pressed(k) {
		k--
	}
	if m.inList(k, listReadAt) || m.is(k, cDeterminer, "") {
		k--
	}
	if m.inList(k, listReadAt) {
		k--
	}
	return m.pressed(k)
}

// shortPair tells whether the letter at item i is the S of "70S/52F".
func (m *message) shortPair(i int) bool {
	return i > 0 && m.text(i) == "s" && m.isNum(i-1) && m.isMark(i+1, "/") && m.isNum(i+2) && m.text(i+3) == "f"
}

// besideReading tells whether a number stands right before item i, with at most "with it" between.
func (m *message) besideReading(i int) bool {
	k := i - 1
	for k > i-4 && m.inList(k, listWithIt) {
		k--
	}
	return m.isNum(k) && m.items[k].value >= leastPSI && (m.closes(i) || m.isNum(i+1) || m.inList(i+1, listAndNow))
}

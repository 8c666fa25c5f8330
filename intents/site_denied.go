package intents

import (
	"slices"
	"strings"
)

// A street line that is denied within the message, before or behind the right one: "that was
// 22 Pine not 24 Pine", "not 24 Pine, 22", "it was 22 Pine not 24".

// deniedSites voids the street lines that a word of denial stands before, wherever the
// message names them, and gives a bare house number beside one the street's name.
func (m *message) deniedSites() {
	for k := range m.sites {
		a := &m.sites[k]
		if a.quoted || a.void {
			continue
		}
		if m.deniedFrom(a.from) >= 0 {
			m.deny(k)
		} else if n := m.houseDenied(a); n > 0 {
			m.voidLine(m.toks[n-1].num.digits + strings.TrimPrefix(a.line, m.toks[a.house].num.digits))
			a.to, a.denies = n, true
		}
	}
}

// deniedFrom returns where the words of denial right before token i begin, else -1: "not",
// "instead of", "no era la".
func (m *message) deniedFrom(i int) int {
	k := i - 1
	for k > 0 && articled(m.toks[k].text) {
		k--
	}
	if k < 0 || !slices.ContainsFunc(m.toks[k].cand, func(id int32) bool { return m.p.lex.byID[id].denies }) {
		return -1
	}
	for from := k; from >= 0 && from > k-3; from-- {
		if node, n := m.p.lex.find(m.toks, from, k+1); n == k+1-from &&
			(m.p.has(m.p.lex.tags(node), cHint, "denies") || m.p.has(m.p.lex.tags(node), cHint, "insteadof")) {
			return from
		}
	}
	return -1
}

// deny voids the denied street line k where the right house is told: another street line
// beside it, or a bare number on either side, which is a house of the same street.
func (m *message) deny(k int) {
	a := &m.sites[k]
	for j := range m.sites {
		if b := &m.sites[j]; j != k && !b.quoted && b.line != a.line &&
			(b.from >= a.to && b.from <= a.to+6 || b.to <= a.from && b.to >= a.from-5) {
			m.voidLine(a.line)
			return
		}
	}
	right := m.deniedFrom(a.from) - 1
	from, to := right, a.to
	if !m.houseAt(a, right) {
		right = a.to
		for right < len(m.toks) && right < a.to+4 &&
			(m.toks[right].text == "," || oneOf(m.toks[right].text, "its", "it", "was", "but", "is", "era", "es", "sino", "should", "be")) {
			right++
		}
		if right == a.to || !m.houseAt(a, right) || right+1 < len(m.toks) && m.toks[right+1].kind == word {
			return
		}
		from, to = a.from, right+1
	}
	old := a.line
	line := m.toks[right].num.digits + strings.TrimPrefix(a.line, m.toks[a.house].num.digits)
	a.house, a.from, a.to, a.line, a.denies = right, from, to, line, true
	for j := range m.sites {
		if b := &m.sites[j]; j != k && b.line == old {
			b.void = true
		}
	}
}

// houseDenied returns the end of a bare house number that is denied right behind a street
// line: "22 Pine not 24"; 0 for none.
func (m *message) houseDenied(a *address) int {
	for n := a.to; n < len(m.toks) && n <= a.to+4; n++ {
		if m.toks[n].kind != number {
			continue
		}
		d := m.deniedFrom(n)
		if d < 0 && n == a.to+1 && m.toks[a.to].text == "no" {
			d = a.to // "en 22 Pine no 24"
		}
		if d >= 0 && (d == a.to || d == a.to+1 && m.toks[a.to].text == ",") && m.houseAt(a, n) &&
			(n+1 == len(m.toks) || m.toks[n+1].kind == mark && !m.toks[n+1].glued || m.toks[n+1].kind == mark && oneOf(m.toks[n+1].text, ",", ".")) {
			return n + 1
		}
		return 0
	}
	return 0
}

// houseAt tells whether the number at token i may be the house of a street line told wrong:
// one near its number in length.
func (m *message) houseAt(a *address, i int) bool {
	if i < 0 || i >= len(m.toks) || m.toks[i].kind != number {
		return false
	}
	n := m.toks[i].num
	h := m.toks[a.house].num
	return n.integer && !n.time && !n.money && h != nil && n.digits != h.digits && abs(len(n.digits)-len(h.digits)) <= 1
}

// voidLine voids all street lines of a house.
func (m *message) voidLine(line string) {
	for j := range m.sites {
		if m.sites[j].line == line {
			m.sites[j].void = true
		}
	}
}

// movesReport makes a message that only says which house is right a correction of the last
// report: "wrong house, not 24 Pine, 22", "should be 22 Pine". It takes nothing back.
func (m *message) movesReport() {
	if m.site == nil || !m.houseRight() {
		return
	}
	for k := range m.asks {
		if a := &m.asks[k]; a.About == AskUndo {
			a.About = AskCorrect
		}
	}
	if len(m.asks)+len(m.readings)+len(m.work)+len(m.plans)+len(m.symptoms)+len(m.equipment) == 0 {
		m.addAsk(0, AskCorrect)
	}
}

// articled tells whether a word leads from a denial to the street line: "not at 24 Pine".
func articled(w string) bool {
	switch w {
	case "the", "at", "el", "la", "en":
		return true
	}
	return false
}

// houseRight tells whether the chosen street line is said to be the right one, in place of a
// denied one or by the words before it.
func (m *message) houseRight() bool {
	for j := range m.sites {
		if m.sites[j].void && m.sites[j].line != m.site.line {
			return true
		}
	}
	if m.deniedFrom(m.site.from) >= 0 || m.site.denies {
		return true
	}
	for i := range m.items {
		if m.items[i].site && m.items[i].tok == m.site.from {
			// "should be" aims at no number here
			return m.is(i-1, cHint, "righthouse") || m.text(i-1) == "be" && (m.hasAsk(AskUndo) || m.left(i, 6, true, func(k int) bool {
				return m.says(k, "it", "that", "it was", "that was", "house", "address")
			}) >= 0)
		}
	}
	return false
}

// houseTakenBack tells whether the number at i is the house of a street line taken back:
// "24 Pine 66 rear scratch 24, meant 22 Pine".
func (m *message) houseTakenBack(i int) bool {
	for j := range m.sites {
		if a := &m.sites[j]; a.void && m.toks[a.house].num != nil && m.toks[a.house].num.digits == m.items[i].num.digits {
			return !m.points(i)
		}
	}
	return false
}

package intents

import (
	"slices"
	"strings"
)

// chooseSite picks the street line of the message among the candidates.
func (m *message) chooseSite() {
	best := -1
	m.sites = slices.DeleteFunc(m.sites, func(a address) bool { return m.shownAt(&a) && (len(m.sites) > 1 || m.loneNumber(a.house)) })
	m.takenBackSites()
	m.deniedSites()
	for k := range m.sites {
		if m.sites[k].void {
			continue
		}
		if best < 0 || m.sites[k].score > m.sites[best].score+0.01 || m.sites[best].quoted && !m.sites[k].quoted && m.sites[k].score >= 5 {
			best = k
		}
	}
	if best < 0 {
		return
	}
	b := m.sites[best]
	for k := range m.sites {
		a := &m.sites[k]
		if k == best || a.void {
			continue
		}
		strong := a.suffixed && (a.score >= 5.5 || a.score >= 3 && m.reportsAt(a)) || sameStreet(a.line, b.line) // "12 Oak 66 kitchen, 14 Oak 90 kitchen"
		if !strong && !(a.score >= 4.5 && a.house != b.house) {
			a.score = -1 // no street line after all
		}
		if a.quoted != b.quoted && a.quoted {
			a.score = min(a.score, 5) // the line quoted is answered, not reported
		}
	}
	m.site = &m.sites[best]
	m.unitApart()
}

// shownAt tells whether a bare street line may as well be what a gauge shows, and a word about
// it: "the meter's at 148 holy crap".
func (m *message) shownAt(a *address) bool {
	k := a.from - 2
	if a.suffixed || k < 0 || m.toks[a.from-1].text != "at" {
		return false
	}
	if m.p.lex.of(&m.toks[k]).lists.has(listLinks) {
		k--
	} else if raw := m.toks[k].raw; !strings.HasSuffix(raw, "'s") && !strings.HasSuffix(raw, "’s") {
		return false
	}
	return k >= 0 && m.p.placedAt(m.toks, k)
}

// loneNumber tells whether the message holds no number but that of token i.
func (m *message) loneNumber(i int) bool {
	for k := range m.toks {
		if k != i && m.toks[k].kind == number {
			return false
		}
	}
	return true
}

// reportsAt tells whether a street line opens its clause and a test point with its number follows:
// "14 pell st front 88, 19 dunlin way front 71".
func (m *message) reportsAt(a *address) bool {
	if a.from > 0 && m.toks[a.from-1].kind != mark && !oneOf(m.toks[a.from-1].text, "and", "then", "next", "y", "luego") {
		return false
	}
	k := a.to
	if k < len(m.toks) && oneOf(m.toks[k].text, ",", ":") {
		k++
	}
	if k >= len(m.toks) {
		return false
	}
	node, n := m.p.lex.find(m.toks, k, len(m.toks))
	return n > 0 && m.p.lex.kinds(node).meets(setOf(cPoint, cPlace, cBibb)) && k+n < len(m.toks) && m.toks[k+n].kind == number
}

// fromRecord names the site by the record when the message gives only a street:
// one that fits is it, two make a question.
func (m *message) fromRecord() {
	if m.site != nil || len(m.ctx.Sites) == 0 {
		return
	}
	found, at, n := m.knownSite()
	switch {
	case len(found) == 1:
		m.frame.Site = found[0]
	case len(found) > 1:
		m.unclear(m.words(at, at+n), found, "Which house: "+strings.Join(found, " or ")+"?", "¿Cuál casa: "+strings.Join(found, " o ")+"?")
	}
}

// tooLong asks for a message in parts.
func (m *message) tooLong() {
	start := m.clean.text
	if len(start) > 40 {
		start = strings.ToValidUTF8(start[:40], "")
	}
	m.unclear(strings.TrimSpace(start), nil, "That is too long for one report. Please send it in parts.",
		"Es demasiado largo para un reporte. Mándalo por partes, por favor.")
}

// twoHouses tells whether the message speaks of two houses.
func (m *message) twoHouses() bool {
	if len(m.sites) == 0 || len(m.sites) == 1 && !m.kinds.has(cWhose) {
		return false
	}
	var lines []string
	for _, a := range m.sites {
		if a.score < 0 || a.void || a.quoted && !m.site.quoted {
			continue
		}
		same := false
		for _, l := range lines {
			if sameHouse(l, a.line) {
				same = true
			}
		}
		if !same {
			lines = append(lines, a.line)
		}
	}
	if len(lines) == 1 {
		if n := m.nextDoor(); n != "" {
			_, street, _ := strings.Cut(lines[0], " ")
			lines = append(lines, n+" "+street)
		}
	}
	if len(lines) < 2 {
		return false
	}
	m.unclear(strings.Join(lines, " / "), lines, "Two houses in one message. Please send one message a house.",
		"Son dos casas en un mensaje. Manda un mensaje por casa, por favor.")
	return true
}

// nextDoor returns the number of the house beside that is told with a number of its
// own: "front 92 at 801 Coral Bean. next door at 803 it's 91"; "" for none.
func (m *message) nextDoor() string {
	for i := range m.items {
		it := &m.items[i]
		if it.num == nil || !it.num.integer || it.unit != "" || it.value < 10 || !m.is(i-1, cWhose, "other") && !m.is(i-2, cWhose, "other") {
			continue
		}
		if t := m.text(i - 1); m.is(i-2, cWhose, "other") && t != "at" && t != "in" && t != "@" {
			continue
		}
		if house, _, _ := strings.Cut(m.site.line, " "); house != it.num.digits && m.nextNum(i) > 0 && !m.hearsay(i, m.nextNum(i)) {
			return it.num.digits
		}
	}
	return ""
}

// hearsay tells whether what stands between two items is what somebody told: "neighbor at
// 803 told me he has 91".
func (m *message) hearsay(from, to int) bool {
	for k := from + 1; k < to; k++ {
		if m.is(k, cHint, "hearsay") {
			return true
		}
	}
	return false
}

// sameStreet tells whether two street lines differ in the house number only: "12 elk run
// … and next door 14 elk run".
func sameStreet(a, b string) bool {
	x, s, _ := strings.Cut(a, " ")
	y, t, _ := strings.Cut(b, " ")
	return x != y && s == t
}

// sameHouse tells whether two street lines can be one house: one number, and
// one name the beginning of the other.
func sameHouse(a, b string) bool {
	x, y := strings.ToLower(a), strings.ToLower(b)
	return strings.HasPrefix(x, y) || strings.HasPrefix(y, x) || firstWords(x, 2) == firstWords(y, 2)
}

// firstWords returns the first n words of a text.
func firstWords(s string, n int) string {
	f := strings.Fields(s)
	if len(f) > n {
		f = f[:n]
	}
	return strings.Join(f, " ")
}

package intents

import "strings"

// Lists of the lexicon that these rules know.
var (
	listHeatsFast = listOf("heats fast")
	listTurnsCold = listOf("turns cold")
	listGetsWarm  = listOf("gets warm")
)

// hotTap tells whether the number at i may be how warm the water of a tap is: "tub came out 121",
// "shower is 118 hot". A colleague would ask.
func (m *message) hotTap(i int) bool {
	it := &m.items[i]
	if !it.num.integer || !it.within(100, 160) {
		return false
	}
	from, to := m.clauseStart(i), m.clauseEnd(i)
	if !m.warmTapIn(from, to) {
		return false
	}
	hot := m.runsWarm(i-1) || m.inList(i+1, listHeatsFast) && m.inList(i-1, listShows)
	for k := from; k < to; k++ {
		switch {
		case m.is(k, cHint, "ofpressure"), m.is(k, cItem, ""), m.is(k, cHint, "measured"):
			return false
		case m.is(k, cState, ""), m.is(k, cStatic, ""), m.is(k, cPeak, ""):
			return false
		}
		hot = hot || hotWord(m.text(k)) && (k < i || k-i <= 4) || k < i && i-k <= 5 && m.says(k, "water", "waters", "agua")
	}
	hot = hot || m.heaterShownBeside(i) || m.right(i, 7, true, func(k int) bool { return m.is(k, cHint, "cold") && m.inList(k-1, listTurnsCold) }) >= 0
	if !hot && m.isMark(to, ",") { // "140 out of the tub, way too hot"
		hot = m.closes(to+2) && hotWord(m.text(to+2)) || m.closes(to+3) && hotWord(m.text(to+3)) && m.text(to+2) == "too"
	}
	if !hot {
		return false
	}
	if !m.warmth(i) {
		m.askWarm(i)
	}
	return true
}

// hotAndCold tells whether the number at i is the warmth of hot or cold water told with that of the
// other: "hot 118 cold 58".
func (m *message) hotAndCold(i int) bool {
	side := func(k int) int {
		for k--; m.is(k, cHint, "runsout") || m.inList(k, listLinks) || m.says(k, "at", "side"); k-- {
		}
		return k
	}
	hot := func(k int) bool { return m.isNum(k) && hotWord(m.text(side(k))) && m.items[k].within(95, 160) }
	cold := func(k int) bool {
		j := side(max(k, 0))
		return m.isNum(k) && (m.inList(j, listColdSide) || m.is(j, cHint, "cold")) && m.items[k].within(35, 85)
	}
	if !hot(i) && !cold(i) {
		return false
	}
	return m.left(i, 6, true, func(k int) bool { return hot(k) && cold(i) || cold(k) && hot(i) }) >= 0 ||
		m.right(i, 6, true, func(k int) bool { return hot(k) && cold(i) || cold(k) && hot(i) }) >= 0
}

// heaterShownBeside tells whether the sentence of the number at i tells first what a heater is set to, a
// little more, and then how warm the water comes: "heater display 122, actual at the shower 116".
func (m *message) heaterShownBeside(i int) bool {
	p := m.prevNum(i)
	if p < 0 || !m.numIs(p, roleTemp) || m.items[p].value < m.items[i].value || m.items[p].value > m.items[i].value+mostCooled {
		return false
	}
	return m.right(p, i-p-1, true, func(k int) bool { return m.inList(k, listGetsWarm) }) >= 0
}

// mostCooled is how many degrees water cools at most on its way from a heater to a tap that it is told of.
const mostCooled = 25

// runsWarm tells whether item k leads from a tap to what comes out of it.
func (m *message) runsWarm(k int) bool {
	if m.says(k, "at", "a", "en") {
		k--
	}
	return m.is(k, cHint, "runsout")
}

// warmTapIn tells whether items from..to name a tap at which people feel how warm the water is.
func (m *message) warmTapIn(from, to int) bool {
	for k := from; k < to; k++ {
		if p := m.items[k].point; p == "kitchen" || p == "bath" {
			return true
		}
	}
	return false
}

// hotWord tells whether a phrase says that water is hot.
func hotWord(s string) bool {
	for _, w := range [...]string{"hot", "scalding", "scald", "caliente", "hirviendo"} {
		before, first := strings.CutSuffix(s, w)
		after, last := strings.CutPrefix(s, w)
		if first && (before == "" || before[len(before)-1] == ' ') || last && (after == "" || after[0] == ' ') {
			return true
		}
	}
	return false
}

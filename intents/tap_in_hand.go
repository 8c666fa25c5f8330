package intents

import (
	"slices"
	"strings"

	"lazyhand/assess"
)

// Lists of the lexicon that these rules know.
var (
	listTops            = listOf("tops")
	listDialledThings   = listOf("dialled things")
	listNotInHand       = listOf("not in hand")
	listHeaterAt        = listOf("heater at")
	listLimitSaid       = listOf("limit said")
	listBroughtWhere    = listOf("brought where")
	listBroughtThing    = listOf("brought thing")
	listBringsIt        = listOf("brings it")
	listBesideGauge     = listOf("beside gauge")
	listPutsGauge       = listOf("puts gauge")
	listMovedBy         = listOf("moved by")
	listPumping         = listOf("pumping")
	listBetweenReadings = listOf("between readings")
)

// A tech who has said where the gauge sits does not say it again: "now 64", "it went to 96",
// "64 on the same bib". The tap of the last reading of the visit, Context.Tap, is then the
// place of what the gauge shows next.

// gaugeInHand tells whether a gauge was read before this message, in the same visit.
func (m *message) gaugeInHand() bool { return m.ctx.Tap != "" || m.ctx.TapUnsure }

// tapInHand tells whether a reading that names no tap goes on with what the gauge shows.
func (m *message) tapInHand(r *reading) bool {
	if !m.gaugeInHand() || len(r.points) > 0 || m.houseNear(r.at) || m.ofAir(r.at) || m.limitTold(r.at) || m.heaterHas(r.at) || m.onlySaid(r.at) || m.broughtTo(r.at) || m.leadsAway(r.at) || 0 < r.PSI && r.PSI < leastPSI {
		return false
	}
	if slices.ContainsFunc(m.readings, func(o reading) bool { return len(o.points) > 0 && !o.inHand }) {
		return false
	}
	if m.items[r.at].unit == "" && !m.hasAsk(AskCorrect) && !m.shown(r.at) {
		return false
	}
	return m.ofTheHouse(r) || m.continues(r.sent) || m.opensInHand(r.at) || m.onlyNumbers(r.sent) || m.readingCue(r.at) && m.followed(r.at) || m.gaugeWent(r.at) || m.turnedThen(r.at) || m.showsNext(r.at)
}

// ofAir tells whether the number at i is the air of a tank, whose name may stand in a message
// before: "74 in it", "60 air".
func (m *message) ofAir(i int) bool {
	if m.left(i, 6, true, func(k int) bool { return m.items[k].seg != m.items[i].seg && m.inList(k, listPumping) }) >= 0 {
		return true // "hand pumping it, 35 so far"
	}
	k := i + 1
	if m.is(k, cUnit, "") && m.text(k) != "in" {
		k++
	}
	return m.is(k, cPart, "air") || m.text(k) == "in it" || m.text(k) == "in" && m.says(k+1, "it", "the", "there")
}

// onlySaid tells whether the number at i is all that a sentence says was told, or asks: "i said 90",
// "60?".
func (m *message) onlySaid(i int) bool {
	from := m.sents[m.items[i].sent].from
	return from == i-1 && m.is(from, cHint, "reported") && m.closes(i) || from == i && m.text(i+1) == "?"
}

// leadsAway tells whether what stands beside the number at i makes it another thing's: "still need
// a 90", "off to 88", "tomorrow 20", "72 and sunny", "outside its 28".
func (m *message) leadsAway(i int) bool {
	switch m.text(i - 1) {
	case "a", "an":
		if m.is(i-2, cItem, "gauge") {
			return false // "gauge A 88"
		}
		return !m.gaugeWent(i) || m.inList(i-2, listNotInHand) // but "bajó a 58"
	case "another", "un", "una", "the", "otro":
		return true
	case "to":
		return m.says(i-2, "off", "over", "head", "heading", "on")
	case "its", "it is":
		return m.says(i-2, "outside", "out", "afuera")
	}
	if strings.HasSuffix(m.text(i-1), " a") && m.is(i-1, cWill, "") {
		return true // "needs a"
	}
	return m.timeWordAt(i-1) && !m.is(i-1, cNow, "") && m.sents[m.items[i].sent].from == i-1 || m.text(i+1) == "and" && m.strangeThing(i+2) ||
		m.isMark(i+1, "/") && m.isNum(i+2) && m.items[i+2].value == m.items[i].value
}

// heaterHas tells whether a heater right before the number at i is what has it: "heater is at 140".
func (m *message) heaterHas(i int) bool {
	for k := i - 1; k >= 0 && k >= i-4 && m.items[k].seg == m.items[i].seg; k-- {
		switch {
		case m.is(k, cItem, "heater"), m.is(k, cPart, "thermostat"):
			return true
		case !m.inList(k, listLinks) && !m.inList(k, listHeaterAt):
			return false
		}
	}
	return false
}

// limitTold tells whether the number at i is a limit that stands written somewhere rather than
// what a gauge shows: "it says 80 max", "max is 80".
func (m *message) limitTold(i int) bool {
	if m.says(i-1, "max is", "max was") || m.inList(i-1, listLinks) && m.says(i-2, "max", "maximum", "maximo") {
		return true
	}
	return m.inList(i+1, listTops) && m.left(i, 4, false, func(k int) bool { return m.is(k, cPeak, "") }) < 0 &&
		m.left(i, 3, false, func(k int) bool { return m.inList(k, listLimitSaid) }) >= 0
}

// giveTap gives a reading the tap of the last one.
func (m *message) giveTap(r *reading) {
	r.points, r.inherit, r.inHand = []string{string(m.ctx.Tap)}, true, true
	m.frame.SameTap = true
}

// sameTap is the place that "same" at item i stands for when the message names none: the tap
// of the last reading.
func (m *message) sameTap(i int) string {
	if m.ctx.Tap == "" || m.text(i) == "there" {
		return ""
	}
	if named := m.items[min(i+1, len(m.items)-1)].point; named != "" && !alikeTaps(named, string(m.ctx.Tap)) {
		return "" // "same laundry" after a bibb
	}
	m.frame.SameTap = true
	return string(m.ctx.Tap)
}

// alikeTaps tells whether a place as it is named can be the tap in hand: a hose bibb is the
// rear one.
func alikeTaps(named, tap string) bool {
	return named == tap || named == string(assess.Bibb) && sided(tap)
}

// goesOnAt tells whether the number at i is what the gauge that was read before shows now: where
// it went, or a few words of time, state or flow beside it.
func (m *message) goesOnAt(i int) bool {
	it := &m.items[i]
	if it.value < 15 || it.value > 200 || it.unit != "" || m.unknownNoun(i+1) && !m.inList(i+1, listHowShown) || m.ofAir(i) || m.limitTold(i) || m.heaterHas(i) || m.leadsAway(i) {
		return false
	}
	if m.gaugeWent(i) || m.turnedThen(i) {
		return true
	}
	if !m.gaugeInHand() {
		return false
	}
	if m.opensInHand(i) || m.onlyNumbers(it.sent) || m.showsNext(i) {
		return true
	}
	s := &m.sents[it.sent]
	words := 0
	for k := s.from; k < s.to; k++ {
		if !m.items[k].mark {
			words++
		}
	}
	return words <= fewOfTap && m.continues(it.sent) && m.text(i-1) != "for" && !m.broughtTo(i) // "it goes for 60"
}

// broughtTo tells whether the number at i is what something is brought to that was spoken of before:
// "pumping it to 62", "want it at 60".
func (m *message) broughtTo(i int) bool {
	k := i - 1
	for k >= 0 && m.inList(k, listBroughtWhere) {
		k--
	}
	if k < 1 || k == i-1 || !m.inList(k, listBroughtThing) {
		return false
	}
	t := m.text(k - 1)
	return strings.HasSuffix(t, "ing") && t != "leaving" || m.is(k-1, cWill, "") || m.is(k-1, cTarget, "") || m.is(k-1, cBase, "") || m.is(k-1, cDo, "") ||
		m.inList(k-1, listBringsIt)
}

// fewOfTap is how many words a sentence has at most that says nothing but what the gauge shows.
const fewOfTap = 6

// gaugeWent tells whether the number at i is where a gauge that was read before went: "it went
// to 96", "dropped to 58", "came back up to 66".
func (m *message) gaugeWent(i int) bool {
	if !m.inList(i-1, listWentTo) || !m.gaugeInHand() && !m.readBefore(i) {
		return false
	}
	if start := m.clauseStart(i); m.gaugeInHand() && (start == i-1 || start == i-2 && m.says(i-2, "back", "back up", "back down")) {
		return m.text(i-1) != "a" // "back up to 63"
	}
	for k := i - 2; k >= m.clauseStart(i) && k >= i-5; k-- {
		switch {
		case m.is(k, cHint, "moves"), m.says(k, "dropped", "moved"): // whose meaning falls takes
			return m.left(i, i-m.clauseStart(i), true, func(k int) bool { return m.items[k].kinds.meets(ofDevices) }) < 0
		case m.items[k].num != nil:
			return false
		}
	}
	return false
}

// turnedThen tells whether the number at i stands alone behind a clause by which the regulator was
// turned, and a gauge was read before: "kitchen 74, turned it down half a turn, 63".
func (m *message) turnedThen(i int) bool {
	if len(m.verbs) == 0 || !m.closes(i) {
		return false
	}
	from := m.clauseStart(i)
	if from < i && !(from == i-1 && (m.is(from, cNow, "") || m.says(from, "got", "its", "gives", "then"))) {
		return false
	}
	end := from - 1
	for end > 0 && (m.items[end].mark || m.says(end, "and", "y", "then")) {
		end--
	}
	for k := len(m.verbs) - 1; k >= 0; k-- {
		if v := &m.verbs[k]; v.at <= end {
			return m.turnsRegulator(v, end, i) && (m.gaugeInHand() || m.readBefore(i))
		}
	}
	return false
}

// turnsRegulator tells whether a verb in the clause that ends at item end turned the regulator,
// and nothing but its turns is told from there to the number at i.
func (m *message) turnsRegulator(v *verb, end, i int) bool {
	if v.what != "set" || !v.done || v.at < m.clauseStart(end) || v.object != "prv" && (v.object != "" || !m.verbTurn(v.at)) {
		return false
	}
	elsewhere := func(k int) bool {
		return m.isNum(k) && m.items[k].unit != "turn" || m.inList(k, listDialledThings) || m.isAny(k, cItem, "heater", "expansion_tank")
	}
	return m.right(v.at, i-v.at-1, true, elsewhere) < 0
}

// ofDevices are the classes of what else goes to a number: a dial, a tank's air, heat.
var ofDevices = setOf(cItem, cPart, cFuel, cWill)

// readBefore tells whether a pressure was read before item i.
func (m *message) readBefore(i int) bool {
	return slices.ContainsFunc(m.items[:i], func(it item) bool { return it.num != nil && it.role == roleReading })
}

// mostOfGauge is how many words say where a gauge sits and nothing else.
const mostOfGauge = 9

// GaugeAt is the one tap that a message says the gauge to be at, telling nothing else; "" for none.
// A tap told with the house alone is where the gauge is: "rear bib, 14 Pine St".
func (p *Parser) GaugeAt(text string, ctx Context) assess.TestPoint {
	if len(plainWords(text)) > mostOfGauge || strings.Contains(text, "?") {
		return ""
	}
	m := p.read(text, ctx, new(scratch), false)
	tap, gauge := "", m.site != nil
	for i := range m.items {
		it := &m.items[i]
		switch {
		case it.site && it.point == "":
		case it.num != nil:
			return ""
		case it.point != "" && tap == "":
			tap = it.point
		case it.point != "" && it.point != tap:
			return ""
		case it.mark, it.point != "", it.role == roleTaken, m.inList(i, listBesideGauge), m.is(i, cDeterminer, ""), m.is(i, cItem, "gauge"):
		default:
			return ""
		}
		gauge = gauge || m.is(i, cItem, "gauge") || m.inList(i, listPutsGauge)
	}
	if !gauge {
		return ""
	}
	return assess.TestPoint(tap)
}

// opensInHand tells whether the number at i opens a sentence whose rest is such as is told of what a
// gauge shows: "72, up 6 from last time", "66 w the hose off", "64 and the tank's at 40". Of a rest
// that speaks of no such thing a colleague would ask: "66 and she lives alone", "50, gas".
func (m *message) opensInHand(i int) bool {
	it := &m.items[i]
	if !m.gaugeInHand() || it.unit != "" || it.value < 15 || it.value > 200 || m.firstOf(it.sent) != i || !m.followed(i) && !m.isMark(i+1, ",", "-", "(") {
		return false
	}
	if m.meets(i+1, setOf(cSym, cItem, cRelief)) {
		return false // "60 drips a minute off the relief"
	}
	size := int(it.value)%5 == 0 && it.value >= 30 && it.value <= 80
	for k := i + 1; k < m.sents[it.sent].to; k++ {
		switch {
		case m.is(k, cFuel, ""), m.is(k, cItem, "heater"):
			if size {
				return false
			}
			return true
		case m.meets(k, besideShown), m.is(k, cHint, "ofpressure"):
			return true
		case m.isNum(k) && (m.inList(k-1, listMovedBy) || m.says(k+1, "better", "less", "lower", "higher")):
			return true
		}
	}
	return false
}

// besideShown are the classes of words that go with what a gauge shows.
var besideShown = setOf(cItem, cRelief, cTarget, cFlowing, cStatic, cState, cOn, cOff, cPeak, cNow, cBefore, cAfter, cSym)

// onlyNumbers tells whether sentence s holds nothing but what a gauge in hand may show, and words that
// take a number back: "61 62 61", "88, no wait 78".
func (m *message) onlyNumbers(s int) bool {
	nums := 0
	for k := m.sents[s].from; k < m.sents[s].to; k++ {
		switch it := &m.items[k]; {
		case it.num != nil:
			if it.unit != "" || it.value < 15 || it.value > 200 || it.num.time || it.num.phone || it.num.money || it.num.percent {
				return false
			}
			nums++
		case it.mark, m.is(k, cRetract, ""), m.inList(k, listBetweenReadings):
		default:
			return false
		}
	}
	return nums > 1
}

package intents

import (
	"slices"
	"strconv"
	"strings"

	"lazyhand/assess"
)

// Lists of the lexicon that these rules know.
var (
	listWholeHouse = listOf("whole house")
	listHouseHas   = listOf("house has")
)

// leastPSI is the least number, zero apart, that is taken for a pressure when no
// unit is said: no house has less, but pipes, floors and counts do.
const leastPSI = 12

// leastWeak is the same right behind a tap in a house whose water is told to be weak.
const leastWeak = 5

// weakTold tells whether the message tells of weak water, or of none: "barely a trickle".
func (m *message) weakTold() bool { return m.has(cSym, "low_flow") || m.has(cSym, "no_water") }

// placeless takes back readings that no test point claims and nothing else makes
// a pressure of this house. A tech says where the gauge sits: of more than three
// thousand labelled readings not one in a hundred has no point, and of the
// numbers that rules took for such readings most were a wish, a label or a tale.
// What is taken back is asked about where the message reports something.
func (m *message) placeless() {
	kept := m.readings[:0]
	var doubted []int
	for _, r := range m.readings {
		if it := &m.items[r.at]; it.unit == "" && 0 < r.PSI && r.PSI < leastPSI && !(m.weakTold() && r.PSI >= leastWeak && m.pointAt(r.at-1) && m.closes(r.at)) {
			m.setRole(r.at, roleIgnored, "too small for a pressure in psi")
			continue
		}
		if len(r.points) == 0 && m.rightsHouse() {
			m.setRole(r.at, roleIgnored, "may be the house's number")
			doubted = append(doubted, r.at)
			continue
		}
		goesOn := m.tapInHand(&r)
		if goesOn && !m.ctx.TapUnsure {
			m.giveTap(&r)
		}
		if len(r.points) > 0 || !goesOn && m.ofTheHouse(&r) {
			kept = append(kept, r)
			continue
		}
		m.setRole(r.at, roleIgnored, "no test point, and nothing that makes it the house's")
		if !m.ofHouses(r.sent) {
			doubted = append(doubted, r.at)
		}
	}
	m.readings = kept
	if m.frame.Site == "" && m.ctx.Site == "" && len(kept) == 0 {
		return // talk among the crew
	}
	for _, at := range doubted {
		m.askPlace(at)
	}
}

// unsaidNumbers asks about the numbers of a message that names a house and tells nothing else of it, where
// nothing says what they are: "12 Elm, fridge line 60". What has more to say than that is talk.
func (m *message) unsaidNumbers() {
	if m.frame.Site == "" {
		return
	}
	unsaid, words := 0, 0
	for i := range m.items {
		switch it := &m.items[i]; {
		case it.why == unsaidNumber && it.unit == "" && !it.muted:
			unsaid++
		case !it.mark && !it.site:
			words++
		}
	}
	if words > wordsOfNumber*unsaid {
		return
	}
	for i := range m.items {
		if m.items[i].why == unsaidNumber {
			m.askPlace(i)
		}
	}
}

// wordsOfNumber is how many words tell at most where a number was read: "ice maker tee".
const wordsOfNumber = 4

// rightsHouse tells whether the bare numbers of a message may put the number of the house in hand
// right, since one of them is that number: "sorry 18 was 16" of 18 Wexler.
func (m *message) rightsHouse() bool {
	house, _, _ := strings.Cut(m.ctx.Site, " ")
	own, other := false, false
	for i := range m.items {
		it := &m.items[i]
		if it.num == nil || it.unit != "" || it.num.time || !it.num.integer {
			continue
		}
		same := strconv.Itoa(int(it.value)) == house
		own, other = own || same, other || !same
	}
	return own && other
}

// ofTheHouse tells whether a number without a test point is a pressure of the
// house all the same.
func (m *message) ofTheHouse(r *reading) bool {
	it := &m.items[r.at]
	known := m.frame.Site != "" || m.ctx.Site != ""
	others := slices.ContainsFunc(m.readings, func(o reading) bool { return len(o.points) > 0 })
	switch {
	case m.hasAsk(AskCorrect), r.When != "":
		return true
	case it.unit == "" && m.gaugeInHand() && !m.shown(r.at):
		return false
	case m.ofHouses(r.sent), m.limitTold(r.at), m.onlySaid(r.at), m.leadsAway(r.at) && !pressureUnit(it.unit):
		return false
	case others && m.left(r.at, 4, false, func(k int) bool { return m.is(k, cItem, "gauge") && m.is(k-1, cPart, "old") }) >= 0:
		return false // "the old gauge said 70, mine says 64 at the bib"
	case m.left(r.at, 6, false, m.wholeHouse) >= 0 || m.right(r.at, 3, false, m.wholeHouse) >= 0:
		return true
	case pressureUnit(it.unit) && !others && (known || m.left(r.at, 2, false, func(k int) bool { return m.is(k, cHint, "found") }) >= 0):
		return true // "complaint was poor pressure but I get 74 psi"
	case known && !others && m.hardlyMore(r.sent) && (it.unit != "" || m.shown(r.at)):
		return true
	case m.underPeak(r), m.otherInBrackets(r.at), !others && m.houseShows(r.at):
		return true
	case known && !others && m.leftByWork(r):
		r.When = assess.After
		return true
	}
	// what only a gauge's number is told with, in its own clause, or in the whole sentence
	// of a number that stands by itself: "85 and holding, all faucets shut"
	s := &m.sents[r.sent]
	bare := known && m.left(r.at, 9, true, func(k int) bool { return !m.items[k].mark }) < 0 &&
		m.right(r.at, 40, true, func(k int) bool { return m.items[k].num != nil }) < 0
	seg := it.seg
	if m.isMark(r.at+1, "/") && m.isNum(r.at+2) {
		seg = m.items[r.at+2].seg // "60/52 static/flowing"
	}
	for k := s.from; k < s.to; k++ {
		if m.items[k].seg != it.seg && m.items[k].seg != seg && !bare || k == r.at {
			continue
		}
		if m.is(k, cStatic, "") || m.flowTag(k) != "" || m.is(k, cPeak, "") || m.is(k, cSym, "creep") || m.is(k, cState, "") {
			return true
		}
	}
	return false
}

// houseShows tells whether a clause says no more than what the house that it names shows: "630 Canela Ct trae
// 112, piloto apagado".
func (m *message) houseShows(i int) bool {
	k, led := i-1, m.ledByShowing(i)
	for ; k > 0 && !m.items[k].mark && !m.items[k].site && (m.besideShown(k) || m.inList(k, listHouseHas)); k-- {
		led = led || m.inList(k, listHouseHas) || m.inList(k, listLinks)
	}
	said := m.right(i, 6, true, func(k int) bool { return m.is(k, cClaim, "says") || m.says(k, "dice", "dijo", "segun", "says", "said") })
	return led && said < 0 && k >= 0 && m.items[k].site && m.closes(i)
}

// leftByWork tells whether a reading is a number alone that closes a sentence of work on the regulator:
// "old reg out and a new one in, 58" is what the house reads with the new one.
func (m *message) leftByWork(r *reading) bool {
	if !m.closes(r.at) || !m.items[max(r.at-1, 0)].mark || m.items[r.at].unit != "" && !pressureUnit(m.items[r.at].unit) {
		return false
	}
	return slices.ContainsFunc(m.verbs, func(v verb) bool {
		return v.done && v.at < r.at && r.at-v.at <= 12 && m.items[v.at].sent == r.sent &&
			(v.object == "prv" || v.object == "" && m.carriedTo(v.at) == "prv") && oneOf(v.what, "replaced", "installed", "rebuilt")
	})
}

// ofHouses tells whether sentence s speaks of several houses: "checked 4 houses on Clay, all 60".
func (m *message) ofHouses(s int) bool {
	for k := m.sents[s].from; k < m.sents[s].to; k++ {
		it := &m.items[k]
		if it.num != nil && it.value > 1 && it.tok+1 < len(m.toks) && oneOf(m.toks[it.tok+1].text, "houses", "homes", "casas") || m.says(k, "houses", "homes", "casas") {
			return true
		}
	}
	return false
}

// underPeak tells whether a reading is what a gauge showed beside its highest value: "peaked
// 143, sitting at 76".
func (m *message) underPeak(r *reading) bool {
	return m.ledTo(r.at) && slices.ContainsFunc(m.readings, func(o reading) bool {
		return o.sent == r.sent && o.Peak && o.at < r.at && len(o.points) == 0 && o.PSI > r.PSI
	})
}

// wholeHouse tells whether item k speaks of the pressure of the house as such.
func (m *message) wholeHouse(k int) bool {
	if m.inList(k, listWholeHouse) {
		return true
	}
	return m.is(k, cItem, "gauge")
}

// hardlyMore tells whether sentence s holds hardly more than a number and a street
// line: "92, 123 Elm".
func (m *message) hardlyMore(s int) bool {
	words := 0
	for k := m.sents[s].from; k < m.sents[s].to; k++ {
		if it := &m.items[k]; !it.mark && !it.site && it.num == nil {
			words++
		}
	}
	return words <= 1
}

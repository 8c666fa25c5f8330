package intents

import (
	"strings"

	"lazyhand/assess"
)

// Lists of the lexicon that these rules know.
var (
	listOtherRooms  = listOf("other rooms")
	listPlaceToBibb = listOf("place to bibb")
	listBibbToPlace = listOf("bibb to place")
	listOpensPlace  = listOf("opens place")
	listInlets      = listOf("inlets")
	listOutOfReach  = listOf("out of reach")
	listSkipsTap    = listOf("skips tap")
	listGaugesTap   = listOf("gauges tap")
	listNotYetAt    = listOf("not yet at")
	listBibbKinds   = listOf("bibb kinds")
	listTapShut     = listOf("tap shut")
	listInThisHouse = listOf("in this house")
)

var placeOpener = opener{
	classes: setOf(cPoint, cPlace, cBibb, cInitial),
	items:   []string{"drain_valve"},
	hints:   []string{"bothsides", "enters", "leaves"},
	lists:   []list{listOpensPlace},
	typed:   []string{"st", "bth"},
}

// placeRule reads item i as a test point, or keeps it from being one. It returns the item
// that it read last, and whether it decided.
type placeRule func(m *message, i int) (last int, decided bool)

// What those rules begin at that are not asked for every place.
var (
	upstairsOpener = opener{classes: setOf(cFlowing), words: []string{"back at", "back there", "back here", "after it"}}
	sideOpener     = opener{hints: []string{"bothsides"}, lists: []list{listBehindPrv}, words: []string{"in", "out", "down", "ahead", "before", "antes"}}
	backOpener     = opener{words: []string{"fr", "back", "bck"}, typed: []string{"st"}}
	shortOpener    = opener{classes: setOf(cInitial), items: []string{"drain_valve"}, words: []string{"kit", "washer"}, typed: []string{"st", "bth"}}
	inOutOpener    = opener{
		items: []string{"drain_valve"},
		hints: []string{"enters", "leaves"},
		words: []string{"drain", "house", "casa", "hose", "wash", "abajo"},
	}
)

// placeRules are asked in turn, each where one of its keys opens it; 0 is any place.
var placeRules = [...]struct {
	opens key
	reads placeRule
}{
	{keyUpstairs, (*message).placeUpstairs},
	{0, (*message).noPlaceWord},
	{keySide, (*message).placeBesidePRV},
	{keyBack, (*message).placeTurnedBack},
	{0, (*message).placePossessive},
	{keyShort, (*message).placeShort},
	{keyInOut, (*message).placeByRegulator},
	{0, (*message).placeOfPoint},
	{0, (*message).placeOfBibb},
	{0, (*message).placeOfSideBibb},
}

var placeIndex = byKey(len(placeRules), func(k int) key { return placeRules[k].opens })

// places joins a side of the house and a hose bibb into one test point, and
// takes fixtures that merely run, or that a phrase is about, out of the points.
func (m *message) places() {
	slip := strings.Contains(m.raw, "~")
	for i := 0; i < len(m.items); i++ {
		if !m.begins(i, keyPlace|keyUpstairs) && !slip && !(m.isNum(i+2) && strings.HasSuffix(m.items[i].text, "s")) {
			continue
		}
		for open := placeIndex.open(uint64(m.items[i].keys | m.allKeys)); open != 0; {
			if last, decided := placeRules[open.next()].reads(m, i); decided {
				if m.valveMoved(i) {
					m.items[i].point = ""
				}
				i = last
				break
			}
		}
	}
}

// placeUpstairs reads a point told by the floor, or a plain "back": "upstairs bath 58".
func (m *message) placeUpstairs(i int) (int, bool) {
	if p := m.upstairsIn(i); p != "" {
		m.items[i].point = p
		return i, true
	}
	if m.backAt(i) || m.backThere(i) {
		m.items[i].point = string(assess.RearBibb)
		return i, true
	}
	return i, false
}

// noPlaceWord passes over items that begin no place.
func (m *message) noPlaceWord(i int) (int, bool) {
	it := &m.items[i]
	switch {
	case it.mark || it.num != nil || m.is(i, cSkip, ""):
		return i, true
	case it.text == "after it" && (m.text(i+1) == "was" && m.text(i-1) == "and" || m.closes(i)) && m.leftOver(i, 20, cBefore):
		m.say(i, "after") // "before I did that it was 91 and after it was 61"
		return i, true
	case m.inList(i, listInlets) && m.inletOfThing(i):
		return i, true // "77 at the water heater inlet" is behind the regulator
	case m.isMark(i+1, ":") && m.is(i, cHint, "enters") && m.headLine("leaving"):
		return i, true // "Entrada: atrás 112 … Salida: atrás 61"
	case m.isMark(i-1, "(") && m.isMark(i+1, ")") && strings.Contains(m.raw, "~"):
		m.call(i, "aside") // "~88~ 78 (typo)": the slip is struck out already
		return i, true
	}
	return i, !m.begins(i, keyPlace) && !(m.isNum(i+2) && strings.HasSuffix(it.text, "s"))
}

// inletOfThing tells whether the inlet at item i is that of a heater or another part of the house.
func (m *message) inletOfThing(i int) bool {
	other := func(k int) bool { return m.is(k, cItem, "") && !m.is(k, cItem, "prv") && !m.is(k, cItem, "gauge") }
	k := i - 1
	if m.is(k, cHint, "cold") || m.says(k, "cold", "the") {
		k--
	}
	return other(k) || m.says(i+1, "of", "to", "on") && m.right(i, 3, false, other) >= 0
}

// leftOver tells whether a class stands within n items before i, past other numbers too.
func (m *message) leftOver(i, n int, c class) bool {
	return m.left(i, n, true, func(k int) bool { return m.is(k, c, "") }) >= 0
}

// placeBesidePRV reads a side of the regulator: "ahead of the prv".
func (m *message) placeBesidePRV(i int) (int, bool) {
	p := m.besidePRV(i)
	if p != "" {
		m.items[i].point = p
	}
	return i, p != ""
}

// placePossessive reads a point and the "is" that dictation writes as a plural.
func (m *message) placePossessive(i int) (int, bool) {
	p := m.possessive(i)
	if p != "" {
		m.items[i].point = p
	}
	return i, p != ""
}

// placeTurnedBack passes over what is a side of the house by its letters alone: "exp tank fr 50 gal".
func (m *message) placeTurnedBack(i int) (int, bool) {
	it := &m.items[i]
	if it.text == "fr" && m.isNum(i+1) && m.items[i+1].unit != "" && !pressureUnit(m.items[i+1].unit) {
		return i, true // "exp tank fr 50 gal"
	}
	if m.typed(i) == "st" && m.flowTag(i) != "" {
		m.unsay(i)
		return i, true
	}
	return i, m.turnedBack(i)
}

// placeShort reads points written by a letter or two: "f HB 61#", "K 58".
func (m *message) placeShort(i int) (int, bool) {
	it := &m.items[i]
	if k := m.bibbBehind(i); k > 0 && it.n == 1 && len(it.text) == 1 {
		if v, ok := m.val(i, cInitial); ok && strings.HasSuffix(v, "_bibb") {
			it.point, m.items[k].role = v, roleTaken
			return k, true
		}
	}
	if m.streetSide(i) {
		it.point = string(assess.Street)
		m.unsay(i)
		return i, true
	}
	if p := m.initial(i); p != "" {
		it.point = p
		return i, true
	}
	if m.sparePart(i) {
		return i, true
	}
	if m.shortBoth(i) {
		m.call(i, "both")
		return i, true
	}
	return i, false
}

// bibbBehind returns the bibb that stands behind the letter or the side at item i, a stroke between them or
// none: "f HB", "s/HB"; -1 for none.
func (m *message) bibbBehind(i int) int {
	k := i + 1
	if m.isMark(k, "/") && m.toks[m.items[k].tok].glued {
		k++
	}
	if !m.is(k, cBibb, "") {
		return -1
	}
	return k
}

// placeByRegulator reads the heater's drain, the house's side of a regulator, and "in" and
// "out": "street 130, house 62", "in 110 out 60".
func (m *message) placeByRegulator(i int) (int, bool) {
	it := &m.items[i]
	p := ""
	switch {
	case m.drainOfTank(i) || m.is(i, cItem, "drain_valve") && !m.is(i, cPoint, "") && m.gaugedAt(i):
		p = string(assess.HeaterDrain)
	case m.houseSide(i):
		p = string(assess.AfterPRV)
	case m.hoseInList(i) && it.text == "wash":
		p = string(assess.Laundry) // "kit 58, lav 57, wash 58"
	case m.hoseInList(i):
		p = string(assess.Bibb)
	default:
		p = m.inOrOut(i)
	}
	if p == "" {
		return i, false
	}
	it.point = p
	return i, true
}

// placeOfPoint reads the name of a test point, unless it only says what runs or when:
// "kitchen 62", but "62 with the kitchen open".
func (m *message) placeOfPoint(i int) (int, bool) {
	v, ok := m.val(i, cPoint)
	if !ok || v == string(assess.Bibb) && m.is(i, cBibb, "") {
		return i, false
	}
	if m.notGauged(i) || m.tapShut(i) {
		return i, true
	}
	if m.text(i) == "hs" && m.inList(i-1, listInThisHouse) {
		return i, true // "no prv n ths hs"
	}
	if m.runsInList(i) || v == string(assess.Street) && m.valved(i) || m.runs(i) || m.occasion(i) || m.hoseAfter(i) ||
		m.withTaps(i) || m.leadsOver(i) {
		return i, true
	}
	m.items[i].point = v
	if v == string(assess.Bibb) {
		m.bibbAtSide(i, 4) // "la llave de la manguera del costado"
	}
	return i, true
}

// notGauged tells whether the tap at item i is one that no gauge was put on, and another was: "kitchen
// instead of laundry, 61", "used the kitchen, laundry is boxed in: 61".
func (m *message) notGauged(i int) bool {
	if m.isNum(i-1) || m.isNum(i+1) {
		return false
	}
	k := i - 1
	if m.is(k, cDeterminer, "") {
		k--
	}
	if m.passedOver(k) {
		return true // "63 at the house, didn't check the street"
	}
	return m.left(i, 6, false, func(k int) bool { return m.items[k].point != "" }) >= 0 &&
		(m.is(k, cHint, "insteadof") || m.inList(i+1, listLinks) && m.inList(i+2, listOutOfReach))
}

// passedOver tells whether the words that end at item k say that no gauge was put on the tap behind them:
// "couldn't get to", "still need to check", "skipped".
func (m *message) passedOver(k int) bool {
	if m.inList(k, listSkipsTap) {
		return true
	}
	if m.says(k, "to", "at", "a") {
		k--
	}
	if !m.inList(k, listGaugesTap) {
		return false
	}
	return m.left(k+1, 4, false, func(j int) bool {
		return m.items[j].seg == m.items[k].seg && (m.is(j, cNeg, "") || m.inList(j, listNotYetAt))
	}) >= 0
}

// tapShut tells whether the fixture at item i is only said to be shut while another tap was gauged: "laundry
// tap / tub open: 52 / tub shut: 60", "66 on the gauge, tub shut".
func (m *message) tapShut(i int) bool {
	if m.shutThenOpen(i) {
		return true
	}
	return m.inList(i+1, listTapShut) && !m.isNum(i-1) && !m.is(i-1, cClaim, "has") && !m.says(i-1, "at", "on", "in", "from", "off") &&
		(m.closes(i+1) || m.isMark(i+2, ":", "=")) && (m.kinds.has(cPoint) || m.kinds.has(cBibb))
}

// shutThenOpen tells whether the fixture at item i is said to be off and elsewhere in its sentence to be on,
// so that another tap was gauged both times: "kitchen 74 shower off, 61 shower on".
func (m *message) shutThenOpen(i int) bool {
	if !m.inList(i+1, listTapShut) && m.text(i+1) != "off" {
		return false
	}
	s := &m.sents[m.items[i].sent]
	for k := s.from; k < s.to; k++ {
		rest, same := strings.CutPrefix(m.text(k), m.text(i))
		if same && k != i && (strings.HasPrefix(rest, " ") && m.is(k, cFlowing, "") || rest == "" && m.inList(k+1, listOpen)) {
			return true
		}
	}
	return false
}

// placeOfBibb reads a hose bibb, and the side that is told after it: "109 at the bib, side one".
func (m *message) placeOfBibb(i int) (int, bool) {
	if !m.is(i, cBibb, "") {
		return i, false
	}
	if m.inList(i, listBibbKinds) && m.left(i, 3, false, func(k int) bool { return strings.HasSuffix(m.items[k].point, "_bibb") }) >= 0 {
		return i, true // "rear bib, frost-free, 88"
	}
	if m.runs(i) && !m.numNear(i) {
		if m.is(i+1, cPlace, "") {
			m.items[i+1].role = roleTaken // "w/ HB rr open"
		}
		return i, true
	}
	m.items[i].point = string(assess.Bibb)
	k := i + 2
	ends := m.closes(k) || m.text(k+1) == "one" && m.closes(k+1)
	if m.isMark(i+1, ",") && m.is(k, cPlace, "") && ends && m.isNum(i-2) != m.isNum(i-3) {
		m.joinSide(i, k)
		return i, true
	}
	m.bibbAtSide(i, 5)
	return i, true
}

// bibbAtSide joins the bibb at i with a side told within n items after it, unless that is
// another bibb's.
func (m *message) bibbAtSide(i, n int) {
	if k := m.ahead(i, cPlace, n, listBibbToPlace); k > 0 && !m.bibbFollows(k) {
		m.joinSide(i, k)
		return
	}
	if p := m.besideSite(i + 1); p != "" {
		m.items[i].point = p
	}
}

// besideSite returns the bibb of the side of the house that item k tells, where the house is called by its
// street line: "behind 903 Millrace Parkway", "in front of 12 Elm".
func (m *message) besideSite(k int) string {
	p, front := "", false
	switch {
	case m.says(k, "behind", "detras de", "atras de", "in back of", "back of"):
		p = string(assess.RearBibb)
	case m.says(k, "in front of", "front of", "enfrente de", "frente a"):
		front = true
	case m.says(k, "in", "out", "on") && m.says(k+1, "front of", "back of"):
		k++
		front = m.text(k) == "front of"
		p = string(assess.RearBibb)
	}
	if front {
		p = string(assess.FrontBibb)
	}
	if k+1 >= len(m.items) || !m.items[k+1].site {
		return ""
	}
	return p
}

// joinSide makes the bibb at i that of the side at k.
func (m *message) joinSide(i, k int) {
	v, _ := m.val(k, cPlace)
	m.items[i].point, m.items[k].role = v+"_bibb", roleTaken
}

// placeOfSideBibb reads a side of the house as its bibb, said or not: "rear yard spigot",
// "side 62".
func (m *message) placeOfSideBibb(i int) (int, bool) {
	v, ok := m.val(i, cPlace)
	if !ok || m.taken(i) {
		return i, true
	}
	it := &m.items[i]
	k := m.bibbBehind(i)
	if k < 0 {
		k = m.ahead(i, cBibb, 4, listPlaceToBibb)
	}
	if k > 0 {
		if m.runs(k) && !m.numNear(i) {
			return k, true
		}
		it.point = v + "_bibb"
		for j := i + 1; j <= k; j++ {
			m.items[j].role = roleTaken
		}
		return k, true
	}
	if m.says(i+1, "tap", "faucet", "taps", "llave", "grifo") {
		it.point = v + "_bibb"
		m.items[i+1].role = roleTaken
		return i + 1, true
	}
	if k := m.ahead(i, cPoint, 3, listPlaceToBibb); k > 0 {
		if p, _ := m.val(k, cPoint); p == string(assess.Bibb) {
			it.point = v + "_bibb"
			m.items[k].role = roleTaken
			return k, true
		}
		return i, true // "rear bath": the bath is the point
	}
	if _, day := weekdays[m.text(i+1)]; it.text == "back" && (day || m.says(i+1, "tomorrow", "next")) {
		return i, true // "no tank back friday to put one in"
	}
	if m.inList(i+1, listOtherRooms) && !m.is(i+2, cBibb, "") {
		return i, true // "the rear shop got 61"
	}
	it.point, it.weak = v+"_bibb", true
	return i, true
}

// houseSide tells whether "house" at item i is the house's side of a regulator, as opposed
// to the street's: "street 130, house 62".
func (m *message) houseSide(i int) bool {
	t, before := m.text(i), m.text(i-1)
	if t != "house" && (t != "casa" || before == "la" || before == "en") || before == "the" || before == "in" {
		return false
	}
	if m.isNum(i+1) && m.items[i+1].unit == "" && m.tap(i+2) && !m.isNum(i+3) {
		return false // "street 132, house 63 laundry"
	}
	return (m.isNum(i+1) || m.isNum(i-1) || m.text(i+1) == ":" && m.isNum(i+2) || m.houseGets(i)) && (m.has(cPoint, "street") || m.has(cPoint, "irrigation"))
}

// ahead finds an item of a class within n items after i, with only fillers between.
func (m *message) ahead(i int, c class, n int, between list) int {
	for k := i + 1; k < len(m.items) && k <= i+n; k++ {
		if c == cPoint && m.items[k].seg != m.items[i].seg {
			return 0 // "77 rear - laundry 71": two clauses
		}
		if m.is(k, c, "") && (!m.is(k, cSkip, "") || c == cPlace) {
			return k
		}
		if m.items[k].num != nil || m.items[k].site || !m.inList(k, between) {
			return 0
		}
	}
	return 0
}

// bibbFollows tells whether a place at k belongs to a bibb of its own.
func (m *message) bibbFollows(k int) bool { return m.ahead(k, cBibb, 2, listPlaceToBibb) > 0 }

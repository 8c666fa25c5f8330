package intents

import "strings"

// Lists of the lexicon that these rules know.
var (
	listSizes       = listOf("sizes")
	listSizeDoes    = listOf("size does")
	listSizingFacts = listOf("sizing facts")
	listHouseRuns   = listOf("house runs")
)

var tankTalkOpener = opener{items: []string{"tank", "expansion_tank"}, words: []string{"expansion"}}

// tankTalk tells whether sentence s speaks of an expansion tank.
func (m *message) tankTalk(s int) bool {
	if !m.holdsKey(keyTank) {
		return false
	}
	for i := m.sents[s].from; i < m.sents[s].to; i++ {
		if v, ok := m.val(i, cItem); ok && (v == "tank" || v == "expansion_tank") || m.text(i) == "expansion" {
			return true
		}
	}
	return false
}

// givesHouse tells whether sentence s tells no more than what pressure a house has: "house runs 60".
func (m *message) givesHouse(s int) bool {
	from := m.sents[s].from
	for m.is(from, cDeterminer, "") {
		from++
	}
	return m.shortSentence(s, 6) && m.numsBetween(m.sents[s].from-1, m.sents[s].to) == 1 && m.houseRuns(from) > 0
}

// tankNumbers puts the numbers of a question about a tank on the ask.
func (m *message) tankNumbers(s int, a *Ask) {
	led := -1
	for sn := range m.sents {
		given := abs(sn-s) == 1 && m.givesSizing(s, sn) || sn > 0 && sn == s+2 && m.givesHouse(sn)
		if sn != s && !given && !(abs(sn-s) <= 1 && !m.readingLike(sn)) {
			continue
		}
		if given {
			m.sents[sn].asking = true
		}
		for i := m.sents[sn].from; i < m.sents[sn].to; i++ {
			it := &m.items[i]
			if it.num == nil || it.role != roleNone || it.num.time || it.num.money {
				continue
			}
			v := it.value
			set := func(p **float64, v float64) {
				if *p == nil {
					*p = &v
				}
				m.setRole(i, roleAsked, "of the question")
			}
			if v, _ := m.val(i+1, cItem); (it.unit == "gal" || it.unit == "litre") && it.value < 20 &&
				(v == "tank" || v == "expansion_tank" || m.heaterGallons(i)) {
				m.setRole(i, roleAsked, "the tank asked about")
				continue
			}
			unit := it.unit
			if unit == "psi" && a.PSI == nil && m.psiOfNext(i) {
				unit = "" // "cold 45 hot 125 psi 60"
			}
			switch unit {
			case "gal":
				set(&a.SizeGal, v)
			case "litre":
				set(&a.SizeGal, round1(v*0.264172))
			case "psi", "bar", "kpa":
				if given && m.nearWord(i, 1, "inlet") && a.InletF == nil {
					continue
				}
				set(&a.PSI, toPSI(v, it.unit))
			case "degc":
				v = float64(int(v*9/5 + 32.5))
				fallthrough
			case "degf", "deg", "":
				var label cueSet
				label, led = m.labelOf(i, led)
				switch {
				case unit == "" && a.SizeGal == nil && m.heaterByNumber(i):
					set(&a.SizeGal, v) // "on a 50 how big a tank"
				case unit == "" && m.isNum(i-1) && m.psiOfNext(i-1):
					set(&a.PSI, v)
				case unit == "" && m.text(i-1) == "a" && v >= 100 && v <= 180 && a.SetpointF == nil:
					set(&a.SetpointF, v) // "un boiler de 40 gal a 125"
				case unit == "" && v >= 32 && v <= 90 && m.text(i+1) == "in" && (m.says(i+2, "and", ",", "/") || m.closes(i+1) || m.isNum(i+2)):
					set(&a.InletF, v) // "50 in and 130 set"
				case unit == "" && v >= 100 && v <= 180 && m.text(i+1) == "out":
					set(&a.SetpointF, v) // "120 out 55 in"
				case label.has(cueRise) && v >= 100 && m.says(i-1, "to", "up to", "a", "hasta"):
					set(&a.SetpointF, v) // "gets heated to 125"
				case label.has(cueRise):
					set(&a.RiseF, v)
				case label.has(cueInlet) && (unit != "" || v <= 90 || label.has(cueStatic)):
					set(&a.InletF, v)
				case label.has(cueDial) && (unit != "" || v >= 100), unit == "" && label.has(cueInlet):
					set(&a.SetpointF, v)
				case unit == "" && (sn == s || given) && (label.has(cueStatic) || m.ofHouseRun(i)) && leastPSI <= v && v <= 200:
					set(&a.PSI, v)
				case unit != "":
					set(&a.SetpointF, v)
				case v >= 20 && v <= 120 && sn == s && m.is(i+1, cItem, "heater"):
					set(&a.SizeGal, v)
				}
			}
		}
	}
}

// heaterGallons tells whether the gallons of a heater follow in the sentence of number i: "will
// a 2 gal do on a 40 gal".
func (m *message) heaterGallons(i int) bool {
	return m.right(i, longestSentence, true, func(k int) bool { return m.isNum(k) && m.items[k].unit == "gal" && m.items[k].value >= 20 }) >= 0
}

// labelOf returns what a word near number item i in its clause says that it is,
// before it or else behind it: "inlet 50", "130 out"; a loose word only where there
// is no other. A word up to item led belongs to the number before; the second
// result is the item that led here.
func (m *message) labelOf(i, led int) (cueSet, int) {
	it := &m.items[i]
	if t := m.text(i + 1); (t == "to" || t == "a") && m.isNum(i+2) && !pressureUnit(m.items[i+2].unit) {
		return cueInlet, i // "55 to 130"
	}
	var loose cueSet
	for k := i - 1; k > led && k >= i-4 && m.items[k].seg == it.seg && m.items[k].num == nil; k-- {
		l := m.labelAt(k)
		switch {
		case l == 0:
		case !l.has(cueLoose):
			return l, i
		case loose == 0:
			loose = l
		}
	}
	for k := i + 1; k < len(m.items) && k <= i+3 && m.items[k].seg == it.seg && m.items[k].num == nil; k++ {
		if m.is(k, cHint, "whiles") {
			break // "a 130 grados con agua entrando a 60"
		}
		l := m.labelAt(k)
		if l != 0 && (!l.has(cueLoose) || loose == 0 && k == i+1 && m.closes(k)) {
			return l, k
		}
	}
	return loose, i
}

// labelAt returns what item k says that a number beside it is.
func (m *message) labelAt(k int) cueSet {
	it := &m.items[k]
	if it.mark || it.site || it.num != nil {
		return 0
	}
	var l, loose cueSet
	for t := it.tok; t < it.tok+it.n; t++ {
		if c := m.wordCues(t) & leading; c.has(cueLoose) {
			loose |= c
		} else {
			l |= c
		}
	}
	if l != 0 {
		return l // "cold in"
	}
	return loose
}

// nearWord tells whether one of some words stands within n items of i.
func (m *message) nearWord(i, n int, words ...string) bool {
	for k := max(0, i-n); k < min(len(m.items), i+n+1); k++ {
		if k != i && m.items[k].sent == m.items[i].sent && m.items[k].seg == m.items[i].seg {
			if k < i && m.numsBetween(k, i) > 0 || k > i && m.numsBetween(i, k) > 0 {
				continue
			}
			for _, w := range words {
				if m.text(k) == w {
					return true
				}
			}
		}
	}
	return false
}

var volumeGate = onlyWith(cUnit, "gal", "litre")

// sizeGate opens the question for a size whose volume is not told.
var sizeGate = gateOf(opener{lists: []list{listSizes}, words: []string{"cuanto", "de cuanto", "de cuantos"}})

// sizes tells whether a sentence asks for the size of an expansion tank.
func (m *message) sizes(s int) bool {
	volume := !m.shut(volumeGate)
	if !volume && m.shut(sizeGate) || m.sizeTold(s) {
		return false
	}
	if volume && (m.sizeDoes(s) || m.sizingAsked(s) || m.tankFor(s)) {
		return true
	}
	if m.readingLike(s) && !m.sentenceSays(s, "heater", "boiler", "calentador") {
		return false
	}
	which := volume && m.whichTank(s)
	if !which && m.shut(sizeGate) {
		return false
	}
	ask, size := which || m.sents[s].question || m.request(s), which
	for i := m.sents[s].from; i+1 < m.sents[s].to; i++ {
		if t := m.text(i); oneOf(t, "which", "what", "how", "que") && m.says(i+1, "size", "big", "tamano") {
			ask = true
		}
	}
	for i := m.sents[s].from; i < m.sents[s].to; i++ {
		switch {
		case m.inList(i, listSizes):
			if m.text(i) == "galones" && m.items[max(i-1, 0)].num != nil {
				continue
			}
			size = true
		case m.says(i, "cuanto", "de cuanto", "de cuantos"):
			size, ask = true, true
		}
		if m.is(i, cWill, "") && (m.text(i) == "order" || m.text(i) == "quote") {
			return false
		}
	}
	return ask && size
}

// asksWhatTank reads "what should the tank be", "what tank should 12 Elm have".
func (m *message) asksWhatTank(s int) bool {
	first := m.firstOf(s)
	if !m.says(first, "what", "which", "que") || m.anyReadingLike() {
		return false
	}
	last := m.sents[s].to - 1
	for last > first && (m.items[last].mark || m.items[last].site || m.says(last, "at", "for", "en")) {
		last--
	}
	should := func(k int) bool { return m.says(k, "should", "should be", "debe", "deberia") }
	return should(last) || m.says(last, "be", "have", "ser", "tener") && m.right(first, last-first, true, should) >= 0
}

// tankFor reads "tank for 75 gal, inlet 48, heater at 125?".
func (m *message) tankFor(s int) bool {
	se := &m.sents[s]
	begins := s+1 < len(m.sents) && m.sents[s+1].question && m.shortSentence(s+1, 4) // "tank for a 50 gal, 70 psi. how big?"
	for i := se.from; i < se.to && (se.question || begins && i == se.from); i++ {
		if v, _ := m.val(i, cItem); (v == "tank" || v == "expansion_tank") && m.text(i+1) == "for" {
			gallons := func(k int) bool { return m.isNum(k) && m.items[k].unit == "gal" && m.items[k].value >= 20 }
			return gallons(i+2) || gallons(i+3)
		}
	}
	return false
}

// sizeDoes tells whether a sentence asks which tank a heater takes or whether a
// size will do: "50 gal, 70 psi, which tank", "will a 2 gal tank do".
func (m *message) sizeDoes(s int) bool {
	se := &m.sents[s]
	gallons, which, opener, enough := false, false, false, false
	for i := se.from; i < se.to; i++ {
		it := &m.items[i]
		if it.num != nil {
			gallons = gallons || it.unit == "gal" || it.unit == "litre"
			continue
		}
		if it.mark || it.site {
			continue
		}
		v, _ := m.val(i, cItem)
		if tank := v == "tank" || v == "expansion_tank"; tank && m.is(i-1, cQuestion, "") && m.text(i-1) != "is" {
			which = true
		}
		if m.inList(i, listSizeDoes) {
			opener = opener || i <= se.from+1
		}
		enough = enough || i > se.from && m.wordCues(it.tok).has(cueEnough)
	}
	return gallons && (which || opener && enough)
}

// sizingAsked tells whether a sentence without a deed asks for the tank that goes
// with a heater: "calc the tank, 55 gal", "what do I buy for an expansion tank, 80
// gal", "smallest tank for a 40 gal at 70 psi".
func (m *message) sizingAsked(s int) bool {
	se := &m.sents[s]
	gallons, sizing, wh, psi := m.givesSizing(s, s+1), s > 0 && m.shortSentence(s-1, 4) && m.sizingWord(s-1), false, false
	toCome, how := false, false
	for i := se.from; i < se.to; i++ {
		it := &m.items[i]
		switch {
		case it.kinds.has(cDid) && m.text(i) != "set", it.kinds.has(cLacks):
			return false
		case it.point != "" && !it.weak && (m.isNum(i+1) || m.isNum(i-1)) && m.labelAt(i) == 0:
			return false
		case it.num != nil:
			gallons = gallons || (it.unit == "gal" || it.unit == "litre") && !m.is(i+1, cItem, "expansion_tank") && m.text(i+1) != "expansion"
			psi = psi || pressureUnit(it.unit)
			continue
		case it.mark || it.site:
			continue
		}
		set := m.wordCues(it.tok)
		toCome = toCome || it.kinds.has(cWill) && !wh && !se.question
		how = how || m.asksHowBig(i)
		wh = wh || set.has(cueWh) && !m.tellsMore(i) && (i == se.from || m.items[i-1].mark || m.wordCues(m.items[i-1].tok).has(cueSmall))
	}
	if toCome {
		return gallons && how // "need to quote a tank, how big with 40 gal"
	}
	return gallons && (sizing || wh || m.sizingWord(s) || psi && se.question)
}

// asksHowBig tells whether a question for a size begins at item i, behind a mark: ", how big", ", what size".
func (m *message) asksHowBig(i int) bool {
	return i > 0 && m.items[i-1].mark && (m.is(i, cAsk, "tank_size") || m.wordCues(m.items[i].tok).has(cueWh) && m.inList(i+1, listSizes))
}

// tellsMore tells whether the "which" at item i tells more of the thing before it, "tank, which is in good shape,
// holds two gallons", or leads to what is so: "what's bad is the tank, 2 gal".
func (m *message) tellsMore(i int) bool {
	if m.is(i+1, cCond, "") && m.inList(i+2, listLinks) {
		return true
	}
	return m.text(i) == "which" && m.isMark(i-1, ",") && m.is(i-2, cItem, "") && !m.is(i+1, cItem, "") && !m.inList(i+1, listSizes)
}

// sizingWord tells whether a sentence has a word that asks for a size.
func (m *message) sizingWord(s int) bool {
	for i := m.sents[s].from; i < m.sents[s].to; i++ {
		if it := &m.items[i]; !it.mark && !it.site && it.num == nil && m.wordCues(it.tok).has(cueSizing) {
			return true
		}
	}
	return false
}

// houseRuns returns the item of the pressure that item i, the house or its people, is told to have: "house is
// at 62", "they run 60"; -1 for none.
func (m *message) houseRuns(i int) int {
	if !m.inList(i, listWholeHouse) && !m.says(i, "they", "theyre", "he", "she", "hes", "shes") {
		return -1
	}
	for i++; m.inList(i, listLinks) || m.inList(i, listHouseRuns); i++ {
	}
	if !m.isNum(i) || m.items[i].unit != "" || m.items[i].value < leastPSI || !m.items[i].num.integer {
		return -1
	}
	return i
}

// ofHouseRun tells whether the number at i is the pressure that the house is told to have.
func (m *message) ofHouseRun(i int) bool {
	return m.left(i, 5, false, func(k int) bool { return m.houseRuns(k) == i }) >= 0
}

// givesSizing tells whether sentence sn only lists what the short question of
// sentence s needs: "tank size? 50 gal, 120 set, 50 inlet, 70 psi".
func (m *message) givesSizing(s, sn int) bool {
	if sn >= len(m.sents) || !m.shortSentence(s, 6) || m.numsBetween(m.sents[s].from-1, m.sents[s].to) > 0 {
		return false
	}
	gal, cue := false, false
	for i := m.sents[sn].from; i < m.sents[sn].to; i++ {
		it := &m.items[i]
		switch {
		case it.site || m.is(i, cState, "") || m.is(i, cDid, "") && m.text(i) != "set":
			return false
		case sn < s && it.point != "" && !m.says(i, "house", "incoming", "inlet"):
			return false // "50 gal heater, kitchen 62. what size tank?" reports as well
		case it.num != nil && (it.unit == "gal" || it.unit == "litre" || it.unit == "" && m.heaterByNumber(i)):
			gal = true
		case it.num != nil && pressureUnit(it.unit) && it.point == "":
			cue = true
		}
		if m.inList(i, listSizingFacts) || m.houseRuns(i) > 0 {
			cue = true
		}
	}
	return gal && cue
}

// whichTank reads a size asked for without the word: "que tanque ocupo para un
// boiler de 75 galones", "which tank for a 50 gal".
func (m *message) whichTank(s int) bool {
	asked := false
	for i := m.sents[s].from; i < m.sents[s].to; i++ {
		switch it := &m.items[i]; {
		case asked && it.num != nil && (it.unit == "gal" || it.unit == "litre"):
			return true
		case m.is(i, cItem, "tank") || m.is(i, cItem, "expansion_tank"):
			k := i - 1
			if m.text(k) == "de" || m.text(k) == "expansion" {
				k--
			}
			t := m.text(k)
			asked = asked || t == "que" || t == "cual" || t == "which" || t == "what"
		}
	}
	return false
}

// leastHeater is the smallest heater that a tank is sized for, in gallons: what is less is the tank's own.
const leastHeater = 20

// sizeTold tells whether sentence s tells the size of a tank that is there, as a form does: "Exp tank
// size: 4.5 gal", "expansion tank size 2 gal".
func (m *message) sizeTold(s int) bool {
	if m.sents[s].question {
		return false
	}
	for i := m.sents[s].from; i < m.sents[s].to; i++ {
		if m.inList(i, listSizes) && m.partAt(i-1) == "expansion_tank" || m.is(i, cAsk, "tank_size") && strings.HasSuffix(m.text(i), " size") {
			k := i + 1
			if m.isMark(k, ":", "=") {
				k++
			}
			return m.isNum(k) && m.items[k].unit == "gal" && m.items[k].value < leastHeater && m.closes(k)
		}
	}
	return false
}

package intents

import "strings"

// Lists of the lexicon that these rules know.
var (
	listWaters    = listOf("waters")
	listRestsOff  = listOf("rests off")
	listToPlanned = listOf("to planned")
	listComesWarm = listOf("comes warm")
	listUnitLed   = listOf("unit led")
)

// A number can be somebody else's: a neighbour's, the water company's, one that
// an old sheet or a label shows, a rating, a temperature, a sum. This room keeps
// those out of the readings.

const (
	othersNumber = "somebody else's number"
	sumEachTime  = "a sum for each time"
)

// gaugeGate is that of rules of a gauge by its name.
var gaugeGate = onlyWith(cItem, "gauge")

// others tell that a number is not one that was measured on this visit, or no pressure.
var others = numberRulesOf([]numberRule{
	{(*message).fraction, "a fraction of an inch", onlyWithWords("/")},
	{(*message).converts, "a conversion", onlyWithList(listUnitLed)},
	{(*message).rating, "a rating", gateOf(opener{classes: setOf(cRelief), items: []string{"gauge"}, hints: []string{"rated"}, words: []string{"-"}})},
	{(*message).labelled, "on a label", gateOf(opener{classes: setOf(cTarget), values: map[class][]string{cWhose: {"label"}}})},
	{(*message).told, othersNumber, onlyWithClass(cWhose)},
	{(*message).unitRate, "a rate", rateGate},
	{(*message).plannedValue, "planned", onlyWithList(listToPlanned)},
	{(*message).advised, "advice", gateOf(opener{values: map[class][]string{cClaim: {"says"}}, hints: []string{"needs"}})},
	{(*message).lineTest, "a test of pipes", onlyWith(cHint, "linetest")},
})

// foreign tells whose number item i is when it is not a pressure measured on
// this visit, and whether it is one at all.
func (m *message) foreign(i int) (string, bool) {
	if why := m.reason(others, i); why != "" {
		return why, true
	}
	if m.items[i].unit == "" {
		switch {
		case !m.shut(turnsGate) && m.says(i-1, "turned", "turns", "turning") && (m.inList(i-2, listPeople) || m.is(i-2, cWhose, "person")):
			return "a person's age", true
		case m.is(i-1, cWhose, "person") && (!m.pointNear(i) || m.says(i-1, "shes", "hes") && !m.tapInClause(i)), m.atAge(i):
			return "a person's age", true
		case m.is(i-1, cClaim, "says") && m.noEquipment(i-2) && (i < 3 || m.items[i-3].mark || m.is(i-3, cDeterminer, "")) && !m.pointNear(i):
			return "shown by " + m.text(i-2), true // "tape says 62"
		case m.eyesight(i):
			return "eyesight", true
		case m.sum(i):
			return "money", true
		case !m.shut(rateGate) && m.rate(i):
			return sumEachTime, true
		case m.restsOff(i):
			return "the gauge's own zero", true
		case m.warmth(i):
			return "a temperature", true
		case m.inYear(i):
			return "a year or a time", true
		case m.isNum(i-2) && m.says(i-1, "and", "y", ",") && strings.HasPrefix(m.items[i-2].why, "name after") && !m.points(i):
			return "name after another", true // "photo 62 and 63"
		case m.is(i+1, cHint, "counted") && !(m.gaugeInHand() && m.ledByShowing(i)) || // "got 20 of them" is asked about
			m.text(i+1) == "more" && m.is(i+2, cHint, "counted"):
			return "a count of " + m.text(i+1), true
		case m.is(i-1, cNamed, "") && !m.is(i-2, cHint, "thatone") &&
			!(m.text(i-1) == "min" && m.sentenceIs(m.items[i].sent, cPeak, "")) || m.isMark(i-1, "#", ":") && m.is(i-2, cNamed, ""),
			m.items[i].ranged && m.isNum(i-2) && m.is(i-3, cNamed, "") && m.text(i-3) != "min": // "shelf 60 to 75"
			return "name after " + m.text(i-1), true
		}
	}
	return "", false
}

// converts tells whether a unit is asked for after the number's own: "70 psi in bar".
func (m *message) converts(i int) bool {
	it := &m.items[i]
	if m.text(i+1) == "is" && m.text(i+2) == "in" {
		u, ok := m.val(i+3, cUnit)
		return ok && pressureUnit(u) && pressureUnit(it.unit)
	}
	if !pressureUnit(it.unit) || !m.inList(i+1, listUnitLed) {
		return false
	}
	u, ok := m.val(i+2, cUnit)
	return ok && pressureUnit(u) && u != it.unit && !m.points(i)
}

// determined tells whether an article or "new", "my" leads to item i: "the 200 psi
// gauge" names a thing, it tells no value.
func (m *message) determined(i int) bool { return m.is(i-1, cDeterminer, "") }

// rating reads a number that describes a part: "a 150 lb relief", "0-200 psi
// gauge", "who has the 100 psi gauge".
func (m *message) rating(i int) bool {
	it := &m.items[i]
	gauge, relief := m.is(i+1, cItem, "gauge"), m.is(i+1, cRelief, "") || m.is(i+1, cHint, "rated")
	switch {
	case m.text(i-1) == "a" && it.value >= 75 && int(it.value)%25 == 0 &&
		m.left(i, 8, false, func(k int) bool { return m.is(k, cRelief, "") }) >= 0 && !m.points(i):
		return true // "the relief on the old heater was a 150"
	case it.value == 0 && it.unit == "" && m.isMark(i+1, "-") && m.toks[m.items[i+1].tok].glued && m.isNum(i+2),
		it.value >= 60 && m.isMark(i-1, "-") && m.toks[m.items[i-1].tok].glued && m.isNum(i-2) && m.items[i-2].value == 0:
		return true // "a 0-160 face"
	case gauge && m.isMark(i-1, "-") && m.isNum(i-2):
		return true
	case gauge || relief:
		return m.determined(i) || relief && it.unit == "psi" && it.value >= 75 && it.value <= 150 && int(it.value)%25 == 0 && !m.points(i)
	case m.isMark(i+1, "-") && m.isNum(i+2) && m.is(i+3, cItem, "gauge"):
		return true
	case it.unit == "psi" && it.value >= 75 && it.value <= 150 && int(it.value)%25 == 0 && !m.points(i):
		// "la válvula de alivio es de 150 psi"
		return m.left(i, 3, false, func(k int) bool { return m.is(k, cRelief, "") }) >= 0
	}
	return false
}

// labelled reads what stands on a tag or plate: "tag: max inlet 300", "25-75 on the
// plate". The writer's own number ends the label's.
func (m *message) labelled(i int) bool {
	s := &m.sents[m.items[i].sent]
	for k := i - 1; k >= s.from; k-- {
		if m.own(k) || m.text(k) == "but" || m.text(k) == "pero" {
			break
		}
		if m.is(k, cItem, "gauge") && (m.is(k-1, cGauged, "") || m.is(k-1, cDeterminer, "") && m.is(k-2, cGauged, "")) {
			break // "125 psi max on the tag.. left the gauge on the back spigot"
		}
		if m.isNum(k) && m.meets(i-1, tapClasses) && m.text(i-2) != "to" {
			break // "supply line tag says 125 max. kitchen 88"
		}
		if m.is(k, cWhose, "label") {
			if m.items[k].seg == m.items[i].seg {
				return !m.besideLabel(k, i)
			}
			// after a comma only what goes on about limits
			limit := func(j int) bool {
				return m.items[j].seg == m.items[i].seg && (m.is(j, cPeak, "") || m.is(j, cTarget, "") || m.is(j, cHint, "limit"))
			}
			return m.left(i, 3, false, limit) >= 0 || m.right(i, 3, true, limit) >= 0
		}
		if m.is(k, cTarget, "") && m.settingRange(i) {
			return true // "label says max inlet 300, outlet 25 to 75"
		}
	}
	k := m.right(i, 5, true, func(k int) bool { return m.is(k, cWhose, "label") })
	return k >= 0 && m.items[k].seg == m.items[i].seg &&
		(m.is(k-1, cDeterminer, "") || m.is(k-1, cItem, "") && m.is(k-2, cDeterminer, "")) && !m.points(i)
}

// settingRange tells whether a number is an end of the wide range that a regulator can be
// set in: "outlet 25 to 75".
func (m *message) settingRange(i int) bool {
	wide := func(a, b int) bool {
		return m.isNum(a) && m.isNum(b) && (m.text(a+1) == "to" || m.text(a+1) == "-") && m.items[b].value-m.items[a].value >= 40
	}
	return wide(i, i+2) || wide(i-2, i)
}

// fraction tells whether a number is half of the size of a wrench or a pipe: "a 9/16".
func (m *message) fraction(i int) bool {
	size := func(a, b int) bool {
		if !m.isNum(a) || !m.isNum(b) || m.text(a+1) != "/" || !m.toks[m.items[b].tok].glued || m.items[a].value >= m.items[b].value {
			return false
		}
		switch m.items[b].value {
		case 2, 4, 8, 16, 32:
			return true
		}
		return false
	}
	return size(i, i+2) || size(i-2, i)
}

// own tells whether item k turns to what the writer found: "I get 110", "ours", "here", "today".
func (m *message) own(k int) bool {
	return m.is(k, cOwn, "") || m.is(k, cNow, "")
}

// told reads the number of another house, the water company or an old paper:
// "neighbor has 95", "the 2021 report had 130", "she measured 45 herself".
func (m *message) told(i int) bool {
	if m.hasAsk(AskCorrect) {
		return false
	}
	it := &m.items[i]
	s := &m.sents[it.sent]
	claims, measures, has, was := false, false, false, false
	for k := i - 1; k >= s.from && k >= i-9; k-- {
		theirs := m.items[k].why == othersNumber && m.text(k-1) == "at"
		if m.own(k) || m.items[k].seg != it.seg || m.is(k, cSym, "") || m.is(k, cColor, "") || m.isNum(k) && !theirs && m.pointNear(i) {
			break // "HOA says 70 max. it's 75 at the front": the second is ours
		}
		v, whose := m.val(k, cWhose)
		switch {
		case whose && v == "other":
			return claims || measures || has || was || m.right(i, 2, false, func(j int) bool { return m.is(j, cClaim, "") }) >= 0
		case whose && (v == "city" || v == "person"):
			if claims || v == "person" && measures || v == "city" && (m.says(k-1, "by", "per") || m.is(k+1, cHint, "supplies") && !m.points(i)) {
				return true // "city runs 90 psi on the east side"
			}
		case whose && v == "paper":
			if (claims || has) && i-k <= 6 {
				return true
			}
		}
		was = was || m.says(k, "was", "were")
		if c, ok := m.val(k, cClaim); ok {
			switch c {
			case "says":
				claims = true
			case "measures":
				measures = true
			default:
				has = true
			}
		}
	}
	// "71 (60 on the last report)"
	k := m.right(i, 5, false, func(k int) bool { return m.is(k, cWhose, "paper") })
	return k >= 0 && m.items[k].seg == it.seg && m.left(k, 3, false, func(j int) bool {
		return j > i && (m.text(j) == "on" || m.text(j) == "in" || m.text(j) == "per" || m.text(j) == "from" || m.text(j) == "off")
	}) >= 0
}

// plannedValue reads a setting to come: "gonna drop the prv to 60 tomorrow".
func (m *message) plannedValue(i int) bool {
	switch {
	case m.inList(i-1, listToPlanned):
	default:
		return false
	}
	it := &m.items[i]
	d := m.left(i, 8, false, func(k int) bool {
		if m.items[k].seg != it.seg || !m.is(k, cHint, "shifts") {
			return m.items[k].seg == it.seg && m.is(k, cDo, "set")
		}
		return m.is(k, cDo, "set") || m.right(k, 3, false, func(j int) bool { return m.is(j, cItem, "prv") || m.says(j, "it", "pressure") }) >= 0
	})
	return d >= 0 && !m.pointBetween(d, i) &&
		m.left(d, 4, false, func(k int) bool { return m.is(k, cWill, "") && !m.is(k, cNow, "") && m.items[k].seg == it.seg }) >= 0
}

// advised reads what the writer told somebody: "I said 120". Beside a test point it
// is a reading.
func (m *message) advised(i int) bool {
	said := m.is(i-1, cClaim, "says") || m.is(i-1, cHint, "needs")
	if said && (strings.Contains(m.text(i-1), "promis") || strings.Contains(m.text(i-1), "promet")) {
		return true // "I promised her 60 psi at the kitchen"
	}
	if m.items[i].unit != "" {
		return false
	}
	if m.says(i-1, "him", "her", "them") && m.is(i-2, cClaim, "says") && m.text(i-3) == "i" {
		return !m.pointInClause(i) // "I told him 60 tops"
	}
	return m.is(i-1, cClaim, "says") && m.text(i-2) == "i" && !m.pointNear(i)
}

// lineTest reads the pressure that new pipes or gas were tested with.
func (m *message) lineTest(i int) bool {
	if m.inList(i-1, listWholeHouse) && m.items[i-1].seg > 0 && m.isMark(i-2, ",") {
		return false // "gas test 15 psi held, house 62"
	}
	if r := m.right(i, 6, false, func(k int) bool { return m.is(k, cHint, "linetest") }); r >= 0 && !m.pointBetween(i, r) && !m.points(i) {
		return true
	}
	k := m.left(i, 14, true, func(k int) bool { return m.is(k, cHint, "linetest") || m.own(k) })
	return k >= 0 && !m.own(k) && !m.pointBetween(k, i) && !m.points(i)
}

var warmOpener = opener{hints: []string{"warm", "weather"}, lists: []list{listWaters}}

// thermometer tells whether the number at i is told beside the thermometer that shows it: "my
// thermometer in the tub says 101".
func (m *message) thermometer(i int) bool {
	if !m.holdsKey(keyWarm) {
		return false
	}
	shows := func(k int) bool { return m.is(k, cHint, "warm") && strings.Contains(m.text(k), "rmomet") }
	return m.left(i, 7, false, shows) >= 0 || m.right(i, 4, false, shows) >= 0
}

// warmth reads a temperature told without degrees: "water is 118 at the tub", "104
// out here". No pressure that is spoken of as one is taken.
func (m *message) warmth(i int) bool {
	it := &m.items[i]
	if m.text(i+1) == "out" && m.says(i-1, "its", "was", "is") &&
		(m.stopAt(i+2) || m.is(i+2, cHint, "weather") || m.says(i+2, "there", "today")) {
		return true // "it's 96 out"
	}
	if t := m.text(i - 1); strings.HasPrefix(t, "temp") && !strings.Contains(t, " set") {
		return true // "water temp 52 at the bib"
	}
	forecast := m.says(i-1, "high of", "low of") && (m.stopAt(i+1) || m.says(i+1, "today", "tomorrow", "tonight"))
	if forecast && it.value <= 115 && !m.pointInClause(i) {
		return true // "high of 96 today"
	}
	if m.thermometer(i) {
		return true
	}
	if it.value < 85 || it.value > 180 {
		return false
	}
	if m.degreesToo(i) {
		return true
	}
	if !m.holdsKey(keyWarm) {
		return false
	}
	k := m.left(i, 4, false, func(k int) bool {
		switch m.text(k) {
		case "water", "waters", "agua":
			return m.inList(k+1, listComesWarm) ||
				m.text(k) == "waters" && m.text(k+1) == "at" || m.text(k-1) == "hot"
		case "hot water":
			return true
		}
		return m.is(k, cHint, "warm") && !(m.is(k, cHint, "weather") && m.placeAfter(i))
	})
	pressed := func(j int) bool { return m.says(j, "pressure", "gauge") || m.items[j].mark && i-k > 2 }
	if k >= 0 && (m.items[k].seg == it.seg || i-k <= 2) && m.left(i, i-k, false, pressed) < 0 {
		return true
	}
	if m.right(i, 5, false, func(k int) bool { return m.text(k) == "thermometer" }) >= 0 {
		return true // "tub ran 131 by my thermometer"
	}
	k = m.right(i, 4, false, func(k int) bool { return m.is(k, cHint, "weather") })
	return k >= 0 && m.items[k].seg == it.seg && !m.pointBetween(i, k) && m.text(i-1) != "pressure"
}

// degreesToo tells whether the number at i goes on with a temperature of water: "inlet
// water is 48 degrees, outlet 118".
func (m *message) degreesToo(i int) bool {
	p := m.prevNum(i)
	if p < 0 || !strings.HasPrefix(m.items[p].unit, "deg") {
		return false
	}
	side := false
	for k := p + 1; k < i; k++ {
		if m.is(k, cHint, "waterside") {
			side = true
		} else if !m.items[k].mark && !m.inList(k, listLinks) && m.text(k) != "and" && m.text(k) != "y" && !m.is(k, cUnit, "") &&
			!m.is(k, cDeterminer, "") {
			return false
		}
	}
	return side
}

// placeAfter tells whether a side of the house follows the number at i: "outside 119 in
// back, 64 in front".
func (m *message) placeAfter(i int) bool {
	k := i + 1
	for m.text(k) == "in" || m.text(k) == "at" || m.text(k) == "out" || m.text(k) == "on" || m.is(k, cDeterminer, "") {
		k++
	}
	return m.is(k, cPlace, "") || k < len(m.items) && m.items[k].point != ""
}

// inYear reads "moved here in 98", "be there in 45": a number of two digits after
// "in" that ends its clause.
func (m *message) inYear(i int) bool {
	if m.text(i-1) == "from" && m.items[i].num.integer && m.items[i].value > 40 &&
		m.left(i, 3, false, func(k int) bool { return m.is(k, cHint, "dated") }) >= 0 {
		return true // "the house is from 84"
	}
	if m.text(i-1) != "in" || m.points(i) || i+1 < len(m.items) && !m.items[i+1].mark {
		return false
	}
	if m.items[i].num.integer && m.items[i].value >= 30 && m.items[i].value < 100 &&
		m.left(i, 8, false, func(k int) bool { return m.inList(k, listLinks) && m.items[k].seg == m.items[i].seg }) >= 0 {
		return true // "old fella was in the navy in 62"
	}
	return m.left(i, 5, false, func(k int) bool { return m.is(k, cHint, "moved") }) >= 0
}

// restsOff reads the zero that a gauge does not go back to: "la aguja no regresa a
// cero", "needle won't go back to 0", or that it is off at: "gauge reads 4 high at zero".
func (m *message) restsOff(i int) bool {
	if m.shut(gaugeGate) {
		return false
	}
	t := m.text(i - 1)
	off := func(k int) bool { return m.inList(k, listRestsOff) || m.is(k, cCond, "suspect") }
	if t == "at" && m.left(i, 5, true, off) >= 0 && m.left(i, 9, true, func(k int) bool { return m.is(k, cItem, "gauge") }) >= 0 {
		return true
	}
	return (t == "a" || t == "to" || strings.HasSuffix(t, " to")) && m.left(i, 5, false, func(k int) bool { return m.is(k, cNeg, "") }) >= 0 &&
		m.left(i, 8, false, func(k int) bool { return m.is(k, cItem, "gauge") }) >= 0
}

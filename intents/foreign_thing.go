package intents

// Lists of the lexicon that these rules know.
var (
	listDigs        = listOf("digs")
	listUsual       = listOf("usual")
	listMostOf      = listOf("most of")
	listHouses      = listOf("houses")
	listTimesToCome = listOf("times to come")
	listWould       = listOf("would")
	listStreetLine  = listOf("street line")
	listCallFor     = listOf("call for")
	listLasts       = listOf("lasts")
	listCools       = listOf("cools")
	listPits        = listOf("pits")
	listUses        = listOf("uses")
	listInDrains    = listOf("in drains")
	listLaborParts  = listOf("labor and parts")
	listSells       = listOf("sells")
	listShouldSee   = listOf("should see")
	listTakes       = listOf("takes")
	listSeasons     = listOf("seasons")
	listTheirs      = listOf("theirs")
	listHeatsRooms  = listOf("heats rooms")
	listIncoming    = listOf("incoming water")
)

// Numbers of everyday things that are no taps: what they count, cost or measure, and what somebody else's
// tap or a drain, a ditch or a room is said to have.

// countsThings tells whether the number at i counts things that the trade has no word for, or some of
// them: "62 decibels by the kitchen", "14 of 20 bibs". A word that begins what is said next counts nothing.
func (m *message) countsThings(i int) bool {
	if p := i - 2; m.text(i-1) == "of" && m.isNum(p) && m.items[p].unit == "" && m.items[p].num.integer && m.items[p].value <= m.items[i].value {
		return m.is(i+1, cBibb, "") || m.is(i+1, cPoint, "") || m.is(i+1, cFixture, "") || m.unknownNoun(i+1) || m.text(i+1) == "done"
	}
	if p := i - 1; m.isNum(p) && m.items[p].unit == "other" && m.items[p].value >= leastPSI && m.toks[m.items[i].tok-1].text == "x" {
		return true // "33 x 22"
	}
	next := i + 2
	if m.pointAt(i-1) || !m.items[i].num.integer {
		return false // "kitchen 64 yikes", "tub 72 and a half address 8 Elm Ct"
	}
	return m.countsStrange(i) && !m.inList(next, listLinks) && m.text(next) != "to" && !m.saysWhen(i+1) &&
		!m.is(i+1, cHint, "all") && !m.says(i+1, "stands", "holds")
}

// ofOtherThing tells whether a thing that is no tap opens the clause of the number at i and has the number,
// so that the tap between only says where it is: "parking on the street was 15", "gfci in the bath reads 118".
func (m *message) ofOtherThing(i int) bool {
	if i < leastBeforeOther || !m.inList(i-1, listLinks) && !m.is(i-1, cClaim, "") && !m.inList(i-1, listShows) {
		return false
	}
	k := m.clauseStart(i)
	if m.is(k, cDeterminer, "") {
		k++
	}
	if k+2 >= i || !m.strangeThing(k) || len(m.text(k)) < 4 || !m.says(k+1, "in", "on", "at", "by", "near", "under") {
		return false
	}
	for j := k + 2; j < i-1; j++ {
		if !m.pointAt(j) && !m.is(j, cDeterminer, "") && !m.taken(j) && !m.is(j, cHint, "moves") {
			return false
		}
	}
	return true
}

// leastBeforeOther is how many items stand at least before the number of another thing at a tap: "gfci in bath reads".
const leastBeforeOther = 4

// ofThingAtTap tells whether a thing that stands at a tap has the number at i: "tub deck is 22 high", "kitchen window
// is 36".
func (m *message) ofThingAtTap(i int) bool {
	k := i - 2
	return !m.items[i].num.words && m.inList(i-1, listLinks) && m.strangeThing(k) && len(m.text(k)) > 3 &&
		m.pointAt(k-1) && !m.pieceOfPoint(k) && m.unknownNoun(k)
}

// lasts tells whether the number at i is for how long something lasts or is waited for: "hot lasts 15 at the shower",
// "takes 90 to get hot at the tub".
func (m *message) lasts(i int) bool { return m.inList(i-1, listLasts) && m.items[i].num.integer }

// coolsTo tells whether the number at i is how warm water is that cools or warms up: "tub cools to 98".
func (m *message) coolsTo(i int) bool {
	return m.says(i-1, "to", "down to", "up to") && m.inList(i-2, listCools) || m.inList(i-1, listCools)
}

// upSince tells whether the number at i is by how much a pressure differs from an earlier one: "up 12 at the rear from
// last time".
func (m *message) upSince(i int) bool {
	if !m.says(i-1, "up", "down") || m.clauseStart(i) != i-1 || m.items[i].value >= mostOfDrop {
		return false
	}
	return m.right(i, 6, true, func(k int) bool {
		return m.says(k, "from", "since") && (m.is(k+1, cMemory, "") || m.says(k+1, "last", "before", "my last")) || m.says(k, "from last", "since last")
	}) >= 0
}

// usedA tells whether the number at i is the size of a tool or a part: "used a 24 on the meter nut".
func (m *message) usedA(i int) bool { return m.says(i-1, "a", "an") && m.inList(i-2, listUses) }

// leftToDo tells whether the number at i is how many or how many minutes are left: "15 left at the kitchen then lunch".
func (m *message) leftToDo(i int) bool {
	return (m.text(i+1) == "left" && m.says(i+2, "at", "on", "in") || m.says(i+1, "left at", "left in", "left on")) && i == 0 && m.items[i].within(1, 60)
}

// tapInClause tells whether the clause of the number at i, which "and" ends, names a tap.
func (m *message) tapInClause(i int) bool {
	for k := m.clauseStart(i); k < m.clauseEnd(i); k++ {
		if m.items[k].point != "" {
			return true
		}
	}
	return false
}

// atAge tells whether the number at i is how old somebody was: "at 62 she had a stroke".
func (m *message) atAge(i int) bool {
	return m.text(i-1) == "at" && m.clauseStart(i) == i-1 && m.says(i+1, "he", "she", "they", "i", "we") && !m.tapInClause(i)
}

// farToStreet tells whether the number at i is how far something lies from the street: "lateral is 85 to the street",
// "meter is 30 off the curb", "front bib sits 18 off grade".
func (m *message) farToStreet(i int) bool {
	k := i + 2
	if m.is(k, cDeterminer, "") {
		k++
	}
	led := m.inList(i-1, listLinks) || m.says(i-1, "sits") || i == m.clauseStart(i) || m.is(i-1, cHint, "hedge")
	switch m.text(i + 1) {
	case "to":
		return led && k > i+2 && m.inList(k, listStreetLine)
	case "off", "from":
		return led && m.inList(k, listStreetLine)
	}
	return false
}

// yearTold tells whether the number at i is a year in two digits: "tub is from 62", "in 71 they added the laundry".
func (m *message) yearTold(i int) bool {
	it := &m.items[i]
	if !it.num.integer || it.value < 40 || it.value > 99 {
		return false
	}
	return m.text(i-1) == "from" && m.inList(i-2, listLinks) && m.closes(i) ||
		m.text(i-1) == "in" && m.clauseStart(i) == i-1 && m.says(i+1, "they", "he", "she", "somebody", "someone", "the", "dad")
}

// personsToo tells whether the number at i is an age told with another: "kids are 12 and 14".
func (m *message) personsToo(i int) bool {
	if !m.says(i-1, "and", "y") || !m.isNum(i-2) {
		return false
	}
	return m.inList(i-3, listLinks) && m.inList(i-4, listPeople) || m.inList(i-3, listPeople)
}

// clockToo tells whether the number at i is an hour told with another: "front at 11, rear at 12".
func (m *message) clockToo(i int) bool {
	if !m.items[i].within(1, leastPSI) || !m.items[i].num.integer || m.text(i-1) != "at" {
		return false
	}
	return m.left(i, 8, true, func(k int) bool { return k != i && m.isNum(k) && m.items[k].within(1, leastPSI) && m.text(k-1) == "at" }) >= 0
}

// dug tells whether the number at i is how deep, how far or how long something was dug, bored or cut: "dug
// 36 down at the meter", "bore 62 under the street".
func (m *message) dug(i int) bool { return m.inList(i-1, listDigs) }

// downDrain tells whether the number at i is how far down a drain something is: "roots at 55 from the front",
// "belly at 62".
func (m *message) downDrain(i int) bool {
	k := i - 1
	for m.says(k, "at", "around", "about", "near") {
		k--
	}
	return k < i-1 && m.inList(k, listInDrains)
}

// outsideWarmth tells whether the number at i is how warm it is outside, or how many minutes off somebody is,
// since "out" is all that its clause says, and none of the message is told to be in: "95 out, front bib 62".
func (m *message) outsideWarmth(i int) bool {
	if m.text(i+1) != "out" || !m.closes(i+1) || m.clauseStart(i) != i || i > m.firstOf(m.items[i].sent) {
		return false
	}
	for k := range m.items {
		if m.says(k, "in", "inlet") || m.is(k, cItem, "prv") {
			return false
		}
	}
	return true
}

// inchesOf tells whether the number at i is a size in inches, told with "in": "14 in wrench", "pit 48 in deep".
func (m *message) inchesOf(i int) bool {
	return m.text(i+1) == "in" && (m.says(i+2, "for", "frost free", "frostfree", "frostproof") ||
		m.p.lex.inList(lastWord(m.text(i-1)), listPits) || m.unknownNoun(i+2) || m.inchesOfTap(i) ||
		m.is(i+2, cHint, "pipestuff") || m.is(i+2, cHint, "lengthways"))
}

// inchesOfTap tells whether "in" behind the number at i leads to no tap but to what stands at one: "42 in kitchen
// cabinets", "24 in vanity in the bath".
func (m *message) inchesOfTap(i int) bool {
	return m.pointAt(i+2) && (m.unknownNoun(i+3) && len(m.text(i+3)) > 3 ||
		m.says(i+2, "vanity", "sink", "tub", "shower", "faucet") && m.text(i+3) == "in")
}

// paidFor tells whether the number at i is what a thing at a tap costs: "hose bibb 18 parts 90 labor", "sold
// the tub spout for 65", "laundry valves 62 each, need two".
func (m *message) paidFor(i int) bool {
	sold := func(k int) bool { return m.inList(k, listSells) }
	switch {
	case m.inList(i+1, listLaborParts):
		return (m.closes(i+1) || m.isNum(i+2) || m.says(i+2, "and", "plus")) && !(m.text(i+1) == "total" && m.points(i))
	case m.text(i-1) == "for":
		return m.left(i, 8, true, sold) >= 0
	case m.inList(i+1, listApiece):
		return m.left(i, 8, true, sold) >= 0 || m.right(i, 6, true, sold) >= 0
	}
	return false
}

// liked tells whether the number at i is what somebody likes to see: "i like 60 at the kitchen".
func (m *message) liked(i int) bool {
	return m.text(i-1) == "like" && m.says(i-2, "i", "we", "they", "he", "she")
}

// usual tells whether the number at i is what houses usually have: "usually see 62 at the kitchen around here", "most
// houses on this street run 110".
func (m *message) usual(i int) bool {
	for k := i - 1; k >= m.clauseStart(i); k-- {
		switch {
		case m.items[k].num != nil, m.own(k) && m.says(k, "now", "today", "i got", "i get"):
			return false
		case m.inList(k, listUsual):
			return true
		case m.inList(k, listMostOf) && m.inList(k+1, listHouses):
			return true
		}
	}
	return false
}

// nextTime tells whether the number at i is what a time to come brings: "they're dropping the street to 60 next
// month", "upstairs will be 38".
func (m *message) nextTime(i int) bool {
	k := i + 1
	if m.is(k, cUnit, "") {
		k++
	}
	return m.says(k, "next month", "next week", "next year", "next spring", "next summer", "next fall") ||
		m.text(k) == "next" && m.inList(k+1, listTimesToCome) ||
		m.says(i-1, "will be", "wont be", "would be") || m.text(i-1) == "be" && m.says(i-2, "will", "wont", "would")
}

// wouldItBe tells whether the clause of the number at i begins by asking what it would do: "would 90 at the front be
// an issue", "can we go 70 at the laundry".
func (m *message) wouldItBe(i int) bool {
	k := m.clauseStart(i)
	if k > 0 && !m.items[k-1].mark || !m.inList(k, listWould) {
		return false
	}
	if k+1 == i || m.says(k,
		"can we", "could we", "should we", "can i", "could i", "should i") && m.says(k+1, "go", "run", "do", "have", "get", "try", "leave") && k+2 == i {
		return true
	}
	return m.says(k+1, "we", "i", "it") && m.is(k+2, cMove, "") ||
		m.says(k+1, "we", "i") && m.says(k+2, "go", "run", "do", "have", "get", "try", "leave") ||
		m.is(k+1, cDeterminer, "") && k+2 == i
}

// shouldSee tells whether the number at i is what a gauge should show: "should see 60 at the tub after".
func (m *message) shouldSee(i int) bool {
	k := i - 1
	for m.is(k, cHint, "hedge") {
		k--
	}
	should := m.inList(k, listShouldSee) || (m.inList(k, listShows) || m.says(k, "have", "hold")) && m.says(k-1, "should", "ought to", "supposed to")
	return should && !m.hasAsk(AskCorrect)
}

// needsPressure tells whether the number at i is the pressure that something needs: "washer needs 20 to 120",
// "irrigation valve requires 20 psi".
func (m *message) needsPressure(i int) bool {
	k := i - 1
	if m.items[i].ranged && m.isNum(i-2) {
		k = i - 3
	}
	for m.is(k, cHint, "hedge") || m.says(k, "at least", "a minimum of", "between") {
		k--
	}
	return (m.inList(k, listTakes) || m.text(k) == "for" && m.inList(k-1, listCallFor)) && !m.wantsEntered(i)
}

// inSeason tells whether the number at i is what it is in a season, not now: "street is 55 in winter".
func (m *message) inSeason(i int) bool {
	k := i + 1
	if m.is(k, cUnit, "") {
		k++
	}
	if !m.says(k, "in", "during", "en") {
		return false
	}
	if m.is(k+1, cDeterminer, "") {
		k++
	}
	return m.inList(k+1, listSeasons)
}

// saidTheirs tells whether the number at i is said to be of somebody else's meter or tap: "meter 62 is
// theirs".
func (m *message) saidTheirs(i int) bool {
	k := i + 1
	if m.inList(k, listLinks) {
		k++
	}
	if m.is(k, cDeterminer, "") {
		k++
	}
	return m.inList(k, listTheirs) && m.closes(k)
}

// coldestRoom and warmestRoom bound what the thermostat of a room shows.
const (
	coldestRoom = 55
	warmestRoom = 80
)

// warmHouse tells whether the number at i is how warm a house is, whose furnace the sentence speaks of: "house
// is at 68, furnace works".
func (m *message) warmHouse(i int) bool {
	if !m.items[i].within(coldestRoom, warmestRoom) || m.pointInClause(i) {
		return false
	}
	return m.left(i, 3, false, m.wholeHouse) >= 0 && m.right(i, 5, true, func(k int) bool { return m.inList(k, listHeatsRooms) }) >= 0
}

// incomingWarmth tells whether the number at i is how warm the water comes in, told with what the heater is
// set to: "incoming water 48, heater set 125".
func (m *message) incomingWarmth(i int) bool {
	if !m.items[i].within(33, warmestRoom) {
		return false
	}
	k := i - 1
	for m.inList(k, listLinks) || m.says(k, "at") {
		k--
	}
	if !m.inList(k, listIncoming) {
		return false
	}
	heater := func(k int) bool {
		return m.is(k, cItem, "heater") || m.is(k, cPart, "thermostat") || m.is(k, cHint, "warm")
	}
	if m.right(i, 8, true, heater) < 0 && m.left(i, 8, true, heater) < 0 {
		return false
	}
	m.askWarm(i)
	return true
}

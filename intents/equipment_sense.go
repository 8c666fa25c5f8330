package intents

import "strings"

// Lists of the lexicon that these rules know.
var (
	listIHave             = listOf("i have")
	listNoConditionBefore = listOf("no condition before")
	listSeenWhere         = listOf("seen where")
	listOfJob             = listOf("of job")
	listBeforeNoun        = listOf("before noun")
	listHowMuch           = listOf("how much")
	listSpeakers          = listOf("speakers")
	listRustyWhere        = listOf("rusty where")
	listDeadEven          = listOf("dead even")
	listRustyDraw         = listOf("rusty draw")
)

// Words of a condition that have another sense where they stand.

// adverb tells whether a word of a condition tells none here: "corroded pretty bad",
// "her ok", "ok to", "all good" of the whole house.
func (m *message) adverb(i int) bool {
	wayOut := m.is(i, cAfter, "") && (m.isMark(i+1, ":", "=") || m.pressureOrPoint(i+1) || m.pressureOrPoint(i-1))
	return wayOut || // "on the way out: kitchen 60"
		m.ofWholeHouse(i) || m.ofMatters(i) || m.ofSeen(i) || m.otherSense(i) ||
		m.inList(i+1, listOfJob) || m.inList(i+1, listHouseWords) // "nice clean job", "clean house"
}

// ofWholeHouse tells whether "all good" or "todo normal" at item i is said of no thing in
// particular: "65 psi, hose bibb, all good, water heater dial at 120", "swapped the prv, all good".
func (m *message) ofWholeHouse(i int) bool {
	all := m.text(i-1) == "all"
	if !all && m.text(i-1) != "todo" && !strings.HasPrefix(m.text(i), "todo ") {
		return false
	}
	s := m.items[i].sent
	return m.itemIn(s) == "" || m.closes(i) && (m.doneIn(s, i) || all && m.clauseStart(i) == i-1 &&
		m.left(i, i, true, func(k int) bool { return m.is(k, cItem, "") && m.items[k].sent == s }) < 0)
}

// otherSense tells whether the word at item i has another sense here than that of a condition.
func (m *message) otherSense(i int) bool {
	switch m.text(i) {
	case "gone":
		if m.isNum(i+1) && m.items[i+1].unit == "year" {
			return true // "has gone 5 years without a flush"
		}
		if (m.is(i+1, cNow, "") || m.text(i+1) == "now") && m.signBefore(i) {
			return true // "smelled gas by the heater, gone now"
		}
		// "Tank OK. Gone.": the writer is; "I have gone outside"
		return m.text(i+1) == "." && i == m.sents[m.items[i].sent].from || m.says(i-1, "i have", "ive", "we have", "weve", "he has", "hes", "she has", "shes") || m.says(i-1, "have", "has", "had") && m.inList(i-2, listIHave)
	case "dead":
		return m.inList(i+1, listDeadEven) || m.text(i+1) == "on" && m.isNum(i+2) // "reg holds 60 dead even", "dead on 60"
	case "quit", "stopped": // "T&P quit weeping"
		return m.meets(i+1, symptomTalk)
	case "going":
		return m.says(i+1, "up", "in", "on", "back") // "tank's going up Friday"
	case "clean": // "flushed it clean"
		return m.left(i, 3, true, func(k int) bool { return m.is(k, cDid, "flushed") && m.items[k].seg == m.items[i].seg }) >= 0
	case "good": // "gave it a good rinse", "good from 25 to 75 per the tag"
		return m.goodMuch(i) || m.is(i+1, cHint, "flushnoun") || m.inList(i+1, listNoConditionBefore) && m.isNum(i+2)
	case "bien":
		return m.heightens(i)
	case "pinhole": // "fixed pinhole leak above the heater", "pinhole in the copper"
		return m.is(i+1, cSym, "leak") || m.says(i+1, "in", "on") &&
			m.right(i, 3, true, func(k int) bool { return m.is(k, cFitting, "part") || m.is(k, cPipe, "") }) >= 0
	case "ok", "okay": // "her ok"
		return m.opensOnly(i) || m.inList(i-1, listBeforeNoun)
	case "alright", "all right":
		return m.opensOnly(i)
	case "solid":
		return strings.HasSuffix(m.text(i-1), "ed") // "plugged solid"
	case "working", "works":
		return m.text(i+1) == "pressure" || m.says(i-1, "max", "how it") || m.text(i-1) == "it" && m.text(i-2) == "how"
	case "holds", "holding", "still holding": // "holds an air charge of 55"
		k := m.right(i, 5, true, func(k int) bool { return m.items[k].num != nil })
		return k >= 0 && m.items[k].seg == m.items[i].seg
	case "bad": // "bad news, regulator's stuck"
		return m.howBad(i) || m.text(i+1) == "news"
	}
	return false
}

// signBefore tells whether a symptom stands before item i in its sentence.
func (m *message) signBefore(i int) bool {
	return m.left(i, 14, true, func(k int) bool { return m.is(k, cSym, "") }) >= 0
}

// goodMuch tells whether "good" at item i says how much: "a good turn and a half", "a good 20
// years old".
func (m *message) goodMuch(i int) bool {
	return m.says(i-1, "a", "some", "of", "few", "couple") && (m.isNum(i+1) || m.is(i+1, cHint, "goodlyof") || m.is(i+1, cDid, ""))
}

// opensOnly tells whether item i only opens its sentence: "ok I put that tank in".
func (m *message) opensOnly(i int) bool {
	if m.says(i+1, "now", "today") && m.closes(i+1) {
		return false // "tank was flat last year. ok now"
	}
	site := i+2 < len(m.items) && m.items[i+1].site && !m.items[i+2].mark
	return i == m.sents[m.items[i].sent].from && (site || !m.closes(i)) && !m.is(i+1, cItem, "")
}

// howBad tells whether "bad" at item i says how much of what stands before it: "corroded pretty
// bad", "whistles bad".
func (m *message) howBad(i int) bool {
	k := i - 1
	for k >= 0 && m.inList(k, listHowMuch) {
		k--
	}
	return k >= 0 && m.items[k].sent == m.items[i].sent && m.meets(k, setOf(cCond, cSym))
}

// ofSeen tells whether a condition at item i says what is seen or heard: "hissing sound at
// the prv", "slow drip under the sink", "rusty slug at first".
func (m *message) ofSeen(i int) bool {
	if strings.HasSuffix(m.text(i), "bien") && m.meets(i+1, setOf(cSym, cCond)) {
		return true // "la presión está bien floja"
	}
	switch m.text(i) {
	case "sound":
		return m.is(i-1, cSym, "") || m.is(i-1, cDeterminer, "")
	case "slow", "steady", "passes", "passing":
		return m.meets(i+1, setOf(cSym, cWater)) || m.is(i-1, cSym, "") || m.signsOf(i+1).has(signClimbs)
	case "burst":
		return m.text(i+1) == "of" // "a burst of rust"
	case "suspect":
		return m.inList(i-1, listSpeakers) // "I suspect a leak"
	case "seeping", "weeping":
		ofItem := func(k int) bool { return m.is(k, cItem, "") }
		return m.inList(i+1, listSeenWhere) && m.right(i, 4, true, ofItem) < 0
	case "fine":
		return m.signsOf(i+1)&(signDark|signRust|signBits) != 0 // "fine black grit"
	case "rusty", "a little rusty", "a bit rusty":
		// "rusty specks", "rusty on the first draw", "rusty out of the hot side"
		return m.signsOf(i+1)&(signBits|signTint|signDark|signRust) != 0 ||
			m.inList(i+1, listRustyWhere) && m.right(i+1, 3, true, func(k int) bool { return m.inList(k, listRustyDraw) }) >= 0
	}
	return false
}

// pressureOrPoint tells whether item k is a number or a test point.
func (m *message) pressureOrPoint(k int) bool { return m.isNum(k) || m.pointAt(k) }

// heightens tells whether "bien" at item i only says how much the next word means:
// "creeping up bien slow", "una llave bien escondida".
func (m *message) heightens(i int) bool {
	if m.closes(i) || m.is(i+1, cItem, "") || m.isNum(i+1) {
		return false
	}
	return m.is(i+1, cCond, "") || m.is(i+1, cSym, "") || m.strangeThing(i+1)
}

// ofMatters tells whether a condition is said of how things are and of no thing: "88 past
// the reg, that's not good", "67 so that's fine".
func (m *message) ofMatters(i int) bool {
	k := i - 1
	for t := m.text(k); t == "not" || t == "too" || t == "so" || t == "is" || t == "isnt"; t = m.text(k) {
		k--
	}
	if t := m.text(k); t != "thats" && t != "that" && t != "eso" && t != "which" {
		return false
	}
	if m.strongCond(i) || !m.closes(i) && !m.p.lex.look(m.text(i+1)).thanks {
		return false
	}
	if k > 1 && m.items[k-1].mark && m.items[k-2].role == roleReading || k > 0 && m.items[k-1].role == roleReading {
		return true
	}
	return m.text(k) == "thats" && (k == 0 || m.items[k-1].mark || m.text(k-1) == "so" || m.text(k-1) == "and")
}

package intents

import "strings"

// Lists of the lexicon that these rules know.
var (
	listAsksNeed         = listOf("asks need")
	listOnRecord         = listOf("on record")
	listOfHouse          = listOf("of house")
	listAnswers          = listOf("answers")
	listAsksState        = listOf("asks state")
	listBeforeAskedState = listOf("before asked state")
	listAsksHas          = listOf("asks has")
	listHowIs            = listOf("how is")
	listAfterHouse       = listOf("after house")
	listAsksIfDone       = listOf("asks if done")
	listAskedIfDone      = listOf("asked if done")
	listAsksWhenDone     = listOf("asks when done")
	listAsksIfSpanish    = listOf("asks if in Spanish")
	listDoneByOthers     = listOf("done by others")
)

var asksAfterGate = gateOf(opener{lists: []list{listHowIs}, words: []string{"is", "esta"}})

// asksAfter reads a question after a house that names nothing of it: "how is 402 Larkhill
// doing?", "what about 12 Elm", "¿cómo va 12 Elm?". What is known of it answers that.
func (m *message) asksAfter(s int) bool {
	se := &m.sents[s]
	if m.shut(asksAfterGate) || !m.sentenceNamesSite(s) || !m.shortSentence(s, 6) {
		return false
	}
	opened := false
	for i := se.from; i < se.to; i++ {
		it := &m.items[i]
		switch {
		case !opened && (m.inList(i, listHowIs) ||
			m.says(i, "is", "esta") && i == se.from && m.items[min(i+1, len(m.items)-1)].site && se.to > i+2):
			opened = true // "is 12 Elm ok now"
		case it.site || it.mark || m.inList(i, listAfterHouse):
		default:
			return false
		}
	}
	return opened
}

// recordGate is that of what is on record of a house.
var recordGate = gateOf(opener{words: []string{"average", "avg", "usual", "typical", "normal", "mean", "promedio"}, lists: []list{listOnRecord}})

// namesRecord tells whether a message names what is on record of a house and says nothing
// else: "pressure at 14 Maple", "presión en 14 Maple", "what's the average on 14 Maple".
func (m *message) namesRecord(s int) bool {
	if m.site == nil || m.shut(recordGate) || len(m.sents) > 1 || !m.shortSentence(s, 5) {
		return false
	}
	named, usual := false, false
	for i := range m.items {
		switch it := &m.items[i]; {
		case it.site, it.mark && !m.isMark(i, ":"), m.inList(i, listOfHouse) && (named || usual):
		case !named && !usual && m.says(i, "whats", "what is", "what", "is", "the", "cual", "cual es", "es", "la", "el"):
		case !usual && m.says(i, "average", "avg", "usual", "typical", "normal", "mean", "promedio"):
			usual = true
		case m.inList(i, listOnRecord) && !named:
			named = true
		default:
			return false
		}
	}
	return named || usual
}

// asksThing tells whether a sentence asks of the house in hand whether it has a thing, or what is
// on record of one: "is there a tank", "whats the prv set at", "hay tanque?".
func (m *message) asksThing(s int) bool {
	if !m.kinds.has(cItem) || len(m.sents) > 1 || m.site != nil || !m.shortSentence(s, 7) {
		return false
	}
	first, se := m.firstOf(s), &m.sents[s]
	if !(m.inList(first, listAsksHas) && m.isMark(se.to-1, "?")) && !m.asksOpenly(first) {
		return false
	}
	if m.text(first) == "is" && m.text(first+1) == "it" && m.text(first+2) == "the" {
		return false // "is it the tank or the valve", where "is it a gas heater" is a matter of the record
	}
	item := false
	for i := first; i < se.to; i++ {
		it := &m.items[i]
		if it.num != nil || m.is(i, cAsk, string(AskNextCheck)) || it.kinds.meets(setOf(cSym, cWill)) || it.kinds.meets(setOf(cBase, cDo)) && !it.kinds.has(cItem) && m.text(i) != "set" || m.isAny(i, cItem, "gauge") || m.holdsCue(i, cueForeign) || m.says(i, "houses", "homes", "casas") {
			return false // "is there a tank on the truck"
		}
		item = item || it.kinds.has(cItem)
	}
	return item
}

// holdsCue tells whether a word of item i has a cue.
func (m *message) holdsCue(i int, c cueSet) bool {
	it := &m.items[i]
	for k := it.tok; k < it.tok+it.n; k++ {
		if m.toks[k].kind == word && m.wordCues(k).has(c) {
			return true
		}
	}
	return false
}

// asksState tells whether a sentence only asks how a thing is, and nobody answers in the message:
// "prv bad?", "is the tank dead".
func (m *message) asksState(s int) bool {
	se := &m.sents[s]
	if !m.kinds.has(cItem) || !m.kinds.has(cCond) || !m.shortSentence(s, 8) || m.sentenceNamesSite(s) {
		return false
	}
	first := m.firstOf(s)
	if m.inList(se.from, listAsksState) {
		first = se.from // "could the tank be waterlogged"
	}
	opens := m.inList(first, listAsksState) && (m.is(first+1, cDeterminer, "") || m.is(first+1, cItem, ""))
	if !m.isMark(se.to-1, "?") && !(opens && !m.says(first, "esta", "sera")) {
		return false
	}
	if s+1 < len(m.sents) && m.inList(m.firstOf(s+1), listAnswers) {
		return false
	}
	thing, state := false, false
	for i := first; i < se.to; i++ {
		switch it := &m.items[i]; {
		case it.kinds.has(cItem):
			thing = true
		case it.kinds.has(cCond):
			state = true
		case it.mark, it.lists.has(listLinks), m.is(i, cDeterminer, ""), m.inList(i, listBeforeAskedState):
		default:
			return false
		}
	}
	return thing && state
}

// asksNeed tells whether a sentence asks whether something is to be done to a thing: "does the tank
// need replaced", "should the prv be rebuilt".
func (m *message) asksNeed(s int) bool {
	first := m.firstOf(s)
	if !m.inList(first, listAsksNeed) || !m.shortSentence(s, 8) || !m.kinds.has(cItem) {
		return false
	}
	k := m.right(first, 3, false, func(k int) bool { return m.is(k, cItem, "") })
	return k >= 0 && m.right(k, 2, false, func(k int) bool { return m.is(k, cWill, "") || m.is(k, cHint, "needs") || m.says(k, "need", "be") }) >= 0
}

// asksOpenly tells whether the words from item i on open a question: "is there", "does it".
func (m *message) asksOpenly(i int) bool {
	return m.inList(i, listAsksHas) && strings.Contains(m.text(i), " ") || m.p.lex.inList(m.text(i)+" "+m.text(i+1), listAsksHas)
}

var doneGate = gateOf(opener{lists: []list{listAsksIfDone, listAsksWhenDone, listAsksIfSpanish}, words: []string{"?"}})

// asksIfDone tells whether a sentence asks whether, when or by whom something was done to a thing, and
// tells nothing: "did anybody flush the heater", "has this prv been rebuilt", "quién puso la reguladora".
func (m *message) asksIfDone(s int) bool {
	if m.shut(doneGate) || !m.shortSentence(s, 11) || m.sents[s].numbers > 0 || m.momentIn(s) {
		return false
	}
	first, se := m.firstOf(s), &m.sents[s]
	at := m.asksOfDeed(first, se)
	if at < 0 {
		return false
	}
	thing, deed := false, false
	for i := at; i < se.to; i++ {
		it := &m.items[i]
		if it.kinds.meets(setOf(cNeg, cColor, cWill)) || it.kinds.has(cSym) && !m.is(i, cSym, "leak") || m.isMark(i, ",", ":") {
			return false // "cuando cambiaron la reguladora, bajó la presión"
		}
		thing = thing || it.kinds.has(cItem) || m.is(i, cSym, "leak")
		deed = deed || it.kinds.meets(setOf(cDid, cBase)) || m.says(i, "put") || m.inList(i, listDoneByOthers)
	}
	return thing && deed
}

// asksOfDeed returns the item behind the words with which a sentence begins to ask after a deed, -1 if
// it does not.
func (m *message) asksOfDeed(first int, se *sentence) int {
	subject := m.text(first + 1)
	opening, _, _ := strings.Cut(m.text(first), " ")
	switch {
	case first+2 >= se.to:
	case m.p.lex.inList(opening, listAsksIfSpanish):
		if m.isMark(se.to-1, "?") {
			return first
		}
	case m.inList(first, listAsksWhenDone):
		i := first + 1
		for m.says(i, "se", "le", "les", "se le", "fue", "que", "ya", "cuanto", "que ano") {
			i++
		}
		if m.is(i, cDid, "") || m.inList(i, listDoneByOthers) || m.text(first) == "who" && m.text(i) == "put" {
			return i
		}
	case !m.inList(first, listAsksIfDone):
	case m.p.lex.inList(subject, listAskedIfDone), m.text(first) == "did" && !m.items[first+1].mark && m.maybeName(first+1):
		return first + 2
	case m.text(first) != "did" && m.text(first) != "have" && m.is(first+1, cDeterminer, "") && m.is(first+2, cItem, ""):
		return first + 2 // "was the heater flushed", where "had the heater flushed" tells
	}
	return -1
}

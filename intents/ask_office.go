package intents

import (
	"slices"
	"strings"
)

// Lists of the lexicon that these rules know.
var (
	listAirFor       = listOf("air for")
	listAsksWas      = listOf("asks was")
	listPassesWord   = listOf("passes word")
	listNotPassedOn  = listOf("not passed on")
	listTankSpokenOf = listOf("tank spoken of")
	listAsksHowMuch  = listOf("asks how much")
	listAirsTank     = listOf("airs tank")
	listPutsInto     = listOf("puts into")
	listOughtTo      = listOf("ought to")
	listAsksDeed     = listOf("asks deed")
	listLogDeeds     = listOf("log deeds")
	listLogDays      = listOf("log days")
	listLogFillers   = listOf("log fillers")
	listEveryone     = listOf("everyone")
	listCancels      = listOf("cancels")
	listCancelled    = listOf("cancelled")
	listIfAny        = listOf("if any")
	listWhatIf       = listOf("what if")
	listWhatIfAt     = listOf("what if at")
)

// askOfAll asks for a list of all houses: the worst ones, open alerts, who reported what.
func (m *message) askOfAll(p askPhrase, about About) {
	switch {
	case m.site != nil || m.reporting() || m.hasAsk(AskHelp):
		return // "12 Elm is the worst house on the block"
	case !p.request && !m.shortSentence(p.s, 4):
		return
	}
	m.noteAsk(p, about)
}

// passesGate is that of what is said to be passed on, or put onto a list.
var passesGate = gateOf(opener{hints: []string{"passedon"}, lists: []list{listPassesWord, listOntoList}, words: []string{"let"}})

// passesOn tells whether a sentence has somebody told something that is no matter of the
// record: "tell the 2 o'clock we're running late", "let her know", "avísale a Ben".
func (m *message) passesOn(s int) bool {
	if m.shut(passesGate) {
		return false
	}
	i := m.firstOf(s)
	if i+1 >= m.sents[s].to {
		return false
	}
	if m.putsOn(s) {
		return true // a visit, and no question what is on the books
	}
	if m.sentenceIs(s, cHint, "passedon") {
		return true // "did Carl get back to you"
	}
	switch next := &m.items[i+1]; {
	case next.site || next.mark || m.p.lex.inList(next.text, listNotPassedOn):
		return false
	case m.inList(i, listPassesWord):
		return true
	}
	return m.text(i) == "let" && m.right(i+1, 4, true, func(k int) bool { return m.text(k) == "know" }) >= 0
}

// firstOf is the first item of a sentence that says something.
func (m *message) firstOf(s int) int {
	i := m.sents[s].from
	for i < m.sents[s].to && (m.items[i].mark || m.inList(i, listFillers)) {
		i++
	}
	return i
}

// asksCharge tells whether a sentence asks what air a tank is to have: "what do I charge the
// tank to", "a cuánto inflo el tanque". What one was charged to is a matter of the record.
func (m *message) asksCharge(s int) bool {
	first := m.firstOf(s)
	if !m.inList(first, listAsksHowMuch) && !m.sents[s].question || m.says(first+1, "i", "we", "i had", "we had") {
		return false // "what I charged is the tank"
	}
	charge, ought := false, false
	for i := first; i < m.sents[s].to; i++ {
		charge = charge || m.inList(i, listAirsTank) || m.inList(i, listPutsInto) && m.text(i+1) == "al" // "cuánto le pongo al tanque"
		ought = ought || m.inList(i, listOughtTo)
	}
	return charge && ought
}

// asksPrice tells whether a sentence asks what the customer is charged: "what do we charge for a tank".
func (m *message) asksPrice(s int) bool {
	first := m.firstOf(s)
	if !m.inList(first, listAsksHowMuch) {
		return false
	}
	for i := first + 1; i < m.sents[s].to; i++ {
		if strings.HasPrefix(m.text(i), "charge") {
			return m.text(i+1) == "for" || m.inList(i+1, listPays)
		}
	}
	return false
}

// asksAir reads a question after the air of a tank that was spoken of before: "what should I charge
// it to", "how much air does it need", "a cuánto lo inflo".
func (m *message) asksAir(s int) bool {
	first, se := m.firstOf(s), &m.sents[s]
	if !m.inList(first, listAsksHowMuch) || !m.shortSentence(s, 7) || !m.asksCharge(s) {
		return false
	}
	of := false
	for i := first; i < se.to; i++ {
		if m.items[i].num != nil || m.is(i, cItem, "") || m.strangeThing(i) || m.wordCues(m.items[i].tok).has(cueForeign) {
			return false // "how much air does the compressor need"
		}
		of = of || m.says(i, "air", "aire") || m.inList(i, listTankSpokenOf) && !m.is(i+1, cWhose, "")
	}
	return of
}

// asksChargeFor reads a question after the air for a pressure that it gives, and no tank: "what charge
// for a house at 58".
func (m *message) asksChargeFor(s int) bool {
	first := m.firstOf(s)
	if !m.says(first, "what", "whats", "how much", "que", "cuanto") || !m.inList(first+1, listAirFor) || m.bare(s) < 0 && m.sents[s].numbers != 1 {
		return false
	}
	m.tankNumbers(s, m.addAsk(first, AskCharge))
	return true
}

// asksLog tells whether a sentence asks what one of the crew, or all of it, reported on a day:
// "what did Ben read today", "where has Ana been this week", "¿qué midió Luis ayer?".
func (m *message) asksLog(s int) bool {
	se := &m.sents[s]
	if m.site != nil || m.reporting() || se.to-se.from > 9 {
		return false
	}
	opened, who, deed, day := false, "", "", false
	for i := m.firstOf(s); i < se.to; i++ {
		if it := &m.items[i]; it.mark || it.num != nil {
			continue
		}
		day = day || opened && m.timeWordAt(i)
		for w := range strings.FieldsSeq(m.text(i)) {
			switch {
			case !opened && (w == "show" || w == "tell" || w == "me"):
			case !opened:
				if opened = m.p.lex.inList(w, listAsksDeed); !opened {
					return false
				}
			case m.p.lex.inList(w, listLogDays):
				day = true
			case m.p.lex.inList(w, listLogDeeds):
				deed = w
			case m.p.lex.inList(w, listLogFillers) || m.timeWordAt(i):
			case m.p.lex.inList(w, listEveryone) || who == "" && m.maybeName(i):
				who = w
			default:
				return false
			}
		}
	}
	if m.p.lex.inList(who, listEveryone) && oneOf(deed, "get", "got", "do", "done", "did", "go", "went") {
		return false // "what did we get done this week" is a matter of the summary
	}
	return who != "" && deed != "" && day
}

// maybeName tells whether item i is a word that the lexicon does not know.
func (m *message) maybeName(i int) bool {
	return m.items[i].n == 1 && m.items[i].tags == nil && m.wordCues(m.items[i].tok) == 0
}

// asksOldCharge tells whether a sentence asks what a tank was charged to: "what was the tank
// charged to".
func (m *message) asksOldCharge(s int) bool {
	se := &m.sents[s]
	if m.anyReadingLike() || se.to-se.from > 10 {
		return false
	}
	first := m.firstOf(s)
	open, verb, _ := strings.Cut(m.text(first), " ")
	if !m.p.lex.inList(open, listAsksHowMuch) || m.says(first+1, "i", "we") ||
		verb == "" && m.right(first, 3, true, func(k int) bool { return m.inList(k, listAsksWas) }) < 0 {
		return false
	}
	return m.right(first, se.to-first, true, func(k int) bool { return m.inList(k, listAirsTank) }) >= 0
}

// remindsInstead tells whether a sentence asks for a reminder on another day than the one
// that stands: "remind me about 9 Poplar in 10 days instead".
func (m *message) remindsInstead(s int) bool {
	return m.kinds.has(cHint) && m.sentenceIs(s, cHint, "remind") &&
		m.sentenceSays(s, "instead", "rather", "mejor", "en vez", "en lugar") && m.tellsTime(s)
}

// asksCancel tells whether a sentence calls off a follow-up that is open: "cancel the recheck
// at 12 Elm", "cancela el seguimiento". What is off the list because it is done is done.
func (m *message) asksCancel(s int) bool {
	first := m.firstOf(s)
	if !m.inList(first, listCancels) || m.sents[s].question || m.tellsTime(s) || m.reporting() {
		return false
	}
	done, noun := false, false
	for i := first; i < m.sents[s].to; i++ {
		noun = noun || m.is(i, cDo, "recheck") || m.is(i, cHint, "followup") || m.inList(i, listCancelled)
	}
	for sn := range m.sents {
		done = done || m.sentenceIs(sn, cAsk, "done") || m.sentenceSays(sn, "already", "did it", "ya")
	}
	return noun && !done
}

// asksOfItem tells whether a sentence is a house and a part of it and a question mark, and
// nothing else: "610 Walnut tank?", "prv at 12 Elm?".
func (m *message) asksOfItem(s int) bool {
	se := &m.sents[s]
	if m.site == nil || !m.sentenceNamesSite(s) || !m.isMark(se.to-1, "?") || len(m.sents) > 1 {
		return false
	}
	item := false
	for i := se.from; i < se.to; i++ {
		switch it := &m.items[i]; {
		case it.kinds.has(cItem):
			item = true
		case it.site, it.mark, m.inList(i, listOfHouse), m.says(i, "and", "y", "the", "a"):
		default:
			return false
		}
	}
	return item
}

// ofManyHouses tells whether a sentence asks which of all houses have or lack something, which
// says nothing of the house at hand: "any houses with no expansion tank?".
func (m *message) ofManyHouses(s int) bool {
	if m.site != nil {
		return false
	}
	first := m.firstOf(s)
	if !m.sents[s].question && !m.request(s) && !(m.says(first, "houses", "homes", "casas") && m.shortSentence(s, 6) && !m.reporting()) {
		return false
	}
	for i := first; i < min(m.sents[s].to, first+4); i++ {
		if m.says(i, "houses", "homes", "casas") || strings.HasSuffix(m.text(i), " houses") || strings.HasSuffix(m.text(i), " casas") {
			return true
		}
	}
	return false
}

// asksIfAny tells whether a sentence asks whether there is a sign of trouble, and tells of
// none: "any leaks reported?", "¿hay fugas?".
func (m *message) asksIfAny(s int) bool {
	se := &m.sents[s]
	if len(m.sents) > 1 || !m.isMark(se.to-1, "?") {
		return false
	}
	first := m.firstOf(s)
	if first >= se.to || !m.inList(first, listIfAny) || m.sentenceIs(s, cSym, "gas_smell") { // whoever asks may smell it
		return false
	}
	return !slices.ContainsFunc(m.items[first:se.to], func(it item) bool { return it.num != nil })
}

// asksWhatIf tells whether the message only asks what a number would change in the answer
// before it: "and at 60 psi?".
func (m *message) asksWhatIf(s int) bool {
	if len(m.sents) > 1 || len(m.items) < 3 || len(m.items) > 6 || !m.isMark(len(m.items)-1, "?") {
		return false
	}
	opened := m.inList(0, listWhatIf)
	return opened && m.inList(1, listWhatIfAt) && !slices.ContainsFunc(m.items, func(it item) bool { return it.point != "" })
}

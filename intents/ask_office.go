package intents

import (
	"slices"
	"strings"
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

var passedOnGate = onlyWith(cHint, "passedon")

// passesOn tells whether a sentence has somebody told something that is no matter of the
// record: "tell the 2 o'clock we're running late", "let her know", "avísale a Ben".
func (m *message) passesOn(s int) bool {
	i := m.firstOf(s)
	if i+1 >= m.sents[s].to {
		return false
	}
	if m.putsOn(s) {
		return true // a visit, and no question what is on the books
	}
	if !m.shut(passedOnGate) && m.sentenceIs(s, cHint, "passedon") {
		return true // "did Carl get back to you"
	}
	switch next := &m.items[i+1]; {
	case next.site || next.mark || notPassedOn[next.text]:
		return false
	case passesWord[m.text(i)]:
		return true
	}
	return m.text(i) == "let" && m.right(i+1, 4, true, func(k int) bool { return m.text(k) == "know" }) >= 0
}

// firstOf is the first item of a sentence that says something.
func (m *message) firstOf(s int) int {
	i := m.sents[s].from
	for i < m.sents[s].to && (m.items[i].mark || filler(m.text(i))) {
		i++
	}
	return i
}

var (
	passesWord  = phrases("tell | call | text | ping | warn | dile | diles | avisale | avisales | avisa")
	notPassedOn = phrases("me | us | you | nos | it | about")
)

// asksCharge tells whether a sentence asks what air a tank is to have: "what do I charge the
// tank to", "a cuánto inflo el tanque". What one was charged to is a matter of the record.
func (m *message) asksCharge(s int) bool {
	first := m.firstOf(s)
	if !asksOfAir[m.text(first)] && !m.sents[s].question || m.says(first+1, "i", "we", "i had", "we had") {
		return false // "what I charged is the tank"
	}
	charge, ought := false, false
	for i := first; i < m.sents[s].to; i++ {
		charge = charge || chargesAir[m.text(i)] || putsInto[m.text(i)] && m.text(i+1) == "al" // "cuánto le pongo al tanque"
		ought = ought || oughtTo[m.text(i)]
	}
	return charge && ought
}

// asksPrice tells whether a sentence asks what the customer is charged: "what do we charge for a tank".
func (m *message) asksPrice(s int) bool {
	first := m.firstOf(s)
	if !asksOfAir[m.text(first)] {
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
	if !asksOfAir[m.text(first)] || !m.shortSentence(s, 7) || !m.asksCharge(s) {
		return false
	}
	of := false
	for i := first; i < se.to; i++ {
		if m.items[i].num != nil || m.is(i, cItem, "") || m.strangeThing(i) || m.wordCues(m.items[i].tok).has(cueForeign) {
			return false // "how much air does the compressor need"
		}
		of = of || m.says(i, "air", "aire") || m.says(i, "it", "it to", "that one", "lo", "le", "le pongo", "le echo") && !m.is(i+1, cWhose, "")
	}
	if !of {
		return false
	}
	m.addAsk(se.from, AskCharge)
	se.asking, se.question = true, true
	return true
}

var (
	asksOfAir  = phrases("what | whats | how much | how | which | cuanto | a cuanto | con cuanto | de cuanto | que | cuanta | a que")
	chargesAir = phrases(`charge | charged | precharge | precharged | pre-charge | air | aired | pump | pumped | inflate | inflated | pump up | pumped up | air up
		| carga | cargo | cargar | cargado | aire | inflo | inflar | infla | inflado | precarga`)
	putsInto = phrases("pongo | le pongo | echo | le echo | meto | le meto | ponerle | echarle | meterle")
	oughtTo  = phrases(`should | do i | do we | does | do | supposed | need | needs | must | ought | should i | should we
		| debe | deberia | lleva | va | tiene que | hay que | tengo que | pongo | le pongo | cargo | inflo | ponerle | echarle | le echo | necesita | se carga | se infla`)
)

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
				if opened = asksDeed[w]; !opened {
					return false
				}
			case logDay[w]:
				day = true
			case logDeed[w]:
				deed = w
			case logFiller[w] || m.timeWordAt(i):
			case everyone[w] || who == "" && m.maybeName(i):
				who = w
			default:
				return false
			}
		}
	}
	if everyone[who] && oneOf(deed, "get", "got", "do", "done", "did", "go", "went") {
		return false // "what did we get done this week" is a matter of the summary
	}
	return who != "" && deed != "" && day
}

// maybeName tells whether item i is a word that the lexicon does not know.
func (m *message) maybeName(i int) bool {
	return m.items[i].n == 1 && m.items[i].tags == nil && m.wordCues(m.items[i].tok) == 0
}

var (
	asksDeed = phrases("what | whatd | where | wheres | who | has | did | anything | que | donde")
	logDeed  = phrases(`read | get | got | find | found | measure | measured | report | reported | see | saw | send | sent | do | done | go | went | been | was | visit
		| visited | from | log | logged | midio | leyo | hizo | reporto | encontro | mando | fue | anduvo`)
	logDay    = phrases("today | yesterday | week | far | hoy | ayer | semana | morning | afternoon")
	logFiller = phrases("did | has | have | all | so | on | the | anything | this | in | of | for | la | en | s | last | is | esta | pasada")
	everyone  = phrases("everybody | everyone | crew | todos | each | we | us")
)

// asksOldCharge tells whether a sentence asks what a tank was charged to: "what was the tank
// charged to".
func (m *message) asksOldCharge(s int) bool {
	se := &m.sents[s]
	if m.anyReadingLike() || se.to-se.from > 10 {
		return false
	}
	first := m.firstOf(s)
	open, verb, _ := strings.Cut(m.text(first), " ")
	if !asksOfAir[open] || m.says(first+1, "i", "we") ||
		verb == "" && m.right(first, 3, true, func(k int) bool { return m.says(k, "is", "was", "did", "esta", "estaba") }) < 0 {
		return false
	}
	return m.right(first, se.to-first, true, func(k int) bool { return chargesAir[m.text(k)] }) >= 0
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
	if !cancels[m.text(first)] || m.sents[s].question || m.tellsTime(s) || m.reporting() {
		return false
	}
	done, noun := false, false
	for i := first; i < m.sents[s].to; i++ {
		noun = noun || m.is(i, cDo, "recheck") || m.is(i, cHint, "followup") || cancelled[m.text(i)]
	}
	for sn := range m.sents {
		done = done || m.sentenceIs(sn, cAsk, "done") || m.sentenceSays(sn, "already", "did it", "ya")
	}
	return noun && !done
}

var (
	cancels   = phrases("cancel | cancel the | cancel my | cancel that | scrap | scrap the | drop | drop the | kill | kill the | nix | nix the | call off | call off the | cancela | cancela la | cancela el | cancelar | anula | anula el | anula la")
	cancelled = phrases(`recheck | follow up | followup | follow-up | reminder | visit | return visit | callback | call back | appointment | revisit
		| seguimiento | el seguimiento | recordatorio | el recordatorio | revision | la revision | cita | la cita | visita | la visita`)
)

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
		case it.site, it.mark, recordOf[m.text(i)], m.says(i, "and", "y", "the", "a"):
		default:
			return false
		}
	}
	return item
}

// ofManyHouses tells whether a sentence asks which of all houses have or lack something, which
// says nothing of the house at hand: "any houses with no expansion tank?".
func (m *message) ofManyHouses(s int) bool {
	first := m.firstOf(s)
	if m.site != nil || !m.sents[s].question && !m.request(s) && !(m.says(first, "houses", "homes", "casas") && m.shortSentence(s, 6) && !m.reporting()) {
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
	first := m.firstOf(s)
	if m.sentenceIs(s, cSym, "gas_smell") {
		return false // whoever asks may smell it
	}
	if len(m.sents) > 1 || first >= se.to || !m.isMark(se.to-1, "?") || !m.says(first, "any", "anyone", "hay", "are there any", "is there any", "are there", "is there") {
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
	opened := m.says(0, "and", "what about", "how about", "what if", "y", "and if", "and what")
	return opened && m.says(1, "at", "with", "for", "a", "con", "its", "it") && !slices.ContainsFunc(m.items, func(it item) bool { return it.point != "" })
}

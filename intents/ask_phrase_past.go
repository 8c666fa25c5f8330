package intents

import "strings"

// Lists of the lexicon that these rules know.
var (
	listErrands        = listOf("errands")
	listDoneOn         = listOf("done on")
	listNotYet         = listOf("not yet")
	listTakesBackWhole = listOf("takes back whole")
	listWeakLater      = listOf("weak later")
	listTakesBackNow   = listOf("takes back now")
	listTakesBackLast  = listOf("takes back last")
	listWeakDone       = listOf("weak done")
	listPutsOff        = listOf("puts off")
	listPutsOffTo      = listOf("puts off to")
	listWeakHelp       = listOf("weak help")
	listWillNot        = listOf("will not")
)

// askUndo weighs a phrase that may take the last report back.
func (m *message) askUndo(p askPhrase) {
	switch {
	case m.rightsFact(p.at), m.inList(p.at, listTakesBackWhole) && !m.closes(p.at) && !m.says(p.at+1, "please", "pls", "sorry"):
		return
	case m.hasAsk(AskDone) || m.negLeft(p.at, 2) && p.text != "never mind that":
		return
	case p.begins && m.cuesAround(p)&(cueForeign|cueErrand) != 0:
		return
	case (m.p.lex.inList(p.text, listTakesBackNow) || m.is(p.at, cRetract, "")) && m.midNumbers(p.at):
		return
	case m.p.lex.inList(p.text, listTakesBackLast) && !p.begins && !m.lastTalk(p.s):
		return
	case p.reading || m.numberToKeep(p.s, p.at):
		m.noteTold(p, AskCorrect)
	case !m.hasAsk(AskCorrect):
		m.noteAsk(p, AskUndo)
	}
}

// reckons tells whether the words at item i are somebody's for what a gauge shows: "I make it 57 psi in the
// kitchen".
func (m *message) reckons(i int) bool {
	return m.says(i, "make it", "make that") && m.says(i-1, "i", "we") && !m.is(i-2, cQuestion, "") && !m.inList(i-2, listNotSeen) && !m.says(i-2, "can")
}

// askCorrect weighs one that may put it right.
func (m *message) askCorrect(p askPhrase) {
	switch {
	case m.text(p.at) == "meant" && m.hasAsk(AskDue): // "which follow-ups were meant for last week"
		return
	case strings.HasSuffix(p.text, "meant") && m.text(p.at+1) == "to" && !m.says(p.at+2, "type", "say", "put", "write", "send", "enter"):
		return // "meant to call you"
	case m.says(p.at, "make it", "make that") && m.isNum(p.at+1) && m.items[p.at+1].unit == "other":
		return // "make it 2 coffees"
	case m.reckons(p.at):
		return
	case m.rightsFact(p.at), m.airInTank(p.s) && m.numIs(m.prevNum(p.at), roleCharge), m.numberBefore(p.at) && m.rightsPlace(p.at):
		return
	case m.text(p.at-1) == "(" && m.text(p.at+1) == ")":
		return // "~88~ 78 (typo)" is put right already
	case !m.correcting(p.s, p.at, p.begins) || m.hasAsk(AskHelp) || m.hasAsk(AskUndo) && !m.numberAfter(p.at):
		return
	}
	for k := range m.asks {
		if m.asks[k].About == AskUndo {
			m.asks[k].About = AskCorrect
		}
	}
	if m.isNum(p.at-1) && m.isNum(p.at+1) && (strings.HasSuffix(p.text, "really") || strings.HasSuffix(p.text, "actually") || p.text == "should be") {
		m.setRole(p.at-1, roleIgnored, "taken back") // "that 92 was really 82"
	}
	m.noteTold(p, AskCorrect)
}

// toldThings are the classes of what is told of a house besides its pressures.
var toldThings = setOf(cSym, cDry, cDischarge, cItem, cCond, cColor, cRelief)

// rightsFact tells whether the words of taking back at item i put right what this message just told:
// "no exp tank. correction, there is one", "T&P is dry, scratch that, it's dripping".
func (m *message) rightsFact(i int) bool {
	if !m.is(i, cRetract, "") || !m.isMark(i-1, ",", ".", "...", ";", "\n") {
		return false
	}
	before, after := false, false
	for k := max(0, i-6); k < i; k++ {
		before = before || m.meets(k, toldThings)
	}
	for k := i + 1; k < len(m.items) && k <= i+5; k++ {
		if m.numIs(k, roleYear) {
			after = true // "prv 2004. scratch that, 2014"
			continue
		}
		if m.items[k].num != nil && m.items[k].unit == "" || m.items[k].point != "" {
			return false // a pressure is put right
		}
		after = after || m.meets(k, toldThings) || m.is(k, cPresent, "")
	}
	return before && after
}

// numberBefore tells whether a number stands close before item i.
func (m *message) numberBefore(i int) bool {
	return m.left(i, 6, true, func(k int) bool { return m.items[k].num != nil }) >= 0
}

// askDone weighs one that may say that a follow-up is done.
func (m *message) askDone(p askPhrase) {
	se := &m.sents[p.s]
	switch {
	case se.question && !strings.HasPrefix(p.text, "mark"):
		return
	case m.negLeft(p.at, 3) || m.will(p.at):
		return
	case m.doneAndNext(p), !m.closesSomething(p):
		return
	case m.is(p.at, cHint, "didthat") && m.right(p.at, 3, true, m.namesFollowUp) < 0:
		return // "I did the annual … see them again in a year for the recheck"
	case m.p.lex.inList(p.text, listWeakDone) && m.isWorkNoun(p.at):
		return
	case p.text == "ya esta" && m.meets(p.at+1, setOf(cCond, cState, cDid)), p.text == "hecho" && m.says(p.at-1, "ha", "han", "he", "haya"):
		return // "ya está muerto", "nadie le ha hecho flush"
	case strings.HasSuffix(p.text, " lo de") && p.at+1 < len(m.items) && !m.items[p.at+1].site:
		return // "ya quedó lo de la fuga"
	case p.text == "marca" && (m.isNum(p.at+1) || !p.begins):
		return // "marca 85" is a reading
	}
	m.noteTold(p, AskDone)
	se.closes = true
}

// doneAndNext tells whether the work is done and only what comes next is a follow-up: "done
// at 12 Elm, recheck in a year", not "recheck done, next one in a year".
func (m *message) doneAndNext(p askPhrase) bool {
	return p.begins && !beginsWith(p.text, "mark", "cross", "close", "check", "cierra", "clear") && m.thenRecheck(p.at+1, m.sents[p.s].to)
}

// thenRecheck tells whether the first follow-up that the items from..to name is one to come.
func (m *message) thenRecheck(from, to int) bool {
	if len(m.clean.quoted) > 0 {
		return false
	}
	for i := from; i+1 < to; i++ {
		if m.text(i) == "," || m.said(i, keyJoins) || m.text(i) == "then" {
			return (m.is(i+1, cDo, "recheck") || m.is(i+2, cDo, "recheck")) && m.right(i, to-i, true, m.timeSpan) >= 0
		}
		if m.is(i, cDo, "recheck") || m.is(i, cHint, "followup") {
			return false // "done with the recheck"
		}
	}
	return false
}

// pointsAtOne tells whether a phrase says by itself which follow-up is done: "that one is done", alone.
func (m *message) pointsAtOne(p askPhrase) bool {
	if !m.is(p.at, cHint, "thatdone") || len(m.sents) > 1 {
		return false
	}
	words := 0
	for i := range m.items {
		if !m.items[i].mark && !m.items[i].site && !m.timeWordAt(i) && !m.inList(i, listDoneOn) {
			words++
		}
	}
	return words <= 2
}

// closesSomething tells whether there is a follow-up that a phrase says to be done: its
// own sentence names one or gives the order, or it answers what was asked or quoted.
func (m *message) closesSomething(p askPhrase) bool {
	switch {
	case m.followUpNoun(p.s), m.pointsAtOne(p), p.begins && m.is(p.at, cHint, "closeit"):
		return true // "recheck is done"
	case p.begins && p.s == 0 && len(m.clean.quoted) > 0 && m.shortSentence(p.s, 4):
		return true // "done" below a quoted reminder
	case p.s > 0 && m.shortSentence(p.s, 3) && m.sents[p.s-1].question && m.followUpNoun(p.s-1):
		return true // "the recheck at 9 Elm? done"
	case strings.HasPrefix(p.text, "can be ") && m.site != nil:
		return true // "the 12 Elm one can be closed"
	case strings.HasPrefix(p.text, "marcal"):
		return true // "lo del tanque ya quedó, márcalo como hecho"
	case p.begins && beginsWith(p.text, "mark", "cross", "close", "check", "cierra", "clear"):
		return true // "mark 9 Elm done"
	case p.at > m.sents[p.s].from && m.closes(p.at) && m.says(m.firstOf(p.s), "mark", "cross", "check"):
		return true // "mark the tank install at 9 Elm done"
	}
	return m.anyIn(p.s, func(k int) bool {
		return (k != p.at || strings.HasSuffix(p.text, " list")) && m.is(k, cHint, "closeit")
	}, setOf(cHint))
}

// askSnooze weighs one that may put it off.
func (m *message) askSnooze(p askPhrase) {
	i, t, next := p.at, p.text, m.text(p.at+1)
	switch {
	case m.inList(i, listNotYet) && p.begins && m.onlyTime(i+1):
		// "later. ten days"
	case p.reading || (m.negLeft(i, 1) || m.unwilling(i)) && t != "ahorita no" && t != "not now":
		return
	case !m.followUpNoun(p.s) && (m.is(i+1, cItem, "prv") || m.is(i+2, cItem, "prv")) && m.sentenceSays(p.s, "up", "down", "back down"):
		return // "bump the prv down Friday"
	case m.p.lex.inList(t, listPutsOffTo) && m.right(i, 2, true, func(k int) bool { return m.is(k, cItem, "prv") }) > 0:
		return // "bump the prv up in 2 weeks"
	case t == "give me" && next == "the":
		return // "give me the list for friday"
	case (t == "ahorita no" || t == "ahora no") && i+1 < len(m.items) && !m.items[i+1].mark && m.items[i+1].tags == nil && next != "en":
		return // "ahorita no puedo": chatter
	case m.is(i, cHint, "notyet") &&
		(!p.begins || !m.tellsTime(p.s) || m.anyIn(p.s, func(k int) bool { return k > i }, setOf(cDo, cItem, cPoint))):
		return
	case t == "delay" && (!p.begins || oneOf(next, "at", "in", "with", "getting", "on")) && !m.followUpNoun(p.s):
		return
	case !m.surelyPutsOff(p) && !m.putsOffNamed(p):
		return
	case m.p.lex.inList(t, listWeakLater) && !m.followUpNoun(p.s) && !p.begins:
		return
	case t == "ahorita no" && !m.shortSentence(p.s, 3):
		return // "ahorita no puedo"
	case t == "later":
		return
	}
	m.noteAsk(p, AskSnooze)
	m.sents[p.s].snoozes = true
}

// unwilling tells whether the deed at item i is one that somebody would not do: "didn't want to push it".
func (m *message) unwilling(i int) bool {
	k := i - 1
	if m.is(k, cWill, "") || m.says(k, "to") {
		k--
	}
	return m.inList(k, listWillNot) || m.is(k, cNeg, "") && m.items[k].sent == m.items[i].sent
}

// onlyTime tells whether the message goes on from item i with a time and nothing else.
func (m *message) onlyTime(i int) bool {
	time := false
	for ; i < len(m.items); i++ {
		switch it := &m.items[i]; {
		case m.timeSpan(i) || m.timeWordAt(i):
			time = true
		case it.mark, it.lists.has(listFillers), m.is(i, cDeterminer, ""), m.says(i, "in", "for", "until", "till", "til", "another", "more", "en", "hasta", "otra", "otro", "otros", "mas"):
		default:
			return false
		}
	}
	return time
}

// errandBehind tells whether a clause behind item i names what is to be done then: ", get basement key".
func (m *message) errandBehind(i int) bool {
	k := m.right(i, 8, true, func(k int) bool { return m.isMark(k, ",", "-", ":") })
	return k > 0 && m.inList(k+1, listErrands)
}

// surelyPutsOff tells whether a phrase can only put a follow-up off: "remind me later",
// "dale otra semana", "push to Friday".
func (m *message) surelyPutsOff(p askPhrase) bool {
	switch t, next := p.text, m.text(p.at+1); {
	case m.p.lex.inList(t, listPutsOff) || m.is(p.at, cHint, "putoff") || beginsWith(t, "pospon", "aplaza", "recuerdamel", "retrasa", "atrasa", "snu", "snoozea"):
		return true
	case strings.HasSuffix(t, " another"):
		return periodDays[next] > 0 || m.isNum(p.at+1) && unitDays(m.items[p.at+1].unit) > 0 // "give me another week"
	case t == "dale" || t == "dame":
		return next == "otra" || next == "otro" || m.sentenceSays(p.s, "mas") && m.tellsTime(p.s) // "dale 5 días más"
	default:
		return m.p.lex.inList(t, listPutsOffTo) && p.begins && m.tellsTime(p.s)
	}
}

// putsOffNamed tells whether a phrase puts off a follow-up that its sentence names.
func (m *message) putsOffNamed(p askPhrase) bool {
	if !m.followUpNoun(p.s) || !p.begins && !m.tellsTime(p.s) {
		return false
	}
	return p.begins || m.items[p.at-1].mark || m.site != nil || m.followUpBefore(p.at)
}

// askHelp weighs one that may ask how the bot is used.
func (m *message) askHelp(p askPhrase) {
	short := m.shortSentence(p.s, 4)
	switch t := p.text; {
	case t == "help" && (!short || p.reading || m.site != nil || m.reporting()):
		return
	case m.p.lex.inList(t, listWeakHelp) && p.reading:
		return
	case (t == "que haces" || t == "help me") && !short:
		return
	case t == "how do i" && !m.botTalk(p.s, p.at):
		return
	}
	m.noteAsk(p, AskHelp)
}

package intents

import "strings"

// Lists of the lexicon that these rules know.
var (
	listPulls         = listOf("pulls")
	listAsksPast      = listOf("asks past")
	listAsksPastFirst = listOf("asks past first")
	listLastVisits    = listOf("last visits")
	listVisitsAsked   = listOf("visits asked")
	listDuesAgain     = listOf("dues again")
	listPlainDues     = listOf("plain dues")
	listToldAsWell    = listOf("told as well")
	listReportsOf     = listOf("reports of")
	listWeakTrends    = listOf("weak trends")
	listWhoHas        = listOf("who has")
	listWeakDues      = listOf("weak dues")
	listWeakChecks    = listOf("weak checks")
	listOrdersSheet   = listOf("orders sheet")
	listReportsOn     = listOf("reports on")
	listWeakSummaries = listOf("weak summaries")
	listPlots         = listOf("plots")
)

// askPhrase is a phrase of asking in its sentence.
type askPhrase struct {
	s, at   int // its sentence and item
	text    string
	begins  bool // opens its sentence
	request bool // its sentence asks for something: "show me"
	reading bool // its sentence tells a reading
}

// brokenThings are the classes of what "fix that" may be said of, which puts no report right.
var brokenThings = setOf(cSym, cFixture, cItem, cBibb, cFitting)

// weighAsk weighs one phrase of asking in sentence s, whose first word is item first.
func (m *message) weighAsk(s, i, first int, about About, request bool) {
	if (about == AskSummary || about == AskNextCheck || about == AskDue) && m.isMark(i+1, ":") && !m.closes(i+1) {
		return // "Summary: OK house.", "Do next: replace tank"
	}
	if about != AskHelp && m.howAsked(i) {
		return
	}
	if m.site == nil && (about != AskHelp || m.text(i) == "help") && about != AskDue && about != AskSummary && !m.anyReadingLike() && m.cues.has(cueForeign) &&
		m.cuesOf(s, m.sents[s].from, m.sents[s].to).has(cueForeign) && !m.followUpNoun(s) && (about != AskUndo && about != AskCorrect || !m.lastTalk(s)) {
		return // "bring up the ladder", "close the van doors", "any ideas for lunch"
	}
	if about == AskCorrect && strings.HasSuffix(m.text(i), " that") && m.meets(i+1, brokenThings) {
		return // "I'll stop by Friday and fix that dripping tub"
	}
	p := askPhrase{s: s, at: i, text: m.text(i), begins: i == first, request: request, reading: m.readingLike(s)}
	switch about {
	case AskHistory:
		m.askHistory(p)
	case AskTrend:
		m.askTrend(p)
	case AskDue:
		m.askDue(p, first)
	case AskTankSize:
		m.askTankSize(p)
	case AskNextCheck:
		m.askNextCheck(p)
	case AskReport:
		m.askReport(p)
	case AskSummary:
		m.askSummary(p)
	case AskUndo:
		m.askUndo(p)
	case AskCorrect:
		m.askCorrect(p)
	case AskDone:
		m.askDone(p)
	case AskSnooze:
		m.askSnooze(p)
	case AskHelp:
		m.askHelp(p)
	case AskWorst, AskAlerts, AskLog, AskOld:
		m.askOfAll(p, about)
	}
}

// noteAsk notes what a phrase asks; its sentence is then said to the bot.
func (m *message) noteAsk(p askPhrase, about About) *Ask {
	m.sents[p.s].asking = true
	return m.addAsk(p.at, about)
}

// noteTold does the same for a phrase whose sentence also reports something.
func (m *message) noteTold(p askPhrase, about About) {
	m.noteAsk(p, about)
	m.sents[p.s].tells = true
}

// cuesAround returns the cues of a phrase's sentence.
func (m *message) cuesAround(p askPhrase) cueSet {
	return m.cuesOf(p.s, m.sents[p.s].from, m.sents[p.s].to)
}

// askHistory weighs a phrase that may ask what is on record of a house.
func (m *message) askHistory(p askPhrase) {
	se, t := &m.sents[p.s], p.text
	if m.p.lex.inList(t, listPulls) {
		cue := m.cuesAround(p)
		if m.trendBesides(p.s) {
			cue &^= cueTrend
		}
		if !p.request || m.otherAsk(p.s, AskHistory) || cue&(cueTrend|cueOwed|cueErrand) != 0 {
			return
		}
		if t == "pull" && m.text(p.at+1) != "up" && (m.site == nil || !p.begins) || t == "show" && m.text(p.at+1) == "up" {
			return
		}
	}
	if strings.HasPrefix(t, "cuando ") && !se.question && m.right(p.at, se.to-p.at, true, m.tellsAt) >= 0 {
		return // "cuando le cambiaron la reguladora bajó a 60"
	}
	opening, _, more := strings.Cut(t, " ")
	request := p.request || m.isMark(p.at-1, ":") && m.right(p.at, 3, false, m.siteAt) >= 0 || m.p.lex.inList(t, listAsksPast) || more && m.p.lex.inList(opening, listAsksPastFirst)
	switch {
	case m.p.lex.inList(t, listWhoHas) && (m.site == nil || !m.shortSentence(p.s, 1)):
		return // "who has the ladder", "who's got 14 Maple this afternoon"
	case strings.HasPrefix(t, "last reading") && m.anyIn(p.s, func(k int) bool { return k > p.at && m.is(k, cAsk, string(AskCorrect)) }, setOf(cAsk)):
		return // "last reading at 12 Elm should be 82"
	case m.hasAsk(AskHelp) || m.text(p.at+1) == "as" || m.text(p.at+1) == "of" && m.meets(p.at+2, symptomTalk):
		return // "how do I look up a house", "history as a chart", "history of hammer"
	case p.reading && se.header >= 0 && !se.question, m.headsReadings(p):
		return // "Readings for 14 Maple: front 73"
	case t == "all readings" && m.says(p.at+1, "with", "were", "are", "taken"):
		return // "all readings with the burner off"
	case p.reading && p.begins && m.site != nil && !m.otherAsk(p.s, AskHistory) && (se.question || !m.p.lex.inList(t, listLastVisits)):
		m.noteTold(p, AskHistory) // "what was it last time at 60 Elm, I've got 78 front today"
		return
	case !request || p.reading && !se.question:
		return
	case m.otherAsk(p.s, AskHistory) && t != "history" && t != "historial" && t != "hx" && !strings.HasPrefix(t, "everything") && !m.askedTogether(p):
		return
	case m.p.lex.inList(t, listLastVisits) && !se.question && !p.begins && m.site == nil:
		return
	case m.p.lex.inList(t, listLastVisits) && m.is(p.at+1, cAsk, "correct"):
		return // "last reading should be 67"
	}
	m.noteAsk(p, AskHistory)
}

// headsReadings tells whether a phrase and its house head the readings that follow: "Readings at 7 Plover
// Hollow" over a list.
func (m *message) headsReadings(p askPhrase) bool {
	if !p.begins || m.sents[p.s].question || !beginsWith(p.text, "readings ", "lecturas de", "lecturas en") {
		return false
	}
	for k := p.at + 1; k < m.sents[p.s].to && !m.items[k].mark; k++ {
		if !m.items[k].site {
			return p.reading && m.items[k].point != ""
		}
	}
	return p.reading || p.s+1 < len(m.sents) && m.readingLike(p.s+1)
}

// askedTogether tells whether a phrase for the visits is joined to another one: "past visits and pressure graph",
// not "graph of the past visits".
func (m *message) askedTogether(p askPhrase) bool {
	if !m.inList(p.at, listVisitsAsked) {
		return false
	}
	beside := func(k, step int) bool {
		if !m.said(k, keyJoins) && !m.says(k, ",", "plus", "&", "+", "mas") {
			return false
		}
		for k += step; m.said(k, keyJoins) || m.is(k, cDeterminer, "") || m.says(k, "pressure", "customer"); k += step {
		}
		return m.is(k, cAsk, string(AskTrend)) || m.is(k, cAsk, string(AskReport))
	}
	at := p.at - 1
	for m.is(at, cDeterminer, "") {
		at--
	}
	return beside(p.at+1, 1) || beside(at, -1)
}

// tellsAt tells whether item i is a number, a comma, or a word of what was seen or done.
func (m *message) tellsAt(i int) bool {
	return m.items[i].num != nil || m.isMark(i, ",") || m.meets(i, setOf(cSym, cColor, cState, cDid))
}

// askTrend weighs one that may ask for the course of a pressure.
func (m *message) askTrend(p askPhrase) {
	switch {
	case p.reading && m.ordersAt(p.at):
		m.noteTold(p, AskTrend) // "72 front at 9 Elm, now plot that with the others"
	case p.reading || m.p.lex.inList(p.text, listWeakTrends) && !p.request:
	default:
		m.noteAsk(p, AskTrend)
	}
}

// askDue weighs one that may ask for the follow-ups that are due.
func (m *message) askDue(p askPhrase, first int) {
	t := p.text
	switch {
	case m.p.lex.inList(t, listWeakDues) && !p.request && !m.shortSentence(p.s, 4):
		return
	case p.reading || m.otherAsk(p.s, AskDue) && !m.p.lex.inList(t, listDuesAgain):
		return
	case t == "due" && (m.cuesAround(p)&(cueErrand|cueForeign|cueOffice) != 0 || m.text(p.at+1) == "to" || m.is(p.at+1, cUnit, "")):
		return
	case m.p.lex.inList(t, listPlainDues) && (m.sentenceIs(p.s, cAsk, "done") || m.is(first, cAsk, "snooze")):
		return
	case t == "due" && !p.request, t == "my list" && m.says(p.at-1, "on", "to", "onto") && m.tellsTime(p.s):
		return // "put the prv at 9 Alder on my list for 22 June"
	case strings.HasSuffix(t, " left") && !m.closes(p.at) && !m.says(p.at+1, "for", "for me", "for us", "today", "to do") && !strings.HasPrefix(m.text(p.at+1), "this") && !m.timeWordAt(p.at+1):
		return // "what's left in the tank"
	}
	m.noteAsk(p, AskDue)
	m.sents[p.s].asksDue = true
}

// askTankSize weighs one that may ask for the size of a tank.
func (m *message) askTankSize(p askPhrase) {
	t := p.text
	if (t == "what size" || t == "size tank") && !p.request || t == "what size" && !m.tankTalk(p.s) {
		return
	}
	if strings.HasSuffix(t, " size") && m.sizeTold(p.s) {
		m.say(p.at, "xtank") // "Exp tank size: 4.5 gal"
		return
	}
	m.tankNumbers(p.s, m.noteAsk(p, AskTankSize))
}

// askNextCheck weighs one that may ask what to check next.
func (m *message) askNextCheck(p askPhrase) {
	if m.left(p.at, 2, false, func(k int) bool { return m.is(k, cHint, "theyask") }) >= 0 {
		return // "homeowner asks why her water is gray"
	}
	se, t := &m.sents[p.s], p.text
	if strings.HasSuffix(t, " going on") && !se.question && m.text(p.at+1) == "at" && p.at+2 < len(m.items) && m.items[p.at+2].site && m.inList(p.at+3, listLinks) {
		return // "what's going on at 256 Elm St is the pipes knock"
	}
	if !se.question && p.begins && m.headsAnswer(p) {
		return
	}
	why := t == "how come" || beginsWith(t, "why", "por que", "porque")
	switch {
	case (why || m.p.lex.inList(t, listWeakChecks)) && !se.question && !p.begins && !(beginsWith(t, "any", "why so") && m.isMark(p.at-1, ",", "-", "\n") && m.closes(p.at)):
		return // but "118 laundry while firing, any ideas"
	case m.p.lex.inList(t, listToldAsWell) && !se.question, t == "what is it" && m.hasAsk(AskConvert):
		return
	case (t == "next step" || t == "next steps") && se.header >= 0:
		return
	}
	m.noteTold(p, AskNextCheck)
	se.question = se.question || p.begins && beginsWith(t, "should", "how do")
	if w := lastWord(t); w != "next" && w != "nxt" && w != "now" && w != "first" {
		se.askAt = p.at + 1 // "what should I test next front bib is 98" ends before its report
	}
}

// headsAnswer tells whether a phrase of asking for a cause is the head of its answer: "why the pipes bang at 12 Elm:
// no tank". What turns its words round asks, "why is it high: kitchen 99".
func (m *message) headsAnswer(p askPhrase) bool {
	if p.text != "why the" && p.text != "how come" && (p.text != "why" || !m.is(p.at+1, cDeterminer, "") && !m.is(p.at+1, cOwn, "")) {
		return false
	}
	k := m.right(p.at, 14, true, func(k int) bool { return m.isMark(k, ":") })
	return k > 0 && !m.closes(k)
}

// askReport weighs one that may ask for the customer's sheet.
func (m *message) askReport(p askPhrase) {
	se, next := &m.sents[p.s], m.text(p.at+1)
	request := p.request || m.wants(p.s)
	opening, _, _ := strings.Cut(p.text, " ") // "print her a sheet"
	switch {
	case p.reading && m.p.lex.inList(opening, listOrdersSheet):
		m.noteTold(p, AskReport) // "62 laundry and she wants a copy"
		return
	case p.reading:
		return
	case m.anyReadingLike() && !m.sheetBehind(p) && !m.p.lex.inList(opening, listRequests) && (!request || p.begins && !se.question && p.at == se.from):
		return // a head line: "Report for 12 Elm St."
	case m.meets(p.at+1, symptomTalk):
		return // "reporte de agua negra"
	case m.anyReadingLike() && m.is(p.at-1, cHint, "handed"):
		return // "here is the report for 12 Elm St"
	case m.p.lex.inList(p.text, listReportsOn) && (next == "visita" || next == "servicio" || se.header >= 0 || m.otherAsk(p.s, AskReport) && m.weekTalk(p.s)):
		return
	case m.p.lex.inList(p.text, listReportsOf) && m.weekTalk(p.s) && m.site == nil:
		m.noteAsk(p, AskSummary)
		return
	}
	m.noteAsk(p, AskReport)
}

// sheetBehind tells whether a sentence behind what was measured names nothing but somebody's
// sheet: "72 psi side spigot. handout for the customer pls".
func (m *message) sheetBehind(p askPhrase) bool {
	if p.s == 0 || !m.shortSentence(p.s, 5) || m.sents[p.s].header >= 0 || !m.cuesAround(p).has(cuePerson) {
		return false
	}
	for s := range p.s {
		if m.readingLike(s) {
			return true
		}
	}
	return false
}

// askSummary weighs one that may ask what the crew did.
func (m *message) askSummary(p askPhrase) {
	if p.reading {
		return
	}
	if m.p.lex.inList(p.text, listWeakSummaries) {
		switch {
		case m.anyReadingLike():
			return
		case !m.weekTalk(p.s) && (m.site != nil || !p.request && !m.shortSentence(p.s, 3)):
			return
		}
	}
	m.noteAsk(p, AskSummary)
}

// ordersAt tells whether item i opens a clause as an order: ", now plot that".
func (m *message) ordersAt(i int) bool {
	switch {
	case m.inList(i, listPlots):
	default:
		return false
	}
	for k := i - 1; k >= 0; k-- {
		if it := &m.items[k]; it.mark || m.text(k) == "and" || m.text(k) == "now" {
			return true
		} else if it.site || it.num != nil || !m.wordCues(it.tok).has(cueSmall) {
			return false
		}
	}
	return true
}

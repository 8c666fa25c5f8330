package intents

// Lists of the lexicon that these rules know.
var (
	listRequests    = listOf("requests")
	listFollowUps   = listOf("follow-ups")
	listStillToCome = listOf("still to come")
	listWorkNouns   = listOf("work nouns")
	listOfTheCrew   = listOf("of the crew")
)

// asked is a question or an instruction on its way to a statement.
type asked struct {
	at int
	Ask
}

// ask finds what the writer wants of the bot.
func (m *message) ask() {
	for s := range m.sents {
		m.askSentence(s)
	}
	if n := len(m.items); n == 2 && m.items[0].site && m.items[1].text == "?" {
		m.addAsk(0, AskHistory) // "14 Maple?"
	}
}

// request tells whether a sentence is a question or asks for something.
func (m *message) request(s int) bool {
	se := &m.sents[s]
	if se.question {
		return true
	}
	n, small := 0, true // only words that add nothing so far: "oye qué tenemos de 14 Maple"
	for i := se.from; i < se.to && n < 5; i++ {
		if m.items[i].mark || m.items[i].site {
			continue
		}
		n++
		if m.text(i) == "does" && m.text(i+1) == "not" {
			continue // "does not have a tank"
		}
		if m.inList(i, listRequests) {
			return true
		}
		if m.is(i, cQuestion, "") || m.is(i, cAsk, "") && small {
			return true
		}
		small = small && (m.inList(i, listFillers) || m.wordCues(m.items[i].tok).has(cueGreet))
	}
	last := m.text(se.to - 1)
	return last == "please" || last == "pls" || last == "plz" || last == "porfa"
}

// readingLike tells whether a sentence holds a number that looks like a pressure.
func (m *message) readingLike(s int) bool {
	return m.readingAmong(s, m.sents[s].from, m.sents[s].to)
}

// readingAmong tells the same of the items from..to of sentence s.
func (m *message) readingAmong(s, from, to int) bool {
	for i := from; i < to; i++ {
		it := &m.items[i]
		if it.num == nil || it.role == roleDate {
			continue
		}
		if pressureUnit(it.unit) {
			return true
		}
		if it.unit == "" && it.value >= 20 && it.value <= 200 && it.num.integer && !it.num.time {
			for k := max(0, i-4); k < min(len(m.items), i+5); k++ {
				if m.items[k].point != "" && m.items[k].sent == s {
					return true
				}
			}
		}
	}
	return false
}

// anyReadingLike tells whether any sentence holds a number that looks like a pressure.
func (m *message) anyReadingLike() bool {
	for s := range m.sents {
		if m.readingLike(s) {
			return true
		}
	}
	return false
}

// followUpNoun finds a word for a follow-up in a sentence.
func (m *message) followUpNoun(s int) bool {
	for i := m.sents[s].from; i < m.sents[s].to; i++ {
		if m.namesFollowUp(i) {
			return true
		}
	}
	return false
}

// namesFollowUp tells whether item i is a word for a follow-up.
func (m *message) namesFollowUp(i int) bool {
	return m.is(i, cDo, "recheck") || m.is(i, cHint, "followup") || m.inList(i, listFollowUps)
}

// addAsk adds a question or an instruction, each once, and returns it.
func (m *message) addAsk(at int, about About) *Ask {
	for k := range m.asks {
		if m.asks[k].About == about {
			return &m.asks[k].Ask
		}
	}
	m.asks = append(m.asks, asked{at, Ask{About: about}})
	m.note(at, string(about), "question or instruction")
	return &m.asks[len(m.asks)-1].Ask
}

// askOfTank reads a question in a sentence that speaks of a tank: its charge now or then, its size.
func (m *message) askOfTank(s int) bool {
	se := &m.sents[s]
	switch {
	case m.asksPrice(s):
	case m.asksCharge(s):
		m.tankNumbers(s, m.addAsk(se.from, AskCharge))
	case m.asksOldCharge(s):
		m.addAsk(se.from, AskHistory)
	case m.sizes(s), m.asksWhatTank(s), m.comparesTank(s):
		m.tankNumbers(s, m.addAsk(se.from, AskTankSize))
		se.asksSize = true
	default:
		return false
	}
	se.asking, se.question = true, true
	return true
}

// askRule reads one way of asking in a sentence, which then is what the rule says of it.
type askRule struct {
	asks                           func(m *message, s int) bool
	about                          About // "" where the rule notes it itself
	gate                           gate  // what it cannot do without
	question, aside, snoozes, dues bool
}

// askRules are asked in turn before what whole sentences and their phrases ask.
var askRules = [...]askRule{
	{asks: (*message).asksAir, about: AskCharge, gate: onlyWithList(listAsksHowMuch), question: true},
	{asks: (*message).asksChargeFor, gate: onlyWithList(listAirFor), question: true},
	{asks: (*message).asksHelp, about: AskHelp, gate: onlyWithList(listHow)},
	{asks: (*message).asksOfMessages, about: AskHelp, gate: onlyWithList(listInOneMessage), question: true},
	{asks: (*message).asksCancel, about: AskCancel, gate: onlyWithList(listCancels), dues: true},
	{asks: (*message).asksOfItem, about: AskHistory, gate: onlyWithWords("?"), question: true},
	{asks: (*message).asksThing, about: AskHistory, question: true},
	{asks: (*message).asksIfDone, about: AskHistory, question: true},
	{asks: (*message).asksCount, gate: gateOf(opener{words: []string{"how"}, lists: []list{listHowMany}}), question: true, aside: true},
	{asks: (*message).asksState, about: AskNextCheck, gate: gateOf(opener{words: []string{"?"}, lists: []list{listAsksState}}), question: true},
	{asks: (*message).asksOpinion, about: AskNextCheck, question: true},
	{asks: (*message).asksNeed, about: AskNextCheck, gate: onlyWithList(listAsksNeed), question: true, aside: true},
	{asks: (*message).remindsInstead, about: AskSnooze, gate: onlyWith(cHint, "remind"), snoozes: true},
	{asks: (*message).asksLog, about: AskLog, question: true},
}

var askIndex = byGate(len(askRules), func(k int) gate { return askRules[k].gate })

// askByRules asks what sentence s wants by the first of those rules that reads it.
func (m *message) askByRules(s int) bool {
	for open := askIndex.open(m.open[:]...); open != 0; {
		r := &askRules[open.next()]
		if !r.asks(m, s) {
			continue
		}
		se := &m.sents[s]
		if r.about != "" {
			m.addAsk(se.from, r.about)
		}
		se.asking, se.question, se.aside = true, se.question || r.question, se.aside || r.aside
		se.asksDue, se.snoozes = se.asksDue || r.dues, se.snoozes || r.snoozes
		if r.snoozes {
			m.snoozeDays(s)
		}
		return true
	}
	return false
}

// askSentence finds what sentence s asks, the most definite way of asking first.
func (m *message) askSentence(s int) {
	se := &m.sents[s]
	if m.convert(s) {
		se.asking, se.asksConvert = true, true
		return
	}
	if m.asksFormula(s, true) {
		return
	}
	if m.rightsHeld(s) {
		m.addAsk(se.from, AskCorrect)
		se.asking, se.tells = true, true
		return
	}
	if (m.tankTalk(s) || m.comparesTank(s)) && m.askOfTank(s) || m.askByRules(s) {
		return
	}
	if m.askFirst(s) {
		if se.snoozes {
			m.snoozeDays(s)
		}
		return
	}
	if m.kinds.has(cAsk) {
		m.askByPhrases(s)
	}
	if !se.asking && (m.asksAfter(s) || m.namesRecord(s)) {
		m.addAsk(se.from, AskHistory)
		se.asking = true
	}
	if !se.asking && m.correctsByCues(s) {
		m.addAsk(se.from, AskCorrect)
		se.asking, se.tells = true, true
	}
	if !se.asking && !m.passesOn(s) {
		m.askByCues(s)
	}
	if !se.asking && m.asksFormula(s, false) {
		return
	}
	// "snooze … 2 weeks": the time
	if se.snoozes {
		m.snoozeDays(s)
	}
}

// askByPhrases asks what the phrases of a sentence want.
func (m *message) askByPhrases(s int) {
	se := &m.sents[s]
	req := m.request(s)
	firstWord := se.from
	for firstWord < se.to && (m.items[firstWord].mark || m.items[firstWord].site || m.inList(firstWord, listFillers)) {
		firstWord++
	}
	for i := se.from; i < se.to; i++ {
		if !m.items[i].kinds.has(cAsk) || m.is(i-1, cHad, "") {
			continue // "he had to show me the well house"
		}
		for _, t := range m.items[i].tags {
			if t.class == cAsk {
				m.weighAsk(s, i, firstWord, About(t.value), req)
			}
		}
	}
	if se.asking && !se.tells && m.says(firstWord, "is", "are", "does", "did", "has") {
		se.question = true // "is the reg drifting at 12 Elm" tells nothing of the regulator
	}
}

// hasAsk tells whether the message asks for something.
func (m *message) hasAsk(a About) bool {
	for k := range m.asks {
		if m.asks[k].About == a {
			return true
		}
	}
	return false
}

// will tells whether words close before item i say that what it tells is still to come.
func (m *message) will(i int) bool {
	return m.left(i, 4, true, func(k int) bool {
		if m.inList(k, listStillToCome) {
			return true
		}
		return false
	}) >= 0
}

// isWorkNoun tells whether a noun of work stands before item i, so that it is done and no follow-up.
func (m *message) isWorkNoun(i int) bool {
	return m.inList(i-1, listWorkNouns)
}

// otherAsk tells whether the sentence holds a more definite question.
func (m *message) otherAsk(s int, not About) bool {
	for i := m.sents[s].from; i < m.sents[s].to; i++ {
		for _, t := range m.items[i].tags {
			if t.class == cAsk && About(t.value) != not && !(not == AskHistory && m.listedBeside(i)) {
				switch About(t.value) {
				case AskTrend, AskReport, AskTankSize, AskSummary:
					return true
				case AskDue:
					if not == AskHistory && m.text(i) != "due" {
						return true
					}
					if not == AskHistory && m.request(s) {
						return true
					}
				case AskHistory:
					if not == AskDue && (m.text(i) == "history" || m.text(i) == "historial") {
						return true
					}
				}
			}
		}
	}
	return false
}

// listedBeside tells whether the phrase at item i is asked for besides, behind the house that something else is
// asked of: "pull up 12 Elm and plot it", "past visits at 12 Elm, the chart".
func (m *message) listedBeside(i int) bool {
	k := i - 1
	for m.is(k, cDeterminer, "") || m.is(k, cHint, "possessive") || m.is(k, cAsk, string(AskTrend)) || m.says(k, "also", "then", "tambien", "me") {
		k--
	}
	return m.says(k, ",", "and", "y", "&", "+", "plus", "mas") && m.left(k, k, true, m.siteAt) >= 0
}

// siteAt tells whether item k is the street line.
func (m *message) siteAt(k int) bool { return m.items[k].site }

// trendBesides tells whether sentence s asks for the trend with "and", behind the house that something else is
// asked of.
func (m *message) trendBesides(s int) bool {
	for i := m.sents[s].from + 1; i < m.sents[s].to; i++ {
		if m.is(i, cAsk, string(AskTrend)) && m.listedBeside(i) && !m.isMark(i-1, ",") && !m.isMark(i-2, ",") {
			return true
		}
	}
	return false
}

// shortSentence tells whether sentence s has at most n words beside marks and the street line.
func (m *message) shortSentence(s, n int) bool {
	words := 0
	for i := m.sents[s].from; i < m.sents[s].to; i++ {
		if !m.items[i].mark && !m.items[i].site {
			words++
		}
	}
	return words <= n
}

// weekTalk tells whether sentence s speaks of a stretch of work or of the crew, as a summary does.
func (m *message) weekTalk(s int) bool {
	for i := m.sents[s].from; i < m.sents[s].to; i++ {
		if m.inList(i, listOfTheCrew) {
			return true
		}
	}
	return false
}

// askTakes tells whether a number belongs to a question rather than to a report.
func (m *message) askTakes(i int) bool {
	s := &m.sents[m.items[i].sent]
	if s.askAt > 0 && i >= s.askAt && m.items[i].seg == m.items[s.askAt-1].seg {
		return m.left(i, i-s.askAt, true, func(k int) bool { return m.text(k) == ":" }) < 0
	}
	return !s.tells
}

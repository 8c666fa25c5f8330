package intents

import "math/bits"

// Lists of the lexicon that these rules know.
var (
	listBeforeReason = listOf("before reason")
	listRemindsOf    = listOf("reminds of")
)

// recipe is a way of asking: each set of needs must be met by one of its cues,
// none of bars may be present. amid allows it beside a report; first looks for it
// before the phrases of the lexicon, in sentences without a number.
type recipe struct {
	about About
	needs []cueSet
	bars  cueSet
	amid  bool
	first bool
}

// recipes are the ways of asking, the more definite first; each is followed by
// one of the many wordings it stands for.
var recipes = []recipe{
	// "yank the report I just posted", "no guardes lo último"
	{
		about: AskUndo, needs: []cueSet{cueRemove, cueLast | cueSent | cueEntry},
		bars: cueKeep | cueForeign | cueErrand | cueWh | cueAux | cueReading | cueFollow | cueHow, first: true,
	},
	{
		about: AskUndo, needs: []cueSet{cueTake, cueLast | cueSent, cueEntry | cueSent},
		bars: cueKeep | cueForeign | cueErrand | cueWh | cueAux | cueFollow | cueReading | cueSpan, // not "send Ben back to 12 Elm in a week"
	},
	// "delete!", alone
	{about: AskUndo, needs: []cueSet{cueRemove},
		bars: ^(cueRemove | cueTake | cueSmall | cueGreet | cueClose | cueFinish | cueOrders), first: true},
	{
		about: AskUndo, needs: []cueSet{cueRemove, cueThat},
		bars: cueKeep | cueForeign | cueErrand | cueWh | cueAux | cueReading | cueSite | cueItem | cueOther | cueSpan | cueClosed,
	},
	// "didn't mean to send that", "sent that to the wrong apartment"
	{about: AskUndo, needs: []cueSet{cueUnmeant, cueSent | cueEntry}, bars: cueReading | cueWh},
	{about: AskUndo, needs: []cueSet{cueMisplaced, cueSent | cueLast | cueEntry | cueRemove}, bars: cueReading | cueWh | cueItem},
	// "give me an example of a message", "how do I take one back", "qué te puedo preguntar"
	{
		about: AskHelp, needs: []cueSet{cueHowTo, cueShow | cueWant | cueWh | cueAux, cueBot | cueTell},
		bars: cueSite | cueReading | cuePerson | cueErrand | cueItem, first: true,
	},
	{
		about: AskHelp, needs: []cueSet{cueHow | cueWh, cueTell, cueBot},
		bars: cueSite | cueReading | cuePast | cueForeign | cueErrand | cuePerson,
	},
	// "what have I promised people", "who needs a recheck this week"
	{
		about: AskDue, needs: []cueSet{cueWh | cueShow | cueMark | cueAux, cueOwed},
		bars: cueReading | cueShift | cueForeign | cueErrand | cuePaper | cuePuzzle | cueItem | cueKeep,
	},
	{
		about: AskDue, needs: []cueSet{cueWh, cueOwed, cuePeriod},
		bars: cueReading | cueShift | cueForeign | cueErrand | cuePaper | cuePuzzle | cueKeep | cueSite,
	},
	{
		about: AskDue, needs: []cueSet{cueWh | cueShow, cueFollow},
		bars: cueReading | cueShift | cueClose | cueForeign | cuePast | cueFinish | cueDefer,
	},
	// "pressures at 14 Maple as a line"
	{
		about: AskTrend, needs: []cueSet{cueTrend, cueRecord, cueSite},
		bars: cueReading | cueForeign | cueOther | cueItem | cueErrand | cueIt | cueThat,
	},
	{about: AskTrend, needs: []cueSet{cueAsks, cueTrend, cueSite | cueHere | cueRecord},
		bars: cueReading | cueForeign | cueOther, amid: true},
	// "draw the pressure over the last year", "has it been drifting"
	{about: AskTrend, needs: []cueSet{cueAsks | cueOrders, cueTrend, cueSite | cueHere | cueRecord},
		bars: cueReading | cueForeign},
	// "owner would like the paperwork"
	{about: AskReport, needs: []cueSet{cueShow | cueWant | cueMake, cuePaper, cuePerson},
		bars: cueOffice | cueForeign | cueSent | cueReading | cueWh, amid: true},
	{
		about: AskReport, needs: []cueSet{cueShow | cueWant | cueMake, cuePaper, cueSite | cueHere},
		bars: cueOffice | cueForeign | cueSent | cueReading | cueWh,
	},
	{
		about: AskReport, needs: []cueSet{cueMake, cueOrders, cuePerson},
		bars: cueOffice | cueForeign | cueSent | cueOther | cueReading | cueSpan,
	},
	// "how busy was the crew this month"
	{
		about: AskSummary, needs: []cueSet{cueWh | cueShow, cueCrew, cuePeriod, cueResult},
		bars: cueSite | cueReading | cueForeign | cueErrand,
	},
	{about: AskSummary, needs: []cueSet{cueSumUp, cuePeriod | cueCrew}, bars: cueSite | cueReading},
	// "let 14 Maple wait another week"
	{
		about: AskSnooze, needs: []cueSet{cueShift, cueOrders, cueSpan, cueSite | cueFollow | cueThat | cueIt | cueHere},
		bars: cueReading | cueForeign | cueErrand | cueItem | cueMark,
	},
	// "park the follow-up for six weeks", "put this recheck off a while"
	{
		about: AskSnooze, needs: []cueSet{cueDefer, cueFollow},
		bars: cueReading | cueForeign | cueErrand | cueItem | cueWh | cueOwed, first: true,
	},
	{
		about: AskSnooze, needs: []cueSet{cueDefer, cueSpan, cueSite | cueHere | cueThat | cueIt},
		bars: cueReading | cueForeign | cueItem | cueWh | cuePerson, first: true,
	},
	// "tick the follow-up", "callback closed at 14 Maple"
	{
		about: AskDone, needs: []cueSet{cueFinish, cueFollow},
		bars: cueReading | cueForeign | cueItem | cueMark | cueWh | cueSpan | cueShift | cueDefer | cueWant, first: true,
	},
	// "take 14 Maple off my list", "went back to 14 Maple, close it"
	{
		about: AskDone, needs: []cueSet{cueClose, cueClosed, cueSite | cueFollow | cueHere},
		bars: cueReading | cueForeign | cueItem | cueMark | cueWh, first: true,
	},
	// "what did Marco find at 14 Maple", "anything recorded there"
	{
		about: AskHistory, needs: []cueSet{cueAsks | cueOrders, cuePast | cueRecord, cueSite | cueHere},
		bars: cueReading | cueForeign | cueErrand | cueKeep,
	},
	// "prior numbers 14 Maple", "old results, 14 Maple"
	{
		about: AskHistory, needs: []cueSet{cuePast, cueRecord, cueSite},
		bars: cueReading | cueForeign | cueErrand | cueOther | cueItem | cueSent | cueFollow | cuePerson | cueThat | cueIt | cueMistake,
	},
	// "does 14 Maple have a tank?"
	{
		about: AskHistory, needs: []cueSet{cueMark, cueAux, cueItem, cueSite},
		bars: cueReading | cueForeign | cueErrand | cueGallons | cueWant | cueKeep,
	},
	// "does 14 Maple have a prv", "what kind of heater is at 14 Maple"
	{
		about: AskHistory, needs: []cueSet{cueWh, cueItem, cueSite},
		bars: cueReading | cueForeign | cueErrand | cueGallons | cueWant | cuePuzzle | cueOwed | cueEnough | cueShift | cuePaper | cueSizing | cueSpan | cueOther,
	},
	// "gimme 14 Maple"
	{
		about: AskHistory, needs: []cueSet{cueShow, cueOrders, cueSite},
		bars: cueReading | cueForeign | cueErrand | cueOther | cueSpan | cueItem | cuePerson,
	},
	// "what's the likely culprit"
	{about: AskNextCheck, needs: []cueSet{cueAsks, cuePuzzle}, bars: cueForeign | cueErrand | cueTell | cuePaper, amid: true},
}

// derived are the cues that no word lends.
var derived = cueSite | cueItem | cueGallons | cueReading | cueSpan | cueAsks | cueOrders | cueOther

// hook returns the rarest cues that a recipe cannot do without.
func (r *recipe) hook() cueSet {
	best := ^cueSet(0)
	for _, n := range r.needs {
		if n&derived == 0 && bits.OnesCount64(uint64(n)) < bits.OnesCount64(uint64(best)) {
			best = n
		}
	}
	return best
}

// recipeHooks are the hooks of the recipes.
var recipeHooks = func() (hooks []cueSet) {
	for k := range recipes {
		hooks = append(hooks, recipes[k].hook())
	}
	return hooks
}()

// hooksOf joins the hooks of all recipes, or of those that are looked for first: a
// sentence with none of them asks in none of these ways.
func hooksOf(first bool) (all cueSet) {
	for k, hook := range recipeHooks {
		if recipes[k].first || !first {
			all |= hook
		}
	}
	return all
}

var askHooks, firstHooks = hooksOf(false), hooksOf(true)

// cuesMayAsk tells whether the words of sentence s lend what any recipe needs, or any of those that are looked
// for first.
func (m *message) cuesMayAsk(s int, first bool) bool {
	m.hear()
	hooks, may := askHooks, m.mayCue
	if first {
		hooks, may = firstHooks, m.mayCueFirst
	}
	if !may || m.cuesIn(s)&hooks == 0 {
		return false
	}
	some, sure := cuesMeet(m.cuesIn(s))
	return sure || some && !first || m.allKeys != 0
}

// cuesMeet tells whether the cues of some words are all that any recipe needs, and all that one of those needs that are
// looked for first. What a number or the clause itself may lend is taken as lent.
func cuesMeet(words cueSet) (some, sure bool) {
	set := words | derived&^(cueAsks|cueOrders) | cueCrew // "the 5 of us": a number lends it
	if set&(cueWh|cueAux|cueHow|cueMark) != 0 {
		set |= cueAsks
	}
	if set&(cueShow|cueWant|cueMake|cueShift) != 0 {
		set |= cueOrders
	}
	for k, hook := range recipeHooks {
		if set&hook == 0 {
			continue
		}
		if r := &recipes[k]; (r.first || !some) && meets(set, r.needs) {
			if some = true; r.first {
				return true, true
			}
		}
	}
	return some, false
}

// askFirst asks what a whole sentence without a number wants where cues are surer
// than the phrases in it: "take my report on 9 Elm back" asks for no report.
func (m *message) askFirst(s int) bool {
	if !m.cuesMayAsk(s, true) {
		return false
	}
	se := &m.sents[s]
	if se.header >= 0 && se.header <= se.from+2 && !se.question && m.headerPlan(s) {
		return false // "Do next: replace tank in 2 weeks"
	}
	for i := se.from; i < se.to; i++ {
		if it := &m.items[i]; it.num != nil && it.role != roleDate && unitDays(it.unit) == 0 && it.unit != "hour" && !it.num.time {
			return false
		}
	}
	if m.askOne(s, se.from, se.to, true) {
		return true
	}
	// "ignore the one I just sent pls, kid got hold of my phone": what is behind is the reason
	if !m.cuesIn(s).has(cueRemove) {
		return false
	}
	for i := se.from + 1; i < se.to; i++ {
		if m.isMark(i, ",", "-") || m.inList(i, listBeforeReason) {
			return m.askOne(s, se.from, i, true)
		}
	}
	return false
}

// askByCues asks what a sentence without any known phrase wants, clause by clause.
func (m *message) askByCues(s int) {
	if !m.cuesMayAsk(s, false) {
		return
	}
	se := &m.sents[s]
	if se.header >= 0 && se.header <= se.from+2 && !se.question && m.headerPlan(s) {
		return
	}
	if !se.question && m.tellsTime(s) && m.wants(s) && m.anyIn(s, func(k int) bool { return m.is(k, cDo, "recheck") }, setOf(cDo)) {
		return // "I would like to come back in three months to recheck the pressure at 14 Maple"
	}
	from := se.from
	for i := se.from; i < se.to; i++ {
		if i > from+1 && m.opensQuestionAt(i) {
			if m.askClause(s, i, se.to) {
				return
			}
			continue
		}
		if !m.opensClause(i, se.to) {
			continue
		}
		if i > from && m.askClause(s, from, i) {
			return
		}
		from = i + 1
	}
	if m.askClause(s, from, se.to) || from == se.from {
		return
	}
	if !m.askClause(s, se.from, se.to) {
		m.askBesideReading(s)
	}
}

// askBesideReading asks what the parts between the commas of a sentence want:
// "customer wants the sheet, front was 74".
func (m *message) askBesideReading(s int) {
	se := &m.sents[s]
	from := se.from
	for i := se.from; i <= se.to; i++ {
		if i < se.to && m.text(i) != "," {
			continue
		}
		if i > from && !m.readingAmong(s, from, i) && m.askClause(s, from, i) {
			se.tells = true
			return
		}
		from = i + 1
	}
}

// opensClause tells whether item i parts a question or an order from what stands
// before it: ", what do we know", "and show me …".
func (m *message) opensClause(i, to int) bool {
	if i+1 >= to || m.items[i+1].mark || m.items[i+1].num != nil || m.items[i+1].site {
		return false
	}
	if !m.items[i].mark && !m.begins(i, keyJoins) {
		return false
	}
	if m.inList(i, listBeforeClause) {
		set := m.wordCues(m.items[i+1].tok)
		if set&(cueWh|cueShow|cueShift) != 0 {
			return true
		}
		// "and has anybody been there", not "and has never been flushed"
		return set.has(cueAux) && (m.sents[m.items[i].sent].question || i+2 < to && m.wordCues(m.items[i+2].tok).has(cueSmall))
	}
	return false
}

// shrugs tells whether sentence s says that nobody knows.
func (m *message) shrugs(s int) bool {
	for i := m.sents[s].from; i < m.sents[s].to; i++ {
		if m.says(i, "quien sabe", "who knows", "who knows how old", "nobody knows") || m.says(i, "quien", "who") && m.says(i+1, "sabe", "knows") {
			return true
		}
	}
	return false
}

// askClause asks what the items from..to want.
func (m *message) askClause(s, from, to int) bool { return m.askOne(s, from, to, false) }

// askOne asks what the items from..to of sentence s want by the first recipe that they meet; first looks only for
// recipes that are surer than phrases.
func (m *message) askOne(s, from, to int, first bool) bool {
	set := m.cuesOf(s, from, to)
	se := &m.sents[s]
	amid := m.reporting()
	alone := s > 0 && from == se.from && to == se.to // a sentence beside the report
	if !amid && m.site != nil {
		set |= cueSite
	}
	reminds := !m.shut(remindGate) && m.remindsToDo(s)
	for k := range recipes {
		r := &recipes[k]
		if reminds && r.about != AskSnooze {
			continue // "could you remind me in a month to recheck 12 Elm?"
		}
		if first && (!r.first || amid && r.about == AskDone) || set&r.bars != 0 || !meets(set, r.needs) {
			continue
		}
		if r.about == AskDone && (m.sentenceIs(s, cBase, "shut") || m.sentenceIs(s, cDid, "shut")) && !set.has(cueFollow) {
			continue // "had to close off the water at 12 Elm"
		}
		if r.about == AskDone && set&(cueFollow|cueHere) == 0 && m.kinds.meets(besides) && !m.sentenceNamesSite(s) {
			continue // "Just finished up. prv is stuck, 20 Old Post Rd"
		}
		about := m.text(se.from) == "como" && m.isNum(se.from+1) // "como 80 atrás, …"
		if r.about == AskNextCheck && amid && !set.has(cueMark) && (about || !set.has(cueWh)) && m.tellsTrouble(s) {
			continue // "got 88 atrás, el manómetro anda mal"
		}
		if r.about == AskNextCheck && m.text(from) == "got" && set&(cueMark|cueWh) == 0 {
			continue // "got the gauge on the washer box"
		}
		if r.about == AskHistory && !set.has(cueMark) && m.shrugs(s) {
			continue // "quién sabe de qué año será la válvula"
		}
		if r.about == AskHistory && (set&(cueMark|cueAsks) == 0 && m.momentIn(s) || !set.has(cueMark) && m.tellsNeed(from)) {
			continue // "quieren que les suba la reguladora, paso el jueves"
		}
		if r.about == AskSnooze && m.noPuttingOff(from, to, amid) {
			continue
		}
		if r.about == AskSnooze && m.sentenceIs(s, cHint, "remind") && m.errandBehind(from) {
			return false // "nudge me in 4 days, get basement key"
		}
		if r.about == AskDue && (m.settlesTime(s) || m.bringsVisit(s) || !set.has(cueMark) && m.tellsNeed(from)) {
			continue // "do I come back in 2 weeks, nah make it a month", "tenemos que volver a medir"
		}
		if r.about == AskDone && m.thenRecheck(from, to) {
			continue // "finished here, recheck in a year"
		}
		// amid a report a question must be marked as one, or stand in a sentence of its own
		marked := set.has(cueMark) || alone && (set.has(cueAsks) || set.has(cueOrders) && !set.has(cueSpan) && !m.tellsTrouble(s))
		if !first && amid && !r.amid && !marked {
			continue
		}
		se.asking = true
		se.question = se.question || set.has(cueAsks) && to == se.to && !amid
		switch r.about {
		case AskDue:
			se.asksDue = true
		case AskDone:
			se.closes = true
		case AskSnooze:
			se.snoozes = true
		case AskNextCheck:
			se.tells, se.askAt = true, to
		}
		m.addAsk(from, r.about)
		return true
	}
	return false
}

var remindGate = onlyWith(cHint, "remind")

// remindsToDo tells whether sentence s asks to be reminded of something that is to be done, which asks
// nothing else: "remind me Thursday to drop the parts off", not "remind me what we got at 12 Elm".
func (m *message) remindsToDo(s int) bool {
	k := m.sents[s].from
	for k < m.sents[s].to && !m.is(k, cHint, "remind") {
		k++
	}
	if m.says(k, "reminder", "recordatorio") {
		// "the reminder for this house can go", but "could you set me a reminder to recheck it in a month?"
		return m.says(k+1, "to", "para") && m.is(k+2, cDo, "") && m.momentIn(s)
	}
	return k+1 < m.sents[s].to && (m.timeWordAt(k+1) || m.timeSpan(k+1) || m.inList(k+1, listRemindsOf))
}

// besides are classes of what a message tells of a house besides pressures.
var besides = setOf(cItem, cSym, cColor, cDid, cDo, cAsk, cRelief, cFitting, cDischarge, cFuel)

// reporting tells whether the message reports a pressure or a symptom anywhere.
func (m *message) reporting() bool {
	if m.reports == 0 {
		m.reports = 1
		if m.anyReadingLike() || m.has(cSym, "") {
			m.reports = 2
		}
	}
	return m.reports == 2
}

// meets tells whether a set of cues meets all needs of a recipe.
func meets(set cueSet, needs []cueSet) bool {
	for _, n := range needs {
		if set&n == 0 {
			return false
		}
	}
	return true
}

// opensQuestionAt tells whether a question begins at item i though no mark stands
// before it: "before I pull the regulator what should I rule out".
func (m *message) opensQuestionAt(i int) bool {
	it, next := &m.items[i], &m.items[min(i+1, len(m.items)-1)]
	if it.mark || it.site || it.num != nil || next.mark || next.site || next.num != nil || !m.wordCues(it.tok).has(cueWh) {
		return false
	}
	switch t := m.toks[min(it.tok+1, len(m.toks)-1)].text; t {
	case "should", "would", "could", "can", "do", "does", "did":
		return true
	}
	return false
}

// opensQuestion tells whether a word begins a question or an order: "what", "show".
func (p *Parser) opensQuestion(word string) bool {
	return p.lex.look(word).cue.alone&(cueWh|cueShow) != 0
}

package intents

import (
	"slices"
	"strings"
)

// Lists of the lexicon that these rules know.
var (
	listWheneverIt  = listOf("whenever it")
	listNobody      = listOf("nobody")
	listDeniesWork  = listOf("denies work")
	listAsksWhether = listOf("asks whether")
	listBookSays    = listOf("book says")
)

// Whether the work that a verb tells was done: it may be denied, planned, somebody else's or
// only the state of a part.

// judge finds what a verb is said of and whether its work was done.
func (m *message) judge(v *verb) {
	byOther := m.doneBy(v.at) || m.goesOnByOther(v.at)
	m.judgeMood(v)
	v.negated = v.negated || byOther
	v.object, v.objAt = m.objectOf(v)
	if what := m.shutForWork(v); what != "" {
		v.what = what
	}
	v.negated = v.negated || m.deniedDeed(v)
	if v.what == "fixed" && v.object == "prv" && m.is(v.at, cHint, "screws") {
		v.what = "set" // "tightened the reg to 4 bar"
	}
	if v.what == "charged" && beginsWith(m.text(v.at), "bled", "boosted") && m.namesItem("prv") && !m.namesItem("expansion_tank") {
		v.what, v.object = "set", "prv" // "bled it down to 60 at the prv"
	}
	m.judgeState(v, byOther)
	v.negated = v.negated || m.fell(v)
	v.done = !v.negated && !v.planned && !v.state
}

// fell tells whether by a verb the pressure dropped, and nobody dropped it.
func (m *message) fell(v *verb) bool {
	return m.says(v.at, "dropped", "moved", "dropped it") && v.object != "prv" &&
		!(m.text(v.at) == "dropped it" && (m.has(cItem, "prv") || m.weDropped(v.at)))
}

// weDropped tells whether who writes dropped the pressure to a number at item i, and no tap that ran: "kitchen
// was 110, dropped it to 60".
func (m *message) weDropped(i int) bool {
	if m.clauseStart(i) != i && !m.says(i-1, "i", "we", "then", "and") || !m.says(i+1, "to", "down to", "back to") || !m.isNum(i+2) {
		return false
	}
	s := &m.sents[m.items[i].sent]
	for k := s.from; k < s.to; k++ {
		if m.meets(k, setOf(cFlowing, cTurns, cOpened, cState)) || m.isAny(k, cHint, "opens", "uses") || m.is(k, cSym, "") || m.is(k, cItem, "") {
			return false
		}
	}
	return true
}

// mood says how work is told.
type mood uint8

const (
	moodTold   mood = iota // as done
	moodDenied             // "didn't touch the prv"
	moodAhead              // "going to swap it"
)

// judgeMood tells whether the work of a verb is denied or is to be done only.
func (m *message) judgeMood(v *verb) {
	before := m.moodBefore(v)
	v.negated = before == moodDenied || m.deniedAfter(v.at) || m.byOthers(v.at) || m.whichWas(v.at) || m.toiletFlush(v) || m.putsJob(v.at) ||
		v.what == "flushed" && (m.servedSoLongAgo(v.at) || m.everyYear(v.at)) || v.what == "charged" && m.cameCharged(v.at) || m.doneLately(v.at)
	v.planned = before == moodAhead || m.asksWork(v.at) || m.weWill(v.at) || m.toDo(v) || m.slipOfTense(v.at)
}

// cameCharged tells whether the "precharged" at item i says how a tank came, no deed: "tank came precharged at 40".
func (m *message) cameCharged(i int) bool {
	return beginsWith(m.text(i), "precharged", "pre charged") && m.says(i-1, "came", "comes", "come", "shipped", "arrived", "is", "was")
}

// everyYear tells whether the deed at item i is one of each year: "been flushed every year".
func (m *message) everyYear(i int) bool {
	return m.right(i, 2, true, func(k int) bool { return m.says(k, "every", "each", "yearly", "annually", "regularly") }) >= 0
}

// doneLately tells whether the deed at item i is one of the year or the season, and none of this visit: "heater
// 2015, flushed this year", "swapped the prv this spring".
func (m *message) doneLately(i int) bool {
	k := m.right(i, 4, false, func(k int) bool { return m.inList(k, listThisSeason) })
	if k < 0 || m.items[k].seg != m.items[i].seg {
		return false
	}
	if m.says(k-1, "earlier", "back", "already") {
		k--
	}
	return m.onlyObject(i, k)
}

// slipOfTense tells whether what is told as done at item i is done on a day that can only be to come:
// "swapped prv tomorrow", "cambié la reguladora mañana".
func (m *message) slipOfTense(i int) bool {
	for _, w := range m.moments {
		toCome := m.is(w.at, cWill, "") || m.text(w.at) == "manana"
		if toCome && w.days > 0 && !w.span && w.at > i && w.at <= i+6 && m.items[w.at].seg == m.items[i].seg && m.onlyObject(i, w.at) {
			return true
		}
	}
	return false
}

// onlyObject tells whether nothing stands between items a and b but what a verb was done to.
func (m *message) onlyObject(a, b int) bool {
	for k := a + 1; k < b; k++ {
		if !m.is(k, cDeterminer, "") && !m.is(k, cItem, "") && !m.isNum(k) && m.text(k) != "to" && m.text(k) != "a" {
			return false
		}
	}
	return true
}

// putsJob tells whether the words at item at put a job on a list: "put in a prv swap for Friday".
func (m *message) putsJob(at int) bool {
	if !m.is(at, cHint, "jots") {
		return false
	}
	item := m.right(at, 4, true, func(k int) bool { return m.is(k, cItem, "") })
	return item >= 0 && m.jotted(item+1)
}

// moodBefore reads what stands before a verb in its clause, the nearest word first.
func (m *message) moodBefore(v *verb) mood {
	if m.joinedAhead(v) {
		return moodAhead
	}
	from := max(m.sents[m.items[v.at].sent].from, v.at-7)
	for k := v.at - 1; k >= from; k-- {
		near := v.at - k
		switch {
		case m.isMark(k, ",", "(", "/", "-"), m.items[k].seg != m.items[v.at].seg, m.items[k].num != nil:
			return moodTold
		case m.is(k, cDid, "") && m.text(k) != "set" && near > 1 && !m.says(v.at-1, "or", "nor"):
			return moodTold
		case near <= 2 && (strings.HasPrefix(m.text(k), "since") || m.says(k, "ever since", "desde que")):
			return moodTold // "no more banging since I set the prv at 60"
		case m.says(k, "and", "y", "n"):
			if near > 1 || m.says(k-1, "any", "none") {
				return moodTold // "didn't touch the prv and set …", "where there wasn't any and pumped it up": another clause
			}
		case m.deniesWork(k, v):
			return moodDenied
		case m.plansWork(k, v):
			return moodAhead
		}
	}
	return moodTold
}

// joinedAhead tells whether a verb whose form tells no time goes on from what is to be done: "gonna hang
// a tank on Friday and set it to 70".
func (m *message) joinedAhead(v *verb) bool {
	timeless := m.ambiguousForm(v.at) || beginsWith(m.text(v.at), "set", "put", "shut", "cut")
	if !timeless || !m.says(v.at-1, "and", "then", "y") {
		return false
	}
	for k := v.at - 2; k >= m.sents[m.items[v.at].sent].from && !m.items[k].mark; k-- {
		switch {
		case m.is(k, cWill, "") && m.is(k+1, cDo, ""), m.is(k, cWill, "") && m.dayBetween(k, v.at):
			return true // "I come back June 30 and set it to 60"
		case m.is(k, cDid, "") && !m.ambiguousForm(k) && !m.is(k, cDo, ""):
			return false
		}
	}
	return false
}

// dayBetween tells whether a day to come is told between two items.
func (m *message) dayBetween(a, b int) bool {
	return slices.ContainsFunc(m.moments, func(w moment) bool { return w.at > a && w.at < b && !m.past(w) })
}

// deniesWork tells whether item k before a verb denies its work.
func (m *message) deniesWork(k int, v *verb) bool {
	near := v.at - k
	switch {
	case m.text(k) == "no": // "no le moví a la reguladora"
		first, _, _ := strings.Cut(m.text(v.at), " ")  // "no cerré el agua"
		told := strings.TrimSuffix(m.text(v.at), " a") // "no le apreté a la reguladora"
		return near <= 2 && (spanishVerb(told) || spanishVerb(first) || first == "se") && (near == 1 || m.inList(v.at-1, listClitics))
	case m.text(k) == "day": // "same as the day I put it in"
		return m.says(k+1, "i", "we")
	case m.text(k) == "found": // "found the prv cranked all the way in"
		return m.is(v.at-1, cItem, "prv") && v.what == "set"
	case m.inList(k, listWheneverIt): // "nobody remembers when the tank was hung", "whenever the water is shut off"
		return m.is(k-1, cUnknown, "") || m.says(v.at-1, "is", "are", "gets")
	case m.text(k) == "time" && m.text(k-1) == "of": // "ran out of time to flush the heater"
		return near <= 2
	case m.text(k) == "let": // "refused to let me put in a tank"
		return m.left(k, 3, false, func(j int) bool { return m.says(j, "refused", "refuses", "refuse", "wouldnt", "wont", "didnt") }) >= 0
	case m.inList(k, listNobody):
		return true
	case m.inList(k, listDeniesWork):
		return false
	}
	if near == 1 && v.what != "shut" && strings.HasPrefix(m.text(k), "some") && m.is(k, cHint, "someone") {
		return true // "somebody swapped the prv before us"
	}
	// "never was flushed", "never once had it flushed"
	return (m.is(k, cNeg, "") || m.inList(k, listNever)) && (near <= 4 || near <= 6 && m.says(k+1, "once", "ever"))
}

// plansWork tells whether item k before a verb says that its work is to be done, or asks for it.
func (m *message) plansWork(k int, v *verb) bool {
	near := v.at - k
	switch m.text(k) {
	case "if", "whether":
		if near <= 5 && m.inList(k-1, listAsksWhether) {
			return true
		}
	case "to", "to be", "gets", "getting": // "prv gets replaced Friday"
		if near == 1 {
			return true
		}
	case "be": // "prv to be replaced Friday"
		if near == 1 && m.text(k-1) == "to" {
			return true
		}
	case "have", "get": // "she's ready to have the prv changed"
		if m.text(k-1) == "to" || near == 1 && m.text(k) == "get" {
			return true
		}
	case "back to", "returning to", "please", "pls":
		if near == 1 && !m.says(k-1, "went", "came", "drove", "got", "was") {
			return true // "back to put a tank in Wednesday"
		}
	case "lets", "someone":
		return true
	}
	return m.is(k, cWill, "") && !m.wasWill(k) ||
		m.is(k, cTarget, "") && strings.HasSuffix(m.text(k), " be") ||
		m.is(k, cHint, "meant") ||
		m.is(k, cQuestion, "") && near <= 4 && m.sents[m.items[v.at].sent].question
}

// deniedAfter tells whether what follows a verb takes its work from this visit: "flushed: no",
// "installed sometime in the 90s".
func (m *message) deniedAfter(at int) bool {
	decade := m.nextNum(at)
	never := at + 1
	if m.isMark(never, "-", "=", "|") {
		never++
	}
	return m.text(at+1) == ":" && m.says(at+2, "no", "n", "not", "never") ||
		m.says(never, "never", "nunca") && m.closes(never) || // "heater flushed    never"
		m.says(at+1, "sometime", "originally") ||
		decade > 0 && decade <= at+4 && m.text(decade+1) == "s"
}

// asksWork tells whether the sentence of a verb asks about its work, or tells what somebody
// wants done: "when was the tank put in at 50 Thrush Ln", "boss said set it to 60".
func (m *message) asksWork(at int) bool {
	s := &m.sents[m.items[at].sent]
	switch {
	case s.question && s.asking && !(s.tells && at < s.askAt-1):
		return true
	case m.is(at-1, cAsk, "history") && beginsWith(m.text(at-1), "have we", "has any", "were we", "did we"):
		return true // "have we ever replaced the prv at 12 Elm"
	case m.opensAsking(s):
		return true
	case m.inList(at-1, listBookSays):
		return true // "the manual says set at 55"
	}
	return m.text(at-1) == "said" && m.text(at-2) != "i" && (m.is(at, cBase, "") || m.text(at) == "set it")
}

// toiletFlush tells whether a flush is a toilet's, named as the occasion of what is heard or
// seen: "a thud upstairs after a flush".
func (m *message) toiletFlush(v *verb) bool {
	if v.what != "flushed" || !strings.HasPrefix(m.text(v.at), "a ") || m.heaterIn(m.items[v.at].sent) {
		return false
	}
	heard := func(k int) bool { return m.isAny(k, cSym, "hammer", "noise", "low_flow", "swings") }
	return m.anyIn(m.items[v.at].sent, heard, setOf(cSym))
}

// opensAsking tells whether a sentence begins by asking when or how something is done: "ok when
// was the heater flushed", "how do I put in a heater".
func (m *message) opensAsking(s *sentence) bool {
	for i := s.from; i+1 < s.to; i++ {
		switch t := m.text(i); {
		case t == "when":
			return m.says(i+1, "was", "did", "were")
		case strings.HasPrefix(t, "what do i"), t == "what" && m.text(i+1) == "do":
			return true // "what do I write for a replaced prv"
		case t == "how", strings.HasPrefix(t, "how do"):
			return t != "how" || m.says(i+1, "do", "should", "would", "can")
		}
		if it := &m.items[i]; !it.mark && (it.site || it.num != nil || !m.wordCues(it.tok).has(cueSmall)) {
			return false
		}
	}
	return false
}

// toDo tells whether a verb in its base form tells a day to come, "rebuild that prv Thursday",
// or a noun of work is still to be given: "give the heater a flush next time".
func (m *message) toDo(v *verb) bool {
	if strings.HasPrefix(m.text(v.at), "a ") &&
		m.left(v.at, 4, true, func(k int) bool { return m.says(k, "give", "giving", "get", "do") }) >= 0 {
		return true
	}
	if m.inList(v.at, listTurns) && !pastForm(m.text(v.at)) && !m.says(v.at, "back", "put", "get") && m.dayAhead(v.at) {
		return true // "turn the regulator down to 60 in 3 days"
	}
	told := m.toldDone(v.at) && !(m.text(v.at) == "rebuild" && m.is(v.at-1, cHint, "told")) // "we rebuild it Monday"
	return m.is(v.at, cBase, "") && v.what != "shut" && !told && (m.dayAhead(v.at) || m.laterIn(v.at))
}

// whichWas tells whether the deed at i only says which part is meant, one of an
// earlier visit: "el tanque que puse la semana pasada sigue en 60".
func (m *message) whichWas(i int) bool {
	return m.text(i-1) == "que" && m.is(i-2, cItem, "") && m.right(i, 4, false, func(k int) bool {
		return m.text(k) == "pasada" || m.text(k) == "pasado" || m.text(k) == "ayer" || m.text(k) == "hace" || m.is(k, cMemory, "")
	}) >= 0
}

// weWill tells whether a deed that may be past or present, "cambiamos", is still to
// come: a day to come stands in its clause, and no other verb that it may belong to.
func (m *message) weWill(at int) bool {
	t := strings.TrimSuffix(strings.TrimSuffix(m.text(at), " en"), " a")
	base := !pastForm(t) && beginsWith(t, "put", "set", "reset") // "also put in a tank tomorrow"
	if !base && !strings.HasSuffix(t, "amos") && !strings.HasSuffix(t, "emos") && !strings.HasSuffix(t, " dejo") {
		return false
	}
	s := &m.sents[m.items[at].sent]
	for _, w := range m.moments {
		if base && m.items[w.at].sent == m.items[at].sent && m.partedDay(w, at) && !m.past(w) {
			return true // "put a tank in, the 22nd"
		}
	}
	free := func(a, b int) bool {
		for k := a + 1; k < b; k++ {
			if t := m.text(k); t == "y" || t == "and" || m.is(k, cWill, "") || m.is(k, cDid, "") || m.is(k, cDo, "") && !m.is(k, cPart, "") {
				return false
			}
		}
		return true
	}
	for k := s.from; k < s.to; k++ {
		if m.items[k].seg != m.items[at].seg {
			if base && m.items[k].num != nil && unitDays(m.items[k].unit) > 0 && (m.says(k-1, "in", "within") || m.says(k+1, "from", "out")) &&
				m.partedDay(moment{at: k, end: k + 1}, at) {
				return true // "put a tank in, two days from now"
			}
			continue
		}
		day := false
		for _, w := range m.moments {
			day = day || w.at == k && !m.past(w)
		}
		if it := &m.items[k]; it.num != nil && unitDays(it.unit) > 0 && (m.text(k-1) == "en" || m.text(k-1) == "de" && m.text(k-2) == "dentro" ||
			base && (m.says(k-1, "in", "within") || m.says(k+1, "from", "out"))) {
			day = true
		}
		if day && free(min(k, at), max(k, at)) {
			return true
		}
	}
	return false
}

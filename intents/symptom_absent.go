package intents

import (
	"slices"
	"strings"

	"lazyhand/assess"
)

// Lists of the lexicon that these rules know.
var (
	listAtWhichEnded    = listOf("at which ended")
	listTakesBackDenied = listOf("takes back denied")
	listNeverStops      = listOf("never stops")
	listBeforeStopped   = listOf("before stopped")
	listWhereDenied     = listOf("where denied")
	listNone            = listOf("none")
	listDenial          = listOf("denial")
	listDenies          = listOf("denies")
	listBut             = listOf("but")
	listFormAnswers     = listOf("form answers")
	listFormYes         = listOf("form yes")
	listSaysNo          = listOf("says no")
	listAskedOf         = listOf("asked of")
)

// absent tells whether the symptom at item i is denied.
func (m *message) absent(i int, name assess.SymptomName) bool {
	if denied, told := m.answeredInRow(i); told {
		return denied
	}
	switch {
	case m.is(i, cDry, "") && name == assess.ReliefDischarge, m.is(i, cHint, "denies"):
		return !m.negRight(i - 1) // "all dry"
	case name == assess.NoWater && m.deniedAfterAll(i), name == assess.Noise && m.text(i) == "quiet":
		return true
	case name == assess.ReliefDischarge && m.is(i, cHint, "stops"):
		return m.stopsRelief(i) // but "T&P never stopped"
	case name == assess.ReliefDischarge && m.stopsRelief(i) && !m.endedHere(i):
		return true // "T&P stopped dripping"
	case name == assess.ReliefDischarge && m.is(i, cSym, "no_water") && m.text(i) != "water out":
		return true
	case m.is(i, cSym, "") && m.lacksWater(i), name == assess.NoWater && m.says(i, "hot", "cold", "hot water", "cold water"):
		return false // "no hot, no cold"
	case m.deniedBehind(i), m.answeredNo(i):
		return true
	case m.toilet(i):
		return m.negRight(i-1) || m.is(i-1, cNeg, "") || m.left(i, 6, false, func(k int) bool { return m.says(k, "none", "neither") }) >= 0
	case m.contradicted(i):
		return true
	case m.affirmed(i):
		return false
	case strings.HasPrefix(m.text(i-1), "without any "), m.freeOf(i), m.isOver(i) && !m.endedHere(i), m.underDenial(i), m.isNum(i-1) && m.items[i-1].value == 0:
		return true
	}
	if m.inList(i+1, listButFor) && m.pastPlace(i+2) > i+2 {
		return false // "no hammer except at the washer"
	}
	return m.deniedBefore(i)
}

// stopsRelief tells whether the words at or before item i say that a relief valve has stopped: "T&P
// stopped", "la de alivio dejó de tirar", but "T&P hasnt stopped".
func (m *message) stopsRelief(i int) bool {
	k := i
	for k > 0 && !m.is(k, cHint, "stops") && k > i-3 {
		k--
		if m.items[k].seg != m.items[i].seg || m.is(k, cRelief, "") {
			return false
		}
	}
	if !m.is(k, cHint, "stops") && !m.says(k, "paro", "dejo") {
		return false
	}
	for j := k - 1; j >= 0 && j >= k-2; j-- {
		if m.is(j, cNeg, "") || m.inList(j, listNeverStops) {
			return false
		}
	}
	return m.left(k, 4, true, func(j int) bool { return m.is(j, cRelief, "") }) >= 0
}

// reliefStops tells whether item i ends a clause that says of a relief valve that it has stopped, or
// has not.
func (m *message) reliefStops(i int) bool {
	if !m.is(i, cHint, "stops") || !m.closes(i) {
		return false
	}
	k := i - 1
	for k > 0 && (m.is(k, cNeg, "") || m.inList(k, listLinks) || m.inList(k, listBeforeStopped)) {
		k--
	}
	return m.is(k, cRelief, "")
}

// lacksWater tells whether the phrase at item i denies something already: "no water".
func (m *message) lacksWater(i int) bool {
	v, _ := m.val(i, cSym)
	return v == "no_water" || m.says(i, "no pressure", "not enough pressure")
}

// deniedBehind reads "leaks: none", "hammer - no", "creep? no".
func (m *message) deniedBehind(i int) bool {
	to, k := m.sents[m.items[i].sent].to, i+1
	for k < to && (m.meets(k, symptomTalk) && !m.is(k, cSym, "") || m.inList(k, listWhereDenied) ||
		m.is(k, cItem, "") && m.text(m.prepOf(k)) == "at") {
		k++ // "dripping relief: none", "golpes en la tubería: no", "noise at the prv: none"
	}
	if m.noHay(k) {
		return true
	}
	k = m.pastOccasion(k)
	from := k
	for m.says(k, ":", "=", "-", "/", "?", "at all", "is") {
		k++
	}
	if k >= to || k > from+2 || !m.inList(k, listNone) || m.text(k) == "no" && k+1 < to && !m.items[k+1].mark {
		return false
	}
	return k > from || m.text(k) == "absent" && m.closes(k) || !m.says(k, "no", "absent")
}

// noHay tells whether the words from item k on close their clause by saying in Spanish that there is none: "fugas no
// hay", "golpeteo ya no hay", "golpes ya no se oyen".
func (m *message) noHay(k int) bool {
	if m.text(k) == "ya" {
		k++
	}
	if !m.is(k, cNeg, "") {
		return false
	}
	return m.text(k) == "no" && m.says(k+1, "hay", "existe", "existen") && m.closes(k+1) || strings.HasPrefix(m.text(k), "no se ") && m.closes(k)
}

// pastOccasion returns the colon behind the occasion of a symptom that begins at item k, or k where none
// does: "banging when the shower shuts: none".
func (m *message) pastOccasion(k int) int {
	if !m.says(k, "when", "while", "after", "if", "cuando", "al") {
		return k
	}
	for j := k + 1; j < m.sents[m.items[k].sent].to && j < k+8 && m.items[j].num == nil; j++ {
		if m.isMark(j, ":", "=") {
			return j
		}
		if m.items[j].mark {
			break
		}
	}
	return k
}

// answeredInRow reads a clause of symptoms that are all answered behind, as in a form: "hammer no",
// "leaks yes", "hammer n leaks y dark water n".
func (m *message) answeredInRow(i int) (denied, told bool) {
	from, to := m.clauseStart(i), m.clauseEnd(i)
	if !m.inList(to-1, listFormAnswers) || to-from < 2 || m.text(from-1) == "and" || m.text(from-1) == "y" {
		return false, false
	}
	for k := from; k < to; k++ {
		switch {
		case m.inList(k, listFormAnswers) && k > from && !m.inList(k-1, listFormAnswers):
			if k > i && !told {
				denied, told = !m.inList(k, listFormYes), true
			}
		case !m.meets(k, symptomTalk) || m.items[k].num != nil || m.lacksWater(k) || strings.Contains(m.text(k), " y "):
			return false, false
		}
	}
	return denied, told
}

// answeredNo tells whether item i is asked and the next sentence says no: "leaks? No."
func (m *message) answeredNo(i int) bool {
	s := m.items[i].sent
	return m.asked(i) && m.inList(m.sents[s+1].from, listSaysNo)
}

// asked tells whether item i ends a question that another sentence follows.
func (m *message) asked(i int) bool {
	s := m.items[i].sent
	return m.sents[s].question && i+2 == m.sents[s].to && m.text(i+1) == "?" && s+1 < len(m.sents)
}

// askedColour tells whether a question is of the colour at item i alone and the next sentence
// answers it: "rusty? no. black? no.", "is it grey? yes".
func (m *message) askedColour(i int) bool {
	if !m.asked(i) {
		return false
	}
	s := m.items[i].sent
	k := m.sents[s].from
	for m.inList(k, listAskedOf) {
		k++
	}
	answer := m.sents[s+1].from
	return k == i && (m.inList(answer, listSaysNo) || m.says(answer, "yes", "yep", "yeah", "yup", "si"))
}

// affirmed tells whether the clause says yes to item i: "no drip, no banging, yes the kitchen
// faucet leaks".
func (m *message) affirmed(i int) bool {
	for k := i - 1; k >= m.sents[m.items[i].sent].from && m.items[k].seg == m.items[i].seg; k-- {
		if m.says(k, "yes", "yep") {
			return true
		}
	}
	return false
}

// freeOf reads "leak free", "hammer -ve", "leaks 0".
func (m *message) freeOf(i int) bool {
	return m.text(i+1) == "free" || m.text(i+1) == "-" && m.text(i+2) == "ve" ||
		m.isNum(i+1) && m.items[i+1].value == 0 && m.items[i+1].unit == ""
}

// isOver tells whether the symptom at item i has ended: "the banging quit".
func (m *message) isOver(i int) bool {
	if k := m.pastPlace(i + 1); k > i+1 && (m.ended(k) || m.noLonger(k)) {
		return true // "the drip at the kitchen went away"
	}
	if m.is(i, cColor, "") && strings.HasSuffix(m.text(i+1), " gone") {
		return true // "black water is gone"
	}
	return m.ended(i+1) || m.noLonger(i+1) || m.text(i+1) == "has" && m.inList(i+2, listEnded) || m.text(i-1) == "se quito el" || m.text(i-2) == "quito"
}

// pastPlace returns the item behind the place told at item k: "at the kitchen", "under the sink".
func (m *message) pastPlace(k int) int {
	if !m.says(k, "at", "in", "under", "by", "from") {
		return k
	}
	for k++; m.is(k, cDeterminer, ""); k++ {
	}
	if m.is(k, cFixture, "") || m.pointAt(k) || m.is(k, cItem, "") || m.is(k, cBibb, "") {
		return k + 1
	}
	return k
}

// ended tells whether the words at i say that something is over: "quit", "is gone".
func (m *message) ended(i int) bool {
	for m.inList(i, listLinks) || m.text(i) == "has" || m.text(i) == "all" && m.inList(i+1, listEnded) {
		i++
	}
	return m.inList(i, listEnded)
}

// noLonger tells whether the words at item k end a clause by saying that something is not there any more:
// "no longer there", "hasn't come back".
func (m *message) noLonger(k int) bool {
	if m.inList(k, listLinks) {
		k++
	}
	if m.text(k) == "no" && m.text(k+1) == "longer" {
		return m.closes(k+1) || m.says(k+2, "there", "present", "here")
	}
	return m.says(k, "hasnt", "never", "not", "havent") && m.says(k+1, "come back", "came back", "returned")
}

// endedHere tells whether what ended at item i was there on this visit, since it ended by what was
// done: "the whistle quit once I opened the stop". Otherwise an earlier complaint ended.
func (m *message) endedHere(i int) bool {
	return slices.ContainsFunc(m.verbs, func(v verb) bool { return v.done && !m.inList(v.at, listEnded) }) ||
		m.right(i, 5, false, func(k int) bool {
			return m.says(k, "once", "when", "after", "as soon as", "cuando") && m.inList(k+1, listAtWhichEnded)
		}) >= 0
}

// underDenial tells whether the head of the line denies what it lists: "didn't find any:
// rust, leaks, hammer".
func (m *message) underDenial(i int) bool {
	s := &m.sents[m.items[i].sent]
	if s.header < 0 || s.header >= i || m.text(s.header-1) == "no" {
		return false
	}
	for k := s.from; k < s.header; k++ {
		if m.is(k, cNeg, "") {
			return true
		}
	}
	return false
}

// deniedBefore tells whether a denial stands before item i, over a list perhaps: "no leaks,
// hammer or creep", "customer denies hammer".
func (m *message) deniedBefore(i int) bool {
	from := m.sents[m.items[i].sent].from
	for k := i - 1; k >= from && k >= i-10; k-- {
		switch it := &m.items[k]; {
		case m.inList(k, listDenial):
			return m.deniesAhead(k, i)
		case m.inList(k, listBut):
			return false // "no black water but the kitchen leaks"
		case m.says(k, ",", "and", "y"):
			if !m.listEnds(k, i) {
				return false // a list goes on only when it is closed by "or", "nor", "ni"
			}
		case m.inList(k, listDenialGoes):
		case m.is(k+1, cBase, "fixed") && k+1 < i:
			return false // "couldn't fix the leak"
		case m.inList(k, listDenies), m.is(k, cLacks, ""), m.is(k, cNeg, "") && strings.Contains(it.text, " "):
			return !m.inList(k, listStops) && !m.stopDenied(k, i) // "no deja de gotear"
		case it.kinds.meets(symptomTalk), k == i-1 && m.is(k, cItem, "") && m.isAny(i, cSym, "leak", "noise") && m.text(k-1) == "no" && m.closes(i): // "no tank leaks"
		case it.mark, it.num != nil, m.is(k, cItem, ""), it.point != "", i-k > 3:
			return false
		}
	}
	return false
}

// symptomTalk are the classes of what may stand in a list of symptoms.
var symptomTalk = setOf(cSym, cColor, cWater, cPipe, cRelief, cDischarge)

// deniesAhead tells whether the denial at item k denies the symptom at item i, not what stands
// between them.
func (m *message) deniesAhead(k, i int) bool {
	switch {
	case m.text(k) == "no" && m.text(k+1) == ",", m.text(k) == "nothing" && m.text(k+1) == "but":
		return false
	case m.text(k) == "no se" && !m.inList(k+1, listDenialGoes): // "no sé si hay golpes", but "no se ven fugas"
		return false
	case m.says(k, "never", "not", "hasnt") && k+1 < i && (m.isService(k+1) || m.isService(k+2) && k+2 < i):
		return false // "never flushed, rusty water"
	case m.text(k) == "zero" && m.isNum(k):
		return m.only(k+1, i, symptomTalk) // "zero relief discharge"
	}
	return !m.stopDenied(k, i)
}

// stopDenied tells whether what the denial at item k denies is the end of the symptom at item i:
// "couldn't fix the leak", "will not stop dripping", "can't get the drip to stop".
func (m *message) stopDenied(k, i int) bool {
	stops := func(j int) bool { return (m.is(j, cBase, "fixed") || m.inList(j, listStops)) && j < i }
	return m.right(k, 2, true, stops) >= 0 || m.text(i+1) == "to" && m.inList(i+2, listStops)
}

// only tells whether there are items from..to, and all have one of some classes.
func (m *message) only(from, to int, classes classSet) bool {
	for k := from; k < to; k++ {
		if !m.meets(k, classes) {
			return false
		}
	}
	return from < to
}

// listEnds tells whether the list that holds items k..i is joined by "or" or "nor".
func (m *message) listEnds(k, i int) bool {
	s := &m.sents[m.items[i].sent]
	for j := k - 1; j < s.to && j <= i+8; j++ {
		if j < 0 {
			continue
		}
		switch m.text(j) {
		case "or", "nor", "ni", "o":
			return true
		}
		if m.items[j].mark && m.text(j) != "," {
			return false
		}
		if m.items[j].num != nil || j > i && (m.is(j, cNeg, "")) {
			return false
		}
	}
	return false
}

// deniedAfterAll tells whether a lack of water is denied: "nobody is out of water",
// "it isn't a no-water call".
func (m *message) deniedAfterAll(i int) bool {
	return m.left(i, 5, false, func(k int) bool {
		if m.items[k].seg != m.items[i].seg || m.meets(k, otherDenials) || m.says(k, "no", "only") {
			return false
		}
		return m.signsOf(k).has(signDeny)
	}) >= 0
}

// otherDenials are the classes of words that deny something of their own.
var otherDenials = setOf(cSym, cLacks, cAbsent)

// contradicted tells whether the sentence ends by denying what it told of others:
// "neighbors all got brown water, hers isn't".
func (m *message) contradicted(i int) bool {
	k := m.sents[m.items[i].sent].to - 1
	for k > i && m.items[k].mark {
		k--
	}
	if k <= i || m.items[k].seg == m.items[i].seg {
		return false
	}
	if m.inList(k, listTakesBackDenied) {
		return true
	}
	other := func(j int) bool { return m.is(j, cWhose, "other") && j < k }
	if m.right(i, k-i, true, other) >= 0 && m.left(i, 8, true, other) < 0 {
		return false // "gas smell at the meter, neighbor's regulator blew, not ours"
	}
	return m.is(k, cHint, "nothere")
}

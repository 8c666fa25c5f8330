package intents

import "strings"

// Whose work it was that a verb tells of.

// byOthers tells whether somebody else did what the verb at i tells, before the
// visit: "last plumber set the prv", "customer replaced it", "she says it was swapped".
func (m *message) byOthers(i int) bool {
	if strings.HasPrefix(m.text(i), "left it") &&
		m.left(i, 12, true, func(k int) bool { return m.is(k, cState, "idle") || m.is(k, cHint, "breaker") }) >= 0 {
		return true // "the heater's breaker was off and I left it off"
	}
	if m.is(i, cDid, "shut") || m.is(i, cDid, "fixed") {
		return m.is(i-1, cWhose, "other") || m.formerCrew(i-1) || m.utilityBefore(i) || m.is(i, cDid, "fixed") && m.byCustomer(i) // "last guy fixed the leak"
	}
	if m.left(i, 6, true, func(k int) bool { return m.is(k, cAsk, "history") && m.is(k-1, cNeg, "") }) >= 0 {
		return true // "no record of it ever being flushed"
	}
	if m.text(i-1) == "whoever" || m.utilityBefore(i) {
		return true // "city raised the pressure"
	}
	of := func(k int) bool { return m.is(k, cWhose, "other") && m.items[k].seg == m.items[i].seg }
	if had := m.left(i, 4, true, func(k int) bool { return m.text(k) == "had" }); had >= 0 && m.left(had, 5, true, of) >= 0 {
		return true // "neighbor just had her regulator swapped"
	}
	s := &m.sents[m.items[i].sent]
	k := i - 1
	for k >= s.from && m.inList(k, listJustHad) {
		k--
	}
	if k < s.from || m.items[k].seg != m.items[i].seg {
		return false
	}
	if m.is(k, cWhose, "other") {
		return true // "neighbor cranked her prv down"
	}
	if m.formerCrew(k) || m.inList(k, listPeople) && !m.inList(k, listThirdPersons) && !m.says(k-1, "for", "told") &&
		!m.is(k-1, cDid, "") {
		return true
	}
	if !m.inList(k, listLinks) && m.text(k) != "got" {
		return false
	}
	for j := k - 1; j >= s.from && j >= k-6 && !m.items[j].mark; j-- {
		if m.inList(j, listSays) {
			return !m.is(j-1, cWhose, "label") // "tag says the prv is set to 60" tells a fact
		}
	}
	return false
}

// goesOnByOther tells whether the deed at item i goes on from one of somebody else: "somebody replaced the prv in
// 2020 and set it at 55".
func (m *message) goesOnByOther(i int) bool {
	if !m.says(i-1, "and", "then", "y") || len(m.verbs) == 0 {
		return false
	}
	v := &m.verbs[len(m.verbs)-1]
	if v.at >= i || m.items[v.at].sent != m.items[i].sent || i-v.at > 8 {
		return false
	}
	then := m.right(v.at, i-v.at, true, func(k int) bool {
		return m.isNum(k) && m.items[k].fullYear() && int(m.items[k].value) < m.ctx.Today.Year
	})
	return then >= 0 || m.doneBy(v.at)
}

// byCustomer tells whether the one before the deed at item i is somebody of the house: "customer had already
// fixed the drip".
func (m *message) byCustomer(i int) bool {
	k := i - 1
	for m.inList(k, listJustHad) || m.says(k, "himself", "herself", "went and") {
		k--
	}
	return k >= m.sents[m.items[i].sent].from && m.inList(k, listPeople) && !m.inList(k, listThirdPersons) && m.text(k) != "guy" &&
		!m.says(k-1, "for", "told", "by", "with") && !m.is(k-1, cDid, "")
}

// doneBy tells whether the deed at i is said to be another's: "dialed at 70 by the last
// guy".
func (m *message) doneBy(i int) bool {
	k := m.right(i, 7, true, func(k int) bool { return m.text(k) == "by" })
	if k < 0 || m.items[k].seg != m.items[i].seg {
		return false
	}
	for k++; m.is(k, cDeterminer, "") && !m.is(k, cWhose, ""); k++ {
	}
	return m.is(k, cWhose, "other") || m.is(k, cHint, "someone") || m.inList(k, listPeople) || m.formerCrew(k)
}

// utilityBefore tells whether the clause of item i begins with the water supplier who did it: "city shut
// the main 9 to 11", but "they want it changed".
func (m *message) utilityBefore(i int) bool {
	k := m.clauseStart(i)
	if m.is(k, cDeterminer, "") {
		k++
	}
	return k < i && m.left(i, i-k, true, func(j int) bool { return m.is(j, cWill, "") }) < 0 &&
		(m.inList(k, listUtility) || k+1 < i && m.text(k+1) == "company" && m.inList(k, listCompanies))
}

// formerCrew tells whether item k names who was here before: "last guy", "other plumber".
func (m *message) formerCrew(k int) bool {
	return m.is(k, cMemory, "") && !m.is(k, cBefore, "") && strings.Contains(m.text(k), " ") &&
		beginsWith(m.text(k), "last ", "previous ", "other ")
}

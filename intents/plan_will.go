package intents

import "strings"

// Lists of the lexicon that these rules know.
var (
	listNeedsToBe            = listOf("needs to be")
	listNoWill               = listOf("no will")
	listNoPlan               = listOf("no plan")
	listTakesPromiseBack     = listOf("takes promise back")
	listDeniesPlan           = listOf("denies plan")
	listBetweenDeniedAndNeed = listOf("between denied and need")
)

func (m *message) doneWords(s int) bool { return m.sents[s].closes }

// ambiguousForm tells whether a word may stand for a deed to come as well:
// "set", "install", "change".
func (m *message) ambiguousForm(i int) bool { return m.is(i, cDo, "") && m.is(i, cDid, "") }

// willNear finds a word of planning before item i in its sentence, or a day in its clause.
func (m *message) willNear(i int) bool {
	s := &m.sents[m.items[i].sent]
	if m.is(i, cWill, "") && m.is(i, cDo, "replace") {
		return true // "has to go"
	}
	if m.is(i, cWill, "") && m.is(i, cDo, "") && strings.HasPrefix(m.text(i), "que ") {
		return true // "dijo que le cambien la reguladora"
	}
	own := false // the clause names a part of its own
	for k := i; k >= s.from && k >= i-10; k-- {
		if k < i && m.items[k].mark && (m.text(k) == "," || m.text(k) == "/") {
			if k < i-4 || own && !m.is(i, cDo, "replace") {
				break // "recommended an exp tank, PRV age unknown, set 55"
			}
		}
		own = own || k < i-1 && m.is(k, cItem, "")
		if k < i && m.is(k, cDid, "") && !m.is(k, cDo, "") && !m.is(k, cWill, "") {
			break
		}
		if m.is(k, cWill, "") && k < i && !m.wasWill(k) {
			return true
		}
	}
	if m.kinds.has(cHint) && m.right(i, 8, true,
		func(k int) bool { return m.is(k, cHint, "later") && m.items[k].seg == m.items[i].seg }) >= 0 {
		return true // "hang an exp tank next trip"
	}
	if m.is(i-1, cHint, "meant") && m.text(i-1) == "id" ||
		m.right(i, 2, true, func(k int) bool { return m.is(k, cHint, "advised") && m.items[k].seg == m.items[i].seg }) >= 0 {
		return true // "no tank, I'd put one in", "heater replacement quoted"
	}
	// "prv needs replaced", "por cambiar"
	for k := i - 1; k >= s.from && k >= i-3; k-- {
		switch {
		case m.text(k) == "por":
			return k == i-1 // "por cambiar"; not "por una nueva"
		case m.inList(k, listNeedsToBe):
			return true
		}
	}
	return false
}

// backOf are the classes of things that stand at the back.
var backOf = setOf(cBibb, cFixture)

// wasWill tells whether a word of planning is something else here: "well" the
// source of water, "back", a place.
func (m *message) wasWill(k int) bool {
	if m.is(k, cHint, "meant") && (m.text(k-1) == "was" || m.text(k-1) == "were") &&
		m.left(k, 4, false, func(j int) bool { return m.is(j, cItem, "") }) < 0 {
		return true // "I was gonna turn it down but didn't"
	}
	switch {
	case m.text(k) == "back":
		return m.items[k].point != "" && m.numNear(k) || m.meets(k+1, backOf) // "back spigot hummed till I cranked it down"
	case m.inList(k, listNoWill):
		return m.text(k) == "im" && !m.says(k+1, "back", "replacing", "going") ||
			m.inList(k, listNoPlan)
	}
	return false
}

// refused tells whether a promise is taken back: "won't be back".
func (m *message) refused(i int) bool {
	for k := i - 1; k >= i-2; k-- {
		if m.inList(k, listTakesPromiseBack) {
			if m.text(k) != "need to" || m.text(k-1) == "no" {
				return true
			}
		}
	}
	return false
}

// denied tells whether what is to be done is denied: "will replace nothing".
func (m *message) denied(i int) bool {
	if t := m.text(i + 1); t == "nothing" || t == "nada" || t == "anything" {
		return true
	}
	if m.left(i, 5, false, func(k int) bool { return m.is(k, cHint, "wants") && m.is(k-1, cNeg, "") && m.text(i-1) == "to" }) >= 0 {
		return true // "she did not want me to adjust the prv"
	}
	return m.left(i, 3, false, func(k int) bool {
		if m.inList(k, listDeniesPlan) {
			return m.items[k].seg == m.items[i].seg && !m.deniesThing(k, i)
		}
		return false
	}) >= 0
}

// deniesThing tells whether the denial at k is only of a thing that stands before
// item i: "no exp tank and needs one".
func (m *message) deniesThing(k, i int) bool {
	if !m.is(k+1, cItem, "") {
		return false
	}
	for j := k + 2; j < i; j++ {
		if m.inList(j, listBetweenDeniedAndNeed) {
			return true
		}
	}
	return false
}

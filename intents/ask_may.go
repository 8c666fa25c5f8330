package intents

import "strings"

// Most messages ask nothing: whether the words are there at all without which no formula and no question
// for an opinion can be is found once a message, from the words alone.

// askSet is a set of the lists that formulas and opinions cannot do without, one bit each.
type askSet [2]uint64

// join adds the lists of another set.
func (s *askSet) join(t askSet) { s[0], s[1] = s[0]|t[0], s[1]|t[1] }

// holds tells whether all lists of another set are in it.
func (s askSet) holds(t askSet) bool { return t[0]&^s[0]|t[1]&^s[1] == 0 }

// opinions are, by way of asking for an opinion, the lists that it cannot do without; the last one needs a
// question mark as well.
var opinions = [...][]list{
	{listFair, listIsIt}, {listFair, listThinksIt}, {listFair, listToldFair},
	{listSurelyFair, listIsIt}, {listSurelyFair, listThinksIt}, {listSurelyFair, listToldFair},
	{listOfTrouble, listMayCause}, {listOfTrouble, listCantBe},
	{listShallTest, listWhoTests, listProbed}, {listShallTest, listWhoTests, listWhichProbe},
	{listWorth, listProbing},
	{listSurelyFair},
}

// needed numbers the lists of formulas and opinions: at most as many as an askSet has bits.
var needed = func() map[list]int {
	bits := map[list]int{}
	for _, lists := range opinions {
		for _, l := range lists {
			if _, ok := bits[l]; !ok {
				bits[l] = len(bits)
			}
		}
	}
	for k := range formulas {
		for _, s := range formulas[k].steps {
			if _, ok := bits[s.list]; !ok && s.kind == stepOne {
				bits[s.list] = len(bits)
			}
		}
	}
	if len(bits) > 128 {
		panic("there is no room for another list of formulas: widen askSet")
	}
	return bits
}()

// setOfLists is the set of some of those lists.
func setOfLists(lists ...list) (s askSet) {
	for _, l := range lists {
		s[needed[l]>>6] |= 1 << (needed[l] & 63)
	}
	return s
}

// opinionNeeds are those lists as sets.
var opinionNeeds = func() (needs [len(opinions)]askSet) {
	for k, lists := range opinions {
		needs[k] = setOfLists(lists...)
	}
	return needs
}()

// formulaNeeds are, by formula, the lists of its places.
var formulaNeeds = func() []askSet {
	needs := make([]askSet, len(formulas))
	for k := range formulas {
		for _, s := range formulas[k].steps {
			if s.kind == stepOne {
				needs[k].join(setOfLists(s.list))
			}
		}
	}
	return needs
}()

// enterAsks gives the words of those lists, and those that begin a phrase of one, the lists that they stand in.
func (l *lexicon) enterAsks() {
	for x := range needed {
		set := setOfLists(x)
		for phrase := range l.lists[x] {
			w, _, _ := strings.Cut(phrase, " ")
			l.entry(w).asks.join(set)
		}
	}
}

// hear finds which of those lists the words of the message stand in or lead to, and so whether it can ask
// by a formula or for an opinion at all.
func (m *message) hear() {
	if m.heard {
		return
	}
	m.heard = true
	asked := false
	for k := range m.toks {
		m.held.join(m.p.lex.of(&m.toks[k]).asks)
		asked = asked || m.toks[k].kind == mark && m.toks[k].text == "?"
	}
	for k := range opinionNeeds {
		m.mayOpine = m.mayOpine || (asked || k < len(opinions)-1) && m.held.holds(opinionNeeds[k])
	}
	for k := range formulaNeeds {
		if m.held.holds(formulaNeeds[k]) {
			m.mayAsk, m.mayAskFirst = true, m.mayAskFirst || formulas[k].first
		}
	}
}

package intents

import "strings"

// Lists of the lexicon that these rules know.
var (
	listKin        = listOf("kin")
	listOurOwn     = listOf("our own")
	listHouseWord  = listOf("house word")
	listWhichHouse = listOf("which house")
)

// Things of another house, beside which ours may be told: "the neighbor's reg is shot, ours is fine".

var elsewhereGate = gateOf(opener{classes: setOf(cWhose), lists: []list{listKin, listHouseWord}})

// elsewhere tells whether the thing at item i is one of another house: "the neighbor's reg", "the tank at the
// last job", "next door has a 2009 prv".
func (m *message) elsewhere(i int) bool {
	if m.shut(elsewhereGate) {
		return false
	}
	k := i - 1
	for m.says(k, "old", "new") || m.is(k, cCond, "") && k > m.clauseStart(i) {
		k--
	}
	return m.othersHouse(k) || m.inList(k, listKin) && m.is(k-1, cHint, "possessive") || m.standsElsewhere(i+1) || m.othersHave(i)
}

// othersHouse tells whether the words that end at item k name another house, or who lives in one.
func (m *message) othersHouse(k int) bool {
	switch {
	case m.inList(k, listNextDoor):
		return true
	case m.inList(k, listHouseWord):
		return m.inList(k-1, listWhichHouse)
	}
	return m.is(k, cWhose, "other") && (strings.HasSuffix(m.text(k), " house") || strings.HasSuffix(m.text(k), " place") || strings.HasSuffix(m.text(k), " home"))
}

// standsElsewhere tells whether the words at item k say that a thing before them is at another house: "next door",
// "at the last place".
func (m *message) standsElsewhere(k int) bool {
	if m.inList(k, listNextDoor) && !strings.HasPrefix(m.text(k), "neighb") {
		return true
	}
	if !m.says(k, "at", "in", "from", "over at") {
		return false
	}
	for k++; m.is(k, cDeterminer, "") || m.is(k, cHint, "possessive"); k++ {
	}
	if m.says(k, "my house", "my place") || m.inList(k, listNextDoor) || m.othersHouse(k) {
		return true
	}
	return m.inList(k, listWhichHouse) && m.inList(k+1, listHouseWord)
}

// othersHave tells whether the clause of item i says what the people of another house have: "neighbor has no prv".
func (m *message) othersHave(i int) bool {
	k := m.clauseStart(i)
	for m.is(k, cDeterminer, "") {
		k++
	}
	return k < i && m.inList(k, listNextDoor) && m.says(k+1, "has", "have", "had", "got")
}

// oneHere tells whether item k says that the thing named before it is the one of this house: "the one here is a
// 2018", "the reg at this house".
func (m *message) oneHere(k int) bool {
	if m.says(k, "house", "place") {
		return m.text(k-1) == "this"
	}
	return m.says(k, "here", "here is", "heres", "this house", "this place") && (m.text(k-1) == "one" || m.is(k-1, cItem, "") || m.says(k-1, "in", "at"))
}

// ownBeside returns the thing of this house that the fact of an attribute is told of, beside the same of another
// house that was told before it: "ours is fine", "the one here is a 2018".
func (m *message) ownBeside(a attribute, items []mentionOf) *mentionOf {
	var last *mentionOf
	for k := range items {
		if x := &items[k]; x.at < a.at && m.items[x.at].sent >= m.items[a.at].sent-1 {
			last = x
		}
	}
	if last == nil || !last.other || !compatible(a.what, last.item, m.text(a.at), m.items[a.at].value) {
		return nil
	}
	for k := a.at; k > last.at && k >= m.clauseStart(a.at); k-- {
		if first, _, _ := strings.Cut(m.text(k), " "); m.inList(k, listOurOwn) || k == a.at && m.p.lex.inList(first, listOurOwn) {
			return last
		}
	}
	return nil
}

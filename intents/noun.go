package intents

import "strings"

// Nouns that name no equipment, and people.

// strangeThing tells whether item k is a noun that names no equipment.
func (m *message) strangeThing(k int) bool {
	return k >= 0 && k < len(m.items) && m.items[k].tags == nil && !m.items[k].mark && m.items[k].num == nil && !m.items[k].site &&
		!m.p.lex.common(m.text(k)) && !m.inList(k, listSmallWords) && !m.inList(k, listLinks)
}

// noEquipment tells whether item k is a thing that is no equipment: one that the lexicon lists
// ("fridge"), or a noun it does not know.
func (m *message) noEquipment(k int) bool {
	if k < 0 || k >= len(m.items) || m.items[k].mark || m.items[k].kinds.meets(setOf(cItem, cPart)) {
		return false
	}
	t := m.text(k)
	return m.signsOf(k).has(signThing) || m.strangeThing(k) && len(t) > 3 && !strings.HasSuffix(t, "one") && !strings.HasSuffix(t, "ones")
}

// sidelong are the classes of words that a number may still count.
var sidelong = setOf(cWhose, cNamed, cInitial, cHint)

// unknownNoun tells whether item i is a word that the number before it may count.
func (m *message) unknownNoun(i int) bool {
	if m.is(i, cHint, "counted") && beginsWith(m.text(i), "of ", "de ") {
		return false // "20 of them"
	}
	if i >= len(m.items) {
		return false
	}
	it := &m.items[i]
	return it.kinds.within(sidelong) && it.point == "" && !it.mark && it.num == nil && !it.site && !m.p.lex.common(it.text) &&
		!it.lists.has(listSmallWords) &&
		!m.is(i, cHint, "cue") // "72 this morning" counts no mornings
}

// countsStrange tells whether the number at i counts things that are none of the trade's: "smells like forty
// cigars", "twenty odd boxes".
func (m *message) countsStrange(i int) bool {
	k := i + 1
	if m.inList(k, listOdd) || m.unknownNoun(k) && m.unknownNoun(k+1) && m.items[i].num.words {
		k++ // "fifty wet dogs"
	}
	t := m.text(k)
	return len(t) > 3 && strings.HasSuffix(t, "s") && !strings.HasSuffix(t, "ss") && m.unknownNoun(k) // but "address"
}

// foreignNoun tells whether the word at item i is a thing that the house's record does
// not hold: "sheet", "arrestor".
func (m *message) foreignNoun(i int) bool {
	if i < 0 || m.items[i].mark || m.items[i].num != nil || len(m.text(i)) < 4 || m.p.lex.look(m.text(i)).never {
		return false
	}
	return m.items[i].tags == nil && !m.p.lex.look(m.text(i)).plain && !strings.HasPrefix(m.text(i), "dat") || m.is(i, cSkip, "")
}

// noTap tells whether item i is a noun that is no tap and tells nothing of pressure: "bag", "guy".
func (m *message) noTap(i int) bool {
	return m.inList(i, listPeople) || m.is(i, cFuel, "") || m.unknownNoun(i)
}

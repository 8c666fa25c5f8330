package intents

import (
	"slices"
)

// A thing that is named only when all is told of it: "put it at 58, the prv i mean", "it's 12
// years old, the heater that is", "lo puse en 58, el tanque digo".

// namedLast moves such a name to where its pronoun stands, so that the clause is read as if it
// had been named at once.
func (m *message) namedLast() {
	if !m.kinds.has(cItem) {
		return
	}
	for k := 2; k < len(m.items); k++ {
		if !m.items[k].kinds.has(cItem) || m.is(k, cItem, "gauge") {
			continue
		}
		from, to := m.nameAlone(k)
		if from <= 0 {
			continue
		}
		head := m.headOfName(from)
		if pronoun := m.pronounIn(head, from); pronoun >= 0 {
			m.moveName(k, from, to, head, pronoun)
		}
	}
}

// nameAlone returns the items from..to of a clause that is no more than the name of item k, the
// mark before it and a closing bracket with them; from is 0 for none.
func (m *message) nameAlone(k int) (from, to int) {
	from, to = k-1, k+1
	meant := false
	for ; m.is(from, cDeterminer, "") || m.isAny(from, cHint, "possessive", "imean") || m.text(from) == "al"; from-- {
		meant = meant || m.is(from, cHint, "imean")
	}
	for ; m.is(to, cHint, "imean"); to++ {
		meant = true
	}
	if m.text(to) == "not" {
		if to++; m.is(to, cDeterminer, "") {
			to++
		}
		if !m.is(to, cItem, "") {
			return 0, 0
		}
		to++
	}
	switch {
	case !m.stopAt(to), from < 1:
		return 0, 0
	case m.isMark(from, "("):
		if m.isMark(to, ")") {
			return from, to + 1
		}
	case m.isMark(from, ",", "-", "..."), meant && m.isMark(from, "."):
		return from, to
	case meant:
		return from + 1, to
	}
	return 0, 0
}

// headOfName returns where the clause before a name told last begins.
func (m *message) headOfName(from int) int {
	head := from
	for head > 0 && !m.isMark(head-1, ",", ".", ";", "\n", "(", ")", "!", "?", "/") && !m.says(head-1, "and", "y", "but", "pero", "then") {
		head--
	}
	return head
}

// pronounIn returns the word among items from..to that stands for something not named there,
// -1 where there is none, or where a thing or a test point is named.
func (m *message) pronounIn(from, to int) int {
	pronoun := -1
	for i := from; i < to; i++ {
		t := m.text(i)
		switch {
		case m.meets(i, setOf(cItem, cSym, cPoint, cBibb, cState)):
			return -1
		case pronoun < 0 && (oneOf(t, "its", "her", "shes") || holdsWord(t, "it") || beginsWith(t+" ", "lo ", "la ", "le ")):
			pronoun = i
		}
	}
	return pronoun
}

// moveName takes the clause from..to of the name k away and puts the name in place of the
// pronoun, if that is a word by itself, else before the clause that begins at head.
func (m *message) moveName(k, from, to, head, pronoun int) {
	name := m.items[k]
	m.items = slices.Delete(m.items, from, to)
	at := head
	if t := m.text(pronoun); t == "it" || t == "her" {
		at = pronoun
		m.items = slices.Delete(m.items, at, at+1)
	}
	if at < len(m.items) {
		name.tok = m.items[at].tok
	}
	m.items = slices.Insert(m.items, at, name)
}

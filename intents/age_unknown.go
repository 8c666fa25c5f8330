package intents

import "strings"

// Lists of the lexicon that these rules know.
var (
	listCanBeRead   = listOf("can be read")
	listAgeWords    = listOf("age words")
	listWornOff     = listOf("worn off")
	listNotKnown    = listOf("not known")
	listDateAgreed  = listOf("date agreed")
	listDateless    = listOf("planned with no date")
	listKnows       = listOf("knows")
	listAsksWhen    = listOf("asks when")
	listNobodyKnows = listOf("nobody knows")
	listDateLabels  = listOf("date labels")
	listDatedMarks  = listOf("dated marks")
)

// An age that nobody knows or can read.

// unreadable tells whether the plate or date at i cannot be read: "la etiqueta no se
// lee", "el año ya no se ve", "placa borrada".
func (m *message) unreadable(i int) bool {
	return m.right(i, 6, true, func(k int) bool {
		if m.is(k, cHint, "unreadable") {
			return true
		}
		switch {
		case m.says(k, "borrada", "borrado", "ilegible"):
			return true
		case m.inList(k, listCanBeRead):
			return m.text(k-1) == "no se" || m.text(k-1) == "se" && m.text(k-2) == "no"
		}
		return false
	}) >= 0
}

// ageOpener is what tells an age that nobody knows.
var ageOpener = opener{
	classes: setOf(cAge, cUnknown),
	hints:   []string{"undated"},
	lists:   []list{listAsksWhen, listNobodyKnows, listDateLabels, listAgeWords},
}

// ageUnknown reads "nobody knows how old", "age unknown", "no se sabe de qué año es".
func (m *message) ageUnknown(i int) bool {
	switch {
	case m.is(i, cHint, "undated"):
		return true // "PRV: no date code"
	case (m.is(i, cAge, "") || m.inList(i, listAsksWhen)) && m.unknownNear(i):
		return !m.sents[m.items[i].sent].question && !(m.inList(i, listAsksWhen) && m.closes(i))
	case m.is(i, cUnknown, "") && m.stopAt(i+1) && strings.HasSuffix(m.text(i), "knows"):
		return true // "no tag, nobody knows"
	}
	switch {
	case m.inList(i, listNobodyKnows):
		return m.says(i+1, "knows", "sabe") && m.stopAt(i+2)
	case m.text(i) == "cuando":
		return m.left(i, 4, false, func(k int) bool { return m.says(k, "sabe", "sabemos", "saben") }) >= 0
	case m.inList(i, listDateLabels):
		return m.unreadable(i) || m.ageSaidUnknown(i)
	case m.text(i) == "yr" && m.isNum(i-1):
	case m.inList(i, listAgeWords):
		return m.unreadable(i) || m.ageSaidUnknown(i)
	}
	return false
}

// unknownNear tells whether the word of age at item i is told with one for what nobody knows: "no
// idea how old", "age is anybody's guess". Before "when" it stands close.
func (m *message) unknownNear(i int) bool {
	unknown := func(k int) bool { return m.is(k, cUnknown, "") }
	if m.inList(i, listAsksWhen) {
		return m.left(i, 2, true, unknown) >= 0
	}
	ours := func(k int) bool { return unknown(k) && m.items[k].seg == m.items[i].seg }
	return m.left(i, 7, true, unknown) >= 0 || m.right(i, 8, true, ours) >= 0
}

// ageSaidUnknown reads "age unknown", "date worn off", "couldn't read the date", of the word of age
// at item i.
func (m *message) ageSaidUnknown(i int) bool {
	unknown := m.right(i, 3, true, func(k int) bool {
		return m.text(k) == "not" && m.says(k+1, "known", "legible", "readable") ||
			m.inList(k, listWornOff) && !(m.text(k) == "?" && m.isNum(k-1)) // not "tag says 2011? 2013"
	})
	if unknown >= 0 && (m.says(i, "age", "edad") || m.text(unknown) != "gone") {
		return m.text(unknown) != "?" || !m.sents[m.items[i].sent].asking
	}
	denied := m.left(i, 6, true, func(k int) bool {
		return m.inList(k, listNotKnown)
	})
	switch {
	case denied < 0:
		return false
	case m.is(i-1, cUnknown, ""):
		return true // "prv unk yr"
	case m.says(i, "age", "edad"):
		return true
	case m.inList(i, listDatedMarks):
		return !m.inList(i+1, listDateAgreed) && !m.dateOfPlan(i) && m.left(i, 4, true, func(k int) bool { return m.dateDenied(k, i) }) >= 0
	}
	return m.left(i, 6, true, func(k int) bool {
		return m.text(k) == "no se" || m.text(k) == "se" && m.text(k-1) == "no" ||
			m.inList(k, listKnows)
	}) >= 0
}

// dateOfPlan tells whether the date at item i is the day of what was quoted or is to be done, and no mark of
// a part: "quoted a new regulator, no date".
func (m *message) dateOfPlan(i int) bool {
	if m.text(i) != "date" || !m.closes(i) || !m.isMark(i-2, ",", "-", "(") && !m.is(i-2, cHint, "quoted") {
		return false
	}
	return m.left(i, 10, true, func(k int) bool { return m.is(k, cHint, "quoted") || m.is(k, cWill, "") || m.inList(k, listDateless) }) >= 0
}

// dateDenied tells whether item k denies that the date at item i was read: "no date", "couldn't
// find a tag".
func (m *message) dateDenied(k, i int) bool {
	return k >= i-2 && m.says(k, "no", "no trae", "no tiene") && m.text(k+1) != "wait" ||
		m.says(k, "read", "cant", "couldnt", "leer") || m.text(k) == "find" && m.is(k-1, cNeg, "")
}

package intents

// Lists of the lexicon that these rules know.
var (
	listWonders     = listOf("wonders")
	listNotThatDay  = listOf("not that day")
	listFree        = listOf("free")
	listNoSirve     = listOf("no sirve")
	listDoesNotWork = listOf("does not work")
	listSuits       = listOf("suits")
)

// deniedDay tells whether the time at w is said to be the wrong one: "not Friday", "can't do
// Friday", "Friday won't work", "el viernes no". Nothing is planned for it.
func (m *message) deniedDay(w moment) bool {
	k := w.at - 1
	for m.is(k, cDeterminer, "") || m.says(k, "on", "in", "for", "this", "en", "para", "its") {
		k--
	}
	switch {
	case m.inList(k-1, listWonders):
		return false // "if not Friday then Monday"
	case m.is(k, cHint, "insteadof") || m.inList(k, listNotThatDay), m.waitDenied(k):
		return true
	case m.says(k, "no"):
		return k == m.clauseStart(k) && m.otherMoment(w) // "no Friday, recheck Monday"
	case m.nobodyThen(k):
		return m.otherMoment(w)
	}
	return m.daySpoiled(w.end)
}

// waitDenied tells whether the words that end with item k ask not to wait so long: "don't wait a year", "don't let
// it go till next year".
func (m *message) waitDenied(k int) bool {
	if m.says(k, "till", "until", "for", "that long") {
		k--
	}
	if m.says(k, "go", "sit", "slide") && m.says(k-1, "it", "this", "that", "him", "her", "them") {
		k -= 2
	}
	return m.says(k, "wait", "let", "leave it", "espera", "esperes") && m.is(k-1, cNeg, "") || m.says(k, "dont wait")
}

// nobodyThen tells whether the clause that ends with item k denies that somebody comes or is
// there: "can't do", "nobody home", "she is not there".
func (m *message) nobodyThen(k int) bool {
	if !m.inList(k, listFree) {
		return false
	}
	for j := k; j >= m.clauseStart(k) && j > k-4; j-- {
		if m.is(j, cNeg, "") || m.says(j, "nobody", "no one", "nadie") {
			return true
		}
	}
	return false
}

// daySpoiled tells whether what stands from item i says that the day before it does not suit.
func (m *message) daySpoiled(i int) bool {
	if m.says(i, "no", "not") {
		return i+1 >= len(m.items) || m.items[i+1].mark || m.inList(i+1, listNoSirve)
	}
	return m.inList(i, listDoesNotWork) ||
		m.is(i, cNeg, "") && m.inList(i+1, listSuits)
}

// otherMoment tells whether the message tells another time to come than w.
func (m *message) otherMoment(w moment) bool {
	for _, o := range m.moments {
		if o.at != w.at && !m.past(o) {
			return true
		}
	}
	return false
}

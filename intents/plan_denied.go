package intents

// deniedDay tells whether the time at w is said to be the wrong one: "not Friday", "can't do
// Friday", "Friday won't work", "el viernes no". Nothing is planned for it.
func (m *message) deniedDay(w moment) bool {
	k := w.at - 1
	for m.is(k, cDeterminer, "") || m.says(k, "on", "in", "for", "this", "en", "para", "its") {
		k--
	}
	switch {
	case m.says(k-1, "why", "if", "si", "whether", "or", "por que"):
		return false // "if not Friday then Monday"
	case m.is(k, cHint, "insteadof") || m.says(k, "not", "isnt", "rather than", "en lugar de", "en vez de"):
		return true
	case m.says(k, "no"):
		return k == m.clauseStart(k) && m.otherMoment(w) // "no Friday, recheck Monday"
	case m.nobodyThen(k):
		return m.otherMoment(w)
	}
	return m.daySpoiled(w.end)
}

// nobodyThen tells whether the clause that ends with item k denies that somebody comes or is
// there: "can't do", "nobody home", "she is not there".
func (m *message) nobodyThen(k int) bool {
	if !m.says(k, "do", "make", "come", "home", "there", "around", "available", "free", "in", "it", "work", "puedo", "puede", "podemos", "estan", "esta") {
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
		return i+1 >= len(m.items) || m.items[i+1].mark || m.says(i+1, "good", "puede", "puedo", "podemos", "se puede", "sirve")
	}
	return m.says(i, "wont work", "doesnt work", "wont do", "is out", "is no good", "no good") ||
		m.is(i, cNeg, "") && m.says(i+1, "work", "do", "good", "suit", "puede", "puedo")
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

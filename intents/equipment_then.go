package intents

// Conditions of an earlier day, which what is told of today puts aside: "was bad last year, fine now".

var thenGate = gateOf(opener{classes: setOf(cNow), lists: []list{listBackThen, listUsedTo}})

// ofToday drops the condition of an earlier day, and the day itself, where the message goes on with how the thing is
// now, or that it was replaced since.
func (m *message) ofToday(attrs []attribute) []attribute {
	if m.shut(thenGate) || !m.kinds.has(cCond) {
		return attrs
	}
	kept := attrs[:0]
	from, to := 0, 0 // the clause that is put aside
	for k, a := range attrs {
		if a.what == "cond" && m.ofThen(a.at) && (m.otherNow(a.at, attrs[k+1:]) || m.replacedSince(a.at)) {
			from, to = m.clauseStart(a.at), m.clauseEnd(a.at)
			continue
		}
		if (a.dated() || a.what == "ago") && a.at >= from && a.at < to {
			continue // "was ok in 2020, now it's shot"
		}
		kept = append(kept, a)
	}
	return kept
}

// ofThen tells whether the clause of the condition at item i tells it of an earlier day.
func (m *message) ofThen(i int) bool {
	for k := m.clauseStart(i); k < m.clauseEnd(i); k++ {
		year := m.numIs(k, roleYear) && m.says(k-1, "in", "back in") && k > i && m.fullYear(m.items[k].value) < m.ctx.Today.Year
		if m.inList(k, listBackThen) || m.inList(k, listUsedTo) || m.numIs(k, roleAgo) || year {
			return true
		}
	}
	return false
}

// otherNow tells whether one of the attributes behind item i says how the same thing is now.
func (m *message) otherNow(i int, behind []attribute) bool {
	for _, b := range behind {
		if b.what == "cond" && m.items[b.at].sent <= m.items[i].sent+1 && m.itemBetween(i, b.at) < 0 && m.toldNow(b.at) {
			return true
		}
	}
	return false
}

// toldNow tells whether the clause of item i tells of now.
func (m *message) toldNow(i int) bool {
	for k := m.clauseStart(i); k < m.clauseEnd(i); k++ {
		if m.is(k, cNow, "") || m.says(k, "now", "today") {
			return true
		}
	}
	return false
}

// replacedSince tells whether what follows the clause of item i says that the thing was replaced since: "been replaced
// since", "they put a new one in".
func (m *message) replacedSince(i int) bool {
	to := min(m.clauseEnd(i)+8, len(m.items))
	for k := m.clauseEnd(i); k < to && m.items[k].sent <= m.items[i].sent+1; k++ {
		if m.is(k, cItem, "") || m.isNum(k) {
			return false
		}
		if m.is(k, cDid, "replaced") && (m.says(k-1, "since", "been", "its been", "has been", "was") || m.says(k+1, "since") || m.says(k-1, "they", "she", "he", "owner")) {
			return true
		}
	}
	return false
}

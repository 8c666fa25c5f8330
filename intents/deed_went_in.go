package intents

var wentInGate = onlyWith(cHint, "wentin", "newone")

// saidNew returns the item of a line that calls it new and tells what it was set to when
// it went in: "Exp tank: also new, charged 68"; else -1.
func (m *message) saidNew(i int) int {
	if !m.isMark(i+1, ",") || !m.is(i+2, cDid, "set") && !m.is(i+2, cDid, "charged") {
		return -1
	}
	k := i - 1
	for k > 0 && (m.text(k) == "also" || m.isMark(k, ":", "-") || be(m.text(k))) {
		k--
	}
	if k == i-1 || !m.is(k, cItem, "") || m.is(k, cItem, "gauge") || m.sents[m.items[i].sent].from != k {
		return -1
	}
	return k
}

// wentIn reads a part that "went in" on this visit, by its name, its size or as the new
// one: "Tank went in too, 2 gallon, charged to 60", "so a new one went up with 60 in it",
// "40 gal electric went in".
func (m *message) wentIn(i int) (verb, bool) {
	if m.shut(wentInGate) {
		return verb{}, false
	}
	one := i - 1
	if be(m.text(one)) {
		one-- // "new one is in at 58"
	}
	placed := m.text(i) == "in" && m.is(one, cHint, "newone") && (m.endsIn(i) || m.text(i+1) == "and" && m.endsIn(i+1)) // "new brass one in"
	if !m.is(i, cHint, "wentin") && !placed || m.planish(m.items[i].sent) && placed || m.sents[m.items[i].sent].question {
		return verb{}, false
	}
	v := verb{at: i, what: "installed", done: true, objAt: i - 1}
	fresh := m.left(i, 4, true, func(k int) bool { return m.is(k, cPart, "new") }) >= 0
	switch t := m.text(one); {
	case m.is(one, cHint, "newone") || t == "new":
		fresh = fresh || t != "one"
		if v.object = m.carriedTo(i); v.object == "" || !fresh {
			return verb{}, false
		}
		v.what = "replaced"
	default:
		// "first PRV this place has ever had went in today"
		for k := i - 1; k >= m.sents[m.items[i].sent].from && k >= i-6 && !m.items[k].mark && v.object == ""; k-- {
			v.object, v.objAt = m.partAt(k), k
		}
		if v.object == "" {
			return verb{}, false
		}
		fresh = v.objAt == i-1 && (fresh || m.items[i-1].num != nil || m.is(i-1, cFuel, ""))
	}
	return v, m.wentInNow(i, fresh || (v.object == "prv" || v.object == "expansion_tank") && m.noneYet(v.objAt))
}

var firstOneGate = onlyWith(cHint, "given", "firstone")

// firstOne reads the first regulator or tank of a house at item i: "gave 5214 Winslow a
// tank, first one", "house got its very first regulator", "they never had a tank, they've
// got one now".
func (m *message) firstOne(i int) (verb, bool) {
	if m.shut(firstOneGate) {
		return verb{}, false
	}
	s := &m.sents[m.items[i].sent]
	if s.question || m.planish(m.items[i].sent) || m.momentSeg(i) {
		return verb{}, false
	}
	v := verb{at: i, what: "installed", done: true, objAt: i}
	given := m.left(i, 6, true, func(k int) bool { return m.is(k, cHint, "given") }) >= 0
	if m.text(i) == "one" {
		now := m.text(i+1) == "now" || m.text(i-1) == "now"
		for k := i - 1; k >= 0 && k >= i-16 && given && now; k-- {
			if o, ok := m.val(k, cItem); ok {
				v.object = m.itemCode(k, o)
				return v, (v.object == "prv" || v.object == "expansion_tank") && m.itemAbsent(k)
			}
		}
		return verb{}, false
	}
	if v.object = m.partAt(i); v.object != "prv" && v.object != "expansion_tank" {
		return verb{}, false
	}
	first := func(k int) bool { return m.text(k) == "first" || m.text(k) == "1st" }
	if m.firstEver(i) {
		return v, true // "first regulator this house ever saw is now in, set at 60"
	}
	return v, given && (m.left(i, 2, true, first) >= 0 || m.isMark(i+1, ",") && first(i+2))
}

// firstEver tells whether the part at item i is the first that a house ever had, and is in
// now: "first regulator this house ever saw is now in".
func (m *message) firstEver(i int) bool {
	in := func(k int) bool {
		return m.is(k, cHint, "wentin") || m.says(k, "in", "on", "up") && m.closes(k) || m.isAny(k, cDid, "set", "charged")
	}
	return m.left(i, 2, true, func(k int) bool { return m.is(k, cHint, "firstone") }) >= 0 &&
		m.right(i, 6, true, func(k int) bool { return m.text(k) == "ever" }) >= 0 && m.right(i, 9, true, in) >= 0
}

// wentInNow tells whether what "went in" did so on this visit.
func (m *message) wentInNow(i int, fresh bool) bool {
	for k := i + 1; k < m.sents[m.items[i].sent].to; k++ {
		if m.pastAt(k) {
			return false
		}
		fresh = fresh || m.is(k, cDid, "charged") || m.is(k, cDid, "set") || m.text(k) == "today"
	}
	return fresh
}

// pastAt tells whether item k tells that something was done before the visit: "in 2019",
// "six years ago".
func (m *message) pastAt(k int) bool {
	if n := m.items[k].num; n != nil {
		return n.apos || len(n.digits) == 4 && year(n.value)
	}
	return m.is(k, cMemory, "") || m.says(k, "ago", "last year", "this year")
}

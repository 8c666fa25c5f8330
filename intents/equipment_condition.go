package intents

import (
	"slices"
	"strings"

	"lazyhand/assess"
)

// Lists of the lexicon that these rules know.
var (
	listAnotherOne   = listOf("another one")
	listReplacedWith = listOf("replaced with")
	listBothAre      = listOf("both are")
	listAllOfThem    = listOf("all of them")
)

// condValue turns a condition round when it is denied: "not good", "not bad".
func (m *message) condValue(i int, v string) string {
	if v == "failed" && (m.guessedBad(i) || m.nearlySo(i)) {
		return "suspect" // "prv might be shot", "corroded shut nearly"
	}
	if t := m.text(i); strings.Contains(t, " no ") || strings.HasPrefix(t, "no ") {
		return v // "aint got no air"
	}
	if v == "good" && m.left(i, 9, false, func(k int) bool { return m.text(k) == "neither" && m.items[k].seg == m.items[i].seg }) >= 0 {
		return "failed" // "neither the prv nor the tank is any good"
	}
	if m.left(i, 2, false, func(k int) bool {
		ofOther := k+1 < i && (m.is(k+1, cHint, "stamp") || m.isService(k+1)) // "no date, works fine", "never flushed, shot"
		return m.inList(k, listTurnsRound) && !ofOther
	}) >= 0 {
		if v == "good" {
			return "failed"
		}
		return "good"
	}
	return v
}

// otherNoun tells whether a condition is said of a thing that is no equipment: "the
// tag's gone", "elevator's dead".
func (m *message) otherNoun(i int) bool {
	k := i - 1
	for k > 0 && (m.inList(k, listLinks) || m.text(k) == "all" || m.text(k) == "got" || m.text(k) == "looks" || m.text(k) == "long") {
		k--
	}
	if m.inPlace(k, i) || m.oneHere(k) || m.text(k-1) == "no" && m.is(k, cHint, "stamp") {
		return false // "reg no date, rough"
	}
	if m.is(k, cWater, "") || m.is(k, cSym, "") && (m.text(i) == "gone" || m.text(i) == "quit") {
		return true // "hot water rusty", "drip's gone"
	}
	if m.is(k, cFitting, "sure") {
		return true // "flapper won't seat"
	}
	return k >= 0 && !m.is(k, cHint, "prvpart") && m.signsOf(k).has(signThing)
}

// ofOldPart tells whether a fact is of a part that was replaced on the visit: that
// it was bad, or stands between the word of the deed and the part, or years old.
func (m *message) ofOldPart(a attribute, owner string) bool {
	at := m.replacedAt(owner)
	if at < 0 {
		return false
	}
	switch a.what {
	case "cond":
		v, _ := m.val(a.at, cCond)
		return v != "good" && !m.is(a.at, cMaterial, "")
	case "age", "ago":
		return true
	case "year":
		return int(m.items[a.at].value) < m.ctx.Today.Year-1 && !m.items[a.at].num.apos
	case "material", "fuel", "size":
		// "replaced the plastic drain valve with a brass one"
		if m.items[a.at].sent != m.items[at].sent && m.left(a.at, 4, true, func(k int) bool { return m.is(k, cPart, "new") }) >= 0 {
			return false // "swapped the heater. New 50 gal gas with a brass drain"
		}
		return a.at > at && !m.newWords(a.at, at) && m.right(a.at, 4, true, func(k int) bool {
			if m.inList(k, listReplacedWith) && !m.is(k-1, cDid, "set") { // "I set it for a hundred twenty"
				return m.says(k+1, "a", "new", "un", "una") || m.factual(k+1) || m.items[min(k+1, len(m.items)-1)].num != nil
			}
			return false
		}) >= 0
	}
	return false
}

// ofNewPart tells whether a fact is of what was put in for an old part: "pulled the
// old 30 gal heater, put in a 50 gal propane", "swapped it for a brass one".
func (m *message) ofNewPart(a attribute) bool {
	if m.forAnother(a.at) {
		return true
	}
	if k := m.left(a.at, 5, true, func(k int) bool { return m.text(k) == "now" && m.text(k+1) == "a" }); k >= 0 &&
		m.items[k].seg == m.items[a.at].seg {
		return true // "heater now a 65 gal heat pump, took the old one to the dump"
	}
	if m.left(a.at, 4, true, func(k int) bool { return m.is(k, cDid, "replaced") && strings.Contains(m.text(k), "new one") }) >= 0 {
		return true // "took out the old tank and put in a new one, 2 gal"
	}
	for _, v := range m.verbs {
		if v.done && v.at < a.at && m.items[v.at].sent == m.items[a.at].sent && m.changeVerb(v) == v.at ||
			v.renews && a.at >= min(v.at, max(v.objAt, 0)) {
			return true
		}
	}
	return false
}

// forAnother tells whether "for a" or "with a new" leads to the fact at item i, with at most other
// facts between: "swapped the old electric heater for a gas one, 50 gal".
func (m *message) forAnother(i int) bool {
	k := i - 1
	for k >= 0 && k > i-8 && (m.is(k, cFuel, "") || m.numIs(k, roleSize, roleYear) || m.says(k, ",", "one", "unit") || m.is(k, cItem, "heater")) {
		k--
	}
	return m.inList(k, listAnotherOne) && m.says(k-1, "for", "with", "to", "por", "con")
}

// shared gives a fact of two things to the other one too: "prv and heater both 2015",
// "prv and exp tank are fine".
func (m *message) shared(a attribute, owner string, items []mentionOf) {
	last := -1
	for k, x := range items {
		if x.item == owner && x.at < a.at && m.items[x.at].sent == m.items[a.at].sent {
			last = k
		}
	}
	if last < 1 || !m.saidOfAll(items[last].at, a.at) && m.text(items[last-1].at-1) != "both" && !m.saidOfPair(items[last-1].at, items[last].at, a.at) {
		return
	}
	f := m.equipment.find(owner)
	closed := false
	for k := last - 1; k >= 0; k-- {
		x, y := items[k], items[k+1]
		switch {
		case m.items[x.at].sent != m.items[y.at].sent:
			return
		case m.joined(x.at, y.at) || m.right(y.at, a.at-y.at, true, func(k int) bool { return m.is(k, cHint, "both") }) >= 0:
			closed = true
		case !closed || !m.onlyMarks(x.at, y.at):
			return // "prv, tank and heater": the "and" closes the list
		}
		if !compatible(a.what, x.item, m.text(a.at), m.items[a.at].value) {
			return
		}
		g := m.equipment.get(x.item, x.at)
		if g.Absent() {
			return
		}
		if g.InstalledYear == nil && a.what != "cond" {
			g.InstalledYear = f.InstalledYear
		}
		if g.Condition == "" && a.what == "cond" {
			g.Condition = f.Condition
		}
		g.said = true
	}
}

// saidOfPair tells whether the fact at item i is all that is said of two things that open their clause: "prv and
// tank shot", "prv & heater went in in 2018", "tank and softener look fine".
func (m *message) saidOfPair(one, two, i int) bool {
	first := one
	for m.is(first-1, cDeterminer, "") {
		first--
	}
	if !m.joined(one, two) || first != m.clauseStart(one) {
		return false
	}
	k := two + 1
	for k < i && (m.isMark(k, ":", "=", "-") || m.is(k, cHint, "wentin") || m.is(k, cDid, "installed") || m.says(k, "in", "put in", "installed", "since", "from")) {
		k++
	}
	return k == i && !strings.HasPrefix(m.text(i), "looks ") && !strings.HasPrefix(m.text(i), "is ")
}

// saidOfAll tells whether what is said at item i is said of the item before it and of
// those listed with it: "are all from 2025", "both went in in 2019 and both look good".
func (m *message) saidOfAll(item, i int) bool {
	all := false
	for j := item + 1; j < i; j++ {
		if m.inList(j, listBothAre) {
			all = true
		}
		both := m.text(j) == "," && (m.says(j+1, "both", "all") || m.text(j+1) == "and" && m.text(j+2) == "both")
		if m.is(j, cItem, "") || m.items[j].mark && m.text(j) != ":" && !both {
			return false
		}
	}
	return all || m.inList(i+1, listAllOfThem)
}

// listBehind gives a year told of everything to each thing of the list behind it: "all 2019: prv,
// tank, heater".
func (m *message) listBehind(a attribute, items []mentionOf) bool {
	all := func(k int) bool { return m.says(k, "all", "everything", "todo") }
	if a.what != "year" || m.text(a.at+1) != ":" || m.left(a.at, 8, false, all) < 0 {
		return false
	}
	y, given, last := m.fullYear(m.items[a.at].value), 0, a.at+1
	for _, x := range items {
		if x.at < a.at || m.items[x.at].sent != m.items[a.at].sent || given > 0 && !m.onlyMarks(last, x.at) {
			continue
		}
		f := m.equipment.get(x.item, x.at)
		f.InstalledYear, f.said = &y, true
		given, last = given+1, x.at
	}
	return given > 1
}

// bothOf gives a condition told of two things in a sentence of its own to the two told
// last: "tank and reg both 2016. both fine".
func (m *message) bothOf(a attribute, items []mentionOf) bool {
	s := m.items[a.at].sent
	if a.what != "cond" || m.itemIn(s) != "" ||
		m.left(a.at, 3, false, func(k int) bool { return m.says(k, "both", "ambos") && !m.is(k+1, cWhose, "") && !m.noEquipment(k+1) }) < 0 {
		return false
	}
	v, _ := m.val(a.at, cCond)
	v = m.condValue(a.at, v)
	given := map[string]bool{}
	for k := len(items) - 1; k >= 0 && len(given) < 2; k-- {
		if x := items[k]; x.at < a.at && m.items[x.at].sent == s-1 && !given[x.item] {
			f := m.equipment.get(x.item, x.at)
			f.said, given[x.item] = true, true
			if f.Condition == "" {
				f.Condition = assess.Condition(v)
			}
		}
	}
	return len(given) > 0
}

// wantedFor tells whether the material at item i is that of a part to come: "habría
// que cambiarla por una de bronce".
func (m *message) wantedFor(i int) bool {
	k := m.left(i, 4, false, func(k int) bool { return m.text(k) == "por" || m.text(k) == "for" })
	return k >= 0 && m.willNear(k)
}

// inPlace tells whether item k only says where a piece of equipment is whose condition
// stands at i: "recirc pump under the sink is dead".
func (m *message) inPlace(k, i int) bool {
	if k < 2 || k >= i || m.items[k].mark {
		return false
	}
	for j := k - 1; j > 0 && j >= k-3; j-- {
		if m.heaterStands(j) {
			return true
		}
		if m.is(j, cHint, "whereto") {
			return m.is(j-1, cItem, "")
		}
	}
	return false
}

// doneIn tells whether work is told in sentence s before item i.
func (m *message) doneIn(s, i int) bool {
	return slices.ContainsFunc(m.verbs, func(v verb) bool { return v.done && v.at < i && m.items[v.at].sent == s })
}

// stuckIn tells whether "stuck" at item i is how a thing was put in: "stuck an expansion tank in".
func (m *message) stuckIn(i int) bool {
	return m.text(i) == "stuck" && m.is(i+1, cDeterminer, "") && m.right(i, 4, false, func(k int) bool { return m.says(k, "in", "on") && m.is(k-1, cItem, "") }) > 0
}

package intents

import "strings"

// nearestOwner returns the item in the sentence of an attribute that lies nearest to it, nil
// when none fits, and how far it is: about a word for each word between, more for what parts
// them.
func (m *message) nearestOwner(a attribute, items []mentionOf) (nearest *mentionOf, distance float64) {
	distance = 1e9
	for k := range items {
		x := &items[k]
		if !m.mayOwn(x, a, items) {
			continue
		}
		if d := m.distance(x, a, items); d < distance {
			nearest, distance = x, d
		}
	}
	return nearest, distance
}

// mayOwn tells whether an attribute can be said of an item, both of one sentence.
func (m *message) mayOwn(x *mentionOf, a attribute, items []mentionOf) bool {
	it, before := &m.items[a.at], x.at < a.at
	if m.items[x.at].sent != it.sent || !compatible(a.what, x.item, it.text, it.value) {
		return false
	}
	switch {
	case before && a.what != "unknown" && m.lackedHere(*x, it.sent): // "no check valve, tank good"
	case before && (a.what == "cond" || a.what == "unknown" || a.dated() && !m.fuelNear(a.at)) && m.landmarkItem(x.at, items):
		// "house gauge by the reg bit the dust", "tank above the heater, installed 2020"
	case before && x.item == "drain_valve" && (a.what == "cond" || a.dated()) && m.heaterWith(x.at, a.at):
		// "a 40 gallon gas with a brass drain, 2004, scaled up"
	case before && a.what == "cond" && m.ofFittingTo(x.at): // "shutoff valve to the heater is frozen"
	case !before && a.what == "cond" && m.besideOf(x.at): // "pinhole above the heater"
	case before && a.what == "cond" && strings.Contains(it.text, " with") &&
		m.right(a.at, 3, false, func(k int) bool { return m.is(k, cItem, "") }) >= 0:
		// "needs a tank, nothing wrong with the prv"
	case a.what == "cond" && m.attributive(a.at):
		// "prv and a dead crab"
	case a.what == "cond" && m.clauseStart(x.at) != m.clauseStart(a.at) && m.otherSubject(a.at):
		// "prv 2006, supply line burst"
	case (a.dated() || a.what == "ago") && m.clauseStart(x.at) != m.clauseStart(a.at) && m.datedElse(a.at):
		// "prv's at 60, her washing machine is 14 years old"
	case a.what == "unknown" && !before && m.separators(a.at, x.at) > 0 && m.text(a.at-1) == "so":
		// "the needle's bent so who knows, lp heater"
	case a.dated() && before && m.datesNext(a.at) && m.datesFirst(it.sent):
		// "2015 heater 2018 prv"
	case (a.dated() || a.what == "ago") && !before && m.datedItself(x.at) && (m.separators(a.at, x.at) > 0 || m.undatedBefore(a.at)) && !m.datesFirst(it.sent):
		// "they moved in in 2019, prv is dated 2015", "tank was put in 6 yrs ago heater 3 yrs ago"
	default:
		return true
	}
	return false
}

// datedItself tells whether the clause of the thing at item i tells its year or its age behind it.
func (m *message) datedItself(i int) bool {
	seg := m.items[i].seg
	return m.right(i, 6, false, func(k int) bool { return m.numIs(k, roleYear, roleAge, roleAgo) && m.items[k].seg == seg }) >= 0
}

// datesFirst tells whether the first date of sentence n stands right before the first thing that it names,
// as all of them do then: "2015 heater 2018 prv", "10 year old heater".
func (m *message) datesFirst(n int) bool {
	for i := m.sents[n].from; i < m.sents[n].to; i++ {
		switch {
		case m.numIs(i, roleYear, roleAge):
			return m.datesNext(i)
		case m.is(i, cItem, ""):
			return false
		}
	}
	return false
}

// datesNext tells whether a thing stands right behind the date at item i.
func (m *message) datesNext(i int) bool {
	if m.text(i+1) == "old" {
		i++
	}
	return m.is(i+1, cItem, "")
}

// undatedBefore tells whether a thing is named before the date at item i in its sentence and waits for one:
// no other date stands between.
func (m *message) undatedBefore(i int) bool {
	last := m.left(i, 8, false, func(k int) bool { return m.is(k, cItem, "") || m.numIs(k, roleYear, roleAge, roleAgo) })
	return last >= 0 && m.items[last].num == nil
}

// ofFittingTo tells whether the thing at item i only says which valve or pipe is meant: "shutoff to the heater",
// "ball valve at the prv".
func (m *message) ofFittingTo(i int) bool {
	k := m.prepOf(i)
	if !m.says(k, "to", "for", "at", "before", "ahead of", "feeding", "above", "by") {
		return false
	}
	return m.inList(k-1, listShutsRelief) || m.is(k-1, cFitting, "part") || m.is(k-1, cPipe, "")
}

// attributive tells whether the condition at item i is that of a noun right behind it which is no
// equipment: "got that rusted union loose", "a dead crab".
func (m *message) attributive(i int) bool {
	if m.is(i+1, cHint, "looks") {
		return false // "a rough looking one"
	}
	noun := m.is(i+1, cFitting, "part") || m.strangeThing(i+1) && len(m.text(i+1)) > 3 && !adverb(m.text(i+1))
	return noun && m.is(i-1, cDeterminer, "") && !m.isNum(i-1)
}

// distance returns how far an item is from an attribute that can be said of it.
func (m *message) distance(x *mentionOf, a attribute, items []mentionOf) float64 {
	from, to, behind := min(x.at, a.at), max(x.at, a.at), x.at > a.at
	d := float64(to - from)
	for j := from + 1; j < to; j++ {
		if m.factual(j) || m.is(j, cPresent, "") || m.is(j, cPart, "air") || m.is(j, cPart, "thermostat") || m.inList(j, listToo) || m.is(j, cHint, "too") {
			d -= 0.8 // facts in a row are one thing's: "tank 2 gal, also 2013, good"
		}
	}
	commas := float64(m.separators(from, to))
	switch {
	case behind && a.what == "cond" && m.adjectives(a.at, x.at):
		d = 1
	case behind:
		d += m.beforeNoun(x, a, commas)
	case !m.factualRun(x.at, a.at):
		d += 1.5 * commas
	}
	for j := from + 1; j < to; j++ {
		d += m.parts(j, a, items)
		if behind && m.text(j) == "no" {
			d += 6
		}
	}
	return d
}

// adjectives tells whether the bad condition at item i begins a row of what is told of the thing at item x
// before its name: "corroded, six year old tank". The talk of a thing before it goes on to "corroded".
func (m *message) adjectives(i, x int) bool {
	if !m.isMark(i+1, ",") || m.is(i, cCond, "good") || m.clauseStart(i) != i || x-i > 6 || x-i < 3 {
		return false
	}
	if m.left(i, 10, true, func(k int) bool { return m.is(k, cItem, "") || m.is(k, cPart, "") }) >= 0 {
		return false
	}
	for k := i + 2; k < x; k++ {
		if !m.factual(k) && !m.says(k, "old", "a", "the") && !m.is(k, cUnit, "") {
			return false
		}
	}
	return true
}

// beforeNoun returns how much farther an item is for standing behind its attribute: a little
// in "2 yr old PRV", a lot beyond a comma.
func (m *message) beforeNoun(x *mentionOf, a attribute, commas float64) float64 {
	d := 6*commas + 0.5
	if (a.what == "cond" || a.dated()) && m.copulaBefore(a.at) && !(x.at == a.at+1 && m.says(a.at-1, "a", "an", "un", "una")) {
		d += 5 // "the regulator … is from 2021, the tank …"
	}
	if commas == 0 && m.clauseStart(x.at) != m.clauseStart(a.at) && !m.is(x.at-1, cDeterminer, "") && m.text(x.at-1) != "this" {
		d += 4 // "the age is anybody's guess and prv in 2018"
	}
	if a.dated() && commas == 0 && m.ownsPredicate(x.at) && m.subjectBefore(a.at) {
		d += 6 // "heater is a 2016 tank is 12 years old"
	}
	if a.what == "unknown" && commas == 0 && !m.is(x.at-1, cDeterminer, "") && m.left(a.at, 4, false, func(k int) bool { return m.is(k, cItem, "") }) >= 0 {
		d += 4 // "reg has no date check valve went in in 2018"
	}
	if a.what == "cond" {
		d += 2
		if m.items[x.at].seg != m.items[a.at].seg {
			d += 6
		}
		if m.says(a.at, "working", "good", "bad") {
			d--
		}
	}
	return d
}

// ownsPredicate tells whether something else is told of the thing at item i right behind it.
func (m *message) ownsPredicate(i int) bool {
	return m.inList(i+1, listLinks) || m.says(i+1, "has", "no") || m.is(i+1, cCond, "") || m.is(i+1, cHint, "wentin") || m.is(i+1, cDid, "installed") || m.numIs(i+1, roleYear, roleAge)
}

// subjectBefore tells whether the thing that the date at item i is told of stands before it, with only words of being
// or of putting in between: "heater is a", "recirc went in in".
func (m *message) subjectBefore(i int) bool {
	k := i - 1
	for m.inList(k, listLinks) || m.is(k, cHint, "wentin") || m.is(k, cDid, "installed") || m.says(k, "a", "in", "from") {
		k--
	}
	return k < i-1 && m.is(k, cItem, "")
}

// parts returns how much an item between an attribute and its thing parts them.
func (m *message) parts(j int, a attribute, items []mentionOf) (d float64) {
	if m.is(j, cItem, "") && !m.taken(j) && !m.standsAside(j, a, items) {
		d += 6
	}
	if m.items[j].num != nil && m.items[j].role == roleReading {
		d += 3
	}
	if m.items[j].point != "" && a.what == "cond" {
		d += 3
	}
	if m.is(j, cDid, "") && a.what != "temp" && a.what != "setting" {
		d++
	}
	if m.says(j, "and", "y", "but", "with") {
		d += 0.5
	}
	return d
}

// standsAside tells whether another item between only says where something is: "tank above
// the heater".
func (m *message) standsAside(j int, a attribute, items []mentionOf) bool {
	return m.items[j].point != "" && m.pointUsed(j) ||
		(a.what == "cond" || a.dated()) && m.landmarkItem(j, items) ||
		m.is(j, cItem, "drain_valve") && m.heaterWith(j, a.at)
}

package intents

import (
	"strings"

	"lazyhand/assess"
)

// Lists of the lexicon that these rules know.
var (
	listHowOld         = listOf("how old")
	listHouseWords     = listOf("house words")
	listBeside         = listOf("beside")
	listStandsForOther = listOf("stands for other")
	listTookOut        = listOf("took out")
	listOldOne         = listOf("old one")
	listAnother        = listOf("another")
)

// What is told of an old part, of a landmark or of something that is no equipment.

// landmarkItem tells whether the item at i only says where another one before it is:
// "the gauge by the reg".
func (m *message) landmarkItem(i int, items []mentionOf) bool {
	k := m.prepOf(i)
	if m.text(k) == "on" {
		return m.is(k-1, cItem, "") // "gauge on the PRV is busted"
	}
	if !m.besideOf(i) {
		return false
	}
	for _, x := range items {
		if x.at < k && x.at >= k-4 && m.items[x.at].seg == m.items[i].seg {
			return true
		}
	}
	return false
}

// onlyPlaces tells whether the thing at item i says where another one named before it in its clause
// is, so that nothing goes on about it: "the prv is by the heater. tag says 2009".
func (m *message) onlyPlaces(i int) bool {
	if !m.besideOf(i) {
		return false
	}
	thing := func(k int) bool { return m.is(k, cItem, "") && m.items[k].seg == m.items[i].seg }
	return m.left(i, 7, false, thing) >= 0
}

// prepOf returns where the word stands that may place something by the item at i.
func (m *message) prepOf(i int) int {
	if k := i - 1; m.is(k, cDeterminer, "") || m.is(k, cHint, "possessive") {
		return k - 1
	}
	return i - 1
}

// besideOf tells whether the item at i only says where something is: "above the heater".
func (m *message) besideOf(i int) bool {
	return m.inList(m.prepOf(i), listBeside)
}

// ofEquipment are classes of words that a year of something installed may follow.
var ofEquipment = setOf(cItem, cPart, cFuel, cMaterial, cCond, cDid, cPresent, cHint)

// ofAnotherNoun tells whether a fact in a sentence that names no equipment is told of
// something else than what was named before: "he measured 55 three years ago", "old
// sheet from 2022", "sprinklers are weak", "cant get a number that holds".
func (m *message) ofAnotherNoun(a attribute) bool {
	s := &m.sents[m.items[a.at].sent]
	switch a.what {
	case "age":
		return m.datedElse(a.at) // "calentador de paso, house is 78 yrs old"
	case "unknown":
		return m.itemIn(m.items[a.at].sent) != "" // "the needle's bent so who knows"
	case "ago":
		for k := s.from; k < s.to; k++ {
			if m.is(k, cDid, "") || m.is(k, cHint, "wentin") || m.text(k) == "put" || m.is(k, cPart, "new") || m.text(k) == "new" {
				return false
			}
		}
		return !m.itsA(a.at)
	case "year":
		switch m.text(a.at - 1) {
		case "from", "del", "dated":
			n := a.at - 2
			if n < s.from || m.items[n].mark || m.items[n].site {
				return false
			}
			if m.items[n].num != nil {
				return m.items[n].role == roleReading || m.items[n].role == roleIgnored // "says 74 from 2018"
			}
			return !m.items[n].kinds.meets(ofEquipment) && !m.inList(n, listLinks) && len(m.text(n)) > 4 && !m.signsOf(n).has(signThing)
		}
	case "cond":
		switch {
		case m.is(a.at, cCond, "failed") && m.otherSubject(a.at):
			return true
		case strings.HasPrefix(m.text(a.at), "rust"):
			return m.says(a.at+1, "hot", "cold") || m.kinds.has(cWater) && m.sentenceMeets(m.items[a.at].sent, setOf(cWater))
		case !m.strongCond(a.at):
			return !m.saidOfIt(a.at) && !(a.at <= s.from+1) && m.left(a.at, 4, true, func(k int) bool {
				if m.inList(k, listStandsForOther) {
					return m.text(k) != "that" || k == s.from
				}
				return false
			}) < 0
		}
	}
	return false
}

var oldFactGate = onlyWithList(listTookOut, listOldOne)

// oldFact tells whether the fact at an item is of the part taken out: "old one was a 2004".
func (m *message) oldFact(at int) bool {
	if m.shut(oldFactGate) {
		return false
	}
	s := &m.sents[m.items[at].sent]
	for k := at - 1; k >= s.from && k >= at-6; k-- {
		switch {
		case m.inList(k, listTookOut):
			if m.is(k, cDid, "installed") || m.text(k) == "took" && m.text(k+1) != "out" {
				return false
			}
			for j := k + 1; j < at; j++ {
				if m.is(j, cDid, "installed") || m.items[j].mark || m.text(j) == "and" || m.text(j) == "y" {
					return false
				}
			}
			return m.replaces()
		case m.says(k, "in place of", "instead of", "where"):
			return false
		case m.inList(k, listOldOne):
			if p := m.text(k - 1); p == "the" || p == "of" || p == "of the" {
				if m.left(k, 4, true, func(j int) bool { return m.text(j) == "place" || m.text(j) == "instead" || m.text(j) == "where" }) >= 0 {
					return false // "in place of the old one"
				}
			}
			if m.inList(k-1, listLinks) || m.inList(k-1, listHowOld) {
				return false // "heater is old like 16 years", "ya viejo"
			}
			if m.oldOneTold(k, at) {
				return false
			}
			for j := k + 1; j < at; j++ {
				if m.text(j) == "out" && j > k+1 && !m.is(k, cDid, "") {
					return false // "old gas one out, 50 gallon heat pump one in"
				}
				if strings.HasPrefix(m.text(j), "new one") || m.is(j, cPart, "new") {
					return false // "old one was plastic, new one brass"
				}
				if t := m.text(j); oneOf(t, "for", "with", "por") && m.inList(j+1, listAnother) {
					return false // "swapped the old one for a brass one"
				}
			}
			if (m.text(k) == "old" || m.text(k) == "viejo" || m.text(k) == "vieja") && (m.items[max(k-1, 0)].num != nil || m.text(k-1) == "years") {
				return false
			}
			for _, v := range m.verbs {
				if v.done && v.what == "replaced" && v.at > k && v.at < at && (v.at == m.changeVerb(v) || strings.HasPrefix(m.text(v.at), "new one")) {
					return false // "pulled the old electric and stood up an 80 gal"
				}
				if in := m.itemIn(m.items[at].sent); in != "" && v.object != "" && v.object != in && m.items[v.at].sent != m.items[at].sent {
					continue // "changed the drain valve. Heater is old, 2001"
				}
				if v.done && (v.what == "replaced" || v.what == "installed" && v.object == "drain_valve") {
					return true
				}
			}
		}
	}
	return false
}

// oldOneTold tells whether what is told of the old one at item k has ended before item at: "new heater in
// (old one split a seam), 50 gal gas". "Old one was a 2004, 40 gal" goes on.
func (m *message) oldOneTold(k, at int) bool {
	words := 0
	for j := k + 1; j < at; j++ {
		switch {
		case m.isMark(j, ")"), m.isMark(j, ",") && words > 0:
			return true
		case m.items[j].mark:
			words = 0
		case m.factual(j) && !m.is(j, cCond, ""):
			return false
		case m.text(j) != "one":
			words++
		}
	}
	return false
}

// oldOneOf returns the thing named behind a fact of "the old one", which the new one is to take the place
// of: "old one's stuck, new reg going in friday".
func (m *message) oldOneOf(a attribute, items []mentionOf) *mentionOf {
	if a.what != "cond" && !a.dated() {
		return nil
	}
	k := a.at - 1
	for m.inList(k, listLinks) || m.is(k, cDeterminer, "") && !m.is(k, cPart, "old") || m.says(k, "from", "all", "completely", "just") {
		k--
	}
	if m.says(k, "one", "ones", "s") {
		k--
	}
	if !m.is(k, cPart, "old") || k == a.at-1 && m.text(k) == "old" {
		return nil
	}
	for n := range items {
		if x := &items[n]; x.at > a.at {
			if m.items[x.at].sent <= m.items[a.at].sent+1 && m.is(x.at-1, cPart, "new") && compatible(a.what, x.item, m.text(a.at), m.items[a.at].value) {
				return x
			}
			return nil
		}
	}
	return nil
}

// ofNewOne tells whether the fact at an item is told of a new part right before it: "took out the tank, hung a
// new 4.5 gal".
func (m *message) ofNewOne(at int) bool {
	return m.is(at-1, cPart, "new") || strings.HasSuffix(m.text(at-1), " new")
}

// carriedOld tells whether the item named last before item at is one taken out.
func (m *message) carriedOld(at int, items []mentionOf) bool {
	old := false
	for _, x := range items {
		if x.at < at {
			old = x.old
		}
	}
	return old
}

// changeVerb returns where a verb stands that puts in a heater after the old one
// was taken out, else -1.
func (m *message) changeVerb(v verb) int {
	if m.changeout(v.at) > 0 {
		return v.at
	}
	return -1
}

// byPRV tells whether the test point at item k is named after the regulator, which a
// word behind it may be of: "después de la reguladora 116, ya está pegada".
func (m *message) byPRV(k int) bool {
	if p := m.items[k].point; p != string(assess.AfterPRV) && p != string(assess.Street) {
		return false
	}
	for _, w := range [...]string{"reguladora", "regulador", "prv", "regulator", " reg"} {
		if strings.HasSuffix(m.text(k), w) {
			return true
		}
	}
	return false
}

// saidLast tells whether the condition at i closes the list of facts of the only thing
// that its sentence names: "Regulator untouched, 2017, good."
func (m *message) saidLast(i int, items []mentionOf) bool {
	last := i
	if m.is(i+1, cHint, "looks") {
		last++ // "rough looking"
	}
	if !m.closes(last) || !m.isMark(i-1, ",", "-", "/", ";") && m.text(i-1) != "and" && m.text(i-1) != "y" {
		return false
	}
	n, from := 0, 0
	for _, x := range items {
		if m.items[x.at].sent == m.items[i].sent {
			if n++; x.at > i {
				return false
			}
			from = x.at
		}
	}
	if n != 1 || m.text(i-1) != "," && !m.factual(i-2) {
		return false
	}
	for k := from; k < i; k++ {
		if m.items[k].point != "" || m.items[k].role == roleReading || m.is(k, cSym, "") {
			return false
		}
	}
	return true
}

// factLine finds the thing that a year or a condition alone on its line is told of, in a
// list of facts line by line: "heater tag / 50 gal / gas / 2016".
func (m *message) factLine(a attribute) string {
	if a.what != "year" && a.what != "cond" && a.what != "age" {
		return ""
	}
	s := m.items[a.at].sent
	se := &m.sents[s]
	if s == 0 || m.text(se.from-1) != "\n" || se.to-se.from > 10 {
		return ""
	}
	for k := se.from; k < se.to; k++ {
		if k != a.at && !m.items[k].mark && !m.factual(k) && !m.is(k, cAge, "") && !m.is(k, cHint, "factword") &&
			!m.isAny(k, cPart, "air", "thermostat") {
			return ""
		}
	}
	for j := s - 1; j >= 0 && j >= s-6; j-- {
		facts := false
		for k := m.sents[j].to - 1; k >= m.sents[j].from; k-- {
			if v, ok := m.val(k, cItem); ok && !m.taken(k) {
				if c := m.itemCode(k, v); c != "gauge" && compatible(a.what, c, m.text(a.at), m.items[a.at].value) {
					return c
				}
				return ""
			}
			facts = facts || m.factual(k)
			if m.items[k].role == roleSize && m.items[k].value >= 20 || m.is(k, cFuel, "") && !m.gasTalk(k) {
				return "heater"
			}
			if m.items[k].role == roleReading || m.items[k].point != "" {
				return ""
			}
		}
		if !facts {
			return ""
		}
	}
	return ""
}

// heaterWith tells whether the drain valve at item x is only named as what a heater has,
// before a comma and a fact at item a: "50 gal gas with a plastic drain, 2011".
func (m *message) heaterWith(x, a int) bool {
	if m.separators(x, a) == 0 {
		return false
	}
	with := m.left(x, 3, true, func(k int) bool { return m.text(k) == "with" || m.text(k) == "w/" || m.text(k) == "w" })
	return with > 0 && (m.is(with-1, cFuel, "") || m.items[with-1].role == roleSize || m.is(with-1, cItem, "heater"))
}

// otherSubject tells whether the clause of the condition at item i names what it is said of,
// and that is no equipment: "supply line burst", "burst pipe", "gps died".
func (m *message) otherSubject(i int) bool {
	thing := func(k int) bool { return m.is(k, cFitting, "part") || m.is(k, cFixture, "") }
	start := m.clauseStart(i)
	for k := start; k < i; k++ {
		if m.is(k, cItem, "") || m.is(k, cPart, "") || m.is(k, cHint, "prvpart") {
			return false
		}
		if thing(k) || m.is(k, cDid, "") {
			return true
		}
	}
	if m.is(i+1, cDeterminer, "") {
		return thing(i + 2) // "se reventó la manguera"
	}
	return thing(i+1) || i > start && m.strangeThing(i-1) && len(m.text(i-1)) > 2 && m.text(i-1) != "ones" && !adverb(m.text(i-1))
}

// adverb tells whether a word says how, not what: "completely", but not "supply", "assembly".
func adverb(s string) bool {
	return strings.HasSuffix(s, "ly") && !strings.HasSuffix(s, "ply") && !strings.HasSuffix(s, "mbly")
}

// datedElse tells whether the clause of the date at item i tells it of a fixture or of a pressure:
// "her washing machine is 14 years old", "the city put a new meter in last week".
func (m *message) datedElse(i int) bool {
	other := false
	for k := m.clauseStart(i); k < i; k++ {
		it := &m.items[k]
		if it.kinds.meets(ofParts) {
			return false
		}
		other = other || m.inList(k, listHouseWords) || it.point != "" || it.kinds.has(cFixture) ||
			it.num != nil && it.unit == "" && (it.role == roleIgnored || it.role == roleReading)
	}
	return other
}

// ofParts are the classes of words that tell of equipment.
var ofParts = setOf(cItem, cPart, cFuel, cMaterial, cCond)

package intents

import (
	"slices"
	"strings"

	"lazyhand/assess"
)

// Lists of the lexicon that these rules know.
var (
	listOlder         = listOf("older")
	listHowMany       = listOf("how many")
	listHousesWithout = listOf("houses without")
	listCountedSince  = listOf("counted since")
	listNotPutIn      = listOf("not put in")
)

// Questions of the office after all houses: which of them have or lack a thing, how many things
// were put in.

// inHouses are the things that are told apart in all houses.
var inHouses = []string{"prv", "expansion_tank", "heater", "check_valve", "softener", "recirc"}

// asksWhich reads which of all houses a sentence that ofManyHouses finds asks for: those without a
// thing, "which houses have no tank", or where it is bad, "any houses with a dead prv".
func (m *message) asksWhich(s int) {
	of, at := assess.Equipment{}, -1
	for i := m.firstOf(s); i < m.sents[s].to; i++ {
		if v := m.thingAt(i); at < 0 && slices.Contains(inHouses, v) {
			of.Item, at = assess.Item(v), i
		}
		if m.items[i].num != nil || m.is(i, cAge, "") || m.inList(i, listOlder) {
			return // "which houses have a prv older than 15 years"
		}
	}
	if at < 0 {
		return
	}
	none := m.left(at, 5, true, func(k int) bool {
		return m.is(k, cNeg, "") || m.is(k, cLacks, "") || m.inList(k, listHousesWithout)
	}) >= 0 || m.is(at, cLacks, "") || m.is(at+1, cAbsent, "") || denies(m.text(at))
	bad := m.anyIn(s, func(k int) bool { return m.isAny(k, cCond, "failed", "suspect") }, setOf(cCond))
	switch {
	case bad:
		of.Condition = assess.Failed
	case none:
		of.Present = new(bool)
	default:
		return
	}
	m.asks = slices.DeleteFunc(m.asks, func(a asked) bool { return a.About == AskSummary })
	a := m.addAsk(at, AskWhich)
	a.Of = &of
}

// asksCount tells whether a sentence asks how many of a thing were put in, and reads of which: "how
// many prvs this year", "cuántas reguladoras cambiamos este mes". What lies on a truck is no matter
// of the record.
func (m *message) asksCount(s int) bool {
	first := m.firstOf(s)
	if !m.inList(first, listHowMany) && !(m.text(first) == "how" && m.text(first+1) == "many") ||
		m.site != nil || !m.shortSentence(s, 10) {
		return false
	}
	at := m.right(first, 3, false, func(k int) bool { return m.thingAt(k) != "" })
	if at < 0 || m.anyIn(s, func(k int) bool { return m.is(k, cCond, "") || m.holdsCue(k, cueForeign) }, ^classSet(0)) {
		return false
	}
	item := m.thingAt(at)
	if !slices.Contains(inHouses[:3], item) {
		return false
	}
	for i := at + 1; i < m.sents[s].to; i++ {
		for w := range strings.FieldsSeq(m.text(i)) {
			if m.p.lex.inList(w, listNotPutIn) {
				return false
			}
		}
	}
	for i := at + 1; i < m.sents[s].to; i++ {
		if m.meets(i, setOf(cDid, cBase, cDo)) || m.timeWordAt(i) || m.inList(i, listCountedSince) ||
			strings.HasSuffix(m.text(i), " year") || strings.HasSuffix(m.text(i), " month") || strings.HasSuffix(m.text(i), " week") || m.says(i, "este ano", "este mes", "esta semana") || periodDays[m.text(i)] > 0 {
			m.asks = slices.DeleteFunc(m.asks, func(a asked) bool { return a.About == AskSummary })
			m.addAsk(at, AskCount).Of = &assess.Equipment{Item: assess.Item(item)}
			return true
		}
	}
	return false
}

// thingAt names the thing at item i, one or many, "" for none.
func (m *message) thingAt(i int) string {
	if v, ok := m.val(i, cItem); ok {
		return m.itemCode(i, v)
	}
	return manyThings[m.text(i)]
}

var manyThings = map[string]string{"prvs": "prv", "regs": "prv", "regulators": "prv", "reguladores": "prv", "reguladoras": "prv",
	"tanks": "expansion_tank", "exp tanks": "expansion_tank", "expansion tanks": "expansion_tank", "tanques": "expansion_tank",
	"heaters": "heater", "water heaters": "heater", "boilers": "heater", "calentadores": "heater"}

package intents

import "slices"

// Lists of the lexicon that these rules know.
var (
	listThingApart = listOf("thing apart")
)

// Crews talk of much that stands in no customer's house: what is on the truck or
// at the supply house, tyres, golf, prices, rules of thumb. Such talk is full of
// the trade's words and numbers; this room keeps it out of the record. The lines
// "aside VALUE:" of the lexicon list the words that give it away:
//
//	all   all that its clause says is of it: "tire", "blood pressure"
//	ours  the crew's own things and the trade's at large: "on my truck", "lead time"
//	shop  the same unless a house is known: "the shop", "this neighborhood"

// reported are classes that tell something of a house in a clause beside an aside.
var reported = setOf(cCond, cSym, cState, cDischarge, cNeg, cLacks)

var denied = setOf(cNeg, cLacks)

// asides takes their meaning from clauses that speak of no house, and from the
// sentence about them unless another clause of it reports something.
func (m *message) asides() {
	m.oldQuotes()
	for s := range m.sents {
		many := m.ofManyHouses(s)
		if many {
			m.asksWhich(s)
		}
		if many || m.asksIfAny(s) || m.asksWhatIf(s) {
			if m.site != nil {
				m.addAsk(m.sents[s].from, AskHistory) // "any dark water at 12 Elm?"
			}
			for k := m.sents[s].from; k < m.sents[s].to; k++ {
				m.mute(k)
			}
		}
	}
	if m.kinds.has(cAside) {
		m.asideClauses()
	}
	m.moments = slices.DeleteFunc(m.moments, func(w moment) bool { return m.items[w.at].muted })
}

// asideClauses takes their meaning from clauses that name a thing of no house.
func (m *message) asideClauses() {
	known := m.site != nil || m.ctx.Site != ""
	for i := range m.items {
		v, ok := m.val(i, cAside)
		if !ok || v == "shop" && (known || m.is(i+1, cItem, "")) { // "bringing the prv down to 57"
			continue
		}
		s := m.items[i].sent
		se := &m.sents[s]
		if se.asking {
			continue
		}
		seg := m.items[i].seg
		from, to := m.asideClause(i, v)
		ours := func(k int) bool { return m.items[k].seg == seg && from <= k && k < to }
		if v != "all" && (m.acts(s, ours) || m.anyIn(s, ours, denied)) {
			continue // "put in the tank that was on my truck", "no part on the truck"
		}
		if v == "all" && known && m.siteIn(s, ours) {
			continue // "heater at the tire shop, 14 Maple"
		}
		others := func(k int) bool { return !ours(k) }
		whole := (v == "all" && !known && !m.measures(s, others) || !m.acts(s, others)) && !m.anyIn(s, others, reported) &&
			!(m.anyIn(s, others, setOf(cColor)) && m.anyIn(s, others, setOf(cWater))) // "red dirt on my truck, orange water too"
		whole = whole && !m.standsApart(s, others)
		for k := se.from; k < se.to; k++ {
			if whole || ours(k) {
				m.mute(k)
			}
		}
		se.aside = se.aside || whole
	}
}

// asideClause returns where the clause of an aside at item i begins and ends. One that is told behind "and", of a
// thing of no house at all, is no part of what was measured before it: "front bib 66 and her blood pressure's 140".
func (m *message) asideClause(i int, v string) (from, to int) {
	s := m.items[i].sent
	from, to = m.sents[s].from, m.sents[s].to
	if begins := m.clauseStart(i); v == "all" && m.says(begins-1, "and", "y") && m.measures(s, func(k int) bool { return k < begins }) {
		return begins, m.clauseEnd(i)
	}
	return from, to
}

// ofNoHouse tells whether the sentence of item i speaks of things that stand in no house, and the
// message names none: "whoever borrowed my nail gun, it wants 100 psi not 60".
func (m *message) ofNoHouse(i int) bool {
	return m.site == nil && m.ctx.Site == "" && m.sentenceIs(m.items[i].sent, cAside, "all")
}

var oldQuoteGate = onlyWith(cHint, "quoted")

// oldQuotes takes the meaning from a clause about a price of years gone by: "they quoted
// her $680 for a prv in 2021".
func (m *message) oldQuotes() {
	if m.shut(oldQuoteGate) {
		return
	}
	for i := range m.items {
		if !m.is(i, cHint, "quoted") {
			continue
		}
		seg := m.items[i].seg
		old := m.right(i, 9, true, func(k int) bool {
			it := &m.items[k]
			return it.seg == seg && (it.num != nil && it.unit == "" && year(it.value) && int(it.value) < m.ctx.Today.Year ||
				m.text(k) == "last year" || m.text(k) == "ago")
		})
		for k := m.sents[m.items[i].sent].from; old >= 0 && k <= old; k++ {
			if m.items[k].seg == seg && m.items[k].point == "" {
				m.mute(k)
			}
		}
	}
}

// acts tells whether the items of sentence s that of picks hold a deed, something
// to do at a time, or a number at a test point.
func (m *message) acts(s int, of func(k int) bool) bool {
	se := &m.sents[s]
	for k := se.from; k < se.to; k++ {
		if !of(k) {
			continue
		}
		switch {
		case m.is(k, cDid, "") || m.is(k, cDo, "") && m.tellsTime(s) || m.is(k, cHint, "wentin") || m.newPart(k) >= 0:
			return true
		case m.items[k].point != "" && (m.numberBy(k-1, -1) || m.numberBy(k+1, 1)):
			return true
		case m.items[k].point != "" && !m.items[k].weak &&
			m.right(k, 7, true, func(j int) bool { return m.isNum(j) && pressureUnit(m.items[j].unit) }) >= 0:
			return true // "hose bib by the side gate is making 96 psi"
		}
	}
	return false
}

// measures tells whether the items of sentence s that of picks hold a number right beside a
// tap told in full, as a tyre's never is: "bowled a 160, rear bib 71".
func (m *message) measures(s int, of func(k int) bool) bool {
	for k := m.sents[s].from; k < m.sents[s].to; k++ {
		if of(k) && m.items[k].point != "" && !m.items[k].weak && (m.numberBy(k-1, -1) || m.numberBy(k+1, 1)) {
			return true
		}
	}
	return m.anyIn(s, of, setOf(cStatic, cFlowing)) && m.acts(s, of)
}

// standsApart tells whether the items of sentence s that of picks speak of the trade in clauses
// of their own, and the aside's clause refers to none of it: "10 yr old prv, parts counter says
// Thursday", not "got a 40 gal heater, it's on my truck".
func (m *message) standsApart(s int, of func(k int) bool) bool {
	trade, told := false, false
	for k := m.sents[s].from; k < m.sents[s].to; k++ {
		switch {
		case !of(k):
			if m.inList(k, listThingApart) {
				return false
			}
		case m.items[k].kinds.has(cItem) && !m.is(k, cItem, "gauge") || m.items[k].point != "" && !m.items[k].weak:
			trade = true
		case m.items[k].num != nil && (m.items[k].value >= leastPSI || m.items[k].unit != ""),
			m.items[k].kinds.meets(setOf(cMaterial, cDid, cDo, cBase, cFuel)):
			told = true
		}
	}
	return trade && told
}

// numberBy tells whether one of the three items from k on in the direction of
// step is a number.
func (m *message) numberBy(k, step int) bool {
	for n := 0; n < 3 && k >= 0 && k < len(m.items); k += step {
		switch {
		case m.isNum(k):
			return true
		case !m.is(k, cDeterminer, "") && m.text(k) != "of" && m.text(k) != "head":
			n++
		}
	}
	return false
}

// mute makes item k a word or a number without meaning.
func (m *message) mute(k int) {
	it := &m.items[k]
	if it.mark || it.site {
		return
	}
	it.point, it.weak, it.muted = "", false, true
	if it.num != nil {
		m.setRole(k, roleIgnored, "of no house")
		return
	}
	m.unsay(k)
}

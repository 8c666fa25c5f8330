package intents

import "lazyhand/assess"

// Lists of the lexicon that these rules know.
var (
	listHowLongItRan = listOf("how long it ran")
	listKeepsDown    = listOf("keeps down")
)

// seenSign is an item of a clause with its signs.
type seenSign struct {
	at  int
	set signSet
}

// readSigns reads the symptoms of sentences whose words no phrase tells, clause by
// clause, then over the whole sentence.
func (m *message) readSigns() {
	var room [24]seenSign
	for s := range m.sents {
		se := &m.sents[s]
		if se.asking && !se.tells || se.aside {
			continue
		}
		rules := symptomSigns
		known := m.symptomIn(s)
		if known == assess.ReliefDischarge {
			rules = rules[:2] // "no way for the relief to dump, its outlet is plugged"
		}
		seen, all := room[:0], signSet(0)
		for i := se.from; i < se.to && len(seen) < cap(seen); i++ {
			if set := m.signsOf(i); set != 0 {
				seen = append(seen, seenSign{i, set})
				all |= set
			}
		}
		if all&^naming == 0 {
			continue
		}
		found := false
		for from := 0; from < len(seen); {
			to := from + 1
			for to < len(seen) && m.items[seen[to].at].seg == m.items[seen[from].at].seg {
				to++
			}
			if known == "" || len(rules) == 2 && m.symptomInClause(seen[from].at) {
				found = m.signsTell(rules, seen[from:to], false) || found
			} else if !m.symptomInClause(seen[from].at) {
				found = m.signsTell(symptomSigns, seen[from:to], false) || found
			}
			from = to
		}
		if !found && len(seen) > 1 && (known == "" || len(rules) == 2) {
			m.signsTell(rules, seen, true)
		}
	}
}

// symptomIn returns the first symptom present that is known of sentence s.
func (m *message) symptomIn(s int) assess.SymptomName {
	for k := range m.symptoms {
		if m.items[m.symptoms[k].at].sent == s && !m.symptoms[k].Absent {
			return m.symptoms[k].Symptom.Symptom
		}
	}
	return ""
}

// symptomInClause tells whether a symptom, there or not, is known of the clause of item i.
func (m *message) symptomInClause(i int) bool {
	for k := range m.symptoms {
		if at := m.symptoms[k].at; m.items[at].sent == m.items[i].sent && m.items[at].seg == m.items[i].seg {
			return true
		}
	}
	return false
}

// deniedIn tells whether a symptom is known to be absent by sentence s.
func (m *message) deniedIn(name assess.SymptomName, s int) bool {
	for k := range m.symptoms {
		if x := &m.symptoms[k]; x.Absent && x.Symptom.Symptom == name && m.items[x.at].sent == s {
			return true
		}
	}
	return false
}

// pointers are the classes of the hands of a gauge, whose colours tell nothing of the water.
var pointers = setOf(cNow, cPeak)

// signsOf collects the signs of the words of item i.
func (m *message) signsOf(i int) signSet {
	if i < 0 || i >= len(m.items) {
		return 0
	}
	it := &m.items[i]
	if it.mark || it.site || it.num != nil || it.muted || it.kinds.has(cSkip) && it.n > 1 {
		return 0
	}
	if it.kinds.has(cRelief) {
		return signRelief
	}
	if it.n > 1 && it.kinds.meets(pointers) {
		return 0 // "black needle"
	}
	if v, ok := m.val(i, cItem); ok {
		if v == "gauge" {
			return signGauge
		} else if v == "drain_valve" {
			return signDrain
		}
		return 0
	}
	if it.kinds.has(cStatic) {
		return signShut
	}
	var set signSet
	if it.kinds.has(cNeg) {
		set |= signDeny
	}
	for k := it.tok; k < it.tok+it.n; k++ {
		t := &m.toks[k]
		if t.kind != word {
			continue
		}
		e := m.p.lex.of(t)
		if !e.signs && it.n == 1 && it.tags != nil && it.text != t.text {
			e = m.p.lex.look(it.text) // "prt" is a port here, and no other word
		} else if !e.signs {
			e = m.signedInstead(t, e)
		}
		if !e.signs {
			continue
		}
		set |= e.sign.alone
		if len(e.sign.pairs) > 0 && k+1 < len(m.toks) && m.toks[k+1].kind == word {
			set |= e.sign.with(m.p.lex.of(&m.toks[k+1]))
		}
	}
	if set.has(signPoor) && m.bySoMuch(i) {
		set &^= signPoor
	}
	return set
}

// bySoMuch tells whether a word of falling at item i says by how much, as no complaint does: "it falls off 25
// psi when somebody showers".
func (m *message) bySoMuch(i int) bool {
	n := i + 1
	for m.says(n, "off", "down", "by", "like", "way") || m.inList(n, listAbout) || m.is(n, cHint, "hedge") {
		n++
	}
	return m.isNum(n) && m.numIs(n, roleIgnored) && (m.items[n].why == "a difference" || m.text(n-1) == "by")
}

// signedInstead finds a word with signs that stands behind a token of none: the
// singular, "the stickers gone", or what it is a misspelling of.
func (m *message) signedInstead(t *token, e *entry) *entry {
	if n := len(t.text) - 1; e.one != nil && e.one.signs {
		return e.one
	} else if e == stranger && n > 2 && t.text[n] == 's' {
		if one := m.p.lex.look(t.text[:n]); one.signs {
			return one
		}
	}
	for _, id := range t.cand {
		if w := m.p.lex.byID[id]; w.signs {
			return w
		}
	}
	return stranger
}

// signsTell adds the first symptom that the signs seen in a clause, or in a whole sentence, tell.
func (m *message) signsTell(rules []symptomSign, seen []seenSign, whole bool) bool {
	all := signSet(0)
	for k := range seen {
		all |= seen[k].set
	}
	for n := range rules {
		r := &rules[n]
		if all&r.says == 0 {
			continue
		}
		if whole && r.close {
			continue
		}
		for k, x := range seen {
			if x.set&r.says == 0 || m.is(x.at, cSym, "") || x.set&r.says&(signDark|signRust|signGone) != 0 && m.coloursThing(x.at) {
				continue
			}
			if (r.name == assess.DarkWater || r.name == assess.RustyWater) && (m.heardLike(x.at) || x.set.has(signRust) && m.is(x.at, cCond, "") && m.is(x.at-1, cItem, "")) {
				continue // "sounds like a coffee pot", "tank's rusted at the nipple, 62 kitchen"
			}
			if r.name == assess.DarkWater && x.set.has(signRust) {
				continue // "dark orange"
			}
			if r.name == assess.RustyWater && m.ofThing(x.at) {
				continue // "64 kitchen, reg is rusted"
			}
			by, ok := r.met(seen, k)
			if other := func(k int) bool {
				return m.is(k, cItem, "") && !m.is(k, cItem, "heater") && m.items[k].seg == m.items[x.at].seg
			}; r.name == assess.ReliefBlocked && (m.right(x.at, 3, false, other) >= 0 || other(x.at-1)) {
				continue // "somebody had valved off the exp tank", "T&P dripping, drain valve seized"
			}
			if r.name == assess.ReliefDischarge && m.reliefTried(x.at) {
				continue // "relief lifts fine and reseats"
			}
			if r.name == assess.Creep && (m.climbsToPeak(x.at) || m.comesBack(x.at)) {
				continue // "the lazy hand went up to 133", "closed everything and it went up to 108"
			}
			if r.name == assess.Leak && m.is(x.at+2, cFuel, "") {
				continue // "the heater runs on gas"
			}
			if r.name == assess.NoWater &&
				(m.is(x.at, cDry, "") && (m.reliefNear(x.at) || m.dryNow(x.at)) || m.leakIn(m.items[x.at].seg, m.items[x.at].sent) || m.isAny(x.at-1, cSym, "dark_water", "rusty_water") || m.text(x.at-1) == "has" ||
					m.is(x.at, cCond, "") && (m.isItemNear(x.at) || m.ofThing(x.at)) || m.text(x.at+1) == "at" && m.isNum(x.at+2)) {
				continue // "the drip at the faucet quit", "house gauge is dead", "the needle at the tap stopped at 62"
			}
			if !ok || m.ofSomethingElse(x.at) || m.lookedFor(x.at) || m.supposed(x.at) || r.name == assess.Leak && m.repaired(x.at) {
				continue
			}
			if m.deniedIn(r.name, m.items[x.at].sent) {
				return true // "agua limpia, nada de agua negra": the words denied it
			}
			if r.name == assess.ReliefBlocked {
				by = -1 // "no T&P at all, its hole is plugged"
			}
			m.addSymptom(x.at, r.name, m.signDenied(seen, k) || by >= 0 && m.is(seen[by].at-1, cNeg, "") ||
				by >= 0 && m.is(seen[by].at-2, cNeg, "") && m.is(seen[by].at-1, cDeterminer, ""))
			return true
		}
	}
	return false
}

// coloursThing tells whether the colour or the like at item i is that of a thing or of
// another word: "yellow house", "black faucet", "the grey one", "dead quiet".
func (m *message) coloursThing(i int) bool {
	n := i + 1
	if m.howLong(n) {
		return false
	}
	if m.is(i-1, cDeterminer, "") && !m.isNum(i-1) && m.text(i-1) != "some" && m.signsOf(n)&(signBits|signTint) == 0 {
		return true // "la negra 72", but "that gray stuff"
	}
	if n >= len(m.items) || m.items[n].sent != m.items[i].sent || m.items[n].mark && m.text(n) != "-" || m.items[n].num != nil ||
		m.items[n].site {
		return false
	}
	set := m.signsOf(n)
	if set == 0 {
		ofWater := m.says(n, "el", "la", "los") && m.signsOf(n+1)&(signWater|signTap|signAfter) != 0 // "cae negra el agua"
		return !m.items[n].mark && !ofWater
	}
	return set&(signWater|signBits|signDark|signRust|signTurns|signAfter|signLike|signTint|signGone|signDeny) == 0
}

// heardLike tells whether what is likened at item i is a sound.
func (m *message) heardLike(i int) bool {
	return m.left(i, 5, false, func(k int) bool {
		return m.says(k, "sounds", "sounded", "sound", "sounding", "sounds like", "suena", "sonaba")
	}) >= 0
}

// howLong tells whether words of a short time begin at item i: "water ran red a min, then cleared".
func (m *message) howLong(i int) bool {
	k := i
	for m.inList(k, listHowLongItRan) {
		k++
	}
	if m.isNum(k) {
		return oneOf(m.items[k].unit, "min", "hour", "other") || m.items[k].role == roleDuration
	}
	return k > i && (m.says(k, "min", "minute", "sec", "second", "seconds", "minutes", "rato", "ratito", "segundos", "minutos", "minuto") || m.says(k-1, "bit"))
}

// supposed tells whether a symptom is only what somebody is to tell of or look for:
// "call us if it ever starts dripping".
func (m *message) supposed(i int) bool {
	s := &m.sents[m.items[i].sent]
	if m.text(i+1) == "down" && m.left(i, 3, false, func(k int) bool { return m.inList(k, listKeepsDown) }) >= 0 {
		return true // "put foam on it to keep the noise down"
	}
	k := m.left(i, 9, true, func(k int) bool { return m.text(k) == "if" || m.text(k) == "si" || m.text(k) == "whether" })
	if k < 0 {
		return false
	}
	heeds := func(j int) bool { return m.signsOf(j).has(signHeeds) }
	if m.is(k-1, cUnknown, "") || m.is(k-1, cHint, "unsure") || k == m.clauseStart(k) && m.items[k].seg == m.items[i].seg && m.right(i, 4, false, heeds) >= 0 {
		return true // "not sure if it's leaking", "if it leaks again call me"
	}
	for j := k - 1; j >= s.from; j-- {
		if m.signsOf(j).has(signHeeds) {
			return true
		}
	}
	return false
}

// signDenied tells whether the sign at seen[k] is denied: by a word before it with
// no other clause between, or by one that ends the clause.
func (m *message) signDenied(seen []seenSign, k int) bool {
	at := seen[k].at
	if seen[k].set.has(signDeny) && seen[k].set&(signNone|signEndless|signFaint|signPoor|signCantRun|signBarely) == 0 {
		return true
	}
	for j := k - 1; j >= 0 && seen[j].at >= at-7; j-- {
		if m.items[seen[j].at].seg != m.items[at].seg || m.thingBetween(seen[j].at, at) {
			break
		}
		if seen[j].set.has(signDeny) && !seen[j].set.has(signShut) && !m.deniesEnd(seen[j].at) {
			return true
		}
	}
	for j := k + 1; j < len(seen) && !seen[k].set.has(signBarely); j++ { // not "next to nothing"
		if seen[j].set.has(signDeny) && m.closes(seen[j].at) && m.text(seen[j].at) != "only" ||
			m.text(seen[j].at) == "nothing" && m.text(seen[j].at+1) == "in" {
			return true
		}
	}
	return false
}

// thingBetween tells whether equipment, a number or a house stands between items k and i, so
// that what is said at k is said of that: "no exp tank. Hot side runs orange".
func (m *message) thingBetween(k, i int) bool {
	for k++; k < i; k++ {
		if it := &m.items[k]; it.site || it.num != nil && it.role != roleIgnored || m.is(k, cItem, "") && !m.is(k, cItem, "gauge") {
			return true
		}
	}
	return false
}

// deniesEnd tells whether the denial at item k is of an end: "no deja de tirar".
func (m *message) deniesEnd(k int) bool {
	return m.right(k, 2, false, func(j int) bool { return m.inList(j, listStops) }) >= 0
}

// leakIn tells whether clause seg of sentence s speaks of a leak.
func (m *message) leakIn(seg, s int) bool {
	for k := m.sents[s].from; k < m.sents[s].to; k++ {
		if m.items[k].seg == seg && m.is(k, cSym, "leak") {
			return true
		}
	}
	return false
}

// signInClause tells whether the clause of item i holds a sign.
func (m *message) signInClause(i int, x signSet) bool {
	for k := m.clauseStart(i); k < m.clauseEnd(i); k++ {
		if m.signsOf(k).has(x) {
			return true
		}
	}
	return false
}

// signIn tells whether the sentence of item i holds a sign.
func (m *message) signIn(i int, x signSet) bool {
	s := &m.sents[m.items[i].sent]
	for k := s.from; k < s.to; k++ {
		if m.signsOf(k).has(x) {
			return true
		}
	}
	return false
}

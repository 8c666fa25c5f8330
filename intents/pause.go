package intents

import "slices"

// Lists of the lexicon that these rules know.
var (
	listLeadsToDate     = listOf("leads to date")
	listServices        = listOf("services")
	listNoPauseBehind   = listOf("no pause behind")
	listTellsOwnReading = listOf("tells own reading")
)

// What people write or dictate without any mark still has pauses. paused puts a comma
// where one is heard before a pressure that is told with its place, "was 70 when they
// bought the place | 97 at the hose bib", and a full stop before a new teller, "he swears
// it is 80 in there | my gauge says 112". A message that has marks keeps its own.
func (p *Parser) paused(toks []token) []token {
	numbers := 0
	for i := range toks {
		switch t := &toks[i]; {
		case t.quoted:
			return toks
		case t.kind == number:
			numbers++
		case t.kind == mark && i+1 < len(toks) && !t.glued && t.text != "#", t.kind == mark &&
			oneOf(t.text, ",", ".", ":", "\n", ";") && i+1 < len(toks):
			return toks
		}
	}
	toks = p.factsApart(toks)
	if numbers == 0 {
		return toks
	}
	told := false // a number stands before, or what somebody says
	for i := 1; i < len(toks); i++ {
		told = told || toks[i-1].kind == number || p.saysAt(toks, i-1)
		if !told {
			continue
		}
		switch {
		case toks[i].kind == number && p.toldWithPlace(toks, i) && p.breathBefore(toks, i):
			toks = pauseAt(toks, i, ",")
			i++
		case p.tellsAnew(toks, i):
			toks = pauseAt(toks, i, ".")
			i++
		}
	}
	return toks
}

// pauseAt puts a mark before token i that nobody wrote.
func pauseAt(toks []token, i int, text string) []token {
	end := toks[i-1].span.to
	return slices.Insert(toks, i, token{kind: mark, text: text, raw: text, span: span{end, end}})
}

// factsApart puts a comma where somebody goes on to something else right behind a fact of a thing: "heater never
// flushed | prv age unknown", "no tank | heater is a 2015", "prv is shot | pipes bang".
func (p *Parser) factsApart(toks []token) []token {
	f := factEnd{thing: -1, end: -1}
	for i := 0; i < len(toks); {
		if toks[i].kind == number {
			f.date(p, toks, i)
			i++
			continue
		}
		node, n := p.lex.find(toks, i, min(i+5, len(toks)))
		kinds := p.lex.kinds(node)
		n = max(n, 1)
		named := kinds.meets(namesThing)
		switch {
		case n == 1 && f.end >= 0 && (toks[i].text == "no" || kinds.meets(leadsToThing)):
			i++
			continue // leads to what is named next
		case f.end > 0 && (named || !f.lacks && kinds.meets(beginsFact)):
			toks = pauseAt(toks, f.end, ",")
			i++
			f.end = -1
		}
		switch {
		case named:
			f.thing, f.lacks, f.end = i+n, i > 0 && toks[i-1].text == "no", -1
			if f.lacks {
				f.end = f.thing
			}
		case f.thing < 0:
		case kinds.meets(setOf(cUnknown)), kinds.meets(tellsHow) && (f.thing == i || p.lex.of(&toks[i-1]).lists.has(listLinks)):
			f.end, f.lacks = i+n, false
		case toks[i].text == "never" && i+1 < len(toks) && p.lex.of(&toks[i+1]).lists.has(listServices):
			n = 2
			f.end, f.lacks = i+n, false
		default:
			f.end = -1
		}
		i += n
	}
	return toks
}

// factEnd is what is known of the facts of a message without marks, up to a token.
type factEnd struct {
	thing      int  // where the name of the last thing ends, -1 for none
	end        int  // where a fact of it ended, -1 where none did right here
	lacks      bool // the fact is that there is none: "no tank"
	datesFirst bool // "2015 heater 2018 prv"
}

// date weighs the number at i, which may be the year of the last thing.
func (f *factEnd) date(p *Parser, toks []token, i int) {
	ours := year(toks[i].num.value)
	f.datesFirst = f.datesFirst || ours && f.thing < 0
	f.end = -1
	if ours && f.thing >= 0 && !f.datesFirst && (f.thing == i || p.lex.of(&toks[i-1]).lists.has(listLeadsToDate)) {
		f.end, f.lacks = i+1, false
	}
}

// The classes of words that name a thing, that begin another fact behind one, and that tell how a thing is.
var (
	namesThing   = setOf(cItem, cRelief, cFuel)
	beginsFact   = setOf(cSym, cDid, cFixture)
	tellsHow     = setOf(cCond, cDry, cBlocked)
	leadsToThing = setOf(cDeterminer, cPresent)
)

// saysAt tells whether the word at i tells what somebody says: "customer says upstairs is weak".
func (p *Parser) saysAt(toks []token, i int) bool {
	if toks[i].kind != word {
		return false
	}
	node, n := p.lex.find(toks, i, i+1)
	return n > 0 && p.has(p.lex.tags(node), cClaim, "says") && i > 0 && p.lex.of(&toks[i-1]).lists.has(listPeople)
}

// toldWithPlace tells whether the number at i is a pressure whose place follows: "97 at
// the hose bib", "66# static at the kitchen".
func (p *Parser) toldWithPlace(toks []token, i int) bool {
	n := toks[i].num
	if n.value > highestPressure || n.void || n.time || n.money || n.ordinal {
		return false
	}
	for k := i + 1; k < len(toks) && k <= i+4; k++ {
		node, m := p.lex.find(toks, k, min(k+4, len(toks)))
		kinds := p.lex.kinds(node)
		switch {
		case m > 0 && kinds.meets(setOf(cPoint, cPlace, cBibb)):
			// the place's own number may follow: "st 120 tub 66"
			return k+m >= len(toks) || toks[k+m].kind != number && p.lex.of(&toks[k+m]).suffix == ""
		case oneOf(toks[k].text, "#", "at", "on", "en"), m > 0 && kinds.meets(beforePlace), p.has(p.lex.tags(node), cUnit, "psi"):
		default:
			return false
		}
	}
	return false
}

// beforePlace are the classes that may stand between a pressure and its place.
var beforePlace = setOf(cDeterminer, cStatic, cFlowing)

// breathBefore tells whether a clause may have ended before the number at i: what stands
// there neither leads to a number, as "lo" and "res" do, nor is its place.
func (p *Parser) breathBefore(toks []token, i int) bool {
	prev := &toks[i-1]
	if prev.kind != word || len(prev.text) < 3 || len(prev.text) < 4 && !p.lex.known(prev.text) {
		return false
	}
	if leadsToHouse(prev.text) || p.lex.of(prev).lists.has(listLinking) || p.lex.of(prev).unit != "" {
		return false
	}
	if p.lex.of(prev).suffix != "" && (i < 2 || toks[i-2].text != "the") {
		return false
	}
	node, n := p.lex.find(toks, i-1, i)
	kinds := p.lex.kinds(node)
	if n > 0 && kinds.meets(setOf(cPoint, cPlace, cBibb)) {
		for k := i - 2; k >= 0 && k >= i-5 && toks[k].kind == word; k-- {
			if toks[k].text == "when" || toks[k].text == "cuando" {
				return true // "cuando cierra la lavadora | 98 atras"
			}
		}
		return false
	}
	return n == 0 || !kinds.meets(setOf(cClaim, cGauged, cNow, cBefore, cAfter, cPeak, cNeg, cDid, cMove, cStatic, cFlowing, cUnit))
}

// doesNext tells whether somebody begins to tell at i, behind a pressure, what they did or what
// came of it: "… and the tub was 98 | I swapped out the regulator | after that the kitchen was 60".
func (p *Parser) doesNext(toks []token, i int) bool {
	if i+2 >= len(toks) || toks[i].kind != word {
		return false
	}
	prev := &toks[i-1]
	if prev.kind == word && (p.lex.of(prev).lists.has(listLinking) ||
		p.lex.of(prev).lists.has(listNoPauseBehind)) {
		return false
	}
	switch toks[i].text {
	case "after":
		return toks[i+1].text == "that"
	case "i", "we":
		node, n := p.lex.find(toks, i+1, min(i+4, len(toks)))
		return n > 0 && prev.kind == number && !oneOf(toks[i+2].text, "it", "her", "him", "them", "that", "at", "on", "from") &&
			p.lex.kinds(node).meets(didOrMoved) // but "the 88 I took at the tub"
	}
	return false
}

// didOrMoved are the classes of verbs that tell what was done.
var didOrMoved = setOf(cDid, cMove)

// tellsAnew tells whether somebody begins to tell of their own reading at i.
func (p *Parser) tellsAnew(toks []token, i int) bool {
	if p.doesNext(toks, i) {
		return true
	}
	if i+1 >= len(toks) || toks[i].kind != word || toks[i-1].kind != word {
		return false
	}
	switch toks[i].text {
	case "my":
		return toks[i+1].text == "gauge"
	case "i":
		if p.lex.of(&toks[i+1]).lists.has(listTellsOwnReading) {
			for k := max(i-4, 1); k < i; k++ {
				if node, n := p.lex.find(toks, k, i); n == i-k &&
					(toks[k-1].text == "and" || toks[k-1].text == "y" || toks[k-1].text == "then") && p.lex.kinds(node).meets(setOf(cPoint, cPlace)) {
					return false // "the meter says 119 and after the regulator i have 56"
				}
			}
			return !p.lex.of(&toks[i-1]).never && toks[i-1].text != "all" && toks[i-1].text != "what"
		}
	}
	return false
}

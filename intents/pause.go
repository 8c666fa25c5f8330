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
			return p.clausesApart(toks)
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

// clausesApart does in a message with marks what factsApart does in one without, in the sentences of it that have no
// mark of their own and in the clauses that begin with "no": "kitchen 64. no tank | heater 2011".
func (p *Parser) clausesApart(toks []token) []token {
	for i := 0; i < len(toks); i++ {
		if toks[i].kind == mark {
			continue
		}
		to := i + 1
		for to < len(toks) && toks[to].kind != mark {
			to++
		}
		long := to-i >= leastOfFacts && endsSentence(toks, i-1) && endsSentence(toks, to)
		if toks[i].quoted || !long && (toks[i].text != "no" || to-i < leastOfTwoFacts) {
			i = to
			continue
		}
		if apart := p.factsApart(slices.Clone(toks[i:to])); len(apart) > to-i {
			toks = slices.Replace(toks, i, to, apart...)
			to = i + len(apart)
		}
		i = to
	}
	return toks
}

// endsSentence tells whether a sentence ends at token i, or the message.
func endsSentence(toks []token, i int) bool {
	return i < 0 || i >= len(toks) || oneOf(toks[i].text, ".", "\n", "!", "?", ";")
}

// leastOfFacts is of how many words a sentence without marks is at least that is searched for facts run together.
const leastOfFacts = 6

// leastOfTwoFacts is of how many words two facts are at least that begin with a "no": "no hammer rusty water".
const leastOfTwoFacts = 4

// pauseAt puts a mark before token i that nobody wrote.
func pauseAt(toks []token, i int, text string) []token {
	end := toks[i-1].span.to
	return slices.Insert(toks, i, token{kind: mark, text: text, raw: text, span: span{end, end}})
}

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
	if p.peakBefore(toks, i) {
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

// peakBefore tells whether a phrase of more words that names the highest pressure ends before i: "lazy hand".
func (p *Parser) peakBefore(toks []token, i int) bool {
	for k := max(i-4, 0); k < i-1; k++ {
		if node, n := p.lex.find(toks, k, i); n == i-k && p.lex.kinds(node).meets(setOf(cPeak)) {
			return true
		}
	}
	return false
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

package intents

// joined finds the two terms that were written without the blank between them:
// "heateridle", "rearbib", "expansiontank". It returns the nodes of the lexicon that
// they lead to; when the two are one name, only the first. 0 is none.
func (p *Parser) joined(w string) (first, second int32) {
	l := p.lex
	if len(w) < 6 || len(w) > 24 || l.everyday(w) {
		return 0, 0
	}
	for k := len(w) - 3; k >= 3; k-- {
		a, ok := l.id(w[:k])
		if !ok {
			continue
		}
		b, ok := l.id(w[k:])
		if !ok {
			continue
		}
		na := l.first[a]
		if na == 0 {
			continue
		}
		if n, ok := l.after(na, b); ok && l.tags(n) != nil {
			return n, 0
		}
		nb := l.first[b]
		if p.lex.kinds(na).meets(joinable) && p.lex.kinds(nb).meets(joinable) {
			return na, nb
		}
	}
	return 0, 0
}

// joinable are the classes of which two may be written as one word.
var joinable = setOf(cPoint, cPlace, cBibb, cItem, cState, cCond, cSym, cFuel, cMaterial, cDid, cBurner, cRelief, cPeak, cOn, cOff, cNeg)

// lexItem tells whether a token ends the name of something installed, or its place.
func (p *Parser) lexItem(toks []token, k int) bool {
	for from := max(k-2, 0); from <= k; from++ {
		if node, n := p.lex.find(toks, from, k+1); from+n == k+1 && (p.lex.kinds(node).has(cItem) || p.lex.kinds(node).has(cPoint)) {
			return true
		}
	}
	return false
}

// possessive returns the word of something installed, or of the water, that the word at
// i is with an "is" that lost its apostrophe: "the heaters firing", "tanks shot". What
// follows must say how it is; 0 is none.
func (p *Parser) possessive(toks []token, i int) int32 {
	w, l := toks[i].text, p.lex
	n := len(w) - 1
	if n < 3 || w[n] != 's' || w[n-1] == 's' || i+1 >= len(toks) || i > 0 && toks[i-1].kind == number {
		return 0
	}
	id := l.singular(&toks[i])
	if id < 0 {
		return 0
	}
	says := predicates
	if kinds := p.lex.kinds(l.first[id]); kinds.has(cPoint) {
		says = setOf(cClaim) // "the meters showing 141"
	} else if !kinds.meets(installed) && w != "pressures" {
		return 0
	}
	switch next := &toks[i+1]; {
	case next.kind == number:
		return id
	case next.kind == word:
		if w := l.of(next).id; w >= 0 && (p.lex.kinds(l.first[w]).meets(says) || next.text == "a" || next.text == "only") {
			return id
		}
	}
	return 0
}

// singular returns the word of the vocabulary that a token is with an s behind it, -1 for
// none.
func (l *lexicon) singular(t *token) int32 {
	switch e := l.of(t); {
	case e == stranger:
		return l.look(t.text[:len(t.text)-1]).id
	case e.one != nil:
		return e.one.id
	}
	return -1
}

// installed are the classes of things that a house has; predicates say how they are.
var (
	installed  = setOf(cItem, cWater)
	predicates = setOf(cCond, cState, cOn, cOff, cColor, cFuel)
)

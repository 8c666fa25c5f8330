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
		a, ok := l.vocab[w[:k]]
		if !ok {
			continue
		}
		b, ok := l.vocab[w[k:]]
		if !ok {
			continue
		}
		na := l.next[uint64(uint32(a))]
		if na == 0 {
			continue
		}
		if n := l.next[uint64(na)<<32|uint64(uint32(b))]; n != 0 && l.tags[n] != nil {
			return n, 0
		}
		nb := l.next[uint64(uint32(b))]
		if p.kinds[na].meets(joinable) && p.kinds[nb].meets(joinable) {
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
		if node, n := p.lex.find(toks, from, k+1); from+n == k+1 && (p.kinds[node].has(cItem) || p.kinds[node].has(cPoint)) {
			return true
		}
	}
	return false
}

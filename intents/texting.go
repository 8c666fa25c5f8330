package intents

// Spanish is texted as it sounds: "ke hay d la casa", "aser", "boy", "an lavado".
// texted writes such words out, in Spanish messages only, before anything is looked
// up, and tells whether it did. What was typed stays a candidate beside it, so that nothing
// is lost.
func (p *Parser) texted(toks []token) bool {
	if es, en := p.lex.languages(toks); es == 0 || es < en {
		return false
	}
	shouts := allCaps(toks)
	for i := range toks {
		t := &toks[i]
		if t.kind != word || len(t.raw) == 1 && t.raw[0] >= 'A' && t.raw[0] <= 'Z' && i > 0 && !shouts {
			continue
		}
		if full := p.lex.short[t.text]; full != "" {
			if len(t.text) == 1 && (t.glued || i > 0 && (toks[i-1].kind == number && toks[i-1].glued || toks[i-1].text == "#")) {
				continue // "80q", "# d"
			}
			t.becomes(word, full)
			t.short = true
			continue
		}
		if t.caps || len(t.text) < 3 || p.lex.known(t.text) || p.lex.common(t.text) || p.namesStreet(toks, i) {
			continue
		}
		w := p.lex.sounded(t.text)
		if w == "ciento" && (i+1 == len(toks) || numberWords[toks[i+1].text].class == 0) {
			continue // "siento olor a gas"; a hundred alone is "cien"
		}
		if w != "" {
			t.becomes(word, w)
		}
	}
	joinTens(toks)
	p.veryFor(toks)
	return true
}

// veryFor reads "bien" before what a thing is said to be as "muy": "esta bien vieja", "bien
// oxidada"; said of no such word it stands for itself, "esta bien la reguladora".
func (p *Parser) veryFor(toks []token) {
	for i := range max(0, len(toks)-1) {
		t, next := &toks[i], &toks[i+1]
		if t.text != "bien" || t.kind != word || next.kind != word {
			continue
		}
		if beginsWith(next.text, "viej", "dur", "suci", "flojit", "cansad", "oxidad", "amolad", "gastad", "usad", "jodid", "picad",
			"pegad", "alt", "baj", "fuert") || p.means(next.text, cCond, "suspect") || p.means(next.text, cCond, "failed") {
			t.becomes(word, "muy")
		}
	}
}

// figuresForWords writes out the words that are texted as one figure or letter: "dn 2 60",
// "frm 90 t 62", "0 flow".
func (p *Parser) figuresForWords(toks []token) {
	for i := range max(0, len(toks)-1) {
		switch t := &toks[i]; {
		case p.zeroForNo(toks, i):
			t.becomes(word, "no")
			t.num = nil
		case t.text == "n" && p.nForNo(toks, i):
			t.becomes(word, "no")
		case t.text == "bt" && t.kind == word && toks[i+1].kind == word && !t.caps:
			t.becomes(word, "but") // "no blk wtr bt wk prssr"
		case i == 0:
		case t.text == "ot" && toks[i+1].kind == number:
			t.becomes(word, "to") // "set it ot 58"
		case t.text == "t" && tForTo(toks, i):
			t.becomes(word, "to") // "turned down frm 90 t 62"
		case (t.text == "dn" || t.text == "dwn") && toks[i+1].text == "to":
			t.becomes(word, "down") // "ADJ PRV 85 DN TO 60"
		case p.twoForTo(toks, i):
			t.becomes(word, "to")
			t.num = nil
			if w := toks[i-1].text; w == "dn" || w == "dwn" {
				toks[i-1].becomes(word, "down")
			}
		}
	}
}

// nForNo tells whether the "n" at i is texted for "no", as by one who leaves out the vowels: it opens
// its clause, what follows is told to be there or not, and no more is said of it: "n xp tnk, 60 rr".
func (p *Parser) nForNo(toks []token, i int) bool {
	if toks[i].kind != word || i > 0 && toks[i-1].kind != mark {
		return false
	}
	k, none, symptom := i+1, false, false
	for k < len(toks) && k <= i+3 && toks[k].kind == word && vowelless(fold(toks[k].raw)) && toks[k].text != "n" {
		symptom = p.spells(toks[k].text, cSym, "")
		none = symptom || p.spells(toks[k].text, cHint, "nonesuch")
		k++
	}
	return none && (k == len(toks) || toks[k].kind == mark || symptom && toks[k].kind == number || oneOf(toks[k].text, "n", "t"))
}

// spells tells whether a word may be written short for one that has a class of the lexicon.
func (p *Parser) spells(w string, c class, value string) bool {
	for _, id := range p.lex.candidates(w, nil) {
		if p.has(p.lex.tags(p.lex.first[id]), c, value) {
			return true
		}
	}
	return false
}

// tForTo tells whether a "t" that stands alone at i is texted for "to": not after "aftr".
func tForTo(toks []token, i int) bool {
	if toks[i].kind == word && !toks[i].glued && toks[i+1].kind == word && oneOf(toks[i-1].text, "nd", "nds", "need", "needs", "hv", "hve", "wnt", "wnts", "gt", "gotta") {
		return true // "nd t cll ownr bck"
	}
	if toks[i].kind != word || toks[i].glued || toks[i+1].kind != number || toks[i+1].glued {
		return false
	}
	return toks[i-1].kind != mark && !oneOf(toks[i-1].text, "aftr", "after", "aft", "bfr")
}

// twoForTo tells whether the "2" at i stands for "to": "prv dn 2 60", "bck fri 2 recheck".
func (p *Parser) twoForTo(toks []token, i int) bool {
	t, prev, next := &toks[i], &toks[i-1], &toks[i+1]
	if t.kind != number || t.num.digits != "2" || t.glued || next.glued || prev.kind != word {
		return false
	}
	if next.kind == number {
		return next.num.value >= 20 && next.num.value <= 150 &&
			(oneOf(prev.text, "dn", "dwn", "st", "it", "her") || p.means(prev.text, cHint, "particle") || p.means(prev.text, cDid, "set") ||
				p.means(prev.text, cDid, "charged"))
	}
	return weekdays[prev.text] > 0 && p.means(next.text, cDo, "") || p.means(prev.text, cHint, "wants") && p.means(next.text, cDo, "")
}

// zeroForNo tells whether the number at i only says that there is none of what follows:
// "0 flow", "zero air in the tank".
func (p *Parser) zeroForNo(toks []token, i int) bool {
	t, next := &toks[i], &toks[i+1]
	if t.text != "zero" && t.text != "cero" && (t.kind != number || t.num.digits != "0") || next.kind != word ||
		!p.means(next.text, cHint, "nonesuch") {
		return false
	}
	return (i == 0 || toks[i-1].kind != number && numberWords[toks[i-1].text].class == 0) &&
		(t.kind == word || i+2 >= len(toks) || toks[i+2].kind != number)
}

// means tells whether a word alone has a class of the lexicon.
func (p *Parser) means(w string, c class, value string) bool {
	id, ok := p.lex.id(w)
	return ok && p.has(p.lex.tags(p.lex.first[id]), c, value)
}

// namesStreet tells whether the word at i is a street's suffix, or stands between a
// number and one: "13 gull cove".
func (p *Parser) namesStreet(toks []token, i int) bool {
	suffix := func(k int) bool {
		return k < len(toks) && toks[k].kind == word && p.lex.of(&toks[k]).suffix != "" && !p.lex.inList(toks[k].text, listNoSuffixes)
	}
	return suffix(i) && !p.lex.inList(toks[i].text, listAmbiguousSuffixes) ||
		suffix(i+1) && i > 0 && (toks[i-1].kind == number || numberWords[toks[i-1].text].class != 0)
}

// sounded finds the word of the lexicon or the number that w spells by its sound:
// "kosina" is cocina, "aser" hacer, "boy" voy, "serrado" cerrado, "apagao" apagado.
// It returns "" for none.
func (l *lexicon) sounded(w string) string {
	if n := len(w) - 1; n >= 4 && w[n-1:] == "ao" {
		w = w[:n] + "do"
		if l.known(w) {
			return w
		}
	}
	return l.sounds[sound(w)]
}

// sound writes a word by its sound in Spanish: "cocina" and "kosina" alike.
func sound(w string) string {
	var b [24]byte
	n := 0
	at := func(i int) byte {
		if i < len(w) {
			return w[i]
		}
		return 0
	}
	soft := func(c byte) bool { return c == 'e' || c == 'i' }
	for i := 0; i < len(w) && n < len(b)-1; i++ {
		c := w[i]
		switch {
		case c == 'h':
			continue
		case c == 'c' && at(i+1) == 'h':
			b[n], n = 'c', n+1
			c = 'h'
			i++
		case c == 'c' && soft(at(i+1)) || c == 'z':
			c = 's'
		case c == 'q' && at(i+1) == 'u', c == 'g' && at(i+1) == 'u' && soft(at(i+2)):
			c = map[byte]byte{'q': 'k', 'g': 'g'}[c]
			i++
		case c == 'c' || c == 'q':
			c = 'k'
		case c == 'v':
			c = 'b'
		case c == 'l' && at(i+1) == 'l':
			c = 'y'
			i++
		case c == 'g' && soft(at(i+1)):
			c = 'j'
		case c == 'w':
			b[n], n = 'g', n+1
			c = 'u'
		}
		if n > 0 && b[n-1] == c && c != 'r' && c != 'h' {
			continue
		}
		b[n], n = c, n+1
	}
	return string(b[:n])
}

// joinTens reads what is written between tens and units as it sounds or in a digit:
// "ochenta i ocho", "noventa y 2".
func joinTens(toks []token) {
	units := [...]string{"", "uno", "dos", "tres", "cuatro", "cinco", "seis", "siete", "ocho", "nueve"}
	for i := 1; i+1 < len(toks); i++ {
		t, n := &toks[i], &toks[i+1]
		if t.kind != word || t.text != "i" && t.text != "y" || numberWords[toks[i-1].text].class != 'x' {
			continue
		}
		switch {
		case n.kind == word && numberWords[n.text].class == 'd':
			t.becomes(word, "y")
		case n.kind == number && n.num.integer && len(n.num.digits) == 1 && n.num.value > 0:
			t.becomes(word, "y")
			n.becomes(word, units[int(n.num.value)])
			n.num = nil
		}
	}
}

package intents

import "strings"

// Lists of the lexicon that these rules know.
var (
	listEndsTown = listOf("ends town")
	listJobSlips = listOf("job slips")
)

// unitID reads a unit's number or letter at k.
func unitID(toks []token, k int) (string, int) {
	if k >= len(toks) {
		return "", 0
	}
	t := toks[k]
	switch {
	case t.kind == number && t.num.integer && len(t.num.digits) <= 5:
		id := t.num.digits
		if k+1 < len(toks) && toks[k+1].glued && toks[k+1].kind == word && len(toks[k+1].raw) == 1 {
			return id + strings.ToUpper(toks[k+1].raw), 2
		}
		if k+2 < len(toks) && toks[k+1].text == "-" && toks[k+1].glued && toks[k+2].glued && toks[k+2].kind == word && len(toks[k+2].raw) == 1 {
			return id + "-" + strings.ToUpper(toks[k+2].raw), 3
		}
		if k+1 < len(toks) && len(toks[k+1].text) == 1 && toks[k+1].text >= "b" && toks[k+1].text <= "h" {
			return id + strings.ToUpper(toks[k+1].text), 2 // "two b"
		}
		return id, 1
	case t.kind == word && len(t.raw) == 1 && isLetter(t.raw[0]):
		if k+1 < len(toks) && toks[k+1].glued && toks[k+1].kind == number && toks[k+1].num.integer {
			return strings.ToUpper(t.raw) + toks[k+1].num.digits, 2
		}
		if k+2 < len(toks) && toks[k+1].text == "-" && toks[k+1].glued && toks[k+2].glued && toks[k+2].kind == number {
			return strings.ToUpper(t.raw) + "-" + toks[k+2].num.digits, 3
		}
		return strings.ToUpper(t.raw), 1
	}
	return "", 0
}

// unit reads a unit after the street line, or before the house number.
func (a *address) unit(p *Parser, toks []token) {
	for range 2 {
		k := a.to
		if k+1 < len(toks) && toks[k].kind == mark &&
			(toks[k].text == "," || toks[k].text == "-" && !toks[k].glued || toks[k].text == "(" ||
				toks[k].text == "." && p.lex.of(&toks[k+1]).unit != "" ||
				toks[k+1].text == "#" && oneOf(toks[k].text, ";", ".", "|", "/", "\n")) {
			k++
		}
		if k < len(toks) && toks[k].kind == mark && toks[k].text == "#" {
			id, n := unitID(toks, k+1)
			if n == 0 || k+1+n < len(toks) && toks[k+1+n].glued && toks[k+1+n].text == "#" {
				return
			}
			a.line += " # " + id
			a.to = k + 1 + n
			a.score++
			return
		}
		if k >= len(toks) || toks[k].kind != word {
			break
		}
		std := p.lex.of(&toks[k]).unit
		if toks[k].text == "number" && k == a.to && k+1 < len(toks) && toks[k+1].kind == number && len(toks[k+1].num.digits) < 4 {
			std = "#" // "sunset boulevard number six"
		}
		if std == "" {
			break
		}
		m := k + 1
		if m < len(toks) && (toks[m].kind == mark && (toks[m].text == "#" || toks[m].text == ".") || toks[m].text == "number") {
			m++
		}
		id, n := unitID(toks, m)
		if n == 0 {
			break
		}
		a.line += " " + std + " " + id
		a.to = m + n
		a.score++
		if a.to < len(toks) && toks[a.to].text == ")" {
			a.to++
		}
	}
	a.unitAhead(p, toks)
}

// unitAhead reads a unit before the house number: "unit B at 1410 Sutter", "apartment 12, 300
// Beacon Square".
func (a *address) unitAhead(p *Parser, toks []token) {
	k := a.from - 1
	if k >= 1 && oneOf(toks[k].text, "el", "la", "the") && oneOf(toks[k-1].text, "en", "de", "at", "of", "in") {
		k-- // "apto 2 en el 45 Birch"
	}
	if k >= 0 {
		switch toks[k].text {
		case ",", "\n", "at", "of", "en", "de", "del", "in", "-", "on", ";", ".", "/", "|":
			k--
		}
	}
	if k >= 1 && toks[k].kind == number && toks[k-1].kind == mark && toks[k-1].text == "#" && toks[k].num.integer &&
		len(toks[k].num.digits) <= 4 {
		if k >= 2 && toks[k-2].kind == word && p.lex.of(&toks[k-2]).lists.has(listJobSlips) {
			return // "JOB# 4411 / 19 W Pepper Ln"
		}
		a.line += " # " + toks[k].num.digits
		a.unitFrom, a.unitTo, a.from = k-1, k+1, k-1
		return
	}
	for n := 1; n <= 3 && k-n >= 0; n++ {
		at := k - n
		if at < 0 || toks[at].kind != word {
			continue
		}
		std := p.lex.of(&toks[at]).unit
		if std == "" {
			continue
		}
		m := at + 1
		if toks[m].text == "#" {
			m++
		}
		if id, got := unitID(toks, m); got > 0 && m+got == k+1 {
			a.line += " " + std + " " + id
			a.unitFrom, a.unitTo = at, k+1
			a.from = at
			return
		}
	}
}

// townAfter reads ", Marlow", ", Marlow, TX 75001" after the street line.
func (a *address) townAfter(p *Parser, toks []token) {
	k := a.to
	if k >= len(toks) {
		return
	}
	if toks[k].kind == mark && toks[k].text == "," {
		k++
	} else if toks[k].text == "in" {
		k++
	} else if !(toks[k].kind == number && len(toks[k].num.digits) == 5) {
		return
	}
	if n := p.townEnding(toks, k); n > 0 {
		k += n
		a.town, a.to = p.nameOf(toks, k-n, k), k
	}
	from := k
	for a.town == "" && k < len(toks) && k-from < 3 && toks[k].kind == word && toks[k].caps && !toks[k].glued && !tells(&toks[k]) && !p.term(toks, k) &&
		!p.stop(toks, k) && !p.lex.known(toks[k].text) {
		k++
	}
	if a.town == "" && k > from && (k >= len(toks) || toks[k].kind == mark || tells(&toks[k]) || toks[k].kind == number && len(toks[k].num.digits) == 5) && !allCaps(toks) {
		last := k
		if last-from > 1 && states[toks[last-1].text] {
			last--
		}
		a.town = p.nameOf(toks, from, last)
		a.to = k
	}
	// ", TX 75001" or "75001"
	k = a.to
	if k < len(toks) && toks[k].text == "," {
		k++
	}
	if k < len(toks) && toks[k].kind == word && states[toks[k].text] && toks[k].raw == strings.ToUpper(toks[k].raw) {
		k++
		if a.town != "" {
			a.to = k
		}
	}
	if k < len(toks) && toks[k].kind == number && toks[k].num.integer && len(toks[k].num.digits) == 5 && (k == a.to || k > from) {
		a.postcode = toks[k].num.digits
		a.to = k + 1
	}
}

// townEnding returns how many words from k on, behind "in", are the name of a town that ends with a
// word of its own, which would be read as another thing: "in Linden Falls is 91 psi".
func (p *Parser) townEnding(toks []token, k int) int {
	name := func(k int) bool {
		return k < len(toks) && toks[k].kind == word && toks[k].caps && !toks[k].glued && !tells(&toks[k])
	}
	if toks[k-1].text != "in" || !name(k) || !name(k+1) || p.term(toks, k) {
		return 0
	}
	for n := 1; n <= 2 && name(k+n); n++ {
		if p.lex.of(&toks[k+n]).lists.has(listEndsTown) && !name(k+n+1) && !allCaps(toks) {
			return n + 1
		}
	}
	return 0
}

// tells tells whether a token is who did or found what a sentence goes on to tell: "in Corbin Falls I measured".
func tells(t *token) bool { return oneOf(t.text, "i", "we", "he", "she", "they", "ive", "weve") }

var states = func() map[string]bool {
	m := map[string]bool{}
	for s := range strings.FieldsSeq(`al ak az ar ca co ct de fl ga hi id il in ia ks ky la me md ma mi mn ms mo mt ne nv
		nh nj nm ny nc nd oh ok or pa ri sc sd tn tx ut vt va wa wv wi wy dc`) {
		m[s] = true
	}
	return m
}()

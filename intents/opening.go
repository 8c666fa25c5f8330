package intents

// listAskedIfOK are words between a thing and the "ok?" that asks how it is.
var listAskedIfOK = listOf("asked if ok")

// listGoesWithOK are words that an "ok" before them belongs to.
var listGoesWithOK = listOf("goes with ok")

// opened leaves out how a message opens when that says nothing: "hey bot, …",
// "Morning! …", "Update: …". What follows is read as if it stood first: many an
// order and many a street line is known by that.
func (p *Parser) opened(toks []token) []token {
	i := 0
	for {
		n := p.hail(toks[i:])
		if n == 0 || i+n == len(toks) {
			return toks[i:]
		}
		i += n
	}
}

// thanked leaves out the word of thanks that ends a message: "hose bib by the driveway,
// 97 thx". A message that is nothing else stays.
func (p *Parser) thanked(toks []token) []token {
	toks = p.untagged(toks)
	n := len(toks)
	for n > 0 && toks[n-1].kind == mark {
		n--
	}
	from := n
	for from > 0 && toks[from-1].kind == word && !toks[from-1].quoted && p.lex.of(&toks[from-1]).thanks {
		from--
	}
	if from == n {
		return toks
	}
	for from > 0 && toks[from-1].kind == mark && (toks[from-1].text == "," || toks[from-1].text == "-") {
		from--
	}
	if from == 0 {
		return toks
	}
	return toks[:from]
}

// untagged leaves out an "ok?" that only asks whether the reader has understood: "flush the heater
// next week ok?". What asks how a thing is stays: "prv ok?", "does it look ok?".
func (p *Parser) untagged(toks []token) []token {
	n := len(toks) - 2
	if n < 3 || toks[n+1].text != "?" || !oneOf(toks[n].text, "ok", "okay", "k") || toks[n].quoted {
		return toks
	}
	last := &toks[n-1]
	if last.kind == word && (p.lexItem(toks, n-1) || p.lex.of(last).lists.has(listAskedIfOK)) {
		return toks
	}
	from := n
	for from > 0 && (toks[from-1].kind != mark || toks[from-1].glued && toks[from-1].text == "-") {
		from--
	}
	if e := p.lex.of(&toks[from]); from < n && (e.lists.has(listAskingVerbs) || e.lists.has(listClauseVerbs) || e.cue.alone.has(cueWh)) {
		return toks // "is next week ok?"
	}
	if last.kind == mark {
		n--
	}
	return toks[:n]
}

// hail is the length of the greeting or the preface that begins here, with the mark
// after it.
func (p *Parser) hail(toks []token) int {
	if len(toks) < 2 || toks[0].kind != word || toks[0].quoted {
		return 0
	}
	w := p.lex.of(&toks[0])
	n, set := 1, w.cue.alone
	if pair := w.cue.with(p.lex.of(&toks[1])); pair.has(cueHail) || pair.has(cuePreface) {
		n, set = 2, pair
	}
	if n == 1 && toks[0].text == "ok" && len(toks) > 3 && toks[1].kind == word && !p.lex.of(&toks[1]).lists.has(listGoesWithOK) {
		return 1 // "ok prv is from 2019"
	}
	marked := n < len(toks) && toks[n].kind == mark && opensAfter(toks[n].text)
	switch {
	case marked && (set.has(cueHail) || set.has(cuePreface)):
		return n + 1
	case set.has(cueHail):
		return n
	}
	return 0
}

// opensAfter tells whether a mark may stand behind a greeting or a preface.
func opensAfter(mark string) bool {
	switch mark {
	case ",", ".", "!", ":", "-", "\n", ";":
		return true
	}
	return false
}

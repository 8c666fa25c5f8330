package intents

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

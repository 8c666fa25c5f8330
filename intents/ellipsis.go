package intents

// Who writes while they look or think puts dots where others put a comma: "tank size for a 40 gal
// ... 65 psi", "61 ... kitchen". parted makes such dots the comma they stand for, or a full stop
// where a capital shows that a sentence begins behind them. Dots that trail off stay.
func (p *Parser) parted(toks []token) []token {
	for i := 1; i+1 < len(toks); i++ {
		t := &toks[i]
		if t.kind != mark || t.text != "..." || toks[i-1].kind == mark && toks[i-1].text != ")" || toks[i+1].kind == mark && !opensAside(toks[i+1].text) {
			continue
		}
		if p.beginsSentence(&toks[i+1]) {
			t.becomes(mark, ".")
		} else {
			t.becomes(mark, ",")
		}
	}
	return toks
}

// opensAside tells whether a mark opens what stands behind it.
func opensAside(s string) bool { return oneOf(s, "(", "#", `"`) }

// beginsSentence tells whether a word has its capital from standing first: it is no name, no
// day, no word for a unit and not shouted.
func (p *Parser) beginsSentence(t *token) bool {
	if t.kind != word || !t.caps || len(t.raw) < 2 || t.raw[1] < 'a' || dayNames[t.text] {
		return false
	}
	e := p.lex.of(t)
	return e.unit == "" && (e.id >= 0 || e.plain)
}

package intents

// Spanish is texted as it sounds: "ke hay d la casa", "aser", "boy", "an lavado".
// texted writes such words out, in Spanish messages only, before anything is looked
// up. What was typed stays a candidate beside it, so that nothing is lost.
func (p *Parser) texted(toks []token) []token {
	for i := 1; i+1 < len(toks); i++ {
		if t := &toks[i]; t.text == "t" && t.kind == word && !t.glued && toks[i+1].kind == number && !toks[i+1].glued && toks[i-1].kind != mark {
			t.text = "to" // "turned down frm 90 t 62"
		}
	}
	if es, en := languages(toks); es == 0 || es < en {
		return toks
	}
	for i := range toks {
		t := &toks[i]
		if t.kind != word || len(t.raw) == 1 && t.raw[0] >= 'A' && t.raw[0] <= 'Z' && i > 0 {
			continue
		}
		if full := p.lex.short[t.text]; full != "" {
			if len(t.text) == 1 && (t.glued || i > 0 && (toks[i-1].kind == number && toks[i-1].glued || toks[i-1].text == "#")) {
				continue // "80q", "# d"
			}
			t.text, t.short = full, true
			continue
		}
		if t.caps || len(t.text) < 3 || p.lex.known(t.text) || p.lex.common(t.text) {
			continue
		}
		if w := p.lex.sounded(t.text); w != "" {
			t.text = w
		}
	}
	return toks
}

// sounded finds the word of the lexicon or the number that w spells by its sound:
// "kosina" is cocina, "aser" hacer, "boy" voy, "serrado" cerrado. It returns "" for
// none.
func (l *lexicon) sounded(w string) string {
	ok := func(s string) bool {
		if _, n := numberWords[s]; n {
			return true
		}
		return len(s) >= 3 && l.known(s)
	}
	if n := len(w) - 1; n >= 4 && w[n-1:] == "ao" && ok(w[:n]+"do") {
		return w[:n] + "do" // "apagao", "pasao"
	}
	for _, r := range alike {
		for at := 0; at+len(r[0]) <= len(w); at++ {
			if w[at:at+len(r[0])] != r[0] {
				continue
			}
			if s := w[:at] + r[1] + w[at+len(r[0]):]; ok(s) {
				return s
			}
			if r[0] == "" {
				break // only before the word
			}
		}
	}
	return ""
}

// alike are letters of one sound in Spanish: what is typed, what may be meant.
var alike = [...][2]string{
	{"ke", "que"}, {"ki", "qui"}, {"k", "c"}, {"b", "v"}, {"v", "b"}, {"s", "c"}, {"z", "c"}, {"s", "z"}, {"c", "s"}, {"z", "s"},
	{"", "h"}, {"h", ""}, {"y", "ll"}, {"ll", "y"}, {"g", "j"}, {"j", "g"}, {"w", "gu"},
}

// languages counts the small words of the two languages.
func languages(toks []token) (es, en int) {
	for i := range toks {
		if toks[i].kind == word {
			e, s := smallWords(toks[i].text)
			en, es = en+e, es+s
		}
	}
	return es, en
}

// speaksSpanish tells whether more of a message's small words are Spanish than English.
func speaksSpanish(toks []token) bool {
	es, en := languages(toks)
	return es > en
}

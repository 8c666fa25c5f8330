package intents

import (
	"fmt"
	"slices"
	"strings"
)

// withoutVowels returns what is left of a word.
func withoutVowels(w string) string {
	return strings.Map(func(r rune) rune {
		if vowel(byte(r)) {
			return -1
		}
		return r
	}, w)
}

// exactShape returns what is left of a word without its vowels but a first one: "rnnng", "instlld".
func exactShape(w string) string { return w[:1] + withoutVowels(w[1:]) }

// otherShapes returns what else may be left of it: with one letter where there were two, of a longer word
// without its first vowel, and with its last one: "instld", "nstlld", "rplce".
func otherShapes(w string) []string {
	all := []string{w[:1] + consonants(w[1:])}
	if bare := withoutVowels(w); bare[0] != w[0] && len(bare) >= 4 {
		all = append(all, bare, consonants(w))
	}
	if n := len(w) - 1; vowel(w[n]) && len(withoutVowels(w)) >= 3 {
		all = append(all, exactShape(w[:n])+w[n:])
	}
	return all
}

// enterVowelless gives the shapes of the words that are written out their whole words. A shape that two
// of them share says neither, one that is a word of its own stays that, and the exact shape of any word of the
// lexicon is none of another's other ones: "cld" is not called.
func (l *lexicon) enterVowelless() {
	exact := map[string]bool{}
	for _, w := range l.words {
		if len(w) > 3 && !vowelless(w) {
			exact[exactShape(w)] = true
		}
	}
	whole := map[string]string{}
	enter := func(s, w string) {
		if of, ok := whole[s]; ok && of != w {
			w = ""
		}
		whole[s] = w
	}
	for _, w := range l.whole {
		own := exactShape(w)
		enter(own, w)
		for _, s := range otherShapes(w) {
			if s != own && !exact[s] {
				enter(s, w)
			}
		}
	}
	for s, w := range whole {
		if w == "" || len(s) < 3 || l.suffixes[s] != "" || l.aliasOfOther(s, w) {
			continue
		}
		e := l.look(s)
		if e.itself(l.look(w)) || e.id >= 0 && l.spelt[e.id] && l.first[e.id] != 0 && l.nodes[l.first[e.id]].sense != 0 {
			continue // "prvs" are regulators, not what was previous
		}
		e = l.entry(s)
		e.whole = w
		e.sees |= seesVowelless
	}
	l.whole = nil
}

// itself tells whether a word stands for itself, though it may be written for another: an everyday word, a street's
// suffix, unless the other is the same one.
func (e *entry) itself(of *entry) bool {
	return e.plain || e.right || e.never || e.heads || e.suffix != of.suffix || e.unit != "" || e.directional != ""
}

// aliasOfOther tells whether what is written for a word is written for another than w.
func (l *lexicon) aliasOfOther(written, w string) bool {
	return slices.ContainsFunc(l.alias[written], func(id int32) bool { return l.words[id] != w })
}

// wroteBeside is a word that another one is short for, before or behind some words.
type wroteBeside struct {
	word   string
	behind bool
	others []string
}

// addWrote reads a line of shapes that are short for a word beside some others: "wrote like before a an: lk",
// or wherever they stand: "wrote bibb: bbb".
func (l *lexicon) addWrote(head, body string) error {
	of := strings.Fields(head)
	for shape := range strings.FieldsSeq(body) {
		e := l.entry(shape)
		e.sees |= seesVowelless
		switch {
		case len(of) == 1:
			e.whole = of[0]
		case len(of) > 2 && oneOf(of[1], "before", "behind"):
			e.beside = append(e.beside, wroteBeside{of[0], of[1] == "behind", of[2:]})
		default:
			return fmt.Errorf("%q is neither a word nor one before or behind others", head)
		}
	}
	return nil
}

// writeOut writes out the words that were left without their vowels, so that every rule that knows
// a word by its letters knows them: "nxt mndy", "sxty fv". What else they may be short for stays a
// candidate beside the word, unless the words beside them decide. It tells whether there were any.
func (p *Parser) writeOut(toks []token) (some bool) {
	for i := range toks {
		t := &toks[i]
		e := p.lex.of(t)
		if t.kind != word || t.quoted || t.glued || !e.sees.has(seesVowelless) || p.inStreetName(toks, i) {
			continue
		}
		w := p.besideOthers(e, toks, i)
		decided := w != ""
		if !decided {
			w = e.whole
		}
		if w != "" {
			t.becomes(word, w)
			t.short, some = !decided, true
		}
	}
	return some
}

// besideOthers returns what the word of an entry, at i, is short for before or behind its neighbours, "" for nothing.
func (p *Parser) besideOthers(e *entry, toks []token, i int) string {
	for _, b := range e.beside {
		k := i + 1
		if b.behind {
			if k = i - 1; k > 0 && oneOf(toks[k].text, ":", "=") {
				k-- // "prv: nn"
			}
		}
		if k < 0 || k >= len(toks) {
			continue
		}
		if slices.Contains(b.others, toks[k].text) || slices.Contains(b.others, p.lex.of(&toks[k]).whole) ||
			slices.Contains(b.others, "#") && toks[k].kind == number {
			return b.word
		}
	}
	return ""
}

// mostNameWords is how many words a street's name has at most before its suffix.
const mostNameWords = 3

// inStreetName tells whether the word at i stands between a house number and the suffix of a street,
// or after a number with a capital letter: "1201 wht oak rd", "1201 Cldwtr".
func (p *Parser) inStreetName(toks []token, i int) bool {
	from := i - 1
	for from >= 0 && i-from < mostNameWords && toks[from].kind == word {
		from--
	}
	if from < 0 || toks[from].kind != number {
		return false
	}
	if toks[i].caps && !allCaps(toks) {
		return true
	}
	for k := i; k < len(toks) && k-from <= mostNameWords+1 && toks[k].kind == word; k++ {
		if p.lex.of(&toks[k]).suffix != "" && !p.lex.inList(toks[k].text, listAmbiguousSuffixes) {
			return true
		}
	}
	return false
}

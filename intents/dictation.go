package intents

// Lists of the lexicon that these rules know.
var (
	listWordsWithPoints = listOf("words with points")
	listPlaceInitials   = listOf("place initials")
	listFigureWords     = listOf("figure words")
	listShortTaps       = listOf("short taps")
	listBehindNoun      = listOf("behind its noun")
	listNounsWithPoints = listOf("nouns with points")
	listBehindInitials  = listOf("behind initials")
)

// tapTold tells whether the point at token i ends a sentence though it stands behind a short name: of
// the tap whose number stands before it, "94 kit. after: 60 kit", but "94 kit. sink".
func (m *message) tapTold(toks []token, i int) bool {
	return i > 1 && toks[i-2].kind == number && m.p.lex.of(&toks[i-1]).lists.has(listShortTaps) && !m.p.lex.of(&toks[i+1]).lists.has(listBehindInitials)
}

// punctuate turns dictated marks into marks and drops the points of abbreviations.
func (m *message) punctuate(toks []token) []token {
	headMarks(toks)
	real, said, first := 0, 0, len(toks) // first may change, all before stay
	for i := range toks {
		switch t := &toks[i]; {
		case t.kind == mark:
			if t.text == "," || t.text == "." || t.text == ";" {
				real++
			}
			if t.glued && (t.text == "." || t.text == "-") {
				first = min(first, i)
			}
		case t.kind == word && (t.text == "comma" || t.text == "period" || t.text == "coma" || t.text == "newline"):
			said++
			first = min(first, i)
		case t.kind == word && t.text == "ish":
			first = min(first, max(i-1, 0))
		}
	}
	out := toks[:first]
	for i := first; i < len(toks); i++ {
		t := toks[i]
		if said > 0 && real == 0 && t.kind == word {
			switch t.text {
			case "comma", "coma":
				t.becomes(mark, ",")
			case "period":
				t.becomes(mark, ".")
			case "newline":
				t.becomes(mark, "\n")
			}
		}
		if t.kind == mark && t.text == "." && t.glued && i > 0 && toks[i-1].kind == word && i+1 < len(toks) && m.p.lex.of(&toks[i-1]).lists.has(listDotted) {
			if n := &toks[i+1]; m.p.endsStreet(toks, i) || m.p.endsNoun(toks, i) {
				// "rear 92, 3 elm st. changed the tank", "no recirc. recommend a flush"
			} else if toks[i-1].text == "n" && i > 1 && oneOf(toks[i-2].text, ":", "=") {
				// "softener: N. 120 at the meter"
			} else if i > 1 && toks[i-2].kind == number && n.kind == number && toks[i-1].text != "st" {
				// "code says 80 max. 78 at the rear bib", "hose is 50 ft. 85 kitchen"
			} else if (n.kind == number || n.kind == word && !(n.caps && m.p.lex.of(&toks[i-1]).lists.has(listWordsWithPoints))) && !m.tapTold(toks, i) {
				continue
			}
		}
		if t.kind == mark && t.text == "." && t.glued && i > 0 && i+1 < len(toks) && len(toks[i-1].text) == 1 &&
			m.p.lex.of(&toks[i-1]).lists.has(listPlaceInitials) && m.p.lex.of(&toks[i+1]).lists.has(listBehindInitials) {
			continue // "K. sink 68"
		}
		if t.kind == mark && t.text == "." && t.glued && i > 1 && i+1 < len(toks) && toks[i-2].kind == number &&
			m.unitGoesOn(toks[i-1].text, &toks[i+1]) {
			continue // "a 5 gal. expansion tank"
		}
		if t.kind == mark && t.text == "-" && t.glued && i > 0 && i+1 < len(toks) && toks[i+1].glued {
			if a, ok := numberWords[toks[i-1].text]; ok {
				if b, ok := numberWords[toks[i+1].text]; ok && spokenOn(a, b) {
					continue // fifty-five, one-hundred, one-oh-six
				}
			}
		}
		if t.kind == word && t.text == "ish" && len(out) > 0 {
			// "62ish", "70-ish", "79 psi-ish": a hedge says no more than "about"
			if n := len(out) - 1; out[n].kind == mark && out[n].text == "-" && n > 0 {
				out = out[:n]
			}
			if len(toks) > i+1 {
				toks[i+1].glued = false
			}
			continue
		}
		out = append(out, t)
	}
	return out
}

// endsStreet tells whether the point at i stands behind the suffix of a street with its house number:
// "3 elm st.", but neither "12 n st. charles ave" nor "dr. who".
func (p *Parser) endsStreet(toks []token, i int) bool {
	if i < 3 || p.lex.of(&toks[i-1]).suffix == "" || toks[i-2].kind != word || p.lex.of(&toks[i-2]).directional != "" {
		return false
	}
	for k := i - 2; k >= max(0, i-5); k-- {
		if toks[k].kind != word {
			return toks[k].kind == number
		}
	}
	return false
}

// endsNoun tells whether the point at i stands behind a word that is written whole, and which another
// meaning of it alone shortens: "rebuild kit." but "kit. sink", "softener: n." but "n. main st".
func (p *Parser) endsNoun(toks []token, i int) bool {
	next := &toks[i+1]
	if p.lex.of(&toks[i-1]).lists.has(listNounsWithPoints) {
		return next.kind == word && !p.lex.of(next).lists.has(listBehindNoun) || next.kind == number && p.tapBehind(toks, i+1)
	}
	switch toks[i-1].text {
	case "n", "s":
		return i > 1 && toks[i-2].kind == mark && oneOf(toks[i-2].text, ":", "=") && next.kind == word
	}
	return false
}

// tapBehind tells whether the number at i is told with its tap behind it and ends there: "can't read
// the tag on the reg. 70 front".
func (p *Parser) tapBehind(toks []token, i int) bool {
	if i+1 >= len(toks) || toks[i+1].kind != word || i+2 < len(toks) && toks[i+2].kind != mark {
		return false
	}
	tap := toks[i+1].text
	return p.means(tap, cPoint, "") || p.means(tap, cPlace, "") || p.means(tap, cBibb, "")
}

// spokenOn tells whether two number words with a hyphen between are parts of one
// number: "fifty-five", "one-twenty", "one-oh-six"; "five-ten" is a range.
func spokenOn(a, b numberWord) bool {
	switch b.class {
	case 'h', 'k', 'o':
		return true
	case 'd':
		return a.class == 'x' || a.class == 'o'
	case 't', 'x':
		return a.class == 'd' && a.value == 1
	}
	return false
}

// unitGoesOn tells whether the point behind a unit written short ends no sentence: "a 5 gal.
// expansion tank", "12 yr. old".
func (m *message) unitGoesOn(unit string, next *token) bool {
	if next.kind != word || next.caps {
		return false
	}
	return m.p.means(unit, cUnit, "gal") && m.p.means(next.text, cHint, "sized") || next.text == "old" && m.p.means(unit, cUnit, "year")
}

// ohDigits writes the digits around a dictated "oh" as words, as they were said: "1 oh 2"
// is one oh two.
func ohDigits(toks []token) []token {
	digit := func(k int) bool {
		return toks[k].kind == number && len(toks[k].num.digits) == 1 && toks[k].num.integer && toks[k].num.value > 0
	}
	for i := 1; i+1 < len(toks); i++ {
		if toks[i].text != "oh" || !digit(i-1) || !digit(i+1) {
			continue
		}
		for _, k := range [...]int{i - 1, i + 1} {
			t := &toks[k]
			t.becomes(word, digitWords[int(t.num.value)])
			t.num = nil
		}
	}
	return toks
}

// slippedDigits puts right numbers that are part word and part digit, or hold a letter for
// a nought: "sixty1", "sixty-1", "6o psi", "1o5".
func slippedDigits(toks []token) []token {
	for i := 1; i < len(toks); i++ {
		t, k := &toks[i], i-1
		if t.glued && t.kind == number && toks[k].kind == mark && toks[k].text == "-" && toks[k].glued && k > 0 {
			k--
		}
		switch {
		case t.kind == number && (t.glued || endsNumber(toks, i+1)) && numberWords[toks[k].text].class == 'x' &&
			len(t.num.digits) == 1 && t.num.value > 0:
			t.becomes(word, digitWords[int(t.num.value)])
			t.num, t.glued = nil, false
			if k < i-1 {
				toks = append(toks[:i-1], toks[i:]...)
			}
		case t.glued && t.kind == word && t.text == "o" && toks[k].kind == number && toks[k].num.integer && toks[k].num.value < 30 &&
			toks[k].num.digits[0] != '0' && k == i-1:
			n := *toks[k].num
			n.digits += "0"
			end := i + 1
			if end < len(toks) && toks[end].kind == number && toks[end].glued && len(toks[end].num.digits) == 1 {
				n.digits, end = n.digits+toks[end].num.digits, end+1
			}
			if end < len(toks) && toks[end].glued && toks[end].kind != mark || len(n.digits) > 3 || toks[k].num.value == 0 {
				continue
			}
			n.value = decimal(n.digits)
			toks[k].num, toks[k].text, toks[k].span.to = &n, n.digits, toks[end-1].span.to
			toks = append(toks[:i], toks[end:]...)
		}
	}
	return toks
}

// endsNumber tells whether nothing that a number could count follows at token i.
func endsNumber(toks []token, i int) bool {
	return i >= len(toks) || toks[i].kind == mark && !toks[i].glued || toks[i].kind == mark && oneOf(toks[i].text, ",", ".", "\n") ||
		oneOf(toks[i].text, "psi", "at", "in", "on", "static")
}

// digitWords are the digits as they are said.
var digitWords = [...]string{"", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine"}

// joinFigures makes one word of a figure that stands for its sound and of the letters behind it: "2morrow", "4get".
// What lies "in 2days" ahead is counted.
func (p *Parser) joinFigures(toks []token) []token {
	out := toks[:0]
	for i := 0; i < len(toks); i++ {
		t := toks[i]
		if figureBefore(toks, i) && p.lex.inList(t.text+toks[i+1].text, listFigureWords) && (i == 0 || !oneOf(toks[i-1].text, "in", "every", "en")) {
			t.becomes(word, t.text+toks[i+1].text)
			t.raw, t.span.to, t.num = t.text, toks[i+1].span.to, nil
			i++
		}
		out = append(out, t)
	}
	return out
}

// figureBefore tells whether a 2 or a 4 stands at i right before letters: "2day".
func figureBefore(toks []token, i int) bool {
	n := toks[i].num
	return n != nil && (n.digits == "2" || n.digits == "4") && i+1 < len(toks) && toks[i+1].kind == word && toks[i+1].glued && len(toks[i+1].text) > 2
}

// joinBefore makes one word of "b4" and of "h2o", which are cut as letters and a number.
func joinBefore(toks []token) []token {
	for i := 1; i < len(toks); i++ {
		n := &toks[i]
		if n.kind == number && n.num.digits == "2" && n.glued && toks[i-1].text == "h" && i+1 < len(toks) && toks[i+1].glued &&
			toks[i+1].text == "o" {
			toks[i-1].becomes(word, "h2o")
			toks[i-1].span.to = toks[i+1].span.to
			toks = append(toks[:i], toks[i+2:]...)
			continue
		}
		if n.kind != number || n.num.digits != "4" || !n.glued || toks[i-1].kind != word || toks[i-1].text != "b" || toks[i-1].glued && i > 1 && toks[i-2].kind != mark {
			continue
		}
		if i+1 < len(toks) && toks[i+1].glued && toks[i+1].kind != mark {
			continue
		}
		if i >= 2 {
			switch toks[i-2].text {
			case "unit", "apt", "#", "apartment", "suite", "ste", "lot", "bldg", "building", "unidad", "apto":
				continue
			}
		}
		toks[i-1].becomes(word, "b4")
		toks[i-1].span.to = n.span.to
		toks = append(toks[:i], toks[i+1:]...)
	}
	return toks
}

// letterBelow returns the letter below a digit on the keys of a telephone or a computer.
func letterBelow(digit string) string {
	switch digit {
	case "0":
		return "o"
	case "1":
		return "i"
	case "3":
		return "e"
	}
	return ""
}

// soundsLikeNumber tells whether w spells a spoken number by its sound: "qince".
func soundsLikeNumber(w string) bool {
	for n := range numberWords {
		if sound(n) == sound(w) {
			return true
		}
	}
	return false
}

// joinSlips makes one word of a word with a digit hit in place of the letter
// above it: "fr0nt", "k1tchen". Its digit is no number. No number is made of one.
func joinSlips(toks []token) []token {
	first := 1
	for first < len(toks) && (toks[first].kind != number || !toks[first].glued) {
		first++
	}
	if first >= len(toks) {
		return toks
	}
	out := toks[:first]
	for i := first; i < len(toks); i++ {
		t := toks[i]
		if n := len(out); n > 0 && i+1 < len(toks) && t.kind == number && t.glued && out[n-1].kind == word && toks[i+1].kind == word &&
			toks[i+1].glued {
			if l := letterBelow(t.num.digits); l != "" && isLetter(out[n-1].raw[0]) && len(out[n-1].text)+len(toks[i+1].text) >= 3 &&
				!soundsLikeNumber(out[n-1].text+l+toks[i+1].text) {
				w := &out[n-1]
				w.becomes(word, w.text+l+toks[i+1].text)
				w.raw += t.raw + toks[i+1].raw
				w.span.to = toks[i+1].span.to
				i++
				continue
			}
		}
		out = append(out, t)
	}
	return out
}

// headMarks makes colons of the signs that set off the heads of a note's lines: "Meter > 117"
// over "House side > 116".
func headMarks(toks []token) {
	heads := func(do func(i int)) {
		words := 0
		for i := range toks {
			switch t := &toks[i]; {
			case t.kind == mark && t.text == "\n":
				words = 0
			case t.kind == word && words >= 0:
				words++
			case t.kind == mark && (t.text == ">" || t.text == "->") && words > 0 && words <= 4 && !t.glued && i+1 < len(toks) && !toks[i+1].glued:
				do(i)
				words = -1
			default:
				words = -1
			}
		}
	}
	n := 0
	heads(func(int) { n++ })
	if n >= 3 {
		heads(func(i int) { toks[i].text = ":" })
	}
}

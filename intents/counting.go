package intents

// spelled puts counts and ages that are told in words of their own into plain ones:
// "half a dozen yrs" is six, "a decade old" ten years, "7 y/o" years old, and dots
// that lead to an entry of a list ("Softener ..... yes") are a colon.
func spelled(toks []token) []token {
	first := 0
	for first < len(toks) && !tellsCount(toks[first].text) {
		first++
	}
	out := toks[:first]
	for i := first; i < len(toks); i++ {
		t := toks[i]
		next := func(k int) string {
			if i+k < len(toks) {
				return toks[i+k].text
			}
			return ""
		}
		switch {
		case t.kind == mark && t.text == "..." && len(t.raw) > 3:
			t.becomes(mark, ":")
		case t.kind == mark && t.text == "." && !t.glued && i > 0 && toks[i-1].kind == word && i+1 < len(toks) && !toks[i+1].glued &&
			toks[i+1].kind != mark &&
			(toks[i+1].kind == number || lineEnd(toks, i+1)-i <= 3):
			t.becomes(mark, ":") // "Recirculation pump . none"
		case t.kind == mark && t.text == "?" && next(1) == "?":
			continue
		case t.kind == mark && t.text == "?" && next(1) == "," && len(out) > 0 && ageWord(out[len(out)-1].text):
			t = asWord(t, "unknown", t) // "reg age ?, owner clueless"
		case t.text == "y" && next(1) == "/" && next(2) == "o" && len(out) > 0 && out[len(out)-1].kind == number:
			t = asWord(t, "yo", toks[i+2])
			i += 2
		case t.text == "half" && next(1) == "a" && next(2) == "dozen":
			t = asWord(t, "six", toks[i+2])
			i += 2
		case t.text == "a" && (next(1) == "year" || next(1) == "yr") && next(2) == "old":
			t = asWord(t, "one", t) // "prv is a year old"
		case t.text == "a" && next(1) == "dozen":
			t = asWord(t, "twelve", toks[i+1])
			i++
		case t.text == "a" && next(1) == "couple":
			n := 2
			if next(2) == "of" {
				n = 3
			}
			if w := next(n); w == "years" || w == "yrs" {
				t = asWord(t, "two", toks[i+n-1])
				i += n - 1
			}
		case t.text == "decade" || t.text == "decades":
			count := "ten"
			if len(out) > 0 && (out[len(out)-1].text == "two" || t.text == "decades") {
				count = "twenty"
			}
			if len(out) > 0 && (out[len(out)-1].text == "a" || out[len(out)-1].text == "two") {
				out = out[:len(out)-1]
			}
			out = append(out, asWord(t, count, t))
			t.becomes(word, "years")
			t.raw = "years"
		}
		out = append(out, t)
	}
	return out
}

// tellsCount tells whether what spelled changes may begin at a word or a mark.
func tellsCount(s string) bool {
	switch s {
	case "...", ".", "?", "y", "half", "a", "decade", "decades":
		return true
	}
	return false
}

// ageWord tells whether a word asks for an age, so that a question mark behind it says that nobody knows.
func ageWord(s string) bool {
	switch s {
	case "age", "year", "yr", "date", "edad":
		return true
	}
	return false
}

// asWord is a token that stands for those up to last.
func asWord(t token, text string, last token) token {
	t.becomes(word, text)
	t.raw = text
	t.span.to = last.span.to
	return t
}

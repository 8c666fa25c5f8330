package intents

import "slices"

// numbered undoes the numbers of a list: in a row each stands for the end of a line, "1) rear
// 88 2) heater off (3) no tank", and at the start of a line it says nothing. Only numbers that
// count from one on are taken, a lone "1)" is none.
func numbered(toks []token) []token {
	var at []span // the tokens of each number with its marks
	for i := 0; i+1 < len(toks); i++ {
		s, by := listNumber(toks, i)
		if by == "" || listPlace(&toks[i]) != len(at)+1 || len(at) > 0 && toks[at[0].to-2].kind != toks[i].kind {
			continue
		}
		if len(at) == 0 && by == "." && s.from > 0 && !oneOf(toks[s.from-1].text, "\n", ":") {
			continue // "Tank is 1. Kitchen 61"
		}
		if n := len(at); n > 0 && toks[at[n-1].to-1].text != by {
			continue
		}
		at = append(at, s)
	}
	if len(at) < 2 {
		return toks
	}
	if at[1].from == at[0].to+1 && toks[at[0].to].kind == number {
		return toks // "1) 60 2) 61 3) 60 all kitchen": its numbers stay in one clause
	}
	for _, s := range slices.Backward(at) {
		if s.from > 0 && toks[s.from-1].text != "\n" {
			end := &toks[s.from]
			end.num = nil
			end.becomes(mark, "\n")
			s.from++
		}
		toks = slices.Delete(toks, s.from, s.to)
	}
	return toks
}

// listPlace returns the place in a list that a token counts, "1" or "a"; 0 for none.
func listPlace(t *token) int {
	switch {
	case t.kind == word && len(t.text) == 1 && t.text[0] >= 'a' && t.text[0] <= 'j':
		return int(t.text[0]-'a') + 1
	case t.kind != number || !t.num.integer || t.num.value > 20 || len(t.num.digits) > 2 || t.num.words:
		return 0
	}
	return int(t.num.value)
}

// listNumber returns the tokens of the list's number at i with its marks and the mark behind
// it; the mark is empty where no such number stands.
func listNumber(toks []token, i int) (s span, by string) {
	t, next := &toks[i], &toks[i+1]
	if listPlace(t) == 0 || next.kind != mark || !next.glued {
		return s, ""
	}
	if t.kind == word && next.text == "." {
		return s, "" // "rear b. 88"
	}
	if next.text != ")" && (next.text != "." || i+2 >= len(toks) || toks[i+2].glued) {
		return s, ""
	}
	s = span{i, i + 2}
	switch {
	case i == 0:
	case toks[i-1].text == "(" && t.glued && next.text == ")":
		s.from--
	case t.glued && toks[i-1].text != "\n":
		return s, ""
	}
	return s, next.text
}

// countedLines undoes bare numbers that count the lines of a list: "1 kitchen 4.4 bar / 2 shower 4.3 /
// 3 heater on". Three lines that follow each other must count from one.
func countedLines(toks []token) []token {
	var at []int
	for i := range toks {
		if i > 0 && toks[i-1].text != "\n" || toks[i].kind == mark {
			continue
		}
		n := float64(len(at) + 1)
		if t := &toks[i]; t.kind == number && t.num.integer && !t.num.words && t.num.value == n && i+1 < len(toks) && toks[i+1].kind == word {
			at = append(at, i)
		} else if len(at) > 0 {
			break
		}
	}
	if len(at) < 3 {
		return toks
	}
	for _, i := range slices.Backward(at) {
		toks = slices.Delete(toks, i, i+1)
	}
	return toks
}

package intents

import "strconv"

// Fractions and decimals: "318 1/2", "58 and a half", "sixty point five".

// pointAfter reads "point five" or "punto dos" at i: its digits and length.
func pointAfter(toks []token, i int) (string, int) {
	if i+1 >= len(toks) || toks[i].kind != word || (toks[i].text != "point" && toks[i].text != "punto") {
		return "", 0
	}
	w, ok := numberWords[toks[i+1].text]
	switch {
	case ok && (w.class == 'd' || w.class == 'z' || w.class == 'o'):
		return strconv.Itoa(w.value), 2
	case toks[i+1].kind == number && toks[i+1].num.integer && len(toks[i+1].num.digits) == 1:
		return toks[i+1].num.digits, 2
	}
	return "", 0
}

// halfAfter measures "and a half", "y medio".
func halfAfter(toks []token, i int) int {
	if i+2 < len(toks) && toks[i].text == "and" && toks[i+1].text == "a" && toks[i+2].text == "half" {
		return 3
	}
	if i+1 < len(toks) && toks[i].text == "y" && (toks[i+1].text == "medio" || toks[i+1].text == "media") {
		return 2
	}
	return 0
}

// fractionAfter measures what makes toks[i], in digits, a fraction: "1/2" after
// it, "and a half", "point 5".
func fractionAfter(toks []token, i int) int {
	t := toks[i]
	if !t.num.integer || t.num.time || t.num.phone || t.num.money {
		return 0
	}
	if i+3 < len(toks) && isHalf(toks, i+1) && !toks[i+1].glued && len(t.num.digits) <= 5 {
		return 3
	}
	if k := halfAfter(toks, i+1); k > 0 {
		return k
	}
	if _, k := pointAfter(toks, i+1); k > 0 {
		return k
	}
	if isHalf(toks, i) {
		return 2
	}
	return 0
}

// isHalf tells whether tokens i, i+1, i+2 are one of the fractions on a gauge or a house.
func isHalf(toks []token, i int) bool {
	if i+2 >= len(toks) {
		return false
	}
	a, s, b := toks[i], toks[i+1], toks[i+2]
	if a.kind != number || b.kind != number || s.text != "/" || !s.glued || !b.glued {
		return false
	}
	switch a.text + "/" + b.text {
	case "1/2", "1/4", "3/4", "1/3", "2/3", "1/8", "3/8", "5/8", "7/8":
		return true
	}
	return false
}

func withFraction(toks []token, i, n int) token {
	t := toks[i]
	num := *t.num
	last := toks[i+n]
	switch {
	case n == 3 && toks[i+1].kind == number: // 318 1/2
		num.value += toks[i+1].num.value / toks[i+3].num.value
		num.digits += " " + toks[i+1].text + "/" + toks[i+3].text
	case n == 2 && toks[i+1].text == "/":
		num.value = t.num.value / toks[i+2].num.value
		num.digits = t.text + "/" + toks[i+2].text
	case toks[i+1].text == "point" || toks[i+1].text == "punto":
		d, _ := pointAfter(toks, i+1)
		num.digits += "." + d
		num.value = decimal(num.digits)
	default:
		num.value += 0.5
		num.digits += " 1/2"
	}
	num.integer, num.decimals = false, 1
	t.num = &num
	t.span.to = last.span.to
	return t
}

package intents

import (
	"strconv"
	"strings"
)

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

// part is a fraction told in words after a number.
type part struct {
	words  string
	value  float64
	digits string
}

var parts = [...]part{
	{"and a half", 0.5, "1/2"}, {"and one half", 0.5, "1/2"}, {"y medio", 0.5, "1/2"}, {"y media", 0.5, "1/2"},
	{"and a quarter", 0.25, "1/4"}, {"and one quarter", 0.25, "1/4"}, {"y cuarto", 0.25, "1/4"}, {"y un cuarto", 0.25, "1/4"},
	{"and three quarters", 0.75, "3/4"}, {"y tres cuartos", 0.75, "3/4"},
}

// partAfter finds "and a half", "y cuarto" at i: the fraction and its length in tokens.
func partAfter(toks []token, i int) (part, int) {
	if i >= len(toks) || toks[i].text != "and" && toks[i].text != "y" {
		return part{}, 0
	}
next:
	for _, p := range parts {
		n := 0
		for w := range strings.FieldsSeq(p.words) {
			if i+n >= len(toks) || toks[i+n].kind != word || toks[i+n].text != w {
				continue next
			}
			n++
		}
		return p, n
	}
	return part{}, 0
}

// fractionAfter measures what makes toks[i], in digits, a fraction: "1/2" after
// it, "and a half", "point 5".
func fractionAfter(toks []token, i int) int {
	t := &toks[i]
	if !t.num.integer || t.num.time || t.num.phone || t.num.money {
		return 0
	}
	if i+3 < len(toks) && isHalf(toks, i+1) && !toks[i+1].glued && len(t.num.digits) <= 5 {
		return 3
	}
	if _, k := partAfter(toks, i+1); k > 0 {
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

// withFraction joins the number at i with the fraction of n tokens behind it.
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
		p, _ := partAfter(toks, i+1)
		num.value += p.value
		num.digits += " " + p.digits
	}
	num.integer, num.decimals = false, 1
	t.num = &num
	t.span.to = last.span.to
	return t
}

// halfBar measures "half a" before "bar", "medio" before "bar"; 0 for none.
func halfBar(toks []token, i int) int {
	n := 1
	switch toks[i].text {
	case "half":
		for i+n < len(toks) && (toks[i+n].text == "a" || toks[i+n].text == "of") {
			n++
		}
	case "medio", "media":
	default:
		return 0
	}
	if i+n >= len(toks) || toks[i+n].text != "bar" && toks[i+n].text != "bars" {
		return 0
	}
	return n
}

// englishNumber tells whether a number word is plain English.
func englishNumber(s string) bool {
	switch s {
	case "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "twenty", "thirty", "forty", "fifty",
		"sixty", "seventy", "eighty", "ninety", "hundred":
		return true
	}
	return false
}

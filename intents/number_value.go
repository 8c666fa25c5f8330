package intents

import "strconv"

// numClass returns the class and the value of the word of number at i, before to; 0 for none.
func numClass(toks []token, i, to int) (byte, int) {
	if i >= to {
		return 0, 0
	}
	w, ok := numberWords[toks[i].text]
	if !ok {
		return 0, 0
	}
	return w.class, w.value
}

// two reads a number below 100: how many tokens it took, 0 for none.
func two(toks []token, i, to int) (int, int) {
	switch c, v := numClass(toks, i, to); c {
	case 'd', 'z':
		return v, 1
	case 't', 'v':
		return v, 1
	case 'x':
		k := i + 1
		if k < to && (toks[k].text == "y" || toks[k].kind == mark) {
			k++
		}
		if c2, d := numClass(toks, k, to); c2 == 'd' {
			return v + d, k + 1 - i
		}
		return v, 1
	}
	return 0, 0
}

// readOne reads one number as people say it: a cardinal ("a hundred and ten"),
// or digits in groups ("one twenty three", "eleven forty", "one oh five",
// "twenty fourteen"). It returns the number of tokens, 0 for no number.
func readOne(toks []token, i, to int) (value int, digits string, n int) {
	if toks[i].text == "buck" {
		return buckTen(toks, i, to)
	}
	c, _ := numClass(toks, i, to)
	switch c {
	case 'k': // mil, mil cien
		rest, k := below1000(toks, i+1, to)
		return spoken(1000+rest, 1+k)
	case 'h', 'H': // hundred …, ciento …
		rest, k := hundreds(toks, i, to)
		if k == 0 {
			return 0, "", 0
		}
		return thousands(toks, i, to, rest, k)
	case 'o':
		// "oh nine", a year of two digits; its role says whether it is one
		if c, d := numClass(toks, i+1, to); c == 'd' && i+2 == to {
			return d, "0" + strconv.Itoa(d), 2
		}
		return 0, "", 0
	}
	first, k := two(toks, i, to)
	if k == 0 {
		return 0, "", 0
	}
	next, _ := numClass(toks, i+k, to)
	switch {
	case next == 'h':
		return hundredsOf(toks, i, to, first, k)
	case next == 'k' && first >= 30 && toks[i+k].text == "mil" && i > 0 && measures(toks[i-1].text):
		return spoken(first, k) // "tenía noventa y cinco | mil cuatrocientos de Oak"
	case next == 'k':
		rest, m := below1000(toks, i+k+1, to)
		return spoken(first*1000+rest, k+1+m)
	case next == 'z' && first > 0 && first < 10 && i+k+1 == to:
		return spoken(first*10, k+1) // "seven zero"
	case next == 'o' || next == 'z' && first > 0:
		return withNoughts(toks, i, to, first, k)
	case c == 'd' && next == 'd':
		return digitByDigit(toks, i, to)
	case (c == 'd' || isTens(c)) && isTens(next):
		return pair(toks, i, to, first, k, c != 'd')
	}
	return spoken(first, k)
}

// spoken is a number with its digits, told in n tokens.
func spoken(value, n int) (int, string, int) { return value, strconv.Itoa(value), n }

// isTens tells whether a class of number words is one of 10 to 99.
func isTens(class byte) bool { return class == 't' || class == 'x' || class == 'v' }

// buckTen reads "a buck ten", 110, and "buck oh five".
func buckTen(toks []token, i, to int) (int, string, int) {
	if c, _ := numClass(toks, i+1, to); c == 'o' {
		if _, d := numClass(toks, i+2, to); d > 0 {
			return spoken(100+d, 3)
		}
		return 0, "", 0
	}
	v, k := two(toks, i+1, to)
	if k == 0 {
		return 0, "", 0
	}
	return spoken(100+v, k+1)
}

// hundredsOf reads "two hundred and ten", "eleven hundred"; the first k tokens are how many
// hundreds.
func hundredsOf(toks []token, i, to, first, k int) (int, string, int) {
	j := i + k + 1
	if j < to && toks[j].text == "and" {
		j++
	}
	rest, m := two(toks, j, to)
	if m == 0 {
		j = i + k + 1
	}
	return thousands(toks, i, to, first*100+rest, j+m-i)
}

// withNoughts reads "one oh five", "eighteen oh four", "dieciocho cero cuatro", "one oh oh
// five".
func withNoughts(toks []token, i, to, first, k int) (int, string, int) {
	c, d := numClass(toks, i+k+1, to)
	if c == 'd' {
		return spoken(first*100+d, k+2)
	}
	if c == 'o' || c == 'z' {
		if c, d := numClass(toks, i+k+2, to); c == 'd' {
			return spoken(first*1000+d, k+3)
		}
	}
	return spoken(first, k)
}

// digitByDigit reads "one four one zero", of up to six digits.
func digitByDigit(toks []token, i, to int) (int, string, int) {
	s, j := "", i
	for ; j < to; j++ {
		c, d := numClass(toks, j, to)
		if c != 'd' && c != 'z' && c != 'o' {
			break
		}
		s += strconv.Itoa(d)
	}
	s = s[:min(len(s), 6)]
	total, _ := strconv.Atoi(s)
	return total, s, j - i
}

// pair reads two numbers that make one: "one twenty three", "eleven forty", "twenty
// fourteen"; years tells that the second may begin another: "sixty six | fourteen oh five".
func pair(toks []token, i, to, first, k int, years bool) (int, string, int) {
	second, m := two(toks, i+k, to)
	if c, _ := numClass(toks, i+k+m, to); years && (c == 'o' || c == 'z') {
		if c, _ := numClass(toks, i+k+m+1, to); c == 'd' {
			return spoken(first, k)
		}
	}
	return spoken(first*100+second, k+m)
}

// hundreds reads "hundred (and) ten", "ciento quince", "doscientos tres".
func hundreds(toks []token, i, to int) (int, int) {
	c, v := numClass(toks, i, to)
	if c != 'h' && c != 'H' {
		return 0, 0
	}
	j := i + 1
	if j < to && (toks[j].text == "and" || toks[j].text == "y") {
		j++
	}
	rest, m := two(toks, j, to)
	if m == 0 {
		return v, 1
	}
	return v + rest, j + m - i
}

// below1000 reads what follows a thousand: "a hundred and ten", "two hundred three", "sixty".
func below1000(toks []token, i, to int) (int, int) {
	j := i
	if j < to && toks[j].text == "and" {
		j++
	}
	if v, k := hundreds(toks, j, to); k > 0 {
		return v, j + k - i
	}
	v, k := two(toks, j, to)
	if k == 0 {
		return 0, 0
	}
	if c, _ := numClass(toks, j+k, to); c == 'h' && v < 10 {
		rest, m := 0, 0
		jj := j + k + 1
		if jj < to && toks[jj].text == "and" {
			jj++
		}
		rest, m = two(toks, jj, to)
		if m == 0 {
			jj = j + k + 1
		}
		return v*100 + rest, jj + m - i
	}
	return v, j + k - i
}

// thousands goes on after the first k tokens, which are total, where "thousand" follows.
func thousands(toks []token, i, to, total, k int) (int, string, int) {
	if c, _ := numClass(toks, i+k, to); c == 'k' {
		rest, m := below1000(toks, i+k+1, to)
		total = total*1000 + rest
		return total, strconv.Itoa(total), k + 1 + m
	}
	return total, strconv.Itoa(total), k
}

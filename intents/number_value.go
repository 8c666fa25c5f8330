package intents

import "strconv"

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
// "twenty fourteen").
func readOne(toks []token, i, to int) (value int, digits string, n int) {
	if toks[i].text == "buck" { // "a buck ten" is 110
		if c, _ := numClass(toks, i+1, to); c == 'o' {
			if _, d := numClass(toks, i+2, to); d > 0 {
				return 100 + d, strconv.Itoa(100 + d), 3
			}
			return 0, "", 0
		}
		v, k := two(toks, i+1, to)
		if k == 0 {
			return 0, "", 0
		}
		return 100 + v, strconv.Itoa(100 + v), k + 1
	}
	c, v := numClass(toks, i, to)
	// mil, mil cien, hundred ..., ciento ...
	switch c {
	case 'k':
		rest, k := below1000(toks, i+1, to)
		return 1000 + rest, strconv.Itoa(1000 + rest), 1 + k
	case 'h', 'H':
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
	c2, _ := numClass(toks, i+k, to)
	switch {
	case c2 == 'h':
		// "two hundred and ten", "eleven hundred"
		rest, m := 0, 0
		j := i + k + 1
		if j < to && toks[j].text == "and" {
			j++
		}
		rest, m = two(toks, j, to)
		if m == 0 {
			j = i + k + 1
		}
		total := first*100 + rest
		return thousands(toks, i, to, total, j+m-i)
	case c2 == 'k' && first >= 30 && toks[i+k].text == "mil" && i > 0 && measures(toks[i-1].text):
		return first, strconv.Itoa(first), k // "tenía noventa y cinco | mil cuatrocientos de Oak"
	case c2 == 'k':
		rest, m := below1000(toks, i+k+1, to)
		total := first*1000 + rest
		return total, strconv.Itoa(total), k + 1 + m
	case c2 == 'z' && first > 0 && first < 10 && i+k+1 == to:
		return first * 10, strconv.Itoa(first * 10), k + 1 // "seven zero"
	case c2 == 'o' || c2 == 'z' && k >= 1 && first > 0:
		// "one oh five", "eighteen oh four", "dieciocho cero cuatro"
		if c3, d := numClass(toks, i+k+1, to); c3 == 'd' {
			total := first*100 + d
			// "one oh oh five"? left alone
			return total, strconv.Itoa(total), k + 2
		}
		if c3, _ := numClass(toks, i+k+1, to); c3 == 'o' || c3 == 'z' {
			if c4, d := numClass(toks, i+k+2, to); c4 == 'd' {
				total := first*1000 + d
				return total, strconv.Itoa(total), k + 3
			}
		}
		return first, strconv.Itoa(first), k
	case c == 'd' && (c2 == 'x' || c2 == 't' || c2 == 'v'):
		// "one twenty three", and "four ten fifteen"? no: three digits
		second, m := two(toks, i+k, to)
		total := first*100 + second
		return total, strconv.Itoa(total), k + m
	case c == 'd' && c2 == 'd':
		// single digits: "one four one zero"
		s := strconv.Itoa(v)
		j := i + 1
		for j < to {
			cc, d := numClass(toks, j, to)
			if cc != 'd' && cc != 'z' && cc != 'o' {
				break
			}
			s += strconv.Itoa(d)
			j++
		}
		if len(s) > 6 {
			s = s[:6]
		}
		total, _ := strconv.Atoi(s)
		return total, s, j - i
	case (c == 't' || c == 'x' || c == 'v') && (c2 == 'x' || c2 == 't' || c2 == 'v'):
		// "eleven forty", "twenty fourteen"
		second, m := two(toks, i+k, to)
		if c3, _ := numClass(toks, i+k+m, to); c3 == 'o' || c3 == 'z' {
			if c4, _ := numClass(toks, i+k+m+1, to); c4 == 'd' {
				return first, strconv.Itoa(first), k // "sixty six | fourteen oh five"
			}
		}
		total := first*100 + second
		return total, strconv.Itoa(total), k + m
	}
	return first, strconv.Itoa(first), k
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

func thousands(toks []token, i, to, total, k int) (int, string, int) {
	if c, _ := numClass(toks, i+k, to); c == 'k' {
		rest, m := below1000(toks, i+k+1, to)
		total = total*1000 + rest
		return total, strconv.Itoa(total), k + 1 + m
	}
	return total, strconv.Itoa(total), k
}

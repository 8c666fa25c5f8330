package intents

import "strings"

// Numbers written in digits.

// digits reads a number written in digits at s[i], as text too; it ends at byte n.
func digits(s string, i int, d *scratch) (num *numeral, text string, n int) {
	n = i
	for n < len(s) && isDigit(s[n]) {
		n++
	}
	num = d.numeral()
	num.integer = true
	switch {
	case n-i >= 1 && n-i <= 2 && n+2 < len(s) && s[n] == ':' && isDigit(s[n+1]) && isDigit(s[n+2]) && !(n+3 < len(s) && isDigit(s[n+3])):
		num.time = true
		n += 3
		if n+2 < len(s) && s[n] == ':' && isDigit(s[n+1]) && isDigit(s[n+2]) {
			n += 3
		}
		text = s[i:n]
	case n-i == 3 && n+4 < len(s) && (s[n] == '-' || s[n] == '.' || s[n] == ' ') && isDigit(s[n+1]) && phone(s[n+1:]):
		num.phone = true
		n += phoneLen(s[n:])
		text = s[i:n]
	default:
		for n+3 < len(s) && s[n] == ',' && isDigit(s[n+1]) && isDigit(s[n+2]) && isDigit(s[n+3]) &&
			!(n+4 < len(s) && isDigit(s[n+4])) && n-i <= 3 {
			n += 4
		}
		if text = s[i:n]; len(text) > len("9999") {
			text = strings.ReplaceAll(text, ",", "")
		}
		if n+1 < len(s) && s[n] == '.' && isDigit(s[n+1]) {
			m := n + 1
			for m < len(s) && isDigit(s[m]) {
				m++
			}
			if !(m < len(s) && s[m] == '.' && m+1 < len(s) && isDigit(s[m+1])) {
				num.decimals = m - n - 1
				num.integer = false
				text += s[n:m]
				n = m
			}
		} else if decimalComma(s, i, n) {
			// "4,2 bar": a decimal comma, one digit after it; "60,62,7" is a list
			num.decimals, num.integer = 1, false
			text += "." + s[n+1:n+2]
			n += 2
		}
	}
	num.digits = text
	if !num.time && !num.phone {
		num.value = decimal(text)
	}
	if n < len(s) && s[n] == '%' {
		num.percent = true
		n++
	}
	return num, text, n
}

// manyPoints returns where digits from byte i end that hold two points or more, 0 where they do not.
func manyPoints(s string, i int) int {
	n, points := i, 0
	for n < len(s) && (isDigit(s[n]) || s[n] == '.' && n+1 < len(s) && isDigit(s[n+1])) {
		if s[n] == '.' {
			points++
		}
		n++
	}
	if points < 2 || s[i+3] == '.' && phoneLen(s[i+3:]) > 0 {
		return 0
	}
	return n
}

// decimalComma tells whether s[n], behind the digits that begin at i, is a decimal comma: one
// digit follows it, and no list goes on before or after.
func decimalComma(s string, i, n int) bool {
	if n+1 >= len(s) || s[n] != ',' || !isDigit(s[n+1]) || n-i > 2 {
		return false
	}
	if n+2 < len(s) && (isDigit(s[n+2]) || s[n+2] == ',') {
		return false
	}
	return i <= 1 || s[i-1] != ',' || !isDigit(s[i-2])
}

// decimal reads digits with at most one point; beyond 15 digits it is only a
// number too large for anything here.
func decimal(s string) float64 {
	v, scale, point := 0.0, 1.0, false
	for i := range len(s) {
		if s[i] == '.' {
			point = true
			continue
		}
		if v > 1e15 {
			break
		}
		v = v*10 + float64(s[i]-'0')
		if point {
			scale *= 10
		}
	}
	return v / scale
}

func phone(rest string) bool { return phoneLen(" "+rest) > 0 }

// phoneLen measures "-0100" (with three digits before it) or "-555-0100"; 0 when it is none.
func phoneLen(s string) int {
	group := func(at, n int) bool {
		if at+n > len(s) {
			return false
		}
		for k := range n {
			if !isDigit(s[at+k]) {
				return false
			}
		}
		return at+n == len(s) || !isDigit(s[at+n])
	}
	sep := func(at int) bool { return at < len(s) && (s[at] == '-' || s[at] == '.' || s[at] == ' ') }
	if group(1, 3) && sep(4) && group(5, 4) {
		return 9
	}
	if s[0] != ' ' && group(1, 4) {
		return 5
	}
	return 0
}

package intents

import (
	"slices"
	"strings"
	"unicode/utf8"
)

// kind is the kind of a token.
type kind uint8

const (
	word kind = iota
	number
	mark
)

// token is a word, a number or a mark of the clean text.
type token struct {
	kind   kind
	text   string // folded: lower case, no accents; of a mark, the mark ("." also for a line's end: "\n")
	raw    string // as typed
	span   span   // in the clean text
	glued  bool   // no blank between this and the token before
	caps   bool   // begins with a capital letter
	quoted bool   // stands in a quoted line
	short  bool   // typed short, text is the whole word: "d" for "de"
	num    *numeral
	cand   []int32 // lexicon words that it may stand for
	entry  *entry  // what the lexicon knows of its text, once asked
	cues   cueSet  // what it lends a clause that may ask, once cued
	cued   bool
}

// numeral is what a number token says.
type numeral struct {
	value    float64
	digits   string // as digits, with what a house number needs kept ("318 1/2", "12A")
	integer  bool
	decimals int
	words    bool // spoken: "ninety two"
	negative bool
	ordinal  bool // "19th"
	apos     bool // '09
	time     bool // 2:05
	phone    bool
	money    bool
	percent  bool
	void     bool // no number of the report's: a list's "1)"
}

func isDigit(b byte) bool  { return b >= '0' && b <= '9' }
func isLetter(b byte) bool { return b >= 'a' && b <= 'z' || b >= 'A' && b <= 'Z' }

// fold returns a word in lower case without accents.
func fold(s string) string {
	plain := true
	for i := range len(s) {
		if b := s[i]; b >= utf8.RuneSelf || b >= 'A' && b <= 'Z' {
			plain = false
			break
		}
	}
	if plain {
		return s
	}
	var b strings.Builder
	b.Grow(len(s))
	for _, r := range s {
		switch {
		case r >= 'A' && r <= 'Z':
			b.WriteByte(byte(r) + 'a' - 'A')
		case r < utf8.RuneSelf:
			b.WriteByte(byte(r))
		default:
			b.WriteString(plainLetter(r))
		}
	}
	return b.String()
}

func plainLetter(r rune) string {
	switch r {
	case 'á', 'à', 'â', 'ä', 'ã', 'Á', 'À', 'Â', 'Ä', 'Ã':
		return "a"
	case 'é', 'è', 'ê', 'ë', 'É', 'È', 'Ê', 'Ë':
		return "e"
	case 'í', 'ì', 'î', 'ï', 'Í', 'Ì', 'Î', 'Ï':
		return "i"
	case 'ó', 'ò', 'ô', 'ö', 'õ', 'Ó', 'Ò', 'Ô', 'Ö', 'Õ':
		return "o"
	case 'ú', 'ù', 'û', 'ü', 'Ú', 'Ù', 'Û', 'Ü':
		return "u"
	case 'ñ', 'Ñ':
		return "n"
	case 'ç', 'Ç':
		return "c"
	}
	return strings.ToLower(string(r))
}

// tokenize cuts clean text into tokens.
func tokenize(c clean, d *scratch) []token {
	s := c.text
	toks := slices.Grow(d.toks[:0], len(s)/4+4)
	quotes := c.quoted
	end := -1 // where the last token ended
	add := func(t token) {
		t.glued = t.span.from == end && end >= 0
		for len(quotes) > 0 && t.span.from >= quotes[0].to {
			quotes = quotes[1:]
		}
		t.quoted = len(quotes) > 0 && t.span.from >= quotes[0].from
		end = t.span.to
		toks = append(toks, t)
	}
	for i := 0; i < len(s); {
		b := s[i]
		switch {
		case b == ' ':
			i++
		case isDigit(b):
			t := digits(s, i, d)
			if end := t.span.to; t.num.integer && len(t.num.digits) <= 2 && end < len(s) && (s[end] == 'o' || s[end] == 'O') && strings.HasPrefix(s[end+1:], " (") && !wordByte(s, i-1) {
				t.num.value, t.num.digits = t.num.value*10, t.num.digits+"0" // "6o (sixty)": the letter for the digit, and the number said again
				t.text, t.raw, t.span.to = t.num.digits, s[i:end+1], end+1
			}
			i = t.span.to
			add(t)
		case b == '\'' && i+2 < len(s) && isDigit(s[i+1]) && isDigit(s[i+2]) && !(i+3 < len(s) && isDigit(s[i+3])) && !wordByte(s, i-1):
			v := float64(s[i+1]-'0')*10 + float64(s[i+2]-'0')
			add(token{kind: number, text: s[i : i+3], raw: s[i : i+3], span: span{i, i + 3}, num: &numeral{value: v, integer: true, apos: true, digits: s[i+1 : i+3]}})
			i += 3
		case b == '.' && i+1 < len(s) && isDigit(s[i+1]) && !wordByte(s, i-1):
			t := digits(s, i, d)
			if t.span.to == i { // ".85.7" is no number: which point is the slip nobody knows
				n := i + 1
				for n < len(s) && (isDigit(s[n]) || s[n] == '.') {
					n++
				}
				add(token{kind: mark, raw: s[i:n], text: ".", span: span{i, n}})
				i = n
				continue
			}
			i = t.span.to
			add(t)
		case b == '-' && i+1 < len(s) && isDigit(s[i+1]) && !wordByte(s, i-1) && (i == 0 || s[i-1] == ' ' || s[i-1] == '\n' || s[i-1] == ':' || s[i-1] == '='):
			t := digits(s, i+1, d)
			t.num.negative = true
			t.num.value = -t.num.value
			t.span.from = i
			t.raw = s[i:t.span.to]
			i = t.span.to
			add(t)
		case b == '$' && i+1 < len(s) && (isDigit(s[i+1]) || (s[i+1] == ' ' || s[i+1] == ':') && i+2 < len(s) && (isDigit(s[i+2]) || s[i+2] == ' ' && i+3 < len(s) && isDigit(s[i+3]))):
			j := i + 1
			for s[j] == ' ' || s[j] == ':' {
				j++ // "$ 95", "$: 95"
			}
			t := digits(s, j, d)
			t.num.money = true
			t.span.from = i
			i = t.span.to
			add(t)
		case strings.HasPrefix(s[i:], "→"):
			add(token{kind: mark, raw: "→", text: "->", span: span{i, i + len("→")}})
			i += len("→")
		case isLetter(b) || b >= utf8.RuneSelf:
			n := letters(s, i)
			raw := s[i : i+n]
			t := token{kind: word, raw: raw, text: contraction(fold(raw)), span: span{i, i + n}}
			r, _ := utf8.DecodeRuneInString(raw)
			t.caps = r >= 'A' && r <= 'Z' || strings.ContainsRune("ÁÉÍÓÚÑ", r)
			i += n
			add(t)
		case b == '&' || b == '+':
			add(token{kind: word, raw: s[i : i+1], text: "and", span: span{i, i + 1}})
			i++
		case b == '@':
			add(token{kind: word, raw: "@", text: "at", span: span{i, i + 1}})
			i++
		case b == '>' && i > 0 && (s[i-1] == '-' || s[i-1] == '=' || lastNumber(toks) && i+1 < len(s) && (isDigit(s[i+1]) || s[i+1] == ' ')):
			// "85 -> 60", "85>60": an arrow
			for n := len(toks); n > 0 && toks[n-1].kind == mark && (toks[n-1].text == "-" || toks[n-1].text == "=") && toks[n-1].span.to == end; n-- {
				end = toks[n-1].span.from
				toks = toks[:n-1]
			}
			add(token{kind: mark, raw: ">", text: "->", span: span{i, i + 1}})
			i++
		case b == '.':
			n := 1
			for i+n < len(s) && s[i+n] == '.' {
				n++
			}
			text := "."
			if n > 1 {
				text = "..."
			}
			add(token{kind: mark, raw: s[i : i+n], text: text, span: span{i, i + n}})
			i += n
		default:
			add(token{kind: mark, raw: s[i : i+1], text: s[i : i+1], span: span{i, i + 1}})
			i++
		}
	}
	d.toks = toks
	return toks
}

func lastNumber(toks []token) bool { return len(toks) > 0 && toks[len(toks)-1].kind == number }

// letters measures a word: letters with apostrophes inside, dotted letters
// ("p.s.i."), "T&P", "o/n", "w/".
func letters(s string, i int) int {
	n := i
	for n < len(s) {
		b := s[n]
		switch {
		case isLetter(b) || b >= utf8.RuneSelf:
			n++
			continue
		case b == '\'' && n+1 < len(s) && isLetter(s[n+1]) && n > i:
			n++
			continue
		}
		break
	}
	size := n - i
	if size == 1 && n+1 < len(s) && s[n] == '2' && (s[n+1] == 'o' || s[n+1] == 'O') && (s[i] == 'h' || s[i] == 'H') && !wordByte(s, n+2) && !(n+2 < len(s) && isDigit(s[n+2])) {
		return 3 // "h2o"
	}
	// p.s.i.
	if size == 1 && n+1 < len(s) && s[n] == '.' && isLetter(s[n+1]) && !(n+2 < len(s) && isLetter(s[n+2])) {
		m := n
		for m+1 < len(s) && s[m] == '.' && isLetter(s[m+1]) && !(m+2 < len(s) && isLetter(s[m+2])) {
			m += 2
		}
		if m < len(s) && s[m] == '.' {
			m++
		}
		return m - i
	}
	if n < len(s) && (s[n] == '&' || s[n] == '/') && size <= 2 && !wordByte(s, i-1) {
		m := n + 1
		for m < len(s) && isLetter(s[m]) {
			m++
		}
		switch fold(s[i:m]) {
		case "t&p", "tp", "w/o", "w/", "o/n", "f/u", "c/o", "h/w", "c/w", "r/r", "r&r", "r/rd", "r&rd", "h/b",
			"w/h", "e/t", "t/p", "p/u", "n/a", "b/c", "k/s", "l/l", "s/o", "w/d", "w/m", "u/s", "d/s", "w/b":
			if m+1 < len(s) && s[m] == '\'' && (s[m+1] == 'd' || s[m+1] == 'D') {
				return m + 2 - i // "R/R'd"
			}
			return m - i
		}
		if s[n] == '/' && size == 1 && (s[i] == 'w' || s[i] == 'W') {
			return 2 // "w/hose", "w/ hose"
		}
	}
	return size
}

// contraction takes the apostrophes and dots out of a word; the 's of
// "heater's" goes, that of "it's" stays.
func contraction(w string) string {
	if strings.IndexByte(w, '\'') < 0 && strings.IndexByte(w, '.') < 0 {
		return w
	}
	if base, ok := strings.CutSuffix(w, "'s"); ok {
		switch base {
		case "it", "what", "that", "he", "she", "there", "here", "who", "how", "where", "let", "when", "whats":
			return base + "s"
		}
		return strings.ReplaceAll(strings.ReplaceAll(base, "'", ""), ".", "")
	}
	w = strings.ReplaceAll(w, "'", "")
	return strings.ReplaceAll(w, ".", "")
}

// digits reads a number written in digits at s[i].
func digits(s string, i int, d *scratch) token {
	n := i
	for n < len(s) && isDigit(s[n]) {
		n++
	}
	num := d.numeral()
	num.integer = true
	text := s[i:n]
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
		for n+3 < len(s) && s[n] == ',' && isDigit(s[n+1]) && isDigit(s[n+2]) && isDigit(s[n+3]) && !(n+4 < len(s) && isDigit(s[n+4])) && n-i <= 3 {
			n += 4
		}
		text = strings.ReplaceAll(s[i:n], ",", "")
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
	return token{kind: number, text: text, raw: s[i:n], span: span{i, n}, num: num}
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

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
	text   string // folded: lower case, no accents; of a mark, the mark ("." also for a line's end: "\n")
	raw    string // as typed
	span   span   // in the clean text
	num    *numeral
	entry  *entry  // what the lexicon knows of its text, once asked
	cand   []int32 // lexicon words that it may stand for
	cues   cueSet  // what it lends a clause that may ask, once cued
	kind   kind
	glued  bool // no blank between this and the token before
	caps   bool // begins with a capital letter
	quoted bool // stands in a quoted line
	short  bool // typed short, text is the whole word: "d" for "de"
	cued   bool
}

// becomes makes a token another one: a number told in words, a word put right.
func (t *token) becomes(k kind, text string) { t.kind, t.text, t.entry = k, text, nil }

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

func isDigit(b byte) bool { return b >= '0' && b <= '9' }

func isLetter(b byte) bool { return b >= 'a' && b <= 'z' || b >= 'A' && b <= 'Z' }

// tokenize cuts clean text into tokens.
func (l *lexicon) tokenize(c clean, d *scratch) []token {
	z := tokenizer{s: c.text, l: l, d: d, toks: slices.Grow(d.toks[:0], len(c.text)/4+4), quotes: c.quoted, end: -1}
	for i := 0; i < len(z.s); {
		switch b := z.s[i]; {
		case b == ' ':
			i++
		case isLetter(b), b >= utf8.RuneSelf:
			i = z.word(i)
		case isDigit(b):
			i = z.number(i)
		default:
			i = z.sign(i)
		}
	}
	d.toks = z.toks
	return z.toks
}

// tokenizer is the text on its way to tokens. Its steps take what begins at byte i and
// return where they end.
type tokenizer struct {
	s      string
	l      *lexicon
	d      *scratch
	toks   []token
	quotes []span // those not behind yet
	end    int    // where the last token ended
}

// put adds a token.
func (z *tokenizer) put(k kind, text string, from, to int) *token {
	z.toks = slices.Grow(z.toks, 1)[:len(z.toks)+1]
	t := &z.toks[len(z.toks)-1]
	*t = token{} // in its place: a token is large
	t.kind, t.text, t.raw, t.span, t.glued = k, text, z.s[from:to], span{from, to}, from == z.end
	if len(z.quotes) > 0 {
		for len(z.quotes) > 0 && from >= z.quotes[0].to {
			z.quotes = z.quotes[1:]
		}
		t.quoted = len(z.quotes) > 0 && from >= z.quotes[0].from
	}
	z.end = to
	return t
}

// mark adds a mark of n bytes.
func (z *tokenizer) mark(i, n int, text string) int {
	z.put(mark, text, i, i+n)
	return i + n
}

// word takes a word. Most are plain: small letters, then a blank.
func (z *tokenizer) word(i int) int {
	s, n := z.s, i
	for n < len(s) && s[n] >= 'a' && s[n] <= 'z' {
		n++
	}
	if n > i && (n == len(s) || s[n] == ' ' || s[n] == ',') {
		z.put(word, s[i:n], i, n)
		return n
	}
	n = i + letters(s, i)
	t := z.put(word, "", i, n)
	if t.entry = z.l.inSmall(s[i:n]); t.entry != nil {
		t.text = t.entry.word
	} else {
		t.text = contraction(fold(s[i:n]))
	}
	switch b := s[i]; {
	case b < utf8.RuneSelf:
		t.caps = b >= 'A' && b <= 'Z'
	default:
		r, _ := utf8.DecodeRuneInString(s[i:])
		t.caps = strings.ContainsRune("ÁÉÍÓÚÑ", r)
	}
	return n
}

// number takes a number in digits.
func (z *tokenizer) number(i int) int {
	s := z.s
	if n := manyPoints(s, i); n > 0 { // "1.7.00" is no number: which point is the slip nobody knows
		z.put(word, s[i:n], i, n)
		return n
	}
	num, text, end := digits(s, i, z.d)
	if num.integer && len(num.digits) <= 2 && end < len(s) && (s[end] == 'o' || s[end] == 'O') &&
		strings.HasPrefix(s[end+1:], " (") && !wordByte(s, i-1) {
		num.value, num.digits = num.value*10, num.digits+"0" // "6o (sixty)": the letter for the digit, and the number said again
		text, end = num.digits, end+1
	}
	z.put(number, text, i, end).num = num
	return end
}

// sign takes what begins with neither a letter nor a digit: a number with a sign before it, a
// mark, or one that is a word ("&").
func (z *tokenizer) sign(i int) int {
	s := z.s
	switch b := s[i]; {
	case b == '\'' && z.shortYear(i):
		v := float64(s[i+1]-'0')*10 + float64(s[i+2]-'0')
		z.put(number, s[i:i+3], i, i+3).num = &numeral{value: v, integer: true, apos: true, digits: s[i+1 : i+3]}
		return i + 3
	case b == '.' && i+1 < len(s) && isDigit(s[i+1]) && !wordByte(s, i-1):
		num, text, end := digits(s, i, z.d)
		if end == i { // ".85.7" is no number: which point is the slip nobody knows
			n := i + 1
			for n < len(s) && (isDigit(s[n]) || s[n] == '.') {
				n++
			}
			return z.mark(i, n-i, ".")
		}
		z.put(number, text, i, end).num = num
		return end
	case b == '-' && z.minus(i):
		num, text, end := digits(s, i+1, z.d)
		num.negative, num.value = true, -num.value
		z.put(number, text, i, end).num = num
		return end
	case b == '$':
		if end := z.money(i); end > 0 {
			return end
		}
	case b == '&' || b == '+':
		z.put(word, "and", i, i+1)
		return i + 1
	case b == '@':
		z.put(word, "at", i, i+1)
		return i + 1
	case b == '>' && z.arrowHead(i):
		for n := len(z.toks); n > 0 && z.toks[n-1].kind == mark && (z.toks[n-1].text == "-" || z.toks[n-1].text == "=") &&
			z.toks[n-1].span.to == z.end; n-- {
			z.end = z.toks[n-1].span.from
			z.toks = z.toks[:n-1]
		}
		return z.mark(i, 1, "->")
	case b == '.':
		n := 1
		for i+n < len(s) && s[i+n] == '.' {
			n++
		}
		if n > 1 {
			return z.mark(i, n, "...")
		}
	}
	return z.mark(i, 1, s[i:i+1])
}

// shortYear tells whether two digits behind an apostrophe are a year: "'09".
func (z *tokenizer) shortYear(i int) bool {
	s := z.s
	return i+2 < len(s) && isDigit(s[i+1]) && isDigit(s[i+2]) && !(i+3 < len(s) && isDigit(s[i+3])) &&
		(!wordByte(s, i-1) || i > 1 && isLetter(s[i-1]) && isLetter(s[i-2]) && !wordByte(s, i+3)) // "prv'15"
}

// minus tells whether the hyphen at i makes the number behind it a negative one.
func (z *tokenizer) minus(i int) bool {
	s := z.s
	if i+1 >= len(s) || !isDigit(s[i+1]) || wordByte(s, i-1) {
		return false
	}
	return i == 0 || s[i-1] == ' ' || s[i-1] == '\n' || s[i-1] == ':' || s[i-1] == '='
}

// money takes a sum of money, "$95", "$ 95", "$: 95"; it returns 0 when none begins at i.
func (z *tokenizer) money(i int) int {
	s := z.s
	if i+1 >= len(s) || !isDigit(s[i+1]) && s[i+1] != ' ' && s[i+1] != ':' {
		return 0
	}
	j := i + 1
	if !isDigit(s[j]) && !(j+1 < len(s) && (isDigit(s[j+1]) || s[j+1] == ' ' && j+2 < len(s) && isDigit(s[j+2]))) {
		return 0
	}
	for s[j] == ' ' || s[j] == ':' {
		j++
	}
	num, text, end := digits(s, j, z.d)
	num.money = true
	t := z.put(number, text, i, end)
	t.num, t.raw = num, s[j:end]
	return end
}

// arrowHead tells whether the ">" at i ends an arrow: "85 -> 60", "85>60", "15# > 62#".
func (z *tokenizer) arrowHead(i int) bool {
	s := z.s
	if i == 0 {
		return false
	}
	return s[i-1] == '-' || s[i-1] == '=' || (lastNumber(z.toks) || z.lastPounds()) && i+1 < len(s) && (isDigit(s[i+1]) || s[i+1] == ' ')
}

// lastPounds tells whether a number with its unit was read last: "15#", "15 psi".
func (z *tokenizer) lastPounds() bool {
	n := len(z.toks)
	return n > 1 && lastNumber(z.toks[:n-1]) && oneOf(z.toks[n-1].text, "#", "psi", "lb", "lbs")
}

func lastNumber(toks []token) bool { return len(toks) > 0 && toks[len(toks)-1].kind == number }

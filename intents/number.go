package intents

import "strings"

// numberWord is what a word says inside a spoken number.
type numberWord struct {
	class byte // 'd' 1-9, 'z' zero, 't' 10-19, 'x' tens, 'v' 21-29 in one word, 'h' hundred, 'H' 200-900 in one word, 'k' thousand, 'o' "oh"
	value int
}

var numberWords = joinedTens(map[string]numberWord{
	"zero": {'z', 0}, "cero": {'z', 0}, "oh": {'o', 0}, "aught": {'z', 0}, "ought": {'o', 0},
	"one": {'d', 1}, "two": {'d', 2}, "three": {'d', 3}, "four": {'d', 4}, "five": {'d', 5},
	"six": {'d', 6}, "seven": {'d', 7}, "eight": {'d', 8}, "nine": {'d', 9},
	"ten": {'t', 10}, "eleven": {'t', 11}, "twelve": {'t', 12}, "thirteen": {'t', 13}, "fourteen": {'t', 14},
	"fifteen": {'t', 15}, "sixteen": {'t', 16}, "seventeen": {'t', 17}, "eighteen": {'t', 18}, "nineteen": {'t', 19},
	"twenty": {'x', 20}, "thirty": {'x', 30}, "forty": {'x', 40}, "fourty": {'x', 40}, "fifty": {'x', 50},
	"sixty": {'x', 60}, "seventy": {'x', 70}, "eighty": {'x', 80}, "ninety": {'x', 90}, "ninty": {'x', 90},
	"hundred": {'h', 100}, "hunnerd": {'h', 100}, "hunnert": {'h', 100}, "hunderd": {'h', 100}, "thousand": {'k', 1000},
	"uno": {'d', 1}, "un": {'d', 1}, "una": {'d', 1}, "dos": {'d', 2}, "tres": {'d', 3}, "cuatro": {'d', 4}, "cinco": {'d', 5},
	"seis": {'d', 6}, "siete": {'d', 7}, "ocho": {'d', 8}, "nueve": {'d', 9},
	"diez": {'t', 10}, "once": {'t', 11}, "doce": {'t', 12}, "trece": {'t', 13}, "catorce": {'t', 14}, "quince": {'t', 15},
	"dieciseis": {'t', 16}, "diecisiete": {'t', 17}, "dieciocho": {'t', 18}, "diecinueve": {'t', 19},
	"veinte": {'x', 20}, "treinta": {'x', 30}, "cuarenta": {'x', 40}, "cincuenta": {'x', 50},
	"sesenta": {'x', 60}, "setenta": {'x', 70}, "ochenta": {'x', 80}, "noventa": {'x', 90},
	"veintiuno": {'v', 21}, "veintiun": {'v', 21}, "veintidos": {'v', 22}, "veintitres": {'v', 23}, "veinticuatro": {'v', 24},
	"veinticinco": {'v', 25}, "veintiseis": {'v', 26}, "veintisiete": {'v', 27}, "veintiocho": {'v', 28}, "veintinueve": {'v', 29},
	"cien": {'h', 100}, "ciento": {'h', 100}, "mil": {'k', 1000},
	"doscientos": {'H', 200}, "trescientos": {'H', 300}, "cuatrocientos": {'H', 400}, "quinientos": {'H', 500},
	"seiscientos": {'H', 600}, "setecientos": {'H', 700}, "ochocientos": {'H', 800}, "novecientos": {'H', 900},
	"doscientas": {'H', 200}, "trescientas": {'H', 300}, "cuatrocientas": {'H', 400}, "quinientas": {'H', 500},
})

// joinedTens adds the tens of Spanish written with their units in one word, as they
// sound: "ochentaiocho", "noventaidós".
func joinedTens(m map[string]numberWord) map[string]numberWord {
	for _, ten := range [...]string{"treinta", "cuarenta", "cincuenta", "sesenta", "setenta", "ochenta", "noventa"} {
		for _, one := range [...]string{"un", "uno", "una", "dos", "tres", "cuatro", "cinco", "seis", "siete", "ocho", "nueve"} {
			w := numberWord{'v', m[ten].value + m[one].value}
			m[ten+"i"+one], m[ten+"y"+one] = w, w
		}
	}
	return m
}

// chunk is one number of a run of number words.
type chunk struct {
	value    float64
	digits   string
	from, to int // tokens
	decimals int
}

// spoken gathers number words into number tokens; digits stay as they are.
// Fractions and decimals are joined on the way: "two and a half", "58 y medio",
// "4 point 5".
func (p *Parser) spoken(toks []token) []token {
	first := 0
	for first < len(toks) && !p.speaksAt(toks, first) {
		first++
	}
	out := toks[:first]
	for i := first; i < len(toks); {
		t := toks[i]
		if t.kind == number {
			n := fractionAfter(toks, i)
			if n > 0 {
				t = withFraction(toks, i, n)
				i += n
			}
			out = append(out, t)
			i++
			continue
		}
		if t.kind != word {
			out = append(out, t)
			i++
			continue
		}
		if n := halfBar(toks, i); n > 0 {
			last := toks[i+n-1]
			out = append(out, token{kind: number, text: "1/2", raw: t.raw, span: span{t.span.from, last.span.to}, glued: t.glued,
				quoted: t.quoted, caps: t.caps,
				num: &numeral{value: 0.5, digits: "1/2", decimals: 1, words: true}})
			i += n
			continue
		}
		_, spoken := numberWords[t.text]
		if !spoken && t.text != "buck" || i > 0 && nameAfterNumber(&t, out) {
			out = append(out, t)
			i++
			continue
		}
		end := runEnd(toks, i)
		chunks := speak(toks, i, end)
		if len(chunks) == 0 || wholly(toks, i, end) {
			out = append(out, t)
			i++
			continue
		}
		at := i
		for _, c := range chunks {
			for ; at < c.from; at++ {
				out = append(out, toks[at])
			}
			first, last := toks[c.from], toks[c.to-1]
			nt := token{kind: number, text: c.digits, raw: first.raw, span: span{first.span.from, last.span.to}, glued: first.glued,
				quoted: first.quoted, caps: first.caps,
				num: &numeral{value: c.value, digits: c.digits, integer: c.decimals == 0, decimals: c.decimals, words: true}}
			at = c.to
			out = append(out, nt)
		}
		i = at
	}
	return out
}

// nameAfterNumber tells whether a word of number is the name of a street, as it is written
// with a capital behind a number in figures: "12 Seven Oaks".
func nameAfterNumber(t *token, before []token) bool {
	if !t.caps || len(before) == 0 || t.raw == strings.ToUpper(t.raw) {
		return false
	}
	last := before[len(before)-1]
	return last.kind == number && !last.num.words
}

// speaksAt tells whether a number told in words, or a part of one, may begin at i.
func (p *Parser) speaksAt(toks []token, i int) bool {
	switch t := &toks[i]; t.kind {
	case number:
		return fractionAfter(toks, i) > 0
	case word:
		return p.lex.of(t).number || t.text == "buck" || halfBar(toks, i) > 0
	}
	return false
}

// wholly tells whether "cien" is no number: "el tanque está al cien".
func wholly(toks []token, from, to int) bool {
	return to-from == 1 && toks[from].text == "cien" && from > 0 && toks[from-1].text == "al"
}

// runEnd returns where the run of number words that begins at i ends.
func runEnd(toks []token, i int) int {
	n := i
	for n < len(toks) {
		t := toks[n]
		if t.kind == mark && t.text == "-" && t.glued && n+1 < len(toks) && toks[n+1].glued {
			if w, ok := numberWords[toks[n+1].text]; ok && n > i &&
				(w.class == 'd' && numberWords[toks[n-1].text].class == 'x' || w.class == 'h' || w.class == 'k') {
				n++
				continue
			}
			break
		}
		if t.kind != word {
			break
		}
		if _, ok := numberWords[t.text]; ok {
			if t.text == "once" && n > i && englishNumber(toks[n-1].text) {
				break // "ninety one once it quit firing"
			}
			n++
			continue
		}
		if t.text == "and" && n > i && n+1 < len(toks) {
			// "a hundred and ten", but "sixty and seventy" are two
			c := numberWords[toks[n-1].text].class
			if _, ok := numberWords[toks[n+1].text]; ok && (c == 'h' || c == 'k') {
				n++
				continue
			}
		}
		if t.text == "y" && n > i && n+1 < len(toks) {
			if w, ok := numberWords[toks[n+1].text]; ok &&
				(w.class == 'd' && numberWords[toks[n-1].text].class == 'x' || toks[n-1].text == "ciento") {
				n++ // "ochenta y ocho", "ciento y cinco"
				continue
			}
		}
		if t.text == "buck" && n == i && n+1 < len(toks) {
			if w, ok := numberWords[toks[n+1].text]; ok && (w.class == 'x' || w.class == 't' || w.class == 'd' || w.class == 'o') {
				n++
				continue
			}
		}
		break
	}
	return n
}

// lone are words that are numbers only in company: "that one", "once a week", "un rato".
func lone(s string) bool {
	switch s {
	case "one", "once", "un", "una", "uno", "oh", "ought", "hundred", "thousand", "mil":
		return true
	}
	return false
}

// speak reads the number words toks[from:to].
func speak(toks []token, from, to int) []chunk {
	if to == from {
		return nil
	}
	if toks[from].text == "zero" && to-from == 1 && from > 0 {
		switch toks[from-1].text {
		case "wont", "doesnt", "didnt", "dont", "cant", "couldnt":
			return nil // "gauge won't zero"
		}
	}
	if to-from == 1 && lone(toks[from].text) {
		if !(toks[from].text != "oh" && to < len(toks) && countable(toks[to].text)) {
			if !((toks[from].text == "hundred" || toks[from].text == "thousand") && from > 0 && toks[from-1].text == "a") {
				return nil
			}
		}
	}
	var out []chunk
	for i := from; i < to; {
		if i+1 < to && pronoun(toks, i) {
			i++
			continue
		}
		v, dig, n := readOne(toks, i, to)
		if n == 0 {
			i++
			continue
		}
		c := chunk{value: float64(v), digits: dig, from: i, to: i + n}
		i += n
		// "four point five", "cuatro punto dos", "sixty and a half", "sesenta y medio"
		if i == to {
			if d, k := pointAfter(toks, i); k > 0 {
				c.value, c.decimals = decimal(c.digits+"."+d), len(d)
				c.digits += "." + d
				c.to += k
				i += k
			} else if p, k := partAfter(toks, i); k > 0 {
				c.value += p.value
				c.decimals = 1
				c.digits += " " + p.digits
				c.to += k
				i += k
			}
		}
		out = append(out, c)
	}
	return regroup(toks, out)
}

// countable tells whether a word may be counted by "one": "one year".
func countable(s string) bool {
	switch s {
	case "year", "years", "yr", "yrs", "week", "weeks", "month", "months", "day", "days", "hour", "hours", "ano",
		"anos", "mes", "meses", "semana", "semanas", "dia", "dias", "bar", "gallon", "gal", "point", "wk", "mo":
		return true
	}
	return false
}

// measures tells whether a Spanish verb leads to what a gauge shows.
func measures(s string) bool {
	switch s {
	case "marca", "marco", "marcaba", "tiene", "tenia", "trae", "traia", "dio", "da", "saque", "medi", "leyo":
		return true
	}
	return false
}

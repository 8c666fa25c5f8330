package intents

import (
	"strings"
	"unicode/utf8"
)

// Words as they are typed, and as they are looked up.

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

// plainLetter writes a letter in lower case without its accent.
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
	if size == 1 && n+1 < len(s) && s[n] == '2' && (s[n+1] == 'o' || s[n+1] == 'O') && (s[i] == 'h' || s[i] == 'H') &&
		!wordByte(s, n+2) && !(n+2 < len(s) && isDigit(s[n+2])) {
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
			if m+1 < len(s) && s[m] == '\'' && strings.IndexByte("dDsS", s[m+1]) >= 0 && !wordByte(s, m+2) {
				return m + 2 - i // "R/R'd", "T&P's"
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

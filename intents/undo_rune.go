package intents

import (
	"strings"
	"unicode"
	"unicode/utf8"

	"golang.org/x/text/unicode/norm"
)

// plainRunes are what typographic characters stand for.
var plainRunes = runesFor(map[string]string{
	"‘’′‛´": "'", "“”″„«»": `"`, "—―": " - ", "‐‑‒–−﹣": "-", "…": "...",
	"•◦▪●‣·∙": "\n", "→➡⇒": " -> ", "°º˚": " deg ", "ª¿¡": " ", "×": " x ", "✅✔☑": " " + ticked + " ",
	"\u2028\u2029\u0085": "\n",
	// no width, no meaning
	"\u200b\u200c\u200d\u2060\ufeff\ufe0f\u00ad": "",
})

// fractions are the fractions of one character; 2½ is two and a half, not 21/2.
var fractions = map[rune]string{'½': "1/2", '¼': "1/4", '¾': "3/4", '⅛': "1/8", '⅜': "3/8", '⅝': "5/8", '⅞': "7/8"}

// runesFor gives each character of a key its plain form.
func runesFor(forms map[string]string) map[rune]string {
	plain := map[rune]string{}
	for chars, form := range forms {
		for _, r := range chars {
			plain[r] = form
		}
	}
	return plain
}

// rune writes one character beyond ASCII in its plain form; what has none, a picture or a
// broken byte, is a space.
func (u *undoer) rune(r rune, at, size int) {
	if r < utf8.RuneSelf {
		u.put(string(r), at)
		return
	}
	if form, ok := plainRunes[r]; ok {
		u.put(form, at)
		return
	}
	if r == '🚫' || r == '⛔' {
		u.forbidden(at, size)
		return
	}
	if form, ok := fractions[r]; ok {
		if n := len(u.out); n > 0 && isDigit(u.out[n-1]) {
			form = " " + form
		}
		u.put(form, at)
		return
	}
	switch {
	case r == utf8.RuneError && size <= 1:
		u.put(" ", at)
	case unicode.Is(unicode.Mn, r):
		u.accent(r, at)
	case !unicode.IsLetter(r) && !unicode.IsDigit(r):
		u.put(" ", at)
	case r < 0x250:
		u.put(string(r), at)
	default:
		u.put(norm.NFKC.String(string(r)), at)
	}
}

// forbidden writes the picture of n bytes that crosses out what follows, "🚫 exp tank", or the last word of its
// clause, "exp tank 🚫". Between two words nobody knows which of them it crosses out.
func (u *undoer) forbidden(at, n int) {
	k := len(u.out)
	for k > 0 && u.out[k-1] == ' ' {
		k--
	}
	word := k > 0 && isLetter(u.out[k-1])
	rest := strings.TrimLeft(u.raw[at+n:], " \ufe0f")
	follows := rest != "" && isLetter(rest[0])
	switch {
	case follows && !word:
		u.put(" no ", at)
	case word && !follows:
		u.put(": no", at)
	default:
		u.put(" ", at)
	}
}

// accent joins a combining accent to the letter before it when it can.
func (u *undoer) accent(r rune, at int) {
	n := len(u.out)
	if n == 0 || !isLetter(u.out[n-1]) {
		return
	}
	joined := norm.NFC.String(string(u.out[n-1:]) + string(r))
	u.out, u.off = u.out[:n-1], u.off[:n-1]
	u.put(joined, at)
}

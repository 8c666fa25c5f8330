// Package paper draws what the bot shows and hands out: the plot of a house,
// the picture of a week, and the sheet that stays with the customer. It keeps
// the plot library, the PDF library and the fonts in one place.
//
// It promises: whatever a house's story is, a picture has the size that was
// asked for and nothing reaches beyond its edge; a sheet is one page. What does
// not fit is counted ("…and 3 more"), never dropped in silence. What a shape
// means stands in words beside it, and colour never says anything alone. The
// same input gives the same bytes: it knows neither the clock nor chance, and
// it looks nothing up. It keeps nothing between calls, so that several can be
// made at once.
package paper

import (
	"strings"
	"unicode"

	"lazyhand/assess"
	"lazyhand/bot/desk"
)

// Painter draws for one shop; it is a desk.Painter. The zero Painter draws for
// a shop that has not told its name.
type Painter struct {
	Shop  string // the shop's name, at the head of a sheet; may be empty
	Phone string // the shop's, beside it; may be empty
}

var _ desk.Painter = Painter{}

// title names a house for a heading.
func title(s assess.Site) string {
	line := strings.TrimSpace(s.Line)
	if s.Town != "" && !strings.Contains(line, s.Town) {
		line += ", " + s.Town
	}
	return clean(line)
}

// fileName makes a name that every system takes: small letters, digits and
// dashes.
func fileName(parts ...string) string {
	var b strings.Builder
	gap := false
	for _, r := range strings.ToLower(strings.Join(parts, "-")) {
		if r < 128 && (unicode.IsLetter(r) || unicode.IsDigit(r)) {
			if gap && b.Len() > 0 {
				b.WriteByte('-')
			}
			gap = false
			if b.WriteRune(r); b.Len() >= 60 {
				break
			}
			continue
		}
		gap = true
	}
	return b.String()
}

// clean leaves what the fonts can draw: blanks for what controls the line, and
// a question mark for what they lack.
func clean(s string) string {
	s = strings.Map(func(r rune) rune {
		switch {
		case unicode.IsSpace(r), unicode.IsControl(r):
			return ' '
		case r < 0x0250, r >= 0x2010 && r <= 0x2027, r == '€', r == '−', r == '≤', r == '≥':
			return r
		case unicode.Is(unicode.Mn, r), unicode.Is(unicode.Cf, r):
			return -1
		}
		return '?'
	}, s)
	return strings.Join(strings.Fields(s), " ")
}

// cut shortens a text until it fits.
func cut(s string, fits func(string) bool) string {
	if fits(s) {
		return s
	}
	r := []rune(s)
	low, high := 0, len(r) // the longest head that fits
	for low < high {
		mid := (low + high + 1) / 2
		if fits(strings.TrimRight(string(r[:mid]), " ,;") + "…") {
			low = mid
		} else {
			high = mid - 1
		}
	}
	return strings.TrimRight(string(r[:low]), " ,;") + "…"
}

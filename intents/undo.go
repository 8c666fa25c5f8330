package intents

import (
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"

	"golang.org/x/text/unicode/norm"
)

// clean is a message with what chat does to text undone: escapes, links,
// mentions, emoji, typographic characters, struck-out text.
type clean struct {
	text   string
	from   []int32 // for each byte of text, the byte of the message it stems from
	quoted []span  // lines that somebody else wrote
	struck []span  // in the message: withdrawn text
}

// span is a half-open range of bytes.
type span struct{ from, to int }

// undoer builds the clean text.
type undoer struct {
	raw string
	out []byte
	off []int32
}

func (u *undoer) put(s string, at int) {
	u.out = append(u.out, s...)
	for range len(s) {
		u.off = append(u.off, int32(at))
	}
}

// undo reverses what a chat platform does to typed text, in the order in which
// it was done: entities first, then escapes, then the writer's own marks.
func undo(raw string, d *scratch) clean {
	u := &undoer{raw: raw}
	u.out = slices.Grow(d.out[:0], len(raw)+8)
	u.off = slices.Grow(d.from[:0], len(raw)+8)
	var c clean
	lineStart, quote := true, -1
	for i := 0; i < len(raw); {
		b := raw[i]
		if lineStart {
			if n := quoteMark(raw[i:]); n > 0 {
				quote = len(u.out)
				i += n
				lineStart = false
				continue
			}
			if n := bulletMark(raw[i:]); n > 0 {
				i += n
				lineStart = false
				continue
			}
		}
		lineStart = false
		switch {
		case b == '\n' || b == '\r':
			if quote >= 0 {
				c.quoted = append(c.quoted, span{quote, len(u.out)})
				quote = -1
			}
			u.put("\n", i)
			lineStart = true
			i++
		case b == '<':
			if n := u.entity(i); n > 0 {
				i += n
				continue
			}
			u.put(" ", i)
			i++
		case b == '&':
			if s, n := unescape(raw[i:]); n > 0 {
				u.put(s, i)
				i += n
				continue
			}
			u.put("&", i)
			i++
		case b == ':':
			if n := emojiCode(raw, i); n > 0 {
				if strings.Contains(raw[i:i+n], "check_mark") {
					u.put(" "+ticked+" ", i)
				} else {
					u.put(" ", i)
				}
				i += n
				continue
			}
			u.put(":", i)
			i++
		case b == '~':
			if n := struck(raw, i); n > 0 {
				c.struck = append(c.struck, span{i, i + n})
				u.put(" ", i)
				i += n
				continue
			}
			u.put("~", i)
			i++
		case b == '*' || b == '`':
			// emphasis and code marks say nothing, but two numbers stay two
			if i > 0 && i+1 < len(raw) && isDigit(raw[i-1]) && isDigit(raw[i+1]) {
				u.put(" ", i)
			}
			i++
		case b == '_':
			if !(wordByte(raw, i-1) && wordByte(raw, i+1)) {
				i++
				continue
			}
			u.put(" ", i)
			i++
		case b < utf8.RuneSelf:
			if b < ' ' && b != '\t' || b == 0x7f {
				u.put(" ", i)
			} else if b == '\t' {
				u.put(" ", i)
			} else {
				u.out = append(u.out, b)
				u.off = append(u.off, int32(i))
			}
			i++
		default:
			r, n := utf8.DecodeRuneInString(raw[i:])
			u.rune(r, i, n)
			i += n
		}
	}
	if quote >= 0 {
		c.quoted = append(c.quoted, span{quote, len(u.out)})
	}
	if ownQuote(string(u.out), c.quoted) {
		c.quoted = nil
	}
	if c.text = raw; string(u.out) != raw { // most messages are clean as they come
		c.text = string(u.out)
	}
	c.from = u.off
	d.out, d.from = u.out, u.off
	return c
}

// source returns the part of the message that clean bytes stem from.
func (c clean) source(raw string, s span) string {
	if s.from >= len(c.from) || s.to <= s.from {
		return ""
	}
	from := int(c.from[s.from])
	to := len(raw)
	if s.to < len(c.from) {
		to = int(c.from[s.to])
	}
	if to < from {
		to = from
	}
	return strings.TrimSpace(raw[from:to])
}

func wordByte(s string, i int) bool {
	if i < 0 || i >= len(s) {
		return false
	}
	b := s[i]
	return b >= '0' && b <= '9' || b >= 'a' && b <= 'z' || b >= 'A' && b <= 'Z' || b >= utf8.RuneSelf
}

func quoteMark(s string) int {
	n := 0
	for {
		switch {
		case strings.HasPrefix(s[n:], "&gt;"):
			n += 4
		case n < len(s) && s[n] == '>':
			n++
		default:
			if n > 0 && n < len(s) && s[n] == ' ' {
				n++
			}
			return n
		}
	}
}

func bulletMark(s string) int {
	for i, r := range s {
		switch {
		case r == ' ' || r == '\t':
			continue
		case strings.ContainsRune("•◦▪●·‣–—*-", r):
			n := i + utf8.RuneLen(r)
			if n < len(s) && (s[n] == ' ' || s[n] == '\t') {
				return n + 1
			}
			if r >= utf8.RuneSelf && r != '–' && r != '—' {
				return n
			}
			return 0
		default:
			return 0
		}
	}
	return 0
}

// entity undoes <...>; it returns how many bytes it took, 0 when this is no entity.
func (u *undoer) entity(i int) int {
	end := strings.IndexByte(u.raw[i:min(len(u.raw), i+3000)], '>')
	if end < 2 {
		return 0
	}
	body := u.raw[i+1 : i+end]
	if strings.ContainsAny(body, "<\n") {
		return 0
	}
	target, label, labelled := strings.Cut(body, "|")
	switch {
	case strings.HasPrefix(body, "@") || strings.HasPrefix(body, "!"):
		u.put(" ", i)
	case strings.HasPrefix(body, "#"), formatting(body):
		u.put(" ", i)
	case strings.HasPrefix(target, "tel:"), strings.HasPrefix(target, "mailto:"):
		u.put(" ", i) // a telephone number is neither a pressure nor a house
	case strings.Contains(target, "://") || labelled:
		if !labelled {
			_, label, _ = strings.Cut(target, "://")
			u.put(" ", i)
			return end + 1 // a bare link holds no words of the writer's
		}
		label = strings.NewReplacer("&lt;", "<", "&gt;", ">", "&amp;", "&").Replace(label)
		for k, r := range label {
			u.rune(r, i+1+len(target)+1+min(k, end-len(target)-3), utf8.RuneLen(r))
		}
	default:
		return 0
	}
	return end + 1
}

// formatting tells whether a tag only says how text looks: "<b>", "</em>", "<br/>".
func formatting(tag string) bool {
	switch strings.ToLower(strings.Trim(tag, "/ ")) {
	case "b", "i", "u", "p", "br", "em", "strong", "code", "pre", "div", "span", "ul", "li":
		return true
	}
	return false
}

func unescape(s string) (string, int) {
	switch {
	case strings.HasPrefix(s, "&lt;"):
		return "<", 4
	case strings.HasPrefix(s, "&gt;"):
		return ">", 4
	case strings.HasPrefix(s, "&amp;"):
		return "&", 5
	}
	return "", 0
}

// ticked stands for the picture that says that something is done.
const ticked = "✅"

// emojiCode measures ":wrench:" or ":+1::skin-tone-2:"; a time such as 10:30:45 is none.
func emojiCode(s string, i int) int {
	if i > 0 && s[i-1] >= '0' && s[i-1] <= '9' && !(i >= 2 && s[i-2] == ':') {
		return 0
	}
	for n := i + 1; n < len(s) && n < i+40; n++ {
		b := s[n]
		switch {
		case b == ':':
			if n == i+1 {
				return 0
			}
			return n + 1 - i
		case b >= 'a' && b <= 'z' || b >= '0' && b <= '9' || b == '_' || b == '-' || b == '+':
		default:
			return 0
		}
	}
	return 0
}

// struck measures "~92~"; the tilde of "~92" alone means "about".
func struck(s string, i int) int {
	if wordByte(s, i-1) || i+1 >= len(s) || s[i+1] == ' ' || s[i+1] == '~' {
		return 0
	}
	for n := i + 1; n < len(s) && n < i+600 && s[n] != '\n'; n++ {
		if s[n] == '~' {
			if s[n-1] == ' ' || wordByte(s, n+1) {
				return 0
			}
			return n + 1 - i
		}
	}
	return 0
}

// rune writes one character beyond ASCII in its plain form.
func (u *undoer) rune(r rune, at, size int) {
	switch {
	case r < utf8.RuneSelf:
		u.put(string(r), at)
	case r == '½' || r == '¼' || r == '¾' || r == '⅛' || r == '⅜' || r == '⅝' || r == '⅞':
		s := map[rune]string{'½': "1/2", '¼': "1/4", '¾': "3/4", '⅛': "1/8", '⅜': "3/8", '⅝': "5/8", '⅞': "7/8"}[r]
		if len(u.out) > 0 && isDigit(u.out[len(u.out)-1]) {
			s = " " + s // 2½ is two and a half, not 21/2
		}
		u.put(s, at)
	case r == '‘' || r == '’' || r == '′' || r == '‛' || r == '´':
		u.put("'", at)
	case r == '“' || r == '”' || r == '″' || r == '„' || r == '«' || r == '»':
		u.put(`"`, at)
	case r == '—' || r == '―':
		u.put(" - ", at)
	case r >= '‐' && r <= '–' || r == '−' || r == '﹣':
		u.put("-", at)
	case r == '…':
		u.put("...", at)
	case r == '•' || r == '◦' || r == '▪' || r == '●' || r == '‣' || r == '·' || r == '∙':
		u.put("\n", at)
	case r == '→' || r == '➡' || r == '⇒':
		u.put(" -> ", at)
	case r == '°' || r == 'º' || r == '˚':
		u.put(" deg ", at)
	case r == 'ª' || r == '¿' || r == '¡':
		u.put(" ", at)
	case r == '×':
		u.put(" x ", at)
	case r == utf8.RuneError && size <= 1:
		u.put(" ", at)
	case r >= 0x200b && r <= 0x200d || r == 0x2060 || r == 0xfeff || r == 0xfe0f || r == 0x00ad:
		// no width, no meaning
	case unicode.IsSpace(r) || unicode.IsControl(r):
		if r == 0x2028 || r == 0x2029 || r == 0x85 {
			u.put("\n", at)
		} else {
			u.put(" ", at)
		}
	case unicode.Is(unicode.Mn, r):
		// a combining accent joins the letter before it when it can
		if n := len(u.out); n > 0 && isLetter(u.out[n-1]) {
			joined := norm.NFC.String(string(u.out[n-1:]) + string(r))
			u.out, u.off = u.out[:n-1], u.off[:n-1]
			u.put(joined, at)
		}
	case unicode.IsLetter(r) || unicode.IsDigit(r):
		if r < 0x250 {
			u.put(string(r), at)
		} else {
			u.put(norm.NFKC.String(string(r)), at)
		}
	case r == '✅' || r == '✔' || r == '☑':
		u.put(" "+ticked+" ", at)
	default:
		u.put(" ", at) // emoji and other pictures
	}
}

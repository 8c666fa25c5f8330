package intents

import (
	"html"
	"slices"
	"strings"
	"unicode/utf8"
)

// clean is a message with what chat does to text undone: escapes, links,
// mentions, emoji, typographic characters, struck-out text.
type clean struct {
	text   string
	from   []int32 // for each byte of text, the byte of the message it stems from; nil where the message is clean as it comes
	quoted []span  // lines that somebody else wrote
	struck []span  // in the message: withdrawn text
}

// span is a half-open range of bytes.
type span struct{ from, to int }

// undoer builds the clean text.
type undoer struct {
	raw    string
	out    []byte
	off    []int32
	quote  int // where the quoted line begins in the clean text, -1 outside of one
	quoted []span
	struck []span
}

// put writes clean text that stems from byte at of the message.
func (u *undoer) put(s string, at int) {
	u.out = append(u.out, s...)
	for range len(s) {
		u.off = append(u.off, int32(at))
	}
}

// undo reverses what a chat platform does to typed text, in the order in which
// it was done: entities first, then escapes, then the writer's own marks.
func undo(raw string, d *scratch) clean {
	if cleanAsItComes(raw) {
		return clean{text: raw}
	}
	u := &undoer{raw: raw, quote: -1}
	u.out = slices.Grow(d.out[:0], len(raw)+8)
	u.off = slices.Grow(d.from[:0], len(raw)+8)
	lineStart := true
	for i := 0; i < len(raw); {
		n := 0
		if lineStart {
			n = u.lineMark(i)
		}
		lineStart = n == 0 && (raw[i] == '\n' || raw[i] == '\r')
		if n == 0 {
			n = u.step(i)
		}
		i += n
	}
	u.endQuote()
	c := clean{text: raw, from: u.off, struck: u.struck}
	if len(u.quoted) > 0 && !ownQuote(string(u.out), u.quoted) {
		c.quoted = u.quoted
	}
	if string(u.out) != raw { // most messages are clean as they come
		c.text = string(u.out)
	}
	d.out, d.from = u.out, u.off
	return c
}

// asItIs are the characters that no chat platform writes for another.
var asItIs = func() (set [256]bool) {
	for b := ' '; b < 0x7f; b++ {
		set[b] = strings.IndexByte("<&:~*`_", byte(b)) < 0
	}
	return set
}()

// cleanAsItComes tells whether nothing in a message is to be undone.
func cleanAsItComes(raw string) bool {
	if raw == "" || strings.IndexByte(" ->", raw[0]) >= 0 {
		return raw == "" // it may begin with the mark of a list or a quotation
	}
	for i := range len(raw) {
		if !asItIs[raw[i]] {
			return false
		}
	}
	return true
}

// lineMark undoes the mark of a quotation or of a list at the start of a line: how many bytes
// it took.
func (u *undoer) lineMark(i int) int {
	if n := quoteMark(u.raw[i:]); n > 0 {
		u.quote = len(u.out)
		return n
	}
	return bulletMark(u.raw[i:])
}

// endQuote ends the quoted line, if one is open.
func (u *undoer) endQuote() {
	if u.quote >= 0 {
		u.quoted = append(u.quoted, span{u.quote, len(u.out)})
		u.quote = -1
	}
}

// step undoes what stands at byte i and returns how many bytes it took.
func (u *undoer) step(i int) int {
	switch b := u.raw[i]; {
	case b == '\n' || b == '\r':
		u.endQuote()
		u.put("\n", i)
	case b == '<':
		if n := u.entity(i); n > 0 {
			return n
		}
		u.put(" ", i)
	case b == '&':
		if s, n := unescape(u.raw[i:]); n > 0 {
			u.put(s, i)
			return n
		}
		u.put("&", i)
	case b == ':':
		return u.colon(i)
	case b == '~':
		if n := struck(u.raw, i); n > 0 {
			u.struck = append(u.struck, span{i, i + n})
			u.put(" ", i)
			return n
		}
		u.put("~", i)
	case b == '*' && starsSlip(u.raw, i):
		u.put(" i mean ", i) // "front 110 *101"
	case b == '*' || b == '`':
		// emphasis and code marks say nothing, but two numbers stay two, and "12*o" is no 120
		if i > 0 && isDigit(u.raw[i-1]) && wordByte(u.raw, i+1) {
			u.put(" ", i)
		}
	case b == '_':
		if wordByte(u.raw, i-1) && wordByte(u.raw, i+1) {
			u.put(" ", i)
		}
	case b == '\t':
		u.put("  ", i) // the next cell of a table
	case b < ' ' || b == 0x7f:
		u.put(" ", i)
	case b < utf8.RuneSelf:
		return u.keep(i)
	default:
		r, n := utf8.DecodeRuneInString(u.raw[i:])
		u.rune(r, i, n)
		return n
	}
	return 1
}

// keep writes the bytes from i on up to the next that may be undone, as they are.
func (u *undoer) keep(i int) int {
	end := i + 1
	for end < len(u.raw) && asItIs[u.raw[end]] {
		end++
	}
	u.out = append(u.out, u.raw[i:end]...)
	for k := i; k < end; k++ {
		u.off = append(u.off, int32(k))
	}
	return end - i
}

// colon undoes the name of a picture, ":wrench:", of which only a tick says something.
func (u *undoer) colon(i int) int {
	n := emojiCode(u.raw, i)
	switch {
	case n == 0:
		u.put(":", i)
		return 1
	case strings.Contains(u.raw[i:i+n], "check_mark"):
		u.put(" "+ticked+" ", i)
	case oneOf(u.raw[i:i+n], ":no_entry:", ":no_entry_sign:"):
		u.forbidden(i, n)
	default:
		u.put(" ", i)
	}
	return n
}

// source returns the part of the message that clean bytes stem from.
func (c clean) source(raw string, s span) string {
	if s.from >= len(c.text) || s.to <= s.from {
		return ""
	}
	from, _ := c.at(s.from)
	to := len(raw)
	if s.to < len(c.text) {
		to, _ = c.at(s.to)
	}
	if to < from {
		to = from
	}
	return strings.TrimSpace(raw[from:to])
}

// wordByte tells whether byte i of s belongs to a word.
func wordByte(s string, i int) bool {
	if i < 0 || i >= len(s) {
		return false
	}
	b := s[i]
	return b >= '0' && b <= '9' || b >= 'a' && b <= 'z' || b >= 'A' && b <= 'Z' || b >= utf8.RuneSelf
}

// quoteMark measures the marks of a quotation at the start of s: "> ".
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

// bulletMark measures the mark of a list's entry at the start of s: "- ", "• ".
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

// unescape undoes an escape at the start of s; it returns what it stands for and its length.
func unescape(s string) (string, int) {
	switch {
	case strings.HasPrefix(s, "&lt;"):
		return "<", 4
	case strings.HasPrefix(s, "&gt;"):
		return ">", 4
	case strings.HasPrefix(s, "&amp;"):
		return "&", 5
	case !strings.HasPrefix(s, "&"):
		return "", 0
	}
	n := strings.IndexByte(s[:min(len(s), longestEscape)], ';') + 1
	if n == 0 {
		return "", 0
	}
	if c := html.UnescapeString(s[:n]); c != s[:n] {
		return plainEscape.Replace(c), n // "burner&#39;s on"
	}
	return "", 0
}

// longestEscape is how many bytes an escape such as "&rsquo;" has at most.
const longestEscape = 9

// plainEscape writes what an escape stands for as a keyboard does.
var plainEscape = strings.NewReplacer("\u00a0", " ", "\u2018", "'", "\u2019", "'", "\u201c", "\"", "\u201d", "\"", "\u2013", "-",
	"\u2014", "-")

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

// starsSlip tells whether the asterisk at i marks what follows as put right, as in chat: it
// stands alone in its line before a word or a number, behind what was wrong.
func starsSlip(raw string, i int) bool {
	if i == 0 || i+1 >= len(raw) || !wordByte(raw, i+1) || raw[i-1] != ' ' && raw[i-1] != ',' {
		return false
	}
	from, to := strings.LastIndexByte(raw[:i], '\n')+1, len(raw)
	if n := strings.IndexByte(raw[i:], '\n'); n >= 0 {
		to = i + n
	}
	return strings.Count(raw[from:to], "*") == 1
}

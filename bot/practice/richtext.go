package practice

import (
	"regexp"
	"strings"
)

// richText is the rich_text block that the platform makes of a text. It knows
// references, emoji, *bold*, _italic_, ~struck~ and `code`, quoted lines and
// bulleted lines.
func richText(text string) []any {
	var parts []any
	var section []any
	flush := func() {
		if len(section) > 0 {
			parts = append(parts, map[string]any{"type": "rich_text_section", "elements": section})
			section = nil
		}
	}
	lines := strings.Split(text, "\n")
	for i := 0; i < len(lines); i++ {
		quote, isQuote := strings.CutPrefix(lines[i], "&gt;")
		switch {
		case isQuote:
			flush()
			elements := spans(strings.TrimPrefix(quote, " "))
			for i+1 < len(lines) && strings.HasPrefix(lines[i+1], "&gt;") {
				i++
				elements = append(elements, span("\n", nil))
				elements = append(elements, spans(strings.TrimPrefix(strings.TrimPrefix(lines[i], "&gt;"), " "))...)
			}
			parts = append(parts, map[string]any{"type": "rich_text_quote", "elements": elements})
		case strings.HasPrefix(lines[i], "• "):
			flush()
			var items []any
			for ; i < len(lines) && strings.HasPrefix(lines[i], "• "); i++ {
				items = append(items, map[string]any{"type": "rich_text_section", "elements": spans(strings.TrimPrefix(lines[i], "• "))})
			}
			i--
			parts = append(parts, map[string]any{"type": "rich_text_list", "style": "bullet", "indent": 0, "elements": items})
		default:
			if len(section) > 0 {
				section = append(section, span("\n", nil))
			}
			section = append(section, spans(lines[i])...)
		}
	}
	flush()
	if parts == nil {
		parts = []any{map[string]any{"type": "rich_text_section", "elements": []any{}}}
	}
	return []any{map[string]any{"type": "rich_text", "elements": parts}}
}

var spanForm = regexp.MustCompile("<[^<>]*>|:[a-z0-9_+-]+:|`[^`]+`|\\*[^*\\s][^*]*\\*|~[^~\\s][^~]*~|_[^_\\s][^_]*_")

var unescape = strings.NewReplacer("&lt;", "<", "&gt;", ">", "&amp;", "&")

var styles = map[byte]string{'*': "bold", '_': "italic", '~': "strike", '`': "code"}

// spans takes one line apart.
func spans(line string) []any {
	out := []any{}
	from := 0
	for _, at := range spanForm.FindAllStringIndex(line, -1) {
		token := line[at[0]:at[1]]
		if !alone(line, at[0], at[1]) && token[0] != '<' && token[0] != ':' {
			continue // snake_case, 2*3*4
		}
		if at[0] > from {
			out = append(out, span(unescape.Replace(line[from:at[0]]), nil))
		}
		from = at[1]
		switch token[0] {
		case '<':
			out = append(out, refSpan(token[1:len(token)-1]))
		case ':':
			out = append(out, map[string]any{"type": "emoji", "name": strings.Trim(token, ":")})
		default:
			inner := unescape.Replace(token[1 : len(token)-1])
			out = append(out, span(inner, map[string]any{styles[token[0]]: true}))
		}
	}
	if from < len(line) {
		out = append(out, span(unescape.Replace(line[from:]), nil))
	}
	return out
}

// alone reports whether a mark stands between spaces or punctuation.
func alone(line string, from, to int) bool {
	word := func(b byte) bool {
		return b >= '0' && b <= '9' || b >= 'a' && b <= 'z' || b >= 'A' && b <= 'Z' || b >= 0x80
	}
	return (from == 0 || !word(line[from-1])) && (to == len(line) || !word(line[to]))
}

func span(text string, style map[string]any) map[string]any {
	out := map[string]any{"type": "text", "text": text}
	if style != nil {
		out["style"] = style
	}
	return out
}

// refSpan is what stands between < and >.
func refSpan(ref string) map[string]any {
	target, label, labelled := strings.Cut(ref, "|")
	switch {
	case strings.HasPrefix(target, "@"):
		return map[string]any{"type": "user", "user_id": target[1:]}
	case strings.HasPrefix(target, "#"):
		return map[string]any{"type": "channel", "channel_id": target[1:]}
	case strings.HasPrefix(target, "!subteam^"):
		return map[string]any{"type": "usergroup", "usergroup_id": strings.TrimPrefix(target, "!subteam^")}
	case target == "!here" || target == "!channel" || target == "!everyone":
		return map[string]any{"type": "broadcast", "range": target[1:]}
	case strings.HasPrefix(target, "!"):
		return span(unescape.Replace(label), nil)
	}
	out := map[string]any{"type": "link", "url": unescape.Replace(target)}
	if labelled {
		out["text"] = unescape.Replace(label)
	}
	return out
}

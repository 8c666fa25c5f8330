package slackchat

import "strings"

var escaper = strings.NewReplacer("&", "&amp;", "<", "&lt;", ">", "&gt;")

// Escape makes text that people typed harmless in mrkdwn: it can no longer
// mention, notify or link. Source: messaging/formatting-message-text.
func Escape(s string) string { return escaper.Replace(s) }

// unescape undoes Escape, once.
func unescape(s string) string {
	return strings.ReplaceAll(strings.ReplaceAll(strings.ReplaceAll(s, "&lt;", "<"), "&gt;", ">"), "&amp;", "&")
}

// plain is text in the platform's form as plain words: references by their
// label or what they name, then unescaped. It is what a form shows.
func plain(s string) string {
	var b strings.Builder
	for {
		from := strings.IndexByte(s, '<')
		to := -1
		if from >= 0 {
			to = strings.IndexByte(s[from:], '>')
		}
		if to < 0 {
			b.WriteString(unescape(s))
			return b.String()
		}
		b.WriteString(unescape(s[:from]))
		ref := s[from+1 : from+to]
		s = s[from+to+1:]
		target, label, named := strings.Cut(ref, "|")
		switch {
		case named && label != "":
			b.WriteString(unescape(label))
		case strings.HasPrefix(target, "@") || strings.HasPrefix(target, "#") || strings.HasPrefix(target, "!"):
			b.WriteString(target)
		default:
			for _, scheme := range []string{"https://", "http://", "tel:", "mailto:"} {
				target = strings.TrimPrefix(target, scheme)
			}
			b.WriteString(unescape(target))
		}
	}
}

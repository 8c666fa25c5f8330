package slackchat

import "strings"

var escaper = strings.NewReplacer("&", "&amp;", "<", "&lt;", ">", "&gt;")

// Escape makes text that people typed harmless in mrkdwn: it can no longer
// mention, notify or link. Source: messaging/formatting-message-text.
func Escape(s string) string { return escaper.Replace(s) }

package slackchat

import "strings"

// typed returns what a person typed, in the platform's text form, which is
// what the parser undoes: references in <…>, & < > escaped, ~withdrawn~,
// quoted lines after "&gt;", list items on lines of their own. Rich text is
// preferred to the plain text where there is any, since it says for certain
// what was struck out and what was quoted.
func typed(text string, list blocks) string {
	var parts []string
	for _, b := range list {
		switch b.Type {
		case "rich_text":
			for _, e := range b.Elements {
				parts = append(parts, richPart(e)...)
			}
		case "table":
			for _, row := range b.Rows {
				var cells []string
				for _, cell := range row {
					cells = append(cells, cellText(cell))
				}
				parts = append(parts, strings.Join(cells, " "))
			}
		}
	}
	if s := strings.Join(parts, "\n"); strings.TrimSpace(s) != "" {
		return s
	}
	return text
}

// richPart returns the lines of one part of rich text.
func richPart(e block) []string {
	switch e.Type {
	case "rich_text_list":
		var out []string
		for _, item := range e.Elements {
			for _, line := range richPart(item) {
				out = append(out, "• "+line)
			}
		}
		return out
	case "rich_text_quote":
		var out []string
		for _, line := range strings.Split(inline(e.Elements), "\n") {
			out = append(out, "&gt; "+line)
		}
		return out
	}
	return []string{strings.TrimSuffix(inline(e.Elements), "\n")}
}

// inline writes the elements of a line.
func inline(list []block) string {
	var b strings.Builder
	for _, e := range list {
		switch e.Type {
		case "text":
			s := Escape(string(e.Text))
			if e.Style.Strike {
				// Blanks stay outside, as the platform writes them.
				core := strings.TrimSpace(s)
				s = strings.Replace(s, core, "~"+core+"~", 1)
			}
			b.WriteString(s)
		case "link":
			b.WriteString("<" + Escape(e.URL))
			if e.Text != "" {
				b.WriteString("|" + Escape(string(e.Text)))
			}
			b.WriteString(">")
		case "user":
			b.WriteString("<@" + e.UserID + ">")
		case "channel":
			b.WriteString("<#" + e.Channel + ">")
		case "usergroup":
			b.WriteString("<!subteam^" + e.Group + ">")
		case "broadcast":
			b.WriteString("<!" + e.Range + ">")
		case "emoji":
			b.WriteString(":" + e.Name + ":")
		case "date":
			b.WriteString(Escape(e.Fallback))
		default:
			if len(e.Elements) > 0 {
				b.WriteString(inline(e.Elements))
			} else {
				b.WriteString(Escape(string(e.Text)))
			}
		}
	}
	return b.String()
}

// cellText is what stands in the cell of a pasted table.
func cellText(c block) string {
	if c.Type == "rich_text" {
		var parts []string
		for _, e := range c.Elements {
			parts = append(parts, richPart(e)...)
		}
		return strings.Join(parts, " ")
	}
	return Escape(string(c.Text))
}

package slackchat

import (
	"fmt"
	"strings"
	"unicode/utf8"

	"github.com/slack-go/slack"

	"lazyhand/bot/desk"
)

// spoken is all that a body says, in the order in which a tech needs it. It is
// all that a screen reader reads and that a notification shows.
func spoken(b desk.Body, w *phrases) string {
	lines := []string{b.Lead}
	add := func(label string, items []string) {
		for _, s := range items {
			if s != "" {
				lines = append(lines, label+s)
			}
		}
	}
	add("", []string{b.Heard})
	add("- ", b.Facts)
	add(w.Next+": ", unlabelled(b.Next, w))
	add(w.Caution+": ", b.Cautions)
	return strings.Join(lines, "\n")
}

// unlabelled takes the label away from steps that carry it already.
func unlabelled(items []string, w *phrases) []string {
	var out []string
	for _, s := range items {
		out = append(out, strings.TrimPrefix(s, w.Next+": "))
	}
	return out
}

// fit shortens a body so that its whole text keeps to most characters. What
// can hurt and what decides goes last: facts first, then steps, then what was
// understood; a line that is too long by itself is cut.
func fit(b desk.Body, most int, w *phrases) desk.Body {
	size := func() int { return utf8.RuneCountInString(Escape(spoken(b, w))) }
	shorten := func(list []string, keep int) []string {
		for size() > most && len(list) > keep {
			list = list[:len(list)-1]
		}
		return list
	}
	most -= 20 * len(b.Calls) // each takes up to so many characters ahead of the text
	if size() <= most {
		return b
	}
	for _, part := range []*[]string{&b.Facts, &b.Next} {
		full := *part
		for n := len(full); size() > most && n > 0; n-- {
			*part = append(append([]string{}, full[:n-1]...), fmt.Sprintf("… (%d more)", len(full)-n+1))
		}
		if size() > most {
			*part = nil
		}
	}
	if size() > most {
		b.Heard = ""
	}
	b.Cautions = shorten(b.Cautions, 1)
	for size() > most {
		r := []rune(b.Lead)
		if len(r) < 20 {
			break
		}
		b.Lead = string(r[:len(r)*3/4]) + "…"
	}
	for size() > most && len(b.Cautions) > 0 {
		r := []rune(b.Cautions[0])
		if len(r) < 20 {
			break
		}
		b.Cautions = []string{string(r[:len(r)*3/4]) + "…"}
	}
	return b
}

// layOut is a body as blocks: the decision in bold, what was understood in
// small letters, facts as a list, steps, cautions under their own word, then
// buttons. All words are in plain or rich text elements, which the platform
// shows as they are: what people typed can neither mention nor link there.
func layOut(b desk.Body, w *phrases) []slack.Block {
	out := []slack.Block{rich(section(bold(b.Lead)))}
	if b.Heard != "" {
		out = append(out, slack.NewContextBlock("", plainText(b.Heard, "section.text")))
	}
	var parts []slack.RichTextElement
	if len(b.Facts) > 0 {
		parts = append(parts, list(b.Facts))
	}
	if len(b.Next) > 0 {
		parts = append(parts, section(bold(w.Next)))
		parts = append(parts, list(unlabelled(b.Next, w)))
	}
	if len(b.Cautions) > 0 {
		parts = append(parts, section(bold(w.Caution)))
		parts = append(parts, list(b.Cautions))
	}
	if len(parts) > 0 {
		out = append(out, rich(parts...))
	}
	return append(out, buttons(b.Buttons)...)
}

// buttons are rows of buttons. A row holds five, so that it fits on a phone.
func buttons(list []desk.Button) []slack.Block {
	const inRow = 5
	var out []slack.Block
	var row []slack.BlockElement
	flush := func() {
		if len(row) > 0 {
			out = append(out, slack.NewActionBlock("", row...))
			row = nil
		}
	}
	for i, b := range list {
		if len(b.Value) > limit("button.value") || len(out) >= 8 {
			continue // it could not be pressed with any sense
		}
		row = append(row, slack.NewButtonBlockElement(fmt.Sprintf("%s%s:%d", actionPrefix, b.Name, i), b.Value, plainText(b.Label, "button.text")))
		if len(row) == inRow {
			flush()
		}
	}
	flush()
	return out
}

// actionPrefix begins the action ids of the desk's buttons, before the
// button's name and its place.
const actionPrefix = "desk:"

func plainText(s, what string) *slack.TextBlockObject {
	return slack.NewTextBlockObject(slack.PlainTextType, cut(s, what), false, false)
}

func rich(parts ...slack.RichTextElement) slack.Block { return slack.NewRichTextBlock("", parts...) }

func section(e ...slack.RichTextSectionElement) *slack.RichTextSection {
	return slack.NewRichTextSection(e...)
}

func bold(s string) slack.RichTextSectionElement {
	return slack.NewRichTextSectionTextElement(orElse(s, " "), &slack.RichTextSectionTextStyle{Bold: true})
}

func words(s string) slack.RichTextSectionElement {
	return slack.NewRichTextSectionTextElement(orElse(s, " "), nil)
}

func list(items []string) slack.RichTextElement {
	var out []slack.RichTextElement
	for _, s := range items {
		out = append(out, section(words(s)))
	}
	return bullets{slack.RTEList, slack.RTEListBullet, out}
}

// bullets is a list of rich text. The library's own carries an offset, which
// the platform's types do not know in a bulleted list.
type bullets struct {
	Type     slack.RichTextElementType     `json:"type"`
	Style    slack.RichTextListElementType `json:"style"`
	Elements []slack.RichTextElement       `json:"elements"`
}

// RichTextElementType is that of a list.
func (b bullets) RichTextElementType() slack.RichTextElementType { return b.Type }

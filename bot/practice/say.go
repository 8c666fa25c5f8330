package practice

import (
	"errors"
	"fmt"
	"regexp"
	"slices"
	"strings"
)

// Errors of what people do.
var (
	// ErrNotThere: no such person, channel, message, view or element.
	ErrNotThere = errors.New("no such thing in the workspace")
	// ErrNoAnswer: no app acknowledged in time. A person would see a warning.
	ErrNoAnswer = errors.New("the app did not answer in time")
)

func notThere(kind, name string) error { return fmt.Errorf("%s %q: %w", kind, name, ErrNotThere) }

// Say posts what a person types into a channel, or into a thread when
// threadTS is not empty, and returns the new message's ts. The text is taken
// as typed: & < > are escaped as on the platform; @name, #channel, web and
// mail addresses become references. A person who was not in a public channel
// joins it.
func (w *Workspace) Say(user, channel, threadTS, text string) (string, error) {
	w.mu.Lock()
	defer w.mu.Unlock()
	return w.post(Post{User: user, Channel: channel, ThreadTS: threadTS, Text: w.typed(text)})
}

// Post is a message of a person in the platform's own form.
type Post struct {
	User, Channel, ThreadTS string
	Text                    string // as an event carries it: escaped, with <@U…> and <https://…|label>
	Subtype                 string // such as me_message
	Broadcast               bool   // a reply shown in the channel too
	Blocks                  []any  // nil: rich text made from Text
	NoBlocks                bool   // no blocks at all
	Files                   []*File
}

// PostRaw posts a message as it is and returns its ts.
func (w *Workspace) PostRaw(p Post) (string, error) {
	w.mu.Lock()
	defer w.mu.Unlock()
	return w.post(p)
}

func (w *Workspace) post(p Post) (string, error) {
	u, c := w.user(p.User), w.channel(p.Channel)
	if u == nil {
		return "", notThere("person", p.User)
	}
	if c == nil {
		return "", notThere("channel", p.Channel)
	}
	if !c.has(u.ID) {
		if c.im || c.Private {
			return "", notThere("channel", p.Channel)
		}
		w.join(c, u.ID)
	}
	m := &message{User: u.ID, Text: p.Text, Subtype: p.Subtype, Broadcast: p.Broadcast, Blocks: p.Blocks,
		Files: p.Files, ClientMsgID: w.uuid()}
	if u.Stranger {
		m.stranger = "T0OTHER01"
	}
	if p.ThreadTS != "" {
		parent := c.find(p.ThreadTS)
		if parent == nil {
			return "", notThere("message", p.ThreadTS)
		}
		m.ThreadTS = parent.TS
		if parent.ThreadTS != "" {
			m.ThreadTS = parent.ThreadTS
		}
	}
	if m.Blocks == nil && !p.NoBlocks && m.Text != "" {
		m.Blocks = w.named(richText(m.Text))
	}
	if len(p.Files) > 0 && m.Subtype == "" {
		m.Subtype = "file_share"
	}
	w.add(c, m)
	if w.faults.SentTwice != 0 {
		w.faults.SentTwice = less(w.faults.SentTwice)
		again := *m
		w.add(c, &again)
	}
	return m.TS, nil
}

// mine finds a person's own message.
func (w *Workspace) mine(user, channel, ts string) (*User, *channel, *message, error) {
	u, c := w.user(user), w.channel(channel)
	if u == nil {
		return nil, nil, nil, notThere("person", user)
	}
	if c == nil {
		return nil, nil, nil, notThere("channel", channel)
	}
	m := c.find(ts)
	if m == nil {
		return nil, nil, nil, notThere("message", ts)
	}
	return u, c, m, nil
}

// Edit changes the text of a person's own message, as typed.
func (w *Workspace) Edit(user, channel, ts, text string) error {
	w.mu.Lock()
	defer w.mu.Unlock()
	u, c, m, err := w.mine(user, channel, ts)
	if err != nil {
		return err
	}
	if m.User != u.ID {
		return notThere("own message", ts)
	}
	w.revise(c, m, u.ID, func(m *message) {
		m.Text = w.typed(text)
		m.Blocks = w.named(richText(m.Text))
	})
	return nil
}

// Delete takes a person's own message away.
func (w *Workspace) Delete(user, channel, ts string) error {
	w.mu.Lock()
	defer w.mu.Unlock()
	u, c, m, err := w.mine(user, channel, ts)
	if err != nil {
		return err
	}
	if m.User != u.ID {
		return notThere("own message", ts)
	}
	w.remove(c, m)
	return nil
}

// React adds a person's reaction, or takes it away if it is there.
func (w *Workspace) React(user, channel, ts, name string) error {
	w.mu.Lock()
	defer w.mu.Unlock()
	u, c, m, err := w.mine(user, channel, ts)
	if err != nil {
		return err
	}
	name = strings.Trim(name, ":")
	has := slices.ContainsFunc(m.Reactions, func(r Reaction) bool { return r.Name == name && slices.Contains(r.Users, u.ID) })
	w.react(c, m, name, u.ID, !has)
	return nil
}

// Unfurl raises a message_changed with an unchanged text, as a link preview
// does.
func (w *Workspace) Unfurl(channel, ts string) error {
	w.mu.Lock()
	defer w.mu.Unlock()
	c := w.channel(channel)
	if c == nil {
		return notThere("channel", channel)
	}
	m := c.find(ts)
	if m == nil {
		return notThere("message", ts)
	}
	before := m.wire(w, c, false)
	m.Attachments = append(m.Attachments, map[string]any{"id": 1, "fallback": "[no preview available]"})
	w.emitChanged(c, m, before)
	w.changed()
	return nil
}

var references = regexp.MustCompile(`@[\pL\d_-]+(?:\.[\pL\d_-]+)*|#[\pL\d_-]+|https?://[^\s<>"]*[^\s<>".,;:!?)]|[\w.+-]+@[\w-]+\.[\w.-]*\w`)

// typed turns typed text into the platform's form. Caller holds mu.
func (w *Workspace) typed(s string) string {
	escape := strings.NewReplacer("&", "&amp;", "<", "&lt;", ">", "&gt;")
	var b strings.Builder
	for {
		at := references.FindStringIndex(s)
		if at == nil {
			b.WriteString(escape.Replace(s))
			return b.String()
		}
		b.WriteString(escape.Replace(s[:at[0]]))
		ref := s[at[0]:at[1]]
		b.WriteString(w.reference(ref, escape.Replace(ref)))
		s = s[at[1]:]
	}
}

func (w *Workspace) reference(ref, plain string) string {
	switch {
	case strings.HasPrefix(ref, "http"):
		return "<" + plain + ">"
	case strings.HasPrefix(ref, "@"):
		switch name := ref[1:]; name {
		case "here", "channel", "everyone":
			return "<!" + name + ">"
		default:
			if u := w.user(name); u != nil {
				return "<@" + u.ID + ">"
			}
			for _, a := range w.apps {
				if a.Name == name {
					return "<@" + a.userID + ">"
				}
			}
			for _, g := range w.groups {
				if g.Handle == name {
					return "<!subteam^" + g.ID + ">"
				}
			}
		}
	case strings.HasPrefix(ref, "#"):
		if c := w.channel(ref); c != nil && !c.im {
			return "<#" + c.ID + "|" + c.Name + ">"
		}
	case strings.Contains(ref, "@"):
		return "<mailto:" + plain + "|" + plain + ">"
	}
	return plain
}

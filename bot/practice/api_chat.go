package practice

import (
	"slices"
	"strings"
	"unicode/utf8"
)

func (c *call) authTest() (result, error) {
	out := result{"url": c.w.url + "/", "team": c.w.opts.Name, "team_id": c.w.teamID, "is_enterprise_install": false}
	switch {
	case c.who.level:
		out["app_id"], out["app_name"] = c.who.app.ID, c.who.app.Name
	case c.who.app != nil:
		out["user"], out["user_id"], out["bot_id"] = c.who.app.Name, c.who.app.userID, c.who.app.botID
	default:
		out["user"], out["user_id"] = c.who.user.Name, c.who.user.ID
	}
	return out, nil
}

func (c *call) connectionsOpen() (result, error) {
	if c.who.app.off {
		return nil, refuse("link_disabled")
	}
	ticket := c.w.random(16)
	c.who.app.tickets[ticket] = true
	return result{"url": "ws" + strings.TrimPrefix(c.w.url, "http") + "/socket?ticket=" + ticket + "&app_id=" + c.who.app.ID}, nil
}

// visible finds the channel argument that the caller may read. A person's id
// stands for the direct messages with them.
func (c *call) visible(arg string) (*channel, error) {
	ref := c.str(arg)
	if u := c.w.user(ref); u != nil && ref == u.ID && c.who.app != nil {
		return c.w.dm(u, c.who.app), nil
	}
	ch := c.w.channel(ref)
	if ch == nil || ref == "" || ((ch.im || ch.Private) && !ch.has(c.who.id())) {
		return nil, refuse("channel_not_found")
	}
	return ch, nil
}

// member is visible for callers that must be in the channel.
func (c *call) member(arg string) (*channel, error) {
	ch, err := c.visible(arg)
	if err == nil && !ch.has(c.who.id()) {
		err = refuse("not_in_channel")
	}
	return ch, err
}

// draft reads text, blocks, attachments and metadata of a post and holds them
// to the limits.
func (c *call) draft(maxText int) (*message, error) {
	m := &message{User: c.who.id(), app: c.who.app, Text: c.str("text")}
	if md := c.str("markdown_text"); md != "" {
		if m.Text != "" || c.args["blocks"] != nil {
			return nil, refuse("markdown_text_conflict")
		}
		if utf8.RuneCountInString(md) > limit("message.markdown_text") {
			return nil, refuse("msg_too_long")
		}
		m.Text = md
	}
	blocks, err := c.value("blocks", "invalid_blocks_format")
	if err != nil {
		return nil, err
	}
	if blocks != nil {
		list, ok := blocks.([]any)
		if !ok {
			return nil, refuse("invalid_blocks_format", "blocks must be a list")
		}
		if problems := checkBlocks(list, "message"); len(problems) > 0 {
			code := "invalid_blocks"
			if problems[0].TooLong {
				code = "msg_blocks_too_long"
			}
			return nil, refuse(code, texts(problems)...)
		}
		if len(list) > 0 {
			m.Blocks = c.w.named(list)
		}
	}
	attachments, err := c.value("attachments", "invalid_attachments")
	if err != nil {
		return nil, err
	}
	m.Attachments, _ = attachments.([]any)
	metadata, err := c.value("metadata", "invalid_metadata_format")
	if err != nil {
		return nil, err
	}
	if metadata != nil {
		md, _ := metadata.(map[string]any)
		kind, _ := md["event_type"].(string)
		payload, isMap := md["event_payload"].(map[string]any)
		if kind == "" || (!isMap && md["event_payload"] != nil) {
			return nil, refuse("invalid_metadata_format", "metadata needs event_type and an event_payload object")
		}
		if payload == nil {
			payload = map[string]any{}
		}
		m.Metadata = map[string]any{"event_type": kind, "event_payload": payload}
	}
	if m.Text == "" && m.Blocks == nil && m.Attachments == nil {
		return nil, refuse("no_text")
	}
	if n := utf8.RuneCountInString(m.Text); n > maxText {
		if maxText != limit("message.cut") {
			return nil, refuse("msg_too_long")
		}
		m.Text = string([]rune(m.Text)[:maxText])
	}
	if m.Blocks == nil && m.Text != "" {
		m.Blocks = c.w.named(richText(m.Text))
	}
	return m, nil
}

func (c *call) postMessage() (result, error) {
	ch, err := c.visible("channel")
	if err != nil {
		return nil, err
	}
	if !ch.has(c.who.id()) {
		return nil, refuse("not_in_channel")
	}
	m, err := c.draft(limit("message.cut"))
	if err != nil {
		return nil, err
	}
	if t := c.str("thread_ts"); t != "" {
		p := ch.find(t)
		if p == nil {
			return nil, refuse("message_not_found")
		}
		m.ThreadTS, m.Broadcast = t, c.is("reply_broadcast")
		if p.ThreadTS != "" {
			m.ThreadTS = p.ThreadTS // a reply's ts was given: the platform asks for the parent's
		}
	}
	c.w.add(ch, m)
	return result{"channel": ch.ID, "ts": m.TS, "message": m.wire(c.w, ch, true)}, nil
}

func (c *call) postEphemeral() (result, error) {
	ch, err := c.member("channel")
	if err != nil {
		return nil, err
	}
	u := c.w.user(c.str("user"))
	if u == nil || !ch.has(u.ID) {
		return nil, refuse("user_not_in_channel")
	}
	if len(c.str("text")) > limit("ephemeral.text") {
		return nil, refuse("msg_too_long")
	}
	m, err := c.draft(limit("ephemeral.text"))
	if err != nil {
		return nil, err
	}
	m.To, m.ThreadTS = u.ID, c.str("thread_ts")
	c.w.whisper(ch, m)
	return result{"message_ts": m.TS}, nil
}

// whisper shows an ephemeral message. It raises no event and is not kept in
// the history.
func (w *Workspace) whisper(ch *channel, m *message) {
	m.TS = w.ts()
	ch.private = append(ch.private, m)
	w.changed()
}

// own finds the message that the caller wants to change.
func (c *call) own() (*channel, *message, error) {
	ch, err := c.visible("channel")
	if err != nil {
		return nil, nil, err
	}
	m := ch.find(c.str("ts"))
	if m == nil || m.Subtype == "tombstone" {
		return nil, nil, refuse("message_not_found")
	}
	return ch, m, nil
}

func (c *call) updateMessage() (result, error) {
	ch, m, err := c.own()
	if err != nil {
		return nil, err
	}
	if m.User != c.who.id() || m.app != c.who.app {
		return nil, refuse("cant_update_message")
	}
	if c.args["blocks"] == nil && c.str("text") == "" && c.str("markdown_text") == "" && c.args["attachments"] == nil {
		return nil, refuse("no_text")
	}
	d, err := c.draft(limit("message.update"))
	if err != nil {
		return nil, err
	}
	c.w.revise(ch, m, c.who.id(), func(m *message) {
		m.Text, m.Blocks, m.Attachments = d.Text, d.Blocks, d.Attachments
		if d.Metadata != nil {
			m.Metadata = d.Metadata
		}
	})
	return result{"channel": ch.ID, "ts": m.TS, "text": m.Text, "message": m.wire(c.w, ch, true)}, nil
}

func (c *call) deleteMessage() (result, error) {
	ch, m, err := c.own()
	if err != nil {
		return nil, err
	}
	if m.User != c.who.id() || m.app != c.who.app {
		return nil, refuse("cant_delete_message")
	}
	ts := m.TS
	c.w.remove(ch, m)
	return result{"channel": ch.ID, "ts": ts}, nil
}

func (c *call) permalink() (result, error) {
	ch, err := c.visible("channel")
	if err != nil {
		return nil, err
	}
	m := ch.find(c.str("message_ts"))
	if m == nil {
		return nil, refuse("message_not_found")
	}
	return result{"channel": ch.ID, "permalink": c.w.link(ch, m)}, nil
}

// link is the address of a message on the page.
func (w *Workspace) link(ch *channel, m *message) string {
	at := w.url + "/archives/" + ch.ID + "/p" + strings.ReplaceAll(m.TS, ".", "")
	if m.ThreadTS != "" {
		at += "?thread_ts=" + m.ThreadTS + "&cid=" + ch.ID
	}
	return at
}

// reacted finds the message that a reaction belongs to.
func (c *call) reacted() (*channel, *message, string, error) {
	ch, err := c.member("channel")
	if err != nil {
		return nil, nil, "", err
	}
	m := ch.find(c.str("timestamp"))
	if m == nil {
		return nil, nil, "", refuse("message_not_found")
	}
	return ch, m, strings.Trim(c.str("name"), ":"), nil
}

func (c *call) addReaction() (result, error) {
	ch, m, name, err := c.reacted()
	if err != nil {
		return nil, err
	}
	known := slices.ContainsFunc(m.Reactions, func(r Reaction) bool { return r.Name == name })
	switch {
	case name == "" || strings.ContainsAny(name, " <>&\"'"):
		return nil, refuse("invalid_name")
	case !known && len(m.Reactions) >= limit("reactions.different"):
		return nil, refuse("too_many_emoji")
	case !c.w.react(ch, m, name, c.who.id(), true):
		return nil, refuse("already_reacted")
	}
	return nil, nil
}

func (c *call) removeReaction() (result, error) {
	ch, m, name, err := c.reacted()
	if err != nil {
		return nil, err
	}
	if !c.w.react(ch, m, name, c.who.id(), false) {
		return nil, refuse("no_reaction")
	}
	return nil, nil
}

func (c *call) getReactions() (result, error) {
	ch, m, _, err := c.reacted()
	if err != nil {
		return nil, err
	}
	return result{"type": "message", "channel": ch.ID, "message": m.wire(c.w, ch, false)}, nil
}

package practice

import (
	"encoding/json"
	"maps"
	"slices"
)

// message is what stands in a channel.
type message struct {
	TS, ThreadTS string
	User         string
	Subtype      string
	Text         string
	ClientMsgID  string
	app          *app // that posted it; nil: a person
	Blocks       []any
	Attachments  []any
	Metadata     map[string]any
	Edited       *edited
	Reactions    []Reaction
	Files        []*File
	Broadcast    bool   // a reply shown in the channel too
	To           string // the only reader of an ephemeral one
	stranger     string // the other organisation's id, for people from one
}

type edited struct{ User, TS string }

// Reaction is an emoji name and who put it there.
type Reaction struct {
	Name  string   `json:"name"`
	Users []string `json:"users"`
}

// Message is a message as a test reads it.
type Message struct {
	Channel, TS, ThreadTS string
	User                  string // id of the person or bot user
	AppID                 string // empty: a person's
	Subtype, Text         string
	Blocks                json.RawMessage // nil: none
	Metadata              map[string]any
	Edited                bool
	Reactions             []Reaction
	Files                 []File
	Ephemeral             string // id of the only reader
	Broadcast             bool
}

func (m *message) read(c *channel) Message {
	out := Message{Channel: c.ID, TS: m.TS, ThreadTS: m.ThreadTS, User: m.User, Subtype: m.Subtype, Text: m.Text,
		Metadata: maps.Clone(m.Metadata), Edited: m.Edited != nil, Ephemeral: m.To, Broadcast: m.Broadcast}
	if m.app != nil {
		out.AppID = m.app.ID
	}
	if m.Blocks != nil {
		out.Blocks, _ = json.Marshal(m.Blocks)
	}
	for _, r := range m.Reactions {
		out.Reactions = append(out.Reactions, Reaction{r.Name, slices.Clone(r.Users)})
	}
	for _, f := range m.Files {
		out.Files = append(out.Files, *f)
	}
	return out
}

// Messages are the messages of a channel in order, replies included,
// ephemeral ones last. The channel is named by id or name.
func (w *Workspace) Messages(channel string) []Message {
	w.mu.Lock()
	defer w.mu.Unlock()
	c := w.channel(channel)
	if c == nil {
		return nil
	}
	var out []Message
	for _, m := range slices.Concat(c.messages, c.private) {
		out = append(out, m.read(c))
	}
	return out
}

// Thread is a message and its replies in order.
func (w *Workspace) Thread(channel, ts string) []Message {
	w.mu.Lock()
	defer w.mu.Unlock()
	c := w.channel(channel)
	if c == nil {
		return nil
	}
	var out []Message
	for _, m := range c.thread(ts) {
		out = append(out, m.read(c))
	}
	return out
}

// Reactions are the reactions on a message.
func (w *Workspace) Reactions(channel, ts string) []Reaction {
	w.mu.Lock()
	defer w.mu.Unlock()
	if c := w.channel(channel); c != nil {
		if m := c.find(ts); m != nil {
			return m.read(c).Reactions
		}
	}
	return nil
}

// wire is the message as history shows it. The parent of a thread carries the
// numbers of its replies.
func (m *message) wire(w *Workspace, c *channel, metadata bool) map[string]any {
	out := map[string]any{"type": "message", "ts": m.TS, "user": m.User, "text": m.Text, "team": w.teamID}
	if m.stranger != "" {
		out["team"], out["user_team"], out["source_team"] = m.stranger, m.stranger, m.stranger
	}
	set := func(key string, value any, ok bool) {
		if ok {
			out[key] = value
		}
	}
	set("subtype", m.Subtype, m.Subtype != "")
	set("client_msg_id", m.ClientMsgID, m.ClientMsgID != "")
	set("blocks", m.Blocks, m.Blocks != nil)
	set("attachments", m.Attachments, m.Attachments != nil)
	if m.app != nil {
		out["bot_id"], out["app_id"] = m.app.botID, m.app.ID
		out["bot_profile"] = map[string]any{"id": m.app.botID, "app_id": m.app.ID, "name": m.app.Name,
			"deleted": false, "updated": c.created, "team_id": w.teamID, "icons": map[string]any{}}
	}
	if m.Edited != nil {
		out["edited"] = map[string]any{"user": m.Edited.User, "ts": m.Edited.TS}
	}
	if m.Metadata != nil {
		if metadata {
			out["metadata"] = m.Metadata
		} else if t, ok := m.Metadata["event_type"]; ok {
			out["metadata"] = map[string]any{"event_type": t}
		}
	}
	if len(m.Files) > 0 {
		var files []any
		for _, f := range m.Files {
			files = append(files, f.wire(w))
		}
		out["files"], out["upload"] = files, false
	}
	if len(m.Reactions) > 0 {
		out["reactions"] = m.wireReactions()
	}
	if m.ThreadTS != "" {
		out["thread_ts"] = m.ThreadTS
		if p := c.find(m.ThreadTS); p != nil {
			out["parent_user_id"] = p.User
			if m.Broadcast {
				out["root"] = map[string]any{"type": "message", "ts": p.TS, "user": p.User, "text": p.Text, "thread_ts": p.TS}
			}
		}
		return out
	}
	if thread := c.thread(m.TS); len(thread) > 1 {
		replies := thread[1:]
		var users []string
		for _, r := range replies {
			if !slices.Contains(users, r.User) {
				users = append(users, r.User)
			}
		}
		out["thread_ts"], out["reply_count"], out["reply_users"] = m.TS, len(replies), users
		out["reply_users_count"], out["latest_reply"] = len(users), replies[len(replies)-1].TS
	}
	return out
}

func (m *message) wireReactions() []any {
	var out []any
	for _, r := range m.Reactions {
		out = append(out, map[string]any{"name": r.Name, "users": r.Users, "count": len(r.Users)})
	}
	return out
}

// copyJSON is a deep copy of anything that came from JSON.
func copyJSON[T any](v T) T {
	var out T
	b, err := json.Marshal(v)
	if err == nil {
		err = json.Unmarshal(b, &out)
	}
	if err != nil {
		panic("practice: not JSON: " + err.Error()) // only values that were decoded from JSON come here
	}
	return out
}

// add puts a new message into its channel. Caller holds mu.
func (w *Workspace) add(c *channel, m *message) {
	m.TS = w.ts()
	c.messages = append(c.messages, m)
	w.emitMessage(c, m)
	if m.ThreadTS != "" && w.faults.EchoThreads {
		if p := c.find(m.ThreadTS); p != nil {
			w.emitChanged(c, p, p.wire(w, c, false))
		}
	}
	w.changed()
}

// remove deletes a message; the parent of a thread leaves a tombstone, as on
// the platform. Caller holds mu.
func (w *Workspace) remove(c *channel, m *message) {
	before := m.wire(w, c, false)
	if m.ThreadTS == "" && len(c.thread(m.TS)) > 1 {
		*m = message{TS: m.TS, User: "USLACKBOT", Subtype: "tombstone", Text: "This message was deleted."}
	} else {
		c.messages = slices.DeleteFunc(c.messages, func(x *message) bool { return x == m })
	}
	w.emitDeleted(c, before)
	w.changed()
}

// revise replaces text and blocks of a message. Caller holds mu.
func (w *Workspace) revise(c *channel, m *message, by string, change func(*message)) {
	before := m.wire(w, c, false)
	change(m)
	m.Edited = &edited{User: by, TS: w.ts()}
	w.emitChanged(c, m, before)
	w.changed()
}

// react adds or takes away a reaction and returns false when nothing changed.
// Caller holds mu.
func (w *Workspace) react(c *channel, m *message, name, user string, add bool) bool {
	i := slices.IndexFunc(m.Reactions, func(r Reaction) bool { return r.Name == name })
	has := i >= 0 && slices.Contains(m.Reactions[i].Users, user)
	if has == add {
		return false
	}
	switch {
	case add && i < 0:
		m.Reactions = append(m.Reactions, Reaction{Name: name, Users: []string{user}})
	case add:
		m.Reactions[i].Users = append(m.Reactions[i].Users, user)
	default:
		m.Reactions[i].Users = slices.DeleteFunc(m.Reactions[i].Users, func(u string) bool { return u == user })
		if len(m.Reactions[i].Users) == 0 {
			m.Reactions = slices.Delete(m.Reactions, i, i+1)
		}
	}
	w.emitReaction(c, m, name, user, add)
	w.changed()
	return true
}

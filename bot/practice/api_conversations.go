package practice

import (
	"encoding/base64"
	"slices"
	"strconv"
	"strings"
)

// page cuts a list of n at the cursor argument and returns the bounds and the
// next cursor.
func (c *call) page(n, size int) (from, to int, next string, err error) {
	if cursor := c.str("cursor"); cursor != "" {
		b, e := base64.StdEncoding.DecodeString(cursor)
		at, e2 := strconv.Atoi(strings.TrimPrefix(string(b), "next:"))
		if e != nil || e2 != nil || at < 0 || at > n {
			return 0, 0, "", refuse("invalid_cursor")
		}
		from = at
	}
	to = min(n, from+size)
	if to < n {
		next = base64.StdEncoding.EncodeToString([]byte("next:" + strconv.Itoa(to)))
	}
	return from, to, next, nil
}

func (c *call) listConversations() (result, error) { return c.conversations(false) }
func (c *call) myConversations() (result, error)   { return c.conversations(true) }

// conversations lists the channels of the kinds that are asked for: those
// that the caller may see, or those that it is in.
func (c *call) conversations(mine bool) (result, error) {
	kinds := c.str("types")
	if kinds == "" {
		kinds = "public_channel"
	}
	want := strings.Split(kinds, ",")
	var all []any
	for _, ch := range c.w.channels {
		kind := "public_channel"
		switch {
		case ch.im:
			kind = "im"
		case ch.Private:
			kind = "private_channel"
		}
		if slices.Contains(want, kind) && ((kind == "public_channel" && !mine) || ch.has(c.who.id())) {
			all = append(all, ch.wire(c.w, c.who.id()))
		}
	}
	from, to, next, err := c.page(len(all), c.number("limit", 100, 1, 1000))
	if err != nil {
		return nil, err
	}
	return result{"channels": append([]any{}, all[from:to]...), "response_metadata": map[string]any{"next_cursor": next}}, nil
}

func (c *call) conversationInfo() (result, error) {
	ch, err := c.visible("channel")
	if err != nil {
		return nil, err
	}
	return result{"channel": ch.wire(c.w, c.who.id())}, nil
}

func (c *call) conversationMembers() (result, error) {
	ch, err := c.visible("channel")
	if err != nil {
		return nil, err
	}
	from, to, next, err := c.page(len(ch.members), c.number("limit", 100, 1, 1000))
	if err != nil {
		return nil, err
	}
	return result{"members": slices.Clone(ch.members[from:to]), "response_metadata": map[string]any{"next_cursor": next}}, nil
}

// readable is member for reading what was said, with the scope of the kind of
// channel.
func (c *call) readable() (*channel, error) {
	ch, err := c.member("channel")
	if err != nil {
		return nil, err
	}
	if !c.who.has(ch.historyScope()) {
		return nil, &apiError{code: "missing_scope", needed: ch.historyScope()}
	}
	return ch, nil
}

// between keeps the messages within oldest and latest. Every ts has the same
// number of digits, so they compare as text.
func (c *call) between(all []*message) []*message {
	oldest, latest, inclusive := c.str("oldest"), c.str("latest"), c.is("inclusive")
	return slices.DeleteFunc(slices.Clone(all), func(m *message) bool {
		if oldest != "" && oldest != "0" && (tsLess(m.TS, oldest) || (!inclusive && m.TS == padTS(oldest))) {
			return true
		}
		return latest != "" && (tsLess(latest, m.TS) || (!inclusive && m.TS == padTS(latest)))
	})
}

// padTS completes a ts that was given with fewer than six decimals.
func padTS(ts string) string {
	sec, frac, _ := strings.Cut(ts, ".")
	return sec + "." + (frac + "000000")[:6]
}

func tsLess(a, b string) bool {
	a, b = padTS(a), padTS(b)
	if len(a) != len(b) {
		return len(a) < len(b)
	}
	return a < b
}

func (c *call) history() (result, error) {
	ch, err := c.readable()
	if err != nil {
		return nil, err
	}
	all := c.between(slices.DeleteFunc(slices.Clone(ch.messages), func(m *message) bool { return m.ThreadTS != "" && !m.Broadcast }))
	slices.Reverse(all)
	return c.messages(ch, all, c.number("limit", 100, 1, 999))
}

func (c *call) replies() (result, error) {
	ch, err := c.readable()
	if err != nil {
		return nil, err
	}
	parent := ch.find(c.str("ts"))
	if parent == nil {
		return nil, refuse("thread_not_found")
	}
	if parent.ThreadTS != "" {
		// A reply's own ts gives the reply alone.
		return c.messages(ch, []*message{parent}, 1000)
	}
	thread := ch.thread(parent.TS)
	kept := c.between(thread[1:])
	return c.messages(ch, slices.Insert(kept, 0, parent), c.number("limit", 1000, 1, 1000))
}

func (c *call) messages(ch *channel, all []*message, size int) (result, error) {
	from, to, next, err := c.page(len(all), size)
	if err != nil {
		return nil, err
	}
	out := []any{}
	for _, m := range all[from:to] {
		wire := m.wire(c.w, ch, c.is("include_all_metadata"))
		if m.Broadcast {
			wire["subtype"] = "thread_broadcast"
		}
		out = append(out, wire)
	}
	return result{"messages": out, "has_more": next != "", "pin_count": 0, "response_metadata": map[string]any{"next_cursor": next}}, nil
}

func (c *call) openConversation() (result, error) {
	if ref := c.str("channel"); ref != "" {
		ch, err := c.member("channel")
		if err != nil {
			return nil, err
		}
		return result{"channel": ch.wire(c.w, c.who.id())}, nil
	}
	ids := strings.Split(c.str("users"), ",")
	if len(ids) != 1 || c.who.app == nil {
		return nil, refuse("method_not_supported_for_channel_type", "direct messages with one person only")
	}
	u := c.w.user(ids[0])
	if u == nil {
		return nil, refuse("user_not_found")
	}
	return result{"channel": c.w.dm(u, c.who.app).wire(c.w, c.who.id())}, nil
}

func (c *call) joinConversation() (result, error) {
	ch, err := c.visible("channel")
	if err != nil {
		return nil, err
	}
	if ch.im || ch.Private {
		return nil, refuse("method_not_supported_for_channel_type")
	}
	c.w.join(ch, c.who.id())
	return result{"channel": ch.wire(c.w, c.who.id())}, nil
}

// join makes a person or bot user a member.
func (w *Workspace) join(ch *channel, id string) {
	if ch.has(id) {
		return
	}
	ch.members = append(ch.members, id)
	w.emitIn(ch, "member_joined_channel", map[string]any{"type": "member_joined_channel", "user": id, "channel": ch.ID,
		"channel_type": "C", "team": w.teamID, "event_ts": w.ts()})
	w.changed()
}

// Invite makes a person or an app's bot a member of a channel.
func (w *Workspace) Invite(channel, who string) {
	w.mu.Lock()
	defer w.mu.Unlock()
	ch := w.channel(channel)
	if u := w.user(who); ch != nil && u != nil {
		w.join(ch, u.ID)
	} else if a := w.app(who); ch != nil && a != nil {
		w.join(ch, a.userID)
	}
}

// Remove ends the membership of a person or an app's bot in a channel.
func (w *Workspace) Remove(channel, who string) {
	w.mu.Lock()
	defer w.mu.Unlock()
	id := ""
	if u := w.user(who); u != nil {
		id = u.ID
	} else if a := w.app(who); a != nil {
		id = a.userID
	}
	if ch := w.channel(channel); ch != nil {
		ch.members = slices.DeleteFunc(ch.members, func(x string) bool { return x == id })
		w.changed()
	}
}

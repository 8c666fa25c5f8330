package practice

import (
	"slices"
	"strings"
)

// channel is a channel or a direct message with an app.
type channel struct {
	ChannelOptions
	created  int64
	im       bool
	imUser   string // the person's id
	imApp    *app
	members  []string // ids, of bots too
	messages []*message
	private  []*message // ephemeral ones
}

func (w *Workspace) addChannel(o ChannelOptions) {
	c := &channel{ChannelOptions: o, created: w.now().Unix()}
	if c.ID == "" {
		c.ID = w.newID("C")
	}
	if o.Members == nil {
		for _, u := range w.users {
			if !u.Guest {
				c.members = append(c.members, u.ID)
			}
		}
	} else {
		c.members = w.userIDs(o.Members)
	}
	w.channels = append(w.channels, c)
}

// channel finds a channel by id or name. Caller holds mu.
func (w *Workspace) channel(ref string) *channel {
	ref = strings.TrimPrefix(ref, "#")
	for _, c := range w.channels {
		if c.ID == ref || (!c.im && c.Name == ref) {
			return c
		}
	}
	return nil
}

// dm finds or opens the direct messages between a person and an app. Caller
// holds mu.
func (w *Workspace) dm(u *User, a *app) *channel {
	for _, c := range w.channels {
		if c.im && c.imUser == u.ID && c.imApp == a {
			return c
		}
	}
	c := &channel{im: true, imUser: u.ID, imApp: a, members: []string{u.ID, a.userID}, created: w.now().Unix()}
	c.ID = w.newID("D")
	w.channels = append(w.channels, c)
	return c
}

// DM is the id of the direct messages between a person and an app, opened if
// there were none.
func (w *Workspace) DM(user, appID string) string {
	w.mu.Lock()
	defer w.mu.Unlock()
	u, a := w.user(user), w.app(appID)
	if u == nil || a == nil {
		return ""
	}
	return w.dm(u, a).ID
}

// Channel is the id of a channel by its name, empty when there is none.
func (w *Workspace) Channel(name string) string {
	w.mu.Lock()
	defer w.mu.Unlock()
	if c := w.channel(name); c != nil {
		return c.ID
	}
	return ""
}

func (c *channel) has(id string) bool { return slices.Contains(c.members, id) }

// kind is the channel_type of events.
func (c *channel) kind() string {
	switch {
	case c.im:
		return "im"
	case c.Private:
		return "group"
	}
	return "channel"
}

// event is the subscription that message events of the channel belong to.
func (c *channel) event() string {
	return map[string]string{"im": "message.im", "group": "message.groups", "channel": "message.channels"}[c.kind()]
}

// historyScope is the scope to read it.
func (c *channel) historyScope() string {
	return map[string]string{"im": "im:history", "group": "groups:history", "channel": "channels:history"}[c.kind()]
}

// find returns the message with that ts.
func (c *channel) find(ts string) *message {
	for i := len(c.messages) - 1; i >= 0; i-- {
		if c.messages[i].TS == ts {
			return c.messages[i]
		}
	}
	return nil
}

// thread returns the parent and its replies in order.
func (c *channel) thread(parent string) []*message {
	var out []*message
	for _, m := range c.messages {
		if m.TS == parent || m.ThreadTS == parent {
			out = append(out, m)
		}
	}
	return out
}

// wire is the channel as conversations.info shows it to the given id.
func (c *channel) wire(w *Workspace, me string) map[string]any {
	if c.im {
		user := c.imUser
		if user == me {
			user = c.imApp.userID
		}
		return map[string]any{"id": c.ID, "created": c.created, "is_im": true, "is_channel": false, "is_group": false,
			"is_private": true, "is_archived": false, "is_org_shared": false, "user": user, "is_open": true,
			"is_user_deleted": false, "is_member": c.has(me), "context_team_id": w.teamID}
	}
	return map[string]any{
		"id": c.ID, "name": c.Name, "name_normalized": c.Name, "created": c.created, "creator": c.creator(),
		"is_channel": !c.Private, "is_group": c.Private, "is_im": false, "is_mpim": false, "is_private": c.Private,
		"is_archived": false, "is_general": false, "is_shared": c.Shared, "is_ext_shared": c.Shared,
		"is_org_shared": false, "is_pending_ext_shared": false, "is_member": c.has(me), "unlinked": 0,
		"num_members": len(c.members), "context_team_id": w.teamID, "shared_team_ids": []string{w.teamID},
		"topic":   map[string]any{"value": c.Topic, "creator": "", "last_set": 0},
		"purpose": map[string]any{"value": "", "creator": "", "last_set": 0}, "previous_names": []string{},
	}
}

func (c *channel) creator() string {
	if len(c.members) > 0 {
		return c.members[0]
	}
	return ""
}

package practice

import "strings"

// emitMessage tells the apps in a channel about a new message, and an app
// that is mentioned a second time with app_mention: same ts, other event_id.
// Caller holds mu.
func (w *Workspace) emitMessage(c *channel, m *message) {
	for _, a := range w.apps {
		if !c.has(a.userID) {
			continue
		}
		inner := m.wire(w, c, true)
		if m.Broadcast {
			inner["subtype"] = "thread_broadcast"
		}
		inner["channel"], inner["channel_type"], inner["event_ts"] = c.ID, c.kind(), m.TS
		if a.wants(c.event()) {
			w.emit(a, c, inner)
		}
		if !c.im && m.app != a && strings.Contains(m.Text, "<@"+a.userID+">") && a.wants("app_mention") {
			twin := copyJSON(inner)
			twin["type"] = "app_mention"
			delete(twin, "client_msg_id")
			delete(twin, "channel_type")
			w.emit(a, c, twin)
		}
	}
}

// emitChanged tells of a new text, with the old message as it was.
func (w *Workspace) emitChanged(c *channel, m *message, before map[string]any) {
	ts := w.ts()
	w.emitIn(c, c.event(), map[string]any{"type": "message", "subtype": "message_changed", "hidden": true,
		"message": m.wire(w, c, true), "previous_message": before, "channel": c.ID, "channel_type": c.kind(),
		"ts": ts, "event_ts": ts})
}

func (w *Workspace) emitDeleted(c *channel, before map[string]any) {
	ts := w.ts()
	w.emitIn(c, c.event(), map[string]any{"type": "message", "subtype": "message_deleted", "hidden": true,
		"deleted_ts": before["ts"], "previous_message": before, "channel": c.ID, "channel_type": c.kind(),
		"ts": ts, "event_ts": ts})
}

func (w *Workspace) emitReaction(c *channel, m *message, name, user string, add bool) {
	kind := "reaction_added"
	if !add {
		kind = "reaction_removed"
	}
	w.emitIn(c, kind, map[string]any{"type": kind, "user": user, "reaction": name, "item_user": m.User,
		"item": map[string]any{"type": "message", "channel": c.ID, "ts": m.TS}, "event_ts": w.ts()})
}

// emitIn tells all apps in a channel that have asked for the event.
func (w *Workspace) emitIn(c *channel, event string, inner map[string]any) {
	for _, a := range w.apps {
		if c.has(a.userID) && a.wants(event) {
			w.emit(a, c, copyJSON(inner))
		}
	}
}

// emit wraps an event for an app and lines it up for delivery. Caller holds
// mu; c may be nil.
func (w *Workspace) emit(a *app, c *channel, inner map[string]any) {
	id := w.newID("Ev")
	w.enqueue(&delivery{app: a, kind: "events_api", payload: map[string]any{
		"token": "practice", "team_id": w.teamID, "context_team_id": w.teamID, "context_enterprise_id": nil,
		"api_app_id": a.ID, "event": copyJSON(inner), "type": "event_callback", "event_id": id,
		"event_time": w.now().Unix(), "is_ext_shared_channel": c != nil && c.Shared, "event_context": "4-" + id,
		"authorizations": []any{map[string]any{"enterprise_id": nil, "team_id": w.teamID, "user_id": a.userID,
			"is_bot": true, "is_enterprise_install": false}},
	}})
}

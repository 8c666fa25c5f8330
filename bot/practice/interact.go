package practice

import (
	"context"
	"encoding/json"
	"maps"
	"slices"
)

// Press is what a person does with a button, a menu or another element.
type Press struct {
	User        string
	Channel, TS string // of the message; or
	ViewID      string // of the modal or home tab
	BlockID     string // may be empty when the action id is enough
	ActionID    string
	Value       Entered // what was chosen or typed; not for buttons
}

// Press presses a button or chooses in a menu and waits until the app has
// acknowledged it.
func (w *Workspace) Press(ctx context.Context, p Press) error {
	w.mu.Lock()
	a, payload, err := w.pressed(p)
	if err != nil {
		w.mu.Unlock()
		return err
	}
	_, err = w.ask(ctx, a, "interactive", payload)
	return err
}

// ask sends a payload and waits for the answer. Caller holds mu, which is
// given up.
func (w *Workspace) ask(ctx context.Context, a *app, kind string, payload map[string]any) (json.RawMessage, error) {
	got := make(chan answer, 1)
	w.enqueue(&delivery{app: a, kind: kind, payload: payload, answer: got})
	w.mu.Unlock()
	select {
	case out := <-got:
		return out.payload, out.err
	case <-w.done:
		return nil, ErrNoAnswer
	case <-ctx.Done():
		return nil, ctx.Err()
	}
}

// base is what every interaction carries.
func (w *Workspace) base(kind string, a *app, u *User, from *place) map[string]any {
	return map[string]any{"type": kind, "token": "practice", "api_app_id": a.ID, "is_enterprise_install": false,
		"enterprise": nil, "team": map[string]any{"id": w.teamID, "domain": w.opts.Name},
		"user":       map[string]any{"id": u.ID, "username": u.Name, "name": u.Name, "team_id": w.teamID},
		"trigger_id": w.newTrigger(a, u.ID, from)}
}

func (w *Workspace) pressed(p Press) (*app, map[string]any, error) {
	u := w.user(p.User)
	if u == nil {
		return nil, nil, notThere("person", p.User)
	}
	if p.ViewID != "" {
		v := w.views[p.ViewID]
		if v == nil || v.user != u.ID {
			return nil, nil, notThere("view", p.ViewID)
		}
		block, e := findElement(v.body["blocks"], p.BlockID, p.ActionID)
		if e == nil {
			return nil, nil, notThere("element", p.ActionID)
		}
		action, err := w.action(block, e, p.Value, v.state)
		if err != nil {
			return nil, nil, err
		}
		out := w.base("block_actions", v.app, u, v.message)
		out["container"] = map[string]any{"type": "view", "view_id": v.id}
		out["view"], out["actions"] = v.wire(w), []any{action}
		w.changed()
		return v.app, copyJSON(out), nil
	}
	c := w.channel(p.Channel)
	if c == nil {
		return nil, nil, notThere("channel", p.Channel)
	}
	m := c.find(p.TS)
	for _, x := range c.private {
		if x.TS == p.TS && x.To == u.ID {
			m = x
		}
	}
	if m == nil || m.app == nil {
		return nil, nil, notThere("message", p.TS)
	}
	block, e := findElement(m.Blocks, p.BlockID, p.ActionID)
	if e == nil {
		return nil, nil, notThere("element", p.ActionID)
	}
	state := initialState(m.Blocks)
	action, err := w.action(block, e, p.Value, state)
	if err != nil {
		return nil, nil, err
	}
	from := &place{c, m}
	out := w.base("block_actions", m.app, u, from)
	container := map[string]any{"type": "message", "message_ts": m.TS, "channel_id": c.ID, "is_ephemeral": m.To != ""}
	if m.ThreadTS != "" {
		container["thread_ts"] = m.ThreadTS
	}
	name := c.Name
	if c.im {
		name = "directmessage"
	}
	maps.Copy(out, map[string]any{"container": container, "channel": map[string]any{"id": c.ID, "name": name},
		"response_url": w.newResponse(m.app, u.ID, from), "state": map[string]any{"values": state}, "actions": []any{action}})
	if m.To == "" {
		out["message"] = m.wire(w, c, true)
	}
	return m.app, copyJSON(out), nil
}

// findElement finds an interactive element by its action, and its block.
func findElement(blocks any, blockID, actionID string) (block, element map[string]any) {
	eachElement(blocks, func(b, e map[string]any) {
		if element == nil && text(e, "action_id") == actionID && (blockID == "" || text(b, "block_id") == blockID) {
			block, element = b, e
		}
	})
	return block, element
}

// action is the entry of the actions list, and sets the state.
func (w *Workspace) action(block, e map[string]any, in Entered, state map[string]map[string]any) (map[string]any, error) {
	out := map[string]any{"type": e["type"], "action_id": e["action_id"], "block_id": block["block_id"], "action_ts": w.ts()}
	for _, f := range []string{"text", "value", "style", "url"} {
		if v, there := e[f]; there && e["type"] == "button" {
			out[f] = v
		}
	}
	if e["type"] == "overflow" {
		i := slices.IndexFunc(allOptions(e), func(o map[string]any) bool { return len(in) > 0 && o["value"] == in[0] })
		if i < 0 {
			return nil, notThere("choice in", text(e, "action_id"))
		}
		out["selected_option"] = allOptions(e)[i]
	}
	if stateful[text(e, "type")] != "" {
		entered, wrong := enter(e, in)
		if wrong != "" {
			return nil, notThere("choice in", text(e, "action_id")+": "+wrong)
		}
		maps.Copy(out, entered)
		id := text(block, "block_id")
		if state[id] == nil {
			state[id] = map[string]any{}
		}
		state[id][text(e, "action_id")] = entered
	}
	return out, nil
}

// Slash types a slash command, such as "/lazyhand due", in a channel and
// waits until its app has acknowledged it.
func (w *Workspace) Slash(ctx context.Context, user, channel, command, args string) error {
	w.mu.Lock()
	u, c, a := w.user(user), w.channel(channel), w.ownerOf(command)
	if u == nil || c == nil || a == nil {
		w.mu.Unlock()
		return notThere("person, channel or command", user+" "+channel+" "+command)
	}
	if slices.ContainsFunc(a.Commands, func(x Command) bool { return x.Name == command && x.Escape }) {
		args = w.typed(args)
	}
	name := c.Name
	if c.im {
		name = "directmessage"
	}
	payload := map[string]any{"token": "practice", "team_id": w.teamID, "team_domain": w.opts.Name, "channel_id": c.ID,
		"channel_name": name, "user_id": u.ID, "user_name": u.Name, "command": command, "text": args,
		"api_app_id": a.ID, "is_enterprise_install": "false", "trigger_id": w.newTrigger(a, u.ID, &place{ch: c}),
		"response_url": w.newResponse(a, u.ID, &place{ch: c})}
	id := text(payload, "response_url")
	got, err := w.ask(ctx, a, "slash_commands", payload)
	if err != nil || len(got) == 0 || string(got) == "null" {
		return err
	}
	w.mu.Lock()
	defer w.mu.Unlock()
	var body map[string]any
	if json.Unmarshal(got, &body) != nil {
		var line string
		if json.Unmarshal(got, &line) != nil || line == "" {
			return nil
		}
		body = map[string]any{"text": line}
	}
	if len(body) == 0 {
		return nil
	}
	return w.respond(id, body)
}

// offers finds the first app with that shortcut. Caller holds mu.
func (w *Workspace) offers(callbackID string, global bool) *app {
	for _, a := range w.apps {
		if slices.ContainsFunc(a.Shortcuts, func(s Shortcut) bool { return s.CallbackID == callbackID && s.Global == global }) {
			return a
		}
	}
	return nil
}

// GlobalShortcut picks a global shortcut by its callback id and waits until
// its app has acknowledged it.
func (w *Workspace) GlobalShortcut(ctx context.Context, user, callbackID string) error {
	w.mu.Lock()
	u, a := w.user(user), w.offers(callbackID, true)
	if u == nil || a == nil {
		w.mu.Unlock()
		return notThere("person or global shortcut", user+" "+callbackID)
	}
	payload := w.base("shortcut", a, u, nil)
	payload["callback_id"], payload["action_ts"] = callbackID, w.ts()
	_, err := w.ask(ctx, a, "interactive", payload)
	return err
}

// Shortcut picks a message shortcut by its callback id and waits until its
// app has acknowledged it.
func (w *Workspace) Shortcut(ctx context.Context, user, channel, ts, callbackID string) error {
	w.mu.Lock()
	u, c, m, err := w.mine(user, channel, ts)
	a := w.offers(callbackID, false)
	if err == nil && a == nil {
		err = notThere("shortcut", callbackID)
	}
	if err != nil {
		w.mu.Unlock()
		return err
	}
	from := &place{c, m}
	payload := w.base("message_action", a, u, from)
	name := c.Name
	if c.im {
		name = "directmessage"
	}
	maps.Copy(payload, map[string]any{"callback_id": callbackID, "action_ts": w.ts(), "message_ts": m.TS,
		"message": m.wire(w, c, true), "channel": map[string]any{"id": c.ID, "name": name},
		"response_url": w.newResponse(a, u.ID, from)})
	_, err = w.ask(ctx, a, "interactive", copyJSON(payload))
	return err
}

// OpenHome opens an app's home tab as a person: tab is "home" or "messages".
func (w *Workspace) OpenHome(user, appID, tab string) error {
	w.mu.Lock()
	defer w.mu.Unlock()
	u, a := w.user(user), w.app(appID)
	if u == nil || a == nil {
		return notThere("person or app", user+" "+appID)
	}
	if !a.wants("app_home_opened") {
		return nil
	}
	inner := map[string]any{"type": "app_home_opened", "user": u.ID, "channel": w.dm(u, a).ID, "tab": tab, "event_ts": w.ts()}
	if v := w.views[a.homes[u.ID]]; v != nil && tab == "home" {
		inner["view"] = v.wire(w)
	}
	w.emit(a, nil, inner)
	return nil
}

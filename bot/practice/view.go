package practice

import (
	"encoding/json"
	"maps"
	"slices"
	"time"
)

// view is a modal or a home tab.
type view struct {
	id, hash string
	app      *app
	user     string
	body     map[string]any // as the app sent it, with block ids
	state    map[string]map[string]any
	root     string
	previous string
	message  *place // the message whose button opened it, for response addresses
}

// place is where a message stands.
type place struct {
	ch *channel
	m  *message
}

// View is a view as a test reads it.
type View struct {
	ID, AppID, Type, CallbackID, Title, PrivateMetadata string
	Blocks                                              json.RawMessage
}

func (v *view) str(field string) string {
	s, _ := v.body[field].(string)
	return s
}

func (v *view) read() View {
	blocks, _ := json.Marshal(v.body["blocks"])
	title, _ := v.body["title"].(map[string]any)
	text, _ := title["text"].(string)
	return View{ID: v.id, AppID: v.app.ID, Type: v.str("type"), CallbackID: v.str("callback_id"), Title: text,
		PrivateMetadata: v.str("private_metadata"), Blocks: blocks}
}

// Views are the open modals of a person, the one on top last.
func (w *Workspace) Views(user string) []View {
	w.mu.Lock()
	defer w.mu.Unlock()
	var out []View
	if u := w.user(user); u != nil {
		for _, id := range w.stacks[u.ID] {
			out = append(out, w.views[id].read())
		}
	}
	return out
}

// Home is the home tab that an app published for a person, and false when
// there is none.
func (w *Workspace) Home(appID, user string) (View, bool) {
	w.mu.Lock()
	defer w.mu.Unlock()
	a, u := w.app(appID), w.user(user)
	if a == nil || u == nil || a.homes[u.ID] == "" {
		return View{}, false
	}
	return w.views[a.homes[u.ID]].read(), true
}

// wire is the view as calls and payloads carry it.
func (v *view) wire(w *Workspace) map[string]any {
	out := maps.Clone(v.body)
	defaults := map[string]any{"private_metadata": "", "callback_id": "", "external_id": "", "clear_on_close": false,
		"notify_on_close": false, "title": nil, "close": nil, "submit": nil}
	if v.str("type") == "home" {
		defaults = map[string]any{"private_metadata": "", "callback_id": "", "external_id": "", "clear_on_close": false,
			"notify_on_close": false, "title": map[string]any{"type": "plain_text", "text": "View Title", "emoji": true},
			"close": nil, "submit": nil}
	}
	for k, d := range defaults {
		if _, there := out[k]; !there {
			out[k] = d
		}
	}
	state := v.state
	if state == nil {
		state = map[string]map[string]any{}
	}
	var previous any
	if v.previous != "" {
		previous = v.previous
	}
	maps.Copy(out, map[string]any{"id": v.id, "team_id": w.teamID, "app_id": v.app.ID, "bot_id": v.app.botID,
		"app_installed_team_id": w.teamID, "hash": v.hash, "root_view_id": v.root, "previous_view_id": previous,
		"state": map[string]any{"values": state}})
	return copyJSON(out)
}

// named gives every block an id that has none. Caller holds mu.
func (w *Workspace) named(list []any) []any {
	list = copyJSON(list)
	for _, b := range list {
		if m, ok := b.(map[string]any); ok {
			if id, _ := m["block_id"].(string); id == "" {
				m["block_id"] = w.random(3)
			}
			elements, _ := m["elements"].([]any)
			for _, e := range slices.Concat(elements, []any{m["accessory"], m["element"]}) {
				if el, ok := e.(map[string]any); ok && m["type"] != "rich_text" && m["type"] != "context" && el["type"] != "image" {
					if id, _ := el["action_id"].(string); id == "" {
						el["action_id"] = w.random(3)
					}
				}
			}
		}
	}
	return list
}

// viewArg reads the view argument and holds it to the limits.
func (c *call) viewArg(kind string) (map[string]any, error) {
	v, err := c.value("view", "invalid_arguments")
	if err != nil {
		return nil, err
	}
	body, ok := v.(map[string]any)
	if !ok {
		return nil, refuse("invalid_arguments", "[ERROR] missing required field: view")
	}
	if body["type"] != kind {
		return nil, refuse("invalid_arguments", "[ERROR] must be of type "+kind+" [json-pointer:/view/type]")
	}
	for name, value := range body {
		if value == nil || (value == "" && name != "type") {
			delete(body, name) // clients send empty fields for those that are not set
		}
	}
	if problems := checkView(body); len(problems) > 0 {
		return nil, refuse("invalid_arguments", texts(problems)...)
	}
	if list, ok := body["blocks"].([]any); ok {
		body["blocks"] = c.w.named(list)
	}
	return body, nil
}

// newView keeps a view. Caller holds mu.
func (w *Workspace) newView(a *app, user string, body map[string]any) *view {
	v := &view{id: w.newID("V"), app: a, user: user}
	v.root = v.id
	w.views[v.id] = v
	w.fill(v, body)
	return v
}

// fill sets a view's content; what was entered into blocks and elements that
// are still there with the same ids stays.
func (w *Workspace) fill(v *view, body map[string]any) {
	old := v.state
	v.body, v.state = body, initialState(body["blocks"])
	for block, actions := range old {
		for action, value := range actions {
			if _, still := v.state[block][action]; still {
				v.state[block][action] = value
			}
		}
	}
	v.hash = tsOf(w.now().UnixMicro()) + "." + w.random(4)
	w.changed()
}

// trigger is the right to open one modal, for three seconds.
type trigger struct {
	app     *app
	user    string
	until   time.Time
	message *place
	used    bool
}

// newTrigger gives one out. Caller holds mu.
func (w *Workspace) newTrigger(a *app, user string, from *place) string {
	w.serial++
	id := tsOf(int64(w.serial)) + "." + w.random(8)
	until := w.opts.Now().Add(time.Duration(limit("trigger_id.seconds")) * time.Second)
	if len(w.triggers) > 1000 {
		maps.DeleteFunc(w.triggers, func(_ string, t *trigger) bool { return w.opts.Now().After(t.until) })
	}
	w.triggers[id] = &trigger{app: a, user: user, until: until, message: from}
	return id
}

// triggered takes the trigger_id argument and uses it up.
func (c *call) triggered() (*trigger, error) {
	t := c.w.triggers[c.str("trigger_id")]
	switch {
	case c.who.app == nil:
		return nil, refuse("not_allowed_token_type")
	case c.str("trigger_id") == "":
		return nil, refuse("invalid_arguments", "[ERROR] missing required field: trigger_id")
	case t == nil || t.app != c.who.app:
		return nil, refuse("invalid_trigger_id")
	case t.used:
		return nil, refuse("exchanged_trigger_id")
	case c.w.opts.Now().After(t.until):
		return nil, refuse("expired_trigger_id")
	}
	return t, nil
}

func (c *call) openView() (result, error) { return c.showView(false) }
func (c *call) pushView() (result, error) { return c.showView(true) }

func (c *call) showView(push bool) (result, error) {
	t, err := c.triggered()
	if err != nil {
		return nil, err
	}
	body, err := c.viewArg("modal")
	if err != nil {
		return nil, err
	}
	t.used = true
	v, err := c.w.show(c.who.app, t.user, body, push, t.message)
	if err != nil {
		return nil, err
	}
	return result{"view": v.wire(c.w)}, nil
}

// show opens a modal or lays it on those that are open. Caller holds mu.
func (w *Workspace) show(a *app, user string, body map[string]any, push bool, from *place) (*view, error) {
	stack := w.stacks[user]
	if push && len(stack) == 0 {
		return nil, refuse("view_not_found")
	}
	if push && len(stack) >= limit("view.depth") {
		return nil, refuse("push_limit_reached")
	}
	v := w.newView(a, user, body)
	v.message = from
	if push {
		top := w.views[stack[len(stack)-1]]
		v.previous, v.root = top.id, top.root
		w.stacks[user] = append(stack, v.id)
	} else {
		w.stacks[user] = []string{v.id}
	}
	w.changed()
	return v, nil
}

func (c *call) updateView() (result, error) {
	var v *view
	for _, x := range c.w.views {
		if x.app == c.who.app && (x.id == c.str("view_id") || (c.str("external_id") != "" && x.str("external_id") == c.str("external_id"))) {
			v = x
		}
	}
	if v == nil || (v.str("type") == "modal" && !slices.Contains(c.w.stacks[v.user], v.id)) {
		return nil, refuse("not_found")
	}
	if h := c.str("hash"); h != "" && h != v.hash {
		return nil, refuse("hash_conflict")
	}
	body, err := c.viewArg(v.str("type"))
	if err != nil {
		return nil, err
	}
	c.w.fill(v, body)
	return result{"view": v.wire(c.w)}, nil
}

func (c *call) publishView() (result, error) {
	if c.who.app == nil {
		return nil, refuse("not_allowed_token_type")
	}
	if c.who.app.NoHome {
		return nil, refuse("not_enabled")
	}
	u := c.w.user(c.str("user_id"))
	if u == nil || u.ID != c.str("user_id") {
		return nil, refuse("invalid_arguments", "[ERROR] no such user [json-pointer:/user_id]")
	}
	v := c.w.views[c.who.app.homes[u.ID]]
	if h := c.str("hash"); h != "" && (v == nil || v.hash != h) {
		return nil, refuse("hash_conflict")
	}
	body, err := c.viewArg("home")
	if err != nil {
		return nil, err
	}
	if v == nil {
		v = c.w.newView(c.who.app, u.ID, body)
		c.who.app.homes[u.ID] = v.id
	} else {
		c.w.fill(v, body)
	}
	return result{"view": v.wire(c.w)}, nil
}

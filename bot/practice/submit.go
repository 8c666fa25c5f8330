package practice

import (
	"context"
	"encoding/json"
	"maps"
	"slices"
)

// Outcome is what became of a submitted modal.
type Outcome struct {
	// Errors by block_id: the modal stays open. They come from the workspace,
	// as for an empty required field, or from the app.
	Errors map[string]string
	// Open is the id of the modal that is on top now; empty: none.
	Open string
}

// Submit fills in and submits a modal. The values are by block_id and
// action_id; what is not named keeps its value.
func (w *Workspace) Submit(ctx context.Context, user, viewID string, values map[string]map[string]Entered) (Outcome, error) {
	w.mu.Lock()
	u, v := w.user(user), w.views[viewID]
	if u == nil || v == nil || v.user != u.ID || !slices.Contains(w.stacks[u.ID], viewID) {
		w.mu.Unlock()
		return Outcome{}, notThere("open modal", viewID)
	}
	if wrong := w.fillIn(v, values); len(wrong) > 0 {
		w.mu.Unlock()
		return Outcome{Errors: wrong, Open: viewID}, nil
	}
	payload := w.base("view_submission", v.app, u, v.message)
	payload["view"], payload["response_urls"] = v.wire(w), []any{}
	got, err := w.ask(ctx, v.app, "interactive", copyJSON(payload))
	if err != nil {
		return Outcome{Open: viewID}, err
	}
	var act struct {
		Action string            `json:"response_action"`
		Errors map[string]string `json:"errors"`
		View   map[string]any    `json:"view"`
	}
	if len(got) > 0 {
		_ = json.Unmarshal(got, &act) // anything else closes the modal, as an empty answer does
	}
	w.mu.Lock()
	defer w.mu.Unlock()
	defer w.changed()
	out := Outcome{}
	switch act.Action {
	case "errors":
		out.Errors = act.Errors
	case "update", "push":
		if list, ok := act.View["blocks"].([]any); ok {
			act.View["blocks"] = w.named(list)
		}
		if problems := checkView(act.View); len(problems) > 0 {
			return Outcome{Open: viewID}, refuse("invalid_arguments", texts(problems)...)
		}
		if act.Action == "update" {
			w.fill(v, act.View)
		} else if _, err := w.show(v.app, u.ID, act.View, true, v.message); err != nil {
			return Outcome{Open: viewID}, err
		}
	case "clear":
		w.stacks[u.ID] = nil
	default:
		w.stacks[u.ID] = slices.DeleteFunc(w.stacks[u.ID], func(id string) bool { return id == viewID })
	}
	if s := w.stacks[u.ID]; len(s) > 0 {
		out.Open = s[len(s)-1]
	}
	return out, nil
}

// fillIn enters values into a modal and returns what a person would be told
// before anything is sent. Caller holds mu.
func (w *Workspace) fillIn(v *view, values map[string]map[string]Entered) map[string]string {
	wrong := map[string]string{}
	eachElement(v.body["blocks"], func(block, e map[string]any) {
		if block["type"] != "input" {
			return
		}
		b, a := text(block, "block_id"), text(e, "action_id")
		if in, given := values[b][a]; given {
			entered, bad := enter(e, in)
			if bad != "" {
				wrong[b] = bad
				return
			}
			v.state[b][a] = entered
		}
		state, _ := v.state[b][a].(map[string]any)
		if optional, _ := block["optional"].(bool); !optional && stateful[text(e, "type")] != "" && missing(state) {
			wrong[b] = "This field is needed."
		}
	})
	return wrong
}

// CloseView closes a person's modal without submitting it, and those on top
// of it.
func (w *Workspace) CloseView(ctx context.Context, user, viewID string) error {
	w.mu.Lock()
	u, v := w.user(user), w.views[viewID]
	at := -1
	if u != nil && v != nil {
		at = slices.Index(w.stacks[u.ID], viewID)
	}
	if at < 0 {
		w.mu.Unlock()
		return notThere("open modal", viewID)
	}
	w.stacks[u.ID] = w.stacks[u.ID][:at]
	w.changed()
	if notify, _ := v.body["notify_on_close"].(bool); !notify {
		w.mu.Unlock()
		return nil
	}
	payload := w.base("view_closed", v.app, u, nil)
	maps.Copy(payload, map[string]any{"view": v.wire(w), "is_cleared": false})
	delete(payload, "trigger_id")
	_, err := w.ask(ctx, v.app, "interactive", copyJSON(payload))
	return err
}

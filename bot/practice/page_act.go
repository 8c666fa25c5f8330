package practice

import (
	"encoding/base64"
	"encoding/json"
	"errors"
	"net/http"
	"strings"
	"time"
)

// act is what a person does on the page.
type act struct {
	Do       string                        `json:"do"`
	As       string                        `json:"as"`
	Channel  string                        `json:"channel"`
	TS       string                        `json:"ts"`
	ThreadTS string                        `json:"thread_ts"`
	Text     string                        `json:"text"`
	Name     string                        `json:"name"`
	View     string                        `json:"view"`
	Block    string                        `json:"block"`
	Action   string                        `json:"action"`
	Value    Entered                       `json:"value"`
	Values   map[string]map[string]Entered `json:"values"`
	App      string                        `json:"app"`
	Seconds  int                           `json:"seconds"`
	Faults   *Faults                       `json:"faults"`
	Base64   string                        `json:"base64"`
	MIME     string                        `json:"mime"`
}

func (w *Workspace) servePageAct(rw http.ResponseWriter, r *http.Request) {
	var a act
	r.Body = http.MaxBytesReader(rw, r.Body, 12<<20)
	if err := json.NewDecoder(r.Body).Decode(&a); err != nil {
		writeActed(rw, nil, errors.New("the page sent something that is no action: "+err.Error()))
		return
	}
	out, err := w.act(r, a)
	writeActed(rw, out, err)
}

func (w *Workspace) act(r *http.Request, a act) (map[string]any, error) {
	ctx := r.Context()
	switch a.Do {
	case "say":
		if name, args, isCommand := w.command(a.Text); isCommand {
			if a.ThreadTS != "" {
				return nil, errors.New("commands do not work in replies, as on the platform: type it in the channel's own box")
			}
			return nil, w.Slash(ctx, a.As, a.Channel, name, args)
		}
		ts, err := w.Say(a.As, a.Channel, a.ThreadTS, a.Text)
		return map[string]any{"ts": ts}, err
	case "share":
		b, err := base64.StdEncoding.DecodeString(a.Base64)
		if err != nil {
			return nil, err
		}
		ts, _, err := w.Share(a.As, a.Channel, a.ThreadTS, a.Text, File{Name: a.Name, MIME: a.MIME, Bytes: b})
		return map[string]any{"ts": ts}, err
	case "voice":
		_, id, err := w.Share(a.As, a.Channel, a.ThreadTS, "", File{Name: "voice.m4a", MIME: "audio/mp4", Voice: true})
		if err != nil {
			return nil, err
		}
		// The transcript comes a little later, as on the platform.
		time.AfterFunc(2*time.Second, func() { _ = w.FinishTranscript(id, a.Text) })
		return nil, nil
	case "edit":
		return nil, w.Edit(a.As, a.Channel, a.TS, a.Text)
	case "delete":
		return nil, w.Delete(a.As, a.Channel, a.TS)
	case "react":
		return nil, w.React(a.As, a.Channel, a.TS, a.Name)
	case "press":
		return nil, w.Press(ctx, Press{User: a.As, Channel: a.Channel, TS: a.TS, ViewID: a.View, BlockID: a.Block, ActionID: a.Action, Value: a.Value})
	case "submit":
		got, err := w.Submit(ctx, a.As, a.View, a.Values)
		return map[string]any{"errors": got.Errors, "open": got.Open}, err
	case "close":
		return nil, w.CloseView(ctx, a.As, a.View)
	case "shortcut":
		if a.TS == "" {
			return nil, w.GlobalShortcut(ctx, a.As, a.Name)
		}
		return nil, w.Shortcut(ctx, a.As, a.Channel, a.TS, a.Name)
	case "home":
		return nil, w.OpenHome(a.As, a.App, "home")
	case "advance":
		return nil, w.Advance(time.Duration(a.Seconds) * time.Second)
	case "monday":
		return nil, w.AdvanceTo(NextMonday(w.Now()))
	case "faults":
		if a.Faults == nil {
			return nil, errors.New("no faults were named")
		}
		w.SetFaults(*a.Faults)
		return nil, nil
	case "drop":
		w.DropSockets(a.App)
		return nil, nil
	case "refresh":
		w.RefreshSockets(a.App, "refresh_requested", 10*time.Second)
		return nil, nil
	case "warning":
		w.RefreshSockets(a.App, "warning", 10*time.Second)
		return nil, nil
	case "link_off":
		w.DisableLink(a.App)
		return nil, nil
	case "link_on":
		w.EnableLink(a.App)
		return nil, nil
	}
	return nil, errors.New("the workspace knows no action called " + a.Do)
}

// command takes a typed slash command apart, if the text is one that an app
// owns or would take.
func (w *Workspace) command(text string) (name, args string, ok bool) {
	text = strings.TrimSpace(text)
	if !strings.HasPrefix(text, "/") || strings.HasPrefix(text, "//") || len(text) < 2 {
		return "", "", false
	}
	name, args, _ = strings.Cut(text, " ")
	w.mu.Lock()
	defer w.mu.Unlock()
	return name, strings.TrimSpace(args), w.ownerOf(name) != nil
}

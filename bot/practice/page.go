package practice

import (
	"embed"
	"encoding/json"
	"fmt"
	"io/fs"
	"net"
	"net/http"
	"slices"
	"strconv"
	"strings"
	"time"
)

//go:embed static
var static embed.FS

// pageRoutes adds the page, its state, its stream of changes and its actions.
func (w *Workspace) pageRoutes(mux *http.ServeMux) {
	files, err := fs.Sub(static, "static")
	if err != nil {
		panic(err) // the folder is embedded above
	}
	serve := http.FileServerFS(files)
	mux.Handle("/", w.local(func(rw http.ResponseWriter, r *http.Request) {
		h := rw.Header()
		h.Set("Content-Security-Policy", "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; "+
			"connect-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'")
		h.Set("X-Content-Type-Options", "nosniff")
		h.Set("Referrer-Policy", "no-referrer")
		h.Set("Cache-Control", "no-cache")
		serve.ServeHTTP(rw, r)
	}))
	mux.Handle("GET /archives/{channel}/{ts}", w.local(func(rw http.ResponseWriter, r *http.Request) {
		// The address is made of checked parts, never of what was asked for.
		at := "/"
		digits := strings.TrimPrefix(r.PathValue("ts"), "p")
		w.mu.Lock()
		if c := w.channel(r.PathValue("channel")); c != nil && len(digits) > 6 {
			if m := c.find(digits[:len(digits)-6] + "." + digits[len(digits)-6:]); m != nil {
				at += "#" + c.ID + "/" + m.TS
			}
		}
		w.mu.Unlock()
		http.Redirect(rw, r, at, http.StatusFound)
	}))
	mux.Handle("GET /page/state", w.local(w.servePageState))
	mux.Handle("GET /page/stream", w.local(w.servePageStream))
	mux.Handle("POST /page/act", w.local(w.servePageAct))
}

// local refuses requests that name another host, which a foreign page could
// make this address answer to, and those that come from a foreign page.
func (w *Workspace) local(next http.HandlerFunc) http.Handler {
	return http.HandlerFunc(func(rw http.ResponseWriter, r *http.Request) {
		host, _, err := net.SplitHostPort(r.Host)
		if err != nil {
			host = r.Host
		}
		w.mu.Lock()
		own := strings.HasPrefix(w.url, "http://"+r.Host) || strings.HasPrefix(w.url, "https://"+r.Host)
		if w.url == "" {
			w.url = "http://" + r.Host
		}
		w.mu.Unlock()
		from := r.Header.Get("Sec-Fetch-Site")
		switch {
		case net.ParseIP(strings.Trim(host, "[]")) == nil && host != "localhost" && !own:
			http.Error(rw, "this workspace answers to its own address only", http.StatusForbidden)
		case r.Method == http.MethodPost && ((from != "" && from != "same-origin" && from != "none") || r.Header.Get("Content-Type") != "application/json"):
			http.Error(rw, "only the workspace's own page may act", http.StatusForbidden)
		default:
			next(rw, r)
		}
	})
}

// servePageStream tells a page that something has changed.
func (w *Workspace) servePageStream(rw http.ResponseWriter, r *http.Request) {
	out := http.NewResponseController(rw)
	rw.Header().Set("Content-Type", "text/event-stream")
	rw.Header().Set("Cache-Control", "no-store")
	changes, end := w.watch()
	defer end()
	beat := time.NewTicker(20 * time.Second)
	defer beat.Stop()
	for {
		w.mu.Lock()
		version := w.version
		w.mu.Unlock()
		if _, err := fmt.Fprintf(rw, "data: %d\n\n", version); err != nil || out.Flush() != nil {
			return
		}
		select {
		case <-changes:
			time.Sleep(30 * time.Millisecond) // several changes at once are one
		case <-beat.C:
		case <-r.Context().Done():
			return
		case <-w.done:
			return
		}
	}
}

// servePageState is everything that the page shows to one person at one
// place.
func (w *Workspace) servePageState(rw http.ResponseWriter, r *http.Request) {
	w.mu.Lock()
	defer w.mu.Unlock()
	u := w.user(r.FormValue("as"))
	if u == nil && len(w.users) > 0 {
		u = w.users[0]
	}
	if u == nil {
		http.Error(rw, "the workspace has no people", http.StatusNotFound)
		return
	}
	count, err := strconv.Atoi(r.FormValue("count"))
	if err != nil || count < 1 {
		count = 40
	}
	writeJSON(rw, w.pageState(u, r.FormValue("place"), r.FormValue("ts"), count))
}

func (w *Workspace) pageState(u *User, at, ts string, count int) map[string]any {
	now := w.now()
	names := map[string]string{"USLACKBOT": "the workspace"}
	var people, apps, channels, modals []any
	for _, p := range w.users {
		names[p.ID] = p.RealName
		people = append(people, map[string]any{"id": p.ID, "name": p.Name, "real": p.RealName, "title": p.Title})
	}
	for _, g := range w.groups {
		names[g.ID] = g.Handle
	}
	for _, a := range w.apps {
		names[a.userID] = a.Name
		apps = append(apps, map[string]any{"id": a.ID, "name": a.Name, "sockets": len(a.sockets), "off": a.off,
			"http": a.RequestURL != "", "home": !a.NoHome, "commands": a.Commands, "shortcuts": a.Shortcuts,
			"any_command": a.AnyCommand, "joined": a.joined || a.RequestURL != "", "dm": w.dm(u, a).ID})
	}
	for _, c := range w.channels {
		if c.im && c.imUser != u.ID || c.Private && !c.has(u.ID) {
			continue
		}
		name := c.Name
		if c.im {
			name = c.imApp.Name
		}
		names[c.ID] = name
		latest := ""
		for _, m := range slices.Backward(c.messages) {
			if m.User != u.ID {
				latest = m.TS
				break
			}
		}
		channels = append(channels, map[string]any{"id": c.ID, "name": name, "topic": c.Topic, "im": c.im, "latest": latest,
			"member": c.has(u.ID), "private": c.Private})
	}
	for _, id := range w.stacks[u.ID] {
		modals = append(modals, w.views[id].wire(w))
	}
	out := map[string]any{"version": w.version, "workspace": w.opts.Name, "panel": w.opts.Panel, "as": u.ID,
		"now": now.UnixMilli(), "zone": now.Location().String(), "monday": NextMonday(now).Format("Mon 2 Jan, 15:04"),
		"people": people, "apps": apps, "channels": channels, "names": names, "modals": modals, "faults": w.faults,
		"api": w.url + "/api/", "place": at, "key": w.pageKey, "token": w.userToken(u)}
	if id, isHome := strings.CutPrefix(at, "home:"); isHome {
		if a := w.app(id); a != nil {
			if v := w.views[a.homes[u.ID]]; v != nil {
				out["home"] = v.wire(w)
			}
		}
		return out
	}
	c := w.channel(at)
	if c == nil || (c.im && c.imUser != u.ID) || (c.Private && !c.has(u.ID)) {
		c = w.channels[0]
	}
	out["place"] = c.ID
	out["entries"], out["earlier"] = w.entries(c, u, ts, count)
	return out
}

// entries are the newest messages of a channel with their replies, the newest
// first, and how many older ones there are. The message at ts is among them.
func (w *Workspace) entries(c *channel, u *User, ts string, count int) ([]any, int) {
	var roots []*message
	replies := map[string][]any{}
	shown := slices.Clone(c.messages)
	for _, m := range c.private {
		if m.To == u.ID {
			shown = append(shown, m)
		}
	}
	slices.SortStableFunc(shown, func(a, b *message) int { return strings.Compare(a.TS, b.TS) })
	there := map[string]bool{}
	for _, m := range c.messages {
		there[m.TS] = true
	}
	for _, m := range shown {
		if m.ThreadTS == "" || !there[m.ThreadTS] {
			roots = append(roots, m)
			continue
		}
		replies[m.ThreadTS] = append(replies[m.ThreadTS], w.pageMessage(c, m))
	}
	slices.Reverse(roots)
	if m := c.find(ts); m != nil {
		root := m.TS
		if m.ThreadTS != "" {
			root = m.ThreadTS
		}
		count = max(count, 1+slices.IndexFunc(roots, func(x *message) bool { return x.TS == root }))
	}
	earlier := max(0, len(roots)-count)
	out := []any{}
	for _, m := range roots[:len(roots)-earlier] {
		out = append(out, map[string]any{"message": w.pageMessage(c, m), "replies": replies[m.TS]})
	}
	return out, earlier
}

func (w *Workspace) pageMessage(c *channel, m *message) map[string]any {
	out := m.wire(w, c, true)
	us, _ := strconv.ParseInt(strings.Replace(m.TS, ".", "", 1), 10, 64)
	out["at"] = time.UnixMicro(us).In(w.opts.Location).Format("Mon 2 Jan 2006, 15:04")
	out["time"] = time.UnixMicro(us).In(w.opts.Location).Format("15:04")
	out["day"] = time.UnixMicro(us).In(w.opts.Location).Format("Mon 2 Jan 2006")
	if m.To != "" {
		out["only_you"] = true
	}
	if m.Broadcast {
		out["broadcast"] = true
	}
	return out
}

// writeActed answers an action of the page.
func writeActed(rw http.ResponseWriter, out map[string]any, err error) {
	if out == nil {
		out = map[string]any{}
	}
	out["ok"] = err == nil
	if err != nil {
		out["error"] = err.Error()
	}
	rw.Header().Set("Content-Type", "application/json")
	_ = json.NewEncoder(rw).Encode(out) // the page may be gone
}

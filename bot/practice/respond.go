package practice

import (
	"encoding/json"
	"maps"
	"net/http"
	"slices"
	"strings"
	"time"
	"unicode/utf8"
)

// responseURL is an address at which an app may answer one interaction.
type responseURL struct {
	app   *app
	user  string
	from  *place
	until time.Time // by the workspace's clock
	posts int
}

// newResponse gives one out and returns it. Caller holds mu.
func (w *Workspace) newResponse(a *app, user string, from *place) string {
	if len(w.responses) > 1000 {
		maps.DeleteFunc(w.responses, func(_ string, to *responseURL) bool { return w.now().After(to.until) })
	}
	address := w.url + "/respond/" + w.random(12)
	w.responses[address] = &responseURL{app: a, user: user, from: from,
		until: w.now().Add(time.Duration(limit("response_url.minutes")) * time.Minute)}
	return address
}

// serveRespond takes what an app posts to a response address.
func (w *Workspace) serveRespond(rw http.ResponseWriter, r *http.Request) {
	var body map[string]any
	r.Body = http.MaxBytesReader(rw, r.Body, 1<<20)
	if err := json.NewDecoder(r.Body).Decode(&body); err != nil {
		http.Error(rw, "invalid_payload", http.StatusBadRequest)
		return
	}
	w.mu.Lock()
	defer w.mu.Unlock()
	if err := w.respond(w.url+r.URL.Path, body); err != nil {
		rw.WriteHeader(http.StatusNotFound)
		writeAnswer(rw, nil, err)
		return
	}
	writeAnswer(rw, nil, nil)
}

// respond posts, replaces or deletes by way of a response address: only for
// the person who acted, unless response_type is in_channel. Caller holds mu.
func (w *Workspace) respond(address string, body map[string]any) error {
	to := w.responses[address]
	switch {
	case to == nil || w.now().After(to.until):
		return refuse("expired_url")
	case to.posts >= limit("response_url.posts"):
		return refuse("used_url")
	}
	to.posts++
	ch, m := to.from.ch, to.from.m
	if gone, _ := body["delete_original"].(bool); gone && m != nil {
		if m.To != "" {
			ch.private = slices.DeleteFunc(ch.private, func(x *message) bool { return x == m })
			w.changed()
		} else if m.app == to.app {
			w.remove(ch, m)
		}
		return nil
	}
	d := &message{User: to.app.userID, app: to.app, Text: text(body, "text"), ThreadTS: text(body, "thread_ts")}
	blocks, _ := body["blocks"].([]any)
	if problems := checkBlocks(blocks, "message"); len(problems) > 0 {
		return refuse("invalid_blocks", texts(problems)...)
	}
	switch {
	case utf8.RuneCountInString(d.Text) > limit("message.cut"):
		return refuse("msg_too_long")
	case len(blocks) > 0:
		d.Blocks = w.named(blocks)
	case strings.TrimSpace(d.Text) == "":
		return refuse("no_text")
	default:
		d.Blocks = w.named(richText(d.Text))
	}
	if replace, _ := body["replace_original"].(bool); replace && m != nil && m.app == to.app {
		change := func(m *message) { m.Text, m.Blocks = d.Text, d.Blocks }
		if m.To != "" {
			change(m)
			w.changed()
		} else {
			w.revise(ch, m, to.app.userID, change)
		}
		return nil
	}
	if m != nil && m.ThreadTS != "" && d.ThreadTS == "" {
		d.ThreadTS = m.ThreadTS
	}
	if body["response_type"] == "in_channel" {
		w.add(ch, d)
		return nil
	}
	d.To = to.user
	w.whisper(ch, d)
	return nil
}

package practice

import (
	"context"
	"errors"
	"net"
	"net/http"
	"time"
)

// Handler serves the whole workspace: the Web API at /api/, Socket Mode at
// /socket, files, response addresses and the page.
func (w *Workspace) Handler() http.Handler {
	mux := http.NewServeMux()
	mux.HandleFunc("/api/", w.serveAPI)
	mux.HandleFunc("GET /socket", w.serveSocket)
	mux.HandleFunc("POST /upload/{id}/{secret}", w.serveUpload)
	mux.HandleFunc("GET /files/{id}/{name}", w.serveFile)
	mux.HandleFunc("POST /respond/{id}", w.serveRespond)
	w.pageRoutes(mux)
	return mux
}

// Ready is what a client needs to join the workspace: the addresses, and the
// tokens of the last app, which is the empty one.
type Ready struct {
	Page     string `json:"page"`
	API      string `json:"api"`
	BotToken string `json:"bot_token"`
	AppToken string `json:"app_token"`
}

// Ready returns the addresses and the tokens of the last app.
func (w *Workspace) Ready() Ready {
	w.mu.Lock()
	defer w.mu.Unlock()
	out := Ready{Page: w.url + "/", API: w.url + "/api/"}
	if n := len(w.apps); n > 0 {
		out.BotToken, out.AppToken = w.apps[n-1].BotToken, w.apps[n-1].AppToken
	}
	return out
}

// Serve opens a workspace on a listener and serves it until ctx ends. Once
// requests are answered, ready is called with the workspace; an error from it
// ends the workspace.
func Serve(ctx context.Context, l net.Listener, o Options, ready func(*Workspace) error) error {
	if o.URL == "" {
		o.URL = "http://" + l.Addr().String()
	}
	w := New(o)
	defer w.Close()
	ctx, cancel := context.WithCancel(ctx)
	defer cancel()
	failed := make(chan error, 1)
	go func() { failed <- w.Serve(ctx, l) }()
	if ready != nil {
		if err := ready(w); err != nil {
			cancel()
			return errors.Join(err, <-failed)
		}
	}
	return <-failed
}

// Serve serves the workspace on a listener until ctx ends, and closes both.
func (w *Workspace) Serve(ctx context.Context, l net.Listener) error {
	w.mu.Lock()
	if w.url == "" {
		w.url = "http://" + l.Addr().String()
	}
	w.mu.Unlock()
	server := &http.Server{Handler: w.Handler(), ReadHeaderTimeout: 10 * time.Second}
	stopped := make(chan error, 1)
	stop := context.AfterFunc(ctx, func() {
		w.Close() // sockets and pages first: they would hold the shutdown up
		late, cancel := context.WithTimeout(context.WithoutCancel(ctx), 2*time.Second)
		defer cancel()
		if server.Shutdown(late) != nil {
			_ = server.Close()
		}
		stopped <- nil
	})
	err := server.Serve(l)
	if stop() {
		return err // the listener failed by itself
	}
	<-stopped
	return nil
}

package slackchat

import (
	"context"
	"crypto/hmac"
	"crypto/sha256"
	"encoding/hex"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"net"
	"net/http"
	"net/url"
	"strconv"
	"strings"
	"time"
)

// The Events API over HTTP, for a bot that Slack can reach. The same payloads
// as over the socket, each request signed.

const (
	maxBody    = 1 << 20         // of a request; the largest payloads have some 100 kB
	bodyWithin = 5 * time.Second // for a request to arrive whole
	replay     = 5 * time.Minute // how old a signature may be
)

// errSignature is all that a stranger is told.
var errSignature = errors.New("the signature does not match")

// Verify checks the signature of a request: v0 of "v0:<timestamp>:<body>" by
// HMAC-SHA256, not older or newer than five minutes.
// Source: authentication/verifying-requests-from-slack.
func Verify(secret, timestamp, signature string, body []byte, now time.Time) error {
	sec, err := strconv.ParseInt(timestamp, 10, 64)
	if err != nil {
		return errSignature
	}
	if d := now.Sub(time.Unix(sec, 0)); d > replay || d < -replay {
		return errors.New("the request is too old, or a clock is wrong")
	}
	mac := hmac.New(sha256.New, []byte(secret))
	fmt.Fprintf(mac, "v0:%s:", timestamp)
	mac.Write(body)
	want := "v0=" + hex.EncodeToString(mac.Sum(nil))
	if secret == "" || !hmac.Equal([]byte(want), []byte(signature)) {
		return errSignature
	}
	return nil
}

// listen serves requests until ctx ends.
func (s *Slack) listen(ctx context.Context) error {
	ln, err := net.Listen("tcp", s.opt.Listen)
	if err != nil {
		return fmt.Errorf("cannot listen for Slack on %s: %w", s.opt.Listen, err)
	}
	s.mu.Lock()
	s.state.Connected, s.state.Since, s.state.LastReason = true, s.opt.Now(), ""
	s.mu.Unlock()
	s.tasks.Go(func() { s.catchUp(ctx) })
	server := &http.Server{Handler: s.Handler(), ReadHeaderTimeout: bodyWithin, ReadTimeout: 2 * bodyWithin, WriteTimeout: 30 * time.Second,
		IdleTimeout: time.Minute, MaxHeaderBytes: 32 << 10, BaseContext: func(net.Listener) context.Context { return ctx }}
	stop := context.AfterFunc(ctx, func() {
		late, cancel := context.WithTimeout(context.WithoutCancel(ctx), 2*time.Second)
		defer cancel()
		if server.Shutdown(late) != nil {
			_ = server.Close()
		}
	})
	defer stop()
	if err := server.Serve(ln); !errors.Is(err, http.ErrServerClosed) {
		return fmt.Errorf("listen for Slack: %w", err)
	}
	return nil
}

// Handler answers Slack's requests, all at one address: events, interactions
// and commands.
func (s *Slack) Handler() http.Handler {
	return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		if r.Method != http.MethodPost {
			w.Header().Set("Allow", http.MethodPost)
			http.Error(w, "Slack's requests only", http.StatusMethodNotAllowed)
			return
		}
		_ = http.NewResponseController(w).SetReadDeadline(time.Now().Add(bodyWithin)) // not every server can; the limit of the server holds then
		body, err := io.ReadAll(http.MaxBytesReader(w, r.Body, maxBody))
		if err != nil {
			http.Error(w, "the request is too long or too slow", http.StatusRequestEntityTooLarge)
			return
		}
		if err := Verify(s.opt.SigningSecret, r.Header.Get("X-Slack-Request-Timestamp"), r.Header.Get("X-Slack-Signature"), body, s.opt.Now()); err != nil {
			s.opt.Log.Warn("a request was refused", "why", err.Error())
			http.Error(w, err.Error(), http.StatusUnauthorized)
			return
		}
		s.mu.Lock()
		s.state.LastFrame = s.opt.Now()
		s.mu.Unlock()
		s.serve(w, r, body)
	})
}

// serve deals with a request that is Slack's.
func (s *Slack) serve(w http.ResponseWriter, r *http.Request, body []byte) {
	ctx := r.Context()
	if kind, raw, ok := formPayload(r, body); ok {
		answer, err := s.act(ctx, kind, raw)
		switch {
		case err != nil:
			s.opt.Log.Error("an interaction was not kept", "error", err.Error())
			http.Error(w, "not kept", http.StatusInternalServerError)
		case answer != nil:
			w.Header().Set("Content-Type", "application/json; charset=utf-8")
			_ = json.NewEncoder(w).Encode(answer) // the other side may be gone
		}
		return
	}
	var c callback
	if json.Unmarshal(body, &c) == nil && c.Type == "url_verification" {
		w.Header().Set("Content-Type", "text/plain; charset=utf-8")
		w.Header().Set("X-Content-Type-Options", "nosniff")
		_, _ = io.WriteString(w, c.Challenge)
		return
	}
	if err := s.deal(ctx, s.decode(body)); err != nil {
		s.opt.Log.Error("a message was not kept; Slack will send it again", "error", err.Error())
		http.Error(w, "not kept", http.StatusInternalServerError)
		return
	}
	w.WriteHeader(http.StatusOK)
}

// formPayload reads an interaction or a command, which come as forms.
func formPayload(r *http.Request, body []byte) (kind string, raw []byte, ok bool) {
	if !strings.HasPrefix(r.Header.Get("Content-Type"), "application/x-www-form-urlencoded") {
		return "", nil, false
	}
	form, err := url.ParseQuery(string(body))
	if err != nil {
		return "interactive", nil, true // refused as malformed
	}
	if p := form.Get("payload"); p != "" {
		return "interactive", []byte(p), true
	}
	flat := map[string]string{}
	for k := range form {
		flat[k] = form.Get(k)
	}
	raw, err = json.Marshal(flat)
	return "slash_commands", raw, err == nil
}

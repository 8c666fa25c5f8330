package slackchat_test

import (
	"context"
	"errors"
	"log/slog"
	"net/http/httptest"
	"slices"
	"sync"
	"testing"
	"time"

	"lazyhand/bot/desk"
	"lazyhand/bot/practice"
	"lazyhand/bot/slackchat"
)

// field is the channel that is read, dispatch the one for alerts.
const (
	field    = "C00000001"
	dispatch = "C00000002"
	rosa     = "U00000001"
)

// shop is a practice workspace on loopback with the bot in it, and a desk that
// only notes what it is brought.
type shop struct {
	t *testing.T
	*practice.Workspace
	url  string
	app  practice.App
	bot  *slackchat.Slack
	stop func() error

	mu    sync.Mutex
	taken []desk.Message
	keys  map[string]bool
	seen  map[string]int // by verdict and reason
	fail  int            // so many messages are not kept
	heard []desk.Heard
}

// open opens a workspace and lets the bot join it.
func open(t *testing.T, o practice.Options, change ...func(*slackchat.Options)) *shop {
	t.Helper()
	s := &shop{t: t, keys: map[string]bool{}, seen: map[string]int{}}
	if o.AckWithin == 0 {
		o.AckWithin = 300 * time.Millisecond
	}
	if o.Apps == nil {
		app := practice.MainApp("lazyhand")
		app.Commands = []practice.Command{{Name: "/lazyhand"}}
		app.Shortcuts = []practice.Shortcut{{Name: "Report this", CallbackID: slackchat.ShortcutMessage}}
		o.Apps = []practice.AppOptions{app}
	}
	s.Workspace = practice.New(o)
	server := httptest.NewServer(s.Handler())
	t.Cleanup(func() {
		s.Close()
		server.Close()
	})
	s.url, s.app = server.URL, s.Apps()[0]
	s.join(change...)
	return s
}

// options are the bot's, with short times.
func (s *shop) options(change ...func(*slackchat.Options)) slackchat.Options {
	o := slackchat.Options{
		BotToken: s.app.BotToken, AppToken: s.app.AppToken, APIURL: s.url + "/api/", Field: []string{field}, Now: s.Now,
		Pace: time.Millisecond, FirstDelay: 10 * time.Millisecond, LongestWait: 50 * time.Millisecond, Ping: 50 * time.Millisecond,
		VoiceWaits: []time.Duration{20 * time.Millisecond, 50 * time.Millisecond, 100 * time.Millisecond},
		Heard: func(context.Context, time.Time) (channels, threads []desk.Heard, err error) {
			s.mu.Lock()
			defer s.mu.Unlock()
			return slices.Clone(s.heard), slices.Clone(s.heard), nil
		},
		Seen: func(v slackchat.Verdict, why string) {
			s.mu.Lock()
			defer s.mu.Unlock()
			s.seen[string(v)+": "+why]++
		},
		Log: slog.New(slog.NewTextHandler(testWriter{s.t}, nil)),
	}
	for _, f := range change {
		f(&o)
	}
	return o
}

type testWriter struct{ t *testing.T }

func (w testWriter) Write(b []byte) (int, error) {
	w.t.Log(string(b))
	return len(b), nil
}

// join starts the bot; leave ends it.
func (s *shop) join(change ...func(*slackchat.Options)) {
	s.t.Helper()
	s.bot = slackchat.New(s.options(change...))
	ctx, cancel := context.WithCancel(context.Background())
	done := make(chan error, 1)
	go func() { done <- s.bot.Run(ctx, s.take) }()
	s.stop = sync.OnceValue(func() error {
		cancel()
		select {
		case err := <-done:
			return err
		case <-time.After(10 * time.Second):
			return errors.New("the bot does not stop")
		}
	})
	s.t.Cleanup(func() { _ = s.stop() })
	s.until("the bot is connected", func() bool { ok, _ := s.bot.Connected(); return ok })
}

// take is the desk: it keeps a message once under its key and its twin.
func (s *shop) take(_ context.Context, m desk.Message) error {
	s.mu.Lock()
	defer s.mu.Unlock()
	if s.fail > 0 {
		s.fail--
		return errors.New("the disk is full")
	}
	if s.keys[m.Key] || m.Twin != "" && s.keys[m.Twin] {
		return nil
	}
	s.keys[m.Key], s.keys[m.Twin] = true, true
	s.taken = append(s.taken, m)
	return nil
}

// messages are those that the desk has.
func (s *shop) messages() []desk.Message {
	s.mu.Lock()
	defer s.mu.Unlock()
	return slices.Clone(s.taken)
}

func (s *shop) count(what string) int {
	s.mu.Lock()
	defer s.mu.Unlock()
	return s.seen[what]
}

// until waits for something to become true.
func (s *shop) until(what string, ok func() bool) {
	s.t.Helper()
	for end := time.Now().Add(8 * time.Second); time.Now().Before(end); time.Sleep(3 * time.Millisecond) {
		if ok() {
			return
		}
	}
	s.mu.Lock()
	defer s.mu.Unlock()
	s.t.Fatalf("waited in vain: %s\ntaken %+v\nseen %v", what, s.taken, s.seen)
}

// settled waits until nothing is on its way to the bot.
func (s *shop) settled() {
	s.t.Helper()
	s.until("everything is acknowledged", func() bool { return s.Deliveries(s.app.ID) == 0 })
}

// calls counts the Web API calls of a method.
func (s *shop) calls(method string) (n int) {
	for _, c := range s.Calls() {
		if c.Method == method {
			n++
		}
	}
	return n
}

func (s *shop) say(user, channel, thread, text string) string {
	s.t.Helper()
	ts, err := s.Say(user, channel, thread, text)
	if err != nil {
		s.t.Fatal(err)
	}
	return ts
}

func must(t *testing.T, err error) {
	t.Helper()
	if err != nil {
		t.Fatal(err)
	}
}

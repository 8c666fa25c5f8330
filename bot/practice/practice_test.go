package practice_test

import (
	"context"
	"encoding/json"
	"net/http/httptest"
	"sync"
	"testing"
	"time"

	"github.com/slack-go/slack"
	"github.com/slack-go/slack/slackevents"
	"github.com/slack-go/slack/socketmode"

	"lazyhand/bot/practice"
)

// shop is a workspace on a loopback port with a Web API client of its first
// app: the client that bots use against the real platform.
type shop struct {
	*practice.Workspace
	api *slack.Client
	url string
}

func open(t *testing.T, o practice.Options) *shop {
	t.Helper()
	w := practice.New(o)
	server := httptest.NewServer(w.Handler())
	t.Cleanup(func() {
		w.Close()
		server.Close()
	})
	return &shop{w, client(w.Apps()[0], server.URL), server.URL}
}

func client(a practice.App, url string) *slack.Client {
	return slack.New(a.BotToken, slack.OptionAppLevelToken(a.AppToken), slack.OptionAPIURL(url+"/api/"))
}

// ear is a Socket Mode client that keeps what it hears.
type ear struct {
	mu   sync.Mutex
	seen []socketmode.Event
	sm   *socketmode.Client
}

// listen connects with slack-go's own Socket Mode client and acknowledges
// everything with what ack returns; a nil func acknowledges with nothing.
func (s *shop) listen(t *testing.T, ack func(socketmode.Event) any) *ear {
	t.Helper()
	e := &ear{sm: socketmode.New(s.api)}
	ctx, cancel := context.WithCancel(context.Background())
	var wg sync.WaitGroup
	wg.Add(2)
	go func() {
		defer wg.Done()
		_ = e.sm.RunContext(ctx)
	}()
	go func() {
		defer wg.Done()
		for {
			select {
			case <-ctx.Done():
				return
			case evt := <-e.sm.Events:
				e.mu.Lock()
				e.seen = append(e.seen, evt)
				e.mu.Unlock()
				if evt.Request != nil && evt.Request.EnvelopeID != "" {
					var payload any
					if ack != nil {
						payload = ack(evt)
					}
					_ = e.sm.AckCtx(ctx, evt.Request.EnvelopeID, payload)
				}
			}
		}
	}()
	t.Cleanup(func() {
		cancel()
		wg.Wait()
	})
	wait(t, "hello", func() bool { return e.count(socketmode.EventTypeHello) > 0 })
	return e
}

func (e *ear) count(kind socketmode.EventType) int {
	e.mu.Lock()
	defer e.mu.Unlock()
	n := 0
	for _, x := range e.seen {
		if x.Type == kind {
			n++
		}
	}
	return n
}

// inner are the events of one Go type that were heard.
func inner[T any](e *ear) []T {
	e.mu.Lock()
	defer e.mu.Unlock()
	var out []T
	for _, x := range e.seen {
		if outer, ok := x.Data.(slackevents.EventsAPIEvent); ok {
			if got, ok := outer.InnerEvent.Data.(T); ok {
				out = append(out, got)
			}
		}
	}
	return out
}

// data are the payloads of one Go type that were heard.
func data[T any](e *ear) []T {
	e.mu.Lock()
	defer e.mu.Unlock()
	var out []T
	for _, x := range e.seen {
		if got, ok := x.Data.(T); ok {
			out = append(out, got)
		}
	}
	return out
}

func wait(t *testing.T, what string, ok func() bool) {
	t.Helper()
	for end := time.Now().Add(20 * time.Second); time.Now().Before(end); time.Sleep(5 * time.Millisecond) {
		if ok() {
			return
		}
	}
	t.Fatalf("waited in vain for %s", what)
}

func must[T any](t *testing.T) func(T, error) T {
	return func(v T, err error) T {
		t.Helper()
		if err != nil {
			t.Fatal(err)
		}
		return v
	}
}

func check(t *testing.T, err error) {
	t.Helper()
	if err != nil {
		t.Fatal(err)
	}
}

func refused(t *testing.T, err error, code string) {
	t.Helper()
	if err == nil || err.Error() != code {
		t.Errorf("got %v, want the refusal %s", err, code)
	}
}

func asJSON(t *testing.T, v any) string {
	t.Helper()
	b, err := json.Marshal(v)
	check(t, err)
	return string(b)
}

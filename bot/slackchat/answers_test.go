package slackchat_test

import (
	"context"
	"encoding/json"
	"errors"
	"fmt"
	"net/http"
	"net/http/httptest"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"lazyhand/bot/desk"
	"lazyhand/bot/practice"
	"lazyhand/bot/slackchat"
)

// sampleFolder are the sample files of a folder of ../shared/slack-samples.
func sampleFolder(t *testing.T, folder string) []string {
	t.Helper()
	names, err := filepath.Glob(filepath.Join("..", "..", "..", "shared", "slack-samples", folder, "*.json"))
	if err != nil || len(names) == 0 {
		t.Skip("the sample payloads of ../shared/slack-samples are not here")
	}
	return names
}

// Every sample answer to a post is said, refused for good, refused for now, or
// leaves in doubt: which of these stands in testdata/slack/answers.txt.
func TestEverySampleAnswerMeansOneThing(t *testing.T) {
	var got strings.Builder
	for _, name := range sampleFolder(t, "derived-web-api") {
		if base := filepath.Base(name); strings.HasPrefix(base, "ok-") && base != "ok-chat.postMessage.json" {
			continue // answers to other calls: slack-go's own types read them throughout these tests
		}
		body, err := os.ReadFile(name)
		must(t, err)
		far := httptest.NewServer(http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
			w.Header().Set("Content-Type", "application/json")
			if strings.Contains(name, "429") {
				w.Header().Set("Retry-After", "30")
				w.WriteHeader(http.StatusTooManyRequests)
			}
			_, _ = w.Write(body)
		}))
		s := slackchat.New(slackchat.Options{BotToken: "xoxb-test", AppToken: "xapp-test", APIURL: far.URL + "/api/", Pace: time.Millisecond})
		ref, err := s.Post(t.Context(), reply("reply:1", "1764072000.000100"))
		var no *desk.Refusal
		what := "said as " + ref
		switch {
		case errors.As(err, &no) && no.Final:
			what = "refused for good: " + no.Why
		case errors.As(err, &no):
			what = fmt.Sprintf("refused for %v: %s", no.After, no.Why)
		case err != nil:
			what = "in doubt"
		}
		fmt.Fprintf(&got, "%s %s\n", filepath.Base(name), what)
		far.Close()
	}
	golden(t, "answers.txt", got.String())
}

// The samples of what Slack sends about the connection itself: a greeting is
// nothing new, a farewell makes the bot dial again, switching Socket Mode off
// ends it with a word on what to do.
func TestEverySampleControlFrameIsObeyed(t *testing.T) {
	for _, name := range append(sampleFolder(t, "socket-control"), sampleFolder(t, "derived-socket")...) {
		base := filepath.Base(name)
		if !strings.HasPrefix(base, "hello") && !strings.HasPrefix(base, "disconnect") {
			continue
		}
		t.Run(base, func(t *testing.T) {
			frame, err := os.ReadFile(name)
			must(t, err)
			p := newPeer(t)
			s := slackchat.New(p.options())
			ctx, cancel := context.WithCancel(t.Context())
			defer cancel()
			ended := make(chan error, 1)
			go func() { ended <- s.Run(ctx, func(context.Context, desk.Message) error { return nil }) }()
			opened := func() int { p.mu.Lock(); defer p.mu.Unlock(); return p.open }
			wait := func(what string, ok func() bool) {
				t.Helper()
				for end := time.Now().Add(20 * time.Second); !ok(); time.Sleep(3 * time.Millisecond) {
					if time.Now().After(end) {
						t.Fatal(what)
					}
				}
			}
			wait("the bot does not connect", func() bool { ok, _ := s.Connected(); return ok })
			p.out <- frame
			switch {
			case strings.Contains(base, "link_disabled"):
				select {
				case err := <-ended:
					var fatal *slackchat.Fatal
					if !errors.As(err, &fatal) {
						t.Errorf("ended with %v", err)
					}
				case <-time.After(20 * time.Second):
					t.Error("the bot goes on without Socket Mode")
				}
				return
			case strings.HasPrefix(base, "disconnect"):
				wait("the bot does not dial again", func() bool { return opened() > 1 })
			default:
				time.Sleep(50 * time.Millisecond)
				if n := opened(); n != 1 {
					t.Errorf("a greeting made the bot open %d sockets", n)
				}
			}
			cancel()
			<-ended
		})
	}
}

// The sample form is one that the workspace, and so the platform's limits,
// take: forms of ours are held to the same check.
func TestTheSampleFormKeepsToTheLimits(t *testing.T) {
	for _, name := range sampleFolder(t, "views") {
		raw, err := os.ReadFile(name)
		must(t, err)
		var view map[string]any
		must(t, json.Unmarshal(raw, &view))
		for _, added := range []string{"id", "team_id", "state", "hash", "root_view_id", "previous_view_id", "app_id", "app_installed_team_id", "bot_id"} {
			delete(view, added) // Slack adds these to a view that it hands back
		}
		raw, err = json.Marshal(view)
		must(t, err)
		if faults := practice.CheckView(raw); len(faults) > 0 {
			t.Errorf("%s: %v", filepath.Base(name), faults)
		}
	}
}

package slackchat_test

import (
	"context"
	"encoding/json"
	"flag"
	"fmt"
	"io"
	"net/http"
	"net/http/httptest"
	"os"
	"path/filepath"
	"strings"
	"sync"
	"testing"
	"time"

	"github.com/gorilla/websocket"

	"lazyhand/bot/desk"
	"lazyhand/bot/slackchat"
)

// updating tells whether -update, which talktest defines, was given: the
// expected files in testdata are then written.
func updating() bool { return flag.Lookup("update").Value.String() == "true" }

// peer is the far end with no sense of its own: it sends the frames it is
// given and notes what is acknowledged.
type peer struct {
	*httptest.Server
	out  chan []byte
	mu   sync.Mutex
	acks map[string]int
	open int
}

func newPeer(t *testing.T) *peer {
	p := &peer{out: make(chan []byte, 1000), acks: map[string]int{}}
	mux := http.NewServeMux()
	mux.HandleFunc("/api/auth.test", func(w http.ResponseWriter, _ *http.Request) {
		io.WriteString(w, `{"ok":true,"user_id":"UBOT00001","bot_id":"B0000001","team_id":"T0000001"}`)
	})
	mux.HandleFunc("/api/users.info", func(w http.ResponseWriter, _ *http.Request) {
		io.WriteString(w, `{"ok":false,"error":"user_not_found"}`)
	})
	mux.HandleFunc("/api/chat.postMessage", func(w http.ResponseWriter, _ *http.Request) {
		fmt.Fprintf(w, `{"ok":true,"channel":"C0000001","ts":"%d.000100"}`, time.Now().Unix())
	})
	mux.HandleFunc("/api/apps.connections.open", func(w http.ResponseWriter, r *http.Request) {
		fmt.Fprintf(w, `{"ok":true,"url":"ws://%s/socket"}`, r.Host)
	})
	mux.HandleFunc("/socket", func(w http.ResponseWriter, r *http.Request) {
		c, err := (&websocket.Upgrader{}).Upgrade(w, r, nil)
		if err != nil {
			return
		}
		p.mu.Lock()
		p.open++
		p.mu.Unlock()
		_ = c.WriteMessage(websocket.TextMessage, []byte(`{"type":"hello","num_connections":1}`))
		gone := make(chan struct{})
		go func() {
			defer c.Close()
			for {
				select {
				case f := <-p.out:
					if c.WriteMessage(websocket.TextMessage, f) != nil {
						return
					}
				case <-gone:
					return
				}
			}
		}()
		defer close(gone)
		for {
			_, b, err := c.ReadMessage()
			if err != nil {
				return
			}
			var a struct {
				ID string `json:"envelope_id"`
			}
			if json.Unmarshal(b, &a) == nil {
				p.mu.Lock()
				p.acks[a.ID]++
				p.mu.Unlock()
			}
		}
	})
	p.Server = httptest.NewServer(mux)
	t.Cleanup(p.Close)
	return p
}

func (p *peer) acked(id string) bool {
	p.mu.Lock()
	defer p.mu.Unlock()
	return p.acks[id] > 0
}

// options of a bot that joins the peer.
func (p *peer) options() slackchat.Options {
	return slackchat.Options{BotToken: "xoxb-test", AppToken: "xapp-test", APIURL: p.URL + "/api/", Pace: time.Millisecond, FirstDelay: 10 * time.Millisecond}
}

// run lets a bot join the peer until the test ends.
func (p *peer) run(t *testing.T, o slackchat.Options, take slackchat.Take) *slackchat.Slack {
	s := slackchat.New(o)
	done := make(chan struct{})
	ctx := t.Context() // ends before the cleanups run
	go func() {
		defer close(done)
		_ = s.Run(ctx, take)
	}()
	t.Cleanup(func() { <-done })
	for end := time.Now().Add(5 * time.Second); ; time.Sleep(3 * time.Millisecond) {
		if ok, _ := s.Connected(); ok {
			return s
		}
		if time.Now().After(end) {
			t.Fatal("the bot does not connect")
		}
	}
}

// wrap makes a frame of a sample; id is how its acknowledgement is known, empty
// where there is none.
func wrap(folder string, raw []byte, n int) (frame []byte, id string) {
	id = fmt.Sprintf("sample-%d", n)
	kind, payload := "", json.RawMessage(raw)
	switch folder {
	case "events":
		kind = "events_api"
	case "inner-events":
		kind = "events_api"
		payload, _ = json.Marshal(map[string]any{"type": "event_callback", "event_id": id, "event": json.RawMessage(raw)})
	case "interactive":
		kind = "interactive"
	case "slash":
		kind = "slash_commands"
	case "derived", "derived-socket", "socket-envelopes", "socket-control":
		var e map[string]json.RawMessage
		if json.Unmarshal(raw, &e) != nil || e["envelope_id"] == nil {
			return raw, ""
		}
		e["envelope_id"], _ = json.Marshal(id)
		frame, _ = json.Marshal(e)
		return frame, id
	default:
		return nil, ""
	}
	frame, _ = json.Marshal(map[string]any{"envelope_id": id, "type": kind, "payload": payload})
	return frame, id
}

// Every sample payload is taken, ignored or refused by name, and acknowledged
// whatever it is.
func TestEverySampleIsTakenIgnoredOrRefusedByName(t *testing.T) {
	root := filepath.Join("..", "..", "..", "shared", "slack-samples")
	names, err := filepath.Glob(filepath.Join(root, "*", "*.json"))
	if err != nil || len(names) == 0 {
		t.Skip("the sample payloads of ../shared/slack-samples are not here")
	}
	p := newPeer(t)
	var mu sync.Mutex
	var last []string
	note := func(s string) {
		mu.Lock()
		defer mu.Unlock()
		last = append(last, s)
	}
	o := p.options()
	o.Shared = true
	o.Seen = func(v slackchat.Verdict, why string) { note(string(v) + ": " + why) }
	p.run(t, o, func(_ context.Context, m desk.Message) error { return nil })
	var got strings.Builder
	sent := 0
	for n, name := range names {
		raw, err := os.ReadFile(name)
		must(t, err)
		folder := filepath.Base(filepath.Dir(name))
		frame, id := wrap(folder, raw, n)
		if frame == nil || id == "" {
			continue // answers to calls, control frames and views have tests of their own
		}
		sent++
		mu.Lock()
		last = nil
		mu.Unlock()
		p.out <- frame
		for end := time.Now().Add(5 * time.Second); !p.acked(id); time.Sleep(time.Millisecond) {
			if time.Now().After(end) {
				t.Fatalf("%s is not acknowledged", name)
			}
		}
		mu.Lock()
		fmt.Fprintf(&got, "%s/%s %s\n", folder, filepath.Base(name), strings.Join(last, "; "))
		if len(last) == 0 {
			t.Errorf("%s: nobody said what became of it", name)
		}
		mu.Unlock()
	}
	if sent < 70 {
		t.Errorf("only %d samples were sent", sent)
	}
	golden(t, "samples.txt", got.String())
}

// golden compares with an expected file.
func golden(t *testing.T, name, got string) {
	t.Helper()
	path := filepath.Join("..", "..", "testdata", "slack", name)
	if updating() {
		must(t, os.MkdirAll(filepath.Dir(path), 0o755))
		must(t, os.WriteFile(path, []byte(got), 0o644))
	}
	want, err := os.ReadFile(path)
	must(t, err)
	if got != string(want) {
		t.Errorf("%s differs; run with -update and read the change:\n%s", path, got)
	}
}

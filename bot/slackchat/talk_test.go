package slackchat_test

import (
	"context"
	"encoding/json"
	"errors"
	"fmt"
	"net/http/httptest"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"sync/atomic"
	"testing"
	"time"

	"lazyhand/bot/desk"
	"lazyhand/bot/desk/talktest"
	"lazyhand/bot/practice"
	"lazyhand/bot/slackchat"
	"lazyhand/store"
)

// TestTalk plays the transcripts of testdata/talk through Slack's protocol:
// what the bot says must be the same as at the desk alone.
func TestTalk(t *testing.T) {
	dir := filepath.Join("..", "..", "testdata", "talk")
	crew := people(t, dir)
	talktest.Run(t, dir, func(t *testing.T) talktest.World { return newWorld(t, crew) })
}

// people are all who say something in a transcript, under their own names.
func people(t *testing.T, dir string) (out []practice.User) {
	files, err := filepath.Glob(filepath.Join(dir, "*.txt"))
	must(t, err)
	seen := map[string]bool{}
	who := regexp.MustCompile(`(?m)^(?:! (?:edit|press|delete) )?([a-z]+) (?:[a-z_]+ )?[#@]`)
	for _, f := range files {
		b, err := os.ReadFile(f)
		must(t, err)
		for _, m := range who.FindAllStringSubmatch(string(b), -1) {
			if !seen[m[1]] {
				seen[m[1]] = true
				out = append(out, practice.User{ID: m[1], Name: m[1], RealName: m[1]})
			}
		}
	}
	return out
}

// world is a record, a desk and the bot in a practice workspace whose clock is
// the transcript's.
type world struct {
	t     *testing.T
	path  string
	db    *store.DB
	desk  atomic.Pointer[desk.Desk]
	clock atomic.Int64

	*practice.Workspace
	url  string
	bot  *slackchat.Slack
	stop func()

	said    []talktest.Said
	seen    int
	real    map[string]string // names of the transcript to those of the workspace
	unreal  map[string]string // and back
	done    map[string]bool
	offline bool
	lose    bool
	refuse  time.Duration
}

func newWorld(t *testing.T, crew []practice.User) *world {
	w := &world{t: t, path: filepath.Join(t.TempDir(), "lazyhand.db"), real: map[string]string{}, unreal: map[string]string{}, done: map[string]bool{}}
	zone, err := time.LoadLocation(talktest.Zone)
	must(t, err)
	var channels []practice.ChannelOptions
	for _, name := range []string{"field", "dispatch", "team"} {
		channels = append(channels, practice.ChannelOptions{ID: name, Name: name})
	}
	w.Workspace = practice.New(practice.Options{Users: crew, Channels: channels, Location: zone, Apps: []practice.AppOptions{practice.MainApp("lazyhand")},
		Now: func() time.Time { return time.UnixMilli(w.clock.Load()) }})
	server := httptest.NewServer(w.Handler())
	w.url = server.URL
	must(t, w.start())
	t.Cleanup(func() {
		w.stop()
		w.db.Close()
		w.Close()
		server.Close()
	})
	return w
}

func (w *world) start() (err error) {
	zone, err := time.LoadLocation(talktest.Zone)
	if err != nil {
		return err
	}
	if w.db, err = store.Open(w.t.Context(), w.path); err != nil {
		return err
	}
	d, err := desk.New(w.db, talktest.Options(zone))
	if err != nil {
		return err
	}
	w.desk.Store(d)
	app := w.Apps()[0]
	w.bot = slackchat.New(slackchat.Options{BotToken: app.BotToken, AppToken: app.AppToken, SigningSecret: app.SigningSecret, APIURL: w.url + "/api/",
		Field: []string{"field"}, Heard: d.Heard, Now: w.Now, Pace: time.Microsecond, FirstDelay: 5 * time.Millisecond})
	ctx, cancel := context.WithCancel(context.Background())
	ended := make(chan error, 1)
	bot := w.bot
	go func() { ended <- bot.Run(ctx, d.Take) }()
	w.stop = func() { cancel(); <-ended; ended <- nil }
	for range 2000 {
		if ok, _ := bot.Connected(); ok {
			return nil
		}
		time.Sleep(2 * time.Millisecond)
	}
	return errors.New("the bot does not connect")
}

func (w *world) Restart() error {
	// The bot hears its own posts too. One of these that is under way when the
	// socket closes would come again only when the transcript's clock moves.
	if err := w.heardAll(); err != nil {
		return err
	}
	w.stop()
	if err := w.db.Close(); err != nil {
		return err
	}
	return w.start()
}

// name is the workspace's name of a ts of the transcript in a channel.
func (w *world) name(channel, ts string) string {
	if r, ok := w.real[channel+ts]; ok {
		return r
	}
	return ts
}

// where is the workspace's channel for one of the transcript.
func (w *world) where(channel string) string {
	if who, ok := strings.CutPrefix(channel, "@"); ok {
		return w.DM(who, w.Apps()[0].ID)
	}
	return channel
}

func (w *world) Do(ctx context.Context, m desk.Message) error {
	w.clock.Store(m.At.UnixMilli())
	channel := w.where(m.Channel)
	if w.done[m.Key] {
		return w.again(ctx, m, channel)
	}
	w.done[m.Key] = true
	switch m.Kind {
	case desk.Said:
		thread := ""
		if m.Thread != m.TS {
			thread = w.name(channel, m.Thread)
		}
		ts, err := w.Say(m.Author, channel, thread, m.Text)
		w.real[channel+m.TS], w.unreal[channel+ts] = ts, m.TS
		return err
	case desk.Edited:
		return w.Edit(m.Author, channel, w.name(channel, m.TS), m.Text)
	case desk.Deleted:
		return w.Delete(m.Author, channel, w.name(channel, m.TS))
	}
	return w.press(ctx, m, channel)
}

// press presses the newest button in the thread that does what m does.
func (w *world) press(ctx context.Context, m desk.Message, channel string) error {
	all := w.Messages(channel)
	for i := len(all) - 1; i >= 0; i-- {
		if x := all[i]; x.AppID != "" && (x.TS == w.name(channel, m.Thread) || x.ThreadTS == w.name(channel, m.Thread)) {
			var blocks []struct {
				Elements []struct {
					ID    string `json:"action_id"`
					Value string `json:"value"`
				} `json:"elements"`
			}
			if x.Blocks != nil {
				if err := json.Unmarshal(x.Blocks, &blocks); err != nil {
					return err
				}
			}
			for _, b := range blocks {
				for _, e := range b.Elements {
					if strings.HasPrefix(e.ID, "desk:"+m.Button+":") && e.Value == m.Value {
						return w.Press(ctx, practice.Press{User: m.Author, Channel: channel, TS: x.TS, ActionID: e.ID})
					}
				}
			}
		}
	}
	return fmt.Errorf("no button %s %s", m.Button, m.Value)
}

// again delivers an event once more, by the other way in.
func (w *world) again(ctx context.Context, m desk.Message, channel string) error {
	inner := map[string]any{"type": "message", "channel": channel, "user": m.Author, "ts": w.name(channel, m.TS), "text": m.Text}
	if m.Thread != m.TS {
		inner["thread_ts"] = w.name(channel, m.Thread)
	}
	body, err := json.Marshal(map[string]any{"type": "event_callback", "event_id": "Ev" + m.TS, "event": inner})
	if err != nil {
		return err
	}
	rec := httptest.NewRecorder()
	w.bot.Handler().ServeHTTP(rec, signed(w.Apps()[0].SigningSecret, "application/json", string(body), w.Now()).WithContext(ctx))
	if rec.Code != 200 {
		return fmt.Errorf("delivered again: %d %s", rec.Code, rec.Body)
	}
	return nil
}

func (w *world) Fault(name string, d time.Duration) {
	switch name {
	case "lose":
		w.lose = true
	case "offline", "online":
		w.offline = name == "offline"
	case "refuse":
		w.refuse = d
	}
}

// heardAll waits until the bot has acknowledged all that the workspace told it.
func (w *world) heardAll() error {
	for end := time.Now().Add(30 * time.Second); w.Deliveries(w.Apps()[0].ID) > 0; time.Sleep(time.Millisecond) {
		if time.Now().After(end) {
			return errors.New("something is not acknowledged")
		}
	}
	return nil
}

func (w *world) Rest(ctx context.Context, now time.Time) ([]talktest.Said, error) {
	w.clock.Store(now.UnixMilli())
	if err := w.heardAll(); err != nil {
		return nil, err
	}
	if err := w.desk.Load().Tick(ctx, now); err != nil {
		return nil, err
	}
	for more := true; more; {
		var err error
		if more, err = w.desk.Load().Send(ctx, now, w); err != nil {
			return nil, err
		}
	}
	out := w.said[w.seen:]
	w.seen = len(w.said)
	return out, nil
}

func (w *world) Newest(channel, thread string) (desk.Post, bool) {
	for i := len(w.said) - 1; i >= 0; i-- {
		s := w.said[i]
		if s.Channel == channel && (s.Thread == thread || s.TS == thread) && len(s.Post.Body.Buttons) > 0 {
			return s.Post, true
		}
	}
	return desk.Post{}, false
}

// faulty switches the transcript's fault on for one call.
func (w *world) faulty(method string) (off func()) {
	f := practice.Faults{Method: method}
	switch {
	case w.offline:
		f.Method, f.LostCall = "", -1
	case w.refuse > 0:
		f.RateLimit, f.RetryAfter = 1, w.refuse
		w.refuse = 0
	case w.lose:
		f.LostAnswer = 1
		w.lose = false
	default:
		return func() {}
	}
	w.SetFaults(f)
	return func() { w.SetFaults(practice.Faults{}) }
}

// Post posts through Slack's protocol, and notes what the workspace then shows.
func (w *world) Post(ctx context.Context, p desk.Post) (string, error) {
	defer w.faulty(map[desk.PostKind]string{desk.Say: "chat.postMessage", desk.Change: "chat.update", desk.React: "reactions.add"}[p.Kind])()
	before := w.shown(p)
	ref, err := w.bot.Post(ctx, p)
	s := talktest.Said{Post: p, Channel: w.unwhere(p.Channel), TS: p.Ref}
	switch after := w.shown(p); {
	case p.Kind == desk.Say && before == "" && after != "":
		s.TS = after
	case p.Kind != desk.Say && err == nil:
	default:
		return ref, err
	}
	if u, ok := w.unreal[w.where(p.Channel)+s.TS]; ok {
		s.TS = u
	}
	if p.Thread != "" {
		s.Thread = p.Thread
		if u, ok := w.unreal[w.where(p.Channel)+p.Thread]; ok {
			s.Thread = u
		}
	}
	w.said = append(w.said, s)
	return ref, err
}

// shown is the ts of the message that carries the post's key.
func (w *world) shown(p desk.Post) string {
	for _, m := range w.Messages(w.where(p.Channel)) {
		payload, _ := m.Metadata["event_payload"].(map[string]any)
		if payload["key"] == p.Key {
			return m.TS
		}
	}
	return ""
}

// unwhere is the transcript's channel for one of the workspace.
func (w *world) unwhere(channel string) string {
	for _, u := range w.Users() {
		if channel == w.DM(u.Name, w.Apps()[0].ID) {
			return "@" + u.Name
		}
	}
	return channel
}

func (w *world) Find(ctx context.Context, p desk.Post) (string, bool, error) {
	defer w.faulty("")()
	return w.bot.Find(ctx, p)
}

package desk_test

import (
	"context"
	"errors"
	"fmt"
	"path/filepath"
	"testing"
	"time"

	"lazyhand/bot/desk"
	"lazyhand/bot/desk/talktest"
	"lazyhand/store"
)

// TestTalk plays the transcripts against the desk alone.
func TestTalk(t *testing.T) {
	talktest.Run(t, filepath.Join("..", "..", "testdata", "talk"), func(t *testing.T) talktest.World {
		w := newWorld(t)
		t.Cleanup(func() { w.rebuilds(t) })
		return w
	})
}

// rebuilds checks that the messages of a conversation alone give all that
// followed from it: reading them anew changes nothing.
func (w *world) rebuilds(t *testing.T) {
	_, err := w.desk.Rebuild(context.Background(), true, nil, func(c store.Change) error {
		t.Errorf("a rebuild makes different: %s of message %d %q: %s -> %s", c.What, c.Message, c.Text, c.Was, c.Now)
		return nil
	})
	if err != nil {
		t.Error(err)
	}
}

// world is the desk with a chat platform that is a list in memory.
type world struct {
	t       *testing.T
	path    string
	db      *store.DB
	desk    *desk.Desk
	now     time.Time
	said    []talktest.Said
	seen    int
	n       int
	offline bool
	lose    bool
	refuse  time.Duration
}

func newWorld(t *testing.T) *world {
	w := &world{t: t, path: filepath.Join(quickDir(t), "lazyhand.db")}
	if err := w.start(); err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { w.db.Close() })
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
	w.desk, err = desk.New(w.db, talktest.Options(zone))
	return err
}

func (w *world) Do(ctx context.Context, m desk.Message) error { return w.desk.Take(ctx, m) }

func (w *world) Restart() error {
	if err := w.db.Close(); err != nil {
		return err
	}
	return w.start()
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

func (w *world) Rest(ctx context.Context, now time.Time) ([]talktest.Said, error) {
	w.now = now
	if err := w.desk.Tick(ctx, now); err != nil {
		return nil, err
	}
	for {
		more, err := w.desk.Send(ctx, now, w)
		if err != nil {
			return nil, err
		}
		if !more {
			break
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

var errCut = errors.New("the line was cut")

func (w *world) Post(_ context.Context, p desk.Post) (string, error) {
	switch {
	case w.offline:
		return "", errCut
	case w.refuse > 0:
		after := w.refuse
		w.refuse = 0
		return "", &desk.Refusal{Why: "too fast", After: after}
	}
	w.n++
	s := talktest.Said{Post: p, Channel: p.Channel, Thread: p.Thread, TS: fmt.Sprintf("%d.9%05d", w.now.Unix(), w.n)}
	if p.Kind != desk.Say {
		s.TS = p.Ref
	}
	w.said = append(w.said, s)
	if w.lose {
		w.lose = false
		return "", errCut
	}
	return s.TS, nil
}

func (w *world) Find(_ context.Context, p desk.Post) (string, bool, error) {
	if w.offline {
		return "", false, errCut
	}
	for _, s := range w.said {
		if s.Post.Key == p.Key {
			return s.TS, true, nil
		}
	}
	return "", false, nil
}

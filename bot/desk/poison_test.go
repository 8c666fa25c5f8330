package desk_test

import (
	"context"
	"database/sql"
	"strings"
	"testing"
	"time"

	"lazyhand/bot/desk"
	"lazyhand/store"
)

// TestAPoisonedMessageIsSetAsideAfterFiveTries spoils the record under a
// message, so that dealing with it fails every time. It is kept, tried again,
// set aside with its error, its author is told once; a rebuild takes it up when
// the fault is gone.
func TestAPoisonedMessageIsSetAsideAfterFiveTries(t *testing.T) {
	s := newShop(t, quickDir(t), desk.Options{})
	defer s.db.Close()
	ctx := context.Background()
	raw, err := sql.Open("sqlite3", s.db.Path())
	if err != nil {
		t.Fatal(err)
	}
	defer raw.Close()
	first := s.says("ana", "lunch?")
	if _, err := raw.Exec(`INSERT INTO question (message, channel, thread, author, at, kind, body) VALUES (1, 'field', ?, 'ana', ?, 'unclear', 'no JSON')`,
		first.Thread, s.now.UnixMilli()); err != nil {
		t.Fatal(err)
	}
	poisoned := s.says("ana", "92 rear tap, heater idle, 123 Elm St")
	state := func() (m store.Message) {
		t.Helper()
		err := s.db.Read(ctx, func(tx *store.Tx) (err error) {
			m, _, err = tx.MessageByKey(poisoned.Key)
			return err
		})
		if err != nil {
			t.Fatal(err)
		}
		return m
	}
	for try := 1; try < 5; try++ {
		if m := state(); m.State != store.Waiting || m.Tries != try {
			t.Fatalf("after try %d: %s, %d tries", try, m.State, m.Tries)
		}
		s.now = s.now.Add(30 * time.Second)
		if err := s.desk.Tick(ctx, s.now); err != nil {
			t.Fatal(err)
		}
	}
	m := state()
	if m.State != store.SetAside || !strings.Contains(m.Error, "read the open question") || m.Text != poisoned.Text {
		t.Errorf("after five tries: %s %q %q", m.State, m.Error, m.Text)
	}
	err = s.db.Read(ctx, func(tx *store.Tx) error {
		post, found, err := tx.PostByKey("reply:2")
		if !found || !strings.Contains(string(post.Body), "Sorry") {
			t.Errorf("the author is not told: %s", post.Body)
		}
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	if _, err := raw.Exec(`DELETE FROM question`); err != nil {
		t.Fatal(err)
	}
	if _, changes := s.rebuild(false); len(changes) == 0 || state().State != store.Taken {
		t.Errorf("a rebuild does not take it up: %+v", state())
	}
}

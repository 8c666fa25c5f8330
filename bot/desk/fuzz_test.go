package desk_test

import (
	"fmt"
	"path/filepath"
	"testing"
	"time"

	"lazyhand/bot/desk"
	"lazyhand/bot/desk/talktest"
	"lazyhand/store"
)

// FuzzTake: whatever people type, in a field channel, in a thread, edited or in
// an alert's thread, the bot neither fails nor sets it aside.
func FuzzTake(f *testing.F) {
	for _, s := range []string{
		"92 rear tap, heater idle, 123 Elm", "make it 82", "scratch that", "mine", "send Ana Thursday morning", "closed:", "done", "ponle 5",
		"'; DROP TABLE message; --", "<!channel> <@U0> *_~`", "\x00\x1b[31m\u202e", "🔥🔥", "%s %d %!", "900 psi", "-5 psi", "1e308 psi at the rear, 12 Elm",
		"snooze 123 Elm 99999999999999 days", "recheck in 4000000000 weeks, 123 Elm", "give 123 Elm to Ana", "{\"a\":1}", "wrong house, 9 Oak", "trend 123 Elm",
	} {
		f.Add(s)
	}
	db, err := store.Open(f.Context(), filepath.Join(f.TempDir(), "lazyhand.db"))
	if err != nil {
		f.Fatal(err)
	}
	f.Cleanup(func() { db.Close() })
	d, err := desk.New(db, talktest.Options(time.UTC))
	if err != nil {
		f.Fatal(err)
	}
	n := 0
	f.Fuzz(func(t *testing.T, text string) {
		n++
		now := time.Date(2026, 6, 15, 10, 0, 0, 0, time.UTC).Add(time.Duration(n) * time.Second)
		say := func(kind store.MessageKind, ts, about, text string) {
			m := desk.Message{Key: "field/" + ts, Kind: kind, Channel: "field", TS: ts, Author: "dana", Name: "Dana", At: now, Text: text}
			if about != "" {
				m.About, m.Key = about, m.Key+"#edited:1"
			}
			if err := d.Take(t.Context(), m); err != nil {
				t.Fatalf("%q: %v", text, err)
			}
		}
		ts := fmt.Sprint(now.UnixNano())
		say(store.Said, ts, "", "95 laundry, heater idle, 123 Elm")
		say(store.Edited, ts, "field/"+ts, text)
		say(store.Said, ts+"1", "", text)
		err := db.Read(t.Context(), func(tx *store.Tx) error {
			for _, state := range []store.MessageState{store.Waiting, store.SetAside} {
				if stuck, err := tx.Stuck(state, 1); err != nil || len(stuck) > 0 {
					return fmt.Errorf("%s: %+v, %v", state, stuck, err)
				}
			}
			return nil
		})
		if err != nil {
			t.Fatalf("%q: %v", text, err)
		}
	})
}

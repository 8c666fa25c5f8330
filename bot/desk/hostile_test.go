package desk_test

import (
	"context"
	"fmt"
	"strings"
	"testing"
	"time"

	"lazyhand/bot/desk"
	"lazyhand/store"
)

// The longest message is dealt with as any other: in a moment, and with no
// reply longer than a screen.
func TestAVeryLongMessage(t *testing.T) {
	w := newWorld(t)
	w.say(t, "ana", "2026-06-15 10:00", strings.Repeat("the customer told me about the weather again. ", 900)[:40_000])
	w.say(t, "ana", "2026-06-15 10:01", "92 rear tap, heater idle, 12 Alder St. "+strings.Repeat("x", 39_000))
	said, err := w.Rest(t.Context(), at(t, "2026-06-15 10:02"))
	if err != nil {
		t.Fatal(err)
	}
	for _, s := range said {
		if text := s.Post.Body.Text(); len(text) > 3000 {
			t.Errorf("a reply of %d characters: %.200s …", len(text), text)
		}
	}
}

// A message that makes the bot fail is kept, tried again and set aside, with an
// apology and a mark; what comes after it is dealt with.
func TestAPoisonedMessageIsSetAside(t *testing.T) {
	w := newWorld(t)
	w.say(t, "ana", "2026-06-15 10:00", "66 laundry, heater idle")
	err := w.db.Write(t.Context(), func(tx *store.Tx) error { // a question that no version can read
		q, _, err := tx.OpenQuestion("field", "", "ana", time.Time{})
		if err != nil {
			return err
		}
		q.Kind, q.Body = "which_site", []byte("{")
		return tx.AskQuestion(q)
	})
	if err != nil {
		t.Fatal(err)
	}
	w.say(t, "ana", "2026-06-15 10:01", "12 Alder St")
	for i := range 6 {
		w.hear(t, fmt.Sprintf("2026-06-15 10:0%d", 2+i))
	}
	var stuck []store.Message
	if err := w.db.Read(context.Background(), func(tx *store.Tx) (err error) {
		stuck, err = tx.Stuck(store.SetAside, 10)
		return err
	}); err != nil {
		t.Fatal(err)
	}
	if len(stuck) != 1 || stuck[0].Text != "12 Alder St" || stuck[0].Error == "" {
		t.Errorf("set aside: %+v", stuck)
	}
	marked, apologies := false, 0
	for _, s := range w.said {
		marked = marked || s.Post.Mark == desk.MarkSetAside
		if strings.HasPrefix(s.Post.Body.Lead, "Sorry") {
			apologies++
		}
	}
	if !marked || apologies != 1 {
		t.Errorf("marked %v, %d apologies", marked, apologies)
	}
	w.say(t, "ben", "2026-06-15 10:10", "66 laundry, heater idle, 40 Cedar Rd")
	if heard := w.hear(t, "2026-06-15 10:11"); len(heard) != 1 || !strings.HasPrefix(heard[0], "40 Cedar Rd") {
		t.Errorf("afterwards: %v", heard)
	}
}

package desk_test

import (
	"fmt"
	"testing"
	"time"

	"lazyhand/bot/desk"
	"lazyhand/bot/desk/talktest"
	"lazyhand/store"
)

// at is an instant on the shop's wall clock.
func at(t *testing.T, s string) time.Time {
	t.Helper()
	zone, err := time.LoadLocation(talktest.Zone)
	if err != nil {
		t.Skip("no time zones on this machine")
	}
	v, err := time.ParseInLocation("2006-01-02 15:04", s, zone)
	if err != nil {
		t.Fatal(err)
	}
	return v
}

// say lets a person say something in the field channel.
func (w *world) say(t *testing.T, who, when, text string) {
	t.Helper()
	w.n++
	now := at(t, when)
	ts := fmt.Sprintf("%d.%06d", now.Unix(), w.n)
	if err := w.desk.Take(t.Context(), desk.Message{Key: "field/" + ts, Kind: store.Said, Channel: "field", TS: ts, Author: who, Name: who, At: now, Text: text}); err != nil {
		t.Fatal(err)
	}
}

func (w *world) hear(t *testing.T, when string) []string {
	t.Helper()
	said, err := w.Rest(t.Context(), at(t, when))
	if err != nil {
		t.Fatal(err)
	}
	var out []string
	for _, s := range said {
		if s.Post.Kind != desk.React {
			out = append(out, s.Post.Body.Lead)
		}
	}
	return out
}

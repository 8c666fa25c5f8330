package desk_test

import (
	"testing"
	"time"

	"lazyhand/bot/desk"
	"lazyhand/store"
)

// A platform promises no order: an edit or a deletion may come before what it
// is about, and an early edit after a later one.
func TestWhatComesOutOfOrderChangesNothing(t *testing.T) {
	at := time.Date(2026, 6, 15, 14, 0, 0, 0, time.UTC)
	said := desk.Message{Key: "field/1.000000", Kind: desk.Said, Channel: "field", TS: "1.000000", Author: "ana", Name: "ana", At: at, Text: "92 rear tap, heater idle, 123 Elm St"}
	edit := func(n, text string) desk.Message {
		m := said
		m.Kind, m.About, m.Key, m.Text = desk.Edited, said.Key, said.Key+"#edited:"+n, text
		return m
	}
	gone := said
	gone.Kind, gone.About, gone.Key, gone.Text = desk.Deleted, said.Key, said.Key+"#deleted", ""
	first, second := edit("2.000000", "82 rear tap, heater idle, 123 Elm St"), edit("3.000000", "78 rear tap, heater idle, 123 Elm St")
	tests := []struct {
		name   string
		events []desk.Message
		want   string // the wording on record at the end
		state  store.MessageState
	}{
		{"the edit before the message", []desk.Message{first, said}, first.Text, store.Taken},
		{"the later edit before the earlier", []desk.Message{said, second, first}, second.Text, store.Taken},
		{"the deletion before the message", []desk.Message{gone, said}, "", store.Retracted},
		{"an edit after an early deletion", []desk.Message{gone, said, first}, "", store.Retracted},
		{"an edit with the same words", []desk.Message{said, edit("2.000000", said.Text)}, said.Text, store.Taken},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			w := newWorld(t)
			for _, m := range tt.events {
				if err := w.Do(t.Context(), m); err != nil {
					t.Fatal(err)
				}
			}
			var got store.Message
			err := w.db.Read(t.Context(), func(tx *store.Tx) (err error) {
				got, _, err = tx.MessageByKey(said.Key)
				return err
			})
			if err != nil || got.Text != tt.want || got.State != tt.state {
				t.Errorf("on record %q, %s, %v; want %q, %s", got.Text, got.State, err, tt.want, tt.state)
			}
		})
	}
}

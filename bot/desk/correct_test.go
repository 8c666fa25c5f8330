package desk_test

import (
	"fmt"
	"strings"
	"testing"

	"lazyhand/assess"
	"lazyhand/bot/desk"
	"lazyhand/store"
)

// A form may bring the right wording of a report with its button; the wording
// takes the report's place.
func TestAReportIsPutRightByAForm(t *testing.T) {
	w := newWorld(t)
	w.say(t, "ana", "2026-06-15 10:00", "66 laundry, heater idle, 12 Alder St")
	said, err := w.Rest(t.Context(), at(t, "2026-06-15 10:01"))
	if err != nil {
		t.Fatal(err)
	}
	press := func(who, typed string) string {
		for _, s := range said {
			for _, b := range s.Post.Body.Buttons {
				if b.Name != "correct" {
					continue
				}
				w.n++
				m := desk.Message{Key: fmt.Sprintf("form/%d", w.n), Kind: store.Pressed, Channel: "field", TS: fmt.Sprint(w.n), Author: who,
					At: at(t, "2026-06-15 10:02"), Button: b.Name, Value: b.Value, Text: typed}
				if err := w.desk.Take(t.Context(), m); err != nil {
					t.Fatal(err)
				}
			}
		}
		return strings.Join(w.hear(t, "2026-06-15 10:03"), "\n")
	}
	for _, tt := range []struct{ who, typed, want string }{
		{"ana", "63 rear tap, heater idle", "12 Alder St: In band at 63"},
		{"ana", "63 rear tap, heater idle, 14 Alder St", "14 Alder St: In band at 63"},
		{"ana", "", "What is right?"},
		{"ana", "lunch at 12?", "There is no reading"},
		{"ben", "99 rear tap", "That report is ana's"},
	} {
		if got := press(tt.who, tt.typed); !strings.HasPrefix(got, tt.want) {
			t.Errorf("%s types %q and is told %q", tt.who, tt.typed, got)
		}
	}
	// The form may be left out: what is written next is the right wording.
	press("ana", "")
	w.say(t, "ana", "2026-06-15 10:04", "76")
	if got := strings.Join(w.hear(t, "2026-06-15 10:05"), "\n"); !strings.HasPrefix(got, "14 Alder St: In band at 76") {
		t.Errorf("after the question ana writes 76 and is told %q", got)
	}
	// A report of its own is no answer to that question.
	press("ana", "")
	w.say(t, "ana", "2026-06-15 10:06", "58 laundry, heater idle, 9 Oak Ct")
	if got := strings.Join(w.hear(t, "2026-06-15 10:07"), "\n"); !strings.HasPrefix(got, "9 Oak Ct: In band at 58") {
		t.Errorf("after the question ana reports on another house and is told %q", got)
	}
	if _, err := w.desk.House(t.Context(), "14 Alder St", assess.Date{Year: 2026, Month: 6, Day: 15}, ""); err != nil {
		t.Error(err)
	}
}

package desk_test

import (
	"strings"
	"sync"
	"testing"

	"lazyhand/bot/desk"
	"lazyhand/bot/desk/talktest"
)

// Two instances of the clock on one record say everything once.
func TestTwoClocksSayThingsOnce(t *testing.T) {
	w := newWorld(t)
	w.say(t, "ana", "2026-06-15 10:00", "95 laundry, heater idle, 12 Alder St. recheck in 7 days")
	w.say(t, "ana", "2026-06-15 10:05", "96 laundry, heater idle, 40 Cedar Rd. recheck in 7 days")
	w.hear(t, "2026-06-15 10:06")
	other, err := desk.New(w.db, talktest.Options(at(t, "2026-06-15 10:00").Location()))
	if err != nil {
		t.Fatal(err)
	}
	// Both look at the same moments, one after an outage, at once.
	for _, when := range []string{"2026-06-15 10:20", "2026-06-15 10:40", "2026-06-22 07:00", "2026-06-22 07:01"} {
		now := at(t, when)
		var wg sync.WaitGroup
		for _, d := range []*desk.Desk{w.desk, other} {
			for range 4 {
				wg.Go(func() {
					if err := d.Tick(t.Context(), now); err != nil {
						t.Error(err)
					}
				})
			}
		}
		wg.Wait()
	}
	heard := map[string]int{}
	for _, lead := range w.hear(t, "2026-06-22 07:02") {
		heard[lead]++
	}
	for lead, n := range heard {
		if n != 1 && !strings.HasPrefix(lead, "Nobody has taken this") && !strings.HasPrefix(lead, "Still nobody") {
			t.Errorf("said %d times: %s", n, lead)
		}
	}
	for _, want := range []string{"ana, follow-ups due: 3.", "Water pressure, 2026-06-15 to 2026-06-21"} {
		if heard[want] != 1 {
			t.Errorf("%q was said %d times of %v", want, heard[want], heard)
		}
	}
}

// What was missed is posted once and late while it makes sense; older, it is
// left to the next.
func TestAfterAnOutage(t *testing.T) {
	for _, tt := range []struct {
		back  string
		posts int // about the week to June 21
	}{
		{"2026-06-24 06:50", 1}, // 48 hours late
		{"2026-06-26 12:00", 0}, // the next one comes soon, and tells the same
	} {
		w := newWorld(t)
		w.say(t, "ana", "2026-06-15 10:00", "66 laundry, heater idle, 12 Alder St")
		w.hear(t, "2026-06-22 06:50")
		if err := w.Restart(); err != nil {
			t.Fatal(err)
		}
		n := 0
		for range 3 {
			for _, lead := range w.hear(t, tt.back) {
				if lead == "Water pressure, 2026-06-15 to 2026-06-21" {
					n++
				}
			}
		}
		if n != tt.posts {
			t.Errorf("back on %s: the week is told %d times, want %d", tt.back, n, tt.posts)
		}
	}
}

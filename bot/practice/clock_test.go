package practice_test

import (
	"testing"
	"time"

	"lazyhand/bot/practice"
)

func TestNextMondayAtSevenOnTheWallClock(t *testing.T) {
	ny, err := time.LoadLocation("America/New_York")
	check(t, err)
	for _, c := range []struct{ from, want string }{
		{"2026-03-04 10:15", "2026-03-09 07:00"}, // over the night when clocks go forward
		{"2026-03-09 06:59", "2026-03-09 07:00"},
		{"2026-03-09 07:00", "2026-03-16 07:00"},
		{"2026-11-01 23:00", "2026-11-02 07:00"}, // the day after clocks went back
		{"2026-12-31 12:00", "2027-01-04 07:00"},
	} {
		from := must[time.Time](t)(time.ParseInLocation("2006-01-02 15:04", c.from, ny))
		if got := practice.NextMonday(from).Format("2006-01-02 15:04"); got != c.want {
			t.Errorf("after %s: %s, want %s", c.from, got, c.want)
		}
	}
}

func TestClockGoesForwardOnly(t *testing.T) {
	var told []time.Time
	at := time.Date(2026, 3, 4, 10, 15, 0, 0, time.UTC)
	w := practice.New(practice.Options{Now: func() time.Time { return at }, Moved: func(now time.Time) { told = append(told, now) }})
	defer w.Close()
	before := must[string](t)(w.Say("rosa", "field", "", "60 psi"))
	check(t, w.AdvanceTo(practice.NextMonday(w.Now())))
	after := must[string](t)(w.Say("rosa", "field", "", "61 psi"))
	if before != "1772619300.000000" || after != "1773039600.000000" {
		t.Errorf("ts %s, then %s", before, after)
	}
	if len(told) != 1 || !told[0].Equal(time.Date(2026, 3, 9, 7, 0, 0, 0, time.UTC)) {
		t.Errorf("told of %v", told)
	}
	if w.Advance(-time.Second) == nil || len(told) != 1 {
		t.Error("the clock went backward")
	}
}

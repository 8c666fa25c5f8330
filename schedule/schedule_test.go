package schedule_test

import (
	"testing"
	"time"

	"lazyhand/schedule"
)

func zone(t *testing.T, name string) *time.Location {
	t.Helper()
	z, err := time.LoadLocation(name)
	if err != nil {
		t.Fatal(err)
	}
	return z
}

func plan(t *testing.T, z *time.Location, line string) *schedule.Plan {
	t.Helper()
	p, err := schedule.New(z, map[string]string{"job": line})
	if err != nil {
		t.Fatal(err)
	}
	return p
}

// slots lists the slots from one wall-clock time to another, as RFC 3339.
func slots(t *testing.T, p *schedule.Plan, z *time.Location, from, to string) []string {
	t.Helper()
	at := func(s string) time.Time {
		v, err := time.ParseInLocation("2006-01-02 15:04", s, z)
		if err != nil {
			t.Fatal(err)
		}
		return v
	}
	var out []string
	end := at(to)
	for now := at(from); ; {
		next, ok := p.Next("job", now)
		if !ok || next.After(end) {
			return out
		}
		out = append(out, next.In(z).Format(time.RFC3339))
		now = next
	}
}

func TestEachWallClockSlotHappensOnce(t *testing.T) {
	// The days the clocks change are those of 2026 in the IANA time zone database.
	for _, c := range []struct {
		what, zone, line, from, to string
		want                       []string
	}{
		{"an ordinary Monday", "America/New_York", "0 7 * * 1", "2026-06-01 07:00", "2026-06-15 07:00",
			[]string{"2026-06-08T07:00:00-04:00", "2026-06-15T07:00:00-04:00"}},
		{"half past two, on the night that skips it", "America/New_York", "30 2 * * *", "2026-03-07 12:00", "2026-03-09 12:00",
			[]string{"2026-03-08T03:00:00-04:00", "2026-03-09T02:30:00-04:00"}},
		{"half past one, on the night that has it twice", "America/New_York", "30 1 * * *", "2026-10-31 12:00", "2026-11-02 12:00",
			[]string{"2026-11-01T01:30:00-04:00", "2026-11-02T01:30:00-05:00"}},
		{"seven in the morning when the clocks went forward", "America/New_York", "0 7 * * *", "2026-03-07 12:00", "2026-03-08 12:00",
			[]string{"2026-03-08T07:00:00-04:00"}},
		{"the 29th of February", "America/Chicago", "0 7 29 2 *", "2026-01-01 00:00", "2032-12-31 00:00",
			[]string{"2028-02-29T07:00:00-06:00", "2032-02-29T07:00:00-06:00"}},
		{"new year", "America/Chicago", "0 0 1 1 *", "2026-12-31 12:00", "2027-01-02 00:00",
			[]string{"2027-01-01T00:00:00-06:00"}},
		{"a half-hour change", "Australia/Lord_Howe", "15 2 * * *", "2026-10-03 12:00", "2026-10-05 12:00",
			[]string{"2026-10-04T02:30:00+11:00", "2026-10-05T02:15:00+11:00"}},
	} {
		t.Run(c.what, func(t *testing.T) {
			z := zone(t, c.zone)
			got := slots(t, plan(t, z, c.line), z, c.from, c.to)
			if len(got) != len(c.want) {
				t.Fatalf("slots %v, want %v", got, c.want)
			}
			for i := range got {
				if got[i] != c.want[i] {
					t.Errorf("slot %d is %s, want %s", i+1, got[i], c.want[i])
				}
			}
		})
	}
}

func TestDueAfterAnOutageIsTheLastSlotOnly(t *testing.T) {
	z := zone(t, "America/New_York")
	p := plan(t, z, "0 7 * * *")
	last := time.Date(2026, 3, 6, 7, 0, 0, 0, z)
	slot, missed, ok := p.Due("job", last, time.Date(2026, 3, 9, 12, 0, 0, 0, z))
	if !ok || missed != 2 || !slot.Equal(time.Date(2026, 3, 9, 7, 0, 0, 0, z)) {
		t.Errorf("due %v, missed %d, %v; want Monday 07:00 with two missed", slot, missed, ok)
	}
	if _, _, ok := p.Due("job", slot, slot.Add(time.Hour)); ok {
		t.Error("a slot dealt with falls due again")
	}
	if _, _, ok := p.Due("job", slot, slot.Add(-24*time.Hour)); ok {
		t.Error("a clock that jumps back makes a slot fall due")
	}
}

func TestBadCronLinesAreRefused(t *testing.T) {
	for _, line := range []string{"every day", "61 * * * *", "0 7 * *", "0 0 30 2 *", "@hourly please"} {
		if _, err := schedule.New(time.UTC, map[string]string{"job": line}); err == nil {
			t.Errorf("%q was taken", line)
		}
	}
	p, err := schedule.New(time.UTC, map[string]string{"job": ""})
	if err != nil || len(p.Jobs()) != 0 {
		t.Errorf("an empty line must switch the job off: %v %v", p.Jobs(), err)
	}
}

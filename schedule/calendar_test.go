package schedule

import (
	"testing"
	"time"
)

// shop works Monday to Friday, 8 to 17, in New York.
func shop(t *testing.T) Calendar {
	t.Helper()
	zone, err := time.LoadLocation("America/New_York")
	if err != nil {
		t.Skip("no time zones on this machine")
	}
	return Calendar{
		Zone: zone, Days: []time.Weekday{time.Monday, time.Tuesday, time.Wednesday, time.Thursday, time.Friday},
		Hours: Hours{8 * 60, 17 * 60}, Holidays: []string{"2026-11-26"}, Quiet: Hours{20 * 60, 6*60 + 30},
	}
}

const stamp = "2006-01-02 15:04"

func TestWorkingTime(t *testing.T) {
	c := shop(t)
	for _, tt := range []struct {
		name, from string
		add        time.Duration
		want       string
	}{
		{"within a day", "2026-06-15 10:00", 30 * time.Minute, "2026-06-15 10:30"},
		{"over the evening", "2026-06-15 16:50", 30 * time.Minute, "2026-06-16 08:20"},
		{"over the weekend", "2026-06-19 16:50", 30 * time.Minute, "2026-06-22 08:20"},
		{"from the night", "2026-06-16 02:00", 15 * time.Minute, "2026-06-16 08:15"},
		{"over a holiday", "2026-11-25 16:50", 30 * time.Minute, "2026-11-27 08:20"},
		{"over a weekend in which clocks go forward", "2026-03-06 16:50", 30 * time.Minute, "2026-03-09 08:20"},
		{"over a weekend in which clocks go back", "2026-10-30 16:50", 30 * time.Minute, "2026-11-02 08:20"},
		{"over the end of the year", "2026-12-31 16:50", 30 * time.Minute, "2027-01-01 08:20"},
		{"over a leap day", "2028-02-28 16:50", 30 * time.Minute, "2028-02-29 08:20"},
		{"several days", "2026-06-15 08:00", 20 * time.Hour, "2026-06-17 10:00"},
	} {
		from, err := time.ParseInLocation(stamp, tt.from, c.Zone)
		if err != nil {
			t.Fatal(err)
		}
		if got := c.AddWorking(from, tt.add).In(c.Zone).Format(stamp); got != tt.want {
			t.Errorf("%s: %s and %s of work are %s, want %s", tt.name, tt.from, tt.add, got, tt.want)
		}
	}
}

func TestTheZeroCalendarAlwaysWorks(t *testing.T) {
	at := time.Date(2026, 6, 14, 3, 0, 0, 0, time.UTC)
	if got := (Calendar{}).AddWorking(at, 30*time.Hour); !got.Equal(at.Add(30 * time.Hour)) {
		t.Errorf("30 hours of work end at %s", got)
	}
	if (Calendar{}).IsQuiet(at) {
		t.Error("it is quiet")
	}
}

func TestQuietHoursReachOverMidnight(t *testing.T) {
	c := shop(t)
	for from, want := range map[string]string{
		"2026-06-15 19:59": "2026-06-15 19:59",
		"2026-06-15 20:00": "2026-06-16 06:30",
		"2026-06-16 00:10": "2026-06-16 06:30",
		"2026-06-16 06:30": "2026-06-16 06:30",
		"2026-03-07 23:00": "2026-03-08 06:30", // clocks go forward at 2:00
		"2026-10-31 23:00": "2026-11-01 06:30", // clocks go back at 2:00
		"2026-12-31 23:30": "2027-01-01 06:30",
	} {
		at, err := time.ParseInLocation(stamp, from, c.Zone)
		if err != nil {
			t.Fatal(err)
		}
		if got := c.AfterQuiet(at).In(c.Zone).Format(stamp); got != want {
			t.Errorf("%s: quiet until %s, want %s", from, got, want)
		}
	}
}

// Whatever the calendar, no work is done in time off.
func TestWorkEndsInWorkingTime(t *testing.T) {
	c := shop(t)
	for at := time.Date(2026, 10, 25, 0, 0, 0, 0, c.Zone); at.Before(time.Date(2026, 12, 1, 0, 0, 0, 0, c.Zone)); at = at.Add(37 * time.Minute) {
		end := c.AddWorking(at, 45*time.Minute)
		if !c.Working(end.Add(-time.Second)) || end.Before(at) {
			t.Fatalf("45 minutes of work from %s end at %s", at, end.In(c.Zone))
		}
	}
}

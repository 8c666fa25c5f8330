package schedule

import (
	"slices"
	"time"
)

// Hours is a stretch of the day on the wall clock, From included, To not, as
// minutes since midnight. When To is the smaller it reaches over midnight; when
// both are equal it is empty.
type Hours struct{ From, To int }

// hold tells whether the wall clock of t lies in the hours.
func (h Hours) hold(t time.Time) bool {
	m := t.Hour()*60 + t.Minute()
	if h.From <= h.To {
		return h.From <= m && m < h.To
	}
	return m >= h.From || m < h.To
}

// Calendar is when a shop works and when it wants to be left alone. The zero
// Calendar works always, in UTC.
type Calendar struct {
	Zone     *time.Location // nil is UTC
	Days     []time.Weekday // working days; none means every day
	Hours    Hours          // working hours; empty means all day
	Holidays []string       // days off, YYYY-MM-DD
	Quiet    Hours          // hours in which only an emergency may be posted
}

func (c Calendar) wall(t time.Time) time.Time {
	if c.Zone == nil {
		return t.UTC()
	}
	return t.In(c.Zone)
}

// Workday tells whether the shop works on the day of t.
func (c Calendar) Workday(t time.Time) bool {
	t = c.wall(t)
	return (len(c.Days) == 0 || slices.Contains(c.Days, t.Weekday())) && !slices.Contains(c.Holidays, t.Format(time.DateOnly))
}

// Working tells whether the shop works at t.
func (c Calendar) Working(t time.Time) bool {
	return c.Workday(t) && (c.Hours.From == c.Hours.To || c.Hours.hold(c.wall(t)))
}

// IsQuiet tells whether t lies in the quiet hours.
func (c Calendar) IsQuiet(t time.Time) bool { return c.Quiet.hold(c.wall(t)) }

// AfterQuiet returns t, or the end of the quiet hours in which it lies.
func (c Calendar) AfterQuiet(t time.Time) time.Time {
	if !c.IsQuiet(t) {
		return t
	}
	end := c.At(t, c.Quiet.To)
	if !end.After(t) {
		end = c.At(t.AddDate(0, 0, 1), c.Quiet.To)
	}
	return end
}

// At is the instant at which the wall clock shows minute, since midnight, on the
// day of t.
func (c Calendar) At(t time.Time, minute int) time.Time {
	y, m, d := c.wall(t).Date()
	zone := c.Zone
	if zone == nil {
		zone = time.UTC
	}
	return fromWall(time.Date(y, m, d, minute/60, minute%60, 0, 0, time.UTC), zone)
}

// Opens returns t when the shop works then, else the next instant at which it
// begins to. Without a working day within a year it gives up and returns t.
func (c Calendar) Opens(t time.Time) time.Time {
	if c.Working(t) {
		return t
	}
	for i := range 400 {
		day := c.wall(t).AddDate(0, 0, i)
		if start := c.At(day, c.Hours.From); c.Workday(day) && !start.Before(t) {
			return start
		}
	}
	return t
}

// AddWorking returns the instant at which the shop has worked for d since t.
func (c Calendar) AddWorking(t time.Time, d time.Duration) time.Time {
	for range 1000 {
		t = c.Opens(t)
		end := c.closes(t)
		if left := end.Sub(t); left >= d || left <= 0 {
			return t.Add(d)
		}
		d -= end.Sub(t)
		t = end
	}
	return t
}

// closes returns the end of the working stretch in which t lies.
func (c Calendar) closes(t time.Time) time.Time {
	from, to := c.Hours.From, c.Hours.To
	if from == to {
		from, to = 0, 24*60
	}
	end := c.At(t, to%(24*60))
	if to == 24*60 || !end.After(t) {
		end = c.At(c.wall(t).AddDate(0, 0, 1), to%(24*60))
	}
	return end
}

// Package schedule says when things fall due on the shop's wall clock.
//
// A job is a cron line; a slot is one instant at which it falls due. The
// package promises that each wall-clock slot happens exactly once whatever
// daylight saving does: one that the clock skips falls due when the clock has
// jumped over it, one that the clock repeats falls due the first time. It
// runs nothing and reads no clock: callers keep the last slot they dealt with
// and ask what has come due since.
package schedule

import (
	"fmt"
	"sort"
	"time"

	"github.com/robfig/cron/v3"
)

// Plan is a set of named jobs in one time zone.
type Plan struct {
	zone *time.Location
	jobs map[string]cron.Schedule
}

// New reads cron lines of five fields (minute, hour, day of month, month, day
// of week), by the job's name. An empty line switches a job off.
func New(zone *time.Location, lines map[string]string) (*Plan, error) {
	p := &Plan{zone: zone, jobs: map[string]cron.Schedule{}}
	parser := cron.NewParser(cron.Minute | cron.Hour | cron.Dom | cron.Month | cron.Dow)
	for name, line := range lines {
		if line == "" {
			continue
		}
		s, err := parser.Parse(line)
		if err != nil {
			return nil, fmt.Errorf("job %s: %q is no cron line (minute hour day month weekday, such as \"0 7 * * 1\"): %w", name, line, err)
		}
		if s.Next(time.Unix(0, 0).UTC()).IsZero() {
			return nil, fmt.Errorf("job %s: %q never falls due", name, line)
		}
		p.jobs[name] = s
	}
	return p, nil
}

// Jobs returns the names of the jobs, sorted.
func (p *Plan) Jobs() []string {
	var names []string
	for n := range p.jobs {
		names = append(names, n)
	}
	sort.Strings(names)
	return names
}

// Next returns the job's first slot after t; ok is false for a job that is not
// planned.
func (p *Plan) Next(job string, t time.Time) (slot time.Time, ok bool) {
	s, ok := p.jobs[job]
	if !ok {
		return time.Time{}, false
	}
	for wall := s.Next(asWall(t.In(p.zone))); !wall.IsZero(); wall = s.Next(wall) {
		if slot := fromWall(wall, p.zone); slot.After(t) {
			return slot, true
		}
	}
	return time.Time{}, false
}

// lookBack bounds how far back missed slots are counted.
const lookBack = 400 * 24 * time.Hour

// Due returns the job's latest slot after last and up to now, and how many
// slots before it were missed; ok is false when none has come due.
func (p *Plan) Due(job string, last, now time.Time) (slot time.Time, missed int, ok bool) {
	if old := now.Add(-lookBack); last.Before(old) {
		last = old
	}
	for {
		next, more := p.Next(job, last)
		if !more || next.After(now) {
			return slot, missed, ok
		}
		if ok {
			missed++
		}
		slot, last, ok = next, next, true
	}
}

// asWall reads what the wall clock shows as if there were no zones, so that
// cron counts hours the way people do.
func asWall(t time.Time) time.Time {
	y, m, d := t.Date()
	return time.Date(y, m, d, t.Hour(), t.Minute(), t.Second(), t.Nanosecond(), time.UTC)
}

// fromWall finds the instant at which the clock in zone shows wall: the first
// of two, or the end of the gap for one that the clock skips.
func fromWall(wall time.Time, zone *time.Location) time.Time {
	y, m, d := wall.Date()
	t := time.Date(y, m, d, wall.Hour(), wall.Minute(), wall.Second(), 0, zone)
	if !asWall(t).Equal(wall) {
		// Skipped: the gap ends at the transition that lies within a day around t.
		_, end := t.Add(-12 * time.Hour).ZoneBounds()
		return end
	}
	if start, _ := t.ZoneBounds(); !start.IsZero() {
		_, after := t.Zone()
		_, before := start.Add(-time.Second).Zone()
		if again := t.Add(-time.Duration(before-after) * time.Second); before > after && again.Before(start) {
			return again
		}
	}
	return t
}

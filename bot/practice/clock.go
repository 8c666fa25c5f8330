package practice

import (
	"fmt"
	"time"
)

// Now is the workspace's time: the clock of Options.Now and as much as it was
// moved forward. Messages get their ts from it.
func (w *Workspace) Now() time.Time {
	w.mu.Lock()
	defer w.mu.Unlock()
	return w.now()
}

// now is Now for callers that hold mu.
func (w *Workspace) now() time.Time { return w.opts.Now().Add(w.shift).In(w.opts.Location) }

// Advance moves the workspace's clock forward by d; backward is refused, as
// every ts must be later than those before it. What was due meanwhile is
// delivered.
func (w *Workspace) Advance(d time.Duration) error {
	if d < 0 {
		return fmt.Errorf("the clock of the workspace can be moved forward only, not by %v", d)
	}
	w.mu.Lock()
	w.shift += d
	now := w.now()
	w.changed()
	w.mu.Unlock()
	w.poke()
	if w.opts.Moved != nil {
		w.opts.Moved(now)
	}
	return nil
}

// AdvanceTo moves the clock forward to t.
func (w *Workspace) AdvanceTo(t time.Time) error { return w.Advance(t.Sub(w.Now())) }

// NextMonday is the next Monday, 7:00 on the wall clock of at's location,
// after at.
func NextMonday(at time.Time) time.Time {
	days := (int(time.Monday) - int(at.Weekday()) + 7) % 7
	t := time.Date(at.Year(), at.Month(), at.Day()+days, 7, 0, 0, 0, at.Location())
	if !t.After(at) {
		t = time.Date(at.Year(), at.Month(), at.Day()+days+7, 7, 0, 0, 0, at.Location())
	}
	return t
}

// ts gives out the next message id: seconds and microseconds of the
// workspace's clock, each later than the one before. Caller holds mu.
func (w *Workspace) ts() string {
	us := w.now().UnixMicro()
	if us <= w.lastTS {
		us = w.lastTS + 1
	}
	w.lastTS = us
	return tsOf(us)
}

func tsOf(us int64) string { return fmt.Sprintf("%d.%06d", us/1e6, us%1e6) }

package desk

import (
	"context"
	"fmt"
	"runtime"
	"strconv"
	"strings"
	"sync"
	"time"

	"lazyhand/assess"
	"lazyhand/store"
)

// JobSweep is the clockwork job that looks for what the calendar alone has
// changed: a regulator past its service life, a trend about to leave the band.
const JobSweep = "nightly_sweep"

// sweepBatch is how many houses share one transaction, so that messages get
// their turn between them and memory stays small.
const sweepBatch = 1000

// recheckAfterSweep is the days until a follow-up that the calendar opens falls
// due.
const recheckAfterSweep = 30

// Sweep looks at the houses for which the calendar alone may have changed what
// follows. When the settings by which it judges are others than last time, it
// walks over all houses once; a walk that was cut off goes on where it was.
// progress, which may be nil, hears how many houses were looked at.
func (d *Desk) Sweep(ctx context.Context, now time.Time, progress func(houses int)) (looked int, err error) {
	today := assess.DateOf(now.In(d.opt.Zone))
	basis := fmt.Sprint(d.band(), d.serviceYears())
	for {
		var list []store.House
		var last int64
		whole := false
		err := d.store.Read(ctx, func(tx *store.Tx) error {
			at, done, err := tx.Walked(JobSweep, basis)
			if err != nil {
				return err
			}
			if done {
				list, err = tx.HousesToLook(today, sweepBatch)
				return err
			}
			whole = true
			list, last, err = tx.HousesAfter(at, sweepBatch)
			return err
		})
		if err != nil {
			return looked, fmt.Errorf("look over the houses: %w", err)
		}
		found := d.lookOver(list, today)
		err = d.store.Write(ctx, func(tx *store.Tx) error {
			for i, f := range found {
				if err := d.keepFound(tx, list[i], f, today); err != nil {
					return err
				}
			}
			if whole {
				return tx.KeepWalk(JobSweep, basis, last, last == 0)
			}
			return nil
		})
		if err != nil {
			return looked, fmt.Errorf("look over the houses: %w", err)
		}
		looked += len(list)
		if progress != nil {
			progress(looked)
		}
		if len(list) == 0 && last == 0 && !whole {
			return looked, nil
		}
	}
}

// sight is what the calendar says of a house.
type sight struct {
	look  assess.Date
	drift assess.Drift
	life  assess.ServiceLife
	age   int
}

// lookOver judges houses, on as many processors as there are.
func (d *Desk) lookOver(list []store.House, today assess.Date) []sight {
	out := make([]sight, len(list))
	var wg sync.WaitGroup
	n := runtime.GOMAXPROCS(0)
	for w := range n {
		wg.Go(func() {
			var series []assess.DatedPSI
			for i := w; i < len(list); i += n {
				series = d.series(series[:0], list[i].Series)
				out[i] = d.sight(list[i], series, today)
			}
		})
	}
	wg.Wait()
	return out
}

// series is one fair pressure a report since the last work on the regulator. A
// report of such work counts when it was read afterwards.
func (d *Desk) series(into []assess.DatedPSI, list []store.Measured) []assess.DatedPSI {
	for _, m := range list {
		if m.ValveWork {
			into = into[:0]
		}
		if m.PSI != nil && !(m.ValveWork && m.Unfinished) {
			into = append(into, assess.DatedPSI{Date: m.Day, PSI: *m.PSI})
		}
	}
	return into
}

func (d *Desk) sight(h store.House, series []assess.DatedPSI, today assess.Date) sight {
	s := sight{drift: assess.DriftOf(series, d.band(), today)}
	year := 0
	if len(h.PRV) >= 4 {
		year, _ = strconv.Atoi(h.PRV[:4]) // the record's own form
	}
	if year > 0 && year <= today.Year {
		s.age = today.Year - year
		age := float64(s.age)
		s.life = assess.LifeOf(&age, d.serviceYears(), nil).Life
	}
	s.look = d.lookAgain(year, s.drift, today)
	return s
}

// keepFound opens the follow-ups that a house now needs. One is opened once
// after the house's last report; one that the record itself put off further is
// brought forward, a person's own day is left.
func (d *Desk) keepFound(tx *store.Tx, h store.House, s sight, today assess.Date) error {
	if s.look != h.Look {
		if err := tx.LookAt(h.Site, s.look); err != nil {
			return err
		}
	}
	w := wordsIn(d.opt.Lang)
	var why []string
	if s.life == assess.LifePast {
		why = append(why, w.SweepAge)
	}
	if c := s.drift.Crosses; c != nil && c.Date.Sub(today) <= yearAhead {
		why = append(why, w.SweepDrift)
	}
	if len(why) == 0 {
		return nil
	}
	last, found, err := tx.LastReport(h.Site)
	if err != nil || !found {
		return err
	}
	if last.Day.Year == today.Year && s.life == assess.LifePast && s.drift.Crosses == nil {
		return nil // this year's report was judged by the same age
	}
	due := today.AddDays(recheckAfterSweep)
	open, err := tx.OpenFollowUps(h.Site)
	if err != nil {
		return err
	}
	for _, f := range open {
		if f.Action != assess.Recheck || !due.Before(f.Due) || strings.HasPrefix(f.Why, "“") {
			return nil // somebody is on it, comes sooner, or a person named the day
		}
	}
	for _, y := range why {
		if done, err := tx.ByClock(last.Message, assess.Recheck, y); err != nil {
			return err
		} else if done {
			continue
		}
		return tx.KeepFollowUp(store.FollowUp{Site: h.Site, Action: assess.Recheck, Due: due, Why: y,
			Owner: last.Author, Source: last.Message, Clock: true})
	}
	return nil
}

// sweepDue runs the nightly job when its slot has come: the sweep, then what
// the shop does not keep for good.
func (d *Desk) sweepDue(ctx context.Context, now time.Time) error {
	if !d.has(JobSweep) {
		return nil
	}
	due := false
	var slot time.Time
	err := d.store.Write(ctx, func(tx *store.Tx) error {
		last, known, err := tx.LastSlot(JobSweep)
		if err != nil {
			return err
		}
		if !known {
			return tx.KeepSlot(JobSweep, now)
		}
		slot, _, due = d.plan.Due(JobSweep, last, now)
		return nil
	})
	if err != nil || !due {
		return err
	}
	if _, err := d.Sweep(ctx, now, nil); err != nil {
		return err
	}
	var words, visits time.Time
	if n := d.opt.KeepWords; n > 0 {
		words = now.AddDate(0, 0, -n)
	}
	if n := d.opt.KeepVisits; n > 0 {
		visits = now.AddDate(0, 0, -n)
	}
	if _, err := d.store.Retain(ctx, words, visits, now); err != nil {
		return fmt.Errorf("remove what is not kept longer: %w", err)
	}
	return d.store.Write(ctx, func(tx *store.Tx) error { return tx.KeepSlot(JobSweep, slot) })
}

func (d *Desk) has(job string) bool {
	for _, j := range d.plan.Jobs() {
		if j == job {
			return true
		}
	}
	return false
}

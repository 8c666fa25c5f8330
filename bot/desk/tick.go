package desk

import (
	"context"
	"fmt"
	"time"

	"lazyhand/assess"
	"lazyhand/store"
)

// lateAfter is how long after its slot a post is marked as late.
const lateAfter = time.Hour

// How old a missed slot may be before it has lost its sense: the next one tells
// the same and more.
const (
	staleSummary = 3 * 24 * time.Hour
	staleLife    = 14 * 24 * time.Hour
)

// Tick deals with what has come due by now: messages that wait for another
// try, planned steps, follow-ups, summaries. After an outage only the last slot
// of a job counts. In the quiet hours all but emergencies waits.
func (d *Desk) Tick(ctx context.Context, now time.Time) error {
	if err := d.retry(ctx); err != nil {
		return err
	}
	if err := d.gather(ctx, assess.DateOf(now.In(d.opt.Zone))); err != nil {
		return err
	}
	if err := d.planned(ctx, now); err != nil {
		return err
	}
	if err := d.store.IndexWords(ctx); err != nil {
		return fmt.Errorf("bring the search up to date: %w", err)
	}
	for _, job := range d.plan.Jobs() {
		if job == JobSweep {
			continue // many transactions, see sweepDue
		}
		err := d.store.Write(ctx, func(tx *store.Tx) error {
			last, known, err := tx.LastSlot(job)
			if err != nil {
				return err
			}
			if !known {
				return tx.KeepSlot(job, now) // nothing was due before the bot first ran
			}
			slot, _, due := d.plan.Due(job, last, now)
			if !due || d.cal.IsQuiet(now) && !d.cal.IsQuiet(slot) || !d.cal.Workday(now) && d.cal.Workday(slot) && job != JobFollowUps {
				return nil
			}
			if err := d.run(tx, job, slot, now); err != nil {
				return err
			}
			return tx.KeepSlot(job, slot)
		})
		if err != nil {
			return fmt.Errorf("job %s: %w", job, err)
		}
	}
	return d.sweepDue(ctx, now)
}

// retry works the waiting messages out once more.
func (d *Desk) retry(ctx context.Context) error {
	var waiting []store.Message
	err := d.store.Read(ctx, func(tx *store.Tx) (err error) {
		waiting, err = tx.Stuck(store.Waiting, 20)
		return err
	})
	if err != nil {
		return err
	}
	for _, m := range waiting {
		err := d.store.Write(ctx, func(tx *store.Tx) error {
			var about store.Message
			if m.About != 0 {
				var err error
				if about, err = tx.WordingBefore(m); err != nil {
					return err
				}
			}
			if err := d.handle(tx, m, about, Message{}, nil); err != nil {
				return err
			}
			again, _, err := tx.Message(m.ID)
			if err != nil || again.State != store.Waiting || again.Tries != m.Tries {
				return err
			}
			return tx.Mark(m.ID, store.Taken, "")
		})
		if err != nil {
			return err
		}
	}
	return nil
}

// run does a job's slot.
func (d *Desk) run(tx *store.Tx, job string, slot, now time.Time) error {
	if d.opt.Team == "" {
		return nil
	}
	to := assess.DateOf(slot.In(d.opt.Zone))
	switch job {
	case JobFollowUps:
		return d.remind(tx, slot, now)
	case JobSummary:
		if now.Sub(slot) > staleSummary {
			return nil
		}
		if slot.In(d.opt.Zone).Hour() >= 12 {
			to = to.AddDays(1) // told in the evening, the day counts in
		}
		s, err := d.summary(tx, d.opt.Lang, to.AddDays(-7), to, to)
		if err != nil {
			return err
		}
		return queue(tx, Post{Key: fmt.Sprintf("summary:%s", to), Kind: Say, Channel: d.opt.Team, Body: d.late(d.summaryPost(s), slot, now)}, now)
	case JobLife:
		if now.Sub(slot) > staleLife {
			return nil
		}
		l, err := lifeOf(tx, to)
		if err != nil {
			return err
		}
		return queue(tx, Post{Key: fmt.Sprintf("life:%s", to), Kind: Say, Channel: d.opt.Team, Body: d.late(d.lifeBody(l, d.opt.Lang), slot, now)}, now)
	}
	return nil
}

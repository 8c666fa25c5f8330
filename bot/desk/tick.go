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

// staleSummary is the age at which a missed weekly summary has lost its sense:
// the next one tells the same and more.
const staleSummary = 3 * 24 * time.Hour

// Tick deals with what has come due by now: messages that wait for another
// try, follow-ups, summaries. After an outage only the last slot of a job
// counts.
func (d *Desk) Tick(ctx context.Context, now time.Time) error {
	if err := d.retry(ctx); err != nil {
		return err
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
			if !due {
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
			if err := d.handle(tx, m, about, Message{}); err != nil {
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
	switch job {
	case JobFollowUps:
		return d.remind(tx, slot, now)
	case JobSummary:
		if now.Sub(slot) > staleSummary {
			return nil
		}
		to := assess.DateOf(slot.In(d.opt.Zone))
		b, err := d.summary(tx, d.opt.Lang, to.AddDays(-7), to)
		if err != nil {
			return err
		}
		return queue(tx, Post{Key: fmt.Sprintf("summary:%s", to), Kind: Say, Channel: d.opt.Team, Body: d.late(b, slot, now)}, now)
	}
	return nil
}

// remind posts the follow-ups that are due, one post a slot.
func (d *Desk) remind(tx *store.Tx, slot, now time.Time) error {
	day := assess.DateOf(now.In(d.opt.Zone))
	due, err := tx.DueFollowUps(day, 0)
	if err != nil {
		return err
	}
	var list []store.FollowUp
	for _, f := range due {
		if f.Posted == "" {
			list = append(list, f)
		}
	}
	if len(list) == 0 {
		return nil
	}
	w := wordsIn(d.opt.Lang)
	b := Body{Lead: fmt.Sprintf(w.DueToday, len(list))}
	for _, f := range list {
		b.Facts = append(b.Facts, followUpLine(f, w))
		b.Buttons = append(b.Buttons, Button{"done", fmt.Sprintf(w.DoneButton, f.Line), fmt.Sprint(f.ID)})
		if err := tx.FollowUpPosted(f.ID, day); err != nil {
			return err
		}
	}
	return queue(tx, Post{Key: "remind:" + slot.UTC().Format(time.RFC3339), Kind: Say, Channel: d.opt.Team, Body: d.late(b, slot, now)}, now)
}

// late marks a body that comes well after its slot.
func (d *Desk) late(b Body, slot, now time.Time) Body {
	if now.Sub(slot) > lateAfter {
		b.Heard = fmt.Sprintf(wordsIn(d.opt.Lang).Late, slot.In(d.opt.Zone).Format("2006-01-02 15:04"))
	}
	return b
}

package desk

import (
	"context"
	"fmt"
	"time"

	"lazyhand/assess"
	"lazyhand/store"
)

// The kinds of planned step.
const (
	dueTell  = "tell"  // an alert raised in the quiet hours is posted
	dueClaim = "claim" // has anybody taken the alert?
	dueBrief = "brief" // the morning of a booked visit
)

// atOnce bounds how many planned steps are taken in one go.
const atOnce = 100

// planned takes the planned steps whose time has come, each once.
func (d *Desk) planned(ctx context.Context, now time.Time) error {
	var list []store.Due
	err := d.store.Read(ctx, func(tx *store.Tx) (err error) {
		list, err = tx.DueBy(now, atOnce)
		return err
	})
	if err != nil {
		return err
	}
	for _, p := range list {
		err := d.store.Write(ctx, func(tx *store.Tx) error {
			still, err := tx.DueDone(p.Key)
			if err != nil || !still {
				return err
			}
			return d.step(tx, p, now)
		})
		if err != nil {
			return fmt.Errorf("planned step %s: %w", p.Key, err)
		}
	}
	return nil
}

// bot is who does the planned steps, in the record.
const bot = "lazyhand"

func (d *Desk) step(tx *store.Tx, p store.Due, now time.Time) error {
	a, found, err := tx.Alert(p.About)
	if err != nil || !found || !a.Open() || d.opt.Dispatch == "" {
		return err
	}
	t := &turn{Desk: d, tx: tx, m: store.Message{Author: bot, At: now}, lang: d.opt.Lang, day: assess.DateOf(now.In(d.opt.Zone))}
	switch p.Kind {
	case dueTell:
		if told, err := t.told(a); told || err != nil {
			return err
		}
		if a.Urgency != assess.Now && d.cal.IsQuiet(now) {
			return tx.PlanDue(store.Due{Key: p.Key + "+", Kind: dueTell, About: a.ID, At: d.cal.AfterQuiet(now)})
		}
		return t.tell(a)
	case dueClaim:
		return t.unclaimed(a, p)
	case dueBrief:
		if a.State != "booked" || a.Tech == "" || t.day != a.Booked {
			return nil // moved, or the day is over
		}
		b, err := t.briefBody(a)
		if err != nil {
			return err
		}
		return t.queue(Post{Key: p.Key, Kind: Say, Channel: DirectTo(a.Tech), Site: a.Site, Body: d.late(b, p.At, now)})
	}
	return nil
}

// unclaimed reminds dispatch of an alert that nobody has taken, and the next
// time tells whom the shop has named. What is not urgent now waits for working
// hours, also after an outage.
func (t *turn) unclaimed(a store.Alert, p store.Due) error {
	if a.State != "raised" {
		return nil
	}
	if a.Urgency != assess.Now && !t.cal.Working(t.m.At) {
		return t.tx.PlanDue(store.Due{Key: p.Key + "+", Kind: dueClaim, About: a.ID, At: t.cal.Opens(t.m.At)})
	}
	steps, err := t.tx.AlertSteps(a.ID)
	if err != nil {
		return err
	}
	reminded := false
	for _, s := range steps {
		switch s.What {
		case "escalated":
			return nil
		case "reminded":
			reminded = true
		}
	}
	w := t.shopWords()
	waits := waited(t.m.At.Sub(a.RaisedAt), w)
	if !reminded {
		if err := t.tx.NoteAlertStep(a.ID, t.m.At, bot, "reminded"); err != nil {
			return err
		}
		if err := t.sayUnder(a, "reminded", Body{Lead: fmt.Sprintf(w.Unclaimed, waits)}); err != nil {
			return err
		}
		return t.watchClaim(a, "2")
	}
	if err := t.tx.NoteAlertStep(a.ID, t.m.At, bot, "escalated"); err != nil {
		return err
	}
	b := Body{Lead: fmt.Sprintf(w.Escalated, waits)}
	if t.opt.EscalateTo != "" {
		b.Calls = []string{t.opt.EscalateTo}
	}
	if err := t.sayUnder(a, "escalated", b); err != nil || t.opt.EscalateIn == "" {
		return err
	}
	further, err := t.alertBody(a)
	if err != nil {
		return err
	}
	further.Lead = fmt.Sprintf(w.EscalatedLead, waits, further.Lead)
	further.Buttons = nil
	further.Calls = b.Calls
	return t.queue(Post{Key: fmt.Sprintf("alert:%d:escalated:there", a.ID), Kind: Say, Channel: t.opt.EscalateIn, Site: a.Site, Body: further})
}

// waited is a stretch of time as people say it.
func waited(d time.Duration, w *words) string {
	switch m := int(d.Minutes()); {
	case m < 120:
		return fmt.Sprintf(w.Minutes, m)
	case m < 48*60:
		return fmt.Sprintf(w.Hours, (m+30)/60)
	default:
		return fmt.Sprintf(w.Days, (m+12*60)/(24*60))
	}
}

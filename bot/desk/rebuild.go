package desk

import (
	"context"
	"encoding/json"
	"errors"
	"fmt"

	"lazyhand/assess"
	"lazyhand/intents"
	"lazyhand/store"
)

// Rebuilt counts what a rebuild did.
type Rebuilt struct {
	Messages int // taken anew
	Kept     int // human corrections that stand
	Failed   int // messages that make this version fail; they are set aside
	Changes  int
}

// errShown ends a rebuild that was only to be shown.
var errShown = errors.New("only shown")

// Rebuild takes every message on record anew with this version's parser and
// judgement, and replaces what followed from them before. It is all or nothing.
// Nothing is said meanwhile; an alert that was missed until now is told by the
// next Tick. A frame that a person put right stands, as do
// frames whose words are gone and imported rows; so does what people decided
// about alerts and follow-ups. With dryRun nothing is kept.
//
// progress hears after every few messages how many are done; tell hears of each
// thing that is different. Both may be nil.
func (d *Desk) Rebuild(ctx context.Context, dryRun bool, progress func(done, total int), tell func(store.Change) error) (Rebuilt, error) {
	var out Rebuilt
	err := d.store.WriteLarge(ctx, func(tx *store.Tx) error {
		r, err := tx.Replay()
		if err != nil {
			return err
		}
		for after := int64(0); ; {
			list, err := r.Next(after, 200)
			if err != nil {
				return err
			}
			if len(list) == 0 {
				break
			}
			for _, m := range list {
				after = m.ID
				if err := ctx.Err(); err != nil {
					return err
				}
				if err := d.again(tx, r, m, &out); err != nil {
					return err
				}
			}
			out.Messages += len(list)
			if progress != nil {
				progress(out.Messages, r.Messages)
			}
		}
		err = r.Finish(func(c store.Change) error {
			out.Changes++
			if tell == nil {
				return nil
			}
			return tell(c)
		})
		for _, a := range r.Raised { // told by the next Tick
			if err == nil {
				err = tx.PlanDue(store.Due{Key: fmt.Sprintf("tell:%d", a.ID), Kind: dueTell, About: a.ID, At: a.RaisedAt})
			}
		}
		if err == nil && dryRun {
			err = errShown
		}
		return err
	})
	if err != nil && !errors.Is(err, errShown) {
		return out, fmt.Errorf("rebuild the record (nothing was changed): %w", err)
	}
	return out, nil
}

// again takes one message anew. What a person put right or took back by it
// before is put right or taken back again, whatever the parser makes of it now.
func (d *Desk) again(tx *store.Tx, r *store.Replay, m store.Message, out *Rebuilt) error {
	if m.State == store.Retracted {
		return nil // gone before it ever arrived
	}
	t, err := d.turn(tx, m)
	if err != nil {
		return err
	}
	t.quiet = true
	err = tx.Savepoint(func() error {
		corrections, err := tx.Corrections(m.ID)
		if err != nil {
			return err
		}
		revised, err := r.Revised(m.ID)
		if err != nil {
			return err
		}
		switch {
		case len(corrections) > 0:
			out.Kept += len(corrections)
			return t.editAgain(revised, func() error { return t.correctAgain(r, corrections) })
		case len(revised) > 0 && m.Kind == store.Said:
			return t.undoAgain(revised)
		case m.Frame != nil:
			return t.frameStands()
		case m.About != 0:
			about, err := tx.WordingBefore(m)
			if err != nil {
				return err
			}
			return t.work(about)
		}
		return t.work(store.Message{})
	})
	if err == nil || store.IsFault(err) {
		return err
	}
	out.Failed++
	return tx.Mark(m.ID, store.SetAside, err.Error())
}

// editAgain takes back what an edit took the place of, does what the edit says,
// and judges the houses anew that have lost a report.
func (t *turn) editAgain(revised []store.Message, do func() error) error {
	left := make([]store.Report, len(revised))
	for i, was := range revised {
		var err error
		to := store.Replaced
		if t.m.Kind == store.Deleted {
			to = store.Retracted
		}
		if left[i], err = t.withdraw(was, to); err != nil {
			return err
		}
	}
	if err := do(); err != nil {
		return err
	}
	return t.rejudgeAll(left)
}

// hear parses the message for the record, without acting on it.
func (t *turn) hear() error {
	if t.m.Kind == store.Pressed || t.m.Kind == store.Deleted || t.m.Frame != nil {
		return nil
	}
	site, _, err := t.site()
	if err != nil {
		return err
	}
	q, asked, err := t.openQuestion()
	if err != nil {
		return err
	}
	f, err := t.understand(site, asked)
	if err != nil {
		return err
	}
	if asked != nil && (f.Answer != "" || asked.Kind == askRight || asked.Kind == askElsewhere && t.namesRight(f)) {
		if err := t.tx.EndQuestion(q.ID, "answered"); err != nil {
			return err
		}
	}
	if err := t.understood(f); err != nil || f.Site != "" || site.ID == 0 {
		return err
	}
	return t.tx.FileUnder(t.m.ID, site.Named)
}

// correctAgain puts the messages that this one put right, right once more.
func (t *turn) correctAgain(r *store.Replay, list []store.Correction) error {
	if err := t.hear(); err != nil {
		return err
	}
	for _, c := range list {
		m, found, err := t.tx.Message(c.Message)
		if err != nil || !found {
			return err
		}
		if err := t.tx.Understood(m.ID, c.Frame); err != nil {
			return err
		}
		if err := t.tx.EndQuestionsAbout(m.ID, askUnclear, askReading, askRight); err != nil {
			return err
		}
		var f intents.Frame
		if err := json.Unmarshal(c.Frame, &f); err != nil {
			return fmt.Errorf("read the frame that message %d put right: %w", c.By, err)
		}
		id, err := t.siteAgain(r, m, f)
		if err != nil {
			return err
		}
		if m.State != store.Taken || id == 0 {
			continue
		}
		site, err := t.tx.Site(id)
		if err != nil {
			return err
		}
		old, _, err := t.makeRoom(m)
		if err != nil {
			return err
		}
		m.Frame = c.Frame
		if err := t.tx.FileUnder(m.ID, site.Named); err != nil {
			return err
		}
		m.Site = site.Named
		if err := t.report(m, f, site, false); err != nil {
			return err
		}
		if err := t.tx.FileUnder(t.m.ID, site.Named); err != nil {
			return err
		}
		if old.Site == site.Named && old.Day == f.Visit(t.dayOf(m)).Date {
			continue
		}
		if err := t.rejudge(old); err != nil {
			return err
		}
	}
	return nil
}

// siteAgain is the house of a report that a person put right: that it was filed
// under before, or the one that its frame names, which may have been put on
// record by the correction: it was moved on from there where it was put right again.
func (t *turn) siteAgain(r *store.Replay, m store.Message, f intents.Frame) (int64, error) {
	before, err := r.SiteBefore(m.ID)
	if err != nil {
		return 0, err
	}
	named := assess.Site{Line: f.Site, Town: f.Town, Postcode: f.Postcode}
	if before != 0 {
		s, err := t.tx.Site(before)
		if err != nil || f.Site == "" || s.Fits(named) {
			return before, err
		}
	}
	if f.Site == "" {
		return m.Site, nil
	}
	found, sure, err := t.resolve(named, true)
	if err != nil || !sure {
		return m.Site, err
	}
	return found[0].Named, nil
}

// undoAgain takes back what this message took back.
func (t *turn) undoAgain(list []store.Message) error {
	if err := t.hear(); err != nil {
		return err
	}
	for _, m := range list {
		if _, err := t.takeOff(m); err != nil {
			return err
		}
	}
	return nil
}

// frameStands files a message by the frame that it has: its words are gone, or
// they were a row of a list.
func (t *turn) frameStands() error {
	var f intents.Frame
	if err := json.Unmarshal(t.m.Frame, &f); err != nil {
		return fmt.Errorf("read the frame of message %d: %w", t.m.ID, err)
	}
	if t.m.Kind == store.Imported {
		return t.fileRow(f)
	}
	site, remembered, err := t.site()
	if err != nil || isChatter(f) {
		return err
	}
	return t.act(t.m, f, site, remembered)
}

// fileRow files an imported row: its house and what was found there. It is the
// past, so that nobody is alerted and nothing falls due by it.
func (t *turn) fileRow(f intents.Frame) error {
	named := assess.Site{Line: f.Site, Town: f.Town, Postcode: f.Postcode}
	site, err := t.siteOfRow(named)
	if err != nil {
		return err
	}
	if err := t.tx.FileUnder(t.m.ID, site.Named); err != nil {
		return err
	}
	_, _, err = t.keepReport(t.m, f, site)
	return err
}

// siteOfRow finds the house of a row, or opens a record. Nobody can be asked
// here: a row that several houses on record fit gets a record of its own, to be
// joined later.
func (t *turn) siteOfRow(named assess.Site) (store.SiteRecord, error) {
	found, sure, err := t.resolve(named, true)
	if err != nil {
		return store.SiteRecord{}, err
	}
	if sure {
		return found[0], nil
	}
	return t.tx.AddSite(named, t.m.ID)
}

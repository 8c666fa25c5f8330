package desk

import (
	"context"
	"encoding/json"
	"errors"
	"fmt"
	"time"

	"lazyhand/store"
)

// grace is how long the fate of a post may be unknown before it is looked up.
// A platform that takes a post later than this makes one duplicate.
const grace = 15 * time.Second

// givesUpAfter is how often a post is tried. To be told to wait is no failed
// try.
const givesUpAfter = 8

// Send lets out what may be said now and settles what is in doubt. more tells
// that something was sent, so that the next of its channel may follow at once.
func (d *Desk) Send(ctx context.Context, now time.Time, chat Chat) (more bool, err error) {
	var doubtful, ready []store.Post
	err = d.store.Read(ctx, func(tx *store.Tx) (err error) {
		if doubtful, err = tx.DoubtfulPosts(now.Add(-grace), now); err != nil {
			return err
		}
		ready, err = tx.ReadyPosts(now)
		return err
	})
	if err != nil {
		return false, err
	}
	for _, row := range doubtful {
		if err := d.settleDoubt(ctx, now, chat, row); err != nil {
			return more, err
		}
		more = true
	}
	for _, row := range ready {
		sent, err := d.sendOne(ctx, now, chat, row, "ready")
		if err != nil {
			return more, err
		}
		more = more || sent
	}
	return more, nil
}

// settleDoubt asks the platform whether a post is out, and says it again only
// when it is not.
func (d *Desk) settleDoubt(ctx context.Context, now time.Time, chat Chat, row store.Post) error {
	p, ok, err := d.post(ctx, row)
	if err != nil || !ok {
		return err
	}
	if p.Kind == Say {
		ref, found, err := chat.Find(ctx, p)
		if err != nil {
			return d.store.Write(ctx, func(tx *store.Tx) error { // still in doubt, asked again after the grace
				_, err := tx.Sending(row.ID, "sending", now)
				return err
			})
		}
		if found {
			return d.store.Write(ctx, func(tx *store.Tx) error { return tx.Sent(row.ID, ref, now) })
		}
	}
	_, err = d.sendOne(ctx, now, chat, row, "sending") // marks and new wordings can be repeated without harm
	return err
}

// sendOne says one post. It is written down before it is said that it will be.
func (d *Desk) sendOne(ctx context.Context, now time.Time, chat Chat, row store.Post, from string) (sent bool, err error) {
	p, ok, err := d.post(ctx, row)
	if err != nil || !ok {
		return false, err
	}
	claimed := false
	err = d.store.Write(ctx, func(tx *store.Tx) (err error) {
		claimed, err = tx.Sending(row.ID, from, now)
		return err
	})
	if err != nil || !claimed {
		return false, err
	}
	if err := d.draw(ctx, &p); err != nil {
		return false, err
	}
	ref, err := chat.Post(ctx, p)
	var no *Refusal
	switch {
	case err == nil:
		return true, d.store.Write(context.WithoutCancel(ctx), func(tx *store.Tx) error { return tx.Sent(row.ID, ref, now) })
	case errors.As(err, &no) && (no.Final || no.After == 0 && row.Tries+1 >= givesUpAfter):
		return true, d.giveUp(ctx, now, row, p, no.Why)
	case errors.As(err, &no):
		return false, d.store.Write(ctx, func(tx *store.Tx) error {
			return tx.Refused(row.ID, now.Add(max(no.After, time.Second)), now, no.Why)
		})
	}
	return false, nil // in doubt; looked up after the grace
}

// giveUp keeps a post that cannot be said and tells dispatch.
func (d *Desk) giveUp(ctx context.Context, now time.Time, row store.Post, p Post, why string) error {
	return d.store.Write(ctx, func(tx *store.Tx) error {
		if err := tx.Dead(row.ID, now, why); err != nil {
			return err
		}
		if d.opt.Dispatch == "" || p.Channel == d.opt.Dispatch || p.Kind != Say {
			return nil
		}
		return queue(tx, Post{Key: fmt.Sprintf("dead:%d", row.ID), Kind: Say, Channel: d.opt.Dispatch,
			Body: Body{Lead: fmt.Sprintf(wordsIn(d.opt.Lang).NotPosted, why), Heard: p.Body.Lead}}, now)
	})
}

// post reads a row of the outbox and finds what it refers to; ok is false when
// that is not out yet.
func (d *Desk) post(ctx context.Context, row store.Post) (p Post, ok bool, err error) {
	if err := json.Unmarshal(row.Body, &p); err != nil {
		return p, false, fmt.Errorf("read post %s: %w", row.Key, err)
	}
	p.Key, p.Channel, p.Thread = row.Key, row.Channel, row.Thread
	if p.Kind == React {
		p.Ref = p.Target
		return p, true, nil
	}
	key := p.Under
	if p.Kind == Change {
		key = p.Target
	}
	if key == "" {
		return p, true, nil
	}
	err = d.store.Read(ctx, func(tx *store.Tx) error {
		earlier, found, err := tx.PostByKey(key)
		if err != nil || !found || earlier.State != "sent" {
			ok = !found || earlier.State == "dead"
			return err
		}
		ok = true
		if p.Kind == Change {
			p.Ref = earlier.Ref
		} else {
			p.Thread = earlier.Ref
		}
		return nil
	})
	return p, ok, err
}

// draw makes the picture or the paper of a post. A post whose picture cannot be
// made is sent without: its words say all.
func (d *Desk) draw(ctx context.Context, p *Post) error {
	w, painter := p.Body.Draw, d.opt.Painter
	if w == nil || p.Kind != Say || painter == nil && w.What != drawsPlot {
		return nil
	}
	return d.store.Read(ctx, func(tx *store.Tx) error {
		if w.What == drawsWeek {
			s, err := d.summary(tx, w.Lang, w.From, w.To, w.To)
			if err != nil {
				return err
			}
			if pic, err := painter.Week(s); err == nil {
				p.Body.Picture = &pic
			}
			return nil
		}
		site, err := tx.Site(w.Site)
		if err != nil {
			return err
		}
		h, err := d.house(tx, site, w.Day, w.Lang)
		if err != nil {
			return err
		}
		if w.What == drawsSheet {
			if f, err := painter.Sheet(h); err == nil {
				p.Body.File = &f
			}
			return nil
		}
		p.Body.Chart = chartOf(h, wordsIn(w.Lang))
		if painter == nil {
			return nil
		}
		if pic, err := painter.Plot(h); err == nil {
			p.Body.Picture = &pic
		}
		return nil
	})
}

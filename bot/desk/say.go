package desk

import (
	"encoding/json"
	"fmt"
	"time"

	"lazyhand/store"
)

// say queues the reply to the message, in its thread. The reply to an edited
// message is a new wording of the one that stands there already.
func (t *turn) say(b Body) error {
	if t.unsaid {
		return nil
	}
	if t.lang != t.opt.Lang {
		b.Lang = t.lang
	}
	if t.m.Kind == store.Edited && t.reply == replyKey(t.m.ID) {
		root, found, err := t.firstReply()
		if err != nil {
			return err
		}
		if found {
			return t.queue(Post{Key: t.reply, Kind: Change, Channel: t.m.Channel, Target: root, Body: b})
		}
	}
	return t.queue(Post{Key: t.reply, Kind: Say, Channel: t.m.Channel, Thread: t.m.Thread, Body: b})
}

// reword gives the reply that stands to the message a new wording, if there is
// one.
func (t *turn) reword(b Body) error {
	root, found, err := t.firstReply()
	if err != nil || !found {
		return err
	}
	return t.queue(Post{Key: t.reply, Kind: Change, Channel: t.m.Channel, Target: root, Body: b})
}

// firstReply returns the key of the reply that stands to an earlier wording of
// the message, or to the message that was deleted.
func (t *turn) firstReply() (key string, found bool, err error) {
	wordings, err := t.tx.WordingsOf(t.m.About)
	if err != nil {
		return "", false, err
	}
	for _, m := range wordings {
		if m.ID == t.m.ID {
			continue
		}
		row, there, err := t.tx.PostByKey(replyKey(m.ID))
		if err != nil {
			return "", false, err
		}
		var p Post
		if there && json.Unmarshal(row.Body, &p) == nil && p.Kind == Say {
			return row.Key, true, nil
		}
	}
	return "", false, nil
}

// mark queues a reaction on a message of a person, unless it stands there
// already.
func (t *turn) mark(m store.Message, k Mark) error {
	if t.direct {
		return nil // the reply itself says so at once
	}
	root := m.ID
	if m.About != 0 {
		root = m.About
	}
	stands := MarkNone
	last, found, err := store.Post{}, false, error(nil)
	if !t.fresh || root != t.m.ID {
		last, found, err = t.tx.NewestAnswer(fmt.Sprintf("react:%d:", root))
	}
	if err != nil {
		return err
	}
	if found {
		var p Post
		if err := json.Unmarshal(last.Body, &p); err != nil {
			return fmt.Errorf("read post %s: %w", last.Key, err)
		}
		stands = p.Mark
	}
	if stands == k {
		return nil
	}
	return t.queue(Post{Key: fmt.Sprintf("react:%d:%d:%s", root, t.m.ID, k), Kind: React, Channel: m.Channel, Target: m.TS, Mark: k})
}

func (t *turn) queue(p Post) error {
	if t.quiet {
		return nil
	}
	return queue(t.tx, p, t.m.At)
}

// queue puts a post into the outbox.
func queue(tx *store.Tx, p Post, now time.Time) error {
	raw, err := json.Marshal(p)
	if err != nil {
		return fmt.Errorf("write post %s: %w", p.Key, err)
	}
	return tx.Queue(store.Post{Key: p.Key, Channel: p.Channel, Thread: p.Thread, Body: raw, After: now, Since: now})
}

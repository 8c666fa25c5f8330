package slackchat

import (
	"context"
	"errors"
	"fmt"
	"strings"
	"sync"
	"time"

	"github.com/slack-go/slack"

	"lazyhand/bot/desk"
)

// eventType marks our posts in their metadata, which the whole workspace can
// read: it carries a key of numbers and nothing else.
const eventType = "lazyhand_post"

// lane paces what is said in one channel, and remembers how long the platform
// wants to be left alone.
type lane struct {
	mu   sync.Mutex
	next time.Time
}

// lanesKept bounds how many channels are remembered.
const lanesKept = 2000

// turn waits until the next call may be made in a lane: one every pace on
// average, and so many more at once after a rest.
func (s *Slack) turn(ctx context.Context, name string, pace time.Duration, more int) error {
	s.mu.Lock()
	l := s.lanes[name]
	if l == nil {
		if len(s.lanes) >= lanesKept {
			clear(s.lanes)
		}
		l = &lane{}
		s.lanes[name] = l
	}
	s.mu.Unlock()
	l.mu.Lock()
	now := time.Now()
	at := l.next
	if at.Before(now) {
		at = now
	}
	l.next = at.Add(pace)
	l.mu.Unlock()
	if wait := at.Sub(now) - time.Duration(more)*pace; wait > 0 && !sleep(ctx, wait) {
		return ctx.Err()
	}
	return nil
}

// Post says p. See desk.Chat.
func (s *Slack) Post(ctx context.Context, p desk.Post) (ref string, err error) {
	// A message a second in a channel; new wordings and marks 50 a minute in
	// all, with bursts (apis/web-api/rate-limits, tier 3).
	var wait error
	switch p.Kind {
	case desk.Say:
		wait = s.turn(ctx, p.Channel, s.opt.Pace, 0)
	default:
		wait = s.turn(ctx, string(p.Kind), s.opt.Pace*6/5, 10)
	}
	if wait != nil {
		return "", &desk.Refusal{Why: "the bot is being stopped", After: time.Second}
	}
	switch p.Kind {
	case desk.React:
		return p.Ref, s.react(ctx, p)
	case desk.Say, desk.Change:
		return s.say(ctx, p)
	}
	return "", &desk.Refusal{Why: fmt.Sprintf("Slack knows no post of kind %q", p.Kind), Final: true}
}

// say posts or changes a message: as laid out, else shorter, else as plain
// text, each tried once.
func (s *Slack) say(ctx context.Context, p desk.Post) (ref string, err error) {
	most, plain := limit("message.text"), false
	for range 4 {
		ref, err = s.send(ctx, p, most, plain)
		is, no := judge(err)
		switch {
		case err == nil:
			return ref, nil
		case is == tooLong && most > 1000:
			most /= 4
		case is == badBlocks && !plain:
			var e slack.SlackErrorResponse
			if errors.As(err, &e) {
				s.opt.Log.Error("Slack did not take a layout", "error", e.Err, "messages", e.ResponseMetadata.Messages)
			}
			plain = true
		case no != nil:
			return "", no
		default:
			return "", err
		}
	}
	return "", &desk.Refusal{Why: "Slack takes it neither short nor plain", Final: true}
}

func (s *Slack) send(ctx context.Context, p desk.Post, most int, plain bool) (string, error) {
	w := phrasesIn(orElse(string(p.Body.Lang), s.opt.Lang))
	b := fit(p.Body, most, w)
	called, who := calls(b.Calls)
	opts := []slack.MsgOption{
		slack.MsgOptionText(called+Escape(spoken(b, w)), false),
		slack.MsgOptionDisableLinkUnfurl(), slack.MsgOptionDisableMediaUnfurl(),
	}
	drawn := false
	if !plain {
		blocks := layOut(b, w)
		if len(who) > 0 {
			blocks = append([]slack.Block{rich(section(who...))}, blocks...)
		}
		if c := chartBlock(b.Chart); c != nil {
			blocks, drawn = append(blocks, c), true
		}
		opts = append(opts, slack.MsgOptionBlocks(blocks...))
	} else if p.Kind == desk.Change {
		opts = append(opts, slack.MsgOptionBlocks()) // takes the old layout away
	}
	key := p.Key
	if p.Kind == desk.Change {
		key = p.Target // the message keeps the name by which it is found
	}
	opts = append(opts, slack.MsgOptionMetadata(slack.SlackMetadata{EventType: eventType, EventPayload: map[string]any{"key": key}}))
	if p.Kind == desk.Change {
		_, ts, _, err := s.api.UpdateMessageContext(ctx, s.where(ctx, p.Channel), p.Ref, opts...)
		return ts, err
	}
	if p.Thread != "" {
		opts = append(opts, slack.MsgOptionTS(p.Thread))
	}
	channel, ts, err := s.api.PostMessageContext(ctx, strings.TrimPrefix(p.Channel, "@"), opts...)
	if err == nil {
		if person, ok := strings.CutPrefix(p.Channel, "@"); ok {
			s.keepDirect(person, channel)
		}
		s.attach(p, orElse(p.Thread, ts), drawn)
	}
	return ts, err
}

// keepDirect remembers the channel of the direct messages with a person.
func (s *Slack) keepDirect(person, channel string) {
	s.mu.Lock()
	defer s.mu.Unlock()
	if len(s.directs) >= peopleKept {
		clear(s.directs)
	}
	s.directs[person] = channel
}

// where is the channel that a post's channel stands for: a person's id after
// an at sign stands for the direct messages with them. To post there needs no
// more than the person's id; to read or change there needs the channel.
func (s *Slack) where(ctx context.Context, channel string) string {
	person, ok := strings.CutPrefix(channel, "@")
	if !ok {
		return channel
	}
	s.mu.Lock()
	known := s.directs[person]
	s.mu.Unlock()
	if known != "" {
		return known
	}
	c, _, _, err := s.api.OpenConversationContext(ctx, &slack.OpenConversationParameters{Users: []string{person}})
	if err != nil {
		return person // the next call says what is wrong
	}
	s.keepDirect(person, c.ID)
	return c.ID
}

// emoji are the reactions that stand for the desk's marks. They are plain
// emoji of every workspace, each of another shape.
var emoji = map[desk.Mark]string{
	desk.MarkStored:   "white_check_mark",
	desk.MarkQuestion: "grey_question",
	desk.MarkSetAside: "inbox_tray",
}

// marksKept bounds how many marks are remembered.
const marksKept = 10_000

// react sets a mark and takes away the one that stood there before.
func (s *Slack) react(ctx context.Context, p desk.Post) error {
	item := slack.NewRefToMessage(s.where(ctx, p.Channel), p.Ref)
	name := p.Channel + "/" + p.Ref
	s.mu.Lock()
	before, known := s.marks[name]
	if !known && timeOf(p.Ref).Before(s.marksOf) {
		before, known = "?", true // set by an earlier run, if at all
	}
	s.mu.Unlock()
	for _, m := range []desk.Mark{desk.MarkStored, desk.MarkQuestion, desk.MarkSetAside} {
		if known && m != p.Mark && (before == m || before == "?") {
			if is, no := judge(s.api.RemoveReactionContext(ctx, emoji[m], item)); is == refusedForNow {
				return no
			}
		}
	}
	if p.Mark != "" && p.Mark != desk.MarkNone {
		name, ok := emoji[p.Mark]
		if !ok {
			return &desk.Refusal{Why: fmt.Sprintf("Slack has no reaction for %q", p.Mark), Final: true}
		}
		err := s.api.AddReactionContext(ctx, name, item)
		if is, no := judge(err); err != nil && is != alreadySo {
			if no != nil {
				return no
			}
			return err
		}
	}
	s.mu.Lock()
	defer s.mu.Unlock()
	if len(s.marks) >= marksKept {
		clear(s.marks)
		s.marksOf = s.opt.Now()
	}
	s.marks[name] = p.Mark
	return nil
}

// How far back a post is looked for: much longer than any fate stays unknown.
const (
	findWithin = 7 * 24 * time.Hour
	findPages  = 20
)

// Find looks for a post by its key. See desk.Chat.
func (s *Slack) Find(ctx context.Context, p desk.Post) (ref string, found bool, err error) {
	oldest := tsOf(s.opt.Now().Add(-findWithin))
	cursor, channel := "", s.where(ctx, p.Channel)
	for range findPages {
		page, next, err := s.page(ctx, channel, p.Thread, oldest, cursor)
		if err != nil {
			if is, _ := judge(err); is == refusedForGood {
				return "", false, nil // not there, or not ours: it cannot have been said
			}
			return "", false, err
		}
		for _, e := range page {
			if e.Metadata.EventType == eventType && e.Metadata.Payload["key"] == p.Key {
				return e.TS, true, nil
			}
		}
		if next == "" {
			return "", false, nil
		}
		cursor = next
	}
	return "", false, nil
}

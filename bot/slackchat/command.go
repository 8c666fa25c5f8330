package slackchat

import (
	"context"
	"errors"
	"strings"
	"time"

	"github.com/slack-go/slack"

	"lazyhand/bot/desk"
)

// command is a slash command.
type command struct {
	Command   string `json:"command"`
	Text      string `json:"text"`
	UserID    string `json:"user_id"`
	ChannelID string `json:"channel_id"`
	TriggerID string `json:"trigger_id"`
}

// answerWithin is how long an interaction may take: the platform gives three
// seconds.
const answerWithin = 2500 * time.Millisecond

// ephemeral is an answer to a command that only its author sees.
func ephemeral(text string) any {
	return map[string]any{"response_type": "ephemeral", "text": Escape(text)}
}

// command does what a slash command asks for: the same as a message with the
// same words. The platform shows nothing of a command, so the bot says first
// who asked for what; the answer goes into the thread of that.
func (s *Slack) command(ctx context.Context, c command) (any, error) {
	if c.UserID == "" || c.ChannelID == "" || c.TriggerID == "" {
		s.seen(Refused, "command without its author or channel")
		return nil, nil
	}
	short, cancel := context.WithTimeout(ctx, answerWithin)
	defer cancel()
	p, err := s.person(short, c.UserID)
	if err != nil {
		return ephemeral(s.phrases(p).Busy), nil
	}
	if p.guest && !s.opt.Guests {
		s.seen(Ignored, "guest")
		return nil, nil
	}
	text := strings.TrimSpace(c.Text)
	switch strings.ToLower(text) {
	case "":
		text = "help"
	case "form", "report", "formulario":
		return nil, s.openReport(short, c.TriggerID, p, place{Channel: c.ChannelID}, "")
	}
	err = s.speakFor(short, "command:"+c.TriggerID, place{Channel: c.ChannelID}, c.UserID, p, "", text)
	if err != nil {
		s.opt.Log.Error("a command was not kept", "error", err.Error())
		return ephemeral(s.phrases(p).Busy), nil
	}
	return nil, nil
}

// place is where a report that was not typed into a channel belongs.
type place struct {
	Channel string `json:"channel,omitempty"`
	Thread  string `json:"thread,omitempty"`
}

// speakFor writes into a channel what a person asked for in another way than
// by a message, and brings it to the desk as if they had written it. Where the
// bot may not write, it goes to the direct messages with that person.
func (s *Slack) speakFor(ctx context.Context, key string, at place, userID string, p person, how, text string) error {
	name := orElse(p.name, userID)
	if how != "" {
		name += ", " + how
	}
	shown := plain(text)
	channel, ts, err := "", "", error(nil)
	targets := []place{at, {Channel: userID}}
	if at.Channel == "" {
		targets = targets[1:]
	}
	for _, to := range targets {
		opts := []slack.MsgOption{slack.MsgOptionText(Escape(name+": "+shown), false),
			slack.MsgOptionBlocks(rich(section(bold(name+": "), words(cut(shown, "section.text"))))),
			slack.MsgOptionDisableLinkUnfurl(), slack.MsgOptionDisableMediaUnfurl()}
		if to.Thread != "" {
			opts = append(opts, slack.MsgOptionTS(to.Thread))
		}
		if err = s.turn(ctx, to.Channel, s.opt.Pace, 0); err != nil {
			return err
		}
		if channel, ts, err = s.api.PostMessageContext(ctx, to.Channel, opts...); err == nil {
			at.Thread = orElse(to.Thread, ts)
			break
		}
		if is, _ := judge(err); is != refusedForGood {
			return err
		}
	}
	if err != nil {
		return err
	}
	m := desk.Message{Key: key, Kind: desk.Said, Channel: channel, Direct: isDirect(channel), TS: ts, Thread: at.Thread,
		Author: userID, At: timeOf(ts), Text: text, Mention: true}
	if m.At.IsZero() {
		return errors.New("Slack gave the post no name")
	}
	return s.take(ctx, arrival{verdict: Taken, why: "asked by " + strings.SplitN(key, ":", 2)[0], messages: []desk.Message{m}})
}

package main

import (
	"context"
	"log/slog"
	"time"

	"lazyhand/bot/desk"
	"lazyhand/bot/slackchat"
	"lazyhand/config"
)

// joinSlack makes the way into the shop's workspace. It is opened by Run.
func (p *program) joinSlack(c config.Config, log *slog.Logger, current func() *desk.Desk) (platform, error) {
	return slackchat.New(p.slackOptions(c, log, current)), nil
}

// slackOptions are the settings as the way into Slack wants them. current
// returns the desk of the moment, which a reload replaces.
func (p *program) slackOptions(c config.Config, log *slog.Logger, current func() *desk.Desk) slackchat.Options {
	return slackchat.Options{
		BotToken:      c.Slack.BotToken.Reveal(),
		AppToken:      c.Slack.AppToken.Reveal(),
		SigningSecret: c.Slack.SigningSecret.Reveal(),
		Listen:        c.Slack.Listen,
		Field:         c.Slack.FieldChannels,
		Shared:        c.Slack.SharedChannels,
		Guests:        c.Slack.Guests,
		Now:           p.now,
		Log:           log,
		Heard: func(ctx context.Context, since time.Time) (channels, threads []desk.Heard, err error) {
			return current().Heard(ctx, since)
		},
	}
}

package main

import (
	"context"
	"log/slog"
	"slices"
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
		APIURL:        p.slackURL,
		BotToken:      c.Slack.BotToken.Reveal(),
		AppToken:      c.Slack.AppToken.Reveal(),
		SigningSecret: c.Slack.SigningSecret.Reveal(),
		Listen:        c.Slack.Listen,
		Field:         c.Slack.FieldChannels,
		Lang:          c.Shop.Language,
		Shared:        c.Slack.SharedChannels,
		Guests:        c.Slack.Guests,
		Now:           p.now,
		Log:           log,
		Home: func(ctx context.Context, person string, now time.Time) (desk.Home, error) {
			return current().Home(ctx, person, now)
		},
		Heard: func(ctx context.Context, since time.Time) (channels, threads []desk.Heard, err error) {
			return current().Heard(ctx, since)
		},
	}
}

// askSlack asks Slack whether the settings are right. See slackProbe.
func (p *program) askSlack(ctx context.Context, s config.Slack) []checked {
	channels := map[string]string{}
	for _, id := range s.FieldChannels {
		channels[id] = "slack.field_channels"
	}
	for id, key := range map[string]string{s.DispatchChannel: "slack.dispatch_channel", s.TeamChannel: "slack.team_channel"} {
		if id != "" {
			channels[id] = key
		}
	}
	var out []checked
	for _, f := range slackchat.Check(ctx, p.slackOptions(config.Config{Slack: s}, nil, nil), slackUses(s), channels) {
		state := fine
		switch {
		case f.Bad:
			state = fault
		case f.Note:
			state = attention
		}
		out = append(out, checked{f.What, state, f.Says})
	}
	return out
}

// slackGroups are the user groups that the roles name.
func slackGroups(s config.Slack) []string {
	var out []string
	for _, list := range [][]string{s.FieldRole, s.DispatchRole, s.AdminRole} {
		for _, id := range list {
			if isGroup(id) && !slices.Contains(out, id) {
				out = append(out, id)
			}
		}
	}
	return out
}

package main

import (
	"context"
	"fmt"
	"log/slog"
	"net"
	"os"
	"path/filepath"
	"sync/atomic"
	"time"

	"github.com/spf13/cobra"

	"lazyhand/bot/desk"
	"lazyhand/bot/practice"
	"lazyhand/bot/slackchat"
	"lazyhand/config"
)

func (p *program) practiceCommand() *cobra.Command {
	var listen string
	var asJSON, demo bool
	cmd := &cobra.Command{
		Use:   "practice",
		Short: "Open a small workspace on this machine to try the bot in",
		Long: `Practice opens a small workspace on this machine, with invented people, that
speaks Slack's protocol, and lets the bot join it as it would join Slack. Its web
page lets you take the part of any of the crew. Nothing leaves the machine and no
account is needed.

With --demo it begins with two years of reports of an invented shop, and the crew
goes on reporting while you look on.

Without --db the record is thrown away at the end. With --json it prints, once
ready, one line with the addresses and the tokens of a second, empty app, for a
client of your own.`,
		Example: `  lazyhand practice
  lazyhand practice --demo
  lazyhand practice --listen 127.0.0.1:0 --json
  lazyhand practice --db try.db`,
		Args: noWords,
		RunE: func(cmd *cobra.Command, _ []string) error {
			ready := func(w *practice.Workspace) error {
				fmt.Fprintf(p.out, "The practice workspace is open at %s (all people in it are invented). Ctrl-C ends it.\n", w.Ready().Page)
				return nil
			}
			if asJSON {
				ready = func(w *practice.Workspace) error {
					line, err := marshal(w.Ready())
					if err == nil {
						_, err = fmt.Fprintf(p.out, "%s\n", line)
					}
					return err
				}
			}
			pause := time.Duration(0)
			if demo {
				pause = demoPause
			}
			return p.practice(cmd.Context(), listen, pause, ready)
		},
	}
	cmd.Flags().StringVar(&listen, "listen", "127.0.0.1:4080", "loopback address of the page; port 0 takes any that is free")
	cmd.Flags().BoolVar(&demo, "demo", false, "begin with two years of an invented shop's reports")
	cmd.Flags().BoolVar(&asJSON, "json", false, "print one JSON object once ready")
	return cmd
}

// practice runs a practice workspace with the bot in it until ctx ends, and
// calls ready once the bot has joined. demo is the pause between the messages of
// a demonstration; 0 is none.
func (p *program) practice(ctx context.Context, listen string, demo time.Duration, ready func(*practice.Workspace) error) error {
	first, err := p.settings()
	if err != nil {
		return err
	}
	ln, err := listenLoopback(listen)
	if err != nil {
		return err
	}
	defer ln.Close() // also when the workspace never comes to it
	trial := *p
	if p.dbFile == "" {
		dir, err := os.MkdirTemp("", "lazyhand-practice-")
		if err != nil {
			return fmt.Errorf("cannot make a folder for the record: %w", err)
		}
		defer os.RemoveAll(dir)
		trial.dbFile = filepath.Join(dir, "practice.db")
	}
	var current atomic.Pointer[func() *desk.Desk]
	// The app is installed as its manifest says, so that a scope or an event
	// that the manifest lacks is missed here before it is missed at a shop.
	manifest, err := slackchat.Manifest(slackchat.Uses{Groups: true})
	if err != nil {
		return err
	}
	app, err := practice.FromManifest(manifest)
	if err != nil {
		return err
	}
	w := practice.New(practice.Options{
		URL:      "http://" + ln.Addr().String(),
		Location: first.Shop.Zone,
		Now:      p.now,
		Apps:     []practice.AppOptions{app, practice.SecondApp()},
		Panel:    "Lazyhand's practice workspace: take any part and tell #field a reading.",
		Moved: func(now time.Time) {
			if desk := current.Load(); desk != nil {
				(*desk)().Tick(ctx, now) // what fails is tried again by the clockwork
			}
		},
	})
	// The workspace outlives the bot, so that the bot can finish what it says.
	open, shut := context.WithCancel(context.WithoutCancel(ctx))
	defer shut()
	closed := make(chan error, 1)
	go func() { closed <- w.Serve(open, ln) }()

	trial.now = w.Now
	trial.fit = func(c *config.Config) { practiceSettings(c, w) }
	c, err := trial.settings()
	if err != nil {
		return err
	}
	ctx, stop := context.WithCancelCause(ctx)
	defer stop(nil)
	err = trial.serve(ctx, c, func(c config.Config, log *slog.Logger, now func() *desk.Desk) (platform, error) {
		current.Store(&now)
		if demo > 0 {
			// Whoever watches at night is to see the alerts too.
			if cal := deskOptions(c).Calendar; cal.IsQuiet(w.Now()) {
				if err := w.AdvanceTo(cal.AfterQuiet(w.Now())); err != nil {
					return nil, err
				}
			}
			if err := demoFill(ctx, now(), w, w.Now()); err != nil {
				return nil, err
			}
		}
		o := trial.slackOptions(c, log, now)
		app := w.Apps()[0]
		o.Pace = practicePace
		o.BotToken, o.AppToken, o.APIURL = app.BotToken, app.AppToken, w.Ready().API
		chat := slackchat.New(o)
		go func() {
			if joined(ctx, chat) {
				if err := ready(w); err != nil {
					stop(fmt.Errorf("cannot say that the workspace is ready: %w", err))
				}
				if demo > 0 {
					if err := demoGoOn(ctx, w, demo); err != nil {
						stop(err)
					}
				}
			}
		}()
		return chat, nil
	})
	shut()
	if e := <-closed; err == nil {
		err = e
	}
	return err
}

// practicePace is the pause between two posts in a channel: nothing here asks
// for Slack's one second.
const practicePace = 200 * time.Millisecond

// demoPause is the time to read between two messages of the demonstration.
const demoPause = 4 * time.Second

// practiceSettings fits the settings to a practice workspace: its channels,
// people and groups, and no address of the program's own.
func practiceSettings(c *config.Config, w *practice.Workspace) {
	c.Slack = config.Slack{
		FieldChannels:   []string{w.Channel("field")},
		DispatchChannel: w.Channel("dispatch"),
		TeamChannel:     w.Channel("team"),
	}
	for _, g := range practice.DefaultGroups() {
		if g.Handle == "dispatchers" {
			c.Slack.DispatchRole = []string{g.ID}
		}
	}
	for _, u := range practice.DefaultCrew() {
		if u.Admin {
			c.Slack.AdminRole = append(c.Slack.AdminRole, u.ID)
		}
	}
	c.Health.Listen = ""
	if c.Log.Level == "info" {
		c.Log.Level = "warn"
	}
}

// joined waits until the bot is connected; false when ctx ended before.
func joined(ctx context.Context, chat platform) bool {
	for {
		if ok, _ := chat.Connected(); ok {
			return true
		}
		select {
		case <-ctx.Done():
			return false
		case <-time.After(20 * time.Millisecond):
		}
	}
}

// listenLoopback listens on an address of this machine that no other can
// reach: the practice workspace asks nobody who they are.
func listenLoopback(address string) (net.Listener, error) {
	host, _, err := net.SplitHostPort(address)
	if err != nil {
		return nil, fmt.Errorf("--listen %q is no address: write it like 127.0.0.1:4080", address)
	}
	if ip := net.ParseIP(host); host != "localhost" && (ip == nil || !ip.IsLoopback()) {
		return nil, fmt.Errorf("--listen %q can be reached by others: the practice workspace asks nobody who they are; use 127.0.0.1", address)
	}
	ln, err := net.Listen("tcp", address)
	if err != nil {
		return nil, fmt.Errorf("--listen: %w: choose another port, or 127.0.0.1:0 for any that is free", err)
	}
	return ln, nil
}

package main

import (
	"context"
	"errors"
	"fmt"
	"log/slog"
	"net"
	"os"
	"os/signal"
	"strings"
	"sync"
	"sync/atomic"
	"syscall"
	"time"

	"github.com/spf13/cobra"

	"lazyhand/bot/desk"
	"lazyhand/config"
	"lazyhand/schedule"
	"lazyhand/store"
)

// platform is a chat platform that the bot joins.
type platform interface {
	desk.Chat
	// Run takes what people say until ctx ends, and hands it to take; what take
	// returned nil for may be acknowledged to the platform. It returns nil when
	// ctx ended, and an error when trying again cannot help.
	Run(ctx context.Context, take func(context.Context, desk.Message) error) error
	// Connected tells whether messages come in now, and in a few words how it
	// stands.
	Connected() (ok bool, says string)
}

// Times of the life of the process. Stopping takes less than ten seconds:
// finishing what is under way, then folding the record.
const (
	tickEvery  = 30 * time.Second
	sendEvery  = time.Second
	finishTime = 5 * time.Second // for posts that are on their way
	stopTime   = 8 * time.Second // for everything
	lateAfter  = 5 * time.Minute // a job past its slot by more counts as late
)

func (p *program) serveCommand() *cobra.Command {
	return &cobra.Command{
		Use:   "serve",
		Short: "Run the bot in the shop's Slack",
		Long: `Serve connects to Slack and answers the crew until it is told to stop.

It stops cleanly on SIGTERM and takes up the configuration again on SIGHUP.
Under systemd it says when it is ready (see lazyhand service). It answers about
its own state on the address of health.listen: /healthz, /readyz, /metrics.`,
		Example: `  lazyhand serve
  lazyhand serve --config /etc/lazyhand/lazyhand.yaml --db /var/lib/lazyhand/lazyhand.db
  LAZYHAND_LOG_LEVEL=debug lazyhand serve`,
		Args: noWords,
		RunE: func(cmd *cobra.Command, _ []string) error {
			c, err := p.settings()
			if err != nil {
				return err
			}
			if !c.Slack.Configured() {
				return errors.New("Slack is not configured: see the slack keys of lazyhand init --print, or run lazyhand alone to chat here")
			}
			if missing := missingOfSlack(c.Slack); len(missing) > 0 {
				return fmt.Errorf("Slack needs more: %s", strings.Join(missing, ", "))
			}
			return p.serve(cmd.Context(), c, p.joinSlack)
		},
	}
}

// service is the running bot.
type service struct {
	*program
	log    *slog.Logger
	level  *slog.LevelVar
	db     *store.DB
	chat   platform
	pulse  *pulse
	notify notifier
	nudge  chan struct{} // something may be ready to be sent

	backupAgain time.Time // a backup that failed is tried again then

	desk     atomic.Pointer[desk.Desk] // replaced on a reload
	settings atomic.Pointer[config.Config]
	roles    atomic.Pointer[roles]
	regroup  chan struct{} // the roles were replaced
}

// joiner makes the way into a platform; current returns the desk of the moment.
type joiner func(c config.Config, log *slog.Logger, current func() *desk.Desk) (platform, error)

// serve runs the bot on a platform until ctx ends.
func (p *program) serve(ctx context.Context, c config.Config, join joiner) (err error) {
	s := &service{program: p, pulse: newPulse(), level: &slog.LevelVar{}, notify: notifier{os.Getenv("NOTIFY_SOCKET")}, nudge: make(chan struct{}, 1), regroup: make(chan struct{}, 1)}
	s.log = slog.New(slog.NewJSONHandler(p.errOut, &slog.HandlerOptions{Level: s.level}))
	file, err := c.RecordFile()
	if err != nil {
		return err
	}
	if s.db, err = store.Open(ctx, file); err != nil {
		return err
	}
	defer func() { err = errors.Join(err, s.db.Close()) }()
	if err := s.use(c); err != nil {
		return err
	}
	if s.chat, err = join(c, s.log, s.desk.Load); err != nil {
		return err
	}
	s.pulse.connected = s.chat.Connected
	var ln net.Listener
	if c.Health.Listen != "" {
		if ln, err = net.Listen("tcp", c.Health.Listen); err != nil {
			return fmt.Errorf("health.listen: %w: choose another address, or an empty one for none", err)
		}
	}
	return s.run(ctx, ln)
}

// use makes c the settings from now on.
func (s *service) use(c config.Config) error {
	r := rolesOf(c.Slack)
	if before := s.roles.Load(); before != nil {
		r.members.Store(before.members.Load())
	}
	opt := deskOptions(c)
	opt.Role = r.of
	d, err := desk.New(s.db, opt)
	if err != nil {
		return err
	}
	if err := s.level.UnmarshalText([]byte(c.Log.Level)); err != nil {
		return fmt.Errorf("log.level: %w", err)
	}
	s.desk.Store(d)
	s.settings.Store(&c)
	s.roles.Store(r)
	select {
	case s.regroup <- struct{}{}:
	default: // it is to look anyway
	}
	return nil
}

// run keeps the loops going until ctx ends or one of them cannot go on.
func (s *service) run(ctx context.Context, ln net.Listener) error {
	hup := make(chan os.Signal, 1)
	signal.Notify(hup, syscall.SIGHUP)
	defer signal.Stop(hup)

	ctx, cancel := context.WithCancelCause(ctx)
	defer cancel(nil)
	// What is under way when the end comes is finished.
	finish, cut := context.WithCancel(context.WithoutCancel(ctx))
	defer cut()
	var wg sync.WaitGroup
	loop := func(name string, do func() error) {
		wg.Go(func() {
			if err := do(); err != nil {
				cancel(fmt.Errorf("%s: %w", name, err))
			}
		})
	}
	loop("chat", func() error {
		if err := s.chat.Run(ctx, s.take); err != nil || ctx.Err() != nil {
			return err
		}
		return errors.New("it ended by itself")
	})
	loop("clockwork", func() error { s.tickLoop(ctx); return nil })
	loop("backup", func() error { s.backupLoop(ctx); return nil })
	loop("watchdog", func() error { s.watchdogLoop(ctx, watchdogEvery(os.Getenv("WATCHDOG_USEC"))); return nil })
	loop("outbox", func() error { s.sendLoop(ctx, finish); return nil })
	loop("roles", func() error { s.groupsLoop(ctx); return nil })
	loop("settings", func() error { s.reloadLoop(ctx, hup); return nil })
	if ln != nil {
		h := &health{db: s.db, pulse: s.pulse, zone: s.settings.Load().Shop.Zone, late: s.lateJobs, now: s.now}
		loop("health", func() error { return serveOn(ctx, ln, h.handler()) })
		s.log.Info("health", "address", ln.Addr().String())
	}
	s.tell("READY=1\nSTATUS=running")
	b := thisBuild()
	s.log.Info("running", "version", b.version, "commit", b.commit, "record", s.db.Path())

	<-ctx.Done()
	s.tell("STOPPING=1")
	s.log.Info("stopping")
	stopped := make(chan struct{})
	go func() { wg.Wait(); close(stopped) }()
	timer := time.AfterFunc(finishTime, cut)
	defer timer.Stop()
	select {
	case <-stopped:
		s.log.Info("stopped")
	case <-time.After(stopTime):
		s.log.Error("stopped with work under way: it is taken up at the next start")
	}
	if cause := context.Cause(ctx); !errors.Is(cause, context.Canceled) {
		return cause
	}
	return nil
}

// tell tells the service manager how the service is.
func (s *service) tell(states string) {
	if err := s.notify.tell(states); err != nil {
		s.log.Warn("service manager", "error", err)
	}
}

// take hands a message to the desk; once it returns nil the message is on the
// disk.
func (s *service) take(ctx context.Context, m desk.Message) error {
	start := s.now()
	if err := s.desk.Load().Take(ctx, m); err != nil {
		s.log.Error("take", "error", err)
		return err
	}
	s.log.Debug("taken", "message", m.Key, "kind", m.Kind, "took", s.now().Sub(start))
	select {
	case s.nudge <- struct{}{}:
	default: // it has been told already
	}
	return nil
}

// tickLoop deals with what falls due.
func (s *service) tickLoop(ctx context.Context) {
	for {
		if err := s.desk.Load().Tick(ctx, s.now()); err != nil && ctx.Err() == nil {
			s.log.Error("clockwork", "error", err)
		}
		s.pulse.beat("clockwork", s.now())
		if !pause(ctx, tickEvery) {
			return
		}
	}
}

// backupLoop makes the backups that are due. It has a loop of its own because a
// large record takes its time.
func (s *service) backupLoop(ctx context.Context) {
	for {
		s.backupDue(ctx, s.now())
		if !pause(ctx, tickEvery) {
			return
		}
	}
}

// watchdogLoop shows the service manager that the program is alive, as long as
// no loop is stuck.
func (s *service) watchdogLoop(ctx context.Context, every time.Duration) {
	for every > 0 {
		if len(s.pulse.stuck(s.now())) == 0 {
			s.tell("WATCHDOG=1")
		}
		if !pause(ctx, every) {
			return
		}
	}
}

// pause waits; false when ctx ended meanwhile.
func pause(ctx context.Context, d time.Duration) bool {
	select {
	case <-ctx.Done():
		return false
	case <-time.After(d):
		return true
	}
}

// sendLoop lets out what is to be said, at once after a message and otherwise
// every second. A post that is on its way when ctx ends is finished, within
// the time of finish.
func (s *service) sendLoop(ctx, finish context.Context) {
	chat := counted{s.chat, s.pulse}
	for {
		for ctx.Err() == nil {
			more, err := s.desk.Load().Send(finish, s.now(), chat)
			if err != nil {
				s.log.Error("outbox", "error", err)
			}
			if err != nil || !more {
				break
			}
			s.pulse.beat("outbox", s.now())
		}
		s.pulse.beat("outbox", s.now())
		select {
		case <-ctx.Done():
			return
		case <-s.nudge:
		case <-time.After(sendEvery):
		}
	}
}

// counted counts what goes wrong between the bot and the platform.
type counted struct {
	desk.Chat
	pulse *pulse
}

// Post says p and counts a failure.
func (c counted) Post(ctx context.Context, p desk.Post) (string, error) {
	ref, err := c.Chat.Post(ctx, p)
	var no *desk.Refusal
	switch {
	case errors.As(err, &no):
		c.pulse.chatErrors.WithLabelValues("refused").Inc()
	case err != nil:
		c.pulse.chatErrors.WithLabelValues("unknown").Inc()
	}
	return ref, err
}

// Find looks for p and counts a failure.
func (c counted) Find(ctx context.Context, p desk.Post) (string, bool, error) {
	ref, found, err := c.Chat.Find(ctx, p)
	if err != nil {
		c.pulse.chatErrors.WithLabelValues("lookup").Inc()
	}
	return ref, found, err
}

// reloadLoop takes the settings up again at each SIGHUP.
func (s *service) reloadLoop(ctx context.Context, hup <-chan os.Signal) {
	for {
		select {
		case <-ctx.Done():
			return
		case <-hup:
			s.reload()
		}
	}
}

// reload takes up what a running bot can of the settings, and says which keys
// need a restart. Settings with a fault change nothing.
func (s *service) reload() {
	before := *s.settings.Load()
	after, err := s.program.settings()
	if err != nil {
		s.log.Error("the settings are left as they were", "error", err)
		return
	}
	safe, restart := config.Changes(before, after)
	if len(restart) > 0 {
		s.log.Warn("restart needed", "keys", restart)
		after = config.KeepRestart(before, after)
	}
	if err := s.use(after); err != nil {
		s.log.Error("the settings are left as they were", "error", err)
		return
	}
	s.log.Info("settings taken up", "keys", safe)
}

// lateJobs returns by how much each job is past its slot.
func (s *service) lateJobs(ctx context.Context, now time.Time) (map[string]time.Duration, error) {
	c := s.settings.Load()
	jobs := deskOptions(*c).Jobs
	jobs[jobBackup] = c.Jobs.Backup
	plan, err := schedule.New(c.Shop.Zone, jobs)
	if err != nil {
		return nil, err
	}
	late := map[string]time.Duration{}
	err = s.db.Read(ctx, func(tx *store.Tx) error {
		for _, job := range plan.Jobs() {
			late[job] = 0
			last, known, err := tx.LastSlot(job)
			if err != nil {
				return err
			}
			if !known {
				continue
			}
			if slot, ok := plan.Next(job, last); ok && now.Sub(slot) > lateAfter {
				late[job] = now.Sub(slot)
			}
		}
		return nil
	})
	return late, err
}

package slackchat

import (
	"context"
	"errors"
	"fmt"
	"log/slog"
	"math/rand/v2"
	"net/http"
	"strings"
	"sync"
	"time"

	"github.com/slack-go/slack"

	"lazyhand/bot/desk"
)

// Take brings one message to the desk; when it returns nil the message is on
// the disk.
type Take func(ctx context.Context, m desk.Message) error

// Options are the settings of the connection. Channels are ids.
type Options struct {
	BotToken      string // "xoxb-…"
	AppToken      string // "xapp-…", for Socket Mode
	SigningSecret string // for requests over HTTP
	Listen        string // address for requests over HTTP; empty: Socket Mode
	APIURL        string // empty: Slack itself; ends with a slash

	// Heard is how far the bot has listened, see desk.Desk; nil: nothing is
	// read back after a gap.
	Heard func(ctx context.Context, since time.Time) (channels, threads []desk.Heard, err error)

	// Home gathers a person's home tab, see desk.Desk; nil: there is none.
	Home func(ctx context.Context, person string, now time.Time) (desk.Home, error)

	Field  []string // channels that are read back after a gap
	Lang   string   // the shop's language, "en" or "es"
	Shared bool     // people of other workspaces are read
	Guests bool     // guests are read

	Now    func() time.Time      // nil: the real clock
	Jitter func() float64        // in [0,1), spreads reconnects; nil: random
	Log    *slog.Logger          // nil: silent. No text, address or token is written
	Seen   func(Verdict, string) // called with what became of each thing that arrived; may be nil

	// Times of the connection; zero is what the platform's handbook advises.
	Pace        time.Duration // between posts in one channel; 1 s
	Ping        time.Duration // between our pings; 10 s
	Silence     time.Duration // after which a socket is dead; 30 s
	FirstDelay  time.Duration // before the first reconnect, doubled for each that follows; 1 s
	LongestWait time.Duration // between reconnects; 1 min
	VoiceWaits  []time.Duration
}

// Slack is a workspace as a desk.Chat, and what happens there as messages for
// the desk. It is safe for use by many goroutines.
type Slack struct {
	opt  Options
	desk Take // set by Run
	api  *slack.Client
	http *http.Client

	mu      sync.Mutex
	me      self
	people  map[string]person
	lanes   map[string]*lane
	marks   map[string]desk.Mark
	marksOf time.Time // marks set before this are not in marks
	state   Health

	events  chan job
	hands   chan struct{} // bounds the interactions that are dealt with at once
	tasks   sync.WaitGroup
	gap     sync.Mutex // held while a gap is read back
	base    context.Context
	directs map[string]string        // channel of the direct messages by person
	clips   map[string]chan struct{} // audio clips whose words are waited for
}

// Health is the state of the connection, for those who watch over it.
type Health struct {
	Connected  bool
	Since      time.Time // of the present connection
	LastFrame  time.Time
	Reconnects int
	LastReason string // why the last connection ended
}

// New makes a connection that is not open yet. It makes no request.
func New(opt Options) *Slack {
	def := func(t *time.Duration, v time.Duration) {
		if *t <= 0 {
			*t = v
		}
	}
	def(&opt.Pace, time.Second)
	def(&opt.Ping, 10*time.Second)
	def(&opt.Silence, 30*time.Second)
	def(&opt.FirstDelay, time.Second)
	def(&opt.LongestWait, time.Minute)
	if opt.VoiceWaits == nil {
		opt.VoiceWaits = []time.Duration{5 * time.Second, 15 * time.Second, 45 * time.Second}
	}
	if opt.Now == nil {
		opt.Now = time.Now
	}
	if opt.Jitter == nil {
		opt.Jitter = rand.Float64
	}
	if opt.Log == nil {
		opt.Log = slog.New(slog.DiscardHandler)
	}
	s := &Slack{opt: opt, http: &http.Client{Timeout: 10 * time.Second}, people: map[string]person{},
		lanes: map[string]*lane{}, marks: map[string]desk.Mark{}, directs: map[string]string{}, clips: map[string]chan struct{}{}, marksOf: opt.Now(),
		events: make(chan job, 1000), hands: make(chan struct{}, 8)}
	more := []slack.Option{slack.OptionHTTPClient(s.http), slack.OptionAppLevelToken(opt.AppToken)}
	if opt.APIURL != "" {
		more = append(more, slack.OptionAPIURL(opt.APIURL))
	}
	s.api = slack.New(opt.BotToken, more...)
	return s
}

// Health returns the state of the connection.
func (s *Slack) Health() Health {
	s.mu.Lock()
	defer s.mu.Unlock()
	return s.state
}

// Fatal is an error that no waiting mends: a token that is not valid, or
// Socket Mode switched off.
type Fatal struct {
	Code string // the platform's word
	Mend string // what to do
}

// Error says what is wrong and what to do.
func (f *Fatal) Error() string { return fmt.Sprintf("Slack says %s: %s", f.Code, f.Mend) }

// mend tells what to do about an error that no waiting mends.
func mend(code string) string {
	switch code {
	case "invalid_auth", "not_authed":
		return "a token is wrong; copy both tokens anew from the app's pages (Install App, and Basic Information for the app-level one)"
	case "account_inactive", "token_revoked", "token_expired":
		return "the token is no longer valid; reinstall the app in the workspace and copy the new one"
	case "not_allowed_token_type":
		return "the tokens are in each other's place: the bot token begins with xoxb-, the app-level token with xapp-"
	case "link_disabled", "app_not_socket_mode", "not_socket_mode_app":
		return "Socket Mode is switched off; switch it on at the app's page Socket Mode"
	case "missing_scope":
		return "a scope is missing; lazyhand check names it"
	}
	return ""
}

// fatal turns an error of the platform into a Fatal where it is one.
func fatal(err error) error {
	var e slack.SlackErrorResponse
	if errors.As(err, &e) {
		if m := mend(e.Err); m != "" {
			if e.Err == "missing_scope" && e.Needed != "" {
				m = "the token lacks the scope " + e.Needed + "; add it at the app's page and reinstall"
			}
			return &Fatal{e.Err, m}
		}
	}
	return err
}

// Run joins the workspace and brings what people do there to take, until ctx
// ends or an error comes that no waiting mends, which is a *Fatal. It is called
// once.
func (s *Slack) Run(ctx context.Context, take func(context.Context, desk.Message) error) error {
	s.desk = take
	ctx, cancel := context.WithCancel(ctx)
	defer func() {
		cancel()
		s.tasks.Wait()
	}()
	s.mu.Lock()
	s.base = ctx
	s.mu.Unlock()
	for delay := s.opt.FirstDelay; ; delay = min(2*delay, s.opt.LongestWait) {
		err := s.hello(ctx)
		var f *Fatal
		if errors.As(err, &f) {
			return err
		}
		if err == nil {
			break
		}
		s.opt.Log.Warn("Slack does not answer yet", "error", err.Error())
		if !sleep(ctx, s.pause(delay)) {
			return nil
		}
	}
	if s.opt.Listen != "" {
		return s.listen(ctx)
	}
	return s.socket(ctx)
}

// Connected tells whether messages come in now, and how it stands.
func (s *Slack) Connected() (ok bool, says string) {
	h := s.Health()
	now := s.opt.Now()
	switch {
	case s.opt.Listen != "" && h.Connected:
		return true, "listening for Slack's requests on " + s.opt.Listen
	case !h.Connected && h.LastReason == "":
		return false, "not connected to Slack yet"
	case !h.Connected:
		return false, "not connected to Slack: " + h.LastReason
	case now.Sub(h.LastFrame) > 2*s.opt.Silence:
		return false, fmt.Sprintf("nothing heard from Slack for %s", now.Sub(h.LastFrame).Round(time.Second))
	}
	return true, fmt.Sprintf("connected to Slack, last heard %s ago, %d reconnects", now.Sub(h.LastFrame).Round(time.Second), h.Reconnects)
}

// hello asks the platform who we are; a wrong token is a *Fatal.
func (s *Slack) hello(ctx context.Context) error {
	r, err := s.api.AuthTestContext(ctx)
	if err != nil {
		return fmt.Errorf("cannot sign in to Slack: %w", fatal(err))
	}
	s.mu.Lock()
	s.me = self{userID: r.UserID, botID: r.BotID, teamID: r.TeamID}
	s.mu.Unlock()
	return nil
}

func (s *Slack) self() self {
	s.mu.Lock()
	defer s.mu.Unlock()
	return s.me
}

// seen notes what became of something that arrived.
func (s *Slack) seen(v Verdict, why string) {
	if s.opt.Seen != nil {
		s.opt.Seen(v, why)
	}
	level := slog.LevelDebug
	if v == Refused {
		level = slog.LevelWarn
	}
	s.opt.Log.Log(context.Background(), level, "arrived", "verdict", string(v), "why", why)
}

// take brings an arrival's messages to the desk, unless they come from people
// who are not read.
func (s *Slack) take(ctx context.Context, a arrival) error {
	if a.verdict == Taken && a.team != "" && !s.opt.Shared {
		s.seen(Ignored, "person of another workspace")
		return nil
	}
	for _, m := range a.messages {
		p, err := s.person(ctx, m.Author)
		if err != nil {
			return err
		}
		if p.guest && !s.opt.Guests && m.Kind != desk.Deleted {
			s.seen(Ignored, "guest")
			return nil
		}
		m.Name = p.name
		if err := s.desk(ctx, m); err != nil {
			return err
		}
	}
	s.seen(a.verdict, a.why)
	return nil
}

// isDirect tells whether a channel id is that of direct messages.
func isDirect(channel string) bool { return strings.HasPrefix(channel, "D") }

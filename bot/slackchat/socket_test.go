package slackchat_test

import (
	"errors"
	"fmt"
	"strings"
	"testing"
	"time"

	"lazyhand/bot/desk"
	"lazyhand/bot/practice"
	"lazyhand/bot/slackchat"
)

func TestAMessageReachesTheDeskAndTheReplyItsThread(t *testing.T) {
	s := open(t, practice.Options{})
	ts := s.say("rosa", "field", "", "92 rear tap, heater idle, 123 Elm")
	s.until("the message is there", func() bool { return len(s.messages()) == 1 })
	m := s.messages()[0]
	if m.Key != field+"/"+ts || m.Channel != field || m.Thread != ts || m.Author != rosa || m.Name == "" || m.Direct || m.Mention ||
		m.Text != "92 rear tap, heater idle, 123 Elm" || m.Kind != desk.Said || m.Twin == "" || m.At.IsZero() {
		t.Errorf("got %+v", m)
	}
	ref, err := s.bot.Post(t.Context(), desk.Post{Key: "reply:1", Kind: desk.Say, Channel: m.Channel, Thread: m.Thread, Body: desk.Body{Lead: "123 Elm: 92 psi"}})
	must(t, err)
	thread := s.Thread("field", ts)
	if len(thread) != 2 || thread[1].TS != ref || !strings.Contains(thread[1].Text, "92 psi") {
		t.Errorf("the thread is %+v", thread)
	}
	s.settled()
	if len(s.messages()) != 1 {
		t.Errorf("the bot heard itself: %+v", s.messages())
	}
}

func TestAMessageIsAcknowledgedOnlyOnceItIsKept(t *testing.T) {
	s := open(t, practice.Options{})
	s.mu.Lock()
	s.fail = 1
	s.mu.Unlock()
	s.say("rosa", "field", "", "92 rear, 123 Elm")
	s.until("it came again and was kept", func() bool { return len(s.messages()) == 1 })
	s.settled()
}

func TestDuplicatesAndLostAcknowledgementsGiveOneMessage(t *testing.T) {
	s := open(t, practice.Options{})
	s.SetFaults(practice.Faults{Duplicate: 5, IgnoreAcks: 2, SentTwice: 1})
	s.say("rosa", "field", "", "92 rear, 123 Elm")
	s.settled()
	if got := s.messages(); len(got) != 1 {
		t.Errorf("got %d messages", len(got))
	}
}

func TestAMentionIsOneMessage(t *testing.T) {
	s := open(t, practice.Options{})
	s.say("dee", "dispatch", "", "@"+s.app.Name+" history 123 Elm")
	s.settled()
	got := s.messages()
	if len(got) != 1 || !got[0].Mention {
		t.Errorf("got %+v", got)
	}
}

func TestEventsOutOfOrderAllArrive(t *testing.T) {
	s := open(t, practice.Options{})
	s.SetFaults(practice.Faults{OutOfOrder: true})
	for i := range 10 {
		s.say("rosa", "field", "", fmt.Sprintf("%d rear, 123 Elm", 60+i))
	}
	s.until("all are there", func() bool { return len(s.messages()) == 10 })
}

// The library's loop closes the old socket before the next is open.
func TestARefreshOpensTheNextSocketFirst(t *testing.T) {
	for _, reason := range []string{"warning", "refresh_requested"} {
		s := open(t, practice.Options{})
		s.RefreshSockets(s.app.ID, reason, 2*time.Second)
		s.until("two sockets are open", func() bool { return s.Apps()[0].Sockets == 2 })
		for i := range 20 {
			s.say("rosa", "field", "", fmt.Sprintf("%d rear, 123 Elm", 60+i))
		}
		s.until("all are there, whichever socket they came by", func() bool { return len(s.messages()) == 20 })
		if h := s.bot.Health(); h.LastReason != reason || h.Reconnects != 1 {
			t.Errorf("health is %+v: the reason must be told", h)
		}
		must(t, s.stop())
	}
}

func TestDroppedSocketsLoseNothing(t *testing.T) {
	s := open(t, practice.Options{RetryAfter: []time.Duration{0, 100 * time.Millisecond, 200 * time.Millisecond, time.Second}})
	for i := range 6 {
		asked := s.calls("auth.test")
		s.say("rosa", "field", "", fmt.Sprintf("%d rear, 123 Elm", 60+i))
		s.DropSockets(s.app.ID)
		s.say("beto", "field", "", fmt.Sprintf("%d front, 9 Oak", 60+i))
		// A socket that is dropped before its hello is no connection yet: auth.test belongs after each that is one.
		s.until("connected again, and auth.test called", func() bool { return s.Apps()[0].Sockets > 0 && s.calls("auth.test") > asked })
	}
	s.until("all are there", func() bool { return len(s.messages()) == 12 })
}

// A loop of too_many_websockets made thousands of calls with the library.
func TestReconnectsArePaced(t *testing.T) {
	s := open(t, practice.Options{}, func(o *slackchat.Options) {
		o.FirstDelay, o.LongestWait = 100*time.Millisecond, 400*time.Millisecond
		o.Jitter = func() float64 { return 0 }
	})
	before := s.calls("apps.connections.open")
	end := time.Now().Add(time.Second)
	for time.Now().Before(end) {
		s.RefreshSockets(s.app.ID, "too_many_websockets", 20*time.Millisecond)
		time.Sleep(10 * time.Millisecond)
	}
	// 100, 100, 200, 200, 200 … ms: halves of what doubles, never under 100.
	if n := s.calls("apps.connections.open") - before; n < 2 || n > 8 {
		t.Errorf("%d connections were opened in a second", n)
	}
}

func TestSocketModeSwitchedOffIsFatal(t *testing.T) {
	s := open(t, practice.Options{})
	s.DisableLink(s.app.ID)
	var f *slackchat.Fatal
	if err := s.ended(); !errors.As(err, &f) || f.Code != "link_disabled" || !strings.Contains(err.Error(), "Socket Mode") {
		t.Errorf("got %v", err)
	}
}

// ended waits for the bot to end by itself.
func (s *shop) ended() error {
	s.t.Helper()
	time.Sleep(300 * time.Millisecond)
	return s.stop()
}

func TestAWrongTokenIsFatalAndSaysWhatToDo(t *testing.T) {
	w := open(t, practice.Options{})
	for _, tt := range []struct {
		change func(*slackchat.Options)
		want   string
	}{
		{func(o *slackchat.Options) { o.BotToken = "xoxb-wrong" }, "a token is wrong"},
		{func(o *slackchat.Options) { o.AppToken = "xapp-wrong" }, "a token is wrong"},
		{func(o *slackchat.Options) { o.AppToken = o.BotToken }, "in each other's place"},
	} {
		err := slackchat.New(w.options(tt.change)).Run(t.Context(), w.take)
		var f *slackchat.Fatal
		if !errors.As(err, &f) || !strings.Contains(err.Error(), tt.want) || strings.Contains(err.Error(), w.app.BotToken) || strings.Contains(err.Error(), "\n") {
			t.Errorf("got %v, want one line with %q", err, tt.want)
		}
	}
	w.Revoke(w.app.AppToken)
	w.DropSockets(w.app.ID)
	var f *slackchat.Fatal
	if err := w.ended(); !errors.As(err, &f) || f.Code != "token_revoked" {
		t.Errorf("a revoked token: %v", err)
	}
}

// A stalled desk must not keep the socket from answering pings, and nothing
// may be lost meanwhile.
func TestASlowDeskKeepsTheSocketAlive(t *testing.T) {
	s := open(t, practice.Options{PingEvery: 30 * time.Millisecond, AckWithin: 5 * time.Second}, func(o *slackchat.Options) {
		o.Silence = 200 * time.Millisecond
	})
	s.mu.Lock() // the desk stands still
	for i := range 200 {
		if _, err := s.Say("rosa", "field", "", fmt.Sprintf("%d rear, %d Elm", 60+i%20, i)); err != nil {
			t.Error(err)
		}
	}
	time.Sleep(600 * time.Millisecond)
	s.mu.Unlock()
	s.until("all 200 are there", func() bool { return len(s.messages()) == 200 })
	if h := s.bot.Health(); h.Reconnects != 0 {
		t.Errorf("%d reconnects", h.Reconnects)
	}
}

func TestASilentPeerIsLeft(t *testing.T) {
	// The workspace pings every hour and is cut off from our pings by a proxy
	// that swallows everything.
	s := open(t, practice.Options{PingEvery: time.Hour})
	hole := newHole(t, strings.TrimPrefix(s.url, "http://"))
	must(t, s.stop())
	s.join(func(o *slackchat.Options) {
		o.APIURL = hole.url + "/api/"
		o.Silence = 200 * time.Millisecond
	})
	opened := s.calls("apps.connections.open")
	hole.swallow(true)
	s.until("the silence is noticed", func() bool { ok, _ := s.bot.Connected(); return !ok })
	hole.swallow(false)
	s.until("it is connected again", func() bool { ok, _ := s.bot.Connected(); return ok })
	if n := s.calls("apps.connections.open"); n <= opened {
		t.Errorf("no new connection was opened")
	}
	s.say("rosa", "field", "", "92 rear, 123 Elm")
	s.until("messages come again", func() bool { return len(s.messages()) == 1 })
}

func TestStoppingIsQuickAndClean(t *testing.T) {
	s := open(t, practice.Options{})
	start := time.Now()
	must(t, s.stop())
	if d := time.Since(start); d > 2*time.Second {
		t.Errorf("it took %v", d)
	}
}

func TestThePlatformMayBeAwayAtTheStart(t *testing.T) {
	s := open(t, practice.Options{})
	must(t, s.stop())
	s.SetFaults(practice.Faults{ServerError: 3})
	s.join()
	s.SetFaults(practice.Faults{Method: "apps.connections.open", RateLimit: 1})
	s.DropSockets(s.app.ID)
	s.until("Retry-After was waited for", func() bool { ok, _ := s.bot.Connected(); return ok && s.Apps()[0].Sockets == 1 })
}

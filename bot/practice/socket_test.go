package practice_test

import (
	"context"
	"errors"
	"math/rand/v2"
	"strings"
	"sync"
	"testing"
	"time"

	"github.com/slack-go/slack"
	"github.com/slack-go/slack/slackevents"
	"github.com/slack-go/slack/socketmode"

	"lazyhand/bot/practice"
)

func TestHearsMessages(t *testing.T) {
	s := open(t, practice.Options{})
	e := s.listen(t, nil)
	ts := must[string](t)(s.Say("rosa", "field", "", "@mainbot 92 rear bibb, 12 Alder St"))
	must[string](t)(s.Say("beto", "field", ts, "correction, 82"))
	must[string](t)(s.Say("pim", s.DM("pim", ""), "", "60 psi"))
	wait(t, "three messages and a mention", func() bool {
		return len(inner[*slackevents.MessageEvent](e)) == 3 && len(inner[*slackevents.AppMentionEvent](e)) == 1
	})
	m := inner[*slackevents.MessageEvent](e)
	if m[0].TimeStamp != ts || m[0].ChannelType != "channel" || m[0].ClientMsgID == "" || m[0].User != "U00000001" {
		t.Errorf("first message %+v", m[0])
	}
	if m[1].ThreadTimeStamp != ts || m[2].ChannelType != "im" {
		t.Errorf("a reply %+v and a direct message %+v", m[1], m[2])
	}
	if twin := inner[*slackevents.AppMentionEvent](e)[0]; twin.TimeStamp != ts || twin.Text != m[0].Text {
		t.Errorf("the mention %+v is not the twin of %+v", twin, m[0])
	}
	check(t, s.Edit("rosa", "field", ts, "62 rear bibb, 12 Alder St"))
	check(t, s.React("dee", "field", ts, "eyes"))
	check(t, s.Delete("rosa", "field", ts))
	wait(t, "edit, reaction and deletion", func() bool {
		return len(inner[*slackevents.MessageEvent](e)) == 5 && len(inner[*slackevents.ReactionAddedEvent](e)) == 1
	})
	m = inner[*slackevents.MessageEvent](e)
	if edit := m[3]; edit.SubType != "message_changed" || edit.Message.Text != "62 rear bibb, 12 Alder St" || edit.Message.Edited == nil ||
		!strings.Contains(edit.PreviousMessage.Text, "92") {
		t.Errorf("edit %+v", edit)
	}
	if gone := m[4]; gone.SubType != "message_deleted" || gone.DeletedTimeStamp != ts {
		t.Errorf("deletion %+v", gone)
	}
	// The parent of a thread leaves a tombstone.
	if th := s.Thread("field", ts); th[0].Subtype != "tombstone" || len(th) != 2 {
		t.Errorf("thread after the deletion %+v", th)
	}
	wait(t, "every acknowledgement", func() bool { return s.Deliveries("") == 0 })
}

func TestHearsOnlyWhatItAskedForAndMay(t *testing.T) {
	shy := practice.MainApp("mainbot")
	shy.Events = []string{"app_mention", "message.channels"}
	shy.Scopes = []string{"channels:history", "im:history", "chat:write"}
	s := open(t, practice.Options{Apps: []practice.AppOptions{shy}})
	s.Remove("team", "mainbot")
	e := s.listen(t, nil)
	must[string](t)(s.Say("rosa", s.DM("rosa", ""), "", "not asked for"))
	must[string](t)(s.Say("rosa", "team", "", "not a member"))
	must[string](t)(s.Say("rosa", "field", "", "@mainbot no scope for mentions"))
	wait(t, "one message", func() bool { return len(inner[*slackevents.MessageEvent](e)) == 1 })
	if n := len(inner[*slackevents.AppMentionEvent](e)); n != 0 || s.Deliveries("") > 1 {
		t.Errorf("%d mentions, %d more on the way", n, s.Deliveries(""))
	}
}

// hand is a clock that only moves when told.
type hand struct {
	mu sync.Mutex
	at time.Time
}

func (h *hand) now() time.Time {
	h.mu.Lock()
	defer h.mu.Unlock()
	return h.at
}

func (h *hand) move(d time.Duration) {
	h.mu.Lock()
	defer h.mu.Unlock()
	h.at = h.at.Add(d)
}

func TestComesAgainUntilAcknowledged(t *testing.T) {
	clock := &hand{at: time.Date(2026, 3, 2, 9, 0, 0, 0, time.UTC)}
	s := open(t, practice.Options{Now: clock.now})
	e := s.listen(t, nil)
	s.SetFaults(practice.Faults{IgnoreAcks: -1})
	must[string](t)(s.Say("rosa", "field", "", "60 psi"))
	requests := func() []*socketmode.Request {
		e.mu.Lock()
		defer e.mu.Unlock()
		var out []*socketmode.Request
		for _, x := range e.seen {
			if x.Type == socketmode.EventTypeEventsAPI {
				out = append(out, x.Request)
			}
		}
		return out
	}
	for n, pause := range []time.Duration{0, 0, time.Minute, 5 * time.Minute} {
		if pause > 0 {
			time.Sleep(60 * time.Millisecond)
			if got := len(requests()); got != n {
				t.Fatalf("%d deliveries before the pause of %v, want %d", got, pause, n)
			}
			check(t, s.Advance(pause))
		}
		wait(t, "the next delivery", func() bool { return len(requests()) == n+1 })
		clock.move(3 * time.Second) // the time to acknowledge is over
	}
	all := requests()
	ids := map[string]bool{}
	for i, r := range all {
		ids[r.EnvelopeID] = true
		if r.RetryAttempt != i || (i > 0) != (r.RetryReason == "timeout") {
			t.Errorf("delivery %d says attempt %d, reason %q", i, r.RetryAttempt, r.RetryReason)
		}
	}
	if len(ids) != 4 {
		t.Errorf("%d envelopes for four deliveries", len(ids))
	}
	check(t, s.Advance(time.Hour))
	wait(t, "the end of trying", func() bool { return s.Deliveries("") == 0 })
}

func TestGoesToAnyOneSocket(t *testing.T) {
	s := open(t, practice.Options{})
	a, b := s.listen(t, nil), s.listen(t, nil)
	for range 10 {
		must[string](t)(s.Say("rosa", "field", "", "60 psi"))
	}
	heard := func(e *ear) int { return len(inner[*slackevents.MessageEvent](e)) }
	wait(t, "ten messages", func() bool { return heard(a)+heard(b) == 10 })
	if heard(a) == 0 || heard(b) == 0 {
		t.Errorf("one socket heard %d, the other %d", heard(a), heard(b))
	}
}

func TestReconnects(t *testing.T) {
	s := open(t, practice.Options{})
	e := s.listen(t, nil)
	if n := s.RefreshSockets("", "refresh_requested", time.Second); n != 1 {
		t.Fatalf("%d sockets were told", n)
	}
	must[string](t)(s.Say("rosa", "field", "", "during the refresh"))
	wait(t, "a second hello", func() bool { return e.count(socketmode.EventTypeHello) == 2 })
	wait(t, "the message", func() bool { return len(inner[*slackevents.MessageEvent](e)) >= 1 })
	s.DropSockets("")
	must[string](t)(s.Say("rosa", "field", "", "while down"))
	wait(t, "a third hello", func() bool { return e.count(socketmode.EventTypeHello) == 3 })
	wait(t, "the message from the time with no socket", func() bool {
		m := inner[*slackevents.MessageEvent](e)
		return m[len(m)-1].Text == "while down"
	})
}

func TestLinkDisabledAndTooManySockets(t *testing.T) {
	s := open(t, practice.Options{})
	s.DisableLink("")
	_, _, err := s.api.StartSocketModeContext(context.Background())
	refused(t, err, "link_disabled")
	s.EnableLink("")
	_, address, err := s.api.StartSocketModeContext(context.Background())
	check(t, err)
	if frame := firstFrame(t, address); !strings.Contains(frame, `"type":"hello"`) {
		t.Errorf("first frame %s", frame)
	}
	if _, _, err := dial(address); err == nil {
		t.Error("an address worked twice")
	}
	s.DropSockets("")
	for range 10 {
		_, address, err := s.api.StartSocketModeContext(context.Background())
		check(t, err)
		conn, _, err := dial(address)
		check(t, err)
		defer conn.Close()
	}
	wait(t, "ten sockets", func() bool { return s.Apps()[0].Sockets == 10 })
	_, address, err = s.api.StartSocketModeContext(context.Background())
	check(t, err)
	if frame := firstFrame(t, address); !strings.Contains(frame, "too_many_websockets") {
		t.Errorf("the eleventh socket got %s", frame)
	}
}

func TestFaultsOfEvents(t *testing.T) {
	s := open(t, practice.Options{})
	e := s.listen(t, nil)
	texts := func() string {
		var out []string
		for _, m := range inner[*slackevents.MessageEvent](e) {
			out = append(out, m.Text)
		}
		return strings.Join(out, " ")
	}
	s.SetFaults(practice.Faults{Duplicate: 1})
	must[string](t)(s.Say("rosa", "field", "", "one"))
	wait(t, "the message twice", func() bool { return texts() == "one one" })
	s.SetFaults(practice.Faults{OutOfOrder: true})
	must[string](t)(s.Say("rosa", "field", "", "two"))
	must[string](t)(s.Say("rosa", "field", "", "three"))
	wait(t, "the third before the second", func() bool { return texts() == "one one three two" })
	s.SetFaults(practice.Faults{Delay: 50 * time.Millisecond})
	begun := time.Now()
	must[string](t)(s.Say("rosa", "field", "", "four"))
	wait(t, "the delayed one", func() bool { return strings.HasSuffix(texts(), "four") })
	if took := time.Since(begun); took < 50*time.Millisecond {
		t.Errorf("delayed by %v only", took)
	}
	s.SetFaults(practice.Faults{SentTwice: 1})
	must[string](t)(s.Say("rosa", "field", "", "five"))
	wait(t, "the message with two ts", func() bool { return strings.HasSuffix(texts(), "five five") })
	m := inner[*slackevents.MessageEvent](e)
	if x, y := m[len(m)-1], m[len(m)-2]; x.ClientMsgID != y.ClientMsgID || x.TimeStamp == y.TimeStamp {
		t.Errorf("sent twice: %+v and %+v", x, y)
	}
}

func TestFaultsOfCalls(t *testing.T) {
	s := open(t, practice.Options{})
	field := s.Channel("field")
	post := func() error {
		_, _, err := s.api.PostMessage(field, slack.MsgOptionText("hi", false))
		return err
	}
	s.SetFaults(practice.Faults{Method: "chat.postMessage", RateLimit: 1, RetryAfter: 7 * time.Second})
	_, err := s.api.AuthTest()
	check(t, err)
	var slow *slack.RateLimitedError
	if err := post(); !errors.As(err, &slow) || slow.RetryAfter != 7*time.Second {
		t.Errorf("got %v, want to wait 7 s", err)
	}
	check(t, post())
	s.SetFaults(practice.Faults{ServerError: 1})
	if err := post(); err == nil {
		t.Error("a server error passed")
	}
	s.SetFaults(practice.Faults{LostAnswer: 1})
	before := len(s.Messages("field"))
	if err := post(); err == nil || len(s.Messages("field")) != before+1 {
		t.Errorf("a lost answer: %v, %d messages more", err, len(s.Messages("field"))-before)
	}
	s.SetFaults(practice.Faults{LostCall: 1})
	if err := post(); err == nil || len(s.Messages("field")) != before+1 {
		t.Errorf("a lost call: %v, %d messages more", err, len(s.Messages("field"))-before)
	}
	s.SetFaults(practice.Faults{HoldRates: true})
	held := 0
	for range 8 {
		if errors.As(post(), &slow) {
			held++
		}
	}
	if held != 3 {
		t.Errorf("%d of 8 posts in a row were held, want 3 after a burst of 5", held)
	}
	check(t, s.Advance(time.Minute))
	check(t, post())
}

// Whatever goes wrong on the way, every message is heard: the property that a
// bot's own promise of losing nothing rests on.
func TestEveryMessageIsHeardInTheEnd(t *testing.T) {
	seeds := 4
	if testing.Short() {
		seeds = 1
	}
	for seed := range seeds {
		dice := rand.New(rand.NewPCG(uint64(seed), 7))
		s := open(t, practice.Options{AckWithin: 40 * time.Millisecond})
		e := s.listen(t, nil)
		said := map[string]bool{}
		for range 40 {
			switch dice.IntN(8) {
			case 0:
				s.DropSockets("")
			case 1:
				s.RefreshSockets("", "refresh_requested", 20*time.Millisecond)
			case 2:
				s.SetFaults(practice.Faults{IgnoreAcks: 1 + dice.IntN(3)})
			case 3:
				s.SetFaults(practice.Faults{Duplicate: 2, OutOfOrder: dice.IntN(2) == 0})
			case 4:
				s.SetFaults(practice.Faults{})
			}
			said[must[string](t)(s.Say("rosa", "field", "", "60 psi"))] = true
			time.Sleep(time.Duration(dice.IntN(8)) * time.Millisecond)
		}
		s.SetFaults(practice.Faults{})
		heard := func() int {
			all := map[string]bool{}
			for _, m := range inner[*slackevents.MessageEvent](e) {
				if !said[m.TimeStamp] {
					t.Errorf("seed %d: heard %s, which nobody said", seed, m.TimeStamp)
				}
				all[m.TimeStamp] = true
			}
			return len(all)
		}
		for end := time.Now().Add(10 * time.Second); heard() < len(said) && time.Now().Before(end); time.Sleep(30 * time.Millisecond) {
			if s.Apps()[0].Sockets > 0 {
				check(t, s.Advance(time.Minute)) // the waits between attempts
			}
		}
		if n := heard(); n != len(said) {
			t.Errorf("seed %d: %d of %d messages were heard", seed, n, len(said))
		}
	}
}

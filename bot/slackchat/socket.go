package slackchat

import (
	"context"
	"encoding/json"
	"errors"
	"fmt"
	"net/http"
	"sync"
	"time"

	"github.com/gorilla/websocket"
	"github.com/slack-go/slack"
)

// Socket Mode, by a loop of our own. Against faults of the library's managed
// loop that were measured: it tells why a connection ends, opens the next
// before the old one closes, paces every reconnect, answers pings whatever the
// desk is doing, and acknowledges what it cannot read.

// maxFrame is the longest frame that is read. A view may have 250 kB.
const maxFrame = 4 << 20

// helloWithin is how long a new socket may take to say hello.
const helloWithin = 10 * time.Second

// drain is how long an old socket is still listened to once the next is open.
const drain = 5 * time.Second

// link is one open socket.
type link struct {
	conn   *websocket.Conn
	writes sync.Mutex
	opened time.Time
}

// write sends one frame within two seconds.
func (l *link) write(v any) error {
	l.writes.Lock()
	defer l.writes.Unlock()
	if err := l.conn.SetWriteDeadline(time.Now().Add(2 * time.Second)); err != nil {
		return err
	}
	return l.conn.WriteJSON(v)
}

// ack acknowledges an envelope. An acknowledgement that does not arrive does
// no harm: the envelope comes again and is known.
func (l *link) ack(id string, payload any) {
	if id == "" {
		return
	}
	frame := map[string]any{"envelope_id": id}
	if payload != nil {
		if b, err := json.Marshal(payload); err == nil && len(b) < limit("ack.bytes")-200 {
			frame["payload"] = json.RawMessage(b)
		}
	}
	_ = l.write(frame)
}

// ending is how a socket came to its end.
type ending struct {
	link   *link
	reason string // of a disconnect frame, which comes ahead of the end; empty for the end itself
}

// job is an envelope that waits for the desk.
type job struct {
	env  envelope
	link *link
}

// socket keeps a Socket Mode connection open until ctx ends, or until an error
// that no waiting mends, which is a *Fatal.
func (s *Slack) socket(ctx context.Context) error {
	s.tasks.Go(func() { s.work(ctx) })
	endings := make(chan ending, 16)
	var current *link
	delay := s.opt.FirstDelay
	for {
		next, err := s.open(ctx)
		if err != nil {
			if ctx.Err() != nil {
				return nil
			}
			var f *Fatal
			if errors.As(err, &f) {
				return err
			}
			s.opt.Log.Warn("cannot connect to Slack", "error", err.Error())
			wait := s.pause(delay)
			delay = min(2*delay, s.opt.LongestWait)
			var slow *slack.RateLimitedError
			if errors.As(err, &slow) {
				wait = max(wait, slow.RetryAfter)
			}
			if !sleep(ctx, wait) {
				return nil
			}
			continue
		}
		if old := current; old != nil {
			// Both listen for a moment; whatever is in flight on the old one
			// still arrives.
			time.AfterFunc(drain, func() { old.close() })
		}
		current = next
		s.connected(next)
		s.tasks.Go(func() { s.read(ctx, next, endings) })
		s.tasks.Go(func() { s.catchUp(ctx) })
		reason := ""
		for reason == "" {
			select {
			case <-ctx.Done():
				next.close()
				return nil
			case e := <-endings:
				switch {
				case e.link != current: // an old one is through
				case e.reason == "":
					reason = "the connection was lost"
					current = nil
				default:
					reason = e.reason
				}
			}
		}
		s.parted(reason, current == nil)
		if reason == "link_disabled" {
			next.close()
			return &Fatal{reason, mend(reason)}
		}
		if time.Since(next.opened) > time.Minute {
			delay = s.opt.FirstDelay
		}
		if !sleep(ctx, s.pause(delay)) {
			next.close()
			return nil
		}
		delay = min(2*delay, s.opt.LongestWait)
	}
}

// pause is a delay with half of it left to chance, so that many bots do not
// come back at once; never less than FirstDelay.
func (s *Slack) pause(d time.Duration) time.Duration {
	return max(s.opt.FirstDelay, d/2+time.Duration(s.opt.Jitter()*float64(d/2)))
}

func sleep(ctx context.Context, d time.Duration) bool {
	t := time.NewTimer(d)
	defer t.Stop()
	select {
	case <-ctx.Done():
		return false
	case <-t.C:
		return true
	}
}

func (l *link) close() {
	_ = l.conn.WriteControl(websocket.CloseMessage, websocket.FormatCloseMessage(websocket.CloseNormalClosure, ""), time.Now().Add(time.Second))
	_ = l.conn.Close()
}

// open opens a socket and waits for its hello.
func (s *Slack) open(ctx context.Context) (*link, error) {
	_, address, err := s.api.StartSocketModeContext(ctx)
	if err != nil {
		return nil, fatal(err)
	}
	d := websocket.Dialer{HandshakeTimeout: helloWithin, Proxy: http.ProxyFromEnvironment}
	conn, resp, err := d.DialContext(ctx, address, nil)
	if err != nil {
		if resp != nil {
			return nil, fmt.Errorf("open the socket: status %d", resp.StatusCode)
		}
		return nil, errors.New("open the socket: no answer") // the address is a secret
	}
	l := &link{conn: conn, opened: time.Now()}
	conn.SetReadLimit(maxFrame)
	_ = conn.SetReadDeadline(time.Now().Add(helloWithin))
	_, frame, err := conn.ReadMessage()
	if err != nil {
		l.close()
		return nil, errors.New("the socket said no hello")
	}
	var e envelope
	if json.Unmarshal(frame, &e) != nil || e.Type != "hello" {
		l.close()
		switch {
		case e.Type == "disconnect" && e.Reason == "link_disabled":
			return nil, &Fatal{e.Reason, mend(e.Reason)}
		case e.Type == "disconnect":
			return nil, fmt.Errorf("the socket was refused: %s", e.Reason)
		}
		return nil, errors.New("the socket said no hello")
	}
	return l, nil
}

// connected and parted keep the state for Health.
func (s *Slack) connected(l *link) {
	s.mu.Lock()
	defer s.mu.Unlock()
	if !s.state.Since.IsZero() {
		s.state.Reconnects++
	}
	s.state.Connected, s.state.Since, s.state.LastFrame = true, s.opt.Now(), s.opt.Now()
	s.opt.Log.Info("connected to Slack", "reconnects", s.state.Reconnects)
}

func (s *Slack) parted(reason string, lost bool) {
	s.mu.Lock()
	defer s.mu.Unlock()
	s.state.Connected, s.state.LastReason = !lost, reason
	s.opt.Log.Info("the connection to Slack ends", "reason", reason)
}

// read reads a socket until it ends: it hands envelopes on and does nothing
// that could keep it from the next frame.
func (s *Slack) read(ctx context.Context, l *link, endings chan<- ending) {
	stop := context.AfterFunc(ctx, l.close)
	defer stop()
	defer l.close()
	alive := func() {
		_ = l.conn.SetReadDeadline(time.Now().Add(s.opt.Silence))
		s.mu.Lock()
		s.state.LastFrame = s.opt.Now()
		s.mu.Unlock()
	}
	l.conn.SetPongHandler(func(string) error { alive(); return nil })
	answer := l.conn.PingHandler()
	l.conn.SetPingHandler(func(data string) error { alive(); return answer(data) })
	alive()
	done := make(chan struct{})
	defer close(done)
	go func() { // our own pings find a peer that is gone without a word
		t := time.NewTicker(s.opt.Ping)
		defer t.Stop()
		for {
			select {
			case <-done:
				return
			case <-t.C:
				_ = l.conn.WriteControl(websocket.PingMessage, nil, time.Now().Add(2*time.Second))
			}
		}
	}()
	for {
		_, frame, err := l.conn.ReadMessage()
		if err != nil {
			select {
			case endings <- ending{l, ""}:
			case <-ctx.Done():
			}
			return
		}
		alive()
		if reason := s.frame(ctx, l, frame); reason != "" {
			select { // what is in flight is still read meanwhile
			case endings <- ending{l, reason}:
			default:
			}
		}
	}
}

// frame hands one frame on, and returns the reason of a disconnect.
func (s *Slack) frame(ctx context.Context, l *link, raw []byte) string {
	var e envelope
	if err := json.Unmarshal(raw, &e); err != nil {
		s.seen(Refused, "malformed frame")
		var id struct {
			ID string `json:"envelope_id"`
		}
		_ = json.Unmarshal(raw, &id) // an id may have been read all the same
		l.ack(id.ID, nil)
		return ""
	}
	switch e.Type {
	case "hello":
	case "disconnect":
		return orElse(e.Reason, "disconnect")
	case "events_api":
		select {
		case s.events <- job{e, l}:
		default:
			// Too far behind: not acknowledged, so it comes again.
			s.opt.Log.Error("messages wait for the disk; some will come again from Slack")
		}
	case "interactive", "slash_commands":
		select {
		case s.hands <- struct{}{}:
			s.tasks.Go(func() {
				defer func() { <-s.hands }()
				s.interact(ctx, e, l)
			})
		default:
			s.opt.Log.Error("too many interactions at once; one was dropped")
		}
	default:
		s.seen(Refused, "envelope of type "+e.Type)
		l.ack(e.ID, nil)
	}
	return ""
}

func orElse(s, other string) string {
	if s == "" {
		return other
	}
	return s
}

// work brings envelopes to the desk, one after the other, and acknowledges
// each once it is on the disk.
func (s *Slack) work(ctx context.Context) {
	for {
		select {
		case <-ctx.Done():
			return
		case j := <-s.events:
			a := s.decode(j.env.Payload)
			if err := s.deal(ctx, a); err != nil {
				s.opt.Log.Error("a message was not kept; Slack will send it again", "error", err.Error())
				continue // not acknowledged
			}
			j.link.ack(j.env.ID, nil)
		}
	}
}

// decode reads a payload of the Events API; what makes us fail is refused.
func (s *Slack) decode(raw []byte) (a arrival) {
	defer func() {
		if p := recover(); p != nil {
			a = refused("payload that made us fail")
		}
	}()
	return decodeCallback(raw, s.self())
}

// deal does what an arrival asks for. When it returns nil the arrival may be
// acknowledged.
func (s *Slack) deal(ctx context.Context, a arrival) error {
	if err := s.take(ctx, a); err != nil {
		return err
	}
	if a.verdict != Taken {
		return nil
	}
	s.afterwards(a)
	return nil
}

package practice

import (
	"encoding/json"
	"net/http"
	"slices"
	"sync"
	"time"

	"github.com/gorilla/websocket"
)

// maxAck is where an acknowledgement frame becomes too long and the socket is
// closed with 1009 (slack.com closes at 20,480 bytes; reported).
const maxAck = 20480

// maxSockets an app may have open at once (apis/events-api/using-socket-mode).
const maxSockets = 10

// socket is an open Socket Mode connection.
type socket struct {
	w    *Workspace
	app  *app
	conn *websocket.Conn
	out  chan []byte
	gone chan struct{}
	once sync.Once
}

// send hands a frame to the next open socket in turn, and reports whether one
// took it. Caller holds mu.
func (a *app) send(frame []byte) bool {
	for range a.sockets {
		s := a.sockets[a.next%len(a.sockets)]
		a.next++
		select {
		case <-s.gone:
		case s.out <- frame:
			return true
		default: // its queue is full
		}
	}
	return false
}

// upgrader takes any Origin: clients name the platform's, and the ticket in
// the address is the proof of who they are.
var upgrader = websocket.Upgrader{CheckOrigin: func(*http.Request) bool { return true }}

// serveSocket is the address that apps.connections.open gave out.
func (w *Workspace) serveSocket(rw http.ResponseWriter, r *http.Request) {
	ticket := r.FormValue("ticket")
	w.mu.Lock()
	var a *app
	for _, x := range w.apps {
		if x.tickets[ticket] {
			a = x
			delete(x.tickets, ticket) // one use each
		}
	}
	w.mu.Unlock()
	if a == nil {
		http.Error(rw, "this address has been used or was never given out: call apps.connections.open", http.StatusNotFound)
		return
	}
	conn, err := upgrader.Upgrade(rw, r, nil)
	if err != nil {
		return // Upgrade has answered
	}
	s := &socket{w: w, app: a, conn: conn, out: make(chan []byte, 1000), gone: make(chan struct{})}
	lives := 5 * time.Hour
	if r.FormValue("debug_reconnects") == "true" {
		lives = 360 * time.Second
	}
	w.mu.Lock()
	refuse := ""
	switch {
	case w.closed:
		refuse = "refresh_requested"
	case a.off:
		refuse = "link_disabled"
	case len(a.sockets) >= maxSockets:
		refuse = "too_many_websockets"
	default:
		a.sockets = append(a.sockets, s)
		a.joined = true
		w.wg.Add(1) // the writer, ended by Close
	}
	n := len(a.sockets)
	w.mu.Unlock()
	if refuse != "" {
		_ = conn.WriteMessage(websocket.TextMessage, disconnectFrame(refuse))
		s.cut()
		return
	}
	hello, _ := json.Marshal(map[string]any{"type": "hello", "num_connections": n,
		"connection_info": map[string]any{"app_id": a.ID},
		"debug_info":      map[string]any{"host": "practice", "build_number": 1, "approximate_connection_time": int(lives.Seconds())}})
	s.out <- hello
	go s.write(lives)
	w.mu.Lock()
	w.changed()
	w.mu.Unlock()
	w.poke()
	s.read()
}

func disconnectFrame(reason string) []byte {
	b, _ := json.Marshal(map[string]any{"type": "disconnect", "reason": reason, "debug_info": map[string]any{"host": "practice"}})
	return b
}

// write is the only writer of data frames: payloads in order, pings between.
func (s *socket) write(lives time.Duration) {
	defer s.w.wg.Done()
	defer s.cut()
	ping := time.NewTicker(s.w.opts.PingEvery)
	defer ping.Stop()
	end := time.NewTimer(lives)
	defer end.Stop()
	for {
		select {
		case <-s.gone:
			return
		case f := <-s.out:
			_ = s.conn.SetWriteDeadline(time.Now().Add(10 * time.Second))
			if s.conn.WriteMessage(websocket.TextMessage, f) != nil {
				return
			}
		case <-ping.C:
			if s.conn.WriteControl(websocket.PingMessage, []byte("practice"), time.Now().Add(5*time.Second)) != nil {
				return
			}
		case <-end.C:
			s.leave("refresh_requested", 10*time.Second)
		}
	}
}

// read takes acknowledgements until the other side closes. The close
// handshake is answered by the library; then TCP is closed at once, which the
// official Node client waits for.
func (s *socket) read() {
	defer s.cut()
	s.conn.SetReadLimit(maxAck - 1)
	silent := 4 * s.w.opts.PingEvery
	alive := func(string) error { return s.conn.SetReadDeadline(time.Now().Add(silent)) }
	s.conn.SetPongHandler(alive)
	answerPing := s.conn.PingHandler()
	s.conn.SetPingHandler(func(data string) error {
		_ = alive("")
		return answerPing(data)
	})
	_ = alive("")
	for {
		_, b, err := s.conn.ReadMessage()
		if err != nil {
			return
		}
		_ = alive("")
		var ack struct {
			EnvelopeID string          `json:"envelope_id"`
			Payload    json.RawMessage `json:"payload"`
		}
		if json.Unmarshal(b, &ack) == nil && ack.EnvelopeID != "" {
			s.w.acknowledged(s.app, ack.EnvelopeID, ack.Payload)
		}
	}
}

// cut closes TCP with no handshake.
func (s *socket) cut() {
	s.once.Do(func() {
		close(s.gone)
		_ = s.conn.Close()
		s.w.mu.Lock()
		s.app.sockets = slices.DeleteFunc(s.app.sockets, func(x *socket) bool { return x == s })
		s.w.changed()
		s.w.mu.Unlock()
	})
}

// leave announces the end of the socket with a reason and closes it after the
// grace if the client has not.
func (s *socket) leave(reason string, grace time.Duration) {
	select {
	case s.out <- disconnectFrame(reason):
	default:
	}
	time.AfterFunc(grace, func() {
		msg := websocket.FormatCloseMessage(websocket.CloseNormalClosure, reason)
		_ = s.conn.WriteControl(websocket.CloseMessage, msg, time.Now().Add(time.Second))
		time.AfterFunc(time.Second, s.cut)
	})
}

// RefreshSockets tells every socket of the app that it will be closed, with
// the reason "warning" or "refresh_requested", and closes it after the grace
// unless the client is quicker. It returns how many sockets were told.
func (w *Workspace) RefreshSockets(appID, reason string, grace time.Duration) int {
	socks := w.socketsOf(appID)
	for _, s := range socks {
		s.leave(reason, grace)
	}
	return len(socks)
}

// DropSockets closes every socket of the app with no word, as a broken
// network does, and returns how many there were.
func (w *Workspace) DropSockets(appID string) int {
	socks := w.socketsOf(appID)
	for _, s := range socks {
		s.cut()
	}
	return len(socks)
}

// DisableLink switches Socket Mode off for the app: its sockets are told
// link_disabled and closed, new ones too. EnableLink switches it on again.
func (w *Workspace) DisableLink(appID string) {
	w.mu.Lock()
	if a := w.app(appID); a != nil {
		a.off = true
	}
	w.changed()
	w.mu.Unlock()
	for _, s := range w.socketsOf(appID) {
		s.leave("link_disabled", 100*time.Millisecond)
	}
}

// EnableLink ends DisableLink.
func (w *Workspace) EnableLink(appID string) {
	w.mu.Lock()
	defer w.mu.Unlock()
	if a := w.app(appID); a != nil {
		a.off = false
	}
	w.changed()
}

func (w *Workspace) socketsOf(appID string) []*socket {
	w.mu.Lock()
	defer w.mu.Unlock()
	if a := w.app(appID); a != nil {
		return slices.Clone(a.sockets)
	}
	return nil
}

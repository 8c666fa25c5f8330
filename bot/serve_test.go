package main

import (
	"bytes"
	"context"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"log/slog"
	"net"
	"net/http"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"sync"
	"syscall"
	"testing"
	"time"

	"github.com/prometheus/client_golang/prometheus"
	"github.com/prometheus/client_golang/prometheus/testutil/promlint"

	"lazyhand/bot/desk"
	"lazyhand/config"
	"lazyhand/store"
)

// room is a chat platform of one direct channel, in memory.
type room struct {
	in    chan desk.Message
	taken chan error
	said  chan desk.Post
	slow  time.Duration // a post takes this long

	mu        sync.Mutex
	connected bool
	refuse    error
	n         int
}

func newRoom() *room {
	return &room{in: make(chan desk.Message), taken: make(chan error, 10), said: make(chan desk.Post, 100), connected: true}
}

func (r *room) Run(ctx context.Context, take func(context.Context, desk.Message) error) error {
	for {
		select {
		case <-ctx.Done():
			return nil
		case m := <-r.in:
			if m.Text == "fatal" {
				return errors.New("the token was revoked")
			}
			r.taken <- take(ctx, m)
		}
	}
}

func (r *room) Connected() (bool, string) {
	r.mu.Lock()
	defer r.mu.Unlock()
	return r.connected, "in memory"
}

func (r *room) Post(ctx context.Context, p desk.Post) (string, error) {
	r.mu.Lock()
	r.n++
	n, refuse := r.n, r.refuse
	r.mu.Unlock()
	select {
	case <-ctx.Done():
		return "", ctx.Err()
	case <-time.After(r.slow):
	}
	if refuse != nil {
		return "", refuse
	}
	r.said <- p
	return fmt.Sprintf("%d.0", n), nil
}

func (r *room) Find(context.Context, desk.Post) (string, bool, error) { return "", false, nil }

// hear waits for the next thing that is said.
func (r *room) hear(t *testing.T) string {
	t.Helper()
	select {
	case p := <-r.said:
		return p.Body.Text()
	case <-time.After(10 * time.Second):
		t.Fatal("nothing was said")
		return ""
	}
}

func (r *room) tell(t *testing.T, n int, text string) {
	t.Helper()
	at := time.Now()
	ts := fmt.Sprintf("%d.%06d", at.Unix(), n)
	r.in <- desk.Message{Key: "D1/" + ts, Kind: store.Said, Channel: "D1", Direct: true, TS: ts, Author: "U1", At: at, Text: text}
	if err := <-r.taken; err != nil {
		t.Fatal(err)
	}
}

// running is a bot that serves a room.
type running struct {
	*room
	dir, address string
	log          *lockedBuffer
	stop         func() error // waits for the end
}

type lockedBuffer struct {
	mu sync.Mutex
	b  bytes.Buffer
}

func (l *lockedBuffer) Write(p []byte) (int, error) {
	l.mu.Lock()
	defer l.mu.Unlock()
	return l.b.Write(p)
}

func (l *lockedBuffer) String() string {
	l.mu.Lock()
	defer l.mu.Unlock()
	return l.b.String()
}

// until waits for the log to hold text.
func (l *lockedBuffer) until(t *testing.T, text string) {
	t.Helper()
	for range 1000 {
		if strings.Contains(l.String(), text) {
			return
		}
		time.Sleep(10 * time.Millisecond)
	}
	t.Fatalf("the log never says %q:\n%s", text, l)
}

// serving starts a bot with a configuration.
func serving(t *testing.T, text string) *running {
	t.Helper()
	r := &running{room: newRoom(), dir: home(t), log: &lockedBuffer{}}
	ln, err := net.Listen("tcp", "127.0.0.1:0")
	if err != nil {
		t.Fatal(err)
	}
	r.address = ln.Addr().String()
	ln.Close()
	file := filepath.Join(r.dir, "shop.yaml")
	if err := os.WriteFile(file, []byte(text), 0o600); err != nil {
		t.Fatal(err)
	}
	p := &program{out: io.Discard, errOut: r.log, now: time.Now, configFile: file, dbFile: filepath.Join(r.dir, "shop.db"), set: []string{"health.listen=" + r.address}}
	c, err := p.settings()
	if err != nil {
		t.Fatal(err)
	}
	ctx, cancel := context.WithCancel(t.Context())
	done := make(chan error, 1)
	go func() {
		done <- p.serve(ctx, c, func(config.Config, *slog.Logger, func() *desk.Desk) (platform, error) { return r.room, nil })
	}()
	r.stop = func() error { cancel(); return <-done }
	t.Cleanup(cancel)
	r.log.until(t, `"running"`)
	return r
}

func (r *running) get(t *testing.T, path string) (int, string) {
	t.Helper()
	resp, err := http.Get("http://" + r.address + path)
	if err != nil {
		t.Fatal(err)
	}
	defer resp.Body.Close()
	body, err := io.ReadAll(resp.Body)
	if err != nil {
		t.Fatal(err)
	}
	return resp.StatusCode, string(body)
}

const report = "92 rear tap, heater idle, 4711 Hidden Hollow Ln"

func TestTheServiceAnswersAndTellsOfItsHealthWithoutAWordOfWhatWasSaid(t *testing.T) {
	r := serving(t, "shop: {name: Example Plumbing}\n")
	r.tell(t, 1, report)
	if got := r.hear(t); !strings.Contains(got, "92") {
		t.Errorf("said %q", got)
	}
	if code, body := r.get(t, "/healthz"); code != 200 || !strings.Contains(body, `"ok":true`) {
		t.Errorf("/healthz: %d %s", code, body)
	}
	if code, body := r.get(t, "/readyz"); code != 200 {
		t.Errorf("/readyz: %d %s", code, body)
	}
	r.mu.Lock()
	r.connected = false
	r.refuse = &desk.Refusal{Why: "channel_not_found", Final: true}
	r.mu.Unlock()
	if code, body := r.get(t, "/readyz"); code != 503 || !strings.Contains(body, "chat: in memory") {
		t.Errorf("/readyz without a connection: %d %s", code, body)
	}
	r.tell(t, 2, report)
	var metrics string
	measures := []string{`lazyhand_messages{outcome="reported"} 2`, `lazyhand_reply_seconds_count 1`, `lazyhand_posts{state="dead"} 1`,
		`lazyhand_chat_connected 0`, `lazyhand_chat_errors_total{kind="refused"} 1`, `lazyhand_job_late_seconds{job="follow_ups"} 0`, `go_goroutines `, `lazyhand_record_bytes `}
	missing := func(line string) bool { return !strings.Contains(metrics, "\n"+line) }
	for range 400 { // the refusal is counted a moment before the post is given up
		if _, metrics = r.get(t, "/metrics"); !slices.ContainsFunc(measures, missing) {
			break
		}
		time.Sleep(20 * time.Millisecond)
	}
	for _, line := range measures {
		if missing(line) {
			t.Errorf("no measure %s in\n%s", line, metrics)
		}
	}
	if err := r.stop(); err != nil {
		t.Error(err)
	}
	for what, text := range map[string]string{"log": r.log.String(), "metrics": metrics} {
		if strings.Contains(text, "Hidden") || strings.Contains(text, "rear tap") {
			t.Errorf("the %s holds what was said:\n%s", what, text)
		}
	}
	for line := range strings.Lines(r.log.String()) {
		if !json.Valid([]byte(line)) {
			t.Errorf("a line of the log is no JSON: %s", line)
		}
	}
}

func TestAStopFinishesWhatIsUnderWay(t *testing.T) {
	r := serving(t, "")
	r.slow = time.Second
	r.tell(t, 1, report)
	time.Sleep(200 * time.Millisecond) // the reply is on its way
	start := time.Now()
	if err := r.stop(); err != nil {
		t.Error(err)
	}
	if took := time.Since(start); took > 10*time.Second {
		t.Errorf("it took %v to stop", took)
	}
	r.hear(t)
	db, err := store.Open(t.Context(), filepath.Join(r.dir, "shop.db")) // the lock is free
	if err != nil {
		t.Fatal(err)
	}
	defer db.Close()
	err = db.Read(t.Context(), func(tx *store.Tx) error {
		p, _, err := tx.PostByKey("reply:1")
		if err == nil && p.State != "sent" {
			t.Errorf("the reply is %s", p.State)
		}
		return err
	})
	if err != nil {
		t.Error(err)
	}
}

func TestAPlatformThatCannotGoOnEndsTheService(t *testing.T) {
	r := serving(t, "")
	r.in <- desk.Message{Text: "fatal"}
	done := make(chan error, 1)
	go func() { time.Sleep(5 * time.Second); done <- nil }()
	go func() { r.log.until(t, `"stopped"`); done <- nil }()
	<-done
	if err := r.stop(); err == nil || !strings.Contains(err.Error(), "chat: the token was revoked") {
		t.Errorf("ended with %v", err)
	}
}

func TestSettingsAreTakenUpOnSIGHUP(t *testing.T) {
	r := serving(t, "shop: {language: en}\n")
	write := func(text string) {
		t.Helper()
		if err := os.WriteFile(filepath.Join(r.dir, "shop.yaml"), []byte(text), 0o600); err != nil {
			t.Fatal(err)
		}
		if err := syscall.Kill(os.Getpid(), syscall.SIGHUP); err != nil {
			t.Fatal(err)
		}
	}
	r.tell(t, 1, report)
	english := r.hear(t)
	write("shop: {language: xx}\n")
	r.log.until(t, `line 1: shop.language: \"xx\" is not known`)
	write("shop: {language: es, time_zone: America/Chicago}\n")
	r.log.until(t, `"msg":"restart needed","keys":["shop.time_zone"]`)
	r.log.until(t, `"msg":"settings taken up","keys":["shop.language"]`)
	r.tell(t, 2, "90 rear tap, heater idle, 4712 Hidden Hollow Ln")
	if spanish := r.hear(t); spanish == english || !strings.Contains(spanish, "psi") {
		t.Errorf("after the reload it says %q", spanish)
	}
	if err := r.stop(); err != nil {
		t.Error(err)
	}
}

func TestOneRecordHasOneBot(t *testing.T) {
	r := serving(t, "")
	_, errOut, code := lazyhand(t, "", "--db", filepath.Join(r.dir, "shop.db"))
	if code != 1 || !strings.Contains(errOut, "another lazyhand is running") || strings.Count(errOut, "\n") != 1 {
		t.Errorf("code %d: %s", code, errOut)
	}
	if err := r.stop(); err != nil {
		t.Error(err)
	}
}

func TestTheServiceManagerHearsOfStartAndStop(t *testing.T) {
	socket := filepath.Join(t.TempDir(), "notify")
	conn, err := net.ListenUnixgram("unixgram", &net.UnixAddr{Name: socket, Net: "unixgram"})
	if err != nil {
		t.Fatal(err)
	}
	defer conn.Close()
	t.Setenv("NOTIFY_SOCKET", socket)
	t.Setenv("WATCHDOG_USEC", "200000")
	r := serving(t, "")
	time.Sleep(300 * time.Millisecond)
	if err := r.stop(); err != nil {
		t.Error(err)
	}
	var heard []string
	buf := make([]byte, 1000)
	conn.SetReadDeadline(time.Now().Add(time.Second))
	for {
		n, err := conn.Read(buf)
		if err != nil {
			break
		}
		heard = append(heard, strings.Fields(string(buf[:n]))...)
	}
	all := strings.Join(heard, " ")
	for _, state := range []string{"READY=1", "WATCHDOG=1", "STOPPING=1"} {
		if !strings.Contains(all, state) {
			t.Errorf("heard %s, without %s", all, state)
		}
	}
}

func TestServeSaysWhatSlackNeeds(t *testing.T) {
	home(t)
	if _, errOut, code := lazyhand(t, "", "serve"); code != 1 || !strings.Contains(errOut, "lazyhand init --print") || strings.Count(errOut, "\n") != 1 {
		t.Errorf("code %d: %s", code, errOut)
	}
	t.Setenv("LAZYHAND_SLACK_BOT_TOKEN", "xoxb-hidden")
	if _, errOut, code := lazyhand(t, "", "serve"); code != 1 || !strings.Contains(errOut, "LAZYHAND_SLACK_APP_TOKEN") {
		t.Errorf("code %d: %s", code, errOut)
	}
}

func TestTheHealthAddressTakesNoAbuse(t *testing.T) {
	r := serving(t, "")
	resp, err := http.Post("http://"+r.address+"/healthz", "text/plain", strings.NewReader("x"))
	if err != nil {
		t.Fatal(err)
	}
	resp.Body.Close()
	if resp.StatusCode != http.StatusMethodNotAllowed {
		t.Errorf("a POST is answered with %d", resp.StatusCode)
	}
	req, err := http.NewRequest("GET", "http://"+r.address+"/healthz", nil)
	if err != nil {
		t.Fatal(err)
	}
	req.Header.Set("X-Long", strings.Repeat("x", 64<<10))
	if resp, err = http.DefaultClient.Do(req); err == nil {
		resp.Body.Close()
		if resp.StatusCode != http.StatusRequestHeaderFieldsTooLarge {
			t.Errorf("a header of 64 KB is answered with %d", resp.StatusCode)
		}
	}
	slow, err := net.Dial("tcp", r.address)
	if err != nil {
		t.Fatal(err)
	}
	defer slow.Close()
	fmt.Fprint(slow, "GET /healthz HTTP/1.1\r\nHost: ") // and never the rest
	slow.SetReadDeadline(time.Now().Add(5 * time.Second))
	if _, err := io.ReadAll(slow); err != nil {
		t.Errorf("a request that never comes is waited for: %v", err)
	}
	if code, _ := r.get(t, "/../shop.db"); code != http.StatusNotFound {
		t.Errorf("a path out of the house is answered with %d", code)
	}
	if err := r.stop(); err != nil {
		t.Error(err)
	}
}

func TestAStuckLoopShows(t *testing.T) {
	p := newPulse()
	start := time.Date(2026, 6, 15, 9, 0, 0, 0, time.UTC)
	p.beat("outbox", start)
	if s := p.stuck(start.Add(time.Minute)); len(s) > 0 {
		t.Errorf("after a minute: %v", s)
	}
	p.beat("clockwork", start) // may be at the nightly look
	if s := p.stuck(start.Add(3 * time.Minute)); len(s) != 1 || !strings.Contains(s[0], "outbox has been silent for 3m0s") {
		t.Errorf("after three minutes: %v", s)
	}
}

func TestMeasuresAreNamedAsPrometheusAsks(t *testing.T) {
	db, err := store.Open(t.Context(), filepath.Join(t.TempDir(), "shop.db"))
	if err != nil {
		t.Fatal(err)
	}
	defer db.Close()
	h := &health{db: db, pulse: newPulse(), zone: time.UTC, now: time.Now,
		late: func(context.Context, time.Time) (map[string]time.Duration, error) {
			return map[string]time.Duration{"x": 0}, nil
		}}
	reg := prometheus.NewPedanticRegistry()
	reg.MustRegister(h, h.pulse.chatErrors)
	families, err := reg.Gather()
	if err != nil {
		t.Fatal(err)
	}
	problems, err := promlint.NewWithMetricFamilies(families).Lint()
	if err != nil {
		t.Fatal(err)
	}
	for _, p := range problems {
		t.Errorf("%s: %s", p.Metric, p.Text)
	}
}

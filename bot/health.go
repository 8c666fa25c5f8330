package main

import (
	"context"
	"encoding/json"
	"errors"
	"fmt"
	"net"
	"net/http"
	"sync"
	"time"

	"github.com/prometheus/client_golang/prometheus"
	"github.com/prometheus/client_golang/prometheus/collectors"
	"github.com/prometheus/client_golang/prometheus/promhttp"

	"lazyhand/assess"
	"lazyhand/store"
)

// pulse is what the running program knows of its own health: when each of its
// loops last went round, and how the chat platform stands.
type pulse struct {
	mu        sync.Mutex
	beats     map[string]time.Time
	connected func() (ok bool, says string) // nil: no platform yet

	chatErrors *prometheus.CounterVec
}

// silence is how long a loop may be silent before the program counts as stuck.
// The clockwork may be at the nightly look over a million houses.
func silence(loop string) time.Duration {
	if loop == "clockwork" {
		return 15 * time.Minute
	}
	return 2 * time.Minute
}

func newPulse() *pulse {
	return &pulse{beats: map[string]time.Time{}, chatErrors: prometheus.NewCounterVec(prometheus.CounterOpts{
		Name: "lazyhand_chat_errors_total",
		Help: "Posts that the chat platform refused, or whose fate was unknown.",
	}, []string{"kind"})}
}

// beat notes that a loop went round.
func (p *pulse) beat(loop string, now time.Time) {
	p.mu.Lock()
	defer p.mu.Unlock()
	p.beats[loop] = now
}

// stuck names the loops that have been silent too long.
func (p *pulse) stuck(now time.Time) []string {
	p.mu.Lock()
	defer p.mu.Unlock()
	var names []string
	for name, at := range p.beats {
		if now.Sub(at) > silence(name) {
			names = append(names, fmt.Sprintf("%s has been silent for %s", name, now.Sub(at).Round(time.Second)))
		}
	}
	return names
}

// platform tells how the chat platform stands.
func (p *pulse) platform() (ok bool, says string) {
	p.mu.Lock()
	connected := p.connected
	p.mu.Unlock()
	if connected == nil {
		return false, "not connected yet"
	}
	return connected()
}

// health answers questions about the program's own state. It tells counts and
// times, never what people said or where.
type health struct {
	db    *store.DB
	pulse *pulse
	zone  *time.Location
	late  func(ctx context.Context, now time.Time) (map[string]time.Duration, error) // jobs past their slot
	now   func() time.Time
}

// handler serves /healthz, /readyz and /metrics.
func (h *health) handler() http.Handler {
	reg := prometheus.NewRegistry()
	b := thisBuild()
	made := prometheus.NewGauge(prometheus.GaugeOpts{Name: "lazyhand_build_info", Help: "The build, in its labels.",
		ConstLabels: prometheus.Labels{"version": b.version, "commit": b.commit}})
	made.Set(1)
	reg.MustRegister(collectors.NewGoCollector(), collectors.NewProcessCollector(collectors.ProcessCollectorOpts{}), made, h.pulse.chatErrors, h)
	mux := http.NewServeMux()
	mux.HandleFunc("GET /healthz", func(w http.ResponseWriter, _ *http.Request) {
		h.answer(w, h.pulse.stuck(h.now()))
	})
	mux.HandleFunc("GET /readyz", func(w http.ResponseWriter, r *http.Request) {
		h.answer(w, h.notReady(r.Context()))
	})
	mux.Handle("GET /metrics", promhttp.HandlerFor(reg, promhttp.HandlerOpts{MaxRequestsInFlight: 4, Timeout: 10 * time.Second}))
	return mux
}

func (h *health) answer(w http.ResponseWriter, faults []string) {
	w.Header().Set("Content-Type", "application/json")
	w.Header().Set("Cache-Control", "no-store")
	if len(faults) > 0 {
		w.WriteHeader(http.StatusServiceUnavailable)
	}
	json.NewEncoder(w).Encode(map[string]any{"ok": len(faults) == 0, "faults": faults}) // the asker may have gone
}

// notReady says why messages cannot be taken and answered right now.
func (h *health) notReady(ctx context.Context) []string {
	faults := h.pulse.stuck(h.now())
	ctx, cancel := context.WithTimeout(ctx, 3*time.Second)
	defer cancel()
	if err := h.db.Read(ctx, func(tx *store.Tx) error { _, _, err := tx.LastSlot(""); return err }); err != nil {
		faults = append(faults, "the record cannot be read")
	}
	if ok, says := h.pulse.platform(); !ok {
		faults = append(faults, "chat: "+says)
	}
	return faults
}

// server is an HTTP server that a slow or greedy client cannot tie up.
func server(h http.Handler) *http.Server {
	return &http.Server{Handler: http.MaxBytesHandler(h, 1<<16), ReadHeaderTimeout: 2 * time.Second, ReadTimeout: 5 * time.Second,
		WriteTimeout: 30 * time.Second, IdleTimeout: time.Minute, MaxHeaderBytes: 8 << 10}
}

// serveOn serves h on ln until ctx ends.
func serveOn(ctx context.Context, ln net.Listener, h http.Handler) error {
	s := server(h)
	stop := context.AfterFunc(ctx, func() {
		ctx, cancel := context.WithTimeout(context.WithoutCancel(ctx), 2*time.Second)
		defer cancel()
		if s.Shutdown(ctx) != nil {
			s.Close()
		}
	})
	defer stop()
	if err := s.Serve(ln); !errors.Is(err, http.ErrServerClosed) {
		return fmt.Errorf("the health address: %w", err)
	}
	return nil
}

// What the record itself tells, read anew at each scrape: so the counts are
// right across restarts.
var (
	messagesDesc = prometheus.NewDesc("lazyhand_messages", "Messages kept, by what became of them.", []string{"outcome"}, nil)
	askedDesc    = prometheus.NewDesc("lazyhand_asked_back", "Questions that the bot had to ask back.", nil, nil)
	correctDesc  = prometheus.NewDesc("lazyhand_corrected", "Messages that a person put right.", nil, nil)
	postsDesc    = prometheus.NewDesc("lazyhand_posts", "Posts that have not left, by state.", []string{"state"}, nil)
	oldestDesc   = prometheus.NewDesc("lazyhand_oldest_post_seconds", "How long the oldest post that could leave has been waiting.", nil, nil)
	replyDesc    = prometheus.NewDesc("lazyhand_reply_seconds", "Time from a message to its reply.", nil, nil)
	overdueDesc  = prometheus.NewDesc("lazyhand_follow_ups_overdue", "Follow-ups whose day has passed.", nil, nil)
	lateDesc     = prometheus.NewDesc("lazyhand_job_late_seconds", "How long a job is past its time.", []string{"job"}, nil)
	bytesDesc    = prometheus.NewDesc("lazyhand_record_bytes", "Size of the record.", nil, nil)
	chatDesc     = prometheus.NewDesc("lazyhand_chat_connected", "1 while the chat platform is connected.", nil, nil)

	replyBounds = []time.Duration{250 * time.Millisecond, 500 * time.Millisecond, time.Second, 2 * time.Second, 5 * time.Second,
		15 * time.Second, time.Minute, 5 * time.Minute, time.Hour}
)

// Describe names the measures (prometheus.Collector).
func (h *health) Describe(ch chan<- *prometheus.Desc) {
	for _, d := range []*prometheus.Desc{messagesDesc, askedDesc, correctDesc, postsDesc, oldestDesc, replyDesc, overdueDesc, lateDesc, bytesDesc, chatDesc} {
		ch <- d
	}
}

// Collect reads the measures (prometheus.Collector).
func (h *health) Collect(ch chan<- prometheus.Metric) {
	ctx, cancel := context.WithTimeout(context.Background(), 5*time.Second)
	defer cancel()
	now := h.now()
	gauge := func(d *prometheus.Desc, v float64, labels ...string) {
		ch <- prometheus.MustNewConstMetric(d, prometheus.GaugeValue, v, labels...)
	}
	connected := 0.0
	if ok, _ := h.pulse.platform(); ok {
		connected = 1
	}
	gauge(chatDesc, connected)
	s, err := h.db.Status(ctx, assess.DateOf(now.In(h.zone)))
	if err != nil {
		ch <- prometheus.NewInvalidMetric(messagesDesc, err)
		return
	}
	for _, state := range []store.MessageState{store.Waiting, store.SetAside, store.Replaced, store.Retracted} {
		gauge(messagesDesc, float64(s.Messages[state]), string(state))
	}
	gauge(messagesDesc, float64(s.Reported), "reported")
	gauge(messagesDesc, float64(max(0, s.Messages[store.Taken]-s.Reported)), "other")
	gauge(askedDesc, float64(s.Asked))
	gauge(correctDesc, float64(s.Corrected))
	gauge(postsDesc, float64(s.Ready), "ready")
	gauge(postsDesc, float64(s.Sending), "sending")
	gauge(postsDesc, float64(s.Dead), "dead")
	waited := 0.0
	if !s.OldestOpen.IsZero() {
		waited = max(0, now.Sub(s.OldestOpen).Seconds())
	}
	gauge(oldestDesc, waited)
	gauge(overdueDesc, float64(s.Overdue))
	gauge(bytesDesc, float64(s.Bytes))
	if late, err := h.late(ctx, now); err != nil {
		ch <- prometheus.NewInvalidMetric(lateDesc, err)
	} else {
		for job, by := range late {
			gauge(lateDesc, by.Seconds(), job)
		}
	}
	within, all, sum, err := h.db.ReplyTimes(ctx, replyBounds)
	if err != nil {
		ch <- prometheus.NewInvalidMetric(replyDesc, err)
		return
	}
	buckets := map[float64]uint64{}
	for i, b := range replyBounds {
		buckets[b.Seconds()] = within[i]
	}
	ch <- prometheus.MustNewConstHistogram(replyDesc, all, sum.Seconds(), buckets)
}

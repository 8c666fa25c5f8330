package practice

import (
	"encoding/json"
	"slices"
	"time"
)

// delivery is a payload on its way to an app.
type delivery struct {
	app      *app
	kind     string // events_api, interactive, slash_commands
	payload  map[string]any
	envelope string
	attempt  int
	reason   string
	due      time.Time // by the workspace's clock
	notUntil time.Time // by the clock underneath, for delays
	lost     time.Time // by the clock underneath: when it counts as not acknowledged; zero: not tried
	ackBy    time.Time // the same by the workspace's clock, which the next pause is counted from
	sent     bool
	answer   chan<- answer // interactions and commands only
}

// answer is what an app made of an interaction.
type answer struct {
	payload json.RawMessage
	err     error
}

// Deliveries counts payloads for an app that are on their way: waiting, or sent and not
// acknowledged.
func (w *Workspace) Deliveries(appID string) int {
	w.mu.Lock()
	defer w.mu.Unlock()
	n := 0
	for _, d := range w.deliver {
		if d.app == w.app(appID) {
			n++
		}
	}
	return n
}

// enqueue lines up a payload, with the faults that are switched on. Caller
// holds mu.
func (w *Workspace) enqueue(d *delivery) {
	base := w.opts.Now()
	d.due = w.now()
	if d.kind == "events_api" {
		if !d.app.joined && d.app.RequestURL == "" {
			return // nobody has ever listened
		}
		if w.faults.Delay > 0 {
			d.notUntil = base.Add(w.faults.Delay)
		}
		first := d.app.held
		d.app.held = nil
		if first != nil && !first.sent && slices.Contains(w.deliver, first) {
			w.deliver = slices.DeleteFunc(w.deliver, func(x *delivery) bool { return x == first })
			first.notUntil = d.notUntil
			w.deliver = append(w.deliver, d, first)
			w.poke()
			return
		}
		if w.faults.OutOfOrder {
			// Held until the next event has gone ahead, or two seconds.
			d.app.held, d.notUntil = d, base.Add(w.faults.Delay+2*time.Second)
		}
		if w.faults.Duplicate != 0 {
			w.faults.Duplicate = less(w.faults.Duplicate)
			twin := *d
			w.deliver = append(w.deliver, &twin)
		}
	}
	w.deliver = append(w.deliver, d)
	w.poke()
}

// poke makes the pump look again.
func (w *Workspace) poke() {
	select {
	case w.wake <- struct{}{}:
	default:
	}
}

// pump sends what is due until the workspace is closed.
func (w *Workspace) pump() {
	defer w.wg.Done()
	timer := time.NewTimer(time.Hour)
	defer timer.Stop()
	for {
		timer.Reset(w.round())
		select {
		case <-w.done:
			return
		case <-w.wake:
		case <-timer.C:
		}
	}
}

// round sends everything that is due and returns the time until the next
// look, at most a second while something is on its way, because the clock may
// be one that does not run by itself.
func (w *Workspace) round() time.Duration {
	w.mu.Lock()
	defer w.mu.Unlock()
	base, now := w.opts.Now(), w.now()
	next := time.Hour
	soon := func(d time.Duration) { next = max(time.Millisecond, min(next, d, time.Second)) }
	keep := w.deliver[:0]
	for _, d := range w.deliver {
		if !d.lost.IsZero() && !base.Before(d.lost) && !w.retry(d) {
			w.changed()
			continue
		}
		if !d.sent {
			switch {
			case d.due.After(now):
				soon(d.due.Sub(now))
			case d.notUntil.After(base):
				soon(d.notUntil.Sub(base))
			default:
				w.try(d, base)
			}
		}
		if !d.lost.IsZero() {
			soon(d.lost.Sub(base))
		}
		keep = append(keep, d)
	}
	clear(w.deliver[len(keep):])
	w.deliver = keep
	return next
}

// try hands a delivery to a socket or the request URL. With neither, it
// waits for a socket as long as for an acknowledgement.
func (w *Workspace) try(d *delivery, base time.Time) {
	if d.lost.IsZero() {
		w.expect(d, base)
	}
	if d.app.RequestURL != "" {
		d.sent = true
		w.expect(d, base)
		w.sendHTTP(d)
		return
	}
	d.envelope = w.uuid()
	frame := map[string]any{"envelope_id": d.envelope, "type": d.kind, "payload": d.payload,
		"accepts_response_payload": d.kind != "events_api"}
	if d.kind == "events_api" {
		frame["retry_attempt"], frame["retry_reason"] = d.attempt, d.reason
	}
	b, err := json.Marshal(frame)
	if err != nil {
		panic("practice: payload is not JSON: " + err.Error())
	}
	if d.app.send(b) {
		d.sent = true
		w.expect(d, base)
	}
}

// expect sets the time by which a delivery must be acknowledged, by both clocks of one
// instant: a clock that is moved while the delivery is on its way must not move one of them.
func (w *Workspace) expect(d *delivery, base time.Time) {
	d.lost = base.Add(w.opts.AckWithin)
	d.ackBy = d.lost.Add(w.shift).In(w.opts.Location)
}

// retry plans the next attempt of an event that was not acknowledged and
// reports false when there is none.
func (w *Workspace) retry(d *delivery) bool {
	if d.answer != nil {
		d.answer <- answer{err: ErrNoAnswer}
		return false
	}
	if d.attempt >= len(w.opts.RetryAfter) {
		return false
	}
	d.due = d.ackBy.Add(w.opts.RetryAfter[d.attempt])
	d.attempt++
	d.reason, d.sent, d.lost, d.notUntil = "timeout", false, time.Time{}, time.Time{}
	return true
}

// acknowledged takes an envelope off the list.
func (w *Workspace) acknowledged(a *app, envelope string, payload json.RawMessage) {
	w.mu.Lock()
	defer w.mu.Unlock()
	if w.faults.IgnoreAcks != 0 {
		w.faults.IgnoreAcks = less(w.faults.IgnoreAcks)
		return
	}
	i := slices.IndexFunc(w.deliver, func(d *delivery) bool { return d.app == a && d.envelope == envelope })
	if i < 0 {
		return
	}
	w.settle(w.deliver[i], answer{payload: payload})
}

// settle ends a delivery. Caller holds mu.
func (w *Workspace) settle(d *delivery, got answer) {
	w.deliver = slices.DeleteFunc(w.deliver, func(x *delivery) bool { return x == d })
	if d.answer != nil {
		d.answer <- got
	}
	w.changed()
}

package practice

import "time"

// Faults are what can go wrong. The numbers count down with each use; a
// negative one stays until it is set to zero.
type Faults struct {
	// Method restricts RateLimit, ServerError, LostAnswer and LostCall to one
	// Web API method, such as "chat.postMessage"; empty: all methods.
	Method string `json:"method"`
	// RateLimit calls are refused with 429 and RetryAfter.
	RateLimit  int           `json:"rate_limit"`
	RetryAfter time.Duration `json:"retry_after"` // whole seconds; default 1 s
	// ServerError calls are answered with 503 and not carried out.
	ServerError int `json:"server_error"`
	// LostAnswer calls are carried out, then the connection is cut.
	LostAnswer int `json:"lost_answer"`
	// LostCall calls are cut off without being carried out: for the client
	// the same as LostAnswer.
	LostCall int `json:"lost_call"`
	// Slow calls wait that long before they are carried out.
	Slow time.Duration `json:"slow"`
	// Duplicate events are sent twice, with the same event_id.
	Duplicate int `json:"duplicate"`
	// Delay holds every event back that long.
	Delay time.Duration `json:"delay"`
	// OutOfOrder sends events in pairs, the second first.
	OutOfOrder bool `json:"out_of_order"`
	// IgnoreAcks acknowledgements are not heard, so that the events come again.
	IgnoreAcks int `json:"ignore_acks"`
	// EchoThreads sends a message_changed with an unchanged text for the
	// parent of every new reply, as the platform sometimes does.
	EchoThreads bool `json:"echo_threads"`
	// SentTwice messages of people arrive as two messages with the same
	// client_msg_id, as when a phone sends again after a bad connection.
	SentTwice int `json:"sent_twice"`
	// HoldRates refuses calls above the platform's rates.
	HoldRates bool `json:"hold_rates"`
}

// Faults are the faults that are on now.
func (w *Workspace) Faults() Faults {
	w.mu.Lock()
	defer w.mu.Unlock()
	return w.faults
}

// SetFaults switches faults on and off; the zero value switches all off.
func (w *Workspace) SetFaults(f Faults) {
	w.mu.Lock()
	w.faults = f
	w.changed()
	w.mu.Unlock()
	w.poke()
}

// less counts a fault down, but not one that stays.
func less(n int) int {
	if n > 0 {
		return n - 1
	}
	return n
}

// bucket is what is left of a rate.
type bucket struct {
	left float64
	at   time.Time
}

// take uses one call of a rate of n in a minute that allows bursts, and
// returns 0 or the time until the next one is allowed.
func (w *Workspace) take(key string, perMinute, burst float64) time.Duration {
	now := w.now()
	b := w.rates[key]
	if b == nil {
		b = &bucket{left: burst, at: now}
		w.rates[key] = b
	}
	b.left = min(burst, b.left+now.Sub(b.at).Minutes()*perMinute)
	b.at = now
	if b.left >= 1 {
		b.left--
		return 0
	}
	wait := time.Duration((1 - b.left) / perMinute * float64(time.Minute))
	return max(time.Second, wait.Round(time.Second))
}

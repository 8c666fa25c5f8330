package store

import "time"

// Heard is the newest message on record of one thread.
type Heard struct {
	Channel, Thread, TS string
	At                  time.Time
}

// LastHeard returns the newest message of every thread on record, the newest
// thread first.
func (tx *Tx) LastHeard() ([]Heard, error) {
	return all(tx, func(scan func(...any) error) (Heard, error) {
		var h Heard
		var at int64
		err := scan(&h.Channel, &h.Thread, &h.TS, &at)
		h.At = fromMillis(at)
		return h, err
	}, `SELECT channel, thread, ts, max(at) FROM message WHERE kind = 'said' GROUP BY channel, thread ORDER BY max(at) DESC, channel, thread`)
}

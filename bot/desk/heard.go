package desk

import (
	"context"
	"time"

	"lazyhand/store"
)

// Heard is how far the bot has listened in one thread.
type Heard struct {
	Channel string
	Thread  string    // TS of its first message
	TS      string    // of the newest message in it that is on record
	At      time.Time // when that was said
}

// Heard returns how far the bot has listened: of each channel the newest
// message on record, and every thread in which somebody wrote since a time.
// What is missing after it is read back from the platform.
func (d *Desk) Heard(ctx context.Context, since time.Time) (channels, threads []Heard, err error) {
	err = d.store.Read(ctx, func(tx *store.Tx) error {
		rows, err := tx.LastHeard()
		if err != nil {
			return err
		}
		newest := map[string]int{}
		for _, r := range rows {
			h := Heard{r.Channel, r.Thread, r.TS, r.At}
			if i, ok := newest[h.Channel]; !ok {
				newest[h.Channel] = len(channels)
				channels = append(channels, h)
			} else if h.At.After(channels[i].At) {
				channels[i] = h
			}
			if !h.At.Before(since) {
				threads = append(threads, h)
			}
		}
		return nil
	})
	return channels, threads, err
}

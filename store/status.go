package store

import (
	"context"
	"fmt"
	"os"
	"time"

	"lazyhand/assess"
)

// Status is how a record stands, in counts: nothing of what people said.
type Status struct {
	Version int   // of the file's tables
	Bytes   int64 // of the file and of what is not yet folded into it

	Messages  map[MessageState]int // by state; with a Reported of their own
	Reported  int                  // messages that told something about a house
	Asked     int                  // questions asked back
	Corrected int                  // messages that a person put right

	Ready, Sending, Dead int       // posts
	OldestOpen           time.Time // since when the oldest open post could have left; zero when none is open

	First   time.Time // when the first message was said; zero when there is none
	Overdue int       // follow-ups due before the day asked about
}

// Status counts the record as of a day.
func (db *DB) Status(ctx context.Context, today assess.Date) (Status, error) {
	s := Status{Messages: map[MessageState]int{}}
	for _, tail := range []string{"", "-wal"} {
		if info, err := os.Stat(db.path + tail); err == nil {
			s.Bytes += info.Size()
		} else if tail == "" {
			return s, fmt.Errorf("look at the record: %w", err)
		}
	}
	err := db.Read(ctx, func(tx *Tx) error {
		if _, err := tx.one([]any{&s.Version}, `PRAGMA user_version`); err != nil {
			return err
		}
		type count struct {
			state string
			n     int
		}
		scan := func(scan func(...any) error) (c count, err error) { err = scan(&c.state, &c.n); return }
		states, err := all(tx, scan, `SELECT state, count(*) FROM message WHERE kind = 'said' GROUP BY state`)
		if err != nil {
			return err
		}
		for _, c := range states {
			s.Messages[MessageState(c.state)] = c.n
		}
		posts, err := all(tx, scan, `SELECT state, count(*) FROM outbox GROUP BY state UNION ALL SELECT 'dead', count(*) FROM outbox_done WHERE state = 'dead'`)
		if err != nil {
			return err
		}
		for _, c := range posts {
			*map[string]*int{"ready": &s.Ready, "sending": &s.Sending, "dead": &s.Dead}[c.state] = c.n
		}
		for _, q := range []struct {
			into  *int
			query string
			args  []any
		}{
			{&s.Reported, `SELECT count(*) FROM report`, nil},
			{&s.Asked, `SELECT count(*) FROM question`, nil},
			{&s.Corrected, `SELECT count(DISTINCT message) FROM correction`, nil},
			{&s.Overdue, `SELECT count(*) FROM follow_up WHERE state = 'open' AND due < ?`, []any{today.String()}},
		} {
			if _, err := tx.one([]any{q.into}, q.query, q.args...); err != nil {
				return err
			}
		}
		var oldest int64
		if _, err := tx.one([]any{&oldest}, `SELECT coalesce(min(after), 0) FROM outbox`); err != nil {
			return err
		}
		if oldest > 0 {
			s.OldestOpen = fromMillis(oldest)
		}
		if _, err := tx.one([]any{&oldest}, `SELECT coalesce(min(at), 0) FROM message`); err != nil {
			return err
		}
		if oldest > 0 {
			s.First = fromMillis(oldest)
		}
		return nil
	})
	if err != nil {
		return s, fmt.Errorf("count the record: %w", err)
	}
	return s, nil
}

// ReplyTimes counts the replies that left, by how long after the message they
// did: of each bound those within it, then all, and the sum of the times.
func (db *DB) ReplyTimes(ctx context.Context, bounds []time.Duration) (within []uint64, all uint64, sum time.Duration, err error) {
	within = make([]uint64, len(bounds))
	err = db.Read(ctx, func(tx *Tx) error {
		const replies = `FROM outbox_done o JOIN message ON o.key = 'reply:' || message.id WHERE o.state = 'sent'`
		for i, b := range bounds {
			if _, err := tx.one([]any{&within[i]}, `SELECT count(*) `+replies+` AND o.since - message.at <= ?`, b.Milliseconds()); err != nil {
				return err
			}
		}
		var ms int64
		_, err := tx.one([]any{&all, &ms}, `SELECT count(*), coalesce(sum(o.since - message.at), 0) `+replies)
		sum = time.Duration(ms) * time.Millisecond
		return err
	})
	return within, all, sum, err
}

// Integrity looks through the whole file and returns what is wrong with it, in
// SQLite's words; nothing when it is sound.
func (db *DB) Integrity(ctx context.Context) ([]string, error) {
	var faults []string
	err := db.Read(ctx, func(tx *Tx) error {
		lines, err := all(tx, func(scan func(...any) error) (s string, err error) { err = scan(&s); return }, `PRAGMA integrity_check(10)`)
		if err != nil {
			return err
		}
		for _, l := range lines {
			if l != "ok" {
				faults = append(faults, l)
			}
		}
		orphans, err := all(tx, func(scan func(...any) error) (s string, err error) {
			var row, n any
			err = scan(&s, &row, &s, &n)
			return "a row refers to one in " + s + " that is not there", err
		}, `PRAGMA foreign_key_check`)
		faults = append(faults, orphans...)
		if err != nil {
			return err
		}
		err = each(tx, func(scan func(...any) error) error {
			var id, at, sum int64
			var key, author, text, links string
			if err := scan(&id, &key, &author, &text, &links, &at, &sum); err != nil {
				return err
			}
			if sum != wordSum(key, author, text, links, at) && len(faults) < 20 {
				faults = append(faults, fmt.Sprintf("message %d is not what was written", id))
			}
			return nil
		}, `SELECT id, key, author, text, links, at, sum FROM message WHERE sum <> 0`)
		if err != nil {
			return err
		}
		var report int64
		if found, err := tx.one([]any{&report}, `SELECT r.message FROM report r LEFT JOIN message m ON m.id = r.message WHERE m.site IS NOT r.site LIMIT 1`); err != nil {
			return err
		} else if found {
			faults = append(faults, fmt.Sprintf("what is kept as the report of message %d is not filed with it", report))
		}
		var lost int64
		if found, err := tx.one([]any{&lost}, `SELECT f.id FROM follow_up f WHERE f.id >> 20 <> f.site + 1048576
			OR NOT EXISTS (SELECT 1 FROM site s WHERE s.id = f.site) OR NOT EXISTS (SELECT 1 FROM message m WHERE m.id = f.source) LIMIT 1`); err != nil {
			return err
		} else if found {
			faults = append(faults, fmt.Sprintf("follow-up %d belongs to a house or a message that is not there", lost))
		}
		return nil
	})
	return faults, err
}

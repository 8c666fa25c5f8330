package store

import (
	"context"
	"errors"
	"fmt"
	"slices"
	"strings"
	"time"

	"lazyhand/assess"
)

// ErrUnknown means that there is nobody, or no house, of that name on record.
var ErrUnknown = errors.New("not on record")

// Forgotten counts what was removed.
type Forgotten struct {
	Houses, Messages, Posts int
}

// ForgetHouse removes a house from the record: its readings, what was said
// about it with the words in the search index, and what we said about it.
// Messages that name it but were filed under no house lose their words. The
// removal itself is noted, without saying of what. Copies made before still
// hold it. reads tells which houses a text names, also where its number is
// spelled out; nil for not known.
func (db *DB) ForgetHouse(ctx context.Context, s assess.Site, now time.Time, reads func(text string) []assess.Site) (Forgotten, error) {
	var out Forgotten
	err := db.remove(ctx, func(tx *Tx) error {
		like, err := tx.SitesLike(s)
		if err != nil {
			return err
		}
		if len(like) == 0 {
			return fmt.Errorf("%s: %w", s.Line, ErrUnknown)
		}
		if len(like) > 1 {
			return fmt.Errorf("%s may be one of %d houses on record: give the whole street line, town and postcode", s.Line, len(like))
		}
		if out, err = tx.forgetHouse(like[0], reads); err != nil {
			return err
		}
		return tx.noteRemoval(now, "house", out.Messages)
	})
	return out, err
}

func (tx *Tx) forgetHouse(site SiteRecord, reads func(text string) []assess.Site) (Forgotten, error) {
	out := Forgotten{}
	names, err := all(tx, func(scan func(...any) error) (s assess.Site, err error) {
		err = scan(&s.Line, &s.Town, &s.Postcode)
		return s, err
	}, `SELECT line, town, postcode FROM site WHERE id IN `+groupOf1, site.ID)
	if err != nil {
		return out, err
	}
	out.Houses = len(names)
	for _, s := range []string{
		`CREATE TEMP TABLE gone_site (id INTEGER PRIMARY KEY)`,
		`CREATE TEMP TABLE gone (id INTEGER PRIMARY KEY)`,
		`CREATE TEMP TABLE gone_alert (id INTEGER PRIMARY KEY)`,
	} {
		if _, err := tx.exec(s); err != nil {
			return out, err
		}
	}
	if _, err := tx.exec(`INSERT INTO gone_site SELECT id FROM site WHERE id IN `+groupOf1, site.ID); err != nil {
		return out, err
	}
	for _, s := range []string{
		`INSERT INTO gone SELECT id FROM message WHERE site IN (SELECT id FROM gone_site)`,
		`INSERT OR IGNORE INTO gone SELECT message FROM report WHERE site IN (SELECT id FROM gone_site)`,
		`INSERT OR IGNORE INTO gone SELECT about FROM message WHERE id IN (SELECT id FROM gone) AND about IS NOT NULL`,
		`INSERT OR IGNORE INTO gone SELECT id FROM message WHERE about IN (SELECT id FROM gone)`,
		`INSERT INTO gone_alert SELECT id FROM alert WHERE site IN (SELECT id FROM gone_site) OR source IN (SELECT id FROM gone) OR opened IN (SELECT id FROM gone)`,
	} {
		if _, err := tx.exec(s); err != nil {
			return out, err
		}
	}
	if out.Posts, err = tx.ofPosts(`DELETE FROM outbox WHERE key IN (SELECT 'reply:' || id FROM gone) OR substr(key, 1, 6) IN ('reply:', 'react:', 'alert:') AND
		(key GLOB 'alert:*' AND CAST(substr(key, 7) AS INTEGER) IN (SELECT id FROM gone_alert) OR key NOT GLOB 'alert:*' AND CAST(substr(key, 7) AS INTEGER) IN (SELECT id FROM gone))`); err != nil {
		return out, err
	}
	for _, s := range []string{
		`DELETE FROM report WHERE (site, message) IN (SELECT site, id FROM message WHERE id IN (SELECT id FROM gone))`,
		`DELETE FROM report WHERE site IN (SELECT id FROM gone_site)`,
		`UPDATE message SET site = NULL WHERE site IN (SELECT id FROM gone_site)`,
		`UPDATE person SET site = NULL WHERE site IN (SELECT id FROM gone_site)`,
		`DELETE FROM equipment WHERE site IN (SELECT id FROM gone_site)`,
		`DELETE FROM question WHERE message IN (SELECT id FROM gone)`,
		`DELETE FROM correction WHERE message IN (SELECT id FROM gone) OR by IN (SELECT id FROM gone)`,
		`DELETE FROM follow_up WHERE site IN (SELECT id FROM gone_site) OR source IN (SELECT id FROM gone) OR opened IN (SELECT id FROM gone)`,
		`UPDATE follow_up SET ended_by = NULL WHERE ended_by IN (SELECT id FROM gone)`,
		`DELETE FROM alert_step WHERE alert IN (SELECT id FROM gone_alert)`,
		`DELETE FROM alert WHERE id IN (SELECT id FROM gone_alert)`,
		`UPDATE site SET source = NULL WHERE source IN (SELECT id FROM gone)`,
		`UPDATE site SET joined = NULL WHERE id IN (SELECT id FROM gone_site)`,
		`DELETE FROM site WHERE id IN (SELECT id FROM gone_site)`,
		`UPDATE message SET by = NULL WHERE by IN (SELECT id FROM gone)`,
		`UPDATE message SET about = NULL WHERE id IN (SELECT id FROM gone)`,
	} {
		if _, err := tx.exec(s); err != nil {
			return out, err
		}
	}
	messages, err := tx.exec(`DELETE FROM message WHERE id IN (SELECT id FROM gone)`)
	if err != nil {
		return out, err
	}
	out.Messages = int(messages)
	for _, s := range names {
		m, p, err := tx.unname(s, reads)
		if err != nil {
			return out, err
		}
		out.Messages += m
		out.Posts += p
	}
	return out, tx.dropTemp("gone", "gone_site", "gone_alert")
}

// unname takes the words away from messages and posts that still name a house,
// and from what quotes them. What a message reports about another house stays.
func (tx *Tx) unname(s assess.Site, reads func(text string) []assess.Site) (messages, posts int, err error) {
	bare := s.Loose() // number and street name
	ids, err := tx.naming(s, reads)
	if err != nil {
		return 0, 0, err
	}
	for _, id := range ids {
		if _, err := tx.ofPosts(`UPDATE outbox SET body = `+saidNothing+` WHERE instr(body, (SELECT substr(text, 1, 60) FROM message WHERE id = ?1 AND length(text) > 8))`, id); err != nil {
			return 0, 0, err
		}
		for _, q := range []string{
			`UPDATE follow_up SET why = '', was = NULL WHERE source = ?1 OR opened = ?1`,
			`UPDATE message SET sum = 0, text = '', links = '[]', blank = site IS NOT NULL AND frame IS NOT NULL,
				frame = CASE WHEN site IS NOT NULL THEN frame END WHERE id = ?1`,
		} {
			if _, err := tx.exec(q, id); err != nil {
				return 0, 0, err
			}
		}
	}
	named := `body LIKE '%' || replace(replace(replace(?, '\', '\\'), '%', '\%'), '_', '\_') || '%' ESCAPE '\'`
	waiting, err := tx.waiting(`WHERE `+named, bare)
	if err != nil {
		return 0, 0, err
	}
	for _, p := range waiting {
		if err := tx.Dead(p.ID, p.Since, p.Error); err != nil {
			return 0, 0, err
		}
	}
	n, err := tx.exec(`UPDATE outbox_done SET body = `+saidNothing+` WHERE `+named, bare)
	return len(ids), int(n), err
}

// ofPosts runs a statement about the outbox, also about what is done with, and
// returns how many rows it changed.
func (tx *Tx) ofPosts(query string, args ...any) (changed int, err error) {
	for _, table := range []string{"outbox", "outbox_done"} {
		n, err := tx.exec(strings.Replace(query, "outbox", table, 1), args...)
		if err != nil {
			return changed, err
		}
		changed += int(n)
	}
	return changed, nil
}

// saidNothing is the body of a post whose words were removed.
const saidNothing = `'{"kind":"say","body":{"lead":"…"}}'`

// naming returns the messages that name a house: by its number and street, or,
// read as reports are, by the number in words.
func (tx *Tx) naming(s assess.Site, reads func(text string) []assess.Site) ([]int64, error) {
	find := `SELECT docid FROM message_words WHERE message_words MATCH ?`
	var ids []int64
	if bare := s.Loose(); strings.ContainsFunc(bare, isWord) {
		var err error
		if ids, err = all(tx, scanID, find, whole(bare)); err != nil {
			return nil, err
		}
	}
	street := s.Street()
	if reads == nil || !strings.ContainsFunc(street, isWord) {
		return ids, nil
	}
	err := each(tx, func(scan func(...any) error) error {
		var id int64
		var text string
		if err := scan(&id, &text); err != nil {
			return err
		}
		if !slices.Contains(ids, id) && slices.ContainsFunc(reads(text), s.Fits) {
			ids = append(ids, id)
		}
		return nil
	}, `SELECT id, text FROM message WHERE id IN (`+find+`)`, whole(street))
	return ids, err
}

// whole is a phrase for the search.
func whole(words string) string { return `"` + strings.ReplaceAll(words, `"`, "") + `"` }

func (tx *Tx) dropTemp(names ...string) error {
	for _, n := range names {
		if _, err := tx.exec(`DROP TABLE temp.` + n); err != nil {
			return err
		}
	}
	return nil
}

// ForgetPerson removes a person from the record: name, words and what we said
// to them. What they measured stays with the houses, under nobody's name.
func (db *DB) ForgetPerson(ctx context.Context, person string, now time.Time) (Forgotten, error) {
	var out Forgotten
	err := db.remove(ctx, func(tx *Tx) error {
		ids, err := all(tx, func(scan func(...any) error) (s string, err error) { return s, scan(&s) },
			`SELECT id FROM person WHERE id = ?1 OR name = ?1 COLLATE NOCASE UNION SELECT author FROM message WHERE author = ?1 LIMIT 3`, person)
		if err != nil {
			return err
		}
		if len(ids) == 0 {
			return fmt.Errorf("%s: %w", person, ErrUnknown)
		}
		if len(ids) > 1 {
			return fmt.Errorf("%s may be one of several people on record (%s): give the platform's name for the person", person, strings.Join(ids, ", "))
		}
		if out, err = tx.forgetPerson(ids[0]); err != nil {
			return err
		}
		return tx.noteRemoval(now, "person", out.Messages)
	})
	return out, err
}

func (tx *Tx) forgetPerson(id string) (Forgotten, error) {
	var out Forgotten
	var n int64
	if _, err := tx.one([]any{&n}, `SELECT count(*) FROM removal`); err != nil {
		return out, err
	}
	nobody := fmt.Sprintf("removed-%d", n+1)
	name := id
	if _, err := tx.one([]any{&name}, `SELECT ifnull(nullif(name, ''), id) FROM person WHERE id = ?`, id); err != nil {
		return out, err
	}
	var err error
	if out.Posts, err = tx.ofPosts(`DELETE FROM outbox WHERE channel = '@' || ?1 OR substr(key, 1, 6) IN ('reply:', 'react:') AND CAST(substr(key, 7) AS INTEGER) IN (SELECT id FROM message WHERE author = ?1)`, id); err != nil {
		return out, err
	}
	for _, s := range []struct {
		query string
		args  []any
	}{
		{`UPDATE follow_up SET why = '', was = NULL WHERE source IN (SELECT id FROM message WHERE author = ?)`, []any{id}},
		{`UPDATE follow_up SET owner = ?2 WHERE owner IN (?1, ?3)`, []any{id, nobody, name}},
		{`DELETE FROM question WHERE author = ?`, []any{id}},
		{`UPDATE report SET author = ?2 WHERE author = ?1`, []any{id, nobody}},
		{`UPDATE alert SET owner = CASE WHEN owner IN (?1, ?3) THEN ?2 ELSE owner END, tech = CASE WHEN tech IN (?1, ?3) THEN ?2 ELSE tech END,
			reason = CASE WHEN reason IN (?1, ?3) THEN ?2 ELSE reason END`, []any{id, nobody, name}},
		{`UPDATE alert_step SET who = ?2 WHERE who IN (?1, ?3)`, []any{id, nobody, name}},
		{`DELETE FROM person WHERE id = ?`, []any{id}},
	} {
		if _, err := tx.exec(s.query, s.args...); err != nil {
			return out, err
		}
	}
	messages, err := tx.exec(`UPDATE message SET author = ?2, sum = 0, text = '', links = '[]', error = '', twin = NULL, blank = frame IS NOT NULL WHERE author = ?1`, id, nobody)
	if err != nil {
		return out, err
	}
	out.Messages = int(messages)
	if len(name) > 2 { // in posts to others: "claimed by …"
		p, err := tx.ofPosts(`UPDATE outbox SET body = replace(replace(body, ?1, ?3), ?2, ?3) WHERE instr(body, ?1) OR instr(body, ?2)`, name, id, nobody)
		if err != nil {
			return out, err
		}
		out.Posts += p
	}
	return out, nil
}

// Retain removes what is older than the shop keeps it: the words of messages
// before words, whole visits before visits. A zero time keeps all. What was
// measured outlives the words.
func (db *DB) Retain(ctx context.Context, words, visits, now time.Time) (Forgotten, error) {
	var out Forgotten
	const some = 500 // a commit, so that others get their turn
	if !visits.IsZero() {
		// The report and what it told go; the message stays as a name, so that a
		// late delivery of it is known.
		for {
			n := 0
			err := db.Write(ctx, func(tx *Tx) error {
				before := assess.DateOf(visits).String()
				ids, err := all(tx, scanID, `SELECT r.message FROM `+reportsOfDays+` WHERE d.day < ? ORDER BY d.day, d.page LIMIT ?`, before, some)
				if err != nil {
					return err
				}
				if n = len(ids); n == 0 {
					_, err := tx.exec(`DELETE FROM diary WHERE day < ?`, before)
					return err
				}
				for _, id := range ids {
					for _, q := range []string{
						dropReport,
						`DELETE FROM correction WHERE message = ?1 OR by = ?1`,
						`UPDATE message SET sum = 0, text = '', links = '[]', frame = NULL, state = 'retracted', by = NULL WHERE id = ?`,
					} {
						if _, err := tx.exec(q, id); err != nil {
							return err
						}
					}
				}
				if n > 0 {
					return tx.noteRemoval(now, "age", n)
				}
				return nil
			})
			if err != nil {
				return out, err
			}
			if n == 0 {
				break
			}
			out.Messages += n
		}
	}
	if words.IsZero() {
		return out, nil
	}
	for _, aged := range []struct{ find, wipe string }{
		{`SELECT id FROM message WHERE id > ? AND at < ? AND (text <> '' OR links <> '[]') ORDER BY id LIMIT ?`,
			`UPDATE message SET sum = 0, text = '', links = '[]', error = '', blank = frame IS NOT NULL WHERE id = ?`},
		{`SELECT id FROM outbox_done WHERE id > ? AND since < ? AND length(body) > 50 ORDER BY id LIMIT ?`,
			`UPDATE outbox_done SET body = ` + saidNothing + ` WHERE id = ?`},
	} {
		// All are gone through once, in the order of their numbers and not of
		// their time: a clock that was wrong for a while must not hide any.
		for last := int64(0); ; {
			var ids []int64
			err := db.Read(ctx, func(tx *Tx) (err error) {
				ids, err = all(tx, scanID, aged.find, last, millis(words), some)
				return err
			})
			if err != nil {
				return out, err
			}
			if len(ids) == 0 {
				break
			}
			last = ids[len(ids)-1]
			err = db.Write(ctx, func(tx *Tx) error {
				for _, id := range ids {
					if _, err := tx.exec(aged.wipe, id); err != nil {
						return err
					}
				}
				return tx.noteRemoval(now, "age", len(ids))
			})
			if err != nil {
				return out, err
			}
			out.Messages += len(ids)
		}
	}
	return out, nil
}

func (tx *Tx) noteRemoval(now time.Time, kind string, messages int) error {
	_, err := tx.exec(`INSERT INTO removal (at, kind, messages) VALUES (?, ?, ?)`, millis(now), kind, messages)
	return err
}

// Removal is the note that something was removed.
type Removal struct {
	At       time.Time
	Kind     string // house, person, age
	Messages int
}

// Removals returns the notes, oldest first.
func (tx *Tx) Removals() ([]Removal, error) {
	return all(tx, func(scan func(...any) error) (r Removal, err error) {
		var at int64
		err = scan(&at, &r.Kind, &r.Messages)
		r.At = fromMillis(at)
		return r, err
	}, `SELECT at, kind, messages FROM removal ORDER BY id`)
}

// remove does a removal and sees to it that nothing of it is left in the file:
// deleted rows are overwritten (secure_delete, see dsn), the search index is
// written anew, the write-ahead log is folded in and emptied.
func (db *DB) remove(ctx context.Context, do func(*Tx) error) error {
	err := db.Write(ctx, func(tx *Tx) error {
		if err := tx.indexWords(-1); err != nil { // it is searched for what names them
			return err
		}
		if err := do(tx); err != nil {
			return err
		}
		_, err := tx.exec(`INSERT INTO message_words (message_words) VALUES ('optimize')`)
		return err
	})
	if err != nil {
		return err
	}
	return db.fold(ctx)
}

// fold brings the write-ahead log into the file and empties it.
func (db *DB) fold(ctx context.Context) error {
	var busy, log, moved int
	err := db.write.QueryRowContext(ctx, `PRAGMA wal_checkpoint(TRUNCATE)`).Scan(&busy, &log, &moved)
	if err == nil && busy != 0 {
		err = errors.New("another program reads the record just now: what was removed leaves the disk when it is done")
	}
	return plain(err)
}

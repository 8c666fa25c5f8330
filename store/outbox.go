package store

import (
	"encoding/json"
	"strconv"
	"strings"
	"time"
)

// Post is something to be said to the team. It leaves the record once.
type Post struct {
	ID      int64
	Key     string // its cause; also the platform's means to find it again
	Channel string
	Thread  string
	Body    json.RawMessage
	After   time.Time
	State   string // ready, sending, sent, dead
	Tries   int
	Since   time.Time
	Ref     string // the platform's name for it, once sent
	Error   string
}

const (
	waitingColumns = `id, key, channel, thread, body, after, state, tries, since, '' AS ref, error`
	postColumns    = `id, key, channel, thread, body, after, state, tries, since, ref, error`
)

func scanPost(scan func(...any) error) (Post, error) {
	var p Post
	var body string
	var after, since int64
	err := scan(&p.ID, &p.Key, &p.Channel, &p.Thread, &body, &after, &p.State, &p.Tries, &since, &p.Ref, &p.Error)
	p.Body, p.After, p.Since = json.RawMessage(body), fromMillis(after), fromMillis(since)
	return p, err
}

// waiting returns posts of those that wait.
func (tx *Tx) waiting(where string, args ...any) ([]Post, error) {
	return all(tx, scanPost, `SELECT `+waitingColumns+` FROM outbox `+where, args...)
}

// answered is the message that a post answers, by the post's key, or by how it
// begins: what a message is told and the marks on it lie together in the outbox.
// ok is false for what the bot says of its own accord.
func answered(key string) (message int64, ok bool) {
	kind, rest, _ := strings.Cut(key, ":")
	number, _, _ := strings.Cut(rest, ":")
	message, _ = strconv.ParseInt(number, 10, 64) // 0 serves as well as any
	return message, kind == "reply" || kind == "react"
}

// Queue puts a post into the outbox; a post whose key is there already, or was,
// is the same post, and is left alone.
func (tx *Tx) Queue(p Post) error {
	args := []any{p.Key, p.Channel, p.Thread, string(p.Body), millis(p.After), millis(p.Since)}
	if message, ok := answered(p.Key); ok {
		return tx.put(queueAnswer, append(args, message)...)
	}
	return tx.put(queueOther, args...)
}

var (
	// queueAnswer takes the next number of those that begin with the message's, ?7.
	queueAnswer = intoOutbox + `1 + max(?7 + 1048576 << 20, ifnull((SELECT max(o.id) FROM outbox o WHERE ` + beside("o", "?7") + `), 0),
		ifnull((SELECT max(d.id) FROM outbox_done d WHERE ` + beside("d", "?7") + `), 0))) ON CONFLICT DO NOTHING`
	// queueOther takes a number behind those of all that was said up to now.
	queueOther = intoOutbox + `1 + max((SELECT ifnull(max(id), 0) FROM message) + 1048576 << 20, ifnull((SELECT max(id) FROM outbox), 0),
		ifnull((SELECT max(id) FROM outbox_done), 0))) ON CONFLICT DO NOTHING`
)

const intoOutbox = `INSERT INTO outbox (key, channel, thread, body, after, since, id) VALUES (?1, ?2, ?3, ?4, ?5, ?6, `

// ReadyPosts returns the posts that may be sent now: of each channel the
// oldest, so that a channel's posts leave in order. A post that came into its
// state after now tells that the clock was put back; it does not wait for the
// clock to come by again.
func (tx *Tx) ReadyPosts(now time.Time) ([]Post, error) {
	return tx.waiting(`WHERE id IN (SELECT min(id) FROM outbox GROUP BY channel)
		AND state = 'ready' AND (after <= ?1 OR since > ?1) ORDER BY id`, millis(now))
}

// DoubtfulPosts returns the posts whose fate is unknown since before a time, or
// since after now, which tells that the clock was put back.
func (tx *Tx) DoubtfulPosts(before, now time.Time) ([]Post, error) {
	return tx.waiting(`WHERE state = 'sending' AND (since <= ? OR since > ?) ORDER BY id`, millis(before), millis(now))
}

// Sending notes that a post is about to leave; claimed is false when somebody
// else moved it meanwhile.
func (tx *Tx) Sending(id int64, from string, now time.Time) (claimed bool, err error) {
	n, err := tx.exec(`UPDATE outbox SET state = 'sending', since = ?, tries = tries + 1 WHERE id = ? AND state = ?`, millis(now), id, from)
	return n == 1, err
}

// Sent notes the platform's name for a post that is out.
func (tx *Tx) Sent(id int64, ref string, now time.Time) error {
	return tx.done(id, `state = 'sending'`, "sent", ref, "", now)
}

// done puts a post that is in one of some states to those that are done with.
func (tx *Tx) done(id int64, in, state, ref, why string, now time.Time) error {
	if _, err := tx.exec(`INSERT INTO outbox_done (id, key, channel, thread, body, after, state, tries, since, ref, error)
		SELECT id, key, channel, thread, body, after, ?, tries, ?, ?, ? FROM outbox WHERE id = ? AND `+in, state, millis(now), ref, why, id); err != nil {
		return err
	}
	_, err := tx.exec(`DELETE FROM outbox WHERE id = ? AND `+in, id)
	return err
}

// Refused puts a post that the platform refused back, to be sent after a time.
func (tx *Tx) Refused(id int64, after, now time.Time, why string) error {
	_, err := tx.exec(`UPDATE outbox SET state = 'ready', after = ?, since = ?, error = ? WHERE id = ? AND state = 'sending'`, millis(after), millis(now), why, id)
	return err
}

// Dead gives a post up.
func (tx *Tx) Dead(id int64, now time.Time, why string) error {
	return tx.done(id, `state IN ('ready', 'sending')`, "dead", "", why, now)
}

// PostByKey returns the post with that key.
func (tx *Tx) PostByKey(key string) (Post, bool, error) {
	where, args := `key = ?1||'' AND key NOT GLOB 'reply:*' AND key NOT GLOB 'react:*'`, []any{key} // the index of those
	if message, ok := answered(key); ok {
		where, args = beside("outbox", "?2")+` AND key = ?1||''`, append(args, message)
	}
	return first(all(tx, scanPost, `SELECT `+waitingColumns+` FROM outbox WHERE `+where+`
		UNION ALL SELECT `+postColumns+` FROM outbox_done WHERE key = ?1||''`, args...))
}

// NewestAnswer returns the newest post whose key begins with prefix, which names
// a message.
func (tx *Tx) NewestAnswer(prefix string) (Post, bool, error) {
	message, _ := answered(prefix)
	return first(all(tx, scanPost, `SELECT `+postColumns+` FROM (SELECT `+waitingColumns+` FROM outbox WHERE `+beside("outbox", "?2")+` AND key >= ?1 AND key < ?1 || x'f48fbfbf'
		UNION ALL SELECT `+postColumns+` FROM outbox_done WHERE key >= ?1 AND key < ?1 || x'f48fbfbf') ORDER BY id DESC LIMIT 1`, prefix, message))
}

// PostByRef returns the post that the platform knows by that name.
func (tx *Tx) PostByRef(channel, ref string) (Post, bool, error) {
	return first(all(tx, scanPost, `SELECT `+postColumns+` FROM outbox_done WHERE channel = ? AND ref = ? AND ref <> '' ORDER BY id LIMIT 1`, channel, ref))
}

// LastSlot returns the last slot of a clockwork job that was dealt with; found
// is false when it never was.
func (tx *Tx) LastSlot(job string) (at time.Time, found bool, err error) {
	var ms int64
	found, err = tx.one([]any{&ms}, `SELECT last FROM slot WHERE job = ?`, job)
	return fromMillis(ms), found, err
}

// KeepSlot notes the last slot of a job. It never goes back.
func (tx *Tx) KeepSlot(job string, at time.Time) error {
	_, err := tx.exec(`INSERT INTO slot (job, last) VALUES (?, ?) ON CONFLICT (job) DO UPDATE SET last = max(last, excluded.last)`, job, millis(at))
	return err
}

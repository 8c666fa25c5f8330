package store

import (
	"encoding/json"
	"hash/crc32"
	"strconv"
	"time"
)

// MessageKind says what somebody did in chat.
type MessageKind string

// The kinds.
const (
	Said    MessageKind = "said"
	Edited  MessageKind = "edited"
	Deleted MessageKind = "deleted"
	Pressed MessageKind = "pressed" // a button, a form or a command
	// Imported rows come from a shop's older lists. Their frame is given, not
	// parsed, and stands.
	Imported MessageKind = "imported"
)

// MessageState says what became of a message.
type MessageState string

// The states.
const (
	Taken     MessageState = "taken"     // understood, or silence was right
	Waiting   MessageState = "waiting"   // failed, will be tried again
	SetAside  MessageState = "set_aside" // failed too often; a better parser may read it
	Replaced  MessageState = "replaced"  // edited since
	Retracted MessageState = "retracted" // deleted or taken back
)

// Message is one thing that a person said or did.
type Message struct {
	ID      int64
	Key     string // its name for ever
	Twin    string // other name of the same gesture, may be empty
	Kind    MessageKind
	About   int64 // the message that was edited or deleted, 0 for none
	Channel string
	TS      string
	Thread  string
	Author  string
	At      time.Time
	Text    string
	Voice   bool
	Links   []string
	State   MessageState
	Tries   int
	Error   string
	By      int64           // the message that replaced or retracted it, 0 for none
	Blank   bool            // its words were removed; its frame stands
	Frame   json.RawMessage // what is held to be meant, nil when nothing was understood
	Site    int64           // house it was filed under, 0 for none
}

// AddMessage keeps a message that has just arrived; fresh is false when it was
// there already, under its key or its twin.
func (tx *Tx) AddMessage(m Message) (id int64, fresh bool, err error) {
	links, err := json.Marshal(append([]string{}, m.Links...))
	if err != nil {
		return 0, false, err
	}
	id, added, err := tx.q.run(`INSERT INTO message (key, twin, kind, about, channel, ts, thread, author, at, text, voice, links, sum)
		VALUES (?, nullif(?, ''), ?, nullif(?, 0), ?, ?, ?, ?, ?, ?, ?, ?, ?) ON CONFLICT DO NOTHING`,
		[]any{m.Key, m.Twin, m.Kind, m.About, m.Channel, m.TS, m.Thread, m.Author, millis(m.At), m.Text, m.Voice, string(links), wordSum(m.Key, m.Author, m.Text, string(links), millis(m.At))})
	if err != nil || added == 1 {
		return id, err == nil, plain(err)
	}
	if _, err = tx.one([]any{&id}, `SELECT id FROM message WHERE key = ?1 UNION ALL SELECT id FROM message WHERE twin = nullif(?2, '') LIMIT 1`, m.Key, m.Twin); err != nil {
		return 0, false, err
	}
	return id, false, nil
}

// wordSum is a checksum of what nobody can work out again: who said what when, with which pictures.
// SQLite has none, and would not see a bit that flips within a text.
func wordSum(key, author, text, links string, at int64) int64 {
	b := make([]byte, 0, 256)
	for _, s := range []string{key, author, text, links} {
		b = append(append(b, s...), 0)
	}
	return max(1, int64(crc32.ChecksumIEEE(strconv.AppendInt(b, at, 10))))
}

const messageColumns = `id, key, ifnull(twin, ''), kind, ifnull(about, 0), channel, ts, thread, author, at, text, voice, links, state, tries, error, ifnull(by, 0), blank, frame, ifnull(site, 0)`

func scanMessage(scan func(...any) error) (Message, error) {
	var m Message
	var at int64
	var links string
	var frame *string
	err := scan(&m.ID, &m.Key, &m.Twin, &m.Kind, &m.About, &m.Channel, &m.TS, &m.Thread, &m.Author, &at,
		&m.Text, &m.Voice, &links, &m.State, &m.Tries, &m.Error, &m.By, &m.Blank, &frame, &m.Site)
	if err != nil {
		return m, err
	}
	m.At = fromMillis(at)
	if frame != nil {
		m.Frame = json.RawMessage(*frame)
	}
	return m, json.Unmarshal([]byte(links), &m.Links)
}

func (tx *Tx) messages(where string, args ...any) ([]Message, error) {
	return all(tx, scanMessage, `SELECT `+messageColumns+` FROM message `+where, args...)
}

func first[T any](list []T, err error) (T, bool, error) {
	if err != nil || len(list) == 0 {
		var none T
		return none, false, err
	}
	return list[0], true, nil
}

// Message returns the message with that id.
func (tx *Tx) Message(id int64) (Message, bool, error) {
	return first(tx.messages(`WHERE id = ?`, id))
}

// MessageByKey returns the message with that key, in its newest wording: the
// last edit of it when it was edited.
func (tx *Tx) MessageByKey(key string) (Message, bool, error) {
	m, found, err := first(tx.messages(`WHERE key = ?`, key))
	if err != nil || !found {
		return m, found, err
	}
	edit, edited, err := first(tx.messages(`WHERE about = ? AND kind = 'edited' ORDER BY id DESC LIMIT 1`, m.ID))
	if edited {
		return edit, true, err
	}
	return m, true, err
}

// WordingBefore returns the wording that an edit or a deletion took the place
// of: the last edit before it, else the first wording.
func (tx *Tx) WordingBefore(m Message) (Message, error) {
	was, _, err := first(tx.messages(`WHERE (about = ?1 AND kind = 'edited' OR id = ?1) AND id < ?2 ORDER BY id DESC LIMIT 1`, m.About, m.ID))
	return was, err
}

// Understood keeps what the parser made of a message.
func (tx *Tx) Understood(id int64, frame json.RawMessage) error {
	_, err := tx.exec(`UPDATE message SET frame = ? WHERE id = ?`, string(frame), id)
	return err
}

// UnderstoodAbout keeps what the parser made of a message and the house that it
// is about.
func (tx *Tx) UnderstoodAbout(id int64, frame json.RawMessage, site int64) error {
	return tx.put(`UPDATE message SET frame = ?, site = ? WHERE id = ?`, string(frame), site, id)
}

// Mark moves a message to a state, with the error that led there. A retracted
// or replaced message never comes back.
func (tx *Tx) Mark(id int64, s MessageState, why string) error {
	_, err := tx.exec(`UPDATE message SET state = ?, error = ?, tries = tries + (? = 'waiting') WHERE id = ? AND state NOT IN ('replaced', 'retracted')`, s, why, s, id)
	return err
}

// Revise replaces or retracts a message; by is the message that does.
func (tx *Tx) Revise(id int64, s MessageState, by int64) error {
	_, err := tx.exec(`UPDATE message SET state = ?, error = '', by = nullif(?, 0) WHERE id = ? AND state NOT IN ('replaced', 'retracted')`, s, by, id)
	return err
}

// Stuck returns the messages that wait or are set aside, oldest first.
func (tx *Tx) Stuck(s MessageState, limit int) ([]Message, error) {
	return tx.messages(`WHERE state = ? AND state IN ('waiting', 'set_aside') ORDER BY id LIMIT ?`, s, limit)
}

// shortlyBefore is among how many messages the one that somebody said before is looked for.
const shortlyBefore = 24

// SaidBefore returns what the author of a message said in its channel just before it;
// an edit has the place of its message.
func (tx *Tx) SaidBefore(m Message) (Message, bool, error) {
	place := m.ID
	if m.Kind == Edited && m.About != 0 {
		place = m.About
	}
	return first(tx.messages(`WHERE id < ?1 AND id >= ?1 - ?4 AND author = ?2 AND channel = ?3 AND kind = '`+string(Said)+`' ORDER BY id DESC LIMIT 1`,
		place, m.Author, m.Channel, shortlyBefore))
}

// LastReportBy returns the message of the author that still reports something
// and was said or put right last; what was said, or put right, by the messages from
// before on does not count. An edit has the place of its message.
func (tx *Tx) LastReportBy(author string, before int64) (Message, bool, error) {
	return first(tx.messages(`WHERE id = (SELECT message FROM (
			SELECT r.message, r.at, (SELECT max(c.by) FROM correction c WHERE c.message = r.message AND c.by < ?2) AS fixed FROM message m JOIN report r ON r.site = m.site AND r.message = m.id
			WHERE m.id IN `+toldBy1+` AND r.author = ?1 AND `+place+` < ?2 ORDER BY r.at DESC, r.message DESC LIMIT 8)
		ORDER BY max(at, ifnull((SELECT m.at FROM message m WHERE m.id = fixed), 0)) DESC, max(message, ifnull(fixed, 0)) DESC LIMIT 1)`, author, before))
}

// place is the number of a message m in the order in which it was first said.
const place = `CASE WHEN m.kind = 'edited' THEN ifnull(m.about, m.id) ELSE m.id END`

// toldBy1 are the numbers of the newest messages that reported something, or
// did, of the person that is the query's first argument.
const toldBy1 = `(SELECT value FROM json_each((SELECT told FROM person WHERE id = ?1)))`

// thread12 are the messages of a thread, the query's first two arguments: its
// first one, which is found by its key, and the others.
const thread12 = `(SELECT id FROM message WHERE key = ?1||'/'||?2 AND channel = ?1||'' AND thread = ?2||''
	UNION ALL SELECT id FROM message WHERE channel = ?1||'' AND thread = ?2||'' AND (thread <> ts OR key <> channel || '/' || ts))`

// ThreadSite returns the house that a thread is about: that of its first
// message that was filed under one, or of our own post that started it.
func (tx *Tx) ThreadSite(channel, thread string) (int64, error) {
	var id int64
	_, err := tx.one([]any{&id}, `SELECT site FROM message WHERE id IN `+thread12+` AND site IS NOT NULL ORDER BY id LIMIT 1`, channel, thread)
	return id, err
}

// TakenBackBy returns the report that a message of the author has taken back, among
// their newest and those of the message's thread.
func (tx *Tx) TakenBackBy(m Message) (Message, bool, error) {
	return first(tx.messages(`WHERE by = ?4 AND state = 'retracted' AND (id IN `+thread12+` OR id IN (SELECT value FROM json_each((SELECT told FROM person WHERE id = ?3)))) ORDER BY id DESC LIMIT 1`,
		m.Channel, m.Thread, m.Author, m.ID))
}

// Correct keeps the frame that a person put right and holds it to be meant from
// now on; by is the message that corrected.
func (tx *Tx) Correct(message, by int64, frame json.RawMessage) error {
	_, err := tx.exec(`INSERT INTO correction (message, by, was, frame) SELECT id, ?, ifnull(frame, ''), ? FROM message WHERE id = ? ON CONFLICT DO NOTHING`, by, string(frame), message)
	if err != nil {
		return err
	}
	return tx.Understood(message, frame)
}

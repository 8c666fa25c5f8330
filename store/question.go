package store

import (
	"encoding/json"
	"time"
)

// Question is something the bot asked and has no answer to yet.
type Question struct {
	ID      int64
	Message int64 // the message it asks about
	Channel string
	Thread  string
	Author  string
	At      time.Time
	Kind    string
	Body    json.RawMessage
}

// SameHouse is the kind of question whose answer may make two records one: is
// the house that the message put on record another's?
const SameHouse = "same"

// NoHouse is the kind of question for the house of a report that named none: one answer
// can be that of several reports told in a row.
const NoHouse = "no_site"

// AskQuestion keeps a question; earlier ones in the same thread to the same
// person are dropped, so that an answer has one question to belong to, but for
// those of a house, which it answers all.
func (tx *Tx) AskQuestion(q Question) error {
	if _, err := tx.exec(`UPDATE question SET state = 'dropped' WHERE channel = ?1 AND thread = ?2 AND author = ?3 AND state = 'open'
			AND (kind <> ?4 OR kind <> '`+NoHouse+`')`,
		q.Channel, q.Thread, q.Author, q.Kind); err != nil {
		return err
	}
	_, err := tx.insert(`INSERT INTO question (message, channel, thread, author, at, kind, body) VALUES (?, ?, ?, ?, ?, ?, ?)`,
		q.Message, q.Channel, q.Thread, q.Author, millis(q.At), q.Kind, string(q.Body))
	return err
}

func scanQuestion(scan func(...any) error) (Question, error) {
	var q Question
	var at int64
	var body string
	err := scan(&q.ID, &q.Message, &q.Channel, &q.Thread, &q.Author, &at, &q.Kind, &body)
	q.At, q.Body = fromMillis(at), json.RawMessage(body)
	return q, err
}

// OpenQuestion returns the newest open question in a thread, or else the newest one put
// to the author in that channel since a time.
func (tx *Tx) OpenQuestion(channel, thread, author string, since time.Time) (Question, bool, error) {
	return first(all(tx, scanQuestion, `SELECT id, message, channel, thread, author, at, kind, body FROM question WHERE id = ifnull(
			(SELECT max(id) FROM question WHERE state = 'open' AND channel = ?1||'' AND thread = ?2||'' AND at >= ?4+0),
			(SELECT max(id) FROM question INDEXED BY question_author WHERE state = 'open' AND channel = ?1||'' AND author = ?3||'' AND at >= ?4+0))`,
		channel, thread, author, millis(since)))
}

// OpenBefore returns the open questions of a kind that were put to the same person in
// the same channel before a question, since a time, oldest first.
func (tx *Tx) OpenBefore(q Question, since time.Time) ([]Question, error) {
	return all(tx, scanQuestion, `SELECT id, message, channel, thread, author, at, kind, body FROM question INDEXED BY question_author
		WHERE state = 'open' AND channel = ?1||'' AND author = ?2||'' AND at >= ?3+0 AND kind = ?4 AND id < ?5 ORDER BY id`,
		q.Channel, q.Author, millis(since), q.Kind, q.ID)
}

// QuestionAbout returns the open question of a kind about a message.
func (tx *Tx) QuestionAbout(message int64, kind string) (Question, bool, error) {
	return first(all(tx, scanQuestion, `SELECT id, message, channel, thread, author, at, kind, body FROM question
		WHERE message = ? AND kind = ? AND state = 'open' ORDER BY id DESC LIMIT 1`, message, kind))
}

// LastAnswered returns the question of a kind that was answered last in a
// thread, or outside of threads by its person in the channel, when nothing was
// reported there since.
func (tx *Tx) LastAnswered(channel, thread, author, kind string) (Question, bool, error) {
	return first(all(tx, scanQuestion, `SELECT q.id, q.message, q.channel, q.thread, q.author, q.at, q.kind, q.body FROM question q
		WHERE q.id = (SELECT max(a.id) FROM question a WHERE (a.message IN `+thread12+`
			OR a.message = (SELECT r.message FROM message m JOIN report r ON r.site = m.site AND r.message = m.id WHERE m.id IN (SELECT value FROM json_each((SELECT told FROM person WHERE id = ?3))) AND r.author = ?3 ORDER BY r.at DESC, r.message DESC LIMIT 1)) AND a.channel = ?1 AND a.kind = ?4 AND a.state = 'answered')
		AND NOT EXISTS (SELECT 1 FROM message m JOIN report r ON r.site = m.site AND r.message = m.id WHERE m.id IN `+thread12+` AND m.id > q.message)`, channel, thread, author, kind))
}

// Answered returns the answered questions of a kind, oldest first.
func (tx *Tx) Answered(kind string) ([]Question, error) {
	return all(tx, scanQuestion, `SELECT id, message, channel, thread, author, at, kind, body FROM question WHERE kind = ? AND state = 'answered' ORDER BY id`, kind)
}

// EndQuestionsAbout closes the open questions of some kinds about a message
// whose meaning a person has settled.
func (tx *Tx) EndQuestionsAbout(message int64, kinds ...string) error {
	for _, k := range kinds {
		if _, err := tx.exec(`UPDATE question SET state = 'answered' WHERE message = ? AND kind = ? AND state = 'open'`, message, k); err != nil {
			return err
		}
	}
	return nil
}

// DropQuestionsAbout closes the open questions about a message that is withdrawn, but
// for those about houses, which are on record all the same.
func (tx *Tx) DropQuestionsAbout(message int64) error {
	_, err := tx.exec(`UPDATE question SET state = 'dropped' WHERE message = ? AND state = 'open' AND kind <> '`+SameHouse+`'`, message)
	return err
}

// AnsweredAbout tells whether a question of a kind about a message was answered.
func (tx *Tx) AnsweredAbout(message int64, kind string) (bool, error) {
	var one int
	return tx.one([]any{&one}, `SELECT 1 FROM question WHERE message = ? AND kind = ? AND state = 'answered' LIMIT 1`, message, kind)
}

// EndQuestion closes a question as "answered" or "dropped".
func (tx *Tx) EndQuestion(id int64, state string) error {
	_, err := tx.exec(`UPDATE question SET state = ? WHERE id = ? AND state = 'open'`, state, id)
	return err
}

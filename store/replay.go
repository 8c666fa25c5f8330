package store

import (
	"encoding/json"
	"time"
)

// Replay rebuilds what follows from the messages: it empties the derived
// tables, the caller takes every message anew, and Finish compares. All of it
// is one transaction, so that it can be shown and not kept.
//
// Houses, alerts and follow-ups come back under the numbers that they had, by
// the message that caused them: buttons and posts that name them stay right.
type Replay struct {
	tx       *Tx
	Messages int // that are to be taken anew
	// Raised are the open alerts that there were not before, known when Finish
	// has returned. Nobody has been told of them.
	Raised []Alert
}

// derived tables in the order in which they can be emptied.
var derived = []string{"diary", "report", "equipment", "question", "follow_up", "alert_step", "alert"}

// remembered tables are kept aside during a replay under "was_" and their name.
var remembered = []string{"site", "follow_up", "alert", "alert_step", "due"}

// Replay starts a rebuild.
func (tx *Tx) Replay() (*Replay, error) {
	r := &Replay{tx: tx}
	if _, err := tx.one([]any{&r.Messages}, `SELECT count(*) FROM message`); err != nil {
		return nil, err
	}
	steps := []string{
		`CREATE TEMP TABLE was_message (id INTEGER PRIMARY KEY, state TEXT, by INTEGER, frame TEXT)`,
		`INSERT INTO was_message SELECT id, state, by, frame FROM message`,
		`CREATE INDEX temp.was_message_by ON was_message (by) WHERE by IS NOT NULL`,
		`CREATE TEMP TABLE was_report (message INTEGER PRIMARY KEY, site INTEGER, day TEXT, psi REAL)`,
		`INSERT INTO was_report SELECT message, site, day, house_psi FROM report`,
	}
	for _, t := range remembered {
		steps = append(steps, `CREATE TEMP TABLE was_`+t+` AS SELECT * FROM `+t)
	}
	steps = append(steps,
		`CREATE TEMP TABLE was_same (message INTEGER PRIMARY KEY)`,
		`INSERT OR IGNORE INTO was_same SELECT message FROM question WHERE kind = '`+SameHouse+`' AND state = 'answered'`,
		`CREATE INDEX temp.was_site_source ON was_site (source)`,
		`CREATE INDEX temp.was_site_id ON was_site (id)`,
		`CREATE INDEX temp.was_site_joined ON was_site (joined) WHERE joined IS NOT NULL`,
		`CREATE INDEX temp.was_alert_opened ON was_alert (opened)`,
		`CREATE INDEX temp.was_follow_up_opened ON was_follow_up (opened, action)`,
		`CREATE INDEX temp.was_follow_up_id ON was_follow_up (id)`,
		`UPDATE person SET site = NULL, site_at = 0, told = '[]'`,
	)
	for _, t := range derived {
		steps = append(steps, `DELETE FROM `+t)
	}
	steps = append(steps,
		// What was taken back before it ever arrived stays gone; the rest is
		// taken anew. A frame that stands (blank, imported) is no parser's.
		`UPDATE message SET site = NULL, by = NULL, tries = 0, error = '',
			state = CASE WHEN state = 'retracted' AND by IS NULL THEN state ELSE 'taken' END,
			frame = CASE WHEN blank = 1 OR kind = 'imported' THEN frame END`,
		`UPDATE site SET joined = NULL WHERE joined IS NOT NULL`,
		`DELETE FROM site`,
	)
	for _, s := range steps {
		if _, err := tx.exec(s); err != nil {
			return nil, err
		}
	}
	tx.replay = true
	return r, nil
}

// idBefore is the id for a new row of a derived table: while the record is
// being rebuilt, that of the row with the same cause before, else one that no
// row had; nil otherwise, and SQLite chooses.
func (tx *Tx) idBefore(table string, source int64) any {
	if !tx.replay {
		return nil
	}
	var id int64
	cause := "source"
	if table == "alert" {
		cause = "opened"
	}
	query := `SELECT w.id FROM was_` + table + ` w WHERE w.` + cause + ` = ? AND NOT EXISTS (SELECT 1 FROM ` + table + ` t WHERE t.id = w.id) ORDER BY w.id LIMIT 1`
	if found, err := tx.one([]any{&id}, query, source); err == nil && found {
		return id
	}
	if _, err := tx.one([]any{&id}, `SELECT max(ifnull((SELECT max(id) FROM was_`+table+`), 0), ifnull((SELECT max(id) FROM `+table+`), 0)) + 1`); err != nil {
		return nil
	}
	return id
}

// followUpBefore is idBefore for a follow-up. One that stands at another house
// now gets a number of that house, and is known by its old one.
func (tx *Tx) followUpBefore(f FollowUp) (number any, err error) {
	if !tx.replay {
		return nil, nil
	}
	var id, site, next int64
	before, err := tx.one([]any{&id, &site}, `SELECT w.id, w.site FROM was_follow_up w WHERE w.opened = ? AND w.action = ? AND NOT EXISTS (SELECT 1 FROM follow_up t WHERE t.id = w.id)
		ORDER BY w.site = ? DESC, w.id LIMIT 1`, f.Source, f.Action, f.Site)
	if err != nil || before && site == f.Site {
		return id, err
	}
	if _, err := tx.one([]any{&next}, `SELECT 1 + max(?1 + 1048576 << 20, ifnull((SELECT max(f.id) FROM follow_up f WHERE `+beside("f", "?1")+`), 0),
		ifnull((SELECT max(f.id) FROM was_follow_up f WHERE `+beside("f", "?1")+`), 0))`, f.Site); err != nil {
		return nil, err
	}
	if !before {
		return next, nil
	}
	for _, q := range []string{
		`UPDATE was_follow_up SET id = ?2, site = ?3 WHERE id = ?1`,
		`UPDATE follow_up_was SET id = ?2 WHERE id = ?1`,
		`INSERT INTO follow_up_was (was, id) VALUES (?1, ?2)`,
	} {
		if _, err := tx.exec(q, id, next, f.Site); err != nil {
			return nil, err
		}
	}
	return next, nil
}

// Next returns the messages after one, in the order in which they arrived.
func (r *Replay) Next(after int64, limit int) ([]Message, error) {
	return r.tx.messages(`WHERE id > ? ORDER BY id LIMIT ?`, after, limit)
}

// Correction is a frame put right by a person.
type Correction struct {
	Message int64
	By      int64
	Was     json.RawMessage
	Frame   json.RawMessage
}

func scanCorrection(scan func(...any) error) (c Correction, err error) {
	var was, frame string
	err = scan(&c.Message, &c.By, &was, &frame)
	c.Was, c.Frame = json.RawMessage(was), json.RawMessage(frame)
	return c, err
}

// Corrections returns what a message put right.
func (tx *Tx) Corrections(by int64) ([]Correction, error) {
	return all(tx, scanCorrection, `SELECT message, by, was, frame FROM correction WHERE by = ? ORDER BY message`, by)
}

// Revised returns the messages that a message replaced or retracted before the
// rebuild.
func (r *Replay) Revised(by int64) ([]Message, error) {
	return r.tx.messages(`WHERE id IN (SELECT id FROM was_message WHERE by = ?) ORDER BY id`, by)
}

// SiteBefore returns the house that a message reported on before the rebuild, 0
// for none or one that is not on record now.
func (r *Replay) SiteBefore(message int64) (int64, error) {
	var id int64
	_, err := r.tx.one([]any{&id}, `SELECT s.id FROM was_report w JOIN site s ON s.id = w.site WHERE w.message = ?`, message)
	return id, err
}

// Change is one thing that a rebuild makes different.
type Change struct {
	What    string    `json:"what"` // read, filed, alert, follow-up, house
	Message int64     `json:"message,omitempty"`
	At      time.Time `json:"at,omitzero"`
	Author  string    `json:"author,omitempty"`
	Text    string    `json:"text,omitempty"`
	Was     string    `json:"was"`
	Now     string    `json:"now"`
}

// Finish brings back what people decided about alerts and follow-ups, tells
// what has changed, and ends the replay.
func (r *Replay) Finish(tell func(Change) error) error {
	tx := r.tx
	tx.replay = false
	if err := r.keepAlerts(); err != nil {
		return err
	}
	for _, s := range []string{
		// What was ended stays so, what was posted is not posted again.
		`UPDATE follow_up SET posted = w.posted FROM was_follow_up w WHERE w.id = follow_up.id`,
		`UPDATE follow_up SET state = w.state, ended = w.ended FROM was_follow_up w WHERE w.id = follow_up.id AND follow_up.state = 'open' AND w.state <> 'open'`,
		`INSERT INTO follow_up SELECT w.* FROM was_follow_up w WHERE (w.state <> 'open' OR w.clock = 1) AND EXISTS (SELECT 1 FROM site s WHERE s.id = w.site)
			AND NOT EXISTS (SELECT 1 FROM follow_up f WHERE f.id = w.id)
			AND (w.state <> 'open' OR NOT EXISTS (SELECT 1 FROM follow_up f WHERE ` + beside("f", "w.site") + ` AND f.action = w.action AND f.state = 'open'))`,
		`UPDATE follow_up SET stray = 1 WHERE stray = 0 AND ((SELECT m.site FROM message m WHERE m.id = source) IS NOT site
			OR ended_by IS NOT NULL AND (SELECT m.site FROM message m WHERE m.id = ended_by) IS NOT site)`,
		`INSERT INTO diary SELECT DISTINCT date(ended / 1000, 'unixepoch'), ended_by >> 6 FROM follow_up WHERE ended_by IS NOT NULL ON CONFLICT DO NOTHING`,
		// Which records are one house stays as people left it.
		`UPDATE site SET joined = (SELECT t.id FROM was_site w JOIN site t ON t.id = w.joined WHERE w.id = site.id)
			WHERE EXISTS (SELECT 1 FROM was_site w WHERE w.id = site.id AND w.joined IS NOT site.joined)`,
		// What is planned stays planned, what is past is not done again.
		`DELETE FROM due`,
		`INSERT INTO due SELECT * FROM was_due`,
		// A question that was never put to anybody must not take an answer.
		`UPDATE question SET state = 'dropped' WHERE state = 'open' AND 'reply:' || message NOT IN (SELECT key FROM outbox UNION ALL SELECT key FROM outbox_done)`,
	} {
		if _, err := tx.exec(s); err != nil {
			return err
		}
	}
	if err := r.compare(tell); err != nil {
		return err
	}
	var err error
	if r.Raised, err = tx.alerts(`WHERE ` + stillOpen + ` AND NOT EXISTS (SELECT 1 FROM was_alert w WHERE w.id = alert.id) ORDER BY id`); err != nil {
		return err
	}
	for _, t := range append([]string{"message", "report", "same"}, remembered...) {
		if _, err := tx.exec(`DROP TABLE temp.was_` + t); err != nil {
			return err
		}
	}
	return nil
}

// keepAlerts leaves every alert that a person has touched as that person left
// it. One that nobody touched and that no longer follows is closed.
func (r *Replay) keepAlerts() error {
	tx := r.tx
	if _, err := tx.exec(`UPDATE alert SET change = max(alert.change, w.change) FROM was_alert w WHERE w.id = alert.id`); err != nil {
		return err
	}
	type old struct {
		id, site int64
		touched  bool
	}
	list, err := all(tx, func(scan func(...any) error) (o old, err error) {
		err = scan(&o.id, &o.site, &o.touched)
		return o, err
	}, `SELECT w.id, w.site, w.state IN ('claimed', 'booked', 'closed') OR w.owner <> '' OR w.booked <> '' FROM was_alert w
		WHERE w.state IN ('claimed', 'booked', 'closed') OR w.owner <> '' OR w.booked <> '' OR NOT EXISTS (SELECT 1 FROM alert a WHERE a.id = w.id) ORDER BY w.id`)
	if err != nil {
		return err
	}
	for _, o := range list {
		site, err := r.siteNow(o.site)
		if err != nil {
			return err
		}
		open := ` (SELECT id FROM alert WHERE id = ?1 OR site = ?2 AND ` + stillOpen + `
			AND EXISTS (SELECT 1 FROM was_alert w WHERE w.id = ?1 AND w.` + stillOpen + `) AND ?3)`
		for _, s := range []string{`DELETE FROM alert_step WHERE alert IN` + open, `DELETE FROM alert WHERE id IN` + open} {
			if _, err := tx.exec(s, o.id, site, o.touched); err != nil {
				return err
			}
		}
		if !o.touched {
			if _, err := tx.exec(`UPDATE was_alert SET state = 'closed', reason = 'no longer follows from what was said' WHERE id = ? AND state = 'raised'`, o.id); err != nil {
				return err
			}
		}
		if _, err := tx.exec(`UPDATE was_alert SET site = ? WHERE id = ?`, site, o.id); err != nil {
			return err
		}
		for _, s := range []string{`INSERT INTO alert SELECT * FROM was_alert WHERE id = ?`, `INSERT INTO alert_step SELECT * FROM was_alert_step WHERE alert = ?`} {
			if _, err := tx.exec(s, o.id); err != nil {
				return err
			}
		}
	}
	return nil
}

// siteNow returns the house that was on record as id before; it comes back when
// nothing names it any more but something is kept about it.
func (r *Replay) siteNow(id int64) (int64, error) {
	var now int64
	found, err := r.tx.one([]any{&now}, `SELECT s.id FROM site s WHERE s.id = ?1
		UNION ALL SELECT s.id FROM was_site w JOIN site s ON s.loose = w.loose AND s.key = w.key AND s.town = w.town AND s.postcode = w.postcode WHERE w.id = ?1 LIMIT 1`, id)
	if err != nil || found {
		return now, err
	}
	_, err = r.tx.exec(`INSERT INTO site SELECT * FROM was_site WHERE id = ?`, id)
	if err == nil {
		_, err = r.tx.exec(`UPDATE site SET joined = NULL, `+expectsNothing+` WHERE id = ?`, id)
	}
	return id, err
}

// comparisons find what a rebuild made different, a Change a row.
var comparisons = []string{
	`SELECT 'read', m.id, m.at, m.author, m.text, ifnull(w.frame, ''), ifnull(m.frame, '')
		FROM message m JOIN was_message w ON w.id = m.id WHERE w.frame IS NOT m.frame ORDER BY m.id`,
	`SELECT 'filed', m.id, m.at, m.author, m.text,
		ifnull((SELECT s.line || ' ' || w.day || ifnull(' ' || w.psi || ' psi', '') FROM was_site s WHERE s.id = w.site), ''),
		ifnull((SELECT s.line || ' ' || r.day || ifnull(' ' || r.house_psi || ' psi', '') FROM site s WHERE s.id = r.site), '')
		FROM message m LEFT JOIN was_report w ON w.message = m.id LEFT JOIN report r ON r.site = m.site AND r.message = m.id
		WHERE (w.site IS NOT r.site OR w.day IS NOT r.day OR w.psi IS NOT r.house_psi) ORDER BY m.id`,
	`SELECT 'alert', a.opened, a.raised_at, '', s.line, ifnull(w.state || ' ' || w.codes, ''), a.state || ' ' || a.codes
		FROM alert a JOIN site s ON s.id = a.site LEFT JOIN was_alert w ON w.id = a.id
		WHERE w.id IS NULL OR w.codes <> a.codes OR w.state <> a.state OR a.reason = 'no longer follows from what was said' AND a.ended IS NULL ORDER BY a.id`,
	`SELECT 'follow-up', f.opened, 0, f.owner, s.line, '', f.state || ' ' || f.action || ' ' || f.due
		FROM follow_up f JOIN site s ON s.id = f.site WHERE NOT EXISTS (SELECT 1 FROM was_follow_up w WHERE w.id = f.id)
		UNION ALL SELECT 'follow-up', w.opened, 0, w.owner, s.line, w.state || ' ' || w.action || ' ' || w.due, ifnull((SELECT f.state || ' ' || f.action || ' ' || f.due FROM follow_up f WHERE f.id = w.id), '')
		FROM was_follow_up w JOIN was_site s ON s.id = w.site
		WHERE NOT EXISTS (SELECT 1 FROM follow_up f WHERE f.id = w.id AND f.state = w.state AND f.due = w.due)`,
	`SELECT 'house', ifnull(w.source, 0), 0, '', w.line, w.line, '' FROM was_site w
		WHERE NOT EXISTS (SELECT 1 FROM site s WHERE s.id = w.id) ORDER BY w.id`,
}

func (r *Replay) compare(tell func(Change) error) error {
	for _, query := range comparisons {
		if err := each(r.tx, func(scan func(...any) error) error {
			var c Change
			var at int64
			if err := scan(&c.What, &c.Message, &at, &c.Author, &c.Text, &c.Was, &c.Now); err != nil {
				return err
			}
			if at != 0 {
				c.At = fromMillis(at)
			}
			return tell(c)
		}, query); err != nil {
			return err
		}
	}
	return nil
}

package store

import (
	"encoding/json"
	"errors"
	"fmt"
	"time"

	"lazyhand/assess"
)

// FollowUp is something to be done at a house by a day.
type FollowUp struct {
	ID       int64
	Site     int64
	Line     string // the house's street line
	Street   string // its street's bare name
	Postcode string
	Action   assess.Action
	Due      assess.Date
	Why      string
	Owner    string // who is to do it
	Source   int64  // the message it came from
	Clock    bool   // the calendar opened it, not what the message said
	Urgency  assess.Urgency
	Posted   assess.Date // the day it was last posted, zero for never
	State    string      // open, done, dropped
	Ended    time.Time   // when it came to an end, zero for open
}

const followUps = `SELECT ` + followUpColumns + ` FROM follow_up f JOIN site s ON s.id = f.site `

const followUpColumns = `f.id, f.site, s.line, s.street, s.postcode, f.action, f.due, f.why, f.owner, f.source, f.clock, f.urgency, f.posted, f.state, ifnull(f.ended, 0)`

// beside is the condition that a follow-up is a house's: its number begins with
// the house's, see the table's comment.
func beside(followUp, site string) string {
	return followUp + `.id > ` + site + ` + 1048576 << 20 AND ` + followUp + `.id < ` + site + ` + 1048577 << 20`
}

func scanFollowUp(scan func(...any) error) (FollowUp, error) {
	var f FollowUp
	var due, posted string
	var ended int64
	if err := scan(&f.ID, &f.Site, &f.Line, &f.Street, &f.Postcode, &f.Action, &due, &f.Why, &f.Owner, &f.Source, &f.Clock, &f.Urgency, &posted, &f.State, &ended); err != nil {
		return f, err
	}
	if ended > 0 {
		f.Ended = time.UnixMilli(ended)
	}
	return f, errors.Join(f.Due.UnmarshalText([]byte(due)), f.Posted.UnmarshalText([]byte(posted)))
}

// earlier is the state of a follow-up that a newer reason took the place of;
// the SQL below writes and reads it as JSON.
const earlier = `json_object('due', due, 'why', why, 'owner', owner, 'source', source, 'urgency', urgency, 'posted', posted, 'was', json(was))`

// KeepFollowUp opens a follow-up; when one for the same house and action is
// open, the newer reason moves that one.
func (tx *Tx) KeepFollowUp(f FollowUp) error {
	if f.Urgency == "" {
		f.Urgency = assess.Watch
	}
	again, err := tx.followUpBefore(f)
	if err != nil {
		return err
	}
	return tx.put(keepFollowUp, f.Site, f.Action, f.Due.String(), f.Why, f.Owner, f.Source, f.Clock, f.Urgency, again)
}

// keepFollowUp takes the number of the house's follow-up for that action that is
// open; else, while the record is being rebuilt, the number from before, ?9;
// else the house's next.
var keepFollowUp = `INSERT INTO follow_up (id, site, action, due, why, owner, source, opened, clock, urgency, stray)
	VALUES (coalesce((SELECT f.id FROM follow_up f WHERE ` + beside("f", "?1") + ` AND f.action = ?2 AND f.state = 'open'), ?9,
		1 + ifnull((SELECT max(f.id) FROM follow_up f WHERE ` + beside("f", "?1") + `), ?1 + 1048576 << 20)),
		?1, ?2, ?3, ?4, ?5, ?6, ?6, ?7, ?8, (SELECT site FROM message WHERE id = ?6) IS NOT ?1)
	ON CONFLICT (id) DO UPDATE SET was = CASE WHEN source <> excluded.source THEN ` + earlier + ` ELSE was END,
		due = excluded.due, why = excluded.why, owner = excluded.owner, source = excluded.source, urgency = excluded.urgency, posted = '', stray = excluded.stray`

// KeepSettled leaves a follow-up that a message asked for at a house done where
// that message is put right, or another wording takes its place, and asks for it
// anew by a day that is no sooner; kept is false when there is none.
func (tx *Tx) KeepSettled(site int64, action assess.Action, was, now int64, due assess.Date) (kept bool, err error) {
	n, err := tx.exec(keepSettled, site, action, was, now, due.String())
	return n > 0, err
}

var keepSettled = `UPDATE follow_up SET source = ?4, stray = max((SELECT m.site FROM message m WHERE m.id = ?4) IS NOT site,
		(SELECT m.site FROM message m WHERE m.id = ended_by) IS NOT site)
	WHERE id = (SELECT max(f.id) FROM follow_up f WHERE ` + beside("f", "?1") + ` AND f.source = ?3 AND f.action = ?2 AND f.state = 'done' AND f.due <= ?5)`

// TakeBackFollowUps undoes what a withdrawn message did: what it asked for
// goes, what it moved goes back, what it settled is open again. Nothing goes back
// to it, or is open again for it.
func (tx *Tx) TakeBackFollowUps(message int64, at time.Time) error {
	if err := tx.forgetReason(message); err != nil {
		return err
	}
	if _, err := tx.exec(goBack, message); err != nil {
		return err
	}
	if _, err := tx.exec(dropAsked, message, millis(at)); err != nil {
		return err
	}
	var again []int64
	err := each(tx, func(scan func(...any) error) error {
		var id int64
		err := scan(&id)
		again = append(again, id)
		return err
	}, openAgain, message)
	if err != nil {
		return err
	}
	for _, id := range again {
		var source int64
		gone, err := tx.one([]any{&source}, `SELECT f.source FROM follow_up f JOIN message m ON m.id = f.source WHERE f.id = ? AND m.state IN ('replaced', 'retracted')`, id)
		if err != nil {
			return err
		}
		if !gone {
			continue
		}
		if _, err := tx.exec(goBack, source); err != nil {
			return err
		}
		if _, err := tx.exec(dropAsked, source, millis(at)); err != nil {
			return err
		}
	}
	return nil
}

// reason is the state of a follow-up that a newer reason took the place of, see
// earlier; Was is the one before that.
type reason struct {
	Due     string  `json:"due"`
	Why     string  `json:"why"`
	Owner   string  `json:"owner"`
	Source  int64   `json:"source"`
	Urgency string  `json:"urgency"`
	Posted  string  `json:"posted"`
	Was     *reason `json:"was"`
}

// without is the reasons but for those of a message.
func (r *reason) without(message int64) (left *reason, changed bool) {
	if r == nil {
		return nil, false
	}
	r.Was, changed = r.Was.without(message)
	if r.Source == message {
		return r.Was, true
	}
	return r, changed
}

// forgetReason takes a message out of the reasons that follow-ups of its house
// would go back to.
func (tx *Tx) forgetReason(message int64) error {
	type kept struct {
		id  int64
		was string
	}
	list, err := all(tx, func(scan func(...any) error) (k kept, err error) {
		return k, scan(&k.id, &k.was)
	}, reasonsBeside, message)
	if err != nil {
		return err
	}
	for _, k := range list {
		var r *reason
		if err := json.Unmarshal([]byte(k.was), &r); err != nil {
			return fmt.Errorf("read the reasons of follow-up %d: %w", k.id, err)
		}
		left, changed := r.without(message)
		if !changed {
			continue
		}
		raw, err := json.Marshal(left)
		if err != nil {
			return err
		}
		if _, err := tx.exec(`UPDATE follow_up SET was = ? WHERE id = ?`, string(raw), k.id); err != nil {
			return err
		}
	}
	return nil
}

// reasonsBeside are the follow-ups with earlier reasons of the house that a message
// is filed under, the first argument, under whichever of its names.
var reasonsBeside = `SELECT f.id, f.was FROM message m JOIN site n ON n.id = m.site
	JOIN site h ON h.id IN (SELECT ifnull(n.joined, n.id) UNION ALL SELECT id FROM site WHERE joined = ifnull(n.joined, n.id))
	CROSS JOIN follow_up f ON ` + beside("f", "h.id") + ` WHERE m.id = ?1 AND f.was IS NOT NULL AND f.was <> 'null'`

// What follows from a message, the first argument, stands beside the other
// follow-ups of the house that it is filed under, or is known to be a stray.
var (
	goBack = `UPDATE follow_up SET due = was ->> '$.due', why = was ->> '$.why', owner = was ->> '$.owner', source = was ->> '$.source',
		urgency = was ->> '$.urgency', posted = was ->> '$.posted', was = was -> '$.was',
		stray = (SELECT m.site FROM message m WHERE m.id = was ->> '$.source') IS NOT site WHERE id IN ` + askedBy1 + ` AND state = 'open' AND was IS NOT NULL AND was <> 'null'`
	dropAsked = `UPDATE follow_up SET state = 'dropped', ended = ?2 WHERE id IN ` + askedBy1 + ` AND state = 'open'`
	openAgain = `UPDATE follow_up SET state = 'open', ended = NULL, ended_by = NULL WHERE id IN
		(SELECT f.id FROM message m JOIN follow_up f ON ` + beside("f", "m.site") + ` WHERE m.id = ?1 AND f.ended_by = ?1
		UNION ALL SELECT f.id FROM follow_up f WHERE f.ended = (SELECT at FROM message WHERE id = ?1) AND f.ended_by = ?1 AND f.ended IS NOT NULL AND (f.ended_by IS NULL OR f.stray = 1))
		AND state = 'done' AND NOT EXISTS (SELECT 1 FROM follow_up o WHERE ` + beside("o", "follow_up.site") + ` AND o.action = follow_up.action AND o.state = 'open') RETURNING id`
	askedBy1 = `(SELECT f.id FROM message m JOIN follow_up f ON ` + beside("f", "m.site") + ` WHERE m.id = ?1 AND f.source = ?1
		UNION ALL SELECT f.id FROM follow_up f WHERE f.source = ?1 AND f.stray = 1)`
)

// FollowUp returns the follow-up with that id, or that was known by it before.
func (tx *Tx) FollowUp(id int64) (FollowUp, bool, error) {
	return first(all(tx, scanFollowUp, followUps+`WHERE f.id = ifnull((SELECT w.id FROM follow_up_was w WHERE w.was = ?1), ?1)`, id))
}

// OpenFollowUps returns a house's open follow-ups, soonest first.
func (tx *Tx) OpenFollowUps(site int64) ([]FollowUp, error) {
	return all(tx, scanFollowUp, openFollowUps, site)
}

var openFollowUps = `SELECT ` + followUpColumns + ` FROM ` + house1 + ` CROSS JOIN site s ON s.id = house CROSS JOIN follow_up f ON ` + beside("f", "house") + `
	WHERE f.state = 'open' ORDER BY f.due, f.id`

// FollowUpsOf returns a person's open follow-ups, soonest first.
func (tx *Tx) FollowUpsOf(owner string, limit int) ([]FollowUp, error) {
	return all(tx, scanFollowUp, followUps+`WHERE f.owner = ? AND f.state = 'open' ORDER BY f.due, f.id LIMIT ?`, owner, limit)
}

// DueFollowUps returns the open follow-ups due by a day, soonest first; limit
// 0 means all.
func (tx *Tx) DueFollowUps(by assess.Date, limit int) ([]FollowUp, error) {
	if limit == 0 {
		limit = -1
	}
	return all(tx, scanFollowUp, followUps+`WHERE f.id IN (`+dueOfEach+`) ORDER BY f.due, f.id LIMIT ?2`, by.String(), limit)
}

// dueOfEach are the follow-ups due by a day, the query's first argument, of
// each owner as many as its second argument says: one index serves for a
// person's follow-ups and for all.
const dueOfEach = `WITH RECURSIVE owners (owner) AS (SELECT min(owner) FROM follow_up WHERE state = 'open'
		UNION ALL SELECT (SELECT min(owner) FROM follow_up WHERE state = 'open' AND owner > owners.owner) FROM owners WHERE owner IS NOT NULL)
	SELECT d.id FROM owners JOIN follow_up d ON d.id IN (SELECT id FROM follow_up WHERE owner = owners.owner AND state = 'open' AND due <= ?1 ORDER BY due, id LIMIT ?2)`

// EndedFollowUps returns the follow-ups that came to an end in a span of time,
// as "done" or "dropped".
func (tx *Tx) EndedFollowUps(state string, from, to time.Time) ([]FollowUp, error) {
	return all(tx, scanFollowUp, endedFollowUps, millis(from), millis(to), state)
}

// endedFollowUps finds them by the messages of those days that settled some, and
// those that no message of their own house did.
var endedFollowUps = followUps + `WHERE f.id IN (
		SELECT e.id FROM diary d CROSS JOIN message m ON ` + onPage("m", "d") + ` CROSS JOIN follow_up e ON ` + beside("e", "m.site") + ` AND e.ended_by = m.id
			WHERE d.day >= date(?1 / 1000, 'unixepoch') AND d.day <= date(?2 / 1000, 'unixepoch')
		UNION SELECT e.id FROM follow_up e WHERE e.ended >= ?1 AND e.ended < ?2 AND e.ended IS NOT NULL AND (e.ended_by IS NULL OR e.stray = 1))
	AND f.ended >= ?1 AND f.ended < ?2 AND f.state = ?3 ORDER BY f.ended, f.id`

// EndFollowUp closes an open follow-up as "done" or "dropped"; by is the
// message that says so, 0 for none.
func (tx *Tx) EndFollowUp(id int64, state string, at time.Time, by int64) error {
	err := tx.put(`UPDATE follow_up SET state = ?2, ended = ?3, ended_by = nullif(?4, 0), stray = max(stray, (SELECT m.site FROM message m WHERE m.id = ?4) IS NOT site)
		WHERE id = ?1 AND state = 'open'`, id, state, millis(at), by)
	if err != nil || by == 0 {
		return err
	}
	return tx.noteDay(assess.DateOf(at.UTC()), by)
}

// MoveFollowUp puts an open follow-up off to a day.
func (tx *Tx) MoveFollowUp(id int64, due assess.Date) error {
	_, err := tx.exec(`UPDATE follow_up SET due = ?, posted = '' WHERE id = ? AND state = 'open'`, due.String(), id)
	return err
}

// HandFollowUp gives an open follow-up to another person.
func (tx *Tx) HandFollowUp(id int64, owner string) error {
	_, err := tx.exec(`UPDATE follow_up SET owner = ?, posted = '' WHERE id = ? AND state = 'open'`, owner, id)
	return err
}

// FollowUpPosted notes the day on which a follow-up was posted to the team.
func (tx *Tx) FollowUpPosted(id int64, day assess.Date) error {
	_, err := tx.exec(`UPDATE follow_up SET posted = ? WHERE id = ? AND state = 'open'`, day.String(), id)
	return err
}

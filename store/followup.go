package store

import (
	"errors"
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
}

const followUps = `SELECT f.id, f.site, s.line, s.street, s.postcode, f.action, f.due, f.why, f.owner, f.source, f.clock, f.urgency, f.posted, f.state
	FROM follow_up f JOIN site s ON s.id = f.site `

func scanFollowUp(scan func(...any) error) (FollowUp, error) {
	var f FollowUp
	var due, posted string
	if err := scan(&f.ID, &f.Site, &f.Line, &f.Street, &f.Postcode, &f.Action, &due, &f.Why, &f.Owner, &f.Source, &f.Clock, &f.Urgency, &posted, &f.State); err != nil {
		return f, err
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
	_, err := tx.exec(`INSERT INTO follow_up (id, site, action, due, why, owner, source, opened, clock, urgency) VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?7, ?8, ?9)
		ON CONFLICT (site, action) WHERE state = 'open' DO UPDATE
		SET was = CASE WHEN source <> excluded.source THEN `+earlier+` ELSE was END, due = excluded.due, why = excluded.why, owner = excluded.owner, source = excluded.source, urgency = excluded.urgency, posted = ''`,
		tx.idBefore("follow_up", f.Source, string(f.Action)), f.Site, f.Action, f.Due.String(), f.Why, f.Owner, f.Source, f.Clock, f.Urgency)
	return err
}

// TakeBackFollowUps undoes what a withdrawn message did: what it asked for
// goes, what it moved goes back, what it settled is open again.
func (tx *Tx) TakeBackFollowUps(message int64, at time.Time) error {
	if _, err := tx.exec(`UPDATE follow_up SET due = was ->> '$.due', why = was ->> '$.why', owner = was ->> '$.owner', source = was ->> '$.source',
		urgency = was ->> '$.urgency', posted = was ->> '$.posted', was = was -> '$.was' WHERE source = ? AND state = 'open' AND was IS NOT NULL AND was <> 'null'`, message); err != nil {
		return err
	}
	if _, err := tx.exec(`UPDATE follow_up SET state = 'dropped', ended = ? WHERE source = ? AND state = 'open'`, millis(at), message); err != nil {
		return err
	}
	_, err := tx.exec(`UPDATE OR IGNORE follow_up SET state = 'open', ended = NULL, ended_by = NULL WHERE ended = (SELECT at FROM message WHERE id = ?1) AND ended_by = ?1 AND state = 'done'`, message)
	return err
}

// FollowUp returns the follow-up with that id.
func (tx *Tx) FollowUp(id int64) (FollowUp, bool, error) {
	return first(all(tx, scanFollowUp, followUps+`WHERE f.id = ?`, id))
}

// OpenFollowUps returns a house's open follow-ups, soonest first.
func (tx *Tx) OpenFollowUps(site int64) ([]FollowUp, error) {
	return all(tx, scanFollowUp, followUps+`WHERE f.site IN `+groupOf1+` AND f.state = 'open' ORDER BY f.due, f.id`, site)
}

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
	return all(tx, scanFollowUp, followUps+`WHERE f.ended >= ? AND f.ended < ? AND f.state = ? ORDER BY f.ended`, millis(from), millis(to), state)
}

// EndFollowUp closes an open follow-up as "done" or "dropped"; by is the
// message that says so, 0 for none.
func (tx *Tx) EndFollowUp(id int64, state string, at time.Time, by int64) error {
	_, err := tx.exec(`UPDATE follow_up SET state = ?, ended = ?, ended_by = nullif(?, 0) WHERE id = ? AND state = 'open'`, state, millis(at), by, id)
	return err
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

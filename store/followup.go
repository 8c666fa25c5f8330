package store

import (
	"time"

	"lazyhand/assess"
)

// FollowUp is something to be done at a house by a day.
type FollowUp struct {
	ID     int64
	Site   int64
	Line   string // the house's street line
	Action assess.Action
	Due    assess.Date
	Why    string
	Owner  string
	Source int64 // the message it came from
	Clock  bool  // the calendar opened it, not what the message said
	Posted string
}

const followUps = `SELECT f.id, f.site, s.line, f.action, f.due, f.why, f.owner, f.source, f.clock, f.posted FROM follow_up f JOIN site s ON s.id = f.site `

func scanFollowUp(scan func(...any) error) (FollowUp, error) {
	var f FollowUp
	var due string
	if err := scan(&f.ID, &f.Site, &f.Line, &f.Action, &due, &f.Why, &f.Owner, &f.Source, &f.Clock, &f.Posted); err != nil {
		return f, err
	}
	return f, f.Due.UnmarshalText([]byte(due))
}

// KeepFollowUp opens a follow-up; when one for the same house and action is
// open, it moves that one.
func (tx *Tx) KeepFollowUp(f FollowUp) error {
	_, err := tx.exec(`INSERT INTO follow_up (id, site, action, due, why, owner, source, opened, clock) VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?7, ?8)
		ON CONFLICT (site, action) WHERE state = 'open' DO UPDATE
		SET due = excluded.due, why = excluded.why, owner = excluded.owner, source = excluded.source, posted = ''`,
		tx.idBefore("follow_up", f.Source, string(f.Action)), f.Site, f.Action, f.Due.String(), f.Why, f.Owner, f.Source, f.Clock)
	return err
}

// OpenFollowUps returns a house's open follow-ups, soonest first.
func (tx *Tx) OpenFollowUps(site int64) ([]FollowUp, error) {
	return all(tx, scanFollowUp, followUps+`WHERE f.site IN `+groupOf1+` AND f.state = 'open' ORDER BY f.due, f.id`, site)
}

// DueFollowUps returns the open follow-ups due by a day, soonest first; limit
// 0 means all.
func (tx *Tx) DueFollowUps(by assess.Date, limit int) ([]FollowUp, error) {
	if limit == 0 {
		limit = -1
	}
	return all(tx, scanFollowUp, followUps+`WHERE f.due <= ? AND f.state = 'open' ORDER BY f.due, f.id LIMIT ?`, by.String(), limit)
}

// EndFollowUp closes an open follow-up as "done" or "dropped".
func (tx *Tx) EndFollowUp(id int64, state string, at time.Time) error {
	_, err := tx.exec(`UPDATE follow_up SET state = ?, ended = ? WHERE id = ? AND state = 'open'`, state, millis(at), id)
	return err
}

// MoveFollowUp puts an open follow-up off to a day.
func (tx *Tx) MoveFollowUp(id int64, due assess.Date) error {
	_, err := tx.exec(`UPDATE follow_up SET due = ?, posted = '' WHERE id = ? AND state = 'open'`, due.String(), id)
	return err
}

// FollowUpPosted notes the day on which a follow-up was posted to the team.
func (tx *Tx) FollowUpPosted(id int64, day assess.Date) error {
	_, err := tx.exec(`UPDATE follow_up SET posted = ? WHERE id = ? AND state = 'open'`, day.String(), id)
	return err
}

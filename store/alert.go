package store

import (
	"time"

	"lazyhand/assess"
)

// Alert is a house that a dispatcher must act on.
type Alert struct {
	ID       int64
	Site     int64
	Codes    string // the findings that raised it, separated by blanks
	Urgency  assess.Urgency
	State    string // raised, claimed, booked, settled, closed
	RaisedAt time.Time
	Source   int64 // the message that raised it
	Owner    string
	Booked   string
	Tech     string
	Change   int // counts what was said about it
	Reason   string
}

const alertColumns = `id, site, codes, urgency, state, raised_at, source, owner, booked, tech, change, reason`

func scanAlert(scan func(...any) error) (Alert, error) {
	var a Alert
	var at int64
	err := scan(&a.ID, &a.Site, &a.Codes, &a.Urgency, &a.State, &at, &a.Source, &a.Owner, &a.Booked, &a.Tech, &a.Change, &a.Reason)
	a.RaisedAt = fromMillis(at)
	return a, err
}

func (tx *Tx) alerts(where string, args ...any) ([]Alert, error) {
	return all(tx, scanAlert, `SELECT `+alertColumns+` FROM alert `+where, args...)
}

// Alert returns the alert with that id.
func (tx *Tx) Alert(id int64) (Alert, bool, error) { return first(tx.alerts(`WHERE id = ?`, id)) }

// OpenAlert returns the house's alert that is not settled or closed yet.
func (tx *Tx) OpenAlert(site int64) (Alert, bool, error) {
	return first(tx.alerts(`WHERE site IN `+groupOf1+` AND state IN ('raised', 'claimed', 'booked') ORDER BY id`, site))
}

// OpenAlerts returns all alerts that are not settled or closed, oldest first.
func (tx *Tx) OpenAlerts() ([]Alert, error) {
	return tx.alerts(`WHERE state IN ('raised', 'claimed', 'booked') ORDER BY id`)
}

// RaiseAlert opens an alert.
func (tx *Tx) RaiseAlert(a Alert, who string) (int64, error) {
	id, err := tx.insert(`INSERT INTO alert (id, site, codes, urgency, raised_at, source) VALUES (?, ?, ?, ?, ?, ?)`,
		tx.idBefore("alert", a.Source, ""), a.Site, a.Codes, a.Urgency, millis(a.RaisedAt), a.Source)
	if err != nil {
		return 0, err
	}
	return id, tx.alertStep(id, a.RaisedAt, who, "raised")
}

// ChangeAlert moves an open alert on and notes the step; it does nothing to one that
// is settled or closed.
func (tx *Tx) ChangeAlert(a Alert, at time.Time, who, what string) error {
	n, err := tx.exec(`UPDATE alert SET codes = ?, urgency = ?, state = ?, owner = ?, booked = ?, tech = ?, change = change + 1, reason = ?,
		ended = CASE WHEN ? IN ('settled', 'closed') THEN ? END WHERE id = ? AND state IN ('raised', 'claimed', 'booked')`,
		a.Codes, a.Urgency, a.State, a.Owner, a.Booked, a.Tech, a.Reason, a.State, millis(at), a.ID)
	if err != nil || n == 0 {
		return err
	}
	return tx.alertStep(a.ID, at, who, what)
}

func (tx *Tx) alertStep(id int64, at time.Time, who, what string) error {
	_, err := tx.exec(`INSERT INTO alert_step (alert, n, at, who, what)
		SELECT ?1, (SELECT count(*) FROM alert_step WHERE alert = ?1), ?, ?, ?`, id, millis(at), who, what)
	return err
}

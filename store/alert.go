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
	Source   int64       // the message that raised it
	Owner    string      // id of who claimed it
	Booked   assess.Date // day of the visit, zero for none
	Part     string      // of that day: morning, afternoon or empty
	Tech     string      // id of who goes
	Change   int         // counts what was said about it
	Ended    time.Time   // zero while it is open
	Reason   string
}

// Open tells whether somebody must still act.
func (a Alert) Open() bool { return a.State == "raised" || a.State == "claimed" || a.State == "booked" }

const alertColumns = `id, site, codes, urgency, state, raised_at, source, owner, booked, part, tech, change, ifnull(ended, 0), reason`

// stillOpen is the condition that an alert is neither settled nor closed, as the
// indexes of those have it.
const stillOpen = `state NOT IN ('settled', 'closed')`

func scanAlert(scan func(...any) error) (Alert, error) {
	var a Alert
	var at, ended int64
	var booked string
	if err := scan(&a.ID, &a.Site, &a.Codes, &a.Urgency, &a.State, &at, &a.Source, &a.Owner, &booked, &a.Part, &a.Tech, &a.Change, &ended, &a.Reason); err != nil {
		return a, err
	}
	a.RaisedAt = fromMillis(at)
	if ended != 0 {
		a.Ended = fromMillis(ended)
	}
	return a, a.Booked.UnmarshalText([]byte(booked))
}

func (tx *Tx) alerts(where string, args ...any) ([]Alert, error) {
	return all(tx, scanAlert, `SELECT `+alertColumns+` FROM alert `+where, args...)
}

// Alert returns the alert with that id.
func (tx *Tx) Alert(id int64) (Alert, bool, error) { return first(tx.alerts(`WHERE id = ?`, id)) }

// OpenAlert returns the house's alert that is not settled or closed yet.
func (tx *Tx) OpenAlert(site int64) (Alert, bool, error) {
	return first(all(tx, scanAlert, `SELECT `+alertColumns+` FROM `+house1+` CROSS JOIN alert ON site = house WHERE `+stillOpen+` ORDER BY id`, site))
}

// OpenAlerts returns all alerts that are not settled or closed, oldest first.
func (tx *Tx) OpenAlerts() ([]Alert, error) {
	return tx.alerts(`WHERE ` + stillOpen + ` ORDER BY id`)
}

// AlertsRaised returns the alerts raised in a span of time, oldest first.
func (tx *Tx) AlertsRaised(from, to time.Time) ([]Alert, error) {
	return tx.alerts(`WHERE raised_at >= ? AND raised_at < ? ORDER BY raised_at, id`, millis(from), millis(to))
}

// AlertsEnded returns the alerts settled or closed in a span of time.
func (tx *Tx) AlertsEnded(from, to time.Time) ([]Alert, error) {
	return tx.alerts(`WHERE ended >= ? AND ended < ? ORDER BY ended, id`, millis(from), millis(to))
}

// AlertsEndedBy returns the alerts that a message settled or closed.
func (tx *Tx) AlertsEndedBy(message int64) ([]Alert, error) {
	return tx.alerts(`WHERE ended_by = ?`, message)
}

// RaiseAlert opens an alert.
func (tx *Tx) RaiseAlert(a Alert, who string) (int64, error) {
	id, err := tx.insert(`INSERT INTO alert (id, site, codes, urgency, raised_at, source, opened) VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?6)`,
		tx.idBefore("alert", a.Source), a.Site, a.Codes, a.Urgency, millis(a.RaisedAt), a.Source)
	if err != nil {
		return 0, err
	}
	return id, tx.alertStep(id, a.RaisedAt, who, "raised")
}

// ChangeAlert moves an open alert on and notes the step; it does nothing to one that
// is settled or closed. by is the message that did it, 0 for none.
func (tx *Tx) ChangeAlert(a Alert, at time.Time, who, what string, by int64) error {
	n, err := tx.exec(`UPDATE alert SET codes = ?, urgency = ?, state = ?, source = ?, owner = ?, booked = ?, part = ?, tech = ?, change = change + 1, reason = ?,
		ended = CASE WHEN ?3 IN ('settled', 'closed') THEN ? END, ended_by = CASE WHEN ?3 IN ('settled', 'closed') THEN nullif(?, 0) END
		WHERE id = ? AND `+stillOpen,
		a.Codes, a.Urgency, a.State, a.Source, a.Owner, a.Booked.String(), a.Part, a.Tech, a.Reason, millis(at), by, a.ID)
	if err != nil || n == 0 {
		return err
	}
	return tx.alertStep(a.ID, at, who, what)
}

// ReopenAlert opens an alert again whose end has proved wrong, unless the house
// has another one open.
func (tx *Tx) ReopenAlert(id int64, at time.Time, who, why string) (reopened bool, err error) {
	n, err := tx.exec(`UPDATE OR IGNORE alert SET state = CASE WHEN booked <> '' THEN 'booked' WHEN owner <> '' THEN 'claimed' ELSE 'raised' END,
		ended = NULL, ended_by = NULL, reason = '', change = change + 1 WHERE id = ? AND state IN ('settled', 'closed')`, id)
	if err != nil || n == 0 {
		return false, err
	}
	return true, tx.alertStep(id, at, who, why)
}

func (tx *Tx) alertStep(id int64, at time.Time, who, what string) error {
	_, err := tx.exec(`INSERT INTO alert_step (alert, n, at, who, what)
		SELECT ?1, (SELECT count(*) FROM alert_step WHERE alert = ?1), ?, ?, ?`, id, millis(at), who, what)
	return err
}

// AlertStep is one step in an alert's life.
type AlertStep struct {
	At   time.Time
	Who  string
	What string
}

// NoteAlertStep notes a step that does not move the alert.
func (tx *Tx) NoteAlertStep(id int64, at time.Time, who, what string) error {
	return tx.alertStep(id, at, who, what)
}

// AlertSteps returns an alert's life, step by step.
func (tx *Tx) AlertSteps(id int64) ([]AlertStep, error) {
	return all(tx, func(scan func(...any) error) (AlertStep, error) {
		var s AlertStep
		var at int64
		err := scan(&at, &s.Who, &s.What)
		s.At = fromMillis(at)
		return s, err
	}, `SELECT at, who, what FROM alert_step WHERE alert = ? ORDER BY n`, id)
}

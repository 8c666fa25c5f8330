package store

import "time"

// Due is something that is to happen at a planned time, once.
type Due struct {
	Key   string // its cause
	Kind  string
	About int64 // the row that it is about
	At    time.Time
}

// PlanDue plans something; what was planned under the same key before stays as
// it is, done or not.
func (tx *Tx) PlanDue(d Due) error {
	_, err := tx.exec(`INSERT INTO due (key, kind, about, at) VALUES (?, ?, ?, ?) ON CONFLICT DO NOTHING`, d.Key, d.Kind, d.About, millis(d.At))
	return err
}

// DueBy returns what was planned for a time up to now, in its order.
func (tx *Tx) DueBy(now time.Time, limit int) ([]Due, error) {
	return all(tx, func(scan func(...any) error) (Due, error) {
		var d Due
		var at int64
		err := scan(&d.Key, &d.Kind, &d.About, &at)
		d.At = fromMillis(at)
		return d, err
	}, `SELECT key, kind, about, at FROM due WHERE state = 'planned' AND at <= ? ORDER BY at, key LIMIT ?`, millis(now), limit)
}

// DueDone notes that something happened; it tells whether it was still to be
// done.
func (tx *Tx) DueDone(key string) (bool, error) {
	n, err := tx.exec(`UPDATE due SET state = 'done' WHERE key = ? AND state = 'planned'`, key)
	return n == 1, err
}

// PutOffDue moves something planned to a later time.
func (tx *Tx) PutOffDue(key string, at time.Time) error {
	_, err := tx.exec(`UPDATE due SET at = ? WHERE key = ? AND state = 'planned'`, millis(at), key)
	return err
}

// DropDue drops what is planned of a kind about a row.
func (tx *Tx) DropDue(kind string, about int64) error {
	_, err := tx.exec(`UPDATE due SET state = 'dropped' WHERE kind = ? AND about = ? AND state = 'planned'`, kind, about)
	return err
}

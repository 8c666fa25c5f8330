package store

import (
	"fmt"

	"lazyhand/assess"
)

// Outlook is what a house's last report leaves to expect, for lists over all
// houses; it is derived. It stands with the house.
type Outlook struct {
	Site     int64       // only read
	Line     string      // the house's street line; only read
	Day      assess.Date // of the last visit
	HousePSI *float64    // the last that a visit supported
	Drift    assess.DriftState
	Slope    *float64    // psi a year
	Crosses  assess.Date // when the trend leaves the band, zero for never
	Rank     int         // of the gravest finding: 0 now, 1 soon, 2 watch, 3 note
	Finding  string      // its code
}

// expectsNothing is the outlook of a house of which nothing is reported.
const expectsNothing = `visited = '', drift = '', slope = NULL, crosses = NULL, rank = NULL, finding = ''`

func (tx *Tx) outlooks(where string, args ...any) ([]Outlook, error) {
	return all(tx, func(scan func(...any) error) (Outlook, error) {
		var s Outlook
		var day, crosses string
		if err := scan(&s.Site, &s.Line, &day, &s.HousePSI, &s.Drift, &s.Slope, &crosses, &s.Rank, &s.Finding); err != nil {
			return s, err
		}
		if err := s.Day.UnmarshalText([]byte(day)); err != nil {
			return s, err
		}
		return s, s.Crosses.UnmarshalText([]byte(crosses))
	}, `SELECT id, line, visited, psi, drift, slope, ifnull(crosses, ''), rank, finding FROM site `+where, args...)
}

// Drifting returns the houses whose pressure rises or falls, those that leave
// the band soonest first.
func (tx *Tx) Drifting(limit int) ([]Outlook, error) {
	return tx.outlooks(`WHERE drift IN ('rising', 'falling') ORDER BY crosses IS NULL, crosses, id LIMIT ?`, limit)
}

// OldValve is a regulator that serves since a year.
type OldValve struct {
	Line string // the house's street line
	Year int
}

// ValvesBefore returns the regulators in service that were installed before a
// year, oldest first, and how many there are.
func (tx *Tx) ValvesBefore(year, limit int) (list []OldValve, n int, err error) {
	before := fmt.Sprintf("%04d", year)
	const old = `FROM equipment e JOIN site s ON s.id = e.site WHERE e.item = 'prv' AND e.installed > '' AND e.installed < ? AND e.ended = '' AND e.absent = 0`
	list, err = all(tx, func(scan func(...any) error) (OldValve, error) {
		var v OldValve
		return v, scan(&v.Line, &v.Year)
	}, `SELECT s.line, CAST(substr(e.installed, 1, 4) AS INTEGER) `+old+` ORDER BY e.installed, e.site LIMIT ?`, before, limit)
	if err != nil {
		return nil, 0, err
	}
	_, err = tx.one([]any{&n}, `SELECT count(*) `+old, before)
	return list, n, err
}

// NewThing is something that was put in on a day.
type NewThing struct {
	Line string // the house's street line
	Day  string
}

// PutIn returns the things of a kind that were put in from a day up to, not including, another,
// newest first, and how many there are. What was told to be of a year was put in by others.
func (tx *Tx) PutIn(item assess.Item, from, to assess.Date, limit int) (list []NewThing, n int, err error) {
	const put = `FROM equipment e JOIN site s ON s.id = e.site WHERE e.item = ? AND e.installed > '' AND e.installed >= ? AND e.installed < ?
		AND length(e.installed) = 10 AND e.absent = 0`
	list, err = all(tx, func(scan func(...any) error) (NewThing, error) {
		var x NewThing
		return x, scan(&x.Line, &x.Day)
	}, `SELECT s.line, e.installed `+put+` ORDER BY e.installed DESC, e.site LIMIT ?`, item, from.String(), to.String(), limit)
	if err != nil {
		return nil, 0, err
	}
	_, err = tx.one([]any{&n}, `SELECT count(*) `+put, item, from.String(), to.String())
	return list, n, err
}

// Gravest returns the houses with the gravest findings, up to a rank of at most
// 1, the newest of them first.
func (tx *Tx) Gravest(rank, limit int) ([]Outlook, error) {
	return tx.outlooks(`WHERE rank <= 1 AND rank <= ? ORDER BY rank, visited DESC, id LIMIT ?`, rank, limit)
}

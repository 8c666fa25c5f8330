package store

import (
	"encoding/json"
	"time"

	"lazyhand/assess"
)

// Report is what one message said about one house.
type Report struct {
	ID         int64
	Message    int64
	Site       int64
	Day        assess.Date
	At         time.Time
	Author     string
	Statements json.RawMessage // list of statements, as in the message's frame
}

// Verdict is what an assessment made of a report; it is derived and can be
// made again.
type Verdict struct {
	HousePSI  *float64
	StreetPSI *float64
	Band      assess.Band
	ValveWork bool // work on the regulator: a new series of readings begins
}

// AddReport keeps a report. A message has one; a second one replaces it.
func (tx *Tx) AddReport(r Report) (int64, error) {
	if _, err := tx.exec(`DELETE FROM report WHERE message = ?`, r.Message); err != nil {
		return 0, err
	}
	return tx.insert(`INSERT INTO report (message, site, day, at, author, statements) VALUES (?, ?, ?, ?, ?, ?)`,
		r.Message, r.Site, r.Day.String(), millis(r.At), r.Author, string(r.Statements))
}

// DropReport takes back what a message reported.
func (tx *Tx) DropReport(message int64) error {
	_, err := tx.exec(`DELETE FROM report WHERE message = ?`, message)
	return err
}

// Judge keeps the verdict on a report and its readings, in the order told.
func (tx *Tx) Judge(report int64, v Verdict, read []assess.Reading, judged []assess.JudgedReading) error {
	if _, err := tx.exec(`UPDATE report SET house_psi = ?, street_psi = ?, band = ?, valve_work = ? WHERE id = ?`,
		v.HousePSI, v.StreetPSI, v.Band, v.ValveWork, report); err != nil {
		return err
	}
	if _, err := tx.exec(`DELETE FROM reading WHERE report = ?`, report); err != nil {
		return err
	}
	for i, r := range read {
		j := assess.JudgedReading{Side: assess.UnsureSide, Fair: assess.Doubtful}
		if i < len(judged) {
			j = judged[i]
		}
		if _, err := tx.exec(`INSERT INTO reading (report, n, site, day, psi, point, heater, flow, peak, moment, side, fair)
			SELECT id, ?, site, day, ?, ?, ?, ?, ?, ?, ?, ? FROM report WHERE id = ?`,
			i, r.PSI, r.Point, r.Heater, r.Flow, r.Peak, r.When, j.Side, j.Fair, report); err != nil {
			return err
		}
	}
	return nil
}

func scanReport(scan func(...any) error) (Report, error) {
	var r Report
	var day, statements string
	var at int64
	if err := scan(&r.ID, &r.Message, &r.Site, &day, &at, &r.Author, &statements); err != nil {
		return r, err
	}
	r.At, r.Statements = fromMillis(at), json.RawMessage(statements)
	return r, r.Day.UnmarshalText([]byte(day))
}

// Reports returns what was reported about a house, oldest first.
func (tx *Tx) Reports(site int64) ([]Report, error) {
	return all(tx, scanReport, `SELECT id, message, site, day, at, author, statements FROM report WHERE site = ? ORDER BY day, at, id`, site)
}

// StreetReadings returns the fair street-side readings since a day at the
// houses of a street, newest first, leaving one house out.
func (tx *Tx) StreetReadings(street string, since assess.Date, except int64, limit int) ([]assess.Neighbour, error) {
	return all(tx, func(scan func(...any) error) (assess.Neighbour, error) {
		var n assess.Neighbour
		var day string
		if err := scan(&day, &n.PSI); err != nil {
			return n, err
		}
		return n, n.Date.UnmarshalText([]byte(day))
	}, `SELECT r.day, r.psi FROM site s JOIN reading r ON r.site = s.id
		WHERE s.street = ? AND s.id <> ? AND r.day >= ? AND r.side = 'street' AND r.fair = 'yes' ORDER BY r.day DESC LIMIT ?`,
		street, except, since.String(), limit)
}

// Tally counts what was reported in a span of days.
type Tally struct {
	Houses, Readings, Fair int
}

// Tally counts the reports from one day up to, not including, another.
func (tx *Tx) Tally(from, to assess.Date) (Tally, error) {
	var n Tally
	_, err := tx.one([]any{&n.Houses, &n.Readings, &n.Fair}, `SELECT count(DISTINCT r.site), count(d.n), ifnull(sum(d.fair = 'yes'), 0)
		FROM report r LEFT JOIN reading d ON d.report = r.id WHERE r.day >= ? AND r.day < ?`, from.String(), to.String())
	return n, err
}

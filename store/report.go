package store

import (
	"encoding/json"
	"slices"
	"time"

	"lazyhand/assess"
)

// Report is what one message said about one house.
type Report struct {
	Message int64
	Site    int64 // the house as it was named, see SiteRecord.Named
	Day     assess.Date
	At      time.Time
	Author  string
	Frame   json.RawMessage // the message's; read only
}

// Verdict is what an assessment made of a report; it is derived and can be
// made again.
type Verdict struct {
	HousePSI  *float64
	StreetPSI *float64
	Band      assess.Band
	ValveWork bool // work on the regulator: a new series of readings begins
	// Unfinished: work was done and no fair reading taken after it.
	Unfinished bool
}

// AddReport keeps a report. A message has one; a second one replaces it.
func (tx *Tx) AddReport(r Report) error {
	if _, err := tx.exec(`DELETE FROM report WHERE message = ?`, r.Message); err != nil {
		return err
	}
	_, err := tx.exec(`INSERT INTO report (message, site, day, at, author) VALUES (?, ?, ?, ?, ?)`,
		r.Message, r.Site, r.Day.String(), millis(r.At), r.Author)
	return err
}

// DropReport takes back what a message reported; reported is false when that
// was nothing.
func (tx *Tx) DropReport(message int64) (reported bool, err error) {
	n, err := tx.exec(`DELETE FROM report WHERE message = ?`, message)
	return n > 0, err
}

// judgedReading is a reading as it is kept.
type judgedReading struct {
	assess.Reading
	Side assess.Side
	Fair assess.Fair
}

// Judge keeps the verdict on a report and its readings, in the order told. What
// is kept already is left alone.
func (tx *Tx) Judge(r Report, v Verdict, read []assess.Reading, judged []assess.JudgedReading) error {
	_, err := tx.exec(`UPDATE report SET house_psi = ?1, street_psi = ?2, band = ?3, valve_work = ?4, unfinished = ?5 WHERE message = ?6
		AND NOT (house_psi IS ?1 AND street_psi IS ?2 AND band = ?3 AND valve_work = ?4 AND unfinished = ?5)`,
		v.HousePSI, v.StreetPSI, v.Band, v.ValveWork, v.Unfinished, r.Message)
	if err != nil {
		return err
	}
	day := r.Day.String()
	kept, err := all(tx, func(scan func(...any) error) (k judgedReading, err error) {
		err = scan(&k.PSI, &k.Point, &k.Heater, &k.Flow, &k.Peak, &k.When, &k.Side, &k.Fair)
		return k, err
	}, `SELECT psi, point, heater, flow, peak, moment, side, fair FROM reading WHERE site = ?+0 AND day = ?||'' AND report = ?+0 ORDER BY n`, r.Site, day, r.Message)
	if err != nil {
		return err
	}
	main := false
	list := make([]judgedReading, len(read))
	for i, r := range read {
		list[i] = judgedReading{r, assess.UnsureSide, assess.Doubtful}
		if i < len(judged) {
			list[i].Side, list[i].Fair = judged[i].Side, judged[i].Fair
		}
		main = main || list[i].Side == assess.StreetSide && list[i].Fair == assess.FairYes
	}
	if slices.Equal(kept, list) {
		return nil
	}
	if len(kept) > 0 {
		if _, err := tx.exec(`DELETE FROM reading WHERE site = ? AND day = ? AND report = ?`, r.Site, day, r.Message); err != nil {
			return err
		}
	}
	for i, j := range list {
		if _, err := tx.exec(`INSERT INTO reading (site, day, report, n, psi, point, heater, flow, peak, moment, side, fair) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)`,
			r.Site, day, r.Message, i, j.PSI, j.Point, j.Heater, j.Flow, j.Peak, j.When, j.Side, j.Fair); err != nil {
			return err
		}
	}
	if main {
		_, err = tx.exec(`UPDATE site SET main = 1 WHERE id = ? AND main = 0`, r.Site)
	}
	return err
}

func scanReport(scan func(...any) error) (Report, error) {
	var r Report
	var day string
	var frame *string
	var at int64
	if err := scan(&r.Message, &r.Site, &day, &at, &r.Author, &frame); err != nil {
		return r, err
	}
	r.At = fromMillis(at)
	if frame != nil {
		r.Frame = json.RawMessage(*frame)
	}
	return r, r.Day.UnmarshalText([]byte(day))
}

const reportsOfSite = `SELECT r.message, r.site, r.day, r.at, r.author, m.frame FROM report r JOIN message m ON m.id = r.message
	WHERE r.site IN ` + groupOf1 + ` ORDER BY r.day, r.at, r.message`

// Reports returns what was reported about a house, oldest first.
func (tx *Tx) Reports(site int64) ([]Report, error) { return all(tx, scanReport, reportsOfSite, site) }

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
		WHERE s.street = ?||'' AND s.main = 1 AND ifnull(s.joined, s.id) <> ?+0 AND r.day >= ?||'' AND r.side = 'street' AND r.fair = 'yes' ORDER BY r.day DESC LIMIT ?+0`,
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
		FROM report r LEFT JOIN reading d ON d.site = r.site AND d.day = r.day AND d.report = r.message WHERE r.day >= ? AND r.day < ?`, from.String(), to.String())
	return n, err
}

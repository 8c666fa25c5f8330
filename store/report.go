package store

import (
	"encoding/json"
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
	judged  kept            // known of what Reports returns
}

// kept is what a report's row says of a verdict.
type kept struct {
	Verdict
	readings string // as JSON
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

// AddReport keeps what a message reported, with the verdict on it and its
// readings, in the order told. The message has been filed under the same house
// and has no report yet.
func (tx *Tx) AddReport(r Report, v Verdict, read []assess.Reading, judged []assess.JudgedReading) error {
	now, main, err := keep(v, read, judged)
	if err != nil {
		return err
	}
	err = tx.put(`INSERT INTO report (site, day, at, message, author, house_psi, street_psi, band, valve_work, unfinished, readings) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)`,
		r.Site, r.Day.String(), millis(r.At), r.Message, r.Author, v.HousePSI, v.StreetPSI, v.Band, v.ValveWork, v.Unfinished, now.readings)
	if err != nil {
		return err
	}
	if err := tx.noteDay(r.Day, r.Message); err != nil || !main {
		return err
	}
	return tx.shownMain(r.Site)
}

// DropReport takes back what a message reported; reported is false when that
// was nothing.
func (tx *Tx) DropReport(message int64) (reported bool, err error) {
	n, err := tx.exec(dropReport, message)
	return n > 0, err
}

const dropReport = `DELETE FROM report WHERE site = (SELECT site FROM message WHERE id = ?1) AND message = ?1`

// keptReading is a reading with its verdict as the table's comment tells it.
func keptReading(r assess.Reading, side assess.Side, fair assess.Fair) []any {
	peak := 0
	if r.Peak {
		peak = 1
	}
	return []any{r.PSI, r.Point, r.Heater, r.Flow, peak, r.When, side, fair}
}

// Judge keeps a new verdict on a report that Reports returned and its readings.
// What is kept already is left alone.
func (tx *Tx) Judge(r Report, v Verdict, read []assess.Reading, judged []assess.JudgedReading) error {
	now, main, err := keep(v, read, judged)
	if err != nil || now.same(r.judged) {
		return err
	}
	_, err = tx.exec(`UPDATE report SET house_psi = ?, street_psi = ?, band = ?, valve_work = ?, unfinished = ?, readings = ? WHERE site = ? AND day = ? AND at = ? AND message = ?`,
		v.HousePSI, v.StreetPSI, v.Band, v.ValveWork, v.Unfinished, now.readings, r.Site, r.Day.String(), millis(r.At), r.Message)
	if err != nil || !main {
		return err
	}
	return tx.shownMain(r.Site)
}

// keep makes what a report's row says of a verdict; main tells that a fair
// reading of the street's main is among the readings.
func keep(v Verdict, read []assess.Reading, judged []assess.JudgedReading) (k kept, main bool, err error) {
	list := make([][]any, len(read))
	for i, r := range read {
		side, fair := assess.UnsureSide, assess.Doubtful
		if i < len(judged) {
			side, fair = judged[i].Side, judged[i].Fair
		}
		main = main || side == assess.StreetSide && fair == assess.FairYes
		list[i] = keptReading(r, side, fair)
	}
	readings, err := json.Marshal(list)
	return kept{v, string(readings)}, main, err
}

// shownMain notes that the street main's pressure was read at a house.
func (tx *Tx) shownMain(site int64) error {
	_, err := tx.exec(`UPDATE site SET main = 1 WHERE id = ? AND main = 0`, site)
	return err
}

// same tells whether two rows say the same.
func (k kept) same(o kept) bool {
	equal := func(a, b *float64) bool { return a == b || a != nil && b != nil && *a == *b }
	return k.readings == o.readings && equal(k.HousePSI, o.HousePSI) && equal(k.StreetPSI, o.StreetPSI) &&
		k.Band == o.Band && k.ValveWork == o.ValveWork && k.Unfinished == o.Unfinished
}

// reportColumns are those of a report r; scanReport wants its message's frame
// after them.
const reportColumns = `r.message, r.site, r.day, r.at, r.author, r.house_psi, r.street_psi, r.band, r.valve_work, r.unfinished, r.readings`

func scanReport(scan func(...any) error) (Report, error) {
	var r Report
	var day string
	var frame *string
	var at int64
	v := &r.judged
	if err := scan(&r.Message, &r.Site, &day, &at, &r.Author, &v.HousePSI, &v.StreetPSI, &v.Band, &v.ValveWork, &v.Unfinished, &v.readings, &frame); err != nil {
		return r, err
	}
	r.At = fromMillis(at)
	if frame != nil {
		r.Frame = json.RawMessage(*frame)
	}
	return r, r.Day.UnmarshalText([]byte(day))
}

const reportsOfSite = `SELECT ` + reportColumns + `, m.frame FROM ` + house1 + ` CROSS JOIN report r ON r.site = house CROSS JOIN message m ON m.id = r.message
	ORDER BY r.day, r.at, r.message`

// Reports returns what was reported about a house, oldest first.
func (tx *Tx) Reports(site int64) ([]Report, error) { return all(tx, scanReport, reportsOfSite, site) }

// StreetReadings returns the fair street-side readings since a day at the
// houses of a street, newest first, leaving one house out.
func (tx *Tx) StreetReadings(street string, since assess.Date, except int64, limit int) ([]assess.Neighbour, error) {
	list, err := all(tx, func(scan func(...any) error) (assess.Neighbour, error) {
		var n assess.Neighbour
		var day string
		if err := scan(&day, &n.PSI); err != nil {
			return n, err
		}
		return n, n.Date.UnmarshalText([]byte(day))
	}, `SELECT r.day, r.psi FROM site s JOIN reading r ON r.site = s.id
		WHERE s.street = ?||'' AND s.main = 1 AND ifnull(s.joined, s.id) <> ?+0 AND r.day >= ?||'' AND r.side = 'street' AND r.fair = 'yes' ORDER BY r.day DESC`,
		street, except, since.String())
	return list[:min(limit, len(list))], err
}

// Tally counts what was reported in a span of days.
type Tally struct {
	Houses, Readings, Fair int
}

// Tally counts the reports from one day up to, not including, another.
func (tx *Tx) Tally(from, to assess.Date) (Tally, error) {
	var n Tally
	_, err := tx.one([]any{&n.Houses, &n.Readings, &n.Fair}, `SELECT count(DISTINCT r.site), count(e.key), ifnull(sum(e.value ->> 7 = 'yes'), 0)
		FROM `+reportsOfDays+` LEFT JOIN json_each(r.readings) e WHERE d.day >= ? AND d.day < ?`, from.String(), to.String())
	return n, err
}

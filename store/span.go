package store

import "lazyhand/assess"

// SpanReport is one report of a span of days, for lists.
type SpanReport struct {
	Message  int64
	Site     int64
	Line     string // the house's street line
	Day      assess.Date
	Author   string
	HousePSI *float64 // what the visit supports
	Band     assess.Band
	Readings int
	Fair     int
}

// ReportsBetween returns the reports from one day up to, not including,
// another, oldest first.
func (tx *Tx) ReportsBetween(from, to assess.Date, limit int) ([]SpanReport, error) {
	return all(tx, func(scan func(...any) error) (SpanReport, error) {
		var r SpanReport
		var day string
		if err := scan(&r.Message, &r.Site, &r.Line, &day, &r.Author, &r.HousePSI, &r.Band, &r.Readings, &r.Fair); err != nil {
			return r, err
		}
		return r, r.Day.UnmarshalText([]byte(day))
	}, `SELECT r.message, r.site, s.line, r.day, r.author, r.house_psi, r.band,
			json_array_length(r.readings), (SELECT count(*) FROM json_each(r.readings) e WHERE e.value ->> 7 = 'yes')
		FROM `+reportsOfDays+` JOIN site s ON s.id = r.site WHERE d.day >= ? AND d.day < ? ORDER BY r.day, r.message LIMIT ?`, from.String(), to.String(), limit)
}

// Authors returns who reported in a span of days, in the order of their first
// report.
func (tx *Tx) Authors(from, to assess.Date) ([]string, error) {
	return all(tx, func(scan func(...any) error) (string, error) {
		var a string
		return a, scan(&a)
	}, `SELECT r.author FROM `+reportsOfDays+` WHERE d.day >= ? AND d.day < ? GROUP BY r.author ORDER BY min(r.message)`, from.String(), to.String())
}

// StreetsRead returns the streets on which the main was read in a span of days.
func (tx *Tx) StreetsRead(from, to assess.Date, limit int) ([]string, error) {
	return all(tx, func(scan func(...any) error) (string, error) {
		var s string
		return s, scan(&s)
	}, `SELECT DISTINCT s.street FROM `+reportsOfDays+` JOIN site s ON s.id = r.site
		WHERE d.day >= ? AND d.day < ? AND EXISTS (SELECT 1 FROM json_each(r.readings) e WHERE e.value ->> 6 = 'street' AND e.value ->> 7 = 'yes') ORDER BY s.street LIMIT ?`, from.String(), to.String(), limit)
}

// SiteReading is a reading as it stands in a house's story.
type SiteReading struct {
	Day assess.Date
	assess.Reading
	Side assess.Side
	Fair assess.Fair
}

// ReadingsOf returns a house's readings, oldest first.
func (tx *Tx) ReadingsOf(site int64) ([]SiteReading, error) {
	return all(tx, func(scan func(...any) error) (SiteReading, error) {
		var r SiteReading
		var day string
		if err := scan(&day, &r.PSI, &r.Point, &r.Heater, &r.Flow, &r.Peak, &r.When, &r.Side, &r.Fair); err != nil {
			return r, err
		}
		return r, r.Day.UnmarshalText([]byte(day))
	}, `SELECT d.day, d.psi, d.point, d.heater, d.flow, d.peak, d.moment, d.side, d.fair FROM reading d
		WHERE d.site IN `+groupOf1+` ORDER BY d.day, d.at, d.report, d.n`, site)
}

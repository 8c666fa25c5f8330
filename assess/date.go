package assess

import (
	"fmt"
	"time"
)

// Date is a day on the calendar, with no hour and no zone: what a tech means
// by "today". The zero Date means that no day was told.
type Date struct {
	Year  int
	Month time.Month
	Day   int
}

// DateOf returns the day of t in t's own location.
func DateOf(t time.Time) Date {
	y, m, d := t.Date()
	return Date{y, m, d}
}

// ParseDate reads a day as YYYY-MM-DD.
func ParseDate(s string) (Date, error) {
	t, err := time.Parse(time.DateOnly, s)
	if err != nil {
		return Date{}, fmt.Errorf("%q is no date: write it as YYYY-MM-DD, for example 2026-06-15", s)
	}
	return DateOf(t), nil
}

// In returns the first instant of the day in loc.
func (d Date) In(loc *time.Location) time.Time {
	return time.Date(d.Year, d.Month, d.Day, 0, 0, 0, 0, loc)
}

// AddDays returns the day n days later, or earlier when n is negative.
func (d Date) AddDays(n int) Date { return DateOf(d.In(time.UTC).AddDate(0, 0, n)) }

// Sub returns the number of days from e to d.
func (d Date) Sub(e Date) int {
	return int(d.In(time.UTC).Sub(e.In(time.UTC)) / (24 * time.Hour))
}

// Before tells whether d lies before e.
func (d Date) Before(e Date) bool { return d.In(time.UTC).Before(e.In(time.UTC)) }

// IsZero tells whether no day was told.
func (d Date) IsZero() bool { return d == Date{} }

// String writes the day as YYYY-MM-DD, the zero Date as nothing.
func (d Date) String() string {
	if d.IsZero() {
		return ""
	}
	return fmt.Sprintf("%04d-%02d-%02d", d.Year, d.Month, d.Day)
}

// MarshalText writes the day as String does.
func (d Date) MarshalText() ([]byte, error) { return []byte(d.String()), nil }

// UnmarshalText reads what MarshalText wrote.
func (d *Date) UnmarshalText(b []byte) error {
	if len(b) == 0 {
		*d = Date{}
		return nil
	}
	v, err := ParseDate(string(b))
	if err != nil {
		return err
	}
	*d = v
	return nil
}

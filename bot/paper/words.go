package paper

import (
	"fmt"
	"math"
	"strconv"
	"strings"
	"time"

	"lazyhand/assess"
)

// words is all that pictures and papers say, in one language. On a sheet they
// speak to the people who live in the house: no word that only the trade knows
// stands there unexplained. A comment names what fills the places of a text.
type words struct {
	Code       string // of the language, as a document names it
	Psi        string
	Months     [12]string
	LongMonths [12]string
	Day        func(d assess.Date, month string) string // day and month
	Long       func(d assess.Date, month string) string // a whole date
	MonthYear  string                                   // month, year
	YearsOld   string                                   // years
	OneYearOld string
	InItsFirst string // year of its life
	AndMore    string // count

	// Plot
	Kind        map[kind]string
	KindLong    map[kind]string
	BandIs      string // low, high
	TrendLine   string
	JumpLine    string
	CrossMark   string
	NoReadings  string
	Now         string // psi, where in the band
	Band        map[assess.Band]string
	Steady      string
	Rises       string // psi a year, low, high
	Falls       string // likewise
	Jumped      string
	Leaves      string // month
	Left        string // month
	SetTo       string // psi
	Mark        map[assess.Action]string
	AltBand     string // low, high
	AltSpan     string // readings, from, to
	AltCross    string // day, early, late
	AltNewest   string // numbers, how many more
	AltMoreWork string // count

	// Week
	WeekTitle   string // from, to
	WeekCount   string // houses with a fair reading, readings
	WeekOut     string // low, high
	WeekNone    string // visits
	WeekEmpty   string
	Standing    map[assess.Band]string
	AltStanding string // what, houses

	sheet sheetWords
}

func wordsIn(l assess.Lang) *words {
	if l == assess.Spanish {
		return spanish()
	}
	return english()
}

// number writes a pressure or a size without needless digits.
func number(v float64) string {
	if math.IsNaN(v) || math.IsInf(v, 0) {
		return "?"
	}
	return strings.TrimSuffix(strconv.FormatFloat(math.Abs(v)*sign(v), 'f', 1, 64), ".0")
}

// sign is -1 for what is still below nothing once it is rounded to a tenth.
func sign(v float64) float64 {
	if v <= -0.05 {
		return -1
	}
	return 1
}

func month(names *[12]string, m time.Month) string {
	if m < 1 || m > 12 {
		return "?"
	}
	return names[m-1]
}

// dayMonth is a day within a year that is understood.
func (w *words) dayMonth(d assess.Date) string { return w.Day(d, month(&w.Months, d.Month)) }

// monthYear is a month.
func (w *words) monthYear(d assess.Date) string {
	return fmt.Sprintf(w.MonthYear, month(&w.Months, d.Month), d.Year)
}

// longDate is a whole date.
func (w *words) longDate(d assess.Date) string { return w.Long(d, month(&w.LongMonths, d.Month)) }

// mostWork is how many works of a day are told.
const mostWork = 3

// marked says what was done to the regulator on a day.
func (w *words) marked(m mark) string {
	var all []string
	for i, work := range m.work {
		if i == mostWork {
			all = append(all, fmt.Sprintf(w.AndMore, len(m.work)-i))
			break
		}
		s := w.Mark[work.Action]
		if work.ToPSI != nil {
			to := fmt.Sprintf(w.SetTo, number(*work.ToPSI))
			if work.Action == assess.SetPRV {
				s = to
			} else {
				s += ", " + to
			}
		}
		all = append(all, s)
	}
	return strings.Join(all, ", ")
}

// years says how old something is.
func (w *words) years(age int) string {
	switch {
	case age <= 0:
		return w.InItsFirst
	case age == 1:
		return w.OneYearOld
	}
	return fmt.Sprintf(w.YearsOld, age)
}

package paper

import (
	"math"
	"slices"

	"lazyhand/assess"
	"lazyhand/bot/desk"
)

// kind sorts readings by what may be believed of them. Each has its own shape.
type kind int

const (
	fairHouse kind = iota // fair, of the house
	doubtful              // of the house or of nobody knows which side
	notFair               // not static: water ran, or a peak
	street                // of the main
	kinds
)

// point is a reading as it is drawn.
type point struct {
	day  assess.Date
	psi  float64
	kind kind
}

// mostPSI is the highest pressure that is drawn: what is above it is a slip of
// the pen, and would flatten all the rest.
const mostPSI = 600

// mark is work on the regulator.
type mark struct {
	day  assess.Date
	work []assess.Work
}

// story is what a plot of a house shows, oldest first.
type story struct {
	points []point
	marks  []mark
	left   int // readings that cannot be drawn
}

// storyOf picks out of a house what can be drawn.
func storyOf(h desk.House) story {
	var s story
	for _, r := range h.Readings {
		if r.Day.IsZero() || math.IsNaN(r.PSI) || r.PSI < -1 || r.PSI > mostPSI {
			s.left++
			continue
		}
		p := point{r.Day, r.PSI, doubtful}
		switch {
		case r.Fair == assess.FairNo:
			p.kind = notFair
		case r.Fair == assess.FairYes && r.Side == assess.StreetSide:
			p.kind = street
		case r.Fair == assess.FairYes && r.Side == assess.HouseSide:
			p.kind = fairHouse
		}
		s.points = append(s.points, p)
	}
	for _, v := range h.Visits {
		if v.Date.IsZero() {
			continue
		}
		m := mark{day: v.Date}
		for _, w := range v.Work {
			if onValve(w.Action) {
				m.work = append(m.work, w)
			}
		}
		if m.work == nil {
			continue
		}
		if n := len(s.marks); n > 0 && s.marks[n-1].day == m.day {
			s.marks[n-1].work = append(s.marks[n-1].work, m.work...)
			continue
		}
		s.marks = append(s.marks, m)
	}
	return s
}

// onValve tells whether work changes what the regulator holds.
func onValve(a assess.Action) bool {
	return a == assess.SetPRV || a == assess.ReplacedPRV || a == assess.InstalledPRV || a == assess.RebuiltPRV
}

// count is how many readings of a kind there are.
func (s story) count(k kind) int {
	n := 0
	for _, p := range s.points {
		if p.kind == k {
			n++
		}
	}
	return n
}

// span is the first and the last day of what is drawn; ok is false when
// nothing is.
func (s story) span() (first, last assess.Date, ok bool) {
	see := func(d assess.Date) {
		if !ok || d.Before(first) {
			first = d
		}
		if !ok || last.Before(d) {
			last = d
		}
		ok = true
	}
	for _, p := range s.points {
		see(p.day)
	}
	for _, m := range s.marks {
		see(m.day)
	}
	return first, last, ok
}

// since returns the fair readings of the house since the last work on the
// regulator, one a day: those that a trend is made of. A day's last reading
// stands for it.
func (s story) since(h desk.House) []assess.DatedPSI {
	var from assess.Date
	if n := len(s.marks); n > 0 {
		from = s.marks[n-1].day
	}
	var out []assess.DatedPSI
	for _, r := range h.Readings {
		if r.Side != assess.HouseSide || r.Fair != assess.FairYes || r.Day.IsZero() || r.Day.Before(from) ||
			r.Day == from && r.When == assess.Before || math.IsNaN(r.PSI) || math.Abs(r.PSI) > mostPSI {
			continue
		}
		if n := len(out); n > 0 && out[n-1].Date == r.Day {
			out[n-1].PSI = r.PSI
			continue
		}
		out = append(out, assess.DatedPSI{Date: r.Day, PSI: r.PSI})
	}
	return out
}

// trend is a line through a series, in psi and days, with the steepest and the
// flattest that it may be; all three meet in the middle of the series.
type trend struct {
	from, to         assess.Date // of the series
	at               assess.Date // where the lines meet
	level            float64     // psi there
	slope, low, high float64     // psi a day
}

const daysPerYear = 365.25

// trendOf places the assessment's slope among the readings it was made of. The
// assessment does not tell the level: where it tells a crossing, the line goes
// through that; else through the middle of what the readings say.
func (s story) trendOf(h desk.House) (trend, bool) {
	d := h.Assessment.Drift
	series := s.since(h)
	if d.PSIPerYear == nil || d.Low == nil || d.High == nil || len(series) < 2 ||
		d.State != assess.Steady && d.State != assess.Rising && d.State != assess.Falling {
		return trend{}, false
	}
	t := trend{from: series[0].Date, to: series[len(series)-1].Date,
		slope: *d.PSIPerYear / daysPerYear, low: *d.Low / daysPerYear, high: *d.High / daysPerYear}
	for _, v := range []float64{t.slope, t.low, t.high} {
		if math.IsNaN(v) || math.IsInf(v, 0) {
			return trend{}, false
		}
	}
	mean := 0.0
	for _, v := range series {
		mean += float64(v.Date.Sub(t.from)) / float64(len(series))
	}
	t.at = t.from.AddDays(int(math.Round(mean)))
	if c := d.Crosses; c != nil {
		t.level = limitOf(h) + t.slope*float64(t.at.Sub(c.Date))
		return t, true
	}
	var levels []float64
	for _, v := range series {
		levels = append(levels, v.PSI-t.slope*float64(v.Date.Sub(t.at)))
	}
	slices.Sort(levels)
	n := len(levels)
	t.level = (levels[(n-1)/2] + levels[n/2]) / 2
	return t, true
}

// limitOf is the limit that a drifting house runs into.
func limitOf(h desk.House) float64 {
	if h.Assessment.Drift.State == assess.Falling {
		return h.Band[0]
	}
	return h.Band[1]
}

// bandOf is a house's band, the usual one where none is told.
func bandOf(b [2]float64) [2]float64 {
	if b[0] > 0 && b[1] > b[0] && b[1] < mostPSI {
		return b
	}
	return assess.DefaultShop().BandPSI
}

package assess

import (
	"cmp"
	"math"
	"slices"
)

// How readings of a street are weighed; judgement. A main swings by the hour
// (it rises at night, common practice) and the readings come from many hands.
const (
	streetPriorPSI      = 4.0 // scatter of one reading of a steady street
	streetPriorReadings = 4.0 // that counts like so many readings
	streetWindowDays    = 365 // older readings say nothing of today's level
	streetLatelyDays    = 180 // a shift before that is the street's usual level by now
	streetLeast         = 3   // readings that speak of a level
	streetLeastSide     = 2   // readings before and after a shift: one house is no street
	// Weight and width of the moving average that sees a slow climb: the values
	// of Montgomery's and the e-Handbook's examples.
	streetEWMAWeight = 0.3
	streetEWMAWidth  = 3.0
)

// StreetHistoryDays is how far back readings nearby help: too old for today's
// level, but they show that it shifted.
const StreetHistoryDays = 730

var streetPrior = prior{streetPriorPSI, streetPriorReadings}

// Level is the street's static pressure in a neighbourhood with its 90 %
// interval, psi, from N readings; Shifted when it has changed lately, and
// FromPSI is then what it was before.
type Level struct {
	PSI, Low, High float64
	N              int
	Shifted        bool
	FromPSI        float64
}

// StreetLevel is the level that street-side readings nearby speak of, and
// whether it has shifted lately, so that a rise on many houses is told apart
// from one failing regulator. Only the readings since a shift count for the
// level. Odd ones are left out (modified z above 3.5), and the order of the
// readings does not matter. It is false when they are too few.
func StreetLevel(readings []Neighbour, today Date) (Level, bool) {
	r := slices.DeleteFunc(slices.Clone(readings), func(n Neighbour) bool {
		return !plausible(n.PSI) || n.PSI <= 0 || n.Date.IsZero() || !today.IsZero() && today.Before(n.Date)
	})
	if len(r) < streetLeast {
		return Level{}, false
	}
	slices.SortFunc(r, func(a, b Neighbour) int {
		return cmp.Or(compareDates(a.Date, b.Date), cmp.Compare(a.PSI, b.PSI))
	})
	if today.IsZero() {
		today = r[len(r)-1].Date
	}
	r = withoutLone(since(r, today.AddDays(-StreetHistoryDays)))
	if len(r) < streetLeast {
		return Level{}, false
	}
	psi := make([]float64, len(r))
	for i, n := range r {
		psi[i] = n.PSI
	}
	var l Level
	lately := today.AddDays(-streetLatelyDays)
	if at := shiftOf(r, psi); at > 0 && !r[at].Date.Before(lately) {
		l.Shifted, l.FromPSI = true, medianOf(psi[:at])
		psi = psi[at:]
	} else {
		psi = psi[len(r)-len(since(r, today.AddDays(-streetWindowDays))):]
		if at > 0 && !r[at].Date.Before(today.AddDays(-streetWindowDays)) {
			psi = psi[len(psi)-(len(r)-at):] // an old shift: what was before it is over
		}
	}
	if len(psi) < streetLeast && !l.Shifted || len(psi) < streetLeastSide {
		return Level{}, false
	}
	var kept []float64
	for i, z := range ModifiedZ(psi, streetPriorPSI/2) {
		if math.Abs(z) <= ModifiedZLimit {
			kept = append(kept, psi[i])
		}
	}
	n := len(kept)
	l.N = n
	l.PSI = hodgesLehmann(kept)
	off := make([]float64, n)
	for i, p := range kept {
		off[i] = math.Abs(p - l.PSI)
	}
	robust := madToSigma * medianOf(off)
	// The middle of all pairs has the variance of a mean times π/3.
	se := math.Sqrt(math.Pi / 3 * streetPrior.scatter(robust*robust*float64(n-1), n-1) / float64(n))
	e := studentQuantile95(streetPriorReadings+float64(n-1)) * se
	l.Low, l.High = math.Max(0, l.PSI-e), l.PSI+e
	return l, true
}

// withoutLone leaves out each reading that lies far from both its neighbours in
// time (from the median of three): one house, one slip of the pen. Two alike
// in a row stay: they may be the street.
func withoutLone(r []Neighbour) []Neighbour {
	if len(r) < streetLeast {
		return r
	}
	var kept []Neighbour
	for i, n := range r {
		at := min(max(i, 1), len(r)-2)
		if math.Abs(n.PSI-medianOf([]float64{r[at-1].PSI, r[at].PSI, r[at+1].PSI})) <= ModifiedZLimit*streetPriorPSI {
			kept = append(kept, n)
		}
	}
	return kept
}

// since returns the readings, sorted by day, from a day on.
func since(r []Neighbour, day Date) []Neighbour {
	i := slices.IndexFunc(r, func(n Neighbour) bool { return !n.Date.Before(day) })
	if i < 0 {
		return nil
	}
	return r[i:]
}

// shiftOf returns the first reading of a new level, or 0. A sudden shift is
// found as a step, a slow climb by a moving average that leaves its limits
// about the older half.
func shiftOf(r []Neighbour, psi []float64) int {
	newDay := func(at int) bool { return r[at].Date != r[at-1].Date }
	if s := stepOf(psi, streetPrior, streetLeastSide, newDay); s.significant() {
		return s.at
	}
	half := len(psi) / 2
	if half < 2*streetLeastSide {
		return 0
	}
	c, _ := IndividualsOf(psi[:half])
	sigma := math.Max(c.MovingRange/movingRangeD2, streetPriorPSI)
	target := medianOf(psi[:half])
	ewma := EWMAOf(psi[half:], target, sigma, streetEWMAWeight, streetEWMAWidth)
	last := len(ewma.Average)
	if math.Abs(ewma.Average[last-1]-target) < jumpLeastPSI || !slices.Contains(ewma.Signals, last) {
		return 0
	}
	at := half + last - 1
	for at > half && slices.Contains(ewma.Signals, at-half) { // the signal's beginning
		at--
	}
	for at > 0 && !newDay(at) {
		at--
	}
	if len(psi)-at < streetLeastSide {
		return 0
	}
	return at
}

// hodgesLehmann is the median of the means of all pairs: nearly as precise as
// the mean, and hardly moved by a wild value.
func hodgesLehmann(values []float64) float64 {
	var room [600]float64
	pairs := room[:0]
	for i, a := range values {
		for _, b := range values[i:] {
			pairs = append(pairs, a+(b-a)/2)
		}
	}
	slices.Sort(pairs)
	return median(pairs)
}

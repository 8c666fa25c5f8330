package assess

import (
	"cmp"
	"math"
	"slices"

	"gonum.org/v1/gonum/stat/distuv"
)

// DatedPSI is one fair static reading of the house, one a visit.
type DatedPSI struct {
	Date Date
	PSI  float64
}

// What a series must hold before anything is said of it; judgement.
const (
	driftLeastVisits = 4
	driftLeastDays   = 60
	driftMostVisits  = 500 // only the newest count: more is a logger's record, and pairs of visits grow with the square
)

// How the scatter of a house's readings is judged. Few visits say little about
// it, so that what is known beforehand counts like some visits more: a grade B
// gauge on 0-160 psi may be 3.2 psi off, and readings of a steady house scatter
// by about 2 psi (judgement). A house that swings more soon outweighs this.
const (
	scatterPriorPSI    = 2.0
	scatterPriorVisits = 4.0
)

// When a series is called drifting or jumped. The levels are chosen on
// simulated houses (drift_sim_test.go): a site without drift is called so in fewer
// than 3 of 100 histories, whatever its length.
const (
	driftOrderLevel = 0.10  // Mann–Kendall, two-sided: the 90 % interval of the slope leaves out 0
	driftScaleLevel = 0.01  // the least-squares slope against the scatter, two-sided
	jumpLevel       = 0.005 // the largest standardised cumulative sum, two-sided, for all places together
	// driftLeastPerYear, psi: a slower drift moves a house by less than two
	// gauges differ in all the years that a regulator lasts, and a long series
	// would find the shift of its visits within the seasons.
	driftLeastPerYear = 0.5
	// jumpLeastPSI: two readings by two gauges may differ by twice 3.2 psi with
	// nothing changed; a smaller step is no news.
	jumpLeastPSI = 8.0
	// jumpMargin is how much better, in squared scatters, a step must fit than a
	// line does before it is called a jump.
	jumpMargin = 2.0
)

// driftInterval is the level of every interval of a drift.
const driftInterval = 0.90

// crossingHorizonYears is how far ahead a crossing is still told: a regulator
// does not live longer.
const crossingHorizonYears = 25.0

const daysPerYear = 365.25

// DriftOf says whether the fair readings of a house, one a visit since the last
// work on its regulator, drift or have jumped. The order of the series does not
// matter; readings of one day count as one, by their median.
//
// Three questions are asked. Do the values keep an order (Mann–Kendall)? Is the
// slope more than the scatter explains (least squares, with a scatter that
// leans on what is known of gauges)? Does one step explain them better than a
// line (cumulative sums of the deviations from the mean, standardised)? A drift
// needs both of the first two: order alone has too few levels in a short series
// to be both sure and quick, and scale alone is misled by one wild value.
//
// The slope told is Theil and Sen's with Sen's interval; P is Mann–Kendall's,
// two-sided. Of a series that has jumped the slope is that between the visits
// of the same side of the jump, and P the jump's own. Crosses is told of a
// rising or falling series that began within the band.
func DriftOf(series []DatedPSI, band [2]float64, today Date) Drift {
	d, _ := driftAndJump(series, band, today)
	return d
}

// driftAndJump is DriftOf, and JumpOf of a series that has jumped, at the price
// of one.
func driftAndJump(series []DatedPSI, band [2]float64, today Date) (Drift, Jump) {
	var x, y [32]float64
	v, ok := visitsOf(series, x[:0], y[:0])
	if !ok {
		return Drift{State: TooFew}, Jump{}
	}
	trend := MannKendall(v.y)
	slope, _ := TheilSen(v.x, v.y, driftInterval)
	line := v.line()
	step := v.step()

	scale := line.p(v.n())
	state := Steady
	if trend.P <= driftOrderLevel && scale <= driftScaleLevel && math.Abs(slope.PerX) >= driftLeastPerYear && slope.PerX*line.slope > 0 {
		state = Rising
		if slope.PerX < 0 {
			state = Falling
		}
	}
	if step.significant() && (state == Steady || v.fitsBetter(step, line, slope)) {
		within := v.within(step.at)
		return newDrift(Jumped, within, step.p, nil), v.jump(step.at)
	}
	var crosses *Crossing
	if state != Steady {
		crosses = v.crossing(slope.PerX, line, band, today)
	}
	return newDrift(state, slope, trend.P, crosses), Jump{}
}

// Jump is a change of level between two visits.
type Jump struct {
	After, By Date    // it came after the one visit and by the other
	From, To  float64 // the levels before and after, psi
}

// JumpOf tells where a series changed its level, if DriftOf calls it jumped.
func JumpOf(series []DatedPSI, band [2]float64, today Date) (Jump, bool) {
	d, j := driftAndJump(series, band, today)
	return j, d.State == Jumped
}

// jump is the change of level before the k-th visit.
func (v visits) jump(k int) Jump {
	return Jump{
		After: v.day(k - 1), By: v.day(k),
		From: medianOf(v.y[:k]), To: medianOf(v.y[k:]),
	}
}

func newDrift(state DriftState, s Slope, p float64, c *Crossing) Drift {
	n := &struct{ slope, low, high, p float64 }{s.PerX, s.Low, s.High, p} // one allocation for all four
	return Drift{State: state, PSIPerYear: &n.slope, Low: &n.low, High: &n.high, P: &n.p, Crosses: c}
}

// visits is a series in the order of time: years since the first, psi.
type visits struct {
	first Date
	x, y  []float64
}

// visitsOf reads a series, appending to x and y, and tells whether it holds
// enough to say anything.
func visitsOf(series []DatedPSI, x, y []float64) (visits, bool) {
	if len(series) < driftLeastVisits {
		return visits{}, false
	}
	var room [32]DatedPSI
	s := append(room[:0], series...)
	s = slices.DeleteFunc(s, func(d DatedPSI) bool { return !plausible(d.PSI) || d.Date.IsZero() })
	if len(s) < driftLeastVisits {
		return visits{}, false
	}
	slices.SortStableFunc(s, func(a, b DatedPSI) int { return compareDates(a.Date, b.Date) })
	s = s[max(0, len(s)-driftMostVisits):]
	first := s[0].Date
	for i := 0; i < len(s); {
		j := i + 1
		for j < len(s) && s[j].Date == s[i].Date {
			j++
		}
		psi := s[i].PSI
		if j > i+1 {
			same := make([]float64, 0, j-i)
			for _, d := range s[i:j] {
				same = append(same, d.PSI)
			}
			psi = medianOf(same)
		}
		x = append(x, float64(s[i].Date.Sub(first))/daysPerYear)
		y = append(y, psi)
		i = j
	}
	v := visits{first, x, y}
	return v, len(x) >= driftLeastVisits && x[len(x)-1]*daysPerYear > driftLeastDays-0.5
}

// plausible tells whether a number can be a gauge pressure, psi: no vacuum below
// nothing, and no house has seen a hundredth of the upper end.
func plausible(psi float64) bool { return psi > -15 && psi < 10000 }

func compareDates(a, b Date) int {
	return cmp.Or(a.Year-b.Year, int(a.Month-b.Month), a.Day-b.Day)
}

func (v visits) n() int { return len(v.x) }

// day is the date of the k-th visit.
func (v visits) day(k int) Date { return v.first.AddDays(int(math.Round(v.x[k] * daysPerYear))) }

// prior is what is known of a scatter before the readings: a standard deviation
// in psi that counts like so many readings.
type prior struct{ psi, worth float64 }

var housePrior = prior{scatterPriorPSI, scatterPriorVisits}

// scatter is the variance of a reading, psi², from the squares left over by a
// fit and their degrees of freedom, and from what is known beforehand.
func (p prior) scatter(ss float64, df int) float64 {
	return (p.worth*p.psi*p.psi + ss) / (p.worth + float64(df))
}

// twoSided is the probability of a t as large, with the degrees of freedom that
// such a scatter has.
func (p prior) twoSided(t float64, df int) float64 {
	return 2 * distuv.StudentsT{Sigma: 1, Nu: p.worth + float64(df)}.CDF(-math.Abs(t))
}

// studentQuantile95 is the 95 % point of Student's t, the half of driftInterval:
// Abramowitz and Stegun, Handbook of Mathematical Functions, 26.7.5, within
// 0.001 from 5 degrees of freedom on. (Inverting the distribution costs more
// than all the rest of DriftOf.)
func studentQuantile95(df float64) float64 {
	const z = 1.6448536269514722
	const z2 = z * z
	return z + z*(z2+1)/(4*df) + z*((5*z2+16)*z2+3)/(96*df*df) + z*(((3*z2+19)*z2+17)*z2-15)/(384*df*df*df)
}

// leastLine is a least-squares line in the form that the tests need.
type leastLine struct {
	slope, meanX, meanY, sxx, ss float64
}

func (v visits) line() leastLine {
	var l leastLine
	n := float64(v.n())
	for i := range v.x {
		l.meanX += v.x[i] / n
		l.meanY += v.y[i] / n
	}
	var sxy, syy float64
	for i := range v.x {
		dx, dy := v.x[i]-l.meanX, v.y[i]-l.meanY
		l.sxx += dx * dx
		sxy += dx * dy
		syy += dy * dy
	}
	l.slope = sxy / l.sxx
	l.ss = math.Max(0, syy-l.slope*sxy)
	return l
}

// p is the two-sided probability of such a slope when there is none.
func (l leastLine) p(n int) float64 {
	return housePrior.twoSided(l.slope*math.Sqrt(l.sxx/housePrior.scatter(l.ss, n-2)), n-2)
}

// levelStep is the best single step in a series: before the value at, and from it on.
type levelStep struct {
	at   int
	size float64 // psi
	ss   float64 // squares left over
	p    float64 // two-sided, for all places together (Bonferroni)
}

func (s levelStep) significant() bool { return s.p <= jumpLevel && math.Abs(s.size) >= jumpLeastPSI }

// stepOf finds the place where the cumulative sum of the deviations from the
// mean, standardised, is largest: there a step leaves the fewest squares. At
// least so many values stand on either side, and may tells where a step can be.
func stepOf(y []float64, p prior, least int, may func(at int) bool) levelStep {
	n := float64(len(y))
	mean, total := 0.0, 0.0
	for _, v := range y {
		mean += v / n
	}
	for _, v := range y {
		total += (v - mean) * (v - mean)
	}
	best := levelStep{p: 1}
	sum, most, places := 0.0, -1.0, 0.0
	for k := 1; k < len(y); k++ {
		sum += y[k-1] - mean
		if k < least || len(y)-k < least || !may(k) {
			continue
		}
		places++
		f := float64(k)
		if c := sum * sum * n / (f * (n - f)); c > most {
			most = c
			best.at, best.size = k, -sum*n/(f*(n-f))
		}
	}
	best.ss = math.Max(0, total-most)
	if math.Abs(best.size) >= jumpLeastPSI {
		t := math.Sqrt(most / p.scatter(best.ss, len(y)-2))
		best.p = math.Min(1, places*p.twoSided(t, len(y)-2))
	}
	return best
}

func anywhere(int) bool { return true }

// step is the best step of the visits; one visit on its far side is enough.
func (v visits) step() levelStep { return stepOf(v.y, housePrior, 1, anywhere) }

// fitsBetter tells whether a step explains the visits better than a line: by
// squares clearly, and by plain distances from the medians and from Theil and
// Sen's line, so that one wild value does not decide it.
func (v visits) fitsBetter(s levelStep, l leastLine, t Slope) bool {
	if s.ss+jumpMargin*housePrior.scatter(s.ss, v.n()-2) >= l.ss {
		return false
	}
	before, after := medianOf(v.y[:s.at]), medianOf(v.y[s.at:])
	level := v.level(t.PerX, l.meanX)
	var fromStep, fromLine float64
	for i, y := range v.y {
		if i < s.at {
			fromStep += math.Abs(y - before)
		} else {
			fromStep += math.Abs(y - after)
		}
		fromLine += math.Abs(y - level - t.PerX*(v.x[i]-l.meanX))
	}
	return fromStep < fromLine
}

// within is the slope between visits on the same side of a step; the variance
// of S is summed over the sides, as over seasons.
func (v visits) within(at int) Slope {
	var room [512]float64
	slopes := room[:0]
	for i := range v.x {
		for j := i + 1; j < v.n(); j++ {
			if (i < at) == (j < at) {
				slopes = append(slopes, (v.y[j]-v.y[i])/(v.x[j]-v.x[i]))
			}
		}
	}
	slices.Sort(slopes)
	_, before := kendall(v.y[:at])
	_, after := kendall(v.y[at:])
	c := math.Sqrt(before+after) * distuv.UnitNormal.Quantile(0.5+driftInterval/2)
	n := float64(len(slopes))
	lo := min(max(int(math.Floor((n-c)/2)), 1), len(slopes))
	hi := min(max(int(math.Ceil((n+c)/2+1)), 1), len(slopes))
	return Slope{PerX: median(slopes), Low: slopes[lo-1], High: slopes[hi-1]}
}

// crossing is the day on which the trend leaves the band, with its interval by
// Fieller's theorem: the days on which the limit lies within what the line may
// be. It is nil when the series began beyond the limit, or when the day lies
// too far ahead to mean anything. The first word of a drift tends to overstate
// it (a slope must be large to be noticed among few visits), so that the true
// day is then rather later than told.
func (v visits) crossing(slope float64, l leastLine, band [2]float64, today Date) *Crossing {
	limit := band[1]
	if slope < 0 {
		limit = band[0]
	}
	last := v.x[v.n()-1]
	if !today.IsZero() {
		last = math.Max(last, float64(today.Sub(v.first))/daysPerYear)
	}
	level := v.level(slope, l.meanX)
	gap := limit - level
	u := gap / slope
	at := l.meanX + u
	if !finite(limit, at) || at <= 0 || at > last+crossingHorizonYears {
		return nil
	}
	n := v.n()
	var ss float64
	for i := range v.x {
		r := v.y[i] - level - slope*(v.x[i]-l.meanX)
		ss += r * r
	}
	t := studentQuantile95(scatterPriorVisits + float64(n-2))
	// 1.05: Theil and Sen's line is a little less precise than least squares.
	e := 1.05 * t * t * housePrior.scatter(ss, n-2)
	a := slope*slope - e/l.sxx
	c := gap*gap - e/float64(n)
	early, late := 0.0, last+4*crossingHorizonYears
	if d := gap*gap*slope*slope - a*c; a > 0 && d >= 0 {
		early = l.meanX + (gap*slope-math.Sqrt(d))/a
		late = math.Min(late, l.meanX+(gap*slope+math.Sqrt(d))/a)
	}
	day := func(x float64) Date {
		d := v.first.AddDays(int(math.Round(x * daysPerYear)))
		if d.Year > 9999 {
			return Date{9999, 12, 31} // the last day that can be written
		}
		return d
	}
	return &Crossing{Date: day(at), Early: day(math.Max(early, 0)), Late: day(late)}
}

// level is where the line of the given slope stands at x: the middle of what
// the visits say.
func (v visits) level(slope, x float64) float64 {
	var room [32]float64
	left := append(room[:0], v.y...)
	for i := range left {
		left[i] -= slope * (v.x[i] - x)
	}
	return hodgesLehmann(left)
}

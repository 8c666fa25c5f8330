package assess

import (
	"math"
	"slices"

	"gonum.org/v1/gonum/stat"
	"gonum.org/v1/gonum/stat/distuv"
)

// exactMannKendall is the greatest number of values for which the test's exact
// distribution is used; Gilbert, Statistical Methods for Environmental
// Pollution Monitoring, as quoted.
const exactMannKendall = 10

// Trend is a Mann–Kendall test: whether values rise or fall with their order.
type Trend struct {
	S        float64 // pairs that rise less pairs that fall
	Variance float64 // of S with no trend, corrected for ties
	Z        float64 // (S ∓ 1)/√Variance, 0 when S is 0
	P        float64 // two-sided; exact for ten values or fewer
}

// OneSided is the probability of so much of a trend, in the direction seen.
func (t Trend) OneSided() float64 { return t.P / 2 }

// MannKendall tests values in their order of time.
func MannKendall(values []float64) Trend {
	s, v := kendall(values)
	t := trendOf(s, v)
	if len(values) <= exactMannKendall {
		t.P = exactP(values, s)
	}
	return t
}

// SeasonalMannKendall tests values taken season after season, in their order:
// S and its variance are summed over the seasons, so that the year's own swing
// is no trend (Hirsch, Slack and Smith, Water Resources Research 18 (1982) 107,
// from memory).
func SeasonalMannKendall(values []float64, seasons int) Trend {
	if seasons < 1 {
		seasons = 1
	}
	var s, v float64
	one := make([]float64, 0, len(values)/seasons+1)
	for k := range seasons {
		one = one[:0]
		for i := k; i < len(values); i += seasons {
			one = append(one, values[i])
		}
		a, b := kendall(one)
		s, v = s+a, v+b
	}
	return trendOf(s, v)
}

// SeasonalSlope is the median of the slopes within each season, per cycle of
// seasons.
func SeasonalSlope(values []float64, seasons int) (slope float64, ok bool) {
	if seasons < 1 {
		seasons = 1
	}
	var slopes []float64
	for i := range values {
		for j := i + seasons; j < len(values); j += seasons {
			slopes = append(slopes, (values[j]-values[i])/float64((j-i)/seasons))
		}
	}
	if len(slopes) == 0 {
		return 0, false
	}
	slices.Sort(slopes)
	return median(slopes), true
}

// trendOf is the normal approximation for a score and its variance.
func trendOf(s, v float64) Trend {
	t := Trend{S: s, Variance: v, P: 1}
	if s == 0 || v <= 0 {
		return t
	}
	t.Z = (s - math.Copysign(1, s)) / math.Sqrt(v)
	t.P = math.Min(1, math.Erfc(math.Abs(t.Z)/math.Sqrt2))
	return t
}

// kendall returns S and its variance with the correction for ties.
func kendall(values []float64) (s, variance float64) {
	n := len(values)
	count := 0
	for i, a := range values {
		for _, b := range values[i+1:] {
			if b > a {
				count++
			} else if b < a {
				count--
			}
		}
	}
	f := float64(n)
	variance = f * (f - 1) * (2*f + 5)
	var room [64]float64
	sorted := append(room[:0], values...)
	slices.Sort(sorted)
	for i := 0; i < n; {
		j := i + 1
		for j < n && sorted[j] == sorted[i] {
			j++
		}
		if g := float64(j - i); g > 1 {
			variance -= g * (g - 1) * (2*g + 5)
		}
		i = j
	}
	return float64(count), variance / 18
}

// exactP is the exact two-sided probability of a score as far from 0 as s, over
// all orders of at most ten values. With ties it is the distribution of
// inversions of a multiset, whose generating function is the Gaussian
// multinomial coefficient (MacMahon, Combinatory Analysis, from memory).
func exactP(values []float64, s float64) float64 {
	n := len(values)
	if s == 0 || n < 2 {
		return 1
	}
	var room [exactMannKendall]float64
	sorted := append(room[:0], values...)
	slices.Sort(sorted)
	// Orders by their number of inversions: start with none and let each group
	// of equal values in: multiply by [have+g choose g] in the base q.
	var ways [exactMannKendall*(exactMannKendall-1)/2 + 1]float64
	ways[0] = 1
	top, have := 0, 0
	for i := 0; i < n; {
		g := 1
		for i+g < n && sorted[i+g] == sorted[i] {
			g++
		}
		for k := 1; k <= g; k++ { // times (1-q^(have+k))/(1-q^k)
			top += have
			for d := len(ways) - 1; d >= have+k; d-- {
				ways[d] -= ways[d-have-k]
			}
			for d := k; d < len(ways); d++ {
				ways[d] += ways[d-k]
			}
		}
		have += g
		i += g
	}
	// S = top - 2 inversions, and the distribution is symmetric.
	total, tail := 0.0, 0.0
	for d := 0; d <= top; d++ {
		total += ways[d]
		if float64(top-2*d) >= math.Abs(s) {
			tail += ways[d]
		}
	}
	return math.Min(1, 2*tail/total)
}

// Slope is a Theil–Sen line: the median of all slopes between two points, with
// its interval, and the median intercept.
type Slope struct {
	PerX, Low, High float64
	Intercept       float64 // median of y less PerX times median of x
}

// TheilSen fits a line that a bad value hardly moves. Low and High are Sen's
// interval of the given level (0.90), from the variance of Mann–Kendall's S
// (exact for ten values or fewer without ties). It is false when no two points
// have different x.
func TheilSen(x, y []float64, level float64) (Slope, bool) {
	var room [512]float64
	slopes := room[:0]
	for i := range x {
		for j := i + 1; j < len(x); j++ {
			if d := x[j] - x[i]; d != 0 {
				slopes = append(slopes, (y[j]-y[i])/d)
			}
		}
	}
	if len(slopes) == 0 {
		return Slope{}, false
	}
	slices.Sort(slopes)
	_, v := kendall(y)
	c := scoreQuantile(len(x), v, level)
	n := float64(len(slopes))
	lo := int(math.Floor((n - c) / 2)) // 1-based rank (N-C)/2, rounded outward
	hi := int(math.Ceil((n+c)/2 + 1))
	s := Slope{
		PerX: median(slopes),
		Low:  slopes[min(max(lo, 1), len(slopes))-1],
		High: slopes[min(max(hi, 1), len(slopes))-1],
	}
	s.Intercept = medianOf(y) - s.PerX*medianOf(x)
	return s, true
}

// scoreQuantile is the C of Sen's interval: S lies within ±C with at least the
// level, if there is no trend.
func scoreQuantile(n int, variance, level float64) float64 {
	if n > exactMannKendall {
		return math.Sqrt(variance) * distuv.UnitNormal.Quantile(0.5+level/2)
	}
	// The exact distribution without ties: inversions of n values.
	var ways [exactMannKendall*(exactMannKendall-1)/2 + 1]float64
	ways[0] = 1
	top, all := 0, 1.0
	for k := 2; k <= n; k++ {
		for d := len(ways) - 1; d >= 0; d-- {
			for back := 1; back < k && back <= d; back++ {
				ways[d] += ways[d-back]
			}
		}
		top += k - 1
		all *= float64(k)
	}
	tail := 0.0
	for d := 0; d <= top; d++ {
		tail += ways[d]
		if 2*tail/all > 1-level {
			// S = top-2d is the first that is not in the tail.
			return float64(top - 2*d)
		}
	}
	return 0
}

// Line is a least-squares line with what is known of its precision.
type Line struct {
	Intercept, Slope     float64
	InterceptSE, SlopeSE float64 // standard errors
	ResidualSD           float64
	ResidualSS           float64
	RSquared             float64
	F                    float64
}

// LeastSquares fits a line to at least three points of different x; the fit
// itself is gonum's.
func LeastSquares(x, y []float64) (Line, bool) {
	n := float64(len(x))
	if len(x) < 3 || len(x) != len(y) {
		return Line{}, false
	}
	mx := stat.Mean(x, nil)
	var sxx float64
	for _, v := range x {
		sxx += (v - mx) * (v - mx)
	}
	if !(sxx > 0) {
		return Line{}, false
	}
	var l Line
	l.Intercept, l.Slope = stat.LinearRegression(x, y, nil, false)
	my := stat.Mean(y, nil)
	var syy float64
	for i := range x {
		r := y[i] - l.Intercept - l.Slope*x[i]
		l.ResidualSS += r * r
		syy += (y[i] - my) * (y[i] - my)
	}
	l.ResidualSD = math.Sqrt(l.ResidualSS / (n - 2))
	l.SlopeSE = l.ResidualSD / math.Sqrt(sxx)
	l.InterceptSE = l.ResidualSD * math.Sqrt(1/n+mx*mx/sxx)
	if syy > 0 {
		l.RSquared = 1 - l.ResidualSS/syy
	}
	if l.ResidualSS > 0 {
		l.F = (syy - l.ResidualSS) / (l.ResidualSS / (n - 2))
	}
	return l, true
}

// median is that of sorted values.
func median(sorted []float64) float64 {
	n := len(sorted)
	if n == 0 {
		return 0
	}
	if n%2 == 1 {
		return sorted[n/2]
	}
	return sorted[n/2-1] + (sorted[n/2]-sorted[n/2-1])/2
}

// medianOf is that of values in any order.
func medianOf(values []float64) float64 {
	var room [64]float64
	s := append(room[:0], values...)
	slices.Sort(s)
	return median(s)
}

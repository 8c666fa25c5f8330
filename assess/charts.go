package assess

import "math"

// CUSUM is a tabular chart of cumulative sums: how far values have run above
// and below a target, with the slack taken off at each step. NIST/SEMATECH
// e-Handbook of Statistical Methods, 6.3.2.3, as quoted.
type CUSUM struct {
	Upper, Lower []float64 // the two one-sided sums
	Plain        []float64 // the sums of the deviations themselves
	Signal       int       // the first value at which a sum passes the limit, from 1; 0 for none
}

// CUSUMOf charts values about a target with slack k and limit h.
func CUSUMOf(values []float64, target, k, h float64) CUSUM {
	var c CUSUM
	var up, low, plain float64
	for i, v := range values {
		up = math.Max(0, up+v-target-k)
		low = math.Max(0, low+target-k-v)
		plain += v - target
		c.Upper, c.Lower, c.Plain = append(c.Upper, up), append(c.Lower, low), append(c.Plain, plain)
		if c.Signal == 0 && (up > h || low > h) {
			c.Signal = i + 1
		}
	}
	return c
}

// EWMA is a chart of an exponentially weighted moving average with its exact
// limits, which widen from the first value to the last. Montgomery,
// Introduction to Statistical Quality Control, ch. 9, as quoted;
// e-Handbook 6.3.2.4.
type EWMA struct {
	Average      []float64
	Upper, Lower []float64
	// FinalUpper and FinalLower are the limits of a long series.
	FinalUpper, FinalLower float64
	Signals                []int // where the average lies outside its limits, from 1
}

// EWMAOf charts values about a target: lambda is the weight of the newest
// value, sigma the scatter of one value, width the limits' width in sigmas.
func EWMAOf(values []float64, target, sigma, lambda, width float64) EWMA {
	final := width * sigma * math.Sqrt(lambda/(2-lambda))
	c := EWMA{FinalUpper: target + final, FinalLower: target - final}
	z, left := target, 1.0
	for i, v := range values {
		z = lambda*v + (1-lambda)*z
		left *= (1 - lambda) * (1 - lambda)
		w := final * math.Sqrt(1-left)
		c.Average = append(c.Average, z)
		c.Upper, c.Lower = append(c.Upper, target+w), append(c.Lower, target-w)
		if z > target+w || z < target-w {
			c.Signals = append(c.Signals, i+1)
		}
	}
	return c
}

// movingRangeD2 turns a mean moving range of two into a standard deviation:
// 2/√π, 1.128 in tables.
const movingRangeD2 = 1.128

// Individuals is a chart of single values: the scatter is judged from the
// steps between neighbours, so that a slow trend does not widen it.
// e-Handbook 6.3.2.2, as quoted.
type Individuals struct {
	Centre, MovingRange float64 // mean of the values, mean step
	Upper, Lower        float64
}

// IndividualsOf charts at least two values.
func IndividualsOf(values []float64) (Individuals, bool) {
	if len(values) < 2 {
		return Individuals{}, false
	}
	var c Individuals
	for i, v := range values {
		c.Centre += v / float64(len(values))
		if i > 0 {
			c.MovingRange += math.Abs(v-values[i-1]) / float64(len(values)-1)
		}
	}
	c.Upper = c.Centre + 3*c.MovingRange/movingRangeD2
	c.Lower = c.Centre - 3*c.MovingRange/movingRangeD2
	return c, true
}

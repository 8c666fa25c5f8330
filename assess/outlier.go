package assess

import (
	"math"

	"gonum.org/v1/gonum/stat"
	"gonum.org/v1/gonum/stat/distuv"
)

// Grubbs is a test of the highest value for an outlier. NIST/SEMATECH
// e-Handbook of Statistical Methods, 1.3.5.17.1, as quoted.
type Grubbs struct {
	G          float64 // how many standard deviations it lies above the mean
	Critical   float64 // above this it is an outlier
	Outlier    bool
	LargestZ   float64 // (n-1)/√n: no z-score of n values can exceed it
	HighestPSI float64
}

// GrubbsOf tests at least three values, one-sided, at level alpha (0.05).
func GrubbsOf(values []float64, alpha float64) (Grubbs, bool) {
	n := float64(len(values))
	if len(values) < 3 || !finite(values...) || !(alpha > 0 && alpha < 1) {
		return Grubbs{}, false
	}
	mean, sd := stat.MeanStdDev(values, nil)
	g := Grubbs{LargestZ: (n - 1) / math.Sqrt(n), HighestPSI: values[0]}
	for _, v := range values {
		g.HighestPSI = math.Max(g.HighestPSI, v)
	}
	if sd > 0 {
		g.G = (g.HighestPSI - mean) / sd
	}
	t := distuv.StudentsT{Sigma: 1, Nu: n - 2}.Quantile(1 - alpha/n)
	g.Critical = (n - 1) / math.Sqrt(n) * math.Sqrt(t*t/(n-2+t*t))
	g.Outlier = g.G > g.Critical
	return g, true
}

// madToSigma turns a median absolute deviation into a standard deviation of a
// normal distribution; 0.6745 is the figure in print.
const madToSigma = 1 / 0.6745

// ModifiedZLimit is the modified z-score above which a value is an outlier:
// Iglewicz and Hoaglin, as given in the e-Handbook, 1.3.5.17, from memory.
const ModifiedZLimit = 3.5

// ModifiedZ returns each value's distance from the median in robust standard
// deviations, at least floor each (so that equal values do not make their
// neighbours outliers). Unlike a z-score it can grow without bound in a short
// series.
func ModifiedZ(values []float64, floor float64) []float64 {
	m := medianOf(values)
	off := make([]float64, len(values))
	for i, v := range values {
		off[i] = math.Abs(v - m)
	}
	sigma := math.Max(madToSigma*medianOf(off), floor)
	for i, v := range values {
		if sigma > 0 {
			off[i] = (v - m) / sigma
		} else {
			off[i] = 0
		}
	}
	return off
}

package assess

import "math"

// A curve is a probability density over a difference in psi, tabulated at
// whole psi; what lies outside reads as the tail.
type curve [2*curveReach + 1]float64

const curveReach = 300

func (c *curve) at(d float64) float64 {
	k := int(math.Round(d)) + curveReach
	return c[min(max(k, 0), len(c)-1)]
}

// part is one share of a curve before the gauge and the minute-to-minute play
// of the line blur it.
type part struct {
	weight float64
	shape  func(d float64) float64
}

func normal(mean, sd float64) func(float64) float64 {
	return func(d float64) float64 {
		z := (d - mean) / sd
		return math.Exp(-z*z/2) / (sd * math.Sqrt(2*math.Pi))
	}
}

// gamma is the gamma density of the given mean and standard deviation.
func gamma(mean, sd float64) func(float64) float64 {
	k := mean * mean / (sd * sd)
	theta := sd * sd / mean
	lg, _ := math.Lgamma(k)
	return func(d float64) float64 {
		if d <= 0 {
			return 0
		}
		return math.Exp((k-1)*math.Log(d/theta)-d/theta-lg) / theta
	}
}

// stray is the density of a number that has nothing to do with the model: a
// slip of the pen, another house, another side.
const stray = 1.0 / 200

// newCurve mixes the parts, blurs them by a normal error and adds the strays.
func newCurve(blur, strays float64, parts ...part) *curve {
	var c curve
	const step = 0.5
	kernel := normal(0, blur)
	for i := range c {
		d := float64(i - curveReach)
		sum := 0.0
		for e := -4 * blur; e <= 4*blur; e += step {
			k := kernel(e) * step
			for _, p := range parts {
				sum += p.weight * p.shape(d-e) * k
			}
		}
		c[i] = (1-strays)*sum + strays*stray
	}
	return &c
}

// from moves a curve up.
func from(start float64, shape func(float64) float64) func(float64) float64 {
	return func(d float64) float64 { return shape(d - start) }
}

// minus turns a curve over a rise into one over model minus reading.
func minus(shape func(float64) float64) func(float64) float64 {
	return func(d float64) float64 { return shape(-d) }
}

// The curves are over model minus reading. Widths are judgement from the
// gauge's error (ASME B40.100 grade B: 3 psi at 0-160), the play of the line
// and the tech's rounding; fall-off from the trade's 7 to 10 psi at a usual
// flow, at most 15 to 20 (common practice).
var (
	// A static reading against the pressure at its point.
	curveStatic = newCurve(1, 0.03, part{0.9, normal(0, 2.6)}, part{0.1, normal(0, 8)})
	// A static reading that something makes doubtful.
	curveDoubtful = newCurve(1, 0.12, part{0.65, normal(0, 4)}, part{0.35, normal(0, 12)})
	// The same of a gauge that is doubted, had it been right: what is wrong with
	// the gauge is a cause of its own.
	curveGaugeDoubted = newCurve(1, 0.05, part{0.85, normal(0, 3)}, part{0.15, normal(0, 10)})
	// A drain with scale: right, or held low.
	curveSediment = newCurve(2, 0.10, part{0.6, normal(0, 3)}, part{0.4, gamma(20, 14)})
	// A main reading of the same day.
	curveStreet = newCurve(1, 0.03, part{0.9, normal(0, 3.2)}, part{0.1, normal(0, 9)})
	// An earlier main reading, or the neighbours' level.
	curveStreetBefore = newCurve(1, 0.05, part{0.8, normal(0, 9)}, part{0.2, normal(0, 22)})
	// An earlier house reading against the setting of that day.
	curveHouseBefore = newCurve(1, 0.03, part{0.9, normal(0, 3.6)}, part{0.1, normal(0, 10)})
	// The setting less an earlier reading of a house that crept that day.
	curveCrept = newCurve(2.5, 0.05, part{1, minus(gamma(22, 17))})
	// A setting that somebody told against the true one.
	curveSetting = newCurve(1, 0.10, part{0.75, normal(0, 4)}, part{0.25, normal(0, 12)})
	// Static less flowing, of a valve in order and of one that is restricted.
	curveFlow       = newCurve(2.5, 0.03, part{0.85, gamma(8, 4)}, part{0.15, gamma(12, 7)})
	curveRestricted = newCurve(3, 0.04, part{0.97, from(17, gamma(17, 12))}, part{0.03, gamma(15, 8)})
	// What heating adds: under control, on an open line, out of control.
	curveFiring     = newCurve(2.8, 0.04, part{0.8, minus(gamma(3, 3))}, part{0.2, minus(gamma(15, 12))})
	curveFiringOpen = newCurve(2.8, 0.03, part{0.95, minus(gamma(2, 2))}, part{0.05, minus(gamma(12, 8))})
	curveExpansion  = newCurve(3, 0.04, part{0.92, minus(gamma(38, 20))}, part{0.08, minus(gamma(6, 5))})
	// A static reading of such a house with the heater unsaid, and with the heater
	// said to be idle: some were read in a heating cycle all the same.
	curveUnsaidExpansion = newCurve(1.5, 0.03, part{0.72, normal(0, 2.6)}, part{0.08, normal(0, 8)}, part{0.2, minus(gamma(34, 20))})
	curveIdleExpansion   = newCurve(1.2, 0.03, part{0.85, normal(0, 2.6)}, part{0.1, normal(0, 8)}, part{0.05, minus(gamma(34, 20))})
	// A heated reading of a house with another fault, which may lack a working
	// tank besides; a house in order may not.
	curveFiringFaulty = newCurve(2.8, 0.04, part{0.68, minus(gamma(3, 3))}, part{0.17, minus(gamma(15, 12))}, part{0.15, minus(gamma(38, 20))})
	curvePeakFaulty   = newCurve(2.8, 0.05, part{0.65, minus(gamma(4, 3))}, part{0.22, minus(gamma(14, 10))}, part{0.13, minus(gamma(38, 20))})
	// The highest of a period above the static reading.
	curvePeak          = newCurve(2.8, 0.05, part{0.75, minus(gamma(4, 3))}, part{0.25, minus(gamma(14, 10))})
	curvePeakIdle      = newCurve(2.8, 0.05, part{0.9, minus(gamma(4, 3))}, part{0.1, minus(gamma(14, 10))})
	curvePeakOpen      = newCurve(2.8, 0.05, part{1, minus(gamma(10, 7))})
	curvePeakExpansion = newCurve(3, 0.05, part{0.9, minus(gamma(40, 20))}, part{0.1, minus(gamma(6, 5))})
	// Expansion whose peak was said to be idle: misreported, or it was idle indeed.
	curvePeakExpIdle = newCurve(3, 0.05, part{0.3, minus(gamma(36, 20))}, part{0.7, minus(gamma(5, 4))})
	// The main's night level less the peak of a house that creeps up to it.
	curvePeakCreep = newCurve(3, 0.06, part{0.7, normal(4, 7)}, part{0.3, gamma(18, 12)})
)

package assess

import (
	"errors"
	"fmt"
	"math"

	"gonum.org/v1/gonum/stat/distuv"
)

// leastFailures is how many regulators must have failed in the shop's own
// record before a life curve is drawn from it. The logarithm of a Weibull shape
// is known within 0.78/√r by r failures, so that ten give the shape within a
// factor of 1.5 (90 %); with five it would be 1.8, and wearing out could not be
// told from mere chance. The rule is this program's judgement, the precision is
// the asymptotic one of maximum likelihood.
const leastFailures = 10

// The shares of regulators failed at which an age counts as near its end and as
// past it, once the shop has a life curve; judgement. On a usual curve they lie
// near the 10 and 15 years of common practice.
const (
	nearEndFailed = 0.25
	pastFailed    = 0.50
)

// lifeInterval is the level of a life curve's intervals.
const lifeInterval = 0.90

// LifeCurve is a Weibull distribution of time in service, fitted by maximum
// likelihood to lives of which some still run (right-censored).
type LifeCurve struct {
	Scale, Shape  float64 // age by which 63 % have failed; above 1 means wearing out
	LogLikelihood float64
	Failures, N   int

	logShape float64
	// variances and covariance of ln Scale and ln Shape, from the observed information
	varScale, varShape, cov float64
}

// Between is an estimate with its 90 % interval.
type Between struct{ Value, Low, High float64 }

// Errors of a fit.
var (
	errFewFailures = errors.New("too few failed regulators on record for a life curve of the shop's own")
	errSameAge     = errors.New("all regulators on record failed at the same age: no life curve can be drawn")
	errNoPattern   = errors.New("the lives on record follow no life curve: look for mistaken dates")
)

// FitLives draws the life curve of a shop's regulators. Lives that are not
// positive are left out. It needs ten failures; with fewer the error says so.
func FitLives(lives []Life) (LifeCurve, error) { return fitWeibull(lives, leastFailures) }

// fitWeibull is FitLives for at least the given number of failures. The scale
// follows from the shape, so that one equation in one unknown is left; it has
// one root, and a root found by halving needs no start value as a minimiser does.
func fitWeibull(lives []Life, least int) (LifeCurve, error) {
	var logs []float64
	var ended []bool
	failures, sumFailed, longest := 0, 0.0, math.Inf(-1)
	for _, l := range lives {
		if !(l.Years > 0 && l.Years < 1e6) {
			continue
		}
		x := math.Log(l.Years)
		logs, ended = append(logs, x), append(ended, l.Ended)
		longest = math.Max(longest, x)
		if l.Ended {
			failures++
			sumFailed += x
		}
	}
	c := LifeCurve{Failures: failures, N: len(logs)}
	if failures < max(least, 2) {
		return c, fmt.Errorf("%w: %d of the %d needed", errFewFailures, failures, max(least, 2))
	}
	r := float64(failures)
	// Times are taken relative to the longest, so that no power overflows.
	sums := func(b float64) (s0, s1, s2 float64) {
		for _, x := range logs {
			d := x - longest
			w := math.Exp(b * d)
			s0, s1, s2 = s0+w, s1+w*d, s2+w*d*d
		}
		return
	}
	meanFailed := sumFailed/r - longest
	score := func(b float64) (f, slope float64) {
		s0, s1, s2 := sums(b)
		m := s1 / s0
		return m - 1/b - meanFailed, s2/s0 - m*m + 1/(b*b)
	}
	// f rises with b from -∞ to the distance of the longest life from the mean
	// failure; where that is nothing there is no root.
	if !(-meanFailed > 1e-9) {
		return c, errSameAge
	}
	lo, hi := 1e-3, 1.0
	for f, _ := score(hi); f < 0 && hi < 1e6; f, _ = score(hi) {
		lo, hi = hi, hi*2
	}
	b := (lo + hi) / 2
	for range 100 {
		f, slope := score(b)
		if f < 0 {
			lo = b
		} else {
			hi = b
		}
		next := b - f/slope // Newton, kept between the bounds
		if !(next > lo && next < hi) {
			next = (lo + hi) / 2
		}
		if math.Abs(next-b) <= 1e-13*b {
			b = next
			break
		}
		b = next
	}
	s0, s1, s2 := sums(b)
	logScale := longest + math.Log(s0/r)/b
	c.Shape, c.Scale, c.logShape = b, math.Exp(logScale), math.Log(b)
	for i, x := range logs {
		z := b * (x - logScale)
		c.LogLikelihood -= math.Exp(z)
		if ended[i] {
			c.LogLikelihood += c.logShape - x + z
		}
	}
	// Observed information in (ln Scale, ln Shape): with z = b (ln t - ln Scale)
	// and e^z summed to r at the fit, the second derivatives are
	// b² r, -b Σ z e^z and r + Σ z² e^z + Σ (z e^z - z [failed]) - which at the
	// fit is r, so that the last is r + Σ z² e^z.
	scale := r / s0 // e^z = scale × e^(b d)
	shift := logScale - longest
	sz := scale * b * (s1 - shift*s0)
	szz := scale * b * b * (s2 - 2*shift*s1 + shift*shift*s0)
	i11, i12, i22 := b*b*r, -b*sz, r+szz
	det := i11*i22 - i12*i12
	if !(det > 0) || !finite(c.Scale, c.Shape, c.LogLikelihood, det) || b < 0.1 || b > 100 {
		return c, errNoPattern
	}
	c.varScale, c.varShape, c.cov = i22/det, i11/det, -i12/det
	return c, nil
}

// AIC is Akaike's criterion of the fit.
func (c LifeCurve) AIC() float64 { return 2*2 - 2*c.LogLikelihood }

// Mean is the mean life, years.
func (c LifeCurve) Mean() float64 { return c.dist().Mean() }

// StdDev is the standard deviation of a life, years.
func (c LifeCurve) StdDev() float64 { return c.dist().StdDev() }

// Aging is the shape with its interval: wholly above 1 the regulators wear out,
// wholly below 1 they fail young, and else age tells nothing yet.
func (c LifeCurve) Aging() Between {
	z := distuv.UnitNormal.Quantile(0.5+lifeInterval/2) * math.Sqrt(math.Max(0, c.varShape))
	return Between{c.Shape, c.Shape * math.Exp(-z), c.Shape * math.Exp(z)}
}

func (c LifeCurve) dist() distuv.Weibull { return distuv.Weibull{K: c.Shape, Lambda: c.Scale} }

func (c LifeCurve) logScale() float64 { return math.Log(c.Scale) }

// hazardAt is ln of the cumulative hazard at an age, (ln t - ln Scale) Shape,
// with its standard error.
func (c LifeCurve) hazardAt(years float64) (u, se float64) {
	u = c.Shape * math.Log(years/c.Scale)
	// du/dlnScale = -Shape, du/dlnShape = u
	v := c.Shape*c.Shape*c.varScale - 2*c.Shape*u*c.cov + u*u*c.varShape
	return u, math.Sqrt(math.Max(0, v))
}

// Survival is the share of regulators that still serve at an age.
func (c LifeCurve) Survival(years float64) Between {
	if !(years > 0) || !finite(years) {
		return Between{1, 1, 1}
	}
	u, se := c.hazardAt(years)
	z := distuv.UnitNormal.Quantile(0.5 + lifeInterval/2)
	s := func(u float64) float64 { return math.Exp(-math.Exp(u)) }
	return Between{s(u), s(u + z*se), s(u - z*se)}
}

// YearsTo is the age by which a share has failed: 0.1 is the "B10 life", 0.5
// the median.
func (c LifeCurve) YearsTo(failed float64) (Between, bool) {
	if !(failed > 0 && failed < 1) {
		return Between{}, false
	}
	w := math.Log(-math.Log1p(-failed))
	l := c.logScale() + w/c.Shape
	// dl/dlnScale = 1, dl/dlnShape = -w/Shape
	d := -w / c.Shape
	se := math.Sqrt(math.Max(0, c.varScale+2*d*c.cov+d*d*c.varShape))
	z := distuv.UnitNormal.Quantile(0.5 + lifeInterval/2)
	b := Between{math.Exp(l), math.Exp(l - z*se), math.Exp(l + z*se)}
	return b, finite(b.Value, b.Low, b.High)
}

// FailsWithin is the probability that a regulator that serves at an age fails
// within the next years.
func (c LifeCurve) FailsWithin(age, years float64) Between {
	if !(age >= 0) || !(years > 0) || !finite(age, years) {
		return Between{}
	}
	lnScale := c.logScale()
	// g is the hazard gathered in between, for moved parameters.
	g := func(dScale, dShape float64) float64 {
		k := c.Shape * math.Exp(dShape)
		h := func(t float64) float64 {
			if t <= 0 {
				return 0
			}
			return math.Exp(math.Min(700, k*(math.Log(t)-lnScale-dScale)))
		}
		return h(age+years) - h(age)
	}
	at := g(0, 0)
	if !(at > 0) {
		return Between{}
	}
	// The interval on the scale of ln g, its gradient by central differences.
	const e = 1e-5
	da := (math.Log(g(e, 0)) - math.Log(g(-e, 0))) / (2 * e)
	db := (math.Log(g(0, e)) - math.Log(g(0, -e))) / (2 * e)
	se := math.Sqrt(math.Max(0, da*da*c.varScale+2*da*db*c.cov+db*db*c.varShape))
	z := distuv.UnitNormal.Quantile(0.5 + lifeInterval/2)
	p := func(h float64) float64 { return -math.Expm1(-h) }
	if !finite(se) {
		se = 0
	}
	return Between{p(at), p(at * math.Exp(-z*se)), p(math.Min(1e6, at*math.Exp(z*se)))}
}

// LifeOf places a regulator's age against its service life: the shop's own
// life curve when lives allow one, else years (near its end from, past it
// from). Only the curve gives a probability. A nil age gives what is known
// without it: nothing.
func LifeOf(ageYears *float64, years [2]float64, lives []Life) ValveLife {
	if ageYears == nil || !finite(*ageYears) || *ageYears < 0 {
		return ValveLife{Life: LifeUnknown}
	}
	if c, err := FitLives(lives); err == nil {
		return c.Place(*ageYears)
	}
	if !(years[0] > 0 && years[1] >= years[0]) {
		years = [2]float64{ServiceNearEndYears, ServicePastYears}
	}
	age := *ageYears
	return ValveLife{AgeYears: &age, Life: place(age, years[0], years[1])}
}

// Place puts an age on the curve. A sweep over many houses fits once and calls
// this for each.
func (c LifeCurve) Place(age float64) ValveLife {
	near, _ := c.YearsTo(nearEndFailed)
	past, _ := c.YearsTo(pastFailed)
	p := c.FailsWithin(age, 1).Value
	return ValveLife{AgeYears: &age, Life: place(age, near.Value, past.Value), PFailNextYear: &p}
}

func place(age, near, past float64) ServiceLife {
	switch {
	case age >= past:
		return LifePast
	case age >= near:
		return LifeNearEnd
	}
	return LifeWithin
}

package assess

import (
	"fmt"
	"math"
	"strconv"
	"strings"
)

// HighSpanPSI is the span of the gauge that a reading above the usual gauge's
// scale is taken to have been made with: 0-300 psi suits a suspected 150 and
// over. Common practice.
const HighSpanPSI = 300.0

// The usual test gauge: 0-160 psi suits normal houses, grade B is the usual
// commercial grade. Common practice.
const (
	DefaultGaugeGrade   = "B"
	DefaultGaugeSpanPSI = 160.0
)

// percents returns the grade's accuracy in percent of span, in the middle half
// of the scale and outside it. ASME B40.100, as quoted; grade C from memory. A
// plain percentage ("1.6 %", "1.6") stands for the same over the whole scale:
// an EN 837 class is that (common practice).
func percents(grade string) (middle, outer float64, ok bool) {
	switch strings.ToUpper(strings.TrimSpace(grade)) {
	case "4A":
		return 0.1, 0.1, true
	case "3A":
		return 0.25, 0.25, true
	case "2A":
		return 0.5, 0.5, true
	case "1A":
		return 1, 1, true
	case "A":
		return 1, 2, true
	case "B":
		return 2, 3, true
	case "C":
		return 3, 4, true
	case "D":
		return 5, 5, true
	}
	p, err := strconv.ParseFloat(strings.TrimSpace(strings.TrimSuffix(strings.TrimSpace(grade), "%")), 64)
	if err != nil || !(p > 0 && p <= 25) {
		return 0, 0, false
	}
	return p, p, true
}

// Check tells what is wrong with a gauge's specification; an empty grade or a
// zero span stand for the usual gauge.
func (g GaugeSpec) Check() error {
	if _, _, ok := percents(g.Grade); g.Grade != "" && !ok {
		return fmt.Errorf("gauge grade %q is none of 4A, 3A, 2A, 1A, A, B, C, D (ASME B40.100), nor a percent of span such as 1.6", g.Grade)
	}
	if g.SpanPSI != 0 && !(g.SpanPSI >= 15 && g.SpanPSI <= 10000) {
		return fmt.Errorf("gauge span %v psi: give the top of its scale, for example 160", g.SpanPSI)
	}
	return nil
}

// or returns the specification with the usual gauge in place of what is
// missing or makes no sense.
func (g GaugeSpec) or() GaugeSpec {
	if _, _, ok := percents(g.Grade); !ok {
		g.Grade = DefaultGaugeGrade
	}
	if !(g.SpanPSI > 0 && g.SpanPSI <= 1e5) {
		g.SpanPSI = DefaultGaugeSpanPSI
	}
	return g
}

// PlusMinus is how far a reading of the gauge may be off, psi. Accuracy is
// percent of the span, not of the reading, and by most grades worse outside
// the middle half of the scale (the quarter points belong to the middle). A
// reading above the span is taken as made with a 0-300 psi gauge of the grade.
func (g GaugeSpec) PlusMinus(psi float64) float64 {
	g = g.or()
	if psi > g.SpanPSI {
		g.SpanPSI = math.Max(g.SpanPSI, HighSpanPSI)
	}
	middle, outer, _ := percents(g.Grade)
	if psi >= 0.25*g.SpanPSI && psi <= 0.75*g.SpanPSI {
		return middle / 100 * g.SpanPSI
	}
	return outer / 100 * g.SpanPSI
}

// Interval is what a reading may truly be, psi.
func (g GaugeSpec) Interval(psi float64) (low, high float64) {
	e := g.PlusMinus(psi)
	return psi - e, psi + e
}

// Side of a limit that a whole interval lies on.
type Against int

// The three answers. The limit itself is below.
const (
	Straddles Against = iota
	AtOrBelow
	Above
)

// AgainstLimit says whether a reading, with its gauge's error, lies wholly
// above a limit, wholly at or below it, or on both sides.
func (g GaugeSpec) AgainstLimit(psi, limit float64) Against {
	low, high := g.Interval(psi)
	switch {
	case low > limit:
		return Above
	case high <= limit:
		return AtOrBelow
	}
	return Straddles
}

// GaugeError is a gauge's error against a known true pressure: indicated minus
// true, in psi and in percent of span (US Army subcourse SM0486, p. 53).
func GaugeError(indicated, truth, spanPSI float64) (psi, percentOfSpan float64) {
	psi = finiteOr0(indicated - truth)
	if !(spanPSI > 0) {
		return psi, 0
	}
	return psi, finiteOr0(100 * psi / spanPSI)
}

// BandOf says where a static pressure lies against the house's band; both
// limits are in it, and the relief valve's pressure is out of every band.
func BandOf(psi float64, band [2]float64) Band {
	switch {
	case math.IsNaN(psi):
		return BandNone
	case psi >= HeaterReliefPSI:
		return OverRelief
	case psi > band[1]:
		return BandHigh
	case psi < band[0]:
		return BandLow
	}
	return BandIn
}

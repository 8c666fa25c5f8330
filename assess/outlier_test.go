package assess

import (
	"math"
	"testing"
)

// The masses of the e-Handbook's example, 1.3.5.17.1: the last is the outlier,
// and no ordinary z-score of eight values could say so.
func TestModifiedZFindsWhatZCannot(t *testing.T) {
	masses := []float64{199.31, 199.53, 200.19, 200.82, 201.92, 201.95, 202.18, 245.57}
	z := ModifiedZ(masses, 0)
	// By hand: the median is 201.37, between 200.82 and 201.92; the deviations are
	// 0.55 0.55 0.58 0.81 1.18 1.84 2.06 44.2, their median 0.995.
	if want := 0.6745 * (245.57 - 201.37) / 0.995; math.Abs(z[7]-want) > 1e-9 {
		t.Errorf("modified z %v, want %v", z[7], want)
	}
	for i, v := range z {
		if (math.Abs(v) > ModifiedZLimit) != (i == 7) {
			t.Errorf("%v: modified z %v", masses[i], v)
		}
	}
	if z := ModifiedZ([]float64{60, 60, 60, 61}, 2); math.Abs(z[3]-0.5) > 1e-12 {
		t.Errorf("equal readings do not make their neighbour an outlier: %v", z)
	}
	if _, ok := GrubbsOf([]float64{1, 2}, 0.05); ok {
		t.Error("two values have no outlier")
	}
}

func TestChartsOfAShiftedSeries(t *testing.T) {
	values := []float64{60, 61, 59, 60, 60, 61, 66, 67, 66, 68}
	c := CUSUMOf(values, 60, 1, 8)
	if c.Signal != 8 || c.Plain[len(values)-1] != 28 {
		t.Errorf("the sum passes 8 at value %d, want 8; plain sum %v", c.Signal, c.Plain)
	}
	e := EWMAOf(values, 60, 1.5, 0.3, 3)
	// By hand, the seventh average is 61.99 and its limit 60 + 4.5 × 0.420 × 0.997 = 61.88.
	if len(e.Signals) == 0 || e.Signals[0] != 7 || math.Abs(e.Average[6]-61.988) > 0.001 {
		t.Errorf("the moving average leaves its limits at %v, averages %v", e.Signals, e.Average)
	}
	if _, ok := IndividualsOf(values[:1]); ok {
		t.Error("one value has no step")
	}
}

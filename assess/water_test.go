package assess

import (
	"math"
	"testing"
)

// The release's own verification values: IAPWS-IF97 tables 5 and 35, from memory.
func TestWaterAgreesWithTheRelease(t *testing.T) {
	for _, c := range []struct{ k, mpa, v, w float64 }{
		{300, 3, 0.100215168e-2, 1507.73921},
		{300, 80, 0.971180894e-3, 1634.69054},
		{500, 3, 0.120241800e-2, 1240.71337},
	} {
		got := WaterAt(c.k, c.mpa)
		if math.Abs(got.Volume-c.v) > 5e-12 || math.Abs(got.SoundSpeed-c.w) > 2e-5 {
			t.Errorf("WaterAt(%v, %v) = %+v, want volume %v, sound %v", c.k, c.mpa, got, c.v, c.w)
		}
	}
	for _, c := range []struct{ k, mpa float64 }{{300, 0.353658941e-2}, {500, 2.63889776}, {600, 12.3443146}} {
		if got := SaturationMPa(c.k); math.Abs(got-c.mpa) > 1e-8*c.mpa {
			t.Errorf("SaturationMPa(%v) = %v, want %v", c.k, got, c.mpa)
		}
	}
}

package assess

import "math"

// The grids over which the engine integrates what nobody knows: the street's
// level and the regulator's setting, in psi.
const (
	streetFrom, streetStep, nStreet    = 10, 4, 48
	settingFrom, settingStep, nSetting = 15, 3, 36
	nHouse                             = 221 // house static at whole psi, 0 to 220
)

func streetAt(i int) float64  { return streetFrom + streetStep*float64(i) }
func settingAt(i int) float64 { return settingFrom + settingStep*float64(i) }

// settingIndex is the setting's place on a house grid.
func settingIndex(i int) int { return settingFrom + settingStep*i }

// levels is a cause's joint distribution of street level and setting: where the
// product of the two shares holds, and gap between them at least.
type levels struct {
	street   [nStreet]float64
	setting  [nSetting]float64
	least    [nSetting]int // the lowest street node for each setting
	sLo, sHi int           // grid ranges with weight
	pLo, pHi int
}

func newLevels(street, setting func(float64) float64, gap float64) *levels {
	p := &levels{sLo: nStreet, pLo: nSetting}
	for i := range p.street {
		if p.street[i] = street(streetAt(i)); p.street[i] > 1e-7 {
			p.sLo, p.sHi = min(p.sLo, i), i+1
		}
	}
	for i := range p.setting {
		if p.setting[i] = setting(settingAt(i)); p.setting[i] > 1e-7 {
			p.pLo, p.pHi = min(p.pLo, i), i+1
		}
	}
	share := 0.0
	for _, x := range p.setting {
		share += x
	}
	total := 0.0
	for k := range p.setting {
		p.setting[k] /= share
	}
	for s := range p.street {
		for k := range p.setting {
			if streetAt(s)-settingAt(k) >= gap {
				total += p.street[s] * p.setting[k]
			}
		}
	}
	for i := range p.street {
		p.street[i] /= total
	}
	return p
}

// between keeps a density between two limits.
func between(low, high float64, f func(float64) float64) func(float64) float64 {
	return func(x float64) float64 {
		if x < low || x > high {
			return 0
		}
		return f(x)
	}
}

func mix(a float64, f, g func(float64) float64) func(float64) float64 {
	return func(x float64) float64 { return a*f(x) + (1-a)*g(x) }
}

// Levels of mains and settings. Mains of 40 to 150 psi, most of those with a
// regulator above 80; settings of 50 to 60 with a range of 25 to 75 (common
// practice, the shapes are judgement).
var (
	streetAny    = between(44, 180, mix(0.75, normal(98, 20), normal(92, 34)))
	streetStrong = between(82, 198, mix(0.75, normal(106, 18), normal(112, 30)))
	setRight     = between(41, 80, mix(0.7, normal(59, 6.5), normal(60, 14)))

	priorRegulated = newLevels(streetAny, setRight, 4)
	priorOpenSound = newLevels(between(42, 80, normal(62, 13)), setRight, math.Inf(-1))
	priorSetHigh   = newLevels(streetStrong, between(81, 121, mix(0.7, normal(91, 7), normal(97, 13))), 6)
	priorSetLow    = newLevels(streetAny, between(15, 39, normal(32, 5)), 12)
	priorPassing   = newLevels(streetStrong, setRight, 4)
	priorCreep     = newLevels(streetStrong, setRight, 12)
	priorStreetLow = newLevels(between(10, 46, normal(33, 6)), setRight, math.Inf(-1))
)

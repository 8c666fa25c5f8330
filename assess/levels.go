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
	if share == 0 { // a band narrower or stranger than the grid: no setting is likelier than another
		for k := range p.setting {
			p.setting[k], share = 1, share+1
		}
		p.pLo, p.pHi = 0, nSetting
	}
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
	if total > 0 {
		for i := range p.street {
			p.street[i] /= total
		}
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

// suppositions are the levels that each way of a house supposes, for one band.
type suppositions struct {
	regulated, openSound, setHigh, setLow, passing, creep, streetLow *levels
}

// supposing returns the suppositions for a shop's band. Mains of 40 to 150
// psi, most of those with a regulator above 80; settings of 50 to 60 with a
// range of 25 to 75 (common practice, the shapes are judgement).
func supposing(band [2]float64) *suppositions {
	if band == defaultBand {
		return usual
	}
	return suppose(band)
}

var (
	defaultBand = [2]float64{BandLowPSI, BandHighPSI}
	usual       = suppose(defaultBand)
)

func suppose(band [2]float64) *suppositions {
	bottom, top := band[0], band[1]
	any := between(44, 180, mix(0.75, normal(98, 20), normal(92, 34)))
	strong := between(top+2, 198, mix(0.75, normal(max(top+26, 106), 18), normal(max(top+32, 112), 30)))
	center := min(max(59, bottom+4), top-4)
	right := between(bottom, top, mix(0.7, normal(center, 6.5), normal(center, 14)))
	anywhere := math.Inf(-1)
	return &suppositions{
		regulated: newLevels(any, right, 4),
		openSound: newLevels(between(bottom+2, top, normal((bottom+top)/2, 13)), right, anywhere),
		setHigh:   newLevels(strong, between(top+1, max(121, top+41), mix(0.7, normal(top+11, 7), normal(top+17, 13))), 6),
		setLow:    newLevels(any, between(min(15, bottom-5), bottom-1, normal(bottom-8, 5)), 12),
		passing:   newLevels(strong, right, 4),
		creep:     newLevels(strong, right, 12),
		streetLow: newLevels(between(10, max(bottom+6, 20), normal(bottom-7, 6)), right, anywhere),
	}
}

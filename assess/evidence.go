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

// levels is a cause's joint distribution of street level and setting: where the
// product of the two shares holds, and gap between them at least.
type levels struct {
	street     [nStreet]float64
	setting    [nSetting]float64
	lowestGap  float64 // street at least this far above the setting
	sLo, sHi   int     // grid ranges with weight
	pLo, pHi   int
	unregulate bool // the house follows the street whatever the setting
}

func newLevels(street, setting func(float64) float64, gap float64) *levels {
	p := &levels{lowestGap: gap, sLo: nStreet, pLo: nSetting}
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

// seen is what the visits say of pressures, as factors over the grids.
type seen struct {
	street  [nStreet]float64
	setting [nSetting]float64
	// House static at whole psi, for each way a house can behave.
	plain, restricted, open, expansion, creep [nHouse]float64
	flow                                      [nHouse]float64 // flowing readings over the pressure held under flow
	peaks                                     []float64       // house-side peaks, for creep against the street
	unsure                                    []unsureReading
	statics                                   []float64 // static readings of the house
	mains                                     []float64
	others                                    int              // readings under flow, heat, of a period or of an unknown side
	anySetting                                float64          // how well a usual setting fits what earlier visits and the tech said of it
	asStreet                                  [nStreet]float64 // how well the earlier house readings fit a house without a regulator
	streetBefore                              [nStreet]float64 // what was known of the street before the visit
}

// unsureReading is a static reading of a point whose side nobody knows.
type unsureReading struct {
	psi    float64
	street float64 // the share of such points that are on the street side
	firing bool
}

// unsureStreet is the share of unsettled points that stand ahead of the
// regulator. Judgement; a front bibb often does (common practice).
var unsureStreet = map[TestPoint]float64{FrontBibb: 0.55, Bibb: 0.25, Irrigation: 0.55, "": 0.12}

func ones(x []float64) {
	for i := range x {
		x[i] = 1
	}
}

// clampPSI keeps a number that somebody typed on the grids.
func clampPSI(psi float64) float64 { return min(max(psi, -30), 280) }

// timesHouse multiplies a house grid by a reading's curve.
func timesHouse(g *[nHouse]float64, c *curve, psi float64) {
	k := curveReach - int(math.Round(psi))
	for h := range g {
		g[h] *= c[h+k]
	}
}

// look turns the visit's readings as found into factors over the grids.
func (s *seen) look(js []judged) {
	for _, g := range [...]*[nHouse]float64{&s.plain, &s.restricted, &s.open, &s.expansion, &s.creep, &s.flow} {
		ones(g[:])
	}
	for i := range js {
		j := &js[i]
		if j.left {
			continue
		}
		psi := clampPSI(j.PSI)
		if j.side == UnsureSide || j.side == HouseSide && j.why&(bitFlowing|bitPeak|bitFiring) != 0 {
			s.others++
		}
		flowing, peak := j.why&bitFlowing != 0, j.why&bitPeak != 0
		switch {
		case j.side == StreetSide && !flowing && !peak:
			c := curveStreet
			if j.fair != FairYes {
				c = curveDoubtful
			}
			for k := range s.street {
				s.street[k] *= c.at(streetAt(k) - psi)
			}
			s.mains = append(s.mains, psi)
		case j.side == UnsureSide && !flowing && !peak:
			s.unsure = append(s.unsure, unsureReading{psi, unsureStreet[j.Point], j.Heater == Firing})
		case j.side != HouseSide:
			// A flowing or highest reading off the house side tells little.
		case flowing && peak:
		case flowing:
			timesHouse(&s.flow, curveFlow, psi)
			timesHouse(&s.plain, curveFlow, psi)
			timesHouse(&s.open, curveFlow, psi)
			timesHouse(&s.expansion, curveFlow, psi)
			timesHouse(&s.restricted, curveRestricted, psi)
		case peak:
			s.peaks = append(s.peaks, psi)
			timesHouse(&s.open, curvePeakOpen, psi)
			if j.Heater == Idle {
				timesHouse(&s.plain, curvePeakIdle, psi)
				timesHouse(&s.restricted, curvePeakIdle, psi)
				timesHouse(&s.expansion, curvePeakExpIdle, psi)
			} else {
				timesHouse(&s.plain, curvePeak, psi)
				timesHouse(&s.restricted, curvePeak, psi)
				timesHouse(&s.expansion, curvePeakExpansion, psi)
			}
		case j.Heater == Firing:
			timesHouse(&s.plain, curveFiring, psi)
			timesHouse(&s.restricted, curveFiring, psi)
			timesHouse(&s.creep, curveFiring, psi)
			timesHouse(&s.open, curveFiringOpen, psi)
			timesHouse(&s.expansion, curveExpansion, psi)
		default:
			c := curveStatic
			switch {
			case j.why&bitSediment != 0:
				c = curveSediment
			case j.fair != FairYes:
				c = curveDoubtful
			}
			s.statics = append(s.statics, psi)
			for _, g := range [...]*[nHouse]float64{&s.plain, &s.restricted, &s.open, &s.expansion, &s.creep} {
				timesHouse(g, c, psi)
			}
		}
	}
}

// believed is the state of belief about one cause: how well it explains the
// pressures, and what it would make of the street and the house.
type believed struct {
	likelihood float64
	street     [nStreet]float64
	house      [nHouse / houseBin]float64
}

const houseBin = 4

// beliefs integrates the pressures for every cause.
type beliefs [nCauses]believed

// cell adds one point of the grids to a cause.
func (b *believed) cell(s int, house, w float64) {
	b.likelihood += w
	b.street[s] += w
	b.house[min(max(int(house)/houseBin, 0), len(b.house)-1)] += w
}

// unsureFactor is how well the readings of unknown side fit a street and a
// house pressure.
func (s *seen) unsureFactor(street, house float64, firing *curve) float64 {
	f := 1.0
	for _, u := range s.unsure {
		c := curveStatic
		if u.firing {
			c = firing
		}
		f *= 0.9*(u.street*curveStatic.at(street-u.psi)+(1-u.street)*c.at(house-u.psi)) + 0.1*stray
	}
	return f
}

// regulated integrates over houses whose regulator holds its setting.
func (s *seen) regulated(b *believed, p *levels, g *[nHouse]float64, firing *curve, weight float64) {
	for k := p.pLo; k < p.pHi; k++ {
		setting := settingAt(k)
		wp := weight * p.setting[k] * s.setting[k]
		h := setting
		gh := houseFactor(g, h)
		if wp *= gh; wp < 1e-30 {
			continue
		}
		for i := p.sLo; i < p.sHi; i++ {
			street := streetAt(i)
			if street-setting < p.lowestGap {
				continue
			}
			w := wp * p.street[i] * s.street[i]
			if len(s.unsure) > 0 {
				w *= s.unsureFactor(street, h, firing)
			}
			b.cell(i, h, w)
		}
	}
}

// houseFactor averages a house grid over the width of a cell.
func houseFactor(g *[nHouse]float64, h float64) float64 {
	k := min(max(int(math.Round(h)), 1), nHouse-2)
	return (g[k-1] + g[k] + g[k+1]) / 3
}

// streetward integrates over houses that follow the street, lag psi below it,
// though they have, or had, a regulator of which the setting and the earlier
// house readings speak.
func (s *seen) streetward(b *believed, p *levels, lags []float64, weight float64) {
	s.follow(b, p, lags, weight*s.anySetting, nil)
}

// alone integrates over houses without a regulator: they follow the street,
// and did so at earlier visits.
func (s *seen) alone(b *believed, p *levels, lags []float64, weight float64) {
	s.follow(b, p, lags, weight, &s.asStreet)
}

func (s *seen) follow(b *believed, p *levels, lags []float64, weight float64, before *[nStreet]float64) {
	total := 0.0
	for i := p.sLo; i < p.sHi; i++ {
		total += p.street[i]
	}
	for i := p.sLo; i < p.sHi; i++ {
		street := streetAt(i)
		ws := weight * p.street[i] / total * s.street[i] / float64(len(lags))
		if before != nil {
			ws *= before[i]
		}
		if ws < 1e-30 {
			continue
		}
		for _, lag := range lags {
			h := street - lag
			w := ws * (houseFactor(&s.open, h-1.5) + houseFactor(&s.open, h+1.5)) / 2
			if len(s.unsure) > 0 {
				w *= s.unsureFactor(street, h, curveFiringOpen)
			}
			b.cell(i, h, w)
		}
	}
}

// climbs is how far a creeping valve has let the house climb from its setting
// to the street when it is read, with the share of readings. Judgement: most
// are read soon after water ran.
var climbs = [...]struct{ part, share float64 }{{0, 0.34}, {0.12, 0.2}, {0.3, 0.16}, {0.55, 0.12}, {0.8, 0.1}, {0.96, 0.08}}

// creeping integrates over houses whose regulator holds under flow and leaks
// at rest.
func (s *seen) creeping(b *believed, p *levels) {
	for k := p.pLo; k < p.pHi; k++ {
		setting := settingAt(k)
		wp := p.setting[k] * s.setting[k] * houseFactor(&s.flow, setting)
		if wp < 1e-30 {
			continue
		}
		for i := p.sLo; i < p.sHi; i++ {
			street := streetAt(i)
			if street-setting < p.lowestGap {
				continue
			}
			ws := wp * p.street[i] * s.street[i]
			for _, peak := range s.peaks {
				ws *= curvePeakCreep.at(street - peak)
			}
			if ws < 1e-30 {
				continue
			}
			for _, c := range climbs {
				h := setting + c.part*(street-setting)
				w := ws * c.share * houseFactor(&s.creep, h)
				if len(s.unsure) > 0 {
					w *= s.unsureFactor(street, h, curveFiring)
				}
				b.cell(i, h, w)
			}
		}
	}
}

// offsets are the errors of a gauge at fault, with their shares. Judgement.
var offsets = [...]float64{-40, -30, -22, -16, -11, 11, 16, 22, 30, 40}

// loose is the density of a reading that a scattering gauge makes of a house
// under flow, heat or at its highest: anything from 0 to 130 psi. Judgement.
const loose = 1.0 / 130

// gaugeAtFault weighs the readings of a house in order as a faulty gauge or
// test point would show them: all off by the same, or each by its own.
func (s *seen) gaugeAtFault(b *believed) {
	p := priorRegulated
	scattered := s.anySetting * math.Pow(loose, float64(s.others))
	for _, r := range s.statics {
		scattered *= 0.4*normalAt(r, 59, 9) + 0.6*normalAt(r, 62, 32)
	}
	for _, r := range s.mains {
		scattered *= 0.5*normalAt(r, 98, 24) + 0.5*normalAt(r, 85, 40)
	}
	before := 0.0
	for i := p.sLo; i < p.sHi; i++ {
		before += p.street[i] * s.streetBefore[i]
	}
	scattered *= before
	shared := 0.0
	for _, off := range offsets {
		house := 0.0
		for k := p.pLo; k < p.pHi; k++ {
			h := settingAt(k) + off
			f := p.setting[k] * s.setting[k] * houseFactor(&s.plain, h)
			if len(s.unsure) > 0 {
				f *= math.Pow(loose, float64(len(s.unsure)))
			}
			house += f
		}
		street := 0.0
		for i := p.sLo; i < p.sHi; i++ {
			f := p.street[i] * s.streetBefore[i]
			for _, r := range s.mains {
				f *= curveStreet.at(streetAt(i) + off - r)
			}
			street += f
		}
		shared += house * street
	}
	shared /= float64(len(offsets))
	b.likelihood = 0.6*shared + 0.4*scattered
	for i := p.sLo; i < p.sHi; i++ {
		b.street[i] = p.street[i]
	}
	for k := p.pLo; k < p.pHi; k++ {
		b.house[int(settingAt(k))/houseBin] += p.setting[k]
	}
}

func normalAt(x, mean, sd float64) float64 {
	z := (x - mean) / sd
	return math.Exp(-z*z/2) / (sd * 2.5066282746)
}

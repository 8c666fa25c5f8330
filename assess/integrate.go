package assess

import "math"

// believed is the state of belief about one cause: how well it explains the
// pressures, and what it would make of the street and the house.
type believed struct {
	likelihood float64
	street     [nStreet]float64
	house      [nHouse/houseBin + 1]float64
}

const houseBin = 4

// beliefs integrates the pressures for every cause.
type beliefs [nCauses]believed

// cell adds one point of the grids to a cause.
func (b *believed) cell(street, house int, w float64) {
	b.likelihood += w
	b.street[street] += w
	b.house[house/houseBin] += w
}

// scale weighs all that is believed of a cause.
func (b *believed) scale(w float64) {
	b.likelihood *= w
	for i := range b.street {
		b.street[i] *= w
	}
	for i := range b.house {
		b.house[i] *= w
	}
}

// behaviour picks the house column of the readings of unknown side.
type behaviour int

const (
	inOrder behaviour = iota
	openToMain
	heatsUp
)

// column is the house column for a behaviour.
func (u *unsureReading) column(how behaviour) *[nHouse]float64 {
	switch how {
	case openToMain:
		return &u.open
	case heatsUp:
		return &u.heating
	}
	return &u.house
}

// unsureFactor is how well the readings of unknown side fit a street level and
// a house pressure.
func (s *seen) unsureFactor(street, house int, how behaviour) float64 {
	f := 1.0
	for n := range s.nUnsure {
		u := &s.unsure[n]
		f *= u.street[street] + u.column(how)[house]
	}
	return f
}

// regulated integrates over houses whose regulator holds its setting. Without
// readings of unknown side, street and setting are tied by the least gap alone.
func (s *seen) regulated(b *believed, p *levels, g *[nHouse]float64, settings *[nSetting]float64, how behaviour, weight float64) {
	var street [nStreet]float64
	for i := p.sLo; i < p.sHi; i++ {
		street[i] = p.street[i] * s.street[i]
	}
	if s.nUnsure > 1 {
		for k := p.pLo; k < p.pHi; k++ {
			h := settingIndex(k)
			wp := weight * p.setting[k] * settings[k] * g[h]
			if wp < 1e-30 {
				continue
			}
			sum := 0.0
			for i := max(p.sLo, p.least[k]); i < p.sHi; i++ {
				w := wp * street[i] * s.unsureFactor(i, h, how)
				b.street[i] += w
				sum += w
			}
			b.likelihood += sum
			b.house[h/houseBin] += sum
		}
		return
	}
	// One reading of unknown side fits a street and a house by a sum, so that
	// the sums over the street can be taken once for all settings.
	var toStreet [nStreet]float64
	var toHouse *[nHouse]float64
	if s.nUnsure == 1 {
		for i := p.sLo; i < p.sHi; i++ {
			toStreet[i] = street[i] * s.unsure[0].street[i]
		}
		toHouse = s.unsure[0].column(how)
	} else {
		toStreet = street
	}
	var above, plain [nStreet + 1]float64 // the street's weight from a node up
	for i := p.sHi - 1; i >= p.sLo; i-- {
		above[i], plain[i] = above[i+1]+toStreet[i], plain[i+1]+street[i]
	}
	var reached, held [nStreet + 1]float64 // the settings' weight from their least street up
	for k := p.pLo; k < p.pHi; k++ {
		h := settingIndex(k)
		wp := weight * p.setting[k] * settings[k] * g[h]
		from := max(p.sLo, p.least[k])
		if from >= p.sHi {
			continue
		}
		w := wp * above[from]
		reached[from] += wp
		if toHouse != nil {
			w += wp * toHouse[h] * plain[from]
			held[from] += wp * toHouse[h]
		}
		b.likelihood += w
		b.house[h/houseBin] += w
	}
	to, at := 0.0, 0.0
	for i := p.sLo; i < p.sHi; i++ {
		to += reached[i]
		at += held[i]
		b.street[i] += to*toStreet[i] + at*street[i]
	}
}

// follow integrates over houses that follow the street, lag psi below it.
// Before is the chance that they did so at earlier visits too.
func (s *seen) follow(b *believed, p *levels, lags []float64, before, weight float64) {
	total := 0.0
	for i := p.sLo; i < p.sHi; i++ {
		total += p.street[i]
	}
	for i := p.sLo; i < p.sHi; i++ {
		street := streetAt(i)
		ws := weight * p.street[i] / total * s.street[i] / float64(len(lags))
		ws *= s.told * (before*s.asStreet[i] + (1-before)*s.apart)
		if ws < 1e-30 {
			continue
		}
		for _, lag := range lags {
			h := int(street - lag + 0.5)
			w := ws * (s.open[h-1] + s.open[h] + s.open[h+1]) / 3
			if s.nUnsure > 0 {
				w *= s.unsureFactor(i, h, openToMain)
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
	var street [nStreet]float64
	for i := p.sLo; i < p.sHi; i++ {
		street[i] = p.street[i] * s.street[i]
		for _, peak := range s.peaks {
			street[i] *= curvePeakCreep.at(streetAt(i) - peak)
		}
	}
	for k := p.pLo; k < p.pHi; k++ {
		setting := settingAt(k)
		wp := p.setting[k] * s.flow[settingIndex(k)]
		if wp < 1e-30 {
			continue
		}
		for i := max(p.sLo, p.least[k]); i < p.sHi; i++ {
			ws := wp * street[i]
			if ws < 1e-30 || ws < 1e-9*b.likelihood {
				continue
			}
			gap, sum := streetAt(i)-setting, 0.0
			for _, c := range climbs {
				h := int(setting + c.part*gap + 0.5)
				w := ws * c.share * s.creep[h] * (s.crept[k] + creptAlike*s.toldAt[k]*s.before[h])
				if s.nUnsure > 0 {
					w *= s.unsureFactor(i, h, inOrder)
				}
				b.house[h/houseBin] += w
				sum += w
			}
			b.street[i] += sum
			b.likelihood += sum
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
func (s *seen) gaugeAtFault(b *believed, p *levels) {
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
			h := max(settingIndex(k)+int(off), 0)
			house += p.setting[k] * s.kept[k] * s.plain[h]
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
	shared *= math.Pow(loose, float64(s.nUnsure)) / float64(len(offsets))
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

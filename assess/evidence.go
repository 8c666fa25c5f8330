package assess

import "math"

// seen is what the visits say of pressures, as factors over the grids.
type seen struct {
	memory
	street [nStreet]float64 // the street's level, by memory and by the visit
	// House static at whole psi, for each way a house can behave; faulty is plain
	// but for heating, and only differs when heated is set.
	heated                                            bool
	plain, faulty, restricted, open, expansion, creep [nHouse]float64
	flow                                              [nHouse]float64 // flowing readings over the pressure held under flow
	peaks                                             []float64       // house-side peaks, for creep against the street
	unsure                                            [mostUnsure]unsureReading
	nUnsure                                           int
	statics                                           []float64 // static readings of the house
	mains                                             []float64
	others                                            int // readings under flow, heat, of a period or of an unknown side
}

// unsureReading is a static reading of a point whose side nobody knows: how
// well it fits each street level, and each house pressure, for houses in order,
// open to the main and troubled by expansion.
type unsureReading struct {
	street               [nStreet]float64
	house, open, heating [nHouse]float64
}

// mostUnsure is how many readings of unknown side the engine weighs.
const mostUnsure = 4

// unsureWorth is how far such a reading counts at all. Judgement: the point
// may be yet another one.
const unsureWorth = 0.9

func (s *seen) addUnsure(j *judged, psi float64) {
	if s.nUnsure == mostUnsure {
		return
	}
	u := &s.unsure[s.nUnsure]
	s.nUnsure++
	share := unsureStreet[j.Point]
	for i := range u.street {
		u.street[i] = unsureWorth*share*curveStatic.at(streetAt(i)-psi) + (1-unsureWorth)*stray
	}
	house, open, heating := curveStatic, curveStatic, curveStatic
	if j.Heater == Firing {
		house, open, heating = curveFiring, curveFiringOpen, curveExpansion
	}
	k := curveReach - int(math.Round(psi))
	for h := range u.house {
		u.house[h] = unsureWorth * (1 - share) * house[h+k]
		u.open[h] = unsureWorth * (1 - share) * open[h+k]
		u.heating[h] = unsureWorth * (1 - share) * heating[h+k]
	}
}

// unsureStreet is the share of unsettled points that stand ahead of the
// regulator. Judgement; a front bibb often does (common practice).
var unsureStreet = map[TestPoint]float64{FrontBibb: 0.55, Bibb: 0.25, Irrigation: 0.55, "": 0.12}

// smooth averages a house grid over the width of a cell.
func smooth(g *[nHouse]float64) {
	last := g[0]
	for h := 1; h < nHouse-1; h++ {
		here := g[h]
		g[h] = (last + here + g[h+1]) / 3
		last = here
	}
}

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
	s.street = s.streetBefore
	for _, g := range [...]*[nHouse]float64{&s.plain, &s.faulty, &s.restricted, &s.open, &s.expansion, &s.creep, &s.flow} {
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
				c = curveGaugeDoubted // nothing else makes a main reading doubtful
			}
			for k := range s.street {
				s.street[k] *= c.at(streetAt(k) - psi)
			}
			s.mains = append(s.mains, psi)
		case j.side == UnsureSide && !flowing && !peak:
			s.addUnsure(j, psi)
		case j.side != HouseSide:
			// A flowing or highest reading off the house side tells little.
		case flowing && peak:
		case flowing:
			timesHouse(&s.flow, curveFlow, psi)
			timesHouse(&s.plain, curveFlow, psi)
			timesHouse(&s.faulty, curveFlow, psi)
			timesHouse(&s.open, curveFlow, psi)
			timesHouse(&s.expansion, curveFlow, psi)
			timesHouse(&s.restricted, curveRestricted, psi)
		case peak:
			s.peaks = append(s.peaks, psi)
			timesHouse(&s.open, curvePeakOpen, psi)
			if j.Heater == Idle {
				timesHouse(&s.plain, curvePeakIdle, psi)
				timesHouse(&s.faulty, curvePeakIdle, psi)
				timesHouse(&s.restricted, curvePeakIdle, psi)
				timesHouse(&s.expansion, curvePeakExpIdle, psi)
			} else {
				s.heated = true
				timesHouse(&s.plain, curvePeak, psi)
				timesHouse(&s.faulty, curvePeakFaulty, psi)
				timesHouse(&s.restricted, curvePeakFaulty, psi)
				timesHouse(&s.expansion, curvePeakExpansion, psi)
			}
		case j.Heater == Firing:
			s.heated = true
			timesHouse(&s.plain, curveFiring, psi)
			timesHouse(&s.faulty, curveFiringFaulty, psi)
			timesHouse(&s.restricted, curveFiringFaulty, psi)
			timesHouse(&s.creep, curveFiringFaulty, psi)
			timesHouse(&s.open, curveFiringOpen, psi)
			timesHouse(&s.expansion, curveExpansion, psi)
		default:
			c := curveStatic
			switch {
			case j.why&bitSediment != 0:
				c = curveSediment
			case j.why&^bitNearLimit == bitGaugeDoubted:
				c = curveGaugeDoubted
			case j.fair != FairYes:
				c = curveDoubtful
			}
			s.statics = append(s.statics, psi)
			for _, g := range [...]*[nHouse]float64{&s.plain, &s.faulty, &s.restricted, &s.open, &s.creep} {
				timesHouse(g, c, psi)
			}
			switch {
			case c == curveStatic && j.Heater == Idle:
				c = curveIdleExpansion
			case c == curveStatic:
				c = curveUnsaidExpansion
			}
			timesHouse(&s.expansion, c, psi)
		}
	}
	for _, g := range [...]*[nHouse]float64{&s.plain, &s.faulty, &s.restricted, &s.open, &s.expansion, &s.creep, &s.flow} {
		smooth(g)
	}
}

package assess

import "math"

// Rules of fairness, in psi and years; common practice as the assessment's
// contract states it, unless marked.
const (
	streetGapPSI   = 15 // this far above the house side, a bibb is on the street side
	sameSidePSI    = 5  // this close to the house side, a bibb may be on it
	belowMainPSI   = 15 // this far below the main, a regulator is proved at work
	apartPSI       = 15 // fair readings of one side further apart contradict each other
	oldHeaterYears = 10 // scale collects in an older heater's drain
	unflushedYears = 4  // likewise this long after the last flush
	limitSlack     = 1e-9
)

// reasonSet is a set of Reasons, one bit each.
type reasonSet uint16

var reasonOrder = [...]Reason{
	ReasonFrontBibb, ReasonBibbUnspecified, ReasonIrrigation, ReasonPointUnknown, ReasonHeaterFiring, ReasonHeaterUnknown,
	ReasonPlasticDrain, ReasonSediment, ReasonFlowing, ReasonPeak, ReasonNearLimit, ReasonGaugeDoubted,
}

const (
	bitFrontBibb reasonSet = 1 << iota
	bitBibb
	bitIrrigation
	bitPointUnknown
	bitFiring
	bitHeaterUnknown
	bitPlasticDrain
	bitSediment
	bitFlowing
	bitPeak
	bitNearLimit
	bitGaugeDoubted

	bitsUnsettled = bitFrontBibb | bitBibb | bitIrrigation
	bitsNoStatic  = bitFlowing | bitPeak
)

func (s reasonSet) list() []Reason {
	out := []Reason{}
	for i, r := range reasonOrder {
		if s&(1<<i) != 0 {
			out = append(out, r)
		}
	}
	return out
}

// judged is a reading with what may be believed of it, inside the package.
type judged struct {
	*Reading
	side      Side
	fair      Fair
	why       reasonSet
	plusMinus float64
	left      bool // read after the visit's work on the valve
}

// unsettledPoint returns the index into record.settled of a point whose side a
// pair of readings can settle, and the reason it gives until then.
func unsettledPoint(p TestPoint) (int, reasonSet, bool) {
	switch p {
	case FrontBibb:
		return 0, bitFrontBibb, true
	case Bibb:
		return 1, bitBibb, true
	case Irrigation:
		return 2, bitIrrigation, true
	}
	return 0, 0, false
}

// judge judges the readings of one visit. It appends to buf, and writes what
// the visit settles about a bibb's side into the record.
func judge(buf []judged, v *Visit, before, after *record, shop *Shop) []judged {
	gaugeDoubted := false
	for i := range v.Equipment {
		e := &v.Equipment[i]
		gaugeDoubted = gaugeDoubted || e.Item == Gauge && (e.Condition == Suspect || e.Condition == Failed)
	}
	for i := range v.Readings {
		r := &v.Readings[i]
		j := judged{Reading: r, plusMinus: shop.Gauge.PlusMinus(r.PSI), left: isLeft(v, i)}
		switch r.Point {
		case Street:
			j.side = StreetSide
		case FrontBibb, Bibb, Irrigation:
			j.side = UnsureSide
		case "":
			j.side, j.why = UnsureSide, bitPointUnknown
		default:
			j.side = HouseSide
		}
		if r.Flow == Flowing {
			j.why |= bitFlowing
		}
		if r.Peak {
			j.why |= bitPeak
		}
		if gaugeDoubted {
			j.why |= bitGaugeDoubted
		}
		if r.Point == HeaterDrain {
			rec := before
			if r.When == After {
				rec = after
			}
			if r.Heater == "" {
				j.why |= bitHeaterUnknown
			}
			if rec.drain == Plastic {
				j.why |= bitPlasticDrain
			}
			if sediment(rec, v.Date.Year) {
				j.why |= bitSediment
			}
		}
		buf = append(buf, j)
	}
	settle(buf, before, after, shop.BandPSI[1], v.did(InstalledPRV))
	for i := range buf {
		j := &buf[i]
		if k, bit, ok := unsettledPoint(j.Point); ok {
			rec := before
			if j.left {
				rec = after
			}
			if j.side = rec.settled[k]; j.side == "" {
				j.side = UnsureSide
				j.why |= bit
			}
		}
		if j.Heater == Firing && j.side != StreetSide {
			j.why |= bitFiring
		}
		j.fair = fairness(j, shop.BandPSI)
		if j.fair == FairYes && j.side == HouseSide && nearLimit(j.PSI, j.plusMinus, shop.BandPSI) {
			j.why |= bitNearLimit
		}
	}
	return buf
}

// isLeft tells whether reading i shows the house as the visit's work on the
// valve left it. A reading that does not say is placed by its neighbours, else
// by how near it lies to the new setting.
func isLeft(v *Visit, i int) bool {
	switch r := &v.Readings[i]; {
	case r.When == After:
		return true
	case r.When == Before, !v.valveWork():
		return false
	default:
		befores, afters := 0, 0
		for k := range v.Readings {
			switch v.Readings[k].When {
			case Before:
				befores++
			case After:
				afters++
			}
		}
		if befores > 0 || afters > 0 {
			return afters == 0
		}
		for _, w := range v.Work {
			if w.ToPSI != nil && math.Abs(*w.ToPSI-r.PSI) <= sameSidePSI && w.Action != ChargedTank {
				return true
			}
		}
		return false
	}
}

// sediment tells whether scale may plug the gauge at the heater's drain.
func sediment(r *record, year int) bool {
	if r.heaterYear > 0 && year-r.heaterYear >= oldHeaterYears {
		return true
	}
	last := max(r.heaterYear, r.flushYear)
	return last > 0 && year-last >= unflushedYears
}

// settle looks for pairs of a bibb and a house-side reading that show which
// side of the regulator the bibb is on. A gap of 15 psi is hard evidence and
// outlasts a later pair that reads alike, as it does when the valve passes.
func settle(js []judged, before, after *record, top float64, newValve bool) {
	main := math.Inf(-1)
	for i := range js {
		if j := &js[i]; j.side == StreetSide && j.why&^bitFiring == 0 {
			main = math.Max(main, j.PSI)
		}
	}
	for i := range js {
		bibb := &js[i]
		k, _, ok := unsettledPoint(bibb.Point)
		if !ok || bibb.why&(bitsNoStatic|bitGaugeDoubted) != 0 {
			continue
		}
		var verdict Side
		for n := range js {
			house := &js[n]
			if house.side != HouseSide || house.left != bibb.left {
				continue
			}
			gap := bibb.PSI - house.PSI
			switch {
			case gap >= streetGapPSI && house.why&(bitsNoStatic|bitGaugeDoubted|bitSediment) == 0:
				// Heating only lifts the house side, so a heated one proves it too.
				verdict = StreetSide
			case verdict == "" && math.Abs(gap) <= sameSidePSI && house.why == 0 && house.Heater != Firing:
				pair := math.Max(bibb.PSI, house.PSI)
				if pair <= top || main-pair >= belowMainPSI {
					verdict = HouseSide
				}
			}
		}
		for _, rec := range [...]*record{before, after} {
			if rec == before && bibb.left || rec == after && newValve && !bibb.left {
				continue // a new valve may stand elsewhere
			}
			if verdict == StreetSide || verdict == HouseSide && rec.settled[k] == "" {
				rec.settled[k] = verdict
			}
		}
	}
}

// fairness weighs the reasons.
func fairness(j *judged, band [2]float64) Fair {
	switch {
	case j.why&bitsNoStatic != 0, j.why&bitFiring != 0 && j.PSI > band[1]:
		return FairNo
	case j.why&^bitNearLimit != 0:
		return Doubtful
	}
	return FairYes
}

// nearLimit tells whether the gauge's error reaches across a limit of the
// band. The limits themselves are in the band.
func nearLimit(psi, plusMinus float64, band [2]float64) bool {
	low, high := psi-plusMinus, psi+plusMinus
	return low < band[0]-limitSlack && high >= band[0]-limitSlack || low <= band[1]+limitSlack && high > band[1]+limitSlack
}

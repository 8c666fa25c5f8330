package assess

import (
	"math"
	"slices"
)

// pressures is what a visit's fair readings say of one side.
type pressures struct {
	psi       *float64 // what the readings support, nil when nothing
	plusMinus float64  // the gauge's share of it
	apart     bool     // fair readings too far apart to support anything
	any       bool     // there is a fair reading
	isLeft    bool     // psi was read after the visit's work
}

// sidePressure returns what the fair readings of a side support: the latest
// after work, else their median. Want limits it to readings before or after
// work on the valve; nil takes all.
func sidePressure(js []judged, side Side, want *bool) pressures {
	var buf [8]float64
	all := buf[:0]
	var out pressures
	var last *judged // the last that is said to be after work
	for i := range js {
		j := &js[i]
		if j.side != side || j.fair != FairYes || want != nil && j.left != *want {
			continue
		}
		if j.left && !out.isLeft {
			all, out.isLeft = all[:0], true // what was read before the work is no longer so
		}
		if j.left || !out.isLeft {
			all = append(all, j.PSI)
		}
		if j.When == After {
			last = j
		}
	}
	if len(all) == 0 {
		return out
	}
	out.any = true
	slices.Sort(all)
	n := len(all)
	if all[n-1]-all[0] > apartPSI {
		out.apart, out.isLeft = true, false
		return out
	}
	psi := all[(n-1)/2]
	psi += (all[n/2] - psi) / 2
	if last != nil {
		psi = last.PSI
	}
	out.psi = &psi
	for i := range js {
		if j := &js[i]; j.side == side && j.fair == FairYes && math.Abs(j.PSI-psi) <= apartPSI {
			out.plusMinus = math.Max(out.plusMinus, j.plusMinus)
		}
	}
	return out
}

// bandOf places a house's static pressure, none when there is none.
func bandOf(psi *float64, band [2]float64) Band {
	if psi == nil {
		return BandNone
	}
	return BandOf(*psi, band)
}

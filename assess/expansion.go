package assess

import "math"

// chargeOffPSI is how far a tank's air charge may lie from the house's static
// pressure (common practice).
const chargeOffPSI = TankChargeTolerancePSI

// closedBy says whether the house is closed off from the main. A regulator's
// thermal bypass opens only above the main, so a regulator closes the house.
func closedBy(r *record) Closed {
	switch {
	case r.regulated() || r.check == present:
		return ClosedYes
	case r.prv == absent && r.check == absent:
		return ClosedNo
	}
	return ClosedUnsure
}

// expansionOf sizes the tank that the house needs, from its static pressure
// and what is known of the heater. Inlet and setpoint are assumed where nobody
// told them.
func expansionOf(r *record, house *float64, shop Shop) Expansion {
	top := shop.tankTop()
	e := Expansion{Closed: closedBy(r), Tank: TankUnsure}
	if r.heaterGal != nil && *r.heaterGal > 0 && r.fuel != Tankless {
		hot := setpointOf(r)
		more := ExpandedGal(*r.heaterGal, AssumedInletF, hot)
		if house != nil && *house > 0 && more > 0 {
			e.MinTankGal = sizeTank(more, *house, top)
			e.MinTankGalRelief = sizeTank(more, *house, HeaterReliefPSI*(1-ReliefMarginShare))
		}
		if hot > AssumedInletF && hot <= hottestF {
			rise := risePerF[int(math.Round(hot))]
			e.RisePSIPerF = &rise
		}
	}
	switch {
	case r.tank == absent:
		e.Tank = TankMissing
	case r.tank == untold:
	case r.tankCondition == Failed:
		e.Tank = TankFailed
	case r.tankGal != nil && e.MinTankGal != nil && *r.tankGal < *e.MinTankGal:
		e.Tank = TankSmall
	case r.tankCondition == Suspect:
	default:
		e.Tank = TankOK
	}
	return e
}

// LowerFirst tells whether a house that stands at house psi is better brought down to 60 psi
// before a tank is bought that keeps it at top psi: there is no such tank any more, or one at
// 60 psi needs less than half its size. A tank's size grows with 1/(top - house).
func LowerFirst(house, top float64) bool {
	return house > comfortPSI && top > comfortPSI && 2*(top-house) < top-comfortPSI
}

// flatPSI is an air charge that is none: a tank that lost its air. Judgement.
const flatPSI = 5

// tooSmall tells whether the tank is no help at all: flat, or smaller than the
// size that only keeps the house under the relief valve.
func tooSmall(r *record, house *float64, shop Shop) bool {
	if r.tankCharge != nil && *r.tankCharge < flatPSI {
		return true
	}
	if r.tankGal == nil {
		return false
	}
	e := expansionOf(r, house, shop)
	return e.MinTankGalRelief != nil && *r.tankGal < *e.MinTankGalRelief
}

// hottestF is where water boils: no setpoint lies above.
const hottestF = 212

// risePerF is the pressure rise per degree of a closed thin steel heater with
// no tank, from the assumed inlet up to each whole setpoint, to a tenth. It
// does not depend on the heater's size as long as no pipe gives way with it.
var risePerF = func() (t [hottestF + 1]float64) {
	const anySize = 40
	for f := int(AssumedInletF) + 1; f <= hottestF; f++ {
		t[f] = math.Round(HeaterRisePSIPerF(anySize, AssumedInletF, float64(f))*10) / 10
	}
	return t
}()

func setpointOf(r *record) float64 {
	if r.setpointF != nil && *r.setpointF > 0 {
		return *r.setpointF
	}
	return AssumedSetpointF
}

// sizeTank is TankGal to the hundredth of a gallon, nil where there is none.
func sizeTank(more, charge, limit float64) *float64 {
	gal, ok := TankGal(more, charge, limit)
	if gal = math.Round(gal*100) / 100; !ok || !finite(gal) {
		return nil
	}
	return &gal
}

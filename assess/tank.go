package assess

import "math"

// tankAtmospherePSI is the atmosphere that tank arithmetic adds to a gauge
// pressure: the trade's 14.7 psi, so that worked examples come out as printed.
// At altitude it is less and a tank must be a little larger.
const tankAtmospherePSI = 14.7

// ExpandedGal is how much a system's water grows when it is heated from coldF
// to hotF, gallons: V (v_hot/v_cold - 1), with Kell's density. It is negative
// where water contracts (below 39 °F), and leaves out the growth of the heater
// itself, which is on the safe side.
func ExpandedGal(systemGal, coldF, hotF float64) float64 {
	if !finite(systemGal, coldF, hotF) {
		return 0
	}
	return finiteOr0(systemGal * (Density(Celsius(coldF))/Density(Celsius(hotF)) - 1))
}

// SteelSystemExpandedGal is the net expansion of a heating system of steel,
// gallons: Vs ((v2/v1 - 1) - 3 a dT), from the specific volumes and the
// metal's linear expansion per °F (6.5e-6 for steel, 9.5e-6 for copper).
// ASHRAE Handbook, HVAC Systems and Equipment, hydronics chapter, as quoted.
func SteelSystemExpandedGal(systemGal, coldVolume, hotVolume, linearPerF, riseF float64) float64 {
	if !finite(systemGal, coldVolume, hotVolume, linearPerF, riseF) || coldVolume <= 0 {
		return 0
	}
	return finiteOr0(systemGal * ((hotVolume/coldVolume - 1) - 3*linearPerF*riseF))
}

// Acceptance is the share of a diaphragm tank that takes water between two
// absolute pressures: 1 - P1/P2. ASHRAE as above.
func Acceptance(lowPSIA, highPSIA float64) float64 {
	if !finite(lowPSIA, highPSIA) || lowPSIA <= 0 || highPSIA <= lowPSIA {
		return 0
	}
	return 1 - lowPSIA/highPSIA
}

// PlainAcceptance is that share for a plain steel tank, filled with air of the
// atmosphere before the water comes: Pa/P1 - Pa/P2. Common practice.
func PlainAcceptance(lowPSIA, highPSIA float64) float64 {
	if !finite(lowPSIA, highPSIA) || lowPSIA <= 0 || highPSIA <= lowPSIA {
		return 0
	}
	return finiteOr0(tankAtmospherePSI/lowPSIA - tankAtmospherePSI/highPSIA)
}

// TankGal is the least diaphragm tank that takes expandedGal between its air
// charge, which must equal the house's static pressure, and limitPSI. It is
// false where there is no such tank: the house stands at the limit already.
// ASHRAE as above, in absolute pressures; gauge pressures give a tank too small.
func TankGal(expandedGal, chargePSI, limitPSI float64) (gal float64, ok bool) {
	a := Acceptance(chargePSI+tankAtmospherePSI, limitPSI+tankAtmospherePSI)
	if a <= 0 || !finite(expandedGal) {
		return 0, false
	}
	gal = math.Max(0, expandedGal) / a
	return finiteOr0(gal), finite(gal)
}

// HeatingTankGal is the short form for hot-water heating systems of 160 to
// 280 °F, (0.00041 t - 0.0466) Vs/(1 - P1/P2); common practice. It is false
// outside that range, and for tap water it is wrong.
func HeatingTankGal(systemGal, averageF, minPSI, maxPSI float64) (gal float64, ok bool) {
	a := Acceptance(minPSI+tankAtmospherePSI, maxPSI+tankAtmospherePSI)
	if a <= 0 || !finite(systemGal, averageF) || averageF < 160 || averageF > 280 {
		return 0, false
	}
	gal = (0.00041*averageF - 0.0466) * systemGal / a
	return finiteOr0(gal), finite(gal)
}

// AcceptanceGal is the water that a tank with the given air charge takes
// between the house's static pressure and the limit, gallons; Boyle's law. With
// too little charge the tank is part full before heating begins; with too much
// it takes nothing until the house has jumped to the charge.
func AcceptanceGal(tankGal, chargePSI, housePSI, limitPSI float64) float64 {
	c, p1, p2 := chargePSI+tankAtmospherePSI, housePSI+tankAtmospherePSI, limitPSI+tankAtmospherePSI
	if !finite(tankGal, c, p1, p2) || tankGal <= 0 || c <= 0 || p1 <= 0 || p2 <= p1 {
		return 0
	}
	if c <= p1 {
		return tankGal * (c/p1 - c/p2)
	}
	return math.Max(0, tankGal*(1-c/p2))
}

// FinalPSI is the pressure to which expandedGal drives a closed house with the
// tank; Boyle's law in absolute pressures. It is false when the water finds no
// room: the relief valve opens.
func FinalPSI(tankGal, chargePSI, housePSI, expandedGal float64) (psi float64, ok bool) {
	c, p1 := chargePSI+tankAtmospherePSI, housePSI+tankAtmospherePSI
	if !finite(tankGal, c, p1, expandedGal) || tankGal <= 0 || c <= 0 || p1 <= 0 {
		return 0, false
	}
	if expandedGal <= 0 {
		return housePSI, true
	}
	if c > p1 {
		p1 = c // an uncushioned jump first
	}
	air := tankGal * (c / p1)
	left := air - expandedGal
	if left <= 1e-9*tankGal {
		return 0, false
	}
	psi = p1*(air/left) - tankAtmospherePSI
	return finiteOr0(psi), finite(psi)
}

// Vessel is what holds the heated water, for its give.
type Vessel struct {
	Gal              float64 // water in it; counts only beside pipes
	DiameterOverWall float64 // 0 for a rigid vessel
	YoungPa          float64
	Poisson          float64
	LinearPerK       float64 // linear thermal expansion
}

// HeaterVessel is a storage heater of thin steel: diameter over wall 213,
// E 200 GPa, nu 0.3, 1.17e-5/K; textbook values, from memory.
func HeaterVessel(gal float64) Vessel {
	return Vessel{Gal: gal, DiameterOverWall: 213, YoungPa: youngSteelPa, Poisson: 0.3, LinearPerK: 1.17e-5}
}

// PipeRun is a length of pipe that is full of water and not heated.
type PipeRun struct {
	Pipe Pipe
	Feet float64
}

// risePressureMPa is the absolute pressure at which water's properties are
// taken: 0.5 MPa, about 58 psi on the gauge. It hardly matters.
const risePressureMPa = 0.5

// RisePSIPerF is how fast the pressure of a closed, air-free system rises with
// no tank, psi per °F of the heated water at waterF: the vessel's water wants
// (alpha_w - 3 alpha_s) V more room and finds only what water and walls give,
// V (kappa + (D/(E t))(5/4 - nu)) and the like for the unheated pipes. The
// cylinder's formula stands in textbooks on the strength of materials, water in
// IAPWS-IF97. Air, plastic pipe and seeping fill valves lower it, so that every
// such figure is only indicative; never below 0.
func RisePSIPerF(waterF float64, v Vessel, runs ...PipeRun) float64 {
	if !finite(waterF, v.Gal, v.DiameterOverWall, v.YoungPa, v.Poisson, v.LinearPerK) {
		return 0
	}
	w := WaterAt(Celsius(waterF)+273.15, risePressureMPa)
	gal := v.Gal
	if gal <= 0 {
		gal = 1
	}
	grow := gal * (w.Expansion - 3*v.LinearPerK)
	give := gal * w.Compressibility
	if v.DiameterOverWall > 0 && v.YoungPa > 0 {
		give += gal * v.DiameterOverWall / v.YoungPa * (1.25 - v.Poisson)
	}
	var cold Water
	if len(runs) > 0 {
		cold = WaterAt(Celsius(AssumedInletF)+273.15, risePressureMPa)
	}
	for _, r := range runs {
		g := r.Pipe.Gal(r.Feet)
		give += g * (cold.Compressibility + r.Pipe.diameterOverWall()/r.Pipe.youngPa())
	}
	if grow <= 0 {
		return 0
	}
	return finiteOr0(grow / give / paPerPSI / 1.8)
}

// HeaterRisePSIPerF is the mean of RisePSIPerF over a heating from coldF to
// hotF in a thin steel heater, psi per °F (Simpson's rule).
func HeaterRisePSIPerF(heaterGal, coldF, hotF float64, runs ...PipeRun) float64 {
	v := HeaterVessel(heaterGal)
	mid := coldF + (hotF-coldF)/2
	return (RisePSIPerF(coldF, v, runs...) + 4*RisePSIPerF(mid, v, runs...) + RisePSIPerF(hotF, v, runs...)) / 6
}

// TankChargeTolerancePSI is how far a tank's air charge may lie from the
// house's static pressure; common practice.
const TankChargeTolerancePSI = 5.0

func finite(vs ...float64) bool {
	for _, v := range vs {
		if math.IsNaN(v) || math.IsInf(v, 0) {
			return false
		}
	}
	return true
}

package assess

import "math"

// PipeMaterial is what a pipe is made of.
type PipeMaterial string

// The materials of house piping.
const (
	Copper PipeMaterial = "copper"
	Steel  PipeMaterial = "steel"
	CPVC   PipeMaterial = "cpvc"
	PEX    PipeMaterial = "pex"
)

// Young's moduli, Pa: textbook values, from memory.
const (
	youngCopperPa = 117e9
	youngSteelPa  = 200e9
	youngCPVCPa   = 2.9e9
	youngPEXPa    = 0.7e9
)

// Water in the equations of surge: adiabatic bulk modulus and density at 20 °C.
// Textbooks use 2.07 to 2.2 GPa; IAPWS-IF97 gives 2.197.
const (
	waterBulkPa  = 2.18e9
	waterKgPerM3 = 998.2
)

// UsualFeetPerSecond is a usual velocity in house pipes, ft/s, for a surge when
// nothing better is known; common practice 3 to 6.
const UsualFeetPerSecond = 5.0

// Pipe is a kind of pipe with its dimensions.
type Pipe struct {
	Material PipeMaterial
	InsideIn float64
	WallIn   float64
}

// PipeOf is the usual pipe of a material (copper type L, steel schedule 40,
// CPVC SDR 11, PEX SDR 9) in a nominal size in inches. Dimensions from memory
// (ASTM B88, A53, D2846, F876).
func PipeOf(m PipeMaterial, nominalIn float64) (Pipe, bool) {
	type key struct {
		m PipeMaterial
		n float64
	}
	switch (key{m, nominalIn}) {
	case key{Copper, 0.5}:
		return Pipe{m, 0.545, 0.040}, true
	case key{Copper, 0.75}:
		return Pipe{m, 0.785, 0.045}, true
	case key{Copper, 1}:
		return Pipe{m, 1.025, 0.050}, true
	case key{Steel, 0.5}:
		return Pipe{m, 0.622, 0.109}, true
	case key{Steel, 0.75}:
		return Pipe{m, 0.824, 0.113}, true
	case key{Steel, 1}:
		return Pipe{m, 1.049, 0.133}, true
	case key{CPVC, 0.5}:
		return Pipe{m, 0.485, 0.070}, true
	case key{CPVC, 0.75}:
		return Pipe{m, 0.695, 0.080}, true
	case key{CPVC, 1}:
		return Pipe{m, 0.901, 0.102}, true
	case key{PEX, 0.5}:
		return Pipe{m, 0.485, 0.070}, true
	case key{PEX, 0.75}:
		return Pipe{m, 0.681, 0.097}, true
	case key{PEX, 1}:
		return Pipe{m, 0.875, 0.125}, true
	}
	return Pipe{}, false
}

func (p Pipe) youngPa() float64 {
	switch p.Material {
	case Steel:
		return youngSteelPa
	case CPVC:
		return youngCPVCPa
	case PEX:
		return youngPEXPa
	}
	return youngCopperPa
}

// diameterOverWall is that of 3/4 in copper L when the dimensions are missing.
func (p Pipe) diameterOverWall() float64 {
	if !finite(p.InsideIn, p.WallIn) || p.InsideIn <= 0 || p.WallIn <= 0 {
		return 0.785 / 0.045
	}
	return p.InsideIn / p.WallIn
}

// Gal is the water in a length of the pipe, gallons.
func (p Pipe) Gal(feet float64) float64 {
	if !finite(p.InsideIn, feet) || feet <= 0 {
		return 0
	}
	return finiteOr0(math.Pi / 4 * p.InsideIn * p.InsideIn * 12 * feet / 231)
}

// WaveSpeed is the speed of a pressure wave in the pipe, m/s.
func (p Pipe) WaveSpeed() float64 {
	return waveSpeed(waterBulkPa, waterKgPerM3, p.youngPa(), p.diameterOverWall())
}

// waveSpeed is Korteweg's sqrt(K/rho) / sqrt(1 + (K/E)(D/e)), m/s; textbook.
func waveSpeed(bulkPa, kgPerM3, youngPa, diameterOverWall float64) float64 {
	return math.Sqrt(bulkPa / kgPerM3 / (1 + bulkPa/youngPa*diameterOverWall))
}

// surgePa is Joukowsky's rho a dv, Pa; textbook.
func surgePa(kgPerM3, waveMPerS, mPerS float64) float64 { return kgPerM3 * waveMPerS * mPerS }

// slowSurgePa is the surge of a closure slower than the wave's round trip,
// 2 rho L v/t, Pa; textbook.
func slowSurgePa(kgPerM3, metres, mPerS, seconds float64) float64 {
	return 2 * kgPerM3 * mPerS * (metres / seconds)
}

// roundTrip is how long a wave takes to the end of the pipe and back, s.
func roundTrip(metres, waveMPerS float64) float64 { return 2 * metres / waveMPerS }

// SurgePSI is the pressure that stopping the water at once adds to what stands
// in the pipe, psi.
func SurgePSI(pipe Pipe, feetPerSecond float64) float64 {
	if !finite(feetPerSecond) {
		return 0
	}
	return finiteOr0(surgePa(waterKgPerM3, pipe.WaveSpeed(), math.Abs(feetPerSecond)*metrePerFoot) / paPerPSI)
}

// ClosingSurgePSI is the surge of a valve that closes in the given time at the
// end of a pipe: the full surge when it closes within the wave's round trip,
// else 2 rho L v/t.
func ClosingSurgePSI(pipe Pipe, feetPerSecond, pipeFeet, closingSeconds float64) float64 {
	full := SurgePSI(pipe, feetPerSecond)
	if !finite(pipeFeet, closingSeconds) || pipeFeet <= 0 ||
		closingSeconds <= roundTrip(pipeFeet*metrePerFoot, pipe.WaveSpeed()) {
		return full
	}
	slow := slowSurgePa(waterKgPerM3, pipeFeet*metrePerFoot, math.Abs(feetPerSecond)*metrePerFoot, closingSeconds) / paPerPSI
	return finiteOr0(math.Min(full, slow))
}

// RigidColumnPSI is the mean pressure that slows a column of water evenly to a
// stop, rho L v/t, psi.
func RigidColumnPSI(feetPerSecond, pipeFeet, closingSeconds float64) float64 {
	if !finite(feetPerSecond, pipeFeet, closingSeconds) || closingSeconds <= 0 {
		return 0
	}
	return finiteOr0(slowSurgePa(waterKgPerM3, pipeFeet*metrePerFoot, feetPerSecond*metrePerFoot, closingSeconds) / 2 / paPerPSI)
}

// RuleOfThumbSurgePSI is the trade's 0.070 v L/t (ft/s, ft, s), psi: about five
// times the rigid column, and not Joukowsky. Common practice.
func RuleOfThumbSurgePSI(feetPerSecond, pipeFeet, closingSeconds float64) float64 {
	if !finite(feetPerSecond, pipeFeet, closingSeconds) || closingSeconds <= 0 {
		return 0
	}
	return finiteOr0(0.070 * feetPerSecond * pipeFeet / closingSeconds)
}

// HeadPSI is what an outlet's height above the gauge does to its static
// pressure, psi: 0.433 less for every foot up.
func HeadPSI(feetAbove float64) float64 { return finiteOr0(-HeadPSIPerFoot * feetAbove) }

// OutletPSI is the static pressure left at an outlet feetAbove the gauge, psi,
// never below 0.
func OutletPSI(gaugePSI, feetAbove float64) float64 {
	if !finite(gaugePSI, feetAbove) {
		return 0
	}
	return math.Max(0, finiteOr0(gaugePSI+HeadPSI(feetAbove)))
}

// FlowRatio is how the flow of a leak or an open tap changes with pressure,
// (P1/P0)^N1; N1 is one of the leak exponents. Fills of a fixed volume (toilet,
// washer, bath) and pressure-compensating aerators do not change.
func FlowRatio(fromPSI, toPSI, exponent float64) (ratio float64, ok bool) {
	if !finite(fromPSI, toPSI, exponent) || fromPSI <= 0 || toPSI < 0 {
		return 0, false
	}
	r := math.Pow(toPSI/fromPSI, exponent)
	return finiteOr0(r), finite(r)
}

// Saving is the percentage of leakage or open-tap flow that a lower pressure
// saves, for rigid holes (low) and for splits (high).
func Saving(fromPSI, toPSI float64) (low, high float64, ok bool) {
	a, ok1 := FlowRatio(fromPSI, toPSI, LeakExponentFixed)
	b, ok2 := FlowRatio(fromPSI, toPSI, LeakExponentSplit)
	low, high = finiteOr0(100*(1-a)), finiteOr0(100*(1-b))
	return low, high, ok1 && ok2 && finite(100*a, 100*b)
}

// Reduction is what a regulator is asked to do: inlet over outlet. TwoStage
// when that is more than one regulator should, by maxRatio (0 for the usual 3).
func Reduction(inletPSI, outletPSI, maxRatio float64) (ratio float64, twoStage bool) {
	if !finite(inletPSI, outletPSI, maxRatio) || outletPSI <= 0 {
		return 0, false
	}
	if maxRatio <= 0 {
		maxRatio = MaxReductionRatio
	}
	ratio = finiteOr0(inletPSI / outletPSI)
	return ratio, ratio > maxRatio
}

func finiteOr0(v float64) float64 {
	if !finite(v) {
		return 0
	}
	return v
}

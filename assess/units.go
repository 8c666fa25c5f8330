package assess

// PressureUnit is a unit that people write pressures in.
type PressureUnit string

// The units of pressure. A foot or metre of water is the conventional one, of
// 1000 kg/m³.
const (
	UnitPSI          PressureUnit = "psi"
	UnitPa           PressureUnit = "Pa"
	UnitKPa          PressureUnit = "kPa"
	UnitMPa          PressureUnit = "MPa"
	UnitBar          PressureUnit = "bar"
	UnitKgfPerCM2    PressureUnit = "kgf/cm2"
	UnitFootOfWater  PressureUnit = "ftH2O"
	UnitMetreOfWater PressureUnit = "mH2O"
)

// Exact by definition: the pound is 0.45359237 kg, the inch 0.0254 m, the US
// gallon 231 cubic inches, the standard atmosphere 101325 Pa.
const (
	paPerPSI      = 0.45359237 * StandardGravity / (0.0254 * 0.0254)
	metrePerFoot  = 0.3048
	metrePerInch  = 0.0254
	litrePerGal   = 231 * 0.254 * 0.254 * 0.254
	kgPerPound    = 0.45359237
	atmospherePSI = 101325 / paPerPSI
)

// pascals returns how many pascals one of the unit is, and false for a unit
// that is not known.
func (u PressureUnit) pascals() (float64, bool) {
	switch u {
	case UnitPSI:
		return paPerPSI, true
	case UnitPa:
		return 1, true
	case UnitKPa:
		return 1e3, true
	case UnitMPa:
		return 1e6, true
	case UnitBar:
		return 1e5, true
	case UnitKgfPerCM2:
		return StandardGravity * 1e4, true
	case UnitFootOfWater:
		return metrePerFoot * 1000 * StandardGravity, true
	case UnitMetreOfWater:
		return 1000 * StandardGravity, true
	}
	return 0, false
}

// Convert turns a pressure from one unit into another. It is false for a unit
// that is not known.
func Convert(value float64, from, to PressureUnit) (float64, bool) {
	f, ok := from.pascals()
	t, ok2 := to.pascals()
	if !ok || !ok2 {
		return 0, false
	}
	if from == to {
		return value, true
	}
	return value * (f / t), true
}

// AbsolutePSI turns a gauge pressure into an absolute one at sea level, psia.
func AbsolutePSI(gaugePSI float64) float64 { return gaugePSI + atmospherePSI }

// Litres turns US gallons into litres.
func Litres(gal float64) float64 { return gal * litrePerGal }

// Celsius turns °F into °C.
func Celsius(f float64) float64 { return (f - 32) / 1.8 }

// Fahrenheit turns °C into °F.
func Fahrenheit(c float64) float64 { return c*1.8 + 32 }

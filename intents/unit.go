package intents

// psiPer holds the factors to psi. NIST SP 811 (2008), appendix B.8: psi 6.894757
// kPa, bar 100 kPa, conventional foot of water 2.989067 kPa, conventional metre of water 9.80665 kPa,
// kgf/cm2 98.0665 kPa.
var psiPer = map[string]float64{
	"psi": 1, "bar": 100 / 6.894757, "kpa": 1 / 6.894757, "ft": 2.989067 / 6.894757, "m": 9.80665 / 6.894757, "mpa": 1000 / 6.894757, "kgcm": 98.0665 / 6.894757,
}

// toPSI converts a number with its unit to psi, rounded to 0.1.
func toPSI(v float64, unit string) float64 {
	f, ok := psiPer[unit]
	if !ok {
		f = 1
	}
	return round1(v * f)
}

func round1(v float64) float64 {
	if v < 0 {
		return float64(int64(v*10-0.5)) / 10
	}
	return float64(int64(v*10+0.5+1e-9)) / 10
}

// pressureUnit tells whether a number's unit is one of pressure.
func pressureUnit(u string) bool { _, ok := psiPer[u]; return ok }

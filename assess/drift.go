package assess

// DatedPSI is one fair static reading of the house, one a visit.
type DatedPSI struct {
	Date Date
	PSI  float64
}

// DriftOf says whether a series of visits shows a drift or a jump.
func DriftOf(series []DatedPSI, band [2]float64, today Date) Drift {
	return Drift{State: TooFew}
}

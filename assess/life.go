package assess

// LifeOf places a regulator's age against its service life: years (near its
// end, past it) until lives allow a fit of their own.
func LifeOf(ageYears *float64, years [2]float64, lives []Life) ValveLife {
	v := ValveLife{AgeYears: ageYears, Life: LifeUnknown}
	if ageYears == nil || !finite(*ageYears) {
		v.AgeYears = nil
		return v
	}
	switch {
	case *ageYears >= years[1]:
		v.Life = LifePast
	case *ageYears >= years[0]:
		v.Life = LifeNearEnd
	default:
		v.Life = LifeWithin
	}
	return v
}

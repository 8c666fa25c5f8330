package assess

// Level is the street's static pressure in a neighbourhood with its 90 %
// interval, psi, from N readings; Shifted when it has changed lately.
type Level struct {
	PSI, Low, High float64
	N              int
	Shifted        bool
}

// StreetLevel is the level that street-side readings nearby speak of; false
// when they are too few to speak of one.
func StreetLevel(readings []Neighbour, today Date) (Level, bool) {
	return Level{}, false
}

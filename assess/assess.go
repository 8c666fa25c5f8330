package assess

// Assess judges the last visit of in, in the light of those before it. It
// needs no visit at all: then it says what can be said without one.
func Assess(in Input) Assessment {
	return Assessment{
		Readings: []JudgedReading{}, Findings: []Finding{}, Causes: []Likelihood{},
		Cautions: []Caution{}, FollowUps: []FollowUp{},
		Band: BandNone, Drift: Drift{State: TooFew},
		Valve:     ValveLife{Life: LifeUnknown},
		Expansion: Expansion{Closed: ClosedUnsure, Tank: TankUnsure},
	}
}

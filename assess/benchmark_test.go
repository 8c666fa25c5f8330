package assess

import "testing"

// longHistory is a house with 20 past visits and one of today.
func longHistory() Input {
	in := Input{Today: Date{2026, 6, 15}}
	for i := range 20 {
		v := Visit{Date: in.Today.AddDays(-200 * (20 - i))}
		v.Add(Reading{PSI: float64(57 + i*7%5), Point: RearBibb, Heater: Idle})
		v.Add(Reading{PSI: float64(104 + i*5%7), Point: Street})
		in.Visits = append(in.Visits, v)
	}
	v := Visit{Date: in.Today}
	v.Add(Reading{PSI: 92, Point: RearBibb, Heater: Idle, Flow: Static})
	v.Add(Reading{PSI: 106, Point: FrontBibb})
	v.Add(Reading{PSI: 49, Point: RearBibb, Flow: Flowing})
	v.Add(Symptom{Symptom: Leak})
	v.Add(Symptom{Symptom: Hammer})
	v.Add(Equipment{Item: PRV, InstalledYear: ptr(2011)})
	v.Add(Equipment{Item: Heater, SizeGal: ptr(50.0), Fuel: Gas})
	v.Add(Equipment{Item: ExpansionTank, Present: ptr(false)})
	in.Visits = append(in.Visits, v)
	return in
}

// BenchmarkAssess is one assessment of a house with 20 past visits.
func BenchmarkAssess(b *testing.B) {
	in := longHistory()
	b.ReportAllocs()
	for b.Loop() {
		Assess(in)
	}
}

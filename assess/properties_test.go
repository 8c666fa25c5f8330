package assess

import (
	"bytes"
	"encoding/json"
	"math"
	"slices"
	"testing"

	"pgregory.net/rapid"
)

var (
	anyPoint  = rapid.SampledFrom([]TestPoint{FrontBibb, RearBibb, SideBibb, Bibb, Laundry, HeaterDrain, Kitchen, Bath, Street, AfterPRV, Irrigation, ""})
	anyHeater = rapid.SampledFrom([]HeaterState{"", Idle, Firing})
	anyItem   = rapid.SampledFrom([]Item{PRV, Heater, ExpansionTank, CheckValve, DrainValve, Gauge, Softener, Recirc})
	anyAction = rapid.SampledFrom([]Action{SetPRV, ReplacedPRV, InstalledPRV, RebuiltPRV, InstalledTank, ReplacedTank, ChargedTank, FlushedHeater, ReplacedHeater, RepairedLeak, ShutOff})
)

// maybe draws a value or none.
func maybe[T any](g *rapid.Generator[T]) *rapid.Generator[*T] { return rapid.Ptr(g, true) }

func anyReading(psi *rapid.Generator[float64]) *rapid.Generator[Reading] {
	return rapid.Custom(func(t *rapid.T) Reading {
		return Reading{
			PSI: psi.Draw(t, "psi"), Point: anyPoint.Draw(t, "point"), Heater: anyHeater.Draw(t, "heater"),
			Flow: rapid.SampledFrom([]Flow{"", Static, Flowing}).Draw(t, "flow"), Peak: rapid.Bool().Draw(t, "peak"),
			When: rapid.SampledFrom([]When{"", Before, After}).Draw(t, "when"),
		}
	})
}

func anyEquipment(number *rapid.Generator[float64]) *rapid.Generator[Equipment] {
	return rapid.Custom(func(t *rapid.T) Equipment {
		return Equipment{
			Item: anyItem.Draw(t, "item"), Present: maybe(rapid.Just(false)).Draw(t, "present"),
			InstalledYear: maybe(rapid.IntRange(1950, 2040)).Draw(t, "year"), AgeUnknown: rapid.Bool().Draw(t, "age unknown"),
			SizeGal: maybe(number).Draw(t, "size"), SettingPSI: maybe(number).Draw(t, "setting"), SetpointF: maybe(number).Draw(t, "setpoint"),
			Fuel:           rapid.SampledFrom([]Fuel{"", Gas, Electric, Tankless}).Draw(t, "fuel"),
			Material:       rapid.SampledFrom([]Material{"", Plastic, Brass}).Draw(t, "material"),
			Condition:      rapid.SampledFrom([]Condition{"", Failed, Suspect, Good}).Draw(t, "condition"),
			MaintainedYear: maybe(rapid.IntRange(0, 2030)).Draw(t, "maintained"),
		}
	})
}

func anyVisit(number *rapid.Generator[float64]) *rapid.Generator[Visit] {
	return rapid.Custom(func(t *rapid.T) Visit {
		v := Visit{Date: today.AddDays(-rapid.IntRange(0, 4000).Draw(t, "days ago"))}
		v.Readings = rapid.SliceOfN(anyReading(number), 0, 6).Draw(t, "readings")
		v.Equipment = rapid.SliceOfN(anyEquipment(number), 0, 4).Draw(t, "equipment")
		for range rapid.IntRange(0, 3).Draw(t, "symptoms") {
			v.Add(Symptom{rapid.SampledFrom(append(symptomOrder[:], GasSmell, ReliefBlocked)).Draw(t, "symptom"), rapid.Bool().Draw(t, "absent")})
		}
		for range rapid.IntRange(0, 2).Draw(t, "works") {
			v.Add(Work{anyAction.Draw(t, "action"), maybe(number).Draw(t, "to"), maybe(number).Draw(t, "from")})
		}
		for range rapid.IntRange(0, 2).Draw(t, "plans") {
			v.Add(Plan{Recheck, maybe(rapid.IntRange(-5, 400)).Draw(t, "in days")})
		}
		return v
	})
}

func anyHouse(number *rapid.Generator[float64]) *rapid.Generator[Input] {
	return rapid.Custom(func(t *rapid.T) Input {
		in := Input{Today: today, Visits: rapid.SliceOfN(anyVisit(number), 0, 6).Draw(t, "visits")}
		slices.SortStableFunc(in.Visits, func(a, b Visit) int { return a.Date.Sub(b.Date) })
		return in
	})
}

// sensible is a pressure that a gauge can show.
var sensible = rapid.Map(rapid.IntRange(0, 1800), func(n int) float64 { return float64(n) / 10 })

// checkSound checks what holds of every assessment.
func checkSound(t rapid.TB, in Input, a Assessment) {
	sum := 0.0
	for i, l := range a.Causes {
		if !(l.P >= 0 && l.P <= 1) || i > 0 && l.P > a.Causes[i-1].P {
			t.Fatalf("causes %v", a.Causes)
		}
		sum += l.P
	}
	if math.Abs(sum-1) > 1e-9 {
		t.Fatalf("probabilities sum to %v", sum)
	}
	// encoding/json refuses NaN and infinities, whatever the field.
	b, err := json.Marshal(a)
	if err != nil {
		t.Fatalf("%v", err)
	}
	if bytes.Contains(b, []byte(":null,\"causes\"")) || a.Readings == nil || a.Findings == nil || a.Cautions == nil || a.FollowUps == nil {
		t.Fatalf("a list is null: %s", b)
	}
	if bytes.Contains(b, []byte("{}")) || bytes.Contains(b, []byte(`"text":""`)) {
		t.Fatalf("a text is missing: %s", b)
	}
	if len(in.Visits) > 0 && len(a.Readings) != len(in.Visits[len(in.Visits)-1].Readings) {
		t.Fatalf("%d readings judged", len(a.Readings))
	}
	for _, r := range a.Readings {
		if (r.Side == HouseSide || r.Side == StreetSide) == (r.Side == UnsureSide) || r.Fair == FairYes && r.Side == UnsureSide {
			t.Fatalf("reading %+v", r)
		}
	}
}

func TestEveryAssessmentIsWhole(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := anyHouse(sensible).Draw(t, "house")
		checkSound(t, in, Assess(in))
	})
}

// No finite number that somebody types breaks an assessment.
func TestNoFiniteNumberBreaksAnAssessment(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := anyHouse(rapid.Float64()).Draw(t, "house")
		in.Shop = Shop{
			BandPSI:      [2]float64{rapid.Float64().Draw(t, "bottom"), rapid.Float64().Draw(t, "top")},
			ServiceYears: [2]float64{rapid.Float64().Draw(t, "near"), rapid.Float64().Draw(t, "past")},
			Gauge:        GaugeSpec{Grade: "B", SpanPSI: rapid.Float64().Draw(t, "span")},
		}
		for range rapid.IntRange(0, 4).Draw(t, "neighbours") {
			in.Neighbours = append(in.Neighbours, Neighbour{today, rapid.Float64().Draw(t, "psi")})
		}
		checkSound(t, in, Assess(in))
	})
}

var bandRank = map[Band]int{BandLow: 0, BandIn: 1, BandHigh: 2, OverRelief: 3}

// More pressure at a fair point never gives a milder band.
func TestMorePressureIsNeverMilder(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		low, high := sensible.Draw(t, "low"), sensible.Draw(t, "high")
		if low > high {
			low, high = high, low
		}
		judge := func(psi float64) Assessment {
			return Assess(Input{Today: today, Visits: []Visit{{Date: today, Readings: []Reading{{PSI: psi, Point: Laundry, Heater: Idle}}}}})
		}
		a, b := judge(low), judge(high)
		if bandRank[a.Band] > bandRank[b.Band] {
			t.Fatalf("%v is %s, %v is %s", low, a.Band, high, b.Band)
		}
	})
}

// A pressure told in another unit gives the same verdict.
func TestUnitsInSameVerdict(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		psi := sensible.Draw(t, "psi")
		unit := rapid.SampledFrom([]PressureUnit{UnitKPa, UnitBar, UnitFootOfWater, UnitMetreOfWater}).Draw(t, "unit")
		there, ok1 := Convert(psi, UnitPSI, unit)
		back, ok2 := Convert(there, unit, UnitPSI)
		if !ok1 || !ok2 {
			t.Fatalf("%v psi has no %v", psi, unit)
		}
		judge := func(psi float64) Assessment {
			psi = math.Round(psi*10) / 10 // as a reading is kept
			return Assess(Input{Today: today, Visits: []Visit{{Date: today, Readings: []Reading{{PSI: psi, Point: RearBibb, Heater: Idle}}}}})
		}
		if a, b := judge(psi), judge(back); a.Band != b.Band || !slices.Equal(codes(a), codes(b)) {
			t.Fatalf("%v psi: %v %v, by way of %v: %v %v", psi, a.Band, codes(a), unit, b.Band, codes(b))
		}
	})
}

// The order in which readings of different points are told does not matter.
func TestOrderOfPointsDoesNotMatter(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		v := anyVisit(sensible).Draw(t, "visit")
		v.Date = today
		seen := map[TestPoint]bool{}
		kept := v.Readings[:0]
		for _, r := range v.Readings {
			if !seen[r.Point] {
				seen[r.Point], r.When = true, ""
				kept = append(kept, r)
			}
		}
		v.Readings = kept
		shuffled := v
		shuffled.Readings = rapid.Permutation(v.Readings).Draw(t, "order")
		a := Assess(Input{Today: today, Visits: []Visit{v}})
		b := Assess(Input{Today: today, Visits: []Visit{shuffled}})
		if !equalPSI(a.HousePSI, b.HousePSI) || !equalPSI(a.StreetPSI, b.StreetPSI) || !slices.Equal(codes(a), codes(b)) {
			t.Fatalf("%v %v in one order, %v %v in another", a.HousePSI, codes(a), b.HousePSI, codes(b))
		}
		for i := range a.Causes {
			if math.Abs(a.Causes[i].P-b.Causes[i].P) > 1e-9 {
				t.Fatalf("%v in one order, %v in another", a.Causes, b.Causes)
			}
		}
	})
}

func equalPSI(a, b *float64) bool {
	return a == nil && b == nil || a != nil && b != nil && *a == *b
}

// The same visits give the same assessment, and are left as they were.
func TestAnAssessmentIsPure(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := anyHouse(sensible).Draw(t, "house")
		before, _ := json.Marshal(in)
		a, _ := json.Marshal(Assess(in))
		b, _ := json.Marshal(Assess(in))
		after, _ := json.Marshal(in)
		if !bytes.Equal(a, b) || !bytes.Equal(before, after) {
			t.Fatalf("%s then %s", a, b)
		}
	})
}

// FuzzAssess judges whatever visits a JSON text holds.
func FuzzAssess(f *testing.F) {
	b, _ := json.Marshal(longHistory())
	f.Add(b)
	f.Add([]byte(`{"Today":"2026-06-15","Visits":[{"Readings":[{"psi":1e300,"point":"x","flow":"flowing"}]}]}`))
	f.Fuzz(func(t *testing.T, b []byte) {
		var in Input
		if json.Unmarshal(b, &in) != nil || len(in.Visits) > 50 || len(in.Lives) > 50 {
			return
		}
		a := Assess(in)
		if _, err := json.Marshal(a); err != nil {
			t.Fatal(err)
		}
	})
}

package assess

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

func TestAnExpansionTankThatIsNeededAndOneThatIsThere(t *testing.T) {
	// A 40 gal heater, 50 to 120 °F, in a house at 60 psi.
	more := ExpandedGal(40, 50, 120)
	gal, ok := TankGal(more, 60, 80)
	if !ok || math.Abs(gal-2.14) > 0.01 {
		t.Errorf("tank %v gal, want 2.14", gal)
	}
	if psi, ok := FinalPSI(gal, 60, 60, more); !ok || math.Abs(psi-80) > 1e-9 {
		t.Errorf("the tank of that size ends at %v psi, want 80", psi)
	}
	if _, ok := TankGal(more, 80, 80); ok {
		t.Error("no tank keeps a house at 80 that stands at 80")
	}
	if gal, ok := TankGal(ExpandedGal(40, 33, 39), 60, 80); !ok || gal != 0 {
		t.Errorf("water that contracts needs no tank, got %v", gal)
	}
	// The same tank left at the shipped charge of 40 takes less, so the house
	// ends higher.
	if wrong, ok := FinalPSI(gal, 40, 60, more); !ok || wrong < 85 {
		t.Errorf("undercharged it ends at %v, %v, want well above 80", wrong, ok)
	}
	// A charge above the house jumps to the charge before anything is taken.
	over, ok := FinalPSI(gal, 75, 60, 0.01)
	if !ok || over < 75 {
		t.Errorf("overcharged: %v, want at least 75", over)
	}
}

// 75 gal heater, 2 gal tank at 70 psi: the relief valve drips; 4.5 gal end the
// drip, and 80 is exceeded all the same (common practice, pressures computed).
func TestATankThatStopsTheDripIsNotYetLargeEnough(t *testing.T) {
	more := ExpandedGal(75, 50, 140)
	small, _ := FinalPSI(2, 70, 70, more)
	large, _ := FinalPSI(4.5, 70, 70, more)
	if math.Abs(small-214) > 1 || math.Abs(large-103) > 1 {
		t.Errorf("2 gal ends at %v and 4.5 gal at %v, want 214 and 103", small, large)
	}
}

func TestAcceptanceAndFinalPressureAgree(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		gal := rapid.Float64Range(1, 20).Draw(t, "tank")
		charge := rapid.Float64Range(0, 100).Draw(t, "charge")
		house := rapid.Float64Range(20, 100).Draw(t, "house")
		limit := house + rapid.Float64Range(1, 60).Draw(t, "above")
		takes := AcceptanceGal(gal, charge, house, limit)
		if takes < 0 || takes > gal {
			t.Fatalf("a tank of %v gal takes %v", gal, takes)
		}
		if takes < 1e-3 {
			return
		}
		psi, ok := FinalPSI(gal, charge, house, takes)
		if !ok || math.Abs(psi-limit) > 1e-6 {
			t.Fatalf("what the tank takes up to %v psi drives it to %v, %v", limit, psi, ok)
		}
		if full := AcceptanceGal(gal, house, house, limit); takes > full+1e-9 {
			t.Fatalf("the right charge takes the most: %v at %v psi, %v at the house's %v", takes, charge, full, house)
		}
		if higher, ok := FinalPSI(gal, charge, house, takes*1.01); ok && higher <= psi {
			t.Fatalf("more water, less pressure: %v after %v", higher, psi)
		}
	})
}

func TestPipesSoftenTheRise(t *testing.T) {
	copper, _ := PipeOf(Copper, 0.75)
	pex, _ := PipeOf(PEX, 0.75)
	heater := HeaterVessel(40)
	bare := RisePSIPerF(120, heater)
	inCopper := RisePSIPerF(120, heater, PipeRun{copper, 100})
	inPEX := RisePSIPerF(120, heater, PipeRun{pex, 100})
	if !(bare > inCopper && inCopper > inPEX && inPEX > 0) {
		t.Errorf("rise: heater alone %v, with copper %v, with PEX %v psi per °F", bare, inCopper, inPEX)
	}
	if r := RisePSIPerF(35, heater); r != 0 {
		t.Errorf("cold water that contracts raises nothing: %v", r)
	}
	// One case from the field: 50 to 250 psi for 75 to 85 °F, about 20 psi per °F
	// (common practice).
	if r := HeaterRisePSIPerF(40, 75, 150); math.Abs(r-20) > 3 {
		t.Errorf("from 75 to 150 °F %v psi per °F, a field case found 20", r)
	}
}

// Rises a degree at 0.5 MPa, computed from IAPWS-IF97, for temperatures between
// those of the numeric cases.
func TestRisePerDegreeTable(t *testing.T) {
	for _, c := range []struct{ f, rigid, steel float64 }{{80, 49.0, 13.1}, {100, 67.2, 18.5}, {120, 82.4, 23.0}} {
		if r := RisePSIPerF(c.f, Vessel{}); math.Abs(r-c.rigid) > 0.06 {
			t.Errorf("rigid at %v °F: %v, want %v", c.f, r, c.rigid)
		}
		if r := RisePSIPerF(c.f, HeaterVessel(40)); math.Abs(r-c.steel) > 0.06 {
			t.Errorf("thin steel at %v °F: %v, want %v", c.f, r, c.steel)
		}
	}
}

// anyNumber is what a careless caller may pass.
func anyNumber(t *rapid.T, name string) float64 {
	return rapid.OneOf(rapid.Float64(), rapid.Float64Range(-50, 300),
		rapid.SampledFrom([]float64{0, math.MaxFloat64, -math.MaxFloat64, math.SmallestNonzeroFloat64, -14.7})).Draw(t, name)
}

// Every function answers any finite input with a finite number.
func TestHydraulicsAreFinite(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, b, c, d, e := anyNumber(t, "a"), anyNumber(t, "b"), anyNumber(t, "c"), anyNumber(t, "d"), anyNumber(t, "e")
		pipe, _ := PipeOf(rapid.SampledFrom([]PipeMaterial{Copper, Steel, CPVC, PEX, "lead"}).Draw(t, "material"), 0.75)
		if rapid.Bool().Draw(t, "odd pipe") {
			pipe = Pipe{InsideIn: d, WallIn: e}
		}
		one := func(v float64, _ bool) float64 { return v }
		low, high := GaugeSpec{SpanPSI: b}.Interval(a)
		errPSI, errPercent := GaugeError(a, b, c)
		second, third, _ := ScaldSeconds(ScaldTable2, a)
		adult, child, _ := QuickestScald(a)
		saveLow, saveHigh, _ := Saving(a, b)
		w := WaterAt(a, b)
		for name, v := range map[string]float64{
			"Density": Density(a), "SpecificVolume": SpecificVolume(a), "SpecificVolumeFt3": SpecificVolumeFt3(a), "HeadPSIPerFootAt": HeadPSIPerFootAt(a),
			"volume": w.Volume, "sound": w.SoundSpeed, "expansion": w.Expansion, "compressibility": w.Compressibility, "mol": w.MolPerDM3(), "SaturationMPa": SaturationMPa(a),
			"ExpandedGal": ExpandedGal(a, b, c), "SteelSystemExpandedGal": SteelSystemExpandedGal(a, b, c, d, e), "Acceptance": Acceptance(a, b), "PlainAcceptance": PlainAcceptance(a, b),
			"TankGal": one(TankGal(a, b, c)), "HeatingTankGal": one(HeatingTankGal(a, b, c, d)), "AcceptanceGal": AcceptanceGal(a, b, c, d), "FinalPSI": one(FinalPSI(a, b, c, d)),
			"RisePSIPerF": RisePSIPerF(a, Vessel{b, c, d, e, a}, PipeRun{pipe, d}), "HeaterRisePSIPerF": HeaterRisePSIPerF(a, b, c, PipeRun{pipe, d}),
			"WaveSpeed": pipe.WaveSpeed(), "Gal": pipe.Gal(a), "SurgePSI": SurgePSI(pipe, a), "ClosingSurgePSI": ClosingSurgePSI(pipe, a, b, c),
			"RigidColumnPSI": RigidColumnPSI(a, b, c), "RuleOfThumbSurgePSI": RuleOfThumbSurgePSI(a, b, c), "HeadPSI": HeadPSI(a), "OutletPSI": OutletPSI(a, b),
			"FlowRatio": one(FlowRatio(a, b, c)), "saving low": saveLow, "saving high": saveHigh, "Reduction": one(Reduction(a, b, c)),
			"DemandGPM": one(DemandGPM(IPCFlushTanks, a)), "PlusMinus": GaugeSpec{SpanPSI: b}.PlusMinus(a), "low": low, "high": high, "error": errPSI, "error percent": errPercent,
			"second": second, "third": third, "adult": adult, "child": child,
		} {
			if !finite(v) {
				t.Fatalf("%s = %v for %v, %v, %v, %v, %v and %+v", name, v, a, b, c, d, e, pipe)
			}
		}
	})
}

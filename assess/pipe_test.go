package assess

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

func TestWhatIsLeftOnTheTopFloor(t *testing.T) {
	// 84 psi at a bibb 10 ft below the main floor is 79.7 up there.
	if got := OutletPSI(84, 10); math.Abs(got-79.67) > 0.01 {
		t.Errorf("10 ft up: %v", got)
	}
	if got := OutletPSI(5, 40); got != 0 {
		t.Errorf("a pressure that does not reach so far up leaves nothing: %v", got)
	}
}

func TestASlowClosingValveSparesThePipe(t *testing.T) {
	copper, _ := PipeOf(Copper, 0.75)
	at := func(s float64) float64 { return ClosingSurgePSI(copper, 5, 50, s) }
	if at(0) != SurgePSI(copper, 5) || at(0.02) != SurgePSI(copper, 5) {
		t.Error("within the wave's round trip (24 ms over 50 ft of copper) the surge is full")
	}
	if !(at(0.1) < at(0) && at(1) < at(0.1) && at(1) > 0) {
		t.Errorf("0.1 s: %v, 1 s: %v psi", at(0.1), at(1))
	}
	if got, want := at(0.5), 2*RigidColumnPSI(5, 50, 0.5); math.Abs(got-want) > 1e-9 {
		t.Errorf("slow closing %v psi, twice the rigid column is %v", got, want)
	}
}

// Surge of 5 ft/s stopped at once, computed by Joukowsky and Korteweg with
// moduli and dimensions from memory.
func TestSurgeByPipe(t *testing.T) {
	for _, c := range []struct {
		m          PipeMaterial
		size, a, p float64
	}{{Copper, 0.5, 1320, 291}, {Copper, 0.75, 1284, 283}, {Copper, 1, 1257, 277}, {Steel, 0.75, 1422, 314}, {CPVC, 0.75, 538, 119}, {PEX, 0.75, 309, 68}} {
		pipe, ok := PipeOf(c.m, c.size)
		if a, p := pipe.WaveSpeed(), SurgePSI(pipe, 5); !ok || math.Abs(a-c.a) > 1 || math.Abs(p-c.p) > 0.6 {
			t.Errorf("%v in %s: %v m/s, %v psi, want %v and %v", c.size, c.m, a, p, c.a, c.p)
		}
	}
	if _, ok := PipeOf("lead", 0.75); ok {
		t.Error("a pipe that is not known is not guessed")
	}
}

func TestPipeSurgeProperties(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		m := rapid.SampledFrom([]PipeMaterial{Copper, Steel, CPVC, PEX}).Draw(t, "material")
		pipe, ok := PipeOf(m, rapid.SampledFrom([]float64{0.5, 0.75, 1}).Draw(t, "size"))
		if !ok {
			t.Fatalf("no %s pipe", m)
		}
		v := rapid.Float64Range(0, 12).Draw(t, "velocity")
		if math.Abs(SurgePSI(pipe, 2*v)-2*SurgePSI(pipe, v)) > 1e-9*SurgePSI(pipe, 2*v) {
			t.Fatal("twice the velocity, twice the surge")
		}
		s := rapid.Float64Range(0, 3).Draw(t, "seconds")
		if got := ClosingSurgePSI(pipe, v, 60, s); got > SurgePSI(pipe, v) || got < ClosingSurgePSI(pipe, v, 60, s+0.5) {
			t.Fatalf("%v s: %v psi, at once %v", s, got, SurgePSI(pipe, v))
		}
	})
}

func TestSavingIsARange(t *testing.T) {
	low, high, ok := Saving(80, 60)
	if !ok || math.Abs(low-13.4) > 0.05 || math.Abs(high-35.05) > 0.05 {
		t.Errorf("80 to 60 psi saves %v to %v %%", low, high)
	}
	if _, _, ok := Saving(0, 60); ok {
		t.Error("nothing flows at no pressure")
	}
}

func TestReductionByOneValve(t *testing.T) {
	if r, two := Reduction(181, 60, 0); !two || math.Abs(r-3.02) > 0.01 {
		t.Errorf("181 to 60: %v, %v", r, two)
	}
	if _, two := Reduction(180, 60, 0); two {
		t.Error("3:1 is not over 3:1")
	}
	if _, two := Reduction(150, 60, 2.4); !two {
		t.Error("2.5:1 is over a limit of 2.4")
	}
}

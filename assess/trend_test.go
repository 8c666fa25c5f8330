package assess

import (
	"math"
	"math/rand/v2"
	"slices"
	"testing"

	"gonum.org/v1/gonum/stat/combin"
	"pgregory.net/rapid"
)

// The exact probability is that of counting every order, ties and all.
func TestExactMannKendallCountsEveryOrder(t *testing.T) {
	for _, values := range [][]float64{
		{3, 1}, {1, 2, 3}, {1, 2, 3, 4}, {2, 1, 3, 4, 5}, {1, 2, 3, 4, 6, 5}, {1, 3, 2, 5, 4, 7, 6},
		{1, 1, 2, 3}, {5, 5, 5, 6}, {1, 2, 2, 3, 3, 3}, {60, 62, 60, 62, 64, 64, 66}, {7, 7, 7},
	} {
		s, _ := kendall(values)
		far, all := 0, 0
		for g := combin.NewPermutationGenerator(len(values), len(values)); g.Next(); {
			order := make([]float64, len(values))
			for i, j := range g.Permutation(nil) {
				order[i] = values[j]
			}
			if o, _ := kendall(order); math.Abs(o) >= math.Abs(s) {
				far++
			}
			all++
		}
		want := float64(far) / float64(all)
		if got := MannKendall(values).P; math.Abs(got-want) > 1e-12 {
			t.Errorf("%v: p = %v, counting says %v", values, got, want)
		}
	}
}

// Tail probabilities of S without ties: Gilbert, Statistical Methods for
// Environmental Pollution Monitoring, table A18, from memory (one-sided).
func TestExactMannKendallTable(t *testing.T) {
	rise := func(n, swaps int) []float64 { // S = n(n-1)/2 - 2 swaps
		v := index(n)
		for i := range swaps {
			v[2*i], v[2*i+1] = v[2*i+1], v[2*i]
		}
		return v
	}
	for _, c := range []struct {
		n, swaps int
		s, p     float64
	}{
		{4, 0, 6, 0.042}, {4, 1, 4, 0.167}, {5, 0, 10, 0.0083}, {5, 1, 8, 0.042}, {6, 0, 15, 0.0014}, {6, 1, 13, 0.0083},
		{6, 2, 11, 0.028}, {8, 0, 28, 0.000025}, {10, 1, 43, 0.0000028},
	} {
		got := MannKendall(rise(c.n, c.swaps))
		if got.S != c.s || math.Abs(got.OneSided()-c.p) > 0.06*c.p {
			t.Errorf("n %d: S = %v with p %v, want %v with %v", c.n, got.S, got.OneSided(), c.s, c.p)
		}
	}
}

// Sen's interval at 90 % must hold the true slope in at least about 90 % of
// series; in short ones the few ranks make it wider.
func TestSenIntervalHoldsTheSlope(t *testing.T) {
	r := rand.New(rand.NewPCG(3, 4))
	for _, n := range []int{4, 5, 6, 8, 10, 12, 20, 40} {
		hit, all := 0, histories(4000)
		for range all {
			x, y := index(n), make([]float64, n)
			for i := range y {
				y[i] = 1.5*x[i] + 2*r.NormFloat64()
			}
			s, ok := TheilSen(x, y, 0.90)
			if ok && s.Low <= 1.5 && 1.5 <= s.High {
				hit++
			}
		}
		got := 100 * float64(hit) / float64(all)
		t.Logf("n %2d: %.1f %%", n, got)
		if got < 88 || got > 97.5 {
			t.Errorf("n %d: the interval holds the slope in %.1f %%, want about 90", n, got)
		}
	}
}

func TestOneWildValueHardlyMovesTheilSen(t *testing.T) {
	x := index(9)
	y := slices.Clone(x)
	y[4] = 1000
	s, ok := TheilSen(x, y, 0.90)
	if !ok || s.PerX != 1 {
		t.Errorf("slope %v, want 1", s.PerX)
	}
	if _, ok := TheilSen([]float64{2, 2, 2}, []float64{1, 2, 3}, 0.90); ok {
		t.Error("values of one instant have no slope")
	}
}

func TestMannKendallProperties(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		v := rapid.SliceOfN(rapid.Float64Range(0, 200), 0, 30).Draw(t, "values")
		k := MannKendall(v)
		if !finite(k.S, k.Variance, k.Z, k.P) || k.P < 0 || k.P > 1 || k.Variance < -1e-9 {
			t.Fatalf("%+v", k)
		}
		back := slices.Clone(v)
		slices.Reverse(back)
		if b := MannKendall(back); b.S != -k.S || math.Abs(b.P-k.P) > 1e-12 {
			t.Fatalf("backwards %+v, was %+v", b, k)
		}
		whole := SeasonalMannKendall(v, 1)
		if whole.S != k.S || whole.Variance != k.Variance {
			t.Fatalf("one season is no season: %+v, %+v", whole, k)
		}
	})
}

// A tie-heavy series of up to ten values keeps its exact level: p is never too
// small for how often it comes.
func TestExactMannKendallKeepsItsLevel(t *testing.T) {
	r := rand.New(rand.NewPCG(5, 5))
	n, hit := histories(20000), 0
	for range n {
		v := make([]float64, 8)
		for i := range v {
			v[i] = math.Round(r.NormFloat64() * 1.2)
		}
		if MannKendall(v).P <= 0.05 {
			hit++
		}
	}
	if got := 100 * float64(hit) / float64(n); got > 5.6 {
		t.Errorf("p of 5 %% or less comes in %.2f %% of series without trend", got)
	}
}

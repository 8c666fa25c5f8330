package assess

import (
	"fmt"
	"math"
	"math/rand/v2"
	"slices"
	"testing"

	"pgregory.net/rapid"
)

var streetToday = Date{2026, 6, 15}

// street simulates readings of a main by many hands over the given days: its
// level, the scatter of day and night, and a share of wild readings.
func street(r *rand.Rand, n, days int, level, wild float64) []Neighbour {
	var out []Neighbour
	for range n {
		back := r.IntN(days)
		psi := level + 4*r.NormFloat64()
		if r.Float64() < wild {
			psi = 30 + 100*r.Float64()
		}
		out = append(out, Neighbour{streetToday.AddDays(-back), math.Round(psi)})
	}
	return out
}

func TestStreetLevelSaysWhatTheReadingsSay(t *testing.T) {
	at := func(days int, psi ...float64) (out []Neighbour) {
		for i, p := range psi {
			out = append(out, Neighbour{streetToday.AddDays(-days + i), p})
		}
		return out
	}
	for _, c := range []struct {
		name     string
		readings []Neighbour
		ok       bool
		shifted  bool
		psi      float64
	}{
		{"nothing nearby", nil, false, false, 0},
		{"two readings are no street", at(30, 100, 102), false, false, 0},
		{"three readings", at(30, 100, 104, 102), true, false, 102},
		{"readings of two years ago say nothing of today", at(720, 100, 104, 102, 101), false, false, 0},
		{"one wild reading among five", at(40, 100, 104, 102, 160, 101), true, false, 102},
		{"a rise on many houses", append(at(200, 70, 72, 69, 71, 73, 70), at(20, 96, 99, 97, 98)...), true, true, 97.5},
		{"a rise on one house is none of the street", append(at(200, 70, 72, 69, 71, 73, 70), at(3, 110)...), true, false, 70.5},
		{"a rise of a year ago is the street's level by now", append(at(600, 70, 72, 69, 71, 73, 70), at(340, 96, 99, 97, 98, 97)...), true, false, 97.5},
		{"a fall on many houses", append(at(200, 90, 92, 89, 91, 93), at(20, 56, 59, 57)...), true, true, 57.5},
	} {
		l, ok := StreetLevel(c.readings, streetToday)
		if ok != c.ok || l.Shifted != c.shifted || math.Abs(l.PSI-c.psi) > 1.5 {
			t.Errorf("%s: %+v, %v, want about %v, shifted %v", c.name, l, ok, c.psi, c.shifted)
		}
	}
}

func TestStreetLevelOnSimulatedStreets(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 1))
	least := 85.0
	if testing.Short() {
		least = 80 // fewer streets, more chance
	}
	for _, n := range []int{8, 12, 20, 40} {
		var held, wolf, seen, told int
		all := histories(3000)
		for range all {
			if l, ok := StreetLevel(street(r, n, 600, 85, 0.05), streetToday); ok {
				told++
				if l.Low <= 85 && 85 <= l.High {
					held++
				}
				if l.Shifted {
					wolf++
				}
			}
			// A shift of 15 psi, with some readings since.
			now := street(r, 4, 60, 100, 0.05)
			for _, old := range street(r, n, 540, 85, 0.05) {
				now = append(now, Neighbour{old.Date.AddDays(-60), old.PSI})
			}
			if l, ok := StreetLevel(now, streetToday); ok && l.Shifted {
				seen++
			}
		}
		h, w, s := 100*float64(held)/float64(told), 100*float64(wolf)/float64(told), 100*float64(seen)/float64(all)
		t.Logf("%2d readings: level held in %.1f %%, shift told for nothing in %.2f %%, a shift of 15 psi seen in %.1f %%", n, h, w, s)
		if h < least || w > 3 || s < 80 {
			t.Errorf("%d readings: level held in %.1f %% (want %v), shift for nothing %.2f %% (want under 3), shift seen %.1f %% (want 80)", n, h, least, w, s)
		}
	}
}

func TestStreetLevelProperties(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		psi := rapid.OneOf(rapid.Float64Range(20, 160), rapid.Float64(), rapid.SampledFrom([]float64{0, 70, 70, math.NaN(), math.Inf(-1)}))
		var readings []Neighbour
		for range rapid.IntRange(0, 40).Draw(t, "n") {
			readings = append(readings, Neighbour{streetToday.AddDays(-rapid.IntRange(-30, 900).Draw(t, "ago")), psi.Draw(t, "psi")})
		}
		kept := slices.Clone(readings)
		l, ok := StreetLevel(readings, streetToday)
		if !finite(l.PSI, l.Low, l.High, l.FromPSI) || ok && !(l.Low <= l.PSI && l.PSI <= l.High && l.N >= 1 && l.Low >= 0) || !ok && l != (Level{}) {
			t.Fatalf("%+v, %v", l, ok)
		}
		if !slices.EqualFunc(readings, kept, func(a, b Neighbour) bool { return a.Date == b.Date && (a.PSI == b.PSI || a.PSI != a.PSI) }) {
			t.Fatal("the readings were changed")
		}
		if again, ok2 := StreetLevel(rapid.Permutation(readings).Draw(t, "order"), streetToday); again != l || ok2 != ok {
			t.Fatalf("in another order %+v, was %+v", again, l)
		}
	})
}

func BenchmarkStreetLevel(b *testing.B) {
	r := rand.New(rand.NewPCG(1, 1))
	for _, n := range []int{10, 50} {
		readings := street(r, n, 500, 85, 0)
		b.Run(fmt.Sprint(n, " readings"), func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				StreetLevel(readings, streetToday)
			}
		})
	}
}

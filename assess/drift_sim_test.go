package assess

import (
	"math"
	"math/rand/v2"
	"testing"
)

// shape is a way of visiting a house: how many visits and the days between two.
type shape struct {
	name   string
	visits int
	gap    func(*rand.Rand) float64 // days
}

func every(days, jitter float64) func(*rand.Rand) float64 {
	return func(r *rand.Rand) float64 { return math.Max(5, days+jitter*r.NormFloat64()) }
}

func nowAndThen(mean float64) func(*rand.Rand) float64 {
	return func(r *rand.Rand) float64 { return 10 + (mean-10)*r.ExpFloat64() }
}

var (
	sixYearly       = shape{"6 yearly", 6, every(365, 20)}
	elevenQuarterly = shape{"11 quarterly", 11, every(91, 7)}
	allShapes       = []shape{
		{"4 yearly", 4, every(365, 20)}, {"5 yearly", 5, every(365, 20)}, sixYearly,
		{"8 yearly", 8, every(365, 20)}, {"12 yearly", 12, every(365, 20)}, {"20 yearly", 20, every(365, 20)},
		{"6 quarterly", 6, every(91, 7)}, elevenQuarterly, {"20 quarterly", 20, every(91, 7)}, {"30 quarterly", 30, every(91, 7)},
		{"8 now and then", 8, nowAndThen(240)}, {"10 now and then", 10, nowAndThen(200)}, {"15 now and then", 15, nowAndThen(200)},
	}
)

// house is a simulated house: its level at the first visit, its drift a year,
// a jump from one visit on, and the scatter of its readings.
type house struct {
	start, perYear, jump float64
	jumpAt               int
	scatter              float64
	grain                float64 // what readings are rounded to, psi
	summer               float64 // swing with the seasons, psi
}

var firstVisit = Date{2015, 3, 1}

func (h house) visits(s shape, r *rand.Rand) []DatedPSI {
	var out []DatedPSI
	for i, day := 0, 0.0; i < s.visits; i++ {
		at := math.Round(day)
		psi := h.start + h.perYear*at/daysPerYear + h.summer*math.Sin(2*math.Pi*at/daysPerYear) + h.scatter*r.NormFloat64()
		if h.jump != 0 && i >= h.jumpAt {
			psi += h.jump
		}
		if h.grain > 0 {
			psi = math.Round(psi/h.grain) * h.grain
		}
		out = append(out, DatedPSI{firstVisit.AddDays(int(at)), psi})
		day += s.gap(r)
	}
	return out
}

// leaves is the day on which the house's true level reaches the top of the band.
func (h house) leaves() Date {
	return firstVisit.AddDays(int(math.Round((usualBand[1] - h.start) / h.perYear * daysPerYear)))
}

var usualBand = [2]float64{BandLowPSI, BandHighPSI}

// histories is how many histories a figure rests on.
func histories(n int) int {
	if testing.Short() {
		return n / 8
	}
	return n
}

// share is the percentage of simulated histories that come out in the state.
func share(n int, s shape, seed uint64, make func(*rand.Rand) house, state ...DriftState) float64 {
	r := rand.New(rand.NewPCG(seed, uint64(s.visits)))
	hit := 0
	for range n {
		got := DriftOf(make(r).visits(s, r), usualBand, Date{}).State
		for _, want := range state {
			if got == want {
				hit++
			}
		}
	}
	return 100 * float64(hit) / float64(n)
}

func TestASteadyHouseRarelyCriesWolf(t *testing.T) {
	n := histories(4000)
	most := 3.0
	if testing.Short() {
		most = 4 // fewer histories, more chance
	}
	for _, s := range allShapes {
		for _, c := range []struct {
			name string
			h    house
		}{
			{"read to 0.1 psi", house{start: 60, scatter: 2, grain: 0.1}},
			{"read to whole psi", house{start: 60, scatter: 2, grain: 1}},
			{"read to 2 psi", house{start: 60, scatter: 2, grain: 2}},
			{"half the scatter", house{start: 60, scatter: 1, grain: 1}},
			{"swings with the seasons", house{start: 60, scatter: 2, grain: 1, summer: 2}},
		} {
			got := share(n, s, 1, func(*rand.Rand) house { return c.h }, Rising, Falling, Jumped)
			t.Logf("%-15s %-24s called drifting or jumped: %.2f %%", s.name, c.name, got)
			if got >= most {
				t.Errorf("%s, %s: %.2f %% of steady houses are called drifting or jumped, want under %v %%", s.name, c.name, got, most)
			}
		}
	}
}

func TestADriftOf4PSIAYearIsFound(t *testing.T) {
	n := histories(4000)
	for _, s := range []shape{sixYearly, {"8 yearly", 8, every(365, 20)}, {"12 yearly", 12, every(365, 20)}, elevenQuarterly, {"20 quarterly", 20, every(91, 7)}, {"30 quarterly", 30, every(91, 7)}, {"10 now and then", 10, nowAndThen(200)}} {
		up := share(n, s, 2, func(*rand.Rand) house { return house{start: 55, perYear: 4, scatter: 2, grain: 1} }, Rising)
		down := share(n, s, 3, func(*rand.Rand) house { return house{start: 75, perYear: -4, scatter: 2, grain: 0.1} }, Falling)
		t.Logf("%-15s rising found: %.1f %%, falling found: %.1f %%", s.name, up, down)
		if up < 90 || down < 90 {
			t.Errorf("%s: a drift of 4 psi a year is found in %.1f and %.1f %%, want 90", s.name, up, down)
		}
	}
}

func TestAJumpOf15PSIIsNamed(t *testing.T) {
	n := histories(4000)
	for _, s := range allShapes {
		at := func(r *rand.Rand) int { return 1 + r.IntN(s.visits-1) }
		up := share(n, s, 4, func(r *rand.Rand) house {
			return house{start: 55, jump: 15, jumpAt: at(r), scatter: 2, grain: 1}
		}, Jumped)
		down := share(n, s, 5, func(r *rand.Rand) house {
			return house{start: 75, jump: -15, jumpAt: at(r), scatter: 2, grain: 1}
		}, Jumped)
		t.Logf("%-15s jump up named: %.1f %%, down: %.1f %%", s.name, up, down)
		if up < 80 || down < 80 {
			t.Errorf("%s: a jump of 15 psi is named in %.1f and %.1f %%, want 80", s.name, up, down)
		}
	}
}

func TestTheCrossingIntervalCoversTheTruth(t *testing.T) {
	r := rand.New(rand.NewPCG(6, 7))
	told, covered := map[string]int{}, map[string]int{}
	note := func(key string, in bool) {
		told[key]++
		if in {
			covered[key]++
		}
	}
	for range histories(40000) {
		s := allShapes[r.IntN(len(allShapes))]
		h := house{start: 50 + 15*r.Float64(), perYear: 1 + 5*r.Float64(), scatter: 2, grain: 0.1}
		c := DriftOf(h.visits(s, r), usualBand, Date{}).Crosses
		if c == nil {
			continue
		}
		truth := h.leaves()
		in := !truth.Before(c.Early) && !c.Late.Before(truth)
		note("all", in)
		note(s.name, in)
	}
	for range histories(8000) {
		for _, s := range []shape{sixYearly, elevenQuarterly} {
			h := house{start: 55, perYear: 4, scatter: 2, grain: 0.1}
			if c := DriftOf(h.visits(s, r), usualBand, Date{}).Crosses; c != nil {
				note("4 psi a year, "+s.name, !h.leaves().Before(c.Early) && !c.Late.Before(h.leaves()))
			}
		}
	}
	for key, n := range told {
		got := 100 * float64(covered[key]) / float64(n)
		t.Logf("%-27s %.1f %% of %d", key, got, n)
		switch key {
		case "all", "4 psi a year, 6 yearly", "4 psi a year, 11 quarterly":
			if got < 85 || got > 95 {
				t.Errorf("%s: the 90 %% interval of the crossing covers the truth in %.1f %%, want 85 to 95", key, got)
			}
		}
	}
}

// A house is judged anew at each visit, so that a level has many chances to cry
// wolf over the years.
func TestASteadyHouseJudgedAtEachVisit(t *testing.T) {
	n := histories(2000)
	r := rand.New(rand.NewPCG(8, 9))
	s := shape{"20 quarterly", 20, every(91, 7)}
	wolf := 0
	for range n {
		v := house{start: 60, scatter: 2, grain: 1}.visits(s, r)
		for k := driftLeastVisits; k <= len(v); k++ {
			if st := DriftOf(v[:k], usualBand, Date{}).State; st != Steady && st != TooFew {
				wolf++
				break
			}
		}
	}
	got := 100 * float64(wolf) / float64(n)
	t.Logf("called drifting or jumped at any of the visits 4 to 20: %.1f %%", got)
	if got > 8 {
		t.Errorf("%.1f %% of steady houses are called drifting or jumped at some visit in five years, want at most 8", got)
	}
}

func BenchmarkDriftOf(b *testing.B) {
	r := rand.New(rand.NewPCG(1, 2))
	s := shape{"20 quarterly", 20, every(91, 7)}
	for _, c := range []struct {
		name string
		h    house
	}{
		{"steady", house{start: 60, scatter: 2, grain: 1}},
		{"rising", house{start: 60, perYear: 3, scatter: 2, grain: 1}},
		{"jumped", house{start: 60, jump: 15, jumpAt: 12, scatter: 2, grain: 1}},
	} {
		v := c.h.visits(s, r)
		b.Run(c.name, func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				DriftOf(v, usualBand, Date{})
			}
		})
	}
}

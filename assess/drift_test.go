package assess

import (
	"math"
	"math/rand/v2"
	"slices"
	"testing"

	"gonum.org/v1/gonum/stat/distuv"
	"pgregory.net/rapid"
)

// seriesOf spaces pressures evenly, days apart.
func seriesOf(days int, psi ...float64) []DatedPSI {
	var out []DatedPSI
	for i, p := range psi {
		out = append(out, DatedPSI{Date{2020, 1, 10}.AddDays(i * days), p})
	}
	return out
}

func TestDriftSaysWhatAPlumberWouldSay(t *testing.T) {
	for _, c := range []struct {
		name   string
		series []DatedPSI
		want   DriftState
	}{
		{"no visits", nil, TooFew},
		{"three visits are too few, whatever they show", seriesOf(365, 50, 65, 80), TooFew},
		{"four visits within 59 days are too few", []DatedPSI{{Date{2020, 1, 1}, 50}, {Date{2020, 1, 20}, 60}, {Date{2020, 2, 10}, 70}, {Date{2020, 2, 29}, 80}}, TooFew},
		{"four visits over 60 days are enough", []DatedPSI{{Date{2020, 1, 1}, 60}, {Date{2020, 1, 20}, 61}, {Date{2020, 2, 10}, 60}, {Date{2020, 3, 1}, 59}}, Steady},
		{"four readings of two days are two visits", []DatedPSI{{Date{2020, 1, 1}, 50}, {Date{2020, 1, 1}, 50}, {Date{2021, 1, 1}, 70}, {Date{2021, 1, 1}, 70}}, TooFew},
		{"the same reading each time", seriesOf(365, 60, 60, 60, 60, 60), Steady},
		{"a gauge's scatter", seriesOf(365, 60, 63, 58, 61, 59, 62), Steady},
		{"creeping up 5 psi a year", seriesOf(365, 55, 61, 64, 70, 75, 81), Rising},
		{"sagging 5 psi a year", seriesOf(365, 75, 71, 64, 61, 55, 49), Falling},
		{"a fast rise within four visits", seriesOf(180, 50, 58, 66, 75), Rising},
		{"a jump in the middle", seriesOf(180, 60, 62, 59, 76, 74, 77), Jumped},
		{"a jump at the last visit", seriesOf(180, 60, 62, 59, 61, 60, 78), Jumped},
		{"a fall of one step", seriesOf(180, 74, 76, 75, 58, 60, 59), Jumped},
		{"one wild value among steady ones", seriesOf(180, 60, 61, 59, 85, 60, 61, 59, 60), Steady},
		{"a drift with one wild value", seriesOf(365, 50, 55, 60, 40, 70, 75, 80, 85), Rising},
		{"a drift too slow to matter", seriesOf(365, 60, 60.3, 60.6, 60.9, 61.2, 61.5, 61.8, 62.1, 62.4, 62.7, 63, 63.3), Steady},
	} {
		got := DriftOf(c.series, usualBand, Date{2026, 6, 15})
		if got.State != c.want {
			t.Errorf("%s: %s, want %s", c.name, got.State, c.want)
		}
		if (got.State == TooFew) != (got.PSIPerYear == nil) {
			t.Errorf("%s: a slope is told exactly when there are visits enough, got %+v", c.name, got)
		}
	}
}

func TestCrossingIsToldOfATrendThatLeavesTheBand(t *testing.T) {
	today := Date{2025, 3, 1}
	up := DriftOf(seriesOf(365, 50, 54, 58, 62, 66, 70), usualBand, today)
	if up.Crosses == nil || up.Crosses.Date.Sub(Date{2027, 7, 8}) > 5 || up.Crosses.Date.Sub(Date{2027, 7, 8}) < -5 {
		t.Errorf("4 psi a year from 50 in January 2020 reaches 80 in July 2027, got %+v", up.Crosses)
	}
	if c := up.Crosses; c != nil && !(c.Early.Before(c.Date) && c.Date.Before(c.Late)) {
		t.Errorf("the interval holds the day: %+v", c)
	}
	down := DriftOf(seriesOf(365, 70, 66, 62, 58, 54, 50), usualBand, today)
	if down.Crosses == nil || down.Crosses.Date.Year != 2027 {
		t.Errorf("a falling house leaves the band at its foot: %+v", down.Crosses)
	}
	if c := DriftOf(seriesOf(365, 82, 87, 91, 96, 101, 105), usualBand, today).Crosses; c != nil {
		t.Errorf("a house that began above the band has nothing to leave: %+v", c)
	}
	if c := DriftOf(seriesOf(365, 41, 41.8, 42.6, 43.4, 44.2, 45, 45.8, 46.6), usualBand, today).Crosses; c != nil {
		t.Errorf("a day 40 years ahead means nothing: %+v", c)
	}
	if c := DriftOf(seriesOf(365, 60, 62, 59, 61, 60, 61), usualBand, today).Crosses; c != nil {
		t.Errorf("a steady house leaves nothing: %+v", c)
	}
	// A narrower band of the shop's own is left earlier.
	own := DriftOf(seriesOf(365, 50, 54, 58, 62, 66, 70), [2]float64{45, 75}, today)
	if own.Crosses == nil || !own.Crosses.Date.Before(up.Crosses.Date) {
		t.Errorf("a band up to 75 is left before one up to 80: %+v", own.Crosses)
	}
}

func TestJumpTellsFromWhatToWhat(t *testing.T) {
	s := seriesOf(180, 60, 62, 59, 76, 74, 77)
	j, ok := JumpOf(s, usualBand, Date{})
	if !ok || j.From != 60 || j.To != 76 || j.After != s[2].Date || j.By != s[3].Date {
		t.Errorf("JumpOf = %+v, %v", j, ok)
	}
	if _, ok := JumpOf(seriesOf(180, 60, 61, 60, 62), usualBand, Date{}); ok {
		t.Error("a steady house has no jump")
	}
	d := DriftOf(s, usualBand, Date{})
	if *d.High-*d.Low > 40 || *d.PSIPerYear > 5 {
		t.Errorf("the slope beside a jump is that of the visits on its sides, not the jump's: %v (%v to %v)", *d.PSIPerYear, *d.Low, *d.High)
	}
}

func TestALoggersRecordIsJudgedByItsNewestVisits(t *testing.T) {
	h := house{start: 60, scatter: 2, grain: 1}
	s := h.visits(shape{"daily", 4000, every(6, 0)}, rand.New(rand.NewPCG(1, 1)))
	if d := DriftOf(s, usualBand, Date{}); d.State != Steady {
		t.Errorf("4000 readings of a steady house: %+v", d.State)
	}
}

// anySeries is a series as careless people and a broken importer may give it.
func anySeries(t *rapid.T) []DatedPSI {
	var out []DatedPSI
	day := rapid.IntRange(-4000, 4000)
	psi := rapid.OneOf(rapid.Float64Range(0, 200), rapid.Float64(), rapid.SampledFrom([]float64{0, 40, 60, 60, 80, 150, math.NaN(), math.Inf(1), math.MaxFloat64}))
	for range rapid.IntRange(0, 40).Draw(t, "n") {
		d := DatedPSI{Date{2020, 6, 1}.AddDays(day.Draw(t, "day")), psi.Draw(t, "psi")}
		if rapid.IntRange(0, 20).Draw(t, "undated") == 0 {
			d.Date = Date{}
		}
		out = append(out, d)
	}
	return out
}

// checkDrift holds whatever the input.
func checkDrift(t interface{ Fatalf(string, ...any) }, d Drift) {
	for _, p := range []*float64{d.PSIPerYear, d.Low, d.High, d.P} {
		if (p == nil) != (d.State == TooFew) {
			t.Fatalf("numbers are told exactly when there are visits enough: %+v", d)
		}
		if p != nil && !finite(*p) {
			t.Fatalf("not a number: %+v", d)
		}
	}
	if d.P != nil && !(*d.P >= 0 && *d.P <= 1) {
		t.Fatalf("p = %v", *d.P)
	}
	if d.Low != nil && !(*d.Low <= *d.PSIPerYear && *d.PSIPerYear <= *d.High) {
		t.Fatalf("%v does not lie in %v to %v", *d.PSIPerYear, *d.Low, *d.High)
	}
	if c := d.Crosses; c != nil && (c.Date.Before(c.Early) || c.Late.Before(c.Date)) {
		t.Fatalf("crossing %+v", *c)
	}
	if (d.State == Rising && *d.PSIPerYear <= 0) || (d.State == Falling && *d.PSIPerYear >= 0) {
		t.Fatalf("%s at %v psi a year", d.State, *d.PSIPerYear)
	}
}

func TestDriftProperties(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := anySeries(t)
		kept := slices.Clone(s)
		d := DriftOf(s, usualBand, Date{2026, 1, 1})
		checkDrift(t, d)
		if !slices.EqualFunc(s, kept, func(a, b DatedPSI) bool { return a.Date == b.Date && (a.PSI == b.PSI || a.PSI != a.PSI) }) {
			t.Fatalf("the series was changed")
		}
		// The order in which visits are given does not matter.
		shuffled := rapid.Permutation(s).Draw(t, "shuffled")
		if got := DriftOf(shuffled, usualBand, Date{2026, 1, 1}); got.State != d.State || d.PSIPerYear != nil && *got.PSIPerYear != *d.PSIPerYear {
			t.Fatalf("given in another order: %+v, was %+v", got, d)
		}
	})
}

func TestDriftIsTheSameUpsideDown(t *testing.T) {
	mirror := map[DriftState]DriftState{Rising: Falling, Falling: Rising, Steady: Steady, Jumped: Jumped, TooFew: TooFew}
	rapid.Check(t, func(t *rapid.T) {
		h := house{start: 60, perYear: rapid.Float64Range(-2.5, 2.5).Draw(t, "per year"), scatter: 2, grain: 1,
			jump: rapid.SampledFrom([]float64{0, 0, 15, -15}).Draw(t, "jump"), jumpAt: 4}
		s := h.visits(rapid.SampledFrom(allShapes).Draw(t, "shape"), rand.New(rand.NewPCG(rapid.Uint64().Draw(t, "seed"), 1)))
		down := slices.Clone(s)
		for i := range down {
			down[i].PSI = 120 - down[i].PSI
		}
		a, b := DriftOf(s, usualBand, Date{}), DriftOf(down, usualBand, Date{})
		if mirror[a.State] != b.State || math.Abs(*a.PSIPerYear+*b.PSIPerYear) > 1e-9 {
			t.Fatalf("%v at %v, upside down %v at %v", a.State, *a.PSIPerYear, b.State, *b.PSIPerYear)
		}
	})
}

func FuzzDriftOf(f *testing.F) {
	f.Add([]byte{60, 10, 61, 90, 62, 90, 80, 90, 81, 90, 82, 90})
	f.Fuzz(func(t *testing.T, raw []byte) {
		var s []DatedPSI
		day := Date{2018, 1, 1}
		for i := 0; i+1 < len(raw) && i < 400; i += 2 {
			day = day.AddDays(int(raw[i+1]))
			s = append(s, DatedPSI{day, float64(raw[i])})
		}
		checkDrift(t, DriftOf(s, usualBand, Date{2026, 1, 1}))
	})
}

func TestStudentQuantileAgreesWithGonum(t *testing.T) {
	for df := 5.0; df < 200; df++ {
		want := distuv.StudentsT{Sigma: 1, Nu: df}.Quantile(0.95)
		if got := studentQuantile95(df); math.Abs(got-want) > 1e-3 {
			t.Errorf("df %v: %v, want %v", df, got, want)
		}
	}
}

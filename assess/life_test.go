package assess

import (
	"errors"
	"math"
	"math/rand/v2"
	"testing"

	"gonum.org/v1/gonum/optimize"
	"gonum.org/v1/gonum/stat/distuv"
	"pgregory.net/rapid"
)

// shopLives is a simulated shop: valves put in over the years, some failed, the
// others still serving on the day of the count.
func shopLives(r *rand.Rand, n int, scale, shape, years float64) []Life {
	w := distuv.Weibull{K: shape, Lambda: scale, Src: r}
	var out []Life
	for range n {
		life, since := w.Rand(), years*r.Float64()
		if life <= since {
			out = append(out, Life{life, true})
		} else {
			out = append(out, Life{since, false})
		}
	}
	return out
}

// The lives of the e-Handbook's example (8.4.1.3), in hours.
func handbookLives() []Life {
	var out []Life
	for _, h := range []float64{54, 187, 216, 240, 244, 335, 361, 373, 375, 386} {
		out = append(out, Life{h, true})
	}
	for range 10 {
		out = append(out, Life{500, false})
	}
	return out
}

func TestLifeByTheConfiguredYears(t *testing.T) {
	for _, c := range []struct {
		age  float64
		want ServiceLife
	}{{0, LifeWithin}, {9.9, LifeWithin}, {10, LifeNearEnd}, {14, LifeNearEnd}, {15, LifePast}, {40, LifePast}} {
		got := LifeOf(&c.age, [2]float64{10, 15}, nil)
		if got.Life != c.want || got.PFailNextYear != nil || *got.AgeYears != c.age {
			t.Errorf("age %v: %+v, want %s and no probability", c.age, got, c.want)
		}
		if zero := LifeOf(&c.age, [2]float64{}, nil); zero.Life != c.want {
			t.Errorf("age %v without a configuration: %s, want %s", c.age, zero.Life, c.want)
		}
	}
	if got := LifeOf(nil, [2]float64{10, 15}, handbookLives()); got.Life != LifeUnknown || got.AgeYears != nil || got.PFailNextYear != nil {
		t.Errorf("no age: %+v", got)
	}
}

func TestLifeByTheShopsOwnRecord(t *testing.T) {
	lives := shopLives(rand.New(rand.NewPCG(1, 1)), 400, 14, 3, 25)
	age := 12.0
	got := LifeOf(&age, [2]float64{10, 15}, lives)
	if got.PFailNextYear == nil {
		t.Fatal("a shop with hundreds of failures has a probability")
	}
	truth := distuv.Weibull{K: 3, Lambda: 14}
	want := 1 - truth.Survival(13)/truth.Survival(12)
	if math.Abs(*got.PFailNextYear-want) > 0.04 {
		t.Errorf("p_fail_next_year %v, the simulated truth is %v", *got.PFailNextYear, want)
	}
	// The probability is conditional on having served until now: an old valve is
	// likelier to fail next year than a new one.
	young := 2.0
	if p := LifeOf(&young, [2]float64{10, 15}, lives).PFailNextYear; *p >= *got.PFailNextYear {
		t.Errorf("at 2 years %v, at 12 %v", *p, *got.PFailNextYear)
	}
	// A shop whose valves die at five years calls five years old.
	short := shopLives(rand.New(rand.NewPCG(2, 2)), 200, 5, 3, 15)
	age = 5
	if got := LifeOf(&age, [2]float64{10, 15}, short); got.Life != LifePast {
		t.Errorf("age 5 in a shop whose valves die at 5: %s", got.Life)
	}
}

func TestNineFailuresMakeNoCurve(t *testing.T) {
	lives := handbookLives()
	if _, err := FitLives(lives); err != nil {
		t.Errorf("ten failures: %v", err)
	}
	if _, err := FitLives(lives[1:]); !errors.Is(err, errFewFailures) {
		t.Errorf("nine failures: %v", err)
	}
	var same []Life
	for range 12 {
		same = append(same, Life{10, true})
	}
	if _, err := FitLives(same); !errors.Is(err, errSameAge) {
		t.Errorf("all of one age: %v", err)
	}
	age := 11.0
	if got := LifeOf(&age, [2]float64{10, 15}, same); got.Life != LifeNearEnd || got.PFailNextYear != nil {
		t.Errorf("without a curve the configured years count: %+v", got)
	}
}

// The fit agrees with gonum's minimiser, which climbs the same likelihood by
// another way and in both parameters.
func TestTheFitIsTheMaximum(t *testing.T) {
	r := rand.New(rand.NewPCG(3, 3))
	for i := range 40 {
		lives := shopLives(r, 60+10*i, 6+10*r.Float64(), 0.7+4*r.Float64(), 25)
		c, err := FitLives(lives)
		if err != nil {
			continue
		}
		minus := func(x []float64) float64 {
			scale, shape := math.Exp(x[0]), math.Exp(x[1])
			ll := 0.0
			for _, l := range lives {
				h := math.Pow(l.Years/scale, shape)
				ll -= h
				if l.Ended {
					ll += math.Log(shape/l.Years) + shape*math.Log(l.Years/scale)
				}
			}
			return -ll
		}
		best, err := optimize.Minimize(optimize.Problem{Func: minus}, []float64{math.Log(10), 0.5}, nil, &optimize.NelderMead{})
		if err != nil {
			t.Fatal(err)
		}
		if -best.F > c.LogLikelihood+1e-6 || math.Abs(math.Exp(best.X[0])/c.Scale-1) > 1e-3 || math.Abs(math.Exp(best.X[1])/c.Shape-1) > 1e-3 {
			t.Errorf("fit %v %v (%v), the minimiser finds %v %v (%v)", c.Scale, c.Shape, c.LogLikelihood, math.Exp(best.X[0]), math.Exp(best.X[1]), -best.F)
		}
		// The observed information is the curvature of that likelihood.
		const e = 1e-3
		x := [2]float64{math.Log(c.Scale), math.Log(c.Shape)}
		at := func(a, b float64) float64 { return minus([]float64{x[0] + a, x[1] + b}) }
		haa := (at(e, 0) - 2*at(0, 0) + at(-e, 0)) / (e * e)
		hbb := (at(0, e) - 2*at(0, 0) + at(0, -e)) / (e * e)
		hab := (at(e, e) - at(e, -e) - at(-e, e) + at(-e, -e)) / (4 * e * e)
		det := haa*hbb - hab*hab
		for _, v := range []struct{ got, want float64 }{{c.varScale, hbb / det}, {c.varShape, haa / det}, {c.cov, -hab / det}} {
			if math.Abs(v.got-v.want) > 1e-3*math.Abs(v.want)+1e-6 {
				t.Errorf("variance %v, by differences %v", v.got, v.want)
			}
		}
	}
}

// The 90 % intervals must hold the truth in about 90 % of shops, also in a shop
// that has only just enough failures.
func TestLifeIntervalsHoldTheTruth(t *testing.T) {
	r := rand.New(rand.NewPCG(4, 4))
	truth := distuv.Weibull{K: 3, Lambda: 14}
	for _, n := range []int{35, 100, 400} {
		fits, hit, failures := 0, map[string]int{}, 0
		for range histories(1500) {
			c, err := FitLives(shopLives(r, n, 14, 3, 22))
			if err != nil {
				continue
			}
			fits++
			failures += c.Failures
			b10, _ := c.YearsTo(0.1)
			half, _ := c.YearsTo(0.5)
			for name, v := range map[string]struct {
				b    Between
				want float64
			}{
				"B10":                  {b10, truth.Quantile(0.1)},
				"median":               {half, truth.Quantile(0.5)},
				"survival at 12":       {c.Survival(12), truth.Survival(12)},
				"fails in year 12..13": {c.FailsWithin(12, 1), 1 - truth.Survival(13)/truth.Survival(12)},
			} {
				if v.b.Low <= v.want && v.want <= v.b.High {
					hit[name]++
				}
			}
		}
		for name, k := range hit {
			got := 100 * float64(k) / float64(fits)
			t.Logf("%3d valves, %4.1f failures: %-21s held in %.1f %%", n, float64(failures)/float64(fits), name, got)
			if got < 83 || got > 96 {
				t.Errorf("%d valves: the 90 %% interval of %s holds the truth in %.1f %%", n, name, got)
			}
		}
	}
}

func TestLifeProperties(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		years := rapid.OneOf(rapid.Float64Range(0.1, 40), rapid.Float64Range(0.1, 40), rapid.Float64())
		lives := rapid.SliceOfN(rapid.Custom(func(t *rapid.T) Life {
			return Life{years.Draw(t, "years"), rapid.Bool().Draw(t, "ended")}
		}), 0, 60).Draw(t, "lives")
		age := rapid.OneOf(rapid.Float64Range(0, 60), rapid.Float64()).Draw(t, "age")
		v := LifeOf(&age, [2]float64{10, 15}, lives)
		if v.PFailNextYear != nil && !(*v.PFailNextYear >= 0 && *v.PFailNextYear <= 1) {
			t.Fatalf("p = %v", *v.PFailNextYear)
		}
		if v.AgeYears != nil && !finite(*v.AgeYears) {
			t.Fatalf("age %v", *v.AgeYears)
		}
		c, err := FitLives(lives)
		if err != nil {
			return
		}
		last := 1.0
		for _, at := range []float64{0, 0.5, 1, 3, 10, 30, 100, 1e4, 1e300} {
			s := c.Survival(at)
			if !finite(s.Value, s.Low, s.High) || s.Low > s.Value || s.Value > s.High || s.Value > last || s.Low < 0 || s.High > 1 {
				t.Fatalf("survival at %v: %+v after %v", at, s, last)
			}
			last = s.Value
			p := c.FailsWithin(at, 1)
			if !finite(p.Value, p.Low, p.High) || p.Low > p.Value || p.Value > p.High || p.Low < 0 || p.High > 1 {
				t.Fatalf("fails within a year from %v: %+v", at, p)
			}
		}
		if !finite(c.Mean(), c.StdDev(), c.AIC()) {
			t.Fatalf("mean %v, standard deviation %v", c.Mean(), c.StdDev())
		}
	})
}

func BenchmarkFitLives(b *testing.B) {
	lives := shopLives(rand.New(rand.NewPCG(1, 1)), 100, 14, 3, 25)
	b.ReportAllocs()
	for b.Loop() {
		if _, err := FitLives(lives); err != nil {
			b.Fatal(err)
		}
	}
}

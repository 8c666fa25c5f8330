package assess

import (
	"fmt"
	"math"
	"math/rand/v2"
	"testing"
)

// tally is what a town's visits came to.
type tally struct {
	visits, enough, first, firstThree int
	by                                map[Cause][2]int // visits with enough evidence, first
	bins                              [10][3]float64   // all causes' probabilities: n, sum of p, hits
	topBins                           [10][3]float64
	sound, condemned                  int
	unfair, condemnedUnfair           int
	confusion                         map[[2]Cause]int
	as                                map[Cause]int
}

var condemning = map[Cause]bool{CausePassing: true, CauseSeatCreep: true, CauseRestricted: true, CauseElastomer: true}

// condemningFinding are the findings that ask for the valve to be replaced.
var condemningFinding = map[string]bool{"not_regulating": true}

func (t *tally) take(sc scene, a Assessment) {
	top := a.Causes[0].Cause
	t.visits++
	if sc.enough {
		n := t.by[sc.truth]
		n[0]++
		t.enough++
		if top == sc.truth {
			n[1]++
			t.first++
		} else {
			t.confusion[[2]Cause{sc.truth, top}]++
		}
		t.by[sc.truth] = n
		for _, l := range a.Causes[:3] {
			if l.Cause == sc.truth {
				t.firstThree++
			}
		}
	}
	for i, l := range a.Causes {
		hit := 0.0
		if l.Cause == sc.truth {
			hit = 1
		}
		k := min(int(l.P*10), 9)
		t.bins[k] = [3]float64{t.bins[k][0] + 1, t.bins[k][1] + l.P, t.bins[k][2] + hit}
		if i == 0 {
			t.topBins[k] = [3]float64{t.topBins[k][0] + 1, t.topBins[k][1] + l.P, t.topBins[k][2] + hit}
		}
	}
	if sc.truth == CauseSound {
		t.sound++
		bad := condemning[top]
		for _, f := range a.Findings {
			bad = bad || condemningFinding[f.Code]
		}
		fair := false
		for _, j := range a.Readings {
			fair = fair || j.Side == HouseSide && j.Fair == FairYes
		}
		if bad {
			t.condemned++
			t.as[top]++
		}
		if !fair && len(a.Readings) > 0 {
			t.unfair++
			if bad {
				t.condemnedUnfair++
			}
		}
	}
}

func ece(bins [10][3]float64) float64 {
	total, sum := 0.0, 0.0
	for _, b := range bins {
		total += b[0]
		sum += math.Abs(b[1] - b[2])
	}
	return sum / math.Max(total, 1)
}

// The figures that the engine must reach over all towns together; each town
// alone may lie a little outside.
func TestCausesOfSimulatedHouses(t *testing.T) {
	n := 8000
	if testing.Short() {
		n = 1200
	}
	all := newTally()
	for k := range worlds {
		w := &worlds[k]
		t.Run(w.name, func(t *testing.T) {
			r := rand.New(rand.NewPCG(7, uint64(k)))
			ty := newTally()
			for range n {
				sc := visitHouse(w, r)
				a := Assess(sc.in)
				ty.take(sc, a)
				all.take(sc, a)
			}
			ty.report(t, 0.02)
		})
	}
	all.report(t, 0)
}

// A sound valve is never condemned on readings that are unfair, whatever else
// is told.
func TestUnfairReadingsCondemnNoSoundValve(t *testing.T) {
	n := 10000
	if testing.Short() {
		n = 2000
	}
	r := rand.New(rand.NewPCG(11, 3))
	for range n {
		w := worlds[r.IntN(len(worlds))]
		w.rates = map[Cause]float64{CauseSound: 1}
		w.falseAlarm, w.work = 0.15, 0
		in := visitHouse(&w, r).in
		in.Visits = in.Visits[len(in.Visits)-1:] // the site remembers nothing of its front bibb
		v := &in.Visits[0]
		kept := v.Readings[:0]
		for _, x := range v.Readings {
			if x.Point == Street {
				kept = append(kept, x)
				continue
			}
			if x.Flow != Flowing && !x.Peak && x.Heater != Firing && x.Point != FrontBibb {
				x.Point, x.Heater = []TestPoint{FrontBibb, RearBibb, "", HeaterDrain}[r.IntN(4)], Firing
				if x.Point == HeaterDrain {
					x.Heater = ""
				}
			}
			kept = append(kept, x)
		}
		if v.Readings = kept; len(kept) == 0 {
			continue
		}
		a := Assess(in)
		for _, j := range a.Readings {
			if j.Side == HouseSide && j.Fair == FairYes {
				t.Fatalf("%+v is taken as fair", j)
			}
		}
		if condemning[a.Causes[0].Cause] {
			t.Errorf("%s at %.2f on %+v", a.Causes[0].Cause, a.Causes[0].P, *v)
		}
		for _, f := range a.Findings {
			if condemningFinding[f.Code] {
				t.Errorf("%s on %+v", f.Code, *v)
			}
		}
	}
}

func newTally() *tally {
	return &tally{by: map[Cause][2]int{}, confusion: map[[2]Cause]int{}, as: map[Cause]int{}}
}

// report prints the figures and fails below the required ones, less slack.
func (ty *tally) report(t *testing.T, slack float64) {
	t.Helper()
	first := float64(ty.first) / float64(ty.enough)
	three := float64(ty.firstThree) / float64(ty.enough)
	condemned := float64(ty.condemned) / float64(max(ty.sound, 1))
	line := ""
	for _, c := range causeNames {
		n := ty.by[c]
		line += fmt.Sprintf(" %s %.2f (%d)", c, float64(n[1])/math.Max(float64(n[0]), 1), n[0])
	}
	t.Logf("first %.3f, in three %.3f of %d of %d visits; ECE %.3f (all causes), %.3f (first cause); sound condemned %.4f of %d, on unfair readings %d of %d",
		first, three, ty.enough, ty.visits, ece(ty.bins), ece(ty.topBins), condemned, ty.sound, ty.condemnedUnfair, ty.unfair)
	t.Log(line)
	if first < 0.85-slack {
		t.Errorf("true cause first in %.3f of visits with enough evidence, want 0.85", first)
	}
	if three < 0.97-slack {
		t.Errorf("true cause in the first three in %.3f, want 0.97", three)
	}
	for _, c := range causeNames {
		if n := ty.by[c]; n[0] >= 60 && float64(n[1]) < 0.6*float64(n[0]) {
			t.Errorf("%s first in %d of %d, want 60 %%", c, n[1], n[0])
		}
	}
	if e := ece(ty.topBins); e > 0.05+slack {
		t.Errorf("expected calibration error %.3f, want 0.05 at most", e)
	}
	if condemned >= 0.02+slack {
		t.Errorf("sound valves condemned on %.4f of visits, want under 0.02", condemned)
	}
	if ty.condemnedUnfair > 0 {
		t.Errorf("%d sound valves condemned on unfair readings", ty.condemnedUnfair)
	}
	if testing.Verbose() {
		t.Log("sound condemned as", ty.as)
		for k, n := range ty.confusion {
			if n > ty.visits/400 {
				t.Logf("  %s taken for %s: %d", k[0], k[1], n)
			}
		}
		for i, b := range ty.topBins {
			if b[0] > 0 {
				t.Logf("  first cause at %.1f: said %.2f, was %.2f (%.0f)", float64(i)/10, b[1]/b[0], b[2]/b[0], b[0])
			}
		}
	}
}

// The same figures over many towns of which nothing was known before.
func TestCausesInTownsNeverSeen(t *testing.T) {
	towns, visits := 60, 400
	if testing.Short() {
		towns, visits = 20, 200
	}
	r := rand.New(rand.NewPCG(2, 71))
	all := newTally()
	for range towns {
		w := anyWorld(r)
		for range visits {
			sc := visitHouse(&w, r)
			all.take(sc, Assess(sc.in))
		}
	}
	all.report(t, 0.01)
}

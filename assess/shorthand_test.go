package assess

import (
	"fmt"
	"slices"
	"strconv"
	"strings"
	"testing"
)

// on writes a visit in the shorthand of these tests, one line a statement:
//
//	92 rear_bibb idle static     a reading (before, after, peak, flowing, firing)
//	+leak, -dark_water           a symptom, or that it is not there
//	prv none / prv 2014 set 60   equipment: none, a year, set N (psi), Ngal, Nf
//	                             (setpoint), unknown (age), flushed YEAR, a
//	                             condition, a material, a fuel
//	did set_prv 60               work, with what it was set to
//	plan recheck 7               a plan, with its days
func on(t testing.TB, date string, lines ...string) Visit {
	t.Helper()
	d, err := ParseDate(date)
	if err != nil {
		t.Fatal(err)
	}
	v := Visit{Date: d}
	for _, line := range lines {
		s, err := shorthand(line)
		if err != nil {
			t.Fatalf("%q: %v", line, err)
		}
		v.Add(s)
	}
	return v
}

func shorthand(line string) (Statement, error) {
	w := strings.Fields(line)
	if name, ok := strings.CutPrefix(w[0], "+"); ok {
		return Symptom{Symptom: SymptomName(name)}, nil
	}
	if name, ok := strings.CutPrefix(w[0], "-"); ok && len(w) == 1 {
		if _, err := strconv.ParseFloat(name, 64); err != nil {
			return Symptom{Symptom: SymptomName(name), Absent: true}, nil
		}
	}
	if psi, err := strconv.ParseFloat(w[0], 64); err == nil {
		return shortReading(psi, w[1:])
	}
	switch w[0] {
	case "did":
		a := Work{Action: Action(w[1])}
		if len(w) > 2 {
			psi, err := strconv.ParseFloat(w[2], 64)
			a.ToPSI = &psi
			return a, err
		}
		return a, nil
	case "plan":
		p := Plan{Action: Action(w[1])}
		if len(w) > 2 {
			n, err := strconv.Atoi(w[2])
			p.InDays = &n
			return p, err
		}
		return p, nil
	}
	return shortEquipment(w)
}

func shortReading(psi float64, words []string) (Statement, error) {
	r := Reading{PSI: psi}
	points := []TestPoint{FrontBibb, RearBibb, SideBibb, Bibb, Laundry, HeaterDrain, Kitchen, Bath, Street, AfterPRV, Irrigation}
	for _, w := range words {
		switch {
		case slices.Contains(points, TestPoint(w)):
			r.Point = TestPoint(w)
		case w == string(Idle) || w == string(Firing):
			r.Heater = HeaterState(w)
		case w == string(Static) || w == string(Flowing):
			r.Flow = Flow(w)
		case w == string(Before) || w == string(After):
			r.When = When(w)
		case w == "peak":
			r.Peak = true
		default:
			return nil, fmt.Errorf("no word %q", w)
		}
	}
	return r, nil
}

func shortEquipment(w []string) (Statement, error) {
	items := map[string]Item{
		"prv": PRV, "heater": Heater, "tank": ExpansionTank, "check": CheckValve, "drain": DrainValve, "gauge": Gauge,
	}
	e := Equipment{Item: items[w[0]]}
	if e.Item == "" {
		return nil, fmt.Errorf("no item %q", w[0])
	}
	for i := 1; i < len(w); i++ {
		x := w[i]
		next := func() (float64, error) { i++; return strconv.ParseFloat(w[i], 64) }
		switch {
		case x == "none":
			e.Present = ptr(false)
		case x == "unknown":
			e.AgeUnknown = true
		case x == "set":
			n, err := next()
			if err != nil {
				return nil, err
			}
			e.SettingPSI = &n
		case x == "flushed":
			n, err := next()
			if err != nil {
				return nil, err
			}
			e.MaintainedYear = ptr(int(n))
		case x == string(Plastic) || x == string(Brass):
			e.Material = Material(x)
		case x == string(Failed) || x == string(Suspect) || x == string(Good):
			e.Condition = Condition(x)
		case x == string(Gas) || x == string(Electric) || x == string(Tankless):
			e.Fuel = Fuel(x)
		case strings.HasSuffix(x, "gal"):
			n, err := strconv.ParseFloat(strings.TrimSuffix(x, "gal"), 64)
			if err != nil {
				return nil, err
			}
			e.SizeGal = &n
		case strings.HasSuffix(x, "f"):
			n, err := strconv.ParseFloat(strings.TrimSuffix(x, "f"), 64)
			if err != nil {
				return nil, err
			}
			e.SetpointF = &n
		default:
			n, err := strconv.Atoi(x)
			if err != nil {
				return nil, err
			}
			e.InstalledYear = &n
		}
	}
	return e, nil
}

// today is the day on which these tests judge.
var today = Date{2026, 6, 15}

// seeing judges a visit of today.
func seeing(t testing.TB, lines ...string) Assessment {
	t.Helper()
	return Assess(Input{Today: today, Visits: []Visit{on(t, today.String(), lines...)}})
}

// codes lists an assessment's findings as "code urgency", sorted.
func codes(a Assessment) []string {
	out := []string{}
	for _, f := range a.Findings {
		out = append(out, f.Code+" "+string(f.Urgency))
	}
	slices.Sort(out)
	return out
}

package assess

import (
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

func TestPlusMinusByZoneOfTheScale(t *testing.T) {
	for _, c := range []struct {
		name  string
		gauge GaugeSpec
		psi   float64
		want  float64
	}{
		{"the usual gauge, middle half", GaugeSpec{}, 82, 3.2},
		{"its quarter points belong to the middle", GaugeSpec{"B", 160}, 40, 3.2},
		{"its upper quarter point too", GaugeSpec{"B", 160}, 120, 3.2},
		{"its first quarter", GaugeSpec{"B", 160}, 39.9, 4.8},
		{"its last quarter", GaugeSpec{"B", 160}, 121, 4.8},
		{"its end", GaugeSpec{"B", 160}, 160, 4.8},
		{"above its end a 0-300 gauge is taken", GaugeSpec{"B", 160}, 170, 6},
		{"in that gauge's last quarter", GaugeSpec{"B", 160}, 240, 9},
		{"above any gauge", GaugeSpec{"B", 160}, 500, 9},
		{"grade A is 2-1-2", GaugeSpec{"A", 100}, 80, 2},
		{"grade C is 4-3-4", GaugeSpec{"C", 100}, 50, 3},
		{"a lower-case grade", GaugeSpec{"4a", 200}, 80, 0.2},
		{"a metric class", GaugeSpec{"1.6", 145}, 60, 2.32},
		{"a percentage", GaugeSpec{"2 %", 100}, 1, 2},
		{"a grade that does not exist is the usual one", GaugeSpec{"X", 160}, 80, 3.2},
		{"a span that does not exist is the usual one", GaugeSpec{"B", -5}, 80, 3.2},
	} {
		if got := c.gauge.PlusMinus(c.psi); math.Abs(got-c.want) > 1e-9 {
			t.Errorf("%s: ±%v, want ±%v", c.name, got, c.want)
		}
	}
}

func TestAGaugeThatMakesNoSenseIsNamed(t *testing.T) {
	for _, ok := range []GaugeSpec{{}, {"B", 160}, {"3A", 300}, {"2.5 %", 100}} {
		if err := ok.Check(); err != nil {
			t.Errorf("%+v: %v", ok, err)
		}
	}
	for _, c := range []struct {
		g    GaugeSpec
		says string
	}{{GaugeSpec{"E", 160}, "grade"}, {GaugeSpec{"B", 3}, "span"}, {GaugeSpec{"-1", 160}, "grade"}, {GaugeSpec{"B", math.NaN()}, "span"}} {
		if err := c.g.Check(); err == nil || !strings.Contains(err.Error(), c.says) {
			t.Errorf("%+v: %v, want a word on the %s", c.g, err, c.says)
		}
	}
}

func TestMorePressureNeverGivesAMilderBand(t *testing.T) {
	order := map[Band]int{BandLow: 0, BandIn: 1, BandHigh: 2, OverRelief: 3}
	rapid.Check(t, func(t *rapid.T) {
		a := rapid.Float64Range(0, 300).Draw(t, "psi")
		b := a + rapid.Float64Range(0, 100).Draw(t, "more")
		if order[BandOf(b, usualBand)] < order[BandOf(a, usualBand)] {
			t.Fatalf("%v is %s, %v is %s", a, BandOf(a, usualBand), b, BandOf(b, usualBand))
		}
	})
	if BandOf(math.NaN(), usualBand) != BandNone {
		t.Error("no pressure lies in no band")
	}
}

func TestConversionsGoThereAndBack(t *testing.T) {
	all := []PressureUnit{UnitPSI, UnitPa, UnitKPa, UnitMPa, UnitBar, UnitKgfPerCM2, UnitFootOfWater, UnitMetreOfWater}
	rapid.Check(t, func(t *rapid.T) {
		v := rapid.Float64Range(0, 500).Draw(t, "psi")
		u := rapid.SampledFrom(all).Draw(t, "unit")
		there, ok := Convert(v, UnitPSI, u)
		back, ok2 := Convert(there, u, UnitPSI)
		if !ok || !ok2 || math.Abs(back-v) > 1e-12*v {
			t.Fatalf("%v psi is %v %s and back %v psi", v, there, u, back)
		}
	})
	if _, ok := Convert(1, "furlong", UnitPSI); ok {
		t.Error("a furlong is no pressure")
	}
	if f := Fahrenheit(Celsius(120)); math.Abs(f-120) > 1e-12 {
		t.Errorf("120 °F there and back is %v", f)
	}
}

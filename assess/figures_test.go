package assess

import (
	"math/rand/v2"
	"regexp"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

// figureCodes lists the figures of a house by code.
func figureCodes(figures []Figure) string {
	var out []string
	for _, f := range figures {
		out = append(out, f.Code)
	}
	return strings.Join(out, " ")
}

func figureText(figures []Figure, code string) string {
	for _, f := range figures {
		if f.Code == code {
			return f.Text
		}
	}
	return ""
}

// house84 is a house at 84 psi with a regulator, a 40 gal heater and a 2 gal tank.
func house84() Input {
	day := Date{2026, 6, 15}
	return Input{Today: day, Visits: []Visit{{
		Date:     day,
		Readings: []Reading{{PSI: 84, Point: RearBibb, Heater: Idle}, {PSI: 180, Point: Street}},
		Equipment: []Equipment{
			{Item: PRV, InstalledYear: ptr(2014)},
			{Item: Heater, SizeGal: ptr(40.0), SetpointF: ptr(140.0)},
			{Item: ExpansionTank, SizeGal: ptr(2.0), SettingPSI: ptr(40.0)},
		},
		Symptoms: []Symptom{{Symptom: Hammer}},
	}}}
}

func TestFiguresExplainTheHouse(t *testing.T) {
	in := house84()
	got := Figures(in, Assess(in))
	if want := "heating saving reduction ratings surge scald"; figureCodes(got) != want {
		t.Errorf("figures %q, want %q", figureCodes(got), want)
	}
	for code, says := range map[string]string{
		// 0.671 gal into a 2 gal tank charged to 40: 1.107 gal of air at 84 psi,
		// squeezed to 0.436: 98.7 × 1.107/0.436 psia = 236 psi, so the valve opens.
		"heating":   "relief valve opens",
		"saving":    "15 to 40 %", // (60/84)^0.5 and ^1.5
		"reduction": "2.1 to 1",
		"surge":     "280 psi in 3/4 in copper, 70 in PEX",
		"scald":     "140 °F burns an adult's skin in about 5 seconds",
	} {
		if text := figureText(got, code); !strings.Contains(text, says) {
			t.Errorf("%s: %q, want %q in it", code, text, says)
		}
	}
	// With no tank the rise a degree is told instead.
	in.Visits[0].Equipment[2] = Equipment{Item: ExpansionTank, Present: ptr(false)}
	if text := figureText(Figures(in, Assess(in)), "heating"); !strings.Contains(text, "no working tank") {
		t.Errorf("no tank: %q", text)
	}
	// A main strong enough for two valves in a row.
	in.Visits[0].Readings = []Reading{{PSI: 50, Point: RearBibb, Heater: Idle}, {PSI: 180, Point: Street}}
	if text := figureText(Figures(in, Assess(in)), "reduction"); !strings.Contains(text, "two valves in a row") {
		t.Errorf("180 to 50: %q", text)
	}
	// A reading that the gauge cannot tell from the limit.
	in.Visits[0].Readings = []Reading{{PSI: 82, Point: RearBibb, Heater: Idle}}
	if text := figureText(Figures(in, Assess(in)), "gauge"); !strings.Contains(text, "82 ± 3.2 psi reaches across 80: a grade A gauge on 0-160 psi (± 1.6)") {
		t.Errorf("82 psi on the usual gauge: %q", text)
	}
	// A house in band whose upper floor is not.
	in.Visits[0].Readings = []Reading{{PSI: 46, Point: RearBibb, Heater: Idle}}
	if text := figureText(Figures(in, Assess(in)), "top_floor"); !strings.Contains(text, "9 psi less: 37 psi") {
		t.Errorf("46 psi below: %q", text)
	}
	// Water that runs at too little pressure for a mixing valve.
	in.Visits[0].Readings = []Reading{{PSI: 60, Point: RearBibb, Heater: Idle}, {PSI: 15, Point: Bath, Flow: Flowing}}
	if text := figureText(Figures(in, Assess(in)), "need"); !strings.Contains(text, "15 psi is left") {
		t.Errorf("15 psi flowing: %q", text)
	}
	if got := Figures(Input{}, Assess(Input{})); got == nil || len(got) != 0 {
		t.Errorf("nothing known: %v, want an empty list", got)
	}
}

func TestFiguresTellTheStreetAndTheShopsRecord(t *testing.T) {
	in := house84()
	for i := range 8 {
		psi := 70.0
		if i >= 5 {
			psi = 98
		}
		in.Neighbours = append(in.Neighbours, Neighbour{in.Today.AddDays(-200 + 25*i), psi})
	}
	in.Lives = shopLives(rand.New(rand.NewPCG(1, 1)), 300, 14, 3, 25)
	got := Figures(in, Assess(in))
	if text := figureText(got, "street"); !strings.Contains(text, "from 70 to 98 psi") {
		t.Errorf("a street that changed: %q", text)
	}
	if text := figureText(got, "life"); !strings.Contains(text, "one of 12 years fails within a year with") {
		t.Errorf("the shop's record: %q", text)
	}
}

func TestLifeSummaryOfAMonth(t *testing.T) {
	if got := LifeSummary(nil, English); figureCodes(got) != "curve" || !strings.Contains(got[0].Text, "from 10 on") {
		t.Errorf("no record: %+v", got)
	}
	wear := LifeSummary(shopLives(rand.New(rand.NewPCG(1, 1)), 300, 14, 3, 25), English)
	if figureCodes(wear) != "curve tenth aging" || !strings.Contains(wear[2].Text, "wear out") {
		t.Errorf("valves that wear out: %+v", wear)
	}
	young := LifeSummary(shopLives(rand.New(rand.NewPCG(2, 1)), 300, 14, 0.6, 25), English)
	if !strings.Contains(young[2].Text, "fail young") {
		t.Errorf("valves that fail young: %+v", young)
	}
}

func TestFiguresSayTheSameInSpanish(t *testing.T) {
	slots := regexp.MustCompile(`\{[a-z]+\}`)
	for name, en := range englishFigures {
		es, ok := spanishFigures[name]
		if !ok {
			t.Errorf("%s has no Spanish", name)
			continue
		}
		for _, pair := range [][2]string{{en.text, es.text}, {en.basis, es.basis}} {
			a, b := slots.FindAllString(pair[0], -1), slots.FindAllString(pair[1], -1)
			slices.Sort(a)
			slices.Sort(b)
			if !slices.Equal(a, b) {
				t.Errorf("%s: English tells %v, Spanish %v", name, a, b)
			}
		}
	}
	if len(englishFigures) != len(spanishFigures) {
		t.Errorf("%d English wordings, %d Spanish", len(englishFigures), len(spanishFigures))
	}
}

func TestEveryFigureIsFilledIn(t *testing.T) {
	odd := regexp.MustCompile(`[{}]|NaN|Inf`)
	rapid.Check(t, func(t *rapid.T) {
		in := house84()
		in.Lang = rapid.SampledFrom([]Lang{English, Spanish}).Draw(t, "lang")
		v := &in.Visits[0]
		v.Readings[0].PSI = rapid.OneOf(rapid.Float64Range(0, 220), rapid.Float64()).Draw(t, "house")
		v.Readings[1].PSI = rapid.Float64Range(0, 250).Draw(t, "street")
		v.Equipment[1].SizeGal = ptr(rapid.OneOf(rapid.Float64Range(0, 120), rapid.Float64()).Draw(t, "heater"))
		v.Equipment[1].SetpointF = ptr(rapid.OneOf(rapid.Float64Range(60, 200), rapid.Float64()).Draw(t, "setpoint"))
		v.Equipment[2].SizeGal = ptr(rapid.OneOf(rapid.Float64Range(0, 10), rapid.Float64()).Draw(t, "tank"))
		v.Equipment[2].SettingPSI = ptr(rapid.OneOf(rapid.Float64Range(0, 120), rapid.Float64()).Draw(t, "charge"))
		for _, f := range Figures(in, Assess(in)) {
			if f.Text == "" || f.Basis == "" || odd.MatchString(f.Text+f.Basis) {
				t.Fatalf("%+v", f)
			}
		}
	})
}

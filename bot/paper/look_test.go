package paper

import (
	"os"
	"path/filepath"
	"testing"

	"lazyhand/assess"
	"lazyhand/bot/desk"
	"lazyhand/store"
)

// someWeek is a week of an invented shop.
func someWeek(lang assess.Lang) desk.Summary {
	s := desk.Summary{From: day(2026, 6, 8), To: day(2026, 6, 15), Lang: lang, Band: [2]float64{40, 80}, Houses: 14, Readings: 20}
	for i, psi := range []float64{62, 71, 84, 55, 38, 66, 91, 60, 58, 73, 151, 69, 64} {
		band := assess.BandIn
		switch {
		case psi >= 150:
			band = assess.OverRelief
		case psi > 80:
			band = assess.BandHigh
		case psi < 40:
			band = assess.BandLow
		}
		s.Reports = append(s.Reports, store.SpanReport{Site: int64(i), Line: []string{"12 Alder St", "1207 Quince St", "33 Tamarack Ct"}[i%3], Day: day(2026, 6, 8).AddDays(i * 5 / 13), HousePSI: ptr(psi), Band: band, Readings: 1, Fair: 1})
	}
	s.Reports = append(s.Reports, store.SpanReport{Line: "9 Old Mill Rd", Day: day(2026, 6, 9), Band: assess.BandNone, Readings: 1})
	return s
}

// TestPicturesForTheEye leaves pictures and papers in the folder that
// LAZYHAND_PICTURES names, to be looked at.
func TestPicturesForTheEye(t *testing.T) {
	dir := os.Getenv("LAZYHAND_PICTURES")
	if dir == "" {
		t.Skip("LAZYHAND_PICTURES names no folder")
	}
	p := Painter{Shop: "Larkfield Plumbing (invented)", Phone: "555-0142"}
	keep := func(name string, data []byte, err error) {
		t.Helper()
		if err == nil {
			err = os.WriteFile(filepath.Join(dir, name), data, 0o644)
		}
		if err != nil {
			t.Fatal(err)
		}
	}
	for _, lang := range []assess.Lang{assess.English, assess.Spanish} {
		for name, h := range map[string]desk.House{"drift": drifting(lang), "one": houseOf(lang, assess.Visit{Date: day(2026, 6, 15), Readings: []assess.Reading{laundry(62)}}), "none": {Site: assess.Site{Line: "9 Old Mill Rd"}, Lang: lang, Today: day(2026, 6, 15)}} {
			pic, err := p.Plot(h)
			t.Log(pic.Alt)
			keep(string(lang)+"-plot-"+name+".png", pic.PNG, err)
			f, err := p.Sheet(h)
			keep(string(lang)+"-sheet-"+name+".pdf", f.Data, err)
		}
		pic, err := p.Week(someWeek(lang))
		t.Log(pic.Alt)
		keep(string(lang)+"-week.png", pic.PNG, err)
	}
}

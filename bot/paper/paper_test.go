package paper

import (
	"bytes"
	"fmt"
	"image"
	"image/png"
	"math"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"lazyhand/assess"
	"lazyhand/bot/desk"
	"lazyhand/store"
)

var languages = []assess.Lang{assess.English, assess.Spanish}

// stories are houses whose pictures must hold together, however odd.
func stories(lang assess.Lang) map[string]desk.House {
	long := drifting(lang)
	long.Site.Line = strings.Repeat("1200 Very Long Named Boulevard of the Larks ", 6)
	for i := range 200 {
		long.Readings = append(long.Readings, store.SiteReading{Day: long.Today.AddDays(i - 200), Reading: laundry(50 + float64(i%30)), Side: assess.HouseSide, Fair: assess.FairYes})
		long.Visits[0].Work = append(long.Visits[0].Work, assess.Work{Action: assess.SetPRV, ToPSI: ptr(60.0)})
		v := &long.Visits[len(long.Visits)-1]
		v.Readings = append(v.Readings, laundry(60))
		long.FollowUps = append(long.FollowUps, store.FollowUp{Action: assess.Recheck, Due: long.Today.AddDays(i)})
		long.Assessment.Findings = append(long.Assessment.Findings, assess.Finding{Code: fmt.Sprint("other", i), Urgency: assess.Soon, Text: strings.Repeat(fmt.Sprint("word", i, " "), 40)})
	}
	odd := houseOf(lang, assess.Visit{Date: day(2026, 6, 15), Readings: []assess.Reading{laundry(155)}})
	odd.Site.Line = "7 \U0001F6BF Ñandú\n\tCt \u202e"
	for _, v := range []float64{math.NaN(), math.Inf(1), -1e300, 1e300, 599, 0} {
		odd.Readings = append(odd.Readings, store.SiteReading{Day: day(2026, 6, 16), Reading: assess.Reading{PSI: v}})
	}
	odd.Assessment.HousePSI = ptr(math.NaN())
	odd.Assessment.Drift = assess.Drift{State: assess.Rising, PSIPerYear: ptr(math.NaN()), Low: ptr(math.Inf(-1)), High: ptr(1e308), Crosses: &assess.Crossing{Date: day(9999, 12, 31), Early: day(1900, 1, 1), Late: day(9999, 12, 31)}}
	worked := drifting(lang)
	for i := range worked.Visits {
		worked.Visits[i].Work = append(worked.Visits[i].Work, assess.Work{Action: assess.SetPRV, ToPSI: ptr(float64(55 + i))})
	}
	return map[string]desk.House{
		"drifting": drifting(lang), "long": long, "odd": odd, "much worked on": worked,
		"one reading": houseOf(lang, assess.Visit{Date: day(2026, 6, 15), Readings: []assess.Reading{laundry(62)}}),
		"nothing":     {Site: assess.Site{Line: "9 Old Mill Rd"}, Lang: lang, Today: day(2026, 6, 15)},
	}
}

// holds tells of a picture that it has its size, that it is not blank, and that
// nothing is drawn within edge pixels of its rim.
func holds(t *testing.T, data []byte, w, h, edge int) {
	t.Helper()
	img, err := png.Decode(bytes.NewReader(data))
	if err != nil {
		t.Fatal(err)
	}
	if b := img.Bounds(); b.Dx() != w || b.Dy() != h {
		t.Errorf("the picture is %d by %d pixels, want %d by %d", b.Dx(), b.Dy(), w, h)
	}
	if box := drawn(img); box.Empty() {
		t.Error("the picture is blank")
	} else if room := img.Bounds().Inset(edge); !box.In(room) {
		t.Errorf("drawn from %v, which reaches out of %v", box, room)
	}
}

// drawn is the smallest field that holds all that is not white.
func drawn(img image.Image) image.Rectangle {
	var box image.Rectangle
	b := img.Bounds()
	for y := b.Min.Y; y < b.Max.Y; y++ {
		for x := b.Min.X; x < b.Max.X; x++ {
			if r, g, bl, _ := img.At(x, y).RGBA(); min(r, g, bl) < 0xf000 {
				box = box.Union(image.Rect(x, y, x+1, y+1))
			}
		}
	}
	return box
}

func TestPlotKeepsWithinItsFrame(t *testing.T) {
	for name, h := range stories(assess.Spanish) {
		t.Run(name, func(t *testing.T) {
			pic, err := Painter{}.Plot(h)
			if err != nil {
				t.Fatal(err)
			}
			holds(t, pic.PNG, 1080, 720, 4)
			if strings.Contains(pic.Alt, "NaN") || strings.Contains(pic.Alt, "%!") {
				t.Errorf("its words: %s", pic.Alt)
			}
			if !strings.HasSuffix(pic.Name, ".png") || len(pic.Name) > 80 {
				t.Errorf("its name: %q", pic.Name)
			}
		})
	}
}

func TestSamePlotTwiceIsTheSame(t *testing.T) {
	a, err1 := Painter{}.Plot(drifting(assess.English))
	b, err2 := Painter{}.Plot(drifting(assess.English))
	if err1 != nil || err2 != nil || !bytes.Equal(a.PNG, b.PNG) {
		t.Errorf("two drawings of one house differ (%v, %v)", err1, err2)
	}
}

func TestPlotInWordsHoldsItsNumbers(t *testing.T) {
	for lang, want := range map[assess.Lang][]string{
		assess.English: {"12 Alder St", "40 to 80 psi", "61, 63, 62.5, 66, 68, 70, 71, 74, 76", "Doubtful readings: 79", "48, 104", "88, 98, 97", "March 2, 2023: regulator replaced, set to 60", "Rises 5.6 psi a year", "leaves the band about Nov 2026"},
		assess.Spanish: {"12 Alder St", "40 a 80 psi", "61, 63, 62.5, 66, 68, 70, 71, 74, 76", "Lecturas dudosas: 79", "2 de marzo de 2023: reguladora cambiada", "Sube 5.6 psi al año", "sale de la banda hacia nov 2026"},
	} {
		alt := plotAlt(drifting(lang))
		for _, s := range want {
			if !strings.Contains(alt, s) {
				t.Errorf("%s: %q is not in: %s", lang, s, alt)
			}
		}
	}
	long := plotAlt(stories(assess.English)["long"])
	if !strings.Contains(long, "older ones") || len(long) > 2000 {
		t.Errorf("words of 200 readings, %d bytes: %s", len(long), long)
	}
}

func TestWeek(t *testing.T) {
	full := someWeek(assess.Spanish)
	for i := range 300 {
		r := full.Reports[i%len(full.Reports)]
		r.Day = full.From.AddDays(i % 7)
		full.Reports = append(full.Reports, r)
	}
	for name, s := range map[string]desk.Summary{"some": someWeek(assess.English), "full": full, "none": {From: day(2026, 6, 8), To: day(2026, 6, 15)}, "one day": {From: day(2026, 6, 8), To: day(2026, 6, 8)}} {
		t.Run(name, func(t *testing.T) {
			pic, err := Painter{}.Week(s)
			if err != nil {
				t.Fatal(err)
			}
			holds(t, pic.PNG, 1080, 720, 4)
		})
	}
	alt := weekOf(someWeek(assess.English)).alt()
	for _, s := range []string{"reading: 13", "Below the band: 1, above: 3", "Visits without one: 1", "55–73 psi", "1207 Quince St 38", "12 Alder St 91", "151"} {
		if !strings.Contains(alt, s) {
			t.Errorf("%q is not in: %s", s, alt)
		}
	}
}

// poppler runs one of poppler's programs on a sheet.
func poppler(t *testing.T, pdf []byte, program string, args ...string) []byte {
	t.Helper()
	path, err := exec.LookPath(program)
	if err != nil {
		t.Skipf("%s is not installed", program)
	}
	file := filepath.Join(t.TempDir(), "sheet.pdf")
	if err := os.WriteFile(file, pdf, 0o600); err != nil {
		t.Fatal(err)
	}
	args = append(args, file)
	if program == "pdftotext" {
		args = append(args, "-")
	}
	out, err := exec.Command(path, args...).Output()
	if err != nil {
		t.Fatalf("%s: %v", program, err)
	}
	return out
}

func TestSheetIsOnePageWithinItsMargins(t *testing.T) {
	p := Painter{Shop: strings.Repeat("Larkfield Plumbing and Heating ", 5), Phone: "555-0142"}
	for name, h := range stories(assess.Spanish) {
		t.Run(name, func(t *testing.T) {
			f, err := p.Sheet(h)
			if err != nil {
				t.Fatal(err)
			}
			if n := bytes.Count(f.Data, []byte("/Type /Page\n")); n != 1 {
				t.Errorf("%d pages, want one", n)
			}
			const dpi = 72
			img := poppler(t, f.Data, "pdftoppm", "-png", "-r", fmt.Sprint(dpi))
			holds(t, img, 612, 792, int(margin)-2)
		})
	}
}

func TestSheetTellsTheHouse(t *testing.T) {
	for lang, want := range map[assess.Lang][]string{
		assess.English: {"Larkfield Plumbing", "Phone 555-0142", "Water pressure at your house", "12 Alder St, Larkfield 00012", "January 20, 2026", "76 psi, laundry tap, heater idle: fair reading",
			"from 2014, 12 years old", "regulator replaced", "Install an expansion tank", "Local code and a licensed plumber decide", "Please take care", "rises by about 5.6 psi a year"},
		assess.Spanish: {"Teléfono 555-0142", "La presión del agua en su casa", "llave de la lavadora", "20 de enero de 2026", "12 años", "Válvula reguladora", "Deciden el código local y un plomero con licencia", "Tenga cuidado"},
	} {
		f, err := Painter{Shop: "Larkfield Plumbing", Phone: "555-0142"}.Sheet(drifting(lang))
		if err != nil {
			t.Fatal(err)
		}
		text := strings.Join(strings.Fields(string(poppler(t, f.Data, "pdftotext", "-layout"))), " ")
		flow := strings.Join(strings.Fields(string(poppler(t, f.Data, "pdftotext"))), " ")
		for _, s := range want {
			if !strings.Contains(text, s) && !strings.Contains(flow, s) {
				t.Errorf("%s: %q is not in the text: %s", lang, s, flow)
			}
		}
	}
}

func TestSheetNamesItself(t *testing.T) {
	f, err := Painter{Shop: "Larkfield Plumbing"}.Sheet(drifting(assess.Spanish))
	if err != nil {
		t.Fatal(err)
	}
	if !bytes.Contains(f.Data, []byte("/Lang (es-US)")) {
		t.Error("the sheet does not name its language")
	}
	file := filepath.Join(t.TempDir(), "sheet.pdf")
	if err := os.WriteFile(file, f.Data, 0o600); err != nil {
		t.Fatal(err)
	}
	info, err := exec.Command("pdfinfo", file).Output()
	if err != nil {
		t.Skip("pdfinfo is not installed")
	}
	for _, s := range []string{"La presión del agua en su casa: 12 Alder St", "Presión del agua en 12 Alder St, Larkfield, 2026-01-20", "Author:          Larkfield Plumbing", "letter"} {
		if !strings.Contains(string(info), s) {
			t.Errorf("%q is not in: %s", s, info)
		}
	}
}

func TestLongSheetCountsWhatItLeavesOut(t *testing.T) {
	f, err := Painter{}.Sheet(stories(assess.English)["long"])
	if err != nil {
		t.Fatal(err)
	}
	if text := string(poppler(t, f.Data, "pdftotext")); strings.Count(text, "…and ") < 2 {
		t.Errorf("what is left out is not counted: %s", text)
	}
}

// TestEveryCodeHasWords keeps the crew's language off the customer's sheet.
func TestEveryCodeHasWords(t *testing.T) {
	for _, lang := range languages {
		w := wordsIn(lang)
		for _, code := range assess.FindingCodes() {
			if _, ok := w.sheet.Finding[code]; !ok {
				t.Errorf("%s: finding %s has no words", lang, code)
			}
		}
		if other := wordsIn(languages[0]); len(w.sheet.Caution) != len(other.sheet.Caution) || len(w.sheet.Point) != len(other.sheet.Point) ||
			len(w.sheet.Reason) != len(other.sheet.Reason) || len(w.sheet.Work) != len(other.sheet.Work) || len(w.sheet.Advice) != len(other.sheet.Advice) {
			t.Errorf("%s says more or less than %s", lang, languages[0])
		}
	}
}

func TestUrgentComesFirst(t *testing.T) {
	h := houseOf(assess.English, assess.Visit{Date: day(2026, 6, 15), Readings: []assess.Reading{laundry(155)}})
	if v := (sheetFacts{h, english()}).verdict(); !strings.HasPrefix(v[0], "Do not wait") {
		t.Errorf("a house at relief pressure begins with %q", v[0])
	}
}

func TestTrendMeetsTheLimitWhereTheAssessmentSays(t *testing.T) {
	h := drifting(assess.English)
	tr, ok := storyOf(h).trendOf(h)
	c := h.Assessment.Drift.Crosses
	if !ok || c == nil {
		t.Fatalf("no trend: %+v", h.Assessment.Drift)
	}
	if at := tr.level + tr.slope*float64(c.Date.Sub(tr.at)); math.Abs(at-80) > 0.01 {
		t.Errorf("the line stands at %.2f psi on %s, want 80", at, c.Date)
	}
	// It also goes through the middle of the readings.
	var off []float64
	for _, v := range storyOf(h).since(h) {
		off = append(off, v.PSI-tr.level-tr.slope*float64(v.Date.Sub(tr.at)))
	}
	slices.Sort(off)
	if mid := off[len(off)/2]; math.Abs(mid) > 1 {
		t.Errorf("the line lies %.1f psi off the middle of the readings", mid)
	}
}

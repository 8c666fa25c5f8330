package intents

import (
	"regexp"
	"testing"
)

// Who leaves out the vowels is read as if they stood there: the messages once as they are, once squeezed.
func TestWithoutVowelsIsReadAsWithThem(t *testing.T) {
	messages := []string{
		"replace the regulator next monday",
		"come back thursday to recheck",
		"put the expansion tank in saturday, quoted",
		"heater from 2015, flushed last year",
		"recheck in three weeks",
		"kitchen sixty, laundry seventy, nothing running",
		"meter 120, after the regulator seventy",
		"hose bibb behind the garage 71, heater idle",
		"front bibb 80 before, 61 after, turned the regulator down",
		"rear hose bibb 64, heater recovering",
		"reading 66 kitchen with the dishwasher running",
		"side spigot 60, customer complains of knocking",
		"pressure drops whenever somebody showers",
		"water looks like tea first thing every morning",
		"relief valve drips overnight, front 92",
		"sprinkler manifold 79, two zones running",
		"delete the report I just sent",
		"laundry 71 there, tomorrow another test",
	}
	long := regexp.MustCompile(`[a-z]{4,}`)
	p, err := oneParser()
	if err != nil {
		t.Fatal(err)
	}
	for _, full := range messages {
		bare := long.ReplaceAllStringFunc(full, exactShape)
		if got, want := inWords(p.Parse(bare, Context{})), inWords(p.Parse(full, Context{})); got != want || want == "ask none" {
			t.Errorf("%q\n got %s\nas %q %s", bare, got, full, want)
		}
	}
}

func TestShapesThatAreShortForMoreThanOneWord(t *testing.T) {
	says(t, [][2]string{
		{"pps hm lk a bee, 60 ktchn", "noise; 60 kitchen"},
		{"lk in th crawl, 60 ktchn", "leak; 60 kitchen"},
		{"no lk at vlv", "no leak"},
		{"lk at wshr box fxd", "repaired_leak"},
		{"wtr lks lk tea", "rusty_water"},
		{"prv lks wrn", "prv suspect"},
		{"rear hs bbb 64", "64 rear_bibb"},
		{"hs sd 64", "64 after_prv"},
		{"prv nn, tnk: nn", "prv none; expansion_tank none"},
		{"frnt 60, bth lv 58", "60 front_bibb; 58 bath"},
		{"frnt bb cld b 58 cld b 59", "58.5 front_bibb"},
		{"ktchn 60 htr cld", "60 kitchen idle"},
		{"rlf vlv wnt stp drppng", "relief_discharge"},
		{"mstr bth 38", "38 bath"},
		{"2208 hemlock sd spgt rds 99", "99 side_bibb"},
		{"14 oak ktchn rds 66", "66 kitchen"},
	})
}

func TestStreetsWithoutVowelsStandAsTyped(t *testing.T) {
	p, err := oneParser()
	if err != nil {
		t.Fatal(err)
	}
	for text, want := range map[string]string{
		"frnt 60, 1201 wht oak rd":  "1201 Wht Oak Rd",
		"frnt 60, 1201 wtr twr ln":  "1201 Wtr Twr Ln",
		"side bib says 88 tdy":      "",
		"106 ahd of th prv, 12 Elm": "12 Elm",
	} {
		if got := p.Parse(text, Context{}).Site; got != want {
			t.Errorf("%q: got %q, want %q", text, got, want)
		}
	}
}

func TestWhatWasDoneThisYearWasNotDoneToday(t *testing.T) {
	says(t, [][2]string{
		{"electric heater 55 gal installed 2018 flushed this year", "heater year 2018 55 gal electric maintained 2026"},
		{"heater is a 2015, it was flushed this spring", "heater year 2015 maintained 2026"},
		{"flushed the heater earlier this month", "heater maintained 2026"},
		{"heater from 2015, flushed this summer", "heater year 2015 maintained 2026"},
		{"prv replaced this year, 62 kitchen", "prv year 2026; 62 kitchen"},
		{"tank put in this summer, 62 kitchen", "expansion_tank year 2026; 62 kitchen"},
		{"calentador del 2015, lavado este año", "heater year 2015 maintained 2026"},
		{"heater from 2015, flushed today", "heater year 2015; flushed_heater"},
		{"flushed the heater, second time this year", "flushed_heater; heater maintained 2026"},
	})
}

package intents_test

import (
	"encoding/json"
	"testing"

	"lazyhand/assess"
	"lazyhand/intents"
)

// report makes a report of one or two readings, as the record keeps it.
func report(statements ...assess.Statement) *intents.Frame {
	return &intents.Frame{Site: "12 Alder St", Statements: statements}
}

// Right after a report a few words put it right: the reading, where it was
// taken, what the heater did.
func TestAFewWordsPutTheLastReportRight(t *testing.T) {
	p := newParser(t)
	one := report(assess.Reading{PSI: 91, Point: assess.FrontBibb, Heater: assess.Idle})
	bare := report(assess.Reading{PSI: 91})
	two := report(assess.Reading{PSI: 91, Point: assess.FrontBibb}, assess.Reading{PSI: 66, Point: assess.RearBibb})
	recheck := report(assess.Plan{Action: assess.Recheck})
	year := 2012
	more := report(assess.Reading{PSI: 66, Point: assess.Street}, assess.Equipment{Item: assess.PRV, InstalledYear: &year})
	months := 90
	planned := report(assess.Reading{PSI: 66, Point: assess.Laundry}, assess.Plan{Action: assess.Recheck, InDays: &months})
	for _, tt := range []struct {
		told *intents.Frame
		text string
		want string
	}{
		{bare, "and the heater was firing", `[{"of":0,"heater":"firing"}]`},
		{bare, "y el boiler estaba prendido", `[{"of":0,"heater":"firing"}]`},
		{bare, "also nothing running", `[{"of":0,"flow":"static"}]`},
		{bare, "and the rear", `null`},
		{one, "sorry, 81", `[{"of":0,"psi":81}]`},
		{one, "mal, si eran 58", `[{"of":0,"psi":58}]`},
		{one, "mal, 58", `[{"of":0,"psi":58}]`},
		{one, "anda mal", `null`},
		{recheck, "sorry, 3 weeks", `[{"of":0,"in_days":21}]`},
		{recheck, "sorry wednesday", `[{"of":0,"in_days":2}]`},
		{recheck, "no, make it 3 weeks", `[{"of":0,"in_days":21}]`},
		{recheck, "mejor el viernes", `[{"of":0,"in_days":4}]`},
		{recheck, "perdón, en 10 días", `[{"of":0,"in_days":10}]`},
		{planned, "make that a year", `[{"of":1,"in_days":365}]`},
		{planned, "nah a year is fine", `[{"of":1,"in_days":365}]`},
		{two, "heater was cookin tho", `[{"of":0,"heater":"firing"},{"of":1,"heater":"firing"}]`},
		{two, "calentón prendido", `[{"of":0,"heater":"firing"},{"of":1,"heater":"firing"}]`},
		{two, "laundry", `null`},
		{recheck, "not friday, monday", `[{"of":0,"in_days":7}]`},
		{recheck, "can't do friday, monday", `[{"of":0,"in_days":7}]`},
		{recheck, "el viernes no puede, mejor el lunes", `[{"of":0,"in_days":7}]`},
		{recheck, "nobody home friday", `null`},
		{recheck, "wednesday", `null`},
		{recheck, "sorry about wednesday, couldnt make it", `null`},
		{recheck, "sorry, the laundry on wednesday", `null`},
		{recheck, "no thanks", `null`},
		{one, "sorry wednesday", `null`},
		{one, "actually 81", `[{"of":0,"psi":81}]`},
		{one, "i put 91 should be 81", `[{"of":0,"psi":81}]`},
		{one, "meant 81", `[{"of":0,"psi":81}]`},
		{one, "81 not 91", `[{"of":0,"psi":81}]`},
		{one, "sorry that 91 was 81", `[{"of":0,"psi":81}]`},
		{one, "perdón, el 91 era 81", `[{"of":0,"psi":81}]`},
		{one, "81*", `[{"of":0,"psi":81}]`},
		{one, "81 instead of 91", `[{"of":0,"psi":81}]`},
		{one, "scratch that, 81", `[{"of":0,"psi":81}]`},
		{one, "sorry rear not front", `[{"of":0,"point":"rear_bibb"}]`},
		{one, "it was the rear", `[{"of":0,"point":"rear_bibb"}]`},
		{one, "heater was firing", `[{"of":0,"heater":"firing"}]`},
		{one, "perdón, eran 81", `[{"of":0,"psi":81}]`},
		{one, "quise decir atrás", `[{"of":0,"point":"rear_bibb"}]`},
		{one, "atrás, no enfrente", `[{"of":0,"point":"rear_bibb"}]`},
		{one, "mejor dicho 81", `[{"of":0,"psi":81}]`},
		{bare, "rear", `[{"of":0,"point":"rear_bibb"}]`},
		{bare, "heater idle", `[{"of":0,"heater":"idle"}]`},
		{two, "actually 81", `[{"of":0,"psi":81}]`}, // 91 lies one slip away, 66 does not
		{two, "sorry front 81", `[{"of":0,"psi":81,"point":"front_bibb"}]`},
		{two, "actually 40", `[{"of":-1,"psi":40}]`},
		{two, "heater was firing", `[{"of":0,"heater":"firing"},{"of":1,"heater":"firing"}]`},
		{more, "no, after prv", `[{"of":0,"point":"after_prv"}]`},
		{planned, "make that 4", `[{"of":1,"in_days":120}]`}, // months, as they were told
		{planned, "no, make it 2 weeks", `[{"of":1,"in_days":14}]`},
		{planned, "make that 71", `[{"of":0,"psi":71}]`},
		{more, "2011 not 2012", `[{"of":1,"year":2011}]`},
	} {
		f := p.Parse(tt.text, intents.Context{Told: tt.told})
		got, err := json.Marshal(f.Amends)
		if err != nil {
			t.Fatal(err)
		}
		if string(got) != tt.want {
			t.Errorf("%q: %s, want %s", tt.text, got, tt.want)
		}
		if !intents.MayAmend(tt.text) {
			t.Errorf("%q is not looked at", tt.text)
		}
	}
}

// What reports anew, asks, or says something else puts nothing right.
func TestANewReadingIsNoCorrection(t *testing.T) {
	p := newParser(t)
	one := report(assess.Reading{PSI: 91, Point: assess.FrontBibb, Heater: assess.Idle})
	for _, text := range []string{"81", "81 rear", "rear 66", "sorry, also rear 66", "actually 81 now", "heater firing", "front, not rear", "was it 81?", "lunch at 12?",
		"no leak", "actually no prv", "actually dark water too", "sorry late", "not yet", "91 rear, 12 Alder St", "no, 81 at 9 Oak Ct", "ya voy", "ahora 81", "no", "thanks"} {
		if f := p.Parse(text, intents.Context{Told: one}); len(f.Amends) != 0 {
			t.Errorf("%q: %+v", text, f.Amends)
		}
	}
	if f := p.Parse("actually 81", intents.Context{}); len(f.Amends) != 0 {
		t.Errorf("with nothing told: %+v", f.Amends)
	}
}

// The record is asked for a house only by what may name one.
func TestNamesForTheRecord(t *testing.T) {
	p := newParser(t)
	for _, tt := range []struct {
		text, line string
		named      bool
	}{
		{"66 rear at elm", "123 Elm St", true},
		{"elm: 66 rear", "123 Elm St", true},
		{"at the elm house, 66 rear", "123 Elm St", true},
		{"en la elm, 66 atrás", "123 Elm St", true},
		{"elm ct 66 rear", "123 Elm St", false},
		{"oak grove, 66 rear", "9 Oak Grove Rd", true},
		{"at 1187: 92 rear", "1187 Birch Ln", true},
		{"en el 1187: 92 atrás", "1187 Birch Ln", true},
		{"house 92, 66 rear", "92 Birch Ln", true},
		{"92 rear, heater idle", "92 Birch Ln", false},
		{"peaked at 210 psi", "210 Birch Ln", false},
		{"pressure at 66", "66 Birch Ln", false},
		{"66 rear, 9 Oak Ct", "9 Oak Ct", false}, // it names its house by itself
		{"dark water and the regulator is shot", "4 Water St", false},
	} {
		got := false
		for _, n := range p.Names(tt.text) {
			got = got || n.Names(tt.line)
		}
		if got != tt.named {
			t.Errorf("%q may name %s: %v, want %v", tt.text, tt.line, got, tt.named)
		}
	}
}

// A house on record is filled in where the message names it, and its numbers
// are nothing else then.
func TestAHouseOnRecordIsSpelledOut(t *testing.T) {
	p := newParser(t)
	elm := []string{"123 Elm St", "40 Cedar Rd"}
	for _, tt := range []struct {
		text  string
		sites []string
		site  string
		psi   float64
	}{
		{"elm st 66 rear", elm, "123 Elm St", 66},
		{"back at elm, 66 rear", elm, "123 Elm St", 66},
		{"at 123: 92 rear", elm, "123 Elm St", 92},
		{"92 at elm", elm, "123 Elm St", 92},
		{"casa 40, 66 atrás", elm, "40 Cedar Rd", 66},
	} {
		f := p.Parse(tt.text, intents.Context{Sites: tt.sites})
		v := f.Visit(assess.Date{Year: 2026, Month: 6, Day: 15})
		if f.Site != tt.site || len(v.Readings) != 1 || v.Readings[0].PSI != tt.psi || len(v.Work) != 0 {
			t.Errorf("%q: site %q, %+v", tt.text, f.Site, f.Statements)
		}
	}
}

// A question is answered by the words of an option, its place, or yes and no;
// what reports something of its own is no answer.
func TestAnswersByWordsPlaceAndNumber(t *testing.T) {
	p := newParser(t)
	houses := &intents.Unclear{Span: "elm", MightBe: []string{"123 Elm St", "9 Elm Ct"}, Ask: "Which one?"}
	numbers := &intents.Unclear{Span: "92 or 29", MightBe: []string{"92", "29"}, Ask: "Which is right, 92 or 29?"}
	slip := &intents.Unclear{Span: "900", MightBe: []string{"slip"}, Ask: "What is the pressure?"}
	state := &intents.Unclear{Span: "heater", MightBe: []string{"idle", "firing"}, Ask: "Idle or firing?"}
	same := &intents.Unclear{Span: "123 Elm Ave", MightBe: []string{"yes"}, Ask: "Same house as 123 Elm St?"}
	for _, tt := range []struct {
		q          *intents.Unclear
		text, want string
	}{
		{houses, "the first", "123 Elm St"}, {houses, "9", "9 Elm Ct"}, {houses, "elm ct", "9 Elm Ct"}, {houses, "the court one", "9 Elm Ct"},
		{houses, "2", "9 Elm Ct"}, {houses, "la segunda", "9 Elm Ct"}, {houses, "123", "123 Elm St"}, {houses, "9 elm", "9 Elm Ct"},
		{houses, "elm", ""}, {houses, "9 am tomorrow", ""}, {houses, "66 rear, 40 Cedar Rd", ""}, {houses, "no", "no"}, {houses, "dark water", ""},
		{numbers, "92", "92"}, {numbers, "the 29", "29"}, {numbers, "second", "29"}, {numbers, "la primera", "92"}, {numbers, "84 front", ""}, {numbers, "neither", "no"},
		{slip, "90", "90"}, {slip, "meant 90", "90"}, {slip, "6.2 bar", "89.9"}, {slip, "90 rear 40 Cedar Rd", ""}, {slip, "prv 2009", ""},
		{state, "idle", "idle"}, {state, "firing", "firing"}, {state, "apagado", "idle"},
		{same, "yes", "yes"}, {same, "sí", "yes"}, {same, "yep same house", "yes"}, {same, "la misma", "yes"}, {same, "no", "no"}, {same, "no, different house", "no"}, {same, "not the same house", "no"},
		{same, "no es la misma", "no"}, {same, "84 rear", ""}, {same, "the first", ""}, {same, "1", ""}, {same, "yes?", ""},
	} {
		if got := p.Parse(tt.text, intents.Context{Question: tt.q}).Answer; got != tt.want {
			t.Errorf("%q to %q: %q, want %q", tt.text, tt.q.Ask, got, tt.want)
		}
	}
}

// The answer stands in the message in place of what was asked about.
func TestAnsweredReadsTheMessageAnew(t *testing.T) {
	p := newParser(t)
	for _, tt := range []struct {
		text   string
		answer string
		site   string
		psi    float64
	}{
		{"12 Alder St: front 92 or 29, heater idle", "29", "12 Alder St", 29},
		{"900 psi at the rear bibb, 12 Alder St", "90", "12 Alder St", 90},
		{"elm 66 rear", "9 Elm Ct", "9 Elm Ct", 66},
	} {
		f := p.Parse(tt.text, intents.Context{Sites: []string{"123 Elm St", "9 Elm Ct"}})
		if len(f.Unclear) != 1 {
			t.Fatalf("%q asks %v", tt.text, f.Unclear)
		}
		f, ok := p.Answered(tt.text, intents.Context{}, f.Unclear[0], tt.answer)
		v := f.Visit(assess.Date{Year: 2026, Month: 6, Day: 15})
		if !ok || f.Site != tt.site || len(f.Unclear) != 0 || len(v.Readings) != 1 || v.Readings[0].PSI != tt.psi {
			t.Errorf("%q answered by %q: %v %+v", tt.text, tt.answer, ok, f)
		}
	}
}

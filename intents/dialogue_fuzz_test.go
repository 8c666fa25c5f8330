package intents_test

import (
	"slices"
	"testing"

	"lazyhand/assess"
	"lazyhand/intents"
)

// Whatever is said in a dialogue: an answer is one that was offered, an
// amendment is of a statement that was told, and a house filled in is on record.
func FuzzDialogue(f *testing.F) {
	for _, s := range []string{"the first", "9", "no", "actually 81", "81 not 91", "rear, not front", "elm: 66 rear", "at 1187: 92 rear", "perdón, eran 81", "*81", "la de atrás", "", "\n> elm\n66", "elm st 66 rear", "<@U1> elm 66 &amp; 70", "0A0d", "sorry, 3 weeks", "62 and", "turned it down", "still dripping",
		"there isnt one", "gauge on the laundry", "is there a tank", "how many prvs this year", "which houses have no tank", "prv bad?", "new one in 2", "50/50"} {
		f.Add(s)
	}
	p, err := intents.New()
	if err != nil {
		f.Fatal(err)
	}
	told := report(assess.Reading{PSI: 91, Point: assess.FrontBibb}, assess.Symptom{Symptom: assess.Leak}, assess.Reading{PSI: 66, Point: assess.RearBibb})
	question := &intents.Unclear{Span: "elm", MightBe: []string{"123 Elm St", "9 Elm Ct"}, Ask: "Which one?"}
	sites := []string{"123 Elm St", "1187 Oak Grove Rd"}
	f.Fuzz(func(t *testing.T, text string) {
		if len(text) > 500 {
			return
		}
		if a := p.Parse(text, intents.Context{Question: question}).Answer; a != "" && a != "no" && !slices.Contains(question.MightBe, a) {
			t.Errorf("answer %q was not offered", a)
		}
		for _, a := range p.Parse(text, intents.Context{Told: told}).Amends {
			if a.Of >= len(told.Statements) {
				t.Errorf("amends statement %d of %d", a.Of, len(told.Statements))
			} else if a.Of >= 0 && a.Amend(told.Statements[a.Of]) == told.Statements[a.Of] {
				t.Errorf("%+v changes nothing", a)
			}
		}
		if plan := report(assess.Plan{Action: assess.Recheck}); len(p.Parse(text, intents.Context{Told: plan}).Amends) > 1 {
			t.Error("one plan is amended twice")
		}
		p.GoesOn(text, intents.Context{}, assess.PRV, p.Parse(text, intents.Context{}))
		c := intents.Context{Site: "12 Alder St", Tap: assess.Laundry}
		plain := p.Parse(text, c)
		p.GaugeAt(text, c)
		p.HeaterTurned(text, c)
		p.ScrewTurned(text, c, plain)
		p.CleanedStrainer("strainer is plugged", text, c, plain)
		p.Drips(text, *told, plain)
		p.MayDrip(text)
		p.ToldThere(text)
		p.Meant(text, []assess.Item{assess.PRV, assess.ExpansionTank})
		p.Names(text)
		p.Parse(text, intents.Context{Sites: sites})
		p.Answered(text, intents.Context{}, *question, "9 Elm Ct")
		intents.MayAmend(text)
	})
}

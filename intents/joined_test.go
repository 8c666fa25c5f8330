package intents_test

import (
	"math/rand/v2"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"lazyhand/assess"
	"lazyhand/intents"
)

// A note joins what short messages tell one by one, and each part means in it what it means
// alone. The parts are labelled messages that are read right, of a statement or two, that
// neither lean on what stands beside them nor lend it anything: at most one of them tells
// readings, and no two speak of the same thing.
func TestPartsOfANoteMeanWhatTheyMeanAlone(t *testing.T) {
	const notes, floor = 1500, 0.99 // raised, never lowered
	p := newParser(t)
	parts := standing(t, p)
	if len(parts) < 300 {
		t.Fatalf("only %d messages can be part of a note", len(parts))
	}
	r := rand.New(rand.NewPCG(7, 11))
	var s score
	for n := range notes {
		l := joined(r, parts, []string{". ", "\n", "; ", "\n- "}[n%4])
		if !s.add(t, l.Frame, p.Parse(l.Text, intents.Context{})) && testing.Verbose() {
			t.Logf("%q", l.Text)
		}
	}
	t.Logf("%d notes, %.2f %% mean what their parts mean, %d wrong pressures", s.messages, 100*s.share(), s.wrong)
	if s.share() < floor {
		t.Errorf("%.4f of the notes mean what their parts mean, want at least %.4f", s.share(), floor)
	}
}

// leaning are words by which a clause speaks of its neighbours, or they of it.
var leaning = strings.Fields("it its that this these those they them one ones same both all each again too also still now then " +
	"was were had before after since until while when if but because so first last second next other another ditto here there " +
	"he she his her him who said says yes no not nothing everything today morning visit and or with eso esta este todo ahora " +
	"antes despues era estaba y con ya sin lo la los las new old off on open shut running")

// standing are the messages that can be part of a note.
func standing(t *testing.T, p *intents.Parser) (parts []labelled) {
	leans := map[string]bool{}
	for _, w := range leaning {
		leans[w] = true
	}
	files := corpusFiles(t)
	for _, folder := range []string{"wordings", "rarer"} {
		more, err := filepath.Glob("../testdata/intents/" + folder + "/*.jsonl")
		if err != nil {
			t.Fatal(err)
		}
		files = append(files, more...)
	}
	for _, file := range files {
		for _, l := range readCorpus(t, file) {
			if l.Frame.Site != "" || len(l.Frame.Statements) > 2 || strings.ContainsAny(l.Text, "\n?:\"&<>~*") || len(l.Text) > 90 {
				continue
			}
			alone := true
			for _, w := range strings.FieldsFunc(strings.ToLower(l.Text), func(c rune) bool { return strings.ContainsRune(" ,.;!/-()", c) }) {
				alone = alone && !leans[w]
			}
			var s score
			if alone && topics(l) != nil && s.add(t, l.Frame, p.Parse(l.Text, intents.Context{})) {
				l.Text = strings.TrimRight(l.Text, " .;,")
				parts = append(parts, l)
			}
		}
	}
	return parts
}

// topics are what a message speaks of, none for what cannot be part of a note.
func topics(l labelled) (out []string) {
	for _, st := range l.Frame.Statements {
		switch s := st.(type) {
		case assess.Reading:
			if s.Point == "" || s.When != "" {
				return nil // it would borrow from a neighbour
			}
			out = append(out, "reading")
		case assess.Equipment:
			out = append(out, string(s.Item))
		case assess.Symptom:
			out = append(out, "symptom")
		case assess.Plan:
			out = append(out, "plan")
			switch s.Action {
			case assess.InstallTank, assess.ReplaceTank:
				out = append(out, "expansion_tank")
			case assess.ReplacePRV, assess.SetPRV:
				out = append(out, "prv")
			}
		default:
			return nil
		}
	}
	return out
}

// joined makes a note of three parts.
func joined(r *rand.Rand, parts []labelled, by string) (note labelled) {
	var taken, texts []string
	for tries := 0; len(texts) < 3; tries++ {
		if tries%100 == 99 { // nothing goes with what was picked
			taken, texts, note = nil, nil, labelled{}
		}
		l := parts[r.IntN(len(parts))]
		about := topics(l)
		if len(texts) > 0 && l.Lang != note.Lang || slices.ContainsFunc(about, func(x string) bool { return slices.Contains(taken, x) }) {
			continue
		}
		taken, note.Lang = append(taken, about...), l.Lang
		texts = append(texts, l.Text)
		note.Frame.Statements = append(note.Frame.Statements, l.Frame.Statements...)
	}
	note.Text = strings.Join(texts, by)
	return note
}

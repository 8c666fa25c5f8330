package intents_test

import (
	"strings"
	"testing"

	"lazyhand/intents"
)

func newParser(t testing.TB) *intents.Parser {
	t.Helper()
	p, err := intents.New()
	if err != nil {
		t.Fatal(err)
	}
	return p
}

// An everyday message: the target is 25 µs on one core.
func BenchmarkEverydayMessage(b *testing.B) {
	p := newParser(b)
	b.ReportAllocs()
	for b.Loop() {
		p.Parse("92 rear tap, heater idle, 123 Elm", intents.Context{})
	}
}

// Every everyday message of the labelled sample, one after the other.
func BenchmarkEverydayCorpus(b *testing.B) {
	p := newParser(b)
	var texts []string
	for _, l := range readCorpus(b, "../testdata/intents/dev.jsonl") {
		if l.Part == "everyday" {
			texts = append(texts, l.Text)
		}
	}
	b.ReportAllocs()
	i := 0
	for b.Loop() {
		p.Parse(texts[i%len(texts)], intents.Context{})
		i++
	}
}

const visitNote = "Visited 12 Sorrel Way at 9:15. Kitchen 63, bath lav 62, laundry 63, street at the meter 109. Pilot was out for all of it. " +
	"PRV from 2014 is fine, tank is fine. Heater is a 40 gal gas from 2005, never flushed. No leaks, no hammer. Recheck in 6 months.\n"

// A visit note of about 2,000 characters, and ones two and four times as long:
// the time must grow no faster than the note.
func BenchmarkVisitNote(b *testing.B) {
	p := newParser(b)
	for _, n := range []int{8, 16, 32} {
		text := visitNote + strings.Repeat(strings.ReplaceAll(visitNote, "12 Sorrel Way", "the house"), n-1)
		b.Run(strings.Repeat("x", n/8), func(b *testing.B) {
			b.SetBytes(int64(len(text)))
			b.ReportAllocs()
			for b.Loop() {
				p.Parse(text, intents.Context{})
			}
		})
	}
}

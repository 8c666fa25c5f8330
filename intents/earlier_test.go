package intents_test

import (
	"testing"

	"lazyhand/assess"
	"lazyhand/intents"
)

// A reading told late belongs to the day on which it was taken. Today is Monday,
// 2026-06-15.
func TestReadingsOfAnEarlierDay(t *testing.T) {
	p := newParser(t)
	for text, day := range map[string]string{
		"yesterday at 123 Elm St: 88 rear bib":               "2026-06-14",
		"ayer 88 en la llave de atras, 123 Elm St":           "2026-06-14",
		"antier 88 en la llave de atras, 123 Elm St":         "2026-06-13",
		"forgot to send this friday, 88 rear bib":            "2026-06-12",
		"from last thursday, 88 rear bib, 123 Elm St":        "2026-06-11",
		"3 days ago I got 88 at the rear bib, forgot to log": "2026-06-12",
		"took this on 6/12, 88 rear bib, 123 Elm St":         "2026-06-12",
		"88 rear bib, 123 Elm St":                            "",
		"88 rear bib, leaked since yesterday":                "",
		"88 rear bib, recheck friday":                        "",
		"88 rear bib today, yesterday it was raining":        "",
	} {
		f := p.Parse(text, intents.Context{Today: assess.Date{Year: 2026, Month: 6, Day: 15}})
		got := ""
		if !f.Date.IsZero() {
			got = f.Date.String()
		}
		if got != day {
			t.Errorf("%q: taken on %q, want %q", text, got, day)
		}
	}
}

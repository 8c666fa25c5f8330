package main

import (
	"strings"
	"testing"
	"time"

	"lazyhand/assess"
	"lazyhand/bot/practice"
	"lazyhand/intents"
)

func TestTheDemonstrationIsUnderstoodToTheLastWord(t *testing.T) {
	parser, err := intents.New()
	if err != nil {
		t.Fatal(err)
	}
	now := time.Date(2026, 6, 15, 9, 0, 0, 0, time.UTC)
	past := demoPast(now)
	for i, r := range append(past, demoToday()...) {
		f := parser.Parse(r.text, intents.Context{Today: assess.DateOf(now)})
		readings := len(f.Visit(assess.DateOf(now)).Readings)
		if f.Site == "" && len(f.Asks()) == 0 || len(f.Unclear) > 0 || readings == 0 && len(f.Asks()) == 0 {
			t.Errorf("%q: %+v", r.text, f)
		}
		if i < len(past) && (!strings.Contains(strings.ToLower(r.text), strings.ToLower(f.Site)) || readings != 1) {
			t.Errorf("%q is read as %+v", r.text, f)
		}
		if i < len(past) && !r.at.Before(now) {
			t.Errorf("%q is of %v, which is not past", r.text, r.at)
		}
		if i > 0 && i < len(past) && r.at.Before(past[i-1].at.Add(-24*time.Hour)) {
			t.Errorf("%q is out of order", r.text)
		}
	}
}

// By day and by night: the shop's quiet hours hold no alert of it back.
func TestTheDemonstrationShowsDriftsAndAlertsAtOnce(t *testing.T) {
	for name, hour := range map[string]int{"by day": 10, "by night": 22} {
		t.Run(name, func(t *testing.T) {
			began := time.Now()
			start := time.Date(began.Year(), began.Month(), began.Day(), hour, 0, 0, 0, time.UTC)
			demonstrates(t, func() time.Time { return start.Add(time.Since(began)) })
		})
	}
}

func demonstrates(t *testing.T, now func() time.Time) {
	w, stop := practisingAt(t, now, 100*time.Millisecond)
	said := func(channel, words string) func() bool {
		return func() bool {
			for _, m := range w.Messages(channel) {
				if m.AppID != "" && strings.Contains(m.Text, words) {
					return true
				}
			}
			return false
		}
	}
	for _, want := range []struct{ channel, words string }{
		{"field", "14 Harbor View Ln"},
		{"dispatch", "14 Harbor View Ln"}, // out of the past
		{"dispatch", "33 Tamarack Ct"},
	} {
		if !w.Wait(time.Minute, said(want.channel, want.words)) {
			var all []string
			for _, m := range w.Messages(want.channel) {
				all = append(all, m.Text)
			}
			t.Errorf("#%s never hears of %s:\n%s", want.channel, want.words, strings.Join(all, "\n"))
		}
	}
	// A week on, the team has its summary.
	if err := w.AdvanceTo(practice.NextMonday(w.Now()).Add(10 * 24 * time.Hour)); err != nil {
		t.Fatal(err)
	}
	if !w.Wait(20*time.Second, func() bool { return len(w.Messages("team")) > 0 }) {
		t.Error("the team hears nothing")
	}
	if err := stop(); err != nil {
		t.Error(err)
	}
}

package intents_test

import (
	"os"
	"slices"
	"strings"
	"testing"

	"lazyhand/assess"
	"lazyhand/intents"
)

// pressuresOf returns what a frame tells as measured, and where, in order.
func pressuresOf(f intents.Frame) []assess.Reading {
	var out []assess.Reading
	for _, s := range f.Statements {
		if r, ok := s.(assess.Reading); ok {
			out = append(out, assess.Reading{PSI: r.PSI, Point: r.Point})
		}
	}
	slices.SortFunc(out, func(a, b assess.Reading) int {
		if a.PSI != b.PSI {
			return int(10 * (a.PSI - b.PSI))
		}
		return strings.Compare(string(a.Point), string(b.Point))
	})
	return out
}

// reports returns the labelled messages that tell a pressure and ask nothing.
func reports(t *testing.T) []labelled {
	t.Helper()
	var out []labelled
	for _, file := range corpusFiles(t) {
		for _, l := range readCorpus(t, file) {
			asks := slices.ContainsFunc(l.Frame.Statements, func(s assess.Statement) bool { _, ok := s.(intents.Ask); return ok })
			if !asks && len(l.Frame.Unclear) == 0 && !strings.Contains(l.Text, "?") && len(pressuresOf(l.Frame)) > 0 {
				out = append(out, l)
			}
		}
	}
	return out
}

// Whatever a crew says beside a report, the report's pressures stay what they were: each line
// of testdata/intents/asides.txt is put before and behind other people's messages. A few may
// fail, since a number behind a comma may be one of the tap before it.
func TestTalkChangesNoReading(t *testing.T) {
	b, err := os.ReadFile("../testdata/intents/asides.txt")
	if err != nil {
		t.Fatal(err)
	}
	p, all := newParser(t), reports(t)
	each := 12
	if testing.Short() {
		each = 2
	}
	tried, changed := 0, 0
	for n, aside := range strings.Split(string(b), "\n") {
		if aside == "" || strings.HasPrefix(aside, "#") {
			continue
		}
		for k := range each {
			l := all[(n*61+k*997)%len(all)]
			told := strings.TrimSpace(l.Text)
			joined := [...]string{
				aside + ". " + told, strings.TrimSuffix(told, ".") + ". " + aside, told + "\n" + aside, strings.TrimSuffix(told, ".") + ", " + strings.ToLower(aside),
			}[(n+k)%4]
			tried++
			if got, want := pressuresOf(p.Parse(joined, l.Context)), pressuresOf(p.Parse(told, l.Context)); !slices.Equal(got, want) {
				changed++
				t.Logf("%q\n got %v\nwant %v", joined, got, want)
			}
		}
	}
	if changed > tried/100 {
		t.Errorf("%d of %d messages were read with other pressures beside a remark", changed, tried)
	}
}

package intents

import (
	"fmt"
	"os"
	"slices"
	"strings"
	"testing"

	"lazyhand/assess"
)

// TestSays reads short messages and compares the symptoms, plans and questions
// found with those that testdata/intents/says.txt lists; other statements may stand
// beside them, save in chatter.
func TestSays(t *testing.T) {
	data, err := os.ReadFile("../testdata/intents/says.txt")
	if err != nil {
		t.Fatal(err)
	}
	p, err := New()
	if err != nil {
		t.Fatal(err)
	}
	n := 0
	for line := range strings.Lines(string(data)) {
		text, gives, ok := strings.Cut(strings.TrimSpace(line), " =>")
		if !ok || strings.HasPrefix(text, "#") {
			continue
		}
		n++
		want := strings.Fields(gives)
		got := saidIn(p.Parse(text, Context{}))
		if !slices.Equal(got, want) {
			t.Errorf("%q gives %v, want %v", text, got, want)
		}
	}
	if n < 100 {
		t.Errorf("only %d messages read", n)
	}
}

// saidIn writes the symptoms, plans and questions of a frame as codes, in order.
func saidIn(f Frame) []string {
	days := func(d *int) string {
		if d == nil {
			return ""
		}
		return fmt.Sprintf("@%d", *d)
	}
	out := []string{}
	for _, s := range f.Statements {
		switch s := s.(type) {
		case assess.Symptom:
			if s.Absent {
				out = append(out, "sym:-"+string(s.Symptom))
			} else {
				out = append(out, "sym:"+string(s.Symptom))
			}
		case assess.Plan:
			out = append(out, "plan:"+string(s.Action)+days(s.InDays))
		case Ask:
			if s.About == AskNone {
				out = append(out, "none")
			} else {
				out = append(out, "ask:"+string(s.About)+days(s.InDays))
			}
		}
	}
	slices.Sort(out)
	return out
}

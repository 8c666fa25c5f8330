package intents

import (
	"fmt"
	"sort"
	"strings"
	"testing"

	"lazyhand/assess"
)

// inBrief writes a frame on one line, so that a table of messages stays readable:
// "77 Elm | 77 rear_bibb idle; set_prv >60; plan recheck 7".
func inBrief(f Frame) string {
	var all []string
	num := func(v float64) string { return fmt.Sprintf("%g", v) }
	for _, s := range f.Statements {
		var w []string
		add := func(format string, a ...any) { w = append(w, fmt.Sprintf(format, a...)) }
		switch x := s.(type) {
		case assess.Reading:
			add("%s", num(x.PSI))
			for _, v := range []string{string(x.Point), string(x.Heater), string(x.Flow), string(x.When)} {
				if v != "" {
					add("%s", v)
				}
			}
			if x.Peak {
				add("peak")
			}
		case assess.Symptom:
			if x.Absent {
				add("no")
			}
			add("%s", x.Symptom)
		case assess.Equipment:
			add("%s:", x.Item)
			if x.Present != nil && !*x.Present {
				add("none")
			}
			if x.InstalledYear != nil {
				add("%d", *x.InstalledYear)
			}
			if x.AgeUnknown {
				add("age?")
			}
			if x.SizeGal != nil {
				add("%sgal", num(*x.SizeGal))
			}
			if x.Fuel != "" {
				add("%s", x.Fuel)
			}
			if x.SettingPSI != nil {
				add("at %s", num(*x.SettingPSI))
			}
			if x.SetpointF != nil {
				add("%sF", num(float64(*x.SetpointF)))
			}
			if x.Material != "" {
				add("%s", x.Material)
			}
			if x.Condition != "" {
				add("%s", x.Condition)
			}
			if x.MaintainedYear != nil {
				add("served %d", *x.MaintainedYear)
			}
		case assess.Work:
			add("%s", x.Action)
			if x.ToPSI != nil {
				add(">%s", num(*x.ToPSI))
			}
			if x.FromPSI != nil {
				add("<%s", num(*x.FromPSI))
			}
		case assess.Plan:
			add("plan %s", x.Action)
			if x.InDays != nil {
				add("%d", *x.InDays)
			}
		case Ask:
			add("ask %s", x.About)
			if x.InDays != nil {
				add("%d", *x.InDays)
			}
			if x.Value != nil {
				add("%s %s %s", num(*x.Value), x.Unit, x.To)
			}
			if x.SizeGal != nil {
				add("%sgal", num(*x.SizeGal))
			}
			if x.PSI != nil {
				add("%spsi", num(*x.PSI))
			}
		}
		all = append(all, strings.Join(w, " "))
	}
	sort.Strings(all)
	if len(f.Unclear) > 0 {
		all = append(all, "unclear")
	}
	out := strings.Join(all, "; ")
	if f.Site != "" {
		out = f.Site + " | " + out
	}
	return out
}

// readSpanish checks a table of messages against what they say in brief.
func readSpanish(t *testing.T, table []struct{ text, want string }) {
	t.Helper()
	p, err := New()
	if err != nil {
		t.Fatal(err)
	}
	for _, c := range table {
		if got := inBrief(p.Parse(c.text, Context{})); got != c.want {
			t.Errorf("%q\n got %s\nwant %s", c.text, got, c.want)
		}
	}
}

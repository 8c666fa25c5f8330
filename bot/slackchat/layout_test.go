package slackchat

import (
	"encoding/json"
	"path/filepath"
	"strings"
	"testing"

	"github.com/santhosh-tekuri/jsonschema/v6"
	"github.com/slack-go/slack"
	"pgregory.net/rapid"

	"lazyhand/bot/desk"
	"lazyhand/bot/practice"
)

// bodies are posts of every shape and size.
func bodies() *rapid.Generator[desk.Body] {
	text := rapid.OneOf(rapid.StringMatching(`[a-zA-Z0-9 <>&@#!*_~|]{1,60}`), rapid.StringMatching(`[á-ü–“”😀 ]{1,40}`), rapid.StringOfN(rapid.RuneFrom([]rune("abc <&")), 300, 3000, -1))
	return rapid.Custom(func(t *rapid.T) desk.Body {
		lines := rapid.SliceOfN(text, 0, 40)
		b := desk.Body{Lead: text.Draw(t, "lead"), Heard: rapid.OneOf(rapid.Just(""), text).Draw(t, "heard"), Facts: lines.Draw(t, "facts"), Next: lines.Draw(t, "next"), Cautions: lines.Draw(t, "cautions")}
		for range rapid.IntRange(0, 60).Draw(t, "buttons") {
			b.Buttons = append(b.Buttons, desk.Button{Name: "done", Label: text.Draw(t, "label"), Value: rapid.StringMatching(`[0-9 ]{1,20}`).Draw(t, "value")})
		}
		return b
	})
}

func compile(t *testing.T, name string) *jsonschema.Schema {
	s, err := jsonschema.NewCompiler().Compile(filepath.Join("..", "..", "testdata", "schema", name+".schema.json"))
	if err != nil {
		t.Fatal(err)
	}
	return s
}

// Every post keeps to the platform's limits, and to the schema made from the
// platform's own types.
func TestEveryPostKeepsToTheLimits(t *testing.T) {
	s := compile(t, "message-blocks")
	rapid.Check(t, func(t *rapid.T) {
		b := fit(bodies().Draw(t, "body"), limit("message.text"), &english)
		raw, err := json.Marshal(layOut(b, &english))
		if err != nil {
			t.Fatal(err)
		}
		if problems := practice.CheckMessage(Escape(spoken(b, &english)), raw); len(problems) > 0 {
			t.Fatalf("%+v\n%.2000s", problems, raw)
		}
		v, err := jsonschema.UnmarshalJSON(strings.NewReader(string(raw)))
		if err != nil {
			t.Fatal(err)
		}
		if err := s.Validate(v); err != nil {
			t.Fatalf("%.3000v\n%.2000s", err.Error(), raw)
		}
	})
}

// What decides and what can hurt is said whatever else is left out.
func TestShorteningKeepsTheLeadAndACaution(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		whole := bodies().Draw(t, "body")
		b := fit(whole, 1000, &spanish)
		if n := len([]rune(Escape(spoken(b, &spanish)))); n > 1000 {
			t.Fatalf("%d characters", n)
		}
		if b.Lead == "" || len(whole.Cautions) > 0 && len(b.Cautions) == 0 {
			t.Fatalf("from %+v\nto %+v", whole, b)
		}
	})
}

// Every form keeps to the limits and to the schema, in both languages.
func TestEveryFormKeepsToTheLimits(t *testing.T) {
	s := compile(t, "modal-view")
	from := origin{place: place{Channel: "C1", Thread: "1764072000.000100"}, Button: "correct", Value: "12345", TS: "1764072000.000100"}
	for _, lang := range []string{"en", "es"} {
		w := phrasesIn(lang)
		for _, v := range []slack.ModalViewRequest{
			reportForm(w, from), textForm(formCorrect, w.CorrectTitle, w, from, strings.Repeat("é<", 3000)), loadingForm(formCorrect, w.CorrectTitle, w, from),
		} {
			raw, err := json.Marshal(v)
			if err != nil {
				t.Fatal(err)
			}
			if problems := practice.CheckView(raw); len(problems) > 0 {
				t.Errorf("%s %s: %+v", lang, v.CallbackID, problems)
			}
			x, err := jsonschema.UnmarshalJSON(strings.NewReader(string(raw)))
			if err != nil {
				t.Fatal(err)
			}
			if err := s.Validate(x); err != nil {
				t.Errorf("%s %s: %v\n%s", lang, v.CallbackID, err, raw)
			}
			if got := originOf(v.PrivateMetadata); got != from {
				t.Errorf("the form remembers %+v", got)
			}
		}
	}
}

// The table of limits says no more than the practice workspace's own, where
// both name one.
func TestLimitsAreThoseOfThePracticeWorkspace(t *testing.T) {
	seen := map[string]bool{}
	for _, l := range Limits() {
		if seen[l.What] || l.Most <= 0 || l.Source == "" {
			t.Errorf("%+v", l)
		}
		seen[l.What] = true
	}
}

// A home tab keeps to the limits and to the schema, however long its lines.
func TestTheHomeTabKeepsToTheLimits(t *testing.T) {
	s := compile(t, "home-view")
	long := strings.Repeat("12 Alder St <!here> ", 500)
	sec := desk.Section{Title: long, Lines: []string{long, "x", ""}}
	for _, h := range []desk.Home{{}, {Alerts: sec, Due: sec, FollowUps: sec, Reports: sec, Worst: desk.Section{Title: "none", Empty: long}}} {
		raw, err := json.Marshal(homeView(h, phrasesIn("es"), "1764072000.000100"))
		if err != nil {
			t.Fatal(err)
		}
		if problems := practice.CheckView(raw); len(problems) > 0 {
			t.Errorf("%+v", problems)
		}
		v, err := jsonschema.UnmarshalJSON(strings.NewReader(string(raw)))
		if err != nil {
			t.Fatal(err)
		}
		if err := s.Validate(v); err != nil {
			t.Errorf("%.3000s", err.Error())
		}
	}
}

// A chart goes to the platform only when it keeps to the platform's limits.
func TestChartsThatDoNotFitAreNotSent(t *testing.T) {
	good := func() *desk.Chart {
		return &desk.Chart{Title: strings.Repeat("x", 80), Categories: []string{"a", "b"}, Series: []desk.Series{{Name: "p", Values: []float64{1, 2}}}}
	}
	tests := map[string]func(c *desk.Chart){
		"":                     func(*desk.Chart) {},
		"no days":              func(c *desk.Chart) { c.Categories = nil },
		"the same day twice":   func(c *desk.Chart) { c.Categories = []string{"a", "a"} },
		"a long day":           func(c *desk.Chart) { c.Categories[0] = strings.Repeat("x", 21) },
		"no series":            func(c *desk.Chart) { c.Series = nil },
		"a series twice":       func(c *desk.Chart) { c.Series = append(c.Series, c.Series[0]) },
		"a value is missing":   func(c *desk.Chart) { c.Series[0].Values = []float64{1} },
		"a series has no name": func(c *desk.Chart) { c.Series[0].Name = "" },
	}
	for what, spoil := range tests {
		c := good()
		spoil(c)
		b := chartBlock(c)
		if (b != nil) != (what == "") {
			t.Errorf("%q: %v", what, b)
		}
		if b == nil {
			continue
		}
		raw, err := json.Marshal([]slack.Block{b})
		if err != nil {
			t.Fatal(err)
		}
		if problems := practice.CheckMessage("x", raw); len(problems) > 0 {
			t.Errorf("%+v\n%s", problems, raw)
		}
	}
	if chartBlock(nil) != nil {
		t.Error("a chart of nothing")
	}
}

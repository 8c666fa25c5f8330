package intents_test

import (
	"fmt"
	"os"
	"regexp"
	"strings"
	"testing"

	"lazyhand/intents"
)

// parting is what parts the clauses of a message.
var parting = regexp.MustCompile(`,\s+|[.;]\s+|\n+`)

// forms are ways to write the same clauses one after the other.
var forms = map[string]func(clauses []string) string{
	"sentences":  func(c []string) string { return strings.Join(c, ". ") },
	"semicolons": func(c []string) string { return strings.Join(c, "; ") },
	"commas":     func(c []string) string { return strings.Join(c, ", ") },
	"dashes":     func(c []string) string { return strings.Join(c, " - ") },
	"slashes":    func(c []string) string { return strings.Join(c, " / ") },
	"bars":       func(c []string) string { return strings.Join(c, " | ") },
	"dots":       func(c []string) string { return strings.Join(c, "... ") },
	"lines":      func(c []string) string { return strings.Join(c, "\n") },
	"bullets":    func(c []string) string { return "- " + strings.Join(c, "\n- ") },
	"ands":       func(c []string) string { return strings.Join(c, ", and ") },
	"numbered": func(c []string) string {
		var b strings.Builder
		for n, s := range c {
			fmt.Fprintf(&b, "%d) %s ", n+1, s)
		}
		return b.String()
	},
}

// Who writes the same clauses as a list, in one breath or as sentences means the same. The
// messages are those that mean what their clauses mean one by one.
func TestTheSameClausesMeanTheSameInEveryForm(t *testing.T) {
	const floor = 0.99 // raised, never lowered
	p := newParser(t)
	texts, want := apart(t, p)
	if len(texts) < 800 {
		t.Fatalf("only %d messages mean what their clauses mean", len(texts))
	}
	for name, form := range forms {
		var s score
		for n, clauses := range texts {
			text := form(clauses)
			if !s.add(t, want[n], p.Parse(text, intents.Context{})) && testing.Verbose() {
				t.Logf("%q", text)
			}
		}
		t.Logf("%s: %.2f %% of %d mean the same, %d wrong pressures", name, 100*s.share(), s.messages, s.wrong)
		if s.share() < floor {
			t.Errorf("as %s only %.4f mean the same, want at least %.4f", name, s.share(), floor)
		}
	}
}

// apart returns the clauses of labelled messages that are read right whole and clause by
// clause, and their frames.
func apart(t *testing.T, p *intents.Parser) (texts [][]string, want []intents.Frame) {
	t.Helper()
	for _, file := range corpusFiles(t) {
		for _, l := range readCorpus(t, file) {
			if l.Lang == "es" || strings.ContainsAny(l.Text, "?><~\"“:") || len(l.Text) > 400 || l.Context.Site != "" {
				continue
			}
			clauses := parting.Split(strings.TrimRight(l.Text, " .;,\n"), -1)
			if len(clauses) < 2 {
				continue
			}
			var s, one score
			var sum intents.Frame
			for _, c := range clauses {
				f := p.Parse(c, intents.Context{})
				if len(f.Unclear) > 0 || f.Site != "" && sum.Site != "" {
					sum.Site = "several"
					break
				}
				if f.Site != "" {
					sum.Site = f.Site
				}
				for _, st := range f.Statements {
					if a, ok := st.(intents.Ask); !ok || a.About != intents.AskNone {
						sum.Statements = append(sum.Statements, st)
					}
				}
			}
			if len(sum.Statements) > 0 && s.add(t, l.Frame, sum) && one.add(t, l.Frame, p.Parse(l.Text, intents.Context{})) {
				texts, want = append(texts, clauses), append(want, l.Frame)
			}
		}
	}
	return texts, want
}

// Talk of other things beside a report changes nothing of it: the lines of
// testdata/intents/asides.txt that say nothing by themselves are joined to reports.
func TestTalkChangesNoReport(t *testing.T) {
	b, err := os.ReadFile("../testdata/intents/asides.txt")
	if err != nil {
		t.Fatal(err)
	}
	const floor = 0.985
	p, all := newParser(t), reports(t)
	each := 10
	if testing.Short() {
		each = 2
	}
	var s score
	for n, aside := range strings.Split(string(b), "\n") {
		if aside == "" || strings.HasPrefix(aside, "#") || !nothing(p.Parse(aside, intents.Context{})) {
			continue
		}
		for k := range each {
			l := all[(n*67+k*991)%len(all)]
			told := strings.TrimRight(strings.TrimSpace(l.Text), ".")
			text := [...]string{aside + ". " + told, told + ". " + aside, told + "\n" + aside, aside + "\n" + told, told + "; " + aside}[(n+k)%5]
			if !s.add(t, p.Parse(told, l.Context), p.Parse(text, l.Context)) && testing.Verbose() {
				t.Logf("%q", text)
			}
		}
	}
	t.Logf("%.2f %% of %d reports are the same beside a remark, %d wrong pressures", 100*s.share(), s.messages, s.wrong)
	if s.share() < floor {
		t.Errorf("%.4f of the reports are the same beside a remark, want at least %.4f", s.share(), floor)
	}
}

// nothing tells whether a frame tells and asks nothing.
func nothing(f intents.Frame) bool {
	if f.Site != "" || len(f.Unclear) > 0 || len(f.Statements) > 1 {
		return false
	}
	if len(f.Statements) == 0 {
		return true
	}
	a, ok := f.Statements[0].(intents.Ask)
	return ok && a.About == intents.AskNone
}

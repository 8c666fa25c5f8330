package intents_test

import (
	"math"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"lazyhand/assess"
	"lazyhand/intents"
)

// change is a way of writing a message that leaves its meaning as it is, or changes it
// in a way known beforehand.
type change struct {
	name  string
	floor float64 // the share of the messages read right that stay so; raised, never lowered
	// of returns the changed message with its label; false when it cannot be made.
	of func(l labelled, n int) (labelled, bool)
}

// A message is read by what it says, not by how it was typed: what is read right stays
// right in small letters or capitals, without apostrophes or commas, behind a greeting,
// before a word of thanks, with another pressure or at another street, and what it says
// of one thing stays so beside a fact of another.
func TestReadingIsSteady(t *testing.T) {
	p := newParser(t)
	var right []labelled
	for _, file := range corpusFiles(t) {
		for _, l := range readCorpus(t, file) {
			var s score
			if s.add(t, l.Frame, p.Parse(l.Text, l.Context)) {
				right = append(right, l)
			}
		}
	}
	step := 1
	if testing.Short() {
		step = 7
	}
	for _, c := range append(changes, besideFacts(right)...) {
		t.Run(c.name, func(t *testing.T) {
			var s score
			for n := 0; n < len(right); n += step {
				l, ok := c.of(right[n], n)
				if !ok || l.Text == right[n].Text {
					continue
				}
				if !s.add(t, l.Frame, p.Parse(l.Text, l.Context)) && testing.Verbose() {
					t.Logf("%q", l.Text)
				}
			}
			t.Logf("%d messages, %.2f %% stay right", s.messages, 100*s.share())
			if s.messages < 10 {
				t.Fatalf("only %d messages could be changed", s.messages)
			}
			if floor := c.floor; s.share() < floor && !(testing.Short() && s.share() >= floor-0.03) {
				t.Errorf("%.4f stay right, want at least %.4f", s.share(), floor)
			}
		})
	}
}

var changes = []change{
	{"in small letters", 0.995, rewrite(strings.ToLower)},
	{"in capitals", 0.995, func(l labelled, n int) (labelled, bool) {
		if strings.ContainsAny(l.Text, "&<:~") {
			return l, false // capitals would change an escape, a mention, an emoji's code
		}
		return rewrite(strings.ToUpper)(l, n)
	}},
	{"without apostrophes", 0.98, func(l labelled, _ int) (labelled, bool) {
		l.Text = apostrophe.ReplaceAllString(l.Text, "$1$2")
		return l, !strings.ContainsAny(l.Frame.Site, "'’") // it is part of the street's name
	}},
	{"sentences on lines of their own", 0.995, rewrite(func(s string) string { return sentenceEnd.ReplaceAllString(s, "\n$1") })},
	{"dashes for commas", 0.985, rewrite(func(s string) string { return strings.ReplaceAll(s, ", ", " - ") })},
	{"without commas and full stops", 0.89, rewrite(func(s string) string { return stops.ReplaceAllString(s, "$1") })},
	{"behind a greeting", 0.99, func(l labelled, n int) (labelled, bool) {
		greetings := []string{"hey ", "Morning, ", "ok so ", "Update: ", "fyi ", "hello. "}
		if l.Frame.Statements == nil || chatter(l) || quotes(l) {
			return l, false
		}
		l.Text = greetings[n%len(greetings)] + l.Text
		return l, true
	}},
	{"before a word of thanks", 0.99, func(l labelled, n int) (labelled, bool) {
		thanks := []string{" thanks", ". Thanks!", " thx", "\nthanks", ". Done here."}
		text := strings.TrimRight(l.Text, " \n")
		if chatter(l) || strings.HasSuffix(text, "?") {
			return l, false
		}
		l.Text = text + thanks[n%len(thanks)]
		return l, true
	}},
	{"with another pressure", 0.99, anotherPressure},
	{"at another street", 0.995, anotherStreet},
}

var (
	apostrophe  = regexp.MustCompile(`(\pL)['’](\pL)`)
	stops       = regexp.MustCompile(`[.;,]+(\s|$)`)
	sentenceEnd = regexp.MustCompile(`\. +([A-Z])`)
)

// rewrite is a change of the text alone.
func rewrite(f func(string) string) func(labelled, int) (labelled, bool) {
	return func(l labelled, _ int) (labelled, bool) {
		l.Text = f(l.Text)
		return l, true
	}
}

// chatter tells whether a message is not for the bot.
func chatter(l labelled) bool {
	for _, s := range l.Frame.Statements {
		if a, ok := s.(intents.Ask); ok && a.About == intents.AskNone {
			return true
		}
	}
	return false
}

// quotes tells whether a message begins with a line quoted.
func quotes(l labelled) bool {
	return strings.HasPrefix(l.Text, ">") || strings.HasPrefix(l.Text, "&gt;")
}

// anotherPressure puts another number in place of a pressure that stands once in the
// message and is the only one of its size in it.
func anotherPressure(l labelled, n int) (labelled, bool) {
	for i, s := range l.Frame.Statements {
		r, ok := s.(assess.Reading)
		if !ok || r.PSI != math.Trunc(r.PSI) || r.PSI < 35 || r.PSI > 140 {
			continue
		}
		old, other := strconv.Itoa(int(r.PSI)), []float64{-7, -4, -3, -1, 2, 3, 5, 8}[n%8]
		place := regexp.MustCompile(`(^|[^\d.,$#/~-])` + old + `($|[^\d.,%/'-])`)
		put := strconv.Itoa(int(r.PSI + other))
		if strings.Count(l.Text, old) != 1 || strings.Contains(l.Text, put) || !place.MatchString(l.Text) || same(l.Frame, r.PSI) != 1 {
			continue
		}
		l.Text = place.ReplaceAllString(l.Text, "${1}"+put+"${2}")
		l.Frame.Statements = slices.Clone(l.Frame.Statements)
		r.PSI += other
		l.Frame.Statements[i] = r
		return l, true
	}
	return l, false
}

// same counts the readings of one size.
func same(f intents.Frame, psi float64) (n int) {
	for _, s := range f.Statements {
		if r, ok := s.(assess.Reading); ok && r.PSI == psi {
			n++
		}
	}
	return n
}

// anotherStreet puts another street line in place of one that is written in the message
// as the label has it.
func anotherStreet(l labelled, n int) (labelled, bool) {
	streets := [][2]string{
		{"88 Cinnamon Teal Way", "88 Cinnamon Teal Way"}, {"1407 w larkspur", "1407 W Larkspur"}, {"6 Bellweather Ct", "6 Bellweather Ct"},
		{"20311 SE 148th Pl", "20311 SE 148th Pl"}, {"515 Tannery Row Apt 3", "515 Tannery Row Apt 3"}, {"72 Saint Agnes Street", "72 Saint Agnes St"},
		{"930 County Road 44", "930 County Road 44"}, {"3 Old Quarry Rd", "3 Old Quarry Rd"}, {"1160 n Fennimore ave", "1160 N Fennimore Ave"},
		{"2750 Bramblewood Drive", "2750 Bramblewood Dr"},
	}
	at := strings.Index(l.Text, l.Frame.Site)
	end := at + len(l.Frame.Site)
	if l.Frame.Site == "" || at < 0 || followedByStreet.MatchString(l.Text[end:]) {
		return l, false
	}
	s := streets[n%len(streets)]
	l.Text, l.Frame.Site = l.Text[:at]+s[0]+l.Text[end:], s[1]
	return l, true
}

// besideFacts are the changes that put a message of a house beside one that tells a fact
// of another thing and names no house.
func besideFacts(messages []labelled) []change {
	var facts []labelled
	for _, l := range messages {
		if l.Frame.Site == "" && len(l.Text) < 100 && l.Lang == "en" && onlyTells(l) && !subjects(l.Frame)["reading"] && !leansOn.MatchString(l.Text) {
			facts = append(facts, l)
		}
	}
	beside := func(join func(message, fact string) string) func(labelled, int) (labelled, bool) {
		return func(l labelled, n int) (labelled, bool) {
			if l.Frame.Site == "" || len(l.Text) >= 160 || l.Lang != "en" || !onlyTells(l) {
				return l, false
			}
			named := subjects(l.Frame)
			for k := range 40 {
				fact := facts[(n*37+k*101)%len(facts)]
				if of := subjects(fact.Frame); !shares(named, of) && !(of["work"] && named["reading"] && tensed.MatchString(l.Text)) {
					l.Text = join(strings.TrimSpace(l.Text), strings.TrimSpace(fact.Text))
					l.Frame.Statements = slices.Concat(l.Frame.Statements, fact.Frame.Statements)
					return l, true
				}
			}
			return l, false
		}
	}
	return []change{
		{"before a further fact", 0.996, beside(func(message, fact string) string { return stopped(message) + " " + fact })},
		{"behind a further fact", 0.991, beside(func(message, fact string) string { return stopped(fact) + " " + message })},
		{"with a further fact on a line of its own", 0.996, beside(func(message, fact string) string { return message + "\n" + fact })},
	}
}

// leansOn finds words that take their meaning from what stands before them, what would
// lengthen a street line, and lines of their own.
var leansOn = regexp.MustCompile(`(?i)^no,|^(it|its|it's|that|this|there|they|same|nope|yes|and|but|also)\b|\b(ones?|them|another|too|either|still|again|street|st|main)\b|[\n>]`)

// tensed finds words by which a pressure is before or after the work that the same message tells.
var tensed = regexp.MustCompile(`(?i)\b(was|were|now|nw|rn|live|cur|current|currently|present|settled)\b`)

// onlyTells is whether a message tells something, asks nothing and needs no day or record
// to be read.
func onlyTells(l labelled) bool {
	return len(l.Frame.Statements) > 0 && l.Part != "notes" && l.Context.Today.IsZero() && len(l.Context.Sites) == 0 &&
		!slices.ContainsFunc(l.Frame.Statements, func(s assess.Statement) bool { return s.Kind() == "ask" })
}

// subjects are what a message speaks of: two messages of different ones can stand side
// by side.
func subjects(f intents.Frame) map[string]bool {
	named := map[string]bool{}
	of := func(kind string, a assess.Action) {
		named[kind] = true
		for part, subject := range map[string]string{"prv": "prv", "tank": "expansion_tank", "heater": "heater", "leak": "leak"} {
			if strings.Contains(string(a), part) {
				named[subject] = true
			}
		}
	}
	for _, s := range f.Statements {
		switch s := s.(type) {
		case assess.Equipment:
			named[string(s.Item)] = true
		case assess.Symptom:
			named[string(s.Symptom)] = true
		case assess.Work:
			of("work", s.Action)
		case assess.Plan:
			of("plan", s.Action)
		default:
			named[s.Kind()] = true
		}
	}
	return named
}

func shares(a, b map[string]bool) bool {
	for k := range a {
		if b[k] {
			return true
		}
	}
	return false
}

// stopped ends a message as a sentence.
func stopped(s string) string {
	if strings.ContainsAny(s[len(s)-1:], ".!?") {
		return s
	}
	return s + "."
}

// followedByStreet finds what would make the street line longer than its label.
var followedByStreet = regexp.MustCompile(`(?i)^(\w|\s*(street|st|ave|rd|apt|unit|#|dr|drive|ln|[a-z]\w+ [a-z]{2})\b)`)

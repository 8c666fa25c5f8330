package desk

import (
	"cmp"
	"encoding/json"
	"fmt"
	"slices"
	"strings"

	"lazyhand/assess"
	"lazyhand/intents"
	"lazyhand/store"
)

// Kinds of question that the desk asks.
const (
	askUnclear   = "unclear"       // two readings of some words; body: asked
	askNoSite    = store.NoHouse   // which house? body: onStreet, or nothing
	askWhichSite = "which_site"    // which of these houses? body: whichSite
	askReading   = "reading"       // which reading is to be put right? body: asked
	askRight     = "right"         // what is the right wording of the report?
	askElsewhere = "elsewhere"     // not asked aloud: the house was filled in, and another may be named
	askSame      = store.SameHouse // is the new house one on record? body: asked
	askVisitDay  = "visit_day"     // when is the visit? body: ofAlert
	askVisitor   = "visitor"       // who goes? body: ofAlert
	askReason    = "reason"        // why is the alert closed? body: ofAlert
	askHand      = "hand"          // who takes the follow-up? body: ofAlert
)

// whichSite is the body of a question that offers houses on record.
type whichSite struct {
	Sites []int64 `json:"sites"`
	Span  string  `json:"span,omitempty"` // the words of the message that stand for the house
}

// askSite asks for the house of a report that names none.
func (t *turn) askSite(m store.Message) error {
	if err := t.keepQuestion(m, askNoSite, nil); err != nil {
		return err
	}
	if err := t.mark(m, MarkQuestion); err != nil {
		return err
	}
	b := Body{Lead: t.words().WhichHouse}
	var f intents.Frame
	if json.Unmarshal(m.Frame, &f) == nil {
		b.Heard = t.heard(f.Visit(t.dayOf(m)))
	}
	return t.say(b)
}

// atMostOffered is how many houses a question offers.
const atMostOffered = 8

// askWhich asks which of several houses on record is meant.
func (t *turn) askWhich(m store.Message, named assess.Site, found []store.SiteRecord) error {
	var w whichSite
	var buttons []Button
	if len(found) > atMostOffered {
		found = found[:atMostOffered]
	}
	var lines []string
	for i, s := range found {
		w.Sites = append(w.Sites, s.ID)
		line := siteLine(s.Site)
		lines = append(lines, fmt.Sprintf("%d. %s", i+1, line))
		buttons = append(buttons, Button{Name: "site", Label: line, Value: fmt.Sprintf("%d %d", m.ID, s.ID)})
	}
	if err := t.keepQuestion(m, askWhichSite, w); err != nil {
		return err
	}
	if err := t.mark(m, MarkQuestion); err != nil {
		return err
	}
	return t.say(Body{Lead: fmt.Sprintf(t.words().WhichOf, named.Line), Facts: lines, Buttons: buttons})
}

// askUnclear asks what some words mean.
func (t *turn) askUnclear(m store.Message, f intents.Frame) error {
	u := f.Unclear[0]
	if err := t.keepQuestion(m, askUnclear, asked{Unclear: u}); err != nil {
		return err
	}
	if err := t.mark(m, MarkQuestion); err != nil {
		return err
	}
	return t.say(Body{Lead: u.Ask, Buttons: t.offered(m, u)})
}

// offered are the buttons for what some words of a message might be, when one
// of them can be put in their place.
func (t *turn) offered(m store.Message, u intents.Unclear) []Button {
	if len(u.MightBe) < 2 || len(u.MightBe) > atMostOffered {
		return nil
	}
	if _, ok := t.parser.Answered(m.Text, contextOf(t.dayOf(m)), u, u.MightBe[0]); !ok {
		return nil
	}
	labels := slices.Clone(u.MightBe)
	for i, o := range labels {
		labels[i] = cmp.Or(t.words().Option[o], o)
	}
	return picks(m, labels)
}

// picks are the buttons of a question with options.
func picks(m store.Message, options []string) []Button {
	var out []Button
	for i, o := range options {
		out = append(out, Button{"pick", strings.ReplaceAll(o, "_", " "), fmt.Sprintf("%d %d", m.ID, i)})
	}
	return out
}

// keepQuestion keeps a question about m where it is asked: there it is answered,
// whoever said m and wherever.
func (t *turn) keepQuestion(m store.Message, kind string, body any) error {
	raw, err := json.Marshal(body)
	if err != nil {
		return err
	}
	return t.tx.AskQuestion(store.Question{Message: m.ID, Channel: t.m.Channel, Thread: t.m.Thread, Author: t.m.Author, At: t.m.At, Kind: kind, Body: raw})
}

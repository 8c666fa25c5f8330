package desk

import (
	"encoding/json"
	"fmt"

	"lazyhand/assess"
	"lazyhand/intents"
	"lazyhand/store"
)

// Kinds of question that the desk asks.
const (
	askUnclear   = "unclear"    // two readings of some words; body: intents.Unclear
	askNoSite    = "no_site"    // which house?
	askWhichSite = "which_site" // which of these? body: whichSite
)

// whichSite is the body of a question that offers houses on record.
type whichSite struct {
	Sites []int64 `json:"sites"`
}

// act files a frame: the message m says it, site stands for a house not named.
func (t *turn) act(m store.Message, f intents.Frame, site store.SiteRecord, remembered bool) error {
	if f.Site != "" {
		named := assess.Site{Line: f.Site, Town: f.Town, Postcode: f.Postcode}
		found, sure, err := t.resolve(named, len(reports(f)) > 0)
		if err != nil {
			return err
		}
		if !sure {
			return t.askWhich(m, named, found)
		}
		site, remembered = found[0], false
	}
	if len(f.Unclear) > 0 && len(reports(f)) == 0 {
		return t.askUnclear(m, f)
	}
	if site.ID != 0 && !isChatter(f) {
		if err := t.tx.FileUnder(m.ID, site.Named); err != nil {
			return err
		}
	}
	if corrects(f) {
		return t.correct(m, f, site)
	}
	if len(reports(f)) > 0 {
		if site.ID == 0 {
			return t.askSite(m)
		}
		if err := t.report(m, f, site, remembered); err != nil {
			return err
		}
	}
	for i, a := range f.Asks() {
		if err := t.ask(i, a, site); err != nil {
			return err
		}
	}
	return nil
}

// reports returns the statements of a frame that say something about a house.
func reports(f intents.Frame) []assess.Statement {
	var out []assess.Statement
	for _, s := range f.Statements {
		if _, ask := s.(intents.Ask); !ask {
			out = append(out, s)
		}
	}
	return out
}

// resolve finds the house on record that a line names. It opens a record when
// there is none and open is set; sure is false when several fit.
func (t *turn) resolve(named assess.Site, open bool) (sites []store.SiteRecord, sure bool, err error) {
	sites, err = t.tx.SitesLike(named)
	if err != nil {
		return nil, false, err
	}
	switch {
	case len(sites) > 1:
		return sites, false, nil
	case len(sites) == 1:
		r := sites[0]
		if fuller := fill(r.Site, named); fuller != r.Site {
			r.Site = fuller
			if err := t.tx.FillSite(r.ID, fuller); err != nil {
				return nil, false, err
			}
		}
		return []store.SiteRecord{r}, true, nil
	case !open:
		return []store.SiteRecord{{Site: named}}, true, nil
	}
	r, err := t.tx.AddSite(named, t.m.ID)
	return []store.SiteRecord{r}, true, err
}

// fill takes from a fuller spelling of the same house what the record lacks.
func fill(have, named assess.Site) assess.Site {
	if len(named.Line) > len(have.Line) {
		have.Line = named.Line
	}
	if have.Town == "" {
		have.Town = named.Town
	}
	if have.Postcode == "" {
		have.Postcode = named.Postcode
	}
	return have
}

// report keeps what a message says about a house, judges the house anew and
// answers.
func (t *turn) report(m store.Message, f intents.Frame, site store.SiteRecord, remembered bool) error {
	visit := f.Visit(t.day)
	id, err := t.tx.AddReport(store.Report{Message: m.ID, Site: site.Named, Day: visit.Date, At: m.At, Author: m.Author})
	if err != nil {
		return err
	}
	if err := t.remember(site.ID); err != nil {
		return err
	}
	in, err := t.input(site)
	if err != nil {
		return err
	}
	a := assess.Assess(in)
	if err := t.judge(id, f, site, in, a); err != nil {
		return err
	}
	if err := t.plan(m, f, site, a); err != nil {
		return err
	}
	if err := t.settle(m, site, visit, a); err != nil {
		return err
	}
	if err := t.alert(m, site, a); err != nil {
		return err
	}
	if err := t.mark(MarkStored); err != nil {
		return err
	}
	b := t.verdictBody(site, f, a, remembered)
	if len(f.Unclear) > 0 {
		if err := t.keepQuestion(m, askUnclear, f.Unclear[0]); err != nil {
			return err
		}
		b.Next = append([]string{f.Unclear[0].Ask}, b.Next...)
	}
	return t.say(b)
}

// remember notes the house that the person last reported on.
func (t *turn) remember(site int64) error {
	t.person.Site, t.person.SiteAt = site, t.m.At
	return t.tx.KeepPerson(t.person)
}

// input gathers what an assessment of the house may know: its visits, one a
// day, and what the street's other houses show.
func (t *turn) input(site store.SiteRecord) (assess.Input, error) {
	in := assess.Input{Today: t.day, Shop: t.opt.Shop, Lang: t.lang}
	reports, err := t.tx.Reports(site.ID)
	if err != nil {
		return in, err
	}
	t.filed = map[int64]place{}
	for _, r := range reports {
		var f intents.Frame
		if err := json.Unmarshal(r.Frame, &f); err != nil {
			return in, fmt.Errorf("read the report of %s on %s: %w", r.Day, site.Line, err)
		}
		if n := len(in.Visits); n == 0 || in.Visits[n-1].Date != r.Day {
			in.Visits = append(in.Visits, assess.Visit{Date: r.Day})
		}
		v := &in.Visits[len(in.Visits)-1]
		t.filed[r.ID] = place{len(in.Visits) - 1, len(v.Readings)}
		for _, s := range f.Statements {
			v.Add(s)
		}
	}
	in.Neighbours, err = t.tx.StreetReadings(site.Street(), t.day.AddDays(-assess.StreetHistoryDays), site.ID, 50)
	return in, err
}

// askSite asks for the house of a report that names none.
func (t *turn) askSite(m store.Message) error {
	if err := t.keepQuestion(m, askNoSite, nil); err != nil {
		return err
	}
	return t.question(t.words().WhichHouse, nil)
}

// askWhich asks which of several houses on record is meant.
func (t *turn) askWhich(m store.Message, named assess.Site, found []store.SiteRecord) error {
	var w whichSite
	var buttons []Button
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
	b := Body{Lead: fmt.Sprintf(t.words().WhichOf, named.Line), Facts: lines, Buttons: buttons}
	if err := t.mark(MarkQuestion); err != nil {
		return err
	}
	return t.say(b)
}

// askUnclear asks what some words mean.
func (t *turn) askUnclear(m store.Message, f intents.Frame) error {
	u := f.Unclear[0]
	if err := t.keepQuestion(m, askUnclear, u); err != nil {
		return err
	}
	return t.question(u.Ask, nil)
}

func (t *turn) question(lead string, buttons []Button) error {
	if err := t.mark(MarkQuestion); err != nil {
		return err
	}
	return t.say(Body{Lead: lead, Buttons: buttons})
}

func (t *turn) keepQuestion(m store.Message, kind string, body any) error {
	raw, err := json.Marshal(body)
	if err != nil {
		return err
	}
	return t.tx.AskQuestion(store.Question{Message: m.ID, Channel: m.Channel, Thread: m.Thread, Author: m.Author, At: t.m.At, Kind: kind, Body: raw})
}

// siteLine is a house as people read it.
func siteLine(s assess.Site) string {
	line := s.Line
	if s.Town != "" {
		line += ", " + s.Town
	}
	if s.Postcode != "" {
		line += " " + s.Postcode
	}
	return line
}

package desk

import (
	"encoding/json"
	"fmt"
	"slices"
	"strings"

	"lazyhand/assess"
	"lazyhand/intents"
	"lazyhand/store"
)

// What a message says that only goes on from the last ones of its house: "cleaned it", "now 64".

// goingOn reads what is said of "it" as said of the thing that the newest report
// before it on the house in hand speaks of, while that is fresh; went tells whether
// anything is.
func (t *turn) goingOn(f intents.Frame, c intents.Context, site store.SiteRecord) (g intents.Frame, went bool, err error) {
	if site.ID == 0 || !intents.MayGoOn(t.m.Text) {
		return f, false, nil
	}
	list, err := t.toldHere(site)
	if err != nil {
		return f, false, err
	}
	for _, told := range list {
		items := t.parser.Meant(t.m.Text, told.Items())
		if intents.SaysOne(t.m.Text) {
			if items = wanting(told); len(items) == 0 && len(told.Items()) > 0 {
				return f, false, nil // one of what?
			}
		}
		switch len(items) {
		case 0:
		case 1:
			g, went = t.parser.GoesOn(t.m.Text, c, items[0], f)
			return g, went, nil
		default:
			return f, false, nil // it may be any of them
		}
	}
	return f, false, nil
}

// wanting are the things that a report says to be missing or failed: "one" is then one of them.
func wanting(told intents.Frame) (list []assess.Item) {
	for _, s := range told.Statements {
		e, ok := s.(assess.Equipment)
		if ok && (e.Absent() || e.Condition == assess.Failed || e.Condition == assess.Suspect) && !slices.Contains(list, e.Item) {
			list = append(list, e.Item)
		}
	}
	return list
}

// drips reads a few words about a drip as told of the relief valve where that was what dripped.
func (t *turn) drips(f intents.Frame, site store.SiteRecord) (g intents.Frame, told bool, err error) {
	if site.ID == 0 || !t.parser.MayDrip(t.m.Text) {
		return f, false, nil
	}
	list, err := t.toldHere(site)
	if err != nil {
		return f, false, err
	}
	for _, before := range list {
		if len(dripsIn(before)) > 0 {
			g, told = t.parser.Drips(t.m.Text, before, f)
			return g, told, nil
		}
	}
	return f, false, nil
}

// cleaned reads "cleaned it" as told of the strainer that its writer has just named.
func (t *turn) cleaned(f intents.Frame, c intents.Context, site store.SiteRecord) (g intents.Frame, told bool, err error) {
	if site.ID == 0 || !isChatter(f) || !intents.MayGoOn(t.m.Text) {
		return f, false, nil
	}
	before, found, err := t.saidBefore()
	if err != nil || !found {
		return f, false, err
	}
	g, told = t.parser.CleanedStrainer(before, t.m.Text, c, f)
	return g, told, nil
}

// screwTurned reads "turned it down" as told of the regulator, where nothing but pressures of the
// house was told before it.
func (t *turn) screwTurned(f intents.Frame, c intents.Context, site store.SiteRecord) (g intents.Frame, told bool, err error) {
	if site.ID == 0 || len(reports(f)) > 0 {
		return f, false, nil
	}
	if g, told = t.parser.ScrewTurned(t.m.Text, c, f); !told {
		return f, false, nil
	}
	list, err := t.toldHere(site)
	if err != nil {
		return f, false, err
	}
	read := false
	for _, before := range list {
		if len(before.Items()) > 0 && !slices.Equal(before.Items(), []assess.Item{assess.PRV}) {
			return f, false, nil // it may be the heater's dial
		}
		read = read || len(readings(before)) > 0
	}
	return g, read, nil
}

// isThere reads "there isnt one" as said of the thing that the check named last looks for, or that the
// reports before it speak of; and "there is one" also where they say that there is none.
func (t *turn) isThere(f intents.Frame, site store.SiteRecord) (g intents.Frame, told bool, err error) {
	there, told := t.parser.ToldThere(t.m.Text)
	if !told || site.ID == 0 || len(reports(f)) > 0 {
		return f, false, nil
	}
	item, err := t.lookedFor(site, there)
	if item == "" || err != nil {
		return f, false, err
	}
	e := assess.Equipment{Item: item}
	if !there {
		e.Present = &there
	}
	f.Statements = []assess.Statement{e}
	return f, true, nil
}

// lookedFor is the thing that a few words about one that is there, or is not, are said of; empty for
// none that is known.
func (t *turn) lookedFor(site store.SiteRecord, there bool) (assess.Item, error) {
	list, err := t.toldHere(site)
	if err != nil {
		return "", err
	}
	for _, told := range list {
		for _, s := range told.Statements {
			if e, ok := s.(assess.Equipment); ok && there && e.Absent() {
				return e.Item, nil
			}
		}
		if items := told.Items(); len(items) > 0 {
			if len(items) == 1 && !there {
				return items[0], nil
			}
			break
		}
	}
	h, err := t.house(t.tx, site, t.day, t.lang)
	if err != nil || h.Assessment.NextCheck == nil {
		return "", err
	}
	return h.Assessment.NextCheck.Finds, nil
}

// dripsIn are the drips that a frame tells of, there or not.
func dripsIn(f intents.Frame) (list []assess.Symptom) {
	for _, s := range f.Statements {
		if s, ok := s.(assess.Symptom); ok && (s.Symptom == assess.ReliefDischarge || s.Symptom == assess.Leak) {
			list = append(list, s)
		}
	}
	return list
}

// atSameTap reads a pressure that names no tap, "now 64", "same bib 58", as read
// where the last one of the visit was; where that was at several taps, it is asked
// about. The context it returns knows the tap.
func (t *turn) atSameTap(f intents.Frame, c intents.Context, site store.SiteRecord) (g intents.Frame, at intents.Context, err error) {
	if site.ID == 0 || !strings.ContainsAny(t.m.Text, "0123456789") || namesTaps(f) {
		return f, c, nil
	}
	if c.Tap, err = t.gaugeMoved(c); err != nil {
		return f, c, err
	}
	if c.Tap != "" {
		if g := t.parser.Parse(t.m.Text, c); g.SameTap {
			return g, c, nil
		}
		c.Tap = ""
	}
	list, err := t.toldHere(site)
	if err != nil {
		return f, c, err
	}
	last := lastRead(list, valveWork(workIn(f)))
	if len(last) == 0 {
		last = lastRead(list, false) // the main alone: at which tap is asked
	}
	if len(last) == 0 || last[0].Point == "" {
		return f, c, nil
	}
	tap := last[len(last)-1].Point
	several := slices.ContainsFunc(last, func(r assess.Reading) bool { return r.Point != tap && r.Point != assess.Street })
	if !several {
		c.Tap = tap
	}
	// what is read after work on the regulator stands on the other side of it than the main
	c.TapUnsure = several || tap == assess.Street
	if g := t.parser.Parse(t.m.Text, c); g.SameTap || len(g.Unclear) > len(f.Unclear) {
		return g, c, nil
	}
	return f, c, nil
}

// fewBefore is among how many of its writer's last messages the tap of a gauge is looked for.
const fewBefore = 3

// gaugeMoved is the tap at which the writer has just said the gauge to be, telling nothing else:
// "gauge on the laundry" before "says 71", with no more than chatter between; empty for none.
func (t *turn) gaugeMoved(c intents.Context) (assess.TestPoint, error) {
	m := t.m
	for range fewBefore {
		before, found, err := t.tx.SaidBefore(m)
		if err != nil || !found || before.State != store.Taken || t.m.At.Sub(before.At) > t.opt.Memory {
			return "", err
		}
		if tap := t.parser.GaugeAt(before.Text, c); tap != "" {
			return tap, nil
		}
		if chatter, err := spokenOnly(before); err != nil || !chatter {
			return "", err // it was of something else
		}
		m = before
	}
	return "", nil
}

// lastRead are the readings of the newest report that has any; where the regulator was worked on
// since the main was read, as worked tells of the message itself, those of the newest report on the house's side: what is read then at "the
// same spot" is no pressure of the main.
func lastRead(list []intents.Frame, worked bool) (last []assess.Reading) {
	for _, told := range list {
		worked = worked || valveWork(workIn(told))
		here := readings(told)
		if worked {
			here = slices.DeleteFunc(here, func(r assess.Reading) bool { return r.Point == assess.Street })
		}
		if len(here) > 0 {
			return here
		}
	}
	return nil
}

// workIn is the work that a frame tells.
func workIn(f intents.Frame) []assess.Work {
	var v assess.Visit
	for _, s := range f.Statements {
		v.Add(s)
	}
	return v.Work
}

// tapAgain is the tap that "same tap" names in a message which reports nothing else, or
// where the gauge was at the main meanwhile: the last one read on the house in hand.
func (t *turn) tapAgain(site store.SiteRecord) (assess.TestPoint, error) {
	again, tap := intents.TapAgain(t.m.Text)
	if site.ID == 0 || !again {
		return "", nil
	}
	list, err := t.toldHere(site)
	if err != nil {
		return "", err
	}
	bare := !strings.ContainsAny(t.m.Text, "0123456789")
	for _, told := range list {
		found := assess.TestPoint("")
		for _, r := range readings(told) {
			switch {
			case r.Point == "" || tap && r.Point == assess.Street:
				bare = true
			case found != "" && found != r.Point:
				return "", nil // it may be any of them
			default:
				found = r.Point
			}
		}
		if found != "" && !bare {
			return "", nil // the tap in hand
		}
		if found != "" {
			return found, nil
		}
	}
	return "", nil
}

// namesTaps tells whether every reading of a frame names its own tap, so that no
// earlier one is looked for: a hose bibb may be one named before.
func namesTaps(f intents.Frame) bool {
	list := readings(f)
	return len(list) > 0 && !slices.ContainsFunc(list, func(r assess.Reading) bool { return r.Point == "" || r.Point == assess.Bibb })
}

// toldHere are the last reports on the house in hand while they are fresh, newest
// first: those of the writer, and before them the thread's last.
func (t *turn) toldHere(site store.SiteRecord) ([]intents.Frame, error) {
	list, err := t.tx.ReportsBy(t.m.Author, t.place(), recentReports)
	if err != nil {
		return nil, err
	}
	if t.m.Thread != t.m.TS {
		m, found, err := t.tx.LastReportIn(t.m.Channel, t.m.Thread, "", t.place())
		if err != nil {
			return nil, err
		}
		if found {
			list = slices.Insert(list, 0, store.Report{Message: m.ID, Site: m.Site, At: m.At, Frame: m.Frame})
		}
	}
	var out []intents.Frame
	for _, r := range list {
		if r.Site != site.ID && r.Site != site.Named || t.m.At.Sub(r.At) > t.opt.Memory {
			continue
		}
		var told intents.Frame
		if err := json.Unmarshal(r.Frame, &told); err != nil {
			return nil, fmt.Errorf("read the frame of message %d: %w", r.Message, err)
		}
		out = append(out, told)
	}
	return out, nil
}

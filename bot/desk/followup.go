package desk

import (
	"fmt"

	"lazyhand/assess"
	"lazyhand/intents"
	"lazyhand/store"
)

// dueWithin is how far ahead "what is due" looks, in days.
const dueWithin = 7

// plan opens the follow-ups that people asked for and that the assessment
// advises. A person's word on an action wins over ours.
func (t *turn) plan(m store.Message, f intents.Frame, site store.SiteRecord, a assess.Assessment) error {
	said := map[assess.Action]bool{}
	for _, s := range reports(f) {
		p, ok := s.(assess.Plan)
		if !ok {
			continue
		}
		days := 0
		if p.InDays != nil {
			days = *p.InDays
		}
		said[p.Action] = true
		err := t.tx.KeepFollowUp(store.FollowUp{Site: site.ID, Action: p.Action, Due: t.day.AddDays(days), Why: quote(m.Text), Owner: m.Author, Source: m.ID})
		if err != nil {
			return err
		}
	}
	for _, n := range a.FollowUps {
		if said[n.Action] {
			continue
		}
		err := t.tx.KeepFollowUp(store.FollowUp{Site: site.ID, Action: n.Action, Due: t.day.AddDays(n.InDays), Why: n.Why, Owner: m.Author, Source: m.ID})
		if err != nil {
			return err
		}
	}
	return nil
}

// fulfils says which work ends which follow-up.
var fulfils = map[assess.Action][]assess.Action{
	assess.ReplacedPRV:   {assess.ReplacePRV, assess.SetPRV},
	assess.InstalledPRV:  {assess.ReplacePRV, assess.SetPRV},
	assess.SetPRV:        {assess.SetPRV},
	assess.InstalledTank: {assess.InstallTank, assess.ReplaceTank},
	assess.ReplacedTank:  {assess.InstallTank, assess.ReplaceTank},
}

// settle ends the follow-ups that a visit fulfils: work done, and a recheck by
// a fair reading of the house.
func (t *turn) settle(m store.Message, site store.SiteRecord, v assess.Visit, a assess.Assessment) error {
	ends := map[assess.Action]bool{}
	for _, w := range v.Work {
		for _, e := range fulfils[w.Action] {
			ends[e] = true
		}
	}
	if a.HousePSI != nil && len(v.Readings) > 0 {
		ends[assess.Recheck] = true
	}
	open, err := t.tx.OpenFollowUps(site.ID)
	if err != nil {
		return err
	}
	for _, f := range open {
		if f.Source == m.ID || !ends[f.Action] {
			continue // what this very message asks for stays open
		}
		if err := t.tx.EndFollowUp(f.ID, "done", t.m.At); err != nil {
			return err
		}
	}
	return nil
}

// due answers which follow-ups are due.
func (t *turn) due() error {
	list, err := t.tx.DueFollowUps(t.day.AddDays(dueWithin), 20)
	if err != nil {
		return err
	}
	w := t.words()
	if len(list) == 0 {
		return t.say(Body{Lead: fmt.Sprintf(w.NothingDue, dueWithin)})
	}
	return t.say(Body{Lead: fmt.Sprintf(w.Due, len(list), dueWithin), Facts: t.followUpLines(list)})
}

func (t *turn) followUpLines(list []store.FollowUp) []string {
	var out []string
	for _, f := range list {
		out = append(out, followUpLine(f, wordsIn(t.lang)))
	}
	return out
}

// followUpLine is a follow-up in one line.
func followUpLine(f store.FollowUp, w *words) string {
	return fmt.Sprintf("%s  %s: %s. %s", f.Due, f.Line, w.Action[f.Action], f.Why)
}

// done ends a house's soonest follow-up.
func (t *turn) done(site store.SiteRecord) error {
	w := t.words()
	open, err := t.tx.OpenFollowUps(site.ID)
	if err != nil {
		return err
	}
	if len(open) == 0 {
		return t.say(Body{Lead: fmt.Sprintf(w.NothingOpen, siteLine(site.Site))})
	}
	if err := t.tx.EndFollowUp(open[0].ID, "done", t.m.At); err != nil {
		return err
	}
	return t.say(Body{Lead: fmt.Sprintf(w.Done, siteLine(site.Site), w.Action[open[0].Action])})
}

// snooze puts a house's soonest follow-up off.
func (t *turn) snooze(site store.SiteRecord, a intents.Ask) error {
	w := t.words()
	open, err := t.tx.OpenFollowUps(site.ID)
	if err != nil {
		return err
	}
	if len(open) == 0 {
		return t.say(Body{Lead: fmt.Sprintf(w.NothingOpen, siteLine(site.Site))})
	}
	days := 7
	if a.InDays != nil {
		days = *a.InDays
	}
	due := t.day.AddDays(days)
	if err := t.tx.MoveFollowUp(open[0].ID, due); err != nil {
		return err
	}
	return t.say(Body{Lead: fmt.Sprintf(w.Moved, siteLine(site.Site), w.Action[open[0].Action], due)})
}

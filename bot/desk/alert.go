package desk

import (
	"fmt"
	"slices"
	"strings"

	"lazyhand/assess"
	"lazyhand/store"
)

// RaisesAlert is the default of Options.Alerts: all that is urgent now, and of
// what is urgent soon all that is no mere planning matter.
func RaisesAlert(f assess.Finding) bool {
	switch f.Urgency {
	case assess.Now:
		return true
	case assess.Soon:
		return f.Code != "prv_past_age" && f.Code != "expansion_uncontrolled"
	}
	return false
}

// alert raises the house's alert, brings more evidence to an open one, or
// settles it by a fair reading in the band.
func (t *turn) alert(m store.Message, site store.SiteRecord, a assess.Assessment) error {
	if t.opt.Dispatch == "" {
		return nil
	}
	var codes []string
	urgency := assess.Soon
	for _, f := range a.Findings {
		if t.opt.Alerts(f) {
			codes = append(codes, f.Code)
			if f.Urgency == assess.Now {
				urgency = assess.Now
			}
		}
	}
	open, found, err := t.tx.OpenAlert(site.ID)
	if err != nil {
		return err
	}
	switch {
	case len(codes) > 0 && !found:
		slices.Sort(codes)
		open = store.Alert{Site: site.ID, Codes: strings.Join(codes, " "), Urgency: urgency, RaisedAt: t.m.At, Source: m.ID, Change: 1}
		if open.ID, err = t.tx.RaiseAlert(open, t.m.Author); err != nil {
			return err
		}
		return t.queue(Post{Key: alertKey(open), Kind: Say, Channel: t.opt.Dispatch, Body: t.alertBody(open, site, a)})
	case len(codes) > 0:
		slices.Sort(codes)
		open.Codes, open.Urgency = strings.Join(codes, " "), urgency
		return t.changeAlert(open, site, a, "evidence", t.wordsFor().MoreEvidence)
	case found && a.Band == assess.BandIn && a.HousePSI != nil:
		open.State = "settled"
		return t.changeAlert(open, site, a, "settled", fmt.Sprintf(t.wordsFor().Settled, number(*a.HousePSI)))
	}
	return nil
}

// wordsFor are the words of the dispatch channel: the shop's language.
func (t *turn) wordsFor() *words { return wordsIn(t.opt.Lang) }

// alertKey names the first post about an alert.
func alertKey(a store.Alert) string { return fmt.Sprintf("alert:%d:1", a.ID) }

// changeAlert keeps a change, says it in the alert's thread and brings the
// alert's own post up to date.
func (t *turn) changeAlert(a store.Alert, site store.SiteRecord, judged assess.Assessment, what, said string) error {
	if err := t.tx.ChangeAlert(a, t.m.At, t.m.Author, what); err != nil {
		return err
	}
	a.Change++
	if err := t.queue(Post{Key: fmt.Sprintf("alert:%d:%d", a.ID, a.Change), Kind: Change, Channel: t.opt.Dispatch,
		Target: alertKey(a), Body: t.alertBody(a, site, judged)}); err != nil {
		return err
	}
	return t.queue(Post{Key: fmt.Sprintf("alert:%d:%d:said", a.ID, a.Change), Kind: Say, Channel: t.opt.Dispatch, Under: alertKey(a),
		Body: Body{Lead: siteLine(site.Site) + ": " + said}})
}

// alertBody is the alert's own post.
func (t *turn) alertBody(a store.Alert, site store.SiteRecord, judged assess.Assessment) Body {
	w := t.wordsFor()
	in := *t
	in.lang = t.opt.Lang
	b := Body{Lead: fmt.Sprintf("%s: %s", siteLine(site.Site), w.AlertState[stateOf(a)])}
	if a.Owner != "" {
		b.Lead += " (" + a.Owner + ")"
	}
	b.Facts = append(in.findings(judged, assess.Soon), in.likely(judged)...)
	b.Cautions = in.cautions(judged)
	id := fmt.Sprint(a.ID)
	switch stateOf(a) {
	case "raised":
		b.Buttons = []Button{{"claim", w.Claim, id}, {"close", w.Close, id}}
	case "claimed", "booked":
		b.Buttons = []Button{{"close", w.Close, id}}
	}
	return b
}

func stateOf(a store.Alert) string {
	if a.State == "" {
		return "raised"
	}
	return a.State
}

// moveAlert claims or closes an alert for the person who pressed.
func (t *turn) moveAlert(a store.Alert, to string) error {
	w := t.wordsFor()
	said := ""
	switch to {
	case "claim":
		if a.State != "raised" {
			return nil
		}
		a.State, a.Owner = "claimed", t.who()
		said = fmt.Sprintf(w.Claimed, t.who())
	case "close":
		a.State, a.Reason = "closed", t.who()
		said = fmt.Sprintf(w.Closed, t.who())
	}
	site, err := t.tx.Site(a.Site)
	if err != nil {
		return err
	}
	in, err := t.input(site)
	if err != nil {
		return err
	}
	in.Lang = t.opt.Lang
	return t.changeAlert(a, site, assess.Assess(in), a.State, said)
}

// who is the author as the team reads it.
func (t *turn) who() string {
	if t.person.Name != "" {
		return t.person.Name
	}
	return t.m.Author
}

// siteOfPost returns the house that a post of ours is about, 0 for none.
func (t *turn) siteOfPost(p store.Post) (int64, error) {
	var id, change int64
	if n, _ := fmt.Sscanf(p.Key, "alert:%d:%d", &id, &change); n == 2 {
		a, found, err := t.tx.Alert(id)
		if err != nil || !found {
			return 0, err
		}
		return a.Site, nil
	}
	return 0, nil
}

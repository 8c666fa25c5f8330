package desk

import (
	"encoding/json"
	"fmt"
	"slices"

	"lazyhand/assess"
	"lazyhand/intents"
	"lazyhand/store"
)

// What a report that is withdrawn leaves behind: alerts, follow-ups and a house to judge anew.

// withdrawAll takes back what a message reported in any wording: one that made us
// fail has not taken the place of the one before it.
func (t *turn) withdrawAll(about store.Message, to store.MessageState) (gone []store.Report, err error) {
	root := about.ID
	if about.About != 0 {
		root = about.About
	}
	wordings, err := t.tx.WordingsOf(root)
	if err != nil {
		return nil, err
	}
	for _, m := range wordings {
		if m.ID >= t.m.ID || m.State == store.Replaced || m.State == store.Retracted {
			continue
		}
		r, err := t.withdraw(m, to)
		if err != nil {
			return nil, err
		}
		if r.Site != 0 {
			gone = append(gone, r)
		}
	}
	return gone, nil
}

func (t *turn) rejudgeAll(gone []store.Report) error {
	for _, r := range gone {
		if err := t.rejudge(r); err != nil {
			return err
		}
	}
	return nil
}

// withdraw takes back what a message reported, with what followed from it and what
// was asked about it; it
// returns the report, without a house when there was none.
func (t *turn) withdraw(m store.Message, to store.MessageState) (gone store.Report, err error) {
	if err := t.tx.Revise(m.ID, to, t.m.ID); err != nil {
		return gone, err
	}
	if err := t.tx.DropQuestionsAbout(m.ID); err != nil {
		return gone, err
	}
	return t.drop(m)
}

// drop takes a report off its house, with what followed from it: the follow-ups
// that came of it and the end of those, and of the alert, that it settled.
func (t *turn) drop(m store.Message) (gone store.Report, err error) {
	gone, reported, err := t.tx.ReportOf(m.ID)
	if err != nil {
		return gone, err
	}
	if reported {
		if _, err := t.tx.DropReport(m.ID); err != nil {
			return gone, err
		}
		if err := t.leaves(gone); err != nil {
			return gone, err
		}
	}
	if err := t.tx.TakeBackFollowUps(m.ID, t.m.At); err != nil {
		return gone, err
	}
	return gone, t.reopen(m)
}

// leaves notes the house that a report is taken off.
func (t *turn) leaves(r store.Report) error {
	site, err := t.tx.Site(r.Site)
	t.left = append(t.left, site.ID)
	return err
}

// reopen opens the alert again that m's report settled. It says nothing yet:
// what follows may settle it anew.
func (t *turn) reopen(m store.Message) error {
	ended, err := t.tx.AlertsEndedBy(m.ID)
	if err != nil {
		return err
	}
	for _, a := range ended {
		if a.State != "settled" {
			continue
		}
		again, err := t.tx.ReopenAlert(a.ID, t.m.At, t.m.Author, "open again")
		if err != nil {
			return err
		}
		if again {
			t.reopened = a.ID
		}
	}
	return nil
}

// rejudge judges a house anew that has lost a report, and puts its alert right:
// it says what the reports that are left call for, and ends when those that
// called for it are gone; one that the lost report settled is open again.
func (t *turn) rejudge(gone store.Report) error {
	if gone.Site == 0 {
		return nil
	}
	site, err := t.tx.Site(gone.Site)
	if err != nil {
		return err
	}
	a, _, err := t.judge(site, gone.Day, true)
	if err != nil {
		return err
	}
	open, found, err := t.tx.OpenAlert(site.ID)
	if err != nil || !found {
		return err
	}
	stands, err := t.standsAt(open.Source, site)
	if err != nil {
		return err
	}
	codes, urgency := t.callsFor(a)
	said := t.shopWords().ReportChanged
	if open.ID == t.reopened {
		said = t.shopWords().OpenAgain
	}
	switch {
	case codes == "" && !stands:
		if left, found, err := t.leftCalling(site); err != nil {
			return err
		} else if found {
			open.Source = left
			return t.changeAlert(open, "evidence", said)
		}
		why := t.shopWords().ReasonWithdrawn
		if t.m.Kind == store.Edited {
			why = t.shopWords().ReasonCorrected
		}
		return t.endWithdrawn(open, why)
	case codes != "" && !stands:
		left, found, err := t.tx.LastReport(site.ID)
		if err != nil {
			return err
		}
		if found {
			open.Source = left.Message
		}
		return t.bring(open, codes, urgency, said)
	case codes != "" && (codes != open.Codes || urgency != open.Urgency):
		return t.bring(open, codes, urgency, said)
	case open.ID == t.reopened:
		return t.showAlert(open, said)
	}
	return nil
}

// leftCalling is the newest report of a house's last visit that calls for a dispatcher by
// itself, where the others do not agree with it.
func (t *turn) leftCalling(site store.SiteRecord) (message int64, found bool, err error) {
	list, err := t.tx.Reports(site.ID)
	if err != nil {
		return 0, false, err
	}
	for _, r := range slices.Backward(list) {
		if r.Day != list[len(list)-1].Day {
			break
		}
		var f intents.Frame
		if err := json.Unmarshal(r.Frame, &f); err != nil {
			return 0, false, fmt.Errorf("read the frame of message %d: %w", r.Message, err)
		}
		v := assess.Visit{Date: r.Day}
		for _, s := range f.Statements {
			v.Add(s)
		}
		if t.callsAlone(v) {
			return r.Message, true, nil
		}
	}
	return 0, false, nil
}

// standsAt tells whether a message still reports on a house.
func (t *turn) standsAt(message int64, site store.SiteRecord) (bool, error) {
	r, reported, err := t.tx.ReportOf(message)
	if err != nil || !reported {
		return false, err
	}
	at, err := t.tx.Site(r.Site)
	return at.ID == site.ID, err
}

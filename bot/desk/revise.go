package desk

import (
	"encoding/json"
	"fmt"
	"strings"

	"lazyhand/assess"
	"lazyhand/intents"
	"lazyhand/store"
)

// edited reads the new wording of a message in place of the old one.
func (t *turn) edited(about store.Message) error {
	if about.ID == 0 {
		return t.read()
	}
	site, err := t.withdraw(about, store.Replaced)
	if err != nil {
		return err
	}
	if err := t.read(); err != nil || site.ID == 0 {
		return err
	}
	return t.rejudge(site, about)
}

// retract follows a deletion: the report goes, the words stay on record.
func (t *turn) retract(about store.Message) error {
	if about.ID == 0 || about.Frame == nil {
		return nil
	}
	site, err := t.withdraw(about, store.Retracted)
	if err != nil || site.ID == 0 {
		return err
	}
	if err := t.rejudge(site, about); err != nil {
		return err
	}
	return t.reword(Body{Lead: fmt.Sprintf(t.words().Undone, siteLine(site.Site))})
}

// withdraw takes back what a message reported, with the follow-ups that came
// from it; it returns the house, without an id when nothing was reported.
func (t *turn) withdraw(m store.Message, to store.MessageState) (site store.SiteRecord, err error) {
	r, reported, err := t.tx.ReportOf(m.ID)
	if err != nil {
		return site, err
	}
	if err := t.tx.Revise(m.ID, to, t.m.ID); err != nil {
		return site, err
	}
	if !reported {
		return site, nil
	}
	if _, err := t.tx.DropReport(m.ID); err != nil {
		return site, err
	}
	if err := t.tx.TakeBackFollowUps(m.ID, t.m.At); err != nil {
		return site, err
	}
	if err := t.reopen(m); err != nil {
		return site, err
	}
	return t.tx.Site(r.Site)
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

// rejudge judges a house anew from which m's report was withdrawn, and puts its
// alert right: one that only that report called for ends, one that it settled
// is open again.
func (t *turn) rejudge(site store.SiteRecord, m store.Message) error {
	a, _, err := t.judge(site, t.dayOf(m), true)
	if err != nil {
		return err
	}
	open, found, err := t.tx.OpenAlert(site.ID)
	if err != nil || !found {
		return err
	}
	if open.ID == t.reopened {
		return t.showAlert(open, t.shopWords().OpenAgain)
	}
	if open.Source != m.ID {
		return nil
	}
	for _, f := range a.Findings {
		if t.opt.Alerts(f) {
			return t.showAlert(open, t.shopWords().ReportChanged)
		}
	}
	why := t.shopWords().ReasonWithdrawn
	if t.m.Kind == store.Edited {
		why = t.shopWords().ReasonCorrected
	}
	return t.endWithdrawn(open, why)
}

// undo takes back the report that the person means; with the words for another
// house it moves the report there.
func (t *turn) undo(named store.SiteRecord) error {
	m, ok, err := t.meant()
	if !ok || err != nil {
		return err
	}
	if m.ID == 0 {
		return t.say(Body{Lead: t.words().NothingToUndo})
	}
	if fromThread, _, err := t.site(); err != nil {
		return err
	} else if named.Line != "" && named.ID != m.Site && named.ID != fromThread.ID {
		var f intents.Frame
		if err := json.Unmarshal(m.Frame, &f); err != nil {
			return fmt.Errorf("read the frame of message %d: %w", m.ID, err)
		}
		f.Site, f.Town, f.Postcode = named.Line, named.Town, named.Postcode
		t.righting = true
		return t.moveVisit(m, f, named)
	}
	if saysElsewhere(t.m.Text) {
		return t.elsewhere(m)
	}
	return t.takeBack(m)
}

// saysElsewhere tells whether words take back only the house of a report.
func saysElsewhere(text string) bool {
	said := strings.Join(plainWords(text), " ")
	for _, p := range []string{"wrong house", "wrong address", "wrong site", "wrong place", "not this house", "not that house", "casa equivocada", "direccion equivocada", "no era esa casa", "no es esa casa", "me equivoque de casa"} {
		if strings.Contains(said, p) {
			return true
		}
	}
	return false
}

// takeBack takes back what a message reported. The message that does is about the
// same house, wherever its writer has been since.
func (t *turn) takeBack(m store.Message) error {
	site, err := t.withdraw(m, store.Retracted)
	if err != nil {
		return err
	}
	if site.ID == 0 {
		return t.say(Body{Lead: t.words().NothingToUndo})
	}
	if err := t.tx.FileUnder(t.m.ID, site.Named); err != nil {
		return err
	}
	if err := t.rejudge(site, m); err != nil {
		return err
	}
	if err := t.mark(m, MarkNone); err != nil {
		return err
	}
	return t.say(Body{Lead: fmt.Sprintf(t.words().Undone, siteLine(site.Site)), Heard: quote(m.Text)})
}

// meant is the report that "scratch that" or "make it 82" is about: the
// thread's last one, else the person's own. A tech who means somebody else's is
// told that only they or a dispatcher may; then ok is false.
func (t *turn) meant() (m store.Message, ok bool, err error) {
	own := t.m.Author
	if t.role >= Dispatcher {
		own = ""
	}
	m, found, err := t.tx.LastReportIn(t.m.Channel, t.m.Thread, own)
	if err != nil || found {
		return m, true, err
	}
	if other, theirs, err := t.tx.LastReportIn(t.m.Channel, t.m.Thread, ""); err != nil {
		return m, false, err
	} else if theirs {
		return m, false, t.say(Body{Lead: fmt.Sprintf(t.words().NotYours, t.who(other.Author))})
	}
	m, _, err = t.tx.LastReportBy(t.m.Author, t.m.ID)
	return m, true, err
}

// replace puts a person's frame in the place of what a message was understood
// to say.
func (t *turn) replace(m store.Message, f intents.Frame, siteID int64) error {
	if siteID == 0 {
		named := assess.Site{Line: f.Site, Town: f.Town, Postcode: f.Postcode}
		if f.Site == "" {
			return t.say(Body{Lead: t.words().WhichHouse})
		}
		found, sure, err := t.resolve(named, true)
		if err != nil {
			return err
		}
		if !sure {
			return t.askWhich(m, named, found)
		}
		siteID = found[0].ID
	}
	raw, err := json.Marshal(f)
	if err != nil {
		return err
	}
	if err := t.tx.Correct(m.ID, t.m.ID, raw); err != nil {
		return err
	}
	if err := t.tx.EndQuestionsAbout(m.ID, askUnclear, askReading, askRight); err != nil {
		return err
	}
	old, reported, err := t.tx.ReportOf(m.ID)
	if err != nil {
		return err
	}
	if err := t.tx.TakeBackFollowUps(m.ID, t.m.At); err != nil {
		return err
	}
	if err := t.reopen(m); err != nil {
		return err
	}
	for _, id := range []int64{m.ID, t.m.ID} {
		if err := t.tx.FileUnder(id, siteID); err != nil {
			return err
		}
	}
	site, err := t.tx.Site(siteID)
	if err != nil {
		return err
	}
	if t.righting {
		from := store.SiteRecord{}
		if m.Site != 0 {
			if from, err = t.tx.Site(m.Site); err != nil {
				return err
			}
		}
		var was intents.Frame
		if err := json.Unmarshal(m.Frame, &was); err != nil {
			return fmt.Errorf("read the frame of message %d: %w", m.ID, err)
		}
		t.changed = t.difference(t.dayOf(m), was, f, from, site)
	}
	m.Frame, m.Site = raw, siteID
	if err := t.report(m, f, site, false); err != nil || !reported || old.Site == siteID {
		return err
	}
	from, err := t.tx.Site(old.Site)
	if err != nil {
		return err
	}
	return t.rejudge(from, m)
}

package desk

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"slices"
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
	gone, err := t.withdrawAll(about, store.Replaced)
	if err != nil {
		return err
	}
	if err := t.read(); err != nil {
		return err
	}
	if err := t.rejudgeAll(gone); err != nil {
		return err
	}
	return t.putBack()
}

// retract follows a deletion: the report goes, the words stay on record.
func (t *turn) retract(about store.Message) error {
	if about.ID == 0 {
		return nil
	}
	gone, err := t.withdrawAll(about, store.Retracted)
	if err != nil {
		return err
	}
	if len(gone) == 0 {
		return t.putBack()
	}
	if err := t.rejudgeAll(gone); err != nil {
		return err
	}
	site, err := t.tx.Site(gone[0].Site)
	if err != nil {
		return err
	}
	return t.reword(Body{Lead: fmt.Sprintf(t.words().Undone, siteLine(site.Site))})
}

// putBack gives reports that only the earlier words of a message had put right the wording
// of before, unless they were put right again since or stand at another house.
func (t *turn) putBack() error {
	if _, reported, err := t.tx.ReportOf(t.m.ID); err != nil || reported {
		return err
	}
	if own, err := t.tx.Corrections(t.m.ID); err != nil || len(own) > 0 {
		return err
	}
	wordings, err := t.tx.WordingsOf(t.m.About)
	if err != nil {
		return err
	}
	before := map[int64]json.RawMessage{} // what each report was held to say
	var order []int64
	for _, w := range slices.Backward(wordings) {
		if w.ID >= t.m.ID {
			continue
		}
		list, err := t.tx.Corrections(w.ID)
		if err != nil {
			return err
		}
		for _, c := range list {
			m, found, err := t.tx.Message(c.Message)
			if err != nil {
				return err
			}
			now, seen := before[c.Message]
			if !seen {
				now = m.Frame
			}
			if !found || m.State != store.Taken || !bytes.Equal(now, c.Frame) || len(c.Was) == 0 {
				continue
			}
			if !seen {
				order = append(order, c.Message)
			}
			before[c.Message] = c.Was
		}
	}
	for _, id := range order {
		m, _, err := t.tx.Message(id)
		if err != nil {
			return err
		}
		var was, now intents.Frame
		if err := errors.Join(json.Unmarshal(before[id], &was), json.Unmarshal(m.Frame, &now)); err != nil {
			return fmt.Errorf("read the frames of message %d: %w", id, err)
		}
		if _, reported, err := t.tx.ReportOf(id); err != nil {
			return err
		} else if !reported || was.Site != now.Site || len(reports(was)) == 0 {
			continue
		}
		t.righting, t.reply = true, fmt.Sprintf("%s:back:%d", replyKey(t.m.ID), id)
		if err := t.replace(m, was, m.Site); err != nil {
			return err
		}
	}
	return nil
}

// undo takes back the report that the person means; with the words for another
// house it moves the report there.
func (t *turn) undo(named store.SiteRecord) error {
	if m, done, err := t.tookBack(); err != nil {
		return err
	} else if done {
		site, err := t.tx.Site(m.Site)
		if err != nil {
			return err
		}
		if err := t.tx.FileUnder(t.m.ID, site.Named); err != nil {
			return err
		}
		return t.say(Body{Lead: fmt.Sprintf(t.words().Undone, siteLine(site.Site)), Heard: quote(m.Text)})
	}
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

// tookBack is the report that an edited message took back by its earlier words: that is
// not done to another one by its new words.
func (t *turn) tookBack() (m store.Message, found bool, err error) {
	if t.m.Kind != store.Edited || t.m.About == 0 {
		return m, false, nil
	}
	wordings, err := t.tx.WordingsOf(t.m.About)
	if err != nil {
		return m, false, err
	}
	for _, w := range wordings {
		if w.ID >= t.m.ID {
			break
		}
		if m, found, err = t.tx.TakenBackBy(w); err != nil || found {
			return m, found, err
		}
	}
	return m, false, nil
}

// answersAnew reads the new wording of a message that gave the house of a report, where
// that was asked for, as giving another one.
func (t *turn) answersAnew(f intents.Frame) (done bool, err error) {
	if t.m.Kind != store.Edited || t.m.About == 0 || !namesOnly(f) || len(f.Unclear) > 0 {
		return false, nil
	}
	was, err := t.tx.WordingBefore(t.m)
	if err != nil || was.Site == 0 || was.Frame == nil {
		return false, err
	}
	var told intents.Frame
	if err := json.Unmarshal(was.Frame, &told); err != nil {
		return false, fmt.Errorf("read the frame of message %d: %w", was.ID, err)
	}
	if !isChatter(told) {
		return false, nil
	}
	list, err := t.tx.ReportsBy(t.m.Author, t.place(), recentReports)
	if err != nil {
		return false, err
	}
	for _, r := range list {
		if r.Site != was.Site {
			continue
		}
		for _, kind := range []string{askNoSite, askWhichSite} {
			asked, err := t.tx.AnsweredAbout(r.Message, kind)
			if err != nil {
				return false, err
			}
			if !asked {
				continue
			}
			m, found, err := t.tx.Message(r.Message)
			if err != nil || !found || m.State != store.Taken {
				return false, err
			}
			t.amended = m
			return true, t.correct(t.m, f, store.SiteRecord{})
		}
	}
	return false, nil
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

// takeOff takes a message's report off its house, none where it had none. The message that
// does is about the same house, wherever its writer has been since.
func (t *turn) takeOff(m store.Message) (site store.SiteRecord, err error) {
	gone, err := t.withdraw(m, store.Retracted)
	if err != nil || gone.Site == 0 {
		return site, err
	}
	if site, err = t.tx.Site(gone.Site); err != nil {
		return site, err
	}
	if err := t.tx.FileUnder(t.m.ID, site.Named); err != nil {
		return site, err
	}
	return site, t.rejudge(gone)
}

// takeBack takes back what a message reported, and says so.
func (t *turn) takeBack(m store.Message) error {
	site, err := t.takeOff(m)
	if err != nil {
		return err
	}
	if site.ID == 0 {
		return t.say(Body{Lead: t.words().NothingToUndo})
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
	if _, done, err := t.tookBack(); err != nil || done {
		return m, err == nil, err
	}
	own := t.m.Author
	if t.role >= Dispatcher {
		own = ""
	}
	m, found, err := t.tx.LastReportIn(t.m.Channel, t.m.Thread, own, t.place())
	if err != nil || found {
		return m, true, err
	}
	if other, theirs, err := t.tx.LastReportIn(t.m.Channel, t.m.Thread, "", t.place()); err != nil {
		return m, false, err
	} else if theirs {
		return m, false, t.say(Body{Lead: fmt.Sprintf(t.words().NotYours, t.who(other.Author))})
	}
	m, _, err = t.tx.LastReportBy(t.m.Author, t.place())
	return m, true, err
}

// unsays tells whether another frame in the place of a message's takes away more than
// what is planned.
func unsays(m store.Message, reported bool) (bool, error) {
	var was intents.Frame
	if !reported {
		return false, nil
	}
	if err := json.Unmarshal(m.Frame, &was); err != nil {
		return false, fmt.Errorf("read the frame of message %d: %w", m.ID, err)
	}
	return !onlyPlans(was), nil
}

// makeRoom takes away what m reported, if it did, so that another frame can take its place.
func (t *turn) makeRoom(m store.Message) (old store.Report, reported bool, err error) {
	if old, reported, err = t.tx.ReportOf(m.ID); err != nil {
		return old, reported, err
	}
	if reported {
		if err := t.leaves(old); err != nil {
			return old, reported, err
		}
	}
	if t.unsays, err = unsays(m, reported); err != nil {
		return old, reported, err
	}
	if err := t.tx.TakeBackFollowUps(m.ID, t.m.At); err != nil {
		return old, reported, err
	}
	return old, reported, t.reopen(m)
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
	old, reported, err := t.makeRoom(m)
	if err != nil {
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
	if err := t.report(m, f, site, false); err != nil || !reported || old.Site == siteID && old.Day == f.Visit(t.dayOf(m)).Date {
		return err
	}
	return t.rejudge(old)
}

package desk

import (
	"fmt"
	"slices"
	"strings"
	"time"

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
		return f.Code != "prv_past_age" && f.Code != "expansion_uncontrolled" && f.Code != "peak_high"
	}
	return false
}

// callsFor are the codes of the findings that call for a dispatcher, separated by
// blanks, and how urgent they are.
func (t *turn) callsFor(a assess.Assessment) (string, assess.Urgency) {
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
	slices.Sort(codes)
	return strings.Join(codes, " "), urgency
}

// alert raises the house's alert, brings more evidence to an open one, settles
// it by a fair reading in the band, or ends it when the report that raised it
// no longer says so.
func (t *turn) alert(m store.Message, site store.SiteRecord, a assess.Assessment, visit assess.Visit) error {
	if t.opt.Dispatch == "" {
		return nil
	}
	codes, urgency := t.callsFor(a)
	open, found, err := t.tx.OpenAlert(site.ID)
	if err != nil {
		return err
	}
	w := t.shopWords()
	said := fmt.Sprintf(w.MoreEvidence, t.who(m.Author), visitText(visit, w))
	if t.righting || t.m.Kind == store.Edited {
		said = w.ReportChanged
	}
	gone := false // the report that raised it has another wording now
	if found {
		source, _, err := t.tx.Message(open.Source)
		if err != nil {
			return err
		}
		gone = source.State != store.Taken || source.ID == m.ID
	}
	switch {
	case codes != "" && !found:
		return t.raise(store.Alert{Site: site.ID, Codes: codes, Urgency: urgency, RaisedAt: t.m.At, Source: m.ID, State: "raised", Change: 1})
	case codes != "":
		if gone {
			open.Source = m.ID
		}
		return t.bring(open, codes, urgency, said)
	case found && gone && t.callsAlone(visit):
		open.Source = m.ID
		return t.changeAlert(open, "evidence", said) // other readings do not agree with it
	case found && gone:
		return t.endWithdrawn(open, w.ReasonCorrected)
	case found && a.Band == assess.BandIn && a.HousePSI != nil:
		open.State, open.Reason = "settled", number(*a.HousePSI)+" psi"
		return t.changeAlert(open, "settled", fmt.Sprintf(w.Settled, number(*a.HousePSI)))
	case found:
		return t.changeAlert(open, "evidence", said) // it calls for nobody by itself, and settles nothing
	}
	return nil
}

// callsAlone tells whether what one report says calls for a dispatcher, whatever the
// others of its house say.
func (t *turn) callsAlone(v assess.Visit) bool {
	codes, _ := t.callsFor(assess.Assess(assess.Input{Today: t.day, Shop: t.opt.Shop, Lang: t.lang, Visits: []assess.Visit{v}}))
	return codes != ""
}

// bring brings an open alert up to what the house calls for now.
func (t *turn) bring(open store.Alert, codes string, urgency assess.Urgency, said string) error {
	worse := urgency == assess.Now && open.Urgency != assess.Now
	told, err := t.told(open)
	if err != nil {
		return err
	}
	open.Codes, open.Urgency = codes, urgency
	if err := t.changeAlert(open, "evidence", said); err != nil {
		return err
	}
	switch {
	case !told:
		return t.tellInTime(open)
	case worse:
		return t.watchClaim(open, "now")
	}
	return nil
}

// raise opens an alert and tells it, at once when it is urgent now, else when
// the quiet hours are over.
func (t *turn) raise(a store.Alert) error {
	var err error
	if a.ID, err = t.tx.RaiseAlert(a, t.m.Author); err != nil {
		return err
	}
	return t.tellInTime(a)
}

// tellInTime posts an alert that is not out yet: in the quiet hours only what
// is urgent now, the rest when they are over.
func (t *turn) tellInTime(a store.Alert) error {
	if a.Urgency != assess.Now && t.cal.IsQuiet(t.m.At) {
		return t.planDue(store.Due{Key: fmt.Sprintf("tell:%d", a.ID), Kind: dueTell, About: a.ID, At: t.cal.AfterQuiet(t.m.At)})
	}
	return t.tell(a)
}

// told tells whether an alert is out, or on its way.
func (t *turn) told(a store.Alert) (bool, error) {
	_, found, err := t.tx.PostByKey(alertKey(a))
	return found, err
}

// planDue plans a step, unless the message was dealt with before.
func (t *turn) planDue(d store.Due) error {
	if t.quiet {
		return nil
	}
	return t.tx.PlanDue(d)
}

// tell posts an alert for the first time and watches that somebody takes it.
func (t *turn) tell(a store.Alert) error {
	b, err := t.alertBody(a)
	if err != nil {
		return err
	}
	if err := t.queue(Post{Key: alertKey(a), Kind: Say, Channel: t.opt.Dispatch, Site: a.Site, Body: b}); err != nil {
		return err
	}
	return t.watchClaim(a, "1")
}

// watchClaim plans to look whether somebody has taken the alert: in working
// hours, or at any hour when it is urgent now.
func (t *turn) watchClaim(a store.Alert, n string) error {
	at := t.cal.AddWorking(t.m.At, t.opt.ClaimWithin)
	if a.Urgency == assess.Now {
		at = t.m.At.Add(t.opt.ClaimWithin)
	}
	return t.planDue(store.Due{Key: fmt.Sprintf("claim:%d:%s", a.ID, n), Kind: dueClaim, About: a.ID, At: at})
}

// shopWords are the words of the shop's own channels.
func (t *turn) shopWords() *words { return wordsIn(t.opt.Lang) }

// alertKey names the first post about an alert.
func alertKey(a store.Alert) string { return fmt.Sprintf("alert:%d:1", a.ID) }

// alertOfPost returns the alert that a post is about.
func (t *turn) alertOfPost(p store.Post) (a store.Alert, found bool, err error) {
	var id int64
	if n, _ := fmt.Sscanf(p.Key, "alert:%d:", &id); n != 1 {
		return a, false, nil
	}
	return t.tx.Alert(id)
}

// changeAlert keeps a change, says it in the alert's thread and brings the
// alert's own post up to date.
func (t *turn) changeAlert(a store.Alert, what, said string) error {
	if err := t.tx.ChangeAlert(a, t.m.At, t.m.Author, what, t.m.ID); err != nil {
		return err
	}
	a.Change++
	if !a.Open() {
		if err := t.dropBrief(a); err != nil {
			return err
		}
	}
	return t.showAlert(a, said)
}

// showAlert brings the alert's own post up to date and says in its thread what
// has changed. One that is not told yet is told later as it then stands.
func (t *turn) showAlert(a store.Alert, said string) error {
	if told, err := t.told(a); !told || err != nil {
		return err
	}
	b, err := t.alertBody(a)
	if err != nil {
		return err
	}
	if err := t.queue(Post{Key: fmt.Sprintf("alert:%d:%d", a.ID, a.Change), Kind: Change, Channel: t.opt.Dispatch, Target: alertKey(a), Site: a.Site, Body: b}); err != nil {
		return err
	}
	return t.sayUnder(a, fmt.Sprintf("%d:said", a.Change), Body{Lead: said})
}

// sayUnder says something in the alert's thread.
func (t *turn) sayUnder(a store.Alert, n string, b Body) error {
	return t.queue(Post{Key: fmt.Sprintf("alert:%d:%s", a.ID, n), Kind: Say, Channel: t.opt.Dispatch, Under: alertKey(a), Site: a.Site, Body: b})
}

// endWithdrawn closes an alert whose report has been taken back or put right.
func (t *turn) endWithdrawn(a store.Alert, why string) error {
	a.State, a.Reason = "closed", why
	return t.changeAlert(a, "withdrawn", fmt.Sprintf(t.shopWords().ClosedBecause, why))
}

// alertBody is the alert's own post: what, since when, how sure, what to send,
// what can hurt.
func (t *turn) alertBody(a store.Alert) (Body, error) {
	w := t.shopWords()
	site, err := t.tx.Site(a.Site)
	if err != nil {
		return Body{}, err
	}
	h, err := t.house(t.tx, site, t.day, t.opt.Lang)
	if err != nil {
		return Body{}, err
	}
	b := Body{Lead: fmt.Sprintf("%s: %s", siteLine(site.Site), t.stateText(a))}
	if !a.Open() {
		b.Heard = fmt.Sprintf(w.Since, t.stamp(a.RaisedAt, w))
		return b, nil
	}
	raised := strings.Fields(a.Codes)
	found := findings(h.Assessment, assess.Watch)
	if by := raisedBy(h.Assessment, raised); len(by) > 0 {
		found = by
	}
	if len(found) > 0 {
		b.Lead += ". " + found[0]
		b.Facts = found[1:]
	}
	b.Facts = append(b.Facts, likely(h.Assessment, h.lastVisit(), w)...)
	b.Heard = fmt.Sprintf(w.Since, t.stamp(a.RaisedAt, w))
	if send := whatToSend(raised, h.Assessment, w); send != "" {
		b.Next = append(b.Next, w.Send+send)
	}
	if unreadWork(h.lastVisit(), h.Assessment) {
		b.Next = append(b.Next, w.NextCheck+w.ConfirmWork)
	} else if n := h.Assessment.NextCheck; n != nil {
		b.Next = append(b.Next, w.NextCheck+n.Check)
	}
	b.Cautions = cautionTexts(h.Assessment.Cautions, w)
	id := fmt.Sprint(a.ID)
	if a.State == "raised" {
		b.Buttons = append(b.Buttons, Button{"claim", w.Claim, id})
	}
	book := w.Book
	if a.State == "booked" {
		book = w.BookAgain
	}
	b.Buttons = append(b.Buttons, Button{"book", book, id}, Button{"close", w.Close, id})
	return b, nil
}

// raisedBy are the texts of the findings that raised an alert, gravest first.
func raisedBy(a assess.Assessment, codes []string) []string {
	var out []string
	for _, f := range gravestFirst(a.Findings) {
		if slices.Contains(codes, f.Code) {
			out = append(out, f.Text)
		}
	}
	return out
}

// stateText is where an alert stands, in words.
func (t *turn) stateText(a store.Alert) string { return t.stateIn(a, t.shopWords()) }

// stateIn is the same in some words.
func (t *turn) stateIn(a store.Alert, w *words) string {
	switch a.State {
	case "raised":
		if a.Urgency == assess.Now {
			return w.AlertNow
		}
		return w.AlertRaised
	case "claimed":
		return fmt.Sprintf(w.Claimed, t.who(a.Owner))
	case "booked":
		return fmt.Sprintf(w.BookedFor, t.visitWhen(a, w), t.whoGoes(a, w))
	case "settled":
		return fmt.Sprintf(w.SettledShort, a.Reason)
	}
	return fmt.Sprintf(w.ClosedBecause, a.Reason)
}

// visitWhen is the day of a booked visit, with its part.
func (t *turn) visitWhen(a store.Alert, w *words) string {
	s := dayText(a.Booked, w)
	if a.Part != "" {
		s += " " + w.Part[a.Part]
	}
	return s
}

// whoGoes is the tech of a booked visit.
func (t *turn) whoGoes(a store.Alert, w *words) string {
	if a.Tech == "" {
		return w.NobodyYet
	}
	return t.who(a.Tech)
}

// alertLine is an alert in one line.
func (t *turn) alertLine(a store.Alert) (string, error) {
	site, err := t.tx.Site(a.Site)
	return fmt.Sprintf("%s  %s: %s", assess.DateOf(a.RaisedAt.In(t.opt.Zone)), siteLine(site.Site), t.stateIn(a, t.words())), err
}

// stamp is an instant on the shop's wall clock.
func (t *turn) stamp(at time.Time, w *words) string {
	at = at.In(t.opt.Zone)
	return dayText(assess.DateOf(at), w) + at.Format(" 15:04")
}

// who is a person as the team reads the name.
func (t *turn) who(id string) string {
	if id == t.person.ID && t.person.Name != "" {
		return t.person.Name
	}
	if p, err := t.tx.Person(id); err == nil && p.Name != "" {
		return p.Name
	}
	return id
}

// whatToSend is the parts and the hours that the alert calls for: by what is
// urgent now, else by the likeliest cause.
func whatToSend(codes []string, a assess.Assessment, w *words) string {
	for _, c := range []string{"gas_smell", "relief_blocked", "over_relief"} {
		if slices.Contains(codes, c) {
			return w.SendFor[c]
		}
	}
	if len(a.Causes) > 0 && a.Causes[0].P >= 0.4 {
		cause := a.Causes[0].Cause
		renew := func(f assess.FollowUp) bool { return f.Action == assess.ReplacePRV }
		if (cause == assess.CauseSetHigh || cause == assess.CauseSetLow) && slices.ContainsFunc(a.FollowUps, renew) {
			cause = assess.CausePassing // set wrong, and cannot be set: a gauge alone mends nothing
		}
		if s, ok := w.SendFor[string(cause)]; ok {
			return s
		}
	}
	return w.SendFor["unknown"]
}

package desk

import (
	"fmt"
	"strings"
	"time"

	"lazyhand/assess"
	"lazyhand/store"
)

// heardUnder deals with what is said in the thread of our own post, when it is
// a step for that post; done is false when the words stand for themselves.
func (t *turn) heardUnder(p store.Post) (done bool, err error) {
	a, found, err := t.alertOfPost(p)
	if err != nil || !found || !a.Open() {
		return false, err
	}
	crew, err := t.tx.People()
	if err != nil {
		return false, err
	}
	var step func() error
	if reason, ok := saysClosed(t.m.Text); ok {
		step = func() error { return t.closeAlert(a, reason) }
	} else if b, ok := readBooking(t.m.Text, t.day, crew); ok {
		step = func() error { return t.book(a, b) }
	} else if saysClaim(t.m.Text) {
		step = func() error { return t.claim(a) }
	}
	if step == nil {
		return false, nil
	}
	if err := t.tx.FileUnder(t.m.ID, a.Site); err != nil {
		return true, err
	}
	return true, step()
}

// mayDispatch tells whether the person may move alerts, and says politely when
// not.
func (t *turn) mayDispatch() (bool, error) {
	if t.role >= Dispatcher {
		return true, nil
	}
	return false, t.say(Body{Lead: t.words().DispatchOnly})
}

// claim gives the alert to the person.
func (t *turn) claim(a store.Alert) error {
	if ok, err := t.mayDispatch(); !ok {
		return err
	}
	w := t.shopWords()
	if a.State != "raised" {
		return t.say(Body{Lead: fmt.Sprintf(w.TakenAlready, t.stateText(a))})
	}
	a.State, a.Owner = "claimed", t.m.Author
	return t.changeAlert(a, "claimed", fmt.Sprintf(w.Claimed, t.who(a.Owner)))
}

// closeAlert ends an alert with a reason; without one it asks for it.
func (t *turn) closeAlert(a store.Alert, reason string) error {
	if ok, err := t.mayDispatch(); !ok {
		return err
	}
	w := t.shopWords()
	if reason == "" {
		b := Body{Lead: w.WhyClose}
		for _, r := range w.Reasons {
			b.Buttons = append(b.Buttons, Button{"close_as", r, fmt.Sprintf("%d %s", a.ID, r)})
		}
		if err := t.keepQuestion(t.m, askReason, ofAlert{ID: a.ID}); err != nil {
			return err
		}
		return t.say(b)
	}
	a.State, a.Reason = "closed", reason
	return t.changeAlert(a, "closed: "+reason, fmt.Sprintf(w.ClosedBy, t.who(t.m.Author), reason))
}

// book sets the day of the visit and who goes, as far as b says so, and asks
// for what is missing.
func (t *turn) book(a store.Alert, b booking) error {
	if ok, err := t.mayDispatch(); !ok {
		return err
	}
	w := t.shopWords()
	if b.Day.IsZero() {
		b.Day, b.Part = a.Booked, a.Part
	}
	if b.Who == "" && b.Nobody == "" {
		b.Who = a.Tech
	}
	if b.Day.IsZero() {
		return t.askDay(a, b.Who)
	}
	if b.Day.Before(t.day) {
		return t.say(Body{Lead: fmt.Sprintf(w.DayIsPast, dayText(b.Day, w))})
	}
	a.State, a.Booked, a.Part, a.Tech = "booked", b.Day, b.Part, b.Who
	if a.Owner == "" {
		a.Owner = t.m.Author
	}
	said := fmt.Sprintf(w.BookedFor, t.visitWhen(a, w), t.whoGoes(a, w))
	if !t.cal.Workday(b.Day.In(t.opt.Zone).Add(12 * time.Hour)) {
		said += " " + w.NoWorkday
	}
	if err := t.changeAlert(a, "booked "+strings.TrimSpace(b.Day.String()+" "+b.Part+" "+b.Who), said); err != nil {
		return err
	}
	a.Change++
	if a.Tech == "" {
		if err := t.dropBrief(a); err != nil {
			return err
		}
		return t.askWho(a, b.Nobody)
	}
	return t.brief(a)
}

// askDay offers the next working days.
func (t *turn) askDay(a store.Alert, who string) error {
	w := t.shopWords()
	if err := t.keepQuestion(t.m, askVisitDay, ofAlert{ID: a.ID, Who: who}); err != nil {
		return err
	}
	b := Body{Lead: w.WhichDay}
	for day := t.day; len(b.Buttons) < 5 && day.Sub(t.day) < 60; day = day.AddDays(1) {
		if t.cal.Workday(day.In(t.opt.Zone).Add(12 * time.Hour)) {
			b.Buttons = append(b.Buttons, Button{"book_day", dayText(day, w), strings.TrimSpace(fmt.Sprintf("%d %s %s", a.ID, day, who))})
		}
	}
	return t.say(b)
}

// askWho offers the crew, those who reported last first; unknown is a name that
// was said and that nobody has.
func (t *turn) askWho(a store.Alert, unknown string) error {
	w := t.shopWords()
	crew, err := t.tx.People()
	if err != nil {
		return err
	}
	b := Body{Lead: w.WhoGoes}
	if unknown != "" {
		b.Lead = fmt.Sprintf(w.NotKnownHere, unknown) + " " + w.WhoGoes
	}
	for _, p := range crew {
		if len(b.Buttons) < 6 && t.opt.Role(p.ID) >= Field && p.Site != 0 {
			b.Buttons = append(b.Buttons, Button{"book_who", p.Name, fmt.Sprintf("%d %s", a.ID, p.ID)})
		}
	}
	if err := t.keepQuestion(t.m, askVisitor, ofAlert{ID: a.ID}); err != nil {
		return err
	}
	return t.sayUnder(a, fmt.Sprintf("%d:who", a.Change), b)
}

// brief tells the tech of a booked visit what to know before they go, now and
// again on the morning of the visit.
func (t *turn) brief(a store.Alert) error {
	if err := t.dropBrief(a); err != nil {
		return err
	}
	b, err := t.briefBody(a)
	if err != nil {
		return err
	}
	key := fmt.Sprintf("brief:%d:%d", a.ID, a.Change)
	if err := t.queue(Post{Key: key + ":now", Kind: Say, Channel: DirectTo(a.Tech), Site: a.Site, Body: b}); err != nil {
		return err
	}
	morning := t.morningOf(a.Booked)
	if !morning.After(t.m.At) {
		return nil
	}
	return t.planDue(store.Due{Key: key + ":morning", Kind: dueBrief, About: a.ID, At: morning})
}

func (t *turn) dropBrief(a store.Alert) error { return t.tx.DropDue(dueBrief, a.ID) }

// morningOf is when a tech is told on the day of a visit: an hour before work
// begins, seven o'clock when the shop names no hours, and not in quiet hours.
func (d *Desk) morningOf(day assess.Date) time.Time {
	minute := 7 * 60
	if h := d.opt.Calendar.Hours; h.From != h.To && h.From >= 60 {
		minute = h.From - 60
	}
	return d.cal.AfterQuiet(d.cal.At(day.In(d.opt.Zone).Add(12*time.Hour), minute))
}

// storyLines is how long a house's story is in a brief.
const storyLines = 6

// briefBody is what a tech should know before a visit, in their language.
func (t *turn) briefBody(a store.Alert) (Body, error) {
	tech, err := t.tx.Person(a.Tech)
	if err != nil {
		return Body{}, err
	}
	lang := t.language(tech)
	w := wordsIn(lang)
	site, err := t.tx.Site(a.Site)
	if err != nil {
		return Body{}, err
	}
	h, err := t.house(t.tx, site, t.day, lang)
	if err != nil {
		return Body{}, err
	}
	b := Body{Lead: fmt.Sprintf(w.BriefLead, t.visitWhen(a, w), siteLine(site.Site))}
	b.Heard = strings.Join(append(findings(h.Assessment, assess.Soon), likely(h.Assessment, h.lastVisit(), w)...), " ")
	b.Facts = series(h.Visits, storyLines, w)
	b.Facts = append(b.Facts, installedLine(h, w))
	if n := h.Assessment.NextCheck; n != nil {
		b.Next = append(b.Next, w.FirstCheck+n.Check)
	}
	b.Next = append(b.Next, w.Bring+whatToSend(strings.Fields(a.Codes), h.Assessment, w))
	b.Cautions = cautionTexts(h.Assessment.Cautions, w)
	if t.opt.Painter != nil {
		b.Draw = &Drawing{What: drawsPlot, Site: site.ID, Day: t.day, Lang: lang}
	}
	return b, nil
}

// installedLine tells the regulator and the heater with their ages.
func installedLine(h House, w *words) string {
	var parts []string
	for _, e := range []assess.Equipment{h.Valve, h.Heater, h.Tank} {
		if e.Item == "" {
			continue
		}
		parts = append(parts, installedPart(e, h.Today, w))
	}
	if h.Valve.Item == "" {
		parts = append([]string{w.Item[assess.PRV] + " " + w.NotKnown}, parts...)
	}
	return strings.Join(parts, "; ")
}

// installedPart tells of one installed thing, with its age.
func installedPart(e assess.Equipment, today assess.Date, w *words) string {
	s := equipmentText(e, w)
	if e.InstalledYear != nil && !e.Absent() {
		s += " " + w.yearsOld(today.Year-*e.InstalledYear)
	}
	return s
}

package desk

import (
	"encoding/json"
	"fmt"
	"strconv"
	"strings"

	"lazyhand/assess"
	"lazyhand/intents"
	"lazyhand/store"
)

// press is a button being pressed: what it is about, and the words after that.
type press struct {
	id   int64
	rest []string
}

// presses are the desk's buttons by name: what a button's value says, and what
// pressing does.
func (t *turn) presses() map[string]func(press) error {
	return map[string]func(press) error{
		"site":      t.pressSite,      // message, house: the house that was asked for
		"undo":      t.pressUndo,      // message: take its report back
		"elsewhere": t.pressElsewhere, // message: another house was meant
		"again":     t.pressAgain,     // message: its house is about to be read again
		"recheck":   t.pressRecheck,   // message: come back to its house
		"correct":   t.pressCorrect,   // message, with the right wording typed
		"pick":      t.pressPick,      // message, number: one of what was offered
		"same":      t.pressSame,      // message, yes or no: the new house is the one on record
		"claim":     t.onAlert(func(a store.Alert, _ []string) error { return t.claim(a) }),
		"book":      t.onAlert(func(a store.Alert, _ []string) error { return t.pressBook(a) }),
		"book_day":  t.onAlert(t.pressBookDay), // alert, day, person or nobody
		"book_who":  t.onAlert(func(a store.Alert, rest []string) error { return t.book(a, booking{Who: at(rest, 0)}) }),
		"close":     t.onAlert(func(a store.Alert, _ []string) error { return t.closeAlert(a, t.typed) }),
		"close_as":  t.onAlert(func(a store.Alert, rest []string) error { return t.closeAlert(a, strings.Join(rest, " ")) }),
		"done":      t.onFollowUp(func(f store.FollowUp, _ []string) error { return t.finishFollowUp(f) }),
		"put_off":   t.onFollowUp(func(f store.FollowUp, rest []string) error { return t.putOff(f, daysOf(rest)) }),
		"hand":      t.onFollowUp(func(f store.FollowUp, _ []string) error { return t.askToWhom(f) }),
		"hand_to":   t.onFollowUp(func(f store.FollowUp, rest []string) error { return t.hand([]store.FollowUp{f}, at(rest, 0)) }),
		"open":      t.pressOpen, // what, from, to: what is behind a number
	}
}

// pressed does what a button asks for.
func (t *turn) pressed() error {
	do, known := t.presses()[t.button]
	if !known {
		return fmt.Errorf("there is no button %q", t.button)
	}
	f := strings.Fields(t.value)
	id, err := strconv.ParseInt(at(f, 0), 10, 64)
	if err != nil {
		return fmt.Errorf("button %s says %q: %w", t.button, t.value, err)
	}
	return do(press{id, f[1:]})
}

// onAlert does something about the alert that a button names; on one that has
// ended it says so.
func (t *turn) onAlert(do func(store.Alert, []string) error) func(press) error {
	return func(p press) error {
		a, found, err := t.tx.Alert(p.id)
		if err != nil || !found {
			return err
		}
		if !a.Open() {
			return t.say(Body{Lead: t.stateText(a)})
		}
		return do(a, p.rest)
	}
}

func (t *turn) onFollowUp(do func(store.FollowUp, []string) error) func(press) error {
	return func(p press) error {
		f, found, err := t.tx.FollowUp(p.id)
		if err != nil || !found {
			return err
		}
		if f.State != "open" {
			return t.say(Body{Lead: fmt.Sprintf(t.words().AlreadyEnded, f.Line, t.words().Action[f.Action])})
		}
		return do(f, p.rest)
	}
}

// pressSite answers the question which house was meant.
func (t *turn) pressSite(p press) error {
	s, err := strconv.ParseInt(at(p.rest, 0), 10, 64)
	if err != nil {
		return fmt.Errorf("button site says %q: %w", t.value, err)
	}
	q, found, err := t.tx.OpenQuestion(t.m.Channel, t.m.Thread, t.m.Author, t.m.At.Add(-t.opt.Memory))
	if err != nil {
		return err
	}
	if !found || q.Message != p.id {
		return t.say(Body{Lead: t.words().QuestionGone})
	}
	site, err := t.tx.Site(s)
	if err != nil {
		return err
	}
	return t.finish(q, site)
}

// pressPick answers a question with options by its button.
func (t *turn) pressPick(p press) error {
	for _, kind := range []string{askUnclear, askReading} {
		q, found, err := t.tx.QuestionAbout(p.id, kind)
		if err != nil {
			return err
		}
		if !found {
			continue
		}
		var b asked
		if err := json.Unmarshal(q.Body, &b); err != nil {
			return fmt.Errorf("read the open question: %w", err)
		}
		i, err := strconv.Atoi(at(p.rest, 0))
		if err != nil || i < 0 || i >= len(b.MightBe) {
			return fmt.Errorf("button pick says %q", t.value)
		}
		if m, ok, err := t.theirs(p.id); err != nil || !ok || m.ID == 0 {
			return err
		}
		if kind == askReading {
			if err := t.tx.EndQuestion(q.ID, "answered"); err != nil {
				return err
			}
			return t.answerReading(p.id, b, b.MightBe[i])
		}
		_, err = t.answerUnclear(q, b.Unclear, b.MightBe[i])
		return err
	}
	return t.say(Body{Lead: t.words().QuestionGone})
}

// theirs returns the message that a button is about when the person may change
// what it reported; else it says who may.
func (t *turn) theirs(id int64) (m store.Message, ok bool, err error) {
	m, found, err := t.tx.Message(id)
	if err != nil || !found {
		return m, false, err
	}
	if m.State != store.Taken {
		return m, false, t.say(Body{Lead: t.words().NothingToUndo})
	}
	if m.Author != t.m.Author && t.role < Dispatcher {
		return m, false, t.say(Body{Lead: fmt.Sprintf(t.words().NotYours, t.who(m.Author))})
	}
	return m, true, nil
}

func (t *turn) pressUndo(p press) error {
	m, ok, err := t.theirs(p.id)
	if err != nil || !ok {
		return err
	}
	return t.takeBack(m)
}

// pressAgain invites the next reading of the house into the thread.
func (t *turn) pressAgain(p press) error {
	site, found, err := t.siteOfMessage(p.id)
	if err != nil || !found {
		return err
	}
	return t.say(Body{Lead: fmt.Sprintf(t.words().SendAgain, siteLine(site.Site))})
}

// daysToRecheck is how far ahead the button books a recheck: two weeks, as
// people ask for most often (common practice).
const daysToRecheck = 14

// pressRecheck books a recheck of the house for whoever pressed.
func (t *turn) pressRecheck(p press) error {
	site, found, err := t.siteOfMessage(p.id)
	if err != nil || !found {
		return err
	}
	due, w := t.day.AddDays(daysToRecheck), t.words()
	err = t.tx.KeepFollowUp(store.FollowUp{Site: site.ID, Action: assess.Recheck, Due: due, Why: w.AskedFor, Owner: t.m.Author, Source: p.id, Urgency: assess.Soon})
	if err != nil {
		return err
	}
	return t.say(Body{Lead: fmt.Sprintf(w.Booked, siteLine(site.Site), w.Action[assess.Recheck], dayText(due, w))})
}

// siteOfMessage returns the house that a message was filed under.
func (t *turn) siteOfMessage(id int64) (store.SiteRecord, bool, error) {
	m, found, err := t.tx.Message(id)
	if err != nil || !found || m.Site == 0 {
		return store.SiteRecord{}, false, err
	}
	site, err := t.tx.Site(m.Site)
	return site, err == nil, err
}

// pressElsewhere takes a report off the house that was filled in, and asks for
// the right one.
func (t *turn) pressElsewhere(p press) error {
	m, ok, err := t.theirs(p.id)
	if err != nil || !ok {
		return err
	}
	return t.elsewhere(m)
}

// elsewhere takes a report off its house and asks for the right one.
func (t *turn) elsewhere(m store.Message) error {
	gone, err := t.drop(m)
	if err != nil || gone.Site == 0 {
		return err
	}
	if err := t.rejudge(gone); err != nil {
		return err
	}
	for _, id := range []int64{m.ID, t.m.ID} { // what follows in the thread is not of that house either
		if err := t.tx.FileUnderNone(id); err != nil {
			return err
		}
	}
	t.person.Site = 0
	if err := t.tx.KeepPerson(t.person); err != nil {
		return err
	}
	return t.askSite(m)
}

// pressCorrect puts the right wording, typed into a form, in the place of what
// a message was understood to say.
func (t *turn) pressCorrect(p press) error {
	m, ok, err := t.theirs(p.id)
	if err != nil || !ok {
		return err
	}
	if t.typed == "" {
		return t.askRightOf(m.ID)
	}
	c := contextOf(t.dayOf(m))
	if m.Frame != nil {
		c.Told = new(intents.Frame)
		if err := json.Unmarshal(m.Frame, c.Told); err != nil {
			return fmt.Errorf("read the frame of message %d: %w", m.ID, err)
		}
	}
	f := t.parser.Parse(t.typed, c)
	if len(reports(f)) == 0 && f.Site == "" && len(f.Amends) == 0 {
		return t.say(Body{Lead: t.words().NothingToCorrect})
	}
	t.amended = m
	return t.rightWording(m, f)
}

func (t *turn) pressBook(a store.Alert) error {
	if ok, err := t.mayDispatch(); !ok {
		return err
	}
	return t.askDay(a, a.Tech)
}

func (t *turn) pressBookDay(a store.Alert, rest []string) error {
	day, err := assess.ParseDate(at(rest, 0))
	if err != nil {
		return fmt.Errorf("button book_day says %q: %w", t.value, err)
	}
	return t.book(a, booking{Day: day, Who: at(rest, 1)})
}

func daysOf(rest []string) int {
	n, err := strconv.Atoi(at(rest, 0))
	if err != nil || n < 1 {
		return daysPutOff
	}
	return n
}

package desk

import (
	"fmt"
	"slices"
	"strings"

	"lazyhand/assess"
	"lazyhand/intents"
	"lazyhand/store"
)

// dueWithin is how far ahead "what is due" looks, in days; daysPutOff how far
// a follow-up is put off when nobody says how far.
const (
	dueWithin  = 7
	daysPutOff = 7
)

// farthest is how many days ahead a follow-up may be: a regulator's life. What
// is farther is a slip.
const farthest = 20 * 365

// plan opens the follow-ups that people asked for and that the assessment
// advises. A person's word wins over ours, and our own advice never puts off
// what is open already, which open tells.
func (t *turn) plan(m store.Message, f intents.Frame, site store.SiteRecord, a assess.Assessment, visit assess.Visit, open []store.FollowUp) error {
	day := t.dayOf(m)
	owner, err := t.ownerOf(m, f)
	if err != nil {
		return err
	}
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
		if days < 0 || days > farthest {
			continue // the reply says so
		}
		if settled, err := t.settledBefore(m, site, p.Action, day.AddDays(days)); err != nil {
			return err
		} else if settled {
			continue
		}
		err := t.tx.KeepFollowUp(store.FollowUp{Site: site.ID, Action: p.Action, Due: day.AddDays(days), Why: quote(m.Text), Owner: owner, Source: m.ID, Urgency: assess.Soon})
		if err != nil {
			return err
		}
	}
	for _, p := range visit.Plans {
		said[p.Action] = true // asked for earlier in the day, and kept or settled since
	}
	urgency := assess.Note
	if g := gravestFirst(a.Findings); len(g) > 0 {
		urgency = g[0].Urgency
	}
	for _, n := range a.FollowUps {
		due := day.AddDays(n.InDays)
		sooner := slices.ContainsFunc(open, func(o store.FollowUp) bool { return o.Action == n.Action && !due.Before(o.Due) })
		if said[n.Action] || sooner {
			continue
		}
		if settled, err := t.settledBefore(m, site, n.Action, due); err != nil {
			return err
		} else if settled {
			continue
		}
		err := t.tx.KeepFollowUp(store.FollowUp{Site: site.ID, Action: n.Action, Due: due, Why: n.Why, Owner: m.Author, Source: m.ID, Urgency: urgency})
		if err != nil {
			return err
		}
	}
	return t.dropSetting(a, open)
}

// settledBefore tells whether a follow-up that a report calls for was done already,
// before the report was put right or worded anew: that opens nothing again.
func (t *turn) settledBefore(m store.Message, site store.SiteRecord, action assess.Action, due assess.Date) (bool, error) {
	was := []store.Message{m}
	if m.About != 0 {
		var err error
		if was, err = t.tx.WordingsOf(m.About); err != nil {
			return false, err
		}
	} else if m.ID == t.m.ID {
		return false, nil // it has just been said
	}
	for _, w := range was {
		if w.ID > m.ID {
			continue
		}
		if kept, err := t.tx.KeepSettled(site.ID, action, w.ID, m.ID, due); err != nil || kept {
			return kept, err
		}
	}
	return false, nil
}

// renewsPRV tells whether a regulator is to be replaced, and not to be set.
func renewsPRV(a assess.Assessment) bool {
	calls := func(action assess.Action) bool {
		return slices.ContainsFunc(a.FollowUps, func(f assess.FollowUp) bool { return f.Action == action })
	}
	return calls(assess.ReplacePRV) && !calls(assess.SetPRV)
}

// dropSetting drops our advice to set a regulator that is to be replaced: its screw may be frozen.
func (t *turn) dropSetting(a assess.Assessment, open []store.FollowUp) error {
	if !renewsPRV(a) {
		return nil
	}
	for _, o := range open {
		if o.Action != assess.SetPRV || quoted(o.Why) {
			continue
		}
		if err := t.tx.EndFollowUp(o.ID, "dropped", t.m.At, t.m.ID); err != nil {
			return err
		}
	}
	return nil
}

// sendVerbs are verbs that give a plan to the member of the crew that is named.
var sendVerbs = wordSet("send schedule remind have put book get manda mandar recuerdale agenda programa que")

// ownerOf is whose follow-ups a message plans: its author's, or where it only plans
// for somebody of the crew that it names, that person's: "schedule Ben for 12 Elm".
func (t *turn) ownerOf(m store.Message, f intents.Frame) (string, error) {
	said := plainWords(m.Text)
	if !onlyPlans(f) || !sendVerbs[at(said, 0)] {
		return m.Author, nil
	}
	crew, err := t.tx.People()
	if err != nil {
		return "", err
	}
	if who := named(said, crew); who != "" {
		return who, nil
	}
	return m.Author, nil
}

// fulfils says which work ends which follow-up.
var fulfils = map[assess.Action][]assess.Action{
	assess.ReplacedPRV:   {assess.ReplacePRV, assess.SetPRV},
	assess.InstalledPRV:  {assess.ReplacePRV, assess.SetPRV},
	assess.RebuiltPRV:    {assess.ReplacePRV, assess.SetPRV},
	assess.SetPRV:        {assess.SetPRV},
	assess.InstalledTank: {assess.InstallTank, assess.ReplaceTank},
	assess.ReplacedTank:  {assess.InstallTank, assess.ReplaceTank},
}

// settle ends the follow-ups that a message's part v of a visit fulfils: work done, and a
// recheck by a fair reading of the house, unless that visit itself asked for the recheck. It
// returns those that stay open.
func (t *turn) settle(site store.SiteRecord, v, whole assess.Visit, a assess.Assessment) (open []store.FollowUp, err error) {
	ends := map[assess.Action]bool{}
	for _, w := range v.Work {
		for _, e := range fulfils[w.Action] {
			ends[e] = true
		}
	}
	promised := slices.ContainsFunc(whole.Plans, func(p assess.Plan) bool {
		return p.Action == assess.Recheck && p.InDays != nil && *p.InDays > 0
	})
	if a.HousePSI != nil && len(v.Readings) > 0 && !promised {
		ends[assess.Recheck] = true
	}
	list, err := t.tx.OpenFollowUps(site.ID)
	for _, f := range list {
		if !ends[f.Action] {
			open = append(open, f)
			continue
		}
		if err := t.tx.EndFollowUp(f.ID, "done", t.m.At, t.m.ID); err != nil {
			return nil, err
		}
	}
	return open, err
}

// due answers which follow-ups are due.
func (t *turn) due() error {
	w, said := t.words(), plainWords(t.m.Text)
	who, err := t.whoSaid(said)
	if err != nil {
		return err
	}
	days := t.daysAhead(said)
	list, err := t.dueOf(who, t.day.AddDays(days))
	if err != nil {
		return err
	}
	b := Body{Lead: dueLead(len(list), days, w)}
	visits, err := t.bookedBy(who, t.day.AddDays(days))
	if err != nil {
		return err
	}
	b.Facts = visits
	if len(list) == 0 && len(visits) > 0 {
		b.Lead = fmt.Sprintf(w.VisitsBooked, len(visits)) + " " + b.Lead
	} else if len(list) == 0 {
		later, err := t.dueOf(who, t.day.AddDays(farthest))
		if err != nil {
			return err
		}
		list = later[:min(len(later), 1)]
		for _, f := range list {
			b.Next = append(b.Next, w.NextDue+t.ownedLine(f, who))
		}
	} else {
		for _, f := range list {
			b.Facts = append(b.Facts, t.ownedLine(f, who))
		}
		b.Facts = shortened(b.Facts, w)
	}
	if who != "" {
		b.Lead = t.who(who) + ": " + b.Lead
	}
	if slices.ContainsFunc(said, func(w string) bool { return w == "open" || strings.HasPrefix(w, "abiert") }) {
		alerts, err := t.openAlertLines()
		if err != nil {
			return err
		}
		if len(alerts) > 0 {
			b.Lead = fmt.Sprintf(w.OpenAlerts, len(alerts)) + " " + b.Lead
			b.Facts = append(shortened(alerts, w), b.Facts...)
		}
	}
	return t.say(b)
}

// dueLead says how many follow-ups are due in so many days.
func dueLead(n, days int, w *words) string {
	switch {
	case n == 0 && days == 0:
		return w.NoneDueToday
	case n == 0:
		return fmt.Sprintf(w.NothingDue, days)
	case days == 0:
		return fmt.Sprintf(w.DueByToday, n)
	}
	return fmt.Sprintf(w.Due, n, days)
}

// bookedBy lists the visits booked up to a day, of one person when who names one.
func (t *turn) bookedBy(who string, by assess.Date) ([]string, error) {
	open, err := t.tx.OpenAlerts()
	if err != nil {
		return nil, err
	}
	var out []string
	for _, a := range open {
		if a.State != "booked" || by.Before(a.Booked) || who != "" && a.Tech != who {
			continue
		}
		site, err := t.tx.Site(a.Site)
		if err != nil {
			return nil, err
		}
		out = append(out, fmt.Sprintf("%s  %s: %s", a.Booked, siteLine(site.Site), t.stateIn(a, t.words())))
	}
	slices.Sort(out)
	return out, nil
}

// mostDue is how many follow-ups are looked at to answer what is due.
const mostDue = 500

// dueOf returns the follow-ups due by a day, of one person when who names one.
func (t *turn) dueOf(who string, by assess.Date) ([]store.FollowUp, error) {
	if who == "" {
		return t.tx.DueFollowUps(by, mostDue)
	}
	list, err := t.tx.FollowUpsOf(who, mostDue)
	return slices.DeleteFunc(list, func(f store.FollowUp) bool { return by.Before(f.Due) }), err
}

// ownedLine is a follow-up in one line, with whose it is unless all are who's.
func (t *turn) ownedLine(f store.FollowUp, who string) string {
	if who != "" {
		return followUpLine(f, t.words())
	}
	return fmt.Sprintf("%s  %s: %s (%s). %s", f.Due, f.Line, t.words().Action[f.Action], t.who(f.Owner), f.Why)
}

func (t *turn) followUpLines(list []store.FollowUp) []string {
	var out []string
	for _, f := range list {
		out = append(out, followUpLine(f, t.words()))
	}
	return out
}

// followUpLine is a follow-up in one line.
func followUpLine(f store.FollowUp, w *words) string {
	return fmt.Sprintf("%s  %s: %s. %s", f.Due, f.Line, w.Action[f.Action], f.Why)
}

// jobWords are the words by which a message names the job of a follow-up: "cancel the recheck at 12 Elm".
var jobWords = [...]struct {
	words   map[string]bool
	actions []assess.Action
}{
	{wordSet("recheck rechecks retest reread revisar revision revisita"), []assess.Action{assess.Recheck}},
	{wordSet("tank tanks tanque tanques"), []assess.Action{assess.InstallTank, assess.ReplaceTank}},
	{wordSet("prv reg regulator reguladora regulador"), []assess.Action{assess.ReplacePRV, assess.SetPRV}},
}

// jobsNamed returns the jobs that the message names, beside the words of the house's own name.
func (t *turn) jobsNamed(site store.SiteRecord) (jobs []assess.Action) {
	house := wordSet(strings.Join(plainWords(site.Line), " "))
	for _, w := range plainWords(t.m.Text) {
		for _, j := range jobWords {
			if j.words[w] && !house[w] {
				jobs = append(jobs, j.actions...)
			}
		}
	}
	return jobs
}

// meantFollowUp returns the open follow-up of a house that the message means: of the job that it names, or else of any,
// the one that is due first. It says so when there is none. Work that is told as done may close a recheck too:
// "done at 12 Elm, new prv is in".
func (t *turn) meantFollowUp(site store.SiteRecord, done bool) (f store.FollowUp, ok bool, err error) {
	open, err := t.tx.OpenFollowUps(site.ID)
	if err != nil {
		return f, false, err
	}
	if len(open) == 0 {
		return f, false, t.say(Body{Lead: fmt.Sprintf(t.words().NothingOpen, siteLine(site.Site))})
	}
	named := t.jobsNamed(site)
	for _, f := range open {
		if len(named) == 0 || slices.Contains(named, f.Action) {
			return f, true, nil
		}
	}
	if done && !slices.Contains(named, assess.Recheck) {
		return open[0], true, nil
	}
	return f, false, t.say(Body{Lead: fmt.Sprintf(t.words().OtherOpen, siteLine(site.Site)), Facts: t.followUpLines(open)})
}

func (t *turn) finishFollowUp(f store.FollowUp) error {
	if err := t.tx.EndFollowUp(f.ID, "done", t.m.At, t.m.ID); err != nil {
		return err
	}
	return t.say(Body{Lead: fmt.Sprintf(t.words().Done, f.Line, t.words().Action[f.Action])})
}

// cancel ends a follow-up that nobody wants any more.
func (t *turn) cancel(f store.FollowUp) error {
	if ok, err := t.mayMove(f); !ok {
		return err
	}
	if err := t.tx.EndFollowUp(f.ID, "dropped", t.m.At, t.m.ID); err != nil {
		return err
	}
	return t.say(Body{Lead: fmt.Sprintf(t.words().Cancelled, f.Line, t.words().Action[f.Action])})
}

// mayMove tells whether the person may put a follow-up off or hand it on: their
// own, or any for a dispatcher.
func (t *turn) mayMove(f store.FollowUp) (bool, error) {
	if f.Owner == t.m.Author || t.role >= Dispatcher {
		return true, nil
	}
	return false, t.say(Body{Lead: fmt.Sprintf(t.words().OwnersOnly, t.who(f.Owner))})
}

// toADay are the words that lead to the day itself: "push it to Friday".
var toADay = wordSet("to til till until on para al hasta el")

func (t *turn) putOff(f store.FollowUp, days int) error {
	if ok, err := t.mayMove(f); !ok {
		return err
	}
	w := t.words()
	if days < 0 || days > farthest {
		return t.say(Body{Lead: w.TooFar})
	}
	due := t.day.AddDays(days)
	if due.Before(f.Due) && t.m.Kind == store.Said && !slices.ContainsFunc(plainWords(t.m.Text), func(w string) bool { return toADay[w] }) {
		due = f.Due.AddDays(days) // "snooze it a week" brings nothing forward
	}
	if err := t.tx.MoveFollowUp(f.ID, due); err != nil {
		return err
	}
	return t.say(Body{Lead: fmt.Sprintf(w.Moved, f.Line, w.Action[f.Action], dayText(due, w))})
}

// askToWhom offers the crew for a follow-up.
func (t *turn) askToWhom(f store.FollowUp) error {
	if ok, err := t.mayMove(f); !ok {
		return err
	}
	crew, err := t.tx.People()
	if err != nil {
		return err
	}
	b := Body{Lead: fmt.Sprintf(t.words().ToWhom, f.Line)}
	for _, p := range crew {
		if p.ID != f.Owner && len(b.Buttons) < 6 && t.opt.Role(p.ID) >= Field {
			b.Buttons = append(b.Buttons, Button{"hand_to", p.Name, fmt.Sprintf("%d %s", f.ID, p.ID)})
		}
	}
	if err := t.keepQuestion(t.m, askHand, ofAlert{ID: f.ID}); err != nil {
		return err
	}
	return t.say(b)
}

// hand gives follow-ups of a house to another person.
func (t *turn) hand(list []store.FollowUp, to string) error {
	w := t.words()
	var actions []string
	for _, f := range list {
		if ok, err := t.mayMove(f); !ok {
			return err
		}
		if err := t.tx.HandFollowUp(f.ID, to); err != nil {
			return err
		}
		actions = append(actions, w.Action[f.Action])
	}
	return t.say(Body{Lead: fmt.Sprintf(w.Handed, list[0].Line, strings.Join(actions, ", "), t.who(to)), Calls: []string{to}})
}

var handVerbs = wordSet("give hand pass assign reassign transfer move reasigna transfiere mueve pasa pasale pasalo dale da asigna asignale")

// handOver reads "give 12 Alder to Ben"; done is false when it is none.
func (t *turn) handOver(f intents.Frame, site store.SiteRecord) (done bool, err error) {
	if len(reports(f)) > 0 {
		return false, nil
	}
	said := plainWords(t.m.Text)
	if !handVerbs[at(said, 0)] {
		return false, nil
	}
	crew, err := t.tx.People()
	if err != nil {
		return false, err
	}
	to := named(said, crew)
	if f.Site != "" {
		found, sure, err := t.resolve(assess.Site{Line: f.Site, Town: f.Town, Postcode: f.Postcode}, false)
		if err != nil || !sure {
			return false, err
		}
		site = found[0]
	}
	if to == "" || site.ID == 0 {
		return false, nil
	}
	open, err := t.tx.OpenFollowUps(site.ID)
	if err != nil {
		return true, err
	}
	if len(open) == 0 {
		return true, t.say(Body{Lead: fmt.Sprintf(t.words().NothingOpen, siteLine(site.Site))})
	}
	if err := t.tx.FileUnder(t.m.ID, site.ID); err != nil {
		return true, err
	}
	return true, t.hand(open, to)
}

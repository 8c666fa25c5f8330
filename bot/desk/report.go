package desk

import (
	"cmp"
	"fmt"
	"slices"
	"strings"
	"time"

	"lazyhand/assess"
	"lazyhand/intents"
	"lazyhand/store"
)

// act files a frame: the message m says it, site stands for a house not named.
func (t *turn) act(m store.Message, f intents.Frame, site store.SiteRecord, remembered bool) error {
	if f.Site != "" {
		named := assess.Site{Line: f.Site, Town: f.Town, Postcode: f.Postcode}
		found, sure, err := t.resolve(named, len(reports(f)) > 0)
		if err != nil {
			return err
		}
		if !sure {
			if err := t.file(m, 0); err != nil {
				return err
			}
			return t.askWhich(m, named, found)
		}
		site, remembered = found[0], false
	}
	about := int64(0)
	if site.ID != 0 && !isChatter(f) {
		about = site.Named
	}
	if err := t.file(m, about); err != nil {
		return err
	}
	if w := t.which; w != nil && m.ID == t.m.ID && t.asksStreet(f, *w) {
		return t.street(w.span, w.sites)
	}
	if w := t.which; w != nil && f.Site == "" && m.ID == t.m.ID {
		return t.askAmong(m, *w)
	}
	if len(f.Unclear) > 0 && len(reports(f)) == 0 {
		return t.askUnclear(m, f)
	}
	if f.Site == "" && m.ID == t.m.ID && (site.ID == 0 || remembered) {
		asked, found, err := t.askedBefore(f, site)
		if err != nil {
			return err
		}
		if found {
			site, remembered = asked, false
			if err := t.file(m, site.Named); err != nil {
				return err
			}
		}
	}
	if corrects(f) {
		return t.correct(m, f, site)
	}
	if len(reports(f)) > 0 {
		if site.ID == 0 {
			return t.askSite(m)
		}
		if err := t.report(m, f, site, remembered); err != nil {
			return err
		}
	}
	for i, a := range f.Asks() {
		if len(reports(f)) > 0 {
			i++ // the report has the message's first reply
		}
		if err := t.ask(i, a, site, f.Site != "" && len(reports(f)) == 0); err != nil {
			return err
		}
	}
	return nil
}

// asksStreet tells whether a message asks what is known, and names a street with
// several houses on record instead of a house.
func (t *turn) asksStreet(f intents.Frame, w among) bool {
	if len(w.sites) < 2 || w.span == "" || w.span[0] >= '0' && w.span[0] <= '9' || len(reports(f)) > 0 {
		return false
	}
	_, street, _ := strings.Cut(w.sites[0].Line, " ")
	if slices.ContainsFunc(w.sites, func(s store.SiteRecord) bool { return !strings.HasSuffix(s.Line, " "+street) }) {
		return false // Elm St and Elm Ct
	}
	c := contextOf(t.day)
	c.Sites = []string{w.sites[0].Line} // what it asks of one of them, it asks of the street
	asks := t.parser.Parse(t.m.Text, c).Asks()
	return len(asks) == 1 && asks[0].About == intents.AskHistory
}

// reports returns the statements of a frame that say something about a house.
func reports(f intents.Frame) []assess.Statement {
	var out []assess.Statement
	for _, s := range f.Statements {
		if _, ask := s.(intents.Ask); !ask {
			out = append(out, s)
		}
	}
	return out
}

// resolve finds the house on record that a line names. It opens a record when
// there is none and open is set; sure is false when several fit.
func (t *turn) resolve(named assess.Site, open bool) (sites []store.SiteRecord, sure bool, err error) {
	sites, err = t.tx.SitesLike(named)
	if err != nil {
		return nil, false, err
	}
	switch {
	case len(sites) > 1:
		return sites, false, nil
	case len(sites) == 1:
		r := sites[0]
		if fuller := fill(r.Site, named); fuller != r.Site && r.Named == r.ID {
			r.Site = fuller
			if err := t.tx.FillSite(r.ID, fuller); err != nil {
				return nil, false, err
			}
		}
		return []store.SiteRecord{r}, true, nil
	case !open:
		units, err := t.tx.UnitsOf(named) // whoever only asks need not name the flat
		if err != nil || len(units) > 0 {
			return units, len(units) == 1, err
		}
		return []store.SiteRecord{{Site: named}}, true, nil
	}
	r, err := t.tx.AddSite(named, t.m.ID)
	t.opened = &r
	return []store.SiteRecord{r}, true, err
}

// fill takes from a fuller spelling of the same house what the record lacks.
func fill(have, named assess.Site) assess.Site {
	if len(named.Line) > len(have.Line) {
		have.Line = named.Line
	}
	if have.Town == "" {
		have.Town = named.Town
	}
	if have.Postcode == "" {
		have.Postcode = named.Postcode
	}
	return have
}

// report keeps what a message says about a house, judges the house anew and
// answers.
func (t *turn) report(m store.Message, f intents.Frame, site store.SiteRecord, remembered bool) error {
	a, whole, err := t.put(m, f, site)
	if err != nil {
		return err
	}
	told := f
	told.Statements = append(slices.Clone(t.earlier), f.Statements...)
	visit := told.Visit(t.dayOf(m))
	b := t.verdictBody(m, site, told, a, whole, remembered)
	if onlyPlans(told) || t.replanned {
		b = t.plannedBody(m, site, plansOf(f), remembered)
		owner, err := t.ownerOf(m, f)
		if err != nil {
			return err
		}
		if owner != m.Author {
			b.Lead = strings.TrimSuffix(b.Lead, ".") + " (" + t.who(owner) + ")."
			b.Calls = []string{owner}
		}
	}
	if t.changed != "" {
		b.Heard = t.changed
	}
	switch {
	case len(f.Unclear) > 0:
		if err := t.keepQuestion(m, askUnclear, asked{Unclear: f.Unclear[0]}); err != nil {
			return err
		}
		b.Next = append([]string{f.Unclear[0].Ask}, b.Next...)
		b.Buttons = append(t.offered(m, f.Unclear[0]), b.Buttons...)
	case remembered:
		if err := t.keepQuestion(m, askElsewhere, nil); err != nil {
			return err
		}
	case t.opened != nil && t.opened.Named == site.Named && !t.righting: // who puts a house right has just said which
		if err := t.askSameHouse(m, site, &b); err != nil {
			return err
		}
	}
	if err := t.say(b); err != nil {
		return err
	}
	if onlyPlans(told) && !t.unsays && t.m.Kind != store.Edited {
		return nil // what is planned is no news of the house
	}
	return t.alert(m, site, a, visit) // the tech is answered first
}

// put keeps what a message says about a house, with what follows from it, and returns
// how the house stands and the whole visit of the day.
func (t *turn) put(m store.Message, f intents.Frame, site store.SiteRecord) (a assess.Assessment, whole assess.Visit, err error) {
	if err := t.tells(m); err != nil {
		return a, whole, err
	}
	said, err := t.saidAt(m)
	if err != nil {
		return a, whole, err
	}
	if err := t.remember(site.ID, said); err != nil {
		return a, whole, err
	}
	if a, whole, err = t.keepReport(m, f, site); err != nil {
		return a, whole, err
	}
	open, err := t.settle(site, f.Visit(t.dayOf(m)), whole, a)
	if err != nil {
		return a, whole, err
	}
	if err := t.plan(m, f, site, a, whole, open); err != nil {
		return a, whole, err
	}
	return a, whole, t.mark(m, MarkStored)
}

// onlyPlans tells whether a frame reports nothing but what is to be done.
func onlyPlans(f intents.Frame) bool {
	list := reports(f)
	return len(list) > 0 && !slices.ContainsFunc(list, func(s assess.Statement) bool { _, plan := s.(assess.Plan); return !plan })
}

// plansOf is a frame without what is not to be done.
func plansOf(f intents.Frame) intents.Frame {
	f.Statements = slices.DeleteFunc(slices.Clone(f.Statements), func(s assess.Statement) bool { _, plan := s.(assess.Plan); return !plan })
	return f
}

// dayOf is the shop's day on which a message was sent.
func (t *turn) dayOf(m store.Message) assess.Date { return assess.DateOf(m.At.In(t.opt.Zone)) }

// keepReport keeps what a message reports about a house in the place of what it
// reported before, and judges the house anew.
func (t *turn) keepReport(m store.Message, f intents.Frame, site store.SiteRecord) (assess.Assessment, assess.Visit, error) {
	if !t.fresh || m.ID != t.m.ID {
		if _, err := t.tx.DropReport(m.ID); err != nil {
			return assess.Assessment{}, assess.Visit{}, err
		}
	}
	day := f.Visit(t.dayOf(m)).Date
	r := store.Report{Message: m.ID, Site: site.Named, Day: day, At: m.At, Author: m.Author}
	return t.judgeWith(site, day, false, &newReport{r, f})
}

// judge judges a house anew after its visit of a day has changed; gone tells
// that something was taken away.
func (t *turn) judge(site store.SiteRecord, day assess.Date, gone bool) (assess.Assessment, assess.Visit, error) {
	return t.judgeWith(site, day, gone, nil)
}

// judgeWith keeps a new report, if there is one, with its verdict, the verdict
// on the other reports of its visit, what the house has, how it stands and what
// is to be expected of it. A visit of an earlier day is judged by what was known
// up to that day. It returns how the house stands now and the whole visit of the
// day.
func (t *turn) judgeWith(site store.SiteRecord, day assess.Date, gone bool, fresh *newReport) (a assess.Assessment, visit assess.Visit, err error) {
	in, list, err := t.input(t.tx, site, t.day, t.lang, fresh)
	if err != nil {
		return a, visit, err
	}
	now := assess.Assess(in)
	equipment := gone
	for _, r := range list {
		v := in.Visits[r.visit]
		if v.Date != day {
			continue
		}
		visit = v
		equipment = equipment || len(v.Equipment)+len(v.Work) > 0
		then := now
		if r.visit < len(in.Visits)-1 {
			earlier := in
			earlier.Visits, earlier.Today = in.Visits[:r.visit+1], day
			then = assess.Assess(earlier)
		}
		judged := then.Readings[min(r.first, len(then.Readings)):min(r.first+r.n, len(then.Readings))]
		kept := store.Verdict{HousePSI: then.HousePSI, StreetPSI: then.StreetPSI, Band: then.Band,
			ValveWork: valveWork(v.Work), Unfinished: unfinished(v, then.Readings)}
		keep := t.tx.Judge
		if r.fresh {
			keep = t.tx.AddReport
		}
		if err := keep(r.Report, kept, v.Readings[r.first:r.first+r.n], judged); err != nil {
			return now, visit, err
		}
	}
	if equipment {
		if err := t.tx.KeepEquipment(site.ID, livesOf(in.Visits)); err != nil {
			return now, visit, err
		}
	}
	if len(in.Visits) == 0 {
		return now, visit, t.tx.Stand(site.ID, store.Standing{})
	}
	stands := t.standing(now, in.Today)
	stands.Outlook = outlook(in, now)
	return now, visit, t.tx.Stand(site.ID, stands)
}

// outlook is what is to be expected of a house.
func outlook(in assess.Input, a assess.Assessment) *store.Outlook {
	o := store.Outlook{Day: in.Visits[len(in.Visits)-1].Date, Drift: a.Drift.State, Slope: a.Drift.PSIPerYear, Rank: urgencyRank[assess.Note]}
	if a.Drift.Crosses != nil {
		o.Crosses = a.Drift.Crosses.Date
	}
	if g := gravestFirst(a.Findings); len(g) > 0 {
		o.Rank, o.Finding = urgencyRank[g[0].Urgency], g[0].Code
	}
	return &o
}

// tells notes for the one who said it that a message reports something; for the
// person of this turn it is kept with the house, see remember.
func (t *turn) tells(m store.Message) error {
	if m.Author == t.person.ID {
		t.person.Tells(m.ID)
		return nil
	}
	return t.tx.KeepTelling(m.Author, m.ID)
}

// remember notes the house that the person last reported on, or went to; said is when
// they told it first. Who has gone on since stays there, whatever is put right or comes late,
// unless it was there that the report did not belong.
func (t *turn) remember(site int64, said time.Time) error {
	p := &t.person
	if p.Site == 0 || p.Site == site || !p.SiteAt.After(said) || slices.Contains(t.left, p.Site) {
		p.Site = site
		if t.m.At.After(p.SiteAt) {
			p.SiteAt = t.m.At
		}
	}
	return t.tx.KeepPerson(*p)
}

// saidAt is when a message was said first, whatever its newest wording.
func (t *turn) saidAt(m store.Message) (time.Time, error) {
	if m.Kind != store.Edited || m.About == 0 {
		return m.At, nil
	}
	first, found, err := t.tx.Message(m.About)
	if err != nil || !found {
		return m.At, err
	}
	return first.At, nil
}

// told is where the readings of a report stand among those of its visit.
type told struct {
	store.Report
	fresh    bool // it is not on record yet
	visit    int
	first, n int
	plans    bool // it only says what is to be done
}

// newReport is a report that is not on record yet, with what it says.
type newReport struct {
	store.Report
	frame intents.Frame
}

// inOrder puts a new report where it belongs among the house's others; it
// returns its place.
func inOrder(list []store.Report, fresh store.Report) ([]store.Report, int) {
	at, _ := slices.BinarySearchFunc(list, fresh, func(a, b store.Report) int {
		return cmp.Or(a.Day.Sub(b.Day), a.At.Compare(b.At), cmp.Compare(a.Message, b.Message))
	})
	return slices.Insert(list, at, fresh), at
}

// input gathers what an assessment of the house may know: its visits, one a
// day, with a new report among them if there is one, the shop's valve lives, and
// what the street's other houses show.
func (d *Desk) input(tx *store.Tx, site store.SiteRecord, today assess.Date, lang assess.Lang, fresh *newReport) (assess.Input, []told, error) {
	in := assess.Input{Today: today, Shop: d.opt.Shop, Lang: lang}
	reports, err := tx.Reports(site.ID)
	if err != nil {
		return in, nil, err
	}
	place := -1
	if fresh != nil {
		reports, place = inOrder(reports, fresh.Report)
	}
	in.Visits = make([]assess.Visit, 0, len(reports))
	list := make([]told, 0, len(reports))
	for i, r := range reports {
		var f intents.Frame
		if i == place {
			f = fresh.frame
		} else if err := f.UnmarshalJSON(r.Frame); err != nil {
			return in, nil, fmt.Errorf("read the report of %s on %s: %w", r.Day, site.Line, err)
		}
		if n := len(in.Visits); n == 0 || in.Visits[n-1].Date != r.Day {
			in.Visits = append(in.Visits, assess.Visit{Date: r.Day})
		}
		v := &in.Visits[len(in.Visits)-1]
		first := len(v.Readings)
		goOn(v, f.Statements)
		list = append(list, told{r, i == place, len(in.Visits) - 1, first, len(v.Readings) - first, onlyPlans(f)})
	}
	in.Lives = d.curve.lives()
	in.Neighbours, err = tx.StreetReadings(site.Street(), today.AddDays(-assess.StreetHistoryDays), site.ID, 50)
	return in, list, err
}

// goOn adds to a visit what its next message tells. Work on the regulator parts
// the visit: what earlier messages read is as found, what later ones read as
// left, unless they say otherwise. So is what the message itself reads, where the
// house had been read before it and it tells nothing else as left. Work on the
// expansion tank parts what was read with the heater firing. Whether a sign is
// there, the latest message says: relief dripped, and is dry now.
func goOn(v *assess.Visit, told []assess.Statement) {
	works, first, things := len(v.Work), len(v.Readings), len(v.Equipment)
	worked := valveWork(v.Work)
	v.Symptoms = slices.DeleteFunc(v.Symptoms, func(s assess.Symptom) bool {
		s.Absent = !s.Absent
		return slices.Contains(told, assess.Statement(s))
	})
	for _, s := range told {
		v.Add(s)
	}
	airInOrder(v, works, things)
	switch {
	case valveWork(v.Work[works:]):
		for i := range v.Readings[:first] {
			v.Readings[i].When = assess.Before
		}
		left := slices.ContainsFunc(v.Readings[first:], func(r assess.Reading) bool { return r.When == assess.After })
		if first > 0 && !left {
			asLeft(v.Readings[first:])
		}
	case worked:
		asLeft(v.Readings[first:])
	}
	if tankWork(v.Work[works:]) {
		for i := range v.Readings[:first] {
			if r := &v.Readings[i]; r.Heater == assess.Firing {
				r.When = assess.Before
			}
		}
	}
}

// airInOrder keeps the air of a tank put in or charged on the visit as it was told
// last: what a message tells of it, with works and things told in the ones before,
// takes the place of what they told.
func airInOrder(v *assess.Visit, works, things int) {
	sets := func(w assess.Work) bool {
		return w.ToPSI != nil && slices.Contains([]assess.Action{assess.InstalledTank, assess.ReplacedTank, assess.ChargedTank}, w.Action)
	}
	air := func(e assess.Equipment) bool { return e.Item == assess.ExpansionTank && e.SettingPSI != nil }
	switch before, now := v.Work[:works], v.Equipment[things:]; {
	case slices.ContainsFunc(v.Work[works:], sets):
		for i := range v.Equipment[:things] {
			if e := &v.Equipment[i]; air(*e) && len(before) > 0 {
				e.SettingPSI = nil
			}
		}
	case slices.ContainsFunc(now, air):
		for i := range before {
			if sets(before[i]) {
				before[i].ToPSI = now[slices.IndexFunc(now, air)].SettingPSI
			}
		}
	}
}

// asLeft marks the readings that do not say when as taken after the work.
func asLeft(list []assess.Reading) {
	for i := range list {
		if list[i].When == "" {
			list[i].When = assess.After
		}
	}
}

func contextOf(today assess.Date) intents.Context { return intents.Context{Today: today} }

// siteLine is a house as people read it.
func siteLine(s assess.Site) string {
	line := s.Line
	if s.Town != "" {
		line += ", " + s.Town
	}
	if s.Postcode != "" {
		line += " " + s.Postcode
	}
	return line
}

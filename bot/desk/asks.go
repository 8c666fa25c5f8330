package desk

import (
	"encoding/json"
	"fmt"
	"math"
	"slices"
	"strings"

	"lazyhand/assess"
	"lazyhand/intents"
	"lazyhand/store"
)

// ask answers the i-th question of a message; site is the house it is about,
// without an id when no house on record is meant, and named tells whether the message names it and reports nothing of it.
func (t *turn) ask(i int, a intents.Ask, site store.SiteRecord, named bool) error {
	if i > 0 {
		t.reply = fmt.Sprintf("%s:%d", replyKey(t.m.ID), i)
	}
	w := t.words()
	switch a.About {
	case intents.AskNone, intents.AskCorrect:
		return nil
	case intents.AskHelp:
		return t.say(Body{Lead: w.HelpLead, Facts: w.Help})
	case intents.AskUndo:
		return t.undo(site)
	case intents.AskConvert:
		return t.convert(a)
	case intents.AskTankSize:
		return t.tankSize(a, site)
	case intents.AskDue:
		if site.ID != 0 && t.ofThisHouse(named) {
			return t.leftHere(site)
		}
		return t.due()
	case intents.AskWhich:
		return t.whichHouses(*a.Of)
	case intents.AskCount:
		return t.putIn(a.Of.Item)
	case intents.AskOld:
		return t.oldValves()
	case intents.AskWorst:
		return t.worst()
	case intents.AskAlerts:
		return t.alerts()
	case intents.AskLog:
		return t.log()
	case intents.AskCharge:
		return t.tankCharge(a, site)
	case intents.AskSummary:
		if who, err := t.whoSaid(plainWords(t.m.Text)); err != nil {
			return err
		} else if who != "" && who != t.m.Author {
			return t.log() // "how many houses did Ana do this week"
		}
		s, err := t.summary(t.tx, t.lang, t.day.AddDays(-6), t.day.AddDays(1), t.day)
		if err != nil {
			return err
		}
		return t.say(t.summaryPost(s))
	}
	if a.About == intents.AskTrend && (site.Line == "" || slices.Contains(plainWords(t.m.Text), "houses") || slices.Contains(plainWords(t.m.Text), "casas")) {
		return t.drifting()
	}
	if site.Line == "" {
		return t.say(Body{Lead: w.WhichHouse})
	}
	if site.ID == 0 {
		return t.notOnRecord(site.Site)
	}
	switch a.About {
	case intents.AskDone, intents.AskSnooze, intents.AskCancel:
		f, ok, err := t.meantFollowUp(site, a.About == intents.AskDone)
		if !ok || err != nil {
			return err
		}
		if a.About == intents.AskCancel {
			return t.cancel(f)
		}
		if a.About == intents.AskDone {
			return t.finishFollowUp(f)
		}
		days := daysPutOff
		if a.InDays != nil {
			days = *a.InDays
		}
		return t.putOff(f, days)
	}
	return t.story(a, site)
}

// notOnRecord says that nothing is known of a house, and what lies near its name.
func (t *turn) notOnRecord(s assess.Site) error {
	near, found, err := t.nearest(store.SiteRecord{Site: s})
	if err != nil {
		return err
	}
	if found {
		return t.say(Body{Lead: fmt.Sprintf(t.words().NoSuchNear, siteLine(s), siteLine(near.Site))})
	}
	return t.say(Body{Lead: fmt.Sprintf(t.words().NotOnRecord, siteLine(s))})
}

// story answers from a house's visits.
func (t *turn) story(a intents.Ask, site store.SiteRecord) error {
	w := t.words()
	h, err := t.house(t.tx, site, t.day, t.lang)
	if err != nil {
		return err
	}
	line := siteLine(site.Site)
	if len(h.Visits) == 0 {
		b := Body{Lead: fmt.Sprintf(w.NotOnRecord, line)}
		if a.About == intents.AskHistory {
			b.Facts, err = t.revisions(site)
		}
		if err != nil {
			return err
		}
		return t.say(b)
	}
	judged := h.Assessment
	switch a.About {
	case intents.AskNextCheck:
		b := Body{Lead: fmt.Sprintf(w.NothingToCheck, line), Facts: likely(judged, h.lastVisit(), w), Cautions: cautionTexts(judged.Cautions, w)}
		said, unread := standsNow(h.lastVisit(), judged, w)
		if n := judged.NextCheck; len(said) > 0 && (unread || n == nil) {
			b.Lead = line + ": " + said[0].Text // how it stands decides where nothing is left to test
		} else if n != nil && len(said) > 0 && renewsPRV(judged) {
			b.Lead = line + ": " + said[0].Text // a test more changes nothing of what is to be done
			b.Next = []string{n.Check}
		} else if n != nil {
			b.Lead = fmt.Sprintf("%s: %s", line, n.Check)
			b.Next = []string{n.Why}
		}
		return t.say(b)
	case intents.AskTrend:
		b := Body{Lead: fmt.Sprintf("%s: %s", line, driftText(judged.Drift, w)), Facts: series(h.Visits, atMostVisits, w)}
		t.draw(&b, drawsPlot, site.ID)
		return t.say(b)
	case intents.AskReport:
		if t.opt.Painter == nil {
			return t.say(Body{Lead: w.NoPaper, Facts: series(h.Visits, 1, w), Next: findings(judged, assess.Watch)})
		}
		b := Body{Lead: fmt.Sprintf(w.SheetLead, line), Next: []string{w.SheetCheck}}
		t.draw(&b, drawsSheet, site.ID)
		return t.say(b)
	}
	said, _ := standsNow(h.lastVisit(), judged, w)
	b := Body{Lead: fmt.Sprintf(w.History, line, standText(h, w), t.lastThere(h), len(h.Visits)), Heard: installedLine(h, w), Facts: t.visits(h), Next: texts(said, assess.Watch)}
	revised, err := t.revisions(site)
	if err != nil {
		return err
	}
	b.Facts = append(b.Facts, revised...)
	for _, f := range h.Figures {
		b.Facts = append(b.Facts, f.Text)
	}
	var holds []string
	for _, f := range h.FollowUps {
		open := fmt.Sprintf(w.OpenFollowUp, w.Action[f.Action], f.Due, t.who(f.Owner))
		b.Next = append(b.Next, open)
		holds = append(holds, open)
	}
	if h.Alert != nil {
		b.Next = append(b.Next, t.stateIn(*h.Alert, w))
		holds = []string{sentence(t.stateIn(*h.Alert, w)) + "."}
	}
	if asked := t.thingAsked(h); asked != "" {
		b.Lead = line + ": " + asked + "."
	}
	if asksHolder(t.m.Text) && len(holds) > 0 {
		b.Lead = line + ": " + holds[0] + " " + strings.TrimPrefix(b.Lead, line+": ")
	}
	return t.say(b)
}

// asksHolder tells whether a question is who has taken what is to be done.
func asksHolder(text string) bool {
	said := plainWords(text)
	return slices.Contains([]string{"who", "whos", "quien"}, at(said, 0)) && slices.Contains([]string{"has", "got", "on", "took", "tiene", "tomo", "is"}, at(said, 1)) && at(said, 2) != "at"
}

// atMostVisits is how many visits an answer lists.
const atMostVisits = 8

// atMostRevisions is how many changes of what was said an answer lists.
const atMostRevisions = 5

// revisions lists what was put right, edited or taken back at a house: what was
// said first, what it was changed to, and by whom.
func (t *turn) revisions(site store.SiteRecord) ([]string, error) {
	list, err := t.tx.Revisions(site.ID, atMostRevisions)
	if err != nil {
		return nil, err
	}
	w := t.words()
	var out []string
	for _, r := range list {
		var was, now intents.Frame
		for _, x := range []struct {
			raw []byte
			f   *intents.Frame
		}{{r.Was, &was}, {r.Now, &now}} {
			if len(x.raw) == 0 {
				continue
			}
			if err := json.Unmarshal(x.raw, x.f); err != nil {
				return nil, fmt.Errorf("read the frame of message %d: %w", r.ID, err)
			}
		}
		day := assess.DateOf(r.At.In(t.opt.Zone))
		said, text := w.RightedBy, ""
		switch {
		case len(reports(now)) > 0:
			var parts []string
			if was.Site != "" && now.Site != "" && was.Site != now.Site {
				parts = append(parts, change(was.Site, now.Site, w))
			}
			text = strings.Join(append(parts, changes(day, was, now, w)...), "; ")
		case len(reports(was)) > 0:
			said, text = w.TakenBackBy, strings.Join(lines(day, was, w), "; ")
		}
		if text == "" {
			continue
		}
		out = append(out, fmt.Sprintf(said, day, t.who(r.By.Author), text))
	}
	return out, nil
}

// draw asks for a picture or a paper with the answer. Where there is no
// painter a plot can still be drawn by the platform.
func (t *turn) draw(b *Body, what drawsWhat, site int64) {
	if t.opt.Painter != nil || what == drawsPlot {
		b.Draw = &Drawing{What: what, Site: site, Day: t.day, Lang: t.lang}
	}
}

// visits lists a house's newest visits with who was there, a line each.
func (t *turn) visits(h House) []string {
	w := t.words()
	var out []string
	for i := len(h.Visits) - 1; i >= 0 && len(out) < atMostVisits; i-- {
		if s := visitText(h.Visits[i], w); s != "" {
			out = append(out, fmt.Sprintf("%s  %s: %s", h.Visits[i].Date, t.whoWas(h, i), s))
		}
	}
	return out
}

// lastThere is who was last at a house.
func (t *turn) lastThere(h House) string {
	last := len(h.Visits) - 1
	for i := last; i >= 0; i-- {
		if wasThere(h.Visits[i]) {
			return t.whoWas(h, i)
		}
	}
	return t.whoWas(h, last)
}

// whoWas are those who reported on a house's i-th visit.
func (t *turn) whoWas(h House, i int) string {
	var names []string
	for _, id := range h.By[i] {
		names = append(names, t.who(id))
	}
	return strings.Join(names, ", ")
}

// series lists the newest visits, a line each.
func series(visits []assess.Visit, most int, w *words) []string {
	var out []string
	for i := len(visits) - 1; i >= 0 && len(out) < most; i-- {
		if s := visitText(visits[i], w); s != "" {
			out = append(out, visits[i].Date.String()+"  "+s)
		}
	}
	return out
}

// convert answers a conversion by the factors of assess.
func (t *turn) convert(a intents.Ask) error {
	if a.Value == nil {
		return t.say(Body{Lead: t.words().HelpLead, Facts: t.words().Help})
	}
	to := a.To
	if to == "" {
		to = "psi"
	}
	v, ok := assess.Convert(*a.Value, units[a.Unit], units[to])
	if !ok {
		return t.say(Body{Lead: t.words().HelpLead, Facts: t.words().Help})
	}
	return t.say(Body{Lead: fmt.Sprintf("%s %s = %s %s", number(*a.Value), a.Unit, number(v), to)})
}

// units are the codes of intents.Ask as units of pressure.
var units = map[string]assess.PressureUnit{"psi": assess.UnitPSI, "bar": assess.UnitBar, "kpa": assess.UnitKPa,
	"ft": assess.UnitFootOfWater, "m": assess.UnitMetreOfWater}

// number writes a number with as many places as a gauge deserves.
func number(v float64) string {
	places := 1
	if math.Abs(v) < 10 {
		places = 2
	}
	s := fmt.Sprintf("%.*f", places, v)
	return strings.TrimSuffix(strings.TrimRight(s, "0"), ".")
}

// tankSize answers what expansion tank a heater needs.
func (t *turn) tankSize(a intents.Ask, site store.SiteRecord) error {
	w := t.words()
	size, psi, inlet, set := a.SizeGal, a.PSI, assess.AssumedInletF, assess.AssumedSetpointF
	if site.ID != 0 && (size == nil || psi == nil) {
		h, err := t.house(t.tx, site, t.day, t.lang)
		if err != nil {
			return err
		}
		if psi == nil {
			psi, _ = lastPSI(h)
		}
		if size == nil {
			size = h.Heater.SizeGal
		}
	}
	if a.InletF != nil {
		inlet = *a.InletF
	}
	if a.SetpointF != nil {
		set = *a.SetpointF
	} else if a.RiseF != nil {
		set = inlet + *a.RiseF
	}
	if size == nil || psi == nil {
		return t.say(Body{Lead: w.TankNeeds})
	}
	top := t.band()[1]
	gal, ok := assess.TankGal(assess.ExpandedGal(*size, inlet, set), *psi, top)
	if !ok {
		return t.say(Body{Lead: fmt.Sprintf(w.TankTooHigh, number(*psi), number(top))})
	}
	return t.say(Body{
		Lead:     fmt.Sprintf(w.TankSize, number(gal), number(*size), number(top)),
		Facts:    []string{fmt.Sprintf(w.TankBasis, number(inlet), number(set), number(*psi), number(*psi))},
		Cautions: []string{w.Caution[assess.CautionTank], w.Caution[assess.CautionLocalCode]},
	})
}

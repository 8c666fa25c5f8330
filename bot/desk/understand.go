package desk

import (
	"encoding/json"
	"fmt"
	"slices"
	"strings"

	"lazyhand/assess"
	"lazyhand/intents"
	"lazyhand/store"
)

// understand reads the message with all that is known when it arrives, see meaning;
// its pressures were read with the heater as its writer has just turned it, and with
// the house's valve as they have just opened it.
func (t *turn) understand(site store.SiteRecord, q *store.Question) (intents.Frame, error) {
	f, err := t.meaning(site, q)
	if err != nil || site.ID == 0 || f.Site != "" || !slices.ContainsFunc(readings(f), mayBeHeated) {
		return f, err
	}
	if f, err = t.sinceOpening(f, site); err != nil {
		return f, err
	}
	before, found, err := t.saidBefore()
	if err != nil || !found {
		return f, err
	}
	state := t.parser.HeaterTurned(before, contextOf(t.day))
	if state == "" {
		return f, nil
	}
	f.Statements = slices.Clone(f.Statements)
	for i, s := range f.Statements {
		if r, ok := s.(assess.Reading); ok && mayBeHeated(r) {
			r.Heater = state
			f.Statements[i] = r
		}
	}
	return f, nil
}

// sinceOpening places the pressures of a message that follows a valve opened, in it or right before
// it, after those that the visit holds: "opened the main", "62 now".
func (t *turn) sinceOpening(f intents.Frame, site store.SiteRecord) (intents.Frame, error) {
	if slices.ContainsFunc(readings(f), func(r assess.Reading) bool { return r.When != "" && r.When != assess.After || r.Peak }) {
		return f, nil
	}
	opened, err := t.valveOpened()
	if err != nil || !opened {
		return f, err
	}
	if list, err := t.toldHere(site); err != nil || len(lastRead(list, false)) == 0 {
		return f, err
	}
	f.Statements = slices.Clone(f.Statements)
	for i, s := range f.Statements {
		if r, ok := s.(assess.Reading); ok {
			r.When = assess.After
			f.Statements[i] = r
		}
	}
	return f, nil
}

// valveOpened tells whether the message, or one of its writer's last with no report since, says that
// a valve of the house was opened.
func (t *turn) valveOpened() (bool, error) {
	for m, n := t.m, 0; n < fewBefore; n++ {
		before, found, err := t.tx.SaidBefore(m)
		if err != nil {
			return false, err
		}
		found = found && before.State == store.Taken && t.m.At.Sub(before.At) <= t.opt.Memory
		if !found {
			before.Text = ""
		}
		if intents.ValveOpened(before.Text, m.Text) {
			return true, nil
		}
		if chatter, err := spokenOnly(m); !found || n > 0 && !chatter || err != nil {
			return false, err // it was read since
		}
		m = before
	}
	return false, nil
}

// spokenOnly tells whether a message reports nothing.
func spokenOnly(m store.Message) (bool, error) {
	var f intents.Frame
	if m.Frame == nil {
		return true, nil
	}
	if err := json.Unmarshal(m.Frame, &f); err != nil {
		return false, fmt.Errorf("read the frame of message %d: %w", m.ID, err)
	}
	return isChatter(f), nil
}

// mayBeHeated tells whether a pressure may have been read with the heater in any state.
func mayBeHeated(r assess.Reading) bool {
	return r.Heater == "" && r.Point != assess.Street && r.When != assess.Before
}

// saidBefore is what the writer said in the channel just before this message, while that is fresh.
func (t *turn) saidBefore() (text string, found bool, err error) {
	m, found, err := t.tx.SaidBefore(t.m)
	if err != nil || !found || m.State != store.Taken || t.m.At.Sub(m.At) > t.opt.Memory {
		return "", false, err
	}
	return m.Text, true, nil
}

// meaning reads the message by the house it is about, the question it may answer, the
// houses on record that its words may name, and the report that it may put right. The
// last two are asked of the record only by what can need them.
func (t *turn) meaning(site store.SiteRecord, q *store.Question) (intents.Frame, error) {
	c := intents.Context{Today: t.day, Site: site.Line, Spanish: t.lang == assess.Spanish}
	var err error
	if c.Again, err = t.tapAgain(site); err != nil {
		return intents.Frame{}, err
	}
	if q != nil {
		if c.Question, err = t.asking(*q); err != nil {
			return intents.Frame{}, err
		}
	}
	f := t.frame(c)
	if f.Answer == "" && isChatter(f) {
		right := intents.HousePutRight(t.m.Text, f.Site, site.Line)
		if right == "" && t.putsHouseRight(f, c, site) {
			right = f.Site
		}
		if right != "" {
			f.Site, f.Statements = right, []assess.Statement{intents.Ask{About: intents.AskCorrect}}
		}
	}
	if f.Answer != "" || f.Site != "" {
		return f, nil
	}
	f, err = t.byRecord(f, c, site, q)
	if err != nil || f.Site != "" || t.which != nil {
		return f, err
	}
	g, err := t.amending(f, c, q)
	if err != nil || len(g.Amends) > 0 || corrects(g) && t.amended.ID != 0 {
		return g, err
	}
	of, went, err := t.goingOn(g, c, site)
	if err != nil || went && !t.numberLeft(of) && !slices.ContainsFunc(readings(of), func(r assess.Reading) bool { return r.Point == "" }) {
		return of, err // "pumped it up, 58 now" is no tap's
	}
	if of, told, err := t.drips(g, site); err != nil || told {
		return of, err
	}
	if of, told, err := t.isThere(g, site); err != nil || told {
		return of, err
	}
	if of, told, err := t.screwTurned(g, c, site); err != nil || told {
		return of, err
	}
	if of, told, err := t.cleaned(g, c, site); err != nil || told {
		return of, err
	}
	if g, c, err = t.atSameTap(g, c, site); err != nil || !went && !g.SameTap {
		return g, err
	}
	if at, on, err := t.goingOn(g, c, site); on || err != nil {
		return at, err // "swapped it, 60 now same tap"
	}
	if !went {
		return g, nil
	}
	if t.numberLeft(of) && namesTaps(g) {
		return g, nil // it tells the work as well
	}
	return of, nil
}

// numberLeft tells whether a message tells only work on the regulator and no number of it was taken for
// anything: "backed it off, 57 on the same tap".
func (t *turn) numberLeft(f intents.Frame) bool {
	other := func(s assess.Statement) bool {
		w, work := s.(assess.Work)
		return !work || w.ToPSI != nil || w.FromPSI != nil || !valveWork([]assess.Work{w})
	}
	return len(f.Statements) > 0 && !slices.ContainsFunc(f.Statements, other) && strings.ContainsAny(t.m.Text, "0123456789")
}

// openQuestion is the question of ours that the message may answer, nil for none.
func (t *turn) openQuestion() (store.Question, *store.Question, error) {
	q, found, err := t.tx.OpenQuestion(t.m.Channel, t.m.Thread, t.m.Author, t.m.At.Add(-t.opt.Memory))
	if err != nil || !found {
		return q, nil, err
	}
	if passed, err := t.wentOn(q); passed || err != nil {
		return store.Question{}, nil, err
	}
	return q, &q, nil
}

// wentOn tells whether the person has reported on another house since a question
// about one, or about what some words mean, was put in another thread: what is said now is of the house in hand.
func (t *turn) wentOn(q store.Question) (bool, error) {
	if q.Thread == t.m.Thread || t.person.Site == 0 || !t.person.SiteAt.After(q.At) {
		return false, nil
	}
	about, found, err := t.siteOfMessage(q.Message)
	return found && about.ID != t.person.Site || !found && q.Kind == askUnclear, err
}

// asking is a question of ours as the parser knows it: what can be answered.
func (t *turn) asking(q store.Question) (*intents.Unclear, error) {
	switch q.Kind {
	case askUnclear, askReading, askSame:
		var b asked
		if err := json.Unmarshal(q.Body, &b); err != nil {
			return nil, fmt.Errorf("read the open question: %w", err)
		}
		return &b.Unclear, nil
	case askWhichSite:
		var w whichSite
		if err := json.Unmarshal(q.Body, &w); err != nil {
			return nil, fmt.Errorf("read the open question: %w", err)
		}
		u := &intents.Unclear{Span: w.Span}
		for _, id := range w.Sites {
			s, err := t.tx.Site(id)
			if err != nil {
				return nil, err
			}
			u.MightBe = append(u.MightBe, siteLine(s.Site))
		}
		return u, nil
	}
	return nil, nil
}

// among is a house that a message names by its street or its number alone, and
// what the record holds that fits.
type among struct {
	span  string // the message's own words
	sites []store.SiteRecord
	many  bool // more than can be offered, or none of that street
}

// byRecord names the house of a message that gives no street line by the houses
// on record: one that fits is it, several make a question. The house that the
// thread or the person is at already is it when it fits.
func (t *turn) byRecord(f intents.Frame, c intents.Context, here store.SiteRecord, q *store.Question) (intents.Frame, error) {
	wanted := q != nil && (q.Kind == askNoSite || q.Kind == askWhichSite || q.Kind == askRight)
	bare := isChatter(f) && !wanted // "92 at elm" is a report only at a house, "mark elm done" an order
	if bare && len(strings.Fields(t.m.Text)) > fewWords || slices.ContainsFunc(f.Unclear, func(u intents.Unclear) bool { return len(u.MightBe) > 1 }) {
		return f, nil
	}
	names := t.parser.Names(t.m.Text)
	if len(names) == 0 {
		return f, nil
	}
	var streets, numbers []string
	for _, n := range names {
		if n.Street != "" {
			streets = append(streets, n.Street)
		} else {
			numbers = append(numbers, n.Number)
		}
	}
	found, err := t.tx.SitesNamed(streets, numbers, 20*atMostOffered)
	if err != nil {
		return f, err
	}
	lines := make([]string, len(found))
	for i, s := range found {
		lines[i] = s.Line
	}
	names = intents.Longest(names, lines)
	byLine := map[string][]store.SiteRecord{}
	for _, s := range found {
		for _, n := range names {
			if !n.Names(s.Line) {
				continue
			}
			if s.ID == here.ID && !(bare && len(found) > 1 && t.asksAverage()) {
				c.Sites = []string{s.Line}
				if g := t.parser.Parse(t.m.Text, c); !bare || !isChatter(g) {
					return g, nil
				}
				return f, nil
			}
			byLine[s.Line] = append(byLine[s.Line], s)
			if !slices.Contains(c.Sites, s.Line) {
				c.Sites = append(c.Sites, s.Line)
			}
			break
		}
	}
	if len(c.Sites) == 0 {
		t.unknownStreet(f, names)
		return f, nil
	}
	if bare {
		one := c
		one.Sites = c.Sites[:1]
		if isChatter(t.parser.Parse(t.m.Text, one)) {
			return f, nil
		}
	}
	g := t.parser.Parse(t.m.Text, c)
	for i, u := range g.Unclear {
		var list []store.SiteRecord
		for _, line := range u.MightBe {
			list = append(list, byLine[line]...)
		}
		if len(list) == 0 {
			continue
		}
		g.Unclear[i].MightBe = u.MightBe[:min(len(u.MightBe), atMostOffered)]
		t.which = &among{span: u.Span, sites: list, many: len(list) > atMostOffered}
		return g, nil
	}
	return g, nil
}

// asksAverage tells whether a message asks for an average, which a street has and no house.
func (t *turn) asksAverage() bool {
	return slices.ContainsFunc(plainWords(t.m.Text), func(w string) bool { return w == "average" || w == "avg" || w == "promedio" })
}

// fewWords is how many words that say nothing by themselves are looked at for a
// house on record.
const fewWords = 5

// unknownStreet asks for the number of a house on a street that is named with
// its suffix and of which nothing is on record: the report must not go to the
// house that the person was at before. A thread has its house.
func (t *turn) unknownStreet(f intents.Frame, names []intents.Named) {
	if len(reports(f)) == 0 || t.m.Thread != t.m.TS {
		return
	}
	for _, n := range names {
		if n.Suffix != "" {
			t.which = &among{span: titled(n.Street) + " " + n.Suffix, many: true}
			return
		}
	}
}

// askAmong asks which of the houses that the message may name is meant.
func (t *turn) askAmong(m store.Message, w among) error {
	if !w.many {
		return t.askOneOf(m, w.span, w.sites)
	}
	if err := t.keepQuestion(m, askNoSite, onStreet{w.span}); err != nil {
		return err
	}
	if err := t.mark(m, MarkQuestion); err != nil {
		return err
	}
	return t.say(Body{Lead: fmt.Sprintf(t.words().WhichNumber, w.span)})
}

// onStreet is the body of the question for a house's number on a street.
type onStreet struct {
	Street string `json:"street"`
}

// askOneOf asks which of two or more houses on record is meant; span is what
// the message calls it.
func (t *turn) askOneOf(m store.Message, span string, found []store.SiteRecord) error {
	w := whichSite{Span: span}
	b := Body{}
	var lines []string
	for _, s := range found {
		w.Sites = append(w.Sites, s.ID)
		lines = append(lines, siteLine(s.Site))
		b.Buttons = append(b.Buttons, Button{Name: "site", Label: siteLine(s.Site), Value: fmt.Sprintf("%d %d", m.ID, s.ID)})
	}
	b.Lead = fmt.Sprintf(t.words().WhichOne, t.either(lines))
	if err := t.keepQuestion(m, askWhichSite, w); err != nil {
		return err
	}
	if err := t.mark(m, MarkQuestion); err != nil {
		return err
	}
	return t.say(b)
}

// either joins what can be chosen from: "a, b or c".
func (t *turn) either(list []string) string {
	n := len(list)
	if n < 2 {
		return strings.Join(list, "")
	}
	return strings.Join(list[:n-1], ", ") + " " + t.words().Or + " " + list[n-1]
}

// amending reads a short message as putting right the report that its writer
// has just made, or the one whose right wording we asked for.
func (t *turn) amending(f intents.Frame, c intents.Context, q *store.Question) (intents.Frame, error) {
	if g, told, err := t.aheadOfPRV(f, c.Site); told || err != nil {
		return g, err
	}
	if !intents.MayAmend(t.m.Text) {
		return f, nil
	}
	m, found, err := t.justTold(f, q)
	if err != nil || !found || m.Frame == nil {
		return f, err
	}
	c.Told = new(intents.Frame)
	if err := json.Unmarshal(m.Frame, c.Told); err != nil {
		return f, fmt.Errorf("read the frame of message %d: %w", m.ID, err)
	}
	g := t.parser.Parse(t.m.Text, c)
	if corrects(g) && len(g.Amends) == 0 && (len(f.Unclear) > 0 || !corrects(f)) {
		t.amended = m // the house or a number of it: correct asks
		return g, nil
	}
	if len(g.Amends) > 0 && !onlyOfMain(*c.Told, g.Amends) {
		t.amended = m
		return g, nil
	}
	if earlier, m, err := t.stateOfEarlier(c, m.Site); err != nil || m.ID != 0 {
		t.amended = m
		return earlier, err
	}
	if len(g.Amends) > 0 {
		t.amended = m
		return g, nil
	}
	return f, nil
}

// aheadOfPRV reads "so front's ahead of the reg" as told of what its writer read last at that tap of the
// house in hand: it is the main's.
func (t *turn) aheadOfPRV(f intents.Frame, line string) (g intents.Frame, told bool, err error) {
	point := assess.TestPoint("")
	if isChatter(f) && line != "" {
		point = intents.AheadOfPRV(t.m.Text)
	}
	if point == "" {
		return f, false, nil
	}
	list, err := t.tx.ReportsBy(t.m.Author, t.place(), recentReports)
	if err != nil {
		return f, false, err
	}
	for _, r := range list {
		if s, err := t.tx.Site(r.Site); err != nil || s.Line != line || t.m.At.Sub(r.At) > t.opt.Memory {
			return f, false, err
		}
		var was intents.Frame
		if err := json.Unmarshal(r.Frame, &was); err != nil {
			return f, false, fmt.Errorf("read the frame of message %d: %w", r.Message, err)
		}
		for i, s := range was.Statements {
			if x, ok := s.(assess.Reading); ok && x.Point == point {
				m, _, err := t.tx.Message(r.Message)
				t.amended = m
				f.Statements = []assess.Statement{intents.Ask{About: intents.AskCorrect}}
				f.Amends = []intents.Amendment{{Of: i, Point: assess.Street}}
				return f, true, err
			}
		}
	}
	return f, false, nil
}

// onlyOfMain tells whether amendments give a heater's state to nothing but the main, which it does
// not touch.
func onlyOfMain(told intents.Frame, list []intents.Amendment) bool {
	return !slices.ContainsFunc(list, func(a intents.Amendment) bool {
		if a.Of < 0 || a.Of >= len(told.Statements) || a.Heater == "" {
			return true
		}
		r, ok := told.Statements[a.Of].(assess.Reading)
		return !ok || r.Point != assess.Street
	})
}

// stateOfEarlier reads a heater's state told by itself as that of the newest readings of the visit,
// where the report told last holds none: "heater off" behind "prv is a 2003". m is the message that
// told them, without an id for none.
func (t *turn) stateOfEarlier(c intents.Context, site int64) (g intents.Frame, m store.Message, err error) {
	if strings.ContainsAny(t.m.Text, "0123456789") {
		return g, m, nil
	}
	list, err := t.tx.ReportsBy(t.m.Author, t.place(), recentReports)
	if err != nil {
		return g, m, err
	}
	for _, r := range list {
		if r.Site != site || t.m.At.Sub(r.At) > t.opt.Memory {
			continue
		}
		c.Told = new(intents.Frame)
		if err := json.Unmarshal(r.Frame, c.Told); err != nil {
			return g, m, fmt.Errorf("read the frame of message %d: %w", r.Message, err)
		}
		if len(readings(*c.Told)) == 0 {
			continue
		}
		g = t.parser.Parse(t.m.Text, c)
		states := len(g.Amends) > 0 && !slices.ContainsFunc(g.Amends, func(a intents.Amendment) bool {
			return a.Of < 0 || a.Heater == "" || a.PSI != nil || a.Point != "" || a.Flow != ""
		})
		if !states {
			return g, m, nil
		}
		if onlyOfMain(*c.Told, g.Amends) {
			continue
		}
		m, _, err = t.tx.Message(r.Message)
		return g, m, err
	}
	return g, m, nil
}

// justTold is the report that a few words may put right: the one asked about,
// the thread's last, or outside of threads the writer's last in this channel,
// while it is fresh. Somebody else's is one only for what would otherwise be a
// report itself, so that it is not taken for a further reading.
func (t *turn) justTold(f intents.Frame, q *store.Question) (store.Message, bool, error) {
	fresh := func(m store.Message) bool { return t.m.At.Sub(m.At) < t.opt.Memory && m.State == store.Taken }
	if q != nil && q.Kind == askRight {
		return t.tx.Message(q.Message)
	}
	if _, done, err := t.tookBack(); err != nil || done {
		return store.Message{}, false, err
	}
	if t.m.Thread == t.m.TS {
		m, found, err := t.tx.LastReportBy(t.m.Author, t.place())
		return m, found && m.Channel == t.m.Channel && fresh(m), err
	}
	m, found, err := t.tx.LastReportIn(t.m.Channel, t.m.Thread, t.m.Author, t.place())
	if err != nil || found && fresh(m) {
		return m, found, err
	}
	// in the thread of an earlier correction of it
	own, found, err := t.tx.LastReportBy(t.m.Author, t.place())
	if err != nil {
		return m, false, err
	}
	if found && own.Channel == t.m.Channel && fresh(own) {
		if id, err := t.tx.ThreadSite(t.m.Channel, t.m.Thread); err != nil || id != 0 && id == own.Site {
			return own, true, err
		}
	}
	if isChatter(f) {
		return m, false, nil
	}
	m, found, err = t.tx.LastReportIn(t.m.Channel, t.m.Thread, "", t.place())
	return m, found && fresh(m), err
}

// readingLines are the readings of a frame as options of a question, with
// their places among its statements.
func (t *turn) readingLines(f intents.Frame) (lines []string, at []int) {
	for i, s := range f.Statements {
		if r, ok := s.(assess.Reading); ok {
			lines, at = append(lines, readingText(r, t.words())), append(at, i)
		}
	}
	return lines, at
}

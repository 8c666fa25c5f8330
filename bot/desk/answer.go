package desk

import (
	"encoding/json"
	"fmt"
	"slices"
	"strconv"
	"strings"

	"lazyhand/assess"
	"lazyhand/intents"
	"lazyhand/store"
)

// asked is the body of a question that has options: what can be answered, and
// what then follows.
type asked struct {
	intents.Unclear
	Amend *intents.Amendment `json:"amend,omitempty"` // askReading: what is right of the reading picked
	Site  int64              `json:"site,omitempty"`  // askSame: the new house
	Other int64              `json:"other,omitempty"` // askSame: the one it may be
}

// answer takes frame as the answer to a question of ours; done is false when
// it is none, and then the message stands for itself.
func (t *turn) answer(q store.Question, f intents.Frame) (done bool, err error) {
	near := t.direct || q.Thread == t.m.Thread
	if !near && (q.Author != t.m.Author || t.m.Thread != t.m.TS) {
		return false, nil // said elsewhere, of something else
	}
	switch q.Kind {
	case askNoSite:
		return t.answerHouse(q, f)
	case askWhichSite:
		return t.answerWhich(q, f)
	case askRight:
		if !near && f.Site != "" {
			about, _, err := t.siteOfMessage(q.Message)
			right := intents.HousePutRight("no, "+t.m.Text, f.Site, about.Line)
			if err != nil || right == "" || !namesOnly(f) {
				return false, err // a report of its own
			}
			f.Site = right
		}
		return t.answerRight(q, f)
	case askElsewhere:
		if !near || !t.namesRight(f) {
			return false, nil // talk of another house moves nothing there
		}
		return t.answerRight(q, f)
	case askVisitDay, askVisitor, askReason, askHand:
		return t.answerDispatch(q, f)
	}
	if f.Answer == "" {
		if q.Kind != askUnclear || !near || len(reports(f)) == 0 {
			return false, nil
		}
		// a new report in the place of the one that was not clear
		if err := t.tx.EndQuestion(q.ID, "answered"); err != nil {
			return true, err
		}
		return false, t.clearMark(q.Message)
	}
	var b asked
	if err := json.Unmarshal(q.Body, &b); err != nil {
		return false, fmt.Errorf("read the open question: %w", err)
	}
	if q.Kind == askUnclear && f.Answer != "no" {
		return t.answerUnclear(q, b.Unclear, f.Answer)
	}
	if err := t.tx.EndQuestion(q.ID, "answered"); err != nil {
		return true, err
	}
	switch {
	case q.Kind == askSame:
		return true, t.answerSame(b, f.Answer != "no")
	case f.Answer == "no" && q.Kind == askUnclear && numbers(b.MightBe):
		return true, t.askNumber(q.Message, b.Unclear)
	case f.Answer == "no":
		return true, t.askRightOf(q.Message)
	case q.Kind == askReading:
		return true, t.answerReading(q.Message, b, f.Answer)
	}
	return false, nil
}

// numbers tells whether all that can be answered are numbers.
func numbers(options []string) bool {
	return !slices.ContainsFunc(options, func(o string) bool {
		_, err := strconv.ParseFloat(o, 64)
		return err != nil
	})
}

// askNumber asks for the number that is right when none of those offered is.
func (t *turn) askNumber(message int64, u intents.Unclear) error {
	m, found, err := t.tx.Message(message)
	if err != nil || !found {
		return err
	}
	u.MightBe, u.Ask = []string{intents.AnyNumber}, t.words().WhatThen
	if err := t.keepQuestion(m, askUnclear, asked{Unclear: u}); err != nil {
		return err
	}
	return t.say(Body{Lead: u.Ask})
}

// answerHouse takes the house of a report that named none.
func (t *turn) answerHouse(q store.Question, f intents.Frame) (bool, error) {
	named := assess.Site{Line: f.Site, Town: f.Town, Postcode: f.Postcode}
	if f.Site != "" && leaves(t.m.Text, f.Site) {
		return false, nil // the next house, and not the one asked about
	}
	if f.Site == "" {
		n, ok := bareNumber(t.m.Text)
		var on onStreet
		if len(q.Body) > 0 {
			if err := json.Unmarshal(q.Body, &on); err != nil {
				return false, fmt.Errorf("read the open question: %w", err)
			}
		}
		switch {
		case ok && on.Street != "":
			named.Line = n + " " + titled(on.Street)
		case ok:
			found, err := t.tx.SitesNamed(nil, []string{n}, atMostOffered+1)
			if err != nil {
				return false, err
			}
			if len(found) == 0 {
				return true, t.say(Body{Lead: t.words().WhichHouse}) // the question stays open
			}
			t.which = &among{span: n, sites: found, many: len(found) > atMostOffered}
		}
		if ok { // no pressure, whatever it looks like
			f = intents.Frame{Statements: []assess.Statement{intents.Ask{About: intents.AskNone}}}
			if err := t.keepFrame(&t.m, f); err != nil {
				return true, err
			}
		}
	} else if !isChatter(f) || asksPeople(t.m.Text) {
		return false, nil
	}
	m, ok, err := t.tx.Message(q.Message)
	if err != nil || !ok {
		return ok, err
	}
	if t.which != nil && isChatter(f) {
		if len(t.which.sites) == 1 {
			return true, t.finish(q, t.which.sites[0])
		}
		return true, t.askAmong(m, among{sites: t.which.sites, many: t.which.many, span: t.which.span})
	}
	if named.Line == "" {
		return false, nil
	}
	found, sure, err := t.resolve(named, true)
	if err != nil {
		return true, err
	}
	if !sure {
		return true, t.askWhich(m, named, found)
	}
	return true, t.finish(q, found[0])
}

// asksPeople tells whether a text is a question that people put to each other, and no answer
// to one of ours: "is anyone going to 15 Fern".
func asksPeople(text string) bool {
	said := plainWords(text)
	return len(said) > 4 && asksFirst[at(said, 0)]
}

var asksFirst = wordSet("is are was were can could will would did does do has have who whos whats what where when why how should anybody anyone alguien quien puede va donde cuando")

// bareNumber reads a message that gives nothing but a house's number.
func bareNumber(text string) (number string, ok bool) {
	for _, w := range plainWords(text) {
		switch {
		case w[0] >= '0' && w[0] <= '9' && number == "":
			number = w
		case slices.Contains([]string{"the", "number", "house", "numero", "casa", "la", "el", "no", "its", "es", "at", "en", "one", "please"}, w):
		default:
			return "", false
		}
	}
	return number, number != ""
}

// answerWhich takes the house that was picked of those offered.
func (t *turn) answerWhich(q store.Question, f intents.Frame) (bool, error) {
	var w whichSite
	if err := json.Unmarshal(q.Body, &w); err != nil {
		return false, fmt.Errorf("read the open question: %w", err)
	}
	if f.Answer == "no" {
		if err := t.tx.EndQuestion(q.ID, "answered"); err != nil {
			return true, err
		}
		m, found, err := t.tx.Message(q.Message)
		if err != nil || !found {
			return true, err
		}
		return true, t.askSite(m)
	}
	if f.Answer == "" && !namesOnly(f) {
		return false, nil
	}
	for _, id := range w.Sites {
		s, err := t.tx.Site(id)
		if err != nil {
			return true, err
		}
		if siteLine(s.Site) == f.Answer || f.Answer == "" && s.Key() == (assess.Site{Line: f.Site}).Key() {
			return true, t.finish(q, s)
		}
	}
	if f.Site == "" {
		return false, nil
	}
	return t.answerHouse(store.Question{ID: q.ID, Message: q.Message}, f) // another house than those offered
}

// namesOnly tells whether a message says nothing but a house.
func namesOnly(f intents.Frame) bool { return f.Site != "" && isChatter(f) }

// namesRight tells whether a message gives the right house for a report that was
// filed under one not named: it says no more than the house, or in the report's
// thread where its writer is.
func (t *turn) namesRight(f intents.Frame) bool {
	c := contextOf(t.day)
	return namesOnly(f) && (t.parser.RightHouse(t.m.Text, c) || t.m.Thread != t.m.TS && t.arrives(f))
}

// finish files the message that a question was about under the house that the
// answer names.
func (t *turn) finish(q store.Question, site store.SiteRecord) error {
	if err := t.tx.EndQuestion(q.ID, "answered"); err != nil {
		return err
	}
	m, found, err := t.tx.Message(q.Message)
	if err != nil || !found || m.State != store.Taken {
		return err
	}
	var f intents.Frame
	if err := json.Unmarshal(m.Frame, &f); err != nil {
		return fmt.Errorf("read the frame of message %d: %w", m.ID, err)
	}
	var w whichSite
	if q.Kind == askWhichSite {
		if err := json.Unmarshal(q.Body, &w); err != nil {
			return fmt.Errorf("read the open question: %w", err)
		}
	}
	if w.Span != "" {
		// With the house in the place of its short name, what stands beside it
		// can be nothing else.
		if g, ok := t.parser.Answered(m.Text, contextOf(t.dayOf(m)), intents.Unclear{Span: w.Span, MightBe: []string{site.Line}}, site.Line); ok && g.Site != "" {
			f = g
			if err := t.keepFrame(&m, f); err != nil {
				return err
			}
		}
	}
	for _, id := range []int64{t.m.ID, m.ID} {
		if err := t.tx.FileUnder(id, site.Named); err != nil {
			return err
		}
	}
	if q.Kind == askNoSite {
		if err := t.finishEarlier(q, site); err != nil {
			return err
		}
	}
	f.Site = "" // settled: site stands for it
	f.Unclear = slices.DeleteFunc(f.Unclear, func(u intents.Unclear) bool { return slices.Contains(u.MightBe, site.Line) })
	t.which = nil
	return t.act(m, f, site, false)
}

// finishEarlier files the reports that their writer told before without a house, and
// that were asked about likewise, under the house that the answer names: "92 rear",
// "118 at the meter", "it's 123 Elm St".
func (t *turn) finishEarlier(q store.Question, site store.SiteRecord) error {
	list, err := t.tx.OpenBefore(q, t.m.At.Add(-t.opt.Memory))
	if err != nil {
		return err
	}
	for _, o := range list {
		if len(o.Body) > 0 && string(o.Body) != "null" {
			continue // it named another street
		}
		if err := t.tx.EndQuestion(o.ID, "answered"); err != nil {
			return err
		}
		m, found, err := t.tx.Message(o.Message)
		if err != nil {
			return err
		}
		if !found || m.State != store.Taken {
			continue
		}
		var f intents.Frame
		if err := json.Unmarshal(m.Frame, &f); err != nil {
			return fmt.Errorf("read the frame of message %d: %w", m.ID, err)
		}
		if err := t.tx.FileUnder(m.ID, site.Named); err != nil {
			return err
		}
		if len(reports(f)) == 0 {
			continue
		}
		if _, _, err := t.put(m, f, site); err != nil {
			return err
		}
		t.earlier = append(t.earlier, reports(f)...)
	}
	return nil
}

// keepFrame keeps what a message is now held to mean.
func (t *turn) keepFrame(m *store.Message, f intents.Frame) error {
	raw, err := json.Marshal(f)
	if err != nil {
		return err
	}
	m.Frame = raw
	return t.tx.Understood(m.ID, raw)
}

// answerUnclear puts the answer in the place of the words that were not clear,
// and takes the message anew.
func (t *turn) answerUnclear(q store.Question, u intents.Unclear, answer string) (bool, error) {
	m, found, err := t.tx.Message(q.Message)
	if err != nil || !found || m.State != store.Taken {
		return false, err
	}
	f, ok := t.parser.Answered(m.Text, contextOf(t.dayOf(m)), u, answer)
	if !ok {
		return false, nil // no word of it can be put in the place of those
	}
	if err := t.tx.EndQuestion(q.ID, "answered"); err != nil {
		return true, err
	}
	if len(reports(f)) > 0 && (f.Site != "" || m.Site != 0) {
		id := m.Site
		if f.Site != "" {
			id = 0
		}
		return true, t.replace(m, f, id)
	}
	if err := t.keepFrame(&m, f); err != nil {
		return true, err
	}
	site, remembered, err := t.site()
	if err != nil {
		return true, err
	}
	return true, t.act(m, f, site, remembered)
}

// answerReading puts the reading right that was picked of several.
func (t *turn) answerReading(message int64, b asked, answer string) error {
	m, found, err := t.tx.Message(message)
	if err != nil || !found || m.State != store.Taken || b.Amend == nil {
		return err
	}
	var was intents.Frame
	if err := json.Unmarshal(m.Frame, &was); err != nil {
		return fmt.Errorf("read the frame of message %d: %w", m.ID, err)
	}
	_, at := t.readingLines(was)
	i := slices.Index(b.MightBe, answer)
	if i < 0 || i >= len(at) {
		return t.askRightOf(message)
	}
	was.Statements[at[i]] = b.Amend.Amend(was.Statements[at[i]])
	t.righting = true
	return t.replace(m, was, m.Site)
}

// askRightOf asks for the right wording of a message.
func (t *turn) askRightOf(message int64) error {
	m, found, err := t.tx.Message(message)
	if err != nil || !found {
		return err
	}
	if err := t.keepQuestion(m, askRight, nil); err != nil {
		return err
	}
	return t.say(Body{Lead: t.words().SayRight})
}

// answerRight takes the right wording of a message: a correction in a few
// words, or the whole report anew.
func (t *turn) answerRight(q store.Question, f intents.Frame) (bool, error) {
	m, found, err := t.tx.Message(q.Message)
	if err != nil || !found || m.State != store.Taken {
		return false, err
	}
	if len(reports(f)) == 0 && len(f.Amends) == 0 && !namesOnly(f) {
		return false, nil
	}
	if len(reports(f)) > 0 && f.Site != "" && m.Site != 0 {
		s, err := t.tx.Site(m.Site)
		if err != nil || !s.Fits(assess.Site{Line: f.Site, Town: f.Town, Postcode: f.Postcode}) {
			return false, err // a report on another house
		}
	}
	var was intents.Frame
	if err := json.Unmarshal(m.Frame, &was); err != nil {
		return false, fmt.Errorf("read the frame of message %d: %w", m.ID, err)
	}
	if corrects(f) && len(readings(f)) > 0 && len(readings(was)) == 0 {
		return false, nil // it puts a reading of another report right
	}
	if onlyPlans(f) && len(f.Amends) == 0 && !onlyPlans(was) {
		return false, nil // a report of its own: what is to be done is not what was found
	}
	if len(f.Amends) == 0 && len(readings(f)) == 0 && len(readings(was)) > 0 && len(reports(f)) > 0 {
		return false, nil // a report of its own: nothing in it can stand for a pressure
	}
	if err := t.tx.EndQuestion(q.ID, "answered"); err != nil {
		return true, err
	}
	t.amended = m
	return true, t.rightWording(m, f)
}

// rightWording puts what a person gave as right in the place of a report: a few
// words that amend it, a house alone, which moves it there, a number alone,
// which keeps what was said beside the old one, or the whole report anew.
func (t *turn) rightWording(m store.Message, f intents.Frame) error {
	if len(f.Amends) > 0 {
		return t.correct(m, f, store.SiteRecord{})
	}
	t.righting = true
	var was intents.Frame
	if err := json.Unmarshal(m.Frame, &was); err != nil {
		return fmt.Errorf("read the frame of message %d: %w", m.ID, err)
	}
	id := m.Site
	if f.Site != "" {
		id = 0
	}
	v := f.Visit(t.dayOf(m))
	number := len(v.Readings) == 1 && len(reports(f)) == 1 && v.Readings[0].Point == "" && v.Readings[0].Heater == ""
	if len(reports(f)) > 0 && !(number && f.Site == "" && amend(&was, v.Readings[0])) {
		if id == 0 && f.Site == "" {
			f.Site, f.Town, f.Postcode = was.Site, was.Town, was.Postcode
		}
		return t.replace(m, f, id)
	}
	if f.Site != "" {
		was.Site, was.Town, was.Postcode = f.Site, f.Town, f.Postcode
	}
	return t.replace(m, was, id)
}

// clearMark takes the question mark off a message that has been asked about;
// what follows from the answer stands under the answer.
func (t *turn) clearMark(message int64) error {
	m, found, err := t.tx.Message(message)
	if err != nil || !found || m.ID == t.m.ID {
		return err
	}
	if _, reported, err := t.tx.ReportOf(m.ID); err != nil || reported {
		return err
	}
	return t.mark(m, MarkNone)
}

// quote repeats a person's words in one short line.
func quote(s string) string {
	return "“" + shorten(strings.Join(strings.Fields(s), " "), 120) + "”"
}

// quoted tells whether a text is what a person said.
func quoted(s string) bool { return strings.HasPrefix(s, "“") }

// shorten cuts a text after so many letters and says so.
func shorten(s string, most int) string {
	if r := []rune(s); len(r) > most {
		return string(r[:most-1]) + "…"
	}
	return s
}

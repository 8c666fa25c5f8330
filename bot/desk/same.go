package desk

import (
	"cmp"
	"encoding/json"
	"fmt"
	"slices"
	"strings"

	"lazyhand/assess"
	"lazyhand/intents"
	"lazyhand/store"
)

// askSameHouse adds to the answer to a report the question whether its new
// house is one on record.
func (t *turn) askSameHouse(m store.Message, site store.SiteRecord, b *Body) error {
	near, found, err := t.nearest(*t.opened)
	if err != nil || !found {
		return err
	}
	w := t.words()
	ask := fmt.Sprintf(w.SameHouse, siteLine(near.Site))
	q := asked{Unclear: intents.Unclear{Span: site.Line, MightBe: []string{"yes"}, Ask: ask}, Site: t.opened.Named, Other: near.ID}
	if err := t.keepQuestion(m, askSame, q); err != nil {
		return err
	}
	b.Next = append([]string{ask}, b.Next...)
	b.Buttons = append([]Button{{"same", w.SameYes, fmt.Sprintf("%d yes", m.ID)}, {"same", w.SameNo, fmt.Sprintf("%d no", m.ID)}}, b.Buttons...)
	return nil
}

// SaidTwo returns the pairs of records that people were asked about and that
// are two houses by their answer, the smaller number first.
func SaidTwo(tx *store.Tx) (map[[2]int64]bool, error) {
	list, err := tx.Answered(askSame)
	if err != nil {
		return nil, err
	}
	out := map[[2]int64]bool{}
	for _, q := range list {
		var b asked
		if err := json.Unmarshal(q.Body, &b); err != nil {
			return nil, fmt.Errorf("read an answered question: %w", err)
		}
		out[[2]int64{min(b.Site, b.Other), max(b.Site, b.Other)}] = true
	}
	return out, nil
}

// pressSame answers the question by its button.
func (t *turn) pressSame(p press) error {
	q, found, err := t.tx.QuestionAbout(p.id, askSame)
	if err != nil {
		return err
	}
	if !found {
		return t.say(Body{Lead: t.words().QuestionGone})
	}
	var b asked
	if err := json.Unmarshal(q.Body, &b); err != nil {
		return fmt.Errorf("read the open question: %w", err)
	}
	if err := t.tx.EndQuestion(q.ID, "answered"); err != nil {
		return err
	}
	return t.answerSame(b, at(p.rest, 0) == "yes")
}

// answerSame joins the new house to the one on record, or leaves them two.
func (t *turn) answerSame(b asked, same bool) error {
	named, err := t.underItsName(b.Site)
	if err != nil {
		return err
	}
	other, err := t.tx.Site(b.Other)
	if err != nil {
		return err
	}
	if err := t.tx.FileUnder(t.m.ID, b.Site); err != nil {
		return err
	}
	if !same {
		return t.say(Body{Lead: fmt.Sprintf(t.words().TwoHouses, siteLine(named), siteLine(other.Site))})
	}
	return t.join(other, store.SiteRecord{ID: b.Site, Named: b.Site, Site: named})
}

// underItsName is a record under its own name, whatever it was joined to.
func (t *turn) underItsName(id int64) (assess.Site, error) {
	s, err := t.tx.Site(id)
	if err != nil || s.ID == id {
		return s.Site, err
	}
	list, ids, err := t.tx.Joined(s.ID)
	if i := slices.Index(ids, id); i >= 0 {
		return list[i], err
	}
	return s.Site, err
}

// join makes two records one house and judges it anew.
func (t *turn) join(stays, goes store.SiteRecord) error {
	if err := t.tx.Join(stays.ID, goes.ID); err != nil {
		return err
	}
	if err := t.clear(goes.ID); err != nil {
		return err
	}
	if err := t.once(stays.ID); err != nil {
		return err
	}
	if _, _, err := t.judge(stays, t.day, true); err != nil {
		return err
	}
	if err := t.remember(stays.ID, t.m.At); err != nil {
		return err
	}
	return t.say(Body{Lead: fmt.Sprintf(t.words().OneHouse, siteLine(goes.Site), siteLine(stays.Site))})
}

// once leaves of each kind of follow-up that both records of a house had open
// the one that is due first, of those of one day the one that was called for last.
func (t *turn) once(site int64) error {
	open, err := t.tx.OpenFollowUps(site)
	if err != nil {
		return err
	}
	slices.SortStableFunc(open, func(a, b store.FollowUp) int {
		return cmp.Or(a.Due.Sub(b.Due), cmp.Compare(b.Source, a.Source))
	})
	soonest := map[assess.Action]bool{}
	for _, f := range open {
		if !soonest[f.Action] {
			soonest[f.Action] = true
			continue
		}
		if err := t.tx.EndFollowUp(f.ID, "dropped", t.m.At, t.m.ID); err != nil {
			return err
		}
	}
	return nil
}

// clear takes away what follows from the reports of a record that is told under
// another from now on: it follows there.
func (t *turn) clear(id int64) error {
	if err := t.tx.KeepEquipment(id, nil); err != nil {
		return err
	}
	return t.tx.Stand(id, store.Standing{})
}

// part makes a record that was joined to another a house of its own again, and
// judges both anew.
func (t *turn) part(id int64) error {
	with, err := t.tx.Site(id)
	if err != nil {
		return err
	}
	if err := t.tx.Part(id); err != nil {
		return err
	}
	alone, err := t.tx.Site(id)
	if err != nil {
		return err
	}
	with.Named = with.ID
	if err := t.followUpsOf(alone, with); err != nil {
		return err
	}
	judged := map[int64]assess.Assessment{}
	for _, s := range []store.SiteRecord{with, alone} {
		s.Named = s.ID
		if judged[s.ID], _, err = t.judge(s, t.day, true); err != nil {
			return err
		}
	}
	if err := t.alertOf(alone, with, judged); err != nil {
		return err
	}
	return t.say(Body{Lead: fmt.Sprintf(t.words().TwoHouses, siteLine(alone.Site), siteLine(with.Site))})
}

// followUpsOf gives a house that is of its own again the open follow-ups that its own
// messages called for while it was told under another.
func (t *turn) followUpsOf(alone, with store.SiteRecord) error {
	open, err := t.tx.OpenFollowUps(with.ID)
	if err != nil {
		return err
	}
	for _, f := range open {
		source, found, err := t.tx.Message(f.Source)
		if err != nil {
			return err
		}
		if !found || source.Site != alone.ID {
			continue
		}
		if err := t.tx.EndFollowUp(f.ID, "dropped", t.m.At, t.m.ID); err != nil {
			return err
		}
		f.Site = alone.ID
		if err := t.tx.KeepFollowUp(f); err != nil {
			return err
		}
	}
	return nil
}

// alertOf gives such a house the alert that its own report raised.
func (t *turn) alertOf(alone, with store.SiteRecord, judged map[int64]assess.Assessment) error {
	open, found, err := t.tx.OpenAlert(with.ID)
	if err != nil || !found {
		return err
	}
	if its, err := t.standsAt(open.Source, alone); err != nil || !its {
		return err
	}
	if _, has, err := t.tx.OpenAlert(alone.ID); err != nil {
		return err
	} else if codes, urgency := t.callsFor(judged[alone.ID]); codes != "" && !has {
		if err := t.raise(store.Alert{Site: alone.ID, Codes: codes, Urgency: urgency, RaisedAt: t.m.At, Source: open.Source, State: "raised", Change: 1}); err != nil {
			return err
		}
	}
	codes, urgency := t.callsFor(judged[with.ID])
	left, found, err := t.tx.LastReport(with.ID)
	if err != nil {
		return err
	}
	if codes == "" || !found {
		return t.endWithdrawn(open, t.shopWords().ReasonCorrected)
	}
	open.Source = left.Message
	return t.bring(open, codes, urgency, t.shopWords().ReportChanged)
}

// houses reads words that join or part houses: "not the same house", "same
// house as 9 Oak Ct", and "undo" right after two were joined. done is false
// when they say something else.
func (t *turn) houses(f intents.Frame, site store.SiteRecord) (done bool, err error) {
	if len(reports(f)) > 0 {
		return false, nil
	}
	if done, err := t.renamed(site); done || err != nil {
		return done, err
	}
	said := strings.Join(plainWords(t.m.Text), " ")
	undo := len(f.Asks()) == 1 && f.Asks()[0].About == intents.AskUndo && f.Site == ""
	apart, same := saysApart(said), saysSame(said)
	if !undo && !apart && !(same && f.Site != "") || site.ID == 0 {
		return false, nil
	}
	if same && !apart && f.Site != "" {
		found, sure, err := t.resolve(assess.Site{Line: f.Site, Town: f.Town, Postcode: f.Postcode}, false)
		if err != nil || !sure || found[0].ID == 0 || found[0].ID == site.ID {
			return false, err
		}
		if err := t.file(t.m, site.Named); err != nil {
			return true, err
		}
		return true, t.join(found[0], store.SiteRecord{ID: site.ID, Named: site.ID, Site: site.Site})
	}
	last, found, err := t.tx.LastAnswered(t.m.Channel, t.m.Thread, t.m.Author, askSame)
	if err != nil {
		return false, err
	}
	var b asked
	if found {
		if err := json.Unmarshal(last.Body, &b); err != nil {
			return false, fmt.Errorf("read an answered question: %w", err)
		}
	}
	joined, ids, err := t.tx.Joined(site.ID)
	if err != nil {
		return false, err
	}
	id := int64(0)
	switch {
	case found && slices.Contains(ids, b.Site):
		id = b.Site
	case undo:
		if id, err = t.joinedBefore(ids); err != nil || id == 0 {
			return false, err
		}
	case len(ids) == 1:
		id = ids[0]
	case len(ids) == 0:
		if err := t.file(t.m, site.Named); err != nil {
			return true, err
		}
		return true, t.say(Body{Lead: fmt.Sprintf(t.words().NotJoined, siteLine(site.Site))})
	default:
		id = ids[len(joined)-1] // the last that was put on record
	}
	if err := t.file(t.m, id); err != nil {
		return true, err
	}
	return true, t.part(id)
}

// newNames are words between the line that a house had and the one that it has now.
var newNames = []string{" is now ", " is really ", " got renumbered to ", " was renumbered to ", " got renamed to ", " was renamed to ",
	" changed to ", " ahora es ", " ahora se llama ", " paso a ser "}

// renamed reads words that give a house on record another line, "31 Maple is now 13 Maple Ct": its story
// goes on under that one. done is false when they say something else.
func (t *turn) renamed(here store.SiteRecord) (done bool, err error) {
	if t.m.Kind != store.Said || strings.Contains(t.m.Text, "?") {
		return false, nil
	}
	text := " " + strings.ToLower(t.m.Text) + " "
	for _, words := range newNames {
		was, is, found := strings.Cut(text, words)
		if !found {
			continue
		}
		c := contextOf(t.day)
		now := t.parser.Parse(is, c)
		if now.Site == "" || len(reports(now)) > 0 {
			return false, nil
		}
		old, found, err := t.houseNamed(was, here)
		if err != nil || !found {
			return false, err
		}
		to, sure, err := t.resolve(assess.Site{Line: now.Site, Town: now.Town, Postcode: now.Postcode}, true)
		if err != nil || !sure || to[0].ID == old.ID {
			return false, err
		}
		if err := t.file(t.m, old.Named); err != nil {
			return true, err
		}
		return true, t.join(to[0], store.SiteRecord{ID: old.ID, Named: old.ID, Site: old.Site})
	}
	return false, nil
}

// houseNamed is the house on record that some words name, by its line or, where that is the house in
// hand, by its number and street alone.
func (t *turn) houseNamed(words string, here store.SiteRecord) (store.SiteRecord, bool, error) {
	if f := t.parser.Parse(words, contextOf(t.day)); f.Site != "" {
		found, sure, err := t.resolve(assess.Site{Line: f.Site, Town: f.Town, Postcode: f.Postcode}, false)
		if err != nil || sure && found[0].ID != 0 {
			return found[0], err == nil, err
		}
	}
	said := plainWords(words)
	number, street, _ := strings.Cut(strings.ToLower(here.Line), " ")
	first, _, _ := strings.Cut(street, " ")
	return here, here.ID != 0 && slices.Contains(said, number) && slices.Contains(said, first), nil
}

// saysApart tells whether words part two houses.
func saysApart(said string) bool {
	for _, p := range []string{"not the same house", "not same house", "different house", "different houses", "two houses", "not one house", "another house", "they are two", "isnt the same house",
		"no es la misma casa", "no son la misma casa", "son dos casas", "casas distintas", "casas diferentes", "es otra casa", "no es la misma"} {
		if strings.Contains(said, p) {
			return true
		}
	}
	return false
}

// joinedBefore is the one of some records that was joined to its house by what the writer said last, or
// said before only asking, 0 for none.
func (t *turn) joinedBefore(ids []int64) (int64, error) {
	for m, n := t.m, 0; n < fewBefore; n++ {
		before, found, err := t.tx.SaidBefore(m)
		if err != nil || !found {
			return 0, err
		}
		if saysJoined(before.Text) && slices.Contains(ids, before.Site) {
			return before.Site, nil
		}
		if _, reported, err := t.tx.ReportOf(before.ID); err != nil || reported {
			return 0, err
		}
		m = before
	}
	return 0, nil
}

// saysJoined tells whether a text joined two houses, as the same one or by a new name.
func saysJoined(text string) bool {
	return saysSame(strings.Join(plainWords(text), " ")) ||
		slices.ContainsFunc(newNames, func(w string) bool { return strings.Contains(strings.ToLower(text), w) })
}

// saysSame tells whether words join two houses.
func saysSame(said string) bool {
	for _, p := range []string{"same house as", "same as", "is the same house", "misma casa que", "la misma que", "es la misma casa"} {
		if strings.Contains(said, p) {
			return true
		}
	}
	return false
}

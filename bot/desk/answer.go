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

// answer takes frame as the answer to a question of ours; done is false when
// it is none, and then the message stands for itself.
func (t *turn) answer(q store.Question, f intents.Frame) (done bool, err error) {
	switch q.Kind {
	case askNoSite:
		if f.Site == "" || len(reports(f)) > 0 {
			return false, nil
		}
		named := assess.Site{Line: f.Site, Town: f.Town, Postcode: f.Postcode}
		found, sure, err := t.resolve(named, true)
		if err != nil {
			return true, err
		}
		if !sure {
			m, ok, err := t.tx.Message(q.Message)
			if err != nil || !ok {
				return ok, err
			}
			return true, t.askWhich(m, named, found)
		}
		return true, t.finish(q, found[0])
	case askWhichSite:
		var w whichSite
		if err := json.Unmarshal(q.Body, &w); err != nil {
			return false, fmt.Errorf("read the open question: %w", err)
		}
		if i, ok := choice(t.m.Text, len(w.Sites)); ok {
			s, err := t.tx.Site(w.Sites[i])
			if err != nil {
				return true, err
			}
			return true, t.finish(q, s)
		}
		if f.Site == "" || len(reports(f)) > 0 {
			return false, nil
		}
		for _, id := range w.Sites {
			s, err := t.tx.Site(id)
			if err != nil {
				return true, err
			}
			if s.Key() == (assess.Site{Line: f.Site}).Key() {
				return true, t.finish(q, s)
			}
		}
		return false, nil
	case askUnclear:
		if len(reports(f)) == 0 && f.Site == "" {
			return false, nil
		}
		return false, t.tx.EndQuestion(q.ID, "answered")
	}
	return false, nil
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
	if err := t.tx.FileUnder(t.m.ID, site.Named); err != nil {
		return err
	}
	f.Site = "" // settled: site stands for it
	return t.act(m, f, site, false)
}

// choice reads "2", "the second one", "la primera" as one of n offered.
func choice(text string, n int) (int, bool) {
	words := strings.FieldsFunc(strings.ToLower(text), func(r rune) bool { return strings.ContainsRune(" .,!#)(", r) })
	if len(words) == 0 || len(words) > 4 {
		return 0, false
	}
	for _, w := range words {
		if i, err := strconv.Atoi(w); err == nil && i >= 1 && i <= n {
			return i - 1, len(words) <= 2
		}
		if i, ok := ordinals[w]; ok && i < n {
			return i, true
		}
	}
	return 0, false
}

var ordinals = map[string]int{
	"first": 0, "1st": 0, "second": 1, "2nd": 1, "third": 2, "3rd": 2, "fourth": 3, "4th": 3,
	"primera": 0, "primero": 0, "segunda": 1, "segundo": 1, "tercera": 2, "tercero": 2, "cuarta": 3, "cuarto": 3,
}

// withdraw takes back what a message reported and judges its house anew.
func (t *turn) withdraw(m store.Message, to store.MessageState) error {
	if err := t.tx.Revise(m.ID, to, t.m.ID); err != nil {
		return err
	}
	reported, err := t.tx.DropReport(m.ID)
	if err != nil || !reported || m.Site == 0 {
		return err
	}
	return t.restand(m.Site)
}

// retract follows a deletion: the report goes, the words stay on record.
func (t *turn) retract(about store.Message) error {
	if about.ID == 0 || about.Frame == nil {
		return nil
	}
	return t.withdraw(about, store.Retracted)
}

// corrects tells whether a frame puts an earlier report right.
func corrects(f intents.Frame) bool {
	for _, a := range f.Asks() {
		if a.About == intents.AskCorrect {
			return true
		}
	}
	return false
}

// correct puts the author's last report right: the first reading of the new
// frame takes the place of the last one there, keeping what it does not say.
func (t *turn) correct(m store.Message, f intents.Frame, site store.SiteRecord) error {
	last, found, err := t.tx.LastReportBy(t.m.Author)
	if err != nil {
		return err
	}
	right := assess.Visit{}
	for _, s := range reports(f) {
		right.Add(s)
	}
	if !found || len(right.Readings) == 0 {
		return t.say(Body{Lead: t.words().NothingToCorrect})
	}
	var was intents.Frame
	if err := json.Unmarshal(last.Frame, &was); err != nil {
		return fmt.Errorf("read the frame of message %d: %w", last.ID, err)
	}
	if !amend(&was, right.Readings[0]) {
		return t.say(Body{Lead: t.words().NothingToCorrect})
	}
	raw, err := json.Marshal(was)
	if err != nil {
		return err
	}
	if err := t.tx.Correct(last.ID, t.m.ID, raw); err != nil {
		return err
	}
	if site.ID == 0 || last.Site != 0 {
		if site, err = t.tx.Site(last.Site); err != nil {
			return err
		}
	}
	last.Frame = raw
	return t.report(last, was, site, false)
}

// amend puts right into the frame: in place of the reading at the same point,
// else of the only or last one.
func amend(f *intents.Frame, right assess.Reading) bool {
	at := -1
	for i, s := range f.Statements {
		if r, ok := s.(assess.Reading); ok && (at < 0 || right.Point == "" || r.Point == right.Point) {
			at = i
		}
	}
	if at < 0 {
		return false
	}
	r := f.Statements[at].(assess.Reading)
	r.PSI = right.PSI
	if right.Point != "" {
		r.Point = right.Point
	}
	if right.Heater != "" {
		r.Heater = right.Heater
	}
	if right.Flow != "" {
		r.Flow = right.Flow
	}
	f.Statements[at] = r
	return true
}

// undo takes back the author's last report.
func (t *turn) undo() error {
	last, found, err := t.tx.LastReportBy(t.m.Author)
	if err != nil {
		return err
	}
	if !found {
		return t.say(Body{Lead: t.words().NothingToUndo})
	}
	if err := t.withdraw(last, store.Retracted); err != nil {
		return err
	}
	site, err := t.tx.Site(last.Site)
	if err != nil {
		return err
	}
	return t.say(Body{Lead: fmt.Sprintf(t.words().Undone, siteLine(site.Site)), Heard: quote(last.Text)})
}

// pressed does what a button asks for.
func (t *turn) pressed() error {
	switch t.button {
	case "site": // value: message and house
		var m, s int64
		if _, err := fmt.Sscan(t.value, &m, &s); err != nil {
			return fmt.Errorf("button site says %q: %w", t.value, err)
		}
		q, found, err := t.tx.OpenQuestion(t.m.Channel, t.m.Thread, t.m.Author, t.m.At.Add(-t.opt.Memory))
		if err != nil || !found || q.Message != m {
			return err
		}
		site, err := t.tx.Site(s)
		if err != nil {
			return err
		}
		return t.finish(q, site)
	case "claim", "close":
		var id int64
		if _, err := fmt.Sscan(t.value, &id); err != nil {
			return fmt.Errorf("button %s says %q: %w", t.button, t.value, err)
		}
		a, found, err := t.tx.Alert(id)
		if err != nil || !found {
			return err
		}
		return t.moveAlert(a, t.button)
	case "done":
		var id int64
		if _, err := fmt.Sscan(t.value, &id); err != nil {
			return fmt.Errorf("button done says %q: %w", t.value, err)
		}
		return t.tx.EndFollowUp(id, "done", t.m.At)
	}
	return nil
}

// quote repeats a person's words in one short line.
func quote(s string) string {
	s = strings.Join(strings.Fields(s), " ")
	if r := []rune(s); len(r) > 120 {
		s = string(r[:119]) + "…"
	}
	return "“" + s + "”"
}

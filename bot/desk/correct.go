package desk

import (
	"cmp"
	"encoding/json"
	"fmt"
	"slices"
	"strconv"
	"strings"

	"lazyhand/assess"
	"lazyhand/intents"
	"lazyhand/store"
)

// corrects tells whether a frame puts an earlier report right.
func corrects(f intents.Frame) bool {
	for _, a := range f.Asks() {
		if a.About == intents.AskCorrect {
			return true
		}
	}
	return false
}

// correct puts a report right. What the parser found amended takes its place;
// else the first reading of the new frame takes the place of the one that it
// fits, keeping what it does not say. Without either the report moves to the
// house that is named.
func (t *turn) correct(m store.Message, f intents.Frame, site store.SiteRecord) error {
	if f.Site != "" && len(readings(f)) == 0 && len(f.Amends) == 0 {
		if only, err := t.onlyOnTheWay(); err != nil || only {
			return cmp.Or(err, t.goesTo(f))
		}
	}
	last, ok, err := t.toCorrect(f, site)
	if !ok || err != nil {
		return err
	}
	if last.ID == 0 {
		return t.say(Body{Lead: t.words().NothingToCorrect})
	}
	var was intents.Frame
	if err := json.Unmarshal(last.Frame, &was); err != nil {
		return fmt.Errorf("read the frame of message %d: %w", last.ID, err)
	}
	changed := false
	for _, a := range f.Amends {
		if a.Of < 0 {
			return t.askReading(last, was, a)
		}
		if a.Of < len(was.Statements) {
			if a.InDays != nil { // a plan's days count from its own message's day
				days := *a.InDays + t.day.Sub(t.dayOf(last))
				a.InDays = &days
			}
			was.Statements[a.Of] = a.Amend(was.Statements[a.Of])
			changed = true
		}
	}
	for _, r := range readings(f) {
		changed = amend(&was, r) || changed
	}
	moved := f.Site != "" && site.ID != last.Site
	if !changed && !moved {
		if last.Author != t.m.Author && t.role < Dispatcher {
			return t.say(Body{Lead: t.words().NothingToCorrect})
		}
		return t.askRightOf(last.ID)
	}
	if f.Site == "" {
		site.ID = last.Site
	} else {
		was.Site, was.Town, was.Postcode = f.Site, f.Town, f.Postcode
	}
	t.righting = true
	t.replanned = len(f.Amends) > 0 && !slices.ContainsFunc(f.Amends, func(a intents.Amendment) bool { return a.InDays == nil })
	if moved {
		return t.moveVisit(last, was, site)
	}
	return t.replace(last, was, site.ID)
}

// moveVisit moves a report to the house that its frame names, and with it what belongs to it: a report
// that named no house took it from the one before it, and goes where that goes.
func (t *turn) moveVisit(m store.Message, f intents.Frame, site store.SiteRecord) error {
	if site.ID == 0 {
		found, sure, err := t.resolve(assess.Site{Line: f.Site, Town: f.Town, Postcode: f.Postcode}, true)
		if err != nil {
			return err
		}
		if !sure {
			return t.replace(m, f, 0) // asks which
		}
		site = found[0]
	}
	others, err := t.ofOneVisit(m)
	if err != nil {
		return err
	}
	for _, other := range others {
		var g intents.Frame
		if err := json.Unmarshal(other.Frame, &g); err != nil {
			return fmt.Errorf("read the frame of message %d: %w", other.ID, err)
		}
		t.alongside = append(t.alongside, lines(t.dayOf(other), g, t.words())...)
	}
	behind := slices.IndexFunc(others, func(other store.Message) bool { return other.ID > m.ID })
	if behind < 0 {
		behind = len(others)
	}
	if err := t.moveAll(others[:behind], f, site); err != nil {
		return err
	}
	if err := t.replace(m, f, site.ID); err != nil {
		return err
	}
	return t.moveAll(others[behind:], f, site)
}

// moveAll files reports under the house that a frame names; the reply to the one that it is of speaks
// for them.
func (t *turn) moveAll(list []store.Message, to intents.Frame, site store.SiteRecord) error {
	t.unsaid = true
	defer func() { t.unsaid = false }()
	for _, m := range list {
		var f intents.Frame
		if err := json.Unmarshal(m.Frame, &f); err != nil {
			return fmt.Errorf("read the frame of message %d: %w", m.ID, err)
		}
		f.Site, f.Town, f.Postcode = to.Site, to.Town, to.Postcode
		if err := t.replace(m, f, site.ID); err != nil {
			return err
		}
	}
	return nil
}

// ofOneVisit are the other reports of a person that hang together with one: those before it up to the
// one that named the house, and those behind it that took the house from it.
func (t *turn) ofOneVisit(m store.Message) ([]store.Message, error) {
	list, err := t.tx.ReportsBy(m.Author, t.m.ID, recentReports)
	if err != nil {
		return nil, err
	}
	slices.Reverse(list) // oldest first
	at := slices.IndexFunc(list, func(r store.Report) bool { return r.Message == m.ID })
	if at < 0 {
		return nil, nil
	}
	follows := func(k int) (bool, error) { // report k took its house from the one before it
		if k < 1 || k >= len(list) || list[k].Site != list[k-1].Site || list[k].At.Sub(list[k-1].At) > t.opt.Memory {
			return false, nil
		}
		var f intents.Frame
		if err := json.Unmarshal(list[k].Frame, &f); err != nil {
			return false, fmt.Errorf("read the frame of message %d: %w", list[k].Message, err)
		}
		return f.Site == "", nil
	}
	first, last := at, at
	for {
		before, err := follows(first)
		if err != nil {
			return nil, err
		}
		if !before {
			break
		}
		first--
	}
	for {
		behind, err := follows(last + 1)
		if err != nil {
			return nil, err
		}
		if !behind {
			break
		}
		last++
	}
	var out []store.Message
	for k := first; k <= last; k++ {
		if k == at {
			continue
		}
		other, found, err := t.tx.Message(list[k].Message)
		if err != nil {
			return nil, err
		}
		if found && other.State == store.Taken {
			out = append(out, other)
		}
	}
	return out, nil
}

// toCorrect is the report that the message puts right; ok is false when the
// person may not, and has been told so. A reading at a house that is named puts
// right what its writer read there last.
func (t *turn) toCorrect(f intents.Frame, site store.SiteRecord) (store.Message, bool, error) {
	if t.amended.ID == 0 {
		if f.Site != "" && site.ID != 0 {
			if m, found, err := t.readAt(f, site); err != nil || found {
				return m, true, err
			}
		}
		return t.meant()
	}
	if t.amended.Author != t.m.Author && t.role < Dispatcher {
		return store.Message{}, false, t.say(Body{Lead: fmt.Sprintf(t.words().NotYours, t.who(t.amended.Author))})
	}
	return t.amended, true, nil
}

// readAt is the newest of the writer's reports on a house in which a reading of
// the frame has one to take the place of: one that the message names by its
// pressure ("was 110, not 101") before all others.
func (t *turn) readAt(f intents.Frame, site store.SiteRecord) (m store.Message, found bool, err error) {
	right := readings(f)
	if len(right) == 0 {
		return m, false, nil
	}
	list, err := t.tx.ReportsBy(t.m.Author, t.place(), recentReports)
	if err != nil {
		return m, false, err
	}
	said, newest := plainWords(t.m.Text), int64(0)
	for _, r := range list {
		if r.Site != site.ID && r.Site != site.Named {
			continue
		}
		var was intents.Frame
		if err := json.Unmarshal(r.Frame, &was); err != nil {
			return m, false, fmt.Errorf("read the frame of message %d: %w", r.Message, err)
		}
		for _, old := range readings(was) {
			if old.PSI != right[0].PSI && slices.Contains(said, strconv.FormatFloat(old.PSI, 'f', -1, 64)) {
				return t.tx.Message(r.Message)
			}
			newest = cmp.Or(newest, r.Message)
		}
	}
	if newest == 0 {
		return m, false, nil
	}
	return t.tx.Message(newest)
}

// readings are those that a frame reports.
func readings(f intents.Frame) []assess.Reading {
	var v assess.Visit
	for _, s := range f.Statements {
		v.Add(s)
	}
	return v.Readings
}

// recentReports is how many of a person's reports are looked through for the one
// that is put right.
const recentReports = 8

// askReading asks which of a report's readings is meant.
func (t *turn) askReading(m store.Message, f intents.Frame, a intents.Amendment) error {
	lines, _ := t.readingLines(f)
	ask := fmt.Sprintf(t.words().WhichReading, t.either(lines))
	if err := t.keepQuestion(m, askReading, asked{Unclear: intents.Unclear{MightBe: lines, Ask: ask}, Amend: &a}); err != nil {
		return err
	}
	return t.say(Body{Lead: ask, Buttons: picks(m, lines)})
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

// difference says what was put right in a report: each statement before and
// after, and the house when it moved.
func (t *turn) difference(day assess.Date, was, now intents.Frame, from, to store.SiteRecord) string {
	var parts []string
	add := func(a, b string) {
		if a != b {
			parts = append(parts, change(a, b, t.words()))
		}
	}
	if from.ID != 0 && from.ID != to.ID {
		add(siteLine(from.Site), siteLine(to.Site))
	}
	parts = append(parts, changes(day, was, now, t.words())...)
	if len(parts) == 0 {
		return ""
	}
	said := t.words().PutRightNow + strings.Join(parts, "; ") + "."
	if len(t.alongside) > 0 {
		said += " " + fmt.Sprintf(t.words().MovedAlong, strings.Join(t.alongside, "; "))
	}
	return said
}

// changes are the statements that differ between two frames of one message of a
// day, a line each.
func changes(day assess.Date, was, now intents.Frame, w *words) []string {
	a, b := lines(day, was, w), lines(day, now, w)
	var parts []string
	if len(a) == len(b) {
		for i := range a {
			if a[i] != b[i] {
				parts = append(parts, change(a[i], b[i], w))
			}
		}
		return parts
	}
	return []string{change(strings.Join(a, "; "), strings.Join(b, "; "), w)}
}

// change says once what two wordings share: "91 → 81 psi rear bibb".
func change(a, b string, w *words) string {
	apart := func(s string) []string { return strings.Fields(strings.NewReplacer(",", " ,", ";", " ;").Replace(s)) }
	together := func(list ...string) string {
		return strings.NewReplacer(" ,", ",", " ;", ";").Replace(strings.TrimSpace(strings.Join(list, " ")))
	}
	x, y := apart(a), apart(b)
	n := 0
	for n < min(len(x), len(y)) && x[n] == y[n] {
		n++
	}
	k := 0
	for k < min(len(x), len(y))-n && x[len(x)-1-k] == y[len(y)-1-k] {
		k++
	}
	from, to := x[n:len(x)-k], y[n:len(y)-k]
	switch {
	case len(from) == 0:
		return b // it only says more
	case len(to) == 0 || len(from) > 4 || len(to) > 4:
		return fmt.Sprintf(w.ChangedTo, a, b)
	}
	return together(together(x[:n]...), fmt.Sprintf(w.ChangedTo, together(from...), together(to...)), together(x[len(x)-k:]...))
}

// lines are the reports of a frame of a day in words.
func lines(day assess.Date, f intents.Frame, w *words) []string {
	var out []string
	for _, s := range reports(f) {
		v := assess.Visit{Date: day}
		v.Add(s)
		out = append(out, visitText(v, w))
	}
	return out
}

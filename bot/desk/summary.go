package desk

import (
	"context"
	"fmt"
	"slices"
	"strings"
	"time"

	"lazyhand/assess"
	"lazyhand/store"
)

// Summary is what happened from one day up to, not including, another, and how
// things stand at its end.
type Summary struct {
	From, To assess.Date
	Lang     assess.Lang
	Band     [2]float64
	Houses   int // reported on
	Readings int
	Fair     int // of the readings
	Reports  []store.SpanReport
	Raised   []store.Alert // alerts that began in the span
	Ended    []store.Alert // alerts settled or closed in the span
	OpenNow  []store.Alert
	Drifting []store.Outlook  // valves that drift, those that leave the band first
	PastAge  []store.OldValve // regulators past their service life, oldest first
	PastAll  int              // how many, where PastAge does not list all
	Kept     []store.FollowUp // done in the span
	Missed   []store.FollowUp // open, and due before the span's end
	Streets  []StreetChange
	First    []store.Outlook // three houses to see first
	Crew     []string        // who reported, by name

	lines map[string][]string // what is behind each number, by button
}

// StreetChange is a street whose supply has changed.
type StreetChange struct {
	Street       string
	FromPSI, PSI float64
}

// Bounds of what a summary reads and lists.
const (
	reportsRead  = 5000
	outlooksRead = 200
	streetsRead  = 200
	linesOpened  = 30
	housesFirst  = 3
)

// Summary tells what happened from one day up to, not including, another, in
// the shop's language.
func (d *Desk) Summary(ctx context.Context, from, to assess.Date) (Summary, error) {
	var s Summary
	err := d.store.Read(ctx, func(tx *store.Tx) (err error) {
		s, err = d.summary(tx, d.opt.Lang, from, to, to)
		return err
	})
	return s, err
}

// summary gathers a span as of a day.
func (d *Desk) summary(tx *store.Tx, lang assess.Lang, from, to, today assess.Date) (s Summary, err error) {
	s = Summary{From: from, To: to, Lang: lang, Band: d.band()}
	start, end := from.In(d.opt.Zone), to.In(d.opt.Zone)
	n, err := tx.Tally(from, to)
	if err != nil {
		return s, err
	}
	s.Houses, s.Readings, s.Fair = n.Houses, n.Readings, n.Fair
	if s.Reports, err = tx.ReportsBetween(from, to, reportsRead); err != nil {
		return s, err
	}
	if s.Raised, err = tx.AlertsRaised(start, end); err != nil {
		return s, err
	}
	if s.Ended, err = tx.AlertsEnded(start, end); err != nil {
		return s, err
	}
	if s.OpenNow, err = tx.OpenAlerts(); err != nil {
		return s, err
	}
	if s.Drifting, err = tx.Drifting(outlooksRead); err != nil {
		return s, err
	}
	before := today.Year - int(d.serviceYears()[1]) + 1
	if s.PastAge, s.PastAll, err = tx.ValvesBefore(before, outlooksRead); err != nil {
		return s, err
	}
	if s.Kept, err = tx.EndedFollowUps("done", start, end); err != nil {
		return s, err
	}
	if s.Kept, err = d.promised(tx, s.Kept); err != nil {
		return s, err
	}
	if s.Missed, err = tx.DueFollowUps(to.AddDays(-1), 0); err != nil {
		return s, err
	}
	if s.Streets, err = streetChanges(tx, from, to); err != nil {
		return s, err
	}
	if s.First, err = tx.Gravest(urgencyRank[assess.Soon], housesFirst); err != nil {
		return s, err
	}
	authors, err := tx.Authors(from, to)
	if err != nil {
		return s, err
	}
	t := &turn{Desk: d, tx: tx, lang: lang, day: today}
	for _, a := range authors {
		s.Crew = append(s.Crew, t.who(a))
	}
	slices.Sort(s.Crew)
	return s, t.linesBehind(&s)
}

// promised are the follow-ups of a list without what the bot itself advised on the day on which
// it was done: nobody kept a word by reading again at once.
func (d *Desk) promised(tx *store.Tx, list []store.FollowUp) ([]store.FollowUp, error) {
	var out []store.FollowUp
	for _, f := range list {
		m, found, err := tx.Message(f.Source)
		if err != nil {
			return nil, err
		}
		advised := found && !f.Clock && !quoted(f.Why)
		if advised && assess.DateOf(m.At.In(d.opt.Zone)) == assess.DateOf(f.Ended.In(d.opt.Zone)) {
			continue
		}
		out = append(out, f)
	}
	return out, nil
}

// streetChanges looks over the streets whose main was read in the span.
func streetChanges(tx *store.Tx, from, to assess.Date) ([]StreetChange, error) {
	streets, err := tx.StreetsRead(from, to, streetsRead)
	if err != nil {
		return nil, err
	}
	var out []StreetChange
	for _, name := range streets {
		readings, err := tx.StreetReadings(name, from.AddDays(-assess.StreetHistoryDays), 0, 200)
		if err != nil {
			return nil, err
		}
		if l, ok := assess.StreetLevel(readings, to); ok && l.Shifted {
			out = append(out, StreetChange{name, l.FromPSI, l.PSI})
		}
	}
	return out, nil
}

// What the buttons of a summary open.
const (
	openReports   = "reports"
	openAlerts    = "alerts"
	openDrift     = "drift"
	openAge       = "age"
	openFollowUps = "follow_ups"
	openStreets   = "streets"

	seeFirst = "first" // no button: it is told in full
)

// linesBehind writes what is behind each number, a line a thing.
func (t *turn) linesBehind(s *Summary) error {
	w := wordsIn(s.Lang)
	s.lines = map[string][]string{}
	for _, r := range s.Reports {
		line := fmt.Sprintf("%s  %s", r.Day, r.Line)
		if r.HousePSI != nil {
			line += fmt.Sprintf(": %s %s (%s)", number(*r.HousePSI), w.Psi, w.Band[r.Band])
		} else {
			line += ": " + w.Band[assess.BandNone]
		}
		s.lines[openReports] = append(s.lines[openReports], line)
	}
	seen := map[int64]bool{}
	for _, list := range [][]store.Alert{s.OpenNow, s.Ended, s.Raised} {
		for _, a := range list {
			if seen[a.ID] {
				continue
			}
			seen[a.ID] = true
			line, err := t.alertLine(a)
			if err != nil {
				return err
			}
			s.lines[openAlerts] = append(s.lines[openAlerts], line)
		}
	}
	for _, v := range s.Drifting {
		s.lines[openDrift] = append(s.lines[openDrift], driftLine(v, w))
	}
	for _, v := range s.PastAge {
		s.lines[openAge] = append(s.lines[openAge], oldValveLine(v, t.day, w))
	}
	for _, f := range s.Kept {
		s.lines[openFollowUps] = append(s.lines[openFollowUps], w.KeptMark+" "+followUpLine(f, w))
	}
	for _, f := range s.Missed {
		s.lines[openFollowUps] = append(s.lines[openFollowUps], w.MissedMark+" "+followUpLine(f, w))
	}
	first, err := t.worstLines(s.First)
	if err != nil {
		return err
	}
	s.lines[seeFirst] = first
	for _, c := range s.Streets {
		s.lines[openStreets] = append(s.lines[openStreets], fmt.Sprintf(w.StreetChanged, titled(c.Street), number(c.FromPSI), number(c.PSI)))
	}
	return nil
}

// oldValveLine is a regulator past its service life in one line.
func oldValveLine(v store.OldValve, today assess.Date, w *words) string {
	return fmt.Sprintf("%s: %s %d %s", v.Line, w.Item[assess.PRV], v.Year, w.yearsOld(today.Year-v.Year))
}

// driftLine is a drifting valve in one line.
func driftLine(v store.Outlook, w *words) string {
	line := v.Line + ": "
	if v.Slope != nil {
		line += fmt.Sprintf(w.Moves, number(*v.Slope))
	}
	if !v.Crosses.IsZero() {
		line += "; " + fmt.Sprintf(w.LeavesBand, v.Crosses)
	}
	return line
}

// worstLines lists houses by what is gravest there.
func (t *turn) worstLines(list []store.Outlook) ([]string, error) {
	var out []string
	for _, o := range list {
		site, err := t.tx.Site(o.Site)
		if err != nil {
			return nil, err
		}
		h, err := t.house(t.tx, site, t.day, t.lang)
		if err != nil {
			return nil, err
		}
		if g := gravestFirst(h.Assessment.Findings); len(g) > 0 {
			out = append(out, siteLine(site.Site)+": "+g[0].Text)
		}
	}
	return out, nil
}

// Body tells a summary in a few lines.
func (s Summary) Body() Body {
	w := wordsIn(s.Lang)
	b := Body{Lead: fmt.Sprintf(w.Summary, s.From, s.To.AddDays(-1))}
	share := 0
	if s.Readings > 0 {
		share = (100*s.Fair + s.Readings/2) / s.Readings
	}
	b.Facts = append(b.Facts, fmt.Sprintf(w.SummaryReports, s.Houses, s.Readings, share))
	settled, times := 0, []time.Duration{}
	for _, a := range s.Ended {
		if a.State == "settled" {
			settled++
			times = append(times, a.Ended.Sub(a.RaisedAt))
		}
	}
	alerts := fmt.Sprintf(w.SummaryAlerts, len(s.Raised), settled, len(s.Ended)-settled, len(s.OpenNow))
	if len(times) > 0 {
		slices.Sort(times)
		alerts += " " + fmt.Sprintf(w.SummaryTime, waited(times[len(times)/2], w))
	}
	b.Facts = append(b.Facts, alerts)
	if n := len(s.Drifting); n > 0 {
		b.Facts = append(b.Facts, fmt.Sprintf(w.SummaryDrift, n)+" "+driftLine(s.Drifting[0], w))
	}
	if s.PastAll > 0 {
		b.Facts = append(b.Facts, fmt.Sprintf(w.SummaryAge, s.PastAll))
	}
	b.Facts = append(b.Facts, fmt.Sprintf(w.SummaryFollowUps, len(s.Kept), len(s.Missed)))
	b.Facts = append(b.Facts, s.lines[openStreets]...)
	if len(s.First) > 0 {
		for _, line := range s.lines[seeFirst] {
			b.Next = append(b.Next, w.SummaryFirst+line)
		}
	}
	if len(s.Crew) > 0 {
		b.Next = append(b.Next, fmt.Sprintf(w.Thanks, strings.Join(s.Crew, ", ")))
	}
	return b
}

// summaryPost is the summary with what can be opened and its picture.
func (d *Desk) summaryPost(s Summary) Body {
	b, w := s.Body(), wordsIn(s.Lang)
	for _, what := range []string{openReports, openAlerts, openDrift, openAge, openFollowUps, openStreets} {
		if n := len(s.lines[what]); n > 0 {
			b.Buttons = append(b.Buttons, Button{"open", fmt.Sprintf(w.Open[what], n), fmt.Sprintf("%d %s %s %s", 0, what, s.From, s.To)})
		}
	}
	if d.opt.Painter != nil && s.Readings > 0 {
		b.Draw = &Drawing{What: drawsWeek, From: s.From, To: s.To, Lang: s.Lang}
	}
	return b
}

// pressOpen lists what is behind a number of a summary.
func (t *turn) pressOpen(p press) error {
	from, err1 := assess.ParseDate(at(p.rest, 1))
	to, err2 := assess.ParseDate(at(p.rest, 2))
	if err1 != nil || err2 != nil {
		return fmt.Errorf("button open says %q", t.value)
	}
	s, err := t.summary(t.tx, t.lang, from, to, t.day)
	if err != nil {
		return err
	}
	w, lines := t.words(), s.lines[at(p.rest, 0)]
	if len(lines) == 0 {
		return t.say(Body{Lead: w.NothingThere})
	}
	b := Body{Lead: fmt.Sprintf(w.Open[at(p.rest, 0)], len(lines)), Facts: lines[:min(len(lines), linesOpened)]}
	if more := len(lines) - len(b.Facts); more > 0 {
		b.Next = []string{fmt.Sprintf(w.AndMore, more)}
	}
	return t.say(b)
}

// titled writes the bare name of a street with capitals.
func titled(street string) string {
	words := strings.Fields(street)
	for i, s := range words {
		words[i] = strings.ToUpper(s[:1]) + s[1:]
	}
	return strings.Join(words, " ")
}

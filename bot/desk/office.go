package desk

import (
	"cmp"
	"encoding/json"
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"

	"lazyhand/assess"
	"lazyhand/intents"
	"lazyhand/store"
)

// atMostLines is how long a list in an answer is at most.
const atMostLines = 20

// shortened leaves of a list as many lines as an answer has room for, and says
// how many more there are.
func shortened(lines []string, w *words) []string {
	if more := len(lines) - atMostLines; more > 0 {
		return append(slices.Clone(lines[:atMostLines]), fmt.Sprintf(w.AndMore, more))
	}
	return lines
}

// worst answers which houses to see first: those where something is to be done
// at once, then those farthest outside the band, then what else wants seeing to.
func (t *turn) worst() error {
	grave, err := t.tx.Gravest(urgencyRank[assess.Soon], atHome)
	if err != nil {
		return err
	}
	outside, err := t.tx.WorstSites(atHome)
	if err != nil {
		return err
	}
	for _, s := range outside {
		if !slices.ContainsFunc(grave, func(o store.Outlook) bool { return o.Site == s.ID }) {
			grave = append(grave, store.Outlook{Site: s.ID, Rank: urgencyRank[assess.Soon]})
		}
	}
	out := map[int64]float64{}
	for _, s := range outside {
		out[s.ID] = s.Outside
	}
	slices.SortStableFunc(grave, func(a, b store.Outlook) int {
		return cmp.Or(cmp.Compare(a.Rank, b.Rank), cmp.Compare(out[b.Site], out[a.Site]))
	})
	lines, err := t.worstLines(grave[:min(len(grave), atHome)])
	if err != nil {
		return err
	}
	if len(lines) == 0 {
		return t.say(Body{Lead: t.words().NoneWorst})
	}
	return t.say(Body{Lead: lines[0], Facts: lines[1:]})
}

// openAlertLines lists the open alerts with what is gravest at each house.
func (t *turn) openAlertLines() ([]string, error) {
	open, err := t.tx.OpenAlerts()
	if err != nil {
		return nil, err
	}
	var out []string
	for _, a := range open {
		line, err := t.alertLine(a)
		if err != nil {
			return nil, err
		}
		why, err := t.worstLines([]store.Outlook{{Site: a.Site}})
		if err != nil {
			return nil, err
		}
		if len(why) > 0 {
			_, text, _ := strings.Cut(why[0], ": ")
			line += ". " + text
		}
		out = append(out, line)
	}
	return out, nil
}

// alerts answers which alerts are open.
func (t *turn) alerts() error {
	lines, err := t.openAlertLines()
	if err != nil {
		return err
	}
	w := t.words()
	if len(lines) == 0 {
		return t.say(Body{Lead: w.NoAlerts})
	}
	return t.say(Body{Lead: fmt.Sprintf(w.OpenAlerts, len(lines)), Facts: shortened(lines, w)})
}

// whoSaid is the member of the crew that a question names or whose own things
// it asks after; empty for nobody.
func (t *turn) whoSaid(said []string) (string, error) {
	crew, err := t.tx.People()
	if err != nil {
		return "", err
	}
	if who := named(said, crew); who != "" {
		return who, nil
	}
	if slices.ContainsFunc(said, func(w string) bool { return ofMine[w] }) {
		return t.m.Author, nil
	}
	return "", nil
}

var ofMine = wordSet("me my mine i mi mis tengo")

// spanSaid is the stretch of days that a question about what was done names:
// from its first day up to, not including, the other; today when it names none.
func (t *turn) spanSaid(said []string) (from, to assess.Date) {
	from, to = t.day, t.day.AddDays(1)
	sinceMonday := (int(t.day.In(t.opt.Zone).Weekday()) + 6) % 7
	text := " " + strings.Join(said, " ") + " "
	has := func(list ...string) bool {
		return slices.ContainsFunc(list, func(s string) bool { return strings.Contains(text, " "+s+" ") })
	}
	switch {
	case has("yesterday", "yesterdays", "ayer", "last night", "anoche"):
		return from.AddDays(-1), from
	case has("last week", "la semana pasada", "semana pasada"):
		return from.AddDays(-sinceMonday - 7), from.AddDays(-sinceMonday)
	case has("week", "weeks", "semana"):
		return from.AddDays(-sinceMonday), to
	case has("month", "months", "mes"):
		return from.AddDays(-30), to
	case has("last year", "ano pasado", "el ano pasado"):
		return assess.Date{Year: from.Year - 1, Month: 1, Day: 1}, assess.Date{Year: from.Year, Month: 1, Day: 1}
	}
	for _, w := range said {
		if wd, ok := weekdays[w]; ok {
			day := nextWeekday(t.day, wd).AddDays(-7)
			return day, day.AddDays(1)
		}
	}
	return from, to
}

// log answers who reported what in a span of days.
func (t *turn) log() error {
	said := plainWords(t.m.Text)
	who, err := t.whoSaid(said)
	if err != nil {
		return err
	}
	from, to := t.spanSaid(said)
	list, err := t.tx.ReportsBetween(from, to, reportsRead)
	if err != nil {
		return err
	}
	w := t.words()
	var lines []string
	for _, r := range list {
		if who != "" && r.Author != who {
			continue
		}
		m, found, err := t.tx.Message(r.Message)
		if err != nil || !found {
			return err
		}
		var f intents.Frame
		if err := json.Unmarshal(m.Frame, &f); err != nil {
			return fmt.Errorf("read the frame of message %d: %w", m.ID, err)
		}
		line := fmt.Sprintf("%s  %s: %s", r.Day, r.Line, visitText(f.Visit(r.Day), w))
		if who == "" {
			line = fmt.Sprintf("%s  %s, %s: %s", r.Day, t.who(r.Author), r.Line, visitText(f.Visit(r.Day), w))
		}
		lines = append(lines, line)
	}
	days := dayText(from, w)
	if last := to.AddDays(-1); last != from {
		days += " – " + dayText(last, w)
	}
	if who != "" {
		days = t.who(who) + ", " + days
	}
	if len(lines) == 0 {
		return t.say(Body{Lead: fmt.Sprintf(w.NoReports, days)})
	}
	return t.say(Body{Lead: fmt.Sprintf(w.ReportsOf, days, len(lines)), Facts: shortened(lines, w)})
}

// daysAhead is how far ahead a question about what is due looks.
func (t *turn) daysAhead(said []string) int {
	sinceMonday := (int(t.day.In(t.opt.Zone).Weekday()) + 6) % 7
	text := " " + strings.Join(said, " ") + " "
	for _, s := range []struct {
		words string
		days  int
	}{
		{"next week", 13 - sinceMonday}, {"la proxima semana", 13 - sinceMonday}, {"la semana que viene", 13 - sinceMonday}, {"la semana que entra", 13 - sinceMonday},
		{"next month", 61}, {"month", 31}, {"mes", 31}, {"year", 365}, {"ano", 365},
		{"today", 0}, {"hoy", 0}, {"overdue", 0}, {"past due", 0}, {"vencidos", 0}, {"vencidas", 0}, {"late", 0},
	} {
		if strings.Contains(text, " "+s.words+" ") {
			return s.days
		}
	}
	for i, w := range said {
		if n, err := strconv.Atoi(w); err == nil && n > 0 && n <= 400 {
			switch at(said, i+1) {
			case "day", "days", "dias":
				return n
			case "week", "weeks", "semanas":
				return 7 * n
			case "months", "meses":
				return 30 * n
			}
		}
	}
	if day, _, found := readDay(said, t.day); found {
		return day.Sub(t.day)
	}
	return dueWithin
}

// street answers what was read at the houses on record of a street, a line a
// house, the highest first.
func (t *turn) street(span string, sites []store.SiteRecord) error {
	type house struct {
		line string
		psi  float64
	}
	w := t.words()
	var list []house
	sum, read := 0.0, 0
	for _, s := range sites[:min(len(sites), 2*atMostLines)] {
		h, err := t.house(t.tx, s, t.day, t.lang)
		if err != nil {
			return err
		}
		if len(h.Visits) == 0 {
			continue
		}
		x := house{line: siteLine(s.Site) + ": " + standText(h, w)}
		if psi := h.Assessment.HousePSI; psi != nil {
			x.psi = *psi
			sum, read = sum+*psi, read+1
		}
		list = append(list, x)
	}
	slices.SortStableFunc(list, func(a, b house) int { return cmp.Compare(b.psi, a.psi) })
	var lines []string
	for _, x := range list {
		lines = append(lines, x.line)
	}
	lead := fmt.Sprintf(w.StreetLead, titled(span), len(lines))
	if read > 1 {
		lead += " " + fmt.Sprintf(w.StreetMean, number(math.Round(sum/float64(read))), read)
	}
	return t.say(Body{Lead: lead, Facts: shortened(lines, w)})
}

// oldValves answers which regulators are past their service life, the oldest
// first.
func (t *turn) oldValves() error {
	last := int(t.serviceYears()[1])
	list, n, err := t.tx.ValvesBefore(t.day.Year-last+1, atMostLines)
	if err != nil {
		return err
	}
	w := t.words()
	lines := make([]string, len(list))
	for i, v := range list {
		lines[i] = oldValveLine(v, t.day, w)
	}
	if more := n - len(list); more > 0 {
		lines = append(lines, fmt.Sprintf(w.AndMore, more))
	}
	return t.say(Body{Lead: fmt.Sprintf(w.SummaryAge, n), Facts: lines})
}

// drifting answers where the pressure drifts, those that leave the band first.
func (t *turn) drifting() error {
	list, err := t.tx.Drifting(atMostLines)
	if err != nil {
		return err
	}
	w := t.words()
	if len(list) == 0 {
		return t.say(Body{Lead: w.NoDrift})
	}
	lines := make([]string, len(list))
	for i, v := range list {
		lines[i] = driftLine(v, w)
	}
	return t.say(Body{Lead: lines[0], Facts: lines[1:]})
}

// lastPSI is the newest pressure of a house that can be believed, and its day:
// that of the last visit, else the last fair reading before it.
func lastPSI(h House) (*float64, assess.Date) {
	if psi := h.Assessment.HousePSI; psi != nil {
		return psi, h.lastVisit().Date
	}
	if len(h.lastVisit().Readings) > 0 {
		return nil, assess.Date{} // it was read, and not fairly: read it again
	}
	for _, r := range slices.Backward(h.Readings) {
		if r.Fair == assess.FairYes && r.Side == assess.HouseSide && !r.Peak {
			return &r.PSI, r.Day
		}
	}
	return nil, assess.Date{}
}

// standText is how a house stands in a few words: its pressure and the day it was
// read; where the last visit read nothing, what was read before it.
func standText(h House, w *words) string {
	last := h.lastVisit()
	read := slices.IndexFunc(h.Readings, func(r store.SiteReading) bool { return r.Fair == assess.FairYes && r.Side == assess.HouseSide })
	for i := read + 1; i < len(h.Readings) && read >= 0; i++ {
		if r := h.Readings[i]; r.Fair == assess.FairYes && r.Side == assess.HouseSide {
			read = i
		}
	}
	switch psi := h.Assessment.HousePSI; {
	case unreadWork(last, h.Assessment):
		return fmt.Sprintf("%s (%s)", w.NotReadSince, last.Date)
	case psi != nil:
		return fmt.Sprintf("%s %s, %s (%s)", number(*psi), w.Psi, w.Band[h.Assessment.Band], last.Date)
	case len(last.Readings) == 0 && read >= 0:
		return fmt.Sprintf("%s (%s)", readingText(h.Readings[read].Reading, w), h.Readings[read].Day)
	case len(last.Readings) > 0:
		return fmt.Sprintf("%s (%s, %s)", w.Band[assess.BandNone], last.Date, readingText(last.Readings[len(last.Readings)-1], w))
	}
	return fmt.Sprintf("%s (%s)", w.Band[assess.BandNone], last.Date)
}

// tankCharge answers what a tank's air is to be charged to: the static pressure
// of its house.
func (t *turn) tankCharge(a intents.Ask, site store.SiteRecord) error {
	w := t.words()
	psi, line := a.PSI, ""
	if psi == nil && site.ID != 0 {
		h, err := t.house(t.tx, site, t.day, t.lang)
		if err != nil {
			return err
		}
		line = siteLine(site.Site) + ": "
		if psi, _ = lastPSI(h); psi == nil || unreadWork(h.lastVisit(), h.Assessment) {
			return t.say(Body{Lead: line + w.ChargeNeeds, Next: []string{w.ChargeHow}, Cautions: []string{w.Caution[assess.CautionTank]}})
		}
	}
	if psi == nil {
		return t.say(Body{Lead: w.ChargeRule, Next: []string{w.ChargeHow}, Cautions: []string{w.Caution[assess.CautionTank]}})
	}
	b := Body{Lead: line + fmt.Sprintf(w.ChargeTo, number(*psi)), Next: []string{w.ChargeHow},
		Cautions: []string{w.Caution[assess.CautionTank], w.Caution[assess.CautionLocalCode]}}
	if top := t.band()[1]; *psi > top {
		b.Lead = line + fmt.Sprintf(w.ChargeTooHigh, number(*psi), number(top))
	}
	b.Lead = sentence(b.Lead)
	return t.say(b)
}

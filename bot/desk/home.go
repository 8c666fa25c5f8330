package desk

import (
	"context"
	"encoding/json"
	"fmt"
	"math"
	"time"

	"lazyhand/assess"
	"lazyhand/intents"
	"lazyhand/store"
)

// Home is what one person sees first: their own follow-ups and reports, and
// for a dispatcher the alerts, the week and the worst houses.
type Home struct {
	Person    string
	Lang      assess.Lang
	Role      Role
	FollowUps Section // mine, open
	Reports   Section // my last ones
	Alerts    Section // open; dispatchers
	Due       Section // this week's; dispatchers
	Worst     Section // houses; dispatchers
}

// Section is a heading with a line for each thing.
type Section struct {
	Title string
	Lines []string
	Empty string // said when there is none
}

// atHome is how many lines a section of the home page has at most.
const atHome = 10

// Home returns a person's first page as of now.
func (d *Desk) Home(ctx context.Context, person string, now time.Time) (Home, error) {
	h := Home{Person: person, Role: d.opt.Role(person)}
	err := d.store.Read(ctx, func(tx *store.Tx) error {
		t, err := d.turn(tx, store.Message{Author: person, At: now})
		if err != nil {
			return err
		}
		h.Lang = t.lang
		if h.Role == Outsider {
			return nil
		}
		if err := t.homeOfTech(&h); err != nil || h.Role < Dispatcher {
			return err
		}
		return t.homeOfDispatch(&h)
	})
	return h, err
}

func (t *turn) homeOfTech(h *Home) error {
	w := t.words()
	mine, err := t.tx.FollowUpsOf(h.Person, atHome)
	if err != nil {
		return err
	}
	h.FollowUps = Section{w.HomeFollowUps, t.followUpLines(mine), w.HomeNothing}
	h.Reports = Section{Title: w.HomeReports, Empty: w.HomeNothing}
	reports, err := t.tx.ReportsBy(h.Person, math.MaxInt64, atHome)
	if err != nil {
		return err
	}
	for _, r := range reports {
		site, err := t.tx.Site(r.Site)
		if err != nil {
			return err
		}
		var f intents.Frame
		if err := json.Unmarshal(r.Frame, &f); err != nil {
			return fmt.Errorf("read the report of %s on %s: %w", r.Day, site.Line, err)
		}
		h.Reports.Lines = append(h.Reports.Lines, fmt.Sprintf("%s  %s: %s", r.Day, site.Line, visitText(f.Visit(r.Day), w)))
	}
	return nil
}

func (t *turn) homeOfDispatch(h *Home) error {
	w := t.words()
	h.Alerts = Section{Title: w.HomeAlerts, Empty: w.HomeNothing}
	open, err := t.tx.OpenAlerts()
	if err != nil {
		return err
	}
	for _, a := range open {
		line, err := t.alertLine(a)
		if err != nil {
			return err
		}
		h.Alerts.Lines = append(h.Alerts.Lines, line)
	}
	due, err := t.tx.DueFollowUps(t.day.AddDays(dueWithin), 2*atHome)
	if err != nil {
		return err
	}
	h.Due = Section{w.HomeDue, t.followUpLines(due), w.HomeNothing}
	worst, err := t.tx.Gravest(urgencyRank[assess.Soon], atHome)
	if err != nil {
		return err
	}
	lines, err := t.worstLines(worst)
	h.Worst = Section{w.HomeWorst, lines, w.HomeNothing}
	return err
}

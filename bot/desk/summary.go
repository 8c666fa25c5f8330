package desk

import (
	"fmt"

	"lazyhand/assess"
	"lazyhand/store"
)

// summary tells what happened from one day up to, not including, another.
func (d *Desk) summary(tx *store.Tx, lang assess.Lang, from, to assess.Date) (Body, error) {
	w := wordsIn(lang)
	n, err := tx.Tally(from, to)
	if err != nil {
		return Body{}, err
	}
	alerts, err := tx.OpenAlerts()
	if err != nil {
		return Body{}, err
	}
	due, err := tx.DueFollowUps(to.AddDays(dueWithin), 0)
	if err != nil {
		return Body{}, err
	}
	return Body{
		Lead: fmt.Sprintf(w.Summary, from, to.AddDays(-1)),
		Facts: []string{
			fmt.Sprintf(w.SummaryReports, n.Houses, n.Readings, n.Fair),
			fmt.Sprintf(w.SummaryAlerts, len(alerts)),
			fmt.Sprintf(w.SummaryDue, len(due)),
		},
	}, nil
}

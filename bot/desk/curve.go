package desk

import (
	"fmt"
	"math"
	"sync"

	"lazyhand/assess"
	"lazyhand/store"
)

// livesPerMessage is how many valve lives an assessment is given: enough for a
// curve, few enough to answer at once.
const livesPerMessage = 400

// curve keeps the shop's valve lives for a day: they change slowly, and every
// assessment wants them.
type curve struct {
	mu   sync.Mutex
	day  assess.Date
	list []assess.Life
}

func (c *curve) lives(tx *store.Tx, today assess.Date) ([]assess.Life, error) {
	c.mu.Lock()
	defer c.mu.Unlock()
	if c.day == today {
		return c.list, nil
	}
	list, err := tx.Lives(assess.PRV, today)
	if err != nil {
		return nil, err
	}
	if n := len(list); n > livesPerMessage { // every so many-th, so that no age is preferred
		few := make([]assess.Life, 0, livesPerMessage)
		for i := range livesPerMessage {
			few = append(few, list[i*n/livesPerMessage])
		}
		list = few
	}
	c.day, c.list = today, list
	return list, nil
}

// served is how long the shop's regulators last, by its own record.
type served struct {
	Curve   assess.LifeCurve
	Enough  bool // the record holds enough failures for a curve of its own
	Serving int  // regulators that still serve, with a known age
	Failed  int
}

// lifeOf fits the shop's valve life curve as of a day.
func lifeOf(tx *store.Tx, today assess.Date) (served, error) {
	lives, err := tx.Lives(assess.PRV, today)
	if err != nil {
		return served{}, err
	}
	l := served{}
	for _, v := range lives {
		if v.Ended {
			l.Failed++
		} else {
			l.Serving++
		}
	}
	c, err := assess.FitLives(lives)
	l.Curve, l.Enough = c, err == nil // the only error is a record that is still too thin
	return l, nil
}

// lifeBody tells the curve in words, and what it says about replacing early.
func (d *Desk) lifeBody(l served, lang assess.Lang) Body {
	w := wordsIn(lang)
	years := d.serviceYears()
	near, past := years[0], years[1]
	if !l.Enough {
		return Body{Lead: fmt.Sprintf(w.LifeTooFew, l.Failed, l.Serving), Facts: []string{fmt.Sprintf(w.LifeDefault, number(near), number(past))}}
	}
	b := Body{Lead: fmt.Sprintf(w.LifeLead, l.Failed, l.Serving)}
	span := func(x assess.Between, unit float64) string {
		round := func(v float64) string { return number(math.Round(v*unit*10) / 10) }
		return fmt.Sprintf(w.Between, round(x.Value), round(x.Low), round(x.High))
	}
	if half, ok := l.Curve.YearsTo(0.5); ok {
		b.Facts = append(b.Facts, fmt.Sprintf(w.LifeHalf, span(half, 1)))
	}
	if tenth, ok := l.Curve.YearsTo(0.1); ok {
		b.Facts = append(b.Facts, fmt.Sprintf(w.LifeTenth, span(tenth, 1)))
	}
	b.Facts = append(b.Facts, fmt.Sprintf(w.LifeNext, number(past), span(l.Curve.FailsWithin(past, 1), 100)))
	if l.Curve.Shape > 1 {
		b.Next = []string{fmt.Sprintf(w.LifeWears, number(near))}
	} else {
		b.Next = []string{w.LifeChance}
	}
	return b
}

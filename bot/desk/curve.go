package desk

import (
	"context"
	"fmt"
	"math"
	"sync"

	"lazyhand/assess"
	"lazyhand/store"
)

// livesPerMessage is how many valve lives an assessment is given: enough for a
// curve, few enough to answer at once.
const livesPerMessage = 400

// curve keeps the shop's valve lives: they change slowly, every assessment wants
// them, and to gather them is too long a work for the time in which a message
// is kept. The clock does it once a day.
type curve struct {
	mu   sync.Mutex
	day  assess.Date
	list []assess.Life
}

// lives returns what was gathered last.
func (c *curve) lives() []assess.Life {
	c.mu.Lock()
	defer c.mu.Unlock()
	return c.list
}

// gather reads the valve lives anew when the day is another.
func (d *Desk) gather(ctx context.Context, today assess.Date) error {
	c := &d.curve
	c.mu.Lock()
	stale := c.day != today
	c.mu.Unlock()
	if !stale {
		return nil
	}
	var list []assess.Life
	err := d.store.Read(ctx, func(tx *store.Tx) (err error) {
		list, err = tx.Lives(assess.PRV, today)
		return err
	})
	if err != nil {
		return err
	}
	if n := len(list); n > livesPerMessage { // every so many-th, so that no age is preferred
		few := make([]assess.Life, 0, livesPerMessage)
		for i := range livesPerMessage {
			few = append(few, list[i*n/livesPerMessage])
		}
		list = few
	}
	c.mu.Lock()
	defer c.mu.Unlock()
	c.day, c.list = today, list
	return nil
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

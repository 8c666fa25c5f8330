package desk

import (
	"fmt"
	"slices"
	"strings"
	"time"

	"lazyhand/assess"
	"lazyhand/store"
)

// remindAgain is after how many days an open follow-up that was posted is
// posted again.
const remindAgain = 7

// headStart is how many days earlier an urgent follow-up counts as due, so that
// the urgent go first and yet nothing waits for ever.
var headStart = map[assess.Urgency]int{assess.Now: 30, assess.Soon: 14, assess.Watch: 7}

// remind posts the follow-ups that are due, one post a person. No more are put
// before the team in a day than it can do; the rest moves on to the next
// working day.
func (d *Desk) remind(tx *store.Tx, slot, now time.Time) error {
	if !d.cal.Workday(now) || !d.cal.Workday(slot) {
		return nil // they wait for the next working day's slot
	}
	day := assess.DateOf(now.In(d.opt.Zone))
	due, err := tx.DueFollowUps(day, 0)
	if err != nil {
		return err
	}
	due = slices.DeleteFunc(due, func(f store.FollowUp) bool {
		return !f.Posted.IsZero() && day.Sub(f.Posted) < remindAgain
	})
	slices.SortStableFunc(due, func(a, b store.FollowUp) int {
		return a.Due.AddDays(-headStart[a.Urgency]).Sub(b.Due.AddDays(-headStart[b.Urgency]))
	})
	chosen := due[:min(len(due), d.opt.AtMostADay)]
	left := len(due) - len(chosen)
	owners, byOwner := groupByOwner(chosen)
	for i, owner := range owners {
		person, err := tx.Person(owner)
		if err != nil {
			return err
		}
		w := wordsIn(d.language(person))
		name := person.Name
		if name == "" {
			name = owner
		}
		list := nearestTogether(byOwner[owner])
		b := Body{Lead: fmt.Sprintf(w.DueToday, name, len(list)), Calls: []string{owner}}
		p := Post{Key: fmt.Sprintf("remind:%s:%s", owner, slot.UTC().Format(time.RFC3339)), Kind: Say, Channel: d.opt.Team}
		for _, f := range list {
			line := followUpLine(f, w)
			if f.Due.Before(day) {
				line += " " + fmt.Sprintf(w.Overdue, day.Sub(f.Due))
			}
			b.Facts = append(b.Facts, line)
			b.Buttons = append(b.Buttons, Button{"done", fmt.Sprintf(w.DoneButton, f.Line), fmt.Sprint(f.ID)})
			if len(list) <= 4 {
				b.Buttons = append(b.Buttons, Button{"put_off", fmt.Sprintf(w.PutOffButton, f.Line), fmt.Sprintf("%d %d", f.ID, daysPutOff)},
					Button{"hand", fmt.Sprintf(w.HandButton, f.Line), fmt.Sprint(f.ID)})
			}
			if err := tx.FollowUpPosted(f.ID, day); err != nil {
				return err
			}
		}
		if len(list) == 1 {
			p.Site = list[0].Site
		}
		if left > 0 && i == len(owners)-1 {
			b.Next = append(b.Next, fmt.Sprintf(w.MoveOn, left))
		}
		p.Body = d.late(b, slot, now)
		if err := queue(tx, p, now); err != nil {
			return err
		}
	}
	return nil
}

func groupByOwner(list []store.FollowUp) (owners []string, by map[string][]store.FollowUp) {
	by = map[string][]store.FollowUp{}
	for _, f := range list {
		if by[f.Owner] == nil {
			owners = append(owners, f.Owner)
		}
		by[f.Owner] = append(by[f.Owner], f)
	}
	return owners, by
}

// nearestTogether orders follow-ups so that houses on one street, and streets
// of one postcode, stand side by side; the most urgent leads its street and its
// street the list.
func nearestTogether(list []store.FollowUp) []store.FollowUp {
	rank := map[string]int{}
	place := func(kind, name string, i int) int {
		if name == "" {
			return i
		}
		if _, ok := rank[kind+name]; !ok {
			rank[kind+name] = i
		}
		return rank[kind+name]
	}
	type key struct{ code, street, i int }
	keys := map[int64]key{}
	for i, f := range list {
		street := place("street ", f.Street, i)
		code := street
		if f.Postcode != "" {
			code = place("code ", f.Postcode, street)
		}
		keys[f.ID] = key{code, street, i}
	}
	out := slices.Clone(list)
	slices.SortStableFunc(out, func(a, b store.FollowUp) int {
		x, y := keys[a.ID], keys[b.ID]
		switch {
		case x.code != y.code:
			return x.code - y.code
		case x.street != y.street:
			return x.street - y.street
		}
		return x.i - y.i
	})
	return out
}

// late marks a body that comes well after its slot.
func (d *Desk) late(b Body, slot, now time.Time) Body {
	if now.Sub(slot) > lateAfter {
		b.Heard = strings.TrimSpace(fmt.Sprintf(wordsIn(d.opt.Lang).Late, slot.In(d.opt.Zone).Format("2006-01-02 15:04")) + " " + b.Heard)
	}
	return b
}

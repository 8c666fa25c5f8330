package store

import (
	"fmt"
	"slices"
	"testing"

	"lazyhand/assess"
)

// openAt are the actions and sources of a house's open follow-ups.
func openAt(t *testing.T, db *DB, site int64) (actions []assess.Action, sources, ids []int64) {
	t.Helper()
	write(t, db, func(tx *Tx) error {
		list, err := tx.OpenFollowUps(site)
		for _, f := range list {
			actions, sources, ids = append(actions, f.Action), append(sources, f.Source), append(ids, f.ID)
		}
		return err
	})
	return actions, sources, ids
}

// TestAHousesFollowUpsLieTogether: their numbers begin with the house's, of each
// action one is open, and those of the next house are others.
func TestAHousesFollowUpsLieTogether(t *testing.T) {
	db := fresh(t)
	first, elm := report(t, db, "1", "ana", "1 Elm St", "92 rear tap")
	_, oak := report(t, db, "2", "ben", "1 Oak St", "66 laundry")
	again, _ := report(t, db, "3", "ana", "1 Elm St", "93 rear tap")
	write(t, db, func(tx *Tx) error {
		return tx.KeepFollowUp(FollowUp{Site: elm, Action: assess.SetPRV, Due: assess.Date{Year: 2026, Month: 6, Day: 20}, Owner: "ana", Source: again})
	})
	actions, sources, ids := openAt(t, db, elm)
	if !slices.Equal(actions, []assess.Action{assess.Recheck, assess.SetPRV}) || !slices.Equal(sources, []int64{again, again}) {
		t.Errorf("open at 1 Elm St: %v from %v", actions, sources)
	}
	_, _, others := openAt(t, db, oak)
	for _, id := range ids {
		if id <= (elm+1<<20)<<20 || id >= (elm+1+1<<20)<<20 || slices.Contains(others, id) {
			t.Errorf("a follow-up of house %d has the number %d", elm, id)
		}
	}
	// The newer reason is withdrawn, and the older one stands again.
	write(t, db, func(tx *Tx) error { return tx.TakeBackFollowUps(again, at("2026-06-16 10:00")) })
	if actions, sources, _ := openAt(t, db, elm); !slices.Equal(actions, []assess.Action{assess.Recheck}) || !slices.Equal(sources, []int64{first}) {
		t.Errorf("after it was withdrawn: %v from %v", actions, sources)
	}
}

// TestWhatAMessageSettledIsOpenAgain, unless the like was opened since.
func TestWhatAMessageSettledIsOpenAgain(t *testing.T) {
	for _, since := range []bool{false, true} {
		db := fresh(t)
		first, elm := report(t, db, "1", "ana", "1 Elm St", "92 rear tap")
		by := say(t, db, "2", "done at Elm")
		_, _, ids := openAt(t, db, elm)
		write(t, db, func(tx *Tx) error {
			if err := tx.FileUnder(by, elm); err != nil {
				return err
			}
			if err := tx.EndFollowUp(ids[0], "done", at("2026-06-15 10:00"), by); err != nil {
				return err
			}
			if !since {
				return nil
			}
			return tx.KeepFollowUp(FollowUp{Site: elm, Action: assess.Recheck, Due: assess.Date{Year: 2026, Month: 7, Day: 1}, Owner: "ana", Source: first})
		})
		write(t, db, func(tx *Tx) error { return tx.TakeBackFollowUps(by, at("2026-06-16 10:00")) })
		if actions, _, now := openAt(t, db, elm); len(actions) != 1 || since == slices.Equal(now, ids) {
			t.Errorf("opened since: %v; open are %v %v, settled was %v", since, actions, now, ids)
		}
	}
}

// TestAFollowUpAwayFromItsMessageIsFound: the house's message was moved, or the
// house was joined to another under whose name it is kept.
func TestAFollowUpAwayFromItsMessageIsFound(t *testing.T) {
	ways := map[string]func(tx *Tx, message, elm, oak int64) error{
		"the message is moved": func(tx *Tx, message, elm, oak int64) error { return tx.FileUnder(message, oak) },
		"another house's message asks for it": func(tx *Tx, message, elm, oak int64) error {
			return tx.KeepFollowUp(FollowUp{Site: elm, Action: assess.Recheck, Due: assess.Date{Year: 2026, Month: 7, Day: 1}, Owner: "ben", Source: message + 1})
		},
	}
	for name, away := range ways {
		t.Run(name, func(t *testing.T) {
			db := fresh(t)
			message, elm := report(t, db, "1", "ana", "1 Elm St", "92 rear tap")
			other, oak := report(t, db, "2", "ben", "1 Oak St", "66 laundry")
			write(t, db, func(tx *Tx) error { return away(tx, message, elm, oak) })
			_, sources, ids := openAt(t, db, elm)
			if len(ids) != 1 {
				t.Fatalf("open are %v", ids)
			}
			settled, dropped := at("2026-06-17 09:00"), at("2026-06-18 09:00")
			ended := func(state, from, to string) (found bool) {
				write(t, db, func(tx *Tx) error {
					list, err := tx.EndedFollowUps(state, at(from), at(to))
					found = slices.ContainsFunc(list, func(f FollowUp) bool { return f.ID == ids[0] })
					return err
				})
				return found
			}
			write(t, db, func(tx *Tx) error { return tx.EndFollowUp(ids[0], "done", settled, other) })
			if !ended("done", "2026-06-17 00:00", "2026-06-18 00:00") || ended("done", "2026-06-18 00:00", "2026-06-19 00:00") {
				t.Error("it is not told as done on its day")
			}
			// Who settled it takes that back; that message's own time is another.
			write(t, db, func(tx *Tx) error {
				_, err := tx.exec(`UPDATE follow_up SET ended = (SELECT at FROM message WHERE id = ?) WHERE id = ?`, other, ids[0])
				if err == nil {
					err = tx.TakeBackFollowUps(other, dropped)
				}
				return err
			})
			if name == "the message is moved" {
				if _, _, now := openAt(t, db, elm); !slices.Equal(now, ids) {
					t.Fatalf("open are %v, want %v again", now, ids)
				}
				write(t, db, func(tx *Tx) error { return tx.TakeBackFollowUps(sources[0], dropped) })
				if _, _, now := openAt(t, db, elm); len(now) > 0 || !ended("dropped", "2026-06-18 00:00", "2026-06-19 00:00") {
					t.Errorf("withdrawn with its message, and still open: %v", now)
				}
			}
			if faults, err := db.Integrity(t.Context()); err != nil || len(faults) > 0 {
				t.Errorf("%v %v", faults, err)
			}
		})
	}
}

// TestAFollowUpOfNoHouseIsAFault: only damage can make one.
func TestAFollowUpOfNoHouseIsAFault(t *testing.T) {
	for _, damage := range []string{
		`UPDATE follow_up SET site = 77`,
		`UPDATE follow_up SET source = 77`,
		`UPDATE follow_up SET id = 1`,
	} {
		db := fresh(t)
		report(t, db, "1", "ana", "1 Elm St", "92 rear tap")
		write(t, db, func(tx *Tx) error {
			_, err := tx.exec(damage)
			return err
		})
		if faults, err := db.Integrity(t.Context()); err != nil || len(faults) != 1 {
			t.Errorf("after %s are told %q %v", damage, faults, err)
		}
	}
}

// TestTheDiaryKnowsTheDay: what was reported on a day is found by it, whenever
// it was said, and a page of messages is written in once a day.
func TestTheDiaryKnowsTheDay(t *testing.T) {
	db := fresh(t)
	const reports = 100
	for i := range reports {
		report(t, db, fmt.Sprint(i), "ana", "1 Elm St", "92 rear tap")
	}
	late := say(t, db, "late", "62 laundry yesterday")
	day := assess.Date{Year: 2026, Month: 6, Day: 15}
	write(t, db, func(tx *Tx) error {
		if err := tx.FileUnder(late, 1); err != nil {
			return err
		}
		return tx.AddReport(Report{Message: late, Site: 1, Day: day.AddDays(-1), At: at("2026-06-15 10:00"), Author: "cara"}, Verdict{}, []assess.Reading{{PSI: 62}}, nil)
	})
	err := db.Read(t.Context(), func(tx *Tx) error {
		for from, want := range map[assess.Date]int{day.AddDays(-1): 1, day: reports, day.AddDays(1): 0} {
			list, err := tx.ReportsBetween(from, from.AddDays(1), 1000)
			if err != nil {
				return err
			}
			tally, err := tx.Tally(from, from.AddDays(1))
			if err != nil || len(list) != want || tally.Readings != want {
				t.Errorf("of %s are told %d reports and %+v (%v), want %d", from, len(list), tally, err, want)
			}
		}
		authors, err := tx.Authors(day.AddDays(-1), day)
		if err != nil || !slices.Equal(authors, []string{"cara"}) {
			t.Errorf("the day before reported %v (%v)", authors, err)
		}
		var pages int
		_, err = tx.one([]any{&pages}, `SELECT count(*) FROM diary`)
		if want := reports/64 + 1 + 1; err == nil && pages != want { // and one of the day before
			t.Errorf("%d reports fill %d pages, want %d", reports, pages, want)
		}
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
}

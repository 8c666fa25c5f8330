package desk_test

import (
	"context"
	"database/sql"
	"fmt"
	"strings"
	"testing"
	"time"

	"lazyhand/assess"
	"lazyhand/bot/desk"
	"lazyhand/store"
)

// stands tells how an alert stands, and checks that a rebuild leaves it so.
func (s *shop) stands(alert int64) store.Alert {
	s.t.Helper()
	var a store.Alert
	s.read(func(tx *store.Tx) (err error) {
		a, _, err = tx.Alert(alert)
		return err
	})
	s.sameRebuilt()
	return a
}

// sameRebuilt checks that the messages alone give all that is on record.
func (s *shop) sameRebuilt() {
	s.t.Helper()
	before := s.derived()
	if _, changes := s.rebuild(false); len(changes) > 0 {
		s.t.Fatalf("a rebuild makes different: %+v", changes)
	}
	if after := s.derived(); after != before {
		s.t.Fatalf("a rebuild changes\n%s\nto\n%s", before, after)
	}
}

func (s *shop) read(do func(tx *store.Tx) error) {
	s.t.Helper()
	if err := s.db.Read(context.Background(), do); err != nil {
		s.t.Fatal(err)
	}
}

// An alert says what the reports that are left call for, and ends with the last of
// them, in whatever order they are taken back.
func TestAnAlertFollowsTheReportsThatAreLeft(t *testing.T) {
	s := newShop(t, t.TempDir(), desk.Options{})
	defer s.db.Close()
	first := s.says("ana", "160 rear bibb, heater idle, 123 Elm St")
	second := s.says("ben", "165 laundry, heater idle, 123 Elm St")
	s.deletes(first)
	if a := s.stands(1); a.State != "raised" || a.Urgency != assess.Now {
		t.Errorf("with ben's report left the alert is %+v", a)
	}
	s.deletes(second)
	if a := s.stands(1); a.State != "closed" {
		t.Errorf("with no report left the alert is %+v", a)
	}

	s.says("ana", "92 rear bibb, heater idle, 9 Oak Ct")
	graver := s.says("ben", "160 laundry, heater idle, 9 Oak Ct")
	if a := s.stands(2); a.Codes != "over_relief" || a.Urgency != assess.Now {
		t.Errorf("by two reports the alert is %+v", a)
	}
	s.deletes(graver)
	if a := s.stands(2); a.State != "raised" || a.Codes != "high" || a.Urgency != assess.Soon {
		t.Errorf("by ana's report alone the alert is %+v", a)
	}
}

// A report that settled an alert by standing at the wrong house settles it no longer.
func TestAReportTakenToAnotherHouseSettlesNothing(t *testing.T) {
	s := newShop(t, t.TempDir(), desk.Options{})
	defer s.db.Close()
	s.says("ana", "160 rear bibb, heater idle, 123 Elm St")
	s.now = s.now.Add(25 * time.Hour)
	s.says("ben", "60 laundry, heater idle, 123 Elm St")
	if a := s.stands(1); a.State != "settled" {
		t.Fatalf("after a fair reading the alert is %+v", a)
	}
	s.says("ben", "wrong house")
	if a := s.stands(1); a.State != "raised" {
		t.Errorf("after that reading was of another house the alert is %+v", a)
	}
}

// What is left of an earlier day is judged anew when another report of that day goes.
func TestWhatIsLeftOfAnEarlierDayIsJudgedAnew(t *testing.T) {
	s := newShop(t, t.TempDir(), desk.Options{})
	defer s.db.Close()
	pressure := func() *float64 {
		var list []store.House
		s.read(func(tx *store.Tx) (err error) {
			list, _, err = tx.HousesAfter(0, 10)
			return err
		})
		return list[0].Series[0].PSI
	}
	s.says("ana", "yesterday 61 laundry, heater idle, 12 Alder St")
	other := s.says("ben", "yesterday 92 rear bibb, heater idle, 12 Alder St")
	if p := pressure(); p != nil && *p == 61 {
		t.Fatalf("two readings that contradict each other give %v psi", *p)
	}
	s.deletes(other)
	if p := pressure(); p == nil || *p != 61 {
		t.Errorf("the reading that is left gives %v", p)
	}
}

// followUps are the open follow-ups of all houses, a line each.
func (s *shop) followUps() string {
	s.t.Helper()
	var out []string
	s.read(func(tx *store.Tx) error {
		list, err := tx.DueFollowUps(assess.Date{Year: 2099, Month: 1, Day: 1}, 0)
		for _, f := range list {
			out = append(out, fmt.Sprintf("%s %s %s", f.Line, f.Action, f.Due))
		}
		return err
	})
	return strings.Join(out, "; ")
}

// A follow-up that two reports called for goes with them, whichever is taken back first.
func TestAFollowUpGoesWithTheReportsThatCalledForIt(t *testing.T) {
	for _, later := range []int{0, 1} {
		s := newShop(t, t.TempDir(), desk.Options{})
		said := []desk.Message{s.says("ana", "recheck 12 Alder St in 2 weeks"), s.says("ben", "recheck 12 Alder St in 3 weeks")}
		s.deletes(said[1-later])
		want := []string{"12 Alder St recheck 2026-06-29", "12 Alder St recheck 2026-07-06"}[later]
		if got := s.followUps(); got != want {
			t.Errorf("with one left is open %q, want %q", got, want)
		}
		s.deletes(said[later])
		if got := s.followUps(); got != "" {
			t.Errorf("with none left is open %q", got)
		}
		s.sameRebuilt()
		s.db.Close()
	}
}

// What was done is open again when the word that it is done was of another house, but
// not for a report that was taken back meanwhile.
func TestDoneIsTakenBackWithItsWords(t *testing.T) {
	s := newShop(t, t.TempDir(), desk.Options{})
	defer s.db.Close()
	asked := s.says("ana", "recheck 12 Alder St in 2 weeks")
	s.says("ana", "recheck 14 Alder St in 2 weeks")
	done := s.says("ben", "done 12 Alder St")
	s.edits(done, "done 14 Alder St")
	if got := s.followUps(); got != "12 Alder St recheck 2026-06-29" {
		t.Errorf("after the edit is open %q", got)
	}
	again := s.says("ben", "done 12 Alder St")
	s.deletes(asked)
	s.deletes(again)
	if got := s.followUps(); got != "" {
		t.Errorf("with nobody asking for it is open %q", got)
	}
	s.sameRebuilt()
}

// A report that is put right calls for nothing that was done since it was told, unless
// it calls for it sooner.
func TestWhatIsDoneStaysDoneWhenItsReportIsPutRight(t *testing.T) {
	s := newShop(t, t.TempDir(), desk.Options{})
	defer s.db.Close()
	asked := s.says("ana", "62 rear bibb, heater idle, 12 Alder St, recheck in 2 weeks")
	s.says("ben", "done 12 Alder St")
	s.edits(asked, "63 rear bibb, heater idle, 12 Alder St, recheck in 2 weeks")
	if got := s.followUps(); got != "" {
		t.Errorf("after an edit is open %q", got)
	}
	s.says("ana", "make it 64")
	if got := s.followUps(); got != "" {
		t.Errorf("after it was put right is open %q", got)
	}
	s.edits(asked, "63 rear bibb, heater idle, 12 Alder St, recheck in 1 week")
	if got := s.followUps(); got != "12 Alder St recheck 2026-06-22" {
		t.Errorf("called for sooner is open %q", got)
	}
	s.sameRebuilt()
}

// A wording that made the bot fail leaves the one before it in force, and the next
// edit or the deletion takes that one's place.
func TestNoEarlierWordingOutlivesADeletion(t *testing.T) {
	for _, then := range []string{"62 rear bibb, heater idle, 12 Alder St", ""} {
		s := newShop(t, t.TempDir(), desk.Options{})
		said := s.says("ana", "82 rear bibb, heater idle, 12 Alder St")
		raw, err := sql.Open("sqlite3", s.db.Path())
		if err != nil {
			t.Fatal(err)
		}
		if _, err := raw.Exec(`INSERT INTO question (message, channel, thread, author, at, kind, body) VALUES (1, 'field', ?, 'ana', ?, 'unclear', 'no JSON')`,
			said.Thread, s.now.UnixMilli()); err != nil {
			t.Fatal(err)
		}
		s.edits(said, "72 rear bibb, heater idle, 12 Alder St")
		waits := s.says("ana", "92 rear bibb, heater idle, 9 Oak Ct")
		s.deletes(waits)
		if _, err := raw.Exec(`DELETE FROM question`); err != nil {
			t.Fatal(err)
		}
		raw.Close()
		if then == "" {
			s.deletes(said)
		} else {
			s.edits(said, then)
		}
		if err := s.desk.Tick(context.Background(), s.now.Add(time.Minute)); err != nil { // what waits is tried again
			t.Fatal(err)
		}
		on := s.derived()
		if reports := strings.Count(on, "  report of "); then == "" && reports != 0 || then != "" && reports != 1 || strings.Contains(on, "  report of 1 ") {
			t.Errorf("after %q on record are\n%s", then, on)
		}
		s.db.Close()
	}
}

// Of the follow-ups of two records that are made one house the one due first stays open.
func TestOfTwoFollowUpsOfOneHouseTheSoonerStays(t *testing.T) {
	s := newShop(t, t.TempDir(), desk.Options{})
	defer s.db.Close()
	s.says("ana", "160 rear bibb, heater idle, 123 Elm St")
	s.says("ben", "62 laundry, heater idle, 123 Elm Ave")
	if got, want := s.followUps(), "123 Elm St recheck 2026-06-16; 123 Elm Ave recheck 2027-06-15"; got != want {
		t.Fatalf("of two houses are open %q, want %q", got, want)
	}
	s.says("ben", "yes")
	if got, want := s.followUps(), "123 Elm St recheck 2026-06-16"; got != want {
		t.Errorf("of one house is open %q, want %q", got, want)
	}
	s.sameRebuilt()
}

// What a house's own report called for while it was told under another is its own when
// the two part again.
func TestWhatAReportCalledForGoesWithItsHouse(t *testing.T) {
	s := newShop(t, t.TempDir(), desk.Options{})
	defer s.db.Close()
	s.says("ana", "62 rear bibb, heater idle, 123 Elm St")
	s.says("ben", "61 laundry, heater idle, 123 Elm Ave")
	s.says("ben", "yes")
	s.now = s.now.Add(25 * time.Hour)
	s.says("ben", "160 laundry, heater idle, 123 Elm Ave")
	if a := s.stands(1); a.Site != 1 || a.State != "raised" {
		t.Fatalf("of one house the alert is %+v", a)
	}
	s.says("ben", "not the same house")
	if a := s.stands(1); a.State != "closed" {
		t.Errorf("the house with no such reading has the alert %+v", a)
	}
	if a := s.stands(2); a.Site != 2 || a.State != "raised" || a.Urgency != assess.Now {
		t.Errorf("the house of the reading has the alert %+v", a)
	}
	if got, want := s.followUps(), "123 Elm Ave recheck 2026-06-17"; got != want {
		t.Errorf("open is %q, want %q", got, want)
	}
}

// A reading put right upwards does not end the alert that it raised, though another
// reading of the day disagrees with it; nor does the loss of one of three that disagree.
func TestReadingsThatDisagreeEndNoAlert(t *testing.T) {
	s := newShop(t, t.TempDir(), desk.Options{})
	defer s.db.Close()
	first := s.says("ana", "101 rear bibb, heater idle, 123 Elm St")
	s.says("ben", "61 laundry, heater idle, 123 Elm St")
	s.answers("ana", first, "make it 110")
	if a := s.stands(1); a.State != "raised" {
		t.Errorf("with 110 and 61 psi the alert is %+v", a)
	}
	s.answers("ana", first, "make it 60")
	if a := s.stands(1); a.Open() {
		t.Errorf("with 60 and 61 psi the alert is %+v", a)
	}

	gone := s.says("ana", "160 rear bibb, heater idle, 9 Oak Ct")
	s.says("ben", "120 laundry, heater idle, 9 Oak Ct")
	s.says("ben", "61 rear bibb, heater idle, 9 Oak Ct")
	s.deletes(gone)
	if a := s.stands(2); a.State != "raised" {
		t.Errorf("with 120 and 61 psi left the alert is %+v", a)
	}
}

// What is to be done is no right wording of what was found; where it is given as that,
// the alert goes with what was found, and a rebuild has it so.
func TestAPlanIsNoRightWordingOfAFinding(t *testing.T) {
	s := newShop(t, t.TempDir(), desk.Options{})
	defer s.db.Close()
	s.says("ana", "PRV 2006, dark water, 123 Elm St")
	s.says("ben", "61 laundry, heater idle, 123 Elm St")
	s.presses("ana", "correct", "1")
	s.says("ana", "recheck 123 Elm St in 2 weeks")
	if a := s.stands(1); a.State != "raised" || !strings.Contains(s.derived(), "dark_water") {
		t.Errorf("after a plan the alert is %+v", a)
	}
	m := desk.Message{Key: "form/1", Kind: store.Pressed, Channel: "field", TS: "1", Author: "ana", Name: "ana", At: s.now, Button: "correct", Value: "1", Text: "recheck in 3 weeks"}
	s.take(m)
	if a := s.stands(1); a.Open() {
		t.Errorf("with no finding left the alert is %+v", a)
	}
}

// After "wrong house" no house is known in the thread: what follows is asked about, and
// the answer is that of both.
func TestAfterTheWrongHouseTheThreadHasNone(t *testing.T) {
	s := newShop(t, t.TempDir(), desk.Options{})
	defer s.db.Close()
	first := s.says("ana", "62 rear bibb, heater idle, 123 Elm St")
	s.answers("ana", first, "wrong house")
	s.answers("ana", first, "64 laundry, heater idle")
	if got := s.readings(); got != "" {
		t.Errorf("before the house is named are on record %q", got)
	}
	s.answers("ana", first, "14 Alder St")
	if got, want := s.readings(), "14 Alder St 62 rear_bibb; 14 Alder St 64 laundry"; got != want {
		t.Errorf("on record are %q, want %q", got, want)
	}
	s.sameRebuilt()
}

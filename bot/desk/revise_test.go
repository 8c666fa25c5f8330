package desk_test

import (
	"context"
	"testing"
	"time"

	"lazyhand/assess"
	"lazyhand/bot/desk"
	"lazyhand/store"
)

// stands tells how an alert stands, and checks that the messages alone give all
// that is on record.
func (s *shop) stands(alert int64) store.Alert {
	s.t.Helper()
	var a store.Alert
	s.read(func(tx *store.Tx) (err error) {
		a, _, err = tx.Alert(alert)
		return err
	})
	before := s.derived()
	if _, changes := s.rebuild(false); len(changes) > 0 {
		s.t.Fatalf("a rebuild makes different: %+v", changes)
	}
	if after := s.derived(); after != before {
		s.t.Fatalf("a rebuild changes\n%s\nto\n%s", before, after)
	}
	return a
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

package store

import (
	"testing"
)

// TestAReportGoesWithItsMessage: it stands with the house that its message is
// filed under, wherever that is put, and goes when it is dropped.
func TestAReportGoesWithItsMessage(t *testing.T) {
	db := fresh(t)
	message, first := report(t, db, "1", "ana", "1 Elm St", "92 rear tap")
	_, second := report(t, db, "2", "ben", "2 Elm St", "66 laundry")
	stands := func(site int64, want ...int64) {
		t.Helper()
		write(t, db, func(tx *Tx) error {
			list, err := tx.Reports(site)
			if err != nil || len(list) != len(want) {
				t.Errorf("house %d has %+v (%v), want those of %v", site, list, err, want)
				return err
			}
			for i, r := range list {
				if r.Message != want[i] || r.Site != site {
					t.Errorf("house %d has the report of %d under %d, want %d", site, r.Message, r.Site, want[i])
				}
			}
			return nil
		})
	}
	stands(first, message)
	write(t, db, func(tx *Tx) error { return tx.FileUnder(message, second) })
	stands(first)
	stands(second, message, message+1)
	write(t, db, func(tx *Tx) error {
		r, found, err := tx.ReportOf(message)
		if err != nil || !found || r.Site != second {
			t.Errorf("the report of the message is %+v (%v)", r, err)
		}
		readings, err := tx.ReadingsOf(second)
		if err != nil || len(readings) != 2 {
			t.Errorf("its house has the readings %+v (%v)", readings, err)
		}
		return tx.FileUnder(message, first)
	})
	stands(first, message)
	stands(second, message+1)
	write(t, db, func(tx *Tx) error {
		if gone, err := tx.DropReport(message); err != nil || !gone {
			t.Errorf("dropped: %v %v", gone, err)
		}
		if gone, err := tx.DropReport(message); err != nil || gone {
			t.Errorf("dropped once more: %v %v", gone, err)
		}
		return nil
	})
	stands(first)
	if faults, err := db.Integrity(t.Context()); err != nil || len(faults) > 0 {
		t.Errorf("%v %v", faults, err)
	}
}

// TestAReportAwayFromItsMessageIsAFault: only damage can part them.
func TestAReportAwayFromItsMessageIsAFault(t *testing.T) {
	db := fresh(t)
	message, _ := report(t, db, "1", "ana", "1 Elm St", "92 rear tap")
	_, second := report(t, db, "2", "ben", "2 Elm St", "66 laundry")
	write(t, db, func(tx *Tx) error {
		_, err := tx.exec(`UPDATE report SET site = ? WHERE message = ?`, second, message)
		return err
	})
	if faults, err := db.Integrity(t.Context()); err != nil || len(faults) != 1 {
		t.Errorf("told are %q %v", faults, err)
	}
}

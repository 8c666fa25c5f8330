package store

import (
	"fmt"
	"os"
	"strings"
	"testing"
)

func logBytes(t *testing.T, db *DB) int64 {
	t.Helper()
	info, err := os.Stat(db.path + "-wal")
	if err != nil {
		t.Fatal(err)
	}
	return info.Size()
}

// TestTheLogBeginsAnewWhileMessagesCome: messages without a pause must not make
// the log grow for ever, and what was folded in must be whole.
func TestTheLogBeginsAnewWhileMessagesCome(t *testing.T) {
	db := fresh(t)
	if taken, err := fill(db, foldAfter+1); err != nil || taken != foldAfter+1 {
		t.Fatal(taken, err)
	}
	db.folding.done.Wait()
	once := logBytes(t, db)
	more := 5 * foldAfter
	if testing.Short() {
		more = 2 * foldAfter
	}
	for i := range more {
		say(t, db, fmt.Sprint("field/more.", i), "92 rear tap, heater idle")
	}
	db.folding.done.Wait()
	if now := logBytes(t, db); now > 3*once {
		t.Errorf("the log has grown from %d bytes to %d", once, now)
	}
	if n := count(t, db); n != foldAfter+1+more {
		t.Errorf("%d messages are on record", n)
	}
	sound(t, db)
}

// TestSomebodyReadsForLong: what a reader sees stays, the log waits for it, and
// begins anew when it is done.
func TestSomebodyReadsForLong(t *testing.T) {
	db := fresh(t)
	say(t, db, "field/first", "92 rear tap")
	err := db.Read(t.Context(), func(tx *Tx) error {
		var before, after int
		if _, err := tx.one([]any{&before}, `SELECT count(*) FROM message`); err != nil {
			return err
		}
		if _, err := fill(db, 2*foldAfter); err != nil {
			return err
		}
		db.folding.done.Wait()
		_, err := tx.one([]any{&after}, `SELECT count(*) FROM message`)
		if before != 1 || after != 1 {
			t.Errorf("it saw %d messages and sees %d", before, after)
		}
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	long := logBytes(t, db)
	for i := range 2 * foldAfter {
		say(t, db, fmt.Sprint("field/more.", i), strings.Repeat("pressure ", 100))
	}
	db.folding.done.Wait()
	if now := logBytes(t, db); now > long+3*long/4 { // it began anew at half of them
		t.Errorf("the log has grown on from %d bytes to %d", long, now)
	}
	sound(t, db)
}

// TestClosingWaitsForTheFolding closes a record in the middle of one.
func TestClosingWaitsForTheFolding(t *testing.T) {
	db := fresh(t)
	if _, err := fill(db, foldAfter); err != nil {
		t.Fatal(err)
	}
	if err := db.Close(); err != nil {
		t.Fatal(err)
	}
	again, err := Open(t.Context(), db.path)
	if err != nil {
		t.Fatal(err)
	}
	defer again.Close()
	if n := count(t, again); n != foldAfter {
		t.Errorf("%d messages are on record", n)
	}
	sound(t, again)
}

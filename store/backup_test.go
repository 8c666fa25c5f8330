package store

import (
	"bytes"
	"context"
	"encoding/json"
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"lazyhand/assess"
)

// report files a report of a house with one reading.
func report(t testing.TB, db *DB, key, author, line, text string) (message, site int64) {
	t.Helper()
	write(t, db, func(tx *Tx) error {
		id, _, err := tx.AddMessage(Message{Key: key, Kind: Said, Channel: "field", TS: key, Thread: key, Author: author, At: at("2026-06-15 10:00"), Text: text})
		if err != nil {
			return err
		}
		s := assess.Site{Line: line}
		like, err := tx.SitesLike(s)
		if err != nil {
			return err
		}
		if len(like) == 0 {
			r, err := tx.AddSite(s, id)
			if err != nil {
				return err
			}
			like = append(like, r)
		}
		message, site = id, like[0].ID
		if err := tx.Understood(id, json.RawMessage(fmt.Sprintf(`{"site":%q,"statements":[{"kind":"reading","psi":92}]}`, line))); err != nil {
			return err
		}
		if err := tx.FileUnder(id, site); err != nil {
			return err
		}
		if err := tx.KeepPerson(Person{ID: author, Name: author + " the tech", Site: site}); err != nil {
			return err
		}
		day := assess.Date{Year: 2026, Month: 6, Day: 15}
		r := Report{Message: id, Site: site, Day: day, At: at("2026-06-15 10:00"), Author: author}
		if err := tx.AddReport(r, Verdict{}, []assess.Reading{{PSI: 92}}, nil); err != nil {
			return err
		}
		if err := tx.KeepFollowUp(FollowUp{Site: site, Action: assess.Recheck, Due: day, Why: "“" + text + "”", Owner: author, Source: id}); err != nil {
			return err
		}
		if _, found, err := tx.OpenAlert(site); err != nil || found {
			return err
		}
		if _, err := tx.RaiseAlert(Alert{Site: site, Codes: "high", Urgency: assess.Soon, Source: id, RaisedAt: at("2026-06-15 10:00")}, author); err != nil {
			return err
		}
		return tx.Queue(Post{Key: fmt.Sprintf("reply:%d", id), Channel: "field", Body: []byte(`{"kind":"say","body":{"lead":"` + line + `: high"}}`), Since: at("2026-06-15 10:00")})
	})
	return message, site
}

func TestABackupIsTakenWhileTheBotWrites(t *testing.T) {
	db := fresh(t)
	if _, err := fill(db, 100); err != nil {
		t.Fatal(err)
	}
	done := make(chan struct{})
	stop := make(chan struct{})
	go func() {
		defer close(done)
		for i := 0; ; i++ {
			select {
			case <-stop:
				return
			default:
			}
			db.Write(context.Background(), func(tx *Tx) error {
				_, _, err := tx.AddMessage(Message{Key: fmt.Sprint("field/w", i), Kind: Said, Channel: "field", TS: "1", Thread: "1", Author: "ana"})
				return err
			})
		}
	}()
	reader, err := OpenReader(t.Context(), db.Path()) // as the command does it, in a process of its own
	if err != nil {
		t.Fatal(err)
	}
	defer reader.Close()
	file := filepath.Join(t.TempDir(), "backup.db")
	calls := 0
	for range 3 { // over an earlier one too
		if err := reader.Backup(t.Context(), file, func(done, total int) { calls++ }); err != nil {
			t.Fatal(err)
		}
	}
	close(stop)
	<-done
	info, err := os.Stat(file)
	if err != nil {
		t.Fatal(err)
	}
	if info.Mode().Perm() != 0o600 {
		t.Errorf("the backup has mode %o", info.Mode().Perm())
	}
	if calls == 0 {
		t.Error("no progress was told")
	}
	b, err := Open(t.Context(), file)
	if err != nil {
		t.Fatal(err)
	}
	defer b.Close()
	if n := count(t, b); n < 100 {
		t.Errorf("the backup holds %d messages", n)
	}
	left, _ := filepath.Glob(filepath.Join(filepath.Dir(file), ".lazyhand-backup-*"))
	if len(left) > 0 {
		t.Errorf("left behind: %v", left)
	}
}

func TestABackupOverwritesNothingOfValue(t *testing.T) {
	db := fresh(t)
	dir := t.TempDir()
	notes := filepath.Join(dir, "notes.txt")
	if err := os.WriteFile(notes, []byte("do not lose me"), 0o600); err != nil {
		t.Fatal(err)
	}
	link := filepath.Join(dir, "link.db")
	if err := os.Symlink(db.Path(), link); err != nil {
		t.Fatal(err)
	}
	sub := filepath.Join(dir, "sub")
	if err := os.Mkdir(sub, 0o700); err != nil {
		t.Fatal(err)
	}
	for _, file := range []string{db.Path(), db.Path() + "-wal", db.Path() + "-shm", db.Path() + ".lock", notes, link, dir, "", "a\x00b",
		sub + "/../../x.db", "../x.db", filepath.Join(dir, "none", "x.db")} {
		if err := db.Backup(t.Context(), file, nil); err == nil {
			t.Errorf("a backup was written to %q", file)
		}
	}
	if b, _ := os.ReadFile(notes); string(b) != "do not lose me" {
		t.Error("a file that is no backup was overwritten")
	}
	sound(t, db)
}

func TestABackupToAFullDiskLeavesTheOldOne(t *testing.T) {
	dir := mount(t, "size=400k")
	db := fresh(t)
	file := filepath.Join(dir, "backup.db")
	if err := db.Backup(t.Context(), file, nil); err != nil {
		t.Fatal(err)
	}
	if _, err := fill(db, 500); err != nil {
		t.Fatal(err)
	}
	if err := db.Backup(t.Context(), file, nil); err == nil {
		t.Fatal("a backup fitted into a disk that is too small")
	}
	if err := Verify(t.Context(), file); err != nil {
		t.Errorf("the old backup is spoilt: %v", err)
	}
	if left, _ := filepath.Glob(filepath.Join(dir, ".lazyhand-backup-*")); len(left) > 0 {
		t.Errorf("left behind: %v", left)
	}
}

// onDisk tells whether a text stands anywhere in the record's files.
func onDisk(t *testing.T, db *DB, text string) bool {
	t.Helper()
	for _, tail := range []string{"", "-wal"} {
		b, err := os.ReadFile(db.Path() + tail)
		if err != nil && !errors.Is(err, os.ErrNotExist) {
			t.Fatal(err)
		}
		if bytes.Contains(bytes.ToLower(b), []byte(strings.ToLower(text))) {
			return true
		}
	}
	return false
}

func TestAForgottenHouseLeavesNoTrace(t *testing.T) {
	db := fresh(t)
	report(t, db, "field/1", "ana", "123 Quenchwater St", "92 rear tap at 123 quenchwater")
	report(t, db, "field/2", "ben", "12 Alder St", "61 laundry at 12 alder")
	say(t, db, "field/3", "running late to 123 Quenchwater, traffic")
	say(t, db, "field/4", "then one twenty three quenchwater after lunch")
	report(t, db, "field/5", "ben", "9 Oak Ct", "66 laundry at 9 oak, next stop one twenty three quenchwater")
	spelled := func(text string) []assess.Site {
		if strings.Contains(text, "one twenty three quenchwater") {
			return []assess.Site{{Line: "9 Oak"}, {Line: "123 Quenchwater"}}
		}
		return nil
	}
	write(t, db, func(tx *Tx) error {
		return tx.Queue(Post{Key: "remind:1", Channel: "team", Body: []byte(`{"kind":"say","body":{"lead":"Due: 123 Quenchwater St"}}`)})
	})
	if _, err := db.ForgetHouse(t.Context(), assess.Site{Line: "1 Nowhere St"}, at("2026-06-16 10:00"), nil); !errors.Is(err, ErrUnknown) {
		t.Errorf("a house not on record: %v", err)
	}
	gone, err := db.ForgetHouse(t.Context(), assess.Site{Line: "123 Quenchwater St"}, at("2026-06-16 10:00"), spelled)
	if err != nil {
		t.Fatal(err)
	}
	if gone.Houses != 1 || gone.Messages != 4 || gone.Posts != 2 {
		t.Errorf("%+v", gone)
	}
	if onDisk(t, db, "quenchwater") {
		t.Error("the house's name still stands in the file")
	}
	err = db.Read(t.Context(), func(tx *Tx) error {
		if found, err := tx.Search("quenchwater", 5); err != nil || len(found) > 0 {
			t.Errorf("the search still finds %v %v", found, err)
		}
		if found, err := tx.Search("alder", 5); err != nil || len(found) != 1 {
			t.Errorf("the search no longer finds the other house: %v", err)
		}
		like, err := tx.SitesLike(assess.Site{Line: "9 Oak Ct"})
		if err != nil {
			return err
		}
		for _, oak := range like {
			if reports, err := tx.Reports(oak.ID); err != nil || len(reports) != 1 || reports[0].Frame == nil {
				t.Errorf("what was reported of the other house is gone: %+v %v", reports, err)
			}
		}
		list, err := tx.Removals()
		if len(list) != 1 || list[0].Kind != "house" || list[0].Messages != 4 {
			t.Errorf("noted: %+v", list)
		}
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	sound(t, db)
}

func TestAForgottenPersonLeavesTheReadings(t *testing.T) {
	db := fresh(t)
	_, site := report(t, db, "field/1", "zebulon", "123 Elm St", "92 rear tap says zebulon the tech")
	report(t, db, "field/2", "ben", "12 Alder St", "61 laundry")
	if _, err := db.ForgetPerson(t.Context(), "zebulon", at("2026-06-16 10:00")); err != nil {
		t.Fatal(err)
	}
	if onDisk(t, db, "zebulon") {
		t.Error("the person's name still stands in the file")
	}
	err := db.Read(t.Context(), func(tx *Tx) error {
		reports, err := tx.Reports(site)
		if len(reports) != 1 || !strings.Contains(string(reports[0].Frame), `"psi":92`) {
			t.Errorf("what was measured is gone: %+v", reports)
		}
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	sound(t, db)
}

func TestWordsAreKeptAsLongAsTheShopSays(t *testing.T) {
	db := fresh(t)
	message, site := report(t, db, "field/1", "ana", "123 Elm St", "92 rear tap by the vermilion gate")
	now := at("2026-06-30 10:00")
	if out, err := db.Retain(t.Context(), at("2026-06-01 10:00"), at("2020-01-01 00:00"), now); err != nil || out.Messages != 0 {
		t.Errorf("%+v %v: nothing is that old", out, err)
	}
	if _, err := db.Retain(t.Context(), at("2026-06-20 10:00"), at("2020-01-01 00:00"), now); err != nil {
		t.Fatal(err)
	}
	err := db.Read(t.Context(), func(tx *Tx) error {
		m, _, err := tx.Message(message)
		if m.Text != "" || !m.Blank || m.Frame == nil {
			t.Errorf("%+v", m)
		}
		if found, err := tx.Search("vermilion", 5); err != nil || len(found) > 0 {
			t.Errorf("the search still finds the words: %v", err)
		}
		if reports, err := tx.Reports(site); err != nil || len(reports) != 1 {
			t.Errorf("the report is gone: %v", err)
		}
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	if _, err := db.Retain(t.Context(), now, at("2026-06-20 10:00"), now); err != nil {
		t.Fatal(err)
	}
	err = db.Read(t.Context(), func(tx *Tx) error {
		reports, err := tx.Reports(site)
		if len(reports) != 0 {
			t.Errorf("the visit is still there: %+v", reports)
		}
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	sound(t, db)
}

package store

import (
	"context"
	"errors"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"runtime"
	"strings"
	"testing"
	"time"
)

// count tells how many messages are on record.
func count(t *testing.T, db *DB) (n int) {
	t.Helper()
	err := db.Read(t.Context(), func(tx *Tx) error {
		_, err := tx.one([]any{&n}, `SELECT count(*) FROM message`)
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	return n
}

// fill writes messages until one is refused, and returns how many were taken.
func fill(db *DB, most int) (taken int, err error) {
	for i := range most {
		err := db.Write(context.Background(), func(tx *Tx) error {
			_, _, err := tx.AddMessage(Message{Key: fmt.Sprintf("field/fill.%d", i), Kind: Said, Channel: "field", TS: fmt.Sprint(i), Thread: fmt.Sprint(i),
				Author: "ana", At: at("2026-06-15 10:00"), Text: strings.Repeat("pressure ", 100)})
			return err
		})
		if err != nil {
			return taken, err
		}
		taken++
	}
	return taken, nil
}

// sound fails the test unless the record holds together.
func sound(t *testing.T, db *DB) {
	t.Helper()
	faults, err := db.Integrity(t.Context())
	if err != nil || len(faults) > 0 {
		t.Errorf("the record does not hold together: %v %v", faults, err)
	}
}

func TestAFullDiskIsSaidAndNothingIsHalfWritten(t *testing.T) {
	db := fresh(t)
	say(t, db, "field/1", "92 rear tap")
	var pages int
	if err := db.write.QueryRow("PRAGMA page_count").Scan(&pages); err != nil {
		t.Fatal(err)
	}
	if _, err := db.write.Exec(fmt.Sprintf("PRAGMA max_page_count = %d", pages+40)); err != nil {
		t.Fatal(err)
	}
	taken, err := fill(db, 10_000)
	if err == nil || !IsFault(err) || !strings.Contains(err.Error(), "disk is full") {
		t.Fatalf("after %d messages: %v, want that the disk is full", taken, err)
	}
	if n := count(t, db); n != taken+1 {
		t.Errorf("%d messages on record, %d were acknowledged", n, taken+1)
	}
	sound(t, db)
	if _, err := db.write.Exec("PRAGMA max_page_count = 1000000"); err != nil {
		t.Fatal(err)
	}
	say(t, db, "field/after", "there is room again")
	sound(t, db)
}

// TestAFullDiskForReal fills a small file system of its own. It needs the right
// to mount one.
func TestAFullDiskForReal(t *testing.T) {
	dir := mount(t, "size=1m")
	db, err := Open(t.Context(), filepath.Join(dir, "record.db"))
	if err != nil {
		t.Fatal(err)
	}
	defer db.Close()
	ballast := filepath.Join(dir, "ballast")
	if err := os.WriteFile(ballast, make([]byte, 128<<10), 0o600); err != nil {
		t.Fatal(err)
	}
	taken, err := fill(db, 10_000)
	if err == nil || !IsFault(err) {
		t.Fatalf("after %d messages: %v, want a fault of the disk", taken, err)
	}
	if n := count(t, db); n != taken {
		t.Errorf("%d messages on record, %d were acknowledged", n, taken)
	}
	if err := os.Remove(ballast); err != nil {
		t.Fatal(err)
	}
	say(t, db, "field/after", "there is room again")
	if n := count(t, db); n != taken+1 {
		t.Errorf("%d messages on record, want %d", n, taken+1)
	}
	sound(t, db)
}

func mount(t *testing.T, options string) string {
	t.Helper()
	if runtime.GOOS != "linux" || os.Geteuid() != 0 {
		t.Skip("needs Linux and the right to mount a file system")
	}
	dir := t.TempDir()
	if out, err := exec.Command("mount", "-t", "tmpfs", "-o", options, "tmpfs", dir).CombinedOutput(); err != nil {
		t.Skipf("a file system cannot be mounted here: %s", out)
	}
	t.Cleanup(func() { exec.Command("umount", "-l", dir).Run() })
	return dir
}

func TestAReadOnlyMountIsRefusedAndPasses(t *testing.T) {
	dir := mount(t, "size=8m")
	path := filepath.Join(dir, "record.db")
	db, err := Open(t.Context(), path)
	if err != nil {
		t.Fatal(err)
	}
	say(t, db, "field/1", "92 rear tap")
	db.Close()
	remount := func(how string) {
		if out, err := exec.Command("mount", "-o", "remount,"+how, dir).CombinedOutput(); err != nil {
			t.Skipf("cannot remount: %s", out)
		}
	}
	remount("ro")
	if _, err := Open(t.Context(), path); err == nil {
		t.Error("a record on a read-only mount was opened for writing")
	} else if !strings.Contains(err.Error(), "read-only") {
		t.Errorf("%v: want that the file system is read-only", err)
	}
	remount("rw")
	db, err = Open(t.Context(), path)
	if err != nil {
		t.Fatal(err)
	}
	defer db.Close()
	say(t, db, "field/2", "and again")
	sound(t, db)
}

func TestAFileThatMayNotBeWrittenIsRefused(t *testing.T) {
	if os.Geteuid() == 0 {
		t.Skip("who may write everything cannot test this; the read-only mount does")
	}
	path := filepath.Join(t.TempDir(), "record.db")
	db, err := Open(t.Context(), path)
	if err != nil {
		t.Fatal(err)
	}
	db.Close()
	if err := os.Chmod(path, 0o400); err != nil {
		t.Fatal(err)
	}
	if _, err := Open(t.Context(), path); err == nil || !strings.Contains(err.Error(), "permission denied") {
		t.Errorf("%v, want permission denied", err)
	}
}

func TestALockedFileIsRefusedAndPasses(t *testing.T) {
	db := fresh(t)
	say(t, db, "field/1", "92 rear tap")
	if _, err := db.write.Exec("PRAGMA busy_timeout = 50"); err != nil {
		t.Fatal(err)
	}
	other, err := db.read.Conn(t.Context())
	if err != nil {
		t.Fatal(err)
	}
	for _, s := range []string{"PRAGMA query_only = off", "BEGIN IMMEDIATE"} {
		if _, err := other.ExecContext(t.Context(), s); err != nil {
			t.Fatal(err)
		}
	}
	taken, err := fill(db, 1)
	if taken != 0 || err == nil || !strings.Contains(err.Error(), "another program holds the file") {
		t.Errorf("%d taken, %v: want that another program holds the file", taken, err)
	}
	if _, err := other.ExecContext(t.Context(), "ROLLBACK"); err != nil {
		t.Fatal(err)
	}
	other.Close()
	if taken, err := fill(db, 1); taken != 1 || err != nil {
		t.Errorf("when the file is free again: %v", err)
	}
	sound(t, db)
}

func TestAFaultFailsAllThatShareTheCommit(t *testing.T) {
	db := fresh(t)
	var pages int
	if err := db.write.QueryRow("PRAGMA page_count").Scan(&pages); err != nil {
		t.Fatal(err)
	}
	if _, err := db.write.Exec(fmt.Sprintf("PRAGMA max_page_count = %d", pages+8)); err != nil {
		t.Fatal(err)
	}
	jobs := make([]*job, 30)
	for i := range jobs {
		jobs[i] = &job{ctx: context.Background(), do: func(tx *Tx) error {
			_, _, err := tx.AddMessage(Message{Key: fmt.Sprint("field/", i), Kind: Said, Channel: "field", TS: fmt.Sprint(i), Thread: "1", Author: "ana", Text: strings.Repeat("x ", 2000)})
			return err
		}, done: make(chan error, 1)}
	}
	done := make(chan struct{})
	go func() { defer close(done); db.commit(jobs) }()
	<-done
	for i, j := range jobs {
		if err := <-j.done; !IsFault(err) {
			t.Errorf("job %d: %v, want the fault", i, err)
		}
	}
	if n := count(t, db); n != 0 {
		t.Errorf("%d messages of a commit that failed are on record", n)
	}
}

func TestOneBadWriteLeavesTheOthersOfItsCommit(t *testing.T) {
	db := fresh(t)
	jobs := make([]*job, 3)
	for i := range jobs {
		jobs[i] = &job{ctx: context.Background(), do: func(tx *Tx) error {
			if _, _, err := tx.AddMessage(Message{Key: fmt.Sprint("field/", i), Kind: Said, Channel: "field", TS: fmt.Sprint(i), Thread: "1", Author: "ana"}); err != nil {
				return err
			}
			if i == 1 {
				panic("a fault in the code")
			}
			return nil
		}, done: make(chan error, 1)}
	}
	db.commit(jobs)
	for i, j := range jobs {
		if err := <-j.done; (err != nil) != (i == 1) {
			t.Errorf("job %d: %v", i, err)
		}
	}
	if n := count(t, db); n != 2 {
		t.Errorf("%d messages on record, want 2", n)
	}
}

// spoil changes a copy of a record and opens it.
func spoil(t *testing.T, from string, change func([]byte) []byte) (string, error) {
	t.Helper()
	body, err := os.ReadFile(from)
	if err != nil {
		t.Fatal(err)
	}
	path := filepath.Join(t.TempDir(), "spoilt.db")
	if err := os.WriteFile(path, change(body), 0o600); err != nil {
		t.Fatal(err)
	}
	db, err := Open(t.Context(), path)
	if err == nil {
		faults, err2 := db.Integrity(t.Context())
		db.Close()
		if len(faults) > 0 || err2 != nil {
			return path, fmt.Errorf("found by the check: %v %v", faults, err2)
		}
	}
	return path, err
}

func TestADamagedFileIsDetectedAndABackupRestores(t *testing.T) {
	db := fresh(t)
	if _, err := fill(db, 400); err != nil {
		t.Fatal(err)
	}
	backup := filepath.Join(t.TempDir(), "backup.db")
	if err := db.Backup(t.Context(), backup, nil); err != nil {
		t.Fatal(err)
	}
	path := db.Path()
	db.Close()
	whole, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	pages := len(whole) / pageSize
	for _, tt := range []struct {
		name   string
		change func([]byte) []byte
	}{
		{"cut by one page", func(b []byte) []byte { return b[:len(b)-pageSize] }},
		{"cut in half", func(b []byte) []byte { return b[:len(b)/2] }},
		{"cut within a page", func(b []byte) []byte { return b[:len(b)-1000] }},
		{"a byte too many", func(b []byte) []byte { return append(b, make([]byte, pageSize)...) }},
		{"header overwritten", func(b []byte) []byte { copy(b, "nothing"); return b }},
		{"a page of zeros", func(b []byte) []byte { clear(b[5*pageSize : 6*pageSize]); return b }},
		{"a page header flipped", func(b []byte) []byte { b[(pages/2)*pageSize] ^= 0x0f; return b }},
	} {
		t.Run(tt.name, func(t *testing.T) {
			_, err := spoil(t, path, tt.change)
			if !errors.Is(err, ErrDamaged) {
				t.Errorf("opening: %v, want ErrDamaged", err)
			}
			if err != nil && !strings.Contains(err.Error(), "restore the last backup") {
				t.Errorf("%v does not say what to do", err)
			}
		})
	}
	if err := Verify(t.Context(), backup); err != nil {
		t.Fatal(err)
	}
	if err := os.Rename(backup, path); err != nil {
		t.Fatal(err)
	}
	db, err = Open(t.Context(), path)
	if err != nil {
		t.Fatal(err)
	}
	defer db.Close()
	if n := count(t, db); n != 400 {
		t.Errorf("the restored backup holds %d messages, want 400", n)
	}
	say(t, db, "field/after", "and goes on")
}

// words is all that was said, with who and when.
func words(t *testing.T, path string) string {
	t.Helper()
	db, err := OpenReader(t.Context(), path)
	if err != nil {
		t.Fatal(err)
	}
	defer db.Close()
	var out strings.Builder
	err = db.Read(t.Context(), func(tx *Tx) error {
		list, err := tx.messages(`ORDER BY id`)
		for _, m := range list {
			fmt.Fprintln(&out, m.Key, m.Author, m.At, m.Text)
		}
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	return out.String()
}

// TestFlippedBitsAreFoundOrHarmless flips single bits all over a file. Either
// that is found, or every word that was said is still what it was: the bit lay
// in free room, or in what can be worked out again.
func TestFlippedBitsAreFoundOrHarmless(t *testing.T) {
	db := fresh(t)
	if _, err := fill(db, 60); err != nil {
		t.Fatal(err)
	}
	path := db.Path()
	db.Close()
	want := words(t, path)
	whole, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	step := 1499
	if testing.Short() {
		step = 9973
	}
	found, missed := 0, 0
	for i := 0; i < len(whole); i += step {
		spoilt, err := spoil(t, path, func(b []byte) []byte { b[i] ^= 1 << (i % 8); return b })
		if err != nil {
			found++
			continue
		}
		missed++
		if got := words(t, spoilt); got != want {
			t.Errorf("bit %d of byte %d changed what was said, unnoticed", i%8, i)
		}
	}
	t.Logf("%d bits flipped: %d found, %d harmless", found+missed, found, missed)
	if found == 0 {
		t.Error("no flipped bit was found")
	}
}

func TestAClockPutBackHoldsNothingUp(t *testing.T) {
	db := fresh(t)
	now := at("2026-06-15 10:00")
	var post Post
	write(t, db, func(tx *Tx) (err error) {
		if err = tx.Queue(Post{Key: "reply:1", Channel: "field", Body: []byte(`{}`), After: now, Since: now}); err == nil {
			post, _, err = tx.PostByKey("reply:1")
		}
		return err
	})
	yesterday := now.Add(-24 * time.Hour)
	ready := func(now time.Time) (n int) {
		err := db.Read(t.Context(), func(tx *Tx) error {
			list, err := tx.ReadyPosts(now)
			n = len(list)
			return err
		})
		if err != nil {
			t.Fatal(err)
		}
		return n
	}
	if ready(yesterday) != 1 {
		t.Error("a post waits a day because the clock was put back")
	}
	write(t, db, func(tx *Tx) error {
		_, err := tx.Sending(post.ID, "ready", now)
		return err
	})
	err := db.Read(t.Context(), func(tx *Tx) error {
		list, err := tx.DoubtfulPosts(yesterday.Add(-15*time.Second), yesterday)
		if len(list) != 1 {
			t.Error("a post in doubt waits a day because the clock was put back")
		}
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	write(t, db, func(tx *Tx) error { return tx.Refused(post.ID, yesterday.Add(time.Minute), yesterday, "too fast") })
	if ready(yesterday) != 0 {
		t.Error("a refused post does not wait as long as it was told to")
	}
	write(t, db, func(tx *Tx) error {
		if err := tx.KeepSlot("summary", now); err != nil {
			return err
		}
		return tx.KeepSlot("summary", yesterday)
	})
	err = db.Read(t.Context(), func(tx *Tx) error {
		last, _, err := tx.LastSlot("summary")
		if !last.Equal(now) {
			t.Errorf("the last slot went back to %v: it would be dealt with twice", last)
		}
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
}

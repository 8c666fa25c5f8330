package store

import (
	"context"
	"database/sql"
	"errors"
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"
)

var update = flag.Bool("update", false, "write the schema fixture of the version that is not released yet")

func fresh(t testing.TB) *DB {
	t.Helper()
	db, err := Open(t.Context(), filepath.Join(t.TempDir(), "record.db"))
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { db.Close() })
	return db
}

func write(t testing.TB, db *DB, do func(*Tx) error) {
	t.Helper()
	if err := db.Write(context.WithoutCancel(t.Context()), do); err != nil {
		t.Fatal(err)
	}
}

func at(s string) time.Time {
	v, err := time.Parse("2006-01-02 15:04", s)
	if err != nil {
		panic(err)
	}
	return v
}

// say keeps a message with nothing understood.
func say(t testing.TB, db *DB, key, text string) (id int64) {
	t.Helper()
	write(t, db, func(tx *Tx) (err error) {
		id, _, err = tx.AddMessage(Message{Key: key, Kind: Said, Channel: "field", TS: key, Thread: key, Author: "ana", At: at("2026-06-15 10:00"), Text: text})
		return err
	})
	return id
}

// schema is what a file's tables are, in SQLite's words.
func schema(t *testing.T, path string) string {
	t.Helper()
	db, err := sql.Open("sqlite3", "file:"+path+"?mode=ro")
	if err != nil {
		t.Fatal(err)
	}
	defer db.Close()
	rows, err := db.Query(`SELECT sql FROM sqlite_schema WHERE sql IS NOT NULL AND name NOT LIKE 'message\_words\_%' ESCAPE '\'
		UNION ALL SELECT sql FROM sqlite_schema WHERE type = 'trigger' AND name LIKE 'message\_words\_%' ESCAPE '\' ORDER BY 1`)
	if err != nil {
		t.Fatal(err)
	}
	defer rows.Close()
	var out []string
	for rows.Next() {
		var s string
		if err := rows.Scan(&s); err != nil {
			t.Fatal(err)
		}
		out = append(out, s+";")
	}
	return strings.Join(out, "\n") + "\n"
}

// TestEverySchemaArrivesAtTheSame takes the kept schema of every version and
// brings it up to date: it must be as a fresh file is.
func TestEverySchemaArrivesAtTheSame(t *testing.T) {
	freshFile := filepath.Join(t.TempDir(), "fresh.db")
	db, err := Open(t.Context(), freshFile)
	if err != nil {
		t.Fatal(err)
	}
	db.Close()
	want := schema(t, freshFile)
	for v := 1; v <= len(steps()); v++ {
		kept := filepath.Join("..", "testdata", "store", fmt.Sprintf("schema_%04d.sql", v))
		if *update && v == len(steps()) {
			if err := os.WriteFile(kept, []byte(want), 0o644); err != nil {
				t.Fatal(err)
			}
		}
		body, err := os.ReadFile(kept)
		if err != nil {
			t.Fatalf("every released version keeps its schema: %v", err)
		}
		old := filepath.Join(t.TempDir(), "old.db")
		raw, err := sql.Open("sqlite3", old)
		if err != nil {
			t.Fatal(err)
		}
		// Tables first: what refers to them comes after.
		var tables, rest []string
		for _, s := range strings.SplitAfter(string(body), ";\nCREATE ") {
			s = strings.TrimSuffix(s, "CREATE ")
			if !strings.HasPrefix(s, "CREATE ") {
				s = "CREATE " + s
			}
			if strings.HasPrefix(s, "CREATE TABLE") || strings.HasPrefix(s, "CREATE VIRTUAL") {
				tables = append(tables, s)
			} else {
				rest = append(rest, s)
			}
		}
		for _, s := range append(tables, rest...) {
			if _, err := raw.Exec(s); err != nil {
				t.Fatalf("version %d: %v in %s", v, err, s)
			}
		}
		if _, err := raw.Exec(fmt.Sprintf("PRAGMA user_version = %d", v)); err != nil {
			t.Fatal(err)
		}
		raw.Close()
		db, err := Open(t.Context(), old)
		if err != nil {
			t.Fatalf("version %d: %v", v, err)
		}
		db.Close()
		if got := schema(t, old); got != want {
			t.Errorf("version %d arrives at another schema than a fresh file.\nIts fixture must never change once released; a change of the schema is a new step.\ngot:\n%s\nwant:\n%s", v, got, want)
		}
	}
}

func TestANewerRecordIsRefused(t *testing.T) {
	path := filepath.Join(t.TempDir(), "record.db")
	db, err := Open(t.Context(), path)
	if err != nil {
		t.Fatal(err)
	}
	if _, err := db.write.Exec("PRAGMA user_version = 999"); err != nil {
		t.Fatal(err)
	}
	db.Close()
	if _, err := Open(t.Context(), path); !errors.Is(err, ErrNewer) {
		t.Errorf("Open: %v, want ErrNewer", err)
	}
	if _, err := OpenReader(t.Context(), path); !errors.Is(err, ErrNewer) {
		t.Errorf("OpenReader: %v, want ErrNewer", err)
	}
}

func TestOneWriterManyReaders(t *testing.T) {
	db := fresh(t)
	say(t, db, "field/1", "92 rear tap")
	if _, err := Open(t.Context(), db.Path()); !errors.Is(err, ErrLocked) {
		t.Errorf("a second writer: %v, want ErrLocked", err)
	}
	for range 3 {
		r, err := OpenReader(t.Context(), db.Path())
		if err != nil {
			t.Fatalf("a reader beside the writer: %v", err)
		}
		defer r.Close()
		err = r.Read(t.Context(), func(tx *Tx) error {
			m, found, err := tx.MessageByKey("field/1")
			if err == nil && (!found || m.Text != "92 rear tap") {
				t.Errorf("the reader sees %+v", m)
			}
			return err
		})
		if err != nil {
			t.Error(err)
		}
		if err := r.Write(t.Context(), func(*Tx) error { return nil }); !errors.Is(err, ErrReadOnly) {
			t.Errorf("a reader writes: %v, want ErrReadOnly", err)
		}
	}
}

func TestAForeignFileIsLeftAlone(t *testing.T) {
	path := filepath.Join(t.TempDir(), "other.db")
	raw, err := sql.Open("sqlite3", path)
	if err != nil {
		t.Fatal(err)
	}
	if _, err := raw.Exec("CREATE TABLE theirs (x)"); err != nil {
		t.Fatal(err)
	}
	raw.Close()
	before, _ := os.ReadFile(path)
	if _, err := Open(t.Context(), path); !errors.Is(err, errNoRecord) {
		t.Errorf("Open: %v, want errNoRecord", err)
	}
	text := filepath.Join(t.TempDir(), "notes.txt")
	if err := os.WriteFile(text, []byte(strings.Repeat("this is no database. ", 300)), 0o600); err != nil {
		t.Fatal(err)
	}
	if _, err := Open(t.Context(), text); !errors.Is(err, ErrDamaged) {
		t.Errorf("Open of a text: %v, want ErrDamaged", err)
	}
	if after, _ := os.ReadFile(path); string(after) != string(before) {
		t.Error("the foreign file was changed")
	}
}

func TestTheFileIsItsOwnersOnly(t *testing.T) {
	db := fresh(t)
	say(t, db, "field/1", "92 rear tap")
	for _, tail := range []string{"", "-wal", "-shm", ".lock"} {
		info, err := os.Stat(db.Path() + tail)
		if err != nil {
			t.Fatal(err)
		}
		if info.Mode().Perm()&0o077 != 0 {
			t.Errorf("%s%s has mode %o", filepath.Base(db.Path()), tail, info.Mode().Perm())
		}
	}
}

// TestEveryCommitWaitsForTheDisk: a message that was answered must outlive the
// power's failing.
func TestEveryCommitWaitsForTheDisk(t *testing.T) {
	db := fresh(t)
	if how := lines(t, db.write, "PRAGMA synchronous"); how[0] != "[2]" {
		t.Errorf("synchronous is %s, want 2: FULL", how[0])
	}
}

// A page's size is fixed with the file: a new record has ours, an older one keeps its own,
// and so do their backups.
func TestAnOlderRecordKeepsItsPages(t *testing.T) {
	for name, c := range map[string]struct {
		file string
		want string
	}{
		"new":   {filepath.Join(t.TempDir(), "new.db"), fmt.Sprintf("[%d]", pageSize)},
		"older": {older(t, 3), "[4096]"},
	} {
		t.Run(name, func(t *testing.T) {
			db, err := Open(t.Context(), c.file)
			if err != nil {
				t.Fatal(err)
			}
			defer db.Close()
			say(t, db, "field/1", "61 laundry")
			backup := filepath.Join(t.TempDir(), "backup.db")
			if err := db.Backup(t.Context(), backup, nil); err != nil {
				t.Fatal(err)
			}
			for _, file := range []string{c.file, backup} {
				if got := lines(t, raw(t, file), "PRAGMA page_size"); got[0] != c.want {
					t.Errorf("the pages of %s have %s bytes, want %s", filepath.Base(file), got[0], c.want)
				}
			}
		})
	}
}

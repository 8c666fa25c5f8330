package gather_test

import (
	"context"
	"database/sql"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	_ "github.com/mattn/go-sqlite3"
	"pgregory.net/rapid"

	"lazyhand/store/gather"
)

func name(t testing.TB) string {
	t.Helper()
	n := gather.Name()
	if n == "" {
		t.Skip("not on this machine")
	}
	return n
}

// open opens a file with few pages in memory, so that a transaction is in the
// log long before it is committed.
func open(t interface{ Fatal(...any) }, file, vfs string) *sql.DB {
	dsn := "file:" + file + "?_journal_mode=WAL&_synchronous=FULL&_busy_timeout=5000&_cache_size=3"
	if vfs != "" {
		dsn += "&vfs=" + vfs
	}
	db, err := sql.Open("sqlite3", dsn)
	if err != nil {
		t.Fatal(err)
	}
	db.SetMaxOpenConns(1)
	return db
}

func rows(t interface{ Fatal(...any) }, db *sql.DB) string {
	var n int
	var all sql.NullString
	if err := db.QueryRow(`SELECT count(*), group_concat(id || ':' || length(body) || ':' || substr(body, 1, 9), ' ') FROM (SELECT * FROM thing ORDER BY id)`).Scan(&n, &all); err != nil {
		t.Fatal(err)
	}
	return fmt.Sprint(n, " ", all.String)
}

// TestEveryoneSeesWhatIsCommittedAndNothingElse writes through the gathered log
// in transactions of any size, some of them undone, while another connection
// reads the same file the machine's own way, and folds the log in at times.
func TestEveryoneSeesWhatIsCommittedAndNothingElse(t *testing.T) {
	vfs := name(t)
	rapid.Check(t, func(t *rapid.T) {
		dir, err := os.MkdirTemp("", "gather")
		if err != nil {
			t.Fatal(err)
		}
		defer os.RemoveAll(dir)
		file := filepath.Join(dir, "record.db")
		db := open(t, file, vfs)
		defer func() { db.Close() }()
		if _, err := db.Exec(`CREATE TABLE thing (id INTEGER PRIMARY KEY, body TEXT); CREATE INDEX thing_body ON thing (body)`); err != nil {
			t.Fatal(err)
		}
		other := open(t, file, "")
		defer other.Close()
		kept := rows(t, other)
		for range rapid.IntRange(1, 12).Draw(t, "transactions") {
			tx, err := db.Begin()
			if err != nil {
				t.Fatal(err)
			}
			for range rapid.IntRange(1, 40).Draw(t, "rows") {
				id := rapid.IntRange(1, 60).Draw(t, "id")
				body := strings.Repeat(fmt.Sprint(id, rapid.IntRange(0, 99).Draw(t, "text")), rapid.IntRange(1, 4000).Draw(t, "times"))
				if _, err := tx.Exec(`INSERT INTO thing VALUES (?, ?) ON CONFLICT (id) DO UPDATE SET body = excluded.body`, id, body); err != nil {
					t.Fatal(err)
				}
			}
			if now := rows(t, other); now != kept {
				t.Fatal("something is seen that is not committed: ", now, kept)
			}
			if rapid.Bool().Draw(t, "kept") {
				err = tx.Commit()
			} else {
				err = tx.Rollback()
			}
			if err != nil {
				t.Fatal(err)
			}
			now := rows(t, db)
			if seen := rows(t, other); seen != now {
				t.Fatal("others see ", seen, " and not ", now)
			}
			kept = now
			switch rapid.IntRange(0, 5).Draw(t, "then") {
			case 0:
				_, err = db.Exec(`PRAGMA wal_checkpoint(TRUNCATE)`)
			case 1:
				_, err = other.Exec(`PRAGMA wal_checkpoint(PASSIVE)`)
			case 2:
				// The files as a machine that stops now leaves them.
				as := filepath.Join(dir, "stopped.db")
				for _, tail := range []string{"", "-wal"} {
					var body []byte
					if body, err = os.ReadFile(file + tail); err == nil {
						err = os.WriteFile(as+tail, body, 0o600)
					}
					if err != nil {
						t.Fatal(err)
					}
				}
				again := open(t, as, "")
				if seen := rows(t, again); seen != kept {
					t.Fatal("after a stop there is ", seen, " and not ", kept)
				}
				again.Close()
				os.Remove(as)
				os.Remove(as + "-shm")
			}
			if err != nil {
				t.Fatal(err)
			}
		}
		var says string
		if err := other.QueryRow(`PRAGMA integrity_check`).Scan(&says); err != nil || says != "ok" {
			t.Fatal(says, err)
		}
	})
}

// TestAMessageIsOneWriteToTheLog counts what reaches the file.
func TestAMessageIsOneWriteToTheLog(t *testing.T) {
	vfs := name(t)
	count := func(vfs string) (writes int) {
		db := open(t, filepath.Join(t.TempDir(), "record.db"), vfs)
		defer db.Close()
		conn, err := db.Conn(context.Background())
		if err != nil {
			t.Fatal(err)
		}
		defer conn.Close()
		before := calls(t)
		if _, err := conn.ExecContext(context.Background(), `CREATE TABLE thing (id INTEGER PRIMARY KEY, body TEXT);
			BEGIN; INSERT INTO thing VALUES (1, hex(zeroblob(20000))); COMMIT`); err != nil {
			t.Fatal(err)
		}
		return calls(t) - before
	}
	plain, gathered := count(""), count(vfs)
	if gathered > plain/3 {
		t.Errorf("%d writes, %d without", gathered, plain)
	}
}

// calls is how often this process has written to anything.
func calls(t *testing.T) (n int) {
	body, err := os.ReadFile("/proc/self/io")
	if err != nil {
		t.Skip("the system does not count writes: ", err)
	}
	_, rest, _ := strings.Cut(string(body), "syscw: ")
	fmt.Sscan(rest, &n)
	return n
}

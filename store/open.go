package store

import (
	"context"
	"database/sql"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"time"

	"github.com/gofrs/flock"
	_ "github.com/mattn/go-sqlite3" // the driver, under the name "sqlite3"
)

// ErrLocked means that another process writes to the same record.
var ErrLocked = errors.New("another lazyhand is running on this record")

// ErrNewer means that the record was written by a newer version of the program.
var ErrNewer = errors.New("this record was written by a newer version of lazyhand; install that version or a later one")

// ErrOlder means that the record was written by an older version of the program
// and can be read once it was opened for writing.
var ErrOlder = errors.New("this record was written by an older version of lazyhand; it is brought up to date when the bot starts")

// errNoRecord means that the file is an SQLite file of somebody else's, or
// empty.
var errNoRecord = errors.New("this file is no record of lazyhand")

// ErrDamaged means that the file does not hold together.
var ErrDamaged = errors.New("the file is damaged; restore the last backup in its place (the damaged file, moved aside, may still be read in part)")

// DB is one record, open for writing (Open) or only for reading (OpenReader).
// It is safe for use by many goroutines.
type DB struct {
	path    string
	read    *sql.DB
	write   *sql.DB // nil in a reader; one connection
	lock    *flock.Flock
	queue   queue
	folding folding
}

// Open opens the record in the file at path, makes it when there is none, and
// brings an older one up to date. One process at a time may hold a record open
// for writing: a second one gets ErrLocked. The file is readable by its owner
// only.
func Open(ctx context.Context, path string) (*DB, error) {
	if err := os.MkdirAll(filepath.Dir(path), 0o700); err != nil {
		return nil, fmt.Errorf("make the folder of the record: %w", err)
	}
	lock := flock.New(path+".lock", flock.SetPermissions(0o600))
	held, err := lock.TryLock()
	if err != nil {
		return nil, fmt.Errorf("lock the record %s: %w", path, err)
	}
	if !held {
		return nil, fmt.Errorf("open %s: %w", path, ErrLocked)
	}
	db, err := open(ctx, path, lock)
	if err != nil {
		lock.Unlock()
		return nil, err
	}
	return db, nil
}

func open(ctx context.Context, path string, lock *flock.Flock) (*DB, error) {
	f, err := os.OpenFile(path, os.O_RDWR|os.O_CREATE, 0o600)
	if err != nil {
		return nil, fmt.Errorf("open the record: %w", err)
	}
	db := &DB{path: path, lock: lock, folding: folding{file: f}}
	if err := db.connect(ctx); err != nil {
		db.disconnect() // there is nothing to lose
		return nil, fmt.Errorf("open the record %s: %w", path, plain(err))
	}
	return db, nil
}

// connect opens the connections of a record that is written to.
func (db *DB) connect(ctx context.Context) (err error) {
	if err := ours(ctx, db.path); err != nil {
		return err
	}
	if err := begin(ctx, db.path); err != nil {
		return err
	}
	if db.write, err = sql.Open("sqlite3", dsn(db.path, false)); err != nil {
		return err
	}
	db.write.SetMaxOpenConns(1)
	if err := look(ctx, db.write, db.path); err != nil {
		return err
	}
	if err := migrate(ctx, db.write, steps()); err != nil {
		return err
	}
	if db.read, err = sql.Open("sqlite3", dsn(db.path, true)); err != nil {
		return err
	}
	db.read.SetMaxOpenConns(4)
	if db.folding.pool, err = sql.Open("sqlite3", dsn(db.path, false)); err != nil {
		return err
	}
	db.folding.pool.SetMaxOpenConns(1)
	if _, err := db.folding.pool.ExecContext(ctx, "PRAGMA cache_size = 10"); err != nil { // it reads nothing
		return err
	}
	return on(ctx, db.write, func(w *wire) error {
		if _, _, err := w.run(fmt.Sprint("PRAGMA wal_autocheckpoint = ", tooLong), nil); err != nil {
			return err
		}
		return aside(w, "MEMORY")
	})
}

// disconnect lets the files go.
func (db *DB) disconnect() (err error) {
	for _, pool := range []*sql.DB{db.read, db.folding.pool, db.write} {
		if pool != nil {
			err = errors.Join(err, pool.Close())
		}
	}
	return errors.Join(err, db.folding.file.Close())
}

// OpenReader opens an existing record for reading, also while another process
// writes to it. An older one it refuses with ErrOlder: Open brings it up to date.
func OpenReader(ctx context.Context, path string) (*DB, error) {
	if _, err := os.Stat(path); err != nil {
		if errors.Is(err, fs.ErrNotExist) {
			return nil, fmt.Errorf("there is no record at %s: %w", path, err)
		}
		return nil, err
	}
	read, err := sql.Open("sqlite3", dsn(path, true))
	if err != nil {
		return nil, fmt.Errorf("open the record: %w", err)
	}
	read.SetMaxOpenConns(4)
	v, err := version(ctx, read)
	switch {
	case err == nil && v > len(steps()):
		err = ErrNewer
	case err == nil && v == 0:
		err = errNoRecord
	case err == nil && v < len(steps()):
		err = ErrOlder
	}
	if err != nil {
		read.Close()
		return nil, fmt.Errorf("open the record %s: %w", path, plain(err))
	}
	return &DB{path: path, read: read}, nil
}

// Path returns the file's name.
func (db *DB) Path() string { return db.path }

// Close waits for what is being written, then lets the file go.
func (db *DB) Close() error {
	if db.write == nil {
		return db.read.Close()
	}
	db.folding.close()
	db.queue.close()
	return errors.Join(db.disconnect(), db.lock.Unlock())
}

// dsn carries the pragmas, so that every connection of the pool has them.
// SQLite's own mutexes are off: one goroutine at a time uses a connection.
func dsn(path string, readOnly bool) string {
	file := "file:" + escape(path) + "?_busy_timeout=5000&_foreign_keys=on&_stmt_cache_size=128&_mutex=no"
	if readOnly {
		return file + "&_query_only=on"
	}
	return file + "&_cache_size=-8000&_journal_mode=WAL&_synchronous=FULL&_txlock=immediate&_secure_delete=on"
}

// ours refuses a file that holds somebody else's tables, before anything in it
// is changed: even the switch to a write-ahead log is a change.
func ours(ctx context.Context, path string) error {
	if info, err := os.Stat(path); err != nil || info.Size() == 0 {
		return err
	}
	if _, err := os.Stat(path + "-wal"); err == nil {
		return nil // after a crash it has to be written to before it can be read; look sees to it
	}
	db, err := sql.Open("sqlite3", "file:"+escape(path)+"?mode=ro")
	if err != nil {
		return err
	}
	defer db.Close()
	v, err := version(ctx, db)
	if err != nil || v > 0 {
		return err
	}
	return empty(ctx, db)
}

// pageSize is that of a new record, in bytes. A message changes a few rows in
// each of many tables: with half of SQLite's usual page it writes half as much.
// An older record keeps its own.
const pageSize = 2048

// begin gives an empty file its page size, which is fixed from the switch to a
// write-ahead log on.
func begin(ctx context.Context, path string) error {
	if info, err := os.Stat(path); err != nil || info.Size() > 0 {
		return err
	}
	db, err := sql.Open("sqlite3", "file:"+escape(path))
	if err != nil {
		return err
	}
	defer db.Close()
	db.SetMaxOpenConns(1)
	_, err = db.ExecContext(ctx, fmt.Sprintf("PRAGMA page_size = %d; PRAGMA journal_mode = WAL", pageSize))
	return err
}

// empty refuses a file that holds tables.
func empty(ctx context.Context, db *sql.DB) error {
	var tables int
	if err := db.QueryRowContext(ctx, "SELECT count(*) FROM sqlite_schema").Scan(&tables); err != nil {
		return err
	}
	if tables > 0 {
		return errNoRecord
	}
	return nil
}

// wholeCheck is the size of file up to which opening looks through all of it.
// That takes some 10 ms; for a larger one it would keep a shop waiting, and
// `check` and every backup look through the whole anyway.
const wholeCheck = 16 << 20

// look makes sure that the file is a record, or new, and holds together: the
// write-ahead log is folded in, the header's count of pages agrees with the
// file's size, the first page of every table and index can be read, and a file
// up to wholeCheck is looked through.
func look(ctx context.Context, db *sql.DB, path string) error {
	v, err := version(ctx, db)
	if err != nil {
		return err
	}
	if v == 0 {
		return empty(ctx, db) // new
	}
	var busy, log, moved int
	if err := db.QueryRowContext(ctx, "PRAGMA wal_checkpoint(TRUNCATE)").Scan(&busy, &log, &moved); err != nil {
		return err
	}
	var pages, size int64
	if err := db.QueryRowContext(ctx, "SELECT page_count, page_size FROM pragma_page_count, pragma_page_size").Scan(&pages, &size); err != nil {
		return err
	}
	info, err := os.Stat(path)
	if err != nil {
		return err
	}
	if busy == 0 && info.Size() != pages*size {
		return fmt.Errorf("%w: it has %d bytes and should have %d", ErrDamaged, info.Size(), pages*size)
	}
	if info.Size() <= wholeCheck {
		var says string
		if err := db.QueryRowContext(ctx, "PRAGMA quick_check(1)").Scan(&says); err != nil {
			return err
		}
		if says != "ok" {
			return fmt.Errorf("%w: %s", ErrDamaged, says)
		}
		return nil
	}
	names, err := db.QueryContext(ctx, "SELECT name FROM sqlite_schema WHERE type = 'table' AND sql NOT LIKE 'CREATE VIRTUAL%'")
	if err != nil {
		return err
	}
	defer names.Close()
	var list []string
	for names.Next() {
		var n string
		if err := names.Scan(&n); err != nil {
			return err
		}
		list = append(list, n)
	}
	if err := names.Err(); err != nil {
		return err
	}
	names.Close()
	for _, n := range list {
		var one any
		if err := db.QueryRowContext(ctx, `SELECT 1 FROM "`+n+`" LIMIT 1`).Scan(&one); err != nil && !errors.Is(err, sql.ErrNoRows) {
			return err
		}
	}
	return nil
}

// escape makes a path fit for an SQLite URI.
func escape(path string) string {
	return strings.NewReplacer("%", "%25", "?", "%3f", "#", "%23").Replace(path)
}

func millis(t time.Time) int64 { return t.UnixMilli() }

func fromMillis(ms int64) time.Time { return time.UnixMilli(ms).UTC() }

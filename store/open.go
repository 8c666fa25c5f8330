package store

import (
	"context"
	"database/sql"
	"embed"
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

//go:embed migrations/*.sql
var migrations embed.FS

// ErrLocked means that another process writes to the same record.
var ErrLocked = errors.New("another lazyhand is running on this record")

// ErrNewer means that the record was written by a newer version of the program.
var ErrNewer = errors.New("this record was written by a newer version of lazyhand; install that version or a later one")

// DB is one record, open for writing (Open) or only for reading (OpenReader).
// It is safe for use by many goroutines.
type DB struct {
	path   string
	read   *sql.DB
	write  *sql.DB // nil in a reader
	lock   *flock.Flock
	queue  chan job
	stop   chan struct{}
	closed chan struct{}
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
	f.Close()
	write, err := sql.Open("sqlite3", dsn(path, false))
	if err != nil {
		return nil, fmt.Errorf("open the record: %w", err)
	}
	write.SetMaxOpenConns(1)
	if err := migrate(ctx, write); err != nil {
		write.Close()
		return nil, fmt.Errorf("open the record %s: %w", path, plain(err))
	}
	read, err := sql.Open("sqlite3", dsn(path, true))
	if err != nil {
		write.Close()
		return nil, fmt.Errorf("open the record: %w", err)
	}
	read.SetMaxOpenConns(4)
	db := &DB{path: path, read: read, write: write, lock: lock,
		queue: make(chan job), stop: make(chan struct{}), closed: make(chan struct{})}
	go db.writer()
	return db, nil
}

// OpenReader opens an existing record for reading, also while another process
// writes to it.
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
	if err == nil && v > len(steps()) {
		err = ErrNewer
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
	select {
	case <-db.stop:
	default:
		close(db.stop)
	}
	<-db.closed
	return errors.Join(db.read.Close(), db.write.Close(), db.lock.Unlock())
}

// dsn carries the pragmas, so that every connection of the pool has them.
func dsn(path string, readOnly bool) string {
	file := "file:" + strings.NewReplacer("%", "%25", "?", "%3f", "#", "%23").Replace(path) + "?_busy_timeout=5000&_foreign_keys=on&_stmt_cache_size=128"
	if readOnly {
		return file + "&_query_only=on"
	}
	return file + "&_journal_mode=WAL&_synchronous=FULL&_txlock=immediate&_secure_delete=on"
}

func version(ctx context.Context, db *sql.DB) (int, error) {
	var v int
	err := db.QueryRowContext(ctx, "PRAGMA user_version").Scan(&v)
	return v, err
}

func steps() []string {
	names, err := fs.Glob(migrations, "migrations/*.sql")
	if err != nil {
		return nil // the pattern is a constant and right
	}
	return names
}

// migrate applies the steps that the file lacks, each in a transaction that
// also moves the file's version number.
func migrate(ctx context.Context, db *sql.DB) error {
	have, err := version(ctx, db)
	if err != nil {
		return err
	}
	names := steps()
	if have > len(names) {
		return ErrNewer
	}
	for i := have; i < len(names); i++ {
		body, err := migrations.ReadFile(names[i])
		if err != nil {
			return err
		}
		tx, err := db.BeginTx(ctx, nil)
		if err != nil {
			return err
		}
		if _, err = tx.ExecContext(ctx, string(body)); err == nil {
			_, err = tx.ExecContext(ctx, fmt.Sprintf("PRAGMA user_version = %d", i+1))
		}
		if err != nil {
			tx.Rollback()
			return fmt.Errorf("bring the record to version %d: %w", i+1, err)
		}
		if err := tx.Commit(); err != nil {
			return fmt.Errorf("bring the record to version %d: %w", i+1, err)
		}
	}
	return nil
}

func millis(t time.Time) int64 { return t.UnixMilli() }

func fromMillis(ms int64) time.Time { return time.UnixMilli(ms).UTC() }

package store

import (
	"context"
	"database/sql"
	"errors"
	"fmt"

	"github.com/mattn/go-sqlite3"
)

// job is one Write that waits for the writer.
type job struct {
	ctx  context.Context
	do   func(*Tx) error
	done chan error
	// large: it puts much aside on the way, on the disk and not in memory.
	large bool
}

// Tx is a view of the record inside one transaction: a Write's can change
// rows, a Read's cannot.
type Tx struct {
	ctx    context.Context // never cancelled: the driver would start a goroutine for every statement
	stop   <-chan struct{} // closed when the caller gives up
	replay bool            // the record is being rebuilt, see Replay
	q      interface {
		ExecContext(context.Context, string, ...any) (sql.Result, error)
		QueryContext(context.Context, string, ...any) (*sql.Rows, error)
		QueryRowContext(context.Context, string, ...any) *sql.Row
	}
}

// ErrReadOnly means that a record opened for reading was to be written.
var ErrReadOnly = errors.New("this record is open for reading only")

// Write runs do in a transaction. When it returns nil, what do wrote is on the
// disk; when it returns an error, nothing of it is. Writes that arrive while
// one is being committed share the next commit.
func (db *DB) Write(ctx context.Context, do func(*Tx) error) error {
	return db.enqueue(ctx, job{ctx: ctx, do: do, done: make(chan error, 1)})
}

// WriteLarge is Write for what touches the whole record. It shares its commit
// with nothing, and everything else waits for it.
func (db *DB) WriteLarge(ctx context.Context, do func(*Tx) error) error {
	return db.enqueue(ctx, job{ctx: ctx, do: do, done: make(chan error, 1), large: true})
}

func (db *DB) enqueue(ctx context.Context, j job) error {
	if db.write == nil {
		return ErrReadOnly
	}
	select {
	case db.queue <- j:
		return <-j.done
	case <-db.stop:
		return errors.New("the record is closed")
	case <-ctx.Done():
		return ctx.Err()
	}
}

// Read runs do on a snapshot of the record.
func (db *DB) Read(ctx context.Context, do func(*Tx) error) error {
	if err := ctx.Err(); err != nil {
		return err
	}
	whole := context.WithoutCancel(ctx)
	tx, err := db.read.BeginTx(whole, nil)
	if err != nil {
		return plain(err)
	}
	defer tx.Rollback()
	return do(&Tx{ctx: whole, stop: ctx.Done(), q: tx})
}

// batch bounds how many writes share one commit, so that the first of them
// does not wait long.
const batch = 64

// writer is the one goroutine that writes.
func (db *DB) writer() {
	defer close(db.closed)
	for {
		select {
		case <-db.stop:
			return
		case first := <-db.queue:
			jobs := []job{first}
			var alone []job
			for more := !first.large; more && len(jobs) < batch; {
				select {
				case j := <-db.queue:
					if j.large {
						alone, more = append(alone, j), false
						continue
					}
					jobs = append(jobs, j)
				default:
					more = false
				}
			}
			db.commit(jobs)
			for _, j := range alone {
				db.commit([]job{j})
			}
		}
	}
}

// commit runs the jobs in one transaction, each in a savepoint of its own, and
// tells each how it went.
func (db *DB) commit(jobs []job) {
	results := make([]error, len(jobs))
	err := func() error {
		if jobs[0].large {
			if err := db.aside("FILE"); err != nil {
				return err
			}
			defer db.aside("MEMORY") // else only slower
		}
		tx, err := db.write.BeginTx(context.Background(), nil)
		if err != nil {
			return err
		}
		defer tx.Rollback()
		for i, j := range jobs {
			t := &Tx{ctx: context.WithoutCancel(j.ctx), stop: j.ctx.Done(), q: tx}
			if len(jobs) == 1 { // the transaction is its savepoint
				if results[i] = attempt(func() error { return j.do(t) }); results[i] != nil {
					return results[i]
				}
				break
			}
			results[i] = t.Savepoint(func() error { return j.do(t) })
			if isDisk(results[i]) {
				// SQLite may have ended the transaction by itself: what follows
				// would be committed statement by statement, so nothing does.
				return results[i]
			}
		}
		return tx.Commit()
	}()
	for i, j := range jobs {
		if err != nil && (len(jobs) > 1 || results[i] == nil) {
			results[i] = fmt.Errorf("write to the record: %w", plain(err))
		}
		j.done <- results[i]
	}
}

// aside chooses where what a transaction puts aside is kept. In memory, because
// the undo of nested savepoints would else make a temporary file for nearly
// every message, at more than the price of all the rest.
func (db *DB) aside(where string) error {
	_, err := db.write.Exec("PRAGMA temp_store = " + where)
	return plain(err)
}

// Savepoint runs do and undoes what it wrote when it fails or panics; a panic
// comes back as an error.
func (tx *Tx) Savepoint(do func() error) (err error) {
	if _, err := tx.q.ExecContext(tx.ctx, "SAVEPOINT part"); err != nil {
		return plain(err)
	}
	defer func() {
		if err != nil {
			if _, e := tx.q.ExecContext(tx.ctx, "ROLLBACK TO part"); e != nil {
				err = errors.Join(err, e)
			}
		}
		if _, e := tx.q.ExecContext(tx.ctx, "RELEASE part"); e != nil {
			err = errors.Join(err, plain(e))
		}
	}()
	return attempt(do)
}

// attempt runs do; a panic comes back as an error.
func attempt(do func() error) (err error) {
	defer func() {
		if p := recover(); p != nil {
			err = fmt.Errorf("unexpected fault: %v", p)
		}
	}()
	return do()
}

// IsFault tells whether err comes from the disk or the file, not from what was
// to be written: then trying again later may help and nothing is wrong with
// the message.
func IsFault(err error) bool {
	return errors.Is(err, context.Canceled) || errors.Is(err, context.DeadlineExceeded) || isDisk(err)
}

// isDisk is IsFault without a caller who gave up.
func isDisk(err error) bool {
	var e sqlite3.Error
	return errors.As(err, &e) && e.Code != sqlite3.ErrConstraint && e.Code != sqlite3.ErrMismatch && e.Code != sqlite3.ErrTooBig && e.Code != sqlite3.ErrRange
}

// plain says in a shop owner's words what SQLite's error means.
func plain(err error) error {
	var e sqlite3.Error
	if !errors.As(err, &e) {
		return err
	}
	switch e.Code {
	case sqlite3.ErrNotADB, sqlite3.ErrCorrupt:
		return fmt.Errorf("%w: %w", ErrDamaged, err)
	case sqlite3.ErrFull:
		return fmt.Errorf("the disk is full; make room, nothing was lost: %w", err)
	case sqlite3.ErrReadonly, sqlite3.ErrPerm, sqlite3.ErrCantOpen:
		return fmt.Errorf("the file cannot be written; check who may write to it and its folder: %w", err)
	case sqlite3.ErrBusy, sqlite3.ErrLocked:
		return fmt.Errorf("another program holds the file; close it and try again: %w", err)
	}
	return err
}

func (tx *Tx) exec(query string, args ...any) (int64, error) {
	r, err := tx.q.ExecContext(tx.ctx, query, args...)
	if err != nil {
		return 0, plain(err)
	}
	return r.RowsAffected()
}

func (tx *Tx) insert(query string, args ...any) (int64, error) {
	r, err := tx.q.ExecContext(tx.ctx, query, args...)
	if err != nil {
		return 0, plain(err)
	}
	return r.LastInsertId()
}

// one scans the first row of a query; found is false when there is none.
func (tx *Tx) one(dest []any, query string, args ...any) (found bool, err error) {
	err = tx.q.QueryRowContext(tx.ctx, query, args...).Scan(dest...)
	if errors.Is(err, sql.ErrNoRows) {
		return false, nil
	}
	return err == nil, plain(err)
}

// stopped tells that the caller has given up.
func (tx *Tx) stopped() error {
	select {
	case <-tx.stop:
		return context.Canceled
	default:
		return nil
	}
}

// each hands the rows of a query to do, one after the other.
func each(tx *Tx, do func(scan func(...any) error) error, query string, args ...any) error {
	rows, err := tx.q.QueryContext(tx.ctx, query, args...)
	if err != nil {
		return plain(err)
	}
	defer rows.Close()
	for rows.Next() {
		if err := tx.stopped(); err != nil {
			return err
		}
		if err := do(rows.Scan); err != nil {
			return err
		}
	}
	return plain(rows.Err())
}

// all collects the rows of a query through scan.
func all[T any](tx *Tx, scan func(func(...any) error) (T, error), query string, args ...any) ([]T, error) {
	var out []T
	err := each(tx, func(row func(...any) error) error {
		v, err := scan(row)
		out = append(out, v)
		return err
	}, query, args...)
	if err != nil {
		return nil, err
	}
	return out, nil
}

package store

import (
	"context"
	"database/sql/driver"
	"errors"
	"fmt"
	"slices"
	"sync"

	"github.com/mattn/go-sqlite3"
)

// job is one Write that waits for its commit.
type job struct {
	ctx  context.Context
	do   func(*Tx) error
	done chan error
	// large: it puts much aside on the way, on the disk and not in memory.
	large bool
	// outside, in the place of do, works on the connection outside of any
	// transaction.
	outside func(*wire) error
}

// Tx is a view of the record inside one transaction: a Write's can change
// rows, a Read's cannot.
type Tx struct {
	q      link
	stop   <-chan struct{} // closed when the caller gives up
	replay bool            // the record is being rebuilt, see Replay
	// bold: it keeps no savepoints. Where one would have been gone back to,
	// spoilt is set and all of it is done again without being bold.
	bold, spoilt bool
}

// ErrReadOnly means that a record opened for reading was to be written.
var ErrReadOnly = errors.New("this record is open for reading only")

// Write runs do in a transaction. When it returns nil, what do wrote is on the
// disk; when it returns an error, nothing of it is. Writes that arrive while
// one is being committed share the next commit. When one of them fails, each is
// done again by itself: do may run twice, and only the last time counts.
func (db *DB) Write(ctx context.Context, do func(*Tx) error) error {
	return db.enqueue(&job{ctx: ctx, do: do, done: make(chan error, 1)})
}

// WriteLarge is Write for what touches the whole record: do runs once. It
// shares its commit with nothing, and everything else waits for it.
func (db *DB) WriteLarge(ctx context.Context, do func(*Tx) error) error {
	return db.enqueue(&job{ctx: ctx, do: do, done: make(chan error, 1), large: true})
}

// Read runs do on a snapshot of the record.
func (db *DB) Read(ctx context.Context, do func(*Tx) error) error {
	if err := ctx.Err(); err != nil {
		return err
	}
	var asked error
	err := on(context.WithoutCancel(ctx), db.read, func(w *wire) error {
		if err := w.begin("BEGIN"); err != nil {
			return err
		}
		asked = do(&Tx{q: w, stop: ctx.Done()})
		return nil
	})
	if err != nil {
		return plain(err)
	}
	return asked
}

// batch bounds how many writes share one commit, so that the first of them
// does not wait long.
const batch = 64

// queue are the writes that wait while one is being committed.
type queue struct {
	mu      sync.Mutex
	busy    bool // somebody commits
	closing bool
	waiting []*job
	idle    chan struct{} // closed when closing and nobody commits any more
}

// enqueue commits j, or lets it be committed. Who comes while nothing is being
// written writes at once, in its own goroutine; who comes meanwhile waits, and
// is written together with the others who do.
func (db *DB) enqueue(j *job) error {
	if db.write == nil {
		return ErrReadOnly
	}
	if err := j.ctx.Err(); err != nil {
		return err
	}
	q := &db.queue
	q.mu.Lock()
	if q.closing {
		q.mu.Unlock()
		return errors.New("the record is closed")
	}
	if q.busy {
		q.waiting = append(q.waiting, j)
		q.mu.Unlock()
		select {
		case err := <-j.done:
			return err
		case <-j.ctx.Done():
			if q.withdraw(j) {
				return j.ctx.Err()
			}
			return <-j.done
		}
	}
	q.busy = true
	q.mu.Unlock()
	defer func() {
		if next := q.next(); next != nil {
			go db.commitWaiting(next)
		}
	}()
	db.commit([]*job{j})
	return <-j.done
}

// commitWaiting commits these and all that come meanwhile.
func (db *DB) commitWaiting(jobs []*job) {
	for ; jobs != nil; jobs = db.queue.next() {
		db.commit(jobs)
	}
}

// next takes from those that wait what is to share a commit; nil when nobody
// waits and nobody commits any more.
func (q *queue) next() []*job {
	q.mu.Lock()
	defer q.mu.Unlock()
	n := 0
	for n < len(q.waiting) && n < batch && !q.waiting[n].large {
		n++
	}
	if n == 0 && len(q.waiting) > 0 {
		n = 1 // a large one
	}
	if n == 0 {
		q.busy = false
		if q.closing {
			close(q.idle)
		}
		return nil
	}
	jobs := slices.Clone(q.waiting[:n])
	q.waiting = slices.Delete(q.waiting, 0, n)
	return jobs
}

// withdraw takes j back, unless it is being committed already.
func (q *queue) withdraw(j *job) bool {
	q.mu.Lock()
	defer q.mu.Unlock()
	i := slices.Index(q.waiting, j)
	if i < 0 {
		return false
	}
	q.waiting = slices.Delete(q.waiting, i, i+1)
	return true
}

// close lets what waits be written and nothing more come.
func (q *queue) close() {
	q.mu.Lock()
	if !q.closing {
		q.closing, q.idle = true, make(chan struct{})
		if !q.busy {
			close(q.idle)
		}
	}
	q.mu.Unlock()
	<-q.idle
}

// commit runs the jobs in one transaction and tells each how it went. When one
// fails, each gets a transaction of its own.
func (db *DB) commit(jobs []*job) {
	if outside := jobs[0].outside; outside != nil {
		jobs[0].done <- on(context.Background(), db.write, outside)
		return
	}
	defer db.wrote(len(jobs))
	if !jobs[0].large {
		if again, err := db.together(jobs); !again {
			for _, j := range jobs {
				j.done <- err
			}
			return
		}
	}
	for _, j := range jobs {
		j.done <- db.alone(j)
	}
}

// together runs the jobs boldly in one transaction; again tells that nothing
// was kept because of one of them, and not because of the disk.
func (db *DB) together(jobs []*job) (again bool, err error) {
	var did error
	err = on(context.Background(), db.write, func(w *wire) error {
		if err := w.begin("BEGIN IMMEDIATE"); err != nil {
			return err
		}
		for _, j := range jobs {
			tx := &Tx{q: w, stop: j.ctx.Done(), bold: true}
			if did = attempt(func() error { return j.do(tx) }); did != nil || tx.spoilt {
				again = !isDisk(did) && (tx.spoilt || len(jobs) > 1)
				return nil
			}
		}
		return w.commit()
	})
	switch {
	case err == nil && len(jobs) == 1:
		return again, did
	case err == nil:
		err = did
	}
	if err != nil {
		err = fmt.Errorf("write to the record: %w", plain(err))
	}
	return again, err
}

// alone runs a job in a transaction of its own.
func (db *DB) alone(j *job) error {
	var did error
	err := on(context.Background(), db.write, func(w *wire) error {
		if j.large {
			if err := aside(w, "FILE"); err != nil {
				return err
			}
			defer aside(w, "MEMORY") // else only slower
			defer w.rollback()
		}
		if err := w.begin("BEGIN IMMEDIATE"); err != nil {
			return err
		}
		if did = attempt(func() error { return j.do(&Tx{q: w, stop: j.ctx.Done()}) }); did != nil {
			return nil
		}
		return w.commit()
	})
	if err != nil {
		return fmt.Errorf("write to the record: %w", plain(err))
	}
	return did
}

// aside chooses where what a transaction puts aside is kept. In memory, because
// the undo of nested savepoints would else make a temporary file for nearly
// every message, at more than the price of all the rest.
func aside(w *wire, where string) error {
	_, _, err := w.run("PRAGMA temp_store = "+where, nil)
	return err
}

// Savepoint runs do and undoes what it wrote when it fails or panics; a panic
// comes back as an error. In a bold transaction nothing is undone here: all of
// it will be done again.
func (tx *Tx) Savepoint(do func() error) (err error) {
	if tx.bold {
		if err = attempt(do); err != nil {
			tx.spoilt = true
		}
		return err
	}
	if _, err := tx.exec("SAVEPOINT part"); err != nil {
		return err
	}
	defer func() {
		if err != nil {
			if _, e := tx.exec("ROLLBACK TO part"); e != nil {
				err = errors.Join(err, e)
			}
		}
		if _, e := tx.exec("RELEASE part"); e != nil {
			err = errors.Join(err, e)
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
	if err == nil {
		return nil
	}
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

// In a query that every message asks, a value is compared as ?||'' or ?+0, not
// as a bare ?: SQLite would look at it to choose its plan, and, by the way in
// which the driver binds, prepare the query anew each time.

func (tx *Tx) exec(query string, args ...any) (changed int64, err error) {
	_, changed, err = tx.q.run(query, args)
	return changed, plain(err)
}

// put is exec where nobody asks how many rows were changed. Then the driver hands
// all arguments to SQLite in one go.
func (tx *Tx) put(query string, args ...any) error {
	return plain(tx.q.rows(query, args, nil))
}

func (tx *Tx) insert(query string, args ...any) (id int64, err error) {
	id, _, err = tx.q.run(query, args)
	return id, plain(err)
}

// errEnough ends a query of which no more rows are wanted.
var errEnough = errors.New("enough")

// one scans the first row of a query; found is false when there is none.
func (tx *Tx) one(dest []any, query string, args ...any) (found bool, err error) {
	err = tx.q.rows(query, args, func(row []driver.Value) error {
		found = true
		if err := assign(dest, row); err != nil {
			return err
		}
		return errEnough
	})
	if errors.Is(err, errEnough) {
		err = nil
	}
	return found && err == nil, plain(err)
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
	var row []driver.Value
	scan := func(dest ...any) error { return assign(dest, row) }
	return plain(tx.q.rows(query, args, func(r []driver.Value) error {
		if err := tx.stopped(); err != nil {
			return err
		}
		row = r
		return do(scan)
	}))
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

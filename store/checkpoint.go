package store

import (
	"context"
	"database/sql"
	"os"
	"sync"
)

// Folding what the write-ahead log holds into the file is no part of a commit
// that somebody waits for. It is done beside the commits, by a connection of its
// own, once in some hundred of them; only what they added meanwhile is folded in
// between two of them, so that the log begins anew.
//
// A folding that fails or is cut off leaves the log as it is, and everything
// readable: it is tried again later. Should it never come to an end, because the
// disk is full or somebody reads for hours, the log grows; from tooLong frames on
// every commit tries by itself.
const (
	foldAfter = 400   // writes: 400 messages change some 6000 pages
	tooLong   = 32000 // frames, 64 MiB; in an older record, of larger pages, 128
)

// folding is the work beside the commits.
type folding struct {
	pool *sql.DB  // one connection
	file *os.File // to wait for the disk; opened before SQLite's and closed after, since to close any handle of a file drops the process's locks on it
	mu   sync.Mutex
	n    int  // writes since the last folding began
	busy bool // one goes on
	stop bool // no more may begin
	done sync.WaitGroup
}

// wrote counts writes, and begins a folding when there are enough.
func (db *DB) wrote(n int) {
	f := &db.folding
	f.mu.Lock()
	defer f.mu.Unlock()
	if f.n += n; f.n < foldAfter || f.busy || f.stop {
		return
	}
	f.n, f.busy = 0, true
	f.done.Add(1)
	go func() {
		defer f.done.Done()
		db.foldBeside()
		f.mu.Lock()
		defer f.mu.Unlock()
		f.busy = false
	}()
}

// foldBeside folds the log in. Its faults are those of the disk, which the next
// commit tells in its own time.
func (db *DB) foldBeside() {
	f := &db.folding
	ctx := context.Background()
	passive := func(w *wire) error {
		_, _, err := w.run("PRAGMA wal_checkpoint(PASSIVE)", nil)
		return err
	}
	if on(ctx, f.pool, passive) != nil || f.file.Sync() != nil {
		return
	}
	// In the queue: nothing is committed while the rest follows.
	_ = db.enqueue(&job{ctx: ctx, done: make(chan error, 1), large: true, outside: passive})
}

// close waits for what goes on and lets no more begin.
func (f *folding) close() {
	f.mu.Lock()
	f.stop = true
	f.mu.Unlock()
	f.done.Wait()
}

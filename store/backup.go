package store

import (
	"context"
	"database/sql"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strings"

	"github.com/mattn/go-sqlite3"
)

// stepPages is how many pages a backup copies between two reports of progress.
const stepPages = 1024

// Backup copies the record, as it stands when the copy begins, to a file, while
// other processes go on writing. The copy is looked through before it takes the
// file's name, so that a file of that name is a whole record or what it was
// before. It is readable by its owner only. A file that is no record is never
// overwritten, nor is the record itself.
func (db *DB) Backup(ctx context.Context, file string, progress func(done, total int)) (err error) {
	if err := db.mayBackUpTo(ctx, file); err != nil {
		return err
	}
	dir := filepath.Dir(file)
	part, err := os.CreateTemp(dir, ".lazyhand-backup-*") // mode 0600
	if err != nil {
		return fmt.Errorf("make the backup: %w", err)
	}
	part.Close()
	defer func() {
		if err != nil {
			for _, tail := range []string{"", "-journal", "-wal", "-shm"} {
				os.Remove(part.Name() + tail) // what is left of a failed copy
			}
		}
	}()
	if err := db.copyTo(ctx, part.Name(), progress); err != nil {
		return fmt.Errorf("make the backup: %w", plain(err))
	}
	if err := Verify(ctx, part.Name()); err != nil {
		return fmt.Errorf("look through the backup: %w", err)
	}
	if err := settle(part.Name()); err != nil {
		return fmt.Errorf("write the backup to the disk: %w", err)
	}
	if err := os.Rename(part.Name(), file); err != nil {
		return fmt.Errorf("give the backup its name: %w", err)
	}
	return settle(dir)
}

// mayBackUpTo refuses a file that must not be written.
func (db *DB) mayBackUpTo(ctx context.Context, file string) error {
	if file == "" || strings.ContainsRune(file, 0) || slices.Contains(strings.Split(filepath.ToSlash(file), "/"), "..") {
		return fmt.Errorf("%q cannot be the name of a backup: give a file name without %q", file, "..")
	}
	there, err := os.Lstat(file)
	if errors.Is(err, fs.ErrNotExist) {
		for _, tail := range []string{"-wal", "-shm", ".lock"} { // not there just now, but the record's
			if same(filepath.Dir(file), filepath.Dir(db.path)) && filepath.Base(file) == filepath.Base(db.path)+tail {
				return fmt.Errorf("%s belongs to the record itself: choose another file", file)
			}
		}
		return nil
	}
	if err != nil {
		return fmt.Errorf("make the backup: %w", err)
	}
	if !there.Mode().IsRegular() {
		return fmt.Errorf("%s is no ordinary file: choose another", file)
	}
	for _, tail := range []string{"", "-wal", "-shm", ".lock"} {
		if same(file, db.path+tail) {
			return fmt.Errorf("%s belongs to the record itself: choose another file", file)
		}
	}
	if there.Size() == 0 {
		return nil
	}
	old, err := OpenReader(ctx, file)
	if errors.Is(err, ErrOlder) {
		return nil
	}
	if err != nil {
		return fmt.Errorf("%s is there and is no backup: choose another file, or remove it first", file)
	}
	return old.Close()
}

func same(a, b string) bool {
	x, err := os.Stat(a)
	if err != nil {
		return false
	}
	y, err := os.Stat(b)
	return err == nil && os.SameFile(x, y)
}

// copyTo copies the record page by page under one read transaction, so that
// what is written meanwhile neither gets in nor makes it begin again.
func (db *DB) copyTo(ctx context.Context, file string, progress func(done, total int)) error {
	to, err := sql.Open("sqlite3", "file:"+escape(file)+"?_synchronous=OFF")
	if err != nil {
		return err
	}
	defer to.Close()
	src, err := db.read.Conn(ctx)
	if err != nil {
		return err
	}
	defer src.Close()
	dst, err := to.Conn(ctx)
	if err != nil {
		return err
	}
	defer dst.Close()
	if _, err := src.ExecContext(ctx, "BEGIN"); err != nil {
		return err
	}
	defer src.ExecContext(context.WithoutCancel(ctx), "ROLLBACK") // a read: nothing to keep
	var n int
	if err := src.QueryRowContext(ctx, "SELECT count(*) FROM sqlite_schema").Scan(&n); err != nil { // the transaction begins
		return err
	}
	return dst.Raw(func(d any) error {
		return src.Raw(func(s any) error {
			b, err := d.(*sqlite3.SQLiteConn).Backup("main", s.(*sqlite3.SQLiteConn), "main")
			if err != nil {
				return err
			}
			defer b.Close()
			for done := false; !done; {
				if err := ctx.Err(); err != nil {
					return err
				}
				if done, err = b.Step(stepPages); err != nil {
					return err
				}
				if progress != nil {
					progress(b.PageCount()-b.Remaining(), b.PageCount())
				}
			}
			return b.Finish()
		})
	})
}

// Verify looks through a record that nobody writes to, a backup say, and
// returns what is wrong with it.
func Verify(ctx context.Context, file string) error {
	db, err := OpenReader(ctx, file)
	if err != nil {
		return err
	}
	defer db.Close()
	faults, err := db.Integrity(ctx)
	if err != nil {
		return err
	}
	if len(faults) > 0 {
		return fmt.Errorf("%s is damaged: %s", file, faults[0])
	}
	return nil
}

// settle waits until a file, or a folder's list of names, is on the disk.
func settle(name string) error {
	f, err := os.Open(name)
	if err != nil {
		return err
	}
	return errors.Join(f.Sync(), f.Close())
}

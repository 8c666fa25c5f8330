package store

import (
	"context"
	"database/sql"
	"database/sql/driver"
	"embed"
	"fmt"
	"hash/crc32"
	"io/fs"
)

//go:embed migrations/*.sql
var migrations embed.FS

// steps are the statements that bring a record from each version to the next,
// the first from nothing to version 1. A step of a released version never
// changes any more: records were made by it.
func steps() []string {
	names, err := fs.Glob(migrations, "migrations/*.sql") // in the order of their numbers
	if err != nil {
		return nil // the pattern is a constant and right
	}
	list := make([]string, len(names))
	for i, n := range names {
		body, err := migrations.ReadFile(n)
		if err != nil {
			return nil // it was found just now, in the program itself
		}
		list[i] = string(body)
	}
	return list
}

func version(ctx context.Context, db *sql.DB) (int, error) {
	var v int
	err := db.QueryRowContext(ctx, "PRAGMA user_version").Scan(&v)
	return v, err
}

// migrate applies the steps that the file lacks, each in a transaction that
// also moves the file's version number: a record is of one version or the next,
// never between.
func migrate(ctx context.Context, db *sql.DB, steps []string) error {
	have, err := version(ctx, db)
	if err != nil {
		return err
	}
	if have > len(steps) {
		return ErrNewer
	}
	if have == len(steps) {
		return nil
	}
	return on(ctx, db, func(w *wire) error {
		for name, sum := range map[string]any{"sum_1": sum1, "sum_2": sum2} {
			if err := w.c.RegisterFunc(name, sum, true); err != nil {
				return err
			}
		}
		for v := have + 1; v <= len(steps); v++ {
			if err := w.step(ctx, v, steps[v-1]); err != nil {
				return fmt.Errorf("bring the record to version %d: %w", v, err)
			}
		}
		return nil
	})
}

// step brings the record to version v, or leaves it as it is. References are
// not looked at on the way, since a table may be made anew under them, but
// afterwards; see "Making Other Kinds Of Table Schema Changes" in
// https://sqlite.org/lang_altertable.html.
func (w *wire) step(ctx context.Context, v int, body string) (err error) {
	if err := ctx.Err(); err != nil {
		return err
	}
	if _, _, err := w.run("PRAGMA foreign_keys = OFF", nil); err != nil { // means nothing inside a transaction
		return err
	}
	defer func() {
		w.rollback()
		if _, _, e := w.run("PRAGMA foreign_keys = ON", nil); err == nil {
			err = e
		}
	}()
	if err := w.begin("BEGIN IMMEDIATE"); err != nil {
		return err
	}
	before, err := w.dangling()
	if err != nil {
		return err
	}
	if _, _, err := w.run(body, nil); err != nil {
		return err
	}
	after, err := w.dangling()
	if err != nil {
		return err
	}
	if after > before {
		return fmt.Errorf("%d rows would refer to others that are not there", after-before)
	}
	if _, _, err := w.run(fmt.Sprintf("PRAGMA user_version = %d", v), nil); err != nil {
		return err
	}
	err = w.commit()
	w.open = false
	return err
}

// dangling counts the rows that refer to others that are not there.
func (w *wire) dangling() (n int, err error) {
	err = w.rows("SELECT count(*) FROM pragma_foreign_key_check", nil, func(row []driver.Value) error {
		return assign([]any{&n}, row)
	})
	return n, err
}

// The checksums of a message as they were at a version of the record. They are
// what its step compares and leaves behind, and stay so when wordSum changes.

func sum1(key, author, text string, at int64) int64 {
	return max(1, int64(crc32.ChecksumIEEE(fmt.Appendf(nil, "%s\x00%s\x00%s\x00%d", key, author, text, at))))
}

func sum2(key, author, text, links string, at int64) int64 {
	return max(1, int64(crc32.ChecksumIEEE(fmt.Appendf(nil, "%s\x00%s\x00%s\x00%s\x00%d", key, author, text, links, at))))
}

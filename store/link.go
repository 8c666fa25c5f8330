package store

import (
	"context"
	"database/sql"
	"database/sql/driver"
	"errors"
	"fmt"
	"io"
	"reflect"
	"slices"

	"github.com/mattn/go-sqlite3"
)

// link is what a transaction asks and writes through.
type link interface {
	// run runs a statement that returns no rows; it returns the number of the
	// last row inserted and how many rows were changed.
	run(query string, args []any) (id, changed int64, err error)
	// rows hands each row of a query to do, until that fails. A row is good
	// until do returns. A statement that returns no rows may be run by it too.
	rows(query string, args []any, do func(row []driver.Value) error) error
}

// wire is the driver's own connection. Inside a transaction database/sql would
// start a goroutine for every query, and convert every value twice: together
// more than the work that SQLite does for a message.
type wire struct {
	c *sqlite3.SQLiteConn
	// lost is the fault by which SQLite ended a transaction by itself. What
	// followed would be kept statement by statement, so nothing may.
	lost error
	open bool                // a transaction was begun
	args []driver.NamedValue // bound last; SQLite has its own copy of them
}

// on runs do with a connection of the pool. What do leaves open is rolled back.
func on(ctx context.Context, pool *sql.DB, do func(*wire) error) error {
	conn, err := pool.Conn(ctx)
	if err != nil {
		return err
	}
	defer conn.Close()
	return conn.Raw(func(c any) error {
		w := &wire{c: c.(*sqlite3.SQLiteConn)}
		defer w.rollback()
		return do(w)
	})
}

// begin and commit go by rows, for which the driver keeps statements prepared.

func (w *wire) begin(how string) error {
	err := w.rows(how, nil, nil)
	w.open = err == nil
	return err
}

func (w *wire) commit() error {
	return w.rows("COMMIT", nil, nil)
}

// rollback ends what was not committed.
func (w *wire) rollback() {
	if !w.c.AutoCommit() {
		w.c.ExecContext(context.Background(), "ROLLBACK", nil) // fails only when there is nothing to undo
	}
}

// fault notes whether a failed statement has ended the transaction.
func (w *wire) fault(err error) error {
	if w.open && w.c.AutoCommit() {
		w.lost = err
	}
	return err
}

func (w *wire) run(query string, args []any) (id, changed int64, err error) {
	if w.lost != nil {
		return 0, 0, w.lost
	}
	values, err := w.bind(args)
	if err != nil {
		return 0, 0, err
	}
	r, err := w.c.ExecContext(context.Background(), query, values)
	if err != nil {
		return 0, 0, w.fault(err)
	}
	if id, err = r.LastInsertId(); err != nil {
		return 0, 0, err
	}
	changed, err = r.RowsAffected()
	return id, changed, err
}

func (w *wire) rows(query string, args []any, do func([]driver.Value) error) (err error) {
	if w.lost != nil {
		return w.lost
	}
	values, err := w.bind(args)
	if err != nil {
		return err
	}
	rows, err := w.c.QueryContext(context.Background(), query, values)
	if err != nil {
		return w.fault(err)
	}
	defer func() {
		if e := rows.Close(); e != nil && err == nil {
			err = w.fault(e)
		}
	}()
	row := make([]driver.Value, len(rows.Columns()))
	for {
		switch err := rows.Next(row); {
		case errors.Is(err, io.EOF):
			return nil
		case err != nil:
			return w.fault(err)
		}
		if err := do(row); err != nil {
			return err
		}
	}
}

// bind turns arguments into the driver's values, which are good until the next
// statement.
func (w *wire) bind(args []any) ([]driver.NamedValue, error) {
	values := slices.Grow(w.args[:0], len(args))[:len(args)]
	w.args = values
	for i, a := range args {
		v := a
		switch a := a.(type) {
		case nil, string, int64, float64, bool:
		case int:
			v = int64(a)
		case *float64:
			if v = nil; a != nil {
				v = *a
			}
		default:
			var err error
			if v, err = driver.DefaultParameterConverter.ConvertValue(a); err != nil {
				return nil, fmt.Errorf("argument %d: %w", i+1, err)
			}
		}
		values[i] = driver.NamedValue{Ordinal: i + 1, Value: v}
	}
	return values, nil
}

// assign puts a row's values where they belong. Only a pointer to a pointer
// takes a NULL.
func assign(dest []any, row []driver.Value) error {
	if len(dest) != len(row) {
		return fmt.Errorf("a row has %d columns, not %d", len(row), len(dest))
	}
	for i, d := range dest {
		if !assignOne(d, row[i]) {
			return fmt.Errorf("column %d: a %T does not go into a %T", i+1, row[i], d)
		}
	}
	return nil
}

func assignOne(dest any, v driver.Value) bool {
	switch d := dest.(type) {
	case *string:
		s, ok := v.(string)
		*d = s
		return ok
	case *int64:
		n, ok := v.(int64)
		*d = n
		return ok
	case *int:
		n, ok := v.(int64)
		*d = int(n)
		return ok
	case *bool:
		n, ok := v.(int64)
		*d = n != 0
		return ok
	case *any:
		*d = v
		return true
	}
	to := reflect.ValueOf(dest).Elem()
	if to.Kind() == reflect.Pointer {
		if v == nil {
			to.SetZero()
			return true
		}
		to.Set(reflect.New(to.Type().Elem()))
		to = to.Elem()
	}
	switch v := v.(type) {
	case string:
		if to.Kind() == reflect.String {
			to.SetString(v)
			return true
		}
	case float64:
		if to.Kind() == reflect.Float64 {
			to.SetFloat(v)
			return true
		}
	case int64:
		switch to.Kind() {
		case reflect.Float64:
			to.SetFloat(float64(v))
			return true
		case reflect.Int, reflect.Int64:
			to.SetInt(v)
			return true
		case reflect.Uint64:
			to.SetUint(uint64(v))
			return v >= 0
		case reflect.Bool:
			to.SetBool(v != 0)
			return true
		}
	}
	return false
}

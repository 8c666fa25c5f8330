package desk_test

import (
	"context"
	"database/sql"
	"errors"
	"fmt"
	"math/rand/v2"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"
	"time"

	"lazyhand/assess"
	"lazyhand/bot/desk"
	"lazyhand/store"
)

// A record of any size is made by
//
//	LAZYHAND_SCALE=1000000 LAZYHAND_SCALE_FILE=/tmp/scale.db go test ./bot/desk -run Scale -v -timeout 60m
//
// which makes a million houses with ten million readings when the file is not
// there, asks it what a shop asks, and walks over all houses. Run it twice: the
// second run's memory is that of asking, not of making.
const (
	scaleEnv     = "LAZYHAND_SCALE"
	scaleFileEnv = "LAZYHAND_SCALE_FILE"
)

// housesAStreet is how many houses of the made record stand on a street.
const housesAStreet = 50

func scaleSite(n int) assess.Site {
	return assess.Site{Line: fmt.Sprintf("%d Made%d St", 100+n%housesAStreet, n/housesAStreet)}
}

// makeRecord fills a new record with invented houses: four reports each over
// four years, two or three readings a report, an open follow-up.
func makeRecord(t *testing.T, file string, houses int) {
	t.Helper()
	db, err := store.Open(t.Context(), file)
	if err != nil {
		t.Fatal(err)
	}
	db.Close()
	raw, err := sql.Open("sqlite3", "file:"+file+"?_journal_mode=OFF&_synchronous=OFF&_cache_size=-400000&_stmt_cache_size=32")
	if err != nil {
		t.Fatal(err)
	}
	defer raw.Close()
	raw.SetMaxOpenConns(1)
	must := func(err error) {
		t.Helper()
		if err != nil {
			t.Fatal(err)
		}
	}
	// Indexes are made at the end, in one pass each.
	rows, err := raw.Query(`SELECT name, sql FROM sqlite_schema WHERE type = 'index' AND sql IS NOT NULL`)
	must(err)
	indexes := map[string]string{}
	for rows.Next() {
		var name, body string
		must(rows.Scan(&name, &body))
		indexes[name] = body
	}
	must(rows.Err())
	rows.Close()
	for name := range indexes {
		_, err := raw.Exec("DROP INDEX " + name)
		must(err)
	}
	// SQLite makes the rows itself: a million houses are some forty million rows
	// of tables and indexes. h counts houses from 0, v their four visits.
	const (
		h     = `WITH RECURSIVE h(h) AS (SELECT 0 UNION ALL SELECT h + 1 FROM h WHERE h + 1 < ?1) `
		visit = h + `, v(h, v, m, psi, day, at) AS (SELECT h, v, 4 * h + v + 1,
			50 + h * 7919 % 20 + v * (h % 20 = 0) * 6 + (h * 31 + v * 17) % 5 - 2,
			printf('%04d-%02d-%02d', 2022 + v, 1 + (h + v) % 5, 1 + (h * 13 + v) % 28),
			(unixepoch(printf('%04d-%02d-%02d', 2022 + v, 1 + (h + v) % 5, 1 + (h * 13 + v) % 28)) + 54000) * 1000
			FROM h, (SELECT 0 AS v UNION ALL SELECT 1 UNION ALL SELECT 2 UNION ALL SELECT 3)) `
		line = `printf('%d Made%d St', 100 + h % 50, h / 50)`
	)
	for _, q := range []string{
		h + `INSERT INTO site (id, line, main, key, loose, street, psi, outside) SELECT h + 1, ` + line + `, 1, lower(` + line + `),
			printf('%d made%d', 100 + h % 50, h / 50), printf('made%d', h / 50), 50 + h * 7919 % 20, max(0, 50 + h * 7919 % 20 + (h % 20 = 0) * 18 - 80) FROM h`,
		visit + `INSERT INTO message (id, key, kind, channel, ts, thread, author, at, text, frame, site)
			SELECT m, printf('C0FIELD/%d.%06d', at / 1000, m), 'said', 'C0FIELD', printf('%d.%06d', at / 1000, m), printf('%d.%06d', at / 1000, m), printf('U%05d', m % 40), at,
			printf('%d rear tap, heater idle, %d at the meter, %s', psi, psi + 40, ` + line + `),
			printf('{"site":"%s","statements":[{"kind":"reading","psi":%d,"point":"rear_bibb","heater":"idle"},{"kind":"reading","psi":%d,"point":"street","flow":"static"}]}', ` + line + `, psi, psi + 40), h + 1 FROM v`,
		visit + `INSERT INTO report (message, site, day, at, author, house_psi, band, readings)
			SELECT m, h + 1, day, at, printf('U%05d', m % 40), psi, 'in_band',
				(SELECT json_group_array(json_array(psi + 40 * (n = 1), CASE n WHEN 1 THEN 'street' ELSE 'rear_bibb' END, 'idle', 'static', 0, '', CASE n WHEN 1 THEN 'street' ELSE 'house' END, 'yes'))
					FROM (SELECT 0 AS n UNION ALL SELECT 1 UNION ALL SELECT 2) WHERE n < 2 + (m + h) % 2)
			FROM v ORDER BY h, v`,
		`INSERT INTO diary SELECT DISTINCT day, message >> 6 FROM report`,
		h + `INSERT INTO equipment (site, item, n, installed) SELECT h + 1, 'prv', 0, CAST(2005 + h % 20 AS TEXT) FROM h`,
		h + `INSERT INTO follow_up (id, site, action, due, why, owner, source, opened)
			SELECT (h + 1 + 1048576 << 20) + 1, h + 1, 'recheck', date('2026-01-01', printf('+%d days', h % 365)), 'yearly reading', 'U00001', 4 * h + 4, 4 * h + 4 FROM h`,
	} {
		_, err := raw.Exec(q, houses)
		must(err)
	}
	_, err = raw.Exec(`INSERT INTO message_words (docid, text) SELECT id, text FROM message ORDER BY id`)
	must(err)
	for _, body := range indexes {
		_, err := raw.Exec(body)
		must(err)
	}
}

// spent runs do often and returns the middle and the longest but one in a
// hundred.
func spent(n int, do func(i int)) (median, p99 time.Duration) {
	all := make([]time.Duration, n)
	for i := range all {
		start := time.Now()
		do(i)
		all[i] = time.Since(start)
	}
	slices.Sort(all)
	return all[n/2], all[n*99/100]
}

// peakMiB is the most memory that this process has had, MiB; 0 where the system
// does not tell.
func peakMiB() int {
	b, err := os.ReadFile("/proc/self/status")
	if err != nil {
		return 0
	}
	_, rest, _ := strings.Cut(string(b), "VmHWM:")
	kb, _ := strconv.Atoi(strings.Fields(rest + " 0")[0])
	return kb / 1024
}

func TestScale(t *testing.T) {
	houses, file := 1000, filepath.Join(quickDir(t), "scale.db")
	if testing.Short() {
		houses = 300
	}
	if n, err := strconv.Atoi(os.Getenv(scaleEnv)); err == nil {
		houses = n
		if f := os.Getenv(scaleFileEnv); f != "" {
			file = f
		}
	}
	if _, err := os.Stat(file); errors.Is(err, os.ErrNotExist) {
		start := time.Now()
		makeRecord(t, file, houses)
		t.Logf("made in %v", time.Since(start).Round(time.Second))
	}
	ctx := context.Background()
	db, err := store.Open(ctx, file)
	if err != nil {
		t.Fatal(err)
	}
	defer db.Close()
	info, err := os.Stat(file)
	if err != nil {
		t.Fatal(err)
	}
	today := assess.Date{Year: 2026, Month: 6, Day: 15}
	ask := func(what string, most int, do func(tx *store.Tx, i int) (rows int, err error)) {
		rows := 0
		median, p99 := spent(200, func(i int) {
			err := db.Read(ctx, func(tx *store.Tx) error {
				n, err := do(tx, i)
				rows += n
				return err
			})
			if err != nil {
				t.Fatal(err)
			}
		})
		if rows == 0 || rows > 200*most {
			t.Errorf("%s: %d rows in 200 answers", what, rows)
		}
		t.Logf("%-22s %4d rows: median %v, 99 of 100 within %v", what, rows/200, median.Round(time.Microsecond), p99.Round(time.Microsecond))
	}
	r := rand.New(rand.NewPCG(3, 4))
	ask("a house's story", 40, func(tx *store.Tx, _ int) (int, error) {
		id := int64(1 + r.IntN(houses))
		reports, err := tx.Reports(id)
		if err != nil {
			return 0, err
		}
		story, err := tx.Story(id)
		return len(reports) + len(story), err
	})
	ask("what is due", 20, func(tx *store.Tx, _ int) (int, error) {
		list, err := tx.DueFollowUps(today, 20)
		return len(list), err
	})
	ask("a street's readings", 1000, func(tx *store.Tx, _ int) (int, error) {
		list, err := tx.ReadingsOfStreet(scaleSite(r.IntN(houses)).Street(), assess.Date{}, 1000)
		return len(list), err
	})
	ask("search", 20, func(tx *store.Tx, i int) (int, error) {
		list, err := tx.Search(fmt.Sprintf("made%d 105", i%max(1, houses/housesAStreet)), 20)
		return len(list), err
	})
	t.Logf("%d bytes a reading; at most %d MiB of memory", info.Size()/int64(houses*10), peakMiB())

	now := today.In(time.UTC)
	// Another service life than last time: every house has to be looked at.
	d, err := desk.New(db, desk.Options{Shop: assess.Shop{ServiceYears: [2]float64{10, 12 + float64(time.Now().UnixNano()%1000)/1000}}})
	if err != nil {
		t.Fatal(err)
	}
	// Cut off halfway, and gone on with.
	cut, stop := context.WithCancel(ctx)
	start := time.Now()
	first, err := d.Sweep(cut, now, func(n int) {
		if n >= houses/2 {
			stop()
		}
	})
	if err == nil && houses > 2000 {
		t.Error("a sweep that was cut off says that it is done")
	}
	rest, err := d.Sweep(ctx, now, nil)
	if err != nil {
		t.Fatal(err)
	}
	t.Logf("sweep over %d houses: %v; at most %d MiB of memory", first+rest, time.Since(start).Round(time.Millisecond), peakMiB())
	if first+rest < houses || first+rest > houses+2000 {
		t.Errorf("the sweep looked at %d houses in two parts, there are %d", first+rest, houses)
	}
	start = time.Now()
	again, err := d.Sweep(ctx, now, nil)
	if err != nil {
		t.Fatal(err)
	}
	if again != 0 {
		t.Errorf("a second sweep on the same day looks at %d houses", again)
	}
	t.Logf("a second sweep on that day: %d houses, %v", again, time.Since(start).Round(time.Millisecond))
}

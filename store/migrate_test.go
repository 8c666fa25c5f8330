package store

import (
	"database/sql"
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"lazyhand/assess"
	"lazyhand/store/storetest"
)

// older unpacks the record that a released program of that version wrote.
func older(t *testing.T, version int) (file string) {
	t.Helper()
	return storetest.Older(t, version, t.TempDir())
}

func raw(t *testing.T, file string) *sql.DB {
	t.Helper()
	db, err := sql.Open("sqlite3", dsn(file, false))
	if err != nil {
		t.Fatal(err)
	}
	db.SetMaxOpenConns(1)
	t.Cleanup(func() { db.Close() })
	return db
}

// lines are the rows of a query.
func lines(t *testing.T, db *sql.DB, query string) (out []string) {
	t.Helper()
	rows, err := db.Query(query)
	if err != nil {
		t.Fatalf("%v in %s", err, query)
	}
	defer rows.Close()
	names, err := rows.Columns()
	if err != nil {
		t.Fatal(err)
	}
	for rows.Next() {
		row, to := make([]any, len(names)), make([]any, len(names))
		for i := range row {
			to[i] = &row[i]
		}
		if err := rows.Scan(to...); err != nil {
			t.Fatal(err)
		}
		out = append(out, fmt.Sprintf("%v", row))
	}
	if err := rows.Err(); err != nil {
		t.Fatal(err)
	}
	return out
}

// anyPost are the posts that wait and those that are done with.
const anyPost = `(SELECT ` + waitingColumns + ` FROM outbox UNION ALL SELECT ` + postColumns + ` FROM outbox_done)`

// content is all that must be the same in every version, told as the newest
// tells it: everything but the checksums, the numbers of version 1's reports and
// what later versions added.
func content(t *testing.T, db *sql.DB, version int) map[string][]string {
	t.Helper()
	all := map[string]string{
		"message":   `SELECT id, key, twin, kind, about, channel, ts, thread, author, at, text, voice, links, sum <> 0, state, tries, error, by, blank, frame, site FROM message ORDER BY id`,
		"site":      `SELECT id, line, key, loose, street, town, postcode, joined, source, psi, outside, look FROM site ORDER BY id`,
		"report":    `SELECT message, site, day, at, author, house_psi, street_psi, band, valve_work, unfinished FROM report ORDER BY message`,
		"reading":   `SELECT r.message, d.site, d.day, d.n, d.psi, d.point, d.heater, d.flow, d.peak, d.moment, d.side, d.fair FROM reading d LEFT JOIN report r ON r.message = d.report ORDER BY 1, 4`,
		"person":    `SELECT id, name, lang, heard, site, site_at FROM person ORDER BY id`,
		"outbox":    `SELECT iif(state IN ('sent', 'dead'), id, 0), key, channel, thread, body, after, state, tries, since, ref, error FROM ` + anyPost + ` ORDER BY key`,
		"follow_up": `SELECT site, action, due, why, owner, source, opened, state, urgency, posted, clock, ended, ended_by, was FROM follow_up ORDER BY site, id`,
		"outlook":   `SELECT id, visited, psi, drift, slope, crosses, rank, finding FROM site WHERE visited <> '' ORDER BY id`,
	}
	if version < 3 {
		all["outbox"] = strings.ReplaceAll(all["outbox"], anyPost, "outbox")
		all["outlook"] = `SELECT site, day, house_psi, drift, slope, crosses, rank, finding FROM outlook ORDER BY site`
	}
	if version == 1 {
		all["reading"] = strings.ReplaceAll(all["reading"], "r.message = d.report", "r.id = d.report")
	}
	for _, table := range []string{"correction", "equipment", "alert", "alert_step", "question", "due", "slot", "walk", "removal"} {
		all[table] = `SELECT * FROM ` + table + ` ORDER BY 1, 2`
	}
	out := map[string][]string{}
	for table, query := range all {
		out[table] = lines(t, db, query)
	}
	return out
}

// eachOlder runs do for every released version before the newest.
func eachOlder(t *testing.T, do func(t *testing.T, version int)) {
	for version := 1; version < len(steps()); version++ {
		t.Run(fmt.Sprint("version ", version), func(t *testing.T) { do(t, version) })
	}
}

func TestOlderRecordsLoseNothing(t *testing.T) {
	eachOlder(t, func(t *testing.T, version int) {
		file := older(t, version)
		before := raw(t, file)
		was := content(t, before, version)
		before.Close()
		for table, rows := range was {
			if len(rows) == 0 && table != "walk" {
				t.Errorf("the kept record has nothing in %s", table)
			}
		}
		db, err := Open(t.Context(), file)
		if err != nil {
			t.Fatal(err)
		}
		defer db.Close()
		for table, now := range content(t, db.write, len(steps())) {
			if !slices.Equal(was[table], now) {
				t.Errorf("%s was\n%s\nand is\n%s", table, strings.Join(was[table], "\n"), strings.Join(now, "\n"))
			}
		}
		if faults, err := db.Integrity(t.Context()); err != nil || len(faults) > 0 {
			t.Errorf("%v %v", faults, err)
		}
	})
}

// TestWhatTheSecondVersionKeptInIndexesIsKnown: who reported what, threads, what
// is due by whom, and that nothing is said twice, though it waits elsewhere.
func TestWhatTheSecondVersionKeptInIndexesIsKnown(t *testing.T) {
	db, err := Open(t.Context(), older(t, 2))
	if err != nil {
		t.Fatal(err)
	}
	defer db.Close()
	write(t, db, func(tx *Tx) error {
		list, err := tx.ReportsBy("ben", 1<<62, 10)
		if err != nil {
			return err
		}
		var ids []int64
		for _, r := range list {
			ids = append(ids, r.Message)
		}
		if want := []int64{25, 24, 18, 16, 13, 8, 6}; !slices.Equal(ids, want) {
			t.Errorf("ben's reports are %v, want %v", ids, want)
		}
		if m, _, err := tx.LastReportBy("ana", 1<<62); err != nil || m.ID != 4 { // put right after all others
			t.Errorf("ana's last report is %d (%v), want 4", m.ID, err)
		}
		if site, err := tx.ThreadSite("field", "1781532000.000002"); err != nil || site != 3 {
			t.Errorf("the thread of 123 Elm St is about %d (%v)", site, err)
		}
		if m, _, err := tx.LastReportIn("field", "1781536200.000010", "", 1<<62); err != nil || m.ID != 8 { // only its edit reports
			t.Errorf("the last report in the thread of 9 Oak Ct is %d (%v)", m.ID, err)
		}
		due, err := tx.DueFollowUps(assess.Date{Year: 2026, Month: 6, Day: 23}, 3)
		if err != nil || len(due) != 3 || due[0].Site != 8 || due[0].Action != assess.Recheck || due[1].Site != 3 || due[2].Site != 4 {
			t.Errorf("due are %+v %v", due, err)
		}
		if f, found, err := tx.FollowUp(12); err != nil || !found || f.ID != due[0].ID { // the number that buttons name
			t.Errorf("known by the number that it had: %+v %v", f, err)
		}
		if all, err := tx.DueFollowUps(assess.Date{Year: 2030, Month: 1, Day: 1}, 0); err != nil || len(all) != 11 {
			t.Errorf("%d are due in the end (%v), want 11", len(all), err)
		}
		now := at("2026-06-30 19:00")
		for _, key := range []string{"reply:25", "reply:4", "remind:eva:1782738000000"} { // waits, was sent, was given up
			before, _, err := tx.PostByKey(key)
			if err != nil {
				return err
			}
			if err := tx.Queue(Post{Key: key, Channel: "field", Body: []byte(`{}`), After: now, Since: now}); err != nil {
				return err
			}
			if after, found, err := tx.PostByKey(key); err != nil || !found || string(after.Body) != string(before.Body) || after.ID != before.ID {
				t.Errorf("%s is now %+v %v", key, after, err)
			}
		}
		if err := tx.Queue(Post{Key: "reply:26", Channel: "other", Body: []byte(`{}`), After: now, Since: now}); err != nil {
			return err
		}
		if p, _, err := tx.PostByKey("reply:26"); err != nil || p.ID != (26+1<<20)<<20+1 {
			t.Errorf("a new post is %d (%v), want the first of those that answer message 26", p.ID, err)
		}
		doubtful, err := tx.DoubtfulPosts(now, now)
		if err != nil || len(doubtful) != 1 || doubtful[0].Key != "react:24:24:stored" {
			t.Errorf("in doubt are %+v %v", doubtful, err)
		}
		if ready, err := tx.ReadyPosts(now); err != nil || len(ready) != 1 || ready[0].Key != "reply:26" { // the field waits for what is in doubt
			t.Errorf("may be sent: %+v %v", ready, err)
		}
		return nil
	})
}

// TestWhatWaitedIsSaidInItsOrder: answers to a message together, those to an
// earlier one before, and all else where it stood.
func TestWhatWaitedIsSaidInItsOrder(t *testing.T) {
	file := older(t, 5)
	before := raw(t, file)
	was := fmt.Sprint(lines(t, before, `SELECT key FROM outbox ORDER BY id`))
	before.Close()
	if want := "[[react:40:40:stored] [reply:40] [alert:7:2] [alert:7:2:said] [react:41:41:stored] [reply:41] [alert:8:1] " +
		"[react:38:42:none] [reply:42] [react:43:43:stored] [reply:43]]"; was != want {
		t.Fatalf("the kept record holds %s", was)
	}
	db, err := Open(t.Context(), file)
	if err != nil {
		t.Fatal(err)
	}
	defer db.Close()
	now := fmt.Sprint(lines(t, db.write, `SELECT key FROM outbox ORDER BY id`))
	if want := "[[react:38:42:none] [react:40:40:stored] [reply:40] [alert:7:2] [alert:7:2:said] [react:41:41:stored] [reply:41] [alert:8:1] " +
		"[reply:42] [react:43:43:stored] [reply:43]]"; now != want {
		t.Errorf("they will be said in the order %s", now)
	}
	write(t, db, func(tx *Tx) error {
		for _, key := range []string{"react:38:42:none", "reply:40", "alert:7:2:said", "alert:7:1"} { // the last is out
			p, found, err := tx.PostByKey(key)
			if err != nil || !found {
				t.Errorf("%s is not found: %v", key, err)
			}
			if err := tx.Queue(Post{Key: key, Channel: "other", Body: []byte(`{}`)}); err != nil {
				return err
			}
			if again, _, _ := tx.PostByKey(key); again.ID != p.ID || again.Channel != p.Channel {
				t.Errorf("%s waits twice or anew", key)
			}
		}
		mark, found, err := tx.NewestAnswer("react:38:")
		if err != nil || !found || mark.Key != "react:38:42:none" {
			t.Errorf("the mark that stands last on 38 is %q: %v", mark.Key, err)
		}
		return err
	})
}

// TestPostsStandBehindWhatTheyAnswer: what a late answer to an early message says
// goes out before what was said of later ones, news of our own behind all.
func TestPostsStandBehindWhatTheyAnswer(t *testing.T) {
	db := fresh(t)
	for i := range 3 {
		say(t, db, fmt.Sprint("field/", i), "92 rear tap")
	}
	write(t, db, func(tx *Tx) error {
		for _, key := range []string{"reply:2", "alert:1:1", "reply:3", "alert:1:2", "reply:1", "reply:3:1", "react:2:2:stored", "reply:2", "alert:1:2", "remind:ana:1"} {
			if err := tx.Queue(Post{Key: key, Channel: "field", Body: []byte(`{}`)}); err != nil {
				return err
			}
		}
		return nil
	})
	got := fmt.Sprint(lines(t, db.write, `SELECT key FROM outbox ORDER BY id`))
	if want := "[[reply:1] [reply:2] [react:2:2:stored] [alert:1:1] [reply:3] [alert:1:2] [reply:3:1] [remind:ana:1]]"; got != want {
		t.Errorf("they stand as %s", got)
	}
}

func TestARecordOfTheFirstVersionLosesNothing(t *testing.T) {
	file := older(t, 1)
	before := raw(t, file)
	was := content(t, before, 1)
	before.Close()
	for table, n := range map[string]int{"message": 25, "site": 10, "report": 13, "reading": 13, "correction": 2, "follow_up": 20, "alert": 5, "outbox": 65, "question": 1} {
		if len(was[table]) != n {
			t.Errorf("the kept record has %d rows in %s, want %d", len(was[table]), table, n)
		}
	}
	db, err := Open(t.Context(), file)
	if err != nil {
		t.Fatal(err)
	}
	defer db.Close()
	if v, err := version(t.Context(), db.read); err != nil || v != len(steps()) {
		t.Errorf("it is of version %d (%v), the newest is %d", v, err, len(steps()))
	}
	if faults, err := db.Integrity(t.Context()); err != nil || len(faults) > 0 {
		t.Errorf("%v %v", faults, err)
	}
	if on := lines(t, db.write, "PRAGMA foreign_keys"); on[0] != "[1]" {
		t.Errorf("references are not looked at any more: %s", on)
	}
	// 9 Elm St and 18 Birch Ln are where somebody read the main.
	if main := lines(t, db.write, `SELECT line FROM site WHERE main = 1 ORDER BY id`); fmt.Sprint(main) != "[[9 Elm St] [18 Birch Ln]]" {
		t.Errorf("the main was read at %v", main)
	}
	err = db.Read(t.Context(), func(tx *Tx) error {
		main, err := tx.StreetReadings("birch", assess.Date{Year: 2026, Month: 1, Day: 1}, 0, 5)
		if err != nil || len(main) != 1 || main[0].PSI != 118 {
			t.Errorf("the main on Birch: %+v %v", main, err)
		}
		for words, want := range map[string]int64{"quench bench": 3, "18 birch mended": 0, "llave trasera": 20, "laundry maple": 0, "cedar rear": 25} {
			found, err := tx.Search(words, 5)
			if err != nil {
				return err
			}
			if want == 0 && len(found) > 0 || want > 0 && (len(found) != 1 || found[0].ID != want) {
				t.Errorf("%q finds %+v, want message %d", words, found, want)
			}
		}
		m, _, err := tx.Message(4)
		if len(m.Links) != 2 {
			t.Errorf("the pictures: %q", m.Links)
		}
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	// It goes on from there.
	message, site := report(t, db, "field/new", "ana", "9 Elm St", "61 laundry, heater idle, quenchwater")
	if message != 26 || site != 3 {
		t.Errorf("a new message is %d at house %d", message, site)
	}
	write(t, db, func(tx *Tx) error {
		if found, err := tx.Search("quenchwater", 5); err != nil || len(found) != 1 {
			t.Errorf("the new message is not found: %v", err)
		}
		// A report goes with its readings; 11 was the number of a correction.
		_, err := tx.DropReport(13)
		return err
	})
	if left := lines(t, db.write, `SELECT psi FROM reading WHERE site = 7 ORDER BY psi`); fmt.Sprint(left) != "[[61] [63]]" {
		t.Errorf("at 18 Birch Ln are left %v", left)
	}
	if faults, err := db.Integrity(t.Context()); err != nil || len(faults) > 0 {
		t.Errorf("%v %v", faults, err)
	}
}

// TestDamageIsToldAfterAStepToo: bringing a record up to date must not sign
// what was damaged before.
func TestDamageIsToldAfterAStepToo(t *testing.T) {
	file := older(t, 1)
	before := raw(t, file)
	for _, s := range []string{
		`UPDATE message SET text = replace(text, '66', '68') WHERE id = 11`,
		`DROP TRIGGER report_out`,
		`DELETE FROM report WHERE id = 6`,
		`CREATE TRIGGER report_out AFTER DELETE ON report BEGIN DELETE FROM reading WHERE site = old.site AND day = old.day AND report = old.id; END`,
	} {
		if _, err := before.Exec(s); err != nil {
			t.Fatal(err)
		}
	}
	before.Close()
	db, err := Open(t.Context(), file)
	if err != nil {
		t.Fatal(err)
	}
	defer db.Close()
	faults, err := db.Integrity(t.Context())
	if err != nil || len(faults) != 2 || !strings.Contains(faults[0], "message 11 is not what was written") || !strings.Contains(faults[1], "not filed with it") {
		t.Errorf("%q %v", faults, err)
	}
	if n := lines(t, db.write, `SELECT count(*) FROM reading`); n[0] != "[13]" {
		t.Errorf("readings: %s", n)
	}
}

// statements are those of a step, each with its semicolon.
func statements(step string) (list []string) {
	from := ""
	for line := range strings.Lines(step) {
		from += line
		code, _, _ := strings.Cut(line, " --")
		if strings.HasPrefix(line, "--") || !strings.HasSuffix(strings.TrimSpace(code), ";") || strings.Contains(from, " BEGIN\n") && !strings.HasPrefix(line, "END;") {
			continue
		}
		list = append(list, from)
		from = ""
	}
	return list
}

func TestAStepCutOffAnywhereLeavesTheVersionBefore(t *testing.T) {
	eachOlder(t, func(t *testing.T, old int) {
		file := older(t, old)
		db := raw(t, file)
		was, tables := content(t, db, old), lines(t, db, `SELECT name, sql FROM sqlite_schema ORDER BY name`)
		parts := statements(steps()[old])
		if len(parts) < 15 {
			t.Fatalf("only %d statements", len(parts))
		}
		for n := range len(parts) + 1 {
			if testing.Short() && n%5 != 0 {
				continue
			}
			cut := strings.Join(parts[:n], "") + "SELECT nothing FROM nowhere;"
			if err := migrate(t.Context(), db, append(slices.Clone(steps()[:old]), cut)); err == nil || !strings.Contains(err.Error(), fmt.Sprint("version ", old+1)) {
				t.Fatalf("cut off after statement %d: %v", n, err)
			}
			if v, err := version(t.Context(), db); err != nil || v != old {
				t.Fatalf("cut off after statement %d it is of version %d: %v", n, v, err)
			}
			if now := lines(t, db, `SELECT name, sql FROM sqlite_schema ORDER BY name`); !slices.Equal(now, tables) {
				t.Fatalf("cut off after statement %d the tables are %v", n, now)
			}
			for table, rows := range content(t, db, old) {
				if !slices.Equal(rows, was[table]) {
					t.Fatalf("cut off after statement %d, %s is %v", n, table, rows)
				}
			}
		}
		if on := lines(t, db, "PRAGMA foreign_keys"); on[0] != "[1]" {
			t.Errorf("references are not looked at any more: %s", on)
		}
		if err := migrate(t.Context(), db, steps()); err != nil {
			t.Errorf("at last: %v", err)
		}
	})
}

// TestAMachineThatStopsWithinAStep takes the files as they lie on the disk in
// the middle of a step, after each of its statements, and opens them.
func TestAMachineThatStopsWithinAStep(t *testing.T) {
	eachOlder(t, stopsWithinAStep)
}

func stopsWithinAStep(t *testing.T, old int) {
	file := older(t, old)
	db := raw(t, file)
	was := content(t, db, old)
	parts := statements(steps()[old])
	var left []string // the files, as the machine left them
	err := on(t.Context(), db, func(w *wire) error {
		if err := errors.Join(w.c.RegisterFunc("sum_1", sum1, true), w.c.RegisterFunc("sum_2", sum2, true)); err != nil {
			return err
		}
		for _, s := range []string{"PRAGMA foreign_keys = OFF", "PRAGMA cache_size = 1", "BEGIN IMMEDIATE"} { // pages go to the disk at once
			if _, _, err := w.run(s, nil); err != nil {
				return err
			}
		}
		for i, p := range parts {
			if _, _, err := w.run(p, nil); err != nil {
				return err
			}
			if i%8 != 7 && i < len(parts)-1 {
				continue
			}
			as := filepath.Join(t.TempDir(), "record.db")
			for _, tail := range []string{"", "-wal"} {
				body, err := os.ReadFile(file + tail)
				if err == nil {
					err = os.WriteFile(as+tail, body, 0o600)
				}
				if err != nil {
					return err
				}
			}
			left = append(left, as)
		}
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
	reached := map[int]int64{3: 32_000, 4: 20_000, 5: 16_000}[old] // these make only a table or two anew
	if reached == 0 {
		reached = 100_000
	}
	if log, err := os.Stat(left[len(left)-1] + "-wal"); err != nil || log.Size() < reached {
		t.Fatalf("nothing of the step has reached the disk: %v, %d bytes", err, log.Size())
	}
	for i, as := range left {
		again, err := Open(t.Context(), as)
		if err != nil {
			t.Fatalf("stopped at %d: %v", i, err)
		}
		for table, rows := range content(t, again.write, len(steps())) {
			if !slices.Equal(rows, was[table]) {
				t.Errorf("stopped at %d, %s is %v", i, table, rows)
			}
		}
		if faults, err := again.Integrity(t.Context()); err != nil || len(faults) > 0 {
			t.Errorf("stopped at %d: %v %v", i, faults, err)
		}
		again.Close()
	}
}

func TestAStepMayLeaveNoRowWithoutWhatItRefersTo(t *testing.T) {
	file := older(t, 1)
	db := raw(t, file)
	if err := migrate(t.Context(), db, []string{"", `DELETE FROM message WHERE id = 4;`}); err == nil || !strings.Contains(err.Error(), "refer") {
		t.Errorf("%v", err)
	}
	if n := lines(t, db, `SELECT count(*) FROM message`); n[0] != "[25]" {
		t.Errorf("%s messages are left", n)
	}
}

// TestAnOlderRecordIsNotReadAsANewOne: a reader changes nothing, so it cannot
// bring the record up to date, and an older one means other things.
func TestAnOlderRecordIsNotReadAsANewOne(t *testing.T) {
	file := older(t, 1)
	if _, err := OpenReader(t.Context(), file); !errors.Is(err, ErrOlder) {
		t.Errorf("%v, want ErrOlder", err)
	}
	db := fresh(t)
	if err := db.Backup(t.Context(), file, nil); err != nil {
		t.Errorf("a new backup in the place of an older version's: %v", err)
	}
	if err := Verify(t.Context(), file); err != nil {
		t.Error(err)
	}
}

//go:build unix

package desk_test

import (
	"context"
	"database/sql"
	"fmt"
	"path/filepath"
	"slices"
	"sync"
	"sync/atomic"
	"syscall"
	"testing"
	"time"

	"lazyhand/bot/desk"
)

// What a message costs until it is safe on the disk, against the least that
// such a thing can cost: one row inserted by the same driver with the same
// pragmas, a commit each. Run both in one go, on the disk that the record will
// have (TMPDIR chooses it):
//
//	go test ./bot/desk -run none -bench Durable -benchtime 3s

// BenchmarkDurableRow is one row, one commit.
func BenchmarkDurableRow(b *testing.B) {
	row := oneRow(b)
	defer processor(b)()
	for b.Loop() {
		row()
	}
}

// oneRow returns what keeps one row more.
func oneRow(b *testing.B) func() {
	db, err := sql.Open("sqlite3", "file:"+filepath.Join(b.TempDir(), "row.db")+"?_journal_mode=WAL&_synchronous=FULL&_txlock=immediate&_stmt_cache_size=16")
	if err != nil {
		b.Fatal(err)
	}
	b.Cleanup(func() { db.Close() })
	db.SetMaxOpenConns(1)
	if _, err := db.Exec("CREATE TABLE row (id INTEGER PRIMARY KEY, key TEXT, text TEXT)"); err != nil {
		b.Fatal(err)
	}
	n := 0
	more := func() {
		n++
		if _, err := db.Exec("INSERT INTO row (key, text) VALUES (?, ?)", n, "92 rear tap, heater idle, 123 Elm St"); err != nil {
			b.Fatal(err)
		}
	}
	for range 1200 { // SQLite folds the log in at 1000 pages
		more()
	}
	return more
}

// BenchmarkDurableTurns keeps rows, messages and bursts of messages by turns, so
// that a disk's moods meet all: a message's rate in that of rows, in percent, on
// the average and of the quickest twentieth of each, and that of a message in a
// burst.
func BenchmarkDurableTurns(b *testing.B) {
	const turn, burst = 20, 64
	row, s, n := oneRow(b), benchShop(b), warm
	var rows, takes, bursts []time.Duration
	for b.Loop() {
		for range turn {
			start := time.Now()
			row()
			rows = append(rows, time.Since(start))
		}
		for range turn {
			start := time.Now()
			if err := s.desk.Take(context.Background(), benchMessage(n)); err != nil {
				b.Fatal(err)
			}
			takes = append(takes, time.Since(start))
			n++
		}
		start := time.Now()
		var all sync.WaitGroup
		for range burst {
			m := benchMessage(n)
			n++
			all.Go(func() {
				if err := s.desk.Take(context.Background(), m); err != nil {
					b.Error(err)
				}
			})
		}
		all.Wait()
		bursts = append(bursts, time.Since(start)/burst)
	}
	mean := func(list []time.Duration) (sum time.Duration) {
		for _, d := range list {
			sum += d
		}
		return sum / time.Duration(len(list))
	}
	slices.Sort(rows)
	slices.Sort(takes)
	quick := len(rows) / 20
	b.ReportMetric(100*float64(mean(rows))/float64(mean(takes)), "%rate")
	b.ReportMetric(100*float64(mean(rows))/float64(mean(bursts)), "%burst")
	b.ReportMetric(100*float64(rows[quick])/float64(takes[quick]), "%quick")
	b.ReportMetric(float64(rows[quick]), "quick-row-ns")
	b.ReportMetric(float64(takes[quick]), "quick-take-ns")
}

func benchShop(b *testing.B) *shop {
	s := newShop(b, b.TempDir(), desk.Options{})
	b.Cleanup(func() { s.db.Close() })
	for n := range warm {
		if err := s.desk.Take(context.Background(), benchMessage(n)); err != nil {
			b.Fatal(err)
		}
	}
	return s
}

// warm is how many messages a shop of the benchmarks has taken before: after 400
// the log is folded in.
const warm = 500

func benchMessage(n int) desk.Message {
	at := time.Date(2026, 6, 15, 8, 0, 0, 0, time.UTC).Add(time.Duration(n) * 17 * time.Second)
	ts := fmt.Sprintf("%d.%06d", at.Unix(), n)
	return desk.Message{Key: "field/" + ts, Channel: "field", TS: ts, Thread: ts, Author: fmt.Sprint("U", n%12), Name: fmt.Sprint("tech ", n%12), At: at,
		Text: fmt.Sprintf("%d rear tap, heater idle, %d %s St", 45+n*7%40, 100+n%80, streets[n/80%len(streets)])}
}

var streets = []string{"Elm", "Oak", "Alder", "Maple", "Cedar", "Birch", "Walnut", "Chestnut", "Spruce", "Hickory", "Juniper", "Laurel", "Magnolia", "Poplar",
	"Sycamore", "Willow", "Aspen", "Hazel", "Linden", "Cypress"}

// processor reports the processor's time an operation takes, which other work
// on the machine moves less than the time on the wall.
func processor(b *testing.B) func() {
	used := func() time.Duration {
		var u syscall.Rusage
		if err := syscall.Getrusage(syscall.RUSAGE_SELF, &u); err != nil {
			b.Fatal(err)
		}
		return time.Duration(u.Utime.Nano() + u.Stime.Nano())
	}
	start := used()
	return func() { b.ReportMetric(float64((used()-start).Nanoseconds())/float64(b.N), "cpu-ns/op") }
}

// BenchmarkDurableTake is a report of a tech: kept, understood, filed, judged,
// answered; one commit.
func BenchmarkDurableTake(b *testing.B) {
	s := benchShop(b)
	defer processor(b)()
	for n := warm; b.Loop(); n++ {
		if err := s.desk.Take(context.Background(), benchMessage(n)); err != nil {
			b.Fatal(err)
		}
	}
}

// BenchmarkDurableBurst is the same when many come at once: they share commits.
func BenchmarkDurableBurst(b *testing.B) {
	s := benchShop(b)
	var n atomic.Int64
	n.Store(warm)
	b.SetParallelism(32)
	defer processor(b)()
	b.ResetTimer()
	b.RunParallel(func(pb *testing.PB) {
		for pb.Next() {
			if err := s.desk.Take(context.Background(), benchMessage(int(n.Add(1)))); err != nil {
				b.Error(err)
				return
			}
		}
	})
}

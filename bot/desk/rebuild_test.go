package desk_test

import (
	"context"
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"pgregory.net/rapid"

	"lazyhand/assess"
	"lazyhand/bot/desk"
	"lazyhand/intents"
	"lazyhand/store"
)

// shop is a desk on a record of its own, for tests that look into the record.
type shop struct {
	t    fataler
	db   *store.DB
	desk *desk.Desk
	now  time.Time
	n    int
}

type fataler interface {
	Helper()
	Fatal(...any)
	Fatalf(string, ...any)
}

func newShop(t fataler, dir string, opt desk.Options) *shop {
	t.Helper()
	db, err := store.Open(context.Background(), filepath.Join(dir, "record.db"))
	if err != nil {
		t.Fatal(err)
	}
	s := &shop{t: t, db: db, now: time.Date(2026, 6, 15, 8, 0, 0, 0, time.UTC)}
	s.open(opt)
	return s
}

// open puts a desk with other settings on the same record.
func (s *shop) open(opt desk.Options) {
	s.t.Helper()
	opt.Field, opt.Dispatch, opt.Team = []string{"field"}, "dispatch", "team"
	d, err := desk.New(s.db, opt)
	if err != nil {
		s.t.Fatal(err)
	}
	s.desk = d
}

// says lets somebody write in the field channel and returns the message.
func (s *shop) says(who, text string) desk.Message {
	s.t.Helper()
	s.n++
	s.now = s.now.Add(time.Minute)
	ts := fmt.Sprintf("%d.%06d", s.now.Unix(), s.n)
	m := desk.Message{Key: "field/" + ts, Channel: "field", TS: ts, Thread: ts, Author: who, Name: who, At: s.now, Text: text}
	s.take(m)
	return m
}

func (s *shop) take(m desk.Message) {
	s.t.Helper()
	if err := s.desk.Take(context.Background(), m); err != nil {
		s.t.Fatal(err)
	}
}

func (s *shop) edits(m desk.Message, text string) desk.Message {
	s.t.Helper()
	s.n++
	s.now = s.now.Add(time.Minute)
	e := m
	e.Kind, e.About, e.Text, e.At = store.Edited, m.Key, text, s.now
	e.Key = fmt.Sprintf("%s#edited:%d.%06d", m.Key, s.now.Unix(), s.n)
	s.take(e)
	return e
}

func (s *shop) deletes(m desk.Message) {
	s.t.Helper()
	s.now = s.now.Add(time.Minute)
	d := m
	d.Kind, d.About, d.Text, d.At, d.Key = store.Deleted, m.Key, "", s.now, m.Key+"#deleted"
	s.take(d)
}

func (s *shop) presses(who, button, value string) {
	s.t.Helper()
	s.n++
	s.now = s.now.Add(time.Minute)
	s.take(desk.Message{Key: fmt.Sprintf("dispatch/%d#pressed", s.n), Kind: store.Pressed, Channel: "dispatch", TS: fmt.Sprint(s.n), Author: who, Name: who,
		At: s.now, Button: button, Value: value})
}

// derived is all that follows from the messages, as text.
func (s *shop) derived() string {
	s.t.Helper()
	var out strings.Builder
	err := s.db.Read(context.Background(), func(tx *store.Tx) error {
		for id := int64(1); id < 200; id++ {
			m, found, err := tx.Message(id)
			if err != nil {
				return err
			}
			if found {
				fmt.Fprintf(&out, "message %d %s site %d by %d %s %s\n", id, m.State, m.Site, m.By, m.Error, m.Frame)
			}
			site, err := tx.Site(id)
			if err != nil {
				continue
			}
			fmt.Fprintf(&out, "house %d is %d %q %q %q\n", id, site.ID, site.Line, site.Town, site.Postcode)
			if site.ID != id {
				continue
			}
			reports, err := tx.Reports(id)
			if err != nil {
				return err
			}
			for _, r := range reports {
				fmt.Fprintf(&out, "  report of %d at %d on %s by %s\n", r.Message, r.Site, r.Day, r.Author)
			}
			rows, err := tx.ReadingsOfStreet(site.Street(), assess.Date{}, 1000)
			if err != nil {
				return err
			}
			for _, r := range rows {
				fmt.Fprintf(&out, "  reading %+v\n", r)
			}
			open, err := tx.OpenFollowUps(id)
			if err != nil {
				return err
			}
			for _, f := range open {
				fmt.Fprintf(&out, "  follow-up %+v\n", f)
			}
			list, err := tx.Equipment(id)
			if err != nil {
				return err
			}
			for _, e := range list {
				fmt.Fprintf(&out, "  equipment %s %v %q %q %q %v %s\n", e.Item, e.Absent, e.Installed, e.Serviced, e.Ended, e.Failed, e.Facts)
			}
		}
		for id := int64(1); id < 100; id++ {
			a, found, err := tx.Alert(id)
			if err != nil {
				return err
			}
			if found {
				fmt.Fprintf(&out, "alert %+v\n", a)
			}
		}
		worst, err := tx.WorstSites(100)
		fmt.Fprintf(&out, "worst %+v\n", worst)
		return err
	})
	if err != nil {
		s.t.Fatal(err)
	}
	return out.String()
}

// rebuild rebuilds and returns what was told to be different.
func (s *shop) rebuild(dry bool) (desk.Rebuilt, []store.Change) {
	s.t.Helper()
	var list []store.Change
	r, err := s.desk.Rebuild(context.Background(), dry, nil, func(c store.Change) error {
		list = append(list, c)
		return nil
	})
	if err != nil {
		s.t.Fatal(err)
	}
	return r, list
}

// quickDir is a folder in memory where there is one, for tests that make many
// records and do not test the disk.
func quickDir(t *testing.T) string {
	t.Helper()
	if dir, err := os.MkdirTemp("/dev/shm", "lazyhand-test-*"); err == nil {
		t.Cleanup(func() { os.RemoveAll(dir) })
		return dir
	}
	return t.TempDir()
}

// checks sets how many cases rapid tries, unless the command line says so.
func checks(t *testing.T, n int) {
	t.Helper()
	given := false
	flag.Visit(func(f *flag.Flag) { given = given || f.Name == "rapid.checks" })
	if testing.Short() {
		n = n/5 + 1
	}
	if !given {
		if err := flag.Set("rapid.checks", fmt.Sprint(n)); err != nil {
			t.Fatal(err)
		}
	}
}

// TestRebuildingWithTheSameParserChangesNothing plays random days of a shop.
func TestRebuildingWithTheSameParserChangesNothing(t *testing.T) {
	dir := quickDir(t)
	checks(t, 60)
	n := 0
	rapid.Check(t, func(r *rapid.T) {
		n++
		s := newShop(r, filepath.Join(dir, fmt.Sprint(n)), desk.Options{})
		defer s.db.Close()
		var said []desk.Message
		who := rapid.SampledFrom([]string{"ana", "ben"})
		text := rapid.SampledFrom([]string{
			"92 rear tap, heater idle, 123 Elm St", "61 laundry, heater idle, 123 Elm", "115 at the meter, 123 Elm St",
			"PRV 2006, dark water, 123 Elm St", "84 rear, heater idle", "12 Alder St", "make it 82", "scratch that",
			"replaced the PRV at 12 Alder St, now 60 laundry, heater idle", "160 rear bibb, heater idle, 9 Oak Ct", "70 rear bibb, heater idle, 9 Oak Ave",
			"recheck 12 Alder St in 2 weeks", "done 12 Alder St", "history 123 Elm", "lunch?", "9 Oak",
			"no expansion tank, 50 gal gas heater, 12 Alder St", "yesterday 77 rear bibb, heater idle, 12 Alder St",
			"actually 71", "sorry, front not rear", "66 rear at elm, heater idle", "front 92 or 29, heater idle, 12 Alder St", "the first", "yes", "no", "wrong house, 14 Alder St",
			"wrong house", "62 laundry, heater idle, 123 Elm Ave", "not the same house", "recheck in 2 weeks",
		})
		for range rapid.IntRange(1, 14).Draw(r, "messages") {
			switch rapid.IntRange(0, 9).Draw(r, "what") {
			case 0:
				if len(said) > 0 {
					s.edits(rapid.SampledFrom(said).Draw(r, "edited"), text.Draw(r, "anew"))
				}
			case 1:
				if len(said) > 0 {
					s.deletes(rapid.SampledFrom(said).Draw(r, "deleted"))
				}
			case 2:
				s.presses(who.Draw(r, "presser"), rapid.SampledFrom([]string{"claim", "close", "done"}).Draw(r, "button"), fmt.Sprint(rapid.IntRange(1, 3).Draw(r, "number")))
			default:
				said = append(said, s.says(who.Draw(r, "who"), text.Draw(r, "text")))
			}
		}
		before := s.derived()
		r.Log(before)
		if _, changes := s.rebuild(true); len(changes) > 0 {
			r.Fatalf("shown to change: %+v", changes)
		}
		if after := s.derived(); after != before {
			r.Fatalf("a rebuild that was only shown changed:\n%s\nto:\n%s", before, after)
		}
		if _, changes := s.rebuild(false); len(changes) > 0 {
			r.Fatalf("changed: %+v", changes)
		}
		if after := s.derived(); after != before {
			r.Fatalf("changed:\n%s\nto:\n%s", before, after)
		}
	})
}

func TestABetterParserReadsOldMessagesAnew(t *testing.T) {
	s := newShop(t, t.TempDir(), desk.Options{})
	defer s.db.Close()
	s.says("ana", "92 rear tap, heater idle, 123 Elm St")
	s.says("ana", "make it 93")
	s.says("ben", "61 mangle, heater idle, 12 Alder St") // "mangle" is no word yet
	before := s.derived()
	if strings.Contains(before, `"point":"laundry"`) {
		t.Fatalf("the word is known already:\n%s", before)
	}
	// The shop tells what it means by some words: that is a better parser.
	s.open(desk.Options{Words: []intents.Word{{Says: "mangle", Means: "laundry"}, {Says: "rear tap", Means: "street"}}})
	shown, changes := s.rebuild(true)
	if shown.Changes == 0 || len(changes) != shown.Changes {
		t.Fatalf("nothing is shown to change: %+v", shown)
	}
	if s.derived() != before {
		t.Error("a rebuild that was only shown changed the record")
	}
	done, _ := s.rebuild(false)
	if done.Changes != shown.Changes || done.Messages != 3 || done.Failed != 0 {
		t.Errorf("shown %+v, done %+v", shown, done)
	}
	after := s.derived()
	if !strings.Contains(after, `"psi":61,"point":"laundry"`) {
		t.Errorf("the message was not read anew:\n%s", after)
	}
	if !strings.Contains(after, `"psi":93,"point":"rear_bibb"`) || done.Kept != 1 {
		t.Errorf("the correction does not stand:\n%s", after)
	}
	if again, changes := s.rebuild(false); again.Changes != 0 {
		t.Errorf("a second rebuild changes more: %+v", changes)
	}
}

func TestARebuildKeepsWhatPeopleDecided(t *testing.T) {
	s := newShop(t, t.TempDir(), desk.Options{Words: []intents.Word{{Says: "wibble", Means: "rear_bibb"}}})
	defer s.db.Close()
	s.says("ana", "160 wibble, heater idle, 123 Elm St")
	s.says("ben", "165 wibble, heater idle, 9 Oak Ct")
	s.presses("dora", "claim", "1")
	// Without the word both readings are no longer known to be fair.
	s.open(desk.Options{})
	_, changes := s.rebuild(false)
	after := s.derived()
	if !strings.Contains(after, "State:claimed") || !strings.Contains(after, "Owner:dora") {
		t.Errorf("the claim was lost (%+v):\n%s", changes, after)
	}
	if strings.Contains(after, "State:raised") {
		t.Errorf("an alert that nobody touched and that no longer follows is still open:\n%s", after)
	}
}

// Words that take a report back are about its house, also where their writer has just
// put another one right.
func TestAnUndoIsFiledWhereItsReportWas(t *testing.T) {
	s := newShop(t, t.TempDir(), desk.Options{})
	defer s.db.Close()
	s.says("ben", "61 laundry, heater idle, 123 Elm")
	report := s.says("ana", "160 rear bibb, heater idle, 9 Oak Ct")
	righted := s.says("ana", "make it 82")
	s.edits(righted, "yes")
	s.edits(report, "64 rear bibb, heater idle, 123 Elm")
	s.says("ana", "scratch that")
	before := s.derived()
	if !strings.Contains(before, `message 6 taken site 1 by 0  {"site":null,"statements":[{"kind":"ask","about":"undo"}]}`) {
		t.Errorf("the undo is filed elsewhere:\n%s", before)
	}
	if _, changes := s.rebuild(false); len(changes) > 0 {
		t.Errorf("a rebuild makes different: %+v", changes)
	}
	if after := s.derived(); after != before {
		t.Errorf("a rebuild changes\n%s\nto\n%s", before, after)
	}
}

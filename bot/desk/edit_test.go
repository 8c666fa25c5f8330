package desk_test

import (
	"fmt"
	"strings"
	"testing"
	"time"

	"lazyhand/bot/desk"
	"lazyhand/store"
)

// readings are those that stand on record, a line each.
func (s *shop) readings() string {
	s.t.Helper()
	var out []string
	s.read(func(tx *store.Tx) error {
		for id := int64(1); ; id++ {
			site, err := tx.Site(id)
			if err != nil {
				return nil
			}
			list, err := tx.ReadingsOf(id)
			if err != nil {
				return err
			}
			for _, r := range list {
				out = append(out, fmt.Sprintf("%s %g %s", site.Line, r.PSI, r.Point))
			}
		}
	})
	return strings.Join(out, "; ")
}

// TestAnEditSaysWhatItSaysWhereItsMessageStands plays conversations in which a message is
// edited after others were said; the platform tells an edit with its message's time.
func TestAnEditSaysWhatItSaysWhereItsMessageStands(t *testing.T) {
	tests := []struct {
		name   string
		said   []string
		edited int // which of them, from 1
		anew   string
		then   string
		want   string
	}{
		{"what a message put right, its edit puts right", []string{"62 rear bibb, heater idle, 123 Elm St", "make it 63", "70 laundry, heater idle, 9 Oak Ct"}, 2, "make it 64", "",
			"123 Elm St 64 rear_bibb; 9 Oak Ct 70 laundry"},
		{"what a message took back, its edit takes back", []string{"62 rear bibb, heater idle, 123 Elm St", "70 laundry, heater idle, 9 Oak Ct", "scratch that", "71 laundry, heater idle, 12 Alder St"}, 3, "scratch that, sorry", "",
			"123 Elm St 62 rear_bibb; 12 Alder St 71 laundry"},
		{"nor does it put another one right", []string{"62 rear bibb, heater idle, 123 Elm St", "70 laundry, heater idle, 9 Oak Ct", "scratch that"}, 3, "make it 64", "",
			"123 Elm St 62 rear_bibb"},
		{"an undo that was no undo yet takes back what was said before it", []string{"62 rear bibb, heater idle, 123 Elm St", "hm", "70 laundry, heater idle, 9 Oak Ct"}, 2, "scratch that", "",
			"9 Oak Ct 70 laundry"},
		{"the same tap is that of the reading before", []string{"62 rear bibb, heater idle, 123 Elm St", "adjusted the prv, now 64", "58 laundry, heater idle"}, 2, "adjusted the prv, now 65", "",
			"123 Elm St 62 rear_bibb; 123 Elm St 65 rear_bibb; 123 Elm St 58 laundry"},
		{"the gauge is where it was said to be", []string{"62 rear bibb, heater idle, 123 Elm St", "gauge on the laundry", "says 71"}, 3, "says 72", "",
			"123 Elm St 62 rear_bibb; 123 Elm St 72 laundry"},
		{"who has gone on stays there", []string{"62 rear bibb, heater idle, 123 Elm St", "70 laundry, heater idle, 9 Oak Ct"}, 1, "63 rear bibb, heater idle, 123 Elm St", "61 rear bibb",
			"123 Elm St 63 rear_bibb; 9 Oak Ct 70 laundry; 9 Oak Ct 61 rear_bibb"},
		{"who was never there does not stay there", []string{"62 rear bibb, heater idle, 123 Elm St", "make it 63"}, 1, "63 rear bibb, heater idle, 14 Alder St", "61 laundry, heater idle",
			"14 Alder St 63 rear_bibb; 14 Alder St 61 laundry"},
		{"the answer to a question gives another house", []string{"62 rear bibb, heater idle", "12 Alder St"}, 2, "14 Alder St", "61 laundry, heater idle",
			"14 Alder St 62 rear_bibb; 14 Alder St 61 laundry"},
		{"what was asked about is answered by the edit", []string{"62 rear bibb, heater idle"}, 1, "62 rear bibb, heater idle, 12 Alder St", "14 Alder St\n61 laundry, heater idle",
			"12 Alder St 62 rear_bibb; 14 Alder St 61 laundry"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			s := newShop(t, t.TempDir(), desk.Options{})
			defer s.db.Close()
			var list []desk.Message
			for _, text := range tt.said {
				list = append(list, s.says("ana", text))
			}
			m := list[tt.edited-1]
			m.Kind, m.About, m.Text, m.Key = store.Edited, m.Key, tt.anew, m.Key+"#edited:1"
			s.take(m)
			for text := range strings.SplitSeq(tt.then, "\n") {
				if text != "" {
					s.says("ana", text)
				}
			}
			if got := s.readings(); got != tt.want {
				t.Errorf("on record are %q, want %q", got, tt.want)
			}
			s.sameRebuilt()
		})
	}
}

// A report that is put right in its own thread does not bring its writer back to its house.
func TestWhoHasGoneOnStaysThereWhenAnOlderReportIsPutRight(t *testing.T) {
	s := newShop(t, t.TempDir(), desk.Options{})
	defer s.db.Close()
	first := s.says("ana", "62 rear bibb, heater idle, 123 Elm St")
	s.says("ana", "70 laundry, heater idle, 9 Oak Ct")
	s.answers("ana", first, "make it 63")
	s.says("ana", "61 rear bibb")
	if got, want := s.readings(), "123 Elm St 63 rear_bibb; 9 Oak Ct 70 laundry; 9 Oak Ct 61 rear_bibb"; got != want {
		t.Errorf("on record are %q, want %q", got, want)
	}
	s.sameRebuilt()
}

// answers lets somebody write in the thread of a message.
func (s *shop) answers(who string, m desk.Message, text string) desk.Message {
	s.t.Helper()
	s.n++
	s.now = s.now.Add(time.Minute)
	ts := fmt.Sprintf("%d.%06d", s.now.Unix(), s.n)
	a := desk.Message{Key: m.Channel + "/" + ts, Channel: m.Channel, TS: ts, Thread: m.Thread, Author: who, Name: who, At: s.now, Text: text}
	s.take(a)
	return a
}

// What was asked about a message that is deleted takes no answer any more.
func TestAQuestionGoesWithItsMessage(t *testing.T) {
	s := newShop(t, t.TempDir(), desk.Options{})
	defer s.db.Close()
	asked := s.says("ana", "62 rear bibb, heater idle")
	s.deletes(asked)
	s.says("ana", "14 Alder St")
	s.says("ana", "61 laundry, heater idle")
	if got, want := s.readings(), "14 Alder St 61 laundry"; got != want {
		t.Errorf("on record are %q, want %q", got, want)
	}
	s.sameRebuilt()
}

// A house that was never the right one is not in hand any more, however often its report
// was put right before that was said.
func TestTheHouseInHandGoesWithTheReportThatMovesOn(t *testing.T) {
	s := newShop(t, t.TempDir(), desk.Options{})
	defer s.db.Close()
	s.says("ana", "62 rear bibb, heater idle, 123 Elm St")
	s.says("ana", "make it 63")
	s.says("ana", "wrong house, 14 Alder St")
	s.says("ana", "61 laundry, heater idle")
	if got, want := s.readings(), "14 Alder St 63 rear_bibb; 14 Alder St 61 laundry"; got != want {
		t.Errorf("on record are %q, want %q", got, want)
	}
	s.sameRebuilt()
}

// A report taken back in words, and then worded anew, stands in its new words; not so when
// it was worded so before, or deleted since.
func TestAReportTakenBackMayBeWordedAnew(t *testing.T) {
	s := newShop(t, t.TempDir(), desk.Options{})
	defer s.db.Close()
	said := s.says("ana", "92 rear bibb, heater idle, 123 Elm St")
	early := said
	early.Kind, early.About, early.Text, early.Key = store.Edited, said.Key, "62 rear bibb, heater idle, 123 Elm St", fmt.Sprintf("%s#edited:%d.000000", said.Key, s.now.Unix()+1)
	s.says("ana", "scratch that")
	s.take(early)
	if got := s.readings(); got != "" {
		t.Errorf("by an edit that came late are on record %q", got)
	}
	s.edits(said, "72 rear bibb, heater idle, 123 Elm St")
	if got, want := s.readings(), "123 Elm St 72 rear_bibb"; got != want {
		t.Errorf("on record are %q, want %q", got, want)
	}
	s.sameRebuilt()
	s.deletes(said)
	s.edits(said, "73 rear bibb, heater idle, 123 Elm St")
	if got := s.readings(); got != "" {
		t.Errorf("after the deletion are on record %q", got)
	}
	s.sameRebuilt()
}

// A correction goes with its words: the report says again what it said before, unless it
// was put right since.
func TestACorrectionGoesWithItsWords(t *testing.T) {
	for _, anew := range []string{"", "lunch?"} {
		s := newShop(t, t.TempDir(), desk.Options{})
		first := s.says("ana", "92 rear bibb, heater idle, 123 Elm St")
		fix := s.answers("ana", first, "make it 62")
		fix2 := s.edits(fix, "make it 63")
		if a := s.stands(1); a.Open() {
			t.Errorf("with 63 psi the alert is %+v", a)
		}
		if anew == "" {
			s.deletes(fix)
		} else {
			s.edits(fix, anew)
		}
		if got, want := s.readings(), "123 Elm St 92 rear_bibb"; got != want {
			t.Errorf("after %q, then %q, on record are %q, want %q", fix2.Text, anew, got, want)
		}
		if a := s.stands(2); !a.Open() {
			t.Errorf("with 92 psi the alert is %+v", a)
		}
		again := s.answers("ana", first, "make it 64")
		s.answers("ana", first, "make it 65")
		s.deletes(again)
		if got, want := s.readings(), "123 Elm St 65 rear_bibb"; got != want {
			t.Errorf("put right since, on record are %q, want %q", got, want)
		}
		s.sameRebuilt()
		s.db.Close()
	}
}

package desk_test

import (
	"context"
	"errors"
	"fmt"
	"strings"
	"sync"
	"testing"
	"time"

	"lazyhand/assess"
	"lazyhand/bot/desk"
	"lazyhand/bot/desk/talktest"
	"lazyhand/store"
)

// at is an instant on the shop's wall clock.
func at(t *testing.T, s string) time.Time {
	t.Helper()
	zone, err := time.LoadLocation(talktest.Zone)
	if err != nil {
		t.Skip("no time zones on this machine")
	}
	v, err := time.ParseInLocation("2006-01-02 15:04", s, zone)
	if err != nil {
		t.Fatal(err)
	}
	return v
}

// say lets a person say something in the field channel.
func (w *world) say(t *testing.T, who, when, text string) {
	t.Helper()
	w.n++
	now := at(t, when)
	ts := fmt.Sprintf("%d.%06d", now.Unix(), w.n)
	if err := w.desk.Take(t.Context(), desk.Message{Key: "field/" + ts, Kind: store.Said, Channel: "field", TS: ts, Author: who, Name: who, At: now, Text: text}); err != nil {
		t.Fatal(err)
	}
}

func (w *world) hear(t *testing.T, when string) []string {
	t.Helper()
	said, err := w.Rest(t.Context(), at(t, when))
	if err != nil {
		t.Fatal(err)
	}
	var out []string
	for _, s := range said {
		if s.Post.Kind != desk.React {
			out = append(out, s.Post.Body.Lead)
		}
	}
	return out
}

// A house has one source: what the chat tells, the command line, plots and
// papers tell too.
func TestHouse(t *testing.T) {
	w := newWorld(t)
	w.say(t, "ana", "2026-06-01 10:00", "prv 2009, set to 60. 50 gal gas heater 2014. 72 laundry heater idle, 12 Alder St")
	w.say(t, "ana", "2026-06-15 10:00", "95 laundry, heater idle, 12 Alder St. recheck in 7 days")
	today := assess.Date{Year: 2026, Month: 6, Day: 15}
	h, err := w.desk.House(t.Context(), "12 alder street", today, "")
	if err != nil {
		t.Fatal(err)
	}
	if h.Site.Line != "12 Alder St" || len(h.Visits) != 2 || len(h.Readings) != 2 || h.Alert == nil || h.Band != [2]float64{40, 80} {
		t.Errorf("the house is %+v", h)
	}
	if h.Valve.InstalledYear == nil || *h.Valve.InstalledYear != 2009 || h.Heater.SizeGal == nil || *h.Heater.SizeGal != 50 || h.Heater.Fuel != assess.Gas {
		t.Errorf("valve %+v, heater %+v", h.Valve, h.Heater)
	}
	if h.Assessment.HousePSI == nil || *h.Assessment.HousePSI != 95 || len(h.FollowUps) == 0 {
		t.Errorf("judged %+v, follow-ups %+v", h.Assessment.HousePSI, h.FollowUps)
	}
	var none *desk.NoHouse
	if _, err := w.desk.House(t.Context(), "99 Nowhere Rd", today, ""); !errors.As(err, &none) {
		t.Errorf("a house that is not on record: %v", err)
	}
	w.say(t, "ana", "2026-06-15 10:05", "66 laundry, heater idle, 123 Elm St")
	w.say(t, "ana", "2026-06-15 10:06", "66 laundry, heater idle, 123 Elm Ave")
	var many *desk.ManyHouses
	if _, err := w.desk.House(t.Context(), "123 elm", today, ""); !errors.As(err, &many) || len(many.Lines) != 2 {
		t.Errorf("a line that two houses fit: %v", err)
	}
}

// Everybody sees their own at home; the shop's lists are the dispatcher's.
func TestHome(t *testing.T) {
	w := newWorld(t)
	w.say(t, "ana", "2026-06-15 10:00", "95 laundry, heater idle, 12 Alder St. recheck in 3 days")
	w.say(t, "ben", "2026-06-15 10:05", "66 laundry, heater idle, 40 Cedar Rd")
	now := at(t, "2026-06-15 11:00")
	ana, err := w.desk.Home(t.Context(), "ana", now)
	if err != nil {
		t.Fatal(err)
	}
	if len(ana.Reports.Lines) != 1 || !strings.Contains(ana.Reports.Lines[0], "12 Alder St: 95 psi") || len(ana.FollowUps.Lines) == 0 || ana.Alerts.Lines != nil {
		t.Errorf("ana sees %+v", ana)
	}
	dana, err := w.desk.Home(t.Context(), "dana", now)
	if err != nil {
		t.Fatal(err)
	}
	if len(dana.Alerts.Lines) != 1 || len(dana.Worst.Lines) != 1 || len(dana.Due.Lines) == 0 || dana.Reports.Lines != nil {
		t.Errorf("dana sees %+v", dana)
	}
	if out, err := w.desk.Home(t.Context(), "stranger", now); err != nil || out.FollowUps.Title != "" {
		t.Errorf("a stranger sees %+v, %v", out, err)
	}
}

// Two instances of the clock on one record say everything once.
func TestTwoClocksSayThingsOnce(t *testing.T) {
	w := newWorld(t)
	w.say(t, "ana", "2026-06-15 10:00", "95 laundry, heater idle, 12 Alder St. recheck in 7 days")
	w.say(t, "ana", "2026-06-15 10:05", "96 laundry, heater idle, 40 Cedar Rd. recheck in 7 days")
	w.hear(t, "2026-06-15 10:06")
	other, err := desk.New(w.db, talktest.Options(at(t, "2026-06-15 10:00").Location()))
	if err != nil {
		t.Fatal(err)
	}
	// Both look at the same moments, one after an outage, at once.
	for _, when := range []string{"2026-06-15 10:20", "2026-06-15 10:40", "2026-06-22 07:00", "2026-06-22 07:01"} {
		now := at(t, when)
		var wg sync.WaitGroup
		for _, d := range []*desk.Desk{w.desk, other} {
			for range 4 {
				wg.Go(func() {
					if err := d.Tick(t.Context(), now); err != nil {
						t.Error(err)
					}
				})
			}
		}
		wg.Wait()
	}
	heard := map[string]int{}
	for _, lead := range w.hear(t, "2026-06-22 07:02") {
		heard[lead]++
	}
	for lead, n := range heard {
		if n != 1 && !strings.HasPrefix(lead, "Nobody has taken this") && !strings.HasPrefix(lead, "Still nobody") {
			t.Errorf("said %d times: %s", n, lead)
		}
	}
	for _, want := range []string{"ana, follow-ups due: 3.", "Water pressure, 2026-06-15 to 2026-06-21"} {
		if heard[want] != 1 {
			t.Errorf("%q was said %d times of %v", want, heard[want], heard)
		}
	}
}

// What was missed is posted once and late while it makes sense; older, it is
// left to the next.
func TestAfterAnOutage(t *testing.T) {
	for _, tt := range []struct {
		back  string
		posts int // about the week to June 21
	}{
		{"2026-06-24 06:50", 1}, // 48 hours late
		{"2026-06-26 12:00", 0}, // the next one comes soon, and tells the same
	} {
		w := newWorld(t)
		w.say(t, "ana", "2026-06-15 10:00", "66 laundry, heater idle, 12 Alder St")
		w.hear(t, "2026-06-22 06:50")
		if err := w.Restart(); err != nil {
			t.Fatal(err)
		}
		n := 0
		for range 3 {
			for _, lead := range w.hear(t, tt.back) {
				if lead == "Water pressure, 2026-06-15 to 2026-06-21" {
					n++
				}
			}
		}
		if n != tt.posts {
			t.Errorf("back on %s: the week is told %d times, want %d", tt.back, n, tt.posts)
		}
	}
}

// The longest message is dealt with as any other: in a moment, and with no
// reply longer than a screen.
func TestAVeryLongMessage(t *testing.T) {
	w := newWorld(t)
	w.say(t, "ana", "2026-06-15 10:00", strings.Repeat("the customer told me about the weather again. ", 900)[:40_000])
	w.say(t, "ana", "2026-06-15 10:01", "92 rear tap, heater idle, 12 Alder St. "+strings.Repeat("x", 39_000))
	said, err := w.Rest(t.Context(), at(t, "2026-06-15 10:02"))
	if err != nil {
		t.Fatal(err)
	}
	for _, s := range said {
		if text := s.Post.Body.Text(); len(text) > 3000 {
			t.Errorf("a reply of %d characters: %.200s …", len(text), text)
		}
	}
}

// A message that makes the bot fail is kept, tried again and set aside, with an
// apology and a mark; what comes after it is dealt with.
func TestAPoisonedMessageIsSetAside(t *testing.T) {
	w := newWorld(t)
	w.say(t, "ana", "2026-06-15 10:00", "66 laundry, heater idle")
	err := w.db.Write(t.Context(), func(tx *store.Tx) error { // a question that no version can read
		q, _, err := tx.OpenQuestion("field", "", "ana", time.Time{})
		if err != nil {
			return err
		}
		q.Kind, q.Body = "which_site", []byte("{")
		return tx.AskQuestion(q)
	})
	if err != nil {
		t.Fatal(err)
	}
	w.say(t, "ana", "2026-06-15 10:01", "12 Alder St")
	for i := range 6 {
		w.hear(t, fmt.Sprintf("2026-06-15 10:0%d", 2+i))
	}
	var stuck []store.Message
	if err := w.db.Read(context.Background(), func(tx *store.Tx) (err error) {
		stuck, err = tx.Stuck(store.SetAside, 10)
		return err
	}); err != nil {
		t.Fatal(err)
	}
	if len(stuck) != 1 || stuck[0].Text != "12 Alder St" || stuck[0].Error == "" {
		t.Errorf("set aside: %+v", stuck)
	}
	marked, apologies := false, 0
	for _, s := range w.said {
		marked = marked || s.Post.Mark == desk.MarkSetAside
		if strings.HasPrefix(s.Post.Body.Lead, "Sorry") {
			apologies++
		}
	}
	if !marked || apologies != 1 {
		t.Errorf("marked %v, %d apologies", marked, apologies)
	}
	w.say(t, "ben", "2026-06-15 10:10", "66 laundry, heater idle, 40 Cedar Rd")
	if heard := w.hear(t, "2026-06-15 10:11"); len(heard) != 1 || !strings.HasPrefix(heard[0], "40 Cedar Rd") {
		t.Errorf("afterwards: %v", heard)
	}
}

// With enough replaced regulators on record the monthly post tells the shop's
// own curve, with its interval.
func TestTheLifeOfRegulators(t *testing.T) {
	w := newWorld(t)
	for i := range 14 {
		w.say(t, "ana", "2026-06-01 10:00", fmt.Sprintf("prv %d, 66 laundry, heater idle, %d Alder St", 2002+i, 10+i))
		w.say(t, "ana", "2026-06-02 10:00", fmt.Sprintf("replaced prv set to 60, now 61 laundry, heater idle, %d Alder St", 10+i))
	}
	w.hear(t, "2026-06-30 12:00")
	said, err := w.Rest(t.Context(), at(t, "2026-07-01 08:00"))
	if err != nil {
		t.Fatal(err)
	}
	for _, s := range said {
		text := s.Post.Body.Text()
		if !strings.HasPrefix(text, "How long our regulators last: 14 replaced, 14 serving.") {
			continue
		}
		if !strings.Contains(text, "Half have failed by 17.") || !strings.Contains(text, "They wear out") || strings.Count(text, " to ") < 3 {
			t.Errorf("it tells %s", text)
		}
		return
	}
	t.Error("nothing is told of the regulators' life")
}

// A picture that cannot be made keeps no word back.
func TestAPictureThatFails(t *testing.T) {
	w := newWorld(t)
	opt := talktest.Options(at(t, "2026-06-15 10:00").Location())
	opt.Painter = broken{}
	d, err := desk.New(w.db, opt)
	if err != nil {
		t.Fatal(err)
	}
	w.desk = d
	w.say(t, "ana", "2026-06-15 10:00", "66 laundry, heater idle, 12 Alder St")
	w.say(t, "ana", "2026-06-15 10:01", "trend 12 Alder St")
	if heard := w.hear(t, "2026-06-15 10:02"); len(heard) != 2 || !strings.HasPrefix(heard[1], "12 Alder St: too few") {
		t.Errorf("heard %v", heard)
	}
}

// broken is a painter whose brush is lost.
type broken struct{}

var errBrush = errors.New("the brush is lost")

func (broken) Plot(desk.House) (desk.Picture, error)   { return desk.Picture{}, errBrush }
func (broken) Week(desk.Summary) (desk.Picture, error) { return desk.Picture{}, errBrush }
func (broken) Sheet(desk.House) (desk.File, error)     { return desk.File{}, errBrush }

// A street whose supply has changed is told of in the week in which that was
// seen.
func TestAStreetThatChanged(t *testing.T) {
	w := newWorld(t)
	for i := range 12 {
		day, psi := fmt.Sprintf("2026-03-%02d 10:00", 2+i), 70+i%3
		if i >= 6 {
			day, psi = fmt.Sprintf("2026-06-%02d 10:00", 8+i-6), 92+i%3
		}
		w.say(t, "ana", day, fmt.Sprintf("%d psi at the meter, static, %d Alder St", psi, 10+i))
	}
	s, err := w.desk.Summary(t.Context(), assess.Date{Year: 2026, Month: 6, Day: 8}, assess.Date{Year: 2026, Month: 6, Day: 15})
	if err != nil {
		t.Fatal(err)
	}
	if len(s.Streets) != 1 || s.Streets[0].Street != "alder" || s.Streets[0].PSI < 90 || s.Streets[0].FromPSI > 73 {
		t.Errorf("streets that changed: %+v", s.Streets)
	}
	if text := s.Body().Text(); !strings.Contains(text, "Alder: the street's supply changed from 71 to 93 psi.") {
		t.Errorf("the week is told as %s", text)
	}
}

// A form may bring the right wording of a report with its button; the wording
// takes the report's place.
func TestAReportIsPutRightByAForm(t *testing.T) {
	w := newWorld(t)
	w.say(t, "ana", "2026-06-15 10:00", "66 laundry, heater idle, 12 Alder St")
	said, err := w.Rest(t.Context(), at(t, "2026-06-15 10:01"))
	if err != nil {
		t.Fatal(err)
	}
	press := func(who, typed string) string {
		for _, s := range said {
			for _, b := range s.Post.Body.Buttons {
				if b.Name != "correct" {
					continue
				}
				w.n++
				m := desk.Message{Key: fmt.Sprintf("form/%d", w.n), Kind: store.Pressed, Channel: "field", TS: fmt.Sprint(w.n), Author: who,
					At: at(t, "2026-06-15 10:02"), Button: b.Name, Value: b.Value, Text: typed}
				if err := w.desk.Take(t.Context(), m); err != nil {
					t.Fatal(err)
				}
			}
		}
		return strings.Join(w.hear(t, "2026-06-15 10:03"), "\n")
	}
	for _, tt := range []struct{ who, typed, want string }{
		{"ana", "63 rear tap, heater idle", "12 Alder St: In band at 63"},
		{"ana", "63 rear tap, heater idle, 14 Alder St", "14 Alder St: In band at 63"},
		{"ana", "", "What is right?"},
		{"ana", "lunch at 12?", "There is no reading"},
		{"ben", "99 rear tap", "That report is ana's"},
	} {
		if got := press(tt.who, tt.typed); !strings.HasPrefix(got, tt.want) {
			t.Errorf("%s types %q and is told %q", tt.who, tt.typed, got)
		}
	}
	if _, err := w.desk.House(t.Context(), "14 Alder St", assess.Date{Year: 2026, Month: 6, Day: 15}, ""); err != nil {
		t.Error(err)
	}
}

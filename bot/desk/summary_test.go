package desk_test

import (
	"errors"
	"fmt"
	"strings"
	"testing"

	"lazyhand/assess"
	"lazyhand/bot/desk"
	"lazyhand/bot/desk/talktest"
)

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

// What the bot itself advised and somebody did the same day is no promise kept; what a person asked for
// is, and so is advice that was followed on a later day.
func TestAdviceFollowedAtOnceIsNoPromiseKept(t *testing.T) {
	for _, row := range []struct {
		what string
		said [][2]string // when and what
		kept int
	}{
		{"advice followed within minutes", [][2]string{
			{"2026-06-15 10:00", "88 laundry, heater idle, meter 120, 12 Alder St"},
			{"2026-06-15 10:20", "set the prv to 60, 61 laundry now, heater idle, 12 Alder St"},
		}, 0},
		{"advice followed two days later", [][2]string{
			{"2026-06-15 10:00", "88 laundry, heater idle, meter 120, 12 Alder St"},
			{"2026-06-17 10:20", "set the prv to 60, 61 laundry now, heater idle, 12 Alder St"},
		}, 1},
		{"a person's own word kept the same day", [][2]string{
			{"2026-06-15 10:00", "recheck 12 Alder St today"},
			{"2026-06-15 14:00", "62 laundry, heater idle, 12 Alder St"},
		}, 1},
		{"a person's own word kept later", [][2]string{
			{"2026-06-15 10:00", "62 laundry, heater idle, 12 Alder St, recheck in 3 days"},
			{"2026-06-18 10:00", "62 laundry, heater idle, 12 Alder St"},
		}, 1},
	} {
		t.Run(row.what, func(t *testing.T) {
			w := newWorld(t)
			for _, m := range row.said {
				w.say(t, "ana", m[0], m[1])
			}
			s, err := w.desk.Summary(t.Context(), assess.Date{Year: 2026, Month: 6, Day: 15}, assess.Date{Year: 2026, Month: 6, Day: 22})
			if err != nil {
				t.Fatal(err)
			}
			if len(s.Kept) != row.kept {
				t.Errorf("%d kept, want %d: %+v", len(s.Kept), row.kept, s.Kept)
			}
		})
	}
}

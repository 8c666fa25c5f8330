package desk_test

import (
	"errors"
	"strings"
	"testing"

	"lazyhand/assess"
	"lazyhand/bot/desk"
)

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

package main

import (
	"context"
	"errors"
	"fmt"
	"math"
	"time"

	"lazyhand/bot/desk"
	"lazyhand/bot/practice"
	"lazyhand/store"
)

// demoReport is one message of the demonstration's shop.
type demoReport struct {
	at   time.Time
	who  string // short name in the practice crew
	text string
}

// demoHouse is one house of it and how its pressure goes. The houses, like the
// crew, are invented.
type demoHouse struct {
	line    string
	who     string
	about   string  // told on the first visit
	psi     float64 // then
	perYear float64 // how it drifts, psi
	spanish bool
}

// demoVisits are how many days ago the houses were visited, the last one within
// a month or two; a house's own offset is added.
var demoVisits = []int{700, 610, 520, 430, 340, 250, 160, 75}

// demoScatter is what gauge and street add to a reading, psi, in turn.
var demoScatter = []float64{0, 1, -1, 0, 2, -1, 1, 0, -2, 1}

var demoHouses = []demoHouse{
	{"14 Harbor View Ln", "rosa", "PRV dated 2013, 50 gal gas heater, exp tank good", 65, 6.5, false},
	{"1207 Quince St", "beto", "PRV dated 2016", 68, 4.5, false},
	{"33 Tamarack Ct", "rosa", "PRV dated 2009, 40 gal gas heater", 63, 0, false},
	{"208 Bluebell Rd", "beto", "PRV dated 2019, check valve at the meter, 50 gal electric heater, no exp tank", 61, 0, false},
	{"9 Old Mill Rd", "pim", "PRV dated 2006", 58, 0, false},
	{"561 Larkspur Ave", "rosa", "PRV dated 2021, 50 gal gas heater, exp tank good", 55, 0, false},
	{"72 Pebble Creek Dr", "beto", "PRV dated 2015", 60, -4, true},
	{"415 Marigold St Unit B", "pim", "PRV dated 2018", 66, 0, false},
	{"2630 Cottonwood Ave", "rosa", "PRV dated 2012, 75 gal gas heater", 71, 2, false},
	{"18 Fiddler Ct", "beto", "PRV dated 2020", 57, 0, true},
	{"940 Sycamore St", "rosa", "PRV dated 2014, 40 gal electric heater", 64, 0, false},
	{"6 Heron Pl", "pim", "PRV dated 2010", 69, 1, false},
	{"1123 Quince St", "beto", "PRV dated 2017", 62, 0, false},
	{"1311 Quince St", "rosa", "PRV dated 2011", 66, 3, false},
	{"87 Thimble Way", "beto", "PRV dated 2022", 54, 0, true},
	{"350 Juniper Ter", "rosa", "PRV dated 2008, 50 gal gas heater, exp tank good", 67, 0, false},
}

// demoPast returns the reports of two years before now, oldest first.
func demoPast(now time.Time) []demoReport {
	var out []demoReport
	for visit, ago := range demoVisits {
		for i, h := range demoHouses {
			day := now.AddDate(0, 0, -ago+i)
			y, m, d := day.Date()
			at := time.Date(y, m, d, 8+i%8, 5*i%60, 0, 0, now.Location())
			years := float64(demoVisits[0]-ago) / 365
			psi := int(math.Round(h.psi + h.perYear*years + demoScatter[(visit+i)%len(demoScatter)]))
			text := fmt.Sprintf("%d laundry, heater idle, nothing running, %s", psi, h.line)
			switch {
			case h.spanish:
				text = fmt.Sprintf("%d en la lavadora, calentador apagado, nada abierto, %s", psi, h.line)
			case (visit+i)%3 == 1:
				text = fmt.Sprintf("%s: rear bibb %d, heater off, nothing running", h.line, psi)
			}
			if visit == 0 {
				text += ". " + h.about
			}
			out = append(out, demoReport{at, h.who, text})
		}
	}
	return out
}

// demoToday returns what the crew writes while one looks on: a drift that has
// left the band, a regulator that lets the street through, a closed house, a
// question.
func demoToday() []demoReport {
	return []demoReport{
		{who: "rosa", text: "84 laundry, heater idle, nothing running, 14 Harbor View Ln"},
		{who: "rosa", text: "33 Tamarack Ct: street 97 at the meter, laundry 96, heater idle, nothing running. black specks in the tub"},
		{who: "beto", text: "208 Bluebell Rd, laundry 63 heater idle nothing running. T&P drips when it heats, no exp tank"},
		{who: "pim", text: "front bibb 88, 415 Marigold St Unit B"},
		{who: "beto", text: "trend 1207 Quince St"},
		{who: "dee", text: "summary of the week"},
	}
}

// demoFill lets the desk take the past as if it had been there all along: what
// it said then is said to nobody, except its alerts, which dispatch still has
// before it.
func demoFill(ctx context.Context, d *desk.Desk, w *practice.Workspace, now time.Time) error {
	people := map[string]practice.User{}
	for _, u := range w.Users() {
		people[u.Name] = u
	}
	field := w.Channel("field")
	for i, r := range demoPast(now) {
		ts := fmt.Sprintf("%d.%06d", r.at.Unix(), i)
		m := desk.Message{Key: field + "/" + ts, Kind: store.Said, Channel: field, TS: ts, Author: people[r.who].ID, Name: people[r.who].RealName, At: r.at, Text: r.text}
		if err := d.Take(ctx, m); err != nil {
			return fmt.Errorf("fill the demonstration: %w", err)
		}
	}
	for {
		more, err := d.Send(ctx, now, nobody{but: w.Channel("dispatch")})
		if err != nil {
			return fmt.Errorf("fill the demonstration: %w", err)
		}
		if !more {
			return nil
		}
	}
}

// nobody is a chat that everything is said to and that nobody reads, but for
// one channel, which waits.
type nobody struct{ but string }

func (n nobody) Post(_ context.Context, p desk.Post) (string, error) {
	if p.Channel == n.but {
		return "", &desk.Refusal{Why: "not open yet", After: time.Second}
	}
	return "past:" + p.Key, nil
}

func (nobody) Find(context.Context, desk.Post) (string, bool, error) { return "", false, nil }

// demoGoOn lets the crew write today's messages, with a pause to read between
// them.
func demoGoOn(ctx context.Context, w *practice.Workspace, pause time.Duration) error {
	for _, r := range demoToday() {
		if _, err := w.Say(r.who, "field", "", r.text); err != nil {
			return errors.Join(errors.New("the demonstration cannot go on"), err)
		}
		select {
		case <-ctx.Done():
			return nil
		case <-time.After(pause):
		}
	}
	return nil
}

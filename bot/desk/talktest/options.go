package talktest

import (
	"fmt"
	"time"

	"lazyhand/bot/desk"
	"lazyhand/schedule"
)

// Options are the settings of the invented shop in the transcripts: it works
// Monday to Friday from 8 to 17, dana dispatches, boss is told what nobody
// takes, stranger is not of the crew.
func Options(zone *time.Location) desk.Options {
	return desk.Options{
		Zone: zone, Field: []string{"field"}, Dispatch: "dispatch", Team: "team", Phone: "555-0100",
		Jobs: map[string]string{desk.JobFollowUps: "0 7 * * *", desk.JobSummary: "0 7 * * 1", desk.JobLife: "0 8 1 * *"},
		Calendar: schedule.Calendar{
			Days:     []time.Weekday{time.Monday, time.Tuesday, time.Wednesday, time.Thursday, time.Friday},
			Hours:    schedule.Hours{From: 8 * 60, To: 17 * 60},
			Holidays: []string{"2026-07-03", "2026-11-26"},
			Quiet:    schedule.Hours{From: 20 * 60, To: 6*60 + 30},
		},
		Role: func(person string) desk.Role {
			switch person {
			case "stranger":
				return desk.Outsider
			case "dana":
				return desk.Dispatcher
			case "boss":
				return desk.Admin
			}
			return desk.Field
		},
		EscalateTo: "boss", EscalateIn: "team", AtMostADay: 3, Painter: painter{},
	}
}

// painter stands for the pictures: it tells in words what it was given.
type painter struct{}

func (painter) Plot(h desk.House) (desk.Picture, error) {
	return desk.Picture{Name: "plot.png", Alt: fmt.Sprintf("%s, %d readings", h.Site.Line, len(h.Readings))}, nil
}

func (painter) Week(s desk.Summary) (desk.Picture, error) {
	return desk.Picture{Name: "week.png", Alt: fmt.Sprintf("%d readings, band %g to %g psi", s.Readings, s.Band[0], s.Band[1])}, nil
}

func (painter) Sheet(h desk.House) (desk.File, error) {
	return desk.File{Name: "sheet.pdf", Title: fmt.Sprintf("%s, %d visits", h.Site.Line, len(h.Visits))}, nil
}

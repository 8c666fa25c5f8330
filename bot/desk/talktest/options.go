package talktest

import (
	"time"

	"lazyhand/bot/desk"
)

// Options are the settings of the invented shop in the transcripts.
func Options(zone *time.Location) desk.Options {
	return desk.Options{
		Zone: zone, Field: []string{"field"}, Dispatch: "dispatch", Team: "team", Phone: "555-0100",
		Jobs: map[string]string{desk.JobFollowUps: "0 7 * * *", desk.JobSummary: "0 7 * * 1"},
	}
}

package desk

import (
	"time"

	"lazyhand/assess"
	"lazyhand/intents"
	"lazyhand/schedule"
)

// The clockwork jobs that the desk knows, by the names they have in
// Options.Jobs.
const (
	JobFollowUps = "follow_ups"   // posts what is due
	JobSummary   = "summary"      // posts the weekly summary
	JobLife      = "monthly_life" // posts how long the shop's regulators last
)

// Options is what the shop settles. The zero Options works: everything said in
// a direct message is taken, in English and UTC, with no clockwork, by anybody.
type Options struct {
	Zone     *time.Location            // the shop's; nil is UTC
	Lang     assess.Lang               // the shop's; a member of the crew may choose another
	Shop     assess.Shop               // how pressure is judged
	Words    []intents.Word            // the shop's own words
	Field    []string                  // channels whose messages are read; direct messages always are
	Dispatch string                    // channel for alerts; empty: no alerts are posted
	Team     string                    // channel for reminders and summaries; empty: none
	Jobs     map[string]string         // cron lines by job
	Memory   time.Duration             // how long a person's last house stands for one not named; 0 is four hours
	Alerts   func(assess.Finding) bool // which findings raise an alert; nil: see RaisesAlert
	Phone    string                    // the dispatcher's, given to a tech when it is urgent

	Calendar    schedule.Calendar        // working days and hours, holidays, quiet hours; its Zone is Options.Zone
	Role        func(person string) Role // who may do what; nil: everybody may do all
	ClaimWithin time.Duration            // working time until an alert that nobody took is told again, then told further; 0 is 15 minutes
	EscalateTo  string                   // person or group called by name then; may be empty
	EscalateIn  string                   // channel told then; empty: the alert's own thread only
	AtMostADay  int                      // follow-ups put before the team in a day; 0 is ten
	Painter     Painter                  // draws; nil: no pictures and no papers
	KeepWords   int                      // days until the words of a message are removed; 0 keeps them
	KeepVisits  int                      // days until a whole visit is removed; 0 keeps it
}

// settle puts the defaults in.
func (o *Options) settle() {
	if o.Zone == nil {
		o.Zone = time.UTC
	}
	if o.Lang == "" {
		o.Lang = assess.English
	}
	if o.Memory == 0 {
		o.Memory = 4 * time.Hour
	}
	if o.Alerts == nil {
		o.Alerts = RaisesAlert
	}
	if o.ClaimWithin == 0 {
		o.ClaimWithin = 15 * time.Minute
	}
	if o.AtMostADay == 0 {
		o.AtMostADay = 10
	}
	if o.Role == nil {
		o.Role = func(string) Role { return Admin }
	}
	o.Calendar.Zone = o.Zone
}

// Role is what a person may do.
type Role int

// The roles, each with the rights of those before it.
const (
	Outsider   Role = iota // is not read
	Field                  // reports, corrects and takes back their own reports, asks
	Dispatcher             // corrects anybody's, takes alerts, moves follow-ups
	Admin
)

// drawsWhat names what a Painter is to draw for a post.
type drawsWhat string

const (
	drawsPlot  drawsWhat = "plot"
	drawsSheet drawsWhat = "sheet"
	drawsWeek  drawsWhat = "week"
)

// Drawing is what is to be drawn for a post when it is sent.
type Drawing struct {
	What drawsWhat   `json:"what"`
	Site int64       `json:"site,omitempty"`
	Day  assess.Date `json:"day,omitzero"` // the day it is drawn as of
	From assess.Date `json:"from,omitzero"`
	To   assess.Date `json:"to,omitzero"`
	Lang assess.Lang `json:"lang"`
}

// Picture is a PNG picture with its words.
type Picture struct {
	Name string // of the file
	Alt  string // the picture in words
	PNG  []byte
}

// File is a paper to hand out.
type File struct {
	Name  string // with its ending, such as .pdf
	Title string
	Data  []byte
}

// Painter draws for posts. It draws what it is given and looks nothing up. The
// language is House.Lang and Summary.Lang.
type Painter interface {
	Plot(House) (Picture, error)   // a house's readings over time
	Week(Summary) (Picture, error) // the pressures of a span against the band
	Sheet(House) (File, error)     // the customer's sheet
}

package config

import (
	"reflect"
	"sort"
	"time"
)

// Config is the shop's settings, all of them valid. It is a value: a reload
// makes a new one.
type Config struct {
	File string // where it was read; empty when there was no file

	Shop      Shop
	Pressure  Pressure
	Words     []Word
	Jobs      Jobs
	Slack     Slack
	Alerts    Alerts
	FollowUps FollowUps
	Dialogue  Dialogue
	Retention Retention
	Health    Health
	Backup    Backup
	Record    Record
	Log       Log

	values map[string]any // by key, for Changes
}

// Shop is who the shop is and when it works.
type Shop struct {
	Name     string
	Phone    string
	Zone     *time.Location
	Language string // "en" or "es"
	// WorkingDays are days of the week; Holidays are days as YYYY-MM-DD.
	WorkingDays  []time.Weekday
	WorkingHours Hours
	Holidays     []string
	QuietHours   Hours // nothing but an emergency is posted
}

// Pressure is how the shop judges pressure: psi, years.
type Pressure struct {
	BandPSI      [2]float64
	GaugeGrade   string
	GaugeSpanPSI float64
	ServiceYears [2]float64         // near its end, past it
	TankTopPSI   float64            // 0: the band's top
	BaseRates    map[string]float64 // by cause, shares between 0 and 1
}

// Word is a word of the shop's own: what people type and the code it stands for.
type Word struct {
	Says  string
	Means string
}

// Jobs are the cron lines of what recurs, on the shop's wall clock; an empty
// line switches its job off.
type Jobs struct {
	FollowUps     string
	WeeklySummary string
	MonthlyLife   string
	NightlySweep  string
	Backup        string
}

// Slack is the way into the shop's workspace.
type Slack struct {
	AppToken      Secret
	BotToken      Secret
	SigningSecret Secret
	Listen        string // address for requests over HTTP; empty for Socket Mode
	// Channels, users and groups are ids.
	FieldChannels   []string
	DispatchChannel string
	TeamChannel     string
	FieldRole       []string // users and groups; empty is everybody in the field channels
	DispatchRole    []string
	AdminRole       []string
	SharedChannels  bool // messages of other workspaces in shared channels are read
	Guests          bool // messages of guests are read
}

// Configured tells whether anything of Slack is set.
func (s Slack) Configured() bool {
	return s.AppToken.Set() || s.BotToken.Set() || s.SigningSecret.Set() || s.Listen != "" ||
		len(s.FieldChannels) > 0 || s.DispatchChannel != "" || s.TeamChannel != ""
}

// Alerts says what dispatch is told at once, and what happens when nobody
// answers.
type Alerts struct {
	Raise           []string // finding codes
	ClaimMinutes    int
	EscalateTo      string // user, group or channel
	DispatcherPhone string
}

// FollowUps limits what is put before the team at once.
type FollowUps struct {
	AtMostADay int
}

// Dialogue is how the bot holds a talk.
type Dialogue struct {
	SiteHolds time.Duration // how long a message without an address is of the last house
}

// Retention is how long what people wrote is kept, in days; 0 keeps it.
type Retention struct {
	MessageDays int // the words of a message; its readings stay
	VisitDays   int // everything told about a house, by visit
}

// Health is where the program answers questions about its own state.
type Health struct {
	Listen string
}

// Backup is where copies of the record go.
type Backup struct {
	Folder     string // empty: a folder backup beside the record
	StaleAfter time.Duration
	Keep       int
}

// Record is where the shop's record is kept.
type Record struct {
	File string // empty: in the user's data folder
}

// Log is how much the program says about its own running.
type Log struct {
	Level string
}

// Changes compares two configurations and returns the keys that differ: those
// that a running bot can take up, and those for which it must be started again.
func Changes(before, after Config) (safe, restart []string) {
	for _, s := range Settings() {
		if reflect.DeepEqual(before.values[s.Key], after.values[s.Key]) {
			continue
		}
		if s.Restart {
			restart = append(restart, s.Key)
		} else {
			safe = append(safe, s.Key)
		}
	}
	sort.Strings(safe)
	sort.Strings(restart)
	return safe, restart
}

// KeepRestart returns after with the keys that need a restart as they are in
// before: what a running bot goes by.
func KeepRestart(before, after Config) Config {
	values := map[string]any{}
	for _, s := range Settings() {
		values[s.Key] = after.values[s.Key]
		if s.Restart {
			values[s.Key] = before.values[s.Key]
			reflect.ValueOf(s.field(&after)).Elem().Set(reflect.ValueOf(s.field(&before)).Elem())
		}
	}
	after.values = values
	return after
}

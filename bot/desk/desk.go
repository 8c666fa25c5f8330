// Package desk is the bot itself, with no chat platform in it: it takes what
// people said, keeps it, answers, alerts and reminds.
//
// It has three doors, and each may be called twice or cut off at any instant
// with no harm:
//
//   - Take takes one message. When it returns nil the message is on the disk,
//     with all that follows from it, and the platform may be told so.
//   - Tick deals with what has come due by the clock.
//   - Send lets out what is to be said, each post once; a post whose fate is
//     unknown is looked up before it is said again.
//
// All they share is the store, where every row is named after its cause. The
// desk reads no clock: now is an argument. Keys of the outbox that it owns:
// "reply:<message>", "react:<message>:<mark>", "alert:<alert>:<change>",
// "remind:<person>:<slot>", "summary:<slot>", "dead:<post>".
package desk

import (
	"context"
	"fmt"
	"time"

	"lazyhand/assess"
	"lazyhand/intents"
	"lazyhand/schedule"
	"lazyhand/store"
)

// The clockwork jobs that the desk knows, by the names they have in the
// configuration.
const (
	JobFollowUps = "follow_ups" // posts what is due
	JobSummary   = "summary"    // posts the weekly summary
)

// Options is what the shop settles. The zero Options works: everything said in
// a direct message is taken, in English and UTC, with no clockwork.
type Options struct {
	Zone                  *time.Location            // the shop's; nil is UTC
	Lang                  assess.Lang               // the shop's; a member of the crew may choose another
	Shop                  assess.Shop               // how pressure is judged
	Words                 []intents.Word            // the shop's own words
	Field                 []string                  // channels whose messages are read; direct messages always are
	Dispatch              string                    // channel for alerts; empty: no alerts are posted
	Team                  string                    // channel for reminders and summaries; empty: none
	Jobs                  map[string]string         // cron lines by job
	KeepWords, KeepVisits int                       // days until the words of a message, or a whole visit, are removed; 0 keeps them
	Memory                time.Duration             // how long a person's last house stands for one not named; 0 is four hours
	Alerts                func(assess.Finding) bool // which findings raise an alert; nil: see RaisesAlert
	Phone                 string                    // the dispatcher's, given to a tech when it is urgent
}

// Desk is the bot. It is safe for use by many goroutines.
type Desk struct {
	store  *store.DB
	opt    Options
	parser *intents.Parser
	plan   *schedule.Plan
	field  map[string]bool
}

// New makes a desk on a record. It fails on a word or a cron line that it
// cannot read.
func New(db *store.DB, opt Options) (*Desk, error) {
	if opt.Zone == nil {
		opt.Zone = time.UTC
	}
	if opt.Lang == "" {
		opt.Lang = assess.English
	}
	if opt.Memory == 0 {
		opt.Memory = 4 * time.Hour
	}
	if opt.Alerts == nil {
		opt.Alerts = RaisesAlert
	}
	parser, err := intents.New(opt.Words...)
	if err != nil {
		return nil, fmt.Errorf("the shop's own words: %w", err)
	}
	plan, err := schedule.New(opt.Zone, opt.Jobs)
	if err != nil {
		return nil, err
	}
	d := &Desk{store: db, opt: opt, parser: parser, plan: plan, field: map[string]bool{}}
	for _, c := range opt.Field {
		d.field[c] = true
	}
	return d, nil
}

// Chat is what the desk needs of a chat platform.
type Chat interface {
	// Post says p and returns the platform's name for what was said. A
	// *Refusal means that it certainly was not said; any other error leaves
	// that open.
	Post(ctx context.Context, p Post) (ref string, err error)
	// Find looks for what was said under p.Key; found is false when it
	// certainly was not said.
	Find(ctx context.Context, p Post) (ref string, found bool, err error)
}

// Refusal is the platform's word that a post was not taken.
type Refusal struct {
	Why   string
	After time.Duration // when to try again
	Final bool          // never
}

// Error says why.
func (r *Refusal) Error() string { return "refused: " + r.Why }

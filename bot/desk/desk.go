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
// "reply:<message>", "react:<message>:…", "alert:<alert>:<change>",
// "brief:<alert>:<change>:…", "remind:<person>:<slot>", "summary:<day>",
// "life:<day>", "dead:<post>".
package desk

import (
	"context"
	"fmt"
	"time"

	"lazyhand/intents"
	"lazyhand/schedule"
	"lazyhand/store"
)

// Desk is the bot. It is safe for use by many goroutines.
type Desk struct {
	store  *store.DB
	opt    Options
	parser *intents.Parser
	plan   *schedule.Plan
	field  map[string]bool
	cal    schedule.Calendar
	curve  curve
}

// New makes a desk on a record. It fails on a word or a cron line that it
// cannot read.
func New(db *store.DB, opt Options) (*Desk, error) {
	opt.settle()
	parser, err := intents.New(opt.Words...)
	if err != nil {
		return nil, fmt.Errorf("the shop's own words: %w", err)
	}
	plan, err := schedule.New(opt.Zone, opt.Jobs)
	if err != nil {
		return nil, err
	}
	d := &Desk{store: db, opt: opt, parser: parser, plan: plan, field: map[string]bool{}, cal: opt.Calendar}
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

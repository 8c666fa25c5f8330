package intents

import (
	"bytes"
	"encoding/json"
	"fmt"

	"lazyhand/assess"
)

// Context is what is already known when a message arrives. Every field may be
// empty.
type Context struct {
	// Site is the street line that the thread is about or that the person last
	// reported on. It never becomes Frame.Site: the frame says what the message says.
	Site string `json:"site,omitempty"`
	// Today is the day the message was sent; relative dates count from it.
	Today assess.Date `json:"today,omitzero"`
	// Sites are the street lines on record. They help where the message names a
	// street without its number.
	Sites []string `json:"sites,omitempty"`
	// Question is the bot's own open question that this message may answer.
	Question *Unclear `json:"question,omitempty"`
	// Tap is where the last reading of the visit was taken, while that is fresh: a
	// further one that names no place was taken there.
	Tap assess.TestPoint `json:"tap,omitempty"`
	// TapUnsure tells that the last readings were at several taps, or of the main:
	// a further one that names none is asked about, unless it says "same".
	TapUnsure bool `json:"tap_unsure,omitempty"`
	// Again is the tap that "same tap" names where that is not Tap: the last one that is
	// no street side.
	Again assess.TestPoint `json:"again,omitempty"`
	// Spanish tells that the writer is answered in Spanish; it decides where the message
	// itself speaks neither language.
	Spanish bool `json:"spanish,omitempty"`
	// Told is the writer's own last report while it is fresh: a few words may put
	// it right.
	Told *Frame `json:"told,omitempty"`
}

// Frame is the one right reading of a message.
type Frame struct {
	Site       string             // the street line as the message gives it, tidied; empty when it names none
	Town       string             // when the message names it
	Postcode   string             // when the message names it
	Date       assess.Date        // of readings taken on an earlier day, when told
	Statements []assess.Statement // in the order told; Ask stands among them
	Unclear    []Unclear          // what could not be decided
	// Answer is the one of Context.Question's possible answers that the message
	// picks, "no" for none of them, the number that was asked for, empty when it
	// answers no question.
	Answer string
	// Amends is what the message puts right in Context.Told. The statements then
	// hold only the wish to correct.
	Amends []Amendment
	// SameTap tells that a reading was taken at Context.Tap. It is for the answer
	// and is not written.
	SameTap bool
}

// Unclear is something that the message says and that could be read in more
// than one way; none of them is stored until a person says which.
type Unclear struct {
	Span    string   `json:"span"`     // the words
	MightBe []string `json:"might_be"` // the readings of them, likeliest first
	Ask     string   `json:"ask"`      // one short question
}

// Ask is a question or an instruction to the bot.
type Ask struct {
	About     About    `json:"about"`
	InDays    *int     `json:"in_days,omitempty"`    // snooze
	SizeGal   *float64 `json:"size_gal,omitempty"`   // tank_size
	RiseF     *float64 `json:"rise_f,omitempty"`     // tank_size
	SetpointF *float64 `json:"setpoint_f,omitempty"` // tank_size
	InletF    *float64 `json:"inlet_f,omitempty"`    // tank_size
	PSI       *float64 `json:"psi,omitempty"`        // tank_size, tank_charge
	Value     *float64 `json:"value,omitempty"`      // convert
	Unit      string   `json:"unit,omitempty"`       // convert: psi, bar, kpa, ft, m
	To        string   `json:"to,omitempty"`         // convert

	Of *assess.Equipment `json:"of,omitempty"` // which_houses, count: the thing, missing or failed
}

// Kind returns "ask".
func (Ask) Kind() string { return "ask" }

// About is what a question or an instruction wants.
type About string

// What can be asked of the bot.
const (
	AskHistory   About = "history"
	AskDue       About = "due"
	AskTrend     About = "trend"
	AskTankSize  About = "tank_size"
	AskNextCheck About = "next_check"
	AskConvert   About = "convert"
	AskReport    About = "report"
	AskSummary   About = "summary"
	AskUndo      About = "undo"
	AskCorrect   About = "correct"
	AskDone      About = "done"
	AskSnooze    About = "snooze"
	AskHelp      About = "help"
	AskCancel    About = "cancel"       // a follow-up is not wanted any more
	AskOld       About = "old_valves"   // the regulators past their service life
	AskWorst     About = "worst"        // the houses to see first
	AskAlerts    About = "alerts"       // the alerts that are open
	AskLog       About = "log"          // who reported what in a span of days
	AskCharge    About = "tank_charge"  // what a tank's air is to be charged to
	AskWhich     About = "which_houses" // those that lack a thing, or where it has failed
	AskCount     About = "count"        // how many of a thing were put in
	AskNone      About = "none"         // chatter, not for the bot
)

// Visit returns what the frame says about the house, as a visit of the frame's
// own date or else of day.
func (f Frame) Visit(day assess.Date) assess.Visit {
	v := assess.Visit{Date: day}
	if !f.Date.IsZero() {
		v.Date = f.Date
	}
	for _, s := range f.Statements {
		v.Add(s)
	}
	return v
}

// Asks returns the frame's questions and instructions, in order.
func (f Frame) Asks() []Ask {
	var out []Ask
	for _, s := range f.Statements {
		if a, ok := s.(Ask); ok {
			out = append(out, a)
		}
	}
	return out
}

// frameJSON is the frame on the wire: site is null when there is none,
// statements never.
type frameJSON struct {
	headJSON
	Statements []json.RawMessage `json:"statements"`
	tailJSON
}

// headJSON and tailJSON are what stands before and behind the statements.
type (
	headJSON struct {
		Site     *string     `json:"site"`
		Town     string      `json:"town,omitempty"`
		Postcode string      `json:"postcode,omitempty"`
		Date     assess.Date `json:"date,omitzero"`
	}
	tailJSON struct {
		Unclear []Unclear   `json:"unclear,omitempty"`
		Answer  string      `json:"answer,omitempty"`
		Amends  []Amendment `json:"amends,omitempty"`
	}
)

// MarshalJSON writes the frame as one JSON object; each statement has its kind
// first.
func (f Frame) MarshalJSON() ([]byte, error) {
	head := headJSON{Town: f.Town, Postcode: f.Postcode, Date: f.Date}
	if f.Site != "" {
		head.Site = &f.Site
	}
	out, err := json.Marshal(head)
	if err != nil {
		return nil, err
	}
	out = append(out[:len(out)-1], `,"statements":[`...)
	for i, s := range f.Statements {
		if i > 0 {
			out = append(out, ',')
		}
		body, err := json.Marshal(s)
		if err != nil {
			return nil, fmt.Errorf("write %s statement: %w", s.Kind(), err)
		}
		out = fmt.Appendf(out, `{"kind":%q`, s.Kind())
		out = appendFields(out, body)
	}
	out = append(out, ']')
	tail, err := json.Marshal(tailJSON{f.Unclear, f.Answer, f.Amends})
	return appendFields(out, tail), err
}

// appendFields ends an object that was begun with the fields of another.
func appendFields(out, object []byte) []byte {
	if len(object) > len("{}") {
		out = append(out, ',')
	}
	return append(out, object[1:]...)
}

// UnmarshalJSON reads what MarshalJSON writes. Keys it does not know are
// ignored; a statement of unknown kind is an error.
func (f *Frame) UnmarshalJSON(b []byte) error {
	var w frameJSON
	if err := json.Unmarshal(b, &w); err != nil {
		return err
	}
	*f = Frame{Town: w.Town, Postcode: w.Postcode, Date: w.Date, Unclear: w.Unclear, Answer: w.Answer, Amends: w.Amends}
	if w.Site != nil {
		f.Site = *w.Site
	}
	for i, raw := range w.Statements {
		s, err := statement(raw)
		if err != nil {
			return fmt.Errorf("statement %d: %w", i+1, err)
		}
		f.Statements = append(f.Statements, s)
	}
	return nil
}

// statement reads one statement by its kind.
func statement(raw json.RawMessage) (assess.Statement, error) {
	kind, err := kindOf(raw)
	if err != nil {
		return nil, err
	}
	switch kind {
	case "reading":
		return decode[assess.Reading](raw)
	case "symptom":
		return decode[assess.Symptom](raw)
	case "equipment":
		return decode[assess.Equipment](raw)
	case "work":
		return decode[assess.Work](raw)
	case "plan":
		return decode[assess.Plan](raw)
	case "ask":
		return decode[Ask](raw)
	}
	return nil, fmt.Errorf("kind %q is not known", kind)
}

// kindOf returns a statement's kind. It stands first where MarshalJSON wrote it,
// and then need not be looked for.
func kindOf(raw json.RawMessage) (string, error) {
	if rest, ok := bytes.CutPrefix(raw, []byte(`{"kind":"`)); ok {
		if kind, _, ok := bytes.Cut(rest, []byte(`"`)); ok && !bytes.Contains(kind, []byte(`\`)) {
			return string(kind), nil
		}
	}
	var head struct {
		Kind string `json:"kind"`
	}
	err := json.Unmarshal(raw, &head)
	return head.Kind, err
}

// decode reads a statement of a known kind.
func decode[S assess.Statement](raw json.RawMessage) (assess.Statement, error) {
	var s S
	if err := json.Unmarshal(raw, &s); err != nil {
		return nil, err
	}
	return s, nil
}

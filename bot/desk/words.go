package desk

import (
	"fmt"
	"time"

	"lazyhand/assess"
)

// words is all that the desk says, in one language. A new language is a new
// value of this type and a line in wordsIn. A comment names what fills the
// places of a text, in their order.
type words struct {
	// Talk
	Apology          string
	NotCrew          string
	LanguageChosen   string
	WhichHouse       string
	WhichOf          string // the line as written
	WhichOne         string // the houses
	WhichNumber      string // street
	WhatThen         string
	WhichReading     string // the readings
	Or               string
	PutRightNow      string
	MovedAlong       string // the reports that moved to another house with one
	ChangedTo        string // before, after
	SameHouse        string // house
	SameYes          string
	SameNo           string
	OneHouse         string // house, the one it is told under
	TwoHouses        string // house, house
	NotJoined        string // house
	NoSuchNear       string // house, the one on record
	NotOnRecord      string // house
	NothingToCorrect string
	NothingToUndo    string
	NothingLeft      string
	NotYours         string // whose
	QuestionGone     string
	Undone           string // house
	TakeBack         string
	ReadAgain        string
	BookRecheck      string
	SendAgain        string // house
	AskedFor         string
	Booked           string // house, action, day
	PutRight         string
	ChartReading     string
	ChartTop         string
	ChartBottom      string
	SayRight         string
	Elsewhere        string
	Remembered       string // house
	SameTap          string
	Recorded         string // house
	Planned          string // house, what is to be done
	Heard            string
	Likely           string // cause, percent
	LikelyFound      string // cause, percent
	ConfirmWork      string
	AsFound          string // psi
	NextCheck        string
	CallDispatch     string // phone
	NotPosted        string // why

	// Asks
	HelpLead       string
	Help           []string
	NothingToCheck string // house
	History        string // house, how it stands, who was there last, visits
	RightedBy      string // day, who, what
	TakenBackBy    string // day, who, what
	OpenFollowUp   string // action, day, whose
	TankNeeds      string
	TankTooHigh    string // psi, top
	TankSize       string // gallons, heater gallons, top
	TankBasis      string // inlet, setpoint, psi, charge
	NoPaper        string
	SheetLead      string // house
	SheetCheck     string
	TooFew         string
	DriftSteady    string
	DriftMoves     string // psi a year, low, high
	DriftJumped    string
	DriftCrosses   string // date, early, late
	NotKnown       string
	YearsOld       string // years, two or more or none
	YearOld        string

	// Of all houses
	NoneWorst     string
	NoAlerts      string
	NoAlertAt     string // house
	OpenAlerts    string // count
	HousesWith    string // thing, count
	ThingsPutIn   string // thing, from, count
	LeftHere      string // house, count
	NoDrift       string
	NoReports     string // who and days
	ReportsOf     string // who and days, count
	StreetLead    string // street, houses
	StreetMean    string // the average, of how many houses
	NotReadSince  string
	ChargeTo      string // psi
	ChargeNeeds   string
	ChargeRule    string
	ChargeHow     string
	ChargeTooHigh string // psi, most

	// Follow-ups
	NothingDue   string // days
	NoneDueToday string
	VisitsBooked string // count
	DueByToday   string // count
	NextDue      string
	Due          string // count, days
	DueToday     string // person, count
	Overdue      string // days
	MoveOn       string // count
	NothingOpen  string // house
	OtherOpen    string // house
	AlreadyEnded string // house, action
	Done         string // house, action
	DoneButton   string // house
	PutOffButton string // house
	HandButton   string // house
	Cancelled    string // house, action
	Moved        string // house, action, day
	OwnersOnly   string // owner
	TooFar       string
	ToWhom       string // house
	Handed       string // house, actions, person
	Late         string // planned time

	// Alerts
	AlertRaised     string
	AlertNow        string
	MoreEvidence    string // who, what was read
	ReportChanged   string
	OpenAgain       string
	Settled         string // psi
	SettledShort    string // psi with its unit
	Claimed         string // who
	BookedFor       string // when, who
	NotKnownHere    string // a name
	NobodyYet       string
	NoWorkday       string
	ClosedBy        string // who, reason
	ClosedBecause   string // reason
	ReasonWithdrawn string
	ReasonCorrected string
	Reasons         []string
	WhyClose        string
	WhichDay        string
	WhoGoes         string
	DayIsPast       string // day
	TakenAlready    string // state
	DispatchOnly    string
	Claim           string
	Book            string
	BookAgain       string
	Close           string
	Since           string // when
	Send            string
	SendFor         map[string]string // by finding or cause
	Unclaimed       string            // how long
	Escalated       string            // how long
	EscalatedLead   string            // how long, the alert
	BriefLead       string            // when, house
	FirstCheck      string
	Bring           string
	Part            map[string]string // of a day

	// Summary and home page
	Summary          string // from, to
	SummaryReports   string // houses, readings, fair percent
	SummaryAlerts    string // raised, settled, closed, open
	SummaryTime      string // how long
	SummaryDrift     string // count
	SummaryAge       string // count
	SummaryFollowUps string // kept, missed
	SummaryFirst     string
	SweepAge         string
	SweepDrift       string
	StreetChanged    string // street, from, to
	Moves            string // psi a year
	LeavesBand       string // day
	Thanks           string // names
	KeptMark         string
	MissedMark       string
	Open             map[string]string // count; by what it opens
	NothingThere     string
	AndMore          string // count
	LifeTooFew       string // failed, serving
	LifeDefault      string // near, past
	LifeLead         string // failed, serving
	LifeHalf         string // years
	LifeTenth        string // years
	LifeNext         string // age, percent
	LifeWears        string // age
	LifeChance       string
	Between          string // value, low, high
	HomeFollowUps    string
	HomeReports      string
	HomeAlerts       string
	HomeDue          string
	HomeWorst        string
	HomeNothing      string

	// Measures and codes
	Option        map[string]string // an answer on a button
	Psi, Gal      string
	FromTo        string // a setting changed: what it was and what it is
	Peak          string
	Before, After string
	Absent        string // thing
	NoSymptom     string // symptom
	WaterIsOn     string // no lack of water
	ReliefIsDry   string
	AgeUnknown    string
	Serviced      string // year
	NeverServiced string
	Minutes       string // count
	Hours         string // count
	Days          string // count
	Weekday       map[time.Weekday]string
	Band          map[assess.Band]string
	Point         map[assess.TestPoint]string
	Heater        map[assess.HeaterState]string
	Flow          map[assess.Flow]string
	Symptom       map[assess.SymptomName]string
	Item          map[assess.Item]string
	Fuel          map[assess.Fuel]string
	Material      map[assess.Material]string
	Condition     map[assess.Condition]string
	Action        map[assess.Action]string
	DidSet        string // a PRV, as work done; Action plans it
	Cause         map[assess.Cause]string
	Caution       map[assess.Caution]string
}

// yearsOld is an age beside the year of a part.
func (w *words) yearsOld(years int) string {
	if years == 1 {
		return w.YearOld
	}
	return fmt.Sprintf(w.YearsOld, years)
}

func wordsIn(l assess.Lang) *words {
	if l == assess.Spanish {
		return &spanish
	}
	return &english
}

func (t *turn) words() *words { return wordsIn(t.lang) }

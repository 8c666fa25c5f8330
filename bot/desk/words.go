package desk

import "lazyhand/assess"

// words is all that the desk says, in one language. A new language is a new
// value of this type and a line in wordsIn.
type words struct {
	Apology          string
	WhichHouse       string
	WhichOf          string // the line as written
	NotOnRecord      string // house
	NothingToCorrect string
	NothingToUndo    string
	Undone           string // house
	HelpLead         string
	Help             []string
	NothingToCheck   string // house
	History          string // house, visits
	TankNeeds        string
	TankTooHigh      string // psi, top
	TankSize         string // gallons, heater gallons, top
	TankBasis        string // inlet, setpoint, psi, charge
	NothingDue       string // days
	Due              string // count, days
	DueToday         string // count
	NothingOpen      string // house
	Done             string // house, action
	DoneButton       string // house
	Moved            string // house, action, day
	Late             string // planned time
	Remembered       string // house
	Recorded         string // house
	Heard            string
	Likely           string
	NextCheck        string
	CallDispatch     string // phone
	MoreEvidence     string
	Settled          string // psi
	Claimed          string // who
	Closed           string // who
	Claim, Close     string
	AlertState       map[string]string
	NotPosted        string // why
	Summary          string // from, to
	SummaryReports   string // houses, readings, fair
	SummaryAlerts    string // open
	SummaryDue       string // count
	SweepAge         string
	SweepDrift       string
	TooFew           string
	DriftSteady      string
	DriftMoves       string // psi a year, low, high
	DriftJumped      string
	DriftCrosses     string // date
	Psi              string
	Peak             string
	Before, After    string
	Absent           string // there is no
	Point            map[assess.TestPoint]string
	Heater           map[assess.HeaterState]string
	Flow             map[assess.Flow]string
	Symptom          map[assess.SymptomName]string
	NoSymptom        string
	Item             map[assess.Item]string
	Action           map[assess.Action]string
	Cause            map[assess.Cause]string
	Caution          map[assess.Caution]string
}

func wordsIn(l assess.Lang) *words {
	if l == assess.Spanish {
		return &spanish
	}
	return &english
}

func (t *turn) words() *words { return wordsIn(t.lang) }

package assess

// Statement is one thing a message says about a house: a Reading, a Symptom,
// an Equipment, a Work or a Plan. (A question to the bot is a statement too;
// it is no matter of this package, see intents.Ask.)
type Statement interface {
	// Kind is the statement's name in its JSON form, "reading" for a Reading.
	Kind() string
}

// Reading is a pressure that somebody measured. PSI is rounded to 0.1; what
// the message did not say is left empty.
type Reading struct {
	PSI    float64     `json:"psi"`
	Point  TestPoint   `json:"point,omitempty"`
	Heater HeaterState `json:"heater,omitempty"`
	Flow   Flow        `json:"flow,omitempty"`
	Peak   bool        `json:"peak,omitempty"` // the highest seen over a time, as a lazy hand shows it
	When   When        `json:"when,omitempty"`
}

// Symptom is something seen, heard or smelled; Absent when the message says
// that it is not there.
type Symptom struct {
	Symptom SymptomName `json:"symptom"`
	Absent  bool        `json:"absent,omitempty"`
}

// Equipment is what a message says about one installed thing. A nil number was
// not said: zero is a value (MaintainedYear 0 means never).
type Equipment struct {
	Item           Item      `json:"item"`
	Present        *bool     `json:"present,omitempty"` // false: there is none; else left out
	InstalledYear  *int      `json:"installed_year,omitempty"`
	AgeUnknown     bool      `json:"age_unknown,omitempty"` // the message says that nobody knows
	SizeGal        *float64  `json:"size_gal,omitempty"`
	Fuel           Fuel      `json:"fuel,omitempty"`
	SettingPSI     *float64  `json:"setting_psi,omitempty"` // a regulator's setting, a tank's air charge
	SetpointF      *float64  `json:"setpoint_f,omitempty"`  // the heater's thermostat
	Material       Material  `json:"material,omitempty"`
	Condition      Condition `json:"condition,omitempty"`
	MaintainedYear *int      `json:"maintained_year,omitempty"` // last flush or service, 0 for never
}

// Absent tells whether the message says that the house has no such thing.
func (e Equipment) Absent() bool { return e.Present != nil && !*e.Present }

// Work is what was done on the visit. A nil pressure was not told.
type Work struct {
	Action  Action   `json:"action"`
	ToPSI   *float64 `json:"to_psi,omitempty"`   // what it was set or charged to
	FromPSI *float64 `json:"from_psi,omitempty"` // the setting before
}

// Plan is a follow-up that a person asks for or commits to; InDays is nil when
// no time was said.
type Plan struct {
	Action Action `json:"action"`
	InDays *int   `json:"in_days,omitempty"`
}

// Kind returns "reading".
func (Reading) Kind() string { return "reading" }

// Kind returns "symptom".
func (Symptom) Kind() string { return "symptom" }

// Kind returns "equipment".
func (Equipment) Kind() string { return "equipment" }

// Kind returns "work".
func (Work) Kind() string { return "work" }

// Kind returns "plan".
func (Plan) Kind() string { return "plan" }

// Visit is what one or more messages said about one house on one day, in the
// order told. Questions to the bot are left out of it.
type Visit struct {
	Date      Date
	Readings  []Reading
	Symptoms  []Symptom
	Equipment []Equipment
	Work      []Work
	Plans     []Plan
}

// Add puts a statement into the visit; a kind that a visit does not hold is
// ignored.
func (v *Visit) Add(s Statement) {
	switch s := s.(type) {
	case Reading:
		v.Readings = append(v.Readings, s)
	case Symptom:
		v.Symptoms = append(v.Symptoms, s)
	case Equipment:
		v.Equipment = append(v.Equipment, s)
	case Work:
		v.Work = append(v.Work, s)
	case Plan:
		v.Plans = append(v.Plans, s)
	}
}

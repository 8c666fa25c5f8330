package assess

// The causes in a fixed order, so that the engine can keep them in arrays.
const (
	cSound = iota
	cSetHigh
	cSetLow
	cPassing
	cSeatCreep
	cRestricted
	cElastomer
	cNoPRV
	cExpansion
	cStreetLow
	cGauge
	nCauses
)

var causeNames = [nCauses]Cause{
	CauseSound, CauseSetHigh, CauseSetLow, CausePassing, CauseSeatCreep, CauseRestricted, CauseElastomer,
	CauseNoPRV, CauseExpansion, CauseStreetLow, CauseGauge,
}

// perCause is one number for each cause, in the order of causeNames.
type perCause [nCauses]float64

// baseRates is how common each cause is among the houses that a service
// plumber puts a gauge on, before anything is told or read. Judgement: no
// survey is known. Shop.BaseRates overrides it cause by cause; the rates need
// not sum to 1.
var baseRates = perCause{
	cSound:      0.42,
	cSetHigh:    0.10,
	cSetLow:     0.06,
	cPassing:    0.12,
	cSeatCreep:  0.08,
	cRestricted: 0.08,
	cElastomer:  0.06,
	cNoPRV:      0.07,
	cExpansion:  0.09,
	cStreetLow:  0.05,
	cGauge:      0.05,
}

// Symptoms that say something about the cause, in a fixed order.
var symptomOrder = [...]SymptomName{
	DarkWater, RustyWater, Leak, ReliefDischarge, Hammer, Noise, LowFlow, Swings, Creep, NoWater,
}

// symptomRates is how often a visit's report tells of each symptom, given the
// cause. Judgement throughout, in the light of these facts of the trade
// (common practice): a worn elastomer sheds black specks; high pressure shows
// as running fill valves, drips, hammer and noise; expansion opens the relief
// valve; a clogged strainer or a low setting shows as weak flow; a leaking
// seat lets the gauge climb. No rate is near 0 or 1: people notice, forget and
// misname.
var symptomRates = [len(symptomOrder)]perCause{
	//                 sound setHi setLo pass  creep restr elast noprv expan strlo gauge
	/* dark water  */ {0.03, 0.03, 0.03, 0.07, 0.06, 0.07, 0.75, 0.03, 0.03, 0.03, 0.03},
	/* rusty water */ {0.04, 0.04, 0.04, 0.04, 0.04, 0.07, 0.05, 0.04, 0.05, 0.05, 0.04},
	/* leak        */ {0.06, 0.25, 0.04, 0.30, 0.25, 0.05, 0.07, 0.30, 0.18, 0.04, 0.06},
	/* relief      */ {0.02, 0.07, 0.02, 0.12, 0.15, 0.02, 0.03, 0.10, 0.45, 0.02, 0.03},
	/* hammer      */ {0.05, 0.22, 0.03, 0.25, 0.15, 0.07, 0.06, 0.25, 0.08, 0.03, 0.05},
	/* noise       */ {0.05, 0.15, 0.04, 0.18, 0.12, 0.15, 0.08, 0.15, 0.07, 0.04, 0.05},
	/* low flow    */ {0.05, 0.03, 0.50, 0.04, 0.05, 0.65, 0.09, 0.03, 0.04, 0.60, 0.08},
	/* swings      */ {0.04, 0.05, 0.05, 0.18, 0.25, 0.10, 0.08, 0.10, 0.22, 0.10, 0.10},
	/* creep       */ {0.025, 0.03, 0.02, 0.08, 0.60, 0.03, 0.04, 0.02, 0.08, 0.02, 0.04},
	/* no water    */ {0.01, 0.01, 0.03, 0.01, 0.01, 0.08, 0.01, 0.01, 0.01, 0.06, 0.03},
}

const (
	// absentRate is how often a report says that a symptom is not there, when
	// it is not. Judgement; it cancels between causes but for the symptom's own rate.
	absentRate = 0.3
	// absentWrong is how often a symptom that would be told of is denied. Judgement.
	absentWrong = 0.05
	// silence is how far a symptom that nobody mentions counts against it: less
	// than in full, for a short report leaves out what is there. Judgement.
	silence = 0.9
)

// Age classes of a regulator: unknown, under 5, under 10, under 15, older.
var ageClasses = [...]float64{5, 10, 15}

// ageRates is the share of regulators in each age class, given the cause.
// Judgement from the service life of 10 to 15 years, some failing at 3 to 5,
// some reaching 20 (common practice): wear grows with age, a wrong setting
// does not; an old valve is told of less often.
var ageRates = [len(ageClasses) + 1]perCause{
	//              sound setHi setLo pass  creep restr elast noprv expan strlo gauge
	/* under 5  */ {0.32, 0.32, 0.32, 0.12, 0.16, 0.18, 0.08, 0.25, 0.30, 0.30, 0.30},
	/* under 10 */ {0.32, 0.32, 0.32, 0.22, 0.26, 0.26, 0.18, 0.25, 0.32, 0.32, 0.32},
	/* under 15 */ {0.22, 0.22, 0.22, 0.33, 0.32, 0.30, 0.36, 0.25, 0.22, 0.22, 0.22},
	/* older    */ {0.14, 0.14, 0.14, 0.33, 0.26, 0.26, 0.38, 0.25, 0.16, 0.16, 0.16},
}

// What a report says about the regulator's presence, given that there is one
// or none. Judgement: a tech who found none nearly always says so.
const (
	prvToldHere    = 0.62 // there is one, and the report shows it
	prvToldAbsent  = 0.02 // there is one, hidden or overlooked
	noneToldAbsent = 0.72 // there is none, and the report says so
	noneToldHere   = 0.03 // there is none, and another part was taken for one
)

// conditionRates is how often a report calls the regulator good, suspect or
// failed, given the cause. Judgement; what a tech concludes is worth something
// and is often a guess.
var conditionRates = [3]perCause{
	//             sound setHi setLo pass  creep restr elast noprv expan strlo gauge
	/* good    */ {0.14, 0.06, 0.06, 0.02, 0.03, 0.03, 0.04, 0.02, 0.12, 0.10, 0.10},
	/* suspect */ {0.04, 0.05, 0.05, 0.15, 0.15, 0.15, 0.18, 0.02, 0.04, 0.04, 0.05},
	/* failed  */ {0.01, 0.02, 0.02, 0.20, 0.12, 0.14, 0.06, 0.01, 0.01, 0.01, 0.02},
}

// tankRates is how often the tank is told of as missing, failed or in order,
// given the cause. The cause expansion means a closed system without a working
// tank (definition); the rest is judgement.
var tankRates = [3]perCause{
	//             sound setHi setLo pass  creep restr elast noprv expan strlo gauge
	/* missing */ {0.16, 0.16, 0.16, 0.17, 0.17, 0.16, 0.16, 0.25, 0.45, 0.18, 0.16},
	/* failed  */ {0.04, 0.05, 0.04, 0.06, 0.06, 0.05, 0.05, 0.03, 0.32, 0.04, 0.04},
	/* working */ {0.30, 0.28, 0.28, 0.25, 0.27, 0.28, 0.28, 0.15, 0.06, 0.25, 0.28},
}

// gaugeRates is how often the report doubts the gauge, given the cause. Judgement.
var gaugeRates = perCause{
	0.02, 0.02, 0.02, 0.02, 0.02, 0.02, 0.02, 0.02, 0.02, 0.02, 0.55,
}

// openHouseExpansion is how likely expansion still is where no regulator was
// found: a check valve may hide in the meter box (common practice). Judgement.
const openHouseExpansion = 0.025

// workRates is how often a visit does each kind of work, given what it found.
// Judgement: techs mostly do what fits what they found, and sometimes what was
// ordered.
var workRates = [...]struct {
	actions []Action
	rate    perCause
}{
	//                         sound setHi setLo pass  creep restr elast noprv expan strlo gauge
	{[]Action{SetPRV}, perCause{0.04, 0.40, 0.40, 0.10, 0.08, 0.06, 0.04, 0.01, 0.05, 0.04, 0.04}},
	{[]Action{ReplacedPRV}, perCause{0.02, 0.04, 0.04, 0.35, 0.25, 0.18, 0.25, 0.01, 0.02, 0.02, 0.02}},
	{[]Action{RebuiltPRV}, perCause{0.02, 0.02, 0.02, 0.10, 0.15, 0.25, 0.15, 0.01, 0.01, 0.02, 0.02}},
	{[]Action{InstalledPRV}, perCause{0.01, 0.01, 0.01, 0.02, 0.01, 0.01, 0.01, 0.35, 0.01, 0.01, 0.01}},
	{[]Action{InstalledTank, ReplacedTank, ChargedTank}, perCause{0.05, 0.05, 0.04, 0.05, 0.05, 0.04, 0.04, 0.05, 0.40, 0.03, 0.04}},
}

// Whether turning the screw moved the house to the new setting (first) or left
// it where it was (second), given the cause as found. A regulator that holds
// follows its screw (physics); the rest is judgement.
var (
	screwFollowed = perCause{0.90, 0.90, 0.85, 0.06, 0.30, 0.35, 0.85, 0.02, 0.85, 0.08, 0.50}
	screwIdle     = perCause{0.05, 0.05, 0.08, 0.85, 0.40, 0.30, 0.08, 0.90, 0.08, 0.85, 0.30}
)

// condemns tells whether a cause condemns the valve itself: only a fair
// house-side reading may do that.
func condemns(c int) bool {
	return c == cPassing || c == cSeatCreep || c == cRestricted || c == cElastomer
}

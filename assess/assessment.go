package assess

// Input is everything an assessment may know. The last visit is the one being
// assessed; those before it are the house's history, oldest first.
type Input struct {
	Today      Date
	Visits     []Visit
	Shop       Shop
	Lives      []Life      // the shop's own valve lives, for the life curve
	Neighbours []Neighbour // recent street-side readings nearby
	Lang       Lang        // language of the texts; empty is English
}

// Lang is the language of what people read.
type Lang string

// The languages that Lazyhand speaks.
const (
	English Lang = "en"
	Spanish Lang = "es"
)

// Shop is what the shop's configuration says about judging pressure. The zero
// Shop stands for the defaults of DefaultShop, field by field.
type Shop struct {
	BandPSI      [2]float64 `json:"band_psi"`      // house static, both limits included
	Gauge        GaugeSpec  `json:"gauge"`         // the crew's test gauge
	ServiceYears [2]float64 `json:"service_years"` // near its end, past it
	// TankTopPSI is the highest pressure an expansion tank must hold the house
	// to; 0 is the band's top.
	TankTopPSI float64 `json:"tank_top_psi,omitempty"`
	// BaseRates overrides how common each cause is, by cause; see the table in causes.go.
	BaseRates map[Cause]float64 `json:"base_rates,omitempty"`
}

// tankTop is the highest pressure an expansion tank must hold the house to.
func (s Shop) tankTop() float64 {
	if s.TankTopPSI != 0 {
		return s.TankTopPSI
	}
	return s.BandPSI[1]
}

// GaugeSpec is a gauge's accuracy grade by ASME B40.100 ("4A" … "D") and its span in psi.
type GaugeSpec struct {
	Grade   string  `json:"grade"`
	SpanPSI float64 `json:"span_psi"`
}

// Life is one regulator's time in service, in years; Ended when it was
// replaced as failed, false when it still serves (right-censored).
type Life struct {
	Years float64 `json:"years"`
	Ended bool    `json:"ended"`
}

// Neighbour is one street-side reading at a house nearby.
type Neighbour struct {
	Date Date    `json:"date"`
	PSI  float64 `json:"psi"`
}

// Side is the side of the regulator that a reading shows.
type Side string

// The sides.
const (
	HouseSide  Side = "house"
	StreetSide Side = "street"
	UnsureSide Side = "unsure"
)

// Fair says how far a reading may be believed as a static reading of its side.
type Fair string

// The three answers.
const (
	FairYes  Fair = "yes"
	Doubtful Fair = "doubtful"
	FairNo   Fair = "no"
)

// Reason is why a reading is less than fair, or why its verdict is soft.
type Reason string

// The reasons.
const (
	ReasonFrontBibb       Reason = "front_bibb"
	ReasonBibbUnspecified Reason = "bibb_unspecified"
	ReasonIrrigation      Reason = "irrigation"
	ReasonPointUnknown    Reason = "point_unknown"
	ReasonHeaterFiring    Reason = "heater_firing"
	ReasonHeaterUnknown   Reason = "heater_unknown"
	ReasonPlasticDrain    Reason = "plastic_drain"
	ReasonSediment        Reason = "sediment"
	ReasonFlowing         Reason = "flowing"
	ReasonPeak            Reason = "peak"
	ReasonNearLimit       Reason = "near_limit"
	ReasonGaugeDoubted    Reason = "gauge_doubted"
)

// JudgedReading is a reading with what may be believed of it.
type JudgedReading struct {
	PSI       float64   `json:"psi"`
	Point     TestPoint `json:"point"`
	Side      Side      `json:"side"`
	Fair      Fair      `json:"fair"`
	Reasons   []Reason  `json:"reasons"`
	PlusMinus float64   `json:"plus_minus"` // the gauge's share, psi
}

// Band is where the house's static pressure lies.
type Band string

// The bands.
const (
	BandLow    Band = "low"
	BandIn     Band = "in_band"
	BandHigh   Band = "high"
	OverRelief Band = "over_relief"
	BandNone   Band = "none"
)

// Urgency says how soon somebody must act.
type Urgency string

// The urgencies, gravest first.
const (
	Now   Urgency = "now"
	Soon  Urgency = "soon"
	Watch Urgency = "watch"
	Note  Urgency = "note"
)

// Finding is one thing that follows from what is known. Text is one plain
// sentence for a tech, in Input.Lang; Basis the source or rule behind it.
type Finding struct {
	Code    string  `json:"code"`
	Urgency Urgency `json:"urgency"`
	Text    string  `json:"text"`
	Basis   string  `json:"basis"`
}

// Cause is one explanation of a house's pressure.
type Cause string

// The causes told apart.
const (
	CauseSound      Cause = "sound"
	CauseSetHigh    Cause = "set_high"
	CauseSetLow     Cause = "set_low"
	CausePassing    Cause = "passing"        // no longer regulates: the house follows the street
	CauseSeatCreep  Cause = "seat_creep"     // holds under flow, climbs when nothing runs
	CauseRestricted Cause = "restricted"     // strainer or seat clogged, or stuck shut
	CauseElastomer  Cause = "elastomer_wear" // pressure still right, dark specks
	CauseNoPRV      Cause = "no_prv"
	CauseExpansion  Cause = "expansion"
	CauseStreetLow  Cause = "street_low"
	CauseGauge      Cause = "gauge" // gauge or test point at fault
)

// Likelihood is a cause with its probability.
type Likelihood struct {
	Cause Cause   `json:"cause"`
	P     float64 `json:"p"`
}

// NextCheck is the one test that would tell most for its minutes of work: what
// to do, and why, each a short phrase in Input.Lang.
type NextCheck struct {
	Check string `json:"check"`
	Why   string `json:"why"`
	Finds Item   `json:"-"` // what it looks for and may not find, empty for nothing
}

// Crossing is the day on which a trend leaves the band, with its 90 % interval.
type Crossing struct {
	Date  Date `json:"date"`
	Early Date `json:"early"`
	Late  Date `json:"late"`
}

// DriftState names what a series of visits shows.
type DriftState string

// The states of a series.
const (
	TooFew  DriftState = "too_few"
	Steady  DriftState = "steady"
	Rising  DriftState = "rising"
	Falling DriftState = "falling"
	Jumped  DriftState = "jumped"
)

// Drift is the trend of the fair readings since the last work on the valve.
// Low and High are the 90 % interval of the slope, P the trend's significance.
type Drift struct {
	State      DriftState `json:"state"`
	PSIPerYear *float64   `json:"psi_per_year"`
	Low        *float64   `json:"low"`
	High       *float64   `json:"high"`
	P          *float64   `json:"p"`
	Crosses    *Crossing  `json:"crosses"`
}

// ServiceLife places a valve's age against the service life.
type ServiceLife string

// The places.
const (
	LifeUnknown ServiceLife = "unknown"
	LifeWithin  ServiceLife = "within"
	LifeNearEnd ServiceLife = "near_end"
	LifePast    ServiceLife = "past"
)

// ValveLife is the regulator's age and what it is likely to do.
type ValveLife struct {
	AgeYears      *float64    `json:"age_years"`
	Life          ServiceLife `json:"life"`
	PFailNextYear *float64    `json:"p_fail_next_year"`
}

// Closed says whether expanding water can return to the main.
type Closed string

// The three answers.
const (
	ClosedYes    Closed = "yes"
	ClosedNo     Closed = "no"
	ClosedUnsure Closed = "unsure"
)

// TankState is what is known of the expansion tank.
type TankState string

// The states of the tank.
const (
	TankOK      TankState = "ok"
	TankMissing TankState = "missing"
	TankFailed  TankState = "failed"
	TankSmall   TankState = "small"
	TankUnsure  TankState = "unsure"
)

// Expansion says whether thermal expansion is under control. The sizes are
// null where the heater's size or the house's pressure is unknown.
type Expansion struct {
	Closed           Closed    `json:"closed"`
	Tank             TankState `json:"tank"`
	MinTankGal       *float64  `json:"min_tank_gal"`        // keeps the house at the band's top
	MinTankGalRelief *float64  `json:"min_tank_gal_relief"` // only keeps it 10 % under the relief valve
	RisePSIPerF      *float64  `json:"rise_psi_per_f"`      // with no tank
}

// Caution is the code of a warning.
type Caution string

// The cautions.
const (
	CautionScald       Caution = "scald"
	CautionRelief      Caution = "relief_valve"
	CautionGasOff      Caution = "gas_off"
	CautionHotDrain    Caution = "hot_drain"
	CautionTank        Caution = "pressurised_tank"
	CautionSlowOpen    Caution = "slow_open"
	CautionBonding     Caution = "bonding"
	CautionPlastic     Caution = "plastic_drain"
	CautionDiscoloured Caution = "discoloured_water"
	CautionBackflow    Caution = "backflow"
	CautionGasSmell    Caution = "gas_smell"
	CautionShutoff     Caution = "shutoff"
	CautionSupportTank Caution = "support_tank"
	CautionSetting     Caution = "setting_range"
	CautionLocalCode   Caution = "local_code"
)

// FollowUp is something to do later. Why is a short phrase in Input.Lang.
type FollowUp struct {
	Action Action `json:"action"`
	InDays int    `json:"in_days"`
	Why    string `json:"why"`
}

// Assessment is what follows from a house's visits; lists are never nil.
type Assessment struct {
	Readings  []JudgedReading `json:"readings"`
	HousePSI  *float64        `json:"house_psi"`
	StreetPSI *float64        `json:"street_psi"`
	Band      Band            `json:"band"`
	Findings  []Finding       `json:"findings"`
	Causes    []Likelihood    `json:"causes"` // sums to 1, best first
	NextCheck *NextCheck      `json:"next_check"`
	Drift     Drift           `json:"drift"`
	Valve     ValveLife       `json:"valve"`
	Expansion Expansion       `json:"expansion"`
	Cautions  []Caution       `json:"cautions"`
	FollowUps []FollowUp      `json:"follow_ups"`
}

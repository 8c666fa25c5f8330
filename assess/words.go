package assess

// TestPoint is where a gauge was put on the system.
type TestPoint string

// The test points a service plumber uses.
const (
	FrontBibb   TestPoint = "front_bibb"   // hose bibb at the front, often piped ahead of the regulator
	RearBibb    TestPoint = "rear_bibb"    // hose bibb at the back
	SideBibb    TestPoint = "side_bibb"    // hose bibb at a side
	Bibb        TestPoint = "bibb"         // a hose bibb, which one not said
	Laundry     TestPoint = "laundry"      // washing-machine box or laundry tap
	HeaterDrain TestPoint = "heater_drain" // drain valve of the water heater
	Kitchen     TestPoint = "kitchen"      // kitchen tap
	Bath        TestPoint = "bath"         // tub, shower or lavatory
	Street      TestPoint = "street"       // upstream of the regulator: meter, curb, city side
	AfterPRV    TestPoint = "after_prv"    // test port or tap right after the regulator
	Irrigation  TestPoint = "irrigation"   // a tap of the irrigation
)

// HeaterState says whether the water heater was heating during a reading.
type HeaterState string

// The heater's states; empty means the message did not say.
const (
	Idle   HeaterState = "idle"
	Firing HeaterState = "firing"
)

// Flow says whether water was running during a reading.
type Flow string

// The two kinds of reading; empty means the message did not say.
const (
	Static  Flow = "static"
	Flowing Flow = "flowing"
)

// When places a reading against work done on the same visit.
type When string

// Before and After stand for "as found" and "as left".
const (
	Before When = "before"
	After  When = "after"
)

// SymptomName names something seen, heard or smelled at the house.
type SymptomName string

// The symptoms that tell something about pressure.
const (
	DarkWater       SymptomName = "dark_water"       // black, grey, dark, specks of rubber
	RustyWater      SymptomName = "rusty_water"      // brown, orange, rust
	Leak            SymptomName = "leak"             // a drip, a running toilet
	ReliefDischarge SymptomName = "relief_discharge" // the T&P or another relief valve drips or dumps
	Hammer          SymptomName = "hammer"           // a bang when a valve closes
	Noise           SymptomName = "noise"            // hum, whistle, vibration
	LowFlow         SymptomName = "low_flow"         // weak, a trickle
	Swings          SymptomName = "swings"           // pressure goes up and down
	Creep           SymptomName = "creep"            // the gauge climbs with nothing running
	NoWater         SymptomName = "no_water"
	GasSmell        SymptomName = "gas_smell"
	ReliefBlocked   SymptomName = "relief_blocked" // relief valve capped, plugged or valved off
)

// Item names a piece of equipment.
type Item string

// The equipment that has a say in a house's pressure.
const (
	PRV           Item = "prv" // pressure reducing valve, the regulator
	Heater        Item = "heater"
	ExpansionTank Item = "expansion_tank"
	CheckValve    Item = "check_valve" // check or backflow preventer at the meter
	DrainValve    Item = "drain_valve" // on the heater
	Gauge         Item = "gauge"
	Softener      Item = "softener"
	Recirc        Item = "recirc" // hot-water recirculation pump
)

// Fuel is what heats the water; Tankless and HeatPump win over the fuel proper.
type Fuel string

// The fuels and kinds of heater.
const (
	Gas      Fuel = "gas"
	Electric Fuel = "electric"
	Propane  Fuel = "propane"
	HeatPump Fuel = "heat_pump"
	Tankless Fuel = "tankless"
)

// Material is what a drain valve is made of.
type Material string

// The materials a drain valve comes in.
const (
	Plastic Material = "plastic"
	Brass   Material = "brass"
)

// Condition is the state somebody found a piece of equipment in.
type Condition string

// The conditions; empty means not said.
const (
	Failed  Condition = "failed"  // failed, waterlogged, stuck
	Suspect Condition = "suspect" // worn, corroded, probably going
	Good    Condition = "good"
)

// Action names work done or planned.
type Action string

// Work done on a visit.
const (
	SetPRV             Action = "set_prv" // also a plan
	ReplacedPRV        Action = "replaced_prv"
	InstalledPRV       Action = "installed_prv" // there was none
	RebuiltPRV         Action = "rebuilt_prv"   // rebuild kit, cleaned strainer or seat
	InstalledTank      Action = "installed_tank"
	ReplacedTank       Action = "replaced_tank"
	ChargedTank        Action = "charged_tank" // air charge set
	FlushedHeater      Action = "flushed_heater"
	ReplacedHeater     Action = "replaced_heater"
	ReplacedDrainValve Action = "replaced_drain_valve"
	RepairedLeak       Action = "repaired_leak"
	ShutOff            Action = "shut_off" // the water was shut off
)

// Work planned for another day. SetPRV may be planned too.
const (
	Recheck     Action = "recheck"
	ReplacePRV  Action = "replace_prv"
	InstallTank Action = "install_tank"
	ReplaceTank Action = "replace_tank"
	OtherAction Action = "other"
)

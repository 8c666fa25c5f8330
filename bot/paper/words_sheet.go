package paper

import "lazyhand/assess"

// sheetWords is what the customer's sheet says.
type sheetWords struct {
	Title      string
	Subject    string                 // house, date
	Phone      string                 // number
	Visit      string                 // date
	Made       string                 // date
	Verdict    map[assess.Band]string // psi, low, high; of BandNone nothing
	Urgent     string                 // before what cannot wait
	HeadRead   string
	HeadMeans  string
	HeadParts  string
	HeadDone   string
	HeadAdvice string
	HeadCare   string
	Caption    string
	Footer     string
	Gauge      string // psi either way

	NothingRead  string
	Counts       string
	CountsStreet string
	CountsLittle string
	CountsNot    string
	ReadAt       string // psi, where
	Reason       map[assess.Reason]string
	Point        map[assess.TestPoint]string
	NoPoint      string
	HeaterIdle   string
	HeaterFiring string
	BeforeWork   string
	AfterWork    string
	Finding      map[string]string
	TooLittle    string
	Rises, Falls string // psi a year
	Passes       string // psi, month
	Passed       string // psi
	AllWell      string
	Valve        string
	Heater       string
	Tank         string
	Absent       string
	AgeUnknown   string
	Installed    string // year, age
	SetAt        string // psi
	AirAt        string // psi
	Gallons      string // size
	Fuel         map[assess.Fuel]string
	Life         map[assess.ServiceLife]string
	NothingDone  string
	DoneOn       string // date, what
	Work         map[assess.Action]string
	SetFrom      string // psi
	Advice       map[assess.Action]string
	TankAtLeast  string // gallons
	By           string // what, date
	AtOnce       string // what
	NothingToDo  string
	Booked       string // date
	Caution      map[assess.Caution]string
	CloseCaution []assess.Caution // always good to know, where there is room
}

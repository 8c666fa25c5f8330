package assess

import "sort"

// DemandCurve names a table that turns a load in fixture units into a probable
// flow. The tables differ: name the table with every answer.
type DemandCurve string

// The curves.
const (
	IPCFlushTanks   DemandCurve = "IPC flush tanks"
	IPCFlushometers DemandCurve = "IPC flushometer valves"
	NSPCFlushTanks  DemandCurve = "NSPC flush tanks"
)

// Source is the table behind a curve.
func (c DemandCurve) Source() string {
	switch c {
	case IPCFlushTanks:
		return "IPC table E103.3(3), flush-tank column (2021 adoption, as quoted)"
	case IPCFlushometers:
		return "IPC table E103.3(3), flush-valve column (as quoted)"
	case NSPCFlushTanks:
		return "NSPC table B.5.4, flush-tank column (edition not stated)"
	}
	return ""
}

// loadFlow is a row of a demand table: fixture units, gallons a minute.
type loadFlow struct{ wsfu, gpm float64 }

var ipcFlushTanks = [...]loadFlow{
	{1, 3}, {2, 5}, {3, 6.5}, {4, 8}, {5, 9.4}, {6, 10.7}, {7, 11.8}, {8, 12.8}, {9, 13.7}, {10, 14.6},
	{11, 15.4}, {12, 16}, {13, 16.5}, {14, 17}, {15, 17.5}, {16, 18}, {17, 18.4}, {18, 18.8}, {19, 19.2},
	{20, 19.6}, {25, 21.5}, {30, 23.3}, {35, 24.9}, {40, 26.3}, {45, 27.7}, {50, 29.1}, {60, 32}, {70, 35},
	{80, 38}, {90, 41}, {100, 43.5}, {120, 48}, {140, 52.5}, {160, 57}, {180, 61}, {200, 65}, {300, 85},
	{400, 105}, {500, 124}, {750, 170}, {1000, 208},
}

var ipcFlushometers = [...]loadFlow{{5, 15}, {7, 19.8}, {10, 27}, {15, 31}, {20, 35}, {30, 42}, {50, 50}}

var nspcFlushTanks = [...]loadFlow{
	{3, 3}, {4, 4}, {5, 4.5}, {6, 5}, {7, 6}, {8, 7}, {9, 7.5}, {10, 8}, {11, 8.5}, {12, 9}, {13, 10}, {14, 10.5},
	{120, 49}, {140, 53}, {160, 57}, {180, 61}, {200, 65}, {250, 75}, {300, 85}, {400, 105}, {500, 125}, {750, 170},
}

func (c DemandCurve) rows() []loadFlow {
	switch c {
	case IPCFlushTanks:
		return ipcFlushTanks[:]
	case IPCFlushometers:
		return ipcFlushometers[:]
	case NSPCFlushTanks:
		return nspcFlushTanks[:]
	}
	return nil
}

// DemandGPM is the flow that a load is likely to ask for at its peak, gallons a
// minute, read along straight lines between the rows (common practice); below
// the first row it is the first row's. Flows that run on, such as sprinklers,
// are added in gallons a minute afterwards (IPC 2018, E102.2). It is false
// above the table and for a curve that is not known.
func DemandGPM(curve DemandCurve, wsfu float64) (gpm float64, ok bool) {
	rows := curve.rows()
	if len(rows) == 0 || !finite(wsfu) || wsfu < 0 || wsfu > rows[len(rows)-1].wsfu {
		return 0, false
	}
	if wsfu == 0 {
		return 0, true
	}
	i := sort.Search(len(rows), func(i int) bool { return rows[i].wsfu >= wsfu })
	if i == 0 {
		return rows[0].gpm, true
	}
	a, b := rows[i-1], rows[i]
	return a.gpm + (b.gpm-a.gpm)*(wsfu-a.wsfu)/(b.wsfu-a.wsfu), true
}

// FixtureUnits is a fixture's load in water supply fixture units. Total is not
// the sum of cold and hot: they seldom run at once.
type FixtureUnits struct{ Cold, Hot, Total float64 }

// UnitsOf is the load of a fixture by its name in IPC 2018 table E103.3(2);
// shower, washer and water closets as quoted, edition not stated.
func UnitsOf(fixture string) (FixtureUnits, bool) {
	switch fixture {
	case "bathroom group private flush tank":
		return FixtureUnits{2.7, 1.5, 3.6}, true
	case "bathroom group private flushometer":
		return FixtureUnits{6, 3, 8}, true
	case "bathtub private", "kitchen sink private", "laundry trays", "shower head private", "washing machine 8 lb private":
		return FixtureUnits{1, 1, 1.4}, true
	case "bidet private":
		return FixtureUnits{1.5, 1.5, 2}, true
	case "combination fixture", "service sink":
		return FixtureUnits{2.25, 2.25, 3}, true
	case "dishwasher private":
		return FixtureUnits{0, 1.4, 1.4}, true
	case "lavatory private":
		return FixtureUnits{0.5, 0.5, 0.7}, true
	case "water closet private flush tank":
		return FixtureUnits{2.2, 0, 2.2}, true
	case "water closet private flushometer":
		return FixtureUnits{6, 0, 6}, true
	}
	return FixtureUnits{}, false
}

// HouseDemand is the load of a house's fixtures and the flow that it asks for
// at its peak. It is false when a fixture or the curve is not known.
func HouseDemand(fixtures map[string]int, curve DemandCurve) (wsfu, gpm float64, ok bool) {
	names := make([]string, 0, len(fixtures))
	for f := range fixtures {
		names = append(names, f)
	}
	sort.Strings(names) // sums of fractions depend on their order
	for _, f := range names {
		u, known := UnitsOf(f)
		if !known || fixtures[f] < 0 {
			return 0, 0, false
		}
		wsfu += u.Total * float64(fixtures[f])
	}
	gpm, ok = DemandGPM(curve, wsfu)
	return wsfu, gpm, ok
}

// OutletNeed is what an outlet needs while it runs: flow in gallons a minute
// and the pressure left at it, psi.
type OutletNeed struct{ GPM, PSI float64 }

// NeedOf is the need of an outlet by its name in IPC 2018 table 604.3 (water
// closets and flushometer valves as quoted). These are flowing pressures: the
// code has no static minimum.
func NeedOf(outlet string) (OutletNeed, bool) {
	switch outlet {
	case "bathtub balanced-pressure/thermostatic":
		return OutletNeed{4, 20}, true
	case "bidet thermostatic":
		return OutletNeed{2, 20}, true
	case "combination fixture", "laundry tray":
		return OutletNeed{4, 8}, true
	case "dishwasher residential":
		return OutletNeed{2.75, 8}, true
	case "drinking fountain":
		return OutletNeed{0.75, 8}, true
	case "lavatory private":
		return OutletNeed{0.8, 8}, true
	case "shower":
		return OutletNeed{2.5, 8}, true
	case "shower balanced-pressure/thermostatic":
		return OutletNeed{2.5, 20}, true
	case "sillcock":
		return OutletNeed{5, 8}, true
	case "sink residential":
		return OutletNeed{1.75, 8}, true
	case "sink service":
		return OutletNeed{3, 8}, true
	case "water closet close-coupled tank":
		return OutletNeed{3, 20}, true
	case "water closet one-piece tank":
		return OutletNeed{6, 20}, true
	case "water closet flushometer tank":
		return OutletNeed{1.6, 20}, true
	case "flushometer valve siphonic":
		return OutletNeed{25, 35}, true
	case "flushometer valve blow-out":
		return OutletNeed{25, 45}, true
	}
	return OutletNeed{}, false
}

// WorkingPressure is the static pressure that a fixture is made for, psi: the
// rating usually printed in its instructions. Common practice.
func WorkingPressure(fixture string) (low, high float64, ok bool) {
	switch fixture {
	case "faucet", "dishwasher hot line":
		return 20, 125, true
	case "toilet fill valve":
		return 20, 80, true
	case "pressure-assist toilet, 1.4 gal per flush":
		return 20, 80, true
	case "pressure-assist toilet, 1.1 gal per flush or less":
		return 35, 80, true
	case "flushometer valve":
		return 35, 80, true // 45 for some
	case "washing machine":
		return 20, 116, true // 120 by some; the lower is the safe one
	}
	return 0, 0, false
}

package assess

// Every number that a verdict rests on stands here, or beside the table it
// belongs to, with its unit and where it comes from. "As quoted" means read in
// a quotation of the document, "common practice" usual in the trade with no
// single document, "judgement" this program's own choice.

// Limits of a house's static pressure, psi.
const (
	// BandLowPSI is the customary least static pressure. From memory: IRC
	// P2903.3 in editions to about 2009; it is guidance, not a general minimum.
	BandLowPSI = 40.0
	// BandHighPSI is the most a house may stand at; 80 itself passes. IPC 2018,
	// 604.8, and UPC 2015, 608.2, both as quoted.
	BandHighPSI = 80.0
	// HeaterReliefPSI is the usual working pressure of a heater and the set
	// pressure of its relief valve. Heater instructions citing ANSI Z21.22/CSA
	// 4.4; common practice.
	HeaterReliefPSI = 150.0
	// HeaterReliefF is that valve's set temperature, °F. Same source; some
	// places allow less (Chicago Municipal Code 18-29-504: 200 °F).
	HeaterReliefF = 210.0
	// ReliefMarginShare is how far under the relief valve a system is kept: 10 %.
	// Common practice in tank sizing.
	ReliefMarginShare = 0.10
)

// The relief valve's discharge pipe, heater instructions and IPC side; common
// practice. Elsewhere the end is asked for between 6 and 24 inches (UPC side).
const (
	DischargeEndAboveFloorIn = 6.0
	DischargeMaxFeet         = 30.0
	DischargeMaxElbows       = 4
)

// The service life of a regulator where a shop has no records of its own,
// years; common practice: 10 to 15, some fail at 3 to 5, some reach 20.
const (
	ServiceNearEndYears = 10.0
	ServicePastYears    = 15.0
)

// Reduction through one regulator, inlet over outlet; common practice: 2 is
// ideal, never over 3 (others say 2.5, or 4).
const (
	IdealReductionRatio = 2.0
	MaxReductionRatio   = 3.0
)

// What is assumed of a heater when the message does not say, °F. The setpoint
// is the temperature that the US Consumer Product Safety Commission advises
// (leaflet on tap-water scalds, as quoted); the inlet is common practice.
const (
	AssumedInletF    = 50.0
	AssumedSetpointF = 120.0
)

// Head of standing water.
const (
	// HeadPSIPerFoot: IPC 2018, appendix E, E103.2.2 item 2.
	HeadPSIPerFoot = 0.433
	// StandardGravity, m/s². Exact by definition (3rd CGPM, 1901).
	StandardGravity = 9.80665
)

// Leak exponents N1 in L1/L0 = (P1/P0)^N1: Water Loss Control (textbook),
// p. 141; the range is common practice.
const (
	LeakExponentFixed = 0.5 // rigid holes, open taps
	LeakExponentSplit = 1.5 // splits that open with pressure
)

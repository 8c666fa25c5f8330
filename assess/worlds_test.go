package assess

import "math/rand/v2"

// world says how a town's houses and techs are. Every number is this test's
// invention; the worlds differ so that an engine fitted to one fails another.
type world struct {
	name                 string
	streetMean, streetSD float64
	daySwing             float64 // psi, half of day to night
	setMean, setSD       float64
	gaugeSD              float64 // scatter of one reading
	gaugeBias            float64 // error of a tech's gauge, sd
	fallOff              float64 // psi at a usual flow
	readStreet           float64
	readFront            float64
	frontAhead           float64 // share of front bibbs ahead of the regulator
	readFlow             float64
	readFiring           float64
	readPeak             float64
	twoHouse             float64 // a second house-side reading
	sayIdle              float64 // the heater's state is told
	tellPRV              float64 // regulator, age or setting is told
	tellAge              float64
	tellTank             float64
	hit, falseAlarm      float64 // symptoms: told when there, told when not
	deny                 float64 // told as absent when not there
	wrong                float64 // one fact of the visit is misreported
	earlier              float64 // mean number of earlier visits
	work                 float64 // the visit fixes what it found
	tank                 float64 // sound houses with a tank in order
	rest                 float64 // mean minutes since water last ran
	passGap              float64 // what a passing valve still takes, psi
	leastShift           float64 // the least error of a gauge at fault
	rates                map[Cause]float64
}

var evenly = map[Cause]float64{
	CauseSound: 2, CauseSetHigh: 1, CauseSetLow: 1, CausePassing: 1, CauseSeatCreep: 1, CauseRestricted: 1,
	CauseElastomer: 1, CauseNoPRV: 1, CauseExpansion: 1, CauseStreetLow: 1, CauseGauge: 1,
}

var mostlySound = map[Cause]float64{
	CauseSound: 8, CauseSetHigh: 2, CauseSetLow: 1, CausePassing: 3, CauseSeatCreep: 1.5, CauseRestricted: 1.5,
	CauseElastomer: 1.5, CauseNoPRV: 1.5, CauseExpansion: 2, CauseStreetLow: 1, CauseGauge: 1,
}

var worlds = []world{
	{
		name: "plain town", streetMean: 100, streetSD: 17, daySwing: 6, setMean: 58, setSD: 6, gaugeSD: 1.5, gaugeBias: 1.2, fallOff: 8,
		readStreet: 0.6, readFront: 0.3, frontAhead: 0.5, readFlow: 0.45, readFiring: 0.25, readPeak: 0.25, twoHouse: 0.35, sayIdle: 0.7,
		tellPRV: 0.6, tellAge: 0.5, tellTank: 0.5, hit: 0.7, falseAlarm: 0.04, deny: 0.15, wrong: 0.03, earlier: 0.5, work: 0.2, tank: 0.7, rest: 12, passGap: 1, leastShift: 12, rates: evenly,
	},
	{
		name: "hill town", streetMean: 118, streetSD: 25, daySwing: 10, setMean: 62, setSD: 8, gaugeSD: 2.2, gaugeBias: 2, fallOff: 10,
		readStreet: 0.45, readFront: 0.5, frontAhead: 0.7, readFlow: 0.35, readFiring: 0.2, readPeak: 0.35, twoHouse: 0.2, sayIdle: 0.5,
		tellPRV: 0.75, tellAge: 0.6, tellTank: 0.35, hit: 0.6, falseAlarm: 0.07, deny: 0.3, wrong: 0.05, earlier: 1.5, work: 0.3, tank: 0.5, rest: 12, passGap: 1, leastShift: 12, rates: mostlySound,
	},
	{
		name: "flat town", streetMean: 88, streetSD: 14, daySwing: 4, setMean: 55, setSD: 4, gaugeSD: 1.0, gaugeBias: 0.8, fallOff: 6,
		readStreet: 0.75, readFront: 0.15, frontAhead: 0.4, readFlow: 0.6, readFiring: 0.3, readPeak: 0.15, twoHouse: 0.5, sayIdle: 0.9,
		tellPRV: 0.5, tellAge: 0.35, tellTank: 0.7, hit: 0.8, falseAlarm: 0.02, deny: 0.1, wrong: 0.02, earlier: 0, work: 0, tank: 0.85, rest: 5, passGap: 0.5, leastShift: 14, rates: evenly,
	},
	{
		name: "hasty crew", streetMean: 102, streetSD: 20, daySwing: 8, setMean: 60, setSD: 9, gaugeSD: 2, gaugeBias: 1.6, fallOff: 9,
		readStreet: 0.35, readFront: 0.4, frontAhead: 0.55, readFlow: 0.25, readFiring: 0.15, readPeak: 0.2, twoHouse: 0.15, sayIdle: 0.4,
		tellPRV: 0.4, tellAge: 0.3, tellTank: 0.3, hit: 0.55, falseAlarm: 0.06, deny: 0.05, wrong: 0.06, earlier: 1, work: 0.4, tank: 0.6, rest: 20, passGap: 2, leastShift: 10, rates: mostlySound,
	},
	{
		name: "silent crew", streetMean: 96, streetSD: 22, daySwing: 9, setMean: 57, setSD: 10, gaugeSD: 1.8, gaugeBias: 2.2, fallOff: 7,
		readStreet: 0.7, readFront: 0.6, frontAhead: 0.3, readFlow: 0.5, readFiring: 0.4, readPeak: 0.4, twoHouse: 0.6, sayIdle: 0.3,
		tellPRV: 0.2, tellAge: 0.2, tellTank: 0.15, hit: 0.4, falseAlarm: 0.03, deny: 0, wrong: 0.04, earlier: 2, work: 0.1, tank: 0.6,
		rest: 30, passGap: 3, leastShift: 9, rates: evenly,
	},
	{
		name: "talkers", streetMean: 110, streetSD: 15, daySwing: 5, setMean: 54, setSD: 6, gaugeSD: 1.2, gaugeBias: 1, fallOff: 11,
		readStreet: 0.5, readFront: 0.2, frontAhead: 0.9, readFlow: 0.3, readFiring: 0.35, readPeak: 0.3, twoHouse: 0.25, sayIdle: 0.85,
		tellPRV: 0.9, tellAge: 0.8, tellTank: 0.8, hit: 0.85, falseAlarm: 0.06, deny: 0.4, wrong: 0.03, earlier: 0.3, work: 0.25, tank: 0.8,
		rest: 60, passGap: 1, leastShift: 15, rates: mostlySound,
	},
}

// anyWorld is a town with every number drawn from a wide range: no engine can
// have been fitted to it.
func anyWorld(r *rand.Rand) world {
	in := func(lo, hi float64) float64 { return lo + (hi-lo)*r.Float64() }
	w := world{
		name: "any town", streetMean: in(82, 125), streetSD: in(8, 28), daySwing: in(0, 12), setMean: in(50, 65), setSD: in(3, 11),
		gaugeSD: in(0.5, 2.5), gaugeBias: in(0.5, 2.5), fallOff: in(4, 12), readStreet: in(0.3, 0.9), readFront: in(0, 0.6), frontAhead: in(0.2, 0.95),
		readFlow: in(0.15, 0.8), readFiring: in(0.1, 0.5), readPeak: in(0.05, 0.5), twoHouse: in(0, 0.6), sayIdle: in(0.2, 1),
		tellPRV: in(0.2, 0.95), tellAge: in(0.1, 0.9), tellTank: in(0.1, 0.9), hit: in(0.4, 0.95), falseAlarm: in(0, 0.07), deny: in(0, 0.5),
		wrong: in(0, 0.07), earlier: in(0, 2), work: in(0, 0.4), tank: in(0.4, 0.95), rest: in(3, 60), passGap: in(0, 4), leastShift: in(8, 18),
		rates: map[Cause]float64{},
	}
	for _, c := range causeNames {
		w.rates[c] = in(0.4, 1.6)
	}
	w.rates[CauseSound] = in(1, 8)
	return w
}

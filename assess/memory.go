package assess

// What the engine makes of the past. Earlier readings are no independent
// witnesses of today's setting: either nobody turned the screw since, and all
// of them speak of it, or somebody did, and none does. Shares are judgement.
const (
	remembered     = 3    // earlier readings of each side that are weighed
	turnedSeldom   = 0.12 // the setting was changed since, though nothing is wrong with it
	turnedOften    = 0.5  // changed since, where the setting is what is wrong
	creptBefore    = 0.5  // a creeping house was read above its setting at an earlier visit
	creptHeld      = 0.35 // a creeping house held its setting at the earlier visits
	creptAbove     = 0.35 // it was read above it, here and there
	creptAlike     = 0.3  // it was read as high as now
	onceRegulated  = 0.5  // the house followed the street at the earlier visits too
	neverRegulated = 0.95 // likewise, where there never was a regulator
	strangeSetting = 0.2  // an earlier setting that was no usual one
)

// memory is what was known before the visit, as factors over the grids.
type memory struct {
	streetBefore [nStreet]float64  // the street's level, by earlier readings and the neighbours
	kept, turned [nSetting]float64 // the setting, by earlier house readings and what was told
	crept        [nSetting]float64 // likewise, had the house crept at some of the earlier visits
	toldAt       [nSetting]float64 // the setting that was told
	before       [nHouse]float64   // earlier house readings, had the house stood where it stands now
	anySetting   float64           // likewise, whatever the setting is
	asStreet     [nStreet]float64  // earlier house readings, had the house followed the street
	apart        float64           // earlier house readings, whatever the setting was then
	told         float64           // the setting that was told, whatever it is
}

// remember weighs the earlier visits, the neighbours and the setting that was
// told.
func (m *memory) remember(c *situation, usual *levels) {
	ones(m.streetBefore[:])
	for _, e := range lastOf(c.past.street, remembered) {
		m.street(e.PSI)
	}
	if c.level != nil {
		m.street(c.level.PSI)
	}
	var same, above [nSetting]float64
	ones(same[:])
	ones(above[:])
	ones(m.asStreet[:])
	ones(m.before[:])
	for _, e := range lastOf(c.past.house, remembered) {
		psi := clampPSI(e.PSI)
		for k := range same {
			f := curveHouseBefore.at(settingAt(k) - psi)
			same[k] *= f
			above[k] *= (1-creptBefore)*f + creptBefore*curveCrept.at(settingAt(k)-psi)
		}
		timesHouse(&m.before, curveHouseBefore, psi)
		for i := range m.asStreet {
			m.asStreet[i] *= curveStreetBefore.at(streetAt(i) - psi)
		}
	}
	for k, f := range same {
		m.apart += f * ((1-strangeSetting)*usual.setting[k] + strangeSetting/nSetting)
	}
	m.told = 1
	told := &m.toldAt
	ones(told[:])
	if c.found.prvSetting != nil {
		m.told = 0
		for k := range told {
			told[k] = curveSetting.at(settingAt(k) - clampPSI(*c.found.prvSetting))
			m.told += told[k] * usual.setting[k]
		}
	}
	for k := range same {
		m.kept[k] = told[k] * ((1-turnedSeldom)*same[k] + turnedSeldom*m.apart)
		m.crept[k] = told[k] * (creptHeld*((1-turnedSeldom)*same[k]+turnedSeldom*m.apart) + creptAbove*above[k])
		m.turned[k] = told[k] * ((1-turnedOften)*same[k] + turnedOften*m.apart)
		m.anySetting += m.kept[k] * usual.setting[k]
	}
}

func (m *memory) street(psi float64) {
	for i := range m.streetBefore {
		m.streetBefore[i] *= curveStreetBefore.at(streetAt(i) - clampPSI(psi))
	}
}

func lastOf(d []DatedPSI, n int) []DatedPSI { return d[max(0, len(d)-n):] }

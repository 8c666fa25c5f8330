package intents

// Lists of the lexicon that these rules know.
var (
	listFollowsReading = listOf("follows reading")
)

// A number that no test point is told with may be a pressure all the same: "front 92, now
// 61", "84 idle, 110 firing at the laundry". What stands right before and right behind it
// shows it: a time, a state, a word of measuring, a mark. A price, a distance or a wait has
// other neighbours: "we're into this for 60", "20 of new pex", "30 later".

// ledTo tells whether the neighbours of the number at i are such as a pressure has that is
// told without its own test point.
func (m *message) ledTo(i int) bool { return m.ledInto(i) && m.followed(i) }

var (
	leadsIn   = setOf(cNow, cBefore, cAfter, cPeak, cStatic, cFlowing, cState, cOn, cOff, cGauged, cRetract, cSame, cUnit)
	followsIt = setOf(cNow, cBefore, cAfter, cPeak, cStatic, cFlowing, cState, cOn, cOff, cGauged, cRetract, cUnit, cSym, cBurner)
)

// ledInto tells whether what stands before the number at i may lead to a pressure.
func (m *message) ledInto(i int) bool {
	k := i - 1
	for k >= 0 && (m.is(k, cHint, "hedge") || m.items[k].role == roleTaken) {
		k--
	}
	if k < m.sents[m.items[i].sent].from || m.items[k].mark || m.items[k].num != nil || m.items[k].site || m.items[k].point != "" {
		return true
	}
	if _, day := weekdays[m.text(k)]; day {
		return true // "peak since Thursday 131"
	}
	switch t := m.text(k); t {
	case "after", "before", "tras", "despues", "antes", "at":
		return k == 0 || m.ledInto(k) // "waited and looked after 30", "ohmed out at 13"
	case "the":
		return m.inList(i+1, listLinks) // "the 80 was with it idle"
	default:
		return m.meets(k, leadsIn) || m.showsNumber(k) || m.highOfTwo(k) || m.inList(k, listLinks) || m.inList(k, listSmallWords) ||
			oneOf(m.typed(k), "res", "fl", "st") || oneOf(t, "to", "from", "a", "en", "then", "had", "it", "it had") ||
			m.is(k, cItem, "gauge") || m.is(k, cClaim, "") ||
			m.isAny(k, cHint, "leads", "found", "was", "all", "moves", "ofpressure", "daytime")
	}
}

// tapsRun tells whether the clause from item k on only says which taps run: "37 tub and hose open".
func (m *message) tapsRun(k int) bool {
	if !m.kinds.has(cFlowing) {
		return false
	}
	first := k
	for ; k < len(m.items) && k < first+6; k++ {
		switch {
		case m.is(k, cFlowing, "") || m.inList(k, listOpen), k > first && m.shutThenOpen(k-1):
			return k > first
		case m.meets(k, taps), m.says(k, "and", "y", "both"), m.is(k, cDeterminer, ""), m.is(k, cPlace, ""):
		default:
			return false
		}
	}
	return false
}

// followed tells whether what stands behind the number at i may follow a pressure.
func (m *message) followed(i int) bool {
	k := i + 1
	for k < len(m.items) && m.items[k].role == roleTaken {
		k++
	}
	return m.stopAt(k) || m.items[k].num != nil || m.items[k].site || m.items[k].point != "" || m.meets(k, followsIt) ||
		m.inList(k, listLinks) || m.says(k, "high", "low", "lo", "black") || m.is(k, cItem, "") ||
		m.inList(k, listSmallWords) || m.inList(k, listFollowsReading) || m.isAny(k, cHint, "follows", "cue", "daytime") || m.tapsRun(k)
}

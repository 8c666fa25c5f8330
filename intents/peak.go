package intents

import "strings"

// Lists of the lexicon that these rules know.
var (
	listHighSaid  = listOf("high said")
	listJoinsHigh = listOf("joins high")
	listPutBack   = listOf("put back")
	listAtMost    = listOf("at most")
	listLeast     = listOf("least")
	listReached   = listOf("reached")

	listRedHands   = listOf("red hands")
	listBlackHands = listOf("black hands")
)

// peaksUnder marks all readings of a line whose head is the word of a peak at item i: "max needle:
// front bib 144, rear bib 139".
func (m *message) peaksUnder(i int) bool {
	se := &m.sents[m.items[i].sent]
	if se.header <= i || se.header > i+2 || i > se.from+1 || m.anyIn(m.items[i].sent, func(int) bool { return true }, setOf(cNow)) {
		return false
	}
	for k := se.header + 1; k < se.to; k++ {
		if m.isMark(k, ":") {
			return false // "overnight high: 138 this morning: 86"
		}
	}
	for k := range m.readings {
		if r := &m.readings[k]; r.sent == m.items[i].sent {
			r.Peak = !m.inList(r.at-1, listLeast)
		}
	}
	return true
}

// peaks marks the highest value of a time.
func (m *message) peaks() {
	if !m.holdsKey(keyHigh) && !m.kinds.has(cPeak) {
		return
	}
	for i := range m.items {
		if !m.begins(i, keyHigh) && !m.items[i].kinds.has(cPeak) {
			continue
		}
		if k := m.highBehind(i); k >= 0 {
			for j := range m.readings {
				if r := &m.readings[j]; r.sent == m.items[i].sent {
					r.Peak = r.at == k
				}
			}
			return
		}
		if !m.is(i, cPeak, "") && !m.highOfTwo(i) {
			continue
		}
		t := m.text(i)
		if strings.Contains(t, " far ") && !m.isNum(i+1) {
			continue // "went as far as 12 Elm"
		}
		if t == "max" || t == "maximum" || t == "maximo" || t == "maxima" {
			if m.is(i-1, cTarget, "") || m.text(i-1) == "code" || m.text(i+1) == "allowed" {
				continue
			}
		}
		other := func(k int) bool {
			return m.isNum(k) && m.items[k].role != roleReading && unitDays(m.items[k].unit) == 0 && m.items[k].unit != "hour"
		}
		if oneOf(t, "max", "maximum", "maximo", "maxima") && (other(i-1) || other(i+1) || m.inList(i+1, listLinks) && other(i+2)) {
			continue
		}
		if n := m.right(i, 3, true, func(k int) bool { return m.items[k].num != nil }); (t == "max" || t == "maximum") && n > 0 &&
			m.items[n].why == "on a label" {
			continue // "max working 150 on the heater plate"
		}
		if p := m.text(i - 1); m.negLeft(i, 2) || p == "called" || p == "named" || p == "name" {
			continue
		}
		if m.nightOf(i) || m.handReset(i) || m.inList(i, listAtMost) && !m.reachedAtMost(i) {
			continue
		}
		if m.showsNoPressure(i) {
			continue
		}
		if m.peaksUnder(i) {
			continue
		}
		best, led := -1, m.highLeads(i)
		if led >= 0 && m.items[led].role == roleIgnored {
			continue // "code is max of 80"
		}
		for k := range m.readings {
			r := &m.readings[k]
			if r.at == led {
				best = k
				break
			}
			if r.sent != m.items[i].sent || m.inList(r.at-1, listLeast) {
				continue // "overnight: low 66 high 118"
			}
			if i >= r.from && i < r.to && (best < 0 || abs(i-r.at) < abs(i-m.readings[best].at)) {
				best = k
			}
		}
		if best >= 0 {
			if m.nowNear(best) && (m.peakToldBefore(best) || !(t == "lazy hand" || t == "peak" || t == "max") && !(m.is(i, cHint, "needle") && m.shownBy(i, best))) {
				continue
			}
			m.readings[best].Peak = true
			continue
		}
		lo, hi := m.readingsOf(m.items[i].sent)
		if lo < hi {
			continue
		}
		// "Lazy hand: next line"
		if lo, hi := m.readingsOf(m.items[i].sent + 1); hi-lo == 1 && lo < hi && m.sents[m.items[i].sent].to-m.sents[m.items[i].sent].from <= 4 {
			m.readings[lo].Peak = true
		}
	}
}

// peakToldBefore tells whether a highest pressure stands before reading k in its sentence: "hi 127 since 4 pm, 71 live,
// lazy hand on the kitchen faucet".
func (m *message) peakToldBefore(k int) bool {
	return k > 0 && m.readings[k-1].Peak && m.readings[k-1].sent == m.readings[k].sent
}

var reachedGate = onlyWithList(listReached)

// reachedThen marks a pressure that is said to have been reached, where one gauge shows less now: "it hit
// 128, now 72".
func (m *message) reachedThen() {
	if m.shut(reachedGate) {
		return
	}
	for k := 1; k < len(m.readings); k++ {
		a, b := &m.readings[k-1], &m.readings[k]
		if a.sent == b.sent && samePlace(a, b) && a.PSI > b.PSI && m.inList(a.at-1, listReached) && m.nowNear(k) && !m.workedBetween(-1, b.at) {
			a.Peak = true
		}
	}
}

var handGate = onlyWithList(listRedHands, listBlackHands)

// hands reads the colours of a gauge's two hands: the red one shows the highest of a time, the black one
// the present: "red 128 black 72, laundry", "aguja roja 128, negra 72".
func (m *message) hands() {
	if m.shut(handGate) {
		return
	}
	var red, black [2]int
	n, r := 0, 0
	named := m.kinds.has(cPeak) || m.has(cHint, "needle") || m.has(cItem, "gauge")
	for i := range m.items {
		named = named || m.items[i].n > 1 && m.is(i, cNow, "") && strings.HasSuffix(m.text(i), " needle")
		switch {
		case !m.handShows(i):
		case m.inList(i, listRedHands) && r < len(red):
			red[r] = i
			r++
		case m.inList(i, listBlackHands) && n < len(black):
			black[n] = i
			n++
		}
	}
	if !named && (r == 0 || n == 0) {
		return
	}
	for _, i := range red[:r] {
		m.say(i, "peak")
		m.items[i].muted = true // no colour of water
	}
	for _, i := range black[:n] {
		m.say(i, "current")
		m.items[i].muted = true
	}
}

// handShows tells whether a pressure follows the colour at item i at once: "black at 72", "negra: 72".
func (m *message) handShows(i int) bool {
	if !m.inList(i, listRedHands) && !m.inList(i, listBlackHands) {
		return false
	}
	k := i + 1
	for m.inList(k, listLinks) || m.isMark(k, ":", "=", ",") || m.inList(k, listSideShows) || m.is(k, cClaim, "") || m.says(k, "hand", "needle", "aguja", "one") {
		k++
	}
	return m.isNum(k) && m.items[k].value >= leastPSI && (m.items[k].unit == "" || pressureUnit(m.items[k].unit))
}

// reachedAtMost tells whether "at most" at item i is said of a number that was reached, no limit: "reached
// 140 psi at most".
func (m *message) reachedAtMost(i int) bool {
	k := i - 1
	if m.is(k, cUnit, "") {
		k--
	}
	return m.isNum(k) && m.left(k, 3, false, func(j int) bool { return m.inList(j, listReached) }) >= 0
}

// showsNoPressure tells whether the number that a hand at item i is told to show is no reading, so
// that no other one is the peak: "relief opened at 148 on the lazy hand, pressure there 78".
func (m *message) showsNoPressure(i int) bool {
	k := i - 1
	for m.says(k, "on", "at", "by") || m.is(k, cDeterminer, "") {
		k--
	}
	if m.is(i, cHint, "pegged") && m.isNum(i-1) && m.items[i-1].role != roleReading {
		return true // "my 160 maxed out"
	}
	if m.numIs(i-1, roleIgnored) && oneOf(m.items[i-1].why, "a rise", "a difference") {
		return true // "climbs 20 overnight"
	}
	return m.is(i, cHint, "needle") && k < i-1 && m.isNum(k) && m.items[k].role != roleReading
}

// highLeads returns the number that a night's high leads to, so that it is not that of the
// reading before: "84 out back overnight high 97"; -1 for none.
func (m *message) highLeads(i int) int {
	if t := m.text(i); strings.HasSuffix(t, " high") || strings.HasSuffix(t, " max") || strings.HasSuffix(t, " peak") {
		switch {
		case m.isNum(i + 1):
			return i + 1
		case m.isMark(i+1, ":", "=") && m.isNum(i+2):
			return i + 2
		}
	}
	if m.isNum(i+1) && m.isNum(i-1) && m.is(i-2, cNow, "") && !m.is(i+2, cNow, "") {
		return i + 1 // "now 81 max 126"
	}
	if strings.HasSuffix(m.text(i), " of") && m.isNum(i+1) {
		return i + 1 // "62 with a peak of 118"
	}
	k := i + 1
	for m.inList(k, listHighSaid) || m.inList(k, listLinks) || m.isMark(k, ":", "=") {
		k++
	}
	joined := m.inList(i-1, listJoinsHigh) && m.text(k+1) != "now" && !m.is(k+1, cNow, "")
	if m.is(i, cHint, "needle") && (k > i+1 || joined) && m.isNum(k) {
		return k // "washer 76 with the lazy hand at 141"
	}
	return -1
}

// shownBy tells whether the hand at i, which stays where it was pushed, is what reading k is read off,
// whatever time is told with it: "max pointer is sitting at 143 right now, live needle 72".
func (m *message) shownBy(i, k int) bool {
	at := m.readings[k].at
	return i < at && m.items[i].seg == m.items[at].seg && m.left(at, at-i-1, true, func(j int) bool { return m.isNum(j) || m.pointAt(j) }) < 0
}

// handReset tells whether the hand at item i was only put back to the needle: "lazy hand reset, 70 now".
func (m *message) handReset(i int) bool {
	k := i + 1
	for m.inList(k, listLinks) || m.says(k, "is", "got", "back") {
		k++
	}
	if m.inList(k, listPutBack) {
		return !m.isNum(k + 1)
	}
	k = i - 1
	for m.is(k, cDeterminer, "") {
		k--
	}
	return m.inList(k, listPutBack) && !m.isNum(i+1) && !m.inList(i+1, listHighSaid) && !m.isMark(i+1, ":")
}

// nowNear tells whether a reading is told as the present one.
func (m *message) nowNear(k int) bool {
	r := &m.readings[k]
	for i := r.from; i < r.to; i++ {
		if m.is(i, cNow, "") {
			return true
		}
	}
	return false
}

// nightOf tells whether the night at i is one of trouble, not of a gauge: "relief
// dripped all night, laundry 96".
func (m *message) nightOf(i int) bool {
	if !m.is(i, cHint, "night") {
		return false
	}
	seg := m.items[i].seg
	trouble := func(k int) bool {
		return m.items[k].seg == seg && (m.is(k, cSym, "") || m.is(k, cRelief, "") || m.is(k, cDischarge, ""))
	}
	return m.left(i, 8, true, trouble) >= 0 &&
		m.left(i, 8, true, func(k int) bool { return m.items[k].seg == seg && m.items[k].num != nil }) < 0
}

// highOfTwo reads "high 141 low 62".
func (m *message) highOfTwo(i int) bool {
	if t := m.text(i); t != "high" && t != "hi" || !m.isNum(i+1) && !m.isNum(i+2) && !m.isNum(i+3) {
		return false
	}
	if i > 0 && m.isNum(i-1) && (m.items[i-1].unit == "hour" || m.items[i-1].unit == "day") {
		return true // "24 hour high 144"
	}
	if m.isNum(i+1) && (i == 0 || m.items[i-1].mark || m.text(i-1) == "the") &&
		((m.closes(i+1) || m.meets(i+2, pointClasses) && m.closes(i+2)) && m.toldWithNow(i) || m.sinceTime(i+2)) {
		return true // "high 139 / right now 74", "hi 127 since 4 pm"
	}
	if m.isMark(i+1, ":", "=") && m.isNum(i+2) && m.right(i, 8, true, func(k int) bool { return m.is(k, cNow, "") && m.isMark(k+1, ":", "=") }) > 0 {
		return true // "hi: 137, now: 48"
	}
	low := func(k int) bool { return m.text(k) == "low" || m.text(k) == "lo" }
	return m.right(i, 7, true, low) >= 0 || m.left(i, 7, true, low) >= 0
}

// sinceTime tells whether item k says since when the gauge hung, or at what time it showed what stands
// before: "since 4 pm", "at 3 am", "since Tuesday".
func (m *message) sinceTime(k int) bool {
	if !m.says(k, "since", "desde", "at", "@") {
		return false
	}
	return m.isNum(k+1) && m.clock(k+1) || m.is(k+1, cHint, "daytime") || weekdays[m.text(k+1)] > 0 && m.text(k) != "at"
}

// toldWithNow tells whether another pressure beside the number behind item i tells when it
// was: now, or before the gauge was left on.
func (m *message) toldWithNow(i int) bool {
	if m.has(cNow, "") || m.gaugeLeftOn(i) {
		return true
	}
	return m.nextNum(i+1) > 0 && m.right(i, 6, true, func(k int) bool { return m.is(k, cBefore, "") }) > 0
}

// gaugeLeftOn tells whether a line before item i says that a gauge hung for a time:
// "gauge hung on the rear bib overnight".
func (m *message) gaugeLeftOn(i int) bool {
	for s := m.items[i].sent - 1; s >= 0; s-- {
		if m.sentenceIs(s, cPeak, "") {
			return true
		}
	}
	return false
}

// highBehind returns the number that "high" at item i is told behind, another one being
// called low: "overnight: 58 low, 131 high"; -1 for none.
func (m *message) highBehind(i int) int {
	if t := m.text(i); t != "high" && t != "hi" || !m.isNum(i-1) || !m.closes(i) {
		return -1
	}
	now := func(k int) bool { return m.is(k, cNow, "") && m.isNum(k-1) && m.closes(k) }
	if m.text(i) == "hi" && m.right(i, 5, true, now) > 0 {
		return i - 1 // "134 hi, 77 now"
	}
	low := func(k int) bool { return (m.text(k) == "low" || m.text(k) == "lo") && m.isNum(k-1) }
	if m.left(i, 5, true, low) < 0 && m.right(i, 5, true, low) < 0 {
		return -1
	}
	return i - 1
}

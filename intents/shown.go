package intents

// Lists of the lexicon that these rules know.
var (
	listBesideShown = listOf("beside shown")
	listHowShown    = listOf("how shown")
	listNeverShown  = listOf("never shown")
	listShowsThen   = listOf("shows then")
	listThatShows   = listOf("that shows")
	listNotSeen     = listOf("not seen")
	listBeforeShown = listOf("before shown")
)

// A number that names no tap and no unit is taken for what a gauge shows only where its words say
// so: it stands alone or with words of time and state, or a verb of showing leads to it. A word
// that says neither makes it somebody's or something else's ("drained 25", "leaving it at 60"): a
// colleague would ask.

// shown tells whether nothing stands beside the number at i in its clause but what is told with
// what a gauge shows.
func (m *message) shown(i int) bool {
	return m.strangeBeside(i) < 0 || m.onlyNumbers(m.items[i].sent)
}

// strangeBeside returns the first item in the clause of the number at i that is not told with what
// a gauge shows, -1 for none. Behind the number the clause may tell how it was shown, "66 w the
// hose off", and before it on what occasion, "when he flushed it dropped to 44".
func (m *message) strangeBeside(i int) int {
	led := m.ledByShowing(i)
	from := m.clauseStart(i)
	for k := i - 1; k >= from; k-- {
		if m.besideShown(k) {
			continue
		}
		if m.inList(k, listNotSeen) || !led || !m.inList(k+1, listThatShows) && !m.inList(from, listHowShown) {
			return k
		}
		for ; k >= from; k-- {
			if m.inList(k, listNotSeen) {
				return k
			}
		}
	}
	for k := i + 1; k < m.clauseEnd(i) && (!m.inList(k, listHowShown) || m.inList(k, listNeverShown)); k++ {
		if led && m.says(k, "theres", "hay") {
			break // dictated with no stop between
		}
		if !m.besideShown(k) || m.text(k) == "out" {
			return k
		}
	}
	return -1
}

// ledByShowing tells whether a verb of showing leads to the number at i: "it dropped to".
func (m *message) ledByShowing(i int) bool {
	k := i - 1
	for m.inList(k, listToShown) || m.inList(k, listWentTo) || m.is(k, cHint, "hedge") || m.is(k, cHint, "particle") || m.text(k) == "it" {
		k--
	}
	return m.isAny(k, cHint, "moves", "found") || m.inList(k, listShows) || m.inList(k, listShowsThen) || m.is(k, cClaim, "says") || m.reckons(k)
}

// showsNext tells whether the words beside the number at i say that a gauge in hand shows it now, and
// nothing strange stands beside it: a verb of showing leads to it, its sentence opens with it and
// says no more or how it was shown, or it stands alone behind what was done to see it: "settled at
// 62", "64 vs 95 last visit", "gave it a minute, 63".
func (m *message) showsNext(i int) bool {
	if !m.gaugeInHand() || !m.shown(i) {
		return false
	}
	s := &m.sents[m.items[i].sent]
	from, to := m.clauseStart(i), m.clauseEnd(i)
	switch {
	case from > s.from:
		return from == i && m.closes(i) && to == s.to && m.seenBefore(s.from, from)
	case m.ledByShowing(i) || m.saysAgain(from, i):
		return true
	case m.firstOf(m.items[i].sent) != i:
		return false
	}
	for k := i + 1; k < s.to; k++ {
		if m.inList(k, listHowShown) && k < to {
			return true
		}
		if !m.besideShown(k) {
			return false
		}
	}
	return true
}

// saysAgain tells whether one of items from..to says that a gauge shows what it did: "sigue en 71".
func (m *message) saysAgain(from, to int) bool {
	for k := from; k < to; k++ {
		if m.inList(k, listRepeats) {
			return true
		}
	}
	return false
}

// seenBefore tells whether items from..to tell what is done before a gauge is read, and nothing that
// has pressures of its own.
func (m *message) seenBefore(from, to int) bool {
	done := false
	for k := from; k < to; k++ {
		if m.inList(k, listNotSeen) || m.items[k].kinds.meets(ofDevices) && !m.is(k, cItem, "gauge") {
			return false
		}
		done = done || m.inList(k, listBeforeShown)
	}
	return done
}

// showWith are the classes of words that are told with what a gauge shows.
var showWith = setOf(cNow, cBefore, cAfter, cPeak, cState, cStatic, cFlowing, cOn, cOff, cGauged, cRetract, cSame, cUnit, cBurner, cOwn, cDeterminer)

// besideShown tells whether item k is told with what a gauge shows.
func (m *message) besideShown(k int) bool {
	it := &m.items[k]
	switch {
	case m.inList(k, listNeverShown):
		return false
	case it.mark, it.site, it.point != "", it.role == roleTaken, m.jobOfTime(k-1) == k+1, m.jobOfTime(k-2) == k:
		return true
	case it.num != nil:
		return it.role == roleReading || it.unit != "" || it.num.time || it.value <= 12 && m.says(k-1, "at", "las", "a las")
	case m.reckons(k), m.reckons(k + 1):
		return true // "I make it 62"
	case m.says(k, "from", "desde", "de") && m.isNum(k+1) && m.inList(k+2, listWentTo):
		return true // "crept from 60 up to 75"
	}
	return m.meets(k, showWith) || m.is(k, cItem, "gauge") || m.is(k, cSym, "creep") || m.showsNumber(k) ||
		m.inList(k, listLinks) || m.inList(k, listShows) || m.inList(k, listWentTo) || m.inList(k, listBesideShown) || m.inList(k, listShowsThen) || m.inList(k, listWholeHouse) ||
		m.isAny(k, cHint, "hedge", "moves", "ofpressure", "cue", "leads", "found", "follows", "daytime", "all", "was")
}

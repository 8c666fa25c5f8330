package intents

import (
	"slices"
	"strings"

	"lazyhand/assess"
)

// Lists of the lexicon that these rules know.
var (
	listWhenTurned = listOf("when turned")
	listTellsWhen  = listOf("tells when")
	listWithState  = listOf("with state")
)

// The heater's state goes from the words that tell it to the pressures.

// heaters gives each reading the heater's state: one told once goes on all.
func (m *message) heaters() {
	if !m.holdsKey(keyState) {
		return
	}
	var room [8]mention
	all := m.heaterStates(room[:0])
	if len(all) == 0 || m.heaterTurned(all) || m.heaterRow(all) {
		return
	}
	m.untilTurned(all)
	if m.inTurns(all) {
		for k := range all {
			m.readings[k].Heater = all[k].state
		}
		return
	}
	if len(all) == 1 && m.heaterInBrackets(all[0]) {
		return
	}
	if !slices.ContainsFunc(all, func(a mention) bool { return a.state != all[0].state }) {
		for k := m.toldApart(all); k < len(m.readings); k++ {
			m.readings[k].Heater = all[0].state
		}
		return
	}
	if m.heaterBehind(all) {
		return
	}
	for k := range m.readings {
		r := &m.readings[k]
		if best := r.nearest(len(all), func(j int) int { return all[j].at }); best >= 0 {
			r.Heater = all[best].state
		}
	}
	for _, a := range all {
		m.heaterOver(a, all)
	}
	m.heaterCarried(all)
}

// heaterInBrackets keeps a state told in brackets to the readings that stand in them: "kitchen 88 (63
// burner off)". False where none does.
func (m *message) heaterInBrackets(a mention) bool {
	lo, hi := m.readingsOf(m.items[a.at].sent)
	inside := false
	for k := lo; k < hi; k++ {
		if m.inSameBrackets(a.at, m.readings[k].at) {
			m.readings[k].Heater, inside = a.state, true
		}
	}
	return inside
}

// heaterBehind gives each state to the readings before it where one sentence tells them in turn,
// each group with its state at its end: "kitchen 77 and tub 77 burner off, kitchen 91 and tub 90
// burner on".
func (m *message) heaterBehind(all []mention) bool {
	s := m.items[all[0].at].sent
	lo, hi := m.readingsOf(s)
	if hi-lo != len(m.readings) || hi-lo < 3 || m.items[all[len(all)-1].at].sent != s || m.readings[hi-1].at > all[len(all)-1].at {
		return false
	}
	k := lo
	for n, a := range all {
		first := k
		for k < hi && m.readings[k].at < a.at {
			k++
		}
		if k == first || n > 0 && m.items[m.readings[first].at].seg == m.items[all[n-1].at].seg {
			return false
		}
	}
	k = lo
	for _, a := range all {
		for k < hi && m.readings[k].at < a.at {
			m.readings[k].Heater = a.state
			k++
		}
	}
	return true
}

// heaterStates finds where the message tells the heater's state. A correction leaves the last.
func (m *message) heaterStates(all []mention) []mention {
	for i := range m.items {
		if !m.begins(i, keyState) {
			continue
		}
		st := m.heaterTag(i)
		if st == "" || m.stateDenied(i) || m.stateOfRelief(i) {
			continue
		}
		if n := len(all); n > 0 && m.takesBack(all[n-1].at+1, i) {
			all = all[:n-1]
		}
		all = append(all, mention{at: i, state: st})
	}
	if len(all) > 1 && m.hasAsk(AskCorrect) {
		all = m.withoutSlips(all)
	}
	return all
}

// withoutSlips leaves out the states that a correction tells to have been sent by mistake, where another
// is told: "the heater was firing, I'd written idle".
func (m *message) withoutSlips(all []mention) []mention {
	slip := func(a mention) bool {
		k := m.left(a.at, 4, false, func(k int) bool { return m.is(k, cHint, "slip") || m.heaterTag(k) != "" })
		return m.is(k, cHint, "slip") && m.items[k].seg == m.items[a.at].seg
	}
	if !slices.ContainsFunc(all, func(a mention) bool { return !slip(a) }) {
		return all
	}
	return slices.DeleteFunc(all, slip)
}

// stateOfRelief tells whether what may be the heater's state at item i is that of its relief valve,
// which is blocked: "relief on this heater is valved off".
func (m *message) stateOfRelief(i int) bool {
	return slices.ContainsFunc(m.symptoms, func(x symptomSeen) bool { return x.at == i && x.Symptom.Symptom == assess.ReliefBlocked })
}

// heaterOver gives the state told at one place to the readings of its sentence that have none, or,
// where it stands in a line of its own, to those before: "both with the elements off".
func (m *message) heaterOver(a mention, all []mention) {
	s := m.items[a.at].sent
	quantified := m.quantified(a.at)
	lo, hi := m.readingsOf(s)
	for k := lo; k < hi; k++ {
		r := &m.readings[k]
		if r.Heater != "" {
			continue
		}
		if quantified && (a.at > r.at || m.noStateBetween(all, a.at, r.at)) ||
			a.at > r.at && m.items[a.at].seg != m.items[r.at].seg && m.noStateBetween(all, r.at, a.at) ||
			a.at < r.at && m.noStateBetween(all, a.at, r.at) {
			r.Heater = a.state
		}
	}
	if lo < hi || !quantified && !m.quantifiedLine(s) && !m.nextTold(a, all) {
		return
	}
	for k := range m.readings {
		if r := &m.readings[k]; r.sent < s && r.Heater == "" {
			r.Heater = a.state
		}
	}
}

// nextTold tells whether the next reading behind the state of a sentence of its own has one told with it, so that
// this state is of the readings before: "A 63, B 64. Heater idle for A and B. With the burner lit 97".
func (m *message) nextTold(a mention, all []mention) bool {
	k := slices.IndexFunc(m.readings, func(r reading) bool { return r.at > a.at })
	return k > 0 && slices.ContainsFunc(all, func(b mention) bool {
		return b.state != a.state && m.items[b.at].sent == m.readings[k].sent
	})
}

// heaterCarried gives readings without a state the one that was told last before them.
func (m *message) heaterCarried(all []mention) {
	for k := range m.readings {
		r := &m.readings[k]
		if r.Heater != "" {
			continue
		}
		for _, a := range all {
			if a.at < r.at && !(m.items[a.at].sent < r.sent && m.alternates(all, m.items[a.at].sent)) {
				r.Heater = a.state
			}
		}
		if r.Heater == "" && r.sent == m.items[all[0].at].sent {
			r.Heater = all[0].state
		}
	}
}

// alternates tells whether sentence s tells both states, so that neither holds of what is read later:
// "77 tub with the burner off, 96 tub with the burner on. Street 111".
func (m *message) alternates(all []mention, s int) bool {
	var first assess.HeaterState
	for _, a := range all {
		if m.items[a.at].sent != s {
			continue
		}
		if first != "" && a.state != first {
			return true
		}
		first = a.state
	}
	return false
}

// toldApart returns the first reading that the only state of a message holds of: all of them,
// but of one gauge read twice only the second where the state leads right to it, "laundry 61,
// heater firing 68", or follows it with the pressure moved that way, "laundry 61, 68 with the heater on".
func (m *message) toldApart(all []mention) int {
	if len(all) == 1 && len(m.readings) == 2 && m.movedWith(all[0], &m.readings[0], &m.readings[1]) {
		return 1
	}
	for k := range m.readings {
		r := &m.readings[k]
		if len(all) == 1 && k > 0 && r.at == all[0].at+1 && (r.inherit || len(r.points) == 0) &&
			m.items[r.at].seg != m.items[m.readings[k-1].at].seg && !m.quantified(r.at) {
			return k
		}
	}
	return 0
}

// movedWith tells whether the heater's state is told of the second of two pressures of one gauge alone, which
// a firing heater has lifted, or an idle one let fall.
func (m *message) movedWith(a mention, first, second *reading) bool {
	if !second.inherit && len(second.points) > 0 || len(first.points) == 0 || first.sent != m.items[a.at].sent || (second.PSI > first.PSI) != (a.state == assess.Firing) {
		return false
	}
	if second.at == first.at+2 && m.says(first.at+1, "and", "y") {
		return false // "88 and 96 with the heater on"
	}
	with := false
	for k := second.at + 1; k < a.at; k++ {
		switch {
		case m.inList(k, listWithState):
			with = true
		case !m.is(k, cItem, "heater") && !m.is(k, cDeterminer, "") && !m.inList(k, listLinks) && !pressureUnit(m.items[k].text):
			return false
		}
	}
	return with && a.at > second.at
}

// heaterTurned reads a heater that turned to another state between readings: what
// was told before it has the other state. "laundry 70, heater kicked on, went to
// 91", "70 before the burner lit, 91 after".
func (m *message) heaterTurned(all []mention) bool {
	if len(all) != 1 || len(m.readings) < 2 || !m.is(all[0].at, cTurns, "") {
		return false
	}
	a, other := all[0], assess.Idle
	if m.litAlready(a.at) {
		return false
	}
	if a.state == assess.Idle {
		other = assess.Firing
	}
	turn, last := a.at, m.readings[len(m.readings)-1].at
	switch {
	case m.left(a.at, 3, false, func(k int) bool { return m.is(k, cBefore, "") || m.says(k, "till", "until") }) >= 0:
	case m.readings[0].at < a.at && last > a.at && m.readAfter(a.at):
	case m.readings[1].at < a.at &&
		m.left(a.at, 2, false, func(k int) bool { return m.inList(k, listWhenTurned) }) >= 0:
		turn = last // "70, climbed to 91 when it fired"
	default:
		return false
	}
	for k := range m.readings {
		if m.readings[k].at < turn {
			m.readings[k].Heater = other
		} else {
			m.readings[k].Heater = a.state
		}
	}
	return true
}

// readAfter tells whether the first pressure behind the turn at item i may be what the gauge went to, and is
// no number told of a tank or a regulator: "81 side bib, burner's lit. the tank called for 55".
func (m *message) readAfter(i int) bool {
	for k := range m.readings {
		if r := &m.readings[k]; r.at > i {
			part := func(j int) bool { return m.noGauge(j) && !m.is(j, cItem, "heater") }
			return len(r.points) > 0 || r.sent == m.items[i].sent || !m.anyIn(r.sent, part, setOf(cItem))
		}
	}
	return false
}

// untilTurned turns round a state that is told as one to come: "66 before the burner lit",
// "72 before the heater fired, 96 once it was heating".
func (m *message) untilTurned(all []mention) {
	for k, a := range all {
		if !m.is(a.at, cTurns, "") || m.left(a.at, 3, false, func(k int) bool { return m.is(k, cBefore, "") }) < 0 {
			continue
		}
		if all[k].state = assess.Idle; a.state == assess.Idle {
			all[k].state = assess.Firing
		}
	}
}

// litAlready tells whether "burner lit" at item i is how it was and no turn: nothing says
// when, and the reading behind it has a tap of its own. "laundry 88, burner lit, 95 meter".
func (m *message) litAlready(i int) bool {
	if !strings.HasSuffix(m.text(i), " lit") || m.left(i, 3, false, func(k int) bool {
		return m.is(k, cBefore, "") || m.inList(k, listTellsWhen)
	}) >= 0 {
		return false
	}
	for k := range m.readings {
		if r := &m.readings[k]; r.at > i {
			return len(r.points) > 0 && !r.inherit
		}
	}
	return true
}

// heaterRow reads states in a row for numbers in a row: "64/94 apagado/prendido".
func (m *message) heaterRow(all []mention) bool {
	n := len(all)
	if n < 2 || n != len(m.readings) || all[0].state == all[1].state {
		return false
	}
	for k := 1; k < n; k++ {
		if !m.onlyMarks(all[k-1].at, all[k].at) || !m.onlyMarks(m.readings[k-1].at, m.readings[k].at) {
			return false
		}
	}
	for k := range all {
		m.readings[k].Heater = all[k].state
	}
	return true
}

// noStateBetween tells whether no state of the heater is told between two items.
func (m *message) noStateBetween(all []mention, a, b int) bool {
	for _, x := range all {
		if x.at > a && x.at < b {
			return false
		}
	}
	return true
}

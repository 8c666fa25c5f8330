package intents

import (
	"slices"
	"strings"

	"lazyhand/assess"
)

// Lists of the lexicon that these rules know.
var (
	listRepeatsRight = listOf("repeats right")
	listRepeats      = listOf("repeats")
	listForAllPoints = listOf("for all points")
	listSameTap      = listOf("same tap")
)

// event is a test point or a reading's number within a sentence.
type event struct {
	at, end int
	num     bool
	points  []string
	nums    []int
	pair    int // index of the event it goes with, -1
}

// events lists the points and readings of a sentence in order; neighbours that
// are one thing are joined.
func (m *message) events(s int) []event {
	evs := m.scratch.events[:0]
	se := &m.sents[s]
	for i := se.from; i < se.to; i++ {
		it := &m.items[i]
		if it.num != nil && it.role == roleReading {
			// "front and rear 80 and 82"
			if n := len(evs); n > 0 && evs[n-1].num && m.joined(evs[n-1].end, i) && n > 1 &&
				len(evs[n-2].points) == len(evs[n-1].nums)+1 && len(evs[n-2].points) > 1 {
				evs[n-1].nums = append(evs[n-1].nums, i)
				evs[n-1].end = i
				continue
			}
			evs = append(evs, event{at: i, end: i, num: true, nums: m.scratch.number(i), pair: -1})
			continue
		}
		several := len(evs) > 0 && len(evs[len(evs)-1].points) > 1 // "kitchen and tub the same, 71"
		if m.begins(i, keyBackTo) && (i > 0 || m.gaugeInHand()) && it.num == nil && !several && m.pointsBack(i) {
			if p := m.lastPoint(evs); p == "" && it.text == "there" {
				if q := m.placeNamed(i); q != "" {
					evs = append(evs, event{at: i, end: i, points: m.scratch.point(q), pair: -1})
					continue
				}
			}
			p := m.lastPoint(evs)
			if p == "" && it.text == "same" {
				p = m.earlierPoint(i)
			}
			if p == "" {
				p = m.sameTap(i)
			}
			if p != "" {
				evs = append(evs, event{at: i, end: i, points: m.scratch.point(p), pair: -1})
				continue
			}
		}
		if it.point == "" || it.role == roleTaken || (m.placesItem(i) || m.changedPart(i) || m.shutThere(i)) && (!m.ownNumber(i) || m.numberOfNext(i)) || m.cameIn(i) {
			continue
		}
		if n := len(evs); n > 0 && !evs[n-1].num && !m.eachOwn(evs, i) {
			last := &evs[n-1]
			if m.joined(last.end, i) && !m.is(i+1, cSym, "") && !m.is(i+2, cSym, "") && !m.slashParts(last) &&
				!(n > 1 && evs[n-2].num && m.saidToBe(i)) {
				if last.points[len(last.points)-1] != it.point {
					last.points = append(last.points, twoPoints(it.point)...)
				}
				last.end = i
				continue
			}
			if last.points[len(last.points)-1] == it.point && i-last.end <= 4 {
				last.end = i
				continue
			}
			if before := last.points[len(last.points)-1]; i == last.end+1 && before != it.point &&
				(indoors(it.point) && indoors(before) || sided(it.point) && sided(before)) {
				last.points, last.end = append(last.points, it.point), i // "kitchen tub and laundry", "front rear and side"
				continue
			}
			// "front bib by the street": the later point only describes the first
			if i-last.end <= 3 && m.qualifies(last.end, i) || i-last.end <= 5 && m.relates(last.end, i) {
				if last.points[0] == string(assess.Bibb) {
					last.points[0] = it.point
				}
				last.end = i
				continue
			}
		}
		if n := len(evs); n > 1 && i == evs[n-1].end+1 && evs[n-1].num && !evs[n-2].num && m.beforeAgain(i, &evs[n-2]) {
			continue // "street 140 before reg 63 after"
		}
		points := m.scratch.point(it.point)
		if it.point == string(assess.Bibb) && m.says(i-1, "that", "this", "same") {
			if p := m.sideBefore(i); p != "" {
				points = m.scratch.point(p) // "fixed the bibb behind the house, and that bibb now reads 70"
			}
		}
		if strings.Contains(it.point, "+") {
			points = twoPoints(it.point)
		}
		evs = append(evs, event{at: i, end: i, points: points, pair: -1})
	}
	m.scratch.events = evs
	return m.inRows(evs)
}

// beforeAgain tells whether the point at i only says again, by the regulator, where the one told last is.
func (m *message) beforeAgain(i int, last *event) bool {
	street := string(assess.Street)
	return m.items[i].point == street && last.points[0] == street && beginsWith(m.items[i].text, "before", "ahead", "upstream", "in front", "antes") &&
		m.isNum(i+1) && i+2 < len(m.items) && m.items[i+2].point == string(assess.AfterPRV)
}

var backToOpener = opener{values: map[class][]string{cDo: {"recheck"}}, lists: []list{listSameTap}, words: []string{"there"}}

// pointsBack tells whether item i stands for the place told last: "same with a tap open",
// "88 there", "read it again, 84".
func (m *message) pointsBack(i int) bool {
	switch {
	case m.inList(i, listSameTap):
		return true
	case m.text(i) == "there":
		return (m.isNum(i-1) || m.isNum(i-2) && m.items[i-1].unit == "") && m.text(i+1) != "is"
	}
	return m.is(i, cDo, "recheck") && m.showedThen(i) // "read it again 84"
}

// sideBefore returns the hose bibb of a side that is named last before item i, "" for none.
func (m *message) sideBefore(i int) string {
	for k := i - 1; k >= 0; k-- {
		if sided(m.items[k].point) {
			return m.items[k].point
		}
	}
	return ""
}

// twoPoints parts a phrase that names two test points: "both sides of the prv".
func twoPoints(s string) []string { return strings.Split(s, "+") }

// eachOwn tells whether the point told last has the number before it, or is only the place
// of a sign, and the one at item i the number behind it, so that they are no list: "72
// laundry and meter 134".
func (m *message) eachOwn(evs []event, i int) bool {
	n := len(evs)
	if !m.ownNumber(i) {
		return false
	}
	if m.placesSign(evs[n-1].at) {
		return true
	}
	if n < 2 || !evs[n-2].num {
		return false
	}
	if m.isMark(i+1, ",") {
		return true
	}
	last, num := &evs[n-1], &evs[n-2]
	return m.prepared(num.end) || where(m.text(last.at)) ||
		m.clauseStart(num.end) == m.clauseStart(last.at) && (n == 2 || evs[n-3].num || m.clauseStart(evs[n-3].end) != m.clauseStart(num.at))
}

// placesSign tells whether the point at i only says where a sign is seen: "gas smell near
// the meter and laundry 82".
func (m *message) placesSign(i int) bool {
	for k := m.clauseStart(i); k < i; k++ {
		if m.is(k, cSym, "") || m.is(k, cColor, "") {
			return m.left(i, i-k, true, m.isNum) < 0
		}
	}
	return false
}

// saidToBe tells whether what the point at i names is the subject of a clause without a number:
// "46 en la llave de atrás y la de drenaje es de plástico".
func (m *message) saidToBe(i int) bool {
	k := i + 1
	for k < len(m.items) && k < i+5 && !m.items[k].mark &&
		(m.items[k].role == roleTaken || m.is(k, cItem, "heater") || m.is(k, cDeterminer, "") || m.says(k, "of", "de", "del")) {
		k++
	}
	return m.inList(k, listLinks) && m.right(k, 6, true, m.isNum) < 0
}

// slashParts tells whether a slash between blanks ends a clause that names the point before it
// among other things, so that it is in no list with the next one: "1 inch meter / garden tap 58".
func (m *message) slashParts(last *event) bool {
	if !m.isMark(last.end+1, "/") || m.toks[m.items[last.end+1].tok].glued {
		return false
	}
	for k := m.clauseStart(last.at); k < last.at; k++ {
		if it := &m.items[k]; it.num != nil || it.kinds.meets(ofDeeds) || m.is(k, cFlowing, "") || it.tags == nil && m.unknownNoun(k) {
			return true
		}
	}
	return false
}

// placesItem tells whether the point at i only says where a piece of equipment sits: "there is
// no check valve at the meter".
func (m *message) placesItem(i int) bool {
	if !m.kinds.has(cItem) {
		return false
	}
	for k := i - 1; k >= 0 && k >= i-3 && !m.items[k].mark && m.items[k].num == nil; k-- {
		if m.isAny(k, cItem, "check_valve", "expansion_tank", "softener", "recirc") {
			return true
		}
	}
	return false
}

// numberOfNext tells whether the number right behind the point at i is that of the tap behind it, which has
// no other, since the point only places a thing: "bfp at mtr 74 sd bb".
func (m *message) numberOfNext(i int) bool {
	next := i + 2
	if m.is(next, cUnit, "") {
		next++
	}
	if !m.placesItem(i) || !m.isNum(i+1) || !m.pointAt(next) || m.items[next].point == m.items[i].point {
		return false
	}
	end := next
	for m.pointAt(end+1) || m.is(end+1, cBibb, "") {
		end++
	}
	return m.closes(end) || !m.ownNumber(end)
}

// changedPart tells whether the drain at item i is what was changed, not where a gauge was:
// "drain valve replaced, needle now 75, rear hose bib".
func (m *message) changedPart(i int) bool {
	return m.is(i, cItem, "drain_valve") && slices.ContainsFunc(m.verbs, func(v verb) bool {
		return v.objAt == i && v.done && (v.what == "replaced" || v.what == "installed")
	})
}

// shutThere tells whether the water was shut off at the point of item i: "31 psi, shut the house off
// at the curb stop".
func (m *message) shutThere(i int) bool {
	return slices.ContainsFunc(m.verbs, func(v verb) bool {
		return v.what == "shut" && v.at < i && v.at >= m.clauseStart(i) && m.right(i, longestSentence, true, m.isNum) < 0
	})
}

// where tells whether a place is told with its preposition: "108 out front".
func where(s string) bool {
	return strings.HasPrefix(s, "at ") || strings.HasPrefix(s, "out ") || strings.HasPrefix(s, "up ")
}

// ownNumber tells whether a number stands behind the point at i, in its clause: "94 at the meter
// and the front bib 93", "108 out front and the back is 59".
func (m *message) ownNumber(i int) bool {
	for k := i + 1; k < len(m.items) && k <= i+6; k++ {
		it := &m.items[k]
		switch {
		case it.num != nil:
			return it.role == roleReading || it.role == roleTaken
		case it.text == "," && m.isNum(k+1) && m.stopAt(k+2):
			continue // "38 en la tina y llave del lado, 82"
		case it.mark && it.text != ":" && it.text != "=", it.point != "" && it.point != m.items[i].point &&
			it.role != roleTaken, oneOf(it.text, "and", "y", "with", "w/"):
			return false
		}
	}
	return false
}

// indoors tells whether a point is a tap of its own that describes no other.
func indoors(p string) bool {
	switch assess.TestPoint(p) {
	case assess.Kitchen, assess.Bath, assess.Laundry, assess.HeaterDrain:
		return true
	}
	return false
}

// sided tells whether a point is a bibb of a side of the house.
func sided(p string) bool { return strings.HasSuffix(p, "_bibb") }

// lastPoint returns the test point told last: "the same gauge".
func (m *message) lastPoint(evs []event) string {
	for k := len(evs) - 1; k >= 0; k-- {
		if !evs[k].num {
			return evs[k].points[len(evs[k].points)-1]
		}
	}
	for k := len(m.readings) - 1; k >= 0; k-- {
		if n := len(m.readings[k].points); n > 0 {
			return m.readings[k].points[n-1]
		}
	}
	return ""
}

// repeats tells whether the number at i only says again what was said: "63, and
// it stays at 63", "80 is right".
func (m *message) repeats(i int, pts []string) bool {
	if len(pts) > 0 {
		return false
	}
	stays := m.left(i, 4, false, func(k int) bool {
		if m.inList(k, listRepeats) {
			return true
		}
		return false
	}) >= 0
	right := m.right(i, 3, false, func(k int) bool {
		if m.inList(k, listRepeatsRight) {
			return true
		}
		return false
	}) >= 0
	if !stays && !right && !m.onlyAgain(i) && !m.startsAgain(i) ||
		m.kinds.has(cBefore) && m.left(i, 8, true, func(k int) bool { return m.is(k, cAfter, "") && !m.is(k, cBefore, "") }) >= 0 {
		return false // "before I started 79 and when I was finished it still gave 79"
	}
	for _, r := range m.readings {
		if (r.sent == m.items[i].sent || r.sent == m.items[i].sent-1) && r.PSI == toPSI(m.items[i].value, m.items[i].unit) {
			return true
		}
	}
	return false
}

// startsAgain tells whether the number at i is only where a change began: "72 idle, watched it
// go 72 -> 149".
func (m *message) startsAgain(i int) bool {
	n := m.nextNum(i)
	return n > 0 && m.leadsTo(i, n) && (m.is(i-1, cHint, "moves") || m.text(i-1) == "from" && m.is(i-2, cHint, "moves"))
}

// onlyAgain tells whether the sentence of the number at i tells nothing but a number:
// "front 58. dyslexic today, 58".
func (m *message) onlyAgain(i int) bool {
	s := &m.sents[m.items[i].sent]
	if s.to-s.from > 6 || m.items[i].unit != "" {
		return false
	}
	for k := s.from; k < s.to; k++ {
		it := &m.items[k]
		if k != i && (it.num != nil || it.point != "" || it.kinds.meets(measuring)) {
			return false
		}
	}
	return true
}

// bothAt returns the point after number item i that is told for all: "both at the laundry".
func (m *message) bothAt(evs []event, i int) string {
	for _, e := range evs {
		if e.num || e.at < i || len(e.points) != 1 {
			continue
		}
		for k := e.at - 1; k > i && k >= e.at-4; k-- {
			if m.inList(k, listForAllPoints) {
				return e.points[0]
			}
		}
	}
	return ""
}

package intents

import "strings"

// Lists of the lexicon that these rules know.
var (
	listSetsNew = listOf("sets new")
)

// A part is changed in two words as often as in one: "yanked that 1996 regulator and
// put a fresh one in", "old tank is off the wall, new 2 gal on", "new reg is in".

// takenOutGate is that of what was taken out before.
var takenOutGate = gateOf(opener{
	hints: []string{"takesout"}, words: []string{"off", "out"}, values: map[class][]string{cPart: {"old"}, cState: {"idle"}},
})

// exchanged reads a part put in at item i after its like was taken out.
func (m *message) exchanged(i int) bool {
	if m.shut(takenOutGate) {
		return false
	}
	part, at, ok := m.putPart(i)
	if !ok {
		return false
	}
	out := m.takenBefore(i, part)
	if out == "" || m.moment(i+1, i+6) {
		return false
	}
	v := m.addVerb(i, "replaced")
	v.object, v.objAt, v.renews = out, at, true
	return true
}

// moment tells whether a day to come is told among items from..to.
func (m *message) moment(from, to int) bool {
	for _, w := range m.moments {
		if w.days > 0 && w.at >= from && w.at < to {
			return true
		}
	}
	return false
}

// takenBefore returns the part that was taken out before item i, in its sentence or the
// one before, when it is the one wanted; "" wants any.
func (m *message) takenBefore(i int, want string) string {
	first := m.items[i].sent - 1
	for k := i - 1; k >= 0 && k >= i-18 && m.items[k].sent >= first; k-- {
		switch {
		case m.is(k, cHint, "takesout") && (!m.is(k, cHint, "takesoff") || m.off(k)) && !m.is(k-1, cNeg, ""):
			if o := m.partTaken(k); o != "" && (want == "" || o == want) {
				return o
			}
		case m.is(k, cState, "idle") && strings.HasSuffix(m.text(k), "heater out") && m.closes(k) && (want == "" || want == "heater"):
			return "heater" // "old tank heater out, heat pump heater in": no burner is out
		case m.text(k) == "off" || m.text(k) == "out":
			if m.isMark(k+1, ":", "-", "=") {
				for j := k + 2; j <= k+5 && j < i; j++ {
					if o := m.partAt(j); o != "" && (want == "" || o == want) {
						return o // "out: old prv / in: new one"
					}
				}
			}
			// "plastic drain off the heater, brass ball valve on"
			apart := m.items[k].seg != m.items[i].seg || m.says(k+1, "and", "n", "&", "y")
			if o := m.partAt(k - 1); o != "" && apart && (want == "" || o == want) {
				return o
			}
		case (m.is(i, cHint, "inplace") || m.setAnew(i)) && m.is(k, cPart, "old") && m.partAt(k+1) != "" && (want == "" || m.partAt(k+1) == want):
			return m.partAt(k + 1) // "old heater's at the curb, new 50 gal gas is running in its place"
		case m.is(k, cHint, "puts"):
		case m.is(k, cWill, "") && !m.wasWill(k), m.timeWordAt(k) && m.items[k].role != roleYear:
			return ""
		}
	}
	return ""
}

// setAnew tells whether the new one named at item i was set or charged: "the old tank was a 2 gal,
// new one's a 5 gal charged to 62".
func (m *message) setAnew(i int) bool {
	if !m.is(i, cHint, "newone") || !strings.HasPrefix(m.text(i), "new") {
		return false
	}
	set := m.right(i, 8, true, func(k int) bool { return m.isAny(k, cDid, "set", "charged") })
	return set > 0 && !m.planish(m.items[i].sent)
}

// off tells whether a particle behind the word at i says that it took something away:
// "cut the old regulator out", "carried the old heater up the stairs".
func (m *message) off(i int) bool {
	old := func(k int) bool { return m.is(k, cPart, "old") && m.items[k].seg == m.items[i].seg }
	away := func(k int) bool {
		down := m.text(k) == "down" && !m.isNum(k+1) && !m.isNum(k+2)
		return m.items[k].seg == m.items[i].seg && (down || m.says(k, "out", "off"))
	}
	return m.right(i, 3, false, old) >= 0 || m.right(i, 6, true, away) >= 0
}

// partTaken returns the part that the word at i takes out: "pulled a rotted out 30 gal",
// "the tank is off the wall", "tore out her old electric".
func (m *message) partTaken(i int) string {
	s := &m.sents[m.items[i].sent]
	for k := i + 1; k < s.to && k <= i+7 && !m.items[k].mark; k++ {
		if o := m.partAt(k); o != "" {
			return o
		}
		if m.is(k, cHint, "puts") || m.is(k, cDid, "") || m.is(k, cHint, "wentin") {
			break
		}
	}
	for k := i - 1; k >= s.from && k >= i-5 && !m.items[k].mark; k-- {
		if o := m.partAt(k); o != "" {
			return o
		}
	}
	return ""
}

// partAt returns the part that item k names, by its name or by its size or fuel alone:
// "a 2 gallon", "the old electric".
func (m *message) partAt(k int) string {
	if k < 0 || k >= len(m.items) {
		return ""
	}
	if o, ok := m.val(k, cItem); ok && o != "gauge" {
		if o == "heater" && m.partOfHeater(k+1) {
			return "" // "new heater element in"
		}
		return m.itemCode(k, o)
	}
	if it := &m.items[k]; it.num != nil && (it.unit == "gal" || it.unit == "litre") {
		if j := k + 1; m.is(j, cItem, "") || j < len(m.items) && m.is(j+1, cItem, "") && !m.items[j].mark {
			return "" // the noun follows
		}
		if it.value >= 20 {
			return "heater"
		}
		return "expansion_tank"
	}
	f, ok := m.val(k, cFuel)
	if !ok || m.gasTalk(k) || m.is(k+1, cItem, "") {
		return ""
	}
	if f == "tankless" || f == "heat_pump" || m.is(k-1, cPart, "") || m.isNum(k-1) && m.items[k-1].unit == "gal" {
		return "heater"
	}
	return ""
}

var putPartGate = gateOf(opener{
	classes: setOf(cMaterial, cOff),
	hints:   []string{"inplace", "newone", "wentin", "puts"},
	values:  map[class][]string{cPart: {"new"}, cDid: {"installed"}, cState: {"idle"}},
})

// putPart returns the part that a word at i puts in and where it is named, "" when it is
// only called new or one; ok is false when nothing is put in, or another thing: "put it
// back", "new gauge".
func (m *message) putPart(i int) (part string, at int, ok bool) {
	if m.shut(putPartGate) {
		return "", -1, false
	}
	fresh := false
	switch {
	case m.is(i, cHint, "inplace"):
		at = m.left(i, 6, true, func(k int) bool { return m.partAt(k) != "" })
		for at > 0 && m.partAt(at-1) != "" {
			at--
		}
		return "", at, true
	case m.text(i) == "in" && m.isMark(i+1, ":", "-", "="):
		at = m.right(i, 5, true, func(k int) bool { return m.partAt(k) != "" || m.is(k, cHint, "newone") })
		return m.partAt(at), at, at >= 0 // "out: old prv / in: new one"
	case m.says(i, "on", "in") && m.closes(i) && m.materialBefore(i) >= 0:
		return "drain_valve", m.materialBefore(i), true // "brass ball valve on"
	case m.says(i, "on", "in") && m.closes(i) && m.partAt(i-1) != "":
		for at = i - 1; m.is(at-1, cFuel, ""); at-- {
		}
		return m.partAt(i - 1), at, true // "old tank out, a 2 gal in", "heat pump heater in"
	case m.is(i, cHint, "newone") && m.text(i) != "one":
		if n := len(m.verbs); n > 0 && m.verbs[n-1].renews && i-m.verbs[n-1].at <= 4 {
			return "", -1, false // "put a fresh one in"
		}
		return "", -1, true
	case m.is(i, cHint, "wentin"):
		return m.partAt(i - 1), i - 1, i > 0
	case m.is(i, cPart, "new"):
		fresh = true
	case !m.is(i, cHint, "puts") && !m.is(i, cDid, "installed"):
		return "", -1, false
	}
	for k := i + 1; k < len(m.items) && k <= i+6 && !m.items[k].mark; k++ {
		if o := m.partAt(k); o != "" {
			return o, k, true
		}
		switch t := m.text(k); {
		case m.is(k, cHint, "newone") && m.is(i, cPart, "new"):
			return "", -1, true // "in with a new 3/4 one"
		case m.isAny(k, cHint, "newone", "another") || m.is(k, cPart, "new"):
			fresh = true
		case m.isNum(k) && m.is(i, cPart, "new") && !m.pressureLike(k):
		case m.is(k, cMaterial, ""), m.is(k, cFuel, ""), m.is(k, cDeterminer, ""):
		case fresh && (m.is(k, cHint, "wentin") || t == "in" || t == "on" || t == "up" || t == "unit"):
			return "", -1, true
		case t == "back" || t == "together" || m.is(i, cPart, "new"):
			return "", -1, false
		case m.items[k].num != nil:
			return "", -1, fresh
		}
	}
	return "", -1, fresh
}

// materialBefore returns where a material stands before item i in its clause, -1 for none.
func (m *message) materialBefore(i int) int {
	return m.left(i, 4, true, func(k int) bool { return m.is(k, cMaterial, "") && m.items[k].seg == m.items[i].seg })
}

var setWords = opener{lists: []list{listSetsNew}}

// changesOut reads a new heater put in at item i after the old one was taken out.
func (m *message) changesOut(i int) bool {
	k := m.changeout(i)
	if k <= 0 {
		return false
	}
	m.verbs = append(m.verbs, verb{at: i, what: "replaced", done: true, object: "heater", objAt: k})
	return true
}

// changeout returns the size of the new heater when the word at i puts one in
// after an old one was taken out: "pulled the old electric and set a 50 gal gas".
func (m *message) changeout(i int) int {
	if !m.said(i, keySets) {
		return -1
	}
	size := m.right(i, 4, true, func(k int) bool { return m.items[k].num != nil })
	if size < 0 || m.items[size].unit != "gal" && m.items[size].unit != "litre" && !m.heaterSize(size) || m.items[size].value < 20 {
		return -1
	}
	for k := i - 1; k >= m.sents[m.items[i].sent].from && k >= i-10; k-- {
		if m.is(k, cHint, "takesout") {
			if o := m.partTaken(k); o == "heater" || o == "" {
				return size
			}
		}
		if m.is(k, cWill, "") || m.is(k, cNeg, "") {
			return -1
		}
	}
	return -1
}

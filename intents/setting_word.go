package intents

import "strings"

// Lists of the lexicon that these rules know.
var (
	listAround         = listOf("around")
	listRegulatorReads = listOf("regulator reads")
	listUntouched      = listOf("untouched")
)

// plainThermostat tells whether item k names a thermostat, and not by "dial" or "temp", which
// a pressure may have as well.
func (m *message) plainThermostat(k int) bool {
	t := m.text(k)
	if m.is(k-1, cItem, "prv") {
		return false // "prv set point is 60"
	}
	return m.is(k, cPart, "thermostat") && !m.is(k, cStatic, "") && t != "dial" &&
		(!strings.HasPrefix(t, "temp") || strings.Contains(t, " set"))
}

var settingWordGate = gateOf(opener{hints: []string{"setting"}, values: map[class][]string{cDid: {"set"}}})

// settingWord tells whether a clause gives the number at i as what its regulator is
// set to: "prv sits at 58 on its dial", "regulator has a setting of 4 bar", "he's set
// for 60 on the prv".
func (m *message) settingWord(i int) bool {
	if m.shut(settingWordGate) {
		return false
	}
	it := &m.items[i]
	if psi := toPSI(it.value, it.unit); it.unit != "" && !pressureUnit(it.unit) || psi < 20 || psi > 150 || m.is(i-1, cHint, "shift") {
		return false // "regulator setting lowered 20 lbs"
	}
	s := &m.sents[it.sent]
	prv, word := false, false
	for k := s.from; k < s.to; k++ {
		if m.items[k].seg != it.seg {
			continue
		}
		if k > i && m.says(k, "and", "but") {
			break // "the setting on the prv is 60 and kitchen is 61"
		}
		switch v, ok := m.val(k, cItem); {
		case ok && v == "prv":
			prv = true
		case ok || m.items[k].point != "" && !m.items[k].weak || k != i && m.items[k].num != nil && m.items[k].role != roleYear && abs(k-i) < 4:
			return false
		case m.is(k, cDid, "") && m.deedAtVerb(k):
			return false
		}
		j := k + 1
		for m.inList(j, listAround) {
			j++
		}
		word = word || j == i && j > k+1 && m.is(k, cDid, "set") // "prv set somewhere around 60"
		word = word || m.is(k, cHint, "setting") && abs(k-i) <= 6 && !(m.is(k, cDo, "") && (m.is(k+1, cDeterminer, "") || m.text(k+1) == "it"))
	}
	if topic, at := m.topicBefore(i); !prv && topic == "prv" {
		gauged := func(k int) bool { return m.items[k].point != "" || m.is(k, cPeak, "") }
		if m.left(i, i-at, true, gauged) > at {
			return false // "prv 2014, red needle climbed to 150, back hose bib, sits at 72 now"
		}
		// "prv 2008, tag setting 65"
		return m.left(i, 2, false, func(k int) bool { return m.is(k, cHint, "setting") && m.items[k].seg == it.seg }) >= 0
	}
	return prv && word
}

// deedAtVerb tells whether the word of work at item k was done on the visit.
func (m *message) deedAtVerb(k int) bool {
	for _, v := range m.verbs {
		if v.at == k {
			return (v.done || v.planned) && !m.is(k, cHint, "setting")
		}
	}
	return false
}

// labelBefore returns where the word that names a label stands right before item i, or i:
// "tag setting 65".
func (m *message) labelBefore(i int) int {
	if m.inList(i-1, listLabels) {
		return i - 1
	}
	return i
}

const regulatorsOwn = "a regulator's, set or measured"

// regulatorGate is that of rules of a regulator by its name.
var regulatorGate = onlyWith(cItem, "prv")

// ofRegulatorAlone tells whether the number at i is told of a regulator and nothing says whether
// it is what that is set to or what a gauge showed, and on which side: "prv 62", "reg reads 70".
func (m *message) ofRegulatorAlone(i int) bool {
	if m.shut(regulatorGate) || !m.settingLike(i) || m.pointAt(i+1) {
		return false
	}
	if m.isMark(i-1, "/", "-") && m.numIs(i-2, roleIgnored) && m.items[i-2].why == regulatorsOwn {
		return true // "prv 90/60"
	}
	if m.text(i-1) == "en" && !m.closes(i) {
		return false // "la reguladora estaba en 90 la bajé a 60"
	}
	k := i - 1
	for m.inList(k, listRegulatorReads) || m.inList(k, listLinks) ||
		m.isMark(k, ":", "=", "(") {
		k--
	}
	if !m.is(k, cItem, "prv") || m.items[k].point != "" || m.items[k].sent != m.items[i].sent {
		return false
	}
	for k > 0 && m.is(k-1, cDeterminer, "") {
		k--
	}
	return k == 0 || m.items[k-1].mark
}

// leftSo tells whether what is said behind the number at i says that nobody changed it: "prv was
// at 60, left it alone", "prv at 60 when I got here, didn't touch it".
func (m *message) leftSo(i int) bool {
	return m.right(i, 12, false, func(k int) bool {
		return m.is(k, cHint, "leftat") && !m.isNum(k+1) && !m.isNum(k+2) || m.inList(k, listUntouched)
	}) >= 0
}

// untouchedGate is that of what nobody touched.
var untouchedGate = onlyWithList(listUntouched)

// untouchedAt tells whether the number at i is told behind a regulator that nobody touched: "didn't touch the
// prv, it's at 58", "no le moví a la reguladora, está en 58".
func (m *message) untouchedAt(i int) bool {
	if m.shut(untouchedGate) {
		return false
	}
	k := i - 1
	for m.inList(k, listRegulatorReads) || m.inList(k, listLinks) || m.says(k, "it", "its", "is at", "its at", "set", "puesta") {
		k--
	}
	if k == i-1 || !m.isMark(k, ",") || !m.settingLike(i) || !m.closes(i) {
		return false
	}
	prv := m.left(k, 6, false, func(k int) bool { return m.is(k, cItem, "prv") })
	return prv >= 0 && m.left(k, 8, false, func(k int) bool {
		return m.inList(k, listUntouched) && (m.says(k, "alone", "untouched") || m.is(k-1, cNeg, "") || m.is(k-2, cNeg, "") || m.says(k-1, "sin"))
	}) >= 0
}

// leftAt tells whether the words before the number at i say what a thing was left
// at: "quedó en 62", "quedó set at 62".
func (m *message) leftAt(i int) bool {
	k := i - 1
	switch m.text(k) {
	case "en", "a", "como en", "at":
		k--
	}
	for k >= 1 && k >= i-5 && (m.is(k, cPart, "new") || m.is(k, cItem, "prv") || m.text(k) == "la" || m.text(k) == "el") {
		k-- // "ya quedó la reguladora nueva en 60"
	}
	t := m.text(k)
	if t == "" || t[0] != 'q' && t[0] != 'y' && t[0] != 's' && t[0] != 'l' {
		return false
	}
	for _, w := range [...]string{"quedo", "ya quedo", "se quedo", "quedando", "la deje", "lo deje"} {
		if t == w || len(t) > len(w) && t[:len(w)+1] == w+" " {
			return true
		}
	}
	return false
}

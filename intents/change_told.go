package intents

// Lists of the lexicon that these rules know.
var (
	listPutWhere = listOf("put where")
	listPutIt    = listOf("put it")
	listPuts     = listOf("puts by hand")
	listWent     = listOf("went")
	listStopsAt  = listOf("stops at setting")
	listToStop   = listOf("to where it stops")
)

// A change of a setting told without a word of setting: "prv down to 58", "retuned the
// prv at 2208 Ashwillow to 60", "Reg setting: found 84, left 63", "put the reg at 55".

// putIt reads what the regulator told before was put to: "it was set at 75, I put it at 58", "changed
// the regulator for a new one and put it to 3.8 bar".
func (m *message) putIt(i int) (role, string, bool) {
	put := i - 3
	if put < 0 || !m.inList(i-1, listPutWhere) || !m.inList(i-2, listPutIt) || !m.inList(put, listPuts) || m.points(i) || m.pointInClause(i) {
		return 0, "", false
	}
	topic, at := m.topicBefore(put)
	if topic == "" {
		topic = m.carriedTo(put)
	}
	if topic != "prv" {
		return 0, "", false
	}
	if v := m.deedBefore(i, "prv"); v != nil && v.at < put && m.numsBetween(v.at, i) == 0 && m.items[v.at].sent >= m.items[i].sent-1 {
		return m.ofDeed(v, i, roleTo, "put to")
	}
	m.verbs = append(m.verbs, verb{at: put, what: "set", done: true, object: "prv", objAt: at})
	m.items[i].owner = put + 1
	return roleTo, "put to", true
}

// putTo reads the number at i as what the regulator of its clause was put to by a
// particle, an unknown verb of the past or a word of putting.
func (m *message) putTo(i int) (role, string, bool) {
	if m.shut(regulatorGate) || !m.settingLike(i) {
		return 0, "", false
	}
	if r, why, ok := m.putIt(i); ok {
		return r, why, ok
	}
	if prv := m.stoppedOn(i); prv > 0 {
		return m.settledAt(prv, i, roleTo, "stopped at")
	}
	k := i - 1
	loose := false // "at", "on": only a word of putting says that it was put there
	switch {
	case m.towards(k):
	case m.is(k, cHint, "putat"):
		loose = true
	default:
		return 0, "", false
	}
	particle := m.is(k, cHint, "particle")
	for k--; k >= 0 && k >= i-9 && m.items[k].seg == m.items[i].seg && !m.is(k, cItem, "prv"); k-- {
		switch it := &m.items[k]; {
		case m.is(k, cHint, "particle"):
			particle = true
		case it.site, m.is(k, cHint, "bit"), m.is(k, cDeterminer, ""), m.is(k, cHint, "possessive"), m.text(k) == "at",
			m.text(k) == "another", m.text(k) == "the way":
		case it.num != nil && it.value <= 15, particle && m.workedWord(k):
		default:
			return 0, "", false
		}
	}
	if k < 0 || !m.is(k, cItem, "prv") || m.items[k].seg != m.items[i].seg {
		if k = i + 2; particle && m.is(i+1, cHint, "withit") {
			for m.is(k, cDeterminer, "") {
				k++
			}
		}
		if !m.is(k, cItem, "prv") || m.points(i) {
			return 0, "", false
		}
		return m.settledAt(k, i, roleTo, "put to, with") // "down to 60 with the prv"
	}
	if !particle && m.placeInClause(i) {
		return 0, "", false
	}
	verb := k - 1
	for m.is(verb, cDeterminer, "") || m.is(verb, cHint, "possessive") || m.is(verb, cPart, "") || m.text(verb) == "with" ||
		m.text(verb) == "w" {
		verb--
	}
	put := verb >= 0 && m.items[verb].seg == m.items[k].seg &&
		(m.is(verb, cHint, "puts") && !m.is(verb, cHint, "putlater") || !loose && m.workedWord(verb))
	if !put && (loose || !particle) || m.is(verb, cDid, "") {
		return 0, "", false
	}
	if m.openDenied(m.items[k].sent, i) {
		return roleIgnored, "planned or wanted", true
	}
	return m.settledAt(k, i, roleTo, "put to")
}

// stoppedOn returns the regulator on which somebody stopped at the number at i: "I only went to 62 on the prv",
// "settled for 58 on the reg"; -1 for none.
func (m *message) stoppedOn(i int) int {
	k := i + 1
	if !m.is(k, cHint, "withit") && !m.says(k, "on", "at", "en", "de") {
		return -1
	}
	for k++; m.is(k, cDeterminer, "") || m.is(k, cHint, "possessive"); k++ {
	}
	from := i - 1
	for m.towards(from) || m.inList(from, listToStop) {
		from--
	}
	if !m.is(k, cItem, "prv") || !m.closes(k) || !m.inList(from, listStopsAt) || m.left(from, 2, false, m.pointAt) >= 0 || m.openDenied(m.items[i].sent, i) {
		return -1
	}
	return k
}

// settingLike tells whether the number at i can be what a regulator is set to.
func (m *message) settingLike(i int) bool {
	it := &m.items[i]
	psi := toPSI(it.value, it.unit)
	return (it.unit == "" || pressureUnit(it.unit)) && psi >= 20 && psi <= 150
}

// workedWord tells whether item k is a word that may tell a deed though the lexicon
// knows none of it: a form of the past, or a plain verb of moving.
func (m *message) workedWord(k int) bool {
	it := &m.items[k]
	if it.tags != nil {
		return it.kinds.has(cMove)
	}
	n := len(it.text)
	return n > 4 && it.text[n-2:] == "ed"
}

// openDenied tells whether the clauses of sentence s up to item i plan, want, ask or
// deny what they tell.
func (m *message) openDenied(s, i int) bool {
	se := &m.sents[s]
	if se.question || se.asking {
		return true
	}
	for k := se.from; k < i; k++ {
		if m.deedDone(k) {
			continue // "had to back the prv off to 58"
		}
		if m.items[k].seg == m.items[i].seg &&
			(m.is(k, cWill, "") && !m.wasWill(k) || m.is(k, cTarget, "") || m.is(k, cNeg, "") || m.is(k, cHint, "meant") ||
				m.is(k, cWhose, "other")) {
			return true
		}
	}
	for _, w := range m.moments {
		if w.days > 0 && w.at > i && w.at <= i+6 && m.items[w.at].seg == m.items[i].seg && m.items[w.at].sent == s {
			return true
		}
	}
	return false
}

// deedDone tells whether the word at item i tells a deed done.
func (m *message) deedDone(i int) bool {
	for _, v := range m.verbs {
		if v.at == i {
			return v.done
		}
	}
	return false
}

// placeInClause tells whether the clause of the number at i names a test point.
func (m *message) placeInClause(i int) bool {
	for k := m.sents[m.items[i].sent].from; k < m.sents[m.items[i].sent].to; k++ {
		if m.items[k].seg == m.items[i].seg && m.items[k].point != "" && !m.is(k, cHint, "particle") {
			return true
		}
	}
	return false
}

// settledAt gives the number at i to a deed of setting told at the item of the part.
func (m *message) settledAt(item, i int, r role, why string) (role, string, bool) {
	what, object := "set", "prv"
	if v, _ := m.val(item, cItem); m.itemCode(item, v) == "expansion_tank" || m.is(item, cPart, "air") {
		what, object = "charged", "expansion_tank"
	}
	known := false
	for k := range m.verbs {
		if v := &m.verbs[k]; v.at == item {
			v.what, v.object, v.objAt, v.done, v.state, known = what, object, item, true, false, true
		}
	}
	if !known {
		m.verbs = append(m.verbs, verb{at: item, what: what, done: true, object: object, objAt: item})
	}
	m.items[i].owner = item + 1
	return r, why, true
}

// foundThenLeft reads two numbers as what a part was found at and left at: "found the prv on
// 84, left it 63", "PRV was set at 80 I took it down to 62", "reset the prv, 4 bar, it was
// 6 bar". Where a test point is named in the sentence they are pressures of that point.
func (m *message) foundThenLeft(i int) (role, string, bool) {
	it := &m.items[i]
	if m.shut(settingGate) || toPSI(it.value, it.unit) < 5 || it.unit != "" && !pressureUnit(it.unit) {
		return 0, "", false
	}
	if m.sentenceIs(it.sent, cPeak, "") {
		return 0, "", false // "exp tank added. peak was 132, now 74"
	}
	if p := m.prevPressure(i); p >= 0 && m.items[p].why == foundAt {
		it.owner = m.items[p].owner
		return roleTo, "left at", true
	}
	part := m.partOfSetting(i)
	if part < 0 {
		return 0, "", false
	}
	j := m.nextPressure(i)
	if j < 0 && m.is(part, cItem, "prv") && m.leadsIn(i, "finds") && m.settingLike(i) && m.items[part].seg == it.seg &&
		!m.pointInSentence(it.sent) && m.closesWell(i) {
		return roleSetting, "found at", true // "found the prv on 75 and that's where I left it"
	}
	if r, why, ok := m.leavesAt(part, i, j); ok {
		return r, why, true
	}
	if role, why, ok := m.movedBeside(part, i, j); ok {
		return m.settledAt(part, i, role, why)
	}
	if j < 0 || m.items[j].value == it.value || it.unit != m.items[j].unit && it.unit != "" {
		return 0, "", false
	}
	if m.pointInSentence(it.sent) || m.nextPressure(j) >= 0 || m.prevPressure(i) >= 0 || m.openDenied(it.sent, j) {
		return 0, "", false
	}
	switch {
	case m.leadsIn(i, "foundat") && !m.settingRange(i) && (m.leadsIn(j, "leftat") || m.movedTo(i, j)):
		for k := range m.verbs {
			if v := &m.verbs[k]; v.at > i && v.at < j && v.done && (v.what == "set" || v.what == "charged") {
				if !m.is(part, cItem, "prv") {
					v.what, v.object, v.objAt = "charged", "expansion_tank", part
				}
				return m.ofDeed(v, i, roleFrom, foundAt)
			}
		}
		if v := m.verbLeft(i, 4, "set", "charged"); v != nil && v.done && v.object == "" && m.text(i-1) == "from" {
			v.object = map[bool]string{true: "prv", false: "expansion_tank"}[m.is(part, cItem, "prv")]
			return m.ofDeed(v, i, roleFrom, foundAt) // "I turned it from 95 to 65"
		}
		return m.settledAt(part, i, roleFrom, foundAt)
	case m.is(part, cItem, "prv") && m.leadsIn(j, "foundat") && m.leadsIn(i, "leftat"):
		return m.settledAt(part, i, roleTo, "left, and told what it was") // "reg now at 58, was 90"
	case m.isMark(i+1, "/") && j == i+2 && m.verbLeft(i, 3, "set") != nil && m.settingLike(i) && m.settingLike(j):
		v := m.verbLeft(i, 3, "set")
		if !v.done || v.object != "prv" {
			break
		}
		return m.ofDeed(v, i, roleFrom, foundAt) // "prv adj 88/60"
	case m.leadsIn(j, "foundat") && m.isMark(i-1, ","):
		if v := m.verbLeft(i, 5, "set", "charged"); v != nil && v.done && (v.object == "prv" || v.object == "expansion_tank") {
			return m.ofDeed(v, i, roleTo, "set, and told what it was")
		}
	}
	return 0, "", false
}

// leavesAt reads what a regulator was left at with no change told: "left the reg at 62". After
// a deed on it that is what the deed set it to.
func (m *message) leavesAt(part, i, j int) (role, string, bool) {
	alone := j < 0 || m.clauseStart(j) != m.clauseStart(i)
	near := m.is(part, cItem, "prv") && m.items[part].seg == m.items[i].seg
	if !alone || !near || !m.leadsIn(i, "leavesat") || !m.settingLike(i) || m.remembered(i) ||
		m.pointBetween(m.clauseStart(i)-1, m.clauseEnd(i)) {
		return 0, "", false
	}
	v := m.deedBefore(i, "prv")
	switch {
	case v == nil:
		return roleSetting, "left at", true
	case m.items[v.at].sent < m.items[i].sent && !m.ownsNumberAs(v.at, roleTo):
		return m.ofDeed(v, i, roleTo, "left at after the work")
	case m.ownsNumberAs(v.at, roleTo):
		return roleIgnored, "left at, and told before", true
	}
	return 0, "", false
}

// movedBeside reads a setting that is told right behind its part, from and to, whatever
// else the sentence tells: "prv to 65 from 50, bath 63 now", "prv cut from 85 to sixty".
func (m *message) movedBeside(part, i, j int) (role, string, bool) {
	if j != i+2 || i-part > 3 || m.items[j].value == m.items[i].value || m.numsBetween(part, i) > 0 || m.openDenied(m.items[i].sent, i) {
		return 0, "", false
	}
	for k := part + 1; k < i-1; k++ {
		if !m.inList(k, listWent) && !m.is(k, cBase, "set") {
			return 0, "", false
		}
	}
	switch {
	case m.text(i-1) == "from" && m.towards(j-1):
		return roleFrom, foundAt, true
	case m.towards(i-1) && (m.text(j-1) == "from" || m.inList(j-1, listUsedToBe)):
		return roleTo, "left, and told what it was", true
	}
	return 0, "", false
}

// closesWell tells whether nothing but a word that it was left so follows the number at
// i in its clause.
func (m *message) closesWell(i int) bool {
	return m.closes(i) || m.is(i+1, cUnit, "") && m.closes(i+1) || m.text(i+1) == "and"
}

// movedTo tells whether a word that moves a setting stands between the numbers at i and
// j, the second being where it was moved to.
func (m *message) movedTo(i, j int) bool {
	if !m.towards(j - 1) {
		return false
	}
	for k := i + 1; k < j; k++ {
		if m.is(k, cDid, "set") || m.is(k, cDid, "charged") || m.is(k, cMove, "") || m.is(k, cHint, "shifted") {
			return true
		}
	}
	return false
}

// pressureLike tells whether the number at k may be a pressure by its size and unit.
func (m *message) pressureLike(k int) bool {
	it := &m.items[k]
	if it.num == nil || it.role == roleTaken || it.role == roleDate || it.unit != "" && !pressureUnit(it.unit) {
		return false
	}
	return toPSI(it.value, it.unit) >= 10 && !it.num.time && !it.num.money && !it.num.apos && len(it.num.digits) < 4
}

// nextPressure returns the next number of the sentence after item i that may be a
// pressure, else -1.
func (m *message) nextPressure(i int) int {
	for k := i + 1; k < m.sents[m.items[i].sent].to; k++ {
		if m.pressureLike(k) {
			return k
		}
	}
	return -1
}

// prevPressure returns the number of the sentence before item i that may be a pressure, else -1.
func (m *message) prevPressure(i int) int {
	for k := i - 1; k >= m.sents[m.items[i].sent].from; k-- {
		if m.pressureLike(k) {
			return k
		}
	}
	return -1
}

// pointInSentence tells whether sentence s names a test point.
func (m *message) pointInSentence(s int) bool {
	for k := m.sents[s].from; k < m.sents[s].to; k++ {
		if m.items[k].point != "" && (!m.is(k, cHint, "particle") || m.is(k+1, cHint, "tapword")) && !m.is(k, cItem, "") {
			return true
		}
	}
	return false
}

// foundAt is why a number is what a part was found set at.
const foundAt = "found at, then left at"

// leadsIn tells whether the word that leads to the number at i is of a hint: "left it at
// 63", "it had been 80".
func (m *message) leadsIn(i int, hint string) bool {
	for k := i - 1; k >= 0 && k >= i-5 && !m.isMark(k, ",", ".", "\n", "/"); k-- {
		switch {
		case m.is(k, cHint, hint):
			return true
		case m.items[k].num != nil || m.items[k].site:
			return false
		case m.items[k].mark, m.is(k, cItem, ""), m.is(k, cDeterminer, ""), m.is(k, cHint, "putat"), m.is(k, cPart, "air"):
		default:
			if hint == "foundat" && (m.is(k, cDid, "set") || m.is(k, cHint, "hedge")) {
				continue // "was cranked to 95", "only had 12"
			}
			if t := m.text(k); t != "it" && t != "her" && t != "about" && t != "set" && t != "to" && t != "that" && t != "up" && t != "down" {
				return false
			}
		}
	}
	return false
}

// partOfSetting returns the regulator, the tank or its air that the number at i speaks
// of: the last one named before it, be it in the sentence before; else -1.
func (m *message) partOfSetting(i int) int {
	first := m.sents[max(m.items[i].sent-1, 0)].from
	sent := m.items[i].sent
	named := m.itemIn(sent) != "" || m.sentenceIs(sent, cPart, "air")
	for k := i - 1; k >= first; k-- {
		if named && m.items[k].sent != sent {
			return -1 // "never had a prv. Put 55 of air in the exp tank, was 31"
		}
		if m.is(k, cPart, "air") {
			return k
		}
		if v, ok := m.val(k, cItem); ok && v != "gauge" && !m.taken(k) {
			if c := m.itemCode(k, v); c == "prv" || c == "expansion_tank" {
				return k
			}
			return -1
		}
	}
	return -1
}

// movesBy reads a setting that was moved by so much at item i: "took 15 psi off at the prv",
// "backed it off 12 lbs at the reg", "added another 5 at the prv".
func (m *message) movesBy(i int) bool {
	if !m.is(i, cMove, "") && !m.is(i, cHint, "shift") && !m.is(i, cHint, "movesby") && !m.is(i, cDid, "set") {
		return false
	}
	n := i + 1
	for n <= i+4 && !m.isNum(n) && (m.is(n, cHint, "hedge") || m.is(n, cHint, "way") || m.says(n, "it", "another", "about", "a")) {
		n++
	}
	if !m.isNum(n) || m.items[n].value > 40 || m.items[n].unit != "" && !pressureUnit(m.items[n].unit) || m.items[n].seg != m.items[i].seg {
		return false
	}
	k := n + 1
	for k <= n+5 && m.betweenShiftAndPart(k) {
		k++
	}
	if !m.is(k, cItem, "prv") || k == n+1 || !m.tellsDeed(i, "set", "prv", k) {
		return false
	}
	m.setRole(n, roleIgnored, "a difference")
	return true
}

// betweenShiftAndPart tells whether item k may stand between how far a setting was moved
// and what was set: "took 10 psi off of the prv".
func (m *message) betweenShiftAndPart(k int) bool {
	return m.items[min(k, len(m.items)-1)].role == roleTaken || m.is(k, cUnit, "") || m.is(k, cDeterminer, "") ||
		m.isAny(k, cHint, "particle", "whereto") || m.says(k, "of", "with", "from", "more")
}

// gaugedThere tells whether a change that begins with the number at i is one of a tap, which
// is named behind it: "two turns on the prv got me from 80 to 66 at the kitchen".
func (m *message) gaugedThere(i int) bool {
	j := m.nextNum(i)
	if j < 0 || !m.towards(j-1) || !m.says(j+1, "at", "in", "on", "out", "en") {
		return false
	}
	k := j + 2
	for m.is(k, cDeterminer, "") {
		k++
	}
	return k < len(m.items) && m.items[k].point != ""
}

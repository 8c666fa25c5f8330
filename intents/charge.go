package intents

// Lists of the lexicon that these rules know.
var (
	listTankHas       = listOf("tank has")
	listAdds          = listOf("adds")
	listPutsSome      = listOf("puts some")
	listTankReads     = listOf("tank reads")
	listAnotherClause = listOf("another clause")
	listLeadsToNumber = listOf("leads to number")
	listAbout         = listOf("about")
	listOnTank        = listOf("on tank")
	listAgainst       = listOf("against")
	listTireGauge     = listOf("tire gauge")
)

// changedTo reads the charge of a tank where "changed" was written for "charged":
// "swapped ET, chgd 60#".
func (m *message) changedTo(i int) (role, string, bool) {
	if !m.is(i-1, cDid, "replaced") || !pressureUnit(m.items[i].unit) {
		return 0, "", false
	}
	for k := range m.verbs {
		if v := &m.verbs[k]; v.at < i-1 && v.at >= i-8 && v.done && v.object == "expansion_tank" {
			return m.ofDeed(v, i, roleTo, "charged to")
		}
	}
	return roleIgnored, "changed, not measured", true
}

// tankGate is that of numbers told of an expansion tank or its air.
var tankGate = gateOf(opener{items: []string{"tank", "expansion_tank"}, values: map[class][]string{cPart: {"air"}}})

// chargeRules tell in turn whether a number is the air of the expansion tank.
var chargeRules = partRulesOf([]partRule{
	{reads: (*message).airOught, gate: onlyWithList(listOught)},
	{reads: (*message).tireGauged, gate: onlyWithList(listTireGauge)},
	{reads: (*message).airAdded, gate: onlyWithList(listAdds, listPutsSome)},
	{reads: (*message).airWas, gate: onlyWithWords("it was at", "was at", "it was", "was", "it", "it had", "had")},
	{reads: (*message).chargedTo, ofDeed: true},
	{reads: (*message).chargedToo, gate: tankGate},
	{reads: (*message).tankLeftWith, ofDeed: true},
	{reads: (*message).airOnVisit, ofDeed: true},
	{reads: (*message).chargeBehind, ofDeed: true},
	{reads: (*message).chargeTold, gate: tankGate},
	{reads: (*message).airRole, gate: tankGate},
	{reads: (*message).tankRole, gate: tankGate},
})

// chargeRole tells whether a number is the air of the expansion tank.
func (m *message) chargeRole(i int) (role, string, bool) {
	if m.text(i+1) == "or" && m.text(i+2) == "so" && m.is(i+3, cUnit, "year") {
		return roleAge, "years", true // "exp tank is 12 or so years old"
	}
	r, why, ok := m.partRole(chargeRules, i)
	return r, why, ok && r != roleNone
}

// airOught passes over what the air of a tank should be, behind what it is: "air came up 18, should have been 62".
func (m *message) airOught(i int) (role, string, bool) {
	return roleIgnored, "what its air should be", m.inList(i-1, listOught) && m.airTold(i-1)
}

// airTold tells whether the last number before item i, in its sentence, is the air of a tank.
func (m *message) airTold(i int) bool {
	p := m.prevNum(i)
	if p < 0 || m.pointBetween(p, i) {
		return false
	}
	air := func(k int) bool { return m.is(k, cPart, "air") || m.isAny(k, cItem, "tank", "expansion_tank") }
	k := m.left(p, 6, true, air)
	return (k >= 0 || air(p+1) || air(p+2)) && !m.pointBetween(max(k, 0), p)
}

// tireGauged reads the air of a tank as a tire gauge shows it: "put the tire gauge on the tank and got 18". What
// the gauge was put on was not put in.
func (m *message) tireGauged(i int) (role, string, bool) {
	if !m.holdsKey(keyTank) || m.items[i].unit != "" && !pressureUnit(m.items[i].unit) || m.points(i) {
		return roleNone, "", false
	}
	s, tank, gauge := &m.sents[m.items[i].sent], false, -1
	for k := s.from; k < s.to; k++ {
		if c, ok := m.val(k, cItem); ok && m.itemCode(k, c) == "expansion_tank" {
			tank = true
		}
		if m.inList(k, listTireGauge) {
			gauge = k
		}
		if k < i && m.isNum(k) {
			return roleNone, "", false // what a sticker says behind it is another
		}
	}
	if !tank || gauge < 0 {
		return roleNone, "", false
	}
	for k := range m.verbs {
		if v := &m.verbs[k]; v.at >= s.from && v.at < i && (v.what == "installed" || v.what == "charged") {
			v.done, v.negated = false, true
		}
	}
	return roleCharge, "shown by a tire gauge", true
}

// airAdded reads by how much the air of a tank was raised, no pressure of its own: "added 5 psi to
// the tank", "put 5 psi in the tank".
func (m *message) airAdded(i int) (role, string, bool) {
	p := m.prevNum(i)
	less := p >= 0 && m.items[p].role == roleCharge && m.items[p].value > m.items[i].value // "it had 38, put 20 in it"
	little := m.items[i].value <= mostAirAdded || less
	if m.items[i].unit != "" && !pressureUnit(m.items[i].unit) || !m.inList(i-1, listAdds) && !(m.inList(i-1, listPutsSome) && little) {
		return roleNone, "", false
	}
	k := i + 1
	for m.says(k, "of", "air", "of air", "air to", "air in", "air into", "more", "in", "into", "to", "in to", "al", "a", "de", "de aire") || m.is(k, cDeterminer, "") || m.is(k, cPart, "air") {
		k++
	}
	c, ok := m.val(k, cItem)
	tank := ok && m.itemCode(k, c) == "expansion_tank" || less && m.text(k) == "it"
	if !tank || k == i+1 {
		return roleNone, "", false
	}
	if v := m.verbLeft(i, 2, "installed", "charged"); v != nil {
		v.what, v.object, v.objAt = "charged", "expansion_tank", k
	} else {
		m.verbs = append(m.verbs, verb{at: i - 1, what: "charged", done: true, object: "expansion_tank", objAt: k})
	}
	return roleIgnored, airMore, true
}

// airWas reads what a tank held before some was added: "put 5 psi in the tank, it was at 45".
func (m *message) airWas(i int) (role, string, bool) {
	k := i - 1
	if m.text(k) == "at" {
		k--
	}
	if m.text(k) == "was" && m.text(k-1) == "it" {
		k--
	}
	p := m.prevNum(i)
	told := m.says(k, "it was at", "was at", "it was", "was", "it", "it had", "had") && p >= 0 && m.items[p].why == airMore
	return roleCharge, "in the tank", told
}

// airMore says that a number is by how much the air of a tank was raised.
const airMore = "by how much it was charged"

// mostAirAdded is the most that "put … in the tank" adds; more is what it was brought to.
const mostAirAdded = 15

// chargedTo reads "charged the tank to 60".
func (m *message) chargedTo(i int) (role, string, bool) {
	v := m.verbLeft(i, 8, "charged")
	switch {
	case v == nil || m.pointBetween(v.at, i) || m.numsBetween(v.at, i) > 0 || !m.directly(v.at, i):
		return roleNone, "", false
	case m.isAny(i+1, cTarget, "") || m.text(i+1) == "should be":
		v.done, v.negated = false, true
		return roleCharge, "the charge, and what it should be", true // "tank charge 30 should be 60"
	case v.planned || v.negated:
		return roleIgnored, "planned charge", true
	case m.text(i+1) == "more" || m.text(i-1) == "another":
		return roleIgnored, airMore, true
	}
	m.items[i].owner = v.at + 1
	if m.text(i-1) == "from" {
		return roleFrom, "charged from", true
	}
	return roleTo, "charged to", true
}

// chargedToo reads "set prv 60 and tank 60".
func (m *message) chargedToo(i int) (role, string, bool) {
	if m.text(i-1) == "to" && m.isMark(i-2, ",") && m.inList(i-3, listToo) && m.settingLike(i) {
		if v := m.verbLeft(i, 8, "charged", "set"); v != nil && v.done && v.object == "expansion_tank" && m.numsBetween(v.at, i) == 0 {
			return m.ofDeed(v, i, roleTo, "charged too, to") // "charged the tank too, to 58"
		}
	}
	p := m.prevNum(i)
	if p < 0 || m.items[p].role != roleTo || !m.is(i-1, cItem, "") || !m.says(i-2, "and", "y", ",") {
		return roleNone, "", false
	}
	if c, _ := m.val(i-1, cItem); m.itemCode(i-1, c) != "expansion_tank" {
		return roleNone, "", false
	}
	m.verbs = append(m.verbs, verb{at: i - 1, what: "charged", done: true, object: "expansion_tank", objAt: i - 1})
	m.items[i].owner = i
	return roleTo, "and the tank", true
}

// tankLeftWith reads what a tank was left with.
func (m *message) tankLeftWith(i int) (role, string, bool) {
	r, why, ok := m.leftWith(i)
	return r, why, ok && why == "charged to"
}

// chargeBehind reads "exp tank exchange done, 60 psi chg".
func (m *message) chargeBehind(i int) (role, string, bool) {
	v := m.verbLeft(i, 9, "installed", "replaced")
	if v == nil || !v.done || v.object != "expansion_tank" || !m.is(i+1, cDid, "charged") || !m.closes(i+1) || m.numsBetween(v.at, i) > 0 {
		return roleNone, "", false
	}
	return m.ofDeed(v, i, roleTo, "… charge")
}

// chargeTold reads a charge told of the tank itself.
func (m *message) chargeTold(i int) (role, string, bool) {
	return roleCharge, "in the tank", m.heldByTank(i) || m.gaugedTank(i) || m.toldOfTank(i)
}

// airRole reads a number beside the word "air".
func (m *message) airRole(i int) (role, string, bool) {
	air := m.airNear(i)
	switch {
	case air < 0:
		return roleNone, "", false
	case m.pointBetween(min(air, i), max(air, i)):
		return roleNone, "", true
	case m.targeted(i):
		return roleIgnored, "what the air should be", true
	}
	// "set the air to 60", "air now 60" after pumping
	if v := m.verbLeft(i, 8, "set", "charged"); v != nil && v.done && m.prepBefore(i) {
		m.items[i].owner = v.at + 1
		v.what, v.object = "charged", "expansion_tank"
		return roleTo, "air set to", true
	}
	return roleCharge, "air", true
}

// airNear finds the word "air" that the number at i may be told of, -1 for none. In "ET
// holds 52 lbs air, 64 sys" and "18 lbs of air and the house is at 66" that air has its number.
func (m *message) airNear(i int) int {
	seg := m.items[i].seg
	if air := m.leftTag(i, 5, cPart, "air"); air > 0 {
		own := air - 1
		clause := m.items[air].seg != seg || m.right(air, i-air-1, true, func(k int) bool { return m.inList(k, listAgainst) }) >= 0
		taken := clause && (m.isNum(own) || m.says(own, "de", "of") && m.isNum(own-1))
		if !taken {
			return air
		}
	} else if air == 0 {
		return 0
	}
	if air := m.rightTag(i, 3, cPart, "air"); air >= 0 && m.items[air].seg == seg {
		return air
	}
	return -1
}

// tankRole reads a number told of a tank that was named before it: "tank sitting at 40",
// "XT 2G 58 PSI".
func (m *message) tankRole(i int) (role, string, bool) {
	tank, at := m.topicBefore(i)
	if tank != "expansion_tank" {
		return roleNone, "", false
	}
	it := &m.items[i]
	if at >= 0 && !m.points(i) && m.chargedIn(it.sent) && i-at <= 8 && !m.pointBetween(at, i) &&
		m.inList(i-1, listTankHas) {
		return roleCharge, "air found", true
	}
	if at == i-2 && m.text(i-1) == "pressure" && !m.points(i) {
		return roleCharge, "the tank's pressure", true
	}
	if m.says(i-1, "holding", "holds") && i-at <= 10 && !m.pointInClause(i) && m.closes(i) {
		return roleCharge, "held by the tank", true // "et is 2 gallon, 2018, holding 55"
	}
	if at >= 0 && m.amongTankFacts(at, i) {
		return roleCharge, "among the tank's facts", true
	}
	if at < 0 || m.items[at].seg != it.seg || i-at > 4 || m.leftTag(i, i-at, cPeak, "") >= 0 || m.pointBetween(at, i) ||
		m.pointAt(i) || m.pointAt(i+1) {
		return roleNone, "", false
	}
	if v := m.verbLeft(i, 6, "replaced", "installed", "set"); v != nil && v.at > at-6 {
		switch {
		case v.what == "set" && v.done && m.prepBefore(i):
			it.owner = v.at + 1
			v.what, v.object = "charged", "expansion_tank"
			return roleTo, "tank set to", true
		case v.what == "set" && v.state:
			return roleCharge, "tank set at", true
		}
		return roleNone, "", true
	}
	if m.inList(i-1, listTankReads) {
		if m.is(i+1, cPeak, "") && m.says(i-1, "says", "dice", "is") {
			return roleIgnored, "what the tank is rated", true // "says 150 max on the sticker"
		}
		if !m.targeted(i) {
			return roleCharge, "tank at", true
		}
	}
	if at == i-1 && it.within(20, 80) && m.closes(i) && !m.meets(at-1, denied) {
		return roleCharge, "tank", true // "exp tank 40, house 62"
	}
	return roleCharge, "tank", pressureUnit(it.unit) && !m.meets(i+1, ofReading) && (at == i-1 || m.closes(i) && m.factualRun(at, i))
}

// amongTankFacts tells whether the pressure at item i stands in the list of the facts, its size one of
// them, of the tank at item at: "Exp tank: 2 gal, 2019, 60 psi, ok".
func (m *message) amongTankFacts(at, i int) bool {
	if m.items[i].unit != "psi" || i-at > 12 || m.pointInClause(i) || m.pointBetween(at, i) || m.meets(i+1, ofReading) {
		return false
	}
	led := m.isMark(i-1, ",", ":", "-", "@", "/") || m.factual(i-1)
	return led && (m.closes(i) || m.factual(i+1) || m.isNum(i+1) && year(m.items[i+1].value)) && m.tankSizeTold(at, i) && m.factualRun(at, i)
}

// ofReading are the classes of words that say how a pressure was measured.
var ofReading = setOf(cStatic, cFlowing, cState, cPoint, cPlace, cBibb, cPeak)

// tankSizeTold tells whether the size of a tank stands between two items.
func (m *message) tankSizeTold(a, b int) bool {
	for k := a + 1; k < b; k++ {
		if m.items[k].role == roleSize && m.items[k].value < 20 {
			return true
		}
	}
	return false
}

// airOnVisit reads the air found in a tank before it was pumped up and the air left in
// it, told beside the deed: "put air in the tank, 42 found, 60 left", "recharged it to 66;
// I had found it at 41", "air in exp tank was 18, hit it with the pump, 58 now".
func (m *message) airOnVisit(i int) (role, string, bool) {
	if m.pointInClause(i) || m.points(i) {
		return 0, "", false
	}
	var v *verb
	for k := range m.verbs {
		c := &m.verbs[k]
		late := m.items[i].sent - m.items[c.at].sent
		if c.what == "charged" && c.done && (late == 0 || late == 1) && abs(c.at-i) <= 12 && !m.pointBetween(min(c.at, i), max(c.at, i)) {
			v = c
		}
	}
	if v == nil || m.namedBetween(v.at, i, "expansion_tank") || m.rightTag(i, 3, cStatic, "") >= 0 || m.leftTag(i, 3, cStatic, "") >= 0 {
		return 0, "", false
	}
	if topic, _ := m.topicBefore(i); v.at > i && topic != "expansion_tank" {
		return 0, "", false
	}
	if n := m.nextNum(v.at); n >= 0 && n < i && m.items[n].role != roleTo && m.items[n].role != roleFrom &&
		m.items[n].role != roleCharge && m.items[n].role != roleSize {
		return 0, "", false
	}
	near := func(hint string) bool {
		if m.is(i+1, cHint, hint) || m.is(i-1, cHint, hint) {
			return true
		}
		if m.text(i-1) != "at" {
			return false
		}
		return m.is(i-2, cHint, hint) || (m.is(i-2, cDeterminer, "") || m.text(i-2) == "it") && m.is(i-3, cHint, hint) // "found it at 40"
	}
	switch {
	case near("found"), near("airfound"):
		return m.ofDeed(v, i, roleFrom, "air found")
	case !m.ownsNumberAs(v.at, roleTo) && near("airleft"):
		return m.ofDeed(v, i, roleTo, "air left")
	}
	return 0, "", false
}

// namedBetween tells whether equipment other than item stands between two items.
func (m *message) namedBetween(a, b int, item string) bool {
	for k := min(a, b) + 1; k < max(a, b); k++ {
		if v, ok := m.val(k, cItem); ok && m.itemCode(k, v) != item {
			return true
		}
	}
	return false
}

// ownsNumberAs tells whether a number of that role belongs to the deed at item at.
func (m *message) ownsNumberAs(at int, r role) bool {
	for i := range m.items {
		if m.items[i].owner == at+1 && m.items[i].role == r {
			return true
		}
	}
	return false
}

// pointBetween tells whether a test point told in full stands between two items.
func (m *message) pointBetween(a, b int) bool {
	for k := a + 1; k < b; k++ {
		if m.items[k].point != "" && !m.items[k].weak {
			return true
		}
	}
	return false
}

// numsBetween counts the numbers between two items that may be pressures of their own.
func (m *message) numsBetween(a, b int) int {
	n := 0
	for k := a + 1; k < b; k++ {
		if m.items[k].num != nil && m.items[k].role != roleFrom && m.items[k].role != roleTaken && m.items[k].role != roleSize {
			n++
		}
	}
	return n
}

// directly tells whether a number follows a verb without a clause between.
func (m *message) directly(v, i int) bool {
	for k := v + 1; k < i; k++ {
		t := m.text(k)
		if m.items[k].mark && t != ":" && t != "=" && t != "\"" && t != "(" && t != "->" {
			return false
		}
		if m.inList(k, listAnotherClause) {
			return false
		}
	}
	return true
}

// prepBefore tells whether "to", "at" or the like leads to the number.
func (m *message) prepBefore(i int) bool {
	for k := i - 1; k >= 0 && k >= i-3; k-- {
		switch {
		case m.inList(k, listLeadsToNumber):
			return true
		case m.inList(k, listAbout):
			continue
		}
		return false
	}
	return false
}

// chargedIn tells whether air was put into a tank in sentence s.
func (m *message) chargedIn(s int) bool {
	for _, v := range m.verbs {
		if v.what == "charged" && v.done && m.items[v.at].sent == s {
			return true
		}
	}
	return false
}

// gaugedTank tells whether the number at i is what a gauge on the tank showed: "stuck my
// tire gauge on the expansion tank, forty one".
func (m *message) gaugedTank(i int) bool {
	topic, at := m.topicBefore(i)
	if topic != "expansion_tank" || !m.closes(i) || i-at > 3 || !m.isMark(i-1, ",", ":", "-") && !m.is(i-1, cClaim, "") {
		return false
	}
	on := at - 1
	for m.is(on, cDeterminer, "") {
		on--
	}
	return m.text(on) == "on" && m.left(on, 4, true, func(k int) bool { return m.is(k, cItem, "gauge") || m.text(k) == "tire gauge" }) >= 0
}

// toldOfTank tells whether the number at i is told of the expansion tank itself: "tank
// reading 38", "the exp tank measured 60".
func (m *message) toldOfTank(i int) bool {
	it := &m.items[i]
	if psi := toPSI(it.value, it.unit); it.unit != "" && !pressureUnit(it.unit) || psi < 10 || psi > 100 || !m.closes(i) {
		return false
	}
	k := i - 1
	for m.inList(k, listLinks) || m.is(k, cHint, "tankshows") {
		k--
	}
	v, ok := m.val(k, cItem)
	if k == i-1 || !ok || m.itemCode(k, v) != "expansion_tank" || m.items[k].sent != it.sent {
		return false
	}
	for k--; m.is(k, cDeterminer, ""); k-- {
	}
	return !m.inList(k, listOnTank)
}

// heldByTank tells whether a pressure is said to be in the tank: "50 lbs in the
// tank", "a 2 gal tank with 58 in it".
func (m *message) heldByTank(i int) bool {
	if m.text(i+1) == "in it" || m.text(i+1) == "in" && m.text(i+2) == "it" {
		topic, at := m.topicBefore(i)
		if topic == "" {
			return m.carried(m.items[i].sent) == "expansion_tank" // "… a fresh one on. Sixty pounds in it"
		}
		return topic == "expansion_tank" && !m.pointBetween(at, i) && i-at <= 8
	}
	if !m.says(i+1, "in", "en", "into", "al") {
		return false
	}
	for k := i + 2; k < len(m.items) && k <= i+4 && !m.items[k].mark; k++ {
		if v, ok := m.val(k, cItem); ok {
			return m.itemCode(k, v) == "expansion_tank"
		}
		if m.is(k, cHint, "newone") {
			return m.carriedTo(i) == "expansion_tank"
		}
		if m.items[k].num != nil || m.items[k].point != "" {
			return false
		}
	}
	return false
}

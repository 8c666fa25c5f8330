package intents

import "strings"

// Lists of the lexicon that these rules know.
var (
	listDialNames    = listOf("dial names")
	listOnItsFace    = listOf("on its face")
	listDials        = listOf("dials")
	listDialWords    = listOf("dial words")
	listSettingWords = listOf("setting words")
	listSetsTo       = listOf("sets to")
)

// fromTo reads "from 85 to 60" beside a word of setting or charging.
func (m *message) fromTo(i int) (role, string, bool) {
	prev := m.text(i - 1)
	if r, why, ok := m.wasDialled(i); ok {
		return r, why, true
	}
	if r, why, ok := m.foundThenLeft(i); ok {
		return r, why, true
	}
	if r, why, ok := m.altered(i); ok {
		return r, why, true
	}
	if r, why, ok := m.putTo(i); ok {
		return r, why, true
	}
	// Y of X to Y
	if (m.isNum(i-2) || m.isNum(i-3)) && oneOf(prev, "to", "a", "down to", "up to", "hasta", "->") {
		x := i - 2
		if !m.isNum(x) {
			x = i - 3
		}
		if m.items[x].role == roleFrom {
			m.items[i].owner = m.items[x].owner
			return roleTo, "from … to", true
		}
	}
	if m.turnedUntil(i-3, i) && m.items[i-3].role == roleFrom {
		m.items[i].owner = m.items[i-3].owner
		return roleTo, "from … until", true
	}
	// "set the PRV to 60, was 95"
	if m.gave(roleTo) && m.wasBefore(i) {
		p := m.prevNum(i)
		if p >= i-9 && m.numIs(p, roleTo) && !m.houseNear(i) && !m.placeBetween(p, i) && !m.pointAt(i+1) && !m.pointIn(m.items[i].seg, i) {
			m.items[i].owner = m.items[p].owner
			return roleFrom, "was, of a setting", true
		}
	}
	// "set PRV, 80 to 62"
	if j := m.nextNum(i); j > 0 && j-i <= 2 && m.says(j-1, "to", "a", "down to", "up to") && prev != "to" && prev != "at" {
		v := m.verbLeft(i, 7, "set", "charged")
		if v != nil && v.done && m.numsBetween(v.at, i) == 0 && !m.pointBetween(v.at, i) && !m.points(i) && !m.gaugedThere(i) {
			return m.ofDeed(v, i, roleFrom, "… to …")
		}
	}
	if prev == "from" || prev == "de" || prev == "desde" {
		v := m.verbLeft(i, 9, "set", "charged")
		if v == nil || m.pointBetween(v.at, i) || m.gaugedThere(i) {
			// "from 85 to 60, turned the prv down": a verb after it
			return 0, "", false
		}
		if v.done || v.state {
			if j := m.nextNum(i); j > 0 && (m.inList(j-1, listWentTo) && j-i <= 3 || m.turnedUntil(i, j)) {
				m.items[i].owner = v.at + 1
				v.state, v.done = false, true
				return roleFrom, "from … to", true
			}
			if m.prevNum(i) > v.at && m.items[m.prevNum(i)].role == roleTo {
				return m.ofDeed(v, i, roleFrom, "to … from")
			}
		}
		if v.planned || v.negated {
			return roleIgnored, "planned", true
		}
		j := m.nextNum(i)
		alone := j < 0 || m.clauseStart(j) != m.clauseStart(i)
		if v.done && v.object == "prv" && m.settingLike(i) && alone && !m.pointInClause(i) {
			return m.ofDeed(v, i, roleFrom, "from") // "reg cranked down from 95, kitchen now 61"
		}
	}
	return 0, "", false
}

// turnedUntil tells whether a screw was turned from the number at i until the one at j: "turned it
// from 75 until it was at 50".
func (m *message) turnedUntil(i, j int) bool {
	return j == i+3 && m.isNum(i) && m.isNum(j) && m.says(i+1, "until", "till", "til") && m.says(j-1, "it was", "it was at", "it read", "it showed")
}

// wasBefore tells whether "was" leads to the number at i: "set the PRV to 60, was 95".
func (m *message) wasBefore(i int) bool {
	switch {
	case m.inList(i-1, listWasSet):
		return true
	case m.says(i-1, "at", "en", "set", "set at"):
		k := i - 2
		if m.text(k) == "set" {
			k--
		}
		if m.says(k, "was", "had been") || k == i-2 && m.says(k, "estaba", "it was") {
			return true
		}
	}
	return m.hadItAt(i)
}

// hadItAt tells whether somebody had set the regulator to the number at i: "somebody had it cranked
// to 90", "it was cranked to 95", "last guy had it at 85".
func (m *message) hadItAt(i int) bool {
	if m.text(i-1) == "had it at" {
		return true
	}
	k := i - 1
	for m.says(k, "at", "to", "up", "up to", "clear", "way", "all the way") || m.is(k, cDid, "set") || m.is(k, cHint, "shift") {
		k--
	}
	if k == i-1 {
		return false
	}
	return m.says(k, "had it", "it was", "had been", "had") || m.text(k) == "it" && m.says(k-1, "had", "left")
}

// placeBetween tells whether a test point, be it only "front", stands between two items.
func (m *message) placeBetween(a, b int) bool {
	for k := a + 1; k < b; k++ {
		if m.items[k].point != "" {
			return true
		}
	}
	return false
}

// nextNum returns the number behind item i in its sentence, else -1.
func (m *message) nextNum(i int) int {
	s := &m.sents[m.items[i].sent]
	for k := i + 1; k < s.to; k++ {
		if m.items[k].num != nil {
			return k
		}
	}
	return -1
}

// prevNum returns the number before item i in its sentence, else -1.
func (m *message) prevNum(i int) int {
	s := &m.sents[m.items[i].sent]
	for k := i - 1; k >= s.from; k-- {
		if m.items[k].num != nil {
			return k
		}
	}
	return -1
}

// dialOpener are words that lead to what a thermostat is set to.
var dialOpener = opener{lists: []list{listDials}}

// settingRules tell in turn whether a number is what a regulator or a thermostat is set to.
var settingRules = partRulesOf([]partRule{
	{reads: (*message).leftWith, ofDeed: true},
	{reads: (*message).setBehind, gate: onlyWithWords("preset", "on", "per", "by", "set", "setting")},
	{reads: (*message).setBoth, gate: gateOf(opener{hints: []string{"both"}, words: []string{"both"}}), ofDeed: true},
	{reads: (*message).leftAtRole},
	{reads: (*message).setToRole, ofDeed: true},
	{reads: (*message).setLastRole, ofDeed: true},
	{reads: (*message).thermostatRole},
	{reads: (*message).screwRole, gate: onlyWithWords("tornillo", "screw", "perilla", "set")},
	{reads: (*message).dialRole, gate: onlyWith(cPart, "thermostat")},
	{reads: (*message).settingNamed},
})

// settingRole tells whether a number is what a regulator or a thermostat is set to.
func (m *message) settingRole(i int) (role, string, bool) { return m.partRole(settingRules, i) }

// setBehind reads a setting with the word behind it: "PRV 55# set".
func (m *message) setBehind(i int) (role, string, bool) {
	if topic, _ := m.topicBefore(i); m.text(i+1) == "preset" && m.settingLike(i) && topic == "prv" {
		return roleSetting, "preset", true // "PRV 3/4 2014 50psi preset"
	}
	if topic, _ := m.topicBefore(i); topic == "prv" && len(m.verbs) == 0 && m.says(i+1, "on", "per", "by") && m.settingLike(i) && m.right(i, 3, false, func(k int) bool { return m.inList(k, listOnItsFace) }) > 0 {
		return roleSetting, "on its dial", true // "PRV from 2014, 55 on the dial"
	}
	alone := i+2 >= len(m.items) || m.items[i+2].mark
	return roleSetting, "setting behind it", m.is(i-1, cItem, "prv") && m.says(i+1, "set", "setting") && alone && !m.bothSetTo(i)
}

// setBoth reads what two things were set to: "prv and tank both at 60".
func (m *message) setBoth(i int) (role, string, bool) {
	if m.bothSetTo(i) {
		return roleTo, "both at", true
	}
	v := m.bothDeeds(i)
	if v == nil {
		return roleNone, "", false
	}
	return m.ofDeed(v, i, roleTo, bothAt)
}

// leftAtRole reads what a part was left at: "le instalé reguladora, no tenía, quedó en 62".
func (m *message) leftAtRole(i int) (role, string, bool) {
	if !m.leftAt(i) {
		return roleNone, "", false
	}
	it := &m.items[i]
	v := m.verbLeft(i, 10, "installed", "replaced", "rebuilt", "set", "charged")
	if v != nil && v.done && (v.object == "prv" || v.object == "expansion_tank") && (m.numsBetween(v.at, i) == 0 || m.onlyFound(v.at, i)) &&
		!m.pointInClause(i) && !m.points(i) {
		return m.ofDeed(v, i, roleTo, "left at")
	}
	topic, at := m.topicBefore(i)
	if topic == "prv" && i-at <= 4 && m.items[at].seg == it.seg && !m.points(i) && !m.pointBetween(at, i) &&
		m.verbLeft(i, 20, "set", "replaced", "installed", "rebuilt") == nil {
		if v := m.deedBefore(i, "prv"); v != nil {
			return m.ofDeed(v, i, roleTo, "the regulator left at")
		}
		return roleSetting, "the regulator left at", true // "el prv quedó en 65"
	}
	ofPart := (topic == "prv" || topic == "expansion_tank") && at == i-3 && m.isMark(i-2, ",") && len(m.verbs) == 0
	if ofPart && m.closes(i) && !m.pointInClause(i) {
		m.askPlace(i)
		return roleIgnored, "left at, of no work told", true // "le cobré la reguladora y el tanque, quedó en 60"
	}
	return roleNone, "", false
}

// setToRole reads the number that a deed leads to: "set the prv to 60".
func (m *message) setToRole(i int) (role, string, bool) {
	v := m.verbLeft(i, 9, "set", "replaced", "installed", "rebuilt")
	switch {
	case v == nil || m.fell(v) || m.numsBetween(v.at, i) > 0 || !m.clear(v.at, i):
		return roleNone, "", false
	case m.text(i-1) == ":" && m.left(v.at, 2, false, func(k int) bool { return m.is(k, cBefore, "") }) >= 0:
		return roleNone, "", false // "before I adjusted: 94 kitchen"
	case v.what == "set":
		return m.setVerbRole(v, i)
	case v.done && m.prepBefore(i) && (v.object == "prv" || v.object == "expansion_tank") && m.text(i-1) != "at" && m.text(i-1) != ":":
		return m.ofDeed(v, i, roleTo, v.what+" to")
	}
	return roleNone, "", false
}

// setVerbRole reads the number behind a verb of setting, by what it sets.
func (m *message) setVerbRole(v *verb, i int) (role, string, bool) {
	it := &m.items[i]
	obj := v.object
	if topic, at := m.topicBefore(i); at > v.at || obj == "" {
		obj = topic
	}
	if obj == "" {
		if obj = m.carriedSettable(it.sent); m.setsHouse(v.at) {
			obj = "prv" // "el tanque se cambia el viernes. Se reguló la presión a 60"
		}
	}
	if (v.object == "" || v.objAt < v.at && m.partOfDeed(v) == "") && m.setsPressure(v.at, i) {
		obj, v.object, v.objAt, v.state, v.done = "prv", "prv", -1, false, !v.planned && !v.negated // "tank's good, set the pressure to 60"
	}
	adjacent := v.at == i-1 || m.is(i-1, cItem, "prv") && i-1 <= v.at+2 || m.prepBefore(i) || m.text(v.at+1) == "it" && v.at+2 == i
	n := m.nextNum(i)
	alone := n < 0 || m.clauseStart(n) != m.clauseStart(i)
	gauged := !m.prepBefore(i) && m.pointAt(i+1) && alone && m.text(i-1) != "set" // "reg shot, 0 adj. 131 rear"
	stat := m.right(v.at, i-v.at-1, true, func(k int) bool { return m.plainThermostat(k) || strings.HasPrefix(m.text(k), "temp") }) > 0
	switch {
	case stat && it.value >= 85 && it.value <= 190 && !pressureUnit(it.unit):
		return roleTemp, "thermostat set to", true
	case stat:
		return roleIgnored, "a room's thermostat", true
	case !adjacent || gauged || m.verbTurn(v.at) && !m.prepBefore(i):
		return roleNone, "", false
	case obj == "heater" && it.value >= 85 && it.value <= 190 && !pressureUnit(it.unit):
		return roleTemp, "heater set to", true
	case v.planned || v.negated:
		return roleIgnored, "planned setting", true
	case obj == "expansion_tank" && v.state:
		return roleCharge, "tank set at", true
	case obj == "expansion_tank":
		v.what, v.object = "charged", obj
		return m.ofDeed(v, i, roleTo, "tank set to")
	case v.state:
		return roleSetting, "is set to", true
	}
	return m.ofDeed(v, i, roleTo, "set to")
}

// setsPressure tells whether it is the house's pressure that the verb at item at sets to the number at
// i, and no part's air.
func (m *message) setsPressure(at, i int) bool {
	return m.right(at, min(3, i-at-1), false, func(k int) bool {
		return m.says(k, "pressure", "house pressure", "water pressure", "presion", "the pressure", "la presion")
	}) >= 0
}

// setLastRole reads the setting told last of a new part, or of one that was set: "set the regulator lower, to 58".
func (m *message) setLastRole(i int) (role, string, bool) {
	v := m.verbLeft(i, 16, "replaced", "installed", "set", "charged")
	if v == nil || !v.done || v.negated || v.planned || !m.setLast(v, i) {
		return roleNone, "", false
	}
	return m.ofDeed(v, i, roleTo, v.what+", at")
}

// thermostatRole reads degrees without their unit beside a heater or its dial: "wh sp 120",
// "they keep the heater at 120".
func (m *message) thermostatRole(i int) (role, string, bool) {
	it := &m.items[i]
	if it.unit != "" || it.value < 90 || it.value > 180 {
		return roleNone, "", false
	}
	topic, at := m.topicBefore(i)
	if topic == "heater" && at >= 0 && m.items[at].seg == it.seg && m.left(i, 6, false, func(k int) bool {
		switch {
		case m.text(k) == "temp":
			return !m.pointAt(i+1) && !m.pointAt(i+2) // "wh temp 118 at tub"
		case m.inList(k, listDialWords):
			return true
		}
		return false
	}) >= 0 {
		return roleTemp, "thermostat", true
	}
	if topic == "heater" && it.value >= 100 && it.value <= 160 {
		if k := m.left(i, 5, false, func(k int) bool { return m.says(k, "keep", "keeps", "kept") }); k >= 0 && k < at && !m.pointInClause(i) {
			return roleTemp, "kept at", true
		}
	}
	behind := m.right(i, 4, false, func(k int) bool {
		return m.inList(k, listDialNames) ||
			m.text(k) == "dial" && m.text(i+1) == "on" && m.has(cItem, "heater")
	})
	before := m.left(i, 3, false, func(k int) bool { return m.inList(k, listDialNames) })
	if m.onDial(i) || m.dialBesideWarmth(i) {
		return roleTemp, "on the dial", true
	}
	// not "92 at the drain valve - the thermostat is at 55 C"
	ofIt := func(k int) bool { return k >= 0 && (m.items[k].seg == it.seg || !m.pointInClause(i)) }
	return roleTemp, "thermostat", ofIt(behind) || ofIt(before)
}

// onDial tells whether the number at i is where a dial stands that is no gauge's: "dial's on 140".
func (m *message) onDial(i int) bool {
	k := i - 1
	if !m.says(k, "on", "at") || !m.items[i].within(105, 160) || int(m.items[i].value)%5 != 0 || m.itemIn(m.items[i].sent) != "" || m.pointInClause(i) {
		return false
	}
	for k--; m.inList(k, listLinks) || m.says(k, "set", "still"); k-- {
	}
	return m.text(k) == "dial" && m.closes(i)
}

// dialBesideWarmth tells whether the number at i is what a dial shows that is a heater's, since its sentence
// tells of a heater or of degrees besides: "electric 50 gal, dial says 125 but only 99 degrees gets to the lav".
func (m *message) dialBesideWarmth(i int) bool {
	if !m.holdsKey(keyDial) || !m.items[i].within(105, 160) || int(m.items[i].value)%5 != 0 {
		return false
	}
	k := i - 1
	for m.says(k, "on", "at", "still") || m.is(k, cClaim, "") || m.inList(k, listLinks) {
		k--
	}
	after := i + 1
	for m.says(after, "at", "on") || m.is(after, cDeterminer, "") {
		after++
	}
	if m.text(k) != "dial" || k == i-1 || m.pointAt(after) {
		return false // "dial says 125 on the front bib"
	}
	for j := m.sents[m.items[i].sent].from; j < m.sents[m.items[i].sent].to; j++ {
		if m.ofHeater(j) && j != k && !m.is(j, cPart, "thermostat") || m.isNum(j) && oneOf(m.items[j].unit, "deg", "degf", "degc") {
			return true
		}
	}
	return false
}

// screwRole reads "la reguladora está en 65 según el tornillo", "PRV 55 psi set."
func (m *message) screwRole(i int) (role, string, bool) {
	topic, _ := m.topicBefore(i)
	if topic == "prv" && m.right(i, 4, false, func(k int) bool { return m.says(k, "tornillo", "screw", "perilla") }) >= 0 &&
		!m.pointInClause(i) {
		return roleSetting, "by its screw", true
	}
	return roleSetting, "… set", m.text(i+1) == "set" && m.closes(i+1) && pressureUnit(m.items[i].unit) && m.is(i-1, cItem, "prv")
}

// dialRole reads "drain valve brass, t-stat 125", "heater is 50 gal gas, dial at 120".
func (m *message) dialRole(i int) (role, string, bool) {
	it := &m.items[i]
	if !it.within(100, 160) {
		return roleNone, "", false
	}
	if m.plainThermostat(i - 1) {
		return roleTemp, "thermostat", true
	}
	dial := m.leftTag(i, 3, cPart, "thermostat")
	return roleTemp, "thermostat", dial >= 0 && m.items[dial].seg == it.seg && !m.pointInClause(i) &&
		(m.plainThermostat(dial) || m.heaterIn(it.sent) || m.carried(it.sent) == "heater") &&
		(m.prepBefore(i) || m.says(i-1, "reads", "says", "shows", "is"))
}

// settingNamed reads "prv setting 60", "reguladora a 60".
func (m *message) settingNamed(i int) (role, string, bool) {
	if m.settingWord(i) {
		return roleSetting, "a word of setting", true
	}
	topic, at := m.topicBefore(i)
	if topic != "prv" || at < 0 || m.is(i-1, cHint, "shift") ||
		!(m.items[at].seg == m.items[i].seg && i-at <= 4 || i-at <= 7 && m.factualRun(at, m.labelBefore(i-1))) {
		return roleNone, "", false
	}
	named := m.left(i, 3, false, func(k int) bool {
		return m.inList(k, listSettingWords)
	}) >= 0
	if !named && !(at == i-2 && (m.text(i-1) == "a" || m.text(i-1) == "en" && !m.points(i))) {
		return roleNone, "", false
	}
	if m.left(at, 4, false, func(k int) bool { return m.is(k, cDo, "set") && !m.is(k, cDid, "") }) >= 0 {
		return roleIgnored, "planned setting", true // "mañana le bajo a la reguladora a 60"
	}
	return roleSetting, "setting", true
}

// verbTurn are verbs of setting that need "to" before the number they lead to.
func (m *message) verbTurn(k int) bool {
	if t := m.text(k); strings.HasSuffix(t, " en") || strings.HasSuffix(t, " a") || strings.HasSuffix(t, " at") ||
		strings.HasSuffix(t, " to") {
		return false
	}
	if m.inList(k, listSetsTo) {
		return false
	}
	return true
}

// clear tells whether no other clause or point lies between a verb and a number.
func (m *message) clear(v, i int) bool {
	for k := v + 1; k < i; k++ {
		t := m.text(k)
		if t == "(" {
			if e := m.right(k, 5, false, func(j int) bool { return m.text(j) == ")" }); e > 0 && e < i {
				k = e // "installed PRV (was none) @ 60"
				continue
			}
		}
		if m.items[k].mark && (t == "," || t == "/" || t == "-" || t == "(") {
			// "installed a PRV, set to 60" has its own verb; "adjusted, 60" has none
			return false
		}
		if m.items[k].point != "" && !m.items[k].weak && !m.is(k, cItem, "") {
			return false
		}
		switch t {
		case "and", "then", "now", "but", "reads", "shows", "got", "reading", "y", "so", "because", "porque", "estaban", "estaba",
			"was", "it was", "were", "since", "for the":
			return false
		}
	}
	return true
}

// pointIn tells whether a test point stands in a clause after item i.
func (m *message) pointIn(seg, i int) bool {
	for k := i + 1; k < len(m.items) && m.items[k].seg == seg && m.items[k].sent == m.items[i].sent; k++ {
		if m.items[k].point != "" {
			return true
		}
	}
	return false
}

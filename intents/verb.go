package intents

import "strings"

// Lists of the lexicon that these rules know.
var (
	listRound     = listOf("round")
	listChanged   = listOf("changed")
	listWhatIsSet = listOf("what is set")
)

// verb is a word of work in the message.
type verb struct {
	at      int
	what    string
	done    bool
	negated bool
	planned bool
	state   bool // "PRV set to 60": a fact, no deed
	object  string
	objAt   int
	renews  bool // puts in a part after its like was taken out
}

// findVerbs finds the words of work and says whether the work was done.
func (m *message) findVerbs() {
	m.falls()
	m.unswallow()
	m.bareTanks()
	first := m.firstKey()
	for i := range m.items {
		if m.turnsAt(i) {
			m.turnsOf(i)
		} else if keys := first | m.deedKeys(i); keys != 0 && !m.items[i].mark {
			m.verbsAt(i, keys)
		}
	}
}

// turnsAt tells whether item i counts the turns of a screw.
func (m *message) turnsAt(i int) bool { return m.isNum(i) && m.items[i].unit == "turn" }

// turnsOf reads the turns at item i as a setting of the PRV when they are those of its screw.
func (m *message) turnsOf(i int) {
	if m.turnsScrew(i) {
		m.verbs = append(m.verbs, verb{at: i, what: "set", done: true, object: "prv", objAt: -1})
	}
}

// verbsAt reads the work told at item i by the first rule of its keys that finds any.
func (m *message) verbsAt(i int, keys key) {
	if m.is(i, cHint, "changed") && m.foundShut(i) {
		return // "curb stop was half closed, opened it up"
	}
	if m.typed(i) == "st" && !m.shortSet(i) {
		return
	}
	for open := deedIndex.open(uint64(keys)); open != 0; {
		if deedRules[open.next()].reads(m, i) {
			return
		}
	}
}

// shortSet tells whether "st" at item i may be "set": a part or a deed is told before it, else it is a
// street or water at rest: "front bib st 88", "elm st 123".
func (m *message) shortSet(i int) bool {
	if i == m.sents[m.items[i].sent].from {
		return true
	}
	part := func(k int) bool { return m.meets(k, setOf(cItem, cDid, cFuel)) }
	return m.left(i, 9, true, part) >= 0 || m.right(i, 3, true, part) >= 0
}

// addVerb judges the word at item i as a verb of some work and adds it.
func (m *message) addVerb(i int, what string) *verb {
	v := verb{at: i, what: what, objAt: -1}
	m.judge(&v)
	m.verbs = append(m.verbs, v)
	return &m.verbs[len(m.verbs)-1]
}

// didAt reads a word or phrase of the lexicon that tells work by itself: "swapped out".
func (m *message) didAt(i int) (told bool) {
	it := &m.items[i]
	for _, t := range it.tags {
		if t.class != cDid || m.noDeed(i, t.value) {
			continue
		}
		if it.text == "chg" && m.chargeOfTank(i) {
			m.say(i, "precharge") // "ET 2g chg 60 ok"
			return true
		}
		tankBefore := len(m.verbs) > 0 && m.verbs[len(m.verbs)-1].object == "expansion_tank"
		what := t.value
		if what == "shut" {
			what = m.shutOrSet(i)
		}
		v := m.addVerb(i, what)
		switch {
		case v.what != "replaced":
		case m.changesSetting(v):
		case strings.HasPrefix(it.text, "ch") && m.chargesTank(v, tankBefore):
			v.what = "charged" // "ET chgd 38 -> 62"
		}
		told = true
	}
	return told
}

// changesSetting tells whether a word of changing is said of what a part is set to, and makes it a verb of
// setting then: "changed the setting on the prv", "pressure changed to 60", "changed the air in the tank".
func (m *message) changesSetting(v *verb) bool {
	if !m.inList(v.at, listChanged) {
		return false
	}
	k := v.at + 1
	for m.is(k, cDeterminer, "") || m.is(k, cHint, "possessive") || m.is(k, cItem, "") {
		k++
	}
	if back := v.at - 1; !m.inList(k, listWhatIsSet) && !m.is(k, cPart, "air") {
		for k = back; m.inList(k, listLinks) || m.is(k, cHad, ""); {
			k--
		}
	}
	switch {
	case m.inList(k, listWhatIsSet):
		v.what = "set"
	case m.is(k, cPart, "air") && m.text(k) != "bladder":
		v.what = "charged"
	default:
		return false
	}
	return true
}

// shutOrSet names what a word of shutting at item i does: down to a pressure it sets the
// regulator, "closed her down to 58".
func (m *message) shutOrSet(i int) string {
	k := m.right(i, 4, false, m.isNum)
	if k > 0 && m.says(k-1, "to", "down to") && m.settingLike(k) {
		return "set"
	}
	return "shut"
}

// turnsRound tells whether "turned" at item i puts a thing the right way: "found the prv backwards, turned
// it round".
func (m *message) turnsRound(i int) bool {
	return strings.HasPrefix(m.text(i), "turned") && (m.inList(i+1, listRound) || m.inList(i+2, listRound))
}

// noDeed tells whether a word of work at item i tells something else here.
func (m *message) noDeed(i int, what string) bool {
	if se := &m.sents[m.items[i].sent]; se.question && i == se.from && strings.HasPrefix(m.text(i), "did ") {
		return true // "did the annual flush get done?"
	}
	if m.newOneLater(i) {
		return true // "for a new one in 20 days"
	}
	switch what {
	case "rebuilt": // "rebuild kit for the prv on order"
		return strings.HasSuffix(m.text(i), "kit") && m.right(i, 5, false, func(k int) bool { return m.is(k, cHint, "ordered") }) > 0
	case "replaced":
		return m.switchesPower(i)
	case "set":
		return m.turnsRound(i) || m.booked(i) || m.adjustsFrom(i) || m.turnsOffer(i) || m.turnsWorth(i) || // "prv swap set for june 24"
			m.dropsNewIn(i) || m.setsReminder(i) || m.leftAsItWas(i) || m.text(i) == "set a" && !m.isNum(i+1) // "set a new one", but "cambié el prv, set a 58"
	case "shut":
		return m.opensIt(i) // "somebody closed the main so I opened it"
	case "fixed":
		return m.is(i, cHint, "stops") && m.left(i, 3, true, func(k int) bool { return m.is(k, cRelief, "") }) >= 0 // "T&P stopped dripping"
	case "charged":
		return m.text(i) == "charged" && m.chargesFee(i)
	}
	return false
}

// newOneLater tells whether a new one is to go in after the time behind item i: "new one in 2 weeks".
func (m *message) newOneLater(i int) bool {
	if !strings.HasSuffix(m.text(i), "new one in") {
		return false
	}
	k := i + 1
	if m.says(k, "a", "about", "like", "another") {
		k++
	}
	return m.timeWordAt(k) || m.isNum(k) && unitDays(m.items[k].unit) > 0 || k > i+1 && m.is(k, cUnit, "") && periodDays[m.text(k)] > 0
}

// turnsOffer tells whether "turned down" at item i is what somebody said to an offer: "she turned
// down the new prv", "they turned the swap down".
func (m *message) turnsOffer(i int) bool {
	if !strings.HasPrefix(m.text(i), "turned") || !m.inList(i-1, listPeople) && !m.is(i-1, cWhose, "person") {
		return false
	}
	down, offer := strings.HasSuffix(m.text(i), "down"), false
	for k := i + 1; k < m.clauseEnd(i); k++ {
		if m.items[k].num != nil {
			return false
		}
		down = down || m.text(k) == "down"
		offer = offer || m.is(k, cPart, "new") || m.is(k, cHint, "jobnoun") || m.is(k, cHint, "quoted")
	}
	return down && offer
}

// leftAsItWas tells whether the regulator was left as it is by the words at item i: "así la dejé".
func (m *message) leftAsItWas(i int) bool {
	return m.says(i-1, "asi", "ahi") && !m.isNum(i+2) && m.is(i, cHint, "leftat")
}

// setsReminder tells whether what is set at item i is a reminder: "set me a reminder to replace the prv".
func (m *message) setsReminder(i int) bool {
	return m.right(i, 4, false, func(k int) bool { return m.is(k, cHint, "remind") && m.items[k].seg == m.items[i].seg }) >= 0
}

// dropsNewIn tells whether what is dropped at item i is a new part, and no pressure: "dropping a
// new one in tomorrow".
func (m *message) dropsNewIn(i int) bool {
	return strings.HasPrefix(m.text(i), "dropp") &&
		m.right(i, 3, false, func(k int) bool { return m.is(k, cPart, "new") || strings.HasPrefix(m.text(k), "new one") }) >= 0
}

// turnsWorth tells whether the turn at item i is talk of what a turn does: "a quarter turn on
// those is worth about 6 psi".
func (m *message) turnsWorth(i int) bool {
	return strings.HasSuffix(m.text(i), "turn") && m.right(i, 6, false, func(k int) bool { return m.says(k, "worth", "equals", "means") }) >= 0
}

// chargesFee tells whether "charged" at item i is about money: "charged her 90 for the call".
func (m *message) chargesFee(i int) bool {
	money := func(k int) bool { return m.isNum(k) && (m.items[k].num.money || m.items[k].unit == "money") }
	if m.isNum(i+1) && (m.text(i+2) == "for" || m.text(i+2) == "to" && m.text(i+3) == "come") {
		return true
	}
	if m.isNum(i+1) && m.says(i+2, "to", "on") && m.right(i+2, 2, false, func(k int) bool { return m.inList(k, listAccounts) }) >= 0 {
		return true // "charged 40 to the card"
	}
	return money(i+1) || money(i+2) || m.inList(i+1, listPays)
}

// turnsScrew tells whether the turns counted at item i are those of a PRV's screw: "gave it 2
// turns", "prv screw, 1/2 turn in".
func (m *message) turnsScrew(i int) bool {
	for k := max(0, i-8); k < min(len(m.items), i+12); k++ {
		if m.items[k].sent != m.items[i].sent {
			continue
		}
		if m.is(k, cItem, "prv") || m.says(k, "screw", "tornillo") || k == i-2 && m.text(k) == "gave" && m.has(cItem, "prv") {
			return true
		}
	}
	return false
}

// chargeOfTank tells whether "chg" at item i is short for the air of a tank, whose name, size
// or year stands before it: "ET 2g chg 60 ok". With "to" behind its number it is a deed.
func (m *message) chargeOfTank(i int) bool {
	if !m.isNum(i+1) || m.says(i+2, "->", "to") {
		return false
	}
	if m.is(i-1, cItem, "expansion_tank") || m.isMark(i-1, ",") && m.isNum(i-2) && m.items[i-2].unit == "gal" {
		return true
	}
	return m.isNum(i-1) && (m.items[i-1].unit == "gal" || len(m.items[i-1].num.digits) == 4)
}

// chargesTank tells whether "chgd", which may be changed, is charged: "ET chgd 38 -> 62", "ET
// 15# air, chgd to 62". The deed before it may have been one on a tank.
func (m *message) chargesTank(v *verb, tankBefore bool) bool {
	n := v.at + 1
	to := m.says(n, "to", "up to", "->", "@")
	if to {
		n++ // "rplcd ET, chgd to 62"
	}
	if !m.isNum(n) || len(m.items[n].num.digits) >= 4 || m.items[n].unit != "" && !pressureUnit(m.items[n].unit) {
		return false
	}
	if toPSI(m.items[n].value, m.items[n].unit) < 12 {
		return false // "ET chgd to 4.4"
	}
	if v.object == "" {
		if topic, _ := m.topicBefore(v.at); to && topic == "expansion_tank" {
			return true // "ET low, chgd to 62"
		}
		return tankBefore || m.airBefore(v.at)
	}
	return v.object == "expansion_tank" && (tankBefore || to || m.says(n+1, "->", "to", ">") || m.airBefore(v.at))
}

// airBefore tells whether air that was found in the tank is told right before item i: "ET 15#,".
func (m *message) airBefore(i int) bool {
	air := m.left(i, 4, false, func(k int) bool { return m.is(k, cPart, "air") || m.isNum(k) && pressureUnit(m.items[k].unit) })
	if air < 0 {
		return false
	}
	tank, _ := m.topicBefore(air)
	return tank == "expansion_tank"
}

// verbLeft finds the nearest verb left of item i in its sentence, of the kinds given.
func (m *message) verbLeft(i, n int, kinds ...string) *verb {
	if len(m.verbs) == 0 {
		return nil
	}
	s := &m.sents[m.items[i].sent]
	for j := len(m.verbs) - 1; j >= 0; j-- {
		v := &m.verbs[j]
		if v.at >= i || v.at < s.from {
			continue
		}
		if v.at < i-n {
			break
		}
		for _, k := range kinds {
			if v.what == k {
				return v
			}
		}
	}
	return nil
}

// ofDeed gives the number at item i to the deed of a verb, in the role that it has there: what
// something was set to, or from what.
func (m *message) ofDeed(v *verb, i int, r role, why string) (role, string, bool) {
	m.items[i].owner = v.at + 1
	return r, why, true
}

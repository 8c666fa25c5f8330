package intents

import "strings"

// Lists of the lexicon that these rules know.
var (
	listPronoun      = listOf("pronoun")
	listHeaterParts  = listOf("heater parts")
	listSmallPartsOf = listOf("small parts of")
	listCarriedBy    = listOf("carried by")
)

// What a verb of work was done to.

// objectRight tells whether a verb names its object behind it: "set the PRV".
func (m *message) objectRight(at int) bool {
	for k := at + 1; k < len(m.items) && k <= at+4; k++ {
		if m.is(k, cItem, "") || m.is(k, cPart, "air") {
			return true
		}
		if m.items[k].num != nil || m.items[k].mark {
			return false
		}
	}
	return false
}

// namesPart tells whether item k names a part that may be worked on.
func (m *message) namesPart(k int) bool {
	return m.is(k, cItem, "") && !m.is(k, cItem, "gauge") && !m.taken(k)
}

// smallPart is the object of a deed done to a part of some equipment that is none of its own.
const smallPart = "part of equipment"

// objectOf finds what a deed was done to.
func (m *message) objectOf(v *verb) (string, int) {
	o, at := m.thingOf(v)
	if oneOf(v.what, "replaced", "installed") && at >= 0 && m.ownsPart(at, v.at) {
		return smallPart, at
	}
	return o, at
}

// ownsPart tells whether the equipment at item k only says whose part the deed at item at was done to:
// "replaced the heater's anode", "new element in the heater", "put a new strap on the exp tank".
func (m *message) ownsPart(k, at int) bool {
	part := m.partOfHeater
	if !m.is(k, cItem, "heater") && !m.partOfHeater(k) {
		part = func(j int) bool { return m.inList(j, listSmallPartsOf) || m.is(j, cItem, "gauge") }
	}
	n := k + 1
	if m.says(n, "s", "'s") {
		n++
	}
	dial := m.is(n, cPart, "thermostat") && (m.isNum(n+1) || m.isNum(n+2) || m.is(n+1, cDid, "set"))
	if part(n) && n != at && !dial || n > at && part(n+1) && m.plainWord(n) {
		return true // "replaced the heater dip tube"
	}
	if at > k {
		return m.left(at, at-k, true, part) > 0 && m.pronoun(at) // "heater needed a thermocouple, swapped it"
	}
	first := k - 1
	for m.is(first, cDeterminer, "") || m.is(first, cHint, "possessive") {
		first--
	}
	if first > at && strings.Contains(m.text(first), "element") && strings.HasSuffix(m.text(first), " on") {
		return true
	}
	prep := m.prepOf(k)
	if prep <= at || !m.says(prep, "on", "in", "for", "of", "to", "from", "inside", "del", "de", "al") {
		return false
	}
	return m.left(prep, prep-at-1, false, part) > at || prep == at+1 && part(at-1)
}

// plainWord tells whether item k is a word that may stand before a noun, and no small word, number, verb or thing.
func (m *message) plainWord(k int) bool {
	it := &m.items[k]
	return !it.mark && it.num == nil && !it.site && !m.inList(k, listSmallWords) && !m.meets(k, setOf(cItem, cDid, cDeterminer, cWill, cNeg, cNow)) &&
		!m.says(k, "and", "with", "w", "on", "in", "at", "plus", "y", "con")
}

// partOfHeater tells whether item k names a part of a heater that is no equipment of its own.
func (m *message) partOfHeater(k int) bool {
	if gas := k - 1; m.says(k, "valve", "control", "flex") && (m.text(gas) == "gas" || m.text(gas) == "control" && m.text(gas-1) == "gas") ||
		m.text(k) == "gas" && m.says(k+1, "valve", "control", "flex", "line") {
		return true // "replaced the heater's gas valve"
	}
	return m.inList(k, listHeaterParts) || m.is(k, cHint, "ofheater") || m.is(k, cRelief, "") || m.is(k, cPart, "thermostat") || strings.Contains(m.text(k), "element")
}

// thingOf finds the thing that a deed names or refers to.
func (m *message) thingOf(v *verb) (string, int) {
	if strings.HasPrefix(m.text(v.at), "new one") {
		if o, at := m.objectTakenOut(v); at >= 0 {
			return o, at
		}
	}
	if k := m.partRightBefore(v); k >= 0 {
		o, _ := m.val(k, cItem)
		return m.itemCode(k, o), k
	}
	if o, at := m.objectBehind(v); at >= 0 {
		return o, at
	}
	if o, at := m.feminine(v.at); at >= 0 {
		return o, at
	}
	return m.objectBefore(v)
}

// partRightBefore returns the part that stands right before a verb as its object, -1 for none.
func (m *message) partRightBefore(v *verb) int {
	k := v.at - 1
	if k >= m.sents[m.items[v.at].sent].from && pastForm(m.text(v.at)) && m.says(v.at+1, "and", "y") && m.namesPart(k) {
		return k // "reguladora cambiada y tanque cambiado"
	}
	if k := m.passiveOf(v.at); k >= 0 {
		return k
	}
	if m.is(v.at, cHint, "jobnoun") && m.namesPart(k) {
		return k // "did the drain valve swap on the heater"
	}
	return -1
}

// passiveOf returns the part right before the deed at item at that it is said to have been
// done to, -1 when it is not: "an expansion tank was added above the heater".
func (m *message) passiveOf(at int) int {
	k := at - 1
	if first, _, two := strings.Cut(m.text(at), " "); !two || !m.p.lex.inList(first, listLinks) {
		if !m.inList(k, listLinks) {
			return -1
		}
		k--
	}
	if !m.namesPart(k) || m.carriesRelief(k) || !pastForm(lastWord(m.text(at))) {
		return -1
	}
	return k
}

// carriesRelief tells whether the thing at item k only says whose relief valve it is: "relief valve on
// the heater replaced".
func (m *message) carriesRelief(k int) bool {
	p := m.prepOf(k)
	return p > 0 && m.inList(p, listCarriedBy) && m.is(p-1, cRelief, "")
}

// objectTakenOut finds what the new one of a verb stands for: "pulled the old regulator, new
// one in".
func (m *message) objectTakenOut(v *verb) (string, int) {
	for k := v.at - 1; k >= m.sents[m.items[v.at].sent].from && k >= v.at-8; k-- {
		if o, ok := m.val(k, cItem); ok && o != "gauge" {
			return m.itemCode(k, o), k
		}
		if m.heaterState(k) {
			return "heater", k
		}
	}
	return "", -1
}

// objectBehind finds the object that follows a verb: "replaced the PRV".
func (m *message) objectBehind(v *verb) (string, int) {
	if m.isMark(v.at+1, ":") && m.meets(v.at-1, setOf(cBefore, cAfter)) {
		return "", -1 // "after swap: tub 71, heater idle"
	}
	putsIn := oneOf(v.what, "installed", "replaced")
	for k := v.at + 1; k < m.sents[m.items[v.at].sent].to && k <= v.at+8; k++ {
		if v.what == "flushed" && m.is(k, cItem, "tank") {
			return "heater", k // "drained the tank on the water heater"
		}
		if o, ok := m.val(k, cItem); ok && !m.taken(k) {
			if o == "gauge" && k <= v.at+3 && putsIn {
				return o, k // "hung the gauge on the heater's drain"
			}
			if o == "heater" && putsIn && m.is(k+1, cMaterial, "") &&
				(m.is(k+2, cItem, "drain_valve") || m.items[min(k+2, len(m.items)-1)].point == "heater_drain") {
				continue // "replaced the heater's plastic drain valve"
			}
			if o != "gauge" && !m.onlyPlace(v, k) && !m.innerOf(v, k) && !m.carriesRelief(k) && !m.is(k+1, cRelief, "") {
				return m.itemCode(k, o), k
			}
			continue
		}
		switch {
		case putsIn && m.is(k, cFuel, "") && !m.partOfHeater(k) && !m.gasTalk(k) && m.heaterAlone(k):
			return "heater", k // "set a new 50 gal electric"
		case v.what == "flushed" && m.partAt(k) == "heater":
			return "heater", k // "drained and flushed the 40 gal"
		case v.what == "set" && m.text(k) == "valvula" && m.is(k-1, cDeterminer, "") && (m.stopAt(k+1) || m.says(k+1, "a", "en")):
			return "prv", k // "regulé la válvula a 60"
		case m.is(k, cPart, "strainer") || v.what == "set" && m.is(k, cHint, "prvpart"):
			return "prv", k
		case m.is(k, cPart, "air"):
			return "expansion_tank", k
		case putsIn && m.items[k].point == "heater_drain":
			return "drain_valve", k
		case m.says(k, "then", "but", "luego", "pero"): // "heater dialed at 125 then prv 2008"
			return "", -1
		case m.text(k) == "no", m.is(k, cDid, "") && k > v.at+1, m.items[k].mark && !m.says(k, "(", ")", ":", "/", "\""):
			return "", -1
		case m.is(k, cSym, "leak") && oneOf(v.what, "fixed", "replaced"):
			return "leak", k
		}
	}
	return "", -1
}

// onlyPlace tells whether the item at k behind a verb only says where its work was: "hung a
// tank on the heater", "at the drain".
func (m *message) onlyPlace(v *verb, k int) bool {
	onIt := m.text(k-1) == "on" && m.text(k-2) != "kit" && !strings.Contains(m.text(v.at), "turn")
	beside := m.besideOf(k) && !m.says(m.prepOf(k), "off", "over", "by") // "an expansion tank fitted above the heater"
	return onIt || beside || m.is(k, cItem, "drain_valve") && m.text(k) == "drain" && !m.is(k-1, cMaterial, "") &&
		!(m.says(k+1, "for", "to", "with") && (m.is(k+2, cMaterial, "") || m.is(k+3, cMaterial, ""))) // "swapped the drain for a brass one"
}

// objectBefore finds the object that stands before a verb: "prv replaced", "tank was charged",
// "flushed" after "heater:".
func (m *message) objectBefore(v *verb) (string, int) {
	reach := 5
	if strings.HasPrefix(m.text(v.at), "ya ") || m.text(v.at-1) == "ya" {
		reach = 8
	}
	for k := v.at - 1; k >= m.sents[m.items[v.at].sent].from && k >= v.at-reach; k-- {
		if m.is(k, cRelief, "") && !m.says(k-1, "and", "y") || m.carriesRelief(k) {
			return "", -1
		}
		if m.namesPart(k) {
			o, _ := m.val(k, cItem)
			return m.itemCode(k, o), k
		}
		already := m.text(k) == "," && strings.HasPrefix(m.text(k+1), "ya") // "boiler nuevo de gas, ya instalado"
		switch {
		case m.is(k, cPart, "strainer"):
			return "prv", k
		case m.is(k, cSym, "leak") && v.what == "fixed":
			return "leak", k
		case m.items[k].mark && m.text(k) != ":" && !already:
			return "", -1
		}
	}
	return "", -1
}

// innerOf tells whether the item at k is only where a small part was put in: "put a new
// valve core in the expansion tank".
func (m *message) innerOf(v *verb, k int) bool {
	if v.what != "installed" && v.what != "replaced" {
		return false
	}
	j := k - 1
	for m.is(j, cDeterminer, "") {
		j--
	}
	if t := m.text(j); t != "in" && t != "into" && t != "on" && t != "onto" || j <= v.at+1 {
		return false
	}
	n := j - 1
	return m.is(n, cFitting, "part") || m.items[n].tags == nil && !m.items[n].mark && m.items[n].num == nil && !m.inList(n, listSmallWords)
}

// headedBy returns the part that heads the line of a deed, or that a rebuild is told right
// behind: "exp tank: new one too, swapped", "prv from 2001, rebuilt w kit".
func (m *message) headedBy(v *verb) string {
	s := &m.sents[m.items[v.at].sent]
	topic, at := m.topicBefore(v.at)
	switch {
	case v.what == "replaced" && s.header > at && at >= s.from && (topic == "prv" || topic == "expansion_tank"):
		return topic
	case v.what == "rebuilt" && topic == "prv" && m.rebuiltLast(v) && m.factualRun(at, v.at):
		return topic
	}
	return ""
}

// rebuiltLast tells whether a word of rebuilding stands behind a comma, as what was done to
// the part told before: "prv 2012 brass, rebuilt".
func (m *message) rebuiltLast(v *verb) bool {
	t := m.text(v.at)
	return m.isMark(v.at-1, ",") && t != "cleaned" && (t == "rebuilt" || pastForm(t)) && !m.isNum(v.at+1) && m.text(v.at+1) != "in"
}

// partOfDeed returns the part that a deed before v in its sentence put in, when
// nothing else is named since: "replaced PRV, set to 60".
func (m *message) partOfDeed(v *verb) string {
	from := m.sents[m.items[v.at].sent].from
	for j := len(m.verbs) - 1; j >= 0; j-- {
		d := &m.verbs[j]
		if d.at >= v.at {
			continue
		}
		renewed := oneOf(d.what, "replaced", "installed", "rebuilt") && oneOf(d.object, "prv", "expansion_tank")
		if d.at < from || !d.done || !renewed && !(d.what == "set" && d.object == "prv") {
			return ""
		}
		for k := max(d.at, d.objAt) + 1; k < v.at; k++ {
			if m.is(k, cItem, "") {
				return ""
			}
		}
		return d.object
	}
	return ""
}

// onePut tells whether the object of the deed at i is "una" or "uno": "no tenía
// reguladora, le puse una".
func (m *message) onePut(i int) bool {
	if beginsWith(m.text(i), "el nuevo", "la nueva") {
		return true
	}
	for _, end := range [...]string{" nueva", " nuevo", " una", " uno"} {
		if strings.HasSuffix(m.text(i), end) {
			return true // "puse una nueva"
		}
	}
	return m.says(i+1, "una", "uno") && (m.stopAt(i+2) || m.is(i+2, cPart, "new") || m.says(i+2, "y", "de"))
}

// pronoun tells whether a verb refers back to what was told before: "swapped it", "la cambié".
func (m *message) pronoun(at int) bool {
	if t := m.text(at); strings.HasSuffix(t, " it") || strings.Contains(t, " one") || strings.Contains(t, " it ") && !strings.HasSuffix(t, " on") {
		return true
	}
	back := func(k int) bool { return m.says(k, "it", "that", "one", "this") }
	return back(at+1) || back(at+2) || m.inList(at-1, listPronoun) || m.onePut(at)
}

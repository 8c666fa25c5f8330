package intents

import "strings"

// Lists of the lexicon that these rules know.
var (
	listNoneSaid    = listOf("none said")
	listNoneThereIs = listOf("none there is")
	listOfPart      = listOf("of part")
	listLacks       = listOf("lacks")
	listNegates     = listOf("negates")
	listPutIn       = listOf("put in")
	listToLacked    = listOf("to lacked")
	listHaveOne     = listOf("have one")
	listToAbsent    = listOf("to absent")
	listNoneThere   = listOf("none there")
	listAnswersNone = listOf("answers none")
	listChangesPart = listOf("changes part")
	listTakesGrowth = listOf("takes growth")
)

// itemAbsent tells whether the message says that there is no such thing: "no exp
// tank", "exp tank: none", "no expansion vessel is there".
func (m *message) itemAbsent(i int) bool {
	if t := m.text(i); strings.HasPrefix(t, "ni ") || denies(t) || m.tickedOff(i) {
		return true // "no tiene tanque ni check", "no check"
	}
	return m.lackedBeside(i) && !m.onlyPartDenied(i)
}

// lackedGate is that of the words of lack before and behind a thing.
var lackedGate = gateOf(opener{
	classes: setOf(cLacks, cAbsent),
	lists:   []list{listLacks, listNegates, listNoneThere, listNoneSaid},
	words:   []string{"falta", "neither", "nor", "n", "no", "not"},
})

// lackedBeside tells whether the words before or behind item i say that there is none.
func (m *message) lackedBeside(i int) bool {
	if m.isNum(i-1) && m.items[i-1].value == 0 && m.items[i-1].unit == "" {
		return true // "zero expansion tank"
	}
	if m.kinds.has(cNeg) && m.theyLack(i) {
		return true
	}
	if m.shut(lackedGate) {
		return false
	}
	if absent, said := m.absentBefore(i); said {
		return absent
	}
	return m.absentAfter(i)
}

// theyLack tells whether the words behind item i say that the house has it not: "an expansion tank they
// don't have", "softener, they never had".
func (m *message) theyLack(i int) bool {
	k := i + 1
	for m.isMark(k, ",") || m.says(k, "that") {
		k++
	}
	if !m.inList(k, listPeople) && !m.is(k, cWhose, "person") && !m.says(k, "they", "it", "we", "house", "this house") {
		return false
	}
	for k++; m.says(k, "do", "does", "did", "just"); k++ {
	}
	if !m.is(k, cNeg, "") || m.items[k].seg != m.items[k-1].seg {
		return false
	}
	for k++; m.says(k, "have", "had", "got", "own", "even", "ever"); k++ {
	}
	return m.stopAt(k)
}

// onlyPartDenied tells whether what is denied is something of item i, not the thing: "no
// regulator setting marked", "no reg swap for us here", "no htr firing".
func (m *message) onlyPartDenied(i int) bool {
	return m.inList(i+1, listOfPart) ||
		m.text(i+1) == "to" && !m.inList(i+2, listTakesGrowth) || // "no tank to spare", but "no tank to speak of"
		m.is(i+1, cHint, "jobnoun") || m.is(i+1, cState, "") || m.says(i+1, "firing", "fired")
}

// absentBefore looks for a denial before item i; said is false where there is none.
func (m *message) absentBefore(i int) (absent, said bool) {
	from := m.sents[m.items[i].sent].from
	for k := i - 1; k >= from && k >= i-6; k-- {
		switch {
		case m.is(k, cLacks, ""):
			return true, true
		case m.text(k) == "falta", m.says(k, "neither", "nor") && m.rated(i):
			return false, true
		case m.inList(k, listLacks):
			ofSymptom := k == i-1 && m.says(k, "no", "sin") && m.is(i, cItem, "") && m.symptomOf(i)
			return !ofSymptom, true
		case m.inList(k, listNegates):
			return m.negatesHaving(k, i), true
		case m.inList(k, listPutIn) && m.text(k-1) == "never", m.inList(k, listToLacked):
		case m.is(k, cItem, "") && m.listed(k, i):
		case m.text(k) == "," && m.is(k-1, cItem, "") && m.listed(k, i): // "no check valve, softener or recirc"
		default:
			return false, false
		}
	}
	return false, false
}

// rated tells whether a sentence of "neither" denies a fact of its items: "neither the tank nor
// the prv has a date", "neither the prv nor the tank is any good".
func (m *message) rated(i int) bool {
	fact := func(k int) bool { return k > i && (m.is(k, cHint, "stamp") || m.is(k, cCond, "")) }
	return m.anyIn(m.items[i].sent, fact, setOf(cHint, cCond))
}

// negatesHaving tells whether the "not" at item k denies that there is an item i: "doesn't have
// a tank", "there isn't an expansion tank", "don't see a tank".
func (m *message) negatesHaving(k, i int) bool {
	for j := k + 1; j < i; j++ {
		switch {
		case m.is(j, cItem, ""): // "isn't a check valve or an exp tank"
		case m.text(j) == "the":
			if j == k+1 && (k == m.sents[m.items[i].sent].from || m.is(k-1, cRetract, "")) {
				return false // "not the regulator, it's fine"
			}
		case m.inList(j, listPutIn):
			if m.text(k) != "never" {
				return false
			}
		case !m.inList(j, listHaveOne):
			return false
		}
	}
	if m.says(k, "couldnt", "cant", "didnt") && m.is(i-1, cDeterminer, "") && !m.says(i-1, "a", "an") {
		return false // "couldn't see the regulator"
	}
	return k+1 < i
}

// listed tells whether only list words stand between two items and an "or" follows.
func (m *message) listed(k, i int) bool {
	for j := k; j <= i+3 && j < len(m.items) && m.items[j].sent == m.items[i].sent; j++ {
		if m.says(j, "or", "nor", "ni", "o") {
			return true
		}
	}
	return false
}

// absentAfter looks for a denial behind item i: "exp tank: none", "tank at the meter? no".
func (m *message) absentAfter(i int) bool {
	if m.plugInstead(i) {
		return true
	}
	if m.text(m.prepOf(i)) == "at" && m.left(i, 4, false, func(k int) bool { return m.is(k, cSym, "") }) >= 0 {
		return false // "noise at the prv: none"
	}
	for k := i + 1; k < len(m.items) && k <= i+5 && m.items[k].sent == m.items[i].sent; k++ {
		switch t := m.text(k); {
		case m.is(k, cAbsent, ""):
			return !m.meets(k+1, lacked) // "el boiler no tiene fugas"
		case m.says(k, "a", "en", "at", "for") && k+1 < len(m.items) && m.items[k+1].site: // "tanque a 8 Ciruelo Ct porque no tiene"
		case m.inList(k, listToAbsent), m.timeWordAt(k), m.items[k].site, m.isMark(k, ":", "=", "-", "?", "|"):
		case t == "n":
			return m.closes(k) // "ET N"
		case t == ",":
			return m.noneAt(k+1) && !m.aboutThing(max(i-4, m.sents[m.items[i].sent].from), i)
		case t == "no":
			return m.stopAt(k+1) || m.noThereIs(k)
		case t == "not":
			there := func(j int) bool { return m.text(j) == "there" }
			return m.says(k+1, "present", "there", "installed") || m.closes(k) && m.left(i, 6, true, there) >= 0 // "a softener is there, a check valve is not"
		default:
			return m.inList(k, listNoneThere) && (t != "no tiene" || m.stopAt(k+1))
		}
	}
	return false
}

// plugInstead reads "where the tank ought to be there's a plug, so none".
func (m *message) plugInstead(i int) bool {
	if !m.kinds.has(cAbsent) {
		return false
	}
	none := m.right(i, 14, true, func(k int) bool { return m.is(k, cAbsent, "") && strings.HasPrefix(m.text(k), "so n") })
	return none >= 0 && m.right(i, none-i, true, func(k int) bool { return m.is(k, cItem, "") && k < none }) < 0
}

// noneAt tells whether the words at item k, behind a comma, say that there is none: "tank,
// none", "tank, they never had one".
func (m *message) noneAt(k int) bool {
	somebody := m.inList(k, listPeople) || m.says(k, "they", "house", "there", "it")
	last := k
	if m.text(k) == "no" {
		last++
	}
	if m.meets(last+1, lacked) || m.meets(last+2, lacked) && !m.stopAt(last+1) {
		return false // "la reguladora, no hay fugas"
	}
	switch {
	case m.is(k, cAbsent, ""), m.is(k+1, cAbsent, "") && !m.is(k, cItem, "") && somebody:
		return true
	case m.text(k) == "no":
		return m.says(k+1, "hay", "tiene")
	}
	return m.inList(k, listNoneSaid)
}

// noThereIs reads "no there is none", "no hay" at item k.
func (m *message) noThereIs(k int) bool {
	if m.says(k+1, "hay", "existe") || m.says(k+1, "tiene", "lleva") && m.stopAt(k+2) {
		return true // not "la reguladora no tiene fecha"
	}
	none := func(j int) bool {
		return strings.HasSuffix(m.text(j), "none") || strings.HasSuffix(m.text(j), "isnt") || m.is(j, cAbsent, "")
	}
	return m.inList(k+1, listNoneThereIs) && m.right(k, 3, true, none) >= 0
}

// askedAbsent reads "prv? never had one".
func (m *message) askedAbsent(i int) bool {
	if m.text(i+1) != "?" {
		return false
	}
	switch {
	case m.text(i+2) == "never":
		return m.text(i+3) == "had"
	case m.text(i+2) == "no":
		return m.stopAt(i + 3)
	}
	return m.inList(i+2, listAnswersNone)
}

// tickedOff tells whether a bare "no" behind a comma says that there is none, as in a list:
// "Check valve at meter, yes. Expansion tank, no."
func (m *message) tickedOff(i int) bool {
	if !m.isMark(i+1, ",") || !m.says(i+2, "no", "none", "nope") || i+3 < len(m.items) && !m.isMark(i+3, ".", "\n") {
		return false
	}
	return i == m.sents[m.items[i].sent].from || m.items[i-1].mark
}

// tickedChecks makes "check", ticked off in a list, the check valve: "Tank: 2 gal / Check: none".
func (m *message) tickedChecks() {
	for i := range m.items {
		if m.text(i) != "check" {
			continue
		}
		if m.checkChanged(i) {
			m.say(i, "bfp")
		}
		if i > 0 && !m.items[i-1].mark {
			continue
		}
		k := i + 1
		for m.isMark(k, ":", "-", "=", "?", "|") {
			k++
		}
		// "Check: none at the meter"
		if (m.says(k, "none", "no", "n") || m.is(k, cAbsent, "") || m.is(k, cPresent, "") && k > i+1) &&
			(m.stopAt(k+1) || m.says(k+1, "at", "on")) {
			m.say(i, "bfp")
		}
	}
}

// checkChanged tells whether "check" at item i is a part that is changed: "back in 2 weeks to change
// the check", "new check goes in Tuesday".
func (m *message) checkChanged(i int) bool {
	if m.is(i-1, cPart, "new") && m.is(i+1, cHint, "wentin") || m.is(i-1, cPart, "new") && m.says(i+1, "goes", "going", "goes in", "going in") {
		return true
	}
	if !m.is(i-1, cDeterminer, "") && !m.says(i-1, "that", "bad", "old") {
		return false
	}
	k := i - 1
	for m.is(k, cDeterminer, "") || m.says(k, "that", "bad", "old", "new", "out") {
		k--
	}
	return m.inList(k, listChangesPart)
}

// expGate is that of an expansion tank written short.
var expGate = onlyWithWords("exp")

// tankTicked makes "exp" at the head of a line the expansion tank: "Exp: yes, 2 gal".
func (m *message) tankTicked() {
	if m.shut(expGate) {
		return
	}
	for i := range m.items {
		if m.text(i) == "exp" && m.isMark(i+1, ":") && (i == 0 || m.isMark(i-1, "\n", ".")) {
			m.say(i, "xt")
		}
	}
}

// softGate is that of a softener written short.
var softGate = onlyWithWords("soft")

// softenerTicked makes "soft", ticked off in a list, the softener: "soft OK, recirc none", "soft:
// 2015", "no soft".
func (m *message) softenerTicked() {
	if m.shut(softGate) {
		return
	}
	for i := range m.items {
		if m.text(i) != "soft" {
			continue
		}
		k := i + 1
		for m.isMark(k, ":", "-", "=") {
			k++
		}
		opens := i == 0 || m.items[i-1].mark
		told := m.meets(k, setOf(cCond, cAbsent)) || m.says(k, "none", "no", "n") || k > i+1 && (m.is(k, cPresent, "") || m.isNum(k) || m.is(k, cLacks, ""))
		dated := m.isNum(k) && m.items[k].fullYear() && (m.stopAt(k+1) || m.is(k+1, cCond, "") && m.stopAt(k+2)) // "soft 2021 good"
		if opens && (told && m.stopAt(k+1) || dated) || m.is(i-1, cNeg, "") && m.closes(i) {
			m.say(i, "softener")
		}
	}
}

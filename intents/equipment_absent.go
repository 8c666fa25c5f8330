package intents

import (
	"slices"
	"strings"

	"lazyhand/assess"
)

// Lists of the lexicon that these rules know.
var (
	listBringsTo    = listOf("brings to")
	listThereIs     = listOf("there is")
	listBelieves    = listOf("believes")
	listPlainNo     = listOf("plain no")
	listPipework    = listOf("pipework")
	listWasEver     = listOf("was ever")
	listWants       = listOf("wants")
	listTankDay     = listOf("tank day")
	listThisHouse   = listOf("this house")
	listHouseSystem = listOf("house system")
	listLackedOne   = listOf("lacked one")
)

// named records items that the house may lack, and those said to be absent.
func (m *message) named(s int, items []mentionOf) {
	for _, it := range items {
		if m.items[it.at].sent != s || it.other {
			continue
		}
		if se := &m.sents[s]; se.asking && !se.closes && !m.toldFirst(it.at) || m.guessed(it.at) {
			continue
		}
		if it.item == "heater" && m.is(it.at, cItem, "tank") {
			continue // "instantáneo, sin tanque"
		}
		if m.itemAbsent(it.at) || m.askedAbsent(it.at) {
			if m.lackCounts(it) {
				m.equipment.get(it.item, it.at).lack()
			}
			continue
		}
		if m.unwanted(it.at) || m.sentTo(it.at) || m.onTruck(it.at) {
			continue
		}
		switch it.item {
		case "expansion_tank", "check_valve", "softener", "recirc":
			if m.onlyNamed(it) {
				m.equipment.get(it.item, it.at).named = true
			}
		}
	}
}

// The gates of what somebody believes, wants or only brings.
var (
	believesGate = onlyWithList(listBelieves)
	wantsGate    = onlyWithList(listWants)
	bringsToGate = onlyWithList(listBringsTo)
)

// guessed tells whether somebody only thinks that the thing at item i is there, or is not: "he thinks
// there's a softener". Whoever has seen it says so.
func (m *message) guessed(i int) bool {
	if m.shut(believesGate) {
		return false
	}
	seg := m.items[i].seg
	return m.left(i, 7, false, func(k int) bool { return m.inList(k, listBelieves) && m.items[k].seg == seg }) >= 0
}

// lackCounts tells whether the denial of an item says that the house has none: "no gauge"
// is the tech's own, "no tank leak" denies the leak, and what was put in is there now.
func (m *message) lackCounts(it mentionOf) bool {
	switch {
	case m.installs(it.item) || m.workDoneOn(it.at) || m.symptomOf(it.at):
		return false
	case it.item == "gauge":
		return m.houseGauge(it.at)
	case it.item == "heater", it.item == "drain_valve":
		return m.plainNo(it.at)
	}
	return true
}

// onlyNamed tells whether an item is named as one of the house, and neither work nor a
// plan nor a question speaks of it.
func (m *message) onlyNamed(it mentionOf) bool {
	switch {
	case it.item == "expansion_tank" && (m.tankWork() || m.tankPlan()):
		return false
	case it.item != "expansion_tank" && m.putThere(it.at):
		return true
	case m.perhapsThere(it.at):
		return false
	case it.item == "expansion_tank" && m.notPutIn(it.at):
		return false
	case it.old || m.workOn(it.at) || m.planOn(it.at) || m.sents[m.items[it.at].sent].asking:
		return false
	}
	return m.text(it.at) != "tank" || m.items[it.at].tags == nil || !m.weakTank(it.at)
}

// notPutIn tells whether the thing at item i is one that was not put in: "did not get to install an
// expansion tank".
func (m *message) notPutIn(i int) bool {
	put := m.left(i, 3, false, func(k int) bool {
		return m.is(k, cDo, "install") || m.is(k, cDid, "installed") || m.is(k, cBase, "installed") || m.says(k, "putting in", "installing", "put in")
	})
	return put >= 0 && m.left(put, 5, false, func(k int) bool { return m.is(k, cNeg, "") && m.items[k].seg == m.items[i].seg }) >= 0
}

// perhapsThere tells whether there may be no such thing as item i names: "not sure if there's a
// tank", "there may be a softener". Of "the tank" there is one.
func (m *message) perhapsThere(i int) bool {
	if m.text(i-1) == "si hay" {
		return m.is(i-2, cUnknown, "") // "no sé si hay tanque"
	}
	k := i - 1
	for m.is(k, cPresent, "") || m.is(k, cPart, "") || m.says(k, "a", "an", "any", "un", "una", "there", "be", "is", "are", "was", "were", "even", "it", "he", "she",
		"they", "house", "have", "has", "had", "got", "tiene", "haya", "algun") {
		k--
	}
	return k < i-1 && (m.says(k, "if", "whether", "may be", "might be", "may", "might", "could", "could be") ||
		m.text(k) == "si" && m.is(k-1, cUnknown, ""))
}

// foundAfterAll takes the lack of a thing back where the message goes on that there is one: "no exp
// tank. correction, there is one up in the joists".
func (m *message) foundAfterAll(items []mentionOf) {
	for _, x := range items {
		f := m.equipment.find(x.item)
		if f == nil || !f.Absent() {
			continue
		}
		k := m.right(x.at, 9, true, func(k int) bool { return m.foundOne(k) })
		if next := m.items[x.at].sent + 1; k < 0 && next < len(m.sents) {
			for j := m.sents[next].from; j < m.sents[next].to && k < 0; j++ {
				if m.foundOne(j) {
					k = j
				}
			}
		}
		if k > 0 && m.takesBack(x.at+1, k) {
			f.Present, f.named = nil, true
		}
	}
}

// foundOne tells whether the words at item k say that there is one.
func (m *message) foundOne(k int) bool {
	return m.says(k, "there is", "theres", "found", "hay", "si hay") && m.inList(k+1, listThereIs)
}

// putThere tells whether the thing at item i is said to have been put in, which is no work of ours
// that has a name: "a check valve is fitted at the meter".
func (m *message) putThere(i int) bool {
	return slices.ContainsFunc(m.verbs, func(v verb) bool {
		return v.objAt == i && v.what == "installed" && !v.negated && !v.planned
	})
}

// dontGate opens "don't" and "doesn't" that say no more.
var dontGate = onlyWithWords("dont", "doesnt")

// lackedLater reads what is told to be wanting in a clause or a sentence of its own:
// "looked for a tank and there isn't one", "tank goes in Friday. none there now",
// "next door has a regulator. this place don't".
func (m *message) lackedLater(items []mentionOf) {
	if !m.kinds.has(cAbsent) && !m.kinds.has(cLacks) && !(m.kinds.has(cNeg) && !m.shut(dontGate)) {
		return
	}
	for i := range m.items {
		if !(m.is(i, cAbsent, "") && refersBack(m.text(i)) || m.bareDont(i) || m.bareLack(i)) || m.sents[m.items[i].sent].asking {
			continue
		}
		if m.isMark(i-1, ":") && i > 1 && m.items[i-2].num == nil && !m.is(i-2, cItem, "") {
			continue // "tank dead, fix: none yet" tells of the fix
		}
		for k := len(items) - 1; k >= 0; k-- {
			x := items[k]
			if x.at > i || x.item == "gauge" || x.item == "drain_valve" || x.item == "heater" {
				continue
			}
			near := m.items[x.at].sent >= m.items[i].sent-1 && i-x.at <= 24
			if near && !m.installs(x.item) && !m.workDoneOn(x.at) && !m.aboutThing(max(x.at-4, m.sents[m.items[x.at].sent].from), i) {
				if f := m.equipment.get(x.item, x.at); !f.said {
					f.lack()
				}
			}
			break
		}
	}
}

// bareLack tells whether item i ends a clause in which no thing is named with a word of lack alone: "mañana le
// pongo tanque, no tiene", "house lacks one".
func (m *message) bareLack(i int) bool {
	if !m.is(i, cLacks, "") || m.says(i, "no", "sin", "without", "missing", "no traia", "no tenia") {
		return false // "quería cambiarlo pero no traía": the writer had none with him
	}
	end := i
	if m.inList(i+1, listLackedOne) {
		end++
	}
	named := func(k int) bool { return m.is(k, cItem, "") && m.items[k].seg == m.items[i].seg }
	return m.closes(end) && m.left(i, longestSentence, true, named) < 0
}

// bareDont tells whether item i ends a clause about this house with a bare denial:
// "this place don't".
func (m *message) bareDont(i int) bool {
	if t := m.text(i); t != "dont" && t != "doesnt" || !m.closes(i) {
		return false
	}
	return m.inList(i-1, listThisHouse)
}

// refersBack tells whether a phrase of absence stands for what was named before it.
func refersBack(s string) bool {
	for _, w := range [...]string{" one", "none", " any", "does not have"} {
		if strings.Contains(s, w) {
			return true
		}
	}
	return false
}

// aboutThing tells whether a part of something or a symptom is named among items from..to:
// "looked for a date on the prv, couldn't find one".
func (m *message) aboutThing(from, to int) bool {
	for k := max(from, 0); k < to; k++ {
		if m.is(k, cSym, "") || m.is(k, cColor, "") {
			return true
		}
		switch m.text(k + 1) {
		case "on", "of", "for", "from", "de", "del", "en":
			if m.signsOf(k).has(signThing) {
				return true
			}
		}
	}
	return false
}

// houseGauge tells whether a gauge that is wanting is one of the house: "no gauge on
// this house".
func (m *message) houseGauge(i int) bool {
	house := func(k int) bool { return m.inList(k, listHouseSystem) || m.items[k].site }
	return m.says(i+1, "on", "at", "in") && m.right(i, 4, false, house) >= 0
}

// workDoneOn tells whether the item at i is the object of a deed done.
func (m *message) workDoneOn(i int) bool {
	for _, v := range m.verbs {
		if v.objAt == i && v.done {
			return true
		}
	}
	return false
}

// weakTank tells whether "tank" alone is hardly a mention: "tank day".
func (m *message) weakTank(i int) bool {
	return m.inList(i+1, listTankDay) || m.says(i-1, "the", "that", "el")
}

// plainNo tells whether a bare denial stands right before item i: "no heater".
func (m *message) plainNo(i int) bool {
	return m.inList(i-1, listPlainNo)
}

// symptomOf tells whether a symptom is told of item i: "no tank leak", but "no tank pipes bang", "no tank
// rusty water".
func (m *message) symptomOf(i int) bool {
	subject, _, _ := strings.Cut(m.text(i+1), " ")
	if k := m.pastPlace(i + 2); m.is(i+1, cSym, "leak") && k > i+2 && !m.is(k-1, cItem, "") {
		return false // "no tank leak at the kitchen faucet"
	}
	return m.is(i+1, cSym, "") && !m.p.lex.inList(subject, listPipework) && !m.isAny(i+1, cSym, ofHouse...) && !m.isAny(i+1, cColor, ofHouse...)
}

// ofHouse are the symptoms that are told of the house and its water, and of no part.
var ofHouse = symptomNames(assess.Hammer, assess.RustyWater, assess.DarkWater, assess.LowFlow, assess.NoWater, assess.GasSmell, assess.ReliefDischarge)

// symptomNames are the names of symptoms as the lexicon writes them.
func symptomNames(names ...assess.SymptomName) (out []string) {
	for _, n := range names {
		out = append(out, string(n))
	}
	return out
}

// deniedDeed tells whether a deed is told of a thing that there is none of: "no expansion
// tank was ever installed".
func (m *message) deniedDeed(v *verb) bool {
	denied := m.says(v.objAt-1, "no", "without", "w/o") || m.is(v.objAt-1, cLacks, "") || denies(m.text(v.objAt))
	if !denied || v.objAt < 0 || v.objAt >= v.at {
		return false
	}
	for k := v.objAt + 1; k < v.at; k++ {
		if !m.inList(k, listLinks) && !m.inList(k, listWasEver) {
			return false
		}
	}
	return m.closes(v.at) || !m.is(v.at+1, cDeterminer, "") && m.text(v.at+1) != "one"
}

// closes tells whether a clause ends after item k.
func (m *message) closes(k int) bool {
	return k+1 >= len(m.items) || m.items[k+1].mark || m.items[k+1].site
}

// tankWork tells whether the expansion tank was worked on: merely naming it then says nothing more.
func (m *message) tankWork() bool {
	for _, w := range m.work {
		switch w.Action {
		case assess.InstalledTank, assess.ReplacedTank, assess.ChargedTank:
			return true
		}
	}
	return false
}

// installs tells whether an item was put in on the visit: that there was none
// before is no fact of the house any more.
func (m *message) installs(item string) bool {
	for _, w := range m.work {
		if w.Action == assess.InstalledPRV && item == "prv" || w.Action == assess.InstalledTank && item == "expansion_tank" {
			return true
		}
	}
	return false
}

// tankPlan tells whether an expansion tank is to be put in or changed.
func (m *message) tankPlan() bool {
	for _, p := range m.plans {
		if p.Action == assess.InstallTank || p.Action == assess.ReplaceTank {
			return true
		}
	}
	return false
}

// sentTo tells whether the item at i is only to be brought to a house: "send tank to 14 Sorrel".
func (m *message) sentTo(i int) bool {
	if m.shut(bringsToGate) {
		return false
	}
	k := i - 1
	for m.is(k, cDeterminer, "") || m.is(k, cPart, "new") {
		k--
	}
	return m.inList(k, listBringsTo) && m.says(i+1, "to", "over to", "out to") && i+2 < len(m.items) && m.items[i+2].site
}

// unwanted tells whether the item at i is one that somebody does not want: "no quiere
// tanque", "doesn't want a softener".
func (m *message) unwanted(i int) bool {
	if m.is(i-1, cPart, "new") && m.left(i, 4, false, m.turnsOffer) >= 0 {
		return true // "turned down the new tank"
	}
	if m.shut(wantsGate) {
		return false
	}
	return m.left(i, 3, false, func(k int) bool {
		if m.inList(k, listWants) {
			return m.text(k) == "declined" || m.is(k-1, cNeg, "") || m.inList(k-1, listClitics) && m.is(k-2, cNeg, "")
		}
		return false
	}) >= 0
}

// toldFirst tells whether the item at i is told before the question of its sentence
// and in a clause of its own: "no exp tank, que checo next?".
func (m *message) toldFirst(i int) bool {
	at := m.sents[m.items[i].sent].askAt - 1
	return at > i && m.items[at].seg != m.items[i].seg && m.itemAbsent(i)
}

package intents

import "strings"

// Lists of the lexicon that these rules know.
var (
	listLikewise = listOf("likewise")
	listSoIs     = listOf("so is")
	listSame     = listOf("same")
)

// An age told of one thing by another, or of two things at once.

var likewiseGate = gateOf(opener{hints: []string{"sameage", "halfage", "twiceage"}, lists: []list{listSame, listSoIs, listLikewise}, words: []string{"same for", "well"}})

// likewise copies a year: "the regulator was installed in 2021 and so was the heater".
func (m *message) likewise(items []mentionOf) {
	if m.shut(likewiseGate) {
		return
	}
	m.sameAge(items)
	for k := 1; k < len(items); k++ {
		x := items[k]
		own := x.at // "so is his 2 gallon tank"
		for m.numIs(own-1, roleSize) || m.is(own-1, cUnit, "") || m.meets(own-1, setOf(cFuel, cDeterminer)) || m.is(own-1, cHint, "possessive") {
			own--
		}
		same := m.left(own, 4, false, func(k int) bool { return m.inList(k, listSoIs) }) >= 0 && m.left(own, 3, false,
			func(k int) bool {
				return m.inList(k, listLinks) || strings.HasPrefix(m.text(k), "did") || m.says(k, "igual", "does", "do")
			}) >= 0
		if m.left(x.at, 4, false, func(k int) bool {
			return m.text(k) == "same" && (m.text(k+1) == "for" || m.text(k+1) == "with" || m.text(k+1) == "goes") || m.text(k) == "same for"
		}) >= 0 {
			same = true // "no idea how old the prv is, same for the heater"
		}
		if m.items[items[k-1].at].sent == m.items[x.at].sent && m.saidToo(x.at) || m.sameNumberToo(x.at) {
			same = true // "heater's a 2014, tank too"
		}
		if !same {
			continue
		}
		f := m.equipment.find(items[k-1].item)
		if f == nil {
			continue
		}
		g := m.equipment.get(x.item, x.at)
		if g.Condition == "" && f.Condition != "" && m.conditionLast(x.at) {
			g.Condition, g.said = f.Condition, true
			continue
		}
		g.AgeUnknown = g.AgeUnknown || f.AgeUnknown && f.InstalledYear == nil
		if g.InstalledYear == nil && f.InstalledYear != nil {
			y := *f.InstalledYear
			g.InstalledYear = &y
		}
		if g.Condition == "" && f.InstalledYear == nil {
			g.Condition = f.Condition
		}
		g.said = true
	}
}

// saidToo tells whether the clause of the thing at item i says only that it is so too: "tank too", "the tank as
// well", "ditto the heater", and of a condition "tank same".
func (m *message) saidToo(i int) bool {
	first := i
	for m.is(first-1, cDeterminer, "") {
		first--
	}
	switch {
	case m.text(first-1) == "ditto":
		return m.closes(i)
	case !m.items[max(first-1, 0)].mark && !m.says(first-1, "and", "y"):
		return false
	case m.text(i+1) == "as" && m.text(i+2) == "well":
		return m.closes(i + 2)
	}
	return m.closes(i+1) && (m.inList(i+1, listLikewise) || m.inList(i+1, listSame) && m.conditionLast(i))
}

// sameNumberToo tells whether the thing at item i is said to be as old as the one before by its number: "heater 12
// yrs old. prv 12 too".
func (m *message) sameNumberToo(i int) bool {
	k := i + 1
	if m.inList(k, listLikewise) || m.inList(k, listLinks) {
		k++
	}
	if !m.isNum(k) || !m.inList(i+1, listLikewise) && !m.inList(k+1, listLikewise) && !(m.text(k+1) == "as" && m.text(k+2) == "well") {
		return false
	}
	for j := i - 1; j >= 0 && j >= i-20; j-- {
		if m.numIs(j, roleAge) && m.items[j].value == m.items[k].value {
			return true
		}
	}
	return false
}

// conditionLast tells whether a condition, not an age, is the last thing told before item i, which is said
// to be so too: "regulator is a 2019 and looks good, so does the tank".
func (m *message) conditionLast(i int) bool {
	k := m.left(i, 8, true, func(k int) bool {
		return m.is(k, cCond, "") || m.numIs(k, roleYear, roleAge, roleAgo) || m.is(k, cUnknown, "")
	})
	return k >= 0 && m.is(k, cCond, "")
}

// sameAge copies the year of another thing: "exp tank is the same age as the prv",
// "prv is from 2012, exp tank same age", or reckons it: "prv 20 yrs old, heater half that".
func (m *message) sameAge(items []mentionOf) {
	for k, x := range items {
		end := len(m.items)
		if k+1 < len(items) {
			end = items[k+1].at
		}
		at := -1
		for j := x.at + 1; j < end && j <= x.at+8 && m.items[j].sent == m.items[x.at].sent; j++ {
			if m.is(j, cHint, "sameage") || m.ageTimes(j) > 0 || m.closes(j) && (m.inList(j, listSame)) {
				at = j
				break
			}
		}
		if at < 0 {
			continue
		}
		from := k - 1
		if t := m.text(at + 1); (t == "as" || t == "que") && k+1 < len(items) && items[k+1].at <= at+4 {
			from = k + 1
		}
		if from < 0 {
			continue
		}
		f, g := m.equipment.find(items[from].item), m.equipment.get(x.item, x.at)
		if f == nil || g.InstalledYear != nil {
			continue
		}
		g.said = true
		if f.InstalledYear != nil {
			y := *f.InstalledYear
			if n := m.ageTimes(at); n > 0 {
				y = m.ctx.Today.Year - int(float64(m.ctx.Today.Year-y)*n)
			}
			g.InstalledYear = &y
		}
	}
}

// ageTimes returns how many times as old as another thing the words at item j make one: "half that",
// "twice as old"; 0 for none.
func (m *message) ageTimes(j int) float64 {
	switch {
	case strings.HasSuffix(m.text(j-1), "than"):
		return 0 // "more than twice that"
	case m.is(j, cHint, "halfage"):
		return 0.5
	case m.is(j, cHint, "twiceage"):
		return 2
	}
	return 0
}

// unknownToo gives an unknown age told before two things to the second one: "no idea on
// the age of the reg or the heater".
func (m *message) unknownToo(at int, owner string, items []mentionOf) {
	for k := 1; k < len(items); k++ {
		x, y := items[k-1], items[k]
		if x.item != owner || x.at < at || y.at > x.at+3 || m.items[y.at].sent != m.items[at].sent {
			continue
		}
		switch m.text(x.at + 1) {
		case "or", "and", "nor", "n", "o", "ni", "y", "/":
			f := m.equipment.get(y.item, y.at)
			f.AgeUnknown, f.said = true, true
		}
		return
	}
}

package intents

import "strings"

// Lists of the lexicon that these rules know.
var (
	listPerTime    = listOf("per time")
	listOneOfMoney = listOf("one of money")
	listMaybeMoney = listOf("maybe money")
	listMoneyHead  = listOf("money head")
	listMoney      = listOf("money")
)

// Sums of money told without their sign.

// moneyOpener are the words that moneyTalk goes by.
var moneyOpener = opener{lists: []list{listMoneyHead, listMoney}}

// moneyTalk tells whether the number at i is a sum of money by the words before it.
func (m *message) moneyTalk(i int) bool {
	if strings.HasSuffix(m.text(i-1), " charges") && !m.points(i) {
		return true // "sprinkler guy charges 85"
	}
	if m.says(i-1, "at", "for") && m.is(i-2, cItem, "") && m.left(i, 12, true, func(k int) bool { return m.inList(k, listOffers) }) >= 0 &&
		!m.points(i) {
		return true // "priced the tank at 220 and the prv at 450"
	}
	if !m.holdsKey(keyMoney) {
		return false
	}
	s := &m.sents[m.items[i].sent]
	// "Labor 2.5 h @ 118 = 295", "Part: PRV 3/4, 142"
	first := s.from
	for first < s.to && m.items[first].mark {
		first++
	}
	if m.points(i) {
		return false
	}
	if m.items[first].seg != m.items[i].seg && m.pointInClause(i) {
		first = i // "parts ran me 76, front spigot 94"
	}
	if m.inList(first, listMoneyHead) {
		return true
	}
	for k := i - 1; k >= s.from && k >= i-4; k-- {
		switch {
		case !m.inList(k, listMoney):
		case m.text(k) == "charged" && (m.inList(k+1, listPeople) || m.says(k+1, "her", "him", "them", "customer")):
			return true
		case !m.noSum(k, i):
			return !m.tellsElse(k, i)
		}
		if m.items[k].mark && m.text(k) != ":" && m.text(k) != "=" || m.items[k].num != nil {
			return false
		}
	}
	return false
}

var sumGate = onlyWith(cHint, "sum")

// sum reads money told without its sign: "charged her 95", "quote of 95".
func (m *message) sum(i int) bool {
	if m.text(i-1) == "for" && m.isNum(i-2) && m.items[i-2].value < 20 {
		return true // "2 for 120"
	}
	if m.text(i-1) == "for" && m.noEquipment(i-2) && !m.points(i) {
		return true // "got a parking ticket for 45"
	}
	if m.shut(sumGate) {
		return false
	}
	k := m.left(i, 5, false, func(k int) bool { return m.is(k, cHint, "sum") })
	return k >= 0 && m.items[k].seg == m.items[i].seg && m.prevNum(i) < k && !m.pointBetween(k, i) &&
		(m.text(k) != "charged" || m.is(k+1, cHint, "whom"))
}

// noSum tells whether a word of money at item k before the number at i may well mean something
// else: a tank's charge, a check, a part that was quoted.
func (m *message) noSum(k, i int) bool {
	return m.inList(k, listMaybeMoney) &&
		(m.is(k, cDid, "charged") || m.is(k, cPart, "") || k < i-2 || m.tankTalk(m.items[i].sent))
}

// tellsElse tells whether a test point, equipment or a pause stands between a word of money at item
// k and the number at i.
func (m *message) tellsElse(k, i int) bool {
	for j := k + 1; j < i; j++ {
		if m.items[j].point != "" || m.items[j].mark && m.text(j) != ":" || m.is(j, cItem, "") {
			return true
		}
	}
	return false
}

// unitRate reads a number with a unit for a time: "2 psi cada 10 minutos".
func (m *message) unitRate(i int) bool { return m.items[i].unit != "" && m.rate(i) }

// rateGate is that of what is told for each of some times.
var rateGate = gateOf(opener{words: []string{"every", "each", "cada"}, lists: []list{listPerTime}})

// rate reads a sum for a time: "110 a month", "2 psi cada 10 minutos".
func (m *message) rate(i int) bool {
	switch {
	case m.inList(i+1, listPerTime):
	case m.says(i+1, "every", "each", "cada"):
		if m.items[i].unit == "" {
			return false // "58, 64, 71 cada cinco minutos"
		}
		if m.isNum(i + 2) {
			u := m.items[i+2].unit
			return unitDays(u) > 0 || u == "hour"
		}
	default:
		return false
	}
	u, ok := m.val(i+2, cUnit)
	if m.is(i+3, cHint, "earlier") {
		return false // "63 an hour earlier"
	}
	return ok && (unitDays(u) > 0 || u == "hour" || u == "feet")
}

// soManyFor reads "2 for 120".
func (m *message) soManyFor(i int) bool {
	if m.text(i+1) == "for" && m.is(i+2, cDeterminer, "") && (m.is(i+3, cHint, "bought") || m.inList(i+3, listPeople) && m.closes(i+3)) && !m.pointAt(i-1) {
		return true // "took 45 for the part", "put a new fill valve in it, 85 for the lady"
	}
	if m.isMark(i+1, "/") && m.is(i+2, cUnit, "hour") && m.glued(i+2) {
		return true // "95/hr"
	}
	fee := m.text(i+1) == "to" && m.says(i+2, "come", "come out", "show up") // "120 to come out"
	if fee || m.text(i+1) == "cash" || m.inList(i-1, listOneOfMoney) {
		return true // "a dollar 40"
	}
	return m.text(i-1) == "for" && m.isNum(i-2) && m.items[i-2].unit == "" && m.items[i-2].value < 10 && !m.points(i)
}

// askedFor tells whether the number at i is what a thing costs somewhere: "it was 18 at the
// counter", "31 online".
func (m *message) askedFor(i int) bool {
	k := i + 1
	if m.says(k, "at", "from", "in", "on") {
		k++
	}
	if m.is(k, cDeterminer, "") {
		k++
	}
	return m.is(k, cHint, "shopplace")
}

package intents

import "strings"

// A message of a few words that puts the last report right: "sorry, 67", "I typed 96 instead of 66",
// "change my last to 66", "that last one should say 66, not 96".

// Lists of the lexicon that these rules know.
var (
	listTerseWas      = listOf("terse was")
	listChangesNumber = listOf("changes number")
	listNumberSent    = listOf("number sent")
	listBesideChange  = listOf("beside change")
	listToNumber      = listOf("to number")
	listOwnsUp        = listOf("owns up")
	listItSent        = listOf("it sent")
	listWasWrong      = listOf("was wrong")
	listBesideRight   = listOf("beside put right")
	listMovesHouse    = listOf("moves house")
)

// putRightAlone is why the number of a message is the right one of the last report.
const putRightAlone = "put right alone"

// putRight is what a message of a few words says of the one or two numbers in it: the items of the first and
// of the second, -1 for none, and of the words of each sort, the last of each, -1 for none.
type putRight struct {
	first, second int
	denied        int  // the number that is said not to be
	ought         int  // "should be", "was supposed to say"
	wrote         int  // "I typed"
	change, to    int  // "change", "to"
	sorry         int  // "typo", "my mistake"
	was, moves    int  // "was", "belongs"
	sent, it      int  // "my last one"; "that", "it"
	named         int  // the number that "the" or "that" stands before
	denies        int  // "not", "instead of"
	places        int  // taps
	instead       bool // "instead of"
	wrong         bool // "wrong", which only the last report can be
	house, state  bool // a house; a state of the heater
}

// rightGate opens what puts one number right, or a tap or a house, which has a word of a slip, of changing or for the last
// report.
var rightGate = gateOf(opener{
	values: map[class][]string{cAsk: {"correct"}}, words: []string{"era", "eran"},
	lists: []list{listSlipDenies, listSlipWrote, listSlipSorry, listOwnsUp, listSlipShould, listOught, listNumberSent, listChangesNumber},
})

// lone tells whether the message holds at most one number.
func (m *message) lone() bool {
	n := 0
	for s := range m.sents {
		n += m.sents[s].numbers
	}
	return n <= 1
}

// terseRight reads the right value of the last report where the message says no more than that.
func (m *message) terseRight() bool {
	if m.shut(rightGate) && m.lone() {
		return false
	}
	c := putRight{first: -1, second: -1, denied: -1, ought: -1, wrote: -1, change: -1, to: -1, sorry: -1,
		was: -1, moves: -1, sent: -1, it: -1, named: -1, denies: -1}
	for i := range m.items {
		if m.items[i].num != nil && !m.rightNumber(&c, i) || m.items[i].num == nil && !m.rightWord(&c, i) {
			return false
		}
	}
	if c.first < 0 {
		if !c.tapOnly() && !c.houseOnly() && !(c.state && c.sent >= 0 && c.places == 0) {
			return false
		}
		m.putsInPlace(0, -1)
		return true
	}
	if c.state {
		return false
	}
	good, void := c.verdict()
	if good < 0 || c.weak(void) && (m.ctx.Told != nil || m.ctx.Site != "" || c.places > 0 || c.house) {
		return false // whose report it is decides; "actually 81 rear" may be another one
	}
	m.putsInPlace(good, void)
	m.setRole(good, roleReading, putRightAlone)
	return true
}

// rightNumber weighs number i of such a message; it is false for one that is no pressure, and for one too many.
func (m *message) rightNumber(c *putRight, i int) bool {
	it := &m.items[i]
	if it.num.time || it.num.money || it.num.phone || it.unit != "" && !pressureUnit(it.unit) || it.unit == "" && (it.value < 15 || it.value > 200) {
		return false
	}
	if c.denies >= 0 {
		c.denied, c.denies = i, -1
	}
	if c.named < 0 && m.inList(i-1, listThatNumber) {
		c.named = i
	}
	switch {
	case c.first < 0:
		c.first = i
	case c.second < 0:
		c.second = i
	default:
		return false
	}
	return true
}

// rightWord weighs item i of such a message, which is no number; it is false for one that says something else.
func (m *message) rightWord(c *putRight, i int) bool {
	it := &m.items[i]
	if m.inList(i, listMovesHouse) {
		c.moves = i
	}
	switch {
	case it.text == "?", it.text == "/", m.reckons(i):
		return false
	case it.mark:
	case it.site:
		c.house = true
	case it.point != "" || m.is(i, cBibb, ""):
		c.places++
	case m.isAny(i, cState, "idle", "firing"), m.is(i, cItem, "heater"), m.has(cItem, "heater") && (m.is(i, cOn, "") || m.is(i, cOff, "")):
		c.state = true
	case m.inList(i, listSlipDenies), m.text(i) == "no" && c.first >= 0 && (c.sorry >= 0 || c.ought >= 0 && m.says(c.ought, "era", "eran")) && m.isNum(i+1):
		c.denies, c.instead = i, m.is(i, cHint, "insteadof")
	case m.isMark(i+1, ":") && m.inList(i, listChangesNumber):
		c.sorry = i // "edit: 66"
	case m.changesNumber(c, i):
	case c.change >= 0 && c.first >= 0 && m.inList(i, listToNumber):
		c.to = i
	case m.inList(i, listSlipWrote):
		c.wrote = i
	case m.inList(i, listSlipSorry), m.inList(i, listOwnsUp):
		c.sorry, c.wrong = i, c.wrong || m.inList(i, listWasWrong)
	case m.inList(i, listSlipShould) && !m.inList(i, listToNumber), m.inList(i, listOught), m.says(i, "era", "eran"):
		c.ought = i
	case m.inList(i, listNumberSent):
		c.sent = i
	case m.is(i, cAsk, "correct") && strings.HasSuffix(it.text, " one was"):
		c.sent, c.was, c.moves = i, i, i // "my last one was"
	case m.inList(i, listItSent):
		c.it = i
	case m.inList(i, listToNumber):
		c.to = i
	case m.inList(i, listTerseWas):
		c.was = i
	case c.moves == i, it.lists.has(listFillers), m.is(i, cDeterminer, ""), m.inList(i, listSlipFillers), m.inList(i, listBesideChange), m.inList(i, listBesideRight):
	default:
		return false
	}
	return true
}

// changesNumber reads the order to change what was sent at item i: "change", "fix that", "update my last".
func (m *message) changesNumber(c *putRight, i int) bool {
	verb, what, _ := strings.Cut(m.text(i), " ")
	what, to := strings.CutSuffix(what, " to")
	if !m.p.lex.inList(verb, listChangesNumber) || what != "" && !m.p.lex.inList(what, listNumberSent) && !m.p.lex.inList(what, listItSent) {
		return false
	}
	c.change = i
	if to {
		c.to = i
	}
	if m.p.lex.inList(what, listNumberSent) {
		c.sent = i
	} else if what != "" {
		c.it = i
	}
	return true
}

// verdict tells which number is right and which was wrong, -1 for none.
func (c *putRight) verdict() (good, void int) {
	switch {
	case c.first < 0:
		return -1, -1
	case c.second < 0:
		return c.alone(), -1
	case c.denied == c.second && c.instead && c.wrote >= 0 && c.wrote < c.first:
		return c.second, c.first // "I typed 96 instead of 66"
	case c.denied == c.second:
		return c.first, c.second // "66 not 96"
	case c.denied == c.first:
		return c.second, c.first // "not 96, 66"
	case c.ought > c.first && max(c.named, c.wrote, c.sent, c.sorry) >= 0, c.named == c.first && c.was > c.first, c.wrote >= 0 && c.wrote < c.first && c.after(c.first, c.sorry, c.was, c.it):
		return c.second, c.first // "96 should be 66", "I typed 96, it was 66"
	case c.change >= 0 && c.change < c.first && c.to > c.first:
		return c.second, c.first // "change 96 to 66"
	}
	return -1, -1
}

// tapOnly tells whether a message with no number puts the tap of the last report right: "that last one was the
// front, not the rear", "change my last to the rear bib".
func (c *putRight) tapOnly() bool {
	switch {
	case c.places == 0:
		return false
	case c.denies >= 0:
		return c.places > 1 || max(c.sorry, c.sent, c.it, c.wrote, c.ought) >= 0
	case c.change >= 0:
		return c.to >= c.change && max(c.sent, c.it) >= 0
	case c.wrote >= 0 && c.places > 1:
		return max(c.was, c.it, c.ought, c.sorry) > c.wrote // "I said rear, it was the front"
	}
	return c.sorry >= 0 && max(c.was, c.it) > c.sorry || c.sent >= 0 && max(c.was, c.ought) >= c.sent
}

// houseOnly tells whether a message with no number and no tap gives the last report another house: "last one
// belongs to 14 Elm St".
func (c *putRight) houseOnly() bool {
	changes := c.change >= 0 && c.to >= c.change && max(c.sent, c.it) >= 0
	return c.house && c.places == 0 && c.denies < 0 && (changes || c.sent >= 0 && max(c.moves, c.ought) >= c.sent)
}

// alone is the one number of the message where its words put it in the place of what was sent.
func (c *putRight) alone() int {
	switch {
	case c.denied >= 0:
		return -1
	case c.sorry >= 0 && c.sorry < c.first, c.ought >= 0 && c.ought < c.first:
		return c.first
	case c.change >= 0 && c.change < c.first && (c.sent >= 0 || c.it >= 0):
		return c.first
	}
	return -1
}

// after tells whether one of some words stands behind the number.
func (c *putRight) after(number int, words ...int) bool {
	for _, w := range words {
		if w > number {
			return true
		}
	}
	return false
}

// weak tells whether the words may as well report another pressure.
func (c *putRight) weak(void int) bool {
	return (void < 0 || c.house) && c.change < 0 && c.sent < 0 && !c.wrong
}

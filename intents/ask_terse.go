package intents

import "strings"

// Lists of the lexicon that these rules know.
var (
	listTerseWas   = listOf("terse was")
	listTerseMarks = listOf("terse marks")
	listTerseOf    = listOf("terse of")
	listNamesFile  = listOf("names file")
	listNamesSheet = listOf("names sheet")
	listNamesWeek  = listOf("names week")
	listNamesHelp  = listOf("names help")
	listNamesTest  = listOf("names test")
	listBesideName = listOf("beside name")

	listChangesNumber = listOf("changes number")
	listNumberSent    = listOf("number sent")
	listBesideChange  = listOf("beside change")
	listToNumber      = listOf("to number")
	listTerseWaits    = listOf("terse waits")
	listOwnsUp        = listOf("owns up")
	listTerseDone     = listOf("terse done")
)

// terseNames are the names of what is wanted, which ask for it by themselves: "12 Elm report",
// "can I get the sheet", "menu?". A file is a house's; a menu or a week is of none.
var terseNames = [...]struct {
	names        list
	about        About
	needs, never bool // a house
}{
	{names: listNamesFile, about: AskHistory, needs: true},
	{names: listNamesSheet, about: AskReport},
	{names: listNamesWeek, about: AskSummary, never: true},
	{names: listNamesHelp, about: AskHelp, never: true},
	{names: listNamesTest, about: AskNextCheck},
}

// terse reads a whole message of a few words that is an order to the bot: "no,
// 62", "62 not 26", "12 Alder done", "next check 12 Alder".
func (m *message) terse() {
	if len(m.asks) > 0 || len(m.items) == 0 || len(m.items) > 9 {
		return
	}
	if m.terseCorrection() || m.terseChange() || m.tersePutRight() || m.terseDone() || m.terseWait() {
		return
	}
	m.terseNext()
	for _, n := range terseNames {
		if len(m.asks) == 0 && !(n.needs && m.site == nil) && !(n.never && m.site != nil) && m.names(n.names) {
			m.addAsk(0, n.about)
			m.sents[0].asking = true
		}
	}
}

// names tells whether the message is one of the names in a list and says nothing else but a house.
func (m *message) names(l list) bool {
	named := false
	for i := range m.items {
		switch it := &m.items[i]; {
		case m.inList(i, l):
			named = true
		case it.site, it.mark && !m.isMark(i, ":"), it.num == nil && (it.lists.has(listFillers) || it.lists.has(listBesideName)):
		default:
			return false
		}
	}
	return named
}

// terseCorrection reads the right value of the last report, alone in a message.
func (m *message) terseCorrection() bool {
	first, good, void, denies := true, -1, -1, false
	was, no, sorry := false, false, false
	for i := range m.items {
		it := &m.items[i]
		switch {
		case it.site || it.num != nil && (it.num.time || it.num.money || it.num.phone || it.unit != "" && !pressureUnit(it.unit)):
			return false
		case it.num != nil && denies:
			if void >= 0 {
				return false
			}
			void, denies = i, false
		case it.num != nil:
			if good >= 0 {
				return false
			}
			good = i
		case it.mark:
		case good < 0 && (it.text == "era" || it.text == "eran" || it.text == "son" || it.text == "ponle" && first):
			was = true
		case first && m.says(i, "perdon", "perdona", "disculpa"):
			sorry = true
		case m.says(i, "isnt", "wasnt", "instead of", "rather than"), it.text == "no" && m.says(i+1, "son", "es", "era", "eran", "fue"):
			denies = true // "wasn't 92, was 82", "no son 92 son 82"
		case first && (it.text == "no" || it.text == "nope" || it.text == "nah"):
			// "no, 62"; "no 62" may be anything
			if it.text == "no" && m.text(i+1) != "," {
				return false
			}
			no = true
		case it.text == "not" || it.text == "no" && good >= 0 && (was || no || sorry):
			if m.is(i+1, cRetract, "") || m.isMark(i+1, ",") {
				return false // "front is 98, no sorry, 89 front"
			}
			denies = true
		case it.lists.has(listFillers) || it.point != "":
		default:
			switch {
			case it.lists.has(listTerseWas):
			default:
				return false
			}
		}
		if !it.mark {
			first = false
		}
	}
	if good < 0 || !was && !no && void < 0 || (m.items[good].value < 15 || m.items[good].value > 200) && m.items[good].unit == "" {
		return false
	}
	m.putsInPlace(good, void)
	return true
}

// putsInPlace asks for the last report to be corrected to the number at good; the one at void, where there
// is one, was wrong.
func (m *message) putsInPlace(good, void int) {
	m.addAsk(0, AskCorrect)
	s := &m.sents[m.items[good].sent]
	s.asking, s.tells = true, true
	if void >= 0 {
		m.setRole(void, roleIgnored, "taken back")
	}
}

// terseChange reads an order that puts a number in the place of one that was sent: "change 92 to 82",
// "swap that 92 for an 82", "cambia la última a 82".
func (m *message) terseChange() bool {
	first := m.firstOf(0)
	verb, what, _ := strings.Cut(m.text(first), " ")
	if !m.p.lex.inList(verb, listChangesNumber) {
		return false
	}
	good, void, sent := -1, -1, m.p.lex.inList(what, listNumberSent) // "update that"
	for i := range m.items {
		it := &m.items[i]
		switch {
		case it.num != nil && (it.unit != "" && !pressureUnit(it.unit) || it.num.time || it.num.money || it.value < 15 || it.value > 200):
			return false
		case it.num != nil && void >= 0:
			return false
		case it.num != nil:
			void, good = good, i
		case m.inList(i, listNumberSent):
			sent = true
		case i == first, it.mark, it.site, it.point != "", it.lists.has(listFillers), m.is(i, cBibb, ""), m.inList(i, listChangesNumber), m.inList(i, listBesideChange):
		default:
			return false
		}
	}
	before := good - 1
	for before >= 0 && m.isMark(before, ",") {
		before--
	}
	if good < 0 || void < 0 && !sent || !m.inList(before, listToNumber) {
		return false // "correct it, 60 laundry now" may be another tap's
	}
	m.putsInPlace(good, void)
	return true
}

// putRightAlone is why the number of a message is the right one of the last report.
const putRightAlone = "put right alone"

// putRight is what a message of a few words says of the numbers in it.
type putRight struct {
	good, void    int  // items
	sorry, ought  bool // a slip is owned up to; what is right is named
	wrote, denies bool // what was sent is named before the next number, or denied
	points        bool // "the 76" is
	led           bool // such words stand before the first number
	slip          bool // a slip was owned up to before it
}

// tersePutRight reads the right value of the last report where the message says no more than
// that, in words of a slip: "sorry, 67", "I said 76, meant 67", "the 76 should be 67".
func (m *message) tersePutRight() bool {
	if m.ctx.Told != nil || m.ctx.Site != "" {
		return false // whose report it is decides
	}
	c := putRight{good: -1, void: -1}
	for i := range m.items {
		if it := &m.items[i]; it.num != nil && !m.putsRight(&c, i) || it.num == nil && !m.ownsUp(&c, i) {
			return false
		}
	}
	if c.good < 0 || !c.slip && c.void < 0 {
		return false
	}
	m.putsInPlace(c.good, c.void)
	m.setRole(c.good, roleReading, putRightAlone)
	return true
}

// terseWait reads an order that lets a house wait: "another week on 12 Elm", "hold 12 Elm for a week".
func (m *message) terseWait() bool {
	if m.site == nil || len(m.sents) > 1 || len(m.moments) > 1 {
		return false
	}
	waits, span := false, false
	for i := range m.items {
		it := &m.items[i]
		switch {
		case m.timeSpan(i) || unitDays(it.unit) > 0:
			span = true
		case m.inList(i, listTerseWaits):
			waits = true
		case it.site, it.mark, it.num != nil, it.lists.has(listFillers), m.says(i, "for", "on", "at", "por", "que", "se", "en", "a", "un", "una", "give", "let", "few", "a few", "couple", "this"):
		default:
			return false
		}
	}
	if waits && span {
		m.addAsk(0, AskSnooze)
		m.sents[0].asking, m.sents[0].snoozes = true, true
		m.snoozeDays(0)
		a := m.addAsk(0, AskSnooze)
		for i := 1; i < len(m.items) && a.InDays == nil; i++ {
			if d := m.unitAt(i); d > 0 && m.says(i-1, "a", "another", "one", "otra", "otro", "un", "una") {
				a.InDays = &d // "hold 12 Elm for a week"
			}
		}
	}
	return waits && span
}

// putsRight weighs number i of such a message; it is false for one that is no pressure, and
// for one too many.
func (m *message) putsRight(c *putRight, i int) bool {
	it := &m.items[i]
	switch {
	case it.num.time || it.num.money || it.num.phone || it.unit != "" && !pressureUnit(it.unit) || it.unit == "" && (it.value < 15 || it.value > 200):
		return false
	case c.denies && c.void < 0:
		c.void, c.denies = i, false
	case c.good < 0:
		c.good, c.led, c.slip = i, c.wrote || c.sorry || c.points, c.sorry
	case c.void < 0 && c.ought && c.led:
		c.void, c.good = c.good, i // "the 76 should be 67"
	default:
		return false
	}
	return true
}

// ownsUp weighs item i of such a message, which is no number; it is false for one that says
// something else.
func (m *message) ownsUp(c *putRight, i int) bool {
	it := &m.items[i]
	switch {
	case it.site || it.point != "" || it.text == "?" || it.text == "/":
		return false // "actually 81 rear" may be another one
	case it.mark:
	case m.inList(i, listSlipSorry), m.inList(i, listOwnsUp):
		c.sorry, c.ought = true, c.ought || c.good >= 0 // "I wrote 76, meant 67"
	case m.inList(i, listSlipWrote):
		c.wrote = true
	case m.inList(i, listSlipShould):
		c.ought = true
	case m.inList(i, listSlipDenies):
		c.denies = true
	case m.inList(i, listThatNumber) && m.isNum(i+1):
		c.points = true // "the 76 was 67"
	case m.inList(i, listTerseWas):
		c.ought = c.ought || c.good >= 0 && (c.wrote || c.points)
	case m.inList(i, listThatNumber):
	case it.lists.has(listFillers), m.is(i, cDeterminer, ""):
	case m.inList(i, listSlipFillers), m.says(i, "it", "its", "that", "but", "got", "up"):
		return c.good < 0 || m.numberAfter(i) // not "no wait 74 in it"
	default:
		return false
	}
	return true
}

// terseDone reads "done 12 Alder", "mark 12 Alder done".
func (m *message) terseDone() bool {
	if m.site == nil {
		return false
	}
	done := false
	for i := range m.items {
		it := &m.items[i]
		switch {
		case it.num != nil || m.text(i) == "?":
			return false
		case it.site || it.mark || it.lists.has(listFillers):
		case it.lists.has(listTerseDone):
			done = true
		default:
			switch {
			case it.lists.has(listTerseMarks):
			default:
				return false
			}
		}
	}
	if done {
		m.addAsk(0, AskDone)
		m.sents[0].asking, m.sents[0].closes = true, true
	}
	return done
}

// terseNext reads "next check 12 Alder".
func (m *message) terseNext() {
	next, check := false, false
	for i := range m.items {
		it := &m.items[i]
		switch {
		case it.num != nil:
			return
		case it.site || it.mark || it.lists.has(listFillers):
		case it.text == "next check" || it.text == "next test":
			next, check = true, true
		case it.text == "next":
			next = true
		case it.text == "check" || it.text == "test" || it.text == "checks":
			check = true
		default:
			switch {
			case it.lists.has(listTerseOf):
			default:
				return
			}
		}
	}
	if next && check {
		m.addAsk(0, AskNextCheck)
		m.sents[0].asking = true
	}
}

// corner asks for a street line where a message names two streets that cross: a
// report must not go to the house of the thread.
func (m *message) corner() bool {
	if m.site != nil {
		return false
	}
	for i := 0; i+4 < len(m.toks); i++ {
		a, b := m.toks[i].text, m.toks[i+1].text
		if !(a == "corner" && b == "of" || a == "esquina" && b == "de") || m.toks[i].quoted {
			continue
		}
		for j := i + 3; j <= i+5 && j+1 < len(m.toks); j++ {
			t := m.toks[j].text
			if m.toks[j-1].kind != word || t != "and" && t != "&" && t != "y" && t != "con" {
				continue
			}
			if m.toks[i+2].kind != word || m.toks[j+1].kind != word || !m.toks[i+2].caps || !m.toks[j+1].caps {
				break
			}
			span := strings.TrimSpace(m.clean.source(m.raw, spanOf(m.toks[i], m.toks[j+1])))
			m.unclear(span, []string{"corner"}, "Which house number and street? A corner is no address.",
				"¿Qué número y calle? Una esquina no es dirección.")
			return true
		}
	}
	return false
}

func spanOf(a, b token) span { return span{a.span.from, b.span.to} }

package intents

import "strings"

// Lists of the lexicon that these rules know.
var (
	listTerseMarks = listOf("terse marks")
	listTerseOf    = listOf("terse of")
	listNamesFile  = listOf("names file")
	listNamesSheet = listOf("names sheet")
	listNamesWeek  = listOf("names week")
	listNamesHelp  = listOf("names help")
	listNamesTest  = listOf("names test")
	listBesideName = listOf("beside name")

	listTerseWaits = listOf("terse waits")
	listTerseDone  = listOf("terse done")
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
	if len(m.items) == 0 || len(m.items) > longestTerse || m.putRightToo() || len(m.asks) > 0 {
		return
	}
	if m.terseCorrection() || m.terseRight() || m.terseDone() || m.terseWait() {
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

// longestTerse is how many items such a message has at most.
const longestTerse = 11

// putRightToo reads the right value behind a phrase that asks for a correction, or that takes the last report
// back: "fix that 96 to 66", "scratch that, 66".
func (m *message) putRightToo() bool {
	if len(m.asks) != 1 {
		return false
	}
	a := &m.asks[0]
	mayRight := a.About == AskCorrect || a.About == AskUndo && m.isMark(a.at+1, ",") && m.nextNum(a.at) > 0 ||
		m.site != nil && (a.About == AskHistory || a.About == AskReport) // "my last report belongs to 14 Elm"
	if !mayRight || !m.terseRight() {
		return false
	}
	m.asks = m.asks[:1]
	m.asks[0].About = AskCorrect
	return true
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

// terseNotGate is that of what sets the right value of the last report against the wrong one.
var terseNotGate = onlyWithWords("era", "eran", "son", "ponle", "isnt", "wasnt", "instead of", "rather than", "no", "nope", "nah", "not")

// terseCorrection reads the right value of the last report, alone in a message.
func (m *message) terseCorrection() bool {
	if m.shut(terseNotGate) {
		return false
	}
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

// putsInPlace asks for the last report to be corrected by what item good says; the number at void, where there
// is one, was wrong.
func (m *message) putsInPlace(good, void int) {
	m.addAsk(0, AskCorrect)
	s := &m.sents[m.items[good].sent]
	s.asking, s.tells = true, true
	if void >= 0 {
		m.setRole(void, roleIgnored, "taken back")
	}
}

// waitGate is that of what waits for a time.
var waitGate = onlyWith(cUnit, "day", "week", "month", "year")

// terseWait reads an order that lets a house wait: "another week on 12 Elm", "hold 12 Elm for a week".
func (m *message) terseWait() bool {
	if m.shut(waitGate) || len(m.sents) > 1 || len(m.moments) > 1 {
		return false
	}
	waits, span, named := false, false, m.site != nil
	for i := range m.items {
		it := &m.items[i]
		switch {
		case m.timeSpan(i) || unitDays(it.unit) > 0:
			span, waits = true, waits || m.moreOf(i)
		case m.namesFollowUp(i) && (span && waits || i == 1 && m.is(0, cDeterminer, "")):
			named = true // "2 more weeks on that recheck", "that recheck, one more month"
		case m.inList(i, listTerseWaits):
			waits = true
		case it.site, it.mark, it.num != nil, it.lists.has(listFillers), m.says(i, "for", "on", "at", "por", "que", "se", "en", "a", "un", "una", "give", "let", "few", "a few", "couple", "this", "that", "of", "tank", "one"):
		default:
			return false
		}
	}
	if waits && span && named {
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
	return waits && span && named
}

// moreOf tells whether the number of days or longer spans at item i is told as so many more: "2 more weeks".
func (m *message) moreOf(i int) bool {
	to := len(m.toks)
	if i+1 < len(m.items) {
		to = m.items[i+1].tok
	}
	for k := m.items[i].tok + 1; k < to; k++ {
		if m.p.lex.of(&m.toks[k]).lists.has(listTerseWaits) {
			return true
		}
	}
	return false
}

// terseDone reads "done 12 Alder", "mark 12 Alder done".
func (m *message) terseDone() bool {
	if m.site == nil {
		return false
	}
	done, to := false, len(m.items)
	if len(m.sents) == 2 && m.newLook(1) {
		to = m.sents[0].to
	}
	for i := range to {
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

// newLook tells whether sentence s begins with a new look at the house, so that the one before was done: "12 Elm -
// done. new recheck in a year".
func (m *message) newLook(s int) bool {
	k := m.firstOf(s)
	return m.text(k) == "new" && m.is(k+1, cDo, "recheck")
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

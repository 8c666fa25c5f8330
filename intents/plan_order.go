package intents

import "strings"

// What is ordered, or written down to be done.

// Lists of the lexicon that these rules know.
var (
	listBooksCrew    = listOf("books crew")
	listBehindBooked = listOf("behind booked")
)

// crewBooked takes the meaning from a name that is written like a word of the trade, of the one who is
// booked for a visit: "Book Rusty for a recheck at 12 Elm", "Send Dale to 12 Elm".
func (m *message) crewBooked() {
	for s := range m.sents {
		i := m.firstOf(s)
		if i+2 >= m.sents[s].to || !m.inList(i, listBooksCrew) || !m.inList(i+2, listBehindBooked) {
			continue
		}
		it := &m.items[i+1]
		if it.mark || it.num != nil || it.site || it.n > 1 || it.kinds.meets(setOf(cItem, cDo, cDid, cBase)) ||
			!m.toks[it.tok].caps || m.toks[it.tok+1].caps || m.isAny(i+1, cAsk, "report", "trend", "history", "summary") {
			continue
		}
		m.toks[it.tok].cued, m.toks[it.tok].cues = true, 0
		m.call(i+1, "somebody")
	}
}

// orders tells whether the word at i begins its sentence as an order, with a day named in
// it: "Replace it within the month, put it down for 30 days", or follows one that puts the house on
// the list of a day: "pon 18 Plover para el viernes, cambiar tanque".
func (m *message) orders(i, s int) bool {
	return i == m.sents[s].from && orderForm(m.text(i)) && m.momentIn(s) || m.jotted(i) || i == m.listOrderEnd(s) && orderForm(m.text(i))
}

// jotted tells whether the work at item i is a noun that somebody is to write down, or that was
// agreed to: "put down a tank install for 12 Elm", "prv swap approved".
func (m *message) jotted(i int) bool {
	if i >= len(m.items) || !m.is(i-1, cItem, "") || !m.is(i, cHint, "job") || m.denied(i) {
		return false
	}
	s := m.items[i].sent
	if m.hasAsk(AskDone) || m.doneWords(s) || m.sentenceSays(s, "done") || m.sentenceSays(s, "yesterday") {
		return false
	}
	from := m.sents[s].from
	for from < i && (m.is(from, cSkip, "") || m.inList(from, listJots)) {
		from++
	}
	return m.is(from, cHint, "jots") && !m.says(from+1, "it", "this", "that") || m.is(i+1, cHint, "needs")
}

// orderForm tells whether a word of doing has the form of an order.
func orderForm(t string) bool {
	return !pastForm(t) && !strings.HasSuffix(strings.SplitN(t, " ", 2)[0], "ing")
}

// momentNext tells whether a day follows the word at i, past no more than the house:
// "exp tank install at 31 Tugboat Ln, Wednesday 9 am".
func (m *message) momentNext(i int) bool {
	k := i + 1
	for k < len(m.items) && k <= i+4 && (m.items[k].site || m.says(k, ",", "-", ":", "at", "on", "in", "about")) {
		k++
	}
	return m.timeWordAt(k) && !(m.isNum(k) && m.says(k+1, "ago", "back", "bck")) // "prv swap 3 wks ago"
}

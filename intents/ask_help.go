package intents

import "strings"

// Lists of the lexicon that these rules know.
var (
	listBotDoes   = listOf("bot does")
	listWrites    = listOf("writes")
	listHow       = listOf("how")
	listToldToBot = listOf("told to bot")

	listMayI         = listOf("may i")
	listInOneMessage = listOf("in one message")
	listSameMessage  = listOf("same message")
	listThingsTold   = listOf("things told")
)

// botTalk tells whether "how do I" is about the bot.
func (m *message) botTalk(s, i int) bool {
	for k := i; k < m.sents[s].to; k++ {
		if m.text(k) == "tell" && (m.text(k+1) == "if" || m.text(k+1) == "whether") {
			return false
		}
		if m.inList(k, listBotDoes) {
			return true
		}
	}
	return false
}

// asksHelp tells whether a sentence asks how to tell the bot something.
func (m *message) asksHelp(s int) bool {
	if m.readingLike(s) || m.site != nil {
		return false
	}
	how, write, thing := false, false, m.sents[s].question
	for i := m.sents[s].from; i < m.sents[s].to; i++ {
		if m.inList(i, listHow) {
			how = true
			continue
		}
		switch t := m.text(i); {
		case m.inList(i, listToldToBot):
			thing = true
		default:
			write = write || m.p.lex.inList(t, listWrites)
		}
	}
	return how && write && thing && (m.sents[s].question || m.sentenceSays(s, "bot", "know", "show me", "saber"))
}

// asksOfMessages tells whether a sentence asks what may stand in a message: "can i put 3 taps in one post or do you
// want em separate", "can 1 msg have 3 taps in it".
func (m *message) asksOfMessages(s int) bool {
	se := &m.sents[s]
	if m.site != nil || m.readingLike(s) || se.to-se.from > 20 {
		return false
	}
	may, one, thing, same, part := false, false, false, false, false
	for i := se.from; i < se.to; i++ {
		may = may || i < se.from+4 && m.inList(i, listMayI)
		one = one || m.inList(i, listInOneMessage)
		same = same || m.inList(i, listInOneMessage) && m.inList(i-1, listSameMessage) // "in the same text"
		thing = thing || m.inList(i, listThingsTold) || m.items[i].point != ""
		part = part || m.items[i].kinds.has(cItem) && !m.is(i, cItem, "gauge")
		if m.p.lex.inList(lastWord(m.text(i)), listPeople) || m.says(i, "me", "her", "him", "send me") {
			return false // "can you send me the numbers together"
		}
		if m.items[i].num == nil || i+1 >= se.to {
			continue
		}
		for k := m.items[i].tok + 1; k < m.items[i+1].tok; k++ {
			e := m.p.lex.of(&m.toks[k])
			one, thing = one || e.lists.has(listInOneMessage), thing || e.lists.has(listThingsTold) // "3 taps"
		}
	}
	return may && one && (thing && !part || part && same)
}

// wants tells whether a sentence tells that somebody wants something.
func (m *message) wants(s int) bool {
	if !m.cuesIn(s).has(cueWant) {
		return false
	}
	for i := m.sents[s].from; i < m.sents[s].to; i++ {
		if it := &m.items[i]; !it.mark && !it.site && it.num == nil && m.wordCues(it.tok).has(cueWant) {
			return true
		}
	}
	return false
}

// howAsked tells whether the sentence asks before item i how something is asked of the
// bot: "how do I ask you for a graph", "what do I type if I want to see the follow-ups".
func (m *message) howAsked(i int) bool {
	if !m.hasAsk(AskHelp) {
		return false
	}
	k := m.left(i, 12, true, func(k int) bool { return m.is(k, cAsk, string(AskHelp)) })
	return k >= 0 && (strings.HasPrefix(m.text(k), "how") || strings.HasPrefix(m.text(k), "what do") || strings.HasPrefix(m.text(k), "como"))
}

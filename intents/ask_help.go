package intents

import "strings"

var (
	botTalks = phrases(`send | log | enter | report | tell you | tell | you | bot | type | message | reading
		| readings | correct | undo | fix | ask | write | put in | put | get | see | delete | cancel | change
		| snooze | add | record | use | this | history | take back | mark | remove | submit | post | scratch that`)
	writes = phrases(`escribir | mandar | meter | registrar | anotar | reportar | type | send | log | enter | submit
		| mando | meto | registro | anoto | reporto | escribo | write | text you | report | put in | use | usar
		| uso | manda | mandas | pongo | poner`)
)

// botTalk tells whether "how do I" is about the bot.
func (m *message) botTalk(s, i int) bool {
	for k := i; k < m.sents[s].to; k++ {
		if m.text(k) == "tell" && (m.text(k+1) == "if" || m.text(k+1) == "whether") {
			return false
		}
		if botTalks[m.text(k)] {
			return true
		}
	}
	return false
}

var howOpener = opener{words: []string{
	"how", "como", "que", "what", "how do i", "how to", "how should i", "how do you", "whats the way", "cual",
}}

// asksHelp tells whether a sentence asks how to tell the bot something.
func (m *message) asksHelp(s int) bool {
	if !m.holdsKey(keyHow) || m.readingLike(s) || m.site != nil {
		return false
	}
	how, write, thing := false, false, m.sents[s].question
	for i := m.sents[s].from; i < m.sents[s].to; i++ {
		if m.said(i, keyHow) {
			how = true
			continue
		}
		switch t := m.text(i); t {
		case "bot", "lectura", "lecturas", "reading", "readings", "you", "te", "mensaje", "message", "reporte":
			thing = true
		default:
			write = write || writes[t]
		}
	}
	return how && write && thing && (m.sents[s].question || m.sentenceSays(s, "bot", "know", "show me", "saber"))
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

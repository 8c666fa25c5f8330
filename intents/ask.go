package intents

import "strings"

// asked is a question or an instruction on its way to a statement.
type asked struct {
	at int
	Ask
}

// ask finds what the writer wants of the bot.
func (m *message) ask() {
	for s := range m.sents {
		m.askSentence(s)
	}
	m.memories()
}

// memories marks sentences told from memory as a whole: "they tell me it was 70 back in 2019".
func (m *message) memories() {}

// request tells whether a sentence is a question or asks for something.
func (m *message) request(s int) bool {
	se := m.sents[s]
	if se.question {
		return true
	}
	n := 0
	for i := se.from; i < se.to && n < 5; i++ {
		if m.items[i].mark || m.items[i].site {
			continue
		}
		n++
		switch m.text(i) {
		case "send", "show", "show me", "give", "need", "get", "pull", "pull up", "can", "could", "please", "pls", "plz", "want", "mandame", "manda", "dame", "pasame", "ensename", "bot", "porfa", "quiero", "necesito", "make", "run", "print", "lets", "gimme", "lemme", "let", "i need", "look up", "list", "puedes", "muestrame", "muestra", "email", "hey bot", "me", "wanna", "tell", "give me", "draw", "do", "por favor", "ocupo", "saca", "sacame", "haz", "hazme", "draw up", "imprime", "mandale", "enviame", "tell me", "generate", "create", "build", "looking", "bring up", "export", "share", "whats", "what", "when", "which", "who", "how", "any", "que", "cual", "cuales", "cuando", "quien", "como", "cuanto", "is", "are", "did", "does", "have", "hows", "do we", "where", "whn", "wht", "send me", "hx", "cuantos", "cuantas":
			return true
		}
		if m.is(i, cQuestion, "") || m.is(i, cAsk, "") && n == 1 {
			return true
		}
	}
	last := m.text(se.to - 1)
	return last == "please" || last == "pls" || last == "plz" || last == "porfa"
}

// readingLike tells whether a sentence holds a number that looks like a pressure.
func (m *message) readingLike(s int) bool {
	for i := m.sents[s].from; i < m.sents[s].to; i++ {
		it := &m.items[i]
		if it.num == nil || it.role == roleDate {
			continue
		}
		if it.unit == "psi" || it.unit == "bar" || it.unit == "kpa" {
			return true
		}
		if it.unit == "" && it.value >= 20 && it.value <= 200 && it.num.integer && !it.num.time {
			for k := max(0, i-4); k < min(len(m.items), i+5); k++ {
				if m.items[k].point != "" && m.items[k].sent == s {
					return true
				}
			}
		}
	}
	return false
}

func (m *message) anyReadingLike() bool {
	for s := range m.sents {
		if m.readingLike(s) {
			return true
		}
	}
	return false
}

// followUpNoun finds a word for a follow-up in a sentence.
func (m *message) followUpNoun(s int) bool {
	for i := m.sents[s].from; i < m.sents[s].to; i++ {
		if m.is(i, cDo, "recheck") {
			return true
		}
		switch m.text(i) {
		case "follow up", "followup", "f/u", "fu", "reminder", "follow ups", "recheck", "plan", "task", "to do", "seguimiento", "recordatorio", "pendiente", "visit", "return visit", "that one", "due", "callback", "recall", "revision", "check", "ticket", "appointment", "cita", "la revision", "el seguimiento", "item", "that tank", "chequeo", "la de":
			return true
		}
	}
	return false
}

func (m *message) addAsk(at int, about About) *Ask {
	for k := range m.asks {
		if m.asks[k].About == about {
			return &m.asks[k].Ask
		}
	}
	m.asks = append(m.asks, asked{at, Ask{About: about}})
	m.note(at, string(about), "question or instruction")
	return &m.asks[len(m.asks)-1].Ask
}

func (m *message) askSentence(s int) {
	se := &m.sents[s]
	if m.convert(s) {
		se.asking, se.asksConvert = true, true
		return
	}
	if m.sizes(s) {
		a := m.addAsk(se.from, AskTankSize)
		m.tankNumbers(s, a)
		se.asking = true
		return
	}
	if m.asksHelp(s) {
		m.addAsk(se.from, AskHelp)
		se.asking = true
		return
	}
	req := m.request(s)
	firstWord := se.from
	for firstWord < se.to && (m.items[firstWord].mark || m.items[firstWord].site || filler(m.text(firstWord))) {
		firstWord++
	}
	for i := se.from; i < se.to; i++ {
		it := &m.items[i]
		if it.tags == nil {
			continue
		}
		for _, t := range it.tags {
			if m.p.classes[t.class] != cAsk {
				continue
			}
			m.askPhrase(s, i, firstWord, About(t.value), req)
		}
	}
	// "snooze … 2 weeks": the time
	if se.snoozes {
		m.snoozeDays(s)
	}
}

func filler(s string) bool {
	switch s {
	case "hey", "hi", "ok", "okay", "so", "bot", "oye", "please", "pls", "and", "hola", "hello", "also", "actually", "oh", "yo", "um", "well", "porfa", "y", "can", "you", "could", "pues", "por favor", "a", "the", "el", "la", "lazyhand", "alright", "now", "just", "lets", "go ahead and", "i", "you can", "need", "want", "por", "favor", "plz", "sorry", "oops":
		return true
	}
	return false
}

// askPhrase weighs one phrase of asking in its sentence.
func (m *message) askPhrase(s, i, first int, about About, req bool) {
	se := &m.sents[s]
	t := m.text(i)
	begins := i == first
	reading := m.readingLike(s)
	switch about {
	case AskHistory:
		if t == "pull" || t == "show me" || t == "show" || t == "que hay en" || t == "muestra" {
			if !req || m.otherAsk(s, AskHistory) {
				return
			}
			if t == "pull" && m.text(i+1) != "up" && m.site == nil {
				return
			}
		}
		if t == "what was" || t == "what were" || t == "what happened" || t == "tell me about" || t == "how old is the" {
			req = true
		}
		if !req || reading && !se.question || m.otherAsk(s, AskHistory) && t != "history" && t != "historial" && t != "hx" {
			return
		}
		if (t == "last visit" || t == "last reading" || t == "last readings" || t == "ultima vez") && !se.question && !begins && m.site == nil {
			return
		}
		if m.closingWords(s) && t == "last visit" {
			return
		}
		m.addAsk(i, AskHistory)
		se.asking = true
	case AskTrend:
		if (t == "drift" || t == "drifting" || t == "curve" || t == "over time" || t == "curva") && !req || reading {
			return
		}
		m.addAsk(i, AskTrend)
		se.asking = true
	case AskDue:
		if (t == "due" || t == "pending" || t == "outstanding" || t == "pendientes" || t == "rechecks" || t == "reminders" || t == "follow ups" || t == "followups" || t == "overdue" || t == "coming due" || t == "come due" || t == "seguimientos" || t == "revisiones" || t == "my list") && !(req || m.shortSentence(s, 4)) {
			return
		}
		if reading || m.otherAsk(s, AskDue) && t != "overdue" && t != "come due" && t != "coming due" && t != "whats due" {
			return
		}
		if t == "due" && (m.text(i+1) == "to" || m.is(i+1, cUnit, "")) {
			return
		}
		if (t == "follow ups" || t == "rechecks" || t == "reminders") && (m.saysDone(s) || m.snoozeVerb(s, first)) {
			return
		}
		if t == "due" && !req {
			return
		}
		m.addAsk(i, AskDue)
		se.asking = true
	case AskTankSize:
		if (t == "tank for a" || t == "what size" || t == "size tank") && !req || t == "what size" && !m.tankTalk(s) {
			return
		}
		a := m.addAsk(i, AskTankSize)
		m.tankNumbers(s, a)
		se.asking = true
	case AskNextCheck:
		if strings.HasPrefix(t, "why") || t == "por que" || t == "how come" {
			if !se.question && !begins {
				return
			}
		}
		switch t {
		case "next step", "next steps", "next test", "ideas", "thoughts", "suggestions", "diagnosis", "any idea", "any ideas", "prv shot", "bad prv", "bad regulator", "prv or", "expansion or", "que sigue", "que tiene", "what is it", "what is due", "whats next", "what next", "es la reguladora", "sera la reguladora", "what could be", "is it the prv", "is the prv bad", "por que":
			if !se.question && !begins {
				return
			}
			if (t == "que tiene" || t == "prv shot" || t == "bad prv" || t == "bad regulator") && !se.question {
				return
			}
		}
		if (t == "next step" || t == "next steps") && se.header >= 0 {
			return
		}
		m.addAsk(i, AskNextCheck)
		se.asking, se.tells = true, true
		se.askAt = i + 1
	case AskReport:
		if reading || m.anyReadingLike() && !req {
			return
		}
		if (t == "report on" || t == "report for" || t == "reporte de" || t == "el reporte de" || t == "informe" || t == "hoja de" || t == "informe de" || t == "sheet on" || t == "pressure report") && (m.text(i+1) == "visita" || m.text(i+1) == "servicio" || se.header >= 0 || m.otherAsk(s, AskReport) && m.weekTalk(s)) {
			return
		}
		if (t == "report for" || t == "reporte de" || t == "report on" || t == "el reporte de" || t == "informe de") && m.weekTalk(s) && m.site == nil {
			m.addAsk(i, AskSummary)
			se.asking = true
			return
		}
		m.addAsk(i, AskReport)
		se.asking = true
	case AskSummary:
		switch t {
		case "recap", "rundown", "run down", "roundup", "round up", "wrap up", "totals", "stats", "summary", "resumen":
			if !req && !m.weekTalk(s) && !m.shortSentence(s, 3) || reading || m.anyReadingLike() || m.site != nil && !m.weekTalk(s) {
				return
			}
		case "how many calls", "how many visits", "how many houses", "how many readings":
		}
		if reading {
			return
		}
		m.addAsk(i, AskSummary)
		se.asking = true
	case AskUndo:
		if m.negLeft(i, 2) && t != "never mind that" {
			return
		}
		switch t {
		case "scratch that", "never mind that", "strike that", "forget that", "ignore that", "disregard", "disregard that":
			if m.midNumbers(i) {
				return
			}
		case "borra", "borrar", "quita", "cancela", "olvida", "ignora", "elimina", "anula", "erase", "undo", "quita la", "quita el", "borra el", "borra la", "quita lo", "borra lo", "cancel that", "remove that":
			if !begins && !m.lastTalk(s) {
				return
			}
		case "me equivoque de casa", "wrong house", "wrong address", "wrong site", "wrong thread", "wrong customer", "casa equivocada", "no era esa casa":
		}
		if reading || m.numberToKeep(s, i) {
			m.addAsk(i, AskCorrect)
			se.tells = true
			se.asking = true
			return
		}
		if m.hasAsk(AskCorrect) {
			return
		}
		m.addAsk(i, AskUndo)
		se.asking = true
	case AskCorrect:
		if !m.correcting(s, i, begins) {
			return
		}
		for k := range m.asks {
			if m.asks[k].About == AskUndo {
				m.asks[k].About = AskCorrect
			}
		}
		m.addAsk(i, AskCorrect)
		se.asking, se.tells = true, true
	case AskDone:
		if se.question && !strings.HasPrefix(t, "mark") {
			return
		}
		if m.negLeft(i, 3) || m.will(i) {
			return
		}
		if !m.followUpNoun(s) && !(begins && (strings.HasPrefix(t, "mark") || strings.HasPrefix(t, "cross") || strings.HasPrefix(t, "close") || strings.HasPrefix(t, "check") || strings.HasPrefix(t, "cierra") || strings.HasPrefix(t, "clear"))) {
			return
		}
		switch t {
		case "complete", "done", "finished", "completed", "handled", "is done", "hecho", "hecha", "listo", "lista", "took care of", "taken care of", "ya esta", "ya quedo", "terminado", "terminada", "closed out", "its done", "got done", "already done", "marca", "close the", "did the", "did that", "that one":
			if t == "marca" && (m.isNum(i+1) || !begins) {
				return
			}
			if m.isWorkNoun(i) {
				return
			}
		}
		m.addAsk(i, AskDone)
		se.asking, se.closes = true, true
		m.nextOne(s)
	case AskSnooze:
		if reading || m.negLeft(i, 1) && t != "ahorita no" && t != "not now" {
			return
		}
		strong := t == "snooze" || t == "not now" || t == "ask me again" || t == "remind me later" || t == "postpone" || t == "ask again" || t == "ask me later" || t == "snz" || strings.HasPrefix(t, "pospon") || strings.HasPrefix(t, "aplaza") || t == "recuerdame otra vez" || t == "ahorita no" || t == "preguntame" || t == "put it off" || t == "put that off" || t == "push it back" || t == "postpone it" || t == "hold off" || t == "defer" || t == "recorrelo" || t == "push that" || t == "push it" || t == "bump it" || t == "kick it" || t == "move it" || t == "move that" || t == "push it out" || t == "put off" || t == "pospone" || t == "recorre" || t == "pasalo para" || t == "dejalo para" || t == "muevelo" || t == "delay it" || t == "delay"
		if t == "delay" && !begins && !m.followUpNoun(s) {
			return
		}
		if begins && m.momentIn2(s) && !reading && (t == "push" || t == "bump" || t == "kick" || t == "slide" || t == "move" || t == "push the" || t == "mueve") {
			strong = true
		}
		if !strong && !(m.followUpNoun(s) && (begins || m.momentIn2(s)) && (begins || m.items[i-1].mark || m.site != nil || m.followUpBefore(i))) {
			return
		}
		if (t == "later" || t == "not now" || t == "hold off" || t == "ahora no") && !m.followUpNoun(s) && !begins {
			return
		}
		if t == "later" {
			return
		}
		m.addAsk(i, AskSnooze)
		se.asking, se.snoozes = true, true
	case AskHelp:
		switch t {
		case "help":
			if !m.shortSentence(s, 4) || reading {
				return
			}
		case "help me", "ayuda", "como le hago", "how should i", "how do you", "que haces", "instructions", "como pongo", "can i send", "how do i":
			if reading || (t == "que haces" || t == "help me") && !m.shortSentence(s, 4) {
				return
			}
			if t == "how do i" && !m.botTalk(s, i) {
				return
			}
		}
		m.addAsk(i, AskHelp)
		se.asking = true
	}
}

// botTalk tells whether "how do I" is about the bot.
func (m *message) botTalk(s, i int) bool {
	for k := i; k < m.sents[s].to; k++ {
		switch m.text(k) {
		case "send", "log", "enter", "report", "tell you", "tell", "you", "bot", "type", "message", "reading", "readings", "correct", "undo", "fix", "ask", "write", "put in", "put", "get", "see", "delete", "cancel", "change", "snooze", "add", "record", "use", "this", "history", "take back", "mark", "remove", "submit", "post", "scratch that":
			return true
		}
	}
	return false
}

func (m *message) hasAsk(a About) bool {
	for k := range m.asks {
		if m.asks[k].About == a {
			return true
		}
	}
	return false
}

func (m *message) will(i int) bool {
	return m.left(i, 3, true, func(k int) bool {
		switch m.text(k) {
		case "will", "ill", "when", "once", "until", "to", "be", "gonna", "not", "cuando", "get":
			return true
		}
		return false
	}) >= 0
}

func (m *message) isWorkNoun(i int) bool {
	switch m.text(i - 1) {
	case "flush", "install", "swap", "repair", "job", "work":
		return true
	}
	return false
}

func (m *message) followUpBefore(i int) bool {
	for k := i - 1; k >= 0 && k >= i-4 && m.items[k].sent == m.items[i].sent; k-- {
		switch m.text(k) {
		case "f/u", "follow up", "recheck", "followup", "reminder", "seguimiento", "recordatorio":
			return true
		}
	}
	return false
}

// momentIn2 tells whether a sentence tells a time to come, before spans are known.
func (m *message) momentIn2(s int) bool {
	if m.momentIn(s) {
		return true
	}
	for i := m.sents[s].from; i < m.sents[s].to; i++ {
		if m.items[i].num != nil && unitDays[m.items[i].unit] > 0 {
			return true
		}
	}
	return false
}

// otherAsk tells whether the sentence holds a more definite question.
func (m *message) otherAsk(s int, not About) bool {
	for i := m.sents[s].from; i < m.sents[s].to; i++ {
		for _, t := range m.items[i].tags {
			if m.p.classes[t.class] == cAsk && About(t.value) != not {
				switch About(t.value) {
				case AskTrend, AskReport, AskTankSize, AskSummary:
					return true
				case AskDue:
					if not == AskHistory && m.text(i) != "due" {
						return true
					}
					if not == AskHistory && m.request(s) {
						return true
					}
				case AskHistory:
					if not == AskDue && (m.text(i) == "history" || m.text(i) == "historial") {
						return true
					}
				}
			}
		}
	}
	return false
}

func (m *message) shortSentence(s, n int) bool {
	words := 0
	for i := m.sents[s].from; i < m.sents[s].to; i++ {
		if !m.items[i].mark && !m.items[i].site {
			words++
		}
	}
	return words <= n
}

func (m *message) weekTalk(s int) bool {
	for i := m.sents[s].from; i < m.sents[s].to; i++ {
		switch m.text(i) {
		case "week", "weeks", "team", "crew", "equipo", "semana", "month", "mes", "last week", "this week", "weekly", "semanal", "shop", "everybody", "everyone", "we", "us", "last month", "summary", "friday", "today", "day", "guys", "muchachos", "office", "techs", "esta semana", "team summary", "yesterday", "year":
			return true
		}
	}
	return false
}

func (m *message) tankTalk(s int) bool {
	for i := m.sents[s].from; i < m.sents[s].to; i++ {
		if v, ok := m.val(i, cItem); ok && (v == "tank" || v == "expansion_tank") {
			return true
		}
	}
	return false
}

func (m *message) saysDone(s int) bool {
	for i := m.sents[s].from; i < m.sents[s].to; i++ {
		if m.is(i, cAsk, "done") {
			return true
		}
	}
	return false
}

func (m *message) closingWords(s int) bool { return false }

func (m *message) snoozeVerb(s, first int) bool {
	return first < len(m.items) && m.is(first, cAsk, "snooze")
}

func (m *message) lastTalk(s int) bool {
	for i := m.sents[s].from; i < m.sents[s].to; i++ {
		switch m.text(i) {
		case "last", "my", "that", "ultimo", "ultima", "eso", "esa", "ese", "report", "reading", "reporte", "lectura", "mi", "my last", "one", "previous", "entry", "lo", "anterior":
			return true
		}
		if m.is(i, cAsk, "undo") && strings.Contains(m.text(i), "last") {
			return true
		}
	}
	return false
}

// midNumbers tells whether the words at i correct one number by another within the message.
func (m *message) midNumbers(i int) bool {
	a, b := false, false
	for k := max(0, i-6); k < i; k++ {
		a = a || m.items[k].num != nil || m.is(k, cState, "")
	}
	for k := i + 1; k < len(m.items) && k <= i+6; k++ {
		b = b || m.items[k].num != nil || m.is(k, cState, "")
	}
	return a && b
}

// numberToKeep tells whether the sentence gives the right value after taking one back.
func (m *message) numberToKeep(s, i int) bool {
	for k := i + 1; k < m.sents[s].to; k++ {
		it := &m.items[k]
		if it.num != nil && it.unit == "" && it.num.integer && it.value >= 20 && it.value <= 200 && it.role == roleNone {
			for j := max(i, k-4); j < min(len(m.items), k+4); j++ {
				if m.items[j].point != "" {
					return true
				}
			}
		}
	}
	return false
}

// correcting tells whether a phrase corrects an earlier report, not something
// within this message.
func (m *message) correcting(s, i int, begins bool) bool {
	t := m.text(i)
	se := m.sents[s]
	last := false
	for k := range m.items {
		switch m.text(k) {
		case "last", "my last", "that one", "last one", "earlier", "previous", "ultimo", "ultima", "last report", "last reading", "ultima lectura", "anterior", "that reading", "reporte", "last msg", "that report", "last message", "my reading", "my report", "last number", "lectura anterior", "mi lectura", "mine", "just sent", "i sent", "mande", "hace rato", "i gave", "puse", "logged":
			if k <= i+12 {
				last = true
			}
		}
		if m.is(k, cAsk, "history") && (m.text(k) == "last reading" || m.text(k) == "ultima lectura" || m.text(k) == "last readings") || m.is(k, cAsk, "correct") && strings.Contains(m.text(k), "last") || m.is(k, cAsk, "undo") && strings.Contains(m.text(k), "last") || m.is(k, cMemory, "") && m.text(k) == "last time" {
			last = true
		}
	}
	quoted := false
	for _, tok := range m.toks {
		if tok.quoted {
			quoted = true
		}
	}
	numAfter := false
	for k := i + 1; k < len(m.items); k++ {
		if m.items[k].num != nil {
			numAfter = true
		}
	}
	numBefore := false
	for k := 0; k < i; k++ {
		if m.items[k].num != nil && m.items[k].role != roleDate {
			numBefore = true
		}
	}
	switch t {
	case "is wrong", "was wrong", "was off", "esta mal", "estuvo mal", "estaba mal", "is off":
		return last || quoted || m.reportTalk(s)
	case "should say", "should have said", "should have been", "shouldve been", "debe decir", "deberia decir", "debio ser", "that should be", "that should have been", "that was supposed to be":
		return true
	case "should read":
		return last || quoted || begins
	case "should be":
		return last && (m.reportTalk(s) || quoted) || begins && !numBefore && false
	case "make it", "make that", "change that to", "change it to", "cambialo a", "change the last", "cambia eso", "cambia mi":
		return !numBefore && numAfter && (begins || last)
	case "typo", "fat fingered", "fat finger", "mistyped", "meant to say", "meant to type", "i meant", "meant", "quise decir", "quise poner", "misread", "transposed":
		if numBefore && numAfter && !last && !quoted && (t == "i meant" || t == "meant" || t == "quise decir") {
			return false
		}
		return last || quoted || begins || !numBefore || t == "typo" || t == "fat fingered" || t == "fat finger"
	case "correction", "correccion", "corrijo", "corrige", "corrige eso":
		return begins || last
	case "era", "eran":
		if p := m.text(i - 1); !numBefore && numAfter && (p == "," || p == "perdon" || p == "perdona") && (m.text(0) == "perdon" || m.text(0) == "perdona" || m.text(0) == "disculpa") {
			return true
		}
		return last && numAfter && m.reportTalk(s)
	case "no era", "no eran", "no es":
		return (t == "no era" || t == "no eran" || t == "no es" && numAfter) && (last || !numBefore && numAfter)
	case "actually it was", "it was actually", "it was really":
		return !numBefore && numAfter
	case "the last one was", "my last one was", "last reading was wrong", "last report was wrong", "correct my", "correct that", "fix my last", "fix the last", "change my last", "update my last", "amend", "amend that", "edit my last", "wrong number", "wrong reading", "bad number", "i put the wrong", "put it in wrong", "puse mal", "lo puse mal", "anote mal", "escribi mal", "error mio", "perdon era", "perdon eran", "not what i meant", "fix that":
		if t == "the last one was" || t == "my last one was" {
			return numAfter
		}
		return true
	case "me equivoque", "me equivoque en":
		return true
	case "its really", "its actually", "it is really", "really its", "its supposed to say", "i sent", "i gave":
		return numBefore && numAfter && m.has2(s, "i sent", "i said", "i put", "sent", "said", "i gave", "i typed", "i wrote", "i logged", "last", "reported") || (t == "i sent" || t == "i gave") && numAfter && m.has2(s, "really", "actually", "should", "its really", "supposed to be", "meant", "its actually", "not")
	case "my bad":
		return begins || last
	case "i typed", "i wrote", "i put", "i entered":
		return last || quoted || m.reportTalk(s) && numAfter
	case "le puse":
		return false
	}
	_ = se
	return false
}

// reportTalk tells whether a sentence speaks of a report made.
func (m *message) reportTalk(s int) bool {
	for i := m.sents[s].from; i < m.sents[s].to; i++ {
		switch m.text(i) {
		case "last", "report", "reading", "reporte", "lectura", "that one", "that", "number", "mine", "last one", "one", "entry", "numero", "message", "mensaje", "my last", "mi", "my", "last reading", "ultima lectura", "mia", "ultima", "ultimo", "logged", "posted", "sent", "mande", "post":
			return true
		}
		if m.is(i, cAsk, "history") && strings.Contains(m.text(i), "last") {
			return true
		}
	}
	return false
}

// nextOne notes "set the next one for 6 months out" beside a follow-up done.
func (m *message) nextOne(s int) {}

// snoozeDays reads how long a follow-up is put off.
func (m *message) snoozeDays(s int) {
	var a *Ask
	for k := range m.asks {
		if m.asks[k].About == AskSnooze {
			a = &m.asks[k].Ask
		}
	}
	if a == nil {
		return
	}
	for _, sn := range []int{s, s + 1} {
		if sn >= len(m.sents) || a.InDays != nil {
			break
		}
		for i := m.sents[sn].from; i < m.sents[sn].to; i++ {
			it := &m.items[i]
			if it.num != nil && unitDays[it.unit] > 0 {
				if m.is(i+1, cDo, "recheck") && m.momentAfter(i, sn) {
					continue // "the 30 day recheck"
				}
				d := int(it.value*float64(unitDays[it.unit]) + 0.5)
				a.InDays = &d
				it.role = roleAsked
				m.sents[sn].snoozes = true
				break
			}
			for _, w := range m.moments {
				if w.at == i {
					d := w.days
					a.InDays = &d
					m.sents[sn].snoozes = true
				}
			}
			if a.InDays != nil {
				break
			}
		}
	}
}

func (m *message) momentAfter(i, s int) bool {
	for k := i + 1; k < m.sents[s].to; k++ {
		if m.items[k].num != nil && unitDays[m.items[k].unit] > 0 {
			return true
		}
		for _, w := range m.moments {
			if w.at == k {
				return true
			}
		}
	}
	return false
}

// askTakes tells whether a number belongs to a question rather than to a report.
func (m *message) askTakes(i int) bool {
	s := m.sents[m.items[i].sent]
	if s.askAt > 0 && i >= s.askAt && m.items[i].seg == m.items[s.askAt-1].seg {
		return true
	}
	return !s.tells
}

// tankNumbers puts the numbers of a question about a tank on the ask.
func (m *message) tankNumbers(s int, a *Ask) {
	for sn := range m.sents {
		if sn != s && !(abs(sn-s) <= 1 && !m.readingLike(sn)) && sn != s {
			continue
		}
		for i := m.sents[sn].from; i < m.sents[sn].to; i++ {
			it := &m.items[i]
			if it.num == nil || it.role != roleNone || it.num.time || it.num.money {
				continue
			}
			v := it.value
			set := func(p **float64, v float64) {
				if *p == nil {
					*p = &v
				}
				m.setRole(i, roleAsked, "of the question")
			}
			switch it.unit {
			case "gal":
				set(&a.SizeGal, v)
			case "litre":
				set(&a.SizeGal, round1(v*0.264172))
			case "psi", "bar", "kpa":
				set(&a.PSI, toPSI(v, it.unit))
			case "degf", "deg", "degc", "":
				if it.unit == "degc" {
					v = float64(int(v*9/5 + 32.5))
				}
				switch {
				case m.nearWord(i, 3, "rise", "delta", "difference", "sube", "subir", "raise", "raises", "subida"):
					set(&a.RiseF, v)
				case m.nearWord(i, 3, "inlet", "incoming", "cold", "entrada", "from", "in", "comes in", "coming", "coming in", "entrando", "entra", "water", "agua"):
					if it.unit == "" && v > 90 && !m.nearWord(i, 2, "inlet", "incoming", "cold") {
						set(&a.SetpointF, v)
						continue
					}
					set(&a.InletF, v)
				case it.unit == "" && sn == s && (m.sents[sn].question || m.hasAsk(AskTankSize)) && v <= 200 && (m.nearWord(i, 2, "pressure", "static", "house", "street", "at", "presion", "a", "system", "on") && v < 100):
					set(&a.PSI, v)
				case it.unit != "" || m.nearWord(i, 3, "set", "setpoint", "sp", "thermostat", "to", "at", "heater", "termostato") && v >= 100:
					set(&a.SetpointF, v)
				case v >= 20 && v <= 120 && sn == s && m.is(i+1, cItem, "heater"):
					set(&a.SizeGal, v)
				}
			}
		}
	}
}

// nearWord tells whether one of some words stands within n items of i.
func (m *message) nearWord(i, n int, words ...string) bool {
	for k := max(0, i-n); k < min(len(m.items), i+n+1); k++ {
		if k != i && m.items[k].sent == m.items[i].sent && m.items[k].seg == m.items[i].seg {
			if k < i && m.numsBetween(k, i) > 0 || k > i && m.numsBetween(i, k) > 0 {
				continue
			}
			for _, w := range words {
				if m.text(k) == w {
					return true
				}
			}
		}
	}
	return false
}

// convert reads a question for a unit conversion.
func (m *message) convert(s int) bool {
	se := m.sents[s]
	canon := func(u string) string {
		switch u {
		case "feet":
			return "ft"
		case "metre":
			return "m"
		case "psi", "bar", "kpa", "ft", "m", "mpa", "kgcm":
			return u
		}
		return ""
	}
	var to string
	cue := se.question
	var nums []int
	for i := se.from; i < se.to; i++ {
		it := &m.items[i]
		if it.num != nil {
			if canon(it.unit) != "" {
				nums = append(nums, i)
			}
			continue
		}
		if it.point != "" && !it.weak || m.is(i, cItem, "") && m.text(i) != "gauge" || it.site {
			if to == "" || it.site {
				if !m.is(i, cAsk, "") && m.text(i) != "meter" {
					return false
				}
			}
		}
		if m.is(i, cAsk, "convert") {
			cue = true
		}
		if m.is(i, cQuestion, "") && (i <= se.from+3 || m.items[i-1].mark || m.text(i-1) == "then" || m.text(i-1) == "tell") {
			switch m.text(i) {
			case "do", "does", "is", "did", "are", "could", "can", "should", "que":
			default:
				cue = true
			}
		}
		switch m.text(i) {
		case "equals", "equal", "equivale", "equivalent", "how many", "cuantos", "cuantas", "cuanto es", "cuanto son":
			cue = true
		}
		if u, ok := m.val(i, cUnit); ok && canon(u) != "" && m.text(i) != "kg" && !(m.text(i) == "meter" && m.text(i-1) != "in" && m.text(i-1) != "to") {
			if to == "" || m.text(i-1) == "in" || m.text(i-1) == "to" || m.text(i-1) == "en" || m.text(i-1) == "a" || m.text(i-1) == "into" || m.text(i-1) == "many" || m.text(i-1) == "cuantas" || m.text(i-1) == "cuantos" {
				to = canon(u)
			}
		}
	}
	if len(nums) == 0 || to == "" {
		return false
	}
	if !cue && !m.shortSentence(s, 7) {
		return false
	}
	pick := -1
	for _, i := range nums {
		if canon(m.items[i].unit) != to {
			pick = i
		}
	}
	if pick < 0 {
		return false
	}
	if !cue && m.readingCueWords(s) {
		return false
	}
	v := m.items[pick].value
	a := m.addAsk(pick, AskConvert)
	a.Value, a.Unit, a.To = &v, canon(m.items[pick].unit), to
	return true
}

func (m *message) readingCueWords(s int) bool {
	for i := m.sents[s].from; i < m.sents[s].to; i++ {
		switch m.text(i) {
		case "at", "got", "reading", "gauge", "shows", "reads", "static", "now":
			return true
		}
	}
	return false
}

// has2 tells whether sentence s holds one of some words.
func (m *message) has2(s int, words ...string) bool {
	for i := m.sents[s].from; i < m.sents[s].to; i++ {
		for _, w := range words {
			if m.text(i) == w {
				return true
			}
		}
	}
	return false
}

// sizes tells whether a sentence asks for the size of an expansion tank.
func (m *message) sizes(s int) bool {
	if !m.tankTalk(s) || m.readingLike(s) && !m.has2(s, "heater", "boiler", "calentador") {
		return false
	}
	ask, size := m.sents[s].question || m.request(s), false
	for i := m.sents[s].from; i < m.sents[s].to; i++ {
		switch m.text(i) {
		case "size", "big", "large", "tamano", "grande", "capacidad", "medida", "sizing", "sized", "galones":
			if m.text(i) == "galones" && m.items[max(i-1, 0)].num != nil {
				continue
			}
			size = true
		case "cuanto", "de cuanto", "de cuantos":
			size, ask = true, true
		}
		if m.is(i, cWill, "") && (m.text(i) == "order" || m.text(i) == "quote") {
			return false
		}
	}
	return ask && size
}

// asksHelp tells whether a sentence asks how to tell the bot something.
func (m *message) asksHelp(s int) bool {
	if m.readingLike(s) || m.site != nil {
		return false
	}
	how, write, thing := false, false, m.sents[s].question
	for i := m.sents[s].from; i < m.sents[s].to; i++ {
		switch m.text(i) {
		case "how", "como", "que", "what", "how do i", "how to", "how should i", "how do you", "whats the way", "cual":
			how = true
		case "escribir", "mandar", "meter", "registrar", "anotar", "reportar", "type", "send", "log", "enter", "submit", "mando", "meto", "registro", "anoto", "reporto", "escribo", "write", "text you", "report", "put in", "use", "usar", "uso", "manda", "mandas", "pongo", "poner":
			write = true
		case "bot", "lectura", "lecturas", "reading", "readings", "you", "te", "mensaje", "message", "reporte":
			thing = true
		}
	}
	return how && write && thing && (m.sents[s].question || m.has2(s, "bot"))
}

package intents

import "strings"

// askPhrase weighs one phrase of asking in its sentence.
func (m *message) askPhrase(s, i, first int, about About, req bool) {
	se := &m.sents[s]
	t := m.text(i)
	begins := i == first
	reading := m.readingLike(s)
	if (about == AskSummary || about == AskNextCheck) && m.isMark(i+1, ":") && !m.closes(i+1) {
		return // "Summary: OK house.", "Do next: replace tank"
	}
	switch about {
	case AskHistory:
		if t == "pull" || t == "show me" || t == "show" || t == "que hay en" || t == "muestra" {
			if !req || m.otherAsk(s, AskHistory) || m.cuesOf(s, se.from, se.to)&cues(cueTrend, cueOwed) != 0 {
				return
			}
			if t == "pull" && m.text(i+1) != "up" && (m.site == nil || !begins) {
				return
			}
		}
		if t == "what was" || t == "what were" || t == "what happened" || t == "tell me about" || t == "how old is the" {
			req = true
		}
		if m.hasAsk(AskHelp) || m.text(i+1) == "as" {
			return // "how do I look up a house", "history as a chart"
		}
		if reading && se.header >= 0 && !se.question {
			return // "Readings for 14 Maple: front 73"
		}
		if reading && begins && m.site != nil && !m.otherAsk(s, AskHistory) {
			// "what was it last time at 60 Elm, I've got 78 front today"
			m.addAsk(i, AskHistory)
			se.asking, se.tells = true, true
			return
		}
		if !req || reading && !se.question || m.otherAsk(s, AskHistory) && t != "history" && t != "historial" && t != "hx" && !strings.HasPrefix(t, "everything") {
			return
		}
		if (t == "last visit" || t == "last reading" || t == "last readings" || t == "ultima vez") && !se.question && !begins && m.site == nil {
			return
		}
		m.addAsk(i, AskHistory)
		se.asking = true
	case AskTrend:
		if reading && m.ordersAt(i) {
			// "72 front at 9 Elm, now plot that with the others"
			m.addAsk(i, AskTrend)
			se.asking, se.tells = true, true
			return
		}
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
		if t == "due" && (m.cuesOf(s, se.from, se.to)&cues(cueErrand, cueForeign, cueOffice) != 0 || m.text(i+1) == "to" || m.is(i+1, cUnit, "")) {
			return
		}
		if (t == "follow ups" || t == "rechecks" || t == "reminders") && (m.saysDone(s) || m.snoozeVerb(s, first)) {
			return
		}
		if t == "due" && !req {
			return
		}
		m.addAsk(i, AskDue)
		se.asking, se.asksDue = true, true
	case AskTankSize:
		if (t == "tank for a" || t == "what size" || t == "size tank") && !req || t == "what size" && !m.tankTalk(s) {
			return
		}
		a := m.addAsk(i, AskTankSize)
		m.tankNumbers(s, a)
		se.asking = true
	case AskNextCheck:
		if m.left(i, 2, false, func(k int) bool { return m.is(k, cHint, "theyask") }) >= 0 {
			return // "homeowner asks why her water is gray"
		}
		if strings.HasPrefix(t, "why") || strings.HasPrefix(t, "por que") || strings.HasPrefix(t, "porque") || t == "how come" {
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
		se.question = se.question || begins && (strings.HasPrefix(t, "should") || strings.HasPrefix(t, "how do"))
		if w := t[strings.LastIndexByte(t, ' ')+1:]; w != "next" && w != "nxt" && w != "now" && w != "first" {
			se.askAt = i + 1 // "what should I test next front bib is 98" ends before its report
		}
	case AskReport:
		req = req || m.wants(s)
		if reading || m.anyReadingLike() && (!req || begins && !se.question && i == se.from) {
			return // a head line: "Report for 12 Elm St."
		}
		if m.anyReadingLike() && m.is(i-1, cHint, "handed") {
			return // "here is the report for 12 Elm St"
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
		if m.hasAsk(AskDone) || begins && m.cuesOf(s, se.from, se.to)&cues(cueForeign, cueErrand) != 0 || m.negLeft(i, 2) && t != "never mind that" {
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
		if m.text(i-1) == "(" && m.text(i+1) == ")" {
			return // "~88~ 78 (typo)" is put right already
		}
		if !m.correcting(s, i, begins) || m.hasAsk(AskHelp) || m.hasAsk(AskUndo) && !m.numberAfter(i) {
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
		if !m.followUpNoun(s) && !(begins && s == 0 && len(m.clean.quoted) > 0 && m.shortSentence(s, 4)) && !(s > 0 && m.shortSentence(s, 3) && m.sents[s-1].question && m.followUpNoun(s-1)) && !m.anyIn(s, func(k int) bool { return k != i && m.is(k, cHint, "closeit") }, setOf(cHint)) && !(begins && (strings.HasPrefix(t, "mark") || strings.HasPrefix(t, "cross") || strings.HasPrefix(t, "close") || strings.HasPrefix(t, "check") || strings.HasPrefix(t, "cierra") || strings.HasPrefix(t, "clear"))) {
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
		se.asking, se.closes, se.tells = true, true, true
	case AskSnooze:
		if reading || m.negLeft(i, 1) && t != "ahorita no" && t != "not now" {
			return
		}
		if t == "give me" && m.text(i+1) == "the" {
			return // "give me the list for friday"
		}
		if (t == "ahorita no" || t == "ahora no") && i+1 < len(m.items) && !m.items[i+1].mark && m.items[i+1].tags == nil && m.text(i+1) != "en" {
			return // "ahorita no puedo": chatter
		}
		strong := t == "snooze" || t == "not now" || t == "ask me again" || t == "remind me later" || t == "postpone" || t == "ask again" || t == "ask me later" || t == "snz" || strings.HasPrefix(t, "pospon") || strings.HasPrefix(t, "aplaza") || t == "recuerdame otra vez" || strings.HasPrefix(t, "recuerdamel") || (t == "dale" || t == "dame") && (m.text(i+1) == "otra" || m.text(i+1) == "otro") || strings.HasPrefix(t, "retrasa") || strings.HasPrefix(t, "atrasa") || strings.HasPrefix(t, "snu") || strings.HasPrefix(t, "snoozea") || t == "ahorita no" || t == "preguntame" || t == "put it off" || t == "put that off" || t == "push it back" || t == "postpone it" || t == "hold off" || t == "defer" || t == "recorrelo" || t == "push that" || t == "push it" || t == "bump it" || t == "kick it" || t == "move it" || t == "move that" || t == "push it out" || t == "put off" || t == "pospone" || t == "recorre" || t == "pasalo para" || t == "dejalo para" || t == "muevelo" || t == "delay it" || t == "delay"
		strong = strong || m.is(i, cHint, "putoff")
		if m.is(i, cHint, "notyet") && (!begins || !m.momentIn2(s) || m.anyIn(s, func(k int) bool { return k > i }, setOf(cDo, cItem, cPoint))) {
			return
		}
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
		if t == "ahorita no" && !m.shortSentence(s, 3) {
			return // "ahorita no puedo"
		}
		if t == "later" {
			return
		}
		m.addAsk(i, AskSnooze)
		se.asking, se.snoozes = true, true
	case AskHelp:
		switch t {
		case "help":
			if !m.shortSentence(s, 4) || reading || m.site != nil || m.reporting() {
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
		if m.text(k) == "tell" && (m.text(k+1) == "if" || m.text(k+1) == "whether") {
			return false
		}
		switch m.text(k) {
		case "send", "log", "enter", "report", "tell you", "tell", "you", "bot", "type", "message", "reading", "readings", "correct", "undo", "fix", "ask", "write", "put in", "put", "get", "see", "delete", "cancel", "change", "snooze", "add", "record", "use", "this", "history", "take back", "mark", "remove", "submit", "post", "scratch that":
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

// wants tells whether a sentence tells that somebody wants something.
func (m *message) wants(s int) bool {
	for i := m.sents[s].from; i < m.sents[s].to; i++ {
		if it := &m.items[i]; !it.mark && !it.site && it.num == nil && m.wordCues(it.tok).has(cueWant) {
			return true
		}
	}
	return false
}

// ordersAt tells whether item i opens a clause as an order: ", now plot that".
func (m *message) ordersAt(i int) bool {
	switch m.text(i) {
	case "plot", "graph", "chart", "plot it", "graph it", "chart it":
	default:
		return false
	}
	for k := i - 1; k >= 0; k-- {
		if it := &m.items[k]; it.mark || m.text(k) == "and" || m.text(k) == "now" {
			return true
		} else if it.site || it.num != nil || !m.wordCues(it.tok).has(cueSmall) {
			return false
		}
	}
	return true
}

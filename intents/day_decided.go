package intents

// Who thinks aloud about a day asks themselves and answers: "come back when, Tuesday? no, Wednesday",
// "for next... no, in 2 weeks". daysDecided leaves out the day that was not taken.

var (
	dayNames = set("monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday", "mon", "tue", "tues", "wed", "weds", "thu",
		"thur", "thurs", "fri", "sat", "sun", "tomorrow", "tmrw", "lunes", "martes", "miercoles", "jueves", "viernes", "sabado", "domingo", "manana")
	spanNames = set("day", "days", "week", "weeks", "month", "months", "dia", "dias", "semana", "semanas", "mes", "meses")
	// dayLeads are words that lead to a day or a span of time.
	dayLeads = set("in", "en", "on", "el", "next", "the", "for", "this", "para", "a", "an", "un", "una", "one", "two", "three", "four", "six",
		"dos", "tres", "proximo", "proxima")
	// dayDenials are the words between the day that was not taken and the one that was.
	dayDenials = set("no", "nope", "nah", "wait", "better", "mejor", "actually", "digo", "rather", "make", "it", "sorry", "ok", ",", "...", "-", ".", "espera")
)

// daysDecided leaves out of a message the days that its writer took back in the same breath.
func daysDecided(toks []token) []token {
	for i := 1; i < len(toks); i++ {
		if t := toks[i].text; toks[i].kind != mark || t != "?" && t != "..." {
			continue
		}
		from, to := dayBefore(toks, i, toks[i].text == "..."), dayAnswering(toks, i+1)
		if from < 0 || to < 0 {
			continue
		}
		if from > 1 && toks[from-1].text == "," && oneOf(toks[from-2].text, "when", "cuando") {
			from -= 2
		}
		if from > 0 && toks[from-1].text == toks[to].text {
			to++ // "in a week? no, in two weeks"
		}
		toks = append(toks[:from:from], toks[to:]...)
		i = from
	}
	return toks
}

// dayBefore returns where the day right before token i begins, -1 for none; one broken off is one that
// was only led to, "for next...".
func dayBefore(toks []token, i int, brokenOff bool) int {
	k := i - 1
	switch {
	case dayNames[toks[k].text]:
		return k
	case spanNames[toks[k].text]:
	case brokenOff && oneOf(toks[k].text, "next", "in", "en", "proximo", "proxima"):
		return k
	default:
		return -1
	}
	for k > 0 && (toks[k-1].kind == number || dayLeads[toks[k-1].text]) && !oneOf(toks[k-1].text, "in", "en", "for", "on") {
		k--
	}
	return k
}

// dayAnswering returns where a day begins that answers what was asked before token i with a no, -1 for
// none.
func dayAnswering(toks []token, i int) int {
	no := false
	for ; i < len(toks) && dayDenials[toks[i].text]; i++ {
		no = no || oneOf(toks[i].text, "no", "nope", "nah", "better", "mejor", "wait", "digo", "rather", "actually")
	}
	if !no || i >= len(toks) {
		return -1
	}
	for k := i; k < len(toks) && k <= i+3; k++ {
		switch t := toks[k].text; {
		case dayNames[t], spanNames[t]:
			return i
		case toks[k].kind != number && !dayLeads[t]:
			return -1
		}
	}
	return -1
}

package intents

// Who looks for a word says so while they type or dictate: "swapped the, the, regulator",
// "no um, recirc pump", "put in a, whats the word, expansion tank". halted leaves out such
// words and the pauses around them.
func halted(toks []token) []token {
	out := toks[:0]
	for i := 0; i < len(toks); i++ {
		n := fillerAt(toks, i)
		if n > 0 && (n == 1 && !betweenNumbers(toks, i) || setOff(toks, i, n)) {
			i += n - 1
			if k := len(out) - 1; k > 0 && out[k].text == "," && (wantsNoun(out[k-1].text) || oneOf(out[k-1].text, "new", "nueva", "nuevo")) {
				out = out[:k] // "put in a new, um, prv"
				if i+1 < len(toks) && toks[i+1].text == "," {
					i++
				}
				continue
			}
			if i+1 < len(toks) && toks[i+1].text == "," && (len(out) == 0 || leadsToNoun(out[len(out)-1].text) || out[len(out)-1].text == ",") {
				i++
			}
			continue
		}
		t := toks[i]
		if oneOf(t.text, ",", "...") && len(out) > 0 && wantsNoun(out[len(out)-1].text) && i+1 < len(toks) && toks[i+1].kind == word && len(toks[i+1].text) > 1 {
			continue // "all the, zones, shut", "swapped the ... the ... regulator"
		}
		if len(out) > 0 && t.kind == word && t.text == out[len(out)-1].text && wantsNoun(t.text) {
			continue // "the the regulator"
		}
		out = append(out, t)
	}
	return out
}

// fillerAt returns how many words from token i only fill a pause, 0 for none.
func fillerAt(toks []token, i int) int {
	switch toks[i].text {
	case "um", "umm", "uh", "uhh", "uhm", "ehh", "hmm":
		return 1
	case "whats", "what":
		k := i + 1
		if toks[i].text == "what" && textAt(toks, k) == "is" {
			k++
		}
		switch {
		case textAt(toks, k) == "the" && textAt(toks, k+1) == "word", textAt(toks, k) == "it" && textAt(toks, k+1) == "called":
			return k + 2 - i
		case k == i+2 && textAt(toks, k) == "it", k == i+1 && oneOf(textAt(toks, k), "it", "chamacallit"):
			return k + 1 - i
		case textAt(toks, k) == "do" && oneOf(textAt(toks, k+1), "you", "they", "ya", "u") && textAt(toks, k+2) == "call" && oneOf(textAt(toks, k+3), "it", "that", "em"):
			return k + 4 - i
		}
	case "como":
		if textAt(toks, i+1) == "se" && oneOf(textAt(toks, i+2), "dice", "llama") {
			return 3
		}
	}
	return 0
}

// betweenNumbers tells whether token i keeps two numbers apart: "note three um seventeen hundred".
func betweenNumbers(toks []token, i int) bool {
	counts := func(k int) bool {
		_, ok := numberWords[textAt(toks, k)]
		return ok || k >= 0 && k < len(toks) && toks[k].kind == number
	}
	return counts(i-1) && counts(i+1)
}

// setOff tells whether n tokens from i stand between marks, or behind a word that wants a noun.
func setOff(toks []token, i, n int) bool {
	pause := func(k int) bool { return oneOf(textAt(toks, k), ",", "...", "-", "(", ")") }
	return pause(i+n) && (pause(i-1) || i > 0 && leadsToNoun(toks[i-1].text))
}

// textAt returns the text of token k, "" for none.
func textAt(toks []token, k int) string {
	if k < 0 || k >= len(toks) {
		return ""
	}
	return toks[k].text
}

// wantsNoun tells whether a word cannot end a clause, since what it belongs to must follow.
func wantsNoun(s string) bool {
	switch s {
	case "the", "a", "an", "her", "his", "their", "my", "un", "una", "los", "las":
		return true
	}
	return false
}

// leadsToNoun is wantsNoun with the words that deny a thing.
func leadsToNoun(s string) bool { return wantsNoun(s) || s == "no" || s == "el" || s == "la" }

package intents

// Lists of the lexicon that these rules know.
var (
	listBeforeOpinion = listOf("before opinion")
	listThinksIt      = listOf("thinks it")
	listIsIt          = listOf("is it")
	listToldFair      = listOf("told fair")
	listWhatIsFair    = listOf("what is fair")
	listRatherFair    = listOf("rather fair")
	listFair          = listOf("fair")
	listSurelyFair    = listOf("surely fair")
	listBehindFair    = listOf("behind fair")
	listNotOfFair     = listOf("not of fair")
	listMayCause      = listOf("may cause")
	listCantBe        = listOf("cant be")
	listCauses        = listOf("causes")
	listOfTrouble     = listOf("of trouble")
	listWhoTests      = listOf("who tests")
	listShallTest     = listOf("shall test")
	listProbes        = listOf("probes")
	listProbed        = listOf("probed")
	listWhichProbe    = listOf("which probe")
	listProbeNext     = listOf("probe next")
	listSuspects      = listOf("suspects")
	listMustTest      = listOf("must test")
	listWorth         = listOf("worth")
	listOfPrices      = listOf("of prices")
	listProbing       = listOf("probing")
)

// phraseAt reads the words of a sentence one by one, as they were typed and whatever phrases they stand in.
type phraseAt struct {
	m       *message
	at, end int // tokens
}

// word returns the next word, "" at a mark, a number and the end.
func (p *phraseAt) word() string {
	if p.at >= p.end || p.m.toks[p.at].kind != word {
		return ""
	}
	return p.m.toks[p.at].text
}

// closed tells whether nothing more is said in the clause.
func (p *phraseAt) closed() bool {
	return p.at >= p.end || p.m.toks[p.at].kind == mark
}

// asked tells whether a question mark is next.
func (p *phraseAt) asked() bool { return p.at < p.end && p.m.toks[p.at].text == "?" }

// comma passes over a comma.
func (p *phraseAt) comma() bool {
	if p.at >= p.end || p.m.toks[p.at].text != "," {
		return false
	}
	p.at++
	return true
}

// longestListed is how many words a phrase of such a list has at most.
const longestListed = 5

// take passes over a word or a phrase of a list, the longest, and tells whether there was one.
func (p *phraseAt) take(l list) bool {
	if p.at >= p.end || p.m.toks[p.at].kind != word {
		return false
	}
	lex, e, found := p.m.p.lex, p.m.p.lex.of(&p.m.toks[p.at]), 0
	if e.lists.has(l) {
		found = 1
	}
	if e.leads.has(l) {
		var room [64]byte
		text := append(room[:0], p.m.toks[p.at].text...)
		for n := 1; n < longestListed && p.at+n < p.end && p.m.toks[p.at+n].kind == word && lex.of(&p.m.toks[p.at+n]).follows; n++ {
			text = append(append(text, ' '), p.m.toks[p.at+n].text...)
			if lex.lists[l][string(text)] {
				found = n + 1
			}
		}
	}
	p.at += found
	return found > 0
}

// pass passes over all words of a list.
func (p *phraseAt) pass(l list) {
	for p.take(l) {
	}
}

// number passes over a number that may be a pressure, and its unit.
func (p *phraseAt) number() bool {
	if p.at >= p.end || p.m.toks[p.at].kind != number {
		return false
	}
	n := p.m.toks[p.at].num
	if n == nil || n.time || n.money || n.phone || n.percent || n.value < leastPSI || n.value > 400 {
		return false
	}
	p.at++
	switch p.word() {
	case "psi", "lbs", "pounds", "lb", "libras":
		p.at++
	}
	return true
}

// phraseFrom returns the words from item i to item to.
func (m *message) phraseFrom(i, to int) phraseAt {
	p := phraseAt{m: m, at: m.items[i].tok, end: len(m.toks)}
	if to < len(m.items) {
		p.end = m.items[to].tok
	}
	p.pass(listBeforeOpinion)
	return p
}

// opinionStarts marks the words that a question for an opinion may begin with.
func (l *lexicon) opinionStarts() {
	for w := range l.firstWords(listBeforeOpinion, listThinksIt, listIsIt, listToldFair, listRatherFair, listFair, listSurelyFair,
		listMayCause, listCantBe, listShallTest, listWhichProbe) {
		l.entry(w).opines = true
	}
}

// asksOpinion tells whether sentence s asks what to think of a pressure or what to do about it.
func (m *message) asksOpinion(s int) bool {
	se := &m.sents[s]
	if m.hear(); !m.mayOpine || se.to <= se.from || !m.mayOpineAt(se.from) {
		return false
	}
	told := m.reporting()
	if m.tellsTime(s) || s > 0 && (!told || m.sentenceLists(s-1, listOfPrices)) || !m.opinionAt(se.from, se.to, told) {
		return false // "the sprinkler guy charges 85, is that normal"
	}
	se.tells = m.readingLike(s) // "is that too high, 95 laundry"
	se.aside = !se.tells
	return true
}

// sentenceLists tells whether sentence s holds a word of a list.
func (m *message) sentenceLists(s int, l list) bool {
	for k := m.sents[s].from; k < m.sents[s].to; k++ {
		if m.inList(k, l) {
			return true
		}
	}
	return false
}

// mayOpineAt tells whether a question for an opinion may begin with the word at item i.
func (m *message) mayOpineAt(i int) bool {
	return !m.items[i].mark && !m.items[i].site && m.entryOf(i).opines
}

// opinionAt tells whether a question that asks for an opinion begins at item i; told, that the message reports
// something beside it.
func (m *message) opinionAt(i, to int, told bool) bool {
	if m.hear(); !m.mayOpine || !m.mayOpineAt(i) {
		return false
	}
	p := m.phraseFrom(i, to)
	return p.asksFair(told) || p.asksCause() || p.asksProbe() || p.asksWhichProbe() || p.asksWorth()
}

// asksFair reads whether a pressure is as it should be: "is 95 too high", "you think thats ok",
// "thats normal, right?"; the last way only with its question mark.
func (p phraseAt) asksFair(told bool) bool {
	thinks := p.take(listThinksIt)
	if p.pass(listThinksIt); thinks && p.word() == "say" {
		p.at++ // "would you say"
	}
	is := p.take(listIsIt)
	number := p.number()
	if !is && !number && p.take(listToldFair) {
		is = thinks
	} else if is && !number && !p.take(listWhatIsFair) {
		return false
	} else if !is && number {
		return false // "95 is too high", told
	}
	number = number || p.number() // "a reading of 95"
	p.pass(listRatherFair)
	surely := p.take(listSurelyFair)
	if !surely && !p.take(listFair) || p.take(listNotOfFair) {
		return false
	}
	if !surely && !number && !told && p.m.ctx.Site == "" {
		return false // "is that ok" may be of anything
	}
	if is {
		return true
	}
	long := p.at > 0 && surely
	for p.take(listBehindFair) || p.comma() {
		long = true
	}
	return long && p.asked() && told
}

// asksCause reads whether a part may be to blame: "could the prv do this", "cant be the tank, can it".
func (p phraseAt) asksCause() bool {
	if p.take(listCantBe) {
		if w := p.word(); w == "the" || w == "a" {
			p.at++
		}
		return p.take(listOfTrouble) && (p.closed() || p.take(listBehindFair) || p.take(listMayCause))
	}
	if !p.take(listMayCause) {
		return false
	}
	for thing, n := false, 0; n < 9 && !p.closed(); n++ {
		switch {
		case p.take(listOfTrouble):
			thing = true
		case thing && p.take(listCauses):
			return p.take(listWhatIsFair) || p.take(listCauses) || p.closed()
		default:
			p.at++
		}
	}
	return false
}

// asksProbe reads whether a test is called for: "do i test the tank", "would you suspect the prv".
func (p phraseAt) asksProbe() bool {
	if !p.take(listShallTest) || !p.take(listWhoTests) {
		return false
	}
	p.pass(listMustTest)
	return (p.take(listProbes) || p.take(listSuspects)) && p.take(listProbed)
}

// asksWorth reads whether a test is worth its while: "you think its worth pulling the strainer".
func (p phraseAt) asksWorth() bool {
	if thinks := p.take(listThinksIt); !(p.take(listIsIt) && p.take(listWhatIsFair) || thinks && p.take(listToldFair)) {
		return false
	}
	return p.take(listWorth) && p.take(listProbing)
}

// asksWhichProbe reads which test is next: "where do i hook up after this one".
func (p phraseAt) asksWhichProbe() bool {
	if !p.take(listWhichProbe) || !p.take(listShallTest) || !p.take(listWhoTests) || !p.take(listProbes) {
		return false
	}
	for n := 0; n < 4 && !p.closed(); n++ {
		if p.take(listProbeNext) {
			return true
		}
		p.at++
	}
	return false
}

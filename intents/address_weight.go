package intents

// Lists of the lexicon that these rules know.
var (
	listLeadsToHouse      = listOf("leads to house")
	listReadsBeforeStreet = listOf("reads before street")
	listNumbersNoStreet   = listOf("numbers no street")
	listSiteHeads         = listOf("site heads")
	listBeforeYear        = listOf("before year")
	listHouseIsDone       = listOf("house is done")
	listAsksOfHouse       = listOf("asks of house")
)

// numberWeight weighs the number of a street line: long ones are houses, years are not.
func (p *Parser) numberWeight(toks []token, i int, suffixed bool) float64 {
	n := len(toks[i].num.digits)
	switch v := toks[i].num.value; {
	case n == 4 && year(v) && v < 2035 && !suffixed:
		w := -0.5
		if i > 0 && p.lex.of(&toks[i-1]).lists.has(listBeforeYear) {
			w -= 3
		}
		if i > 0 && p.term(toks, i-1) && !p.lex.of(&toks[i-1]).never {
			w -= 2
		}
		return w
	case n >= 4:
		return 2
	case n == 3:
		return 1
	}
	return 0
}

// leadWeight weighs the word before a street line that ends before token end: "at 12 Elm"
// is one, "reads 12" is not.
func (p *Parser) leadWeight(toks []token, i, end int) float64 {
	two := "" // the word before that
	if i > 1 {
		two = toks[i-2].text
	}
	afterNumber := i > 1 && toks[i-2].kind == number
	switch prev := toks[i-1].text; {
	case p.lex.of(&toks[i-1]).lists.has(listLeadsToHouse):
		return 2
	case oneOf(prev, "la", "el"):
		if two == "en" || two == "de" {
			return 2 // "en la 880 sagebrush"
		}
	case oneOf(prev, "the", "that"):
		return 0.5
	case oneOf(prev, "to", "a"):
		if afterNumber {
			return -1 // "9 to 11"
		}
		return 1
	case oneOf(prev, "off", "back", "by", "past", "pa"):
		return 1
	case prev == ":":
		if i > 1 && p.lex.inList(two, listSiteHeads) {
			return 4
		} else if i > 1 {
			return -1
		}
	case p.lex.of(&toks[i-1]).lists.has(listReadsBeforeStreet):
		switch {
		case (prev == "is" || prev == "was") && p.lex.inList(two, listAsksOfHouse):
			return 2 // "how is 12 elm doing", "when is 12 Elm due", "which way is 12 Elm headed"
		case oneOf(prev, "got", "marca") && end < len(toks) && p.lex.inList(toks[end].text, listHouseIsDone):
			return 1 // "got 12 Elm rechecked", where "got 12 at the rear" is a pressure
		case i == 1 && prev == "is":
			return 1 // "is 88 larkspur still low"
		case afterNumber && prev == "psi":
			return 0 // "66psi 27 hemlock"
		case deniesNumber(toks, end):
			return 0 // "that was 22 Pine not 24 Pine"
		case two == "this" || two == "address" || two == "house":
			return 2
		}
		return -1
	case oneOf(prev, ",", ".", "\n", "-", ";", "("):
		return 0.5
	case p.lex.of(&toks[i-1]).lists.has(listNumbersNoStreet):
		return -4
	case afterNumber && oneOf(prev, "its", "thats") && (end >= len(toks) || toks[end].kind == mark && oneOf(toks[end].text, ".", "\n")):
		return 2 // "laundry 67 its 2 ridge"
	default:
		if p.asksAt(toks, i-1) || p.lex.toward[prev] {
			return 1.5 // "snooze 19 aldine"
		}
	}
	return 0
}

// asksAt tells whether the word at k asks for something of a house, or plans it.
func (p *Parser) asksAt(toks []token, k int) bool {
	node, n := p.lex.find(toks, k, k+1)
	return n > 0 && p.lex.kinds(node).meets(setOf(cAsk, cDo))
}

// deniesNumber tells whether another number is denied at token k: "not 24", ", not 24".
func deniesNumber(toks []token, k int) bool {
	if k < len(toks) && toks[k].text == "," {
		k++
	}
	return k+1 < len(toks) && toks[k].text == "not" && toks[k+1].kind == number
}
